// SPDX-License-Identifier: Apache-2.0
// Purpose: members of view rows about people, the warning, how long names are shown, seasons and photos, and stamps, for view_rows_*.cpp
// only. Thread: plain functions.
#pragma once

#include <optional>
#include <string_view>

#include "core/book/fact_json.h"

namespace snugline::book {

void stamp(LineWriter& out, std::string_view key, const season::Stamp& s);
void stampIf(LineWriter& out, std::string_view key, const std::optional<season::Stamp>& s);
[[nodiscard]] season::Stamp stamp(ObjectReader& in, std::string_view key);
[[nodiscard]] std::optional<season::Stamp> stampIf(ObjectReader& in, std::string_view key);

void privacyOf(LineWriter& out, const season::TeamRecord& r);
void privacyOf(LineWriter& out, const season::AthleteRecord& r);
void readPrivacy(ObjectReader& in, season::TeamRecord& r);
void readPrivacy(ObjectReader& in, season::AthleteRecord& r);
void phonesOf(LineWriter& out, const season::AthleteRecord& r);
void readPhones(ObjectReader& in, season::AthleteRecord& r);

// view_rows_season.cpp: closed seasons, helmets collected, photos.
void seasonsOf(LineWriter& out, const season::TeamRecord& r);
void readSeasons(ObjectReader& in, season::TeamRecord& r);
void turnOf(LineWriter& out, const season::UnitRecord& r);
void readTurn(ObjectReader& in, season::UnitRecord& r);

}  // namespace snugline::book
