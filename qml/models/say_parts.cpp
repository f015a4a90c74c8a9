// SPDX-License-Identifier: Apache-2.0
// The places of the drawing in words, and the red way.
#include "say_parts.h"

#include <algorithm>

#include "athlete_model.h"
#include "drawn_values.h"
#include "say_model.h"
#include "sentences_gear.h"

namespace snugline::models {

using season::SaidRecord;

const Place* placeOf(const QString& name) {
  const auto at = std::find_if(kPlaces.begin(), kPlaces.end(), [&](const Place& p) { return name == QLatin1String(p.name); });
  return at == kPlaces.end() ? nullptr : &*at;
}

// Line ends and other control characters are blanks here: what is left is one line of text, whatever was pasted.
QString oneLine(const QString& words) {
  QString clean;
  for (const char32_t c : words.toUcs4())
    clean += QChar::category(c) == QChar::Other_Control ? QStringLiteral(" ") : QString::fromUcs4(&c, 1);
  const QList<uint> kept = clean.simplified().toUcs4().mid(0, static_cast<qsizetype>(book::kWordsLimit));
  return QString::fromUcs4(reinterpret_cast<const char32_t*>(kept.constData()), kept.size());
}

Desk::Done firstFact(std::function<void(const Result<std::string>&)> done) {
  return [done = std::move(done)](const Result<book::Appended>& outcome) {
    if (!outcome) return done(tl::unexpected<Error>(outcome.error()));
    done(outcome->ids.empty() ? std::string() : outcome->ids.front());
  };
}

QVariantMap SayModel::findingsOf(const std::vector<SaidRecord>& words) {
  QVariantMap map;
  for (const SaidRecord& said : words) {
    if (said.isAnswered || !said.where) continue;
    for (const Place& place : kPlaces) {
      const bool isHere =
          place.mark == *said.where && (said.side == fit::Side::both || place.side == fit::Side::both || place.side == said.side);
      if (isHere) map.insert(QLatin1String(place.name), saidCode(said.feels));
    }
  }
  return map;
}

// The words a person would use who never heard of the nine marks.
QString SayModel::placeWords(const QString& name) {
  const Place* place = placeOf(name);
  if (place == nullptr) return {};
  switch (place->mark) {
    case fit::Mark::brow:
      return tr("Forehead");
    case fit::Mark::ears:
      return place->side == fit::Side::left ? tr("Left ear") : tr("Right ear");
    case fit::Mark::nape:
      return tr("Neck");
    case fit::Mark::chin:
      return tr("Chin");
    case fit::Mark::straps:
      return tr("Straps");
    case fit::Mark::jaw:
      return place->side == fit::Side::left ? tr("Left cheek") : tr("Right cheek");
    case fit::Mark::crown:
      return tr("Top");
    case fit::Mark::sides:
      return place->side == fit::Side::left ? tr("Left side") : tr("Right side");
    case fit::Mark::hold:
      return tr("All over");
  }
  return {};
}

QString SayModel::yourPlace(const QString& name) {
  const Place* place = placeOf(name);
  if (place == nullptr) return {};
  const bool isLeft = place->side == fit::Side::left;
  switch (place->mark) {
    case fit::Mark::brow:
      return tr("Your forehead");
    case fit::Mark::ears:
      return isLeft ? tr("Your left ear") : tr("Your right ear");
    case fit::Mark::nape:
      return tr("Your neck");
    case fit::Mark::chin:
      return tr("Your chin");
    case fit::Mark::straps:
      return tr("The straps");
    case fit::Mark::jaw:
      return isLeft ? tr("Your left cheek") : tr("Your right cheek");
    case fit::Mark::crown:
      return tr("The top of your head");
    case fit::Mark::sides:
      return isLeft ? tr("The left side of your head") : tr("The right side of your head");
    case fit::Mark::hold:
      return tr("All over");
  }
  return {};
}

// The stop screen does not wait for the disk: it shows at once, and says so if the record could not be made. What was typed goes with it.
void SayModel::unwell() {
  if (m_step == QLatin1String("stop")) return;
  SaidRecord said;
  said.isUnwell = true;
  said.words = (m_step == QLatin1String("words") ? oneLine(m_typed) : m_words).toStdString();
  m_words.clear();
  m_typed.clear();
  m_trouble.clear();
  const auto hit = m_hit = std::make_shared<Hit>();
  hit->athlete = m_athlete;
  go(QStringLiteral("stop"));
  const Recorded done = [this, hit](const Result<std::string>& outcome) {
    if (outcome) {
      hit->fact = *outcome;
      if (hit->isMistake) sendFollow(hit);
    } else if (m_hit == hit) {
      m_trouble = errorSentence(outcome.error());
    }
    emit changed();
  };
  if (!m_athlete.empty() || !isShared()) return send(said, done);
  m_desk->submit([](const season::Views& views, Instant) { return book::sayUnnamed(views); }, this, firstFact(done));
}

void SayModel::leaveStop(bool isMistake) {
  if (m_step != QLatin1String("stop") || !m_hit) return;
  m_hit->isMistake = isMistake;
  if (!m_hit->fact.empty()) sendFollow(m_hit);
  const bool goesOn = isMistake && !m_athlete.empty();
  goesOn ? another() : begin();
}

void SayModel::toldAdult() { leaveStop(false); }
void SayModel::touchedByMistake() { leaveStop(true); }

void SayModel::sendFollow(const std::shared_ptr<Hit>& hit) {
  follow(hit->athlete, hit->fact, *hit->isMistake, [](const Result<std::string>&) {});  // what failed is told by the desk
}

void SayModel::follow(const std::string& athlete, const std::string& said, bool isMistake, Recorded done) {
  m_desk->submit(
      [athlete, said, isMistake](const season::Views& views, Instant) { return book::followSaid(views, athlete, said, isMistake); }, this,
      firstFact(std::move(done)));
}

}  // namespace snugline::models
