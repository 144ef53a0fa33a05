<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en_GB">
<context>
    <name>ActsPage</name>
    <message>
        <source>Back to 1</source>
        <extracomment>on a sheet of numbered pictures that stand on several leaves: to the first picture</extracomment>
        <translation>Zurück zu 1</translation>
    </message>
    <message>
        <source>On to %1</source>
        <extracomment>the same: to the leaf that begins with picture %1</extracomment>
        <translation>Weiter zu %1</translation>
    </message>
</context>
<context>
    <name>AmountInHand</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1 mehr</translation>
    </message>
</context>
<context>
    <name>AmountRow</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1 mehr</translation>
    </message>
</context>
<context>
    <name>Band</name>
    <message>
        <source>Shelf</source>
        <extracomment>where the projects are kept</extracomment>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Read</source>
        <extracomment>reads the step out; one short word on a narrow cell</extracomment>
        <translation>Vorlesen</translation>
    </message>
    <message>
        <source>Read this step aloud</source>
        <translation>Diesen Schritt vorlesen</translation>
    </message>
</context>
<context>
    <name>BattingSheet</name>
    <message>
        <source>Add this size</source>
        <extracomment>adds the size of a package of batting to those held against the roll</extracomment>
        <translation>Diese Größe hinzufügen</translation>
    </message>
    <message>
        <source>Forget the sizes</source>
        <extracomment>takes all sizes of packages off the list</extracomment>
        <translation>Größen vergessen</translation>
    </message>
</context>
<context>
    <name>BindingSection</name>
    <message>
        <source>seam</source>
        <translation>Naht</translation>
    </message>
    <message>
        <source>past the seam</source>
        <extracomment>so far the fold of the binding lies beyond the seam, on the back</extracomment>
        <translation>über die Naht</translation>
    </message>
    <message>
        <source>strip, cut</source>
        <extracomment>the width a strip of binding is cut</extracomment>
        <translation>Streifen, geschnitten</translation>
    </message>
    <message>
        <source>pressed in half</source>
        <extracomment>the strip of binding, folded along its middle with the iron</extracomment>
        <translation>längs gefaltet</translation>
    </message>
</context>
<context>
    <name>BlockLegend</name>
    <message>
        <source>as planned</source>
        <extracomment>beside a beaded line: the block&apos;s outline as it should be</extracomment>
        <translation>wie geplant</translation>
    </message>
    <message>
        <source>drawn %1 times as far off</source>
        <translation>Abweichung %1-fach gezeichnet</translation>
    </message>
</context>
<context>
    <name>CardBar</name>
    <message>
        <source>A bar as long as a bank card</source>
        <translation>Ein Balken, so lang wie eine Bankkarte</translation>
    </message>
    <message>
        <source>Bar shorter</source>
        <translation>Balken kürzer</translation>
    </message>
    <message>
        <source>Bar longer</source>
        <translation>Balken länger</translation>
    </message>
    <message>
        <source>Lay a bank card on the bar; make the bar as long as the card.</source>
        <translation>Eine Bankkarte auf den Balken legen; den Balken so lang machen wie die Karte.</translation>
    </message>
</context>
<context>
    <name>Demo</name>
    <message>
        <source>Reading-room runner</source>
        <extracomment>the demo&apos;s name: a runner is a long narrow table topper</extracomment>
        <translation>Läufer fürs Lesezimmer</translation>
    </message>
    <message>
        <source>the square magnetic one</source>
        <extracomment>a hoop&apos;s own name</extracomment>
        <translation>der quadratische mit Magneten</translation>
    </message>
    <message>
        <source>oat linen</source>
        <extracomment>a cloth&apos;s own name, like those that follow</extracomment>
        <translation>helles Leinen</translation>
    </message>
    <message>
        <source>small blue print</source>
        <translation>kleiner Blaudruck</translation>
    </message>
    <message>
        <source>low-loft cotton</source>
        <extracomment>batting that stays flat</extracomment>
        <translation>flaches Baumwollvlies</translation>
    </message>
    <message>
        <source>dark teal</source>
        <translation>dunkles Petrol</translation>
    </message>
    <message>
        <source>rust</source>
        <translation>Rost</translation>
    </message>
    <message>
        <source>cream</source>
        <translation>Creme</translation>
    </message>
    <message>
        <source>hull</source>
        <extracomment>a patch: the hull of a boat</extracomment>
        <translation>Rumpf</translation>
    </message>
    <message>
        <source>sail</source>
        <translation>Segel</translation>
    </message>
    <message>
        <source>long</source>
        <extracomment>a ruler&apos;s own name: the long one</extracomment>
        <translation>lang</translation>
    </message>
    <message>
        <source>square</source>
        <extracomment>a ruler&apos;s own name: the square one</extracomment>
        <translation>Quadrat</translation>
    </message>
</context>
<context>
    <name>DimensionSteps</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1 mehr</translation>
    </message>
</context>
<context>
    <name>DrawerFront</name>
    <message>
        <source>open</source>
        <extracomment>of a group in a list: what it holds is seen, or is not</extracomment>
        <translation>offen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
</context>
<context>
    <name>DrawnInBlock</name>
    <message>
        <source>along</source>
        <extracomment>along the strip</extracomment>
        <translation>längs</translation>
    </message>
    <message>
        <source>across</source>
        <extracomment>across the strip</extracomment>
        <translation>quer</translation>
    </message>
    <message>
        <source>as sent</source>
        <extracomment>the block&apos;s outline as the machine was told it</extracomment>
        <translation>wie gesendet</translation>
    </message>
    <message>
        <source>as it came, difference × %1</source>
        <extracomment>the stitched block, smaller than it was sent; %1 is 2, 5, 10 or 20</extracomment>
        <translation>wie gestickt, Unterschied × %1</translation>
    </message>
</context>
<context>
    <name>EdgeAside</name>
    <message>
        <source>Measure the piece</source>
        <translation>Das Stück messen</translation>
    </message>
    <message>
        <source>Four sides and two diagonals, lying flat.</source>
        <translation>Vier Seiten und zwei Diagonalen, flach liegend.</translation>
    </message>
    <message>
        <source>Stay-stitch {3 mm} from the raw edge across every sashing end.</source>
        <translation>{3 mm} neben der Schnittkante über jedes Ende der Zwischenstreifen eine Stütznaht steppen.</translation>
    </message>
    <message>
        <source>Stay-stitch {1/8 in} from the raw edge across every sashing end.</source>
        <translation>{1/8 in} neben der Schnittkante über jedes Ende der Zwischenstreifen eine Stütznaht steppen.</translation>
    </message>
    <message>
        <source>Where the joins fall</source>
        <translation>Wo die Ansätze liegen</translation>
    </message>
    <message>
        <source>Seam {%1}, in section</source>
        <translation>Naht {%1}, Querschnitt</translation>
    </message>
    <message>
        <source>Care, label, sleeve, pillow</source>
        <translation>Pflege, Etikett, Aufhängetunnel, Kissen</translation>
    </message>
    <message>
        <source>How the frame goes on</source>
        <translation>So wird die Umrandung angenäht</translation>
    </message>
</context>
<context>
    <name>EdgeBound</name>
    <message>
        <source>The bound edge in section, seam %1</source>
        <translation>Die eingefasste Kante im Querschnitt, Naht %1</translation>
    </message>
</context>
<context>
    <name>EdgeCare</name>
    <message>
        <source>Care, label, sleeve, pillow</source>
        <translation>Pflege, Etikett, Aufhängetunnel, Kissen</translation>
    </message>
    <message>
        <source>As a pillow, from the back</source>
        <translation>Als Kissen, von hinten</translation>
    </message>
</context>
<context>
    <name>EdgeCornerNear</name>
    <message>
        <source>A corner close to</source>
        <translation>Eine Ecke von Nahem</translation>
    </message>
    <message>
        <source>along</source>
        <extracomment>so many scallops along the piece</extracomment>
        <translation>längs</translation>
    </message>
    <message>
        <source>across</source>
        <extracomment>so many scallops across the piece</extracomment>
        <translation>quer</translation>
    </message>
</context>
<context>
    <name>EdgeCorners</name>
    <message>
        <source>square</source>
        <translation>rechtwinklig</translation>
    </message>
    <message>
        <source>rounded</source>
        <translation>abgerundet</translation>
    </message>
    <message>
        <source>radius</source>
        <translation>Radius</translation>
    </message>
    <message>
        <source>Radius of the corners</source>
        <translation>Radius der Ecken</translation>
    </message>
    <message>
        <source>circle</source>
        <translation>Kreis</translation>
    </message>
    <message>
        <source>round ends</source>
        <translation>runde Enden</translation>
    </message>
    <message>
        <source>scallops</source>
        <translation>Bögen</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Depth of the scallops</source>
        <translation>Tiefe der Bögen</translation>
    </message>
    <message>
        <source>scallops along</source>
        <translation>Bögen längs</translation>
    </message>
    <message>
        <source>scallops across</source>
        <translation>Bögen quer</translation>
    </message>
    <message>
        <source>Corners</source>
        <translation>Ecken</translation>
    </message>
</context>
<context>
    <name>EdgeDrawing</name>
    <message>
        <source>begin</source>
        <extracomment>the place where the binding begins and closes</extracomment>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>deep</source>
        <extracomment>how deep the scallops are cut</extracomment>
        <translation>tief</translation>
    </message>
    <message>
        <source>radius</source>
        <extracomment>of a rounded corner</extracomment>
        <translation>Radius</translation>
    </message>
</context>
<context>
    <name>EdgeFrame</name>
    <message>
        <source>The frame</source>
        <translation>Die Umrandung</translation>
    </message>
</context>
<context>
    <name>EdgeJoins</name>
    <message>
        <source>Lay the binding round once before you sew</source>
        <translation>Die Einfassung vor dem Nähen einmal ringsum legen</translation>
    </message>
    <message>
        <source>Seen from the front, the strip laid clockwise. Each place is the middle of a seam at 45°.</source>
        <translation>Von vorn gesehen, der Streifen im Uhrzeigersinn gelegt. Jede Stelle ist die Mitte einer Naht unter 45°.</translation>
    </message>
    <message>
        <source>At top and bottom measured from the left, at the sides from the top.</source>
        <extracomment>how far each join of the binding lies from a corner of the piece</extracomment>
        <translation>Oben und unten von links gemessen, an den Seiten von oben.</translation>
    </message>
</context>
<context>
    <name>EdgeMeasure</name>
    <message>
        <source>What is not read stands as planned. The limits are common practice; no published ones are known.</source>
        <translation>Was nicht gemessen ist, steht wie geplant. Die Grenzen sind Erfahrungswerte; veröffentlichte Werte sind nicht bekannt.</translation>
    </message>
</context>
<context>
    <name>EdgePage</name>
    <message>
        <source>The piece. %1</source>
        <translation>Das Stück. %1</translation>
    </message>
    <message>
        <source>The binding laid round. %1</source>
        <translation>Die Einfassung ringsum gelegt. %1</translation>
    </message>
    <message>
        <source>The finished piece</source>
        <translation>Das fertige Stück</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>The piece with its frame</source>
        <translation>Das Stück mit seiner Umrandung</translation>
    </message>
    <message>
        <source>Measure all six, raw edge to raw edge.</source>
        <translation>Alle sechs Maße nehmen, von Schnittkante zu Schnittkante.</translation>
    </message>
</context>
<context>
    <name>EdgePins</name>
    <message>
        <source>pins in</source>
        <translation>Nadeln gesteckt</translation>
    </message>
    <message>
        <source>pins out</source>
        <translation>Nadeln gezogen</translation>
    </message>
    <message>
        <source>%1 less</source>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 mehr</translation>
    </message>
    <message>
        <source>No pins were used</source>
        <translation>Keine Nadeln benutzt</translation>
    </message>
    <message>
        <source>I know where they are</source>
        <translation>Ich weiß, wo sie sind</translation>
    </message>
    <message>
        <source>I know where it is</source>
        <translation>Ich weiß, wo sie ist</translation>
    </message>
</context>
<context>
    <name>EdgeSection</name>
    <message>
        <source>Double fold: cut {%1}, pressed in half to {%2}</source>
        <translation>Doppelt gelegt: {%1} zuschneiden, längs auf die Hälfte falten und bügeln: {%2}</translation>
    </message>
    <message>
        <source>Single fold: cut {%1}</source>
        <translation>Einfach gelegt: {%1} zuschneiden</translation>
    </message>
    <message>
        <source>On the back the fold just covers the seam; sewn down by hand.</source>
        <translation>Hinten deckt die Faltkante gerade die Naht; von Hand angenäht.</translation>
    </message>
    <message>
        <source>On the back the fold passes the seam, so that stitching from the front catches it.</source>
        <translation>Hinten reicht die Faltkante über die Naht, damit die Naht von vorn sie fasst.</translation>
    </message>
</context>
<context>
    <name>FieldItem</name>
    <message>
        <source>not said</source>
        <extracomment>a price nobody has entered</extracomment>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is what is decided, %2 the value it has</extracomment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>FieldRow</name>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
</context>
<context>
    <name>FieldValue</name>
    <message>
        <source>%1, worked out</source>
        <extracomment>%1 is a value that the plan works out by itself</extracomment>
        <translation>%1, ausgerechnet</translation>
    </message>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1 mehr</translation>
    </message>
</context>
<context>
    <name>FieldsProblem</name>
    <message>
        <source>Look at this</source>
        <extracomment>the head of a line that warns of something but stops nothing</extracomment>
        <translation>Hier hinsehen</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <extracomment>after the first of several cautions; %1 is how many more there are</extracomment>
        <translation>und noch %1</translation>
    </message>
</context>
<context>
    <name>FieldsSheet</name>
    <message>
        <source>What would fit</source>
        <translation>Was passen würde</translation>
    </message>
    <message>
        <source>What follows</source>
        <translation>Was daraus folgt</translation>
    </message>
    <message>
        <source>A file of this project</source>
        <translation>Eine Datei dieses Projekts</translation>
    </message>
    <message>
        <source>Light and dark</source>
        <extracomment>the page on how light and how dark the cloths are</extracomment>
        <translation>Hell und Dunkel</translation>
    </message>
</context>
<context>
    <name>FigureRow</name>
    <message>
        <source>not tried yet</source>
        <translation>noch nicht erprobt</translation>
    </message>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a figure does</extracomment>
        <translation>Rechenweg zeigen</translation>
    </message>
</context>
<context>
    <name>FiguresColumn</name>
    <message>
        <source>Dotted figures: your trial may still change them.</source>
        <extracomment>how figures are marked that the trial has not confirmed</extracomment>
        <translation>Punktiert unterstrichen: Die Probe kann diese Maße noch ändern.</translation>
    </message>
</context>
<context>
    <name>FinishedSize</name>
    <message>
        <source>Finished %1 by %2</source>
        <translation>Fertig %1 mal %2</translation>
    </message>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a figure does</extracomment>
        <translation>Rechenweg zeigen</translation>
    </message>
</context>
<context>
    <name>FirstRun</name>
    <message>
        <source>The shelf is empty.</source>
        <translation>Das Regal ist leer.</translation>
    </message>
    <message>
        <source>Begin with the demo, ready to cut, or with nine blocks of your own.</source>
        <translation>Das Beispiel öffnen, es kann gleich geschnitten werden, oder ein neues Stück aus neun Blöcken beginnen.</translation>
    </message>
    <message>
        <source>Open the demo</source>
        <translation>Das Beispiel öffnen</translation>
    </message>
    <message>
        <source>Pieces put away: %1</source>
        <extracomment>every piece was put away, out of sight; %1 is how many</extracomment>
        <translation>Weggelegte Stücke: %1</translation>
    </message>
    <message>
        <source>Nothing else is on the shelf. What was put away can be brought back.</source>
        <translation>Sonst liegt nichts im Regal. Weggelegtes lässt sich zurückholen.</translation>
    </message>
    <message>
        <source>Show what is put away</source>
        <translation>Weggelegtes zeigen</translation>
    </message>
</context>
<context>
    <name>FitLayouts</name>
    <message>
        <source>What would fit</source>
        <translation>Was passen würde</translation>
    </message>
    <message>
        <source>Show what fits</source>
        <translation>Zeigen, was passt</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Take this layout</source>
        <extracomment>layout: how many blocks across and down, their size and the sashing between them</extracomment>
        <translation>Diese Aufteilung nehmen</translation>
    </message>
    <message>
        <source>Open for reading only.</source>
        <translation>Nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <source>Press one to see it on the table.</source>
        <translation>Eine antippen, um sie auf dem Tisch zu sehen.</translation>
    </message>
    <message>
        <source>Mend it</source>
        <extracomment>leads to the field that must be mended first</extracomment>
        <translation>Beheben</translation>
    </message>
    <message>
        <source>The blocks</source>
        <extracomment>leads to what is wanted of the blocks, or back to what is wanted at the table</extracomment>
        <translation>Die Blöcke</translation>
    </message>
    <message>
        <source>The table</source>
        <translation>Der Tisch</translation>
    </message>
</context>
<context>
    <name>FitMade</name>
    <message>
        <source>A change here leaves it as it is.</source>
        <extracomment>what is made: the strips and blocks named before</extracomment>
        <translation>Eine Änderung hier lässt es, wie es ist.</translation>
    </message>
</context>
<context>
    <name>FitScene</name>
    <message>
        <source>Show the back</source>
        <extracomment>the other face of the piece, in the drawing</extracomment>
        <translation>Rückseite zeigen</translation>
    </message>
    <message>
        <source>Show the front</source>
        <translation>Vorderseite zeigen</translation>
    </message>
    <message>
        <source>%1 mats on the table, each %2 by %3</source>
        <extracomment>place mats: so many, and their two sides</extracomment>
        <translation>%1 Tischsets auf dem Tisch, jedes %2 mal %3</translation>
    </message>
    <message>
        <source>The piece on the table, %1 by %2</source>
        <translation>Das Stück auf dem Tisch, %1 mal %2</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>Reihen</translation>
    </message>
    <message>
        <source>block</source>
        <translation>Block</translation>
    </message>
</context>
<context>
    <name>FitWanted</name>
    <message>
        <source>Change what is wanted</source>
        <translation>Wunsch ändern</translation>
    </message>
    <message>
        <source>Wanted: %1</source>
        <extracomment>what the layouts below are looked for: so much bare table, or a finished size</extracomment>
        <translation>Gewünscht: %1</translation>
    </message>
    <message>
        <source>change</source>
        <translation>ändern</translation>
    </message>
</context>
<context>
    <name>FootFigure</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>show the working</source>
        <translation>Rechenweg zeigen</translation>
    </message>
</context>
<context>
    <name>GalleryCell</name>
    <message>
        <source>Block %1, %2</source>
        <extracomment>spoken: a block&apos;s name and its state</extracomment>
        <translation>Block %1, %2</translation>
    </message>
    <message>
        <source>with a note</source>
        <extracomment>spoken: words were written of the block</extracomment>
        <translation>mit Notiz</translation>
    </message>
</context>
<context>
    <name>GalleryNotes</name>
    <message>
        <source>Block %1</source>
        <translation>Block %1</translation>
    </message>
    <message>
        <source>Nothing is noted of block %1 yet</source>
        <translation>Zu Block %1 ist noch nichts notiert</translation>
    </message>
    <message>
        <source>Back to the gallery</source>
        <translation>Zurück zu den Bildern</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is a block&apos;s name, %2 its measured size</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorderseite</translation>
    </message>
    <message>
        <source>Back face</source>
        <translation>Rückseite</translation>
    </message>
</context>
<context>
    <name>GalleryPage</name>
    <message>
        <source>Back to the work</source>
        <translation>Zurück zur Arbeit</translation>
    </message>
    <message>
        <source>%1 of %2 blocks have a photograph</source>
        <extracomment>%1 of %2 blocks have a photograph</extracomment>
        <translation>%1 von %2 Blöcken haben ein Foto</translation>
    </message>
</context>
<context>
    <name>GroupHead</name>
    <message>
        <source>open</source>
        <extracomment>of a group in a list: what it holds is seen, or is not</extracomment>
        <translation>offen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>zugeklappt</translation>
    </message>
</context>
<context>
    <name>HelperView</name>
    <message>
        <source>Nothing left to do here</source>
        <translation>Hier ist nichts mehr zu tun</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>No step is at hand.</source>
        <translation>Gerade steht kein Schritt an.</translation>
    </message>
</context>
<context>
    <name>HelperWindow</name>
    <message>
        <source>For helpers: Matside</source>
        <translation>Für Helfende: Matside</translation>
    </message>
    <message>
        <source>Close</source>
        <extracomment>closes the helper&apos;s window</extracomment>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>HoldButton</name>
    <message>
        <source>hold for a second</source>
        <extracomment>how a button that destroys is pressed</extracomment>
        <translation>eine Sekunde halten</translation>
    </message>
</context>
<context>
    <name>HoopAside</name>
    <message>
        <source>Last outline ended at {%1}</source>
        <translation>Letzter Umriss endete bei {%1}</translation>
    </message>
    <message>
        <source>Stops and patches</source>
        <translation>Stopps und Flicken</translation>
    </message>
    <message>
        <source>Gaps can yield sashing</source>
        <translation>Lücken können Zwischenstreifen ergeben</translation>
    </message>
    <message>
        <source>Hoops</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>Pictures and notes</source>
        <translation>Bilder und Notizen</translation>
    </message>
</context>
<context>
    <name>HoopChoice</name>
    <message>
        <source>Another hoop</source>
        <translation>Anderer Rahmen</translation>
    </message>
    <message>
        <source>Hoops</source>
        <translation>Rahmen</translation>
    </message>
</context>
<context>
    <name>HoopDrawUp</name>
    <message>
        <source>Draw-up</source>
        <extracomment>draw-up: how much the stitching shrinks the block</extracomment>
        <translation>Einzug</translation>
    </message>
    <message>
        <source>Take it for the blocks to come</source>
        <translation>Für die nächsten Blöcke nehmen</translation>
    </message>
    <message>
        <source>Taken for the blocks to come.</source>
        <translation>Für die nächsten Blöcke übernommen.</translation>
    </message>
</context>
<context>
    <name>HoopDrawing</name>
    <message>
        <source>the frame’s outside, edge to edge</source>
        <translation>Rahmen außen, von Kante zu Kante</translation>
    </message>
    <message>
        <source>the opening inside the frame</source>
        <translation>die Öffnung im Rahmen</translation>
    </message>
    <message>
        <source>the field: as far as the needle stitches</source>
        <extracomment>field: as far as the needle can stitch</extracomment>
        <translation>das Stickfeld: so weit die Nadel sticht</translation>
    </message>
</context>
<context>
    <name>HoopMeasure</name>
    <message>
        <source>A hoop’s name is not its field. Measure all three.</source>
        <translation>Der Name eines Rahmens ist nicht sein Stickfeld. Alle drei messen.</translation>
    </message>
    <message>
        <source>where the %1 is measured</source>
        <translation>wo gemessen wird: %1</translation>
    </message>
    <message>
        <source>two rings</source>
        <translation>zwei Ringe</translation>
    </message>
    <message>
        <source>magnetic</source>
        <translation>magnetisch</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>Side of the machine’s bracket</source>
        <extracomment>bracket: the arm that carries the hoop; on that side the strip would run into the machine</extracomment>
        <translation>Seite der Rahmenhalterung</translation>
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
        <source>Hold to take it off the shelf</source>
        <translation>Halten, um ihn aus dem Regal zu nehmen</translation>
    </message>
    <message>
        <source>All hoops</source>
        <translation>Alle Rahmen</translation>
    </message>
</context>
<context>
    <name>HoopPage</name>
    <message>
        <source>Pictures and notes</source>
        <translation>Bilder und Notizen</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>HoopRack</name>
    <message>
        <source>%1 to spare</source>
        <extracomment>what the block leaves of the hoop&apos;s field</extracomment>
        <translation>%1 Spiel</translation>
    </message>
    <message>
        <source>%1 too large</source>
        <extracomment>how much the block is over the hoop&apos;s field</extracomment>
        <translation>%1 zu groß</translation>
    </message>
    <message>
        <source>Its measures</source>
        <translation>Seine Maße</translation>
    </message>
</context>
<context>
    <name>HoopShelf</name>
    <message>
        <source>stitching field, along</source>
        <translation>Stickfeld, längs</translation>
    </message>
    <message>
        <source>stitching field, across</source>
        <translation>Stickfeld, quer</translation>
    </message>
    <message>
        <source>opening inside the frame, along</source>
        <translation>Öffnung im Rahmen, längs</translation>
    </message>
    <message>
        <source>opening inside the frame, across</source>
        <translation>Öffnung im Rahmen, quer</translation>
    </message>
    <message>
        <source>outside of the frame, along</source>
        <translation>Rahmen außen, längs</translation>
    </message>
    <message>
        <source>outside of the frame, across</source>
        <translation>Rahmen außen, quer</translation>
    </message>
    <message>
        <source>thickest sandwich it holds</source>
        <extracomment>sandwich: top, batting and back together</extracomment>
        <translation>größte Lagendicke</translation>
    </message>
</context>
<context>
    <name>HoopStops</name>
    <message>
        <source>Block %1, stop by stop</source>
        <translation>Block %1, Stopp für Stopp</translation>
    </message>
    <message>
        <source>New bobbin in</source>
        <translation>Neue Spule eingelegt</translation>
    </message>
    <message>
        <source>Stop by stop</source>
        <translation>Stopp für Stopp</translation>
    </message>
</context>
<context>
    <name>HoopZero</name>
    <message>
        <source>The last outline really ended at</source>
        <translation>Wo der letzte Umriss wirklich endete</translation>
    </message>
    <message>
        <source>from the zero end</source>
        <translation>vom Nullende</translation>
    </message>
    <message>
        <source>Measure from the zero end, not from the block before: then no error piles up.</source>
        <translation>Vom Nullende messen, nicht vom Block davor: So summiert sich kein Fehler.</translation>
    </message>
</context>
<context>
    <name>JoinAside</name>
    <message>
        <source>Measure this row</source>
        <translation>Diese Reihe messen</translation>
    </message>
    <message>
        <source>Seam {%1} catch {%2}</source>
        <translation>Naht {%1} Überstand {%2}</translation>
    </message>
    <message>
        <source>Seam {%1}</source>
        <translation>Naht {%1}</translation>
    </message>
    <message>
        <source>True-size gauge</source>
        <translation>Lehre in wahrer Größe</translation>
    </message>
    <message>
        <source>Layout, front and back</source>
        <translation>Anordnung, vorn und hinten</translation>
    </message>
    <message>
        <source>Two blocks should change places</source>
        <translation>Zwei Blöcke sollten tauschen</translation>
    </message>
    <message>
        <source>Filling and closing</source>
        <translation>Füllen und Schließen</translation>
    </message>
    <message>
        <source>Never fold {%1} under: the stitches in the ditch would miss it.</source>
        <extracomment>a fold so wide that the ditch stitching would not catch it</extracomment>
        <translation>Nie {%1} umlegen: Die Stiche im Nahtschatten würden es nicht fassen.</translation>
    </message>
</context>
<context>
    <name>JoinGauge</name>
    <message>
        <source>True size</source>
        <translation>Wahre Größe</translation>
    </message>
    <message>
        <source>Pins out, cloth cool and dry, do not press on the glass.</source>
        <translation>Nadeln heraus, Stoff kühl und trocken, nicht auf das Glas drücken.</translation>
    </message>
    <message>
        <source>catch</source>
        <translation>Überstand</translation>
    </message>
    <message>
        <source>fold under</source>
        <translation>Umlegen</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>Naht</translation>
    </message>
    <message>
        <source>True only after the screen was set against a card, at the foot of the shelf.</source>
        <translation>Stimmt erst, wenn der Bildschirm an einer Karte eingestellt ist: unten am Regal.</translation>
    </message>
</context>
<context>
    <name>JoinLayout</name>
    <message>
        <source>Layout of the blocks; next: %1</source>
        <translation>Anordnung der Blöcke; als Nächstes: %1</translation>
    </message>
    <message>
        <source>Touch two blocks to swap them; their labels stay with them.</source>
        <translation>Zwei Blöcke antippen, um sie zu tauschen; ihre Zettel wandern mit.</translation>
    </message>
    <message>
        <source>Now the other one.</source>
        <translation>Jetzt den anderen.</translation>
    </message>
    <message>
        <source>Swap them</source>
        <translation>Tauschen</translation>
    </message>
    <message>
        <source>See the front</source>
        <translation>Vorn ansehen</translation>
    </message>
    <message>
        <source>See the back</source>
        <translation>Hinten ansehen</translation>
    </message>
</context>
<context>
    <name>JoinMap</name>
    <message>
        <source>back, as it lies turned over</source>
        <translation>Rückseite, wie sie gewendet liegt</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
</context>
<context>
    <name>JoinPage</name>
    <message>
        <source>Section of a join: seam %1, fold under %2, catch %3</source>
        <translation>Verbindung im Querschnitt: Naht %1, Umlegen %2, Überstand %3</translation>
    </message>
    <message>
        <source>Match marks from the row’s raw end, now at %1</source>
        <translation>Passzeichen vom Schnittende der Reihe, jetzt bei %1</translation>
    </message>
    <message>
        <source>Layout of the blocks; next: %1</source>
        <translation>Anordnung der Blöcke; als Nächstes: %1</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Section of a join: seam %1</source>
        <translation>Verbindung im Querschnitt: Naht %1</translation>
    </message>
    <message>
        <source>Section of a join: seam %1, back strip doubled, catch %2</source>
        <translation>Verbindung im Querschnitt: Naht %1, Streifen hinten doppelt, Überstand %2</translation>
    </message>
    <message>
        <source>Section of the test join: seam %1, overlap %2</source>
        <translation>Probeverbindung im Querschnitt: Naht %1, Überlappung %2</translation>
    </message>
    <message>
        <source>Section of the test join: seam %1, gap %2</source>
        <translation>Probeverbindung im Querschnitt: Naht %1, Spalt %2</translation>
    </message>
    <message>
        <source>Section of the test join: seam %1, the edges meet</source>
        <translation>Probeverbindung im Querschnitt: Naht %1, die Kanten stoßen aneinander</translation>
    </message>
    <message>
        <source>Section of the test join, with what is read of it</source>
        <translation>Probeverbindung im Querschnitt, mit den Messwerten</translation>
    </message>
    <message>
        <source>Match marks: the middle of each short sashing</source>
        <extracomment>over the tape on which the match marks of a long sashing are read, from the row&apos;s raw left end</extracomment>
        <translation>Passzeichen: Mitte jedes kurzen Zwischenstreifens</translation>
    </message>
</context>
<context>
    <name>JoinRow</name>
    <message>
        <source>%1: how long is it, raw end to raw end?</source>
        <translation>%1: Wie lang ist sie, von Schnittende zu Schnittende?</translation>
    </message>
    <message>
        <source>Enter its length</source>
        <translation>Länge eingeben</translation>
    </message>
    <message>
        <source>Length of the row, raw end to raw end</source>
        <translation>Länge der Reihe, von Schnittende zu Schnittende</translation>
    </message>
    <message>
        <source>Lay it flat, not stretched. How much may be eased is common practice; no published limit is known.</source>
        <translation>Flach legen, nicht dehnen. Wie viel sich einhalten lässt, ist ein Erfahrungswert; eine veröffentlichte Grenze ist nicht bekannt.</translation>
    </message>
</context>
<context>
    <name>JoinTest</name>
    <message>
        <source>The gap moves four times as fast as the seam.</source>
        <translation>Der Spalt ändert sich viermal so schnell wie die Naht.</translation>
    </message>
</context>
<context>
    <name>JoinWays</name>
    <message>
        <source>Filling and closing</source>
        <translation>Füllen und Schließen</translation>
    </message>
    <message>
        <source>What is cut already stays as it is; what no longer fits is named.</source>
        <translation>Was geschnitten ist, bleibt, wie es ist; was nicht mehr passt, wird genannt.</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
</context>
<context>
    <name>KeypadDigits</name>
    <message>
        <source>decimal point</source>
        <translation>Dezimalkomma</translation>
    </message>
</context>
<context>
    <name>KeypadRub</name>
    <message>
        <source>clear</source>
        <translation>löschen</translation>
    </message>
    <message>
        <source>rub out the last</source>
        <translation>letztes Zeichen löschen</translation>
    </message>
</context>
<context>
    <name>KitBundles</name>
    <message>
        <source>yours</source>
        <extracomment>under the bundle that is the teacher&apos;s own kit</extracomment>
        <translation>Unterricht</translation>
    </message>
</context>
<context>
    <name>KitsSheet</name>
    <message>
        <source>What is cut</source>
        <translation>Was geschnitten wird</translation>
    </message>
    <message>
        <source>no kits yet</source>
        <translation>noch keine Packungen</translation>
    </message>
    <message>
        <source>Say how many students: each gets a kit, one is yours, and there is a spare for every ten or part of ten.</source>
        <translation>Angeben, wie viele teilnehmen: für alle je eine Packung, eine für den Unterricht und je angefangene zehn eine in Reserve.</translation>
    </message>
</context>
<context>
    <name>LanguageChoice</name>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
</context>
<context>
    <name>LayUp</name>
    <message>
        <source>backing, wrong side up</source>
        <extracomment>how the backing lies on the table when a hoop strip is laid up</extracomment>
        <translation>Rückseitenstoff, linke Seite oben</translation>
    </message>
    <message>
        <source>batting</source>
        <translation>Vlies</translation>
    </message>
    <message>
        <source>front, right side up</source>
        <extracomment>how the front lies on the batting</extracomment>
        <translation>Vorderseite, rechte Seite oben</translation>
    </message>
</context>
<context>
    <name>LogFace</name>
    <message>
        <source>Photo: %1</source>
        <extracomment>%1 is &quot;Front&quot; or &quot;Back face&quot;</extracomment>
        <translation>Foto: %1</translation>
    </message>
</context>
<context>
    <name>LogFlags</name>
    <message>
        <source>What to remember of block %1</source>
        <translation>Notiz zu Block %1</translation>
    </message>
    <message>
        <source>Words, if you like</source>
        <translation>Notiz, wenn gewünscht</translation>
    </message>
    <message>
        <source>Back to the block</source>
        <translation>Zurück zum Block</translation>
    </message>
</context>
<context>
    <name>LogSheet</name>
    <message>
        <source>Front</source>
        <translation>Vorderseite</translation>
    </message>
    <message>
        <source>Back face</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>along</source>
        <extracomment>the stitched outline&apos;s size along the strip</extracomment>
        <translation>längs</translation>
    </message>
    <message>
        <source>across</source>
        <extracomment>the stitched outline&apos;s size across the strip</extracomment>
        <translation>quer</translation>
    </message>
    <message>
        <source>Same as planned</source>
        <translation>Wie geplant</translation>
    </message>
    <message>
        <source>Log these measures</source>
        <translation>Diese Maße eintragen</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Nicht jetzt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is &quot;Block A1&quot;, %2 where it was stitched</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Flag or note</source>
        <extracomment>marks something worth remembering of a block, or writes it in words</extracomment>
        <translation>Merken oder Notiz</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>%1: Matside</source>
        <translation>%1: Matside</translation>
    </message>
    <message>
        <source>%1 cannot be read.</source>
        <translation>%1 lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>The window could not be opened.</source>
        <translation>Das Fenster ließ sich nicht öffnen.</translation>
    </message>
    <message>
        <source>The paper is a4 or letter.</source>
        <translation>Das Papier ist a4 oder letter.</translation>
    </message>
    <message>
        <source>--sheet OUT.pdf needs a project file after it.</source>
        <translation>Nach --sheet OUT.pdf fehlt eine Projektdatei.</translation>
    </message>
    <message>
        <source>The next cut, beside the cutting mat.</source>
        <translation>Der nächste Schnitt, neben der Schneidematte.</translation>
    </message>
    <message>
        <source>Keep the data in this folder.</source>
        <translation>Die Daten in diesem Ordner halten.</translation>
    </message>
    <message>
        <source>Open the demo project.</source>
        <translation>Das Beispielprojekt öffnen.</translation>
    </message>
    <message>
        <source>Print the plan of a project file (- for standard input).</source>
        <translation>Den Plan einer Projektdatei ausgeben (- für die Standardeingabe).</translation>
    </message>
    <message>
        <source>Draw every station into this folder.</source>
        <translation>Alle Stationen als Bilder in diesen Ordner zeichnen.</translation>
    </message>
    <message>
        <source>Write the project named last, with its notes and photographs, to a new file.</source>
        <translation>Das zuletzt genannte Projekt mit Notizen und Fotos in eine neue Datei schreiben.</translation>
    </message>
    <message>
        <source>Say what is inside such a file.</source>
        <translation>Sagen, was in einer solchen Datei steckt.</translation>
    </message>
    <message>
        <source>Say what is inside, and add it to the shelf.</source>
        <translation>Sagen, was darin ist, und es ins Regal legen.</translation>
    </message>
    <message>
        <source>Write the paper sheet of a project file.</source>
        <translation>Das Papierblatt einer Projektdatei schreiben.</translation>
    </message>
    <message>
        <source>Paper of the sheet: a4 or letter.</source>
        <translation>Papier des Blattes: a4 oder letter.</translation>
    </message>
    <message>
        <source>The sheet on one page.</source>
        <translation>Das Blatt auf einer Seite.</translation>
    </message>
    <message>
        <source>Write everything to one new file.</source>
        <translation>Alles in eine neue Datei schreiben.</translation>
    </message>
    <message>
        <source>Put a backup in place where no project is yet.</source>
        <translation>Eine Sicherung zurücklegen, wo noch kein Projekt ist.</translation>
    </message>
    <message>
        <source>Speak this language: %1.</source>
        <translation>Diese Sprache sprechen: %1.</translation>
    </message>
    <message>
        <source>A project, share or backup file to look into, or a project file for --pictures or --sheet.</source>
        <translation>Eine Projektdatei, eine Datei zum Teilen oder eine Sicherung zum Hineinsehen, oder eine Projektdatei für --pictures oder --sheet.</translation>
    </message>
    <message>
        <source>The language is one of %1.</source>
        <translation>Die Sprache ist eine von %1.</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
    <message>
        <source>--diagrams FOLDER needs a project file after it.</source>
        <translation>Nach --diagrams FOLDER fehlt eine Projektdatei.</translation>
    </message>
    <message>
        <source>The form is long, short or class.</source>
        <translation>Die Form ist long, short oder class.</translation>
    </message>
    <message>
        <source>Write the drawings of the sheet as SVG files.</source>
        <translation>Die Zeichnungen des Blattes als SVG-Dateien schreiben.</translation>
    </message>
    <message>
        <source>Form of the sheet: long, short, or class, with a list for every kit.</source>
        <translation>Form des Blattes: long, short oder class, mit einer Liste für jede Packung.</translation>
    </message>
