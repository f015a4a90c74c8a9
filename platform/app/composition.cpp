// SPDX-License-Identifier: Apache-2.0
#include "composition.h"

#include <QCoreApplication>
#include <QLocale>
#include <QLoggingCategory>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickStyle>
#include <QQuickView>
#include <QSurfaceFormat>
#include <QTranslator>

#include "platform/sharing/square_code.h"
#include "qml/models/choices.h"
#include "qml/models/shell.h"
#include "qml/tokens/bundled_font.h"

namespace snugline::app {

namespace {
constexpr int kSamples = 4;  // smooth edges of the drawings on a GPU
constexpr const char* kWords = "words";
constexpr const char* kMain = "qrc:/qt/qml/Snugline/Main.qml";
constexpr const char* kLine = "qrc:/qt/qml/Snugline/Line/Line.qml";
// Expressions of a first screen run a few times each: to compile each to machine code first costs more than it saves.
constexpr const char* kCompileAfter = "QV4_JIT_CALL_THRESHOLD";
QLoggingCategory::CategoryFilter askedFilter = nullptr;  // as the environment asks for it

// Qt's own remarks on what a screen reader is told, on keys and on input methods hold what stands on the screens: names too. They are off
// whatever the environment asks for; warnings stay.
void keepContentsOut(QLoggingCategory* category) {
  if (askedFilter != nullptr) askedFilter(category);
  for (const char* area : {"qt.accessibility", "qt.qpa.input", "qt.qpa.keyboard", "qt.virtualkeyboard"}) {
    if (qstrncmp(category->categoryName(), area, qstrlen(area)) != 0) continue;
    category->setEnabled(QtDebugMsg, false);
    category->setEnabled(QtInfoMsg, false);
  }
}

}  // namespace

namespace {
QStringList drawCode(const QString& text) {
  QStringList rows;
  for (const std::string& row : sharing::squareCode(text.toStdString())) rows << QString::fromStdString(row);
  return rows;
}
}  // namespace

void prepare() {
  if (askedFilter == nullptr) askedFilter = QLoggingCategory::installFilter(keepContentsOut);
  if (!qEnvironmentVariableIsSet(kCompileAfter)) qputenv(kCompileAfter, "1000");
  QSurfaceFormat format = QSurfaceFormat::defaultFormat();
  format.setSamples(kSamples);
  QSurfaceFormat::setDefaultFormat(format);
  QQuickStyle::setStyle(QStringLiteral("Basic"));
}

void installWords() { speak(QStringLiteral("en")); }

void speak(const QString& language) {
  const auto spoken = language == QLatin1String("es") ? QLocale::Spanish : QLocale::English;
  QLocale::setDefault(QLocale(spoken, QLocale::UnitedStates));
  QCoreApplication* application = QCoreApplication::instance();
  if (auto* before = application->findChild<QTranslator*>(QLatin1String(kWords), Qt::FindDirectChildrenOnly)) delete before;
  auto* words = new QTranslator(application);
  words->setObjectName(QLatin1String(kWords));
  if (words->load(QStringLiteral(":/i18n/snugline_%1.qm").arg(language))) QCoreApplication::installTranslator(words);
}

Composition::Composition(Edges edges, const Places& places)
    : m_places(places),
      m_choices(std::make_unique<models::Choices>(places.choices)),
      m_desk(std::make_unique<models::Desk>(std::move(edges.makeClock), edges.makeKeys)),
      m_shell(std::make_unique<models::Shell>(
          m_desk.get(), m_choices.get(), edges.makeGauge ? edges.makeGauge() : nullptr,
          models::LockEdges{edges.attempts, edges.makeKeys, {}, edges.outbox},
          models::TagEdges{edges.makeCamera ? edges.makeCamera() : nullptr, edges.makeSheets ? edges.makeSheets() : nullptr,
                           edges.makeNfc ? edges.makeNfc() : nullptr, edges.outbox},
          models::PhoneEdges{drawCode, places.phone},
          models::PhotoEdges{edges.makePhotoCamera ? edges.makePhotoCamera() : nullptr,
                             edges.makePhotoMaker ? edges.makePhotoMaker() : nullptr})),
      m_view(std::make_unique<QQuickView>()),
      m_language(QStringLiteral("en")) {
  QObject::connect(m_choices.get(), &models::Choices::changed, m_view.get(), [this] { chooseLanguage(); });
  QObject::connect(m_shell->phone(), &models::PhoneModel::joined, m_view.get(), [this] { chooseLanguage(); });
  QObject::connect(m_shell->lock(), &models::LockModel::changed, m_view.get(), [this] { chooseLanguage(); });
  chooseLanguage();
}

// The athletes' side speaks its own language, and leaves the staff theirs.
void Composition::chooseLanguage() {
  const QString wall = m_shell->lock()->wall();
  const bool isSay = wall == QLatin1String("say") || wall == QLatin1String("sign") || m_shell->phone()->isJoined();
  const QString language = isSay ? m_choices->sayLanguage() : m_choices->language();
  if (language == m_language) return;
  m_language = language;
  speak(language);
  m_view->engine()->retranslate();
  m_choices->tellAgain();
}

// The window goes first: its bindings look at the models.
Composition::~Composition() {
  m_ahead.reset();
  m_view.reset();
}

void Composition::load() {
  // An athlete's own phone holds no Book.
  if (!m_shell->phone()->isJoined()) m_desk->open(m_places.book, m_places.ifMissing);
  m_view->setTitle(QStringLiteral("Snugline"));
  m_view->engine()->addImportPath(QStringLiteral("qrc:/qt/qml"));
  m_view->setResizeMode(QQuickView::SizeRootObjectToView);
  // What the board is made of is read by the engine's own thread while this one makes the font ready and waits for the Book.
  m_ahead = std::make_unique<QQmlComponent>(m_view->engine(), QUrl(QLatin1String(kLine)), QQmlComponent::Asynchronous);
  static_cast<void>(tokens::bundledFamily());
  m_view->setInitialProperties({{QStringLiteral("shell"), QVariant::fromValue(m_shell.get())}});
  m_view->setSource(QUrl(QLatin1String(kMain)));
}

}  // namespace snugline::app
