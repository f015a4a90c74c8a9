// SPDX-License-Identifier: Apache-2.0
// The pictures of an athlete's own phone: the code on the staff's glass, the phone that joins by it, and the files between them.
#include "core/book/phone.h"
#include "demo/fakes/gallery_walk.h"

#include <QImage>
#include <QQuickItem>
#include <QQuickView>
#include <QTemporaryDir>

#include "qml/models/choices.h"

namespace snugline::demo {

void Gallery::shootPhone(const QString& name) {
  settle();
  const QString file =
      QStringLiteral("%1x%2-%3-%4.png").arg(m_size.width()).arg(m_size.height()).arg(++m_count, 2, 10, QLatin1Char('0')).arg(name);
  if (m_pocket->view().grabWindow().save(m_folder.filePath(file))) return;
  std::fprintf(stderr, "Gallery: cannot write %s.\n", qPrintable(m_folder.filePath(file)));
  m_isGood = false;
}

void Gallery::phoneScreens() {
  if (m_pocket == nullptr) return;
  models::PhonesModel& phones = *m_composition.shell().phones();
  models::PhoneModel& phone = *m_pocket->shell().phone();
  const QTemporaryDir between;
  showBook("sharing");
  m_screen = QStringLiteral("book");
  shoot(QStringLiteral("sharing"));
  showBook("phone");
  phones.open(athleteWith([](const season::DueRow& row) { return row.lane == season::Lane::nothingDue; }));
  shoot(QStringLiteral("phone-none"));
  phones.invite();
  if (!until([&phones] { return !phones.matrix().isEmpty(); }, "a join code")) return;
  shoot(QStringLiteral("phone-code"));

  m_pocket->choices().setMotionReduced(true);
  m_pocket->view().resize(m_size);
  m_pocket->view().show();
  if (!until([this] { return m_pocket->shell().isOpen(); }, "the empty Book of the phone")) return;
  shootPhone(QStringLiteral("phone-doors"));
  QMetaObject::invokeMethod(m_pocket->view().rootObject(), "go", Q_ARG(QString, QStringLiteral("phone-join")), Q_ARG(QString, QString()),
                            Q_ARG(bool, false));
  phone.join(QStringLiteral("AAAA"));
  shootPhone(QStringLiteral("phone-join"));
  phone.join(phones.code());
  shootPhone(QStringLiteral("phone-new"));
  phone.say()->beginOwn();
  phone.say()->touchPlace(QStringLiteral("jaw-left"));
  shootPhone(QStringLiteral("phone-where"));
  phone.say()->feels(QStringLiteral("tight"));
  shootPhone(QStringLiteral("phone-said"));
  phone.say()->begin();
  phone.writeReports(between.path());
  shootPhone(QStringLiteral("phone-written"));
  showBook("sharing");
  phones.takeIn(between.filePath(QStringLiteral("snugline-reports.json")));
  until([&phones] { return !phones.isBusy(); }, "the file of a phone");
  shoot(QStringLiteral("sharing-taken"));
  phone.takeAnswers(between.filePath(QStringLiteral("snugline-reports-answer.json")));
  shootPhone(QStringLiteral("phone-answered"));
  m_pocket->view().hide();
}

}  // namespace snugline::demo
