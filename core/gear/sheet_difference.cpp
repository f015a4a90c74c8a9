// SPDX-License-Identifier: Apache-2.0
#include "core/gear/sheet_difference.h"

#include <algorithm>

namespace snugline::gear {

namespace {

class Comparing {
 public:
  Comparing(const ModelSheet& before, const ModelSheet& after) : m_before(before), m_after(after) {}

  std::vector<SheetDifference> all() {
    words(SheetField::id, {}, m_before.id, m_after.id);
    words(SheetField::name, {}, m_before.name, m_after.name);
    sizes();
    air();
    pads("jaw", m_before.jawPads, m_after.jawPads);
    pads("crown", m_before.crownPads, m_after.crownPads);
    number(SheetField::browLow, {}, m_before.browLow.um, m_after.browLow.um);
    number(SheetField::browHigh, {}, m_before.browHigh.um, m_after.browHigh.um);
    number(SheetField::strapPoints, {}, m_before.strapPoints, m_after.strapPoints);
    number(SheetField::certificationMonths, {}, m_before.certificationMonths, m_after.certificationMonths);
    number(SheetField::ageLimitMonths, {}, m_before.ageLimitMonths, m_after.ageLimitMonths);
    const auto ofAir = [](const ModelSheet& sheet, Pressure value) { return sheet.air.empty() ? Figure() : Figure(value.pa); };
    number(SheetField::changeAllowance, {}, ofAir(m_before, m_before.changeAllowance), ofAir(m_after, m_after.changeAllowance));
    number(SheetField::leakPerWeek, {}, ofAir(m_before, m_before.leakPerWeek), ofAir(m_after, m_after.leakPerWeek));
    words(SheetField::fittingOrder, {}, orderOf(m_before), orderOf(m_after));
    words(SheetField::markOrder, {}, marksOf(m_before), marksOf(m_after));
    questions();
    words(SheetField::cautions, {}, m_before.cautions, m_after.cautions);
    return std::move(m_found);
  }

 private:
  void words(SheetField field, const std::string& item, const std::string& before, const std::string& after) {
    if (before != after) m_found.push_back({field, item, before, after, {}, {}});
  }
  void number(SheetField field, const std::string& item, Figure from, Figure to) {
    if (from != to) m_found.push_back({field, item, {}, {}, from, to});
  }

  static const SizeBand* sizeIn(const ModelSheet& sheet, const std::string& name) {
    const auto found = std::find_if(sheet.sizes.begin(), sheet.sizes.end(), [&](const SizeBand& band) { return band.name == name; });
    return found == sheet.sizes.end() ? nullptr : &*found;
  }
  static const Question* questionIn(const ModelSheet& sheet, const std::string& id) {
    const auto found = std::find_if(sheet.questions.begin(), sheet.questions.end(), [&](const Question& each) { return each.id == id; });
    return found == sheet.questions.end() ? nullptr : &*found;
  }

  void sizes() {
    for (const SizeBand& band : m_before.sizes) {
      const SizeBand* now = sizeIn(m_after, band.name);
      if (now == nullptr) words(SheetField::size, band.name, band.name, {});
      number(SheetField::sizeLow, band.name, band.low.um, now == nullptr ? Figure() : Figure(now->low.um));
      number(SheetField::sizeHigh, band.name, band.high.um, now == nullptr ? Figure() : Figure(now->high.um));
    }
    std::string was, is;  // of the sizes that both have
    for (const SizeBand& band : m_before.sizes)
      if (sizeIn(m_after, band.name) != nullptr) was += (was.empty() ? "" : ", ") + band.name;
    for (const SizeBand& band : m_after.sizes) {
      if (sizeIn(m_before, band.name) != nullptr) {
        is += (is.empty() ? "" : ", ") + band.name;
        continue;
      }
      words(SheetField::size, band.name, {}, band.name);
      number(SheetField::sizeLow, band.name, {}, band.low.um);
      number(SheetField::sizeHigh, band.name, {}, band.high.um);
    }
    words(SheetField::sizeOrder, {}, was, is);
  }

  void air() {
    for (const Port port : {Port::crown, Port::sides, Port::jawLeft, Port::jawRight}) {
      const AirPort *was = m_before.airAt(port), *is = m_after.airAt(port);
      const std::string item(code(port));
      words(SheetField::port, item, was == nullptr ? std::string() : item, is == nullptr ? std::string() : item);
      const auto each = [&](SheetField field, Pressure AirPort::*end) {
        number(field, item, was == nullptr ? Figure() : Figure((was->*end).pa), is == nullptr ? Figure() : Figure((is->*end).pa));
      };
      each(SheetField::airStart, &AirPort::start);
      each(SheetField::airLow, &AirPort::low);
      each(SheetField::airHigh, &AirPort::high);
    }
  }

