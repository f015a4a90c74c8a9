// SPDX-License-Identifier: Apache-2.0
#include "qml/models/sheet_page.h"

#include <algorithm>
#include <tuple>

#include <QVariantMap>

#include "core/book/fold.h"
#include "core/gear/sheet_figure.h"
#include "core/season/sheet_chain.h"
#include "qml/models/choices.h"
#include "qml/models/desk.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_sheet.h"

namespace snugline::models {

namespace {

constexpr double kChartRoom = 0.04;  // of the chart, free at both ends

QString um(Length v, UnitSystem units) { return SheetWords::figure(v.um, gear::FigureUnit::um, units); }
QString pa(Pressure v, UnitSystem units) { return SheetWords::figure(v.pa, gear::FigureUnit::pa, units); }
QString range(const QString& low, const QString& high) { return SheetPage::tr("%1 to %2").arg(low, high); }

QString placeOf(gear::Port port) {
  switch (port) {
    case gear::Port::crown:
      return QStringLiteral("port-crown");
    case gear::Port::sides:
      return QStringLiteral("port-sides");
    case gear::Port::jawLeft:
      return QStringLiteral("port-jaw-left");
    case gear::Port::jawRight:
      return QStringLiteral("port-jaw-right");
  }
  return {};
}

QString airDetail(const gear::AirPort& port, UnitSystem units) {
  return SheetPage::tr("start %1, within %2").arg(pa(port.start, units), range(pa(port.low, units), pa(port.high, units)));
}

QVariantMap fact(const QString& name, const QString& words) { return {{QStringLiteral("name"), name}, {QStringLiteral("words"), words}}; }

}  // namespace

QVariantMap drawingOf(const gear::ModelSheet& sheet) {
  return {{QStringLiteral("hasCrownAir"), sheet.hasPort(gear::Port::crown)},
          {QStringLiteral("hasSideAir"), sheet.hasPort(gear::Port::sides)},
          {QStringLiteral("hasJawAir"), sheet.hasPort(gear::Port::jawLeft)},
          {QStringLiteral("strapPoints"), sheet.strapPoints == 6 ? 6 : 4},
          {QStringLiteral("description"), SheetPage::tr("Helmet with %1").arg(SheetWords::air(sheet))}};
}

QVariantList callouts(const gear::ModelSheet& sheet, UnitSystem units) {
  QVariantList list;
  const auto add = [&](const QString& place, const QString& title, const QString& figure, const QString& detail) {
    list.append(QVariantMap{{QStringLiteral("place"), place},
                            {QStringLiteral("title"), title},
                            {QStringLiteral("figure"), figure},
                            {QStringLiteral("detail"), detail}});
  };
  for (const gear::AirPort& port : sheet.air) {
    // The drawing shows the left side; where both are alike one label says both.
    const gear::AirPort* left = sheet.airAt(gear::Port::jawLeft);
    const bool isJaw = port.port == gear::Port::jawLeft || port.port == gear::Port::jawRight;
    const gear::AirPort* right = sheet.airAt(gear::Port::jawRight);
    const bool isAlike =
        isJaw && left != nullptr && right != nullptr && left->start == right->start && left->low == right->low && left->high == right->high;
    if (isAlike && port.port == gear::Port::jawRight) continue;
    const QString title = isAlike ? SheetPage::tr("Air, jaw left and right") : SheetPage::tr("Air, %1").arg(MarkWords::port(port.port));
    add(placeOf(port.port), title, pa(port.start, units), airDetail(port, units));
  }
  const auto pads = [&](const std::optional<gear::PadSet>& set, const QString& place, const QString& title) {
    if (set && set->fitted < set->steps.size()) add(place, title, um(set->steps[set->fitted], units), SheetWords::steps(*set, units));
  };
  pads(sheet.crownPads, QStringLiteral("crown-pad"), SheetPage::tr("Crown pads"));
  pads(sheet.jawPads, QStringLiteral("jaw-pad"), SheetPage::tr("Jaw pads"));
  add(QStringLiteral("brow"), SheetPage::tr("Brow gap"), range(um(sheet.browLow, units), um(sheet.browHigh, units)),
      range(um(sheet.browLow, units), um(sheet.browHigh, units)));
  add(QStringLiteral("strap"), SheetPage::tr("Chin strap"), SheetPage::tr("%n point(s)", nullptr, sheet.strapPoints),
      SheetPage::tr("%n point(s)", nullptr, sheet.strapPoints));
  return list;
}

QVariantList sizeChart(const gear::ModelSheet& sheet, UnitSystem units) {
  QVariantList list;
  if (sheet.sizes.empty()) return list;
  std::int64_t low = sheet.sizes.front().low.um, high = low;
  for (const gear::SizeBand& band : sheet.sizes) {
    low = std::min({low, band.low.um, band.high.um});
    high = std::max({high, band.low.um, band.high.um});
  }
  const double span = std::max<double>(1, static_cast<double>(high - low));
  const auto share = [&](std::int64_t at) { return kChartRoom + (1 - 2 * kChartRoom) * static_cast<double>(at - low) / span; };
  const gear::SizeBand* before = nullptr;
  for (const gear::SizeBand& band : sheet.sizes) {
    QString join;
    bool isGap = false, isOverlap = false;
    if (before != nullptr) {
      const std::int64_t apart = band.low.um - before->high.um;
      const QString name = PlainWords::text(before->name);
      isGap = apart > 0;
      isOverlap = apart < 0;
      join = isGap       ? SheetPage::tr("Gap of %1 after %2").arg(um(Length{apart}, units), name)
             : isOverlap ? SheetPage::tr("Overlaps %1 by %2").arg(name, um(Length{-apart}, units))
                         : SheetPage::tr("Meets %1").arg(name);
    }
    const QString name = PlainWords::text(band.name), words = range(um(band.low, units), um(band.high, units));
    list.append(QVariantMap{{QStringLiteral("name"), name},
                            {QStringLiteral("words"), words},
                            {QStringLiteral("join"), join},
                            {QStringLiteral("isGap"), isGap},
                            {QStringLiteral("isOverlap"), isOverlap},
                            {QStringLiteral("from"), share(std::min(band.low.um, band.high.um))},
                            {QStringLiteral("to"), share(std::max(band.low.um, band.high.um))},
                            {QStringLiteral("joinFrom"), before == nullptr ? 0 : share(std::min(before->high.um, band.low.um))},
                            {QStringLiteral("joinTo"), before == nullptr ? 0 : share(std::max(before->high.um, band.low.um))}});
    before = &band;
  }
  return list;
}

SheetPage::SheetPage(Desk* desk, const Choices* choices, QObject* parent) : QObject(parent), m_desk(desk), m_choices(choices) {
  connect(desk, &Desk::opened, this, &SheetPage::changed);
  connect(desk, &Desk::changed, this, &SheetPage::changed);
  connect(choices, &Choices::changed, this, [this] {
    readHistory();
    emit changed();
  });
}

const gear::ModelSheet* SheetPage::sheet() const { return m_desk->views().sheet(m_hash); }

void SheetPage::open(const QString& hash) {
  m_hash = utf8(hash);
  m_history.clear();
  m_exported.clear();
  m_refusal.clear();
  readHistory();
  emit changed();
}

void SheetPage::follow() {
  if (sheet() != nullptr) open(text(m_desk->views().standingSheet(m_hash)));
}

QString SheetPage::name() const { return sheet() == nullptr ? QString() : PlainWords::text(sheet()->name); }
bool SheetPage::isStanding() const { return sheet() != nullptr && season::isStanding(m_desk->views(), m_hash); }

QString SheetPage::stateWords() const {
  const auto record = m_desk->views().sheets.find(m_hash);
  if (record == m_desk->views().sheets.end()) return {};
  if (isStanding()) return tr("Counts. First adopted %1").arg(timeWords(record->second.adopted.at, m_desk->today()));
  return tr("Counts no more. Replaced %1")
      .arg(record->second.replaced ? timeWords(record->second.replaced->stamp.at, m_desk->today()) : QString());
}

QString SheetPage::useWords() const {
  const season::Views& views = m_desk->views();
  const std::string& standing = views.standingSheet(m_hash);
  int units = 0, worn = 0;
  for (const auto& [id, unit] : views.units) {
    if (unit.place == season::UnitPlace::retired || unit.sheet.empty() || views.standingSheet(unit.sheet) != standing) continue;
    ++units;
    worn += unit.athletes.empty() ? 0 : 1;
  }
  if (units == 0) return tr("No helmet goes by it");
  return tr("%1, %2", "helmets, those worn").arg(tr("%n helmet(s)", nullptr, units), tr("%n with athletes", nullptr, worn));
}

QVariantMap SheetPage::drawn() const { return sheet() == nullptr ? QVariantMap() : drawingOf(*sheet()); }
QVariantList SheetPage::callouts() const { return sheet() == nullptr ? QVariantList() : models::callouts(*sheet(), m_choices->units()); }
QVariantList SheetPage::chart() const { return sheet() == nullptr ? QVariantList() : sizeChart(*sheet(), m_choices->units()); }
QString SheetPage::cautions() const { return sheet() == nullptr ? QString() : PlainWords::text(sheet()->cautions); }

QVariantList SheetPage::facts() const {
  QVariantList list;
  if (sheet() == nullptr) return list;
  const gear::ModelSheet& s = *sheet();
  const UnitSystem units = m_choices->units();
  list.append(fact(tr("Certified for"), SheetWords::figure(s.certificationMonths, gear::FigureUnit::months, units)));
  list.append(fact(tr("Age limit"), s.ageLimitMonths == 0 ? tr("the maker states none")
                                                          : SheetWords::figure(s.ageLimitMonths, gear::FigureUnit::months, units)));
  if (!s.air.empty()) {
    list.append(fact(tr("Move of air that calls for a look"), pa(s.changeAllowance, units)));
    list.append(fact(tr("Loss in a week that is no leak"), pa(s.leakPerWeek, units)));
    list.append(fact(tr("Set in this order"), SheetWords::order(s.fittingOrder)));
  }
  list.append(fact(tr("Short name"), text(s.id)));
  return list;
}

QVariantList SheetPage::questions() const {
  QVariantList list;
  if (sheet() == nullptr) return list;
  for (const gear::Question& question : sheet()->questions)
    list.append(fact(PlainWords::text(question.ask), tr("If no: %1").arg(PlainWords::text(question.ifNo))));
  return list;
}

QVariantList SheetPage::others() const {
  QVariantList list;
  const season::Views& views = m_desk->views();
  const std::string& standing = views.standingSheet(m_hash);
  const auto add = [&](const season::SheetRecord& record) {
    if (record.hash == m_hash || !record.sheet) return;
    const bool isNow = record.hash == standing;
    list.append(QVariantMap{{QStringLiteral("hash"), text(record.hash)},
                            {QStringLiteral("title"), PlainWords::text(record.sheet->name)},
                            {QStringLiteral("detail"),
                             isNow ? tr("Counts now") : tr("Replaced %1").arg(timeWords(record.replaced->stamp.at, m_desk->today()))}});
  };
  if (const auto now = views.sheets.find(standing); now != views.sheets.end()) add(now->second);
  for (const season::SheetRecord* record : season::sheetsBefore(views, standing)) add(*record);
  return list;
}

void SheetPage::writeOut() {
  if (!canExport()) return;
  const auto place = m_outbox->keep(sheet()->id + ".json", sheet()->bytes);
  m_exported = place ? tr("Written to %1").arg(text(*place)) : QString();
  m_refusal = place ? QString() : errorSentence(place.error());
  emit changed();
}

void SheetPage::readHistory() {
  const season::Views& views = m_desk->views();
  if (sheet() == nullptr) return;
  const std::string& standing = views.standingSheet(m_hash);
  std::vector<std::string> hashes{standing};
  for (const season::SheetRecord* record : season::sheetsBefore(views, standing)) hashes.push_back(record->hash);
  readOne(std::move(hashes), {}, ++m_asked);
}

// One sheet of the line after the other; a fact that replaces one by another belongs to both.
void SheetPage::readOne(std::vector<std::string> hashes, std::vector<book::Fact> known, std::uint64_t asked) {
  if (hashes.empty()) return tell(std::move(known));
  const std::string hash = hashes.back();
  hashes.pop_back();
  m_desk->history(hash, this, [this, hashes, known, asked](const Result<std::vector<book::Fact>>& facts) mutable {
    if (asked != m_asked) return;
    if (!facts) {
      m_refusal = errorSentence(facts.error());
      emit changed();
      return;
    }
    for (const book::Fact& fact : *facts) {
      const bool isKnown = std::any_of(known.begin(), known.end(), [&](const book::Fact& other) { return other.id() == fact.id(); });
      if (!isKnown && std::holds_alternative<book::SheetAdopted>(fact.body)) known.push_back(fact);
    }
    readOne(std::move(hashes), std::move(known), asked);
  });
}

void SheetPage::tell(std::vector<book::Fact> facts) {
  std::sort(facts.begin(), facts.end(),
            [](const book::Fact& a, const book::Fact& b) { return std::tie(a.order, a.device, a.n) > std::tie(b.order, b.device, b.n); });
  const season::Views& views = m_desk->views();
  m_history.clear();
  for (auto fact = facts.begin(); fact != facts.end(); ++fact) {
    const auto& adopted = std::get<book::SheetAdopted>(fact->body);
    const gear::ModelSheet* now = views.sheet(book::hashOf(adopted.sheet));
    const gear::ModelSheet* before = views.sheet(adopted.replaces);
    const bool isBack = std::any_of(fact + 1, facts.end(), [&](const book::Fact& earlier) {
      return std::get<book::SheetAdopted>(earlier.body).sheet == adopted.sheet;
    });
    QStringList lines;
    if (now != nullptr && before != nullptr)
      for (const gear::SheetDifference& one : gear::differencesOf(*before, *now)) lines << SheetWords::difference(one, m_choices->units());
    const QString what = adopted.replaces.empty() ? tr("Adopted") : isBack ? tr("Put back") : tr("Changed");
    m_history.append(QVariantMap{{QStringLiteral("when"), timeWords(fact->at, m_desk->today())},
                                 {QStringLiteral("who"), whoWords(views, fact->who)},
                                 {QStringLiteral("words"), what},
                                 {QStringLiteral("lines"), lines}});
  }
  emit changed();
}

}  // namespace snugline::models
