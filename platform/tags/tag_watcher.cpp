// SPDX-License-Identifier: Apache-2.0
#include "platform/tags/tag_watcher.h"

#include <chrono>
#include <utility>

#include <QMetaObject>

#include "platform/tags/tag_decoder.h"

namespace snugline::tags {

namespace {

constexpr std::int64_t kShownEveryMs = 66;  // ours: as often as an eye asks for
constexpr int kShownWide = 480;             // ours

std::int64_t nowMs() {
  return std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

}  // namespace

ports::SeenPicture smaller(const ports::SeenPicture& picture, int widest) {
  const int step = picture.width <= widest ? 1 : (picture.width + widest - 1) / widest;
  ports::SeenPicture small{picture.width / step, picture.height / step, {}};
  small.grey.reserve(static_cast<std::size_t>(small.width) * static_cast<std::size_t>(small.height));
  for (int y = 0; y < small.height; ++y) {
    for (int x = 0; x < small.width; ++x)
      small.grey.push_back(
          picture.grey[static_cast<std::size_t>(y * step) * static_cast<std::size_t>(picture.width) + static_cast<std::size_t>(x * step)]);
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
  const auto picture = take();
  if (!picture || picture->width <= 0 || picture->height <= 0) return;
  if (picture->grey.size() != static_cast<std::size_t>(picture->width) * static_cast<std::size_t>(picture->height)) return;
  Sighting seen;
  for (ReadTag& tag : readTags({picture->grey.data(), picture->width, picture->height, picture->width}, kMiddle)) {
    if (tag.isUnreadable) {
      seen.isUnreadable = true;
    } else {
      seen.texts.push_back(std::move(tag.text));
    }
  }
  const std::int64_t now = nowMs();
  if (m_shownMs < 0 || now - m_shownMs >= kShownEveryMs) {
    m_shownMs = now;
    seen.picture = smaller(*picture, kShownWide);
  }
  if (seen.texts.empty() && !seen.isUnreadable && !seen.picture) return;
  QMetaObject::invokeMethod(
      m_context, [sink = m_sink, seen = std::move(seen)] { sink(seen); }, Qt::QueuedConnection);
}

}  // namespace snugline::tags
