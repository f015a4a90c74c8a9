// SPDX-License-Identifier: Apache-2.0
// Purpose: a folder that goes away, a clock that stands still, keys in memory, and a Book with a helmet and a head in it.
#pragma once

#include <stdlib.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <memory>
#include <sstream>
#include <stdexcept>
#include <string>

#include "core/book/acts.h"
#include "core/book/book.h"
#include "core/ports/memory_ports.h"

namespace snugline::test {

class Folder {
 public:
  Folder() {
    std::string name = std::filesystem::temp_directory_path().string() + "/snugline-book-XXXXXX";
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no temporary folder");
    m_path = name;
  }
  ~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(m_path, ignored);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  [[nodiscard]] std::string at(const std::string& name) const { return m_path + '/' + name; }
  [[nodiscard]] const std::string& path() const { return m_path; }

 private:
  std::string m_path;
};

inline std::string bytesOfFile(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}
inline void writeFile(const std::string& path, const std::string& bytes) {
  std::ofstream file(path, std::ios::binary);
  file << bytes;
  if (!file.flush()) throw std::runtime_error("cannot write " + path);
}

// What failed, so that a failing REQUIRE says it.
template <typename T>
T must(Result<T>&& result) {
  if (!result)
    throw std::runtime_error("error " + std::to_string(static_cast<int>(result.error().code)) + " at " + result.error().place + ": " +
                             result.error().detail);
  if constexpr (!std::is_void_v<T>) return std::move(*result);
}

inline std::string sheetBytes(const std::string& name = "alder-a1") {
  return bytesOfFile(std::string(SNUGLINE_SOURCE_DIR) + "/demo/data/sheets/" + name + ".json");
}

struct World {
  Folder folder;
  ports::MemoryClock clock{instantAt(dayOf(2026, 10, 14), 930, -300)};
  ports::MemoryKeys keys{7};
  std::string path = folder.at("team.book");

  [[nodiscard]] Day today() { return dayOf(clock.now()); }
  [[nodiscard]] Result<std::unique_ptr<book::Book>> tryCreate(const std::string& file = {}) {
    return book::Book::create(file.empty() ? path : file, {"Harrow Creek High", "Herons", "2026", ""}, keys, clock);
  }
  [[nodiscard]] std::unique_ptr<book::Book> create(const std::string& file = {}) { return must(tryCreate(file)); }
  [[nodiscard]] Result<std::unique_ptr<book::Book>> tryOpen(const std::string& file = {}, book::Access access = book::Access::readWrite) {
    return book::Book::open(file.empty() ? path : file, access, keys, clock);
  }
  [[nodiscard]] std::unique_ptr<book::Book> open(const std::string& file = {}, book::Access access = book::Access::readWrite) {
    return must(tryOpen(file, access));
  }
};

inline book::Appended put(book::Book& book, book::Drafts drafts) { return must(book.append(std::move(drafts))); }

// For tests of the fold: out of it, whatever rests on it by now.
inline book::Appended takeOut(book::Book& book, const std::string& id) {
  const book::Fact fact = must(book.fact(id));
  return put(book, {{fact.about, book::Corrected{id, book::touches(fact)}}});
}

inline fit::MarkSeen seen(fit::Mark mark, fit::Finding finding = fit::Finding::snug) {
  fit::MarkSeen answer;
  answer.mark = mark;
  answer.finding = finding;
  return answer;
}

struct Fitting {
  std::string sheet, athlete, unit, check;
};
// An athlete wearing a helmet in service.
inline Fitting pairUp(book::Book& book, Day today, const std::string& jersey = "07", const std::string& serial = "HC-001") {
  Fitting f;
  const auto sheet = must(gear::parseSheet(sheetBytes(), "sheet"));
  f.sheet = sheet.hash;
  put(book, must(book::adoptSheet(book.views(), sheet)));
  f.athlete = put(book, must(book::addAthlete(book.views(), {jersey, "Marrow", "Ash", 2009}))).ids.front();
  book::Arrival arrival;
  arrival.tag = must(gear::parseTag(serial, today));
  arrival.sheet = f.sheet;
  arrival.size = sheet.sizes.front().name;
  arrival.label = gear::Label{gear::LabelKind::recertification, 2026, std::nullopt, {}};
  for (auto& point : arrival.points) point.state = gear::PointState::sound;
  arrival.isGroup = true;
  f.unit = put(book, must(book::takeIn(book.views(), arrival, today))).ids.front();
  put(book, must(book::pair(book.views(), f.athlete, f.unit, today)));
  return f;
}
inline void beginCheck(book::Book& book, Fitting& f, Day today, fit::CheckKind kind = fit::CheckKind::first) {
  f.check = put(book, must(book::beginCheck(book.views(), f.athlete, kind, today))).ids.front();
}
inline void answer(book::Book& book, const Fitting& f, const fit::Answer& given, Day today) {
  put(book, must(book::answer(book.views(), f.check, {given}, instantAt(today, 930, -300))));
}
inline void fitWhole(book::Book& book, Fitting& f, ports::Clock& clock) {
  const Day today = dayOf(clock.now());
  beginCheck(book, f, today);
  answer(book, f, fit::HairSeen{true}, today);
  for (fit::Mark mark : fit::kMarks) answer(book, f, seen(mark), today);
  answer(book, f, fit::PointsSound{}, today);
  const auto sheet = book.views().sheet(f.sheet);
  for (const auto& question : sheet->questions) answer(book, f, fit::QuestionAnswered{question.id, true}, today);
  put(book, must(book::endCheck(book.views(), f.check, clock.now())));
}

}  // namespace snugline::test
