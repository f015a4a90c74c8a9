// SPDX-License-Identifier: Apache-2.0
// Purpose: makes one GuidePage; for guide_page.cpp, guide_page_steps.cpp and guide_page_air.cpp only. Lives for one call. Thread: GUI
// thread.
#pragma once

#include <vector>

#include <QCoreApplication>

#include "guide_page.h"

namespace snugline::models {

struct GuidePageWords {
  Q_DECLARE_TR_FUNCTIONS(GuidePageWords)
};

[[nodiscard]] inline QVariantMap guideAnswer(const QString& name, const QString& text, const QString& kind = QStringLiteral("plain"),
                                             const QString& detail = {}) {
  return {
      {QStringLiteral("name"), name}, {QStringLiteral("text"), text}, {QStringLiteral("kind"), kind}, {QStringLiteral("detail"), detail}};
}

class GuidePageMaker {
 public:
  GuidePageMaker(const season::CheckRecord& check, const fit::Setup& setup, const Touches& touches, const Speech& speech)
      : m_check(check), m_setup(setup), m_touches(touches), m_speech(speech), m_assessment(fit::assess(setup, check.state)) {}
  GuidePage make();

 private:
  [[nodiscard]] const fit::MarkState& stateOf(fit::Mark mark) const { return m_check.state.marks[static_cast<std::size_t>(mark)]; }
  [[nodiscard]] bool isLook() const { return m_check.kind == fit::CheckKind::look; }
  [[nodiscard]] bool isFresh(fit::LookView view) const;
  [[nodiscard]] std::vector<fit::Advice> waysFor(fit::Mark mark) const;
  [[nodiscard]] std::optional<fit::Mark> firstOff() const;
  void choose();
  void adviceOrMark(fit::Mark mark);
  void step(const fit::Step& step);
  void drawFindings();
  void ladder();
  void stop();
  void hair();
  void fitted();
  [[nodiscard]] bool isFittingAsked() const;
  [[nodiscard]] std::optional<gear::Port> nextPort() const;
  void fittedAir(gear::Port port, int place);
  void fittedPad(gear::Part part);
  void reading(gear::Port port);
  void pad(gear::Part part);
  void gaugePort();
  void gauge(gear::Port port);
  void entry(gear::Port port);
  [[nodiscard]] QString pumpsKnown(const fit::Advice& one) const;
  void drawPort(gear::Port port);
  void view(fit::LookView view);
  void mark(fit::Mark mark);
  void browAnswers();
  [[nodiscard]] QString likelyFor(fit::Mark mark) const;
  void side(fit::Mark mark);
  void how();
  void broken(fit::Mark mark);
  void advice();
  void pointFaultAdvice();
  void points();
  void point(gear::Point point);
  void pointFault(gear::Point point);
  void question(const std::string& id);

  const season::CheckRecord& m_check;
  const fit::Setup& m_setup;
  const Touches& m_touches;
  const Speech& m_speech;
  fit::Assessment m_assessment;
  GuidePage m_page;
};

}  // namespace snugline::models
