// SPDX-License-Identifier: Apache-2.0
#include "lock_model.h"

#include <algorithm>

#include <QDateTime>
#include <QGuiApplication>
#include <QPointer>
#include <QThreadPool>

#include "core/book/people.h"
#include "core/book/rights.h"
#include "core/ports/memory_ports.h"
#include "sentences.h"
#include "sentences_gear.h"

namespace snugline::models {

namespace {

constexpr int kBeatMs = 1'000;
constexpr qint64 kSleptMs = 30'000;  // the wall clock ran on by so much more than the steady one: the device slept
constexpr int kMsPerMinute = 60'000;

}  // namespace

LockModel::LockModel(Desk* desk, Choices* choices, LockEdges edges, QObject* parent)
    : QObject(parent), m_desk(desk), m_choices(choices), m_edges(std::move(edges)) {
  if (!m_edges.attempts) m_edges.attempts = std::make_shared<ports::MemoryAttempts>();
  if (!m_edges.makeKeys) m_edges.makeKeys = [] { return std::make_unique<ports::MemoryKeys>(); };
  m_idle.setSingleShot(true);
  m_beat.setInterval(kBeatMs);
  connect(&m_idle, &QTimer::timeout, this, &LockModel::lock);
  connect(&m_beat, &QTimer::timeout, this, &LockModel::beat);
  connect(desk, &Desk::opened, this, &LockModel::onOpened);
  connect(desk, &Desk::changed, this, &LockModel::changed);
  connect(desk, &Desk::personChanged, this, &LockModel::changed);
  connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
    if (state == Qt::ApplicationSuspended || state == Qt::ApplicationHidden) lock();
  });
  if (desk->isOpen()) onOpened();
}

bool LockModel::hasCodes() const { return book::hasCodes(m_desk->views()); }

// The app opens locked: whoever was signed in last is not there any more, for all we know.
void LockModel::onOpened() {
  if (hasCodes()) lock();
  emit changed();
}

void LockModel::setIdleTime(int ms) {
  m_idleMs = ms;
  touched();
}

void LockModel::touched() {
  if ((!m_wall.isEmpty() && m_wall != QLatin1String("sign")) || !hasCodes()) return m_idle.stop();
  m_idle.start(m_idleMs > 0 ? m_idleMs : m_choices->lockMinutes() * kMsPerMinute);
  if (!m_beat.isActive()) {
    m_sinceBeat.start();
    m_wallBeatMs = QDateTime::currentMSecsSinceEpoch();
    m_beat.start();
  }
}

void LockModel::lock() {
  if ((!m_wall.isEmpty() && m_wall != QLatin1String("sign")) || !hasCodes()) return;
  leaveSay();
}

void LockModel::handOver() {
  if (!m_wall.isEmpty()) return;
  m_wall = QStringLiteral("sign");
  m_before = m_desk->person();
  if (hasCodes()) m_desk->setPerson({});
  static_cast<void>(gate());
  forget();
  touched();
}

void LockModel::takeBack() {
  if (m_wall != QLatin1String("sign")) return;
  if (hasCodes()) return leaveSay();
  takeUp(m_before);
}

bool LockModel::openSay() {
  if (!hasCodes()) return false;
  m_wall = QStringLiteral("say");
  m_desk->setPerson({});
  forget();
  return true;
}

void LockModel::leaveSay() {
  m_wall = QStringLiteral("locked");
  m_desk->setPerson({});
  static_cast<void>(gate());
  m_idle.stop();
  m_sinceBeat.start();
  m_wallBeatMs = QDateTime::currentMSecsSinceEpoch();
  m_beat.start();
  forget();
}

std::shared_ptr<book::CodeGate> LockModel::gate() {
  if (!m_gate) m_gate = std::make_shared<book::CodeGate>(*m_edges.attempts);
  return m_gate;
}

void LockModel::forget() {
  m_person.clear();
  m_first.clear();
  m_isSetting = false;
  m_trouble.clear();
  emit changed();
}

void LockModel::beat() {
  const qint64 passed = m_sinceBeat.restart();
  const qint64 wall = QDateTime::currentMSecsSinceEpoch();
  const bool hasSlept = wall - m_wallBeatMs - passed > kSleptMs;
  m_wallBeatMs = wall;
  if (hasSlept) lock();
  if (!m_gate || m_isBusy || m_gate->waitMs() == 0) return;
  m_gate->passed(passed);
  emit changed();
}

QString LockModel::waiting() const {
  if (!m_gate || m_isBusy || m_gate->waitMs() == 0) return {};
  const qint64 seconds = (m_gate->waitMs() + 999) / 1000;
  const QString left = QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
  return tr("Wait %1, then try again. The wait runs only while Snugline is open.").arg(left);
}

QString LockModel::person() const {
  const auto found = m_desk->views().people.find(m_person);
  return found == m_desk->views().people.end() ? QString() : PlainWords::text(found->second.name);
}

bool LockModel::maySetCode(const std::string& person) const {
  const season::Views& views = m_desk->views();
  if (!views.people.contains(person)) return false;
  if (!hasCodes()) return true;
  const auto holder = views.people.find(m_desk->person());
  if (holder == views.people.end() || !holder->second.code) return false;
  return book::mayAppend(views, m_desk->person(), {{person, book::CodeSet{}}}).has_value();
}

