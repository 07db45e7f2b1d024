<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR" sourcelanguage="en">
<context>
    <name></name>
    <message>
        <source>Entry %1 is lost: %2</source>
        <translation>L&apos;inscription %1 est perdue&#xa0;: %2</translation>
    </message>
    <message>
        <source>The seal of entry %1 does not fit: it was altered, or the one before it is lost.</source>
        <translation>Le sceau de l&apos;inscription %1 ne correspond pas&#xa0;: elle a été modifiée, ou la précédente est perdue.</translation>
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

Le carnet de montage d&apos;un moteur dans un fichier.

Logiciel libre sous licence publique générale GNU, version 3 ou ultérieure. Sans aucune garantie.

Réalisé avec&#xa0;:</translation>
    </message>
    <message>
        <source>About Caprail</source>
        <translation>À propos de Caprail</translation>
    </message>
    <message>
        <source>&amp;Copy for a report</source>
        <translation>&amp;Copier pour un signalement</translation>
    </message>
</context>
<context>
    <name>AcrossText</name>
    <message>
        <source>No record that is chosen holds such a value.</source>
        <translation>Aucun carnet choisi ne contient une telle valeur.</translation>
    </message>
    <message>
        <source>No values.</source>
        <translation>Aucune valeur.</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>moteur</translation>
    </message>
    <message>
        <source>%1: %2, %3, build %4, %5</source>
        <translation>%1&#xa0;: %2, %3, montage %4, %5</translation>
    </message>
    <message>
        <source>%1 values at %2 places, from %3 to %4.</source>
        <translation>%1 valeurs à %2 endroits, de %3 à %4.</translation>
    </message>
    <message>
        <source>%1 values: only their ranges are drawn</source>
        <translation>%1 valeurs&#xa0;: seules leurs étendues sont tracées</translation>
    </message>
    <message>
        <source>The values are not here yet.</source>
        <translation>Les valeurs ne sont pas encore là.</translation>
    </message>
</context>
<context>
    <name>BearingsStation</name>
    <message>
        <source>station %1</source>
        <translation>section %1</translation>
    </message>
    <message>
        <source>%1 (front)</source>
        <translation>%1 (avant)</translation>
    </message>
    <message>
        <source>%1 (rear)</source>
        <translation>%1 (arrière)</translation>
    </message>
    <message>
        <source>vertical</source>
        <translation>vertical</translation>
    </message>
    <message>
        <source>horizontal</source>
        <translation>horizontal</translation>
    </message>
    <message>
        <source>direction %1</source>
        <translation>direction %1</translation>
    </message>
    <message>
        <source>gauging strip</source>
        <translation>fil calibré</translation>
    </message>
    <message>
        <source>shells %1 and %2</source>
        <translation>coussinets %1 et %2</translation>
    </message>
    <message>
        <source>strip</source>
        <translation>fil</translation>
    </message>
    <message>
        <source>Its band is not set: set it at the engine station, under Bands.</source>
        <translation>Sa plage n&apos;est pas fixée&#xa0;: la fixer au poste Moteur, sous «&#xa0;Plages&#xa0;».</translation>
    </message>
    <message>
        <source>Journal, mean</source>
        <translation>Portée, moyenne</translation>
    </message>
    <message>
        <source>Taper · out-of-round</source>
        <translation>Conicité · ovalisation</translation>
    </message>
    <message>
        <source>Smallest · largest</source>
        <translation>Minimum · maximum</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Plage</translation>
    </message>
    <message>
        <source>clearance %1</source>
        <translation>jeu %1</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Incertitude</translation>
    </message>
    <message>
        <source>read, mean %1</source>
        <translation>lu, moyenne %1</translation>
    </message>
    <message>
        <source>side clearance %1</source>
        <translation>jeu latéral %1</translation>
    </message>
</context>
<context>
    <name>CautionLabel</name>
    <message>
        <source>Cautions …</source>
        <translation>Précautions …</translation>
    </message>
</context>
<context>
    <name>CautionsText</name>
    <message>
        <source>The instructions of the parts&apos; makers, local codes and licensed practice come first. What this program proposes never overrides them.</source>
        <translation>Les instructions des fabricants des pièces, les règles locales et le savoir d&apos;un professionnel agréé passent d&apos;abord. Rien de ce que ce programme propose ne les remplace.</translation>
    </message>
    <message>
        <source>A block is heavy: lock the stand before you lean on it or reach under it.</source>
        <translation>Un bloc est lourd&#xa0;: verrouiller le support avant de s&apos;y appuyer ou de passer la main dessous.</translation>
    </message>
    <message>
        <source>Turn the crank by hand and slowly, and keep fingers out of the crankcase while it turns.</source>
        <translation>Tourner le vilebrequin à la main, lentement, et garder les doigts hors du carter tant qu&apos;il tourne.</translation>
    </message>
    <message>
        <source>Pull a torque wrench, never push it, and wear eye protection.</source>
        <translation>Tirer sur une clé dynamométrique, ne jamais la pousser, et porter des lunettes de protection.</translation>
    </message>
    <message>
        <source>Count the shims out and back in: one left inside can destroy the engine. Their edges cut.</source>
        <translation>Compter les cales à la sortie et au retour&#xa0;: une seule oubliée peut détruire le moteur. Leurs bords coupent.</translation>
    </message>
    <message>
        <source>Use gloves and fresh air with solvents and sealants.</source>
        <translation>Avec les solvants et les pâtes à joint, porter des gants et bien aérer.</translation>
    </message>
    <message>
        <source>A fastener that was once tightened to yield is scrap: fit a new one.</source>
        <translation>Une fixation serrée une fois jusqu&apos;à la limite élastique est bonne à jeter&#xa0;: en monter une neuve.</translation>
    </message>
</context>
<context>
    <name>ClearanceChartText</name>
    <message>
        <source>Bearing clearances</source>
        <translation>Jeux des paliers</translation>
    </message>
    <message>
        <source>A bearing appears here once its journal and its bore are measured.</source>
        <translation>Un palier apparaît ici dès que sa portée et son alésage sont mesurés.</translation>
    </message>
    <message>
        <source>No clearance is known yet.</source>
        <translation>Aucun jeu n&apos;est encore connu.</translation>
    </message>
    <message>
        <source>M</source>
        <translation>V</translation>
    </message>
    <message>
        <source>R</source>
        <translation>B</translation>
    </message>
    <message>
        <source>Clearance of %1 of %2 bearings is known; %3 are good.</source>
        <translation>Le jeu de %1 paliers sur %2 est connu&#xa0;; %3 sont bons.</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 à %2</translation>
    </message>
    <message>
        <source>smallest to largest</source>
        <translation>du minimum au maximum</translation>
    </message>
    <message>
        <source>expanded uncertainty</source>
        <translation>incertitude élargie</translation>
    </message>
    <message>
        <source>bearing: M main, R rod</source>
        <translation>palier&#xa0;: V vilebrequin, B bielle</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>jeu</translation>
    </message>
    <message>
        <source>mains
%1</source>
        <translation>vilebrequin
%1</translation>
    </message>
    <message>
        <source>rods
%1</source>
        <translation>bielles
%1</translation>
    </message>
</context>
<context>
    <name>ClockNotice</name>
    <message>
        <source>More entries of which that is true: %1.</source>
        <translation>Autres inscriptions dans le même cas&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>ClosingTaskText</name>
    <message>
        <source>no shim</source>
        <translation>aucune cale</translation>
    </message>
    <message>
        <source>%1 up, cutout towards the %2 on the %3.</source>
        <translation>%1 dessus, échancrure vers l&apos;%2, côté %3.</translation>
    </message>
    <message>
        <source>By hand and slowly, two full turns at the crank bolt: what starts it, what keeps it turning.</source>
        <translation>À la main et lentement, deux tours complets par la vis de vilebrequin&#xa0;: ce qui le décolle, ce qui le fait tourner.</translation>
    </message>
    <message>
        <source>Before the girdle %1 / %2; at most %3 more.</source>
        <translation>Avant la plaque %1 / %2&#xa0;; au plus %3 de plus.</translation>
    </message>
    <message>
        <source>All stacks are on</source>
        <translation>Toutes les piles sont posées</translation>
    </message>
    <message>
        <source>Lower the girdle</source>
        <translation>Abaisser la plaque</translation>
    </message>
    <message>
        <source>All girdle nuts are at their value</source>
        <translation>Tous les écrous de plaque sont à leur valeur</translation>
    </message>
    <message>
        <source>Two full turns by hand, nothing binds</source>
        <translation>Deux tours complets à la main, rien ne coince</translation>
    </message>
    <message>
        <source>All pan fasteners are at their value</source>
        <translation>Toutes les vis du carter sont à leur valeur</translation>
    </message>
    <message>
        <source>Count the shims by hand</source>
        <translation>Compter les cales à la main</translation>
    </message>
    <message>
        <source>%1:  %2</source>
        <translation>%1&#xa0;:  %2</translation>
    </message>
    <message>
        <source>Lay the sealant bead</source>
        <translation>Appliquer le cordon de pâte à joint</translation>
    </message>
    <message>
        <source>Turning torque, %1</source>
        <translation>Couple de rotation, %1</translation>
    </message>
    <message>
        <source>Everything is closed up: sign off</source>
        <translation>Tout est fermé&#xa0;: viser le carnet</translation>
    </message>
    <message>
        <source>Build %1 is closed</source>
        <translation>Le montage %1 est fermé</translation>
    </message>
    <message>
        <source>In the labelled stacks, set aside, left over in their bags. One left inside can destroy the engine.</source>
        <translation>Dans les piles étiquetées, mises de côté, restées dans leurs sachets. Une seule oubliée à l&apos;intérieur peut détruire le moteur.</translation>
    </message>
    <message>
        <source>By its label, washer and seat wiped clean.</source>
        <translation>Selon son étiquette, rondelle et appui essuyés.</translation>
    </message>
    <message>
        <source>Thin, outside the holes, wiped inside: a bead squeezed inwards can block the pickup. The clock runs from this entry.</source>
        <translation>Mince, hors des trous, essuyé à l&apos;intérieur&#xa0;: un cordon poussé vers l&apos;intérieur peut boucher la crépine. Le temps court à partir de cette inscription.</translation>
    </message>
    <message>
        <source>In the stacks + set aside + left over</source>
        <translation>Dans les piles + mises de côté + restantes</translation>
    </message>
    <message>
        <source>Enter when it is on</source>
        <translation>Entrée quand elle est posée</translation>
    </message>
    <message>
        <source>Product / lot / open time in minutes (Enter alone: as before)</source>
        <translation>Produit / lot / temps ouvert en minutes (Entrée seule&#xa0;: comme avant)</translation>
    </message>
    <message>
        <source>Product / lot / open time in minutes, from the tube</source>
        <translation>Produit / lot / temps ouvert en minutes, lu sur le tube</translation>
    </message>
    <message>
        <source>Brought to (Enter alone: as specified)</source>
        <translation>Amené à (Entrée seule&#xa0;: comme prescrit)</translation>
    </message>
    <message>
        <source>To start it / to turn it</source>
        <translation>Pour décoller / pour tourner</translation>
    </message>
    <message>
        <source>y for yes, n and what was seen for no</source>
        <translation>y pour oui, n et ce qui a été vu pour non</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Ce qui a été mesuré</translation>
    </message>
    <message>
        <source>Enter when its photo is in the record</source>
        <translation>Entrée quand sa photo est dans le carnet</translation>
    </message>
    <message>
        <source>Enter when it is done (a note may be typed)</source>
        <translation>Entrée quand c&apos;est fait (une note peut être tapée)</translation>
    </message>
    <message>
        <source>%1 in the stacks, %2 set aside, %3 left over: %4 in all</source>
        <translation>%1 dans les piles, %2 mises de côté, %3 restantes&#xa0;: %4 en tout</translation>
    </message>
    <message>
        <source>%1, lot %2, open for %3 min</source>
        <translation>%1, lot %2, ouvert pendant %3 min</translation>
    </message>
    <message>
        <source>%1 to start it, %2 to turn it</source>
        <translation>%1 pour décoller, %2 pour tourner</translation>
    </message>
    <message>
        <source>Type “sign” to sign off (or a statement of your own)</source>
        <translation>Taper «&#xa0;sign&#xa0;» pour viser (ou une déclaration à soi)</translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>grey cast iron</source>
        <translation>fonte grise</translation>
    </message>
    <message>
        <source>ductile iron 60-40-18</source>
        <translation>fonte ductile 60-40-18</translation>
    </message>
    <message>
        <source>ductile iron 80-55-06</source>
        <translation>fonte ductile 80-55-06</translation>
    </message>
    <message>
        <source>aluminium alloy 356.0</source>
        <translation>alliage d&apos;aluminium 356.0</translation>
    </message>
    <message>
        <source>steel 1040</source>
        <translation>acier 1040</translation>
    </message>
    <message>
        <source>steel 4140</source>
        <translation>acier 4140</translation>
    </message>
    <message>
        <source>steel 4340</source>
        <translation>acier 4340</translation>
    </message>
    <message>
        <source>There is no bearing to choose shells for: measure housing and journal first.</source>
        <translation>Il n&apos;y a aucun palier pour lequel choisir des coussinets&#xa0;: mesurer d&apos;abord le logement et la portée.</translation>
    </message>
    <message>
        <source>Shells are chosen for at most %1 bearings at a time, not for %2.</source>
        <translation>Les coussinets se choisissent pour %1 paliers au plus à la fois, et non pour %2.</translation>
    </message>
    <message>
        <source>A bearing has no name: give it one.</source>
        <translation>Un palier n&apos;a pas de nom&#xa0;: lui en donner un.</translation>
    </message>
    <message>
        <source>Bearing %1 is listed twice: leave one out.</source>
        <translation>Le palier %1 figure deux fois dans la liste&#xa0;: en retirer un.</translation>
    </message>
    <message>
        <source>Housing and journal of bearing %1 must be above zero and at most %2.</source>
        <translation>Le logement et la portée du palier %1 doivent être supérieurs à zéro et d&apos;au plus %2.</translation>
    </message>
    <message>
        <source>The target %1 of bearing %2 lies outside its band, %3.</source>
        <translation>La cible %1 du palier %2 est hors de sa plage, %3.</translation>
    </message>
    <message>
        <source>The band of bearing %1 is wider than any clearance: look at its ends.</source>
        <translation>La plage du palier %1 est plus large que tout jeu possible&#xa0;: revoir ses bornes.</translation>
    </message>
    <message>
        <source>The shelf holds %1 shells, more than the %2 that can be chosen from: leave out those that cannot fit.</source>
        <translation>L&apos;étagère porte %1 coussinets, plus que les %2 entre lesquels on peut choisir&#xa0;: laisser de côté ceux qui ne peuvent pas aller.</translation>
    </message>
    <message>
        <source>A shell on the shelf has no name: give it one.</source>
        <translation>Un coussinet de l&apos;étagère n&apos;a pas de nom&#xa0;: lui en donner un.</translation>
    </message>
    <message>
        <source>Shell %1 is on the shelf twice: leave one out.</source>
        <translation>Le coussinet %1 est deux fois sur l&apos;étagère&#xa0;: en retirer un.</translation>
    </message>
    <message>
        <source>The thickness of shell %1 must be above zero and at most %2.</source>
        <translation>L&apos;épaisseur du coussinet %1 doit être supérieure à zéro et d&apos;au plus %2.</translation>
    </message>
    <message>
        <source>%2 of %1 bearing in band, %3 off target in all, spread %4; %5</source>
        <translation>%2 palier sur %1 dans la plage, %3 d&apos;écart à la cible en tout, étendue %4&#xa0;; %5</translation>
    </message>
    <message>
        <source>%2 of %1 bearings in band, %3 off target in all, spread %4; %5</source>
        <translation>%2 paliers sur %1 dans la plage, %3 d&apos;écart à la cible en tout, étendue %4&#xa0;; %5</translation>
    </message>
    <message>
        <source>proven: nothing better is on the shelf.</source>
        <translation>prouvé&#xa0;: l&apos;étagère n&apos;offre rien de mieux.</translation>
    </message>
    <message>
        <source>the best found before it was stopped, not proven.</source>
        <translation>le meilleur trouvé avant l&apos;arrêt, non prouvé.</translation>
    </message>
    <message>
        <source>No shells are left for %1.</source>
        <translation>Il ne reste aucun coussinet pour %1.</translation>
    </message>
    <message>
        <source>%1 comes to %2, out of band.</source>
        <translation>%1 arrive à %2, hors de la plage.</translation>
    </message>
    <message>
        <source>Read the journal at a second station, for its taper.</source>
        <translation>Lire la portée dans une deuxième section, pour sa conicité.</translation>
    </message>
    <message>
        <source>Read the journal in a second direction, for its out-of-round.</source>
        <translation>Lire la portée dans une deuxième direction, pour son ovalisation.</translation>
    </message>
    <message>
        <source>Read station %1 in direction %2 too.</source>
        <translation>Lire aussi la section %1 dans la direction %2.</translation>
    </message>
    <message>
        <source>Diameter %1, taper %2, out-of-round %3.</source>
        <translation>Diamètre %1, conicité %2, ovalisation %3.</translation>
    </message>
    <message>
        <source>Entry %1: %2.</source>
        <translation>Inscription %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Trial fit: %1, throw %2</source>
        <translation>Montage à blanc&#xa0;: %1, coude %2</translation>
    </message>
    <message>
        <source>Trial fit: %1</source>
        <translation>Montage à blanc&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 more holds it.</source>
        <translation>%1 autre contrôle le bloque.</translation>
    </message>
    <message>
        <source>%1 more hold it.</source>
        <translation>%1 autres contrôles le bloquent.</translation>
    </message>
    <message>
        <source>cap %1 %2</source>
        <translation>chapeau %1 %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>girdle nut</source>
        <translation>écrou de plaque</translation>
    </message>
    <message>
        <source>pan rail</source>
        <translation>plan de joint</translation>
    </message>
    <message>
        <source>front</source>
        <translation>avant</translation>
    </message>
    <message>
        <source>%1 outer</source>
        <translation>%1, extérieur</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>pass %1</source>
        <translation>passe %1</translation>
    </message>
    <message>
        <source>residual</source>
        <translation>résidu</translation>
    </message>
    <message>
        <source>twist</source>
        <translation>gauchissement</translation>
    </message>
    <message>
        <source>main clearance</source>
        <translation>jeu de palier de vilebrequin</translation>
    </message>
    <message>
        <source>rod clearance</source>
        <translation>jeu de palier de bielle</translation>
    </message>
    <message>
        <source>crank end play</source>
        <translation>jeu axial du vilebrequin</translation>
    </message>
    <message>
        <source>rod side clearance</source>
        <translation>jeu latéral des bielles</translation>
    </message>
    <message>
        <source>pickup clearance</source>
        <translation>garde de la crépine</translation>
    </message>
    <message>
        <source>Engine described</source>
        <translation>Moteur décrit</translation>
    </message>
    <message>
        <source>Layout set</source>
        <translation>Architecture fixée</translation>
    </message>
    <message>
        <source>Band set</source>
        <translation>Plage fixée</translation>
    </message>
    <message>
        <source>Rules set</source>
        <translation>Consignes fixées</translation>
    </message>
    <message>
        <source>Fastener group set</source>
        <translation>Groupe de fixations fixé</translation>
    </message>
    <message>
        <source>Person added</source>
        <translation>Personne ajoutée</translation>
    </message>
    <message>
        <source>Instrument added</source>
        <translation>Instrument ajouté</translation>
    </message>
    <message>
        <source>Journal measured</source>
        <translation>Portée mesurée</translation>
    </message>
    <message>
        <source>Bore measured</source>
        <translation>Alésage mesuré</translation>
    </message>
    <message>
        <source>Shell thickness</source>
        <translation>Épaisseur de coussinet</translation>
    </message>
    <message>
        <source>Shells fitted</source>
        <translation>Coussinets montés</translation>
    </message>
    <message>
        <source>Fit measured</source>
        <translation>Ajustement mesuré</translation>
    </message>
    <message>
        <source>Part changed</source>
        <translation>Pièce changée</translation>
    </message>
    <message>
        <source>Fastener tightened</source>
        <translation>Fixation serrée</translation>
    </message>
    <message>
        <source>Fastener loosened</source>
        <translation>Fixation desserrée</translation>
    </message>
    <message>
        <source>Verify round begun</source>
        <translation>Tournée de vérification commencée</translation>
    </message>
    <message>
        <source>Verified</source>
        <translation>Vérification</translation>
    </message>
    <message>
        <source>Gap read</source>
        <translation>Interstice lu</translation>
    </message>
    <message>
        <source>Shim added</source>
        <translation>Cale ajoutée</translation>
    </message>
    <message>
        <source>Shim measured</source>
        <translation>Cale mesurée</translation>
    </message>
    <message>
        <source>Shim set aside</source>
        <translation>Cale mise de côté</translation>
    </message>
    <message>
        <source>Stack pinned</source>
        <translation>Pile figée</translation>
    </message>
    <message>
        <source>Stack built</source>
        <translation>Pile montée</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Pile</translation>
    </message>
    <message>
        <source>Recheck</source>
        <translation>Recontrôle</translation>
    </message>
    <message>
        <source>Accepted again</source>
        <translation>Accepté à nouveau</translation>
    </message>
    <message>
        <source>Girdle orientation</source>
        <translation>Orientation de la plaque</translation>
    </message>
    <message>
        <source>Trial fit</source>
        <translation>Montage à blanc</translation>
    </message>
    <message>
        <source>Pickup term measured</source>
        <translation>Terme de la crépine mesuré</translation>
    </message>
    <message>
        <source>Finding opened</source>
        <translation>Constat ouvert</translation>
    </message>
    <message>
        <source>Finding settled</source>
        <translation>Constat réglé</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Photo or file added</source>
        <translation>Photo ou fichier ajouté</translation>
    </message>
    <message>
        <source>Closing step done</source>
        <translation>Étape de fermeture faite</translation>
    </message>
    <message>
        <source>Signed off</source>
        <translation>Visé</translation>
    </message>
    <message>
        <source>New build begun</source>
        <translation>Nouveau montage commencé</translation>
    </message>
    <message>
        <source>Struck</source>
        <translation>Biffé</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>manque</translation>
    </message>
    <message>
        <source>must be a whole number</source>
        <translation>doit être un nombre entier</translation>
    </message>
    <message>
        <source>must be a text</source>
        <translation>doit être un texte</translation>
    </message>
    <message>
        <source>entry %1</source>
        <translation>inscription %1</translation>
    </message>
    <message>
        <source>%1 lacks the details of %2 in the table “%3”: it was altered or damaged.</source>
        <translation>%1&#xa0;: les détails de %2 manquent dans la table «&#xa0;%3&#xa0;»&#xa0;: modifiée ou endommagée.</translation>
    </message>
    <message>
        <source>holds a %1 “%2” that no build record has</source>
        <translation>contient un objet %1 «&#xa0;%2&#xa0;» qu&apos;aucun carnet de montage n&apos;a</translation>
    </message>
    <message>
        <source>has another %1 “%2” than a build record has</source>
        <translation>a un objet %1 «&#xa0;%2&#xa0;» autre que celui d&apos;un carnet de montage</translation>
    </message>
    <message>
        <source>lacks the %1 “%2”</source>
        <translation>n&apos;a pas l&apos;objet %1 «&#xa0;%2&#xa0;»</translation>
    </message>
    <message>
        <source>holds something twice</source>
        <translation>contient quelque chose en double</translation>
    </message>
    <message>
        <source>%1 was moved or deleted while it was open: save a copy elsewhere, then open that.</source>
        <translation>%1 a été déplacé ou supprimé pendant qu&apos;il était ouvert&#xa0;: enregistrer une copie ailleurs, puis l&apos;ouvrir.</translation>
    </message>
    <message>
        <source>The folder of %1 does not lock files, as some network folders do not: have locks switched on there, or save a copy on a disk of this computer.</source>
        <translation>Le répertoire de %1 ne verrouille pas les fichiers, comme certains répertoires en réseau&#xa0;: y faire activer les verrous, ou enregistrer une copie sur un disque de cet ordinateur.</translation>
    </message>
    <message>
        <source>The disk of %1 takes no file of this size: save a copy on another one.</source>
        <translation>Le disque de %1 n&apos;accepte aucun fichier de cette taille&#xa0;: enregistrer une copie sur un autre.</translation>
    </message>
    <message>
        <source>There is no room on the disk of %1: free some, then store again.</source>
        <translation>Il n&apos;y a plus de place sur le disque de %1&#xa0;: en libérer, puis enregistrer de nouveau.</translation>
    </message>
    <message>
        <source>%1 is being written by another program: try again in a moment.</source>
        <translation>Un autre programme est en train d&apos;écrire dans %1&#xa0;: réessayer dans un instant.</translation>
    </message>
    <message>
        <source>%1 may not be written: ask for the right to, or save a copy elsewhere.</source>
        <translation>Il n&apos;est pas permis d&apos;écrire dans %1&#xa0;: en demander le droit, ou enregistrer une copie ailleurs.</translation>
    </message>
    <message>
        <source>%1 cannot be opened: check that it exists and that it and its folder may be used.</source>
        <translation>%1 ne peut pas être ouvert&#xa0;: vérifier qu&apos;il existe, et que l&apos;on a le droit de l&apos;utiliser ainsi que son répertoire.</translation>
    </message>
    <message>
        <source>The disk of %1 does not answer as it should (%2): check it, then try again or save a copy elsewhere.</source>
        <translation>Le disque de %1 ne répond pas comme il devrait (%2)&#xa0;: le vérifier, puis réessayer ou enregistrer une copie ailleurs.</translation>
    </message>
    <message>
        <source>There is not enough memory for %1: close other programs, then try again.</source>
        <translation>Il n&apos;y a pas assez de mémoire pour %1&#xa0;: fermer d&apos;autres programmes, puis réessayer.</translation>
    </message>
    <message>
        <source>%1 would hold or holds something larger than a record may: the limit is 64 MiB.</source>
        <translation>%1 contient ou contiendrait quelque chose de plus grand que ce qu&apos;un carnet admet&#xa0;: la limite est de 64 Mio.</translation>
    </message>
    <message>
        <source>%1 is not there: check its name, or whether its disk or share is connected.</source>
        <translation>%1 est introuvable&#xa0;: vérifier son nom, ou si son disque ou son partage est connecté.</translation>
    </message>
    <message>
        <source>%1 may not be read: ask for the right to.</source>
        <translation>Il n&apos;est pas permis de lire %1&#xa0;: en demander le droit.</translation>
    </message>
    <message>
        <source>%1 does not answer (%2): check its disk or share.</source>
        <translation>%1 ne répond pas (%2)&#xa0;: vérifier son disque ou son partage.</translation>
    </message>
    <message>
        <source>struck by entry %1</source>
        <translation>biffée par l&apos;inscription %1</translation>
    </message>
    <message>
        <source>Seal over all entries: %1</source>
        <translation>Sceau sur toutes les inscriptions&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 mains of %2, %3 rods, %4 throws</source>
        <translation>%1 paliers à %2 fixations, %3 bielles, %4 coudes</translation>
    </message>
    <message>
        <source>round %1 %2</source>
        <translation>tournée %1 %2</translation>
    </message>
    <message>
        <source>%1 at throw %2</source>
        <translation>%1 au coude %2</translation>
    </message>
    <message>
        <source>Say at which throw %1 was looked at: throws count from 1.</source>
        <translation>Indiquer à quel coude «&#xa0;%1&#xa0;» a été regardé&#xa0;: les coudes comptent à partir de 1.</translation>
    </message>
    <message>
        <source>%1 is looked at once, not by throw: leave the throw out.</source>
        <translation>«&#xa0;%1&#xa0;» se regarde une fois, et non par coude&#xa0;: ne pas indiquer de coude.</translation>
    </message>
    <message>
        <source>%1 is a pass or a fail: no clearance is measured for it.</source>
        <translation>«&#xa0;%1&#xa0;» est conforme ou non conforme&#xa0;: aucun dégagement ne se mesure pour cela.</translation>
    </message>
    <message>
        <source>Enter the clearance that was measured for %1.</source>
        <translation>Entrer le dégagement qui a été mesuré pour «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>A clearance was entered with a pass or a fail for %1: enter it as measured, or leave it out.</source>
        <translation>Un dégagement a été entré avec «&#xa0;conforme&#xa0;» ou «&#xa0;non conforme&#xa0;» pour «&#xa0;%1&#xa0;»&#xa0;: l&apos;entrer comme mesure, ou l&apos;omettre.</translation>
    </message>
    <message>
        <source>A clearance of %1 for %2 is below zero: parts that touch are a fail.</source>
        <translation>Un dégagement de %1 pour «&#xa0;%2&#xa0;» est inférieur à zéro&#xa0;: des pièces qui se touchent sont non conformes.</translation>
    </message>
    <message>
        <source>The least clearance must be zero or more.</source>
        <translation>Le plus petit dégagement doit être nul ou positif.</translation>
    </message>
    <message>
        <source>Make room for the dipstick, then try again.</source>
        <translation>Faire de la place pour la jauge d&apos;huile, puis réessayer.</translation>
    </message>
    <message>
        <source>Bring the pickup tube clear of nuts and studs, then try again.</source>
        <translation>Écarter le tube de crépine des écrous et des goujons, puis réessayer.</translation>
    </message>
    <message>
        <source>Make room at that throw, then turn the crank through two full turns again.</source>
        <translation>Faire de la place à ce coude, puis refaire deux tours complets de vilebrequin.</translation>
    </message>
    <message>
        <source>Find what binds before going on, then turn the crank through two full turns again.</source>
        <translation>Trouver ce qui coince avant de continuer, puis refaire deux tours complets de vilebrequin.</translation>
    </message>
    <message>
        <source>Find top dead centre again, and look at the keyway.</source>
        <translation>Rechercher le point mort haut, et regarder la rainure de clavette.</translation>
    </message>
    <message>
        <source>The clearance is at the middle of the band: nothing to change.</source>
        <translation>La garde est au milieu de la plage&#xa0;: rien à changer.</translation>
    </message>
    <message>
        <source>Raise the pickup by %1, or fit a gasket or plate thicker by as much: the clearance then is %2, the middle of the band.</source>
        <translation>Relever la crépine de %1, ou monter un joint ou une plaque plus épais d&apos;autant&#xa0;: la garde est alors de %2, le milieu de la plage.</translation>
    </message>
    <message>
        <source>Lower the pickup by %1, or fit a gasket or plate thinner by as much: the clearance then is %2, the middle of the band.</source>
        <translation>Abaisser la crépine de %1, ou monter un joint ou une plaque plus minces d&apos;autant&#xa0;: la garde est alors de %2, le milieu de la plage.</translation>
    </message>
    <message>
        <source>used on %1, before its calibration of %2</source>
        <translation>utilisé le %1, avant son étalonnage du %2</translation>
    </message>
    <message>
        <source>calibration was due on %1</source>
        <translation>l&apos;étalonnage était dû le %1</translation>
    </message>
    <message>
        <source>calibration was due after %1 cycles, and %2 were made</source>
        <translation>l&apos;étalonnage était dû après %1 cycles, et %2 ont été faits</translation>
    </message>
    <message>
        <source>%1 is below the wrench&apos;s range (from %2, as marked on it)</source>
        <translation>%1 est en dessous de l&apos;étendue de la clé (à partir de %2, comme indiqué dessus)</translation>
    </message>
    <message>
        <source>%1 is below the wrench&apos;s range (from %2, 20 % of its largest value, ISO 6789)</source>
        <translation>%1 est en dessous de l&apos;étendue de la clé (à partir de %2, 20&#xa0;% de sa plus grande valeur, ISO 6789)</translation>
    </message>
    <message>
        <source>%1 is above the wrench&apos;s largest value (%2)</source>
        <translation>%1 est au-dessus de la plus grande valeur de la clé (%2)</translation>
    </message>
    <message>
        <source>No round has been made yet.</source>
        <translation>Aucune tournée n&apos;a encore été faite.</translation>
    </message>
    <message>
        <source>Movements per round: %1.</source>
        <translation>Mouvements par tournée&#xa0;: %1.</translation>
    </message>
    <message>
        <source>One round shows no trend.</source>
        <translation>Une seule tournée ne montre aucune tendance.</translation>
    </message>
    <message>
        <source>Nothing moved.</source>
        <translation>Rien n&apos;a bougé.</translation>
    </message>
    <message>
        <source>They are getting fewer.</source>
        <translation>Ils diminuent.</translation>
    </message>
    <message>
        <source>They are not getting fewer.</source>
        <translation>Ils ne diminuent pas.</translation>
    </message>
    <message>
        <source>There is no standard thread %1; if it is really that, write %2.</source>
        <translation>Il n&apos;existe pas de filetage normalisé %1&#xa0;; si c&apos;est vraiment celui-là, écrire %2.</translation>
    </message>
    <message>
        <source>There is no standard thread %1: %2; if it is really that, write %3.</source>
        <translation>Il n&apos;existe pas de filetage normalisé %1&#xa0;: %2&#xa0;; si c&apos;est vraiment celui-là, écrire %3.</translation>
    </message>
    <message>
        <source>The standard uncertainty of “%1” must be a number of 0 or more.</source>
        <translation>L&apos;incertitude type de «&#xa0;%1&#xa0;» doit être un nombre nul ou positif.</translation>
    </message>
    <message>
        <source>The sensitivity of “%1” must be a number.</source>
        <translation>Le coefficient de sensibilité de «&#xa0;%1&#xa0;» doit être un nombre.</translation>
    </message>
    <message>
        <source>The degrees of freedom of “%1” must be above 0.</source>
        <translation>Les degrés de liberté de «&#xa0;%1&#xa0;» doivent être supérieurs à 0.</translation>
    </message>
    <message>
        <source>%1 reading</source>
        <translation>%1 lecture</translation>
    </message>
    <message>
        <source>%1 readings</source>
        <translation>%1 lectures</translation>
    </message>
    <message>
        <source>%1, %2 within %3.</source>
        <translation>%1, %2 à moins de %3 l&apos;une de l&apos;autre.</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <translation>%1, %2.</translation>
    </message>
    <message>
        <source>%1 is an outlier; the other readings outvote it.</source>
        <translation>%1 s&apos;écarte&#xa0;; les autres lectures l&apos;emportent.</translation>
    </message>
    <message>
        <source>%1 of at least %2: read another pass.</source>
        <translation>%1 sur au moins %2&#xa0;: lire une passe de plus.</translation>
    </message>
    <message>
        <source>The readings differ by %1, more than the repeat limit of %2 allows; %3 is the odd one: read another pass.</source>
        <translation>Les lectures diffèrent de %1, plus que la limite de répétabilité de %2&#xa0;; %3 s&apos;écarte&#xa0;: lire une passe de plus.</translation>
    </message>
    <message>
        <source>The readings differ by %1, more than the repeat limit of %2 allows: read another pass.</source>
        <translation>Les lectures diffèrent de %1, plus que la limite de répétabilité de %2&#xa0;: lire une passe de plus.</translation>
    </message>
    <message>
        <source>“%1” has no reading: measure it first.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;a aucune lecture&#xa0;: le mesurer d&apos;abord.</translation>
    </message>
    <message>
        <source>The limit of error for “%1” is below zero: enter it as a half-width, without sign.</source>
        <translation>L&apos;erreur maximale pour «&#xa0;%1&#xa0;» est inférieure à zéro&#xa0;: l&apos;entrer comme demi-largeur, sans signe.</translation>
    </message>
    <message>
        <source>A write to %1 was cut off while it was open here: open it again, so that the write is taken back.</source>
        <translation>Une écriture dans %1 a été interrompue pendant qu&apos;il était ouvert ici&#xa0;: le rouvrir, pour que cette écriture soit annulée.</translation>
    </message>
    <message>
        <source>%1 takes longer to read than a record does, and was not read to its end: nothing is said of it. It was not changed; try again, or look for a copy of it.</source>
        <translation>%1 prend plus de temps à lire qu&apos;un carnet, et n&apos;a pas été lu jusqu&apos;au bout&#xa0;: rien n&apos;en est dit. Il n&apos;a pas été modifié&#xa0;; réessayer, ou chercher une copie.</translation>
    </message>
    <message>
        <source>%1 is a folder: name a file in it.</source>
        <translation>%1 est un répertoire&#xa0;: nommer un fichier qui s&apos;y trouve.</translation>
    </message>
    <message>
        <source>%1 cannot be read (%2): check the path.</source>
        <translation>%1 ne peut pas être lu (%2)&#xa0;: vérifier le chemin.</translation>
    </message>
    <message>
        <source>There is no engine layout yet, and no band to judge by: set them first.</source>
        <translation>Il n&apos;y a encore ni architecture du moteur ni plage pour juger&#xa0;: les fixer d&apos;abord.</translation>
    </message>
    <message>
        <source>Entry %1 (“%2”, by %3) was not allowed when it was made, by the rules of Caprail %4: %5</source>
        <translation>L&apos;inscription %1 («&#xa0;%2&#xa0;», par %3) n&apos;était pas permise quand elle a été faite, selon les règles de Caprail %4&#xa0;: %5</translation>
    </message>
    <message>
        <source>The closing step “%1” in entry %2, by %3, was never valid: %4</source>
        <translation>L&apos;étape de fermeture «&#xa0;%1&#xa0;» de l&apos;inscription %2, par %3, n&apos;a jamais été valable&#xa0;: %4</translation>
    </message>
    <message>
        <source>The sign-off in entry %1, by %2, was never valid: %3</source>
        <translation>Le visa de l&apos;inscription %1, par %2, n&apos;a jamais été valable&#xa0;: %3</translation>
    </message>
    <message>
        <source>Salvaged</source>
        <translation>Récupéré</translation>
    </message>
    <message>
        <source>Entry %1: salvaged on %2 from %3 (%4 bytes, SHA-256 %5), whose last readable seal was %6.</source>
        <translation>Inscription %1&#xa0;: récupérée le %2 de %3 (%4 octets, SHA-256 %5), dont le dernier sceau lisible était %6.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>Every entry that was found matched its seal.</source>
        <translation>Chaque inscription trouvée correspondait à son sceau.</translation>
    </message>
    <message>
        <source>Kept though its seal did not fit: %1.</source>
        <translation>Gardées bien que leur sceau ne corresponde pas&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Lost: %1.</source>
        <translation>Perdues&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The text at byte %1 holds %2, which is not a character: type it again.</source>
        <translation>Le texte à l&apos;octet %1 contient %2, qui n&apos;est pas un caractère&#xa0;: le taper de nouveau.</translation>
    </message>
    <message>
        <source>%1 is damaged (%2): salvage what can be read into a new file (caprail salvage FILE OUT).</source>
        <translation>%1 est endommagé (%2)&#xa0;: récupérer ce qui est lisible dans un nouveau fichier (caprail salvage FICHIER NOUVEAU).</translation>
    </message>
    <message>
        <source>%1 (build %2)</source>
        <translation>%1 (montage %2)</translation>
    </message>
    <message>
        <source>✓ %1: all held</source>
        <translation>✓ %1&#xa0;: toutes ont tenu</translation>
    </message>
    <message>
        <source>✕ %1: %2 moved</source>
        <translation>✕ %1&#xa0;: %2 ont bougé</translation>
    </message>
    <message>
        <source>↻ %1: no longer counts</source>
        <translation>↻ %1&#xa0;: ne compte plus</translation>
    </message>
    <message>
        <source>%1 (future)</source>
        <translation>%1 (futur)</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation>%1 en retard</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Moteur</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Verify round</source>
        <translation>Tournée</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Hors limites</translation>
    </message>
    <message>
        <source>Stale</source>
        <translation>Périmé</translation>
    </message>
    <message>
        <source>Last entry</source>
        <translation>Dernière inscription</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>Calibration due</source>
        <translation>Étalonnage dû</translation>
    </message>
    <message>
        <source>%1: its band is not set</source>
        <translation>%1&#xa0;: sa plage n&apos;est pas fixée</translation>
    </message>
    <message>
        <source>%1: its journal is not measured</source>
        <translation>%1&#xa0;: sa portée n&apos;est pas mesurée</translation>
    </message>
    <message>
        <source>%1: its housing is not measured</source>
        <translation>%1&#xa0;: son logement n&apos;est pas mesuré</translation>
    </message>
    <message>
        <source>Read the bore at station %1 too, as the journal was.</source>
        <translation>Lire aussi l&apos;alésage dans la section %1, comme la portée.</translation>
    </message>
    <message>
        <source>the engine layout was set again</source>
        <translation>l&apos;architecture du moteur a été fixée de nouveau</translation>
    </message>
    <message>
        <source>the band “%1” was set to %2</source>
        <translation>la plage «&#xa0;%1&#xa0;» a été fixée à %2</translation>
    </message>
    <message>
        <source>what is specified for the %1 fasteners was changed</source>
        <translation>la prescription du groupe «&#xa0;%1&#xa0;» a été changée</translation>
    </message>
    <message>
        <source>other shells were fitted in %1</source>
        <translation>d&apos;autres coussinets ont été montés en %1</translation>
    </message>
    <message>
        <source>the %1 was changed</source>
        <translation>pièce changée&#xa0;: %1</translation>
    </message>
    <message>
        <source>the %1 at %2 was changed</source>
        <translation>pièce changée&#xa0;: %1, en %2</translation>
    </message>
    <message>
        <source>%1 was tightened to another value</source>
        <translation>%1&#xa0;: serrage à une autre valeur</translation>
    </message>
    <message>
        <source>%1 was tightened</source>
        <translation>%1&#xa0;: serrage</translation>
    </message>
    <message>
        <source>%1 was loosened</source>
        <translation>%1&#xa0;: desserrage</translation>
    </message>
    <message>
        <source>%1 moved %2 in verify round %3</source>
        <translation>%1 a bougé de %2 dans la tournée %3</translation>
    </message>
    <message>
        <source>%1 moved in verify round %2</source>
        <translation>%1 a bougé dans la tournée %2</translation>
    </message>
    <message>
        <source>the crank was laid in again</source>
        <translation>le vilebrequin a été reposé</translation>
    </message>
    <message>
        <source>the crank was lifted out</source>
        <translation>le vilebrequin a été sorti</translation>
    </message>
    <message>
        <source>the gap at %1 was measured again</source>
        <translation>l&apos;interstice au %1 a été mesuré de nouveau</translation>
    </message>
    <message>
        <source>shim %1 was measured</source>
        <translation>la cale %1 a été mesurée</translation>
    </message>
    <message>
        <source>the stack at %1 was built again</source>
        <translation>la pile au %1 a été remontée</translation>
    </message>
    <message>
        <source>the stack at %1 was taken apart</source>
        <translation>la pile au %1 a été démontée</translation>
    </message>
    <message>
        <source>the stack at %1 was on when it began</source>
        <translation>la pile au %1 était posée quand elle a commencé</translation>
    </message>
    <message>
        <source>the stack at %1 was laid on before the round was complete</source>
        <translation>la pile au %1 a été posée avant la fin de la tournée</translation>
    </message>
    <message>
        <source>the girdle was turned round</source>
        <translation>la plaque a été retournée</translation>
    </message>
    <message>
        <source>the girdle was trial-fitted after the round began</source>
        <translation>le montage à blanc de la plaque est postérieur au début de la tournée</translation>
    </message>
    <message>
        <source>What was known of %1 was corrected, for earlier readings too: %2.</source>
        <translation>Ce que l&apos;on savait de %1 a été corrigé, pour les lectures passées aussi&#xa0;: %2.</translation>
    </message>
    <message>
        <source>“%1” was accepted again after a change: %2.</source>
        <translation>«&#xa0;%1&#xa0;» a été accepté à nouveau après un changement&#xa0;: %2.</translation>
    </message>
    <message>
        <source>A value outside what is plausible was insisted on.</source>
        <translation>Une valeur hors du plausible a été maintenue.</translation>
    </message>
    <message>
        <source>Residual %1, by the bracketed recheck.</source>
        <translation>Résidu %1, par le recontrôle encadré.</translation>
    </message>
    <message>
        <source>Residual %1, by a feel that was tried.</source>
        <translation>Résidu %1, par un toucher éprouvé.</translation>
    </message>
    <message>
        <source>Residual %1.</source>
        <translation>Résidu %1.</translation>
    </message>
    <message>
        <source>It drags.</source>
        <translation>Elle frotte.</translation>
    </message>
    <message>
        <source>Thicker: %1.</source>
        <translation>Plus épais&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Thinner: %1.</source>
        <translation>Plus mince&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 to %2, mean %3 over %4 stations.</source>
        <translation>%1 à %2, moyenne %3 sur %4 sections.</translation>
    </message>
    <message>
        <source>journal taper</source>
        <translation>conicité des portées</translation>
    </message>
    <message>
        <source>journal out-of-round</source>
        <translation>ovalisation des portées</translation>
    </message>
    <message>
        <source>Crank laid in</source>
        <translation>Vilebrequin posé</translation>
    </message>
    <message>
        <source>Study of the feel begun</source>
        <translation>Étude du toucher commencée</translation>
    </message>
    <message>
        <source>Felt</source>
        <translation>Toucher</translation>
    </message>
    <message>
        <source>The gauge takes %1 % of the band: good.</source>
        <translation>L&apos;instrument consomme %1&#xa0;% de la plage&#xa0;: bien.</translation>
    </message>
    <message>
        <source>The gauge takes %1 % of the band: it may do.</source>
        <translation>L&apos;instrument consomme %1&#xa0;% de la plage&#xa0;: cela peut aller.</translation>
    </message>
    <message>
        <source>The gauge takes %1 % of the band: it cannot tell good from bad.</source>
        <translation>L&apos;instrument consomme %1&#xa0;% de la plage&#xa0;: il ne distingue pas le bon du mauvais.</translation>
    </message>
    <message>
        <source>a reading</source>
        <translation>une lecture</translation>
    </message>
    <message>
        <source>how well readings of “%1” repeat</source>
        <translation>la répétabilité des lectures de «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the instrument that read “%1”</source>
        <translation>l&apos;instrument qui a lu «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the limit of error of %1</source>
        <translation>l&apos;erreur maximale de %1</translation>
    </message>
    <message>
        <source>the straightedge and its flatness</source>
        <translation>la règle et sa planéité</translation>
    </message>
    <message>
        <source>Measure it.</source>
        <translation>Le mesurer.</translation>
    </message>
    <message>
        <source>Read “%1” once more at one place: nobody knows how well it repeats.</source>
        <translation>Lire «&#xa0;%1&#xa0;» une fois de plus au même endroit&#xa0;: personne ne sait à quel point il se répète.</translation>
    </message>
    <message>
        <source>Say with which instrument “%1” was read: read it again with the instrument named.</source>
        <translation>Dire avec quel instrument «&#xa0;%1&#xa0;» a été lu&#xa0;: le relire en nommant l&apos;instrument.</translation>
    </message>
    <message>
        <source>Enter the limit of error of %1 with what it corrects, so that it counts for readings made before.</source>
        <translation>Entrer l&apos;erreur maximale de %1 avec ce qu&apos;elle corrige, pour qu&apos;elle vaille aussi pour les lectures déjà faites.</translation>
    </message>
    <message>
        <source>± not known</source>
        <translation>± inconnu</translation>
    </message>
    <message>
        <source>The largest term is “%1”: with a limit of ± %2 there it would do.</source>
        <translation>Le plus grand terme est «&#xa0;%1&#xa0;»&#xa0;: avec une erreur maximale de ± %2 à cet endroit, cela suffirait.</translation>
    </message>
    <message>
        <source>The largest term is “%1”: %2 readings would do.</source>
        <translation>Le plus grand terme est «&#xa0;%1&#xa0;»&#xa0;: %2 lectures suffiraient.</translation>
    </message>
    <message>
        <source>The largest term is “%1”, and it alone is not enough: another way to measure is needed.</source>
        <translation>Le plus grand terme est «&#xa0;%1&#xa0;», et à lui seul il ne suffit pas&#xa0;: il faut mesurer autrement.</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>Fastener groups at torque</source>
        <translation>Groupes de fixations au couple</translation>
    </message>
    <message>
        <source>Main bearing clearances</source>
        <translation>Jeux des paliers de vilebrequin</translation>
    </message>
    <message>
        <source>Rod bearing clearances</source>
        <translation>Jeux des paliers de bielle</translation>
    </message>
    <message>
        <source>Taper of journals</source>
        <translation>Conicité des portées</translation>
    </message>
    <message>
        <source>Out-of-round of journals</source>
        <translation>Ovalisation des portées</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Ajustements</translation>
    </message>
    <message>
        <source>Gaps</source>
        <translation>Interstices</translation>
    </message>
    <message>
        <source>Shim stacks</source>
        <translation>Piles de cales</translation>
    </message>
    <message>
        <source>Rechecks</source>
        <translation>Recontrôles</translation>
    </message>
    <message>
        <source>Flushness</source>
        <translation>Affleurement</translation>
    </message>
    <message>
        <source>Pickup clearance</source>
        <translation>Garde de la crépine</translation>
    </message>
    <message>
        <source>Torques verified</source>
        <translation>Couples vérifiés</translation>
    </message>
    <message>
        <source>Findings settled</source>
        <translation>Constats réglés</translation>
    </message>
    <message>
        <source>the washer at %1 was %2</source>
        <translation>la rondelle au %1 a été %2</translation>
    </message>
    <message>
        <source>%1 of %2 verified</source>
        <translation>%1 sur %2 vérifiées</translation>
    </message>
    <message>
        <source>The nut of this side did not turn.</source>
        <translation>L&apos;écrou de ce côté n&apos;a pas tourné.</translation>
    </message>
    <message>
        <source>It can have grown by %1 at most, likely by %2, by the stiffness of this joint.</source>
        <translation>Il peut avoir grandi de %1 au plus, vraisemblablement de %2, d&apos;après la raideur de cet assemblage.</translation>
    </message>
    <message>
        <source>It can have grown by %1 at most, likely by %2, as is usual for such joints.</source>
        <translation>Il peut avoir grandi de %1 au plus, vraisemblablement de %2, comme il est usuel pour de tels assemblages.</translation>
    </message>
    <message>
        <source>The fastener clamps by %1 more.</source>
        <translation>La fixation serre de %1 de plus.</translation>
    </message>
    <message>
        <source>The gap is known to %1 only: a new reading cannot tell whether it grew.</source>
        <translation>L&apos;interstice n&apos;est connu qu&apos;à %1 près&#xa0;: une nouvelle lecture ne dira pas s&apos;il a grandi.</translation>
    </message>
    <message>
        <source>The gap is known to %1: a new reading can tell.</source>
        <translation>L&apos;interstice est connu à %1 près&#xa0;: une nouvelle lecture peut le dire.</translation>
    </message>
    <message>
        <source>by pulling it to its torque</source>
        <translation>en l&apos;amenant de nouveau à son couple</translation>
    </message>
    <message>
        <source>by its length: it must not be pulled</source>
        <translation>par sa longueur&#xa0;: elle ne doit pas être resserrée</translation>
    </message>
    <message>
        <source>by its witness mark: it must not be pulled</source>
        <translation>par son repère&#xa0;: elle ne doit pas être resserrée</translation>
    </message>
    <message>
        <source>Clean; turn the washer, turn it over, look for a burr; measure the shims; read the gap again; change the stack: in this order.</source>
        <translation>Nettoyer&#xa0;; tourner la rondelle, la retourner, chercher une bavure&#xa0;; mesurer les cales&#xa0;; relire l&apos;interstice&#xa0;; changer la pile&#xa0;: dans cet ordre.</translation>
    </message>
    <message>
        <source>Clamp checked</source>
        <translation>Effort de serrage contrôlé</translation>
    </message>
    <message>
        <source>Washer</source>
        <translation>Rondelle</translation>
    </message>
    <message>
        <source>○ %1: %2 verified</source>
        <translation>○ %1&#xa0;: %2 vérifiées</translation>
    </message>
    <message>
        <source>throw %1 was looked at again after a change there</source>
        <translation>le coude %1 a été regardé de nouveau après un changement à cet endroit</translation>
    </message>
    <message>
        <source>what the check “%1” asks was changed</source>
        <translation>ce que demande le contrôle «&#xa0;%1&#xa0;» a été changé</translation>
    </message>
    <message>
        <source>Turning torque</source>
        <translation>Couple de rotation</translation>
    </message>
    <message>
        <source>The shop&apos;s own checks</source>
        <translation>Contrôles propres à l&apos;atelier</translation>
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
        <translation>%1, endroit %2</translation>
    </message>
    <message>
        <source>With the girdle off, turn the crank by its bolt: read what starts it and what keeps it turning.</source>
        <translation>Plaque déposée, tourner le vilebrequin par sa vis&#xa0;: lire ce qui le décolle et ce qui le fait tourner.</translation>
    </message>
    <message>
        <source>Turn the crank by its bolt through two full turns: read what starts it and what keeps it turning.</source>
        <translation>Tourner le vilebrequin par sa vis sur deux tours complets&#xa0;: lire ce qui le décolle et ce qui le fait tourner.</translation>
    </message>
    <message>
        <source>Own check set</source>
        <translation>Contrôle propre fixé</translation>
    </message>
    <message>
        <source>Own check</source>
        <translation>Contrôle propre</translation>
    </message>
    <message>
        <source>p %1 %, C over 99</source>
        <translation>p %1&#xa0;%, C supérieur à 99</translation>
    </message>
    <message>
        <source>p %1 %, C %2</source>
        <translation>p %1&#xa0;%, C %2</translation>
    </message>
    <message>
        <source>Say which straightedge it was, with its flatness at the engine station, and read it again.</source>
        <translation>Dire quelle règle c&apos;était, avec sa planéité, au poste Moteur, et relire.</translation>
    </message>
    <message>
        <source>The free shims hold no exchange that is larger and still within the band: build the stack nearer to the middle, or measure more shims of the kit.</source>
        <translation>Les cales libres ne permettent aucun échange plus épais qui reste dans la plage&#xa0;: monter la pile plus près du milieu, ou mesurer d&apos;autres cales de l&apos;assortiment.</translation>
    </message>
    <message>
        <source>The free shims hold no exchange for it: measure more shims of the kit, or add some.</source>
        <translation>Les cales libres ne permettent aucun échange pour cela&#xa0;: mesurer d&apos;autres cales de l&apos;assortiment, ou en ajouter.</translation>
    </message>
    <message>
        <source>With this exchange the bracket proves less than the band: straightedge and micrometer take too much of it, or the kit&apos;s shims lie too far apart.</source>
        <translation>Avec cet échange, l&apos;encadrement prouve moins que la plage&#xa0;: la règle et le micromètre en prennent trop, ou les cales de l&apos;assortiment sont trop espacées.</translation>
    </message>
    <message>
        <source>It was loose with the thicker stack, which cannot be: clean, look for a burr, and begin again.</source>
        <translation>Elle était libre avec la pile plus épaisse, ce qui est impossible&#xa0;: nettoyer, chercher une bavure, et recommencer.</translation>
    </message>
    <message>
        <source>It rocked with the thinner stack, which cannot be: clean, look for a burr, and begin again.</source>
        <translation>Elle basculait avec la pile plus mince, ce qui est impossible&#xa0;: nettoyer, chercher une bavure, et recommencer.</translation>
    </message>
    <message>
        <source>The signature in entry %1, in the name of %2, does not hold: %3</source>
        <translation>La signature de l&apos;inscription %1, au nom de %2, n&apos;est pas valable&#xa0;: %3</translation>
    </message>
    <message>
        <source>Signed by %1 in entry %2: all entries before it, and none was added since.</source>
        <translation>Signé par %1 à l&apos;inscription %2&#xa0;: toutes les inscriptions précédentes, et aucune n&apos;a été ajoutée depuis.</translation>
    </message>
    <message>
        <source>Signed by %1 in entry %2, up to entry %3; what was added since is not signed.</source>
        <translation>Signé par %1 à l&apos;inscription %2, jusqu&apos;à l&apos;inscription %3&#xa0;; ce qui a été ajouté depuis n&apos;est pas signé.</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Signature</translation>
    </message>
    <message>
        <source>Build record: %1, build %2</source>
        <translation>Carnet de montage&#xa0;: %1, montage %2</translation>
    </message>
    <message>
        <source>engine not described</source>
        <translation>moteur non décrit</translation>
    </message>
    <message>
        <source>For %1</source>
        <translation>Pour %1</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Par %1</translation>
    </message>
    <message>
        <source>This build was closed and signed off by %1 on %2.</source>
        <translation>Ce montage a été fermé et visé par %1 le %2.</translation>
    </message>
    <message>
        <source>NOT FINISHED: this build is not signed off. Do not run the engine on the strength of this record.</source>
        <translation>NON TERMINÉ&#xa0;: ce montage n&apos;est pas visé. Ne pas faire tourner le moteur sur la foi de ce carnet.</translation>
    </message>
    <message>
        <source>What is in this folder</source>
        <translation>Ce que contient ce répertoire</translation>
    </message>
    <message>
        <source>The build sheet, to read and to print: what was built, measured and verified, and how it stands.</source>
        <translation>La feuille de montage, à lire et à imprimer&#xa0;: ce qui a été monté, mesuré et vérifié, et où cela en est.</translation>
    </message>
    <message>
        <source>Everything that was entered while the engine was built, a line each, in order. What was taken back stays in it, marked.</source>
        <translation>Tout ce qui a été inscrit pendant le montage du moteur, une ligne par inscription, dans l&apos;ordre. Ce qui a été retiré y reste, marqué.</translation>
    </message>
    <message>
        <source>The same for another program, with the seal of each entry. Caprail makes the record again from it: caprail import ledger.jsonl NEW.caprail</source>
        <translation>La même chose pour un autre programme, avec le sceau de chaque inscription. Caprail en refait le carnet&#xa0;: caprail import ledger.jsonl NOUVEAU.caprail</translation>
    </message>
    <message>
        <source>The photos; the number in front of each name is that of its entry.</source>
        <translation>Les photos&#xa0;; le numéro devant chaque nom est celui de son inscription.</translation>
    </message>
    <message>
        <source>Tables for a spreadsheet. dictionary.csv tells what each column is and in which unit.</source>
        <translation>Des tableaux pour un tableur. dictionary.csv dit ce qu&apos;est chaque colonne et dans quelle unité.</translation>
    </message>
    <message>
        <source>The shop&apos;s signature, its public key, and the few lines that are signed.</source>
        <translation>La signature de l&apos;atelier, sa clé publique, et les quelques lignes qui sont signées.</translation>
    </message>
    <message>
        <source>A check sum of every file here.</source>
        <translation>Une somme de contrôle de chaque fichier d&apos;ici.</translation>
    </message>
    <message>
        <source>How to see that nothing was altered, without Caprail</source>
        <translation>Comment voir sans Caprail que rien n&apos;a été modifié</translation>
    </message>
    <message>
        <source>The files. In this folder, type (Linux; on a Mac: shasum -a 256 -c SHA256SUMS; on Windows compare by eye what certutil -hashfile NAME SHA256 prints):</source>
        <translation>Les fichiers. Dans ce répertoire, taper (Linux&#xa0;; sur un Mac&#xa0;: shasum -a 256 -c SHA256SUMS&#xa0;; sous Windows, comparer à l&apos;œil ce qu&apos;affiche certutil -hashfile NOM SHA256)&#xa0;:</translation>
    </message>
    <message>
        <source>The seal. The last line of ledger.jsonl ends with the seal of the whole record. It begins with the twenty digits that stand at the foot of every page of the printed sheet: %1</source>
        <translation>Le sceau. La dernière ligne de ledger.jsonl se termine par le sceau de tout le carnet. Il commence par les vingt chiffres qui figurent au pied de chaque page de la feuille imprimée&#xa0;: %1</translation>
    </message>
    <message>
        <source>The chain. Each seal is the SHA-256 of the 32 bytes of the seal before (zeros before the first) and of the entry&apos;s line without its seal. These lines of Python go through all of them and print the last:</source>
        <translation>La chaîne. Chaque sceau est le SHA-256 des 32 octets du sceau précédent (des zéros avant le premier) et de la ligne de l&apos;inscription sans son sceau. Ces lignes de Python les parcourent tous et affichent le dernier&#xa0;:</translation>
    </message>
    <message>
        <source>This record is not signed with a key: nothing in it shows who made it.</source>
        <translation>Ce carnet n&apos;est signé d&apos;aucune clé&#xa0;: rien n&apos;y montre qui l&apos;a fait.</translation>
    </message>
    <message>
        <source>says whether the signature is good. Then look whether the statement names the seal of line %1 of ledger.jsonl, and whether the key is the shop&apos;s: its fingerprint, which the shop tells you by another way than with this folder, is the first 32 digits that this prints:</source>
        <translation>dit si la signature est bonne. Regarder ensuite si la déclaration nomme le sceau de la ligne %1 de ledger.jsonl, et si la clé est celle de l&apos;atelier&#xa0;: son empreinte, que l&apos;atelier communique par une autre voie que ce répertoire, est formée des 32 premiers chiffres qu&apos;affiche&#xa0;:</translation>
    </message>
    <message>
        <source>What this proves, and what not</source>
        <translation>Ce que cela prouve, et ce que cela ne prouve pas</translation>
    </message>
    <message>
        <source>If the seal is the one on a sheet that you kept apart from these files, no entry and no photo was altered, removed, put in or put in another order since that sheet was printed.</source>
        <translation>Si le sceau est celui d&apos;une feuille gardée à part de ces fichiers, aucune inscription et aucune photo n&apos;a été modifiée, retirée, insérée ou mise dans un autre ordre depuis l&apos;impression de cette feuille.</translation>
    </message>
    <message>
        <source>A signature shows that whoever has the shop&apos;s secret key signed exactly these entries. It does not show when: the times are those of the shop&apos;s own clock.</source>
        <translation>Une signature montre que le détenteur de la clé secrète de l&apos;atelier a signé exactement ces inscriptions. Elle ne montre pas quand&#xa0;: les heures sont celles de l&apos;horloge de l&apos;atelier.</translation>
    </message>
    <message>
        <source>Neither proves that what was entered is true. A whole record can be written anew, with seals of its own; only the sheet in your hands, or a fingerprint that you had before, tells then.</source>
        <translation>Ni l&apos;un ni l&apos;autre ne prouve que ce qui a été inscrit est vrai. Un carnet entier peut être réécrit, avec ses propres sceaux&#xa0;; seule la feuille en main, ou une empreinte obtenue auparavant, le révèle alors.</translation>
    </message>
    <message>
        <source>The key file %1 cannot be looked at: %2.</source>
        <translation>Le fichier de clé %1 ne peut pas être examiné&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The key file %1 can be read by others, who may have copied it: make it yours alone (chmod 600), or make a new key.</source>
        <translation>Le fichier de clé %1 peut être lu par d&apos;autres, qui l&apos;ont peut-être copié&#xa0;: s&apos;en réserver l&apos;accès (chmod 600), ou créer une nouvelle clé.</translation>
    </message>
    <message>
        <source>This is not the text of a signing key, or it was changed: use a copy of it.</source>
        <translation>Ce n&apos;est pas le texte d&apos;une clé de signature, ou il a été modifié&#xa0;: en prendre une copie.</translation>
    </message>
    <message>
        <source>%1 minute</source>
        <translation>%1 minute</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 minutes</translation>
    </message>
    <message>
        <source>%1 hour</source>
        <translation>%1 heure</translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation>%1 heures</translation>
    </message>
    <message>
        <source>%1 day</source>
        <translation>%1 jour</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>The limits of “%1” were widened from %2 to %3 after the reading of entry %4</source>
        <translation>Les limites de «&#xa0;%1&#xa0;» ont été élargies de %2 à %3 après la lecture de l&apos;inscription %4</translation>
    </message>
    <message>
        <source>The limits of “%1” were narrowed from %2 to %3 after the reading of entry %4</source>
        <translation>Les limites de «&#xa0;%1&#xa0;» ont été resserrées de %2 à %3 après la lecture de l&apos;inscription %4</translation>
    </message>
    <message>
        <source>The rules of judging were changed after the reading of entry %1</source>
        <translation>Les consignes de jugement ont été changées après la lecture de l&apos;inscription %1</translation>
    </message>
    <message>
        <source>What is specified for the %1 fasteners was changed from %2 to %3 after they were tightened (entry %4)</source>
        <translation>La prescription du groupe «&#xa0;%1&#xa0;» a été changée de %2 à %3 après le serrage (inscription %4)</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>What is specified for the %1 fasteners was changed after they were tightened (entry %2)</source>
        <translation>La prescription du groupe «&#xa0;%1&#xa0;» a été changée après le serrage (inscription %2)</translation>
    </message>
    <message>
        <source>What the check “%1” asks was changed after its answer of entry %2</source>
        <translation>Ce que demande le contrôle «&#xa0;%1&#xa0;» a été changé après sa réponse de l&apos;inscription %2</translation>
    </message>
    <message>
        <source>Changed or worked on after the reading of entry %1: %2</source>
        <translation>Changé ou retravaillé après la lecture de l&apos;inscription %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>The washer at %1 was %2 after the reading of entry %3</source>
        <translation>La rondelle au %1 a été %2 après la lecture de l&apos;inscription %3</translation>
    </message>
    <message>
        <source>Other shells were fitted in %1 after the reading of entry %2</source>
        <translation>D&apos;autres coussinets ont été montés en %1 après la lecture de l&apos;inscription %2</translation>
    </message>
    <message>
        <source>Loosened after entry %1 rested on it: %2</source>
        <translation>Desserré après que l&apos;inscription %1 s&apos;y est appuyée&#xa0;: %2</translation>
    </message>
    <message>
        <source>In verify round %1, %2 moved %3.</source>
        <translation>Dans la tournée de vérification %1, %2 a bougé de %3.</translation>
    </message>
    <message>
        <source>In verify round %1, %2 moved.</source>
        <translation>Dans la tournée de vérification %1, %2 a bougé.</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texte</translation>
    </message>
    <message>
        <source>%1 entry came in without a seal, from %2.</source>
        <translation>%1 inscription est venue sans sceau (origine&#xa0;: %2).</translation>
    </message>
    <message>
        <source>%1 entries came in without seals, from %2.</source>
        <translation>%1 inscriptions sont venues sans sceau (origine&#xa0;: %2).</translation>
    </message>
    <message>
        <source>“%1” (entry %2, by %3) was struck: %4.</source>
        <translation>«&#xa0;%1&#xa0;» (inscription %2, par %3) a été biffé&#xa0;: %4.</translation>
    </message>
    <message>
        <source>Entered again by %1, %2 later, as “%3” (entry %4).</source>
        <translation>Inscrit de nouveau par %1, %2 plus tard, comme «&#xa0;%3&#xa0;» (inscription %4).</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 de %2 à %3</translation>
    </message>
    <message>
        <source>a second person verifies</source>
        <translation>une deuxième personne vérifie</translation>
    </message>
    <message>
        <source>a second person signs off</source>
        <translation>une deuxième personne vise</translation>
    </message>
    <message>
        <source>stretch %1</source>
        <translation>allongement %1</translation>
    </message>
    <message>
        <source>%1 value of %2 was confirmed by nobody: it is common practice, and the part maker&apos;s own figure comes first.</source>
        <translation>%1 valeur de %2 n&apos;a été confirmée par personne&#xa0;: c&apos;est l&apos;usage courant, et le chiffre du fabricant de la pièce passe d&apos;abord.</translation>
    </message>
    <message>
        <source>%1 values of %2 were confirmed by nobody: they are common practice, and the part makers&apos; own figures come first.</source>
        <translation>%1 valeurs de %2 n&apos;ont été confirmées par personne&#xa0;: c&apos;est l&apos;usage courant, et les chiffres des fabricants des pièces passent d&apos;abord.</translation>
    </message>
    <message>
        <source>Part entered</source>
        <translation>Pièce inscrite</translation>
    </message>
    <message>
        <source>Zero checked</source>
        <translation>Zéro contrôlé</translation>
    </message>
    <message>
        <source>Value confirmed</source>
        <translation>Valeur confirmée</translation>
    </message>
    <message>
        <source>Brought in without seals</source>
        <translation>Venu sans sceaux</translation>
    </message>
    <message>
        <source>limits %1</source>
        <translation>limites %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lot %1</translation>
    </message>
    <message>
        <source>Nothing was changed after something had been judged by it.</source>
        <translation>Rien n&apos;a été changé de ce qui avait déjà servi à juger.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Changed after something had been judged by it: %1.</source>
        <translation>Changé après avoir servi à juger&#xa0;: %1.</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>numéro de série %1</translation>
    </message>
    <message>
        <source>stamped %1</source>
        <translation>marquage %1</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neuf</translation>
    </message>
    <message>
        <source>used</source>
        <translation>d&apos;occasion</translation>
    </message>
    <message>
        <source>%1 sitting, %2 hours</source>
        <translation>%1 séance, %2 heures</translation>
    </message>
    <message>
        <source>%1 sittings, %2 hours in all</source>
        <translation>%1 séances, %2 heures en tout</translation>
    </message>
    <message>
        <source>no shim</source>
        <translation>aucune cale</translation>
    </message>
    <message>
        <source>is loose</source>
        <translation>est libre</translation>
    </message>
    <message>
        <source>%1, %2 ring</source>
        <translation>%1, rangée %2</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>%1 is not a build record, although it is named like one: look for a copy of it.</source>
        <translation>%1 n&apos;est pas un carnet de montage, bien qu&apos;il en porte le nom&#xa0;: en chercher une copie.</translation>
    </message>
    <message>
        <source>%1 is not a build record: choose a file that ends in .caprail.</source>
        <translation>%1 n&apos;est pas un carnet de montage&#xa0;: choisir un fichier qui finit par .caprail.</translation>
    </message>
    <message>
        <source>0.0575 or 57.5 thou</source>
        <translation>0.0575 ou 57.5 thou</translation>
    </message>
    <message>
        <source>this engine</source>
        <translation>ce moteur</translation>
    </message>
    <message>
        <source>%1 by less than its last digit, at %2</source>
        <translation>%1 de moins que son dernier chiffre, en %2</translation>
    </message>
    <message>
        <source>%1 is not a thread: write inch threads as 7/16-20 and metric ones as M10x1.25, with “special” behind a pitch of no series.</source>
        <translation>%1 n&apos;est pas un filetage&#xa0;: écrire les filetages en pouces comme 7/16-20 et les métriques comme M10x1.25, avec «&#xa0;special&#xa0;» derrière un pas hors série.</translation>
    </message>
    <message>
        <source>leaves the load on the cap as it is</source>
        <translation>laisse la charge sur le chapeau telle quelle</translation>
    </message>
    <message>
        <source>takes %1 off the cap</source>
        <translation>retire %1 au chapeau</translation>
    </message>
    <message>
        <source>turns the load on the cap round, to %1 up</source>
        <translation>inverse la charge sur le chapeau, à %1 vers le haut</translation>
    </message>
    <message>
        <source>turns the load on the cap round, to %1 down</source>
        <translation>inverse la charge sur le chapeau, à %1 vers le bas</translation>
    </message>
    <message>
        <source>puts %1 more on the cap</source>
        <translation>ajoute %1 au chapeau</translation>
    </message>
    <message>
        <source>Least film by the charts of Raimondi and Boyd for a steady load, with the same load and width at every bearing, the oil as warm as the block, its viscosity by ASTM D341. An engine&apos;s load turns and hammers: advice, no verdict.</source>
        <translation>Film minimal d&apos;après les abaques de Raimondi et Boyd pour une charge constante, à charge et largeur égales pour tous les paliers, l&apos;huile aussi chaude que le bloc, sa viscosité selon ASTM D341. La charge d&apos;un moteur tourne et martèle&#xa0;: un conseil, pas un jugement.</translation>
    </message>
    <message>
        <source>A look ahead by α·D·ΔT, the shells with their steel backs where their thickness is known, common practice, no source: it leaves out that a cap may be of another metal. No verdict, not stored.</source>
        <translation>Une prévision par α·D·ΔT, les coussinets avec leur dos d&apos;acier là où leur épaisseur est connue, usage courant, sans source&#xa0;: elle ignore qu&apos;un chapeau peut être d&apos;un autre métal. Ni jugement ni enregistrement.</translation>
    </message>
    <message>
        <source>The database %1 does not answer (%2): check the network and the server.</source>
        <translation>La base de données %1 ne répond pas (%2)&#xa0;: vérifier le réseau et le serveur.</translation>
    </message>
    <message>
        <source>What %1 holds does not verify, and no file was made: %2</source>
        <translation>Ce que %1 contient ne résiste pas à la vérification, et aucun fichier n&apos;a été fait&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 (first seal %2)</source>
        <translation>%1 (premier sceau %2)</translation>
    </message>
    <message>
        <source>%1, serial %2 (first seal %3)</source>
        <translation>%1, numéro de série %2 (premier sceau %3)</translation>
    </message>
    <message>
        <source>Nothing new: all of it was published before.</source>
        <translation>Rien de nouveau&#xa0;: tout était déjà publié.</translation>
    </message>
    <message>
        <source>An older copy: the database holds one entry more, and was left as it is.</source>
        <translation>Une copie plus ancienne&#xa0;: la base de données contient une inscription de plus et a été laissée telle quelle.</translation>
    </message>
    <message>
        <source>An older copy: the database holds %1 entries more, and was left as it is.</source>
        <translation>Une copie plus ancienne&#xa0;: la base de données contient %1 inscriptions de plus et a été laissée telle quelle.</translation>
    </message>
    <message>
        <source>One entry sent.</source>
        <translation>Une inscription envoyée.</translation>
    </message>
    <message>
        <source>%1 entries sent.</source>
        <translation>%1 inscriptions envoyées.</translation>
    </message>
    <message>
        <source>One photo or file sent.</source>
        <translation>Une photo ou un fichier envoyé.</translation>
    </message>
    <message>
        <source>%1 photos and files sent.</source>
        <translation>%1 photos et fichiers envoyés.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>The rules of judging were changed after the reading of entry %1 (%2)</source>
        <translation>Les règles de jugement ont été changées après la lecture de l&apos;entrée %1 (%2)</translation>
    </message>
</context>
<context>
    <name>DeflectionChartText</name>
    <message>
        <source>How the girdle lies</source>
        <translation>Comment la plaque repose</translation>
    </message>
    <message>
        <source>The girdle&apos;s height over the pan rail with its nuts at torque: from %1 to %2, negative into the block.</source>
        <translation>La hauteur de la plaque au-dessus du plan de joint, écrous au couple&#xa0;: de %1 à %2, négatif vers le bloc.</translation>
    </message>
    <message>
        <source>height over the rail, thou</source>
        <translation>hauteur au-dessus du plan de joint, thou</translation>
    </message>
    <message>
        <source>height over the rail, mm</source>
        <translation>hauteur au-dessus du plan de joint, mm</translation>
    </message>
    <message>
        <source>nuts on the left</source>
        <translation>écrous de gauche</translation>
    </message>
    <message>
        <source>nuts on the right</source>
        <translation>écrous de droite</translation>
    </message>
    <message>
        <source>residual %1</source>
        <translation>résidu %1</translation>
    </message>
    <message>
        <source>pulls the cap up by %1</source>
        <translation>tire le chapeau vers le haut de %1</translation>
    </message>
    <message>
        <source>presses the cap down by %1</source>
        <translation>pousse le chapeau vers le bas de %1</translation>
    </message>
    <message>
        <source>behind cap 1</source>
        <translation>derrière le chapeau 1</translation>
    </message>
    <message>
        <source>right of the crank</source>
        <translation>à droite du vilebrequin</translation>
    </message>
</context>
<context>
    <name>FastenersStation</name>
    <message>
        <source>Set the wrench to %1</source>
        <translation>Régler la clé à %1</translation>
    </message>
    <message>
        <source>past its due date, %1</source>
        <translation>échu depuis le %1</translation>
    </message>
    <message>
        <source>no calibration on record</source>
        <translation>aucun étalonnage au carnet</translation>
    </message>
    <message>
        <source>stretch %1</source>
        <translation>allongement %1</translation>
    </message>
    <message>
        <source>%1 stretch</source>
        <translation>allongement %1</translation>
    </message>
    <message>
        <source>Nothing is specified for it yet: set its group under Groups.</source>
        <translation>Rien n&apos;est encore prescrit pour elle&#xa0;: fixer son groupe sous «&#xa0;Groupes&#xa0;».</translation>
    </message>
    <message>
        <source>Specified: %1</source>
        <translation>Prescrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>desserrée</translation>
    </message>
    <message>
        <source>loosened</source>
        <translation>desserrée</translation>
    </message>
    <message>
        <source>moved %1</source>
        <translation>a bougé de %1</translation>
    </message>
    <message>
        <source>held</source>
        <translation>a tenu</translation>
    </message>
    <message>
        <source>verified by its length, never pulled again</source>
        <translation>vérifiée par sa longueur, jamais resserrée</translation>
    </message>
    <message>
        <source>verified by its witness mark, never pulled again</source>
        <translation>vérifiée par son repère, jamais resserrée</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>a bougé</translation>
    </message>
    <message>
        <source>held, %1 stretch</source>
        <translation>a tenu, allongement %1</translation>
    </message>
    <message>
        <source>its mark lines up</source>
        <translation>repère aligné</translation>
    </message>
    <message>
        <source>in this group</source>
        <translation>dans ce groupe</translation>
    </message>
    <message>
        <source>in no group</source>
        <translation>dans aucun groupe</translation>
    </message>
    <message>
        <source>in the group %1</source>
        <translation>dans le groupe %1</translation>
    </message>
    <message>
        <source>no limit of error given</source>
        <translation>erreur maximale non indiquée</translation>
    </message>
    <message>
        <source>no calibration date and no limit of error given</source>
        <translation>ni date d&apos;étalonnage ni erreur maximale indiquée</translation>
    </message>
    <message>
        <source>no calibration date given</source>
        <translation>date d&apos;étalonnage non indiquée</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, puis %2</translation>
    </message>
    <message>
        <source>%1, in steps of %2</source>
        <translation>%1, par étapes de %2</translation>
    </message>
    <message>
        <source>used once</source>
        <translation>usage unique</translation>
    </message>
    <message>
        <source>%1 (says %2)</source>
        <translation>%1 (selon %2)</translation>
    </message>
    <message>
        <source>%1 moved %2.</source>
        <translation>%1 a bougé de %2.</translation>
    </message>
    <message>
        <source>%1 moved.</source>
        <translation>%1 a bougé.</translation>
    </message>
    <message>
        <source>The gap at %1 now lies between %2 and %3.</source>
        <translation>L&apos;interstice au %1 est maintenant entre %2 et %3.</translation>
    </message>
    <message>
        <source>Stale by it: %1 and %2 more.</source>
        <translation>Périmé par là&#xa0;: %1 et %2 autres.</translation>
    </message>
    <message>
        <source>Stale by it: %1.</source>
        <translation>Périmé par là&#xa0;: %1.</translation>
    </message>
    <message>
        <source>It must hold in a later round.</source>
        <translation>Elle doit tenir dans une tournée ultérieure.</translation>
    </message>
</context>
<context>
    <name>FeelChartText</name>
    <message>
        <source>The feel, by the height of the step</source>
        <translation>Le toucher, selon la hauteur de la marche</translation>
    </message>
    <message>
        <source>Every answer appears here.</source>
        <translation>Chaque réponse apparaît ici.</translation>
    </message>
    <message>
        <source>No step has been felt yet.</source>
        <translation>Aucune marche n&apos;a encore été touchée.</translation>
    </message>
    <message>
        <source>rocks</source>
        <translation>bascule</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>%1: %2 in %3 of %4 answers</source>
        <translation>%1&#xa0;: %2 dans %3 réponses sur %4</translation>
    </message>
    <message>
        <source>height of the step above the rests</source>
        <translation>hauteur de la marche au-dessus des appuis</translation>
    </message>
    <message>
        <source>answers, %</source>
        <translation>réponses,&#xa0;%</translation>
    </message>
    <message>
        <source>%1 answers at %2 heights.</source>
        <translation>%1 réponses à %2 hauteurs.</translation>
    </message>
    <message>
        <source>A step of %1 is felt rightly 95 times of 100, at the unfavourable end of its confidence.</source>
        <translation>Une marche de %1 est sentie juste 95 fois sur 100, à l&apos;extrémité défavorable de son intervalle de confiance.</translation>
    </message>
</context>
<context>
    <name>FilmChartText</name>
    <message>
        <source>Oil film over clearance</source>
        <translation>Film d&apos;huile selon le jeu</translation>
    </message>
    <message>
        <source>least film</source>
        <translation>film minimal</translation>
    </message>
    <message>
        <source>%1: film %2 at a clearance of %3</source>
        <translation>%1&#xa0;: film %2 pour un jeu de %3</translation>
    </message>
    <message>
        <source>clearance, warm</source>
        <translation>jeu, à chaud</translation>
    </message>
    <message>
        <source>least film, mains</source>
        <translation>film minimal, vilebrequin</translation>
    </message>
    <message>
        <source>mains, warm</source>
        <translation>vilebrequin, à chaud</translation>
    </message>
    <message>
        <source>least film, rods</source>
        <translation>film minimal, bielles</translation>
    </message>
    <message>
        <source>rods, warm</source>
        <translation>bielles, à chaud</translation>
    </message>
    <message>
        <source>The least oil film over the clearance, with %1 bearings on the curves.</source>
        <translation>Le film d&apos;huile minimal selon le jeu, avec %1 paliers sur les courbes.</translation>
    </message>
</context>
<context>
    <name>GaugeSetup</name>
    <message>
        <source>the gauge that types</source>
        <translation>l&apos;appareil qui tape</translation>
    </message>
    <message>
        <source>the gauge at %1</source>
        <translation>l&apos;appareil sur %1</translation>
    </message>
</context>
<context>
    <name>GirdleAdvice</name>
    <message>
        <source>Advice, not a verdict: consider a girdle from about %1 to %2 hp on a small-block V8, and near %3 hp on a big-block (common practice, no source). Speed, fuel, and the material of block and caps count as much; what the makers of block and girdle say comes first.</source>
        <translation>Conseil, et non jugement&#xa0;: envisager une plaque à partir d&apos;environ %1 à %2 hp sur un petit V8, et vers %3 hp sur un gros (usage courant, sans source). Le régime, le carburant, la matière du bloc et des chapeaux comptent autant&#xa0;; ce que disent les fabricants du bloc et de la plaque passe d&apos;abord.</translation>
    </message>
</context>
<context>
    <name>GirdleDiagramText</name>
    <message>
        <source>%1 read</source>
        <translation>lu ×%1</translation>
    </message>
    <message>
        <source>no stack</source>
        <translation>aucune pile</translation>
    </message>
    <message>
        <source>off</source>
        <translation>retirée</translation>
    </message>
    <message>
        <source>gap %1</source>
        <translation>interstice %1</translation>
    </message>
    <message>
        <source>residual %1</source>
        <translation>résidu %1</translation>
    </message>
</context>
<context>
    <name>GirdleWordsText</name>
    <message>
        <source>no shim</source>
        <translation>aucune cale</translation>
    </message>
    <message>
        <source>%1 of %2 gaps accepted</source>
        <translation>%1 interstices acceptés sur %2</translation>
    </message>
    <message>
        <source>Nothing to plan yet: the plan begins with the first accepted gap.</source>
        <translation>Rien à planifier encore&#xa0;: le plan commence avec le premier interstice accepté.</translation>
    </message>
    <message>
        <source>The kit is empty: add its shims first (Alt+2).</source>
        <translation>L&apos;assortiment est vide&#xa0;: y ajouter d&apos;abord ses cales (Alt+2).</translation>
    </message>
    <message>
        <source>… and %1 more: see the drawing.</source>
        <translation>… et %1 autres&#xa0;: voir le dessin.</translation>
    </message>
    <message>
        <source>%1 cannot be met: nearest %2, residual %3.</source>
        <translation>%1 est hors d&apos;atteinte&#xa0;: au plus près %2, résidu %3.</translation>
    </message>
    <message>
        <source>The stacks as built are as good as the best plan.</source>
        <translation>Les piles telles que montées valent le meilleur plan.</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>pas encore lu</translation>
    </message>
    <message>
        <source>to be read again</source>
        <translation>à relire</translation>
    </message>
    <message>
        <source>not accepted yet</source>
        <translation>pas encore accepté</translation>
    </message>
    <message>
        <source>no residual band is set, the usual %1 to %2 is taken</source>
        <translation>aucune plage de résidu n&apos;est fixée, celle d&apos;usage, de %1 à %2, est prise</translation>
    </message>
    <message>
        <source>No residual band is set: the usual %1 to %2 is taken (common practice, no source). Set the band “residual” at the engine station.</source>
        <translation>Aucune plage de résidu n&apos;est fixée&#xa0;: celle d&apos;usage, de %1 à %2, est prise (usage courant, sans source). Fixer la plage «&#xa0;residual&#xa0;» au poste Moteur.</translation>
    </message>
    <message>
        <source>%1 is not met by the plan found so far: nearest %2, residual %3.</source>
        <translation>%1 n&apos;est pas atteint par le plan trouvé jusqu&apos;ici&#xa0;: au plus près %2, résidu %3.</translation>
    </message>
    <message>
        <source>The stacks as built are better than the plan found so far.</source>
        <translation>Les piles telles que montées sont meilleures que le plan trouvé jusqu&apos;ici.</translation>
    </message>
    <message>
        <source>The stacks as built are better than the plan.</source>
        <translation>Les piles telles que montées sont meilleures que le plan.</translation>
    </message>
    <message>
        <source>accepted %1 %2</source>
        <translation>accepté %1 %2</translation>
    </message>
    <message>
        <source>offset %1</source>
        <translation>décalage %1</translation>
    </message>
    <message>
        <source>pitch %1</source>
        <translation>pente longitudinale %1</translation>
    </message>
    <message>
        <source>roll %1</source>
        <translation>pente transversale %1</translation>
    </message>
    <message>
        <source>twist %1</source>
        <translation>gauchissement %1</translation>
    </message>
    <message>
        <source>Closed: these stacks are in the engine.</source>
        <translation>Fermé&#xa0;: ces piles sont dans le moteur.</translation>
    </message>
    <message>
        <source>Every stack stands and stays: there is nothing to plan.</source>
        <translation>Chaque pile est en place et reste&#xa0;: il n&apos;y a rien à planifier.</translation>
    </message>
    <message>
        <source>up</source>
        <translation>haut</translation>
    </message>
    <message>
        <source>down</source>
        <translation>bas</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>Largest load %1 at %2, %3. Largest bending stress in the plate %4; energy %5 mJ.</source>
        <translation>Plus grande charge %1 au %2, %3. Plus grande contrainte de flexion dans la plaque %4&#xa0;; énergie %5 mJ.</translation>
    </message>
    <message>
        <source>Rings: the residual of the stack. Thin: in its band, %1 to %2 · disc with rays: proud of it · dashed ring: loose</source>
        <translation>Anneaux&#xa0;: le résidu de la pile. Fin&#xa0;: dans sa plage, %1 à %2 · disque à rayons&#xa0;: trop haut · anneau tireté&#xa0;: libre</translation>
    </message>
    <message>
        <source>spread %1 (%2 to %3)</source>
        <translation>étendue %1 (%2 à %3)</translation>
    </message>
    <message>
        <source>repeatability s = %1</source>
        <translation>répétabilité s = %1</translation>
    </message>
    <message>
        <source>local up to %1 at %2</source>
        <translation>local jusqu&apos;à %1 au %2</translation>
    </message>
    <message>
        <source>%1 of %2 in band</source>
        <translation>%1 sur %2 dans la plage</translation>
    </message>
    <message numerus="yes">
        <source>%n shims</source>
        <translation>
            <numerusform>%n cale</numerusform>
            <numerusform>%n cales</numerusform>
        </translation>
    </message>
    <message>
        <source>largest residual %1</source>
        <translation>plus grand résidu %1</translation>
    </message>
    <message>
        <source>largest load %1</source>
        <translation>plus grande charge %1</translation>
    </message>
    <message>
        <source>No plan can have more than %1 in band, nor then fewer than %2 shims: this is at least %3 % of what can be.</source>
        <translation>Aucun plan ne peut en avoir plus de %1 dans la plage, ni alors moins de %2 cales&#xa0;: c&apos;est au moins %3&#xa0;% du possible.</translation>
    </message>
    <message>
        <source>No plan has more in band, nor as many with fewer shims; only the residuals may still be bettered.</source>
        <translation>Aucun plan n&apos;en a plus dans la plage, ni autant avec moins de cales&#xa0;; seuls les résidus peuvent encore être améliorés.</translation>
    </message>
    <message>
        <source>No plan has more in band, nor as many with fewer shims; only the twist and the residuals may still be bettered.</source>
        <translation>Aucun plan n&apos;en a plus dans la plage, ni autant avec moins de cales&#xa0;; seuls le gauchissement et les résidus peuvent encore être améliorés.</translation>
    </message>
    <message>
        <source>No plan has more in band, nor as many with fewer shims; only the loads may still be bettered.</source>
        <translation>Aucun plan n&apos;en a plus dans la plage, ni autant avec moins de cales&#xa0;; seules les charges peuvent encore être améliorées.</translation>
    </message>
    <message>
        <source>No plan is better in any figure.</source>
        <translation>Aucun plan n&apos;est meilleur par aucun chiffre.</translation>
    </message>
    <message>
        <source>%1 stacks stand and stay; the plan is for the other %2.</source>
        <translation>%1 piles sont en place et restent&#xa0;; le plan vaut pour les %2 autres.</translation>
    </message>
    <message>
        <source>Proven best: %1 (%2 ms).</source>
        <translation>Le meilleur, prouvé&#xa0;: %1 (%2 ms).</translation>
    </message>
    <message>
        <source>Best found so far: %1 (%2 ms).</source>
        <translation>Le meilleur trouvé jusqu&apos;ici&#xa0;: %1 (%2 ms).</translation>
    </message>
    <message>
        <source>Buy a shim of %1.</source>
        <translation>Acheter une cale de %1.</translation>
    </message>
    <message>
        <source>Or lap %1 from %2 to %3.</source>
        <translation>Ou roder %1 de %2 à %3.</translation>
    </message>
    <message>
        <source>The plan has %1 more in band.</source>
        <translation>Le plan en a %1 de plus dans la plage.</translation>
    </message>
    <message numerus="yes">
        <source>The plan saves %n shims.</source>
        <translation>
            <numerusform>Le plan économise %n cale.</numerusform>
            <numerusform>Le plan économise %n cales.</numerusform>
        </translation>
    </message>
    <message>
        <source>The plan&apos;s largest load is %1 smaller.</source>
        <translation>La plus grande charge du plan est plus petite de %1.</translation>
    </message>
    <message>
        <source>The plan&apos;s largest load is a little smaller.</source>
        <translation>La plus grande charge du plan est un peu plus petite.</translation>
    </message>
    <message>
        <source>The plan&apos;s largest residual is %1 smaller.</source>
        <translation>Le plus grand résidu du plan est plus petit de %1.</translation>
    </message>
    <message>
        <source>The plan&apos;s largest residual is a little smaller.</source>
        <translation>Le plus grand résidu du plan est un peu plus petit.</translation>
    </message>
    <message>
        <source>The plan&apos;s residuals add up to %1 less.</source>
        <translation>La somme des résidus du plan est plus petite de %1.</translation>
    </message>
    <message>
        <source>The plan&apos;s residuals add up to a little less.</source>
        <translation>La somme des résidus du plan est un peu plus petite.</translation>
    </message>
    <message>
        <source>The plan twists the plate less.</source>
        <translation>Le plan gauchit moins la plaque.</translation>
    </message>
    <message>
        <source>The plan&apos;s loads are smaller together.</source>
        <translation>La somme des charges du plan est plus petite.</translation>
    </message>
    <message>
        <source>More shims than the rules allow in one stack: %1.</source>
        <translation>Plus de cales dans une pile que n&apos;en permettent les consignes&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 in band</source>
        <translation>%1 dans la plage</translation>
    </message>
    <message>
        <source>As built: %1.</source>
        <translation>Telles que montées&#xa0;: %1.</translation>
    </message>
    <message>
        <source>one reading</source>
        <translation>une lecture</translation>
    </message>
    <message>
        <source>%1 readings within %2, s = %3</source>
        <translation>%1 lectures à moins de %2, s = %3</translation>
    </message>
    <message>
        <source>expected %1 after what moved</source>
        <translation>attendu %1 après ce qui a bougé</translation>
    </message>
</context>
<context>
    <name>GivenPicture</name>
    <message>
        <source>Drawings (*.svg)</source>
        <translation>Dessins (*.svg)</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Images (*.png)</translation>
    </message>
    <message>
        <source>The picture was not written</source>
        <translation>L&apos;image n&apos;a pas été écrite</translation>
    </message>
    <message>
        <source>The name of a picture ends in .svg or .png, which “%1” does not.</source>
        <translation>Le nom d&apos;une image finit par .svg ou .png, ce qui n&apos;est pas le cas de «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>Copy as picture</source>
        <translation>Copier comme image</translation>
    </message>
    <message>
        <source>Save as SVG…</source>
        <translation>Enregistrer en SVG…</translation>
    </message>
    <message>
        <source>Save as PNG…</source>
        <translation>Enregistrer en PNG…</translation>
    </message>
</context>
<context>
    <name>HistoryStation</name>
    <message>
        <source>held</source>
        <translation>a tenu</translation>
    </message>
    <message>
        <source>moved %1</source>
        <translation>a bougé de %1</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>a bougé</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>à %1</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1 avec %2</translation>
    </message>
    <message>
        <source>no instrument named</source>
        <translation>aucun instrument nommé</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>biffée</translation>
    </message>
    <message>
        <source>an earlier outcome was struck</source>
        <translation>un résultat antérieur a été biffé</translation>
    </message>
    <message>
        <source>Export what is shown</source>
        <translation>Exporter ce qui est montré</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tableaux (*.csv)</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exporter</translation>
    </message>
    <message>
        <source>page %1</source>
        <translation>page %1</translation>
    </message>
    <message>
        <source>%1, round %2: %3</source>
        <translation>%1, tournée %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1 UTC, entry %2</source>
        <translation>%1 UTC, inscription %2</translation>
    </message>
</context>
<context>
    <name>KeyList</name>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>stores what is typed and goes to the next place; presses the button in focus</source>
        <translation>enregistre ce qui est tapé et va à l&apos;endroit suivant&#xa0;; appuie sur le bouton actif</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Haut, Bas</translation>
    </message>
    <message>
        <source>another place, from the value field</source>
        <translation>un autre endroit, depuis le champ de valeur</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Ctrl+Entrée</translation>
    </message>
    <message>
        <source>to the next thing to do</source>
        <translation>vers la prochaine chose à faire</translation>
    </message>
    <message>
        <source>Ctrl+1 to Ctrl+8</source>
        <translation>Ctrl+1 à Ctrl+8</translation>
    </message>
    <message>
        <source>the stations, in the order of the work</source>
        <translation>les postes, dans l&apos;ordre du travail</translation>
    </message>
    <message>
        <source>Alt+1, Alt+2, …</source>
        <translation>Alt+1, Alt+2, …</translation>
    </message>
    <message>
        <source>the views of a station</source>
        <translation>les vues d&apos;un poste</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
    <message>
        <source>empties the field; once it is empty, leaves the bench view</source>
        <translation>vide le champ&#xa0;; s&apos;il est vide, quitte la vue établi</translation>
    </message>
    <message>
        <source>! behind a value</source>
        <translation>! derrière une valeur</translation>
    </message>
    <message>
        <source>stores it though it was asked back; the record shows that</source>
        <translation>l&apos;enregistre bien qu&apos;elle ait été redemandée&#xa0;; le carnet le montre</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation>Ctrl+Z</translation>
    </message>
    <message>
        <source>strikes the last entry, with a reason</source>
        <translation>biffe la dernière inscription, avec un motif</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Suppr</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>opens a finding at the chosen place</source>
        <translation>ouvre un constat à l&apos;endroit choisi</translation>
    </message>
    <message>
        <source>Ctrl+Shift+A</source>
        <translation>Ctrl+Maj+A</translation>
    </message>
    <message>
        <source>adds a photo there</source>
        <translation>y ajoute une photo</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation>Ctrl+F</translation>
    </message>
    <message>
        <source>finds in the record</source>
        <translation>cherche dans le carnet</translation>
    </message>
    <message>
        <source>Ctrl+U</source>
        <translation>Ctrl+U</translation>
    </message>
    <message>
        <source>inch or millimetre, everywhere</source>
        <translation>pouce ou millimètre, partout</translation>
    </message>
    <message>
        <source>F9</source>
        <translation>F9</translation>
    </message>
    <message>
        <source>bench view: one value at a time, to be read from afar</source>
        <translation>vue établi&#xa0;: une valeur à la fois, à lire de loin</translation>
    </message>
    <message>
        <source>F1</source>
        <translation>F1</translation>
    </message>
    <message>
        <source>Shift+F1</source>
        <translation>Maj+F1</translation>
    </message>
    <message>
        <source>the tour</source>
        <translation>la visite</translation>
    </message>
    <message>
        <source>Ctrl+Shift+P</source>
        <translation>Ctrl+Maj+P</translation>
    </message>
    <message>
        <source>the build sheet as PDF</source>
        <translation>la feuille de montage en PDF</translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation>Ctrl+Maj+O</translation>
    </message>
    <message>
        <source>the shop: the records of a folder</source>
        <translation>l&apos;atelier&#xa0;: les carnets d&apos;un répertoire</translation>
    </message>
    <message>
        <source>strikes the chosen entries of a list, with one reason</source>
        <translation>biffe les inscriptions choisies d&apos;une liste, avec un seul motif</translation>
    </message>
    <message>
        <source>Ctrl+C</source>
        <translation>Ctrl+C</translation>
    </message>
    <message>
        <source>copies the diagram, chart or table in focus; the menu key saves a drawing as SVG or PNG</source>
        <translation>copie le dessin, le graphique ou le tableau actif&#xa0;; la touche Menu enregistre un dessin en SVG ou PNG</translation>
    </message>
    <message>
        <source>the manual, at the page of this station</source>
        <translation>le manuel, à la page de ce poste</translation>
    </message>
</context>
<context>
    <name>Photos</name>
    <message>
        <source>pasted</source>
        <translation>collée</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Ajouter des photos</translation>
    </message>
    <message>
        <source>What was copied is a drawing, not a photo: save it as PNG and add that.</source>
        <translation>Ce qui a été copié est un dessin, pas une photo&#xa0;: l&apos;enregistrer en PNG et l&apos;ajouter.</translation>
    </message>
    <message>
        <source>“%1” is neither a build record (.caprail) nor a photo (JPEG, PNG, WebP or HEIF): nothing was done with it.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est ni un carnet de montage (.caprail) ni une photo (JPEG, PNG, WebP ou HEIF)&#xa0;: rien n&apos;en a été fait.</translation>
    </message>
    <message>
        <source>Pictures (%1);;All files (*)</source>
        <translation>Images (%1);;Tous les fichiers (*)</translation>
    </message>
</context>
<context>
    <name>PickupGaugeText</name>
    <message>
        <source>clearance,
enlarged</source>
        <translation>garde,
agrandie</translation>
    </message>
    <message>
        <source>pan floor</source>
        <translation>fond du carter</translation>
    </message>
</context>
<context>
    <name>PickupSectionText</name>
    <message>
        <source>pan rail</source>
        <translation>plan de joint</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>pas mesuré</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>pas encore connu</translation>
    </message>
    <message>
        <source>clearance %1</source>
        <translation>garde %1</translation>
    </message>
</context>
<context>
    <name>PickupTermsText</name>
    <message>
        <source>From the pan&apos;s flange face straight down to its floor, where the pickup will stand.</source>
        <translation>De la face de joint du carter tout droit jusqu&apos;à son fond, là où sera la crépine.</translation>
    </message>
    <message>
        <source>The thickness it has when the pan is tight, not as it comes from the bag. None: enter 0.</source>
        <translation>L&apos;épaisseur qu&apos;il a carter serré, et non à la sortie du sachet. Aucun&#xa0;: entrer 0.</translation>
    </message>
    <message>
        <source>Whatever holds the pan off the rail: the girdle plate where it lies between, else 0. Count a bead of sealant as 0.</source>
        <translation>Ce qui écarte le carter du plan de joint&#xa0;: la plaque raidisseuse là où elle s&apos;intercale, sinon 0. Un cordon de pâte à joint compte pour 0.</translation>
    </message>
    <message>
        <source>From the pan rail down to the lowest point of the pickup as it is mounted.</source>
        <translation>Du plan de joint jusqu&apos;au point le plus bas de la crépine montée.</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>pas mesuré</translation>
    </message>
    <message>
        <source>%1   one reading: one more is needed</source>
        <translation>%1   une lecture&#xa0;: il en faut une de plus</translation>
    </message>
    <message>
        <source>The clearance is in the middle of its band: leave it.</source>
        <translation>La garde est au milieu de sa plage&#xa0;: la laisser.</translation>
    </message>
    <message>
        <source>To centre it at %1: lower the pickup by %2, or take %2 off what lies between pan and rail.</source>
        <translation>Pour la centrer à %1&#xa0;: abaisser la crépine de %2, ou retirer %2 à ce qui est entre le carter et le plan de joint.</translation>
    </message>
    <message>
        <source>To centre it at %1: raise the pickup by %2, or put %2 more between pan and rail.</source>
        <translation>Pour la centrer à %1&#xa0;: relever la crépine de %2, ou ajouter %2 entre le carter et le plan de joint.</translation>
    </message>
    <message>
        <source>%1 %2   %3 readings within %4</source>
        <translation>%1 %2   %3 lectures à moins de %4</translation>
    </message>
</context>
<context>
    <name>PlanDrawing</name>
    <message>
        <source>FRONT</source>
        <translation>AVANT</translation>
    </message>
    <message>
        <source>LEFT</source>
        <translation>GAUCHE</translation>
    </message>
    <message>
        <source>RIGHT</source>
        <translation>DROITE</translation>
    </message>
    <message>
        <source>pickup</source>
        <translation>crépine</translation>
    </message>
    <message>
        <source>dipstick</source>
        <translation>jauge d&apos;huile</translation>
    </message>
    <message>
        <source> in</source>
        <comment>inner stud of a cap, short</comment>
        <translation> int.</translation>
    </message>
    <message>
        <source> out</source>
        <comment>outer stud of a cap, short</comment>
        <translation> ext.</translation>
    </message>
    <message>
        <source>rod %1</source>
        <translation>bielle %1</translation>
    </message>
    <message>
        <source>throw %1</source>
        <translation>coude %1</translation>
    </message>
</context>
<context>
    <name>PlanView</name>
    <message>
        <source>Plan of the pan rail</source>
        <translation>Plan du plan de joint</translation>
    </message>
</context>
<context>
    <name>PublishText</name>
    <message>
        <source>The settings could not be written to %1: see that it can be written, then try again.</source>
        <translation>Les réglages n&apos;ont pu être écrits dans %1&#xa0;: faire en sorte que ce fichier puisse être écrit, puis réessayer.</translation>
    </message>
</context>
<context>
    <name>RecheckWordsText</name>
    <message>
        <source>R
rocks
proud: too thick</source>
        <translation>B
bascule
trop haut&#xa0;: trop épais</translation>
    </message>
    <message>
        <source>D
drags
right</source>
        <translation>F
frotte
juste</translation>
    </message>
    <message>
        <source>L
loose
low: too thin</source>
        <translation>L
libre
trop bas&#xa0;: trop mince</translation>
    </message>
    <message>
        <source>as built</source>
        <translation>tel que monté</translation>
    </message>
    <message>
        <source>thicker</source>
        <translation>plus épais</translation>
    </message>
    <message>
        <source>thinner</source>
        <translation>plus mince</translation>
    </message>
    <message>
        <source>Lay in %1</source>
        <translation>Poser %1</translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>Retirer %1</translation>
    </message>
    <message>
        <source>Take out %1, lay in %2</source>
        <translation>Retirer %1, poser %2</translation>
    </message>
    <message>
        <source>%1: the stack is %2 thicker. It should rock.</source>
        <translation>%1&#xa0;: la pile est plus épaisse de %2. Elle devrait basculer.</translation>
    </message>
    <message>
        <source>%1: the stack is %2 thinner. It should be loose.</source>
        <translation>%1&#xa0;: la pile est plus mince de %2. Elle devrait être libre.</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1&#xa0;: %2 %3</translation>
    </message>
    <message>
        <source>by arithmetic</source>
        <translation>par le calcul</translation>
    </message>
    <message>
        <source>The verdict is carried %1</source>
        <translation>Le jugement est porté %1</translation>
    </message>
    <message>
        <source>by the bracketed recheck</source>
        <translation>par le recontrôle encadré</translation>
    </message>
    <message>
        <source>by a feel that was tried</source>
        <translation>par un toucher éprouvé</translation>
    </message>
    <message>
        <source>Name the straightedge: without it the recheck carries no verdict.</source>
        <translation>Nommer la règle&#xa0;: sans elle, le recontrôle ne porte aucun jugement.</translation>
    </message>
    <message>
        <source>The feel of %1 with %2 was never tried.</source>
        <translation>Le toucher de %1 avec %2 n&apos;a jamais été éprouvé.</translation>
    </message>
    <message>
        <source>The feel of %1 with %2: %3</source>
        <translation>Le toucher de %1 avec %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>The feel of %1 with %2 is worth ± %3, until %4.</source>
        <translation>Le toucher de %1 avec %2 vaut ± %3, jusqu&apos;au %4.</translation>
    </message>
    <message>
        <source>⚑ The feel of %1 with %2 was worth ± %3 and was to be tried again by %4.</source>
        <translation>⚑ Le toucher de %1 avec %2 valait ± %3 et était à éprouver de nouveau avant le %4.</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>The logo “%1” cannot be used (%2): choose another picture in the preferences.</source>
        <translation>Le logo «&#xa0;%1&#xa0;» ne peut pas être utilisé (%2)&#xa0;: choisir une autre image dans les préférences.</translation>
    </message>
    <message>
        <source>no longer counts: entry %1, %2</source>
        <translation>ne compte plus&#xa0;: inscription %1, %2</translation>
    </message>
    <message>
        <source>moved: must hold in a later round</source>
        <translation>a bougé&#xa0;: doit tenir dans une tournée ultérieure</translation>
    </message>
    <message>
        <source>not complete</source>
        <translation>incomplète</translation>
    </message>
    <message>
        <source>every fastener held</source>
        <translation>chaque fixation a tenu</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Tournée</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Commencée</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Wrench</source>
        <translation>Clé</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>A tenu</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>A bougé</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Verify rounds</source>
        <translation>Tournées de vérification</translation>
    </message>
    <message>
        <source>How far each one moved, round by round</source>
        <translation>De combien chacune a bougé, tournée par tournée</translation>
    </message>
    <message>
        <source>Difference of builds</source>
        <translation>Différence des montages</translation>
    </message>
    <message>
        <source>Engine not described</source>
        <translation>Moteur non décrit</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Numéro de série</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Maintenant</translation>
    </message>
    <message>
        <source>There is nothing to compare yet: neither build holds a measured value.</source>
        <translation>Il n&apos;y a encore rien à comparer&#xa0;: aucun des deux montages ne contient de valeur mesurée.</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Palier</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Portée</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Alésage</translation>
    </message>
    <message>
        <source>Clearance</source>
        <translation>Jeu</translation>
    </message>
    <message>
        <source>Smallest – largest</source>
        <translation>Minimum – maximum</translation>
    </message>
    <message>
        <source>± U</source>
        <translation>± U</translation>
    </message>
    <message>
        <source>Taper</source>
        <translation>Conicité</translation>
    </message>
    <message>
        <source>Out-of-round</source>
        <translation>Ovalisation</translation>
    </message>
    <message>
        <source>Shells, upper / lower</source>
        <translation>Coussinets, haut / bas</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Jugement</translation>
    </message>
    <message>
        <source>Main bearings</source>
        <translation>Paliers de vilebrequin</translation>
    </message>
    <message>
        <source>Rod bearings</source>
        <translation>Paliers de bielle</translation>
    </message>
    <message>
        <source>Bearings</source>
        <translation>Paliers</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Ajustement</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lectures</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>pas mesuré</translation>
    </message>
    <message>
        <source>no stack</source>
        <translation>aucune pile</translation>
    </message>
    <message>
        <source>no shim needed</source>
        <translation>aucune cale nécessaire</translation>
    </message>
    <message>
        <source>The kit has %1 shims: %2 in stacks, %3 set aside, %4 free.</source>
        <translation>L&apos;assortiment a %1 cales&#xa0;: %2 dans des piles, %3 mises de côté, %4 libres.</translation>
    </message>
    <message>
        <source>Worked out from every stack as built.</source>
        <translation>Calculé à partir de chaque pile telle que montée.</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>Shim  marked / measured</source>
        <translation>Cale  marquée / mesurée</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Épaisseur</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>Interstice</translation>
    </message>
    <message>
        <source>Residual</source>
        <translation>Résidu</translation>
    </message>
    <message>
        <source>Straightedge</source>
        <translation>Règle</translation>
    </message>
    <message>
        <source>Shim stacks</source>
        <translation>Piles de cales</translation>
    </message>
    <message>
        <source>cannot be told</source>
        <translation>indéterminable</translation>
    </message>
    <message>
        <source>Flushness of the girdle on its stacks</source>
        <translation>Affleurement de la plaque sur ses piles</translation>
    </message>
    <message>
        <source>Offset</source>
        <translation>Décalage</translation>
    </message>
    <message>
        <source>Pitch, front to rear</source>
        <translation>Pente longitudinale, d&apos;avant en arrière</translation>
    </message>
    <message>
        <source>Roll, left to right</source>
        <translation>Pente transversale, de gauche à droite</translation>
    </message>
    <message>
        <source>Twist, diagonal to diagonal</source>
        <translation>Gauchissement, de diagonale à diagonale</translation>
    </message>
    <message>
        <source>Local error, %1</source>
        <translation>Écart local, %1</translation>
    </message>
    <message>
        <source>Cap %1</source>
        <translation>Chapeau %1</translation>
    </message>
    <message>
        <source>Heights are over the bolted span. Positive: the girdle sits low there. Twist is what bends a block; offset, pitch and roll move the plate as a whole.</source>
        <translation>Les hauteurs valent sur l&apos;étendue boulonnée. Positif&#xa0;: la plaque y est basse. Le gauchissement est ce qui fléchit un bloc&#xa0;; décalage et pentes déplacent la plaque d&apos;une pièce.</translation>
    </message>
    <message>
        <source>There is no layout card without an engine layout: set it at the engine station.</source>
        <translation>Pas de carte de pose sans architecture du moteur&#xa0;: la fixer au poste Moteur.</translation>
    </message>
    <message>
        <source>no shim</source>
        <translation>aucune cale</translation>
    </message>
    <message>
        <source>Gap and stack at each position</source>
        <translation>Interstice et pile à chaque position</translation>
    </message>
    <message>
        <source>The pan rail from the pan&apos;s side, front of the engine to the left. Left and right are as seen from the flywheel end of the engine as installed. At each position: the gap in %1, under it the shims.</source>
        <translation>Le plan de joint vu du côté du carter d&apos;huile, avant du moteur à gauche. Gauche et droite sont vues du côté volant, moteur en position de marche. À chaque position&#xa0;: l&apos;interstice en %1, dessous les cales.</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pouces</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>millimètres</translation>
    </message>
    <message>
        <source>U not known</source>
        <translation>U inconnu</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>changé</translation>
    </message>
    <message>
        <source>within ± U</source>
        <translation>dans ± U</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Différence</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Changement</translation>
    </message>
    <message>
        <source>± U is the expanded uncertainty of the difference, from those of both measurements. A difference within it is not a measured change.</source>
        <translation>± U est l&apos;incertitude élargie de la différence, tirée de celles des deux mesures. Une différence qui y tient n&apos;est pas un changement mesuré.</translation>
    </message>
    <message>
        <source>Bearing clearances</source>
        <translation>Jeux des paliers</translation>
    </message>
    <message>
        <source>Journals, bores and shells</source>
        <translation>Portées, alésages et coussinets</translation>
    </message>
    <message>
        <source>Means of the diameters. Positive is worn: a journal became smaller, a bore larger. If the shells were changed, the bore includes the new shells.</source>
        <translation>Moyennes des diamètres. Positif signifie usé&#xa0;: une portée a diminué, un alésage a grandi. Si les coussinets ont été changés, l&apos;alésage comprend les nouveaux.</translation>
    </message>
    <message>
        <source>Journal then</source>
        <translation>Portée avant</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>wear</source>
        <translation>usure</translation>
    </message>
    <message>
        <source>Bore then</source>
        <translation>Alésage avant</translation>
    </message>
    <message>
        <source>Shells then</source>
        <translation>Coussinets avant</translation>
    </message>
    <message>
        <source>Gaps under the girdle, and their stacks</source>
        <translation>Interstices sous la plaque, et leurs piles</translation>
    </message>
    <message>
        <source>Gap then</source>
        <translation>Interstice avant</translation>
    </message>
    <message>
        <source>Stack then</source>
        <translation>Pile avant</translation>
    </message>
    <message>
        <source>Fits and pickup</source>
        <translation>Ajustements et crépine</translation>
    </message>
    <message>
        <source>Torques, and movement in verify rounds</source>
        <translation>Couples, et mouvement dans les tournées de vérification</translation>
    </message>
    <message>
        <source>Fastener</source>
        <translation>Fixation</translation>
    </message>
    <message>
        <source>Torque then</source>
        <translation>Couple avant</translation>
    </message>
    <message>
        <source>Rounds moved then</source>
        <translation>A bougé avant (tournées)</translation>
    </message>
    <message>
        <source>another torque</source>
        <translation>un autre couple</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>le même</translation>
    </message>
    <message>
        <source>Build</source>
        <translation>Montage</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Tournées</translation>
    </message>
    <message>
        <source>Pulls</source>
        <translation>Essais</translation>
    </message>
    <message>
        <source>Largest movement</source>
        <translation>Plus grand mouvement</translation>
    </message>
    <message>
        <source>Build %1, %2 to %3, %4</source>
        <translation>Montage %1, %2 à %3, %4</translation>
    </message>
    <message>
        <source>signed off</source>
        <translation>visé</translation>
    </message>
    <message>
        <source>not signed off</source>
        <translation>non visé</translation>
    </message>
    <message>
        <source>Counted readings</source>
        <translation>Lectures comptées</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Moyenne</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Étendue</translation>
    </message>
    <message>
        <source>Std. deviation</source>
        <translation>Écart type</translation>
    </message>
    <message>
        <source>Accepted gap</source>
        <translation>Interstice accepté</translation>
    </message>
    <message>
        <source>Outdated</source>
        <translation>Dépassées</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Gap survey</source>
        <translation>Relevé des interstices</translation>
    </message>
    <message>
        <source>Accepted</source>
        <translation>Accepté</translation>
    </message>
    <message>
        <source>%1 of %2 positions</source>
        <translation>%1 positions sur %2</translation>
    </message>
    <message>
        <source>Smallest – largest gap</source>
        <translation>Plus petit – plus grand interstice</translation>
    </message>
    <message>
        <source>Spread of the survey</source>
        <translation>Étendue du relevé</translation>
    </message>
    <message>
        <source>Repeatability (pooled std. deviation)</source>
        <translation>Répétabilité (écart type commun)</translation>
    </message>
    <message>
        <source>in</source>
        <translation>dans les limites</translation>
    </message>
    <message>
        <source>Decision rule: simple acceptance. The measured value alone decides; its expanded uncertainty U is shown and not counted.</source>
        <translation>Règle de décision&#xa0;: acceptation simple. La valeur mesurée décide seule&#xa0;; son incertitude élargie U est montrée et ne compte pas.</translation>
    </message>
    <message>
        <source>k = 2</source>
        <translation>k = 2</translation>
    </message>
    <message>
        <source>Student&apos;s t at 95.45 %</source>
        <translation>t de Student à 95,45&#xa0;%</translation>
    </message>
    <message>
        <source>Build sheet</source>
        <translation>Feuille de montage</translation>
    </message>
    <message>
        <source>Begun and last entry</source>
        <translation>Début et dernière inscription</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Throw</source>
        <translation>Coude</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>By, when</source>
        <translation>Par, quand</translation>
    </message>
    <message>
        <source>Trial fit</source>
        <translation>Montage à blanc</translation>
    </message>
    <message>
        <source>Term</source>
        <translation>Terme</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>Clearance under the pickup</source>
        <translation>Garde sous la crépine</translation>
    </message>
    <message>
        <source>Clearance: %1</source>
        <translation>Garde&#xa0;: %1</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>open time on the tube: %1 min</source>
        <translation>temps ouvert selon le tube&#xa0;: %1 min</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>Closing and sign-off</source>
        <translation>Fermeture et visa</translation>
    </message>
    <message>
        <source>Not signed off.</source>
        <translation>Non visé.</translation>
    </message>
    <message>
        <source>For the shop: name, date, signature</source>
        <translation>Pour l&apos;atelier&#xa0;: nom, date, signature</translation>
    </message>
    <message>
        <source>Received by the customer: name, date, signature</source>
        <translation>Reçu par le client&#xa0;: nom, date, signature</translation>
    </message>
    <message>
        <source>The seal</source>
        <translation>Le sceau</translation>
    </message>
    <message>
        <source>Short form, on every page</source>
        <translation>Forme courte, sur chaque page</translation>
    </message>
    <message>
        <source>Entries sealed</source>
        <translation>Inscriptions scellées</translation>
    </message>
    <message>
        <source>In full (SHA-256 chain)</source>
        <translation>En entier (chaîne SHA-256)</translation>
    </message>
    <message>
        <source>Every entry of the record carries a hash over itself and over all entries before it; the seal is the last of them. The short form printed here matches only the record that this sheet was made from: whoever changes, drops or reorders an entry gets another seal. “caprail check” shows the seal of a file, to be compared with this page.</source>
        <translation>Chaque inscription du carnet porte une empreinte d&apos;elle-même et de toutes les inscriptions précédentes&#xa0;; le sceau est la dernière. La forme courte imprimée ici ne correspond qu&apos;au carnet dont cette feuille est tirée&#xa0;: qui change, retire ou déplace une inscription obtient un autre sceau. «&#xa0;caprail check&#xa0;» montre le sceau d&apos;un fichier, à comparer avec cette page.</translation>
    </message>
    <message>
        <source>What it does not prove: that what was entered is true, that the clock was right, or who sat at the keyboard. A file by itself can be rewritten as a whole with new seals; only this page, kept apart from the file, shows that it was not.</source>
        <translation>Ce qu&apos;il ne prouve pas&#xa0;: que ce qui a été inscrit est vrai, que l&apos;horloge était juste, ou qui était au clavier. Un fichier seul peut être réécrit en entier avec de nouveaux sceaux&#xa0;; seule cette page, gardée à part du fichier, montre qu&apos;il ne l&apos;a pas été.</translation>
    </message>
    <message>
        <source>All times: %1. Written by Caprail %2.</source>
        <translation>Toutes les heures&#xa0;: %1. Écrit par Caprail %2.</translation>
    </message>
    <message>
        <source>Main caps</source>
        <translation>Chapeaux de palier</translation>
    </message>
    <message>
        <source>Rods</source>
        <translation>Bielles</translation>
    </message>
    <message>
        <source>Girdle nuts</source>
        <translation>Écrous de plaque</translation>
    </message>
    <message>
        <source>Pan rail</source>
        <translation>Plan de joint</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>Rear</source>
        <translation>Arrière</translation>
    </message>
    <message>
        <source>stretch %1</source>
        <translation>allongement %1</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Groupe</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Thread, grade</source>
        <translation>Filetage, classe</translation>
    </message>
    <message>
        <source>Lubricant</source>
        <translation>Lubrifiant</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Ordre</translation>
    </message>
    <message>
        <source>Who says so</source>
        <translation>Selon qui</translation>
    </message>
    <message>
        <source>from the centre outwards</source>
        <translation>du centre vers l&apos;extérieur</translation>
    </message>
    <message>
        <source>held</source>
        <translation>a tenu</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>a bougé</translation>
    </message>
    <message>
        <source>loosened since</source>
        <translation>desserrée depuis</translation>
    </message>
    <message>
        <source>Last tightened to</source>
        <translation>Dernier serrage à</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Tournée %1</translation>
    </message>
    <message>
        <source>%1, further rounds</source>
        <translation>%1, tournées suivantes</translation>
    </message>
    <message>
        <source>Torques</source>
        <translation>Couples</translation>
    </message>
    <message>
        <source>Values by: %1</source>
        <translation>Valeurs selon&#xa0;: %1</translation>
    </message>
    <message>
        <source>Main-cap fasteners</source>
        <translation>Fixations des chapeaux de palier</translation>
    </message>
    <message>
        <source>Rod fasteners</source>
        <translation>Fixations de bielle</translation>
    </message>
    <message>
        <source>cannot be shown</source>
        <translation>ne peut pas être montré</translation>
    </message>
    <message>
        <source>Photos and files</source>
        <translation>Photos et fichiers</translation>
    </message>
    <message>
        <source>Kept in the record, not printed: %1</source>
        <translation>Gardé dans le carnet, non imprimé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Build sheet: %1</source>
        <translation>Feuille de montage&#xa0;: %1</translation>
    </message>
    <message>
        <source>build %1</source>
        <translation>montage %1</translation>
    </message>
    <message>
        <source>Difference of builds: %1</source>
        <translation>Différence des montages&#xa0;: %1</translation>
    </message>
    <message>
        <source>builds %1 and %2</source>
        <translation>montages %1 et %2</translation>
    </message>
    <message>
        <source>Seal %1 over %2 entries</source>
        <translation>Sceau %1 sur %2 inscriptions</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 sur %2</translation>
    </message>
    <message>
        <source>This seal matches only this exact record. It does not prove that what was entered is true.</source>
        <translation>Ce sceau ne correspond qu&apos;à ce carnet exact. Il ne prouve pas que ce qui a été inscrit est vrai.</translation>
    </message>
    <message>
        <source>Times: %1</source>
        <translation>Heures&#xa0;: %1</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Endroit</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Ce qui a été vu</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>réglé</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Inscription</translation>
    </message>
    <message>
        <source>What it said</source>
        <translation>Ce qu&apos;elle disait</translation>
    </message>
    <message>
        <source>Entered by, when</source>
        <translation>Inscrit par, quand</translation>
    </message>
    <message>
        <source>Struck by, when</source>
        <translation>Biffé par, quand</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Struck entries</source>
        <translation>Inscriptions biffées</translation>
    </message>
    <message>
        <source>Withdrawn by a person, with a reason. Not counted anywhere above; kept readable.</source>
        <translation>Retirées par une personne, avec un motif. Comptées nulle part ci-dessus&#xa0;; gardées lisibles.</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Maker, serial number</source>
        <translation>Fabricant, numéro de série</translation>
    </message>
    <message>
        <source>Accuracy, range</source>
        <translation>Erreur maximale, étendue</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Étalonné</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Échéance</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>Layout card</source>
        <translation>Carte de pose</translation>
    </message>
    <message>
        <source>Layout card: %1</source>
        <translation>Carte de pose&#xa0;: %1</translation>
    </message>
    <message>
        <source>no stack yet</source>
        <translation>pas encore de pile</translation>
    </message>
    <message>
        <source>The rings lie as the positions do on the engine. Lay each shim on its ring, and count them before they go in.</source>
        <translation>Les anneaux sont disposés comme les positions sur le moteur. Poser chaque cale sur son anneau, et les compter avant de les monter.</translation>
    </message>
    <message>
        <source>Cap by cap from the front. Lay each shim on its ring, and count them before they go in.</source>
        <translation>Chapeau par chapeau depuis l&apos;avant. Poser chaque cale sur son anneau, et les compter avant de les monter.</translation>
    </message>
    <message>
        <source>▲ front</source>
        <translation>▲ avant</translation>
    </message>
    <message>
        <source>2 in when printed at 1 : 1 (100 %, not “fit to page”)</source>
        <translation>2 in si imprimé à 1&#xa0;: 1 (100&#xa0;%, et non «&#xa0;ajusté à la page&#xa0;»)</translation>
    </message>
    <message>
        <source>50 mm when printed at 1 : 1 (100 %, not “fit to page”)</source>
        <translation>50 mm si imprimé à 1&#xa0;: 1 (100&#xa0;%, et non «&#xa0;ajusté à la page&#xa0;»)</translation>
    </message>
    <message>
        <source>Seal %1</source>
        <translation>Sceau %1</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Contrôle</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>En tout</translation>
    </message>
    <message>
        <source>Held by</source>
        <translation>Bloqué par</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Que faire</translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation>%1, et %2 autres</translation>
    </message>
    <message>
        <source>Trial-fit gate</source>
        <translation>Accès au montage à blanc</translation>
    </message>
    <message>
        <source>Closing gate</source>
        <translation>Accès à la fermeture</translation>
    </message>
    <message>
        <source>%1 open: all %2 checks that it needs are good, none is stale.</source>
        <translation>%1 ouvert&#xa0;: les %2 contrôles nécessaires sont tous bons, aucun n&apos;est périmé.</translation>
    </message>
    <message>
        <source>%1 locked: there is no engine layout yet.</source>
        <translation>%1 verrouillé&#xa0;: il n&apos;y a pas encore d&apos;architecture du moteur.</translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Où en est le travail</translation>
    </message>
    <message>
        <source>past its due date, %1</source>
        <translation>échu depuis le %1</translation>
    </message>
    <message numerus="yes">
        <source>%n more entries of this kind.</source>
        <translation>
            <numerusform>%n autre inscription de ce type.</numerusform>
            <numerusform>%n autres inscriptions de ce type.</numerusform>
        </translation>
    </message>
    <message>
        <source>The sheet cannot be finished: %1</source>
        <translation>La feuille ne peut pas être achevée&#xa0;: %1</translation>
    </message>
    <message>
        <source>Of %1 photos the last %2 are printed. The record holds them all.</source>
        <translation>Sur %1 photos, les %2 dernières sont imprimées. Le carnet les contient toutes.</translation>
    </message>
    <message>
        <source>Kept in the record, not printed: %1 files; the last are %2</source>
        <translation>Gardés dans le carnet, non imprimés&#xa0;: %1 fichiers&#xa0;; les derniers sont %2</translation>
    </message>
    <message>
        <source>[cut off here: it has %1 characters, and the record holds them all]</source>
        <translation>[coupé ici&#xa0;: le texte a %1 caractères, et le carnet les contient tous]</translation>
    </message>
    <message>
        <source>Of %1 rows the last %2 are printed.</source>
        <translation>Sur %1 lignes, les %2 dernières sont imprimées.</translation>
    </message>
    <message>
        <source>Of %1 rows %2 are printed: the last %3, and before them %4 that are not good.</source>
        <translation>Sur %1 lignes, %2 sont imprimées&#xa0;: les %3 dernières, et avant elles %4 qui ne sont pas bonnes.</translation>
    </message>
    <message>
        <source>%1 more that are not good are not printed.</source>
        <translation>%1 autres qui ne sont pas bonnes ne sont pas imprimées.</translation>
    </message>
    <message>
        <source>The record holds them all.</source>
        <translation>Le carnet les contient toutes.</translation>
    </message>
    <message>
        <source>%1 readings, %2 to %3; the last %4: %5</source>
        <translation>%1 lectures, %2 à %3&#xa0;; les %4 dernières&#xa0;: %5</translation>
    </message>
    <message>
        <source>The drawing shows the last readings of each position; the table counts them all.</source>
        <translation>Le dessin montre les dernières lectures de chaque position&#xa0;; le tableau les compte toutes.</translation>
    </message>
    <message>
        <source>Of %1 verify rounds the last %2 are printed fastener by fastener. The record holds them all.</source>
        <translation>Sur %1 tournées de vérification, les %2 dernières sont imprimées fixation par fixation. Le carnet les contient toutes.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>bracketed: %1</source>
        <translation>encadré&#xa0;: %1</translation>
    </message>
    <message>
        <source>by feel</source>
        <translation>au toucher</translation>
    </message>
    <message>
        <source>does not count: %1</source>
        <translation>ne compte pas&#xa0;: %1</translation>
    </message>
    <message>
        <source>Verified</source>
        <translation>Vérifié</translation>
    </message>
    <message>
        <source>With the stacks off, every main-cap and rod fastener is pulled to its specified torque again, without backing it off; or, where it must not be pulled, its stretch is read or its witness mark looked at. Fastener by fastener under Torques.</source>
        <translation>Piles retirées, chaque fixation de chapeau et de bielle est amenée de nouveau au couple prescrit, sans la desserrer&#xa0;; ou, là où elle ne doit pas être resserrée, son allongement est lu ou son repère regardé. Fixation par fixation sous Couples.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Verified by</source>
        <translation>Vérifié par</translation>
    </message>
    <message>
        <source>by its mark</source>
        <translation>par son repère</translation>
    </message>
    <message>
        <source>Does not count: %1</source>
        <translation>Ne compte pas&#xa0;: %1</translation>
    </message>
    <message>
        <source>Torque on</source>
        <translation>Couple au serrage</translation>
    </message>
    <message>
        <source>Torque off</source>
        <translation>Couple au desserrage</translation>
    </message>
    <message>
        <source>Clamp</source>
        <translation>Effort de serrage</translation>
    </message>
    <message>
        <source>Clamp, from the torques that turned on and back</source>
        <translation>Effort de serrage, d&apos;après les couples au serrage et au desserrage</translation>
    </message>
    <message>
        <source>A fastener that held turned no further at its torque when it was pulled again: that says nothing more of its clamp.</source>
        <translation>Une fixation qui a tenu n&apos;a pas tourné davantage à son couple quand elle a été reprise&#xa0;: cela n&apos;en dit pas plus sur son effort de serrage.</translation>
    </message>
    <message>
        <source>counted: %1 in the stacks + %2 set aside + %3 left over = %4</source>
        <translation>compté&#xa0;: %1 dans les piles + %2 mises de côté + %3 restantes = %4</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lot %1</translation>
    </message>
    <message>
        <source>Turning torque, %1</source>
        <translation>Couple de rotation, %1</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Bloque</translation>
    </message>
    <message>
        <source>The shop&apos;s own checks</source>
        <translation>Contrôles propres à l&apos;atelier</translation>
    </message>
    <message>
        <source>Thicker</source>
        <translation>Plus épais</translation>
    </message>
    <message>
        <source>Thinner</source>
        <translation>Plus mince</translation>
    </message>
    <message>
        <source>Bracketed rechecks</source>
        <translation>Recontrôles encadrés</translation>
    </message>
    <message>
        <source>With shims exchanged for thicker ones the straightedge rocks, for thinner ones it is loose: the residual lies between.</source>
        <translation>Avec des cales échangées contre de plus épaisses la règle bascule, contre de plus minces elle est libre&#xa0;: le résidu est entre les deux.</translation>
    </message>
    <message>
        <source>The feel of %1 with %2 was tried on %3: %4 answers, ± %5.</source>
        <translation>Le toucher de %1 avec %2 a été éprouvé le %3&#xa0;: %4 réponses, ± %5.</translation>
    </message>
    <message>
        <source>The accepted gap is the median of the counted readings (at least %1, within %2). Outdated readings were made before a fastener of the cap moved or a part was changed; they no longer count. Large differences between positions are normal.</source>
        <translation>L&apos;interstice accepté est la médiane des lectures comptées (au moins %1, à moins de %2). Les lectures dépassées ont été faites avant qu&apos;une fixation du chapeau ne bouge ou qu&apos;une pièce ne soit changée&#xa0;; elles ne comptent plus. De grandes différences entre positions sont normales.</translation>
    </message>
    <message>
        <source>Not signed with a key: the seal shows that nothing was altered since, and not who made the record.</source>
        <translation>Signé d&apos;aucune clé&#xa0;: le sceau montre que rien n&apos;a été modifié depuis, mais pas qui a fait le carnet.</translation>
    </message>
    <message>
        <source>Signed by %1 on %2, all of it. Key %3</source>
        <translation>Signé par %1 le %2, en entier. Clé %3</translation>
    </message>
    <message>
        <source>Signed by %1 on %2, up to entry %3 of %4. Key %5</source>
        <translation>Signé par %1 le %2, jusqu&apos;à l&apos;inscription %3 sur %4. Clé %5</translation>
    </message>
    <message>
        <source>The code holds the seal in full.</source>
        <translation>Le code contient le sceau en entier.</translation>
    </message>
    <message>
        <source>The code holds the seal in full and the fingerprint of the key. Compare that with the one that the shop told you by another way.</source>
        <translation>Le code contient le sceau en entier et l&apos;empreinte de la clé. La comparer à celle que l&apos;atelier a communiquée par une autre voie.</translation>
    </message>
    <message>
        <source>Limits of the vertical clearance: %1</source>
        <translation>Limites du jeu vertical&#xa0;: %1</translation>
    </message>
    <message>
        <source>Mean ± U, and its limits</source>
        <translation>Moyenne ± U, et ses limites</translation>
    </message>
    <message>
        <source>Limits by</source>
        <translation>Limites selon</translation>
    </message>
    <message>
        <source>Other clearances</source>
        <translation>Autres jeux</translation>
    </message>
    <message>
        <source>Limits by: %1</source>
        <translation>Limites selon&#xa0;: %1</translation>
    </message>
    <message>
        <source>Sort</source>
        <translation>Genre</translation>
    </message>
    <message>
        <source>What was changed, and why</source>
        <translation>Ce qui a été changé, et pourquoi</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Changements</translation>
    </message>
    <message>
        <source>What was changed, struck or accepted again after something had been judged by it.</source>
        <translation>Ce qui a été changé, biffé ou accepté à nouveau après avoir servi à juger.</translation>
    </message>
    <message>
        <source>Values that nobody confirmed</source>
        <translation>Valeurs que personne n&apos;a confirmées</translation>
    </message>
    <message>
        <source>Common practice, without a source: the part makers&apos; own figures come first.</source>
        <translation>Usage courant, sans source&#xa0;: les chiffres des fabricants des pièces passent d&apos;abord.</translation>
    </message>
    <message>
        <source>Annex: everything that was measured</source>
        <translation>Annexe&#xa0;: tout ce qui a été mesuré</translation>
    </message>
    <message>
        <source>In the present build: %1</source>
        <translation>Dans le montage actuel&#xa0;: %1</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>à %1</translation>
    </message>
    <message>
        <source>All (%1)</source>
        <translation>Toutes (%1)</translation>
    </message>
    <message>
        <source>All others (%1)</source>
        <translation>Toutes les autres (%1)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>no; days used: %1</source>
        <translation>non&#xa0;; jours d&apos;emploi&#xa0;: %1</translation>
    </message>
    <message>
        <source>yes; days: %1 of %2</source>
        <translation>oui&#xa0;; jours&#xa0;: %1 sur %2</translation>
    </message>
    <message>
        <source>last off by %1</source>
        <translation>dernier écart %1</translation>
    </message>
    <message>
        <source>Tried on its standard</source>
        <translation>Éprouvé sur son étalon</translation>
    </message>
    <message>
        <source>Limits: %1</source>
        <translation>Limites&#xa0;: %1</translation>
    </message>
    <message>
        <source>Nothing was measured yet.</source>
        <translation>Rien n&apos;a encore été mesuré.</translation>
    </message>
    <message>
        <source>Everything was measured and found good; the closing steps and the sign-off are still open.</source>
        <translation>Tout a été mesuré et trouvé bon&#xa0;; les étapes de fermeture et le visa restent à faire.</translation>
    </message>
    <message>
        <source>%1 of %2 checks are not good. First of them: %3, %4.</source>
        <translation>%1 contrôles sur %2 ne sont pas bons. Le premier&#xa0;: %3, %4.</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>%1 (%2 of %3)</source>
        <translation>%1 (%2 sur %3)</translation>
    </message>
    <message>
        <source>Main bearing clearance</source>
        <translation>Jeu des paliers de vilebrequin</translation>
    </message>
    <message>
        <source>Rod bearing clearance</source>
        <translation>Jeu des paliers de bielle</translation>
    </message>
    <message>
        <source>Gap left under the girdle (residual)</source>
        <translation>Interstice restant sous la plaque (résidu)</translation>
    </message>
    <message>
        <source>Twist of the girdle</source>
        <translation>Gauchissement de la plaque</translation>
    </message>
    <message>
        <source>Clearance under the oil pickup</source>
        <translation>Garde sous la crépine d&apos;huile</translation>
    </message>
    <message>
        <source>Main-cap and rod fasteners at their torque</source>
        <translation>Fixations de chapeau et de bielle à leur couple</translation>
    </message>
    <message>
        <source>The crank turns freely</source>
        <translation>Le vilebrequin tourne librement</translation>
    </message>
    <message>
        <source>Trial fit: all clear</source>
        <translation>Montage à blanc&#xa0;: tout est dégagé</translation>
    </message>
    <message>
        <source>✓  Signed off</source>
        <translation>✓  Visé</translation>
    </message>
    <message>
        <source>Build %1 was closed and signed off by %2 on %3.</source>
        <translation>Le montage %1 a été fermé et visé par %2 le %3.</translation>
    </message>
    <message>
        <source>✕  NOT FINISHED</source>
        <translation>✕  NON TERMINÉ</translation>
    </message>
    <message>
        <source>They are listed under Changes.</source>
        <translation>Ils figurent sous Changements.</translation>
    </message>
    <message>
        <source>Somebody has said of every limit and value whose figure it is.</source>
        <translation>Pour chaque limite et chaque valeur, quelqu&apos;un a dit de qui vient le chiffre.</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>Verdict, places</source>
        <translation>Jugement, endroits</translation>
    </message>
    <message>
        <source>The figures that matter</source>
        <translation>Les chiffres qui comptent</translation>
    </message>
    <message>
        <source>Found is the smallest and the largest value of all places. A verdict counts the measuring uncertainty; each place with its ± stands in the annex.</source>
        <translation>Le résultat est la plus petite et la plus grande valeur de tous les endroits. Un jugement tient compte de l&apos;incertitude de mesure&#xa0;; chaque endroit figure avec son ± en annexe.</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation>Signatures</translation>
    </message>
    <message>
        <source>Running in and later checks</source>
        <translation>Rodage et contrôles ultérieurs</translation>
    </message>
    <message>
        <source>The instructions of the makers of rings, bearings, camshaft and oil come first.</source>
        <translation>Les instructions des fabricants des segments, des coussinets, de l&apos;arbre à cames et de l&apos;huile passent d&apos;abord.</translation>
    </message>
    <message>
        <source>Before the first start: fill with oil and turn the pump, without ignition, until oil pressure shows.</source>
        <translation>Avant le premier démarrage&#xa0;: remplir d&apos;huile et faire tourner la pompe, sans allumage, jusqu&apos;à ce que la pression d&apos;huile s&apos;affiche.</translation>
    </message>
    <message>
        <source>At the first start: look for oil pressure at once. Stop the engine when it falls, when a new noise is heard or when oil runs out anywhere.</source>
        <translation>Au premier démarrage&#xa0;: regarder tout de suite la pression d&apos;huile. Arrêter le moteur si elle tombe, si un bruit nouveau s&apos;entend ou si de l&apos;huile sort quelque part.</translation>
    </message>
    <message>
        <source>Running in: change load and speed, no full load and no idling for long, as long as the shop says.</source>
        <translation>Pendant le rodage&#xa0;: varier charge et régime, ni pleine charge ni long ralenti, aussi longtemps que le dit l&apos;atelier.</translation>
    </message>
    <message>
        <source>After running in: change oil and filter, cut the filter open and look for metal.</source>
        <translation>Après le rodage&#xa0;: changer l&apos;huile et le filtre, ouvrir le filtre et y chercher du métal.</translation>
    </message>
    <message>
        <source>Do not retighten the fasteners of the main caps, the rods or the girdle: that is a job for the shop, with the pan off.</source>
        <translation>Ne pas resserrer les fixations des chapeaux, des bielles ou de la plaque&#xa0;: c&apos;est un travail pour l&apos;atelier, carter déposé.</translation>
    </message>
    <message>
        <source>Built with this oil: %1.</source>
        <translation>Monté avec cette huile&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Questions, or anything that looks wrong: %1</source>
        <translation>Questions, ou quoi que ce soit d&apos;anormal&#xa0;: %1</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neuf</translation>
    </message>
    <message>
        <source>used</source>
        <translation>d&apos;occasion</translation>
    </message>
    <message>
        <source>tightened before: %1×</source>
        <translation>déjà serrée&#xa0;: %1×</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Maker, number</source>
        <translation>Fabricant, référence</translation>
    </message>
    <message>
        <source>Serial, lot, stamped</source>
        <translation>Série, lot, marquage</translation>
    </message>
    <message>
        <source>New or used</source>
        <translation>Neuf ou d&apos;occasion</translation>
    </message>
    <message>
        <source>Machined: what, by whom, when</source>
        <translation>Usiné&#xa0;: quoi, par qui, quand</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>numéro de série %1</translation>
    </message>
    <message>
        <source>stamped %1</source>
        <translation>marquage %1</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Decision rule: guard bands (ISO 14253-1). A value is in when all of value ± U lies inside its limits, out when all of it lies outside, and too close to call otherwise. U is the expanded uncertainty, %1.</source>
        <translation>Règle de décision&#xa0;: bandes de garde (ISO 14253-1). Une valeur est dans les limites quand valeur ± U y tient tout entière, hors limites quand elle est tout entière dehors, et sinon indécise. U est l&apos;incertitude élargie, %1.</translation>
    </message>
    <message>
        <source>common practice, confirmed by nobody</source>
        <translation>usage courant, que personne n&apos;a confirmé</translation>
    </message>
    <message>
        <source>Twist is within its limits: %1.</source>
        <translation>Le gauchissement est dans ses limites&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Limits of the residual (gap less stack; positive is loose): %1</source>
        <translation>Limites du résidu (interstice moins pile&#xa0;; positif signifie libre)&#xa0;: %1</translation>
    </message>
    <message>
        <source>No place lies off the plane of the others by %1 or more.</source>
        <translation>Aucun endroit ne s&apos;écarte du plan des autres de %1 ou plus.</translation>
    </message>
    <message>
        <source>ties cap %1</source>
        <translation>relie le chapeau %1</translation>
    </message>
    <message>
        <source>ties caps %1 to %2 of %3</source>
        <translation>relie les chapeaux %1 à %2 sur %3</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Travail</translation>
    </message>
    <message>
        <source>Girdle</source>
        <translation>Plaque</translation>
    </message>
    <message>
        <source>order: %1</source>
        <translation>ordre&#xa0;: %1</translation>
    </message>
    <message>
        <source>steps: %1</source>
        <translation>étapes&#xa0;: %1</translation>
    </message>
    <message>
        <source>method: %1</source>
        <translation>méthode&#xa0;: %1</translation>
    </message>
    <message>
        <source>All groups: %1</source>
        <translation>Tous les groupes&#xa0;: %1</translation>
    </message>
    <message>
        <source>Measured, but no limits are set: nothing was judged.</source>
        <translation>Mesuré, mais aucune limite n&apos;est fixée&#xa0;: rien n&apos;a été jugé.</translation>
    </message>
    <message>
        <source>Clearances against their limits</source>
        <translation>Les jeux face à leurs limites</translation>
    </message>
    <message>
        <source>Chart of the clearances between their limits; the tables above hold its figures.</source>
        <translation>Graphique des jeux entre leurs limites&#xa0;; les tableaux ci-dessus en donnent les chiffres.</translation>
    </message>
    <message>
        <source>± is the measuring uncertainty: a value counts as within its limits only with it.</source>
        <translation>± est l&apos;incertitude de mesure&#xa0;: une valeur ne compte comme dans ses limites qu&apos;avec elle.</translation>
    </message>
    <message>
        <source>Plan of the pan rail.</source>
        <translation>Plan du plan de joint.</translation>
    </message>
    <message>
        <source>Chart of how far each fastener moved, round by round; the table under Torques holds its figures.</source>
        <translation>Graphique de combien chaque fixation a bougé, tournée par tournée&#xa0;; le tableau sous Couples en donne les chiffres.</translation>
    </message>
    <message>
        <source>p is the probability that the value lies within its limits, C how many times over the limits hold four standard uncertainties (JCGM 106); below 1 a value is weakly measured.</source>
        <translation>p est la probabilité que la valeur soit dans ses limites, C le nombre de fois que les limites contiennent quatre incertitudes types (JCGM 106)&#xa0;; en dessous de 1, une valeur est faiblement mesurée.</translation>
    </message>
    <message>
        <source>QR code of the seal: %1</source>
        <translation>Code QR du sceau&#xa0;: %1</translation>
    </message>
    <message>
        <source>Chart of the gap readings at each position; the table below holds its figures.</source>
        <translation>Graphique des lectures d&apos;interstice à chaque position&#xa0;; le tableau ci-dessous en donne les chiffres.</translation>
    </message>
    <message>
        <source>The shop&apos;s logo</source>
        <translation>Le logo de l&apos;atelier</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 vers le haut</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 vers le bas</translation>
    </message>
    <message>
        <source>Load, on the rail</source>
        <translation>Charge, sur le plan de joint</translation>
    </message>
    <message>
        <source>Of the preload</source>
        <translation>De la précharge</translation>
    </message>
    <message>
        <source>Load, rail free</source>
        <translation>Charge, plan de joint libre</translation>
    </message>
    <message>
        <source>Load that the girdle puts into the block</source>
        <translation>Charge que la plaque met dans le bloc</translation>
    </message>
    <message>
        <source>Largest load</source>
        <translation>Plus grande charge</translation>
    </message>
    <message>
        <source>Largest bending stress in the plate</source>
        <translation>Plus grande contrainte de flexion dans la plaque</translation>
    </message>
    <message>
        <source>Energy</source>
        <translation>Énergie</translation>
    </message>
    <message>
        <source>Up: the girdle pulls the cap up; down: it presses on it. %1</source>
        <translation>Vers le haut&#xa0;: la plaque tire sur le chapeau&#xa0;; vers le bas&#xa0;: elle appuie dessus. %1</translation>
    </message>
    <message>
        <source>Map of how the plate bends; the table below holds the loads.</source>
        <translation>Carte de la flexion de la plaque&#xa0;; le tableau ci-dessous donne les charges.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>jusqu&apos;à %1</translation>
    </message>
    <message>
        <source>%1 locked: %2 of %3 checks are not good.</source>
        <translation>%1 verrouillé&#xa0;: %2 contrôles sur %3 ne sont pas bons.</translation>
    </message>
    <message>
        <source>%1 locked: %2 of %3 checks are not good, those above and these.</source>
        <translation>%1 verrouillé&#xa0;: %2 contrôles sur %3 ne sont pas bons, ceux ci-dessus et ceux-ci.</translation>
    </message>
    <message>
        <source>%1 locked: %2 of %3 checks are not good, those above.</source>
        <translation>%1 verrouillé&#xa0;: %2 contrôles sur %3 ne sont pas bons, ceux ci-dessus.</translation>
    </message>
    <message>
        <source>%1 as marked</source>
        <translation>%1 selon marquage</translation>
    </message>
    <message>
        <source>%1, target %2</source>
        <translation>%1, cible %2</translation>
    </message>
    <message>
        <source>%1 (differs from its marking)</source>
        <translation>%1 (diffère de son marquage)</translation>
    </message>
    <message>
        <source>Taken %1 by the camera&apos;s clock</source>
        <translation>Prise le %1 à l&apos;horloge de l&apos;appareil</translation>
    </message>
</context>
<context>
    <name>SheetFont</name>
    <message>
        <source>There is no usable font on this computer, and nothing was written: install one, such as DejaVu Sans (Debian: fonts-dejavu-core).</source>
        <translation>Il n&apos;y a pas de police utilisable sur cet ordinateur, et rien n&apos;a été écrit&#xa0;: en installer une, comme DejaVu Sans (Debian&#xa0;: fonts-dejavu-core).</translation>
    </message>
</context>
<context>
    <name>ShopConfig</name>
    <message>
        <source>%1 (revision %2)</source>
        <translation>%1 (révision %2)</translation>
    </message>
</context>
<context>
    <name>SpokenWords</name>
    <message>
        <source>%1 held</source>
        <translation>%1 a tenu</translation>
    </message>
    <message>
        <source>%1 moved %2</source>
        <translation>%1 a bougé de %2</translation>
    </message>
    <message>
        <source>%1 moved</source>
        <translation>%1 a bougé</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>biffée</translation>
    </message>
</context>
<context>
    <name>SpreadChartText</name>
    <message>
        <source>Gap survey</source>
        <translation>Relevé des interstices</translation>
    </message>
    <message>
        <source>Every gap that is read appears here.</source>
        <translation>Chaque interstice lu apparaît ici.</translation>
    </message>
    <message>
        <source>No gap has been read yet.</source>
        <translation>Aucun interstice n&apos;a encore été lu.</translation>
    </message>
    <message>
        <source>pass %1</source>
        <translation>passe %1</translation>
    </message>
    <message>
        <source>no longer counts</source>
        <translation>ne compte plus</translation>
    </message>
    <message>
        <source>accepted gap</source>
        <translation>interstice accepté</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>main cap, front to rear</source>
        <translation>chapeau de palier, d&apos;avant en arrière</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>interstice</translation>
    </message>
    <message>
        <source>spread %1</source>
        <translation>étendue %1</translation>
    </message>
    <message>
        <source>%1 readings at caps %2 to %3.</source>
        <translation>%1 lectures aux chapeaux %2 à %3.</translation>
    </message>
    <message>
        <source>%1 of them no longer count.</source>
        <translation>%1 d&apos;entre elles ne comptent plus.</translation>
    </message>
    <message>
        <source>Accepted gaps from %1 to %2, spread %3.</source>
        <translation>Interstices acceptés de %1 à %2, étendue %3.</translation>
    </message>
    <message>
        <source>No gap is accepted yet.</source>
        <translation>Aucun interstice n&apos;est encore accepté.</translation>
    </message>
    <message>
        <source>Of each position the last %1 are drawn.</source>
        <translation>Pour chaque position, les %1 dernières sont dessinées.</translation>
    </message>
</context>
<context>
    <name>StoringPress</name>
    <message>
        <source>Enter came twice within half a second, so the second one stored nothing. If this one is done too, press it again.</source>
        <translation>Entrée est venue deux fois en une demi-seconde, et la seconde n&apos;a donc rien enregistré. Si ceci est fait aussi, appuyer de nouveau.</translation>
    </message>
    <message>
        <source>“%1” came twice within half a second, so the second one stored nothing. If it is meant for this place too, press it again.</source>
        <translation>«&#xa0;%1&#xa0;» est venu deux fois en une demi-seconde, et le second n&apos;a donc rien enregistré. S&apos;il vaut aussi pour cet endroit, appuyer de nouveau.</translation>
    </message>
</context>
<context>
    <name>TrialDiagramText</name>
    <message>
        <source>clearance %1</source>
        <translation>dégagement %1</translation>
    </message>
</context>
<context>
    <name>TrialFitText</name>
    <message>
        <source>%1 clear</source>
        <translation>%1 dégagé</translation>
    </message>
    <message>
        <source>Turning torque, %1</source>
        <translation>Couple de rotation, %1</translation>
    </message>
    <message>
        <source>Girdle nuts at torque</source>
        <translation>Écrous de plaque au couple</translation>
    </message>
    <message>
        <source>Throw %1: %2</source>
        <translation>Coude %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
</context>
<context>
    <name>VerifyChartText</name>
    <message>
        <source>Movement by verify round</source>
        <translation>Mouvement par tournée de vérification</translation>
    </message>
    <message>
        <source>Every outcome of a verify round appears here.</source>
        <translation>Chaque résultat d&apos;une tournée de vérification apparaît ici.</translation>
    </message>
    <message>
        <source>No outcome passes the filter.</source>
        <translation>Aucun résultat ne passe le filtre.</translation>
    </message>
    <message>
        <source>No outcome to show.</source>
        <translation>Aucun résultat à montrer.</translation>
    </message>
    <message>
        <source>%1 outcomes in rounds %2 to %3: %4 held, %5 moved, the farthest %6.</source>
        <translation>%1 résultats dans les tournées %2 à %3&#xa0;: %4 ont tenu, %5 ont bougé, au plus de %6.</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>tournée %1</translation>
    </message>
    <message>
        <source>held</source>
        <translation>a tenu</translation>
    </message>
    <message>
        <source>moved %1</source>
        <translation>a bougé de %1</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>a bougé</translation>
    </message>
    <message>
        <source>moved, main left</source>
        <translation>a bougé, palier gauche</translation>
    </message>
    <message>
        <source>moved, main right</source>
        <translation>a bougé, palier droite</translation>
    </message>
    <message>
        <source>moved, rod</source>
        <translation>a bougé, bielle</translation>
    </message>
    <message>
        <source>verify round</source>
        <translation>tournée de vérification</translation>
    </message>
    <message>
        <source>movement, degrees</source>
        <translation>mouvement, degrés</translation>
    </message>
    <message>
        <source>Only the last %1 rounds are drawn.</source>
        <translation>Seules les %1 dernières tournées sont dessinées.</translation>
    </message>
</context>
<context>
    <name>caprail::AcrossWindow</name>
    <message>
        <source>Range at each place</source>
        <translation>Étendue à chaque endroit</translation>
    </message>
    <message>
        <source>Movement in verify rounds</source>
        <translation>Mouvement dans les tournées de vérification</translation>
    </message>
    <message>
        <source>Instruments by the day that they fall due</source>
        <translation>Instruments par jour d&apos;échéance</translation>
    </message>
    <message>
        <source>Across engines — Caprail</source>
        <translation>Comparaison des moteurs — Caprail</translation>
    </message>
    <message>
        <source>Which records</source>
        <translation>Quels carnets</translation>
    </message>
    <message>
        <source>All records (%1)</source>
        <translation>Tous les carnets (%1)</translation>
    </message>
    <message>
        <source>Template: %1 (%2)</source>
        <translation>Modèle&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>Layout: %1 (%2)</source>
        <translation>Architecture&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>&amp;Spread</source>
        <translation>&amp;Dispersion</translation>
    </message>
    <message>
        <source>&amp;Movement</source>
        <translation>&amp;Mouvement</translation>
    </message>
    <message>
        <source>&amp;Instruments due</source>
        <translation>&amp;Instruments à échéance</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Grandeur</translation>
    </message>
    <message>
        <source>Save as a &amp;table (CSV)…</source>
        <translation>Enregistrer en &amp;tableau (CSV)…</translation>
    </message>
    <message>
        <source>spread.csv</source>
        <translation>dispersion.csv</translation>
    </message>
    <message>
        <source>By position</source>
        <translation>Par position</translation>
    </message>
    <message>
        <source>By wrench</source>
        <translation>Par clé</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>Par personne</translation>
    </message>
    <message>
        <source>Counted by</source>
        <translation>Compté par</translation>
    </message>
    <message>
        <source>How often a fastener moved in a verify round, out of how many pulls, in all builds. The counts say nothing of the cause.</source>
        <translation>Combien de fois une fixation a bougé dans une tournée de vérification, sur combien d&apos;essais, dans tous les montages. Les nombres ne disent rien de la cause.</translation>
    </message>
    <message>
        <source>movement.csv</source>
        <translation>mouvement.csv</translation>
    </message>
    <message>
        <source>Instruments of one name, kind and serial are taken to be the same. A wrench without a date of its own is due a year after its calibration. Pulls are the most that one record counts: records do not know of each other&apos;s.</source>
        <translation>Des instruments de même nom, type et numéro de série sont pris pour le même. Une clé sans date propre est due un an après son étalonnage. Les cycles sont le plus grand nombre que compte un carnet&#xa0;: les carnets ne connaissent pas ceux des autres.</translation>
    </message>
    <message>
        <source>instruments.csv</source>
        <translation>instruments.csv</translation>
    </message>
    <message>
        <source>Records: %1; pulls in their verify rounds: %2</source>
        <translation>Carnets&#xa0;: %1&#xa0;; essais dans leurs tournées de vérification&#xa0;: %2</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>moteur</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Endroit</translation>
    </message>
    <message>
        <source>Values</source>
        <translation>Valeurs</translation>
    </message>
    <message>
        <source>Smallest</source>
        <translation>Plus petite</translation>
    </message>
    <message>
        <source>Median</source>
        <translation>Médiane</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Plus grande</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Étendue</translation>
    </message>
    <message>
        <source>Judged out</source>
        <translation>Hors limites</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Moved, of pulls</source>
        <translation>A bougé, sur essais</translation>
    </message>
    <message>
        <source>Largest movement</source>
        <translation>Plus grand mouvement</translation>
    </message>
    <message>
        <source>✕ overdue</source>
        <translation>✕ en retard</translation>
    </message>
    <message>
        <source>days left: %1</source>
        <translation>jours restants&#xa0;: %1</translation>
    </message>
    <message>
        <source>no date</source>
        <translation>sans date</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Étalonné</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Échéance</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Pulls</source>
        <translation>Cycles</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Carnets</translation>
    </message>
    <message>
        <source>Save as a table</source>
        <translation>Enregistrer en tableau</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tableaux (*.csv)</translation>
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
        <translation>Sur l&apos;étagère et pas dans ce carnet</translation>
    </message>
    <message>
        <source>Add from the shop</source>
        <translation>Ajouter depuis l&apos;atelier</translation>
    </message>
    <message>
        <source>Ticked ones are copied into this record, which is then complete by itself.</source>
        <translation>Ce qui est coché est copié dans ce carnet, qui est alors complet par lui-même.</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>%1; this record has another state of it</source>
        <translation>%1&#xa0;; ce carnet en a un autre état</translation>
    </message>
    <message>
        <source>Kits of shims</source>
        <translation>Assortiments de cales</translation>
    </message>
    <message>
        <source>&amp;Copy into the record</source>
        <translation>&amp;Copier dans le carnet</translation>
    </message>
    <message>
        <source>There is nothing on the shelf that this record does not have. Fill the shelf from a record: Shop ▸ The shelf.</source>
        <translation>L&apos;étagère n&apos;a rien que ce carnet n&apos;ait déjà. Remplir l&apos;étagère depuis un carnet&#xa0;: Atelier ▸ L&apos;étagère.</translation>
    </message>
</context>
<context>
    <name>caprail::BearingsFilm</name>
    <message>
        <source>Bearing</source>
        <translation>Palier</translation>
    </message>
    <message>
        <source>Film, as measured</source>
        <translation>Film, tel que mesuré</translation>
    </message>
    <message>
        <source>Film, warm</source>
        <translation>Film, à chaud</translation>
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
        <translation>Pression</translation>
    </message>
    <message>
        <source>Oil films</source>
        <translation>Films d&apos;huile</translation>
    </message>
    <message>
        <source>Load on a bearing</source>
        <translation>Charge sur un palier</translation>
    </message>
    <message>
        <source>Oil</source>
        <translation>Huile</translation>
    </message>
    <message>
        <source>Speed, 1/min</source>
        <translation>Régime, 1/min</translation>
    </message>
    <message>
        <source>mm²/s at 40 °C</source>
        <translation>mm²/s à 40 °C</translation>
    </message>
    <message>
        <source>Width of the shells</source>
        <translation>Largeur des coussinets</translation>
    </message>
    <message>
        <source>mm²/s at 100 °C</source>
        <translation>mm²/s à 100 °C</translation>
    </message>
    <message>
        <source>none named</source>
        <translation>aucune nommée</translation>
    </message>
    <message>
        <source>figures of your own</source>
        <translation>chiffres à soi</translation>
    </message>
    <message>
        <source>Typical figures of data sheets, common practice, no source: the sheet of the oil in the can comes first.</source>
        <translation>Chiffres typiques de fiches techniques, usage courant, sans source&#xa0;: la fiche de l&apos;huile du bidon passe d&apos;abord.</translation>
    </message>
    <message>
        <source>the speed</source>
        <translation>le régime</translation>
    </message>
    <message>
        <source>the width of the shells</source>
        <translation>la largeur des coussinets</translation>
    </message>
    <message>
        <source>the load on a bearing</source>
        <translation>la charge sur un palier</translation>
    </message>
    <message>
        <source>The temperatures beside this cannot be read.</source>
        <translation>Les températures à côté sont illisibles.</translation>
    </message>
</context>
<context>
    <name>caprail::BearingsFits</name>
    <message>
        <source>%1, throw %2</source>
        <translation>%1, coude %2</translation>
    </message>
    <message>
        <source>%1, place %2</source>
        <translation>%1, endroit %2</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Ajustements</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Ajustement</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Plage</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Lu</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>&amp;Bands, and fits of the shop&apos;s own…</source>
        <translation>Plages, et aju&amp;stements propres à l&apos;atelier…</translation>
    </message>
    <message>
        <source>No fits yet</source>
        <translation>Pas encore d&apos;ajustement</translation>
    </message>
    <message>
        <source>A fit is read against a band: set that of the crank end play, the rod side clearance or a fit of your own first.</source>
        <translation>Un ajustement se lit face à une plage&#xa0;: fixer d&apos;abord celle du jeu axial du vilebrequin, du jeu latéral des bielles ou d&apos;un ajustement à soi.</translation>
    </message>
    <message>
        <source>Not read.</source>
        <translation>Pas lu.</translation>
    </message>
</context>
<context>
    <name>caprail::BearingsMeasure</name>
    <message>
        <source>&amp;Crank changed</source>
        <translation>&amp;Vilebrequin changé</translation>
    </message>
    <message>
        <source> stations</source>
        <translation> sections</translation>
    </message>
    <message>
        <source>Stations along the journal</source>
        <translation>Sections le long de la portée</translation>
    </message>
    <message>
        <source> directions</source>
        <translation> directions</translation>
    </message>
    <message>
        <source>Directions around the journal</source>
        <translation>Directions autour de la portée</translation>
    </message>
    <message>
        <source>Readings of this journal</source>
        <translation>Lectures de cette portée</translation>
    </message>
    <message>
        <source>What they come to</source>
        <translation>Ce que cela donne</translation>
    </message>
    <message>
        <source>Another crank, or it was worked on: its journals are measured again</source>
        <translation>Un autre vilebrequin, ou il a été retravaillé&#xa0;: ses portées sont mesurées de nouveau</translation>
    </message>
    <message>
        <source>Other shells lie in this bearing: its bore is measured again</source>
        <translation>D&apos;autres coussinets sont dans ce palier&#xa0;: son alésage est mesuré de nouveau</translation>
    </message>
    <message>
        <source>clearance at %1</source>
        <translation>jeu, %1</translation>
    </message>
    <message>
        <source>No layout</source>
        <translation>Pas d&apos;architecture</translation>
    </message>
    <message>
        <source>The journals follow from the engine layout: set it at the engine station.</source>
        <translation>Les portées découlent de l&apos;architecture du moteur&#xa0;: la fixer au poste Moteur.</translation>
    </message>
    <message>
        <source>No band is set for its clearance.</source>
        <translation>Aucune plage n&apos;est fixée pour son jeu.</translation>
    </message>
    <message>
        <source>Every place of this pass is read.</source>
        <translation>Chaque endroit de cette passe est lu.</translation>
    </message>
    <message>
        <source>%1 of %2 places still to read. ↑ ↓ step through them.</source>
        <translation>%1 endroits sur %2 encore à lire. ↑ ↓ les parcourent.</translation>
    </message>
    <message>
        <source>Journal %1, %2</source>
        <translation>Portée %1, %2</translation>
    </message>
    <message>
        <source>Clearance at %1, %2</source>
        <translation>Jeu, %1, %2</translation>
    </message>
    <message>
        <source>Housing of %1, %2</source>
        <translation>Logement de %1, %2</translation>
    </message>
    <message>
        <source>Bore of %1 with shells, %2</source>
        <translation>Alésage de %1 avec coussinets, %2</translation>
    </message>
    <message>
        <source>Bores and journals are measured before, gaps and all else after</source>
        <translation>Les alésages et les portées se mesurent avant, les interstices et tout le reste après</translation>
    </message>
    <message>
        <source>Crank lifted &amp;out</source>
        <translation>Vilebrequin s&amp;orti</translation>
    </message>
    <message>
        <source>Crank laid &amp;in, caps at torque</source>
        <translation>Vilebrequin posé, chapeaux au co&amp;uple</translation>
    </message>
    <message>
        <source>Measured square to the parting line.</source>
        <translation>Mesuré perpendiculairement au plan de séparation.</translation>
    </message>
    <message>
        <source>She&amp;lls changed in %1</source>
        <translation>&amp;Coussinets changés en %1</translation>
    </message>
</context>
<context>
    <name>caprail::BearingsShells</name>
    <message>
        <source>Shells</source>
        <translation>Coussinets</translation>
    </message>
    <message>
        <source>Shell</source>
        <translation>Coussinet</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Va dans</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Moitié</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Épaisseur</translation>
    </message>
    <message>
        <source>As</source>
        <translation>Tel que</translation>
    </message>
    <message>
        <source>Lies in</source>
        <translation>Se trouve en</translation>
    </message>
    <message>
        <source>A half shell</source>
        <translation>Un demi-coussinet</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>without spaces: U1</source>
        <translation>sans espaces&#xa0;: U1</translation>
    </message>
    <message>
        <source>at the crown</source>
        <translation>au sommet</translation>
    </message>
    <message>
        <source>As marked</source>
        <translation>Selon marquage</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>Shells by bearing</source>
        <translation>Coussinets par palier</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Palier</translation>
    </message>
    <message>
        <source>Upper</source>
        <translation>Haut</translation>
    </message>
    <message>
        <source>Lower</source>
        <translation>Bas</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Choisis</translation>
    </message>
    <message>
        <source>Clearance then</source>
        <translation>Jeu alors</translation>
    </message>
    <message>
        <source>Shells put in by hand</source>
        <translation>Coussinets mis à la main</translation>
    </message>
    <message>
        <source>main-3</source>
        <translation>main-3</translation>
    </message>
    <message>
        <source>&amp;Choose from the shelf</source>
        <translation>C&amp;hoisir sur l&apos;étagère</translation>
    </message>
    <message>
        <source>&amp;Take over</source>
        <translation>&amp;Reprendre</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>marqué</translation>
    </message>
    <message>
        <source>shelf</source>
        <translation>étagère</translation>
    </message>
    <message>
        <source>none left</source>
        <translation>plus aucun</translation>
    </message>
    <message>
        <source>The shelf is empty: enter each half shell with its thickness.</source>
        <translation>L&apos;étagère est vide&#xa0;: y inscrire chaque demi-coussinet avec son épaisseur.</translation>
    </message>
    <message>
        <source>Chosen for most clearances in band, then closest to target, then least spread.</source>
        <translation>Choisis pour le plus de jeux dans la plage, puis au plus près de la cible, puis la plus petite étendue.</translation>
    </message>
    <message>
        <source>Entered: %1 bearings have other shells now. Measure their bores again.</source>
        <translation>Inscrit&#xa0;: %1 paliers ont maintenant d&apos;autres coussinets. Mesurer de nouveau leurs alésages.</translation>
    </message>
    <message>
        <source>Choosing …</source>
        <translation>Choix en cours …</translation>
    </message>
    <message>
        <source>Left out: %1.</source>
        <translation>Laissés de côté&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 (best found so far)</source>
        <translation>%1 (le meilleur jusqu&apos;ici)</translation>
    </message>
    <message>
        <source>%1 (still looking)</source>
        <translation>%1 (recherche en cours)</translation>
    </message>
    <message>
        <source>Store shel&amp;l</source>
        <translation>Enregistrer le &amp;coussinet</translation>
    </message>
    <message>
        <source>Store fitti&amp;ng</source>
        <translation>Enregistrer le &amp;montage</translation>
    </message>
</context>
<context>
    <name>caprail::BearingsStation</name>
    <message>
        <source>Journals</source>
        <translation>Portées</translation>
    </message>
    <message>
        <source>Journal diameters</source>
        <translation>Diamètres des portées</translation>
    </message>
    <message>
        <source>Bores</source>
        <translation>Alésages</translation>
    </message>
    <message>
        <source>Bores with the shells in, caps at torque</source>
        <translation>Alésages avec les coussinets, chapeaux au couple</translation>
    </message>
    <message>
        <source>Housings</source>
        <translation>Logements</translation>
    </message>
    <message>
        <source>Housing bores without shells</source>
        <translation>Alésages des logements sans coussinets</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Fil</translation>
    </message>
    <message>
        <source>Clearance by gauging strip</source>
        <translation>Jeu au fil calibré</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Ajustements</translation>
    </message>
    <message>
        <source>Crank end play, rod side clearance, own fits</source>
        <translation>Jeu axial du vilebrequin, jeu latéral des bielles, ajustements à soi</translation>
    </message>
    <message>
        <source>Shells</source>
        <translation>Coussinets</translation>
    </message>
    <message>
        <source>Shells on the shelf and in the engine</source>
        <translation>Coussinets sur l&apos;étagère et dans le moteur</translation>
    </message>
    <message>
        <source>Warm</source>
        <translation>À chaud</translation>
    </message>
    <message>
        <source>Set the engine layout at the engine station: the journals follow from it.</source>
        <translation>Fixer l&apos;architecture du moteur au poste Moteur&#xa0;: les portées en découlent.</translation>
    </message>
    <message>
        <source>Select a journal on the diagram and type its diameter; Enter stores it and goes to the next place: two stations along the journal, two directions around it. Then the bores, with the shells in and the caps at full torque. The clearance, its uncertainty and a verdict appear beside the diagram.</source>
        <translation>Choisir une portée sur le dessin et taper son diamètre&#xa0;; Entrée l&apos;enregistre et va à l&apos;endroit suivant&#xa0;: deux sections le long de la portée, deux directions autour. Ensuite les alésages, avec les coussinets et les chapeaux au couple complet. Le jeu, son incertitude et un jugement apparaissent à côté du dessin.</translation>
    </message>
    <message>
        <source>Clearances and oil films at another temperature</source>
        <translation>Jeux et films d&apos;huile à une autre température</translation>
    </message>
</context>
<context>
    <name>caprail::BearingsWarm</name>
    <message>
        <source>Clearances</source>
        <translation>Jeux</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Palier</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Mesuré</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Alors</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Changement</translation>
    </message>
    <message>
        <source>%1: millionths per kelvin</source>
        <translation>%1&#xa0;: millionièmes par kelvin</translation>
    </message>
    <message>
        <source>10⁻⁶/K</source>
        <translation>10⁻⁶/K</translation>
    </message>
    <message>
        <source>Block is of</source>
        <translation>Bloc en</translation>
    </message>
    <message>
        <source>Crank is of</source>
        <translation>Vilebrequin en</translation>
    </message>
    <message>
        <source>Measured at</source>
        <translation>Mesuré à</translation>
    </message>
    <message>
        <source>Block then at</source>
        <translation>Bloc alors à</translation>
    </message>
    <message>
        <source>Crank then at</source>
        <translation>Vilebrequin alors à</translation>
    </message>
    <message>
        <source>a figure of your own</source>
        <translation>un chiffre à soi</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>tel que tapé</translation>
    </message>
    <message>
        <source>block %1; crank %2</source>
        <translation>bloc %1&#xa0;; vilebrequin %2</translation>
    </message>
    <message>
        <source>the block</source>
        <translation>le bloc</translation>
    </message>
    <message>
        <source>the crank</source>
        <translation>le vilebrequin</translation>
    </message>
    <message>
        <source>the temperature when measured</source>
        <translation>la température de mesure</translation>
    </message>
    <message>
        <source>the block&apos;s temperature</source>
        <translation>la température du bloc</translation>
    </message>
    <message>
        <source>the crank&apos;s temperature</source>
        <translation>la température du vilebrequin</translation>
    </message>
    <message>
        <source>Coefficients: %1.</source>
        <translation>Coefficients&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>caprail::BenchPad</name>
    <message>
        <source>decimal point</source>
        <translation>séparateur décimal</translation>
    </message>
    <message>
        <source>plus</source>
        <translation>plus</translation>
    </message>
    <message>
        <source>Insist on the value</source>
        <translation>Maintenir la valeur</translation>
    </message>
    <message>
        <source>per</source>
        <translation>par</translation>
    </message>
    <message>
        <source>minus</source>
        <translation>moins</translation>
    </message>
    <message>
        <source>▲ Back</source>
        <translation>▲ Retour</translation>
    </message>
    <message>
        <source>Back: the place before</source>
        <translation>Retour&#xa0;: l&apos;endroit d&apos;avant</translation>
    </message>
    <message>
        <source>▼ Next</source>
        <translation>▼ Suivant</translation>
    </message>
    <message>
        <source>Next: the place after</source>
        <translation>Suivant&#xa0;: l&apos;endroit d&apos;après</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Strike the last</source>
        <translation>Biffer le dernier</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
    <message>
        <source>Esc: leave the bench view</source>
        <translation>Échap&#xa0;: quitter la vue établi</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Suppr</translation>
    </message>
    <message>
        <source>Take the last sign away: Del</source>
        <translation>Retirer le dernier signe&#xa0;: Suppr</translation>
    </message>
</context>
<context>
    <name>caprail::BenchView</name>
    <message>
        <source>Enter stores and goes on · ↑ ↓ another place · Ctrl+Z strikes the last · Esc back</source>
        <translation>Entrée enregistre et continue · ↑ ↓ un autre endroit · Ctrl+Z biffe le dernier · Échap retour</translation>
    </message>
</context>
<context>
    <name>caprail::BudgetWindow</name>
    <message>
        <source>Uncertainty of the %1</source>
        <translation>Incertitude de&#xa0;: %1</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Standard uncertainty</source>
        <translation>Incertitude type</translation>
    </message>
    <message>
        <source>Sensitivity</source>
        <translation>Sensibilité</translation>
    </message>
    <message>
        <source>Contribution</source>
        <translation>Contribution</translation>
    </message>
    <message>
        <source>Freedom</source>
        <translation>Degrés de liberté</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Part</translation>
    </message>
    <message>
        <source>%1 (same for all)</source>
        <translation>%1 (la même pour tous)</translation>
    </message>
</context>
<context>
    <name>caprail::BuildsDialog</name>
    <message>
        <source>Builds compared</source>
        <translation>Comparaison des montages</translation>
    </message>
    <message>
        <source>Earlier build</source>
        <translation>Montage antérieur</translation>
    </message>
    <message>
        <source>Later build</source>
        <translation>Montage ultérieur</translation>
    </message>
    <message>
        <source>What is different</source>
        <translation>Ce qui diffère</translation>
    </message>
    <message>
        <source>&amp;Then</source>
        <translation>&amp;Avant</translation>
    </message>
    <message>
        <source>&amp;Now</source>
        <translation>&amp;Maintenant</translation>
    </message>
    <message>
        <source>&amp;Sheet of the difference (PDF)…</source>
        <translation>&amp;Feuille de la différence (PDF)…</translation>
    </message>
    <message>
        <source>There is nothing to compare yet: neither build holds a measured value.</source>
        <translation>Il n&apos;y a encore rien à comparer&#xa0;: aucun des deux montages ne contient de valeur mesurée.</translation>
    </message>
    <message>
        <source>± U is the expanded uncertainty of the difference. A difference within it is not a measured change. Positive is worn.</source>
        <translation>± U est l&apos;incertitude élargie de la différence. Une différence qui y tient n&apos;est pas un changement mesuré. Positif signifie usé.</translation>
    </message>
</context>
<context>
    <name>caprail::Chart</name>
    <message>
        <source>Readings are drawn here.</source>
        <translation>Les lectures sont dessinées ici.</translation>
    </message>
</context>
<context>
    <name>caprail::ChecksView</name>
    <message>
        <source>Checks</source>
        <translation>Contrôles</translation>
    </message>
    <message>
        <source>No check concerns this place.</source>
        <translation>Aucun contrôle ne concerne cet endroit.</translation>
    </message>
    <message>
        <source>Set the engine layout at the engine station: the checks follow from it.</source>
        <translation>Fixer l&apos;architecture du moteur au poste Moteur&#xa0;: les contrôles en découlent.</translation>
    </message>
    <message>
        <source>Accept again</source>
        <translation>Accepter à nouveau</translation>
    </message>
    <message>
        <source>Why are the values of “%1” accepted?</source>
        <translation>Pourquoi les valeurs de «&#xa0;%1&#xa0;» sont-elles acceptées&#xa0;?</translation>
    </message>
    <message>
        <source>Accept again…</source>
        <translation>Accepter à nouveau…</translation>
    </message>
    <message>
        <source>J, or the context menu: accept the values by the new numbers, with a reason.</source>
        <translation>J, ou le menu contextuel&#xa0;: accepter les valeurs d&apos;après les nouveaux chiffres, avec un motif.</translation>
    </message>
    <message>
        <source>p: the probability that the value lies in its band; C: how many times over the band holds four standard uncertainties. Below 1 it is weakly measured.</source>
        <translation>p&#xa0;: la probabilité que la valeur soit dans sa plage&#xa0;; C&#xa0;: combien de fois la plage contient quatre incertitudes types. En dessous de 1, elle est faiblement mesurée.</translation>
    </message>
</context>
<context>
    <name>caprail::ClosingFindings</name>
    <message>
        <source>Sett&amp;le</source>
        <translation>Rég&amp;ler</translation>
    </message>
    <message>
        <source>Findings and notes</source>
        <translation>Constats et notes</translation>
    </message>
    <message>
        <source>What was done about the selected finding</source>
        <translation>Ce qui a été fait au sujet du constat choisi</translation>
    </message>
    <message>
        <source>Place: 3R, main-3, …</source>
        <translation>Endroit&#xa0;: 3R, main-3, …</translation>
    </message>
    <message>
        <source>Place of the finding or note</source>
        <translation>Endroit du constat ou de la note</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Ce qui a été vu</translation>
    </message>
    <message>
        <source>Open f&amp;inding</source>
        <translation>&amp;Ouvrir un constat</translation>
    </message>
    <message>
        <source>Add &amp;note</source>
        <translation>Ajouter une &amp;note</translation>
    </message>
    <message>
        <source>No finding and no note yet. A burr, an unknown
stamping, a wrong marking: open a finding below.</source>
        <translation>Pas encore de constat ni de note. Une bavure, un marquage
inconnu, une fausse étiquette&#xa0;: ouvrir un constat ci-dessous.</translation>
    </message>
    <message numerus="yes">
        <source>%n older ones are in the history.</source>
        <translation>
            <numerusform>%n plus ancien est dans l&apos;historique.</numerusform>
            <numerusform>%n plus anciens sont dans l&apos;historique.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 at %2: %3</source>
        <translation>%1 en %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>opened by %1, entry %2</source>
        <translation>ouvert par %1, inscription %2</translation>
    </message>
    <message>
        <source>settled by %1: %2</source>
        <translation>réglé par %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>✎ Note, %1: %2</source>
        <translation>✎ Note, %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>✎ Note at %1, %2: %3</source>
        <translation>✎ Note en %1, %2&#xa0;: %3</translation>
    </message>
</context>
<context>
    <name>caprail::ClosingPhotos</name>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Place: 3R, main-3, …</source>
        <translation>Endroit&#xa0;: 3R, main-3, …</translation>
    </message>
    <message>
        <source>Place of the photo</source>
        <translation>Endroit de la photo</translation>
    </message>
    <message>
        <source>What the photo shows</source>
        <translation>Ce que montre la photo</translation>
    </message>
    <message>
        <source>Add pho&amp;to…</source>
        <translation>Ajouter une p&amp;hoto…</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Coller</translation>
    </message>
    <message>
        <source>Ctrl+V</source>
        <translation>Ctrl+V</translation>
    </message>
    <message>
        <source>Entry %1, %2, %3 kB. Enter shows it large.</source>
        <translation>Inscription %1, %2, %3 ko. Entrée l&apos;agrandit.</translation>
    </message>
    <message>
        <source>Entry %1, %2, %3 kB, taken %4 by the camera&apos;s clock. Enter shows it large.</source>
        <translation>Entrée %1, %2, %3 ko, prise le %4 à l&apos;horloge de l&apos;appareil. Entrée l&apos;affiche en grand.</translation>
    </message>
</context>
<context>
    <name>caprail::ClosingPicture</name>
    <message>
        <source>All that this step goes through</source>
        <translation>Tout ce que parcourt cette étape</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>La suite</translation>
    </message>
    <message>
        <source>Set the engine layout at the engine station.</source>
        <translation>Fixer l&apos;architecture du moteur au poste Moteur.</translation>
    </message>
</context>
<context>
    <name>caprail::ClosingStation</name>
    <message>
        <source>What holds the closing gate</source>
        <translation>Ce qui bloque l&apos;accès à la fermeture</translation>
    </message>
    <message>
        <source>Build %1 is closed</source>
        <translation>Le montage %1 est fermé</translation>
    </message>
    <message>
        <source>Everything is closed up: sign off</source>
        <translation>Tout est fermé&#xa0;: viser le carnet</translation>
    </message>
    <message>
        <source>Closing is open</source>
        <translation>La fermeture est ouverte</translation>
    </message>
    <message>
        <source>Locked: the engine layout is not set yet</source>
        <translation>Verrouillé&#xa0;: l&apos;architecture du moteur n&apos;est pas encore fixée</translation>
    </message>
    <message>
        <source>Locked: %1 of %2 checks hold it</source>
        <translation>Verrouillé&#xa0;: %1 contrôles sur %2 le bloquent</translation>
    </message>
    <message>
        <source>Findings (%1 open) and notes</source>
        <translation>Constats (%1 ouverts) et notes</translation>
    </message>
    <message>
        <source>Photos (%1)</source>
        <translation>Photos (%1)</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Travail</translation>
    </message>
    <message>
        <source>The steps that hide everything else. They unlock when no check is out, open or stale, and a verify round newer than the last trial fit found every fastener held. Each step is entered by a person, by name, with its own evidence.</source>
        <translation>Les étapes qui cachent tout le reste. Elles se déverrouillent quand aucun contrôle n&apos;est hors limites, à faire ou périmé, et qu&apos;une tournée de vérification plus récente que le dernier montage à blanc a vu chaque fixation tenir. Chaque étape est inscrite par une personne, nommément, avec sa propre preuve.</translation>
    </message>
    <message>
        <source>Say whose they are…</source>
        <translation>Dire de qui elles viennent…</translation>
    </message>
    <message numerus="yes">
        <source>… and %n more.</source>
        <translation>
            <numerusform>… et %n autre.</numerusform>
            <numerusform>… et %n autres.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>caprail::ClosingSteps</name>
    <message>
        <source>Build %1 signed off by %2, %3: “%4”</source>
        <translation>Montage %1 visé par %2, %3&#xa0;: «&#xa0;%4&#xa0;»</translation>
    </message>
    <message>
        <source>Begin &amp;build %1…</source>
        <translation>Commencer le &amp;montage %1…</translation>
    </message>
    <message>
        <source>New build</source>
        <translation>Nouveau montage</translation>
    </message>
    <message>
        <source>Why is this engine built again? What was recorded of this build stays readable.</source>
        <translation>Pourquoi ce moteur est-il remonté&#xa0;? Ce qui a été inscrit de ce montage reste lisible.</translation>
    </message>
</context>
<context>
    <name>caprail::ClosingTaskPage</name>
    <message>
        <source>Ph&amp;oto…</source>
        <translation>P&amp;hoto…</translation>
    </message>
</context>
<context>
    <name>caprail::Core</name>
    <message>
        <source>Nothing is specified for %1: set its group first, under Groups.</source>
        <translation>Rien n&apos;est prescrit pour %1&#xa0;: fixer d&apos;abord son groupe, sous «&#xa0;Groupes&#xa0;».</translation>
    </message>
    <message>
        <source>“%1” is larger than 60 MB: take a smaller picture of it.</source>
        <translation>«&#xa0;%1&#xa0;» dépasse 60 Mo&#xa0;: en prendre une image plus petite.</translation>
    </message>
    <message>
        <source>There is no picture on the clipboard: copy one first.</source>
        <translation>Il n&apos;y a pas d&apos;image dans le presse-papiers&#xa0;: en copier une d&apos;abord.</translation>
    </message>
    <message>
        <source>The run “%1” begins and ends with different letters: use the same.</source>
        <translation>La série «&#xa0;%1&#xa0;» commence et finit par des lettres différentes&#xa0;: prendre les mêmes.</translation>
    </message>
    <message>
        <source>The run “%1” must go upwards, and over no more than %2 shims.</source>
        <translation>La série «&#xa0;%1&#xa0;» doit aller en montant, et sur %2 cales au plus.</translation>
    </message>
    <message>
        <source>The kit has a shim %1 already: give this one another name.</source>
        <translation>L&apos;assortiment a déjà une cale %1&#xa0;: donner un autre nom à celle-ci.</translation>
    </message>
    <message>
        <source>Between 1 and %1 shims are added at once, not %2.</source>
        <translation>On ajoute de 1 à %1 cales à la fois, et non %2.</translation>
    </message>
    <message>
        <source>“%1” does not give a name and a size: type for example S001 10 thou, or 12 x 10 thou.</source>
        <translation>«&#xa0;%1&#xa0;» ne donne pas un nom et une épaisseur&#xa0;: taper par exemple S001 10 thou, ou 12 x 10 thou.</translation>
    </message>
    <message>
        <source>The kit has no shim %1: add it first.</source>
        <translation>L&apos;assortiment n&apos;a pas de cale %1&#xa0;: l&apos;ajouter d&apos;abord.</translation>
    </message>
    <message>
        <source>Say which shim was measured: its name, then the value.</source>
        <translation>Dire quelle cale a été mesurée&#xa0;: son nom, puis la valeur.</translation>
    </message>
    <message>
        <source>Type the names of the shims, or a dash for a bare position.</source>
        <translation>Taper les noms des cales, ou un tiret pour une position nue.</translation>
    </message>
    <message>
        <source>Shim %1 is named twice: there is one of it.</source>
        <translation>La cale %1 est nommée deux fois&#xa0;: il n&apos;y en a qu&apos;une.</translation>
    </message>
    <message>
        <source>The sequence names %1, but this engine does not have it: take it out.</source>
        <translation>L&apos;ordre nomme %1, mais ce moteur ne l&apos;a pas&#xa0;: à retirer.</translation>
    </message>
    <message>
        <source>The sequence names %1, which is not of the %2 pair: take it out.</source>
        <translation>L&apos;ordre nomme %1, qui n&apos;est pas de la rangée «&#xa0;%2&#xa0;»&#xa0;: à retirer.</translation>
    </message>
    <message>
        <source>“%1” is not a day for %2: write it as 2026-05-04.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas un jour pour %2&#xa0;: l&apos;écrire comme 2026-05-04.</translation>
    </message>
    <message>
        <source>Shell %1 is wanted in %2 but lies in %3, which waits for shells in its turn: enter two free shells for %4 first.</source>
        <translation>Le coussinet %1 est voulu en %2 mais se trouve en %3, qui attend lui-même des coussinets&#xa0;: inscrire d&apos;abord deux coussinets libres pour %4.</translation>
    </message>
    <message>
        <source>trial fit failed: %1</source>
        <translation>montage à blanc non conforme&#xa0;: %1</translation>
    </message>
    <message>
        <source>The girdle does not bear on %1 of this engine: leave it out.</source>
        <translation>La plaque ne porte pas sur %1 de ce moteur&#xa0;: l&apos;omettre.</translation>
    </message>
    <message>
        <source>%1 is in the order twice: name each place once.</source>
        <translation>%1 est deux fois dans l&apos;ordre&#xa0;: nommer chaque endroit une fois.</translation>
    </message>
    <message>
        <source>%1 is missing from the order: name every place once.</source>
        <translation>%1 manque dans l&apos;ordre&#xa0;: nommer chaque endroit une fois.</translation>
    </message>
    <message>
        <source>“%1” is not an answer here: type p for pass, f for fail with what was seen, or the measured clearance.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas une réponse ici&#xa0;: taper p pour conforme, f pour non conforme avec ce qui a été vu, ou le dégagement mesuré.</translation>
    </message>
    <message>
        <source>Line %1 of the template: %2</source>
        <translation>Ligne %1 du modèle&#xa0;: %2</translation>
    </message>
    <message>
        <source>Entries made before it wait to be stored, so it waits behind them.</source>
        <translation>Des inscriptions faites avant attendent d&apos;être enregistrées&#xa0;: elle attend donc derrière elles.</translation>
    </message>
    <message>
        <source>The journal&apos;s diameter must be above zero: measure it first.</source>
        <translation>Le diamètre de la portée doit être supérieur à zéro&#xa0;: la mesurer d&apos;abord.</translation>
    </message>
    <message>
        <source>A coefficient of expansion lies between 0 and 100 millionths per kelvin: enter 11.4 for grey cast iron, for example.</source>
        <translation>Un coefficient de dilatation est compris entre 0 et 100 millionièmes par kelvin&#xa0;: entrer par exemple 11.4 pour la fonte grise.</translation>
    </message>
    <message>
        <source>A temperature of block or crank lies between −60 °C and 300 °C: look at what was entered.</source>
        <translation>La température d&apos;un bloc ou d&apos;un vilebrequin est comprise entre −60 °C et 300 °C&#xa0;: revoir ce qui a été entré.</translation>
    </message>
    <message>
        <source>The journal has no vertical reading: measure it square to the parting line.</source>
        <translation>La portée n&apos;a pas de lecture verticale&#xa0;: la mesurer perpendiculairement au plan de séparation.</translation>
    </message>
    <message>
        <source>The journal is not measured: read two stations or more, in two directions.</source>
        <translation>La portée n&apos;est pas mesurée&#xa0;: lire deux sections ou plus, dans deux directions.</translation>
    </message>
    <message>
        <source>Stations and directions of a journal count from 1: look at station %1, direction %2.</source>
        <translation>Les sections et directions d&apos;une portée comptent à partir de 1&#xa0;: revoir section %1, direction %2.</translation>
    </message>
    <message>
        <source>The journal&apos;s diameter at station %1 must be above zero: enter the diameter.</source>
        <translation>Le diamètre de la portée à la section %1 doit être supérieur à zéro&#xa0;: l&apos;entrer.</translation>
    </message>
    <message>
        <source>Both shells need a thickness above zero: measure them at the crown.</source>
        <translation>Les deux coussinets ont besoin d&apos;une épaisseur supérieure à zéro&#xa0;: les mesurer au sommet.</translation>
    </message>
    <message>
        <source>The gauging strip is not read yet: read its width against its scale.</source>
        <translation>Le fil calibré n&apos;est pas encore lu&#xa0;: lire sa largeur sur son échelle.</translation>
    </message>
    <message>
        <source>The strip&apos;s reading at station %1 must be above zero: read it again.</source>
        <translation>La lecture du fil à la section %1 doit être supérieure à zéro&#xa0;: le relire.</translation>
    </message>
    <message>
        <source>either</source>
        <translation>indifférent</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>haut</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>bas</translation>
    </message>
    <message>
        <source>Flushness of the plate</source>
        <translation>Affleurement de la plaque</translation>
    </message>
    <message>
        <source>Put every stack right first.</source>
        <translation>Mettre d&apos;abord chaque pile en ordre.</translation>
    </message>
    <message>
        <source>Not every position has a stack over an accepted gap.</source>
        <translation>Toutes les positions n&apos;ont pas une pile sur un interstice accepté.</translation>
    </message>
    <message>
        <source>Build the missing stacks first.</source>
        <translation>Monter d&apos;abord les piles manquantes.</translation>
    </message>
    <message>
        <source>Plan the stacks for least twist.</source>
        <translation>Planifier les piles pour le moindre gauchissement.</translation>
    </message>
    <message>
        <source>Look at the flushness, and accept it by the new numbers with a reason.</source>
        <translation>Regarder l&apos;affleurement, et l&apos;accepter d&apos;après les nouveaux chiffres avec un motif.</translation>
    </message>
    <message>
        <source>Read it in another pass.</source>
        <translation>Le lire dans une autre passe.</translation>
    </message>
    <message>
        <source>Gap at %1</source>
        <translation>Interstice au %1</translation>
    </message>
    <message>
        <source>Lay the straightedge across the rails and read the gap down to the washer.</source>
        <translation>Poser la règle en travers du plan de joint et lire l&apos;interstice jusqu&apos;à la rondelle.</translation>
    </message>
    <message>
        <source>The new gap lies within %1.</source>
        <translation>Le nouvel interstice est dans %1.</translation>
    </message>
    <message>
        <source>Read the gap again, in two passes or more.</source>
        <translation>Relire l&apos;interstice, en deux passes ou plus.</translation>
    </message>
    <message>
        <source>Shim %1 was never measured.</source>
        <translation>La cale %1 n&apos;a jamais été mesurée.</translation>
    </message>
    <message>
        <source>Measure shim %1 with the micrometer.</source>
        <translation>Mesurer la cale %1 au micromètre.</translation>
    </message>
    <message>
        <source>There is no band for the residual.</source>
        <translation>Il n&apos;y a pas de plage pour le résidu.</translation>
    </message>
    <message>
        <source>Set the band “residual” at the engine station.</source>
        <translation>Fixer la plage «&#xa0;residual&#xa0;» au poste Moteur.</translation>
    </message>
    <message>
        <source>The stack is low: build it thicker.</source>
        <translation>La pile est trop basse&#xa0;: la monter plus épaisse.</translation>
    </message>
    <message>
        <source>The stack is proud: build it thinner.</source>
        <translation>La pile est trop haute&#xa0;: la monter plus mince.</translation>
    </message>
    <message>
        <source>Read the gap and the shims once more, or build a stack nearer to the middle.</source>
        <translation>Lire encore l&apos;interstice et les cales, ou monter une pile plus proche du milieu.</translation>
    </message>
    <message>
        <source>Stack at %1</source>
        <translation>Pile au %1</translation>
    </message>
    <message>
        <source>Use the plan, or build the stack by hand.</source>
        <translation>Reprendre le plan, ou monter la pile à la main.</translation>
    </message>
    <message>
        <source>Read the gap at %1 first.</source>
        <translation>Lire d&apos;abord l&apos;interstice au %1.</translation>
    </message>
    <message>
        <source>Its gap is not accepted yet.</source>
        <translation>Son interstice n&apos;est pas encore accepté.</translation>
    </message>
    <message>
        <source>Now: %1</source>
        <translation>Maintenant&#xa0;: %1</translation>
    </message>
    <message>
        <source>Look at the residual: accept it by the new numbers with a reason, or build the stack again.</source>
        <translation>Regarder le résidu&#xa0;: l&apos;accepter d&apos;après les nouveaux chiffres avec un motif, ou remonter la pile.</translation>
    </message>
    <message>
        <source>Recheck at %1</source>
        <translation>Recontrôle au %1</translation>
    </message>
    <message>
        <source>Lay the straightedge on the built stack.</source>
        <translation>Poser la règle sur la pile montée.</translation>
    </message>
    <message>
        <source>It rocks: the stack is proud.</source>
        <translation>Elle bascule&#xa0;: la pile est trop haute.</translation>
    </message>
    <message>
        <source>Build the stack thinner, and try again.</source>
        <translation>Monter la pile plus mince, et réessayer.</translation>
    </message>
    <message>
        <source>It is loose: the stack is low.</source>
        <translation>Elle est libre&#xa0;: la pile est trop basse.</translation>
    </message>
    <message>
        <source>Build the stack thicker, and try again.</source>
        <translation>Monter la pile plus épaisse, et réessayer.</translation>
    </message>
    <message>
        <source>Lay the straightedge on the stack again.</source>
        <translation>Poser de nouveau la règle sur la pile.</translation>
    </message>
    <message>
        <source>Main-cap fasteners at torque</source>
        <translation>Fixations de chapeau au couple</translation>
    </message>
    <message>
        <source>Rod fasteners at torque</source>
        <translation>Fixations de bielle au couple</translation>
    </message>
    <message>
        <source>Nothing is specified for %1.</source>
        <translation>Rien n&apos;est prescrit pour %1.</translation>
    </message>
    <message>
        <source>%1 of %2 tightened.</source>
        <translation>%1 serrées sur %2.</translation>
    </message>
    <message>
        <source>Tighten it to what is specified, and enter it.</source>
        <translation>La serrer comme prescrit, et l&apos;inscrire.</translation>
    </message>
    <message>
        <source>Tighten %1 and the rest of the group.</source>
        <translation>Serrer %1 et le reste du groupe.</translation>
    </message>
    <message>
        <source>Tighten the group to the value that is specified now.</source>
        <translation>Serrer le groupe à la valeur prescrite maintenant.</translation>
    </message>
    <message>
        <source>Torques verified</source>
        <translation>Couples vérifiés</translation>
    </message>
    <message>
        <source>No verify round has been made.</source>
        <translation>Aucune tournée de vérification n&apos;a été faite.</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Tournée %1</translation>
    </message>
    <message>
        <source>Entry %1: %2; round %3 no longer counts.</source>
        <translation>Inscription %1&#xa0;: %2&#xa0;; la tournée %3 ne compte plus.</translation>
    </message>
    <message>
        <source>With the stacks off, make a new round over every fastener.</source>
        <translation>Piles retirées, refaire une tournée sur chaque fixation.</translation>
    </message>
    <message>
        <source>%1: %2 moved %3 (%4).</source>
        <translation>%1&#xa0;: %2 a bougé de %3 (%4).</translation>
    </message>
    <message>
        <source>%1: %2 moved (%3).</source>
        <translation>%1&#xa0;: %2 a bougé (%3).</translation>
    </message>
    <message>
        <source>Finish the round; every fastener must then hold in a later one.</source>
        <translation>Finir la tournée&#xa0;; chaque fixation doit ensuite tenir dans une tournée ultérieure.</translation>
    </message>
    <message>
        <source>Measure again what the movement made stale, then make a round in which every fastener holds.</source>
        <translation>Mesurer de nouveau ce que le mouvement a périmé, puis faire une tournée où chaque fixation tient.</translation>
    </message>
    <message>
        <source>Go on with %1.</source>
        <translation>Continuer avec %1.</translation>
    </message>
    <message>
        <source>%1 is older than the last trial fit (entry %2).</source>
        <translation>%1 est plus ancienne que le dernier montage à blanc (inscription %2).</translation>
    </message>
    <message>
        <source>Take the stacks off and make a new round: nothing can be checked after closing.</source>
        <translation>Retirer les piles et refaire une tournée&#xa0;: rien ne peut être contrôlé après la fermeture.</translation>
    </message>
    <message>
        <source>%1: every one of %2 fasteners held.</source>
        <translation>%1&#xa0;: chacune des %2 fixations a tenu.</translation>
    </message>
    <message>
        <source>Strike that entry and answer again.</source>
        <translation>Biffer cette inscription et répondre de nouveau.</translation>
    </message>
    <message>
        <source>Trial-fit the girdle again.</source>
        <translation>Refaire le montage à blanc de la plaque.</translation>
    </message>
    <message>
        <source>%1 up, cutout towards the %2 on the %3.</source>
        <translation>%1 dessus, échancrure vers l&apos;%2, côté %3.</translation>
    </message>
    <message>
        <source>The cutout belongs on the pickup side: turn the girdle round.</source>
        <translation>L&apos;échancrure va du côté de la crépine&#xa0;: retourner la plaque.</translation>
    </message>
    <message>
        <source>Say which face is up and where the cutout is.</source>
        <translation>Dire quelle face est dessus et où est l&apos;échancrure.</translation>
    </message>
    <message>
        <source>Findings settled</source>
        <translation>Constats réglés</translation>
    </message>
    <message>
        <source>None was opened.</source>
        <translation>Aucun n&apos;a été ouvert.</translation>
    </message>
    <message>
        <source>All are settled.</source>
        <translation>Tous sont réglés.</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>Decide it, and enter what was done.</source>
        <translation>Décider, et inscrire ce qui a été fait.</translation>
    </message>
    <message>
        <source>gaps</source>
        <translation>interstices</translation>
    </message>
    <message>
        <source>journal diameters</source>
        <translation>diamètres des portées</translation>
    </message>
    <message>
        <source>bores</source>
        <translation>alésages</translation>
    </message>
    <message>
        <source>shims</source>
        <translation>cales</translation>
    </message>
    <message>
        <source>bearing shells</source>
        <translation>coussinets</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>ajustements</translation>
    </message>
    <message>
        <source>pickup terms</source>
        <translation>termes de la crépine</translation>
    </message>
    <message>
        <source>Say which shells lie in %1, with their thickness.</source>
        <translation>Dire quels coussinets sont en %1, avec leur épaisseur.</translation>
    </message>
    <message>
        <source>Bearing clearance at %1</source>
        <translation>Jeu, %1</translation>
    </message>
    <message>
        <source>The journal is not measured.</source>
        <translation>La portée n&apos;est pas mesurée.</translation>
    </message>
    <message>
        <source>The bore is not measured.</source>
        <translation>L&apos;alésage n&apos;est pas mesuré.</translation>
    </message>
    <message>
        <source>Measure the journal at two stations or more, in two directions.</source>
        <translation>Mesurer la portée dans deux sections ou plus, dans deux directions.</translation>
    </message>
    <message>
        <source>Measure the bore with the shells in and the cap at full torque.</source>
        <translation>Mesurer l&apos;alésage avec les coussinets et le chapeau au couple complet.</translation>
    </message>
    <message>
        <source>The clearance cannot be worked out yet.</source>
        <translation>Le jeu ne peut pas encore être calculé.</translation>
    </message>
    <message>
        <source>Clearance %1.</source>
        <translation>Jeu %1.</translation>
    </message>
    <message>
        <source>Too wide: fit a thicker shell, or look at journal and housing.</source>
        <translation>Trop grand&#xa0;: monter un coussinet plus épais, ou revoir portée et logement.</translation>
    </message>
    <message>
        <source>Too tight: fit a thinner shell, or look at journal and housing.</source>
        <translation>Trop petit&#xa0;: monter un coussinet plus mince, ou revoir portée et logement.</translation>
    </message>
    <message>
        <source>Look at the clearance, and accept it by the new numbers with a reason.</source>
        <translation>Regarder le jeu, et l&apos;accepter d&apos;après les nouveaux chiffres avec un motif.</translation>
    </message>
    <message>
        <source>Measure it again.</source>
        <translation>Le mesurer de nouveau.</translation>
    </message>
    <message>
        <source>Measure it.</source>
        <translation>Le mesurer.</translation>
    </message>
    <message>
        <source>Bring it into its band, and measure again.</source>
        <translation>Le ramener dans sa plage, et mesurer de nouveau.</translation>
    </message>
    <message>
        <source>Measure it again: more readings make the uncertainty smaller.</source>
        <translation>Le mesurer de nouveau&#xa0;: plus de lectures réduisent l&apos;incertitude.</translation>
    </message>
    <message>
        <source>Look at it, and accept it by the new numbers with a reason.</source>
        <translation>Le regarder, et l&apos;accepter d&apos;après les nouveaux chiffres avec un motif.</translation>
    </message>
    <message>
        <source>Rod side clearance, throw %1</source>
        <translation>Jeu latéral des bielles, coude %1</translation>
    </message>
    <message>
        <source>Crank end play</source>
        <translation>Jeu axial du vilebrequin</translation>
    </message>
    <message>
        <source>Fit: %1</source>
        <translation>Ajustement&#xa0;: %1</translation>
    </message>
    <message>
        <source>Fit: %1, place %2</source>
        <translation>Ajustement&#xa0;: %1, endroit %2</translation>
    </message>
    <message>
        <source>Everything is closed up. Sign the record off.</source>
        <translation>Tout est fermé. Viser le carnet.</translation>
    </message>
    <message>
        <source>This build is signed off by %1.</source>
        <translation>Ce montage est visé par %1.</translation>
    </message>
    <message>
        <source>Say whose engine this is.</source>
        <translation>Dire à qui est ce moteur.</translation>
    </message>
    <message>
        <source>Set the engine layout: caps, fasteners, tied run.</source>
        <translation>Fixer l&apos;architecture du moteur&#xa0;: chapeaux, fixations, chapeaux reliés.</translation>
    </message>
    <message>
        <source>Set the bands that this engine is judged by.</source>
        <translation>Fixer les plages d&apos;après lesquelles ce moteur est jugé.</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1&#xa0;: %2. %3</translation>
    </message>
    <message>
        <source>The engine layout is not known yet: set it first.</source>
        <translation>L&apos;architecture du moteur n&apos;est pas encore connue&#xa0;: la fixer d&apos;abord.</translation>
    </message>
    <message>
        <source>The girdle does not bear on %1 of this engine: it ties caps %2 to %3.</source>
        <translation>La plaque ne porte pas sur %1 de ce moteur&#xa0;: elle relie les chapeaux %2 à %3.</translation>
    </message>
    <message>
        <source>This engine has no journal %1: it has %2 mains and %3 rods.</source>
        <translation>Ce moteur n&apos;a pas de portée %1&#xa0;: il a %2 paliers et %3 bielles.</translation>
    </message>
    <message>
        <source>This engine has no fastener %1: check its number and side.</source>
        <translation>Ce moteur n&apos;a pas de fixation %1&#xa0;: vérifier son numéro et son côté.</translation>
    </message>
    <message>
        <source>This record knows no instrument %1: add it at the engine station first.</source>
        <translation>Ce carnet ne connaît pas d&apos;instrument %1&#xa0;: l&apos;ajouter d&apos;abord au poste Moteur.</translation>
    </message>
    <message>
        <source>The new layout has no %1, but this record has entries for it: strike those first, or keep the place.</source>
        <translation>La nouvelle architecture n&apos;a pas %1, mais ce carnet a des inscriptions à ce sujet&#xa0;: les biffer d&apos;abord, ou garder l&apos;endroit.</translation>
    </message>
    <message>
        <source>“%1” cannot be the name of %2: use 1 to 60 characters without spaces.</source>
        <translation>«&#xa0;%1&#xa0;» ne peut pas être le nom (%2)&#xa0;: prendre 1 à 60 caractères sans espaces.</translation>
    </message>
    <message>
        <source>There is nothing written for %1: say it in a few words.</source>
        <translation>Rien n&apos;est écrit (%1)&#xa0;: le dire en quelques mots.</translation>
    </message>
    <message>
        <source>the engine</source>
        <translation>le moteur</translation>
    </message>
    <message>
        <source>the band&apos;s name</source>
        <translation>le nom de la plage</translation>
    </message>
    <message>
        <source>The target %1 lies outside the band “%2”, %3: choose one inside it.</source>
        <translation>La cible %1 est hors de la plage «&#xa0;%2&#xa0;», %3&#xa0;: en choisir une à l&apos;intérieur.</translation>
    </message>
    <message>
        <source>a band</source>
        <translation>une plage</translation>
    </message>
    <message>
        <source>A rule has an impossible value: limits must be positive, passes 1 to 20, shims per stack 0 to 50, torque scatter 0 to 90 %.</source>
        <translation>Une consigne a une valeur impossible&#xa0;: limites positives, passes de 1 à 20, cales par pile de 0 à 50, dispersion du couple de 0 à 90&#xa0;%.</translation>
    </message>
    <message>
        <source>A fastener group has 1 to 200 fasteners, not %1.</source>
        <translation>Un groupe a 1 à 200 fixations, et non %1.</translation>
    </message>
    <message>
        <source>Fasteners are tightened in 1 to 10 steps, not %1.</source>
        <translation>Les fixations se serrent en 1 à 10 étapes, et non en %1.</translation>
    </message>
    <message>
        <source>The group “%1” is tightened by %2, but no such value was given: give it.</source>
        <translation>Le groupe «&#xa0;%1&#xa0;» se serre selon&#xa0;: %2, mais cette valeur manque&#xa0;: la donner.</translation>
    </message>
    <message>
        <source>The group “%1” is tightened by torque and angle, but no angle was given: give it.</source>
        <translation>Le groupe «&#xa0;%1&#xa0;» se serre au couple et à l&apos;angle, mais aucun angle n&apos;a été donné&#xa0;: le donner.</translation>
    </message>
    <message>
        <source>The sequence names %1 twice: name each fastener of the group once.</source>
        <translation>L&apos;ordre nomme %1 deux fois&#xa0;: nommer chaque fixation du groupe une fois.</translation>
    </message>
    <message>
        <source>The sequence names %1, which is of another group: name each fastener of the group once.</source>
        <translation>L&apos;ordre nomme %1, qui est d&apos;un autre groupe&#xa0;: nommer chaque fixation du groupe une fois.</translation>
    </message>
    <message>
        <source>the person&apos;s name</source>
        <translation>le nom de la personne</translation>
    </message>
    <message>
        <source>an instrument</source>
        <translation>un instrument</translation>
    </message>
    <message>
        <source>The wrench %1 would reach from a larger torque to a smaller one: give the smaller first.</source>
        <translation>La clé %1 irait d&apos;un plus grand couple à un plus petit&#xa0;: donner le plus petit d&apos;abord.</translation>
    </message>
    <message>
        <source>The instrument %1 would be due on %2, before it was calibrated on %3: correct one of the dates.</source>
        <translation>L&apos;instrument %1 serait dû le %2, avant son étalonnage du %3&#xa0;: corriger une des dates.</translation>
    </message>
    <message>
        <source>A journal is measured at stations 1 to 9 in directions 1 to 9: correct the place on it.</source>
        <translation>Une portée se mesure dans les sections 1 à 9 et les directions 1 à 9&#xa0;: corriger l&apos;endroit.</translation>
    </message>
    <message>
        <source>a journal&apos;s diameter</source>
        <translation>un diamètre de portée</translation>
    </message>
    <message>
        <source>A bore is measured at stations 1 to 9: correct the place in it.</source>
        <translation>Un alésage se mesure dans les sections 1 à 9&#xa0;: corriger l&apos;endroit.</translation>
    </message>
    <message>
        <source>a bore</source>
        <translation>un alésage</translation>
    </message>
    <message>
        <source>a shell</source>
        <translation>un coussinet</translation>
    </message>
    <message>
        <source>a shell&apos;s thickness</source>
        <translation>l&apos;épaisseur d&apos;un coussinet</translation>
    </message>
    <message>
        <source>Shell %1 cannot be both the upper and the lower one: name two shells.</source>
        <translation>Le coussinet %1 ne peut pas être à la fois celui du haut et celui du bas&#xa0;: nommer deux coussinets.</translation>
    </message>
    <message>
        <source>The shelf has no shell %1: enter its thickness first.</source>
        <translation>L&apos;étagère n&apos;a pas de coussinet %1&#xa0;: inscrire d&apos;abord son épaisseur.</translation>
    </message>
    <message>
        <source>Shell %1 already lies in %2: take another one.</source>
        <translation>Le coussinet %1 est déjà en %2&#xa0;: en prendre un autre.</translation>
    </message>
    <message>
        <source>There is no fit “%1” in this record: set its band first.</source>
        <translation>Il n&apos;y a pas d&apos;ajustement «&#xa0;%1&#xa0;» dans ce carnet&#xa0;: fixer d&apos;abord sa plage.</translation>
    </message>
    <message>
        <source>A fit is read at place 1 to 99, not %1.</source>
        <translation>Un ajustement se lit aux endroits 1 à 99, et non %1.</translation>
    </message>
    <message>
        <source>This engine has no throw %1: choose 1 to %2.</source>
        <translation>Ce moteur n&apos;a pas de coude %1&#xa0;: choisir de 1 à %2.</translation>
    </message>
    <message>
        <source>a fit</source>
        <translation>un ajustement</translation>
    </message>
    <message>
        <source>There is one %1 only: leave the place empty.</source>
        <translation>Il n&apos;y en a qu&apos;un seul (%1)&#xa0;: laisser l&apos;endroit vide.</translation>
    </message>
    <message>
        <source>Say to what %1 was tightened: a torque, an angle or a stretch.</source>
        <translation>Dire la valeur de serrage de %1&#xa0;: un couple, un angle ou un allongement.</translation>
    </message>
    <message>
        <source>The next verify round is number %1, not %2.</source>
        <translation>La prochaine tournée de vérification porte le numéro %1, et non %2.</translation>
    </message>
    <message>
        <source>A verify round needs to know the fasteners: set the engine layout first.</source>
        <translation>Une tournée de vérification doit connaître les fixations&#xa0;: fixer d&apos;abord l&apos;architecture du moteur.</translation>
    </message>
    <message>
        <source>Verify round %1 is not the one under way: begin it first.</source>
        <translation>La tournée de vérification %1 n&apos;est pas celle en cours&#xa0;: la commencer d&apos;abord.</translation>
    </message>
    <message>
        <source>A verify round pulls main-cap and rod fasteners, not %1.</source>
        <translation>Une tournée de vérification reprend les fixations de chapeau et de bielle, et non %1.</translation>
    </message>
    <message>
        <source>%1 has its outcome in round %2 already: strike that entry if it is wrong.</source>
        <translation>%1 a déjà son résultat dans la tournée %2&#xa0;: biffer cette inscription si elle est fausse.</translation>
    </message>
    <message>
        <source>Say by what angle %1 moved, for example 4°.</source>
        <translation>Dire de quel angle %1 a bougé, par exemple 4°.</translation>
    </message>
    <message>
        <source>%1 cannot have held and turned by an angle: enter it as moved.</source>
        <translation>%1 ne peut pas avoir tenu et tourné d&apos;un angle&#xa0;: l&apos;inscrire comme ayant bougé.</translation>
    </message>
    <message>
        <source>Passes count from 1 to 99, not %1.</source>
        <translation>Les passes comptent de 1 à 99, et non %1.</translation>
    </message>
    <message>
        <source>a gap</source>
        <translation>un interstice</translation>
    </message>
    <message>
        <source>a shim</source>
        <translation>une cale</translation>
    </message>
    <message>
        <source>a shim&apos;s thickness</source>
        <translation>l&apos;épaisseur d&apos;une cale</translation>
    </message>
    <message>
        <source>Shim %1 lies in the stack at %2: build that stack without it first.</source>
        <translation>La cale %1 est dans la pile au %2&#xa0;: remonter d&apos;abord cette pile sans elle.</translation>
    </message>
    <message>
        <source>Shim %1 is pinned to %2 already: take that pin away first.</source>
        <translation>La cale %1 est déjà figée au %2&#xa0;: l&apos;y libérer d&apos;abord.</translation>
    </message>
    <message>
        <source>There is no stack at %1: build it first.</source>
        <translation>Il n&apos;y a pas de pile au %1&#xa0;: la monter d&apos;abord.</translation>
    </message>
    <message>
        <source>There is no stack on %1 to lay the straightedge on: build it, or put it back, first.</source>
        <translation>Il n&apos;y a pas de pile au %1 où poser la règle&#xa0;: la monter ou la remettre d&apos;abord.</translation>
    </message>
    <message>
        <source>the check that is accepted again</source>
        <translation>le contrôle qui est accepté à nouveau</translation>
    </message>
    <message>
        <source>is answered for each throw, and this engine has no throw %1.</source>
        <translation>reçoit une réponse pour chaque coude, et ce moteur n&apos;a pas de coude %1.</translation>
    </message>
    <message>
        <source>is answered once for the engine: leave the throw out.</source>
        <translation>reçoit une seule réponse pour le moteur&#xa0;: ne pas indiquer de coude.</translation>
    </message>
    <message>
        <source>A measured clearance and only that carries a value: give it, or answer pass or fail.</source>
        <translation>Seul un dégagement mesuré porte une valeur&#xa0;: la donner, ou répondre conforme ou non conforme.</translation>
    </message>
    <message>
        <source>A clearance cannot be below zero: where parts touch, answer fail.</source>
        <translation>Un dégagement ne peut pas être inférieur à zéro&#xa0;: là où des pièces se touchent, répondre non conforme.</translation>
    </message>
    <message>
        <source>“%1” is answered by pass or fail, not measured.</source>
        <translation>«&#xa0;%1&#xa0;» se répond par conforme ou non conforme, sans mesure.</translation>
    </message>
    <message>
        <source>A pickup term cannot be negative: measure it from the rail.</source>
        <translation>Un terme de la crépine ne peut pas être négatif&#xa0;: le mesurer depuis le plan de joint.</translation>
    </message>
    <message>
        <source>a pickup term</source>
        <translation>un terme de la crépine</translation>
    </message>
    <message>
        <source>There is a finding %1 already: give this one the next number.</source>
        <translation>Il y a déjà un constat %1&#xa0;: donner à celui-ci le numéro suivant.</translation>
    </message>
    <message>
        <source>a finding</source>
        <translation>un constat</translation>
    </message>
    <message>
        <source>the finding</source>
        <translation>le constat</translation>
    </message>
    <message>
        <source>There is no finding %1 in this record.</source>
        <translation>Il n&apos;y a pas de constat %1 dans ce carnet.</translation>
    </message>
    <message>
        <source>Finding %1 is settled already: open a new one.</source>
        <translation>Le constat %1 est déjà réglé&#xa0;: en ouvrir un nouveau.</translation>
    </message>
    <message>
        <source>what was done about %1</source>
        <translation>ce qui a été fait au sujet de %1</translation>
    </message>
    <message>
        <source>the note</source>
        <translation>la note</translation>
    </message>
    <message>
        <source>The attachment “%1” carries no proper SHA-256 hash or size.</source>
        <translation>La pièce jointe «&#xa0;%1&#xa0;» n&apos;a pas d&apos;empreinte SHA-256 ou de taille correcte.</translation>
    </message>
    <message>
        <source>the attachment&apos;s file name</source>
        <translation>le nom de fichier de la pièce jointe</translation>
    </message>
    <message>
        <source>“%1” is ticked already: strike that entry if it is wrong.</source>
        <translation>«&#xa0;%1&#xa0;» est déjà coché&#xa0;: biffer cette inscription si elle est fausse.</translation>
    </message>
    <message>
        <source>“%1” comes after “%2”: do that first.</source>
        <translation>«&#xa0;%1&#xa0;» vient après «&#xa0;%2&#xa0;»&#xa0;: faire cela d&apos;abord.</translation>
    </message>
    <message>
        <source>The sealant&apos;s open time is given in minutes, 1 to 1440.</source>
        <translation>Le temps ouvert de la pâte à joint se donne en minutes, de 1 à 1440.</translation>
    </message>
    <message>
        <source>The record cannot be signed off before “%1” is done.</source>
        <translation>Le carnet ne peut pas être visé avant que «&#xa0;%1&#xa0;» ne soit fait.</translation>
    </message>
    <message>
        <source>This build is signed off already.</source>
        <translation>Ce montage est déjà visé.</translation>
    </message>
    <message>
        <source>A new build begins when the one before is signed off: finish and sign this one first.</source>
        <translation>Un nouveau montage commence quand le précédent est visé&#xa0;: finir et viser d&apos;abord celui-ci.</translation>
    </message>
    <message>
        <source>The next build of this engine is number %1.</source>
        <translation>Le prochain montage de ce moteur porte le numéro %1.</translation>
    </message>
    <message>
        <source>why the engine is built again</source>
        <translation>pourquoi le moteur est remonté</translation>
    </message>
    <message>
        <source>why the entry is struck</source>
        <translation>pourquoi l&apos;inscription est biffée</translation>
    </message>
    <message>
        <source>%1 is too large for %2 of any engine: correct it.</source>
        <translation>%1 est trop grand pour tout moteur (%2)&#xa0;: le corriger.</translation>
    </message>
    <message>
        <source>%1 cannot be %2: it must be more than zero.</source>
        <translation>%1 est impossible (%2)&#xa0;: il faut plus que zéro.</translation>
    </message>
    <message>
        <source>%1 cannot be a torque on this engine: it must be more than zero and at most %2.</source>
        <translation>%1 ne peut pas être un couple sur ce moteur&#xa0;: il faut plus que zéro et au plus %2.</translation>
    </message>
    <message>
        <source>%1 cannot be an angle of tightening: it must be 0 to three turns.</source>
        <translation>%1 ne peut pas être un angle de serrage&#xa0;: il faut de 0 à trois tours.</translation>
    </message>
    <message>
        <source>Shim %1 is named twice in the stack at %2: there is one of it.</source>
        <translation>La cale %1 est nommée deux fois dans la pile au %2&#xa0;: il n&apos;y en a qu&apos;une.</translation>
    </message>
    <message>
        <source>Shim %1 is set aside%2: take it back into the kit first.</source>
        <translation>La cale %1 est mise de côté%2&#xa0;: la reprendre d&apos;abord dans l&apos;assortiment.</translation>
    </message>
    <message>
        <source>Shim %1 lies in the stack at %2 already: the same shim cannot be in two stacks.</source>
        <translation>La cale %1 est déjà dans la pile au %2&#xa0;: la même cale ne peut pas être dans deux piles.</translation>
    </message>
    <message>
        <source>Say who makes this entry: every entry carries a person&apos;s name.</source>
        <translation>Dire qui fait cette inscription&#xa0;: chaque inscription porte le nom d&apos;une personne.</translation>
    </message>
    <message>
        <source>This record knows no person “%1”: add them at the engine station first.</source>
        <translation>Ce carnet ne connaît pas de personne «&#xa0;%1&#xa0;»&#xa0;: l&apos;ajouter d&apos;abord au poste Moteur.</translation>
    </message>
    <message>
        <source>Clearance under the pickup</source>
        <translation>Garde sous la crépine</translation>
    </message>
    <message>
        <source>Measure the %1, twice.</source>
        <translation>À mesurer, deux fois&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Measure the %1 once more.</source>
        <translation>À mesurer une fois de plus&#xa0;: %1.</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>à faire</translation>
    </message>
    <message>
        <source>good</source>
        <translation>bon</translation>
    </message>
    <message>
        <source>out</source>
        <translation>hors limites</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>indécis</translation>
    </message>
    <message>
        <source>stale</source>
        <translation>périmé</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Moteur</translation>
    </message>
    <message>
        <source>Bearings</source>
        <translation>Paliers</translation>
    </message>
    <message>
        <source>Fasteners</source>
        <translation>Fixations</translation>
    </message>
    <message>
        <source>Girdle</source>
        <translation>Plaque</translation>
    </message>
    <message>
        <source>Trial fit</source>
        <translation>Montage à blanc</translation>
    </message>
    <message>
        <source>Pickup</source>
        <translation>Crépine</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation>Fermeture</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historique</translation>
    </message>
    <message>
        <source>There is no entry %1 to strike: this record has %2.</source>
        <translation>Il n&apos;y a pas d&apos;inscription %1 à biffer&#xa0;: ce carnet en a %2.</translation>
    </message>
    <message>
        <source>Entry %1 is itself a strike: make the struck entry again instead.</source>
        <translation>L&apos;inscription %1 est elle-même un biffage&#xa0;: refaire plutôt l&apos;inscription biffée.</translation>
    </message>
    <message>
        <source>Entry %1 was struck already by entry %2.</source>
        <translation>L&apos;inscription %1 a déjà été biffée par l&apos;inscription %2.</translation>
    </message>
    <message>
        <source>Entry %1 needs entry %2: strike entry %3 first. (%4)</source>
        <translation>L&apos;inscription %1 a besoin de l&apos;inscription %2&#xa0;: biffer d&apos;abord l&apos;inscription %3. (%4)</translation>
    </message>
    <message>
        <source>This build is signed off: strike the sign-off (entry %1) before any other entry.</source>
        <translation>Ce montage est visé&#xa0;: biffer le visa (inscription %1) avant toute autre inscription.</translation>
    </message>
    <message>
        <source>This build is signed off and closed: begin a new build of this engine to go on.</source>
        <translation>Ce montage est visé et fermé&#xa0;: commencer un nouveau montage de ce moteur pour continuer.</translation>
    </message>
    <message>
        <source>The trial fit is locked: %1</source>
        <translation>Le montage à blanc est verrouillé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Closing is locked: %1</source>
        <translation>La fermeture est verrouillée&#xa0;: %1</translation>
    </message>
    <message>
        <source>The torques are verified with the stacks off: take off the one at %1 first.</source>
        <translation>Les couples se vérifient piles retirées&#xa0;: retirer d&apos;abord celle au %1.</translation>
    </message>
    <message>
        <source>“%1” is not a stale check of this record: only a stale one is accepted again.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas un contrôle périmé de ce carnet&#xa0;: seul un contrôle périmé est accepté à nouveau.</translation>
    </message>
    <message>
        <source>%1, station %2, direction %3</source>
        <translation>%1, section %2, direction %3</translation>
    </message>
    <message>
        <source>%1, station %2, %3</source>
        <translation>%1, section %2, %3</translation>
    </message>
    <message>
        <source>%1, place %2</source>
        <translation>%1, endroit %2</translation>
    </message>
    <message>
        <source>shim %1</source>
        <translation>cale %1</translation>
    </message>
    <message>
        <source>shell %1</source>
        <translation>coussinet %1</translation>
    </message>
    <message>
        <source>The layout gives %1 for %2: it must be from %3 to %4.</source>
        <translation>L&apos;architecture donne %1 pour %2&#xa0;: il faut de %3 à %4.</translation>
    </message>
    <message>
        <source>the number of main caps</source>
        <translation>le nombre de chapeaux de palier</translation>
    </message>
    <message>
        <source>the number of connecting rods</source>
        <translation>le nombre de bielles</translation>
    </message>
    <message>
        <source>the number of crank throws</source>
        <translation>le nombre de coudes du vilebrequin</translation>
    </message>
    <message>
        <source>the first tied cap</source>
        <translation>le premier chapeau relié</translation>
    </message>
    <message>
        <source>the last tied cap</source>
        <translation>le dernier chapeau relié</translation>
    </message>
    <message>
        <source>the cap nearest to the pickup</source>
        <translation>le chapeau le plus proche de la crépine</translation>
    </message>
    <message>
        <source>the cap nearest to the dipstick</source>
        <translation>le chapeau le plus proche de la jauge d&apos;huile</translation>
    </message>
    <message>
        <source>The layout gives %1 fasteners per main cap: it must be 2 or 4.</source>
        <translation>L&apos;architecture donne %1 fixations par chapeau&#xa0;: il faut 2 ou 4.</translation>
    </message>
    <message>
        <source>The layout puts the girdle on the outer fasteners, but its caps have only an inner pair: choose the inner ones or four fasteners per cap.</source>
        <translation>L&apos;architecture met la plaque sur les fixations extérieures, mais ses chapeaux n&apos;ont que la rangée intérieure&#xa0;: choisir les intérieures ou quatre fixations par chapeau.</translation>
    </message>
    <message>
        <source>The layout&apos;s spans must be positive and grow outwards: inner fasteners, outer fasteners, pan rails.</source>
        <translation>Les distances de l&apos;architecture doivent être positives et croître vers l&apos;extérieur&#xa0;: fixations intérieures, extérieures, plan de joint.</translation>
    </message>
    <message>
        <source>The layout&apos;s spans are larger than any engine on a stand: cap spacing up to 20 in, rails up to 60 in.</source>
        <translation>Les distances de l&apos;architecture dépassent tout moteur sur un support&#xa0;: chapeaux espacés de 20 in au plus, plan de joint large de 60 in au plus.</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>inner</source>
        <translation>intérieure</translation>
    </message>
    <message>
        <source>outer</source>
        <translation>extérieure</translation>
    </message>
    <message>
        <source>main</source>
        <translation>palier</translation>
    </message>
    <message>
        <source>rod</source>
        <translation>bielle</translation>
    </message>
    <message>
        <source>girdle</source>
        <translation>plaque</translation>
    </message>
    <message>
        <source>pan</source>
        <translation>carter</translation>
    </message>
    <message>
        <source>front</source>
        <translation>avant</translation>
    </message>
    <message>
        <source>rear</source>
        <translation>arrière</translation>
    </message>
    <message>
        <source>“%1” is not a position: write the cap and its side, for example 3R.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas une position&#xa0;: écrire le chapeau et son côté, par exemple 3R.</translation>
    </message>
    <message>
        <source>“%1” is not a journal: write main or rod and its number, for example main-3.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas une portée&#xa0;: écrire main ou rod et son numéro, par exemple main-3.</translation>
    </message>
    <message>
        <source>“%1” is not a fastener: write its group, number and side, for example main-3R, rod-5L or pan-7.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas une fixation&#xa0;: écrire son groupe, son numéro et son côté, par exemple main-3R, rod-5L ou pan-7.</translation>
    </message>
    <message>
        <source>“%1” is not a day: write it as year-month-day, for example 2026-05-04.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas un jour&#xa0;: l&apos;écrire année-mois-jour, par exemple 2026-05-04.</translation>
    </message>
    <message>
        <source>“%1” is not a moment in UTC: write it like 2026-05-04T09:30:00.000Z.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas un instant en UTC&#xa0;: l&apos;écrire comme 2026-05-04T09:30:00.000Z.</translation>
    </message>
    <message>
        <source>A band runs from its smaller to its larger end, but %1 is larger than %2: give the smaller one first.</source>
        <translation>Une plage va de sa plus petite borne à la plus grande, mais %1 est plus grand que %2&#xa0;: donner la plus petite d&apos;abord.</translation>
    </message>
    <message>
        <source>Nothing was typed for %1: type a value like %2.</source>
        <translation>Rien n&apos;a été tapé pour %1&#xa0;: taper une valeur comme %2.</translation>
    </message>
    <message>
        <source>%1 has a comma, but the decimal mark here is a point: type %2 like %3.</source>
        <translation>%1 a une virgule, mais le séparateur décimal est ici un point&#xa0;: taper %2 comme %3.</translation>
    </message>
    <message>
        <source>%1 has both a comma and a point, so %2 could be read in two ways: use one decimal mark and no other separator.</source>
        <translation>%1 a une virgule et un point, et %2 pourrait donc se lire de deux façons&#xa0;: prendre un seul séparateur décimal et aucun autre.</translation>
    </message>
    <message>
        <source>%1 cannot be read as %2: type a value like %3.</source>
        <translation>%1 ne peut pas être lu comme %2&#xa0;: taper une valeur comme %3.</translation>
    </message>
    <message>
        <source>The sum typed for %1 has more than 20 terms: type fewer, or their total.</source>
        <translation>La somme tapée pour %1 a plus de 20 termes&#xa0;: en taper moins, ou leur total.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>%1 was read as %2, but %3 is expected within %4: correct it, or type ! behind it if it is really so.</source>
        <translation>%1 a été lu comme %2, mais %3 est attendu dans %4&#xa0;: corriger, ou taper&#xa0;! derrière s&apos;il en est vraiment ainsi.</translation>
    </message>
    <message>
        <source>%1 is a sum, but %2 is one value: type it like %3.</source>
        <translation>%1 est une somme, mais %2 est une seule valeur&#xa0;: la taper comme %3.</translation>
    </message>
    <message>
        <source>%1 is larger than anything on an engine stand: correct %2.</source>
        <translation>%1 est plus grand que tout ce qui tient sur un support de moteur&#xa0;: corriger %2.</translation>
    </message>
    <message>
        <source>%1 is a fraction without a unit, and %2 is in millimetres: type its unit, for example 1/4 in.</source>
        <translation>%1 est une fraction sans unité, et %2 est en millimètres&#xa0;: taper son unité, par exemple 1/4 in.</translation>
    </message>
    <message>
        <source>%1 could be %2 inches or %3 thousandths, and %4 is in inches: type %5 thou, %6 in, or the decimal.</source>
        <translation>%1 pourrait être %2 pouces ou %3 millièmes, et %4 est en pouces&#xa0;: taper %5 thou, %6 in, ou le nombre décimal.</translation>
    </message>
    <message>
        <source>%1 is a sum, but %2 is one value: type it like 21 °C.</source>
        <translation>%1 est une somme, mais %2 est une seule valeur&#xa0;: la taper comme 21 °C.</translation>
    </message>
    <message>
        <source>%1 cannot be the temperature of an engine: correct %2.</source>
        <translation>%1 ne peut pas être la température d&apos;un moteur&#xa0;: corriger %2.</translation>
    </message>
    <message>
        <source>%1 cannot be %2: type a whole number from %3 to %4.</source>
        <translation>%1 ne convient pas pour %2&#xa0;: taper un nombre entier de %3 à %4.</translation>
    </message>
    <message>
        <source>“%1” is none of: %2.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est rien de ceci&#xa0;: %2.</translation>
    </message>
    <message>
        <source>(typed “%1”)</source>
        <translation>(tapé «&#xa0;%1&#xa0;»)</translation>
    </message>
    <message>
        <source>“%1” must be a whole number.</source>
        <translation>«&#xa0;%1&#xa0;» doit être un nombre entier.</translation>
    </message>
    <message>
        <source>“%1” must be a text in quotes.</source>
        <translation>«&#xa0;%1&#xa0;» doit être un texte entre guillemets.</translation>
    </message>
    <message>
        <source>This is not a JSON object: %1.</source>
        <translation>Ce n&apos;est pas un objet JSON&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 at character %2</source>
        <translation>%1 au caractère %2</translation>
    </message>
    <message>
        <source>an entry is written in braces</source>
        <translation>une inscription s&apos;écrit entre accolades</translation>
    </message>
    <message>
        <source>The entry has no member “kind”: say what it is, for example &quot;kind&quot;: &quot;gap_reading&quot;.</source>
        <translation>L&apos;inscription n&apos;a pas de membre «&#xa0;kind&#xa0;»&#xa0;: dire ce qu&apos;elle est, par exemple &quot;kind&quot;: &quot;gap_reading&quot;.</translation>
    </message>
    <message>
        <source>A seal is 64 hexadecimal digits, but “%1” is not.</source>
        <translation>Un sceau a 64 chiffres hexadécimaux, mais pas «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>guarded</source>
        <translation>avec bandes de garde</translation>
    </message>
    <message>
        <source>simple</source>
        <translation>simple</translation>
    </message>
    <message>
        <source>k = 2</source>
        <translation>k = 2</translation>
    </message>
    <message>
        <source>Student&apos;s t</source>
        <translation>t de Student</translation>
    </message>
    <message>
        <source>smallest residual</source>
        <translation>plus petit résidu</translation>
    </message>
    <message>
        <source>least twist</source>
        <translation>moindre gauchissement</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>couple</translation>
    </message>
    <message>
        <source>torque and angle</source>
        <translation>couple et angle</translation>
    </message>
    <message>
        <source>stretch</source>
        <translation>allongement</translation>
    </message>
    <message>
        <source>micrometer</source>
        <translation>micromètre</translation>
    </message>
    <message>
        <source>bore gauge</source>
        <translation>alésomètre</translation>
    </message>
    <message>
        <source>feeler gauge</source>
        <translation>jauge d&apos;épaisseur</translation>
    </message>
    <message>
        <source>straightedge</source>
        <translation>règle</translation>
    </message>
    <message>
        <source>depth gauge</source>
        <translation>jauge de profondeur</translation>
    </message>
    <message>
        <source>dial indicator</source>
        <translation>comparateur</translation>
    </message>
    <message>
        <source>gauging strip</source>
        <translation>fil calibré</translation>
    </message>
    <message>
        <source>torque wrench</source>
        <translation>clé dynamométrique</translation>
    </message>
    <message>
        <source>angle gauge</source>
        <translation>mesureur d&apos;angle</translation>
    </message>
    <message>
        <source>stretch gauge</source>
        <translation>mesureur d&apos;allongement</translation>
    </message>
    <message>
        <source>calliper</source>
        <translation>pied à coulisse</translation>
    </message>
    <message>
        <source>bore with shells</source>
        <translation>alésage avec coussinets</translation>
    </message>
    <message>
        <source>housing</source>
        <translation>logement</translation>
    </message>
    <message>
        <source>nut and washer</source>
        <translation>écrou et rondelle</translation>
    </message>
    <message>
        <source>pan rail</source>
        <translation>plan de joint</translation>
    </message>
    <message>
        <source>shells</source>
        <translation>coussinets</translation>
    </message>
    <message>
        <source>crank</source>
        <translation>vilebrequin</translation>
    </message>
    <message>
        <source>gasket</source>
        <translation>joint</translation>
    </message>
    <message>
        <source>girdle plate</source>
        <translation>plaque raidisseuse</translation>
    </message>
    <message>
        <source>pickup</source>
        <translation>crépine</translation>
    </message>
    <message>
        <source>held</source>
        <translation>a tenu</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>a bougé</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>retirée</translation>
    </message>
    <message>
        <source>put back</source>
        <translation>remise</translation>
    </message>
    <message>
        <source>taken apart</source>
        <translation>démontée</translation>
    </message>
    <message>
        <source>rocks</source>
        <translation>bascule</translation>
    </message>
    <message>
        <source>drags</source>
        <translation>frotte</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>stamped face</source>
        <translation>face marquée</translation>
    </message>
    <message>
        <source>plain face</source>
        <translation>face nue</translation>
    </message>
    <message>
        <source>dipstick clear</source>
        <translation>jauge d&apos;huile dégagée</translation>
    </message>
    <message>
        <source>pickup tube clear</source>
        <translation>tube de crépine dégagé</translation>
    </message>
    <message>
        <source>counterweights clear</source>
        <translation>contrepoids dégagés</translation>
    </message>
    <message>
        <source>rod bolts clear</source>
        <translation>vis de bielle dégagées</translation>
    </message>
    <message>
        <source>two turns by hand, nothing binds</source>
        <translation>deux tours à la main, rien ne coince</translation>
    </message>
    <message>
        <source>keyway agrees at top dead centre</source>
        <translation>la rainure de clavette concorde au point mort haut</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>conforme</translation>
    </message>
    <message>
        <source>fail</source>
        <translation>non conforme</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>pan depth</source>
        <translation>profondeur du carter</translation>
    </message>
    <message>
        <source>compressed gasket</source>
        <translation>joint comprimé</translation>
    </message>
    <message>
        <source>pickup below rail</source>
        <translation>crépine sous le plan de joint</translation>
    </message>
    <message>
        <source>stacks refitted by label</source>
        <translation>piles remises selon leur étiquette</translation>
    </message>
    <message>
        <source>sealant bead laid</source>
        <translation>cordon de pâte à joint appliqué</translation>
    </message>
    <message>
        <source>girdle lowered</source>
        <translation>plaque abaissée</translation>
    </message>
    <message>
        <source>nuts tightened in steps and sequence</source>
        <translation>écrous serrés par étapes et dans l&apos;ordre</translation>
    </message>
    <message>
        <source>pan fastened</source>
        <translation>carter fixé</translation>
    </message>
    <message>
        <source>must be 0 or 1</source>
        <translation>doit être 0 ou 1</translation>
    </message>
    <message>
        <source>holds a word it does not know: %1</source>
        <translation>contient un mot inconnu&#xa0;: %1</translation>
    </message>
    <message>
        <source>holds a number too large for any engine</source>
        <translation>contient un nombre trop grand pour tout moteur</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>angle</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>sachet</translation>
    </message>
    <message>
        <source>band</source>
        <translation>plage</translation>
    </message>
    <message>
        <source>build</source>
        <translation>montage</translation>
    </message>
    <message>
        <source>calibrated</source>
        <translation>étalonné</translation>
    </message>
    <message>
        <source>cap spacing</source>
        <translation>écart des chapeaux</translation>
    </message>
    <message>
        <source>caps</source>
        <translation>chapeaux</translation>
    </message>
    <message>
        <source>caption</source>
        <translation>légende</translation>
    </message>
    <message>
        <source>check</source>
        <translation>contrôle</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>dégagement</translation>
    </message>
    <message>
        <source>count</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>counterweight minimum</source>
        <translation>dégagement minimal des contrepoids</translation>
    </message>
    <message>
        <source>coverage</source>
        <translation>facteur d&apos;élargissement</translation>
    </message>
    <message>
        <source>customer</source>
        <translation>client</translation>
    </message>
    <message>
        <source>cutout side</source>
        <translation>côté de l&apos;échancrure</translation>
    </message>
    <message>
        <source>cutout towards</source>
        <translation>échancrure vers</translation>
    </message>
    <message>
        <source>cycles</source>
        <translation>cycles</translation>
    </message>
    <message>
        <source>decision</source>
        <translation>décision</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>diamètre</translation>
    </message>
    <message>
        <source>dipstick cap</source>
        <translation>chapeau à la jauge d&apos;huile</translation>
    </message>
    <message>
        <source>dipstick side</source>
        <translation>côté de la jauge d&apos;huile</translation>
    </message>
    <message>
        <source>direction</source>
        <translation>direction</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>due</source>
        <translation>échéance</translation>
    </message>
    <message>
        <source>due cycles</source>
        <translation>dû après cycles</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>moteur</translation>
    </message>
    <message>
        <source>entry</source>
        <translation>inscription</translation>
    </message>
    <message>
        <source>face up</source>
        <translation>face dessus</translation>
    </message>
    <message>
        <source>fastener</source>
        <translation>fixation</translation>
    </message>
    <message>
        <source>fastener group</source>
        <translation>groupe de fixations</translation>
    </message>
    <message>
        <source>fasteners per cap</source>
        <translation>fixations par chapeau</translation>
    </message>
    <message>
        <source>feel</source>
        <translation>toucher</translation>
    </message>
    <message>
        <source>file name</source>
        <translation>nom de fichier</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>constat</translation>
    </message>
    <message>
        <source>fit</source>
        <translation>ajustement</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>interstice</translation>
    </message>
    <message>
        <source>girdle ring</source>
        <translation>rangée de la plaque</translation>
    </message>
    <message>
        <source>grade</source>
        <translation>classe</translation>
    </message>
    <message>
        <source>half</source>
        <translation>moitié</translation>
    </message>
    <message>
        <source>hi</source>
        <translation>borne haute</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>instrument</translation>
    </message>
    <message>
        <source>is aside</source>
        <translation>mise de côté</translation>
    </message>
    <message>
        <source>is marked</source>
        <translation>est marqué</translation>
    </message>
    <message>
        <source>is pinned</source>
        <translation>est figée</translation>
    </message>
    <message>
        <source>item</source>
        <translation>point</translation>
    </message>
    <message>
        <source>journal</source>
        <translation>portée</translation>
    </message>
    <message>
        <source>kit tolerance</source>
        <translation>tolérance de l&apos;assortiment</translation>
    </message>
    <message>
        <source>largest stack</source>
        <translation>plus grande pile</translation>
    </message>
    <message>
        <source>largest torque</source>
        <translation>plus grand couple</translation>
    </message>
    <message>
        <source>limit of error</source>
        <translation>erreur maximale</translation>
    </message>
    <message>
        <source>lo</source>
        <translation>borne basse</translation>
    </message>
    <message>
        <source>lubricant</source>
        <translation>lubrifiant</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>fabricant</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>marqué</translation>
    </message>
    <message>
        <source>media type</source>
        <translation>type de média</translation>
    </message>
    <message>
        <source>method</source>
        <translation>méthode</translation>
    </message>
    <message>
        <source>minimum passes</source>
        <translation>passes minimales</translation>
    </message>
    <message>
        <source>move</source>
        <translation>action</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>objective</source>
        <translation>objectif</translation>
    </message>
    <message>
        <source>open minutes</source>
        <translation>minutes ouvertes</translation>
    </message>
    <message>
        <source>original sha256</source>
        <translation>sha256 de l&apos;original</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>résultat</translation>
    </message>
    <message>
        <source>outer stud span</source>
        <translation>écart des goujons extérieurs</translation>
    </message>
    <message>
        <source>part</source>
        <translation>pièce</translation>
    </message>
    <message>
        <source>pass %1</source>
        <translation>passe %1</translation>
    </message>
    <message>
        <source>pickup cap</source>
        <translation>chapeau à la crépine</translation>
    </message>
    <message>
        <source>pickup side</source>
        <translation>côté de la crépine</translation>
    </message>
    <message>
        <source>place</source>
        <translation>endroit</translation>
    </message>
    <message>
        <source>position</source>
        <translation>position</translation>
    </message>
    <message>
        <source>rail span</source>
        <translation>largeur du plan de joint</translation>
    </message>
    <message>
        <source>repeat limit</source>
        <translation>limite de répétabilité</translation>
    </message>
    <message>
        <source>result</source>
        <translation>réponse</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>rangée</translation>
    </message>
    <message>
        <source>rods</source>
        <translation>bielles</translation>
    </message>
    <message>
        <source>role</source>
        <translation>rôle</translation>
    </message>
    <message>
        <source>round</source>
        <translation>tournée</translation>
    </message>
    <message>
        <source>serial</source>
        <translation>numéro de série</translation>
    </message>
    <message>
        <source>sha256</source>
        <translation>sha256</translation>
    </message>
    <message>
        <source>shell</source>
        <translation>coussinet</translation>
    </message>
    <message>
        <source>shim</source>
        <translation>cale</translation>
    </message>
    <message>
        <source>shop</source>
        <translation>atelier</translation>
    </message>
    <message>
        <source>size bytes</source>
        <translation>taille en octets</translation>
    </message>
    <message>
        <source>smallest torque</source>
        <translation>plus petit couple</translation>
    </message>
    <message>
        <source>source</source>
        <translation>source</translation>
    </message>
    <message>
        <source>statement</source>
        <translation>déclaration</translation>
    </message>
    <message>
        <source>station</source>
        <translation>section</translation>
    </message>
    <message>
        <source>step</source>
        <translation>étape</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>étapes</translation>
    </message>
    <message>
        <source>stud span</source>
        <translation>écart des goujons</translation>
    </message>
    <message>
        <source>target</source>
        <translation>cible</translation>
    </message>
    <message>
        <source>term</source>
        <translation>terme</translation>
    </message>
    <message>
        <source>text</source>
        <translation>texte</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>épaisseur</translation>
    </message>
    <message>
        <source>thread</source>
        <translation>filetage</translation>
    </message>
    <message>
        <source>throw number</source>
        <translation>numéro du coude</translation>
    </message>
    <message>
        <source>throws</source>
        <translation>coudes</translation>
    </message>
    <message>
        <source>tied first</source>
        <translation>premier relié</translation>
    </message>
    <message>
        <source>tied last</source>
        <translation>dernier relié</translation>
    </message>
    <message>
        <source>tightening order</source>
        <translation>ordre de serrage</translation>
    </message>
    <message>
        <source>torque scatter percent</source>
        <translation>dispersion du couple en pour cent</translation>
    </message>
    <message>
        <source>type</source>
        <translation>type</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>why</source>
        <translation>pourquoi</translation>
    </message>
    <message>
        <source>Entry %1 stands where entry %2 must be: entries were removed, inserted or put in another order.</source>
        <translation>L&apos;inscription %1 est là où l&apos;inscription %2 doit être&#xa0;: des inscriptions ont été retirées, insérées ou mises dans un autre ordre.</translation>
    </message>
    <message>
        <source>must hold names parted by single spaces</source>
        <translation>doit contenir des noms séparés par une seule espace</translation>
    </message>
    <message>
        <source>The entry “%1” cannot be read: %2</source>
        <translation>L&apos;inscription «&#xa0;%1&#xa0;» ne peut pas être lue&#xa0;: %2</translation>
    </message>
    <message>
        <source>The entry “%1” has %2 values, but its kind has %3.</source>
        <translation>L&apos;inscription «&#xa0;%1&#xa0;» a %2 valeurs, mais son type en a %3.</translation>
    </message>
    <message>
        <source>%1 exists already and is not overwritten: choose another name.</source>
        <translation>%1 existe déjà et n&apos;est pas écrasé&#xa0;: choisir un autre nom.</translation>
    </message>
    <message>
        <source>%1 cannot be kept as %2: %3.</source>
        <translation>%1 ne peut pas être gardé sous %2&#xa0;: %3.</translation>
    </message>
    <message>
        <source>%1 is the record itself: choose a copy of it.</source>
        <translation>%1 est le carnet lui-même&#xa0;: en choisir une copie.</translation>
    </message>
    <message>
        <source>The copy is not restored: %1</source>
        <translation>La copie n&apos;est pas restaurée&#xa0;: %1</translation>
    </message>
    <message>
        <source>holds a text longer than %1 KiB: shorten it</source>
        <translation>contient un texte de plus de %1 Kio&#xa0;: le raccourcir</translation>
    </message>
    <message>
        <source>holds a text that is not plain UTF-8: type it again</source>
        <translation>contient un texte qui n&apos;est pas de l&apos;UTF-8 pur&#xa0;: le taper de nouveau</translation>
    </message>
    <message>
        <source>In %1 %2 is damaged: %3</source>
        <translation>Dans %1, %2 est endommagé&#xa0;: %3</translation>
    </message>
    <message>
        <source>its seal has the wrong length.</source>
        <translation>son sceau n&apos;a pas la bonne longueur.</translation>
    </message>
    <message>
        <source>In %1 “%2” of %3 %4.</source>
        <translation>Dans %1, «&#xa0;%2&#xa0;» de %3 %4.</translation>
    </message>
    <message>
        <source>In %1 “%2” of %3 is neither a whole number nor a text: the file is damaged.</source>
        <translation>Dans %1, «&#xa0;%2&#xa0;» de %3 n&apos;est ni un nombre entier ni un texte&#xa0;: le fichier est endommagé.</translation>
    </message>
    <message>
        <source>%1 has details of %2 in the table “%3” without that entry: it was altered or damaged.</source>
        <translation>%1 a des détails de %2 dans la table «&#xa0;%3&#xa0;» sans cette inscription&#xa0;: il a été modifié ou endommagé.</translation>
    </message>
    <message>
        <source>its row is gone.</source>
        <translation>sa ligne a disparu.</translation>
    </message>
    <message>
        <source>Entry %1: %2</source>
        <translation>Inscription %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>“%1” is not a moment as a record writes it.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas un instant tel qu&apos;un carnet l&apos;écrit.</translation>
    </message>
    <message>
        <source>its person %1.</source>
        <translation>sa personne %1.</translation>
    </message>
    <message>
        <source>The moment of this entry lies outside the calendar: set the clock of this computer.</source>
        <translation>L&apos;instant de cette inscription est hors du calendrier&#xa0;: régler l&apos;horloge de cet ordinateur.</translation>
    </message>
    <message>
        <source>The copy to salvage from cannot be written: %1.</source>
        <translation>La copie à récupérer ne peut pas être écrite&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The copy to salvage from cannot be written.</source>
        <translation>La copie à récupérer ne peut pas être écrite.</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation>%1 ne peut pas être lu&#xa0;: %2.</translation>
    </message>
    <message>
        <source>There is no room to work on a copy of %1: %2.</source>
        <translation>Il n&apos;y a pas de place pour travailler sur une copie de %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The disk does not give %1 blocks of the file.</source>
        <translation>Le disque ne rend pas %1 blocs du fichier.</translation>
    </message>
    <message>
        <source>A write that was cut off is taken back first.</source>
        <translation>Une écriture interrompue est d&apos;abord annulée.</translation>
    </message>
    <message>
        <source>There is no room to work on a copy of %1.</source>
        <translation>Il n&apos;y a pas de place pour travailler sur une copie de %1.</translation>
    </message>
    <message>
        <source>There is no room to work on a copy of the damaged record.</source>
        <translation>Il n&apos;y a pas de place pour travailler sur une copie du carnet endommagé.</translation>
    </message>
    <message>
        <source>The tables of the record cannot be found any more: look for a copy of it.</source>
        <translation>Les tables du carnet sont introuvables&#xa0;: en chercher une copie.</translation>
    </message>
    <message>
        <source>The header or the list of tables was damaged or altered and is taken from a fresh record.</source>
        <translation>L&apos;en-tête ou la liste des tables était endommagé ou modifié et est repris d&apos;un carnet neuf.</translation>
    </message>
    <message>
        <source>There is no folder %1: make it first.</source>
        <translation>Il n&apos;y a pas de répertoire %1&#xa0;: le créer d&apos;abord.</translation>
    </message>
    <message>
        <source>%1 cannot be made: %2.</source>
        <translation>%1 ne peut pas être créé&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 cannot be opened: %2.</source>
        <translation>%1 ne peut pas être ouvert&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 cannot be put safely on the disk: %2.</source>
        <translation>%1 ne peut pas être mis en sûreté sur le disque&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 is not a file that can be replaced: choose another name.</source>
        <translation>%1 n&apos;est pas un fichier remplaçable&#xa0;: choisir un autre nom.</translation>
    </message>
    <message>
        <source>%1 cannot be replaced: %2.</source>
        <translation>%1 ne peut pas être remplacé&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 no longer holds the entries that were read from it: it was replaced. Save a copy of what is on screen elsewhere.</source>
        <translation>%1 ne contient plus les inscriptions qui y ont été lues&#xa0;: il a été remplacé. Enregistrer ailleurs une copie de ce qui est à l&apos;écran.</translation>
    </message>
    <message>
        <source>Not one entry of %1 can be read: look for a copy of it.</source>
        <translation>Aucune inscription de %1 n&apos;est lisible&#xa0;: en chercher une copie.</translation>
    </message>
    <message>
        <source>it strikes entry %1, which is lost.</source>
        <translation>elle biffe l&apos;inscription %1, qui est perdue.</translation>
    </message>
    <message>
        <source>the bytes of its attachment “%1” cannot be read.</source>
        <translation>les octets de sa pièce jointe «&#xa0;%1&#xa0;» sont illisibles.</translation>
    </message>
    <message>
        <source>%1 is empty: it is not a build record.</source>
        <translation>%1 est vide&#xa0;: ce n&apos;est pas un carnet de montage.</translation>
    </message>
    <message>
        <source>%1 breaks off within its first 100 bytes: look for a copy of it.</source>
        <translation>%1 s&apos;interrompt dans ses 100 premiers octets&#xa0;: en chercher une copie.</translation>
    </message>
    <message>
        <source>%1 is a database of another program, not a build record: choose a file that ends in .caprail.</source>
        <translation>%1 est la base de données d&apos;un autre programme, pas un carnet de montage&#xa0;: choisir un fichier qui finit par .caprail.</translation>
    </message>
    <message>
        <source>%1 was written by a newer version of this program (its tables are of version %2, this program knows up to %3): open it with that one; it was not touched.</source>
        <translation>%1 a été écrit par une version plus récente de ce programme (ses tables sont de la version %2, ce programme connaît jusqu&apos;à %3)&#xa0;: l&apos;ouvrir avec celle-là&#xa0;; il n&apos;a pas été touché.</translation>
    </message>
    <message>
        <source>%1 is damaged: %2. Salvage what can be read into a new file.</source>
        <translation>%1 est endommagé&#xa0;: %2. Récupérer ce qui est lisible dans un nouveau fichier.</translation>
    </message>
    <message>
        <source>its version number is %1</source>
        <translation>son numéro de version est %1</translation>
    </message>
    <message>
        <source>it was switched to write-ahead mode, which leaves parts of a record beside the file</source>
        <translation>il a été passé en mode de journal anticipé, qui laisse des parties d&apos;un carnet à côté du fichier</translation>
    </message>
    <message>
        <source>its file format is %1/%2, that of a record is 1/1</source>
        <translation>son format de fichier est %1/%2, celui d&apos;un carnet est 1/1</translation>
    </message>
    <message>
        <source>its page size is %1</source>
        <translation>sa taille de page est %1</translation>
    </message>
    <message>
        <source>it breaks off within its first page</source>
        <translation>il s&apos;interrompt dans sa première page</translation>
    </message>
    <message>
        <source>There is no file %1: check its name and folder.</source>
        <translation>Il n&apos;y a pas de fichier %1&#xa0;: vérifier son nom et son répertoire.</translation>
    </message>
    <message>
        <source>%1 is not a plain file: choose a file that ends in .caprail.</source>
        <translation>%1 n&apos;est pas un fichier ordinaire&#xa0;: choisir un fichier qui finit par .caprail.</translation>
    </message>
    <message>
        <source>%1 was opened to be read only.</source>
        <translation>%1 a été ouvert en lecture seule.</translation>
    </message>
    <message>
        <source>%1 was written by an earlier version of this program: it can be read, and written once it is upgraded.</source>
        <translation>%1 a été écrit par une version plus ancienne de ce programme&#xa0;: il peut être lu, et écrit après sa mise à niveau.</translation>
    </message>
    <message>
        <source>“%1” is larger than a record takes (%2 MiB): make it smaller first.</source>
        <translation>«&#xa0;%1&#xa0;» est plus grand que ce qu&apos;un carnet admet (%2 Mio)&#xa0;: le réduire d&apos;abord.</translation>
    </message>
    <message>
        <source>The bytes of “%1” do not fit the size and hash that its entry gives.</source>
        <translation>Les octets de «&#xa0;%1&#xa0;» ne correspondent pas à la taille et à l&apos;empreinte données par son inscription.</translation>
    </message>
    <message>
        <source>%1 was written by another program since it was read: read it again, then store the entry.</source>
        <translation>%1 a été écrit par un autre programme depuis sa lecture&#xa0;: le relire, puis enregistrer l&apos;inscription.</translation>
    </message>
    <message>
        <source>%1 holds no attachment with the hash %2.</source>
        <translation>%1 ne contient pas de pièce jointe d&apos;empreinte %2.</translation>
    </message>
    <message>
        <source>In %1 the attachment %2 is damaged or was altered: its bytes no longer fit their hash.</source>
        <translation>Dans %1, la pièce jointe %2 est endommagée ou a été modifiée&#xa0;: ses octets ne correspondent plus à leur empreinte.</translation>
    </message>
    <message>
        <source>The bytes of “%1” (entry %2) could not be read: %3</source>
        <translation>Les octets de «&#xa0;%1&#xa0;» (inscription %2) n&apos;ont pas pu être lus&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1 was restored from a copy of an earlier version: it can be read, and written once it is upgraded.</source>
        <translation>%1 a été restauré depuis une copie d&apos;une version plus ancienne&#xa0;: il peut être lu, et écrit après sa mise à niveau.</translation>
    </message>
    <message>
        <source>%1 cannot be found: %2.</source>
        <translation>%1 est introuvable&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 was moved or deleted while it was open, or its disk was taken away: put it back and try again, or save a copy elsewhere.</source>
        <translation>%1 a été déplacé ou supprimé pendant qu&apos;il était ouvert, ou son disque a été retiré&#xa0;: le remettre et réessayer, ou enregistrer une copie ailleurs.</translation>
    </message>
    <message>
        <source>%1 does not answer (%2): check its disk and try again, or save a copy elsewhere.</source>
        <translation>%1 ne répond pas (%2)&#xa0;: vérifier son disque et réessayer, ou enregistrer une copie ailleurs.</translation>
    </message>
    <message>
        <source>%1 was replaced by another file while it was open: save a copy elsewhere, then look at both.</source>
        <translation>%1 a été remplacé par un autre fichier pendant qu&apos;il était ouvert&#xa0;: enregistrer une copie ailleurs, puis regarder les deux.</translation>
    </message>
    <message>
        <source>%1 may only be read: change its permissions, or save a copy elsewhere.</source>
        <translation>%1 est en lecture seule&#xa0;: changer ses droits, ou enregistrer une copie ailleurs.</translation>
    </message>
    <message>
        <source>%1 has a second name on this disk (a hard link): save a copy and work in that.</source>
        <translation>%1 a un deuxième nom sur ce disque (un lien physique)&#xa0;: enregistrer une copie et y travailler.</translation>
    </message>
    <message>
        <source>The folder of %1 may only be read: save a copy elsewhere and work in that.</source>
        <translation>Le répertoire de %1 est en lecture seule&#xa0;: enregistrer une copie ailleurs et y travailler.</translation>
    </message>
    <message>
        <source>%1 has tables of version %2, which this program does not know.</source>
        <translation>%1 a des tables de la version %2, que ce programme ne connaît pas.</translation>
    </message>
    <message>
        <source>%1 %2: it was altered outside this program. Salvage its entries into a new file.</source>
        <translation>%1 %2&#xa0;: il a été modifié hors de ce programme. Récupérer ses inscriptions dans un nouveau fichier.</translation>
    </message>
    <message>
        <source>In %1: %2</source>
        <translation>Dans %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 could not be upgraded: %2</source>
        <translation>%1 n&apos;a pas pu être mis à niveau&#xa0;: %2</translation>
    </message>
    <message>
        <source>the new file has another seal.</source>
        <translation>le nouveau fichier a un autre sceau.</translation>
    </message>
    <message>
        <source>%1 has entry %2 where entry %3 must be: entries were removed, inserted or put in another order.</source>
        <translation>%1 a l&apos;inscription %2 là où l&apos;inscription %3 doit être&#xa0;: des inscriptions ont été retirées, insérées ou mises dans un autre ordre.</translation>
    </message>
    <message>
        <source>%1 holds more than this program reads into memory (%2 MiB of entries).</source>
        <translation>%1 contient plus que ce programme ne lit en mémoire (%2 Mio d&apos;inscriptions).</translation>
    </message>
    <message>
        <source>The seal of entry %1 does not fit: it, or the one before it, was altered after it was sealed.</source>
        <translation>Le sceau de l&apos;inscription %1 ne correspond pas&#xa0;: elle, ou la précédente, a été modifiée après avoir été scellée.</translation>
    </message>
    <message>
        <source>%1 is open in %2 (process %3 on %4): it can be read here, and written when it is closed there. If that computer is off, remove %5.</source>
        <translation>%1 est ouvert dans %2 (processus %3 sur %4)&#xa0;: il peut être lu ici, et écrit une fois fermé là-bas. Si cet ordinateur est éteint, supprimer %5.</translation>
    </message>
    <message>
        <source>%1 can only be read: its lock %2 cannot be taken. Check the folder, or save a copy elsewhere.</source>
        <translation>%1 ne peut être que lu&#xa0;: son verrou %2 ne peut pas être pris. Vérifier le répertoire, ou enregistrer une copie ailleurs.</translation>
    </message>
    <message>
        <source>%1 gives no answer to “%2”.</source>
        <translation>%1 ne répond pas à «&#xa0;%2&#xa0;».</translation>
    </message>
    <message>
        <source>%1 cannot be written: %2.</source>
        <translation>%1 ne peut pas être écrit&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The entry has no member “time”: give it, for example &quot;2026-05-04T09:30:00Z&quot;.</source>
        <translation>L&apos;inscription n&apos;a pas de membre «&#xa0;time&#xa0;»&#xa0;: le donner, par exemple &quot;2026-05-04T09:30:00Z&quot;.</translation>
    </message>
    <message>
        <source>The entry has no member “person”: say who made it.</source>
        <translation>L&apos;inscription n&apos;a pas de membre «&#xa0;person&#xa0;»&#xa0;: dire qui l&apos;a faite.</translation>
    </message>
    <message>
        <source>It has the number %1 where %2 must be.</source>
        <translation>Elle porte le numéro %1 là où %2 doit être.</translation>
    </message>
    <message>
        <source>Its seal does not fit: it, or a line before it, was altered after it was sealed.</source>
        <translation>Son sceau ne correspond pas&#xa0;: elle, ou une ligne précédente, a été modifiée après avoir été scellée.</translation>
    </message>
    <message>
        <source>Its “sha256” is not 64 hexadecimal digits.</source>
        <translation>Son «&#xa0;sha256&#xa0;» n&apos;a pas 64 chiffres hexadécimaux.</translation>
    </message>
    <message>
        <source>The bytes in %1 do not fit the hash and size of its attachment.</source>
        <translation>Les octets dans %1 ne correspondent pas à l&apos;empreinte et à la taille de sa pièce jointe.</translation>
    </message>
    <message>
        <source>%1, line %2</source>
        <translation>%1, ligne %2</translation>
    </message>
    <message>
        <source>the line is too long for an entry.</source>
        <translation>la ligne est trop longue pour une inscription.</translation>
    </message>
    <message>
        <source>The bytes of the attachment %1 do not fit their hash: they were altered or damaged.</source>
        <translation>Les octets de la pièce jointe %1 ne correspondent pas à leur empreinte&#xa0;: ils ont été modifiés ou endommagés.</translation>
    </message>
    <message>
        <source>The bytes of the attachment “%1” (%2) are missing: they were removed.</source>
        <translation>Les octets de la pièce jointe «&#xa0;%1&#xa0;» (%2) manquent&#xa0;: ils ont été retirés.</translation>
    </message>
    <message>
        <source>No entry tells of the attachment %1: it was put there by hand.</source>
        <translation>Aucune inscription ne parle de la pièce jointe %1&#xa0;: elle a été mise là à la main.</translation>
    </message>
    <message>
        <source>The table “%1” has details of entry %2, which does not exist.</source>
        <translation>La table «&#xa0;%1&#xa0;» a des détails de l&apos;inscription %2, qui n&apos;existe pas.</translation>
    </message>
    <message>
        <source>No entry has the seal that was given: this is not the ledger that it was taken down from, or its end was removed. It has %1 entries and ends with the seal %2.</source>
        <translation>Aucune inscription n&apos;a le sceau donné&#xa0;: ce n&apos;est pas le registre où il a été relevé, ou sa fin a été retirée. Il a %1 inscriptions et finit par le sceau %2.</translation>
    </message>
    <message>
        <source>“%1” is not a seal: type the five groups of four digits as they stand on the sheet, like 3f2a-91c0-77de-0b15-a4c2.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas un sceau&#xa0;: taper les cinq groupes de quatre chiffres comme sur la feuille, par exemple 3f2a-91c0-77de-0b15-a4c2.</translation>
    </message>
    <message>
        <source>not named</source>
        <translation>non nommé</translation>
    </message>
    <message>
        <source>The index of the folder is damaged: it is made again.</source>
        <translation>L&apos;index du répertoire est endommagé&#xa0;: il est refait.</translation>
    </message>
    <message>
        <source>The cache folder %1 cannot be made: check its rights and the disk.</source>
        <translation>Le répertoire de cache %1 ne peut pas être créé&#xa0;: vérifier ses droits et le disque.</translation>
    </message>
    <message>
        <source>The index is of another version.</source>
        <translation>L&apos;index est d&apos;une autre version.</translation>
    </message>
    <message>
        <source>The index of the folder is damaged: %1</source>
        <translation>L&apos;index du répertoire est endommagé&#xa0;: %1</translation>
    </message>
    <message>
        <source>A template needs an engine layout.</source>
        <translation>Un modèle a besoin d&apos;une architecture de moteur.</translation>
    </message>
    <message>
        <source>This record has no engine layout yet: set it at the engine station, then save the template.</source>
        <translation>Ce carnet n&apos;a pas encore d&apos;architecture de moteur&#xa0;: la fixer au poste Moteur, puis enregistrer le modèle.</translation>
    </message>
    <message>
        <source>Give the template a name of one line.</source>
        <translation>Donner au modèle un nom d&apos;une ligne.</translation>
    </message>
    <message>
        <source>A template holds layout, bands, rules and fastener groups, and no “%1”: take that line out.</source>
        <translation>Un modèle contient architecture, plages, consignes et groupes de fixations, et non «&#xa0;%1&#xa0;»&#xa0;: retirer cette ligne.</translation>
    </message>
    <message>
        <source>%1 is not a usable template: %2</source>
        <translation>%1 n&apos;est pas un modèle utilisable&#xa0;: %2</translation>
    </message>
    <message>
        <source>There is no template “%1” of the shop&apos;s own that could be removed.</source>
        <translation>L&apos;atelier n&apos;a pas de modèle propre «&#xa0;%1&#xa0;» à retirer.</translation>
    </message>
    <message>
        <source>The shop has revision %1 of “%2” already, and the file holds revision %3: remove the shop&apos;s first if the older one is wanted.</source>
        <translation>L&apos;atelier a déjà la révision %1 de «&#xa0;%2&#xa0;», et le fichier contient la révision %3&#xa0;: retirer d&apos;abord celle de l&apos;atelier si l&apos;ancienne est voulue.</translation>
    </message>
    <message>
        <source>There is no template “%1” of the shop&apos;s own.</source>
        <translation>L&apos;atelier n&apos;a pas de modèle propre «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>%1 exists already and is not empty: choose another folder.</source>
        <translation>%1 existe déjà et n&apos;est pas vide&#xa0;: choisir un autre répertoire.</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>pas encore lu</translation>
    </message>
    <message>
        <source>record</source>
        <translation>carnet</translation>
    </message>
    <message>
        <source>no record</source>
        <translation>pas de carnet</translation>
    </message>
    <message>
        <source>newer</source>
        <translation>plus récent</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>endommagé</translation>
    </message>
    <message>
        <source>unreadable</source>
        <translation>illisible</translation>
    </message>
    <message>
        <source>being written</source>
        <translation>en cours d&apos;écriture</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Ligne %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 cannot be read (%2): check the path.</source>
        <translation>%1 ne peut pas être lu (%2)&#xa0;: vérifier le chemin.</translation>
    </message>
    <message>
        <source>%1 is being written, or a write was cut off: it is read again later; opening it takes back what was cut off.</source>
        <translation>%1 est en cours d&apos;écriture, ou une écriture a été interrompue&#xa0;: il sera relu plus tard&#xa0;; l&apos;ouvrir annule ce qui a été interrompu.</translation>
    </message>
    <message>
        <source>%1 is damaged: its last entry has no time. Salvage what can be read.</source>
        <translation>%1 est endommagé&#xa0;: sa dernière inscription n&apos;a pas d&apos;heure. Récupérer ce qui est lisible.</translation>
    </message>
    <message>
        <source>%1 cannot be reached: it is gone, or may not be read.</source>
        <translation>%1 est inaccessible&#xa0;: il a disparu, ou la lecture n&apos;en est pas permise.</translation>
    </message>
    <message>
        <source>The note “%1” names no template: it reads “NAME, revision 1”.</source>
        <translation>La note «&#xa0;%1&#xa0;» ne nomme pas de modèle&#xa0;: elle se lit «&#xa0;NOM, revision 1&#xa0;».</translation>
    </message>
    <message>
        <source>pickup clearance</source>
        <translation>garde de la crépine</translation>
    </message>
    <message>
        <source>This record has no build %1: it has %2.</source>
        <translation>Ce carnet n&apos;a pas de montage %1&#xa0;: il en a %2.</translation>
    </message>
    <message>
        <source>A build is compared with another one: choose two.</source>
        <translation>Un montage se compare à un autre&#xa0;: en choisir deux.</translation>
    </message>
    <message>
        <source>This record has one build only: there is a difference once a new build of the engine was begun.</source>
        <translation>Ce carnet n&apos;a qu&apos;un montage&#xa0;: il y aura une différence une fois un nouveau montage du moteur commencé.</translation>
    </message>
    <message>
        <source>“%1” does not belong there.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;a pas sa place là.</translation>
    </message>
    <message>
        <source>it is of a newer version of this program.</source>
        <translation>il est d&apos;une version plus récente de ce programme.</translation>
    </message>
    <message>
        <source>it is not a file of this program.</source>
        <translation>ce n&apos;est pas un fichier de ce programme.</translation>
    </message>
    <message>
        <source>The shop&apos;s people and instruments in %1 cannot be used: %2 Mend the file or move it away to start over.</source>
        <translation>Les personnes et instruments de l&apos;atelier dans %1 sont inutilisables&#xa0;: %2 Réparer le fichier, ou le déplacer pour recommencer.</translation>
    </message>
    <message>
        <source>measuring</source>
        <translation>mesures en cours</translation>
    </message>
    <message>
        <source>trial fit open</source>
        <translation>montage à blanc ouvert</translation>
    </message>
    <message>
        <source>ready to close</source>
        <translation>prêt à fermer</translation>
    </message>
    <message>
        <source>signed off</source>
        <translation>visé</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>begun</source>
        <translation>commencé</translation>
    </message>
    <message>
        <source>all held</source>
        <translation>toutes ont tenu</translation>
    </message>
    <message>
        <source>no longer counts</source>
        <translation>ne compte plus</translation>
    </message>
    <message>
        <source>%1 is not a folder that can be read: check its name, or whether its disk or share is connected.</source>
        <translation>%1 n&apos;est pas un répertoire lisible&#xa0;: vérifier son nom, ou si son disque ou son partage est connecté.</translation>
    </message>
    <message>
        <source>%1: %2 measured, %3 asked.</source>
        <translation>%1&#xa0;: %2 mesuré, %3 demandé.</translation>
    </message>
    <message>
        <source>%1: pass.</source>
        <translation>%1&#xa0;: conforme.</translation>
    </message>
    <message>
        <source>%1: fail.</source>
        <translation>%1&#xa0;: non conforme.</translation>
    </message>
    <message>
        <source>The %1 has 0 of two readings: measure it twice.</source>
        <translation>0 lecture sur deux (%1)&#xa0;: mesurer deux fois.</translation>
    </message>
    <message>
        <source>The %1 has 1 of two readings: measure it once more.</source>
        <translation>1 lecture sur deux (%1)&#xa0;: mesurer une fois de plus.</translation>
    </message>
    <message>
        <source>The %1 must be zero or more: look at its readings.</source>
        <translation>Il faut zéro ou plus (%1)&#xa0;: revoir les lectures.</translation>
    </message>
    <message>
        <source>The %1 must be above zero: look at its readings.</source>
        <translation>Il faut plus que zéro (%1)&#xa0;: revoir les lectures.</translation>
    </message>
    <message>
        <source>pickup depth</source>
        <translation>profondeur de la crépine</translation>
    </message>
    <message>
        <source>A nut factor K of %1 is outside 0.03 to 1: steel threads have about 0.1 to 0.3.</source>
        <translation>Un facteur de serrage K de %1 est hors de 0.03 à 1&#xa0;: les filetages en acier ont environ 0.1 à 0.3.</translation>
    </message>
    <message>
        <source>A friction coefficient of %1 is outside 0.01 to 1: steel on steel has about 0.08 to 0.25.</source>
        <translation>Un coefficient de frottement de %1 est hors de 0.01 à 1&#xa0;: acier sur acier a environ 0.08 à 0.25.</translation>
    </message>
    <message>
        <source>The mean radius of the bearing face must be above zero, not %1.</source>
        <translation>Le rayon moyen de la face d&apos;appui doit être supérieur à zéro, et non %1.</translation>
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
        <translation>somme = %1</translation>
    </message>
    <message>
        <source>A torque of %1 is outside what a fastener here can have (%2 to %3): check the figure and its unit.</source>
        <translation>Un couple de %1 est hors de ce qu&apos;une fixation peut avoir ici (%2 à %3)&#xa0;: vérifier le nombre et son unité.</translation>
    </message>
    <message>
        <source>A preload of %1 is outside what a fastener here can have (up to %2): check the figure and its unit.</source>
        <translation>Une précharge de %1 est hors de ce qu&apos;une fixation peut avoir ici (jusqu&apos;à %2)&#xa0;: vérifier le nombre et son unité.</translation>
    </message>
    <message>
        <source>F = T / sum = %1 / %2 = %3</source>
        <translation>F = T / somme = %1 / %2 = %3</translation>
    </message>
    <message>
        <source>A thread of %1 nominal diameter is outside 0.05 to 4 in: check the diameter.</source>
        <translation>Un filetage de diamètre nominal %1 est hors de 0.05 à 4 in&#xa0;: vérifier le diamètre.</translation>
    </message>
    <message>
        <source>A thread of %1 in with %2 threads per inch cannot be cut: the pitch must lie between a hundredth and a third of the diameter.</source>
        <translation>Un filetage de %1 in à %2 filets par pouce ne peut pas être taillé&#xa0;: le pas doit être entre un centième et un tiers du diamètre.</translation>
    </message>
    <message>
        <source>A thread of %1 nominal diameter is outside 1 to 100 mm: check the diameter.</source>
        <translation>Un filetage de diamètre nominal %1 est hors de 1 à 100 mm&#xa0;: vérifier le diamètre.</translation>
    </message>
    <message>
        <source>A thread M%1 with a pitch of %2 mm cannot be cut: the pitch must lie between a hundredth and a third of the diameter.</source>
        <translation>Un filetage M%1 au pas de %2 mm ne peut pas être taillé&#xa0;: le pas doit être entre un centième et un tiers du diamètre.</translation>
    </message>
    <message>
        <source>A modulus of %1 GPa is outside 40 to 400 GPa: steel has about 205, titanium about 114.</source>
        <translation>Un module de %1 GPa est hors de 40 à 400 GPa&#xa0;: l&apos;acier a environ 205, le titane environ 114.</translation>
    </message>
    <message>
        <source>A proof stress of %1 MPa (%2 psi) is outside 50 to 3000 MPa: check the figure and its unit.</source>
        <translation>Une contrainte d&apos;épreuve de %1 MPa (%2 psi) est hors de 50 à 3000 MPa&#xa0;: vérifier le nombre et son unité.</translation>
    </message>
    <message>
        <source>1/4 to 1 1/2 in</source>
        <translation>1/4 à 1 1/2 in</translation>
    </message>
    <message>
        <source>M1.6 to M39</source>
        <translation>M1.6 à M39</translation>
    </message>
    <message>
        <source>A sequence is known for 3 to 9 main caps, and %1 were given.</source>
        <translation>Un ordre est connu pour 3 à 9 chapeaux de palier, et %1 ont été donnés.</translation>
    </message>
    <message>
        <source>A main cap has 2 or 4 fasteners, and %1 were given.</source>
        <translation>Un chapeau de palier a 2 ou 4 fixations, et %1 ont été données.</translation>
    </message>
    <message>
        <source>A sequence is known for 1 to 16 rods, and %1 were given.</source>
        <translation>Un ordre est connu pour 1 à 16 bielles, et %1 ont été données.</translation>
    </message>
    <message>
        <source>A pattern of 1 to 500 fasteners can be put in order, and %1 were given.</source>
        <translation>Un motif de 1 à 500 fixations peut être ordonné, et %1 ont été données.</translation>
    </message>
    <message>
        <source>The final torque must be above zero: give the specified value.</source>
        <translation>Le couple final doit être supérieur à zéro&#xa0;: donner la valeur prescrite.</translation>
    </message>
    <message>
        <source>A torque is reached in 1 to 10 steps, and %1 were given.</source>
        <translation>Un couple s&apos;atteint en 1 à 10 étapes, et %1 ont été données.</translation>
    </message>
    <message>
        <source>The length of the wrench must be above zero and at most 5 m, not %1: measure from the grip to the drive.</source>
        <translation>La longueur de la clé doit être supérieure à zéro et d&apos;au plus 5 m, et non %1&#xa0;: mesurer de la poignée au carré.</translation>
    </message>
    <message>
        <source>The extension&apos;s length cannot be negative or above 5 m, and %1 was given: for one folded back give an angle of more than 90°.</source>
        <translation>La longueur de la rallonge ne peut être ni négative ni supérieure à 5 m, et %1 a été donné&#xa0;: pour une rallonge repliée, donner un angle de plus de 90°.</translation>
    </message>
    <message>
        <source>The extension&apos;s angle lies between 0° (straight on) and 180° (folded back), and %1 was given.</source>
        <translation>L&apos;angle de la rallonge va de 0° (dans l&apos;axe) à 180° (repliée), et %1 a été donné.</translation>
    </message>
    <message>
        <source>An extension of %1 at %2 leaves no lever on a wrench of %3: turn it forward or take a shorter one.</source>
        <translation>Une rallonge de %1 à %2 ne laisse aucun bras de levier à une clé de %3&#xa0;: la tourner vers l&apos;avant ou en prendre une plus courte.</translation>
    </message>
    <message>
        <source>L + E·cos α = %1 + %2 × %3 = %4</source>
        <translation>L + E·cos α = %1 + %2 × %3 = %4</translation>
    </message>
    <message>
        <source>setting = T·L/(L + E·cos α) = %1 × %2 / %3 = %4</source>
        <translation>réglage = T·L/(L + E·cos α) = %1 × %2 / %3 = %4</translation>
    </message>
    <message>
        <source>The largest value of a torque wrench must be above zero, not %1.</source>
        <translation>La plus grande valeur d&apos;une clé dynamométrique doit être supérieure à zéro, et non %1.</translation>
    </message>
    <message>
        <source>The smallest value marked on the wrench (%1) must lie between zero and its largest (%2).</source>
        <translation>La plus petite valeur marquée sur la clé (%1) doit être entre zéro et la plus grande (%2).</translation>
    </message>
    <message>
        <source>A scatter of %1 is outside 0 to 90 %: a torque wrench reaches about 25 to 35 %.</source>
        <translation>Une dispersion de %1 est hors de 0 à 90&#xa0;%&#xa0;: une clé dynamométrique atteint environ 25 à 35&#xa0;%.</translation>
    </message>
    <message>
        <source>proof load = %1 × %2 = %3 (%4, %5)</source>
        <translation>charge d&apos;épreuve = %1 × %2 = %3 (%4, %5)</translation>
    </message>
    <message>
        <source>share of proof = %1 / %2 = %3</source>
        <translation>part de l&apos;épreuve = %1 / %2 = %3</translation>
    </message>
    <message>
        <source>with a scatter of ±%1: %2 at the higher friction to %3 at the lower</source>
        <translation>avec une dispersion de ±%1&#xa0;: %2 au frottement haut à %3 au frottement bas</translation>
    </message>
    <message>
        <source>A torque of %1 would pull the fastener to %2 of its proof load: was a value in lbf·in entered as lbf·ft? As lbf·in it would be %3.</source>
        <translation>Un couple de %1 porterait la fixation à %2 de sa charge d&apos;épreuve&#xa0;: une valeur en lbf·in a-t-elle été entrée en lbf·ft&#xa0;? En lbf·in, ce serait %3.</translation>
    </message>
    <message>
        <source>A torque of %1 pulls the fastener to only %2 of its proof load: was a value in lbf·ft entered as lbf·in? As lbf·ft it would be %3.</source>
        <translation>Un couple de %1 ne porte la fixation qu&apos;à %2 de sa charge d&apos;épreuve&#xa0;: une valeur en lbf·ft a-t-elle été entrée en lbf·in&#xa0;? En lbf·ft, ce serait %3.</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>usage courant, sans source</translation>
    </message>
    <message>
        <source>dry, black oxide</source>
        <translation>sec, bruni</translation>
    </message>
    <message>
        <source>dry, zinc plated</source>
        <translation>sec, zingué</translation>
    </message>
    <message>
        <source>engine oil</source>
        <translation>huile moteur</translation>
    </message>
    <message>
        <source>cadmium plated</source>
        <translation>cadmié</translation>
    </message>
    <message>
        <source>assembly lubricant with molybdenum disulphide</source>
        <translation>lubrifiant de montage au bisulfure de molybdène</translation>
    </message>
    <message>
        <source>anti-seize paste</source>
        <translation>pâte antigrippage</translation>
    </message>
    <message>
        <source>cap %1</source>
        <translation>chapeau %1</translation>
    </message>
    <message>
        <source>M%1 is cut as %2 (coarse) or %3 (fine)</source>
        <translation>M%1 se taille comme %2 (gros) ou %3 (fin)</translation>
    </message>
    <message>
        <source>%1 is cut with %2 (coarse) or %3 (fine) threads per inch</source>
        <translation>%1 se taille à %2 (gros) ou %3 (fin) filets par pouce</translation>
    </message>
    <message>
        <source>%1 leaves the pitch open: %2; add it behind a dash.</source>
        <translation>%1 laisse le pas ouvert&#xa0;: %2&#xa0;; l&apos;ajouter derrière un tiret.</translation>
    </message>
    <message>
        <source>%1 contradicts itself; give the number or the series that is meant.</source>
        <translation>%1 se contredit&#xa0;; donner le nombre ou la série voulue.</translation>
    </message>
    <message>
        <source>%1 contradicts itself: %2; give the number or the series that is meant.</source>
        <translation>%1 se contredit&#xa0;: %2&#xa0;; donner le nombre ou la série voulue.</translation>
    </message>
    <message>
        <source>No thread was given: write inch threads as 7/16-20 and metric ones as M10x1.25.</source>
        <translation>Aucun filetage n&apos;a été donné&#xa0;: écrire les filetages en pouces comme 7/16-20 et les métriques comme M10x1.25.</translation>
    </message>
    <message>
        <source>A fastener that moved turned by more than 0°, and %1 was given: if it did not turn, it held.</source>
        <translation>Une fixation qui a bougé a tourné de plus de 0°, et %1 a été donné&#xa0;: si elle n&apos;a pas tourné, elle a tenu.</translation>
    </message>
    <message>
        <source>A movement of %1 is more than a whole turn: check the angle, or back the fastener off and tighten it again.</source>
        <translation>Un mouvement de %1 dépasse un tour entier&#xa0;: vérifier l&apos;angle, ou desserrer la fixation et la resserrer.</translation>
    </message>
    <message>
        <source>gap = %1 + 0 to %2 = %3 to %4</source>
        <translation>interstice = %1 + 0 à %2 = %3 à %4</translation>
    </message>
    <message>
        <source>No place has a residual yet.</source>
        <translation>Aucun endroit n&apos;a encore de résidu.</translation>
    </message>
    <message>
        <source>pitch</source>
        <translation>pente longitudinale</translation>
    </message>
    <message>
        <source>roll</source>
        <translation>pente transversale</translation>
    </message>
    <message>
        <source>twist</source>
        <translation>gauchissement</translation>
    </message>
    <message>
        <source>The places that have a residual cannot tell %1: only one cap is tied.</source>
        <translation>Les endroits qui ont un résidu ne disent pas&#xa0;: %1. Un seul chapeau est relié.</translation>
    </message>
    <message>
        <source>There is no position %1 in this plan: correct its name.</source>
        <translation>Il n&apos;y a pas de position %1 dans ce plan&#xa0;: corriger son nom.</translation>
    </message>
    <message>
        <source>Position %1 is given two built stacks: give one.</source>
        <translation>La position %1 reçoit deux piles montées&#xa0;: n&apos;en donner qu&apos;une.</translation>
    </message>
    <message>
        <source>The stack built at position %1 has shim %2, which is not in the kit or is set aside: correct the stack.</source>
        <translation>La pile montée à la position %1 a la cale %2, qui n&apos;est pas dans l&apos;assortiment ou est mise de côté&#xa0;: corriger la pile.</translation>
    </message>
    <message>
        <source>Shim %1 is built in twice, at position %2 and at position %3: correct one of them.</source>
        <translation>La cale %1 est montée deux fois, à la position %2 et à la position %3&#xa0;: corriger l&apos;une des deux.</translation>
    </message>
    <message>
        <source>Shim %1 has a thickness of %2: give its measured or marked thickness, more than 0.</source>
        <translation>La cale %1 a une épaisseur de %2&#xa0;: donner son épaisseur mesurée ou marquée, plus que 0.</translation>
    </message>
    <message>
        <source>The kit has two shims called %1: give each its own id.</source>
        <translation>L&apos;assortiment a deux cales nommées %1&#xa0;: donner à chacune son nom.</translation>
    </message>
    <message>
        <source>Position %1 is listed twice: give each position once.</source>
        <translation>La position %1 figure deux fois&#xa0;: donner chaque position une fois.</translation>
    </message>
    <message>
        <source>Position %1 is at cap %2, but the caps run from 1 to %3: correct its cap.</source>
        <translation>La position %1 est au chapeau %2, mais les chapeaux vont de 1 à %3&#xa0;: corriger son chapeau.</translation>
    </message>
    <message>
        <source>Position %1 is neither left nor right: give its side.</source>
        <translation>La position %1 n&apos;est ni à gauche ni à droite&#xa0;: donner son côté.</translation>
    </message>
    <message>
        <source>Position %1 is pinned with %2 shims, but the largest stack is %3: unpin it or allow larger stacks.</source>
        <translation>La position %1 est figée avec %2 cales, mais la plus grande pile est de %3&#xa0;: la libérer ou permettre de plus grandes piles.</translation>
    </message>
    <message>
        <source>Position %1 is pinned with shim %2, which is not in the kit or is set aside: unpin it or put the shim back.</source>
        <translation>La position %1 est figée avec la cale %2, qui n&apos;est pas dans l&apos;assortiment ou est mise de côté&#xa0;: la libérer ou remettre la cale.</translation>
    </message>
    <message>
        <source>Shim %1 is pinned twice, at position %2 and at position %3: unpin one of them.</source>
        <translation>La cale %1 est figée deux fois, à la position %2 et à la position %3&#xa0;: libérer l&apos;une des deux.</translation>
    </message>
    <message>
        <source>The largest stack is given as %1 shims: give 1 or more, or 0 for no limit.</source>
        <translation>La plus grande pile est donnée à %1 cales&#xa0;: donner 1 ou plus, ou 0 pour aucune limite.</translation>
    </message>
    <message>
        <source>The engine is given %1 caps: give their number, or 0 to count them from the positions.</source>
        <translation>Le moteur est donné à %1 chapeaux&#xa0;: donner leur nombre, ou 0 pour les compter d&apos;après les positions.</translation>
    </message>
    <message>
        <source>± %1 = k %2 × u %3; degrees of freedom %4.</source>
        <translation>± %1 = k %2 × u %3&#xa0;; degrés de liberté %4.</translation>
    </message>
    <message>
        <source>The largest share is “%1”, %2.</source>
        <translation>La plus grande part est «&#xa0;%1&#xa0;», %2.</translation>
    </message>
    <message>
        <source>a confidence lies between 0 and 1, degrees of freedom above 0</source>
        <translation>un niveau de confiance est entre 0 et 1, les degrés de liberté au-dessus de 0</translation>
    </message>
    <message>
        <source>an expanded uncertainty is finite and not below zero</source>
        <translation>une incertitude élargie est finie et non inférieure à zéro</translation>
    </message>
    <message>
        <source>Not read yet.</source>
        <translation>Pas encore lu.</translation>
    </message>
    <message>
        <source>%1, repeatability</source>
        <translation>%1, répétabilité</translation>
    </message>
    <message>
        <source>%1, zero of %2</source>
        <translation>%1, zéro de %2</translation>
    </message>
    <message>
        <source>zero of %1</source>
        <translation>zéro de %1</translation>
    </message>
    <message>
        <source>Nothing was measured: an uncertainty needs at least one reading.</source>
        <translation>Rien n&apos;a été mesuré&#xa0;: une incertitude a besoin d&apos;au moins une lecture.</translation>
    </message>
    <message>
        <source>The gap has no reading: read it first.</source>
        <translation>L&apos;interstice n&apos;a pas de lecture&#xa0;: le lire d&apos;abord.</translation>
    </message>
    <message>
        <source>A gap is read with one feeler leaf at least: enter how many lay in the slot.</source>
        <translation>Un interstice se lit avec au moins une lame&#xa0;: entrer combien étaient dans la fente.</translation>
    </message>
    <message>
        <source>A limit of error for the gap is below zero: enter it as a half-width, without sign.</source>
        <translation>Une erreur maximale pour l&apos;interstice est inférieure à zéro&#xa0;: l&apos;entrer comme demi-largeur, sans signe.</translation>
    </message>
    <message>
        <source>straightedge flatness</source>
        <translation>planéité de la règle</translation>
    </message>
    <message>
        <source>A variance split needs two groups or more.</source>
        <translation>Une décomposition de variance a besoin de deux groupes ou plus.</translation>
    </message>
    <message>
        <source>A group of the variance split has no value: leave it out, or measure it.</source>
        <translation>Un groupe de la décomposition de variance n&apos;a pas de valeur&#xa0;: l&apos;omettre, ou le mesurer.</translation>
    </message>
    <message>
        <source>A value of the variance split is not a finite number.</source>
        <translation>Une valeur de la décomposition de variance n&apos;est pas un nombre fini.</translation>
    </message>
    <message>
        <source>A variance split needs a group of two values at least.</source>
        <translation>Une décomposition de variance a besoin d&apos;un groupe d&apos;au moins deux valeurs.</translation>
    </message>
    <message>
        <source>The study has two readings of %1 by %2 in pass %3: strike one.</source>
        <translation>L&apos;étude a deux lectures de %1 par %2 dans la passe %3&#xa0;: en biffer une.</translation>
    </message>
    <message>
        <source>A repeatability study needs two places at least; ten are usual.</source>
        <translation>Une étude de répétabilité a besoin d&apos;au moins deux endroits&#xa0;; dix sont usuels.</translation>
    </message>
    <message>
        <source>A repeatability study needs two passes at least.</source>
        <translation>Une étude de répétabilité a besoin d&apos;au moins deux passes.</translation>
    </message>
    <message>
        <source>The study lacks the reading of %1 by %2 in pass %3: read it, or leave that pass out.</source>
        <translation>Il manque à l&apos;étude la lecture de %1 par %2 dans la passe %3&#xa0;: la faire, ou omettre cette passe.</translation>
    </message>
    <message>
        <source>One reading repeats to %1 (standard deviation, %2 degrees of freedom); people differ by %3; the places differ by %4.</source>
        <translation>Une lecture se répète à %1 (écart type, %2 degrés de liberté)&#xa0;; les personnes diffèrent de %3&#xa0;; les endroits diffèrent de %4.</translation>
    </message>
    <message>
        <source>One reading repeats to %1 (standard deviation, %2 degrees of freedom); the places differ by %3.</source>
        <translation>Une lecture se répète à %1 (écart type, %2 degrés de liberté)&#xa0;; les endroits diffèrent de %3.</translation>
    </message>
    <message>
        <source>in</source>
        <translation>dans les limites</translation>
    </message>
    <message>
        <source>The stack at %1 is on already.</source>
        <translation>La pile au %1 est déjà posée.</translation>
    </message>
    <message>
        <source>The stack at %1 is off already.</source>
        <translation>La pile au %1 est déjà retirée.</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>alésage</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lecture</translation>
    </message>
    <message>
        <source>The bore is not measured: measure it with the cap at full torque.</source>
        <translation>L&apos;alésage n&apos;est pas mesuré&#xa0;: le mesurer avec le chapeau au couple complet.</translation>
    </message>
    <message>
        <source>The bore at station %1 must be above zero: enter the diameter.</source>
        <translation>L&apos;alésage à la section %1 doit être supérieur à zéro&#xa0;: entrer le diamètre.</translation>
    </message>
    <message>
        <source>The housing is not measured: measure it with the cap at full torque.</source>
        <translation>Le logement n&apos;est pas mesuré&#xa0;: le mesurer avec le chapeau au couple complet.</translation>
    </message>
    <message>
        <source>The housing at station %1 must be above zero: enter the diameter.</source>
        <translation>Le logement à la section %1 doit être supérieur à zéro&#xa0;: entrer le diamètre.</translation>
    </message>
    <message>
        <source>The bytes of its attachment are neither in %1 nor among the files of %2: put them there.</source>
        <translation>Les octets de sa pièce jointe ne sont ni dans %1 ni parmi les fichiers de %2&#xa0;: les y mettre.</translation>
    </message>
    <message>
        <source>not finished</source>
        <translation>non achevé</translation>
    </message>
    <message>
        <source>%1 is not a plain file (it is a link, a folder, a pipe, a socket or a device), and a record needs that name: move it away, then try again.</source>
        <translation>%1 n&apos;est pas un fichier ordinaire (c&apos;est un lien, un répertoire, un tube, une socket ou un périphérique), et un carnet a besoin de ce nom&#xa0;: le déplacer, puis réessayer.</translation>
    </message>
    <message>
        <source>%1 belongs to someone who may not write %2: move it away, then try again.</source>
        <translation>%1 appartient à quelqu&apos;un qui n&apos;a pas le droit d&apos;écrire %2&#xa0;: le déplacer, puis réessayer.</translation>
    </message>
    <message>
        <source>%1 is larger than the journal of a write to %2 can be: move it away, then try again.</source>
        <translation>%1 est plus grand que ne peut l&apos;être le journal d&apos;une écriture dans %2&#xa0;: le déplacer, puis réessayer.</translation>
    </message>
    <message>
        <source>No build record has a file such as %1: another program put it there, or the record was open in one. Move it away, then try again.</source>
        <translation>Aucun carnet de montage n&apos;a de fichier comme %1&#xa0;: un autre programme l&apos;a mis là, ou le carnet y était ouvert. Le déplacer, puis réessayer.</translation>
    </message>
    <message>
        <source>%1 is larger than a lock is: it was not made by this program. Move it away, then try again.</source>
        <translation>%1 est plus grand qu&apos;un verrou&#xa0;: il n&apos;est pas de ce programme. Le déplacer, puis réessayer.</translation>
    </message>
    <message>
        <source>%1 is the journal of a write to another file, as when a copy was put in the place of a record: with it %2 would be harmed, so neither was touched. Move the journal to another folder, then try again.</source>
        <translation>%1 est le journal d&apos;une écriture dans un autre fichier, comme lorsqu&apos;une copie a été mise à la place d&apos;un carnet&#xa0;: il abîmerait %2, donc aucun des deux n&apos;a été touché. Déplacer le journal dans un autre répertoire, puis réessayer.</translation>
    </message>
    <message>
        <source>A write to %1 was cut off: it is shown as it was before that write, and was not touched. The write is taken back when it is next opened to be written.</source>
        <translation>Une écriture dans %1 a été interrompue&#xa0;: il est montré tel qu&apos;avant cette écriture, et n&apos;a pas été touché. L&apos;écriture sera annulée à sa prochaine ouverture en écriture.</translation>
    </message>
    <message>
        <source>A write to %1 was cut off before it reached the record: nothing that was stored is lost.</source>
        <translation>Une écriture dans %1 a été interrompue avant d&apos;atteindre le carnet&#xa0;: rien de ce qui était enregistré n&apos;est perdu.</translation>
    </message>
    <message>
        <source>A write to %1 was cut off and was taken back: nothing that was stored is lost. Record and journal as they were found are kept as %2 and %3.</source>
        <translation>Une écriture dans %1 a été interrompue et a été annulée&#xa0;: rien de ce qui était enregistré n&apos;est perdu. Le carnet et le journal tels que trouvés sont gardés sous %2 et %3.</translation>
    </message>
    <message>
        <source>What lies beside the file was not used: %1</source>
        <translation>Ce qui se trouve à côté du fichier n&apos;a pas été utilisé&#xa0;: %1</translation>
    </message>
    <message>
        <source>The journal beside the file is that of a write to another one, and was not used.</source>
        <translation>Le journal à côté du fichier est celui d&apos;une écriture dans un autre, et n&apos;a pas été utilisé.</translation>
    </message>
    <message>
        <source>%1 cannot be looked at: %2.</source>
        <translation>%1 ne peut pas être examiné&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 cannot be given its permissions: %2.</source>
        <translation>%1 ne peut pas recevoir ses droits&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 names another file, which would be deleted if it were played back; no write to a record leaves such a journal. It was not touched: move it away, then try again.</source>
        <translation>%1 nomme un autre fichier, qui serait supprimé s&apos;il était rejoué&#xa0;; aucune écriture dans un carnet ne laisse un tel journal. Il n&apos;a pas été touché&#xa0;: le déplacer, puis réessayer.</translation>
    </message>
    <message>
        <source>%1 is damaged: it calls %2 of its pages free, and a record has none; the next entry would be written over others. Salvage what can be read into a new file.</source>
        <translation>%1 est endommagé&#xa0;: il dit libres %2 de ses pages, et un carnet n&apos;en a aucune&#xa0;; la prochaine inscription en écraserait d&apos;autres. Récupérer ce qui est lisible dans un nouveau fichier.</translation>
    </message>
    <message>
        <source>%1 is damaged: its pages make %2 bytes, and the file has %3. Salvage what can be read into a new file.</source>
        <translation>%1 est endommagé&#xa0;: ses pages font %2 octets, et le fichier en a %3. Récupérer ce qui est lisible dans un nouveau fichier.</translation>
    </message>
    <message>
        <source>There is no room for a private copy of %1 to look at: %2.</source>
        <translation>Il n&apos;y a pas de place pour une copie privée de %1 à examiner&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 has a path too long to be opened: with what a record needs beside it, it would have more than 512 bytes. Choose a folder less deep.</source>
        <translation>Le chemin de %1 est trop long pour l&apos;ouvrir&#xa0;: avec ce dont un carnet a besoin à côté, il dépasserait 512 octets. Choisir un répertoire moins profond.</translation>
    </message>
    <message>
        <source>%1 cannot be read back: %2.</source>
        <translation>%1 ne peut pas être relu&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made (%2): check its name and the rights to it.</source>
        <translation>Le répertoire %1 ne peut pas être créé (%2)&#xa0;: vérifier son nom et les droits.</translation>
    </message>
    <message>
        <source>%1 is a link that leads nowhere: choose another name.</source>
        <translation>%1 est un lien qui ne mène nulle part&#xa0;: choisir un autre nom.</translation>
    </message>
    <message>
        <source>%1 is the record itself, and is not written over: choose another name.</source>
        <translation>%1 est le carnet lui-même, et n&apos;est pas écrasé&#xa0;: choisir un autre nom.</translation>
    </message>
    <message>
        <source>At %1 there is something that is neither a PDF nor a PNG, and it is not written over: choose another name.</source>
        <translation>Il y a à %1 quelque chose qui n&apos;est ni un PDF ni un PNG, et qui n&apos;est pas écrasé&#xa0;: choisir un autre nom.</translation>
    </message>
    <message>
        <source>At %1 there is something that is neither a table nor a text, and it is not written over: choose another name.</source>
        <translation>Il y a à %1 quelque chose qui n&apos;est ni un tableau ni un texte, et qui n&apos;est pas écrasé&#xa0;: choisir un autre nom.</translation>
    </message>
    <message>
        <source>%1 is larger than %2 MiB: this is not such a file.</source>
        <translation>%1 dépasse %2 Mio&#xa0;: ce n&apos;est pas un tel fichier.</translation>
    </message>
    <message>
        <source>it cannot be read (%1).</source>
        <translation>il ne peut pas être lu (%1).</translation>
    </message>
    <message>
        <source>the text goes on for longer than a record could hold.</source>
        <translation>le texte est plus long que ce qu&apos;un carnet pourrait contenir.</translation>
    </message>
    <message>
        <source>There are more entries than a record may hold (%1 MiB of them).</source>
        <translation>Il y a plus d&apos;inscriptions qu&apos;un carnet n&apos;en admet (%1 Mio).</translation>
    </message>
    <message>
        <source>Its attachment has another size than the same one before.</source>
        <translation>Sa pièce jointe n&apos;a pas la même taille que la même plus haut.</translation>
    </message>
    <message>
        <source>there are more than a million empty lines: this is not a ledger.</source>
        <translation>il y a plus d&apos;un million de lignes vides&#xa0;: ce n&apos;est pas un registre.</translation>
    </message>
    <message>
        <source>%1 does not hold a single entry: name the text of a ledger.</source>
        <translation>%1 ne contient pas une seule inscription&#xa0;: nommer le texte d&apos;un registre.</translation>
    </message>
    <message>
        <source>%1 does not fit its sum in %2: it was cut off or altered after it was handed over. Ask for it again.</source>
        <translation>%1 ne correspond pas à sa somme dans %2&#xa0;: il a été coupé ou modifié après la remise. Le redemander.</translation>
    </message>
    <message>
        <source>The folder %1 exists already, and holds other files than an export that was cut off would leave: choose another name.</source>
        <translation>Le répertoire %1 existe déjà, et contient d&apos;autres fichiers que n&apos;en laisserait un export interrompu&#xa0;: choisir un autre nom.</translation>
    </message>
    <message>
        <source>%1 can only be read: its name or its folder&apos;s holds bytes that are not text (not UTF-8). Rename it to write to it.</source>
        <translation>%1 ne peut être que lu&#xa0;: son nom ou celui de son répertoire contient des octets qui ne sont pas du texte (pas de l&apos;UTF-8). Le renommer pour y écrire.</translation>
    </message>
    <message>
        <source>it is not a JPEG, PNG, WebP or HEIF picture</source>
        <translation>ce n&apos;est pas une image JPEG, PNG, WebP ou HEIF</translation>
    </message>
    <message>
        <source>it has too many pixels</source>
        <translation>elle a trop de pixels</translation>
    </message>
    <message>
        <source>pictures of the kind %1 cannot be read on this computer</source>
        <translation>les images du type %1 ne peuvent pas être lues sur cet ordinateur</translation>
    </message>
    <message>
        <source>“%1” cannot be taken: %2. Save it as JPEG or PNG and add that.</source>
        <translation>«&#xa0;%1&#xa0;» ne peut pas être pris&#xa0;: %2. L&apos;enregistrer en JPEG ou PNG et l&apos;ajouter.</translation>
    </message>
    <message>
        <source>Entry %1 says from what this record was salvaged: that stays.</source>
        <translation>L&apos;inscription %1 dit de quoi ce carnet a été récupéré&#xa0;: elle reste.</translation>
    </message>
    <message>
        <source>Such an entry is made by salvaging a damaged record, and in no other way.</source>
        <translation>Une telle inscription naît de la récupération d&apos;un carnet endommagé, et d&apos;aucune autre façon.</translation>
    </message>
    <message>
        <source>The cycles of %1 are counts of pulls, at most %2 and not negative.</source>
        <translation>Les cycles de %1 sont des nombres de serrages, %2 au plus et non négatifs.</translation>
    </message>
    <message>
        <source>%1 is tightened by torque and angle: give both, as 40 / 90.</source>
        <translation>%1 se serre au couple et à l&apos;angle&#xa0;: donner les deux, comme 40 / 90.</translation>
    </message>
    <message>
        <source>The salvage of “%1” carries no proper SHA-256 hash or size.</source>
        <translation>La récupération de «&#xa0;%1&#xa0;» n&apos;a pas d&apos;empreinte SHA-256 ou de taille correcte.</translation>
    </message>
    <message>
        <source>the name of the file that was salvaged</source>
        <translation>le nom du fichier récupéré</translation>
    </message>
    <message>
        <source>This ledger strikes and closes too often for its gates to be checked.</source>
        <translation>Ce registre biffe et ferme trop souvent pour que ses accès puissent être vérifiés.</translation>
    </message>
    <message>
        <source>This build was signed off in entry %1.</source>
        <translation>Ce montage a été visé à l&apos;inscription %1.</translation>
    </message>
    <message>
        <source>Entry %1 was struck already.</source>
        <translation>L&apos;inscription %1 a déjà été biffée.</translation>
    </message>
    <message>
        <source>Entry %1 needs entry %2: %3</source>
        <translation>L&apos;inscription %1 a besoin de l&apos;inscription %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>last seal</source>
        <translation>dernier sceau</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdu</translation>
    </message>
    <message>
        <source>unsealed</source>
        <translation>descellé</translation>
    </message>
    <message>
        <source>An entry that is made now gets its number, time and seal here: leave “%1” out. A ledger that has them is imported into a record of its own.</source>
        <translation>Une inscription faite maintenant reçoit ici son numéro, son heure et son sceau&#xa0;: omettre «&#xa0;%1&#xa0;». Un registre qui les a s&apos;importe dans son propre carnet.</translation>
    </message>
    <message>
        <source>“%1” of an entry must be one line without tabs: “%2” is not.</source>
        <translation>«&#xa0;%1&#xa0;» d&apos;une inscription doit tenir sur une ligne sans tabulations&#xa0;: «&#xa0;%2&#xa0;» non.</translation>
    </message>
    <message>
        <source>“%1” holds a character that cannot be seen (%2) in “%3”: type it again.</source>
        <translation>«&#xa0;%1&#xa0;» contient un caractère invisible (%2) dans «&#xa0;%3&#xa0;»&#xa0;: le taper de nouveau.</translation>
    </message>
    <message>
        <source>Entry %1 (%2) is older than entry %3 (%4): look at the clock.</source>
        <translation>L&apos;inscription %1 (%2) est plus ancienne que l&apos;inscription %3 (%4)&#xa0;: vérifier l&apos;horloge.</translation>
    </message>
    <message>
        <source>Entry %1 (%2) lies in the future: look at the clock.</source>
        <translation>L&apos;inscription %1 (%2) est dans le futur&#xa0;: vérifier l&apos;horloge.</translation>
    </message>
    <message>
        <source>This is not JSON: “%1” does not belong at byte %2.</source>
        <translation>Ce n&apos;est pas du JSON&#xa0;: «&#xa0;%1&#xa0;» n&apos;a pas sa place à l&apos;octet %2.</translation>
    </message>
    <message>
        <source>This is not JSON: it ends too early, at byte %1.</source>
        <translation>Ce n&apos;est pas du JSON&#xa0;: il finit trop tôt, à l&apos;octet %1.</translation>
    </message>
    <message>
        <source>The member “%1” is given twice: leave one of them out.</source>
        <translation>Le membre «&#xa0;%1&#xa0;» est donné deux fois&#xa0;: en omettre un.</translation>
    </message>
    <message>
        <source>This JSON is nested more than %1 deep.</source>
        <translation>Ce JSON est imbriqué sur plus de %1 niveaux.</translation>
    </message>
    <message>
        <source>This is not JSON: the text at byte %1 is not UTF-8.</source>
        <translation>Ce n&apos;est pas du JSON&#xa0;: le texte à l&apos;octet %1 n&apos;est pas de l&apos;UTF-8.</translation>
    </message>
    <message>
        <source>The text at byte %1 holds half a character (%2): type it again.</source>
        <translation>Le texte à l&apos;octet %1 contient un demi-caractère (%2)&#xa0;: le taper de nouveau.</translation>
    </message>
    <message>
        <source>%1 keeps its journal in another way (%2) than a record does: salvage its entries into a new file (caprail salvage FILE OUT).</source>
        <translation>%1 tient son journal autrement (%2) qu&apos;un carnet&#xa0;: récupérer ses inscriptions dans un nouveau fichier (caprail salvage FICHIER NOUVEAU).</translation>
    </message>
    <message>
        <source>%1 is damaged in its first bytes: salvage what can be read into a new file (caprail salvage FILE OUT).</source>
        <translation>%1 est endommagé dans ses premiers octets&#xa0;: récupérer ce qui est lisible dans un nouveau fichier (caprail salvage FICHIER NOUVEAU).</translation>
    </message>
    <message>
        <source>%1 is damaged (%2): salvage what can be read into a new file (caprail salvage FILE OUT).</source>
        <translation>%1 est endommagé (%2)&#xa0;: récupérer ce qui est lisible dans un nouveau fichier (caprail salvage FICHIER NOUVEAU).</translation>
    </message>
    <message>
        <source>A record cannot begin with the attachment “%1”: add it afterwards.</source>
        <translation>Un carnet ne peut pas commencer par la pièce jointe «&#xa0;%1&#xa0;»&#xa0;: l&apos;ajouter ensuite.</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Fichier</translation>
    </message>
    <message>
        <source>the marked thickness</source>
        <translation>l&apos;épaisseur marquée</translation>
    </message>
    <message>
        <source>the shim&apos;s thickness</source>
        <translation>l&apos;épaisseur de la cale</translation>
    </message>
    <message>
        <source>build %1 · %2</source>
        <translation>montage %1 · %2</translation>
    </message>
    <message>
        <source>Steps: %1</source>
        <translation>Étapes&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: K = %2, μ = %3 (%4)</source>
        <translation>%1&#xa0;: K = %2, μ = %3 (%4)</translation>
    </message>
    <message>
        <source>Preload, short form: %1</source>
        <translation>Précharge, formule courte&#xa0;: %1</translation>
    </message>
    <message>
        <source>Preload, long form: %1</source>
        <translation>Précharge, formule longue&#xa0;: %1</translation>
    </message>
    <message>
        <source>Share of proof load: %1 (%2 to %3 with ± %4 % scatter)</source>
        <translation>Part de la charge d&apos;épreuve&#xa0;: %1 (%2 à %3 avec ± %4&#xa0;% de dispersion)</translation>
    </message>
    <message>
        <source>No torque is given: there is nothing to work out a preload from.</source>
        <translation>Aucun couple n&apos;est donné&#xa0;: il n&apos;y a rien d&apos;où calculer une précharge.</translation>
    </message>
    <message>
        <source>By torque and angle: what follows is the preload before the angle.</source>
        <translation>Au couple et à l&apos;angle&#xa0;: ce qui suit est la précharge avant l&apos;angle.</translation>
    </message>
    <message>
        <source>the wrench&apos;s length</source>
        <translation>la longueur de la clé</translation>
    </message>
    <message>
        <source>the extension&apos;s length</source>
        <translation>la longueur de la rallonge</translation>
    </message>
    <message>
        <source>the extension&apos;s angle</source>
        <translation>l&apos;angle de la rallonge</translation>
    </message>
    <message>
        <source>the clearance</source>
        <translation>le dégagement</translation>
    </message>
    <message>
        <source>offset</source>
        <translation>décalage</translation>
    </message>
    <message>
        <source>The places that have a residual cannot tell %1: that takes two caps on each side.</source>
        <translation>Les endroits qui ont un résidu ne disent pas&#xa0;: %1. Il y faut deux chapeaux de chaque côté.</translation>
    </message>
    <message>
        <source>There is a study %1 already: give this one the next number.</source>
        <translation>Il y a déjà une étude %1&#xa0;: donner à celle-ci le numéro suivant.</translation>
    </message>
    <message>
        <source>whose feel is tried</source>
        <translation>de qui le toucher est éprouvé</translation>
    </message>
    <message>
        <source>the straightedge</source>
        <translation>la règle</translation>
    </message>
    <message>
        <source>There is no study %1 of the feel: begin it first.</source>
        <translation>Il n&apos;y a pas d&apos;étude %1 du toucher&#xa0;: la commencer d&apos;abord.</translation>
    </message>
    <message>
        <source>a step</source>
        <translation>une marche</translation>
    </message>
    <message>
        <source>No value could pass with these instruments.</source>
        <translation>Aucune valeur ne pourrait passer avec ces instruments.</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>smallest clearance</source>
        <translation>plus petit jeu</translation>
    </message>
    <message>
        <source>largest clearance</source>
        <translation>plus grand jeu</translation>
    </message>
    <message>
        <source>Clearance from %1 %2 to %3 %4, %5.</source>
        <translation>Jeu de %1 %2 à %3 %4, %5.</translation>
    </message>
    <message>
        <source>One place is too wide and one too tight: look at journal and housing.</source>
        <translation>Un endroit est trop large et un trop serré&#xa0;: revoir portée et logement.</translation>
    </message>
    <message>
        <source>Read the worst place again: more readings of one place, or a finer gauge, make the uncertainty smaller. They do not excuse a bad place.</source>
        <translation>Relire le pire endroit&#xa0;: plus de lectures d&apos;un même endroit, ou un instrument plus fin, réduisent l&apos;incertitude. Elles n&apos;excusent pas un mauvais endroit.</translation>
    </message>
    <message>
        <source>The fastener did not have its full clamp when the bore was read: take the cap off and measure again, or a person accepts the clearance again with a reason.</source>
        <translation>La fixation n&apos;avait pas tout son effort de serrage quand l&apos;alésage a été lu&#xa0;: déposer le chapeau et mesurer de nouveau, ou une personne accepte à nouveau le jeu avec un motif.</translation>
    </message>
    <message>
        <source>Shim %1 does not lie in the stack at %2: name those that were taken out of it.</source>
        <translation>La cale %1 n&apos;est pas dans la pile au %2&#xa0;: nommer celles qui en ont été retirées.</translation>
    </message>
    <message>
        <source>Shim %1 was never measured: measure it with the micrometer before it is exchanged.</source>
        <translation>La cale %1 n&apos;a jamais été mesurée&#xa0;: la mesurer au micromètre avant de l&apos;échanger.</translation>
    </message>
    <message>
        <source>bracket</source>
        <translation>encadrement</translation>
    </message>
    <message>
        <source>not proven</source>
        <translation>non prouvé</translation>
    </message>
    <message>
        <source>%1 of %2 answers: go on.</source>
        <translation>%1 réponses sur %2&#xa0;: continuer.</translation>
    </message>
    <message>
        <source>The steps came in order of height, so each could be guessed: try them again in random order.</source>
        <translation>Les marches sont venues par ordre de hauteur, et chacune pouvait se deviner&#xa0;: les essayer de nouveau au hasard.</translation>
    </message>
    <message>
        <source>The answers put no bound to the step that is felt: try higher and lower steps, and more of them.</source>
        <translation>Les réponses ne bornent pas la marche qui se sent&#xa0;: essayer des marches plus hautes et plus basses, et davantage.</translation>
    </message>
    <message>
        <source>residual at %1</source>
        <translation>résidu au %1</translation>
    </message>
    <message>
        <source>Twist %1.</source>
        <translation>Gauchissement %1.</translation>
    </message>
    <message>
        <source>Plan the stacks for least twist, or know the residuals better by bracketed rechecks.</source>
        <translation>Planifier les piles pour le moindre gauchissement, ou mieux connaître les résidus par des recontrôles encadrés.</translation>
    </message>
    <message>
        <source>No reading mends a shape: have the journal ground, or another crank.</source>
        <translation>Aucune lecture ne répare une forme&#xa0;: faire rectifier la portée, ou prendre un autre vilebrequin.</translation>
    </message>
    <message>
        <source>Read the places that differ most again: more readings of one place make the uncertainty smaller.</source>
        <translation>Relire les endroits qui diffèrent le plus&#xa0;: plus de lectures d&apos;un même endroit réduisent l&apos;incertitude.</translation>
    </message>
    <message>
        <source>Look at the shape, and accept it by the new numbers with a reason.</source>
        <translation>Regarder la forme, et l&apos;accepter d&apos;après les nouveaux chiffres avec un motif.</translation>
    </message>
    <message>
        <source>Taper of journal %1</source>
        <translation>Conicité de la portée %1</translation>
    </message>
    <message>
        <source>Out-of-round of journal %1</source>
        <translation>Ovalisation de la portée %1</translation>
    </message>
    <message>
        <source>Strike the reading that cannot be right, and measure that term again.</source>
        <translation>Biffer la lecture qui ne peut pas être juste, et mesurer ce terme de nouveau.</translation>
    </message>
    <message>
        <source>The uncertainty of the residuals is not known, so the plan aims at the middle of the band.</source>
        <translation>L&apos;incertitude des résidus n&apos;est pas connue&#xa0;: le plan vise donc le milieu de la plage.</translation>
    </message>
    <message>
        <source>With ± %1 no residual could be proven by arithmetic, so the plan aims at the middle of the band: prove the stacks by bracketed rechecks.</source>
        <translation>Avec ± %1, aucun résidu ne pourrait être prouvé par le calcul&#xa0;: le plan vise donc le milieu de la plage&#xa0;; prouver les piles par des recontrôles encadrés.</translation>
    </message>
    <message>
        <source>After the movement the gap at %1 should lie within %2, and %3 does not: read it again, or type ! behind it if it is really so.</source>
        <translation>Après le mouvement, l&apos;interstice au %1 devrait être dans %2, et %3 ne l&apos;est pas&#xa0;: le relire, ou taper&#xa0;! derrière s&apos;il en est vraiment ainsi.</translation>
    </message>
    <message>
        <source>%1 at %2 is far from the pass before it, %3, but fits %4: look whether left and right were mixed up, or type ! behind it if it is really so.</source>
        <translation>%1 au %2 est loin de la passe d&apos;avant, %3, mais va à %4&#xa0;: voir si gauche et droite ont été confondues, ou taper&#xa0;! derrière s&apos;il en est vraiment ainsi.</translation>
    </message>
    <message>
        <source>%1 at %2 is far from the pass before it, %3: read it again, or type ! behind it if it is really so.</source>
        <translation>%1 au %2 est loin de la passe d&apos;avant, %3&#xa0;: relire, ou taper&#xa0;! derrière s&apos;il en est vraiment ainsi.</translation>
    </message>
    <message>
        <source>This part is at %1, the other was at %2: let both come to one temperature and measure again, or type ! behind it if it is really so.</source>
        <translation>Cette pièce est à %1, l&apos;autre était à %2&#xa0;: les laisser venir à une même température et mesurer de nouveau, ou taper&#xa0;! derrière s&apos;il en est vraiment ainsi.</translation>
    </message>
    <message>
        <source>%1 lies outside the range of %2: use a wrench that reaches it, or type ! behind it if it is really so.</source>
        <translation>%1 est hors de l&apos;étendue de %2&#xa0;: prendre une clé qui l&apos;atteint, ou taper&#xa0;! derrière s&apos;il en est vraiment ainsi.</translation>
    </message>
    <message>
        <source>Or bracket the recheck: with shims exchanged it must rock, and be loose.</source>
        <translation>Ou encadrer le recontrôle&#xa0;: cales échangées, la règle doit basculer, puis être libre.</translation>
    </message>
    <message>
        <source>The arithmetic says %1 %2, which is impossible.</source>
        <translation>Le calcul dit %1 %2, ce qui est impossible.</translation>
    </message>
    <message>
        <source>A bore is measured with its cap at full torque: tighten %1 to what is specified first.</source>
        <translation>Un alésage se mesure avec son chapeau au couple complet&#xa0;: serrer d&apos;abord %1 comme prescrit.</translation>
    </message>
    <message>
        <source>What does not go must be more than what goes, %1: give the sum that was tried.</source>
        <translation>Ce qui ne passe pas doit être plus que ce qui passe, %1&#xa0;: donner la somme essayée.</translation>
    </message>
    <message>
        <source>A gap</source>
        <translation>Un interstice</translation>
    </message>
    <message>
        <source>This fit</source>
        <translation>Cet ajustement</translation>
    </message>
    <message>
        <source>A verify round</source>
        <translation>Une tournée de vérification</translation>
    </message>
    <message>
        <source>The trial fit</source>
        <translation>Le montage à blanc</translation>
    </message>
    <message>
        <source>The exchange named as thicker is not thicker: look at its shims.</source>
        <translation>L&apos;échange nommé plus épais n&apos;est pas plus épais&#xa0;: revoir ses cales.</translation>
    </message>
    <message>
        <source>The exchange named as thinner is not thinner: look at its shims.</source>
        <translation>L&apos;échange nommé plus mince n&apos;est pas plus mince&#xa0;: revoir ses cales.</translation>
    </message>
    <message>
        <source>Say why the values may be accepted: a reason is required.</source>
        <translation>Dire pourquoi les valeurs peuvent être acceptées&#xa0;: un motif est exigé.</translation>
    </message>
    <message>
        <source>The crank is in already.</source>
        <translation>Le vilebrequin est déjà posé.</translation>
    </message>
    <message>
        <source>The crank is not in.</source>
        <translation>Le vilebrequin n&apos;est pas posé.</translation>
    </message>
    <message>
        <source>A limit of error is more than zero: take it from the certificate, or leave it empty while it is not known.</source>
        <translation>Une erreur maximale est supérieure à zéro&#xa0;: la prendre dans le certificat, ou la laisser vide tant qu&apos;elle est inconnue.</translation>
    </message>
    <message>
        <source>%1 is a %2, which cannot do this: name the instrument that was used.</source>
        <translation>%1 (%2) ne peut pas faire cela&#xa0;: nommer l&apos;instrument qui a servi.</translation>
    </message>
    <message>
        <source>The crank is laid in: a main&apos;s bore and journal are measured before. Lift it out first, and enter that.</source>
        <translation>Le vilebrequin est posé&#xa0;: l&apos;alésage et la portée d&apos;un palier se mesurent avant. Le sortir d&apos;abord, et l&apos;inscrire.</translation>
    </message>
    <message>
        <source>%1 comes after the crank is laid in and its caps are at torque: enter that first.</source>
        <translation>%1 vient après la pose du vilebrequin, chapeaux au couple&#xa0;: inscrire cela d&apos;abord.</translation>
    </message>
    <message>
        <source>The shells&apos; thickness cannot be below zero: measure them at the crown.</source>
        <translation>L&apos;épaisseur des coussinets ne peut pas être inférieure à zéro&#xa0;: les mesurer au sommet.</translation>
    </message>
    <message>
        <source>corrects</source>
        <translation>corrige</translation>
    </message>
    <message>
        <source>does not go</source>
        <translation>ne passe pas</translation>
    </message>
    <message>
        <source>felt</source>
        <translation>senti</translation>
    </message>
    <message>
        <source>height</source>
        <translation>hauteur</translation>
    </message>
    <message>
        <source>is in</source>
        <translation>est posé</translation>
    </message>
    <message>
        <source>part temperature</source>
        <translation>température de la pièce</translation>
    </message>
    <message>
        <source>set up</source>
        <translation>installation</translation>
    </message>
    <message>
        <source>set with</source>
        <translation>réglé avec</translation>
    </message>
    <message>
        <source>study</source>
        <translation>étude</translation>
    </message>
    <message>
        <source>temperature spread</source>
        <translation>écart de température</translation>
    </message>
    <message>
        <source>thicker felt</source>
        <translation>plus épais, senti</translation>
    </message>
    <message>
        <source>thicker in</source>
        <translation>plus épais, posé</translation>
    </message>
    <message>
        <source>thicker out</source>
        <translation>plus épais, retiré</translation>
    </message>
    <message>
        <source>thinner felt</source>
        <translation>plus mince, senti</translation>
    </message>
    <message>
        <source>thinner in</source>
        <translation>plus mince, posé</translation>
    </message>
    <message>
        <source>thinner out</source>
        <translation>plus mince, retiré</translation>
    </message>
    <message>
        <source>whose</source>
        <translation>de qui</translation>
    </message>
    <message>
        <source>“%1” was typed as “%2”, but %3 is stored with it: one of them is wrong.</source>
        <translation>«&#xa0;%1&#xa0;» a été tapé «&#xa0;%2&#xa0;», mais %3 est enregistré avec&#xa0;: l&apos;un des deux est faux.</translation>
    </message>
    <message>
        <source>“%1” cannot be read as “%2”: type the value with its unit.</source>
        <translation>«&#xa0;%1&#xa0;» ne peut pas être lu comme «&#xa0;%2&#xa0;»&#xa0;: taper la valeur avec son unité.</translation>
    </message>
    <message>
        <source>%1 is not plausible for “%2”, which is expected within %3 to %4: correct it, or type ! behind it if it is really so.</source>
        <translation>%1 n&apos;est pas plausible pour «&#xa0;%2&#xa0;», attendu de %3 à %4&#xa0;: corriger, ou taper&#xa0;! derrière s&apos;il en est vraiment ainsi.</translation>
    </message>
    <message>
        <source>%1, between people</source>
        <translation>%1, entre personnes</translation>
    </message>
    <message>
        <source>%1, resolution</source>
        <translation>%1, résolution</translation>
    </message>
    <message>
        <source>%1, temperature</source>
        <translation>%1, température</translation>
    </message>
    <message>
        <source>leaves of %1</source>
        <translation>lames de %1</translation>
    </message>
    <message>
        <source>gap, between what goes and what does not</source>
        <translation>interstice, entre ce qui passe et ce qui ne passe pas</translation>
    </message>
    <message>
        <source>The band has no width to hold a gauge against: set both its ends.</source>
        <translation>La plage n&apos;a pas de largeur à laquelle comparer un instrument&#xa0;: fixer ses deux bornes.</translation>
    </message>
    <message>
        <source>It tells %1 class of places apart.</source>
        <translation>Il distingue %1 classe d&apos;endroits.</translation>
    </message>
    <message>
        <source>It tells %1 classes of places apart.</source>
        <translation>Il distingue %1 classes d&apos;endroits.</translation>
    </message>
    <message>
        <source>Of the answers at one step, none or more than all are counted: look at them.</source>
        <translation>Parmi les réponses à une marche, aucune ou plus que toutes sont comptées&#xa0;: les revoir.</translation>
    </message>
    <message>
        <source>Answers at two different steps or more are needed.</source>
        <translation>Il faut des réponses à deux marches différentes ou plus.</translation>
    </message>
    <message>
        <source>One step parts all answers, so their spread is smaller than the steps tried can show: try steps between.</source>
        <translation>Une seule marche sépare toutes les réponses, et leur étendue est donc plus petite que ce que les marches essayées peuvent montrer&#xa0;: essayer des marches entre elles.</translation>
    </message>
    <message>
        <source>Nothing was measured yet.</source>
        <translation>Rien n&apos;a encore été mesuré.</translation>
    </message>
    <message>
        <source>± not known, at least %1.</source>
        <translation>± inconnu, au moins %1.</translation>
    </message>
    <message>
        <source>%1 is a difference: type it in degrees Celsius, like 2.8.</source>
        <translation>%1 est une différence&#xa0;: la taper en degrés Celsius, comme 2.8.</translation>
    </message>
    <message>
        <source>A group of places has a name of its own, lists its places and names no ring; any other group has neither name nor list.</source>
        <translation>Un groupe d&apos;endroits a un nom à lui, liste ses endroits et ne nomme pas de rangée&#xa0;; tout autre groupe n&apos;a ni nom ni liste.</translation>
    </message>
    <message>
        <source>The group lists %1, which is not of its kind, or not on this engine: take it out.</source>
        <translation>Le groupe liste %1, qui n&apos;est pas de son type, ou pas sur ce moteur&#xa0;: à retirer.</translation>
    </message>
    <message>
        <source>The group lists %1 twice: name each place once.</source>
        <translation>Le groupe liste %1 deux fois&#xa0;: nommer chaque endroit une fois.</translation>
    </message>
    <message>
        <source>The sequence names %1, which is not among the places of this group: take it out.</source>
        <translation>L&apos;ordre nomme %1, qui n&apos;est pas parmi les endroits de ce groupe&#xa0;: à retirer.</translation>
    </message>
    <message>
        <source>The clamp of %1 is worked out from its thread, which is not known: set its group first.</source>
        <translation>L&apos;effort de serrage de %1 se calcule d&apos;après son filetage, qui est inconnu&#xa0;: fixer d&apos;abord son groupe.</translation>
    </message>
    <message>
        <source>Its cap likely went down by no more than %1.</source>
        <translation>Son chapeau est sans doute descendu de %1 au plus.</translation>
    </message>
    <message>
        <source>%1 is not at its specified value.</source>
        <translation>%1 n&apos;est pas à sa valeur prescrite.</translation>
    </message>
    <message>
        <source>Enter what is missing, or tighten %1 with a wrench that fits.</source>
        <translation>Inscrire ce qui manque, ou serrer %1 avec une clé qui convient.</translation>
    </message>
    <message>
        <source>Take the stacks off and verify every main-cap and rod fastener: by its torque, its length or its witness mark, as its group says.</source>
        <translation>Retirer les piles et vérifier chaque fixation de chapeau et de bielle&#xa0;: par son couple, sa longueur ou son repère, comme le dit son groupe.</translation>
    </message>
    <message>
        <source>It counts for nothing.</source>
        <translation>Cela ne compte pour rien.</translation>
    </message>
    <message>
        <source>Verify %1 once more as it is specified.</source>
        <translation>Vérifier %1 encore une fois comme prescrit.</translation>
    </message>
    <message>
        <source>Verify round %1 goes on with %2.</source>
        <translation>La tournée de vérification %1 continue avec %2.</translation>
    </message>
    <message>
        <source>%1 is far over the %2 that is specified for %3: look at the wrench, or type ! behind it if it is really so.</source>
        <translation>%1 dépasse de loin les %2 prescrits pour %3&#xa0;: regarder la clé, ou taper&#xa0;! derrière s&apos;il en est vraiment ainsi.</translation>
    </message>
    <message>
        <source>what is specified, %1, goes to %2 of proof at the lower friction, torsion counted: lower it, or say who takes it and why</source>
        <translation>la prescription, %1, va à %2 de l&apos;épreuve au frottement bas, torsion comprise&#xa0;: l&apos;abaisser, ou dire qui l&apos;assume et pourquoi</translation>
    </message>
    <message>
        <source>it is used once, and was now tightened %1 times: fit a new one, or say who takes it and why</source>
        <translation>elle est à usage unique, et vient d&apos;être serrée %1 fois&#xa0;: en monter une neuve, ou dire qui l&apos;assume et pourquoi</translation>
    </message>
    <message>
        <source>%1 tightened %2, and the shop&apos;s rule asks for a second person to verify: let somebody else make the round.</source>
        <translation>%1 a serré %2, et la consigne de l&apos;atelier demande qu&apos;une deuxième personne vérifie&#xa0;: laisser quelqu&apos;un d&apos;autre faire la tournée.</translation>
    </message>
    <message>
        <source>%1 did “%2”, and the shop&apos;s rule asks for a second person to sign off: let somebody else look at it all and sign.</source>
        <translation>%1 a fait «&#xa0;%2&#xa0;», et la consigne de l&apos;atelier demande qu&apos;une deuxième personne vise&#xa0;: laisser quelqu&apos;un d&apos;autre tout regarder et viser.</translation>
    </message>
    <message>
        <source>No torque is specified for %1.</source>
        <translation>Aucun couple n&apos;est prescrit pour %1.</translation>
    </message>
    <message>
        <source>%1 has an outcome without a torque.</source>
        <translation>%1 a un résultat sans couple.</translation>
    </message>
    <message>
        <source>%1 was pulled at %2, and %3 is specified.</source>
        <translation>%1&#xa0;: reprise à %2, et %3 est prescrit.</translation>
    </message>
    <message>
        <source>%1 is verified by its length, and no stretch was read.</source>
        <translation>%1 se vérifie par sa longueur, et aucun allongement n&apos;a été lu.</translation>
    </message>
    <message>
        <source>%1 has a stretch of %2, outside %3 ± %4.</source>
        <translation>%1 a un allongement de %2, hors de %3 ± %4.</translation>
    </message>
    <message>
        <source>No wrench is named for %1.</source>
        <translation>Aucune clé n&apos;est nommée pour %1.</translation>
    </message>
    <message>
        <source>Nothing was known of %1 when it was used.</source>
        <translation>Rien n&apos;était connu de %1 au moment de son emploi.</translation>
    </message>
    <message>
        <source>%1 is a %2, which pulls no torque.</source>
        <translation>%1 (%2) ne donne pas de couple.</translation>
    </message>
    <message>
        <source>The range of %1 is not known.</source>
        <translation>L&apos;étendue de %1 est inconnue.</translation>
    </message>
    <message>
        <source>%1 lies outside the range of %2.</source>
        <translation>%1 est hors de l&apos;étendue de %2.</translation>
    </message>
    <message>
        <source>%1 is verified %2.</source>
        <translation>%1 se vérifie %2.</translation>
    </message>
    <message>
        <source>%1 was tightened and verified by %2, and the shop&apos;s rule asks for a second person.</source>
        <translation>%1&#xa0;: serrage et vérification par %2, et la consigne de l&apos;atelier demande une deuxième personne.</translation>
    </message>
    <message>
        <source>By the numbers it should drag.</source>
        <translation>D&apos;après les chiffres, elle devrait frotter.</translation>
    </message>
    <message>
        <source>%1 must not be pulled again: read its stretch, and enter that.</source>
        <translation>Ne pas resserrer %1&#xa0;: lire son allongement, et l&apos;inscrire.</translation>
    </message>
    <message>
        <source>%1 must not be pulled again: look whether its witness mark still lines up, and enter that.</source>
        <translation>Ne pas resserrer %1&#xa0;: regarder si son repère est encore aligné, et l&apos;inscrire.</translation>
    </message>
    <message>
        <source>A clamp is checked on a fastener that is tight as specified: tighten %1 first.</source>
        <translation>Un effort de serrage se contrôle sur une fixation serrée comme prescrit&#xa0;: serrer d&apos;abord %1.</translation>
    </message>
    <message>
        <source>A grip of %1 cannot be that of a %2: give the length that is clamped, up to %3 diameters.</source>
        <translation>Une longueur serrée de %1 ne peut pas être celle d&apos;un %2&#xa0;: donner la longueur prise, jusqu&apos;à %3 diamètres.</translation>
    </message>
    <message>
        <source>cast iron</source>
        <translation>fonte</translation>
    </message>
    <message>
        <source>nodular iron</source>
        <translation>fonte nodulaire</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>acier</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>aluminium</translation>
    </message>
    <message>
        <source>%1 is not in the list of what a cap is made of: take one of %2.</source>
        <translation>%1 n&apos;est pas dans la liste des matières de chapeau&#xa0;: en prendre une de %2.</translation>
    </message>
    <message>
        <source>A shank of %1 does not go with a %2: give its diameter where it has no thread.</source>
        <translation>Une tige de %1 ne va pas avec un %2&#xa0;: donner son diamètre là où elle n&apos;est pas filetée.</translation>
    </message>
    <message>
        <source>%1 of thread cannot lie within a grip of %2: give the part of the grip that is threaded.</source>
        <translation>%1 de filetage ne tient pas dans une longueur serrée de %2&#xa0;: donner la partie de cette longueur qui est filetée.</translation>
    </message>
    <message>
        <source>The stiffness of a fastener and of what it clamps must be above zero.</source>
        <translation>La raideur d&apos;une fixation et de ce qu&apos;elle serre doit être supérieure à zéro.</translation>
    </message>
    <message>
        <source>thread torque M = F·(P/2π + μt·d2/(2·cos 30°)) = %1</source>
        <translation>couple de filetage M = F·(P/2π + μt·d2/(2·cos 30°)) = %1</translation>
    </message>
    <message>
        <source>σ = %1, τ = 16·M/(π·ds³) = %2, σe = √(σ² + 3τ²) = %3</source>
        <translation>σ = %1, τ = 16·M/(π·ds³) = %2, σe = √(σ² + 3τ²) = %3</translation>
    </message>
    <message>
        <source>Loosening took %1 and tightening %2: a fastener that clamps comes loose at less than it was tightened with.</source>
        <translation>Desserrer a pris %1 et serrer %2&#xa0;: une fixation qui serre se desserre à moins que son serrage.</translation>
    </message>
    <message>
        <source>A torque of %1 gives %2 of the proof load, but at the lower friction and with the torsion of tightening %3, which is more than 90 %: check the value, the lubricant and the grade.</source>
        <translation>Un couple de %1 donne %2 de la charge d&apos;épreuve, mais au frottement bas et avec la torsion du serrage %3, ce qui dépasse 90&#xa0;%&#xa0;: vérifier la valeur, le lubrifiant et la classe.</translation>
    </message>
    <message>
        <source>with torsion: %1 of proof, %2 at the lower friction</source>
        <translation>avec torsion&#xa0;: %1 de l&apos;épreuve, %2 au frottement bas</translation>
    </message>
    <message>
        <source>clamped</source>
        <translation>pièce serrée</translation>
    </message>
    <message>
        <source>grip</source>
        <translation>longueur serrée</translation>
    </message>
    <message>
        <source>group name</source>
        <translation>nom du groupe</translation>
    </message>
    <message>
        <source>is new</source>
        <translation>neuf</translation>
    </message>
    <message>
        <source>is single use</source>
        <translation>usage unique</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>exemplaire</translation>
    </message>
    <message>
        <source>places</source>
        <translation>endroits</translation>
    </message>
    <message>
        <source>second person signs</source>
        <translation>une deuxième personne vise</translation>
    </message>
    <message>
        <source>second person verifies</source>
        <translation>une deuxième personne vérifie</translation>
    </message>
    <message>
        <source>shank</source>
        <translation>tige</translation>
    </message>
    <message>
        <source>stretch tolerance</source>
        <translation>tolérance d&apos;allongement</translation>
    </message>
    <message>
        <source>thread in grip</source>
        <translation>filetage dans la longueur serrée</translation>
    </message>
    <message>
        <source>torque off</source>
        <translation>couple au desserrage</translation>
    </message>
    <message>
        <source>torque on</source>
        <translation>couple au serrage</translation>
    </message>
    <message>
        <source>verified by</source>
        <translation>vérifié par</translation>
    </message>
    <message>
        <source>work</source>
        <translation>travail</translation>
    </message>
    <message>
        <source>The entry “%1” has no member “%2”; it has: %3.</source>
        <translation>L&apos;inscription «&#xa0;%1&#xa0;» n&apos;a pas de membre «&#xa0;%2&#xa0;»&#xa0;; elle a&#xa0;: %3.</translation>
    </message>
    <message>
        <source>The entry “%1” lacks: %2.</source>
        <translation>Il manque à l&apos;inscription «&#xa0;%1&#xa0;»&#xa0;: %2.</translation>
    </message>
    <message>
        <source>torque and angle to yield</source>
        <translation>couple et angle jusqu&apos;à la limite élastique</translation>
    </message>
    <message>
        <source>stud with nut</source>
        <translation>goujon avec écrou</translation>
    </message>
    <message>
        <source>bolt</source>
        <translation>vis</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longueur</translation>
    </message>
    <message>
        <source>witness mark</source>
        <translation>repère</translation>
    </message>
    <message>
        <source>turned</source>
        <translation>tournée</translation>
    </message>
    <message>
        <source>turned over</source>
        <translation>retournée</translation>
    </message>
    <message>
        <source>dressed</source>
        <translation>surfacée</translation>
    </message>
    <message>
        <source>This program knows no entry kind “%1”: “caprail help entries” lists them.</source>
        <translation>Ce programme ne connaît pas le type d&apos;inscription «&#xa0;%1&#xa0;»&#xa0;: «&#xa0;caprail help entries&#xa0;» les énumère.</translation>
    </message>
    <message>
        <source>This program knows no entry kind “%1”; there are: %2.</source>
        <translation>Ce programme ne connaît pas le type d&apos;inscription «&#xa0;%1&#xa0;»&#xa0;; il y a&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The seal of entry %1 does not fit: it, or an entry before it, was altered after it was sealed.</source>
        <translation>Le sceau de l&apos;inscription %1 ne correspond pas&#xa0;: elle, ou une inscription précédente, a été modifiée après avoir été scellée.</translation>
    </message>
    <message>
        <source>Entry %1, %2: %3</source>
        <translation>Inscription %1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1 of the %2 that its specification aims at</source>
        <translation>%1 des %2 que vise sa prescription</translation>
    </message>
    <message>
        <source>There is no such group to split: choose one in the list.</source>
        <translation>Il n&apos;y a pas de tel groupe à scinder&#xa0;: en choisir un dans la liste.</translation>
    </message>
    <message>
        <source>Give the new group a name that no other group of its kind has, as “rear cap”.</source>
        <translation>Donner au nouveau groupe un nom qu&apos;aucun autre groupe de son type n&apos;a, comme «&#xa0;chapeau arrière&#xa0;».</translation>
    </message>
    <message>
        <source>%1 is not of the group that is split: choose places of that group.</source>
        <translation>%1 n&apos;est pas du groupe qui est scindé&#xa0;: choisir des endroits de ce groupe.</translation>
    </message>
    <message>
        <source>Choose some of the %1 places of the group, not none and not all.</source>
        <translation>Choisir quelques-uns des %1 endroits du groupe, ni aucun ni tous.</translation>
    </message>
    <message>
        <source>Only a group that lists its places can be joined back to the wider one.</source>
        <translation>Seul un groupe qui liste ses endroits peut rejoindre le plus large.</translation>
    </message>
    <message>
        <source>No wider group would speak for %1: set the group “%2” for all of its kind first.</source>
        <translation>Aucun groupe plus large ne répondrait de %1&#xa0;: fixer d&apos;abord le groupe «&#xa0;%2&#xa0;» pour tout son type.</translation>
    </message>
    <message>
        <source>this place alone</source>
        <translation>cet endroit seul</translation>
    </message>
    <message>
        <source>its whole cap</source>
        <translation>tout son chapeau</translation>
    </message>
    <message>
        <source>its whole side</source>
        <translation>tout son côté</translation>
    </message>
    <message>
        <source>its whole ring</source>
        <translation>toute sa rangée</translation>
    </message>
    <message>
        <source>No verify round is under way: begin one first.</source>
        <translation>Aucune tournée de vérification n&apos;est en cours&#xa0;: en commencer une d&apos;abord.</translation>
    </message>
    <message>
        <source>With the torsion of tightening: %1 of proof, %2 at the lower friction</source>
        <translation>Avec la torsion du serrage&#xa0;: %1 de l&apos;épreuve, %2 au frottement bas</translation>
    </message>
    <message>
        <source>%1 to keep it turning is more than %2 to start it: give what starts it first.</source>
        <translation>%1 pour le faire tourner est plus que %2 pour le décoller&#xa0;: donner d&apos;abord ce qui le décolle.</translation>
    </message>
    <message>
        <source>A check has 1 to 99 places, or none to withdraw it, not %1.</source>
        <translation>Un contrôle a de 1 à 99 endroits, ou aucun pour le retirer, et non %1.</translation>
    </message>
    <message>
        <source>Say which closing step the check holds, for a check among the steps and only then.</source>
        <translation>Dire quelle étape de fermeture le contrôle bloque, pour un contrôle parmi les étapes et seulement alors.</translation>
    </message>
    <message>
        <source>A measured check has a band, from and to, and the others have none.</source>
        <translation>Un contrôle mesuré a une plage, avec ses deux bornes, et les autres n&apos;en ont pas.</translation>
    </message>
    <message>
        <source>a check</source>
        <translation>un contrôle</translation>
    </message>
    <message>
        <source>what is looked at</source>
        <translation>ce qui est regardé</translation>
    </message>
    <message>
        <source>This record asks no check “%1” at place %2: set it first.</source>
        <translation>Ce carnet ne demande pas de contrôle «&#xa0;%1&#xa0;» à l&apos;endroit %2&#xa0;: le fixer d&apos;abord.</translation>
    </message>
    <message>
        <source>“%1” is answered by %2: give that and nothing else.</source>
        <translation>«&#xa0;%1&#xa0;» se répond ainsi&#xa0;: %2. Donner cela et rien d&apos;autre.</translation>
    </message>
    <message>
        <source>That photo is not in this record: add it first.</source>
        <translation>Cette photo n&apos;est pas dans ce carnet&#xa0;: l&apos;ajouter d&apos;abord.</translation>
    </message>
    <message>
        <source>a reading</source>
        <translation>une lecture</translation>
    </message>
    <message>
        <source>Count the shims by hand, and give three numbers: in the stacks, set aside, left over.</source>
        <translation>Compter les cales à la main, et donner trois nombres&#xa0;: dans les piles, mises de côté, restantes.</translation>
    </message>
    <message>
        <source>A count of shims is not negative, and no kit has so many.</source>
        <translation>Un nombre de cales n&apos;est pas négatif, et aucun assortiment n&apos;en a autant.</translation>
    </message>
    <message>
        <source>%1 + %2 + %3 = %4 shims were counted, and the kit has %5: find what is missing before anything goes on. One left in the engine can destroy it.</source>
        <translation>%1 + %2 + %3 = %4 cales ont été comptées, et l&apos;assortiment en a %5&#xa0;: trouver ce qui manque avant de continuer. Une seule laissée dans le moteur peut le détruire.</translation>
    </message>
    <message>
        <source>%1 + %2 + %3 shims were counted; by the record it is %4 in the stacks, %5 set aside and %6 left over: count again, or correct the record.</source>
        <translation>%1 + %2 + %3 cales ont été comptées&#xa0;; d&apos;après le carnet il y en a %4 dans les piles, %5 mises de côté et %6 restantes&#xa0;: recompter, ou corriger le carnet.</translation>
    </message>
    <message>
        <source>Name the sealant&apos;s product and lot, and give its open time in minutes, as printed on the tube.</source>
        <translation>Nommer le produit et le lot de la pâte à joint, et donner son temps ouvert en minutes, comme imprimé sur le tube.</translation>
    </message>
    <message>
        <source>“%1” comes after “%2”, which does not stand: %3 %4</source>
        <translation>«&#xa0;%1&#xa0;» vient après «&#xa0;%2&#xa0;», qui ne tient pas&#xa0;: %3 %4</translation>
    </message>
    <message>
        <source>“%1” cannot be entered yet: %2</source>
        <translation>«&#xa0;%1&#xa0;» ne peut pas encore être inscrit&#xa0;: %2</translation>
    </message>
    <message>
        <source>Shims are counted back in a step of their own: leave the counts out of “%1”.</source>
        <translation>Les cales se recomptent dans une étape à part&#xa0;: omettre les nombres de «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>Nothing is specified for %1: set its torque before closing begins.</source>
        <translation>Rien n&apos;est prescrit pour %1&#xa0;: fixer son couple avant le début de la fermeture.</translation>
    </message>
    <message>
        <source>The stack of %1 is not back on.</source>
        <translation>La pile de %1 n&apos;est pas remise.</translation>
    </message>
    <message>
        <source>%1 is not at its value since “%2”.</source>
        <translation>%1 n&apos;est pas à sa valeur depuis «&#xa0;%2&#xa0;».</translation>
    </message>
    <message>
        <source>The turning torque (%1) was not read since then.</source>
        <translation>Le couple de rotation (%1) n&apos;a pas été lu depuis.</translation>
    </message>
    <message>
        <source>The sealant&apos;s open time was not entered.</source>
        <translation>Le temps ouvert de la pâte à joint n&apos;a pas été inscrit.</translation>
    </message>
    <message>
        <source>Strike that entry and enter product, lot and open time as printed on the tube.</source>
        <translation>Biffer cette inscription et inscrire produit, lot et temps ouvert comme imprimés sur le tube.</translation>
    </message>
    <message>
        <source>By the entries&apos; times the girdle was lowered before the bead was laid.</source>
        <translation>D&apos;après l&apos;heure des inscriptions, la plaque a été abaissée avant que le cordon ne soit appliqué.</translation>
    </message>
    <message>
        <source>The girdle was lowered %1 after the bead was laid; its open time is %2 min.</source>
        <translation>La plaque a été abaissée %1 après la pose du cordon&#xa0;; son temps ouvert est de %2 min.</translation>
    </message>
    <message>
        <source>Lift the girdle, clean the bead off, lay it again and enter that.</source>
        <translation>Relever la plaque, essuyer le cordon, en appliquer un neuf et l&apos;inscrire.</translation>
    </message>
    <message>
        <source>The kit or the stacks were changed after the shims were counted.</source>
        <translation>L&apos;assortiment ou les piles ont été changés après le comptage des cales.</translation>
    </message>
    <message>
        <source>Count them again, and enter it.</source>
        <translation>Les recompter, et l&apos;inscrire.</translation>
    </message>
    <message>
        <source>Do that, and enter the step again.</source>
        <translation>Faire cela, et inscrire l&apos;étape de nouveau.</translation>
    </message>
    <message>
        <source>“%1” was done again after it.</source>
        <translation>«&#xa0;%1&#xa0;» a été refait ensuite.</translation>
    </message>
    <message>
        <source>Do this step again, and enter it.</source>
        <translation>Refaire cette étape, et l&apos;inscrire.</translation>
    </message>
    <message>
        <source>Entry %1 was made with the girdle off, after this step.</source>
        <translation>L&apos;inscription %1 a été faite plaque déposée, après cette étape.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Closing, “%1”: %2</source>
        <translation>Fermeture, «&#xa0;%1&#xa0;»&#xa0;: %2</translation>
    </message>
    <message>
        <source>Closing: %1.</source>
        <translation>Fermeture&#xa0;: %1.</translation>
    </message>
    <message>
        <source>There is no value, or no band to hold it against.</source>
        <translation>Il n&apos;y a pas de valeur, ou pas de plage à laquelle la comparer.</translation>
    </message>
    <message>
        <source>Strike that answer, and measure it.</source>
        <translation>Biffer cette réponse, et mesurer.</translation>
    </message>
    <message>
        <source>Put it right, and measure it again.</source>
        <translation>Remettre en ordre, et mesurer de nouveau.</translation>
    </message>
    <message>
        <source>Measure it with a better instrument, or put it right.</source>
        <translation>Mesurer avec un meilleur instrument, ou remettre en ordre.</translation>
    </message>
    <message>
        <source>Photo taken.</source>
        <translation>Photo prise.</translation>
    </message>
    <message>
        <source>Its photo is not in this record.</source>
        <translation>Sa photo n&apos;est pas dans ce carnet.</translation>
    </message>
    <message>
        <source>Add the photo, and answer again.</source>
        <translation>Ajouter la photo, et répondre de nouveau.</translation>
    </message>
    <message>
        <source>Yes.</source>
        <translation>Oui.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Non.</translation>
    </message>
    <message>
        <source>Put it right, and answer again.</source>
        <translation>Remettre en ordre, et répondre de nouveau.</translation>
    </message>
    <message>
        <source>Take the photo.</source>
        <translation>Prendre la photo.</translation>
    </message>
    <message>
        <source>Look, and answer.</source>
        <translation>Regarder, et répondre.</translation>
    </message>
    <message>
        <source>Look again, and answer.</source>
        <translation>Regarder encore, et répondre.</translation>
    </message>
    <message>
        <source>%1 cannot well be the %2, which is expected within %3 to %4: look whether it belongs to another term, or type ! behind it if it is really so.</source>
        <translation>%1 ne peut guère être&#xa0;: %2, attendu de %3 à %4. Voir si cela appartient à un autre terme, ou taper&#xa0;! derrière s&apos;il en est vraiment ainsi.</translation>
    </message>
    <message>
        <source>%1 is far from the reading before it, %2, of the %3: measure it again, or type ! behind it if it is really so.</source>
        <translation>%1 est loin de la lecture d&apos;avant, %2 (%3)&#xa0;: mesurer de nouveau, ou taper&#xa0;! derrière s&apos;il en est vraiment ainsi.</translation>
    </message>
    <message>
        <source>Lay the girdle on its stacks, bring its nuts to torque, and look.</source>
        <translation>Poser la plaque sur ses piles, amener ses écrous au couple, et regarder.</translation>
    </message>
    <message>
        <source>The girdle&apos;s nuts were not at torque.</source>
        <translation>Les écrous de plaque n&apos;étaient pas au couple.</translation>
    </message>
    <message>
        <source>Bring the girdle&apos;s nuts to torque, and look again.</source>
        <translation>Amener les écrous de plaque au couple, et regarder encore.</translation>
    </message>
    <message>
        <source>Girdle orientation</source>
        <translation>Orientation de la plaque</translation>
    </message>
    <message>
        <source>Record the girdle&apos;s orientation again.</source>
        <translation>Inscrire de nouveau l&apos;orientation de la plaque.</translation>
    </message>
    <message>
        <source>%1 to start it, %2 to turn it.</source>
        <translation>%1 pour décoller, %2 pour tourner.</translation>
    </message>
    <message>
        <source>There is no turning torque before the girdle to hold it against.</source>
        <translation>Il n&apos;y a pas de couple de rotation avant la plaque auquel comparer.</translation>
    </message>
    <message>
        <source>Read the turning torque before the girdle.</source>
        <translation>Lire le couple de rotation avant la plaque.</translation>
    </message>
    <message>
        <source>Strike that reading, and read it again.</source>
        <translation>Biffer cette lecture, et relire.</translation>
    </message>
    <message>
        <source>That limit is common practice; nobody confirmed it for this engine.</source>
        <translation>Cette limite est d&apos;usage courant&#xa0;; personne ne l&apos;a confirmée pour ce moteur.</translation>
    </message>
    <message>
        <source>The girdle binds: lift it, look at the stacks and at each throw, and read again.</source>
        <translation>La plaque coince&#xa0;: la relever, regarder les piles et chaque coude, et relire.</translation>
    </message>
    <message>
        <source>Turning torque, %1</source>
        <translation>Couple de rotation, %1</translation>
    </message>
    <message>
        <source>The turning torque</source>
        <translation>Le couple de rotation</translation>
    </message>
    <message>
        <source>The girdle&apos;s nuts are at torque: the turning torque before the girdle is read with it off. Loosen them first, and enter that.</source>
        <translation>Les écrous de plaque sont au couple&#xa0;: le couple de rotation avant la plaque se lit plaque déposée. Les desserrer d&apos;abord, et l&apos;inscrire.</translation>
    </message>
    <message>
        <source>The turning torque with the girdle</source>
        <translation>Le couple de rotation avec la plaque</translation>
    </message>
    <message>
        <source>%1 counts only with the girdle&apos;s nuts at torque: tighten %2 to what is specified first.</source>
        <translation>%1 ne compte qu&apos;avec les écrous de plaque au couple&#xa0;: serrer d&apos;abord %2 comme prescrit.</translation>
    </message>
    <message>
        <source>no minimum is set</source>
        <translation>aucun minimum n&apos;est fixé</translation>
    </message>
    <message>
        <source>A turning torque, and the rise that is allowed, are zero or more: look at the readings.</source>
        <translation>Un couple de rotation, et la hausse permise, sont nuls ou positifs&#xa0;: revoir les lectures.</translation>
    </message>
    <message>
        <source>%1 to start it, %2 to turn it: no harder than before.</source>
        <translation>%1 pour décoller, %2 pour tourner&#xa0;: pas plus dur qu&apos;avant.</translation>
    </message>
    <message>
        <source>answer</source>
        <translation>réponse</translation>
    </message>
    <message>
        <source>aside</source>
        <translation>mises de côté</translation>
    </message>
    <message>
        <source>breakaway</source>
        <translation>décollage</translation>
    </message>
    <message>
        <source>dipstick minimum</source>
        <translation>dégagement minimal de la jauge d&apos;huile</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>montées</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>bloque</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>restantes</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lot</translation>
    </message>
    <message>
        <source>own check</source>
        <translation>contrôle propre</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>photo</translation>
    </message>
    <message>
        <source>pickup tube minimum</source>
        <translation>dégagement minimal du tube de crépine</translation>
    </message>
    <message>
        <source>product</source>
        <translation>produit</translation>
    </message>
    <message>
        <source>running</source>
        <translation>rotation</translation>
    </message>
    <message>
        <source>sort</source>
        <translation>genre</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>stade</translation>
    </message>
    <message>
        <source>turning rise</source>
        <translation>hausse du couple de rotation</translation>
    </message>
    <message>
        <source>words</source>
        <translation>libellé</translation>
    </message>
    <message>
        <source>shims counted back</source>
        <translation>cales recomptées</translation>
    </message>
    <message>
        <source>crank turned through two full turns by hand</source>
        <translation>vilebrequin tourné de deux tours complets à la main</translation>
    </message>
    <message>
        <source>before the girdle</source>
        <translation>avant la plaque</translation>
    </message>
    <message>
        <source>girdle at torque</source>
        <translation>plaque au couple</translation>
    </message>
    <message>
        <source>after the pan</source>
        <translation>après le carter</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>oui ou non</translation>
    </message>
    <message>
        <source>the trial fit</source>
        <translation>le montage à blanc</translation>
    </message>
    <message>
        <source>closing</source>
        <translation>la fermeture</translation>
    </message>
    <message>
        <source>a closing step</source>
        <translation>une étape de fermeture</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>Type three counts as 29+1+16: shims in the stacks, set aside, left over.</source>
        <translation>Taper trois nombres comme 29+1+16&#xa0;: cales dans les piles, mises de côté, restantes.</translation>
    </message>
    <message>
        <source>Type product / lot / open time in minutes, as printed on the tube: Grey sealant / 2231-A / 15.</source>
        <translation>Taper produit / lot / temps ouvert en minutes, comme imprimés sur le tube&#xa0;: Pâte grise / 2231-A / 15.</translation>
    </message>
    <message>
        <source>Type two torques as 12 / 8: what starts the crank, and what keeps it turning.</source>
        <translation>Taper deux couples comme 12 / 8&#xa0;: ce qui décolle le vilebrequin, et ce qui le fait tourner.</translation>
    </message>
    <message>
        <source>the turning torque</source>
        <translation>le couple de rotation</translation>
    </message>
    <message>
        <source>the reading</source>
        <translation>la lecture</translation>
    </message>
    <message>
        <source>Add the photo first, with “%1” as its place.</source>
        <translation>Ajouter d&apos;abord la photo, avec «&#xa0;%1&#xa0;» pour endroit.</translation>
    </message>
    <message>
        <source>“%1” is not an answer here: type y for yes, or n for no with what was seen.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas une réponse ici&#xa0;: taper y pour oui, ou n pour non avec ce qui a été vu.</translation>
    </message>
    <message>
        <source>The stack labelled %1 is next: press Enter when it is on.</source>
        <translation>La pile étiquetée %1 est la suivante&#xa0;: appuyer sur Entrée quand elle est posée.</translation>
    </message>
    <message>
        <source>Assembled and checked as recorded.</source>
        <translation>Monté et contrôlé comme inscrit.</translation>
    </message>
    <message>
        <source>There is nothing to enter here now.</source>
        <translation>Il n&apos;y a rien à inscrire ici maintenant.</translation>
    </message>
    <message>
        <source>the stretch of %1</source>
        <translation>l&apos;allongement (%1)</translation>
    </message>
    <message>
        <source>the torque of %1</source>
        <translation>le couple (%1)</translation>
    </message>
    <message>
        <source>the angle of %1</source>
        <translation>l&apos;angle (%1)</translation>
    </message>
    <message>
        <source>Shim %1 was never measured: a step has a known height only of measured ones.</source>
        <translation>La cale %1 n&apos;a jamais été mesurée&#xa0;: une marche n&apos;a de hauteur connue qu&apos;avec des cales mesurées.</translation>
    </message>
    <message>
        <source>Shim %1 is named twice in one step: there is one of it.</source>
        <translation>La cale %1 est nommée deux fois dans une marche&#xa0;: il n&apos;y en a qu&apos;une.</translation>
    </message>
    <message>
        <source>the rests</source>
        <translation>les appuis</translation>
    </message>
    <message>
        <source>Name two steps or more: heights like −0.3 thou, or shims like S014+S022.</source>
        <translation>Nommer deux marches ou plus&#xa0;: des hauteurs comme −0.3 thou, ou des cales comme S014+S022.</translation>
    </message>
    <message>
        <source>nobody can tell how far %1 goes towards proof (%2): name it, or say who takes the specification and why</source>
        <translation>personne ne peut dire jusqu&apos;où %1 va vers l&apos;épreuve (%2)&#xa0;: le nommer, ou dire qui assume la prescription et pourquoi</translation>
    </message>
    <message>
        <source>Entry %1 is a signature: it stays. What is added now is signed by a new one.</source>
        <translation>L&apos;inscription %1 est une signature&#xa0;: elle reste. Ce qui s&apos;ajoute maintenant se signe d&apos;une nouvelle.</translation>
    </message>
    <message>
        <source>%1 verdict is weakly measured: its band is narrower than four times the standard uncertainty (C below 1).</source>
        <translation>%1 jugement est faiblement mesuré&#xa0;: sa plage est plus étroite que quatre fois l&apos;incertitude type (C inférieur à 1).</translation>
    </message>
    <message>
        <source>%1 verdicts are weakly measured: their bands are narrower than four times the standard uncertainty (C below 1).</source>
        <translation>%1 jugements sont faiblement mesurés&#xa0;: leurs plages sont plus étroites que quatre fois l&apos;incertitude type (C inférieur à 1).</translation>
    </message>
    <message>
        <source>%1 clearance of the trial fit was passed by eye, not measured.</source>
        <translation>%1 dégagement du montage à blanc a été admis à l&apos;œil, sans mesure.</translation>
    </message>
    <message>
        <source>%1 clearances of the trial fit were passed by eye, not measured.</source>
        <translation>%1 dégagements du montage à blanc ont été admis à l&apos;œil, sans mesure.</translation>
    </message>
    <message>
        <source>There is no entry yet, and nothing to sign.</source>
        <translation>Il n&apos;y a encore aucune inscription, et rien à signer.</translation>
    </message>
    <message>
        <source>A signature is 128 hexadecimal digits, but “%1” is not.</source>
        <translation>Une signature a 128 chiffres hexadécimaux, mais pas «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>The signature is not that of the key “%1” over entry %2: it, or what it signs, was altered.</source>
        <translation>La signature n&apos;est pas celle de la clé «&#xa0;%1&#xa0;» sur l&apos;inscription %2&#xa0;: elle, ou ce qu&apos;elle signe, a été modifiée.</translation>
    </message>
    <message>
        <source>The signature is over entry %1, which this record does not have.</source>
        <translation>La signature porte sur l&apos;inscription %1, que ce carnet n&apos;a pas.</translation>
    </message>
    <message>
        <source>The signature is over another seal than that of entry %1: it was made for another record, or this one was rewritten since.</source>
        <translation>La signature porte sur un autre sceau que celui de l&apos;inscription %1&#xa0;: elle a été faite pour un autre carnet, ou celui-ci a été réécrit depuis.</translation>
    </message>
    <message>
        <source>No entry is signed by that key.</source>
        <translation>Aucune inscription n&apos;est signée par cette clé.</translation>
    </message>
    <message>
        <source>Read it again with a torque wrench that is known and reaches it.</source>
        <translation>Relire avec une clé dynamométrique connue et qui l&apos;atteint.</translation>
    </message>
    <message>
        <source>Read both stages again with one wrench; if it stays so close, look for what binds.</source>
        <translation>Relire les deux stades avec une seule clé&#xa0;; si cela reste aussi juste, chercher ce qui coince.</translation>
    </message>
    <message>
        <source>End play is measured with every main cap at torque: tighten %1 to what is specified first.</source>
        <translation>Le jeu axial se mesure avec chaque chapeau au couple&#xa0;: serrer d&apos;abord %1 comme prescrit.</translation>
    </message>
    <message>
        <source>%1: passed by eye, not measured (at least %2 asked).</source>
        <translation>%1&#xa0;: admis à l&apos;œil, sans mesure (au moins %2 demandé).</translation>
    </message>
    <message>
        <source>%1 to start it, %2 to turn it: up by %3 ± %4, %5 allowed.</source>
        <translation>%1 pour décoller, %2 pour tourner&#xa0;: hausse de %3 ± %4, %5 permis.</translation>
    </message>
    <message>
        <source>key name</source>
        <translation>nom de la clé</translation>
    </message>
    <message>
        <source>public key</source>
        <translation>clé publique</translation>
    </message>
    <message>
        <source>signature</source>
        <translation>signature</translation>
    </message>
    <message>
        <source>signed entry</source>
        <translation>inscription signée</translation>
    </message>
    <message>
        <source>signed seal</source>
        <translation>sceau signé</translation>
    </message>
    <message>
        <source>valid from</source>
        <translation>valable dès</translation>
    </message>
    <message>
        <source>valid until</source>
        <translation>valable jusqu&apos;au</translation>
    </message>
    <message>
        <source>The signature in entry %1 cannot be read.</source>
        <translation>La signature de l&apos;inscription %1 est illisible.</translation>
    </message>
    <message>
        <source>The folder of keys, %1, cannot be made: %2.</source>
        <translation>Le répertoire des clés, %1, ne peut pas être créé&#xa0;: %2.</translation>
    </message>
    <message>
        <source>There is a key “%1” already, and it is not written over: give the new one another name.</source>
        <translation>Il y a déjà une clé «&#xa0;%1&#xa0;», et elle n&apos;est pas écrasée&#xa0;: donner un autre nom à la nouvelle.</translation>
    </message>
    <message>
        <source>The key file %1 cannot be made yours alone: %2.</source>
        <translation>L&apos;accès au fichier de clé %1 ne peut pas être réservé&#xa0;: %2.</translation>
    </message>
    <message>
        <source>There is no signing key in %1 yet: “caprail key new” makes one.</source>
        <translation>Il n&apos;y a pas encore de clé de signature dans %1&#xa0;: «&#xa0;caprail key new&#xa0;» en crée une.</translation>
    </message>
    <message>
        <source>There is no key “%1” here; there is %2. A lost key cannot be made again: make a new one and tell its fingerprint. What the lost one signed stays signed.</source>
        <translation>Il n&apos;y a pas de clé «&#xa0;%1&#xa0;» ici&#xa0;; il y a %2. Une clé perdue ne peut pas être refaite&#xa0;: en créer une nouvelle et communiquer son empreinte. Ce que l&apos;ancienne a signé reste signé.</translation>
    </message>
    <message>
        <source>There are several keys: %1. Say which one signs.</source>
        <translation>Il y a plusieurs clés&#xa0;: %1. Dire laquelle signe.</translation>
    </message>
    <message>
        <source>A public key is 64 hexadecimal digits, but “%1” is not.</source>
        <translation>Une clé publique a 64 chiffres hexadécimaux, mais pas «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>“%1” cannot be the name of a key: use 1 to 60 characters on one line.</source>
        <translation>«&#xa0;%1&#xa0;» ne peut pas être le nom d&apos;une clé&#xa0;: prendre 1 à 60 caractères sur une ligne.</translation>
    </message>
    <message>
        <source>The key&apos;s last day, %1, lies before its first, %2.</source>
        <translation>Le dernier jour de la clé, %1, est avant le premier, %2.</translation>
    </message>
    <message>
        <source>The key “%1” has a passphrase already.</source>
        <translation>La clé «&#xa0;%1&#xa0;» a déjà une phrase secrète.</translation>
    </message>
    <message>
        <source>The passphrase is empty: give one, or make the key without.</source>
        <translation>La phrase secrète est vide&#xa0;: en donner une, ou créer la clé sans.</translation>
    </message>
    <message>
        <source>The passphrase does not open the key “%1”: type it again.</source>
        <translation>La phrase secrète n&apos;ouvre pas la clé «&#xa0;%1&#xa0;»&#xa0;: la taper de nouveau.</translation>
    </message>
    <message>
        <source>The key “%1” is valid from %2 on, not yet on %3.</source>
        <translation>La clé «&#xa0;%1&#xa0;» est valable à partir du %2, pas encore le %3.</translation>
    </message>
    <message>
        <source>The key “%1” expired: its last day was %2. What it signed until then stays signed; make a new one, and tell its fingerprint.</source>
        <translation>La clé «&#xa0;%1&#xa0;» a expiré&#xa0;: son dernier jour était le %2. Ce qu&apos;elle a signé jusque-là reste signé&#xa0;; en créer une nouvelle, et communiquer son empreinte.</translation>
    </message>
    <message>
        <source>The system gives no random numbers (%1), and without them there is no key.</source>
        <translation>Le système ne donne pas de nombres aléatoires (%1), et sans eux il n&apos;y a pas de clé.</translation>
    </message>
    <message>
        <source>Entries wait to be stored: sign once they are, so that the signature is over them too.</source>
        <translation>Des inscriptions attendent d&apos;être enregistrées&#xa0;: signer une fois que c&apos;est fait, pour que la signature porte aussi sur elles.</translation>
    </message>
    <message>
        <source>Entry %1 says which entries came in without seals: that stays.</source>
        <translation>L&apos;inscription %1 dit quelles inscriptions sont venues sans sceaux&#xa0;: elle reste.</translation>
    </message>
    <message>
        <source>Such an entry is made by importing a text without seals, and in no other way.</source>
        <translation>Une telle inscription naît de l&apos;import d&apos;un texte sans sceaux, et d&apos;aucune autre façon.</translation>
    </message>
    <message>
        <source>Say what the part is: “%1” alone names none.</source>
        <translation>Dire ce qu&apos;est la pièce&#xa0;: «&#xa0;%1&#xa0;» seul n&apos;en nomme aucune.</translation>
    </message>
    <message>
        <source>“%1” is not a place of an engine: write a position, a bearing or a fastener as 3R, main-3 or main-3R, or leave the place empty.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas un endroit d&apos;un moteur&#xa0;: écrire une position, un palier ou une fixation comme 3R, main-3 ou main-3R, ou laisser l&apos;endroit vide.</translation>
    </message>
    <message>
        <source>A fastener was tightened 0 to 999 times before, not %1.</source>
        <translation>Une fixation a déjà été serrée de 0 à 999 fois, et non %1.</translation>
    </message>
    <message>
        <source>A new fastener was not tightened before: say that it is used, or leave the count out.</source>
        <translation>Une fixation neuve n&apos;a jamais été serrée&#xa0;: dire qu&apos;elle est d&apos;occasion, ou omettre le nombre.</translation>
    </message>
    <message>
        <source>the standard that %1 was tried on</source>
        <translation>l&apos;étalon sur lequel %1 a été éprouvé</translation>
    </message>
    <message>
        <source>This record has no value “%1”: “caprail show” lists the values and their codes.</source>
        <translation>Ce carnet n&apos;a pas de valeur «&#xa0;%1&#xa0;»&#xa0;: «&#xa0;caprail show&#xa0;» liste les valeurs et leurs codes.</translation>
    </message>
    <message>
        <source>Say whose figure it is: a maker&apos;s sheet, a drawing, or a person by name.</source>
        <translation>Dire de qui vient le chiffre&#xa0;: une fiche de fabricant, un plan, ou une personne nommée.</translation>
    </message>
    <message>
        <source>The entry about what was brought in carries no proper SHA-256 hash or count.</source>
        <translation>L&apos;inscription sur ce qui est venu de dehors n&apos;a pas d&apos;empreinte SHA-256 ou de nombre correct.</translation>
    </message>
    <message>
        <source>Set the group “%1”: its maker says torque, lubricant and, where it is so, stretch.</source>
        <translation>Fixer le groupe «&#xa0;%1&#xa0;»&#xa0;: son fabricant donne le couple, le lubrifiant et, s&apos;il y a lieu, l&apos;allongement.</translation>
    </message>
    <message>
        <source>the decision rule</source>
        <translation>la règle de décision</translation>
    </message>
    <message>
        <source>the coverage</source>
        <translation>le facteur d&apos;élargissement</translation>
    </message>
    <message>
        <source>the repeat limit of gap readings</source>
        <translation>la limite de répétabilité des interstices</translation>
    </message>
    <message>
        <source>the least number of passes</source>
        <translation>le nombre minimal de passes</translation>
    </message>
    <message>
        <source>the tolerance of a shim&apos;s marking</source>
        <translation>la tolérance du marquage d&apos;une cale</translation>
    </message>
    <message>
        <source>the most shims per stack</source>
        <translation>le plus grand nombre de cales par pile</translation>
    </message>
    <message>
        <source>the scatter of preload at a torque</source>
        <translation>la dispersion de la précharge à un couple</translation>
    </message>
    <message>
        <source>what parts may differ by in temperature</source>
        <translation>l&apos;écart de température permis entre pièces</translation>
    </message>
    <message>
        <source>the least clearance at a counterweight</source>
        <translation>le dégagement minimal à un contrepoids</translation>
    </message>
    <message>
        <source>the least clearance at the pickup tube</source>
        <translation>le dégagement minimal au tube de crépine</translation>
    </message>
    <message>
        <source>the least clearance at the dipstick</source>
        <translation>le dégagement minimal à la jauge d&apos;huile</translation>
    </message>
    <message>
        <source>the largest rise of the turning torque</source>
        <translation>la plus grande hausse du couple de rotation</translation>
    </message>
    <message>
        <source>the limits of “%1”</source>
        <translation>les limites de «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>what the %1 fasteners are tightened to</source>
        <translation>à quoi se serre le groupe «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>Entry %1 was judged by what this changes: say why it is changed, a reason is required.</source>
        <translation>L&apos;inscription %1 a été jugée d&apos;après ce que ceci change&#xa0;: dire pourquoi, un motif est exigé.</translation>
    </message>
    <message>
        <source>address</source>
        <translation>adresse</translation>
    </message>
    <message>
        <source>date</source>
        <translation>date</translation>
    </message>
    <message>
        <source>machined by</source>
        <translation>usiné par</translation>
    </message>
    <message>
        <source>machined on</source>
        <translation>usiné le</translation>
    </message>
    <message>
        <source>machined</source>
        <translation>usiné</translation>
    </message>
    <message>
        <source>nominal</source>
        <translation>valeur nominale</translation>
    </message>
    <message>
        <source>part number</source>
        <translation>référence</translation>
    </message>
    <message>
        <source>stamped</source>
        <translation>marquage</translation>
    </message>
    <message>
        <source>standard</source>
        <translation>étalon</translation>
    </message>
    <message>
        <source>telephone</source>
        <translation>téléphone</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <source>times tightened</source>
        <translation>nombre de serrages</translation>
    </message>
    <message>
        <source>block</source>
        <translation>bloc</translation>
    </message>
    <message>
        <source>pistons</source>
        <translation>pistons</translation>
    </message>
    <message>
        <source>rings</source>
        <translation>segments</translation>
    </message>
    <message>
        <source>main shells</source>
        <translation>coussinets de vilebrequin</translation>
    </message>
    <message>
        <source>rod shells</source>
        <translation>coussinets de bielle</translation>
    </message>
    <message>
        <source>main studs</source>
        <translation>goujons de palier</translation>
    </message>
    <message>
        <source>rod bolts</source>
        <translation>vis de bielle</translation>
    </message>
    <message>
        <source>other fasteners</source>
        <translation>autres fixations</translation>
    </message>
    <message>
        <source>shim kit</source>
        <translation>assortiment de cales</translation>
    </message>
    <message>
        <source>oil pan</source>
        <translation>carter d&apos;huile</translation>
    </message>
    <message>
        <source>oil pump</source>
        <translation>pompe à huile</translation>
    </message>
    <message>
        <source>oil pickup</source>
        <translation>crépine d&apos;huile</translation>
    </message>
    <message>
        <source>pan gasket</source>
        <translation>joint de carter</translation>
    </message>
    <message>
        <source>rear main seal</source>
        <translation>joint de vilebrequin arrière</translation>
    </message>
    <message>
        <source>sealant</source>
        <translation>pâte à joint</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>huile</translation>
    </message>
    <message>
        <source>thread lubricant</source>
        <translation>lubrifiant de filetage</translation>
    </message>
    <message>
        <source>other part</source>
        <translation>autre pièce</translation>
    </message>
    <message>
        <source>Entries %1 to %2 came in from a text without seals%3: who made them and when is what that text says.</source>
        <translation>Les inscriptions %1 à %2 viennent d&apos;un texte sans sceaux%3&#xa0;: qui les a faites et quand est ce qu&apos;en dit ce texte.</translation>
    </message>
    <message>
        <source>It has a seal, and a line before it has none: a seal stands on every line before it too.</source>
        <translation>Elle a un sceau, et une ligne précédente n&apos;en a pas&#xa0;: un sceau figure alors aussi sur chaque ligne d&apos;avant.</translation>
    </message>
    <message>
        <source>Its time, %1, is before that of the line above it, %2: entries stand in the order in which they were made.</source>
        <translation>Son heure, %1, est antérieure à celle de la ligne du dessus, %2&#xa0;: les inscriptions figurent dans l&apos;ordre où elles ont été faites.</translation>
    </message>
    <message>
        <source>Its time, %1, lies in the future: nobody made it yet.</source>
        <translation>Son heure, %1, est dans le futur&#xa0;: personne ne l&apos;a encore faite.</translation>
    </message>
    <message>
        <source>limits or rules</source>
        <translation>limites ou consignes</translation>
    </message>
    <message>
        <source>specification</source>
        <translation>prescription</translation>
    </message>
    <message>
        <source>accepted again</source>
        <translation>accepté à nouveau</translation>
    </message>
    <message>
        <source>“moved” struck</source>
        <translation>«&#xa0;a bougé&#xa0;» biffé</translation>
    </message>
    <message>
        <source>outcome struck</source>
        <translation>résultat biffé</translation>
    </message>
    <message>
        <source>reading struck</source>
        <translation>lecture biffée</translation>
    </message>
    <message>
        <source>part or washer</source>
        <translation>pièce ou rondelle</translation>
    </message>
    <message>
        <source>insisted on</source>
        <translation>maintenu</translation>
    </message>
    <message>
        <source>from outside</source>
        <translation>de l&apos;extérieur</translation>
    </message>
    <message>
        <source>The pattern %1 must have one #, where the value stands in the gauge&apos;s line: # alone, or 01A# for a value behind the prefix 01A.</source>
        <translation>Le motif %1 doit avoir un seul #, là où la valeur se trouve dans la ligne de l&apos;appareil&#xa0;: # seul, ou 01A# pour une valeur derrière le préfixe 01A.</translation>
    </message>
    <message>
        <source>The pattern %1 has more than %2 signs *: one stands for as much as there is.</source>
        <translation>Le motif %1 a plus de %2 signes *&#xa0;: un seul vaut pour autant qu&apos;il y en a.</translation>
    </message>
    <message>
        <source>%1 is no unit that a field takes: choose one from the list.</source>
        <translation>%1 n&apos;est pas une unité qu&apos;un champ accepte&#xa0;: en choisir une dans la liste.</translation>
    </message>
    <message>
        <source>%1 came from the gauge and does not fit its pattern %2: try the gauge under Instruments ▸ Gauges on this computer.</source>
        <translation>%1 est venu de l&apos;appareil et ne correspond pas à son motif %2&#xa0;: essayer l&apos;appareil sous Instruments ▸ Appareils de cet ordinateur.</translation>
    </message>
    <message>
        <source>%1 came from the gauge without a unit: say which it is under Instruments ▸ Gauges on this computer.</source>
        <translation>%1 est venu de l&apos;appareil sans unité&#xa0;: dire laquelle c&apos;est sous Instruments ▸ Appareils de cet ordinateur.</translation>
    </message>
    <message>
        <source>the part at %1</source>
        <translation>la pièce en %1</translation>
    </message>
    <message>
        <source>Journal %1, place %2, direction %3: %4</source>
        <translation>Portée %1, section %2, direction %3&#xa0;: %4</translation>
    </message>
    <message>
        <source>Clearance at %1 by gauging strip: %2</source>
        <translation>Jeu au fil calibré, %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Bare housing of %1, place %2: %3</source>
        <translation>Logement nu de %1, section %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Bore of %1 with its shells, place %2: %3</source>
        <translation>Alésage de %1 avec ses coussinets, section %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Shell %1 is marked %2</source>
        <translation>Le coussinet %1 est marqué %2</translation>
    </message>
    <message>
        <source>Shell %1 measured: %2</source>
        <translation>Coussinet %1 mesuré&#xa0;: %2</translation>
    </message>
    <message>
        <source>for a main</source>
        <translation>pour un palier de vilebrequin</translation>
    </message>
    <message>
        <source>for a rod</source>
        <translation>pour une bielle</translation>
    </message>
    <message>
        <source>Shells fitted at %1: %2 above, %3 below</source>
        <translation>Coussinets montés en %1&#xa0;: %2 en haut, %3 en bas</translation>
    </message>
    <message>
        <source>%1 at place %2: %3</source>
        <translation>%1 à l&apos;endroit %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Crank laid in</source>
        <translation>Vilebrequin posé</translation>
    </message>
    <message>
        <source>Crank lifted out</source>
        <translation>Vilebrequin sorti</translation>
    </message>
    <message>
        <source>Another %1, or it was worked on</source>
        <translation>Pièce changée ou retravaillée&#xa0;: %1</translation>
    </message>
    <message>
        <source>Another %1 at %2, or it was worked on</source>
        <translation>Pièce changée ou retravaillée en %2&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 tightened</source>
        <translation>%1&#xa0;: serrage</translation>
    </message>
    <message>
        <source>%1 tightened to %2</source>
        <translation>%1&#xa0;: serrage à %2</translation>
    </message>
    <message>
        <source>a new one</source>
        <translation>une neuve</translation>
    </message>
    <message>
        <source>not a new one</source>
        <translation>pas une neuve</translation>
    </message>
    <message>
        <source>%1 loosened</source>
        <translation>%1&#xa0;: desserrage</translation>
    </message>
    <message>
        <source>Clamp of %1: on at %2, off at %3</source>
        <translation>Effort de serrage, %1&#xa0;: serrage à %2, desserrage à %3</translation>
    </message>
    <message>
        <source>Verify round %1 begun</source>
        <translation>Tournée de vérification %1 commencée</translation>
    </message>
    <message>
        <source>%1 held in round %2</source>
        <translation>%1 a tenu dans la tournée %2</translation>
    </message>
    <message>
        <source>%1 moved %2 in round %3</source>
        <translation>%1 a bougé de %2 dans la tournée %3</translation>
    </message>
    <message>
        <source>%1 moved in round %2</source>
        <translation>%1 a bougé dans la tournée %2</translation>
    </message>
    <message>
        <source>pulled to %1</source>
        <translation>tirée à %1</translation>
    </message>
    <message>
        <source>verified by %1</source>
        <translation>vérifiée par&#xa0;: %1</translation>
    </message>
    <message>
        <source>stretch %1</source>
        <translation>allongement %1</translation>
    </message>
    <message>
        <source>Washer at %1 %2</source>
        <translation>Rondelle au %1 %2</translation>
    </message>
    <message>
        <source>Gap at %1, pass %2: %3</source>
        <translation>Interstice au %1, passe %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1 does not go</source>
        <translation>%1 ne passe pas</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>sous %1</translation>
    </message>
    <message>
        <source>Shim %1 added, marked %2</source>
        <translation>Cale %1 ajoutée, marquée %2</translation>
    </message>
    <message>
        <source>from bag %1</source>
        <translation>du sachet %1</translation>
    </message>
    <message>
        <source>Shim %1 measured: %2</source>
        <translation>Cale %1 mesurée&#xa0;: %2</translation>
    </message>
    <message>
        <source>Shim %1 set aside</source>
        <translation>Cale %1 mise de côté</translation>
    </message>
    <message>
        <source>Shim %1 taken back into the kit</source>
        <translation>Cale %1 reprise dans l&apos;assortiment</translation>
    </message>
    <message>
        <source>Stack at %1 pinned: %2</source>
        <translation>Pile au %1 figée&#xa0;: %2</translation>
    </message>
    <message>
        <source>Stack at %1 no longer pinned</source>
        <translation>La pile au %1 n&apos;est plus figée</translation>
    </message>
    <message>
        <source>Stack built at %1: %2</source>
        <translation>Pile montée au %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Stack at %1 %2</source>
        <translation>Pile au %1 %2</translation>
    </message>
    <message>
        <source>Recheck at %1: it %2</source>
        <translation>Recontrôle au %1&#xa0;: la règle %2</translation>
    </message>
    <message>
        <source>with %1 in place of %2 it %3</source>
        <translation>avec %1 à la place de %2, elle %3</translation>
    </message>
    <message>
        <source>Accepted again by the present numbers: %1</source>
        <translation>Accepté à nouveau d&apos;après les chiffres actuels&#xa0;: %1</translation>
    </message>
    <message>
        <source>Study %1 begun of the feel of %2 under %3</source>
        <translation>Étude %1 commencée&#xa0;: toucher de %2 sous %3</translation>
    </message>
    <message>
        <source>Study %1: at %2 it %3</source>
        <translation>Étude %1&#xa0;: à %2, la règle %3</translation>
    </message>
    <message>
        <source>step of %1</source>
        <translation>marche de %1</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>avec %1</translation>
    </message>
    <message>
        <source>says: %1</source>
        <translation>selon&#xa0;: %1</translation>
    </message>
    <message>
        <source>Engine described</source>
        <translation>Moteur décrit</translation>
    </message>
    <message>
        <source>Engine: %1</source>
        <translation>Moteur&#xa0;: %1</translation>
    </message>
    <message>
        <source>for %1</source>
        <translation>pour %1</translation>
    </message>
    <message>
        <source>shop: %1</source>
        <translation>atelier&#xa0;: %1</translation>
    </message>
    <message>
        <source>Girdle now ties caps %1 to %2</source>
        <translation>La plaque relie maintenant les chapeaux %1 à %2</translation>
    </message>
    <message>
        <source>%1 caps of %2 fasteners</source>
        <translation>%1 chapeaux à %2 fixations</translation>
    </message>
    <message>
        <source>girdle at the %1 ring</source>
        <translation>plaque sur la rangée %1</translation>
    </message>
    <message>
        <source>%1 rods on %2 throws</source>
        <translation>%1 bielles sur %2 coudes</translation>
    </message>
    <message>
        <source>pickup at cap %1 %2</source>
        <translation>crépine au chapeau %1 %2</translation>
    </message>
    <message>
        <source>dipstick at cap %1 %2</source>
        <translation>jauge d&apos;huile au chapeau %1 %2</translation>
    </message>
    <message>
        <source>caps %1 apart, studs %2, outer studs %3, rails %4</source>
        <translation>chapeaux espacés de %1, goujons de %2, goujons extérieurs de %3, plan de joint large de %4</translation>
    </message>
    <message>
        <source>Band “%1” is now %2 to %3</source>
        <translation>La plage «&#xa0;%1&#xa0;» va maintenant de %2 à %3</translation>
    </message>
    <message>
        <source>aim %1</source>
        <translation>cible %1</translation>
    </message>
    <message>
        <source>Judged from now on by %1, U %2</source>
        <translation>Jugé désormais&#xa0;: %1, U %2</translation>
    </message>
    <message>
        <source>a gap in %1 passes within %2</source>
        <translation>un interstice passe en %1 passes à moins de %2</translation>
    </message>
    <message>
        <source>shims within %1 of their marking</source>
        <translation>cales à moins de %1 de leur marquage</translation>
    </message>
    <message>
        <source>stacks of any number of shims</source>
        <translation>piles d&apos;un nombre quelconque de cales</translation>
    </message>
    <message>
        <source>stacks of up to %1 shims</source>
        <translation>piles de %1 cales au plus</translation>
    </message>
    <message>
        <source>plan for %1</source>
        <translation>plan pour %1</translation>
    </message>
    <message>
        <source>preload within %1 % at a torque</source>
        <translation>précharge à %1&#xa0;% près à un couple</translation>
    </message>
    <message>
        <source>counterweights %1 clear</source>
        <translation>contrepoids dégagés de %1</translation>
    </message>
    <message>
        <source>parts within %1 of each other</source>
        <translation>pièces à moins de %1 l&apos;une de l&apos;autre</translation>
    </message>
    <message>
        <source>a second person verifies</source>
        <translation>une deuxième personne vérifie</translation>
    </message>
    <message>
        <source>anyone may verify</source>
        <translation>n&apos;importe qui peut vérifier</translation>
    </message>
    <message>
        <source>a second person signs</source>
        <translation>une deuxième personne vise</translation>
    </message>
    <message>
        <source>anyone may sign</source>
        <translation>n&apos;importe qui peut viser</translation>
    </message>
    <message>
        <source>pickup tube %1 clear</source>
        <translation>tube de crépine dégagé de %1</translation>
    </message>
    <message>
        <source>dipstick %1 clear</source>
        <translation>jauge d&apos;huile dégagée de %1</translation>
    </message>
    <message>
        <source>turning torque may rise by %1</source>
        <translation>le couple de rotation peut monter de %1</translation>
    </message>
    <message>
        <source>Own check “%1” is asked no more</source>
        <translation>Le contrôle propre «&#xa0;%1&#xa0;» n&apos;est plus demandé</translation>
    </message>
    <message>
        <source>Own check “%1” is now asked: %2</source>
        <translation>Le contrôle propre «&#xa0;%1&#xa0;» est maintenant demandé&#xa0;: %2</translation>
    </message>
    <message>
        <source>it holds %1</source>
        <translation>il bloque %1</translation>
    </message>
    <message>
        <source>at %1 places</source>
        <translation>à %1 endroits</translation>
    </message>
    <message>
        <source>within %1 to %2</source>
        <translation>de %1 à %2</translation>
    </message>
    <message>
        <source>Fasteners of %1: %2</source>
        <translation>Fixations de %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Fasteners of %1 go to %2</source>
        <translation>Fixations de %1 à serrer à %2</translation>
    </message>
    <message>
        <source>%1 of them</source>
        <translation>au nombre de %1</translation>
    </message>
    <message>
        <source>dissolved: no place is left in it</source>
        <translation>dissous&#xa0;: il n&apos;y reste aucun endroit</translation>
    </message>
    <message>
        <source>places: %1</source>
        <translation>endroits&#xa0;: %1</translation>
    </message>
    <message>
        <source>thread %1</source>
        <translation>filetage %1</translation>
    </message>
    <message>
        <source>by %1 in %2 steps</source>
        <translation>par %1 en %2 étapes</translation>
    </message>
    <message>
        <source>in the order %1</source>
        <translation>dans l&apos;ordre %1</translation>
    </message>
    <message>
        <source>used once</source>
        <translation>usage unique</translation>
    </message>
    <message>
        <source>may be used again</source>
        <translation>réutilisable</translation>
    </message>
    <message>
        <source>length within %1</source>
        <translation>longueur à %1 près</translation>
    </message>
    <message>
        <source>grip %1</source>
        <translation>longueur serrée %1</translation>
    </message>
    <message>
        <source>shank %1</source>
        <translation>tige %1</translation>
    </message>
    <message>
        <source>%1 of thread in the grip</source>
        <translation>%1 de filetage dans la longueur serrée</translation>
    </message>
    <message>
        <source>clamps %1</source>
        <translation>serre %1</translation>
    </message>
    <message>
        <source>%1 works on this engine</source>
        <translation>%1 travaille sur ce moteur</translation>
    </message>
    <message>
        <source>%1 works on this engine as %2</source>
        <translation>%1 travaille sur ce moteur comme %2</translation>
    </message>
    <message>
        <source>%1 is a %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>made by %1</source>
        <translation>fabricant %1</translation>
    </message>
    <message>
        <source>number %1</source>
        <translation>numéro %1</translation>
    </message>
    <message>
        <source>limit of error ± %1</source>
        <translation>erreur maximale ± %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 à %2</translation>
    </message>
    <message>
        <source>calibrated %1</source>
        <translation>étalonné le %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>dû le %1</translation>
    </message>
    <message>
        <source>due after %1 pulls</source>
        <translation>dû après %1 serrages</translation>
    </message>
    <message>
        <source>%1 pulls before this record</source>
        <translation>%1 serrages avant ce carnet</translation>
    </message>
    <message>
        <source>read to %1</source>
        <translation>lu à %1 près</translation>
    </message>
    <message>
        <source>set in %1</source>
        <translation>réglé dans %1</translation>
    </message>
    <message>
        <source>corrects: %1</source>
        <translation>corrige&#xa0;: %1</translation>
    </message>
    <message>
        <source>Girdle lies with its %1 up, the cutout to the %2 at the %3</source>
        <translation>La plaque repose %1 dessus, l&apos;échancrure vers l&apos;%2, côté %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Not so: %1</source>
        <translation>Non conforme&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: passed</source>
        <translation>%1&#xa0;: conforme</translation>
    </message>
    <message>
        <source>Crank turns, %1: %2 to start it, %3 to keep it turning</source>
        <translation>Le vilebrequin tourne, %1&#xa0;: %2 pour décoller, %3 pour tourner</translation>
    </message>
    <message>
        <source>see its photo</source>
        <translation>voir sa photo</translation>
    </message>
    <message>
        <source>Own check “%1” at place %2: %3</source>
        <translation>Contrôle propre «&#xa0;%1&#xa0;» à l&apos;endroit %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>photo %1</source>
        <translation>photo %1</translation>
    </message>
    <message>
        <source>Finding %1 opened</source>
        <translation>Constat %1 ouvert</translation>
    </message>
    <message>
        <source>Finding %1 settled: %2</source>
        <translation>Constat %1 réglé&#xa0;: %2</translation>
    </message>
    <message>
        <source>Noted</source>
        <translation>Noté</translation>
    </message>
    <message>
        <source>Photo or file %1 added</source>
        <translation>Photo ou fichier %1 ajouté</translation>
    </message>
    <message>
        <source>%1 bytes</source>
        <translation>%1 octets</translation>
    </message>
    <message>
        <source>before it was scaled %1</source>
        <translation>avant réduction %1</translation>
    </message>
    <message>
        <source>Closing: %1</source>
        <translation>Fermeture&#xa0;: %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lot %1</translation>
    </message>
    <message>
        <source>open for %1 min</source>
        <translation>ouvert pendant %1 min</translation>
    </message>
    <message>
        <source>%1 in the stacks, %2 set aside, %3 left over</source>
        <translation>%1 dans les piles, %2 mises de côté, %3 restantes</translation>
    </message>
    <message>
        <source>Signed off: %1</source>
        <translation>Visé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Build %1 begun</source>
        <translation>Montage %1 commencé</translation>
    </message>
    <message>
        <source>Entry %1 struck: %2</source>
        <translation>Inscription %1 biffée&#xa0;: %2</translation>
    </message>
    <message>
        <source>Salvaged from %1</source>
        <translation>Récupéré de %1</translation>
    </message>
    <message>
        <source>no seal could be read</source>
        <translation>aucun sceau n&apos;était lisible</translation>
    </message>
    <message>
        <source>last seal %1</source>
        <translation>dernier sceau %1</translation>
    </message>
    <message>
        <source>seals that did not fit: %1</source>
        <translation>sceaux sans correspondance&#xa0;: %1</translation>
    </message>
    <message>
        <source>lost: %1</source>
        <translation>perdues&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 was taken over by another program or window: it can only be read here. What is typed here belongs there now.</source>
        <translation>%1 a été repris par un autre programme ou une autre fenêtre&#xa0;: il ne peut qu&apos;être lu ici. Ce qui est tapé ici a désormais sa place là-bas.</translation>
    </message>
    <message>
        <source>%1 cannot be taken over: its lock %2 cannot be removed. Check the folder&apos;s permissions.</source>
        <translation>%1 ne peut pas être repris&#xa0;: son verrou %2 ne peut pas être supprimé. Vérifier les droits du répertoire.</translation>
    </message>
    <message>
        <source>Type “sign” to sign off build %1 of %2 as assembled and checked, or a statement of your own.</source>
        <translation>Taper «&#xa0;sign&#xa0;» pour viser le montage %1 de %2 comme monté et contrôlé, ou une déclaration à soi.</translation>
    </message>
    <message>
        <source>Say what was seen at %1: h if its mark still lines up, or the angle it moved.</source>
        <translation>Pour %1, dire ce qui a été vu&#xa0;: h si son repère est encore aligné, ou l&apos;angle du mouvement.</translation>
    </message>
    <message>
        <source>Say what was felt at %1: h if it held, or the angle it moved.</source>
        <translation>Pour %1, dire ce qui a été senti&#xa0;: h si elle a tenu, ou l&apos;angle du mouvement.</translation>
    </message>
    <message>
        <source>the angle that %1 moved</source>
        <translation>l&apos;angle dont %1 a bougé</translation>
    </message>
    <message>
        <source>the gap at %1</source>
        <translation>l&apos;interstice au %1</translation>
    </message>
    <message>
        <source>Bring its cap to torque, beginning with %1, then measure the bore with the shells in.</source>
        <translation>Amener son chapeau au couple, en commençant par %1, puis mesurer l&apos;alésage avec les coussinets.</translation>
    </message>
    <message>
        <source>Part: %1</source>
        <translation>Pièce&#xa0;: %1</translation>
    </message>
    <message>
        <source>Part: %1, at %2</source>
        <translation>Pièce&#xa0;: %1, en %2</translation>
    </message>
    <message>
        <source>part number %1</source>
        <translation>référence %1</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>numéro de série %1</translation>
    </message>
    <message>
        <source>stamped %1</source>
        <translation>marquage %1</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neuf</translation>
    </message>
    <message>
        <source>used</source>
        <translation>d&apos;occasion</translation>
    </message>
    <message>
        <source>tightened before: %1</source>
        <translation>déjà serrée&#xa0;: %1</translation>
    </message>
    <message>
        <source>machined: %1</source>
        <translation>usiné&#xa0;: %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>par %1</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>le %1</translation>
    </message>
    <message>
        <source>%1 tried on its standard: reads %2 on %3</source>
        <translation>%1 éprouvé sur son étalon&#xa0;: lit %2 sur %3</translation>
    </message>
    <message>
        <source>Value %1 confirmed</source>
        <translation>Valeur %1 confirmée</translation>
    </message>
    <message>
        <source>Brought in without seals: %1 entries</source>
        <translation>Venues sans sceaux&#xa0;: %1 inscriptions</translation>
    </message>
    <message>
        <source>Brought in without seals: %1 entries of %2</source>
        <translation>Venues sans sceaux&#xa0;: %1 inscriptions de %2</translation>
    </message>
    <message>
        <source>Signed with the key of %1: everything up to entry %2</source>
        <translation>Signé avec la clé de %1&#xa0;: tout jusqu&apos;à l&apos;inscription %2</translation>
    </message>
    <message>
        <source>key valid from %1</source>
        <translation>clé valable dès le %1</translation>
    </message>
    <message>
        <source>key valid until %1</source>
        <translation>clé valable jusqu&apos;au %1</translation>
    </message>
    <message>
        <source>seal %1</source>
        <translation>sceau %1</translation>
    </message>
    <message>
        <source>public key %1</source>
        <translation>clé publique %1</translation>
    </message>
    <message>
        <source>signature %1</source>
        <translation>signature %1</translation>
    </message>
    <message>
        <source>because: %1</source>
        <translation>motif&#xa0;: %1</translation>
    </message>
    <message>
        <source>telephone %1</source>
        <translation>téléphone %1</translation>
    </message>
    <message>
        <source>List the shims of the kit first.</source>
        <translation>Lister d&apos;abord les cales de l&apos;assortiment.</translation>
    </message>
    <message>
        <source>The numbers that %1 was judged by no longer say enough: %2. Measure it again.</source>
        <translation>Les chiffres d&apos;après lesquels %1 a été jugé n&apos;en disent plus assez&#xa0;: %2. Le mesurer de nouveau.</translation>
    </message>
    <message>
        <source>%1 is defined for inch threads only, and %2 is not: give its proof stress, as in “190 ksi”.</source>
        <translation>%1 n&apos;est défini que pour les filetages en pouces, et %2 n&apos;en est pas un&#xa0;: donner sa contrainte d&apos;épreuve, comme «&#xa0;190 ksi&#xa0;».</translation>
    </message>
    <message>
        <source>%1 is defined for metric threads only, and %2 is not: give its proof stress, as in “190 ksi”.</source>
        <translation>%1 n&apos;est défini que pour les filetages métriques, et %2 n&apos;en est pas un&#xa0;: donner sa contrainte d&apos;épreuve, comme «&#xa0;190 ksi&#xa0;».</translation>
    </message>
    <message>
        <source>%1 lists no proof stress for the size of %2 (%3 are listed): give its proof stress, as in “190 ksi”.</source>
        <translation>%1 ne donne pas de contrainte d&apos;épreuve pour la taille de %2 (il donne %3)&#xa0;: donner sa contrainte d&apos;épreuve, comme «&#xa0;190 ksi&#xa0;».</translation>
    </message>
    <message>
        <source>%1 is not a known grade: use SAE 5, SAE 8, 8.8, 10.9 or 12.9, or give the proof stress as in “1310 MPa” or “190 ksi”.</source>
        <translation>%1 n&apos;est pas une classe connue&#xa0;: prendre SAE 5, SAE 8, 8.8, 10.9 ou 12.9, ou donner la contrainte d&apos;épreuve comme «&#xa0;1310 MPa&#xa0;» ou «&#xa0;190 ksi&#xa0;».</translation>
    </message>
    <message>
        <source>%1 is not in the list of lubricants (%2): take one of these or give its nut factor.</source>
        <translation>%1 n&apos;est pas dans la liste des lubrifiants (%2)&#xa0;: en prendre un ou donner son facteur de serrage.</translation>
    </message>
    <message>
        <source>There is no coarse thread M%1: give its pitch and say so, as in M12.5x1.5 special.</source>
        <translation>Il n&apos;y a pas de gros filetage M%1&#xa0;: donner son pas et le dire, comme M12.5x1.5 special.</translation>
    </message>
    <message>
        <source>A girdle of another metal needs both its elastic modulus and its Poisson&apos;s ratio.</source>
        <translation>Une plaque d&apos;un autre métal a besoin à la fois de son module d&apos;élasticité et de son coefficient de Poisson.</translation>
    </message>
    <message>
        <source>An engine oil has between 2 and 20 000 mm²/s: copy its viscosity at 40 °C and at 100 °C from its data sheet.</source>
        <translation>Une huile moteur a entre 2 et 20 000 mm²/s&#xa0;: recopier sa viscosité à 40 °C et à 100 °C de sa fiche technique.</translation>
    </message>
    <message>
        <source>An oil&apos;s temperature lies between −40 °C and 200 °C: look at what was entered.</source>
        <translation>La température d&apos;une huile est comprise entre −40 °C et 200 °C&#xa0;: revoir ce qui a été entré.</translation>
    </message>
    <message>
        <source>An oil must be thinner at the hotter of two temperatures: copy both points from its data sheet again.</source>
        <translation>Une huile doit être plus fluide à la plus chaude de deux températures&#xa0;: recopier les deux points de sa fiche technique.</translation>
    </message>
    <message>
        <source>The charts of the oil film hold for bearings from a quarter to twice as wide as their diameter.</source>
        <translation>Les abaques du film d&apos;huile valent pour des paliers larges d&apos;un quart à deux fois leur diamètre.</translation>
    </message>
    <message>
        <source>The oil film comes out thinner than three hundredths of the radial clearance, where the charts end: the surfaces would touch.</source>
        <translation>Le film d&apos;huile sort plus mince que trois centièmes du jeu radial, où finissent les abaques&#xa0;: les surfaces se toucheraient.</translation>
    </message>
    <message>
        <source>The oil film needs a journal, a width of its shells and a clearance, each above zero.</source>
        <translation>Le film d&apos;huile a besoin d&apos;une portée, d&apos;une largeur de ses coussinets et d&apos;un jeu, chacun supérieur à zéro.</translation>
    </message>
    <message>
        <source>The oil film needs a speed, a load and an oil, each above zero.</source>
        <translation>Le film d&apos;huile a besoin d&apos;un régime, d&apos;une charge et d&apos;une huile, chacun supérieur à zéro.</translation>
    </message>
    <message>
        <source>A bearing&apos;s width lies between a tenth and twice its diameter: measure the width of its shells again.</source>
        <translation>La largeur d&apos;un palier est entre un dixième et deux fois son diamètre&#xa0;: mesurer de nouveau la largeur de ses coussinets.</translation>
    </message>
    <message>
        <source>A window of the girdle cannot be smaller than nothing: give its length along the crank and its width across it, or 0 for a plate without windows.</source>
        <translation>Une fenêtre de la plaque ne peut pas être plus petite que rien&#xa0;: donner sa longueur le long du vilebrequin et sa largeur en travers, ou 0 pour une plaque sans fenêtres.</translation>
    </message>
    <message>
        <source>A window of the girdle this large meets the next one, the pan rail or a washer: measure it again.</source>
        <translation>Une fenêtre aussi grande rejoint la suivante, le plan de joint ou une rondelle&#xa0;: la mesurer de nouveau.</translation>
    </message>
    <message>
        <source>The girdle&apos;s plate must reach beyond its outermost nuts by the radius of their washers at least and by no more than the cap spacing: measure it again.</source>
        <translation>La plaque doit dépasser ses derniers écrous d&apos;au moins le rayon de leurs rondelles et d&apos;au plus l&apos;écart des chapeaux&#xa0;: la mesurer de nouveau.</translation>
    </message>
    <message>
        <source>plate metal</source>
        <translation>métal de la plaque</translation>
    </message>
    <message>
        <source>plate modulus</source>
        <translation>module de la plaque</translation>
    </message>
    <message>
        <source>plate overhang</source>
        <translation>débord de la plaque</translation>
    </message>
    <message>
        <source>plate poisson</source>
        <translation>Poisson de la plaque</translation>
    </message>
    <message>
        <source>plate thickness</source>
        <translation>épaisseur de la plaque</translation>
    </message>
    <message>
        <source>window across</source>
        <translation>fenêtre en travers</translation>
    </message>
    <message>
        <source>window along</source>
        <translation>fenêtre en long</translation>
    </message>
    <message>
        <source>The girdle&apos;s plate cannot be worked out: a part of it hangs on nothing. Correct its windows or the layout.</source>
        <translation>La plaque ne peut pas être calculée&#xa0;: une de ses parties ne tient à rien. Corriger ses fenêtres ou l&apos;architecture.</translation>
    </message>
    <message>
        <source>The girdle has no metal at one of its nuts: correct its windows, its cutout or the layout.</source>
        <translation>La plaque n&apos;a pas de métal à un de ses écrous&#xa0;: corriger ses fenêtres, son échancrure ou l&apos;architecture.</translation>
    </message>
    <message>
        <source>Fewer than three pan rail fasteners lie under the girdle: nothing holds it on the rail. Count the pan rail&apos;s fasteners again.</source>
        <translation>Moins de trois fixations du plan de joint sont sous la plaque&#xa0;: rien ne la tient. Recompter les fixations du plan de joint.</translation>
    </message>
    <message>
        <source>The stud and cap at %1 need a stiffness above nothing.</source>
        <translation>Le goujon et le chapeau au %1 ont besoin d&apos;une raideur supérieure à zéro.</translation>
    </message>
    <message>
        <source>The girdle&apos;s plate is given as %1 thick: it must be from 0.03 to 1.5 in.</source>
        <translation>L&apos;épaisseur de la plaque est donnée à %1&#xa0;: il faut de 0.03 à 1.5 in.</translation>
    </message>
    <message>
        <source>The girdle&apos;s elastic modulus is given as %1 GPa: it must be from 34 to 276 GPa; steel has about 207, aluminium about 71.</source>
        <translation>Le module d&apos;élasticité de la plaque est donné à %1 GPa&#xa0;: il faut de 34 à 276 GPa&#xa0;; l&apos;acier a environ 207, l&apos;aluminium environ 71.</translation>
    </message>
    <message>
        <source>The girdle&apos;s Poisson&apos;s ratio is given as %1: it must be from 0 to 0.49; steel has about 0.29, aluminium about 0.33.</source>
        <translation>Le coefficient de Poisson de la plaque est donné comme %1&#xa0;: il va de 0 à 0.49&#xa0;; l&apos;acier a environ 0.29, l&apos;aluminium environ 0.33.</translation>
    </message>
    <message>
        <source>A stud&apos;s stiffness needs a preload and its stretch, both above nothing.</source>
        <translation>La raideur d&apos;un goujon a besoin d&apos;une précharge et de son allongement, tous deux supérieurs à zéro.</translation>
    </message>
    <message>
        <source>The joint&apos;s share of a stud must be from 0.05 to 0.95; 0.15 to 0.32 is usual.</source>
        <translation>La part de l&apos;assemblage sur un goujon va de 0.05 à 0.95&#xa0;; 0.15 à 0.32 est usuel.</translation>
    </message>
    <message>
        <source>Least load needs the stiffness of the girdle: describe its plate first.</source>
        <translation>La moindre charge a besoin de la raideur de la plaque&#xa0;: la décrire d&apos;abord.</translation>
    </message>
    <message>
        <source>The stiffness must have one row and one column for each of the %1 positions.</source>
        <translation>La raideur doit avoir une ligne et une colonne pour chacune des %1 positions.</translation>
    </message>
    <message>
        <source>The stiffness holds something that is no number.</source>
        <translation>La raideur contient quelque chose qui n&apos;est pas un nombre.</translation>
    </message>
    <message>
        <source>The stiffness is not symmetric between the positions %1 and %2: what one does to the other must be the same both ways.</source>
        <translation>La raideur n&apos;est pas symétrique entre les positions %1 et %2&#xa0;: ce que l&apos;une fait à l&apos;autre doit être égal dans les deux sens.</translation>
    </message>
    <message>
        <source>least load</source>
        <translation>moindre charge</translation>
    </message>
    <message>
        <source>The girdle is taken for a thin elastic plate with sharp windows, flat before it was bolted down; the block for rigid.</source>
        <translation>La plaque est supposée élastique et mince, à fenêtres vives, plane avant d&apos;être boulonnée&#xa0;; le bloc rigide.</translation>
    </message>
    <message>
        <source>The largest bending stress is that outside all washers and half a corner&apos;s radius away from the corners of windows.</source>
        <translation>La plus grande contrainte de flexion est celle hors de toutes les rondelles et à un demi-rayon d&apos;angle des coins de fenêtres.</translation>
    </message>
    <message>
        <source>Nobody counted the fasteners of the pan rail: a usual set is taken.</source>
        <translation>Personne n&apos;a compté les fixations du plan de joint&#xa0;: un nombre usuel est pris.</translation>
    </message>
    <message>
        <source>What nobody measured of windows and overhang is in fair proportion to the layout, as drawn.</source>
        <translation>Ce que personne n&apos;a mesuré des fenêtres et du débord est en juste proportion de l&apos;architecture, comme dessiné.</translation>
    </message>
    <message>
        <source>Where no stack is built the nut is taken to draw the plate down by the whole gap.</source>
        <translation>Là où aucune pile n&apos;est montée, l&apos;écrou est supposé tirer la plaque de tout l&apos;interstice.</translation>
    </message>
    <message>
        <source>The uncertainties of the residuals are taken as independent of each other.</source>
        <translation>Les incertitudes des résidus sont supposées indépendantes entre elles.</translation>
    </message>
    <message>
        <source>It is advice, and no claim about what a block will stand.</source>
        <translation>C&apos;est un conseil, et non une affirmation sur ce qu&apos;un bloc supporte.</translation>
    </message>
    <message>
        <source>The load in the block needs a layout: enter it under Engine.</source>
        <translation>La charge dans le bloc a besoin d&apos;une architecture&#xa0;: l&apos;entrer sous Moteur.</translation>
    </message>
    <message>
        <source>The load in the block needs the girdle&apos;s thickness and metal: enter them with the layout under Engine.</source>
        <translation>La charge dans le bloc a besoin de l&apos;épaisseur et du métal de la plaque&#xa0;: les entrer avec l&apos;architecture sous Moteur.</translation>
    </message>
    <message>
        <source>No load is known yet: no gap is accepted, or the stack is stale, at %1.</source>
        <translation>Aucune charge n&apos;est encore connue&#xa0;: aucun interstice n&apos;est accepté, ou la pile est périmée, ici&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Least load cannot be aimed at while nobody described the girdle&apos;s plate: the plan has the smallest residuals instead.</source>
        <translation>La moindre charge ne peut pas être visée tant que personne n&apos;a décrit la plaque&#xa0;: le plan a plutôt les plus petits résidus.</translation>
    </message>
    <message>
        <source>girdle %1 thick</source>
        <translation>épaisseur de la plaque %1</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>en %1</translation>
    </message>
    <message>
        <source>elastic modulus %1 MPa</source>
        <translation>module d&apos;élasticité %1 MPa</translation>
    </message>
    <message>
        <source>Poisson&apos;s ratio %1 thousandths</source>
        <translation>coefficient de Poisson %1 millièmes</translation>
    </message>
    <message>
        <source>windows %1 along</source>
        <translation>fenêtres de %1 en long</translation>
    </message>
    <message>
        <source>windows %1 across</source>
        <translation>fenêtres de %1 en large</translation>
    </message>
    <message>
        <source>%1 beyond the end nuts</source>
        <translation>%1 au-delà des derniers écrous</translation>
    </message>
    <message>
        <source>Where a main fastener has neither the dimensions of its joint nor a stretch beside its torque, at %1, stud and cap are taken for a spring of %2, which makes the loads rather too large (common practice, no source).</source>
        <translation>Là où une fixation de palier n&apos;a ni les cotes de son assemblage ni un allongement à côté de son couple, ici&#xa0;: %1, goujon et chapeau sont supposés être un ressort de %2, ce qui rend les charges plutôt trop grandes (usage courant, sans source).</translation>
    </message>
    <message>
        <source>every place</source>
        <translation>tout endroit</translation>
    </message>
    <message>
        <source>Where only the stretch of a main fastener is known, its joint is taken to carry %1 of a load by the stud and the rest by what it clamps (common practice, no source).</source>
        <translation>Là où seul l&apos;allongement d&apos;une fixation de palier est connu, son assemblage est supposé porter %1 d&apos;une charge par le goujon et le reste par ce qu&apos;il serre (usage courant, sans source).</translation>
    </message>
    <message>
        <source>The pan rail holds it at height zero at %1 points; nuts pull it down onto the stacks.</source>
        <translation>Le plan de joint la tient à la hauteur zéro en %1 points&#xa0;; les écrous la tirent sur les piles.</translation>
    </message>
    <message>
        <source>Too few pan rail fasteners lie under the plate as the layout is drawn: the rail is taken to hold its four ends as well, which are among these points.</source>
        <translation>Trop peu de fixations du plan de joint sont sous la plaque telle que l&apos;architecture est dessinée&#xa0;: le plan de joint est supposé tenir aussi ses quatre extrémités, comprises dans ces points.</translation>
    </message>
    <message>
        <source>The cutout at the oil pump&apos;s pickup is in fair proportion to the layout, as drawn: it is not asked for.</source>
        <translation>L&apos;échancrure à la crépine est en juste proportion de l&apos;architecture, comme dessiné&#xa0;: elle n&apos;est pas demandée.</translation>
    </message>
    <message>
        <source>At this temperature the oil has %1 mPa·s. No load is named, so no film is worked out: name the load on one bearing.</source>
        <translation>À cette température, l&apos;huile a %1 mPa·s. Aucune charge n&apos;est nommée, donc aucun film n&apos;est calculé&#xa0;: nommer la charge sur un palier.</translation>
    </message>
    <message>
        <source>No clearance is measured with a micrometer yet: measure journals and bores first.</source>
        <translation>Aucun jeu n&apos;est encore mesuré au micromètre&#xa0;: mesurer d&apos;abord les portées et les alésages.</translation>
    </message>
    <message>
        <source>%1 is not a coefficient for %2: type millionths per kelvin, 11.4 for grey cast iron.</source>
        <translation>%1 n&apos;est pas un coefficient pour %2&#xa0;: taper des millionièmes par kelvin, 11.4 pour la fonte grise.</translation>
    </message>
    <message>
        <source>%1 is not the oil&apos;s viscosity at %2: type mm²/s from its data sheet, a number above zero.</source>
        <translation>%1 n&apos;est pas la viscosité de l&apos;huile à %2&#xa0;: taper les mm²/s de sa fiche technique, un nombre supérieur à zéro.</translation>
    </message>
    <message>
        <source>%1 holds no such row.</source>
        <translation>%1 ne contient pas une telle ligne.</translation>
    </message>
    <message>
        <source>This names no database: give a service of ~/.pg_service.conf, or a URL such as postgresql://bench@server/caprail.</source>
        <translation>Cela ne nomme aucune base de données&#xa0;: donner un service de ~/.pg_service.conf, ou une URL telle que postgresql://bench@server/caprail.</translation>
    </message>
    <message>
        <source>No database is named: give a service of ~/.pg_service.conf, or a URL such as postgresql://bench@server/caprail.</source>
        <translation>Aucune base de données n&apos;est nommée&#xa0;: donner un service de ~/.pg_service.conf, ou une URL telle que postgresql://bench@server/caprail.</translation>
    </message>
    <message>
        <source>A password does not belong into the name of a database, which is kept and shown: write it into ~/.pgpass or the service file, readable by you alone.</source>
        <translation>Un mot de passe n&apos;a pas sa place dans le nom d&apos;une base de données, qui est gardé et affiché&#xa0;: l&apos;écrire dans ~/.pgpass ou dans le fichier des services, lisible par vous seul.</translation>
    </message>
    <message>
        <source>The name of the database holds a sign that it cannot have.</source>
        <translation>Le nom de la base de données contient un signe qu&apos;il ne peut avoir.</translation>
    </message>
    <message>
        <source>The database %1 took too long to answer: try again.</source>
        <translation>La base de données %1 a mis trop longtemps à répondre&#xa0;: réessayer.</translation>
    </message>
    <message>
        <source>The database %1 was busy with the same records: try again.</source>
        <translation>La base de données %1 était occupée avec les mêmes carnets&#xa0;: réessayer.</translation>
    </message>
    <message>
        <source>The database %1 does not allow this (%2): its keeper gives the right.</source>
        <translation>La base de données %1 ne le permet pas (%2)&#xa0;: son gardien en donne le droit.</translation>
    </message>
    <message>
        <source>The database %1 only lets its records be read, for now or for ever.</source>
        <translation>La base de données %1 ne laisse que lire ses carnets, pour l&apos;instant ou pour toujours.</translation>
    </message>
    <message>
        <source>The database %1 has no room left (%2): its keeper makes room.</source>
        <translation>La base de données %1 n&apos;a plus de place (%2)&#xa0;: son gardien en fait.</translation>
    </message>
    <message>
        <source>The database %1 has no tables for records, or other ones (%2): its keeper makes them.</source>
        <translation>La base de données %1 n&apos;a pas de tables pour les carnets, ou en a d&apos;autres (%2)&#xa0;: son gardien les fait.</translation>
    </message>
    <message>
        <source>The database %1 refused: %2.</source>
        <translation>La base de données %1 a refusé&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 is in use by another program: try again.</source>
        <translation>%1 est utilisé par un autre programme&#xa0;: réessayer.</translation>
    </message>
    <message>
        <source>%1 cannot be used for want of memory: close other programs.</source>
        <translation>%1 ne peut être utilisé faute de mémoire&#xa0;: fermer d&apos;autres programmes.</translation>
    </message>
    <message>
        <source>%1 may not be written: check its rights.</source>
        <translation>%1 ne peut être écrit&#xa0;: vérifier ses droits.</translation>
    </message>
    <message>
        <source>%1 cannot be opened, read or written: check its disk and its rights.</source>
        <translation>%1 ne peut être ouvert, lu ou écrit&#xa0;: vérifier son disque et ses droits.</translation>
    </message>
    <message>
        <source>%1 cannot be written, since the disk is full: make room.</source>
        <translation>%1 ne peut être écrit, car le disque est plein&#xa0;: faire de la place.</translation>
    </message>
    <message>
        <source>%1 is damaged.</source>
        <translation>%1 est endommagé.</translation>
    </message>
    <message>
        <source>%1 cannot be used: %2.</source>
        <translation>%1 ne peut être utilisé&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The database %1 lets nobody in like this: %2.</source>
        <translation>La base de données %1 ne laisse entrer personne ainsi&#xa0;: %2.</translation>
    </message>
    <message>
        <source>This computer cannot speak with PostgreSQL: install the Debian package libqt6sql6-psql.</source>
        <translation>Cet ordinateur ne peut parler avec PostgreSQL&#xa0;: installer le paquet Debian libqt6sql6-psql.</translation>
    </message>
    <message>
        <source>This computer cannot keep an index: install the Debian package libqt6sql6-sqlite.</source>
        <translation>Cet ordinateur ne peut tenir d&apos;index&#xa0;: installer le paquet Debian libqt6sql6-sqlite.</translation>
    </message>
    <message>
        <source>The list of records holds a row that no program of this version wrote.</source>
        <translation>La liste des carnets contient une ligne qu&apos;aucun programme de cette version n&apos;a écrite.</translation>
    </message>
    <message>
        <source>A folder for what is fetched cannot be made: %1.</source>
        <translation>Un répertoire pour ce qui est rapatrié ne peut être créé&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 exists already: choose another name.</source>
        <translation>%1 existe déjà&#xa0;: choisir un autre nom.</translation>
    </message>
    <message>
        <source>%1: the bytes of the photo or file %2 do not fit their hash.</source>
        <translation>%1&#xa0;: les octets de la photo ou du fichier %2 ne correspondent pas à leur empreinte.</translation>
    </message>
    <message>
        <source>%1: the seal of entry %2 does not fit: it, or the one before it, was altered after it was sealed.</source>
        <translation>%1&#xa0;: le sceau de l&apos;inscription %2 ne correspond pas&#xa0;: elle, ou la précédente, a été modifiée après avoir été scellée.</translation>
    </message>
    <message>
        <source>The database %1 holds no record with the seal or serial number “%2”.</source>
        <translation>La base de données %1 ne contient aucun carnet de sceau ou de numéro de série «&#xa0;%2&#xa0;».</translation>
    </message>
    <message>
        <source>Several records of %1 are meant by “%2”: name one by its first seal: %3.</source>
        <translation>«&#xa0;%2&#xa0;» désigne plusieurs carnets de %1&#xa0;: en nommer un par son premier sceau&#xa0;: %3.</translation>
    </message>
    <message>
        <source>The database %1 holds no record with this first seal.</source>
        <translation>La base de données %1 ne contient aucun carnet de ce premier sceau.</translation>
    </message>
    <message>
        <source>The database %1 holds %2 entries of this record where it should hold %3, or they end in another seal: rows were removed or altered there.</source>
        <translation>La base de données %1 contient %2 inscriptions de ce carnet alors qu&apos;elle devrait en contenir %3, ou elles finissent par un autre sceau&#xa0;: des lignes y ont été ôtées ou modifiées.</translation>
    </message>
    <message>
        <source>The database %1 has entry %2 of this record where entry %3 must be, or its seal is another: rows were removed or altered there.</source>
        <translation>La base de données %1 a l&apos;inscription %2 de ce carnet là où doit être l&apos;inscription %3, ou son sceau est un autre&#xa0;: des lignes y ont été ôtées ou modifiées.</translation>
    </message>
    <message>
        <source>Fetching was stopped: nothing was made.</source>
        <translation>Le rapatriement a été arrêté&#xa0;: rien n&apos;a été fait.</translation>
    </message>
    <message>
        <source>A record is named by its first seal, 64 hexadecimal digits, but “%1” is not.</source>
        <translation>Un carnet est nommé par son premier sceau, 64 chiffres hexadécimaux, mais «&#xa0;%1&#xa0;» n&apos;en est pas un.</translation>
    </message>
    <message>
        <source>Publishing was stopped: nothing of this record was stored.</source>
        <translation>La publication a été arrêtée&#xa0;: rien de ce carnet n&apos;a été enregistré.</translation>
    </message>
    <message>
        <source>its history is not the one that %1 holds of the same record: they differ from entry %2 on. Nothing of it was stored; fetch the other one and compare the two.</source>
        <translation>son histoire n&apos;est pas celle que %1 contient du même carnet&#xa0;: elles diffèrent à partir de l&apos;inscription %2. Rien n&apos;en a été enregistré&#xa0;; rapatrier l&apos;autre et comparer les deux.</translation>
    </message>
    <message>
        <source>%1 holds no entry yet: there is nothing to publish.</source>
        <translation>%1 ne contient encore aucune inscription&#xa0;: il n&apos;y a rien à publier.</translation>
    </message>
    <message>
        <source>never</source>
        <translation>jamais</translation>
    </message>
    <message>
        <source>after each change</source>
        <translation>après chaque changement</translation>
    </message>
    <message>
        <source>every hour</source>
        <translation>chaque heure</translation>
    </message>
    <message>
        <source>every day</source>
        <translation>chaque jour</translation>
    </message>
    <message>
        <source>The database %1 does not keep this record: try again.</source>
        <translation>La base de données %1 ne garde pas ce carnet&#xa0;: réessayer.</translation>
    </message>
    <message>
        <source>The database %1 is of a newer version of this program: bring this one up to date.</source>
        <translation>La base de données %1 est d&apos;une version plus récente de ce programme&#xa0;: mettre celui-ci à jour.</translation>
    </message>
    <message>
        <source>The tables of the database %1 were made by another edition of this program (%2): use that one.</source>
        <translation>Les tables de la base de données %1 ont été faites par une autre édition de ce programme (%2)&#xa0;: utiliser celle-là.</translation>
    </message>
    <message>
        <source>The server of %1 is older than PostgreSQL 14: use a newer one.</source>
        <translation>Le serveur de %1 est antérieur à PostgreSQL 14&#xa0;: en utiliser un plus récent.</translation>
    </message>
    <message>
        <source>The database %1 keeps texts in %2, which cannot hold every name: make one in UTF8.</source>
        <translation>La base de données %1 garde les textes en %2, qui ne peut contenir tous les noms&#xa0;: en faire une en UTF8.</translation>
    </message>
    <message>
        <source>The database %1 has no tables for records: its keeper makes them with “caprail database make”.</source>
        <translation>La base de données %1 n&apos;a pas de tables pour les carnets&#xa0;: son gardien les fait avec «&#xa0;caprail database make&#xa0;».</translation>
    </message>
    <message>
        <source>The database %1 is of an older version of this program: its keeper brings it up to date with “caprail database make”.</source>
        <translation>La base de données %1 est d&apos;une version plus ancienne de ce programme&#xa0;: son gardien la met à jour avec «&#xa0;caprail database make&#xa0;».</translation>
    </message>
    <message>
        <source>%2 and another one are not at their specified value.</source>
        <translation>%2 et une autre ne sont pas à leur valeur prescrite.</translation>
    </message>
    <message>
        <source>%2 and %1 others are not at their specified value.</source>
        <translation>%2 et %1 autres ne sont pas à leur valeur prescrite.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%2: %3. Another one is open.</source>
        <translation>%2&#xa0;: %3. Un autre est ouvert.</translation>
    </message>
    <message>
        <source>%2: %3. %1 others are open.</source>
        <translation>%2&#xa0;: %3. %1 autres sont ouverts.</translation>
    </message>
    <message>
        <source>“%1” is not a moment on a clock: write it like 2026-05-04T09:30:00.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas un instant d&apos;horloge&#xa0;: l&apos;écrire comme 2026-05-04T09:30:00.</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>prise</translation>
    </message>
    <message>
        <source>taken %1 by the camera&apos;s clock</source>
        <translation>prise le %1 à l&apos;horloge de l&apos;appareil</translation>
    </message>
    <message>
        <source>feeler leaf</source>
        <translation>lame de jauge</translation>
    </message>
    <message>
        <source>feeler leaf %1</source>
        <translation>lame de jauge %1</translation>
    </message>
    <message>
        <source>%1 holds no record.</source>
        <translation>%1 ne contient aucun carnet.</translation>
    </message>
    <message>
        <source>The database %1 lacks the bytes of the photo or file “%2” of entry %3: publish the record again from its file.</source>
        <translation>Il manque à la base de données %1 les octets de la photo ou du fichier «&#xa0;%2&#xa0;» de l&apos;inscription %3&#xa0;: publier de nouveau le carnet à partir de son fichier.</translation>
    </message>
</context>
<context>
    <name>caprail::DatabaseModel</name>
    <message>
        <source>reading…</source>
        <translation>lecture…</translation>
    </message>
</context>
<context>
    <name>caprail::DatabaseNotice</name>
    <message>
        <source>Try &amp;again</source>
        <translation>&amp;Réessayer</translation>
    </message>
    <message>
        <source>Waiting for %1…</source>
        <translation>En attente de %1…</translation>
    </message>
</context>
<context>
    <name>caprail::DatabaseWindow</name>
    <message>
        <source>&amp;Database…</source>
        <translation>&amp;Base de données…</translation>
    </message>
    <message>
        <source>Shop&apos;s database — Caprail</source>
        <translation>Base de données de l&apos;atelier — Caprail</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Carnets</translation>
    </message>
    <message>
        <source>&amp;Shop</source>
        <translation>&amp;Atelier</translation>
    </message>
    <message>
        <source>Fetch and open the &amp;record…</source>
        <translation>Rapatrier et &amp;ouvrir le carnet…</translation>
    </message>
    <message>
        <source>Open a &amp;database…</source>
        <translation>Ouvrir une &amp;base de données…</translation>
    </message>
    <message>
        <source>Open a &amp;folder…</source>
        <translation>Ouvrir un &amp;répertoire…</translation>
    </message>
    <message>
        <source>&amp;Look again</source>
        <translation>Regarder de n&amp;ouveau</translation>
    </message>
    <message>
        <source>&amp;Search</source>
        <translation>Rec&amp;hercher</translation>
    </message>
    <message>
        <source>Compare &amp;engines…</source>
        <translation>Comparer les &amp;moteurs…</translation>
    </message>
    <message>
        <source>Save the list as a &amp;table (CSV)…</source>
        <translation>Enregistrer la liste en &amp;tableau (CSV)…</translation>
    </message>
    <message>
        <source>Close &amp;window</source>
        <translation>Fermer &amp;la fenêtre</translation>
    </message>
    <message>
        <source>A shop&apos;s database</source>
        <translation>Base de données d&apos;un atelier</translation>
    </message>
    <message>
        <source>A service of ~/.pg_service.conf, or a URL such as postgresql://bench@server/caprail. A password belongs into ~/.pgpass or the service file.</source>
        <translation>Un service de ~/.pg_service.conf, ou une URL telle que postgresql://bench@server/caprail. Un mot de passe a sa place dans ~/.pgpass ou le fichier des services.</translation>
    </message>
    <message>
        <source>Choose the database that the records are in.</source>
        <translation>Choisir la base de données où sont les carnets.</translation>
    </message>
    <message>
        <source>Counting the records…</source>
        <translation>Comptage des carnets…</translation>
    </message>
    <message>
        <source>Records: %1</source>
        <translation>Carnets&#xa0;: %1</translation>
    </message>
    <message>
        <source>Records: %1 of %2</source>
        <translation>Carnets&#xa0;: %1 sur %2</translation>
    </message>
    <message>
        <source>Where the fetched record is to lie</source>
        <translation>Où placer le carnet rapatrié</translation>
    </message>
    <message>
        <source>Build records (*.caprail)</source>
        <translation>Carnets de montage (*.caprail)</translation>
    </message>
    <message>
        <source>Fetching the record…</source>
        <translation>Rapatriement du carnet…</translation>
    </message>
    <message>
        <source>Caprail</source>
        <translation>Caprail</translation>
    </message>
    <message>
        <source>The list as a table</source>
        <translation>La liste en tableau</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tableaux (*.csv)</translation>
    </message>
    <message>
        <source>No record was published to this database yet.</source>
        <translation>Aucun carnet n&apos;a encore été publié dans cette base de données.</translation>
    </message>
</context>
<context>
    <name>caprail::DiskBar</name>
    <message>
        <source>Screen and disk</source>
        <translation>Écran et disque</translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>&amp;Réessayer</translation>
    </message>
    <message>
        <source>&amp;Understood</source>
        <translation>&amp;Compris</translation>
    </message>
    <message>
        <source>Writes everything, what waits included, to another place and goes on there</source>
        <translation>Écrit tout, y compris ce qui attend, à un autre endroit et y continue</translation>
    </message>
    <message>
        <source>Not on the disk: %1. What was entered is kept here, in order, until it is stored.</source>
        <translation>Pas sur le disque&#xa0;: %1. Ce qui a été inscrit est gardé ici, dans l&apos;ordre, jusqu&apos;à son enregistrement.</translation>
    </message>
    <message>
        <source>•  and more: %1</source>
        <translation>•  et d&apos;autres&#xa0;: %1</translation>
    </message>
    <message>
        <source>Save everything elsewhere and go on there</source>
        <translation>Tout enregistrer ailleurs et y continuer</translation>
    </message>
    <message>
        <source>Build records (*.caprail)</source>
        <translation>Carnets de montage (*.caprail)</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Non enregistré</translation>
    </message>
    <message>
        <source>Saved without some photos</source>
        <translation>Enregistré sans certaines photos</translation>
    </message>
    <message>
        <source>Take the record over</source>
        <translation>Reprendre le carnet</translation>
    </message>
    <message>
        <source>Where it is open now nothing more can be entered then, and what is typed there and not stored is lost. Take it over only when nobody works there. Take it over?</source>
        <translation>Là où il est ouvert maintenant, plus rien ne pourra être inscrit, et ce qui y est tapé sans être enregistré est perdu. Ne le reprendre que si personne n&apos;y travaille. Le reprendre&#xa0;?</translation>
    </message>
    <message>
        <source>Save a copy else&amp;where…</source>
        <translation>Enregistrer &amp;une copie ailleurs…</translation>
    </message>
    <message>
        <source>Ta&amp;ke it over…</source>
        <translation>Repre&amp;ndre…</translation>
    </message>
</context>
<context>
    <name>caprail::EngineBands</name>
    <message>
        <source>piston to bore</source>
        <translation>piston dans alésage</translation>
    </message>
    <message>
        <source>ring gap</source>
        <translation>jeu à la coupe</translation>
    </message>
    <message>
        <source>deck height</source>
        <translation>hauteur de plan</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Plage</translation>
    </message>
    <message>
        <source>choose, or name a fit of your own</source>
        <translation>choisir, ou nommer un ajustement à soi</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>À</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Cible</translation>
    </message>
    <message>
        <source>may be left empty</source>
        <translation>peut rester vide</translation>
    </message>
    <message>
        <source>Who says so</source>
        <translation>Selon qui</translation>
    </message>
    <message>
        <source>part maker&apos;s sheet, person, common practice</source>
        <translation>fiche du fabricant, personne, usage courant</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Jugement</translation>
    </message>
    <message>
        <source>Coverage</source>
        <translation>Élargissement</translation>
    </message>
    <message>
        <source>Repeat limit</source>
        <translation>Limite de répétabilité</translation>
    </message>
    <message>
        <source>Passes, at least</source>
        <translation>Passes, au moins</translation>
    </message>
    <message>
        <source>Kit tolerance</source>
        <translation>Tolérance des cales</translation>
    </message>
    <message>
        <source>Shims per stack, at most</source>
        <translation>Cales par pile, au plus</translation>
    </message>
    <message>
        <source>Plan aims for</source>
        <translation>Le plan vise</translation>
    </message>
    <message>
        <source>Torque scatter, %</source>
        <translation>Dispersion du couple,&#xa0;%</translation>
    </message>
    <message>
        <source>Counterweight clear by</source>
        <translation>Contrepoids dégagés de</translation>
    </message>
    <message>
        <source>Bands</source>
        <translation>Plages</translation>
    </message>
    <message>
        <source>Store &amp;band</source>
        <translation>Enregistrer la pla&amp;ge</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Consignes</translation>
    </message>
    <message>
        <source>Store &amp;rules</source>
        <translation>Enregistrer les &amp;consignes</translation>
    </message>
    <message>
        <source>&amp;New fit of the shop&apos;s own</source>
        <translation>&amp;Nouvel ajustement de l&apos;atelier</translation>
    </message>
    <message>
        <source>Guarded: a value counts as in only when it lies in the band with its whole uncertainty. Simple: the value alone decides. The sheet says which rule was used. A band that is changed makes stale what was judged by it.</source>
        <translation>Avec bandes de garde&#xa0;: une valeur ne compte comme dans les limites que si elle est dans la plage avec toute son incertitude. Simple&#xa0;: la valeur décide seule. La feuille dit quelle règle a servi. Changer une plage périme ce qui a été jugé d&apos;après elle.</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>non fixé</translation>
    </message>
    <message>
        <source>These are the program&apos;s own starting values; nobody has entered or confirmed any yet.</source>
        <translation>Ce sont les valeurs de départ du programme&#xa0;; personne n&apos;en a encore inscrit ni confirmé.</translation>
    </message>
    <message>
        <source>Common practice, no source, for a journal of %1: %2 to %3.</source>
        <translation>Usage courant, sans source, pour une portée de %1&#xa0;: %2 à %3.</translation>
    </message>
    <message>
        <source>Common practice, no source: 0.00075 to 0.0010 per inch of journal diameter.</source>
        <translation>Usage courant, sans source&#xa0;: 0.00075 à 0.0010 par pouce de diamètre de portée.</translation>
    </message>
    <message>
        <source>A second person verifies</source>
        <translation>2e personne vérifie</translation>
    </message>
    <message>
        <source>A second person signs off</source>
        <translation>2e personne vise</translation>
    </message>
    <message>
        <source>Pickup tube clear by</source>
        <translation>Tube de crépine dégagé de</translation>
    </message>
    <message>
        <source>empty: 0.100 in, common practice</source>
        <translation>vide&#xa0;: 0.100 in, usage courant</translation>
    </message>
    <message>
        <source>Dipstick clear by</source>
        <translation>Jauge d&apos;huile dégagée de</translation>
    </message>
    <message>
        <source>empty: 0.060 in, common practice</source>
        <translation>vide&#xa0;: 0.060 in, usage courant</translation>
    </message>
    <message>
        <source>Turning torque up by, at most</source>
        <translation>Rotation plus dure de</translation>
    </message>
    <message>
        <source>empty: 2 lbf·ft, common practice</source>
        <translation>vide&#xa0;: 2 lbf·ft, usage courant</translation>
    </message>
</context>
<context>
    <name>caprail::EngineLayoutPage</name>
    <message>
        <source>Engine</source>
        <translation>Moteur</translation>
    </message>
    <message>
        <source>what it is, in a few words</source>
        <translation>ce que c&apos;est, en quelques mots</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>N° de série</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Atelier</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Main caps</source>
        <translation>Chapeaux</translation>
    </message>
    <message>
        <source>Cap to cap</source>
        <translation>Entre chapeaux</translation>
    </message>
    <message>
        <source>Fasteners per cap</source>
        <translation>Fixations/chapeau</translation>
    </message>
    <message>
        <source>Studs, left to right</source>
        <translation>Entre goujons</translation>
    </message>
    <message>
        <source>Girdle sits on</source>
        <translation>Plaque posée sur</translation>
    </message>
    <message>
        <source>Outer studs apart</source>
        <translation>Goujons extérieurs</translation>
    </message>
    <message>
        <source>Girdle from cap</source>
        <translation>Plaque du chapeau</translation>
    </message>
    <message>
        <source>Pan rails apart</source>
        <translation>Plan de joint</translation>
    </message>
    <message>
        <source>Girdle to cap</source>
        <translation>Plaque au chapeau</translation>
    </message>
    <message>
        <source>Pickup at cap</source>
        <translation>Crépine au chapeau</translation>
    </message>
    <message>
        <source>Rods</source>
        <translation>Bielles</translation>
    </message>
    <message>
        <source>Pickup side</source>
        <translation>Côté de la crépine</translation>
    </message>
    <message>
        <source>Crank throws</source>
        <translation>Coudes</translation>
    </message>
    <message>
        <source>Dipstick at cap</source>
        <translation>Jauge au chapeau</translation>
    </message>
    <message>
        <source>Dipstick side</source>
        <translation>Côté de la jauge</translation>
    </message>
    <message>
        <source>Who says so</source>
        <translation>Selon qui</translation>
    </message>
    <message>
        <source>The engine</source>
        <translation>Le moteur</translation>
    </message>
    <message>
        <source>Its bottom end</source>
        <translation>Son bas moteur</translation>
    </message>
    <message>
        <source>Store &amp;layout</source>
        <translation>Enregistrer l&apos;arc&amp;hitecture</translation>
    </message>
    <message>
        <source>Advice on when to consider a girdle</source>
        <translation>Conseil&#xa0;: quand envisager une plaque</translation>
    </message>
    <message>
        <source>The figures are set under Edit ▸ Preferences</source>
        <translation>Les chiffres se règlent sous Édition ▸ Préférences</translation>
    </message>
    <message>
        <source>Nothing is stored yet: correct these starting values and store them.</source>
        <translation>Rien n&apos;est encore enregistré&#xa0;: corriger ces valeurs de départ et les enregistrer.</translation>
    </message>
    <message>
        <source>As typed, not stored yet</source>
        <translation>Tel que tapé, pas encore enregistré</translation>
    </message>
    <message>
        <source>Telephone</source>
        <translation>Téléphone</translation>
    </message>
    <message>
        <source>for the customer&apos;s sheet</source>
        <translation>pour la feuille du client</translation>
    </message>
    <message>
        <source>Its address</source>
        <translation>Son adresse</translation>
    </message>
    <message>
        <source>Girdle thickness</source>
        <translation>Épaisseur plaque</translation>
    </message>
    <message>
        <source>Girdle is of</source>
        <translation>Plaque en</translation>
    </message>
    <message>
        <source>Modulus, MPa</source>
        <translation>Module, MPa</translation>
    </message>
    <message>
        <source>by its metal</source>
        <translation>selon son métal</translation>
    </message>
    <message>
        <source>Poisson, 1/1000</source>
        <translation>Poisson, 1/1000</translation>
    </message>
    <message>
        <source>Windows, along</source>
        <translation>Fenêtres en long</translation>
    </message>
    <message>
        <source>as drawn</source>
        <translation>comme dessiné</translation>
    </message>
    <message>
        <source>Windows, across</source>
        <translation>Fenêtres en large</translation>
    </message>
    <message>
        <source>Past the end nuts</source>
        <translation>Au-delà des écrous</translation>
    </message>
    <message>
        <source>The plan as it lies on the stand, drawn from what is typed. Left and right are as seen from the flywheel end with the engine the right way up. Lengths in plan serve the drawing, the flushness and the load in the block.</source>
        <translation>Le plan tel qu&apos;il est sur le support, dessiné d&apos;après ce qui est tapé. Gauche et droite sont vues du côté volant, moteur à l&apos;endroit. Les longueurs en plan servent au dessin, à l&apos;affleurement et à la charge dans le bloc.</translation>
    </message>
    <message>
        <source>Store engi&amp;ne</source>
        <translation>Enregistrer le &amp;moteur</translation>
    </message>
</context>
<context>
    <name>caprail::EngineOwnChecks</name>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>without spaces: windage-tray</source>
        <translation>sans espaces&#xa0;: racleur-huile</translation>
    </message>
    <message>
        <source>What is looked at</source>
        <translation>Ce qui est regardé</translation>
    </message>
    <message>
        <source>in your own words</source>
        <translation>avec ses propres mots</translation>
    </message>
    <message>
        <source>Answered by</source>
        <translation>Réponse par</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Endroits</translation>
    </message>
    <message>
        <source>0 withdraws it</source>
        <translation>0 le retire</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Bloque</translation>
    </message>
    <message>
        <source>Which step</source>
        <translation>Quelle étape</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>measured ones only</source>
        <translation>seulement si mesuré</translation>
    </message>
    <message>
        <source>To</source>
        <translation>À</translation>
    </message>
    <message>
        <source>Who says so</source>
        <translation>Selon qui</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <translation>%1, %2 à %3</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>retiré</translation>
    </message>
    <message>
        <source>The shop&apos;s own checks</source>
        <translation>Contrôles propres à l&apos;atelier</translation>
    </message>
    <message>
        <source>Store &amp;check</source>
        <translation>Enregistrer le &amp;contrôle</translation>
    </message>
    <message>
        <source>&amp;New check of the shop&apos;s own</source>
        <translation>&amp;Nouveau contrôle de l&apos;atelier</translation>
    </message>
    <message>
        <source>Windage tray, pump and pickup bolts, rear main seal, oil-way plugs, blind holes dry: what the shop looks at besides. A check holds the trial fit, closing, or one closing step until it is good at every place. Saved with a template, it is asked on every engine made from it.</source>
        <translation>Racleur d&apos;huile, vis de pompe et de crépine, joint arrière, bouchons des canalisations, trous borgnes secs&#xa0;: ce que l&apos;atelier regarde en plus. Un contrôle bloque le montage à blanc, la fermeture ou une étape de fermeture jusqu&apos;à ce qu&apos;il soit bon à chaque endroit. Enregistré avec un modèle, il est demandé pour chaque moteur qui en est tiré.</translation>
    </message>
</context>
<context>
    <name>caprail::EngineParts</name>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Which one</source>
        <translation>Lequel</translation>
    </message>
    <message>
        <source>where there are several: assembly oil</source>
        <translation>s&apos;il y en a plusieurs&#xa0;: huile de montage</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Fabricant</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Référence</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>N° de série</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>Cast or stamped</source>
        <translation>Marquage</translation>
    </message>
    <message>
        <source>Fitted at</source>
        <translation>Monté en</translation>
    </message>
    <message>
        <source>3R, main-3, main-3R; empty: the engine</source>
        <translation>3R, main-3&#xa0;; vide&#xa0;: le moteur</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neuf</translation>
    </message>
    <message>
        <source>Tightened before</source>
        <translation>Déjà serrée</translation>
    </message>
    <message>
        <source>times; used fasteners</source>
        <translation>fois&#xa0;; fixations d&apos;occasion</translation>
    </message>
    <message>
        <source>Machined</source>
        <translation>Usiné</translation>
    </message>
    <message>
        <source>honed, ground 0.010 under</source>
        <translation>rodé, rectifié à 0.010 en moins</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Le</translation>
    </message>
    <message>
        <source>2026-05-04</source>
        <translation>2026-05-04</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neuf</translation>
    </message>
    <message>
        <source>used</source>
        <translation>d&apos;occasion</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Photo of its number…</source>
        <translation>Photo de son numéro…</translation>
    </message>
    <message>
        <source>No part was entered yet. A lot or a serial number entered here is found in the shop&apos;s search.</source>
        <translation>Aucune pièce n&apos;a encore été inscrite. Un lot ou un numéro de série inscrit ici se retrouve dans la recherche de l&apos;atelier.</translation>
    </message>
    <message>
        <source>&amp;New part</source>
        <translation>&amp;Nouvelle pièce</translation>
    </message>
    <message>
        <source>Store par&amp;t</source>
        <translation>Enregistrer la piè&amp;ce</translation>
    </message>
</context>
<context>
    <name>caprail::EnginePeople</name>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>without spaces: MIC-1</source>
        <translation>sans espaces&#xa0;: MIC-1</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Fabricant</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>N° de série</translation>
    </message>
    <message>
        <source>Limit of error ±</source>
        <translation>Erreur max. ±</translation>
    </message>
    <message>
        <source>gauges: half-width</source>
        <translation>appareils&#xa0;: demi-largeur</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Étalonné le</translation>
    </message>
    <message>
        <source>2026-05-04</source>
        <translation>2026-05-04</translation>
    </message>
    <message>
        <source>Wrench from</source>
        <translation>Clé dès</translation>
    </message>
    <message>
        <source>empty: 20 % of the largest</source>
        <translation>vide&#xa0;: 20&#xa0;% de la plus grande</translation>
    </message>
    <message>
        <source>Due on</source>
        <translation>Dû le</translation>
    </message>
    <message>
        <source>wrenches, empty: a year later</source>
        <translation>clés, vide&#xa0;: un an plus tard</translation>
    </message>
    <message>
        <source>Wrench up to</source>
        <translation>Clé jusqu&apos;à</translation>
    </message>
    <message>
        <source>Due after pulls</source>
        <translation>Dû après</translation>
    </message>
    <message>
        <source>wrenches, empty: 5000</source>
        <translation>serrages&#xa0;; clés, vide&#xa0;: 5000</translation>
    </message>
    <message>
        <source>Pulls before now</source>
        <translation>Déjà faits</translation>
    </message>
    <message>
        <source>since the calibration</source>
        <translation>serrages depuis l&apos;étalonnage</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rôle</translation>
    </message>
    <message>
        <source>A person</source>
        <translation>Une personne</translation>
    </message>
    <message>
        <source>assembler</source>
        <translation>monteur</translation>
    </message>
    <message>
        <source>machinist</source>
        <translation>usineur</translation>
    </message>
    <message>
        <source>checker</source>
        <translation>contrôleur</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>Error / range</source>
        <translation>Erreur / étendue</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Étalonné</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Échéance</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd&apos;hui</translation>
    </message>
    <message>
        <source>An instrument, or a new calibration of one</source>
        <translation>Un instrument, ou un nouvel étalonnage</translation>
    </message>
    <message>
        <source>Store &amp;instrument</source>
        <translation>Enregistrer l&apos;in&amp;strument</translation>
    </message>
    <message>
        <source>Ne&amp;w instrument</source>
        <translation>&amp;Nouvel instrument</translation>
    </message>
    <message>
        <source>✓ no remark</source>
        <translation>✓ rien à signaler</translation>
    </message>
    <message>
        <source>Smallest step</source>
        <translation>Plus petit pas</translation>
    </message>
    <message>
        <source>that it is read to</source>
        <translation>auquel il est lu</translation>
    </message>
    <message>
        <source>Set with</source>
        <translation>Réglé avec</translation>
    </message>
    <message>
        <source>bore gauges: the micrometer</source>
        <translation>alésomètres&#xa0;: le micromètre</translation>
    </message>
    <message>
        <source>Corrects</source>
        <translation>Corrige</translation>
    </message>
    <message>
        <source>empty: it holds from now on</source>
        <translation>vide&#xa0;: vaut dès maintenant</translation>
    </message>
    <message>
        <source>Feel, due</source>
        <translation>Toucher, dû</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>MIC-1</source>
        <translation>MIC-1</translation>
    </message>
    <message>
        <source>Standard</source>
        <translation>Étalon</translation>
    </message>
    <message>
        <source>setting rod no. 4</source>
        <translation>broche de réglage n° 4</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Il mesure</translation>
    </message>
    <message>
        <source>0 for closed anvils</source>
        <translation>0 pour touches fermées</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lecture</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Température</translation>
    </message>
    <message>
        <source>may be left empty</source>
        <translation>peut rester vide</translation>
    </message>
    <message>
        <source>A zero check, on the standard</source>
        <translation>Un contrôle du zéro, sur l&apos;étalon</translation>
    </message>
    <message>
        <source>Store &amp;zero check</source>
        <translation>Enregistrer le &amp;zéro</translation>
    </message>
    <message>
        <source>Store pe&amp;rson</source>
        <translation>Enregistrer la pe&amp;rsonne</translation>
    </message>
</context>
<context>
    <name>caprail::EngineStation</name>
    <message>
        <source>Engine</source>
        <translation>Moteur</translation>
    </message>
    <message>
        <source>Engine and layout</source>
        <translation>Moteur, architecture</translation>
    </message>
    <message>
        <source>Bands and rules</source>
        <translation>Plages et consignes</translation>
    </message>
    <message>
        <source>People and instruments</source>
        <translation>Personnes et instruments</translation>
    </message>
    <message>
        <source>Own checks</source>
        <translation>Contrôles propres</translation>
    </message>
    <message>
        <source>Whose figures</source>
        <translation>Sources</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Whose engine this is, where its caps and fasteners lie, the bands that it is judged by, the people who work on it and their instruments, whose figures the values are, and the parts. All of these are entries: changing a band in mid-build makes earlier results stale.</source>
        <translation>À qui est ce moteur, où sont ses chapeaux et ses fixations, les plages d&apos;après lesquelles il est jugé, les personnes qui y travaillent et leurs instruments, de qui viennent les chiffres, et les pièces. Tout cela, ce sont des inscriptions&#xa0;: changer une plage en plein montage périme des résultats antérieurs.</translation>
    </message>
</context>
<context>
    <name>caprail::EngineValues</name>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Chiffre</translation>
    </message>
    <message>
        <source>Whose figure it is</source>
        <translation>De qui vient le chiffre</translation>
    </message>
    <message>
        <source>the program&apos;s own default</source>
        <translation>valeur par défaut du programme</translation>
    </message>
    <message>
        <source>Confirmed</source>
        <translation>Confirmé</translation>
    </message>
    <message>
        <source>by nobody</source>
        <translation>par personne</translation>
    </message>
    <message>
        <source>when it was set</source>
        <translation>quand il a été fixé</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>par %1</translation>
    </message>
    <message>
        <source>Values and whose they are</source>
        <translation>Les valeurs et de qui elles viennent</translation>
    </message>
    <message>
        <source>&amp;Confirm this value</source>
        <translation>&amp;Confirmer cette valeur</translation>
    </message>
    <message>
        <source>the maker&apos;s sheet, a drawing, a person by name</source>
        <translation>fiche du fabricant, plan, personne nommée</translation>
    </message>
    <message>
        <source>Somebody has said of every value whose figure it is.</source>
        <translation>Pour chaque valeur, quelqu&apos;un a dit de qui vient le chiffre.</translation>
    </message>
</context>
<context>
    <name>caprail::EntriesModel</name>
    <message>
        <source>Entry</source>
        <translation>N°</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>What was seen or done</source>
        <translation>Ce qui a été vu ou fait</translation>
    </message>
    <message>
        <source>Struck by entry %1 (%2): %3</source>
        <translation>Biffée par l&apos;inscription %1 (%2)&#xa0;: %3</translation>
    </message>
    <message>
        <source>(struck by entry %1)</source>
        <translation>(biffée par l&apos;inscription %1)</translation>
    </message>
</context>
<context>
    <name>caprail::EntriesTable</name>
    <message>
        <source>No entry yet. What is entered here will be listed with its number; Delete strikes it.</source>
        <translation>Pas encore d&apos;inscription. Ce qui est inscrit ici sera listé avec son numéro&#xa0;; Suppr la biffe.</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Inscriptions</translation>
    </message>
    <message>
        <source>Strike entry %1</source>
        <translation>Biffer l&apos;inscription %1</translation>
    </message>
    <message>
        <source>Strike entry %1…</source>
        <translation>Biffer l&apos;inscription %1…</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copier</translation>
    </message>
    <message numerus="yes">
        <source>Why are these %n entries withdrawn? They stay readable, struck through.</source>
        <translation>
            <numerusform>Pourquoi cette inscription (%n) est-elle retirée&#xa0;? Elle reste lisible, biffée.</numerusform>
            <numerusform>Pourquoi ces %n inscriptions sont-elles retirées&#xa0;? Elles restent lisibles, biffées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>… and %n more.</source>
        <translation>
            <numerusform>… et %n autre.</numerusform>
            <numerusform>… et %n autres.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Strike %n entries</source>
        <translation>
            <numerusform>Biffer %n inscription</numerusform>
            <numerusform>Biffer %n inscriptions</numerusform>
        </translation>
    </message>
    <message>
        <source>Why is this entry withdrawn? It stays readable, struck through.</source>
        <translation>Pourquoi cette inscription est-elle retirée&#xa0;? Elle reste lisible, biffée.</translation>
    </message>
    <message numerus="yes">
        <source>Strike these %n entries…</source>
        <translation>
            <numerusform>Biffer cette inscription (%n)…</numerusform>
            <numerusform>Biffer ces %n inscriptions…</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>caprail::EntryField</name>
    <message>
        <source>Enter this value</source>
        <translation>Inscrire cette valeur</translation>
    </message>
    <message>
        <source>Read as %1</source>
        <translation>Lu comme %1</translation>
    </message>
    <message>
        <source>%1 came from the gauge, but “%2” stands here and is not stored: store it with Enter or empty the field with Esc, then press the gauge&apos;s button again.</source>
        <translation>%1 est venu de l&apos;appareil, mais «&#xa0;%2&#xa0;» est ici sans être enregistré&#xa0;: l&apos;enregistrer avec Entrée ou vider le champ avec Échap, puis appuyer de nouveau sur le bouton de l&apos;appareil.</translation>
    </message>
    <message>
        <source>%1 came from “%2”, which this record does not know: add it at the engine station, under the same name, or say under Instruments ▸ Gauges on this computer which instrument it is.</source>
        <translation>%1 est venu de «&#xa0;%2&#xa0;», que ce carnet ne connaît pas&#xa0;: l&apos;ajouter au poste Moteur, sous le même nom, ou dire sous Instruments ▸ Appareils de cet ordinateur quel instrument c&apos;est.</translation>
    </message>
</context>
<context>
    <name>caprail::EntryForm</name>
    <message>
        <source>Not stored yet: Enter stores, Esc puts the recorded values back.</source>
        <translation>Pas encore enregistré&#xa0;: Entrée enregistre, Échap remet les valeurs inscrites.</translation>
    </message>
</context>
<context>
    <name>caprail::FastenersClamp</name>
    <message>
        <source>Turn it a little further, slowly, and note the torque; then back, slowly, and note that. It is loose then: tighten it again. A fastener by angle, to yield or by stretch is not tried so.</source>
        <translation>La serrer un peu plus, lentement, et noter le couple&#xa0;; puis revenir, lentement, et le noter. Elle est alors desserrée&#xa0;: la resserrer. Une fixation serrée à l&apos;angle, jusqu&apos;à la limite élastique ou à l&apos;allongement ne s&apos;éprouve pas ainsi.</translation>
    </message>
    <message>
        <source>What it clamps with</source>
        <translation>Avec quel effort elle serre</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>desserrée</translation>
    </message>
    <message>
        <source>Its clamp was not checked.</source>
        <translation>Son effort de serrage n&apos;a pas été contrôlé.</translation>
    </message>
    <message>
        <source>Torque on / torque off, as 80 / 56</source>
        <translation>Couple au serrage / au desserrage, comme 80 / 56</translation>
    </message>
    <message>
        <source>Tighten it as specified first</source>
        <translation>La serrer d&apos;abord comme prescrit</translation>
    </message>
    <message>
        <source>on %1, off %2</source>
        <translation>serrage à %1, desserrage à %2</translation>
    </message>
    <message>
        <source>the torque that turns it on</source>
        <translation>le couple qui la serre</translation>
    </message>
    <message>
        <source>the torque that turns it back, behind a /</source>
        <translation>le couple qui la desserre, derrière un /</translation>
    </message>
</context>
<context>
    <name>caprail::FastenersGroupParts</name>
    <message>
        <source>&amp;Join back</source>
        <translation>&amp;Rejoindre</translation>
    </message>
    <message>
        <source>What a touch takes</source>
        <translation>Ce que prend un clic</translation>
    </message>
    <message>
        <source>name, as rear cap</source>
        <translation>nom, comme chapeau arrière</translation>
    </message>
    <message>
        <source>Name of the new group</source>
        <translation>Nom du nouveau groupe</translation>
    </message>
    <message>
        <source>Touch the places on the diagram that get a specification of their own (or walk with the arrow keys and press Enter), name them, and store</source>
        <translation>Toucher sur le dessin les endroits qui ont une prescription à eux (ou les parcourir avec les flèches et appuyer sur Entrée), les nommer, et enregistrer</translation>
    </message>
    <message>
        <source>These places go back to the wider group, with what it specifies</source>
        <translation>Ces endroits reviennent au groupe plus large, avec ce qu&apos;il prescrit</translation>
    </message>
    <message>
        <source>Leave them together</source>
        <translation>Les laisser ensemble</translation>
    </message>
    <message>
        <source>Store the split: %1</source>
        <translation>Enregistrer la scission&#xa0;: %1</translation>
    </message>
    <message>
        <source>Split &amp;off places</source>
        <translation>&amp;Scinder des endroits</translation>
    </message>
</context>
<context>
    <name>caprail::FastenersGroups</name>
    <message>
        <source>Group</source>
        <translation>Groupe</translation>
    </message>
    <message>
        <source>Only the pair</source>
        <translation>Seulement la rangée</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Filetage</translation>
    </message>
    <message>
        <source>7/16-20, M10x1.5</source>
        <translation>7/16-20, M10x1.5</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Classe</translation>
    </message>
    <message>
        <source>Lubricant</source>
        <translation>Lubrifiant</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Couple</translation>
    </message>
    <message>
        <source>Then angle</source>
        <translation>Puis angle</translation>
    </message>
    <message>
        <source>Stretch</source>
        <translation>Allongement</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source>Who says so</source>
        <translation>Selon qui</translation>
    </message>
    <message>
        <source>Sequence</source>
        <translation>Ordre</translation>
    </message>
    <message>
        <source>empty: from the centre outwards</source>
        <translation>vide&#xa0;: du centre vers l&apos;extérieur</translation>
    </message>
    <message>
        <source>Fastener groups</source>
        <translation>Groupes de fixations</translation>
    </message>
    <message>
        <source>Specified</source>
        <translation>Prescrit</translation>
    </message>
    <message>
        <source>A group</source>
        <translation>Un groupe</translation>
    </message>
    <message>
        <source>Set the sequence on the &amp;diagram</source>
        <translation>Fixer l&apos;&amp;ordre sur le dessin</translation>
    </message>
    <message>
        <source>Wrench length</source>
        <translation>Longueur de clé</translation>
    </message>
    <message>
        <source>Extension</source>
        <translation>Rallonge</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Angle</translation>
    </message>
    <message>
        <source>Working of the preload</source>
        <translation>Calcul de la précharge</translation>
    </message>
    <message>
        <source>Touch the fasteners in the order of tightening (or walk with the arrow keys and press Enter). Those left out come last, from the centre outwards.</source>
        <translation>Toucher les fixations dans l&apos;ordre de serrage (ou les parcourir avec les flèches et appuyer sur Entrée). Celles qui sont omises viennent en dernier, du centre vers l&apos;extérieur.</translation>
    </message>
    <message>
        <source>What it comes to</source>
        <translation>Ce que cela donne</translation>
    </message>
    <message>
        <source>Wrench with an extension (0° straight on, 90° square)</source>
        <translation>Clé avec rallonge (0° dans l&apos;axe, 90° d&apos;équerre)</translation>
    </message>
    <message>
        <source>Sequence: %1</source>
        <translation>Ordre&#xa0;: %1</translation>
    </message>
    <message>
        <source>The part maker&apos;s instructions come first.</source>
        <translation>Les instructions du fabricant de la pièce passent d&apos;abord.</translation>
    </message>
    <message>
        <source>Set the engine layout at the engine station: the fasteners follow from it.</source>
        <translation>Fixer l&apos;architecture du moteur au poste Moteur&#xa0;: les fixations en découlent.</translation>
    </message>
    <message>
        <source>The sequence is right</source>
        <translation>L&apos;ordre est bon</translation>
    </message>
    <message>
        <source>What is there</source>
        <translation>Ce qui s&apos;y trouve</translation>
    </message>
    <message>
        <source>Stretch within ±</source>
        <translation>Allongement à ±</translation>
    </message>
    <message>
        <source>0.0003 in</source>
        <translation>0.0003 in</translation>
    </message>
    <message>
        <source>Verified by</source>
        <translation>Vérifié par</translation>
    </message>
    <message>
        <source>Used once</source>
        <translation>Usage unique</translation>
    </message>
    <message>
        <source>Grip</source>
        <translation>Longueur serrée</translation>
    </message>
    <message>
        <source>clamped length</source>
        <translation>longueur prise</translation>
    </message>
    <message>
        <source>Shank</source>
        <translation>Tige</translation>
    </message>
    <message>
        <source>diameter without thread</source>
        <translation>hors filet</translation>
    </message>
    <message>
        <source>Thread in grip</source>
        <translation>Dont filetée</translation>
    </message>
    <message>
        <source>It clamps</source>
        <translation>Elle serre</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Endroits</translation>
    </message>
    <message>
        <source>not specified yet</source>
        <translation>pas encore prescrit</translation>
    </message>
    <message>
        <source>goes into the new group</source>
        <translation>va dans le nouveau groupe</translation>
    </message>
    <message>
        <source>stays</source>
        <translation>reste</translation>
    </message>
    <message>
        <source>or the proof stress: 170 ksi</source>
        <translation>ou la contrainte d&apos;épreuve&#xa0;: 170 ksi</translation>
    </message>
    <message>
        <source>Store gro&amp;up</source>
        <translation>Enregistrer le &amp;groupe</translation>
    </message>
</context>
<context>
    <name>caprail::FastenersStation</name>
    <message>
        <source>Tighten</source>
        <translation>Serrer</translation>
    </message>
    <message>
        <source>Verify round</source>
        <translation>Tournée</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation>Groupes</translation>
    </message>
    <message>
        <source>Set the engine layout at the engine station: the fasteners follow from it.</source>
        <translation>Fixer l&apos;architecture du moteur au poste Moteur&#xa0;: les fixations en découlent.</translation>
    </message>
    <message>
        <source>What each group is tightened to, and what each fastener was tightened to. A verify round goes over every main-cap and rod fastener again with the stacks off, without backing them off: it held, or it moved by an angle. One that moved makes the gaps of its cap stale.</source>
        <translation>À quoi chaque groupe se serre, et à quoi chaque fixation a été serrée. Une tournée de vérification reprend chaque fixation de chapeau et de bielle, piles retirées, sans la desserrer&#xa0;: elle a tenu, ou elle a bougé d&apos;un angle. Une fixation qui a bougé périme les interstices de son chapeau.</translation>
    </message>
    <message>
        <source>Clamp check</source>
        <translation>Effort de serrage</translation>
    </message>
</context>
<context>
    <name>caprail::FastenersTighten</name>
    <message>
        <source>&amp;Loosened</source>
        <translation>De&amp;sserrée</translation>
    </message>
    <message>
        <source>Main caps</source>
        <translation>Chapeaux de palier</translation>
    </message>
    <message>
        <source>Rods</source>
        <translation>Bielles</translation>
    </message>
    <message>
        <source>Girdle nuts</source>
        <translation>Écrous de plaque</translation>
    </message>
    <message>
        <source>Pan rail</source>
        <translation>Plan de joint</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>Rear</source>
        <translation>Arrière</translation>
    </message>
    <message>
        <source>Which fasteners</source>
        <translation>Quelles fixations</translation>
    </message>
    <message>
        <source>The fastener was loosened: what rests on it becomes stale</source>
        <translation>La fixation a été desserrée&#xa0;: ce qui s&apos;y appuie devient périmé</translation>
    </message>
    <message>
        <source>round %1: %2</source>
        <translation>tournée %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>loosened</source>
        <translation>desserrée</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>desserrée</translation>
    </message>
    <message>
        <source>All %1 are as specified</source>
        <translation>Les %1 sont toutes comme prescrit</translation>
    </message>
    <message>
        <source>&amp;All %1 as specified</source>
        <translation>To&amp;utes les %1 comme prescrit</translation>
    </message>
    <message>
        <source>Enters every fastener of this kind that is not yet at its specified value, one entry each, in sequence</source>
        <translation>Inscrit chaque fixation de ce type qui n&apos;est pas encore à sa valeur prescrite, une inscription chacune, dans l&apos;ordre</translation>
    </message>
    <message>
        <source>%1 brought to (Enter alone: as specified)</source>
        <translation>%1, amener à (Entrée seule&#xa0;: comme prescrit)</translation>
    </message>
    <message>
        <source>A &amp;new one was fitted</source>
        <translation>Une &amp;neuve a été montée</translation>
    </message>
    <message>
        <source>This kind is used once: a piece that is tightened for the second time opens a finding</source>
        <translation>Ce type est à usage unique&#xa0;: un exemplaire serré pour la deuxième fois ouvre un constat</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neuf</translation>
    </message>
</context>
<context>
    <name>caprail::FastenersVerify</name>
    <message>
        <source>What moved in this round, and what it made stale</source>
        <translation>Ce qui a bougé dans cette tournée, et ce que cela a périmé</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Take &amp;off all %1 stacks</source>
        <translation>&amp;Retirer les %1 piles</translation>
    </message>
    <message>
        <source>&amp;Begin verify round %1</source>
        <translation>&amp;Commencer la tournée %1</translation>
    </message>
    <message>
        <source>No layout</source>
        <translation>Pas d&apos;architecture</translation>
    </message>
    <message>
        <source>Set the engine layout at the engine station first.</source>
        <translation>Fixer d&apos;abord l&apos;architecture du moteur au poste Moteur.</translation>
    </message>
    <message>
        <source>Enter goes to the gap</source>
        <translation>Entrée mène à l&apos;interstice</translation>
    </message>
    <message>
        <source>Fasteners verified in this round</source>
        <translation>Fixations vérifiées dans cette tournée</translation>
    </message>
    <message>
        <source>Mark in &amp;line</source>
        <translation>Repère a&amp;ligné</translation>
    </message>
    <message>
        <source>Round %1: the stretch that is read now, or the angle it moved as 4°</source>
        <translation>Tournée %1&#xa0;: l&apos;allongement lu maintenant, ou l&apos;angle du mouvement comme 4°</translation>
    </message>
    <message>
        <source>H</source>
        <translation>H</translation>
    </message>
    <message>
        <source>Round %1: H if its mark still lines up, else the angle it moved</source>
        <translation>Tournée %1&#xa0;: H si son repère est encore aligné, sinon l&apos;angle du mouvement</translation>
    </message>
    <message>
        <source>Round %1: H if it held, else the angle it moved</source>
        <translation>Tournée %1&#xa0;: H si elle a tenu, sinon l&apos;angle du mouvement</translation>
    </message>
    <message>
        <source>Mark in line</source>
        <translation>Repère aligné</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Tient</translation>
    </message>
    <message>
        <source>Hel&amp;d</source>
        <translation>Tie&amp;nt</translation>
    </message>
</context>
<context>
    <name>caprail::FeelResults</name>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Straightedge</source>
        <translation>Règle</translation>
    </message>
    <message>
        <source>± δ</source>
        <translation>± δ</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>encore aucun</translation>
    </message>
    <message>
        <source>Answers</source>
        <translation>Réponses</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Échéance</translation>
    </message>
    <message>
        <source>Whose feel was tried</source>
        <translation>De qui le toucher a été éprouvé</translation>
    </message>
    <message>
        <source>Whose feel stands until when</source>
        <translation>De qui le toucher vaut jusqu&apos;à quand</translation>
    </message>
    <message>
        <source>More answers make it surer; or stop here.</source>
        <translation>Plus de réponses le rendent plus sûr&#xa0;; ou arrêter ici.</translation>
    </message>
</context>
<context>
    <name>caprail::GaugeHub</name>
    <message>
        <source>%1 sends values faster than anyone presses its button; only the first was taken. Set it to send one value for each press.</source>
        <translation>%1 envoie des valeurs plus vite qu&apos;on n&apos;appuie sur son bouton&#xa0;; seule la première a été prise. Le régler pour envoyer une valeur à chaque appui.</translation>
    </message>
    <message>
        <source>%1 came from %2 and is not stored: no value field has the keyboard. Choose the place, then press the gauge&apos;s button again.</source>
        <translation>%1 est venu de %2 et n&apos;est pas enregistré&#xa0;: aucun champ de valeur n&apos;a le clavier. Choisir l&apos;endroit, puis appuyer de nouveau sur le bouton de l&apos;appareil.</translation>
    </message>
</context>
<context>
    <name>caprail::GaugesDialog</name>
    <message>
        <source>&amp;Take its values</source>
        <translation>Prendre ses &amp;valeurs</translation>
    </message>
    <message>
        <source>Re&amp;move</source>
        <translation>&amp;Retirer</translation>
    </message>
    <message>
        <source>&amp;Fit the pattern to the last line</source>
        <translation>A&amp;juster le motif à la dernière ligne</translation>
    </message>
    <message>
        <source>Gauges on this computer</source>
        <translation>Appareils de cet ordinateur</translation>
    </message>
    <message>
        <source>as chosen at the station</source>
        <translation>comme choisi au poste</translation>
    </message>
    <message>
        <source>types like a keyboard</source>
        <translation>tape comme un clavier</translation>
    </message>
    <message>
        <source>on a serial line</source>
        <translation>sur une liaison série</translation>
    </message>
    <message>
        <source>with Enter or a line break</source>
        <translation>par Entrée ou saut de ligne</translation>
    </message>
    <message>
        <source>with Tab</source>
        <translation>par Tab</translation>
    </message>
    <message>
        <source>with nothing: after a pause</source>
        <translation>par rien&#xa0;: après une pause</translation>
    </message>
    <message>
        <source>none: the line says it</source>
        <translation>aucune&#xa0;: la ligne la dit</translation>
    </message>
    <message>
        <source>no parity</source>
        <translation>sans parité</translation>
    </message>
    <message>
        <source>even parity</source>
        <translation>parité paire</translation>
    </message>
    <message>
        <source>odd parity</source>
        <translation>parité impaire</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Appareil</translation>
    </message>
    <message>
        <source>Lines as they come</source>
        <translation>Les lignes à leur arrivée</translation>
    </message>
    <message>
        <source>put the keyboard here and press the gauge&apos;s button</source>
        <translation>mettre le clavier ici et appuyer sur le bouton de l&apos;appareil</translation>
    </message>
    <message>
        <source>The gauge&apos;s line, with # where the value stands and * for anything</source>
        <translation>La ligne de l&apos;appareil, avec # à la place de la valeur et * pour n&apos;importe quoi</translation>
    </message>
    <message>
        <source>Speed, bits a second</source>
        <translation>Vitesse, bits par seconde</translation>
    </message>
    <message>
        <source>Data bits</source>
        <translation>Bits de données</translation>
    </message>
    <message>
        <source>Parity</source>
        <translation>Parité</translation>
    </message>
    <message>
        <source>Stop bits</source>
        <translation>Bits d&apos;arrêt</translation>
    </message>
    <message>
        <source>&amp;Instrument in records</source>
        <translation>&amp;Instrument dans les carnets</translation>
    </message>
    <message>
        <source>&amp;Connected</source>
        <translation>&amp;Connecté</translation>
    </message>
    <message>
        <source>Po&amp;rt</source>
        <translation>&amp;Port</translation>
    </message>
    <message>
        <source>Speed, data bits, parity, stop bits</source>
        <translation>Vitesse, bits de données, parité, bits d&apos;arrêt</translation>
    </message>
    <message>
        <source>A line &amp;ends</source>
        <translation>Une ligne &amp;finit</translation>
    </message>
    <message>
        <source>&amp;Pattern of a line</source>
        <translation>&amp;Motif d&apos;une ligne</translation>
    </message>
    <message>
        <source>&amp;Unit, where the line has none</source>
        <translation>&amp;Unité, si la ligne n&apos;en a pas</translation>
    </message>
    <message>
        <source>Tr&amp;y it</source>
        <translation>&amp;Essayer</translation>
    </message>
    <message>
        <source>&amp;Lines as they come</source>
        <translation>&amp;Lignes à leur arrivée</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>&amp;Ajouter</translation>
    </message>
    <message>
        <source>A gauge&apos;s value goes to the value field that has the keyboard, as if it were typed and Enter pressed. In the pattern # stands for the value and * for anything: 01A# is a value behind the gauge&apos;s own prefix.</source>
        <translation>La valeur d&apos;un appareil va au champ de valeur qui a le clavier, comme si elle était tapée et suivie d&apos;Entrée. Dans le motif, # remplace la valeur et * n&apos;importe quoi&#xa0;: 01A# est une valeur derrière le préfixe de l&apos;appareil.</translation>
    </message>
    <message>
        <source>%1 is open: press the gauge&apos;s button.</source>
        <translation>%1 est ouvert&#xa0;: appuyer sur le bouton de l&apos;appareil.</translation>
    </message>
    <message>
        <source>“%1”  is read as  %2</source>
        <translation>«&#xa0;%1&#xa0;»  est lu comme  %2</translation>
    </message>
    <message>
        <source>Choose the port that the gauge is plugged into.</source>
        <translation>Choisir le port où l&apos;appareil est branché.</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleActions</name>
    <message>
        <source>Parts and stacks</source>
        <translation>Pièces et piles</translation>
    </message>
    <message>
        <source>Take all stacks off</source>
        <translation>Retirer toutes les piles</translation>
    </message>
    <message>
        <source>Put all stacks back</source>
        <translation>Remettre toutes les piles</translation>
    </message>
    <message>
        <source>What was changed at %1?</source>
        <translation>Qu&apos;est-ce qui a été changé au %1&#xa0;?</translation>
    </message>
    <message>
        <source>Pan rail worked on…</source>
        <translation>Plan de joint retravaillé…</translation>
    </message>
    <message>
        <source>What was done to the pan rail? All gaps must be read again.</source>
        <translation>Qu&apos;a-t-on fait au plan de joint&#xa0;? Tous les interstices sont à relire.</translation>
    </message>
    <message>
        <source>Take the stack at %1 apart</source>
        <translation>Démonter la pile au %1</translation>
    </message>
    <message>
        <source>Another nut or washer at %1…</source>
        <translation>Autre écrou ou rondelle au %1…</translation>
    </message>
    <message>
        <source>Open a finding at %1…</source>
        <translation>Ouvrir un constat au %1…</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>What was seen at %1?</source>
        <translation>Qu&apos;a-t-on vu au %1&#xa0;?</translation>
    </message>
    <message>
        <source>Washer at %1 turned</source>
        <translation>Rondelle au %1 tournée</translation>
    </message>
    <message>
        <source>Washer at %1 turned over</source>
        <translation>Rondelle au %1 retournée</translation>
    </message>
    <message>
        <source>Washer at %1 dressed</source>
        <translation>Rondelle au %1 surfacée</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleBoard</name>
    <message>
        <source>not built</source>
        <translation>non montée</translation>
    </message>
    <message>
        <source>on</source>
        <translation>posée</translation>
    </message>
    <message>
        <source>off</source>
        <translation>retirée</translation>
    </message>
    <message>
        <source>built, %1</source>
        <translation>montée, %1</translation>
    </message>
    <message>
        <source>no gap</source>
        <translation>non lu</translation>
    </message>
    <message>
        <source>gap %1</source>
        <translation>interstice %1</translation>
    </message>
    <message>
        <source>nearest: %1</source>
        <translation>au plus près&#xa0;: %1</translation>
    </message>
    <message>
        <source>should be: %1</source>
        <translation>devrait être&#xa0;: %1</translation>
    </message>
    <message>
        <source>Stacks by position</source>
        <translation>Piles par position</translation>
    </message>
    <message>
        <source>Set the engine layout first: the stacks lie where it says.</source>
        <translation>Fixer d&apos;abord l&apos;architecture du moteur&#xa0;: les piles sont là où elle le dit.</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>nue</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>planifiée</translation>
    </message>
    <message>
        <source>stands</source>
        <translation>en place</translation>
    </message>
    <message>
        <source>planned %1</source>
        <translation>planifiée %1</translation>
    </message>
    <message>
        <source>pinned</source>
        <translation>figée</translation>
    </message>
    <message>
        <source>stands: %1</source>
        <translation>en place&#xa0;: %1</translation>
    </message>
    <message>
        <source>residual %1</source>
        <translation>résidu %1</translation>
    </message>
    <message>
        <source>nothing in the kit meets the band, nearest: %1, residual %2</source>
        <translation>rien dans l&apos;assortiment n&apos;atteint la plage, au plus près&#xa0;: %1, résidu %2</translation>
    </message>
    <message>
        <source>planned: %1, residual %2</source>
        <translation>planifiée&#xa0;: %1, résidu %2</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleFeel</name>
    <message>
        <source>&amp;Begin the study</source>
        <translation>&amp;Commencer l&apos;étude</translation>
    </message>
    <message>
        <source>Whose feel is tried</source>
        <translation>De qui le toucher est éprouvé</translation>
    </message>
    <message>
        <source>Straightedge</source>
        <translation>Règle</translation>
    </message>
    <message>
        <source>the flat, and what the straightedge lies on</source>
        <translation>le marbre, et ce sur quoi repose la règle</translation>
    </message>
    <message>
        <source>two shims alike, or a height</source>
        <translation>deux cales pareilles, ou une hauteur</translation>
    </message>
    <message>
        <source>shims like S014+S022, or heights, parted by semicolons</source>
        <translation>des cales comme S014+S022, ou des hauteurs, séparées par des points-virgules</translation>
    </message>
    <message>
        <source>Whose feel</source>
        <translation>Toucher de</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Installation</translation>
    </message>
    <message>
        <source>Rests</source>
        <translation>Appuis</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Marches</translation>
    </message>
    <message>
        <source>Study of the feel: R rocks, D drags, L loose</source>
        <translation>Étude du toucher&#xa0;: B bascule, F frotte, L libre</translation>
    </message>
    <message>
        <source>Known steps under the straightedge, laid between two rests on a flat. Somebody else lays them as asked for here and presses the key; who feels does not look at the screen, nor at the shims. 25 answers or more.</source>
        <translation>Des marches connues sous la règle, posées entre deux appuis sur un marbre. Quelqu&apos;un d&apos;autre les pose comme demandé ici et appuie sur la touche&#xa0;; qui touche ne regarde ni l&apos;écran ni les cales. 25 réponses ou plus.</translation>
    </message>
    <message>
        <source>The feel, tried like an instrument</source>
        <translation>Le toucher, éprouvé comme un instrument</translation>
    </message>
    <message>
        <source>Name the straightedge: add it with its flatness at the engine station.</source>
        <translation>Nommer la règle&#xa0;: l&apos;ajouter avec sa planéité au poste Moteur.</translation>
    </message>
    <message>
        <source>Name the rests and the steps: shims of the kit that are measured, or heights.</source>
        <translation>Nommer les appuis et les marches&#xa0;: des cales mesurées de l&apos;assortiment, ou des hauteurs.</translation>
    </message>
    <message>
        <source>%1 steps are ready: begin the study.</source>
        <translation>%1 marches sont prêtes&#xa0;: commencer l&apos;étude.</translation>
    </message>
    <message>
        <source>Answer %1 of %2: lay %3 between the rests.</source>
        <translation>Réponse %1 sur %2&#xa0;: poser %3 entre les appuis.</translation>
    </message>
    <message>
        <source>P&amp;ropose from the kit</source>
        <translation>P&amp;roposer depuis l&apos;assortiment</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleGaps</name>
    <message>
        <source>pass </source>
        <translation>passe </translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Passe</translation>
    </message>
    <message>
        <source>Order of the pass</source>
        <translation>Ordre de la passe</translation>
    </message>
    <message>
        <source>Order…</source>
        <translation>Ordre…</translation>
    </message>
    <message>
        <source>Change the order of the pass</source>
        <translation>Changer l&apos;ordre de la passe</translation>
    </message>
    <message>
        <source>gap at %1</source>
        <translation>interstice au %1</translation>
    </message>
    <message>
        <source>No layout</source>
        <translation>Pas d&apos;architecture</translation>
    </message>
    <message>
        <source>The positions follow from the engine layout: set it at the engine station.</source>
        <translation>Les positions découlent de l&apos;architecture du moteur&#xa0;: la fixer au poste Moteur.</translation>
    </message>
    <message>
        <source>Every gap is accepted: the survey is done.</source>
        <translation>Chaque interstice est accepté&#xa0;: le relevé est fait.</translation>
    </message>
    <message>
        <source>This is the last one.</source>
        <translation>C&apos;est le dernier.</translation>
    </message>
    <message>
        <source>Then %1 · %2 more in pass %3</source>
        <translation>Puis %1 · encore %2 dans la passe %3</translation>
    </message>
    <message>
        <source>Then pass %1 begins at %2</source>
        <translation>Puis la passe %1 commence au %2</translation>
    </message>
    <message>
        <source>Gap at %1, pass %2</source>
        <translation>Interstice au %1, passe %2</translation>
    </message>
    <message>
        <source>Choose an order, or type one: every place once.</source>
        <translation>Choisir un ordre, ou en taper un&#xa0;: chaque endroit une fois.</translation>
    </message>
    <message>
        <source>Does not go</source>
        <translation>Ne passe pas</translation>
    </message>
    <message>
        <source>if it was tried: 22+23+13 thou</source>
        <translation>si essayé&#xa0;: 22+23+13 thou</translation>
    </message>
    <message>
        <source>Straightedge across the rails</source>
        <translation>Règle en travers du plan de joint</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleKit</name>
    <message>
        <source>Shim</source>
        <translation>Cale</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Marqué</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Mesuré</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lectures</translation>
    </message>
    <message>
        <source>Off marking</source>
        <translation>Écart au marquage</translation>
    </message>
    <message>
        <source>Where it is</source>
        <translation>Où elle est</translation>
    </message>
    <message>
        <source>Shims of the kit</source>
        <translation>Cales de l&apos;assortiment</translation>
    </message>
    <message>
        <source>bag or maker, if told apart</source>
        <translation>sachet ou fabricant, si distingués</translation>
    </message>
    <message>
        <source>Bag of the added shims</source>
        <translation>Sachet des cales ajoutées</translation>
    </message>
    <message>
        <source>Micrometer</source>
        <translation>Micromètre</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Sachet</translation>
    </message>
    <message>
        <source>The kit is empty. Add its shims below: one by name, or a count of one size.</source>
        <translation>L&apos;assortiment est vide. Ajouter ses cales ci-dessous&#xa0;: une par nom, ou un nombre d&apos;une épaisseur.</translation>
    </message>
    <message>
        <source>%1 shims in the kit · %2 not measured · %3 off their marking by more than %4 · %5 set aside</source>
        <translation>%1 cales dans l&apos;assortiment · %2 non mesurées · %3 hors de leur marquage de plus de %4 · %5 mises de côté</translation>
    </message>
    <message>
        <source>free</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>mise de côté</translation>
    </message>
    <message>
        <source>in the stack at %1</source>
        <translation>dans la pile au %1</translation>
    </message>
    <message>
        <source>✕ off its marking</source>
        <translation>✕ hors marquage</translation>
    </message>
    <message>
        <source>Add shims: “S001 10 thou”, “S001-S012 10 thou” or “12 x 10 thou”</source>
        <translation>Ajouter des cales&#xa0;: «&#xa0;S001 10 thou&#xa0;», «&#xa0;S001-S012 10 thou&#xa0;» ou «&#xa0;12 x 10 thou&#xa0;»</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1&#xa0;: %2 sur %3</translation>
    </message>
    <message>
        <source>Measure: a shim&apos;s name, then its thickness</source>
        <translation>Mesurer&#xa0;: le nom d&apos;une cale, puis son épaisseur</translation>
    </message>
    <message>
        <source>Measure %1, reading %2 (or a shim&apos;s name first)</source>
        <translation>Mesurer %1, lecture %2 (ou d&apos;abord le nom d&apos;une cale)</translation>
    </message>
    <message>
        <source>Take %1 back into the kit</source>
        <translation>Reprendre %1 dans l&apos;assortiment</translation>
    </message>
    <message>
        <source>Set %1 aside…</source>
        <translation>Mettre %1 de côté…</translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation>Mettre de côté</translation>
    </message>
    <message>
        <source>Why is %1 set aside?</source>
        <translation>Pourquoi %1 est-elle mise de côté&#xa0;?</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleLoadPage</name>
    <message>
        <source>At</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Residual</source>
        <translation>Résidu</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>± U</source>
        <translation>± U</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>Of preload</source>
        <translation>De la précharge</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Charges</translation>
    </message>
    <message>
        <source>bolted to the pan rail</source>
        <translation>boulonnée au plan de joint</translation>
    </message>
    <message>
        <source>on its nuts alone</source>
        <translation>sur ses seuls écrous</translation>
    </message>
    <message>
        <source>How the girdle is held</source>
        <translation>Comment la plaque est tenue</translation>
    </message>
    <message>
        <source>The girdle is</source>
        <translation>La plaque est</translation>
    </message>
    <message>
        <source>No load over</source>
        <translation>Charges, au plus</translation>
    </message>
    <message>
        <source>Residuals within ±</source>
        <translation>Résidus à ±</translation>
    </message>
    <message>
        <source>What the loads assume</source>
        <translation>Ce que supposent les charges</translation>
    </message>
    <message>
        <source>the largest load</source>
        <translation>la plus grande charge</translation>
    </message>
    <message>
        <source>Residuals within ± %1 keep every load at or below %2, however they are spread.</source>
        <translation>Des résidus à ± %1 gardent toute charge à %2 au plus, quelle que soit leur répartition.</translation>
    </message>
    <message>
        <source>Held like this, no residual makes a load.</source>
        <translation>Tenue ainsi, aucun résidu ne fait de charge.</translation>
    </message>
    <message>
        <source>the band of the residual</source>
        <translation>la plage du résidu</translation>
    </message>
    <message>
        <source>Residuals within ± %1 can cost up to %2 at one place.</source>
        <translation>Des résidus à ± %1 peuvent coûter jusqu&apos;à %2 à un endroit.</translation>
    </message>
    <message>
        <source>Working out …</source>
        <translation>Calcul en cours …</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleRecheck</name>
    <message>
        <source>Straightedge</source>
        <translation>Règle</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>à faire</translation>
    </message>
    <message>
        <source>There is no stack here yet: build it first (Alt+3).</source>
        <translation>Il n&apos;y a pas encore de pile ici&#xa0;: la monter d&apos;abord (Alt+3).</translation>
    </message>
    <message>
        <source>The stack is off: put it back first (Parts and stacks).</source>
        <translation>La pile est retirée&#xa0;: la remettre d&apos;abord (Pièces et piles).</translation>
    </message>
    <message>
        <source>Residual %1: by the numbers it %2.</source>
        <translation>Résidu %1&#xa0;: d&apos;après les chiffres, elle %2.</translation>
    </message>
    <message>
        <source>should be loose</source>
        <translation>devrait être libre</translation>
    </message>
    <message>
        <source>should rock</source>
        <translation>devrait basculer</translation>
    </message>
    <message>
        <source>should drag</source>
        <translation>devrait frotter</translation>
    </message>
    <message>
        <source>The gap here is not accepted, so the numbers say nothing yet.</source>
        <translation>L&apos;interstice n&apos;est pas accepté ici&#xa0;: les chiffres ne disent encore rien.</translation>
    </message>
    <message>
        <source>&amp;Try a feel…</source>
        <translation>Épro&amp;uver un toucher…</translation>
    </message>
    <message>
        <source>B  bracket it</source>
        <translation>E  encadrer</translation>
    </message>
    <message>
        <source>Exchange shims until it rocks and until it is loose: the residual lies between, whatever the leaves were worth.</source>
        <translation>Échanger des cales jusqu&apos;à ce que la règle bascule et jusqu&apos;à ce qu&apos;elle soit libre&#xa0;: le résidu est entre les deux, quoi que vaillent les lames.</translation>
    </message>
    <message>
        <source>Known steps in random order, once a year: what you feel then carries a verdict.</source>
        <translation>Des marches connues au hasard, une fois par an&#xa0;: ce que l&apos;on sent porte alors un jugement.</translation>
    </message>
    <message>
        <source>Recheck at %1: R rocks, D drags, L loose</source>
        <translation>Recontrôle au %1&#xa0;: B bascule, F frotte, L libre</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleStacks</name>
    <message>
        <source>bare</source>
        <translation>nue</translation>
    </message>
    <message>
        <source>&amp;Use the plan</source>
        <translation>&amp;Reprendre le plan</translation>
    </message>
    <message>
        <source>&amp;Confirm this stack</source>
        <translation>&amp;Confirmer cette pile</translation>
    </message>
    <message>
        <source>Set a shim &amp;aside…</source>
        <translation>&amp;Mettre une cale de côté…</translation>
    </message>
    <message>
        <source>What the plan aims for</source>
        <translation>Ce que vise le plan</translation>
    </message>
    <message>
        <source>residual at %1</source>
        <translation>résidu au %1</translation>
    </message>
    <message>
        <source>After fewest shims</source>
        <translation>Après le moins de cales</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Calcul du plan …</translation>
    </message>
    <message>
        <source>Records the stacks of the plan as built; lay them on as drawn.</source>
        <translation>Inscrit les piles du plan comme montées&#xa0;; les poser comme dessiné.</translation>
    </message>
    <message>
        <source>not built</source>
        <translation>non montée</translation>
    </message>
    <message>
        <source>built: %1</source>
        <translation>montée&#xa0;: %1</translation>
    </message>
    <message>
        <source>The plan keeps a pinned stack as it is and plans the rest around it.</source>
        <translation>Le plan garde telle quelle une pile figée et planifie le reste autour.</translation>
    </message>
    <message>
        <source>%1 is not measured</source>
        <translation>%1 n&apos;est pas mesurée</translation>
    </message>
    <message>
        <source>%1 lies at %2</source>
        <translation>%1 est au %2</translation>
    </message>
    <message>
        <source>%1 thick</source>
        <translation>épaisseur %1</translation>
    </message>
    <message>
        <source>in band</source>
        <translation>dans la plage</translation>
    </message>
    <message>
        <source>out of band</source>
        <translation>hors de la plage</translation>
    </message>
    <message>
        <source>be loose</source>
        <translation>être libre</translation>
    </message>
    <message>
        <source>rock</source>
        <translation>basculer</translation>
    </message>
    <message>
        <source>drag</source>
        <translation>frotter</translation>
    </message>
    <message>
        <source>Stack built at %1: shim names, or a dash for bare</source>
        <translation>Pile montée au %1&#xa0;: noms de cales, ou un tiret pour nue</translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation>Mettre de côté</translation>
    </message>
    <message>
        <source>Which shim should the plan do without?</source>
        <translation>De quelle cale le plan doit-il se passer&#xa0;?</translation>
    </message>
    <message>
        <source>Why is %1 set aside?</source>
        <translation>Pourquoi %1 est-elle mise de côté&#xa0;?</translation>
    </message>
    <message>
        <source>Plan all ane&amp;w</source>
        <translation>To&amp;ut replanifier</translation>
    </message>
    <message>
        <source>What stands stays, and the plan is for the other places. Pressed, the plan begins with bare washers.</source>
        <translation>Ce qui est en place reste, et le plan est pour les autres endroits. Enfoncé, le plan part de rondelles nues.</translation>
    </message>
    <message>
        <source>List the &amp;kit first…</source>
        <translation>Lister d&apos;abord l&apos;a&amp;ssortiment…</translation>
    </message>
    <message>
        <source>No shim is listed yet, so there is nothing to build a stack of. Alt+2</source>
        <translation>Aucune cale n&apos;est encore listée&#xa0;: il n&apos;y a rien dont monter une pile. Alt+2</translation>
    </message>
    <message>
        <source>No shim is listed yet: list the shims of the kit, then measure them.</source>
        <translation>Aucune cale n&apos;est encore listée&#xa0;: lister celles de l&apos;assortiment, puis les mesurer.</translation>
    </message>
    <message>
        <source>planned: %1</source>
        <translation>planifiée&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1, residual %2: %3, should %4</source>
        <translation>%1, résidu %2&#xa0;: %3, devrait %4</translation>
    </message>
    <message>
        <source>Unp&amp;in</source>
        <translation>Li&amp;bérer</translation>
    </message>
    <message>
        <source>P&amp;in</source>
        <translation>Fi&amp;ger</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleStation</name>
    <message>
        <source>Gaps</source>
        <translation>Interstices</translation>
    </message>
    <message>
        <source>Shims</source>
        <translation>Cales</translation>
    </message>
    <message>
        <source>Stacks</source>
        <translation>Piles</translation>
    </message>
    <message>
        <source>Recheck</source>
        <translation>Recontrôle</translation>
    </message>
    <message>
        <source>Lay the straightedge across both pan rails, read the gap down to each washer, and type it: 57.5 thou, .0575, 1.46 mm, or the leaves in one slot, 22+23+12.5 thou. Two passes or more. Enter the kit, measure its shims, use the plan, build the stacks, and recheck each: rocks, drags or loose.</source>
        <translation>Poser la règle en travers du plan de joint, lire l&apos;interstice jusqu&apos;à chaque rondelle, et le taper&#xa0;: 57.5 thou, .0575, 1.46 mm, ou les lames dans une fente, 22+23+12.5 thou. Deux passes ou plus. Inscrire l&apos;assortiment, mesurer ses cales, reprendre le plan, monter les piles, et recontrôler chacune&#xa0;: bascule, frotte ou libre.</translation>
    </message>
    <message>
        <source>Feel</source>
        <translation>Toucher</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Charge</translation>
    </message>
</context>
<context>
    <name>caprail::GirdleSurvey</name>
    <message>
        <source>Set the engine layout at the engine station: the pan rail is drawn from it.</source>
        <translation>Fixer l&apos;architecture du moteur au poste Moteur&#xa0;: le plan de joint en est dessiné.</translation>
    </message>
</context>
<context>
    <name>caprail::HistoryChanges</name>
    <message>
        <source>Entry</source>
        <translation>N°</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Sort</source>
        <translation>Genre</translation>
    </message>
    <message>
        <source>What was changed, and why</source>
        <translation>Ce qui a été changé, et pourquoi</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Changements</translation>
    </message>
    <message>
        <source>Nothing was changed after something had been judged by it.</source>
        <translation>Rien n&apos;a été changé de ce qui avait déjà servi à juger.</translation>
    </message>
    <message>
        <source>Work on this build: %1, from %2 to %3.</source>
        <translation>Travail sur ce montage&#xa0;: %1, de %2 à %3.</translation>
    </message>
</context>
<context>
    <name>caprail::HistoryLedger</name>
    <message>
        <source>Find in the record: 3R, S014, 57.5, a name …</source>
        <translation>Rechercher dans le carnet&#xa0;: 3R, S014, 57.5, un nom …</translation>
    </message>
    <message>
        <source>Find in the record</source>
        <translation>Rechercher dans le carnet</translation>
    </message>
    <message>
        <source>Kind of entry</source>
        <translation>Type d&apos;inscription</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Struck or not</source>
        <translation>Biffées ou non</translation>
    </message>
    <message>
        <source>all entries</source>
        <translation>toutes les inscriptions</translation>
    </message>
    <message>
        <source>not struck</source>
        <translation>non biffées</translation>
    </message>
    <message>
        <source>struck only</source>
        <translation>biffées seulement</translation>
    </message>
    <message>
        <source>No entry is like this: change what is looked for above.</source>
        <translation>Aucune inscription n&apos;est ainsi&#xa0;: changer la recherche ci-dessus.</translation>
    </message>
    <message>
        <source>Stri&amp;ke…</source>
        <translation>&amp;Biffer…</translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translation>E&amp;xporter…</translation>
    </message>
    <message>
        <source>What is shown, as a table for a spreadsheet</source>
        <translation>Ce qui est montré, en tableau pour un tableur</translation>
    </message>
    <message>
        <source>every kind</source>
        <translation>tout type</translation>
    </message>
    <message>
        <source>everybody</source>
        <translation>tout le monde</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>entries.csv</source>
        <translation>inscriptions.csv</translation>
    </message>
    <message>
        <source>%1 so far, of %2 …</source>
        <translation>%1 jusqu&apos;ici, sur %2 …</translation>
    </message>
    <message>
        <source>Withdraw the selected entries, with one reason (Delete)</source>
        <translation>Retirer les inscriptions choisies, avec un seul motif (Suppr)</translation>
    </message>
</context>
<context>
    <name>caprail::HistoryMatrix</name>
    <message>
        <source>no outcome</source>
        <translation>aucun résultat</translation>
    </message>
    <message>
        <source>no instrument named</source>
        <translation>aucun instrument nommé</translation>
    </message>
    <message>
        <source>Round %1, begun %2 by %3 with %4</source>
        <translation>Tournée %1, commencée %2 par %3 avec %4</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>biffée</translation>
    </message>
</context>
<context>
    <name>caprail::HistoryRepeatability</name>
    <message>
        <source>Repeatability by person and instrument</source>
        <translation>Répétabilité par personne et instrument</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lectures</translation>
    </message>
    <message>
        <source>Places read twice</source>
        <translation>Endroits lus deux fois</translation>
    </message>
    <message>
        <source>s of one reading</source>
        <translation>s d&apos;une lecture</translation>
    </message>
    <message>
        <source>Degrees of freedom</source>
        <translation>Degrés de liberté</translation>
    </message>
    <message>
        <source>Where the scatter comes from</source>
        <translation>D&apos;où vient la dispersion</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>Share of variance</source>
        <translation>Part de la variance</translation>
    </message>
    <message>
        <source>Who has read which place how often</source>
        <translation>Qui a lu quel endroit combien de fois</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Endroit</translation>
    </message>
    <message>
        <source>Study of which readings</source>
        <translation>Étude de quelles lectures</translation>
    </message>
    <message>
        <source>Enter goes to the place, to read it again</source>
        <translation>Entrée mène à l&apos;endroit, pour le relire</translation>
    </message>
    <message>
        <source>A study of</source>
        <translation>Une étude de</translation>
    </message>
    <message>
        <source>Repeatability of each person with each instrument, pooled over the record</source>
        <translation>Répétabilité de chaque personne avec chaque instrument, sur tout le carnet</translation>
    </message>
    <message>
        <source>not named</source>
        <translation>non nommé</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>pas encore connu</translation>
    </message>
    <message>
        <source>Nothing is measured yet: readings appear here as they are made.</source>
        <translation>Rien n&apos;est encore mesuré&#xa0;: les lectures apparaissent ici à mesure.</translation>
    </message>
    <message>
        <source>No two places were read twice by one person yet. A short study: three people (or one) read ten places two or three times each, without looking at what was read before. Choose the name at the bottom right before each person begins.</source>
        <translation>Aucune personne n&apos;a encore lu deux endroits deux fois. Une étude courte&#xa0;: trois personnes (ou une) lisent dix endroits deux ou trois fois chacun, sans regarder ce qui a été lu avant. Choisir le nom en bas à droite avant que chacune ne commence.</translation>
    </message>
    <message>
        <source>%1 · %2 places · %3 passes. %4</source>
        <translation>%1 · %2 endroits · %3 passes. %4</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>Repeatability: one person, one place</source>
        <translation>Répétabilité&#xa0;: une personne, un endroit</translation>
    </message>
    <message>
        <source>Person to person</source>
        <translation>De personne à personne</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>The readings are being collected: %1 of %2 entries.</source>
        <translation>Les lectures sont rassemblées&#xa0;: %1 inscriptions sur %2.</translation>
    </message>
    <message>
        <source>6 s / band</source>
        <translation>6 s / plage</translation>
    </message>
    <message>
        <source>Held against the band “%1”, %2.</source>
        <translation>Comparé à la plage «&#xa0;%1&#xa0;», %2.</translation>
    </message>
    <message>
        <source>No one band goes with these readings: set it at the engine station.</source>
        <translation>Aucune plage unique ne va avec ces lectures&#xa0;: la fixer au poste Moteur.</translation>
    </message>
    <message>
        <source>Gauge: both together</source>
        <translation>Instrument&#xa0;: les deux ensemble</translation>
    </message>
    <message>
        <source>Part: place to place</source>
        <translation>Pièce&#xa0;: d&apos;endroit à endroit</translation>
    </message>
</context>
<context>
    <name>caprail::HistoryStation</name>
    <message>
        <source>History</source>
        <translation>Historique</translation>
    </message>
    <message>
        <source>Ledger</source>
        <translation>Registre</translation>
    </message>
    <message>
        <source>Verify rounds</source>
        <translation>Tournées de vérification</translation>
    </message>
    <message>
        <source>Repeatability</source>
        <translation>Répétabilité</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Changements</translation>
    </message>
    <message>
        <source>Every entry, in order; nothing is ever erased. Strike a wrong one with Delete and give the reason. The verify history shows every round, fastener by fastener; Changes shows what was changed after something had been judged by it, as the sheet tells the customer.</source>
        <translation>Chaque inscription, dans l&apos;ordre&#xa0;; rien n&apos;est jamais effacé. Biffer une inscription fausse avec Suppr et donner le motif. L&apos;historique des vérifications montre chaque tournée, fixation par fixation&#xa0;; Changements montre ce qui a été changé après avoir servi à juger, comme la feuille le dit au client.</translation>
    </message>
</context>
<context>
    <name>caprail::HistoryVerify</name>
    <message>
        <source>Which fasteners</source>
        <translation>Quelles fixations</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Wrench</source>
        <translation>Clé</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Order of the rows</source>
        <translation>Ordre des lignes</translation>
    </message>
    <message>
        <source>from day</source>
        <translation>du jour</translation>
    </message>
    <message>
        <source>to day</source>
        <translation>au jour</translation>
    </message>
    <message>
        <source>Movements by place</source>
        <translation>Mouvements par endroit</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Endroit</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>A bougé</translation>
    </message>
    <message>
        <source>Pulled</source>
        <translation>Essais</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>Movements by wrench</source>
        <translation>Mouvements par clé</translation>
    </message>
    <message>
        <source>Movements by person</source>
        <translation>Mouvements par personne</translation>
    </message>
    <message>
        <source>Movements by round</source>
        <translation>Mouvements par tournée</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Tournée</translation>
    </message>
    <message>
        <source>every outcome</source>
        <translation>tout résultat</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>a bougé</translation>
    </message>
    <message>
        <source>held</source>
        <translation>a tenu</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>biffée</translation>
    </message>
    <message>
        <source>by place</source>
        <translation>par endroit</translation>
    </message>
    <message>
        <source>most moved</source>
        <translation>le plus souvent</translation>
    </message>
    <message>
        <source>largest angle</source>
        <translation>plus grand angle</translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translation>E&amp;xporter…</translation>
    </message>
    <message>
        <source>verify-rounds.csv</source>
        <translation>tournees.csv</translation>
    </message>
    <message>
        <source>Outcome of every fastener in every round</source>
        <translation>Résultat de chaque fixation dans chaque tournée</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Endroits</translation>
    </message>
    <message>
        <source>Wrenches</source>
        <translation>Clés</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Tournées</translation>
    </message>
    <message>
        <source>Counts of movements</source>
        <translation>Nombres de mouvements</translation>
    </message>
    <message>
        <source>every place</source>
        <translation>tout endroit</translation>
    </message>
    <message>
        <source>rods</source>
        <translation>bielles</translation>
    </message>
    <message>
        <source>cap %1</source>
        <translation>chapeau %1</translation>
    </message>
    <message>
        <source>everybody</source>
        <translation>tout le monde</translation>
    </message>
    <message>
        <source>every wrench</source>
        <translation>toute clé</translation>
    </message>
    <message>
        <source>day as 2026-05-04</source>
        <translation>jour comme 2026-05-04</translation>
    </message>
    <message>
        <source>rounds: %1, outcomes: %2</source>
        <translation>tournées&#xa0;: %1, résultats&#xa0;: %2</translation>
    </message>
    <message>
        <source>No verify round has been made yet. Rounds are made at the fasteners station.</source>
        <translation>Aucune tournée de vérification n&apos;a encore été faite. Elles se font au poste Fixations.</translation>
    </message>
    <message>
        <source>verify rounds</source>
        <translation>tournées de vérification</translation>
    </message>
    <message>
        <source>the last %1 of %2 rounds are looked at</source>
        <translation>les %1 dernières tournées sur %2 sont regardées</translation>
    </message>
    <message>
        <source>P&amp;rint…</source>
        <translation>Impri&amp;mer…</translation>
    </message>
</context>
<context>
    <name>caprail::InstrumentBox</name>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>no instrument named</source>
        <translation>aucun instrument nommé</translation>
    </message>
</context>
<context>
    <name>caprail::MainWindow</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fichier</translation>
    </message>
    <message>
        <source>&amp;New record…</source>
        <translation>&amp;Nouveau carnet…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Ouvrir…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Ouvrir un &amp;récent</translation>
    </message>
    <message>
        <source>S&amp;hop: the records of a folder</source>
        <translation>A&amp;telier&#xa0;: les carnets d&apos;un répertoire</translation>
    </message>
    <message>
        <source>Save a &amp;copy…</source>
        <translation>Enregistrer une &amp;copie…</translation>
    </message>
    <message>
        <source>Build &amp;sheet as PDF…</source>
        <translation>&amp;Feuille de montage en PDF…</translation>
    </message>
    <message>
        <source>Sheet pages as p&amp;ictures…</source>
        <translation>Pages de la feuille en &amp;images…</translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation>Aperçu a&amp;vant impression…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>Im&amp;primer…</translation>
    </message>
    <message>
        <source>&amp;Layout card as PDF…</source>
        <translation>C&amp;arte de pose en PDF…</translation>
    </message>
    <message>
        <source>Export &amp;tables (CSV)…</source>
        <translation>Exporter les ta&amp;bleaux (CSV)…</translation>
    </message>
    <message>
        <source>Export ledger as te&amp;xt…</source>
        <translation>Exporter le registre en te&amp;xte…</translation>
    </message>
    <message>
        <source>Close &amp;window</source>
        <translation>Fermer &amp;la fenêtre</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>É&amp;dition</translation>
    </message>
    <message>
        <source>&amp;Strike the last entry…</source>
        <translation>&amp;Biffer la dernière inscription…</translation>
    </message>
    <message>
        <source>Open a fin&amp;ding here</source>
        <translation>Ouvrir ici un &amp;constat</translation>
    </message>
    <message>
        <source>Add a p&amp;hoto here…</source>
        <translation>Ajouter ici une p&amp;hoto…</translation>
    </message>
    <message>
        <source>P&amp;aste a photo here</source>
        <translation>Co&amp;ller ici une photo</translation>
    </message>
    <message>
        <source>&amp;Find in the record</source>
        <translation>&amp;Rechercher dans le carnet</translation>
    </message>
    <message>
        <source>&amp;Preferences…</source>
        <translation>&amp;Préférences…</translation>
    </message>
    <message>
        <source>&amp;Station</source>
        <translation>&amp;Poste</translation>
    </message>
    <message>
        <source>Go to the &amp;next thing to do</source>
        <translation>Aller à la &amp;prochaine chose à faire</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Affichage</translation>
    </message>
    <message>
        <source>&amp;Inch / millimetre</source>
        <translation>&amp;Pouce / millimètre</translation>
    </message>
    <message>
        <source>&amp;Bench view</source>
        <translation>&amp;Vue établi</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>Plein é&amp;cran</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>Aid&amp;e</translation>
    </message>
    <message>
        <source>This &amp;station</source>
        <translation>Ce &amp;poste</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>Pré&amp;cautions</translation>
    </message>
    <message>
        <source>&amp;About Caprail</source>
        <translation>À pr&amp;opos de Caprail</translation>
    </message>
    <message>
        <source>This file was not opened</source>
        <translation>Ce fichier n&apos;a pas été ouvert</translation>
    </message>
    <message>
        <source>This record is damaged</source>
        <translation>Ce carnet est endommagé</translation>
    </message>
    <message>
        <source>

What can still be read can be salvaged into a new file; this one stays as it is. Salvage it?</source>
        <translation>

Ce qui est encore lisible peut être récupéré dans un nouveau fichier&#xa0;; celui-ci reste tel quel. Le récupérer&#xa0;?</translation>
    </message>
    <message>
        <source>Salvage into</source>
        <translation>Récupérer dans</translation>
    </message>
    <message>
        <source>Build records (*.caprail)</source>
        <translation>Carnets de montage (*.caprail)</translation>
    </message>
    <message>
        <source>Nothing was salvaged</source>
        <translation>Rien n&apos;a été récupéré</translation>
    </message>
    <message numerus="yes">
        <source>%n entries were kept.</source>
        <translation>
            <numerusform>%n inscription a été gardée.</numerusform>
            <numerusform>%n inscriptions ont été gardées.</numerusform>
        </translation>
    </message>
    <message>
        <source>Salvaged</source>
        <translation>Récupéré</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Enregistrer une copie</translation>
    </message>
    <message numerus="yes">
        <source>%n entries still could not be stored. Save a copy elsewhere, or free the disk and try again.</source>
        <translation>
            <numerusform>%n inscription n&apos;a toujours pas pu être enregistrée. Enregistrer une copie ailleurs, ou libérer le disque et réessayer.</numerusform>
            <numerusform>%n inscriptions n&apos;ont toujours pas pu être enregistrées. Enregistrer une copie ailleurs, ou libérer le disque et réessayer.</numerusform>
        </translation>
    </message>
    <message>
        <source>Build sheet</source>
        <translation>Feuille de montage</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Écrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>Sheet pages as pictures</source>
        <translation>Pages de la feuille en images</translation>
    </message>
    <message>
        <source>PNG (*.png)</source>
        <translation>PNG (*.png)</translation>
    </message>
    <message numerus="yes">
        <source>%n pictures, from %1</source>
        <translation>
            <numerusform>%n image, à partir de %1</numerusform>
            <numerusform>%n images, à partir de %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Layout card</source>
        <translation>Carte de pose</translation>
    </message>
    <message>
        <source>Ledger as text</source>
        <translation>Registre en texte</translation>
    </message>
    <message>
        <source>JSON lines (*.jsonl)</source>
        <translation>Lignes JSON (*.jsonl)</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>Who is working</source>
        <translation>Qui y travaille</translation>
    </message>
    <message>
        <source>Every entry carries this name</source>
        <translation>Chaque inscription porte ce nom</translation>
    </message>
    <message>
        <source>Caprail</source>
        <translation>Caprail</translation>
    </message>
    <message>
        <source>On disk: entry %1. %2</source>
        <translation>Sur le disque&#xa0;: inscription %1. %2</translation>
    </message>
    <message>
        <source>Open a record</source>
        <translation>Ouvrir un carnet</translation>
    </message>
    <message>
        <source>Build records (*.caprail);;All files (*)</source>
        <translation>Carnets de montage (*.caprail);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>The bench view shows one value at a time: choose a place where one is typed, such as a gap, a journal or a fastener.</source>
        <translation>La vue établi montre une valeur à la fois&#xa0;: choisir un endroit où il s&apos;en tape une, comme un interstice, une portée ou une fixation.</translation>
    </message>
    <message>
        <source>Entries wait to be stored</source>
        <translation>Des inscriptions attendent d&apos;être enregistrées</translation>
    </message>
    <message numerus="yes">
        <source>%n entries could not be stored on disk and would be lost. Close all the same?</source>
        <translation>
            <numerusform>%n inscription n&apos;a pas pu être enregistrée sur le disque et serait perdue. Fermer quand même&#xa0;?</numerusform>
            <numerusform>%n inscriptions n&apos;ont pas pu être enregistrées sur le disque et seraient perdues. Fermer quand même&#xa0;?</numerusform>
        </translation>
    </message>
    <message>
        <source>New build</source>
        <translation>Nouveau montage</translation>
    </message>
    <message>
        <source>A new build begins when the one before is signed off: finish and sign off build %1 first.</source>
        <translation>Un nouveau montage commence quand le précédent est visé&#xa0;: finir et viser d&apos;abord le montage %1.</translation>
    </message>
    <message>
        <source>Why is this engine built again? Build %1 stays readable beside it: Shop ▸ Compare builds.</source>
        <translation>Pourquoi ce moteur est-il remonté&#xa0;? Le montage %1 reste lisible à côté&#xa0;: Atelier ▸ Comparer les montages.</translation>
    </message>
    <message>
        <source>Sheet of the difference</source>
        <translation>Feuille de la différence</translation>
    </message>
    <message>
        <source>Hand-over folder (a new one is made)</source>
        <translation>Répertoire de remise (il est créé)</translation>
    </message>
    <message>
        <source>-hand-over</source>
        <translation>-remise</translation>
    </message>
    <message>
        <source>Hand-over folder</source>
        <translation>Répertoire de remise</translation>
    </message>
    <message>
        <source>%1 holds the build sheet, photos, the ledger for people and for programs, tables, and checksums.</source>
        <translation>%1 contient la feuille de montage, les photos, le registre pour les personnes et pour les programmes, les tableaux et les sommes de contrôle.</translation>
    </message>
    <message>
        <source>Sho&amp;p</source>
        <translation>A&amp;telier</translation>
    </message>
    <message>
        <source>The &amp;records of a folder</source>
        <translation>Les carnets d&apos;un &amp;répertoire</translation>
    </message>
    <message>
        <source>Save as a &amp;template…</source>
        <translation>Enregistrer comme &amp;modèle…</translation>
    </message>
    <message>
        <source>T&amp;emplates…</source>
        <translation>M&amp;odèles…</translation>
    </message>
    <message>
        <source>&amp;Add from the shelf…</source>
        <translation>&amp;Ajouter depuis l&apos;étagère…</translation>
    </message>
    <message>
        <source>The &amp;shelf…</source>
        <translation>L&apos;éta&amp;gère…</translation>
    </message>
    <message>
        <source>Begin a &amp;new build…</source>
        <translation>Commencer un &amp;nouveau montage…</translation>
    </message>
    <message>
        <source>&amp;Compare builds…</source>
        <translation>&amp;Comparer les montages…</translation>
    </message>
    <message>
        <source>Both files hold the same entries.</source>
        <translation>Les deux fichiers contiennent les mêmes inscriptions.</translation>
    </message>
    <message>
        <source>It is the record of another build: it has no entry in common with this one.</source>
        <translation>C&apos;est le carnet d&apos;un autre montage&#xa0;: il n&apos;a aucune inscription en commun avec celui-ci.</translation>
    </message>
    <message>
        <source>Both begin alike, up to entry %1, and then go on differently.</source>
        <translation>Les deux commencent pareil, jusqu&apos;à l&apos;inscription %1, puis continuent différemment.</translation>
    </message>
    <message>
        <source>What this record has after entry %1 is not in the copy.</source>
        <translation>Ce que ce carnet a après l&apos;inscription %1 n&apos;est pas dans la copie.</translation>
    </message>
    <message>
        <source>It goes on beyond the last entry of this record.</source>
        <translation>Elle va au-delà de la dernière inscription de ce carnet.</translation>
    </message>
    <message>
        <source>Save a &amp;dated copy beside it</source>
        <translation>Enregistrer à côté une copie &amp;datée</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Non enregistré</translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation>Enregistré sous %1</translation>
    </message>
    <message>
        <source>Restore from a copy</source>
        <translation>Restaurer depuis une copie</translation>
    </message>
    <message>
        <source>Copies of records (*.caprail-backup *.caprail);;All files (*)</source>
        <translation>Copies de carnets (*.caprail-backup *.caprail);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Not restored</source>
        <translation>Non restauré</translation>
    </message>
    <message>
        <source>Restore this copy?</source>
        <translation>Restaurer cette copie&#xa0;?</translation>
    </message>
    <message>
        <source>The copy ends with entry %1, seal %2; this record with entry %3, seal %4.</source>
        <translation>La copie finit par l&apos;inscription %1, sceau %2&#xa0;; ce carnet par l&apos;inscription %3, sceau %4.</translation>
    </message>
    <message>
        <source>This record as it is now is kept under a dated name beside it.</source>
        <translation>Ce carnet tel qu&apos;il est maintenant est gardé à côté sous un nom daté.</translation>
    </message>
    <message>
        <source>&amp;Restore</source>
        <translation>&amp;Restaurer</translation>
    </message>
    <message>
        <source>Restored. The record as it was is kept as %1</source>
        <translation>Restauré. Le carnet tel qu&apos;il était est gardé sous %1</translation>
    </message>
    <message>
        <source>%1 exists already. Replace the pages that were made before?</source>
        <translation>%1 existe déjà. Remplacer les pages faites auparavant&#xa0;?</translation>
    </message>
    <message>
        <source>Folder for the tables (a new one is made)</source>
        <translation>Répertoire des tableaux (il est créé)</translation>
    </message>
    <message>
        <source>-tables</source>
        <translation>-tableaux</translation>
    </message>
    <message>
        <source>A value is not stored</source>
        <translation>Une valeur n&apos;est pas enregistrée</translation>
    </message>
    <message>
        <source>“%1” is typed for: %2. It is not stored.</source>
        <translation>«&#xa0;%1&#xa0;» est tapé pour&#xa0;: %2. Ce n&apos;est pas enregistré.</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>Kinds of entries</source>
        <translation>Types d&apos;inscriptions</translation>
    </message>
    <message>
        <source>What a record is made of, in the words of its files: for “caprail append”, tables and scripts.</source>
        <translation>De quoi un carnet est fait, dans les mots de ses fichiers&#xa0;: pour «&#xa0;caprail append&#xa0;», les tableaux et les scripts.</translation>
    </message>
    <message>
        <source>The build is not signed off, and README.txt says so at its head.</source>
        <translation>Le montage n&apos;est pas visé, et README.txt le dit en tête.</translation>
    </message>
    <message>
        <source>Sign the record</source>
        <translation>Signer le carnet</translation>
    </message>
    <message>
        <source>Whose key is it? Customers read this name beside each signature.</source>
        <translation>À qui est la clé&#xa0;? Les clients lisent ce nom à côté de chaque signature.</translation>
    </message>
    <message>
        <source>A passphrase, without which nobody can sign with it; empty: none.</source>
        <translation>Une phrase secrète, sans laquelle personne ne peut signer&#xa0;; vide&#xa0;: aucune.</translation>
    </message>
    <message>
        <source>The same once more.</source>
        <translation>La même encore une fois.</translation>
    </message>
    <message>
        <source>The two passphrases differ: no key was made.</source>
        <translation>Les deux phrases secrètes diffèrent&#xa0;: aucune clé n&apos;a été créée.</translation>
    </message>
    <message>
        <source>The key of %1 was made. Its fingerprint is

%2

Tell it to whoever is to know your signature, by another way than with the record. The key lies in %3: copy that folder to a safe place, since a lost key cannot be made again.</source>
        <translation>La clé de %1 a été créée. Son empreinte est

%2

La communiquer à qui doit connaître la signature, par une autre voie que le carnet. La clé se trouve dans %3&#xa0;: copier ce répertoire en lieu sûr, car une clé perdue ne peut pas être refaite.</translation>
    </message>
    <message>
        <source>Sign all %1 entries of this record with the key of %2 (%3)?</source>
        <translation>Signer les %1 inscriptions de ce carnet avec la clé de %2 (%3)&#xa0;?</translation>
    </message>
    <message>
        <source>Which key signs this record?</source>
        <translation>Quelle clé signe ce carnet&#xa0;?</translation>
    </message>
    <message>
        <source>The passphrase of the key of %1:</source>
        <translation>La phrase secrète de la clé de %1&#xa0;:</translation>
    </message>
    <message>
        <source>There is no key of yours that is valid today. A key of your own shows a customer that a record is from you and was not altered since. Make one now?</source>
        <translation>Il n&apos;y a aucune clé à soi valable aujourd&apos;hui. Une clé à soi montre à un client d&apos;où vient un carnet et qu&apos;il n&apos;a pas été modifié depuis. En créer une maintenant&#xa0;?</translation>
    </message>
    <message>
        <source>Si&amp;gn the record…</source>
        <translation>Si&amp;gner le carnet…</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Entry %1 was judged by what this changes. Why is it changed? The reason stands on the build sheet.</source>
        <translation>L&apos;inscription %1 a été jugée d&apos;après ce que ceci change. Pourquoi ce changement&#xa0;? Le motif figure sur la feuille de montage.</translation>
    </message>
    <message>
        <source>The tour walks through a sample record, and it is not installed: install the program&apos;s samples again.</source>
        <translation>La visite parcourt un carnet d&apos;exemple, et il n&apos;est pas installé&#xa0;: réinstaller les exemples du programme.</translation>
    </message>
    <message>
        <source>tour</source>
        <translation>visite</translation>
    </message>
    <message>
        <source>Instru&amp;ments</source>
        <translation>&amp;Instruments</translation>
    </message>
    <message>
        <source>&amp;Gauges on this computer…</source>
        <translation>&amp;Appareils de cet ordinateur…</translation>
    </message>
    <message>
        <source>&amp;Tour</source>
        <translation>&amp;Visite</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Touches</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Touches</translation>
    </message>
    <message>
        <source>Restore &amp;from a copy…</source>
        <translation>Re&amp;staurer depuis une copie…</translation>
    </message>
    <message>
        <source>A photo is kept in a record: open the record first, then drop the photo on its place.</source>
        <translation>Une photo se garde dans un carnet&#xa0;: ouvrir d&apos;abord le carnet, puis déposer la photo à son endroit.</translation>
    </message>
    <message>
        <source>Store what w&amp;aits</source>
        <translation>&amp;Enregistrer ce qui attend</translation>
    </message>
    <message>
        <source>Kinds of &amp;entries</source>
        <translation>Types d&apos;&amp;inscriptions</translation>
    </message>
    <message>
        <source>Hand-over fold&amp;er…</source>
        <translation>Répertoire de re&amp;mise…</translation>
    </message>
    <message numerus="yes">
        <source>%n checks are stale by it.</source>
        <translation>
            <numerusform>%n contrôle en est périmé.</numerusform>
            <numerusform>%n contrôles en sont périmés.</numerusform>
        </translation>
    </message>
    <message>
        <source>Next: %1.</source>
        <translation>Ensuite&#xa0;: %1.</translation>
    </message>
    <message>
        <source>&amp;Manual</source>
        <translation>&amp;Manuel</translation>
    </message>
    <message>
        <source>&amp;Publish…</source>
        <translation>&amp;Publier…</translation>
    </message>
</context>
<context>
    <name>caprail::Manual</name>
    <message>
        <source>Manual — Caprail</source>
        <translation>Manuel — Caprail</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Sommaire</translation>
    </message>
    <message>
        <source>No page holds all of these words.</source>
        <translation>Aucune page ne contient tous ces mots.</translation>
    </message>
    <message>
        <source>Page of the manual</source>
        <translation>Page du manuel</translation>
    </message>
    <message>
        <source>Search all pages</source>
        <translation>Chercher dans toutes les pages</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Forward</source>
        <translation>Suite</translation>
    </message>
    <message>
        <source>Smaller text</source>
        <translation>Texte plus petit</translation>
    </message>
    <message>
        <source>Larger text</source>
        <translation>Texte plus grand</translation>
    </message>
</context>
<context>
    <name>caprail::NewRecordDialog</name>
    <message>
        <source>New record</source>
        <translation>Nouveau carnet</translation>
    </message>
    <message>
        <source>With the shop&apos;s &amp;people and instruments</source>
        <translation>Avec les &amp;personnes et instruments de l&apos;atelier</translation>
    </message>
    <message>
        <source>Empty: everything by hand</source>
        <translation>Vide&#xa0;: tout à la main</translation>
    </message>
    <message>
        <source>for example 6.2 V8, block 4417</source>
        <translation>par exemple 6.2 V8, bloc 4417</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Choisir…</translation>
    </message>
    <message>
        <source>Make the record</source>
        <translation>Créer le carnet</translation>
    </message>
    <message>
        <source>&amp;Engine</source>
        <translation>&amp;Moteur</translation>
    </message>
    <message>
        <source>&amp;Customer</source>
        <translation>&amp;Client</translation>
    </message>
    <message>
        <source>&amp;Serial or block number</source>
        <translation>Numéro de &amp;série ou de bloc</translation>
    </message>
    <message>
        <source>S&amp;hop</source>
        <translation>&amp;Atelier</translation>
    </message>
    <message>
        <source>&amp;Who works on it</source>
        <translation>&amp;Qui y travaille</translation>
    </message>
    <message>
        <source>Te&amp;mplate</source>
        <translation>Mo&amp;dèle</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fichier</translation>
    </message>
    <message>
        <source>Build records (*.caprail)</source>
        <translation>Carnets de montage (*.caprail)</translation>
    </message>
</context>
<context>
    <name>caprail::NextBar</name>
    <message>
        <source>&amp;Go there</source>
        <translation>&amp;Y aller</translation>
    </message>
    <message>
        <source>An engine without a name</source>
        <translation>Un moteur sans nom</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Ensuite&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: open</source>
        <translation>%1&#xa0;: ouvert</translation>
    </message>
    <message>
        <source>%1: locked</source>
        <translation>%1&#xa0;: verrouillé</translation>
    </message>
    <message>
        <source>Nothing holds it.</source>
        <translation>Rien ne le bloque.</translation>
    </message>
    <message>
        <source>The engine layout is not set yet.</source>
        <translation>L&apos;architecture du moteur n&apos;est pas encore fixée.</translation>
    </message>
    <message>
        <source>… and %1 more, at the closing station</source>
        <translation>… et %1 autres, au poste Fermeture</translation>
    </message>
    <message>
        <source>✕ Not entered. %1</source>
        <translation>✕ Pas inscrit. %1</translation>
    </message>
    <message>
        <source>The engine of this record</source>
        <translation>Le moteur de ce carnet</translation>
    </message>
    <message numerus="yes">
        <source>%1: locked, held by %n</source>
        <translation>
            <numerusform>%1&#xa0;: bloqué par %n</numerusform>
            <numerusform>%1&#xa0;: bloqué par %n</numerusform>
        </translation>
    </message>
    <message>
        <source>build %1</source>
        <translation>montage %1</translation>
    </message>
    <message>
        <source>read only: %1</source>
        <translation>lecture seule&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>caprail::OpenTime</name>
    <message>
        <source>Sealant&apos;s open time</source>
        <translation>Temps ouvert de la pâte à joint</translation>
    </message>
    <message>
        <source>Sealant open: %1 left</source>
        <translation>Pâte à joint ouverte&#xa0;: encore %1</translation>
    </message>
    <message>
        <source>✕ Open time over since %1: clean off, lay a new bead</source>
        <translation>✕ Temps ouvert dépassé depuis %1&#xa0;: nettoyer, appliquer un nouveau cordon</translation>
    </message>
</context>
<context>
    <name>caprail::OptionalField</name>
    <message>
        <source>Part&apos;s temperature</source>
        <translation>Température de la pièce</translation>
    </message>
    <message>
        <source>if it was measured: 21 °C, 70 °F</source>
        <translation>si elle a été mesurée&#xa0;: 21 °C, 70 °F</translation>
    </message>
</context>
<context>
    <name>caprail::PickupSectionView</name>
    <message>
        <source>Section through pan, plate and pickup</source>
        <translation>Coupe par le carter, la plaque et la crépine</translation>
    </message>
    <message>
        <source>Clearance %1</source>
        <translation>Garde %1</translation>
    </message>
    <message>
        <source>Clearance not known yet</source>
        <translation>Garde pas encore connue</translation>
    </message>
</context>
<context>
    <name>caprail::PickupStation</name>
    <message>
        <source>Why ±?</source>
        <translation>Pourquoi ±&#xa0;?</translation>
    </message>
    <message>
        <source>Terms of the stack-up</source>
        <translation>Termes de la chaîne de cotes</translation>
    </message>
    <message>
        <source>Clearance under the pickup</source>
        <translation>Garde sous la crépine</translation>
    </message>
    <message>
        <source>The uncertainty of the clearance, source by source</source>
        <translation>L&apos;incertitude de la garde, source par source</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>garde</translation>
    </message>
    <message>
        <source>&amp;Instrument</source>
        <translation>I&amp;nstrument</translation>
    </message>
    <message>
        <source>Another %1 is fitted…</source>
        <translation>Autre pièce montée&#xa0;: %1…</translation>
    </message>
    <message>
        <source>What was measured with the old one must be measured again.</source>
        <translation>Ce qui a été mesuré avec l&apos;ancienne est à mesurer de nouveau.</translation>
    </message>
    <message>
        <source>%1, reading %2</source>
        <translation>%1, lecture %2</translation>
    </message>
    <message>
        <source>Another %1</source>
        <translation>Autre pièce&#xa0;: %1</translation>
    </message>
    <message>
        <source>Which %1 is fitted now, or what was done to it?</source>
        <translation>Quelle pièce est montée maintenant, ou qu&apos;y a-t-on fait (%1)&#xa0;?</translation>
    </message>
    <message>
        <source>Clearance under the pickup: pan depth, plus the compressed gasket, plus the girdle plate between, minus how far the pickup hangs below the rail. Read each term twice. It must be right before anything is sealed.</source>
        <translation>Garde sous la crépine&#xa0;: profondeur du carter, plus joint comprimé, plus plaque raidisseuse intercalée, moins ce dont la crépine descend sous le plan de joint. Lire chaque terme deux fois. Elle doit être juste avant que rien ne soit étanché.</translation>
    </message>
    <message>
        <source>%1, reading %2 of %3</source>
        <translation>%1, lecture %2 sur %3</translation>
    </message>
    <message>
        <source>This record sets no band for it: set “%1” at the engine station.</source>
        <translation>Ce carnet n&apos;y fixe aucune plage&#xa0;: fixer «&#xa0;%1&#xa0;» au poste Moteur.</translation>
    </message>
</context>
<context>
    <name>caprail::PlaceHeading</name>
    <message>
        <source>Why ±?</source>
        <translation>Pourquoi ±&#xa0;?</translation>
    </message>
    <message>
        <source>The uncertainty of this figure, source by source</source>
        <translation>L&apos;incertitude de ce chiffre, source par source</translation>
    </message>
</context>
<context>
    <name>caprail::PlacePanel</name>
    <message>
        <source>Findings, notes and photos here</source>
        <translation>Constats, notes et photos d&apos;ici</translation>
    </message>
    <message>
        <source>Finding here…</source>
        <translation>Constat ici…</translation>
    </message>
    <message>
        <source>Ctrl+D. Something seen that needs a decision: Enter opens the finding; it holds the closing gate until it is settled.</source>
        <translation>Ctrl+D. Quelque chose de vu qui demande une décision&#xa0;: Entrée ouvre le constat&#xa0;; il bloque l&apos;accès à la fermeture jusqu&apos;à ce qu&apos;il soit réglé.</translation>
    </message>
    <message>
        <source>Photo here…</source>
        <translation>Photo ici…</translation>
    </message>
    <message>
        <source>The engine as a whole</source>
        <translation>Le moteur dans son ensemble</translation>
    </message>
    <message>
        <source>Settled: %1</source>
        <translation>Réglé&#xa0;: %1</translation>
    </message>
    <message>
        <source>✎ %1</source>
        <translation>✎ %1</translation>
    </message>
    <message>
        <source>Entry %1, %2. Enter shows it large.</source>
        <translation>Inscription %1, %2. Entrée l&apos;agrandit.</translation>
    </message>
    <message numerus="yes">
        <source>%n older ones are in the history.</source>
        <translation>
            <numerusform>%n plus ancien est dans l&apos;historique.</numerusform>
            <numerusform>%n plus anciens sont dans l&apos;historique.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not tried on its standard today: %1. Zero checks are entered at Engine, People and instruments.</source>
        <translation>Pas éprouvé aujourd&apos;hui sur son étalon&#xa0;: %1. Les contrôles du zéro s&apos;inscrivent sous Moteur, Personnes et instruments.</translation>
    </message>
    <message>
        <source>Open. Enter or a double click settles it here: say what was done.</source>
        <translation>Ouvert. Entrée ou un double-clic le règle ici&#xa0;: dire ce qui a été fait.</translation>
    </message>
    <message>
        <source>Add photos of this place. They can be dropped anywhere, on a place of the drawing too, or pasted with Ctrl+Shift+V.</source>
        <translation>Ajouter des photos de cet endroit. Elles peuvent être déposées n&apos;importe où, sur un endroit du dessin aussi, ou collées avec Ctrl+Maj+V.</translation>
    </message>
    <message>
        <source>Done about %1…</source>
        <translation>Fait au sujet de %1…</translation>
    </message>
    <message>
        <source>What was done about finding %1</source>
        <translation>Ce qui a été fait au sujet du constat %1</translation>
    </message>
    <message>
        <source>Enter settles it with what is typed here. Esc leaves it open.</source>
        <translation>Entrée le règle avec ce qui est tapé ici. Échap le laisse ouvert.</translation>
    </message>
    <message>
        <source>Finding here: what was seen</source>
        <translation>Constat ici&#xa0;: ce qui a été vu</translation>
    </message>
</context>
<context>
    <name>caprail::PlanTools</name>
    <message>
        <source>Turn</source>
        <translation>Tourner</translation>
    </message>
    <message>
        <source>Turn the diagram a quarter</source>
        <translation>Tourner le dessin d&apos;un quart de tour</translation>
    </message>
    <message>
        <source>Flip</source>
        <translation>Miroir</translation>
    </message>
    <message>
        <source>Flip the diagram across the crank</source>
        <translation>Retourner le dessin en travers du vilebrequin</translation>
    </message>
    <message>
        <source>Zoom in (Ctrl +)</source>
        <translation>Agrandir (Ctrl +)</translation>
    </message>
    <message>
        <source>Zoom out (Ctrl −)</source>
        <translation>Réduire (Ctrl −)</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tout</translation>
    </message>
    <message>
        <source>Show the whole diagram (Ctrl 0)</source>
        <translation>Montrer tout le dessin (Ctrl 0)</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>Calques</translation>
    </message>
    <message>
        <source>What the diagrams show</source>
        <translation>Ce que montrent les dessins</translation>
    </message>
    <message>
        <source>Girdle</source>
        <translation>Plaque</translation>
    </message>
    <message>
        <source>Its cutout</source>
        <translation>Son échancrure</translation>
    </message>
    <message>
        <source>Pickup</source>
        <translation>Crépine</translation>
    </message>
    <message>
        <source>Dipstick</source>
        <translation>Jauge d&apos;huile</translation>
    </message>
    <message>
        <source>Crank throws</source>
        <translation>Coudes</translation>
    </message>
    <message>
        <source>Tightening numbers</source>
        <translation>Numéros de serrage</translation>
    </message>
    <message>
        <source>As each station draws it</source>
        <translation>Comme chaque poste le dessine</translation>
    </message>
</context>
<context>
    <name>caprail::PlanView</name>
    <message>
        <source>Describe the engine first: the pan rail is drawn from its layout.</source>
        <translation>Décrire d&apos;abord le moteur&#xa0;: le plan de joint est dessiné d&apos;après son architecture.</translation>
    </message>
</context>
<context>
    <name>caprail::PreferencesDialog</name>
    <message>
        <source>inch</source>
        <translation>pouce</translation>
    </message>
    <message>
        <source>millimetre</source>
        <translation>millimètre</translation>
    </message>
    <message>
        <source>point: 0.0575</source>
        <translation>point&#xa0;: 0.0575</translation>
    </message>
    <message>
        <source>comma: 0,0575</source>
        <translation>virgule&#xa0;: 0,0575</translation>
    </message>
    <message>
        <source>like the desktop</source>
        <translation>comme le bureau</translation>
    </message>
    <message>
        <source>light</source>
        <translation>clair</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>sombre</translation>
    </message>
    <message>
        <source>on the screen only</source>
        <translation>à l&apos;écran seulement</translation>
    </message>
    <message>
        <source>with the bell, twice for a refusal</source>
        <translation>avec un son, deux pour un refus</translation>
    </message>
    <message>
        <source>spoken</source>
        <translation>parlées</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Préférences</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Choisir…</translation>
    </message>
    <message>
        <source>Shop logo</source>
        <translation>Logo de l&apos;atelier</translation>
    </message>
    <message>
        <source>&amp;Lengths in</source>
        <translation>&amp;Longueurs en</translation>
    </message>
    <message>
        <source>Tor&amp;ques in</source>
        <translation>&amp;Couples en</translation>
    </message>
    <message>
        <source>&amp;Decimal mark</source>
        <translation>Séparateur &amp;décimal</translation>
    </message>
    <message>
        <source>L&amp;ook</source>
        <translation>A&amp;spect</translation>
    </message>
    <message>
        <source>Spoken from the next start of the program.</source>
        <translation>Parlée à partir du prochain démarrage du programme.</translation>
    </message>
    <message>
        <source>Lan&amp;guage (from the next start)</source>
        <translation>Lan&amp;gue (au prochain démarrage)</translation>
    </message>
    <message>
        <source>&amp;Entries are confirmed</source>
        <translation>&amp;Inscriptions confirmées</translation>
    </message>
    <message>
        <source>P&amp;aper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>&amp;Shop name on the sheet</source>
        <translation>Nom de l&apos;&amp;atelier sur la feuille</translation>
    </message>
    <message>
        <source>Sho&amp;p logo</source>
        <translation>Logo de l&apos;atelie&amp;r</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>big-block near</source>
        <translation>gros V8 vers</translation>
    </message>
    <message>
        <source> hp</source>
        <translation> hp</translation>
    </message>
    <message>
        <source>Consider a girdle, %1</source>
        <translation>Envisager une plaque, %1</translation>
    </message>
    <message>
        <source>Consider a girdle o&amp;n a small-block</source>
        <translation>&amp;Envisager une plaque, petit V8</translation>
    </message>
    <message>
        <source>high contrast</source>
        <translation>contraste élevé</translation>
    </message>
    <message>
        <source>Pictures (%1)</source>
        <translation>Images (%1)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>Te&amp;xt size (in full from the next start)</source>
        <translation>&amp;Taille du texte (entière au prochain démarrage)</translation>
    </message>
    <message>
        <source>A service of ~/.pg_service.conf, or an address without a password: Shop ▸ Publish.</source>
        <translation>Un service de ~/.pg_service.conf, ou une adresse sans mot de passe&#xa0;: Atelier ▸ Publier.</translation>
    </message>
    <message>
        <source>S&amp;hop&apos;s database</source>
        <translation>&amp;Base de l&apos;atelier</translation>
    </message>
    <message>
        <source>Records that were added to on this computer are sent by themselves.</source>
        <translation>Les carnets complétés sur cet ordinateur sont envoyés d&apos;eux-mêmes.</translation>
    </message>
    <message>
        <source>P&amp;ublish by itself</source>
        <translation>P&amp;ublier de soi-même</translation>
    </message>
</context>
<context>
    <name>caprail::PublishDialog</name>
    <message>
        <source>Publish</source>
        <translation>Publier</translation>
    </message>
    <message>
        <source>shop, or postgresql://bench@server/caprail</source>
        <translation>atelier, ou postgresql://bench@server/caprail</translation>
    </message>
    <message>
        <source>Records that were added to on this computer are sent by themselves.</source>
        <translation>Les carnets complétés sur cet ordinateur sont envoyés d&apos;eux-mêmes.</translation>
    </message>
    <message>
        <source>this record, %1</source>
        <translation>ce carnet, %1</translation>
    </message>
    <message>
        <source>&amp;Folder…</source>
        <translation>&amp;Répertoire…</translation>
    </message>
    <message>
        <source>&amp;Database</source>
        <translation>&amp;Base de données</translation>
    </message>
    <message>
        <source>A service of ~/.pg_service.conf, or an address. A password belongs into ~/.pgpass or the service file.</source>
        <translation>Un service de ~/.pg_service.conf, ou une adresse. Un mot de passe a sa place dans ~/.pgpass ou le fichier des services.</translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation>&amp;Quoi</translation>
    </message>
    <message>
        <source>Publish by &amp;itself</source>
        <translation>Publier de &amp;soi-même</translation>
    </message>
    <message>
        <source>How much of the record is sent</source>
        <translation>Quelle part du carnet est envoyée</translation>
    </message>
    <message>
        <source>What came of each record</source>
        <translation>Ce qu&apos;il est advenu de chaque carnet</translation>
    </message>
    <message>
        <source>&amp;Publish</source>
        <translation>&amp;Publier</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Arrêter</translation>
    </message>
    <message>
        <source>the records of %1</source>
        <translation>les carnets de %1</translation>
    </message>
    <message>
        <source>Folder of records</source>
        <translation>Répertoire de carnets</translation>
    </message>
</context>
<context>
    <name>caprail::Publisher</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Name the shop&apos;s database first.</source>
        <translation>Nommer d&apos;abord la base de données de l&apos;atelier.</translation>
    </message>
    <message>
        <source>Publishing %1 (%2 of %3)</source>
        <translation>Publication de %1 (%2 sur %3)</translation>
    </message>
    <message>
        <source>Publishing waits for the database; tried again at %1</source>
        <translation>La publication attend la base de données&#xa0;; nouvel essai à %1</translation>
    </message>
    <message>
        <source>%1 record could not be published</source>
        <translation>%1 carnet n&apos;a pu être publié</translation>
    </message>
    <message>
        <source>%1 records could not be published</source>
        <translation>%1 carnets n&apos;ont pu être publiés</translation>
    </message>
    <message>
        <source>A change could not be noted to be published; it is tried again</source>
        <translation>Une modification n&apos;a pu être notée pour la publication&#xa0;; nouvel essai à suivre</translation>
    </message>
</context>
<context>
    <name>caprail::RecordSession</name>
    <message>
        <source>This record was written by an earlier version of the program and was brought up to date. As it was, it is kept in %1.</source>
        <translation>Ce carnet a été écrit par une version plus ancienne du programme et a été mis à niveau. Tel qu&apos;il était, il est gardé dans %1.</translation>
    </message>
    <message>
        <source>%1 does not answer. What is entered now waits here, and is stored as soon as it does.</source>
        <translation>%1 ne répond pas. Ce qui est inscrit maintenant attend ici, et sera enregistré dès qu&apos;il répondra.</translation>
    </message>
</context>
<context>
    <name>caprail::SerialGauge</name>
    <message>
        <source>%1 is not connected at %2: plug it in, it is taken up again by itself. Nothing is lost.</source>
        <translation>%1 n&apos;est pas connecté à %2&#xa0;: le brancher, il est repris de lui-même. Rien n&apos;est perdu.</translation>
    </message>
    <message>
        <source>%1 at %2 is used by another program, or you may not use it: close that program, or have yourself added to the group that owns it (mostly “dialout”).</source>
        <translation>%1 sur %2 est utilisé par un autre programme, ou l&apos;usage n&apos;en est pas permis&#xa0;: fermer ce programme, ou se faire ajouter au groupe qui le possède (le plus souvent «&#xa0;dialout&#xa0;»).</translation>
    </message>
    <message>
        <source>%1 at %2 cannot be read as a serial port (%3): choose its port under Instruments ▸ Gauges on this computer.</source>
        <translation>%1 sur %2 ne peut pas être lu comme un port série (%3)&#xa0;: choisir son port sous Instruments ▸ Appareils de cet ordinateur.</translation>
    </message>
    <message>
        <source>%1 is connected again at %2.</source>
        <translation>%1 est de nouveau connecté à %2.</translation>
    </message>
    <message>
        <source>%1 went away from %2: plug it in again, it is taken up by itself. What it sent before is stored.</source>
        <translation>%1 a quitté %2&#xa0;: le rebrancher, il est repris de lui-même. Ce qu&apos;il a envoyé avant est enregistré.</translation>
    </message>
</context>
<context>
    <name>caprail::ShelfDialog</name>
    <message>
        <source>serial %1</source>
        <translation>numéro de série %1</translation>
    </message>
    <message>
        <source>calibration due %1</source>
        <translation>étalonnage dû le %1</translation>
    </message>
    <message>
        <source>calibrated %1</source>
        <translation>étalonné le %1</translation>
    </message>
    <message>
        <source>shims: %1</source>
        <translation>cales&#xa0;: %1</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Ce que c&apos;est</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>Sur l&apos;étagère</translation>
    </message>
    <message>
        <source>The shop&apos;s shelf</source>
        <translation>L&apos;étagère de l&apos;atelier</translation>
    </message>
    <message>
        <source>What the shop has for every engine. It is copied into a record when it is used there; a change here changes no record.</source>
        <translation>Ce que l&apos;atelier a pour tous les moteurs. C&apos;est copié dans un carnet quand on s&apos;en sert&#xa0;; un changement ici ne change aucun carnet.</translation>
    </message>
    <message>
        <source>name its shims&apos; kit, or leave it empty</source>
        <translation>nommer l&apos;assortiment de ses cales, ou laisser vide</translation>
    </message>
    <message>
        <source>Name of the kit</source>
        <translation>Nom de l&apos;assortiment</translation>
    </message>
    <message>
        <source>&amp;Keep from this record</source>
        <translation>&amp;Garder de ce carnet</translation>
    </message>
    <message>
        <source>Its people and instruments, and its shims under the name of a kit</source>
        <translation>Ses personnes et instruments, et ses cales sous le nom d&apos;un assortiment</translation>
    </message>
    <message>
        <source>&amp;Take off the shelf</source>
        <translation>&amp;Retirer de l&apos;étagère</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>Kits of shims</source>
        <translation>Assortiments de cales</translation>
    </message>
</context>
<context>
    <name>caprail::ShopModel</name>
    <message>
        <source>Files that are not records</source>
        <translation>Fichiers qui ne sont pas des carnets</translation>
    </message>
    <message>
        <source>No customer named</source>
        <translation>Aucun client nommé</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>Later than this computer&apos;s clock: one of the two clocks was wrong.</source>
        <translation>Plus tard que l&apos;horloge de cet ordinateur&#xa0;: une des deux horloges était fausse.</translation>
    </message>
</context>
<context>
    <name>caprail::ShopWatcher</name>
    <message>
        <source>What is read cannot be kept in %1: at the next start every record is read again.</source>
        <translation>Ce qui est lu ne peut pas être gardé dans %1&#xa0;: au prochain démarrage, chaque carnet sera relu.</translation>
    </message>
</context>
<context>
    <name>caprail::ShopWindow</name>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Any state</source>
        <translation>Tout état</translation>
    </message>
    <message>
        <source>Measuring</source>
        <translation>Mesures en cours</translation>
    </message>
    <message>
        <source>Trial fit open</source>
        <translation>Montage à blanc ouvert</translation>
    </message>
    <message>
        <source>Ready to close</source>
        <translation>Prêt à fermer</translation>
    </message>
    <message>
        <source>Signed off</source>
        <translation>Visé</translation>
    </message>
    <message>
        <source>Out, stale or moved</source>
        <translation>Hors limites, périmé ou bougé</translation>
    </message>
    <message>
        <source>No record that can be read</source>
        <translation>Pas de carnet lisible</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Étalonnage</translation>
    </message>
    <message>
        <source>Any calibration</source>
        <translation>Tout étalonnage</translation>
    </message>
    <message>
        <source>Overdue</source>
        <translation>En retard</translation>
    </message>
    <message>
        <source>Due within 30 days</source>
        <translation>Dû dans les 30 jours</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Anyone</source>
        <translation>Tout le monde</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Groupe</translation>
    </message>
    <message>
        <source>No groups</source>
        <translation>Sans groupes</translation>
    </message>
    <message>
        <source>By customer</source>
        <translation>Par client</translation>
    </message>
    <message>
        <source>By state</source>
        <translation>Par état</translation>
    </message>
    <message>
        <source>S&amp;top</source>
        <translation>&amp;Stop</translation>
    </message>
    <message>
        <source>Shop — Caprail</source>
        <translation>Atelier — Caprail</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Carnets</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Avancement de la lecture</translation>
    </message>
    <message>
        <source>Search customers, engines, people, notes and findings</source>
        <translation>Rechercher clients, moteurs, personnes, notes et constats</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Rechercher</translation>
    </message>
    <message>
        <source>&amp;Folder…</source>
        <translation>&amp;Répertoire…</translation>
    </message>
    <message>
        <source>&amp;Shop</source>
        <translation>&amp;Atelier</translation>
    </message>
    <message>
        <source>Open the &amp;record</source>
        <translation>Ouvrir le ca&amp;rnet</translation>
    </message>
    <message>
        <source>&amp;Choose the folder…</source>
        <translation>&amp;Choisir le répertoire…</translation>
    </message>
    <message>
        <source>&amp;Look again</source>
        <translation>Regarder de n&amp;ouveau</translation>
    </message>
    <message>
        <source>&amp;Search</source>
        <translation>Rec&amp;hercher</translation>
    </message>
    <message>
        <source>Compare &amp;engines…</source>
        <translation>Comparer les &amp;moteurs…</translation>
    </message>
    <message>
        <source>&amp;Templates…</source>
        <translation>Mo&amp;dèles…</translation>
    </message>
    <message>
        <source>The s&amp;helf…</source>
        <translation>L&apos;éta&amp;gère…</translation>
    </message>
    <message>
        <source>Save the list as a &amp;table (CSV)…</source>
        <translation>Enregistrer la liste en &amp;tableau (CSV)…</translation>
    </message>
    <message>
        <source>Close &amp;window</source>
        <translation>Fermer &amp;la fenêtre</translation>
    </message>
    <message>
        <source>The folder of the records</source>
        <translation>Le répertoire des carnets</translation>
    </message>
    <message>
        <source>Not reachable since %1; what was known then is still listed.</source>
        <translation>Inaccessible depuis le %1&#xa0;; ce qui était connu alors reste listé.</translation>
    </message>
    <message>
        <source>Further folders that could not be read: %1.</source>
        <translation>Autres répertoires qui n&apos;ont pas pu être lus&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Reading was stopped: press F5 to go on.</source>
        <translation>La lecture a été arrêtée&#xa0;: F5 la reprend.</translation>
    </message>
    <message>
        <source>looking</source>
        <translation>recherche</translation>
    </message>
    <message>
        <source>%v of %m found</source>
        <translation>%v trouvés sur %m</translation>
    </message>
    <message>
        <source>%v of %m read</source>
        <translation>%v lus sur %m</translation>
    </message>
    <message>
        <source>Choose the folder that the records lie in.</source>
        <translation>Choisir le répertoire où se trouvent les carnets.</translation>
    </message>
    <message>
        <source>Files: %1</source>
        <translation>Fichiers&#xa0;: %1</translation>
    </message>
    <message>
        <source>Files: %1 of %2</source>
        <translation>Fichiers&#xa0;: %1 sur %2</translation>
    </message>
    <message>
        <source>The list as a table</source>
        <translation>La liste en tableau</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tableaux (*.csv)</translation>
    </message>
    <message>
        <source>Caprail</source>
        <translation>Caprail</translation>
    </message>
    <message>
        <source>no record that can be read: %1</source>
        <translation>carnets illisibles&#xa0;: %1</translation>
    </message>
    <message>
        <source>Open a &amp;database…</source>
        <translation>Ouvrir une &amp;base de données…</translation>
    </message>
    <message>
        <source>&amp;Publish…</source>
        <translation>&amp;Publier…</translation>
    </message>
    <message>
        <source>No record matches what is searched for and chosen above.</source>
        <translation>Aucun carnet ne répond à ce qui est recherché et choisi ci-dessus.</translation>
    </message>
    <message>
        <source>No build record lies in this folder, or in the folders in it.</source>
        <translation>Aucun carnet de montage dans ce dossier ni dans ses sous-dossiers.</translation>
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
        <translation>Le carnet de montage d&apos;un moteur par fichier&#xa0;: jeux des paliers, couples des fixations, piles de cales sous la plaque, montage à blanc et profondeur de la crépine — avec ce qui n&apos;est plus valable, et pourquoi, avant que rien ne soit fermé.</translation>
    </message>
    <message>
        <source>&amp;New record</source>
        <translation>&amp;Nouveau carnet</translation>
    </message>
    <message>
        <source>for an engine on the stand, from a template or by hand</source>
        <translation>pour un moteur sur son support, d&apos;après un modèle ou à la main</translation>
    </message>
    <message>
        <source>&amp;Open a record</source>
        <translation>&amp;Ouvrir un carnet</translation>
    </message>
    <message>
        <source>a .caprail file; or drop one on this window</source>
        <translation>un fichier .caprail&#xa0;; ou en déposer un sur cette fenêtre</translation>
    </message>
    <message>
        <source>&amp;Shop</source>
        <translation>Ate&amp;lier</translation>
    </message>
    <message>
        <source>all records of a folder: searched, sorted, compared</source>
        <translation>tous les carnets d&apos;un répertoire&#xa0;: recherche, tri, comparaison</translation>
    </message>
    <message>
        <source>&amp;Recent records</source>
        <translation>Carnets &amp;récents</translation>
    </message>
    <message>
        <source>&amp;Sample records (opened as a copy)</source>
        <translation>Carnets d&apos;e&amp;xemple (ouverts en copie)</translation>
    </message>
    <message>
        <source>The part maker&apos;s instructions, local codes and licensed practice come first; nothing here overrides them.</source>
        <translation>Les instructions du fabricant de la pièce, les règles locales et le savoir d&apos;un professionnel agréé passent d&apos;abord&#xa0;; rien ici ne les remplace.</translation>
    </message>
    <message>
        <source>Man&amp;ual</source>
        <translation>Man&amp;uel</translation>
    </message>
    <message>
        <source>the whole job, station by station; F1 opens it anywhere</source>
        <translation>tout le travail, poste par poste (F1 l&apos;ouvre partout)</translation>
    </message>
</context>
<context>
    <name>caprail::StationList</name>
    <message>
        <source>Stations</source>
        <translation>Postes</translation>
    </message>
    <message numerus="yes">
        <source>%1: worst is %2, %n open (%3)</source>
        <translation>
            <numerusform>%1&#xa0;: au pire %2, %n à faire (%3)</numerusform>
            <numerusform>%1&#xa0;: au pire %2, %n à faire (%3)</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: locked (%2)</source>
        <translation>%1&#xa0;: verrouillé (%2)</translation>
    </message>
    <message numerus="yes">
        <source>%1: locked, held by %n (%2)</source>
        <translation>
            <numerusform>%1&#xa0;: verrouillé par %n contrôle (%2)</numerusform>
            <numerusform>%1&#xa0;: verrouillé par %n contrôles (%2)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>caprail::TemplateEditor</name>
    <message>
        <source>Save as a template</source>
        <translation>Enregistrer comme modèle</translation>
    </message>
    <message>
        <source>The layout, bands, rules and fastener groups that are in force in this record now. A template of the same name gets the next revision; records begun from it stay as they are.</source>
        <translation>L&apos;architecture, les plages, les consignes et les groupes de fixations en vigueur maintenant dans ce carnet. Un modèle du même nom reçoit la révision suivante&#xa0;; les carnets qui en sont partis restent tels quels.</translation>
    </message>
    <message>
        <source>Template</source>
        <translation>Modèle</translation>
    </message>
    <message>
        <source>template</source>
        <translation>modèle</translation>
    </message>
    <message>
        <source>Layout, bands and rules</source>
        <translation>Architecture, plages et consignes</translation>
    </message>
    <message>
        <source>Fastener groups</source>
        <translation>Groupes de fixations</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Sources</source>
        <translation>&amp;Sources</translation>
    </message>
    <message>
        <source>who says so: a document, a person</source>
        <translation>qui le dit&#xa0;: un document, une personne</translation>
    </message>
    <message>
        <source>&amp;Keep the template</source>
        <translation>&amp;Garder le modèle</translation>
    </message>
</context>
<context>
    <name>caprail::TemplatesDialog</name>
    <message>
        <source>&amp;Edit…</source>
        <translation>&amp;Modifier…</translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translation>E&amp;xporter…</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Supprimer</translation>
    </message>
    <message>
        <source>Templates</source>
        <translation>Modèles</translation>
    </message>
    <message>
        <source>What the template sets</source>
        <translation>Ce que fixe le modèle</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>&amp;Importer…</translation>
    </message>
    <message>
        <source>The shop&apos;s own</source>
        <translation>Propre à l&apos;atelier</translation>
    </message>
    <message>
        <source>&amp;Edit a copy…</source>
        <translation>&amp;Modifier une copie…</translation>
    </message>
    <message>
        <source>The shop&apos;s own, revision %1.</source>
        <translation>Propre à l&apos;atelier, révision %1.</translation>
    </message>
    <message>
        <source>Carried by the program.</source>
        <translation>Fourni avec le programme.</translation>
    </message>
    <message>
        <source>Sources: %1</source>
        <translation>Sources&#xa0;: %1</translation>
    </message>
    <message>
        <source>Import a template</source>
        <translation>Importer un modèle</translation>
    </message>
    <message>
        <source>Templates (*.jsonl);;All files (*)</source>
        <translation>Modèles (*.jsonl);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Export the template</source>
        <translation>Exporter le modèle</translation>
    </message>
    <message>
        <source>Templates (*.jsonl)</source>
        <translation>Modèles (*.jsonl)</translation>
    </message>
</context>
<context>
    <name>caprail::Tour</name>
    <message>
        <source>This is a V8 on the stand, in the middle of its build. On the left stand the eight stations in the order of the work, each with its own state. Above them is the one next thing to do, with the way there. Here it is said whose engine it is, where its caps and fasteners lie, what it is judged by, who works on it and with which instruments.</source>
        <translation>Voici un V8 sur son support, au milieu de son montage. À gauche se trouvent les huit postes dans l&apos;ordre du travail, chacun avec son état. Au-dessus, la prochaine chose à faire, avec le chemin pour y aller. Ici se dit à qui est le moteur, où sont ses chapeaux et ses fixations, d&apos;après quoi il est jugé, qui y travaille et avec quels instruments.</translation>
    </message>
    <message>
        <source>Ctrl+U shows every length in millimetres, and again in inches. Nothing of it changes the record.</source>
        <translation>Ctrl+U montre chaque longueur en millimètres, puis de nouveau en pouces. Cela ne change rien au carnet.</translation>
    </message>
    <message>
        <source>Journals and bores give each bearing its clearance, with what the instruments leave open. Main 4 is stale: a fastener of its cap moved after the bore was read. The number is still there, and so is the reason why it no longer counts. Nothing is ever erased.</source>
        <translation>Portées et alésages donnent à chaque palier son jeu, avec ce que les instruments laissent ouvert. Le palier 4 est périmé&#xa0;: une fixation de son chapeau a bougé après la lecture de l&apos;alésage. Le nombre est encore là, et la raison pour laquelle il ne compte plus aussi. Rien n&apos;est jamais effacé.</translation>
    </message>
    <message>
        <source>Choose main 2 and main 4 on the drawing, with the pointer or the arrow keys, and compare what is said of them.</source>
        <translation>Choisir les paliers 2 et 4 sur le dessin, avec le pointeur ou les flèches, et comparer ce qui en est dit.</translation>
    </message>
    <message>
        <source>What each group is tightened to, what each fastener was tightened to, and the verify rounds: with the stacks off, every main-cap and rod fastener is tried again. In round 1 main 4 right moved by 5°. All that is stale in this record comes from that one fastener.</source>
        <translation>À quoi chaque groupe se serre, à quoi chaque fixation a été serrée, et les tournées de vérification&#xa0;: piles retirées, chaque fixation de chapeau et de bielle est éprouvée de nouveau. Dans la tournée 1, le palier 4 droite a bougé de 5°. Tout ce qui est périmé dans ce carnet vient de cette seule fixation.</translation>
    </message>
    <message>
        <source>Go through the views above the drawing with Alt+1, Alt+2 and so on, and find where the round is shown.</source>
        <translation>Parcourir les vues au-dessus du dessin avec Alt+1, Alt+2 et ainsi de suite, et trouver où la tournée est montrée.</translation>
    </message>
    <message>
        <source>The gap at each stud between rail and girdle, the kit of shims, the stacks that fill the gaps, and the straightedge that rechecks them. The two places of cap 4 fell with its fastener. The other eight stand as they were built.</source>
        <translation>L&apos;interstice à chaque goujon entre plan de joint et plaque, l&apos;assortiment de cales, les piles qui comblent les interstices, et la règle qui les recontrôle. Les deux endroits du chapeau 4 sont tombés avec sa fixation. Les huit autres tiennent tels que montés.</translation>
    </message>
    <message>
        <source>Type 0.7 into the field and press Enter: no gap is that wide, so it is asked back and stays in the field. Esc empties it. F9 shows the same field in figures for the engine stand; F9 again goes back.</source>
        <translation>Taper 0.7 dans le champ et appuyer sur Entrée&#xa0;: aucun interstice n&apos;est si grand, il est donc redemandé et reste dans le champ. Échap le vide. F9 montre le même champ en chiffres pour le support&#xa0;; F9 encore revient.</translation>
    </message>
    <message>
        <source>With the girdle on its stacks: does everything clear, does the crank turn? It was done once. It is stale and locked until cap 4 is right again, and says what holds it.</source>
        <translation>La plaque sur ses piles&#xa0;: tout est-il dégagé, le vilebrequin tourne-t-il&#xa0;? Cela a été fait une fois. C&apos;est périmé et verrouillé jusqu&apos;à ce que le chapeau 4 soit de nouveau en ordre, et il est dit ce qui bloque.</translation>
    </message>
    <message>
        <source>Press a reason in the list of what holds the gate: it leads to its place. Come back with Ctrl+5.</source>
        <translation>Appuyer sur une raison dans la liste de ce qui bloque l&apos;accès&#xa0;: elle mène à son endroit. Revenir avec Ctrl+5.</translation>
    </message>
    <message>
        <source>Pan depth, gasket, plate and pickup, each read twice, give the room under the pickup: to scale, with its band and what the instruments leave open. No fastener of cap 4 has to do with it, so it stands.</source>
        <translation>Profondeur du carter, joint, plaque et crépine, lus deux fois chacun, donnent la place sous la crépine&#xa0;: à l&apos;échelle, avec sa plage et ce que les instruments laissent ouvert. Aucune fixation du chapeau 4 n&apos;y touche, elle tient donc.</translation>
    </message>
    <message>
        <source>Choose “Why” beside the value: it shows which reading leaves most of it open.</source>
        <translation>Choisir «&#xa0;Pourquoi&#xa0;» à côté de la valeur&#xa0;: on y voit quelle lecture en laisse le plus ouvert.</translation>
    </message>
    <message>
        <source>What hides everything else comes last: shims counted back, stacks, bead, nuts, crank, pan, and the sign-off. It opens when nothing is out, open or stale, and every fastener has held in a round of its own.</source>
        <translation>Ce qui cache tout le reste vient en dernier&#xa0;: cales recomptées, piles, cordon, écrous, vilebrequin, carter, et le visa. Cela s&apos;ouvre quand rien n&apos;est hors limites, à faire ou périmé, et que chaque fixation a tenu dans sa propre tournée.</translation>
    </message>
    <message>
        <source>Ctrl+Enter goes to the next thing to do, from anywhere, until there is nothing left but to sign off.</source>
        <translation>Ctrl+Entrée va à la prochaine chose à faire, de partout, jusqu&apos;à ce qu&apos;il ne reste que le visa.</translation>
    </message>
    <message>
        <source>Every entry, in order, with who made it and when, each sealed to all before it. A wrong one is struck with a reason and stays readable. File ▸ Build sheet as PDF makes what the customer gets.</source>
        <translation>Chaque inscription, dans l&apos;ordre, avec qui l&apos;a faite et quand, scellée à toutes les précédentes. Une inscription fausse se biffe avec un motif et reste lisible. Fichier ▸ Feuille de montage en PDF fait ce que reçoit le client.</translation>
    </message>
    <message>
        <source>Ctrl+F, then type: moved. Ctrl+Z strikes the last entry, after asking why. This is a copy in a temporary folder; it goes when you close its window.</source>
        <translation>Ctrl+F, puis taper&#xa0;: bougé. Ctrl+Z biffe la dernière inscription, après avoir demandé pourquoi. Ceci est une copie dans un répertoire temporaire&#xa0;; elle disparaît à la fermeture de sa fenêtre.</translation>
    </message>
    <message>
        <source>Tour</source>
        <translation>Visite</translation>
    </message>
    <message>
        <source>Back  (Alt+←)</source>
        <translation>Retour  (Alt+←)</translation>
    </message>
    <message>
        <source>Close the tour  (Shift+F1)</source>
        <translation>Fermer la visite  (Maj+F1)</translation>
    </message>
    <message>
        <source>%1 of %2: %3</source>
        <translation>%1 sur %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Try it: %1</source>
        <translation>Essayer&#xa0;: %1</translation>
    </message>
    <message>
        <source>Next  (Alt+→)</source>
        <translation>Suivant  (Alt+→)</translation>
    </message>
    <message>
        <source>Done  (Alt+→)</source>
        <translation>Terminé  (Alt+→)</translation>
    </message>
</context>
<context>
    <name>caprail::TrialFitStation</name>
    <message>
        <source>Fai&amp;l</source>
        <translation>&amp;Non conforme</translation>
    </message>
    <message>
        <source>What is looked at in the trial fit</source>
        <translation>Ce qui est regardé au montage à blanc</translation>
    </message>
    <message>
        <source>What holds the trial fit</source>
        <translation>Ce qui bloque le montage à blanc</translation>
    </message>
    <message>
        <source>Type what was seen first; it becomes a finding.</source>
        <translation>Taper d&apos;abord ce qui a été vu&#xa0;; cela devient un constat.</translation>
    </message>
    <message>
        <source>This build is signed off.</source>
        <translation>Ce montage est visé.</translation>
    </message>
    <message>
        <source>▣  Locked: the engine layout is not set yet.</source>
        <translation>▣  Verrouillé&#xa0;: l&apos;architecture du moteur n&apos;est pas encore fixée.</translation>
    </message>
    <message>
        <source>▣  Locked: %1 of %2 checks hold it. Choose one to go there.</source>
        <translation>▣  Verrouillé&#xa0;: %1 contrôles sur %2 le bloquent. En choisir un pour y aller.</translation>
    </message>
    <message>
        <source>Set the engine layout at the engine station: the throws are drawn from it.</source>
        <translation>Fixer l&apos;architecture du moteur au poste Moteur&#xa0;: les coudes en sont dessinés.</translation>
    </message>
    <message>
        <source>All girdle nuts are at torque</source>
        <translation>Tous les écrous de plaque sont au couple</translation>
    </message>
    <message>
        <source>%1 brought to (Enter alone: as specified)</source>
        <translation>%1, amener à (Entrée seule&#xa0;: comme prescrit)</translation>
    </message>
    <message>
        <source>%1: to start it / to turn it</source>
        <translation>%1&#xa0;: pour décoller / pour tourner</translation>
    </message>
    <message>
        <source>%1 to start it, %2 to turn it</source>
        <translation>%1 pour décoller, %2 pour tourner</translation>
    </message>
    <message>
        <source>Lay the girdle on its stacks, bring its nuts to torque, and answer each line: p passes, f fails, or type the clearance.</source>
        <translation>Poser la plaque sur ses piles, amener ses écrous au couple, et répondre à chaque ligne&#xa0;: p pour conforme, f pour non conforme, ou taper le dégagement.</translation>
    </message>
    <message>
        <source>With the girdle on its stacks and its nuts at torque: which way round it goes, and that dipstick, pickup tube, counterweights and rod bolts are clear through two turns by hand; how hard the crank turns before and after. It unlocks once every stack has been rechecked.</source>
        <translation>La plaque sur ses piles et ses écrous au couple&#xa0;: dans quel sens elle va, et que jauge d&apos;huile, tube de crépine, contrepoids et vis de bielle sont dégagés sur deux tours à la main&#xa0;; combien le vilebrequin tourne dur avant et après. Cela se déverrouille une fois chaque pile recontrôlée.</translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Conforme</translation>
    </message>
    <message>
        <source>Fail</source>
        <translation>Non conforme</translation>
    </message>
    <message>
        <source>P&amp;ass</source>
        <translation>&amp;Conforme</translation>
    </message>
</context>
<context>
    <name>caprail::TrialFitWay</name>
    <message>
        <source>Girdle lies like this</source>
        <translation>La plaque repose ainsi</translation>
    </message>
    <message>
        <source>Face that is up</source>
        <translation>Face dessus</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 dessus</translation>
    </message>
    <message>
        <source>End that the cutout is towards</source>
        <translation>Extrémité vers laquelle est l&apos;échancrure</translation>
    </message>
    <message>
        <source>cutout to the %1</source>
        <translation>échancrure vers l&apos;%1</translation>
    </message>
    <message>
        <source>Side that the cutout is on</source>
        <translation>Côté de l&apos;échancrure</translation>
    </message>
    <message>
        <source>on the %1</source>
        <translation>côté %1</translation>
    </message>
</context>
</TS>
