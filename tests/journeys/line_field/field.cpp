// SPDX-License-Identifier: Apache-2.0
#include "field.h"

#include <cstdlib>
#include <exception>
#include <utility>

#include <QAccessible>
#include <QDeadlineTimer>
#include <QFile>
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

constexpr int kDragSteps = 8;
constexpr double kGripMiddle = 110;  // where BrowGrip draws its knob, in its own units

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

// Of what is shown: a page below a cover keeps its words, and nobody sees, touches or hears them.
void wordsIn(QQuickItem* item, QStringList& words) {
  if (!item->isVisible()) return;
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

QTest::QTouchEventSequence fingers(QWindow& window) { return QTest::touchEvent(&window, finger()); }

Field::Field(const std::string& folder, const MakeGauge& makeGauge, Instant at)
    : m_folder(folder), m_time(std::make_shared<eyes::MovingTime>(at)) {
  application();
  m_hand = std::make_unique<eyes::Hand>(m_time);
  app::Edges edges{[time = m_time] { return std::make_unique<eyes::MovingClock>(time); },
                   [folder] { return std::make_unique<platform::FileKeys>(folder + "/keys"); },
                   std::make_shared<platform::FileAttempts>(folder + "/keys"),
                   makeGauge,
                   {},
                   {},
                   m_outbox};
  app::Places places;
  places.book = QString::fromStdString(folder + "/team.snugbook");
  const QString choices = QString::fromStdString(folder + "/choices.ini");
  if (QFile::exists(choices)) places.choices = choices;
  places.phone = QString::fromStdString(folder + "/phone.json");
  places.ifMissing.name = "Nobody";
  m_app = std::make_unique<app::Composition>(std::move(edges), places);
  m_app->choices().setMotionReduced(true);
  const auto stir = [this] { m_isStirred = true; };
  QObject::connect(&m_app->desk(), &models::Desk::opened, &m_app->shell(), stir);
  QObject::connect(&m_app->desk(), &models::Desk::changed, &m_app->shell(), stir);
}

// A test that has failed already ends at once; any other shows at its end what a whole fresh app would.
Field::~Field() {
  const bool isWell = std::uncaught_exceptions() == 0;
  if (isWell && m_areEyesOpen && m_app->desk().isOpen()) isTrueForAFreshApp();
  m_app.reset();
  if (isWell && warnings + m_untruths > 0) std::abort();
}

bool Field::until(const std::function<bool()>& isSo) { return eyes::until(isSo); }

eyes::Glass Field::glass() const {
  models::Shell& shell = m_app->shell();
  const bool isOnAthlete = screen() == QLatin1String("athlete");
  return {&m_app->desk(),
          &m_app->choices(),
          shell.weather(),
          shell.line(),
          shell.doors(),
          isOnAthlete ? shell.athlete() : nullptr,
          screen() == QLatin1String("book") ? shell.units() : nullptr};
}

bool Field::isTrue() {
  m_isStirred = false;
  m_lookedAt = screen();
  const QStringList found = eyes::untruths(glass(), m_time);
  for (const QString& each : found) std::fprintf(stderr, "Not true: %s\n", qPrintable(each));
  m_untruths += static_cast<int>(found.size());
  return found.isEmpty();
}

bool Field::look() {
  if (!m_areEyesOpen || !m_app->desk().isOpen() || !eyes::settle(m_app->desk())) return true;
  return (!m_isStirred && m_lookedAt == screen()) || isTrue();
}

bool Field::passDays(int days) {
  m_time->pass(days * eyes::kDayMs);
  return isTrue();
}

bool Field::open() {
  m_app->load();
  m_app->view().resize(834, 1194);
  m_app->view().show();
  const bool isThere = until([this] { return !screen().isEmpty() || !m_app->shell().failure().isEmpty(); });
  if (!m_app->shell().failure().isEmpty()) std::fprintf(stderr, "%s\n", qPrintable(m_app->shell().failure()));
  // Somebody signs, as on a device in use; where there are codes only a code says who.
  if (m_app->desk().person().empty() && !views().people.empty() && !m_app->shell().lock()->hasCodes())
    m_app->shell().doors()->choosePerson(QString::fromStdString(views().people.begin()->first));
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
  fingers(m_app->view()).press(0, at.toPoint(), &m_app->view());
  fingers(m_app->view()).release(0, at.toPoint(), &m_app->view());
  return until([this] { return !m_app->shell().guide()->isBusy(); }) && look();
}

void Field::touchAt(double x, double y) {
  const QPoint at(static_cast<int>(x * m_app->view().width()), static_cast<int>(y * m_app->view().height()));
  ++m_touches;
  fingers(m_app->view()).press(0, at, &m_app->view());
  fingers(m_app->view()).release(0, at, &m_app->view());
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
  fingers(m_app->view()).press(0, at.toPoint(), &m_app->view());
  for (int i = 1; i <= kDragSteps; ++i) {
    const QPointF place = at + (to - at) * (static_cast<double>(i) / kDragSteps);
    fingers(m_app->view()).move(0, place.toPoint(), &m_app->view());
    QCoreApplication::processEvents();
  }
  fingers(m_app->view()).release(0, to.toPoint(), &m_app->view());
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
