// SPDX-License-Identifier: Apache-2.0
// Purpose: an ended check as the Verdict screen shows it: the word, its reasons, what happens next and when, who signed.
// Thread: GUI thread (words are translated).
#pragma once

#include <QVariantMap>

#include "sentences.h"

namespace snugline::models {

// {verdict, word, tone, reasons: [text], unseen, next, signed, strip, caution, kind, offersHelmet}
[[nodiscard]] QVariantMap verdictMap(const season::EndedCheck& ended, const season::UnitRecord* unit, const gear::ModelSheet* sheet,
                                     const Speech& speech);

}  // namespace snugline::models
