// SPDX-License-Identifier: Apache-2.0
#include "core/gear/sheet_draft.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "core/gear/sheet_limits.h"
#include "core/gear/strict_json.h"

namespace snugline::gear {

namespace {

// "/sizes/12/low_um" taken apart: "sizes", 12, "low_um".
struct Place {
  std::string_view list, key;
  std::optional<std::size_t> at;
};
std::optional<Place> placeOf(std::string_view path) {
  if (!path.starts_with('/')) return std::nullopt;
  path.remove_prefix(1);
  Place place;
  const std::size_t end = path.find('/');
  place.list = path.substr(0, end);
  if (end == std::string_view::npos) return place;
  path.remove_prefix(end + 1);
  const std::size_t next = path.find('/');
  std::string_view number = path.substr(0, next);
  place.key = next == std::string_view::npos ? std::string_view() : path.substr(next + 1);
  std::size_t at = 0;
  if (const auto [stop, error] = std::from_chars(number.data(), number.data() + number.size(), at);
      error == std::errc{} && stop == number.data() + number.size()) {
    place.at = at;
    return place;
  }
  // "/jaw_pads/steps_um/0" and "/jaw_pads/fitted_um": the key comes first.
  std::swap(place.key, number);
  if (number.empty()) return place;
  if (const auto [stop, error] = std::from_chars(number.data(), number.data() + number.size(), at);
      error != std::errc{} || stop != number.data() + number.size())
    return std::nullopt;
  place.at = at;
  return place;
}

template <typename T>
T* entry(std::vector<T>& list, const Place& place) {
  return place.at && *place.at < list.size() ? &list[*place.at] : nullptr;
}

template <typename T>
Figure optionalFigure(bool isThere, T value) {
  return isThere ? Figure(value) : std::nullopt;
}

PadsDraft padsDraft(const PadSet& pads) {
  PadsDraft draft;
  for (const Length& step : pads.steps) draft.steps.emplace_back(step.um);
  if (pads.fitted < pads.steps.size()) draft.fitted = pads.steps[pads.fitted].um;
  return draft;
}

PadSet padSet(const PadsDraft& draft) {
  PadSet pads;
  for (const Figure& step : draft.steps) pads.steps.push_back(Length{step.value_or(0)});
  pads.fitted = static_cast<std::size_t>(std::find(draft.steps.begin(), draft.steps.end(), draft.fitted) - draft.steps.begin());
  return pads;
}

void write(json::Writer& out, std::string_view key, const Figure& figure) {
  if (figure) out.key(key).integer(*figure);
}
void write(json::Writer& out, const PadsDraft& pads) {
  out.beginObject().key("steps_um").beginArray();
  for (const Figure& step : pads.steps) {
    if (step)
      out.integer(*step);
    else
      out.null();
  }
  out.endArray();
  write(out, "fitted_um", pads.fitted);
  out.endObject();
}

// One line for each key, so that two versions of a sheet can be told apart by eye and by any tool for text.
class Lines {
 public:
  template <typename Give>
  void add(std::string_view key, const Give& give) {
    json::Writer out;
    give(out);
    begin(key);
    m_text += out.take();
  }
  void add(std::string_view key, const Figure& figure) {
    if (figure) add(key, [&](json::Writer& out) { out.integer(*figure); });
  }
  template <typename Entry, typename Give>
  void list(std::string_view key, const std::vector<Entry>& entries, const Give& give) {
    begin(key);
    m_text += '[';
    for (std::size_t i = 0; i < entries.size(); ++i) {
      json::Writer out;
      give(out, entries[i]);
      m_text += (i == 0 ? "\n    " : ",\n    ") + out.take();
    }
    m_text += entries.empty() ? "]" : "\n  ]";
  }
  [[nodiscard]] std::string take() { return m_text + "\n}\n"; }

