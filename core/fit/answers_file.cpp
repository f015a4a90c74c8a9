// SPDX-License-Identifier: Apache-2.0
#include "core/fit/answers_file.h"

#include <utility>

#include "core/gear/strict_json.h"

namespace snugline::fit {

namespace {

using gear::ModelSheet;
using gear::Part;
using gear::Port;
using json::Node;

constexpr double kKpaLowest = -100, kKpaHighest = 300;  // as the guide takes them
constexpr double kMmHighest = 150;

constexpr std::string_view kMarkWords = "brow, ears, nape, chin, straps, jaw, crown, sides, hold";
constexpr std::string_view kPortWords = "crown, sides, jaw-left, jaw-right";
constexpr std::string_view kPartWords = "jaw-left, jaw-right, crown-pad, straps, chin-cup";

std::string expected(std::string_view read, std::string_view allowed) { return std::string(read).append("; ").append(allowed); }

// Where a word was said: "crown", or with its side "jaw-left".
struct MarkPlace {
  Mark mark = Mark::brow;
  Side side = Side::both;
};
std::optional<MarkPlace> placeFromWords(std::string_view text) {
  if (const auto mark = markFromCode(text)) return MarkPlace{*mark, Side::both};
  const std::size_t dash = text.rfind('-');
  if (dash == std::string_view::npos) return std::nullopt;
  const auto mark = markFromCode(text.substr(0, dash));
  const auto side = sideFromCode(text.substr(dash + 1));
  if (!mark || !side || *side == Side::both || !knowsSides(*mark)) return std::nullopt;
  return MarkPlace{*mark, *side};
}

// Reads members one after another and keeps the first error, so that the walk below reads straight on.
class AnswersReader {
 public:
  explicit AnswersReader(const ModelSheet& sheet) : m_sheet(sheet) { m_out.setup.sheet = &sheet; }

  Result<WrittenCheck> read(const Node& root) {
    if (!root.isObject()) return root.error(ErrorCode::wrongType, "an object");
    allow(root, {"today", "season_end", "certified_until", "label_missing", "hair_wet", "cold", "fitted", "points", "kind", "steps",
                 "questions", "says", "unwell"});
    require(root, "today");
    if (const auto day = date(root, "today")) m_out.setup.today = *day;
    m_out.setup.seasonEnd = date(root, "season_end");
    m_out.setup.certifiedUntil = date(root, "certified_until");
    m_out.setup.isLabelMissing = flag(root, "label_missing").value_or(false);
    if (const auto kind = word(root, "kind", checkKindFromCode, "first, refit, look")) m_out.setup.kind = *kind;
    if (m_error) return tl::unexpected(*m_error);
    m_out.state = begin(m_out.setup);

    if (const auto wet = flag(root, "hair_wet")) fold(HairSeen{*wet}, root.at("hair_wet"));
    if (flag(root, "cold").value_or(false)) fold(ColdSeen{true, false}, root.at("cold"));
    readFitted(root);
    readPoints(root);
    for (const Node& step : list(root, "steps")) readStep(step);
    readQuestions(root);
    for (const Node& said : list(root, "says")) readSaid(said);
    if (flag(root, "unwell").value_or(false)) fold(Unwell{}, root.at("unwell"));
    if (m_error) return tl::unexpected(*m_error);
    return std::move(m_out);
  }

 private:
  void keep(Error error) {
    if (!m_error) m_error = std::move(error);
  }
  void refuse(const Node& node, ErrorCode why, std::string detail) { keep(node.error(why, std::move(detail)).value()); }
  template <typename T>
  std::optional<T> value(Result<T> result) {
    if (result) return std::move(*result);
    keep(std::move(result.error()));
    return std::nullopt;
  }
  void allow(const Node& node, std::initializer_list<std::string_view> keys) {
    if (auto good = node.onlyKeys(keys); !good) keep(std::move(good.error()));
  }

  void require(const Node& node, std::string_view key) {
    if (!node.at(key).exists()) value(node.string(key));  // the reader's own words for a missing key
  }
  std::optional<std::string> text(const Node& node, std::string_view key) {
    if (!node.at(key).exists()) return std::nullopt;
    return value(node.string(key));
  }
  std::optional<bool> flag(const Node& node, std::string_view key) {
    if (!node.at(key).exists()) return std::nullopt;
    return value(node.boolean(key));
  }
  std::optional<double> number(const Node& node, std::string_view key, double low, double high) {
    if (!node.at(key).exists()) return std::nullopt;
    return value(node.number(key, low, high));
  }
  std::optional<Day> date(const Node& node, std::string_view key) {
    const auto read = text(node, key);
    if (!read) return std::nullopt;
    return value(parseDay(*read, node.at(key).path()));
  }
  std::vector<Node> list(const Node& node, std::string_view key) {
    if (!node.at(key).exists()) return {};
    const auto found = value(node.array(key));
    return found ? found->items() : std::vector<Node>{};
  }
  template <typename FromCode>
  auto word(const Node& node, std::string_view key, FromCode fromCode, std::string_view allowed) -> decltype(fromCode(std::string_view{})) {
    const auto read = text(node, key);
    if (!read) return std::nullopt;
    auto found = fromCode(*read);
    if (!found) refuse(node.at(key), ErrorCode::unknownWord, expected(*read, allowed));
    return found;
  }

