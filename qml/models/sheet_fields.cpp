// SPDX-License-Identifier: Apache-2.0
#include "qml/models/sheet_fields.h"

#include <algorithm>
#include <array>

#include <QCoreApplication>
#include <QVariantMap>

#include "core/gear/sheet_figure.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_sheet.h"

namespace snugline::models {

namespace {

struct SheetEdit {
  Q_DECLARE_TR_FUNCTIONS(SheetEdit)
};

using gear::Figure;
using gear::Port;
using gear::SheetDraft;

constexpr std::array<Port, gear::kPortCount> kPorts{Port::crown, Port::sides, Port::jawLeft, Port::jawRight};

QVariantMap action(const QString& name, const QString& words) { return {{QStringLiteral("name"), name}, {QStringLiteral("text"), words}}; }
QString numbered(const char* name, std::size_t at) { return QStringLiteral("%1:%2").arg(QLatin1String(name)).arg(at); }

class Fields {
 public:
  Fields(SheetDraft draft, const std::vector<gear::SheetFault>& faults, const Typed& typed, UnitSystem units)
      : m_draft(std::move(draft)), m_faults(faults), m_typed(typed), m_units(units) {}

  SheetFields of(SheetSection section) {
    switch (section) {
      case SheetSection::names:
        names();
        break;
      case SheetSection::sizes:
        sizes();
        break;
      case SheetSection::air:
        air();
        break;
      case SheetSection::pads:
        pads("/jaw_pads", "jaw", m_draft.jawPads, SheetEdit::tr("Jaw pads"), SheetEdit::tr("Add jaw pads"),
             SheetEdit::tr("No jaw pads by thickness"));
        pads("/crown_pads", "crown", m_draft.crownPads, SheetEdit::tr("Crown pads"), SheetEdit::tr("Add crown pads"),
             SheetEdit::tr("No crown pads by thickness"));
        break;
      case SheetSection::brow:
        m_out.intro = SheetEdit::tr("The gap between eyebrows and front edge that still counts as snug. The target is %1.")
                          .arg(SheetWords::figure(fit::kBrowTarget.um, gear::FigureUnit::um, m_units));
        group("brow", {}, {figure("/brow_low_um", SheetEdit::tr("From")), figure("/brow_high_um", SheetEdit::tr("To"))});
        break;
      case SheetSection::straps:
        group("straps", {}, {straps()});
        break;
      case SheetSection::limits:
        group("limits", {},
              {figure("/certification_months", SheetEdit::tr("Certified for, months")),
               figure("/age_limit_months", SheetEdit::tr("Not recertified beyond this age, months; 0 where the maker states none"))});
        break;
      case SheetSection::order:
        order();
        break;
      case SheetSection::questions:
        questions();
        break;
      case SheetSection::cautions:
        m_out.intro = SheetEdit::tr("In the maker's own words. Shown where advice is given.");
        group("cautions", {}, {words("/cautions", SheetEdit::tr("Cautions"), 2000, "page")});
        break;
    }
    return std::move(m_out);
  }

 private:
  const gear::SheetFault* faultAt(const std::string& path) const {
    const auto found = std::find_if(m_faults.begin(), m_faults.end(), [&](const auto& fault) { return fault.path == path; });
    return found == m_faults.end() ? nullptr : &*found;
  }

  void say(QVariantMap& field, const std::string& path) const {
    const gear::SheetFault* fault = faultAt(path);
    const bool isMissing = fault != nullptr && fault->rule == gear::SheetRule::missing;
    if (isMissing)
      field[QStringLiteral("note")] = SheetWords::fault(*fault, m_units);  // not said is no slip yet
    else if (fault != nullptr)
      field[QStringLiteral("message")] = SheetWords::fault(*fault, m_units);
  }

