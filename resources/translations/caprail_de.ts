<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name></name>
    <message>
        <source>Entry %1 is lost: %2</source>
        <translation>Eintrag %1 ist verloren: %2</translation>
    </message>
    <message>
        <source>The seal of entry %1 does not fit: it was altered, or the one before it is lost.</source>
        <translation>Das Siegel von Eintrag %1 passt nicht: er wurde verändert, oder der davor ist verloren.</translation>
    </message>
</context>
<context>
    <name>About</name>
    <message>
        <source>Caprail %1

The assembly build record of one engine per file.

Free software under the GNU General Public License, version 3 or later. It comes without any warranty.

Made with:</source>
        <translation>Caprail %1

Das Aufbauprotokoll eines Motors in einer Datei.

Freie Software unter der GNU General Public License, Version 3 oder neuer. Ohne jede Gewährleistung.

Erstellt mit:</translation>
    </message>
    <message>
        <source>About Caprail</source>
        <translation>Über Caprail</translation>
    </message>
    <message>
        <source>&amp;Copy for a report</source>
        <translation>Für eine Meldung &amp;kopieren</translation>
    </message>
</context>
<context>
    <name>AcrossText</name>
    <message>
        <source>No record that is chosen holds such a value.</source>
        <translation>Kein gewähltes Protokoll enthält einen solchen Wert.</translation>
    </message>
    <message>
        <source>No values.</source>
        <translation>Keine Werte.</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>%1: %2, %3, build %4, %5</source>
        <translation>%1: %2, %3, Aufbau %4, %5</translation>
    </message>
    <message>
        <source>%1 values at %2 places, from %3 to %4.</source>
        <translation>%1 Werte an %2 Stellen, von %3 bis %4.</translation>
    </message>
    <message>
        <source>%1 values: only their ranges are drawn</source>
        <translation>%1 Werte: nur ihre Spannen sind gezeichnet</translation>
    </message>
    <message>
        <source>The values are not here yet.</source>
        <translation>Die Werte sind noch nicht da.</translation>
    </message>
</context>
<context>
    <name>BearingsStation</name>
    <message>
        <source>station %1</source>
        <translation>Messebene %1</translation>
    </message>
    <message>
        <source>%1 (front)</source>
        <translation>%1 (vorn)</translation>
    </message>
    <message>
        <source>%1 (rear)</source>
        <translation>%1 (hinten)</translation>
    </message>
    <message>
        <source>vertical</source>
        <translation>senkrecht</translation>
    </message>
    <message>
        <source>horizontal</source>
        <translation>waagerecht</translation>
    </message>
    <message>
        <source>direction %1</source>
        <translation>Richtung %1</translation>
    </message>
    <message>
        <source>gauging strip</source>
        <translation>Messstreifen</translation>
    </message>
    <message>
        <source>shells %1 and %2</source>
        <translation>Lagerschalen %1 und %2</translation>
    </message>
    <message>
        <source>strip</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Its band is not set: set it at the engine station, under Bands.</source>
        <translation>Das Band ist nicht festgelegt: an der Station Motor unter „Bänder“ festlegen.</translation>
    </message>
    <message>
        <source>Journal, mean</source>
        <translation>Zapfen, Mittel</translation>
    </message>
    <message>
        <source>Taper · out-of-round</source>
        <translation>Konizität · Unrundheit</translation>
    </message>
    <message>
        <source>Smallest · largest</source>
        <translation>Kleinstes · größtes</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>clearance %1</source>
        <translation>Spiel %1</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Messunsicherheit</translation>
    </message>
    <message>
        <source>read, mean %1</source>
        <translation>gemessen, Mittel %1</translation>
    </message>
    <message>
        <source>side clearance %1</source>
        <translation>Seitenspiel %1</translation>
    </message>
</context>
<context>
    <name>CautionLabel</name>
    <message>
        <source>Cautions …</source>
        <translation>Vorsicht …</translation>
    </message>
</context>
<context>
    <name>CautionsText</name>
    <message>
        <source>The instructions of the parts&apos; makers, local codes and licensed practice come first. What this program proposes never overrides them.</source>
        <translation>Die Anweisungen der Teilehersteller, örtliche Vorschriften und zugelassene Fachleute gehen vor. Was dieses Programm vorschlägt, setzt sie nie außer Kraft.</translation>
    </message>
    <message>
        <source>A block is heavy: lock the stand before you lean on it or reach under it.</source>
        <translation>Ein Block ist schwer: den Montagebock verriegeln, bevor man sich darauf stützt oder darunter greift.</translation>
    </message>
    <message>
        <source>Turn the crank by hand and slowly, and keep fingers out of the crankcase while it turns.</source>
        <translation>Die Kurbelwelle von Hand und langsam drehen und dabei nicht ins Kurbelgehäuse greifen.</translation>
    </message>
    <message>
        <source>Pull a torque wrench, never push it, and wear eye protection.</source>
        <translation>Einen Drehmomentschlüssel ziehen, nie drücken, und eine Schutzbrille tragen.</translation>
    </message>
    <message>
        <source>Count the shims out and back in: one left inside can destroy the engine. Their edges cut.</source>
        <translation>Die Distanzscheiben beim Herausnehmen und beim Einlegen zählen: eine, die im Motor bleibt, kann ihn zerstören. Ihre Kanten schneiden.</translation>
    </message>
    <message>
        <source>Use gloves and fresh air with solvents and sealants.</source>
        <translation>Bei Lösemitteln und Dichtmassen gut lüften und Handschuhe tragen.</translation>
    </message>
    <message>
        <source>A fastener that was once tightened to yield is scrap: fit a new one.</source>
        <translation>Eine Schraube, die einmal bis zur Streckgrenze angezogen wurde, ist Schrott: eine neue einbauen.</translation>
    </message>
</context>
<context>
    <name>ClearanceChartText</name>
    <message>
        <source>Bearing clearances</source>
        <translation>Lagerspiele</translation>
    </message>
    <message>
        <source>A bearing appears here once its journal and its bore are measured.</source>
        <translation>Ein Lager erscheint hier, sobald Zapfen und Bohrung gemessen sind.</translation>
    </message>
    <message>
        <source>No clearance is known yet.</source>
        <translation>Noch ist kein Spiel bekannt.</translation>
    </message>
    <message>
        <source>M</source>
        <translation>H</translation>
    </message>
    <message>
        <source>R</source>
        <translation>P</translation>
    </message>
    <message>
        <source>Clearance of %1 of %2 bearings is known; %3 are good.</source>
        <translation>Das Spiel von %1 von %2 Lagern ist bekannt; %3 sind gut.</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>smallest to largest</source>
        <translation>kleinstes bis größtes</translation>
    </message>
    <message>
        <source>expanded uncertainty</source>
        <translation>erweiterte Messunsicherheit</translation>
    </message>
    <message>
        <source>bearing: M main, R rod</source>
        <translation>Lager: H Hauptlager, P Pleuel</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>Spiel</translation>
    </message>
    <message>
        <source>mains
%1</source>
        <translation>Hauptlager
%1</translation>
    </message>
    <message>
        <source>rods
%1</source>
        <translation>Pleuellager
%1</translation>
    </message>
</context>
<context>
    <name>ClockNotice</name>
    <message>
        <source>More entries of which that is true: %1.</source>
        <translation>Weitere Einträge, für die das gilt: %1.</translation>
    </message>
</context>
<context>
    <name>ClosingTaskText</name>
    <message>
        <source>no shim</source>
        <translation>keine Distanzscheibe</translation>
    </message>
    <message>
        <source>%1 up, cutout towards the %2 on the %3.</source>
        <translation>%1 oben, Aussparung nach %2, %3.</translation>
    </message>
    <message>
        <source>By hand and slowly, two full turns at the crank bolt: what starts it, what keeps it turning.</source>
        <translation>Von Hand und langsam, zwei volle Umdrehungen an der Kurbelwellenschraube: was sie losbricht, was sie weiterdreht.</translation>
    </message>
    <message>
        <source>Before the girdle %1 / %2; at most %3 more.</source>
        <translation>Vor der Platte %1 / %2; höchstens %3 mehr.</translation>
    </message>
    <message>
        <source>All stacks are on</source>
        <translation>Alle Stapel liegen</translation>
    </message>
    <message>
        <source>Lower the girdle</source>
        <translation>Die Platte aufsetzen</translation>
    </message>
    <message>
        <source>All girdle nuts are at their value</source>
        <translation>Alle Plattenmuttern haben ihren Wert</translation>
    </message>
    <message>
        <source>Two full turns by hand, nothing binds</source>
        <translation>Zwei volle Umdrehungen von Hand, nichts klemmt</translation>
    </message>
    <message>
        <source>All pan fasteners are at their value</source>
        <translation>Alle Schrauben der Ölwanne haben ihren Wert</translation>
    </message>
    <message>
        <source>Count the shims by hand</source>
        <translation>Die Scheiben von Hand zählen</translation>
    </message>
    <message>
        <source>%1:  %2</source>
        <translation>%1:  %2</translation>
    </message>
    <message>
        <source>Lay the sealant bead</source>
        <translation>Die Dichtraupe legen</translation>
    </message>
    <message>
        <source>Turning torque, %1</source>
        <translation>Durchdrehmoment, %1</translation>
    </message>
    <message>
        <source>Everything is closed up: sign off</source>
        <translation>Alles ist geschlossen: abzeichnen</translation>
    </message>
    <message>
        <source>Build %1 is closed</source>
        <translation>Aufbau %1 ist geschlossen</translation>
    </message>
    <message>
        <source>In the labelled stacks, set aside, left over in their bags. One left inside can destroy the engine.</source>
        <translation>In den beschrifteten Stapeln, beiseitegelegt, übrig in den Beuteln. Eine, die drin bleibt, kann den Motor zerstören.</translation>
    </message>
    <message>
        <source>By its label, washer and seat wiped clean.</source>
        <translation>Nach der Beschriftung, Scheibe und Sitz sauber gewischt.</translation>
    </message>
    <message>
        <source>Thin, outside the holes, wiped inside: a bead squeezed inwards can block the pickup. The clock runs from this entry.</source>
        <translation>Dünn, außerhalb der Löcher, innen abgewischt: eine nach innen gequetschte Raupe kann die Ölansaugung verstopfen. Die Uhr läuft ab diesem Eintrag.</translation>
    </message>
    <message>
        <source>In the stacks + set aside + left over</source>
        <translation>In den Stapeln + beiseitegelegt + übrig</translation>
    </message>
    <message>
        <source>Enter when it is on</source>
        <translation>Enter, wenn er liegt</translation>
    </message>
    <message>
        <source>Product / lot / open time in minutes (Enter alone: as before)</source>
        <translation>Produkt / Charge / Offenzeit in Minuten (nur Enter: wie zuvor)</translation>
    </message>
    <message>
        <source>Product / lot / open time in minutes, from the tube</source>
        <translation>Produkt / Charge / Offenzeit in Minuten, von der Tube</translation>
    </message>
    <message>
        <source>Brought to (Enter alone: as specified)</source>
        <translation>Angezogen auf (nur Enter: wie vorgegeben)</translation>
    </message>
    <message>
        <source>To start it / to turn it</source>
        <translation>Zum Losbrechen / zum Drehen</translation>
    </message>
    <message>
        <source>y for yes, n and what was seen for no</source>
        <translation>y für ja, n und was zu sehen war für nein</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Was gemessen wurde</translation>
    </message>
    <message>
        <source>Enter when its photo is in the record</source>
        <translation>Enter, wenn sein Foto im Protokoll ist</translation>
    </message>
    <message>
        <source>Enter when it is done (a note may be typed)</source>
        <translation>Enter, wenn es getan ist (eine Notiz kann getippt werden)</translation>
    </message>
    <message>
        <source>%1 in the stacks, %2 set aside, %3 left over: %4 in all</source>
        <translation>%1 in den Stapeln, %2 beiseitegelegt, %3 übrig: zusammen %4</translation>
    </message>
    <message>
        <source>%1, lot %2, open for %3 min</source>
        <translation>%1, Charge %2, offen für %3 min</translation>
    </message>
    <message>
        <source>%1 to start it, %2 to turn it</source>
        <translation>%1 zum Losbrechen, %2 zum Drehen</translation>
    </message>
    <message>
        <source>Type “sign” to sign off (or a statement of your own)</source>
        <translation>„sign“ tippen, um abzuzeichnen (oder eine eigene Erklärung)</translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>grey cast iron</source>
        <translation>Grauguss</translation>
    </message>
    <message>
        <source>ductile iron 60-40-18</source>
        <translation>Sphäroguss 60-40-18</translation>
    </message>
    <message>
        <source>ductile iron 80-55-06</source>
        <translation>Sphäroguss 80-55-06</translation>
    </message>
    <message>
        <source>aluminium alloy 356.0</source>
        <translation>Aluminiumlegierung 356.0</translation>
    </message>
    <message>
        <source>steel 1040</source>
        <translation>Stahl 1040</translation>
    </message>
    <message>
        <source>steel 4140</source>
        <translation>Stahl 4140</translation>
    </message>
    <message>
        <source>steel 4340</source>
        <translation>Stahl 4340</translation>
    </message>
    <message>
        <source>There is no bearing to choose shells for: measure housing and journal first.</source>
        <translation>Es gibt kein Lager, für das Schalen zu wählen wären: zuerst Gehäusebohrung und Zapfen messen.</translation>
    </message>
    <message>
        <source>Shells are chosen for at most %1 bearings at a time, not for %2.</source>
        <translation>Schalen werden für höchstens %1 Lager auf einmal gewählt, nicht für %2.</translation>
    </message>
    <message>
        <source>A bearing has no name: give it one.</source>
        <translation>Ein Lager hat keinen Namen: ihm einen geben.</translation>
    </message>
    <message>
        <source>Bearing %1 is listed twice: leave one out.</source>
        <translation>Lager %1 steht zweimal in der Liste: eines weglassen.</translation>
    </message>
    <message>
        <source>Housing and journal of bearing %1 must be above zero and at most %2.</source>
        <translation>Gehäusebohrung und Zapfen von Lager %1 müssen über null und höchstens %2 sein.</translation>
    </message>
    <message>
        <source>The target %1 of bearing %2 lies outside its band, %3.</source>
        <translation>Das Ziel %1 von Lager %2 liegt außerhalb seines Bandes, %3.</translation>
    </message>
    <message>
        <source>The band of bearing %1 is wider than any clearance: look at its ends.</source>
        <translation>Das Band von Lager %1 ist breiter als jedes Spiel: seine Enden ansehen.</translation>
    </message>
    <message>
        <source>The shelf holds %1 shells, more than the %2 that can be chosen from: leave out those that cannot fit.</source>
        <translation>Im Regal liegen %1 Schalen, mehr als die %2, aus denen gewählt werden kann: die weglassen, die nicht passen können.</translation>
    </message>
    <message>
        <source>A shell on the shelf has no name: give it one.</source>
        <translation>Eine Schale im Regal hat keinen Namen: ihr einen geben.</translation>
    </message>
    <message>
        <source>Shell %1 is on the shelf twice: leave one out.</source>
        <translation>Schale %1 liegt zweimal im Regal: eine weglassen.</translation>
    </message>
    <message>
        <source>The thickness of shell %1 must be above zero and at most %2.</source>
        <translation>Die Dicke von Schale %1 muss über null und höchstens %2 sein.</translation>
    </message>
    <message>
        <source>%2 of %1 bearing in band, %3 off target in all, spread %4; %5</source>
        <translation>%2 von %1 Lager im Band, zusammen %3 neben dem Ziel, Spannweite %4; %5</translation>
    </message>
    <message>
        <source>%2 of %1 bearings in band, %3 off target in all, spread %4; %5</source>
        <translation>%2 von %1 Lagern im Band, zusammen %3 neben dem Ziel, Spannweite %4; %5</translation>
    </message>
    <message>
        <source>proven: nothing better is on the shelf.</source>
        <translation>bewiesen: nichts Besseres liegt im Regal.</translation>
    </message>
    <message>
        <source>the best found before it was stopped, not proven.</source>
        <translation>das Beste, was vor dem Abbruch gefunden wurde, nicht bewiesen.</translation>
    </message>
    <message>
        <source>No shells are left for %1.</source>
        <translation>Für %1 sind keine Schalen übrig.</translation>
    </message>
    <message>
        <source>%1 comes to %2, out of band.</source>
        <translation>%1 kommt auf %2, außerhalb des Bandes.</translation>
    </message>
    <message>
        <source>Read the journal at a second station, for its taper.</source>
        <translation>Den Zapfen in einer zweiten Messebene messen, für seine Konizität.</translation>
    </message>
    <message>
        <source>Read the journal in a second direction, for its out-of-round.</source>
        <translation>Den Zapfen in einer zweiten Richtung messen, für seine Unrundheit.</translation>
    </message>
    <message>
        <source>Read station %1 in direction %2 too.</source>
        <translation>Auch Messebene %1 in Richtung %2 messen.</translation>
    </message>
    <message>
        <source>Diameter %1, taper %2, out-of-round %3.</source>
        <translation>Durchmesser %1, Konizität %2, Unrundheit %3.</translation>
    </message>
    <message>
        <source>Entry %1: %2.</source>
        <translation>Eintrag %1: %2.</translation>
    </message>
    <message>
        <source>Trial fit: %1, throw %2</source>
        <translation>Probemontage: %1, Kröpfung %2</translation>
    </message>
    <message>
        <source>Trial fit: %1</source>
        <translation>Probemontage: %1</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1 more holds it.</source>
        <translation>%1 weitere Prüfung hält die Freigabe auf.</translation>
    </message>
    <message>
        <source>%1 more hold it.</source>
        <translation>%1 weitere Prüfungen halten die Freigabe auf.</translation>
    </message>
    <message>
        <source>cap %1 %2</source>
        <translation>Deckel %1 %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>girdle nut</source>
        <translation>Plattenmutter</translation>
    </message>
    <message>
        <source>pan rail</source>
        <translation>Ölwannenflansch</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>%1 outer</source>
        <translation>%1 außen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>pass %1</source>
        <translation>Durchgang %1</translation>
    </message>
    <message>
        <source>residual</source>
        <translation>Restmaß</translation>
    </message>
    <message>
        <source>twist</source>
        <translation>Verwindung</translation>
    </message>
    <message>
        <source>main clearance</source>
        <translation>Hauptlagerspiel</translation>
    </message>
    <message>
        <source>rod clearance</source>
        <translation>Pleuellagerspiel</translation>
    </message>
    <message>
        <source>crank end play</source>
        <translation>Axialspiel der Kurbelwelle</translation>
    </message>
    <message>
        <source>rod side clearance</source>
        <translation>Seitenspiel der Pleuel</translation>
    </message>
    <message>
        <source>pickup clearance</source>
        <translation>Ansaugabstand</translation>
    </message>
    <message>
        <source>Engine described</source>
        <translation>Motor beschrieben</translation>
    </message>
    <message>
        <source>Layout set</source>
        <translation>Motorbauform festgelegt</translation>
    </message>
    <message>
        <source>Band set</source>
        <translation>Band festgelegt</translation>
    </message>
    <message>
        <source>Rules set</source>
        <translation>Regeln festgelegt</translation>
    </message>
    <message>
        <source>Fastener group set</source>
        <translation>Schraubengruppe festgelegt</translation>
    </message>
    <message>
        <source>Person added</source>
        <translation>Person hinzugefügt</translation>
    </message>
    <message>
        <source>Instrument added</source>
        <translation>Messmittel hinzugefügt</translation>
    </message>
    <message>
        <source>Journal measured</source>
        <translation>Zapfen gemessen</translation>
    </message>
    <message>
        <source>Bore measured</source>
        <translation>Bohrung gemessen</translation>
    </message>
    <message>
        <source>Shell thickness</source>
        <translation>Schalendicke</translation>
    </message>
    <message>
        <source>Shells fitted</source>
        <translation>Schalen eingebaut</translation>
    </message>
    <message>
        <source>Fit measured</source>
        <translation>Passung gemessen</translation>
    </message>
    <message>
        <source>Part changed</source>
        <translation>Teil gewechselt</translation>
    </message>
    <message>
        <source>Fastener tightened</source>
        <translation>Verschraubung angezogen</translation>
    </message>
    <message>
        <source>Fastener loosened</source>
        <translation>Verschraubung gelöst</translation>
    </message>
    <message>
        <source>Verify round begun</source>
        <translation>Prüfrunde begonnen</translation>
    </message>
    <message>
        <source>Verified</source>
        <translation>Nachgeprüft</translation>
    </message>
    <message>
        <source>Gap read</source>
        <translation>Spaltmaß gemessen</translation>
    </message>
    <message>
        <source>Shim added</source>
        <translation>Distanzscheibe hinzugefügt</translation>
    </message>
    <message>
        <source>Shim measured</source>
        <translation>Distanzscheibe gemessen</translation>
    </message>
    <message>
        <source>Shim set aside</source>
        <translation>Distanzscheibe beiseitegelegt</translation>
    </message>
    <message>
        <source>Stack pinned</source>
        <translation>Stapel fixiert</translation>
    </message>
    <message>
        <source>Stack built</source>
        <translation>Stapel aufgebaut</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>Recheck</source>
        <translation>Nachprüfung</translation>
    </message>
    <message>
        <source>Accepted again</source>
        <translation>Neu beurteilt</translation>
    </message>
    <message>
        <source>Girdle orientation</source>
        <translation>Lage der Platte</translation>
    </message>
    <message>
        <source>Trial fit</source>
        <translation>Probemontage</translation>
    </message>
    <message>
        <source>Pickup term measured</source>
        <translation>Glied der Ansaugtiefe gemessen</translation>
    </message>
    <message>
        <source>Finding opened</source>
        <translation>Befund eröffnet</translation>
    </message>
    <message>
        <source>Finding settled</source>
        <translation>Befund erledigt</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Photo or file added</source>
        <translation>Foto oder Datei hinzugefügt</translation>
    </message>
    <message>
        <source>Closing step done</source>
        <translation>Schließschritt erledigt</translation>
    </message>
    <message>
        <source>Signed off</source>
        <translation>Abgezeichnet</translation>
    </message>
    <message>
        <source>New build begun</source>
        <translation>Neuer Aufbau begonnen</translation>
    </message>
    <message>
        <source>Struck</source>
        <translation>Gestrichen</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>must be a whole number</source>
        <translation>muss eine ganze Zahl sein</translation>
    </message>
    <message>
        <source>must be a text</source>
        <translation>muss ein Text sein</translation>
    </message>
    <message>
        <source>entry %1</source>
        <translation>Eintrag %1</translation>
    </message>
    <message>
        <source>%1 lacks the details of %2 in the table “%3”: it was altered or damaged.</source>
        <translation>%1 fehlen die Einzelheiten von %2 in der Tabelle „%3“: verändert oder beschädigt.</translation>
    </message>
    <message>
        <source>holds a %1 “%2” that no build record has</source>
        <translation>enthält „%2“ (%1), das kein Aufbauprotokoll hat</translation>
    </message>
    <message>
        <source>has another %1 “%2” than a build record has</source>
        <translation>hat „%2“ (%1) anders als ein Aufbauprotokoll</translation>
    </message>
    <message>
        <source>lacks the %1 “%2”</source>
        <translation>hat „%2“ (%1) nicht</translation>
    </message>
    <message>
        <source>holds something twice</source>
        <translation>enthält etwas doppelt</translation>
    </message>
    <message>
        <source>%1 was moved or deleted while it was open: save a copy elsewhere, then open that.</source>
        <translation>%1 wurde verschoben oder gelöscht, während es offen war: eine Kopie anderswo speichern und diese öffnen.</translation>
    </message>
    <message>
        <source>The folder of %1 does not lock files, as some network folders do not: have locks switched on there, or save a copy on a disk of this computer.</source>
        <translation>Der Ordner von %1 sperrt keine Dateien, wie manche Netzlaufwerke: dort Sperren einschalten lassen oder eine Kopie auf einem Datenträger dieses Rechners speichern.</translation>
    </message>
    <message>
        <source>The disk of %1 takes no file of this size: save a copy on another one.</source>
        <translation>Der Datenträger von %1 nimmt keine Datei dieser Größe auf: eine Kopie auf einem anderen speichern.</translation>
    </message>
    <message>
        <source>There is no room on the disk of %1: free some, then store again.</source>
        <translation>Auf dem Datenträger von %1 ist kein Platz: Platz schaffen, dann noch einmal speichern.</translation>
    </message>
    <message>
        <source>%1 is being written by another program: try again in a moment.</source>
        <translation>In %1 schreibt gerade ein anderes Programm: gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 may not be written: ask for the right to, or save a copy elsewhere.</source>
        <translation>In %1 darf nicht geschrieben werden: sich das Schreibrecht geben lassen oder eine Kopie anderswo speichern.</translation>
    </message>
    <message>
        <source>%1 cannot be opened: check that it exists and that it and its folder may be used.</source>
        <translation>%1 lässt sich nicht öffnen: prüfen, ob die Datei da ist und sie und ihr Ordner benutzt werden dürfen.</translation>
    </message>
    <message>
        <source>The disk of %1 does not answer as it should (%2): check it, then try again or save a copy elsewhere.</source>
        <translation>Der Datenträger von %1 antwortet nicht, wie er soll (%2): prüfen, dann noch einmal versuchen oder eine Kopie anderswo speichern.</translation>
    </message>
    <message>
        <source>There is not enough memory for %1: close other programs, then try again.</source>
        <translation>Für %1 reicht der Speicher nicht: andere Programme schließen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 would hold or holds something larger than a record may: the limit is 64 MiB.</source>
        <translation>%1 enthielte oder enthält etwas Größeres, als ein Protokoll darf: die Grenze ist 64 MiB.</translation>
    </message>
    <message>
        <source>%1 is not there: check its name, or whether its disk or share is connected.</source>
        <translation>%1 ist nicht da: den Namen prüfen und ob Datenträger oder Netzlaufwerk verbunden ist.</translation>
    </message>
    <message>
        <source>%1 may not be read: ask for the right to.</source>
        <translation>%1 darf nicht gelesen werden: sich das Leserecht geben lassen.</translation>
    </message>
    <message>
        <source>%1 does not answer (%2): check its disk or share.</source>
        <translation>%1 antwortet nicht (%2): Datenträger oder Netzlaufwerk prüfen.</translation>
    </message>
    <message>
        <source>struck by entry %1</source>
        <translation>gestrichen durch Eintrag %1</translation>
    </message>
    <message>
        <source>Seal over all entries: %1</source>
        <translation>Siegel über alle Einträge: %1</translation>
    </message>
    <message>
        <source>%1 mains of %2, %3 rods, %4 throws</source>
        <translation>%1 Hauptlager mit je %2 Schrauben, %3 Pleuel, %4 Kröpfungen</translation>
    </message>
    <message>
        <source>round %1 %2</source>
        <translation>Runde %1 %2</translation>
    </message>
    <message>
        <source>%1 at throw %2</source>
        <translation>%1 an Kröpfung %2</translation>
    </message>
    <message>
        <source>Say at which throw %1 was looked at: throws count from 1.</source>
        <translation>Angeben, an welcher Kröpfung %1 angesehen wurde: Kröpfungen zählen ab 1.</translation>
    </message>
    <message>
        <source>%1 is looked at once, not by throw: leave the throw out.</source>
        <translation>%1 wird einmal angesehen, nicht je Kröpfung: die Kröpfung weglassen.</translation>
    </message>
    <message>
        <source>%1 is a pass or a fail: no clearance is measured for it.</source>
        <translation>%1 ist „bestanden“ oder „nicht bestanden“: dafür wird kein Abstand gemessen.</translation>
    </message>
    <message>
        <source>Enter the clearance that was measured for %1.</source>
        <translation>Den Abstand eingeben, der für %1 gemessen wurde.</translation>
    </message>
    <message>
        <source>A clearance was entered with a pass or a fail for %1: enter it as measured, or leave it out.</source>
        <translation>Für %1 wurde ein Abstand zusammen mit „bestanden“ oder „nicht bestanden“ eingegeben: als gemessen eingeben oder weglassen.</translation>
    </message>
    <message>
        <source>A clearance of %1 for %2 is below zero: parts that touch are a fail.</source>
        <translation>Ein Abstand von %1 für %2 liegt unter null: Teile, die sich berühren, gelten als „nicht bestanden“.</translation>
    </message>
    <message>
        <source>The least clearance must be zero or more.</source>
        <translation>Der kleinste Abstand muss null oder mehr sein.</translation>
    </message>
    <message>
        <source>Make room for the dipstick, then try again.</source>
        <translation>Platz für den Ölmessstab schaffen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Bring the pickup tube clear of nuts and studs, then try again.</source>
        <translation>Das Ölansaugrohr von Muttern und Stehbolzen freimachen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Make room at that throw, then turn the crank through two full turns again.</source>
        <translation>An dieser Kröpfung Platz schaffen, dann die Kurbelwelle noch einmal zwei volle Umdrehungen drehen.</translation>
    </message>
    <message>
        <source>Find what binds before going on, then turn the crank through two full turns again.</source>
        <translation>Finden, was klemmt, bevor es weitergeht, dann die Kurbelwelle noch einmal zwei volle Umdrehungen drehen.</translation>
    </message>
    <message>
        <source>Find top dead centre again, and look at the keyway.</source>
        <translation>Den oberen Totpunkt noch einmal suchen und die Passfedernut ansehen.</translation>
    </message>
    <message>
        <source>The clearance is at the middle of the band: nothing to change.</source>
        <translation>Der Abstand liegt in der Mitte des Bandes: nichts zu ändern.</translation>
    </message>
    <message>
        <source>Raise the pickup by %1, or fit a gasket or plate thicker by as much: the clearance then is %2, the middle of the band.</source>
        <translation>Das Ölansaugrohr um %1 anheben oder Dichtung oder Platte um so viel dicker nehmen: der Abstand ist dann %2, die Mitte des Bandes.</translation>
    </message>
    <message>
        <source>Lower the pickup by %1, or fit a gasket or plate thinner by as much: the clearance then is %2, the middle of the band.</source>
        <translation>Das Ölansaugrohr um %1 absenken oder Dichtung oder Platte um so viel dünner nehmen: der Abstand ist dann %2, die Mitte des Bandes.</translation>
    </message>
    <message>
        <source>used on %1, before its calibration of %2</source>
        <translation>benutzt am %1, vor seiner Kalibrierung vom %2</translation>
    </message>
    <message>
        <source>calibration was due on %1</source>
        <translation>Kalibrierung war am %1 fällig</translation>
    </message>
    <message>
        <source>calibration was due after %1 cycles, and %2 were made</source>
        <translation>Kalibrierung war nach %1 Lastspielen fällig, %2 wurden gemacht</translation>
    </message>
    <message>
        <source>%1 is below the wrench&apos;s range (from %2, as marked on it)</source>
        <translation>%1 liegt unter dem Bereich des Schlüssels (ab %2, wie darauf angegeben)</translation>
    </message>
    <message>
        <source>%1 is below the wrench&apos;s range (from %2, 20 % of its largest value, ISO 6789)</source>
        <translation>%1 liegt unter dem Bereich des Schlüssels (ab %2, 20 % seines größten Werts, ISO 6789)</translation>
    </message>
    <message>
        <source>%1 is above the wrench&apos;s largest value (%2)</source>
        <translation>%1 liegt über dem größten Wert des Schlüssels (%2)</translation>
    </message>
    <message>
        <source>No round has been made yet.</source>
        <translation>Noch wurde keine Runde gemacht.</translation>
    </message>
    <message>
        <source>Movements per round: %1.</source>
        <translation>Bewegungen je Runde: %1.</translation>
    </message>
    <message>
        <source>One round shows no trend.</source>
        <translation>Eine Runde zeigt keinen Verlauf.</translation>
    </message>
    <message>
        <source>Nothing moved.</source>
        <translation>Nichts drehte sich weiter.</translation>
    </message>
    <message>
        <source>They are getting fewer.</source>
        <translation>Sie klingen ab.</translation>
    </message>
    <message>
        <source>They are not getting fewer.</source>
        <translation>Sie klingen nicht ab.</translation>
    </message>
    <message>
        <source>There is no standard thread %1; if it is really that, write %2.</source>
        <translation>Es gibt kein genormtes Gewinde %1; wenn es wirklich so ist, %2 schreiben.</translation>
    </message>
    <message>
        <source>There is no standard thread %1: %2; if it is really that, write %3.</source>
        <translation>Es gibt kein genormtes Gewinde %1: %2; wenn es wirklich so ist, %3 schreiben.</translation>
    </message>
    <message>
        <source>The standard uncertainty of “%1” must be a number of 0 or more.</source>
        <translation>Die Standardunsicherheit von „%1“ muss eine Zahl ab 0 sein.</translation>
    </message>
    <message>
        <source>The sensitivity of “%1” must be a number.</source>
        <translation>Der Empfindlichkeitskoeffizient von „%1“ muss eine Zahl sein.</translation>
    </message>
    <message>
        <source>The degrees of freedom of “%1” must be above 0.</source>
        <translation>Die Freiheitsgrade von „%1“ müssen über 0 liegen.</translation>
    </message>
    <message>
        <source>%1 reading</source>
        <translation>%1 Ablesung</translation>
    </message>
    <message>
        <source>%1 readings</source>
        <translation>%1 Ablesungen</translation>
    </message>
    <message>
        <source>%1, %2 within %3.</source>
        <translation>%1, %2 innerhalb %3.</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <translation>%1, %2.</translation>
    </message>
    <message>
        <source>%1 is an outlier; the other readings outvote it.</source>
        <translation>%1 weicht ab und ist überstimmt.</translation>
    </message>
    <message>
        <source>%1 of at least %2: read another pass.</source>
        <translation>%1 von mindestens %2: noch einen Durchgang messen.</translation>
    </message>
    <message>
        <source>The readings differ by %1, more than the repeat limit of %2 allows; %3 is the odd one: read another pass.</source>
        <translation>Die Ablesungen liegen um %1 auseinander, mehr als die Wiederholgrenze von %2 erlaubt; %3 ist der Ausreißer: noch einen Durchgang messen.</translation>
    </message>
    <message>
        <source>The readings differ by %1, more than the repeat limit of %2 allows: read another pass.</source>
        <translation>Die Ablesungen liegen um %1 auseinander, mehr als die Wiederholgrenze von %2 erlaubt: noch einen Durchgang messen.</translation>
    </message>
    <message>
        <source>“%1” has no reading: measure it first.</source>
        <translation>„%1“ hat keine Ablesung: zuerst messen.</translation>
    </message>
    <message>
        <source>The limit of error for “%1” is below zero: enter it as a half-width, without sign.</source>
        <translation>Die Fehlergrenze für „%1“ liegt unter null: als halbe Breite ohne Vorzeichen eingeben.</translation>
    </message>
    <message>
        <source>A write to %1 was cut off while it was open here: open it again, so that the write is taken back.</source>
        <translation>Ein Schreiben in %1 wurde abgebrochen, während die Datei hier offen war: noch einmal öffnen, damit es zurückgenommen wird.</translation>
    </message>
    <message>
        <source>%1 takes longer to read than a record does, and was not read to its end: nothing is said of it. It was not changed; try again, or look for a copy of it.</source>
        <translation>%1 zu lesen dauert länger als bei einem Protokoll und wurde nicht zu Ende gebracht: Über die Datei wird nichts gesagt. Sie wurde nicht geändert; noch einmal versuchen oder eine Kopie suchen.</translation>
    </message>
    <message>
        <source>%1 is a folder: name a file in it.</source>
        <translation>%1 ist ein Ordner: eine Datei darin nennen.</translation>
    </message>
    <message>
        <source>%1 cannot be read (%2): check the path.</source>
        <translation>%1 kann nicht gelesen werden (%2): den Pfad prüfen.</translation>
    </message>
    <message>
        <source>There is no engine layout yet, and no band to judge by: set them first.</source>
        <translation>Es gibt noch keine Motorbauform und kein Band, nach dem geurteilt wird: beides zuerst festlegen.</translation>
    </message>
    <message>
        <source>Entry %1 (“%2”, by %3) was not allowed when it was made, by the rules of Caprail %4: %5</source>
        <translation>Eintrag %1 („%2“, von %3) war nach den Regeln von Caprail %4 nicht erlaubt, als er gemacht wurde: %5</translation>
    </message>
    <message>
        <source>The closing step “%1” in entry %2, by %3, was never valid: %4</source>
        <translation>Der Schließschritt „%1“ in Eintrag %2, von %3, war nie gültig: %4</translation>
    </message>
    <message>
        <source>The sign-off in entry %1, by %2, was never valid: %3</source>
        <translation>Das Abzeichnen in Eintrag %1, von %2, war nie gültig: %3</translation>
    </message>
    <message>
        <source>Salvaged</source>
        <translation>Gerettet</translation>
    </message>
    <message>
        <source>Entry %1: salvaged on %2 from %3 (%4 bytes, SHA-256 %5), whose last readable seal was %6.</source>
        <translation>Eintrag %1: am %2 gerettet aus %3 (%4 Bytes, SHA-256 %5); letztes lesbares Siegel darin: %6.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keines</translation>
    </message>
    <message>
        <source>Every entry that was found matched its seal.</source>
        <translation>Jeder gefundene Eintrag passte zu seinem Siegel.</translation>
    </message>
    <message>
        <source>Kept though its seal did not fit: %1.</source>
        <translation>Behalten, obwohl das Siegel nicht passte: %1.</translation>
    </message>
    <message>
        <source>Lost: %1.</source>
        <translation>Verloren: %1.</translation>
    </message>
    <message>
        <source>The text at byte %1 holds %2, which is not a character: type it again.</source>
        <translation>Der Text bei Byte %1 enthält %2, das kein Zeichen ist: neu tippen.</translation>
    </message>
    <message>
        <source>%1 is damaged (%2): salvage what can be read into a new file (caprail salvage FILE OUT).</source>
        <translation>%1 ist beschädigt (%2): was lesbar ist, in eine neue Datei retten (caprail salvage DATEI NEU).</translation>
    </message>
    <message>
        <source>%1 (build %2)</source>
        <translation>%1 (Aufbau %2)</translation>
    </message>
    <message>
        <source>✓ %1: all held</source>
        <translation>✓ %1: alle hielten</translation>
    </message>
    <message>
        <source>✕ %1: %2 moved</source>
        <translation>✕ %1: %2 weitergedreht</translation>
    </message>
    <message>
        <source>↻ %1: no longer counts</source>
        <translation>↻ %1: zählt nicht mehr</translation>
    </message>
    <message>
        <source>%1 (future)</source>
        <translation>%1 (Zukunft)</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation>%1 überfällig</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Verify round</source>
        <translation>Prüfrunde</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Außerhalb</translation>
    </message>
    <message>
        <source>Stale</source>
        <translation>Veraltet</translation>
    </message>
    <message>
        <source>Last entry</source>
        <translation>Letzter Eintrag</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Calibration due</source>
        <translation>Kalibrierung fällig</translation>
    </message>
    <message>
        <source>%1: its band is not set</source>
        <translation>%1: das Band ist nicht festgelegt</translation>
    </message>
    <message>
        <source>%1: its journal is not measured</source>
        <translation>%1: der Zapfen ist nicht gemessen</translation>
    </message>
    <message>
        <source>%1: its housing is not measured</source>
        <translation>%1: die Gehäusebohrung ist nicht gemessen</translation>
    </message>
    <message>
        <source>Read the bore at station %1 too, as the journal was.</source>
        <translation>Auch die Bohrung an Messebene %1 messen, wie den Zapfen.</translation>
    </message>
    <message>
        <source>the engine layout was set again</source>
        <translation>die Motorbauform wurde neu festgelegt</translation>
    </message>
    <message>
        <source>the band “%1” was set to %2</source>
        <translation>das Band „%1“ wurde auf %2 festgelegt</translation>
    </message>
    <message>
        <source>what is specified for the %1 fasteners was changed</source>
        <translation>die Vorgaben der Schraubengruppe „%1“ wurden geändert</translation>
    </message>
    <message>
        <source>other shells were fitted in %1</source>
        <translation>in %1 wurden andere Schalen eingebaut</translation>
    </message>
    <message>
        <source>the %1 was changed</source>
        <translation>gewechselt wurde: %1</translation>
    </message>
    <message>
        <source>the %1 at %2 was changed</source>
        <translation>gewechselt wurde: %1 an %2</translation>
    </message>
    <message>
        <source>%1 was tightened to another value</source>
        <translation>%1 wurde auf einen anderen Wert angezogen</translation>
    </message>
    <message>
        <source>%1 was tightened</source>
        <translation>%1 wurde angezogen</translation>
    </message>
    <message>
        <source>%1 was loosened</source>
        <translation>%1 wurde gelöst</translation>
    </message>
    <message>
        <source>%1 moved %2 in verify round %3</source>
        <translation>%1 drehte sich in Prüfrunde %3 um %2 weiter</translation>
    </message>
    <message>
        <source>%1 moved in verify round %2</source>
        <translation>%1 drehte sich in Prüfrunde %2 weiter</translation>
    </message>
    <message>
        <source>the crank was laid in again</source>
        <translation>die Kurbelwelle wurde wieder eingelegt</translation>
    </message>
    <message>
        <source>the crank was lifted out</source>
        <translation>die Kurbelwelle wurde herausgehoben</translation>
    </message>
    <message>
        <source>the gap at %1 was measured again</source>
        <translation>das Spaltmaß an %1 wurde noch einmal gemessen</translation>
    </message>
    <message>
        <source>shim %1 was measured</source>
        <translation>Distanzscheibe %1 wurde gemessen</translation>
    </message>
    <message>
        <source>the stack at %1 was built again</source>
        <translation>der Stapel an %1 wurde neu aufgebaut</translation>
    </message>
    <message>
        <source>the stack at %1 was taken apart</source>
        <translation>der Stapel an %1 wurde zerlegt</translation>
    </message>
    <message>
        <source>the stack at %1 was on when it began</source>
        <translation>der Stapel an %1 lag auf, als sie begann</translation>
    </message>
    <message>
        <source>the stack at %1 was laid on before the round was complete</source>
        <translation>der Stapel an %1 wurde aufgelegt, bevor die Runde vollständig war</translation>
    </message>
    <message>
        <source>the girdle was turned round</source>
        <translation>die Platte wurde andersherum aufgelegt</translation>
    </message>
    <message>
        <source>the girdle was trial-fitted after the round began</source>
        <translation>die Probemontage der Platte kam nach dem Beginn der Runde</translation>
    </message>
    <message>
        <source>What was known of %1 was corrected, for earlier readings too: %2.</source>
        <translation>Was über %1 bekannt war, wurde berichtigt, auch für frühere Ablesungen: %2.</translation>
    </message>
    <message>
        <source>“%1” was accepted again after a change: %2.</source>
        <translation>„%1“ wurde nach einer Änderung wieder angenommen: %2.</translation>
    </message>
    <message>
        <source>A value outside what is plausible was insisted on.</source>
        <translation>Auf einem Wert außerhalb des Glaubhaften wurde bestanden.</translation>
    </message>
    <message>
        <source>Residual %1, by the bracketed recheck.</source>
        <translation>Restmaß %1, durch die eingegrenzte Nachprüfung.</translation>
    </message>
    <message>
        <source>Residual %1, by a feel that was tried.</source>
        <translation>Restmaß %1, durch ein geprüftes Gefühl.</translation>
    </message>
    <message>
        <source>Residual %1.</source>
        <translation>Restmaß %1.</translation>
    </message>
    <message>
        <source>It drags.</source>
        <translation>Es saugt.</translation>
    </message>
    <message>
        <source>Thicker: %1.</source>
        <translation>Dicker: %1.</translation>
    </message>
    <message>
        <source>Thinner: %1.</source>
        <translation>Dünner: %1.</translation>
    </message>
    <message>
        <source>%1 to %2, mean %3 over %4 stations.</source>
        <translation>%1 bis %2, Mittel %3 über %4 Messebenen.</translation>
    </message>
    <message>
        <source>journal taper</source>
        <translation>Konizität der Zapfen</translation>
    </message>
    <message>
        <source>journal out-of-round</source>
        <translation>Unrundheit der Zapfen</translation>
    </message>
    <message>
        <source>Crank laid in</source>
        <translation>Kurbelwelle eingelegt</translation>
    </message>
    <message>
        <source>Study of the feel begun</source>
        <translation>Prüfung des Gefühls begonnen</translation>
    </message>
    <message>
        <source>Felt</source>
        <translation>Gefühlt</translation>
    </message>
    <message>
        <source>The gauge takes %1 % of the band: good.</source>
        <translation>Das Messmittel verbraucht %1 % des Bandes: gut.</translation>
    </message>
    <message>
        <source>The gauge takes %1 % of the band: it may do.</source>
        <translation>Das Messmittel verbraucht %1 % des Bandes: es mag genügen.</translation>
    </message>
    <message>
        <source>The gauge takes %1 % of the band: it cannot tell good from bad.</source>
        <translation>Das Messmittel verbraucht %1 % des Bandes: es kann Gut und Schlecht nicht unterscheiden.</translation>
    </message>
    <message>
        <source>a reading</source>
        <translation>eine Ablesung</translation>
    </message>
    <message>
        <source>how well readings of “%1” repeat</source>
        <translation>wie gut sich Ablesungen von „%1“ wiederholen</translation>
    </message>
    <message>
        <source>the instrument that read “%1”</source>
        <translation>das Messmittel, mit dem „%1“ gemessen wurde</translation>
    </message>
    <message>
        <source>the limit of error of %1</source>
        <translation>die Fehlergrenze von %1</translation>
    </message>
    <message>
        <source>the straightedge and its flatness</source>
        <translation>das Haarlineal und seine Ebenheit</translation>
    </message>
    <message>
        <source>Measure it.</source>
        <translation>Messen.</translation>
    </message>
    <message>
        <source>Read “%1” once more at one place: nobody knows how well it repeats.</source>
        <translation>„%1“ an einer Stelle noch einmal messen: niemand weiß, wie gut es sich wiederholt.</translation>
    </message>
    <message>
        <source>Say with which instrument “%1” was read: read it again with the instrument named.</source>
        <translation>Sagen, mit welchem Messmittel „%1“ gemessen wurde: noch einmal messen und das Messmittel nennen.</translation>
    </message>
    <message>
        <source>Enter the limit of error of %1 with what it corrects, so that it counts for readings made before.</source>
        <translation>Die Fehlergrenze von %1 eingeben, mit dem, was sie berichtigt, damit sie für frühere Ablesungen zählt.</translation>
    </message>
    <message>
        <source>± not known</source>
        <translation>± nicht bekannt</translation>
    </message>
    <message>
        <source>The largest term is “%1”: with a limit of ± %2 there it would do.</source>
        <translation>Der größte Beitrag ist „%1“: mit einer Fehlergrenze von ± %2 dort würde es genügen.</translation>
    </message>
    <message>
        <source>The largest term is “%1”: %2 readings would do.</source>
        <translation>Der größte Beitrag ist „%1“: %2 Ablesungen würden genügen.</translation>
    </message>
    <message>
        <source>The largest term is “%1”, and it alone is not enough: another way to measure is needed.</source>
        <translation>Der größte Beitrag ist „%1“, und er allein genügt nicht: es muss anders gemessen werden.</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>Fastener groups at torque</source>
        <translation>Schraubengruppen auf Drehmoment</translation>
    </message>
    <message>
        <source>Main bearing clearances</source>
        <translation>Hauptlagerspiele</translation>
    </message>
    <message>
        <source>Rod bearing clearances</source>
        <translation>Pleuellagerspiele</translation>
    </message>
    <message>
        <source>Taper of journals</source>
        <translation>Konizität der Zapfen</translation>
    </message>
    <message>
        <source>Out-of-round of journals</source>
        <translation>Unrundheit der Zapfen</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Passungen</translation>
    </message>
    <message>
        <source>Gaps</source>
        <translation>Spaltmaße</translation>
    </message>
    <message>
        <source>Shim stacks</source>
        <translation>Stapel von Distanzscheiben</translation>
    </message>
    <message>
        <source>Rechecks</source>
        <translation>Nachprüfungen</translation>
    </message>
    <message>
        <source>Flushness</source>
        <translation>Bündigkeit</translation>
    </message>
    <message>
        <source>Pickup clearance</source>
        <translation>Ansaugabstand</translation>
    </message>
    <message>
        <source>Torques verified</source>
        <translation>Drehmomente geprüft</translation>
    </message>
    <message>
        <source>Findings settled</source>
        <translation>Befunde erledigt</translation>
    </message>
    <message>
        <source>the washer at %1 was %2</source>
        <translation>die Unterlegscheibe an %1 wurde %2</translation>
    </message>
    <message>
        <source>%1 of %2 verified</source>
        <translation>%1 von %2 geprüft</translation>
    </message>
    <message>
        <source>The nut of this side did not turn.</source>
        <translation>Die Mutter dieser Seite hat sich nicht gedreht.</translation>
    </message>
    <message>
        <source>It can have grown by %1 at most, likely by %2, by the stiffness of this joint.</source>
        <translation>Es kann um höchstens %1 gewachsen sein, wahrscheinlich um %2, nach der Steifigkeit dieser Verbindung.</translation>
    </message>
    <message>
        <source>It can have grown by %1 at most, likely by %2, as is usual for such joints.</source>
        <translation>Es kann um höchstens %1 gewachsen sein, wahrscheinlich um %2, wie bei solchen Verbindungen üblich.</translation>
    </message>
    <message>
        <source>The fastener clamps by %1 more.</source>
        <translation>Die Schraube klemmt um %1 stärker.</translation>
    </message>
    <message>
        <source>The gap is known to %1 only: a new reading cannot tell whether it grew.</source>
        <translation>Das Spaltmaß ist nur auf %1 bekannt: Eine neue Messung kann nicht zeigen, ob es gewachsen ist.</translation>
    </message>
    <message>
        <source>The gap is known to %1: a new reading can tell.</source>
        <translation>Das Spaltmaß ist auf %1 bekannt: Eine neue Messung kann es zeigen.</translation>
    </message>
    <message>
        <source>by pulling it to its torque</source>
        <translation>durch Nachziehen auf sein Drehmoment</translation>
    </message>
    <message>
        <source>by its length: it must not be pulled</source>
        <translation>an der Länge: Nachgezogen werden darf sie nicht</translation>
    </message>
    <message>
        <source>by its witness mark: it must not be pulled</source>
        <translation>an der Markierung: Nachgezogen werden darf sie nicht</translation>
    </message>
    <message>
        <source>Clean; turn the washer, turn it over, look for a burr; measure the shims; read the gap again; change the stack: in this order.</source>
        <translation>Reinigen; die Scheibe drehen, wenden, nach einem Grat sehen; die Distanzscheiben messen; das Spaltmaß neu messen; den Stapel ändern: in dieser Reihenfolge.</translation>
    </message>
    <message>
        <source>Clamp checked</source>
        <translation>Klemmkraft geprüft</translation>
    </message>
    <message>
        <source>Washer</source>
        <translation>Unterlegscheibe</translation>
    </message>
    <message>
        <source>○ %1: %2 verified</source>
        <translation>○ %1: %2 geprüft</translation>
    </message>
    <message>
        <source>throw %1 was looked at again after a change there</source>
        <translation>Kröpfung %1 wurde nach einer Änderung dort noch einmal angesehen</translation>
    </message>
    <message>
        <source>what the check “%1” asks was changed</source>
        <translation>was die Prüfung „%1“ fragt, wurde geändert</translation>
    </message>
    <message>
        <source>Turning torque</source>
        <translation>Durchdrehmoment</translation>
    </message>
    <message>
        <source>The shop&apos;s own checks</source>
        <translation>Eigene Prüfungen der Werkstatt</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>%1, place %2</source>
        <translation>%1, Stelle %2</translation>
    </message>
    <message>
        <source>With the girdle off, turn the crank by its bolt: read what starts it and what keeps it turning.</source>
        <translation>Bei abgenommener Platte die Kurbelwelle an ihrer Schraube drehen: ablesen, was sie losbricht und was sie weiterdreht.</translation>
    </message>
    <message>
        <source>Turn the crank by its bolt through two full turns: read what starts it and what keeps it turning.</source>
        <translation>Die Kurbelwelle an ihrer Schraube zwei volle Umdrehungen drehen: ablesen, was sie losbricht und was sie weiterdreht.</translation>
    </message>
    <message>
        <source>Own check set</source>
        <translation>Eigene Prüfung festgelegt</translation>
    </message>
    <message>
        <source>Own check</source>
        <translation>Eigene Prüfung</translation>
    </message>
    <message>
        <source>p %1 %, C over 99</source>
        <translation>p %1 %, C über 99</translation>
    </message>
    <message>
        <source>p %1 %, C %2</source>
        <translation>p %1 %, C %2</translation>
    </message>
    <message>
        <source>Say which straightedge it was, with its flatness at the engine station, and read it again.</source>
        <translation>Angeben, welches Haarlineal es war, mit seiner Ebenheit an der Station Motor, und noch einmal messen.</translation>
    </message>
    <message>
        <source>The free shims hold no exchange that is larger and still within the band: build the stack nearer to the middle, or measure more shims of the kit.</source>
        <translation>Die freien Distanzscheiben geben keinen Tausch her, der größer ist und noch im Band liegt: den Stapel näher an der Mitte aufbauen, oder weitere Distanzscheiben des Satzes messen.</translation>
    </message>
    <message>
        <source>The free shims hold no exchange for it: measure more shims of the kit, or add some.</source>
        <translation>Die freien Distanzscheiben geben dafür keinen Tausch her: weitere des Satzes messen, oder welche hinzufügen.</translation>
    </message>
    <message>
        <source>With this exchange the bracket proves less than the band: straightedge and micrometer take too much of it, or the kit&apos;s shims lie too far apart.</source>
        <translation>Mit diesem Tausch belegt die Eingrenzung weniger als das Band: Haarlineal und Messschraube verbrauchen zu viel davon, oder die Distanzscheiben des Satzes liegen zu weit auseinander.</translation>
    </message>
    <message>
        <source>It was loose with the thicker stack, which cannot be: clean, look for a burr, and begin again.</source>
        <translation>Mit dem dickeren Stapel war es lose, was nicht sein kann: reinigen, nach einem Grat sehen und neu beginnen.</translation>
    </message>
    <message>
        <source>It rocked with the thinner stack, which cannot be: clean, look for a burr, and begin again.</source>
        <translation>Mit dem dünneren Stapel kippelte es, was nicht sein kann: reinigen, nach einem Grat sehen und neu beginnen.</translation>
    </message>
    <message>
        <source>The signature in entry %1, in the name of %2, does not hold: %3</source>
        <translation>Die Signatur in Eintrag %1, im Namen von %2, gilt nicht: %3</translation>
    </message>
    <message>
        <source>Signed by %1 in entry %2: all entries before it, and none was added since.</source>
        <translation>Signiert von %1 in Eintrag %2: alle Einträge davor, und seitdem kam keiner hinzu.</translation>
    </message>
    <message>
        <source>Signed by %1 in entry %2, up to entry %3; what was added since is not signed.</source>
        <translation>Signiert von %1 in Eintrag %2, bis Eintrag %3; was seitdem hinzukam, ist nicht signiert.</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Signiert</translation>
    </message>
    <message>
        <source>Build record: %1, build %2</source>
        <translation>Aufbauprotokoll: %1, Aufbau %2</translation>
    </message>
    <message>
        <source>engine not described</source>
        <translation>Motor nicht beschrieben</translation>
    </message>
    <message>
        <source>For %1</source>
        <translation>Für %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Von %1</translation>
    </message>
    <message>
        <source>This build was closed and signed off by %1 on %2.</source>
        <translation>Dieser Aufbau wurde geschlossen und am %2 von %1 abgezeichnet.</translation>
    </message>
    <message>
        <source>NOT FINISHED: this build is not signed off. Do not run the engine on the strength of this record.</source>
        <translation>NICHT FERTIG: dieser Aufbau ist nicht abgezeichnet. Den Motor auf dieses Protokoll hin nicht in Betrieb nehmen.</translation>
    </message>
    <message>
        <source>What is in this folder</source>
        <translation>Was in diesem Ordner liegt</translation>
    </message>
    <message>
        <source>The build sheet, to read and to print: what was built, measured and verified, and how it stands.</source>
        <translation>Das Aufbaublatt, zum Lesen und zum Drucken: was gebaut, gemessen und geprüft wurde und wie es steht.</translation>
    </message>
    <message>
        <source>Everything that was entered while the engine was built, a line each, in order. What was taken back stays in it, marked.</source>
        <translation>Alles, was beim Aufbau des Motors eingetragen wurde, je eine Zeile, der Reihe nach. Was zurückgenommen wurde, bleibt darin stehen, gekennzeichnet.</translation>
    </message>
    <message>
        <source>The same for another program, with the seal of each entry. Caprail makes the record again from it: caprail import ledger.jsonl NEW.caprail</source>
        <translation>Dasselbe für ein anderes Programm, mit dem Siegel jedes Eintrags. Caprail macht daraus wieder das Protokoll: caprail import ledger.jsonl NEU.caprail</translation>
    </message>
    <message>
        <source>The photos; the number in front of each name is that of its entry.</source>
        <translation>Die Fotos; die Nummer vor jedem Namen ist die seines Eintrags.</translation>
    </message>
    <message>
        <source>Tables for a spreadsheet. dictionary.csv tells what each column is and in which unit.</source>
        <translation>Tabellen für eine Tabellenkalkulation. dictionary.csv sagt (auf Englisch), was jede Spalte ist und in welcher Einheit.</translation>
    </message>
    <message>
        <source>The shop&apos;s signature, its public key, and the few lines that are signed.</source>
        <translation>Die Signatur der Werkstatt, ihr öffentlicher Schlüssel und die wenigen Zeilen, die signiert sind.</translation>
    </message>
    <message>
        <source>A check sum of every file here.</source>
        <translation>Eine Prüfsumme jeder Datei hier.</translation>
    </message>
    <message>
        <source>How to see that nothing was altered, without Caprail</source>
        <translation>Wie man ohne Caprail sieht, dass nichts verändert wurde</translation>
    </message>
    <message>
        <source>The files. In this folder, type (Linux; on a Mac: shasum -a 256 -c SHA256SUMS; on Windows compare by eye what certutil -hashfile NAME SHA256 prints):</source>
        <translation>Die Dateien. In diesem Ordner eingeben (Linux; auf dem Mac: shasum -a 256 -c SHA256SUMS; unter Windows mit dem Auge vergleichen, was certutil -hashfile NAME SHA256 ausgibt):</translation>
    </message>
    <message>
        <source>The seal. The last line of ledger.jsonl ends with the seal of the whole record. It begins with the twenty digits that stand at the foot of every page of the printed sheet: %1</source>
        <translation>Das Siegel. Die letzte Zeile von ledger.jsonl endet mit dem Siegel des ganzen Protokolls. Es beginnt mit den zwanzig Ziffern, die am Fuß jeder Seite des gedruckten Blatts stehen: %1</translation>
    </message>
    <message>
        <source>The chain. Each seal is the SHA-256 of the 32 bytes of the seal before (zeros before the first) and of the entry&apos;s line without its seal. These lines of Python go through all of them and print the last:</source>
        <translation>Die Kette. Jedes Siegel ist das SHA-256 der 32 Bytes des Siegels davor (Nullen vor dem ersten) und der Zeile des Eintrags ohne ihr Siegel. Diese Zeilen Python gehen alle durch und geben das letzte aus:</translation>
    </message>
    <message>
        <source>This record is not signed with a key: nothing in it shows who made it.</source>
        <translation>Dieses Protokoll ist mit keinem Schlüssel signiert: nichts darin zeigt, wer es gemacht hat.</translation>
    </message>
    <message>
        <source>says whether the signature is good. Then look whether the statement names the seal of line %1 of ledger.jsonl, and whether the key is the shop&apos;s: its fingerprint, which the shop tells you by another way than with this folder, is the first 32 digits that this prints:</source>
        <translation>sagt, ob die Signatur gut ist. Dann nachsehen, ob die Erklärung das Siegel von Zeile %1 von ledger.jsonl nennt, und ob der Schlüssel der der Werkstatt ist: sein Fingerabdruck, den die Werkstatt auf anderem Weg als mit diesem Ordner mitteilt, sind die ersten 32 Ziffern, die dies ausgibt:</translation>
    </message>
    <message>
        <source>What this proves, and what not</source>
        <translation>Was das beweist und was nicht</translation>
    </message>
    <message>
        <source>If the seal is the one on a sheet that you kept apart from these files, no entry and no photo was altered, removed, put in or put in another order since that sheet was printed.</source>
        <translation>Ist das Siegel dasselbe wie auf einem Blatt, das getrennt von diesen Dateien aufbewahrt wurde, so wurde seit dem Druck dieses Blatts kein Eintrag und kein Foto verändert, entfernt, eingefügt oder umgestellt.</translation>
    </message>
    <message>
        <source>A signature shows that whoever has the shop&apos;s secret key signed exactly these entries. It does not show when: the times are those of the shop&apos;s own clock.</source>
        <translation>Eine Signatur zeigt, dass genau diese Einträge von jemandem signiert wurden, der den geheimen Schlüssel der Werkstatt hat. Sie zeigt nicht wann: die Zeiten sind die der eigenen Uhr der Werkstatt.</translation>
    </message>
    <message>
        <source>Neither proves that what was entered is true. A whole record can be written anew, with seals of its own; only the sheet in your hands, or a fingerprint that you had before, tells then.</source>
        <translation>Keines von beiden beweist, dass das Eingetragene wahr ist. Ein ganzes Protokoll lässt sich neu schreiben, mit eigenen Siegeln; dann zeigt es nur das Blatt in Ihren Händen oder ein Fingerabdruck, den Sie vorher hatten.</translation>
    </message>
    <message>
        <source>The key file %1 cannot be looked at: %2.</source>
        <translation>Die Schlüsseldatei %1 ist nicht zugänglich: %2.</translation>
    </message>
    <message>
        <source>The key file %1 can be read by others, who may have copied it: make it yours alone (chmod 600), or make a new key.</source>
        <translation>Die Schlüsseldatei %1 ist für andere lesbar, die sie kopiert haben können: sie für sich allein machen (chmod 600) oder einen neuen Schlüssel anlegen.</translation>
    </message>
    <message>
        <source>This is not the text of a signing key, or it was changed: use a copy of it.</source>
        <translation>Das ist nicht der Text eines Signaturschlüssels, oder er wurde verändert: eine Kopie davon nehmen.</translation>
    </message>
    <message>
        <source>%1 minute</source>
        <translation>%1 Minute</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 Minuten</translation>
    </message>
    <message>
        <source>%1 hour</source>
        <translation>%1 Stunde</translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation>%1 Stunden</translation>
    </message>
    <message>
        <source>%1 day</source>
        <translation>%1 Tag</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>The limits of “%1” were widened from %2 to %3 after the reading of entry %4</source>
        <translation>Die Grenzen von „%1“ wurden nach der Ablesung von Eintrag %4 von %2 auf %3 erweitert</translation>
    </message>
    <message>
        <source>The limits of “%1” were narrowed from %2 to %3 after the reading of entry %4</source>
        <translation>Die Grenzen von „%1“ wurden nach der Ablesung von Eintrag %4 von %2 auf %3 verengt</translation>
    </message>
    <message>
        <source>The rules of judging were changed after the reading of entry %1</source>
        <translation>Die Regeln des Urteilens wurden nach der Ablesung von Eintrag %1 geändert</translation>
    </message>
    <message>
        <source>What is specified for the %1 fasteners was changed from %2 to %3 after they were tightened (entry %4)</source>
        <translation>Die Vorgabe für die Verschraubungen „%1“ wurde von %2 auf %3 geändert, nachdem sie angezogen waren (Eintrag %4)</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>What is specified for the %1 fasteners was changed after they were tightened (entry %2)</source>
        <translation>Die Vorgabe für die Verschraubungen „%1“ wurde geändert, nachdem sie angezogen waren (Eintrag %2)</translation>
    </message>
    <message>
        <source>What the check “%1” asks was changed after its answer of entry %2</source>
        <translation>Was die Prüfung „%1“ fragt, wurde nach der Antwort von Eintrag %2 geändert</translation>
    </message>
    <message>
        <source>Changed or worked on after the reading of entry %1: %2</source>
        <translation>Nach der Ablesung von Eintrag %1 gewechselt oder bearbeitet: %2</translation>
    </message>
    <message>
        <source>The washer at %1 was %2 after the reading of entry %3</source>
        <translation>Die Unterlegscheibe an %1 wurde nach der Ablesung von Eintrag %3 %2</translation>
    </message>
    <message>
        <source>Other shells were fitted in %1 after the reading of entry %2</source>
        <translation>In %1 wurden nach der Ablesung von Eintrag %2 andere Schalen eingebaut</translation>
    </message>
    <message>
        <source>Loosened after entry %1 rested on it: %2</source>
        <translation>Gelöst, nachdem Eintrag %1 darauf beruhte: %2</translation>
    </message>
    <message>
        <source>In verify round %1, %2 moved %3.</source>
        <translation>In Prüfrunde %1 bewegte sich %2 um %3.</translation>
    </message>
    <message>
        <source>In verify round %1, %2 moved.</source>
        <translation>In Prüfrunde %1 bewegte sich %2.</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>einem Text</translation>
    </message>
    <message>
        <source>%1 entry came in without a seal, from %2.</source>
        <translation>%1 Eintrag kam ohne Siegel herein, aus %2.</translation>
    </message>
    <message>
        <source>%1 entries came in without seals, from %2.</source>
        <translation>%1 Einträge kamen ohne Siegel herein, aus %2.</translation>
    </message>
    <message>
        <source>“%1” (entry %2, by %3) was struck: %4.</source>
        <translation>„%1“ (Eintrag %2, von %3) wurde gestrichen: %4.</translation>
    </message>
    <message>
        <source>Entered again by %1, %2 later, as “%3” (entry %4).</source>
        <translation>Neu eingetragen von %1, %2 später, als „%3“ (Eintrag %4).</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 von %2 auf %3</translation>
    </message>
    <message>
        <source>a second person verifies</source>
        <translation>eine zweite Person prüft nach</translation>
    </message>
    <message>
        <source>a second person signs off</source>
        <translation>eine zweite Person zeichnet ab</translation>
    </message>
    <message>
        <source>stretch %1</source>
        <translation>Längung %1</translation>
    </message>
    <message>
        <source>%1 value of %2 was confirmed by nobody: it is common practice, and the part maker&apos;s own figure comes first.</source>
        <translation>%1 Wert von %2 hat niemand bestätigt: er ist gängige Praxis, und die Angabe des Teileherstellers geht vor.</translation>
    </message>
    <message>
        <source>%1 values of %2 were confirmed by nobody: they are common practice, and the part makers&apos; own figures come first.</source>
        <translation>%1 Werte von %2 hat niemand bestätigt: sie sind gängige Praxis, und die Angaben der Teilehersteller gehen vor.</translation>
    </message>
    <message>
        <source>Part entered</source>
        <translation>Teil eingetragen</translation>
    </message>
    <message>
        <source>Zero checked</source>
        <translation>Nullpunkt geprüft</translation>
    </message>
    <message>
        <source>Value confirmed</source>
        <translation>Wert bestätigt</translation>
    </message>
    <message>
        <source>Brought in without seals</source>
        <translation>Ohne Siegel hereingekommen</translation>
    </message>
    <message>
        <source>limits %1</source>
        <translation>Grenzen %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>Charge %1</translation>
    </message>
    <message>
        <source>Nothing was changed after something had been judged by it.</source>
        <translation>Es wurde nichts geändert, wonach schon etwas beurteilt war.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Changed after something had been judged by it: %1.</source>
        <translation>Geändert, nachdem schon danach beurteilt war: %1.</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>Seriennummer %1</translation>
    </message>
    <message>
        <source>stamped %1</source>
        <translation>Prägung %1</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>used</source>
        <translation>gebraucht</translation>
    </message>
    <message>
        <source>%1 sitting, %2 hours</source>
        <translation>%1 Sitzung, %2 Stunden</translation>
    </message>
    <message>
        <source>%1 sittings, %2 hours in all</source>
        <translation>%1 Sitzungen, zusammen %2 Stunden</translation>
    </message>
    <message>
        <source>no shim</source>
        <translation>keine Distanzscheibe</translation>
    </message>
    <message>
        <source>is loose</source>
        <translation>ist lose</translation>
    </message>
    <message>
        <source>%1, %2 ring</source>
        <translation>%1, %2er Ring</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>%1 is not a build record, although it is named like one: look for a copy of it.</source>
        <translation>%1 ist kein Aufbauprotokoll, obwohl der Name so aussieht: nach einer Kopie davon suchen.</translation>
    </message>
    <message>
        <source>%1 is not a build record: choose a file that ends in .caprail.</source>
        <translation>%1 ist kein Aufbauprotokoll: eine Datei wählen, die auf .caprail endet.</translation>
    </message>
    <message>
        <source>0.0575 or 57.5 thou</source>
        <translation>0.0575 oder 57.5 thou</translation>
    </message>
    <message>
        <source>this engine</source>
        <translation>dieser Motor</translation>
    </message>
    <message>
        <source>%1 by less than its last digit, at %2</source>
        <translation>%1 um weniger als seine letzte Stelle, bei %2</translation>
    </message>
    <message>
        <source>%1 is not a thread: write inch threads as 7/16-20 and metric ones as M10x1.25, with “special” behind a pitch of no series.</source>
        <translation>%1 ist kein Gewinde: Zollgewinde als 7/16-20 und metrische als M10x1.25 schreiben, mit „special“ hinter einer Steigung außerhalb der Reihen.</translation>
    </message>
    <message>
        <source>leaves the load on the cap as it is</source>
        <translation>lässt die Last auf dem Deckel, wie sie ist</translation>
    </message>
    <message>
        <source>takes %1 off the cap</source>
        <translation>nimmt %1 vom Deckel</translation>
    </message>
    <message>
        <source>turns the load on the cap round, to %1 up</source>
        <translation>kehrt die Last auf dem Deckel um, auf %1 nach oben</translation>
    </message>
    <message>
        <source>turns the load on the cap round, to %1 down</source>
        <translation>kehrt die Last auf dem Deckel um, auf %1 nach unten</translation>
    </message>
    <message>
        <source>puts %1 more on the cap</source>
        <translation>bringt %1 mehr auf den Deckel</translation>
    </message>
    <message>
        <source>Least film by the charts of Raimondi and Boyd for a steady load, with the same load and width at every bearing, the oil as warm as the block, its viscosity by ASTM D341. An engine&apos;s load turns and hammers: advice, no verdict.</source>
        <translation>Kleinste Filmdicke nach den Diagrammen von Raimondi und Boyd bei ruhender Last, mit gleicher Last und Breite an jedem Lager, das Öl so warm wie der Block, seine Viskosität nach ASTM D341. Die Last im Motor läuft um und schlägt: ein Rat, kein Urteil.</translation>
    </message>
    <message>
        <source>A look ahead by α·D·ΔT, the shells with their steel backs where their thickness is known, common practice, no source: it leaves out that a cap may be of another metal. No verdict, not stored.</source>
        <translation>Ein Ausblick mit α·D·ΔT, die Lagerschalen mit ihren Stahlrücken, wo ihre Dicke bekannt ist; übliche Praxis, ohne Quelle: dass ein Lagerdeckel aus anderem Metall sein kann, bleibt außer Acht. Kein Urteil, nicht gespeichert.</translation>
    </message>
    <message>
        <source>The database %1 does not answer (%2): check the network and the server.</source>
        <translation>Die Datenbank %1 antwortet nicht (%2): Netz und Server prüfen.</translation>
    </message>
    <message>
        <source>What %1 holds does not verify, and no file was made: %2</source>
        <translation>Was %1 enthält, hält der Prüfung nicht stand, und es entstand keine Datei: %2</translation>
    </message>
    <message>
        <source>%1 (first seal %2)</source>
        <translation>%1 (erstes Siegel %2)</translation>
    </message>
    <message>
        <source>%1, serial %2 (first seal %3)</source>
        <translation>%1, Seriennummer %2 (erstes Siegel %3)</translation>
    </message>
    <message>
        <source>Nothing new: all of it was published before.</source>
        <translation>Nichts Neues: alles war schon veröffentlicht.</translation>
    </message>
    <message>
        <source>An older copy: the database holds one entry more, and was left as it is.</source>
        <translation>Eine ältere Kopie: die Datenbank enthält einen Eintrag mehr und blieb, wie sie ist.</translation>
    </message>
    <message>
        <source>An older copy: the database holds %1 entries more, and was left as it is.</source>
        <translation>Eine ältere Kopie: die Datenbank enthält %1 Einträge mehr und blieb, wie sie ist.</translation>
    </message>
    <message>
        <source>One entry sent.</source>
        <translation>Ein Eintrag geschickt.</translation>
    </message>
    <message>
        <source>%1 entries sent.</source>
        <translation>%1 Einträge geschickt.</translation>
    </message>
    <message>
        <source>One photo or file sent.</source>
        <translation>Ein Foto oder eine Datei geschickt.</translation>
    </message>
    <message>
        <source>%1 photos and files sent.</source>
        <translation>%1 Fotos und Dateien geschickt.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>The rules of judging were changed after the reading of entry %1 (%2)</source>
        <translation>Die Regeln des Urteilens wurden nach der Ablesung von Eintrag %1 geändert (%2)</translation>
    </message>
</context>
<context>
    <name>DeflectionChartText</name>
    <message>
        <source>How the girdle lies</source>
        <translation>Wie die Platte liegt</translation>
    </message>
    <message>
        <source>The girdle&apos;s height over the pan rail with its nuts at torque: from %1 to %2, negative into the block.</source>
        <translation>Die Höhe der Platte über dem Ölwannenflansch mit angezogenen Muttern: von %1 bis %2, negativ in den Block hinein.</translation>
    </message>
    <message>
        <source>height over the rail, thou</source>
        <translation>Höhe über dem Flansch, thou</translation>
    </message>
    <message>
        <source>height over the rail, mm</source>
        <translation>Höhe über dem Flansch, mm</translation>
    </message>
    <message>
        <source>nuts on the left</source>
        <translation>Muttern links</translation>
    </message>
    <message>
        <source>nuts on the right</source>
        <translation>Muttern rechts</translation>
    </message>
    <message>
        <source>residual %1</source>
        <translation>Restmaß %1</translation>
    </message>
    <message>
        <source>pulls the cap up by %1</source>
        <translation>zieht den Deckel mit %1 hoch</translation>
    </message>
    <message>
        <source>presses the cap down by %1</source>
        <translation>drückt den Deckel mit %1 nieder</translation>
    </message>
    <message>
        <source>behind cap 1</source>
        <translation>hinter Deckel 1</translation>
    </message>
    <message>
        <source>right of the crank</source>
        <translation>rechts der Kurbelwelle</translation>
    </message>
</context>
<context>
    <name>FastenersStation</name>
    <message>
        <source>Set the wrench to %1</source>
        <translation>Den Schlüssel auf %1 stellen</translation>
    </message>
    <message>
        <source>past its due date, %1</source>
        <translation>überfällig seit %1</translation>
    </message>
    <message>
        <source>no calibration on record</source>
        <translation>keine Kalibrierung im Protokoll</translation>
    </message>
    <message>
        <source>stretch %1</source>
        <translation>Längung %1</translation>
    </message>
    <message>
        <source>%1 stretch</source>
        <translation>%1 Längung</translation>
    </message>
    <message>
        <source>Nothing is specified for it yet: set its group under Groups.</source>
        <translation>Dafür ist noch nichts vorgegeben: seine Gruppe unter „Gruppen“ einrichten.</translation>
    </message>
    <message>
        <source>Specified: %1</source>
        <translation>Vorgegeben: %1</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>lose</translation>
    </message>
    <message>
        <source>loosened</source>
        <translation>gelöst</translation>
    </message>
    <message>
        <source>moved %1</source>
        <translation>um %1 weitergedreht</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>verified by its length, never pulled again</source>
        <translation>an der Länge geprüft, nie nachgezogen</translation>
    </message>
    <message>
        <source>verified by its witness mark, never pulled again</source>
        <translation>an der Markierung geprüft, nie nachgezogen</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>drehte sich weiter</translation>
    </message>
    <message>
        <source>held, %1 stretch</source>
        <translation>hielt, %1 Längung</translation>
    </message>
    <message>
        <source>its mark lines up</source>
        <translation>Markierung steht gleich</translation>
    </message>
    <message>
        <source>in this group</source>
        <translation>in dieser Gruppe</translation>
    </message>
    <message>
        <source>in no group</source>
        <translation>in keiner Gruppe</translation>
    </message>
    <message>
        <source>in the group %1</source>
        <translation>in der Gruppe %1</translation>
    </message>
    <message>
        <source>no limit of error given</source>
        <translation>keine Fehlergrenze angegeben</translation>
    </message>
    <message>
        <source>no calibration date and no limit of error given</source>
        <translation>weder Kalibrierdatum noch Fehlergrenze angegeben</translation>
    </message>
    <message>
        <source>no calibration date given</source>
        <translation>kein Kalibrierdatum angegeben</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, dann %2</translation>
    </message>
    <message>
        <source>%1, in steps of %2</source>
        <translation>%1, in Schritten von %2</translation>
    </message>
    <message>
        <source>used once</source>
        <translation>nur einmal zu verwenden</translation>
    </message>
    <message>
        <source>%1 (says %2)</source>
        <translation>%1 (sagt %2)</translation>
    </message>
    <message>
        <source>%1 moved %2.</source>
        <translation>%1 drehte sich um %2 weiter.</translation>
    </message>
    <message>
        <source>%1 moved.</source>
        <translation>%1 drehte sich weiter.</translation>
    </message>
    <message>
        <source>The gap at %1 now lies between %2 and %3.</source>
        <translation>Das Spaltmaß an %1 liegt jetzt zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>Stale by it: %1 and %2 more.</source>
        <translation>Dadurch veraltet: %1 und %2 weitere.</translation>
    </message>
    <message>
        <source>Stale by it: %1.</source>
        <translation>Dadurch veraltet: %1.</translation>
    </message>
    <message>
        <source>It must hold in a later round.</source>
        <translation>Sie muss in einer späteren Runde halten.</translation>
    </message>
</context>
<context>
    <name>FeelChartText</name>
    <message>
        <source>The feel, by the height of the step</source>
        <translation>Das Gefühl, über der Höhe der Stufe</translation>
    </message>
    <message>
        <source>Every answer appears here.</source>
        <translation>Jede Antwort erscheint hier.</translation>
    </message>
    <message>
        <source>No step has been felt yet.</source>
        <translation>Noch wurde keine Stufe gefühlt.</translation>
    </message>
    <message>
        <source>rocks</source>
        <translation>kippelt</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>lose</translation>
    </message>
    <message>
        <source>%1: %2 in %3 of %4 answers</source>
        <translation>%1: %2 bei %3 von %4 Antworten</translation>
    </message>
    <message>
        <source>height of the step above the rests</source>
        <translation>Höhe der Stufe über den Auflagen</translation>
    </message>
    <message>
        <source>answers, %</source>
        <translation>Antworten, %</translation>
    </message>
    <message>
        <source>%1 answers at %2 heights.</source>
        <translation>%1 Antworten bei %2 Höhen.</translation>
    </message>
    <message>
        <source>A step of %1 is felt rightly 95 times of 100, at the unfavourable end of its confidence.</source>
        <translation>Eine Stufe von %1 wird 95 von 100 Malen richtig gefühlt, am ungünstigen Ende des Vertrauensbereichs.</translation>
    </message>
</context>
<context>
    <name>FilmChartText</name>
    <message>
        <source>Oil film over clearance</source>
        <translation>Schmierfilm über dem Spiel</translation>
    </message>
    <message>
        <source>least film</source>
        <translation>kleinste Filmdicke</translation>
    </message>
    <message>
        <source>%1: film %2 at a clearance of %3</source>
        <translation>%1: Film %2 bei einem Spiel von %3</translation>
    </message>
    <message>
        <source>clearance, warm</source>
        <translation>Spiel, warm</translation>
    </message>
    <message>
        <source>least film, mains</source>
        <translation>kleinste Filmdicke, Hauptlager</translation>
    </message>
    <message>
        <source>mains, warm</source>
        <translation>Hauptlager, warm</translation>
    </message>
    <message>
        <source>least film, rods</source>
        <translation>kleinste Filmdicke, Pleuellager</translation>
    </message>
    <message>
        <source>rods, warm</source>
        <translation>Pleuellager, warm</translation>
    </message>
    <message>
        <source>The least oil film over the clearance, with %1 bearings on the curves.</source>
        <translation>Die kleinste Dicke des Schmierfilms über dem Spiel, mit %1 Lagern auf den Kurven.</translation>
    </message>
</context>
<context>
    <name>GaugeSetup</name>
    <message>
        <source>the gauge that types</source>
        <translation>das Messmittel, das tippt</translation>
    </message>
    <message>
        <source>the gauge at %1</source>
        <translation>das Messmittel an %1</translation>
    </message>
</context>
<context>
    <name>GirdleAdvice</name>
    <message>
        <source>Advice, not a verdict: consider a girdle from about %1 to %2 hp on a small-block V8, and near %3 hp on a big-block (common practice, no source). Speed, fuel, and the material of block and caps count as much; what the makers of block and girdle say comes first.</source>
        <translation>Ein Rat, kein Urteil: eine Versteifungsplatte erwägen ab etwa %1 bis %2 hp bei einem Small-Block-V8 und nahe %3 hp bei einem Big Block (gängige Praxis, ohne Quelle). Drehzahl, Kraftstoff und Werkstoff von Block und Deckeln zählen ebenso; was die Hersteller von Block und Platte sagen, geht vor.</translation>
    </message>
</context>
<context>
    <name>GirdleDiagramText</name>
    <message>
        <source>%1 read</source>
        <translation>%1 gemessen</translation>
    </message>
    <message>
        <source>no stack</source>
        <translation>kein Stapel</translation>
    </message>
    <message>
        <source>off</source>
        <translation>abgenommen</translation>
    </message>
    <message>
        <source>gap %1</source>
        <translation>Spaltmaß %1</translation>
    </message>
    <message>
        <source>residual %1</source>
        <translation>Restmaß %1</translation>
    </message>
</context>
<context>
    <name>GirdleWordsText</name>
    <message>
        <source>no shim</source>
        <translation>keine Distanzscheibe</translation>
    </message>
    <message>
        <source>%1 of %2 gaps accepted</source>
        <translation>%1 von %2 Spaltmaßen angenommen</translation>
    </message>
    <message>
        <source>Nothing to plan yet: the plan begins with the first accepted gap.</source>
        <translation>Noch nichts zu planen: der Plan beginnt mit dem ersten angenommenen Spaltmaß.</translation>
    </message>
    <message>
        <source>The kit is empty: add its shims first (Alt+2).</source>
        <translation>Der Satz ist leer: zuerst seine Distanzscheiben eintragen (Alt+2).</translation>
    </message>
    <message>
        <source>… and %1 more: see the drawing.</source>
        <translation>… und %1 weitere: siehe Zeichnung.</translation>
    </message>
    <message>
        <source>%1 cannot be met: nearest %2, residual %3.</source>
        <translation>%1 ist nicht zu erreichen: am nächsten %2, Restmaß %3.</translation>
    </message>
    <message>
        <source>The stacks as built are as good as the best plan.</source>
        <translation>Die aufgebauten Stapel sind so gut wie der beste Plan.</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>noch nicht gemessen</translation>
    </message>
    <message>
        <source>to be read again</source>
        <translation>noch einmal zu messen</translation>
    </message>
    <message>
        <source>not accepted yet</source>
        <translation>noch nicht angenommen</translation>
    </message>
    <message>
        <source>no residual band is set, the usual %1 to %2 is taken</source>
        <translation>kein Band für das Restmaß festgelegt, es gilt das übliche von %1 bis %2</translation>
    </message>
    <message>
        <source>No residual band is set: the usual %1 to %2 is taken (common practice, no source). Set the band “residual” at the engine station.</source>
        <translation>Es ist kein Band für das Restmaß festgelegt: es gilt das übliche von %1 bis %2 (gängige Praxis, ohne Quelle). Das Band „residual“ an der Station Motor festlegen.</translation>
    </message>
    <message>
        <source>%1 is not met by the plan found so far: nearest %2, residual %3.</source>
        <translation>%1 erreicht der bisher gefundene Plan nicht: am nächsten %2, Restmaß %3.</translation>
    </message>
    <message>
        <source>The stacks as built are better than the plan found so far.</source>
        <translation>Die Stapel, wie sie gebaut sind, sind besser als der bisher gefundene Plan.</translation>
    </message>
    <message>
        <source>The stacks as built are better than the plan.</source>
        <translation>Die Stapel, wie sie gebaut sind, sind besser als der Plan.</translation>
    </message>
    <message>
        <source>accepted %1 %2</source>
        <translation>angenommen %1 %2</translation>
    </message>
    <message>
        <source>offset %1</source>
        <translation>Versatz %1</translation>
    </message>
    <message>
        <source>pitch %1</source>
        <translation>Längsneigung %1</translation>
    </message>
    <message>
        <source>roll %1</source>
        <translation>Querneigung %1</translation>
    </message>
    <message>
        <source>twist %1</source>
        <translation>Verwindung %1</translation>
    </message>
    <message>
        <source>Closed: these stacks are in the engine.</source>
        <translation>Geschlossen: diese Stapel liegen im Motor.</translation>
    </message>
    <message>
        <source>Every stack stands and stays: there is nothing to plan.</source>
        <translation>Jeder Stapel steht und bleibt: es gibt nichts zu planen.</translation>
    </message>
    <message>
        <source>up</source>
        <translation>hoch</translation>
    </message>
    <message>
        <source>down</source>
        <translation>nieder</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Largest load %1 at %2, %3. Largest bending stress in the plate %4; energy %5 mJ.</source>
        <translation>Größte Last %1 an %2, %3. Größte Biegespannung in der Platte %4; Energie %5 mJ.</translation>
    </message>
    <message>
        <source>Rings: the residual of the stack. Thin: in its band, %1 to %2 · disc with rays: proud of it · dashed ring: loose</source>
        <translation>Ringe: das Restmaß des Stapels. Dünn: im Band, %1 bis %2 · Scheibe mit Strahlen: zu hoch · gestrichelter Ring: lose</translation>
    </message>
    <message>
        <source>spread %1 (%2 to %3)</source>
        <translation>Spannweite %1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>repeatability s = %1</source>
        <translation>Wiederholbarkeit s = %1</translation>
    </message>
    <message>
        <source>local up to %1 at %2</source>
        <translation>örtlich bis %1 an %2</translation>
    </message>
    <message>
        <source>%1 of %2 in band</source>
        <translation>%1 von %2 im Band</translation>
    </message>
    <message numerus="yes">
        <source>%n shims</source>
        <translation>
            <numerusform>%n Distanzscheibe</numerusform>
            <numerusform>%n Distanzscheiben</numerusform>
        </translation>
    </message>
    <message>
        <source>largest residual %1</source>
        <translation>größtes Restmaß %1</translation>
    </message>
    <message>
        <source>largest load %1</source>
        <translation>größte Last %1</translation>
    </message>
    <message>
        <source>No plan can have more than %1 in band, nor then fewer than %2 shims: this is at least %3 % of what can be.</source>
        <translation>Kein Plan kann mehr als %1 im Band haben, noch dann weniger als %2 Distanzscheiben: Das sind mindestens %3 % des Möglichen.</translation>
    </message>
    <message>
        <source>No plan has more in band, nor as many with fewer shims; only the residuals may still be bettered.</source>
        <translation>Kein Plan hat mehr im Band, noch ebenso viele mit weniger Distanzscheiben; nur die Restmaße lassen sich vielleicht noch verbessern.</translation>
    </message>
    <message>
        <source>No plan has more in band, nor as many with fewer shims; only the twist and the residuals may still be bettered.</source>
        <translation>Kein Plan hat mehr im Band, noch ebenso viele mit weniger Distanzscheiben; nur die Verwindung und die Restmaße lassen sich vielleicht noch verbessern.</translation>
    </message>
    <message>
        <source>No plan has more in band, nor as many with fewer shims; only the loads may still be bettered.</source>
        <translation>Kein Plan hat mehr im Band, noch ebenso viele mit weniger Distanzscheiben; nur die Lasten lassen sich vielleicht noch verbessern.</translation>
    </message>
    <message>
        <source>No plan is better in any figure.</source>
        <translation>Kein Plan ist in irgendeiner Zahl besser.</translation>
    </message>
    <message>
        <source>%1 stacks stand and stay; the plan is for the other %2.</source>
        <translation>%1 Stapel stehen und bleiben; der Plan gilt den übrigen %2.</translation>
    </message>
    <message>
        <source>Proven best: %1 (%2 ms).</source>
        <translation>Nachweislich das Beste: %1 (%2 ms).</translation>
    </message>
    <message>
        <source>Best found so far: %1 (%2 ms).</source>
        <translation>Bisher das Beste: %1 (%2 ms).</translation>
    </message>
    <message>
        <source>Buy a shim of %1.</source>
        <translation>Eine Distanzscheibe von %1 kaufen.</translation>
    </message>
    <message>
        <source>Or lap %1 from %2 to %3.</source>
        <translation>Oder %1 von %2 auf %3 läppen.</translation>
    </message>
    <message>
        <source>The plan has %1 more in band.</source>
        <translation>Der Plan hat %1 mehr im Band.</translation>
    </message>
    <message numerus="yes">
        <source>The plan saves %n shims.</source>
        <translation>
            <numerusform>Der Plan spart %n Distanzscheibe.</numerusform>
            <numerusform>Der Plan spart %n Distanzscheiben.</numerusform>
        </translation>
    </message>
    <message>
        <source>The plan&apos;s largest load is %1 smaller.</source>
        <translation>Die größte Last des Plans ist um %1 kleiner.</translation>
    </message>
    <message>
        <source>The plan&apos;s largest load is a little smaller.</source>
        <translation>Die größte Last des Plans ist ein wenig kleiner.</translation>
    </message>
    <message>
        <source>The plan&apos;s largest residual is %1 smaller.</source>
        <translation>Das größte Restmaß des Plans ist um %1 kleiner.</translation>
    </message>
    <message>
        <source>The plan&apos;s largest residual is a little smaller.</source>
        <translation>Das größte Restmaß des Plans ist ein wenig kleiner.</translation>
    </message>
    <message>
        <source>The plan&apos;s residuals add up to %1 less.</source>
        <translation>Die Restmaße des Plans sind zusammen um %1 kleiner.</translation>
    </message>
    <message>
        <source>The plan&apos;s residuals add up to a little less.</source>
        <translation>Die Restmaße des Plans sind zusammen ein wenig kleiner.</translation>
    </message>
    <message>
        <source>The plan twists the plate less.</source>
        <translation>Der Plan verwindet die Platte weniger.</translation>
    </message>
    <message>
        <source>The plan&apos;s loads are smaller together.</source>
        <translation>Die Lasten des Plans sind zusammen kleiner.</translation>
    </message>
    <message>
        <source>More shims than the rules allow in one stack: %1.</source>
        <translation>Mehr Distanzscheiben in einem Stapel, als die Regeln erlauben: %1.</translation>
    </message>
    <message>
        <source>%1 in band</source>
        <translation>%1 im Band</translation>
    </message>
    <message>
        <source>As built: %1.</source>
        <translation>Wie aufgebaut: %1.</translation>
    </message>
    <message>
        <source>one reading</source>
        <translation>eine Ablesung</translation>
    </message>
    <message>
        <source>%1 readings within %2, s = %3</source>
        <translation>%1 Ablesungen innerhalb %2, s = %3</translation>
    </message>
    <message>
        <source>expected %1 after what moved</source>
        <translation>erwartet %1 nach dem, was sich weiterdrehte</translation>
    </message>
</context>
<context>
    <name>GivenPicture</name>
    <message>
        <source>Drawings (*.svg)</source>
        <translation>Zeichnungen (*.svg)</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Bilder (*.png)</translation>
    </message>
    <message>
        <source>The picture was not written</source>
        <translation>Das Bild wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>The name of a picture ends in .svg or .png, which “%1” does not.</source>
        <translation>Der Name eines Bildes endet auf .svg oder .png, „%1“ nicht.</translation>
    </message>
    <message>
        <source>Copy as picture</source>
        <translation>Als Bild kopieren</translation>
    </message>
    <message>
        <source>Save as SVG…</source>
        <translation>Als SVG speichern…</translation>
    </message>
    <message>
        <source>Save as PNG…</source>
        <translation>Als PNG speichern…</translation>
    </message>
</context>
<context>
    <name>HistoryStation</name>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>moved %1</source>
        <translation>um %1 weitergedreht</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>weitergedreht</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>an %1</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1 mit %2</translation>
    </message>
    <message>
        <source>no instrument named</source>
        <translation>kein Messmittel genannt</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>gestrichen</translation>
    </message>
    <message>
        <source>an earlier outcome was struck</source>
        <translation>ein früheres Ergebnis wurde gestrichen</translation>
    </message>
    <message>
        <source>Export what is shown</source>
        <translation>Exportieren, was zu sehen ist</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportieren</translation>
    </message>
    <message>
        <source>page %1</source>
        <translation>Seite %1</translation>
    </message>
    <message>
        <source>%1, round %2: %3</source>
        <translation>%1, Runde %2: %3</translation>
    </message>
    <message>
        <source>%1 UTC, entry %2</source>
        <translation>%1 UTC, Eintrag %2</translation>
    </message>
</context>
<context>
    <name>KeyList</name>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>stores what is typed and goes to the next place; presses the button in focus</source>
        <translation>speichert, was eingetippt ist, und geht zur nächsten Stelle; drückt den Knopf, auf dem der Fokus liegt</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Auf, Ab</translation>
    </message>
    <message>
        <source>another place, from the value field</source>
        <translation>eine andere Stelle, aus dem Wertfeld heraus</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Strg+Enter</translation>
    </message>
    <message>
        <source>to the next thing to do</source>
        <translation>zum Nächsten, was zu tun ist</translation>
    </message>
    <message>
        <source>Ctrl+1 to Ctrl+8</source>
        <translation>Strg+1 bis Strg+8</translation>
    </message>
    <message>
        <source>the stations, in the order of the work</source>
        <translation>die Stationen in der Reihenfolge der Arbeit</translation>
    </message>
    <message>
        <source>Alt+1, Alt+2, …</source>
        <translation>Alt+1, Alt+2, …</translation>
    </message>
    <message>
        <source>the views of a station</source>
        <translation>die Ansichten einer Station</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>empties the field; once it is empty, leaves the bench view</source>
        <translation>leert das Feld; ist es leer, verlässt sie die Werkbank-Ansicht</translation>
    </message>
    <message>
        <source>! behind a value</source>
        <translation>! hinter einem Wert</translation>
    </message>
    <message>
        <source>stores it though it was asked back; the record shows that</source>
        <translation>speichert ihn, obwohl zurückgefragt wurde; das Protokoll zeigt es</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation>Strg+Z</translation>
    </message>
    <message>
        <source>strikes the last entry, with a reason</source>
        <translation>streicht den letzten Eintrag, mit einem Grund</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Strg+D</translation>
    </message>
    <message>
        <source>opens a finding at the chosen place</source>
        <translation>eröffnet einen Befund an der gewählten Stelle</translation>
    </message>
    <message>
        <source>Ctrl+Shift+A</source>
        <translation>Strg+Umschalt+A</translation>
    </message>
    <message>
        <source>adds a photo there</source>
        <translation>fügt dort ein Foto hinzu</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation>Strg+F</translation>
    </message>
    <message>
        <source>finds in the record</source>
        <translation>sucht im Protokoll</translation>
    </message>
    <message>
        <source>Ctrl+U</source>
        <translation>Strg+U</translation>
    </message>
    <message>
        <source>inch or millimetre, everywhere</source>
        <translation>Zoll oder Millimeter, überall</translation>
    </message>
    <message>
        <source>F9</source>
        <translation>F9</translation>
    </message>
    <message>
        <source>bench view: one value at a time, to be read from afar</source>
        <translation>Werkbank-Ansicht: ein Wert auf einmal, von weitem zu lesen</translation>
    </message>
    <message>
        <source>F1</source>
        <translation>F1</translation>
    </message>
    <message>
        <source>Shift+F1</source>
        <translation>Umschalt+F1</translation>
    </message>
    <message>
        <source>the tour</source>
        <translation>der Rundgang</translation>
    </message>
    <message>
        <source>Ctrl+Shift+P</source>
        <translation>Strg+Umschalt+P</translation>
    </message>
    <message>
        <source>the build sheet as PDF</source>
        <translation>das Aufbaublatt als PDF</translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation>Strg+Umschalt+O</translation>
    </message>
    <message>
        <source>the shop: the records of a folder</source>
        <translation>die Werkstatt: die Protokolle eines Ordners</translation>
    </message>
    <message>
        <source>strikes the chosen entries of a list, with one reason</source>
        <translation>streicht die gewählten Einträge einer Liste, mit einem Grund</translation>
    </message>
    <message>
        <source>Ctrl+C</source>
        <translation>Strg+C</translation>
    </message>
    <message>
        <source>copies the diagram, chart or table in focus; the menu key saves a drawing as SVG or PNG</source>
        <translation>kopiert Zeichnung, Diagramm oder Tabelle im Fokus; die Menütaste speichert eine Zeichnung als SVG oder PNG</translation>
    </message>
    <message>
        <source>the manual, at the page of this station</source>
        <translation>das Handbuch, an der Seite dieser Station</translation>
    </message>
</context>
<context>
    <name>Photos</name>
    <message>
        <source>pasted</source>
        <translation>eingefügt</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Fotos hinzufügen</translation>
    </message>
    <message>
        <source>What was copied is a drawing, not a photo: save it as PNG and add that.</source>
        <translation>Kopiert wurde eine Zeichnung und kein Foto: sie als PNG speichern und das hinzufügen.</translation>
    </message>
    <message>
        <source>“%1” is neither a build record (.caprail) nor a photo (JPEG, PNG, WebP or HEIF): nothing was done with it.</source>
        <translation>„%1“ ist weder ein Aufbauprotokoll (.caprail) noch ein Foto (JPEG, PNG, WebP oder HEIF): es wurde nichts damit gemacht.</translation>
    </message>
    <message>
        <source>Pictures (%1);;All files (*)</source>
        <translation>Bilder (%1);;Alle Dateien (*)</translation>
    </message>
</context>
<context>
    <name>PickupGaugeText</name>
    <message>
        <source>clearance,
enlarged</source>
        <translation>Abstand,
vergrößert</translation>
    </message>
    <message>
        <source>pan floor</source>
        <translation>Wannenboden</translation>
    </message>
</context>
<context>
    <name>PickupSectionText</name>
    <message>
        <source>pan rail</source>
        <translation>Ölwannenflansch</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>noch nicht bekannt</translation>
    </message>
    <message>
        <source>clearance %1</source>
        <translation>Abstand %1</translation>
    </message>
</context>
<context>
    <name>PickupTermsText</name>
    <message>
        <source>From the pan&apos;s flange face straight down to its floor, where the pickup will stand.</source>
        <translation>Von der Flanschfläche der Ölwanne gerade hinunter auf ihren Boden, dort wo das Ölansaugrohr stehen wird.</translation>
    </message>
    <message>
        <source>The thickness it has when the pan is tight, not as it comes from the bag. None: enter 0.</source>
        <translation>Die Dicke bei festgezogener Ölwanne, nicht wie aus dem Beutel. Keine: 0 eingeben.</translation>
    </message>
    <message>
        <source>Whatever holds the pan off the rail: the girdle plate where it lies between, else 0. Count a bead of sealant as 0.</source>
        <translation>Was die Ölwanne vom Flansch fernhält: die Platte, wo sie dazwischen liegt, sonst 0. Eine Raupe Dichtmasse zählt nichts.</translation>
    </message>
    <message>
        <source>From the pan rail down to the lowest point of the pickup as it is mounted.</source>
        <translation>Vom Ölwannenflansch hinunter bis zum tiefsten Punkt des montierten Ölansaugrohrs.</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>%1   one reading: one more is needed</source>
        <translation>%1   eine Ablesung: noch eine ist nötig</translation>
    </message>
    <message>
        <source>The clearance is in the middle of its band: leave it.</source>
        <translation>Der Abstand liegt in der Mitte seines Bandes: so lassen.</translation>
    </message>
    <message>
        <source>To centre it at %1: lower the pickup by %2, or take %2 off what lies between pan and rail.</source>
        <translation>Für die Mitte, %1: das Ölansaugrohr um %2 absenken oder %2 von dem wegnehmen, was zwischen Wanne und Flansch liegt.</translation>
    </message>
    <message>
        <source>To centre it at %1: raise the pickup by %2, or put %2 more between pan and rail.</source>
        <translation>Für die Mitte, %1: das Ölansaugrohr um %2 anheben oder %2 mehr zwischen Wanne und Flansch legen.</translation>
    </message>
    <message>
        <source>%1 %2   %3 readings within %4</source>
        <translation>%1 %2   %3 Ablesungen innerhalb %4</translation>
    </message>
</context>
<context>
    <name>PlanDrawing</name>
    <message>
        <source>FRONT</source>
        <translation>VORN</translation>
    </message>
    <message>
        <source>LEFT</source>
        <translation>LINKS</translation>
    </message>
    <message>
        <source>RIGHT</source>
        <translation>RECHTS</translation>
    </message>
    <message>
        <source>pickup</source>
        <translation>Ölansaugrohr</translation>
    </message>
    <message>
        <source>dipstick</source>
        <translation>Ölmessstab</translation>
    </message>
    <message>
        <source> in</source>
        <comment>inner stud of a cap, short</comment>
        <translation> innen</translation>
    </message>
    <message>
        <source> out</source>
        <comment>outer stud of a cap, short</comment>
        <translation> außen</translation>
    </message>
    <message>
        <source>rod %1</source>
        <translation>Pleuel %1</translation>
    </message>
    <message>
        <source>throw %1</source>
        <translation>Kröpfung %1</translation>
    </message>
</context>
<context>
    <name>PlanView</name>
    <message>
        <source>Plan of the pan rail</source>
        <translation>Draufsicht auf den Ölwannenflansch</translation>
    </message>
</context>
<context>
    <name>PublishText</name>
    <message>
        <source>The settings could not be written to %1: see that it can be written, then try again.</source>
        <translation>Die Einstellungen ließen sich nicht in %1 schreiben: dafür sorgen, dass dort geschrieben werden kann, dann noch einmal versuchen.</translation>
    </message>
</context>
<context>
    <name>RecheckWordsText</name>
    <message>
        <source>R
rocks
proud: too thick</source>
        <translation>K
kippelt
zu hoch: zu dick</translation>
    </message>
    <message>
        <source>D
drags
right</source>
        <translation>S
saugt
richtig</translation>
    </message>
    <message>
        <source>L
loose
low: too thin</source>
        <translation>L
lose
zu niedrig: zu dünn</translation>
    </message>
    <message>
        <source>as built</source>
        <translation>wie aufgebaut</translation>
    </message>
    <message>
        <source>thicker</source>
        <translation>dicker</translation>
    </message>
    <message>
        <source>thinner</source>
        <translation>dünner</translation>
    </message>
    <message>
        <source>Lay in %1</source>
        <translation>%1 einlegen</translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>%1 herausnehmen</translation>
    </message>
    <message>
        <source>Take out %1, lay in %2</source>
        <translation>%1 herausnehmen, %2 einlegen</translation>
    </message>
    <message>
        <source>%1: the stack is %2 thicker. It should rock.</source>
        <translation>%1: der Stapel ist %2 dicker. Es müsste kippeln.</translation>
    </message>
    <message>
        <source>%1: the stack is %2 thinner. It should be loose.</source>
        <translation>%1: der Stapel ist %2 dünner. Es müsste lose sein.</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>by arithmetic</source>
        <translation>rechnerisch</translation>
    </message>
    <message>
        <source>The verdict is carried %1</source>
        <translation>Das Urteil steht %1</translation>
    </message>
    <message>
        <source>by the bracketed recheck</source>
        <translation>durch die eingegrenzte Nachprüfung</translation>
    </message>
    <message>
        <source>by a feel that was tried</source>
        <translation>durch ein geprüftes Gefühl</translation>
    </message>
    <message>
        <source>Name the straightedge: without it the recheck carries no verdict.</source>
        <translation>Das Haarlineal nennen: ohne es trägt die Nachprüfung kein Urteil.</translation>
    </message>
    <message>
        <source>The feel of %1 with %2 was never tried.</source>
        <translation>Das Gefühl von %1 mit %2 wurde nie geprüft.</translation>
    </message>
    <message>
        <source>The feel of %1 with %2: %3</source>
        <translation>Das Gefühl von %1 mit %2: %3</translation>
    </message>
    <message>
        <source>The feel of %1 with %2 is worth ± %3, until %4.</source>
        <translation>Das Gefühl von %1 mit %2 gilt mit ± %3, bis %4.</translation>
    </message>
    <message>
        <source>⚑ The feel of %1 with %2 was worth ± %3 and was to be tried again by %4.</source>
        <translation>⚑ Das Gefühl von %1 mit %2 galt mit ± %3 und war bis %4 neu zu prüfen.</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>The logo “%1” cannot be used (%2): choose another picture in the preferences.</source>
        <translation>Das Logo „%1“ lässt sich nicht verwenden (%2): in den Einstellungen ein anderes Bild wählen.</translation>
    </message>
    <message>
        <source>no longer counts: entry %1, %2</source>
        <translation>zählt nicht mehr: Eintrag %1, %2</translation>
    </message>
    <message>
        <source>moved: must hold in a later round</source>
        <translation>weitergedreht: muss in einer späteren Runde halten</translation>
    </message>
    <message>
        <source>not complete</source>
        <translation>nicht vollständig</translation>
    </message>
    <message>
        <source>every fastener held</source>
        <translation>jede Verschraubung hielt</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Wrench</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Gehalten</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>Weitergedreht</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Verify rounds</source>
        <translation>Prüfrunden</translation>
    </message>
    <message>
        <source>How far each one moved, round by round</source>
        <translation>Wie weit sich jede weiterdrehte, Runde für Runde</translation>
    </message>
    <message>
        <source>Difference of builds</source>
        <translation>Unterschied der Aufbauten</translation>
    </message>
    <message>
        <source>Engine not described</source>
        <translation>Motor nicht beschrieben</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Damals</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>There is nothing to compare yet: neither build holds a measured value.</source>
        <translation>Keiner der beiden Aufbauten enthält schon etwas Vergleichbares.</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Zapfen</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Clearance</source>
        <translation>Spiel</translation>
    </message>
    <message>
        <source>Smallest – largest</source>
        <translation>Kleinstes – größtes</translation>
    </message>
    <message>
        <source>± U</source>
        <translation>± U</translation>
    </message>
    <message>
        <source>Taper</source>
        <translation>Konizität</translation>
    </message>
    <message>
        <source>Out-of-round</source>
        <translation>Unrundheit</translation>
    </message>
    <message>
        <source>Shells, upper / lower</source>
        <translation>Schalen, oben / unten</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Main bearings</source>
        <translation>Hauptlager</translation>
    </message>
    <message>
        <source>Rod bearings</source>
        <translation>Pleuellager</translation>
    </message>
    <message>
        <source>Bearings</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Passung</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>no stack</source>
        <translation>kein Stapel</translation>
    </message>
    <message>
        <source>no shim needed</source>
        <translation>keine Distanzscheibe nötig</translation>
    </message>
    <message>
        <source>The kit has %1 shims: %2 in stacks, %3 set aside, %4 free.</source>
        <translation>Der Satz enthält %1 Distanzscheiben: %2 in Stapeln, %3 beiseitegelegt, %4 frei.</translation>
    </message>
    <message>
        <source>Worked out from every stack as built.</source>
        <translation>Berechnet aus jedem Stapel, wie er steht.</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>Shim  marked / measured</source>
        <translation>Distanzscheibe  beschriftet / gemessen</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>Spaltmaß</translation>
    </message>
    <message>
        <source>Residual</source>
        <translation>Restmaß</translation>
    </message>
    <message>
        <source>Straightedge</source>
        <translation>Haarlineal</translation>
    </message>
    <message>
        <source>Shim stacks</source>
        <translation>Stapel von Distanzscheiben</translation>
    </message>
    <message>
        <source>cannot be told</source>
        <translation>nicht zu ermitteln</translation>
    </message>
    <message>
        <source>Flushness of the girdle on its stacks</source>
        <translation>Bündigkeit der Platte auf ihren Stapeln</translation>
    </message>
    <message>
        <source>Offset</source>
        <translation>Versatz</translation>
    </message>
    <message>
        <source>Pitch, front to rear</source>
        <translation>Längsneigung, vorn nach hinten</translation>
    </message>
    <message>
        <source>Roll, left to right</source>
        <translation>Querneigung, links nach rechts</translation>
    </message>
    <message>
        <source>Twist, diagonal to diagonal</source>
        <translation>Verwindung, über die Diagonalen</translation>
    </message>
    <message>
        <source>Local error, %1</source>
        <translation>Örtliche Abweichung, %1</translation>
    </message>
    <message>
        <source>Cap %1</source>
        <translation>Deckel %1</translation>
    </message>
    <message>
        <source>Heights are over the bolted span. Positive: the girdle sits low there. Twist is what bends a block; offset, pitch and roll move the plate as a whole.</source>
        <translation>Höhen gelten über die verschraubte Länge, positiv, wo die Platte zu niedrig läge. Die Verwindung ist es, die einen Block verzieht; Versatz, Längs- und Querneigung bewegen die Platte als Ganzes.</translation>
    </message>
    <message>
        <source>There is no layout card without an engine layout: set it at the engine station.</source>
        <translation>Ohne Motorbauform gibt es keine Legekarte: sie an der Station Motor festlegen.</translation>
    </message>
    <message>
        <source>no shim</source>
        <translation>keine Distanzscheibe</translation>
    </message>
    <message>
        <source>Gap and stack at each position</source>
        <translation>Spaltmaß und Stapel an jeder Stelle</translation>
    </message>
    <message>
        <source>The pan rail from the pan&apos;s side, front of the engine to the left. Left and right are as seen from the flywheel end of the engine as installed. At each position: the gap in %1, under it the shims.</source>
        <translation>Der Ölwannenflansch von der Wannenseite, Motorvorderseite links. Links und rechts gelten vom Schwungradende des eingebauten Motors aus. An jeder Stelle: das Spaltmaß in %1, darunter die Distanzscheiben.</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>U not known</source>
        <translation>U nicht bekannt</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>within ± U</source>
        <translation>innerhalb ± U</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>± U is the expanded uncertainty of the difference, from those of both measurements. A difference within it is not a measured change.</source>
        <translation>± U ist die erweiterte Messunsicherheit des Unterschieds, aus denen beider Messungen. Ein Unterschied innerhalb davon ist keine gemessene Änderung.</translation>
    </message>
    <message>
        <source>Bearing clearances</source>
        <translation>Lagerspiele</translation>
    </message>
    <message>
        <source>Journals, bores and shells</source>
        <translation>Zapfen, Bohrungen und Schalen</translation>
    </message>
    <message>
        <source>Means of the diameters. Positive is worn: a journal became smaller, a bore larger. If the shells were changed, the bore includes the new shells.</source>
        <translation>Mittel der Durchmesser. Verschleiß ist positiv, wo Werkstoff fehlt: ein Zapfen wurde kleiner, eine Bohrung größer. Mit anderen Schalen sagt eine Bohrung etwas über die Schalen.</translation>
    </message>
    <message>
        <source>Journal then</source>
        <translation>Zapfen damals</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>wear</source>
        <translation>Verschleiß</translation>
    </message>
    <message>
        <source>Bore then</source>
        <translation>Bohrung damals</translation>
    </message>
    <message>
        <source>Shells then</source>
        <translation>Schalen damals</translation>
    </message>
    <message>
        <source>Gaps under the girdle, and their stacks</source>
        <translation>Spaltmaße unter der Platte und ihre Stapel</translation>
    </message>
    <message>
        <source>Gap then</source>
        <translation>Spaltmaß damals</translation>
    </message>
    <message>
        <source>Stack then</source>
        <translation>Stapel damals</translation>
    </message>
    <message>
        <source>Fits and pickup</source>
        <translation>Passungen und Ansaugabstand</translation>
    </message>
    <message>
        <source>Torques, and movement in verify rounds</source>
        <translation>Drehmomente und Bewegung in Prüfrunden</translation>
    </message>
    <message>
        <source>Fastener</source>
        <translation>Verschraubung</translation>
    </message>
    <message>
        <source>Torque then</source>
        <translation>Drehmoment damals</translation>
    </message>
    <message>
        <source>Rounds moved then</source>
        <translation>Weitergedreht damals (Runden)</translation>
    </message>
    <message>
        <source>another torque</source>
        <translation>anderes Drehmoment</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>dasselbe</translation>
    </message>
    <message>
        <source>Build</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Runden</translation>
    </message>
    <message>
        <source>Pulls</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Largest movement</source>
        <translation>Größte Bewegung</translation>
    </message>
    <message>
        <source>Build %1, %2 to %3, %4</source>
        <translation>Aufbau %1, %2 bis %3, %4</translation>
    </message>
    <message>
        <source>signed off</source>
        <translation>abgezeichnet</translation>
    </message>
    <message>
        <source>not signed off</source>
        <translation>nicht abgezeichnet</translation>
    </message>
    <message>
        <source>Counted readings</source>
        <translation>Gültige Ablesungen</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Spannweite</translation>
    </message>
    <message>
        <source>Std. deviation</source>
        <translation>Standardabw.</translation>
    </message>
    <message>
        <source>Accepted gap</source>
        <translation>Angenommenes Spaltmaß</translation>
    </message>
    <message>
        <source>Outdated</source>
        <translation>Überholt</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Gap survey</source>
        <translation>Spaltmaße</translation>
    </message>
    <message>
        <source>Accepted</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>%1 of %2 positions</source>
        <translation>%1 von %2 Stellen</translation>
    </message>
    <message>
        <source>Smallest – largest gap</source>
        <translation>Kleinstes – größtes Spaltmaß</translation>
    </message>
    <message>
        <source>Spread of the survey</source>
        <translation>Spannweite der Spaltmaße</translation>
    </message>
    <message>
        <source>Repeatability (pooled std. deviation)</source>
        <translation>Wiederholbarkeit (zusammengefasste Standardabw.)</translation>
    </message>
    <message>
        <source>in</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>Decision rule: simple acceptance. The measured value alone decides; its expanded uncertainty U is shown and not counted.</source>
        <translation>Entscheidungsregel: einfache Annahme. Der gemessene Wert allein entscheidet; seine erweiterte Messunsicherheit U wird gezeigt und nicht eingerechnet.</translation>
    </message>
    <message>
        <source>k = 2</source>
        <translation>k = 2</translation>
    </message>
    <message>
        <source>Student&apos;s t at 95.45 %</source>
        <translation>Students t bei 95,45 %</translation>
    </message>
    <message>
        <source>Build sheet</source>
        <translation>Aufbaublatt</translation>
    </message>
    <message>
        <source>Begun and last entry</source>
        <translation>Begonnen und letzter Eintrag</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Throw</source>
        <translation>Kröpfung</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>By, when</source>
        <translation>Wer, wann</translation>
    </message>
    <message>
        <source>Trial fit</source>
        <translation>Probemontage</translation>
    </message>
    <message>
        <source>Term</source>
        <translation>Glied</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>Clearance under the pickup</source>
        <translation>Abstand unter dem Ölansaugrohr</translation>
    </message>
    <message>
        <source>Clearance: %1</source>
        <translation>Abstand: %1</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>open time on the tube: %1 min</source>
        <translation>Offenzeit laut Tube: %1 min</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>Closing and sign-off</source>
        <translation>Schließen und Abzeichnen</translation>
    </message>
    <message>
        <source>Not signed off.</source>
        <translation>Nicht abgezeichnet.</translation>
    </message>
    <message>
        <source>For the shop: name, date, signature</source>
        <translation>Für die Werkstatt: Name, Datum, Unterschrift</translation>
    </message>
    <message>
        <source>Received by the customer: name, date, signature</source>
        <translation>Vom Kunden erhalten: Name, Datum, Unterschrift</translation>
    </message>
    <message>
        <source>The seal</source>
        <translation>Das Siegel</translation>
    </message>
    <message>
        <source>Short form, on every page</source>
        <translation>Kurzform, auf jeder Seite</translation>
    </message>
    <message>
        <source>Entries sealed</source>
        <translation>Besiegelte Einträge</translation>
    </message>
    <message>
        <source>In full (SHA-256 chain)</source>
        <translation>Vollständig (SHA-256-Kette)</translation>
    </message>
    <message>
        <source>Every entry of the record carries a hash over itself and over all entries before it; the seal is the last of them. The short form printed here matches only the record that this sheet was made from: whoever changes, drops or reorders an entry gets another seal. “caprail check” shows the seal of a file, to be compared with this page.</source>
        <translation>Jeder Eintrag des Protokolls trägt eine Prüfsumme über sich und alle Einträge davor; das Siegel ist die letzte. Die hier gedruckte Kurzform passt zu dem Protokoll, aus dem dieses Blatt entstand, und zu keinem veränderten: wer einen Eintrag ändert, weglässt oder umstellt, erhält ein anderes Siegel. „caprail check“ zeigt das Siegel einer Datei zum Vergleich mit dieser Seite.</translation>
    </message>
    <message>
        <source>What it does not prove: that what was entered is true, that the clock was right, or who sat at the keyboard. A file by itself can be rewritten as a whole with new seals; only this page, kept apart from the file, shows that it was not.</source>
        <translation>Was es nicht beweist: dass stimmt, was eingetragen wurde, dass die Uhr richtig ging oder wer an der Tastatur saß. Eine Datei für sich lässt sich als Ganzes mit neuen Siegeln neu schreiben; nur diese Seite, getrennt von der Datei aufbewahrt, zeigt, dass das nicht geschah.</translation>
    </message>
    <message>
        <source>All times: %1. Written by Caprail %2.</source>
        <translation>Alle Zeiten: %1. Geschrieben von Caprail %2.</translation>
    </message>
    <message>
        <source>Main caps</source>
        <translation>Hauptlagerdeckel</translation>
    </message>
    <message>
        <source>Rods</source>
        <translation>Pleuel</translation>
    </message>
    <message>
        <source>Girdle nuts</source>
        <translation>Plattenmuttern</translation>
    </message>
    <message>
        <source>Pan rail</source>
        <translation>Ölwannenflansch</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Rear</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <source>stretch %1</source>
        <translation>Längung %1</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Thread, grade</source>
        <translation>Gewinde, Festigkeitsklasse</translation>
    </message>
    <message>
        <source>Lubricant</source>
        <translation>Schmierstoff</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>Who says so</source>
        <translation>Angabe von</translation>
    </message>
    <message>
        <source>from the centre outwards</source>
        <translation>von der Mitte nach außen</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>weitergedreht</translation>
    </message>
    <message>
        <source>loosened since</source>
        <translation>seither gelöst</translation>
    </message>
    <message>
        <source>Last tightened to</source>
        <translation>Zuletzt angezogen auf</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>%1, further rounds</source>
        <translation>%1, weitere Runden</translation>
    </message>
    <message>
        <source>Torques</source>
        <translation>Drehmomente</translation>
    </message>
    <message>
        <source>Values by: %1</source>
        <translation>Werte laut: %1</translation>
    </message>
    <message>
        <source>Main-cap fasteners</source>
        <translation>Verschraubungen der Hauptlagerdeckel</translation>
    </message>
    <message>
        <source>Rod fasteners</source>
        <translation>Pleuelverschraubungen</translation>
    </message>
    <message>
        <source>cannot be shown</source>
        <translation>lässt sich nicht zeigen</translation>
    </message>
    <message>
        <source>Photos and files</source>
        <translation>Fotos und Dateien</translation>
    </message>
    <message>
        <source>Kept in the record, not printed: %1</source>
        <translation>Im Protokoll aufbewahrt, nicht gedruckt: %1</translation>
    </message>
    <message>
        <source>Build sheet: %1</source>
        <translation>Aufbaublatt: %1</translation>
    </message>
    <message>
        <source>build %1</source>
        <translation>Aufbau %1</translation>
    </message>
    <message>
        <source>Difference of builds: %1</source>
        <translation>Unterschied der Aufbauten: %1</translation>
    </message>
    <message>
        <source>builds %1 and %2</source>
        <translation>Aufbauten %1 und %2</translation>
    </message>
    <message>
        <source>Seal %1 over %2 entries</source>
        <translation>Siegel %1 über %2 Einträge</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>This seal matches only this exact record. It does not prove that what was entered is true.</source>
        <translation>Das Siegel passt zu diesem Protokoll und zu keinem veränderten. Es beweist nicht, dass stimmt, was eingetragen wurde.</translation>
    </message>
    <message>
        <source>Times: %1</source>
        <translation>Zeiten: %1</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Was zu sehen war</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>What it said</source>
        <translation>Was er sagte</translation>
    </message>
    <message>
        <source>Entered by, when</source>
        <translation>Eingetragen von, wann</translation>
    </message>
    <message>
        <source>Struck by, when</source>
        <translation>Gestrichen von, wann</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Struck entries</source>
        <translation>Gestrichene Einträge</translation>
    </message>
    <message>
        <source>Withdrawn by a person, with a reason. Not counted anywhere above; kept readable.</source>
        <translation>Von einer Person mit Begründung zurückgezogen. Sie zählen oben nicht und bleiben lesbar.</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Maker, serial number</source>
        <translation>Hersteller, Seriennummer</translation>
    </message>
    <message>
        <source>Accuracy, range</source>
        <translation>Fehlergrenze, Bereich</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Kalibriert</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>Layout card</source>
        <translation>Legekarte</translation>
    </message>
    <message>
        <source>Layout card: %1</source>
        <translation>Legekarte: %1</translation>
    </message>
    <message>
        <source>no stack yet</source>
        <translation>noch kein Stapel</translation>
    </message>
    <message>
        <source>The rings lie as the positions do on the engine. Lay each shim on its ring, and count them before they go in.</source>
        <translation>Die Ringe liegen wie die Stellen am Motor. Jede Distanzscheibe auf ihren Ring legen und alle zählen, bevor sie eingelegt werden.</translation>
    </message>
    <message>
        <source>Cap by cap from the front. Lay each shim on its ring, and count them before they go in.</source>
        <translation>Deckel für Deckel von vorn. Jede Distanzscheibe auf ihren Ring legen und alle zählen, bevor sie eingelegt werden.</translation>
    </message>
    <message>
        <source>▲ front</source>
        <translation>▲ vorn</translation>
    </message>
    <message>
        <source>2 in when printed at 1 : 1 (100 %, not “fit to page”)</source>
        <translation>2 Zoll bei Druck im Maßstab 1 : 1 (100 %, nicht „an Seite anpassen“)</translation>
    </message>
    <message>
        <source>50 mm when printed at 1 : 1 (100 %, not “fit to page”)</source>
        <translation>50 mm bei Druck im Maßstab 1 : 1 (100 %, nicht „an Seite anpassen“)</translation>
    </message>
    <message>
        <source>Seal %1</source>
        <translation>Siegel %1</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>Insgesamt</translation>
    </message>
    <message>
        <source>Held by</source>
        <translation>Aufgehalten durch</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>Trial-fit gate</source>
        <translation>Freigabe zur Probemontage</translation>
    </message>
    <message>
        <source>Closing gate</source>
        <translation>Freigabe zum Schließen</translation>
    </message>
    <message>
        <source>%1 open: all %2 checks that it needs are good, none is stale.</source>
        <translation>%1 erteilt: alle %2 nötigen Prüfungen sind gut, keine ist veraltet.</translation>
    </message>
    <message>
        <source>%1 locked: there is no engine layout yet.</source>
        <translation>%1 gesperrt: es gibt noch keine Motorbauform.</translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Stand der Arbeit</translation>
    </message>
    <message>
        <source>past its due date, %1</source>
        <translation>überfällig seit %1</translation>
    </message>
    <message numerus="yes">
        <source>%n more entries of this kind.</source>
        <translation>
            <numerusform>%n weiterer Eintrag dieser Art.</numerusform>
            <numerusform>%n weitere Einträge dieser Art.</numerusform>
        </translation>
    </message>
    <message>
        <source>The sheet cannot be finished: %1</source>
        <translation>Das Blatt lässt sich nicht fertigstellen: %1</translation>
    </message>
    <message>
        <source>Of %1 photos the last %2 are printed. The record holds them all.</source>
        <translation>Von %1 Fotos sind die letzten %2 gedruckt. Das Protokoll enthält sie alle.</translation>
    </message>
    <message>
        <source>Kept in the record, not printed: %1 files; the last are %2</source>
        <translation>Im Protokoll aufbewahrt, nicht gedruckt: %1 Dateien; die letzten sind %2</translation>
    </message>
    <message>
        <source>[cut off here: it has %1 characters, and the record holds them all]</source>
        <translation>[hier abgeschnitten: Der Text hat %1 Zeichen, und das Protokoll enthält sie alle]</translation>
    </message>
    <message>
        <source>Of %1 rows the last %2 are printed.</source>
        <translation>Von %1 Zeilen sind die letzten %2 gedruckt.</translation>
    </message>
    <message>
        <source>Of %1 rows %2 are printed: the last %3, and before them %4 that are not good.</source>
        <translation>Von %1 Zeilen sind %2 gedruckt: die letzten %3 und davor %4, die nicht gut sind.</translation>
    </message>
    <message>
        <source>%1 more that are not good are not printed.</source>
        <translation>%1 weitere, die nicht gut sind, sind nicht gedruckt.</translation>
    </message>
    <message>
        <source>The record holds them all.</source>
        <translation>Das Protokoll enthält sie alle.</translation>
    </message>
    <message>
        <source>%1 readings, %2 to %3; the last %4: %5</source>
        <translation>%1 Ablesungen, %2 bis %3; die letzten %4: %5</translation>
    </message>
    <message>
        <source>The drawing shows the last readings of each position; the table counts them all.</source>
        <translation>Die Zeichnung zeigt die letzten Ablesungen jeder Stelle; die Tabelle zählt sie alle.</translation>
    </message>
    <message>
        <source>Of %1 verify rounds the last %2 are printed fastener by fastener. The record holds them all.</source>
        <translation>Von %1 Prüfrunden sind die letzten %2 Schraube für Schraube gedruckt. Das Protokoll enthält sie alle.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>bracketed: %1</source>
        <translation>eingegrenzt: %1</translation>
    </message>
    <message>
        <source>by feel</source>
        <translation>durch Gefühl</translation>
    </message>
    <message>
        <source>does not count: %1</source>
        <translation>zählt nicht: %1</translation>
    </message>
    <message>
        <source>Verified</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>With the stacks off, every main-cap and rod fastener is pulled to its specified torque again, without backing it off; or, where it must not be pulled, its stretch is read or its witness mark looked at. Fastener by fastener under Torques.</source>
        <translation>Ohne die Stapel wird jede Schraube der Hauptlagerdeckel und Pleuel noch einmal auf ihr vorgegebenes Drehmoment gezogen, ohne sie vorher zu lösen; wo das nicht sein darf, wird ihre Längung gemessen oder ihre Markierung angesehen. Schraube für Schraube unter Drehmomente.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Verified by</source>
        <translation>Geprüft an</translation>
    </message>
    <message>
        <source>by its mark</source>
        <translation>an der Markierung</translation>
    </message>
    <message>
        <source>Does not count: %1</source>
        <translation>Zählt nicht: %1</translation>
    </message>
    <message>
        <source>Torque on</source>
        <translation>Moment beim Anziehen</translation>
    </message>
    <message>
        <source>Torque off</source>
        <translation>Moment beim Lösen</translation>
    </message>
    <message>
        <source>Clamp</source>
        <translation>Klemmkraft</translation>
    </message>
    <message>
        <source>Clamp, from the torques that turned on and back</source>
        <translation>Klemmkraft, aus den Momenten beim Anziehen und Lösen</translation>
    </message>
    <message>
        <source>A fastener that held turned no further at its torque when it was pulled again: that says nothing more of its clamp.</source>
        <translation>Eine Schraube, die hielt, drehte sich beim Nachziehen auf ihr Moment nicht weiter: Mehr ist damit über ihre Klemmkraft nicht gesagt.</translation>
    </message>
    <message>
        <source>counted: %1 in the stacks + %2 set aside + %3 left over = %4</source>
        <translation>gezählt: %1 in den Stapeln + %2 beiseitegelegt + %3 übrig = %4</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>Charge %1</translation>
    </message>
    <message>
        <source>Turning torque, %1</source>
        <translation>Durchdrehmoment, %1</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Hält auf</translation>
    </message>
    <message>
        <source>The shop&apos;s own checks</source>
        <translation>Eigene Prüfungen der Werkstatt</translation>
    </message>
    <message>
        <source>Thicker</source>
        <translation>Dicker</translation>
    </message>
    <message>
        <source>Thinner</source>
        <translation>Dünner</translation>
    </message>
    <message>
        <source>Bracketed rechecks</source>
        <translation>Eingegrenzte Nachprüfungen</translation>
    </message>
    <message>
        <source>With shims exchanged for thicker ones the straightedge rocks, for thinner ones it is loose: the residual lies between.</source>
        <translation>Mit Distanzscheiben, die gegen dickere getauscht sind, kippelt das Haarlineal, mit dünneren ist es lose: das Restmaß liegt dazwischen.</translation>
    </message>
    <message>
        <source>The feel of %1 with %2 was tried on %3: %4 answers, ± %5.</source>
        <translation>Das Gefühl von %1 mit %2 wurde am %3 geprüft: %4 Antworten, ± %5.</translation>
    </message>
    <message>
        <source>The accepted gap is the median of the counted readings (at least %1, within %2). Outdated readings were made before a fastener of the cap moved or a part was changed; they no longer count. Large differences between positions are normal.</source>
        <translation>Das angenommene Spaltmaß ist der Median der gezählten Ablesungen (mindestens %1, innerhalb %2). Überholte Ablesungen entstanden, bevor sich eine Verschraubung des Deckels weiterdrehte oder ein Teil gewechselt wurde; sie zählen nicht mehr. Große Unterschiede zwischen den Stellen sind normal.</translation>
    </message>
    <message>
        <source>Not signed with a key: the seal shows that nothing was altered since, and not who made the record.</source>
        <translation>Mit keinem Schlüssel signiert: das Siegel zeigt, dass seitdem nichts verändert wurde, aber nicht, wer das Protokoll gemacht hat.</translation>
    </message>
    <message>
        <source>Signed by %1 on %2, all of it. Key %3</source>
        <translation>Signiert von %1 am %2, alles. Schlüssel %3</translation>
    </message>
    <message>
        <source>Signed by %1 on %2, up to entry %3 of %4. Key %5</source>
        <translation>Signiert von %1 am %2, bis Eintrag %3 von %4. Schlüssel %5</translation>
    </message>
    <message>
        <source>The code holds the seal in full.</source>
        <translation>Der Code enthält das ganze Siegel.</translation>
    </message>
    <message>
        <source>The code holds the seal in full and the fingerprint of the key. Compare that with the one that the shop told you by another way.</source>
        <translation>Der Code enthält das ganze Siegel und den Fingerabdruck des Schlüssels. Ihn mit dem vergleichen, den die Werkstatt auf anderem Weg mitgeteilt hat.</translation>
    </message>
    <message>
        <source>Limits of the vertical clearance: %1</source>
        <translation>Grenzen des senkrechten Spiels: %1</translation>
    </message>
    <message>
        <source>Mean ± U, and its limits</source>
        <translation>Mittel ± U und seine Grenzen</translation>
    </message>
    <message>
        <source>Limits by</source>
        <translation>Grenzen von</translation>
    </message>
    <message>
        <source>Other clearances</source>
        <translation>Weitere Spiele</translation>
    </message>
    <message>
        <source>Limits by: %1</source>
        <translation>Grenzen von: %1</translation>
    </message>
    <message>
        <source>Sort</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>What was changed, and why</source>
        <translation>Was geändert wurde, und warum</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>What was changed, struck or accepted again after something had been judged by it.</source>
        <translation>Was geändert, gestrichen oder neu angenommen wurde, nachdem schon danach beurteilt war.</translation>
    </message>
    <message>
        <source>Values that nobody confirmed</source>
        <translation>Werte, die niemand bestätigt hat</translation>
    </message>
    <message>
        <source>Common practice, without a source: the part makers&apos; own figures come first.</source>
        <translation>Gängige Praxis, ohne Quelle: die Angaben der Teilehersteller gehen vor.</translation>
    </message>
    <message>
        <source>Annex: everything that was measured</source>
        <translation>Anhang: alles, was gemessen wurde</translation>
    </message>
    <message>
        <source>In the present build: %1</source>
        <translation>Im jetzigen Aufbau: %1</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>All (%1)</source>
        <translation>Alle (%1)</translation>
    </message>
    <message>
        <source>All others (%1)</source>
        <translation>Alle anderen (%1)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>no; days used: %1</source>
        <translation>nein; benutzt an Tagen: %1</translation>
    </message>
    <message>
        <source>yes; days: %1 of %2</source>
        <translation>ja; an Tagen: %1 von %2</translation>
    </message>
    <message>
        <source>last off by %1</source>
        <translation>zuletzt abweichend um %1</translation>
    </message>
    <message>
        <source>Tried on its standard</source>
        <translation>Am Normal geprüft</translation>
    </message>
    <message>
        <source>Limits: %1</source>
        <translation>Grenzen: %1</translation>
    </message>
    <message>
        <source>Nothing was measured yet.</source>
        <translation>Noch ist nichts gemessen.</translation>
    </message>
    <message>
        <source>Everything was measured and found good; the closing steps and the sign-off are still open.</source>
        <translation>Alles ist gemessen und gut; die Schließschritte und die Abzeichnung stehen noch aus.</translation>
    </message>
    <message>
        <source>%1 of %2 checks are not good. First of them: %3, %4.</source>
        <translation>%1 von %2 Prüfungen sind nicht gut. Die erste davon: %3, %4.</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>%1 (%2 of %3)</source>
        <translation>%1 (%2 von %3)</translation>
    </message>
    <message>
        <source>Main bearing clearance</source>
        <translation>Spiel der Hauptlager</translation>
    </message>
    <message>
        <source>Rod bearing clearance</source>
        <translation>Spiel der Pleuellager</translation>
    </message>
    <message>
        <source>Gap left under the girdle (residual)</source>
        <translation>Verbleibender Spalt unter der Platte (Restmaß)</translation>
    </message>
    <message>
        <source>Twist of the girdle</source>
        <translation>Verwindung der Platte</translation>
    </message>
    <message>
        <source>Clearance under the oil pickup</source>
        <translation>Abstand unter dem Ölansaugrohr</translation>
    </message>
    <message>
        <source>Main-cap and rod fasteners at their torque</source>
        <translation>Hauptlager- und Pleuelverschraubungen bei ihrem Drehmoment</translation>
    </message>
    <message>
        <source>The crank turns freely</source>
        <translation>Die Kurbelwelle dreht frei</translation>
    </message>
    <message>
        <source>Trial fit: all clear</source>
        <translation>Probemontage: alles frei</translation>
    </message>
    <message>
        <source>✓  Signed off</source>
        <translation>✓  Abgezeichnet</translation>
    </message>
    <message>
        <source>Build %1 was closed and signed off by %2 on %3.</source>
        <translation>Aufbau %1 wurde geschlossen und von %2 am %3 abgezeichnet.</translation>
    </message>
    <message>
        <source>✕  NOT FINISHED</source>
        <translation>✕  NICHT FERTIG</translation>
    </message>
    <message>
        <source>They are listed under Changes.</source>
        <translation>Sie stehen unter Änderungen.</translation>
    </message>
    <message>
        <source>Somebody has said of every limit and value whose figure it is.</source>
        <translation>Von jeder Grenze und jedem Wert hat jemand gesagt, wessen Angabe es ist.</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Verdict, places</source>
        <translation>Urteil, Stellen</translation>
    </message>
    <message>
        <source>The figures that matter</source>
        <translation>Die Maße, auf die es ankommt</translation>
    </message>
    <message>
        <source>Found is the smallest and the largest value of all places. A verdict counts the measuring uncertainty; each place with its ± stands in the annex.</source>
        <translation>Gefunden ist der kleinste und der größte Wert aller Stellen. Ein Urteil rechnet die Messunsicherheit ein; jede Stelle mit ihrem ± steht im Anhang.</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation>Unterschriften</translation>
    </message>
    <message>
        <source>Running in and later checks</source>
        <translation>Einfahren, und was nachzusehen ist</translation>
    </message>
    <message>
        <source>The instructions of the makers of rings, bearings, camshaft and oil come first.</source>
        <translation>Die Anleitungen der Hersteller von Ringen, Lagern, Nockenwelle und Öl gehen vor.</translation>
    </message>
    <message>
        <source>Before the first start: fill with oil and turn the pump, without ignition, until oil pressure shows.</source>
        <translation>Vor dem ersten Start: Öl einfüllen und die Pumpe ohne Zündung drehen, bis Öldruck angezeigt wird.</translation>
    </message>
    <message>
        <source>At the first start: look for oil pressure at once. Stop the engine when it falls, when a new noise is heard or when oil runs out anywhere.</source>
        <translation>Beim ersten Start: sofort auf den Öldruck sehen. Den Motor abstellen, wenn er fällt, wenn ein neues Geräusch zu hören ist oder wenn irgendwo Öl austritt.</translation>
    </message>
    <message>
        <source>Running in: change load and speed, no full load and no idling for long, as long as the shop says.</source>
        <translation>Einfahren: Last und Drehzahl wechseln, keine Volllast und kein langer Leerlauf, so lange wie die Werkstatt es sagt.</translation>
    </message>
    <message>
        <source>After running in: change oil and filter, cut the filter open and look for metal.</source>
        <translation>Nach dem Einfahren: Öl und Filter wechseln, den Filter aufschneiden und nach Metall suchen.</translation>
    </message>
    <message>
        <source>Do not retighten the fasteners of the main caps, the rods or the girdle: that is a job for the shop, with the pan off.</source>
        <translation>Verschraubungen von Hauptlagerdeckeln, Pleueln und Platte nicht nachziehen: das ist Sache der Werkstatt, mit abgenommener Ölwanne.</translation>
    </message>
    <message>
        <source>Built with this oil: %1.</source>
        <translation>Mit diesem Öl aufgebaut: %1.</translation>
    </message>
    <message>
        <source>Questions, or anything that looks wrong: %1</source>
        <translation>Bei Fragen, oder wenn etwas nicht stimmt: %1</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>used</source>
        <translation>gebraucht</translation>
    </message>
    <message>
        <source>tightened before: %1×</source>
        <translation>zuvor angezogen: %1×</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Maker, number</source>
        <translation>Hersteller, Nummer</translation>
    </message>
    <message>
        <source>Serial, lot, stamped</source>
        <translation>Seriennummer, Charge, Prägung</translation>
    </message>
    <message>
        <source>New or used</source>
        <translation>Neu oder gebraucht</translation>
    </message>
    <message>
        <source>Machined: what, by whom, when</source>
        <translation>Bearbeitet: was, von wem, wann</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>Seriennummer %1</translation>
    </message>
    <message>
        <source>stamped %1</source>
        <translation>Prägung %1</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Decision rule: guard bands (ISO 14253-1). A value is in when all of value ± U lies inside its limits, out when all of it lies outside, and too close to call otherwise. U is the expanded uncertainty, %1.</source>
        <translation>Entscheidungsregel: Sicherheitsbänder (ISO 14253-1). Ein Wert ist innerhalb, wenn der ganze Bereich Wert ± U innerhalb der Grenzen liegt, außerhalb, wenn er ganz draußen liegt, und sonst nicht entscheidbar. U ist die erweiterte Messunsicherheit, %1.</translation>
    </message>
    <message>
        <source>common practice, confirmed by nobody</source>
        <translation>gängige Praxis, von niemandem bestätigt</translation>
    </message>
    <message>
        <source>Twist is within its limits: %1.</source>
        <translation>Die Verwindung liegt innerhalb ihrer Grenzen: %1.</translation>
    </message>
    <message>
        <source>Limits of the residual (gap less stack; positive is loose): %1</source>
        <translation>Grenzen des Restmaßes (Spaltmaß minus Stapel; positiv ist lose): %1</translation>
    </message>
    <message>
        <source>No place lies off the plane of the others by %1 or more.</source>
        <translation>Keine Stelle liegt um %1 oder mehr neben der Ebene der anderen.</translation>
    </message>
    <message>
        <source>ties cap %1</source>
        <translation>verbindet Deckel %1</translation>
    </message>
    <message>
        <source>ties caps %1 to %2 of %3</source>
        <translation>verbindet Deckel %1 bis %2 von %3</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Girdle</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>order: %1</source>
        <translation>Reihenfolge: %1</translation>
    </message>
    <message>
        <source>steps: %1</source>
        <translation>Stufen: %1</translation>
    </message>
    <message>
        <source>method: %1</source>
        <translation>Verfahren: %1</translation>
    </message>
    <message>
        <source>All groups: %1</source>
        <translation>Alle Gruppen: %1</translation>
    </message>
    <message>
        <source>Measured, but no limits are set: nothing was judged.</source>
        <translation>Gemessen, aber es sind keine Grenzen festgelegt: nichts wurde beurteilt.</translation>
    </message>
    <message>
        <source>Clearances against their limits</source>
        <translation>Lagerspiele und ihre Grenzen</translation>
    </message>
    <message>
        <source>Chart of the clearances between their limits; the tables above hold its figures.</source>
        <translation>Diagramm der Lagerspiele zwischen ihren Grenzen; die Zahlen stehen in den Tabellen darüber.</translation>
    </message>
    <message>
        <source>± is the measuring uncertainty: a value counts as within its limits only with it.</source>
        <translation>± ist die Messunsicherheit: ein Wert gilt nur mit ihr als innerhalb seiner Grenzen.</translation>
    </message>
    <message>
        <source>Plan of the pan rail.</source>
        <translation>Draufsicht auf den Ölwannenflansch.</translation>
    </message>
    <message>
        <source>Chart of how far each fastener moved, round by round; the table under Torques holds its figures.</source>
        <translation>Diagramm, wie weit sich jede Verschraubung weiterdrehte, Runde für Runde; die Zahlen stehen in der Tabelle unter Drehmomente.</translation>
    </message>
    <message>
        <source>p is the probability that the value lies within its limits, C how many times over the limits hold four standard uncertainties (JCGM 106); below 1 a value is weakly measured.</source>
        <translation>p ist die Wahrscheinlichkeit, dass der Wert innerhalb seiner Grenzen liegt, C wie oft die Grenzen vier Standardunsicherheiten fassen (JCGM 106); unter 1 ist ein Wert schwach gemessen.</translation>
    </message>
    <message>
        <source>QR code of the seal: %1</source>
        <translation>QR-Code des Siegels: %1</translation>
    </message>
    <message>
        <source>Chart of the gap readings at each position; the table below holds its figures.</source>
        <translation>Diagramm der Spaltmaße an jeder Stelle; die Zahlen stehen in der Tabelle darunter.</translation>
    </message>
    <message>
        <source>The shop&apos;s logo</source>
        <translation>Das Zeichen der Werkstatt</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 hoch</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 nieder</translation>
    </message>
    <message>
        <source>Load, on the rail</source>
        <translation>Last, am Flansch</translation>
    </message>
    <message>
        <source>Of the preload</source>
        <translation>Der Vorspannkraft</translation>
    </message>
    <message>
        <source>Load, rail free</source>
        <translation>Last, Flansch frei</translation>
    </message>
    <message>
        <source>Load that the girdle puts into the block</source>
        <translation>Last, die die Platte in den Block bringt</translation>
    </message>
    <message>
        <source>Largest load</source>
        <translation>Größte Last</translation>
    </message>
    <message>
        <source>Largest bending stress in the plate</source>
        <translation>Größte Biegespannung in der Platte</translation>
    </message>
    <message>
        <source>Energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>Up: the girdle pulls the cap up; down: it presses on it. %1</source>
        <translation>Hoch: die Platte zieht den Deckel hoch; nieder: sie drückt auf ihn. %1</translation>
    </message>
    <message>
        <source>Map of how the plate bends; the table below holds the loads.</source>
        <translation>Karte, wie sich die Platte biegt; die Kräfte stehen in der Tabelle darunter.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>%1 locked: %2 of %3 checks are not good.</source>
        <translation>%1 gesperrt: %2 von %3 Prüfungen sind nicht gut.</translation>
    </message>
    <message>
        <source>%1 locked: %2 of %3 checks are not good, those above and these.</source>
        <translation>%1 gesperrt: %2 von %3 Prüfungen sind nicht gut, die oben und diese.</translation>
    </message>
    <message>
        <source>%1 locked: %2 of %3 checks are not good, those above.</source>
        <translation>%1 gesperrt: %2 von %3 Prüfungen sind nicht gut, die oben.</translation>
    </message>
    <message>
        <source>%1 as marked</source>
        <translation>%1 wie beschriftet</translation>
    </message>
    <message>
        <source>%1, target %2</source>
        <translation>%1, Ziel %2</translation>
    </message>
    <message>
        <source>%1 (differs from its marking)</source>
        <translation>%1 (weicht von der Beschriftung ab)</translation>
    </message>
    <message>
        <source>Taken %1 by the camera&apos;s clock</source>
        <translation>Aufgenommen %1 nach der Uhr der Kamera</translation>
    </message>
</context>
<context>
    <name>SheetFont</name>
    <message>
        <source>There is no usable font on this computer, and nothing was written: install one, such as DejaVu Sans (Debian: fonts-dejavu-core).</source>
        <translation>Auf diesem Rechner ist keine brauchbare Schrift, und nichts wurde geschrieben: eine installieren, etwa DejaVu Sans (Debian: fonts-dejavu-core).</translation>
    </message>
</context>
<context>
    <name>ShopConfig</name>
    <message>
        <source>%1 (revision %2)</source>
        <translation>%1 (Revision %2)</translation>
    </message>
</context>
<context>
    <name>SpokenWords</name>
    <message>
        <source>%1 held</source>
        <translation>%1 gehalten</translation>
    </message>
    <message>
        <source>%1 moved %2</source>
        <translation>%1 um %2 weitergedreht</translation>
    </message>
    <message>
        <source>%1 moved</source>
        <translation>%1 weitergedreht</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>gestrichen</translation>
    </message>
</context>
<context>
    <name>SpreadChartText</name>
    <message>
        <source>Gap survey</source>
        <translation>Spaltmaße</translation>
    </message>
    <message>
        <source>Every gap that is read appears here.</source>
        <translation>Jedes gemessene Spaltmaß erscheint hier.</translation>
    </message>
    <message>
        <source>No gap has been read yet.</source>
        <translation>Noch wurde kein Spaltmaß gemessen.</translation>
    </message>
    <message>
        <source>pass %1</source>
        <translation>Durchgang %1</translation>
    </message>
    <message>
        <source>no longer counts</source>
        <translation>gilt nicht mehr</translation>
    </message>
    <message>
        <source>accepted gap</source>
        <translation>angenommenes Spaltmaß</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>main cap, front to rear</source>
        <translation>Hauptlagerdeckel, vorn nach hinten</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Spaltmaß</translation>
    </message>
    <message>
        <source>spread %1</source>
        <translation>Spannweite %1</translation>
    </message>
    <message>
        <source>%1 readings at caps %2 to %3.</source>
        <translation>%1 Ablesungen an den Deckeln %2 bis %3.</translation>
    </message>
    <message>
        <source>%1 of them no longer count.</source>
        <translation>%1 davon gelten nicht mehr.</translation>
    </message>
    <message>
        <source>Accepted gaps from %1 to %2, spread %3.</source>
        <translation>Angenommene Spaltmaße von %1 bis %2, Spannweite %3.</translation>
    </message>
    <message>
        <source>No gap is accepted yet.</source>
        <translation>Noch ist kein Spaltmaß angenommen.</translation>
    </message>
    <message>
        <source>Of each position the last %1 are drawn.</source>
        <translation>Von jeder Stelle sind die letzten %1 gezeichnet.</translation>
    </message>
</context>
<context>
    <name>StoringPress</name>
    <message>
        <source>Enter came twice within half a second, so the second one stored nothing. If this one is done too, press it again.</source>
        <translation>Enter kam zweimal innerhalb einer halben Sekunde, das zweite hat deshalb nichts gespeichert. Ist auch dies getan, noch einmal drücken.</translation>
    </message>
    <message>
        <source>“%1” came twice within half a second, so the second one stored nothing. If it is meant for this place too, press it again.</source>
        <translation>„%1“ kam zweimal innerhalb einer halben Sekunde, das zweite hat deshalb nichts gespeichert. Gilt es auch für diese Stelle, noch einmal drücken.</translation>
    </message>
</context>
<context>
    <name>TrialDiagramText</name>
    <message>
        <source>clearance %1</source>
        <translation>Abstand %1</translation>
    </message>
</context>
<context>
    <name>TrialFitText</name>
    <message>
        <source>%1 clear</source>
        <translation>%1 frei</translation>
    </message>
    <message>
        <source>Turning torque, %1</source>
        <translation>Durchdrehmoment, %1</translation>
    </message>
    <message>
        <source>Girdle nuts at torque</source>
        <translation>Plattenmuttern auf Drehmoment</translation>
    </message>
    <message>
        <source>Throw %1: %2</source>
        <translation>Kröpfung %1: %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>VerifyChartText</name>
    <message>
        <source>Movement by verify round</source>
        <translation>Bewegung nach Prüfrunde</translation>
    </message>
    <message>
        <source>Every outcome of a verify round appears here.</source>
        <translation>Jedes Ergebnis einer Prüfrunde erscheint hier.</translation>
    </message>
    <message>
        <source>No outcome passes the filter.</source>
        <translation>Kein Ergebnis entspricht dem Filter.</translation>
    </message>
    <message>
        <source>No outcome to show.</source>
        <translation>Kein Ergebnis zu zeigen.</translation>
    </message>
    <message>
        <source>%1 outcomes in rounds %2 to %3: %4 held, %5 moved, the farthest %6.</source>
        <translation>%1 Ergebnisse in den Runden %2 bis %3: %4 gehalten, %5 weitergedreht, am weitesten %6.</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>moved %1</source>
        <translation>um %1 weitergedreht</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>weitergedreht</translation>
    </message>
    <message>
        <source>moved, main left</source>
        <translation>weitergedreht, Hauptlager links</translation>
    </message>
    <message>
        <source>moved, main right</source>
        <translation>weitergedreht, Hauptlager rechts</translation>
    </message>
    <message>
        <source>moved, rod</source>
        <translation>weitergedreht, Pleuel</translation>
    </message>
    <message>
        <source>verify round</source>
        <translation>Prüfrunde</translation>
    </message>
    <message>
        <source>movement, degrees</source>
        <translation>Bewegung, Grad</translation>
    </message>
    <message>
        <source>Only the last %1 rounds are drawn.</source>
        <translation>Nur die letzten %1 Runden sind gezeichnet.</translation>
    </message>
</context>
<context>
    <name>caprail::AcrossWindow</name>
    <message>
        <source>Range at each place</source>
        <translation>Spannweite an jeder Stelle</translation>
    </message>
    <message>
        <source>Movement in verify rounds</source>
        <translation>Bewegung in Prüfrunden</translation>
    </message>
    <message>
        <source>Instruments by the day that they fall due</source>
        <translation>Messmittel nach Fälligkeit</translation>
    </message>
    <message>
        <source>Across engines — Caprail</source>
        <translation>Motoren im Vergleich — Caprail</translation>
    </message>
    <message>
        <source>Which records</source>
        <translation>Welche Protokolle</translation>
    </message>
    <message>
        <source>All records (%1)</source>
        <translation>Alle Protokolle (%1)</translation>
    </message>
    <message>
        <source>Template: %1 (%2)</source>
        <translation>Vorlage: %1 (%2)</translation>
    </message>
    <message>
        <source>Layout: %1 (%2)</source>
        <translation>Motorbauform: %1 (%2)</translation>
    </message>
    <message>
        <source>&amp;Spread</source>
        <translation>&amp;Streuung</translation>
    </message>
    <message>
        <source>&amp;Movement</source>
        <translation>&amp;Bewegung</translation>
    </message>
    <message>
        <source>&amp;Instruments due</source>
        <translation>&amp;Fällige Messmittel</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Save as a &amp;table (CSV)…</source>
        <translation>Als &amp;Tabelle speichern (CSV)…</translation>
    </message>
    <message>
        <source>spread.csv</source>
        <translation>streuung.csv</translation>
    </message>
    <message>
        <source>By position</source>
        <translation>Nach Stelle</translation>
    </message>
    <message>
        <source>By wrench</source>
        <translation>Nach Schlüssel</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>Nach Person</translation>
    </message>
    <message>
        <source>Counted by</source>
        <translation>Gezählt nach</translation>
    </message>
    <message>
        <source>How often a fastener moved in a verify round, out of how many pulls, in all builds. The counts say nothing of the cause.</source>
        <translation>Wie oft sich eine Verschraubung in einer Prüfrunde weiterdrehte, bei wie vielen Prüfungen, in allen Aufbauten. Die Zahlen sagen nichts über die Ursache.</translation>
    </message>
    <message>
        <source>movement.csv</source>
        <translation>bewegung.csv</translation>
    </message>
    <message>
        <source>Instruments of one name, kind and serial are taken to be the same. A wrench without a date of its own is due a year after its calibration. Pulls are the most that one record counts: records do not know of each other&apos;s.</source>
        <translation>Messmittel mit gleichem Namen, gleicher Art und Seriennummer gelten als dasselbe. Ein Schlüssel ohne eigenes Datum ist ein Jahr nach seiner Kalibrierung fällig. Bei den Lastspielen zählt das Protokoll mit der höchsten Zahl: Protokolle wissen nichts voneinander.</translation>
    </message>
    <message>
        <source>instruments.csv</source>
        <translation>messmittel.csv</translation>
    </message>
    <message>
        <source>Records: %1; pulls in their verify rounds: %2</source>
        <translation>Protokolle: %1; Prüfungen in ihren Prüfrunden: %2</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>Values</source>
        <translation>Werte</translation>
    </message>
    <message>
        <source>Smallest</source>
        <translation>Kleinster</translation>
    </message>
    <message>
        <source>Median</source>
        <translation>Median</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Größter</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Spannweite</translation>
    </message>
    <message>
        <source>Judged out</source>
        <translation>Außerhalb</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Moved, of pulls</source>
        <translation>Weitergedreht, von Prüfungen</translation>
    </message>
    <message>
        <source>Largest movement</source>
        <translation>Größte Bewegung</translation>
    </message>
    <message>
        <source>✕ overdue</source>
        <translation>✕ überfällig</translation>
    </message>
    <message>
        <source>days left: %1</source>
        <translation>Tage übrig: %1</translation>
    </message>
    <message>
        <source>no date</source>
        <translation>kein Datum</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Kalibriert</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Pulls</source>
        <translation>Lastspiele</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Protokolle</translation>
    </message>
    <message>
        <source>Save as a table</source>
        <translation>Als Tabelle speichern</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>Caprail</source>
        <translation>Caprail</translation>
    </message>
</context>
<context>
    <name>caprail::AddFromShelfDialog</name>
    <message>
        <source>On the shelf and not in this record</source>
        <translation>Im Regal und nicht in diesem Protokoll</translation>
    </message>
    <message>
        <source>Add from the shop</source>
        <translation>Aus der Werkstatt hinzufügen</translation>
    </message>
    <message>
        <source>Ticked ones are copied into this record, which is then complete by itself.</source>
        <translation>Angekreuzte werden in dieses Protokoll kopiert, das dann für sich allein steht.</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>%1; this record has another state of it</source>
        <translation>%1; dieses Protokoll hat einen anderen Stand davon</translation>
    </message>
    <message>
        <source>Kits of shims</source>
        <translation>Sätze von Distanzscheiben</translation>
    </message>
    <message>
        <source>&amp;Copy into the record</source>
        <translation>In das Protokoll &amp;kopieren</translation>
    </message>
    <message>
        <source>There is nothing on the shelf that this record does not have. Fill the shelf from a record: Shop ▸ The shelf.</source>
        <translation>Im Regal ist nichts, was dieses Protokoll nicht hat. Das Regal aus einem Protokoll füllen: Werkstatt ▸ Das Regal.</translation>
    </message>
</context>
<context>
    <name>caprail::BearingsFilm</name>
    <message>
        <source>Bearing</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>Film, as measured</source>
        <translation>Film, wie gemessen</translation>
    </message>
    <message>
        <source>Film, warm</source>
        <translation>Film, warm</translation>
    </message>
    <message>
        <source>h₀/c</source>
        <translation>h₀/c</translation>
    </message>
    <message>
        <source>Sommerfeld</source>
        <translation>Sommerfeld</translation>
    </message>
    <message>
        <source>Unit load</source>
        <translation>Flächenpressung</translation>
    </message>
    <message>
        <source>Oil films</source>
        <translation>Schmierfilme</translation>
    </message>
    <message>
        <source>Load on a bearing</source>
        <translation>Last auf ein Lager</translation>
    </message>
    <message>
        <source>Oil</source>
        <translation>Öl</translation>
    </message>
    <message>
        <source>Speed, 1/min</source>
        <translation>Drehzahl, 1/min</translation>
    </message>
    <message>
        <source>mm²/s at 40 °C</source>
        <translation>mm²/s bei 40 °C</translation>
    </message>
    <message>
        <source>Width of the shells</source>
        <translation>Breite der Schalen</translation>
    </message>
    <message>
        <source>mm²/s at 100 °C</source>
        <translation>mm²/s bei 100 °C</translation>
    </message>
    <message>
        <source>none named</source>
        <translation>keine genannt</translation>
    </message>
    <message>
        <source>figures of your own</source>
        <translation>eigene Werte</translation>
    </message>
    <message>
        <source>Typical figures of data sheets, common practice, no source: the sheet of the oil in the can comes first.</source>
        <translation>Übliche Werte aus Datenblättern, Praxisregel ohne Quelle: das Blatt des Öls in der Kanne geht vor.</translation>
    </message>
    <message>
        <source>the speed</source>
        <translation>die Drehzahl</translation>
    </message>
    <message>
        <source>the width of the shells</source>
        <translation>die Breite der Schalen</translation>
    </message>
    <message>
        <source>the load on a bearing</source>
        <translation>die Last auf ein Lager</translation>
    </message>
    <message>
        <source>The temperatures beside this cannot be read.</source>
        <translation>Die Temperaturen daneben sind nicht lesbar.</translation>
    </message>
</context>
<context>
    <name>caprail::BearingsFits</name>
    <message>
        <source>%1, throw %2</source>
        <translation>%1, Kröpfung %2</translation>
    </message>
    <message>
        <source>%1, place %2</source>
        <translation>%1, Stelle %2</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Passungen</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Passung</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>&amp;Bands, and fits of the shop&apos;s own…</source>
        <translation>Bänder und eigene &amp;Passungen der Werkstatt…</translation>
    </message>
    <message>
        <source>No fits yet</source>
        <translation>Noch keine Passungen</translation>
    </message>
    <message>
        <source>A fit is read against a band: set that of the crank end play, the rod side clearance or a fit of your own first.</source>
        <translation>Zu jeder Passung gehört ein Band: zuerst das des Axialspiels, des Seitenspiels der Pleuel oder einer eigenen Passung festlegen.</translation>
    </message>
    <message>
        <source>Not read.</source>
        <translation>Nicht gemessen.</translation>
    </message>
</context>
<context>
    <name>caprail::BearingsMeasure</name>
    <message>
        <source>&amp;Crank changed</source>
        <translation>&amp;Kurbelwelle gewechselt</translation>
    </message>
    <message>
        <source> stations</source>
        <translation> Messebenen</translation>
    </message>
    <message>
        <source>Stations along the journal</source>
        <translation>Messebenen längs des Zapfens</translation>
    </message>
    <message>
        <source> directions</source>
        <translation> Richtungen</translation>
    </message>
    <message>
        <source>Directions around the journal</source>
        <translation>Richtungen um den Zapfen</translation>
    </message>
    <message>
        <source>Readings of this journal</source>
        <translation>Ablesungen dieses Zapfens</translation>
    </message>
    <message>
        <source>What they come to</source>
        <translation>Was daraus folgt</translation>
    </message>
    <message>
        <source>Another crank, or it was worked on: its journals are measured again</source>
        <translation>Eine andere Kurbelwelle, oder sie wurde bearbeitet: ihre Zapfen werden neu gemessen</translation>
    </message>
    <message>
        <source>Other shells lie in this bearing: its bore is measured again</source>
        <translation>In diesem Lager liegen andere Schalen: seine Bohrung wird neu gemessen</translation>
    </message>
    <message>
        <source>clearance at %1</source>
        <translation>Spiel an %1</translation>
    </message>
    <message>
        <source>No layout</source>
        <translation>Keine Motorbauform</translation>
    </message>
    <message>
        <source>The journals follow from the engine layout: set it at the engine station.</source>
        <translation>Die Zapfen folgen aus der Motorbauform: an der Station Motor festlegen.</translation>
    </message>
    <message>
        <source>No band is set for its clearance.</source>
        <translation>Für das Spiel ist kein Band festgelegt.</translation>
    </message>
    <message>
        <source>Every place of this pass is read.</source>
        <translation>Jede Stelle dieses Durchgangs ist gemessen.</translation>
    </message>
    <message>
        <source>%1 of %2 places still to read. ↑ ↓ step through them.</source>
        <translation>Noch %1 von %2 Stellen zu messen. Mit ↑ ↓ durchgehen.</translation>
    </message>
    <message>
        <source>Journal %1, %2</source>
        <translation>Zapfen %1, %2</translation>
    </message>
    <message>
        <source>Clearance at %1, %2</source>
        <translation>Spiel an %1, %2</translation>
    </message>
    <message>
        <source>Housing of %1, %2</source>
        <translation>Gehäusebohrung von %1, %2</translation>
    </message>
    <message>
        <source>Bore of %1 with shells, %2</source>
        <translation>Bohrung von %1 mit Schalen, %2</translation>
    </message>
    <message>
        <source>Bores and journals are measured before, gaps and all else after</source>
        <translation>Bohrungen und Zapfen werden vorher gemessen, Spaltmaße und alles andere danach</translation>
    </message>
    <message>
        <source>Crank lifted &amp;out</source>
        <translation>Kurbelwelle he&amp;rausgehoben</translation>
    </message>
    <message>
        <source>Crank laid &amp;in, caps at torque</source>
        <translation>Kurbelwelle &amp;eingelegt, Deckel auf Drehmoment</translation>
    </message>
    <message>
        <source>Measured square to the parting line.</source>
        <translation>Rechtwinklig zur Trennebene gemessen.</translation>
    </message>
    <message>
        <source>She&amp;lls changed in %1</source>
        <translation>Schalen in %1 &amp;gewechselt</translation>
    </message>
</context>
<context>
    <name>caprail::BearingsShells</name>
    <message>
        <source>Shells</source>
        <translation>Schalen</translation>
    </message>
    <message>
        <source>Shell</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Passt in</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Hälfte</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>As</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>Lies in</source>
        <translation>Liegt in</translation>
    </message>
    <message>
        <source>A half shell</source>
        <translation>Eine Schalenhälfte</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>without spaces: U1</source>
        <translation>ohne Leerzeichen: U1</translation>
    </message>
    <message>
        <source>at the crown</source>
        <translation>am Scheitel</translation>
    </message>
    <message>
        <source>As marked</source>
        <translation>Wie beschriftet</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>Shells by bearing</source>
        <translation>Schalen nach Lager</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>Upper</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Lower</source>
        <translation>Unten</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Gewählt</translation>
    </message>
    <message>
        <source>Clearance then</source>
        <translation>Spiel dann</translation>
    </message>
    <message>
        <source>Shells put in by hand</source>
        <translation>Von Hand eingelegte Schalen</translation>
    </message>
    <message>
        <source>main-3</source>
        <translation>main-3</translation>
    </message>
    <message>
        <source>&amp;Choose from the shelf</source>
        <translation>Aus dem Re&amp;gal wählen</translation>
    </message>
    <message>
        <source>&amp;Take over</source>
        <translation>Über&amp;nehmen</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>beschriftet</translation>
    </message>
    <message>
        <source>shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>none left</source>
        <translation>keine übrig</translation>
    </message>
    <message>
        <source>The shelf is empty: enter each half shell with its thickness.</source>
        <translation>Das Regal ist leer: jede Schalenhälfte mit ihrer Dicke eintragen.</translation>
    </message>
    <message>
        <source>Chosen for most clearances in band, then closest to target, then least spread.</source>
        <translation>Gewählt wird nach: die meisten Spiele im Band, dann die kleinste Abweichung vom Ziel, dann die kleinste Spannweite.</translation>
    </message>
    <message>
        <source>Entered: %1 bearings have other shells now. Measure their bores again.</source>
        <translation>Übernommen: %1 Lager haben jetzt andere Schalen. Ihre Bohrungen neu messen.</translation>
    </message>
    <message>
        <source>Choosing …</source>
        <translation>Es wird gewählt …</translation>
    </message>
    <message>
        <source>Left out: %1.</source>
        <translation>Ausgelassen: %1.</translation>
    </message>
    <message>
        <source>%1 (best found so far)</source>
        <translation>%1 (bisher das Beste)</translation>
    </message>
    <message>
        <source>%1 (still looking)</source>
        <translation>%1 (sucht noch)</translation>
    </message>
    <message>
        <source>Store shel&amp;l</source>
        <translation>Scha&amp;le speichern</translation>
    </message>
    <message>
        <source>Store fitti&amp;ng</source>
        <translation>&amp;Einbau speichern</translation>
    </message>
</context>
<context>
    <name>caprail::BearingsStation</name>
    <message>
        <source>Journals</source>
        <translation>Zapfen</translation>
    </message>
    <message>
        <source>Journal diameters</source>
        <translation>Zapfendurchmesser</translation>
    </message>
    <message>
        <source>Bores</source>
        <translation>Bohrungen</translation>
    </message>
    <message>
        <source>Bores with the shells in, caps at torque</source>
        <translation>Bohrungen mit eingelegten Schalen, Deckel auf Drehmoment</translation>
    </message>
    <message>
        <source>Housings</source>
        <translation>Gehäusebohrungen</translation>
    </message>
    <message>
        <source>Housing bores without shells</source>
        <translation>Gehäusebohrungen ohne Schalen</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Clearance by gauging strip</source>
        <translation>Spiel mit dem Messstreifen</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Passungen</translation>
    </message>
    <message>
        <source>Crank end play, rod side clearance, own fits</source>
        <translation>Axialspiel, Seitenspiel der Pleuel, eigene Passungen</translation>
    </message>
    <message>
        <source>Shells</source>
        <translation>Schalen</translation>
    </message>
    <message>
        <source>Shells on the shelf and in the engine</source>
        <translation>Schalen im Regal und im Motor</translation>
    </message>
    <message>
        <source>Warm</source>
        <translation>Warm</translation>
    </message>
    <message>
        <source>Set the engine layout at the engine station: the journals follow from it.</source>
        <translation>Die Motorbauform an der Station Motor festlegen: die Zapfen folgen daraus.</translation>
    </message>
    <message>
        <source>Select a journal on the diagram and type its diameter; Enter stores it and goes to the next place: two stations along the journal, two directions around it. Then the bores, with the shells in and the caps at full torque. The clearance, its uncertainty and a verdict appear beside the diagram.</source>
        <translation>Einen Zapfen in der Zeichnung wählen und seinen Durchmesser eingeben; Enter speichert und geht zur nächsten Stelle: zwei Messebenen längs des Zapfens, zwei Richtungen um ihn herum. Dann die Bohrungen, mit eingelegten Schalen und Deckeln auf vollem Drehmoment. Spiel, Unsicherheit und Urteil erscheinen neben der Zeichnung.</translation>
    </message>
    <message>
        <source>Clearances and oil films at another temperature</source>
        <translation>Spiele und Schmierfilme bei anderer Temperatur</translation>
    </message>
</context>
<context>
    <name>caprail::BearingsWarm</name>
    <message>
        <source>Clearances</source>
        <translation>Spiele</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Dann</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>%1: millionths per kelvin</source>
        <translation>%1: Millionstel je Kelvin</translation>
    </message>
    <message>
        <source>10⁻⁶/K</source>
        <translation>10⁻⁶/K</translation>
    </message>
    <message>
        <source>Block is of</source>
        <translation>Block aus</translation>
    </message>
    <message>
        <source>Crank is of</source>
        <translation>Kurbelwelle aus</translation>
    </message>
    <message>
        <source>Measured at</source>
        <translation>Gemessen bei</translation>
    </message>
    <message>
        <source>Block then at</source>
        <translation>Block dann bei</translation>
    </message>
    <message>
        <source>Crank then at</source>
        <translation>Kurbelwelle dann bei</translation>
    </message>
    <message>
        <source>a figure of your own</source>
        <translation>eine eigene Zahl</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>wie eingegeben</translation>
    </message>
    <message>
        <source>block %1; crank %2</source>
        <translation>Block %1; Kurbelwelle %2</translation>
    </message>
    <message>
        <source>the block</source>
        <translation>den Block</translation>
    </message>
    <message>
        <source>the crank</source>
        <translation>die Kurbelwelle</translation>
    </message>
    <message>
        <source>the temperature when measured</source>
        <translation>die Temperatur beim Messen</translation>
    </message>
    <message>
        <source>the block&apos;s temperature</source>
        <translation>die Temperatur des Blocks</translation>
    </message>
    <message>
        <source>the crank&apos;s temperature</source>
        <translation>die Temperatur der Kurbelwelle</translation>
    </message>
    <message>
        <source>Coefficients: %1.</source>
        <translation>Ausdehnungskoeffizienten: %1.</translation>
    </message>
</context>
<context>
    <name>caprail::BenchPad</name>
    <message>
        <source>decimal point</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>plus</source>
        <translation>plus</translation>
    </message>
    <message>
        <source>Insist on the value</source>
        <translation>Auf dem Wert bestehen</translation>
    </message>
    <message>
        <source>per</source>
        <translation>durch</translation>
    </message>
    <message>
        <source>minus</source>
        <translation>minus</translation>
    </message>
    <message>
        <source>▲ Back</source>
        <translation>▲ Zurück</translation>
    </message>
    <message>
        <source>Back: the place before</source>
        <translation>Zurück: die Stelle davor</translation>
    </message>
    <message>
        <source>▼ Next</source>
        <translation>▼ Weiter</translation>
    </message>
    <message>
        <source>Next: the place after</source>
        <translation>Weiter: die nächste Stelle</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Strike the last</source>
        <translation>Letzten streichen</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Esc: leave the bench view</source>
        <translation>Esc: die Werkbank-Ansicht verlassen</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Take the last sign away: Del</source>
        <translation>Das letzte Zeichen wegnehmen: Entf</translation>
    </message>
</context>
<context>
    <name>caprail::BenchView</name>
    <message>
        <source>Enter stores and goes on · ↑ ↓ another place · Ctrl+Z strikes the last · Esc back</source>
        <translation>Enter speichert und geht weiter · ↑ ↓ andere Stelle · Strg+Z streicht den letzten Eintrag · Esc zurück</translation>
    </message>
</context>
<context>
    <name>caprail::BudgetWindow</name>
    <message>
        <source>Uncertainty of the %1</source>
        <translation>Messunsicherheit von: %1</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Standard uncertainty</source>
        <translation>Standardunsicherheit</translation>
    </message>
    <message>
        <source>Sensitivity</source>
        <translation>Empfindlichkeit</translation>
    </message>
    <message>
        <source>Contribution</source>
        <translation>Beitrag</translation>
    </message>
    <message>
        <source>Freedom</source>
        <translation>Freiheitsgrade</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>%1 (same for all)</source>
        <translation>%1 (für alle gleich)</translation>
    </message>
</context>
<context>
    <name>caprail::BuildsDialog</name>
    <message>
        <source>Builds compared</source>
        <translation>Aufbauten im Vergleich</translation>
    </message>
    <message>
        <source>Earlier build</source>
        <translation>Früherer Aufbau</translation>
    </message>
    <message>
        <source>Later build</source>
        <translation>Späterer Aufbau</translation>
    </message>
    <message>
        <source>What is different</source>
        <translation>Was anders ist</translation>
    </message>
    <message>
        <source>&amp;Then</source>
        <translation>&amp;Damals</translation>
    </message>
    <message>
        <source>&amp;Now</source>
        <translation>&amp;Jetzt</translation>
    </message>
    <message>
        <source>&amp;Sheet of the difference (PDF)…</source>
        <translation>&amp;Blatt der Unterschiede (PDF)…</translation>
    </message>
    <message>
        <source>There is nothing to compare yet: neither build holds a measured value.</source>
        <translation>Keiner der beiden Aufbauten enthält schon etwas Vergleichbares.</translation>
    </message>
    <message>
        <source>± U is the expanded uncertainty of the difference. A difference within it is not a measured change. Positive is worn.</source>
        <translation>± U ist die erweiterte Messunsicherheit des Unterschieds. Ein Unterschied innerhalb davon ist keine gemessene Änderung. Verschleiß ist positiv, wo Werkstoff fehlt.</translation>
    </message>
</context>
<context>
    <name>caprail::Chart</name>
    <message>
        <source>Readings are drawn here.</source>
        <translation>Hier wird gezeichnet, was gemessen ist.</translation>
    </message>
</context>
<context>
    <name>caprail::ChecksView</name>
    <message>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>No check concerns this place.</source>
        <translation>Keine Prüfung betrifft diese Stelle.</translation>
    </message>
    <message>
        <source>Set the engine layout at the engine station: the checks follow from it.</source>
        <translation>Die Motorbauform an der Station Motor festlegen: die Prüfungen folgen daraus.</translation>
    </message>
    <message>
        <source>Accept again</source>
        <translation>Neu beurteilen</translation>
    </message>
    <message>
        <source>Why are the values of “%1” accepted?</source>
        <translation>Warum gelten die Werte von „%1“ weiter?</translation>
    </message>
    <message>
        <source>Accept again…</source>
        <translation>Neu beurteilen…</translation>
    </message>
    <message>
        <source>J, or the context menu: accept the values by the new numbers, with a reason.</source>
        <translation>J oder das Kontextmenü: die Werte gelten lassen und nach den neuen Zahlen beurteilen.</translation>
    </message>
    <message>
        <source>p: the probability that the value lies in its band; C: how many times over the band holds four standard uncertainties. Below 1 it is weakly measured.</source>
        <translation>p: die Wahrscheinlichkeit, dass der Wert in seinem Band liegt; C: wie oft das Band vier Standardunsicherheiten fasst. Unter 1 ist er schwach gemessen.</translation>
    </message>
</context>
<context>
    <name>caprail::ClosingFindings</name>
    <message>
        <source>Sett&amp;le</source>
        <translation>Er&amp;ledigen</translation>
    </message>
    <message>
        <source>Findings and notes</source>
        <translation>Befunde und Notizen</translation>
    </message>
    <message>
        <source>What was done about the selected finding</source>
        <translation>Was wegen des gewählten Befunds getan wurde</translation>
    </message>
    <message>
        <source>Place: 3R, main-3, …</source>
        <translation>Stelle: 3R, main-3, …</translation>
    </message>
    <message>
        <source>Place of the finding or note</source>
        <translation>Stelle des Befunds oder der Notiz</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Was zu sehen war</translation>
    </message>
    <message>
        <source>Open f&amp;inding</source>
        <translation>Be&amp;fund eröffnen</translation>
    </message>
    <message>
        <source>Add &amp;note</source>
        <translation>&amp;Notiz hinzufügen</translation>
    </message>
    <message>
        <source>No finding and no note yet. A burr, an unknown
stamping, a wrong marking: open a finding below.</source>
        <translation>Noch kein Befund und keine Notiz. Ein Grat, eine unbekannte
Prägung, eine falsche Beschriftung: unten einen Befund eröffnen.</translation>
    </message>
    <message numerus="yes">
        <source>%n older ones are in the history.</source>
        <translation>
            <numerusform>%n ältere Eintragung steht im Verlauf.</numerusform>
            <numerusform>%n ältere Eintragungen stehen im Verlauf.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 at %2: %3</source>
        <translation>%1 an %2: %3</translation>
    </message>
    <message>
        <source>opened by %1, entry %2</source>
        <translation>eröffnet von %1, Eintrag %2</translation>
    </message>
    <message>
        <source>settled by %1: %2</source>
        <translation>erledigt von %1: %2</translation>
    </message>
    <message>
        <source>✎ Note, %1: %2</source>
        <translation>✎ Notiz, %1: %2</translation>
    </message>
    <message>
        <source>✎ Note at %1, %2: %3</source>
        <translation>✎ Notiz an %1, %2: %3</translation>
    </message>
</context>
<context>
    <name>caprail::ClosingPhotos</name>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Place: 3R, main-3, …</source>
        <translation>Stelle: 3R, main-3, …</translation>
    </message>
    <message>
        <source>Place of the photo</source>
        <translation>Stelle des Fotos</translation>
    </message>
    <message>
        <source>What the photo shows</source>
        <translation>Was das Foto zeigt</translation>
    </message>
    <message>
        <source>Add pho&amp;to…</source>
        <translation>Fo&amp;to hinzufügen…</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>Ctrl+V</source>
        <translation>Strg+V</translation>
    </message>
    <message>
        <source>Entry %1, %2, %3 kB. Enter shows it large.</source>
        <translation>Eintrag %1, %2, %3 kB. Enter zeigt es groß.</translation>
    </message>
    <message>
        <source>Entry %1, %2, %3 kB, taken %4 by the camera&apos;s clock. Enter shows it large.</source>
        <translation>Eintrag %1, %2, %3 kB, aufgenommen %4 nach der Uhr der Kamera. Enter zeigt es groß.</translation>
    </message>
</context>
<context>
    <name>caprail::ClosingPicture</name>
    <message>
        <source>All that this step goes through</source>
        <translation>Alles, was dieser Schritt durchgeht</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Was als Nächstes kommt</translation>
    </message>
    <message>
        <source>Set the engine layout at the engine station.</source>
        <translation>Die Motorbauform an der Station Motor festlegen.</translation>
    </message>
</context>
<context>
    <name>caprail::ClosingStation</name>
    <message>
        <source>What holds the closing gate</source>
        <translation>Was die Freigabe zum Schließen aufhält</translation>
    </message>
    <message>
        <source>Build %1 is closed</source>
        <translation>Aufbau %1 ist geschlossen</translation>
    </message>
    <message>
        <source>Everything is closed up: sign off</source>
        <translation>Alles ist geschlossen: abzeichnen</translation>
    </message>
    <message>
        <source>Closing is open</source>
        <translation>Schließen ist freigegeben</translation>
    </message>
    <message>
        <source>Locked: the engine layout is not set yet</source>
        <translation>Gesperrt: die Motorbauform ist noch nicht festgelegt</translation>
    </message>
    <message>
        <source>Locked: %1 of %2 checks hold it</source>
        <translation>Gesperrt durch %1 von %2 Prüfungen</translation>
    </message>
    <message>
        <source>Findings (%1 open) and notes</source>
        <translation>Befunde (%1 offen) und Notizen</translation>
    </message>
    <message>
        <source>Photos (%1)</source>
        <translation>Fotos (%1)</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>The steps that hide everything else. They unlock when no check is out, open or stale, and a verify round newer than the last trial fit found every fastener held. Each step is entered by a person, by name, with its own evidence.</source>
        <translation>Die Schritte, die alles andere verdecken. Sie werden freigegeben, wenn keine Prüfung außerhalb, offen oder veraltet ist und eine Prüfrunde nach der letzten Probemontage jede Schraube fest fand. Jeden Schritt trägt eine Person mit ihrem Namen ein, mit seinem eigenen Nachweis.</translation>
    </message>
    <message>
        <source>Say whose they are…</source>
        <translation>Sagen, wessen sie sind …</translation>
    </message>
    <message numerus="yes">
        <source>… and %n more.</source>
        <translation>
            <numerusform>… und %n weiterer.</numerusform>
            <numerusform>… und %n weitere.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>caprail::ClosingSteps</name>
    <message>
        <source>Build %1 signed off by %2, %3: “%4”</source>
        <translation>Aufbau %1 abgezeichnet von %2, %3: „%4“</translation>
    </message>
    <message>
        <source>Begin &amp;build %1…</source>
        <translation>Au&amp;fbau %1 beginnen…</translation>
    </message>
    <message>
        <source>New build</source>
        <translation>Neuer Aufbau</translation>
    </message>
    <message>
        <source>Why is this engine built again? What was recorded of this build stays readable.</source>
        <translation>Warum wird dieser Motor neu aufgebaut? Was zu diesem Aufbau protokolliert ist, bleibt lesbar.</translation>
    </message>
</context>
<context>
    <name>caprail::ClosingTaskPage</name>
    <message>
        <source>Ph&amp;oto…</source>
        <translation>Fo&amp;to …</translation>
    </message>
</context>
<context>
    <name>caprail::Core</name>
    <message>
        <source>Nothing is specified for %1: set its group first, under Groups.</source>
        <translation>Für %1 ist nichts vorgegeben: zuerst die Gruppe einrichten, unter „Gruppen“.</translation>
    </message>
    <message>
        <source>“%1” is larger than 60 MB: take a smaller picture of it.</source>
        <translation>„%1“ ist größer als 60 MB: ein kleineres Bild davon nehmen.</translation>
    </message>
    <message>
        <source>There is no picture on the clipboard: copy one first.</source>
        <translation>In der Zwischenablage ist kein Bild: zuerst eines kopieren.</translation>
    </message>
    <message>
        <source>The run “%1” begins and ends with different letters: use the same.</source>
        <translation>Die Reihe „%1“ beginnt und endet mit verschiedenen Buchstaben: dieselben nehmen.</translation>
    </message>
    <message>
        <source>The run “%1” must go upwards, and over no more than %2 shims.</source>
        <translation>Die Reihe „%1“ muss aufsteigen und darf höchstens %2 Distanzscheiben umfassen.</translation>
    </message>
    <message>
        <source>The kit has a shim %1 already: give this one another name.</source>
        <translation>Der Satz hat schon eine Distanzscheibe %1: dieser einen anderen Namen geben.</translation>
    </message>
    <message>
        <source>Between 1 and %1 shims are added at once, not %2.</source>
        <translation>Auf einmal werden 1 bis %1 Distanzscheiben hinzugefügt, nicht %2.</translation>
    </message>
    <message>
        <source>“%1” does not give a name and a size: type for example S001 10 thou, or 12 x 10 thou.</source>
        <translation>„%1“ nennt keinen Namen und kein Maß: zum Beispiel S001 10 thou oder 12 x 10 thou eingeben.</translation>
    </message>
    <message>
        <source>The kit has no shim %1: add it first.</source>
        <translation>Der Satz hat keine Distanzscheibe %1: zuerst hinzufügen.</translation>
    </message>
    <message>
        <source>Say which shim was measured: its name, then the value.</source>
        <translation>Angeben, welche Distanzscheibe gemessen wurde: ihren Namen, dann den Wert.</translation>
    </message>
    <message>
        <source>Type the names of the shims, or a dash for a bare position.</source>
        <translation>Die Namen der Distanzscheiben eingeben oder einen Strich für eine leere Stelle.</translation>
    </message>
    <message>
        <source>Shim %1 is named twice: there is one of it.</source>
        <translation>Distanzscheibe %1 ist zweimal genannt: es gibt sie nur einmal.</translation>
    </message>
    <message>
        <source>The sequence names %1, but this engine does not have it: take it out.</source>
        <translation>Die Reihenfolge nennt %1, aber dieser Motor hat keine solche Verschraubung: herausnehmen.</translation>
    </message>
    <message>
        <source>The sequence names %1, which is not of the %2 pair: take it out.</source>
        <translation>Die Reihenfolge nennt %1, die nicht zum Paar „%2“ gehört: herausnehmen.</translation>
    </message>
    <message>
        <source>“%1” is not a day for %2: write it as 2026-05-04.</source>
        <translation>„%1“ ist kein Tag für %2: in der Form 2026-05-04 schreiben.</translation>
    </message>
    <message>
        <source>Shell %1 is wanted in %2 but lies in %3, which waits for shells in its turn: enter two free shells for %4 first.</source>
        <translation>Lagerschale %1 wird in %2 gebraucht, liegt aber in %3, das seinerseits auf Schalen wartet: zuerst zwei freie Schalen für %4 eintragen.</translation>
    </message>
    <message>
        <source>trial fit failed: %1</source>
        <translation>Probemontage nicht bestanden: %1</translation>
    </message>
    <message>
        <source>The girdle does not bear on %1 of this engine: leave it out.</source>
        <translation>Die Versteifungsplatte liegt an diesem Motor nicht auf %1 auf: weglassen.</translation>
    </message>
    <message>
        <source>%1 is in the order twice: name each place once.</source>
        <translation>%1 steht zweimal in der Reihenfolge: jede Stelle einmal nennen.</translation>
    </message>
    <message>
        <source>%1 is missing from the order: name every place once.</source>
        <translation>%1 fehlt in der Reihenfolge: jede Stelle einmal nennen.</translation>
    </message>
    <message>
        <source>“%1” is not an answer here: type p for pass, f for fail with what was seen, or the measured clearance.</source>
        <translation>„%1“ ist hier keine Antwort: p für bestanden eingeben, f für nicht bestanden mit dem, was zu sehen war, oder den gemessenen Abstand.</translation>
    </message>
    <message>
        <source>Line %1 of the template: %2</source>
        <translation>Zeile %1 der Vorlage: %2</translation>
    </message>
    <message>
        <source>Entries made before it wait to be stored, so it waits behind them.</source>
        <translation>Frühere Einträge warten noch darauf, gespeichert zu werden; dieser wartet hinter ihnen.</translation>
    </message>
    <message>
        <source>The journal&apos;s diameter must be above zero: measure it first.</source>
        <translation>Der Durchmesser des Zapfens muss über null sein: zuerst messen.</translation>
    </message>
    <message>
        <source>A coefficient of expansion lies between 0 and 100 millionths per kelvin: enter 11.4 for grey cast iron, for example.</source>
        <translation>Ein Ausdehnungskoeffizient liegt zwischen 0 und 100 Millionstel je Kelvin: zum Beispiel 11.4 für Grauguss eingeben.</translation>
    </message>
    <message>
        <source>A temperature of block or crank lies between −60 °C and 300 °C: look at what was entered.</source>
        <translation>Die Temperatur von Block oder Kurbelwelle liegt zwischen −60 °C und 300 °C: ansehen, was eingegeben wurde.</translation>
    </message>
    <message>
        <source>The journal has no vertical reading: measure it square to the parting line.</source>
        <translation>Der Zapfen hat keine senkrechte Ablesung: rechtwinklig zur Trennebene messen.</translation>
    </message>
    <message>
        <source>The journal is not measured: read two stations or more, in two directions.</source>
        <translation>Der Zapfen ist nicht gemessen: zwei Messebenen oder mehr messen, in zwei Richtungen.</translation>
    </message>
    <message>
        <source>Stations and directions of a journal count from 1: look at station %1, direction %2.</source>
        <translation>Messebenen und Richtungen eines Zapfens zählen ab 1: Messebene %1, Richtung %2 ansehen.</translation>
    </message>
    <message>
        <source>The journal&apos;s diameter at station %1 must be above zero: enter the diameter.</source>
        <translation>Der Durchmesser des Zapfens an Messebene %1 muss über null sein: den Durchmesser eingeben.</translation>
    </message>
    <message>
        <source>Both shells need a thickness above zero: measure them at the crown.</source>
        <translation>Beide Schalen brauchen eine Dicke über null: am Scheitel messen.</translation>
    </message>
    <message>
        <source>The gauging strip is not read yet: read its width against its scale.</source>
        <translation>Der Messstreifen ist noch nicht abgelesen: seine Breite an der Skala ablesen.</translation>
    </message>
    <message>
        <source>The strip&apos;s reading at station %1 must be above zero: read it again.</source>
        <translation>Die Ablesung des Streifens an Messebene %1 muss über null sein: noch einmal ablesen.</translation>
    </message>
    <message>
        <source>either</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>Flushness of the plate</source>
        <translation>Bündigkeit der Platte</translation>
    </message>
    <message>
        <source>Put every stack right first.</source>
        <translation>Zuerst jeden Stapel in Ordnung bringen.</translation>
    </message>
    <message>
        <source>Not every position has a stack over an accepted gap.</source>
        <translation>Nicht jede Stelle hat einen Stapel über einem angenommenen Spaltmaß.</translation>
    </message>
    <message>
        <source>Build the missing stacks first.</source>
        <translation>Zuerst die fehlenden Stapel aufbauen.</translation>
    </message>
    <message>
        <source>Plan the stacks for least twist.</source>
        <translation>Die Stapel auf kleinste Verwindung planen.</translation>
    </message>
    <message>
        <source>Look at the flushness, and accept it by the new numbers with a reason.</source>
        <translation>Die Bündigkeit ansehen und neu beurteilen.</translation>
    </message>
    <message>
        <source>Read it in another pass.</source>
        <translation>In einem weiteren Durchgang messen.</translation>
    </message>
    <message>
        <source>Gap at %1</source>
        <translation>Spaltmaß an %1</translation>
    </message>
    <message>
        <source>Lay the straightedge across the rails and read the gap down to the washer.</source>
        <translation>Das Haarlineal über die Flansche legen und das Spaltmaß bis zur Unterlegscheibe messen.</translation>
    </message>
    <message>
        <source>The new gap lies within %1.</source>
        <translation>Das neue Spaltmaß liegt innerhalb %1.</translation>
    </message>
    <message>
        <source>Read the gap again, in two passes or more.</source>
        <translation>Das Spaltmaß noch einmal messen, in zwei Durchgängen oder mehr.</translation>
    </message>
    <message>
        <source>Shim %1 was never measured.</source>
        <translation>Distanzscheibe %1 wurde nie gemessen.</translation>
    </message>
    <message>
        <source>Measure shim %1 with the micrometer.</source>
        <translation>Distanzscheibe %1 mit der Messschraube messen.</translation>
    </message>
    <message>
        <source>There is no band for the residual.</source>
        <translation>Für das Restmaß ist kein Band festgelegt.</translation>
    </message>
    <message>
        <source>Set the band “residual” at the engine station.</source>
        <translation>Das Band „residual“ an der Station Motor festlegen.</translation>
    </message>
    <message>
        <source>The stack is low: build it thicker.</source>
        <translation>Der Stapel ist zu niedrig: dicker aufbauen.</translation>
    </message>
    <message>
        <source>The stack is proud: build it thinner.</source>
        <translation>Der Stapel ist zu hoch: dünner aufbauen.</translation>
    </message>
    <message>
        <source>Read the gap and the shims once more, or build a stack nearer to the middle.</source>
        <translation>Spaltmaß und Distanzscheiben noch einmal messen oder einen Stapel näher an der Mitte aufbauen.</translation>
    </message>
    <message>
        <source>Stack at %1</source>
        <translation>Stapel an %1</translation>
    </message>
    <message>
        <source>Use the plan, or build the stack by hand.</source>
        <translation>Den Plan übernehmen oder den Stapel von Hand aufbauen.</translation>
    </message>
    <message>
        <source>Read the gap at %1 first.</source>
        <translation>Zuerst das Spaltmaß an %1 messen.</translation>
    </message>
    <message>
        <source>Its gap is not accepted yet.</source>
        <translation>Sein Spaltmaß ist noch nicht angenommen.</translation>
    </message>
    <message>
        <source>Now: %1</source>
        <translation>Jetzt: %1</translation>
    </message>
    <message>
        <source>Look at the residual: accept it by the new numbers with a reason, or build the stack again.</source>
        <translation>Das Restmaß ansehen: neu beurteilen oder den Stapel neu aufbauen.</translation>
    </message>
    <message>
        <source>Recheck at %1</source>
        <translation>Nachprüfung an %1</translation>
    </message>
    <message>
        <source>Lay the straightedge on the built stack.</source>
        <translation>Das Haarlineal auf den aufgebauten Stapel legen.</translation>
    </message>
    <message>
        <source>It rocks: the stack is proud.</source>
        <translation>Es kippelt: der Stapel ist zu hoch.</translation>
    </message>
    <message>
        <source>Build the stack thinner, and try again.</source>
        <translation>Den Stapel dünner aufbauen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>It is loose: the stack is low.</source>
        <translation>Es ist lose: der Stapel ist zu niedrig.</translation>
    </message>
    <message>
        <source>Build the stack thicker, and try again.</source>
        <translation>Den Stapel dicker aufbauen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Lay the straightedge on the stack again.</source>
        <translation>Das Haarlineal noch einmal auf den Stapel legen.</translation>
    </message>
    <message>
        <source>Main-cap fasteners at torque</source>
        <translation>Verschraubungen der Hauptlagerdeckel auf Drehmoment</translation>
    </message>
    <message>
        <source>Rod fasteners at torque</source>
        <translation>Pleuelverschraubungen auf Drehmoment</translation>
    </message>
    <message>
        <source>Nothing is specified for %1.</source>
        <translation>Für %1 ist nichts vorgegeben.</translation>
    </message>
    <message>
        <source>%1 of %2 tightened.</source>
        <translation>%1 von %2 angezogen.</translation>
    </message>
    <message>
        <source>Tighten it to what is specified, and enter it.</source>
        <translation>Auf den vorgegebenen Wert anziehen und eintragen.</translation>
    </message>
    <message>
        <source>Tighten %1 and the rest of the group.</source>
        <translation>%1 und den Rest der Gruppe anziehen.</translation>
    </message>
    <message>
        <source>Tighten the group to the value that is specified now.</source>
        <translation>Die Gruppe auf den jetzt vorgegebenen Wert anziehen.</translation>
    </message>
    <message>
        <source>Torques verified</source>
        <translation>Drehmomente geprüft</translation>
    </message>
    <message>
        <source>No verify round has been made.</source>
        <translation>Es wurde keine Prüfrunde gemacht.</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>Entry %1: %2; round %3 no longer counts.</source>
        <translation>Eintrag %1: %2; Runde %3 zählt nicht mehr.</translation>
    </message>
    <message>
        <source>With the stacks off, make a new round over every fastener.</source>
        <translation>Bei abgenommenen Stapeln eine neue Runde über jede Verschraubung machen.</translation>
    </message>
    <message>
        <source>%1: %2 moved %3 (%4).</source>
        <translation>%1: %2 drehte sich um %3 weiter (%4).</translation>
    </message>
    <message>
        <source>%1: %2 moved (%3).</source>
        <translation>%1: %2 drehte sich weiter (%3).</translation>
    </message>
    <message>
        <source>Finish the round; every fastener must then hold in a later one.</source>
        <translation>Die Runde beenden; jede Verschraubung muss dann in einer späteren halten.</translation>
    </message>
    <message>
        <source>Measure again what the movement made stale, then make a round in which every fastener holds.</source>
        <translation>Messen, was durch die Bewegung ungültig wurde, dann eine Runde machen, in der jede Verschraubung hält.</translation>
    </message>
    <message>
        <source>Go on with %1.</source>
        <translation>Mit %1 weitermachen.</translation>
    </message>
    <message>
        <source>%1 is older than the last trial fit (entry %2).</source>
        <translation>%1 ist älter als die letzte Probemontage (Eintrag %2).</translation>
    </message>
    <message>
        <source>Take the stacks off and make a new round: nothing can be checked after closing.</source>
        <translation>Die Stapel abnehmen und eine neue Runde machen: nach dem Schließen lässt sich nichts mehr prüfen.</translation>
    </message>
    <message>
        <source>%1: every one of %2 fasteners held.</source>
        <translation>%1: alle %2 Verschraubungen hielten.</translation>
    </message>
    <message>
        <source>Strike that entry and answer again.</source>
        <translation>Diesen Eintrag streichen und noch einmal antworten.</translation>
    </message>
    <message>
        <source>Trial-fit the girdle again.</source>
        <translation>Die Platte noch einmal zur Probe montieren.</translation>
    </message>
    <message>
        <source>%1 up, cutout towards the %2 on the %3.</source>
        <translation>%1 oben, Aussparung nach %2, %3.</translation>
    </message>
    <message>
        <source>The cutout belongs on the pickup side: turn the girdle round.</source>
        <translation>Die Aussparung gehört auf die Seite des Ölansaugrohrs: die Platte andersherum auflegen.</translation>
    </message>
    <message>
        <source>Say which face is up and where the cutout is.</source>
        <translation>Angeben, welche Fläche oben liegt und wo die Aussparung ist.</translation>
    </message>
    <message>
        <source>Findings settled</source>
        <translation>Befunde erledigt</translation>
    </message>
    <message>
        <source>None was opened.</source>
        <translation>Keiner wurde eröffnet.</translation>
    </message>
    <message>
        <source>All are settled.</source>
        <translation>Alle sind erledigt.</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>Decide it, and enter what was done.</source>
        <translation>Entscheiden und eintragen, was getan wurde.</translation>
    </message>
    <message>
        <source>gaps</source>
        <translation>Spaltmaße</translation>
    </message>
    <message>
        <source>journal diameters</source>
        <translation>Zapfendurchmesser</translation>
    </message>
    <message>
        <source>bores</source>
        <translation>Bohrungen</translation>
    </message>
    <message>
        <source>shims</source>
        <translation>Distanzscheiben</translation>
    </message>
    <message>
        <source>bearing shells</source>
        <translation>Lagerschalen</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>Passungen</translation>
    </message>
    <message>
        <source>pickup terms</source>
        <translation>Glieder der Ansaugtiefe</translation>
    </message>
    <message>
        <source>Say which shells lie in %1, with their thickness.</source>
        <translation>Angeben, welche Schalen in %1 liegen, mit ihrer Dicke.</translation>
    </message>
    <message>
        <source>Bearing clearance at %1</source>
        <translation>Lagerspiel an %1</translation>
    </message>
    <message>
        <source>The journal is not measured.</source>
        <translation>Der Zapfen ist nicht gemessen.</translation>
    </message>
    <message>
        <source>The bore is not measured.</source>
        <translation>Die Bohrung ist nicht gemessen.</translation>
    </message>
    <message>
        <source>Measure the journal at two stations or more, in two directions.</source>
        <translation>Den Zapfen an zwei Messebenen oder mehr messen, in zwei Richtungen.</translation>
    </message>
    <message>
        <source>Measure the bore with the shells in and the cap at full torque.</source>
        <translation>Die Bohrung mit eingelegten Schalen und dem Deckel auf vollem Drehmoment messen.</translation>
    </message>
    <message>
        <source>The clearance cannot be worked out yet.</source>
        <translation>Das Spiel lässt sich noch nicht berechnen.</translation>
    </message>
    <message>
        <source>Clearance %1.</source>
        <translation>Spiel %1.</translation>
    </message>
    <message>
        <source>Too wide: fit a thicker shell, or look at journal and housing.</source>
        <translation>Zu weit: eine dickere Schale einbauen oder Zapfen und Gehäusebohrung ansehen.</translation>
    </message>
    <message>
        <source>Too tight: fit a thinner shell, or look at journal and housing.</source>
        <translation>Zu eng: eine dünnere Schale einbauen oder Zapfen und Gehäusebohrung ansehen.</translation>
    </message>
    <message>
        <source>Look at the clearance, and accept it by the new numbers with a reason.</source>
        <translation>Das Spiel ansehen und neu beurteilen.</translation>
    </message>
    <message>
        <source>Measure it again.</source>
        <translation>Noch einmal messen.</translation>
    </message>
    <message>
        <source>Measure it.</source>
        <translation>Messen.</translation>
    </message>
    <message>
        <source>Bring it into its band, and measure again.</source>
        <translation>In sein Band bringen und noch einmal messen.</translation>
    </message>
    <message>
        <source>Measure it again: more readings make the uncertainty smaller.</source>
        <translation>Noch einmal messen: mehr Ablesungen machen die Unsicherheit kleiner.</translation>
    </message>
    <message>
        <source>Look at it, and accept it by the new numbers with a reason.</source>
        <translation>Ansehen und neu beurteilen.</translation>
    </message>
    <message>
        <source>Rod side clearance, throw %1</source>
        <translation>Seitenspiel der Pleuel, Kröpfung %1</translation>
    </message>
    <message>
        <source>Crank end play</source>
        <translation>Axialspiel der Kurbelwelle</translation>
    </message>
    <message>
        <source>Fit: %1</source>
        <translation>Passung: %1</translation>
    </message>
    <message>
        <source>Fit: %1, place %2</source>
        <translation>Passung: %1, Stelle %2</translation>
    </message>
    <message>
        <source>Everything is closed up. Sign the record off.</source>
        <translation>Alles ist geschlossen. Das Protokoll abzeichnen.</translation>
    </message>
    <message>
        <source>This build is signed off by %1.</source>
        <translation>Dieser Aufbau ist von %1 abgezeichnet.</translation>
    </message>
    <message>
        <source>Say whose engine this is.</source>
        <translation>Angeben, wessen Motor es ist.</translation>
    </message>
    <message>
        <source>Set the engine layout: caps, fasteners, tied run.</source>
        <translation>Die Motorbauform festlegen: Deckel, Verschraubungen, verbundene Deckel.</translation>
    </message>
    <message>
        <source>Set the bands that this engine is judged by.</source>
        <translation>Die Bänder festlegen, nach denen dieser Motor beurteilt wird.</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>The engine layout is not known yet: set it first.</source>
        <translation>Die Motorbauform ist noch nicht bekannt: zuerst festlegen.</translation>
    </message>
    <message>
        <source>The girdle does not bear on %1 of this engine: it ties caps %2 to %3.</source>
        <translation>Die Platte liegt an diesem Motor nicht auf %1 auf: sie verbindet die Deckel %2 bis %3.</translation>
    </message>
    <message>
        <source>This engine has no journal %1: it has %2 mains and %3 rods.</source>
        <translation>Dieser Motor hat keinen Zapfen %1: er hat %2 Hauptlager und %3 Pleuel.</translation>
    </message>
    <message>
        <source>This engine has no fastener %1: check its number and side.</source>
        <translation>Dieser Motor hat keine Verschraubung %1: Nummer und Seite prüfen.</translation>
    </message>
    <message>
        <source>This record knows no instrument %1: add it at the engine station first.</source>
        <translation>Dieses Protokoll kennt kein Messmittel %1: zuerst an der Station Motor hinzufügen.</translation>
    </message>
    <message>
        <source>The new layout has no %1, but this record has entries for it: strike those first, or keep the place.</source>
        <translation>Die neue Motorbauform hat %1 nicht, aber dieses Protokoll hat Einträge dazu: diese zuerst streichen oder die Stelle behalten.</translation>
    </message>
    <message>
        <source>“%1” cannot be the name of %2: use 1 to 60 characters without spaces.</source>
        <translation>„%1“ taugt nicht als Name (%2): 1 bis 60 Zeichen ohne Leerzeichen verwenden.</translation>
    </message>
    <message>
        <source>There is nothing written for %1: say it in a few words.</source>
        <translation>Hier steht nichts (%1): in wenigen Worten angeben.</translation>
    </message>
    <message>
        <source>the engine</source>
        <translation>der Motor</translation>
    </message>
    <message>
        <source>the band&apos;s name</source>
        <translation>der Name des Bandes</translation>
    </message>
    <message>
        <source>The target %1 lies outside the band “%2”, %3: choose one inside it.</source>
        <translation>Das Ziel %1 liegt außerhalb des Bandes „%2“, %3: eines darin wählen.</translation>
    </message>
    <message>
        <source>a band</source>
        <translation>ein Band</translation>
    </message>
    <message>
        <source>A rule has an impossible value: limits must be positive, passes 1 to 20, shims per stack 0 to 50, torque scatter 0 to 90 %.</source>
        <translation>Die Regeln enthalten einen unmöglichen Wert: Grenzen müssen positiv sein, Durchgänge 1 bis 20, Distanzscheiben je Stapel 0 bis 50, Drehmomentstreuung 0 bis 90 %.</translation>
    </message>
    <message>
        <source>A fastener group has 1 to 200 fasteners, not %1.</source>
        <translation>Eine Schraubengruppe hat 1 bis 200 Verschraubungen, nicht %1.</translation>
    </message>
    <message>
        <source>Fasteners are tightened in 1 to 10 steps, not %1.</source>
        <translation>Verschraubungen werden in 1 bis 10 Schritten angezogen, nicht in %1.</translation>
    </message>
    <message>
        <source>The group “%1” is tightened by %2, but no such value was given: give it.</source>
        <translation>Die Gruppe „%1“ wird nach %2 angezogen, aber ein solcher Wert fehlt: angeben.</translation>
    </message>
    <message>
        <source>The group “%1” is tightened by torque and angle, but no angle was given: give it.</source>
        <translation>Die Gruppe „%1“ wird nach Drehmoment und Drehwinkel angezogen, aber der Winkel fehlt: angeben.</translation>
    </message>
    <message>
        <source>The sequence names %1 twice: name each fastener of the group once.</source>
        <translation>Die Reihenfolge nennt %1 zweimal: jede Verschraubung der Gruppe einmal nennen.</translation>
    </message>
    <message>
        <source>The sequence names %1, which is of another group: name each fastener of the group once.</source>
        <translation>Die Reihenfolge nennt %1 aus einer anderen Gruppe: jede Verschraubung der Gruppe einmal nennen.</translation>
    </message>
    <message>
        <source>the person&apos;s name</source>
        <translation>der Name der Person</translation>
    </message>
    <message>
        <source>an instrument</source>
        <translation>ein Messmittel</translation>
    </message>
    <message>
        <source>The wrench %1 would reach from a larger torque to a smaller one: give the smaller first.</source>
        <translation>Der Schlüssel %1 würde von einem größeren zu einem kleineren Drehmoment reichen: das kleinere zuerst angeben.</translation>
    </message>
    <message>
        <source>The instrument %1 would be due on %2, before it was calibrated on %3: correct one of the dates.</source>
        <translation>Das Messmittel %1 wäre am %2 fällig, vor seiner Kalibrierung am %3: eines der Daten berichtigen.</translation>
    </message>
    <message>
        <source>A journal is measured at stations 1 to 9 in directions 1 to 9: correct the place on it.</source>
        <translation>Ein Zapfen wird an Messebenen 1 bis 9 in Richtungen 1 bis 9 gemessen: die Stelle darauf berichtigen.</translation>
    </message>
    <message>
        <source>a journal&apos;s diameter</source>
        <translation>ein Zapfendurchmesser</translation>
    </message>
    <message>
        <source>A bore is measured at stations 1 to 9: correct the place in it.</source>
        <translation>Eine Bohrung wird an Messebenen 1 bis 9 gemessen: die Stelle darin berichtigen.</translation>
    </message>
    <message>
        <source>a bore</source>
        <translation>eine Bohrung</translation>
    </message>
    <message>
        <source>a shell</source>
        <translation>eine Schale</translation>
    </message>
    <message>
        <source>a shell&apos;s thickness</source>
        <translation>die Dicke einer Schale</translation>
    </message>
    <message>
        <source>Shell %1 cannot be both the upper and the lower one: name two shells.</source>
        <translation>Schale %1 kann nicht die obere und die untere zugleich sein: zwei Schalen nennen.</translation>
    </message>
    <message>
        <source>The shelf has no shell %1: enter its thickness first.</source>
        <translation>Im Regal liegt keine Schale %1: zuerst ihre Dicke eintragen.</translation>
    </message>
    <message>
        <source>Shell %1 already lies in %2: take another one.</source>
        <translation>Schale %1 liegt schon in %2: eine andere nehmen.</translation>
    </message>
    <message>
        <source>There is no fit “%1” in this record: set its band first.</source>
        <translation>Eine Passung „%1“ gibt es in diesem Protokoll nicht: zuerst ihr Band festlegen.</translation>
    </message>
    <message>
        <source>A fit is read at place 1 to 99, not %1.</source>
        <translation>Eine Passung wird an Stelle 1 bis 99 gemessen, nicht %1.</translation>
    </message>
    <message>
        <source>This engine has no throw %1: choose 1 to %2.</source>
        <translation>Dieser Motor hat keine Kröpfung %1: 1 bis %2 wählen.</translation>
    </message>
    <message>
        <source>a fit</source>
        <translation>eine Passung</translation>
    </message>
    <message>
        <source>There is one %1 only: leave the place empty.</source>
        <translation>Es gibt nur eines davon (%1): die Stelle leer lassen.</translation>
    </message>
    <message>
        <source>Say to what %1 was tightened: a torque, an angle or a stretch.</source>
        <translation>Angeben, worauf %1 angezogen wurde: ein Drehmoment, ein Winkel oder eine Längung.</translation>
    </message>
    <message>
        <source>The next verify round is number %1, not %2.</source>
        <translation>Die nächste Prüfrunde ist Nummer %1, nicht %2.</translation>
    </message>
    <message>
        <source>A verify round needs to know the fasteners: set the engine layout first.</source>
        <translation>Eine Prüfrunde muss die Verschraubungen kennen: zuerst die Motorbauform festlegen.</translation>
    </message>
    <message>
        <source>Verify round %1 is not the one under way: begin it first.</source>
        <translation>Prüfrunde %1 ist nicht die laufende: zuerst beginnen.</translation>
    </message>
    <message>
        <source>A verify round pulls main-cap and rod fasteners, not %1.</source>
        <translation>Eine Prüfrunde prüft Verschraubungen von Hauptlagerdeckeln und Pleueln, nicht %1.</translation>
    </message>
    <message>
        <source>%1 has its outcome in round %2 already: strike that entry if it is wrong.</source>
        <translation>%1 hat schon ein Ergebnis in Runde %2: diesen Eintrag streichen, wenn er falsch ist.</translation>
    </message>
    <message>
        <source>Say by what angle %1 moved, for example 4°.</source>
        <translation>Angeben, um welchen Winkel sich %1 weiterdrehte, zum Beispiel 4°.</translation>
    </message>
    <message>
        <source>%1 cannot have held and turned by an angle: enter it as moved.</source>
        <translation>%1 kann nicht gehalten und sich zugleich gedreht haben: als weitergedreht eintragen.</translation>
    </message>
    <message>
        <source>Passes count from 1 to 99, not %1.</source>
        <translation>Durchgänge zählen von 1 bis 99, nicht %1.</translation>
    </message>
    <message>
        <source>a gap</source>
        <translation>ein Spaltmaß</translation>
    </message>
    <message>
        <source>a shim</source>
        <translation>eine Distanzscheibe</translation>
    </message>
    <message>
        <source>a shim&apos;s thickness</source>
        <translation>die Dicke einer Distanzscheibe</translation>
    </message>
    <message>
        <source>Shim %1 lies in the stack at %2: build that stack without it first.</source>
        <translation>Distanzscheibe %1 liegt im Stapel an %2: zuerst diesen Stapel ohne sie aufbauen.</translation>
    </message>
    <message>
        <source>Shim %1 is pinned to %2 already: take that pin away first.</source>
        <translation>Distanzscheibe %1 ist schon an %2 fixiert: zuerst dort die Fixierung lösen.</translation>
    </message>
    <message>
        <source>There is no stack at %1: build it first.</source>
        <translation>An %1 ist kein Stapel: zuerst aufbauen.</translation>
    </message>
    <message>
        <source>There is no stack on %1 to lay the straightedge on: build it, or put it back, first.</source>
        <translation>An %1 ist kein Stapel, auf den das Haarlineal gelegt werden könnte: zuerst aufbauen oder wieder auflegen.</translation>
    </message>
    <message>
        <source>the check that is accepted again</source>
        <translation>die Prüfung, die neu beurteilt wird</translation>
    </message>
    <message>
        <source>is answered for each throw, and this engine has no throw %1.</source>
        <translation>wird für jede Kröpfung beantwortet, und dieser Motor hat keine Kröpfung %1.</translation>
    </message>
    <message>
        <source>is answered once for the engine: leave the throw out.</source>
        <translation>wird einmal für den Motor beantwortet: die Kröpfung weglassen.</translation>
    </message>
    <message>
        <source>A measured clearance and only that carries a value: give it, or answer pass or fail.</source>
        <translation>Ein gemessener Abstand, und nur er, trägt einen Wert: ihn angeben oder mit „bestanden“ oder „nicht bestanden“ antworten.</translation>
    </message>
    <message>
        <source>A clearance cannot be below zero: where parts touch, answer fail.</source>
        <translation>Ein Abstand kann nicht unter null liegen: wo Teile sich berühren, mit „nicht bestanden“ antworten.</translation>
    </message>
    <message>
        <source>“%1” is answered by pass or fail, not measured.</source>
        <translation>„%1“ wird mit „bestanden“ oder „nicht bestanden“ beantwortet, nicht gemessen.</translation>
    </message>
    <message>
        <source>A pickup term cannot be negative: measure it from the rail.</source>
        <translation>Ein Glied der Ansaugtiefe kann nicht negativ sein: vom Flansch aus messen.</translation>
    </message>
    <message>
        <source>a pickup term</source>
        <translation>ein Glied der Ansaugtiefe</translation>
    </message>
    <message>
        <source>There is a finding %1 already: give this one the next number.</source>
        <translation>Einen Befund %1 gibt es schon: diesem die nächste Nummer geben.</translation>
    </message>
    <message>
        <source>a finding</source>
        <translation>ein Befund</translation>
    </message>
    <message>
        <source>the finding</source>
        <translation>der Befund</translation>
    </message>
    <message>
        <source>There is no finding %1 in this record.</source>
        <translation>Einen Befund %1 gibt es in diesem Protokoll nicht.</translation>
    </message>
    <message>
        <source>Finding %1 is settled already: open a new one.</source>
        <translation>Befund %1 ist schon erledigt: einen neuen eröffnen.</translation>
    </message>
    <message>
        <source>what was done about %1</source>
        <translation>was wegen %1 getan wurde</translation>
    </message>
    <message>
        <source>the note</source>
        <translation>die Notiz</translation>
    </message>
    <message>
        <source>The attachment “%1” carries no proper SHA-256 hash or size.</source>
        <translation>Der Anhang „%1“ trägt keine richtige SHA-256-Prüfsumme oder Größe.</translation>
    </message>
    <message>
        <source>the attachment&apos;s file name</source>
        <translation>der Dateiname des Anhangs</translation>
    </message>
    <message>
        <source>“%1” is ticked already: strike that entry if it is wrong.</source>
        <translation>„%1“ ist schon abgehakt: diesen Eintrag streichen, wenn er falsch ist.</translation>
    </message>
    <message>
        <source>“%1” comes after “%2”: do that first.</source>
        <translation>„%1“ kommt nach „%2“: das zuerst tun.</translation>
    </message>
    <message>
        <source>The sealant&apos;s open time is given in minutes, 1 to 1440.</source>
        <translation>Die Offenzeit der Dichtmasse wird in Minuten angegeben, 1 bis 1440.</translation>
    </message>
    <message>
        <source>The record cannot be signed off before “%1” is done.</source>
        <translation>Das Protokoll kann nicht abgezeichnet werden, bevor „%1“ erledigt ist.</translation>
    </message>
    <message>
        <source>This build is signed off already.</source>
        <translation>Dieser Aufbau ist schon abgezeichnet.</translation>
    </message>
    <message>
        <source>A new build begins when the one before is signed off: finish and sign this one first.</source>
        <translation>Ein neuer Aufbau beginnt, wenn der vorige abgezeichnet ist: zuerst diesen beenden und abzeichnen.</translation>
    </message>
    <message>
        <source>The next build of this engine is number %1.</source>
        <translation>Der nächste Aufbau dieses Motors ist Nummer %1.</translation>
    </message>
    <message>
        <source>why the engine is built again</source>
        <translation>warum der Motor neu aufgebaut wird</translation>
    </message>
    <message>
        <source>why the entry is struck</source>
        <translation>warum der Eintrag gestrichen wird</translation>
    </message>
    <message>
        <source>%1 is too large for %2 of any engine: correct it.</source>
        <translation>%1 ist für jeden Motor zu groß (%2): berichtigen.</translation>
    </message>
    <message>
        <source>%1 cannot be %2: it must be more than zero.</source>
        <translation>%1 ist unmöglich (%2): der Wert muss größer als null sein.</translation>
    </message>
    <message>
        <source>%1 cannot be a torque on this engine: it must be more than zero and at most %2.</source>
        <translation>%1 kann kein Drehmoment an diesem Motor sein: es muss größer als null sein und darf höchstens %2 betragen.</translation>
    </message>
    <message>
        <source>%1 cannot be an angle of tightening: it must be 0 to three turns.</source>
        <translation>%1 kann kein Anzugswinkel sein: er muss 0 bis drei Umdrehungen betragen.</translation>
    </message>
    <message>
        <source>Shim %1 is named twice in the stack at %2: there is one of it.</source>
        <translation>Distanzscheibe %1 ist im Stapel an %2 zweimal genannt: es gibt sie nur einmal.</translation>
    </message>
    <message>
        <source>Shim %1 is set aside%2: take it back into the kit first.</source>
        <translation>Distanzscheibe %1 ist beiseitegelegt%2: zuerst in den Satz zurücknehmen.</translation>
    </message>
    <message>
        <source>Shim %1 lies in the stack at %2 already: the same shim cannot be in two stacks.</source>
        <translation>Distanzscheibe %1 liegt schon im Stapel an %2: dieselbe kann nicht in zwei Stapeln liegen.</translation>
    </message>
    <message>
        <source>Say who makes this entry: every entry carries a person&apos;s name.</source>
        <translation>Angeben, wer diesen Eintrag macht: jeder Eintrag trägt den Namen einer Person.</translation>
    </message>
    <message>
        <source>This record knows no person “%1”: add them at the engine station first.</source>
        <translation>Dieses Protokoll kennt keine Person „%1“: sie zuerst an der Station Motor hinzufügen.</translation>
    </message>
    <message>
        <source>Clearance under the pickup</source>
        <translation>Abstand unter dem Ölansaugrohr</translation>
    </message>
    <message>
        <source>Measure the %1, twice.</source>
        <translation>Zweimal messen: %1.</translation>
    </message>
    <message>
        <source>Measure the %1 once more.</source>
        <translation>Noch einmal messen: %1.</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>out</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>nicht entscheidbar</translation>
    </message>
    <message>
        <source>stale</source>
        <translation>veraltet</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Bearings</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>Fasteners</source>
        <translation>Schrauben</translation>
    </message>
    <message>
        <source>Girdle</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>Trial fit</source>
        <translation>Probemontage</translation>
    </message>
    <message>
        <source>Pickup</source>
        <translation>Ölansaugrohr</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>There is no entry %1 to strike: this record has %2.</source>
        <translation>Einen Eintrag %1 gibt es nicht zum Streichen: dieses Protokoll hat %2.</translation>
    </message>
    <message>
        <source>Entry %1 is itself a strike: make the struck entry again instead.</source>
        <translation>Eintrag %1 ist selbst eine Streichung: stattdessen den gestrichenen Eintrag noch einmal machen.</translation>
    </message>
    <message>
        <source>Entry %1 was struck already by entry %2.</source>
        <translation>Eintrag %1 wurde schon durch Eintrag %2 gestrichen.</translation>
    </message>
    <message>
        <source>Entry %1 needs entry %2: strike entry %3 first. (%4)</source>
        <translation>Eintrag %1 braucht Eintrag %2: zuerst Eintrag %3 streichen. (%4)</translation>
    </message>
    <message>
        <source>This build is signed off: strike the sign-off (entry %1) before any other entry.</source>
        <translation>Dieser Aufbau ist abgezeichnet: vor jedem anderen Eintrag das Abzeichnen (Eintrag %1) streichen.</translation>
    </message>
    <message>
        <source>This build is signed off and closed: begin a new build of this engine to go on.</source>
        <translation>Dieser Aufbau ist abgezeichnet und geschlossen: zum Weitermachen einen neuen Aufbau dieses Motors beginnen.</translation>
    </message>
    <message>
        <source>The trial fit is locked: %1</source>
        <translation>Die Probemontage ist gesperrt: %1</translation>
    </message>
    <message>
        <source>Closing is locked: %1</source>
        <translation>Schließen ist gesperrt: %1</translation>
    </message>
    <message>
        <source>The torques are verified with the stacks off: take off the one at %1 first.</source>
        <translation>Die Drehmomente werden mit abgenommenen Stapeln geprüft: zuerst den Stapel an %1 abnehmen.</translation>
    </message>
    <message>
        <source>“%1” is not a stale check of this record: only a stale one is accepted again.</source>
        <translation>„%1“ ist keine veraltete Prüfung dieses Protokolls: nur eine veraltete wird neu beurteilt.</translation>
    </message>
    <message>
        <source>%1, station %2, direction %3</source>
        <translation>%1, Messebene %2, Richtung %3</translation>
    </message>
    <message>
        <source>%1, station %2, %3</source>
        <translation>%1, Messebene %2, %3</translation>
    </message>
    <message>
        <source>%1, place %2</source>
        <translation>%1, Stelle %2</translation>
    </message>
    <message>
        <source>shim %1</source>
        <translation>Distanzscheibe %1</translation>
    </message>
    <message>
        <source>shell %1</source>
        <translation>Schale %1</translation>
    </message>
    <message>
        <source>The layout gives %1 for %2: it must be from %3 to %4.</source>
        <translation>Die Motorbauform gibt %1 für %2 an: zulässig ist %3 bis %4.</translation>
    </message>
    <message>
        <source>the number of main caps</source>
        <translation>die Zahl der Hauptlagerdeckel</translation>
    </message>
    <message>
        <source>the number of connecting rods</source>
        <translation>die Zahl der Pleuel</translation>
    </message>
    <message>
        <source>the number of crank throws</source>
        <translation>die Zahl der Kröpfungen</translation>
    </message>
    <message>
        <source>the first tied cap</source>
        <translation>den ersten verbundenen Deckel</translation>
    </message>
    <message>
        <source>the last tied cap</source>
        <translation>den letzten verbundenen Deckel</translation>
    </message>
    <message>
        <source>the cap nearest to the pickup</source>
        <translation>den Deckel, der dem Ölansaugrohr am nächsten liegt</translation>
    </message>
    <message>
        <source>the cap nearest to the dipstick</source>
        <translation>den Deckel, der dem Ölmessstab am nächsten liegt</translation>
    </message>
    <message>
        <source>The layout gives %1 fasteners per main cap: it must be 2 or 4.</source>
        <translation>Die Motorbauform gibt %1 Verschraubungen je Hauptlagerdeckel an: es müssen 2 oder 4 sein.</translation>
    </message>
    <message>
        <source>The layout puts the girdle on the outer fasteners, but its caps have only an inner pair: choose the inner ones or four fasteners per cap.</source>
        <translation>Die Motorbauform legt die Platte auf die äußeren Verschraubungen, aber ihre Deckel haben nur ein inneres Paar: die inneren wählen oder vier je Deckel.</translation>
    </message>
    <message>
        <source>The layout&apos;s spans must be positive and grow outwards: inner fasteners, outer fasteners, pan rails.</source>
        <translation>Die Abstände der Motorbauform müssen positiv sein und nach außen wachsen: innere Verschraubungen, äußere, Ölwannenflansche.</translation>
    </message>
    <message>
        <source>The layout&apos;s spans are larger than any engine on a stand: cap spacing up to 20 in, rails up to 60 in.</source>
        <translation>Die Abstände der Motorbauform sind größer, als sie ein Motor auf dem Montagebock haben kann: Deckelabstand bis 20 in, Flansche bis 60 in.</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>inner</source>
        <translation>innen</translation>
    </message>
    <message>
        <source>outer</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>main</source>
        <translation>Hauptlager</translation>
    </message>
    <message>
        <source>rod</source>
        <translation>Pleuel</translation>
    </message>
    <message>
        <source>girdle</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>pan</source>
        <translation>Ölwanne</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>rear</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>“%1” is not a position: write the cap and its side, for example 3R.</source>
        <translation>„%1“ ist keine Stelle: den Deckel und seine Seite schreiben, zum Beispiel 3R.</translation>
    </message>
    <message>
        <source>“%1” is not a journal: write main or rod and its number, for example main-3.</source>
        <translation>„%1“ ist kein Zapfen: main oder rod und seine Nummer schreiben, zum Beispiel main-3.</translation>
    </message>
    <message>
        <source>“%1” is not a fastener: write its group, number and side, for example main-3R, rod-5L or pan-7.</source>
        <translation>„%1“ ist keine Verschraubung: Gruppe, Nummer und Seite schreiben, zum Beispiel main-3R, rod-5L oder pan-7.</translation>
    </message>
    <message>
        <source>“%1” is not a day: write it as year-month-day, for example 2026-05-04.</source>
        <translation>„%1“ ist kein Tag: als Jahr-Monat-Tag schreiben, zum Beispiel 2026-05-04.</translation>
    </message>
    <message>
        <source>“%1” is not a moment in UTC: write it like 2026-05-04T09:30:00.000Z.</source>
        <translation>„%1“ ist kein Zeitpunkt in UTC: schreiben wie 2026-05-04T09:30:00.000Z.</translation>
    </message>
    <message>
        <source>A band runs from its smaller to its larger end, but %1 is larger than %2: give the smaller one first.</source>
        <translation>Ein Band reicht vom kleineren bis zum größeren Wert, aber %1 ist größer als %2: den kleineren zuerst angeben.</translation>
    </message>
    <message>
        <source>Nothing was typed for %1: type a value like %2.</source>
        <translation>Nichts eingegeben für %1: einen Wert wie %2 eingeben.</translation>
    </message>
    <message>
        <source>%1 has a comma, but the decimal mark here is a point: type %2 like %3.</source>
        <translation>%1 enthält ein Komma, aber das Dezimalzeichen ist hier ein Punkt: %2 eingeben wie %3.</translation>
    </message>
    <message>
        <source>%1 has both a comma and a point, so %2 could be read in two ways: use one decimal mark and no other separator.</source>
        <translation>%1 enthält Komma und Punkt, daher ließe sich %2 auf zwei Arten lesen: ein Dezimalzeichen und kein anderes Trennzeichen verwenden.</translation>
    </message>
    <message>
        <source>%1 cannot be read as %2: type a value like %3.</source>
        <translation>%1 lässt sich nicht als %2 lesen: einen Wert wie %3 eingeben.</translation>
    </message>
    <message>
        <source>The sum typed for %1 has more than 20 terms: type fewer, or their total.</source>
        <translation>Die Summe für %1 hat mehr als 20 Summanden: weniger eingeben oder die Gesamtsumme.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>%1 was read as %2, but %3 is expected within %4: correct it, or type ! behind it if it is really so.</source>
        <translation>%1 wurde als %2 gelesen, für %3 wird aber erwartet: %4. Berichtigen oder ! dahinter eingeben, wenn es wirklich so ist.</translation>
    </message>
    <message>
        <source>%1 is a sum, but %2 is one value: type it like %3.</source>
        <translation>%1 ist eine Summe, aber %2 ist ein einzelner Wert: eingeben wie %3.</translation>
    </message>
    <message>
        <source>%1 is larger than anything on an engine stand: correct %2.</source>
        <translation>%1 ist größer als alles auf einem Montagebock: %2 berichtigen.</translation>
    </message>
    <message>
        <source>%1 is a fraction without a unit, and %2 is in millimetres: type its unit, for example 1/4 in.</source>
        <translation>%1 ist ein Bruch ohne Einheit, und %2 ist in Millimetern: die Einheit eingeben, zum Beispiel 1/4 in.</translation>
    </message>
    <message>
        <source>%1 could be %2 inches or %3 thousandths, and %4 is in inches: type %5 thou, %6 in, or the decimal.</source>
        <translation>%1 könnten %2 Zoll oder %3 Tausendstel sein, und %4 ist in Zoll: %5 thou, %6 in oder den Dezimalbruch eingeben.</translation>
    </message>
    <message>
        <source>%1 is a sum, but %2 is one value: type it like 21 °C.</source>
        <translation>%1 ist eine Summe, aber %2 ist ein einzelner Wert: eingeben wie 21 °C.</translation>
    </message>
    <message>
        <source>%1 cannot be the temperature of an engine: correct %2.</source>
        <translation>%1 ist keine Temperatur eines Motors: %2 berichtigen.</translation>
    </message>
    <message>
        <source>%1 cannot be %2: type a whole number from %3 to %4.</source>
        <translation>%1 taugt nicht für %2: eine ganze Zahl von %3 bis %4 eingeben.</translation>
    </message>
    <message>
        <source>“%1” is none of: %2.</source>
        <translation>„%1“ ist nichts davon: %2.</translation>
    </message>
    <message>
        <source>(typed “%1”)</source>
        <translation>(eingegeben „%1“)</translation>
    </message>
    <message>
        <source>“%1” must be a whole number.</source>
        <translation>„%1“ muss eine ganze Zahl sein.</translation>
    </message>
    <message>
        <source>“%1” must be a text in quotes.</source>
        <translation>„%1“ muss ein Text in Anführungszeichen sein.</translation>
    </message>
    <message>
        <source>This is not a JSON object: %1.</source>
        <translation>Das ist kein JSON-Objekt: %1.</translation>
    </message>
    <message>
        <source>%1 at character %2</source>
        <translation>%1 bei Zeichen %2</translation>
    </message>
    <message>
        <source>an entry is written in braces</source>
        <translation>ein Eintrag steht in geschweiften Klammern</translation>
    </message>
    <message>
        <source>The entry has no member “kind”: say what it is, for example &quot;kind&quot;: &quot;gap_reading&quot;.</source>
        <translation>Der Eintrag hat kein Element „kind“: angeben, was er ist, zum Beispiel &quot;kind&quot;: &quot;gap_reading&quot;.</translation>
    </message>
    <message>
        <source>A seal is 64 hexadecimal digits, but “%1” is not.</source>
        <translation>Ein Siegel besteht aus 64 hexadezimalen Ziffern, „%1“ aber nicht.</translation>
    </message>
    <message>
        <source>guarded</source>
        <translation>mit Sicherheitsband</translation>
    </message>
    <message>
        <source>simple</source>
        <translation>einfach</translation>
    </message>
    <message>
        <source>k = 2</source>
        <translation>k = 2</translation>
    </message>
    <message>
        <source>Student&apos;s t</source>
        <translation>Students t</translation>
    </message>
    <message>
        <source>smallest residual</source>
        <translation>kleinstes Restmaß</translation>
    </message>
    <message>
        <source>least twist</source>
        <translation>kleinste Verwindung</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>torque and angle</source>
        <translation>Drehmoment und Drehwinkel</translation>
    </message>
    <message>
        <source>stretch</source>
        <translation>Längung</translation>
    </message>
    <message>
        <source>micrometer</source>
        <translation>Messschraube</translation>
    </message>
    <message>
        <source>bore gauge</source>
        <translation>Innenmessgerät</translation>
    </message>
    <message>
        <source>feeler gauge</source>
        <translation>Fühlerlehre</translation>
    </message>
    <message>
        <source>straightedge</source>
        <translation>Haarlineal</translation>
    </message>
    <message>
        <source>depth gauge</source>
        <translation>Tiefenmaß</translation>
    </message>
    <message>
        <source>dial indicator</source>
        <translation>Messuhr</translation>
    </message>
    <message>
        <source>gauging strip</source>
        <translation>Messstreifen</translation>
    </message>
    <message>
        <source>torque wrench</source>
        <translation>Drehmomentschlüssel</translation>
    </message>
    <message>
        <source>angle gauge</source>
        <translation>Drehwinkelmesser</translation>
    </message>
    <message>
        <source>stretch gauge</source>
        <translation>Längungsmessgerät</translation>
    </message>
    <message>
        <source>calliper</source>
        <translation>Messschieber</translation>
    </message>
    <message>
        <source>bore with shells</source>
        <translation>Bohrung mit Schalen</translation>
    </message>
    <message>
        <source>housing</source>
        <translation>Gehäusebohrung</translation>
    </message>
    <message>
        <source>nut and washer</source>
        <translation>Mutter und Unterlegscheibe</translation>
    </message>
    <message>
        <source>pan rail</source>
        <translation>Ölwannenflansch</translation>
    </message>
    <message>
        <source>shells</source>
        <translation>Schalen</translation>
    </message>
    <message>
        <source>crank</source>
        <translation>Kurbelwelle</translation>
    </message>
    <message>
        <source>gasket</source>
        <translation>Dichtung</translation>
    </message>
    <message>
        <source>girdle plate</source>
        <translation>Versteifungsplatte</translation>
    </message>
    <message>
        <source>pickup</source>
        <translation>Ölansaugrohr</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>weitergedreht</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>abgenommen</translation>
    </message>
    <message>
        <source>put back</source>
        <translation>wieder aufgelegt</translation>
    </message>
    <message>
        <source>taken apart</source>
        <translation>zerlegt</translation>
    </message>
    <message>
        <source>rocks</source>
        <translation>kippelt</translation>
    </message>
    <message>
        <source>drags</source>
        <translation>saugt</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>lose</translation>
    </message>
    <message>
        <source>stamped face</source>
        <translation>gestempelte Fläche</translation>
    </message>
    <message>
        <source>plain face</source>
        <translation>glatte Fläche</translation>
    </message>
    <message>
        <source>dipstick clear</source>
        <translation>Ölmessstab frei</translation>
    </message>
    <message>
        <source>pickup tube clear</source>
        <translation>Ölansaugrohr frei</translation>
    </message>
    <message>
        <source>counterweights clear</source>
        <translation>Gegengewichte frei</translation>
    </message>
    <message>
        <source>rod bolts clear</source>
        <translation>Pleuelschrauben frei</translation>
    </message>
    <message>
        <source>two turns by hand, nothing binds</source>
        <translation>zwei Umdrehungen von Hand, nichts klemmt</translation>
    </message>
    <message>
        <source>keyway agrees at top dead centre</source>
        <translation>Passfedernut steht im oberen Totpunkt richtig</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>fail</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>pan depth</source>
        <translation>Wannentiefe</translation>
    </message>
    <message>
        <source>compressed gasket</source>
        <translation>verpresste Dichtung</translation>
    </message>
    <message>
        <source>pickup below rail</source>
        <translation>Ölansaugrohr unter dem Flansch</translation>
    </message>
    <message>
        <source>stacks refitted by label</source>
        <translation>Stapel nach Beschriftung wieder aufgelegt</translation>
    </message>
    <message>
        <source>sealant bead laid</source>
        <translation>Dichtraupe gelegt</translation>
    </message>
    <message>
        <source>girdle lowered</source>
        <translation>Platte aufgesetzt</translation>
    </message>
    <message>
        <source>nuts tightened in steps and sequence</source>
        <translation>Muttern in Schritten und in der Reihenfolge angezogen</translation>
    </message>
    <message>
        <source>pan fastened</source>
        <translation>Ölwanne befestigt</translation>
    </message>
    <message>
        <source>must be 0 or 1</source>
        <translation>muss 0 oder 1 sein</translation>
    </message>
    <message>
        <source>holds a word it does not know: %1</source>
        <translation>enthält ein unbekanntes Wort: %1</translation>
    </message>
    <message>
        <source>holds a number too large for any engine</source>
        <translation>enthält eine Zahl, die für jeden Motor zu groß ist</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>band</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>build</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>calibrated</source>
        <translation>kalibriert</translation>
    </message>
    <message>
        <source>cap spacing</source>
        <translation>Deckelabstand</translation>
    </message>
    <message>
        <source>caps</source>
        <translation>Deckel</translation>
    </message>
    <message>
        <source>caption</source>
        <translation>Bildunterschrift</translation>
    </message>
    <message>
        <source>check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>count</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>counterweight minimum</source>
        <translation>Mindestabstand der Gegengewichte</translation>
    </message>
    <message>
        <source>coverage</source>
        <translation>Erweiterungsfaktor</translation>
    </message>
    <message>
        <source>customer</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>cutout side</source>
        <translation>Seite der Aussparung</translation>
    </message>
    <message>
        <source>cutout towards</source>
        <translation>Aussparung nach</translation>
    </message>
    <message>
        <source>cycles</source>
        <translation>Lastspiele</translation>
    </message>
    <message>
        <source>decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>dipstick cap</source>
        <translation>Deckel am Ölmessstab</translation>
    </message>
    <message>
        <source>dipstick side</source>
        <translation>Seite des Ölmessstabs</translation>
    </message>
    <message>
        <source>direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>due</source>
        <translation>fällig</translation>
    </message>
    <message>
        <source>due cycles</source>
        <translation>fällig nach Lastspielen</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>entry</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>face up</source>
        <translation>Fläche oben</translation>
    </message>
    <message>
        <source>fastener</source>
        <translation>Verschraubung</translation>
    </message>
    <message>
        <source>fastener group</source>
        <translation>Schraubengruppe</translation>
    </message>
    <message>
        <source>fasteners per cap</source>
        <translation>Verschraubungen je Deckel</translation>
    </message>
    <message>
        <source>feel</source>
        <translation>Gefühl</translation>
    </message>
    <message>
        <source>file name</source>
        <translation>Dateiname</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>fit</source>
        <translation>Passung</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Spaltmaß</translation>
    </message>
    <message>
        <source>girdle ring</source>
        <translation>Platte sitzt auf</translation>
    </message>
    <message>
        <source>grade</source>
        <translation>Festigkeitsklasse</translation>
    </message>
    <message>
        <source>half</source>
        <translation>Hälfte</translation>
    </message>
    <message>
        <source>hi</source>
        <translation>obere Grenze</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>is aside</source>
        <translation>beiseitegelegt</translation>
    </message>
    <message>
        <source>is marked</source>
        <translation>beschriftet</translation>
    </message>
    <message>
        <source>is pinned</source>
        <translation>fixiert</translation>
    </message>
    <message>
        <source>item</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>journal</source>
        <translation>Zapfen</translation>
    </message>
    <message>
        <source>kit tolerance</source>
        <translation>Toleranz des Satzes</translation>
    </message>
    <message>
        <source>largest stack</source>
        <translation>größter Stapel</translation>
    </message>
    <message>
        <source>largest torque</source>
        <translation>größtes Drehmoment</translation>
    </message>
    <message>
        <source>limit of error</source>
        <translation>Fehlergrenze</translation>
    </message>
    <message>
        <source>lo</source>
        <translation>untere Grenze</translation>
    </message>
    <message>
        <source>lubricant</source>
        <translation>Schmierstoff</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>beschriftet</translation>
    </message>
    <message>
        <source>media type</source>
        <translation>Medientyp</translation>
    </message>
    <message>
        <source>method</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>minimum passes</source>
        <translation>Mindestdurchgänge</translation>
    </message>
    <message>
        <source>move</source>
        <translation>Vorgang</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>objective</source>
        <translation>Ziel des Plans</translation>
    </message>
    <message>
        <source>open minutes</source>
        <translation>Offenzeit in Minuten</translation>
    </message>
    <message>
        <source>original sha256</source>
        <translation>sha256 des Originals</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>outer stud span</source>
        <translation>Abstand der äußeren Stehbolzen</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>pass %1</source>
        <translation>Durchgang %1</translation>
    </message>
    <message>
        <source>pickup cap</source>
        <translation>Deckel am Ölansaugrohr</translation>
    </message>
    <message>
        <source>pickup side</source>
        <translation>Seite des Ölansaugrohrs</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>position</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>rail span</source>
        <translation>Flanschabstand</translation>
    </message>
    <message>
        <source>repeat limit</source>
        <translation>Wiederholgrenze</translation>
    </message>
    <message>
        <source>result</source>
        <translation>Resultat</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>Paar</translation>
    </message>
    <message>
        <source>rods</source>
        <translation>Pleuel</translation>
    </message>
    <message>
        <source>role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>round</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>serial</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>sha256</source>
        <translation>sha256</translation>
    </message>
    <message>
        <source>shell</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>shim</source>
        <translation>Distanzscheibe</translation>
    </message>
    <message>
        <source>shop</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>size bytes</source>
        <translation>Größe in Bytes</translation>
    </message>
    <message>
        <source>smallest torque</source>
        <translation>kleinstes Drehmoment</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>statement</source>
        <translation>Erklärung</translation>
    </message>
    <message>
        <source>station</source>
        <translation>Messebene</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>stud span</source>
        <translation>Stehbolzenabstand</translation>
    </message>
    <message>
        <source>target</source>
        <translation>Zielwert</translation>
    </message>
    <message>
        <source>term</source>
        <translation>Glied</translation>
    </message>
    <message>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>throw number</source>
        <translation>Nummer der Kröpfung</translation>
    </message>
    <message>
        <source>throws</source>
        <translation>Kröpfungen</translation>
    </message>
    <message>
        <source>tied first</source>
        <translation>erster verbundener Deckel</translation>
    </message>
    <message>
        <source>tied last</source>
        <translation>letzter verbundener Deckel</translation>
    </message>
    <message>
        <source>tightening order</source>
        <translation>Anzugsreihenfolge</translation>
    </message>
    <message>
        <source>torque scatter percent</source>
        <translation>Drehmomentstreuung in Prozent</translation>
    </message>
    <message>
        <source>type</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>Entry %1 stands where entry %2 must be: entries were removed, inserted or put in another order.</source>
        <translation>Eintrag %1 steht, wo Eintrag %2 stehen muss: Einträge wurden entfernt, eingefügt oder umgestellt.</translation>
    </message>
    <message>
        <source>must hold names parted by single spaces</source>
        <translation>muss Namen enthalten, die durch einzelne Leerzeichen getrennt sind</translation>
    </message>
    <message>
        <source>The entry “%1” cannot be read: %2</source>
        <translation>Der Eintrag „%1“ lässt sich nicht lesen: %2</translation>
    </message>
    <message>
        <source>The entry “%1” has %2 values, but its kind has %3.</source>
        <translation>Der Eintrag „%1“ hat %2 Werte, seine Art aber %3.</translation>
    </message>
    <message>
        <source>%1 exists already and is not overwritten: choose another name.</source>
        <translation>%1 gibt es schon und wird nicht überschrieben: einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>%1 cannot be kept as %2: %3.</source>
        <translation>%1 lässt sich nicht als %2 aufbewahren: %3.</translation>
    </message>
    <message>
        <source>%1 is the record itself: choose a copy of it.</source>
        <translation>%1 ist das Protokoll selbst: eine Kopie davon wählen.</translation>
    </message>
    <message>
        <source>The copy is not restored: %1</source>
        <translation>Die Kopie wird nicht wiederhergestellt: %1</translation>
    </message>
    <message>
        <source>holds a text longer than %1 KiB: shorten it</source>
        <translation>enthält einen Text von mehr als %1 KiB: kürzen</translation>
    </message>
    <message>
        <source>holds a text that is not plain UTF-8: type it again</source>
        <translation>enthält einen Text, der kein reines UTF-8 ist: neu eingeben</translation>
    </message>
    <message>
        <source>In %1 %2 is damaged: %3</source>
        <translation>In %1 ist %2 beschädigt: %3</translation>
    </message>
    <message>
        <source>its seal has the wrong length.</source>
        <translation>das Siegel hat die falsche Länge.</translation>
    </message>
    <message>
        <source>In %1 “%2” of %3 %4.</source>
        <translation>In %1, „%2“ von %3: %4.</translation>
    </message>
    <message>
        <source>In %1 “%2” of %3 is neither a whole number nor a text: the file is damaged.</source>
        <translation>In %1 ist „%2“ von %3 weder eine ganze Zahl noch ein Text: die Datei ist beschädigt.</translation>
    </message>
    <message>
        <source>%1 has details of %2 in the table “%3” without that entry: it was altered or damaged.</source>
        <translation>%1 hat Einzelheiten von %2 in der Tabelle „%3“ ohne diesen Eintrag: verändert oder beschädigt.</translation>
    </message>
    <message>
        <source>its row is gone.</source>
        <translation>die Zeile fehlt.</translation>
    </message>
    <message>
        <source>Entry %1: %2</source>
        <translation>Eintrag %1: %2</translation>
    </message>
    <message>
        <source>“%1” is not a moment as a record writes it.</source>
        <translation>„%1“ ist kein Zeitpunkt, wie ihn ein Protokoll schreibt.</translation>
    </message>
    <message>
        <source>its person %1.</source>
        <translation>die Person %1.</translation>
    </message>
    <message>
        <source>The moment of this entry lies outside the calendar: set the clock of this computer.</source>
        <translation>Der Zeitpunkt dieses Eintrags liegt außerhalb des Kalenders: die Uhr dieses Rechners stellen.</translation>
    </message>
    <message>
        <source>The copy to salvage from cannot be written: %1.</source>
        <translation>Die Kopie, aus der gerettet wird, lässt sich nicht schreiben: %1.</translation>
    </message>
    <message>
        <source>The copy to salvage from cannot be written.</source>
        <translation>Die Kopie, aus der gerettet wird, lässt sich nicht schreiben.</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation>%1 lässt sich nicht lesen: %2.</translation>
    </message>
    <message>
        <source>There is no room to work on a copy of %1: %2.</source>
        <translation>Für eine Arbeitskopie von %1 ist kein Platz: %2.</translation>
    </message>
    <message>
        <source>The disk does not give %1 blocks of the file.</source>
        <translation>Der Datenträger gibt %1 Blöcke der Datei nicht her.</translation>
    </message>
    <message>
        <source>A write that was cut off is taken back first.</source>
        <translation>Ein abgebrochener Schreibvorgang wird zuerst zurückgenommen.</translation>
    </message>
    <message>
        <source>There is no room to work on a copy of %1.</source>
        <translation>Für eine Arbeitskopie von %1 ist kein Platz.</translation>
    </message>
    <message>
        <source>There is no room to work on a copy of the damaged record.</source>
        <translation>Für eine Arbeitskopie des beschädigten Protokolls ist kein Platz.</translation>
    </message>
    <message>
        <source>The tables of the record cannot be found any more: look for a copy of it.</source>
        <translation>Die Tabellen des Protokolls sind nicht mehr zu finden: nach einer Kopie suchen.</translation>
    </message>
    <message>
        <source>The header or the list of tables was damaged or altered and is taken from a fresh record.</source>
        <translation>Der Kopf oder das Tabellenverzeichnis war beschädigt oder verändert und wird aus einem neuen Protokoll genommen.</translation>
    </message>
    <message>
        <source>There is no folder %1: make it first.</source>
        <translation>Es gibt keinen Ordner %1: zuerst anlegen.</translation>
    </message>
    <message>
        <source>%1 cannot be made: %2.</source>
        <translation>%1 lässt sich nicht anlegen: %2.</translation>
    </message>
    <message>
        <source>%1 cannot be opened: %2.</source>
        <translation>%1 lässt sich nicht öffnen: %2.</translation>
    </message>
    <message>
        <source>%1 cannot be put safely on the disk: %2.</source>
        <translation>%1 lässt sich nicht sicher auf den Datenträger schreiben: %2.</translation>
    </message>
    <message>
        <source>%1 is not a file that can be replaced: choose another name.</source>
        <translation>%1 ist keine Datei, die ersetzt werden könnte: einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>%1 cannot be replaced: %2.</source>
        <translation>%1 lässt sich nicht ersetzen: %2.</translation>
    </message>
    <message>
        <source>%1 no longer holds the entries that were read from it: it was replaced. Save a copy of what is on screen elsewhere.</source>
        <translation>%1 enthält nicht mehr die Einträge, die daraus gelesen wurden: die Datei wurde ersetzt. Eine Kopie dessen, was auf dem Bildschirm steht, anderswo speichern.</translation>
    </message>
    <message>
        <source>Not one entry of %1 can be read: look for a copy of it.</source>
        <translation>Kein einziger Eintrag von %1 ist lesbar: nach einer Kopie suchen.</translation>
    </message>
    <message>
        <source>it strikes entry %1, which is lost.</source>
        <translation>er streicht Eintrag %1, der verloren ist.</translation>
    </message>
    <message>
        <source>the bytes of its attachment “%1” cannot be read.</source>
        <translation>die Bytes seines Anhangs „%1“ sind nicht lesbar.</translation>
    </message>
    <message>
        <source>%1 is empty: it is not a build record.</source>
        <translation>%1 ist leer: kein Aufbauprotokoll.</translation>
    </message>
    <message>
        <source>%1 breaks off within its first 100 bytes: look for a copy of it.</source>
        <translation>%1 bricht in den ersten 100 Bytes ab: nach einer Kopie suchen.</translation>
    </message>
    <message>
        <source>%1 is a database of another program, not a build record: choose a file that ends in .caprail.</source>
        <translation>%1 ist die Datenbank eines anderen Programms, kein Aufbauprotokoll: eine Datei wählen, die auf .caprail endet.</translation>
    </message>
    <message>
        <source>%1 was written by a newer version of this program (its tables are of version %2, this program knows up to %3): open it with that one; it was not touched.</source>
        <translation>%1 wurde von einer neueren Version dieses Programms geschrieben (Tabellen der Version %2, dieses Programm kennt bis %3): mit der neueren öffnen; es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>%1 is damaged: %2. Salvage what can be read into a new file.</source>
        <translation>%1 ist beschädigt: %2. Was lesbar ist, in eine neue Datei retten.</translation>
    </message>
    <message>
        <source>its version number is %1</source>
        <translation>die Versionsnummer ist %1</translation>
    </message>
    <message>
        <source>it was switched to write-ahead mode, which leaves parts of a record beside the file</source>
        <translation>sie wurde auf den Write-Ahead-Modus umgestellt, der Teile eines Protokolls neben der Datei lässt</translation>
    </message>
    <message>
        <source>its file format is %1/%2, that of a record is 1/1</source>
        <translation>das Dateiformat ist %1/%2, das eines Protokolls 1/1</translation>
    </message>
    <message>
        <source>its page size is %1</source>
        <translation>die Seitengröße ist %1</translation>
    </message>
    <message>
        <source>it breaks off within its first page</source>
        <translation>sie bricht in der ersten Seite ab</translation>
    </message>
    <message>
        <source>There is no file %1: check its name and folder.</source>
        <translation>Es gibt keine Datei %1: Namen und Ordner prüfen.</translation>
    </message>
    <message>
        <source>%1 is not a plain file: choose a file that ends in .caprail.</source>
        <translation>%1 ist keine gewöhnliche Datei: eine Datei wählen, die auf .caprail endet.</translation>
    </message>
    <message>
        <source>%1 was opened to be read only.</source>
        <translation>%1 wurde nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <source>%1 was written by an earlier version of this program: it can be read, and written once it is upgraded.</source>
        <translation>%1 wurde von einer früheren Version dieses Programms geschrieben: die Datei ist lesbar und, sobald sie auf den neuen Stand gebracht ist, auch beschreibbar.</translation>
    </message>
    <message>
        <source>“%1” is larger than a record takes (%2 MiB): make it smaller first.</source>
        <translation>„%1“ ist größer, als ein Protokoll aufnimmt (%2 MiB): zuerst verkleinern.</translation>
    </message>
    <message>
        <source>The bytes of “%1” do not fit the size and hash that its entry gives.</source>
        <translation>Die Bytes von „%1“ passen nicht zu Größe und Prüfsumme in seinem Eintrag.</translation>
    </message>
    <message>
        <source>%1 was written by another program since it was read: read it again, then store the entry.</source>
        <translation>%1 wurde seit dem Lesen von einem anderen Programm geschrieben: noch einmal lesen, dann den Eintrag speichern.</translation>
    </message>
    <message>
        <source>%1 holds no attachment with the hash %2.</source>
        <translation>%1 enthält keinen Anhang mit der Prüfsumme %2.</translation>
    </message>
    <message>
        <source>In %1 the attachment %2 is damaged or was altered: its bytes no longer fit their hash.</source>
        <translation>In %1 ist der Anhang %2 beschädigt oder verändert: seine Bytes passen nicht mehr zur Prüfsumme.</translation>
    </message>
    <message>
        <source>The bytes of “%1” (entry %2) could not be read: %3</source>
        <translation>Die Bytes von „%1“ (Eintrag %2) waren nicht lesbar: %3</translation>
    </message>
    <message>
        <source>%1 was restored from a copy of an earlier version: it can be read, and written once it is upgraded.</source>
        <translation>%1 wurde aus einer Kopie einer früheren Version wiederhergestellt: die Datei ist lesbar und, sobald sie auf den neuen Stand gebracht ist, auch beschreibbar.</translation>
    </message>
    <message>
        <source>%1 cannot be found: %2.</source>
        <translation>%1 ist nicht zu finden: %2.</translation>
    </message>
    <message>
        <source>%1 was moved or deleted while it was open, or its disk was taken away: put it back and try again, or save a copy elsewhere.</source>
        <translation>%1 wurde verschoben oder gelöscht, während es offen war, oder der Datenträger wurde entfernt: zurücklegen und noch einmal versuchen oder eine Kopie anderswo speichern.</translation>
    </message>
    <message>
        <source>%1 does not answer (%2): check its disk and try again, or save a copy elsewhere.</source>
        <translation>%1 antwortet nicht (%2): den Datenträger prüfen und noch einmal versuchen oder eine Kopie anderswo speichern.</translation>
    </message>
    <message>
        <source>%1 was replaced by another file while it was open: save a copy elsewhere, then look at both.</source>
        <translation>%1 wurde durch eine andere Datei ersetzt, während es offen war: eine Kopie anderswo speichern, dann beide ansehen.</translation>
    </message>
    <message>
        <source>%1 may only be read: change its permissions, or save a copy elsewhere.</source>
        <translation>%1 darf nur gelesen werden: die Rechte ändern oder eine Kopie anderswo speichern.</translation>
    </message>
    <message>
        <source>%1 has a second name on this disk (a hard link): save a copy and work in that.</source>
        <translation>%1 hat auf diesem Datenträger einen zweiten Namen (harte Verknüpfung): eine Kopie speichern und darin arbeiten.</translation>
    </message>
    <message>
        <source>The folder of %1 may only be read: save a copy elsewhere and work in that.</source>
        <translation>Der Ordner von %1 darf nur gelesen werden: eine Kopie anderswo speichern und darin arbeiten.</translation>
    </message>
    <message>
        <source>%1 has tables of version %2, which this program does not know.</source>
        <translation>%1 hat Tabellen der Version %2, die dieses Programm nicht kennt.</translation>
    </message>
    <message>
        <source>%1 %2: it was altered outside this program. Salvage its entries into a new file.</source>
        <translation>%1 %2: außerhalb dieses Programms verändert. Die Einträge in eine neue Datei retten.</translation>
    </message>
    <message>
        <source>In %1: %2</source>
        <translation>In %1: %2</translation>
    </message>
    <message>
        <source>%1 could not be upgraded: %2</source>
        <translation>%1 ließ sich nicht auf den neuen Stand bringen: %2</translation>
    </message>
    <message>
        <source>the new file has another seal.</source>
        <translation>die neue Datei hat ein anderes Siegel.</translation>
    </message>
    <message>
        <source>%1 has entry %2 where entry %3 must be: entries were removed, inserted or put in another order.</source>
        <translation>%1 hat Eintrag %2, wo Eintrag %3 stehen muss: Einträge wurden entfernt, eingefügt oder umgestellt.</translation>
    </message>
    <message>
        <source>%1 holds more than this program reads into memory (%2 MiB of entries).</source>
        <translation>%1 enthält mehr, als dieses Programm in den Speicher liest (%2 MiB Einträge).</translation>
    </message>
    <message>
        <source>The seal of entry %1 does not fit: it, or the one before it, was altered after it was sealed.</source>
        <translation>Das Siegel von Eintrag %1 passt nicht: er oder der davor wurde nach dem Besiegeln verändert.</translation>
    </message>
    <message>
        <source>%1 is open in %2 (process %3 on %4): it can be read here, and written when it is closed there. If that computer is off, remove %5.</source>
        <translation>%1 ist in %2 offen (Prozess %3 auf %4): hier lesbar, und beschreibbar, wenn es dort geschlossen ist. Ist jener Rechner aus, %5 entfernen.</translation>
    </message>
    <message>
        <source>%1 can only be read: its lock %2 cannot be taken. Check the folder, or save a copy elsewhere.</source>
        <translation>%1 ist nur lesbar: die Sperre %2 lässt sich nicht setzen. Den Ordner prüfen oder eine Kopie anderswo speichern.</translation>
    </message>
    <message>
        <source>%1 gives no answer to “%2”.</source>
        <translation>%1 gibt keine Antwort auf „%2“.</translation>
    </message>
    <message>
        <source>%1 cannot be written: %2.</source>
        <translation>%1 lässt sich nicht schreiben: %2.</translation>
    </message>
    <message>
        <source>The entry has no member “time”: give it, for example &quot;2026-05-04T09:30:00Z&quot;.</source>
        <translation>Der Eintrag hat kein Element „time“: angeben, zum Beispiel &quot;2026-05-04T09:30:00Z&quot;.</translation>
    </message>
    <message>
        <source>The entry has no member “person”: say who made it.</source>
        <translation>Der Eintrag hat kein Element „person“: angeben, wer ihn gemacht hat.</translation>
    </message>
    <message>
        <source>It has the number %1 where %2 must be.</source>
        <translation>Er hat die Nummer %1, wo %2 stehen muss.</translation>
    </message>
    <message>
        <source>Its seal does not fit: it, or a line before it, was altered after it was sealed.</source>
        <translation>Sein Siegel passt nicht: er oder eine Zeile davor wurde nach dem Besiegeln verändert.</translation>
    </message>
    <message>
        <source>Its “sha256” is not 64 hexadecimal digits.</source>
        <translation>Sein „sha256“ besteht nicht aus 64 hexadezimalen Ziffern.</translation>
    </message>
    <message>
        <source>The bytes in %1 do not fit the hash and size of its attachment.</source>
        <translation>Die Bytes in %1 passen nicht zu Prüfsumme und Größe seines Anhangs.</translation>
    </message>
    <message>
        <source>%1, line %2</source>
        <translation>%1, Zeile %2</translation>
    </message>
    <message>
        <source>the line is too long for an entry.</source>
        <translation>die Zeile ist zu lang für einen Eintrag.</translation>
    </message>
    <message>
        <source>The bytes of the attachment %1 do not fit their hash: they were altered or damaged.</source>
        <translation>Die Bytes des Anhangs %1 passen nicht zu ihrer Prüfsumme: verändert oder beschädigt.</translation>
    </message>
    <message>
        <source>The bytes of the attachment “%1” (%2) are missing: they were removed.</source>
        <translation>Die Bytes des Anhangs „%1“ (%2) fehlen: sie wurden entfernt.</translation>
    </message>
    <message>
        <source>No entry tells of the attachment %1: it was put there by hand.</source>
        <translation>Kein Eintrag erwähnt den Anhang %1: er wurde von Hand eingefügt.</translation>
    </message>
    <message>
        <source>The table “%1” has details of entry %2, which does not exist.</source>
        <translation>Die Tabelle „%1“ hat Einzelheiten von Eintrag %2, den es nicht gibt.</translation>
    </message>
    <message>
        <source>No entry has the seal that was given: this is not the ledger that it was taken down from, or its end was removed. It has %1 entries and ends with the seal %2.</source>
        <translation>Kein Eintrag hat das angegebene Siegel: das ist nicht die Eintragsliste, von der es notiert wurde, oder ihr Ende wurde entfernt. Sie hat %1 Einträge und endet mit dem Siegel %2.</translation>
    </message>
    <message>
        <source>“%1” is not a seal: type the five groups of four digits as they stand on the sheet, like 3f2a-91c0-77de-0b15-a4c2.</source>
        <translation>„%1“ ist kein Siegel: die fünf Gruppen von vier Ziffern eingeben, wie sie auf dem Blatt stehen, etwa 3f2a-91c0-77de-0b15-a4c2.</translation>
    </message>
    <message>
        <source>not named</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>The index of the folder is damaged: it is made again.</source>
        <translation>Das Verzeichnis des Ordners ist beschädigt: es wird neu angelegt.</translation>
    </message>
    <message>
        <source>The cache folder %1 cannot be made: check its rights and the disk.</source>
        <translation>Der Zwischenspeicher-Ordner %1 lässt sich nicht anlegen: Rechte und Datenträger prüfen.</translation>
    </message>
    <message>
        <source>The index is of another version.</source>
        <translation>Das Verzeichnis ist von einer anderen Version.</translation>
    </message>
    <message>
        <source>The index of the folder is damaged: %1</source>
        <translation>Das Verzeichnis des Ordners ist beschädigt: %1</translation>
    </message>
    <message>
        <source>A template needs an engine layout.</source>
        <translation>Eine Vorlage braucht eine Motorbauform.</translation>
    </message>
    <message>
        <source>This record has no engine layout yet: set it at the engine station, then save the template.</source>
        <translation>Dieses Protokoll hat noch keine Motorbauform: sie an der Station Motor festlegen, dann die Vorlage speichern.</translation>
    </message>
    <message>
        <source>Give the template a name of one line.</source>
        <translation>Der Vorlage einen einzeiligen Namen geben.</translation>
    </message>
    <message>
        <source>A template holds layout, bands, rules and fastener groups, and no “%1”: take that line out.</source>
        <translation>Eine Vorlage enthält Motorbauform, Bänder, Regeln und Schraubengruppen, aber kein „%1“: diese Zeile herausnehmen.</translation>
    </message>
    <message>
        <source>%1 is not a usable template: %2</source>
        <translation>%1 ist keine brauchbare Vorlage: %2</translation>
    </message>
    <message>
        <source>There is no template “%1” of the shop&apos;s own that could be removed.</source>
        <translation>Eine eigene Vorlage „%1“ der Werkstatt zum Entfernen gibt es nicht.</translation>
    </message>
    <message>
        <source>The shop has revision %1 of “%2” already, and the file holds revision %3: remove the shop&apos;s first if the older one is wanted.</source>
        <translation>Die Werkstatt hat schon Revision %1 von „%2“, und die Datei enthält Revision %3: die der Werkstatt zuerst entfernen, wenn die ältere gewünscht ist.</translation>
    </message>
    <message>
        <source>There is no template “%1” of the shop&apos;s own.</source>
        <translation>Eine eigene Vorlage „%1“ der Werkstatt gibt es nicht.</translation>
    </message>
    <message>
        <source>%1 exists already and is not empty: choose another folder.</source>
        <translation>%1 gibt es schon und ist nicht leer: einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>noch nicht gelesen</translation>
    </message>
    <message>
        <source>record</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <source>no record</source>
        <translation>kein Protokoll</translation>
    </message>
    <message>
        <source>newer</source>
        <translation>neuer</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>beschädigt</translation>
    </message>
    <message>
        <source>unreadable</source>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <source>being written</source>
        <translation>wird geschrieben</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>%1 cannot be read (%2): check the path.</source>
        <translation>%1 lässt sich nicht lesen (%2): den Pfad prüfen.</translation>
    </message>
    <message>
        <source>%1 is being written, or a write was cut off: it is read again later; opening it takes back what was cut off.</source>
        <translation>%1 wird gerade geschrieben, oder ein Schreibvorgang brach ab: es wird später noch einmal gelesen; Öffnen nimmt das Abgebrochene zurück.</translation>
    </message>
    <message>
        <source>%1 is damaged: its last entry has no time. Salvage what can be read.</source>
        <translation>%1 ist beschädigt: der letzte Eintrag hat keine Zeitangabe. Retten, was lesbar ist.</translation>
    </message>
    <message>
        <source>%1 cannot be reached: it is gone, or may not be read.</source>
        <translation>%1 ist nicht erreichbar: nicht mehr da oder nicht lesbar.</translation>
    </message>
    <message>
        <source>The note “%1” names no template: it reads “NAME, revision 1”.</source>
        <translation>Die Notiz „%1“ nennt keine Vorlage: sie muss lauten wie „NAME, revision 1“.</translation>
    </message>
    <message>
        <source>pickup clearance</source>
        <translation>Ansaugabstand</translation>
    </message>
    <message>
        <source>This record has no build %1: it has %2.</source>
        <translation>Dieses Protokoll hat keinen Aufbau %1: es hat %2.</translation>
    </message>
    <message>
        <source>A build is compared with another one: choose two.</source>
        <translation>Ein Aufbau wird mit einem anderen verglichen: zwei wählen.</translation>
    </message>
    <message>
        <source>This record has one build only: there is a difference once a new build of the engine was begun.</source>
        <translation>Dieses Protokoll hat nur einen Aufbau: einen Unterschied gibt es, sobald ein neuer Aufbau des Motors begonnen wurde.</translation>
    </message>
    <message>
        <source>“%1” does not belong there.</source>
        <translation>„%1“ gehört nicht hierher.</translation>
    </message>
    <message>
        <source>it is of a newer version of this program.</source>
        <translation>sie ist von einer neueren Version dieses Programms.</translation>
    </message>
    <message>
        <source>it is not a file of this program.</source>
        <translation>sie ist keine Datei dieses Programms.</translation>
    </message>
    <message>
        <source>The shop&apos;s people and instruments in %1 cannot be used: %2 Mend the file or move it away to start over.</source>
        <translation>Personen und Messmittel der Werkstatt in %1 sind nicht brauchbar: %2 Die Datei berichtigen oder verschieben, um neu zu beginnen.</translation>
    </message>
    <message>
        <source>measuring</source>
        <translation>wird gemessen</translation>
    </message>
    <message>
        <source>trial fit open</source>
        <translation>Probemontage freigegeben</translation>
    </message>
    <message>
        <source>ready to close</source>
        <translation>Schließen freigegeben</translation>
    </message>
    <message>
        <source>signed off</source>
        <translation>abgezeichnet</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>begun</source>
        <translation>begonnen</translation>
    </message>
    <message>
        <source>all held</source>
        <translation>alle hielten</translation>
    </message>
    <message>
        <source>no longer counts</source>
        <translation>zählt nicht mehr</translation>
    </message>
    <message>
        <source>%1 is not a folder that can be read: check its name, or whether its disk or share is connected.</source>
        <translation>%1 ist kein lesbarer Ordner: den Namen prüfen, oder ob Datenträger oder Netzlaufwerk verbunden ist.</translation>
    </message>
    <message>
        <source>%1: %2 measured, %3 asked.</source>
        <translation>%1: %2 gemessen, gefordert %3.</translation>
    </message>
    <message>
        <source>%1: pass.</source>
        <translation>%1: bestanden.</translation>
    </message>
    <message>
        <source>%1: fail.</source>
        <translation>%1: nicht bestanden.</translation>
    </message>
    <message>
        <source>The %1 has 0 of two readings: measure it twice.</source>
        <translation>0 von zwei Ablesungen (%1): zweimal messen.</translation>
    </message>
    <message>
        <source>The %1 has 1 of two readings: measure it once more.</source>
        <translation>1 von zwei Ablesungen (%1): noch einmal messen.</translation>
    </message>
    <message>
        <source>The %1 must be zero or more: look at its readings.</source>
        <translation>Muss null oder mehr sein (%1): die Ablesungen ansehen.</translation>
    </message>
    <message>
        <source>The %1 must be above zero: look at its readings.</source>
        <translation>Muss über null sein (%1): die Ablesungen ansehen.</translation>
    </message>
    <message>
        <source>pickup depth</source>
        <translation>Ansaugtiefe</translation>
    </message>
    <message>
        <source>A nut factor K of %1 is outside 0.03 to 1: steel threads have about 0.1 to 0.3.</source>
        <translation>Ein K-Faktor von %1 liegt außerhalb von 0.03 bis 1: Stahlgewinde haben etwa 0.1 bis 0.3.</translation>
    </message>
    <message>
        <source>A friction coefficient of %1 is outside 0.01 to 1: steel on steel has about 0.08 to 0.25.</source>
        <translation>Eine Reibungszahl von %1 liegt außerhalb von 0.01 bis 1: Stahl auf Stahl hat etwa 0.08 bis 0.25.</translation>
    </message>
    <message>
        <source>The mean radius of the bearing face must be above zero, not %1.</source>
        <translation>Der mittlere Radius der Auflagefläche muss größer als null sein, angegeben ist %1.</translation>
    </message>
    <message>
        <source>μt·d2/(2·cos 30°) = %1 × %2 / 1.732 = %3</source>
        <translation>μt·d2/(2·cos 30°) = %1 × %2 / 1.732 = %3</translation>
    </message>
    <message>
        <source>μb·rb = %1 × %2 = %3</source>
        <translation>μb·rb = %1 × %2 = %3</translation>
    </message>
    <message>
        <source>sum = %1</source>
        <translation>Summe = %1</translation>
    </message>
    <message>
        <source>A torque of %1 is outside what a fastener here can have (%2 to %3): check the figure and its unit.</source>
        <translation>Ein Drehmoment von %1 liegt außerhalb dessen, was eine Verschraubung hier haben kann (%2 bis %3): Zahl und Einheit prüfen.</translation>
    </message>
    <message>
        <source>A preload of %1 is outside what a fastener here can have (up to %2): check the figure and its unit.</source>
        <translation>Eine Vorspannkraft von %1 liegt außerhalb dessen, was eine Verschraubung hier haben kann (bis %2): Zahl und Einheit prüfen.</translation>
    </message>
    <message>
        <source>F = T / sum = %1 / %2 = %3</source>
        <translation>F = T / Summe = %1 / %2 = %3</translation>
    </message>
    <message>
        <source>A thread of %1 nominal diameter is outside 0.05 to 4 in: check the diameter.</source>
        <translation>Ein Gewinde mit %1 Nenndurchmesser liegt außerhalb von 0.05 bis 4 in: den Durchmesser prüfen.</translation>
    </message>
    <message>
        <source>A thread of %1 in with %2 threads per inch cannot be cut: the pitch must lie between a hundredth and a third of the diameter.</source>
        <translation>Ein Gewinde von %1 in mit %2 Gängen je Zoll lässt sich nicht schneiden: die Steigung muss zwischen einem Hundertstel und einem Drittel des Durchmessers liegen.</translation>
    </message>
    <message>
        <source>A thread of %1 nominal diameter is outside 1 to 100 mm: check the diameter.</source>
        <translation>Ein Gewinde mit %1 Nenndurchmesser liegt außerhalb von 1 bis 100 mm: den Durchmesser prüfen.</translation>
    </message>
    <message>
        <source>A thread M%1 with a pitch of %2 mm cannot be cut: the pitch must lie between a hundredth and a third of the diameter.</source>
        <translation>Ein Gewinde M%1 mit einer Steigung von %2 mm lässt sich nicht schneiden: die Steigung muss zwischen einem Hundertstel und einem Drittel des Durchmessers liegen.</translation>
    </message>
    <message>
        <source>A modulus of %1 GPa is outside 40 to 400 GPa: steel has about 205, titanium about 114.</source>
        <translation>Ein Elastizitätsmodul von %1 GPa liegt außerhalb von 40 bis 400 GPa: Stahl hat etwa 205, Titan etwa 114.</translation>
    </message>
    <message>
        <source>A proof stress of %1 MPa (%2 psi) is outside 50 to 3000 MPa: check the figure and its unit.</source>
        <translation>Eine Prüfspannung von %1 MPa (%2 psi) liegt außerhalb von 50 bis 3000 MPa: Zahl und Einheit prüfen.</translation>
    </message>
    <message>
        <source>1/4 to 1 1/2 in</source>
        <translation>1/4 bis 1 1/2 in</translation>
    </message>
    <message>
        <source>M1.6 to M39</source>
        <translation>M1.6 bis M39</translation>
    </message>
    <message>
        <source>A sequence is known for 3 to 9 main caps, and %1 were given.</source>
        <translation>Eine Reihenfolge ist für 3 bis 9 Hauptlagerdeckel bekannt, angegeben sind %1.</translation>
    </message>
    <message>
        <source>A main cap has 2 or 4 fasteners, and %1 were given.</source>
        <translation>Ein Hauptlagerdeckel hat 2 oder 4 Verschraubungen, angegeben sind %1.</translation>
    </message>
    <message>
        <source>A sequence is known for 1 to 16 rods, and %1 were given.</source>
        <translation>Eine Reihenfolge ist für 1 bis 16 Pleuel bekannt, angegeben sind %1.</translation>
    </message>
    <message>
        <source>A pattern of 1 to 500 fasteners can be put in order, and %1 were given.</source>
        <translation>Ein Muster von 1 bis 500 Verschraubungen lässt sich ordnen, angegeben sind %1.</translation>
    </message>
    <message>
        <source>The final torque must be above zero: give the specified value.</source>
        <translation>Das Enddrehmoment muss größer als null sein: den vorgegebenen Wert angeben.</translation>
    </message>
    <message>
        <source>A torque is reached in 1 to 10 steps, and %1 were given.</source>
        <translation>Ein Drehmoment wird in 1 bis 10 Schritten erreicht, angegeben sind %1.</translation>
    </message>
    <message>
        <source>The length of the wrench must be above zero and at most 5 m, not %1: measure from the grip to the drive.</source>
        <translation>Die Länge des Schlüssels muss größer als null und höchstens 5 m sein, angegeben ist %1: vom Griff bis zum Vierkant messen.</translation>
    </message>
    <message>
        <source>The extension&apos;s length cannot be negative or above 5 m, and %1 was given: for one folded back give an angle of more than 90°.</source>
        <translation>Die Länge der Verlängerung kann nicht negativ oder über 5 m sein, angegeben ist %1: für eine zurückgeklappte einen Winkel über 90° angeben.</translation>
    </message>
    <message>
        <source>The extension&apos;s angle lies between 0° (straight on) and 180° (folded back), and %1 was given.</source>
        <translation>Der Winkel der Verlängerung liegt zwischen 0° (gerade) und 180° (zurückgeklappt), angegeben ist %1.</translation>
    </message>
    <message>
        <source>An extension of %1 at %2 leaves no lever on a wrench of %3: turn it forward or take a shorter one.</source>
        <translation>Eine Verlängerung von %1 bei %2 lässt an einem Schlüssel von %3 keinen Hebelarm: nach vorn drehen oder eine kürzere nehmen.</translation>
    </message>
    <message>
        <source>L + E·cos α = %1 + %2 × %3 = %4</source>
        <translation>L + E·cos α = %1 + %2 × %3 = %4</translation>
    </message>
    <message>
        <source>setting = T·L/(L + E·cos α) = %1 × %2 / %3 = %4</source>
        <translation>Einstellwert = T·L/(L + E·cos α) = %1 × %2 / %3 = %4</translation>
    </message>
    <message>
        <source>The largest value of a torque wrench must be above zero, not %1.</source>
        <translation>Der größte Wert eines Drehmomentschlüssels muss größer als null sein, angegeben ist %1.</translation>
    </message>
    <message>
        <source>The smallest value marked on the wrench (%1) must lie between zero and its largest (%2).</source>
        <translation>Der kleinste auf dem Schlüssel angegebene Wert (%1) muss zwischen null und seinem größten (%2) liegen.</translation>
    </message>
    <message>
        <source>A scatter of %1 is outside 0 to 90 %: a torque wrench reaches about 25 to 35 %.</source>
        <translation>Eine Streuung von %1 liegt außerhalb von 0 bis 90 %: ein Drehmomentschlüssel erreicht etwa 25 bis 35 %.</translation>
    </message>
    <message>
        <source>proof load = %1 × %2 = %3 (%4, %5)</source>
        <translation>Prüfkraft = %1 × %2 = %3 (%4, %5)</translation>
    </message>
    <message>
        <source>share of proof = %1 / %2 = %3</source>
        <translation>Anteil an der Prüfkraft = %1 / %2 = %3</translation>
    </message>
    <message>
        <source>with a scatter of ±%1: %2 at the higher friction to %3 at the lower</source>
        <translation>mit einer Streuung von ±%1: %2 bei der höheren Reibung bis %3 bei der niedrigeren</translation>
    </message>
    <message>
        <source>A torque of %1 would pull the fastener to %2 of its proof load: was a value in lbf·in entered as lbf·ft? As lbf·in it would be %3.</source>
        <translation>Ein Drehmoment von %1 zöge die Verschraubung auf %2 ihrer Prüfkraft: wurde ein Wert in lbf·in als lbf·ft eingegeben? Als lbf·in wären es %3.</translation>
    </message>
    <message>
        <source>A torque of %1 pulls the fastener to only %2 of its proof load: was a value in lbf·ft entered as lbf·in? As lbf·ft it would be %3.</source>
        <translation>Ein Drehmoment von %1 zieht die Verschraubung nur auf %2 ihrer Prüfkraft: wurde ein Wert in lbf·ft als lbf·in eingegeben? Als lbf·ft wären es %3.</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>gängige Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>dry, black oxide</source>
        <translation>trocken, brüniert</translation>
    </message>
    <message>
        <source>dry, zinc plated</source>
        <translation>trocken, verzinkt</translation>
    </message>
    <message>
        <source>engine oil</source>
        <translation>Motoröl</translation>
    </message>
    <message>
        <source>cadmium plated</source>
        <translation>verkadmet</translation>
    </message>
    <message>
        <source>assembly lubricant with molybdenum disulphide</source>
        <translation>Montageschmierstoff mit Molybdändisulfid</translation>
    </message>
    <message>
        <source>anti-seize paste</source>
        <translation>Anti-Seize-Paste</translation>
    </message>
    <message>
        <source>cap %1</source>
        <translation>Deckel %1</translation>
    </message>
    <message>
        <source>M%1 is cut as %2 (coarse) or %3 (fine)</source>
        <translation>M%1 wird als %2 (Regelgewinde) oder %3 (Feingewinde) geschnitten</translation>
    </message>
    <message>
        <source>%1 is cut with %2 (coarse) or %3 (fine) threads per inch</source>
        <translation>%1 wird mit %2 (grob) oder %3 (fein) Gängen je Zoll geschnitten</translation>
    </message>
    <message>
        <source>%1 leaves the pitch open: %2; add it behind a dash.</source>
        <translation>%1 lässt die Steigung offen: %2; mit Bindestrich anfügen.</translation>
    </message>
    <message>
        <source>%1 contradicts itself; give the number or the series that is meant.</source>
        <translation>%1 widerspricht sich; die Zahl oder die gemeinte Reihe angeben.</translation>
    </message>
    <message>
        <source>%1 contradicts itself: %2; give the number or the series that is meant.</source>
        <translation>%1 widerspricht sich: %2; die Zahl oder die gemeinte Reihe angeben.</translation>
    </message>
    <message>
        <source>No thread was given: write inch threads as 7/16-20 and metric ones as M10x1.25.</source>
        <translation>Es wurde kein Gewinde angegeben: Zollgewinde als 7/16-20 und metrische als M10x1.25 schreiben.</translation>
    </message>
    <message>
        <source>A fastener that moved turned by more than 0°, and %1 was given: if it did not turn, it held.</source>
        <translation>Eine Verschraubung, die sich weiterdrehte, drehte sich um mehr als 0°, angegeben ist %1: wenn sie sich nicht drehte, hielt sie.</translation>
    </message>
    <message>
        <source>A movement of %1 is more than a whole turn: check the angle, or back the fastener off and tighten it again.</source>
        <translation>Eine Bewegung von %1 ist mehr als eine ganze Umdrehung: den Winkel prüfen oder die Verschraubung lösen und neu anziehen.</translation>
    </message>
    <message>
        <source>gap = %1 + 0 to %2 = %3 to %4</source>
        <translation>Spaltmaß = %1 + 0 bis %2 = %3 bis %4</translation>
    </message>
    <message>
        <source>No place has a residual yet.</source>
        <translation>Noch hat keine Stelle ein Restmaß.</translation>
    </message>
    <message>
        <source>pitch</source>
        <translation>Längsneigung</translation>
    </message>
    <message>
        <source>roll</source>
        <translation>Querneigung</translation>
    </message>
    <message>
        <source>twist</source>
        <translation>Verwindung</translation>
    </message>
    <message>
        <source>The places that have a residual cannot tell %1: only one cap is tied.</source>
        <translation>Die Stellen mit einem Restmaß reichen nicht für %1: nur ein Deckel ist verbunden.</translation>
    </message>
    <message>
        <source>There is no position %1 in this plan: correct its name.</source>
        <translation>Eine Stelle %1 gibt es in diesem Plan nicht: ihren Namen berichtigen.</translation>
    </message>
    <message>
        <source>Position %1 is given two built stacks: give one.</source>
        <translation>Stelle %1 hat zwei aufgebaute Stapel: nur einen angeben.</translation>
    </message>
    <message>
        <source>The stack built at position %1 has shim %2, which is not in the kit or is set aside: correct the stack.</source>
        <translation>Der Stapel an Stelle %1 hat Distanzscheibe %2, die nicht im Satz oder beiseitegelegt ist: den Stapel berichtigen.</translation>
    </message>
    <message>
        <source>Shim %1 is built in twice, at position %2 and at position %3: correct one of them.</source>
        <translation>Distanzscheibe %1 ist zweimal eingebaut, an Stelle %2 und an Stelle %3: einen der beiden Stapel berichtigen.</translation>
    </message>
    <message>
        <source>Shim %1 has a thickness of %2: give its measured or marked thickness, more than 0.</source>
        <translation>Distanzscheibe %1 hat eine Dicke von %2: die gemessene oder die in der Beschriftung genannte Dicke angeben, größer als 0.</translation>
    </message>
    <message>
        <source>The kit has two shims called %1: give each its own id.</source>
        <translation>Der Satz hat zwei Distanzscheiben %1: jeder einen eigenen Namen geben.</translation>
    </message>
    <message>
        <source>Position %1 is listed twice: give each position once.</source>
        <translation>Stelle %1 steht zweimal in der Liste: jede Stelle einmal angeben.</translation>
    </message>
    <message>
        <source>Position %1 is at cap %2, but the caps run from 1 to %3: correct its cap.</source>
        <translation>Stelle %1 liegt an Deckel %2, aber die Deckel reichen von 1 bis %3: ihren Deckel berichtigen.</translation>
    </message>
    <message>
        <source>Position %1 is neither left nor right: give its side.</source>
        <translation>Stelle %1 ist weder links noch rechts: ihre Seite angeben.</translation>
    </message>
    <message>
        <source>Position %1 is pinned with %2 shims, but the largest stack is %3: unpin it or allow larger stacks.</source>
        <translation>Stelle %1 ist mit %2 Distanzscheiben fixiert, aber der größte Stapel hat %3: die Fixierung lösen oder größere Stapel erlauben.</translation>
    </message>
    <message>
        <source>Position %1 is pinned with shim %2, which is not in the kit or is set aside: unpin it or put the shim back.</source>
        <translation>Stelle %1 ist mit Distanzscheibe %2 fixiert, die nicht im Satz oder beiseitegelegt ist: die Fixierung lösen oder die Distanzscheibe zurücknehmen.</translation>
    </message>
    <message>
        <source>Shim %1 is pinned twice, at position %2 and at position %3: unpin one of them.</source>
        <translation>Distanzscheibe %1 ist zweimal fixiert, an Stelle %2 und an Stelle %3: eine der beiden Fixierungen lösen.</translation>
    </message>
    <message>
        <source>The largest stack is given as %1 shims: give 1 or more, or 0 for no limit.</source>
        <translation>Der größte Stapel ist mit %1 Distanzscheiben angegeben: 1 oder mehr angeben oder 0 für keine Grenze.</translation>
    </message>
    <message>
        <source>The engine is given %1 caps: give their number, or 0 to count them from the positions.</source>
        <translation>Für den Motor sind %1 Deckel angegeben: ihre Zahl angeben oder 0, um sie aus den Stellen zu zählen.</translation>
    </message>
    <message>
        <source>± %1 = k %2 × u %3; degrees of freedom %4.</source>
        <translation>± %1 = k %2 × u %3; Freiheitsgrade %4.</translation>
    </message>
    <message>
        <source>The largest share is “%1”, %2.</source>
        <translation>Der größte Anteil ist „%1“, %2.</translation>
    </message>
    <message>
        <source>a confidence lies between 0 and 1, degrees of freedom above 0</source>
        <translation>ein Vertrauensniveau liegt zwischen 0 und 1, Freiheitsgrade über 0</translation>
    </message>
    <message>
        <source>an expanded uncertainty is finite and not below zero</source>
        <translation>eine erweiterte Messunsicherheit ist endlich und nicht unter null</translation>
    </message>
    <message>
        <source>Not read yet.</source>
        <translation>Noch nicht gemessen.</translation>
    </message>
    <message>
        <source>%1, repeatability</source>
        <translation>%1, Wiederholbarkeit</translation>
    </message>
    <message>
        <source>%1, zero of %2</source>
        <translation>%1, Nullpunkt von %2</translation>
    </message>
    <message>
        <source>zero of %1</source>
        <translation>Nullpunkt von %1</translation>
    </message>
    <message>
        <source>Nothing was measured: an uncertainty needs at least one reading.</source>
        <translation>Nichts wurde gemessen: eine Messunsicherheit braucht mindestens eine Ablesung.</translation>
    </message>
    <message>
        <source>The gap has no reading: read it first.</source>
        <translation>Das Spaltmaß hat keine Ablesung: zuerst messen.</translation>
    </message>
    <message>
        <source>A gap is read with one feeler leaf at least: enter how many lay in the slot.</source>
        <translation>Ein Spaltmaß wird mit mindestens einem Blatt der Fühlerlehre gemessen: eingeben, wie viele im Spalt lagen.</translation>
    </message>
    <message>
        <source>A limit of error for the gap is below zero: enter it as a half-width, without sign.</source>
        <translation>Eine Fehlergrenze für das Spaltmaß liegt unter null: als halbe Breite ohne Vorzeichen eingeben.</translation>
    </message>
    <message>
        <source>straightedge flatness</source>
        <translation>Ebenheit des Haarlineals</translation>
    </message>
    <message>
        <source>A variance split needs two groups or more.</source>
        <translation>Eine Varianzzerlegung braucht zwei Gruppen oder mehr.</translation>
    </message>
    <message>
        <source>A group of the variance split has no value: leave it out, or measure it.</source>
        <translation>Eine Gruppe der Varianzzerlegung hat keinen Wert: weglassen oder messen.</translation>
    </message>
    <message>
        <source>A value of the variance split is not a finite number.</source>
        <translation>Ein Wert der Varianzzerlegung ist keine endliche Zahl.</translation>
    </message>
    <message>
        <source>A variance split needs a group of two values at least.</source>
        <translation>Eine Varianzzerlegung braucht eine Gruppe von mindestens zwei Werten.</translation>
    </message>
    <message>
        <source>The study has two readings of %1 by %2 in pass %3: strike one.</source>
        <translation>Die Studie hat zwei Ablesungen von %1 durch %2 in Durchgang %3: eine streichen.</translation>
    </message>
    <message>
        <source>A repeatability study needs two places at least; ten are usual.</source>
        <translation>Eine Studie der Wiederholbarkeit braucht mindestens zwei Stellen; zehn sind üblich.</translation>
    </message>
    <message>
        <source>A repeatability study needs two passes at least.</source>
        <translation>Eine Studie der Wiederholbarkeit braucht mindestens zwei Durchgänge.</translation>
    </message>
    <message>
        <source>The study lacks the reading of %1 by %2 in pass %3: read it, or leave that pass out.</source>
        <translation>Der Studie fehlt die Ablesung von %1 durch %2 in Durchgang %3: messen oder den Durchgang weglassen.</translation>
    </message>
    <message>
        <source>One reading repeats to %1 (standard deviation, %2 degrees of freedom); people differ by %3; the places differ by %4.</source>
        <translation>Eine Ablesung wiederholt sich auf %1 genau (Standardabweichung, %2 Freiheitsgrade); die Personen unterscheiden sich um %3; die Stellen um %4.</translation>
    </message>
    <message>
        <source>One reading repeats to %1 (standard deviation, %2 degrees of freedom); the places differ by %3.</source>
        <translation>Eine Ablesung wiederholt sich auf %1 genau (Standardabweichung, %2 Freiheitsgrade); die Stellen unterscheiden sich um %3.</translation>
    </message>
    <message>
        <source>in</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>The stack at %1 is on already.</source>
        <translation>Der Stapel an %1 ist schon aufgelegt.</translation>
    </message>
    <message>
        <source>The stack at %1 is off already.</source>
        <translation>Der Stapel an %1 ist schon abgenommen.</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>The bore is not measured: measure it with the cap at full torque.</source>
        <translation>Die Bohrung ist nicht gemessen: mit dem Deckel auf vollem Drehmoment messen.</translation>
    </message>
    <message>
        <source>The bore at station %1 must be above zero: enter the diameter.</source>
        <translation>Die Bohrung an Messebene %1 muss über null sein: den Durchmesser eingeben.</translation>
    </message>
    <message>
        <source>The housing is not measured: measure it with the cap at full torque.</source>
        <translation>Die Gehäusebohrung ist nicht gemessen: mit dem Deckel auf vollem Drehmoment messen.</translation>
    </message>
    <message>
        <source>The housing at station %1 must be above zero: enter the diameter.</source>
        <translation>Die Gehäusebohrung an Messebene %1 muss über null sein: den Durchmesser eingeben.</translation>
    </message>
    <message>
        <source>The bytes of its attachment are neither in %1 nor among the files of %2: put them there.</source>
        <translation>Die Bytes seines Anhangs sind weder in %1 noch unter den Dateien von %2: sie dorthin legen.</translation>
    </message>
    <message>
        <source>not finished</source>
        <translation>nicht zu Ende gelesen</translation>
    </message>
    <message>
        <source>%1 is not a plain file (it is a link, a folder, a pipe, a socket or a device), and a record needs that name: move it away, then try again.</source>
        <translation>%1 ist keine gewöhnliche Datei (sondern eine Verknüpfung, ein Ordner, eine Pipe, ein Socket oder ein Gerät), und ein Protokoll braucht diesen Namen: wegschieben, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 belongs to someone who may not write %2: move it away, then try again.</source>
        <translation>%1 gehört jemandem, der %2 nicht schreiben darf: wegschieben, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 is larger than the journal of a write to %2 can be: move it away, then try again.</source>
        <translation>%1 ist größer, als das Journal eines Schreibens in %2 sein kann: wegschieben, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>No build record has a file such as %1: another program put it there, or the record was open in one. Move it away, then try again.</source>
        <translation>Kein Protokoll hat eine Datei wie %1: Ein anderes Programm hat sie dort abgelegt, oder das Protokoll war in einem offen. Wegschieben, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 is larger than a lock is: it was not made by this program. Move it away, then try again.</source>
        <translation>%1 ist größer als eine Sperre: Sie stammt nicht von diesem Programm. Wegschieben, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 is the journal of a write to another file, as when a copy was put in the place of a record: with it %2 would be harmed, so neither was touched. Move the journal to another folder, then try again.</source>
        <translation>%1 ist das Journal eines Schreibens in eine andere Datei, etwa weil eine Kopie an die Stelle eines Protokolls gelegt wurde: %2 würde damit beschädigt, darum wurde keine von beiden angerührt. Das Journal in einen anderen Ordner schieben, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>A write to %1 was cut off: it is shown as it was before that write, and was not touched. The write is taken back when it is next opened to be written.</source>
        <translation>Ein Schreiben in %1 wurde abgebrochen: Gezeigt wird der Stand davor, und die Datei wurde nicht angerührt. Zurückgenommen wird es, wenn sie das nächste Mal zum Schreiben geöffnet wird.</translation>
    </message>
    <message>
        <source>A write to %1 was cut off before it reached the record: nothing that was stored is lost.</source>
        <translation>Ein Schreiben in %1 wurde abgebrochen, bevor es das Protokoll erreichte: Nichts Gespeichertes ist verloren.</translation>
    </message>
    <message>
        <source>A write to %1 was cut off and was taken back: nothing that was stored is lost. Record and journal as they were found are kept as %2 and %3.</source>
        <translation>Ein Schreiben in %1 wurde abgebrochen und zurückgenommen: Nichts Gespeichertes ist verloren. Protokoll und Journal, wie sie vorgefunden wurden, sind als %2 und %3 aufbewahrt.</translation>
    </message>
    <message>
        <source>What lies beside the file was not used: %1</source>
        <translation>Was neben der Datei liegt, wurde nicht verwendet: %1</translation>
    </message>
    <message>
        <source>The journal beside the file is that of a write to another one, and was not used.</source>
        <translation>Das Journal neben der Datei gehört zum Schreiben in eine andere und wurde nicht verwendet.</translation>
    </message>
    <message>
        <source>%1 cannot be looked at: %2.</source>
        <translation>%1 kann nicht angesehen werden: %2.</translation>
    </message>
    <message>
        <source>%1 cannot be given its permissions: %2.</source>
        <translation>%1 kann ihre Rechte nicht bekommen: %2.</translation>
    </message>
    <message>
        <source>%1 names another file, which would be deleted if it were played back; no write to a record leaves such a journal. It was not touched: move it away, then try again.</source>
        <translation>%1 nennt eine andere Datei, die beim Zurückspielen gelöscht würde; kein Schreiben in ein Protokoll hinterlässt ein solches Journal. Es wurde nicht angerührt: wegschieben, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 is damaged: it calls %2 of its pages free, and a record has none; the next entry would be written over others. Salvage what can be read into a new file.</source>
        <translation>%1 ist beschädigt: Die Datei nennt %2 ihrer Seiten frei, und ein Protokoll hat keine freien; der nächste Eintrag würde über andere geschrieben. Was lesbar ist, in eine neue Datei retten.</translation>
    </message>
    <message>
        <source>%1 is damaged: its pages make %2 bytes, and the file has %3. Salvage what can be read into a new file.</source>
        <translation>%1 ist beschädigt: Ihre Seiten ergeben %2 Byte, und die Datei hat %3. Was lesbar ist, in eine neue Datei retten.</translation>
    </message>
    <message>
        <source>There is no room for a private copy of %1 to look at: %2.</source>
        <translation>Für eine eigene Kopie von %1 zum Ansehen ist kein Platz: %2.</translation>
    </message>
    <message>
        <source>%1 has a path too long to be opened: with what a record needs beside it, it would have more than 512 bytes. Choose a folder less deep.</source>
        <translation>%1 hat einen Pfad, der zu lang zum Öffnen ist: mit dem, was ein Protokoll neben sich braucht, hätte er mehr als 512 Bytes. Einen weniger tiefen Ordner wählen.</translation>
    </message>
    <message>
        <source>%1 cannot be read back: %2.</source>
        <translation>%1 kann nicht zurückgelesen werden: %2.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made (%2): check its name and the rights to it.</source>
        <translation>Der Ordner %1 kann nicht angelegt werden (%2): seinen Namen und die Rechte daran prüfen.</translation>
    </message>
    <message>
        <source>%1 is a link that leads nowhere: choose another name.</source>
        <translation>%1 ist eine Verknüpfung, die ins Leere führt: einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>%1 is the record itself, and is not written over: choose another name.</source>
        <translation>%1 ist das Protokoll selbst und wird nicht überschrieben: einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>At %1 there is something that is neither a PDF nor a PNG, and it is not written over: choose another name.</source>
        <translation>Bei %1 steht etwas, das weder PDF noch PNG ist, und es wird nicht überschrieben: einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>At %1 there is something that is neither a table nor a text, and it is not written over: choose another name.</source>
        <translation>Bei %1 steht etwas, das weder Tabelle noch Text ist, und es wird nicht überschrieben: einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>%1 is larger than %2 MiB: this is not such a file.</source>
        <translation>%1 ist größer als %2 MiB: das ist keine solche Datei.</translation>
    </message>
    <message>
        <source>it cannot be read (%1).</source>
        <translation>sie kann nicht gelesen werden (%1).</translation>
    </message>
    <message>
        <source>the text goes on for longer than a record could hold.</source>
        <translation>der Text ist länger, als ein Protokoll fassen könnte.</translation>
    </message>
    <message>
        <source>There are more entries than a record may hold (%1 MiB of them).</source>
        <translation>Es sind mehr Einträge, als ein Protokoll halten darf (%1 MiB davon).</translation>
    </message>
    <message>
        <source>Its attachment has another size than the same one before.</source>
        <translation>Sein Anhang hat eine andere Größe als derselbe zuvor.</translation>
    </message>
    <message>
        <source>there are more than a million empty lines: this is not a ledger.</source>
        <translation>es sind mehr als eine Million leere Zeilen: das ist keine Eintragsliste.</translation>
    </message>
    <message>
        <source>%1 does not hold a single entry: name the text of a ledger.</source>
        <translation>%1 enthält keinen einzigen Eintrag: den Text einer Eintragsliste nennen.</translation>
    </message>
    <message>
        <source>%1 does not fit its sum in %2: it was cut off or altered after it was handed over. Ask for it again.</source>
        <translation>%1 passt nicht zu seiner Prüfsumme in %2: nach der Übergabe wurde der Text abgeschnitten oder verändert. Erneut darum bitten.</translation>
    </message>
    <message>
        <source>The folder %1 exists already, and holds other files than an export that was cut off would leave: choose another name.</source>
        <translation>Der Ordner %1 besteht schon und enthält andere Dateien, als ein abgebrochener Export hinterließe: einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>%1 can only be read: its name or its folder&apos;s holds bytes that are not text (not UTF-8). Rename it to write to it.</source>
        <translation>%1 kann nur gelesen werden: der Name oder der des Ordners enthält Bytes, die kein Text sind (kein UTF-8). Zum Schreiben umbenennen.</translation>
    </message>
    <message>
        <source>it is not a JPEG, PNG, WebP or HEIF picture</source>
        <translation>es ist kein Bild der Arten JPEG, PNG, WebP oder HEIF</translation>
    </message>
    <message>
        <source>it has too many pixels</source>
        <translation>es hat zu viele Bildpunkte</translation>
    </message>
    <message>
        <source>pictures of the kind %1 cannot be read on this computer</source>
        <translation>Bilder der Art %1 können auf diesem Rechner nicht gelesen werden</translation>
    </message>
    <message>
        <source>“%1” cannot be taken: %2. Save it as JPEG or PNG and add that.</source>
        <translation>„%1“ kann nicht aufgenommen werden: %2. Als JPEG oder PNG speichern und das hinzufügen.</translation>
    </message>
    <message>
        <source>Entry %1 says from what this record was salvaged: that stays.</source>
        <translation>Eintrag %1 sagt, woraus dieses Protokoll gerettet wurde: das bleibt stehen.</translation>
    </message>
    <message>
        <source>Such an entry is made by salvaging a damaged record, and in no other way.</source>
        <translation>Ein solcher Eintrag entsteht, wenn ein beschädigtes Protokoll gerettet wird, und auf keine andere Weise.</translation>
    </message>
    <message>
        <source>The cycles of %1 are counts of pulls, at most %2 and not negative.</source>
        <translation>Die Lastspiele von %1 sind Anzahlen, höchstens %2 und nicht negativ.</translation>
    </message>
    <message>
        <source>%1 is tightened by torque and angle: give both, as 40 / 90.</source>
        <translation>%1 wird nach Drehmoment und Winkel angezogen: beides angeben, etwa 40 / 90.</translation>
    </message>
    <message>
        <source>The salvage of “%1” carries no proper SHA-256 hash or size.</source>
        <translation>Die Rettung von „%1“ trägt keine richtige SHA-256-Prüfsumme oder Größe.</translation>
    </message>
    <message>
        <source>the name of the file that was salvaged</source>
        <translation>den Namen der geretteten Datei</translation>
    </message>
    <message>
        <source>This ledger strikes and closes too often for its gates to be checked.</source>
        <translation>In dieser Eintragsliste wird zu oft gestrichen und geschlossen, als dass sich ihre Sperren verfolgen ließen.</translation>
    </message>
    <message>
        <source>This build was signed off in entry %1.</source>
        <translation>Dieser Aufbau wurde in Eintrag %1 abgezeichnet.</translation>
    </message>
    <message>
        <source>Entry %1 was struck already.</source>
        <translation>Eintrag %1 wurde schon gestrichen.</translation>
    </message>
    <message>
        <source>Entry %1 needs entry %2: %3</source>
        <translation>Eintrag %1 braucht Eintrag %2: %3</translation>
    </message>
    <message>
        <source>last seal</source>
        <translation>letztes Siegel</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>unsealed</source>
        <translation>ohne passendes Siegel</translation>
    </message>
    <message>
        <source>An entry that is made now gets its number, time and seal here: leave “%1” out. A ledger that has them is imported into a record of its own.</source>
        <translation>Ein Eintrag, der jetzt gemacht wird, bekommt Nummer, Zeit und Siegel hier: „%1“ weglassen. Eine Eintragsliste, die sie hat, wird in ein eigenes Protokoll eingelesen.</translation>
    </message>
    <message>
        <source>“%1” of an entry must be one line without tabs: “%2” is not.</source>
        <translation>„%1“ eines Eintrags steht auf einer Zeile, ohne Tabulator: „%2“ nicht.</translation>
    </message>
    <message>
        <source>“%1” holds a character that cannot be seen (%2) in “%3”: type it again.</source>
        <translation>„%1“ enthält in „%3“ ein Zeichen, das man nicht sieht (%2): neu tippen.</translation>
    </message>
    <message>
        <source>Entry %1 (%2) is older than entry %3 (%4): look at the clock.</source>
        <translation>Eintrag %1 (%2) ist älter als Eintrag %3 (%4): nach der Uhr sehen.</translation>
    </message>
    <message>
        <source>Entry %1 (%2) lies in the future: look at the clock.</source>
        <translation>Eintrag %1 (%2) liegt in der Zukunft: nach der Uhr sehen.</translation>
    </message>
    <message>
        <source>This is not JSON: “%1” does not belong at byte %2.</source>
        <translation>Das ist kein JSON: „%1“ gehört nicht an Byte %2.</translation>
    </message>
    <message>
        <source>This is not JSON: it ends too early, at byte %1.</source>
        <translation>Das ist kein JSON: es endet zu früh, bei Byte %1.</translation>
    </message>
    <message>
        <source>The member “%1” is given twice: leave one of them out.</source>
        <translation>„%1“ ist zweimal angegeben: eines davon weglassen.</translation>
    </message>
    <message>
        <source>This JSON is nested more than %1 deep.</source>
        <translation>Dieses JSON ist mehr als %1-fach geschachtelt.</translation>
    </message>
    <message>
        <source>This is not JSON: the text at byte %1 is not UTF-8.</source>
        <translation>Das ist kein JSON: der Text bei Byte %1 ist kein UTF-8.</translation>
    </message>
    <message>
        <source>The text at byte %1 holds half a character (%2): type it again.</source>
        <translation>Der Text bei Byte %1 enthält ein halbes Zeichen (%2): neu tippen.</translation>
    </message>
    <message>
        <source>%1 keeps its journal in another way (%2) than a record does: salvage its entries into a new file (caprail salvage FILE OUT).</source>
        <translation>%1 führt sein Journal anders (%2) als ein Protokoll: die Einträge in eine neue Datei retten (caprail salvage DATEI NEU).</translation>
    </message>
    <message>
        <source>%1 is damaged in its first bytes: salvage what can be read into a new file (caprail salvage FILE OUT).</source>
        <translation>%1 ist in den ersten Bytes beschädigt: was lesbar ist, in eine neue Datei retten (caprail salvage DATEI NEU).</translation>
    </message>
    <message>
        <source>%1 is damaged (%2): salvage what can be read into a new file (caprail salvage FILE OUT).</source>
        <translation>%1 ist beschädigt (%2): was lesbar ist, in eine neue Datei retten (caprail salvage DATEI NEU).</translation>
    </message>
    <message>
        <source>A record cannot begin with the attachment “%1”: add it afterwards.</source>
        <translation>Ein Protokoll kann nicht mit dem Anhang „%1“ beginnen: ihn danach hinzufügen.</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>the marked thickness</source>
        <translation>die Dicke laut Beschriftung</translation>
    </message>
    <message>
        <source>the shim&apos;s thickness</source>
        <translation>die Dicke der Distanzscheibe</translation>
    </message>
    <message>
        <source>build %1 · %2</source>
        <translation>Aufbau %1 · %2</translation>
    </message>
    <message>
        <source>Steps: %1</source>
        <translation>Schritte: %1</translation>
    </message>
    <message>
        <source>%1: K = %2, μ = %3 (%4)</source>
        <translation>%1: K = %2, μ = %3 (%4)</translation>
    </message>
    <message>
        <source>Preload, short form: %1</source>
        <translation>Vorspannkraft, kurze Formel: %1</translation>
    </message>
    <message>
        <source>Preload, long form: %1</source>
        <translation>Vorspannkraft, lange Formel: %1</translation>
    </message>
    <message>
        <source>Share of proof load: %1 (%2 to %3 with ± %4 % scatter)</source>
        <translation>Anteil an der Prüfkraft: %1 (%2 bis %3 mit ± %4 % Streuung)</translation>
    </message>
    <message>
        <source>No torque is given: there is nothing to work out a preload from.</source>
        <translation>Es ist kein Drehmoment angegeben, aus dem sich eine Vorspannkraft berechnen ließe.</translation>
    </message>
    <message>
        <source>By torque and angle: what follows is the preload before the angle.</source>
        <translation>Nach Drehmoment und Drehwinkel: was folgt, ist die Vorspannkraft vor dem Winkel.</translation>
    </message>
    <message>
        <source>the wrench&apos;s length</source>
        <translation>die Länge des Schlüssels</translation>
    </message>
    <message>
        <source>the extension&apos;s length</source>
        <translation>die Länge der Verlängerung</translation>
    </message>
    <message>
        <source>the extension&apos;s angle</source>
        <translation>der Winkel der Verlängerung</translation>
    </message>
    <message>
        <source>the clearance</source>
        <translation>der Abstand</translation>
    </message>
    <message>
        <source>offset</source>
        <translation>Versatz</translation>
    </message>
    <message>
        <source>The places that have a residual cannot tell %1: that takes two caps on each side.</source>
        <translation>Die Stellen, deren Restmaß bekannt ist, verraten nicht: %1. Dazu braucht es auf jeder Seite zwei Lagerdeckel.</translation>
    </message>
    <message>
        <source>There is a study %1 already: give this one the next number.</source>
        <translation>Es gibt schon eine Prüfung %1: dieser die nächste Nummer geben.</translation>
    </message>
    <message>
        <source>whose feel is tried</source>
        <translation>wessen Gefühl geprüft wird</translation>
    </message>
    <message>
        <source>the straightedge</source>
        <translation>das Haarlineal</translation>
    </message>
    <message>
        <source>There is no study %1 of the feel: begin it first.</source>
        <translation>Es gibt keine Prüfung %1 des Gefühls: sie zuerst beginnen.</translation>
    </message>
    <message>
        <source>a step</source>
        <translation>eine Stufe</translation>
    </message>
    <message>
        <source>No value could pass with these instruments.</source>
        <translation>Mit diesen Messmitteln könnte kein Wert bestehen.</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>smallest clearance</source>
        <translation>kleinstes Spiel</translation>
    </message>
    <message>
        <source>largest clearance</source>
        <translation>größtes Spiel</translation>
    </message>
    <message>
        <source>Clearance from %1 %2 to %3 %4, %5.</source>
        <translation>Spiel von %1 %2 bis %3 %4, %5.</translation>
    </message>
    <message>
        <source>One place is too wide and one too tight: look at journal and housing.</source>
        <translation>Eine Stelle ist zu weit und eine zu eng: Zapfen und Gehäusebohrung ansehen.</translation>
    </message>
    <message>
        <source>Read the worst place again: more readings of one place, or a finer gauge, make the uncertainty smaller. They do not excuse a bad place.</source>
        <translation>Die schlechteste Stelle noch einmal messen: mehr Ablesungen einer Stelle oder ein feineres Messmittel machen die Messunsicherheit kleiner. Eine schlechte Stelle entschuldigen sie nicht.</translation>
    </message>
    <message>
        <source>The fastener did not have its full clamp when the bore was read: take the cap off and measure again, or a person accepts the clearance again with a reason.</source>
        <translation>Die Verschraubung hatte nicht die Klemmkraft, die sie haben sollte, als die Bohrung gemessen wurde: den Deckel abnehmen und neu messen, oder jemand nimmt das Spiel mit einem Grund wieder an.</translation>
    </message>
    <message>
        <source>Shim %1 does not lie in the stack at %2: name those that were taken out of it.</source>
        <translation>Distanzscheibe %1 liegt nicht im Stapel an %2: die nennen, die herausgenommen wurden.</translation>
    </message>
    <message>
        <source>Shim %1 was never measured: measure it with the micrometer before it is exchanged.</source>
        <translation>Distanzscheibe %1 wurde nie gemessen: vor dem Tausch mit der Messschraube messen.</translation>
    </message>
    <message>
        <source>bracket</source>
        <translation>Eingrenzung</translation>
    </message>
    <message>
        <source>not proven</source>
        <translation>nicht belegt</translation>
    </message>
    <message>
        <source>%1 of %2 answers: go on.</source>
        <translation>%1 von %2 Antworten: weitermachen.</translation>
    </message>
    <message>
        <source>The steps came in order of height, so each could be guessed: try them again in random order.</source>
        <translation>Die Stufen kamen der Höhe nach, jede war zu erraten: in zufälliger Reihenfolge noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The answers put no bound to the step that is felt: try higher and lower steps, and more of them.</source>
        <translation>Die Antworten begrenzen die fühlbare Stufe nicht: höhere und niedrigere Stufen versuchen, und mehr davon.</translation>
    </message>
    <message>
        <source>residual at %1</source>
        <translation>Restmaß an %1</translation>
    </message>
    <message>
        <source>Twist %1.</source>
        <translation>Verwindung %1.</translation>
    </message>
    <message>
        <source>Plan the stacks for least twist, or know the residuals better by bracketed rechecks.</source>
        <translation>Die Stapel auf kleinste Verwindung planen, oder die Restmaße durch eingegrenzte Nachprüfungen besser kennen.</translation>
    </message>
    <message>
        <source>No reading mends a shape: have the journal ground, or another crank.</source>
        <translation>Keine Ablesung bessert eine Form: den Zapfen schleifen lassen, oder eine andere Kurbelwelle nehmen.</translation>
    </message>
    <message>
        <source>Read the places that differ most again: more readings of one place make the uncertainty smaller.</source>
        <translation>Die Stellen, die am meisten abweichen, noch einmal messen: mehr Ablesungen einer Stelle machen die Messunsicherheit kleiner.</translation>
    </message>
    <message>
        <source>Look at the shape, and accept it by the new numbers with a reason.</source>
        <translation>Die Form ansehen und neu beurteilen.</translation>
    </message>
    <message>
        <source>Taper of journal %1</source>
        <translation>Konizität von Zapfen %1</translation>
    </message>
    <message>
        <source>Out-of-round of journal %1</source>
        <translation>Unrundheit von Zapfen %1</translation>
    </message>
    <message>
        <source>Strike the reading that cannot be right, and measure that term again.</source>
        <translation>Die unmögliche Ablesung streichen und diese Größe neu messen.</translation>
    </message>
    <message>
        <source>The uncertainty of the residuals is not known, so the plan aims at the middle of the band.</source>
        <translation>Die Messunsicherheit der Restmaße ist nicht bekannt, darum zielt der Plan auf die Mitte des Bandes.</translation>
    </message>
    <message>
        <source>With ± %1 no residual could be proven by arithmetic, so the plan aims at the middle of the band: prove the stacks by bracketed rechecks.</source>
        <translation>Mit ± %1 ließe sich kein Restmaß rechnerisch belegen, darum zielt der Plan auf die Mitte des Bandes: die Stapel durch eingegrenzte Nachprüfungen belegen.</translation>
    </message>
    <message>
        <source>After the movement the gap at %1 should lie within %2, and %3 does not: read it again, or type ! behind it if it is really so.</source>
        <translation>Nach der Bewegung müsste das Spaltmaß an %1 innerhalb %2 liegen, %3 tut es nicht: noch einmal messen, oder ein ! dahinter eingeben, wenn es wirklich so ist.</translation>
    </message>
    <message>
        <source>%1 at %2 is far from the pass before it, %3, but fits %4: look whether left and right were mixed up, or type ! behind it if it is really so.</source>
        <translation>%1 an %2 liegt weit vom Durchgang davor, %3, passt aber zu %4: nachsehen, ob links und rechts vertauscht wurden, oder ein ! dahinter eingeben, wenn es wirklich so ist.</translation>
    </message>
    <message>
        <source>%1 at %2 is far from the pass before it, %3: read it again, or type ! behind it if it is really so.</source>
        <translation>%1 an %2 liegt weit vom Durchgang davor, %3: noch einmal messen, oder ein ! dahinter eingeben, wenn es wirklich so ist.</translation>
    </message>
    <message>
        <source>This part is at %1, the other was at %2: let both come to one temperature and measure again, or type ! behind it if it is really so.</source>
        <translation>Dieses Teil hat %1, das andere hatte %2: beide auf eine Temperatur kommen lassen und neu messen, oder ein ! dahinter eingeben, wenn es wirklich so ist.</translation>
    </message>
    <message>
        <source>%1 lies outside the range of %2: use a wrench that reaches it, or type ! behind it if it is really so.</source>
        <translation>%1 liegt außerhalb des Bereichs von %2: einen Schlüssel nehmen, der hinreicht, oder ein ! dahinter eingeben, wenn es wirklich so ist.</translation>
    </message>
    <message>
        <source>Or bracket the recheck: with shims exchanged it must rock, and be loose.</source>
        <translation>Oder die Nachprüfung eingrenzen: mit getauschten Distanzscheiben muss es kippeln, und lose sein.</translation>
    </message>
    <message>
        <source>The arithmetic says %1 %2, which is impossible.</source>
        <translation>Die Rechnung sagt %1 %2, und das kann nicht sein.</translation>
    </message>
    <message>
        <source>A bore is measured with its cap at full torque: tighten %1 to what is specified first.</source>
        <translation>Eine Bohrung wird mit ihrem Deckel auf vollem Drehmoment gemessen: zuerst %1 auf die Vorgabe anziehen.</translation>
    </message>
    <message>
        <source>What does not go must be more than what goes, %1: give the sum that was tried.</source>
        <translation>Was nicht geht, muss mehr sein als was geht, %1: die Summe angeben, die versucht wurde.</translation>
    </message>
    <message>
        <source>A gap</source>
        <translation>Ein Spaltmaß</translation>
    </message>
    <message>
        <source>This fit</source>
        <translation>Diese Passung</translation>
    </message>
    <message>
        <source>A verify round</source>
        <translation>Eine Prüfrunde</translation>
    </message>
    <message>
        <source>The trial fit</source>
        <translation>Die Probemontage</translation>
    </message>
    <message>
        <source>The exchange named as thicker is not thicker: look at its shims.</source>
        <translation>Der als dicker genannte Tausch ist nicht dicker: seine Distanzscheiben ansehen.</translation>
    </message>
    <message>
        <source>The exchange named as thinner is not thinner: look at its shims.</source>
        <translation>Der als dünner genannte Tausch ist nicht dünner: seine Distanzscheiben ansehen.</translation>
    </message>
    <message>
        <source>Say why the values may be accepted: a reason is required.</source>
        <translation>Sagen, warum die Werte gelten dürfen: ein Urteil ohne Grund ist keines.</translation>
    </message>
    <message>
        <source>The crank is in already.</source>
        <translation>Die Kurbelwelle liegt schon.</translation>
    </message>
    <message>
        <source>The crank is not in.</source>
        <translation>Die Kurbelwelle liegt nicht.</translation>
    </message>
    <message>
        <source>A limit of error is more than zero: take it from the certificate, or leave it empty while it is not known.</source>
        <translation>Eine Fehlergrenze ist größer als null: sie dem Zertifikat entnehmen, oder leer lassen, solange sie nicht bekannt ist.</translation>
    </message>
    <message>
        <source>%1 is a %2, which cannot do this: name the instrument that was used.</source>
        <translation>%1 ist ein Messmittel der Art „%2“ und kann das nicht: das benutzte Messmittel nennen.</translation>
    </message>
    <message>
        <source>The crank is laid in: a main&apos;s bore and journal are measured before. Lift it out first, and enter that.</source>
        <translation>Die Kurbelwelle liegt: Bohrung und Zapfen eines Hauptlagers werden vorher gemessen. Sie zuerst herausheben und das eintragen.</translation>
    </message>
    <message>
        <source>%1 comes after the crank is laid in and its caps are at torque: enter that first.</source>
        <translation>%1 kommt, wenn die Kurbelwelle liegt und ihre Deckel auf Drehmoment sind: das zuerst eintragen.</translation>
    </message>
    <message>
        <source>The shells&apos; thickness cannot be below zero: measure them at the crown.</source>
        <translation>Die Dicke der Schalen kann nicht unter null liegen: am Scheitel messen.</translation>
    </message>
    <message>
        <source>corrects</source>
        <translation>berichtigt</translation>
    </message>
    <message>
        <source>does not go</source>
        <translation>geht nicht</translation>
    </message>
    <message>
        <source>felt</source>
        <translation>gefühlt</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>is in</source>
        <translation>liegt</translation>
    </message>
    <message>
        <source>part temperature</source>
        <translation>Teiletemperatur</translation>
    </message>
    <message>
        <source>set up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>set with</source>
        <translation>eingestellt mit</translation>
    </message>
    <message>
        <source>study</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>temperature spread</source>
        <translation>Temperaturspanne</translation>
    </message>
    <message>
        <source>thicker felt</source>
        <translation>dicker gefühlt</translation>
    </message>
    <message>
        <source>thicker in</source>
        <translation>dicker hinein</translation>
    </message>
    <message>
        <source>thicker out</source>
        <translation>dicker heraus</translation>
    </message>
    <message>
        <source>thinner felt</source>
        <translation>dünner gefühlt</translation>
    </message>
    <message>
        <source>thinner in</source>
        <translation>dünner hinein</translation>
    </message>
    <message>
        <source>thinner out</source>
        <translation>dünner heraus</translation>
    </message>
    <message>
        <source>whose</source>
        <translation>wessen</translation>
    </message>
    <message>
        <source>“%1” was typed as “%2”, but %3 is stored with it: one of them is wrong.</source>
        <translation>„%1“ wurde als „%2“ eingegeben, aber %3 ist dazu gespeichert: eines davon ist falsch.</translation>
    </message>
    <message>
        <source>“%1” cannot be read as “%2”: type the value with its unit.</source>
        <translation>„%1“ ist nicht als „%2“ zu lesen: den Wert mit seiner Einheit eingeben.</translation>
    </message>
    <message>
        <source>%1 is not plausible for “%2”, which is expected within %3 to %4: correct it, or type ! behind it if it is really so.</source>
        <translation>%1 ist nicht glaubhaft für „%2“, erwartet wird %3 bis %4: berichtigen, oder ein ! dahinter eingeben, wenn es wirklich so ist.</translation>
    </message>
    <message>
        <source>%1, between people</source>
        <translation>%1, zwischen Personen</translation>
    </message>
    <message>
        <source>%1, resolution</source>
        <translation>%1, Auflösung</translation>
    </message>
    <message>
        <source>%1, temperature</source>
        <translation>%1, Temperatur</translation>
    </message>
    <message>
        <source>leaves of %1</source>
        <translation>Fühlerblätter von %1</translation>
    </message>
    <message>
        <source>gap, between what goes and what does not</source>
        <translation>Spaltmaß, zwischen dem, was geht, und dem, was nicht geht</translation>
    </message>
    <message>
        <source>The band has no width to hold a gauge against: set both its ends.</source>
        <translation>Das Band hat keine Breite, an der ein Messmittel zu messen wäre: beide Enden festlegen.</translation>
    </message>
    <message>
        <source>It tells %1 class of places apart.</source>
        <translation>Es unterscheidet %1 Klasse von Stellen.</translation>
    </message>
    <message>
        <source>It tells %1 classes of places apart.</source>
        <translation>Es unterscheidet %1 Klassen von Stellen.</translation>
    </message>
    <message>
        <source>Of the answers at one step, none or more than all are counted: look at them.</source>
        <translation>Von den Antworten an einer Stufe sind keine oder mehr als alle gezählt: sie ansehen.</translation>
    </message>
    <message>
        <source>Answers at two different steps or more are needed.</source>
        <translation>Antworten an zwei verschiedenen Stufen oder mehr sind nötig.</translation>
    </message>
    <message>
        <source>One step parts all answers, so their spread is smaller than the steps tried can show: try steps between.</source>
        <translation>Eine Stufe trennt alle Antworten, ihre Streuung ist also kleiner, als die versuchten Stufen zeigen können: Stufen dazwischen versuchen.</translation>
    </message>
    <message>
        <source>Nothing was measured yet.</source>
        <translation>Noch ist nichts gemessen.</translation>
    </message>
    <message>
        <source>± not known, at least %1.</source>
        <translation>± nicht bekannt, mindestens %1.</translation>
    </message>
    <message>
        <source>%1 is a difference: type it in degrees Celsius, like 2.8.</source>
        <translation>%1 ist ein Unterschied: in Grad Celsius tippen, etwa 2,8.</translation>
    </message>
    <message>
        <source>A group of places has a name of its own, lists its places and names no ring; any other group has neither name nor list.</source>
        <translation>Eine Gruppe von Stellen hat einen eigenen Namen, nennt ihre Stellen und keinen Ring; jede andere Gruppe hat weder Namen noch Liste.</translation>
    </message>
    <message>
        <source>The group lists %1, which is not of its kind, or not on this engine: take it out.</source>
        <translation>Die Gruppe nennt %1, was nicht von ihrer Art ist oder an diesem Motor nicht vorkommt: herausnehmen.</translation>
    </message>
    <message>
        <source>The group lists %1 twice: name each place once.</source>
        <translation>Die Gruppe nennt %1 zweimal: jede Stelle nur einmal nennen.</translation>
    </message>
    <message>
        <source>The sequence names %1, which is not among the places of this group: take it out.</source>
        <translation>Die Reihenfolge nennt %1, was nicht zu den Stellen dieser Gruppe gehört: herausnehmen.</translation>
    </message>
    <message>
        <source>The clamp of %1 is worked out from its thread, which is not known: set its group first.</source>
        <translation>Die Klemmkraft von %1 wird aus ihrem Gewinde errechnet, das nicht bekannt ist: zuerst ihre Gruppe festlegen.</translation>
    </message>
    <message>
        <source>Its cap likely went down by no more than %1.</source>
        <translation>Der Deckel ging wahrscheinlich um nicht mehr als %1 nach unten.</translation>
    </message>
    <message>
        <source>%1 is not at its specified value.</source>
        <translation>%1 ist nicht auf dem vorgegebenen Wert.</translation>
    </message>
    <message>
        <source>Enter what is missing, or tighten %1 with a wrench that fits.</source>
        <translation>Das Fehlende eintragen oder %1 mit einem passenden Schlüssel anziehen.</translation>
    </message>
    <message>
        <source>Take the stacks off and verify every main-cap and rod fastener: by its torque, its length or its witness mark, as its group says.</source>
        <translation>Die Stapel abnehmen und jede Schraube der Hauptlagerdeckel und Pleuel prüfen: am Drehmoment, an der Länge oder an der Markierung, wie ihre Gruppe es sagt.</translation>
    </message>
    <message>
        <source>It counts for nothing.</source>
        <translation>Das zählt nicht.</translation>
    </message>
    <message>
        <source>Verify %1 once more as it is specified.</source>
        <translation>%1 noch einmal so prüfen, wie es vorgegeben ist.</translation>
    </message>
    <message>
        <source>Verify round %1 goes on with %2.</source>
        <translation>Prüfrunde %1 geht weiter mit %2.</translation>
    </message>
    <message>
        <source>%1 is far over the %2 that is specified for %3: look at the wrench, or type ! behind it if it is really so.</source>
        <translation>%1 liegt weit über den %2, die für %3 vorgegeben sind: nach dem Schlüssel sehen oder ! dahinter setzen, wenn es wirklich so ist.</translation>
    </message>
    <message>
        <source>what is specified, %1, goes to %2 of proof at the lower friction, torsion counted: lower it, or say who takes it and why</source>
        <translation>die Vorgabe, %1, erreicht bei der kleineren Reibung mit Torsion %2 der Prüfspannung: herabsetzen, oder sagen, wer sie verantwortet und warum</translation>
    </message>
    <message>
        <source>it is used once, and was now tightened %1 times: fit a new one, or say who takes it and why</source>
        <translation>sie ist nur einmal zu verwenden und wurde nun %1-mal angezogen: eine neue einbauen, oder sagen, wer es verantwortet und warum</translation>
    </message>
    <message>
        <source>%1 tightened %2, and the shop&apos;s rule asks for a second person to verify: let somebody else make the round.</source>
        <translation>%1 hat %2 angezogen, und die Regel der Werkstatt verlangt zum Prüfen eine zweite Person: Jemand anders macht die Runde.</translation>
    </message>
    <message>
        <source>%1 did “%2”, and the shop&apos;s rule asks for a second person to sign off: let somebody else look at it all and sign.</source>
        <translation>%1 hat „%2“ gemacht, und die Regel der Werkstatt verlangt zum Abzeichnen eine zweite Person: Jemand anders sieht alles an und zeichnet ab.</translation>
    </message>
    <message>
        <source>No torque is specified for %1.</source>
        <translation>Für %1 ist kein Drehmoment vorgegeben.</translation>
    </message>
    <message>
        <source>%1 has an outcome without a torque.</source>
        <translation>%1 hat ein Ergebnis ohne Drehmoment.</translation>
    </message>
    <message>
        <source>%1 was pulled at %2, and %3 is specified.</source>
        <translation>%1 wurde mit %2 gezogen, vorgegeben sind %3.</translation>
    </message>
    <message>
        <source>%1 is verified by its length, and no stretch was read.</source>
        <translation>%1 wird an der Länge geprüft, und es wurde keine Längung gemessen.</translation>
    </message>
    <message>
        <source>%1 has a stretch of %2, outside %3 ± %4.</source>
        <translation>%1 hat eine Längung von %2, außerhalb von %3 ± %4.</translation>
    </message>
    <message>
        <source>No wrench is named for %1.</source>
        <translation>Für %1 ist kein Schlüssel genannt.</translation>
    </message>
    <message>
        <source>Nothing was known of %1 when it was used.</source>
        <translation>Von %1 war nichts bekannt, als es gebraucht wurde.</translation>
    </message>
    <message>
        <source>%1 is a %2, which pulls no torque.</source>
        <translation>%1 ist ein Messmittel der Art „%2“, das kein Drehmoment aufbringt.</translation>
    </message>
    <message>
        <source>The range of %1 is not known.</source>
        <translation>Der Bereich von %1 ist nicht bekannt.</translation>
    </message>
    <message>
        <source>%1 lies outside the range of %2.</source>
        <translation>%1 liegt außerhalb des Bereichs von %2.</translation>
    </message>
    <message>
        <source>%1 is verified %2.</source>
        <translation>%1 wird %2 geprüft.</translation>
    </message>
    <message>
        <source>%1 was tightened and verified by %2, and the shop&apos;s rule asks for a second person.</source>
        <translation>%1 wurde von %2 angezogen und geprüft, und die Regel der Werkstatt verlangt eine zweite Person.</translation>
    </message>
    <message>
        <source>By the numbers it should drag.</source>
        <translation>Nach den Zahlen müsste es saugen.</translation>
    </message>
    <message>
        <source>%1 must not be pulled again: read its stretch, and enter that.</source>
        <translation>%1 darf nicht nachgezogen werden: die Längung messen und eintragen.</translation>
    </message>
    <message>
        <source>%1 must not be pulled again: look whether its witness mark still lines up, and enter that.</source>
        <translation>%1 darf nicht nachgezogen werden: nachsehen, ob die Markierung noch gleich steht, und das eintragen.</translation>
    </message>
    <message>
        <source>A clamp is checked on a fastener that is tight as specified: tighten %1 first.</source>
        <translation>Eine Klemmkraft wird an einer Schraube geprüft, die wie vorgegeben angezogen ist: zuerst %1 anziehen.</translation>
    </message>
    <message>
        <source>A grip of %1 cannot be that of a %2: give the length that is clamped, up to %3 diameters.</source>
        <translation>Eine Klemmlänge von %1 passt nicht zu %2: die geklemmte Länge angeben, bis zu %3 Durchmesser.</translation>
    </message>
    <message>
        <source>cast iron</source>
        <translation>Grauguss</translation>
    </message>
    <message>
        <source>nodular iron</source>
        <translation>Sphäroguss</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>Stahl</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>Aluminium</translation>
    </message>
    <message>
        <source>%1 is not in the list of what a cap is made of: take one of %2.</source>
        <translation>%1 steht nicht in der Liste der Deckelwerkstoffe: einen von %2 nehmen.</translation>
    </message>
    <message>
        <source>A shank of %1 does not go with a %2: give its diameter where it has no thread.</source>
        <translation>Ein Schaft von %1 passt nicht zu %2: den Durchmesser ohne Gewinde angeben.</translation>
    </message>
    <message>
        <source>%1 of thread cannot lie within a grip of %2: give the part of the grip that is threaded.</source>
        <translation>%1 Gewinde passen nicht in eine Klemmlänge von %2: den Teil der Klemmlänge angeben, der Gewinde hat.</translation>
    </message>
    <message>
        <source>The stiffness of a fastener and of what it clamps must be above zero.</source>
        <translation>Die Steifigkeit einer Schraube und dessen, was sie klemmt, ist größer als null.</translation>
    </message>
    <message>
        <source>thread torque M = F·(P/2π + μt·d2/(2·cos 30°)) = %1</source>
        <translation>Gewindemoment M = F·(P/2π + μt·d2/(2·cos 30°)) = %1</translation>
    </message>
    <message>
        <source>σ = %1, τ = 16·M/(π·ds³) = %2, σe = √(σ² + 3τ²) = %3</source>
        <translation>σ = %1, τ = 16·M/(π·ds³) = %2, σe = √(σ² + 3τ²) = %3</translation>
    </message>
    <message>
        <source>Loosening took %1 and tightening %2: a fastener that clamps comes loose at less than it was tightened with.</source>
        <translation>Gelöst wurde mit %1, angezogen mit %2: Eine Schraube, die klemmt, löst sich mit weniger, als sie angezogen wurde.</translation>
    </message>
    <message>
        <source>A torque of %1 gives %2 of the proof load, but at the lower friction and with the torsion of tightening %3, which is more than 90 %: check the value, the lubricant and the grade.</source>
        <translation>Ein Drehmoment von %1 ergibt %2 der Prüflast, bei der kleineren Reibung und mit der Torsion beim Anziehen aber %3, mehr als 90 %: Wert, Schmierung und Festigkeitsklasse prüfen.</translation>
    </message>
    <message>
        <source>with torsion: %1 of proof, %2 at the lower friction</source>
        <translation>mit Torsion: %1 der Prüfspannung, %2 bei der kleineren Reibung</translation>
    </message>
    <message>
        <source>clamped</source>
        <translation>Geklemmtes</translation>
    </message>
    <message>
        <source>grip</source>
        <translation>Klemmlänge</translation>
    </message>
    <message>
        <source>group name</source>
        <translation>Gruppenname</translation>
    </message>
    <message>
        <source>is new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>is single use</source>
        <translation>nur einmal</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>places</source>
        <translation>Stellen</translation>
    </message>
    <message>
        <source>second person signs</source>
        <translation>zweite Person zeichnet ab</translation>
    </message>
    <message>
        <source>second person verifies</source>
        <translation>zweite Person prüft</translation>
    </message>
    <message>
        <source>shank</source>
        <translation>Schaft</translation>
    </message>
    <message>
        <source>stretch tolerance</source>
        <translation>Längungstoleranz</translation>
    </message>
    <message>
        <source>thread in grip</source>
        <translation>Gewinde in der Klemmlänge</translation>
    </message>
    <message>
        <source>torque off</source>
        <translation>Moment beim Lösen</translation>
    </message>
    <message>
        <source>torque on</source>
        <translation>Moment beim Anziehen</translation>
    </message>
    <message>
        <source>verified by</source>
        <translation>geprüft an</translation>
    </message>
    <message>
        <source>work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>The entry “%1” has no member “%2”; it has: %3.</source>
        <translation>Der Eintrag „%1“ hat kein Feld „%2“; er hat: %3.</translation>
    </message>
    <message>
        <source>The entry “%1” lacks: %2.</source>
        <translation>Dem Eintrag „%1“ fehlt: %2.</translation>
    </message>
    <message>
        <source>torque and angle to yield</source>
        <translation>Drehmoment und Winkel bis zur Streckgrenze</translation>
    </message>
    <message>
        <source>stud with nut</source>
        <translation>Stehbolzen mit Mutter</translation>
    </message>
    <message>
        <source>bolt</source>
        <translation>Schraube</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>witness mark</source>
        <translation>Markierung</translation>
    </message>
    <message>
        <source>turned</source>
        <translation>gedreht</translation>
    </message>
    <message>
        <source>turned over</source>
        <translation>gewendet</translation>
    </message>
    <message>
        <source>dressed</source>
        <translation>abgezogen</translation>
    </message>
    <message>
        <source>This program knows no entry kind “%1”: “caprail help entries” lists them.</source>
        <translation>Dieses Programm kennt keine Eintragsart „%1“: „caprail help entries“ zählt sie auf.</translation>
    </message>
    <message>
        <source>This program knows no entry kind “%1”; there are: %2.</source>
        <translation>Dieses Programm kennt keine Eintragsart „%1“; es gibt: %2.</translation>
    </message>
    <message>
        <source>The seal of entry %1 does not fit: it, or an entry before it, was altered after it was sealed.</source>
        <translation>Das Siegel von Eintrag %1 passt nicht: Er oder ein Eintrag davor wurde nach dem Siegeln verändert.</translation>
    </message>
    <message>
        <source>Entry %1, %2: %3</source>
        <translation>Eintrag %1, %2: %3</translation>
    </message>
    <message>
        <source>%1 of the %2 that its specification aims at</source>
        <translation>%1 der %2, auf die ihre Vorgabe zielt</translation>
    </message>
    <message>
        <source>There is no such group to split: choose one in the list.</source>
        <translation>Eine solche Gruppe zum Teilen gibt es nicht: eine aus der Liste wählen.</translation>
    </message>
    <message>
        <source>Give the new group a name that no other group of its kind has, as “rear cap”.</source>
        <translation>Der neuen Gruppe einen Namen geben, den keine andere Gruppe ihrer Art hat, etwa „hinterer Deckel“.</translation>
    </message>
    <message>
        <source>%1 is not of the group that is split: choose places of that group.</source>
        <translation>%1 gehört nicht zu der Gruppe, die geteilt wird: Stellen dieser Gruppe wählen.</translation>
    </message>
    <message>
        <source>Choose some of the %1 places of the group, not none and not all.</source>
        <translation>Einige der %1 Stellen der Gruppe wählen, nicht keine und nicht alle.</translation>
    </message>
    <message>
        <source>Only a group that lists its places can be joined back to the wider one.</source>
        <translation>Nur eine Gruppe, die ihre Stellen nennt, kann in die größere zurückkehren.</translation>
    </message>
    <message>
        <source>No wider group would speak for %1: set the group “%2” for all of its kind first.</source>
        <translation>Für %1 würde keine größere Gruppe gelten: zuerst die Gruppe „%2“ für alle ihrer Art festlegen.</translation>
    </message>
    <message>
        <source>this place alone</source>
        <translation>nur diese Stelle</translation>
    </message>
    <message>
        <source>its whole cap</source>
        <translation>ihr ganzer Deckel</translation>
    </message>
    <message>
        <source>its whole side</source>
        <translation>ihre ganze Seite</translation>
    </message>
    <message>
        <source>its whole ring</source>
        <translation>ihr ganzer Ring</translation>
    </message>
    <message>
        <source>No verify round is under way: begin one first.</source>
        <translation>Es läuft keine Prüfrunde: zuerst eine beginnen.</translation>
    </message>
    <message>
        <source>With the torsion of tightening: %1 of proof, %2 at the lower friction</source>
        <translation>Mit der Torsion beim Anziehen: %1 der Prüfspannung, %2 bei der kleineren Reibung</translation>
    </message>
    <message>
        <source>%1 to keep it turning is more than %2 to start it: give what starts it first.</source>
        <translation>%1 zum Weiterdrehen ist mehr als %2 zum Losbrechen: zuerst angeben, was sie losbricht.</translation>
    </message>
    <message>
        <source>A check has 1 to 99 places, or none to withdraw it, not %1.</source>
        <translation>Eine Prüfung hat 1 bis 99 Stellen, oder keine, um sie zurückzuziehen, nicht %1.</translation>
    </message>
    <message>
        <source>Say which closing step the check holds, for a check among the steps and only then.</source>
        <translation>Angeben, welchen Schließschritt die Prüfung aufhält: bei einer Prüfung zwischen den Schritten, und nur dann.</translation>
    </message>
    <message>
        <source>A measured check has a band, from and to, and the others have none.</source>
        <translation>Eine gemessene Prüfung hat ein Band, von und bis, die anderen haben keines.</translation>
    </message>
    <message>
        <source>a check</source>
        <translation>eine Prüfung</translation>
    </message>
    <message>
        <source>what is looked at</source>
        <translation>das, was nachgesehen wird</translation>
    </message>
    <message>
        <source>This record asks no check “%1” at place %2: set it first.</source>
        <translation>Dieses Protokoll kennt keine Prüfung „%1“ an Stelle %2: sie zuerst festlegen.</translation>
    </message>
    <message>
        <source>“%1” is answered by %2: give that and nothing else.</source>
        <translation>„%1“ wird so beantwortet: %2. Das angeben und sonst nichts.</translation>
    </message>
    <message>
        <source>That photo is not in this record: add it first.</source>
        <translation>Dieses Foto ist nicht im Protokoll: es zuerst hinzufügen.</translation>
    </message>
    <message>
        <source>a reading</source>
        <translation>eine Ablesung</translation>
    </message>
    <message>
        <source>Count the shims by hand, and give three numbers: in the stacks, set aside, left over.</source>
        <translation>Die Scheiben von Hand zählen und drei Zahlen angeben: in den Stapeln, beiseitegelegt, übrig.</translation>
    </message>
    <message>
        <source>A count of shims is not negative, and no kit has so many.</source>
        <translation>Eine Anzahl von Scheiben ist nicht negativ, und kein Satz hat so viele.</translation>
    </message>
    <message>
        <source>%1 + %2 + %3 = %4 shims were counted, and the kit has %5: find what is missing before anything goes on. One left in the engine can destroy it.</source>
        <translation>%1 + %2 + %3 = %4 Scheiben wurden gezählt, und der Satz hat %5: die fehlenden finden, bevor etwas aufgesetzt wird. Eine, die im Motor bleibt, kann ihn zerstören.</translation>
    </message>
    <message>
        <source>%1 + %2 + %3 shims were counted; by the record it is %4 in the stacks, %5 set aside and %6 left over: count again, or correct the record.</source>
        <translation>%1 + %2 + %3 Scheiben wurden gezählt; nach dem Protokoll sind es %4 in den Stapeln, %5 beiseitegelegt und %6 übrig: noch einmal zählen oder das Protokoll berichtigen.</translation>
    </message>
    <message>
        <source>Name the sealant&apos;s product and lot, and give its open time in minutes, as printed on the tube.</source>
        <translation>Produkt und Charge der Dichtmasse nennen und ihre Offenzeit in Minuten angeben, wie sie auf der Tube stehen.</translation>
    </message>
    <message>
        <source>“%1” comes after “%2”, which does not stand: %3 %4</source>
        <translation>„%1“ kommt nach „%2“, und das gilt nicht: %3 %4</translation>
    </message>
    <message>
        <source>“%1” cannot be entered yet: %2</source>
        <translation>„%1“ kann noch nicht eingetragen werden: %2</translation>
    </message>
    <message>
        <source>Shims are counted back in a step of their own: leave the counts out of “%1”.</source>
        <translation>Die Scheiben werden in einem eigenen Schritt zurückgezählt: die Zahlen bei „%1“ weglassen.</translation>
    </message>
    <message>
        <source>Nothing is specified for %1: set its torque before closing begins.</source>
        <translation>Für %1 ist nichts vorgegeben: das Drehmoment festlegen, bevor das Schließen beginnt.</translation>
    </message>
    <message>
        <source>The stack of %1 is not back on.</source>
        <translation>Der Stapel von %1 liegt noch nicht wieder auf.</translation>
    </message>
    <message>
        <source>%1 is not at its value since “%2”.</source>
        <translation>%1 ist seit „%2“ nicht auf den vorgegebenen Wert gebracht.</translation>
    </message>
    <message>
        <source>The turning torque (%1) was not read since then.</source>
        <translation>Das Durchdrehmoment (%1) wurde seitdem nicht abgelesen.</translation>
    </message>
    <message>
        <source>The sealant&apos;s open time was not entered.</source>
        <translation>Die Offenzeit der Dichtmasse wurde nicht eingetragen.</translation>
    </message>
    <message>
        <source>Strike that entry and enter product, lot and open time as printed on the tube.</source>
        <translation>Diesen Eintrag streichen und Produkt, Charge und Offenzeit eintragen, wie sie auf der Tube stehen.</translation>
    </message>
    <message>
        <source>By the entries&apos; times the girdle was lowered before the bead was laid.</source>
        <translation>Nach den Zeiten der Einträge wurde die Platte aufgesetzt, bevor die Raupe gelegt war.</translation>
    </message>
    <message>
        <source>The girdle was lowered %1 after the bead was laid; its open time is %2 min.</source>
        <translation>Die Platte wurde %1 nach dem Legen der Raupe aufgesetzt; deren Offenzeit ist %2 min.</translation>
    </message>
    <message>
        <source>Lift the girdle, clean the bead off, lay it again and enter that.</source>
        <translation>Die Platte abheben, die Raupe abwischen, sie neu legen und das eintragen.</translation>
    </message>
    <message>
        <source>The kit or the stacks were changed after the shims were counted.</source>
        <translation>Der Satz oder die Stapel wurden geändert, nachdem die Scheiben gezählt waren.</translation>
    </message>
    <message>
        <source>Count them again, and enter it.</source>
        <translation>Noch einmal zählen und eintragen.</translation>
    </message>
    <message>
        <source>Do that, and enter the step again.</source>
        <translation>Das tun und den Schritt noch einmal eintragen.</translation>
    </message>
    <message>
        <source>“%1” was done again after it.</source>
        <translation>„%1“ wurde danach noch einmal gemacht.</translation>
    </message>
    <message>
        <source>Do this step again, and enter it.</source>
        <translation>Diesen Schritt noch einmal machen und eintragen.</translation>
    </message>
    <message>
        <source>Entry %1 was made with the girdle off, after this step.</source>
        <translation>Eintrag %1 entstand nach diesem Schritt bei abgenommener Platte.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Closing, “%1”: %2</source>
        <translation>Schließen, „%1“: %2</translation>
    </message>
    <message>
        <source>Closing: %1.</source>
        <translation>Schließen: %1.</translation>
    </message>
    <message>
        <source>There is no value, or no band to hold it against.</source>
        <translation>Es fehlt der Wert oder das Band dazu.</translation>
    </message>
    <message>
        <source>Strike that answer, and measure it.</source>
        <translation>Diese Antwort streichen und messen.</translation>
    </message>
    <message>
        <source>Put it right, and measure it again.</source>
        <translation>In Ordnung bringen und noch einmal messen.</translation>
    </message>
    <message>
        <source>Measure it with a better instrument, or put it right.</source>
        <translation>Mit einem besseren Messmittel messen oder in Ordnung bringen.</translation>
    </message>
    <message>
        <source>Photo taken.</source>
        <translation>Foto gemacht.</translation>
    </message>
    <message>
        <source>Its photo is not in this record.</source>
        <translation>Sein Foto ist nicht in diesem Protokoll.</translation>
    </message>
    <message>
        <source>Add the photo, and answer again.</source>
        <translation>Das Foto hinzufügen und noch einmal antworten.</translation>
    </message>
    <message>
        <source>Yes.</source>
        <translation>Ja.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nein.</translation>
    </message>
    <message>
        <source>Put it right, and answer again.</source>
        <translation>In Ordnung bringen und noch einmal antworten.</translation>
    </message>
    <message>
        <source>Take the photo.</source>
        <translation>Das Foto machen.</translation>
    </message>
    <message>
        <source>Look, and answer.</source>
        <translation>Nachsehen und antworten.</translation>
    </message>
    <message>
        <source>Look again, and answer.</source>
        <translation>Noch einmal nachsehen und antworten.</translation>
    </message>
    <message>
        <source>%1 cannot well be the %2, which is expected within %3 to %4: look whether it belongs to another term, or type ! behind it if it is really so.</source>
        <translation>%1 passt kaum zu „%2“, erwartet wird %3 bis %4: nachsehen, ob der Wert zu einem anderen Maß gehört, oder ! dahinter tippen, wenn es wirklich so ist.</translation>
    </message>
    <message>
        <source>%1 is far from the reading before it, %2, of the %3: measure it again, or type ! behind it if it is really so.</source>
        <translation>%1 liegt weit von der Ablesung davor, %2 („%3“): noch einmal messen, oder ! dahinter tippen, wenn es wirklich so ist.</translation>
    </message>
    <message>
        <source>Lay the girdle on its stacks, bring its nuts to torque, and look.</source>
        <translation>Die Platte auf ihre Stapel legen, ihre Muttern auf Drehmoment bringen und nachsehen.</translation>
    </message>
    <message>
        <source>The girdle&apos;s nuts were not at torque.</source>
        <translation>Die Plattenmuttern waren nicht auf Drehmoment.</translation>
    </message>
    <message>
        <source>Bring the girdle&apos;s nuts to torque, and look again.</source>
        <translation>Die Plattenmuttern auf Drehmoment bringen und noch einmal nachsehen.</translation>
    </message>
    <message>
        <source>Girdle orientation</source>
        <translation>Lage der Platte</translation>
    </message>
    <message>
        <source>Record the girdle&apos;s orientation again.</source>
        <translation>Die Lage der Platte noch einmal eintragen.</translation>
    </message>
    <message>
        <source>%1 to start it, %2 to turn it.</source>
        <translation>%1 zum Losbrechen, %2 zum Drehen.</translation>
    </message>
    <message>
        <source>There is no turning torque before the girdle to hold it against.</source>
        <translation>Es gibt kein Durchdrehmoment vor der Platte zum Vergleich.</translation>
    </message>
    <message>
        <source>Read the turning torque before the girdle.</source>
        <translation>Das Durchdrehmoment vor der Platte ablesen.</translation>
    </message>
    <message>
        <source>Strike that reading, and read it again.</source>
        <translation>Diese Ablesung streichen und noch einmal ablesen.</translation>
    </message>
    <message>
        <source>That limit is common practice; nobody confirmed it for this engine.</source>
        <translation>Diese Grenze ist üblich; niemand hat sie für diesen Motor bestätigt.</translation>
    </message>
    <message>
        <source>The girdle binds: lift it, look at the stacks and at each throw, and read again.</source>
        <translation>Die Platte klemmt: sie abheben, Stapel und jede Kröpfung ansehen und noch einmal ablesen.</translation>
    </message>
    <message>
        <source>Turning torque, %1</source>
        <translation>Durchdrehmoment, %1</translation>
    </message>
    <message>
        <source>The turning torque</source>
        <translation>Das Durchdrehmoment</translation>
    </message>
    <message>
        <source>The girdle&apos;s nuts are at torque: the turning torque before the girdle is read with it off. Loosen them first, and enter that.</source>
        <translation>Die Plattenmuttern sind auf Drehmoment: das Durchdrehmoment vor der Platte wird bei abgenommener Platte abgelesen. Sie zuerst lösen und das eintragen.</translation>
    </message>
    <message>
        <source>The turning torque with the girdle</source>
        <translation>Das Durchdrehmoment mit der Platte</translation>
    </message>
    <message>
        <source>%1 counts only with the girdle&apos;s nuts at torque: tighten %2 to what is specified first.</source>
        <translation>%1 gilt nur mit den Plattenmuttern auf Drehmoment: zuerst %2 auf die Vorgabe anziehen.</translation>
    </message>
    <message>
        <source>no minimum is set</source>
        <translation>kein Mindestmaß festgelegt</translation>
    </message>
    <message>
        <source>A turning torque, and the rise that is allowed, are zero or more: look at the readings.</source>
        <translation>Ein Durchdrehmoment und der erlaubte Anstieg sind null oder mehr: die Ablesungen ansehen.</translation>
    </message>
    <message>
        <source>%1 to start it, %2 to turn it: no harder than before.</source>
        <translation>%1 zum Losbrechen, %2 zum Drehen: nicht schwerer als vorher.</translation>
    </message>
    <message>
        <source>answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>aside</source>
        <translation>beiseitegelegt</translation>
    </message>
    <message>
        <source>breakaway</source>
        <translation>Losbrechen</translation>
    </message>
    <message>
        <source>dipstick minimum</source>
        <translation>Mindestmaß am Ölmessstab</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>in den Stapeln</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>hält auf</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>übrig</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>own check</source>
        <translation>eigene Prüfung</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>pickup tube minimum</source>
        <translation>Mindestmaß am Ölansaugrohr</translation>
    </message>
    <message>
        <source>product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>running</source>
        <translation>Drehen</translation>
    </message>
    <message>
        <source>sort</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>Zeitpunkt</translation>
    </message>
    <message>
        <source>turning rise</source>
        <translation>Anstieg des Durchdrehmoments</translation>
    </message>
    <message>
        <source>words</source>
        <translation>Wortlaut</translation>
    </message>
    <message>
        <source>shims counted back</source>
        <translation>Scheiben zurückgezählt</translation>
    </message>
    <message>
        <source>crank turned through two full turns by hand</source>
        <translation>Kurbelwelle zwei volle Umdrehungen von Hand gedreht</translation>
    </message>
    <message>
        <source>before the girdle</source>
        <translation>vor der Platte</translation>
    </message>
    <message>
        <source>girdle at torque</source>
        <translation>Platte auf Drehmoment</translation>
    </message>
    <message>
        <source>after the pan</source>
        <translation>nach der Ölwanne</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>ja oder nein</translation>
    </message>
    <message>
        <source>the trial fit</source>
        <translation>die Probemontage</translation>
    </message>
    <message>
        <source>closing</source>
        <translation>das Schließen</translation>
    </message>
    <message>
        <source>a closing step</source>
        <translation>ein Schließschritt</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Type three counts as 29+1+16: shims in the stacks, set aside, left over.</source>
        <translation>Drei Zahlen eintippen, wie 29+1+16: Scheiben in den Stapeln, beiseitegelegt, übrig.</translation>
    </message>
    <message>
        <source>Type product / lot / open time in minutes, as printed on the tube: Grey sealant / 2231-A / 15.</source>
        <translation>Produkt / Charge / Offenzeit in Minuten eintippen, wie auf der Tube: Dichtmasse grau / 2231-A / 15.</translation>
    </message>
    <message>
        <source>Type two torques as 12 / 8: what starts the crank, and what keeps it turning.</source>
        <translation>Zwei Drehmomente eintippen, wie 12 / 8: was die Kurbelwelle losbricht und was sie weiterdreht.</translation>
    </message>
    <message>
        <source>the turning torque</source>
        <translation>das Durchdrehmoment</translation>
    </message>
    <message>
        <source>the reading</source>
        <translation>die Ablesung</translation>
    </message>
    <message>
        <source>Add the photo first, with “%1” as its place.</source>
        <translation>Zuerst das Foto hinzufügen, mit „%1“ als Stelle.</translation>
    </message>
    <message>
        <source>“%1” is not an answer here: type y for yes, or n for no with what was seen.</source>
        <translation>„%1“ ist hier keine Antwort: y für ja tippen, oder n für nein mit dem, was zu sehen war.</translation>
    </message>
    <message>
        <source>The stack labelled %1 is next: press Enter when it is on.</source>
        <translation>Der Stapel mit der Beschriftung %1 ist der nächste: Enter drücken, wenn er liegt.</translation>
    </message>
    <message>
        <source>Assembled and checked as recorded.</source>
        <translation>Aufgebaut und geprüft wie protokolliert.</translation>
    </message>
    <message>
        <source>There is nothing to enter here now.</source>
        <translation>Hier ist jetzt nichts einzutragen.</translation>
    </message>
    <message>
        <source>the stretch of %1</source>
        <translation>die Längung von %1</translation>
    </message>
    <message>
        <source>the torque of %1</source>
        <translation>das Drehmoment von %1</translation>
    </message>
    <message>
        <source>the angle of %1</source>
        <translation>der Winkel von %1</translation>
    </message>
    <message>
        <source>Shim %1 was never measured: a step has a known height only of measured ones.</source>
        <translation>Distanzscheibe %1 wurde nie gemessen: nur aus gemessenen hat eine Stufe eine bekannte Höhe.</translation>
    </message>
    <message>
        <source>Shim %1 is named twice in one step: there is one of it.</source>
        <translation>Distanzscheibe %1 ist in einer Stufe zweimal genannt: es gibt sie einmal.</translation>
    </message>
    <message>
        <source>the rests</source>
        <translation>die Auflagen</translation>
    </message>
    <message>
        <source>Name two steps or more: heights like −0.3 thou, or shims like S014+S022.</source>
        <translation>Zwei oder mehr Stufen nennen: Höhen wie −0.3 thou, oder Distanzscheiben wie S014+S022.</translation>
    </message>
    <message>
        <source>nobody can tell how far %1 goes towards proof (%2): name it, or say who takes the specification and why</source>
        <translation>niemand kann sagen, wie nahe %1 an die Prüfspannung kommt (%2): nennen, oder sagen, wer die Vorgabe verantwortet und warum</translation>
    </message>
    <message>
        <source>Entry %1 is a signature: it stays. What is added now is signed by a new one.</source>
        <translation>Eintrag %1 ist eine Signatur: sie bleibt stehen. Was jetzt hinzukommt, wird durch eine neue signiert.</translation>
    </message>
    <message>
        <source>%1 verdict is weakly measured: its band is narrower than four times the standard uncertainty (C below 1).</source>
        <translation>%1 Urteil ist schwach gemessen: sein Band ist schmaler als die vierfache Standardunsicherheit (C unter 1).</translation>
    </message>
    <message>
        <source>%1 verdicts are weakly measured: their bands are narrower than four times the standard uncertainty (C below 1).</source>
        <translation>%1 Urteile sind schwach gemessen: ihre Bänder sind schmaler als die vierfache Standardunsicherheit (C unter 1).</translation>
    </message>
    <message>
        <source>%1 clearance of the trial fit was passed by eye, not measured.</source>
        <translation>%1 Abstand der Probemontage wurde nach Augenmaß bestanden, nicht gemessen.</translation>
    </message>
    <message>
        <source>%1 clearances of the trial fit were passed by eye, not measured.</source>
        <translation>%1 Abstände der Probemontage wurden nach Augenmaß bestanden, nicht gemessen.</translation>
    </message>
    <message>
        <source>There is no entry yet, and nothing to sign.</source>
        <translation>Es gibt noch keinen Eintrag und nichts zu signieren.</translation>
    </message>
    <message>
        <source>A signature is 128 hexadecimal digits, but “%1” is not.</source>
        <translation>Eine Signatur sind 128 Hexadezimalziffern, aber „%1“ ist das nicht.</translation>
    </message>
    <message>
        <source>The signature is not that of the key “%1” over entry %2: it, or what it signs, was altered.</source>
        <translation>Die Signatur ist nicht die des Schlüssels „%1“ über Eintrag %2: sie oder das Signierte wurde verändert.</translation>
    </message>
    <message>
        <source>The signature is over entry %1, which this record does not have.</source>
        <translation>Die Signatur gilt Eintrag %1, den dieses Protokoll nicht hat.</translation>
    </message>
    <message>
        <source>The signature is over another seal than that of entry %1: it was made for another record, or this one was rewritten since.</source>
        <translation>Die Signatur gilt einem anderen Siegel als dem von Eintrag %1: sie wurde für ein anderes Protokoll gemacht, oder dieses wurde seitdem neu geschrieben.</translation>
    </message>
    <message>
        <source>No entry is signed by that key.</source>
        <translation>Kein Eintrag ist mit diesem Schlüssel signiert.</translation>
    </message>
    <message>
        <source>Read it again with a torque wrench that is known and reaches it.</source>
        <translation>Noch einmal mit einem Drehmomentschlüssel ablesen, der bekannt ist und so weit reicht.</translation>
    </message>
    <message>
        <source>Read both stages again with one wrench; if it stays so close, look for what binds.</source>
        <translation>Beide Stufen mit einem Schlüssel noch einmal ablesen; bleibt es so knapp, nach dem suchen, was klemmt.</translation>
    </message>
    <message>
        <source>End play is measured with every main cap at torque: tighten %1 to what is specified first.</source>
        <translation>Das Axialspiel wird mit allen Hauptlagerdeckeln bei Drehmoment gemessen: zuerst %1 auf die Vorgabe anziehen.</translation>
    </message>
    <message>
        <source>%1: passed by eye, not measured (at least %2 asked).</source>
        <translation>%1: nach Augenmaß bestanden, nicht gemessen (mindestens %2 verlangt).</translation>
    </message>
    <message>
        <source>%1 to start it, %2 to turn it: up by %3 ± %4, %5 allowed.</source>
        <translation>%1 zum Losbrechen, %2 zum Drehen: um %3 ± %4 gestiegen, %5 erlaubt.</translation>
    </message>
    <message>
        <source>key name</source>
        <translation>Name des Schlüssels</translation>
    </message>
    <message>
        <source>public key</source>
        <translation>öffentlicher Schlüssel</translation>
    </message>
    <message>
        <source>signature</source>
        <translation>Signatur</translation>
    </message>
    <message>
        <source>signed entry</source>
        <translation>signierter Eintrag</translation>
    </message>
    <message>
        <source>signed seal</source>
        <translation>signiertes Siegel</translation>
    </message>
    <message>
        <source>valid from</source>
        <translation>gültig ab</translation>
    </message>
    <message>
        <source>valid until</source>
        <translation>gültig bis</translation>
    </message>
    <message>
        <source>The signature in entry %1 cannot be read.</source>
        <translation>Die Signatur in Eintrag %1 ist nicht lesbar.</translation>
    </message>
    <message>
        <source>The folder of keys, %1, cannot be made: %2.</source>
        <translation>Der Ordner der Schlüssel, %1, lässt sich nicht anlegen: %2.</translation>
    </message>
    <message>
        <source>There is a key “%1” already, and it is not written over: give the new one another name.</source>
        <translation>Es gibt schon einen Schlüssel „%1“, und er wird nicht überschrieben: dem neuen einen anderen Namen geben.</translation>
    </message>
    <message>
        <source>The key file %1 cannot be made yours alone: %2.</source>
        <translation>Die Schlüsseldatei %1 lässt sich nicht für andere sperren: %2.</translation>
    </message>
    <message>
        <source>There is no signing key in %1 yet: “caprail key new” makes one.</source>
        <translation>In %1 liegt noch kein Signaturschlüssel: „caprail key new“ legt einen an.</translation>
    </message>
    <message>
        <source>There is no key “%1” here; there is %2. A lost key cannot be made again: make a new one and tell its fingerprint. What the lost one signed stays signed.</source>
        <translation>Hier gibt es keinen Schlüssel „%1“; vorhanden: %2. Ein verlorener Schlüssel lässt sich nicht wieder herstellen: einen neuen anlegen und seinen Fingerabdruck mitteilen. Was der verlorene signiert hat, bleibt signiert.</translation>
    </message>
    <message>
        <source>There are several keys: %1. Say which one signs.</source>
        <translation>Es gibt mehrere Schlüssel: %1. Angeben, welcher signiert.</translation>
    </message>
    <message>
        <source>A public key is 64 hexadecimal digits, but “%1” is not.</source>
        <translation>Ein öffentlicher Schlüssel sind 64 Hexadezimalziffern, aber „%1“ ist das nicht.</translation>
    </message>
    <message>
        <source>“%1” cannot be the name of a key: use 1 to 60 characters on one line.</source>
        <translation>„%1“ kann nicht der Name eines Schlüssels sein: 1 bis 60 Zeichen auf einer Zeile nehmen.</translation>
    </message>
    <message>
        <source>The key&apos;s last day, %1, lies before its first, %2.</source>
        <translation>Der letzte Tag des Schlüssels, %1, liegt vor dem ersten, %2.</translation>
    </message>
    <message>
        <source>The key “%1” has a passphrase already.</source>
        <translation>Der Schlüssel „%1“ hat schon eine Passphrase.</translation>
    </message>
    <message>
        <source>The passphrase is empty: give one, or make the key without.</source>
        <translation>Die Passphrase ist leer: eine angeben oder den Schlüssel ohne anlegen.</translation>
    </message>
    <message>
        <source>The passphrase does not open the key “%1”: type it again.</source>
        <translation>Die Passphrase öffnet den Schlüssel „%1“ nicht: neu tippen.</translation>
    </message>
    <message>
        <source>The key “%1” is valid from %2 on, not yet on %3.</source>
        <translation>Der Schlüssel „%1“ gilt ab %2, am %3 noch nicht.</translation>
    </message>
    <message>
        <source>The key “%1” expired: its last day was %2. What it signed until then stays signed; make a new one, and tell its fingerprint.</source>
        <translation>Der Schlüssel „%1“ ist abgelaufen: sein letzter Tag war %2. Was er bis dahin signiert hat, bleibt signiert; einen neuen anlegen und seinen Fingerabdruck mitteilen.</translation>
    </message>
    <message>
        <source>The system gives no random numbers (%1), and without them there is no key.</source>
        <translation>Das System gibt keine Zufallszahlen (%1), und ohne sie gibt es keinen Schlüssel.</translation>
    </message>
    <message>
        <source>Entries wait to be stored: sign once they are, so that the signature is over them too.</source>
        <translation>Es warten Einträge darauf, gespeichert zu werden: danach signieren, damit die Signatur auch ihnen gilt.</translation>
    </message>
    <message>
        <source>Entry %1 says which entries came in without seals: that stays.</source>
        <translation>Eintrag %1 sagt, welche Einträge ohne Siegel hereinkamen: das bleibt stehen.</translation>
    </message>
    <message>
        <source>Such an entry is made by importing a text without seals, and in no other way.</source>
        <translation>Ein solcher Eintrag entsteht beim Einlesen eines Textes ohne Siegel und auf keine andere Weise.</translation>
    </message>
    <message>
        <source>Say what the part is: “%1” alone names none.</source>
        <translation>Sagen, was das Teil ist: „%1“ allein benennt keines.</translation>
    </message>
    <message>
        <source>“%1” is not a place of an engine: write a position, a bearing or a fastener as 3R, main-3 or main-3R, or leave the place empty.</source>
        <translation>„%1“ ist keine Stelle eines Motors: eine Position, ein Lager oder eine Verschraubung als 3R, main-3 oder main-3R schreiben oder die Stelle leer lassen.</translation>
    </message>
    <message>
        <source>A fastener was tightened 0 to 999 times before, not %1.</source>
        <translation>Eine Verschraubung wurde zuvor 0- bis 999-mal angezogen, nicht %1-mal.</translation>
    </message>
    <message>
        <source>A new fastener was not tightened before: say that it is used, or leave the count out.</source>
        <translation>Eine neue Verschraubung wurde noch nicht angezogen: sagen, dass sie gebraucht ist, oder die Zahl weglassen.</translation>
    </message>
    <message>
        <source>the standard that %1 was tried on</source>
        <translation>das Normal, an dem %1 geprüft wurde</translation>
    </message>
    <message>
        <source>This record has no value “%1”: “caprail show” lists the values and their codes.</source>
        <translation>Dieses Protokoll hat keinen Wert „%1“: „caprail show“ nennt die Werte und ihre Kürzel.</translation>
    </message>
    <message>
        <source>Say whose figure it is: a maker&apos;s sheet, a drawing, or a person by name.</source>
        <translation>Sagen, wessen Angabe es ist: ein Datenblatt, eine Zeichnung oder eine Person mit Namen.</translation>
    </message>
    <message>
        <source>The entry about what was brought in carries no proper SHA-256 hash or count.</source>
        <translation>Der Eintrag über das Hereingekommene trägt keinen richtigen SHA-256-Wert oder keine richtige Anzahl.</translation>
    </message>
    <message>
        <source>Set the group “%1”: its maker says torque, lubricant and, where it is so, stretch.</source>
        <translation>Die Gruppe „%1“ festlegen: ihr Hersteller nennt Drehmoment, Schmierstoff und, wo es so ist, die Längung.</translation>
    </message>
    <message>
        <source>the decision rule</source>
        <translation>die Entscheidungsregel</translation>
    </message>
    <message>
        <source>the coverage</source>
        <translation>die Überdeckung</translation>
    </message>
    <message>
        <source>the repeat limit of gap readings</source>
        <translation>die Wiederholgrenze der Spaltmaße</translation>
    </message>
    <message>
        <source>the least number of passes</source>
        <translation>die kleinste Zahl der Durchgänge</translation>
    </message>
    <message>
        <source>the tolerance of a shim&apos;s marking</source>
        <translation>die Toleranz der Kennzeichnung einer Distanzscheibe</translation>
    </message>
    <message>
        <source>the most shims per stack</source>
        <translation>die meisten Distanzscheiben je Stapel</translation>
    </message>
    <message>
        <source>the scatter of preload at a torque</source>
        <translation>die Streuung der Vorspannkraft bei einem Drehmoment</translation>
    </message>
    <message>
        <source>what parts may differ by in temperature</source>
        <translation>der Temperaturunterschied, den Teile haben dürfen</translation>
    </message>
    <message>
        <source>the least clearance at a counterweight</source>
        <translation>der kleinste Abstand an einem Gegengewicht</translation>
    </message>
    <message>
        <source>the least clearance at the pickup tube</source>
        <translation>der kleinste Abstand am Ölansaugrohr</translation>
    </message>
    <message>
        <source>the least clearance at the dipstick</source>
        <translation>der kleinste Abstand am Ölmessstab</translation>
    </message>
    <message>
        <source>the largest rise of the turning torque</source>
        <translation>der größte Anstieg des Drehwiderstands</translation>
    </message>
    <message>
        <source>the limits of “%1”</source>
        <translation>die Grenzen von „%1“</translation>
    </message>
    <message>
        <source>what the %1 fasteners are tightened to</source>
        <translation>worauf die Verschraubungen „%1“ angezogen werden</translation>
    </message>
    <message>
        <source>Entry %1 was judged by what this changes: say why it is changed, a reason is required.</source>
        <translation>Eintrag %1 wurde nach dem beurteilt, was dies ändert: sagen, warum es geändert wird, ein Grund ist nötig.</translation>
    </message>
    <message>
        <source>address</source>
        <translation>Anschrift</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>machined by</source>
        <translation>bearbeitet von</translation>
    </message>
    <message>
        <source>machined on</source>
        <translation>bearbeitet am</translation>
    </message>
    <message>
        <source>machined</source>
        <translation>bearbeitet</translation>
    </message>
    <message>
        <source>nominal</source>
        <translation>Nennmaß</translation>
    </message>
    <message>
        <source>part number</source>
        <translation>Teilenummer</translation>
    </message>
    <message>
        <source>stamped</source>
        <translation>Prägung</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>telephone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>times tightened</source>
        <translation>zuvor angezogen</translation>
    </message>
    <message>
        <source>block</source>
        <translation>Motorblock</translation>
    </message>
    <message>
        <source>pistons</source>
        <translation>Kolben</translation>
    </message>
    <message>
        <source>rings</source>
        <translation>Kolbenringe</translation>
    </message>
    <message>
        <source>main shells</source>
        <translation>Hauptlagerschalen</translation>
    </message>
    <message>
        <source>rod shells</source>
        <translation>Pleuellagerschalen</translation>
    </message>
    <message>
        <source>main studs</source>
        <translation>Hauptlager-Stehbolzen</translation>
    </message>
    <message>
        <source>rod bolts</source>
        <translation>Pleuelschrauben</translation>
    </message>
    <message>
        <source>other fasteners</source>
        <translation>andere Verschraubungen</translation>
    </message>
    <message>
        <source>shim kit</source>
        <translation>Distanzscheibensatz</translation>
    </message>
    <message>
        <source>oil pan</source>
        <translation>Ölwanne</translation>
    </message>
    <message>
        <source>oil pump</source>
        <translation>Ölpumpe</translation>
    </message>
    <message>
        <source>oil pickup</source>
        <translation>Ölansaugrohr</translation>
    </message>
    <message>
        <source>pan gasket</source>
        <translation>Ölwannendichtung</translation>
    </message>
    <message>
        <source>rear main seal</source>
        <translation>hinterer Wellendichtring</translation>
    </message>
    <message>
        <source>sealant</source>
        <translation>Dichtmasse</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>Öl</translation>
    </message>
    <message>
        <source>thread lubricant</source>
        <translation>Schmierstoff für Gewinde</translation>
    </message>
    <message>
        <source>other part</source>
        <translation>anderes Teil</translation>
    </message>
    <message>
        <source>Entries %1 to %2 came in from a text without seals%3: who made them and when is what that text says.</source>
        <translation>Die Einträge %1 bis %2 kamen aus einem Text ohne Siegel herein%3: wer sie wann machte, ist, was jener Text sagt.</translation>
    </message>
    <message>
        <source>It has a seal, and a line before it has none: a seal stands on every line before it too.</source>
        <translation>Sie hat ein Siegel, und eine Zeile davor hat keines: ein Siegel steht auch auf jeder Zeile davor.</translation>
    </message>
    <message>
        <source>Its time, %1, is before that of the line above it, %2: entries stand in the order in which they were made.</source>
        <translation>Ihre Zeit, %1, liegt vor der der Zeile darüber, %2: Einträge stehen in der Reihenfolge, in der sie gemacht wurden.</translation>
    </message>
    <message>
        <source>Its time, %1, lies in the future: nobody made it yet.</source>
        <translation>Ihre Zeit, %1, liegt in der Zukunft: noch hat sie niemand gemacht.</translation>
    </message>
    <message>
        <source>limits or rules</source>
        <translation>Grenzen oder Regeln</translation>
    </message>
    <message>
        <source>specification</source>
        <translation>Vorgabe</translation>
    </message>
    <message>
        <source>accepted again</source>
        <translation>neu angenommen</translation>
    </message>
    <message>
        <source>“moved” struck</source>
        <translation>„bewegt“ gestrichen</translation>
    </message>
    <message>
        <source>outcome struck</source>
        <translation>Ergebnis gestrichen</translation>
    </message>
    <message>
        <source>reading struck</source>
        <translation>Ablesung gestrichen</translation>
    </message>
    <message>
        <source>part or washer</source>
        <translation>Teil oder Unterlegscheibe</translation>
    </message>
    <message>
        <source>insisted on</source>
        <translation>darauf bestanden</translation>
    </message>
    <message>
        <source>from outside</source>
        <translation>von außen</translation>
    </message>
    <message>
        <source>The pattern %1 must have one #, where the value stands in the gauge&apos;s line: # alone, or 01A# for a value behind the prefix 01A.</source>
        <translation>Das Muster %1 muss genau ein # enthalten, wo in der Zeile des Messmittels der Wert steht: # allein oder 01A# für einen Wert hinter dem Vorsatz 01A.</translation>
    </message>
    <message>
        <source>The pattern %1 has more than %2 signs *: one stands for as much as there is.</source>
        <translation>Das Muster %1 hat mehr als %2 Zeichen *: Eines steht für beliebig viel.</translation>
    </message>
    <message>
        <source>%1 is no unit that a field takes: choose one from the list.</source>
        <translation>%1 ist keine Einheit, die ein Feld annimmt: eine aus der Liste wählen.</translation>
    </message>
    <message>
        <source>%1 came from the gauge and does not fit its pattern %2: try the gauge under Instruments ▸ Gauges on this computer.</source>
        <translation>%1 kam vom Messmittel und passt nicht zu seinem Muster %2: das Messmittel unter Messmittel ▸ Messmittel an diesem Rechner ausprobieren.</translation>
    </message>
    <message>
        <source>%1 came from the gauge without a unit: say which it is under Instruments ▸ Gauges on this computer.</source>
        <translation>%1 kam vom Messmittel ohne Einheit: unter Messmittel ▸ Messmittel an diesem Rechner angeben, welche es ist.</translation>
    </message>
    <message>
        <source>the part at %1</source>
        <translation>das Teil bei %1</translation>
    </message>
    <message>
        <source>Journal %1, place %2, direction %3: %4</source>
        <translation>Zapfen %1, Ebene %2, Richtung %3: %4</translation>
    </message>
    <message>
        <source>Clearance at %1 by gauging strip: %2</source>
        <translation>Spiel an %1 mit Messstreifen: %2</translation>
    </message>
    <message>
        <source>Bare housing of %1, place %2: %3</source>
        <translation>Gehäusebohrung von %1, Ebene %2: %3</translation>
    </message>
    <message>
        <source>Bore of %1 with its shells, place %2: %3</source>
        <translation>Bohrung von %1 mit ihren Schalen, Ebene %2: %3</translation>
    </message>
    <message>
        <source>Shell %1 is marked %2</source>
        <translation>Schale %1 ist mit %2 beschriftet</translation>
    </message>
    <message>
        <source>Shell %1 measured: %2</source>
        <translation>Schale %1 gemessen: %2</translation>
    </message>
    <message>
        <source>for a main</source>
        <translation>für ein Hauptlager</translation>
    </message>
    <message>
        <source>for a rod</source>
        <translation>für ein Pleuel</translation>
    </message>
    <message>
        <source>Shells fitted at %1: %2 above, %3 below</source>
        <translation>Schalen an %1 eingebaut: %2 oben, %3 unten</translation>
    </message>
    <message>
        <source>%1 at place %2: %3</source>
        <translation>%1 an Stelle %2: %3</translation>
    </message>
    <message>
        <source>Crank laid in</source>
        <translation>Kurbelwelle eingelegt</translation>
    </message>
    <message>
        <source>Crank lifted out</source>
        <translation>Kurbelwelle herausgehoben</translation>
    </message>
    <message>
        <source>Another %1, or it was worked on</source>
        <translation>Teil getauscht oder bearbeitet: %1</translation>
    </message>
    <message>
        <source>Another %1 at %2, or it was worked on</source>
        <translation>Teil an %2 getauscht oder bearbeitet: %1</translation>
    </message>
    <message>
        <source>%1 tightened</source>
        <translation>%1 angezogen</translation>
    </message>
    <message>
        <source>%1 tightened to %2</source>
        <translation>%1 angezogen auf %2</translation>
    </message>
    <message>
        <source>a new one</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>not a new one</source>
        <translation>nicht neu</translation>
    </message>
    <message>
        <source>%1 loosened</source>
        <translation>%1 gelöst</translation>
    </message>
    <message>
        <source>Clamp of %1: on at %2, off at %3</source>
        <translation>Klemmkraft von %1: anziehend %2, lösend %3</translation>
    </message>
    <message>
        <source>Verify round %1 begun</source>
        <translation>Prüfrunde %1 begonnen</translation>
    </message>
    <message>
        <source>%1 held in round %2</source>
        <translation>%1 hielt in Prüfrunde %2</translation>
    </message>
    <message>
        <source>%1 moved %2 in round %3</source>
        <translation>%1 drehte sich in Prüfrunde %3 um %2 weiter</translation>
    </message>
    <message>
        <source>%1 moved in round %2</source>
        <translation>%1 drehte sich in Prüfrunde %2 weiter</translation>
    </message>
    <message>
        <source>pulled to %1</source>
        <translation>gezogen auf %1</translation>
    </message>
    <message>
        <source>verified by %1</source>
        <translation>nachgeprüft über: %1</translation>
    </message>
    <message>
        <source>stretch %1</source>
        <translation>Längung %1</translation>
    </message>
    <message>
        <source>Washer at %1 %2</source>
        <translation>Unterlegscheibe an %1 %2</translation>
    </message>
    <message>
        <source>Gap at %1, pass %2: %3</source>
        <translation>Spaltmaß an %1, Durchgang %2: %3</translation>
    </message>
    <message>
        <source>%1 does not go</source>
        <translation>%1 geht nicht</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>Shim %1 added, marked %2</source>
        <translation>Distanzscheibe %1 hinzugefügt, beschriftet %2</translation>
    </message>
    <message>
        <source>from bag %1</source>
        <translation>aus Beutel %1</translation>
    </message>
    <message>
        <source>Shim %1 measured: %2</source>
        <translation>Distanzscheibe %1 gemessen: %2</translation>
    </message>
    <message>
        <source>Shim %1 set aside</source>
        <translation>Distanzscheibe %1 beiseitegelegt</translation>
    </message>
    <message>
        <source>Shim %1 taken back into the kit</source>
        <translation>Distanzscheibe %1 in den Satz zurückgenommen</translation>
    </message>
    <message>
        <source>Stack at %1 pinned: %2</source>
        <translation>Stapel an %1 fixiert: %2</translation>
    </message>
    <message>
        <source>Stack at %1 no longer pinned</source>
        <translation>Stapel an %1 nicht mehr fixiert</translation>
    </message>
    <message>
        <source>Stack built at %1: %2</source>
        <translation>Stapel an %1 aufgebaut: %2</translation>
    </message>
    <message>
        <source>Stack at %1 %2</source>
        <translation>Stapel an %1 %2</translation>
    </message>
    <message>
        <source>Recheck at %1: it %2</source>
        <translation>Nachprüfung an %1: es %2</translation>
    </message>
    <message>
        <source>with %1 in place of %2 it %3</source>
        <translation>mit %1 statt %2: es %3</translation>
    </message>
    <message>
        <source>Accepted again by the present numbers: %1</source>
        <translation>Nach den jetzigen Zahlen wieder angenommen: %1</translation>
    </message>
    <message>
        <source>Study %1 begun of the feel of %2 under %3</source>
        <translation>Prüfung %1 des Gefühls von %2 mit %3 begonnen</translation>
    </message>
    <message>
        <source>Study %1: at %2 it %3</source>
        <translation>Prüfung %1: bei %2: es %3</translation>
    </message>
    <message>
        <source>step of %1</source>
        <translation>Stufe aus %1</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>mit %1</translation>
    </message>
    <message>
        <source>says: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Engine described</source>
        <translation>Motor beschrieben</translation>
    </message>
    <message>
        <source>Engine: %1</source>
        <translation>Motor: %1</translation>
    </message>
    <message>
        <source>for %1</source>
        <translation>für %1</translation>
    </message>
    <message>
        <source>shop: %1</source>
        <translation>Werkstatt: %1</translation>
    </message>
    <message>
        <source>Girdle now ties caps %1 to %2</source>
        <translation>Die Platte verbindet jetzt die Deckel %1 bis %2</translation>
    </message>
    <message>
        <source>%1 caps of %2 fasteners</source>
        <translation>%1 Deckel mit je %2 Schrauben</translation>
    </message>
    <message>
        <source>girdle at the %1 ring</source>
        <translation>Platte sitzt auf dem Ring „%1“</translation>
    </message>
    <message>
        <source>%1 rods on %2 throws</source>
        <translation>%1 Pleuel auf %2 Kröpfungen</translation>
    </message>
    <message>
        <source>pickup at cap %1 %2</source>
        <translation>Ölansaugrohr an Deckel %1 %2</translation>
    </message>
    <message>
        <source>dipstick at cap %1 %2</source>
        <translation>Ölmessstab an Deckel %1 %2</translation>
    </message>
    <message>
        <source>caps %1 apart, studs %2, outer studs %3, rails %4</source>
        <translation>Abstand der Deckel %1, der Stehbolzen %2, der äußeren %3, der Flansche %4</translation>
    </message>
    <message>
        <source>Band “%1” is now %2 to %3</source>
        <translation>Das Band „%1“ ist jetzt %2 bis %3</translation>
    </message>
    <message>
        <source>aim %1</source>
        <translation>Ziel %1</translation>
    </message>
    <message>
        <source>Judged from now on by %1, U %2</source>
        <translation>Ab jetzt beurteilt: %1, U %2</translation>
    </message>
    <message>
        <source>a gap in %1 passes within %2</source>
        <translation>ein Spaltmaß in %1 Durchgängen innerhalb %2</translation>
    </message>
    <message>
        <source>shims within %1 of their marking</source>
        <translation>Distanzscheiben innerhalb %1 ihrer Beschriftung</translation>
    </message>
    <message>
        <source>stacks of any number of shims</source>
        <translation>Stapel mit beliebig vielen Distanzscheiben</translation>
    </message>
    <message>
        <source>stacks of up to %1 shims</source>
        <translation>Stapel mit bis zu %1 Distanzscheiben</translation>
    </message>
    <message>
        <source>plan for %1</source>
        <translation>Plan auf: %1</translation>
    </message>
    <message>
        <source>preload within %1 % at a torque</source>
        <translation>Vorspannkraft innerhalb %1 % bei einem Drehmoment</translation>
    </message>
    <message>
        <source>counterweights %1 clear</source>
        <translation>Gegengewichte %1 frei</translation>
    </message>
    <message>
        <source>parts within %1 of each other</source>
        <translation>Teile innerhalb %1 voneinander</translation>
    </message>
    <message>
        <source>a second person verifies</source>
        <translation>eine zweite Person prüft nach</translation>
    </message>
    <message>
        <source>anyone may verify</source>
        <translation>jeder darf nachprüfen</translation>
    </message>
    <message>
        <source>a second person signs</source>
        <translation>eine zweite Person zeichnet ab</translation>
    </message>
    <message>
        <source>anyone may sign</source>
        <translation>jeder darf abzeichnen</translation>
    </message>
    <message>
        <source>pickup tube %1 clear</source>
        <translation>Ölansaugrohr %1 frei</translation>
    </message>
    <message>
        <source>dipstick %1 clear</source>
        <translation>Ölmessstab %1 frei</translation>
    </message>
    <message>
        <source>turning torque may rise by %1</source>
        <translation>Durchdrehmoment darf um %1 steigen</translation>
    </message>
    <message>
        <source>Own check “%1” is asked no more</source>
        <translation>Nach der eigenen Prüfung „%1“ wird nicht mehr gefragt</translation>
    </message>
    <message>
        <source>Own check “%1” is now asked: %2</source>
        <translation>Eigene Prüfung „%1“ wird jetzt gefragt: %2</translation>
    </message>
    <message>
        <source>it holds %1</source>
        <translation>hält auf: %1</translation>
    </message>
    <message>
        <source>at %1 places</source>
        <translation>an %1 Stellen</translation>
    </message>
    <message>
        <source>within %1 to %2</source>
        <translation>innerhalb %1 bis %2</translation>
    </message>
    <message>
        <source>Fasteners of %1: %2</source>
        <translation>Schrauben von %1: %2</translation>
    </message>
    <message>
        <source>Fasteners of %1 go to %2</source>
        <translation>Schrauben von %1 auf %2</translation>
    </message>
    <message>
        <source>%1 of them</source>
        <translation>%1 davon</translation>
    </message>
    <message>
        <source>dissolved: no place is left in it</source>
        <translation>aufgelöst: keine Stelle ist mehr darin</translation>
    </message>
    <message>
        <source>places: %1</source>
        <translation>Stellen: %1</translation>
    </message>
    <message>
        <source>thread %1</source>
        <translation>Gewinde %1</translation>
    </message>
    <message>
        <source>by %1 in %2 steps</source>
        <translation>nach %1 in %2 Stufen</translation>
    </message>
    <message>
        <source>in the order %1</source>
        <translation>in der Reihenfolge %1</translation>
    </message>
    <message>
        <source>used once</source>
        <translation>nur einmal zu verwenden</translation>
    </message>
    <message>
        <source>may be used again</source>
        <translation>wiederverwendbar</translation>
    </message>
    <message>
        <source>length within %1</source>
        <translation>Länge innerhalb %1</translation>
    </message>
    <message>
        <source>grip %1</source>
        <translation>Klemmlänge %1</translation>
    </message>
    <message>
        <source>shank %1</source>
        <translation>Schaft %1</translation>
    </message>
    <message>
        <source>%1 of thread in the grip</source>
        <translation>%1 Gewinde in der Klemmlänge</translation>
    </message>
    <message>
        <source>clamps %1</source>
        <translation>klemmt %1</translation>
    </message>
    <message>
        <source>%1 works on this engine</source>
        <translation>%1 arbeitet an diesem Motor</translation>
    </message>
    <message>
        <source>%1 works on this engine as %2</source>
        <translation>%1 arbeitet an diesem Motor als %2</translation>
    </message>
    <message>
        <source>%1 is a %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>made by %1</source>
        <translation>hergestellt von %1</translation>
    </message>
    <message>
        <source>number %1</source>
        <translation>Nummer %1</translation>
    </message>
    <message>
        <source>limit of error ± %1</source>
        <translation>Fehlergrenze ± %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>calibrated %1</source>
        <translation>kalibriert %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>due after %1 pulls</source>
        <translation>fällig nach %1 Zügen</translation>
    </message>
    <message>
        <source>%1 pulls before this record</source>
        <translation>%1 Züge vor diesem Protokoll</translation>
    </message>
    <message>
        <source>read to %1</source>
        <translation>abgelesen auf %1</translation>
    </message>
    <message>
        <source>set in %1</source>
        <translation>eingestellt in %1</translation>
    </message>
    <message>
        <source>corrects: %1</source>
        <translation>berichtigt: %1</translation>
    </message>
    <message>
        <source>Girdle lies with its %1 up, the cutout to the %2 at the %3</source>
        <translation>Die Platte liegt, %1 oben, der Ausschnitt nach %2, Seite %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Not so: %1</source>
        <translation>Nicht so: %1</translation>
    </message>
    <message>
        <source>%1: passed</source>
        <translation>%1: in Ordnung</translation>
    </message>
    <message>
        <source>Crank turns, %1: %2 to start it, %3 to keep it turning</source>
        <translation>Kurbelwelle durchgedreht, %1: %2 zum Anfahren, %3 zum Weiterdrehen</translation>
    </message>
    <message>
        <source>see its photo</source>
        <translation>siehe ihr Foto</translation>
    </message>
    <message>
        <source>Own check “%1” at place %2: %3</source>
        <translation>Eigene Prüfung „%1“ an Stelle %2: %3</translation>
    </message>
    <message>
        <source>photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>Finding %1 opened</source>
        <translation>Befund %1 eröffnet</translation>
    </message>
    <message>
        <source>Finding %1 settled: %2</source>
        <translation>Befund %1 erledigt: %2</translation>
    </message>
    <message>
        <source>Noted</source>
        <translation>Notiert</translation>
    </message>
    <message>
        <source>Photo or file %1 added</source>
        <translation>Foto oder Datei %1 hinzugefügt</translation>
    </message>
    <message>
        <source>%1 bytes</source>
        <translation>%1 Byte</translation>
    </message>
    <message>
        <source>before it was scaled %1</source>
        <translation>vor dem Verkleinern %1</translation>
    </message>
    <message>
        <source>Closing: %1</source>
        <translation>Schließen: %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>Charge %1</translation>
    </message>
    <message>
        <source>open for %1 min</source>
        <translation>offen für %1 min</translation>
    </message>
    <message>
        <source>%1 in the stacks, %2 set aside, %3 left over</source>
        <translation>%1 in den Stapeln, %2 beiseitegelegt, %3 übrig</translation>
    </message>
    <message>
        <source>Signed off: %1</source>
        <translation>Abgezeichnet: %1</translation>
    </message>
    <message>
        <source>Build %1 begun</source>
        <translation>Aufbau %1 begonnen</translation>
    </message>
    <message>
        <source>Entry %1 struck: %2</source>
        <translation>Eintrag %1 gestrichen: %2</translation>
    </message>
    <message>
        <source>Salvaged from %1</source>
        <translation>Gerettet aus %1</translation>
    </message>
    <message>
        <source>no seal could be read</source>
        <translation>kein Siegel war lesbar</translation>
    </message>
    <message>
        <source>last seal %1</source>
        <translation>letztes Siegel %1</translation>
    </message>
    <message>
        <source>seals that did not fit: %1</source>
        <translation>Siegel, die nicht passten: %1</translation>
    </message>
    <message>
        <source>lost: %1</source>
        <translation>verloren: %1</translation>
    </message>
    <message>
        <source>%1 was taken over by another program or window: it can only be read here. What is typed here belongs there now.</source>
        <translation>%1 wurde von einem anderen Programm oder Fenster übernommen: hier kann es nur noch gelesen werden. Was hier getippt wird, gehört jetzt dorthin.</translation>
    </message>
    <message>
        <source>%1 cannot be taken over: its lock %2 cannot be removed. Check the folder&apos;s permissions.</source>
        <translation>%1 kann nicht übernommen werden: seine Sperre %2 lässt sich nicht entfernen. Die Rechte des Ordners prüfen.</translation>
    </message>
    <message>
        <source>Type “sign” to sign off build %1 of %2 as assembled and checked, or a statement of your own.</source>
        <translation>„sign“ tippen, um Aufbau %1 von %2 als aufgebaut und geprüft abzuzeichnen, oder eine eigene Erklärung.</translation>
    </message>
    <message>
        <source>Say what was seen at %1: h if its mark still lines up, or the angle it moved.</source>
        <translation>Sagen, was an %1 gesehen wurde: h, wenn die Markierung noch fluchtet, oder der Winkel, um den sie sich weiterdrehte.</translation>
    </message>
    <message>
        <source>Say what was felt at %1: h if it held, or the angle it moved.</source>
        <translation>Sagen, was an %1 gefühlt wurde: h, wenn sie hielt, oder der Winkel, um den sie sich weiterdrehte.</translation>
    </message>
    <message>
        <source>the angle that %1 moved</source>
        <translation>der Winkel, um den sich %1 weiterdrehte</translation>
    </message>
    <message>
        <source>the gap at %1</source>
        <translation>das Spaltmaß an %1</translation>
    </message>
    <message>
        <source>Bring its cap to torque, beginning with %1, then measure the bore with the shells in.</source>
        <translation>Den Deckel auf Drehmoment bringen, beginnend mit %1, dann die Bohrung mit eingelegten Schalen messen.</translation>
    </message>
    <message>
        <source>Part: %1</source>
        <translation>Teil: %1</translation>
    </message>
    <message>
        <source>Part: %1, at %2</source>
        <translation>Teil: %1, an %2</translation>
    </message>
    <message>
        <source>part number %1</source>
        <translation>Teilenummer %1</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>Seriennummer %1</translation>
    </message>
    <message>
        <source>stamped %1</source>
        <translation>Prägung %1</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>used</source>
        <translation>gebraucht</translation>
    </message>
    <message>
        <source>tightened before: %1</source>
        <translation>zuvor angezogen: %1-mal</translation>
    </message>
    <message>
        <source>machined: %1</source>
        <translation>bearbeitet: %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>am %1</translation>
    </message>
    <message>
        <source>%1 tried on its standard: reads %2 on %3</source>
        <translation>%1 am Normal geprüft: zeigt %2 bei %3</translation>
    </message>
    <message>
        <source>Value %1 confirmed</source>
        <translation>Wert %1 bestätigt</translation>
    </message>
    <message>
        <source>Brought in without seals: %1 entries</source>
        <translation>Ohne Siegel übernommen: Einträge, Anzahl %1</translation>
    </message>
    <message>
        <source>Brought in without seals: %1 entries of %2</source>
        <translation>Ohne Siegel übernommen: Einträge aus %2, Anzahl %1</translation>
    </message>
    <message>
        <source>Signed with the key of %1: everything up to entry %2</source>
        <translation>Mit dem Schlüssel von %1 signiert: alles bis Eintrag %2</translation>
    </message>
    <message>
        <source>key valid from %1</source>
        <translation>Schlüssel gültig ab %1</translation>
    </message>
    <message>
        <source>key valid until %1</source>
        <translation>Schlüssel gültig bis %1</translation>
    </message>
    <message>
        <source>seal %1</source>
        <translation>Siegel %1</translation>
    </message>
    <message>
        <source>public key %1</source>
        <translation>öffentlicher Schlüssel %1</translation>
    </message>
    <message>
        <source>signature %1</source>
        <translation>Signatur %1</translation>
    </message>
    <message>
        <source>because: %1</source>
        <translation>weil: %1</translation>
    </message>
    <message>
        <source>telephone %1</source>
        <translation>Telefon %1</translation>
    </message>
    <message>
        <source>List the shims of the kit first.</source>
        <translation>Zuerst die Distanzscheiben des Satzes auflisten.</translation>
    </message>
    <message>
        <source>The numbers that %1 was judged by no longer say enough: %2. Measure it again.</source>
        <translation>Die Zahlen, nach denen %1 beurteilt wurde, sagen nicht mehr genug: %2. Noch einmal messen.</translation>
    </message>
    <message>
        <source>%1 is defined for inch threads only, and %2 is not: give its proof stress, as in “190 ksi”.</source>
        <translation>%1 ist nur für Zollgewinde festgelegt, und %2 ist keines: die Prüfspannung angeben, wie „190 ksi“.</translation>
    </message>
    <message>
        <source>%1 is defined for metric threads only, and %2 is not: give its proof stress, as in “190 ksi”.</source>
        <translation>%1 ist nur für metrische Gewinde festgelegt, und %2 ist keines: die Prüfspannung angeben, wie „190 ksi“.</translation>
    </message>
    <message>
        <source>%1 lists no proof stress for the size of %2 (%3 are listed): give its proof stress, as in “190 ksi”.</source>
        <translation>%1 nennt keine Prüfspannung für die Größe von %2 (genannt sind %3): die Prüfspannung angeben, wie „190 ksi“.</translation>
    </message>
    <message>
        <source>%1 is not a known grade: use SAE 5, SAE 8, 8.8, 10.9 or 12.9, or give the proof stress as in “1310 MPa” or “190 ksi”.</source>
        <translation>%1 ist keine bekannte Festigkeitsklasse: SAE 5, SAE 8, 8.8, 10.9 oder 12.9 verwenden oder die Prüfspannung angeben wie „1310 MPa“ oder „190 ksi“.</translation>
    </message>
    <message>
        <source>%1 is not in the list of lubricants (%2): take one of these or give its nut factor.</source>
        <translation>%1 steht nicht in der Liste der Schmierstoffe (%2): einen davon nehmen oder den K-Faktor angeben.</translation>
    </message>
    <message>
        <source>There is no coarse thread M%1: give its pitch and say so, as in M12.5x1.5 special.</source>
        <translation>Ein Regelgewinde M%1 gibt es nicht: die Steigung angeben und „special“ dahinter schreiben, wie in M12.5x1.5 special.</translation>
    </message>
    <message>
        <source>A girdle of another metal needs both its elastic modulus and its Poisson&apos;s ratio.</source>
        <translation>Eine Platte aus anderem Metall braucht Elastizitätsmodul und Querkontraktionszahl.</translation>
    </message>
    <message>
        <source>An engine oil has between 2 and 20 000 mm²/s: copy its viscosity at 40 °C and at 100 °C from its data sheet.</source>
        <translation>Ein Motoröl hat zwischen 2 und 20 000 mm²/s: seine Viskosität bei 40 °C und bei 100 °C vom Datenblatt abschreiben.</translation>
    </message>
    <message>
        <source>An oil&apos;s temperature lies between −40 °C and 200 °C: look at what was entered.</source>
        <translation>Die Temperatur eines Öls liegt zwischen −40 °C und 200 °C: die Eingabe ansehen.</translation>
    </message>
    <message>
        <source>An oil must be thinner at the hotter of two temperatures: copy both points from its data sheet again.</source>
        <translation>Ein Öl muss bei der höheren von zwei Temperaturen dünner sein: beide Punkte noch einmal vom Datenblatt abschreiben.</translation>
    </message>
    <message>
        <source>The charts of the oil film hold for bearings from a quarter to twice as wide as their diameter.</source>
        <translation>Die Diagramme des Schmierfilms gelten für Lager, die ein Viertel bis doppelt so breit sind wie ihr Durchmesser.</translation>
    </message>
    <message>
        <source>The oil film comes out thinner than three hundredths of the radial clearance, where the charts end: the surfaces would touch.</source>
        <translation>Der Schmierfilm wird dünner als drei Hundertstel des radialen Spiels, wo die Diagramme enden: die Flächen würden sich berühren.</translation>
    </message>
    <message>
        <source>The oil film needs a journal, a width of its shells and a clearance, each above zero.</source>
        <translation>Der Schmierfilm braucht einen Zapfen, eine Breite der Schalen und ein Spiel, alle über null.</translation>
    </message>
    <message>
        <source>The oil film needs a speed, a load and an oil, each above zero.</source>
        <translation>Der Schmierfilm braucht eine Drehzahl, eine Last und ein Öl, alle über null.</translation>
    </message>
    <message>
        <source>A bearing&apos;s width lies between a tenth and twice its diameter: measure the width of its shells again.</source>
        <translation>Die Breite eines Lagers liegt zwischen einem Zehntel und dem Doppelten seines Durchmessers: die Breite der Schalen noch einmal messen.</translation>
    </message>
    <message>
        <source>A window of the girdle cannot be smaller than nothing: give its length along the crank and its width across it, or 0 for a plate without windows.</source>
        <translation>Ein Fenster der Platte kann nicht kleiner als nichts sein: seine Länge längs und seine Breite quer zur Kurbelwelle angeben, oder 0 für eine Platte ohne Fenster.</translation>
    </message>
    <message>
        <source>A window of the girdle this large meets the next one, the pan rail or a washer: measure it again.</source>
        <translation>Ein so großes Fenster der Platte stößt an das nächste, an den Ölwannenflansch oder an eine Unterlegscheibe: noch einmal messen.</translation>
    </message>
    <message>
        <source>The girdle&apos;s plate must reach beyond its outermost nuts by the radius of their washers at least and by no more than the cap spacing: measure it again.</source>
        <translation>Die Platte muss mindestens um den Radius der Unterlegscheiben und höchstens um den Deckelabstand über ihre äußersten Muttern hinausreichen: noch einmal messen.</translation>
    </message>
    <message>
        <source>plate metal</source>
        <translation>Metall der Platte</translation>
    </message>
    <message>
        <source>plate overhang</source>
        <translation>Überstand der Platte</translation>
    </message>
    <message>
        <source>plate thickness</source>
        <translation>Dicke der Platte</translation>
    </message>
    <message>
        <source>window across</source>
        <translation>Fenster quer</translation>
    </message>
    <message>
        <source>window along</source>
        <translation>Fenster längs</translation>
    </message>
    <message>
        <source>The girdle&apos;s plate cannot be worked out: a part of it hangs on nothing. Correct its windows or the layout.</source>
        <translation>Die Platte lässt sich nicht berechnen: ein Teil von ihr hängt an nichts. Ihre Fenster oder die Bauform berichtigen.</translation>
    </message>
    <message>
        <source>The girdle has no metal at one of its nuts: correct its windows, its cutout or the layout.</source>
        <translation>Die Platte hat an einer ihrer Muttern kein Metall: ihre Fenster, ihre Aussparung oder die Bauform berichtigen.</translation>
    </message>
    <message>
        <source>Fewer than three pan rail fasteners lie under the girdle: nothing holds it on the rail. Count the pan rail&apos;s fasteners again.</source>
        <translation>Weniger als drei Schrauben des Ölwannenflanschs liegen unter der Platte: nichts hält sie am Flansch. Die Schrauben des Flanschs noch einmal zählen.</translation>
    </message>
    <message>
        <source>The stud and cap at %1 need a stiffness above nothing.</source>
        <translation>Stehbolzen und Deckel an %1 brauchen eine Steifigkeit über null.</translation>
    </message>
    <message>
        <source>The girdle&apos;s plate is given as %1 thick: it must be from 0.03 to 1.5 in.</source>
        <translation>Die Dicke der Platte ist mit %1 angegeben: sie muss zwischen 0.03 und 1.5 in liegen.</translation>
    </message>
    <message>
        <source>The girdle&apos;s elastic modulus is given as %1 GPa: it must be from 34 to 276 GPa; steel has about 207, aluminium about 71.</source>
        <translation>Der Elastizitätsmodul der Platte ist mit %1 GPa angegeben: er muss zwischen 34 und 276 GPa liegen; Stahl hat etwa 207, Aluminium etwa 71.</translation>
    </message>
    <message>
        <source>The girdle&apos;s Poisson&apos;s ratio is given as %1: it must be from 0 to 0.49; steel has about 0.29, aluminium about 0.33.</source>
        <translation>Die Querkontraktionszahl der Platte ist mit %1 angegeben: sie muss zwischen 0 und 0.49 liegen; Stahl hat etwa 0.29, Aluminium etwa 0.33.</translation>
    </message>
    <message>
        <source>A stud&apos;s stiffness needs a preload and its stretch, both above nothing.</source>
        <translation>Die Steifigkeit eines Stehbolzens braucht eine Vorspannkraft und seine Längung, beide über null.</translation>
    </message>
    <message>
        <source>The joint&apos;s share of a stud must be from 0.05 to 0.95; 0.15 to 0.32 is usual.</source>
        <translation>Der Kraftanteil eines Stehbolzens muss zwischen 0.05 und 0.95 liegen; üblich ist 0.15 bis 0.32.</translation>
    </message>
    <message>
        <source>Least load needs the stiffness of the girdle: describe its plate first.</source>
        <translation>Kleinste Last braucht die Steifigkeit der Platte: zuerst die Platte beschreiben.</translation>
    </message>
    <message>
        <source>The stiffness must have one row and one column for each of the %1 positions.</source>
        <translation>Die Steifigkeit muss für jede der %1 Positionen eine Zeile und eine Spalte haben.</translation>
    </message>
    <message>
        <source>The stiffness holds something that is no number.</source>
        <translation>Die Steifigkeit enthält etwas, das keine Zahl ist.</translation>
    </message>
    <message>
        <source>The stiffness is not symmetric between the positions %1 and %2: what one does to the other must be the same both ways.</source>
        <translation>Die Steifigkeit ist zwischen den Positionen %1 und %2 nicht symmetrisch: was die eine mit der anderen macht, muss in beiden Richtungen gleich sein.</translation>
    </message>
    <message>
        <source>least load</source>
        <translation>kleinste Last</translation>
    </message>
    <message>
        <source>The girdle is taken for a thin elastic plate with sharp windows, flat before it was bolted down; the block for rigid.</source>
        <translation>Die Versteifungsplatte gilt als dünne elastische Platte mit scharfkantigen Fenstern, eben vor dem Anschrauben; der Block gilt als starr.</translation>
    </message>
    <message>
        <source>The largest bending stress is that outside all washers and half a corner&apos;s radius away from the corners of windows.</source>
        <translation>Die größte Biegespannung ist die außerhalb aller Unterlegscheiben und einen halben Eckenradius von den Ecken der Fenster entfernt.</translation>
    </message>
    <message>
        <source>Nobody counted the fasteners of the pan rail: a usual set is taken.</source>
        <translation>Niemand hat die Schrauben des Ölwannenflanschs gezählt: es gilt ein üblicher Satz.</translation>
    </message>
    <message>
        <source>What nobody measured of windows and overhang is in fair proportion to the layout, as drawn.</source>
        <translation>Was niemand an Fenstern und Überstand gemessen hat, steht in passendem Verhältnis zur Bauform, wie gezeichnet.</translation>
    </message>
    <message>
        <source>Where no stack is built the nut is taken to draw the plate down by the whole gap.</source>
        <translation>Wo kein Stapel aufgebaut ist, zieht die Mutter der Annahme nach die Platte um das ganze Spaltmaß nieder.</translation>
    </message>
    <message>
        <source>The uncertainties of the residuals are taken as independent of each other.</source>
        <translation>Die Unsicherheiten der Restmaße gelten als voneinander unabhängig.</translation>
    </message>
    <message>
        <source>It is advice, and no claim about what a block will stand.</source>
        <translation>Es ist ein Rat und keine Aussage darüber, was ein Block aushält.</translation>
    </message>
    <message>
        <source>The load in the block needs a layout: enter it under Engine.</source>
        <translation>Die Last im Block braucht eine Bauform: unter Motor eingeben.</translation>
    </message>
    <message>
        <source>The load in the block needs the girdle&apos;s thickness and metal: enter them with the layout under Engine.</source>
        <translation>Die Last im Block braucht Dicke und Metall der Platte: mit der Bauform unter Motor eingeben.</translation>
    </message>
    <message>
        <source>No load is known yet: no gap is accepted, or the stack is stale, at %1.</source>
        <translation>Noch ist keine Last bekannt: kein Spaltmaß ist angenommen, oder der Stapel ist veraltet, an %1.</translation>
    </message>
    <message>
        <source>Least load cannot be aimed at while nobody described the girdle&apos;s plate: the plan has the smallest residuals instead.</source>
        <translation>Kleinste Last ist kein Ziel, solange niemand die Platte beschrieben hat: der Plan hat stattdessen die kleinsten Restmaße.</translation>
    </message>
    <message>
        <source>girdle %1 thick</source>
        <translation>Platte %1 dick</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>aus %1</translation>
    </message>
    <message>
        <source>elastic modulus %1 MPa</source>
        <translation>Elastizitätsmodul %1 MPa</translation>
    </message>
    <message>
        <source>Poisson&apos;s ratio %1 thousandths</source>
        <translation>Poissonzahl %1 Tausendstel</translation>
    </message>
    <message>
        <source>windows %1 along</source>
        <translation>Fenster %1 längs</translation>
    </message>
    <message>
        <source>windows %1 across</source>
        <translation>Fenster %1 quer</translation>
    </message>
    <message>
        <source>%1 beyond the end nuts</source>
        <translation>%1 über die Endmuttern hinaus</translation>
    </message>
    <message>
        <source>plate modulus</source>
        <translation>Elastizitätsmodul der Platte</translation>
    </message>
    <message>
        <source>plate poisson</source>
        <translation>Querkontraktionszahl der Platte</translation>
    </message>
    <message>
        <source>Where a main fastener has neither the dimensions of its joint nor a stretch beside its torque, at %1, stud and cap are taken for a spring of %2, which makes the loads rather too large (common practice, no source).</source>
        <translation>Wo von einer Hauptlagerschraube weder die Maße ihrer Verbindung noch eine Längung neben ihrem Moment bekannt sind (%1), gelten Stehbolzen und Deckel als Feder von %2; das macht die Lasten eher zu groß (Praxisregel ohne Quelle).</translation>
    </message>
    <message>
        <source>every place</source>
        <translation>jede Stelle</translation>
    </message>
    <message>
        <source>Where only the stretch of a main fastener is known, its joint is taken to carry %1 of a load by the stud and the rest by what it clamps (common practice, no source).</source>
        <translation>Wo von einer Hauptlagerschraube nur die Längung bekannt ist, trägt ihre Verbindung der Annahme nach %1 einer Last mit dem Stehbolzen und den Rest mit dem, was er klemmt (Praxisregel ohne Quelle).</translation>
    </message>
    <message>
        <source>The pan rail holds it at height zero at %1 points; nuts pull it down onto the stacks.</source>
        <translation>Der Ölwannenflansch hält sie an %1 Punkten auf der Höhe null; Muttern ziehen sie auf die Stapel nieder.</translation>
    </message>
    <message>
        <source>Too few pan rail fasteners lie under the plate as the layout is drawn: the rail is taken to hold its four ends as well, which are among these points.</source>
        <translation>Nach der Zeichnung der Bauform liegen zu wenige Schrauben des Flanschs unter der Platte: es wird angenommen, dass der Flansch auch ihre vier Enden hält; sie zählen zu diesen Punkten.</translation>
    </message>
    <message>
        <source>The cutout at the oil pump&apos;s pickup is in fair proportion to the layout, as drawn: it is not asked for.</source>
        <translation>Der Ausschnitt am Ansaugrohr der Ölpumpe steht im üblichen Verhältnis zur Bauform, wie gezeichnet: nach ihm wird nicht gefragt.</translation>
    </message>
    <message>
        <source>At this temperature the oil has %1 mPa·s. No load is named, so no film is worked out: name the load on one bearing.</source>
        <translation>Bei dieser Temperatur hat das Öl %1 mPa·s. Es ist keine Last genannt, daher wird kein Film berechnet: die Last auf ein Lager nennen.</translation>
    </message>
    <message>
        <source>No clearance is measured with a micrometer yet: measure journals and bores first.</source>
        <translation>Noch ist kein Spiel mit der Messschraube gemessen: zuerst Zapfen und Bohrungen messen.</translation>
    </message>
    <message>
        <source>%1 is not a coefficient for %2: type millionths per kelvin, 11.4 for grey cast iron.</source>
        <translation>%1 ist kein Ausdehnungskoeffizient für %2: Millionstel je Kelvin eingeben, 11,4 für Grauguss.</translation>
    </message>
    <message>
        <source>%1 is not the oil&apos;s viscosity at %2: type mm²/s from its data sheet, a number above zero.</source>
        <translation>%1 ist keine Viskosität des Öls bei %2: mm²/s aus seinem Datenblatt eingeben, eine Zahl über null.</translation>
    </message>
    <message>
        <source>%1 holds no such row.</source>
        <translation>%1 enthält keine solche Zeile.</translation>
    </message>
    <message>
        <source>This names no database: give a service of ~/.pg_service.conf, or a URL such as postgresql://bench@server/caprail.</source>
        <translation>Das nennt keine Datenbank: einen Dienst aus ~/.pg_service.conf angeben oder eine URL wie postgresql://bench@server/caprail.</translation>
    </message>
    <message>
        <source>No database is named: give a service of ~/.pg_service.conf, or a URL such as postgresql://bench@server/caprail.</source>
        <translation>Es ist keine Datenbank genannt: einen Dienst aus ~/.pg_service.conf angeben oder eine URL wie postgresql://bench@server/caprail.</translation>
    </message>
    <message>
        <source>A password does not belong into the name of a database, which is kept and shown: write it into ~/.pgpass or the service file, readable by you alone.</source>
        <translation>Ein Passwort gehört nicht in den Namen einer Datenbank, der aufbewahrt und gezeigt wird: in ~/.pgpass oder die Dienstdatei schreiben, nur für Sie lesbar.</translation>
    </message>
    <message>
        <source>The name of the database holds a sign that it cannot have.</source>
        <translation>Der Name der Datenbank enthält ein Zeichen, das er nicht haben kann.</translation>
    </message>
    <message>
        <source>The database %1 took too long to answer: try again.</source>
        <translation>Die Datenbank %1 brauchte zu lange für eine Antwort: noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The database %1 was busy with the same records: try again.</source>
        <translation>Die Datenbank %1 war mit denselben Protokollen beschäftigt: noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The database %1 does not allow this (%2): its keeper gives the right.</source>
        <translation>Die Datenbank %1 erlaubt das nicht (%2): ihr Verwalter vergibt das Recht.</translation>
    </message>
    <message>
        <source>The database %1 only lets its records be read, for now or for ever.</source>
        <translation>Die Datenbank %1 lässt ihre Protokolle nur lesen, vorerst oder für immer.</translation>
    </message>
    <message>
        <source>The database %1 has no room left (%2): its keeper makes room.</source>
        <translation>Die Datenbank %1 hat keinen Platz mehr (%2): ihr Verwalter schafft Platz.</translation>
    </message>
    <message>
        <source>The database %1 has no tables for records, or other ones (%2): its keeper makes them.</source>
        <translation>Die Datenbank %1 hat keine Tabellen für Protokolle oder andere (%2): ihr Verwalter legt sie an.</translation>
    </message>
    <message>
        <source>The database %1 refused: %2.</source>
        <translation>Die Datenbank %1 lehnte ab: %2.</translation>
    </message>
    <message>
        <source>%1 is in use by another program: try again.</source>
        <translation>%1 wird von einem anderen Programm benutzt: noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1 cannot be used for want of memory: close other programs.</source>
        <translation>%1 kann aus Speichermangel nicht benutzt werden: andere Programme schließen.</translation>
    </message>
    <message>
        <source>%1 may not be written: check its rights.</source>
        <translation>%1 darf nicht beschrieben werden: Rechte prüfen.</translation>
    </message>
    <message>
        <source>%1 cannot be opened, read or written: check its disk and its rights.</source>
        <translation>%1 kann nicht geöffnet, gelesen oder geschrieben werden: Datenträger und Rechte prüfen.</translation>
    </message>
    <message>
        <source>%1 cannot be written, since the disk is full: make room.</source>
        <translation>%1 kann nicht geschrieben werden, weil der Datenträger voll ist: Platz schaffen.</translation>
    </message>
    <message>
        <source>%1 is damaged.</source>
        <translation>%1 ist beschädigt.</translation>
    </message>
    <message>
        <source>%1 cannot be used: %2.</source>
        <translation>%1 kann nicht benutzt werden: %2.</translation>
    </message>
    <message>
        <source>The database %1 lets nobody in like this: %2.</source>
        <translation>Die Datenbank %1 lässt so niemanden ein: %2.</translation>
    </message>
    <message>
        <source>This computer cannot speak with PostgreSQL: install the Debian package libqt6sql6-psql.</source>
        <translation>Dieser Rechner kann nicht mit PostgreSQL sprechen: das Debian-Paket libqt6sql6-psql installieren.</translation>
    </message>
    <message>
        <source>This computer cannot keep an index: install the Debian package libqt6sql6-sqlite.</source>
        <translation>Dieser Rechner kann kein Verzeichnis führen: das Debian-Paket libqt6sql6-sqlite installieren.</translation>
    </message>
    <message>
        <source>The list of records holds a row that no program of this version wrote.</source>
        <translation>Die Liste der Protokolle enthält eine Zeile, die kein Programm dieser Version schrieb.</translation>
    </message>
    <message>
        <source>A folder for what is fetched cannot be made: %1.</source>
        <translation>Ein Ordner für das Geholte kann nicht angelegt werden: %1.</translation>
    </message>
    <message>
        <source>%1 exists already: choose another name.</source>
        <translation>%1 gibt es schon: einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>%1: the bytes of the photo or file %2 do not fit their hash.</source>
        <translation>%1: Die Bytes des Fotos oder der Datei %2 passen nicht zu ihrer Prüfsumme.</translation>
    </message>
    <message>
        <source>%1: the seal of entry %2 does not fit: it, or the one before it, was altered after it was sealed.</source>
        <translation>%1: Das Siegel von Eintrag %2 passt nicht: er oder der davor wurde nach dem Siegeln verändert.</translation>
    </message>
    <message>
        <source>The database %1 holds no record with the seal or serial number “%2”.</source>
        <translation>Die Datenbank %1 enthält kein Protokoll mit dem Siegel oder der Seriennummer „%2“.</translation>
    </message>
    <message>
        <source>Several records of %1 are meant by “%2”: name one by its first seal: %3.</source>
        <translation>Mit „%2“ sind mehrere Protokolle von %1 gemeint: eines durch sein erstes Siegel nennen: %3.</translation>
    </message>
    <message>
        <source>The database %1 holds no record with this first seal.</source>
        <translation>Die Datenbank %1 enthält kein Protokoll mit diesem ersten Siegel.</translation>
    </message>
    <message>
        <source>The database %1 holds %2 entries of this record where it should hold %3, or they end in another seal: rows were removed or altered there.</source>
        <translation>Die Datenbank %1 enthält %2 Einträge dieses Protokolls, wo es %3 sein müssten, oder sie enden mit einem anderen Siegel: dort wurden Zeilen entfernt oder verändert.</translation>
    </message>
    <message>
        <source>The database %1 has entry %2 of this record where entry %3 must be, or its seal is another: rows were removed or altered there.</source>
        <translation>Die Datenbank %1 hat Eintrag %2 dieses Protokolls, wo Eintrag %3 stehen muss, oder sein Siegel ist ein anderes: dort wurden Zeilen entfernt oder verändert.</translation>
    </message>
    <message>
        <source>Fetching was stopped: nothing was made.</source>
        <translation>Das Holen wurde abgebrochen: es entstand nichts.</translation>
    </message>
    <message>
        <source>A record is named by its first seal, 64 hexadecimal digits, but “%1” is not.</source>
        <translation>Ein Protokoll wird durch sein erstes Siegel genannt, 64 hexadezimale Ziffern, aber „%1“ ist keines.</translation>
    </message>
    <message>
        <source>Publishing was stopped: nothing of this record was stored.</source>
        <translation>Das Veröffentlichen wurde abgebrochen: von diesem Protokoll wurde nichts gespeichert.</translation>
    </message>
    <message>
        <source>its history is not the one that %1 holds of the same record: they differ from entry %2 on. Nothing of it was stored; fetch the other one and compare the two.</source>
        <translation>Seine Geschichte ist nicht die, die %1 von demselben Protokoll enthält: sie unterscheiden sich ab Eintrag %2. Nichts davon wurde gespeichert; das andere holen und beide vergleichen.</translation>
    </message>
    <message>
        <source>%1 holds no entry yet: there is nothing to publish.</source>
        <translation>%1 enthält noch keinen Eintrag: es gibt nichts zu veröffentlichen.</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>after each change</source>
        <translation>nach jeder Änderung</translation>
    </message>
    <message>
        <source>every hour</source>
        <translation>jede Stunde</translation>
    </message>
    <message>
        <source>every day</source>
        <translation>jeden Tag</translation>
    </message>
    <message>
        <source>The database %1 does not keep this record: try again.</source>
        <translation>Die Datenbank %1 behält dieses Protokoll nicht: noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The database %1 is of a newer version of this program: bring this one up to date.</source>
        <translation>Die Datenbank %1 ist von einer neueren Version dieses Programms: dieses auf den neuen Stand bringen.</translation>
    </message>
    <message>
        <source>The tables of the database %1 were made by another edition of this program (%2): use that one.</source>
        <translation>Die Tabellen der Datenbank %1 hat eine andere Ausgabe dieses Programms angelegt (%2): diese benutzen.</translation>
    </message>
    <message>
        <source>The server of %1 is older than PostgreSQL 14: use a newer one.</source>
        <translation>Der Server von %1 ist älter als PostgreSQL 14: einen neueren benutzen.</translation>
    </message>
    <message>
        <source>The database %1 keeps texts in %2, which cannot hold every name: make one in UTF8.</source>
        <translation>Die Datenbank %1 hält Texte in %2, das nicht jeden Namen fassen kann: eine in UTF8 anlegen.</translation>
    </message>
    <message>
        <source>The database %1 has no tables for records: its keeper makes them with “caprail database make”.</source>
        <translation>Die Datenbank %1 hat keine Tabellen für Protokolle: ihr Verwalter legt sie mit „caprail database make“ an.</translation>
    </message>
    <message>
        <source>The database %1 is of an older version of this program: its keeper brings it up to date with “caprail database make”.</source>
        <translation>Die Datenbank %1 ist von einer älteren Version dieses Programms: ihr Verwalter bringt sie mit „caprail database make“ auf den neuen Stand.</translation>
    </message>
    <message>
        <source>%2 and another one are not at their specified value.</source>
        <translation>%2 und eine weitere sind nicht auf ihrem vorgegebenen Wert.</translation>
    </message>
    <message>
        <source>%2 and %1 others are not at their specified value.</source>
        <translation>%2 und %1 weitere sind nicht auf ihrem vorgegebenen Wert.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%2: %3. Another one is open.</source>
        <translation>%2: %3. Ein weiterer ist offen.</translation>
    </message>
    <message>
        <source>%2: %3. %1 others are open.</source>
        <translation>%2: %3. %1 weitere sind offen.</translation>
    </message>
    <message>
        <source>“%1” is not a moment on a clock: write it like 2026-05-04T09:30:00.</source>
        <translation>„%1“ ist kein Zeitpunkt einer Uhr: schreiben wie 2026-05-04T09:30:00.</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>aufgenommen</translation>
    </message>
    <message>
        <source>taken %1 by the camera&apos;s clock</source>
        <translation>aufgenommen %1 nach der Uhr der Kamera</translation>
    </message>
    <message>
        <source>feeler leaf</source>
        <translation>Blatt der Fühlerlehre</translation>
    </message>
    <message>
        <source>feeler leaf %1</source>
        <translation>Blatt der Fühlerlehre %1</translation>
    </message>
    <message>
        <source>%1 holds no record.</source>
        <translation>%1 enthält kein Protokoll.</translation>
    </message>
    <message>
        <source>The database %1 lacks the bytes of the photo or file “%2” of entry %3: publish the record again from its file.</source>
        <translation>Der Datenbank %1 fehlen die Bytes des Fotos oder der Datei „%2“ von Eintrag %3: das Protokoll aus seiner Datei noch einmal veröffentlichen.</translation>
    </message>
</context>
<context>
    <name>caprail::DatabaseModel</name>
    <message>
        <source>reading…</source>
        <translation>wird gelesen …</translation>
    </message>
</context>
<context>
    <name>caprail::DatabaseNotice</name>
    <message>
        <source>Try &amp;again</source>
        <translation>Noch ein&amp;mal versuchen</translation>
    </message>
    <message>
        <source>Waiting for %1…</source>
        <translation>Warten auf %1 …</translation>
    </message>
</context>
<context>
    <name>caprail::DatabaseWindow</name>
    <message>
        <source>&amp;Database…</source>
        <translation>&amp;Datenbank…</translation>
    </message>
    <message>
        <source>Shop&apos;s database — Caprail</source>
        <translation>Datenbank der Werkstatt — Caprail</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Protokolle</translation>
    </message>
    <message>
        <source>&amp;Shop</source>
        <translation>&amp;Werkstatt</translation>
    </message>
    <message>
        <source>Fetch and open the &amp;record…</source>
        <translation>P&amp;rotokoll holen und öffnen …</translation>
    </message>
    <message>
        <source>Open a &amp;database…</source>
        <translation>Eine &amp;Datenbank öffnen…</translation>
    </message>
    <message>
        <source>Open a &amp;folder…</source>
        <translation>Einen &amp;Ordner öffnen …</translation>
    </message>
    <message>
        <source>&amp;Look again</source>
        <translation>&amp;Noch einmal nachsehen</translation>
    </message>
    <message>
        <source>&amp;Search</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>Compare &amp;engines…</source>
        <translation>&amp;Motoren vergleichen…</translation>
    </message>
    <message>
        <source>Save the list as a &amp;table (CSV)…</source>
        <translation>Die Liste als &amp;Tabelle speichern (CSV)…</translation>
    </message>
    <message>
        <source>Close &amp;window</source>
        <translation>Fenster s&amp;chließen</translation>
    </message>
    <message>
        <source>A shop&apos;s database</source>
        <translation>Die Datenbank einer Werkstatt</translation>
    </message>
    <message>
        <source>A service of ~/.pg_service.conf, or a URL such as postgresql://bench@server/caprail. A password belongs into ~/.pgpass or the service file.</source>
        <translation>Ein Dienst aus ~/.pg_service.conf oder eine URL wie postgresql://bench@server/caprail. Ein Passwort gehört in ~/.pgpass oder die Dienstdatei.</translation>
    </message>
    <message>
        <source>Choose the database that the records are in.</source>
        <translation>Die Datenbank wählen, in der die Protokolle liegen.</translation>
    </message>
    <message>
        <source>Counting the records…</source>
        <translation>Die Protokolle werden gezählt …</translation>
    </message>
    <message>
        <source>Records: %1</source>
        <translation>Protokolle: %1</translation>
    </message>
    <message>
        <source>Records: %1 of %2</source>
        <translation>Protokolle: %1 von %2</translation>
    </message>
    <message>
        <source>Where the fetched record is to lie</source>
        <translation>Wohin das geholte Protokoll soll</translation>
    </message>
    <message>
        <source>Build records (*.caprail)</source>
        <translation>Aufbauprotokolle (*.caprail)</translation>
    </message>
    <message>
        <source>Fetching the record…</source>
        <translation>Das Protokoll wird geholt …</translation>
    </message>
    <message>
        <source>Caprail</source>
        <translation>Caprail</translation>
    </message>
    <message>
        <source>The list as a table</source>
        <translation>Die Liste als Tabelle</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>No record was published to this database yet.</source>
        <translation>In dieser Datenbank wurde noch kein Protokoll veröffentlicht.</translation>
    </message>
</context>
<context>
    <name>caprail::DiskBar</name>
    <message>
        <source>Screen and disk</source>
        <translation>Bildschirm und Datenträger</translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>Noch einmal vers&amp;uchen</translation>
    </message>
    <message>
        <source>Save a copy else&amp;where…</source>
        <translation>Eine &amp;Kopie anderswo speichern…</translation>
    </message>
    <message>
        <source>&amp;Understood</source>
        <translation>&amp;Verstanden</translation>
    </message>
    <message>
        <source>Writes everything, what waits included, to another place and goes on there</source>
        <translation>Schreibt alles, auch was wartet, an einen anderen Ort und macht dort weiter</translation>
    </message>
    <message>
        <source>Not on the disk: %1. What was entered is kept here, in order, until it is stored.</source>
        <translation>Nicht auf dem Datenträger: %1. Was eingegeben wurde, bleibt hier der Reihe nach, bis es gespeichert ist.</translation>
    </message>
    <message>
        <source>•  and more: %1</source>
        <translation>•  und weitere: %1</translation>
    </message>
    <message>
        <source>Save everything elsewhere and go on there</source>
        <translation>Alles anderswo speichern und dort weitermachen</translation>
    </message>
    <message>
        <source>Build records (*.caprail)</source>
        <translation>Aufbauprotokolle (*.caprail)</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>Saved without some photos</source>
        <translation>Ohne einige Fotos gespeichert</translation>
    </message>
    <message>
        <source>Ta&amp;ke it over…</source>
        <translation>Über&amp;nehmen…</translation>
    </message>
    <message>
        <source>Take the record over</source>
        <translation>Das Protokoll übernehmen</translation>
    </message>
    <message>
        <source>Where it is open now nothing more can be entered then, and what is typed there and not stored is lost. Take it over only when nobody works there. Take it over?</source>
        <translation>Wo es jetzt geöffnet ist, kann dann nichts mehr eingetragen werden, und was dort getippt und nicht gespeichert ist, geht verloren. Nur übernehmen, wenn dort niemand arbeitet. Übernehmen?</translation>
    </message>
</context>
<context>
    <name>caprail::EngineBands</name>
    <message>
        <source>piston to bore</source>
        <translation>Kolben zu Bohrung</translation>
    </message>
    <message>
        <source>ring gap</source>
        <translation>Stoßspiel</translation>
    </message>
    <message>
        <source>deck height</source>
        <translation>Deckhöhe</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>choose, or name a fit of your own</source>
        <translation>wählen oder eine eigene Passung benennen</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Zielwert</translation>
    </message>
    <message>
        <source>may be left empty</source>
        <translation>darf leer bleiben</translation>
    </message>
    <message>
        <source>Who says so</source>
        <translation>Angabe von</translation>
    </message>
    <message>
        <source>part maker&apos;s sheet, person, common practice</source>
        <translation>Datenblatt des Teileherstellers, Person, gängige Praxis</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Coverage</source>
        <translation>Erweiterungsfaktor</translation>
    </message>
    <message>
        <source>Repeat limit</source>
        <translation>Wiederholgrenze</translation>
    </message>
    <message>
        <source>Passes, at least</source>
        <translation>Durchgänge, mindestens</translation>
    </message>
    <message>
        <source>Kit tolerance</source>
        <translation>Toleranz des Satzes</translation>
    </message>
    <message>
        <source>Shims per stack, at most</source>
        <translation>Distanzscheiben je Stapel, höchstens</translation>
    </message>
    <message>
        <source>Plan aims for</source>
        <translation>Der Plan strebt an</translation>
    </message>
    <message>
        <source>Torque scatter, %</source>
        <translation>Drehmomentstreuung, %</translation>
    </message>
    <message>
        <source>Counterweight clear by</source>
        <translation>Gegengewichte frei, mindestens</translation>
    </message>
    <message>
        <source>Bands</source>
        <translation>Bänder</translation>
    </message>
    <message>
        <source>Store &amp;band</source>
        <translation>Band s&amp;peichern</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>Store &amp;rules</source>
        <translation>&amp;Regeln speichern</translation>
    </message>
    <message>
        <source>&amp;New fit of the shop&apos;s own</source>
        <translation>&amp;Neue eigene Passung der Werkstatt</translation>
    </message>
    <message>
        <source>Guarded: a value counts as in only when it lies in the band with its whole uncertainty. Simple: the value alone decides. The sheet says which rule was used. A band that is changed makes stale what was judged by it.</source>
        <translation>Mit Sicherheitsband: ein Wert gilt nur dann als innerhalb, wenn er mit seiner ganzen Unsicherheit im Band liegt. Einfach: der Wert allein entscheidet. Das Blatt sagt, welche Regel galt. Wird ein Band geändert, ist veraltet, was nach diesem Band beurteilt wurde.</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>nicht festgelegt</translation>
    </message>
    <message>
        <source>These are the program&apos;s own starting values; nobody has entered or confirmed any yet.</source>
        <translation>Das sind die Anfangswerte des Programms; noch wurde keiner eingetragen.</translation>
    </message>
    <message>
        <source>Common practice, no source, for a journal of %1: %2 to %3.</source>
        <translation>Gängige Praxis, ohne Quelle, für einen Zapfen von %1: %2 bis %3.</translation>
    </message>
    <message>
        <source>Common practice, no source: 0.00075 to 0.0010 per inch of journal diameter.</source>
        <translation>Gängige Praxis, ohne Quelle: 0.00075 bis 0.0010 je Zoll Zapfendurchmesser.</translation>
    </message>
    <message>
        <source>A second person verifies</source>
        <translation>Eine zweite Person prüft</translation>
    </message>
    <message>
        <source>A second person signs off</source>
        <translation>Eine zweite Person zeichnet ab</translation>
    </message>
    <message>
        <source>Pickup tube clear by</source>
        <translation>Ölansaugrohr frei um</translation>
    </message>
    <message>
        <source>empty: 0.100 in, common practice</source>
        <translation>leer: 0.100 in, üblich</translation>
    </message>
    <message>
        <source>Dipstick clear by</source>
        <translation>Ölmessstab frei um</translation>
    </message>
    <message>
        <source>empty: 0.060 in, common practice</source>
        <translation>leer: 0.060 in, üblich</translation>
    </message>
    <message>
        <source>Turning torque up by, at most</source>
        <translation>Durchdrehmoment steigt höchstens um</translation>
    </message>
    <message>
        <source>empty: 2 lbf·ft, common practice</source>
        <translation>leer: 2 lbf·ft, üblich</translation>
    </message>
</context>
<context>
    <name>caprail::EngineLayoutPage</name>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>what it is, in a few words</source>
        <translation>was es ist, in wenigen Worten</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Main caps</source>
        <translation>Hauptlagerdeckel</translation>
    </message>
    <message>
        <source>Cap to cap</source>
        <translation>Deckel zu Deckel</translation>
    </message>
    <message>
        <source>Fasteners per cap</source>
        <translation>Verschraubungen je Deckel</translation>
    </message>
    <message>
        <source>Studs, left to right</source>
        <translation>Stehbolzen, links zu rechts</translation>
    </message>
    <message>
        <source>Girdle sits on</source>
        <translation>Platte sitzt auf</translation>
    </message>
    <message>
        <source>Outer studs apart</source>
        <translation>Abstand äußere Stehbolzen</translation>
    </message>
    <message>
        <source>Girdle from cap</source>
        <translation>Platte ab Deckel</translation>
    </message>
    <message>
        <source>Pan rails apart</source>
        <translation>Abstand Ölwannenflansche</translation>
    </message>
    <message>
        <source>Girdle to cap</source>
        <translation>Platte bis Deckel</translation>
    </message>
    <message>
        <source>Pickup at cap</source>
        <translation>Ölansaugrohr an Deckel</translation>
    </message>
    <message>
        <source>Rods</source>
        <translation>Pleuel</translation>
    </message>
    <message>
        <source>Pickup side</source>
        <translation>Seite des Ölansaugrohrs</translation>
    </message>
    <message>
        <source>Crank throws</source>
        <translation>Kröpfungen</translation>
    </message>
    <message>
        <source>Dipstick at cap</source>
        <translation>Ölmessstab an Deckel</translation>
    </message>
    <message>
        <source>Dipstick side</source>
        <translation>Seite des Ölmessstabs</translation>
    </message>
    <message>
        <source>Who says so</source>
        <translation>Angabe von</translation>
    </message>
    <message>
        <source>The engine</source>
        <translation>Der Motor</translation>
    </message>
    <message>
        <source>Its bottom end</source>
        <translation>Sein Kurbeltrieb</translation>
    </message>
    <message>
        <source>Store &amp;layout</source>
        <translation>Motorbau&amp;form speichern</translation>
    </message>
    <message>
        <source>Advice on when to consider a girdle</source>
        <translation>Rat, wann eine Versteifungsplatte zu erwägen ist</translation>
    </message>
    <message>
        <source>The figures are set under Edit ▸ Preferences</source>
        <translation>Die Zahlen werden unter Bearbeiten ▸ Einstellungen festgelegt</translation>
    </message>
    <message>
        <source>Nothing is stored yet: correct these starting values and store them.</source>
        <translation>Noch ist nichts gespeichert: diese Anfangswerte berichtigen und speichern.</translation>
    </message>
    <message>
        <source>As typed, not stored yet</source>
        <translation>Wie eingegeben, noch nicht gespeichert</translation>
    </message>
    <message>
        <source>Telephone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>for the customer&apos;s sheet</source>
        <translation>für das Blatt des Kunden</translation>
    </message>
    <message>
        <source>Its address</source>
        <translation>Ihre Anschrift</translation>
    </message>
    <message>
        <source>Girdle thickness</source>
        <translation>Dicke der Platte</translation>
    </message>
    <message>
        <source>Girdle is of</source>
        <translation>Platte aus</translation>
    </message>
    <message>
        <source>Modulus, MPa</source>
        <translation>Ihr E-Modul, MPa</translation>
    </message>
    <message>
        <source>by its metal</source>
        <translation>nach dem Metall</translation>
    </message>
    <message>
        <source>Poisson, 1/1000</source>
        <translation>Querkontraktion, 1/1000</translation>
    </message>
    <message>
        <source>Windows, along</source>
        <translation>Fenster längs</translation>
    </message>
    <message>
        <source>as drawn</source>
        <translation>wie gezeichnet</translation>
    </message>
    <message>
        <source>Windows, across</source>
        <translation>Fenster quer</translation>
    </message>
    <message>
        <source>Past the end nuts</source>
        <translation>Über die letzten Muttern</translation>
    </message>
    <message>
        <source>The plan as it lies on the stand, drawn from what is typed. Left and right are as seen from the flywheel end with the engine the right way up. Lengths in plan serve the drawing, the flushness and the load in the block.</source>
        <translation>Die Draufsicht, wie der Motor auf dem Montagebock liegt, gezeichnet aus den Eingaben. Links und rechts gelten vom Schwungradende aus gesehen, bei aufrecht stehendem Motor. Längen in der Draufsicht dienen der Zeichnung, der Bündigkeit und der Last im Block.</translation>
    </message>
    <message>
        <source>Store engi&amp;ne</source>
        <translation>Mo&amp;tor speichern</translation>
    </message>
</context>
<context>
    <name>caprail::EngineOwnChecks</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>without spaces: windage-tray</source>
        <translation>ohne Leerzeichen: oelhobel</translation>
    </message>
    <message>
        <source>What is looked at</source>
        <translation>Was nachgesehen wird</translation>
    </message>
    <message>
        <source>in your own words</source>
        <translation>in eigenen Worten</translation>
    </message>
    <message>
        <source>Answered by</source>
        <translation>Beantwortet durch</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Stellen</translation>
    </message>
    <message>
        <source>0 withdraws it</source>
        <translation>0 zieht sie zurück</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Hält auf</translation>
    </message>
    <message>
        <source>Which step</source>
        <translation>Welcher Schritt</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>measured ones only</source>
        <translation>nur bei gemessenen</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Who says so</source>
        <translation>Angabe von</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <translation>%1, %2 bis %3</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>zurückgezogen</translation>
    </message>
    <message>
        <source>The shop&apos;s own checks</source>
        <translation>Eigene Prüfungen der Werkstatt</translation>
    </message>
    <message>
        <source>Store &amp;check</source>
        <translation>&amp;Prüfung speichern</translation>
    </message>
    <message>
        <source>&amp;New check of the shop&apos;s own</source>
        <translation>&amp;Neue eigene Prüfung</translation>
    </message>
    <message>
        <source>Windage tray, pump and pickup bolts, rear main seal, oil-way plugs, blind holes dry: what the shop looks at besides. A check holds the trial fit, closing, or one closing step until it is good at every place. Saved with a template, it is asked on every engine made from it.</source>
        <translation>Ölhobel, Schrauben von Pumpe und Ansaugung, hinterer Wellendichtring, Stopfen der Ölkanäle, trockene Sacklöcher: was die Werkstatt außerdem nachsieht. Eine Prüfung hält die Probemontage, das Schließen oder einen Schließschritt auf, bis sie an jeder Stelle gut ist. Mit einer Vorlage gespeichert, wird sie bei jedem Motor daraus gefragt.</translation>
    </message>
</context>
<context>
    <name>caprail::EngineParts</name>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Which one</source>
        <translation>Welches</translation>
    </message>
    <message>
        <source>where there are several: assembly oil</source>
        <translation>wo es mehrere gibt: Montageöl</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Cast or stamped</source>
        <translation>Guss- oder Prägenummer</translation>
    </message>
    <message>
        <source>Fitted at</source>
        <translation>Eingebaut an</translation>
    </message>
    <message>
        <source>3R, main-3, main-3R; empty: the engine</source>
        <translation>3R, main-3, main-3R; leer: der Motor</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>Tightened before</source>
        <translation>Zuvor angezogen</translation>
    </message>
    <message>
        <source>times; used fasteners</source>
        <translation>mal; gebrauchte Verschraubungen</translation>
    </message>
    <message>
        <source>Machined</source>
        <translation>Bearbeitet</translation>
    </message>
    <message>
        <source>honed, ground 0.010 under</source>
        <translation>gehont, 0.010 Untermaß geschliffen</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>2026-05-04</source>
        <translation>2026-05-04</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>At</source>
        <translation>An</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>used</source>
        <translation>gebraucht</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Photo of its number…</source>
        <translation>Foto seiner Nummer …</translation>
    </message>
    <message>
        <source>No part was entered yet. A lot or a serial number entered here is found in the shop&apos;s search.</source>
        <translation>Noch ist kein Teil eingetragen. Eine Charge oder Seriennummer von hier findet die Suche der Werkstatt.</translation>
    </message>
    <message>
        <source>&amp;New part</source>
        <translation>&amp;Neues Teil</translation>
    </message>
    <message>
        <source>Store par&amp;t</source>
        <translation>&amp;Teil speichern</translation>
    </message>
</context>
<context>
    <name>caprail::EnginePeople</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>without spaces: MIC-1</source>
        <translation>ohne Leerzeichen: MIC-1</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Limit of error ±</source>
        <translation>Fehlergrenze ±</translation>
    </message>
    <message>
        <source>gauges: half-width</source>
        <translation>Messmittel: halbe Breite</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Kalibriert am</translation>
    </message>
    <message>
        <source>2026-05-04</source>
        <translation>2026-05-04</translation>
    </message>
    <message>
        <source>Wrench from</source>
        <translation>Schlüssel ab</translation>
    </message>
    <message>
        <source>empty: 20 % of the largest</source>
        <translation>leer: 20 % des größten</translation>
    </message>
    <message>
        <source>Due on</source>
        <translation>Fällig am</translation>
    </message>
    <message>
        <source>wrenches, empty: a year later</source>
        <translation>Schlüssel, leer: ein Jahr später</translation>
    </message>
    <message>
        <source>Wrench up to</source>
        <translation>Schlüssel bis</translation>
    </message>
    <message>
        <source>Due after pulls</source>
        <translation>Fällig nach Lastspielen</translation>
    </message>
    <message>
        <source>wrenches, empty: 5000</source>
        <translation>Schlüssel, leer: 5000</translation>
    </message>
    <message>
        <source>Pulls before now</source>
        <translation>Lastspiele bisher</translation>
    </message>
    <message>
        <source>since the calibration</source>
        <translation>seit der Kalibrierung</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>A person</source>
        <translation>Eine Person</translation>
    </message>
    <message>
        <source>assembler</source>
        <translation>Monteur</translation>
    </message>
    <message>
        <source>machinist</source>
        <translation>Zerspaner</translation>
    </message>
    <message>
        <source>checker</source>
        <translation>Prüfer</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>Error / range</source>
        <translation>Fehler / Bereich</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Kalibriert</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>An instrument, or a new calibration of one</source>
        <translation>Ein Messmittel oder eine neue Kalibrierung</translation>
    </message>
    <message>
        <source>Store &amp;instrument</source>
        <translation>Messmi&amp;ttel speichern</translation>
    </message>
    <message>
        <source>Ne&amp;w instrument</source>
        <translation>&amp;Neues Messmittel</translation>
    </message>
    <message>
        <source>✓ no remark</source>
        <translation>✓ ohne Bemerkung</translation>
    </message>
    <message>
        <source>Smallest step</source>
        <translation>Kleinster Schritt</translation>
    </message>
    <message>
        <source>that it is read to</source>
        <translation>auf den abgelesen wird</translation>
    </message>
    <message>
        <source>Set with</source>
        <translation>Eingestellt mit</translation>
    </message>
    <message>
        <source>bore gauges: the micrometer</source>
        <translation>Innenmessgeräte: die Messschraube</translation>
    </message>
    <message>
        <source>Corrects</source>
        <translation>Berichtigt</translation>
    </message>
    <message>
        <source>empty: it holds from now on</source>
        <translation>leer: gilt ab jetzt</translation>
    </message>
    <message>
        <source>Feel, due</source>
        <translation>Gefühl, fällig</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>MIC-1</source>
        <translation>MIC-1</translation>
    </message>
    <message>
        <source>Standard</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>setting rod no. 4</source>
        <translation>Einstellmaß Nr. 4</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Es misst</translation>
    </message>
    <message>
        <source>0 for closed anvils</source>
        <translation>0 bei geschlossenen Messflächen</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>may be left empty</source>
        <translation>darf leer bleiben</translation>
    </message>
    <message>
        <source>A zero check, on the standard</source>
        <translation>Nullpunktprüfung, am Normal</translation>
    </message>
    <message>
        <source>Store &amp;zero check</source>
        <translation>N&amp;ullpunktprüfung speichern</translation>
    </message>
    <message>
        <source>Store pe&amp;rson</source>
        <translation>&amp;Person speichern</translation>
    </message>
</context>
<context>
    <name>caprail::EngineStation</name>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Engine and layout</source>
        <translation>Motor und Bauform</translation>
    </message>
    <message>
        <source>Bands and rules</source>
        <translation>Bänder und Regeln</translation>
    </message>
    <message>
        <source>People and instruments</source>
        <translation>Personen und Messmittel</translation>
    </message>
    <message>
        <source>Own checks</source>
        <translation>Eigene Prüfungen</translation>
    </message>
    <message>
        <source>Whose figures</source>
        <translation>Wessen Angaben</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Whose engine this is, where its caps and fasteners lie, the bands that it is judged by, the people who work on it and their instruments, whose figures the values are, and the parts. All of these are entries: changing a band in mid-build makes earlier results stale.</source>
        <translation>Wessen Motor es ist, wo seine Deckel und Verschraubungen liegen, die Bänder, nach denen er beurteilt wird, die Personen, die daran arbeiten, und ihre Messmittel, wessen Angaben die Werte sind, und die Teile. Alles sind Einträge: ein Band, das mitten im Aufbau geändert wird, lässt veralten, was danach beurteilt wurde.</translation>
    </message>
</context>
<context>
    <name>caprail::EngineValues</name>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Maß</translation>
    </message>
    <message>
        <source>Whose figure it is</source>
        <translation>Wessen Angabe es ist</translation>
    </message>
    <message>
        <source>the program&apos;s own default</source>
        <translation>Vorgabe des Programms</translation>
    </message>
    <message>
        <source>Confirmed</source>
        <translation>Bestätigt</translation>
    </message>
    <message>
        <source>by nobody</source>
        <translation>von niemandem</translation>
    </message>
    <message>
        <source>when it was set</source>
        <translation>beim Festlegen</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>Values and whose they are</source>
        <translation>Werte, und wessen sie sind</translation>
    </message>
    <message>
        <source>&amp;Confirm this value</source>
        <translation>Diesen Wert bes&amp;tätigen</translation>
    </message>
    <message>
        <source>the maker&apos;s sheet, a drawing, a person by name</source>
        <translation>Datenblatt des Herstellers, Zeichnung, Person mit Namen</translation>
    </message>
    <message>
        <source>Somebody has said of every value whose figure it is.</source>
        <translation>Von jedem Wert hat jemand gesagt, wessen Angabe es ist.</translation>
    </message>
</context>
<context>
    <name>caprail::EntriesModel</name>
    <message>
        <source>Entry</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>What was seen or done</source>
        <translation>Gesehen oder getan</translation>
    </message>
    <message>
        <source>Struck by entry %1 (%2): %3</source>
        <translation>Gestrichen durch Eintrag %1 (%2): %3</translation>
    </message>
    <message>
        <source>(struck by entry %1)</source>
        <translation>(gestrichen durch Eintrag %1)</translation>
    </message>
</context>
<context>
    <name>caprail::EntriesTable</name>
    <message>
        <source>No entry yet. What is entered here will be listed with its number; Delete strikes it.</source>
        <translation>Noch kein Eintrag. Was hier eingegeben wird, steht dann mit seiner Nummer in der Liste; Entf streicht es.</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Einträge</translation>
    </message>
    <message>
        <source>Strike entry %1</source>
        <translation>Eintrag %1 streichen</translation>
    </message>
    <message>
        <source>Strike entry %1…</source>
        <translation>Eintrag %1 streichen…</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message numerus="yes">
        <source>Why are these %n entries withdrawn? They stay readable, struck through.</source>
        <translation>
            <numerusform>Warum wird dieser %n Eintrag zurückgezogen? Er bleibt lesbar, durchgestrichen.</numerusform>
            <numerusform>Warum werden diese %n Einträge zurückgezogen? Sie bleiben lesbar, durchgestrichen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>… and %n more.</source>
        <translation>
            <numerusform>… und %n weiterer.</numerusform>
            <numerusform>… und %n weitere.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Strike %n entries</source>
        <translation>
            <numerusform>%n Eintrag streichen</numerusform>
            <numerusform>%n Einträge streichen</numerusform>
        </translation>
    </message>
    <message>
        <source>Why is this entry withdrawn? It stays readable, struck through.</source>
        <translation>Warum wird dieser Eintrag zurückgezogen? Er bleibt lesbar, durchgestrichen.</translation>
    </message>
    <message numerus="yes">
        <source>Strike these %n entries…</source>
        <translation>
            <numerusform>Diesen %n Eintrag streichen…</numerusform>
            <numerusform>Diese %n Einträge streichen…</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>caprail::EntryField</name>
    <message>
        <source>Enter this value</source>
        <translation>Diesen Wert eintragen</translation>
    </message>
    <message>
        <source>Read as %1</source>
        <translation>Gelesen als %1</translation>
    </message>
    <message>
        <source>%1 came from the gauge, but “%2” stands here and is not stored: store it with Enter or empty the field with Esc, then press the gauge&apos;s button again.</source>
        <translation>%1 kam vom Messmittel, aber hier steht „%2“ und ist nicht gespeichert: mit Enter speichern oder das Feld mit Esc leeren, dann den Knopf des Messmittels noch einmal drücken.</translation>
    </message>
    <message>
        <source>%1 came from “%2”, which this record does not know: add it at the engine station, under the same name, or say under Instruments ▸ Gauges on this computer which instrument it is.</source>
        <translation>%1 kam von „%2“, das dieses Protokoll nicht kennt: an der Station Motor unter demselben Namen hinzufügen oder unter Messmittel ▸ Messmittel an diesem Rechner angeben, welches es ist.</translation>
    </message>
</context>
<context>
    <name>caprail::EntryForm</name>
    <message>
        <source>Not stored yet: Enter stores, Esc puts the recorded values back.</source>
        <translation>Noch nicht gespeichert: Enter speichert, Esc stellt die eingetragenen Werte wieder her.</translation>
    </message>
</context>
<context>
    <name>caprail::FastenersClamp</name>
    <message>
        <source>Turn it a little further, slowly, and note the torque; then back, slowly, and note that. It is loose then: tighten it again. A fastener by angle, to yield or by stretch is not tried so.</source>
        <translation>Langsam ein wenig weiterdrehen und das Moment ablesen; dann langsam zurück, und das ablesen. Danach ist sie lose: wieder anziehen. Nach Winkel, bis zur Streckgrenze oder nach Längung angezogene Schrauben werden so nicht geprüft.</translation>
    </message>
    <message>
        <source>What it clamps with</source>
        <translation>Womit sie klemmt</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>lose</translation>
    </message>
    <message>
        <source>Its clamp was not checked.</source>
        <translation>Ihre Klemmkraft wurde nicht geprüft.</translation>
    </message>
    <message>
        <source>Torque on / torque off, as 80 / 56</source>
        <translation>Moment anziehend / lösend, wie 80 / 56</translation>
    </message>
    <message>
        <source>Tighten it as specified first</source>
        <translation>Zuerst wie vorgegeben anziehen</translation>
    </message>
    <message>
        <source>on %1, off %2</source>
        <translation>anziehend %1, lösend %2</translation>
    </message>
    <message>
        <source>the torque that turns it on</source>
        <translation>das Moment beim Anziehen</translation>
    </message>
    <message>
        <source>the torque that turns it back, behind a /</source>
        <translation>das Moment beim Lösen, hinter einem /</translation>
    </message>
</context>
<context>
    <name>caprail::FastenersGroupParts</name>
    <message>
        <source>&amp;Join back</source>
        <translation>&amp;Zurückführen</translation>
    </message>
    <message>
        <source>What a touch takes</source>
        <translation>Was eine Berührung nimmt</translation>
    </message>
    <message>
        <source>name, as rear cap</source>
        <translation>Name, etwa hinterer Deckel</translation>
    </message>
    <message>
        <source>Name of the new group</source>
        <translation>Name der neuen Gruppe</translation>
    </message>
    <message>
        <source>Touch the places on the diagram that get a specification of their own (or walk with the arrow keys and press Enter), name them, and store</source>
        <translation>Auf der Zeichnung die Stellen berühren, die eine eigene Vorgabe bekommen (oder mit den Pfeiltasten gehen und Eingabe drücken), benennen und speichern</translation>
    </message>
    <message>
        <source>These places go back to the wider group, with what it specifies</source>
        <translation>Diese Stellen kehren in die größere Gruppe zurück, mit deren Vorgabe</translation>
    </message>
    <message>
        <source>Leave them together</source>
        <translation>Zusammen lassen</translation>
    </message>
    <message>
        <source>Store the split: %1</source>
        <translation>Abtrennen: %1</translation>
    </message>
    <message>
        <source>Split &amp;off places</source>
        <translation>Stellen abt&amp;rennen</translation>
    </message>
</context>
<context>
    <name>caprail::FastenersGroups</name>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Only the pair</source>
        <translation>Nur das Paar</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>7/16-20, M10x1.5</source>
        <translation>7/16-20, M10x1.5</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Festigkeitsklasse</translation>
    </message>
    <message>
        <source>Lubricant</source>
        <translation>Schmierstoff</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>Then angle</source>
        <translation>Dann Winkel</translation>
    </message>
    <message>
        <source>Stretch</source>
        <translation>Längung</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Who says so</source>
        <translation>Angabe von</translation>
    </message>
    <message>
        <source>Sequence</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>empty: from the centre outwards</source>
        <translation>leer: von der Mitte nach außen</translation>
    </message>
    <message>
        <source>Fastener groups</source>
        <translation>Schraubengruppen</translation>
    </message>
    <message>
        <source>Specified</source>
        <translation>Vorgegeben</translation>
    </message>
    <message>
        <source>A group</source>
        <translation>Eine Gruppe</translation>
    </message>
    <message>
        <source>Set the sequence on the &amp;diagram</source>
        <translation>Reihenfolge in der Zei&amp;chnung festlegen</translation>
    </message>
    <message>
        <source>Wrench length</source>
        <translation>Schlüssellänge</translation>
    </message>
    <message>
        <source>Extension</source>
        <translation>Verlängerung</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>Working of the preload</source>
        <translation>Rechenweg der Vorspannkraft</translation>
    </message>
    <message>
        <source>Touch the fasteners in the order of tightening (or walk with the arrow keys and press Enter). Those left out come last, from the centre outwards.</source>
        <translation>Die Verschraubungen in der Reihenfolge des Anziehens antippen (oder mit den Pfeiltasten wählen und Enter drücken). Ausgelassene kommen zuletzt, von der Mitte nach außen.</translation>
    </message>
    <message>
        <source>What it comes to</source>
        <translation>Was daraus folgt</translation>
    </message>
    <message>
        <source>Wrench with an extension (0° straight on, 90° square)</source>
        <translation>Schlüssel mit Verlängerung (0° gerade, 90° rechtwinklig)</translation>
    </message>
    <message>
        <source>Sequence: %1</source>
        <translation>Reihenfolge: %1</translation>
    </message>
    <message>
        <source>The part maker&apos;s instructions come first.</source>
        <translation>Die Anweisungen des Teileherstellers gehen vor.</translation>
    </message>
    <message>
        <source>Set the engine layout at the engine station: the fasteners follow from it.</source>
        <translation>Die Motorbauform an der Station Motor festlegen: die Verschraubungen folgen daraus.</translation>
    </message>
    <message>
        <source>The sequence is right</source>
        <translation>Die Reihenfolge ist, wie sie sein soll</translation>
    </message>
    <message>
        <source>What is there</source>
        <translation>Was dort sitzt</translation>
    </message>
    <message>
        <source>Stretch within ±</source>
        <translation>Längung innerhalb ±</translation>
    </message>
    <message>
        <source>0.0003 in</source>
        <translation>0,0003 in</translation>
    </message>
    <message>
        <source>Verified by</source>
        <translation>Geprüft an</translation>
    </message>
    <message>
        <source>Used once</source>
        <translation>Nur einmal</translation>
    </message>
    <message>
        <source>Grip</source>
        <translation>Klemmlänge</translation>
    </message>
    <message>
        <source>clamped length</source>
        <translation>geklemmte Länge</translation>
    </message>
    <message>
        <source>Shank</source>
        <translation>Schaft</translation>
    </message>
    <message>
        <source>diameter without thread</source>
        <translation>Durchmesser ohne Gewinde</translation>
    </message>
    <message>
        <source>Thread in grip</source>
        <translation>Gewinde darin</translation>
    </message>
    <message>
        <source>It clamps</source>
        <translation>Sie klemmt</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Stellen</translation>
    </message>
    <message>
        <source>not specified yet</source>
        <translation>noch nicht vorgegeben</translation>
    </message>
    <message>
        <source>goes into the new group</source>
        <translation>kommt in die neue Gruppe</translation>
    </message>
    <message>
        <source>stays</source>
        <translation>bleibt</translation>
    </message>
    <message>
        <source>or the proof stress: 170 ksi</source>
        <translation>oder die Prüfspannung: 170 ksi</translation>
    </message>
    <message>
        <source>Store gro&amp;up</source>
        <translation>&amp;Gruppe speichern</translation>
    </message>
</context>
<context>
    <name>caprail::FastenersStation</name>
    <message>
        <source>Tighten</source>
        <translation>Anziehen</translation>
    </message>
    <message>
        <source>Verify round</source>
        <translation>Prüfrunde</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation>Gruppen</translation>
    </message>
    <message>
        <source>Set the engine layout at the engine station: the fasteners follow from it.</source>
        <translation>Die Motorbauform an der Station Motor festlegen: die Verschraubungen folgen daraus.</translation>
    </message>
    <message>
        <source>What each group is tightened to, and what each fastener was tightened to. A verify round goes over every main-cap and rod fastener again with the stacks off, without backing them off: it held, or it moved by an angle. One that moved makes the gaps of its cap stale.</source>
        <translation>Worauf jede Gruppe angezogen wird und worauf jede Verschraubung angezogen wurde. Eine Prüfrunde geht bei abgenommenen Stapeln noch einmal über jede Verschraubung von Hauptlagerdeckeln und Pleueln, ohne sie zurückzudrehen: sie hielt, oder sie drehte sich um einen Winkel weiter. Eine, die sich weiterdrehte, lässt die Spaltmaße ihres Deckels veralten.</translation>
    </message>
    <message>
        <source>Clamp check</source>
        <translation>Klemmkraft</translation>
    </message>
</context>
<context>
    <name>caprail::FastenersTighten</name>
    <message>
        <source>&amp;Loosened</source>
        <translation>&amp;Gelöst</translation>
    </message>
    <message>
        <source>Main caps</source>
        <translation>Hauptlagerdeckel</translation>
    </message>
    <message>
        <source>Rods</source>
        <translation>Pleuel</translation>
    </message>
    <message>
        <source>Girdle nuts</source>
        <translation>Plattenmuttern</translation>
    </message>
    <message>
        <source>Pan rail</source>
        <translation>Ölwannenflansch</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Rear</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <source>Which fasteners</source>
        <translation>Welche Verschraubungen</translation>
    </message>
    <message>
        <source>The fastener was loosened: what rests on it becomes stale</source>
        <translation>Die Verschraubung wurde gelöst: was darauf beruht, ist dann veraltet</translation>
    </message>
    <message>
        <source>round %1: %2</source>
        <translation>Runde %1: %2</translation>
    </message>
    <message>
        <source>loosened</source>
        <translation>gelöst</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>lose</translation>
    </message>
    <message>
        <source>All %1 are as specified</source>
        <translation>Alle %1 stehen wie vorgegeben</translation>
    </message>
    <message>
        <source>&amp;All %1 as specified</source>
        <translation>Alle %1 wie &amp;vorgegeben</translation>
    </message>
    <message>
        <source>Enters every fastener of this kind that is not yet at its specified value, one entry each, in sequence</source>
        <translation>Trägt jede Verschraubung dieser Art, die nicht auf ihrem vorgegebenen Wert steht, einzeln ein, der Reihenfolge nach</translation>
    </message>
    <message>
        <source>%1 brought to (Enter alone: as specified)</source>
        <translation>%1 angezogen auf (nur Enter: wie vorgegeben)</translation>
    </message>
    <message>
        <source>A &amp;new one was fitted</source>
        <translation>Eine &amp;neue wurde eingebaut</translation>
    </message>
    <message>
        <source>This kind is used once: a piece that is tightened for the second time opens a finding</source>
        <translation>Diese Art wird nur einmal verwendet: Ein Stück, das zum zweiten Mal angezogen wird, eröffnet einen Befund</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
</context>
<context>
    <name>caprail::FastenersVerify</name>
    <message>
        <source>What moved in this round, and what it made stale</source>
        <translation>Was sich in dieser Runde weiterdrehte und was dadurch veraltet ist</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Take &amp;off all %1 stacks</source>
        <translation>Alle %1 Sta&amp;pel abnehmen</translation>
    </message>
    <message>
        <source>&amp;Begin verify round %1</source>
        <translation>Prüfr&amp;unde %1 beginnen</translation>
    </message>
    <message>
        <source>No layout</source>
        <translation>Keine Motorbauform</translation>
    </message>
    <message>
        <source>Set the engine layout at the engine station first.</source>
        <translation>Zuerst die Motorbauform an der Station Motor festlegen.</translation>
    </message>
    <message>
        <source>Enter goes to the gap</source>
        <translation>Enter führt zum Spaltmaß</translation>
    </message>
    <message>
        <source>Fasteners verified in this round</source>
        <translation>In dieser Runde geprüfte Schrauben</translation>
    </message>
    <message>
        <source>Mark in &amp;line</source>
        <translation>Markierung steht &amp;gleich</translation>
    </message>
    <message>
        <source>Round %1: the stretch that is read now, or the angle it moved as 4°</source>
        <translation>Runde %1: die jetzt gemessene Längung, oder der Winkel, um den sie sich drehte etwa 4°</translation>
    </message>
    <message>
        <source>H</source>
        <translation>H</translation>
    </message>
    <message>
        <source>Round %1: H if its mark still lines up, else the angle it moved</source>
        <translation>Runde %1: H, wenn die Markierung noch fluchtet, sonst der Winkel, um den sie sich weiterdrehte</translation>
    </message>
    <message>
        <source>Round %1: H if it held, else the angle it moved</source>
        <translation>Runde %1: H, wenn sie hielt, sonst der Winkel, um den sie sich weiterdrehte</translation>
    </message>
    <message>
        <source>Mark in line</source>
        <translation>Markierung steht gleich</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Hält</translation>
    </message>
    <message>
        <source>Hel&amp;d</source>
        <translation>Hä&amp;lt</translation>
    </message>
</context>
<context>
    <name>caprail::FeelResults</name>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Straightedge</source>
        <translation>Haarlineal</translation>
    </message>
    <message>
        <source>± δ</source>
        <translation>± δ</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keines</translation>
    </message>
    <message>
        <source>Answers</source>
        <translation>Antworten</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Whose feel was tried</source>
        <translation>Wessen Gefühl geprüft wurde</translation>
    </message>
    <message>
        <source>Whose feel stands until when</source>
        <translation>Wessen Gefühl bis wann gilt</translation>
    </message>
    <message>
        <source>More answers make it surer; or stop here.</source>
        <translation>Weitere Antworten machen es sicherer; oder hier aufhören.</translation>
    </message>
</context>
<context>
    <name>caprail::GaugeHub</name>
    <message>
        <source>%1 sends values faster than anyone presses its button; only the first was taken. Set it to send one value for each press.</source>
        <translation>%1 sendet schneller, als jemand seinen Knopf drückt; nur der erste Wert wurde genommen. So einstellen, dass es je Druck einen Wert sendet.</translation>
    </message>
    <message>
        <source>%1 came from %2 and is not stored: no value field has the keyboard. Choose the place, then press the gauge&apos;s button again.</source>
        <translation>%1 kam von %2 und ist nicht gespeichert: Die Tastatur ist in keinem Wertfeld. Die Stelle wählen, dann den Knopf des Messmittels noch einmal drücken.</translation>
    </message>
</context>
<context>
    <name>caprail::GaugesDialog</name>
    <message>
        <source>&amp;Take its values</source>
        <translation>Seine Werte an&amp;nehmen</translation>
    </message>
    <message>
        <source>Re&amp;move</source>
        <translation>Ent&amp;fernen</translation>
    </message>
    <message>
        <source>&amp;Fit the pattern to the last line</source>
        <translation>Das Muster an die letzte Zeile an&amp;passen</translation>
    </message>
    <message>
        <source>Gauges on this computer</source>
        <translation>Messmittel an diesem Rechner</translation>
    </message>
    <message>
        <source>as chosen at the station</source>
        <translation>wie an der Station gewählt</translation>
    </message>
    <message>
        <source>types like a keyboard</source>
        <translation>tippt wie eine Tastatur</translation>
    </message>
    <message>
        <source>on a serial line</source>
        <translation>an einer seriellen Leitung</translation>
    </message>
    <message>
        <source>with Enter or a line break</source>
        <translation>mit Enter oder Zeilenende</translation>
    </message>
    <message>
        <source>with Tab</source>
        <translation>mit Tab</translation>
    </message>
    <message>
        <source>with nothing: after a pause</source>
        <translation>mit nichts: nach einer Pause</translation>
    </message>
    <message>
        <source>none: the line says it</source>
        <translation>keine: Die Zeile nennt sie</translation>
    </message>
    <message>
        <source>no parity</source>
        <translation>keine Parität</translation>
    </message>
    <message>
        <source>even parity</source>
        <translation>gerade Parität</translation>
    </message>
    <message>
        <source>odd parity</source>
        <translation>ungerade Parität</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>Lines as they come</source>
        <translation>Zeilen, wie sie kommen</translation>
    </message>
    <message>
        <source>put the keyboard here and press the gauge&apos;s button</source>
        <translation>hierher klicken und den Knopf des Messmittels drücken</translation>
    </message>
    <message>
        <source>The gauge&apos;s line, with # where the value stands and * for anything</source>
        <translation>Die Zeile des Messmittels, mit # für den Wert und * für Beliebiges</translation>
    </message>
    <message>
        <source>Speed, bits a second</source>
        <translation>Geschwindigkeit, Bit je Sekunde</translation>
    </message>
    <message>
        <source>Data bits</source>
        <translation>Datenbits</translation>
    </message>
    <message>
        <source>Parity</source>
        <translation>Parität</translation>
    </message>
    <message>
        <source>Stop bits</source>
        <translation>Stoppbits</translation>
    </message>
    <message>
        <source>&amp;Instrument in records</source>
        <translation>&amp;Messmittel in Protokollen</translation>
    </message>
    <message>
        <source>&amp;Connected</source>
        <translation>An&amp;geschlossen</translation>
    </message>
    <message>
        <source>Po&amp;rt</source>
        <translation>Ans&amp;chluss</translation>
    </message>
    <message>
        <source>Speed, data bits, parity, stop bits</source>
        <translation>Geschwindigkeit, Datenbits, Parität, Stoppbits</translation>
    </message>
    <message>
        <source>A line &amp;ends</source>
        <translation>Eine Zeile &amp;endet</translation>
    </message>
    <message>
        <source>&amp;Pattern of a line</source>
        <translation>M&amp;uster einer Zeile</translation>
    </message>
    <message>
        <source>&amp;Unit, where the line has none</source>
        <translation>E&amp;inheit, wo die Zeile keine hat</translation>
    </message>
    <message>
        <source>Tr&amp;y it</source>
        <translation>Ausp&amp;robieren</translation>
    </message>
    <message>
        <source>&amp;Lines as they come</source>
        <translation>&amp;Zeilen, wie sie kommen</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>&amp;Hinzufügen</translation>
    </message>
    <message>
        <source>A gauge&apos;s value goes to the value field that has the keyboard, as if it were typed and Enter pressed. In the pattern # stands for the value and * for anything: 01A# is a value behind the gauge&apos;s own prefix.</source>
        <translation>Der Wert eines Messmittels kommt in das Wertfeld, in dem die Tastatur ist, als wäre er eingetippt und Enter gedrückt. Im Muster steht # für den Wert und * für Beliebiges: 01A# ist ein Wert hinter dem eigenen Vorsatz des Messmittels.</translation>
    </message>
    <message>
        <source>%1 is open: press the gauge&apos;s button.</source>
        <translation>%1 ist offen: den Knopf des Messmittels drücken.</translation>
    </message>
    <message>
        <source>“%1”  is read as  %2</source>
        <translation>„%1“  wird gelesen als  %2</translation>
    </message>
    <message>
        <source>Choose the port that the gauge is plugged into.</source>
        <translation>Den Anschluss wählen, an dem das Messmittel steckt.</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleActions</name>
    <message>
        <source>Parts and stacks</source>
        <translation>Teile und Stapel</translation>
    </message>
    <message>
        <source>Take all stacks off</source>
        <translation>Alle Stapel abnehmen</translation>
    </message>
    <message>
        <source>Put all stacks back</source>
        <translation>Alle Stapel wieder auflegen</translation>
    </message>
    <message>
        <source>What was changed at %1?</source>
        <translation>Was wurde an %1 geändert?</translation>
    </message>
    <message>
        <source>Pan rail worked on…</source>
        <translation>Ölwannenflansch bearbeitet…</translation>
    </message>
    <message>
        <source>What was done to the pan rail? All gaps must be read again.</source>
        <translation>Was wurde am Ölwannenflansch getan? Jedes Spaltmaß entfällt.</translation>
    </message>
    <message>
        <source>Take the stack at %1 apart</source>
        <translation>Den Stapel an %1 zerlegen</translation>
    </message>
    <message>
        <source>Another nut or washer at %1…</source>
        <translation>Andere Mutter oder Unterlegscheibe an %1…</translation>
    </message>
    <message>
        <source>Open a finding at %1…</source>
        <translation>An %1 einen Befund eröffnen…</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>What was seen at %1?</source>
        <translation>Was war an %1 zu sehen?</translation>
    </message>
    <message>
        <source>Washer at %1 turned</source>
        <translation>Scheibe an %1 gedreht</translation>
    </message>
    <message>
        <source>Washer at %1 turned over</source>
        <translation>Scheibe an %1 gewendet</translation>
    </message>
    <message>
        <source>Washer at %1 dressed</source>
        <translation>Scheibe an %1 abgezogen</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleBoard</name>
    <message>
        <source>not built</source>
        <translation>nicht aufgebaut</translation>
    </message>
    <message>
        <source>on</source>
        <translation>aufgelegt</translation>
    </message>
    <message>
        <source>off</source>
        <translation>abgenommen</translation>
    </message>
    <message>
        <source>built, %1</source>
        <translation>aufgebaut, %1</translation>
    </message>
    <message>
        <source>no gap</source>
        <translation>kein Spaltmaß</translation>
    </message>
    <message>
        <source>gap %1</source>
        <translation>Spaltmaß %1</translation>
    </message>
    <message>
        <source>nearest: %1</source>
        <translation>am nächsten: %1</translation>
    </message>
    <message>
        <source>should be: %1</source>
        <translation>Soll: %1</translation>
    </message>
    <message>
        <source>Stacks by position</source>
        <translation>Stapel nach Stelle</translation>
    </message>
    <message>
        <source>Set the engine layout first: the stacks lie where it says.</source>
        <translation>Zuerst die Motorbauform festlegen: sie gibt vor, wo die Stapel liegen.</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>stands</source>
        <translation>steht</translation>
    </message>
    <message>
        <source>planned %1</source>
        <translation>geplant %1</translation>
    </message>
    <message>
        <source>pinned</source>
        <translation>fixiert</translation>
    </message>
    <message>
        <source>stands: %1</source>
        <translation>steht: %1</translation>
    </message>
    <message>
        <source>residual %1</source>
        <translation>Restmaß %1</translation>
    </message>
    <message>
        <source>nothing in the kit meets the band, nearest: %1, residual %2</source>
        <translation>nichts im Satz trifft das Band, am nächsten: %1, Restmaß %2</translation>
    </message>
    <message>
        <source>planned: %1, residual %2</source>
        <translation>geplant: %1, Restmaß %2</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleFeel</name>
    <message>
        <source>&amp;Begin the study</source>
        <translation>&amp;Prüfung beginnen</translation>
    </message>
    <message>
        <source>Whose feel is tried</source>
        <translation>Wessen Gefühl geprüft wird</translation>
    </message>
    <message>
        <source>Straightedge</source>
        <translation>Haarlineal</translation>
    </message>
    <message>
        <source>the flat, and what the straightedge lies on</source>
        <translation>die ebene Platte, und worauf das Haarlineal liegt</translation>
    </message>
    <message>
        <source>two shims alike, or a height</source>
        <translation>zwei gleiche Distanzscheiben, oder eine Höhe</translation>
    </message>
    <message>
        <source>shims like S014+S022, or heights, parted by semicolons</source>
        <translation>Distanzscheiben wie S014+S022, oder Höhen, mit Semikolon getrennt</translation>
    </message>
    <message>
        <source>Whose feel</source>
        <translation>Wessen Gefühl</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Rests</source>
        <translation>Auflagen</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>Study of the feel: R rocks, D drags, L loose</source>
        <translation>Prüfung des Gefühls: K kippelt, S saugt, L lose</translation>
    </message>
    <message>
        <source>Known steps under the straightedge, laid between two rests on a flat. Somebody else lays them as asked for here and presses the key; who feels does not look at the screen, nor at the shims. 25 answers or more.</source>
        <translation>Bekannte Stufen unter dem Haarlineal, zwischen zwei Auflagen auf einer ebenen Platte. Jemand anderes legt sie, wie hier verlangt, und drückt die Taste; wer fühlt, sieht weder auf den Bildschirm noch auf die Distanzscheiben. 25 Antworten oder mehr.</translation>
    </message>
    <message>
        <source>The feel, tried like an instrument</source>
        <translation>Das Gefühl, geprüft wie ein Messmittel</translation>
    </message>
    <message>
        <source>Name the straightedge: add it with its flatness at the engine station.</source>
        <translation>Das Haarlineal nennen: es mit seiner Ebenheit an der Station Motor hinzufügen.</translation>
    </message>
    <message>
        <source>Name the rests and the steps: shims of the kit that are measured, or heights.</source>
        <translation>Auflagen und Stufen nennen: gemessene Distanzscheiben des Satzes, oder Höhen.</translation>
    </message>
    <message>
        <source>%1 steps are ready: begin the study.</source>
        <translation>%1 Stufen sind bereit: die Prüfung beginnen.</translation>
    </message>
    <message>
        <source>Answer %1 of %2: lay %3 between the rests.</source>
        <translation>Antwort %1 von %2: %3 zwischen die Auflagen legen.</translation>
    </message>
    <message>
        <source>P&amp;ropose from the kit</source>
        <translation>Aus dem Satz &amp;vorschlagen</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleGaps</name>
    <message>
        <source>pass </source>
        <translation>Durchgang </translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Order of the pass</source>
        <translation>Reihenfolge des Durchgangs</translation>
    </message>
    <message>
        <source>Order…</source>
        <translation>Reihenfolge…</translation>
    </message>
    <message>
        <source>Change the order of the pass</source>
        <translation>Die Reihenfolge des Durchgangs ändern</translation>
    </message>
    <message>
        <source>gap at %1</source>
        <translation>Spaltmaß an %1</translation>
    </message>
    <message>
        <source>No layout</source>
        <translation>Keine Motorbauform</translation>
    </message>
    <message>
        <source>The positions follow from the engine layout: set it at the engine station.</source>
        <translation>Die Stellen folgen aus der Motorbauform: an der Station Motor festlegen.</translation>
    </message>
    <message>
        <source>Every gap is accepted: the survey is done.</source>
        <translation>Jedes Spaltmaß ist angenommen: die Messung ist fertig.</translation>
    </message>
    <message>
        <source>This is the last one.</source>
        <translation>Das ist die letzte.</translation>
    </message>
    <message>
        <source>Then %1 · %2 more in pass %3</source>
        <translation>Dann %1 · noch %2 in Durchgang %3</translation>
    </message>
    <message>
        <source>Then pass %1 begins at %2</source>
        <translation>Dann beginnt Durchgang %1 bei %2</translation>
    </message>
    <message>
        <source>Gap at %1, pass %2</source>
        <translation>Spaltmaß an %1, Durchgang %2</translation>
    </message>
    <message>
        <source>Choose an order, or type one: every place once.</source>
        <translation>Eine Reihenfolge wählen oder eingeben: jede Stelle einmal.</translation>
    </message>
    <message>
        <source>Does not go</source>
        <translation>Geht nicht</translation>
    </message>
    <message>
        <source>if it was tried: 22+23+13 thou</source>
        <translation>wenn versucht: 22+23+13 thou</translation>
    </message>
    <message>
        <source>Straightedge across the rails</source>
        <translation>Haarlineal über den Flanschen</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleKit</name>
    <message>
        <source>Shim</source>
        <translation>Distanzscheibe</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Beschriftet</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>Off marking</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Where it is</source>
        <translation>Wo sie ist</translation>
    </message>
    <message>
        <source>Shims of the kit</source>
        <translation>Distanzscheiben des Satzes</translation>
    </message>
    <message>
        <source>bag or maker, if told apart</source>
        <translation>Beutel oder Hersteller, wenn unterschieden</translation>
    </message>
    <message>
        <source>Bag of the added shims</source>
        <translation>Beutel der hinzugefügten Distanzscheiben</translation>
    </message>
    <message>
        <source>Micrometer</source>
        <translation>Messschraube</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>The kit is empty. Add its shims below: one by name, or a count of one size.</source>
        <translation>Der Satz ist leer. Unten Distanzscheiben hinzufügen: eine mit Namen, oder eine Anzahl einer Größe.</translation>
    </message>
    <message>
        <source>%1 shims in the kit · %2 not measured · %3 off their marking by more than %4 · %5 set aside</source>
        <translation>%1 Distanzscheiben im Satz · %2 nicht gemessen · %3 weichen um mehr als %4 von der Beschriftung ab · %5 beiseitegelegt</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>beiseitegelegt</translation>
    </message>
    <message>
        <source>in the stack at %1</source>
        <translation>im Stapel an %1</translation>
    </message>
    <message>
        <source>✕ off its marking</source>
        <translation>✕ weicht von der Beschriftung ab</translation>
    </message>
    <message>
        <source>Add shims: “S001 10 thou”, “S001-S012 10 thou” or “12 x 10 thou”</source>
        <translation>Distanzscheiben hinzufügen: „S001 10 thou“, „S001-S012 10 thou“ oder „12 x 10 thou“</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1: %2 von %3</translation>
    </message>
    <message>
        <source>Measure: a shim&apos;s name, then its thickness</source>
        <translation>Messen: Name einer Distanzscheibe, dann ihre Dicke</translation>
    </message>
    <message>
        <source>Measure %1, reading %2 (or a shim&apos;s name first)</source>
        <translation>%1 messen, Ablesung %2 (oder zuerst der Name einer Distanzscheibe)</translation>
    </message>
    <message>
        <source>Take %1 back into the kit</source>
        <translation>%1 in den Satz zurücknehmen</translation>
    </message>
    <message>
        <source>Set %1 aside…</source>
        <translation>%1 beiseitelegen…</translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation>Beiseitelegen</translation>
    </message>
    <message>
        <source>Why is %1 set aside?</source>
        <translation>Warum wird %1 beiseitegelegt?</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleLoadPage</name>
    <message>
        <source>At</source>
        <translation>An</translation>
    </message>
    <message>
        <source>Residual</source>
        <translation>Restmaß</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>± U</source>
        <translation>± U</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Of preload</source>
        <translation>Der Vorspannung</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Lasten</translation>
    </message>
    <message>
        <source>bolted to the pan rail</source>
        <translation>am Ölwannenflansch verschraubt</translation>
    </message>
    <message>
        <source>on its nuts alone</source>
        <translation>nur auf ihren Muttern</translation>
    </message>
    <message>
        <source>How the girdle is held</source>
        <translation>Wie die Platte gehalten ist</translation>
    </message>
    <message>
        <source>The girdle is</source>
        <translation>Die Platte ist</translation>
    </message>
    <message>
        <source>No load over</source>
        <translation>Keine Last über</translation>
    </message>
    <message>
        <source>Residuals within ±</source>
        <translation>Restmaße innerhalb ±</translation>
    </message>
    <message>
        <source>What the loads assume</source>
        <translation>Was die Lasten annehmen</translation>
    </message>
    <message>
        <source>the largest load</source>
        <translation>die größte Last</translation>
    </message>
    <message>
        <source>Residuals within ± %1 keep every load at or below %2, however they are spread.</source>
        <translation>Restmaße innerhalb ± %1 halten jede Last bei höchstens %2, wie immer sie verteilt sind.</translation>
    </message>
    <message>
        <source>Held like this, no residual makes a load.</source>
        <translation>So gehalten macht kein Restmaß eine Last.</translation>
    </message>
    <message>
        <source>the band of the residual</source>
        <translation>das Band des Restmaßes</translation>
    </message>
    <message>
        <source>Residuals within ± %1 can cost up to %2 at one place.</source>
        <translation>Restmaße innerhalb ± %1 können an einer Stelle bis zu %2 kosten.</translation>
    </message>
    <message>
        <source>Working out …</source>
        <translation>Wird berechnet …</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleRecheck</name>
    <message>
        <source>Straightedge</source>
        <translation>Haarlineal</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>There is no stack here yet: build it first (Alt+3).</source>
        <translation>Hier ist noch kein Stapel: zuerst aufbauen (Alt+3).</translation>
    </message>
    <message>
        <source>The stack is off: put it back first (Parts and stacks).</source>
        <translation>Der Stapel ist abgenommen: zuerst wieder auflegen (Teile und Stapel).</translation>
    </message>
    <message>
        <source>Residual %1: by the numbers it %2.</source>
        <translation>Restmaß %1: nach den Zahlen %2.</translation>
    </message>
    <message>
        <source>should be loose</source>
        <translation>müsste es lose sein</translation>
    </message>
    <message>
        <source>should rock</source>
        <translation>müsste es kippeln</translation>
    </message>
    <message>
        <source>should drag</source>
        <translation>müsste es saugen</translation>
    </message>
    <message>
        <source>The gap here is not accepted, so the numbers say nothing yet.</source>
        <translation>Das Spaltmaß hier ist nicht angenommen, die Zahlen sagen daher noch nichts.</translation>
    </message>
    <message>
        <source>&amp;Try a feel…</source>
        <translation>Ein Gefühl &amp;prüfen …</translation>
    </message>
    <message>
        <source>B  bracket it</source>
        <translation>E  eingrenzen</translation>
    </message>
    <message>
        <source>Exchange shims until it rocks and until it is loose: the residual lies between, whatever the leaves were worth.</source>
        <translation>Distanzscheiben tauschen, bis es kippelt und bis es lose ist: das Restmaß liegt dazwischen, was immer die Blätter wert waren.</translation>
    </message>
    <message>
        <source>Known steps in random order, once a year: what you feel then carries a verdict.</source>
        <translation>Bekannte Stufen in zufälliger Folge, einmal im Jahr: was gefühlt wird, trägt dann ein Urteil.</translation>
    </message>
    <message>
        <source>Recheck at %1: R rocks, D drags, L loose</source>
        <translation>Nachprüfung an %1: K kippelt, S saugt, L lose</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleStacks</name>
    <message>
        <source>bare</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>&amp;Use the plan</source>
        <translation>&amp;Plan übernehmen</translation>
    </message>
    <message>
        <source>&amp;Confirm this stack</source>
        <translation>Diesen Stapel bes&amp;tätigen</translation>
    </message>
    <message>
        <source>Set a shim &amp;aside…</source>
        <translation>Distan&amp;zscheibe beiseitelegen…</translation>
    </message>
    <message>
        <source>What the plan aims for</source>
        <translation>Was der Plan anstrebt</translation>
    </message>
    <message>
        <source>residual at %1</source>
        <translation>Restmaß an %1</translation>
    </message>
    <message>
        <source>After fewest shims</source>
        <translation>Zuerst wenige Distanzscheiben, dann</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Wird geplant …</translation>
    </message>
    <message>
        <source>Records the stacks of the plan as built; lay them on as drawn.</source>
        <translation>Trägt die Stapel des Plans als aufgebaut ein; wie gezeichnet auflegen.</translation>
    </message>
    <message>
        <source>not built</source>
        <translation>nicht aufgebaut</translation>
    </message>
    <message>
        <source>built: %1</source>
        <translation>aufgebaut: %1</translation>
    </message>
    <message>
        <source>The plan keeps a pinned stack as it is and plans the rest around it.</source>
        <translation>Der Plan lässt einen fixierten Stapel, wie er ist, und plant die übrigen darum herum.</translation>
    </message>
    <message>
        <source>%1 is not measured</source>
        <translation>%1 ist nicht gemessen</translation>
    </message>
    <message>
        <source>%1 lies at %2</source>
        <translation>%1 liegt an %2</translation>
    </message>
    <message>
        <source>%1 thick</source>
        <translation>%1 dick</translation>
    </message>
    <message>
        <source>in band</source>
        <translation>im Band</translation>
    </message>
    <message>
        <source>out of band</source>
        <translation>außerhalb des Bandes</translation>
    </message>
    <message>
        <source>be loose</source>
        <translation>lose sein</translation>
    </message>
    <message>
        <source>rock</source>
        <translation>kippeln</translation>
    </message>
    <message>
        <source>drag</source>
        <translation>saugen</translation>
    </message>
    <message>
        <source>Stack built at %1: shim names, or a dash for bare</source>
        <translation>Stapel aufgebaut an %1: Namen der Distanzscheiben oder ein Strich für keine</translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation>Beiseitelegen</translation>
    </message>
    <message>
        <source>Which shim should the plan do without?</source>
        <translation>Ohne welche Distanzscheibe soll der Plan auskommen?</translation>
    </message>
    <message>
        <source>Why is %1 set aside?</source>
        <translation>Warum wird %1 beiseitegelegt?</translation>
    </message>
    <message>
        <source>Plan all ane&amp;w</source>
        <translation>Alles ne&amp;u planen</translation>
    </message>
    <message>
        <source>What stands stays, and the plan is for the other places. Pressed, the plan begins with bare washers.</source>
        <translation>Was steht, bleibt, und der Plan gilt den übrigen Stellen. Gedrückt beginnt der Plan mit bloßen Unterlegscheiben.</translation>
    </message>
    <message>
        <source>List the &amp;kit first…</source>
        <translation>Zue&amp;rst den Satz auflisten…</translation>
    </message>
    <message>
        <source>No shim is listed yet, so there is nothing to build a stack of. Alt+2</source>
        <translation>Noch ist keine Distanzscheibe aufgelistet, also gibt es nichts, woraus ein Stapel aufzubauen wäre. Alt+2</translation>
    </message>
    <message>
        <source>No shim is listed yet: list the shims of the kit, then measure them.</source>
        <translation>Noch ist keine Distanzscheibe aufgelistet: die des Satzes auflisten, dann messen.</translation>
    </message>
    <message>
        <source>planned: %1</source>
        <translation>geplant: %1</translation>
    </message>
    <message>
        <source>%1, residual %2: %3, should %4</source>
        <translation>%1, Restmaß %2: %3, sollte %4</translation>
    </message>
    <message>
        <source>Unp&amp;in</source>
        <translation>&amp;Fixierung lösen</translation>
    </message>
    <message>
        <source>P&amp;in</source>
        <translation>&amp;Fixieren</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleStation</name>
    <message>
        <source>Gaps</source>
        <translation>Spaltmaße</translation>
    </message>
    <message>
        <source>Shims</source>
        <translation>Distanzscheiben</translation>
    </message>
    <message>
        <source>Stacks</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>Recheck</source>
        <translation>Nachprüfung</translation>
    </message>
    <message>
        <source>Lay the straightedge across both pan rails, read the gap down to each washer, and type it: 57.5 thou, .0575, 1.46 mm, or the leaves in one slot, 22+23+12.5 thou. Two passes or more. Enter the kit, measure its shims, use the plan, build the stacks, and recheck each: rocks, drags or loose.</source>
        <translation>Das Haarlineal über beide Ölwannenflansche legen, das Spaltmaß bis zu jeder Unterlegscheibe messen und eingeben: 57.5 thou, .0575, 1.46 mm oder die Blätter der Fühlerlehre in einem Spalt, 22+23+12.5 thou. Zwei Durchgänge oder mehr. Den Satz eintragen, seine Distanzscheiben messen, den Plan übernehmen, die Stapel aufbauen und jeden nachprüfen: kippelt, saugt oder lose.</translation>
    </message>
    <message>
        <source>Feel</source>
        <translation>Gefühl</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleSurvey</name>
    <message>
        <source>Set the engine layout at the engine station: the pan rail is drawn from it.</source>
        <translation>Die Motorbauform an der Station Motor festlegen: der Ölwannenflansch wird danach gezeichnet.</translation>
    </message>
</context>
<context>
    <name>caprail::HistoryChanges</name>
    <message>
        <source>Entry</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Sort</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>What was changed, and why</source>
        <translation>Was geändert wurde, und warum</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>Nothing was changed after something had been judged by it.</source>
        <translation>Es wurde nichts geändert, wonach schon etwas beurteilt war.</translation>
    </message>
    <message>
        <source>Work on this build: %1, from %2 to %3.</source>
        <translation>Arbeit an diesem Aufbau: %1, von %2 bis %3.</translation>
    </message>
</context>
<context>
    <name>caprail::HistoryLedger</name>
    <message>
        <source>Find in the record: 3R, S014, 57.5, a name …</source>
        <translation>Im Protokoll suchen: 3R, S014, 57.5, ein Name …</translation>
    </message>
    <message>
        <source>Find in the record</source>
        <translation>Im Protokoll suchen</translation>
    </message>
    <message>
        <source>Kind of entry</source>
        <translation>Art des Eintrags</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Struck or not</source>
        <translation>Gestrichen oder nicht</translation>
    </message>
    <message>
        <source>all entries</source>
        <translation>alle Einträge</translation>
    </message>
    <message>
        <source>not struck</source>
        <translation>nicht gestrichen</translation>
    </message>
    <message>
        <source>struck only</source>
        <translation>nur gestrichen</translation>
    </message>
    <message>
        <source>No entry is like this: change what is looked for above.</source>
        <translation>Kein passender Eintrag: oben die Suche ändern.</translation>
    </message>
    <message>
        <source>Stri&amp;ke…</source>
        <translation>S&amp;treichen…</translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translation>E&amp;xportieren…</translation>
    </message>
    <message>
        <source>What is shown, as a table for a spreadsheet</source>
        <translation>Was zu sehen ist, als Tabelle für ein Tabellenprogramm</translation>
    </message>
    <message>
        <source>every kind</source>
        <translation>jede Art</translation>
    </message>
    <message>
        <source>everybody</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>entries.csv</source>
        <translation>eintraege.csv</translation>
    </message>
    <message>
        <source>%1 so far, of %2 …</source>
        <translation>%1 bisher, von %2 …</translation>
    </message>
    <message>
        <source>Withdraw the selected entries, with one reason (Delete)</source>
        <translation>Die gewählten Einträge mit einem Grund zurückziehen (Entf)</translation>
    </message>
</context>
<context>
    <name>caprail::HistoryMatrix</name>
    <message>
        <source>no outcome</source>
        <translation>kein Ergebnis</translation>
    </message>
    <message>
        <source>no instrument named</source>
        <translation>kein Messmittel genannt</translation>
    </message>
    <message>
        <source>Round %1, begun %2 by %3 with %4</source>
        <translation>Runde %1, begonnen %2 von %3 mit %4</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>gestrichen</translation>
    </message>
</context>
<context>
    <name>caprail::HistoryRepeatability</name>
    <message>
        <source>Repeatability by person and instrument</source>
        <translation>Wiederholbarkeit nach Person und Messmittel</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>Places read twice</source>
        <translation>Zweimal gemessene Stellen</translation>
    </message>
    <message>
        <source>s of one reading</source>
        <translation>s einer Ablesung</translation>
    </message>
    <message>
        <source>Degrees of freedom</source>
        <translation>Freiheitsgrade</translation>
    </message>
    <message>
        <source>Where the scatter comes from</source>
        <translation>Woher die Streuung kommt</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>Share of variance</source>
        <translation>Anteil an der Varianz</translation>
    </message>
    <message>
        <source>Who has read which place how often</source>
        <translation>Wer welche Stelle wie oft gemessen hat</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>Study of which readings</source>
        <translation>Studie über welche Ablesungen</translation>
    </message>
    <message>
        <source>Enter goes to the place, to read it again</source>
        <translation>Enter führt zur Stelle, um sie noch einmal zu messen</translation>
    </message>
    <message>
        <source>A study of</source>
        <translation>Eine Studie über</translation>
    </message>
    <message>
        <source>Repeatability of each person with each instrument, pooled over the record</source>
        <translation>Wiederholbarkeit jeder Person mit jedem Messmittel, über das ganze Protokoll zusammengefasst</translation>
    </message>
    <message>
        <source>not named</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>noch nicht bekannt</translation>
    </message>
    <message>
        <source>Nothing is measured yet: readings appear here as they are made.</source>
        <translation>Noch ist nichts gemessen: Ablesungen erscheinen hier, sobald sie gemacht sind.</translation>
    </message>
    <message>
        <source>No two places were read twice by one person yet. A short study: three people (or one) read ten places two or three times each, without looking at what was read before. Choose the name at the bottom right before each person begins.</source>
        <translation>Noch hat keine Person zwei Stellen je zweimal gemessen. Eine kurze Studie: drei Personen (oder eine) messen zehn Stellen je zwei- oder dreimal, ohne auf die früheren Werte zu sehen. Den Namen unten rechts wählen, bevor eine Person beginnt.</translation>
    </message>
    <message>
        <source>%1 · %2 places · %3 passes. %4</source>
        <translation>%1 · %2 Stellen · %3 Durchgänge. %4</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Repeatability: one person, one place</source>
        <translation>Wiederholbarkeit: eine Person, eine Stelle</translation>
    </message>
    <message>
        <source>Person to person</source>
        <translation>Von Person zu Person</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Insgesamt</translation>
    </message>
    <message>
        <source>The readings are being collected: %1 of %2 entries.</source>
        <translation>Die Ablesungen werden gesammelt: %1 von %2 Einträgen.</translation>
    </message>
    <message>
        <source>6 s / band</source>
        <translation>6 s / Band</translation>
    </message>
    <message>
        <source>Held against the band “%1”, %2.</source>
        <translation>Gehalten gegen das Band „%1“, %2.</translation>
    </message>
    <message>
        <source>No one band goes with these readings: set it at the engine station.</source>
        <translation>Zu diesen Ablesungen gehört kein einzelnes Band: es an der Station Motor setzen.</translation>
    </message>
    <message>
        <source>Gauge: both together</source>
        <translation>Messmittel: beides zusammen</translation>
    </message>
    <message>
        <source>Part: place to place</source>
        <translation>Teil: von Stelle zu Stelle</translation>
    </message>
</context>
<context>
    <name>caprail::HistoryStation</name>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Ledger</source>
        <translation>Eintragsliste</translation>
    </message>
    <message>
        <source>Verify rounds</source>
        <translation>Prüfrunden</translation>
    </message>
    <message>
        <source>Repeatability</source>
        <translation>Wiederholbarkeit</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>Every entry, in order; nothing is ever erased. Strike a wrong one with Delete and give the reason. The verify history shows every round, fastener by fastener; Changes shows what was changed after something had been judged by it, as the sheet tells the customer.</source>
        <translation>Jeder Eintrag, der Reihe nach; nichts wird je gelöscht. Einen falschen mit Entf streichen und begründen. Der Verlauf der Prüfrunden zeigt jede Runde, Verschraubung für Verschraubung; Änderungen zeigt, was geändert wurde, nachdem schon danach beurteilt war, wie das Blatt es dem Kunden sagt.</translation>
    </message>
</context>
<context>
    <name>caprail::HistoryVerify</name>
    <message>
        <source>Which fasteners</source>
        <translation>Welche Verschraubungen</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Wrench</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Order of the rows</source>
        <translation>Reihenfolge der Zeilen</translation>
    </message>
    <message>
        <source>from day</source>
        <translation>ab Tag</translation>
    </message>
    <message>
        <source>to day</source>
        <translation>bis Tag</translation>
    </message>
    <message>
        <source>Movements by place</source>
        <translation>Bewegungen nach Stelle</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>Weitergedreht</translation>
    </message>
    <message>
        <source>Pulled</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Größter</translation>
    </message>
    <message>
        <source>Movements by wrench</source>
        <translation>Bewegungen nach Schlüssel</translation>
    </message>
    <message>
        <source>Movements by person</source>
        <translation>Bewegungen nach Person</translation>
    </message>
    <message>
        <source>Movements by round</source>
        <translation>Bewegungen nach Runde</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>every outcome</source>
        <translation>jedes Ergebnis</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>weitergedreht</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>gestrichen</translation>
    </message>
    <message>
        <source>by place</source>
        <translation>nach Stelle</translation>
    </message>
    <message>
        <source>most moved</source>
        <translation>am meisten weitergedreht</translation>
    </message>
    <message>
        <source>largest angle</source>
        <translation>größter Winkel</translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translation>E&amp;xportieren…</translation>
    </message>
    <message>
        <source>verify-rounds.csv</source>
        <translation>pruefrunden.csv</translation>
    </message>
    <message>
        <source>Outcome of every fastener in every round</source>
        <translation>Ergebnis jeder Verschraubung in jeder Runde</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Stellen</translation>
    </message>
    <message>
        <source>Wrenches</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Runden</translation>
    </message>
    <message>
        <source>Counts of movements</source>
        <translation>Zahl der Bewegungen</translation>
    </message>
    <message>
        <source>every place</source>
        <translation>jede Stelle</translation>
    </message>
    <message>
        <source>rods</source>
        <translation>Pleuel</translation>
    </message>
    <message>
        <source>cap %1</source>
        <translation>Deckel %1</translation>
    </message>
    <message>
        <source>everybody</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>every wrench</source>
        <translation>jeder Schlüssel</translation>
    </message>
    <message>
        <source>day as 2026-05-04</source>
        <translation>Tag wie 2026-05-04</translation>
    </message>
    <message>
        <source>rounds: %1, outcomes: %2</source>
        <translation>Runden: %1, Ergebnisse: %2</translation>
    </message>
    <message>
        <source>No verify round has been made yet. Rounds are made at the fasteners station.</source>
        <translation>Noch wurde keine Prüfrunde gemacht. Runden werden an der Station Schrauben gemacht.</translation>
    </message>
    <message>
        <source>verify rounds</source>
        <translation>Prüfrunden</translation>
    </message>
    <message>
        <source>the last %1 of %2 rounds are looked at</source>
        <translation>die letzten %1 von %2 Runden werden betrachtet</translation>
    </message>
    <message>
        <source>P&amp;rint…</source>
        <translation>Dru&amp;cken…</translation>
    </message>
</context>
<context>
    <name>caprail::InstrumentBox</name>
    <message>
        <source>Instrument</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>no instrument named</source>
        <translation>kein Messmittel genannt</translation>
    </message>
</context>
<context>
    <name>caprail::MainWindow</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;New record…</source>
        <translation>&amp;Neues Protokoll…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>S&amp;hop: the records of a folder</source>
        <translation>&amp;Werkstatt: die Protokolle eines Ordners</translation>
    </message>
    <message>
        <source>Save a &amp;copy…</source>
        <translation>&amp;Kopie speichern…</translation>
    </message>
    <message>
        <source>Build &amp;sheet as PDF…</source>
        <translation>Aufba&amp;ublatt als PDF…</translation>
    </message>
    <message>
        <source>Sheet pages as p&amp;ictures…</source>
        <translation>Seiten des Blatts als B&amp;ilder…</translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation>Druck&amp;vorschau…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>&amp;Layout card as PDF…</source>
        <translation>&amp;Legekarte als PDF…</translation>
    </message>
    <message>
        <source>Export &amp;tables (CSV)…</source>
        <translation>&amp;Tabellen exportieren (CSV)…</translation>
    </message>
    <message>
        <source>Export ledger as te&amp;xt…</source>
        <translation>Eintragsliste als Te&amp;xt exportieren…</translation>
    </message>
    <message>
        <source>Close &amp;window</source>
        <translation>Fenster s&amp;chließen</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Strike the last entry…</source>
        <translation>Letzten Eintrag &amp;streichen…</translation>
    </message>
    <message>
        <source>Open a fin&amp;ding here</source>
        <translation>Hier einen Be&amp;fund eröffnen</translation>
    </message>
    <message>
        <source>Add a p&amp;hoto here…</source>
        <translation>Hier ein F&amp;oto hinzufügen…</translation>
    </message>
    <message>
        <source>P&amp;aste a photo here</source>
        <translation>Hier ein Foto einfü&amp;gen</translation>
    </message>
    <message>
        <source>&amp;Find in the record</source>
        <translation>Im Protokoll s&amp;uchen</translation>
    </message>
    <message>
        <source>&amp;Preferences…</source>
        <translation>&amp;Einstellungen…</translation>
    </message>
    <message>
        <source>&amp;Station</source>
        <translation>&amp;Station</translation>
    </message>
    <message>
        <source>Go to the &amp;next thing to do</source>
        <translation>Zum &amp;nächsten Schritt</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Inch / millimetre</source>
        <translation>&amp;Zoll / Millimeter</translation>
    </message>
    <message>
        <source>&amp;Bench view</source>
        <translation>&amp;Werkbank-Ansicht</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>&amp;Vollbild</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>This &amp;station</source>
        <translation>Diese &amp;Station</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>Sicherheits&amp;hinweise</translation>
    </message>
    <message>
        <source>&amp;About Caprail</source>
        <translation>&amp;Über Caprail</translation>
    </message>
    <message>
        <source>This file was not opened</source>
        <translation>Diese Datei wurde nicht geöffnet</translation>
    </message>
    <message>
        <source>This record is damaged</source>
        <translation>Dieses Protokoll ist beschädigt</translation>
    </message>
    <message>
        <source>

What can still be read can be salvaged into a new file; this one stays as it is. Salvage it?</source>
        <translation>

Was sich noch lesen lässt, kann in eine neue Datei gerettet werden; diese bleibt, wie sie ist. Retten?</translation>
    </message>
    <message>
        <source>Salvage into</source>
        <translation>Retten in</translation>
    </message>
    <message>
        <source>Build records (*.caprail)</source>
        <translation>Aufbauprotokolle (*.caprail)</translation>
    </message>
    <message>
        <source>Nothing was salvaged</source>
        <translation>Nichts wurde gerettet</translation>
    </message>
    <message numerus="yes">
        <source>%n entries were kept.</source>
        <translation>
            <numerusform>%n Eintrag wurde behalten.</numerusform>
            <numerusform>%n Einträge wurden behalten.</numerusform>
        </translation>
    </message>
    <message>
        <source>Salvaged</source>
        <translation>Gerettet</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Kopie speichern</translation>
    </message>
    <message numerus="yes">
        <source>%n entries still could not be stored. Save a copy elsewhere, or free the disk and try again.</source>
        <translation>
            <numerusform>%n Eintrag konnte noch immer nicht gespeichert werden. Eine Kopie anderswo speichern oder Platz schaffen und noch einmal versuchen.</numerusform>
            <numerusform>%n Einträge konnten noch immer nicht gespeichert werden. Eine Kopie anderswo speichern oder Platz schaffen und noch einmal versuchen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Build sheet</source>
        <translation>Aufbaublatt</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>Sheet pages as pictures</source>
        <translation>Seiten des Blatts als Bilder</translation>
    </message>
    <message>
        <source>PNG (*.png)</source>
        <translation>PNG (*.png)</translation>
    </message>
    <message numerus="yes">
        <source>%n pictures, from %1</source>
        <translation>
            <numerusform>%n Bild, ab %1</numerusform>
            <numerusform>%n Bilder, ab %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Layout card</source>
        <translation>Legekarte</translation>
    </message>
    <message>
        <source>Ledger as text</source>
        <translation>Eintragsliste als Text</translation>
    </message>
    <message>
        <source>JSON lines (*.jsonl)</source>
        <translation>JSON-Zeilen (*.jsonl)</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Sicherheitshinweise</translation>
    </message>
    <message>
        <source>Who is working</source>
        <translation>Wer daran arbeitet</translation>
    </message>
    <message>
        <source>Every entry carries this name</source>
        <translation>Jeder Eintrag trägt diesen Namen</translation>
    </message>
    <message>
        <source>Caprail</source>
        <translation>Caprail</translation>
    </message>
    <message>
        <source>On disk: entry %1. %2</source>
        <translation>Gespeichert: Eintrag %1. %2</translation>
    </message>
    <message>
        <source>Open a record</source>
        <translation>Protokoll öffnen</translation>
    </message>
    <message>
        <source>Build records (*.caprail);;All files (*)</source>
        <translation>Aufbauprotokolle (*.caprail);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The bench view shows one value at a time: choose a place where one is typed, such as a gap, a journal or a fastener.</source>
        <translation>Die Werkbank-Ansicht zeigt immer nur einen Wert: eine Stelle wählen, an der einer eingegeben wird, etwa ein Spaltmaß, einen Zapfen oder eine Verschraubung.</translation>
    </message>
    <message>
        <source>Entries wait to be stored</source>
        <translation>Einträge warten auf das Speichern</translation>
    </message>
    <message numerus="yes">
        <source>%n entries could not be stored on disk and would be lost. Close all the same?</source>
        <translation>
            <numerusform>%n Eintrag konnte nicht gespeichert werden und ginge verloren. Trotzdem schließen?</numerusform>
            <numerusform>%n Einträge konnten nicht gespeichert werden und gingen verloren. Trotzdem schließen?</numerusform>
        </translation>
    </message>
    <message>
        <source>New build</source>
        <translation>Neuer Aufbau</translation>
    </message>
    <message>
        <source>A new build begins when the one before is signed off: finish and sign off build %1 first.</source>
        <translation>Ein neuer Aufbau beginnt, wenn der vorige abgezeichnet ist: zuerst Aufbau %1 beenden und abzeichnen.</translation>
    </message>
    <message>
        <source>Why is this engine built again? Build %1 stays readable beside it: Shop ▸ Compare builds.</source>
        <translation>Warum wird dieser Motor neu aufgebaut? Aufbau %1 bleibt daneben lesbar: Werkstatt ▸ Aufbauten vergleichen.</translation>
    </message>
    <message>
        <source>Sheet of the difference</source>
        <translation>Blatt der Unterschiede</translation>
    </message>
    <message>
        <source>Hand-over folder (a new one is made)</source>
        <translation>Übergabeordner (er wird neu angelegt)</translation>
    </message>
    <message>
        <source>-hand-over</source>
        <translation>-uebergabe</translation>
    </message>
    <message>
        <source>Hand-over folder</source>
        <translation>Übergabeordner</translation>
    </message>
    <message>
        <source>%1 holds the build sheet, photos, the ledger for people and for programs, tables, and checksums.</source>
        <translation>%1 enthält das Aufbaublatt, Fotos, die Eintragsliste für Menschen und für Programme, Tabellen und Prüfsummen.</translation>
    </message>
    <message>
        <source>Sho&amp;p</source>
        <translation>&amp;Werkstatt</translation>
    </message>
    <message>
        <source>The &amp;records of a folder</source>
        <translation>Die &amp;Protokolle eines Ordners</translation>
    </message>
    <message>
        <source>Save as a &amp;template…</source>
        <translation>Als &amp;Vorlage speichern…</translation>
    </message>
    <message>
        <source>T&amp;emplates…</source>
        <translation>V&amp;orlagen…</translation>
    </message>
    <message>
        <source>&amp;Add from the shelf…</source>
        <translation>Aus dem Regal &amp;hinzufügen…</translation>
    </message>
    <message>
        <source>The &amp;shelf…</source>
        <translation>Das &amp;Regal…</translation>
    </message>
    <message>
        <source>Begin a &amp;new build…</source>
        <translation>&amp;Neuen Aufbau beginnen…</translation>
    </message>
    <message>
        <source>&amp;Compare builds…</source>
        <translation>Aufbauten ver&amp;gleichen…</translation>
    </message>
    <message>
        <source>Both files hold the same entries.</source>
        <translation>Sie enthält genau die Einträge dieses Protokolls.</translation>
    </message>
    <message>
        <source>It is the record of another build: it has no entry in common with this one.</source>
        <translation>Sie ist das Protokoll eines anderen Aufbaus: sie hat keinen Eintrag mit diesem gemeinsam.</translation>
    </message>
    <message>
        <source>Both begin alike, up to entry %1, and then go on differently.</source>
        <translation>Beide beginnen gleich, bis Eintrag %1, und gehen dann verschieden weiter.</translation>
    </message>
    <message>
        <source>What this record has after entry %1 is not in the copy.</source>
        <translation>Was dieses Protokoll nach Eintrag %1 hat, ist nicht in der Kopie.</translation>
    </message>
    <message>
        <source>It goes on beyond the last entry of this record.</source>
        <translation>Sie geht über den letzten Eintrag dieses Protokolls hinaus.</translation>
    </message>
    <message>
        <source>Save a &amp;dated copy beside it</source>
        <translation>&amp;Eine datierte Kopie daneben speichern</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation>Gespeichert als %1</translation>
    </message>
    <message>
        <source>Restore from a copy</source>
        <translation>Aus einer Kopie wiederherstellen</translation>
    </message>
    <message>
        <source>Copies of records (*.caprail-backup *.caprail);;All files (*)</source>
        <translation>Kopien von Protokollen (*.caprail-backup *.caprail);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Not restored</source>
        <translation>Nicht wiederhergestellt</translation>
    </message>
    <message>
        <source>Restore this copy?</source>
        <translation>Diese Kopie wiederherstellen?</translation>
    </message>
    <message>
        <source>The copy ends with entry %1, seal %2; this record with entry %3, seal %4.</source>
        <translation>Die Kopie endet mit Eintrag %1, Siegel %2; dieses Protokoll mit Eintrag %3, Siegel %4.</translation>
    </message>
    <message>
        <source>This record as it is now is kept under a dated name beside it.</source>
        <translation>Dieses Protokoll wird, wie es jetzt ist, unter einem datierten Namen daneben aufbewahrt.</translation>
    </message>
    <message>
        <source>&amp;Restore</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>Restored. The record as it was is kept as %1</source>
        <translation>Wiederhergestellt. Das Protokoll, wie es war, liegt als %1 daneben</translation>
    </message>
    <message>
        <source>%1 exists already. Replace the pages that were made before?</source>
        <translation>%1 besteht schon. Die früher gemachten Seiten ersetzen?</translation>
    </message>
    <message>
        <source>Folder for the tables (a new one is made)</source>
        <translation>Ordner für die Tabellen (er wird neu angelegt)</translation>
    </message>
    <message>
        <source>-tables</source>
        <translation>-Tabellen</translation>
    </message>
    <message>
        <source>A value is not stored</source>
        <translation>Ein Wert ist nicht gespeichert</translation>
    </message>
    <message>
        <source>“%1” is typed for: %2. It is not stored.</source>
        <translation>„%1“ ist eingegeben für: %2. Es ist nicht gespeichert.</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>Kinds of entries</source>
        <translation>Eintragsarten</translation>
    </message>
    <message>
        <source>What a record is made of, in the words of its files: for “caprail append”, tables and scripts.</source>
        <translation>Woraus ein Protokoll besteht, in den (englischen) Wörtern seiner Dateien: für „caprail append“, Tabellen und Skripte.</translation>
    </message>
    <message>
        <source>The build is not signed off, and README.txt says so at its head.</source>
        <translation>Der Aufbau ist nicht abgezeichnet, und README.txt sagt das an seinem Anfang.</translation>
    </message>
    <message>
        <source>Sign the record</source>
        <translation>Protokoll signieren</translation>
    </message>
    <message>
        <source>Whose key is it? Customers read this name beside each signature.</source>
        <translation>Wem gehört der Schlüssel? Kunden lesen diesen Namen neben jeder Signatur.</translation>
    </message>
    <message>
        <source>A passphrase, without which nobody can sign with it; empty: none.</source>
        <translation>Eine Passphrase, ohne die niemand damit signieren kann; leer: keine.</translation>
    </message>
    <message>
        <source>The same once more.</source>
        <translation>Noch einmal dieselbe.</translation>
    </message>
    <message>
        <source>The two passphrases differ: no key was made.</source>
        <translation>Die beiden Passphrasen sind verschieden: es wurde kein Schlüssel angelegt.</translation>
    </message>
    <message>
        <source>The key of %1 was made. Its fingerprint is

%2

Tell it to whoever is to know your signature, by another way than with the record. The key lies in %3: copy that folder to a safe place, since a lost key cannot be made again.</source>
        <translation>Der Schlüssel von %1 wurde angelegt. Sein Fingerabdruck ist

%2

Ihn allen mitteilen, die die Signatur kennen sollen, auf anderem Weg als mit dem Protokoll. Der Schlüssel liegt in %3: diesen Ordner an einen sicheren Ort kopieren, denn ein verlorener Schlüssel lässt sich nicht wieder herstellen.</translation>
    </message>
    <message>
        <source>Sign all %1 entries of this record with the key of %2 (%3)?</source>
        <translation>Alle %1 Einträge dieses Protokolls mit dem Schlüssel von %2 (%3) signieren?</translation>
    </message>
    <message>
        <source>Which key signs this record?</source>
        <translation>Welcher Schlüssel signiert dieses Protokoll?</translation>
    </message>
    <message>
        <source>The passphrase of the key of %1:</source>
        <translation>Die Passphrase des Schlüssels von %1:</translation>
    </message>
    <message>
        <source>There is no key of yours that is valid today. A key of your own shows a customer that a record is from you and was not altered since. Make one now?</source>
        <translation>Es gibt keinen eigenen Schlüssel, der heute gilt. Ein eigener Schlüssel zeigt einem Kunden, dass ein Protokoll von Ihnen ist und seitdem nicht verändert wurde. Jetzt einen anlegen?</translation>
    </message>
    <message>
        <source>Si&amp;gn the record…</source>
        <translation>Protokoll si&amp;gnieren…</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Entry %1 was judged by what this changes. Why is it changed? The reason stands on the build sheet.</source>
        <translation>Eintrag %1 wurde nach dem beurteilt, was dies ändert. Warum wird es geändert? Der Grund steht auf dem Aufbaublatt.</translation>
    </message>
    <message>
        <source>The tour walks through a sample record, and it is not installed: install the program&apos;s samples again.</source>
        <translation>Der Rundgang führt durch ein Beispielprotokoll, und das ist nicht installiert: die Beispiele des Programms neu installieren.</translation>
    </message>
    <message>
        <source>tour</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Instru&amp;ments</source>
        <translation>&amp;Messmittel</translation>
    </message>
    <message>
        <source>&amp;Gauges on this computer…</source>
        <translation>&amp;Messmittel an diesem Rechner…</translation>
    </message>
    <message>
        <source>&amp;Tour</source>
        <translation>&amp;Rundgang</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Restore &amp;from a copy…</source>
        <translation>Aus einer Kopie wieder&amp;herstellen…</translation>
    </message>
    <message>
        <source>A photo is kept in a record: open the record first, then drop the photo on its place.</source>
        <translation>Ein Foto gehört in ein Protokoll: zuerst das Protokoll öffnen, dann das Foto auf seine Stelle ziehen.</translation>
    </message>
    <message>
        <source>Store what w&amp;aits</source>
        <translation>W&amp;artendes speichern</translation>
    </message>
    <message>
        <source>Kinds of &amp;entries</source>
        <translation>Eintrags&amp;arten</translation>
    </message>
    <message>
        <source>Hand-over fold&amp;er…</source>
        <translation>&amp;Übergabeordner…</translation>
    </message>
    <message numerus="yes">
        <source>%n checks are stale by it.</source>
        <translation>
            <numerusform>%n Prüfung ist dadurch veraltet.</numerusform>
            <numerusform>%n Prüfungen sind dadurch veraltet.</numerusform>
        </translation>
    </message>
    <message>
        <source>Next: %1.</source>
        <translation>Als Nächstes: %1.</translation>
    </message>
    <message>
        <source>&amp;Manual</source>
        <translation>Hand&amp;buch</translation>
    </message>
    <message>
        <source>&amp;Publish…</source>
        <translation>Verö&amp;ffentlichen…</translation>
    </message>
</context>
<context>
    <name>caprail::Manual</name>
    <message>
        <source>Manual — Caprail</source>
        <translation>Handbuch — Caprail</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>No page holds all of these words.</source>
        <translation>Keine Seite enthält alle diese Wörter.</translation>
    </message>
    <message>
        <source>Page of the manual</source>
        <translation>Seite des Handbuchs</translation>
    </message>
    <message>
        <source>Search all pages</source>
        <translation>Alle Seiten durchsuchen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Forward</source>
        <translation>Vor</translation>
    </message>
    <message>
        <source>Smaller text</source>
        <translation>Kleinere Schrift</translation>
    </message>
    <message>
        <source>Larger text</source>
        <translation>Größere Schrift</translation>
    </message>
</context>
<context>
    <name>caprail::NewRecordDialog</name>
    <message>
        <source>New record</source>
        <translation>Neues Protokoll</translation>
    </message>
    <message>
        <source>With the shop&apos;s &amp;people and instruments</source>
        <translation>Mit &amp;Personen und Messmitteln der Werkstatt</translation>
    </message>
    <message>
        <source>Empty: everything by hand</source>
        <translation>Leer: alles von Hand</translation>
    </message>
    <message>
        <source>for example 6.2 V8, block 4417</source>
        <translation>zum Beispiel 6.2 V8, Block 4417</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Make the record</source>
        <translation>Protokoll anlegen</translation>
    </message>
    <message>
        <source>&amp;Engine</source>
        <translation>&amp;Motor</translation>
    </message>
    <message>
        <source>&amp;Customer</source>
        <translation>&amp;Kunde</translation>
    </message>
    <message>
        <source>&amp;Serial or block number</source>
        <translation>&amp;Serien- oder Blocknummer</translation>
    </message>
    <message>
        <source>S&amp;hop</source>
        <translation>&amp;Werkstatt</translation>
    </message>
    <message>
        <source>&amp;Who works on it</source>
        <translation>Wer daran &amp;arbeitet</translation>
    </message>
    <message>
        <source>Te&amp;mplate</source>
        <translation>&amp;Vorlage</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>Build records (*.caprail)</source>
        <translation>Aufbauprotokolle (*.caprail)</translation>
    </message>
</context>
<context>
    <name>caprail::NextBar</name>
    <message>
        <source>&amp;Go there</source>
        <translation>D&amp;orthin</translation>
    </message>
    <message>
        <source>An engine without a name</source>
        <translation>Ein Motor ohne Namen</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Nächster Schritt: %1</translation>
    </message>
    <message>
        <source>%1: open</source>
        <translation>%1: freigegeben</translation>
    </message>
    <message>
        <source>%1: locked</source>
        <translation>%1: gesperrt</translation>
    </message>
    <message>
        <source>Nothing holds it.</source>
        <translation>Nichts steht im Weg.</translation>
    </message>
    <message>
        <source>The engine layout is not set yet.</source>
        <translation>Die Motorbauform ist noch nicht festgelegt.</translation>
    </message>
    <message>
        <source>… and %1 more, at the closing station</source>
        <translation>… und %1 weitere, an der Station Schließen</translation>
    </message>
    <message>
        <source>✕ Not entered. %1</source>
        <translation>✕ Nicht eingetragen. %1</translation>
    </message>
    <message>
        <source>The engine of this record</source>
        <translation>Der Motor dieses Protokolls</translation>
    </message>
    <message numerus="yes">
        <source>%1: locked, held by %n</source>
        <translation>
            <numerusform>%1: gesperrt durch %n Prüfung</numerusform>
            <numerusform>%1: gesperrt durch %n Prüfungen</numerusform>
        </translation>
    </message>
    <message>
        <source>build %1</source>
        <translation>Aufbau %1</translation>
    </message>
    <message>
        <source>read only: %1</source>
        <translation>nur lesbar: %1</translation>
    </message>
</context>
<context>
    <name>caprail::OpenTime</name>
    <message>
        <source>Sealant&apos;s open time</source>
        <translation>Offenzeit der Dichtmasse</translation>
    </message>
    <message>
        <source>Sealant open: %1 left</source>
        <translation>Dichtmasse offen: noch %1</translation>
    </message>
    <message>
        <source>✕ Open time over since %1: clean off, lay a new bead</source>
        <translation>✕ Offenzeit seit %1 vorbei: Dichtmasse entfernen, neue Raupe legen</translation>
    </message>
</context>
<context>
    <name>caprail::OptionalField</name>
    <message>
        <source>Part&apos;s temperature</source>
        <translation>Temperatur des Teils</translation>
    </message>
    <message>
        <source>if it was measured: 21 °C, 70 °F</source>
        <translation>wenn gemessen: 21 °C, 70 °F</translation>
    </message>
</context>
<context>
    <name>caprail::PickupSectionView</name>
    <message>
        <source>Section through pan, plate and pickup</source>
        <translation>Schnitt durch Ölwanne, Platte und Ölansaugrohr</translation>
    </message>
    <message>
        <source>Clearance %1</source>
        <translation>Abstand %1</translation>
    </message>
    <message>
        <source>Clearance not known yet</source>
        <translation>Abstand noch nicht bekannt</translation>
    </message>
</context>
<context>
    <name>caprail::PickupStation</name>
    <message>
        <source>Why ±?</source>
        <translation>Warum ±?</translation>
    </message>
    <message>
        <source>Terms of the stack-up</source>
        <translation>Glieder der Maßkette</translation>
    </message>
    <message>
        <source>Clearance under the pickup</source>
        <translation>Abstand unter dem Ölansaugrohr</translation>
    </message>
    <message>
        <source>The uncertainty of the clearance, source by source</source>
        <translation>Die Unsicherheit des Abstands, Quelle für Quelle</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>&amp;Instrument</source>
        <translation>Messmi&amp;ttel</translation>
    </message>
    <message>
        <source>Another %1 is fitted…</source>
        <translation>Anderes Teil eingebaut: %1…</translation>
    </message>
    <message>
        <source>What was measured with the old one must be measured again.</source>
        <translation>Was mit dem vorigen gemessen wurde, entfällt.</translation>
    </message>
    <message>
        <source>%1, reading %2</source>
        <translation>%1, Ablesung %2</translation>
    </message>
    <message>
        <source>Another %1</source>
        <translation>Anderes Teil: %1</translation>
    </message>
    <message>
        <source>Which %1 is fitted now, or what was done to it?</source>
        <translation>Was ist jetzt eingebaut, oder was wurde daran getan (%1)?</translation>
    </message>
    <message>
        <source>Clearance under the pickup: pan depth, plus the compressed gasket, plus the girdle plate between, minus how far the pickup hangs below the rail. Read each term twice. It must be right before anything is sealed.</source>
        <translation>Abstand unter dem Ölansaugrohr: Wannentiefe, plus verpresste Dichtung, plus Versteifungsplatte dazwischen, minus wie weit das Ölansaugrohr unter dem Flansch hängt. Jedes Glied zweimal messen. Es muss stimmen, bevor etwas abgedichtet wird.</translation>
    </message>
    <message>
        <source>%1, reading %2 of %3</source>
        <translation>%1, Ablesung %2 von %3</translation>
    </message>
    <message>
        <source>This record sets no band for it: set “%1” at the engine station.</source>
        <translation>Dieses Protokoll hat kein Band dafür: „%1“ an der Station Motor festlegen.</translation>
    </message>
</context>
<context>
    <name>caprail::PlaceHeading</name>
    <message>
        <source>Why ±?</source>
        <translation>Warum ±?</translation>
    </message>
    <message>
        <source>The uncertainty of this figure, source by source</source>
        <translation>Die Unsicherheit dieser Zahl, Quelle für Quelle</translation>
    </message>
</context>
<context>
    <name>caprail::PlacePanel</name>
    <message>
        <source>Findings, notes and photos here</source>
        <translation>Befunde, Notizen und Fotos hier</translation>
    </message>
    <message>
        <source>Finding here…</source>
        <translation>Befund hier…</translation>
    </message>
    <message>
        <source>Ctrl+D. Something seen that needs a decision: Enter opens the finding; it holds the closing gate until it is settled.</source>
        <translation>Strg+D. Etwas, das eine Entscheidung braucht: Enter eröffnet den Befund; er hält die Freigabe zum Schließen auf, bis er erledigt ist.</translation>
    </message>
    <message>
        <source>Photo here…</source>
        <translation>Foto hier…</translation>
    </message>
    <message>
        <source>The engine as a whole</source>
        <translation>Der Motor als Ganzes</translation>
    </message>
    <message>
        <source>Settled: %1</source>
        <translation>Erledigt: %1</translation>
    </message>
    <message>
        <source>✎ %1</source>
        <translation>✎ %1</translation>
    </message>
    <message>
        <source>Entry %1, %2. Enter shows it large.</source>
        <translation>Eintrag %1, %2. Enter zeigt es groß.</translation>
    </message>
    <message numerus="yes">
        <source>%n older ones are in the history.</source>
        <translation>
            <numerusform>%n ältere Eintragung steht im Verlauf.</numerusform>
            <numerusform>%n ältere Eintragungen stehen im Verlauf.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not tried on its standard today: %1. Zero checks are entered at Engine, People and instruments.</source>
        <translation>Heute nicht am Normal geprüft: %1. Nullpunktprüfungen stehen bei Motor, Personen und Messmittel.</translation>
    </message>
    <message>
        <source>Open. Enter or a double click settles it here: say what was done.</source>
        <translation>Offen. Enter oder ein Doppelklick erledigt ihn hier: sagen, was getan wurde.</translation>
    </message>
    <message>
        <source>Add photos of this place. They can be dropped anywhere, on a place of the drawing too, or pasted with Ctrl+Shift+V.</source>
        <translation>Fotos dieser Stelle hinzufügen. Sie können überall abgelegt werden, auch auf einer Stelle der Zeichnung, oder mit Strg+Umschalt+V eingefügt.</translation>
    </message>
    <message>
        <source>Done about %1…</source>
        <translation>Getan wegen %1…</translation>
    </message>
    <message>
        <source>What was done about finding %1</source>
        <translation>Was wegen Befund %1 getan wurde</translation>
    </message>
    <message>
        <source>Enter settles it with what is typed here. Esc leaves it open.</source>
        <translation>Enter erledigt ihn mit dem, was hier getippt ist. Esc lässt ihn offen.</translation>
    </message>
    <message>
        <source>Finding here: what was seen</source>
        <translation>Befund hier: was zu sehen war</translation>
    </message>
</context>
<context>
    <name>caprail::PlanTools</name>
    <message>
        <source>Turn</source>
        <translation>Drehen</translation>
    </message>
    <message>
        <source>Turn the diagram a quarter</source>
        <translation>Die Zeichnung um eine Vierteldrehung drehen</translation>
    </message>
    <message>
        <source>Flip</source>
        <translation>Spiegeln</translation>
    </message>
    <message>
        <source>Flip the diagram across the crank</source>
        <translation>Die Zeichnung quer zur Kurbelwelle spiegeln</translation>
    </message>
    <message>
        <source>Zoom in (Ctrl +)</source>
        <translation>Vergrößern (Strg +)</translation>
    </message>
    <message>
        <source>Zoom out (Ctrl −)</source>
        <translation>Verkleinern (Strg −)</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Show the whole diagram (Ctrl 0)</source>
        <translation>Die ganze Zeichnung zeigen (Strg 0)</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>Ebenen</translation>
    </message>
    <message>
        <source>What the diagrams show</source>
        <translation>Was die Zeichnungen zeigen</translation>
    </message>
    <message>
        <source>Girdle</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>Its cutout</source>
        <translation>Ihre Aussparung</translation>
    </message>
    <message>
        <source>Pickup</source>
        <translation>Ölansaugrohr</translation>
    </message>
    <message>
        <source>Dipstick</source>
        <translation>Ölmessstab</translation>
    </message>
    <message>
        <source>Crank throws</source>
        <translation>Kröpfungen</translation>
    </message>
    <message>
        <source>Tightening numbers</source>
        <translation>Anzugsnummern</translation>
    </message>
    <message>
        <source>As each station draws it</source>
        <translation>Wie jede Station es zeichnet</translation>
    </message>
</context>
<context>
    <name>caprail::PlanView</name>
    <message>
        <source>Describe the engine first: the pan rail is drawn from its layout.</source>
        <translation>Zuerst den Motor beschreiben: der Ölwannenflansch wird nach seiner Bauform gezeichnet.</translation>
    </message>
</context>
<context>
    <name>caprail::PreferencesDialog</name>
    <message>
        <source>inch</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>millimetre</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>point: 0.0575</source>
        <translation>Punkt: 0.0575</translation>
    </message>
    <message>
        <source>comma: 0,0575</source>
        <translation>Komma: 0,0575</translation>
    </message>
    <message>
        <source>like the desktop</source>
        <translation>wie das System</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>on the screen only</source>
        <translation>nur auf dem Bildschirm</translation>
    </message>
    <message>
        <source>with the bell, twice for a refusal</source>
        <translation>mit Signalton, zweimal bei Ablehnung</translation>
    </message>
    <message>
        <source>spoken</source>
        <translation>gesprochen</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Shop logo</source>
        <translation>Logo der Werkstatt</translation>
    </message>
    <message>
        <source>&amp;Lengths in</source>
        <translation>&amp;Längen in</translation>
    </message>
    <message>
        <source>Tor&amp;ques in</source>
        <translation>D&amp;rehmomente in</translation>
    </message>
    <message>
        <source>&amp;Decimal mark</source>
        <translation>&amp;Dezimalzeichen</translation>
    </message>
    <message>
        <source>L&amp;ook</source>
        <translation>&amp;Aussehen</translation>
    </message>
    <message>
        <source>Spoken from the next start of the program.</source>
        <translation>Gilt ab dem nächsten Start des Programms.</translation>
    </message>
    <message>
        <source>Lan&amp;guage (from the next start)</source>
        <translation>Spra&amp;che (ab dem nächsten Start)</translation>
    </message>
    <message>
        <source>&amp;Entries are confirmed</source>
        <translation>&amp;Einträge werden bestätigt</translation>
    </message>
    <message>
        <source>P&amp;aper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>&amp;Shop name on the sheet</source>
        <translation>Name der &amp;Werkstatt auf dem Blatt</translation>
    </message>
    <message>
        <source>Sho&amp;p logo</source>
        <translation>L&amp;ogo der Werkstatt</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>big-block near</source>
        <translation>Big Block etwa bei</translation>
    </message>
    <message>
        <source> hp</source>
        <translation> hp</translation>
    </message>
    <message>
        <source>Consider a girdle, %1</source>
        <translation>Versteifungsplatte erwägen, %1</translation>
    </message>
    <message>
        <source>Consider a girdle o&amp;n a small-block</source>
        <translation>&amp;Versteifungsplatte erwägen, Small Block</translation>
    </message>
    <message>
        <source>high contrast</source>
        <translation>hoher Kontrast</translation>
    </message>
    <message>
        <source>Pictures (%1)</source>
        <translation>Bilder (%1)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Te&amp;xt size (in full from the next start)</source>
        <translation>Te&amp;xtgröße (ganz ab dem nächsten Start)</translation>
    </message>
    <message>
        <source>A service of ~/.pg_service.conf, or an address without a password: Shop ▸ Publish.</source>
        <translation>Ein Dienst aus ~/.pg_service.conf oder eine Adresse ohne Passwort: Werkstatt ▸ Veröffentlichen.</translation>
    </message>
    <message>
        <source>S&amp;hop&apos;s database</source>
        <translation>Datenban&amp;k der Werkstatt</translation>
    </message>
    <message>
        <source>Records that were added to on this computer are sent by themselves.</source>
        <translation>Protokolle, zu denen auf diesem Rechner etwas hinzukam, werden von selbst geschickt.</translation>
    </message>
    <message>
        <source>P&amp;ublish by itself</source>
        <translation>Von selbst &amp;veröffentlichen</translation>
    </message>
</context>
<context>
    <name>caprail::PublishDialog</name>
    <message>
        <source>Publish</source>
        <translation>Veröffentlichen</translation>
    </message>
    <message>
        <source>shop, or postgresql://bench@server/caprail</source>
        <translation>werkstatt, oder postgresql://bench@server/caprail</translation>
    </message>
    <message>
        <source>Records that were added to on this computer are sent by themselves.</source>
        <translation>Protokolle, zu denen auf diesem Rechner etwas hinzukam, werden von selbst geschickt.</translation>
    </message>
    <message>
        <source>this record, %1</source>
        <translation>dieses Protokoll, %1</translation>
    </message>
    <message>
        <source>&amp;Folder…</source>
        <translation>&amp;Ordner…</translation>
    </message>
    <message>
        <source>&amp;Database</source>
        <translation>&amp;Datenbank</translation>
    </message>
    <message>
        <source>A service of ~/.pg_service.conf, or an address. A password belongs into ~/.pgpass or the service file.</source>
        <translation>Ein Dienst aus ~/.pg_service.conf oder eine Adresse. Ein Passwort gehört in ~/.pgpass oder die Dienstdatei.</translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation>&amp;Was</translation>
    </message>
    <message>
        <source>Publish by &amp;itself</source>
        <translation>Von &amp;selbst veröffentlichen</translation>
    </message>
    <message>
        <source>How much of the record is sent</source>
        <translation>Wie viel des Protokolls geschickt ist</translation>
    </message>
    <message>
        <source>What came of each record</source>
        <translation>Was aus jedem Protokoll wurde</translation>
    </message>
    <message>
        <source>&amp;Publish</source>
        <translation>&amp;Veröffentlichen</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Anhalten</translation>
    </message>
    <message>
        <source>the records of %1</source>
        <translation>die Protokolle von %1</translation>
    </message>
    <message>
        <source>Folder of records</source>
        <translation>Ordner mit Protokollen</translation>
    </message>
</context>
<context>
    <name>caprail::Publisher</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Name the shop&apos;s database first.</source>
        <translation>Erst die Datenbank der Werkstatt nennen.</translation>
    </message>
    <message>
        <source>Publishing %1 (%2 of %3)</source>
        <translation>%1 wird veröffentlicht (%2 von %3)</translation>
    </message>
    <message>
        <source>Publishing waits for the database; tried again at %1</source>
        <translation>Das Veröffentlichen wartet auf die Datenbank; neuer Versuch um %1</translation>
    </message>
    <message>
        <source>%1 record could not be published</source>
        <translation>%1 Protokoll konnte nicht veröffentlicht werden</translation>
    </message>
    <message>
        <source>%1 records could not be published</source>
        <translation>%1 Protokolle konnten nicht veröffentlicht werden</translation>
    </message>
    <message>
        <source>A change could not be noted to be published; it is tried again</source>
        <translation>Eine Änderung ließ sich nicht zum Veröffentlichen vormerken; es wird wieder versucht</translation>
    </message>
</context>
<context>
    <name>caprail::RecordSession</name>
    <message>
        <source>This record was written by an earlier version of the program and was brought up to date. As it was, it is kept in %1.</source>
        <translation>Dieses Protokoll stammt von einer früheren Version des Programms und wurde auf den neuen Stand gebracht. Wie es war, ist es in %1 aufbewahrt.</translation>
    </message>
    <message>
        <source>%1 does not answer. What is entered now waits here, and is stored as soon as it does.</source>
        <translation>%1 antwortet nicht. Was jetzt eingegeben wird, wartet hier und wird gespeichert, sobald es wieder antwortet.</translation>
    </message>
</context>
<context>
    <name>caprail::SerialGauge</name>
    <message>
        <source>%1 is not connected at %2: plug it in, it is taken up again by itself. Nothing is lost.</source>
        <translation>%1 ist nicht an %2 angeschlossen: einstecken, es wird von selbst wieder aufgenommen. Nichts ist verloren.</translation>
    </message>
    <message>
        <source>%1 at %2 is used by another program, or you may not use it: close that program, or have yourself added to the group that owns it (mostly “dialout”).</source>
        <translation>%1 an %2 wird von einem anderen Programm benutzt, oder es fehlt das Recht dazu: das Programm schließen oder sich in die Gruppe aufnehmen lassen, der der Anschluss gehört (meist „dialout“).</translation>
    </message>
    <message>
        <source>%1 at %2 cannot be read as a serial port (%3): choose its port under Instruments ▸ Gauges on this computer.</source>
        <translation>%1 an %2 lässt sich nicht als serieller Anschluss lesen (%3): seinen Anschluss unter Messmittel ▸ Messmittel an diesem Rechner wählen.</translation>
    </message>
    <message>
        <source>%1 is connected again at %2.</source>
        <translation>%1 ist wieder an %2 angeschlossen.</translation>
    </message>
    <message>
        <source>%1 went away from %2: plug it in again, it is taken up by itself. What it sent before is stored.</source>
        <translation>%1 ist nicht mehr an %2: wieder einstecken, es wird von selbst aufgenommen. Was es vorher gesendet hat, ist gespeichert.</translation>
    </message>
</context>
<context>
    <name>caprail::ShelfDialog</name>
    <message>
        <source>serial %1</source>
        <translation>Seriennummer %1</translation>
    </message>
    <message>
        <source>calibration due %1</source>
        <translation>Kalibrierung fällig %1</translation>
    </message>
    <message>
        <source>calibrated %1</source>
        <translation>kalibriert %1</translation>
    </message>
    <message>
        <source>shims: %1</source>
        <translation>Distanzscheiben: %1</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>Im Regal</translation>
    </message>
    <message>
        <source>The shop&apos;s shelf</source>
        <translation>Das Regal der Werkstatt</translation>
    </message>
    <message>
        <source>What the shop has for every engine. It is copied into a record when it is used there; a change here changes no record.</source>
        <translation>Was die Werkstatt für jeden Motor hat. Es wird in ein Protokoll kopiert, wenn es dort gebraucht wird; eine Änderung hier ändert kein Protokoll.</translation>
    </message>
    <message>
        <source>name its shims&apos; kit, or leave it empty</source>
        <translation>den Satz der Distanzscheiben benennen oder leer lassen</translation>
    </message>
    <message>
        <source>Name of the kit</source>
        <translation>Name des Satzes</translation>
    </message>
    <message>
        <source>&amp;Keep from this record</source>
        <translation>Aus diesem Protokoll ins Regal &amp;legen</translation>
    </message>
    <message>
        <source>Its people and instruments, and its shims under the name of a kit</source>
        <translation>Seine Personen und Messmittel sowie seine Distanzscheiben unter dem Namen eines Satzes</translation>
    </message>
    <message>
        <source>&amp;Take off the shelf</source>
        <translation>Aus dem Regal &amp;nehmen</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>Kits of shims</source>
        <translation>Sätze von Distanzscheiben</translation>
    </message>
</context>
<context>
    <name>caprail::ShopModel</name>
    <message>
        <source>Files that are not records</source>
        <translation>Dateien, die keine Protokolle sind</translation>
    </message>
    <message>
        <source>No customer named</source>
        <translation>Kein Kunde genannt</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>Later than this computer&apos;s clock: one of the two clocks was wrong.</source>
        <translation>Später als die Uhr dieses Rechners: eine der beiden Uhren ging falsch.</translation>
    </message>
</context>
<context>
    <name>caprail::ShopWatcher</name>
    <message>
        <source>What is read cannot be kept in %1: at the next start every record is read again.</source>
        <translation>Was gelesen wird, lässt sich in %1 nicht aufbewahren: beim nächsten Start wird jedes Protokoll neu gelesen.</translation>
    </message>
</context>
<context>
    <name>caprail::ShopWindow</name>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Any state</source>
        <translation>Jeder Stand</translation>
    </message>
    <message>
        <source>Measuring</source>
        <translation>Wird gemessen</translation>
    </message>
    <message>
        <source>Trial fit open</source>
        <translation>Probemontage freigegeben</translation>
    </message>
    <message>
        <source>Ready to close</source>
        <translation>Schließen freigegeben</translation>
    </message>
    <message>
        <source>Signed off</source>
        <translation>Abgezeichnet</translation>
    </message>
    <message>
        <source>Out, stale or moved</source>
        <translation>Außerhalb, veraltet oder weitergedreht</translation>
    </message>
    <message>
        <source>No record that can be read</source>
        <translation>Kein lesbares Protokoll</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <source>Any calibration</source>
        <translation>Jede Kalibrierung</translation>
    </message>
    <message>
        <source>Overdue</source>
        <translation>Überfällig</translation>
    </message>
    <message>
        <source>Due within 30 days</source>
        <translation>Fällig innerhalb von 30 Tagen</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Anyone</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>No groups</source>
        <translation>Keine Gruppen</translation>
    </message>
    <message>
        <source>By customer</source>
        <translation>Nach Kunde</translation>
    </message>
    <message>
        <source>By state</source>
        <translation>Nach Stand</translation>
    </message>
    <message>
        <source>S&amp;top</source>
        <translation>&amp;Halt</translation>
    </message>
    <message>
        <source>Shop — Caprail</source>
        <translation>Werkstatt — Caprail</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Protokolle</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Fortschritt des Lesens</translation>
    </message>
    <message>
        <source>Search customers, engines, people, notes and findings</source>
        <translation>Kunden, Motoren, Personen, Notizen und Befunde durchsuchen</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>&amp;Folder…</source>
        <translation>&amp;Ordner…</translation>
    </message>
    <message>
        <source>&amp;Shop</source>
        <translation>&amp;Werkstatt</translation>
    </message>
    <message>
        <source>Open the &amp;record</source>
        <translation>Das &amp;Protokoll öffnen</translation>
    </message>
    <message>
        <source>&amp;Choose the folder…</source>
        <translation>Den Ordner &amp;wählen…</translation>
    </message>
    <message>
        <source>&amp;Look again</source>
        <translation>&amp;Noch einmal nachsehen</translation>
    </message>
    <message>
        <source>&amp;Search</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>Compare &amp;engines…</source>
        <translation>&amp;Motoren vergleichen…</translation>
    </message>
    <message>
        <source>&amp;Templates…</source>
        <translation>&amp;Vorlagen…</translation>
    </message>
    <message>
        <source>The s&amp;helf…</source>
        <translation>Das &amp;Regal…</translation>
    </message>
    <message>
        <source>Save the list as a &amp;table (CSV)…</source>
        <translation>Die Liste als &amp;Tabelle speichern (CSV)…</translation>
    </message>
    <message>
        <source>Close &amp;window</source>
        <translation>Fenster s&amp;chließen</translation>
    </message>
    <message>
        <source>The folder of the records</source>
        <translation>Der Ordner der Protokolle</translation>
    </message>
    <message>
        <source>Not reachable since %1; what was known then is still listed.</source>
        <translation>Nicht erreichbar seit %1; was damals bekannt war, steht noch in der Liste.</translation>
    </message>
    <message>
        <source>Further folders that could not be read: %1.</source>
        <translation>Weitere Ordner, die sich nicht lesen ließen: %1.</translation>
    </message>
    <message>
        <source>Reading was stopped: press F5 to go on.</source>
        <translation>Das Lesen wurde angehalten: F5 setzt es fort.</translation>
    </message>
    <message>
        <source>looking</source>
        <translation>sieht nach</translation>
    </message>
    <message>
        <source>%v of %m found</source>
        <translation>%v von %m gefunden</translation>
    </message>
    <message>
        <source>%v of %m read</source>
        <translation>%v von %m gelesen</translation>
    </message>
    <message>
        <source>Choose the folder that the records lie in.</source>
        <translation>Den Ordner wählen, in dem die Protokolle liegen.</translation>
    </message>
    <message>
        <source>Files: %1</source>
        <translation>Dateien: %1</translation>
    </message>
    <message>
        <source>Files: %1 of %2</source>
        <translation>Dateien: %1 von %2</translation>
    </message>
    <message>
        <source>The list as a table</source>
        <translation>Die Liste als Tabelle</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>Caprail</source>
        <translation>Caprail</translation>
    </message>
    <message>
        <source>no record that can be read: %1</source>
        <translation>kein lesbares Protokoll: %1</translation>
    </message>
    <message>
        <source>Open a &amp;database…</source>
        <translation>Eine &amp;Datenbank öffnen…</translation>
    </message>
    <message>
        <source>&amp;Publish…</source>
        <translation>&amp;Veröffentlichen…</translation>
    </message>
    <message>
        <source>No record matches what is searched for and chosen above.</source>
        <translation>Kein Protokoll passt zu dem, was oben gesucht und gewählt ist.</translation>
    </message>
    <message>
        <source>No build record lies in this folder, or in the folders in it.</source>
        <translation>In diesem Ordner und in den Ordnern darin liegt kein Protokoll.</translation>
    </message>
</context>
<context>
    <name>caprail::StartPage</name>
    <message>
        <source>Caprail</source>
        <translation>Caprail</translation>
    </message>
    <message>
        <source>The assembly build record of one engine per file: bearing clearances, fastener torques, the shim stacks under the girdle, trial fit and pickup depth — with what is no longer valid, and why, before anything is closed up.</source>
        <translation>Je Datei das Aufbauprotokoll eines Motors: Lagerspiele, Anzugsmomente, die Scheibenstapel unter der Versteifungsplatte, Probemontage und Ansaugtiefe – mit dem, was nicht mehr gilt, und warum, bevor der Motor verschlossen wird.</translation>
    </message>
    <message>
        <source>&amp;New record</source>
        <translation>&amp;Neues Protokoll</translation>
    </message>
    <message>
        <source>for an engine on the stand, from a template or by hand</source>
        <translation>für einen Motor auf dem Montagebock, aus einer Vorlage oder von Hand</translation>
    </message>
    <message>
        <source>&amp;Open a record</source>
        <translation>&amp;Protokoll öffnen</translation>
    </message>
    <message>
        <source>a .caprail file; or drop one on this window</source>
        <translation>eine .caprail-Datei; oder auf dieses Fenster ziehen</translation>
    </message>
    <message>
        <source>&amp;Shop</source>
        <translation>&amp;Werkstatt</translation>
    </message>
    <message>
        <source>all records of a folder: searched, sorted, compared</source>
        <translation>alle Protokolle eines Ordners: durchsucht, sortiert, verglichen</translation>
    </message>
    <message>
        <source>&amp;Recent records</source>
        <translation>&amp;Zuletzt geöffnete Protokolle</translation>
    </message>
    <message>
        <source>&amp;Sample records (opened as a copy)</source>
        <translation>&amp;Beispielprotokolle (als Kopie geöffnet)</translation>
    </message>
    <message>
        <source>The part maker&apos;s instructions, local codes and licensed practice come first; nothing here overrides them.</source>
        <translation>Die Anweisungen der Teilehersteller, örtliche Vorschriften und zugelassene Fachleute gehen vor; nichts hier setzt sie außer Kraft.</translation>
    </message>
    <message>
        <source>Man&amp;ual</source>
        <translation>Handb&amp;uch</translation>
    </message>
    <message>
        <source>the whole job, station by station; F1 opens it anywhere</source>
        <translation>die ganze Arbeit, Station für Station; F1 öffnet es überall</translation>
    </message>
</context>
<context>
    <name>caprail::StationList</name>
    <message>
        <source>Stations</source>
        <translation>Stationen</translation>
    </message>
    <message numerus="yes">
        <source>%1: worst is %2, %n open (%3)</source>
        <translation>
            <numerusform>%1: schlechtester Stand %2, %n offen (%3)</numerusform>
            <numerusform>%1: schlechtester Stand %2, %n offen (%3)</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: locked (%2)</source>
        <translation>%1: gesperrt (%2)</translation>
    </message>
    <message numerus="yes">
        <source>%1: locked, held by %n (%2)</source>
        <translation>
            <numerusform>%1: gesperrt durch %n Prüfung (%2)</numerusform>
            <numerusform>%1: gesperrt durch %n Prüfungen (%2)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>caprail::TemplateEditor</name>
    <message>
        <source>Save as a template</source>
        <translation>Als Vorlage speichern</translation>
    </message>
    <message>
        <source>The layout, bands, rules and fastener groups that are in force in this record now. A template of the same name gets the next revision; records begun from it stay as they are.</source>
        <translation>Motorbauform, Bänder, Regeln und Schraubengruppen, die jetzt in diesem Protokoll gelten. Eine Vorlage gleichen Namens erhält die nächste Ausgabe; Protokolle, die damit begonnen wurden, bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Template</source>
        <translation>Vorlage</translation>
    </message>
    <message>
        <source>template</source>
        <translation>Vorlage</translation>
    </message>
    <message>
        <source>Layout, bands and rules</source>
        <translation>Motorbauform, Bänder und Regeln</translation>
    </message>
    <message>
        <source>Fastener groups</source>
        <translation>Schraubengruppen</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Sources</source>
        <translation>&amp;Quellen</translation>
    </message>
    <message>
        <source>who says so: a document, a person</source>
        <translation>wer das sagt: ein Dokument, eine Person</translation>
    </message>
    <message>
        <source>&amp;Keep the template</source>
        <translation>Vorlage &amp;speichern</translation>
    </message>
</context>
<context>
    <name>caprail::TemplatesDialog</name>
    <message>
        <source>&amp;Edit…</source>
        <translation>&amp;Bearbeiten…</translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translation>E&amp;xportieren…</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Templates</source>
        <translation>Vorlagen</translation>
    </message>
    <message>
        <source>What the template sets</source>
        <translation>Was die Vorlage festlegt</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>&amp;Einlesen…</translation>
    </message>
    <message>
        <source>The shop&apos;s own</source>
        <translation>Eigene der Werkstatt</translation>
    </message>
    <message>
        <source>&amp;Edit a copy…</source>
        <translation>Eine &amp;Kopie bearbeiten…</translation>
    </message>
    <message>
        <source>The shop&apos;s own, revision %1.</source>
        <translation>Eigene der Werkstatt, Revision %1.</translation>
    </message>
    <message>
        <source>Carried by the program.</source>
        <translation>Mit dem Programm geliefert.</translation>
    </message>
    <message>
        <source>Sources: %1</source>
        <translation>Quellen: %1</translation>
    </message>
    <message>
        <source>Import a template</source>
        <translation>Vorlage einlesen</translation>
    </message>
    <message>
        <source>Templates (*.jsonl);;All files (*)</source>
        <translation>Vorlagen (*.jsonl);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Export the template</source>
        <translation>Vorlage exportieren</translation>
    </message>
    <message>
        <source>Templates (*.jsonl)</source>
        <translation>Vorlagen (*.jsonl)</translation>
    </message>
</context>
<context>
    <name>caprail::Tour</name>
    <message>
        <source>This is a V8 on the stand, in the middle of its build. On the left stand the eight stations in the order of the work, each with its own state. Above them is the one next thing to do, with the way there. Here it is said whose engine it is, where its caps and fasteners lie, what it is judged by, who works on it and with which instruments.</source>
        <translation>Das ist ein V8 auf dem Montagebock, mitten im Aufbau. Links stehen die acht Stationen in der Reihenfolge der Arbeit, jede mit ihrem Stand. Darüber steht das eine Nächste, was zu tun ist, mit dem Weg dorthin. Hier steht, wessen Motor es ist, wo seine Deckel und Verschraubungen liegen, wonach geurteilt wird, wer daran arbeitet und mit welchen Messmitteln.</translation>
    </message>
    <message>
        <source>Ctrl+U shows every length in millimetres, and again in inches. Nothing of it changes the record.</source>
        <translation>Strg+U zeigt jede Länge in Millimetern und wieder in Zoll. Am Protokoll ändert das nichts.</translation>
    </message>
    <message>
        <source>Journals and bores give each bearing its clearance, with what the instruments leave open. Main 4 is stale: a fastener of its cap moved after the bore was read. The number is still there, and so is the reason why it no longer counts. Nothing is ever erased.</source>
        <translation>Zapfen und Bohrungen ergeben das Spiel jedes Lagers, mit dem, was die Messmittel offen lassen. Hauptlager 4 ist veraltet: Eine Verschraubung seines Deckels drehte sich weiter, nachdem die Bohrung gemessen war. Die Zahl steht noch da, und auch der Grund, warum sie nicht mehr zählt. Nichts wird je gelöscht.</translation>
    </message>
    <message>
        <source>Choose main 2 and main 4 on the drawing, with the pointer or the arrow keys, and compare what is said of them.</source>
        <translation>Auf der Zeichnung Hauptlager 2 und Hauptlager 4 wählen, mit der Maus oder den Pfeiltasten, und vergleichen, was zu ihnen gesagt wird.</translation>
    </message>
    <message>
        <source>What each group is tightened to, what each fastener was tightened to, and the verify rounds: with the stacks off, every main-cap and rod fastener is tried again. In round 1 main 4 right moved by 5°. All that is stale in this record comes from that one fastener.</source>
        <translation>Worauf jede Gruppe anzuziehen ist, worauf jede Verschraubung angezogen wurde, und die Prüfrunden: Bei abgenommenen Stapeln wird jede Verschraubung der Hauptlagerdeckel und Pleuel noch einmal geprüft. In Runde 1 drehte sich Hauptlager 4 rechts um 5° weiter. Alles, was in diesem Protokoll veraltet ist, kommt von dieser einen Verschraubung.</translation>
    </message>
    <message>
        <source>Go through the views above the drawing with Alt+1, Alt+2 and so on, and find where the round is shown.</source>
        <translation>Mit Alt+1, Alt+2 und so weiter durch die Ansichten über der Zeichnung gehen und finden, wo die Runde gezeigt wird.</translation>
    </message>
    <message>
        <source>The gap at each stud between rail and girdle, the kit of shims, the stacks that fill the gaps, and the straightedge that rechecks them. The two places of cap 4 fell with its fastener. The other eight stand as they were built.</source>
        <translation>Das Spaltmaß an jedem Stehbolzen zwischen Flansch und Platte, der Satz der Distanzscheiben, die Stapel, die die Spalte füllen, und das Haarlineal, das sie nachprüft. Die zwei Stellen von Deckel 4 fielen mit seiner Verschraubung. Die anderen acht stehen, wie sie aufgebaut wurden.</translation>
    </message>
    <message>
        <source>Type 0.7 into the field and press Enter: no gap is that wide, so it is asked back and stays in the field. Esc empties it. F9 shows the same field in figures for the engine stand; F9 again goes back.</source>
        <translation>0.7 in das Feld eintippen und Enter drücken: So weit ist kein Spalt, also wird zurückgefragt, und der Wert bleibt im Feld. Esc leert es. F9 zeigt dasselbe Feld in großen Ziffern für den Montagebock; noch einmal F9 führt zurück.</translation>
    </message>
    <message>
        <source>With the girdle on its stacks: does everything clear, does the crank turn? It was done once. It is stale and locked until cap 4 is right again, and says what holds it.</source>
        <translation>Die Platte liegt auf ihren Stapeln: Geht alles frei, dreht sich die Kurbelwelle? Es wurde einmal gemacht. Jetzt ist es veraltet und gesperrt, bis Deckel 4 wieder stimmt, und sagt, was es aufhält.</translation>
    </message>
    <message>
        <source>Press a reason in the list of what holds the gate: it leads to its place. Come back with Ctrl+5.</source>
        <translation>In der Liste dessen, was die Freigabe aufhält, einen Grund anklicken: Er führt zu seiner Stelle. Mit Strg+5 zurück.</translation>
    </message>
    <message>
        <source>Pan depth, gasket, plate and pickup, each read twice, give the room under the pickup: to scale, with its band and what the instruments leave open. No fastener of cap 4 has to do with it, so it stands.</source>
        <translation>Wannentiefe, Dichtung, Platte und Ölansaugrohr, jedes zweimal gemessen, ergeben den Raum unter dem Ölansaugrohr: maßstäblich, mit seinem Band und dem, was die Messmittel offen lassen. Keine Verschraubung von Deckel 4 hat damit zu tun, also gilt es weiter.</translation>
    </message>
    <message>
        <source>Choose “Why” beside the value: it shows which reading leaves most of it open.</source>
        <translation>„Warum“ neben dem Wert wählen: Es zeigt, welche Messung das meiste davon offen lässt.</translation>
    </message>
    <message>
        <source>What hides everything else comes last: shims counted back, stacks, bead, nuts, crank, pan, and the sign-off. It opens when nothing is out, open or stale, and every fastener has held in a round of its own.</source>
        <translation>Was alles andere verdeckt, kommt zuletzt: Scheiben zurückgezählt, Stapel, Raupe, Muttern, Kurbelwelle, Ölwanne und das Abzeichnen. Freigegeben wird es, wenn nichts außerhalb, offen oder veraltet ist und jede Verschraubung in einer eigenen Runde hielt.</translation>
    </message>
    <message>
        <source>Ctrl+Enter goes to the next thing to do, from anywhere, until there is nothing left but to sign off.</source>
        <translation>Strg+Enter führt von überall zum Nächsten, was zu tun ist, bis nur noch das Abzeichnen bleibt.</translation>
    </message>
    <message>
        <source>Every entry, in order, with who made it and when, each sealed to all before it. A wrong one is struck with a reason and stays readable. File ▸ Build sheet as PDF makes what the customer gets.</source>
        <translation>Jeder Eintrag, der Reihe nach, mit wem und wann, jeder mit allen vor ihm besiegelt. Ein falscher wird mit einem Grund gestrichen und bleibt lesbar. Datei ▸ Aufbaublatt als PDF macht, was der Kunde bekommt.</translation>
    </message>
    <message>
        <source>Ctrl+F, then type: moved. Ctrl+Z strikes the last entry, after asking why. This is a copy in a temporary folder; it goes when you close its window.</source>
        <translation>Strg+F, dann eintippen: 4R. Strg+Z streicht den letzten Eintrag, nachdem nach dem Grund gefragt wurde. Dies ist eine Kopie in einem vorläufigen Ordner; sie verschwindet, wenn ihr Fenster geschlossen wird.</translation>
    </message>
    <message>
        <source>Tour</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Back  (Alt+←)</source>
        <translation>Zurück  (Alt+←)</translation>
    </message>
    <message>
        <source>Close the tour  (Shift+F1)</source>
        <translation>Schließen  (Umschalt+F1)</translation>
    </message>
    <message>
        <source>%1 of %2: %3</source>
        <translation>%1 von %2: %3</translation>
    </message>
    <message>
        <source>Try it: %1</source>
        <translation>Zum Ausprobieren: %1</translation>
    </message>
    <message>
        <source>Next  (Alt+→)</source>
        <translation>Weiter  (Alt+→)</translation>
    </message>
    <message>
        <source>Done  (Alt+→)</source>
        <translation>Fertig  (Alt+→)</translation>
    </message>
</context>
<context>
    <name>caprail::TrialFitStation</name>
    <message>
        <source>Fai&amp;l</source>
        <translation>&amp;Nicht bestanden</translation>
    </message>
    <message>
        <source>What is looked at in the trial fit</source>
        <translation>Was bei der Probemontage angesehen wird</translation>
    </message>
    <message>
        <source>What holds the trial fit</source>
        <translation>Was die Probemontage aufhält</translation>
    </message>
    <message>
        <source>Type what was seen first; it becomes a finding.</source>
        <translation>Zuerst eingeben, was zu sehen war; es wird ein Befund.</translation>
    </message>
    <message>
        <source>This build is signed off.</source>
        <translation>Dieser Aufbau ist abgezeichnet.</translation>
    </message>
    <message>
        <source>▣  Locked: the engine layout is not set yet.</source>
        <translation>▣  Gesperrt: die Motorbauform ist noch nicht festgelegt.</translation>
    </message>
    <message>
        <source>▣  Locked: %1 of %2 checks hold it. Choose one to go there.</source>
        <translation>▣  Gesperrt durch %1 von %2 Prüfungen. Eine wählen, um hinzugehen.</translation>
    </message>
    <message>
        <source>Set the engine layout at the engine station: the throws are drawn from it.</source>
        <translation>Die Motorbauform an der Station Motor festlegen: die Kröpfungen werden danach gezeichnet.</translation>
    </message>
    <message>
        <source>All girdle nuts are at torque</source>
        <translation>Alle Plattenmuttern sind auf Drehmoment</translation>
    </message>
    <message>
        <source>%1 brought to (Enter alone: as specified)</source>
        <translation>%1 angezogen auf (nur Enter: wie vorgegeben)</translation>
    </message>
    <message>
        <source>%1: to start it / to turn it</source>
        <translation>%1: zum Losbrechen / zum Drehen</translation>
    </message>
    <message>
        <source>%1 to start it, %2 to turn it</source>
        <translation>%1 zum Losbrechen, %2 zum Drehen</translation>
    </message>
    <message>
        <source>Lay the girdle on its stacks, bring its nuts to torque, and answer each line: p passes, f fails, or type the clearance.</source>
        <translation>Die Platte auf ihre Stapel legen, ihre Muttern auf Drehmoment bringen und jede Zeile beantworten: p bestanden, f nicht bestanden, oder das Spiel eintippen.</translation>
    </message>
    <message>
        <source>With the girdle on its stacks and its nuts at torque: which way round it goes, and that dipstick, pickup tube, counterweights and rod bolts are clear through two turns by hand; how hard the crank turns before and after. It unlocks once every stack has been rechecked.</source>
        <translation>Mit der Platte auf ihren Stapeln und ihren Muttern auf Drehmoment: wie herum sie liegt, und dass Ölmessstab, Ölansaugrohr, Gegengewichte und Pleuelschrauben über zwei Umdrehungen von Hand frei sind; wie schwer die Kurbelwelle vorher und nachher dreht. Sie wird freigegeben, sobald jeder Stapel nachgeprüft ist.</translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Bestanden</translation>
    </message>
    <message>
        <source>Fail</source>
        <translation>Nicht bestanden</translation>
    </message>
    <message>
        <source>P&amp;ass</source>
        <translation>Bes&amp;tanden</translation>
    </message>
</context>
<context>
    <name>caprail::TrialFitWay</name>
    <message>
        <source>Girdle lies like this</source>
        <translation>So liegt die Platte</translation>
    </message>
    <message>
        <source>Face that is up</source>
        <translation>Oben liegende Fläche</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 oben</translation>
    </message>
    <message>
        <source>End that the cutout is towards</source>
        <translation>Ende, zu dem die Aussparung zeigt</translation>
    </message>
    <message>
        <source>cutout to the %1</source>
        <translation>Aussparung nach %1</translation>
    </message>
    <message>
        <source>Side that the cutout is on</source>
        <translation>Seite, auf der die Aussparung liegt</translation>
    </message>
    <message>
        <source>on the %1</source>
        <translation>Seite: %1</translation>
    </message>
</context>
</TS>
