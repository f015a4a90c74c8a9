// SPDX-License-Identifier: Apache-2.0
#include "verdict.h"

#include "core/season/standing.h"
#include "drawn_values.h"
#include "sentences_gear.h"

namespace snugline::models {

namespace {

struct VerdictWords {
  Q_DECLARE_TR_FUNCTIONS(VerdictWords)
};

QString toneOf(fit::Verdict verdict) {
  switch (verdict) {
    case fit::Verdict::fits:
      return QStringLiteral("snug");
    case fit::Verdict::adjust:
    case fit::Verdict::unfinished:
      return QStringLiteral("see");
    case fit::Verdict::doNotWear:
      return QStringLiteral("stop");
  }
  return {};
}

QString signedBy(const season::EndedCheck& ended, const Speech& speech) {
  const QString who = PlainWords::person(speech.views, ended.stamp.who);
  const QString when = PlainWords::moment(ended.stamp.at, speech.today);
  return who.isEmpty() ? VerdictWords::tr("Recorded %1, not signed").arg(when) : VerdictWords::tr("Signed %1, %2").arg(who, when);
}

QString questionNo(const std::string& id, const gear::ModelSheet* sheet) {
  if (sheet == nullptr) return {};
  for (const gear::Question& question : sheet->questions) {
    if (question.id == id) return PlainWords::text(question.ifNo);
  }
  return {};
}

QString wordsOf(const std::string& code, const season::UnitRecord* unit, const gear::ModelSheet* sheet) {
  if (code.ends_with("-no")) return questionNo(code.substr(0, code.size() - 3), sheet);
  // The finder's own words, where the unit still carries them.
  if (code.ends_with("-fault") && unit != nullptr) {
    if (const auto point = gear::pointFromCode(code.substr(0, code.size() - 6))) {
      const auto& seen = unit->points[static_cast<std::size_t>(*point)];
      if (seen && !seen->finding.what.empty()) return pointName(*point) + QStringLiteral(": ") + PlainWords::text(seen->finding.what);
    }
  }
  return GuideWords::reasonCode(code);
}

struct Reasons {
  QStringList causes;  // one by one; what was not seen as counts in one line, for it is seldom a cause
  QString unseen;      // the same by name
};

Reasons reasonsOf(const season::EndedCheck& ended, const season::UnitRecord* unit, const gear::ModelSheet* sheet) {
  QStringList list, marks, points;
  for (const std::string& code : ended.reasons) {
    const std::string head = code.ends_with("-open") ? code.substr(0, code.size() - 5) : std::string();
    if (const auto mark = fit::markFromCode(head)) {
      marks << MarkWords::brief(*mark);
    } else if (const auto point = gear::pointFromCode(head)) {
      points << pointName(*point);
    } else if (const QString words = wordsOf(code, unit, sheet); !words.isEmpty()) {
      list << PlainWords::sentenceCase(words);
    }
  }
  QStringList counts, names;
  if (!marks.isEmpty()) {
    counts << VerdictWords::tr("%n marks", nullptr, static_cast<int>(marks.size()));
    names << VerdictWords::tr("Marks not seen: %1.").arg(PlainWords::list(marks));
  }
  if (!points.isEmpty()) {
    counts << VerdictWords::tr("%n points", nullptr, static_cast<int>(points.size()));
    names << VerdictWords::tr("Points not seen: %1.").arg(PlainWords::list(points));
  }
  if (!counts.isEmpty()) list << VerdictWords::tr("%1 not seen").arg(PlainWords::list(counts));
  return {list, names.join(QLatin1Char(' '))};
}

// The seven points, where they hold the reason of a stop: shown in place of the nine marks.
QStringList stopPoints(const season::EndedCheck& ended, const season::UnitRecord* unit) {
  const bool isOfPoints =
      ended.verdict == fit::Verdict::doNotWear && !ended.reasons.empty() && season::isReasonOfPoints(ended.reasons.front());
  if (!isOfPoints || unit == nullptr) return {};
  QStringList codes;
  for (const gear::Point point : gear::kPoints) {
    const bool isLabel = point == gear::Point::certification && ended.reasons.front().starts_with("label-");
    codes << pointCode(isLabel ? gear::PointState::fault : unit->points.glance(point).state);
  }
  return codes;
}

}  // namespace

QVariantMap verdictMap(const season::EndedCheck& ended, const season::UnitRecord* unit, const gear::ModelSheet* sheet,
                       const Speech& speech) {
  auto [reasons, unseen] = reasonsOf(ended, unit, sheet);
  if (ended.verdict == fit::Verdict::fits)
    reasons << VerdictWords::tr("All nine marks snug, all seven points sound, certification in date.");
  return {{QStringLiteral("verdict"), codeWord(fit::code(ended.verdict))},
          {QStringLiteral("word"), GuideWords::verdict(ended.verdict)},
          {QStringLiteral("tone"), toneOf(ended.verdict)},
          {QStringLiteral("reasons"), reasons},
          {QStringLiteral("unseen"), unseen},
          {QStringLiteral("next"), GuideWords::next(ended, unit, speech)},
          {QStringLiteral("signed"), signedBy(ended, speech)},
          {QStringLiteral("strip"), stripCodes(ended.strip, {}, {})},
          {QStringLiteral("points"), stopPoints(ended, unit)},
          {QStringLiteral("kind"), GuideWords::kind(ended.kind)},
          {QStringLiteral("offersHelmet"), ended.verdict == fit::Verdict::doNotWear},
          {QStringLiteral("caution"), GuideWords::caution(sheet)}};
}

}  // namespace snugline::models