  QVariantMap field(const char* kind, const std::string& path, const QString& label) const {
    return {{QStringLiteral("path"), text(path)},
            {QStringLiteral("kind"), QLatin1String(kind)},
            {QStringLiteral("label"), label},
            {QStringLiteral("text"), QString()},
            {QStringLiteral("note"), QString()},
            {QStringLiteral("message"), QString()},
            {QStringLiteral("steps"), QVariantList()},
            {QStringLiteral("typedLabel"), QString()},
            {QStringLiteral("choices"), QVariantList()},
            {QStringLiteral("current"), QString()},
            {QStringLiteral("longest"), 60},
            {QStringLiteral("isNumber"), true}};
  }

  QVariantMap figure(const std::string& path, const QString& label) {
    QVariantMap made = field("figure", path, label);
    const auto range = gear::figureRange(path);
    const Figure* value = gear::figureAt(m_draft, path);
    if (!range || value == nullptr) return made;
    const QString unit = range->unit == gear::FigureUnit::um ? (m_units == UnitSystem::metric ? QStringLiteral("mm") : QStringLiteral("in"))
                         : range->unit == gear::FigureUnit::pa
                             ? (m_units == UnitSystem::metric ? QStringLiteral("kPa") : QStringLiteral("psi"))
                             : QString();
    if (*value) {
      made[QStringLiteral("text")] = text(gear::printFigure(**value, range->unit, m_units));
      made[QStringLiteral("note")] = SheetWords::kept(**value, range->unit, m_units);
    }
    made[QStringLiteral("typedLabel")] =
        unit.isEmpty() ? label : SheetEdit::tr("%1, in %2", "what is typed, in which unit").arg(label, unit);
    QVariantList lower, higher;
    for (const gear::FigureStep& step : gear::figureSteps(range->unit, m_units)) {
      const QString words = text(step.text);
      lower.prepend(QVariantMap{{QStringLiteral("name"), QString::number(-step.wholes)},
                                {QStringLiteral("text"), QStringLiteral("\u2212") + words},
                                {QStringLiteral("spokenName"), SheetEdit::tr("%1: %2 less", "what, how much").arg(label, words)}});
      higher.append(QVariantMap{{QStringLiteral("name"), QString::number(step.wholes)},
                                {QStringLiteral("text"), QStringLiteral("+") + words},
                                {QStringLiteral("spokenName"), SheetEdit::tr("%1: %2 more", "what, how much").arg(label, words)}});
    }
    made[QStringLiteral("steps")] = lower + higher;
    say(made, path);
    if (const auto typed = m_typed.find(path); typed != m_typed.end()) {
      made[QStringLiteral("isNumber")] = false;
      const auto read = gear::readFigure(utf8(typed->second), range->unit, m_units);
      const bool isFar = !read && read.error().code == ErrorCode::outOfRange;
      made[QStringLiteral("message")] =
          isFar ? SheetWords::fault({path, gear::SheetRule::range, ErrorCode::outOfRange, {}, range->lowest, range->highest}, m_units)
                : SheetEdit::tr("\"%1\" is no number here").arg(typed->second.left(40));
    }
    return made;
  }

  QVariantMap words(const std::string& path, const QString& label, int longest, const char* kind = "text") {
    QVariantMap made = field(kind, path, label);
    if (const std::string* value = gear::textAt(m_draft, path))
      made[QStringLiteral("text")] = QString::fromStdString(*value);  // as it is, for it goes back as it is
    made[QStringLiteral("longest")] = longest;
    say(made, path);
    return made;
  }

  QVariantMap straps() {
    QVariantMap made = field("choice", "/strap_points", SheetEdit::tr("Points at which the chin strap is snapped to the shell"));
    made[QStringLiteral("choices")] =
        QVariantList{action(QStringLiteral("4"), SheetEdit::tr("Four")), action(QStringLiteral("6"), SheetEdit::tr("Six"))};
    if (m_draft.strapPoints) made[QStringLiteral("current")] = QString::number(*m_draft.strapPoints);
    say(made, "/strap_points");
    return made;
  }

