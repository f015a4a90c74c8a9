// SPDX-License-Identifier: Apache-2.0
// `snug check`: does this installation work? It runs the rules, and a Book whose writer is killed, on this very machine and disk.
#include <langinfo.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <clocale>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>

#include "core/book/acts.h"
#include "core/book/book.h"
#include "core/fit/guide.h"
#include "core/fit/size.h"
#include "platform/cli/files.h"
#include "platform/cli/words.h"
#include "platform/system/file_keys.h"

namespace snugline::cli {
namespace {

struct Finding {
  std::string what;
  bool isOk = false;
  std::string why;
};

// A helmet with fitted foam only, ours; small enough to be read here.
constexpr const char* kSheet = R"({"format":1,"id":"check","name":"Check","sizes":[{"name":"M","low_um":550000,"high_um":590000}],
"jaw_pads":{"steps_um":[22000,25000],"fitted_um":25000},"brow_low_um":19000,"brow_high_um":32000,"strap_points":4,
"certification_months":24,"age_limit_months":120,"questions":[],"cautions":""})";

std::string temporaryFolder() {
  const char* const named = std::getenv("TMPDIR");
  std::string pattern = std::string(named != nullptr && *named != '\0' ? named : "/tmp") + "/snug-check-XXXXXX";
  return mkdtemp(pattern.data()) == nullptr ? std::string() : pattern;
}

