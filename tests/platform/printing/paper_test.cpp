// SPDX-License-Identifier: Apache-2.0
// Papers set as PDF, and files for people in one folder.
#include SNUGLINE_CATCH_HEADER

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QTemporaryDir>

#include "platform/printing/folder_outbox.h"
#include "platform/printing/typesetter.h"

using namespace snugline;
using namespace snugline::platform;

namespace {

void needApplication() {
  static int argc = 3;
  static char name[] = "printing", option[] = "-platform", value[] = "offscreen";
  static char* argv[] = {name, option, value, nullptr};
  static QGuiApplication application(argc, argv);
}

ports::Paper paperOf(const std::string& text, int rows = 1) {
  ports::Paper paper{"Record", "Harrow Creek High", "Snugline", {}};
  for (int i = 0; i < rows; ++i) paper.parts.push_back({ports::PaperPart::Kind::row, text, "2026-10-14 14:00, MT"});
  return paper;
}
int pagesOf(const ports::Paper& paper) {
  int pages = 0;
  const std::string pdf = setPaper(paper, &pages);
  CHECK(pdf.rfind("%PDF-", 0) == 0);
  CHECK(pdf.find("%%EOF") != std::string::npos);
  // What the file says of itself: one page object for each page.
  std::size_t objects = 0;
  for (std::size_t at = pdf.find("/Type /Page\n"); at != std::string::npos; at = pdf.find("/Type /Page\n", at + 1)) ++objects;
  CHECK(objects == static_cast<std::size_t>(pages));
  return pages;
}

}  // namespace

TEST_CASE("A short paper is one page, and one that is longer breaks where it must") {
  needApplication();
  CHECK(pagesOf(paperOf("Look: fits")) == 1);
  CHECK(pagesOf(paperOf("Look: fits", 300)) > 4);
}

TEST_CASE("Ten thousand characters without a blank are wrapped over pages, not cut") {
  needApplication();
  CHECK(pagesOf(paperOf(std::string(10'000, 'W'))) > 2);
  CHECK(pagesOf(paperOf(std::string(40'000, 'W'))) > 2 * pagesOf(paperOf(std::string(10'000, 'W'))));
}

TEST_CASE("Emoji, right-to-left text and lines to write on are set") {
  needApplication();
  ports::Paper paper = paperOf("\xE2\x81\xA8\xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D\xE2\x81\xA9 \xF0\x9F\x8F\x88");
  paper.parts.push_back({ports::PaperPart::Kind::line, "Initials", {}});
  paper.parts.push_back({ports::PaperPart::Kind::key, "48021 73014", {}});
  CHECK(pagesOf(paper) == 1);
}

TEST_CASE("A picture is set with its words, over as many pages as it takes, and one that cannot be read leaves its words") {
  needApplication();
  QImage image(1600, 1200, QImage::Format_RGB32);
  image.fill(Qt::darkCyan);
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  REQUIRE(image.save(&buffer, "JPEG"));
  ports::Paper paper = paperOf("Shell: crack");
  paper.parts.push_back({ports::PaperPart::Kind::picture, "Shell", {}, bytes.toStdString()});
  CHECK(pagesOf(paper) == 1);
  CHECK(setPaper(paper).find("/Subtype /Image") != std::string::npos);
  for (int i = 0; i < 5; ++i) paper.parts.push_back(paper.parts.back());
  CHECK(pagesOf(paper) == 3);
  ports::Paper spoilt = paperOf("Shell: crack");
  spoilt.parts.push_back({ports::PaperPart::Kind::picture, "Shell", {}, "not a picture"});
  CHECK(pagesOf(spoilt) == 1);
  CHECK(setPaper(spoilt).find("/Subtype /Image") == std::string::npos);
}

TEST_CASE("A file never takes another's place, and only its user may read it") {
  needApplication();
  const QTemporaryDir folder;
  FolderOutbox outbox(folder.filePath("papers"));
  const auto first = outbox.keep("record.csv", "one"), second = outbox.keep("record.csv", "two");
  REQUIRE(first);
  REQUIRE(second);
  CHECK(*first != *second);
  QFile file(QString::fromStdString(*first));
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK(file.readAll() == "one");
  CHECK((file.permissions() & (QFileDevice::ReadGroup | QFileDevice::ReadOther)) == QFileDevice::Permissions());
  CHECK(QDir(folder.filePath("papers")).entryList(QDir::Files).size() == 2);
}

TEST_CASE("A paper is opened where the system opens it, and it is said where nothing does") {
  needApplication();
  const QTemporaryDir folder;
  QStringList opened;
  FolderOutbox outbox(folder.filePath("papers"), [&](const QString& path) {
    opened << path;
    return QFile::exists(path);
  });
  const auto place = outbox.print("card.pdf", paperOf("Recheck: fits"));
  REQUIRE(place);
  CHECK(outbox.open(*place));
  CHECK(opened == QStringList{QString::fromStdString(*place)});
  CHECK_FALSE(outbox.open(*place + "-gone"));
}

TEST_CASE("Where nothing can be written it is said, and nothing is left behind") {
  needApplication();
  FolderOutbox outbox(QStringLiteral("/proc/nowhere"));
  CHECK(outbox.keep("record.csv", "one").error().code == ErrorCode::cannotWrite);
  CHECK(FolderOutbox({}).keep("record.csv", "one").error().code == ErrorCode::cannotWrite);
}
