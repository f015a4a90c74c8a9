// SPDX-License-Identifier: Apache-2.0
// Purpose: what the arithmetic sheets are made of (WhyLines.qml): a line, a part, and figures as they stand in a formula.
// Thread: GUI thread (translation is looked up there).
#pragma once

#include <QCoreApplication>
#include <QVariantMap>

#include "core/quantity/quantity.h"
#include "sentences.h"

namespace snugline::models::why {

struct WhyWords {
  Q_DECLARE_TR_FUNCTIONS(AirWhy)
};

inline QVariantMap line(const QString& name, const QString& value, const QString& how = {}) {
  return {{QStringLiteral("name"), name}, {QStringLiteral("value"), value}, {QStringLiteral("how"), how}};
}
inline QVariantMap part(const QString& title, const QVariantList& lines, const QString& tone = {}) {
  return {{QStringLiteral("title"), title}, {QStringLiteral("lines"), lines}, {QStringLiteral("tone"), tone}};
}
template <typename Quantity>
QString plain(Quantity v, UnitSystem units) {
  return PlainWords::text(print(v, units)).replace(QLatin1Char('-'), QStringLiteral("\u2212"));
}
// Kelvin for kPa people, Rankine for psi people: the scale that begins where there is no warmth, in which the ratio is taken.
inline QString fromZero(Temperature v, UnitSystem units) {
  constexpr double kMillikelvin = 1000.0, kRankinePerKelvin = 1.8;
  const double kelvin = static_cast<double>(v.mk) / kMillikelvin;
  return units == UnitSystem::metric ? WhyWords::tr("%1 K").arg(kelvin, 0, 'f', 1)
                                     : WhyWords::tr("%1 °R").arg(kelvin * kRankinePerKelvin, 0, 'f', 1);
}

}  // namespace snugline::models::why
