// SPDX-License-Identifier: Apache-2.0
// Sheets of labels as they come out of a printer: the PDF that was written is drawn at 300 dots an inch by poppler (pdftoppm), every label
// is cut out and read back, and the letters beside each code are taken from the page by poppler too (pdftotext).
#ifdef SNUGLINE_PDFTOPPM
#include <array>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <map>
#include <regex>

#include <QGuiApplication>
#include <QTemporaryDir>

#include SNUGLINE_CATCH_HEADER

#include "core/gear/own_serial.h"
#include "platform/tags/label_sheet.h"
#include "platform/tags/tag_decoder.h"

using namespace snugline;

namespace {

constexpr double kDotsPerInch = 300, kMarginMm = 10, kFootMm = 8;

std::string outputOf(const std::string& command) {
  std::string text;
  FILE* pipe = ::popen(command.c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::array<char, 4096> buffer{};
  for (std::size_t got = 0; (got = std::fread(buffer.data(), 1, buffer.size(), pipe)) > 0;) text.append(buffer.data(), got);
  REQUIRE(::pclose(pipe) == 0);
  return text;
}

struct Page {
  int width = 0, height = 0;
  std::vector<std::uint8_t> grey;
};
Page readPgm(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::string magic;
  int most = 0;
  Page page;
  file >> magic >> page.width >> page.height >> most;
  file.get();
  page.grey.assign(std::istreambuf_iterator<char>(file), {});
  REQUIRE(magic == "P5");
  REQUIRE(page.grey.size() == static_cast<std::size_t>(page.width) * static_cast<std::size_t>(page.height));
  return page;
}

// The words of a page by the label they stand in, pages and labels from 0, labels row by row.
using Words = std::map<std::pair<int, int>, std::string>;
Words wordsOf(const std::string& pdf) {
  Words words;
  const std::string text = outputOf("'" SNUGLINE_PDFTOTEXT "' -bbox '" + pdf + "' -");
  const std::regex page("<page width=\"([0-9.]+)\" height=\"([0-9.]+)\">"),
      word("<word xMin=\"([0-9.]+)\" yMin=\"([0-9.]+)\" xMax=\"([0-9.]+)\" yMax=\"([0-9.]+)\">([^<]*)</word>");
  std::smatch found;
  int at = -1;
  double wide = 0, high = 0;
  constexpr double kPerMm = 72 / 25.4;
  for (std::size_t from = 0, end = 0; from < text.size(); from = end + 1) {
    end = std::min(text.find('\n', from), text.size());
    const std::string line = text.substr(from, end - from);
    if (std::regex_search(line, found, page)) {
      ++at;
      wide = std::stod(found[1]) - 2 * kMarginMm * kPerMm;
      high = std::stod(found[2]) - (2 * kMarginMm + kFootMm) * kPerMm;
    } else if (std::regex_search(line, found, word)) {
      const double x = (std::stod(found[1]) + std::stod(found[3])) / 2 - kMarginMm * kPerMm;
      const double y = (std::stod(found[2]) + std::stod(found[4])) / 2 - kMarginMm * kPerMm;
      if (y > high) continue;  // the foot
      const int column = static_cast<int>(x / wide * tags::kLabelColumns), row = static_cast<int>(y / high * tags::kLabelRows);
      words[{at, row * tags::kLabelColumns + column}] += found[5];
    }
  }
  return words;
}

}  // namespace

TEST_CASE("Every label of a printed sheet is read back, and the letters beside its code say the same") {
  static int count = 1;
  static char name[] = "test_camera";
  static char* names[] = {name, nullptr};
  qputenv("QT_QPA_PLATFORM", "offscreen");
  if (QCoreApplication::instance() == nullptr) new QGuiApplication(count, names);  // never ended, as beside

  constexpr int kLabels = 60, kAPage = tags::kLabelColumns * tags::kLabelRows;  // two pages and a half
  std::vector<std::string> serials;
  for (std::uint32_t n = 1; n <= kLabels; ++n) serials.push_back(gear::ownSerial("k7qdabcdefghi", n * 331));
  const QTemporaryDir folder;
  const std::string pdf = folder.filePath(QStringLiteral("labels.pdf")).toStdString();
  const auto pages = tags::LabelSheetWriter().write(pdf, serials, "Herons. Serial tags");
  REQUIRE(pages);
  CHECK(*pages == 3);
  outputOf("'" SNUGLINE_PDFTOPPM "' -r 300 -gray '" + pdf + "' '" + folder.filePath(QStringLiteral("page")).toStdString() + "'");
  const Words words = wordsOf(pdf);
  CHECK(words.size() == kLabels);

  const double perMm = kDotsPerInch / 25.4;
  Page page;
  for (int i = 0; i < kLabels; ++i) {
    const std::string path = folder.filePath(QStringLiteral("page-%1.pgm").arg(i / kAPage + 1)).toStdString();
    if (i % kAPage == 0) page = readPgm(path);
    const double wide = page.width - 2 * kMarginMm * perMm, high = page.height - (2 * kMarginMm + kFootMm) * perMm;
    const int column = i % tags::kLabelColumns, row = i % kAPage / tags::kLabelColumns;
    // Cut along the dashed lines, which stay on the paper.
    const double cellWide = wide / tags::kLabelColumns, cellHigh = high / tags::kLabelRows;
    const int left = static_cast<int>(kMarginMm * perMm + column * cellWide), top = static_cast<int>(kMarginMm * perMm + row * cellHigh);
    const tags::GreyView label{page.grey.data() + static_cast<std::ptrdiff_t>(top) * page.width + left, static_cast<int>(cellWide),
                               static_cast<int>(cellHigh), page.width};
    const auto found = tags::readTags(label);
    INFO(i << " " << serials[static_cast<std::size_t>(i)]);
    REQUIRE(found.size() == 1);
    CHECK(found.front().text == serials[static_cast<std::size_t>(i)]);
    const auto beside = words.find({i / kAPage, i % kAPage});
    REQUIRE(beside != words.end());
    CHECK(beside->second == serials[static_cast<std::size_t>(i)]);
  }
}
#endif
