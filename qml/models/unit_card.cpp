// SPDX-License-Identifier: Apache-2.0
#include "qml/models/unit_card.h"

#include <map>
#include <utility>

#include "qml/models/desk.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_paper.h"

namespace snugline::models {

UnitCard::UnitCard(Desk* desk, std::shared_ptr<ports::Outbox> outbox, QObject* parent)
    : QObject(parent), m_desk(desk), m_outbox(std::move(outbox)) {}

void UnitCard::forget() {
  m_unit.clear();
  m_place.clear();
  m_refusal.clear();
  emit changed();
}

void UnitCard::print(const QString& unit) {
  forget();
  if (!m_outbox) return;
  m_desk->history(utf8(unit), this, [this, unit](const Result<std::vector<book::Fact>>& facts) {
    const season::UnitRecord* record = m_desk->views().unit(utf8(unit));
    if (record == nullptr) return;
    m_unit = unit;
    if (!facts) {
      m_refusal = errorSentence(facts.error());
      emit changed();
      return;
    }
    std::map<std::string, std::string> photos;
    for (const season::PhotoRecord& photo : record->photos) {
      if (auto bytes = m_desk->photos().read(photo.photo)) photos.emplace(photo.photo, std::move(*bytes));
    }
    // By day and the entry that made the helmet: a serial may hold signs that no file name takes.
    const std::string name =
        "snugline-helmet-" + snugline::print(m_desk->today()) + '-' + record->id.substr(record->id.find(':') + 1) + ".pdf";
    const auto place = m_outbox->print(name, PaperWords::unitCard(m_desk->views(), *record, *facts, photos, m_desk->today()));
    m_place = place ? PaperWords::opened(*m_outbox, *place) : QString();
    m_refusal = place ? QString() : errorSentence(place.error());
    emit changed();
  });
}

}  // namespace snugline::models
