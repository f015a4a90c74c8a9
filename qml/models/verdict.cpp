// SPDX-License-Identifier: Apache-2.0
#include "verdict.h"

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

// Causes one by one; what was not seen in one line, for it is seldom a cause.
QStringList reasonsOf(const season::EndedCheck& ended, const season::UnitRecord* unit, const gear::ModelSheet* sheet) {
  QStringList list, unseen;
  int pointsUnseen = 0;
  for (const std::string& code : ended.reasons) {
    const std::string head = code.ends_with("-open") ? code.substr(0, code.size() - 5) : std::string();
    if (const auto mark = fit::markFromCode(head)) {
      unseen << MarkWords::brief(*mark);
    } else if (gear::pointFromCode(head)) {
      ++pointsUnseen;
    } else if (const QString words = wordsOf(code, unit, sheet); !words.isEmpty()) {
      list << PlainWords::sentenceCase(words);
    }
  }
  if (pointsUnseen == static_cast<int>(gear::kPointCount))
    unseen << VerdictWords::tr("the seven points");
  else if (pointsUnseen > 0)
    unseen << VerdictWords::tr("%n of the seven points", nullptr, pointsUnseen);
  if (!unseen.isEmpty()) list << VerdictWords::tr("Not seen: %1").arg(PlainWords::list(unseen));
  return list;
}

}  // namespace

QVariantMap verdictMap(const season::EndedCheck& ended, const season::UnitRecord* unit, const gear::ModelSheet* sheet,
                       const Speech& speech) {
  QStringList reasons = reasonsOf(ended, unit, sheet);
  if (ended.verdict == fit::Verdict::fits)
    reasons << VerdictWords::tr("All nine marks snug, all seven points sound, certification in date.");
  return {{QStringLiteral("verdict"), codeWord(fit::code(ended.verdict))},
          {QStringLiteral("word"), GuideWords::verdict(ended.verdict)},
          {QStringLiteral("tone"), toneOf(ended.verdict)},
          {QStringLiteral("reasons"), reasons},
          {QStringLiteral("next"), GuideWords::next(ended, unit, speech)},
          {QStringLiteral("signed"), signedBy(ended, speech)},
          {QStringLiteral("strip"), stripCodes(ended.strip, {}, {})},
          {QStringLiteral("kind"), GuideWords::kind(ended.kind)},
          {QStringLiteral("offersHelmet"), ended.verdict == fit::Verdict::doNotWear},
          {QStringLiteral("caution"), GuideWords::caution(sheet)}};
}

}  // namespace snugline::models
