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

QStringList reasonsOf(const season::EndedCheck& ended, const season::UnitRecord* unit, const gear::ModelSheet* sheet) {
  QStringList list;
  for (const std::string& code : ended.reasons) {
    QString words = GuideWords::reasonCode(code);
    if (code.ends_with("-no")) words = questionNo(code.substr(0, code.size() - 3), sheet);
    // The finder's own words, where the unit still carries them.
    if (code.ends_with("-fault") && unit != nullptr) {
      if (const auto point = gear::pointFromCode(code.substr(0, code.size() - 6))) {
        const auto& seen = unit->points[static_cast<std::size_t>(*point)];
        if (seen && !seen->finding.what.empty()) words = PlainWords::text(seen->finding.what);
      }
    }
    if (!words.isEmpty()) list << PlainWords::sentenceCase(words);
  }
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
