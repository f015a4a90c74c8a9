// SPDX-License-Identifier: Apache-2.0
// The pages about air and pads: what is fitted before anything is changed, and what a gauge reads. Which bladder is asked next is read
// from the answers in the Book, so that a restart comes to the same one.
#include <algorithm>

#include "drawn_values.h"
#include "guide_page_maker.h"
#include "sentences_gear.h"

namespace snugline::models {

using Maker = GuidePageMaker;

namespace {

constexpr std::array kPadPlaces{gear::Part::jawLeft, gear::Part::jawRight, gear::Part::crownPad};

const fit::Fitted* fittedOf(const season::AnswerRecord& record) { return std::get_if<fit::Fitted>(&record.answer); }
bool namesAir(const fit::Fitted& one) {
  return std::any_of(one.air.begin(), one.air.end(), [](const auto& air) { return air.has_value(); });
}
bool namesPad(const fit::Fitted& one) {
  return std::any_of(one.pad.begin(), one.pad.end(), [](const auto& pad) { return pad.has_value(); });
}

}  // namespace

bool isPortSaid(const season::CheckRecord& check, gear::Port port) {
  return std::any_of(check.answers.begin(), check.answers.end(), [port](const season::AnswerRecord& record) {
    const auto* one = fittedOf(record);
    return one != nullptr && one->air[static_cast<std::size_t>(port)].has_value();
  });
}

namespace {

bool isPadSaid(const season::CheckRecord& check, gear::Part part) {
  return std::any_of(check.answers.begin(), check.answers.end(), [part](const season::AnswerRecord& record) {
    const auto* one = fittedOf(record);
    return one != nullptr && one->pad[static_cast<std::size_t>(part)].has_value();
  });
}

// "Nothing more to set", or the whole list at once.
bool isClosing(const fit::Fitted& one, const gear::ModelSheet& sheet) {
  if (!namesAir(one)) return !namesPad(one);
  return std::all_of(sheet.air.begin(), sheet.air.end(),
                     [&one](const gear::AirPort& port) { return one.air[static_cast<std::size_t>(port.port)].has_value(); });
}

}  // namespace

// After the hair and before any mark, until the list was closed.
bool Maker::isFittingAsked() const {
  const gear::ModelSheet& sheet = *m_setup.sheet;
  if (!m_setup.asksFitted || (sheet.air.empty() && !sheet.jawPads && !sheet.crownPads)) return false;
  const fit::State& state = m_check.state;
  const bool isFresh = state.isHairWet.has_value() && state.turns == 0 &&
                       std::all_of(state.marks.begin(), state.marks.end(), [](const auto& m) { return m.finding == fit::Finding::unseen; });
  return isFresh && std::none_of(m_check.answers.begin(), m_check.answers.end(), [&sheet](const season::AnswerRecord& record) {
           const auto* one = fittedOf(record);
           return one != nullptr && isClosing(*one, sheet);
         });
}

// Once a reading was given, the next bladder in the sheet's order is asked without going back to the list.
std::optional<gear::Port> Maker::nextPort() const {
  if (m_check.answers.empty()) return std::nullopt;
  const auto* last = fittedOf(m_check.answers.back());
  if (last == nullptr || !namesAir(*last)) return std::nullopt;
  for (const gear::Port port : m_setup.sheet->fittingOrder) {
    if (m_setup.sheet->hasPort(port) && !isPortSaid(m_check, port)) return port;
  }
  return std::nullopt;
}

void Maker::fittedAir(gear::Port port, int place) {
  const gear::AirPort& air = *m_setup.sheet->airAt(port);
  const auto i = static_cast<std::size_t>(port);
  const bool isSaid = isPortSaid(m_check, port);
  const Pressure shown = isSaid ? m_check.state.fitted.air[i].value_or(air.start) : air.start;
  m_page.choices << guideAnswer(
      QStringLiteral("air-") + codeWord(gear::code(port)),
      GuidePageWords::tr("%1. %2: %3", "order, bladder, pressure")
          .arg(place)
          .arg(PlainWords::sentenceCase(MarkWords::port(port)), PlainWords::text(print(shown, m_speech.gaugeUnits()))),
      QStringLiteral("plain"), isSaid ? GuidePageWords::tr("read on the gauge") : GuidePageWords::tr("the sheet's start"));
  m_page.touchParts << QStringLiteral("port-") + codeWord(gear::code(port));
}

void Maker::fittedPad(gear::Part part) {
  const gear::PadSet* pads = m_setup.sheet->padsAt(part);
  if (pads == nullptr) return;
  const Length shown = m_check.state.fitted.pad[static_cast<std::size_t>(part)].value_or(pads->steps[pads->fitted]);
  m_page.choices << guideAnswer(QStringLiteral("pad-") + codeWord(gear::code(part)),
                                GuidePageWords::tr("%1: %2", "pad, thickness")
                                    .arg(PlainWords::sentenceCase(MarkWords::part(part)), PlainWords::text(print(shown, m_speech.units))),
                                QStringLiteral("plain"),
                                isPadSaid(m_check, part) ? GuidePageWords::tr("chosen") : GuidePageWords::tr("as delivered"));
}

void Maker::fitted() {
  const gear::ModelSheet& sheet = *m_setup.sheet;
  if (m_touches.port) return reading(*m_touches.port);
  if (const auto next = nextPort(); next && !m_touches.isListWanted) return reading(*next);
  m_page.stage = Stage::fitted;
  int place = 0;
  bool isAnySaid = false;
  bool isAllSaid = true;
  for (const gear::Port port : sheet.fittingOrder) {
    if (!sheet.hasPort(port)) continue;
    fittedAir(port, ++place);
    (isPortSaid(m_check, port) ? isAnySaid : isAllSaid) = isPortSaid(m_check, port);
  }
  for (const gear::Part part : kPadPlaces) fittedPad(part);
  m_page.drawing = QStringLiteral("profile");
  if (sheet.air.empty()) {
    m_page.title = GuidePageWords::tr("Fitted pads");
    m_page.ask = GuidePageWords::tr("Which pads are in the helmet?");
    m_page.hint = GuidePageWords::tr("Touch a pad to choose its thickness.");
    m_page.answers << guideAnswer(QStringLiteral("set"), GuidePageWords::tr("As listed"));
    return;
  }
  m_page.title = GuidePageWords::tr("Starting air");
  m_page.ask = GuidePageWords::tr("Set the air in this order, helmet on, athlete on a knee.");
  m_page.hint = GuidePageWords::tr("Touch a bladder to say what the gauge reads.");
  if (isAllSaid) {
    m_page.answers << guideAnswer(QStringLiteral("no-gauge"), GuidePageWords::tr("All set, go on"));
  } else {
    m_page.answers << guideAnswer(QStringLiteral("set"),
                                  isAnySaid ? GuidePageWords::tr("The rest as listed") : GuidePageWords::tr("Set as listed"),
                                  QStringLiteral("plain"), GuidePageWords::tr("by gauge"))
                   << guideAnswer(QStringLiteral("no-gauge"),
                                  isAnySaid ? GuidePageWords::tr("No gauge for the rest") : GuidePageWords::tr("No gauge here"),
                                  QStringLiteral("plain"), GuidePageWords::tr("by pumps and feel"));
  }
  m_page.motion = QStringLiteral("pump");
}

void Maker::drawPort(gear::Port port) {
  const bool isJaw = port == gear::Port::jawLeft || port == gear::Port::jawRight;
  m_page.drawing = isJaw ? QStringLiteral("front") : QStringLiteral("profile");
  m_page.focusPart = QStringLiteral("port-") + codeWord(gear::code(port));
}

// Which value stands, in the units chosen; what cannot be a reading is said by core.
void Maker::entry(gear::Port port) {
  const gear::AirPort* air = m_setup.sheet->airAt(port);
  const auto unitOf = [](UnitSystem units) {
    const std::string zero = print(Pressure{}, units);
    return PlainWords::text(zero.substr(zero.find(' ') + 1));
  };
  const QString unit = unitOf(m_speech.gaugeUnits());
  const QString otherUnit = unitOf(m_speech.gaugeUnits() == UnitSystem::metric ? UnitSystem::us : UnitSystem::metric);
  QString value, message;
  if (m_touches.pressure) {
    value = PlainWords::text(print(*m_touches.pressure, m_speech.gaugeUnits()));
    value.truncate(value.lastIndexOf(QLatin1Char(' ')));
    const auto taken = fit::take(m_setup, m_check.state, fit::AirRead{port, *m_touches.pressure, true});
    if (!taken) message = GuidePageWords::tr("No bladder reads that. See the number and the unit.");
  }
  QString note;
  if (air != nullptr) {
    const auto number = [this](Pressure p) {
      const std::string printed = print(p, m_speech.gaugeUnits());
      return PlainWords::text(printed.substr(0, printed.find(' ')));
    };
    note = GuidePageWords::tr("Sheet: %1, between %2 and %3", "start, lowest, highest with unit")
               .arg(number(air->start), number(air->low), PlainWords::text(print(air->high, m_speech.gaugeUnits())));
  }
  m_page.entry = {{QStringLiteral("label"), PlainWords::sentenceCase(MarkWords::port(port))},
                  {QStringLiteral("port"), codeWord(gear::code(port))},
                  {QStringLiteral("known"), m_touches.pressure.has_value()},
                  {QStringLiteral("value"), value},
                  {QStringLiteral("unit"), unit},
                  {QStringLiteral("otherUnit"), otherUnit},
                  {QStringLiteral("note"), note},
                  {QStringLiteral("message"), message},
                  {QStringLiteral("typed"), m_touches.typed}};
}

void Maker::reading(gear::Port port) {
  const gear::AirPort* air = m_setup.sheet->airAt(port);
  if (air == nullptr) return;
  m_page.stage = Stage::reading;
  m_page.title = GuidePageWords::tr("Starting air: %1", "bladder").arg(MarkWords::port(port));
  m_page.ask = GuidePageWords::tr("What does the gauge read?");
  entry(port);
  if (m_touches.pressure && m_page.entry[QStringLiteral("message")].toString().isEmpty()) {
    m_page.answers << guideAnswer(QStringLiteral("record"),
                                  GuidePageWords::tr("Reads %1").arg(PlainWords::text(print(*m_touches.pressure, m_speech.gaugeUnits()))),
                                  QStringLiteral("primary"));
  } else {
    m_page.answers << guideAnswer(QStringLiteral("start"),
                                  GuidePageWords::tr("Reads %1").arg(PlainWords::text(print(air->start, m_speech.gaugeUnits()))),
                                  QStringLiteral("plain"), GuidePageWords::tr("the sheet's start"));
  }
  m_page.answers << guideAnswer(QStringLiteral("list"), GuidePageWords::tr("No gauge here"), QStringLiteral("plain"),
                                GuidePageWords::tr("back to the list"));
  drawPort(port);
}

void Maker::pad(gear::Part part) {
  const gear::PadSet* pads = m_setup.sheet->padsAt(part);
  if (pads == nullptr) return;
  m_page.stage = Stage::pad;
  m_page.title = PlainWords::sentenceCase(MarkWords::part(part));
  m_page.ask = GuidePageWords::tr("Which thickness is in the helmet?");
  for (std::size_t i = 0; i < pads->steps.size(); ++i) {
    m_page.choices << guideAnswer(QStringLiteral("step-%1").arg(i), PlainWords::text(print(pads->steps[i], m_speech.units)),
                                  QStringLiteral("plain"), i == pads->fitted ? GuidePageWords::tr("as delivered") : QString());
  }
  m_page.answers << guideAnswer(QStringLiteral("list"), GuidePageWords::tr("Back to the list"), QStringLiteral("quiet"));
  m_page.drawing = part == gear::Part::crownPad ? QStringLiteral("profile") : QStringLiteral("front");
  m_page.focusPart = part == gear::Part::crownPad ? QStringLiteral("crown") : codeWord(gear::code(part));
}

// The gauge is read, nothing is changed.
void Maker::gaugePort() {
  m_page.stage = Stage::gaugePort;
  m_page.title = GuidePageWords::tr("Read the gauge");
  m_page.ask = GuidePageWords::tr("Which bladder?");
  m_page.hint = GuidePageWords::tr("A reading through the needle can bleed a small bladder: hold is seen again.");
  for (const gear::Port port : m_setup.sheet->fittingOrder) {
    if (!m_setup.sheet->hasPort(port)) continue;
    const QString name = QStringLiteral("port-") + codeWord(gear::code(port));
    m_page.choices << guideAnswer(name, PlainWords::sentenceCase(MarkWords::port(port)));
    m_page.touchParts << name;
  }
  m_page.answers << guideAnswer(QStringLiteral("back"), GuidePageWords::tr("Nothing, go back"), QStringLiteral("quiet"));
  m_page.drawing = QStringLiteral("profile");
}

void Maker::gauge(gear::Port port) {
  m_page.stage = Stage::gauge;
  m_page.title = GuidePageWords::tr("Read the gauge");
  m_page.ask = GuidePageWords::tr("What does the gauge read?");
  entry(port);
  if (m_touches.pressure && m_page.entry[QStringLiteral("message")].toString().isEmpty()) {
    m_page.answers << guideAnswer(QStringLiteral("on-head"), GuidePageWords::tr("On the head"))
                   << guideAnswer(QStringLiteral("off-head"), GuidePageWords::tr("Off the head"));
  } else {
    m_page.answers << guideAnswer(QStringLiteral("back"), GuidePageWords::tr("Nothing, go back"), QStringLiteral("quiet"));
  }
  drawPort(port);
}

}  // namespace snugline::models
