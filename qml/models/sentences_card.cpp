// SPDX-License-Identifier: Apache-2.0
// The words on the card of one helmet. It may go out with the helmet, so nothing on it names an athlete.
#include <variant>

#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_paper.h"
#include "qml/models/sentences_photos.h"
#include "qml/models/sentences_standing.h"

namespace snugline::models {

namespace {
using Kind = ports::PaperPart::Kind;

void addPart(ports::Paper& paper, Kind kind, const QString& words, const QString& margin = {}, const std::string& picture = {}) {
  paper.parts.push_back({kind, words.toStdString(), margin.toStdString(), picture});
}

// About the helmet alone: whoever wore it, and what they said or were found to fit like, is theirs.
bool isAboutGear(const book::Fact& fact) {
  return std::holds_alternative<book::UnitReceived>(fact.body) || std::holds_alternative<book::LabelRead>(fact.body) ||
         std::holds_alternative<book::PointsSeen>(fact.body) || std::holds_alternative<book::UnitHeld>(fact.body) ||
         std::holds_alternative<book::HoldReleased>(fact.body) || std::holds_alternative<book::UnitMoved>(fact.body) ||
         std::holds_alternative<book::PartChanged>(fact.body) || std::holds_alternative<book::PhotoTaken>(fact.body);
}
}  // namespace

ports::Paper PaperWords::unitCard(const season::Views& views, const season::UnitRecord& unit, const std::vector<book::Fact>& facts,
                                  const std::map<std::string, std::string>& photos, Day today) {
  ports::Paper paper;
  paper.title = tr("Card of one helmet").toStdString();
  paper.subtitle = tr("%1. Printed on %2.", "team, date").arg(teamName(views), dayWords(today)).toStdString();
  paper.foot = tr("Snugline: card of helmet %1").arg(text(unit.serial)).toStdString();
  addPart(paper, Kind::heading, tr("%1, %2", "a serial, its model and size").arg(text(unit.serial), kindOf(views, unit)));
  addPart(paper, Kind::text, unitStatus(views, unit, today, Names::none));
  addPart(paper, Kind::text, labelWordsOf(views, unit, today));
  addPart(paper, Kind::text, tr("A record of equipment: what was seen, when and by whom. No athlete is named on it."));
  const season::UnitStanding standing = season::standingOf(views, unit, today);
  for (const gear::Point point : gear::kPoints) {
    const auto& seen = unit.points[static_cast<std::size_t>(point)];
    const gear::PointFinding found = seen ? seen->finding : gear::PointFinding{};
    // The label says more than whoever looked: certification is as its standing draws it.
    const bool isAsFound = standing.points[static_cast<std::size_t>(point)] == found.state;
    addPart(paper, Kind::row, isAsFound ? pointStateWords(found) : labelWordsOf(views, unit, today), pointName(point));
  }
  for (const season::HoldRecord& hold : unit.holds) addPart(paper, Kind::row, holdWords(hold), tr("On hold"));
  for (auto photo = unit.photos.rbegin(); photo != unit.photos.rend(); ++photo) {
    const auto bytes = photos.find(photo->photo);
    const QString words = tr("%1. Taken %2", "what a photo shows, when").arg(PhotoWords::title(*photo), timeWords(photo->stamp.at, today));
    const bool isThere = bytes != photos.end();
    addPart(paper, isThere ? Kind::picture : Kind::text,
            isThere ? words : tr("%1. Its file is missing or was altered, so it is not shown").arg(words), {},
            isThere ? bytes->second : std::string());
  }
  addPart(paper, Kind::heading, tr("What was done"));
  for (auto fact = facts.rbegin(); fact != facts.rend(); ++fact) {
    if (!isAboutGear(*fact)) continue;
    const QString who = PlainWords::person(views, fact->who);
    const QString when = QString::fromStdString(print(dayOf(fact->at))) + QLatin1Char(' ') + PlainWords::time(fact->at);
    addPart(paper, Kind::row, factWords(views, *fact), who.isEmpty() ? when : when + QStringLiteral(", ") + who);
  }
  return paper;
}

}  // namespace snugline::models