</context>
<context>
    <name>MeasureSheet</name>
    <message>
        <source>Take the common size</source>
        <translation>Gemeinsames Maß nehmen</translation>
    </message>
    <message>
        <source>The limits are common practice; no published ones are known.</source>
        <translation>Die Grenzen sind Erfahrungswerte; veröffentlichte Werte sind nicht bekannt.</translation>
    </message>
    <message>
        <source>Keep these readings</source>
        <extracomment>on a button: the block&apos;s readings are kept, and the common size is not taken</extracomment>
        <translation>Diese Messwerte behalten</translation>
    </message>
    <message>
        <source>Block %1: outer stitches</source>
        <translation>Block %1: äußere Stiche</translation>
    </message>
    <message>
        <source>A side misread by 6 mm is noticed four times in five, by 10 mm always.</source>
        <translation>Eine um 6&#xa0;mm falsch gelesene Seite fällt in vier von fünf Fällen auf, um 10&#xa0;mm immer.</translation>
    </message>
    <message>
        <source>A side misread by 1/4 in is noticed four times in five, by 3/8 in always.</source>
        <translation>Eine um 1/4 in falsch gelesene Seite fällt in vier von fünf Fällen auf, um 3/8 in immer.</translation>
    </message>
    <message>
        <source>Keep only the readings</source>
        <translation>Nur die Messwerte behalten</translation>
    </message>
    <message>
        <source>See the common size</source>
        <translation>Gemeinsames Maß ansehen</translation>
    </message>
    <message>
        <source>The rest is as shown</source>
        <translation>Der Rest wie gezeigt</translation>
    </message>
    <message>
        <source>Back without measuring</source>
        <translation>Zurück, ohne zu messen</translation>
    </message>
    <message>
        <source>Not measured: reckon with the plan</source>
        <extracomment>on a button: the block is trimmed by the planned figures</extracomment>
        <translation>Nicht gemessen: mit dem Plan rechnen</translation>
    </message>
    <message>
        <source>Read again: %1</source>
        <extracomment>on a button: %1 is the one of a block&apos;s six readings to be taken again, or for the first time: &quot;top&quot;</extracomment>
        <translation>Neu messen: %1</translation>
    </message>
    <message>
        <source>Read: %1</source>
        <translation>Messen: %1</translation>
    </message>
</context>
<context>
    <name>Merge</name>
    <message>
        <source>the project’s name</source>
        <translation>Name des Projekts</translation>
    </message>
    <message>
        <source>cutting hand</source>
        <extracomment>the hand she holds the cutter in</extracomment>
        <translation>Schneidehand</translation>
    </message>
    <message>
        <source>which block goes where</source>
        <translation>welcher Block wohin kommt</translation>
    </message>
    <message>
        <source>draw-up</source>
        <translation>Einzug</translation>
    </message>
    <message>
        <source>corners</source>
        <translation>Ecken</translation>
    </message>
    <message>
        <source>hoop</source>
        <translation>Stickrahmen</translation>
    </message>
    <message>
        <source>hoop’s field</source>
        <translation>Stickfeld</translation>
    </message>
    <message>
        <source>hoop’s opening</source>
        <translation>Rahmenöffnung</translation>
    </message>
    <message>
        <source>hoop’s outside</source>
        <translation>Außenmaß des Rahmens</translation>
    </message>
    <message>
        <source>thickest sandwich in the hoop</source>
        <extracomment>sandwich: front, batting and back together</extracomment>
        <translation>größte Lagendicke im Rahmen</translation>
    </message>
    <message>
        <source>side of the hoop’s bracket</source>
        <translation>Seite der Rahmenhalterung</translation>
    </message>
    <message>
        <source>gaps that give sashing</source>
        <translation>Lücken, die Zwischenstreifen geben</translation>
    </message>
    <message>
        <source>kits cut from the same strips</source>
        <translation>Packungen aus denselben Streifen</translation>
    </message>
    <message>
        <source>between stippling lines</source>
        <translation>zwischen den Linien der Füllquiltung</translation>
    </message>
    <message>
        <source>stitch length</source>
        <translation>Stichlänge</translation>
    </message>
    <message>
        <source>thread on a bobbin</source>
        <translation>Faden auf einer Spule</translation>
    </message>
    <message>
        <source>stitches a minute</source>
        <translation>Stiche in der Minute</translation>
    </message>
    <message>
        <source>patches trimmed at the machine</source>
        <translation>Flicken an der Maschine beschnitten</translation>
    </message>
    <message>
        <source>ruler “%1”</source>
        <translation>Lineal „%1“</translation>
    </message>
    <message>
        <source>design “%1”</source>
        <translation>Stickmuster „%1“</translation>
    </message>
    <message>
        <source>cloth “%1”</source>
        <translation>Stoff „%1“</translation>
    </message>
    <message>
        <source>patch “%1”</source>
        <extracomment>patch: a shape of cloth stitched onto the block</extracomment>
        <translation>Flicken „%1“</translation>
    </message>
    <message>
        <source>test block, as measured</source>
        <translation>Probeblock, gemessen</translation>
    </message>
    <message>
        <source>test join, as measured</source>
        <translation>Probeverbindung, gemessen</translation>
    </message>
    <message>
        <source>draw-up taken from the first blocks</source>
        <translation>Einzug der ersten Blöcke</translation>
    </message>
    <message>
        <source>trial put off</source>
        <translation>Probe aufgeschoben</translation>
    </message>
    <message>
        <source>whole piece, as measured</source>
        <translation>ganzes Stück, gemessen</translation>
    </message>
    <message>
        <source>pins counted, in and out</source>
        <translation>Nadeln gezählt, hinein und heraus</translation>
    </message>
    <message>
        <source>cloth “%1”, as bought</source>
        <translation>Stoff „%1“, wie gekauft</translation>
    </message>
    <message>
        <source>row %1, as measured</source>
        <translation>Reihe %1, gemessen</translation>
    </message>
    <message>
        <source>strip %1</source>
        <translation>Streifen %1</translation>
    </message>
    <message>
        <source>block %1</source>
        <translation>Block %1</translation>
    </message>
    <message>
        <source>block %1, how far it is</source>
        <translation>Block %1, wie weit er ist</translation>
    </message>
    <message>
        <source>block %1, size sent to the machine</source>
        <extracomment>sent: the size given to the embroidery machine</extracomment>
        <translation>Block %1, Maß an die Maschine</translation>
    </message>
    <message>
        <source>block %1, outline as measured</source>
        <translation>Block %1, Umriss gemessen</translation>
    </message>
    <message>
        <source>block %1, sides as measured</source>
        <translation>Block %1, Seiten gemessen</translation>
    </message>
    <message>
        <source>block %1, diagonals as measured</source>
        <translation>Block %1, Diagonalen gemessen</translation>
    </message>
    <message>
        <source>block %1, minutes at the machine</source>
        <translation>Block %1, Minuten an der Maschine</translation>
    </message>
    <message>
        <source>block %1, where it lies</source>
        <translation>Block %1, wo er liegt</translation>
    </message>
    <message>
        <source>block %1, its strip</source>
        <translation>Block %1, sein Streifen</translation>
    </message>
    <message>
        <source>block %1, place on its strip</source>
        <translation>Block %1, Stelle auf dem Streifen</translation>
    </message>
    <message>
        <source>done: %1</source>
        <extracomment>how many pieces were cut or sewn; %1 is the work in words</extracomment>
        <translation>getan: %1</translation>
    </message>
    <message>
        <source>spoiled: %1</source>
        <translation>verdorben: %1</translation>
    </message>
    <message>
        <source>stitched</source>
        <translation>gestickt</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>beschnitten</translation>
    </message>
    <message>
        <source>joined</source>
        <translation>verbunden</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation>verdorben</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>place %1</source>
        <translation>Stelle %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is a cloth, a strip or a block, %2 what is told of it
----------
what is told, and its value on the other tablet</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>nothing of it</source>
        <extracomment>in place of a value: one of the two tablets says nothing of it</extracomment>
        <translation>nichts davon</translation>
    </message>
    <message>
        <source>one block made on the other tablet</source>
        <translation>ein Block vom anderen Tablet</translation>
    </message>
    <message>
        <source>%1 blocks made on the other tablet</source>
        <translation>%1 Blöcke vom anderen Tablet</translation>
    </message>
    <message>
        <source>one thing that happened there</source>
        <translation>ein Ereignis dort</translation>
    </message>
    <message>
        <source>%1 things that happened there</source>
        <translation>%1 Ereignisse dort</translation>
    </message>
    <message>
        <source>one note</source>
        <translation>eine Notiz</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 Notizen</translation>
    </message>
    <message>
        <source>one photograph</source>
        <translation>ein Foto</translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation>%1 Fotos</translation>
    </message>
    <message>
        <source>One tablet has this piece in inches, the other in millimetres. Bring it in as a project of its own.</source>
        <translation>Ein Tablet hat dieses Stück in Zoll, das andere in Millimetern. Als eigenes Projekt holen.</translation>
    </message>
    <message>
        <source>The project on this tablet has something to be mended first, at Fit.</source>
        <translation>Im Projekt auf diesem Tablet ist erst etwas zu beheben, unter „Planen“.</translation>
    </message>
    <message>
        <source>The two do not fit together. Bring it in as a project of its own.</source>
        <translation>Die beiden passen nicht zusammen. Als eigenes Projekt holen.</translation>
    </message>
</context>
<context>
    <name>MergeFile</name>
    <message>
        <source>This project is on this tablet already. Put together, all that stands here stays, and one Undo takes the rest back.</source>
        <translation>Dieses Projekt ist schon auf diesem Tablet. Beim Zusammenlegen bleibt alles, was hier steht, und einmal Rückgängig nimmt den Rest zurück.</translation>
    </message>
    <message>
        <source>One moment: the photographs are being kept.</source>
        <translation>Einen Augenblick: Die Fotos werden abgelegt.</translation>
    </message>
    <message>
        <source>All that is in the file is here already.</source>
        <translation>Alles aus der Datei ist schon hier.</translation>
    </message>
    <message>
        <source>This comes from the other tablet</source>
        <translation>Das kommt vom anderen Tablet</translation>
    </message>
    <message>
        <source>Told differently: choose what holds. Still to choose: %1</source>
        <extracomment>two tablets tell a thing differently; %1 is how many she has yet to choose</extracomment>
        <translation>Verschieden angegeben: wählen, was gilt. Noch zu wählen: %1</translation>
    </message>
    <message>
        <source>Told differently: all of it is chosen.</source>
        <translation>Verschieden angegeben: Alles ist gewählt.</translation>
    </message>
    <message>
        <source>Here: %1</source>
        <extracomment>the value on the tablet in her hands</extracomment>
        <translation>Hier: %1</translation>
    </message>
    <message>
        <source>The other tablet: %1</source>
        <extracomment>the value on the other tablet</extracomment>
        <translation>Das andere Tablet: %1</translation>
    </message>
    <message>
        <source>Both together: %1</source>
        <extracomment>pieces counted on both tablets, added up</extracomment>
        <translation>Beide zusammen: %1</translation>
    </message>
</context>
<context>
    <name>MindSign</name>
    <message>
        <source>What to mind here: %1</source>
        <extracomment>what is to be minded and checked at this step</extracomment>
        <translation>Hier zu beachten: %1</translation>
    </message>
</context>
<context>
    <name>NewPiece</name>
    <message>
        <source>New, in inches</source>
        <translation>Neu, in Zoll</translation>
    </message>
    <message>
        <source>New piece</source>
        <translation>Neues Stück</translation>
    </message>
    <message>
        <source>New, in mm</source>
        <translation>Neu, in mm</translation>
    </message>
</context>
<context>
    <name>NotedLine</name>
    <message>
        <source>Noted: %1</source>
        <extracomment>%1 is what was noted of a block when it was stitched, &quot;Pleat on the back&quot;</extracomment>
        <translation>Notiert: %1</translation>
    </message>
</context>
<context>
    <name>NotesSheet</name>
    <message>
        <source>Not tried yet: the trial may change this figure.</source>
        <translation>Noch nicht erprobt: Die Probe kann dieses Maß ändern.</translation>
    </message>
    <message>
        <source>On with the work</source>
        <translation>Weiter mit der Arbeit</translation>
    </message>
    <message>
        <source>Make the trial after all</source>
        <translation>Die Probe doch machen</translation>
    </message>
</context>
<context>
    <name>NoticeLine</name>
    <message>
        <source>put this notice away</source>
        <extracomment>what pressing a notice does</extracomment>
        <translation>diese Meldung wegräumen</translation>
    </message>
</context>
<context>
    <name>OpenExport</name>
    <message>
        <source>Name of the file</source>
        <translation>Name der Datei</translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>Datei schreiben</translation>
    </message>
</context>
<context>
    <name>OpenFile</name>
    <message>
        <source>One moment: all of it is being read.</source>
        <translation>Einen Augenblick: Alles wird gelesen.</translation>
    </message>
    <message>
        <source>All of it can be read. The file stays as it is.</source>
        <translation>Alles ist lesbar. Die Datei bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>Not all of it can be read. What you choose here mends the copy; the file stays as it is.</source>
        <translation>Nicht alles ist lesbar. Was hier gewählt wird, berichtigt die Kopie; die Datei bleibt, wie sie ist.</translation>
    </message>
</context>
<context>
    <name>OpenSheet</name>
    <message>
        <source>Open, bring in, back up</source>
        <translation>Öffnen, holen, sichern</translation>
    </message>
    <message>
        <source>folder</source>
        <extracomment>what a row of the list of files is</extracomment>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>backup of everything</source>
        <translation>Sicherung von allem</translation>
    </message>
    <message>
        <source>project with notes and photographs</source>
        <translation>Projekt mit Notizen und Fotos</translation>
    </message>
    <message>
        <source>project</source>
        <translation>Projekt</translation>
    </message>
    <message>
        <source>There is no project file and no folder here.</source>
        <translation>Hier ist keine Projektdatei und kein Ordner.</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>Put it all back</source>
        <translation>Alles zurücklegen</translation>
    </message>
    <message>
        <source>Lay it on the shelf</source>
        <translation>Ins Regal legen</translation>
    </message>
    <message>
        <source>Another file</source>
        <translation>Andere Datei</translation>
    </message>
    <message>
        <source>The folder above</source>
        <translation>Der Ordner darüber</translation>
    </message>
    <message>
        <source>Back up everything</source>
        <translation>Alles sichern</translation>
    </message>
    <message>
        <source>Back to the shelf</source>
        <translation>Zurück zum Regal</translation>
    </message>
    <message>
        <source>As a project of its own</source>
        <translation>Als eigenes Projekt</translation>
    </message>
    <message>
        <source>Put together</source>
        <translation>Zusammenlegen</translation>
    </message>
</context>
<context>
    <name>PhotoSheet</name>
    <message>
        <source>the back</source>
        <extracomment>what a picture is of: the front or the back of a block</extracomment>
        <translation>die Rückseite</translation>
    </message>
    <message>
        <source>the front</source>
        <translation>die Vorderseite</translation>
    </message>
    <message>
        <source>Take a picture of %1</source>
        <extracomment>%1 is &quot;the front&quot; or &quot;the back&quot;</extracomment>
        <translation>Bild aufnehmen: %1</translation>
    </message>
    <message>
        <source>Keeping the picture</source>
        <translation>Das Bild wird aufbewahrt</translation>
    </message>
    <message>
        <source>Choose a picture of %1, block %2</source>
        <extracomment>%1 is &quot;the front&quot; or &quot;the back&quot;, %2 a block&apos;s name</extracomment>
        <translation>Bild wählen: %1, Block %2</translation>
    </message>
    <message>
        <source>Tap anywhere: %1 of block %2</source>
        <translation>Zum Auslösen tippen: %1 von Block %2</translation>
    </message>
    <message>
        <source>Back without a picture</source>
        <translation>Ohne Bild zurück</translation>
    </message>
    <message>
        <source>Tap anywhere to try again: %1 of block %2</source>
        <extracomment>a tap takes another picture after the last one came to nothing; %1 is &quot;the front&quot; or &quot;the back&quot;</extracomment>
        <translation>Zum Wiederholen tippen: %1 von Block %2</translation>
    </message>
    <message>
        <source>A picture of %1, block %2</source>
        <translation>Bild: %1, Block %2</translation>
    </message>
</context>
<context>
    <name>Photos</name>
    <message>
        <source>The picture cannot be read. Choose another.</source>
        <translation>Das Bild lässt sich nicht lesen. Ein anderes wählen.</translation>
    </message>
    <message>
        <source>The picture is cut short: its end is missing. Copy it again, or choose another.</source>
        <translation>Das Bild ist abgeschnitten: Das Ende fehlt. Noch einmal kopieren oder ein anderes wählen.</translation>
    </message>
    <message>
        <source>The picture is too large. Up to 100 million pixels can be kept.</source>
        <translation>Das Bild ist zu groß. Bis 100 Millionen Bildpunkte lassen sich aufbewahren.</translation>
    </message>
    <message>
        <source>The disk is full, so the picture was not kept. Nothing else was lost; free some room.</source>
        <translation>Der Speicher ist voll, das Bild wurde nicht aufbewahrt. Sonst ging nichts verloren; Platz schaffen.</translation>
    </message>
    <message>
        <source>That is no picture this program can read. Take or choose another.</source>
        <translation>Das ist kein Bild, das dieses Programm lesen kann. Ein anderes aufnehmen oder wählen.</translation>
    </message>
</context>
<context>
    <name>PictureFinder</name>
    <message>
        <source>There are no pictures in the folder “%1”. Put them there, or go on without one.</source>
        <extracomment>%1 is the name of a folder</extracomment>
        <translation>Im Ordner „%1“ sind keine Bilder. Welche hineinlegen oder ohne weitermachen.</translation>
    </message>
    <message>
        <source>Folder above</source>
        <translation>Ordner darüber</translation>
    </message>
    <message>
        <source>Use the camera</source>
        <translation>Kamera benutzen</translation>
    </message>
    <message>
        <source>Choose a picture</source>
        <translation>Bild wählen</translation>
    </message>
</context>
<context>
    <name>PicturePrint</name>
    <message>
        <source>Folder %1</source>
        <extracomment>spoken name of a folder of pictures in a list</extracomment>
        <translation>Ordner %1</translation>
    </message>
    <message>
        <source>Folder: %1</source>
        <extracomment>a folder in a list of pictures; %1 is its name</extracomment>
        <translation>Ordner: %1</translation>
    </message>
</context>
<context>
    <name>PieceStepper</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1 mehr</translation>
    </message>
</context>
<context>
    <name>PriceSheet</name>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is what is counted, %2 its amount</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>the price</source>
        <translation>der Preis</translation>
    </message>
</context>
<context>
    <name>ProjectRow</name>
    <message>
        <source>Less</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Make again in other cloth</source>
        <translation>Noch einmal in anderem Stoff</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>Umbenennen</translation>
    </message>
    <message>
        <source>A copy in millimetres</source>
        <translation>Kopie in Millimetern</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>Share as one file</source>
        <extracomment>writes one file with the project, its notes and its photographs, to be given to someone</extracomment>
        <translation>Als eine Datei teilen</translation>
    </message>
    <message>
        <source>Hold to throw away</source>
        <translation>Halten, um wegzuwerfen</translation>
    </message>
    <message>
        <source>Name of the project</source>
        <translation>Name des Projekts</translation>
    </message>
    <message>
        <source>Sheet for the wall</source>
        <extracomment>the whole job on paper, as a PDF to be printed</extracomment>
        <translation>Blatt für die Wand</translation>
    </message>
    <message>
        <source>Sheet on one page</source>
        <extracomment>the same on a single page, as a PDF</extracomment>
        <translation>Blatt auf einer Seite</translation>
    </message>
    <message>
        <source>Sheets for a class</source>
        <extracomment>what is cut for all students, and a page for each one&apos;s kit, as a PDF</extracomment>
        <translation>Blätter für einen Kurs</translation>
    </message>
    <message>
        <source>Put away for now</source>
        <extracomment>of a piece that lies folded at the back of the shelf</extracomment>
        <translation>Vorerst weggelegt</translation>
    </message>
</context>
<context>
    <name>PutOff</name>
    <message>
        <source>Trial later</source>
        <extracomment>the trial: one test block and one test join, made before the cloth for the piece is cut</extracomment>
        <translation>Probe später</translation>
    </message>
</context>
<context>
    <name>ReadingHeld</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1 mehr</translation>
    </message>
    <message>
        <source>Read: it is as shown</source>
        <extracomment>of several readings of a block, a join or the piece: she read just what is shown</extracomment>
        <translation>Gemessen: wie gezeigt</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <extracomment>on a button: %1 is what to read next, &quot;right&quot;</extracomment>
        <translation>Weiter: %1</translation>
    </message>
</context>
<context>
    <name>ReadingInHand</name>
    <message>
        <source>measure this one again first</source>
        <translation>diese zuerst noch einmal messen</translation>
    </message>
    <message>
        <source>not yet read</source>
        <translation>noch nicht gemessen</translation>
    </message>
</context>
<context>
    <name>ReadingPlate</name>
    <message>
        <source>measure this one again first</source>
        <extracomment>of a reading of a block</extracomment>
        <translation>diese zuerst noch einmal messen</translation>
    </message>
    <message>
        <source>not yet read</source>
        <translation>noch nicht gemessen</translation>
    </message>
</context>
<context>
    <name>Readings</name>
    <message>
        <source>A reading is more than nothing.</source>
        <translation>Ein Messwert ist mehr als nichts.</translation>
    </message>
</context>
<context>
    <name>Refused</name>
    <message>
        <source>Your projects cannot be opened just now.</source>
        <translation>Die Projekte lassen sich gerade nicht öffnen.</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Close Matside</source>
        <translation>Matside schließen</translation>
    </message>
</context>
<context>
    <name>ResumeSheet</name>
    <message>
        <source>Finished: count it as done</source>
        <extracomment>on a button: what the step says was done before the program ended, and is counted now</extracomment>
        <translation>Fertig: als erledigt zählen</translation>
    </message>
    <message>
        <source>Not finished: still to do</source>
        <extracomment>on a button: the step goes on where it was</extracomment>
        <translation>Nicht fertig: bleibt zu tun</translation>
    </message>
</context>
<context>
    <name>RevealMark</name>
    <message>
        <source>over</source>
        <extracomment>after a length: the cloth hangs so far over the table&apos;s edge</extracomment>
        <translation>Überhang</translation>
    </message>
</context>
<context>
    <name>RulerDrawing</name>
    <message>
        <source>on the outer
stitches</source>
        <extracomment>where the ruler&apos;s line lies: two short lines, broken by hand</extracomment>
        <translation>auf den äußeren
Stichen</translation>
    </message>
    <message>
        <source>mat lines
from here</source>
        <translation>Mattenlinien
ab hier</translation>
    </message>
    <message>
        <source>on the
cut edge</source>
        <translation>auf der
Schnittkante</translation>
    </message>
</context>
<context>
    <name>RulerWords</name>
    <message>
        <source>keep</source>
        <extracomment>the part of the cloth that is kept</extracomment>
        <translation>behalten</translation>
    </message>
    <message>
        <source>fold</source>
        <extracomment>the folded edge of the cloth, or that it lies unfolded</extracomment>
        <translation>Bruch</translation>
    </message>
    <message>
        <source>one layer</source>
        <translation>eine Lage</translation>
    </message>
    <message>
        <source>selvages</source>
        <translation>Webkanten</translation>
    </message>
    <message>
        <source>selvage</source>
        <translation>Webkante</translation>
    </message>
    <message>
        <source>waste</source>
        <extracomment>cloth that falls away</extracomment>
        <translation>Abfall</translation>
    </message>
    <message>
        <source>cut ends</source>
        <extracomment>the cut ends of a cloth folded across, end on end, for strips along its selvage</extracomment>
        <translation>Schnittenden</translation>
    </message>
    <message>
        <source>cut end</source>
        <translation>Schnittende</translation>
    </message>
</context>
<context>
    <name>ScallopNear</name>
    <message>
        <source>radius</source>
        <extracomment>the radius of an arc, short: over the figure on a drawing</extracomment>
        <translation>Radius</translation>
    </message>
</context>
<context>
    <name>SectionDrawing</name>
    <message>
        <source>%1 times true size, cloth drawn thicker</source>
        <extracomment>how much larger than life the section is drawn</extracomment>
        <translation>%1-fach vergrößert, Stoff dicker gezeichnet</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>Naht</translation>
    </message>
    <message>
        <source>catch</source>
        <extracomment>how far the fold passes the seam, so that the ditch stitching catches it</extracomment>
        <translation>Überstand</translation>
    </message>
    <message>
        <source>fold under</source>
        <translation>Umlegen</translation>
    </message>
    <message>
        <source>overlap</source>
        <extracomment>by how much the two allowances inside a sashing lie over each other</extracomment>
        <translation>Überlappung</translation>
    </message>
    <message>
        <source>gap</source>
        <extracomment>what is left between the two allowances inside a sashing</extracomment>
        <translation>Spalt</translation>
    </message>
</context>
<context>
    <name>SectionReadings</name>
    <message>
        <source>seam</source>
        <translation>Naht</translation>
    </message>
    <message>
        <source>overlap</source>
        <translation>Überlappung</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Spalt</translation>
    </message>
    <message>
        <source>seam to seam</source>
        <extracomment>the distance from one seam to the other of a sashing</extracomment>
        <translation>Naht zu Naht</translation>
    </message>
    <message>
        <source>batting</source>
        <translation>Vlies</translation>
    </message>
</context>
<context>
    <name>SentPlate</name>
    <message>
        <source>Send to the machine</source>
        <extracomment>on a plate, over the size that is typed into the embroidery machine</extracomment>
        <translation>An die Maschine senden</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>the light she works in</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Lamp</source>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation>Starker Kontrast</translation>
    </message>
    <message>
        <source>Cutting hand</source>
        <translation>Schneidehand</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Movement</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Sheets slide in</source>
        <extracomment>whether sheets slide into place or are simply there</extracomment>
        <translation>Seiten gleiten herein</translation>
    </message>
    <message>
        <source>Nothing moves</source>
        <translation>Nichts bewegt sich</translation>
    </message>
    <message>
        <source>Size of the screen</source>
        <translation>Größe des Bildschirms</translation>
    </message>
    <message>
        <source>Back to the shelf</source>
        <translation>Zurück zum Regal</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Vorlesen</translation>
    </message>
    <message>
        <source>This tablet has no voice for your language: nothing is read out.</source>
        <translation>Dieses Tablet hat keine Stimme für die gewählte Sprache: Es wird nichts vorgelesen.</translation>
    </message>
    <message>
        <source>Where you cut, a step is read out only once you have asked for it there.</source>
        <translation>Wo geschnitten wird, wird ein Schritt erst vorgelesen, wenn es dort einmal verlangt wurde.</translation>
    </message>
    <message>
        <source>Never</source>
        <extracomment>when a step is read out: never, when she asks, at each new step</extracomment>
        <translation>Nie</translation>
    </message>
    <message>
        <source>When asked</source>
        <translation>Auf Wunsch</translation>
    </message>
    <message>
        <source>Each new step</source>
        <translation>Jeden neuen Schritt</translation>
    </message>
    <message>
        <source>Page-turn pedal</source>
        <translation>Pedal zum Blättern</translation>
    </message>
    <message>
        <source>Turns the steps</source>
        <translation>Blättert weiter</translation>
    </message>
    <message>
        <source>Turns nothing</source>
        <translation>Blättert nicht</translation>
    </message>
    <message>
        <source>Window for helpers</source>
        <translation>Fenster für Helfende</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Zu</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>Put it well away from the machine’s pedal. While a block is stitched it turns nothing.</source>
        <translation>Weit weg vom Fußpedal der Maschine stellen. Während ein Block gestickt wird, blättert es nicht.</translation>
    </message>
    <message>
        <source>The place at the mat</source>
        <extracomment>heading of the page where the tablet is set up: the place where it stands beside the cutting mat</extracomment>
        <translation>Der Platz an der Matte</translation>
    </message>
    <message>
        <source>Done</source>
        <extracomment>closes what is being set</extracomment>
        <translation>Fertig</translation>
    </message>
</context>
<context>
    <name>SettingsScene</name>
    <message>
        <source>The place at the mat</source>
        <translation>Der Platz an der Matte</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>what can be set, and how it is set: &quot;Light: Day&quot;</extracomment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Shade</name>
    <message>
        <source>red</source>
        <translation>rot</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>orange</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>gelb</translation>
    </message>
    <message>
        <source>green</source>
        <translation>grün</translation>
    </message>
    <message>
        <source>blue-green</source>
        <extracomment>between green and blue</extracomment>
        <translation>blaugrün</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>blau</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violett</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>grau</translation>
    </message>
    <message>
        <source>%1, step %2 of 10</source>
        <extracomment>a colour: its hue and its step on the scale from black to white</extracomment>
        <translation>%1, Stufe %2 von 10</translation>
    </message>
    <message>
        <source>Closest: %1 on %2, %3 steps apart. That is clear from across the room.</source>
        <extracomment>%1 lies on %2; %3 is a number of steps of the ten-step scale</extracomment>
        <translation>Am dichtesten beieinander: %1 und darunter %2, %3 Stufen auseinander. Das ist auch von weitem deutlich.</translation>
    </message>
    <message>
        <source>Closest: %1 on %2, only %3 steps apart. From across the room %1 is lost: take a lighter or a darker cloth for one of the two.</source>
        <extracomment>%1 lies on %2; %3 is a number of steps of the ten-step scale, below one</extracomment>
        <translation>Am dichtesten beieinander: %1 und darunter %2, nur %3 Stufen auseinander. Von weitem geht %1 unter: für eines der zwei einen helleren oder dunkleren Stoff nehmen.</translation>
    </message>
    <message>
        <source>Closest: %1 on %2, %3 steps apart. From across the room it looks washed out: two steps stand clearly apart.</source>
        <extracomment>%1 lies on %2; %3 is a number of steps of the ten-step scale, below two</extracomment>
        <translation>Am dichtesten beieinander: %1 und darunter %2, %3 Stufen. Von weitem wirkt es blass: Erst zwei Stufen trennen deutlich.</translation>
    </message>
</context>
<context>
    <name>ShadeCloth</name>
    <message>
        <source>Another picture</source>
        <translation>Anderes Bild</translation>
    </message>
    <message>
        <source>From a photograph</source>
        <translation>Von einem Foto</translation>
    </message>
    <message>
        <source>Take this colour</source>
        <translation>Diese Farbe nehmen</translation>
    </message>
    <message>
        <source>Back to the palette</source>
        <translation>Zurück zur Palette</translation>
    </message>
    <message>
        <source>Back to the cloths</source>
        <translation>Zurück zu den Stoffen</translation>
    </message>
    <message>
        <source>Opening the picture</source>
        <translation>Bild wird geöffnet</translation>
    </message>
    <message>
        <source>Choose a picture of %1</source>
        <extracomment>%1 is a cloth</extracomment>
        <translation>Bild wählen: %1</translation>
    </message>
    <message>
        <source>Tap anywhere: %1</source>
        <translation>Zum Auslösen tippen: %1</translation>
    </message>
    <message>
        <source>Take a picture of %1</source>
        <translation>Bild aufnehmen: %1</translation>
    </message>
    <message>
        <source>Back without a picture</source>
        <translation>Ohne Bild zurück</translation>
    </message>
    <message>
        <source>A photograph holds the light of the room as well as the cloth. Take it by daylight, without flash. The picture is only looked at: it is not kept.</source>
        <translation>Ein Foto zeigt auch das Licht im Raum, nicht nur den Stoff. Bei Tageslicht aufnehmen, ohne Blitz. Das Bild wird nur angesehen und nicht behalten.</translation>
    </message>
    <message>
        <source>Tap anywhere to try again: %1</source>
        <translation>Zum Wiederholen tippen: %1</translation>
    </message>
    <message>
        <source>A picture of %1</source>
        <extracomment>%1 is a cloth</extracomment>
        <translation>Bild: %1</translation>
    </message>
</context>
<context>
    <name>ShadeFaces</name>
    <message>
        <source>Front</source>
        <extracomment>the front face of the piece</extracomment>
        <translation>Vorderseite</translation>
    </message>
    <message>
        <source>The front in grey</source>
        <translation>Die Vorderseite in Grau</translation>
    </message>
    <message>
        <source>The front in colour</source>
        <translation>Die Vorderseite in Farbe</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>the back face of the piece</extracomment>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>The back in grey</source>
        <translation>Die Rückseite in Grau</translation>
    </message>
    <message>
        <source>The back in colour</source>
        <translation>Die Rückseite in Farbe</translation>
    </message>
    <message>
        <source>Show in colour</source>
        <translation>In Farbe zeigen</translation>
    </message>
    <message>
        <source>Show in grey</source>
        <translation>In Grau zeigen</translation>
    </message>
</context>
<context>
    <name>ShadeFindings</name>
    <message>
        <source>Light and dark</source>
        <extracomment>the page on how light and how dark the cloths are</extracomment>
        <translation>Hell und Dunkel</translation>
    </message>
    <message>
        <source>The cloths on the scale from 1, black, to 10, white</source>
        <translation>Die Stoffe auf der Skala von 1, schwarz, bis 10, weiß</translation>
    </message>
    <message>
        <source>Design</source>
        <extracomment>which of the block designs is judged</extracomment>
        <translation>Stickmuster</translation>
    </message>
    <message>
        <source>Lay them in this order</source>
        <translation>In dieser Folge legen</translation>
    </message>
    <message>
        <source>The patches are drawn as plain rectangles. A screen shows cloth only roughly: lay the patch on the ground and look at it from across the room.</source>
        <translation>Die Flicken sind als einfache Rechtecke gezeichnet. Ein Bildschirm zeigt Stoff nur ungefähr: Flicken auf den Grundstoff legen und von weitem ansehen.</translation>
    </message>
</context>
<context>
    <name>ShadeHeld</name>
    <message>
        <source>This is the cloth in that light, not the cloth itself. Compare it with the cloth in your hand.</source>
        <translation>Das ist der Stoff in jenem Licht, nicht der Stoff selbst. Mit dem Stoff in der Hand vergleichen.</translation>
    </message>
</context>
<context>
    <name>ShadePage</name>
    <message>
        <source>Back to the work</source>
        <translation>Zurück zur Arbeit</translation>
    </message>
</context>
<context>
    <name>ShadePair</name>
    <message>
        <source>%1 steps</source>
        <extracomment>so many steps of the scale from black to white lie between two cloths</extracomment>
        <translation>%1 Stufen</translation>
    </message>
</context>
<context>
    <name>ShadePalette</name>
    <message>
        <source>lightness</source>
        <translation>Helligkeit</translation>
    </message>
    <message>
        <source>hue</source>
        <extracomment>red, orange, yellow, green …</extracomment>
        <translation>Farbton</translation>
    </message>
    <message>
        <source>strength</source>
        <extracomment>how strong a colour is, from grey to the strongest there is</extracomment>
        <translation>Sättigung</translation>
    </message>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1 mehr</translation>
    </message>
</context>
<context>
    <name>ShadePicture</name>
    <message>
        <source>The picture: tap the cloth</source>
        <translation>Das Bild: auf den Stoff tippen</translation>
    </message>
</context>
<context>
    <name>ShadeRow</name>
    <message>
        <source>gives the cloth its colour</source>
        <translation>gibt dem Stoff seine Farbe</translation>
    </message>
