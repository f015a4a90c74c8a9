// SPDX-License-Identifier: Apache-2.0
#include "core/season/assignment.h"

// GCC 12 sees a node of LEMON's read before it is written, in sanitized builds only; LEMON fills nodes in after it has added them.
#if defined(__GNUC__) && !defined(__clang__)
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"
#endif

#include <lemon/network_simplex.h>
#include <lemon/smart_graph.h>

#include <algorithm>
#include <exception>
#include <map>
#include <new>
#include <string>
#include <utility>

namespace snugline::season {

namespace {

using Graph = lemon::SmartDigraph;
using Flow = std::int64_t;

bool isIndex(int value, std::size_t count) { return value >= 0 && static_cast<std::size_t>(value) < count; }

bool isSound(const AssignmentProblem& p) {
  const auto heads = static_cast<std::size_t>(std::max(p.heads, 0)), kinds = static_cast<std::size_t>(std::max(p.kinds, 0));
  const auto isCost = [](std::int64_t cost) { return cost >= 0 && cost <= kCostHighest; };
  return p.heads >= 0 && p.heads <= kAssignmentMost && p.helmets.size() <= static_cast<std::size_t>(kAssignmentMost) &&
         std::all_of(p.helmets.begin(), p.helmets.end(),
                     [&](const auto& h) { return (h.kind == -1 || isIndex(h.kind, kinds)) && isCost(h.standing); }) &&
         std::all_of(p.kindBids.begin(), p.kindBids.end(),
                     [&](const auto& b) { return isIndex(b.head, heads) && isIndex(b.target, kinds) && isCost(b.cost); }) &&
         std::all_of(p.helmetBids.begin(), p.helmetBids.end(),
                     [&](const auto& b) { return isIndex(b.head, heads) && isIndex(b.target, p.helmets.size()) && isCost(b.cost); });
}

// head -> kind -> standing -> (helmet ->) out; a helmet has a node of its own only where somebody bids for it alone.
class Network {
 public:
  explicit Network(const AssignmentProblem& problem) : m_problem(problem), m_out(m_graph.addNode()) {
    for (int i = 0; i < problem.heads; ++i) m_heads.push_back(m_graph.addNode());
    for (int i = 0; i < problem.kinds; ++i) m_kinds.push_back(m_graph.addNode());
    addHelmets();
    for (const AssignmentProblem::Bid& bid : problem.kindBids) addBid(bid, m_kinds[static_cast<std::size_t>(bid.target)]);
    for (const AssignmentProblem::Bid& bid : problem.helmetBids) addBid(bid, m_own[static_cast<std::size_t>(bid.target)]);
    addNoHelmet();
  }

  Result<std::vector<int>> solve() {
    Graph::ArcMap<Flow> capacity(m_graph), cost(m_graph);
    Graph::NodeMap<Flow> supply(m_graph, 0);
    for (std::size_t i = 0; i < m_capacity.size(); ++i) {
      const Graph::Arc arc = Graph::arcFromId(static_cast<int>(i));
      capacity[arc] = m_capacity[i];
      cost[arc] = m_cost[i];
    }
    for (const Graph::Node& head : m_heads) supply[head] = 1;
    supply[m_out] = -static_cast<Flow>(m_heads.size());
    lemon::NetworkSimplex<Graph, Flow, Flow> simplex(m_graph);
    if (simplex.upperMap(capacity).costMap(cost).supplyMap(supply).run() != simplex.OPTIMAL)
      return fail(ErrorCode::internal, {}, "network simplex");
    return readOff([&](int arc) { return simplex.flow(Graph::arcFromId(arc)); });
  }

 private:
  struct Shelf {  // helmets of one kind and one standing that nobody bids for alone
    int kind = 0, arc = -1;
    std::vector<int> helmets;
  };

  int addArc(Graph::Node from, Graph::Node to, Flow capacity, Flow cost) {
    m_capacity.push_back(capacity);
    m_cost.push_back(cost);
    return Graph::id(m_graph.addArc(from, to));
  }