void LockModel::ask(const QString& person) {
  forget();
  m_person = person.toStdString();
  const auto found = m_desk->views().people.find(m_person);
  m_isSetting = found != m_desk->views().people.end() && (!found->second.code || m_person == m_desk->person());
  if (m_isSetting && !maySetCode(m_person)) say(tr("An admin with a code of their own gives another a code."));
  static_cast<void>(gate());
  emit changed();
}

void LockModel::say(const QString& trouble) {
  m_trouble = trouble;
  emit changed();
}

void LockModel::enter(const QString& digits) {
  if (m_isBusy || digits.isEmpty()) return;
  m_trouble.clear();
  if (m_isSetting) return setCode(digits);
  tryCode(digits);
}

// Runs the job elsewhere and what it hands back here, unless this is gone by then.
void LockModel::work(std::function<std::function<void()>()> job) {
  m_isBusy = true;
  emit changed();
  QThreadPool::globalInstance()->start([self = QPointer<LockModel>(this), app = QCoreApplication::instance(), job = std::move(job)] {
    auto after = job();
    QMetaObject::invokeMethod(app, [self, after = std::move(after)] {
      if (!self) return;
      self->m_isBusy = false;
      self->m_sinceBeat.restart();
      after();
      emit self->changed();
    });
  });
}

void LockModel::tryCode(const QString& digits) {
  std::vector<book::CodeHash> codes;
  std::vector<std::string> people;
  for (const auto& [id, person] : m_desk->views().people) {
    if (!person.code || (!m_person.empty() && id != m_person)) continue;
    codes.push_back(*person.code);
    people.push_back(id);
  }
  work([this, gate = m_gate, attempts = m_edges.attempts, codes = std::move(codes), people = std::move(people),
        text = digits.toStdString()]() -> std::function<void()> {
    std::size_t which = 0;
    const auto outcome = gate->tryCode(codes, text, which);
    return [this, outcome, person = which < people.size() ? people[which] : std::string()] {
      if (!outcome) return say(errorSentence(outcome.error()));
      switch (*outcome) {
        case book::CodeGate::Outcome::right:
          return takeUp(person);
        case book::CodeGate::Outcome::wrong:
          return say(tr("That is not the code."));
        case book::CodeGate::Outcome::waiting:
          return say({});
      }
    };
  });
}

void LockModel::takeUp(const std::string& person) {
  m_wall.clear();
  m_choices->setPerson(QString::fromStdString(person));
  m_desk->setPerson(person);
  forget();
  touched();
  emit opened();
}

QString LockModel::codeRefused(const QString& digits) {
  const auto ok = book::checkCode(digits.toStdString());
  if (ok) return {};
  return ok.error().code == ErrorCode::notAllowed ? tr("That code is too easy to guess: not one digit over and over, nor a straight run.")
                                                  : tr("A code has %1 to %2 digits.").arg(book::kCodeLeast).arg(book::kCodeMost);
}

void LockModel::setCode(const QString& digits) {
  if (!maySetCode(m_person)) return;
  if (const QString refused = codeRefused(digits); !refused.isEmpty()) {
    m_first.clear();
    return say(refused);
  }
  if (m_first.isEmpty()) {
    m_first = digits;
    return say({});
  }
  if (m_first != digits) {
    m_first.clear();
    return say(tr("The two were not the same. Begin again."));
  }
  m_first.clear();
  // One code opens for one person: with two the same, nobody could say who signed.
  std::vector<book::CodeHash> others;
  for (const auto& [id, person] : m_desk->views().people) {
    if (person.code && id != m_person) others.push_back(*person.code);
  }
  work([this, others = std::move(others), cost = m_edges.cost, makeKeys = m_edges.makeKeys,
        text = digits.toStdString()]() -> std::function<void()> {
    for (const book::CodeHash& other : others) {
      const auto isTaken = book::isCode(other, text);
      if (isTaken && *isTaken) return [this] { say(tr("That code cannot be taken. Choose another.")); };
    }
    const auto seed = makeKeys()->freshSeed();
    if (!seed) return [this, error = seed.error()] { say(errorSentence(error)); };
    book::CodeSalt salt{};
    std::copy_n(seed->begin(), salt.size(), salt.begin());
    const auto made = book::hashCode(text, salt, cost);
    return [this, made] { made ? keepCode(*made) : say(errorSentence(made.error())); };
  });
}

void LockModel::keepCode(const season::CodeHash& code) {
  m_isBusy = true;
  m_desk->submit([person = m_person, code](const season::Views& views, Instant) { return book::setCode(views, person, code); }, this,
                 [this, person = m_person](const Result<book::Appended>& outcome) {
                   m_isBusy = false;
                   if (!outcome) return say(errorSentence(outcome.error()));
                   // The first one to have a code holds the glass: else nobody did.
                   if (m_desk->person().empty()) takeUp(person);
                   forget();
                   touched();
                   emit codeSet();
                 });
}

}  // namespace snugline::models
