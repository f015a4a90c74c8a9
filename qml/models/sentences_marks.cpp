// SPDX-License-Identifier: Apache-2.0
#include "sentences.h"

namespace snugline::models {

using fit::Feels;
using fit::Finding;
using fit::HoldHow;
using fit::LookView;
using fit::Mark;
using fit::Side;

QString MarkWords::name(Mark mark) {
  switch (mark) {
    case Mark::brow:
      return tr("Brow gap");
    case Mark::ears:
      return tr("Ear openings");
    case Mark::nape:
      return tr("Base of the skull");
    case Mark::chin:
      return tr("Chin cup");
    case Mark::straps:
      return tr("Straps");
    case Mark::jaw:
      return tr("Jaw pads");
    case Mark::crown:
      return tr("Crown");
    case Mark::sides:
      return tr("Sides and back");
    case Mark::hold:
      return tr("Hold");
  }
  return {};
}

QString MarkWords::brief(Mark mark) {
  switch (mark) {
    case Mark::brow:
      return tr("brow");
    case Mark::ears:
      return tr("ears");
    case Mark::nape:
      return tr("nape");
    case Mark::chin:
      return tr("chin");
    case Mark::straps:
      return tr("straps");
    case Mark::jaw:
      return tr("jaw");
    case Mark::crown:
      return tr("crown");
    case Mark::sides:
      return tr("sides");
    case Mark::hold:
      return tr("hold");
  }
  return {};
}

QString MarkWords::ask(Mark mark) {
  switch (mark) {
    case Mark::brow:
      return tr("Where does the front edge sit?");
    case Mark::ears:
      return tr("Where are the ear openings, on both sides?");
    case Mark::nape:
      return tr("Is the base of the skull covered?");
    case Mark::chin:
      return tr("How does the chin cup sit?");
    case Mark::straps:
      return tr("How do the straps sit, on both sides?");
    case Mark::jaw:
      return tr("How do the jaw pads meet both cheeks?");
    case Mark::crown:
      return tr("How does it meet the top of the head?");
    case Mark::sides:
      return tr("How does it meet the sides and back?");
    case Mark::hold:
      return tr("Does the helmet hold?");
  }
  return {};
}

QString MarkWords::how(Mark mark) {
  switch (mark) {
    case Mark::brow:
      return tr("Drag the front edge to where it sits. Athlete looks straight ahead, chin strap done up.");
    case Mark::ears:
      return tr("Walk round and look from both sides. The openings belong on the ear canals.");
    case Mark::nape:
      return tr("Look from behind. The shell covers the base of the skull.");
    case Mark::chin:
      return tr("The cup sits centred on the point of the jaw, even on both sides.");
    case Mark::straps:
      return tr("Both sides: every snap done up, even tension, routed under the faceguard.");
    case Mark::jaw:
      return tr("Slide a finger along each cheek. Pads touch firmly, no gap, no pain.");
    case Mark::crown:
      return tr("Press down on the shell. Even contact on top, no pressure point.");
    case Mark::sides:
      return tr("Ask for pressure points round the sides and back.");
    case Mark::hold:
      return tr(
          "Grip the shell, never the faceguard. Athlete braces: twist left and right, rock up and down. Forehead skin moves with it.");
  }
  return {};
}

QString MarkWords::answer(Mark mark, Finding finding) {
  const bool isSnug = finding == Finding::snug;
  const bool isOver = finding == Finding::over;
  switch (mark) {
    case Mark::brow:
      return isSnug ? tr("On the mark") : isOver ? tr("Sits high") : tr("Sits low");
    case Mark::ears:
      return isSnug ? tr("On the canals") : isOver ? tr("Too high") : tr("Too low");
    case Mark::nape:
      return isSnug ? tr("Covered") : isOver ? tr("Edge digs in") : tr("Left bare");
    case Mark::chin:
      return isSnug ? tr("Centred, even") : isOver ? tr("Tight") : tr("Slack");
    case Mark::straps:
      return isSnug ? tr("Even, routed") : isOver ? tr("Tight") : tr("Loose or outside");
    case Mark::jaw:
      return isSnug ? tr("Touch both sides") : isOver ? tr("Press") : tr("Leave a gap");
    case Mark::crown:
      return isSnug ? tr("Even contact") : isOver ? tr("Presses") : tr("Gap on top");
    case Mark::sides:
      return isSnug ? tr("Even contact") : isOver ? tr("Press") : tr("Gap");
    case Mark::hold:
      return isSnug ? tr("Holds") : isOver ? tr("Hurts") : tr("Slides");
  }
  return {};
}

namespace {

QString onSide(Side side) {
  switch (side) {
    case Side::both:
      return {};
    case Side::left:
      return MarkWords::tr(" on the left");
    case Side::right:
      return MarkWords::tr(" on the right");
  }
  return {};
}

QString foundFault(Mark mark) {
  switch (mark) {
    case Mark::brow:
      return MarkWords::tr("front pad gone or torn");
    case Mark::ears:
      return MarkWords::tr("ear openings ahead, behind or turned");
    case Mark::nape:
      return MarkWords::tr("rear pad gone");
    case Mark::chin:
      return MarkWords::tr("chin cup off centre");
    case Mark::straps:
      return MarkWords::tr("snap or strap gone");
    case Mark::jaw:
      return MarkWords::tr("jaw pad gone");
    case Mark::crown:
      return MarkWords::tr("crown liner fails");
    case Mark::sides:
      return MarkWords::tr("side liner fails");
    case Mark::hold:
      return MarkWords::tr("hold cannot be tried");
  }
  return {};
}

QString foundHold(Finding finding, HoldHow how) {
  if (finding == Finding::over) return MarkWords::tr("hurts in the twist");
  switch (how) {
    case HoldHow::unsaid:
      return MarkWords::tr("slides");
    case HoldHow::twist:
      return MarkWords::tr("slides in the twist");
    case HoldHow::rock:
      return MarkWords::tr("rolls off from behind");
    case HoldHow::drop:
      return MarkWords::tr("drops when the crown is pressed");
  }
  return {};
}

QString foundOff(Mark mark, Finding finding, HoldHow how) {
  const bool isOver = finding == Finding::over;
  switch (mark) {
    case Mark::brow:
      return isOver ? MarkWords::tr("front edge sits high") : MarkWords::tr("front edge sits low");
    case Mark::ears:
      return isOver ? MarkWords::tr("ear openings too high") : MarkWords::tr("ear openings too low");
    case Mark::nape:
      return isOver ? MarkWords::tr("rear edge digs in") : MarkWords::tr("base of the skull bare");
    case Mark::chin:
      return isOver ? MarkWords::tr("chin cup tight") : MarkWords::tr("chin cup slack");
    case Mark::straps:
      return isOver ? MarkWords::tr("straps tight") : MarkWords::tr("straps loose or over the bars");
    case Mark::jaw:
      return isOver ? MarkWords::tr("jaw pads press") : MarkWords::tr("gap at the jaw pads");
    case Mark::crown:
      return isOver ? MarkWords::tr("crown presses") : MarkWords::tr("gap on top");
    case Mark::sides:
      return isOver ? MarkWords::tr("sides press") : MarkWords::tr("gap at the sides");
    case Mark::hold:
      return foundHold(finding, how);
  }
  return {};
}

}  // namespace

QString MarkWords::found(Mark mark, Finding finding, Side side, HoldHow how) {
  switch (finding) {
    case Finding::unseen:
      return tr("%1 not seen").arg(brief(mark));
    case Finding::snug:
      return tr("%1 snug").arg(brief(mark));
    case Finding::fault:
      return foundFault(mark) + onSide(side);
    case Finding::over:
    case Finding::under:
      return foundOff(mark, finding, how) + onSide(side);
  }
  return {};
}

QString MarkWords::said(Mark mark, Side side, Feels feels) {
  switch (feels) {
    case Feels::tight:
      return tr("%1 tight").arg(brief(mark)) + onSide(side);
    case Feels::loose:
      return tr("%1 loose").arg(brief(mark)) + onSide(side);
    case Feels::broke:
      return tr("something broke at the %1").arg(brief(mark)) + onSide(side);
  }
  return {};
}

// The last word of each is what is recorded in the Book, in plain words whatever the language of the screen.
QList<MarkWords::Fault> MarkWords::faults(Mark mark, const gear::ModelSheet* sheet) {
  const QString faultId = QStringLiteral("fault");
  const auto hasAir = [sheet](gear::Port port) { return sheet != nullptr && sheet->hasPort(port); };
  switch (mark) {
    case Mark::brow:
      return {{faultId, tr("Front pad gone or torn"), "front pad gone or torn"}};
    case Mark::ears:
      return {{faultId, tr("Openings ahead, behind or turned"), "openings ahead, behind or turned"}};
    case Mark::nape:
      return {{faultId, tr("Rear pad gone"), "rear pad gone"}};
    case Mark::chin:
      return {{faultId, tr("Cup off centre"), "cup off centre"},
              {QStringLiteral("point:chin-strap"), tr("Cup worn or torn"), "chin cup worn or torn"}};
    case Mark::straps:
      return {{faultId, tr("Snap or strap gone"), "snap or strap gone"}};
    case Mark::jaw:
      return {{faultId, tr("Jaw pad gone"), "jaw pad gone"}};
    case Mark::crown:
      return {{faultId, hasAir(gear::Port::crown) ? tr("Crown does not hold air") : tr("Crown pad gone or torn"), "crown fails"}};
    case Mark::sides:
      return {{faultId, hasAir(gear::Port::sides) ? tr("Sides do not hold air") : tr("Side pad gone or torn"), "sides fail"}};
    case Mark::hold:
      return {{faultId, tr("Cannot be tried"), "cannot be tried"}};
  }
  return {};
}

QString MarkWords::side(Side side) {
  switch (side) {
    case Side::both:
      return tr("Both");
    case Side::left:
      return tr("Left");
    case Side::right:
      return tr("Right");
  }
  return {};
}

QString MarkWords::holdHow(HoldHow how) {
  switch (how) {
    case HoldHow::unsaid:
      return tr("Slides");
    case HoldHow::twist:
      return tr("In the twist");
    case HoldHow::rock:
      return tr("Rolls off from behind");
    case HoldHow::drop:
      return tr("Drops when pressed");
  }
  return {};
}

QString MarkWords::view(LookView view) {
  switch (view) {
    case LookView::front:
      return tr("From the front");
    case LookView::side:
      return tr("From the side");
    case LookView::hold:
      return tr("Contact and hold");
  }
  return {};
}

QString MarkWords::viewAsk(LookView view) {
  switch (view) {
    case LookView::front:
      return tr("Brow, chin cup and straps: all snug?");
    case LookView::side:
      return tr("Ears, base of the skull and jaw pads: all snug?");
    case LookView::hold:
      return tr("Crown, sides and hold: all snug?");
  }
  return {};
}

QString MarkWords::finding(Finding finding) {
  switch (finding) {
    case Finding::unseen:
      return tr("not seen");
    case Finding::snug:
      return tr("snug");
    case Finding::over:
      return tr("over");
    case Finding::under:
      return tr("under");
    case Finding::fault:
      return tr("fault");
  }
  return {};
}

QString MarkWords::marks(fit::MarkSet set) {
  QStringList names;
  for (const Mark mark : fit::kMarks) {
    if (set.has(mark)) names << brief(mark);
  }
  return PlainWords::list(names);
}

}  // namespace snugline::models
