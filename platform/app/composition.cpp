// SPDX-License-Identifier: Apache-2.0
#include "composition.h"

#include <QCoreApplication>
#include <QLocale>
#include <QQmlEngine>
#include <QQuickStyle>
#include <QQuickView>
#include <QSurfaceFormat>
#include <QTranslator>

#include "qml/models/choices.h"
#include "qml/models/shell.h"

namespace snugline::app {

namespace {
constexpr int kSamples = 4;  // smooth edges of the drawings on a GPU
constexpr const char* kMain = "qrc:/qt/qml/Snugline/Main.qml";
}  // namespace

void prepare() {
  QSurfaceFormat format = QSurfaceFormat::defaultFormat();
  format.setSamples(kSamples);
  QSurfaceFormat::setDefaultFormat(format);
  QQuickStyle::setStyle(QStringLiteral("Basic"));
}

void installWords() {
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
  auto* words = new QTranslator(QCoreApplication::instance());
  if (words->load(QStringLiteral(":/i18n/snugline_en.qm"))) QCoreApplication::installTranslator(words);
}

Composition::Composition(Edges edges, const Places& places)
    : m_places(places),
      m_choices(std::make_unique<models::Choices>(places.choices)),
      m_desk(std::make_unique<models::Desk>(std::move(edges.makeClock), edges.makeKeys)),
      m_shell(std::make_unique<models::Shell>(m_desk.get(), m_choices.get(), edges.makeGauge ? edges.makeGauge() : nullptr,
                                              models::LockEdges{edges.attempts, edges.makeKeys, {}})),
      m_view(std::make_unique<QQuickView>()) {}

// The window goes first: its bindings look at the models.
Composition::~Composition() { m_view.reset(); }

void Composition::load() {
  m_desk->open(m_places.book, m_places.ifMissing);
  m_view->setTitle(QStringLiteral("Snugline"));
  m_view->engine()->addImportPath(QStringLiteral("qrc:/qt/qml"));
  m_view->setResizeMode(QQuickView::SizeRootObjectToView);
  m_view->setInitialProperties({{QStringLiteral("shell"), QVariant::fromValue(m_shell.get())}});
  m_view->setSource(QUrl(QLatin1String(kMain)));
}

}  // namespace snugline::app
