// SPDX-License-Identifier: Apache-2.0
#include "qml/models/dock_draft.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>

#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {
constexpr auto kStage = "stage";
constexpr auto kScan = "scan";
constexpr auto kUnit = "unit";
constexpr auto kSheet = "sheet";
constexpr auto kSize = "size";
constexpr auto kLabelYear = "labelYear";
constexpr auto kLabelMark = "labelIsMakersMark";
constexpr auto kLabelDate = "labelDate";
constexpr auto kLabelSource = "labelSource";
constexpr auto kLabelMissing = "labelMissing";
constexpr auto kLabelUnreadable = "labelUnreadable";
constexpr auto kReturnedBy = "returnedBy";
constexpr auto kReturnedDone = "returnedDone";
constexpr auto kReturnedPaper = "returnedPaper";
constexpr auto kReturnedCleaned = "returnedCleaned";
constexpr auto kGroup = "group";
constexpr auto kPoints = "points";
constexpr auto kState = "state";
constexpr auto kWhat = "what";
constexpr auto kDay = "day";
constexpr auto kDraftUnits = "units";
constexpr auto kLastFacts = "lastFacts";
constexpr auto kLastUnit = "lastUnit";
constexpr auto kLastWords = "lastWords";
constexpr auto kLastMs = "lastMs";
constexpr auto kAside = "aside";

QJsonArray list(const std::vector<std::string>& values) {
  QJsonArray array;
  for (const std::string& value : values) array.append(text(value));
  return array;
}

std::vector<std::string> strings(const QJsonValue& value) {
  std::vector<std::string> values;
  const QJsonArray array = value.toArray();
  for (const QJsonValue& entry : array) values.push_back(utf8(entry.toString()));
  return values;
}

std::optional<gear::Label> labelOf(const QJsonObject& object) {
  const int year = object[QLatin1String(kLabelYear)].toInt();
  if (year == 0) return std::nullopt;
  gear::Label label;
  label.year = year;
  label.kind = object[QLatin1String(kLabelMark)].toBool() ? gear::LabelKind::makersMark : gear::LabelKind::recertification;
  if (const auto day = parseDay(utf8(object[QLatin1String(kLabelDate)].toString()))) label.fullDate = *day;
  label.source = utf8(object[QLatin1String(kLabelSource)].toString());
  return label;
}

OnTable tableOf(const QJsonObject& object) {
  OnTable draft;
  const int stage = object[QLatin1String(kStage)].toInt();
  draft.stage = stage == 1 ? DockStage::what : stage == 2 ? DockStage::points : DockStage::waiting;
  draft.scan = utf8(object[QLatin1String(kScan)].toString());
  draft.arrival.unit = utf8(object[QLatin1String(kUnit)].toString());
  draft.arrival.sheet = utf8(object[QLatin1String(kSheet)].toString());
  draft.arrival.size = utf8(object[QLatin1String(kSize)].toString());
  draft.arrival.label = labelOf(object);
  draft.arrival.isLabelMissing = object[QLatin1String(kLabelMissing)].toBool();
  draft.arrival.isLabelUnreadable = object[QLatin1String(kLabelUnreadable)].toBool();
  if (const std::string by = utf8(object[QLatin1String(kReturnedBy)].toString()); !by.empty()) {
    draft.arrival.returned = season::ReturnRecord{by,
                                                  utf8(object[QLatin1String(kReturnedDone)].toString()),
                                                  utf8(object[QLatin1String(kReturnedPaper)].toString()),
                                                  object[QLatin1String(kReturnedCleaned)].toBool(),
                                                  {}};
  }
  draft.arrival.isGroup = object[QLatin1String(kGroup)].toBool();
  const QJsonArray points = object[QLatin1String(kPoints)].toArray();
  for (qsizetype i = 0; i < points.size() && i < static_cast<qsizetype>(gear::kPointCount); ++i) {
    const QJsonObject point = points[i].toObject();
    gear::PointFinding& finding = draft.arrival.points[static_cast<std::size_t>(i)];
    const int state = point[QLatin1String(kState)].toInt();
    finding.state = state == 1 ? gear::PointState::sound : state == 2 ? gear::PointState::fault : gear::PointState::unseen;
    if (finding.state == gear::PointState::fault) finding.what = utf8(point[QLatin1String(kWhat)].toString());
  }
  return draft;
}