  // Air is gauge pressure throughout; an absolute unit would be read as far too much.
  std::optional<Pressure> gauge(const std::string& read, const Node& node) {
    const bool isAbsolute = read.size() >= 4 && (read.ends_with("psia") || read.ends_with("PSIA"));
    if (isAbsolute) {
      refuse(node, ErrorCode::notAQuantity, expected(read, "a gauge pressure such as 20kPa"));
      return std::nullopt;
    }
    return value(parsePressure(read, node.path()));
  }

  // The guide's refusal, at the place in the file.
  void fold(Answer answer, const Node& at) {
    if (m_error) return;
    auto next = take(m_out.setup, m_out.state, answer);
    if (!next) {
      Error error = std::move(next.error());
      Node where = at;
      if (error.code == ErrorCode::unknownPort) {
        for (const std::string_view key : {"port", "part", "read"})
          if (at.isObject() && at.at(key).exists()) where = at.at(key);
        error.detail = expected(error.place, "a port or part of the sheet " + m_sheet.id);
      } else {
        error.detail = expected(error.place, error.detail);
      }
      error.place = where.path();
      keep(std::move(error));
      return;
    }
    m_out.state = std::move(*next);
    m_out.answers.push_back(std::move(answer));
  }

  void readFitted(const Node& root) {
    if (!root.at("fitted").exists()) return;
    const auto object = value(root.object("fitted"));
    if (!object) return;
    Fitted fitted;
    for (const auto& [key, node] : object->members()) {
      const auto port = gear::portFromCode(key);
      const auto part = gear::partFromCode(key);
      const auto amount = value(node.asString());
      if (!amount) return;
      if (port && m_sheet.hasPort(*port)) {
        fitted.air[static_cast<std::size_t>(*port)] = gauge(*amount, node);
      } else if (part && m_sheet.padsAt(*part) != nullptr) {
        fitted.pad[static_cast<std::size_t>(*part)] = value(parseLength(*amount, node.path()));
      } else if (port || part) {
        return refuse(node, ErrorCode::unknownPort, expected(key, "a port or pad of the sheet " + m_sheet.id));
      } else {
        return refuse(node, ErrorCode::unknownKey, expected(key, "crown, sides, jaw-left, jaw-right, crown-pad"));
      }
    }
    fold(fitted, *object);
  }

  void readPoints(const Node& root) {
    if (!root.at("points").exists()) return;
    const auto object = value(root.object("points"));
    if (!object) return;
    for (const auto& [key, node] : object->members()) {
      const auto point = gear::pointFromCode(key);
      if (!point)
        return refuse(node, ErrorCode::unknownKey,
                      expected(key, "certification, warning-label, shell, hardware, faceguard, liner, chin-strap"));
      PointSeen seen;
      seen.point = *point;
      std::optional<std::string> state;
      if (node.isObject()) {
        allow(node, {"state", "what"});
        state = value(node.string("state"));
        seen.what = text(node, "what").value_or(std::string());
      } else if (node.isString()) {
        state = value(node.asString());
      } else {
        return refuse(node, ErrorCode::wrongType, "a word or an object with state");
      }
      if (!state) return;
      if (*state == "unseen") continue;
      if (*state != "ok" && *state != "fault") return refuse(node, ErrorCode::unknownWord, expected(*state, "ok, fault, unseen"));
      seen.state = *state == "ok" ? gear::PointState::sound : gear::PointState::fault;
      fold(std::move(seen), node);
    }
  }

  void readStep(const Node& step) {
    if (m_error) return;
    if (!step.isObject()) return refuse(step, ErrorCode::wrongType, "an object with mark, did or read");
    const int kinds = int{step.at("mark").exists()} + int{step.at("did").exists()} + int{step.at("read").exists()};
    if (kinds != 1) return refuse(step, kinds == 0 ? ErrorCode::missingKey : ErrorCode::inconsistent, "one of mark, did, read");
    if (step.at("mark").exists()) return readMark(step);
    if (step.at("did").exists()) return readChange(step);
    readGauging(step);
  }