  static std::string stepsOf(const std::optional<PadSet>& pads) {
    std::string steps;
    if (!pads) return steps;
    for (const Length& step : pads->steps) steps += (steps.empty() ? "" : ", ") + std::to_string(step.um);
    return steps;
  }
  void pads(const std::string& item, const std::optional<PadSet>& was, const std::optional<PadSet>& is) {
    words(was && is ? SheetField::padSteps : SheetField::pads, item, stepsOf(was), stepsOf(is));
    const auto fitted = [](const std::optional<PadSet>& pads) {
      return pads && pads->fitted < pads->steps.size() ? Figure(pads->steps[pads->fitted].um) : Figure();
    };
    number(SheetField::padFitted, item, fitted(was), fitted(is));
  }

  static std::string orderOf(const ModelSheet& sheet) {
    std::string order;
    for (const Port port : sheet.fittingOrder) order += (order.empty() ? "" : ", ") + std::string(code(port));
    return order;
  }

  static std::string marksOf(const ModelSheet& sheet) {
    std::string order;
    for (const std::uint8_t place : sheet.markOrder) order += (order.empty() ? "" : ", ") + std::string(kMarkCodes[place]);
    return order;
  }

  void questions() {
    for (const Question& question : m_before.questions) {
      const Question* now = questionIn(m_after, question.id);
      words(SheetField::question, question.id, question.ask, now == nullptr ? std::string() : now->ask);
      words(SheetField::questionIfNo, question.id, question.ifNo, now == nullptr ? std::string() : now->ifNo);
    }
    for (const Question& question : m_after.questions) {
      if (questionIn(m_before, question.id) != nullptr) continue;
      words(SheetField::question, question.id, {}, question.ask);
      words(SheetField::questionIfNo, question.id, {}, question.ifNo);
    }
    std::string was, is;
    for (const Question& question : m_before.questions)
      if (questionIn(m_after, question.id) != nullptr) was += question.id + ", ";
    for (const Question& question : m_after.questions)
      if (questionIn(m_before, question.id) != nullptr) is += question.id + ", ";
    if (was == is) return;
    words(SheetField::questionOrder, {}, was.substr(0, was.size() - 2), is.substr(0, is.size() - 2));
  }

  const ModelSheet &m_before, &m_after;
  std::vector<SheetDifference> m_found;
};

}  // namespace

std::string_view code(SheetField field) {
  switch (field) {
    case SheetField::id:
      return "id";
    case SheetField::name:
      return "name";
    case SheetField::size:
      return "size";
    case SheetField::sizeLow:
      return "size-low";
    case SheetField::sizeHigh:
      return "size-high";
    case SheetField::sizeOrder:
      return "size-order";
    case SheetField::port:
      return "port";
    case SheetField::airStart:
      return "air-start";
    case SheetField::airLow:
      return "air-low";
    case SheetField::airHigh:
      return "air-high";
    case SheetField::pads:
      return "pads";
    case SheetField::padSteps:
      return "pad-steps";
    case SheetField::padFitted:
      return "pad-fitted";
    case SheetField::browLow:
      return "brow-low";
    case SheetField::browHigh:
      return "brow-high";
    case SheetField::strapPoints:
      return "strap-points";
    case SheetField::certificationMonths:
      return "certification-months";
    case SheetField::ageLimitMonths:
      return "age-limit-months";
    case SheetField::changeAllowance:
      return "change-allowance";
    case SheetField::leakPerWeek:
      return "leak-per-week";
    case SheetField::fittingOrder:
      return "fitting-order";
    case SheetField::markOrder:
      return "mark-order";
    case SheetField::question:
      return "question";
    case SheetField::questionIfNo:
      return "question-if-no";
    case SheetField::questionOrder:
      return "question-order";
    case SheetField::cautions:
      return "cautions";
  }
  return {};
}

std::optional<FigureUnit> unitOf(SheetField field) {
  switch (field) {
    case SheetField::sizeLow:
    case SheetField::sizeHigh:
    case SheetField::padFitted:
    case SheetField::browLow:
    case SheetField::browHigh:
      return FigureUnit::um;
    case SheetField::airStart:
    case SheetField::airLow:
    case SheetField::airHigh:
    case SheetField::changeAllowance:
    case SheetField::leakPerWeek:
      return FigureUnit::pa;
    case SheetField::certificationMonths:
    case SheetField::ageLimitMonths:
      return FigureUnit::months;
    case SheetField::strapPoints:
      return FigureUnit::points;
    case SheetField::id:
    case SheetField::name:
    case SheetField::size:
    case SheetField::sizeOrder:
    case SheetField::port:
    case SheetField::pads:
    case SheetField::padSteps:
    case SheetField::fittingOrder:
    case SheetField::markOrder:
    case SheetField::question:
    case SheetField::questionIfNo:
    case SheetField::questionOrder:
    case SheetField::cautions:
      return std::nullopt;
  }
  return std::nullopt;
}

std::vector<SheetDifference> differencesOf(const ModelSheet& before, const ModelSheet& after) { return Comparing(before, after).all(); }

}  // namespace snugline::gear
