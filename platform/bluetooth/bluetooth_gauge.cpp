// SPDX-License-Identifier: Apache-2.0
#include "platform/bluetooth/bluetooth_gauge.h"

#include <algorithm>
#include <deque>
#include <mutex>
#include <utility>
#include <variant>

#include <QDeadlineTimer>
#include <QTimer>
#if QT_VERSION >= QT_VERSION_CHECK(6, 6, 0)
#include <QCoreApplication>
#include <QPermissions>
#endif

#include "platform/bluetooth/gauge_link.h"

namespace snugline::bluetooth {

// Between the two threads. What was said before the last call is dropped, so that nothing late is heard.
class GaugeMailbox {
 public:
  using Letter = std::variant<ports::GaugeState, ports::FoundGauge, ports::GaugePacket>;
  void put(Letter letter, int round) {
    const std::lock_guard lock(m_mutex);
    if (round != m_round) return;
    if (std::holds_alternative<ports::GaugePacket>(letter) && ++m_packets > kPacketsInOneCall) dropOldest();
    m_letters.push_back(std::move(letter));
  }
  [[nodiscard]] std::deque<Letter> take() {
    const std::lock_guard lock(m_mutex);
    m_packets = 0;
    return std::exchange(m_letters, {});
  }
  [[nodiscard]] int nextRound() {
    const std::lock_guard lock(m_mutex);
    m_letters.clear();
    m_packets = 0;
    return ++m_round;
  }
  [[nodiscard]] int round() {
    const std::lock_guard lock(m_mutex);
    return m_round;
  }
  // The owner's door; nobody rings at one that was closed.
  void setDoor(std::function<void()> door) {
    const std::lock_guard lock(m_mutex);
    m_door = std::move(door);
  }
  void ring() {
    const std::lock_guard lock(m_mutex);
    if (m_door) m_door();
  }

 private:
  void dropOldest() {
    const auto oldest =
        std::find_if(m_letters.begin(), m_letters.end(), [](const Letter& one) { return std::holds_alternative<ports::GaugePacket>(one); });
    if (oldest != m_letters.end()) m_letters.erase(oldest);
    --m_packets;
  }
  std::mutex m_mutex;
  std::deque<Letter> m_letters;
  std::size_t m_packets = 0;
  int m_round = 0;
  std::function<void()> m_door;
};

namespace {

// Lives on the link's thread and rings at the owner's door: at once for the first, then at most once a frame, and never while a ring is
// unanswered.
class Bell final : public QObject {
 public:
  explicit Bell(std::shared_ptr<GaugeMailbox> mailbox) : m_mailbox(std::move(mailbox)) {
    m_frame.setSingleShot(true);
    m_frame.setTimerType(Qt::PreciseTimer);
    m_frame.setInterval(kFrame);
    connect(&m_frame, &QTimer::timeout, this, [this] {
      if (m_isWaiting) ringNow();
    });
  }
  void put(GaugeMailbox::Letter letter) {
    m_mailbox->put(std::move(letter), m_round);
    if (m_frame.isActive())
      m_isWaiting = true;
    else
      ringNow();
  }
  void setRound(int round) { m_round = round; }

