// SPDX-License-Identifier: Apache-2.0
// What the page of a helmet says of its standing, and where it may go.
#include <QVariantMap>

#include "qml/models/choices.h"
#include "qml/models/drawn_values.h"
#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_standing.h"
#include "qml/models/unit_page.h"

namespace snugline::models {

namespace {
QStringList retireReasons() {
  return {UnitPage::tr("age limit"), UnitPage::tr("crack in the shell"), UnitPage::tr("not worth a repair"),
          UnitPage::tr("turned down at recertification")};
}
}  // namespace

std::optional<season::UnitStanding> UnitPage::standing() const {
  return unit() == nullptr ? std::nullopt : std::optional(season::standingOf(m_desk->views(), *unit(), m_desk->today()));
}

QString UnitPage::standingCode() const {
  const auto at = standing();
  return at ? codeWord(season::code(at->state)) : QString();
}
QString UnitPage::standingTone() const {
  const auto at = standing();
  return at ? StandingWords::tone(*at) : QString();
}
bool UnitPage::isStop() const {
  const auto at = standing();
  const bool isHere = at && (at->where == season::Where::withUs || at->where == season::Where::withAthlete);
  return isHere && StandingWords::tone(*at) == QLatin1String("stop");
}
QString UnitPage::statusWords() const {
  const auto at = standing();
  return at ? StandingWords::headline(*at, m_choices->areNamesShort() ? Names::initials : Names::full, m_desk->today()) : QString();
}
QVariantList UnitPage::reasons() const {
  QVariantList list;
  const auto at = standing();
  if (!at) return list;
  for (const season::WhyNot& why : at->reasons) {
    list.append(QVariantMap{{QStringLiteral("code"), codeWord(season::code(why.bar))},
                            {QStringLiteral("text"), StandingWords::reason(why, m_desk->today())}});
  }
  return list;
}
QStringList UnitPage::acts() const {
  QStringList codes;
  const auto at = standing();
  if (!at) return codes;
  for (const season::UnitAct act : season::actsOf(m_desk->views(), *at, m_desk->today())) codes << codeWord(season::code(act));
  return codes;
}
QVariantMap UnitPage::knownCause() const {
  const auto at = standing();
  const auto cause = at && at->unit->holds.empty() ? season::knownCause(*at) : std::nullopt;
  if (!cause) return {};
  return {{QStringLiteral("reason"), text(cause->reason)},
          {QStringLiteral("what"), text(cause->what)},
          {QStringLiteral("words"), holdWords({{}, cause->reason, cause->what, {}})}};
}
// Those of its acts that move it; what each is called and the usual reasons.
QVariantList UnitPage::moves() const {
  using season::UnitAct;
  QVariantList list;
  const auto at = standing();
  if (!at) return list;
  const auto offer = [&](const char* to, const QString& words, const QStringList& reasons = {}) {
    list.append(
        QVariantMap{{QStringLiteral("to"), QLatin1String(to)}, {QStringLiteral("words"), words}, {QStringLiteral("reasons"), reasons}});
  };
  for (const UnitAct act : season::actsOf(m_desk->views(), *at, m_desk->today())) {
    switch (act) {
      case UnitAct::inService:
        offer("in-service", at->uncheckedPoints() == 0 ? tr("Put in service")
                                                       : tr("Put in service, %n point(s) not seen", nullptr, at->uncheckedPoints()));
        break;
      case UnitAct::toShelf:
        offer("shelf", tr("Back to the shelf"));
        break;
      case UnitAct::repair:
        offer("repair", tr("To repair"), {tr("faceguard"), tr("hardware"), tr("liner or air"), tr("chin strap"), tr("shell")});
        break;
      case UnitAct::sendOut:
        offer("sent-out", tr("Send out to recertify"), {tr("label lapses"), tr("end of the season"), tr("the maker asks for it")});
        break;
      case UnitAct::back:
        offer(at->where == season::Where::lost ? "found" : "back", tr("Back with us"));
        break;
      case UnitAct::lost:
        offer("lost", tr("Lost"), {tr("not given back"), tr("not found at the count"), tr("stolen")});
        break;
      case UnitAct::retire:
        offer("retired", tr("Retire"), retireReasons());
        break;
      case UnitAct::whereNow:
      case UnitAct::swapHelmet:
      case UnitAct::hold:
      case UnitAct::release:
      case UnitAct::checkPoints:
      case UnitAct::readLabel:
      case UnitAct::giveTo:
        break;
    }
  }
  return list;
}

}  // namespace snugline::models
