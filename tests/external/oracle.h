// SPDX-License-Identifier: Apache-2.0
// Purpose: asking another program. Each question is one run; what it says on standard output comes back in lines.
// A program that is missing or fails makes the test fail. Thread: one.
#pragma once

#include SNUGLINE_CATCH_HEADER

#include <sys/wait.h>
#include <unistd.h>

#include <cstdio>
#include <fstream>
#include <memory>
#include <sstream>
#include <string>
#include <vector>

namespace snugline::external {

inline const std::string kHere = std::string(SNUGLINE_SOURCE_DIR) + "/tests/external/";

// A file in the build tree that goes when its owner does.
class Scratch {
 public:
  Scratch(const std::string& name, const std::string& content)
      : m_path(std::string(SNUGLINE_BINARY_DIR) + "/external_" + std::to_string(::getpid()) + "_" + name) {
    std::ofstream(m_path, std::ios::binary) << content;
  }
  ~Scratch() { std::remove(m_path.c_str()); }
  Scratch(const Scratch&) = delete;
  Scratch& operator=(const Scratch&) = delete;
  [[nodiscard]] const std::string& path() const { return m_path; }

 private:
  std::string m_path;
};

// Runs a program with the text as its standard input.
inline std::vector<std::string> ask(const std::string& command, const std::string& input) {
  const Scratch question("question", input);
  FILE* const pipe = ::popen((command + " < '" + question.path() + "'").c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::string text;
  char slice[4096];
  while (const std::size_t n = std::fread(slice, 1, sizeof slice, pipe)) text.append(slice, n);
  const int status = ::pclose(pipe);
  INFO(command);
  REQUIRE(WIFEXITED(status));
  REQUIRE(WEXITSTATUS(status) == 0);
  std::vector<std::string> lines;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

inline std::vector<std::string> split(const std::string& line, char separator) {
  std::vector<std::string> fields;
  std::istringstream stream(line);
  for (std::string field; std::getline(stream, field, separator);) fields.push_back(field);
  return fields;
}

// Rows of a data file: comments and the header line left out.
inline std::vector<std::vector<std::string>> rowsOf(const std::string& name) {
  std::ifstream file(kHere + "data/" + name);
  REQUIRE(file.good());
  std::vector<std::vector<std::string>> rows;
  bool isHeader = true;
  for (std::string line; std::getline(file, line);) {
    if (line.empty() || line.front() == '#') continue;
    if (!isHeader) rows.push_back(split(line, ','));
    isHeader = false;
  }
  REQUIRE_FALSE(rows.empty());
  return rows;
}

}  // namespace snugline::external
