// SPDX-License-Identifier: Apache-2.0
#include "field.h"

#include <cstdlib>
#include <exception>
#include <utility>

#include <QAccessible>
#include <QDeadlineTimer>
#include <QGuiApplication>
#include <QJSValue>
#include <QMetaProperty>
#include <QQuickItem>
#include <QQuickView>
#include <QTest>

#include "platform/system/file_attempts.h"
#include "platform/system/file_keys.h"
#include "qml/models/choices.h"
#include "qml/models/shell.h"

namespace snugline::field {

namespace {

constexpr int kPatienceMs = 15'000;
constexpr int kDragSteps = 8;
constexpr double kGripMiddle = 110;  // where BrowGrip draws its knob, in its own units

class FieldClock final : public ports::Clock {
 public:
  [[nodiscard]] Instant now() override { return field::now(); }
};

QQuickItem* findIn(QQuickItem* item, const QString& name) {
  if (!item->isVisible()) return nullptr;
  if (item->objectName() == name) return item;
  for (QQuickItem* child : item->childItems()) {
    if (QQuickItem* found = findIn(child, name)) return found;
  }
  return nullptr;
}

bool readsIn(QQuickItem* item, const QString& text) {
  if (!item->isVisible()) return false;
  if (item->property("text").toString().contains(text)) return true;
  for (QQuickItem* child : item->childItems()) {
    if (readsIn(child, text)) return true;
  }
  return false;
}

void wordsOf(const QVariant& value, QStringList& words) {
  if (value.userType() == qMetaTypeId<QJSValue>()) return wordsOf(value.value<QJSValue>().toVariant(), words);
  if (value.userType() == QMetaType::QVariantMap) {
    for (const QVariant& each : value.toMap()) wordsOf(each, words);
  } else if (value.userType() == QMetaType::QVariantList || value.userType() == QMetaType::QStringList) {
    for (const QVariant& each : value.toList()) wordsOf(each, words);
  } else if (value.userType() == QMetaType::QString) {
    words << value.toString();
  }
}

void wordsIn(QQuickItem* item, QStringList& words) {
  for (int i = 0; i < item->metaObject()->propertyCount(); ++i) wordsOf(item->metaObject()->property(i).read(item), words);
  if (QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(item))
    words << spoken->text(QAccessible::Name) << spoken->text(QAccessible::Description);
  for (QQuickItem* child : item->childItems()) wordsIn(child, words);
}

int warnings = 0;

// A warning of the screens is a fault of theirs: it is shown, and the field does not end well.
void hear(QtMsgType type, const QMessageLogContext& context, const QString& message) {
  std::fprintf(stderr, "%s\n", qPrintable(message));
  const bool isOfScreens = message.contains(QLatin1String("qrc:")) || qstrcmp(context.category, "qml") == 0;
  if (isOfScreens && type != QtDebugMsg && type != QtInfoMsg) ++warnings;
}

QPointingDevice* finger() {
  static QPointingDevice* device = QTest::createTouchDevice();
  return device;
}

}  // namespace

QGuiApplication& application() {
  static QGuiApplication* app = [] {
    app::prepare();
    qInstallMessageHandler(hear);
    static int argc = 1;
    static char name[] = "field";
    static char* argv[] = {name, nullptr};
    auto* made = new QGuiApplication(argc, argv);
    app::installWords();
    return made;
  }();
  return *app;
}

Field::Field(const std::string& folder, const MakeGauge& makeGauge) {
  application();
  app::Edges edges{[] { return std::make_unique<FieldClock>(); },
                   [folder] { return std::make_unique<platform::FileKeys>(folder + "/keys"); },
                   std::make_shared<platform::FileAttempts>(folder + "/keys"),
                   makeGauge,
                   {},
                   {},
                   m_outbox};
  app::Places places;
  places.book = QString::fromStdString(folder + "/team.snugbook");
  places.phone = QString::fromStdString(folder + "/phone.json");
  places.ifMissing.name = "Nobody";
  m_app = std::make_unique<app::Composition>(std::move(edges), places);
  m_app->choices().setMotionReduced(true);
}

Field::~Field() {
  m_app.reset();
  if (warnings > 0 && std::uncaught_exceptions() == 0) std::abort();
}

bool Field::until(const std::function<bool()>& isSo) {
  QDeadlineTimer patience(kPatienceMs);
  while (!isSo()) {
    if (patience.hasExpired()) return false;
    QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 10);
  }
  return true;
}

