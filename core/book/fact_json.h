// SPDX-License-Identifier: Apache-2.0
// Purpose: the parts of a fact's body that view rows hold too, written and read alike. Thread: plain functions.
#pragma once

#include <string_view>
#include <unordered_map>

#include "core/book/fact.h"
#include "core/book/line_reader.h"
#include "core/book/line_writer.h"

namespace snugline::book {

// Members of one answer, inside an object that the caller opened.
void writeAnswer(LineWriter& out, const fit::Answer& answer);
[[nodiscard]] fit::Answer readAnswer(ObjectReader& in);
// Members of a code's hash, inside an object that the caller opened.
void writeCode(LineWriter& out, const season::CodeHash& code);
[[nodiscard]] season::CodeHash readCode(ObjectReader& in);
// Only the words that are written count: a synonym would not come out again as it went in.
[[nodiscard]] std::optional<fit::Feels> feelsWord(std::string_view word);
[[nodiscard]] std::optional<fit::Finding> findingWord(std::string_view word);
[[nodiscard]] std::optional<gear::LabelKind> labelKindFromCode(std::string_view word);
[[nodiscard]] std::optional<gear::PointState> pointStateFromCode(std::string_view word);
// Members that may be left out: a whole number, and a side (both).
[[nodiscard]] std::optional<int> readIntIf(ObjectReader& in, std::string_view key, int low, int high);
[[nodiscard]] fit::Side readSide(ObjectReader& in);

// fact_air.cpp. Members of an object that the caller opened; under a key of their own, left out when empty.
void writeConditions(LineWriter& out, const season::Conditions& c);
[[nodiscard]] season::Conditions readConditions(ObjectReader& in);
void conditions(LineWriter& out, const season::Conditions& c);
[[nodiscard]] season::Conditions conditions(ObjectReader& in);
void source(LineWriter& out, const season::AirSource& s);
[[nodiscard]] season::AirSource source(ObjectReader& in);
void writePumped(LineWriter& out, const season::PumpedRecord& p);
[[nodiscard]] season::PumpedRecord readPumped(ObjectReader& in);
void writeBody(LineWriter& out, const WeatherNoted& b);
void writeBody(LineWriter& out, const PlaceSet& b);
void writeBody(LineWriter& out, const UnitAirRead& b);
void writeBody(LineWriter& out, const LineSeen& b);
[[nodiscard]] Body readWeatherNoted(ObjectReader& in);
[[nodiscard]] Body readPlaceSet(ObjectReader& in);
[[nodiscard]] Body readUnitAirRead(ObjectReader& in);
[[nodiscard]] Body readLineSeen(ObjectReader& in);
// fact_people.cpp
void writeBody(LineWriter& out, const RecoverySet& b);
void writeBody(LineWriter& out, const WarningSet& b);
void writeBody(LineWriter& out, const WarningSigned& b);
void writeBody(LineWriter& out, const RetentionSet& b);
void writeBody(LineWriter& out, const EmergencySet& b);
void writeBody(LineWriter& out, const PersonChanged& b);
void writeBody(LineWriter& out, const SaidFollowed& b);
void writeBody(LineWriter& out, const LegalHoldMade& b);
void writeBody(LineWriter& out, const LegalHoldEnded& b);
using BodyReader = Body (*)(ObjectReader&);
void addPeopleReaders(std::unordered_map<std::string_view, BodyReader>& readers);  // by kind

// fact_gear.cpp. A list of marks under a key of its own, left out when empty; members of a notice's scope.
void marks(LineWriter& out, std::string_view key, fit::MarkSet set);
[[nodiscard]] fit::MarkSet marks(ObjectReader& in, std::string_view key);
// Members of what "back" says.
void returnOf(LineWriter& out, const season::ReturnRecord& r);
void readReturn(ObjectReader& in, season::ReturnRecord& r);
void writeScope(LineWriter& out, const season::NoticeScope& scope);
[[nodiscard]] season::NoticeScope readScope(ObjectReader& in);
void addGearReaders(std::unordered_map<std::string_view, BodyReader>& readers);  // of helmets, by kind

// fact_phone.cpp
void writeBody(LineWriter& out, const PhoneJoined& b);
void writeBody(LineWriter& out, const PhoneLeft& b);
void addPhoneReaders(std::unordered_map<std::string_view, BodyReader>& readers);
// fact_season.cpp
void writeBody(LineWriter& out, const SeasonClosed& b);
void writeBody(LineWriter& out, const UnitCollected& b);
void writeBody(LineWriter& out, const PhotoTaken& b);
void addSeasonReaders(std::unordered_map<std::string_view, BodyReader>& readers);
// Version of the kind that says what stands in the body: 1, or 2 where version 1 had no key for it.
[[nodiscard]] std::int64_t versionOf(const Body& body);
[[nodiscard]] std::int64_t newestOf(std::string_view kind);  // of a known kind
// fact_decode.cpp. Which kinds this program folds, and to which version, and how: "air-read 2, answer-..., fold 1". Views that another
// set has made are not used.
[[nodiscard]] const std::string& foldSign();

}  // namespace snugline::book
