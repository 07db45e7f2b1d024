<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>GirdleWordsText</name>
    <message numerus="yes">
        <source>%n shims</source>
        <translation>
            <numerusform>%n shim</numerusform>
            <numerusform>%n shims</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The plan saves %n shims.</source>
        <translation>
            <numerusform>The plan saves %n shim.</numerusform>
            <numerusform>The plan saves %n shims.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message numerus="yes">
        <source>%n more entries of this kind.</source>
        <translation>
            <numerusform>%n more entry of this kind.</numerusform>
            <numerusform>%n more entries of this kind.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>caprail::ClosingFindings</name>
    <message numerus="yes">
        <source>%n older ones are in the history.</source>
        <translation>
            <numerusform>%n older one is in the history.</numerusform>
            <numerusform>%n older ones are in the history.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>caprail::ClosingStation</name>
    <message numerus="yes">
        <source>… and %n more.</source>
        <translation>
            <numerusform>… and %n more.</numerusform>
            <numerusform>… and %n more.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>caprail::EntriesTable</name>
    <message numerus="yes">
        <source>Why are these %n entries withdrawn? They stay readable, struck through.</source>
        <translation>
            <numerusform>Why is this %n entry withdrawn? It stays readable, struck through.</numerusform>
            <numerusform>Why are these %n entries withdrawn? They stay readable, struck through.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>… and %n more.</source>
        <translation>
            <numerusform>… and %n more.</numerusform>
            <numerusform>… and %n more.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Strike %n entries</source>
        <translation>
            <numerusform>Strike %n entry</numerusform>
            <numerusform>Strike %n entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Strike these %n entries…</source>
        <translation>
            <numerusform>Strike this %n entry…</numerusform>
            <numerusform>Strike these %n entries…</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>caprail::MainWindow</name>
    <message numerus="yes">
        <source>%n checks are stale by it.</source>
        <translation>
            <numerusform>%n check is stale by it.</numerusform>
            <numerusform>%n checks are stale by it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries could not be stored on disk and would be lost. Close all the same?</source>
        <translation>
            <numerusform>%n entry could not be stored on disk and would be lost. Close all the same?</numerusform>
            <numerusform>%n entries could not be stored on disk and would be lost. Close all the same?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries were kept.</source>
        <translation>
            <numerusform>%n entry was kept.</numerusform>
            <numerusform>%n entries were kept.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries still could not be stored. Save a copy elsewhere, or free the disk and try again.</source>
        <translation>
            <numerusform>%n entry still could not be stored. Save a copy elsewhere, or free the disk and try again.</numerusform>
            <numerusform>%n entries still could not be stored. Save a copy elsewhere, or free the disk and try again.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pictures, from %1</source>
        <translation>
            <numerusform>%n picture, %1</numerusform>
            <numerusform>%n pictures, from %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>caprail::NextBar</name>
    <message numerus="yes">
        <source>%1: locked, held by %n</source>
        <translation>
            <numerusform>%1: locked, held by %n</numerusform>
            <numerusform>%1: locked, held by %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>caprail::PlacePanel</name>
    <message numerus="yes">
        <source>%n older ones are in the history.</source>
        <translation>
            <numerusform>%n older one is in the history.</numerusform>
            <numerusform>%n older ones are in the history.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>caprail::StationList</name>
    <message numerus="yes">
        <source>%1: locked, held by %n (%2)</source>
        <translation>
            <numerusform>%1: locked, held by %n (%2)</numerusform>
            <numerusform>%1: locked, held by %n (%2)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: worst is %2, %n open (%3)</source>
        <translation>
            <numerusform>%1: worst is %2, %n open (%3)</numerusform>
            <numerusform>%1: worst is %2, %n open (%3)</numerusform>
        </translation>
    </message>
</context>
</TS>
