// SPDX-License-Identifier: Apache-2.0
// Purpose: files that a person asked for - a sheet to print, a record handed out - on their way out of the app. A Paper says what is to
// stand there and not how it is set: whoever prints it chooses type, wraps and breaks pages. Texts come in ready for people; texts of
// others went through book/shown_text.h. File names hold no name of a person: that is the caller's. Errors: cannotWrite, diskFull,
// readOnly; nothing half written. Thread: GUI thread.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "core/quantity/result.h"

namespace snugline::ports {

struct PaperPart {
  enum class Kind : std::uint8_t { heading, text, key, row, line, picture };
  Kind kind = Kind::text;
  std::string text;       // of a row: what happened; of a key: its groups, set large; of a line: what is to be written on it;
                          // of a picture: what it shows
  std::string margin;     // of a row: when and by whom
  std::string picture{};  // of a picture: a JPEG
};
struct Paper {
  std::string title, subtitle, foot;  // foot: on every page, beside its number
  std::vector<PaperPart> parts;
};

class Outbox {
 public:
  virtual ~Outbox() = default;
  // Where it stands now, as people find it. name: without folder, with its ending; a file of that name is let be and a number put behind.
  [[nodiscard]] virtual Result<std::string> keep(const std::string& name, const std::string& bytes) = 0;
  [[nodiscard]] virtual Result<std::string> print(const std::string& name, const Paper& paper) = 0;  // as PDF
  // Opens a file of this outbox, or another one, where people look at it and print it. False: nothing on this device does.
  virtual bool open(const std::string& place) = 0;
};

class MemoryOutbox final : public Outbox {
 public:
  std::map<std::string, std::string> files;
  std::map<std::string, Paper> papers;
  [[nodiscard]] Result<std::string> keep(const std::string& name, const std::string& bytes) override {
    files[name] = bytes;
    return name;
  }
  [[nodiscard]] Result<std::string> print(const std::string& name, const Paper& paper) override {
    papers[name] = paper;
    return name;
  }
  bool open(const std::string& place) override {
    opened.push_back(place);
    return true;
  }
  std::vector<std::string> opened;
};

class FailingOutbox final : public Outbox {
 public:
  [[nodiscard]] Result<std::string> keep(const std::string& name, const std::string&) override { return fail(ErrorCode::diskFull, name); }
  [[nodiscard]] Result<std::string> print(const std::string& name, const Paper&) override { return fail(ErrorCode::diskFull, name); }
  bool open(const std::string&) override { return false; }
};

}  // namespace snugline::ports