</context>
<context>
    <name>Sharing</name>
    <message>
        <source>The file cannot be opened.</source>
        <translation>Die Datei lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>This is no share file, or it is damaged. Ask for it to be sent once more.</source>
        <translation>Das ist keine Datei zum Teilen, oder sie ist beschädigt. Um nochmaliges Senden bitten.</translation>
    </message>
    <message>
        <source>This file does not come from Matside.</source>
        <translation>Diese Datei kommt nicht von Matside.</translation>
    </message>
    <message>
        <source>This file is from a newer Matside. A newer Matside will open it.</source>
        <translation>Diese Datei ist von einem neueren Matside. Ein neueres Matside öffnet sie.</translation>
    </message>
    <message>
        <source>There is more in it than can be taken: %1</source>
        <translation>Es ist mehr darin, als aufgenommen werden kann: %1</translation>
    </message>
    <message>
        <source>There are more photographs in it than can be taken; 4000 is the most.</source>
        <translation>Es sind mehr Fotos darin, als aufgenommen werden können; höchstens 4000.</translation>
    </message>
    <message>
        <source>Something in it would swell up when unpacked, as no photograph does: %1</source>
        <translation>Etwas darin würde beim Auspacken aufquellen wie kein Foto: %1</translation>
    </message>
    <message>
        <source>Something in it would be written outside its own folder: %1</source>
        <translation>Etwas darin würde außerhalb seines Ordners geschrieben: %1</translation>
    </message>
    <message>
        <source>Something in it is a link, not a file: %1</source>
        <translation>Etwas darin ist ein Verweis, keine Datei: %1</translation>
    </message>
    <message>
        <source>Something in it is locked with a password: %1</source>
        <translation>Etwas darin ist mit einem Kennwort gesperrt: %1</translation>
    </message>
    <message>
        <source>Something in it is packed in a way that is not known here: %1</source>
        <translation>Etwas darin ist auf hier unbekannte Weise gepackt: %1</translation>
    </message>
    <message>
        <source>The same name stands in it twice. %1</source>
        <translation>Derselbe Name steht zweimal darin. %1</translation>
    </message>
    <message>
        <source>Something is in it that does not belong there: %1</source>
        <translation>Etwas ist darin, das nicht hineingehört: %1</translation>
    </message>
    <message>
        <source>Something is missing in it: %1. Ask for it to be sent once more.</source>
        <translation>Etwas fehlt darin: %1. Um nochmaliges Senden bitten.</translation>
    </message>
    <message>
        <source>Something in it was damaged or changed on the way: %1. Ask for it to be sent once more.</source>
        <translation>Etwas darin wurde unterwegs beschädigt oder verändert: %1. Um nochmaliges Senden bitten.</translation>
    </message>
    <message>
        <source>Its list of contents cannot be read.</source>
        <translation>Das Inhaltsverzeichnis darin lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>The notes in it cannot be read.</source>
        <translation>Die Notizen darin lassen sich nicht lesen.</translation>
    </message>
    <message>
        <source>The project in it cannot be read.</source>
        <translation>Das Projekt darin lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>A photograph in it is none, or is cut short: %1</source>
        <translation>Ein Foto darin ist keines oder ist abgeschnitten: %1</translation>
    </message>
    <message>
        <source>There is a file of that name already, and it was left as it is.</source>
        <translation>Eine Datei dieses Namens gibt es schon; sie wurde gelassen, wie sie ist.</translation>
    </message>
    <message>
        <source>A photograph of this project is missing or cannot be read: %1</source>
        <translation>Ein Foto dieses Projekts fehlt oder lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>It could not be written: the disk is full, or the folder takes no files.</source>
        <translation>Es ließ sich nicht schreiben: Der Speicher ist voll, oder der Ordner nimmt keine Dateien an.</translation>
    </message>
    <message>
        <source>no notes</source>
        <translation>keine Notizen</translation>
    </message>
    <message>
        <source>one note</source>
        <translation>eine Notiz</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 Notizen</translation>
    </message>
    <message>
        <source>no photographs</source>
        <translation>keine Fotos</translation>
    </message>
    <message>
        <source>one photograph</source>
        <translation>ein Foto</translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation>%1 Fotos</translation>
    </message>
    <message>
        <source>Nothing of it was kept.</source>
        <translation>Nichts davon wurde behalten.</translation>
    </message>
    <message>
        <source>one project</source>
        <translation>ein Projekt</translation>
    </message>
    <message>
        <source>%1 projects</source>
        <translation>%1 Projekte</translation>
    </message>
    <message>
        <source>%1 by %2 blocks</source>
        <translation>%1 mal %2 Blöcke</translation>
    </message>
    <message>
        <source>no block made yet</source>
        <translation>noch kein Block gemacht</translation>
    </message>
    <message>
        <source>one block made</source>
        <translation>ein Block gemacht</translation>
    </message>
    <message>
        <source>%1 blocks made</source>
        <translation>%1 Blöcke gemacht</translation>
    </message>
    <message>
        <source>one thing in it cannot be read as it stands</source>
        <translation>eine Sache darin lässt sich so nicht lesen</translation>
    </message>
    <message>
        <source>%1 things in it cannot be read as they stand</source>
        <translation>%1 Sachen darin lassen sich so nicht lesen</translation>
    </message>
    <message>
        <source>one photograph was gone or damaged before and is not in it</source>
        <translation>ein Foto war vorher schon weg oder beschädigt und ist nicht darin</translation>
    </message>
    <message>
        <source>%1 photographs were gone or damaged before and are not in it</source>
        <translation>%1 Fotos waren vorher schon weg oder beschädigt und sind nicht darin</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Edge</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>When it is done</source>
        <translation>Wenn es fertig ist</translation>
    </message>
    <message>
        <source>To buy, cloth by cloth</source>
        <translation>Zu kaufen, Stoff für Stoff</translation>
    </message>
    <message>
        <source>Costs %1.</source>
        <translation>Kostet %1.</translation>
    </message>
    <message>
        <source>outline, along × across</source>
        <translation>Umriss, längs × quer</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>Naht</translation>
    </message>
    <message>
        <source>usable width of the strip&apos;s cloth</source>
        <translation>nutzbare Breite des Streifenstoffs</translation>
    </message>
    <message>
        <source>catch, planned</source>
        <translation>Überstand, geplant</translation>
    </message>
    <message>
        <source>least fold</source>
        <translation>mindestens umlegen</translation>
    </message>
    <message>
        <source>spare on a short sashing</source>
        <translation>Reserve an einem kurzen Zwischenstreifen</translation>
    </message>
    <message>
        <source>short sashing with its spare</source>
        <translation>kurzer Zwischenstreifen mit Reserve</translation>
    </message>
    <message>
        <source>spare on a long sashing</source>
        <translation>Reserve an einem langen Zwischenstreifen</translation>
    </message>
    <message>
        <source>long sashing with its spare</source>
        <translation>langer Zwischenstreifen mit Reserve</translation>
    </message>
    <message>
        <source>batting, width</source>
        <translation>Vlies, Breite</translation>
    </message>
    <message>
        <source>batting, least width</source>
        <translation>Vlies, kleinste Breite</translation>
    </message>
    <message>
        <source>batting inside the ring</source>
        <translation>Vlies innerhalb des Rings</translation>
    </message>
    <message>
        <source>backing, along × across</source>
        <translation>Rückseitenstoff, längs × quer</translation>
    </message>
    <message>
        <source>corners&apos; radius</source>
        <translation>Radius der Ecken</translation>
    </message>
    <message>
        <source>the arc cuts into the stippling</source>
        <translation>der Bogen schneidet in die Füllquiltung</translation>
    </message>
    <message>
        <source>least radius for folded binding</source>
        <translation>kleinster Radius für gefaltete Einfassung</translation>
    </message>
    <message>
        <source>patch &quot;%1&quot;, cut</source>
        <translation>Flicken „%1“, Zuschnitt</translation>
    </message>
    <message>
        <source>web for &quot;%1&quot;</source>
        <translation>Klebevlies für „%1“</translation>
    </message>
    <message>
        <source>thread for a block</source>
        <translation>Garn für einen Block</translation>
    </message>
    <message>
        <source>of it from the bobbin</source>
        <translation>davon von der Unterfadenspule</translation>
    </message>
    <message>
        <source>ruler &quot;%1&quot;</source>
        <translation>Lineal „%1“</translation>
    </message>
    <message>
        <source>Look here first</source>
        <translation>Zuerst hierher sehen</translation>
    </message>
    <message>
        <source>All figures</source>
        <translation>Alle Maße</translation>
    </message>
    <message>
        <source>allowance</source>
        <extracomment>cloth kept outside the block&apos;s outline</extracomment>
        <translation>Zugabe</translation>
    </message>
    <message>
        <source>fold under</source>
        <extracomment>how much of the back strip is turned under</extracomment>
        <translation>Umlegen</translation>
    </message>
    <message>
        <source>catch</source>
        <extracomment>how far the fold passes the seam line</extracomment>
        <translation>Überstand</translation>
    </message>
    <message>
        <source>sashing, as seen</source>
        <translation>Zwischenstreifen, sichtbar</translation>
    </message>
    <message>
        <source>This bar is exactly %1 long. If it is not, print again at 100 %, without fitting to the page.</source>
        <translation>Dieser Balken ist genau %1 lang. Wenn nicht, noch einmal mit 100&#xa0;% drucken, ohne an die Seite anzupassen.</translation>
    </message>
    <message>
        <source>At true size: lay the cloth&apos;s edge on the long line, the measure is where the bar ends.</source>
        <translation>In wahrer Größe: die Stoffkante an die lange Linie legen; das Maß ist dort, wo der Balken endet.</translation>
    </message>
    <message>
        <source>{Flat cloth:} for marking before anything is stitched, every tick from the one zero end. Drawn 1 : %1.</source>
        <translation>{Flacher Stoff:} zum Anzeichnen, bevor etwas gestickt ist, jeder Strich vom selben Nullende. Gezeichnet 1 : %1.</translation>
    </message>
    <message>
        <source>{Drawn-in cloth:} where each start is found once the blocks before it are stitched. Never mix the two scales.</source>
        <translation>{Eingezogener Stoff:} wo jeder Anfang liegt, wenn die Blöcke davor gestickt sind. Die beiden Skalen nie mischen.</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>Place %1, block %2: start {%3}, centre {%4} (planned {%5}), gap {%6}.</source>
        <translation>Stelle %1, Block %2: Anfang {%3}, Mitte {%4} (geplant {%5}), Lücke {%6}.</translation>
    </message>
    <message>
        <source>It does not fit: {%1} is missing.</source>
        <translation>Es passt nicht: {%1} fehlt.</translation>
    </message>
    <message>
        <source>With a gap of {%1} it would.</source>
        <translation>Mit einer Lücke von {%1} würde es passen.</translation>
    </message>
    <message>
        <source>{Strip %1}, begun: %2 long when flat, its end now at %3.</source>
        <translation>{Streifen %1}, begonnen: flach %2 lang, sein Ende jetzt bei %3.</translation>
    </message>
    <message>
        <source>The last outline ended at {%1}.</source>
        <translation>Der letzte Umriss endete bei {%1}.</translation>
    </message>
    <message>
        <source>Hoop: the strip end to end</source>
        <translation>Sticken: der Streifen von Ende zu Ende</translation>
    </message>
    <message>
        <source>Back, as it lies turned over</source>
        <translation>Rückseite, wie sie gewendet liegt</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorderseite</translation>
    </message>
    <message>
        <source>%1 blocks are too many to draw one by one: lay them out from the labels, rows by letter from the top, columns by number from the left.</source>
        <translation>%1 Blöcke sind zu viele, um sie einzeln zu zeichnen: nach den Zetteln auslegen, Reihen nach Buchstaben von oben, Spalten nach Zahlen von links.</translation>
    </message>
    <message>
        <source>{Match marks} on every long sashing, from the row&apos;s raw left end, which is zero; a row is %1 raw.</source>
        <translation>{Passzeichen} auf jedem langen Zwischenstreifen, vom linken Schnittende der Reihe, das null ist; eine Reihe misst unversäubert %1.</translation>
    </message>
    <message>
        <source>Long sashing, %1, in pieces: %2; joins at %3 from the row&apos;s raw left end.</source>
        <translation>Langer Zwischenstreifen, %1, aus Teilen: %2; Ansätze bei %3 vom linken Schnittende der Reihe.</translation>
    </message>
    <message>
        <source>Trim and fold</source>
        <translation>Beschneiden und umlegen</translation>
    </message>
    <message>
        <source>Join: both faces</source>
        <translation>Verbinden: beide Seiten</translation>
    </message>
    <message>
        <source>front</source>
        <translation>Vorderseite</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>%1 · page %2 of %3</source>
        <extracomment>a page&apos;s footer: the project&apos;s name, the page and how many there are</extracomment>
        <translation>%1 · Seite %2 von %3</translation>
    </message>
    <message>
        <source>%1, continued</source>
        <extracomment>at the top of a page: the heading it goes on with</extracomment>
        <translation>%1, Fortsetzung</translation>
    </message>
    <message>
        <source>drawn 1 : %1</source>
        <extracomment>drawn so many times smaller: 1 : 10</extracomment>
        <translation>gezeichnet 1 : %1</translation>
    </message>
    <message>
        <source>{%1} × {%2} finished</source>
        <extracomment>along × across, of the finished piece</extracomment>
        <translation>{%1} × {%2} fertig</translation>
    </message>
    <message>
        <source>%1 × %2 blocks</source>
        <extracomment>columns × rows of blocks</extracomment>
        <translation>%1 × %2 Blöcke</translation>
    </message>
    <message>
        <source>A ring: not tried yet. Make the trial before you cut the rest.</source>
        <translation>Ein Ring: noch nicht erprobt. Erst die Probe machen, dann den Rest schneiden.</translation>
    </message>
    <message>
        <source>The sheet could not be written to %1: %2. Choose another place.</source>
        <translation>Das Blatt ließ sich nicht nach %1 schreiben: %2. Einen anderen Ort wählen.</translation>
    </message>
    <message>
        <source>and so on</source>
        <extracomment>the list is cut short</extracomment>
        <translation>und so weiter</translation>
    </message>
    <message>
        <source>… and %1 more lines: see the long form.</source>
        <translation>… und %1 weitere Zeilen: siehe die lange Fassung.</translation>
    </message>
    <message>
        <source>For the trial.</source>
        <translation>Für die Probe.</translation>
    </message>
    <message>
        <source>Cut, cloth by cloth</source>
        <translation>Schneiden, Stoff für Stoff</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>a heading and the cloth it goes on with</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>For a class: %1 kits.</source>
        <translation>Für einen Kurs: %1 Packungen.</translation>
    </message>
    <message>
        <source>Kits share their hoop strips: stitch them ahead and hand out the blocks.</source>
        <translation>Packungen teilen sich die Stickstreifen: vorab sticken und die Blöcke austeilen.</translation>
    </message>
    <message>
        <source>To cut for all kits</source>
        <translation>Zu schneiden für alle Packungen</translation>
    </message>
    <message>
        <source>in all</source>
        <extracomment>heads of a table: pieces for all kits together, pieces in one kit</extracomment>
        <translation>gesamt</translation>
    </message>
    <message>
        <source>in a kit</source>
        <translation>je Packung</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Maß</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>Blocks, stitched ahead; the size is when trimmed.</source>
        <translation>Blöcke, vorher gestickt; das Maß gilt beschnitten.</translation>
    </message>
    <message>
        <source>Kit %1 of %2</source>
        <translation>Packung %1 von %2</translation>
    </message>
    <message>
        <source>A kit: copy this page, once for each of %1</source>
        <translation>Eine Packung: diese Seite kopieren, für %1 je einmal</translation>
    </message>
    <message>
        <source>Name:</source>
        <extracomment>whose kit it is: a line to write on follows</extracomment>
        <translation>Name:</translation>
    </message>
    <message>
        <source>In the kit</source>
        <translation>In der Packung</translation>
    </message>
    <message>
        <source>The diagram could not be written to %1: %2. Choose another place.</source>
        <translation>Die Zeichnung konnte nicht nach %1 geschrieben werden: %2. Einen anderen Ort wählen.</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>der Ordner kann nicht angelegt werden</translation>
    </message>
    <message>
        <source>Piece %1 of what you have</source>
        <extracomment>a piece of cloth she has already, numbered</extracomment>
        <translation>Stück %1 vom Vorrat</translation>
    </message>
    <message>
        <source>%1 left over</source>
        <extracomment>%1 a length: nothing is cut from that much of the strip</extracomment>
        <translation>%1 bleiben übrig</translation>
    </message>
    <message>
        <source>Seam %1.</source>
        <translation>Naht %1.</translation>
    </message>
    <message>
        <source>One is to practise the join with.</source>
        <translation>Einer ist zum Üben der Verbindung.</translation>
    </message>
    <message>
        <source>along the selvage: %1</source>
        <extracomment>%1 &quot;3 × 2 in: 5 × 7 1/2 in&quot;, strips that run along the selvage instead of across the cloth</extracomment>
        <translation>entlang der Webkante: %1</translation>
    </message>
</context>
<context>
    <name>ShelfPage</name>
    <message>
        <source>On the shelf</source>
        <translation>Im Regal</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Language, screen</source>
        <translation>Sprache, Anzeige</translation>
    </message>
    <message>
        <source>Open or back up</source>
        <translation>Öffnen oder sichern</translation>
    </message>
    <message>
        <source>Hide what is put away</source>
        <extracomment>pieces that were put away, out of sight</extracomment>
        <translation>Weggelegtes verbergen</translation>
    </message>
    <message>
        <source>Show what is put away</source>
        <translation>Weggelegtes zeigen</translation>
    </message>
</context>
<context>
    <name>ShopFoot</name>
    <message>
        <source>Cost and price</source>
        <translation>Kosten und Preis</translation>
    </message>
    <message>
        <source>Kits for a class</source>
        <translation>Packungen für einen Kurs</translation>
    </message>
    <message>
        <source>Cloth you have</source>
        <translation>Vorhandener Stoff</translation>
    </message>
    <message>
        <source>Batting: roll or package</source>
        <extracomment>batting bought cut from the roll, or ready cut in packages</extracomment>
        <translation>Vlies: Rolle oder Paket</translation>
    </message>
</context>
<context>
    <name>ShopPage</name>
    <message>
        <source>To buy</source>
        <translation>Zu kaufen</translation>
    </message>
    <message>
        <source>%1: buy %2</source>
        <translation>%1: %2 kaufen</translation>
    </message>
    <message>
        <source>bought</source>
        <translation>gekauft</translation>
    </message>
    <message>
        <source>not bought yet</source>
        <translation>noch nicht gekauft</translation>
    </message>
    <message>
        <source>Costs %1.</source>
        <translation>Kostet %1.</translation>
    </message>
    <message>
        <source>Light and dark</source>
        <extracomment>the page on how light and how dark the cloths are</extracomment>
        <translation>Hell und Dunkel</translation>
    </message>
    <message>
        <source>List to take</source>
        <extracomment>opens the list to take to the shop</extracomment>
        <translation>Liste mitnehmen</translation>
    </message>
    <message>
        <source>How %1 is cut: %2 long, %3 wide</source>
        <extracomment>spoken: %1 a cloth, %2 and %3 its two sides</extracomment>
        <translation>%1, Zuschnitt: %2 lang, %3 breit</translation>
    </message>
    <message>
        <source>To buy for %1 kits</source>
        <extracomment>heading of a shopping list; kits: all that a student needs for one piece, for so many students</extracomment>
        <translation>Zu kaufen für %1 Packungen</translation>
    </message>
</context>
<context>
    <name>SideDrawing</name>
    <message>
        <source>on the cut side</source>
        <translation>auf der Schnittseite</translation>
    </message>
    <message>
        <source>on the stitches</source>
        <translation>auf den Stichen</translation>
    </message>
</context>
<context>
    <name>SideSheet</name>
    <message>
        <source>Back to the work</source>
        <translation>Zurück zur Arbeit</translation>
    </message>
</context>
<context>
    <name>SpreadActs</name>
    <message>
        <source>Back to the work</source>
        <translation>Zurück zur Arbeit</translation>
    </message>
</context>
<context>
    <name>StepButton</name>
    <message>
        <source>more</source>
        <translation>mehr</translation>
    </message>
    <message>
        <source>less</source>
        <translation>weniger</translation>
    </message>
</context>
<context>
    <name>StepHead</name>
    <message>
        <source>Nothing left to do here</source>
        <translation>Hier ist nichts mehr zu tun</translation>
    </message>
</context>
<context>
    <name>StepPage</name>
    <message>
        <source>Lay the block flat, off the hoop and rested. Measure its four sides and both diagonals.</source>
        <translation>Block aus dem Rahmen nehmen, ruhen lassen, flach hinlegen. Vier Seiten und beide Diagonalen messen.</translation>
    </message>
</context>
<context>
    <name>StepTargets</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Something’s wrong</source>
        <translation>Etwas stimmt nicht</translation>
    </message>
</context>
<context>
    <name>StepWords</name>
    <message>
        <source>and {%1} %2</source>
        <translation>und {%1} %2</translation>
    </message>
    <message>
        <source>Not tried yet</source>
        <translation>Noch nicht erprobt</translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1 mehr</translation>
    </message>
    <message>
        <source>worked out</source>
        <extracomment>stands under a value the app reckons itself</extracomment>
        <translation>ausgerechnet</translation>
    </message>
</context>
<context>
    <name>StockPiece</name>
    <message>
        <source>size of the cloth: drag, or use the arrow keys</source>
        <translation>Größe des Stoffs: ziehen oder mit den Pfeiltasten</translation>
    </message>
</context>
<context>
    <name>StockShelf</name>
    <message>
        <source>These are cut up first. Press one to take it away.</source>
        <translation>Aus diesen wird zuerst geschnitten. Antippen nimmt ein Stück heraus.</translation>
    </message>
    <message>
        <source>What you have is cut up before anything is bought. Measure it without its selvages.</source>
        <translation>Was da ist, wird verbraucht, bevor etwas gekauft wird. Ohne Webkanten messen.</translation>
    </message>
    <message>
        <source>take away: %1</source>
        <extracomment>spoken name of a piece of cloth in the list: pressing it takes it away</extracomment>
        <translation>herausnehmen: %1</translation>
    </message>
</context>
<context>
    <name>Store</name>
    <message>
        <source>The disk is full. Nothing was lost; free some room and try again.</source>
        <translation>Der Speicher ist voll. Nichts ging verloren; Platz schaffen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>This is open for reading only, so nothing can be changed here.</source>
        <translation>Nur zum Lesen geöffnet, hier lässt sich nichts ändern.</translation>
    </message>
    <message>
        <source>Another program holds the file. Try again in a moment.</source>
        <translation>Ein anderes Programm hält die Datei. Gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The project was changed elsewhere. Open it again from the shelf.</source>
        <translation>Das Projekt wurde anderswo geändert. Vom Regal aus neu öffnen.</translation>
    </message>
    <message>
        <source>These projects were saved by a newer Matside. They were left as they are.</source>
        <translation>Diese Projekte hat ein neueres Matside gespeichert. Sie blieben, wie sie sind.</translation>
    </message>
    <message>
        <source>The file is damaged. What can be read is shown.</source>
        <translation>Die Datei ist beschädigt. Was lesbar ist, wird gezeigt.</translation>
    </message>
    <message>
        <source>Something in this project cannot be read. Open it and mend that first; nothing was copied.</source>
        <translation>Etwas in diesem Projekt lässt sich nicht lesen. Erst öffnen und beheben; nichts wurde kopiert.</translation>
    </message>
    <message>
        <source>There is nothing left to undo.</source>
        <translation>Es gibt nichts mehr zurückzunehmen.</translation>
    </message>
    <message>
        <source>That could not be saved: %1</source>
        <translation>Das ließ sich nicht speichern: %1</translation>
    </message>
    <message>
        <source>Something in this project cannot be read. Mend it at Fit first; nothing was changed.</source>
        <translation>Etwas in diesem Projekt lässt sich nicht lesen. Erst unter „Planen“ beheben; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The folder of the projects cannot be used. Free some room, and see that it may be read and written.</source>
        <translation>Der Ordner der Projekte lässt sich nicht benutzen. Platz schaffen und nachsehen, ob er gelesen und beschrieben werden darf.</translation>
    </message>
    <message>
        <source>Your projects are from an earlier Matside. There was no room for the copy that comes before they are brought up to date, so they were left as they are. Free some room.</source>
        <translation>Die Projekte stammen von einem älteren Matside. Für die Kopie, die vor dem Erneuern gemacht wird, war kein Platz; sie blieben, wie sie sind. Platz schaffen.</translation>
    </message>
    <message>
        <source>Your projects are from an earlier Matside, and their folder cannot be written, so they were left as they are. See that it may be written.</source>
        <translation>Die Projekte stammen von einem älteren Matside, und ihr Ordner lässt sich nicht beschreiben; sie blieben, wie sie sind. Nachsehen, ob er beschrieben werden darf.</translation>
    </message>
</context>
<context>
    <name>StripDrawing</name>
    <message>
        <source>next</source>
        <translation>nächster</translation>
    </message>
</context>
<context>
    <name>TableDrawing</name>
    <message>
        <source>The piece is drawn here once it has a size.</source>
        <extracomment>shown where the drawing will be while the project has no size yet</extracomment>
        <translation>Hier wird das Stück gezeichnet, sobald es eine Größe hat.</translation>
    </message>
    <message>
        <source>size of the piece: drag, or use the arrow keys</source>
        <translation>Größe des Stücks: ziehen oder mit den Pfeiltasten</translation>
    </message>
</context>
<context>
    <name>TakeSheet</name>
    <message>
        <source>To take</source>
        <translation>Mitzunehmen</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>puts the list to take away again</extracomment>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>TakeSlip</name>
    <message>
        <source>in the basket</source>
        <translation>im Korb</translation>
    </message>
    <message>
        <source>not in the basket yet</source>
        <translation>noch nicht im Korb</translation>
    </message>
</context>
<context>
    <name>Tally</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>a tally that is too long to draw: so many made of so many</extracomment>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>TermRow</name>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a term of a sum does</extracomment>
        <translation>Rechenweg zeigen</translation>
    </message>
    <message>
        <source>as you entered it</source>
        <extracomment>stands under a value that the maker entered herself</extracomment>
        <translation>wie eingegeben</translation>
    </message>
    <message>
        <source>preset</source>
        <extracomment>stands under a value that every new piece has and that she left as it was</extracomment>
        <translation>Voreinstellung</translation>
    </message>
    <message>
        <source>the common size</source>
        <extracomment>stands under the size of the blocks: one that blocks off size have in common, taken for all</extracomment>
        <translation>gemeinsames Maß</translation>
    </message>
</context>
<context>
    <name>TrialReading</name>
    <message>
        <source>not yet read</source>
        <translation>noch nicht gemessen</translation>
    </message>
    <message>
        <source>It is a gap</source>
        <translation>Es ist ein Spalt</translation>
    </message>
    <message>
        <source>It is an overlap</source>
        <translation>Es ist eine Überlappung</translation>
    </message>
</context>
<context>
    <name>TrialSays</name>
    <message>
        <source>The trial: first a test block and a test join, so that the figures fit your cloth.</source>
        <extracomment>the trial: a block and a join made before the piece&apos;s own cloth is cut; what is measured on them sets seam and draw-up</extracomment>
        <translation>Die Probe: zuerst ein Probeblock und eine Probeverbindung, damit die Maße zum Stoff passen.</translation>
    </message>
    <message>
        <source>The trial: first a test block, so that the figures fit your cloth.</source>
        <translation>Die Probe: zuerst ein Probeblock, damit die Maße zum Stoff passen.</translation>
    </message>
</context>
<context>
    <name>TrialSheet</name>
    <message>
        <source>Take these measures</source>
        <translation>Diese Maße nehmen</translation>
    </message>
    <message numerus="yes">
        <source>%n still to read</source>
        <extracomment>of the readings of the trial; short: it stands on a button that can be pressed once all are read</extracomment>
        <translation>
            <numerusform>Noch %n zu messen</numerusform>
            <numerusform>Noch %n zu messen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TrimPage</name>
    <message>
        <source>Measure</source>
        <extracomment>on a button: the block in hand is measured</extracomment>
        <translation>Messen</translation>
    </message>
    <message>
        <source>The strip comes apart along a ruler, down the middle of each gap; blocks off it so far: %1</source>
        <translation>Der Streifen wird am Lineal in der Mitte jeder Lücke durchtrennt; bisher abgetrennte Blöcke: %1</translation>
    </message>
</context>
<context>
    <name>Tuner</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1 mehr</translation>
    </message>
</context>
<context>
    <name>UndoneSheet</name>
    <message>
        <source>Was it tapped by mistake, or is the piece spoiled?</source>
        <translation>Aus Versehen angetippt, oder ist das Teil verdorben?</translation>
    </message>
    <message>
        <source>Tapped by mistake</source>
        <translation>Aus Versehen angetippt</translation>
    </message>
    <message>
        <source>Done and spoiled</source>
        <translation>Fertig und verdorben</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>So lassen</translation>
    </message>
