// SPDX-License-Identifier: Apache-2.0
#include "core/gear/keyboard_layout.h"

#include <algorithm>
#include <array>
#include <span>

#include "core/gear/own_serial.h"
#include "core/gear/tag.h"
#include "core/gear/utf8.h"

namespace snugline::gear {

namespace {

struct Key {
  char sent;
  std::string_view shown;
};
// Each key of a US keyboard that shows something else there. Dead keys (accents that wait for a letter) are left out.
constexpr std::array kGerman{Key{'y', "z"}, Key{'z', "y"}, Key{'Y', "Z"}, Key{'Z', "Y"}, Key{'-', "ß"},  Key{'[', "ü"}, Key{']', "+"},
                             Key{'{', "Ü"}, Key{'}', "*"}, Key{';', "ö"}, Key{':', "Ö"}, Key{'\'', "ä"}, Key{'"', "Ä"}, Key{'\\', "#"},
                             Key{'|', "'"}, Key{'/', "-"}, Key{'?', "_"}, Key{'_', "?"}, Key{'<', ";"},  Key{'>', ":"}, Key{'@', "\""},
                             Key{'#', "§"}, Key{'^', "&"}, Key{'&', "/"}, Key{'*', "("}, Key{'(', ")"},  Key{')', "="}};
constexpr std::array kFrench{Key{'a', "q"},  Key{'q', "a"}, Key{'A', "Q"}, Key{'Q', "A"}, Key{'z', "w"}, Key{'w', "z"}, Key{'Z', "W"},
                             Key{'W', "Z"},  Key{'m', ","}, Key{'M', "?"}, Key{';', "m"}, Key{':', "M"}, Key{',', ";"}, Key{'<', "."},
                             Key{'.', ":"},  Key{'>', "/"}, Key{'/', "!"}, Key{'?', "§"}, Key{'1', "&"}, Key{'2', "é"}, Key{'3', "\""},
                             Key{'4', "'"},  Key{'5', "("}, Key{'6', "-"}, Key{'7', "è"}, Key{'8', "_"}, Key{'9', "ç"}, Key{'0', "à"},
                             Key{'!', "1"},  Key{'@', "2"}, Key{'#', "3"}, Key{'$', "4"}, Key{'%', "5"}, Key{'^', "6"}, Key{'&', "7"},
                             Key{'*', "8"},  Key{'(', "9"}, Key{')', "0"}, Key{'-', ")"}, Key{'_', "°"}, Key{']', "$"}, Key{'}', "£"},
                             Key{'\'', "ù"}, Key{'"', "%"}, Key{'\\', "*"}};
constexpr std::array kSpanish{Key{'-', "'"},  Key{'_', "?"},  Key{'=', "¡"}, Key{'+', "¿"}, Key{']', "+"}, Key{'}', "*"}, Key{';', "ñ"},
                              Key{':', "Ñ"},  Key{'\\', "ç"}, Key{'|', "Ç"}, Key{'/', "-"}, Key{'?', "_"}, Key{'<', ";"}, Key{'>', ":"},
                              Key{'@', "\""}, Key{'#', "·"},  Key{'^', "&"}, Key{'&', "/"}, Key{'*', "("}, Key{'(', ")"}, Key{')', "="}};
constexpr std::array kLayouts{KeyboardLayout::capsLock, KeyboardLayout::german, KeyboardLayout::french, KeyboardLayout::spanish};

std::span<const Key> keysOf(KeyboardLayout layout) {
  switch (layout) {
    case KeyboardLayout::german:
      return kGerman;
    case KeyboardLayout::french:
      return kFrench;
    case KeyboardLayout::spanish:
      return kSpanish;
    case KeyboardLayout::capsLock:
      return {};
  }
  return {};
}

std::string otherCase(std::string_view text) {
  std::string out(text);
  for (char& c : out) {
    if (c >= 'a' && c <= 'z') {
      c = static_cast<char>(c - 'a' + 'A');
    } else if (c >= 'A' && c <= 'Z') {
      c = static_cast<char>(c - 'A' + 'a');
    }
  }
  return out;
}

bool isPlainAscii(std::string_view text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
}

std::string sentFrom(KeyboardLayout layout, std::string_view shown) {
  if (layout == KeyboardLayout::capsLock) return otherCase(shown);
  std::string sent;
  while (!shown.empty()) {
    const auto keys = keysOf(layout);
    const auto key = std::find_if(keys.begin(), keys.end(), [&](const Key& k) { return shown.starts_with(k.shown); });
    sent += key == keys.end() ? shown.front() : key->sent;
    shown.remove_prefix(key == keys.end() ? 1 : key->shown.size());
  }
  return sent;
}

// A tag that says of itself that it was read right: by its check digit, or by the last letter of a label of our own.
bool isSound(std::string_view text, Day today) {
  if (const auto own = readOwnSerial(text)) return own->isCheckOk;
  const auto tag = parseTag(text, today);
  return tag && tag->form != TagForm::plain && tag->isCheckDigitOk;
}

// The dash of a plain serial, typed on the key that has it on a German or Spanish keyboard (/ on a US one), or shown by a Spanish one (').
// Letters are let be: which of the layouts it is, the dash alone does not say.
std::optional<LayoutGuess> dashTurned(std::string_view text) {
  const bool isLink = text.find("://") != std::string_view::npos;
  if (isLink || text.find('-') != std::string_view::npos) return std::nullopt;
  for (const char shown : {'/', '\''}) {
    if (text.find(shown) == std::string_view::npos) continue;
    std::string meant(text);
    std::replace(meant.begin(), meant.end(), shown, '-');
    return LayoutGuess{KeyboardLayout::spanish, std::move(meant), shown == '/', true};
  }
  return std::nullopt;
}

}  // namespace

std::string_view code(KeyboardLayout l) {
  switch (l) {
    case KeyboardLayout::german:
      return "german";
    case KeyboardLayout::french:
      return "french";
    case KeyboardLayout::spanish:
      return "spanish";
    case KeyboardLayout::capsLock:
      return "caps-lock";
  }
  return {};
}

std::string shownOn(KeyboardLayout layout, std::string_view sent) {
  if (layout == KeyboardLayout::capsLock) return otherCase(sent);
  std::string shown;
  for (const char c : sent) {
    const auto keys = keysOf(layout);
    const auto key = std::find_if(keys.begin(), keys.end(), [&](const Key& k) { return k.sent == c; });
    if (key == keys.end()) {
      shown += c;
    } else {
      shown += key->shown;
    }
  }
  return shown;
}

std::optional<LayoutGuess> wrongLayout(std::string_view text, Day today) {
  if (!isUtf8(text) || isSound(text, today)) return std::nullopt;
  for (const bool isScanner : {false, true}) {
    for (const KeyboardLayout layout : kLayouts) {
      std::string meant = isScanner ? shownOn(layout, text) : sentFrom(layout, text);
      if (meant != text && isSound(meant, today)) return LayoutGuess{layout, std::move(meant), isScanner, false};
    }
  }
  // A plain serial: only letters that no maker prints give it away, or its dash.
  if (isPlainAscii(text)) return dashTurned(text);
  for (const KeyboardLayout layout : kLayouts) {
    std::string meant = sentFrom(layout, text);
    if (isPlainAscii(meant) && parseTag(meant, today)) return LayoutGuess{layout, std::move(meant), false, false};
  }
  return std::nullopt;
}

}  // namespace snugline::gear