  void readMark(const Node& step) {
    allow(step, {"mark", "found", "side", "how", "mm"});
    MarkSeen seen;
    const auto mark = word(step, "mark", markFromCode, kMarkWords);
    const auto found = word(
        step, "found",
        [](std::string_view w) {
          const auto f = findingFromCode(w);
          return f == Finding::unseen ? std::optional<Finding>() : f;
        },
        "snug, over, under, fault");
    if (const auto mm = number(step, "mm", 0, kMmHighest)) seen.gap = Length::millimetres(*mm);
    if (!seen.gap) require(step, "found");
    if (m_error) return;
    seen.mark = *mark;
    seen.finding = found.value_or(Finding::snug);
    seen.side = word(step, "side", sideFromCode, "left, right").value_or(Side::both);
    seen.how = word(step, "how", holdHowFromCode, "twist, rock, drop").value_or(HoldHow::unsaid);
    fold(seen, step);
  }

  void readChange(const Node& step) {
    if (step.at("did").isString() && step.at("did").asString() == std::string("warm")) {
      allow(step, {"did"});
      return fold(ColdSeen{false, true}, step);
    }
    allow(step, {"did", "port", "part", "pumps", "kpa", "to"});
    Adjusted change;
    const auto deed = word(step, "did", deedFromCode, "add, release, swap, reroute, relength, warm");
    change.port = word(step, "port", gear::portFromCode, kPortWords);
    change.part = word(step, "part", gear::partFromCode, kPartWords);
    if (step.at("pumps").exists()) change.pumps = static_cast<int>(value(step.integer("pumps", kPumpsLow, kPumpsMost)).value_or(0));
    if (const auto kpa = number(step, "kpa", kKpaLowest, kKpaHighest)) change.air = Pressure::kilopascals(*kpa);
    if (const auto to = text(step, "to")) {
      // At a port it is the gauge's reading, at a part the pad's thickness.
      if (change.port && change.air) return refuse(step, ErrorCode::inconsistent, "one of kpa, to");
      if (change.port)
        change.air = gauge(*to, step.at("to"));
      else
        change.to = value(parseLength(*to, step.at("to").path()));
    }
    if (m_error) return;
    if (change.port && change.part) return refuse(step, ErrorCode::inconsistent, "one of port, part");
    change.deed = *deed;
    fold(change, step);
  }

  void readGauging(const Node& step) {
    allow(step, {"read", "kpa", "on_head"});
    AirRead read;
    const auto port = word(step, "read", gear::portFromCode, kPortWords);
    const auto kpa = value(step.number("kpa", kKpaLowest, kKpaHighest));
    read.isOnHead = flag(step, "on_head").value_or(true);
    if (m_error) return;
    read.port = *port;
    read.gauge = Pressure::kilopascals(*kpa);
    fold(read, step);
  }

  void readQuestions(const Node& root) {
    if (!root.at("questions").exists()) return;
    const auto object = value(root.object("questions"));
    if (!object) return;
    for (const auto& [key, node] : object->members()) {
      const auto isYes = value(object->boolean(key));
      if (!isYes) return;
      fold(QuestionAnswered{key, *isYes}, node);
    }
  }

  void readSaid(const Node& node) {
    if (m_error) return;
    if (!node.isObject()) return refuse(node, ErrorCode::wrongType, "an object with where and feels");
    allow(node, {"where", "side", "feels"});
    AthleteSaid said;
    if (const auto where = word(node, "where", placeFromWords, expected(kMarkWords, "jaw, sides and ears also with -left or -right"))) {
      said.where = where->mark;
      said.side = where->side;
    }
    if (const auto side = word(node, "side", sideFromCode, "left, right")) said.side = *side;
    require(node, "feels");
    const auto feels = word(node, "feels", feelsFromCode, "tight, loose, broke");
    if (m_error) return;
    said.feels = *feels;
    fold(said, node);
  }

  const ModelSheet& m_sheet;
  WrittenCheck m_out;
  std::optional<Error> m_error;
};

Result<WrittenCheck> readDocument(const Result<json::Document>& document, const ModelSheet& sheet) {
  if (!document) return tl::unexpected(document.error());
  return AnswersReader(sheet).read(document->root());
}

}  // namespace

Result<WrittenCheck> parseAnswers(std::string_view text, const std::string& name, const ModelSheet& sheet) {
  return readDocument(json::Document::parse(text, name), sheet);
}

Result<WrittenCheck> readAnswersFile(const std::string& path, const ModelSheet& sheet) {
  return readDocument(json::Document::readFile(path, kAnswersLimitBytes), sheet);
}

}  // namespace snugline::fit
