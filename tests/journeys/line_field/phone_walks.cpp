// SPDX-License-Identifier: Apache-2.0
// An athlete's own phone from the code to the answer: two programs, and only files between them. The square code is read back from the
// picture of the screen by zxing-cpp's reader.
#include SNUGLINE_CATCH_HEADER

#include <QFile>
#include <QQuickItem>
#include <QQuickView>
#include <QTemporaryDir>

#define ZX_USE_UTF8 1  // texts as std::string, which the library will do by itself later
#include <ZXing/DecodeHints.h>
#include <ZXing/ReadBarcode.h>

#include "qml/models/line_model.h"
#include "say_steps.h"

using namespace snugline;
using field::Field;
using field::Ground;

namespace {

// Typing is the keyboard's; a text of eighty letters is pasted.
bool paste(Field& field, const QString& name, const QString& text) {
  if (!field.touch(name)) return false;
  return field.find(name)->setProperty("text", text);
}

bool openCode(Field& field, const QString& jersey) {
  if (!field.touch("door-book") || !field.touch("athletes") || !field.touch("search")) return false;
  for (const QChar digit : jersey) field.press(digit.unicode());  // Qt::Key_0 to Qt::Key_9 are the digits
  if (!field.until([&] { return field.app().shell().phones() != nullptr && !field.reads("Marsh"); })) return false;
  return field.touch("edit") && field.touch("own-phone") && field.touch("invite") &&
         field.until([&] { return !field.app().shell().phones()->matrix().isEmpty(); });
}

std::string codeOnGlass(Field& field) {
  const QImage picture = field.app().view().grabWindow().convertToFormat(QImage::Format_Grayscale8);
  const ZXing::ImageView view(picture.constBits(), picture.width(), picture.height(), ZXing::ImageFormat::Lum,
                              static_cast<int>(picture.bytesPerLine()));
  return ZXing::ReadBarcode(view, ZXing::DecodeHints().setFormats(ZXing::BarcodeFormat::QRCode).setTryHarder(true)).text();
}

bool leaveForSharing(Field& field) {
  // From the phone's page over the form and the list of athletes.
  return field.touch("back") && field.touch("back") && field.touch("back") && field.touch("sharing");
}

}  // namespace

TEST_CASE("A phone joined by the code on the glass says something without a network, staff take it in, and it hears what came of it") {
  const Ground ground;
  const QTemporaryDir pocket;
  const std::string pocketPath = pocket.path().toStdString();
  Field staff(ground.path());
  REQUIRE(staff.open());
  REQUIRE(openCode(staff, "88"));
  const std::string code = codeOnGlass(staff);
  REQUIRE(code.starts_with("SNUGLINE-JOIN:"));
  CHECK(staff.shows("A code was given out"));

  // The phone writes into its owner's documents: here a folder of the pocket.
  qputenv("HOME", pocketPath.c_str());
  qunsetenv("XDG_CONFIG_HOME");
  const QString reports = pocket.filePath("Documents/snugline-reports.json");
  {
    Field phone(pocketPath);
    REQUIRE(phone.open());
    REQUIRE(phone.touch("first-join"));
    REQUIRE(paste(phone, "join-code", "SNUGLINE-JOIN:AAAA"));
    REQUIRE(phone.touch("join"));
    CHECK(phone.shows("This is not a join code"));
    REQUIRE(paste(phone, "join-code", QString::fromStdString(code)));
    REQUIRE(phone.touch("join"));
    REQUIRE(phone.until([&] { return phone.screen() == "phone"; }));
    CHECK(phone.shows("Number 88"));
    CHECK(phone.shows("Staff have not answered yet"));
    phone.countAnew();
    REQUIRE(phone.touch("phone-say"));
    REQUIRE(phone.touch("place-jaw-left"));
    REQUIRE(phone.touch("tight"));
    CHECK(phone.touches() <= 3);
    CHECK(phone.shows("Kept on this phone"));
    REQUIRE(phone.touch("say-done"));
    CHECK(phone.shows("1 report that staff do not have yet"));
    for (const char* name : {"Lindqvist", "Okafor", "Marsh"}) CHECK(phone.everyWord().filter(QLatin1String(name)).isEmpty());
    REQUIRE(phone.touch("phone-write"));
    CHECK(phone.shows("Give this file to staff"));
    REQUIRE(QFile::exists(reports));
  }

  REQUIRE(leaveForSharing(staff));
  CHECK(staff.shows("1 athlete with a phone of their own"));
  REQUIRE(paste(staff, "path", reports));
  REQUIRE(staff.touch("take-in"));
  CHECK(staff.shows("1 new report from number 88."));
  REQUIRE(staff.athlete("88")->said.size() == 1);
  CHECK(staff.athlete("88")->said.front().where == fit::Mark::jaw);
  REQUIRE(staff.touch("take-in"));
  CHECK(staff.shows("Nothing new from number 88."));
  CHECK(staff.athlete("88")->said.size() == 1);

  // Started again it is a phone at once, with everything it had; it takes the answer in.
  Field phone(pocketPath);
  REQUIRE(phone.open());
  CHECK(phone.screen() == "phone");
  const QString answer = pocket.filePath("Documents/snugline-reports-answer.json");
  REQUIRE(paste(phone, "phone-path", answer));
  REQUIRE(phone.touch("take"));
  CHECK(phone.shows("The answer of the staff is here."));
  CHECK(phone.shows("Staff see your helmet by today."));
  CHECK_FALSE(phone.reads("that staff do not have yet"));
  REQUIRE(paste(phone, "phone-path", reports));
  REQUIRE(phone.touch("take"));
  CHECK(phone.shows("Nothing of it is taken"));
}

TEST_CASE("A file that was altered, and one of a phone that was let go, are refused in words") {
  const Ground ground;
  const QTemporaryDir pocket;
  Field staff(ground.path());
  REQUIRE(staff.open());
  REQUIRE(openCode(staff, "57"));
  {
    Field phone(pocket.path().toStdString());
    REQUIRE(phone.open());
    phone.app().shell().phone()->join(staff.app().shell().phones()->code());
    REQUIRE(phone.until([&] { return phone.screen() == "phone"; }));
    season::SaidRecord said;
    said.where = fit::Mark::crown;
    REQUIRE(phone.app().shell().phone()->record(said).has_value());
    phone.app().shell().phone()->writeReports(pocket.path());
  }
  const QString reports = pocket.filePath("snugline-reports.json");
  QFile file(reports);
  REQUIRE(file.open(QIODevice::ReadOnly));
  QByteArray bytes = file.readAll();
  QFile altered(pocket.filePath("altered.json"));
  REQUIRE(altered.open(QIODevice::WriteOnly));
  altered.write(bytes.replace("crown", "brow"));
  altered.close();
  REQUIRE(staff.touch("let-go"));
  CHECK(staff.shows("Nothing more is taken from that phone."));
  REQUIRE(leaveForSharing(staff));
  REQUIRE(paste(staff, "path", altered.fileName()));
  REQUIRE(staff.touch("take-in"));
  CHECK(staff.shows("This file was altered or is not whole"));
  REQUIRE(paste(staff, "path", reports));
  REQUIRE(staff.touch("take-in"));
  CHECK(staff.shows("This phone is not joined to anybody here"));
  CHECK(staff.athlete("57")->said.empty());
}
