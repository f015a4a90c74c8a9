// SPDX-License-Identifier: Apache-2.0
// The app's NFC reader against a played Qt Nfc, down to the text that the Dock gets. Records are made by Qt's own classes, whose table of
// the beginnings of addresses is thereby compared with ours.
#include <QCoreApplication>
#include <QElapsedTimer>
#include <QNdefNfcTextRecord>
#include <QNdefNfcUriRecord>
#include <QUrl>

#include SNUGLINE_CATCH_HEADER

#include "core/gear/ndef.h"
#include "platform/nfc/qt_nfc_reader.h"
#include "tests/platform/nfc/played_qt_nfc.h"

using namespace snugline;
using namespace snugline::tests;
using ports::NfcMiss;
using ports::NfcState;

namespace {

const Day kToday = dayOf(2026, 10, 14);

struct Bench {
  int argc = 1;
  char name[9] = "nfc_test";
  char* argv[2] = {name, nullptr};
  QCoreApplication app{argc, argv};
  std::vector<std::vector<ports::NfcRecord>> messages;
  std::vector<NfcMiss> misses;
  std::vector<NfcState> states;
  std::unique_ptr<nfc::QtNfcReader> reader;

  explicit Bench(std::chrono::milliseconds patience = nfc::kAnswerWithin) : reader(std::make_unique<nfc::QtNfcReader>(patience)) {
    device() = {};
    reader->listen({[this](const auto& records) { messages.push_back(records); }, [this](NfcMiss miss) { misses.push_back(miss); },
                    [this](NfcState state) { states.push_back(state); }});
  }
  ~Bench() {
    reader.reset();
    until([] { return device().targets == 0; });
  }
  template <typename Wanted>
  bool until(Wanted wanted) {
    QElapsedTimer timer;
    timer.start();
    while (!wanted() && timer.elapsed() < 5000) {
      QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
      QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    return wanted();
  }
};

QNdefMessage textMessage(const QString& words) {
  QNdefNfcTextRecord record;
  record.setLocale(QStringLiteral("en"));
  record.setEncoding(QNdefNfcTextRecord::Utf8);
  record.setText(words);
  return QNdefMessage(record);
}

tl::expected<std::string, gear::NdefRefusal> readingOf(const std::vector<ports::NfcRecord>& records) {
  std::vector<gear::NdefRecord> read;
  for (const auto& record : records) read.push_back({static_cast<gear::NdefFormat>(record.format), record.type, record.payload});
  return gear::readNdef(read, kToday);
}

}  // namespace

TEST_CASE("A device without NFC is not offered and does not start") {
  Bench bench;
  device().isSupported = false;
  CHECK(!bench.reader->isThere());
  REQUIRE(!bench.reader->start());
  CHECK(bench.states.empty());
}

TEST_CASE("A tag held to the device is read, and the next one after it") {
  Bench bench;
  REQUIRE(bench.reader->isThere());
  REQUIRE(bench.reader->start());
  CHECK(bench.states == std::vector{NfcState::waiting});
  QNearFieldTarget* first = holdTag(true, Answer::message, {textMessage(QStringLiteral("H-0231"))});
  REQUIRE(bench.until([&] { return bench.messages.size() == 1; }));
  takeAway(first);
  QNdefNfcUriRecord link;
  link.setUri(QUrl(QStringLiteral("https://example.org/01/07300011000017/21/KX-0417")));
  holdTag(true, Answer::message, {QNdefMessage(link)});
  REQUIRE(bench.until([&] { return bench.messages.size() == 2; }));
  CHECK(readingOf(bench.messages[0]).value() == "H-0231");
  CHECK(readingOf(bench.messages[1]).value() == "https://example.org/01/07300011000017/21/KX-0417");
  CHECK(bench.misses.empty());
  CHECK(bench.until([] { return device().targets == 1; }));  // the first was let go
}

TEST_CASE("Every beginning of an address that Qt knows is read as Qt reads it") {
  for (int beginning = 0; beginning < 256; ++beginning) {
    QNdefNfcUriRecord record;
    record.setPayload(QByteArray(1, static_cast<char>(beginning)) + "a.example/1");
    const auto ours = gear::textOf({gear::NdefFormat::wellKnown, "U", record.payload().toStdString()});
    INFO(beginning);
    if (beginning < 36) {
      REQUIRE(ours);
      // Qt hands it out as a QUrl, which has the same characters where the address is a sound one.
      if (const QUrl url = record.uri(); url.isValid()) CHECK(url == QUrl(QString::fromStdString(*ours)));
    } else {
      CHECK(ours.error() == gear::NdefTrouble::otherKind);
    }
  }
}

TEST_CASE("Text that Qt writes in UTF-16 is read as it was meant") {
  Bench bench;
  REQUIRE(bench.reader->start());
  QNdefNfcTextRecord record;
  record.setEncoding(QNdefNfcTextRecord::Utf16);
  record.setLocale(QStringLiteral("es"));
  record.setText(QStringLiteral("CASCO-\u00D1-7"));
  holdTag(true, Answer::message, {QNdefMessage(record)});
  REQUIRE(bench.until([&] { return bench.messages.size() == 1; }));
  CHECK(readingOf(bench.messages[0]).value() == "CASCO-\xC3\x91-7");
}

TEST_CASE("A tag without a message, an empty one, one that fails and one that is silent each say so") {
  Bench bench(std::chrono::milliseconds(30));
  REQUIRE(bench.reader->start());
  holdTag(false, Answer::message);
  CHECK(bench.misses == std::vector{NfcMiss::unformatted});
  holdTag(true, Answer::nothing);
  REQUIRE(bench.until([&] { return bench.messages.size() == 1; }));
  CHECK(readingOf(bench.messages[0]).error().why == gear::NdefTrouble::nothing);
  holdTag(true, Answer::message, {QNdefMessage()});
  REQUIRE(bench.until([&] { return bench.messages.size() == 2; }));
  CHECK(readingOf(bench.messages[1]).error().why == gear::NdefTrouble::nothing);
  holdTag(true, Answer::outOfRange);
  REQUIRE(bench.until([&] { return bench.misses.size() == 2; }));
  CHECK(bench.misses.back() == NfcMiss::goneTooSoon);
  holdTag(true, Answer::garbled);
  REQUIRE(bench.until([&] { return bench.misses.size() == 3; }));
  CHECK(bench.misses.back() == NfcMiss::unreadable);
  holdTag(true, Answer::refusesToBegin);
  CHECK(bench.misses.size() == 4);
  holdTag(true, Answer::silence);
  REQUIRE(bench.until([&] { return bench.misses.size() == 5; }));
  CHECK(bench.misses.back() == NfcMiss::unreadable);
}

TEST_CASE("A tag taken away while it is read says so once, and one that was read says nothing") {
  Bench bench(std::chrono::milliseconds(30));
  REQUIRE(bench.reader->start());
  takeAway(holdTag(true, Answer::silence));
  CHECK(bench.misses == std::vector{NfcMiss::goneTooSoon});
  QNearFieldTarget* read = holdTag(true, Answer::message, {textMessage(QStringLiteral("H-1"))});
  REQUIRE(bench.until([&] { return bench.messages.size() == 1; }));
  takeAway(read);
  // Longer than the patience with either: a silent tag that is held on afterwards is the next to be heard of.
  holdTag(true, Answer::silence);
  REQUIRE(bench.until([&] { return bench.misses.size() == 2; }));
  CHECK(bench.misses.back() == NfcMiss::unreadable);
}

TEST_CASE("NFC that is switched off says so and begins by itself once it is switched on") {
  Bench bench;
  device().isEnabled = false;
  REQUIRE(bench.reader->start());
  CHECK(bench.states == std::vector{NfcState::switchedOff});
  CHECK(device().started == 0);
  switchTo(true);
  CHECK(bench.states.back() == NfcState::waiting);
  CHECK(device().started == 1);
  switchTo(false);
  CHECK(bench.states.back() == NfcState::switchedOff);
}

TEST_CASE("A reader that does not begin or that ends by itself says so, and one that was stopped is silent") {
  Bench bench;
  device().starts = false;
  REQUIRE(bench.reader->start());
  CHECK(bench.states == std::vector{NfcState::failed});
  bench.reader->stop();
  device().starts = true;
  bench.states.clear();
  REQUIRE(bench.reader->start());
  endDetection();
  CHECK(bench.states == std::vector{NfcState::waiting, NfcState::failed});
  holdTag(true, Answer::message, {textMessage(QStringLiteral("H-1"))});
  bench.reader->stop();
  CHECK(bench.states.back() == NfcState::off);
  REQUIRE(bench.until([] { return device().targets == 0; }));
  CHECK(bench.messages.empty());
  holdTag(true, Answer::message, {textMessage(QStringLiteral("H-2"))});
  delete device().manager->findChild<QNearFieldTarget*>();
  CHECK(bench.messages.empty());
}