</context>
<context>
    <name>WishScene</name>
    <message>
        <source>Wanted: %1</source>
        <translation>Gewünscht: %1</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Pleat on the back</source>
        <extracomment>a fold of the back cloth stitched down by mistake</extracomment>
        <translation>Falte auf der Rückseite</translation>
    </message>
    <message>
        <source>Thread broke or loops</source>
        <translation>Fadenriss oder Schlingen</translation>
    </message>
    <message>
        <source>Patch not covered</source>
        <extracomment>patch: a shape of cloth stitched onto the block</extracomment>
        <translation>Flickenkante frei</translation>
    </message>
    <message>
        <source>Stain or hoop mark</source>
        <translation>Fleck oder Rahmenabdruck</translation>
    </message>
    <message>
        <source>Look at it again</source>
        <translation>Noch einmal ansehen</translation>
    </message>
    <message>
        <source>That is not a whole number.</source>
        <translation>Das ist keine ganze Zahl.</translation>
    </message>
    <message>
        <source>It needs a name. The old one was kept.</source>
        <translation>Es braucht einen Namen. Der alte wurde behalten.</translation>
    </message>
    <message>
        <source>That name is too long; %1 letters are the most.</source>
        <translation>Dieser Name ist zu lang; höchstens %1 Buchstaben.</translation>
    </message>
    <message>
        <source>A price is a number like 9.50.</source>
        <translation>Ein Preis ist eine Zahl wie 9,50.</translation>
    </message>
    <message>
        <source>That is too small; %1 is the least.</source>
        <translation>Das ist zu klein; mindestens %1.</translation>
    </message>
    <message>
        <source>That is longer than any piece here can be.</source>
        <translation>Das ist länger, als hier ein Stück sein kann.</translation>
    </message>
    <message>
        <source>This lies between %1 and %2.</source>
        <translation>Das liegt zwischen %1 und %2.</translation>
    </message>
    <message>
        <source>Draw-up lies between 0 % and 15 %.</source>
        <translation>Der Einzug liegt zwischen 0&#xa0;% und 15&#xa0;%.</translation>
    </message>
    <message>
        <source>That does not belong here.</source>
        <translation>Das gehört nicht hierher.</translation>
    </message>
    <message>
        <source>new cloth</source>
        <translation>neuer Stoff</translation>
    </message>
    <message>
        <source>new ruler</source>
        <translation>neues Lineal</translation>
    </message>
    <message>
        <source>“%1” is the cloth of the patch “%2”: it stays while the patch does.</source>
        <extracomment>a cloth cannot be taken away; %1 is the cloth, %2 a patch cut from it</extracomment>
        <translation>„%1“ ist der Stoff des Flickens „%2“: Er bleibt, solange der Flicken bleibt.</translation>
    </message>
    <message>
        <source>“%1” has been cut already: it stays with this piece.</source>
        <translation>„%1“ ist schon zugeschnitten: Er bleibt bei diesem Stück.</translation>
    </message>
    <message>
        <source>“%1” has been bought or measured: it stays with this piece.</source>
        <translation>„%1“ ist schon gekauft oder gemessen: Er bleibt bei diesem Stück.</translation>
    </message>
    <message>
        <source>More than %1 cloths do not fit in one piece.</source>
        <translation>Mehr als %1 Stoffe passen nicht in ein Stück.</translation>
    </message>
    <message>
        <source>More than %1 rulers cannot be kept.</source>
        <translation>Mehr als %1 Lineale lassen sich nicht behalten.</translation>
    </message>
    <message>
        <source>One ruler stays: every cut is laid out with it.</source>
        <translation>Ein Lineal muss bleiben: Jeder Schnitt wird damit angelegt.</translation>
    </message>
    <message>
        <source>It is no longer there.</source>
        <translation>Es ist nicht mehr da.</translation>
    </message>
    <message>
        <source>a scant</source>
        <extracomment>just under the ruler&apos;s mark that follows</extracomment>
        <translation>knapp</translation>
    </message>
    <message>
        <source>a generous</source>
        <extracomment>just over the ruler&apos;s mark that follows</extracomment>
        <translation>reichlich</translation>
    </message>
    <message>
        <source>too long to tell</source>
        <translation>zu lang, um es zu sagen</translation>
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
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>first</source>
        <translation>erste</translation>
    </message>
    <message>
        <source>second</source>
        <translation>zweite</translation>
    </message>
    <message>
        <source>third</source>
        <translation>dritte</translation>
    </message>
    <message>
        <source>fourth</source>
        <translation>vierte</translation>
    </message>
    <message>
        <source>fifth</source>
        <translation>fünfte</translation>
    </message>
    <message>
        <source>sixth</source>
        <translation>sechste</translation>
    </message>
    <message>
        <source>seventh</source>
        <translation>siebte</translation>
    </message>
    <message>
        <source>eighth</source>
        <translation>achte</translation>
    </message>
    <message>
        <source>ninth</source>
        <translation>neunte</translation>
    </message>
    <message>
        <source>tenth</source>
        <translation>zehnte</translation>
    </message>
    <message>
        <source>last</source>
        <extracomment>the last of more than ten, as in &quot;and the last block will not fit&quot;</extracomment>
        <translation>letzte</translation>
    </message>
    <message>
        <source>table</source>
        <translation>Tisch</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>Reihen</translation>
    </message>
    <message>
        <source>block along</source>
        <translation>Block längs</translation>
    </message>
    <message>
        <source>block across</source>
        <translation>Block quer</translation>
    </message>
    <message>
        <source>spare blocks</source>
        <translation>Ersatzblöcke</translation>
    </message>
    <message>
        <source>made</source>
        <translation>Machart</translation>
    </message>
    <message>
        <source>clean back</source>
        <translation>saubere Rückseite</translation>
    </message>
    <message>
        <source>kits</source>
        <translation>Packungen</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>Naht</translation>
    </message>
    <message>
        <source>batting’s thickness</source>
        <translation>Dicke des Vlieses</translation>
    </message>
    <message>
        <source>draw-up along</source>
        <translation>Einzug längs</translation>
    </message>
    <message>
        <source>draw-up across</source>
        <translation>Einzug quer</translation>
    </message>
    <message>
        <source>sashing, as seen</source>
        <translation>Zwischenstreifen, sichtbar</translation>
    </message>
    <message>
        <source>back strip, cut</source>
        <translation>Streifen hinten, Zuschnitt</translation>
    </message>
    <message>
        <source>block’s allowance</source>
        <translation>Zugabe des Blocks</translation>
    </message>
    <message>
        <source>catch</source>
        <translation>Überstand</translation>
    </message>
    <message>
        <source>turn over the bulk</source>
        <translation>Umschlag über die Dicke</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>outside, along</source>
        <translation>außen, längs</translation>
    </message>
    <message>
        <source>outside, across</source>
        <translation>außen, quer</translation>
    </message>
    <message>
        <source>field, along</source>
        <translation>Stickfeld, längs</translation>
    </message>
    <message>
        <source>field, across</source>
        <translation>Stickfeld, quer</translation>
    </message>
    <message>
        <source>opening, along</source>
        <translation>Öffnung, längs</translation>
    </message>
    <message>
        <source>opening, across</source>
        <translation>Öffnung, quer</translation>
    </message>
    <message>
        <source>usable length</source>
        <translation>nutzbare Länge</translation>
    </message>
    <message>
        <source>gap between outlines</source>
        <translation>Lücke zwischen Umrissen</translation>
    </message>
    <message>
        <source>margin past the hoop</source>
        <translation>Rand über den Rahmen hinaus</translation>
    </message>
    <message>
        <source>placing by eye, within</source>
        <translation>Anlegen nach Augenmaß, genau auf</translation>
    </message>
    <message>
        <source>sliver cut away</source>
        <translation>abgeschnittenes Streifchen</translation>
    </message>
    <message>
        <source>tail past the frame</source>
        <translation>Ende über den Rahmen hinaus</translation>
    </message>
    <message>
        <source>waste tails sewn on</source>
        <translation>Hilfsenden angenäht</translation>
    </message>
    <message>
        <source>frame may lie on the last block</source>
        <translation>Rahmen darf auf dem letzten Block liegen</translation>
    </message>
    <message>
        <source>line down the sashings</source>
        <extracomment>one line of decorative stitching down the middle of every sashing</extracomment>
        <translation>Ziernaht in den Zwischenstreifen</translation>
    </message>
    <message>
        <source>gaps give the sashing</source>
        <translation>Lücken geben die Zwischenstreifen</translation>
    </message>
    <message>
        <source>edge</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>cloth kept outside</source>
        <translation>Stoff außerhalb behalten</translation>
    </message>
    <message>
        <source>binding’s seam</source>
        <translation>Naht der Einfassung</translation>
    </message>
    <message>
        <source>binding</source>
        <translation>Einfassung</translation>
    </message>
    <message>
        <source>sewn on the back</source>
        <translation>hinten angenäht</translation>
    </message>
    <message>
        <source>corners</source>
        <translation>Ecken</translation>
    </message>
    <message>
        <source>corners’ radius</source>
        <translation>Radius der Ecken</translation>
    </message>
    <message>
        <source>to spare</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>Stoff</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>part it plays</source>
        <translation>seine Rolle</translation>
    </message>
    <message>
        <source>usable width</source>
        <translation>nutzbare Breite</translation>
    </message>
    <message>
        <source>sold by the</source>
        <translation>verkauft je</translation>
    </message>
    <message>
        <source>price of a yard</source>
        <translation>Preis je Yard</translation>
    </message>
    <message>
        <source>price of a metre</source>
        <translation>Preis je Meter</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>its pattern has an up</source>
        <translation>Muster mit Richtung</translation>
    </message>
    <message>
        <source>Take this cloth away</source>
        <translation>Diesen Stoff wegnehmen</translation>
    </message>
    <message>
        <source>Add a cloth</source>
        <translation>Stoff hinzufügen</translation>
    </message>
    <message>
        <source>ruler</source>
        <translation>Lineal</translation>
    </message>
    <message>
        <source>its finest mark</source>
        <translation>seine feinste Teilung</translation>
    </message>
    <message>
        <source>Take this ruler away</source>
        <translation>Dieses Lineal wegnehmen</translation>
    </message>
    <message>
        <source>Add a ruler</source>
        <translation>Lineal hinzufügen</translation>
    </message>
    <message>
        <source>finest mark</source>
        <translation>feinste Teilung</translation>
    </message>
    <message>
        <source>The table</source>
        <translation>Der Tisch</translation>
    </message>
    <message>
        <source>The blocks</source>
        <translation>Die Blöcke</translation>
    </message>
    <message>
        <source>Seam and draw-up</source>
        <translation>Naht und Einzug</translation>
    </message>
    <message>
        <source>Sashing and fold</source>
        <translation>Zwischenstreifen und Umlegen</translation>
    </message>
    <message>
        <source>The hoop</source>
        <translation>Der Stickrahmen</translation>
    </message>
    <message>
        <source>The hoop strip</source>
        <translation>Der Stickstreifen</translation>
    </message>
    <message>
        <source>The edge</source>
        <translation>Die Kante</translation>
    </message>
    <message>
        <source>The cloths</source>
        <translation>Die Stoffe</translation>
    </message>
    <message>
        <source>Your rulers</source>
        <translation>Die eigenen Lineale</translation>
    </message>
    <message>
        <source>no table</source>
        <translation>kein Tisch</translation>
    </message>
    <message>
        <source>four-sided</source>
        <translation>rechteckig</translation>
    </message>
    <message>
        <source>round</source>
        <translation>rund</translation>
    </message>
    <message>
        <source>reversible</source>
        <translation>wendbar</translation>
    </message>
    <message>
        <source>with one clean back</source>
        <translation>mit sauberer Rückseite</translation>
    </message>
    <message>
        <source>layered and bound</source>
        <translation>geschichtet, eingefasst</translation>
    </message>
    <message>
        <source>bagged out</source>
        <translation>verstürzt</translation>
    </message>
    <message>
        <source>bound</source>
        <translation>eingefasst</translation>
    </message>
    <message>
        <source>framed</source>
        <translation>umrandet</translation>
    </message>
    <message>
        <source>square</source>
        <translation>rechtwinklig</translation>
    </message>
    <message>
        <source>rounded, on bias</source>
        <translation>rund, mit Schrägband</translation>
    </message>
    <message>
        <source>double fold</source>
        <translation>doppelt gelegt</translation>
    </message>
    <message>
        <source>single fold</source>
        <translation>einfach gelegt</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>by machine</source>
        <translation>mit der Maschine</translation>
    </message>
    <message>
        <source>two rings</source>
        <translation>zwei Ringe</translation>
    </message>
    <message>
        <source>magnetic frame</source>
        <translation>Magnetrahmen</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>back</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>batting</source>
        <extracomment>the layer between the cloths</extracomment>
        <translation>Vlies</translation>
    </message>
    <message>
        <source>patch</source>
        <translation>Flicken</translation>
    </message>
    <message>
        <source>web</source>
        <extracomment>fusible web</extracomment>
        <translation>Klebevlies</translation>
    </message>
    <message>
        <source>sashing, front</source>
        <translation>Zwischenstreifen vorn</translation>
    </message>
    <message>
        <source>sashing, back</source>
        <translation>Zwischenstreifen hinten</translation>
    </message>
    <message>
        <source>1/8 yd</source>
        <translation>1/8 Yard</translation>
    </message>
    <message>
        <source>1/4 yd</source>
        <translation>1/4 Yard</translation>
    </message>
    <message>
        <source>1/2 yd</source>
        <translation>1/2 Yard</translation>
    </message>
    <message>
        <source>1 yd</source>
        <translation>1 Yard</translation>
    </message>
    <message>
        <source>10 cm</source>
        <translation>10 cm</translation>
    </message>
    <message>
        <source>25 cm</source>
        <translation>25 cm</translation>
    </message>
    <message>
        <source>50 cm</source>
        <translation>50 cm</translation>
    </message>
    <message>
        <source>1 m</source>
        <translation>1 m</translation>
    </message>
    <message>
        <source>undyed</source>
        <translation>ungefärbt</translation>
    </message>
    <message>
        <source>oat</source>
        <translation>Hafer</translation>
    </message>
    <message>
        <source>ochre</source>
        <translation>Ocker</translation>
    </message>
    <message>
        <source>rust</source>
        <translation>Rost</translation>
    </message>
    <message>
        <source>madder</source>
        <translation>Krapp</translation>
    </message>
    <message>
        <source>plum</source>
        <translation>Pflaume</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>blau</translation>
    </message>
    <message>
        <source>teal</source>
        <translation>Petrol</translation>
    </message>
    <message>
        <source>sage</source>
        <translation>Salbei</translation>
    </message>
    <message>
        <source>bark</source>
        <translation>Rinde</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>grau</translation>
    </message>
    <message>
        <source>soot</source>
        <translation>Ruß</translation>
    </message>
    <message>
        <source>new project</source>
        <translation>neues Projekt</translation>
    </message>
    <message>
        <source>demo</source>
        <translation>Beispiel</translation>
    </message>
    <message>
        <source>make again</source>
        <translation>noch einmal machen</translation>
    </message>
    <message>
        <source>copy in millimetres</source>
        <translation>Kopie in Millimetern</translation>
    </message>
    <message>
        <source>bring in</source>
        <extracomment>a project taken out of a share file</extracomment>
        <translation>hereinholen</translation>
    </message>
    <message>
        <source>change</source>
        <translation>ändern</translation>
    </message>
    <message>
        <source>layout taken</source>
        <extracomment>layout: how many blocks across and down, their size and the sashing between them</extracomment>
        <translation>Aufteilung genommen</translation>
    </message>
    <message>
        <source>cloth added</source>
        <translation>Stoff hinzugefügt</translation>
    </message>
    <message>
        <source>ruler added</source>
        <translation>Lineal hinzugefügt</translation>
    </message>
    <message>
        <source>cloth taken away</source>
        <translation>Stoff weggenommen</translation>
    </message>
    <message>
        <source>ruler taken away</source>
        <translation>Lineal weggenommen</translation>
    </message>
    <message>
        <source>remedy</source>
        <translation>Abhilfe</translation>
    </message>
    <message>
        <source>drag</source>
        <translation>Ziehen</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation>verdorben</translation>
    </message>
    <message>
        <source>trial</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>trial put off</source>
        <translation>Probe aufgeschoben</translation>
    </message>
    <message>
        <source>trial taken back</source>
        <translation>Probe zurückgenommen</translation>
    </message>
    <message>
        <source>something went wrong</source>
        <translation>etwas ging schief</translation>
    </message>
    <message>
        <source>draw-up taken</source>
        <translation>Einzug übernommen</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>common size taken</source>
        <translation>gemeinsames Maß genommen</translation>
    </message>
    <message>
        <source>ticked as bought</source>
        <translation>als gekauft abgehakt</translation>
    </message>
    <message>
        <source>last outline measured</source>
        <translation>letzter Umriss gemessen</translation>
    </message>
    <message>
        <source>hoop chosen</source>
        <translation>Rahmen gewählt</translation>
    </message>
    <message>
        <source>sashing strips changed</source>
        <translation>Zwischenstreifen geändert</translation>
    </message>
    <message>
        <source>pins counted</source>
        <translation>Nadeln gezählt</translation>
    </message>
    <message>
        <source>blocks changed places</source>
        <translation>Blöcke getauscht</translation>
    </message>
    <message>
        <source>block logged</source>
        <translation>Block eingetragen</translation>
    </message>
    <message>
        <source>hoop strip, cut</source>
        <translation>Stickstreifen, Zuschnitt</translation>
    </message>
    <message>
        <source>blocks on a strip</source>
        <translation>Blöcke je Streifen</translation>
    </message>
    <message>
        <source>hoop strips</source>
        <translation>Stickstreifen</translation>
    </message>
    <message>
        <source>gap that yields sashing</source>
        <extracomment>the first gaps of a strip, wide enough to be cut into sashing</extracomment>
        <translation>Lücke für Zwischenstreifen</translation>
    </message>
    <message>
        <source>end margin</source>
        <translation>Rand am Ende</translation>
    </message>
    <message>
        <source>advance</source>
        <translation>Vorschub</translation>
    </message>
    <message>
        <source>left on each strip</source>
        <translation>Rest je Streifen</translation>
    </message>
    <message>
        <source>frame’s reach</source>
        <translation>Ausladung des Rahmens</translation>
    </message>
    <message>
        <source>size sent, along</source>
        <translation>gesendete Größe, längs</translation>
    </message>
    <message>
        <source>size sent, across</source>
        <translation>gesendete Größe, quer</translation>
    </message>
    <message>
        <source>trimmed block, along</source>
        <translation>Block beschnitten, längs</translation>
    </message>
    <message>
        <source>trimmed block, across</source>
        <translation>Block beschnitten, quer</translation>
    </message>
    <message>
        <source>front sashing, cut</source>
        <translation>Zwischenstreifen vorn, Zuschnitt</translation>
    </message>
    <message>
        <source>back sashing, cut</source>
        <translation>Zwischenstreifen hinten, Zuschnitt</translation>
    </message>
    <message>
        <source>allowances will meet within</source>
        <translation>Zugaben treffen sich, genau auf</translation>
    </message>
    <message>
        <source>short sashings a face</source>
        <translation>kurze Zwischenstreifen je Seite</translation>
    </message>
    <message>
        <source>short sashing</source>
        <translation>kurzer Zwischenstreifen</translation>
    </message>
    <message>
        <source>long sashings a face</source>
        <translation>lange Zwischenstreifen je Seite</translation>
    </message>
    <message>
        <source>long sashing</source>
        <translation>langer Zwischenstreifen</translation>
    </message>
    <message>
        <source>fold under</source>
        <translation>Umlegen</translation>
    </message>
    <message>
        <source>which catches</source>
        <translation>das fasst</translation>
    </message>
    <message>
        <source>raw, along</source>
        <translation>unversäubert, längs</translation>
    </message>
    <message>
        <source>raw, across</source>
        <translation>unversäubert, quer</translation>
    </message>
    <message>
        <source>finished, along</source>
        <translation>fertig, längs</translation>
    </message>
    <message>
        <source>finished, across</source>
        <translation>fertig, quer</translation>
    </message>
    <message>
        <source>binding, cut</source>
        <translation>Einfassung, Zuschnitt</translation>
    </message>
    <message>
        <source>binding, length</source>
        <translation>Einfassung, Länge</translation>
    </message>
    <message>
        <source>binding strips</source>
        <translation>Streifen der Einfassung</translation>
    </message>
    <message>
        <source>square for the bias</source>
        <extracomment>bias: cloth cut slantwise; one continuous strip is cut from a square</extracomment>
        <translation>Quadrat für Schrägband</translation>
    </message>
    <message>
        <source>table showing, along</source>
        <translation>Tisch sichtbar, längs</translation>
    </message>
    <message>
        <source>table showing, across</source>
        <translation>Tisch sichtbar, quer</translation>
    </message>
    <message>
        <source>table showing at the corner</source>
        <translation>Tisch sichtbar an der Ecke</translation>
    </message>
    <message>
        <source>binding, exact</source>
        <translation>Einfassung, genau</translation>
    </message>
    <message>
        <source>gap on paper</source>
        <translation>Spalt auf dem Papier</translation>
    </message>
    <message>
        <source>outlines, along</source>
        <translation>Umrisse, längs</translation>
    </message>
    <message>
        <source>outlines, across</source>
        <translation>Umrisse, quer</translation>
    </message>
    <message>
        <source>used of the strip</source>
        <translation>vom Streifen genutzt</translation>
    </message>
    <message>
        <source>start on the strip</source>
        <translation>Anfang auf dem Streifen</translation>
    </message>
    <message>
        <source>centre on the strip</source>
        <translation>Mitte auf dem Streifen</translation>
    </message>
    <message>
        <source>start on drawn-in cloth</source>
        <translation>Anfang auf eingezogenem Stoff</translation>
    </message>
    <message>
        <source>match mark</source>
        <translation>Passzeichen</translation>
    </message>
    <message>
        <source>outline</source>
        <translation>Umriss</translation>
    </message>
    <message>
        <source>draw-up</source>
        <translation>Einzug</translation>
    </message>
    <message>
        <source>allowance</source>
        <translation>Zugabe</translation>
    </message>
    <message>
        <source>hoop, outside</source>
        <translation>Stickrahmen, außen</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Rand</translation>
    </message>
    <message>
        <source>size sent</source>
        <translation>Stickmaß</translation>
    </message>
    <message>
        <source>kept past the seam</source>
        <translation>über die Naht behalten</translation>
    </message>
    <message>
        <source>sliver</source>
        <translation>Streifchen</translation>
    </message>
    <message>
        <source>widest sashing strip</source>
        <translation>breitester Zwischenstreifen</translation>
    </message>
    <message>
        <source>wider gaps before it</source>
        <translation>breitere Lücken davor</translation>
    </message>
    <message>
        <source>lost in truing</source>
        <translation>Verlust beim Begradigen</translation>
    </message>
    <message>
        <source>rounded up to</source>
        <translation>aufgerundet auf</translation>
    </message>
    <message>
        <source>tail</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Spalt</translation>
    </message>
    <message>
        <source>used</source>
        <translation>genutzt</translation>
    </message>
    <message>
        <source>spare</source>
        <translation>Ersatz</translation>
    </message>
    <message>
        <source>places before it</source>
        <translation>Stellen davor</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>front strip</source>
        <translation>Streifen vorn</translation>
    </message>
    <message>
        <source>back strip</source>
        <translation>Streifen hinten</translation>
    </message>
    <message>
        <source>seam as sewn</source>
        <translation>Naht wie genäht</translation>
    </message>
    <message>
        <source>between the seams</source>
        <translation>zwischen den Nähten</translation>
    </message>
    <message>
        <source>least fold</source>
        <translation>mindestens umlegen</translation>
    </message>
    <message>
        <source>taken by the bulk</source>
        <translation>von der Dicke verbraucht</translation>
    </message>
    <message>
        <source>trimmed block</source>
        <translation>beschnittener Block</translation>
    </message>
    <message>
        <source>number of the join</source>
        <translation>Nummer der Verbindung</translation>
    </message>
    <message>
        <source>outlines</source>
        <translation>Umrisse</translation>
    </message>
    <message>
        <source>reach on the back</source>
        <translation>Reichweite hinten</translation>
    </message>
    <message>
        <source>for turns</source>
        <translation>für Umschläge</translation>
    </message>
    <message>
        <source>exact width</source>
        <translation>genaue Breite</translation>
    </message>
    <message>
        <source>along</source>
        <translation>längs</translation>
    </message>
    <message>
        <source>finished size</source>
        <translation>fertige Größe</translation>
    </message>
    <message>
        <source>for the seams</source>
        <translation>für die Nähte</translation>
    </message>
    <message>
        <source>mean of the measured rows</source>
        <translation>Mittel der gemessenen Reihen</translation>
    </message>
    <message>
        <source>This is not readable as JSON: it breaks off at line %1, column %2.</source>
        <translation>Das ist nicht als JSON lesbar: Es bricht in Zeile %1, Spalte %2 ab.</translation>
    </message>
    <message>
        <source>The key &quot;%1&quot; stands twice in one place.</source>
        <translation>Der Schlüssel „%1“ steht zweimal an einer Stelle.</translation>
    </message>
    <message>
        <source>The file is too large: %1 bytes; %2 is the most.</source>
        <translation>Die Datei ist zu groß: %1 Byte; höchstens %2.</translation>
    </message>
    <message>
        <source>The file is nested deeper than %1 levels.</source>
        <translation>Die Datei ist tiefer als %1 Ebenen geschachtelt.</translation>
    </message>
    <message>
        <source>There are too many values in one place; %1 is the most.</source>
        <translation>An einer Stelle sind zu viele Werte; höchstens %1.</translation>
    </message>
    <message>
        <source>A text is longer than %1 characters.</source>
        <translation>Ein Text ist länger als %1 Zeichen.</translation>
    </message>
    <message>
        <source>This is not a project file of Matside.</source>
        <translation>Das ist keine Projektdatei von Matside.</translation>
    </message>
    <message>
        <source>The file does not say which version of the format it is in.</source>
        <translation>Die Datei sagt nicht, in welcher Fassung des Formats sie ist.</translation>
    </message>
    <message>
        <source>The file is in version %1 of the format; this program knows %2. A newer Matside will open it.</source>
        <translation>Die Datei ist in Fassung %1 des Formats; dieses Programm kennt %2. Ein neueres Matside öffnet sie.</translation>
    </message>
    <message>
        <source>The file %1 cannot be opened: %2.</source>
        <translation>Die Datei %1 lässt sich nicht öffnen: %2.</translation>
    </message>
    <message>
        <source>There should be %1 here.</source>
        <translation>Hier sollte %1 stehen.</translation>
    </message>
    <message>
        <source>There must be %1 of them here.</source>
        <translation>Hier müssen es %1 sein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of the choices.</source>
        <translation>„%1“ steht nicht zur Wahl.</translation>
    </message>
    <message>
        <source>This is needed and is missing.</source>
        <translation>Das wird gebraucht und fehlt.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a length.</source>
        <translation>„%1“ ist keine Länge.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is longer than any piece here can be.</source>
        <translation>„%1“ ist länger, als hier ein Stück sein kann.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is too small for this.</source>
        <translation>„%1“ ist dafür zu klein.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a percentage.</source>
        <translation>„%1“ ist kein Prozentwert.</translation>
    </message>
    <message>
        <source>The list is too long; %1 is the most.</source>
        <translation>Die Liste ist zu lang; höchstens %1.</translation>
    </message>
    <message>
        <source>No ruler is marked in steps of %1.</source>
        <extracomment>mark: a line printed on a ruler</extracomment>
        <translation>Kein Lineal ist in Schritten von %1 geteilt.</translation>
    </message>
    <message>
        <source>A table needs a length and a width, or a diameter alone.</source>
        <translation>Ein Tisch braucht Länge und Breite oder nur einen Durchmesser.</translation>
    </message>
    <message>
        <source>Two cloths have the same short name, &quot;%1&quot;.</source>
        <translation>Zwei Stoffe haben denselben Kurznamen, „%1“.</translation>
    </message>
    <message>
        <source>The cloth &quot;%1&quot; is not on the list of cloths.</source>
        <translation>Der Stoff „%1“ steht nicht in der Liste der Stoffe.</translation>
    </message>
    <message>
        <source>A measured test block needs its sent size and its outline, both ways.</source>
        <translation>Ein gemessener Probeblock braucht gesendete Größe und Umriss, in beide Richtungen.</translation>
    </message>
    <message>
        <source>A measured piece needs four sides and two diagonals.</source>
        <translation>Ein gemessenes Stück braucht vier Seiten und zwei Diagonalen.</translation>
    </message>
    <message>
        <source>a group of keys</source>
        <translation>eine Gruppe von Schlüsseln</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a length, such as &quot;7 1/2 in&quot;,</source>
        <translation>eine Länge wie „190&#xa0;mm“</translation>
    </message>
    <message>
        <source>two lengths, along and across,</source>
        <translation>ein Paar Längen, längs und quer,</translation>
    </message>
    <message>
        <source>a percentage, such as &quot;2 %&quot;,</source>
        <translation>ein Prozentwert wie „2&#xa0;%“</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>wahr oder falsch</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>a price as a number</source>
        <translation>ein Preis als Zahl</translation>
    </message>
    <message>
        <source>Make the block %1.</source>
        <translation>Den Block %1 groß machen.</translation>
    </message>
    <message>
        <source>Make the sashing %1.</source>
        <translation>Den Zwischenstreifen %1 breit machen.</translation>
    </message>
    <message>
        <source>Sew with a seam of %1.</source>
        <translation>Mit einer Naht von %1 nähen.</translation>
    </message>
    <message>
        <source>Trim the blocks to an allowance of %1.</source>
        <translation>Die Blöcke auf eine Zugabe von %1 beschneiden.</translation>
    </message>
    <message>
        <source>Keep %1 outside the stitched line.</source>
        <translation>%1 außerhalb der gestickten Linie behalten.</translation>
    </message>
    <message>
        <source>Leave a gap of %1.</source>
        <translation>Eine Lücke von %1 lassen.</translation>
    </message>
    <message>
        <source>Cut the back sashing %1 wide.</source>
        <translation>Den hinteren Zwischenstreifen %1 breit schneiden.</translation>
    </message>
    <message>
        <source>Let the fold catch %1.</source>
        <translation>Die Faltkante %1 überstehen lassen.</translation>
    </message>
    <message>
        <source>Sew the binding on with a seam of %1.</source>
        <translation>Die Einfassung mit einer Naht von %1 annähen.</translation>
    </message>
    <message>
        <source>Use cloth %1 wide.</source>
        <translation>Stoff von %1 Breite nehmen.</translation>
    </message>
    <message>
        <source>Reckon with a draw-up of %1.</source>
        <translation>Mit einem Einzug von %1 rechnen.</translation>
    </message>
    <message>
        <source>Leave a margin of %1.</source>
        <translation>Einen Rand von %1 lassen.</translation>
    </message>
    <message>
        <source>Frame the piece with sashing.</source>
        <extracomment>framed: a border of sashing all round, then bound</extracomment>
        <translation>Das Stück mit Zwischenstreifen umranden.</translation>
    </message>
    <message>
        <source>Round the corners by %1.</source>
        <translation>Die Ecken mit %1 runden.</translation>
    </message>
    <message>
        <source>Leave the corners square.</source>
        <translation>Die Ecken rechtwinklig lassen.</translation>
    </message>
    <message>
        <source>Let the gap be reckoned.</source>
        <translation>Die Lücke ausrechnen lassen.</translation>
    </message>
    <message>
        <source>Let the back sashing&apos;s width be reckoned.</source>
        <translation>Die Breite des hinteren Zwischenstreifens ausrechnen lassen.</translation>
    </message>
    <message>
        <source>Keep the frame clear of the block before.</source>
        <translation>Den Rahmen vom Block davor freihalten.</translation>
    </message>
    <message>
        <source>Sew waste tails to both ends.</source>
        <translation>Hilfsenden an beide Enden nähen.</translation>
    </message>
    <message>
        <source>Forget this measuring and measure again.</source>
        <translation>Diese Messung vergessen und neu messen.</translation>
    </message>
    <message>
        <source>Make it %1.</source>
        <translation>Auf %1 setzen.</translation>
    </message>
    <message>
        <source>Choose &quot;%1&quot;.</source>
        <translation>„%1“ wählen.</translation>
    </message>
    <message>
        <source>Call it &quot;%1&quot;.</source>
        <translation>„%1“ nennen.</translation>
    </message>
    <message>
        <source>Take it away.</source>
        <translation>Wegnehmen.</translation>
    </message>
    <message>
        <source>Nothing is entered yet; %1 would be read.</source>
        <translation>Noch nichts eingegeben; %1 wäre lesbar.</translation>
    </message>
    <message>
        <source>That fraction cannot be; write it as %1.</source>
        <translation>Diesen Bruch gibt es nicht; als %1 schreiben.</translation>
    </message>
    <message>
        <source>That unit is not known; in, yd, ft, mm, cm and m are.</source>
        <translation>Diese Einheit ist unbekannt; in, yd, ft, mm, cm und m sind bekannt.</translation>
    </message>
    <message>
        <source>There are two units; leave one away.</source>
        <translation>Es sind zwei Einheiten; eine weglassen.</translation>
    </message>
    <message>
        <source>That has more digits than any ruler; %1 would be read.</source>
        <translation>Das hat mehr Stellen als jedes Lineal; %1 wäre lesbar.</translation>
    </message>
    <message>
        <source>That is not a percentage; 2 % would be read.</source>
        <translation>Das ist kein Prozentwert; 2&#xa0;% wäre lesbar.</translation>
    </message>
    <message>
        <source>That is not a length; %1 would be read.</source>
        <translation>Das ist keine Länge; %1 wäre lesbar.</translation>
    </message>
    <message>
        <source>It is square enough.</source>
        <translation>Der Block ist rechtwinklig genug.</translation>
    </message>
    <message>
        <source>It leans by {%1}.</source>
        <extracomment>lean: the block is a little of a diamond; %1 is by how much</extracomment>
        <translation>Er steht {%1} schief.</translation>
    </message>
    <message>
        <source>The readings disagree by {%3}.</source>
        <extracomment>%3 is how far the six readings disagree</extracomment>
        <translation>Die Messwerte widersprechen sich um {%3}.</translation>
    </message>
    <message>
        <source>Cut it plainly, squared off the first side.</source>
        <translation>Einfach schneiden, rechtwinklig zur ersten Seite.</translation>
    </message>
    <message>
        <source>Use it as it is.</source>
        <translation>So verwenden, wie er ist.</translation>
    </message>
    <message>
        <source>Trim it down to size.</source>
        <translation>Auf Maß beschneiden.</translation>
    </message>
    <message>
        <source>Trim it true: the largest is {%4}.</source>
        <extracomment>the largest true square that can still be cut from it</extracomment>
        <translation>Rechtwinklig beschneiden: höchstens {%4}.</translation>
    </message>
    <message>
        <source>Measure the others too, then take a common size.</source>
        <translation>Auch die anderen messen, dann ein gemeinsames Maß nehmen.</translation>
    </message>
    <message>
        <source>Hoop it again, unpick the outer line and stitch it at size. If the stippling does not reach: a new block.</source>
        <translation>Neu einspannen, die Außenlinie auftrennen und auf Maß sticken. Reicht die Füllquiltung nicht: ein neuer Block.</translation>
    </message>
    <message>
        <source>Pin it square on a board, steam it, let it dry and measure again. If that does not help: a new block.</source>
        <translation>Rechtwinklig auf ein Brett stecken, dämpfen, trocknen lassen und neu messen. Hilft das nicht: ein neuer Block.</translation>
    </message>
    <message>
        <source>Zigzag a scrap of sandwich to the short allowance, edge to edge, or put the block at an outer edge.</source>
        <translation>Einen Lagenrest Kante an Kante mit Zickzack an die kurze Zugabe nähen, oder den Block an eine Außenkante legen.</translation>
    </message>
    <message>
        <source>Measure again, %5 first. Do not cut yet.</source>
        <translation>Neu messen, %5 zuerst. Noch nicht schneiden.</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>diagonal from top left</source>
        <extracomment>a diagonal of the block</extracomment>
        <translation>Diagonale von links oben</translation>
    </message>
    <message>
        <source>diagonal from top right</source>
        <extracomment>a diagonal of the block</extracomment>
        <translation>Diagonale von rechts oben</translation>
    </message>
    <message>
        <source>all six</source>
        <translation>alle sechs</translation>
    </message>
    <message>
        <source>Too narrow or crooked</source>
        <translation>Zu schmal oder schief</translation>
    </message>
    <message>
        <source>Spoiled</source>
        <translation>Verdorben</translation>
    </message>
    <message>
        <source>The cloth ran out</source>
        <translation>Der Stoff ging aus</translation>
    </message>
    <message>
        <source>Cloth narrower than planned</source>
        <translation>Der Stoff ist schmaler als geplant</translation>
    </message>
    <message>
        <source>Done already</source>
        <translation>Schon erledigt</translation>
    </message>
    <message>
        <source>Thread or bobbin ran out</source>
        <translation>Garn oder Spule leer</translation>
    </message>
    <message>
        <source>Pleat, hole or broken needle</source>
        <translation>Falte, Loch oder Nadelbruch</translation>
    </message>
    <message>
        <source>Wrong or missing patch</source>
        <translation>Flicken falsch oder fehlt</translation>
    </message>
    <message>
        <source>The power failed</source>
        <translation>Der Strom fiel aus</translation>
    </message>
    <message>
        <source>The strip is torn</source>
        <translation>Der Streifen ist gerissen</translation>
    </message>
    <message>
        <source>The block will not fit</source>
        <translation>Der Block passt nicht mehr</translation>
    </message>
    <message>
        <source>I changed my mind</source>
        <translation>Doch anders entschieden</translation>
    </message>
    <message>
        <source>How much of it is left?</source>
        <translation>Wie viel ist davon übrig?</translation>
    </message>
    <message>
        <source>How wide is it between the selvages?</source>
        <extracomment>usable width of the cloth, between the selvages</extracomment>
        <translation>Wie breit ist er zwischen den Webkanten?</translation>
    </message>
    <message>
        <source>Where is the tear, measured from the zero end?</source>
        <translation>Wo ist der Riss, vom Nullende gemessen?</translation>
    </message>
    <message>
        <source>To make again: %1. It stands in the list once more.</source>
        <translation>%1-mal neu zu machen. Es steht noch einmal in der Liste.</translation>
    </message>
    <message>
        <source>A spare takes the place of %1: nothing is made again.</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;; spare: a block stitched over and above the layout</extracomment>
        <translation>Ein Ersatzblock tritt an die Stelle von %1: Nichts wird neu gemacht.</translation>
    </message>
    <message>
        <source>Block %1 is stitched again, with the same thread lot. It stands next in the list.</source>
        <translation>Block %1 wird neu gestickt, mit derselben Garnpartie. Er steht als Nächstes in der Liste.</translation>
    </message>
    <message>
        <source>Still to cut of %1: {%2} along the selvage.</source>
        <translation>%1: Noch zu schneiden sind {%2} entlang der Webkante.</translation>
    </message>
    <message>
        <source>What is left of %1, {%2}, yields it.</source>
        <translation>%1: Der Rest, {%2}, reicht dafür.</translation>
    </message>
    <message>
        <source>Nothing more is needed of %1.</source>
        <translation>%1: Davon wird nichts mehr gebraucht.</translation>
    </message>
    <message>
        <source>What is left of %1, {%2}, does not yield it.</source>
        <translation>%1: Der Rest, {%2}, gibt es nicht her.</translation>
    </message>
    <message>
        <source>Nobody has measured what is left of %1. Measure it along the selvage before you buy.</source>
        <translation>%1: Der Rest ist noch nicht gemessen. Vor dem Kaufen entlang der Webkante messen.</translation>
    </message>
    <message>
        <source>Buy at least {%2} of %1, of the same lot.</source>
        <translation>%1: mindestens {%2} kaufen, aus derselben Partie.</translation>
    </message>
    <message>
        <source>What is made already stays good.</source>
        <translation>Was schon gemacht ist, bleibt gut.</translation>
    </message>
    <message>
        <source>Counted as done.</source>
        <translation>Als erledigt gezählt.</translation>
    </message>
    <message>
        <source>The bobbin is counted as new from here.</source>
        <translation>Die Spule zählt ab hier als neu.</translation>
    </message>
    <message>
        <source>Needle broken? Find all the pieces before you go on.</source>
        <translation>Nadel gebrochen? Vor dem Weitermachen alle Teile finden.</translation>
    </message>
    <message>
        <source>Blocks lost beyond the tear: %1. They are on record and stand in the list again.</source>
        <translation>Blöcke jenseits des Risses verloren: %1. Sie sind vermerkt und stehen wieder in der Liste.</translation>
    </message>
    <message>
        <source>No stitched block is lost. What no longer fits goes to the next strip.</source>
        <translation>Kein gestickter Block ist verloren. Was nicht mehr passt, kommt auf den nächsten Streifen.</translation>
    </message>
    <message>
        <source>Blocks that go to the next strip: %1.</source>
        <translation>Blöcke für den nächsten Streifen: %1.</translation>
    </message>
    <message>
        <source>It would still fit with a waste tail sewn to the end.</source>
        <extracomment>tail: a waste strip sewn to the end so that the frame has cloth to hold</extracomment>
        <translation>Mit einem ans Ende genähten Hilfsende würde es noch passen.</translation>
    </message>
    <message>
        <source>It would still fit with a gap of {%1}.</source>
        <translation>Mit einer Lücke von {%1} würde es noch passen.</translation>
    </message>
    <message>
        <source>Nothing was changed. What you decide at Fit follows at once; what is cut stays cut.</source>
        <translation>Nichts wurde geändert. Was unter „Planen“ entschieden wird, folgt sofort; was geschnitten ist, bleibt geschnitten.</translation>
    </message>
    <message>
        <source>Hoop strips to cut beyond the plan: %1.</source>
        <translation>Stickstreifen über den Plan hinaus: %1.</translation>
    </message>
    <message>
        <source>Blocks on each new strip: %1 instead of %2.</source>
        <translation>Blöcke auf jedem neuen Streifen: %1 statt %2.</translation>
    </message>
    <message>
        <source>With that measure nothing changes.</source>
        <translation>Mit diesem Maß ändert sich nichts.</translation>
    </message>
    <message>
        <source>The hoop&apos;s sizes are missing: enter what it measures outside, and its stitching field or its opening.</source>
        <extracomment>the ring or frame that holds the cloth under the needle</extracomment>
        <translation>Die Maße des Rahmens fehlen: eingeben, was er außen misst, dazu das Stickfeld oder die Öffnung.</translation>
    </message>
    <message>
        <source>The block goes to the machine at %1, but the hoop stitches no more than %2.</source>
        <extracomment>sent: the size given to the machine, larger than the outline by what the cloth draws up</extracomment>
        <translation>Der Block geht mit %1 an die Maschine, aber der Rahmen stickt nicht mehr als %2.</translation>
    </message>
    <message>
        <source>A sashing of %1 is narrower than the two allowances under it, %2: they would lie double.</source>
        <extracomment>sashing: the strip between two blocks; allowance: cloth outside the stitched line</extracomment>
        <translation>Ein Zwischenstreifen von %1 ist schmaler als die zwei Zugaben darunter, %2: Sie lägen doppelt.</translation>
    </message>
    <message>
        <source>An allowance of %1 is pared too far to hold a seam; %2 is the least.</source>
        <translation>Eine Zugabe von %1 ist zu knapp, um eine Naht zu halten; mindestens %2.</translation>
    </message>
    <message>
        <source>The edge keeps %1 outside the stitched line, but the blocks are trimmed to %2: the cloth is not there.</source>
        <translation>Die Kante behält %1 außerhalb der gestickten Linie, aber die Blöcke sind auf %2 beschnitten: Der Stoff fehlt.</translation>
    </message>
    <message>
        <source>A gap of %1 leaves less than the two seam allowances that come out of it, %2.</source>
        <extracomment>gap: cloth between the outlines of two blocks on one strip</extracomment>
        <translation>Eine Lücke von %1 ist weniger als die zwei Nahtzugaben, die daraus werden, %2.</translation>
    </message>
    <message>
        <source>With a gap of %1 the ring would close on the block before it: the frame reaches %2 beyond the outline.</source>
        <extracomment>reach: how far the hoop&apos;s frame lies beyond the stitched line</extracomment>
        <translation>Mit einer Lücke von %1 schlösse sich der Ring auf dem Block davor: Der Rahmen ragt %2 über den Umriss.</translation>
    </message>
    <message>
        <source>A ring may not lie on a stitched block: it would crush it. Only a magnetic frame may.</source>
        <translation>Ein Ring darf nicht auf einem gestickten Block liegen: Er würde ihn zerdrücken. Das darf nur ein Magnetrahmen.</translation>
    </message>
    <message>
        <source>Not one block fits on the strip: %1 is missing, and %2 with waste tails sewn to both ends.</source>
        <extracomment>waste tail: scrap cloth sewn to a strip&apos;s end so that the hoop can hold it</extracomment>
        <translation>Kein einziger Block passt auf den Streifen: %1 fehlt, und %2 mit Hilfsenden an beiden Enden.</translation>
    </message>
    <message>
        <source>Only %1 is left to fold under on the back; less than %2 cannot be pressed and would be missed by the stitching.</source>
        <extracomment>fold-under: what is turned under along the back sashing</extracomment>
        <translation>Hinten bleibt nur %1 zum Umlegen; weniger als %2 lässt sich nicht bügeln und würde von der Naht verfehlt.</translation>
    </message>
    <message>
        <source>A catch of %1 will not do: keep it between %2 and %3.</source>
        <extracomment>catch: how far the folded edge passes the seam it is caught by</extracomment>
        <translation>Ein Überstand von %1 geht nicht: zwischen %2 und %3 bleiben.</translation>
    </message>
    <message>
        <source>Binding cut %1 wide does not come out of cloth %2 wide.</source>
        <translation>Eine Einfassung von %1 Schnittbreite geht nicht aus Stoff von %2 Breite.</translation>
    </message>
    <message>
        <source>Corners rounded by %1 do not fit on the piece; %2 is the most.</source>
        <translation>Mit %1 gerundete Ecken passen nicht an das Stück; höchstens %2.</translation>
    </message>
    <message>
        <source>The bias wants a square of %1, and the cloth is only %2 wide.</source>
        <extracomment>bias: cloth cut slantwise, which goes round a curve</extracomment>
        <translation>Das Schrägband braucht ein Quadrat von %1, und der Stoff ist nur %2 breit.</translation>
    </message>
    <message>
        <source>A draw-up of %1 is not likely; it lies between 0 % and %2. Measure the test block again.</source>
        <extracomment>draw-up: how much the stitching shrinks the cloth</extracomment>
        <translation>Ein Einzug von %1 ist unwahrscheinlich; er liegt zwischen 0&#xa0;% und %2. Den Probeblock neu messen.</translation>
    </message>
    <message>
        <source>A short sashing is %1 with its spare, longer than its cloth, %2.</source>
        <translation>Ein kurzer Zwischenstreifen misst mit Reserve %1, länger als sein Stoff, %2.</translation>
    </message>
    <message>
        <source>Cloth %1 wide is too narrow to piece the long sashings with their joins at mid-block; %2 is the least.</source>
        <translation>Stoff von %1 Breite ist zu schmal, um die langen Zwischenstreifen mit Ansätzen in Blockmitte zu stückeln; mindestens %2.</translation>
    </message>
    <message>
        <source>Nothing is left for the piece: let less of the table show.</source>
        <translation>Für das Stück bleibt nichts: weniger vom Tisch zeigen.</translation>
    </message>
    <message>
        <source>Washing that takes %1 is not likely; say less than %2.</source>
        <translation>Einlaufen von %1 ist unwahrscheinlich; weniger als %2 angeben.</translation>
    </message>
    <message>
        <source>One block makes a piece of %1, larger than the %2 wanted: allow smaller blocks, or let less of the table show.</source>
        <translation>Ein Block ergibt ein Stück von %1, größer als die gewünschten %2: kleinere Blöcke zulassen oder weniger vom Tisch zeigen.</translation>
    </message>
    <message>
        <source>No block from %1 to %2 goes into a hoop you have: allow other sizes, or enter the hoop that takes them.</source>
        <translation>Kein Block von %1 bis %2 passt in einen der Rahmen: andere Größen zulassen oder den passenden Rahmen eingeben.</translation>
    </message>
    <message>
        <source>That takes %1 blocks or more, and you allow %2: allow more, or larger blocks.</source>
        <translation>Das braucht %1 Blöcke oder mehr, und zugelassen sind %2: mehr zulassen oder größere Blöcke.</translation>
    </message>
    <message>
        <source>The block has %1 of room in the hoop; %2 lets you place it without trying twice.</source>
        <translation>Der Block hat %1 Spiel im Rahmen; mit %2 lässt er sich auf Anhieb anlegen.</translation>
    </message>
    <message>
        <source>The binding&apos;s seam of %1 is deeper than the cloth outside the stitched line, %2: it would cover the line.</source>
        <translation>Die Naht der Einfassung, %1, ist breiter als der Stoff außerhalb der gestickten Linie, %2: Sie würde die Linie verdecken.</translation>
    </message>
    <message>
        <source>A margin of %1 past the hoop is hard to hold; %2 is easier.</source>
        <extracomment>margin: cloth past the hoop&apos;s outside at a strip&apos;s long edges</extracomment>
        <translation>Ein Rand von %1 über den Rahmen ist schwer zu halten; %2 ist leichter.</translation>
    </message>
    <message>
        <source>%1 is left over on each strip; a little more draw-up and the %o2 block will not fit.</source>
        <translation>%1 bleibt auf jedem Streifen übrig; etwas mehr Einzug, und der %o2 Block passt nicht mehr.</translation>
    </message>
    <message>
        <source>Folding on the ruler&apos;s mark leaves a lip of %1 past the seam; more than %2 may lift.</source>
        <extracomment>lip: the part of the fold that stands past the stitching</extracomment>
        <translation>Beim Falten auf den Linealstrich bleibt eine Lippe von %1 über der Naht; mehr als %2 kann abstehen.</translation>
    </message>
    <message>
        <source>The gap pieces are %1 long, shorter than a short sashing with its spare, %2.</source>
        <extracomment>harvested: cut from the gaps between the blocks of a strip</extracomment>
        <translation>Die Lückenstücke sind %1 lang, kürzer als ein kurzer Zwischenstreifen mit Reserve, %2.</translation>
    </message>
    <message>
        <source>The gap of %1 is under the two wide allowances, %2: the blocks cannot be cut apart so.</source>
        <translation>Die Lücke von %1 ist kleiner als die zwei breiten Zugaben, %2: So lassen sich die Blöcke nicht trennen.</translation>
    </message>
    <message>
        <source>The frame lies %1 over the block before it. Pad it, and look for marks.</source>
        <translation>Der Rahmen liegt %1 über dem Block davor. Unterpolstern und auf Abdrücke achten.</translation>
    </message>
    <message>
        <source>The rounded corner cuts %1 into the stippling: stay-stitch beside the line before cutting.</source>
        <extracomment>stippling: the quilting inside a block&apos;s stitched outline; stay-stitch: a row of stitches that holds a cut</extracomment>
        <translation>Die runde Ecke schneidet die Füllquiltung %1 tief an: vor dem Schneiden neben der Linie eine Stütznaht steppen.</translation>
    </message>
    <message>
        <source>A corner of %1 is tight for folded binding; it eases round from %2.</source>
        <translation>Eine Ecke von %1 ist eng für gefaltete Einfassung; ab %2 legt sie sich glatt herum.</translation>
    </message>
    <message>
        <source>Hanging over by only %1, the edge will stick out stiffly; it falls well from %2.</source>
        <translation>Mit nur %1 Überhang steht die Kante steif ab; ab %2 fällt sie gut.</translation>
    </message>
    <message>
        <source>The corners hang %1 past the round table and will stick out; they fall well from %2.</source>
        <translation>Die Ecken hängen %1 über den runden Tisch und stehen ab; ab %2 fallen sie gut.</translation>
    </message>
    <message>
        <source>Is the cut edge still square to the fold?</source>
        <translation>Ist die Schnittkante noch rechtwinklig zum Bruch?</translation>
    </message>
    <message>
        <source>A cross line lies on the fold, the edge just inside both ragged ends.</source>
        <translation>Eine Querlinie liegt auf dem Bruch, die Kante knapp innerhalb beider ausgefranster Enden.</translation>
    </message>
    <message>
        <source>The line touches at both ends.</source>
        <translation>Die Linie berührt an beiden Enden.</translation>
    </message>
    <message>
        <source>Back wrong side up, batting, front right side up, smoothed from the middle.</source>
        <translation>Rückseite, linke Seite oben; Vlies; Vorderseite, rechte Seite oben; von der Mitte aus glatt gestrichen.</translation>
    </message>
    <message>
        <source>Every tick measured from the one zero end, never from the tick before.</source>
        <translation>Jeder Strich vom selben Nullende gemessen, nie vom Strich davor.</translation>
    </message>
    <message>
        <source>Pins out of the hoop, cord clear, bobbin full enough.</source>
        <translation>Nadeln aus dem Rahmen, Kabel frei, Spule voll genug.</translation>
    </message>
    <message>
        <source>Off the hoop, pressed and ten minutes rested before measuring.</source>
        <translation>Aus dem Rahmen, gebügelt und zehn Minuten geruht, dann messen.</translation>
    </message>
    <message>
        <source>Both ends square to the band’s long edge.</source>
        <translation>Beide Enden rechtwinklig zur langen Kante des Bandes.</translation>
    </message>
    <message>
        <source>Measure the gap between the allowances and the distance between the two seams on the back.</source>
        <translation>Den Spalt zwischen den Zugaben und den Abstand der beiden Nähte auf der Rückseite messen.</translation>
    </message>
    <message>
        <source>The web is on the wrong side of the patch.</source>
        <translation>Das Klebevlies liegt auf der linken Seite des Flickens.</translation>
    </message>
    <message>
        <source>Close to the stitches, the topmost patch first.</source>
        <translation>Dicht an den Stichen, der oberste Flicken zuerst.</translation>
    </message>
    <message>
        <source>The line lies on the outer stitches at both corners, not on the echo line.</source>
        <translation>Die Linie liegt an beiden Ecken auf den äußeren Stichen, nicht auf der Echolinie.</translation>
    </message>
    <message>
        <source>Each join stands in the middle of a block, never at a crossing.</source>
        <translation>Jeder Ansatz liegt in der Mitte eines Blocks, nie an einer Kreuzung.</translation>
    </message>
    <message>
        <source>Batting and back peeled off, no stitching in the piece.</source>
        <translation>Vlies und Rückseite abgezogen, keine Stiche im Teil.</translation>
    </message>
    <message>
        <source>Both strips are caught along the whole seam.</source>
        <translation>Beide Streifen sind auf der ganzen Naht gefasst.</translation>
    </message>
    <message>
        <source>All rows are alike in length, or nearly.</source>
        <translation>Alle Reihen sind gleich lang, oder beinahe.</translation>
    </message>
    <message>
        <source>A mark meets each short sashing.</source>
        <translation>Auf jeden kurzen Zwischenstreifen trifft ein Zeichen.</translation>
    </message>
    <message>
        <source>The backing lies flat and is held.</source>
        <translation>Der Rückseitenstoff liegt flach und ist festgesteckt.</translation>
    </message>
    <message>
        <source>Turned, corners out, the opening closed.</source>
        <translation>Gewendet, Ecken ausgeformt, die Öffnung geschlossen.</translation>
    </message>
    <message>
        <source>No join lands on a corner or a sashing’s end.</source>
        <translation>Kein Ansatz fällt auf eine Ecke oder ein Streifenende.</translation>
    </message>
    <message>
        <source>Both diagonals are alike.</source>
        <translation>Beide Diagonalen sind gleich.</translation>
    </message>
    <message>
        <source>As many pins out as went in.</source>
        <translation>So viele Nadeln heraus wie hinein.</translation>
    </message>
    <message>
        <source>Close the blade between cuts. Roll away from you. Fingers well back from the ruler&apos;s edge.</source>
        <translation>Die Klinge zwischen den Schnitten schließen. Vom Körper weg rollen. Finger weit hinter die Linealkante.</translation>
    </message>
    <message>
        <source>Iron on its stand, off afterwards; steam burns.</source>
        <translation>Bügeleisen auf den Ständer, danach aus; Dampf verbrüht.</translation>
    </message>
    <message>
        <source>Spray by an open window, away from flame.</source>
        <translation>Am offenen Fenster sprühen, fern von Flammen.</translation>
    </message>
    <message>
        <source>Hoop flat on the table, machine stopped, scissor points up.</source>
        <translation>Rahmen flach auf den Tisch, Maschine steht, Scherenspitzen nach oben.</translation>
    </message>
    <message>
        <source>Not a hot mat. Keep it 12 in (30 cm) from candles.</source>
        <translation>Kein Topfuntersetzer. 30&#xa0;cm (12 in) Abstand zu Kerzen.</translation>
    </message>
    <message>
        <source>Count the pins in and count them out.</source>
        <translation>Nadeln beim Stecken und beim Ziehen zählen.</translation>
    </message>
    <message>
        <source>the stitched outline</source>
        <extracomment>the block&apos;s outer stitched line</extracomment>
        <translation>den gestickten Umriss</translation>
    </message>
    <message>
        <source>the fold</source>
        <translation>den Bruch</translation>
    </message>
    <message>
        <source>the cut edge</source>
        <translation>die Schnittkante</translation>
    </message>
    <message>
        <source>The fold on a line of the mat, the cut along another.</source>
        <translation>Den Bruch auf eine Linie der Matte legen, an einer anderen schneiden.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; with a cross line on the fold.</source>
        <translation>„%1“ mit einer Querlinie auf dem Bruch.</translation>
    </message>
    <message>
        <source>By the mat&apos;s lines: %1 from %2, at both ends.</source>
        <translation>Nach den Mattenlinien: %1 bis an %2, an beiden Enden.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; with its %2 line on %3, &quot;%4&quot; against it.</source>
        <extracomment>two rulers laid side by side; &quot;%1&quot; and &quot;%4&quot; are their names</extracomment>
        <translation>„%1“ mit der Linie %2 auf %3 legen, „%4“ daran.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; with its %2 line on %3.</source>
        <translation>„%1“ mit der Linie %2 auf %3.</translation>
    </message>
    <message>
        <source>Stop the blade, slide the ruler along, go on.</source>
        <extracomment>fence: the ruler the blade follows, shorter than the cut</extracomment>
        <translation>Die Klinge anhalten, das Lineal weiterschieben, weiter.</translation>
    </message>
    <message>
        <source>Cut along the second; no daylight between them.</source>
        <translation>Am zweiten entlang schneiden; kein Spalt dazwischen.</translation>
    </message>
    <message>
        <source>%1 layers.</source>
        <translation>%1 Lagen.</translation>
    </message>
    <message>
        <source>: %1 by %2.</source>
        <extracomment>width by length of a piece</extracomment>
        <translation>: %1 mal %2.</translation>
    </message>
    <message>
        <source>(For the trial.)</source>
        <translation>(Für die Probe.)</translation>
    </message>
    <message>
        <source>Square the end of %1 to its fold.</source>
        <translation>Das Ende rechtwinklig zum Bruch schneiden: %1.</translation>
    </message>
    <message>
        <source>Cut a hoop strip of %1.</source>
        <extracomment>hoop strip: the strip of cloth that goes through the hoop, several blocks to a strip</extracomment>
        <translation>Einen Stickstreifen schneiden: %1.</translation>
    </message>
    <message>
        <source>Cut a sashing band of %1.</source>
        <extracomment>band: a strip as long as the cloth is wide, cut across later into sashings</extracomment>
        <translation>Ein Band für Zwischenstreifen schneiden: %1.</translation>
    </message>
    <message>
        <source>Cut a short sashing from a band of %1.</source>
        <translation>Einen kurzen Zwischenstreifen vom Band schneiden: %1.</translation>
    </message>
    <message>
        <source>Cut a long sashing from a band of %1.</source>
        <translation>Einen langen Zwischenstreifen vom Band schneiden: %1.</translation>
    </message>
    <message>
        <source>Cut a piece of a long sashing from a band of %1.</source>
        <translation>Ein Teil eines langen Zwischenstreifens vom Band schneiden: %1.</translation>
    </message>
    <message>
        <source>Sew the pieces to one long sashing of %1.</source>
        <translation>Die Teile zu einem langen Zwischenstreifen nähen: %1.</translation>
    </message>
    <message>
        <source>Cut a short sashing of %1 from a gap piece.</source>
        <translation>Einen kurzen Zwischenstreifen aus einem Lückenstück schneiden: %1.</translation>
    </message>
    <message>
        <source>Cut a patch of %1.</source>
        <translation>Einen Flicken schneiden: %1.</translation>
    </message>
    <message>
        <source>Cut a binding strip of %1.</source>
        <translation>Einen Einfassungsstreifen schneiden: %1.</translation>
    </message>
    <message>
        <source>Cut the backing of %1.</source>
        <translation>Den Rückseitenstoff schneiden: %1.</translation>
    </message>
    <message>
        <source>Cut a square of %1 for bias binding.</source>
        <extracomment>bias: cut slantwise, for a binding that goes round curves</extracomment>
        <translation>Ein Quadrat für Schrägband schneiden: %1.</translation>
    </message>
    <message>
        <source>Layer back, batting and front: one hoop strip.</source>
        <translation>Rückseite, Vlies und Vorderseite schichten: ein Stickstreifen.</translation>
    </message>
    <message>
        <source>Mark the strip&apos;s centre line and its places.</source>
        <translation>Die Mittellinie des Streifens und seine Stellen anzeichnen.</translation>
    </message>
    <message>
        <source>Stitch the test block.</source>
        <translation>Den Probeblock sticken.</translation>
    </message>
    <message>
        <source>Measure the test block&apos;s outline, both ways.</source>
        <translation>Den Umriss des Probeblocks messen, in beide Richtungen.</translation>
    </message>
    <message>
        <source>Make the test join and measure it.</source>
        <translation>Die Probeverbindung machen und messen.</translation>
    </message>
    <message>
        <source>Stitch a block.</source>
        <translation>Einen Block sticken.</translation>
    </message>
    <message>
        <source>Trim the patches with scissors, the topmost first.</source>
        <translation>Die Flicken mit der Schere beschneiden, den obersten zuerst.</translation>
    </message>
    <message>
        <source>Press the block, now that its patches are trimmed.</source>
        <translation>Den Block bügeln, sobald seine Flicken beschnitten sind.</translation>
    </message>
    <message>
        <source>Press the test block and let it rest.</source>
        <translation>Den Probeblock bügeln und ruhen lassen.</translation>
    </message>
    <message>
        <source>Trim the block&apos;s four sides, measuring from the stitched outline.</source>
        <translation>Die vier Seiten des Blocks beschneiden, vom gestickten Umriss gemessen.</translation>
    </message>
    <message>
        <source>Join two blocks with a short sashing: sew, press, sew, fold, stitch in the ditch.</source>
        <extracomment>ditch: the line where the sashing meets the block</extracomment>
        <translation>Zwei Blöcke mit einem kurzen Zwischenstreifen verbinden: nähen, bügeln, nähen, umlegen, im Nahtschatten nähen.</translation>
    </message>
    <message>
        <source>Measure the row&apos;s length.</source>
        <translation>Die Länge der Reihe messen.</translation>
    </message>
    <message>
        <source>Join two rows with a long sashing, mark to mark.</source>
        <translation>Zwei Reihen mit einem langen Zwischenstreifen verbinden, Zeichen auf Zeichen.</translation>
    </message>
    <message>
        <source>Lay the backing and hold it.</source>
        <translation>Den Rückseitenstoff auflegen und feststecken.</translation>
    </message>
    <message>
        <source>Square the piece, measuring from its sashings.</source>
        <translation>Das Stück rechtwinklig schneiden, von den Zwischenstreifen aus gemessen.</translation>
    </message>
    <message>
        <source>Sew the binding on.</source>
        <translation>Die Einfassung annähen.</translation>
    </message>
    <message>
        <source>Take a last look: pins counted, threads gone, measured.</source>
        <translation>Ein letzter Blick: Nadeln zählen, Fäden abschneiden, messen.</translation>
    </message>
    <message>
        <source>Square the end</source>
        <translation>Ende begradigen</translation>
    </message>
    <message>
        <source>Strip %1 of %2</source>
        <translation>Streifen %1 von %2</translation>
    </message>
    <message>
        <source>Band %1 of %2</source>
        <translation>Band %1 von %2</translation>
    </message>
    <message>
        <source>Short sashing %1 of %2</source>
        <translation>Kurzer Streifen %1 von %2</translation>
    </message>
    <message>
        <source>Long sashing %1 of %2</source>
        <translation>Langer Streifen %1 von %2</translation>
    </message>
    <message>
        <source>Piece %1 of %2</source>
        <translation>Teil %1 von %2</translation>
    </message>
    <message>
        <source>Patch %1 of %2</source>
        <translation>Flicken %1 von %2</translation>
    </message>
    <message>
        <source>Binding strip %1 of %2</source>
        <translation>Einfassungsstreifen %1 von %2</translation>
    </message>
    <message>
        <source>Backing %1 of %2</source>
        <translation>Rückseite %1 von %2</translation>
    </message>
    <message>
        <source>Square for bias %1 of %2</source>
        <translation>Schrägquadrat %1 von %2</translation>
    </message>
    <message>
        <source>Test block %1 of %2</source>
        <translation>Probeblock %1 von %2</translation>
    </message>
    <message>
        <source>Test block, measuring</source>
        <translation>Probeblock, messen</translation>
    </message>
    <message>
        <source>Test join</source>
        <translation>Probeverbindung</translation>
    </message>
    <message>
        <source>Block %1 of %2</source>
        <translation>Block %1 von %2</translation>
    </message>
    <message>
        <source>Block %1 of %2, patches</source>
        <translation>Block %1 von %2, Flicken</translation>
    </message>
    <message>
        <source>Block %1 of %2, pressing</source>
        <translation>Block %1 von %2, bügeln</translation>
    </message>
    <message>
        <source>Test block, pressing</source>
        <translation>Probeblock, bügeln</translation>
    </message>
    <message>
        <source>Block %1 of %2, apart</source>
        <extracomment>a block still in its strip is cut off it, roughly</extracomment>
        <translation>Block %1 von %2, abtrennen</translation>
    </message>
    <message>
        <source>Short join %1 of %2</source>
        <translation>Kurze Verbindung %1 von %2</translation>
    </message>
    <message>
        <source>Row %1 of %2</source>
        <translation>Reihe %1 von %2</translation>
    </message>
    <message>
        <source>Long join %1 of %2</source>
        <translation>Lange Verbindung %1 von %2</translation>
    </message>
    <message>
        <source>Piece %1 of %2, squaring</source>
        <translation>Stück %1 von %2, begradigen</translation>
    </message>
    <message>
        <source>Piece %1 of %2, binding</source>
        <translation>Stück %1 von %2, einfassen</translation>
    </message>
    <message>
        <source>Piece %1 of %2, last look</source>
        <translation>Stück %1 von %2, letzter Blick</translation>
    </message>
    <message>
        <source>Cut, blade closed</source>
        <translation>Geschnitten, Klinge&#xa0;zu</translation>
    </message>
    <message>
        <source>Straight, blade closed</source>
        <translation>Begradigt, Klinge&#xa0;zu</translation>
    </message>
    <message>
        <source>Sewn and pressed</source>
        <translation>Genäht und gebügelt</translation>
    </message>
    <message>
        <source>Strip layered</source>
        <translation>Streifen geschichtet</translation>
    </message>
    <message>
        <source>Stitched</source>
        <translation>Gestickt</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Tried and measured</source>
        <translation>Erprobt und gemessen</translation>
    </message>
    <message>
        <source>All trimmed</source>
        <translation>Alles beschnitten</translation>
    </message>
    <message>
        <source>Pressed</source>
        <translation>Gebügelt</translation>
    </message>
    <message>
        <source>Trimmed, blade closed</source>
        <translation>Beschnitten, Klinge&#xa0;zu</translation>
    </message>
    <message>
        <source>Joined</source>
        <translation>Verbunden</translation>
    </message>
    <message>
        <source>Laid</source>
        <translation>Aufgelegt</translation>
    </message>
    <message>
        <source>Turned and closed</source>
        <translation>Gewendet und zu</translation>
    </message>
    <message>
        <source>Squared, blade closed</source>
        <translation>Begradigt, Klinge&#xa0;zu</translation>
    </message>
    <message>
        <source>Bound</source>
        <translation>Eingefasst</translation>
    </message>
    <message>
        <source>All is well</source>
        <translation>Alles ist gut</translation>
    </message>
    <message>
        <source>the cloth</source>
        <translation>der Stoff</translation>
    </message>
    <message>
        <source>Fit</source>
        <extracomment>station: deciding table, blocks, hoop and edge</extracomment>
        <translation>Planen</translation>
    </message>
    <message>
        <source>Shop</source>
        <extracomment>station: what to buy</extracomment>
        <translation>Kaufen</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Schneiden</translation>
    </message>
    <message>
        <source>Hoop</source>
        <extracomment>station: stitching in the hoop</extracomment>
        <translation>Sticken</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Trimmen</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Verbinden</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>side cut</source>
        <extracomment>one of a block&apos;s four sides was cut</extracomment>
        <translation>Seite geschnitten</translation>
    </message>
    <message>
        <source>Two rulers.</source>
        <extracomment>read out before where the rulers lie</extracomment>
        <translation>Zwei Lineale.</translation>
    </message>
    <message>
        <source>back strip doubled</source>
        <extracomment>the back strip folded lengthwise before it is sewn on, so that nothing is turned under</extracomment>
        <translation>Streifen hinten doppelt</translation>
    </message>
    <message>
        <source>scallops’ depth</source>
        <extracomment>scallop: one of the round lobes an edge can be cut into</extracomment>
        <translation>Tiefe der Bögen</translation>
    </message>
    <message>
        <source>scallops along</source>
        <translation>Bögen längs</translation>
    </message>
    <message>
        <source>scallops across</source>
        <translation>Bögen quer</translation>
    </message>
    <message>
        <source>circle or round ends, on bias</source>
        <translation>Kreis oder runde Enden, mit Schrägband</translation>
    </message>
    <message>
        <source>scalloped, on bias</source>
        <extracomment>the edge cut into round lobes</extracomment>
        <translation>Bögen, mit Schrägband</translation>
    </message>
    <message>
        <source>two tablets together</source>
        <extracomment>the work of another tablet put together with what is here</extracomment>
        <translation>zwei Tablets zusammen</translation>
    </message>
    <message>
        <source>colour of a cloth</source>
        <translation>Farbe eines Stoffs</translation>
    </message>
    <message>
        <source>order of the patches</source>
        <translation>Folge der Flicken</translation>
    </message>
    <message>
        <source>kits of the class changed</source>
        <translation>Packungen des Kurses geändert</translation>
    </message>
    <message>
        <source>cloth you have changed</source>
        <translation>vorhandener Stoff geändert</translation>
    </message>
    <message>
        <source>one arc along</source>
        <extracomment>arc: the curved length of one scallop</extracomment>
        <translation>ein Bogen längs</translation>
    </message>
    <message>
        <source>one arc across</source>
        <translation>ein Bogen quer</translation>
    </message>
    <message>
        <source>Make the scallops %1 deep.</source>
        <translation>Die Bögen %1 tief machen.</translation>
    </message>
    <message>
        <source>Cut into it</source>
        <extracomment>the blade went inside the allowance</extracomment>
        <translation>In den Block geschnitten</translation>
    </message>
    <message>
        <source>It measures wrong</source>
        <translation>Das Maß stimmt nicht</translation>
    </message>
    <message>
        <source>Sewn wrong</source>
        <translation>Falsch genäht</translation>
    </message>
    <message>
        <source>Missed the fold</source>
        <extracomment>the stitching in the ditch did not catch the folded edge on the back</extracomment>
        <translation>Faltkante nicht gefasst</translation>
    </message>
    <message>
        <source>A block is lost or given away</source>
        <translation>Ein Block ist verloren oder verschenkt</translation>
    </message>
    <message>
        <source>How much is left outside the stitched line, at the narrowest?</source>
        <translation>Wie viel bleibt außerhalb der gestickten Linie, an der schmalsten Stelle?</translation>
    </message>
    <message>
        <source>How wide is the block, edge to edge?</source>
        <translation>Wie breit ist der Block, von Kante zu Kante?</translation>
    </message>
    <message>
        <source>How long is the row, raw end to raw end?</source>
        <translation>Wie lang ist die Reihe, von Schnittende zu Schnittende?</translation>
    </message>
    <message>
        <source>How long is the side that is off, edge to edge?</source>
        <translation>Wie lang ist die Seite, die nicht stimmt, von Kante zu Kante?</translation>
    </message>
    <message>
        <source>{%1} is enough. Sew that side by the stitched line, not by the raw edge.</source>
        <extracomment>allowance: the cloth left outside a block&apos;s stitched line</extracomment>
        <translation>{%1} genügen. Diese Seite nach der gestickten Linie nähen, nicht nach der Schnittkante.</translation>
    </message>
    <message>
        <source>Or lay the block so that this side comes to the outer edge, under the binding.</source>
        <translation>Oder den Block so legen, dass diese Seite an die Außenkante kommt, unter die Einfassung.</translation>
    </message>
    <message>
        <source>Off by {%1}: up to {%2} that is good work. Go on.</source>
        <translation>{%1} daneben: bis {%2} ist das gute Arbeit. Weiter.</translation>
    </message>
    <message>
        <source>{%1} too large: lay the ruler on the stitched line and trim again.</source>
        <translation>{%1} zu groß: das Lineal auf die gestickte Linie legen und neu beschneiden.</translation>
    </message>
    <message>
        <source>{%1} too small. It can be used: sew it by the stitched line, not by the raw edge.</source>
        <translation>{%1} zu klein. Er ist brauchbar: nach der gestickten Linie nähen, nicht nach der Schnittkante.</translation>
    </message>
    <message>
        <source>Enter the four sides and both diagonals under “Measure the piece”: it says where to cut.</source>
        <translation>Unter „Das Stück messen“ die vier Seiten und beide Diagonalen eingeben: Dort steht, wo zu schneiden ist.</translation>
    </message>
    <message>
        <source>Sew it again {%1} deep.</source>
        <translation>Mit {%1} neu nähen.</translation>
    </message>
    <message>
        <source>The strip serves again if it is not frayed or stretched; otherwise make it again.</source>
        <translation>Der Streifen dient wieder, wenn er nicht ausgefranst oder gedehnt ist; sonst neu machen.</translation>
    </message>
    <message>
        <source>Cut {%2} × {%3} of %1 for it: from what the sashing strips left over, or across the cloth.</source>
        <extracomment>a strip of sashing cut to length</extracomment>
        <translation>%1: dafür {%2} × {%3} schneiden, aus dem Rest der Zwischenstreifen oder quer über den Stoff.</translation>
    </message>
    <message>
        <source>Draw the binding over its seam on the back and close the place by hand; no need to unpick.</source>
        <translation>Die Einfassung hinten über ihre Naht ziehen und die Stelle von Hand schließen; auftrennen ist nicht nötig.</translation>
    </message>
    <message>
        <source>No good block of that name is on record: nothing was changed.</source>
        <translation>Kein guter Block dieses Namens ist verzeichnet: Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>So many scallops cannot be %1 deep: no more than %2.</source>
        <translation>So viele Bögen können nicht %1 tief sein: höchstens %2.</translation>
    </message>
    <message>
        <source>Doubled, the back strip catches only %1 past the seam; at least %2 holds.</source>
        <extracomment>doubled: folded lengthwise first, so that its fold is ready made</extracomment>
        <translation>Doppelt gelegt steht der hintere Streifen nur %1 über die Naht hinaus; erst ab %2 hält er.</translation>
    </message>
    <message>
        <source>Scallops %1 deep cut into the stippling: they need %2 of cloth outside the outline, and there is %3. Stay-stitch first.</source>
        <extracomment>scallop: one of the round lobes the edge is cut into; its depth is measured from the raw edge</extracomment>
        <translation>Bögen von %1 Tiefe schneiden die Füllquiltung an: Sie brauchen %2 Stoff außerhalb des Umrisses, vorhanden sind %3. Zuerst eine Stütznaht steppen.</translation>
    </message>
    <message>
        <source>Between scallops %1 deep the binding comes close to the outline: %2 of cloth outside it would clear it, and there is %3.</source>
        <translation>Zwischen Bögen von %1 Tiefe kommt die Einfassung nah an den Umriss: Mit %2 Stoff außerhalb bliebe er frei, vorhanden sind %3.</translation>
    </message>
    <message>
        <source>A scallop’s arc of %1 is tight for folded binding; it eases round from %2.</source>
        <translation>Ein Bogen mit %1 Radius ist eng für gefaltete Einfassung; ab %2 legt sie sich glatt herum.</translation>
    </message>
    <message>
        <source>The band may be wider than the piece: then trim its long side too.</source>
        <translation>Ist das Band breiter als das Teil, auch die lange Seite beschneiden.</translation>
    </message>
    <message>
        <source>Cut a band of %1 right across.</source>
        <translation>Ein Band über die ganze Breite schneiden: %1.</translation>
    </message>
    <message>
        <source>frame, as seen</source>
        <extracomment>frame: a strip of sashing all round the piece, under the binding</extracomment>
        <translation>Umrandung, sichtbar</translation>
    </message>
    <message>
        <source>frame strip, cut</source>
        <translation>Umrandungsstreifen, Zuschnitt</translation>
    </message>
    <message>
        <source>batting in the frame</source>
        <translation>Vlies in der Umrandung</translation>
    </message>
    <message>
        <source>frame, left and right</source>
        <translation>Umrandung, links und rechts</translation>
    </message>
    <message>
        <source>frame, top and bottom</source>
        <translation>Umrandung, oben und unten</translation>
    </message>
    <message>
        <source>With %1 outside the stitched line nothing of the frame would be seen: it needs more than %2.</source>
        <extracomment>frame: a strip of sashing all round the piece, under the binding</extracomment>
        <translation>Mit %1 außerhalb der gestickten Linie wäre von der Umrandung nichts zu sehen: Sie braucht mehr als %2.</translation>
    </message>
    <message>
        <source>Both strips are caught; the batting meets the block’s own and does not lie over it.</source>
        <translation>Beide Streifen sind gefasst; das Vlies stößt an das des Blocks und liegt nicht darüber.</translation>
    </message>
    <message>
        <source>No join of a frame strip lands on a corner or a sashing’s end.</source>
        <translation>Kein Ansatz eines Umrandungsstreifens fällt auf eine Ecke oder ein Streifenende.</translation>
    </message>
    <message>
        <source>Cut a frame strip of %1.</source>
        <extracomment>frame: a strip of sashing all round the piece, under the binding</extracomment>
        <translation>Einen Umrandungsstreifen schneiden: %1.</translation>
    </message>
    <message>
        <source>Cut a strip of %1 to fill the frame.</source>
        <translation>Einen Streifen als Füllung der Umrandung schneiden: %1.</translation>
    </message>
    <message>
        <source>Sew the frame to the left and the right, and lay batting in.</source>
        <translation>Die Umrandung links und rechts annähen und Vlies einlegen.</translation>
    </message>
    <message>
        <source>Sew the frame to the top and the bottom, and lay batting in.</source>
        <translation>Die Umrandung oben und unten annähen und Vlies einlegen.</translation>
    </message>
    <message>
        <source>Square the piece with its frame.</source>
        <translation>Das Stück mit seiner Umrandung rechtwinklig schneiden.</translation>
    </message>
    <message>
        <source>Frame strip %1 of %2</source>
        <translation>Umrandungsstreifen %1 von %2</translation>
    </message>
    <message>
        <source>Batting strip %1 of %2</source>
        <translation>Vliesstreifen %1 von %2</translation>
    </message>
    <message>
        <source>Piece %1 of %2, frame left and right</source>
        <translation>Stück %1 von %2, Umrandung links und rechts</translation>
    </message>
    <message>
        <source>Piece %1 of %2, frame top and bottom</source>
        <translation>Stück %1 von %2, Umrandung oben und unten</translation>
    </message>
    <message>
        <source>Piece %1 of %2, squaring with its frame</source>
        <translation>Stück %1 von %2, mit Umrandung begradigen</translation>
    </message>
    <message>
        <source>Keep strong magnets away from implants. With a pacemaker or any implant ask your doctor first; as far off as the frame’s maker says and never under 6 in (15 cm), off lap and chest. They pinch: fingers outside the edge. Keep children and cards away, and this tablet 6 in (15 cm) off: it may go dark.</source>
        <translation>Starke Magnete von Implantaten fernhalten. Mit Herzschrittmacher oder anderem Implantat zuerst den Arzt fragen; so weit weg, wie der Hersteller des Rahmens sagt, nie unter 15&#xa0;cm (6 in), nicht auf Schoß oder Brust. Sie quetschen: Finger außerhalb des Rands. Kinder und Karten fernhalten, dieses Tablet 15&#xa0;cm (6 in) weit weg: Es kann dunkel werden.</translation>
    </message>
    <message>
        <source>Pins out before the needle. Cord, hair and sleeves clear.</source>
        <translation>Stecknadeln heraus, bevor die Nadel kommt. Kabel, Haare und Ärmel fernhalten.</translation>
    </message>
    <message>
        <source>a leaf adds</source>
        <extracomment>a leaf is the board laid into a table to lengthen it</extracomment>
        <translation>eine Einlegeplatte verlängert um</translation>
    </message>
    <message>
        <source>fitted with the leaf</source>
        <translation>angepasst, Einlegeplatte</translation>
    </message>
    <message>
        <source>out</source>
        <translation>herausgenommen</translation>
    </message>
    <message>
        <source>in</source>
        <translation>eingelegt</translation>
    </message>
    <message>
        <source>batting’s packages changed</source>
        <translation>Vliespakete geändert</translation>
    </message>
    <message>
        <source>table showing, leaf in</source>
        <translation>Tisch sichtbar, mit Einlegeplatte</translation>
    </message>
    <message>
        <source>leaf in: at the corner</source>
        <translation>mit Einlegeplatte: an der Ecke</translation>
    </message>
    <message>
        <source>table showing, leaf out</source>
        <translation>Tisch sichtbar, ohne Einlegeplatte</translation>
    </message>
    <message>
        <source>leaf out: at the corner</source>
        <translation>ohne Einlegeplatte: an der Ecke</translation>
    </message>
    <message>
        <source>With the leaf in, the ends hang over by only %1 and will stick out stiffly; they fall well from %2.</source>
        <translation>Mit Einlegeplatte hängen die Enden nur %1 über und stehen steif ab; ab %2 fallen sie gut.</translation>
    </message>
    <message>
        <source>With the leaf out, the ends hang over by only %1 and will stick out stiffly; they fall well from %2.</source>
        <translation>Ohne Einlegeplatte hängen die Enden nur %1 über und stehen steif ab; ab %2 fallen sie gut.</translation>
    </message>
    <message>
        <source>Strips lie side by side: cut across first, then each to its length.</source>
        <translation>Streifen liegen nebeneinander: erst quer schneiden, dann jeden auf seine Länge.</translation>
    </message>
    <message>
        <source>leaf</source>
        <extracomment>the board laid in to make a table longer</extracomment>
        <translation>Einlegeplatte</translation>
    </message>
    <message>
        <source>No mats of %1 × %2 lie on this table: it would have to be at least %1 long and %3 wide. Ask for the smaller ones, or for one piece.</source>
        <extracomment>mats: place mats, each laid at the table&apos;s edge before one who eats</extracomment>
        <translation>Auf diesen Tisch passen keine Tischsets von %1 × %2: Er müsste mindestens %1 lang und %3 breit sein. Kleinere wählen oder ein einziges Stück.</translation>
    </message>
    <message>
        <source>No mats of %1 × %2 lie on this round table: it would have to be at least %3 across. Ask for the smaller ones, or for one piece.</source>
        <translation>Auf diesen runden Tisch passen keine Tischsets von %1 × %2: Sein Durchmesser müsste mindestens %3 sein. Kleinere wählen oder ein einziges Stück.</translation>
    </message>
    <message>
        <source>All layouts near that size come out too large for %1 mats on this table: ask for fewer, or allow block sizes on every mark.</source>
        <translation>Alle Aufteilungen nahe dieser Größe werden für %1 Tischsets auf diesem Tisch zu groß: weniger wählen, oder Blockgrößen auf jedem Strich zulassen.</translation>
    </message>
    <message>
        <source>batting in the sashings</source>
        <extracomment>batting laid between the two allowances under a wide sashing</extracomment>
        <translation>Vlies in den Zwischenstreifen</translation>
    </message>
    <message>
        <source>Cut a strip of %1 to fill the sashings.</source>
        <translation>Einen Streifen als Füllung der Zwischenstreifen schneiden: %1.</translation>
    </message>
    <message>
        <source>One side is tilted by {%1}: %7.</source>
        <extracomment>%7 is that side of the block: &quot;right&quot;</extracomment>
        <translation>Eine Seite ist um {%1} geneigt: %7.</translation>
    </message>
    <message>
        <source>One end is wider: %7. Each side tilts by {%1}.</source>
        <extracomment>%7 is the wider end of the block: &quot;top&quot;</extracomment>
        <translation>Ein Ende ist breiter: %7. Jede Seite ist um {%1} geneigt.</translation>
    </message>
    <message>
        <source>Not all six are read yet.</source>
        <extracomment>of a block&apos;s four sides and two diagonals some were not measured yet</extracomment>
        <translation>Noch sind nicht alle sechs gemessen.</translation>
    </message>
    <message>
        <source>Split the lean: turn the ruler by half of it, about the middle of the block.</source>
        <translation>Die Schiefe teilen: das Lineal um die halbe Schiefe drehen, um die Mitte des Blocks.</translation>
    </message>
    <message>
        <source>Cut that side parallel to the one across from it; its stitches go into the seam. Unpick what shows.</source>
        <translation>Diese Seite parallel zur gegenüberliegenden schneiden; ihre Stiche kommen in die Naht. Was sichtbar bleibt, auftrennen.</translation>
    </message>
    <message>
        <source>Cut both sides square to the ends; their stitches go into the seams. Unpick what shows.</source>
        <translation>Beide Seiten im rechten Winkel zu den Enden schneiden; ihre Stiche kommen in die Nähte. Was sichtbar bleibt, auftrennen.</translation>
    </message>
    <message>
        <source>Make it again: the same place on a strip, the same thread lot.</source>
        <translation>Neu machen: dieselbe Stelle eines Streifens, dieselbe Garnpartie.</translation>
    </message>
    <message>
        <source>Still to read: %6. Do not cut yet.</source>
        <extracomment>%6 lists the sides and diagonals that were not measured: &quot;left, diagonal from top right&quot;</extracomment>
        <translation>Noch zu messen: %6. Noch nicht schneiden.</translation>
    </message>
    <message>
        <source>Make the test join, lay its batting between the allowances, press it and measure it.</source>
        <extracomment>between the allowances: under the wide sashing, from one block&apos;s allowance to the other&apos;s</extracomment>
        <translation>Die Probeverbindung machen, ihr Vlies zwischen die Zugaben legen, bügeln und messen.</translation>
    </message>
    <message>
        <source>Cut a piece of %1 to fill the test join, as long as its strips.</source>
        <extracomment>batting laid into the sashing of the test join; %1 is the batting</extracomment>
        <translation>Ein Teil als Füllung der Probeverbindung schneiden, so lang wie ihre Streifen: %1.</translation>
    </message>
    <message>
        <source>Batting for the test join</source>
        <translation>Vlies für die Probeverbindung</translation>
    </message>
    <message>
        <source>Measure the gap beside the batting and the distance between the two seams on the back.</source>
        <extracomment>batting: laid into the wide sashing of the test join</extracomment>
        <translation>Den Spalt neben dem Vlies und den Abstand der beiden Nähte auf der Rückseite messen.</translation>
    </message>
    <message>
        <source>place mats</source>
        <extracomment>place mats: how many are made</extracomment>
        <translation>Tischsets</translation>
    </message>
    <message>
        <source>Along the selvage %1 of %2</source>
        <extracomment>a band that runs along the selvage, %1 its number, of %2</extracomment>
        <translation>An der Webkante %1 von %2</translation>
    </message>
    <message>
        <source>Fold it once, cut end on cut end. First cut the selvage off straight: the bands are measured from there.</source>
        <extracomment>strips along the selvage; the cloth is folded across, so that its two cut ends meet</extracomment>
        <translation>Einmal falten, Schnittende auf Schnittende. Zuerst die Webkante gerade abschneiden: Von dort werden die Bänder gemessen.</translation>
    </message>
    <message>
        <source>In one layer. First cut the selvage off straight: the bands are measured from there.</source>
        <translation>In einer Lage. Zuerst die Webkante gerade abschneiden: Von dort werden die Bänder gemessen.</translation>
    </message>
    <message>
        <source>Cut a band of %1 along the selvage.</source>
        <extracomment>the band runs along the cloth&apos;s selvage instead of across the cloth</extracomment>
        <translation>Ein Band entlang der Webkante schneiden: %1.</translation>
    </message>
    <message>
        <source>Block %1, patches</source>
        <translation>Block %1, Flicken</translation>
    </message>
    <message>
        <source>Block %1, pressing</source>
        <translation>Block %1, bügeln</translation>
    </message>
    <message>
        <source>Block %1, apart</source>
        <extracomment>a block still in its strip is cut off it, roughly</extracomment>
        <translation>Block %1, abtrennen</translation>
    </message>
    <message>
        <source>From a band of %1: trim its long side too.</source>
        <extracomment>band: a strip right across the cloth that the next piece is cut from; %1 its width</extracomment>
        <translation>Aus einem Band von %1: auch die lange Seite beschneiden.</translation>
    </message>
    <message>
        <source>From a band of %1.</source>
        <translation>Aus einem Band von %1.</translation>
    </message>
    <message>
        <source>%1 from a band of %2: %3 measured off.</source>
        <extracomment>so many pieces from a band of this width, each so long along it</extracomment>
        <translation>%1 aus einem Band von %2: %3 abmessen.</translation>
    </message>
    <message>
        <source>front cloth</source>
        <translation>Vorderseitenstoff</translation>
    </message>
    <message>
        <source>back cloth</source>
        <extracomment>the cloth of the back</extracomment>
        <translation>Rückseitenstoff</translation>
    </message>
    <message>
        <source>patch cloth</source>
        <extracomment>the cloth of the appliquéd patches</extracomment>
        <translation>Flickenstoff</translation>
    </message>
    <message>
        <source>sashing cloth, front</source>
        <extracomment>the strips between the blocks</extracomment>
        <translation>Stoff der Zwischenstreifen, vorn</translation>
    </message>
    <message>
        <source>sashing cloth, back</source>
        <translation>Stoff der Zwischenstreifen, hinten</translation>
    </message>
    <message>
        <source>binding cloth</source>
        <translation>Einfassstoff</translation>
    </message>
    <message>
        <source>%1 inside the hoop is more than it measures outside, %2: the needle would meet the frame. Measure both again.</source>
        <translation>%1 innen sind mehr, als der Rahmen außen misst (%2): Die Nadel träfe den Rahmen. Beides neu messen.</translation>
    </message>
    <message>
        <source>Blade</source>
        <translation>Klinge</translation>
    </message>
    <message>
        <source>Magnets</source>
        <translation>Magnete</translation>
    </message>
    <message>
        <source>Needle</source>
        <translation>Nadel</translation>
    </message>
    <message>
        <source>Hot iron</source>
        <translation>Bügeleisen</translation>
    </message>
    <message>
        <source>Spray</source>
        <translation>Sprühkleber</translation>
    </message>
    <message>
        <source>Scissors</source>
        <translation>Schere</translation>
    </message>
    <message>
        <source>Flames</source>
        <translation>Flammen</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Stecknadeln</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;; %2 is what was noted of it when it was stitched, &quot;Pleat on the back&quot;