  void addHelmets() {
    std::vector<bool> isAlone(m_problem.helmets.size(), false);
    for (const AssignmentProblem::Bid& bid : m_problem.helmetBids) isAlone[static_cast<std::size_t>(bid.target)] = true;
    m_own.resize(isAlone.size(), lemon::INVALID);
    m_byKind.resize(isAlone.size(), -1);
    std::map<std::pair<int, Flow>, std::size_t> shelves;
    for (std::size_t i = 0; i < isAlone.size(); ++i) {
      const AssignmentProblem::Helmet& helmet = m_problem.helmets[i];
      if (isAlone[i]) {
        m_own[i] = m_graph.addNode();
        addArc(m_own[i], m_out, 1, 0);
        if (helmet.kind >= 0) m_byKind[i] = addArc(m_kinds[static_cast<std::size_t>(helmet.kind)], m_own[i], 1, helmet.standing);
      } else if (helmet.kind >= 0) {
        const auto [it, isNew] = shelves.emplace(std::pair(helmet.kind, helmet.standing), m_shelves.size());
        if (isNew) m_shelves.push_back({helmet.kind, -1, {}});
        m_shelves[it->second].helmets.push_back(static_cast<int>(i));
      }
    }
    for (const auto& [key, at] : shelves)
      m_shelves[at].arc =
          addArc(m_kinds[static_cast<std::size_t>(key.first)], m_out, static_cast<Flow>(m_shelves[at].helmets.size()), key.second);
  }

  void addBid(const AssignmentProblem::Bid& bid, Graph::Node to) {
    m_bidArcs.push_back(addArc(m_heads[static_cast<std::size_t>(bid.head)], to, 1, bid.cost));
  }

  // Dearer than any rearrangement that would give one more head a helmet.
  void addNoHelmet() {
    Flow highest = 0, standing = 0;
    for (const auto& bid : m_problem.kindBids) highest = std::max(highest, bid.cost);
    for (const auto& bid : m_problem.helmetBids) highest = std::max(highest, bid.cost);
    for (const auto& helmet : m_problem.helmets) standing = std::max(standing, helmet.standing);
    const Flow none = (highest + standing + 1) * (static_cast<Flow>(m_problem.heads) + 1);
    for (const Graph::Node& head : m_heads) addArc(head, m_out, 1, none);
  }

  template <typename FlowOn>
  std::vector<int> readOff(const FlowOn& flowOn) const {
    std::vector<int> helmetOf(m_heads.size(), -1);
    std::vector<std::vector<int>> bidders(m_kinds.size()), given(m_kinds.size());
    for (std::size_t i = 0; i < m_bidArcs.size(); ++i) {
      if (flowOn(m_bidArcs[i]) == 0) continue;
      const bool isForKind = i < m_problem.kindBids.size();
      const auto& bid = isForKind ? m_problem.kindBids[i] : m_problem.helmetBids[i - m_problem.kindBids.size()];
      if (isForKind) {
        bidders[static_cast<std::size_t>(bid.target)].push_back(bid.head);
      } else {
        helmetOf[static_cast<std::size_t>(bid.head)] = bid.target;
      }
    }
    for (const Shelf& shelf : m_shelves) {
      auto& kind = given[static_cast<std::size_t>(shelf.kind)];
      kind.insert(kind.end(), shelf.helmets.begin(), shelf.helmets.begin() + flowOn(shelf.arc));
    }
    for (std::size_t i = 0; i < m_byKind.size(); ++i)
      if (m_byKind[i] >= 0 && flowOn(m_byKind[i]) != 0)
        given[static_cast<std::size_t>(m_problem.helmets[i].kind)].push_back(static_cast<int>(i));
    // Who of a kind gets which helmet does not change the sum: first head, first helmet.
    for (std::size_t kind = 0; kind < given.size(); ++kind) {
      std::sort(bidders[kind].begin(), bidders[kind].end());
      std::sort(given[kind].begin(), given[kind].end());
      for (std::size_t i = 0; i < bidders[kind].size() && i < given[kind].size(); ++i)
        helmetOf[static_cast<std::size_t>(bidders[kind][i])] = given[kind][i];
    }
    return helmetOf;
  }

  const AssignmentProblem& m_problem;
  Graph m_graph;
  Graph::Node m_out;
  std::vector<Graph::Node> m_heads, m_kinds, m_own;
  std::vector<int> m_byKind;   // arc from the kind to a helmet with a node of its own
  std::vector<int> m_bidArcs;  // kind bids, then helmet bids
  std::vector<Shelf> m_shelves;
  std::vector<Flow> m_capacity, m_cost;  // by arc id
};

}  // namespace

Result<std::vector<int>> assign(const AssignmentProblem& problem) try {
  if (!isSound(problem)) return fail(ErrorCode::outOfRange, "assignment", std::to_string(problem.heads) + " heads");
  if (problem.heads == 0) return std::vector<int>{};
  return Network(problem).solve();
} catch (const std::bad_alloc&) {
  return fail(ErrorCode::outOfMemory);
} catch (const std::exception& e) {
  return fail(ErrorCode::internal, {}, e.what());
}

}  // namespace snugline::season
