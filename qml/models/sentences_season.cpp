// SPDX-License-Identifier: Apache-2.0
#include "sentences_season.h"

#include <cmath>

#include "sentences_gear.h"

namespace snugline::models {

using season::CostTerm;
using season::NoHelmet;

namespace {
QString decimal(double value, int places) { return QString::number(value, 'f', places); }
}  // namespace

QString SeasonWords::term(CostTerm term, int count) {
  switch (term) {
    case CostTerm::size:
      return tr("Size odds");
    case CostTerm::tryOn:
      return tr("Odds so low that it is tried on first");
    case CostTerm::otherHelmet:
      return tr("Not the last helmet: a new first fit");
    case CostTerm::wornByOther:
      return tr("The last helmet of somebody else");
    case CostTerm::kindFailed:
      return tr("This model and size did not fit at the last check");
    case CostTerm::unseenPoints:
      return tr("%n point(s) not seen", nullptr, count);
    case CostTerm::age:
      return tr("%n year(s) since its first label", nullptr, count);
  }
  return {};
}

QString SeasonWords::kind(const season::Views& views, const std::string& sheet, const std::string& size) {
  if (size.empty()) return tr("off the charts");
  const gear::ModelSheet* model = views.sheet(sheet);
  return tr("%1 %2", "model, size").arg(model == nullptr ? tr("unknown model") : PlainWords::text(model->name), PlainWords::text(size));
}

QString SeasonWords::counts(const season::Views& views, const std::vector<season::SizeCount>& counts) {
  QStringList parts;
  for (const season::SizeCount& one : counts)
    parts << tr("%1 %2", "how many, of what").arg(one.count).arg(kind(views, one.sheet, one.size));
  return parts.join(QStringLiteral(", "));
}

QString SeasonWords::pair(const season::MatchPair& pair, const Speech& speech) {
  const season::UnitRecord* unit = speech.views.unit(pair.unit);
  QStringList says;
  says << (pair.odds                              ? tr("odds %1").arg(PlainWords::percent(*pair.odds))
           : pair.tape == season::TapeState::open ? tr("readings disagree")
                                                  : tr("never taped"));
  if (pair.tape == season::TapeState::stale) says << tr("by a stale tape");
  if (pair.isTryOn) says << tr("try on");
  if (pair.isLastHelmet) says << tr("the last helmet");
  if (pair.isPinned) says << tr("pinned");
  return tr("%1, %2. %3", "serial, model and size, what speaks for it")
      .arg(unit == nullptr ? QString() : PlainWords::text(unit->serial), kind(speech.views, pair.sheet, pair.size),
           PlainWords::sentenceCase(says.join(QStringLiteral(", "))));
}

QString SeasonWords::noHelmet(const season::UnmatchedHead& head) {
  const QString size = PlainWords::text(head.size);
  QString words;
  switch (head.why) {
    case NoHelmet::neverTaped:
      words = head.tape == season::TapeState::open ? tr("The readings of the head disagree: no size is known")
                                                   : tr("Never taped: no size is known");
      break;
    case NoHelmet::offChart:
      words = tr("No size of the models at hand is likely enough");
      break;
    case NoHelmet::noneAtHand:
      words = tr("No helmet that can be given is of size %1 or near it").arg(size);
      break;
    case NoHelmet::allTaken:
      words = tr("Fewer helmets than heads of size %1").arg(size);
      break;
    case NoHelmet::setAside:
      words = tr("Only helmets that were set aside or did not fit at the last check");
      break;
  }
  return head.tape == season::TapeState::stale ? tr("%1, by a stale tape").arg(words) : words;
}

QString SeasonWords::lapse(season::LapseWhen when) {
  switch (when) {
    case season::LapseWhen::before:
      return tr("lapsed, or may have");
    case season::LapseWhen::thisSeason:
      return tr("in this season");
    case season::LapseWhen::betweenSeasons:
      return tr("between the seasons");
    case season::LapseWhen::nextSeason:
      return tr("in the next season");
  }
  return {};
}

QString SeasonWords::order(const season::Order& order, double cover) {
  QString words =
      tr("%1 returning and %2 new heads expected. %3 helmets are enough with a chance of %4 (asked %5); %6 of ours are good through the "
         "next season, once renewed.")
          .arg(decimal(order.returning, 1), decimal(order.newcomers, 1))
          .arg(order.enough)
          .arg(PlainWords::percent(order.covered), PlainWords::percent(cover))
          .arg(order.good);
  if (order.notCounted > 0)
    words += QLatin1Char(' ') + tr("%n more not counted: on hold, in repair, out of service or unread.", nullptr, order.notCounted);
  return words;
}

QStringList SeasonWords::assumptions(const season::Views& views, const season::PlanWishes& wishes, const season::PlanAnswer& plan,
                                     Day today) {
  QStringList lines;
  const QString days = tr("%1 to %2").arg(PlainWords::day(plan.start, today), PlainWords::day(plan.end, today));
  lines << (plan.areDatesAssumed ? tr("Season %1 taken as %2, the next on the same days a year later.").arg(plan.season).arg(days)
                                 : tr("Season %1: %2, the next on the same days a year later.").arg(plan.season).arg(days));
  lines << tr("A helmet that goes out is away for %n days. Its new label is judged by the year in which it comes back.", nullptr,
              wishes.turnaround);
  lines << tr("Each head returns with a chance of %1, none past age %2 (%3 are past it).")
               .arg(PlainWords::percent(wishes.returning))
               .arg(wishes.lastAge)
               .arg(plan.leaving);
  const gear::ModelSheet* model = views.sheet(plan.newSheet);
  lines << tr("%1 newcomers expected, with heads of %2-year-olds, in %3.")
               .arg(decimal(plan.expectedNewcomers, 1))
               .arg(wishes.newcomerAge)
               .arg(model == nullptr ? tr("no model known") : PlainWords::text(model->name));
  lines << tr("Heads grow %1 mm a year through age %2, with a spread of %3 mm (Dutch boys 1997).")
               .arg(decimal(season::kGrowthPerYear.mm(), 0))
               .arg(season::kGrowthThroughAge)
               .arg(decimal(season::kGrowthSpread.mm(), 0));
  if (plan.unknownBirthYears > 0) lines << tr("%n without a birth year count as growing.", nullptr, plan.unknownBirthYears);
  if (plan.untaped > 0) lines << tr("%n never taped: taken as any head of that age.", nullptr, plan.untaped);
  if (plan.staleTapes > 0) lines << tr("%n tape(s) are stale.", nullptr, plan.staleTapes);
  constexpr double kWorthSaying = 0.05;
  if (plan.offChart >= kWorthSaying) lines << tr("%1 heads expected off the charts; no order covers them.").arg(decimal(plan.offChart, 1));
  return lines;
}

QString SeasonWords::wishTrouble(const Error& error) {
  if (error.code == ErrorCode::inconsistent) return tr("These wishes contradict each other. Take one of them back.");
  return errorSentence(error);
}

}  // namespace snugline::models