  void group(const QString& key, const QString& title, const QVariantList& fields, const QVariantList& actions = {}) {
    m_out.groups.append(QVariantMap{{QStringLiteral("key"), key},
                                    {QStringLiteral("title"), title},
                                    {QStringLiteral("fields"), fields},
                                    {QStringLiteral("actions"), actions}});
  }
  void trouble(const std::string& path) {
    if (const gear::SheetFault* fault = faultAt(path))
      m_out.troubles.append(
          SheetEdit::tr("%1: %2", "where, what is wrong").arg(SheetWords::place(m_draft, path), SheetWords::fault(*fault, m_units)));
  }

  void names() {
    group(QStringLiteral("names"), {},
          {words("/name", SheetEdit::tr("Name, as the maker calls the model"), 60),
           words("/id", SheetEdit::tr("Short name, for lists and the terminal: small letters, digits and -"), 40)});
  }

  void sizes() {
    m_out.intro = SheetEdit::tr("Head around, small to large, both ends as printed. Neighbours may overlap or leave a gap.");
    trouble("/sizes");
    for (std::size_t i = 0; i < m_draft.sizes.size(); ++i) {
      const std::string path = "/sizes/" + std::to_string(i);
      const QString name = m_draft.sizes[i].name.empty() ? SheetEdit::tr("Size no. %1").arg(i + 1)
                                                         : SheetEdit::tr("Size %1").arg(PlainWords::text(m_draft.sizes[i].name));
      group(numbered("size", i), name,
            {words(path + "/name", SheetEdit::tr("Name, as the maker prints it"), 12), figure(path + "/low_um", SheetEdit::tr("From")),
             figure(path + "/high_um", SheetEdit::tr("To"))},
            {action(numbered("add-size", i + 1), SheetEdit::tr("Add a size after it")),
             action(numbered("remove-size", i), SheetEdit::tr("Take this size out"))});
    }
    m_out.actions.append(action(numbered("add-size", m_draft.sizes.size()), SheetEdit::tr("Add a size")));
  }

  void air() {
    if (m_draft.unsaid.air) {
      m_out.actions.append(action(QStringLiteral("no-air"), SheetEdit::tr("It has no air")));
    } else {
      trouble("/air");
    }
    for (std::size_t i = 0; i < m_draft.air.size(); ++i) {
      const gear::PortDraft& port = m_draft.air[i];
      if (!port.port) continue;
      const std::string path = "/air/" + std::to_string(i);
      QVariantList actions;
      const bool isRight = *port.port == Port::jawRight;
      if (isRight) actions.append(action(QStringLiteral("as-left"), SheetEdit::tr("As on the left")));
      const QString takeOut = isRight || *port.port == Port::jawLeft ? SheetEdit::tr("No air in the jaw") : SheetEdit::tr("No air here");
      actions.append(action(QStringLiteral("remove-air:") + text(gear::code(*port.port)), takeOut));
      group(QStringLiteral("air-") + text(gear::code(*port.port)), SheetEdit::tr("Air, %1").arg(MarkWords::port(*port.port)),
            {figure(path + "/start_pa", SheetEdit::tr("Set first to")), figure(path + "/low_pa", SheetEdit::tr("Worn from")),
             figure(path + "/high_pa", SheetEdit::tr("Worn to"))},
            actions);
    }
    for (const Port port : kPorts) {
      if (port == Port::jawRight || m_draft.hasPort(port)) continue;
      const QString where =
          port == Port::jawLeft ? SheetEdit::tr("Add air in the jaw") : SheetEdit::tr("Add air at %1").arg(MarkWords::port(port));
      m_out.actions.append(action(QStringLiteral("add-air:") + text(gear::code(port)), where));
    }
    if (m_draft.air.empty()) {
      m_out.intro = m_draft.unsaid.air ? SheetEdit::tr("Has this model air? Without an answer here nothing is known of cold or leaks.")
                                       : SheetEdit::tr("No air: fitted foam or pads only.");
      return;
    }
    group(QStringLiteral("allowances"), SheetEdit::tr("Limits of air"),
          {figure("/change_allowance_pa", SheetEdit::tr("Move by cold or height that calls for a look")),
           figure("/leak_per_week_pa", SheetEdit::tr("Loss in a week that is no leak"))});
  }

