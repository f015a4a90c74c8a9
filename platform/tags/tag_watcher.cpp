// SPDX-License-Identifier: Apache-2.0
#include "platform/tags/tag_watcher.h"

#include <algorithm>
#include <chrono>
#include <utility>

#include <QMetaObject>

namespace snugline::tags {

namespace {

constexpr std::int64_t kShownEveryMs = 66;  // ours: as often as an eye asks for
constexpr int kShownWide = 480;             // ours

std::int64_t nowMs() {
  return std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

}  // namespace

ports::SeenPicture shown(const TakenFrame& frame, int widest) {
  const GreyView& grey = frame.grey;
  const int step = std::max(1, (std::max(grey.width, grey.height) + widest - 1) / widest);
  const int wide = grey.width / step, high = grey.height / step;
  const int turns = ((frame.quarterTurns % 4) + 4) % 4;
  ports::SeenPicture small{turns % 2 == 0 ? wide : high, turns % 2 == 0 ? high : wide, {}};
  small.grey.reserve(static_cast<std::size_t>(wide) * static_cast<std::size_t>(high));
  for (int y = 0; y < small.height; ++y) {
    for (int x = 0; x < small.width; ++x) {
      const int u = frame.isMirrored ? small.width - 1 - x : x;
      const int column = turns == 0 ? u : turns == 1 ? y : turns == 2 ? wide - 1 - u : wide - 1 - y;
      const int row = turns == 0 ? y : turns == 1 ? high - 1 - u : turns == 2 ? high - 1 - y : u;
      small.grey.push_back(grey.pixels[static_cast<std::ptrdiff_t>(row * step) * grey.stride + static_cast<std::ptrdiff_t>(column * step)]);
    }
  }
  return small;
}

TagWatcher::TagWatcher(QObject* context, Sink sink) : m_context(context), m_sink(std::move(sink)), m_thread([this] { run(); }) {}

TagWatcher::~TagWatcher() {
  {
    const std::lock_guard guard(m_lock);
    m_isEnding = true;
    m_next = nullptr;
  }
  m_wake.notify_one();
  m_thread.join();
}

void TagWatcher::offer(Take take) {
  {
    const std::lock_guard guard(m_lock);
    if (m_next) ++m_passedOver;
    m_next = std::move(take);
  }
  m_wake.notify_one();
}

std::uint64_t TagWatcher::looks() const {
  const std::lock_guard guard(m_lock);
  return m_looks;
}

std::uint64_t TagWatcher::passedOver() const {
  const std::lock_guard guard(m_lock);
  return m_passedOver;
}

void TagWatcher::run() {
  while (true) {
    Take take;
    {
      std::unique_lock guard(m_lock);
      m_wake.wait(guard, [this] { return m_isEnding || m_next; });
      if (m_isEnding) return;
      take = std::exchange(m_next, nullptr);
    }
    look(take);
    const std::lock_guard guard(m_lock);
    ++m_looks;
  }
}

void TagWatcher::look(const Take& take) {
  const auto frame = take();
  if (!frame || frame->grey.pixels == nullptr || frame->grey.width <= 0 || frame->grey.height <= 0) return;
  Sighting seen;
  for (ReadTag& tag : readTags(frame->grey, kMiddle, m_turn++)) {
    if (tag.isUnreadable) {
      seen.isUnreadable = true;
    } else {
      seen.texts.push_back(std::move(tag.text));
    }
  }
  const std::int64_t now = nowMs();
  if (m_shownMs < 0 || now - m_shownMs >= kShownEveryMs) {
    m_shownMs = now;
    seen.picture = shown(*frame, kShownWide);
  }
  if (seen.texts.empty() && !seen.isUnreadable && !seen.picture) return;
  QMetaObject::invokeMethod(
      m_context, [sink = m_sink, seen = std::move(seen)] { sink(seen); }, Qt::QueuedConnection);
}

}  // namespace snugline::tags
