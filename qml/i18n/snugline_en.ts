<?xml version="1.0" encoding="utf-8"?>
<!-- SPDX-License-Identifier: Apache-2.0 -->
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>AirWords</name>
    <message numerus="yes">
        <source>%1 air (and %n more)</source>
        <comment>a bladder; so many others too</comment>
        <translation>
            <numerusform>%1 air (and %n more)</numerusform>
            <numerusform>%1 air (and %n more)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 air leaks %2 a week, from %n readings</source>
        <comment>a bladder; about so much</comment>
        <translation>
            <numerusform>%1 air leaks %2 a week, from %n reading</numerusform>
            <numerusform>%1 air leaks %2 a week, from %n readings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n readings: too few to speak of a leak. Five in a row between two refills are needed.</source>
        <translation>
            <numerusform>%n reading: too few to speak of a leak. Five in a row between two refills are needed.</numerusform>
            <numerusform>%n readings: too few to speak of a leak. Five in a row between two refills are needed.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>About %n pump(s)</source>
        <translation>
            <numerusform>About %n pump</numerusform>
            <numerusform>About %n pumps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: learned from %n step(s) with this model</source>
        <translation>
            <numerusform>%1: learned from %n step with this model</numerusform>
            <numerusform>%1: learned from %n steps with this model</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 with 95 % confidence, from %n readings</source>
        <comment>between what and what</comment>
        <translation>
            <numerusform>%1 with 95 % confidence, from %n reading</numerusform>
            <numerusform>%1 with 95 % confidence, from %n readings</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DockAnswers</name>
    <message numerus="yes">
        <source>%n point(s) not checked</source>
        <translation>
            <numerusform>%n point not checked</numerusform>
            <numerusform>%n points not checked</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DueWords</name>
    <message numerus="yes">
        <source>Weekly look late, %n days since the last</source>
        <translation>
            <numerusform>Weekly look late, %n day since the last</numerusform>
            <numerusform>Weekly look late, %n days since the last</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Weekly look, %n days since the last</source>
        <translation>
            <numerusform>Weekly look, %n day since the last</numerusform>
            <numerusform>Weekly look, %n days since the last</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Head last taped %n months ago</source>
        <translation>
            <numerusform>Head last taped %n month ago</numerusform>
            <numerusform>Head last taped %n months ago</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>GuidePageWords</name>
    <message numerus="yes">
        <source>%n pump(s)</source>
        <translation>
            <numerusform>%n pump</numerusform>
            <numerusform>%n pumps</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>GuideWords</name>
    <message numerus="yes">
        <source>%n pump(s)</source>
        <translation>
            <numerusform>%n pump</numerusform>
            <numerusform>%n pumps</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SaidWords</name>
    <message numerus="yes">
        <source>%n times since %1</source>
        <comment>a day</comment>
        <translation>
            <numerusform>%n time since %1</numerusform>
            <numerusform>%n times since %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Said by %n athletes, %1 to %2</source>
        <comment>first and last day</comment>
        <translation>
            <numerusform>Said by %n athlete, %1 to %2</numerusform>
            <numerusform>Said by %n athletes, %1 to %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Said on %n days, %1 to %2</source>
        <comment>first and last day</comment>
        <translation>
            <numerusform>Said on %n day, %1 to %2</numerusform>
            <numerusform>Said on %n days, %1 to %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>tight %n times</source>
        <translation>
            <numerusform>tight %n time</numerusform>
            <numerusform>tight %n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>loose %n times</source>
        <translation>
            <numerusform>loose %n time</numerusform>
            <numerusform>loose %n times</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SeasonWords</name>
    <message numerus="yes">
        <source>%n point(s) not seen</source>
        <translation>
            <numerusform>%n point not seen</numerusform>
            <numerusform>%n points not seen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n year(s) since its first label</source>
        <translation>
            <numerusform>%n year since its first label</numerusform>
            <numerusform>%n years since its first label</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more not counted: on hold, in repair, out of service or unread.</source>
        <translation>
            <numerusform>%n more not counted: on hold, in repair, out of service or unread.</numerusform>
            <numerusform>%n more not counted: on hold, in repair, out of service or unread.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A helmet that goes out is away for %n days. Its new label is judged by the year in which it comes back.</source>
        <translation>
            <numerusform>A helmet that goes out is away for %n day. Its new label is judged by the year in which it comes back.</numerusform>
            <numerusform>A helmet that goes out is away for %n days. Its new label is judged by the year in which it comes back.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without a birth year count as growing.</source>
        <translation>
            <numerusform>%n without a birth year counts as growing.</numerusform>
            <numerusform>%n without a birth year count as growing.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n never taped: taken as any head of that age.</source>
        <translation>
            <numerusform>%n never taped: taken as any head of that age.</numerusform>
            <numerusform>%n never taped: taken as any head of that age.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tape(s) are stale.</source>
        <translation>
            <numerusform>%n tape is stale.</numerusform>
            <numerusform>%n tapes are stale.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SheetWords</name>
    <message numerus="yes">
        <source>%n month(s)</source>
        <translation>
            <numerusform>%n month</numerusform>
            <numerusform>%n months</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s)</source>
        <translation>
            <numerusform>%n point</numerusform>
            <numerusform>%n points</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>At most %n character(s)</source>
        <translation>
            <numerusform>At most %n character</numerusform>
            <numerusform>At most %n characters</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Timeline</name>
    <message numerus="yes">
        <source>Names are shown for %n year(s) after the last entry</source>
        <translation>
            <numerusform>Names are shown for %n year after the last entry</numerusform>
            <numerusform>Names are shown for %n years after the last entry</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>UnitWords</name>
    <message numerus="yes">
        <source>%n helmet(s)</source>
        <translation>
            <numerusform>%n helmet</numerusform>
            <numerusform>%n helmets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n on heads</source>
        <translation>
            <numerusform>%n on a head</numerusform>
            <numerusform>%n on heads</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n helmet(s) the year or the lot is not known</source>
        <translation>
            <numerusform>Of %n helmet the year or the lot is not known</numerusform>
            <numerusform>Of %n helmets the year or the lot is not known</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n helmet(s) the lot is not known</source>
        <translation>
            <numerusform>Of %n helmet the lot is not known</numerusform>
            <numerusform>Of %n helmets the lot is not known</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n helmet(s) the year made is not known</source>
        <translation>
            <numerusform>Of %n helmet the year made is not known</numerusform>
            <numerusform>Of %n helmets the year made is not known</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) not seen</source>
        <translation>
            <numerusform>%n point not seen</numerusform>
            <numerusform>%n points not seen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n on hold</source>
        <translation>
            <numerusform>%n on hold</numerusform>
            <numerusform>%n on hold</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not put in service yet</source>
        <translation>
            <numerusform>%n not put in service yet</numerusform>
            <numerusform>%n not put in service yet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with an open fault</source>
        <translation>
            <numerusform>%n with an open fault</numerusform>
            <numerusform>%n with an open fault</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n said to be broken and not looked at since</source>
        <translation>
            <numerusform>%n said to be broken and not looked at since</numerusform>
            <numerusform>%n said to be broken and not looked at since</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with a label that is lapsed, missing, not read or in question</source>
        <translation>
            <numerusform>%n with a label that is lapsed, missing, not read or in question</numerusform>
            <numerusform>%n with a label that is lapsed, missing, not read or in question</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without a model sheet</source>
        <translation>
            <numerusform>%n without a model sheet</numerusform>
            <numerusform>%n without a model sheet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of another size</source>
        <translation>
            <numerusform>%n of another size</numerusform>
            <numerusform>%n of another size</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tried on this head, and no fit was reached</source>
        <translation>
            <numerusform>%n tried on this head, and no fit was reached</numerusform>
            <numerusform>%n tried on this head, and no fit was reached</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n in repair, sent out or still with an athlete</source>
        <translation>
            <numerusform>%n in repair, sent out or still with an athlete</numerusform>
            <numerusform>%n in repair, sent out or still with an athlete</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with seven points to check after a report</source>
        <translation>
            <numerusform>%n with seven points to check after a report</numerusform>
            <numerusform>%n with seven points to check after a report</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>VerdictWords</name>
    <message numerus="yes">
        <source>%n marks</source>
        <translation>
            <numerusform>%n mark</numerusform>
            <numerusform>%n marks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n points</source>
        <translation>
            <numerusform>%n point</numerusform>
            <numerusform>%n points</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::CollectModel</name>
    <message numerus="yes">
        <source>%n still missing</source>
        <translation>
            <numerusform>%n still missing</numerusform>
            <numerusform>%n still missing</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n with athletes</source>
        <translation>
            <numerusform>, %n with athletes</numerusform>
            <numerusform>, %n with athletes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::DockModel</name>
    <message numerus="yes">
        <source>%n photo(s) kept</source>
        <translation>
            <numerusform>%n photo kept</numerusform>
            <numerusform>%n photos kept</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Unfinished: %n point(s) checked</source>
        <translation>
            <numerusform>Unfinished: %n point checked</numerusform>
            <numerusform>Unfinished: %n points checked</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::DoorsModel</name>
    <message numerus="yes">
        <source>%n athlete(s) said something nobody has seen to yet</source>
        <translation>
            <numerusform>%n athlete said something nobody has seen to yet</numerusform>
            <numerusform>%n athletes said something nobody has seen to yet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to see before %1</source>
        <translation>
            <numerusform>%n to see before %1</numerusform>
            <numerusform>%n to see before %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to see</source>
        <translation>
            <numerusform>%n to see</numerusform>
            <numerusform>%n to see</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them: do not wear</source>
        <translation>
            <numerusform>%n of them: do not wear</numerusform>
            <numerusform>%n of them: do not wear</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s) on hold</source>
        <translation>
            <numerusform>%n helmet on hold</numerusform>
            <numerusform>%n helmets on hold</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n athlete(s)</source>
        <translation>
            <numerusform>%n athlete</numerusform>
            <numerusform>%n athletes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s)</source>
        <translation>
            <numerusform>%n helmet</numerusform>
            <numerusform>%n helmets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n still on the Line</source>
        <translation>
            <numerusform>%n still on the Line</numerusform>
            <numerusform>%n still on the Line</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::LineCheckModel</name>
    <message numerus="yes">
        <source>%n in the line. Go along it: brow, straps, hold. Touch only what is off.</source>
        <translation>
            <numerusform>%n in the line. Go along it: brow, straps, hold. Touch only what is off.</numerusform>
            <numerusform>%n in the line. Go along it: brow, straps, hold. Touch only what is off.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Brow, straps and hold seen in line: %n, all snug.</source>
        <translation>
            <numerusform>Brow, straps and hold seen in line: %n, snug.</numerusform>
            <numerusform>Brow, straps and hold seen in line: %n, all snug.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>These %n: checked</source>
        <translation>
            <numerusform>This %n: checked</numerusform>
            <numerusform>These %n: checked</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n with something off</source>
        <translation>
            <numerusform>and %n with something off</numerusform>
            <numerusform>and %n with something off</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::LineModel</name>
    <message numerus="yes">
        <source>%n in this lane because of the air</source>
        <translation>
            <numerusform>%n in this lane because of the air</numerusform>
            <numerusform>%n in this lane because of the air</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n before practice</source>
        <translation>
            <numerusform>%n before practice</numerusform>
            <numerusform>%n before practice</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n weekly look(s)</source>
        <translation>
            <numerusform>%n weekly look</numerusform>
            <numerusform>%n weekly looks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more after this one</source>
        <translation>
            <numerusform>%n more after this one</numerusform>
            <numerusform>%n more after this one</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n because of the weather alone</source>
        <translation>
            <numerusform>%n because of the weather alone</numerusform>
            <numerusform>%n because of the weather alone</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n: do not wear</source>
        <translation>
            <numerusform>%n: do not wear</numerusform>
            <numerusform>%n: do not wear</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::MatchingModel</name>
    <message numerus="yes">
        <source>%1 of %n heads have a helmet that can be given.</source>
        <translation>
            <numerusform>%1 of %n head has a helmet that can be given.</numerusform>
            <numerusform>%1 of %n heads have a helmet that can be given.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::NoticeModel</name>
    <message numerus="yes">
        <source>%n helmet(s)</source>
        <translation>
            <numerusform>%n helmet</numerusform>
            <numerusform>%n helmets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n with athletes</source>
        <translation>
            <numerusform>, %n with an athlete</numerusform>
            <numerusform>, %n with athletes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::PastModel</name>
    <message numerus="yes">
        <source>%n missing at the close</source>
        <translation>
            <numerusform>%n missing at the close</numerusform>
            <numerusform>%n missing at the close</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n turned up since</source>
        <translation>
            <numerusform>, %n turned up since</numerusform>
            <numerusform>, %n turned up since</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n athlete(s)</source>
        <translation>
            <numerusform>%n athlete</numerusform>
            <numerusform>%n athletes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s)</source>
        <translation>
            <numerusform>%n helmet</numerusform>
            <numerusform>%n helmets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n check(s)</source>
        <translation>
            <numerusform>%n check</numerusform>
            <numerusform>%n checks</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::PhoneModel</name>
    <message numerus="yes">
        <source>%n report(s) that staff do not have yet</source>
        <translation>
            <numerusform>%n report that staff do not have yet</numerusform>
            <numerusform>%n reports that staff do not have yet</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::PhonesModel</name>
    <message numerus="yes">
        <source>%n athlete(s) with a phone of their own</source>
        <translation>
            <numerusform>%n athlete with a phone of their own</numerusform>
            <numerusform>%n athletes with a phone of their own</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new report(s) from number %1.</source>
        <translation>
            <numerusform>%n new report from number %1.</numerusform>
            <numerusform>%n new reports from number %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::PlanModel</name>
    <message numerus="yes">
        <source>%n week(s)</source>
        <translation>
            <numerusform>%n week</numerusform>
            <numerusform>%n weeks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s), %1</source>
        <translation>
            <numerusform>%n helmet, %1</numerusform>
            <numerusform>%n helmets, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>; %n past their age limit</source>
        <translation>
            <numerusform>; %n past its age limit</numerusform>
            <numerusform>; %n past their age limit</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s): %1</source>
        <translation>
            <numerusform>%n helmet: %1</numerusform>
            <numerusform>%n helmets: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::PrivacyModel</name>
    <message numerus="yes">
        <source>%n name(s) are kept back now.</source>
        <translation>
            <numerusform>%n name is kept back now.</numerusform>
            <numerusform>%n names are kept back now.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::ScanModel</name>
    <message numerus="yes">
        <source>%n label(s) to print: %1</source>
        <translation>
            <numerusform>%n label to print: %1</numerusform>
            <numerusform>%n labels to print: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::SeasonModel</name>
    <message numerus="yes">
        <source>%n places said again and again</source>
        <translation>
            <numerusform>%n place said again and again</numerusform>
            <numerusform>%n places said again and again</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::SheetEditor</name>
    <message numerus="yes">
        <source>%n value(s) to put right</source>
        <translation>
            <numerusform>%n value to put right</numerusform>
            <numerusform>%n values to put right</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) not said yet</source>
        <translation>
            <numerusform>%n value not said yet</numerusform>
            <numerusform>%n values not said yet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s) of this model</source>
        <translation>
            <numerusform>%n helmet of this model</numerusform>
            <numerusform>%n helmets of this model</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n athlete(s)</source>
        <translation>
            <numerusform>%n athlete</numerusform>
            <numerusform>%n athletes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s)</source>
        <translation>
            <numerusform>%n helmet</numerusform>
            <numerusform>%n helmets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n check(s) open now go on by the sheet they began with.</source>
        <translation>
            <numerusform>%n check open now goes on by the sheet it began with.</numerusform>
            <numerusform>%n checks open now go on by the sheets they began with.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::SheetPage</name>
    <message numerus="yes">
        <source>%n point(s)</source>
        <translation>
            <numerusform>%n point</numerusform>
            <numerusform>%n points</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s)</source>
        <translation>
            <numerusform>%n helmet</numerusform>
            <numerusform>%n helmets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with athletes</source>
        <translation>
            <numerusform>%n with athletes</numerusform>
            <numerusform>%n with athletes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::SheetsModel</name>
    <message numerus="yes">
        <source> Changed %n time(s).</source>
        <translation>
            <numerusform> Changed %n time.</numerusform>
            <numerusform> Changed %n times.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s)</source>
        <translation>
            <numerusform>%n helmet</numerusform>
            <numerusform>%n helmets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n athlete(s)</source>
        <translation>
            <numerusform>%n athlete</numerusform>
            <numerusform>%n athletes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::SwapModel</name>
    <message numerus="yes">
        <source>%n worn by others</source>
        <translation>
            <numerusform>%n worn by others</numerusform>
            <numerusform>%n worn by others</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::TurnModel</name>
    <message numerus="yes">
        <source>, %n helmet(s) missing</source>
        <translation>
            <numerusform>, %n helmet missing</numerusform>
            <numerusform>, %n helmets missing</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s) not handed in</source>
        <translation>
            <numerusform>%n helmet not handed in</numerusform>
            <numerusform>%n helmets not handed in</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n with athletes</source>
        <translation>
            <numerusform>, %n with athletes</numerusform>
            <numerusform>, %n with athletes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s) will be named as missing</source>
        <translation>
            <numerusform>%n helmet will be named as missing</numerusform>
            <numerusform>%n helmets will be named as missing</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n word(s) not answered</source>
        <translation>
            <numerusform>%n word not answered</numerusform>
            <numerusform>%n words not answered</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>That would be %n days. Look at the years</source>
        <translation>
            <numerusform>That would be %n day. Look at the years</numerusform>
            <numerusform>That would be %n days. Look at the years</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n on the roster</source>
        <translation>
            <numerusform>%n on the roster</numerusform>
            <numerusform>%n on the roster</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n leave</source>
        <translation>
            <numerusform>, %n leaves</numerusform>
            <numerusform>, %n leave</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s) go over</source>
        <translation>
            <numerusform>%n helmet goes over</numerusform>
            <numerusform>%n helmets go over</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::UnitAir</name>
    <message numerus="yes">
        <source>%n reading(s) without weather cannot be compared.</source>
        <translation>
            <numerusform>%n reading without weather cannot be compared.</numerusform>
            <numerusform>%n readings without weather cannot be compared.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::UnitPage</name>
    <message numerus="yes">
        <source>Certification every %n months by its sheet</source>
        <translation>
            <numerusform>Certification every %n month by its sheet</numerusform>
            <numerusform>Certification every %n months by its sheet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Put in service, %n point(s) not seen</source>
        <translation>
            <numerusform>Put in service, %n point not seen</numerusform>
            <numerusform>Put in service, %n points not seen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::WarningModel</name>
    <message numerus="yes">
        <source>%n athlete(s) have yet to sign the yearly warning</source>
        <translation>
            <numerusform>%n athlete has yet to sign the yearly warning</numerusform>
            <numerusform>%n athletes have yet to sign the yearly warning</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::WeatherModel</name>
    <message numerus="yes">
        <source>%n not judged</source>
        <translation>
            <numerusform>%n not judged</numerusform>
            <numerusform>%n not judged</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s) could not be judged: no weather was noted when their air was set.</source>
        <translation>
            <numerusform>%n helmet could not be judged: no weather was noted when its air was set.</numerusform>
            <numerusform>%n helmets could not be judged: no weather was noted when their air was set.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n degree(s) colder</source>
        <translation>
            <numerusform>%n degree colder</numerusform>
            <numerusform>%n degrees colder</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n degree(s) warmer</source>
        <translation>
            <numerusform>%n degree warmer</numerusform>
            <numerusform>%n degrees warmer</numerusform>
        </translation>
    </message>
</context>
</TS>