----------
%1 is a cloth&apos;s name, %2 what was changed of it</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>It is {%1} off: too far to be cut as it is.</source>
        <extracomment>%1 is by how much, the most of its size or of a tilted side</extracomment>
        <translation>{%1} daneben: zu viel, um den Block so zu schneiden.</translation>
    </message>
    <message>
        <source>It leans by {%1}: too far to be cut as it is.</source>
        <extracomment>lean: the block is a little of a diamond; %1 is by how much</extracomment>
        <translation>Er steht {%1} schief: zu viel, um den Block so zu schneiden.</translation>
    </message>
    <message>
        <source>Press the block.</source>
        <translation>Den Block bügeln.</translation>
    </message>
    <message>
        <source>Stitched blocks stay as they are and no longer fit, in all %1: sent as %2, now it would be %3. Undo takes the change back.</source>
        <translation>Gestickte Blöcke bleiben, wie sie sind, und passen nicht mehr, insgesamt %1: gesendet mit %2, jetzt wären es %3. „Rückgängig“ nimmt die Änderung zurück.</translation>
    </message>
    <message>
        <source>Hoop strips cut already no longer fit, in all %1: cut %2 wide, now it would be %3. Undo takes the change back.</source>
        <translation>Schon geschnittene Stickstreifen passen nicht mehr, insgesamt %1: %2 breit geschnitten, jetzt wären es %3. „Rückgängig“ nimmt die Änderung zurück.</translation>
    </message>
    <message>
        <source>Sashing strips cut already no longer fit, in all %1: cut %2 wide, now it would be %3. Undo takes the change back.</source>
        <extracomment>sashing: the strip between two blocks</extracomment>
        <translation>Schon geschnittene Zwischenstreifen passen nicht mehr, insgesamt %1: %2 breit geschnitten, jetzt wären es %3. „Rückgängig“ nimmt die Änderung zurück.</translation>
    </message>
    <message>
        <source>Binding strips cut already no longer fit, in all %1: cut %2 wide, now it would be %3. Undo takes the change back.</source>
        <translation>Schon geschnittene Einfassungsstreifen passen nicht mehr, insgesamt %1: %2 breit geschnitten, jetzt wären es %3. „Rückgängig“ nimmt die Änderung zurück.</translation>
    </message>
    <message>
        <source>What is cut of “%1” no longer counts: “%2” has its part now. Undo takes the change back.</source>
        <extracomment>part: front, back, sashing … of the piece; %1 and %2 are cloths</extracomment>
        <translation>Was aus „%1“ geschnitten ist, zählt nicht mehr: „%2“ hat jetzt seine Aufgabe. „Rückgängig“ nimmt die Änderung zurück.</translation>
    </message>
    <message>
        <source>Cut the strip apart along a ruler, down the middle of each gap.</source>
        <translation>Den Streifen am Lineal in der Mitte jeder Lücke durchtrennen.</translation>
    </message>
    <message>
        <source>Apart, blade closed</source>
        <translation>Durchtrennt, Klinge&#xa0;zu</translation>
    </message>
    <message>
        <source>Nothing may lie underneath.</source>
        <translation>Es darf nichts darunterliegen.</translation>
    </message>
    <message>
        <source>Keep the ripper’s blade off the cloth.</source>
        <translation>Die Klinge des Trenners vom Stoff weg.</translation>
    </message>
    <message>
        <source>Roll the blade away from you, fingers well back; then close it.</source>
        <translation>Die Klinge vom Körper weg rollen, Finger weit zurück; danach schließen.</translation>
    </message>
    <message>
        <source>Slow over the thick places; turn the wheel by hand.</source>
        <translation>Langsam über die dicken Stellen, am Handrad drehen.</translation>
    </message>
    <message>
        <source>Keep it: a narrower strip or patches come out of it.</source>
        <translation>Aufheben: Schmalere Streifen oder Flicken lassen sich daraus schneiden.</translation>
    </message>
    <message>
        <source>Straighten the end first.</source>
        <translation>Erst das Ende begradigen.</translation>
    </message>
    <message>
        <source>Pick the thread back about {1 in} and start again on the line.</source>
        <translation>Den Faden auf etwa {1 in} heraustrennen und auf der Linie neu beginnen.</translation>
    </message>
    <message>
        <source>Inside stippling it will not show.</source>
        <translation>In der Füllquiltung sieht man es nicht.</translation>
    </message>
    <message>
        <source>A pleat under {%1} on the back may stay.</source>
        <translation>Eine Falte unter {%1} auf der Rückseite darf bleiben.</translation>
    </message>
    <message>
        <source>A longer one, or a cut through the ground, means a new block.</source>
        <translation>Eine längere oder ein Schnitt durch den Grundstoff heißt: neuer Block.</translation>
    </message>
    <message>
        <source>Not pressed yet: unpick that patch’s stitches only.</source>
        <translation>Noch nicht gebügelt: nur die Stiche dieses Flickens auftrennen.</translation>
    </message>
    <message>
        <source>Peel it off, lay the right one, stitch it again.</source>
        <translation>Ihn abziehen, den richtigen auflegen, neu sticken.</translation>
    </message>
    <message>
        <source>Pressed already: a new block.</source>
        <translation>Schon gebügelt: ein neuer Block.</translation>
    </message>
    <message>
        <source>Leave the block in the hoop.</source>
        <translation>Den Block im Rahmen lassen.</translation>
    </message>
    <message>
        <source>Start again at the stop you were at; nothing here was lost.</source>
        <translation>Beim letzten Stopp neu beginnen; hier ging nichts verloren.</translation>
    </message>
    <message>
        <source>{%1} is too little to hold a seam; it takes {%2}.</source>
        <translation>{%1} sind zu wenig für eine Naht; es braucht {%2}.</translation>
    </message>
    <message>
        <source>Lay a scrap of the same three layers edge to edge.</source>
        <translation>Einen Rest derselben drei Lagen Kante an Kante legen.</translation>
    </message>
    <message>
        <source>Zigzag it on, trim it to the ruler again.</source>
        <translation>Mit Zickzack annähen, am Lineal neu beschneiden.</translation>
    </message>
    <message>
        <source>{%1} holds nothing: under {%2} the block is made again.</source>
        <translation>{%1} halten nicht: Unter {%2} wird der Block neu gemacht.</translation>
    </message>
    <message>
        <source>Its good part serves for a test join.</source>
        <translation>Sein guter Teil dient für eine Probeverbindung.</translation>
    </message>
    <message>
        <source>{%1} too small. Measure its stitched outline.</source>
        <translation>{%1} zu klein. Den gestickten Umriss messen.</translation>
    </message>
    <message>
        <source>Is that small too, the outer line is stitched again at size, or the block is made again.</source>
        <extracomment>it: the stitched outline of a block</extracomment>
        <translation>Ist auch er zu klein, wird die Außenlinie auf Maß neu gestickt oder der Block neu gemacht.</translation>
    </message>
    <message>
        <source>Off by {%1}: up to {%2} a row is eased to the long sashing.</source>
        <translation>{%1} daneben: bis {%2} lässt sich eine Reihe an den langen Zwischenstreifen einhalten.</translation>
    </message>
    <message>
        <source>Pin the ends and the marks first.</source>
        <translation>Zuerst Enden und Zeichen stecken.</translation>
    </message>
    <message>
        <source>{%2} too long. If every seam shares in it, each was sewn {%1} too scant.</source>
        <extracomment>scant: less deep than it should be</extracomment>
        <translation>{%2} zu lang. Verteilt sich das auf alle Nähte, ist jede {%1} zu knapp genäht.</translation>
    </message>
    <message>
        <source>Sew them again that much deeper, or try the test join anew.</source>
        <translation>Um so viel breiter neu nähen oder die Probeverbindung neu machen.</translation>
    </message>
    <message>
        <source>{%2} too short. If every seam shares in it, each was sewn {%1} too deep.</source>
        <translation>{%2} zu kurz. Verteilt sich das auf alle Nähte, ist jede {%1} zu breit genäht.</translation>
    </message>
    <message>
        <source>Unpick, and sew them again that much scanter.</source>
        <extracomment>scanter: less deep</extracomment>
        <translation>Auftrennen und um so viel knapper neu nähen.</translation>
    </message>
    <message>
        <source>First measure each sashing as it is seen.</source>
        <translation>Zuerst jeden Zwischenstreifen messen, wie er zu sehen ist.</translation>
    </message>
    <message>
        <source>If one alone is off, only its seams are unpicked.</source>
        <translation>Stimmt nur einer nicht, werden nur seine Nähte aufgetrennt.</translation>
    </message>
    <message>
        <source>{%1} smaller than planned. Square the opposite side to it.</source>
        <translation>{%1} kleiner als geplant. Die Gegenseite danach begradigen.</translation>
    </message>
    <message>
        <source>The binding as planned reaches round.</source>
        <translation>Die Einfassung reicht wie geplant herum.</translation>
    </message>
    <message>
        <source>Cut every third stitch on the bobbin’s side.</source>
        <translation>Auf der Spulenseite jeden dritten Stich durchtrennen.</translation>
    </message>
    <message>
        <source>Draw the other thread out and brush the bits away.</source>
        <translation>Den anderen Faden herausziehen, Reste abbürsten.</translation>
    </message>
    <message>
        <source>Press it flat.</source>
        <translation>Flach bügeln.</translation>
    </message>
    <message>
        <source>Unpick the binding from the last good corner on, not the whole round.</source>
        <translation>Die Einfassung ab der letzten guten Ecke auftrennen, nicht ganz herum.</translation>
    </message>
    <message>
        <source>Press it flat and fold the corner anew.</source>
        <translation>Flach bügeln und die Ecke neu falten.</translation>
    </message>
    <message>
        <source>Unpick the ditch where it missed, and a thumb’s width beyond at both ends.</source>
        <extracomment>ditch: the seam line beside a sashing, in which the back is caught from the front</extracomment>
        <translation>Die Naht im Nahtschatten auftrennen, wo sie nicht gefasst hat, und an beiden Enden daumenbreit darüber hinaus.</translation>
    </message>
    <message>
        <source>Nothing is cut anew.</source>
        <translation>Neu geschnitten wird nichts.</translation>
    </message>
    <message>
        <source>Fold {%1} under, no more: that catches {%2}.</source>
        <translation>{%1} umlegen, nicht mehr: Das fasst {%2}.</translation>
    </message>
    <message>
        <source>Pin on the seam line and stitch.</source>
        <translation>Auf der Nahtlinie stecken und nähen.</translation>
    </message>
    <message>
        <source>Where it still does not reach, close it by hand, or lay a tape over the fold.</source>
        <translation>Wo es immer noch nicht reicht, von Hand schließen oder ein Webband über die Faltkante legen.</translation>
    </message>
    <message>
        <source>Feel all the other joins for the same.</source>
        <translation>Alle anderen Verbindungen darauf abtasten.</translation>
    </message>
    <message>
        <source>A notch of {%1}: the binding covers it.</source>
        <translation>Eine Kerbe von {%1}: Die Einfassung deckt sie.</translation>
    </message>
    <message>
        <source>Lay a scrap of batting in, so that it is filled.</source>
        <translation>Einen Vliesrest einlegen, damit sie gefüllt ist.</translation>
    </message>
    <message>
        <source>{%1} is left. Trim {%2} off all four sides, so that the edge stays even.</source>
        <translation>Es bleiben {%1}. An allen vier Seiten {%2} abschneiden, damit die Kante gleichmäßig bleibt.</translation>
    </message>
    <message>
        <source>Bind as planned.</source>
        <translation>Wie geplant einfassen.</translation>
    </message>
    <message>
        <source>Only {%1} is left. Lay a scrap of the three layers edge to edge into the notch.</source>
        <translation>Es bleiben nur {%1}. Einen Rest der drei Lagen Kante an Kante in die Kerbe legen.</translation>
    </message>
    <message>
        <source>Zigzag it, then square the side again.</source>
        <translation>Mit Zickzack annähen, dann die Seite neu begradigen.</translation>
    </message>
    <message>
        <source>If %1 was sewn in, unpick the joins on its sides only.</source>
        <translation>War %1 schon eingenäht, nur die Verbindungen an seinen Seiten auftrennen.</translation>
    </message>
    <message>
        <source>They are sewn again with the new block. All others stay.</source>
        <translation>Sie werden mit dem neuen Block wieder genäht. Alle anderen bleiben.</translation>
    </message>
    <message>
        <source>spare blocks for all</source>
        <extracomment>spare blocks that all mats of a set share</extracomment>
        <translation>Ersatzblöcke für alle</translation>
    </message>
    <message>
        <source>short sashing, cut</source>
        <extracomment>a short sashing as it is cut, with its spare</extracomment>
        <translation>kurzer Zwischenstreifen, Zuschnitt</translation>
    </message>
    <message>
        <source>long sashing, cut</source>
        <extracomment>a long sashing as it is cut, with its spare</extracomment>
        <translation>langer Zwischenstreifen, Zuschnitt</translation>
    </message>
    <message>
        <source>spare for all</source>
        <extracomment>spare blocks that all mats of a set share</extracomment>
        <translation>Ersatz für alle</translation>
    </message>
    <message>
        <source>Bought as Shop lists it, {%2} of %1 is left: that yields it.</source>
        <extracomment>what is left was never measured: it is reckoned from what the shopping list says was bought</extracomment>
        <translation>%1: Nach der Einkaufsliste sind noch {%2} übrig. Das reicht.</translation>
    </message>
    <message>
        <source>{%2} of %1 is left: that yields it if squaring the edge takes no more than {%3}.</source>
        <extracomment>%2 is left of the cloth; its edge is cut straight first, which takes some of that</extracomment>
        <translation>%1: {%2} sind übrig. Das reicht, wenn das Begradigen der Kante höchstens {%3} nimmt.</translation>
    </message>
    <message>
        <source>It comes out of what is left on a strip of %1 already cut: nothing to buy.</source>
        <extracomment>it is cut again from what is left over on strips already cut</extracomment>
        <translation>%1: Ein schon geschnittener Streifen hat noch Platz dafür. Nichts zu kaufen.</translation>
    </message>
    <message>
        <source>Bought as Shop lists it, {%2} of %1 is left: that does not yield it.</source>
        <translation>%1: Nach der Einkaufsliste sind noch {%2} übrig. Das reicht nicht.</translation>
    </message>
    <message>
        <source>Lift and set down, front first, then the back. Let it cool flat; after steam let it dry.</source>
        <translation>Aufsetzen und abheben, erst vorn, dann hinten. Flach abkühlen, nach Dampf trocknen lassen.</translation>
    </message>
    <message>
        <source>Cut a hoop strip of %1 for the test block.</source>
        <translation>Einen Stickstreifen für den Probeblock schneiden: %1.</translation>
    </message>
    <message>
        <source>Cut a sashing band of %1 for the test join.</source>
        <translation>Ein Band für den Zwischenstreifen der Probeverbindung schneiden: %1.</translation>
    </message>
    <message>
        <source>Trial strip</source>
        <extracomment>title of the strip cut for the test block</extracomment>
        <translation>Probestreifen</translation>
    </message>
    <message>
        <source>Trial band</source>
        <extracomment>title of the band cut for the test join</extracomment>
        <translation>Probeband</translation>
    </message>
    <message>
        <source>First square the cut edge of %1 to its fold again.</source>
        <extracomment>the edge that the last cut left, from which the next strip is measured</extracomment>
        <translation>Zuerst die Schnittkante wieder rechtwinklig zum Bruch schneiden: %1.</translation>
    </message>
    <message>
        <source>Rows joined already no longer fit, in all %1: joined of %2 blocks, now it would be %3. Undo takes the change back.</source>
        <extracomment>row: blocks joined side by side; %2 and %3 count blocks</extracomment>
        <translation>Schon verbundene Reihen passen nicht mehr, insgesamt %1: aus %2 Blöcken verbunden, jetzt wären es %3. „Rückgängig“ nimmt die Änderung zurück.</translation>
    </message>
    <message>
        <source>Long sashings cut already no longer fit, in all %1: cut %2 long, now it would be %3. Undo takes the change back.</source>
        <extracomment>long sashing: the strip between two rows</extracomment>
        <translation>Schon geschnittene lange Zwischenstreifen passen nicht mehr, insgesamt %1: %2 lang geschnitten, jetzt wären es %3. „Rückgängig“ nimmt die Änderung zurück.</translation>
    </message>
    <message>
        <source>Take the common size, stitched %1.</source>
        <extracomment>%1 is the common size of the blocks measured, within their stitches</extracomment>
        <translation>Gemeinsames Maß nehmen: gestickt %1.</translation>
    </message>
    <message>
        <source>Stitched {%2}: off size.</source>
        <extracomment>stitched: the size within a block&apos;s outer stitches, not that it is cut to</extracomment>
        <translation>Gestickt {%2}: nicht nach Maß.</translation>
    </message>
    <message>
        <source>Cut {%2}: off size.</source>
        <extracomment>cut: the size of a trimmed block</extracomment>
        <translation>Geschnitten {%2}: nicht nach Maß.</translation>
    </message>
    <message>
        <source>Whole strip marked</source>
        <extracomment>on a button: all centres of the strip in hand are marked, not only one</extracomment>
        <translation>Ganzer Streifen angezeichnet</translation>
    </message>
    <message>
        <source>It came out as first planned: %1.</source>
        <translation>Es ist, wie zuerst geplant, %1.</translation>
    </message>
    <message>
        <source>It is larger than the common size: %1.</source>
        <translation>Gemeinsames Maß überschritten: %1.</translation>
    </message>
    <message>
        <source>Trim it to the common size, cut to %1.</source>
        <extracomment>%1 is the size of a trimmed block, at the common size of all</extracomment>
        <translation>Auf gemeinsames Maß beschneiden, Schnittmaß %1.</translation>
    </message>
    <message>
        <source>renaming</source>
        <translation>Umbenennen</translation>
    </message>
    <message>
        <source>putting away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>bringing back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>throwing away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>Stitched blocks without a place: %1 (%2 first). Undo takes the change back.</source>
        <extracomment>%2 is the first of them, a block&apos;s name like A1</extracomment>
        <translation>Gestickte Blöcke ohne Platz: %1 (zuerst %2). „Rückgängig“ nimmt die Änderung zurück.</translation>
    </message>
    <message>
        <source>Made to the old measure, at “%1”: look at it before you use it.</source>
        <extracomment>%1 is a step in words</extracomment>
        <translation>Mit dem alten Maß gemacht, bei „%1“: vor dem Verwenden ansehen.</translation>
    </message>
    <message>
        <source>Sew front to back, right sides together; turn it out and close it.</source>
        <translation>Vorder- und Rückseite rechts auf rechts nähen, wenden und schließen.</translation>
    </message>
    <message>
        <source>Piece %1 of %2, turning out</source>
        <translation>Stück %1 von %2, wenden</translation>
    </message>
