<?xml version="1.0" encoding="utf-8"?>
<!-- SPDX-License-Identifier: Apache-2.0 -->
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
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
</context>
<context>
    <name>snugline::models::LineModel</name>
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
        <source>%n first fit(s)</source>
        <translation>
            <numerusform>%n first fit</numerusform>
            <numerusform>%n first fits</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more after this one</source>
        <translation>
            <numerusform>%n more after this one</numerusform>
            <numerusform>%n more after this one</numerusform>
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
</TS>
