// SPDX-License-Identifier: Apache-2.0
// Purpose: names of people who do not exist. Given names come from many languages; family names are made up from the sounds of many, so
// that no pair is anybody's. Table of values.
#pragma once

#include <array>
#include <string_view>

namespace snugline::demo {

inline constexpr std::array<std::string_view, 96> kGivenNames{
    "Abel",    "Adem",    "Aidan",  "Aleks",   "Amadou",  "Amir",  "Anders", "Andoni", "Anton",   "Ari",    "Arjun",  "Asher",
    "Bao",     "Bastien", "Benat",  "Bilal",   "Bodhi",   "Bram",  "Caleb",  "Casper", "Chidi",   "Cian",   "Cyrus",  "Dag",
    "Dario",   "Davit",   "Deniz",  "Diego",   "Dmitri",  "Eero",  "Eitan",  "Eloy",   "Emeka",   "Emil",   "Enzo",   "Esteban",
    "Ezra",    "Farid",   "Felipe", "Finn",    "Florin",  "Gael",  "Gideon", "Goran",  "Haruto",  "Hassan", "Henrik", "Hugo",
    "Ibrahim", "Idris",   "Ilya",   "Imanol",  "Ivo",     "Jakub", "Javi",   "Jin",    "Joaquin", "Jonas",  "Kaito",  "Kalani",
    "Keoni",   "Kofi",    "Kwame",  "Lars",    "Leandro", "Levi",  "Luca",   "Malik",  "Manu",    "Marek",  "Mateo",  "Mikko",
    "Milan",   "Musa",    "Nadir",  "Nikolai", "Nuno",    "Omar",  "Oren",   "Oskar",  "Pavel",   "Quang",  "Rafael", "Rashid",
    "Ravi",    "Rory",    "Samir",  "Sven",    "Tariq",   "Teo",   "Tomas",  "Tuan",   "Viktor",  "Yusuf",  "Zane",   "Zoran"};

inline constexpr std::array<std::string_view, 120> kFamilyNames{
    "Abrecourt",   "Adeyolwa",   "Agnarvik",    "Akerlundby",  "Alcaredo",     "Almonteira", "Amberlow",    "Anquetelle",   "Arabekian",
    "Ardenholt",   "Arrizabeña", "Ashgarrow",   "Azmandi",     "Balcorrin",    "Balodienko", "Barrowhythe", "Basurtegi",    "Belmarques",
    "Bergastrand", "Bilouvier",  "Birchmantle", "Bontempelli", "Brackenoll",   "Bramwick",   "Brezhalko",   "Brindlecote",  "Caldemora",
    "Calverhithe", "Cantalejos", "Carrowmead",  "Castaneiro",  "Cheverolle",   "Chukwandu",  "Corbeliani",  "Cotterhulme",  "Dabrovinsky",
    "Dacosteiro",  "Danvelli",   "Delacruzado", "Dembarou",    "Dimitrakou",   "Dovrenko",   "Drummanick",  "Duvernel",     "Echevarrieta",
    "Edelsvard",   "Ekwuemela",  "Elkhanouri",  "Elstobrick",  "Eskerholm",    "Falkenbro",  "Faraguna",    "Fennimoor",    "Ferreirinho",
    "Fitzorrin",   "Galdeanos",  "Garrovillo",  "Ghorbanian",  "Gilderscar",   "Gorostegui", "Grenwyth",    "Gundarsen",    "Habtemikael",
    "Hallowitz",   "Hamadouche", "Haverstrom",  "Hirasaki",    "Hollinbeck",   "Ibekwere",   "Ilvarsson",   "Irigoyarte",   "Iwashimura",
    "Jabaloyas",   "Jankowiec",  "Jorvanger",   "Kaleikaumoa", "Karavelis",    "Kestrelby",  "Khadimov",    "Kimoteo",      "Korhovirta",
    "Kuznelov",    "Lachowiak",  "Lagarteza",   "Lindqvarn",   "Llorentxo",    "Lomatuai",   "Madrigueiro", "Mahalelu",     "Makwetha",
    "Marchantel",  "Merriwold",  "Mihailescou", "Montaverde",  "Mwangaleni",   "Naranjuelo", "Nettlecombe", "Nguyenthal",   "Nordavik",
    "Núñezalde",   "Obrasinski", "Okonwara",    "Olavarren",   "Orchardene",   "Ostrovenko", "Pallarossa",  "Penhallick",   "Petrosanu",
    "Quillonera",  "Rasmunder",  "Ravenhythe",  "Rothwaite",   "Sagastumendi", "Sanabrio",   "Tamboura",    "Thistlecroft", "Urrestarazu",
    "Vandermoor",  "Wexcombe",   "Yellandros"};

}  // namespace snugline::demo
