// SPDX-License-Identifier: Apache-2.0
#include "recovery_model.h"

#include <algorithm>

#include "core/book/people.h"
#include "core/book/rights.h"
#include "sentences.h"
#include "sentences_gear.h"
#include "sentences_paper.h"

namespace snugline::models {

namespace {
constexpr int kShownMs = 600'000;  // how long a key may stand on a glass that nobody touches (ours)
}

RecoveryModel::RecoveryModel(Desk* desk, LockModel* lock, QObject* parent) : QObject(parent), m_desk(desk), m_lock(lock) {
  m_walkedAway.setSingleShot(true);
  m_walkedAway.setInterval(kShownMs);
  connect(&m_walkedAway, &QTimer::timeout, this, &RecoveryModel::leave);
  connect(lock, &LockModel::changed, this, [this] {
    // Locked while an admin had a key on the glass.
    if (!m_isOnWall && !m_step.isEmpty() && m_lock->wall() == QLatin1String("locked")) leave();
    emit changed();
  });
}

void RecoveryModel::say(const QString& trouble) {
  m_trouble = trouble;
  emit changed();
}

void RecoveryModel::go(const QString& step) {
  m_step = step;
  m_trouble.clear();
  m_walkedAway.start();
  emit changed();
}

void RecoveryModel::begin() {
  leave();
  m_isOnWall = true;
  go(m_desk->views().team && m_desk->views().team->recovery ? QStringLiteral("key") : QStringLiteral("none"));
}

void RecoveryModel::leave() {
  m_key.clear();
  m_place.clear();
  m_first.clear();
  m_person.clear();
  m_isKeyRight = m_isOnWall = false;
  m_walkedAway.stop();
  m_step.clear();
  m_trouble.clear();
  emit changed();
}

void RecoveryModel::enterKey(const QString& digits) {
  if (isBusy() || m_step != QLatin1String("key")) return;
  const auto key = book::readRecoveryKey(digits.toStdString());
  if (!key) {
    const std::string& what = key.error().detail;
    const bool isGroup = what.rfind("group ", 0) == 0;
    return say(isGroup ? tr("Group %1 has a mistyped digit.").arg(QString::fromStdString(what.substr(6)))
                       : tr("The key has %1 digits in %2 groups.").arg(book::kRecoveryDigits).arg(book::kRecoveryGroups));
  }
  const auto& team = m_desk->views().team;
  if (!team || !team->recovery) return go(QStringLiteral("none"));
  m_trouble.clear();
  m_lock->work([this, gate = m_lock->gate(), kept = team->recovery->key, text = *key]() -> std::function<void()> {
    const auto outcome = gate->tryRecovery(kept, text);
    return [this, outcome] {
      if (!outcome) return say(errorSentence(outcome.error()));
      switch (*outcome) {
        case book::CodeGate::Outcome::right: {
          m_isKeyRight = true;
          const QVariantList all = admins();
          if (all.size() != 1) return go(QStringLiteral("who"));
          return choose(all.first().toMap().value(QStringLiteral("id")).toString());
        }
        case book::CodeGate::Outcome::wrong:
          return say(tr("That is not the key of the sheet made last. Older sheets are void."));
        case book::CodeGate::Outcome::waiting:
          return say({});
      }
    };
  });
}

QVariantList RecoveryModel::admins() const {
  QVariantList list;
  if (!m_isKeyRight) return list;
  for (const auto& [id, person] : m_desk->views().people) {
    if (person.role != book::kAdmin) continue;
    list << QVariantMap{{QStringLiteral("id"), QString::fromStdString(id)},
                        {QStringLiteral("initials"), PlainWords::text(person.initials)}};
  }
  return list;
}

QString RecoveryModel::person() const { return PlainWords::person(m_desk->views(), m_person); }

void RecoveryModel::choose(const QString& admin) {
  if (!m_isKeyRight) return;
  m_person = admin.toStdString();
  m_first.clear();
  go(QStringLiteral("code"));
}

void RecoveryModel::enterCode(const QString& digits) {
  if (isBusy() || !m_isKeyRight || m_person.empty()) return;
  if (const QString refused = LockModel::codeRefused(digits); !refused.isEmpty()) {
    m_first.clear();
    m_step = QStringLiteral("code");
    return say(refused);
  }
  if (m_first.isEmpty()) {
    m_first = digits;
    return go(QStringLiteral("again"));
  }
  const bool isSame = m_first == digits;
  m_first.clear();
  if (!isSame) {
    m_step = QStringLiteral("code");
    return say(tr("The two were not the same. Begin again."));
  }
  makeFresh(digits.toStdString(), [this](const Fresh& fresh) {
    // The facts carry the admin whose code it becomes.
    m_desk->setPerson(m_person);
    m_isBusy = true;
    m_desk->submit([person = m_person, fresh](const season::Views& views,
                                              Instant) { return book::recover(views, person, fresh.codeHash, fresh.keyHash); },
                   this,
                   [this, fresh](const Result<book::Appended>& outcome) {
                     m_isBusy = false;
                     if (!outcome) {
                       m_desk->setPerson({});
                       m_step = QStringLiteral("code");
                       return say(errorSentence(outcome.error()));
                     }
                     shown(fresh);
                   });
  });
}

bool RecoveryModel::mayMake() const { return book::may(m_desk->views(), m_desk->person(), book::Right::admin); }

QString RecoveryModel::made() const {
  const auto& team = m_desk->views().team;
  if (!team || !team->recovery) return {};
  const QString who = PlainWords::person(m_desk->views(), team->recovery->stamp.who);
  const QString when = PlainWords::day(dayOf(team->recovery->stamp.at), m_desk->today());
  return who.isEmpty() ? tr("Made %1").arg(when) : tr("Made %1 by %2").arg(when, who);
}

void RecoveryModel::make() {
  if (isBusy()) return;
  leave();
  if (!mayMake()) return say(tr("An admin makes a recovery sheet."));
  makeFresh({}, [this](const Fresh& fresh) {
    m_isBusy = true;
    m_desk->submit([fresh](const season::Views& views, Instant) { return book::setRecovery(views, fresh.keyHash); }, this,
                   [this, fresh](const Result<book::Appended>& outcome) {
                     m_isBusy = false;
                     outcome ? shown(fresh) : say(errorSentence(outcome.error()));
                   });
  });
}

void RecoveryModel::makeFresh(const std::string& code, std::function<void(const Fresh&)> then) {
  m_lock->work(
      [this, code, makeKeys = m_lock->edges().makeKeys, cost = m_lock->edges().cost, then = std::move(then)]() -> std::function<void()> {
        const auto failed = [this](const Error& error) { return [this, error] { say(errorSentence(error)); }; };
        const auto chance = makeKeys();
        Fresh fresh;
        const auto key = book::makeRecoveryKey(*chance);
        if (!key) return failed(key.error());
        fresh.key = *key;
        for (auto* hash : {&fresh.keyHash, &fresh.codeHash}) {
          const bool isCode = hash == &fresh.codeHash;
          if (isCode && code.empty()) continue;
          const auto seed = chance->freshSeed();
          if (!seed) return failed(seed.error());
          book::CodeSalt salt{};
          std::copy_n(seed->begin(), salt.size(), salt.begin());
          const auto made = isCode ? book::hashCode(code, salt, cost) : book::hashRecoveryKey(fresh.key, salt, cost);
          if (!made) return failed(made.error());
          *hash = *made;
        }
        return [then, fresh] { then(fresh); };
      });
}

// On disk: now it may be shown and printed. Where it cannot be printed it is written down from the glass.
void RecoveryModel::shown(const Fresh& fresh) {
  m_key = QString::fromStdString(book::grouped(fresh.key));
  m_place.clear();
  go(QStringLiteral("sheet"));
  if (!m_lock->edges().outbox) return;
  const auto place = m_lock->edges().outbox->print("snugline-recovery-" + print(m_desk->today()) + ".pdf",
                                                   PaperWords::recoverySheet(m_desk->views(), book::grouped(fresh.key), m_desk->today()));
  if (!place) return say(errorSentence(place.error()));
  m_place = PaperWords::opened(*m_lock->edges().outbox, *place);
  emit changed();
}

void RecoveryModel::finish() {
  const bool wasOnWall = m_isOnWall && m_step == QLatin1String("sheet");
  const std::string person = m_person;
  leave();
  if (wasOnWall) m_lock->takeUp(person);
}

}  // namespace snugline::models