bool Field::open() {
  m_app->load();
  m_app->view().resize(834, 1194);
  m_app->view().show();
  const bool isThere = until([this] { return !screen().isEmpty() || !m_app->shell().failure().isEmpty(); });
  if (!m_app->shell().failure().isEmpty()) std::fprintf(stderr, "%s\n", qPrintable(m_app->shell().failure()));
  return isThere && m_app->shell().failure().isEmpty();
}

QQuickItem* Field::find(const QString& name) const {
  QQuickItem* root = m_app->view().contentItem();
  return root == nullptr ? nullptr : findIn(root, name);
}

bool Field::reads(const QString& text) const { return readsIn(m_app->view().contentItem(), text); }

// A finger comes after the eye: what is touched has been drawn where it is touched, and stood there for one more picture.
bool Field::touch(const QString& name) {
  QPointF at;
  const QRectF glass(QPointF(0, 0), QSizeF(m_app->view().size()));
  const auto isReady = [this](const QQuickItem* item) {
    return item != nullptr && item->isEnabled() && item->width() > 0 && !m_app->shell().guide()->isBusy();
  };
  const bool isThere = until([&] {
    if (!isReady(find(name))) return false;
    m_app->view().grabWindow();
    const QQuickItem* item = find(name);
    if (!isReady(item)) return false;
    const QPointF place = item->mapToScene(QPointF(item->width() / 2, item->height() / 2));
    const bool isStill = place == at;
    at = place;
    return isStill && glass.contains(at);
  });
  if (!isThere) return false;
  ++m_touches;
  QTest::touchEvent(&m_app->view(), finger()).press(0, at.toPoint(), &m_app->view());
  QTest::touchEvent(&m_app->view(), finger()).release(0, at.toPoint(), &m_app->view());
  return until([this] { return !m_app->shell().guide()->isBusy(); });
}

void Field::touchAt(double x, double y) {
  const QPoint at(static_cast<int>(x * m_app->view().width()), static_cast<int>(y * m_app->view().height()));
  ++m_touches;
  QTest::touchEvent(&m_app->view(), finger()).press(0, at, &m_app->view());
  QTest::touchEvent(&m_app->view(), finger()).release(0, at, &m_app->view());
  QCoreApplication::processEvents();
}

void Field::press(int key, int modifiers) {
  QTest::keyClick(&m_app->view(), static_cast<Qt::Key>(key), static_cast<Qt::KeyboardModifiers>(modifiers));
}

QStringList Field::everyWord() const {
  QStringList words{m_app->view().title()};
  wordsIn(m_app->view().contentItem(), words);
  return words;
}

bool Field::dragEdge(double millimetres) {
  QPointF at;
  const bool isStill = until([&] {
    m_app->view().grabWindow();
    const QQuickItem* grip = find(QStringLiteral("browGrip"));
    if (grip == nullptr) return false;
    const QPointF place = grip->mapToScene(QPointF(kGripMiddle, grip->property("edgeY").toDouble()));
    return std::exchange(at, place) == place;
  });
  if (!isStill) return false;
  const QQuickItem* grip = find(QStringLiteral("browGrip"));
  const double way = millimetres * grip->property("unitsPerMm").toDouble();
  const QPointF to = grip->mapToScene(QPointF(kGripMiddle, grip->property("edgeY").toDouble() - way));
  ++m_touches;
  QTest::touchEvent(&m_app->view(), finger()).press(0, at.toPoint(), &m_app->view());
  for (int i = 1; i <= kDragSteps; ++i) {
    const QPointF place = at + (to - at) * (static_cast<double>(i) / kDragSteps);
    QTest::touchEvent(&m_app->view(), finger()).move(0, place.toPoint(), &m_app->view());
    QCoreApplication::processEvents();
  }
  QTest::touchEvent(&m_app->view(), finger()).release(0, to.toPoint(), &m_app->view());
  return true;
}

QString Field::screen() const {
  const QQuickItem* root = m_app->view().rootObject();
  if (root == nullptr || root->property("screenItem").value<QObject*>() == nullptr) return {};
  return root->property("screen").toString();
}

QString Field::stage() const { return m_app->shell().guide()->stage(); }
QString Field::title() const { return m_app->shell().guide()->title(); }
const season::Views& Field::views() const { return m_app->desk().views(); }
const season::AthleteRecord* Field::athlete(const std::string& jersey) const { return views().athleteByJersey(jersey); }

}  // namespace snugline::field