</context>
<context>
    <name>WorkedFigure</name>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a figure does</extracomment>
        <translation>Rechenweg zeigen</translation>
    </message>
</context>
<context>
    <name>WorkingSheet</name>
    <message>
        <source>along</source>
        <translation>längs</translation>
    </message>
    <message>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>Which way</source>
        <translation>Welche Richtung</translation>
    </message>
    <message>
        <source>Back to the sum before</source>
        <translation>Zurück zur Rechnung davor</translation>
    </message>
    <message>
        <source>Back to the work</source>
        <translation>Zurück zur Arbeit</translation>
    </message>
    <message>
        <source>%1: {%2}</source>
        <extracomment>heads a sum: %1 is the figure&apos;s name, %2 the figure: &quot;hoop strip, cut: 13 1/4 in&quot;</extracomment>
        <translation>%1: {%2}</translation>
    </message>
    <message>
        <source>The longest counts.</source>
        <extracomment>of two or more rows of lengths laid end to end over the tape: the longest is the figure</extracomment>
        <translation>Das Längste zählt.</translation>
    </message>
</context>
<context>
    <name>WorkingTab</name>
    <message>
        <source>show the working</source>
        <extracomment>opens the sum behind a figure</extracomment>
        <translation>Rechenweg zeigen</translation>
    </message>
    <message>
        <source>sum</source>
        <extracomment>on a small tab, at most five letters: opens the sum behind a figure</extracomment>
        <translation>woher</translation>
    </message>
</context>
<context>
    <name>WrongSheet</name>
    <message>
        <source>Here is what that means</source>
        <translation>So geht es weiter</translation>
    </message>
    <message>
        <source>What went wrong?</source>
        <translation>Was ging schief?</translation>
    </message>
    <message>
        <source>They disagree: measure the block</source>
        <translation>Maße passen nicht: Block messen</translation>
    </message>
    <message>
        <source>Make it again</source>
        <translation>Neu machen</translation>
    </message>
    <message>
        <source>On with the work</source>
        <translation>Weiter mit der Arbeit</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Which block?</source>
        <translation>Welcher Block?</translation>
    </message>
    <message>
        <source>No block is made yet.</source>
        <translation>Noch ist kein Block gemacht.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>%1: what went wrong?</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;: the one in hand</extracomment>
        <translation>%1: Was ging schief?</translation>
    </message>
</context>
<context>
    <name>matside::Awake</name>
    <message>
        <source>A step is shown</source>
        <translation>Ein Schritt wird gezeigt</translation>
    </message>
</context>
<context>
    <name>matside::Backups</name>
    <message>
        <source>Backup</source>
        <extracomment>the name of a file with everything in it</extracomment>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>Der Ordner %1 lässt sich nicht anlegen.</translation>
    </message>
    <message>
        <source>Writing the backup…</source>
        <translation>Die Sicherung wird geschrieben …</translation>
    </message>
    <message>
        <source>Written to %1 and read back: %2.</source>
        <translation>Nach %1 geschrieben und wieder gelesen: %2.</translation>
    </message>
    <message>
        <source>There are projects on the shelf. A backup is put back where nothing is yet: on a new tablet, or after a new start with an empty folder.</source>
        <translation>Im Regal liegen Projekte. Eine Sicherung wird zurückgelegt, wo noch nichts ist: auf einem neuen Tablet oder nach einem Neubeginn mit leerem Ordner.</translation>
    </message>
    <message>
        <source>All of it lies ready. Close Matside and open it again: then it is on the shelf.</source>
        <translation>Alles liegt bereit. Matside schließen und wieder öffnen: Dann liegt es im Regal.</translation>
    </message>
</context>
<context>
    <name>matside::BattingModel</name>
    <message>
        <source>from the roll</source>
        <extracomment>batting is bought so</extracomment>
        <translation>von der Rolle</translation>
    </message>
    <message>
        <source>1 package</source>
        <translation>1 Paket</translation>
    </message>
    <message>
        <source>%1 packages</source>
        <translation>%1 Pakete</translation>
    </message>
    <message>
        <source>the roll’s usable width</source>
        <translation>nutzbare Breite der Rolle</translation>
    </message>
    <message>
        <source>a package of</source>
        <translation>ein Paket von</translation>
    </message>
    <message>
        <source>one side of it</source>
        <translation>eine Seite</translation>
    </message>
    <message>
        <source>its other side</source>
        <translation>andere Seite</translation>
    </message>
    <message>
        <source>price of a package</source>
        <translation>Preis eines Pakets</translation>
    </message>
    <message>
        <source>Proven least.</source>
        <translation>Weniger geht nicht.</translation>
    </message>
    <message>
        <source>The least found; no proof.</source>
        <translation>Das Wenigste, das gefunden wurde; kein Nachweis.</translation>
    </message>
    <message>
        <source>Waste %1 %.</source>
        <translation>Abfall %1&#xa0;%.</translation>
    </message>
    <message>
        <source>Costs %1.</source>
        <translation>Kostet %1.</translation>
    </message>
    <message>
        <source>From the roll: {%1} of %2</source>
        <extracomment>%1 &quot;2 3/8 yd&quot;, %2 the roll&apos;s width</extracomment>
        <translation>Von der Rolle: {%1}, %2 breit</translation>
    </message>
    <message>
        <source>Too small for a hoop strip of %1.</source>
        <translation>Zu klein für einen Stickstreifen von %1.</translation>
    </message>
    <message>
        <source>1 strip from each.</source>
        <translation>1 Streifen aus jedem.</translation>
    </message>
    <message>
        <source>%1 strips from each.</source>
        <translation>%1 Streifen aus jedem.</translation>
    </message>
    <message>
        <source>No way of cutting needs fewer.</source>
        <translation>Kein Zuschnitt braucht weniger.</translation>
    </message>
    <message>
        <source>1 package of %1</source>
        <extracomment>%1 a number, %2 &quot;45 in × 60 in&quot;</extracomment>
        <translation>1 Paket von %1</translation>
    </message>
    <message>
        <source>%1 packages of %2</source>
        <translation>%1 Pakete von %2</translation>
    </message>
    <message>
        <source>The batting is bought or begun: it stays as it is.</source>
        <translation>Das Vlies ist gekauft oder angeschnitten: Es bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>Add a package size to hold it against the roll.</source>
        <translation>Eine Paketgröße hinzufügen, um sie mit der Rolle zu vergleichen.</translation>
    </message>
    <message>
        <source>The package wastes less than the roll.</source>
        <translation>Das Paket macht weniger Abfall als die Rolle.</translation>
    </message>
    <message>
        <source>The roll wastes least.</source>
        <translation>Die Rolle macht am wenigsten Abfall.</translation>
    </message>
    <message>
        <source>List the batting at Fit first.</source>
        <translation>Das Vlies zuerst unter „Planen“ eintragen.</translation>
    </message>
    <message>
        <source>The batting is bought or begun. Take the tick away first.</source>
        <translation>Das Vlies ist gekauft oder angeschnitten. Zuerst den Haken wegnehmen.</translation>
    </message>
    <message>
        <source>%1 sizes at most.</source>
        <translation>Höchstens %1 Größen.</translation>
    </message>
    <message>
        <source>This size is on the list.</source>
        <translation>Diese Größe steht schon in der Liste.</translation>
    </message>
    <message>
        <source>An amount with two decimals at most.</source>
        <translation>Ein Betrag mit höchstens zwei Dezimalstellen.</translation>
    </message>
    <message>
        <source>Between %1 and %2.</source>
        <translation>Zwischen %1 und %2.</translation>
    </message>
    <message>
        <source>A strip is larger than this package.</source>
        <translation>Ein Streifen ist größer als dieses Paket.</translation>
    </message>
    <message>
        <source>More than %1 pieces are not laid out one by one: take a larger package, or the roll.</source>
        <translation>Mehr als %1 Teile werden nicht einzeln ausgelegt: ein größeres Paket oder die Rolle nehmen.</translation>
    </message>
    <message>
        <source>1 hoop strip of %1 × %2 is to be cut.</source>
        <extracomment>the last two are a strip&apos;s two sides</extracomment>
        <translation>1 Stickstreifen von %1 × %2 ist zu schneiden.</translation>
    </message>
    <message>
        <source>%1 hoop strips of %2 × %3 are to be cut.</source>
        <translation>%1 Stickstreifen von %2 × %3 sind zu schneiden.</translation>
    </message>
</context>
<context>
    <name>matside::BlockLog</name>
    <message>
        <source>Block %1</source>
        <extracomment>%1 is a block&apos;s name, &quot;A1&quot;</extracomment>
        <translation>Block %1</translation>
    </message>
    <message>
        <source>Strip %1, place %2</source>
        <extracomment>where a block was stitched: the strip&apos;s number and the block&apos;s place on it</extracomment>
        <translation>Streifen %1, Stelle %2</translation>
    </message>
    <message>
        <source>Planned {%1} × {%2}</source>
        <extracomment>the size the stitched outline should have, along and across</extracomment>
        <translation>Geplant {%1} × {%2}</translation>
    </message>
    <message>
        <source>Planned {%1} × {%2}, off by {%3}: %4 says what to do</source>
        <extracomment>a stitched outline that is off its planned size %1 × %2 by %3; %4 is the station that judges it</extracomment>
        <translation>Geplant {%1} × {%2}, um {%3} daneben: „%4“ sagt, was zu tun ist</translation>
    </message>
</context>
<context>
    <name>matside::BlockMeasure</name>
    <message>
        <source>%1 is too small for the others: make it again.</source>
        <translation>%1 ist zu klein für die anderen: neu machen.</translation>
    </message>
    <message>
        <source>Common size %1: trim to %2; the piece finishes %3 × %4.</source>
        <translation>Gemeinsames Maß %1: auf %2 beschneiden; das Stück wird fertig %3 × %4.</translation>
    </message>
    <message>
        <source>%1 is cut already for another size.</source>
        <translation>%1 ist schon auf ein anderes Maß geschnitten.</translation>
    </message>
    <message>
        <source>Of the table %1 and %2 stay clear.</source>
        <extracomment>table: %1 and %2 are what is left of the table at the sides and at the ends</extracomment>
        <translation>Vom Tisch bleiben %1 und %2 frei.</translation>
    </message>
    <message>
        <source>Long sashings %1.</source>
        <translation>Lange Zwischenstreifen %1.</translation>
    </message>
    <message>
        <source>%1 loses %2 a side into the seams.</source>
        <translation>%1 gibt je Seite %2 an die Nähte ab.</translation>
    </message>
    <message>
        <source>Square enough, if the rest is as shown.</source>
        <translation>Rechtwinklig genug, wenn der Rest stimmt.</translation>
    </message>
    <message>
        <source>Measure the rest before you cut.</source>
        <translation>Vor dem Schneiden den Rest messen.</translation>
    </message>
    <message>
        <source>A stitched line will show then: that of %1, by %2.</source>
        <extracomment>%1 is a block&apos;s name, &quot;A2&quot;: at the common size its stitched line lies outside the seam by %2</extracomment>
        <translation>Die gestickte Linie ist dann zu sehen: bei %1 um %2.</translation>
    </message>
    <message>
        <source>%1 of 6 not yet read</source>
        <extracomment>of the six readings of a block</extracomment>
        <translation>%1 von 6 noch nicht gemessen</translation>
    </message>
</context>
<context>
    <name>matside::ClothColour</name>
    <message>
        <source>no colour yet</source>
        <translation>noch ohne Farbe</translation>
    </message>
    <message>
        <source>Tap the cloth in the picture.</source>
        <translation>Im Bild auf den Stoff tippen.</translation>
    </message>
    <message>
        <source>Light and dark meet in this place: a print, a fold or a shadow. The mean of all of it is shown.</source>
        <translation>Hier treffen Hell und Dunkel zusammen: ein Muster, eine Falte oder ein Schatten. Gezeigt wird das Mittel aus allem.</translation>
    </message>
    <message>
        <source>The mean about the place you tapped. Tap another place to compare.</source>
        <translation>Das Mittel um die getippte Stelle. Zum Vergleich eine andere antippen.</translation>
    </message>
    <message>
        <source>This picture cannot be read. Choose another one.</source>
        <translation>Dieses Bild ist nicht lesbar. Ein anderes wählen.</translation>
    </message>
</context>
<context>
    <name>matside::EdgeModel</name>
    <message>
        <source>A count of pins lies between 0 and %1.</source>
        <translation>Eine Zahl von Nadeln liegt zwischen 0 und %1.</translation>
    </message>
    <message>
        <source>A corner’s radius is more than nothing and no more than %1.</source>
        <translation>Der Radius einer Ecke ist mehr als nichts und höchstens %1.</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>top, %1 from the left</source>
        <translation>oben, %1 von links</translation>
    </message>
    <message>
        <source>right, %1 from the top</source>
        <translation>rechts, %1 von oben</translation>
    </message>
    <message>
        <source>bottom, %1 from the left</source>
        <translation>unten, %1 von links</translation>
    </message>
    <message>
        <source>left, %1 from the top</source>
        <translation>links, %1 von oben</translation>
    </message>
    <message>
        <source>Begin and close: %1.</source>
        <translation>Beginnen und schließen: %1.</translation>
    </message>
    <message>
        <source>Join %1: %2.</source>
        <translation>Ansatz %1: %2.</translation>
    </message>
    <message>
        <source>First cut %1 off strip %2.</source>
        <translation>Erst %1 von Streifen %2 abschneiden.</translation>
    </message>
    <message>
        <source>No join falls on a corner or a sashing end.</source>
        <translation>Kein Ansatz fällt auf eine Ecke oder ein Streifenende.</translation>
    </message>
    <message>
        <source>Between the sashing ends there is no room for a join: the joins keep clear of the corners alone. Narrower binding would fit.</source>
        <extracomment>so: with joins as wide as they are</extracomment>
        <translation>Zwischen den Streifenenden ist kein Platz für einen Ansatz: Die Ansätze meiden nur die Ecken. Eine schmalere Einfassung würde passen.</translation>
    </message>
    <message>
        <source>The sides are too short to keep the joins off the corners. Press every join open, and grade it.</source>
        <translation>Die Seiten sind zu kurz, um die Ansätze von den Ecken fernzuhalten. Jeden Ansatz auseinanderbügeln und abstufen.</translation>
    </message>
    <message>
        <source>This takes one strip more, %1 in all.</source>
        <translation>Das braucht einen Streifen mehr, zusammen %1.</translation>
    </message>
    <message>
        <source>Square corners, mitred.</source>
        <translation>Rechtwinklige Ecken, als Briefecken.</translation>
    </message>
    <message>
        <source>The arc cuts %1 into the stippling: stay-stitch beside the line before cutting. Up to %2 it would clear it.</source>
        <translation>Der Bogen schneidet die Füllquiltung %1 tief an: vor dem Schneiden neben der Linie eine Stütznaht steppen. Bis %2 bliebe er frei.</translation>
    </message>
    <message>
        <source>It is tight for folded binding, which eases round from %1.</source>
        <translation>Das ist eng für gefaltete Einfassung; ab %1 legt sie sich glatt herum.</translation>
    </message>
    <message>
        <source>Small quilts and pillows do not go in a sleeping baby’s cot.</source>
        <translation>Kleine Quilts und Kissen gehören nicht in das Bett eines schlafenden Säuglings.</translation>
    </message>
    <message>
        <source>Label: on the back, lower right. Title, maker, date, size, fibre, how to wash.</source>
        <translation>Etikett: hinten, unten rechts. Titel, Name, Datum, Größe, Faser, Waschhinweis.</translation>
    </message>
    <message>
        <source>To hang it: a sleeve tacked on by hand, so that it comes off again, cut %1 to %2 wide and %3 to %4 long.</source>
        <translation>Zum Aufhängen: ein von Hand angehefteter Tunnel, der sich wieder lösen lässt, Zuschnitt %1 bis %2 breit und %3 bis %4 lang.</translation>
    </message>
    <message>
        <source>To hang it: a sleeve on the back, cut %1 to %2 wide and %3 to %4 long.</source>
        <translation>Zum Aufhängen: ein Tunnel auf der Rückseite, Zuschnitt %1 bis %2 breit und %3 bis %4 lang.</translation>
    </message>
    <message>
        <source>Squaring</source>
        <translation>Begradigen</translation>
    </message>
    <message>
        <source>Binding</source>
        <translation>Einfassen</translation>
    </message>
    <message>
        <source>Last look</source>
        <translation>Letzter Blick</translation>
    </message>
    <message>
        <source>along, and %1 across, raw</source>
        <translation>längs und %1 quer, unversäubert</translation>
    </message>
    <message>
        <source>along, and %1 across, finished</source>
        <translation>längs und %1 quer, fertig</translation>
    </message>
    <message>
        <source>of bias, cut %1 wide</source>
        <translation>Schrägband, %1 breit geschnitten</translation>
    </message>
    <message>
        <source>The readings disagree by %1.</source>
        <translation>Die Messwerte widersprechen sich um %1.</translation>
    </message>
    <message>
        <source>Square within %1.</source>
        <translation>Rechtwinklig bis auf %1.</translation>
    </message>
    <message>
        <source>Top and bottom differ by %1.</source>
        <translation>Oben und unten: %1 Unterschied.</translation>
    </message>
    <message>
        <source>Left and right differ by %1.</source>
        <translation>Links und rechts: %1 Unterschied.</translation>
    </message>
    <message>
        <source>The diagonals differ by %1.</source>
        <translation>Diagonalen: %1 Unterschied.</translation>
    </message>
    <message>
        <source>Lay it flat and measure again. Do not cut.</source>
        <translation>Flach legen und neu messen. Nicht schneiden.</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4</source>
        <translation>%1, %2, %3, %4</translation>
    </message>
    <message>
        <source>Trim it plainly, in this order: %1.</source>
        <translation>Einfach beschneiden, in dieser Folge: %1.</translation>
    </message>
    <message>
        <source>Round the edge it is %1 less than planned.</source>
        <translation>Rings um die Kante ist es %1 weniger als geplant.</translation>
    </message>
    <message>
        <source>Round the edge it is %1 more than planned; the binding strips reach.</source>
        <translation>Rings um die Kante ist es %1 mehr als geplant; die Einfassungsstreifen reichen.</translation>
    </message>
    <message>
        <source>Round the edge it is %1 more than planned: cut the bias that much longer.</source>
        <translation>Rings um die Kante ist es %1 mehr als geplant: das Schrägband um so viel länger schneiden.</translation>
    </message>
    <message>
        <source>Round the edge it is %1 more than planned: cut one binding strip more.</source>
        <translation>Rings um die Kante ist es %1 mehr als geplant: einen Einfassungsstreifen mehr schneiden.</translation>
    </message>
    <message>
        <source>Count the pins and needles that went in, and those that came out.</source>
        <translation>Alle Nadeln zählen, die hineingingen, und alle, die herauskamen.</translation>
    </message>
    <message>
        <source>No pins were used.</source>
        <translation>Keine Nadeln benutzt.</translation>
    </message>
    <message>
        <source>They differ, and you know why.</source>
        <translation>Sie weichen ab, und der Grund ist bekannt.</translation>
    </message>
    <message>
        <source>As many out as in.</source>
        <translation>So viele heraus wie hinein.</translation>
    </message>
    <message numerus="yes">
        <source>%n still in it: feel along every seam, both faces.</source>
        <translation>
            <numerusform>%n steckt noch: jede Naht abtasten, beide Seiten.</numerusform>
            <numerusform>%n stecken noch: jede Naht abtasten, beide Seiten.</numerusform>
        </translation>
    </message>
    <message>
        <source>More came out than went in: count again.</source>
        <translation>Es kamen mehr heraus als hinein: noch einmal zählen.</translation>
    </message>
    <message>
        <source>Rounded corners, {%1}</source>
        <translation>Runde Ecken, {%1}</translation>
    </message>
    <message>
        <source>A circle</source>
        <translation>Ein Kreis</translation>
    </message>
    <message>
        <source>Round ends</source>
        <translation>Runde Enden</translation>
    </message>
    <message>
        <source>Scallops, {%1} deep</source>
        <translation>Bögen, {%1} tief</translation>
    </message>
    <message>
        <source>Square corners</source>
        <translation>Rechtwinklige Ecken</translation>
    </message>
    <message>
        <source>A scallop’s depth is more than nothing and no more than %1.</source>
        <translation>Die Tiefe eines Bogens ist mehr als nichts und höchstens %1.</translation>
    </message>
    <message>
        <source>%1 scallops along and %2 across, {%3} deep: chords of {%4} and {%5}, drawn with a radius of {%6} and {%7}.</source>
        <extracomment>chord: the straight distance across one scallop</extracomment>
        <translation>%1 Bögen längs und %2 quer, {%3} tief: Sehnen von {%4} und {%5}, gezeichnet mit einem Radius von {%6} und {%7}.</translation>
    </message>
    <message>
        <source>A circle of %1 across.</source>
        <translation>Ein Kreis von %1 Durchmesser.</translation>
    </message>
    <message>
        <source>Ends rounded with a radius of %1.</source>
        <translation>Enden gerundet mit einem Radius von %1.</translation>
    </message>
    <message>
        <source>Corners of %1.</source>
        <translation>Ecken von %1.</translation>
    </message>
    <message>
        <source>The edge is %1 round: cut %2 of bias from a square of %3.</source>
        <translation>Die Kante misst ringsum %1: %2 Schrägband aus einem Quadrat von %3 schneiden.</translation>
    </message>
    <message>
        <source>Between two scallops the edge cuts %1 into the stippling: stay-stitch beside the line before cutting. With %2 of cloth outside the outline it would clear it.</source>
        <translation>Zwischen zwei Bögen schneidet die Kante die Füllquiltung %1 tief an: vor dem Schneiden neben der Linie eine Stütznaht steppen. Mit %2 Stoff außerhalb des Umrisses bliebe sie frei.</translation>
    </message>
    <message>
        <source>At each inside point stay-stitch, clip to the stitches, and pivot.</source>
        <translation>An jeder Innenecke eine Stütznaht steppen, bis an die Stiche einschneiden und dort drehen.</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>As a pillow: for a form of %1 × %2, with an envelope back of two pieces %3.</source>
        <extracomment>envelope back: two pieces that overlap, between which the pillow is put in</extracomment>
        <translation>Als Kissen: für eine Füllung von %1 × %2, mit Hotelverschluss aus zwei Teilen %3.</translation>
    </message>
    <message>
        <source>As a pillow: for a form of %1 × %2 inside the scallops. Cut two back pieces %3, lay them over each other, and cut them along the front’s scallops.</source>
        <translation>Als Kissen: für eine Füllung von %1 × %2 innerhalb der Bögen. Zwei Rückenteile von %3 schneiden, übereinanderlegen und den Bögen der Vorderseite nach schneiden.</translation>
    </message>
    <message>
        <source>As a pillow: for a round form %1 across. Cut two back pieces %2, lay them over each other, and cut them round with the front as the pattern.</source>
        <translation>Als Kissen: für eine runde Füllung von %1 Durchmesser. Zwei Rückenteile von %2 schneiden, übereinanderlegen und nach der Vorderseite rund schneiden.</translation>
    </message>
    <message>
        <source>As a pillow: for a form of %1 × %2 with the same round corners. Cut two back pieces %3, lay them over each other, and cut their corners with the front as the pattern.</source>
        <translation>Als Kissen: für eine Füllung von %1 × %2 mit denselben runden Ecken. Zwei Rückenteile von %3 schneiden, übereinanderlegen und die Ecken nach der Vorderseite schneiden.</translation>
    </message>
    <message>
        <source>Frame, left and right</source>
        <translation>Umrandung, links und rechts</translation>
    </message>
    <message>
        <source>Frame, top and bottom</source>
        <translation>Umrandung, oben und unten</translation>
    </message>
    <message>
        <source>along, and %1 across, with its frame</source>
        <translation>längs und %1 quer, mit Umrandung</translation>
    </message>
    <message>
        <source>long, cut %1 wide</source>
        <translation>lang, %1 breit zugeschnitten</translation>
    </message>
    <message>
        <source>A piece is longer than the cloth is wide: sew strips end to end with straight seams, pressed open.</source>
        <translation>Ein Teil ist länger, als der Stoff breit ist: Streifen mit geraden Nähten aneinandernähen, die Nähte auseinanderbügeln.</translation>
    </message>
    <message>
        <source>The binding is cut: these corners can no longer be changed.</source>
        <translation>Die Einfassung ist geschnitten: Diese Ecken lassen sich nicht mehr ändern.</translation>
    </message>
    <message>
        <source>along, as the rows measure, and %1 across, raw</source>
        <extracomment>after a large length: the piece&apos;s side is as long as its measured rows</extracomment>
        <translation>längs, wie die Reihen messen, und %1 quer, unversäubert</translation>
    </message>
    <message>
        <source>Lay the beginning %1 before the place it closes at.</source>
        <translation>Den Anfang %1 vor die Stelle legen, an der er sich schließt.</translation>
    </message>
    <message>
        <source>Leave %1 to both sides of that place unsewn until the ends are joined.</source>
        <translation>Beiderseits dieser Stelle %1 offen lassen, bis die Enden verbunden sind.</translation>
    </message>
    <message>
        <source>Begin on the crown of a scallop at the middle of the bottom.</source>
        <translation>Auf dem Scheitel eines Bogens in der Mitte unten beginnen.</translation>
    </message>
    <message>
        <source>Sew with the edge, easing the bias over each crown.</source>
        <translation>Mit der Kante nähen und das Schrägband über jeden Scheitel einhalten.</translation>
    </message>
    <message>
        <source>At an inside point leave the needle down, straighten the edge and sew on.</source>
        <translation>An einer Innenecke die Nadel unten lassen, die Kante gerade ziehen und weiternähen.</translation>
    </message>
    <message>
        <source>Sew with the edge, not stretching it: ease the bias round each corner.</source>
        <translation>Mit der Kante nähen, nicht dehnen: das Schrägband um jede Ecke einhalten.</translation>
    </message>
    <message>
        <source>At a corner stop %1 from the edge.</source>
        <translation>An einer Ecke %1 vor der Kante anhalten.</translation>
    </message>
    <message>
        <source>Fold the strip up at 45°.</source>
        <translation>Den Streifen unter 45° hochfalten.</translation>
    </message>
    <message>
        <source>Then fold it down, level with the edge.</source>
        <translation>Dann bündig mit der Kante herunterfalten.</translation>
    </message>
    <message>
        <source>Close it with an overlap of %1, ends crossed at a right angle.</source>
        <translation>Mit %1 Überlappung schließen, Enden im rechten Winkel gekreuzt.</translation>
    </message>
    <message>
        <source>Close with an overlap of exactly %1, ends crossed at a right angle.</source>
        <translation>Mit genau %1 Überlappung schließen, Enden im rechten Winkel gekreuzt.</translation>
    </message>
    <message>
        <source>Left and right first: two of %1 each face.</source>
        <translation>Zuerst links und rechts: vorn und hinten je zwei von %1.</translation>
    </message>
    <message>
        <source>Left and right first: two of %1.</source>
        <translation>Zuerst links und rechts: zwei von %1.</translation>
    </message>
    <message>
        <source>Then top and bottom: two of %1.</source>
        <translation>Dann oben und unten: je zwei von %1.</translation>
    </message>
    <message>
        <source>Cut them %1 longer and trim them flush.</source>
        <translation>%1 länger zuschneiden und bündig abschneiden.</translation>
    </message>
    <message>
        <source>Front strip right sides together with the front, back strip with the back.</source>
        <translation>Vorderen Streifen rechts auf rechts auf die Vorderseite, hinteren auf die Rückseite.</translation>
    </message>
    <message>
        <source>All three raw edges level: one seam of %1.</source>
        <translation>Alle drei Schnittkanten bündig: eine Naht von %1.</translation>
    </message>
    <message>
        <source>Strip right sides together with the front.</source>
        <translation>Streifen rechts auf rechts auf die Vorderseite.</translation>
    </message>
    <message>
        <source>Raw edges level: a seam of %1.</source>
        <translation>Schnittkanten bündig: eine Naht von %1.</translation>
    </message>
    <message>
        <source>Press both outward.</source>
        <translation>Beide nach außen bügeln.</translation>
    </message>
    <message>
        <source>Press it outward.</source>
        <translation>Nach außen bügeln.</translation>
    </message>
    <message>
        <source>Lay batting %1 wide in beyond the block’s allowance, edge to edge.</source>
        <extracomment>the block&apos;s own allowance lies under the frame; beyond it the frame would be hollow</extracomment>
        <translation>Jenseits der Zugabe des Blocks Vlies von %1 Breite einlegen, Kante an Kante.</translation>
    </message>
    <message>
        <source>Baste the raw edges together: so the frame is filled, and the binding too.</source>
        <translation>Die Schnittkanten zusammenheften: So ist die Umrandung gefüllt und die Einfassung auch.</translation>
    </message>
    <message>
        <source>Marks out with cold water before any heat.</source>
        <translation>Markierungen vor jeder Hitze mit kaltem Wasser entfernen.</translation>
    </message>
    <message>
        <source>Wash cool and gently, dry it flat or cool, press from the back.</source>
        <translation>Kühl und schonend waschen, flach oder kühl trocknen, von der Rückseite bügeln.</translation>
    </message>
    <message>
        <source>Before you sell it, look up the rules on labels and fillings where you live.</source>
        <translation>Vor dem Verkaufen nachsehen, was vor Ort für Etiketten und Füllungen gilt.</translation>
    </message>
    <message>
        <source>The pillow goes in between the two hems.</source>
        <extracomment>below the back of a pillow, of whose opening an arrow tells</extracomment>
        <translation>Das Kissen kommt zwischen die beiden Säume.</translation>
    </message>
    <message>
        <source>%1 of 6 not yet read</source>
        <extracomment>of the six readings of the whole piece</extracomment>
        <translation>%1 von 6 noch nicht gemessen</translation>
    </message>
    <message>
        <source>Square within %1, if the rest is as planned.</source>
        <extracomment>of a piece of whose six readings some are only the planned ones</extracomment>
        <translation>Rechtwinklig bis auf %1, wenn der Rest wie geplant ist.</translation>
    </message>
    <message>
        <source>Measure the rest before you cut.</source>
        <translation>Vor dem Schneiden den Rest messen.</translation>
    </message>
    <message>
        <source>Top and bottom differ by %1, if the rest is as planned.</source>
        <translation>Oben und unten: %1 Unterschied, wenn der Rest wie geplant ist.</translation>
    </message>
    <message>
        <source>Left and right differ by %1, if the rest is as planned.</source>
        <translation>Links und rechts: %1 Unterschied, wenn der Rest wie geplant ist.</translation>
    </message>
    <message>
        <source>The diagonals differ by %1, if the rest is as planned.</source>
        <translation>Diagonalen: %1 Unterschied, wenn der Rest wie geplant ist.</translation>
    </message>
    <message>
        <source>Or as %1 on the bias, from %2 across the cloth.</source>
        <translation>Oder als %1 im schrägen Fadenlauf, aus %2 über die Stoffbreite.</translation>
    </message>
    <message>
        <source>1 strip</source>
        <translation>1 Streifen</translation>
    </message>
    <message>
        <source>%1 strips</source>
        <translation>%1 Streifen</translation>
    </message>
    <message>
        <source>in %1, cut %2 wide</source>
        <translation>in %1, %2 breit geschnitten</translation>
    </message>
    <message>
        <source>It cuts %1 into the stippling: stay-stitch first.</source>
        <extracomment>the edge runs inside the stitched outline, where blocks are stippled</extracomment>
        <translation>Sie schneidet %1 in die Füllquiltung: zuerst eine Stütznaht.</translation>
    </message>
    <message>
        <source>Inside points: stay-stitch, clip, pivot.</source>
        <extracomment>the places between two scallops; pivot: turn the work about the needle</extracomment>
        <translation>Innenecken: Stütznaht, einschneiden, drehen.</translation>
    </message>
    <message>
        <source>The edge is %1 round.</source>
        <translation>Der Rand misst ringsum %1.</translation>
    </message>
    <message>
        <source>Cut %1 of bias from a square of %2.</source>
        <translation>%1 Schrägband aus einem Quadrat von %2 schneiden.</translation>
    </message>
    <message>
        <source>Beside a diagonal of %1 the other would be %2.</source>
        <extracomment>of a piece&apos;s six measures; %1 and %2 are lengths: the sides as they were read allow no other</extracomment>
        <translation>Zu einer Diagonale von %1 passt als zweite %2.</translation>
    </message>
    <message>
        <source>Ease it with steam and measure again, or square it smaller, to %1 × %2, in this order: %3.</source>
        <extracomment>%1 × %2 is the largest true piece that can be cut, %3 the order of its sides: &quot;bottom, left, top, right&quot;</extracomment>
        <translation>Mit Dampf ausrichten und neu messen, oder kleiner begradigen, auf %1 × %2, in dieser Folge: %3.</translation>
    </message>
    <message>
        <source>Strip %1: first cut off %2.</source>
        <extracomment>of the binding&apos;s strips; %2 is a length, in one line</extracomment>
        <translation>Streifen %1: zuerst %2 abschneiden.</translation>
    </message>