// Removes the folder whatever happens in between.
class Folder {
 public:
  Folder() : m_path(temporaryFolder()) {}
  ~Folder() {
    std::error_code ignored;
    if (!m_path.empty()) std::filesystem::remove_all(m_path, ignored);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  [[nodiscard]] const std::string& path() const { return m_path; }

 private:
  std::string m_path;
};

// Founds a Book, writes one fact and dies without closing anything, as a tablet with a flat battery would.
[[noreturn]] void writeAndDie(const std::string& path, const std::string& keysPath, ports::Clock& clock) {
  platform::FileKeys keys(keysPath);
  const auto made = book::Book::create(path, {"Check", "", "2026", ""}, keys, clock);
  if (!made) _exit(1);
  const Result<book::Drafts> drafts = book::addAthlete((*made)->views(), {"07", "Check", "", std::nullopt});
  if (!drafts || !(*made)->append(*drafts)) _exit(1);
  _exit(0);
}

Finding storeFinding(ports::Clock& clock) {
  const Folder folder;
  if (folder.path().empty()) return {"store", false, std::string("no temporary folder: ") + std::strerror(errno)};
  const std::string path = folder.path() + "/check.book", keysPath = folder.path() + "/keys";
  const pid_t child = fork();
  if (child < 0) return {"store", false, std::string("no second process: ") + std::strerror(errno)};
  if (child == 0) writeAndDie(path, keysPath, clock);
  int status = 0;
  if (waitpid(child, &status, 0) != child || status != 0)
    return {"store", false, "a Book could not be founded and written in " + folder.path()};

  platform::FileKeys keys(keysPath);
  const auto opened = book::Book::open(path, book::Access::readWrite, keys, clock);
  if (!opened) return {"store", false, sentence(opened.error())};
  if ((*opened)->views().athleteByJersey("07") == nullptr) return {"store", false, "a fact was lost when its writer was killed"};
  const Result<book::VerifyAnswer> answer = (*opened)->verify();
  if (!answer) return {"store", false, sentence(answer.error())};
  if (!answer->isOk) return {"store", false, "the Book does not verify after its writer was killed"};
  return {"store", true, "a Book was written, its writer killed, nothing was lost and it verifies"};
}

Finding rulesFinding() {
  const Result<gear::ModelSheet> sheet = gear::parseSheet(kSheet, "check");
  if (!sheet) return {"rules", false, sentence(sheet.error())};
  fit::Setup setup;
  setup.sheet = &*sheet;
  setup.today = dayOf(2026, 10, 14);
  setup.certifiedUntil = dayOf(2027, 10, 14);
  fit::State state = fit::begin(setup);
  std::vector<fit::Answer> answers{fit::HairSeen{true}};
  for (const fit::LookView view : fit::kLookViews) answers.emplace_back(fit::GroupSnug{view});
  answers.emplace_back(fit::PointsSound{});
  for (const fit::Answer& answer : answers) {
    if (fit::isFits(setup, state)) return {"rules", false, "a check with open marks says fits"};
    Result<fit::State> next = fit::take(setup, state, answer);
    if (!next) return {"rules", false, sentence(next.error())};
    state = std::move(*next);
  }
  if (fit::assess(setup, state).verdict != fit::Verdict::fits) return {"rules", false, "a check with nothing open does not say fits"};
  setup.certifiedUntil = dayOf(2026, 10, 13);
  if (fit::assess(setup, state).verdict != fit::Verdict::doNotWear) return {"rules", false, "a lapsed label does not say do not wear"};
  const Result<fit::SizeAnswer> size = fit::sizeOf(*sheet, {Length::millimetres(570)});
  if (!size || size->size != "M") return {"rules", false, "a head in the middle of M is not an M"};
  return {"rules", true, "a check on a built-in sheet ended as it must, rules version " + std::to_string(fit::kRulesVersion)};
}

// The app carries its fonts itself; the copies beside the program are for whoever prints.
Finding fontsFinding(const std::string& programFolder) {
  const std::string folder = programFolder + "/../share/snugline/fonts";
  for (const char* const name : {"B612-Regular.otf", "B612-Bold.otf"}) {
    std::ifstream file(folder + '/' + name, std::ios::binary);
    std::string head(4, '\0');
    if (!file.read(head.data(), 4) || head != "OTTO")
      return {"fonts", false, std::string(name) + " is not in " + folder + " or is not a font"};
  }
  return {"fonts", true, "B612 Regular and Bold are there"};
}

// Core never looks at the locale; this says so on the machine's own, where a decimal comma would show.
Finding localeFinding() {
  const char* const set = std::setlocale(LC_ALL, "");
  const std::string codes = nl_langinfo(CODESET);
  const bool isPlain = print(Length::millimetres(25.4), UnitSystem::us) == "1 in" && parseLength("22.5in").has_value();
  std::setlocale(LC_ALL, "C");
  if (!isPlain) return {"locale", false, "quantities come out otherwise under this locale"};
  if (set == nullptr) return {"locale", false, "the locale named by the environment is not installed"};
  return {"locale", true, "quantities read and print alike here, text is " + codes};
}

// What the app loads when it is first asked for. Whether the device has an adapter, a camera or a reader is asked there, not here.
bool isInstalled(const std::string& programFolder, const char* module) {
  std::error_code ignored;
  return std::filesystem::exists(programFolder + "/../" SNUGLINE_MODULES "/" + module + ".so", ignored);
}

Finding bluetoothFinding(const std::string& programFolder) {
  if (isInstalled(programFolder, "snugline_gauge"))
    return {"bluetooth", true, "the app's gauge module is installed; no gauge was looked for"};
  return {"bluetooth", true, "no gauge module is installed; gauge readings are typed in"};
}

Finding cameraFinding(const std::string& programFolder) {
  const bool hasCamera = isInstalled(programFolder, "snugline_camera"), hasNfc = isInstalled(programFolder, "snugline_nfc");
  if (hasCamera && hasNfc) return {"camera", true, "the app's modules for camera and NFC are installed; neither device was looked for"};
  if (hasCamera) return {"camera", true, "the app's camera module is installed, none for NFC; no camera was looked for"};
  if (hasNfc) return {"camera", true, "the app's NFC module is installed, none for a camera; no reader was looked for"};
  return {"camera", true, "no module for camera or NFC is installed; tags come from a hand scanner or by typing"};
}

}  // namespace

Result<Reply> check(Outside& outside) {
  const std::vector<Finding> findings{rulesFinding(),
                                      storeFinding(outside.clock),
                                      fontsFinding(outside.programFolder),
                                      localeFinding(),
                                      bluetoothFinding(outside.programFolder),
                                      cameraFinding(outside.programFolder)};
  Reply reply;
  json::Writer out;
  bool isOk = true;
  out.beginObject().key("findings").beginArray();
  for (const Finding& finding : findings) {
    isOk = isOk && finding.isOk;
    out.beginObject().key("what").string(finding.what).key("ok").boolean(finding.isOk).key("why").string(finding.why).endObject();
    reply.text += (finding.isOk ? "ok     " : "FAULT  ") + finding.what + ": " + finding.why + '\n';
  }
  out.endArray().key("ok").boolean(isOk).endObject();
  reply.json = out.take();
  reply.exitCode = isOk ? kDone : kAnswerNo;
  return reply;
}

}  // namespace snugline::cli
