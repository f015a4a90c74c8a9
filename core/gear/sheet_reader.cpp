// SPDX-License-Identifier: Apache-2.0
#include "core/gear/sheet_reader.h"

#include <algorithm>
#include <limits>

#include "core/gear/sheet_limits.h"
#include "core/gear/utf8.h"

namespace snugline::gear {

namespace {

using json::Node;

constexpr std::size_t kWordShown = 60;
constexpr std::size_t kFaultsMost = 200;  // ours: nobody reads on, and a hostile file cannot make the list long

tl::unexpected<Error> passOn(const Error& error) { return tl::unexpected<Error>(error); }

// Takes what can be taken and notes what is wrong with the form; what is wrong with the content the draft says by itself.
class Reader {
 public:
  explicit Reader(const Node& root) : m_root(root), m_prefix(root.path().size() - 1) {}

  ReadDraft read() {
    SheetDraft& draft = m_out.draft;
    onlyKeys(m_root, {"format", "id", "name", "sizes", "air", "jaw_pads", "crown_pads", "brow_low_um", "brow_high_um", "strap_points",
                      "certification_months", "age_limit_months", "change_allowance_pa", "leak_per_week_pa", "fitting_order", "mark_order",
                      "questions", "cautions"});
    text(m_root, "id", draft.id);
    text(m_root, "name", draft.name);
    if (m_root.at("cautions").exists()) text(m_root, "cautions", draft.cautions);
    sizes();
    air();
    pads("jaw_pads", draft.jawPads);
    pads("crown_pads", draft.crownPads);
    figure(m_root, "brow_low_um", draft.browLow);
    figure(m_root, "brow_high_um", draft.browHigh);
    figure(m_root, "strap_points", draft.strapPoints);
    figure(m_root, "certification_months", draft.certificationMonths);
    figure(m_root, "age_limit_months", draft.ageLimitMonths);
    if (!draft.air.empty() || m_root.at("change_allowance_pa").exists()) figure(m_root, "change_allowance_pa", draft.changeAllowance);
    if (!draft.air.empty() || m_root.at("leak_per_week_pa").exists()) figure(m_root, "leak_per_week_pa", draft.leakPerWeek);
    order();
    markOrder();
    questions();
    return join();
  }

 private:
  [[nodiscard]] std::string pathOf(const Node& node) const { return node.path().substr(m_prefix); }

  void note(const Error& error) {
    if (m_out.faults.size() >= kFaultsMost) return;
    const bool isMissing = error.code == ErrorCode::missingKey;
    m_out.faults.push_back({error.place.substr(m_prefix), isMissing ? SheetRule::missing : SheetRule::form, error.code, error.detail});
  }

  // Every key that is not in the list; an object at all.
  bool onlyKeys(const Node& node, std::initializer_list<std::string_view> allowed) {
    if (!node.isObject()) {
      note(node.error(ErrorCode::wrongType, "an object").value());
      return false;
    }
    for (const auto& [key, value] : node.members()) {
      const bool isKnown = std::find(allowed.begin(), allowed.end(), std::string_view(key)) != allowed.end();
      if (!isKnown) note(value.error(ErrorCode::unknownKey).value());
    }
    return true;
  }

  void text(const Node& holder, std::string_view key, std::string& into) {
    Result<std::string> read = holder.at(key).asString();
    if (read)
      into = std::move(*read);
    else
      note(read.error());
  }

  void figure(const Node& node, Figure& into) {
    constexpr auto kLeast = std::numeric_limits<std::int64_t>::min(), kMost = std::numeric_limits<std::int64_t>::max();
    if (node.isInteger()) {
      into = *node.asInteger(kLeast, kMost);
      return;
    }
    const auto range = figureRange(pathOf(node));
    if (const auto read = node.asInteger(range ? range->lowest : kLeast, range ? range->highest : kMost); !read) note(read.error());
  }
  void figure(const Node& holder, std::string_view key, Figure& into) { figure(holder.at(key), into); }

  std::vector<Node> items(const Node& list) {
    if (!list.exists())
      note(list.error(ErrorCode::missingKey).value());
    else if (!list.isArray())
      note(list.error(ErrorCode::wrongType, "a list").value());
    return list.items();
  }

  void port(const Node& node, std::optional<Port>& into) {
    const Result<std::string> word = node.asString();
    if (!word) return note(word.error());
    into = portFromCode(*word);
    if (!into)
      note(node.error(ErrorCode::unknownWord, mendedUtf8(*word).substr(0, kWordShown) + "; crown, sides, jaw-left, jaw-right").value());
  }

  void sizes() {
    for (const Node& item : items(m_root.at("sizes"))) {
      BandDraft& band = m_out.draft.sizes.emplace_back();
      if (m_out.draft.sizes.size() > limits::kSizeCount) continue;
      if (!onlyKeys(item, {"name", "low_um", "high_um"})) continue;
      text(item, "name", band.name);
      figure(item, "low_um", band.low);
      figure(item, "high_um", band.high);
    }
  }