</context>
<context>
    <name>matside::FieldsModel</name>
    <message>
        <source>%1 by %2</source>
        <extracomment>a ruler&apos;s length and width</extracomment>
        <translation>%1 mal %2</translation>
    </message>
</context>
<context>
    <name>matside::FitModel</name>
    <message>
        <source>This cannot be changed here.</source>
        <translation>Das lässt sich hier nicht ändern.</translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation>Das ließ sich nicht speichern.</translation>
    </message>
    <message>
        <source>blocks stitched %1</source>
        <translation>Blöcke gestickt %1</translation>
    </message>
    <message>
        <source>sashings cut %1</source>
        <extracomment>sashing: the strip between two blocks</extracomment>
        <translation>Zwischenstreifen geschnitten %1</translation>
    </message>
    <message>
        <source>joins sewn %1</source>
        <translation>Verbindungen genäht %1</translation>
    </message>
    <message>
        <source>binding strips cut %1</source>
        <translation>Einfassungsstreifen geschnitten %1</translation>
    </message>
    <message>
        <source>Made already: %1.</source>
        <extracomment>%1: a list of what is made, each with its count</extracomment>
        <translation>Schon gemacht: %1.</translation>
    </message>
    <message>
        <source>layers of hoop strips cut %1</source>
        <extracomment>each layer of a hoop strip is cut for itself</extracomment>
        <translation>Lagen der Stickstreifen geschnitten %1</translation>
    </message>
</context>
<context>
    <name>matside::Gallery</name>
    <message>
        <source>to do</source>
        <translation>zu tun</translation>
    </message>
    <message>
        <source>stitched</source>
        <translation>gestickt</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>beschnitten</translation>
    </message>
    <message>
        <source>joined</source>
        <translation>verbunden</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation>verdorben</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>stitched %1</source>
        <extracomment>the size within a block&apos;s outer stitches, not that it is cut to</extracomment>
        <translation>gestickt %1</translation>
    </message>
</context>
<context>
    <name>matside::HoopModel</name>
    <message>
        <source>Strip %1 of %2</source>
        <translation>Streifen %1 von %2</translation>
    </message>
    <message>
        <source>%1, flat cloth</source>
        <translation>%1, flacher Stoff</translation>
    </message>
    <message>
        <source>%1, as drawn in by the stitching</source>
        <extracomment>the strip is shorter now: stitching has drawn the cloth in</extracomment>
        <translation>%1, durch das Sticken eingezogen</translation>
    </message>
    <message>
        <source>Centre %1</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;: the middle of the block, to be ticked on the strip</extracomment>
        <translation>Mitte %1</translation>
    </message>
    <message>
        <source>Centre of %1</source>
        <translation>Mitte von %1</translation>
    </message>
    <message>
        <source>%1 starts</source>
        <extracomment>gap: cloth between two outlines on the strip</extracomment>
        <translation>%1 beginnt</translation>
    </message>
    <message>
        <source>Gap to %1</source>
        <translation>Lücke bis %1</translation>
    </message>
    <message>
        <source>%1 started</source>
        <translation>%1 begann</translation>
    </message>
    <message>
        <source>from the last outline</source>
        <translation>vom letzten Umriss</translation>
    </message>
    <message>
        <source>from the zero end</source>
        <extracomment>zero end: the end of the strip everything is measured from</extracomment>
        <translation>vom Nullende</translation>
    </message>
    <message>
        <source>Next centre %1</source>
        <translation>Nächste Mitte %1</translation>
    </message>
    <message>
        <source>The next outline starts at %1; the plan expected %2.</source>
        <translation>Der nächste Umriss beginnt bei %1; geplant war %2.</translation>
    </message>
    <message>
        <source>The plan expects the next outline to start at %1 on the drawn-in cloth.</source>
        <translation>Nach Plan beginnt der nächste Umriss bei %1 auf dem eingezogenen Stoff.</translation>
    </message>
    <message>
        <source>Block %1 no longer fits: %2 short.</source>
        <translation>Block %1 passt nicht mehr: %2 zu wenig.</translation>
    </message>
    <message>
        <source>Sew a waste tail to the far end,</source>
        <extracomment>tail: a waste strip sewn to the end so that the frame has cloth to hold</extracomment>
        <translation>Ein Hilfsende an das andere Ende nähen,</translation>
    </message>
    <message>
        <source>take a gap of %1,</source>
        <translation>eine Lücke von %1 lassen</translation>
    </message>
    <message>
        <source>or carry it to the next strip.</source>
        <translation>oder ihn auf den nächsten Streifen nehmen.</translation>
    </message>
    <message>
        <source>It is carried to the next strip.</source>
        <translation>Er kommt auf den nächsten Streifen.</translation>
    </message>
    <message>
        <source>The last outline ends between %1 and %2.</source>
        <translation>Der letzte Umriss endet zwischen %1 und %2.</translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation>Das ließ sich nicht speichern.</translation>
    </message>
    <message>
        <source>stippling</source>
        <extracomment>stippling: quilting in a wandering line that fills the ground</extracomment>
        <translation>Füllquiltung</translation>
    </message>
    <message>
        <source>echo</source>
        <extracomment>echo: a line stitched at a distance round the patches</extracomment>
        <translation>Echolinie</translation>
    </message>
    <message>
        <source>%1, of %2</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>the outer line, last</source>
        <translation>die Außenlinie, zuletzt</translation>
    </message>
    <message>
        <source>Bobbin: not enough on one for a block</source>
        <translation>Spule: eine reicht nicht für einen Block</translation>
    </message>
    <message>
        <source>Bobbin: change it before this block</source>
        <translation>Spule: vor diesem Block wechseln</translation>
    </message>
    <message>
        <source>Bobbin: for 1 more block</source>
        <translation>Spule: noch für 1 Block</translation>
    </message>
    <message>
        <source>Bobbin: for %1 more blocks</source>
        <translation>Spule: noch für %1 Blöcke</translation>
    </message>
    <message>
        <source>About %1 minutes a block, by your own last blocks</source>
        <translation>Etwa %1 Minuten je Block, nach den eigenen letzten Blöcken</translation>
    </message>
    <message>
        <source>About %1 minutes a block</source>
        <translation>Etwa %1 Minuten je Block</translation>
    </message>
    <message>
        <source>Send %1 × %2 mm to the machine (%3 % × %4 %).</source>
        <extracomment>the size given to the machine, larger than the block because stitching draws it in</extracomment>
        <translation>%1 × %2&#xa0;mm an die Maschine senden (%3&#xa0;% × %4&#xa0;%).</translation>
    </message>
    <message>
        <source>A gap of %1 would yield short sashings: %2 pairs.</source>
        <extracomment>gap: cloth between two outlines on the strip; shorts: short sashings between two blocks</extracomment>
        <translation>Eine Lücke von %1 gäbe kurze Zwischenstreifen: %2 Paare.</translation>
    </message>
    <message>
        <source>It costs nothing: the strip has the room.</source>
        <translation>Das kostet nichts: Der Streifen hat den Platz.</translation>
    </message>
    <message>
        <source>It costs %1 of %2 blocks on each strip.</source>
        <translation>Das kostet je Streifen %1 von %2 Blöcken.</translation>
    </message>
    <message>
        <source>With waste tails at both ends it would cost none.</source>
        <translation>Mit Hilfsenden an beiden Enden würde es keinen kosten.</translation>
    </message>
    <message>
        <source>Your blocks draw up by %1 % along and %2 % across. Take that for the blocks to come?</source>
        <extracomment>draw-up: how much the stitching shrinks the block</extracomment>
        <translation>Die Blöcke ziehen längs %1&#xa0;% und quer %2&#xa0;% ein. Für die nächsten Blöcke übernehmen?</translation>
    </message>
    <message>
        <source>Trial strip</source>
        <extracomment>the strip of the trial, which is none of the piece&apos;s</extracomment>
        <translation>Probestreifen</translation>
    </message>
    <message>
        <source>Show block %1</source>
        <extracomment>on a button: the picture goes to that block; %1 is a block&apos;s name, &quot;B2&quot;</extracomment>
        <translation>Block %1 zeigen</translation>
    </message>
    <message>
        <source>%1. About %2 stitches and %3 m of thread; on the bobbin %4 m for it.</source>
        <extracomment>stitches and metres of thread one block takes</extracomment>
        <translation>%1. Etwa %2 Stiche und %3&#xa0;m Faden; dafür %4&#xa0;m auf der Spule.</translation>
    </message>
    <message>
        <source>Send %1 × %2 mm</source>
        <extracomment>the size given to the embroidery machine for one block, beside the drawing of the strip</extracomment>
        <translation>%1 × %2&#xa0;mm senden</translation>
    </message>
    <message>
        <source>Centre %1, not at its mark</source>
        <extracomment>the block&apos;s centre; the tick made for it on the strip before lies elsewhere</extracomment>
        <translation>Mitte %1, nicht am Strich</translation>
    </message>
    <message>
        <source>The centres marked before do not hold any more: %1. Go by the gap from the last outline.</source>
        <extracomment>%1 lists blocks, &quot;A3, A4&quot;: the ticks made for their centres on the strip before</extracomment>
        <translation>Die vorher angezeichneten Mitten gelten nicht mehr: %1. Es gilt die Lücke ab dem letzten Umriss.</translation>
    </message>
    <message>
        <source>%1 of %2 stitched</source>
        <extracomment>of the blocks of one strip</extracomment>
        <translation>%1 von %2 gestickt</translation>
    </message>
    <message>
        <source>Strip %1</source>
        <translation>Streifen %1</translation>
    </message>
    <message>
        <source>%1 blocks</source>
        <extracomment>on one strip</extracomment>
        <translation>%1 Blöcke</translation>
    </message>
    <message>
        <source>%1 pairs of short sashings</source>
        <extracomment>front and back piece of a short sashing, out of the gaps of all strips</extracomment>
        <translation>%1 Paare kurze Zwischenstreifen</translation>
    </message>
    <message>
        <source>with waste tails</source>
        <extracomment>tail: a waste strip sewn to the end so that the frame has cloth to hold</extracomment>
        <translation>mit Hilfsenden</translation>
    </message>
    <message>
        <source>Plain gaps</source>
        <extracomment>of the gaps between the blocks of a hoop strip</extracomment>
        <translation>Einfache Lücken</translation>
    </message>
    <message>
        <source>One gap yields sashing</source>
        <translation>Eine Lücke gibt Zwischenstreifen</translation>
    </message>
    <message>
        <source>%1 gaps yield sashing</source>
        <translation>%1 Lücken geben Zwischenstreifen</translation>
    </message>
    <message>
        <source>All gaps yield sashing</source>
        <translation>Alle Lücken geben Zwischenstreifen</translation>
    </message>
    <message>
        <source>wide, each layer</source>
        <extracomment>how wide back, batting and front of a hoop strip are cut, beside the figure</extracomment>
        <translation>breit, jede Lage</translation>
    </message>
    <message>
        <source>Draw-up: %1 % × %2 %</source>
        <extracomment>draw-up: how much the stitching shrinks the block, along and across</extracomment>
        <translation>Einzug: %1 % × %2 %</translation>
    </message>
</context>
<context>
    <name>matside::HoopShelf</name>
    <message>
        <source>The hoops could not be saved.</source>
        <translation>Die Rahmen ließen sich nicht speichern.</translation>
    </message>
    <message>
        <source>hoop %1</source>
        <translation>Rahmen %1</translation>
    </message>
    <message>
        <source>Measure its field and its outside first.</source>
        <translation>Erst Stickfeld und Außenmaß messen.</translation>
    </message>
    <message>
        <source>The block is %1 too large for its field.</source>
        <translation>Der Block ist %1 zu groß für das Stickfeld.</translation>
    </message>
    <message>
        <source>The block fits, with %1 to spare.</source>
        <translation>Der Block passt, mit %1 Spiel.</translation>
    </message>
    <message>
        <source>No block goes on a strip with it.</source>
        <translation>Kein Block passt damit auf einen Streifen.</translation>
    </message>
    <message>
        <source>Strips %1 wide, %2 blocks on each; %3 strips take %4 of each layer.</source>
        <extracomment>hoop strips: width, how many blocks on each, how much cloth of each layer</extracomment>
        <translation>Streifen %1 breit, %2 Blöcke auf jedem; %3 Streifen brauchen %4 von jeder Lage.</translation>
    </message>
    <message>
        <source>new hoop</source>
        <translation>neuer Rahmen</translation>
    </message>
    <message>
        <source>Nothing can be changed now.</source>
        <translation>Jetzt lässt sich nichts ändern.</translation>
    </message>
    <message>
        <source>A hoop measures between nothing and two metres.</source>
        <translation>Ein Rahmen misst zwischen null und zwei Metern.</translation>
    </message>
    <message>
        <source>%1 strips of %2 blocks</source>
        <extracomment>strips of cloth, and how many blocks go on each</extracomment>
        <translation>%1 Streifen zu %2 Blöcken</translation>
    </message>
</context>
<context>
    <name>matside::JoinModel</name>
    <message>
        <source>Swap %1 and %2: %1 is %3 off size, and such blocks stand best together in an end column.</source>
        <translation>%1 und %2 tauschen: %1 weicht um %3 ab, und solche Blöcke stehen am besten zusammen in einer Endspalte.</translation>
    </message>
    <message>
        <source>Swap %1 and %2: %1 is %3 off size, which shows least at an end.</source>
        <translation>%1 und %2 tauschen: %1 weicht um %3 ab; am Ende fällt das am wenigsten auf.</translation>
    </message>
    <message>
        <source>Swap %1 and %2: %1 is nearest to its size, and the middle is looked at most.</source>
        <translation>%1 und %2 tauschen: %1 trifft das Maß am besten, und auf die Mitte wird am meisten gesehen.</translation>
    </message>
    <message>
        <source>The blocks lie well as they are.</source>
        <translation>Die Blöcke liegen gut, wie sie sind.</translation>
    </message>
    <message>
        <source>There is nothing to swap here.</source>
        <translation>Hier gibt es nichts zu tauschen.</translation>
    </message>
    <message>
        <source>What is sewn already stays where it is.</source>
        <translation>Was schon genäht ist, bleibt, wo es ist.</translation>
    </message>
    <message>
        <source>That block is not made yet.</source>
        <translation>Dieser Block ist noch nicht gemacht.</translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation>Das ließ sich nicht speichern.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>two blocks&apos; names, &quot;B2&quot;: the first is sewn to the second with a sashing between</extracomment>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>Row %1</source>
        <translation>Reihe %1</translation>
    </message>
    <message>
        <source>Row %1 to %2</source>
        <translation>Reihe %1 an %2</translation>
    </message>
    <message>
        <source>its raw length, as planned</source>
        <translation>unversäuberte Länge, wie geplant</translation>
    </message>
    <message>
        <source>fold under</source>
        <translation>Umlegen</translation>
    </message>
    <message>
        <source>visible sashing</source>
        <extracomment>fold under: how much of the back strip is turned under before it is sewn down</extracomment>
        <translation>sichtbarer Zwischenstreifen</translation>
    </message>
    <message>
        <source>The first row sets the marks and the long sashings: %1 against %2 planned.</source>
        <translation>Die erste Reihe bestimmt die Zeichen und die langen Zwischenstreifen: %1 gegen geplante %2.</translation>
    </message>
    <message>
        <source>This row lies within %1 of the others: leave it.</source>
        <translation>Diese Reihe weicht höchstens %1 von den anderen ab: so lassen.</translation>
    </message>
    <message>
        <source>This row is %1 off the mean. Ease it: up to %2 goes in over %3 blocks.</source>
        <translation>Diese Reihe weicht %1 vom Mittel ab. Einhalten: Auf %3 Blöcke verteilt gehen bis zu %2.</translation>
    </message>
    <message>
        <source>There is nothing to measure here.</source>
        <translation>Hier gibt es nichts zu messen.</translation>
    </message>
    <message>
        <source>A row of %1 blocks measures about %2.</source>
        <translation>Eine Reihe von %1 Blöcken misst etwa %2.</translation>
    </message>
    <message>
        <source>Test join: the allowances overlap by %1.</source>
        <extracomment>the two allowances inside a sashing lie over each other</extracomment>
        <translation>Probeverbindung: Die Zugaben überlappen um %1.</translation>
    </message>
    <message>
        <source>Test join: a gap of %1.</source>
        <translation>Probeverbindung: ein Spalt von %1.</translation>
    </message>
    <message>
        <source>Test join: the allowances meet.</source>
        <translation>Probeverbindung: Die Zugaben treffen sich.</translation>
    </message>
    <message>
        <source>Front strips are cut %1 wide, sewn with %2 as before.</source>
        <translation>Die vorderen Streifen werden %1 breit geschnitten, genäht mit %2 wie bisher.</translation>
    </message>
    <message>
        <source>The sashing will be seen %1 wide.</source>
        <translation>Der Zwischenstreifen wird %1 breit zu sehen sein.</translation>
    </message>
    <message>
        <source>The test join itself needs no unpicking: pare %1 off each allowance, which leaves %2.</source>
        <translation>Die Probeverbindung selbst muss nicht aufgetrennt werden: jede Zugabe um %1 zurückschneiden, es bleiben %2.</translation>
    </message>
    <message>
        <source>Do not pare the allowances of the test join: too little would hold it.</source>
        <translation>Die Zugaben der Probeverbindung nicht zurückschneiden: Es bliebe zu wenig, um sie zu halten.</translation>
    </message>
    <message>
        <source>Cut strips %1 instead</source>
        <translation>Stattdessen Streifen %1 schneiden</translation>
    </message>
    <message>
        <source>There is no other way now.</source>
        <translation>Jetzt gibt es keinen anderen Weg.</translation>
    </message>
    <message>
        <source>Press the front strip open, away from the first block; then the back strip over.</source>
        <translation>Den vorderen Streifen vom ersten Block weg bügeln; dann den hinteren Streifen hinüber.</translation>
    </message>
    <message>
        <source>Press the strip open, away from the first block.</source>
        <translation>Den Streifen vom ersten Block weg bügeln.</translation>
    </message>
    <message>
        <source>Each crossing holds 8 cloths and the batting, against 4: pare the batting from the last %1 of the short sashings, clip their folded part to a slant, press hard.</source>
        <translation>Jede Kreuzung hat 8 Stofflagen und das Vlies, gegen 4: das Vlies von den letzten %1 der kurzen Zwischenstreifen wegschneiden, den gefalteten Teil schräg abschneiden, kräftig bügeln.</translation>
    </message>
    <message>
        <source>Crossings are thick: press hard and turn the wheel by hand over them.</source>
        <translation>Kreuzungen sind dick: kräftig bügeln und mit dem Handrad darübernähen.</translation>
    </message>
    <message>
        <source>catch</source>
        <translation>Überstand</translation>
    </message>
    <message>
        <source>Lay in batting strips {%1} wide</source>
        <extracomment>batting strips laid between the two allowances inside a wide sashing</extracomment>
        <translation>Vliesstreifen von {%1} Breite einlegen</translation>
    </message>
    <message>
        <source>Leave {%1} on the blocks</source>
        <extracomment>the cloth left outside a block&apos;s stitched line when it is trimmed</extracomment>
        <translation>{%1} an den Blöcken lassen</translation>
    </message>
    <message>
        <source>Pare the allowances to {%1}</source>
        <translation>Die Zugaben auf {%1} zurückschneiden</translation>
    </message>
    <message>
        <source>Turn {%1} under</source>
        <translation>{%1} umlegen</translation>
    </message>
    <message>
        <source>Back strip doubled</source>
        <translation>Streifen hinten doppelt</translation>
    </message>
    <message>
        <source>The gap between the allowances is filled; trim to {%1}.</source>
        <translation>Der Spalt zwischen den Zugaben wird gefüllt; auf {%1} beschneiden.</translation>
    </message>
    <message>
        <source>Cut %1 of them {%2} long.</source>
        <translation>Davon %1 schneiden, je {%2} lang.</translation>
    </message>
    <message>
        <source>Nothing is laid in. Trim to {%1}; the strip’s edge lies {%2} inside the block’s.</source>
        <extracomment>the raw edge of the sashing strip lies inside the block&apos;s raw edge</extracomment>
        <translation>Eingelegt wird nichts. Auf {%1} beschneiden; die Kante des Streifens liegt {%2} innerhalb der Blockkante.</translation>
    </message>
    <message>
        <source>Then they lie flat under the narrow strip. Trim to {%1}; once sewn, pare the strip’s edge level with the block’s.</source>
        <translation>Dann liegen sie flach unter dem schmalen Streifen. Auf {%1} beschneiden; nach dem Nähen die Streifenkante bündig mit der Blockkante schneiden.</translation>
    </message>
    <message>
        <source>Back strips are cut {%1} wide; the fold catches {%2}.</source>
        <translation>Die hinteren Streifen werden {%1} breit geschnitten; die Faltkante fasst {%2}.</translation>
    </message>
    <message>
        <source>Press the back strip double before it is sewn on. Then press the front strip open, away from the first block, and the back strip over.</source>
        <translation>Den hinteren Streifen vor dem Annähen auf die Hälfte falten und bügeln. Dann den vorderen Streifen vom ersten Block weg bügeln und den hinteren hinüber.</translation>
    </message>
    <message>
        <source>Cut the longest pieces first.</source>
        <translation>Die längsten Teile zuerst schneiden.</translation>
    </message>
    <message>
        <source>The batting of the gaps serves too.</source>
        <extracomment>gap: cloth between two outlines on the strip, which comes apart into sashings and batting</extracomment>
        <translation>Auch das Vlies aus den Lücken taugt dafür.</translation>
    </message>
    <message>
        <source>After the second seam, lay batting %1 wide between the two allowances, edge to edge, and cut it off at the sashing’s ends; then bring the back strip over it.</source>
        <extracomment>batting between the two blocks&apos; allowances under a wide sashing</extracomment>
        <translation>Nach der zweiten Naht Vlies von %1 Breite zwischen die beiden Zugaben legen, Kante an Kante, und an den Enden des Zwischenstreifens abschneiden; dann den hinteren Streifen darüberlegen.</translation>
    </message>
    <message>
        <source>After the second seam, lay batting %1 wide between the two allowances, edge to edge, cut it off at the sashing’s ends, and tack it to them.</source>
        <translation>Nach der zweiten Naht Vlies von %1 Breite zwischen die beiden Zugaben legen, Kante an Kante, an den Enden des Zwischenstreifens abschneiden und an die Zugaben heften.</translation>
    </message>
    <message>
        <source>This row is %1 off the mean, more than the %2 that can be eased: resew one of its seams.</source>
        <translation>Diese Reihe weicht %1 vom Mittel ab, mehr als die %2, die sich einhalten lassen: eine Naht darin neu nähen.</translation>
    </message>
    <message>
        <source>Test join: batting and allowances overlap by %1.</source>
        <translation>Probeverbindung: Vlies und Zugaben überlappen um %1.</translation>
    </message>
    <message>
        <source>Test join: batting and allowances meet.</source>
        <translation>Probeverbindung: Vlies und Zugaben treffen sich.</translation>
    </message>
    <message>
        <source>That may stay. A seam of %1 would be just right; the plan goes by it.</source>
        <translation>Das darf bleiben. Eine Naht von %1 wäre genau richtig; der Plan richtet sich danach.</translation>
    </message>
    <message>
        <source>Sew a seam of %1 from here on; the plan goes by it.</source>
        <translation>Ab hier mit einer Naht von %1 nähen; der Plan richtet sich danach.</translation>
    </message>
    <message>
        <source>So scant a seam leaves the outline in view, %1 from the seam. To hide it, trim the blocks with the %2 line on the outline, and sew as planned.</source>
        <extracomment>outline: the block&apos;s outer stitched line</extracomment>
        <translation>Bei so knapper Naht bleibt der Umriss sichtbar, %1 neben der Naht. Soll er verdeckt sein, die Blöcke mit der Linie %2 auf dem Umriss beschneiden und wie geplant nähen.</translation>
    </message>
    <message>
        <source>The test join itself needs no unpicking: cut %1 off its batting.</source>
        <translation>Die Probeverbindung selbst muss nicht aufgetrennt werden: %1 von ihrem Vlies abschneiden.</translation>
    </message>
</context>
<context>
    <name>matside::KitsModel</name>
    <message>
        <source>1 kit</source>
        <translation>1 Packung</translation>
    </message>
    <message>
        <source>%1 kits</source>
        <translation>%1 Packungen</translation>
    </message>
    <message>
        <source>Nothing can be changed now.</source>
        <translation>Jetzt lässt sich nichts ändern.</translation>
    </message>
    <message>
        <source>A whole number up to %1.</source>
        <translation>Eine ganze Zahl bis %1.</translation>
    </message>
    <message>
        <source>Say first how many students there are.</source>
        <translation>Zuerst angeben, wie viele lernen.</translation>
    </message>
    <message>
        <source>%1: %2, yours, and %3</source>
        <extracomment>%1 = &quot;15 kits&quot;, %2 = &quot;12 students&quot;, %3 = &quot;2 spare&quot;; the teacher makes one too</extracomment>
        <translation>%1: %2, eine für den Unterricht und %3</translation>
    </message>
    <message>
        <source>1 student</source>
        <translation>1 Lernender</translation>
    </message>
    <message>
        <source>%1 students</source>
        <translation>%1 Lernende</translation>
    </message>
    <message>
        <source>%1 spare</source>
        <extracomment>so many spare kits</extracomment>
        <translation>%1 in Reserve</translation>
    </message>
    <message>
        <source>students</source>
        <translation>Lernende</translation>
    </message>
    <message>
        <source>spare kits</source>
        <translation>Packungen in Reserve</translation>
    </message>
    <message>
        <source>machines in the room</source>
        <translation>Maschinen im Raum</translation>
    </message>
    <message>
        <source>who learns</source>
        <translation>wer lernt</translation>
    </message>
    <message>
        <source>All grown up</source>
        <translation>Alle erwachsen</translation>
    </message>
    <message>
        <source>Some under eighteen</source>
        <translation>Manche unter achtzehn</translation>
    </message>
    <message>
        <source>%1: %2 together; kit by kit it would be %3</source>
        <translation>%1: %2 zusammen; Packung für Packung wären es %3</translation>
    </message>
    <message>
        <source>%1: %2, together or kit by kit</source>
        <translation>%1: %2, zusammen wie Packung für Packung</translation>
    </message>
    <message>
        <source>%1 %2 × %3</source>
        <extracomment>%1 what is cut, %2 × %3 its two sides</extracomment>
        <translation>%1&#xa0;%2 × %3</translation>
    </message>
    <message>
        <source>%1 in each kit</source>
        <translation>%1 je Packung</translation>
    </message>
    <message>
        <source>for all kits</source>
        <translation>für alle Packungen</translation>
    </message>
    <message>
        <source>%1 on the day</source>
        <translation>%1 am Zuschneidetag</translation>
    </message>
    <message>
        <source>%1 hours at the machine in all.</source>
        <translation>Insgesamt %1 Stunden an der Maschine.</translation>
    </message>
    <message>
        <source>Stitch ahead, or bring more machines.</source>
        <translation>Vorab sticken oder mehr Maschinen mitbringen.</translation>
    </message>
    <message>
        <source>At %1 machines side by side, %2 hours each.</source>
        <translation>An %1 Maschinen nebeneinander je %2 Stunden.</translation>
    </message>
    <message>
        <source>Some are under eighteen: an adult at each cutting place, at each machine and each iron.</source>
        <translation>Manche sind unter achtzehn: ein Erwachsener an jedem Schneideplatz, jeder Maschine und jedem Bügeleisen.</translation>
    </message>
    <message>
        <source>%1 in each kit, one of them to practise with</source>
        <extracomment>one of these sashing strips is for practising the join</extracomment>
        <translation>%1 je Packung, einer davon zum Üben</translation>
    </message>
    <message>
        <source>student</source>
        <translation>Lernende</translation>
    </message>
    <message>
        <source>spare kit</source>
        <translation>Reservepackung</translation>
    </message>
    <message>
        <source>machine in the room</source>
        <translation>Maschine im Raum</translation>
    </message>
</context>
<context>
    <name>matside::Merging</name>
    <message>
        <source>Something made meanwhile hangs on it.</source>
        <translation>Etwas inzwischen Gemachtes hängt daran.</translation>
    </message>
    <message>
        <source>Both tablets changed it.</source>
        <translation>Beide Tablets haben es geändert.</translation>
    </message>
    <message>
        <source>Which of the two is newer is not known.</source>
        <translation>Was davon neuer ist, ist nicht bekannt.</translation>
    </message>
</context>
<context>
    <name>matside::OpenFiles</name>
    <message>
        <source>The file cannot be read.</source>
        <translation>Die Datei lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>The file needs a name.</source>
        <translation>Die Datei braucht einen Namen.</translation>
    </message>
    <message>
        <source>There is a file “%1” already, and it was left as it is. Choose another name.</source>
        <translation>Es gibt schon eine Datei „%1“; sie wurde gelassen, wie sie ist. Einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>Der Ordner %1 lässt sich nicht anlegen.</translation>
    </message>
    <message>
        <source>The file could not be written: %1</source>
        <translation>Die Datei ließ sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>The file could not be written to %1.</source>
        <translation>Die Datei ließ sich nicht nach %1 schreiben.</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Nach %1 geschrieben</translation>
    </message>
</context>
<context>
    <name>matside::PhotoSource</name>
    <message>
        <source>The camera does not answer. Nothing was lost: try again, or choose a picture.</source>
        <translation>Die Kamera antwortet nicht. Nichts ging verloren: noch einmal versuchen oder ein Bild wählen.</translation>
    </message>
    <message>
        <source>The camera could not take the picture. Nothing was lost: try again, or choose one.</source>
        <translation>Die Kamera konnte kein Bild aufnehmen. Nichts ging verloren: noch einmal versuchen oder eines wählen.</translation>
    </message>
    <message>
        <source>The camera is gone. Nothing was lost: plug it in again.</source>
        <translation>Die Kamera ist nicht mehr verbunden. Nichts ging verloren: wieder einstecken.</translation>
    </message>
</context>
<context>
    <name>matside::Power</name>
    <message>
        <source>The battery is nearly empty: nothing new is begun until the tablet is plugged in.</source>
        <translation>Der Akku ist fast leer: Neues wird erst begonnen, wenn das Tablet am Strom hängt.</translation>
    </message>
    <message>
        <source>The battery is nearly empty. All is saved; nothing new is begun until the tablet is plugged in.</source>
        <translation>Der Akku ist fast leer. Alles ist gespeichert; Neues wird erst begonnen, wenn das Tablet am Strom hängt.</translation>
    </message>
    <message>
        <source>The battery is low: plug the tablet in soon. All is saved.</source>
        <translation>Der Akku wird leer: das Tablet bald ans Ladegerät hängen. Alles ist gespeichert.</translation>
    </message>