QJsonObject objectOf(const OnTable& draft) {
  QJsonObject object{{QLatin1String(kStage), static_cast<int>(draft.stage)},
                     {QLatin1String(kScan), text(draft.scan)},
                     {QLatin1String(kUnit), text(draft.arrival.unit)},
                     {QLatin1String(kSheet), text(draft.arrival.sheet)},
                     {QLatin1String(kSize), text(draft.arrival.size)},
                     {QLatin1String(kLabelMissing), draft.arrival.isLabelMissing},
                     {QLatin1String(kLabelUnreadable), draft.arrival.isLabelUnreadable},
                     {QLatin1String(kGroup), draft.arrival.isGroup}};
  if (const auto& label = draft.arrival.label) {
    object[QLatin1String(kLabelYear)] = label->year;
    object[QLatin1String(kLabelMark)] = label->kind == gear::LabelKind::makersMark;
    object[QLatin1String(kLabelSource)] = text(label->source);
    if (label->fullDate) object[QLatin1String(kLabelDate)] = text(print(*label->fullDate));
  }
  if (const auto& returned = draft.arrival.returned) {
    object[QLatin1String(kReturnedBy)] = text(returned->by);
    object[QLatin1String(kReturnedDone)] = text(returned->done);
    object[QLatin1String(kReturnedPaper)] = text(returned->paper);
    object[QLatin1String(kReturnedCleaned)] = returned->isCleaned;
  }
  QJsonArray points;
  for (const gear::PointFinding& finding : draft.arrival.points) {
    points.append(QJsonObject{{QLatin1String(kState), static_cast<int>(finding.state)}, {QLatin1String(kWhat), text(finding.what)}});
  }
  object[QLatin1String(kPoints)] = points;
  return object;
}
}  // namespace

DockDraft readDraft(const QString& path, Day today) {
  DockDraft draft;
  QFile file(path);
  const bool isThere = !path.isEmpty() && file.open(QIODevice::ReadOnly);
  const QJsonObject object = isThere ? QJsonDocument::fromJson(file.readAll()).object() : QJsonObject();
  static_cast<OnTable&>(draft) = tableOf(object);
  draft.day = today;
  const QJsonArray aside = object[QLatin1String(kAside)].toArray();
  for (const QJsonValue& one : aside) draft.aside.push_back(tableOf(one.toObject()));
  draft.lastMs = object[QLatin1String(kLastMs)].toInteger();
  if (utf8(object[QLatin1String(kDay)].toString()) == print(today)) draft.units = strings(object[QLatin1String(kDraftUnits)]);
  std::vector<std::string> facts = strings(object[QLatin1String(kLastFacts)]);
  if (!facts.empty()) {
    draft.last =
        DockLast{std::move(facts), utf8(object[QLatin1String(kLastUnit)].toString()), object[QLatin1String(kLastWords)].toString()};
  }
  return draft;
}

bool keepDraft(const QString& path, const DockDraft& draft) {
  if (path.isEmpty()) return true;
  QJsonObject object = objectOf(draft);
  QJsonArray aside;
  for (const OnTable& one : draft.aside) aside.append(objectOf(one));
  object[QLatin1String(kAside)] = aside;
  object[QLatin1String(kDay)] = text(print(draft.day));
  object[QLatin1String(kDraftUnits)] = list(draft.units);
  object[QLatin1String(kLastMs)] = static_cast<qint64>(draft.lastMs);
  if (draft.last) {
    object[QLatin1String(kLastFacts)] = list(draft.last->facts);
    object[QLatin1String(kLastUnit)] = text(draft.last->unit);
    object[QLatin1String(kLastWords)] = draft.last->words;
  }
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly)) return false;
  const QByteArray bytes = QJsonDocument(object).toJson(QJsonDocument::Compact);
  return file.write(bytes) == bytes.size() && file.commit();
}

}  // namespace snugline::models