  void pads(const std::string& path, const char* item, const std::optional<gear::PadsDraft>& pads, const QString& title, const QString& add,
            const QString& none) {
    if (!pads) {
      if (faultAt(path) != nullptr) {
        m_out.intro = SheetEdit::tr("Has this model pads that are swapped by thickness?");
        m_out.actions.append(action(QStringLiteral("no-pads:") + QLatin1String(item), none));
      }
      m_out.actions.append(action(QStringLiteral("add-pads:") + QLatin1String(item), add));
      return;
    }
    trouble(path);
    trouble(path + "/steps_um");
    QVariantList fields, actions{action(QStringLiteral("add-step:") + QLatin1String(item), SheetEdit::tr("Add a thickness"))};
    QVariantMap fitted = field("choice", path + "/fitted_um", SheetEdit::tr("In the helmet as delivered"));
    QVariantList choices;
    for (std::size_t i = 0; i < pads->steps.size(); ++i) {
      fields.append(figure(path + "/steps_um/" + std::to_string(i), SheetEdit::tr("Thickness no. %1").arg(i + 1)));
      if (pads->steps[i])
        choices.append(action(QString::number(*pads->steps[i]), SheetWords::figure(*pads->steps[i], gear::FigureUnit::um, m_units)));
    }
    fitted[QStringLiteral("choices")] = choices;
    if (pads->fitted) fitted[QStringLiteral("current")] = QString::number(*pads->fitted);
    say(fitted, path + "/fitted_um");
    fields.append(fitted);
    if (!pads->steps.empty())
      actions.append(action(QStringLiteral("remove-step:") + QLatin1String(item), SheetEdit::tr("Take the thickest out")));
    actions.append(action(QStringLiteral("remove-pads:") + QLatin1String(item), SheetEdit::tr("No such pads")));
    group(QStringLiteral("pads-") + QLatin1String(item), title, fields, actions);
  }

  void order() {
    m_out.intro = m_draft.air.empty() ? SheetEdit::tr("In which order the nine marks are checked.")
                                      : SheetEdit::tr("In which order the air is set at the first fit, and the nine marks are checked.");
    trouble("/fitting_order");
    for (std::size_t i = 0; i < m_draft.order.size(); ++i) {
      QVariantList actions;
      if (i > 0) actions.append(action(numbered("earlier", i), SheetEdit::tr("Earlier")));
      if (i + 1 < m_draft.order.size()) actions.append(action(numbered("earlier", i + 1), SheetEdit::tr("Later")));
      const QString where = m_draft.order[i] ? PlainWords::sentenceCase(MarkWords::port(*m_draft.order[i])) : QStringLiteral("?");
      group(numbered("order", i), SheetEdit::tr("%1. %2", "number, place with air").arg(i + 1).arg(where), {}, actions);
      trouble("/fitting_order/" + std::to_string(i));
    }
    trouble("/mark_order");
    for (std::size_t i = 0; i < gear::kMarkCodes.size(); ++i) {
      QVariantList actions;
      if (i > 0) actions.append(action(numbered("earlier-mark", i), SheetEdit::tr("Earlier")));
      if (i + 1 < gear::kMarkCodes.size()) actions.append(action(numbered("earlier-mark", i + 1), SheetEdit::tr("Later")));
      const bool isUsual = m_draft.markOrder.empty();
      const std::string code(isUsual                        ? std::string(gear::kMarkCodes[i])
                             : i < m_draft.markOrder.size() ? m_draft.markOrder[i]
                                                            : std::string());
      const auto mark = fit::markFromCode(code);
      group(numbered("mark", i),
            SheetEdit::tr("Mark %1. %2", "number, name of a mark").arg(i + 1).arg(mark ? MarkWords::name(*mark) : QStringLiteral("?")), {},
            actions);
      trouble("/mark_order/" + std::to_string(i));
    }
  }