 private:
  void ringNow() {
    m_isWaiting = false;
    m_frame.start();
    m_mailbox->ring();
  }
  std::shared_ptr<GaugeMailbox> m_mailbox;
  QTimer m_frame{this};  // a child, so that it goes along to the other thread
  bool m_isWaiting = false;
  int m_round = 0;
};

constexpr std::chrono::milliseconds kGoodbye{3'000};  // for the link's thread to end while the system keeps it waiting

}  // namespace

BluetoothGauge::BluetoothGauge(const MakeClock& makeClock, const GaugePace& pace)
    : m_pace(pace), m_clock(makeClock()), m_mailbox(std::make_shared<GaugeMailbox>()) {
  m_mailbox->setDoor([this] { QMetaObject::invokeMethod(this, &BluetoothGauge::deliver, Qt::QueuedConnection); });
}

BluetoothGauge::~BluetoothGauge() {
  m_mailbox->setDoor(nullptr);
  if (!m_thread) return;
  (void)m_mailbox->nextRound();
  m_thread->quit();
  // A system that does not answer holds the thread in a call; the thread is then left to end by itself rather than the app be held.
  if (!m_thread->wait(QDeadlineTimer(kGoodbye))) {
    QObject::connect(m_thread.get(), &QThread::finished, m_thread.get(), &QObject::deleteLater);
    (void)m_thread.release();
  }
}

void BluetoothGauge::listen(ports::GaugeListener listener) { m_listener = std::move(listener); }

void BluetoothGauge::order(std::function<void(GaugeLink&)> what) {
  const int round = m_mailbox->nextRound();
  if (!m_thread) {
    m_thread = std::make_unique<QThread>();
    m_thread->setObjectName(QStringLiteral("gauge"));
    auto* bell = new Bell(m_mailbox);
    m_bell = bell;
    m_link = new GaugeLink(
        m_pace, std::move(m_clock),
        {[bell](const ports::GaugeState& state) { bell->put(state); }, [bell](const ports::FoundGauge& found) { bell->put(found); },
         [bell](ports::GaugePacket packet) { bell->put(std::move(packet)); }});
    bell->setParent(m_link);
    m_link->moveToThread(m_thread.get());
    QObject::connect(m_thread.get(), &QThread::finished, m_link, &QObject::deleteLater);
    m_thread->start();
  }
  QMetaObject::invokeMethod(
      m_link,
      [link = m_link, bell = static_cast<Bell*>(m_bell), round, what = std::move(what)] {
        bell->setRound(round);
        what(*link);
      },
      Qt::QueuedConnection);
}

void BluetoothGauge::withLeave(std::function<void()> what) {
#if QT_VERSION >= QT_VERSION_CHECK(6, 6, 0)
  const int round = m_mailbox->nextRound();
  qApp->requestPermission(QBluetoothPermission{}, this, [this, round, what = std::move(what)](const QPermission& permission) {
    if (m_mailbox->round() != round) return;  // something else was asked for meanwhile
    if (permission.status() == Qt::PermissionStatus::Granted) return what();
    ports::GaugeState state;
    state.phase = state.cause = ports::GaugePhase::noPermission;
    if (m_listener.onState) m_listener.onState(state);
  });
#else
  what();
#endif
}

Result<void> BluetoothGauge::scan(const ports::RememberedGauge& remembered) {
  m_isBusy = true;
  m_found.clear();
  withLeave([this, remembered] { order([remembered](GaugeLink& link) { link.scan(remembered); }); });
  return {};
}

// Nothing but a scan is ended; whoever has chosen meanwhile goes on.
void BluetoothGauge::stopScan() {
  if (m_link != nullptr)
    QMetaObject::invokeMethod(
        m_link, [link = m_link] { link->stopScan(); }, Qt::QueuedConnection);
}

Result<void> BluetoothGauge::choose(const std::string& id) {
  if (m_found.count(id) == 0) return fail(ErrorCode::notFound, id);
  m_isBusy = true;
  withLeave([this, id] { order([id](GaugeLink& link) { link.choose(id); }); });
  return {};
}

Result<void> BluetoothGauge::start(const ports::RememberedGauge& remembered) {
  m_isBusy = true;
  withLeave([this, remembered] { order([remembered](GaugeLink& link) { link.start(remembered); }); });
  return {};
}

void BluetoothGauge::stop() {
  if (!m_isBusy) return;
  m_isBusy = false;
  if (m_link != nullptr) order([](GaugeLink& link) { link.stop(); });
  (void)m_mailbox->nextRound();  // also what the link says to this stop: it is said here
  if (m_listener.onState) m_listener.onState({});
}

void BluetoothGauge::deliver() {
  std::vector<ports::GaugePacket> packets;
  const int round = m_mailbox->round();
  // A copy: a listener may set another one. After a call into it, whatever it stopped is not said any more.
  const auto hand = [&] {
    if (packets.empty()) return;
    const auto onPackets = m_listener.onPackets;
    if (onPackets && m_mailbox->round() == round) onPackets(std::exchange(packets, {}));
    packets.clear();
  };
  for (GaugeMailbox::Letter& letter : m_mailbox->take()) {
    if (auto* packet = std::get_if<ports::GaugePacket>(&letter)) {
      packets.push_back(std::move(*packet));
      continue;
    }
    hand();
    if (m_mailbox->round() != round) return;
    if (const auto* found = std::get_if<ports::FoundGauge>(&letter)) {
      m_found.insert(found->id);
      if (const auto onFound = m_listener.onFound) onFound(*found);
    } else if (const auto* state = std::get_if<ports::GaugeState>(&letter)) {
      if (const auto onState = m_listener.onState) onState(*state);
    }
  }
  hand();
}

}  // namespace snugline::bluetooth