  void air() {
    const Node list = m_root.at("air");
    if (!list.exists()) return;
    for (const Node& item : items(list)) {
      PortDraft& each = m_out.draft.air.emplace_back();
      if (m_out.draft.air.size() > kPortCount) continue;
      if (!onlyKeys(item, {"port", "start_pa", "low_pa", "high_pa"})) continue;
      port(item.at("port"), each.port);
      figure(item, "low_pa", each.low);
      figure(item, "high_pa", each.high);
      figure(item, "start_pa", each.start);
    }
  }

  void pads(std::string_view key, std::optional<PadsDraft>& into) {
    const Node node = m_root.at(key);
    if (!node.exists()) return;
    PadsDraft& pads = into.emplace();
    if (!onlyKeys(node, {"steps_um", "fitted_um"})) return;
    for (const Node& item : items(node.at("steps_um"))) figure(item, pads.steps.emplace_back());
    figure(node, "fitted_um", pads.fitted);
  }

  void order() {
    const Node list = m_root.at("fitting_order");
    if (!list.exists() && m_out.draft.air.empty()) return;
    for (const Node& item : items(list)) port(item, m_out.draft.order.emplace_back());
  }

  // A word that is no mark says nothing of the order: the draft has the usual one then.
  void markOrder() {
    const Node list = m_root.at("mark_order");
    if (!list.exists()) return;
    std::vector<std::string>& order = m_out.draft.markOrder;
    for (const Node& item : items(list)) {
      const Result<std::string> read = item.asString();
      const bool isMark = read && std::find(kMarkCodes.begin(), kMarkCodes.end(), *read) != kMarkCodes.end();
      if (isMark) {
        order.push_back(*read);
        continue;
      }
      note(read ? item.error(ErrorCode::unknownWord, mendedUtf8(*read).substr(0, kWordShown) + "; one of the nine marks").value()
                : read.error());
      return order.clear();
    }
    if (order.empty()) note(list.error(ErrorCode::outOfRange, "0 entries, 9, 9").value());
  }

  void questions() {
    const Node list = m_root.at("questions");
    if (!list.exists()) return;
    for (const Node& item : items(list)) {
      QuestionDraft& question = m_out.draft.questions.emplace_back();
      if (m_out.draft.questions.size() > limits::kQuestionCount) continue;
      if (!onlyKeys(item, {"id", "ask", "if_no"})) continue;
      text(item, "id", question.id);
      text(item, "ask", question.ask);
      text(item, "if_no", question.ifNo);
    }
  }

  // What could not be read says so once: the draft's own word on the same place, or below it, adds nothing.
  ReadDraft join() {
    const std::size_t ofForm = m_out.faults.size();
    for (SheetFault& fault : faultsOf(m_out.draft)) {
      const bool isSaid =
          std::any_of(m_out.faults.begin(), m_out.faults.begin() + static_cast<std::ptrdiff_t>(ofForm), [&](const SheetFault& said) {
            return fault.path == said.path || fault.path.starts_with(said.path + '/') || isOpenedBy(fault, said.path);
          });
      if (!isSaid) m_out.faults.push_back(std::move(fault));
    }
    return std::move(m_out);
  }
  // A list with an entry that could not be read says nothing as a whole.
  static bool isOpenedBy(const SheetFault& fault, std::string_view said) {
    const bool isOfList = fault.rule == SheetRule::orderLeavesOut || fault.rule == SheetRule::jawPair;
    return isOfList && said.starts_with(fault.path + '/');
  }

  const Node& m_root;
  std::size_t m_prefix;  // of a path: the file's name and '#'
  ReadDraft m_out;
};

}  // namespace

Result<ReadDraft> readDraft(const Node& root) {
  if (!root.isObject()) return root.error(ErrorCode::wrongType, "an object");
  // The format comes first: keys of a later one are not misspelt keys of this one.
  if (const auto format = root.integer("format", *limits::kFormat, *limits::kFormat); !format) return passOn(format.error());
  return Reader(root).read();
}

Result<ModelSheet> readSheet(const Node& root) {
  const Result<ReadDraft> read = readDraft(root);
  if (!read) return passOn(read.error());
  if (read->faults.empty()) return sheetOfDraft(read->draft);
  const SheetFault& first = read->faults.front();
  const std::string at = root.path();
  return fail(first.code, at.substr(0, at.size() - 1) + first.path, first.detail);
}

Result<ReadDraft> readDraft(std::string_view bytes, const std::string& name) {
  if (bytes.size() > kSheetLimitBytes)
    return fail(ErrorCode::tooLong, name, std::to_string(bytes.size()) + " bytes, " + std::to_string(kSheetLimitBytes));
  const Result<json::Document> document = json::Document::parse(bytes, name);
  if (!document) return passOn(document.error());
  return readDraft(document->root());
}

}  // namespace snugline::gear
