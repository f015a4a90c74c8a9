// SPDX-License-Identifier: Apache-2.0
// Purpose: looks for tags in a camera's pictures on a thread of its own: the latest picture wins, one that comes while it looks takes the
// place of the one before. What it sees is handed over on the thread of `context`.
// Ownership: the caller's; the destructor waits for the look that is going on. Thread: offer() from any thread.
#pragma once

#include <condition_variable>
#include <cstdint>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <thread>

#include <QObject>

#include "core/ports/tag_port.h"
#include "platform/tags/tag_decoder.h"

namespace snugline::tags {

struct Sighting {
  std::vector<std::string> texts;
  bool isUnreadable = false;                  // a tag is there and none could be read
  std::optional<ports::SeenPicture> picture;  // small, some fifteen times a second
};

// A frame as grey pixels, which live as long as the holder, and how it is to be shown.
struct TakenFrame {
  GreyView grey;
  std::shared_ptr<const void> holder;
  int quarterTurns = 0;  // clockwise
  bool isMirrored = false;
};

class TagWatcher {
 public:
  using Take = std::function<std::optional<TakenFrame>()>;  // makes the picture grey; called on the watcher's thread
  using Sink = std::function<void(const Sighting&)>;
  TagWatcher(QObject* context, Sink sink);
  ~TagWatcher();
  TagWatcher(const TagWatcher&) = delete;
  TagWatcher& operator=(const TagWatcher&) = delete;

  void offer(Take take);
  // Pictures looked at and passed over so far; for tests and benchmarks.
  [[nodiscard]] std::uint64_t looks() const;
  [[nodiscard]] std::uint64_t passedOver() const;

 private:
  void run();
  void look(const Take& take);

  QObject* m_context;
  Sink m_sink;
  mutable std::mutex m_lock;
  std::condition_variable m_wake;
  Take m_next;
  bool m_isEnding = false;
  std::uint64_t m_looks = 0, m_passedOver = 0;
  std::int64_t m_shownMs = -1;
  unsigned m_turn = 0;  // of looks, for the share of each
  std::thread m_thread;
};

// For showing: made smaller to at most `widest` in each direction by taking every n-th pixel, then turned, then mirrored left to right.
[[nodiscard]] ports::SeenPicture shown(const TakenFrame& frame, int widest);

}  // namespace snugline::tags
