// SPDX-License-Identifier: Apache-2.0
#include "rights_model.h"

#include <QStringList>

#include "sentences.h"
#include "sentences_gear.h"

namespace snugline::models {

RightsModel::RightsModel(Desk* desk, QObject* parent) : QObject(parent), m_desk(desk) {
  connect(desk, &Desk::opened, this, &RightsModel::changed);
  connect(desk, &Desk::changed, this, &RightsModel::changed);
  connect(desk, &Desk::personChanged, this, &RightsModel::changed);
}

QString RightsModel::whoMay(const season::Views& views, book::Right right) {
  QStringList names;
  for (const auto& [id, person] : views.people) {
    if (book::may(views, id, right)) names << PlainWords::text(person.initials);
  }
  const QString who = names.join(QStringLiteral(", "));
  switch (right) {
    case book::Right::anybody:
      return {};
    case book::Right::staff:
      return tr("Staff do this: %1", "initials").arg(who);
    case book::Right::admin:
      return tr("An admin does this: %1", "initials").arg(who);
    case book::Right::practitioner:
      return names.isEmpty()
                 ? tr("An athletic trainer or designated health care professional does this. An admin marks who is one, under People")
                 : tr("An athletic trainer or designated health care professional does this: %1", "initials").arg(who);
  }
  return {};
}

}  // namespace snugline::models
