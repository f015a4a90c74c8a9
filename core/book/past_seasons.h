// SPDX-License-Identifier: Apache-2.0
// Purpose: the seasons of a Book from its log, in steps, so that answers can come between: who had which helmet, what checks came to, what
// was missing at the close and whether it turned up. What was taken back since is left out. A fact belongs to the season that was open
// where it stands in the order of all facts; what was written between two seasons belongs to neither, but a helmet that somebody kept goes
// over with them. A season that was never closed ends where the next one was opened.
// Memory: one entry for each pair of athlete and helmet in a season. Thread: a plain value; step() where the Book is.
#pragma once

#include <array>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <utility>
#include <vector>

#include "core/book/book.h"

namespace snugline::book {

// One athlete with one helmet in one season; given out again it is the same entry.
struct PastPair {
  std::string athlete, unit;
  Day from;                           // first given out, or the day the season was opened where it was kept over
  std::optional<Day> to;              // given back for the last time; nothing: still out when the season ended
  bool isHandedIn = false;            // by unit-collected
  int checks = 0, lines = 0;          // ended checks, seen in a line
  std::optional<fit::Verdict> first;  // of the first and last check that ended
  std::optional<fit::Verdict> last;
};
struct PastMissing {
  std::string unit, athlete;    // athlete: who had it then; may be empty
  std::optional<Day> turnedUp;  // in somebody's hands since
};
struct PastSeason {
  std::string season;
  std::optional<Day> start, end;  // as they stood last
  std::optional<Day> closed;      // nothing: never closed
  std::string closing;            // the fact
  bool isOpen = false;            // it runs now
  std::vector<PastPair> pairs;    // in the order of giving out
  std::array<int, 4> outcomes{};  // of checks, by fit::Verdict
  int lineSeen = 0;               // helmets seen in a line, each time counted
  int holds = 0, faults = 0;      // holds begun; points seen at fault
  int words = 0;                  // said about fit or gear
  int received = 0, retired = 0, lost = 0;
  int handedIn = 0;  // helmets, each once
  std::vector<PastMissing> missing;
  [[nodiscard]] int athletes() const;  // who had a helmet
  [[nodiscard]] int helmets() const;   // that somebody had
};

class PastSeasons {
 public:
  // Reads at most so many facts more; true when all was read. Errors: those of Book::read.
  [[nodiscard]] Result<bool> step(Book& book, std::size_t facts);
  [[nodiscard]] const std::vector<PastSeason>& seasons() const { return m_seasons; }  // oldest first; whole once step gave true

 private:
  struct Taker;
  void open(const std::string& name, Day day);
  void close(const Fact& fact, const SeasonClosed& closed);
  void giveOut(const std::string& athlete, const std::string& unit, Day day);
  void takeBack(const std::string& athlete, const std::string& unit, Day day, bool isHandedIn);
  void turnUp(const std::string& unit, Day day);
  [[nodiscard]] PastSeason* named();                                                             // that the team names, open or closed
  [[nodiscard]] PastSeason* now();                                                               // that is open; none between two
  [[nodiscard]] PastPair* pairOf(const std::string& athlete, const std::string& unit, Day day);  // made where there is none

  using PairKey = std::pair<std::string, std::string>;  // athlete, unit
  Book::Cursor m_cursor;
  std::vector<PastSeason> m_seasons;
  std::size_t m_at = 0;                                                                 // of the season that the team names
  std::set<PairKey> m_out;                                                              // out now
  std::map<PairKey, std::size_t> m_pairs;                                               // of the season named
  std::unordered_map<std::string, std::optional<fit::Verdict>> m_ended;                 // its checks, as last ended
  std::unordered_set<std::string> m_in;                                                 // handed in for it
  std::unordered_multimap<std::string, std::pair<std::size_t, std::size_t>> m_missing;  // by unit: season, place in its list
};

}  // namespace snugline::book
