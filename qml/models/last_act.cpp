// SPDX-License-Identifier: Apache-2.0
#include "last_act.h"

#include <algorithm>
#include <memory>

#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>

#include "core/book/undo.h"
#include "sentences_gear.h"

namespace snugline::models {

namespace {

constexpr qint64 kFileMost = 1024 * 1024;
constexpr auto kFactsKey = "facts";
constexpr auto kWordsKey = "words";
constexpr auto kAboutKey = "about";
constexpr auto kDayKey = "day";

QJsonObject pagesIn(const QString& name) {
  QFile file(name);
  if (name.isEmpty() || file.size() > kFileMost || !file.open(QIODevice::ReadOnly)) return {};
  return QJsonDocument::fromJson(file.readAll()).object();
}

}  // namespace

LastAct::LastAct(const QString& page, Desk* desk, const Choices* choices, QObject* parent)
    : QObject(parent), m_page(page), m_desk(desk), m_choices(choices) {
  connect(desk, &Desk::opened, this, &LastAct::read);
  if (desk->isOpen()) read();
}

QString LastAct::file() const {
  const QString choices = m_choices->file();
  return choices.isEmpty() ? QString() : QFileInfo(choices).absolutePath() + QStringLiteral("/last-acts.json");
}

void LastAct::did(std::vector<std::string> facts, const QString& words, const std::string& about) {
  if (facts.empty()) return;
  m_facts = std::move(facts);
  m_words = words;
  m_about = about;
  keep();
  emit changed();
}

void LastAct::didAsRecorded(std::vector<std::string> facts, const std::string& about) {
  if (facts.empty()) return;
  auto found = std::make_shared<std::vector<book::Fact>>();
  m_desk->read(
      [facts, found](book::Book& book) -> Result<bool> {
        for (const std::string& id : facts) {
          auto fact = book.fact(id);
          if (!fact) return tl::unexpected<Error>(fact.error());
          found->push_back(std::move(*fact));
        }
        return true;
      },
      this,
      [this, facts, about, found](const Result<bool>&) {
        for (const book::Fact& fact : *found) {
          if (const QString words = factWords(m_desk->views(), fact); !words.isEmpty()) return did(facts, words, about);
        }
      });
}

void LastAct::forget() {
  if (m_facts.empty()) return;
  m_facts.clear();
  m_words.clear();
  m_about.clear();
  keep();
  emit changed();
}

void LastAct::undo() {
  if (m_isBusy || m_facts.empty()) return;
  m_isBusy = true;
  emit changed();
  m_desk->correct(m_facts, this, [this, facts = m_facts](const Result<book::Appended>& outcome) {
    m_isBusy = false;
    const bool isGone = outcome || outcome.error().code == ErrorCode::notFound || outcome.error().detail == book::rule::kRestsOnIt;
    if (isGone && m_facts == facts) forget();
    emit changed();
    if (outcome) return emit undone();
    emit refused(errorSentence(outcome.error()));
  });
}

void LastAct::read() {
  const QJsonObject kept = pagesIn(file())[m_page].toObject();
  std::vector<std::string> facts;
  for (const QJsonValue& fact : kept[QLatin1String(kFactsKey)].toArray()) facts.push_back(utf8(fact.toString()));
  const std::string own = m_desk->device() + ':';
  const bool isOurs = std::all_of(facts.begin(), facts.end(), [&](const std::string& fact) { return fact.starts_with(own); });
  if (facts.empty() || !isOurs || kept[QLatin1String(kDayKey)].toString() != text(print(m_desk->today()))) return;
  m_facts = std::move(facts);
  m_words = kept[QLatin1String(kWordsKey)].toString();
  m_about = utf8(kept[QLatin1String(kAboutKey)].toString());
  emit changed();
}

// Without the file the way back ends with the app; the act itself is in the Book.
void LastAct::keep() {
  const QString name = file();
  if (name.isEmpty()) return;
  QJsonObject pages = pagesIn(name);
  if (m_facts.empty()) {
    pages.remove(m_page);
  } else {
    QJsonArray facts;
    for (const std::string& fact : m_facts) facts.append(text(fact));
    pages[m_page] = QJsonObject{{QLatin1String(kFactsKey), facts},
                                {QLatin1String(kWordsKey), m_words},
                                {QLatin1String(kAboutKey), text(m_about)},
                                {QLatin1String(kDayKey), text(print(m_desk->today()))}};
  }
  QSaveFile out(name);
  if (!out.open(QIODevice::WriteOnly)) return;
  out.write(QJsonDocument(pages).toJson(QJsonDocument::Compact));
  out.commit();
}

}  // namespace snugline::models