</context>
<context>
    <name>matside::PriceModel</name>
    <message>
        <source>What you reckon with could not be saved.</source>
        <translation>Die Rechenwerte ließen sich nicht speichern.</translation>
    </message>
    <message>
        <source>Nothing can be changed now.</source>
        <translation>Jetzt lässt sich nichts ändern.</translation>
    </message>
    <message>
        <source>An amount up to a million, with two decimals at most.</source>
        <translation>Ein Betrag bis zu einer Million, mit höchstens zwei Dezimalstellen.</translation>
    </message>
    <message>
        <source>Between 0 and 300 %.</source>
        <translation>Zwischen 0 und 300&#xa0;%.</translation>
    </message>
    <message>
        <source>This cannot be changed here.</source>
        <translation>Das lässt sich hier nicht ändern.</translation>
    </message>
    <message>
        <source>thread, web, needles</source>
        <translation>Garn, Klebevlies, Nadeln</translation>
    </message>
    <message>
        <source>each of %1</source>
        <translation>jeder von %1</translation>
    </message>
    <message>
        <source>a square inch</source>
        <translation>je Quadratzoll</translation>
    </message>
    <message>
        <source>a square decimetre</source>
        <translation>je Quadratdezimeter</translation>
    </message>
    <message>
        <source>Say what an hour of your work is worth, and it is counted.</source>
        <translation>Angeben, was eine Arbeitsstunde wert ist, dann wird sie gerechnet.</translation>
    </message>
    <message>
        <source>Without a price, so not counted: %1. Enter prices at Fit, with the cloths.</source>
        <translation>Ohne Preis, also nicht gerechnet: %1. Preise unter „Planen“ bei den Stoffen eingeben.</translation>
    </message>
    <message>
        <source>Asking %1 pays for all your time.</source>
        <translation>Ein Preis von %1 bezahlt die ganze Zeit.</translation>
    </message>
    <message>
        <source>Asking %1 leaves %2 hours you will not be paid for.</source>
        <translation>Ein Preis von %1 lässt %2 Stunden unbezahlt.</translation>
    </message>
    <message>
        <source>an hour of your work</source>
        <translation>eine Arbeitsstunde</translation>
    </message>
    <message>
        <source>overhead</source>
        <extracomment>overhead: machine, room, light, tools</extracomment>
        <translation>Gemeinkosten</translation>
    </message>
    <message>
        <source>margin</source>
        <extracomment>margin: what is left for the business</extracomment>
        <translation>Gewinn</translation>
    </message>
    <message>
        <source>if you ask</source>
        <translation>verlangter Preis</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>Stoff</translation>
    </message>
    <message>
        <source>overhead, %1</source>
        <extracomment>overhead: machine, room, light, tools; %1 a percentage</extracomment>
        <translation>Gemeinkosten, %1</translation>
    </message>
    <message>
        <source>margin, %1</source>
        <extracomment>margin: what is left for the business; %1 a percentage</extracomment>
        <translation>Gewinn, %1</translation>
    </message>
    <message>
        <source>The cloth to buy costs %1; what is left over stays yours.</source>
        <extracomment>%1 is an amount of money: more cloth is bought than the piece uses</extracomment>
        <translation>Der Stoff kostet im Einkauf %1; der Rest bleibt im Vorrat.</translation>
    </message>
    <message>
        <source>The minutes at the machine are your own.</source>
        <translation>Die Minuten an der Maschine sind die eigenen.</translation>
    </message>
    <message>
        <source>The hours are usual ones; log three blocks for your own.</source>
        <translation>Übliche Stunden; drei Blöcke eintragen, dann zählen die eigenen.</translation>
    </message>
    <message>
        <source>at %1</source>
        <extracomment>so much money an hour, after &quot;10 h 51 min&quot;</extracomment>
        <translation>zu %1</translation>
    </message>
    <message>
        <source>the price</source>
        <translation>der Preis</translation>
    </message>
</context>
<context>
    <name>matside::Session</name>
    <message>
        <source>Matside is open elsewhere: here you can look, but not change.</source>
        <translation>Matside ist anderswo offen: hier nur ansehen, nicht ändern.</translation>
    </message>
    <message>
        <source>The folder cannot be written: you can look, but not change.</source>
        <translation>Der Ordner ist nicht beschreibbar: nur ansehen, nicht ändern.</translation>
    </message>
    <message>
        <source>The file of projects is damaged. What can be read is shown; nothing is written.</source>
        <translation>Die Datei der Projekte ist beschädigt. Was lesbar ist, wird gezeigt; nichts wird geschrieben.</translation>
    </message>
    <message>
        <source>How much of it is left?</source>
        <translation>Wie viel ist davon übrig?</translation>
    </message>
    <message>
        <source>The pedal turns the steps. Put it where your foot cannot take it for the machine’s, or on the table; while a block is stitched it does nothing.</source>
        <translation>Das Pedal blättert die Schritte. Dorthin stellen, wo der Fuß es nicht mit dem der Maschine verwechselt, oder auf den Tisch; während ein Block gestickt wird, tut es nichts.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is what was taken back (&quot;spoiled&quot;), %2 the step</extracomment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>matside::ShadeModel</name>
    <message>
        <source>step %1</source>
        <extracomment>of the scale from black to white, with one decimal</extracomment>
        <translation>Stufe %1</translation>
    </message>
    <message>
        <source>no colour yet</source>
        <translation>noch ohne Farbe</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <extracomment>one patch lies on another, or on the ground</extracomment>
        <translation>%1, darunter %2</translation>
    </message>
    <message>
        <source>No patches are listed: look how far apart the cloths lie on the scale.</source>
        <translation>Es sind keine Flicken aufgeführt: ansehen, wie weit die Stoffe auf der Skala auseinanderliegen.</translation>
    </message>
    <message>
        <source>Give the ground and the patches their colours: press a cloth.</source>
        <translation>Dem Grundstoff und den Flicken ihre Farben geben: auf einen Stoff tippen.</translation>
    </message>
    <message>
        <source>Blocks are stitched already: the order stays as it is.</source>
        <translation>Es sind schon Blöcke gestickt: Die Folge bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>Patches of one name cannot be put in order.</source>
        <translation>Flicken mit gleichem Namen lassen sich nicht ordnen.</translation>
    </message>
    <message>
        <source>An order is sought for up to %1 patches; here there are %2.</source>
        <translation>Eine Folge wird für bis zu %1 Flicken gesucht; hier sind es %2.</translation>
    </message>
    <message>
        <source>Laid from the lowest up as %1, patches that follow each other would be %2 steps apart or more, not %3.</source>
        <extracomment>%1 lists patches, %2 and %3 are numbers of steps of the ten-step scale</extracomment>
        <translation>Von unten nach oben so gelegt: %1. Dann lägen aufeinanderfolgende Flicken mindestens %2 Stufen auseinander statt %3.</translation>
    </message>
    <message>
        <source>Look first whether your design lets one lie over the other.</source>
        <translation>Zuerst ansehen, ob das Stickmuster das zulässt.</translation>
    </message>
</context>
<context>
    <name>matside::Sharing</name>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>Der Ordner %1 lässt sich nicht anlegen.</translation>
    </message>
    <message>
        <source>Writing the file…</source>
        <translation>Die Datei wird geschrieben …</translation>
    </message>
    <message>
        <source>Written to %1. The photographs in it do not say where or with what they were taken.</source>
        <translation>Nach %1 geschrieben. Die Fotos darin sagen nicht, wo oder womit sie aufgenommen wurden.</translation>
    </message>
    <message>
        <source>Written to %1. Print it at its true size.</source>
        <translation>Nach %1 geschrieben. In wahrer Größe drucken.</translation>
    </message>
    <message>
        <source>It is for one maker. Say at the Shop station how many kits a class needs.</source>
        <translation>Es ist für eine Person. Unter „Kaufen“ angeben, wie viele Packungen ein Kurs braucht.</translation>
    </message>
</context>
<context>
    <name>matside::Shelf</name>
    <message>
        <source>Finished</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>The demo cannot be read.</source>
        <translation>Das Beispiel lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>%1, again</source>
        <translation>%1, noch einmal</translation>
    </message>
    <message>
        <source>A project needs a name. The old one was kept.</source>
        <translation>Ein Projekt braucht einen Namen. Der alte wurde behalten.</translation>
    </message>
    <message>
        <source>%1, in millimetres</source>
        <translation>%1, in Millimetern</translation>
    </message>
    <message>
        <source>%1 of %2 blocks stitched</source>
        <extracomment>how many of a piece&apos;s blocks are stitched</extracomment>
        <translation>%1 von %2 Blöcken gestickt</translation>
    </message>
    <message>
        <source>Go on: %1</source>
        <extracomment>on the shelf, what pressing a piece goes on with: the next step</extracomment>
        <translation>Weiter: %1</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <extracomment>the finished size of a piece: its length and its width</extracomment>
        <translation>%1 mal %2</translation>
    </message>
</context>
<context>
    <name>matside::ShopModel</name>
    <message>
        <source>%1 × %2</source>
        <extracomment>so many strips of one width: &quot;3 × 11 3/4 in&quot;</extracomment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1, and %2 to straighten</source>
        <translation>%1 und %2 zum Begradigen</translation>
    </message>
    <message>
        <source>A piece is wider than this cloth: it has to be pieced, and no least length is known.</source>
        <translation>Ein Teil ist breiter als dieser Stoff: Es muss gestückelt werden, eine kleinste Länge ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Proven least: no way of cutting buys less.</source>
        <translation>Weniger geht nicht: Kein Zuschnitt kommt mit weniger aus.</translation>
    </message>
    <message>
        <source>At most %1 % above the least possible.</source>
        <translation>Höchstens %1&#xa0;% über der kleinsten Menge.</translation>
    </message>
    <message>
        <source>%1 Waste %2 %.</source>
        <translation>%1 Abfall %2&#xa0;%.</translation>
    </message>
    <message>
        <source>All cloths: %1</source>
        <translation>Alle Stoffe: %1</translation>
    </message>
    <message>
        <source>Cloths with a price: %1</source>
        <translation>Stoffe mit Preis: %1</translation>
    </message>
    <message>
        <source>from what you have: %1</source>
        <extracomment>%1 strips, &quot;3 × 11 3/4 in&quot;</extracomment>
        <translation>aus Vorhandenem: %1</translation>
    </message>
    <message>
        <source>Bought or begun: this way of cutting stays.</source>
        <translation>Gekauft oder angeschnitten: Dieser Zuschnitt bleibt.</translation>
    </message>
    <message>
        <source>What you have yields all of it: nothing to buy.</source>
        <translation>Vorhandenes reicht für alles: nichts zu kaufen.</translation>
    </message>
    <message>
        <source>1 needle</source>
        <translation>1 Nadel</translation>
    </message>
    <message>
        <source>%1 needles</source>
        <translation>%1 Nadeln</translation>
    </message>
    <message>
        <source>1 block</source>
        <translation>1 Block</translation>
    </message>
    <message>
        <source>%1 blocks</source>
        <translation>%1 Blöcke</translation>
    </message>
    <message>
        <source>1 bobbin</source>
        <translation>1 Spule</translation>
    </message>
    <message>
        <source>%1 bobbins</source>
        <translation>%1 Spulen</translation>
    </message>
    <message>
        <source>%1 of %2 × %3</source>
        <extracomment>so many packages of batting, and their two sides: &quot;2 of 45 in × 60 in&quot;</extracomment>
        <translation>%1 von %2 × %3</translation>
    </message>
    <message>
        <source>%1 yd</source>
        <extracomment>so much thread, in yards or metres</extracomment>
        <translation>%1 Yard</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>from the packages: %1</source>
        <translation>aus den Paketen: %1</translation>
    </message>
    <message>
        <source>%1 left over</source>
        <extracomment>so much of the cloth&apos;s length is not used</extracomment>
        <translation>%1 bleiben übrig</translation>
    </message>
    <message>
        <source>The packages yield all of it: nothing from the roll.</source>
        <translation>Die Pakete reichen für alles: nichts von der Rolle.</translation>
    </message>
    <message>
        <source>So many pieces are laid out row by row: no least length is proved.</source>
        <translation>So viele Teile werden Reihe für Reihe ausgelegt: Eine kleinste Länge ist nicht nachgewiesen.</translation>
    </message>
    <message>
        <source>For %1 about %2 of thread, %3 wound, %4.</source>
        <extracomment>%1 &quot;9 blocks&quot;, %2 &quot;380 yd&quot; or &quot;347 m&quot;, %3 &quot;5 bobbins&quot;, %4 &quot;1 needle&quot;</extracomment>
        <translation>Für %1 etwa %2 Garn, %3 gespult, %4.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <extracomment>a cloth&apos;s name and what it is for, where two cloths have the same name: &quot;oat linen (sashing, front)&quot;</extracomment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>along the selvage, %1 long: %2</source>
        <extracomment>strips that run along the selvage instead of across the cloth: %1 their length, %2 &quot;3 × 11 3/4 in&quot;</extracomment>
        <translation>entlang der Webkante, %1 lang: %2</translation>
    </message>
    <message>
        <source>%1 to straighten</source>
        <extracomment>so much of the cloth&apos;s length is cut off to square its end</extracomment>
        <translation>%1 zum Begradigen</translation>
    </message>
    <message>
        <source>%1; with what is there %2</source>
        <extracomment>%1 the price of the cloth still to buy, %2 of that and of what was bought before</extracomment>
        <translation>%1; mit dem Vorhandenen %2</translation>
    </message>
    <message>
        <source>%1 bought or begun; it does not yield all: buy this much more.</source>
        <extracomment>%1 a length of cloth; what to buy on top of it stands above</extracomment>
        <translation>%1 gekauft oder angeschnitten; das reicht nicht für alles: So viel kommt hinzu.</translation>
    </message>
</context>
<context>
    <name>matside::StepModel</name>
    <message>
        <source>sent, along</source>
        <translation>gesendet, längs</translation>
    </message>
    <message>
        <source>sent, across</source>
        <translation>gesendet, quer</translation>
    </message>
    <message>
        <source>measured outline, along</source>
        <translation>gemessener Umriss, längs</translation>
    </message>
    <message>
        <source>measured outline, across</source>
        <translation>gemessener Umriss, quer</translation>
    </message>
    <message>
        <source>seam, as sewn</source>
        <translation>Naht, wie genäht</translation>
    </message>
    <message>
        <source>gap between the allowances</source>
        <translation>Spalt zwischen den Zugaben</translation>
    </message>
    <message>
        <source>distance between the seams, on the back</source>
        <translation>Abstand der Nähte, hinten</translation>
    </message>
    <message>
        <source>%1 must be more than nothing.</source>
        <translation>%1 muss mehr als nichts sein.</translation>
    </message>
    <message>
        <source>There is nothing to measure here.</source>
        <translation>Hier gibt es nichts zu messen.</translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation>Das ließ sich nicht speichern.</translation>
    </message>
    <message>
        <source>Nothing can be changed now</source>
        <translation>Jetzt lässt sich nichts ändern</translation>
    </message>
    <message>
        <source>First mend what Fit says</source>
        <translation>Erst beheben, was unter „Planen“ steht</translation>
    </message>
    <message>
        <source>Pins first</source>
        <translation>Erst die Nadeln</translation>
    </message>
    <message>
        <source>First trim all its patches</source>
        <translation>Erst alle Flicken beschneiden</translation>
    </message>
    <message>
        <source>Everything is done.</source>
        <translation>Alles ist erledigt.</translation>
    </message>
    <message>
        <source>Next, at %1: %2</source>
        <extracomment>%1 is a station&apos;s name, %2 what is to be done there</extracomment>
        <translation>Als Nächstes unter „%1“: %2</translation>
    </message>
    <message>
        <source>You were at: %1</source>
        <translation>Zuletzt hier: %1</translation>
    </message>
    <message>
        <source>%1 Did you finish this?</source>
        <translation>%1 Ist das fertig geworden?</translation>
    </message>
    <message>
        <source>That could not be recorded.</source>
        <translation>Das ließ sich nicht vermerken.</translation>
    </message>
    <message>
        <source>That cannot be less than nothing.</source>
        <translation>Das kann nicht weniger als nichts sein.</translation>
    </message>
    <message>
        <source>By these measures: %1 hoop strips of %2 blocks, before %3 of %4. Look at Shop again.</source>
        <translation>Nach diesen Maßen: %1 Stickstreifen zu %2 Blöcken, vorher %3 zu %4. „Kaufen“ neu ansehen.</translation>
    </message>
    <message>
        <source>Turn the cloth round: its cut edge to your right.</source>
        <translation>Den Stoff herumdrehen, nicht wenden: die Schnittkante nach rechts.</translation>
    </message>
    <message>
        <source>Turn the cloth round: its cut edge to your left.</source>
        <translation>Den Stoff herumdrehen, nicht wenden: die Schnittkante nach links.</translation>
    </message>
    <message>
        <source>First stitch all its blocks: %1 more</source>
        <extracomment>the strip that would be cut apart holds %1 blocks that are not stitched yet</extracomment>
        <translation>Erst alle Blöcke sticken: noch %1</translation>
    </message>
    <message>
        <source>%1, number %2</source>
        <extracomment>one of a row of figures: its name and its number, &quot;centre on the strip, number 2&quot;</extracomment>
        <translation>%1, Nummer %2</translation>
    </message>
    <message>
        <source>First, at %1</source>
        <extracomment>%1 is a station&apos;s name; short: it stands on a button</extracomment>
        <translation>Zuerst: %1</translation>
    </message>
    <message>
        <source>gap beside the batting, both sides together</source>
        <extracomment>beside the batting laid into the sashing of the test join, both sides added up</extracomment>
        <translation>Spalt neben dem Vlies, beide Seiten zusammen</translation>
    </message>
    <message>
        <source>No cut here: nothing else is left on its strip.</source>
        <extracomment>the strip was cut apart; the block in hand is all that is left of it</extracomment>
        <translation>Hier kein Schnitt: Vom Streifen ist nur noch dieser Block übrig.</translation>
    </message>
    <message>
        <source>It is apart</source>
        <extracomment>a block has come off its strip</extracomment>
        <translation>Schon abgetrennt</translation>
    </message>
    <message>
        <source>the larger of %1 and %2</source>
        <extracomment>in the words of a sum: the one of two lengths that is larger</extracomment>
        <translation>das Größere von %1 und %2</translation>
    </message>
    <message>
        <source>the largest of %1 and %2</source>
        <extracomment>the same of three or more; %1 is all but the last, with commas</extracomment>
        <translation>das Größte von %1 und %2</translation>
    </message>
    <message>
        <source>%1, rounded up</source>
        <extracomment>in the words of a sum; what it is rounded up to stands in the list under it</extracomment>
        <translation>%1, aufgerundet</translation>
    </message>
    <message>
        <source>%1, rounded up to a whole number</source>
        <translation>%1, auf eine ganze Zahl aufgerundet</translation>
    </message>
    <message>
        <source>%1, rounded down to a whole number</source>
        <translation>%1, auf eine ganze Zahl abgerundet</translation>
    </message>
    <message>
        <source>the square root of %1</source>
        <translation>die Quadratwurzel aus %1</translation>
    </message>
    <message>
        <source>%1 first: %2 steps</source>
        <extracomment>%1 is a station&apos;s name, %2 how many steps there come first; short: it stands on a button</extracomment>
        <translation>Zuerst: %1, %2&#xa0;Schritte</translation>
    </message>
    <message>
        <source>First, at %1: test join</source>
        <translation>Zuerst: %1, Probeverbindung</translation>
    </message>
    <message>
        <source>First, at %1: test block</source>
        <extracomment>%1 is a station&apos;s name; the trial&apos;s block comes before cloth is cut; short: on a button</extracomment>
        <translation>Zuerst: %1, Probeblock</translation>
    </message>
    <message>
        <source>First measure again</source>
        <extracomment>the readings of the piece&apos;s sides and diagonals cannot all be right; short: it stands on a button</extracomment>
        <translation>Erst neu messen</translation>
    </message>
    <message>
        <source>%1, from the piece you have</source>
        <extracomment>%1 is a cloth; the next strip is cut from a piece of it that she entered as what she has</extracomment>
        <translation>%1, vom vorhandenen Stück</translation>
    </message>
    <message>
        <source>overlap on the batting, both sides together</source>
        <extracomment>by how much edges lie over each other inside the sashing of the test join</extracomment>
        <translation>Überlappung auf dem Vlies, beide Seiten zusammen</translation>
    </message>
    <message>
        <source>overlap of the allowances</source>
        <translation>Überlappung der Zugaben</translation>
    </message>
    <message>
        <source>thickness of the batting</source>
        <translation>Dicke des Vlieses</translation>
    </message>
    <message>
        <source>Not all of it is read yet.</source>
        <translation>Es ist noch nicht alles gemessen.</translation>
    </message>
    <message>
        <source>This strip is for the test block: one more than the %1 that Fit counts.</source>
        <extracomment>a hoop strip cut for the trial; the station Fit counts those of the piece itself</extracomment>
        <translation>Dieser Streifen ist für den Probeblock: einer mehr als die %1, die „Planen“ zählt.</translation>
    </message>
    <message>
        <source>First press the block: it is cut cold and dry.</source>
        <extracomment>the block is trimmed next: warm or damp from the iron it is not at its size yet</extracomment>
        <translation>Zuerst den Block bügeln: Geschnitten wird er kalt und trocken.</translation>
    </message>
</context>
<context>
    <name>matside::StockModel</name>
    <message>
        <source>1 piece</source>
        <extracomment>pieces of cloth she has already</extracomment>
        <translation>1 Stück</translation>
    </message>
    <message>
        <source>%1 pieces</source>
        <translation>%1 Stücke</translation>
    </message>
    <message>
        <source>a piece of</source>
        <translation>ein Stück von</translation>
    </message>
    <message>
        <source>its length, along the selvage</source>
        <translation>Länge, an der Webkante entlang</translation>
    </message>
    <message>
        <source>its width, selvages off</source>
        <translation>Breite ohne Webkanten</translation>
    </message>
    <message>
        <source>%1 × %2 of %3</source>
        <extracomment>a piece of cloth: length × width, and which cloth</extracomment>
        <translation>%3, %1 × %2</translation>
    </message>
    <message>
        <source>Say which cloth it is.</source>
        <translation>Angeben, welcher Stoff es ist.</translation>
    </message>
    <message>
        <source>%1 pieces of one cloth are laid out together at most. Take a small one away first.</source>
        <translation>Höchstens %1 Stücke eines Stoffs werden zusammen ausgelegt. Zuerst ein kleines herausnehmen.</translation>
    </message>
    <message>
        <source>This cloth is bought or begun, so its layout stays. Take the tick away first.</source>
        <translation>Dieser Stoff ist gekauft oder angeschnitten, sein Zuschnitt bleibt. Zuerst den Haken wegnehmen.</translation>
    </message>
    <message>
        <source>This cannot be changed here.</source>
        <translation>Das lässt sich hier nicht ändern.</translation>
    </message>
    <message>
        <source>Between %1 and %2.</source>
        <translation>Zwischen %1 und %2.</translation>
    </message>
    <message>
        <source>Strips of this piece are in a layout that stays.</source>
        <translation>Streifen dieses Stücks gehören zu einem Zuschnitt, der bleibt.</translation>
    </message>
    <message>
        <source>Add this piece</source>
        <extracomment>adds the piece of cloth just entered</extracomment>
        <translation>Stoffstück hinzufügen</translation>
    </message>
    <message>
        <source>List %1 at Fit, add this piece</source>
        <extracomment>%1 is a use, &quot;back cloth&quot;: Fit has no cloth listed for it yet</extracomment>
        <translation>Unter „Planen“ eintragen, Stück hinzufügen: %1</translation>
    </message>
    <message>
        <source>{%1} × %2</source>
        <extracomment>a piece of cloth: length × width</extracomment>
        <translation>{%1} × %2</translation>
    </message>
</context>
<context>
    <name>matside::TakeModel</name>
    <message>
        <source>at least %1 wide between the selvages</source>
        <extracomment>on the list to take: the cloth must be at least this wide between its selvages</extracomment>
        <translation>mindestens %1 breit zwischen den Webkanten</translation>
    </message>
    <message>
        <source>for 1 bobbin and the top</source>
        <translation>für 1 Spule und das Obergarn</translation>
    </message>
    <message>
        <source>for %1 bobbins and the top</source>
        <translation>für %1 Spulen und das Obergarn</translation>
    </message>
    <message>
        <source>quilting needles, a new one every 8 hours</source>
        <translation>Quiltnadeln, alle 8 Stunden eine neue</translation>
    </message>
    <message>
        <source>All of it is in the basket.</source>
        <translation>Alles liegt im Korb.</translation>
    </message>
    <message>
        <source>1 thing to find</source>
        <translation>Noch 1 zu finden</translation>
    </message>
    <message>
        <source>%1 things to find</source>
        <translation>Noch %1 zu finden</translation>
    </message>
    <message>
        <source>%1 of thread</source>
        <translation>%1 Garn</translation>
    </message>
</context>
<context>
    <name>matside::TrimModel</name>
    <message>
        <source>on the outer stitches</source>
        <translation>auf den äußeren Stichen</translation>
    </message>
    <message>
        <source>on cut side 1</source>
        <translation>auf Schnittseite 1</translation>
    </message>
    <message>
        <source>on cut side 2</source>
        <translation>auf Schnittseite 2</translation>
    </message>
    <message>
        <source>Turn the block a quarter, never over. A cross line on side 1.</source>
        <translation>Den Block eine Vierteldrehung weiterdrehen, nie wenden. Eine Querlinie auf Seite 1.</translation>
    </message>
    <message>
        <source>Side %1 cut, blade closed</source>
        <extracomment>the blade has cut this side and is closed again</extracomment>
        <translation>Seite %1 geschnitten, Klinge&#xa0;zu</translation>
    </message>
    <message>
        <source>Turn it a quarter again. Both readings must agree.</source>
        <translation>Noch eine Vierteldrehung. Beide Werte müssen übereinstimmen.</translation>
    </message>
    <message>
        <source>Turn it once more. Both must agree, a cross line on side 1 or 3.</source>
        <translation>Noch einmal drehen. Beide müssen übereinstimmen, eine Querlinie auf Seite 1 oder 3.</translation>
    </message>
    <message>
        <source>Measure from the outer line, not the echo line; a cross line on the outline’s corner.</source>
        <translation>Von der Außenlinie messen, nicht von der Echolinie; eine Querlinie auf der Ecke des Umrisses.</translation>
    </message>
    <message>
        <source>%1, which decides: the stitches may lie off their line</source>
        <extracomment>%1 is the side the ruler&apos;s line lies on, &quot;on cut side 1&quot;</extracomment>
        <translation>%1; sie gilt: Die Stiche dürfen neben ihrer Linie liegen</translation>
    </message>
    <message>
        <source>Line and stitches cross mid-side; they part by %1 at both corners.</source>
        <extracomment>the ruler is turned half the lean: its line and the stitched line cross in the middle of the side</extracomment>
        <translation>Linie und Stiche kreuzen sich in der Seitenmitte; an beiden Ecken liegen sie %1 auseinander.</translation>
    </message>
    <message>
        <source>Begin with the truest side: %1. A cross line through the outline’s corner.</source>
        <extracomment>%1 is a side of the block: &quot;bottom&quot;</extracomment>
        <translation>Mit der geradesten Seite beginnen: %1. Eine Querlinie durch die Ecke des Umrisses.</translation>
    </message>
    <message>
        <source>Turn it a quarter again. A cross line on the side cut before.</source>
        <translation>Noch eine Vierteldrehung. Eine Querlinie auf der zuvor geschnittenen Seite.</translation>
    </message>
    <message>
        <source>Measure its sides and diagonals before you cut.</source>
        <translation>Vor dem Schneiden Seiten und Diagonalen messen.</translation>
    </message>
    <message>
        <source>Measure %1 too</source>
        <extracomment>%1 is the name of another block, &quot;A2&quot;</extracomment>
        <translation>%1 auch messen</translation>
    </message>
    <message>
        <source>See the common size</source>
        <extracomment>on a button: it shows what a common size of all blocks would mean, before it is taken</extracomment>
        <translation>Gemeinsames Maß ansehen</translation>
    </message>
    <message>
        <source>Measure the block</source>
        <translation>Den Block messen</translation>
    </message>
    <message>
        <source>Stitched again: measure it</source>
        <translation>Neu gestickt: messen</translation>
    </message>
    <message>
        <source>Measure it again</source>
        <translation>Neu messen</translation>
    </message>
    <message>
        <source>Cut it anyway</source>
        <extracomment>on a button: a side of the block is cut although its measures say it should not be</extracomment>
        <translation>Trotzdem schneiden</translation>
    </message>
    <message>
        <source>%1, not %2: it centres this block, stitched %3</source>
        <extracomment>%1 is where the ruler&apos;s line lies, &quot;on the outer stitches&quot;; %2 the planned line, %3 the size within the block&apos;s stitches, not that it is cut to</extracomment>
        <translation>%1, nicht %2: So liegt dieser Block, gestickt %3, mittig</translation>
    </message>
    <message>
        <source>Planned cut %1. No figure holds before it is measured.</source>
        <extracomment>cut: the size of the trimmed block, not that within its stitches</extracomment>
        <translation>Geplantes Schnittmaß %1. Kein Maß gilt, bevor er gemessen ist.</translation>
    </message>
    <message>
        <source>Planned cut %1. No figure holds before its readings agree.</source>
        <translation>Geplantes Schnittmaß %1. Kein Maß gilt, bevor seine Messwerte übereinstimmen.</translation>
    </message>
    <message>
        <source>Planned cut %1, but it is not to be cut as it is.</source>
        <translation>Geplantes Schnittmaß %1, aber so ist er nicht zu schneiden.</translation>
    </message>
    <message>
        <source>Planned cut %1. No figure holds before the common size is known.</source>
        <translation>Geplantes Schnittmaß %1. Kein Maß gilt, bevor ein gemeinsames Maß bekannt ist.</translation>
    </message>
    <message>
        <source>Planned cut %1. If the common size is taken, cut %2.</source>
        <extracomment>the common size of the blocks measured, taken for all that are not cut yet</extracomment>
        <translation>Geplantes Schnittmaß %1. Gilt ein gemeinsames Maß: Schnittmaß %2.</translation>
    </message>
    <message>
        <source>Logged off size: stitched %1.</source>
        <extracomment>the size of a block&apos;s stitched outline as it was logged at the hoop, not as planned</extracomment>
        <translation>Nicht nach Maß vermerkt: gestickt %1.</translation>
    </message>
    <message>
        <source>Side %1: %2</source>
        <extracomment>%1 counts a block&apos;s four sides in the order they are cut; %2 is which of its own it is, &quot;right&quot;</extracomment>
        <translation>Seite %1: %2</translation>
    </message>
    <message>
        <source>%1, side %2: %3</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;; %2 counts its four sides; %3 is one, &quot;right&quot;</extracomment>
        <translation>%1, Seite %2: %3</translation>
    </message>
    <message>
        <source>Side %1 of 4</source>
        <translation>Seite %1 von 4</translation>
    </message>
    <message>
        <source>%1, side %2 of 4</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;; %2 counts its four sides</extracomment>
        <translation>%1, Seite %2 von 4</translation>
    </message>
</context>
<context>
    <name>matside::WouldFit</name>
    <message>
        <source>Between 1 and %1 blocks.</source>
        <translation>Zwischen 1 und %1 Blöcken.</translation>
    </message>
    <message>
        <source>It must be more than nothing.</source>
        <translation>Es muss mehr als nichts sein.</translation>
    </message>
    <message>
        <source>This cannot be changed here.</source>
        <translation>Das lässt sich hier nicht ändern.</translation>
    </message>
    <message>
        <source>%1 × %2 blocks of %3</source>
        <extracomment>columns × rows blocks of a size</extracomment>
        <translation>%1 × %2 Blöcke von %3</translation>
    </message>
    <message>
        <source>{%1} × %2</source>
        <extracomment>along × across</extracomment>
        <translation>{%1} × %2</translation>
    </message>
    <message>
        <source>%1 over</source>
        <extracomment>the piece hangs over the table&apos;s edge by so much</extracomment>
        <translation>%1 Überhang</translation>
    </message>
    <message>
        <source>%1 bare</source>
        <extracomment>so much of the table shows beside the piece</extracomment>
        <translation>%1 frei</translation>
    </message>
    <message>
        <source>%1 all round</source>
        <translation>%1 ringsum</translation>
    </message>
    <message>
        <source>%1 at the ends, %2 at the sides</source>
        <translation>%1 an den Enden, %2 an den Seiten</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>corners %1 over</source>
        <extracomment>on a round table: the corners lie so far from its edge</extracomment>
        <translation>Ecken hängen %1 über</translation>
    </message>
    <message>
        <source>corners %1 inside</source>
        <translation>Ecken %1 innerhalb</translation>
    </message>
    <message>
        <source>washed %1</source>
        <translation>gewaschen %1</translation>
    </message>
    <message>
        <source>Sashing %1.</source>
        <extracomment>sashing: the strip between two blocks</extracomment>
        <translation>Zwischenstreifen %1.</translation>
    </message>
    <message>
        <source>In the hoop “%1”.</source>
        <translation>Im Rahmen „%1“.</translation>
    </message>
    <message>
        <source>Strips take %1 a layer.</source>
        <extracomment>cloth of each layer for the hoop strips</extracomment>
        <translation>Die Streifen brauchen %1 je Lage.</translation>
    </message>
    <message>
        <source>to make, before washing, %1</source>
        <translation>zu machen, vor dem Waschen, %1</translation>
    </message>
    <message>
        <source>table shows</source>
        <translation>Tisch sichtbar</translation>
    </message>
    <message>
        <source>hangs over</source>
        <translation>Überhang</translation>
    </message>
    <message>
        <source>over at each end</source>
        <translation>Überhang an jedem Ende</translation>
    </message>
    <message>
        <source>bare at each end</source>
        <translation>frei an jedem Ende</translation>
    </message>
    <message>
        <source>At each end</source>
        <translation>An jedem Ende</translation>
    </message>
    <message>
        <source>over at each side</source>
        <translation>Überhang an jeder Seite</translation>
    </message>
    <message>
        <source>bare at each side</source>
        <translation>frei an jeder Seite</translation>
    </message>
    <message>
        <source>At each side</source>
        <translation>An jeder Seite</translation>
    </message>
    <message>
        <source>finished, along</source>
        <translation>fertig, längs</translation>
    </message>
    <message>
        <source>finished, across</source>
        <translation>fertig, quer</translation>
    </message>
    <message>
        <source>washing takes</source>
        <translation>Einlaufen</translation>
    </message>
    <message>
        <source>smallest block</source>
        <translation>kleinster Block</translation>
    </message>
    <message>
        <source>largest block</source>
        <translation>größter Block</translation>
    </message>
    <message>
        <source>block sizes</source>
        <translation>Blockgrößen</translation>
    </message>
    <message>
        <source>by quarters</source>
        <translation>in Viertelzoll-Schritten</translation>
    </message>
    <message>
        <source>by 5 mm</source>
        <translation>je 5&#xa0;mm</translation>
    </message>
    <message>
        <source>on every mark</source>
        <translation>auf jedem Strich</translation>
    </message>
    <message>
        <source>wider sashing</source>
        <translation>breitere Zwischenstreifen</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>up to 1/8 in more</source>
        <translation>bis 1/8 in mehr</translation>
    </message>
    <message>
        <source>up to 3 mm more</source>
        <translation>bis 3&#xa0;mm mehr</translation>
    </message>
    <message>
        <source>blocks at most</source>
        <translation>Blöcke, höchstens</translation>
    </message>
    <message>
        <source>leaf in: %1 at the ends</source>
        <translation>mit Einlegeplatte: %1 an den Enden</translation>
    </message>
    <message>
        <source>leaf out: %1 at the ends</source>
        <extracomment>the table&apos;s leaf is out; %1 = &quot;12 in bare&quot; or &quot;3 in over&quot;</extracomment>
        <translation>ohne Einlegeplatte: %1 an den Enden</translation>
    </message>
    <message>
        <source>leaf in</source>
        <translation>mit Einlegeplatte</translation>
    </message>
    <message>
        <source>leaf out</source>
        <translation>ohne Einlegeplatte</translation>
    </message>
    <message>
        <source>the leaf</source>
        <extracomment>the board laid into a table to lengthen it</extracomment>
        <translation>die Einlegeplatte</translation>
    </message>
    <message>
        <source>out</source>
        <translation>herausgenommen</translation>
    </message>
    <message>
        <source>in</source>
        <translation>eingelegt</translation>
    </message>
    <message>
        <source>No mats lie on this table.</source>
        <translation>Auf diesen Tisch passen keine Tischsets.</translation>
    </message>
    <message>
        <source>Between 1 and %1 mats: no more lie on this table.</source>
        <translation>Zwischen 1 und %1 Tischsets: Mehr passen nicht auf diesen Tisch.</translation>
    </message>
    <message>
        <source>1 mat of %1</source>
        <extracomment>place mats: so many, and the size of each</extracomment>
        <translation>1 Tischset von %1</translation>
    </message>
    <message>
        <source>%1 mats of %2</source>
        <translation>%1 Tischsets von %2</translation>
    </message>
    <message>
        <source>size of the mats</source>
        <translation>Größe der Tischsets</translation>
    </message>
    <message>
        <source>the mats lie</source>
        <translation>die Tischsets liegen</translation>
    </message>
    <message>
        <source>along the sides</source>
        <extracomment>place mats along the two longer sides of a table</extracomment>
        <translation>an den Längsseiten</translation>
    </message>
    <message>
        <source>at the ends too</source>
        <extracomment>place mats along the sides of a table and at its two ends</extracomment>
        <translation>auch an den Enden</translation>
    </message>
    <message>
        <source>mats, %1 at most</source>
        <extracomment>so many place mats lie on the table</extracomment>
        <translation>Tischsets, höchstens %1</translation>
    </message>
    <message>
        <source>for the table</source>
        <translation>für den Tisch</translation>
    </message>
    <message>
        <source>one piece</source>
        <translation>ein Stück</translation>
    </message>
    <message>
        <source>a set of mats</source>
        <extracomment>place mats, one for each who sits at the table</extracomment>
        <translation>mehrere Tischsets</translation>
    </message>
    <message>
        <source>blocks in one, at most</source>
        <translation>Blöcke in jedem, höchstens</translation>
    </message>
    <message>
        <source>One mat: no more lie on this table.</source>
        <translation>Ein Tischset: mehr passen nicht auf diesen Tisch.</translation>
    </message>
    <message>
        <source>1 block</source>
        <translation>1 Block</translation>
    </message>
    <message>
        <source>%1 blocks</source>
        <translation>%1 Blöcke</translation>
    </message>
    <message>
        <source>1 strip</source>
        <translation>1 Streifen</translation>
    </message>
    <message>
        <source>%1 strips</source>
        <translation>%1 Streifen</translation>
    </message>
    <message>
        <source>1 hour</source>
        <translation>1 Stunde</translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation>%1 Stunden</translation>
    </message>
    <message>
        <source>%1 mats: %2 and %3 spare, %4, %5</source>
        <extracomment>%1 place mats; &quot;12 blocks&quot; in all of them; %3 spare blocks that they share; &quot;4 strips&quot;, &quot;3 hours&quot;</extracomment>
        <translation>%1 Tischsets: %2 und %3 als Ersatz, %4, %5</translation>
    </message>
    <message>
        <source>%1 × %2 of %3</source>
        <extracomment>a layout in short: columns × rows of blocks of a size</extracomment>
        <translation>%1 × %2 von %3</translation>
    </message>
</context>
</TS>
