// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "drawn_values.h"
#include "sentences.h"
#include "sentences_gear.h"

namespace snugline::models {

namespace {

struct AnswerWords {
  Q_DECLARE_TR_FUNCTIONS(AnswerWords)
};

struct Teller {
  const Speech& speech;

  QString operator()(const fit::HairSeen& hair) const { return hair.isWet ? AnswerWords::tr("Hair wet") : AnswerWords::tr("Hair dry"); }
  QString operator()(const fit::ColdSeen& cold) const {
    return cold.isCold ? AnswerWords::tr("The helmet is cold") : AnswerWords::tr("The helmet is warm");
  }
  QString operator()(const fit::Fitted& fitted) const {
    const auto isSaid = [](const auto& place) { return place.has_value(); };
    if (std::any_of(fitted.air.begin(), fitted.air.end(), isSaid)) return AnswerWords::tr("Starting air set");
    return std::any_of(fitted.pad.begin(), fitted.pad.end(), isSaid) ? AnswerWords::tr("Pads chosen") : AnswerWords::tr("Fitted as it is");
  }
  QString operator()(const fit::MarkSeen& seen) const {
    const QString found = seen.finding == fit::Finding::snug
                              ? AnswerWords::tr("%1: %2", "a mark, its answer")
                                    .arg(MarkWords::name(seen.mark), MarkWords::answer(seen.mark, seen.finding).toLower())
                              : PlainWords::sentenceCase(MarkWords::found(seen.mark, seen.finding, seen.side, seen.how));
    return seen.gap ? AnswerWords::tr("Brow gap %1").arg(PlainWords::number(*seen.gap, speech.units)) : found;
  }
  QString operator()(const fit::GroupSnug& group) const { return AnswerWords::tr("%1: all snug").arg(MarkWords::view(group.view)); }
  QString operator()(const fit::Adjusted& change) const {
    const QString place = change.port   ? MarkWords::port(*change.port)
                          : change.part ? MarkWords::part(*change.part)
                                        : MarkWords::part(gear::Part::straps);
    switch (change.deed) {
      case fit::Deed::add:
        return AnswerWords::tr("Air into the %1", "a place").arg(place);
      case fit::Deed::release:
        return AnswerWords::tr("Air out of the %1", "a place").arg(place);
      case fit::Deed::swap:
        return AnswerWords::tr("Swapped: %1").arg(place);
      case fit::Deed::reroute:
        return AnswerWords::tr("Straps rerouted");
      case fit::Deed::relength:
        return AnswerWords::tr("Straps set to length");
    }
    return {};
  }
  QString operator()(const fit::AirRead& read) const { return AnswerWords::tr("Gauge read at the %1").arg(MarkWords::port(read.port)); }
  QString operator()(const fit::PointSeen& seen) const {
    return AnswerWords::tr("%1: %2", "a point, how it was seen")
        .arg(pointName(seen.point), pointStateWords({seen.state, seen.what}).toLower());
  }
  QString operator()(const fit::PointsSound&) const { return AnswerWords::tr("All seven points sound"); }
  QString operator()(const fit::QuestionAnswered& answered) const {
    return answered.isYes ? AnswerWords::tr("Answered yes") : AnswerWords::tr("Answered no");
  }
  QString operator()(const fit::AthleteSaid& said) const {
    return said.where ? AnswerWords::tr("Athlete says: %1").arg(MarkWords::said(*said.where, said.side, said.feels))
                      : AnswerWords::tr("Athlete's word noted");
  }
  QString operator()(const fit::Unwell&) const { return AnswerWords::tr("Athletic trainer called"); }
};

}  // namespace

QString answerWords(const fit::Answer& answer, const Speech& speech) { return std::visit(Teller{speech}, answer); }

}  // namespace snugline::models
