// SPDX-License-Identifier: Apache-2.0
// How long from starting the process to the first frame of the board, on a Book of ten seasons, beside an empty Qt Quick window and beside
// the same screen drawn from constants; each start is a fresh process, the three kinds take turns. Prints medians and the two ratios with
// their limits (ours): 3 x the empty window, 1.3 x the constant screen. It judges nothing: figures depend on the machine.
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <string>
#include <vector>

#include <QGuiApplication>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickView>
#include <QTemporaryDir>

#include "demo/fakes/demo_clock.h"
#include "demo/generator/demo_world.h"
#include "platform/app/composition.h"
#include "platform/system/file_keys.h"

extern char** environ;

namespace {

using namespace snugline;

constexpr int kStarts = 15;
constexpr int kSeasons = 10;
constexpr double kLimitEmpty = 3.0;
constexpr double kLimitConstant = 1.3;
constexpr QSize kGlass{834, 1194};

double nowMs() {
  timespec t{};
  clock_gettime(CLOCK_MONOTONIC, &t);
  return static_cast<double>(t.tv_sec) * 1e3 + static_cast<double>(t.tv_nsec) / 1e6;
}

[[noreturn]] void tellAndEnd() {
  std::printf("%.3f\n", nowMs());
  std::fflush(stdout);
  _exit(0);  // what comes after the first frame is not the start
}

// By the tree of items: a screen's content belongs to the page that it stands on, not to the object that declares it.
const QQuickItem* named(const QQuickItem& item, const QString& name) {
  if (item.objectName() == name) return &item;
  for (const QQuickItem* child : item.childItems())
    if (const QQuickItem* found = named(*child, name)) return found;
  return nullptr;
}

int showPage(QGuiApplication& application, const QString& page) {
  QQuickView view;
  view.engine()->addImportPath(QStringLiteral("qrc:/qt/qml"));
  view.setResizeMode(QQuickView::SizeRootObjectToView);
  view.setSource(QUrl(QStringLiteral("qrc:/start/") + page));
  if (view.rootObject() == nullptr) return 1;
  QObject::connect(&view, &QQuickWindow::frameSwapped, [] { tellAndEnd(); });
  view.resize(kGlass);
  view.show();
  return application.exec();
}

int showBoard(QGuiApplication& application, const QString& folder) {
  const demo::Options options;
  app::Places places;
  places.book = folder + QStringLiteral("/ten.snugbook");
  places.ifMissing.name = "Bench";
  const std::string keys = folder.toStdString();
  app::Composition composition({[options] {
                                  return std::make_unique<demo::DemoClock>(demo::DemoStart{demo::nowOf(options), true});
                                },
                                [keys] { return std::make_unique<platform::FileKeys>(keys); }},
                               places);
  QObject::connect(&composition.desk(), &models::Desk::failed, [] { _exit(1); });
  composition.load();
  QQuickView& view = composition.view();
  if (view.rootObject() == nullptr) return 1;
  // The Book opens on its own thread and says so through the event loop, so the first screen can still be chosen here.
  const auto step = [](const char* screen) {
    return QVariantMap{{QStringLiteral("screen"), QLatin1String(screen)}, {QStringLiteral("what"), QString()}};
  };
  view.rootObject()->setProperty("trail", QVariantList{step("doors"), step("line")});
  QObject::connect(&view, &QQuickWindow::frameSwapped, [&view] {
    const auto* screen = view.rootObject()->property("screenItem").value<QQuickItem*>();
    const QQuickItem* board = screen == nullptr ? nullptr : named(*screen, QStringLiteral("board"));
    if (board != nullptr && board->property("count").toInt() > 0) tellAndEnd();
  });
  view.resize(kGlass);
  view.show();
  return application.exec();
}

// Milliseconds from spawning to the first frame; negative when the child failed.
double start(const char* self, const std::string& kind, const std::string& folder) {
  int ends[2];
  if (pipe(ends) != 0) return -1;
  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_adddup2(&actions, ends[1], 1);
  posix_spawn_file_actions_addclose(&actions, ends[0]);
  std::string a = self, b = kind, c = folder;
  char* arguments[] = {a.data(), b.data(), c.data(), nullptr};
  pid_t child = 0;
  const double begun = nowMs();
  const int failed = posix_spawn(&child, self, &actions, nullptr, arguments, environ);
  posix_spawn_file_actions_destroy(&actions);
  close(ends[1]);
  std::string said;
  char buffer[256];
  if (failed == 0)
    for (ssize_t n = 0; (n = read(ends[0], buffer, sizeof buffer)) > 0;) said.append(buffer, static_cast<std::size_t>(n));
  close(ends[0]);
  int state = 0;
  if (failed != 0 || waitpid(child, &state, 0) < 0 || !WIFEXITED(state) || WEXITSTATUS(state) != 0 || said.empty()) return -1;
  return std::strtod(said.c_str(), nullptr) - begun;
}

double median(std::vector<double> v) {
  std::sort(v.begin(), v.end());
  return v[v.size() / 2];
}

int compare(const char* self) {
  const QTemporaryDir folder;
  demo::Options options;
  options.seasons = kSeasons;
  // Another device wrote the history, so that no check of its own leads the start to the guide instead of the board.
  const QTemporaryDir writer;
  platform::FileKeys keys(writer.path().toStdString());
  const auto facts = demo::makeDemo(folder.filePath(QStringLiteral("ten.snugbook")).toStdString(), options, keys);
  if (!facts) {
    std::fprintf(stderr, "The Book of ten seasons could not be made.\n");
    return 1;
  }
  std::vector<double> empty, constant, board;
  for (int i = 0; i <= kStarts; ++i) {  // the first round warms the file cache and is left out
    const double e = start(self, "empty", folder.path().toStdString());
    const double c = start(self, "constants", folder.path().toStdString());
    const double b = start(self, "board", folder.path().toStdString());
    if (e < 0 || c < 0 || b < 0) {
      std::fprintf(stderr, "A start failed: empty %.0f, constants %.0f, board %.0f.\n", e, c, b);
      return 1;
    }
    if (i == 0) continue;
    empty.push_back(e);
    constant.push_back(c);
    board.push_back(b);
  }
  const double e = median(empty), c = median(constant), b = median(board);
  std::printf("start to first frame, median of %d: empty window %.1f ms, constant screen %.1f ms, board on %llu facts %.1f ms\n", kStarts,
              e, c, static_cast<unsigned long long>(*facts), b);
  std::printf("board / empty window    %.2f (limit %.1f)\n", b / e, kLimitEmpty);
  std::printf("board / constant screen %.2f (limit %.1f)\n", b / c, kLimitConstant);
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  const std::string kind = argc == 3 ? argv[1] : "";
  if (kind.empty()) return compare("/proc/self/exe");
  app::prepare();
  QGuiApplication application(argc, argv);
  if (kind == "empty") return showPage(application, QStringLiteral("Empty.qml"));
  app::installWords();
  if (kind == "constants") return showPage(application, QStringLiteral("ConstantBoard.qml"));
  return showBoard(application, QString::fromLocal8Bit(argv[2]));
}