 private:
  void begin(std::string_view key) { m_text += std::string(m_text.size() > 1 ? ",\n  \"" : "\n  \"") + std::string(key) + "\": "; }
  std::string m_text = "{";
};

std::vector<std::optional<Port>>::iterator inOrder(SheetDraft& draft, Port port) {
  return std::find(draft.order.begin(), draft.order.end(), std::optional<Port>(port));
}

void addOne(SheetDraft& draft, Port port) {
  if (!draft.hasPort(port)) draft.air.push_back({port, {}, {}, {}});
  if (inOrder(draft, port) == draft.order.end()) draft.order.emplace_back(port);
}

void removeOne(SheetDraft& draft, Port port) {
  std::erase_if(draft.air, [&](const PortDraft& air) { return air.port == port; });
  std::erase(draft.order, std::optional<Port>(port));
}

bool isJaw(Port port) { return port == Port::jawLeft || port == Port::jawRight; }

}  // namespace

bool SheetDraft::hasPort(Port p) const {
  return std::any_of(air.begin(), air.end(), [p](const PortDraft& each) { return each.port == p; });
}

SheetDraft draftOf(const ModelSheet& sheet) {
  SheetDraft draft;
  draft.id = sheet.id;
  draft.name = sheet.name;
  for (const SizeBand& band : sheet.sizes) draft.sizes.push_back({band.name, band.low.um, band.high.um});
  for (const AirPort& air : sheet.air) draft.air.push_back({air.port, air.start.pa, air.low.pa, air.high.pa});
  if (sheet.jawPads) draft.jawPads = padsDraft(*sheet.jawPads);
  if (sheet.crownPads) draft.crownPads = padsDraft(*sheet.crownPads);
  draft.browLow = sheet.browLow.um;
  draft.browHigh = sheet.browHigh.um;
  draft.strapPoints = sheet.strapPoints;
  draft.certificationMonths = sheet.certificationMonths;
  draft.ageLimitMonths = sheet.ageLimitMonths;
  draft.changeAllowance = optionalFigure(!sheet.air.empty(), sheet.changeAllowance.pa);
  draft.leakPerWeek = optionalFigure(!sheet.air.empty(), sheet.leakPerWeek.pa);
  for (const Port port : sheet.fittingOrder) draft.order.emplace_back(port);
  if (sheet.markOrder != kUsualMarkOrder)
    for (const std::uint8_t place : sheet.markOrder) draft.markOrder.emplace_back(kMarkCodes[place]);
  for (const Question& question : sheet.questions) draft.questions.push_back({question.id, question.ask, question.ifNo});
  draft.cautions = sheet.cautions;
  return draft;
}

ModelSheet sheetOfDraft(const SheetDraft& draft) {
  ModelSheet sheet;
  sheet.id = draft.id;
  sheet.name = draft.name;
  for (const BandDraft& band : draft.sizes) sheet.sizes.push_back({band.name, Length{band.low.value_or(0)}, Length{band.high.value_or(0)}});
  for (const PortDraft& air : draft.air)
    sheet.air.push_back(
        {air.port.value_or(Port::crown), Pressure{air.start.value_or(0)}, Pressure{air.low.value_or(0)}, Pressure{air.high.value_or(0)}});
  if (draft.jawPads) sheet.jawPads = padSet(*draft.jawPads);
  if (draft.crownPads) sheet.crownPads = padSet(*draft.crownPads);
  sheet.browLow = Length{draft.browLow.value_or(0)};
  sheet.browHigh = Length{draft.browHigh.value_or(0)};
  sheet.strapPoints = static_cast<int>(draft.strapPoints.value_or(0));
  sheet.certificationMonths = static_cast<int>(draft.certificationMonths.value_or(0));
  sheet.ageLimitMonths = static_cast<int>(draft.ageLimitMonths.value_or(0));
  sheet.changeAllowance = Pressure{draft.changeAllowance.value_or(0)};
  sheet.leakPerWeek = Pressure{draft.leakPerWeek.value_or(0)};
  for (const auto& port : draft.order) sheet.fittingOrder.push_back(port.value_or(Port::crown));
  for (std::size_t i = 0; i < draft.markOrder.size() && i < sheet.markOrder.size(); ++i) {
    const auto* const found = std::find(kMarkCodes.begin(), kMarkCodes.end(), draft.markOrder[i]);
    if (found != kMarkCodes.end()) sheet.markOrder[i] = static_cast<std::uint8_t>(found - kMarkCodes.begin());
  }
  for (const QuestionDraft& question : draft.questions) sheet.questions.push_back({question.id, question.ask, question.ifNo});
  sheet.cautions = draft.cautions;
  return sheet;
}

std::string bytesOf(const SheetDraft& draft) {
  Lines lines;
  lines.add("format", limits::kFormat);
  lines.add("id", [&](json::Writer& out) { out.string(draft.id); });
  lines.add("name", [&](json::Writer& out) { out.string(draft.name); });
  lines.list("sizes", draft.sizes, [](json::Writer& out, const BandDraft& band) {
    out.beginObject().key("name").string(band.name);
    write(out, "low_um", band.low);
    write(out, "high_um", band.high);
    out.endObject();
  });
  lines.list("air", draft.air, [](json::Writer& out, const PortDraft& air) {
    out.beginObject();
    if (air.port) out.key("port").string(code(*air.port));
    write(out, "start_pa", air.start);
    write(out, "low_pa", air.low);
    write(out, "high_pa", air.high);
    out.endObject();
  });
  if (draft.jawPads) lines.add("jaw_pads", [&](json::Writer& out) { write(out, *draft.jawPads); });
  if (draft.crownPads) lines.add("crown_pads", [&](json::Writer& out) { write(out, *draft.crownPads); });
  lines.add("brow_low_um", draft.browLow);
  lines.add("brow_high_um", draft.browHigh);
  lines.add("strap_points", draft.strapPoints);
  lines.add("certification_months", draft.certificationMonths);
  lines.add("age_limit_months", draft.ageLimitMonths);
  lines.add("change_allowance_pa", draft.changeAllowance);
  lines.add("leak_per_week_pa", draft.leakPerWeek);
  if (!draft.order.empty()) {
    lines.add("fitting_order", [&](json::Writer& out) {
      out.beginArray();
      for (const auto& port : draft.order) out.string(port ? code(*port) : std::string_view());
      out.endArray();
    });
  }
  if (!draft.markOrder.empty()) {
    lines.add("mark_order", [&](json::Writer& out) {
      out.beginArray();
      for (const std::string& mark : draft.markOrder) out.string(mark);
      out.endArray();
    });
  }
  if (!draft.questions.empty()) {
    lines.list("questions", draft.questions, [](json::Writer& out, const QuestionDraft& question) {
      out.beginObject().key("id").string(question.id).key("ask").string(question.ask).key("if_no").string(question.ifNo).endObject();
    });
  }
  if (!draft.cautions.empty()) lines.add("cautions", [&](json::Writer& out) { out.string(draft.cautions); });
  return lines.take();
}

Result<ModelSheet> sheetFrom(const SheetDraft& draft) {
  if (const auto faults = faultsOf(draft); !faults.empty())
    return fail(faults.front().code, "#" + faults.front().path, faults.front().detail);
  return parseSheet(bytesOf(draft), draft.id);
}

std::optional<FigureRange> figureRange(std::string_view path) {
  const auto place = placeOf(path);
  if (!place) return std::nullopt;
  const std::string_view key = place->key.empty() ? place->list : place->key;
  for (const limits::Range& range : limits::kRanges)
    if (range.key == key) return FigureRange{range.unit, range.lowest, range.highest};
  return std::nullopt;
}

Figure* figureAt(SheetDraft& draft, std::string_view path) {
  const auto place = placeOf(path);
  if (!place) return nullptr;
  const std::string_view key = place->key;
  if (place->list == "sizes") {
    BandDraft* band = entry(draft.sizes, *place);
    return band == nullptr ? nullptr : key == "low_um" ? &band->low : key == "high_um" ? &band->high : nullptr;
  }
  if (place->list == "air") {
    PortDraft* air = entry(draft.air, *place);
    return air == nullptr      ? nullptr
           : key == "start_pa" ? &air->start
           : key == "low_pa"   ? &air->low
           : key == "high_pa"  ? &air->high
                               : nullptr;
  }
  if (place->list == "jaw_pads" || place->list == "crown_pads") {
    auto& pads = place->list == "jaw_pads" ? draft.jawPads : draft.crownPads;
    if (!pads) return nullptr;
    return key == "fitted_um" ? &pads->fitted : key == "steps_um" ? entry(pads->steps, *place) : nullptr;
  }
  if (!key.empty() || place->at) return nullptr;
  const std::array<std::pair<std::string_view, Figure*>, 7> plain{{{"brow_low_um", &draft.browLow},
                                                                   {"brow_high_um", &draft.browHigh},
                                                                   {"strap_points", &draft.strapPoints},
                                                                   {"certification_months", &draft.certificationMonths},
                                                                   {"age_limit_months", &draft.ageLimitMonths},
                                                                   {"change_allowance_pa", &draft.changeAllowance},
                                                                   {"leak_per_week_pa", &draft.leakPerWeek}}};
  const auto found = std::find_if(plain.begin(), plain.end(), [&](const auto& each) { return each.first == place->list; });
  return found == plain.end() ? nullptr : found->second;
}

std::string* textAt(SheetDraft& draft, std::string_view path) {
  const auto place = placeOf(path);
  if (!place) return nullptr;
  if (place->list == "sizes" && place->key == "name") {
    BandDraft* band = entry(draft.sizes, *place);
    return band == nullptr ? nullptr : &band->name;
  }
  if (place->list == "questions") {
    QuestionDraft* question = entry(draft.questions, *place);
    if (question == nullptr) return nullptr;
    return place->key == "id" ? &question->id : place->key == "ask" ? &question->ask : place->key == "if_no" ? &question->ifNo : nullptr;
  }
  if (!place->key.empty() || place->at) return nullptr;
  return place->list == "id" ? &draft.id : place->list == "name" ? &draft.name : place->list == "cautions" ? &draft.cautions : nullptr;
}

void addPort(SheetDraft& draft, Port port) {
  if (!isJaw(port)) return addOne(draft, port);
  addOne(draft, Port::jawLeft);
  addOne(draft, Port::jawRight);
}

void removePort(SheetDraft& draft, Port port) {
  for (const Port each : {Port::crown, Port::sides, Port::jawLeft, Port::jawRight})
    if (each == port || (isJaw(each) && isJaw(port))) removeOne(draft, each);
  if (!draft.air.empty()) return;
  draft.changeAllowance.reset();
  draft.leakPerWeek.reset();
  draft.order.clear();
}

void setStep(PadsDraft& pads, std::size_t step, Figure thickness) {
  if (step >= pads.steps.size()) return;
  // Also where the field was emptied on the way to the new thickness.
  const bool isOrphan = std::find(pads.steps.begin(), pads.steps.end(), pads.fitted) == pads.steps.end();
  const bool wasFitted = pads.fitted && (pads.steps[step] == pads.fitted || (isOrphan && !pads.steps[step]));
  if (wasFitted && thickness) pads.fitted = thickness;
  pads.steps[step] = thickness;
}

}  // namespace snugline::gear