  void questions() {
    m_out.intro = SheetEdit::tr("Yes or no questions of this model, asked after the nine marks. A no stops the check with its reason.");
    trouble("/questions");
    for (std::size_t i = 0; i < m_draft.questions.size(); ++i) {
      const std::string path = "/questions/" + std::to_string(i);
      group(numbered("question", i), SheetEdit::tr("Question %1").arg(i + 1),
            {words(path + "/ask", SheetEdit::tr("What it asks"), 300),
             words(path + "/if_no", SheetEdit::tr("The reason shown when the answer is no"), 300),
             words(path + "/id", SheetEdit::tr("Short name: small letters, digits and -"), 40)},
            {action(numbered("remove-question", i), SheetEdit::tr("Take this question out"))});
    }
    m_out.actions.append(action(QStringLiteral("add-question"), SheetEdit::tr("Add a question")));
  }

  SheetDraft m_draft;
  const std::vector<gear::SheetFault>& m_faults;
  const Typed& m_typed;
  UnitSystem m_units;
  SheetFields m_out;
};

constexpr std::array<const char*, kSheetSectionCount> kCodes{"names",  "sizes",  "air",   "pads",      "brow",
                                                             "straps", "limits", "order", "questions", "cautions"};

}  // namespace

QString code(SheetSection section) { return QLatin1String(kCodes[static_cast<std::size_t>(section)]); }

std::optional<SheetSection> sheetSection(const QString& code) {
  for (std::size_t i = 0; i < kCodes.size(); ++i)
    if (code == QLatin1String(kCodes[i])) return static_cast<SheetSection>(i);
  return std::nullopt;
}

QString sectionName(SheetSection section) {
  switch (section) {
    case SheetSection::names:
      return SheetEdit::tr("Names");
    case SheetSection::sizes:
      return SheetEdit::tr("Sizes");
    case SheetSection::air:
      return SheetEdit::tr("Air");
    case SheetSection::pads:
      return SheetEdit::tr("Pads");
    case SheetSection::brow:
      return SheetEdit::tr("Brow");
    case SheetSection::straps:
      return SheetEdit::tr("Straps");
    case SheetSection::limits:
      return SheetEdit::tr("Limits");
    case SheetSection::order:
      return SheetEdit::tr("Order");
    case SheetSection::questions:
      return SheetEdit::tr("Questions");
    case SheetSection::cautions:
      return SheetEdit::tr("Cautions");
  }
  return {};
}

SheetSection sectionOf(const std::string& path) {
  const auto begins = [&](const char* with) { return path.rfind(with, 0) == 0; };
  if (begins("/sizes")) return SheetSection::sizes;
  if (begins("/air") || begins("/change") || begins("/leak")) return SheetSection::air;
  if (begins("/jaw_pads") || begins("/crown_pads")) return SheetSection::pads;
  if (begins("/brow")) return SheetSection::brow;
  if (begins("/strap")) return SheetSection::straps;
  if (begins("/certification") || begins("/age")) return SheetSection::limits;
  if (begins("/fitting_order") || begins("/mark_order")) return SheetSection::order;
  if (begins("/questions")) return SheetSection::questions;
  if (begins("/cautions")) return SheetSection::cautions;
  return SheetSection::names;
}

SheetFields fieldsOf(const SheetDraft& draft, SheetSection section, const std::vector<gear::SheetFault>& faults, const Typed& typed,
                     UnitSystem units) {
  return Fields(draft, faults, typed, units).of(section);
}

}  // namespace snugline::models
