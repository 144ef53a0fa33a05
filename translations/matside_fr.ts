<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en_GB">
<context>
    <name>ActsPage</name>
    <message>
        <source>Back to 1</source>
        <extracomment>on a sheet of numbered pictures that stand on several leaves: to the first picture</extracomment>
        <translation>Retour au 1</translation>
    </message>
    <message>
        <source>On to %1</source>
        <extracomment>the same: to the leaf that begins with picture %1</extracomment>
        <translation>Suite&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>AmountInHand</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1&#x202f;: moins</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1&#x202f;: plus</translation>
    </message>
</context>
<context>
    <name>AmountRow</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1&#x202f;: moins</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1&#x202f;: plus</translation>
    </message>
</context>
<context>
    <name>Band</name>
    <message>
        <source>Shelf</source>
        <extracomment>where the projects are kept</extracomment>
        <translation>Étagère</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Read</source>
        <extracomment>reads the step out; one short word on a narrow cell</extracomment>
        <translation>Lire</translation>
    </message>
    <message>
        <source>Read this step aloud</source>
        <translation>Lire cette étape à voix haute</translation>
    </message>
</context>
<context>
    <name>BattingSheet</name>
    <message>
        <source>Add this size</source>
        <extracomment>adds the size of a package of batting to those held against the roll</extracomment>
        <translation>Ajouter cette taille</translation>
    </message>
    <message>
        <source>Forget the sizes</source>
        <extracomment>takes all sizes of packages off the list</extracomment>
        <translation>Oublier les tailles</translation>
    </message>
</context>
<context>
    <name>BindingSection</name>
    <message>
        <source>seam</source>
        <translation>couture</translation>
    </message>
    <message>
        <source>past the seam</source>
        <extracomment>so far the fold of the binding lies beyond the seam, on the back</extracomment>
        <translation>au-delà de la couture</translation>
    </message>
    <message>
        <source>strip, cut</source>
        <extracomment>the width a strip of binding is cut</extracomment>
        <translation>bande, coupée</translation>
    </message>
    <message>
        <source>pressed in half</source>
        <extracomment>the strip of binding, folded along its middle with the iron</extracomment>
        <translation>pliée en deux au fer</translation>
    </message>
</context>
<context>
    <name>BlockLegend</name>
    <message>
        <source>as planned</source>
        <extracomment>beside a beaded line: the block&apos;s outline as it should be</extracomment>
        <translation>comme prévu</translation>
    </message>
    <message>
        <source>drawn %1 times as far off</source>
        <translation>écart dessiné %1 fois plus grand</translation>
    </message>
</context>
<context>
    <name>CardBar</name>
    <message>
        <source>A bar as long as a bank card</source>
        <translation>Une barre longue comme une carte bancaire</translation>
    </message>
    <message>
        <source>Bar shorter</source>
        <translation>Barre plus courte</translation>
    </message>
    <message>
        <source>Bar longer</source>
        <translation>Barre plus longue</translation>
    </message>
    <message>
        <source>Lay a bank card on the bar; make the bar as long as the card.</source>
        <translation>Poser une carte bancaire sur la barre&#x202f;; donner à la barre la longueur de la carte.</translation>
    </message>
</context>
<context>
    <name>Demo</name>
    <message>
        <source>Reading-room runner</source>
        <extracomment>the demo&apos;s name: a runner is a long narrow table topper</extracomment>
        <translation>Chemin de table</translation>
    </message>
    <message>
        <source>the square magnetic one</source>
        <extracomment>a hoop&apos;s own name</extracomment>
        <translation>le carré magnétique</translation>
    </message>
    <message>
        <source>oat linen</source>
        <extracomment>a cloth&apos;s own name, like those that follow</extracomment>
        <translation>lin avoine</translation>
    </message>
    <message>
        <source>small blue print</source>
        <translation>petit imprimé bleu</translation>
    </message>
    <message>
        <source>low-loft cotton</source>
        <extracomment>batting that stays flat</extracomment>
        <translation>molleton de coton fin</translation>
    </message>
    <message>
        <source>dark teal</source>
        <translation>bleu pétrole</translation>
    </message>
    <message>
        <source>rust</source>
        <translation>rouille</translation>
    </message>
    <message>
        <source>cream</source>
        <translation>crème</translation>
    </message>
    <message>
        <source>hull</source>
        <extracomment>a patch: the hull of a boat</extracomment>
        <translation>coque</translation>
    </message>
    <message>
        <source>sail</source>
        <translation>voile</translation>
    </message>
    <message>
        <source>long</source>
        <extracomment>a ruler&apos;s own name: the long one</extracomment>
        <translation>grand</translation>
    </message>
    <message>
        <source>square</source>
        <extracomment>a ruler&apos;s own name: the square one</extracomment>
        <translation>carré</translation>
    </message>
</context>
<context>
    <name>DimensionSteps</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1&#x202f;: moins</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1&#x202f;: plus</translation>
    </message>
</context>
<context>
    <name>DrawerFront</name>
    <message>
        <source>open</source>
        <extracomment>of a group in a list: what it holds is seen, or is not</extracomment>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>fermé</translation>
    </message>
</context>
<context>
    <name>DrawnInBlock</name>
    <message>
        <source>along</source>
        <extracomment>along the strip</extracomment>
        <translation>en long</translation>
    </message>
    <message>
        <source>across</source>
        <extracomment>across the strip</extracomment>
        <translation>en travers</translation>
    </message>
    <message>
        <source>as sent</source>
        <extracomment>the block&apos;s outline as the machine was told it</extracomment>
        <translation>comme envoyé</translation>
    </message>
    <message>
        <source>as it came, difference × %1</source>
        <extracomment>the stitched block, smaller than it was sent; %1 is 2, 5, 10 or 20</extracomment>
        <translation>comme brodé, écart × %1</translation>
    </message>
</context>
<context>
    <name>EdgeAside</name>
    <message>
        <source>Measure the piece</source>
        <translation>Mesurer l’ouvrage</translation>
    </message>
    <message>
        <source>Four sides and two diagonals, lying flat.</source>
        <translation>Quatre côtés et deux diagonales, bien à plat.</translation>
    </message>
    <message>
        <source>Stay-stitch {3 mm} from the raw edge across every sashing end.</source>
        <translation>Faire une piqûre de soutien à {3 mm} du bord brut, en travers de chaque bout de bande intermédiaire.</translation>
    </message>
    <message>
        <source>Stay-stitch {1/8 in} from the raw edge across every sashing end.</source>
        <translation>Faire une piqûre de soutien à {1/8 in} du bord brut, en travers de chaque bout de bande intermédiaire.</translation>
    </message>
    <message>
        <source>Where the joins fall</source>
        <translation>Où tombent les raccords</translation>
    </message>
    <message>
        <source>Seam {%1}, in section</source>
        <translation>Couture {%1}, en coupe</translation>
    </message>
    <message>
        <source>Care, label, sleeve, pillow</source>
        <translation>Entretien, étiquette, manchon, coussin</translation>
    </message>
    <message>
        <source>How the frame goes on</source>
        <translation>Poser l’encadrement</translation>
    </message>
</context>
<context>
    <name>EdgeBound</name>
    <message>
        <source>The bound edge in section, seam %1</source>
        <translation>Le bord fini en coupe, couture %1</translation>
    </message>
</context>
<context>
    <name>EdgeCare</name>
    <message>
        <source>Care, label, sleeve, pillow</source>
        <translation>Entretien, étiquette, manchon, coussin</translation>
    </message>
    <message>
        <source>As a pillow, from the back</source>
        <translation>En coussin, vu de dos</translation>
    </message>
</context>
<context>
    <name>EdgeCornerNear</name>
    <message>
        <source>A corner close to</source>
        <translation>Un coin de près</translation>
    </message>
    <message>
        <source>along</source>
        <extracomment>so many scallops along the piece</extracomment>
        <translation>en long</translation>
    </message>
    <message>
        <source>across</source>
        <extracomment>so many scallops across the piece</extracomment>
        <translation>en travers</translation>
    </message>
</context>
<context>
    <name>EdgeCorners</name>
    <message>
        <source>square</source>
        <translation>droits</translation>
    </message>
    <message>
        <source>rounded</source>
        <translation>arrondis</translation>
    </message>
    <message>
        <source>radius</source>
        <translation>rayon</translation>
    </message>
    <message>
        <source>Radius of the corners</source>
        <translation>Rayon des coins</translation>
    </message>
    <message>
        <source>circle</source>
        <translation>cercle</translation>
    </message>
    <message>
        <source>round ends</source>
        <translation>bouts ronds</translation>
    </message>
    <message>
        <source>scallops</source>
        <translation>festons</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profondeur</translation>
    </message>
    <message>
        <source>Depth of the scallops</source>
        <translation>Profondeur des festons</translation>
    </message>
    <message>
        <source>scallops along</source>
        <translation>festons en long</translation>
    </message>
    <message>
        <source>scallops across</source>
        <translation>festons en travers</translation>
    </message>
    <message>
        <source>Corners</source>
        <translation>Coins</translation>
    </message>
</context>
<context>
    <name>EdgeDrawing</name>
    <message>
        <source>begin</source>
        <extracomment>the place where the binding begins and closes</extracomment>
        <translation>début</translation>
    </message>
    <message>
        <source>deep</source>
        <extracomment>how deep the scallops are cut</extracomment>
        <translation>de profondeur</translation>
    </message>
    <message>
        <source>radius</source>
        <extracomment>of a rounded corner</extracomment>
        <translation>rayon</translation>
    </message>
</context>
<context>
    <name>EdgeFrame</name>
    <message>
        <source>The frame</source>
        <translation>L’encadrement</translation>
    </message>
</context>
<context>
    <name>EdgeJoins</name>
    <message>
        <source>Lay the binding round once before you sew</source>
        <translation>Poser la bande de finition tout autour une fois avant de coudre</translation>
    </message>
    <message>
        <source>Seen from the front, the strip laid clockwise. Each place is the middle of a seam at 45°.</source>
        <translation>Vu du devant, la bande posée dans le sens des aiguilles d’une montre. Chaque marque est le milieu d’une couture à 45°.</translation>
    </message>
    <message>
        <source>At top and bottom measured from the left, at the sides from the top.</source>
        <extracomment>how far each join of the binding lies from a corner of the piece</extracomment>
        <translation>En haut et en bas, mesuré depuis la gauche&#x202f;; sur les côtés, depuis le haut.</translation>
    </message>
</context>
<context>
    <name>EdgeMeasure</name>
    <message>
        <source>What is not read stands as planned. The limits are common practice; no published ones are known.</source>
        <translation>Ce qui n’est pas mesuré reste comme prévu. Les limites sont d’usage courant&#x202f;; on n’en connaît pas de publiées.</translation>
    </message>
</context>
<context>
    <name>EdgePage</name>
    <message>
        <source>The piece. %1</source>
        <translation>L’ouvrage. %1</translation>
    </message>
    <message>
        <source>The binding laid round. %1</source>
        <translation>La bande de finition posée tout autour. %1</translation>
    </message>
    <message>
        <source>The finished piece</source>
        <translation>L’ouvrage fini</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Mesurer</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>The piece with its frame</source>
        <translation>L’ouvrage avec son encadrement</translation>
    </message>
    <message>
        <source>Measure all six, raw edge to raw edge.</source>
        <translation>Mesurer les six, de bord brut à bord brut.</translation>
    </message>
</context>
<context>
    <name>EdgePins</name>
    <message>
        <source>pins in</source>
        <translation>épingles posées</translation>
    </message>
    <message>
        <source>pins out</source>
        <translation>épingles ôtées</translation>
    </message>
    <message>
        <source>%1 less</source>
        <translation>%1&#x202f;: moins</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1&#x202f;: plus</translation>
    </message>
    <message>
        <source>No pins were used</source>
        <translation>Aucune épingle utilisée</translation>
    </message>
    <message>
        <source>I know where they are</source>
        <translation>Elles sont retrouvées</translation>
    </message>
    <message>
        <source>I know where it is</source>
        <translation>Elle est retrouvée</translation>
    </message>
</context>
<context>
    <name>EdgeSection</name>
    <message>
        <source>Double fold: cut {%1}, pressed in half to {%2}</source>
        <translation>Pli double&#x202f;: couper {%1}, plier en deux au fer à {%2}</translation>
    </message>
    <message>
        <source>Single fold: cut {%1}</source>
        <translation>Pli simple&#x202f;: couper {%1}</translation>
    </message>
    <message>
        <source>On the back the fold just covers the seam; sewn down by hand.</source>
        <translation>Au dos, le pli couvre tout juste la couture&#x202f;; cousu à la main.</translation>
    </message>
    <message>
        <source>On the back the fold passes the seam, so that stitching from the front catches it.</source>
        <translation>Au dos, le pli dépasse la couture, pour que la piqûre faite sur le devant le prenne.</translation>
    </message>
</context>
<context>
    <name>FieldItem</name>
    <message>
        <source>not said</source>
        <extracomment>a price nobody has entered</extracomment>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is what is decided, %2 the value it has</extracomment>
        <translation>%1&#x202f;: %2</translation>
    </message>
</context>
<context>
    <name>FieldRow</name>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
</context>
<context>
    <name>FieldValue</name>
    <message>
        <source>%1, worked out</source>
        <extracomment>%1 is a value that the plan works out by itself</extracomment>
        <translation>%1, calculé</translation>
    </message>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1&#x202f;: moins</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1&#x202f;: plus</translation>
    </message>
</context>
<context>
    <name>FieldsProblem</name>
    <message>
        <source>Look at this</source>
        <extracomment>the head of a line that warns of something but stops nothing</extracomment>
        <translation>À regarder</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <extracomment>after the first of several cautions; %1 is how many more there are</extracomment>
        <translation>et %1 de plus</translation>
    </message>
</context>
<context>
    <name>FieldsSheet</name>
    <message>
        <source>What would fit</source>
        <translation>Ce qui convient</translation>
    </message>
    <message>
        <source>What follows</source>
        <translation>Ce qui en découle</translation>
    </message>
    <message>
        <source>A file of this project</source>
        <translation>Un fichier de ce projet</translation>
    </message>
    <message>
        <source>Light and dark</source>
        <extracomment>the page on how light and how dark the cloths are</extracomment>
        <translation>Clair et foncé</translation>
    </message>
</context>
<context>
    <name>FigureRow</name>
    <message>
        <source>not tried yet</source>
        <translation>pas encore essayé</translation>
    </message>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a figure does</extracomment>
        <translation>montrer le calcul</translation>
    </message>
</context>
<context>
    <name>FiguresColumn</name>
    <message>
        <source>Dotted figures: your trial may still change them.</source>
        <extracomment>how figures are marked that the trial has not confirmed</extracomment>
        <translation>Chiffres soulignés de points&#x202f;: l’essai peut encore les changer.</translation>
    </message>
</context>
<context>
    <name>FinishedSize</name>
    <message>
        <source>Finished %1 by %2</source>
        <translation>Fini %1 sur %2</translation>
    </message>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a figure does</extracomment>
        <translation>montrer le calcul</translation>
    </message>
</context>
<context>
    <name>FirstRun</name>
    <message>
        <source>The shelf is empty.</source>
        <translation>L’étagère est vide.</translation>
    </message>
    <message>
        <source>Begin with the demo, ready to cut, or with nine blocks of your own.</source>
        <translation>Commencer par l’exemple, prêt à couper, ou par un nouvel ouvrage de neuf blocs.</translation>
    </message>
    <message>
        <source>Open the demo</source>
        <translation>Ouvrir l’exemple</translation>
    </message>
    <message>
        <source>Pieces put away: %1</source>
        <extracomment>every piece was put away, out of sight; %1 is how many</extracomment>
        <translation>Ouvrages rangés&#x202f;: %1</translation>
    </message>
    <message>
        <source>Nothing else is on the shelf. What was put away can be brought back.</source>
        <translation>Rien d’autre n’est sur l’étagère. Ce qui est rangé peut ressortir.</translation>
    </message>
    <message>
        <source>Show what is put away</source>
        <translation>Montrer ce qui est rangé</translation>
    </message>
</context>
<context>
    <name>FitLayouts</name>
    <message>
        <source>What would fit</source>
        <translation>Ce qui convient</translation>
    </message>
    <message>
        <source>Show what fits</source>
        <translation>Voir ce qui convient</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Take this layout</source>
        <extracomment>layout: how many blocks across and down, their size and the sashing between them</extracomment>
        <translation>Prendre cette disposition</translation>
    </message>
    <message>
        <source>Open for reading only.</source>
        <translation>Ouvert en lecture seule.</translation>
    </message>
    <message>
        <source>Press one to see it on the table.</source>
        <translation>En toucher une pour la voir sur la table.</translation>
    </message>
    <message>
        <source>Mend it</source>
        <extracomment>leads to the field that must be mended first</extracomment>
        <translation>Corriger</translation>
    </message>
    <message>
        <source>The blocks</source>
        <extracomment>leads to what is wanted of the blocks, or back to what is wanted at the table</extracomment>
        <translation>Les blocs</translation>
    </message>
    <message>
        <source>The table</source>
        <translation>La table</translation>
    </message>
</context>
<context>
    <name>FitMade</name>
    <message>
        <source>A change here leaves it as it is.</source>
        <extracomment>what is made: the strips and blocks named before</extracomment>
        <translation>Un changement ici le laisse tel quel.</translation>
    </message>
</context>
<context>
    <name>FitScene</name>
    <message>
        <source>Show the back</source>
        <extracomment>the other face of the piece, in the drawing</extracomment>
        <translation>Montrer le dos</translation>
    </message>
    <message>
        <source>Show the front</source>
        <translation>Montrer le devant</translation>
    </message>
    <message>
        <source>%1 mats on the table, each %2 by %3</source>
        <extracomment>place mats: so many, and their two sides</extracomment>
        <translation>%1 sets de table sur la table, chacun de %2 sur %3</translation>
    </message>
    <message>
        <source>The piece on the table, %1 by %2</source>
        <translation>L’ouvrage sur la table, %1 sur %2</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>colonnes</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>rangées</translation>
    </message>
    <message>
        <source>block</source>
        <translation>bloc</translation>
    </message>
</context>
<context>
    <name>FitWanted</name>
    <message>
        <source>Change what is wanted</source>
        <translation>Changer le souhait</translation>
    </message>
    <message>
        <source>Wanted: %1</source>
        <extracomment>what the layouts below are looked for: so much bare table, or a finished size</extracomment>
        <translation>Souhaité&#x202f;: %1</translation>
    </message>
    <message>
        <source>change</source>
        <translation>changer</translation>
    </message>
</context>
<context>
    <name>FootFigure</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>show the working</source>
        <translation>montrer le calcul</translation>
    </message>
</context>
<context>
    <name>GalleryCell</name>
    <message>
        <source>Block %1, %2</source>
        <extracomment>spoken: a block&apos;s name and its state</extracomment>
        <translation>Bloc %1, %2</translation>
    </message>
    <message>
        <source>with a note</source>
        <extracomment>spoken: words were written of the block</extracomment>
        <translation>avec une note</translation>
    </message>
</context>
<context>
    <name>GalleryNotes</name>
    <message>
        <source>Block %1</source>
        <translation>Bloc %1</translation>
    </message>
    <message>
        <source>Nothing is noted of block %1 yet</source>
        <translation>Rien n’est encore noté du bloc %1</translation>
    </message>
    <message>
        <source>Back to the gallery</source>
        <translation>Retour aux images</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is a block&apos;s name, %2 its measured size</extracomment>
        <translation>%1&#x202f;: %2</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Devant</translation>
    </message>
    <message>
        <source>Back face</source>
        <translation>Dos</translation>
    </message>
</context>
<context>
    <name>GalleryPage</name>
    <message>
        <source>Back to the work</source>
        <translation>Retour au travail</translation>
    </message>
    <message>
        <source>%1 of %2 blocks have a photograph</source>
        <extracomment>%1 of %2 blocks have a photograph</extracomment>
        <translation>Blocs avec photo&#x202f;: %1 sur %2</translation>
    </message>
</context>
<context>
    <name>GroupHead</name>
    <message>
        <source>open</source>
        <extracomment>of a group in a list: what it holds is seen, or is not</extracomment>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>fermé</translation>
    </message>
</context>
<context>
    <name>HelperView</name>
    <message>
        <source>Nothing left to do here</source>
        <translation>Plus rien à faire ici</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>No step is at hand.</source>
        <translation>Aucune étape en cours.</translation>
    </message>
</context>
<context>
    <name>HelperWindow</name>
    <message>
        <source>For helpers: Matside</source>
        <translation>Pour les aides&#x202f;: Matside</translation>
    </message>
    <message>
        <source>Close</source>
        <extracomment>closes the helper&apos;s window</extracomment>
        <translation>Fermer</translation>
    </message>
</context>
<context>
    <name>HoldButton</name>
    <message>
        <source>hold for a second</source>
        <extracomment>how a button that destroys is pressed</extracomment>
        <translation>appui d’une seconde</translation>
    </message>
</context>
<context>
    <name>HoopAside</name>
    <message>
        <source>Last outline ended at {%1}</source>
        <translation>Le dernier contour s’est terminé à {%1}</translation>
    </message>
    <message>
        <source>Stops and patches</source>
        <translation>Arrêts et pièces</translation>
    </message>
    <message>
        <source>Gaps can yield sashing</source>
        <translation>Les intervalles peuvent donner des bandes intermédiaires</translation>
    </message>
    <message>
        <source>Hoops</source>
        <translation>Cadres</translation>
    </message>
    <message>
        <source>Pictures and notes</source>
        <translation>Images et notes</translation>
    </message>
</context>
<context>
    <name>HoopChoice</name>
    <message>
        <source>Another hoop</source>
        <translation>Autre cadre</translation>
    </message>
    <message>
        <source>Hoops</source>
        <translation>Cadres</translation>
    </message>
</context>
<context>
    <name>HoopDrawUp</name>
    <message>
        <source>Draw-up</source>
        <extracomment>draw-up: how much the stitching shrinks the block</extracomment>
        <translation>Retrait</translation>
    </message>
    <message>
        <source>Take it for the blocks to come</source>
        <translation>Prendre pour les blocs à venir</translation>
    </message>
    <message>
        <source>Taken for the blocks to come.</source>
        <translation>Pris pour les blocs à venir.</translation>
    </message>
</context>
<context>
    <name>HoopDrawing</name>
    <message>
        <source>the frame’s outside, edge to edge</source>
        <translation>l’extérieur du cadre, de bord à bord</translation>
    </message>
    <message>
        <source>the opening inside the frame</source>
        <translation>l’ouverture dans le cadre</translation>
    </message>
    <message>
        <source>the field: as far as the needle stitches</source>
        <extracomment>field: as far as the needle can stitch</extracomment>
        <translation>le champ de broderie&#x202f;: jusqu’où l’aiguille pique</translation>
    </message>
</context>
<context>
    <name>HoopMeasure</name>
    <message>
        <source>A hoop’s name is not its field. Measure all three.</source>
        <translation>Le nom d’un cadre n’est pas son champ de broderie. Mesurer les trois.</translation>
    </message>
    <message>
        <source>where the %1 is measured</source>
        <translation>où se mesure&#x202f;: %1</translation>
    </message>
    <message>
        <source>two rings</source>
        <translation>deux anneaux</translation>
    </message>
    <message>
        <source>magnetic</source>
        <translation>magnétique</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>non mesuré</translation>
    </message>
    <message>
        <source>Side of the machine’s bracket</source>
        <extracomment>bracket: the arm that carries the hoop; on that side the strip would run into the machine</extracomment>
        <translation>Côté du support de cadre</translation>
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
        <source>Hold to take it off the shelf</source>
        <translation>Appui long&#x202f;: retirer de l’étagère</translation>
    </message>
    <message>
        <source>All hoops</source>
        <translation>Tous les cadres</translation>
    </message>
</context>
<context>
    <name>HoopPage</name>
    <message>
        <source>Pictures and notes</source>
        <translation>Images et notes</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
</context>
<context>
    <name>HoopRack</name>
    <message>
        <source>%1 to spare</source>
        <extracomment>what the block leaves of the hoop&apos;s field</extracomment>
        <translation>%1 de jeu</translation>
    </message>
    <message>
        <source>%1 too large</source>
        <extracomment>how much the block is over the hoop&apos;s field</extracomment>
        <translation>trop grand de %1</translation>
    </message>
    <message>
        <source>Its measures</source>
        <translation>Ses mesures</translation>
    </message>
</context>
<context>
    <name>HoopShelf</name>
    <message>
        <source>stitching field, along</source>
        <translation>champ de broderie, en long</translation>
    </message>
    <message>
        <source>stitching field, across</source>
        <translation>champ de broderie, en travers</translation>
    </message>
    <message>
        <source>opening inside the frame, along</source>
        <translation>ouverture du cadre, en long</translation>
    </message>
    <message>
        <source>opening inside the frame, across</source>
        <translation>ouverture du cadre, en travers</translation>
    </message>
    <message>
        <source>outside of the frame, along</source>
        <translation>extérieur du cadre, en long</translation>
    </message>
    <message>
        <source>outside of the frame, across</source>
        <translation>extérieur du cadre, en travers</translation>
    </message>
    <message>
        <source>thickest sandwich it holds</source>
        <extracomment>sandwich: top, batting and back together</extracomment>
        <translation>épaisseur maximale qu’il tient</translation>
    </message>
</context>
<context>
    <name>HoopStops</name>
    <message>
        <source>Block %1, stop by stop</source>
        <translation>Bloc %1, arrêt par arrêt</translation>
    </message>
    <message>
        <source>New bobbin in</source>
        <translation>Canette changée</translation>
    </message>
    <message>
        <source>Stop by stop</source>
        <translation>Arrêt par arrêt</translation>
    </message>
</context>
<context>
    <name>HoopZero</name>
    <message>
        <source>The last outline really ended at</source>
        <translation>Fin réelle du dernier contour</translation>
    </message>
    <message>
        <source>from the zero end</source>
        <translation>depuis le bout zéro</translation>
    </message>
    <message>
        <source>Measure from the zero end, not from the block before: then no error piles up.</source>
        <translation>Mesurer depuis le bout zéro, pas depuis le bloc d’avant&#x202f;: ainsi aucune erreur ne s’ajoute.</translation>
    </message>
</context>
<context>
    <name>JoinAside</name>
    <message>
        <source>Measure this row</source>
        <translation>Mesurer cette rangée</translation>
    </message>
    <message>
        <source>Seam {%1} catch {%2}</source>
        <translation>Couture {%1} prise {%2}</translation>
    </message>
    <message>
        <source>Seam {%1}</source>
        <translation>Couture {%1}</translation>
    </message>
    <message>
        <source>True-size gauge</source>
        <translation>Gabarit grandeur réelle</translation>
    </message>
    <message>
        <source>Layout, front and back</source>
        <translation>Disposition, devant et dos</translation>
    </message>
    <message>
        <source>Two blocks should change places</source>
        <translation>Deux blocs devraient changer de place</translation>
    </message>
    <message>
        <source>Filling and closing</source>
        <translation>Molleton et fermeture</translation>
    </message>
    <message>
        <source>Never fold {%1} under: the stitches in the ditch would miss it.</source>
        <extracomment>a fold so wide that the ditch stitching would not catch it</extracomment>
        <translation>Ne jamais rentrer {%1}&#x202f;: les points dans le sillon de la couture ne le prendraient pas.</translation>
    </message>
</context>
<context>
    <name>JoinGauge</name>
    <message>
        <source>True size</source>
        <translation>Grandeur réelle</translation>
    </message>
    <message>
        <source>Pins out, cloth cool and dry, do not press on the glass.</source>
        <translation>Épingles ôtées, tissu froid et sec, ne pas appuyer sur la vitre.</translation>
    </message>
    <message>
        <source>catch</source>
        <translation>prise</translation>
    </message>
    <message>
        <source>fold under</source>
        <translation>rentré</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>couture</translation>
    </message>
    <message>
        <source>True only after the screen was set against a card, at the foot of the shelf.</source>
        <translation>Exact seulement une fois l’écran réglé avec une carte&#x202f;: au bas de l’étagère.</translation>
    </message>
</context>
<context>
    <name>JoinLayout</name>
    <message>
        <source>Layout of the blocks; next: %1</source>
        <translation>Disposition des blocs&#x202f;; ensuite&#x202f;: %1</translation>
    </message>
    <message>
        <source>Touch two blocks to swap them; their labels stay with them.</source>
        <translation>Toucher deux blocs pour les échanger&#x202f;; leurs étiquettes restent avec eux.</translation>
    </message>
    <message>
        <source>Now the other one.</source>
        <translation>Maintenant l’autre.</translation>
    </message>
    <message>
        <source>Swap them</source>
        <translation>Échanger</translation>
    </message>
    <message>
        <source>See the front</source>
        <translation>Voir le devant</translation>
    </message>
    <message>
        <source>See the back</source>
        <translation>Voir le dos</translation>
    </message>
</context>
<context>
    <name>JoinMap</name>
    <message>
        <source>back, as it lies turned over</source>
        <translation>dos, tel qu’il est une fois retourné</translation>
    </message>
    <message>
        <source>front</source>
        <translation>devant</translation>
    </message>
</context>
<context>
    <name>JoinPage</name>
    <message>
        <source>Section of a join: seam %1, fold under %2, catch %3</source>
        <translation>Coupe d’un assemblage&#x202f;: couture %1, rentré %2, prise %3</translation>
    </message>
    <message>
        <source>Match marks from the row’s raw end, now at %1</source>
        <translation>Repères depuis le bout brut de la rangée, maintenant à %1</translation>
    </message>
    <message>
        <source>Layout of the blocks; next: %1</source>
        <translation>Disposition des blocs&#x202f;; ensuite&#x202f;: %1</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Section of a join: seam %1</source>
        <translation>Coupe d’un assemblage&#x202f;: couture %1</translation>
    </message>
    <message>
        <source>Section of a join: seam %1, back strip doubled, catch %2</source>
        <translation>Coupe d’un assemblage&#x202f;: couture %1, bande du dos pliée en deux, prise %2</translation>
    </message>
    <message>
        <source>Section of the test join: seam %1, overlap %2</source>
        <translation>Coupe de l’assemblage d’essai&#x202f;: couture %1, recouvrement %2</translation>
    </message>
    <message>
        <source>Section of the test join: seam %1, gap %2</source>
        <translation>Coupe de l’assemblage d’essai&#x202f;: couture %1, espace %2</translation>
    </message>
    <message>
        <source>Section of the test join: seam %1, the edges meet</source>
        <translation>Coupe de l’assemblage d’essai&#x202f;: couture %1, les bords se touchent</translation>
    </message>
    <message>
        <source>Section of the test join, with what is read of it</source>
        <translation>Coupe de l’assemblage d’essai, avec ses mesures</translation>
    </message>
    <message>
        <source>Match marks: the middle of each short sashing</source>
        <extracomment>over the tape on which the match marks of a long sashing are read, from the row&apos;s raw left end</extracomment>
        <translation>Repères&#x202f;: milieu de chaque bande intermédiaire courte</translation>
    </message>
</context>
<context>
    <name>JoinRow</name>
    <message>
        <source>%1: how long is it, raw end to raw end?</source>
        <translation>%1&#x202f;: quelle longueur, de bout brut à bout brut&#x202f;?</translation>
    </message>
    <message>
        <source>Enter its length</source>
        <translation>Saisir sa longueur</translation>
    </message>
    <message>
        <source>Length of the row, raw end to raw end</source>
        <translation>Longueur de la rangée, de bout brut à bout brut</translation>
    </message>
    <message>
        <source>Lay it flat, not stretched. How much may be eased is common practice; no published limit is known.</source>
        <translation>La poser à plat, sans l’étirer. L’ampleur à résorber relève de l’usage&#x202f;; aucune limite publiée n’est connue.</translation>
    </message>
</context>
<context>
    <name>JoinTest</name>
    <message>
        <source>The gap moves four times as fast as the seam.</source>
        <translation>L’espace change quatre fois plus vite que la couture.</translation>
    </message>
</context>
<context>
    <name>JoinWays</name>
    <message>
        <source>Filling and closing</source>
        <translation>Molleton et fermeture</translation>
    </message>
    <message>
        <source>What is cut already stays as it is; what no longer fits is named.</source>
        <translation>Ce qui est déjà coupé reste tel quel&#x202f;; ce qui ne va plus est signalé.</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>Cancel</source>
        <translation>Abandonner</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
</context>
<context>
    <name>KeypadDigits</name>
    <message>
        <source>decimal point</source>
        <translation>virgule décimale</translation>
    </message>
</context>
<context>
    <name>KeypadRub</name>
    <message>
        <source>clear</source>
        <translation>effacer</translation>
    </message>
    <message>
        <source>rub out the last</source>
        <translation>effacer le dernier</translation>
    </message>
</context>
<context>
    <name>KitBundles</name>
    <message>
        <source>yours</source>
        <extracomment>under the bundle that is the teacher&apos;s own kit</extracomment>
        <translation>démonstration</translation>
    </message>
</context>
<context>
    <name>KitsSheet</name>
    <message>
        <source>What is cut</source>
        <translation>Ce qui se coupe</translation>
    </message>
    <message>
        <source>no kits yet</source>
        <translation>pas encore de kits</translation>
    </message>
    <message>
        <source>Say how many students: each gets a kit, one is yours, and there is a spare for every ten or part of ten.</source>
        <translation>Indiquer le nombre d’élèves&#x202f;: un kit chacun, un pour la démonstration, et un de réserve par dizaine entamée.</translation>
    </message>
</context>
<context>
    <name>LanguageChoice</name>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
</context>
<context>
    <name>LayUp</name>
    <message>
        <source>backing, wrong side up</source>
        <extracomment>how the backing lies on the table when a hoop strip is laid up</extracomment>
        <translation>tissu dos, envers visible</translation>
    </message>
    <message>
        <source>batting</source>
        <translation>molleton</translation>
    </message>
    <message>
        <source>front, right side up</source>
        <extracomment>how the front lies on the batting</extracomment>
        <translation>devant, endroit visible</translation>
    </message>
</context>
<context>
    <name>LogFace</name>
    <message>
        <source>Photo: %1</source>
        <extracomment>%1 is &quot;Front&quot; or &quot;Back face&quot;</extracomment>
        <translation>Photo&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>LogFlags</name>
    <message>
        <source>What to remember of block %1</source>
        <translation>À retenir du bloc %1</translation>
    </message>
    <message>
        <source>Words, if you like</source>
        <translation>Note (facultative)</translation>
    </message>
    <message>
        <source>Back to the block</source>
        <translation>Retour au bloc</translation>
    </message>
</context>
<context>
    <name>LogSheet</name>
    <message>
        <source>Front</source>
        <translation>Devant</translation>
    </message>
    <message>
        <source>Back face</source>
        <translation>Dos</translation>
    </message>
    <message>
        <source>along</source>
        <extracomment>the stitched outline&apos;s size along the strip</extracomment>
        <translation>en long</translation>
    </message>
    <message>
        <source>across</source>
        <extracomment>the stitched outline&apos;s size across the strip</extracomment>
        <translation>en travers</translation>
    </message>
    <message>
        <source>Same as planned</source>
        <translation>Comme prévu</translation>
    </message>
    <message>
        <source>Log these measures</source>
        <translation>Noter ces mesures</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is &quot;Block A1&quot;, %2 where it was stitched</extracomment>
        <translation>%1&#x202f;: %2</translation>
    </message>
    <message>
        <source>Flag or note</source>
        <extracomment>marks something worth remembering of a block, or writes it in words</extracomment>
        <translation>Signaler, noter</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>%1: Matside</source>
        <translation>%1&#x202f;: Matside</translation>
    </message>
    <message>
        <source>%1 cannot be read.</source>
        <translation>%1 ne peut pas être lu.</translation>
    </message>
    <message>
        <source>The window could not be opened.</source>
        <translation>La fenêtre n’a pas pu être ouverte.</translation>
    </message>
    <message>
        <source>The paper is a4 or letter.</source>
        <translation>Le papier est a4 ou letter.</translation>
    </message>
    <message>
        <source>--sheet OUT.pdf needs a project file after it.</source>
        <translation>--sheet OUT.pdf doit être suivi d’un fichier de projet.</translation>
    </message>
    <message>
        <source>The next cut, beside the cutting mat.</source>
        <translation>La prochaine coupe, à côté du tapis de coupe.</translation>
    </message>
    <message>
        <source>Keep the data in this folder.</source>
        <translation>Garder les données dans ce dossier.</translation>
    </message>
    <message>
        <source>Open the demo project.</source>
        <translation>Ouvrir le projet d’exemple.</translation>
    </message>
    <message>
        <source>Print the plan of a project file (- for standard input).</source>
        <translation>Afficher le plan d’un fichier de projet (- pour l’entrée standard).</translation>
    </message>
    <message>
        <source>Draw every station into this folder.</source>
        <translation>Dessiner chaque poste dans ce dossier.</translation>
    </message>
    <message>
        <source>Write the project named last, with its notes and photographs, to a new file.</source>
        <translation>Écrire le projet nommé en dernier, avec ses notes et ses photos, dans un nouveau fichier.</translation>
    </message>
    <message>
        <source>Say what is inside such a file.</source>
        <translation>Dire ce que contient un tel fichier.</translation>
    </message>
    <message>
        <source>Say what is inside, and add it to the shelf.</source>
        <translation>Dire ce qu’il contient, et le mettre sur l’étagère.</translation>
    </message>
    <message>
        <source>Write the paper sheet of a project file.</source>
        <translation>Écrire la feuille de papier d’un fichier de projet.</translation>
    </message>
    <message>
        <source>Paper of the sheet: a4 or letter.</source>
        <translation>Papier de la feuille&#x202f;: a4 ou letter.</translation>
    </message>
    <message>
        <source>The sheet on one page.</source>
        <translation>La feuille sur une seule page.</translation>
    </message>
    <message>
        <source>Write everything to one new file.</source>
        <translation>Tout écrire dans un nouveau fichier.</translation>
    </message>
    <message>
        <source>Put a backup in place where no project is yet.</source>
        <translation>Remettre une sauvegarde là où il n’y a pas encore de projet.</translation>
    </message>
    <message>
        <source>Speak this language: %1.</source>
        <translation>Parler cette langue&#x202f;: %1.</translation>
    </message>
    <message>
        <source>A project, share or backup file to look into, or a project file for --pictures or --sheet.</source>
        <translation>Un fichier de projet, de partage ou de sauvegarde à regarder, ou un fichier de projet pour --pictures ou --sheet.</translation>
    </message>
    <message>
        <source>The language is one of %1.</source>
        <translation>La langue est l’une de&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Annulé&#x202f;: %1</translation>
    </message>
    <message>
        <source>--diagrams FOLDER needs a project file after it.</source>
        <translation>--diagrams FOLDER doit être suivi d’un fichier de projet.</translation>
    </message>
    <message>
        <source>The form is long, short or class.</source>
        <translation>La forme est long, short ou class.</translation>
    </message>
    <message>
        <source>Write the drawings of the sheet as SVG files.</source>
        <translation>Écrire les dessins de la feuille en fichiers SVG.</translation>
    </message>
    <message>
        <source>Form of the sheet: long, short, or class, with a list for every kit.</source>
        <translation>Forme de la feuille&#x202f;: long, short, ou class, avec une liste pour chaque kit.</translation>
    </message>
</context>
<context>
    <name>MeasureSheet</name>
    <message>
        <source>Take the common size</source>
        <translation>Prendre la taille commune</translation>
    </message>
    <message>
        <source>The limits are common practice; no published ones are known.</source>
        <translation>Les limites sont d’usage courant&#x202f;; on n’en connaît pas de publiées.</translation>
    </message>
    <message>
        <source>Keep these readings</source>
        <extracomment>on a button: the block&apos;s readings are kept, and the common size is not taken</extracomment>
        <translation>Garder ces mesures</translation>
    </message>
    <message>
        <source>Block %1: outer stitches</source>
        <translation>Bloc %1&#x202f;: piqûre extérieure</translation>
    </message>
    <message>
        <source>A side misread by 6 mm is noticed four times in five, by 10 mm always.</source>
        <translation>Un côté mal lu de 6&#xa0;mm se remarque quatre fois sur cinq, de 10&#xa0;mm toujours.</translation>
    </message>
    <message>
        <source>A side misread by 1/4 in is noticed four times in five, by 3/8 in always.</source>
        <translation>Un côté mal lu de 1/4 in se remarque quatre fois sur cinq, de 3/8 in toujours.</translation>
    </message>
    <message>
        <source>Keep only the readings</source>
        <translation>Garder seulement les mesures</translation>
    </message>
    <message>
        <source>See the common size</source>
        <translation>Voir la taille commune</translation>
    </message>
    <message>
        <source>The rest is as shown</source>
        <translation>Le reste comme affiché</translation>
    </message>
    <message>
        <source>Back without measuring</source>
        <translation>Retour sans mesurer</translation>
    </message>
    <message>
        <source>Not measured: reckon with the plan</source>
        <extracomment>on a button: the block is trimmed by the planned figures</extracomment>
        <translation>Pas mesuré&#x202f;: compter avec le plan</translation>
    </message>
    <message>
        <source>Read again: %1</source>
        <extracomment>on a button: %1 is the one of a block&apos;s six readings to be taken again, or for the first time: &quot;top&quot;</extracomment>
        <translation>Mesurer de nouveau&#x202f;: %1</translation>
    </message>
    <message>
        <source>Read: %1</source>
        <translation>Mesurer&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>Merge</name>
    <message>
        <source>the project’s name</source>
        <translation>nom du projet</translation>
    </message>
    <message>
        <source>cutting hand</source>
        <extracomment>the hand she holds the cutter in</extracomment>
        <translation>main qui coupe</translation>
    </message>
    <message>
        <source>which block goes where</source>
        <translation>quel bloc va où</translation>
    </message>
    <message>
        <source>draw-up</source>
        <translation>retrait</translation>
    </message>
    <message>
        <source>corners</source>
        <translation>coins</translation>
    </message>
    <message>
        <source>hoop</source>
        <translation>cadre</translation>
    </message>
    <message>
        <source>hoop’s field</source>
        <translation>champ de broderie du cadre</translation>
    </message>
    <message>
        <source>hoop’s opening</source>
        <translation>ouverture du cadre</translation>
    </message>
    <message>
        <source>hoop’s outside</source>
        <translation>extérieur du cadre</translation>
    </message>
    <message>
        <source>thickest sandwich in the hoop</source>
        <extracomment>sandwich: front, batting and back together</extracomment>
        <translation>épaisseur maximale dans le cadre</translation>
    </message>
    <message>
        <source>side of the hoop’s bracket</source>
        <translation>côté du support de cadre</translation>
    </message>
    <message>
        <source>gaps that give sashing</source>
        <translation>intervalles qui donnent des bandes intermédiaires</translation>
    </message>
    <message>
        <source>kits cut from the same strips</source>
        <translation>kits coupés dans les mêmes bandes</translation>
    </message>
    <message>
        <source>between stippling lines</source>
        <translation>entre les lignes du vermiculé</translation>
    </message>
    <message>
        <source>stitch length</source>
        <translation>longueur de point</translation>
    </message>
    <message>
        <source>thread on a bobbin</source>
        <translation>fil sur une canette</translation>
    </message>
    <message>
        <source>stitches a minute</source>
        <translation>points par minute</translation>
    </message>
    <message>
        <source>patches trimmed at the machine</source>
        <translation>pièces rognées à la machine</translation>
    </message>
    <message>
        <source>ruler “%1”</source>
        <translation>règle «&#x202f;%1&#x202f;»</translation>
    </message>
    <message>
        <source>design “%1”</source>
        <translation>motif «&#x202f;%1&#x202f;»</translation>
    </message>
    <message>
        <source>cloth “%1”</source>
        <translation>tissu «&#x202f;%1&#x202f;»</translation>
    </message>
    <message>
        <source>patch “%1”</source>
        <extracomment>patch: a shape of cloth stitched onto the block</extracomment>
        <translation>pièce «&#x202f;%1&#x202f;»</translation>
    </message>
    <message>
        <source>test block, as measured</source>
        <translation>bloc d’essai, mesuré</translation>
    </message>
    <message>
        <source>test join, as measured</source>
        <translation>assemblage d’essai, mesuré</translation>
    </message>
    <message>
        <source>draw-up taken from the first blocks</source>
        <translation>retrait pris sur les premiers blocs</translation>
    </message>
    <message>
        <source>trial put off</source>
        <translation>essai reporté</translation>
    </message>
    <message>
        <source>whole piece, as measured</source>
        <translation>ouvrage entier, mesuré</translation>
    </message>
    <message>
        <source>pins counted, in and out</source>
        <translation>épingles comptées, posées et ôtées</translation>
    </message>
    <message>
        <source>cloth “%1”, as bought</source>
        <translation>tissu «&#x202f;%1&#x202f;», tel qu’acheté</translation>
    </message>
    <message>
        <source>row %1, as measured</source>
        <translation>rangée %1, mesurée</translation>
    </message>
    <message>
        <source>strip %1</source>
        <translation>bande %1</translation>
    </message>
    <message>
        <source>block %1</source>
        <translation>bloc %1</translation>
    </message>
    <message>
        <source>block %1, how far it is</source>
        <translation>bloc %1, où il en est</translation>
    </message>
    <message>
        <source>block %1, size sent to the machine</source>
        <extracomment>sent: the size given to the embroidery machine</extracomment>
        <translation>bloc %1, taille envoyée à la machine</translation>
    </message>
    <message>
        <source>block %1, outline as measured</source>
        <translation>bloc %1, contour mesuré</translation>
    </message>
    <message>
        <source>block %1, sides as measured</source>
        <translation>bloc %1, côtés mesurés</translation>
    </message>
    <message>
        <source>block %1, diagonals as measured</source>
        <translation>bloc %1, diagonales mesurées</translation>
    </message>
    <message>
        <source>block %1, minutes at the machine</source>
        <translation>bloc %1, minutes à la machine</translation>
    </message>
    <message>
        <source>block %1, where it lies</source>
        <translation>bloc %1, où il se trouve</translation>
    </message>
    <message>
        <source>block %1, its strip</source>
        <translation>bloc %1, sa bande</translation>
    </message>
    <message>
        <source>block %1, place on its strip</source>
        <translation>bloc %1, place sur sa bande</translation>
    </message>
    <message>
        <source>done: %1</source>
        <extracomment>how many pieces were cut or sewn; %1 is the work in words</extracomment>
        <translation>fait&#x202f;: %1</translation>
    </message>
    <message>
        <source>spoiled: %1</source>
        <translation>gâché&#x202f;: %1</translation>
    </message>
    <message>
        <source>stitched</source>
        <translation>brodé</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>rogné</translation>
    </message>
    <message>
        <source>joined</source>
        <translation>assemblé</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation>gâché</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdu</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>place %1</source>
        <translation>place %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is a cloth, a strip or a block, %2 what is told of it
----------
what is told, and its value on the other tablet</extracomment>
        <translation>%1&#x202f;: %2</translation>
    </message>
    <message>
        <source>nothing of it</source>
        <extracomment>in place of a value: one of the two tablets says nothing of it</extracomment>
        <translation>rien à ce sujet</translation>
    </message>
    <message>
        <source>one block made on the other tablet</source>
        <translation>un bloc fait sur l’autre tablette</translation>
    </message>
    <message>
        <source>%1 blocks made on the other tablet</source>
        <translation>%1 blocs faits sur l’autre tablette</translation>
    </message>
    <message>
        <source>one thing that happened there</source>
        <translation>un événement là-bas</translation>
    </message>
    <message>
        <source>%1 things that happened there</source>
        <translation>%1 événements là-bas</translation>
    </message>
    <message>
        <source>one note</source>
        <translation>une note</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 notes</translation>
    </message>
    <message>
        <source>one photograph</source>
        <translation>une photo</translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation>%1 photos</translation>
    </message>
    <message>
        <source>One tablet has this piece in inches, the other in millimetres. Bring it in as a project of its own.</source>
        <translation>Une tablette a cet ouvrage en pouces, l’autre en millimètres. L’importer comme projet à part.</translation>
    </message>
    <message>
        <source>The project on this tablet has something to be mended first, at Fit.</source>
        <translation>Dans le projet de cette tablette, il y a d’abord quelque chose à corriger, sous «&#x202f;Prévoir&#x202f;».</translation>
    </message>
    <message>
        <source>The two do not fit together. Bring it in as a project of its own.</source>
        <translation>Les deux ne vont pas ensemble. L’importer comme projet à part.</translation>
    </message>
</context>
<context>
    <name>MergeFile</name>
    <message>
        <source>This project is on this tablet already. Put together, all that stands here stays, and one Undo takes the rest back.</source>
        <translation>Ce projet est déjà sur cette tablette. Si les deux sont réunis, tout ce qui est ici reste, et un seul «&#x202f;Annuler&#x202f;» retire le reste.</translation>
    </message>
    <message>
        <source>One moment: the photographs are being kept.</source>
        <translation>Un instant&#x202f;: les photos sont en cours d’enregistrement.</translation>
    </message>
    <message>
        <source>All that is in the file is here already.</source>
        <translation>Tout ce que contient le fichier est déjà ici.</translation>
    </message>
    <message>
        <source>This comes from the other tablet</source>
        <translation>Ceci vient de l’autre tablette</translation>
    </message>
    <message>
        <source>Told differently: choose what holds. Still to choose: %1</source>
        <extracomment>two tablets tell a thing differently; %1 is how many she has yet to choose</extracomment>
        <translation>Indications différentes&#x202f;: choisir ce qui vaut. Reste à choisir&#x202f;: %1</translation>
    </message>
    <message>
        <source>Told differently: all of it is chosen.</source>
        <translation>Indications différentes&#x202f;: tout est choisi.</translation>
    </message>
    <message>
        <source>Here: %1</source>
        <extracomment>the value on the tablet in her hands</extracomment>
        <translation>Ici&#x202f;: %1</translation>
    </message>
    <message>
        <source>The other tablet: %1</source>
        <extracomment>the value on the other tablet</extracomment>
        <translation>L’autre tablette&#x202f;: %1</translation>
    </message>
    <message>
        <source>Both together: %1</source>
        <extracomment>pieces counted on both tablets, added up</extracomment>
        <translation>Les deux ensemble&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>MindSign</name>
    <message>
        <source>What to mind here: %1</source>
        <extracomment>what is to be minded and checked at this step</extracomment>
        <translation>À surveiller ici&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>NewPiece</name>
    <message>
        <source>New, in inches</source>
        <translation>Nouveau, en pouces</translation>
    </message>
    <message>
        <source>New piece</source>
        <translation>Nouvel ouvrage</translation>
    </message>
    <message>
        <source>New, in mm</source>
        <translation>Nouveau, en mm</translation>
    </message>
</context>
<context>
    <name>NotedLine</name>
    <message>
        <source>Noted: %1</source>
        <extracomment>%1 is what was noted of a block when it was stitched, &quot;Pleat on the back&quot;</extracomment>
        <translation>Noté&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>NotesSheet</name>
    <message>
        <source>Not tried yet: the trial may change this figure.</source>
        <translation>Pas encore essayé&#x202f;: l’essai peut changer cette mesure.</translation>
    </message>
    <message>
        <source>On with the work</source>
        <translation>Reprendre le travail</translation>
    </message>
    <message>
        <source>Make the trial after all</source>
        <translation>Faire l’essai quand même</translation>
    </message>
</context>
<context>
    <name>NoticeLine</name>
    <message>
        <source>put this notice away</source>
        <extracomment>what pressing a notice does</extracomment>
        <translation>ranger cet avis</translation>
    </message>
</context>
<context>
    <name>OpenExport</name>
    <message>
        <source>Name of the file</source>
        <translation>Nom du fichier</translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>Écrire le fichier</translation>
    </message>
</context>
<context>
    <name>OpenFile</name>
    <message>
        <source>One moment: all of it is being read.</source>
        <translation>Un instant&#x202f;: tout est en train d’être lu.</translation>
    </message>
    <message>
        <source>All of it can be read. The file stays as it is.</source>
        <translation>Tout peut être lu. Le fichier reste tel quel.</translation>
    </message>
    <message>
        <source>Not all of it can be read. What you choose here mends the copy; the file stays as it is.</source>
        <translation>Tout ne peut pas être lu. Ce qui est choisi ici corrige la copie&#x202f;; le fichier reste tel quel.</translation>
    </message>
</context>
<context>
    <name>OpenSheet</name>
    <message>
        <source>Open, bring in, back up</source>
        <translation>Ouvrir, importer, sauvegarder</translation>
    </message>
    <message>
        <source>folder</source>
        <extracomment>what a row of the list of files is</extracomment>
        <translation>dossier</translation>
    </message>
    <message>
        <source>backup of everything</source>
        <translation>sauvegarde de tout</translation>
    </message>
    <message>
        <source>project with notes and photographs</source>
        <translation>projet avec notes et photos</translation>
    </message>
    <message>
        <source>project</source>
        <translation>projet</translation>
    </message>
    <message>
        <source>There is no project file and no folder here.</source>
        <translation>Il n’y a ici ni fichier de projet ni dossier.</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Sauvegarde</translation>
    </message>
    <message>
        <source>Put it all back</source>
        <translation>Tout remettre</translation>
    </message>
    <message>
        <source>Lay it on the shelf</source>
        <translation>Poser sur l’étagère</translation>
    </message>
    <message>
        <source>Another file</source>
        <translation>Autre fichier</translation>
    </message>
    <message>
        <source>The folder above</source>
        <translation>Dossier parent</translation>
    </message>
    <message>
        <source>Back up everything</source>
        <translation>Tout sauvegarder</translation>
    </message>
    <message>
        <source>Back to the shelf</source>
        <translation>Retour à l’étagère</translation>
    </message>
    <message>
        <source>As a project of its own</source>
        <translation>Comme projet à part</translation>
    </message>
    <message>
        <source>Put together</source>
        <translation>Réunir</translation>
    </message>
</context>
<context>
    <name>PhotoSheet</name>
    <message>
        <source>the back</source>
        <extracomment>what a picture is of: the front or the back of a block</extracomment>
        <translation>le dos</translation>
    </message>
    <message>
        <source>the front</source>
        <translation>le devant</translation>
    </message>
    <message>
        <source>Take a picture of %1</source>
        <extracomment>%1 is &quot;the front&quot; or &quot;the back&quot;</extracomment>
        <translation>Prendre une photo&#x202f;: %1</translation>
    </message>
    <message>
        <source>Keeping the picture</source>
        <translation>L’image s’enregistre</translation>
    </message>
    <message>
        <source>Choose a picture of %1, block %2</source>
        <extracomment>%1 is &quot;the front&quot; or &quot;the back&quot;, %2 a block&apos;s name</extracomment>
        <translation>Choisir une image&#x202f;: %1, bloc %2</translation>
    </message>
    <message>
        <source>Tap anywhere: %1 of block %2</source>
        <translation>Toucher n’importe où&#x202f;: %1 du bloc %2</translation>
    </message>
    <message>
        <source>Back without a picture</source>
        <translation>Retour sans image</translation>
    </message>
    <message>
        <source>Tap anywhere to try again: %1 of block %2</source>
        <extracomment>a tap takes another picture after the last one came to nothing; %1 is &quot;the front&quot; or &quot;the back&quot;</extracomment>
        <translation>Toucher pour réessayer&#x202f;: %1 du bloc %2</translation>
    </message>
    <message>
        <source>A picture of %1, block %2</source>
        <translation>Image&#x202f;: %1, bloc %2</translation>
    </message>
</context>
<context>
    <name>Photos</name>
    <message>
        <source>The picture cannot be read. Choose another.</source>
        <translation>L’image ne peut pas être lue. En choisir une autre.</translation>
    </message>
    <message>
        <source>The picture is cut short: its end is missing. Copy it again, or choose another.</source>
        <translation>L’image est tronquée&#x202f;: la fin manque. La copier de nouveau, ou en choisir une autre.</translation>
    </message>
    <message>
        <source>The picture is too large. Up to 100 million pixels can be kept.</source>
        <translation>L’image est trop grande. Jusqu’à 100 millions de pixels peuvent être gardés.</translation>
    </message>
    <message>
        <source>The disk is full, so the picture was not kept. Nothing else was lost; free some room.</source>
        <translation>Le disque est plein, l’image n’a donc pas été gardée. Rien d’autre n’est perdu&#x202f;; libérer de la place.</translation>
    </message>
    <message>
        <source>That is no picture this program can read. Take or choose another.</source>
        <translation>Ce n’est pas une image que ce programme sait lire. En prendre ou en choisir une autre.</translation>
    </message>
</context>
<context>
    <name>PictureFinder</name>
    <message>
        <source>There are no pictures in the folder “%1”. Put them there, or go on without one.</source>
        <extracomment>%1 is the name of a folder</extracomment>
        <translation>Il n’y a pas d’images dans le dossier «&#x202f;%1&#x202f;». En mettre, ou continuer sans.</translation>
    </message>
    <message>
        <source>Folder above</source>
        <translation>Dossier parent</translation>
    </message>
    <message>
        <source>Use the camera</source>
        <translation>Prendre une photo</translation>
    </message>
    <message>
        <source>Choose a picture</source>
        <translation>Choisir une image</translation>
    </message>
</context>
<context>
    <name>PicturePrint</name>
    <message>
        <source>Folder %1</source>
        <extracomment>spoken name of a folder of pictures in a list</extracomment>
        <translation>Dossier %1</translation>
    </message>
    <message>
        <source>Folder: %1</source>
        <extracomment>a folder in a list of pictures; %1 is its name</extracomment>
        <translation>Dossier&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>PieceStepper</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1&#x202f;: moins</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1&#x202f;: plus</translation>
    </message>
</context>
<context>
    <name>PriceSheet</name>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is what is counted, %2 its amount</extracomment>
        <translation>%1&#x202f;: %2</translation>
    </message>
    <message>
        <source>the price</source>
        <translation>le prix</translation>
    </message>
</context>
<context>
    <name>ProjectRow</name>
    <message>
        <source>Less</source>
        <translation>Moins</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Make again in other cloth</source>
        <translation>Refaire dans d’autres tissus</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>Renommer</translation>
    </message>
    <message>
        <source>A copy in millimetres</source>
        <translation>Copie en millimètres</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Ressortir</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Ranger</translation>
    </message>
    <message>
        <source>Share as one file</source>
        <extracomment>writes one file with the project, its notes and its photographs, to be given to someone</extracomment>
        <translation>Partager en un fichier</translation>
    </message>
    <message>
        <source>Hold to throw away</source>
        <translation>Appui long&#x202f;: jeter</translation>
    </message>
    <message>
        <source>Name of the project</source>
        <translation>Nom du projet</translation>
    </message>
    <message>
        <source>Sheet for the wall</source>
        <extracomment>the whole job on paper, as a PDF to be printed</extracomment>
        <translation>Feuille pour le mur</translation>
    </message>
    <message>
        <source>Sheet on one page</source>
        <extracomment>the same on a single page, as a PDF</extracomment>
        <translation>Feuille d’une page</translation>
    </message>
    <message>
        <source>Sheets for a class</source>
        <extracomment>what is cut for all students, and a page for each one&apos;s kit, as a PDF</extracomment>
        <translation>Feuilles pour un cours</translation>
    </message>
    <message>
        <source>Put away for now</source>
        <extracomment>of a piece that lies folded at the back of the shelf</extracomment>
        <translation>Rangé pour l’instant</translation>
    </message>
</context>
<context>
    <name>PutOff</name>
    <message>
        <source>Trial later</source>
        <extracomment>the trial: one test block and one test join, made before the cloth for the piece is cut</extracomment>
        <translation>Essai après</translation>
    </message>
</context>
<context>
    <name>ReadingHeld</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1&#x202f;: moins</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1&#x202f;: plus</translation>
    </message>
    <message>
        <source>Read: it is as shown</source>
        <extracomment>of several readings of a block, a join or the piece: she read just what is shown</extracomment>
        <translation>Mesuré&#x202f;: comme affiché</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <extracomment>on a button: %1 is what to read next, &quot;right&quot;</extracomment>
        <translation>Ensuite&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>ReadingInHand</name>
    <message>
        <source>measure this one again first</source>
        <translation>remesurer d’abord celui-ci</translation>
    </message>
    <message>
        <source>not yet read</source>
        <translation>pas encore mesuré</translation>
    </message>
</context>
<context>
    <name>ReadingPlate</name>
    <message>
        <source>measure this one again first</source>
        <extracomment>of a reading of a block</extracomment>
        <translation>remesurer d’abord celui-ci</translation>
    </message>
    <message>
        <source>not yet read</source>
        <translation>pas encore mesuré</translation>
    </message>
</context>
<context>
    <name>Readings</name>
    <message>
        <source>A reading is more than nothing.</source>
        <translation>Une mesure dépasse toujours zéro.</translation>
    </message>
</context>
<context>
    <name>Refused</name>
    <message>
        <source>Your projects cannot be opened just now.</source>
        <translation>Les projets ne peuvent pas être ouverts pour l’instant.</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Réessayer</translation>
    </message>
    <message>
        <source>Close Matside</source>
        <translation>Fermer Matside</translation>
    </message>
</context>
<context>
    <name>ResumeSheet</name>
    <message>
        <source>Finished: count it as done</source>
        <extracomment>on a button: what the step says was done before the program ended, and is counted now</extracomment>
        <translation>Fini&#x202f;: compter comme fait</translation>
    </message>
    <message>
        <source>Not finished: still to do</source>
        <extracomment>on a button: the step goes on where it was</extracomment>
        <translation>Pas fini&#x202f;: reste à faire</translation>
    </message>
</context>
<context>
    <name>RevealMark</name>
    <message>
        <source>over</source>
        <extracomment>after a length: the cloth hangs so far over the table&apos;s edge</extracomment>
        <translation>retombée</translation>
    </message>
</context>
<context>
    <name>RulerDrawing</name>
    <message>
        <source>on the outer
stitches</source>
        <extracomment>where the ruler&apos;s line lies: two short lines, broken by hand</extracomment>
        <translation>sur la piqûre
extérieure</translation>
    </message>
    <message>
        <source>mat lines
from here</source>
        <translation>lignes du tapis
depuis ici</translation>
    </message>
    <message>
        <source>on the
cut edge</source>
        <translation>sur le
bord coupé</translation>
    </message>
</context>
<context>
    <name>RulerWords</name>
    <message>
        <source>keep</source>
        <extracomment>the part of the cloth that is kept</extracomment>
        <translation>à garder</translation>
    </message>
    <message>
        <source>fold</source>
        <extracomment>the folded edge of the cloth, or that it lies unfolded</extracomment>
        <translation>pli</translation>
    </message>
    <message>
        <source>one layer</source>
        <translation>une épaisseur</translation>
    </message>
    <message>
        <source>selvages</source>
        <translation>lisières</translation>
    </message>
    <message>
        <source>selvage</source>
        <translation>lisière</translation>
    </message>
    <message>
        <source>waste</source>
        <extracomment>cloth that falls away</extracomment>
        <translation>chute</translation>
    </message>
    <message>
        <source>cut ends</source>
        <extracomment>the cut ends of a cloth folded across, end on end, for strips along its selvage</extracomment>
        <translation>bouts coupés</translation>
    </message>
    <message>
        <source>cut end</source>
        <translation>bout coupé</translation>
    </message>
</context>
<context>
    <name>ScallopNear</name>
    <message>
        <source>radius</source>
        <extracomment>the radius of an arc, short: over the figure on a drawing</extracomment>
        <translation>rayon</translation>
    </message>
</context>
<context>
    <name>SectionDrawing</name>
    <message>
        <source>%1 times true size, cloth drawn thicker</source>
        <extracomment>how much larger than life the section is drawn</extracomment>
        <translation>%1 fois la grandeur réelle, tissu dessiné plus épais</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>couture</translation>
    </message>
    <message>
        <source>catch</source>
        <extracomment>how far the fold passes the seam, so that the ditch stitching catches it</extracomment>
        <translation>prise</translation>
    </message>
    <message>
        <source>fold under</source>
        <translation>rentré</translation>
    </message>
    <message>
        <source>overlap</source>
        <extracomment>by how much the two allowances inside a sashing lie over each other</extracomment>
        <translation>recouvrement</translation>
    </message>
    <message>
        <source>gap</source>
        <extracomment>what is left between the two allowances inside a sashing</extracomment>
        <translation>espace</translation>
    </message>
</context>
<context>
    <name>SectionReadings</name>
    <message>
        <source>seam</source>
        <translation>couture</translation>
    </message>
    <message>
        <source>overlap</source>
        <translation>recouvrement</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>espace</translation>
    </message>
    <message>
        <source>seam to seam</source>
        <extracomment>the distance from one seam to the other of a sashing</extracomment>
        <translation>couture à couture</translation>
    </message>
    <message>
        <source>batting</source>
        <translation>molleton</translation>
    </message>
</context>
<context>
    <name>SentPlate</name>
    <message>
        <source>Send to the machine</source>
        <extracomment>on a plate, over the size that is typed into the embroidery machine</extracomment>
        <translation>Envoyer à la machine</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Lumière</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>the light she works in</extracomment>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Lamp</source>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation>Fort contraste</translation>
    </message>
    <message>
        <source>Cutting hand</source>
        <translation>Main qui coupe</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Gauche</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Droite</translation>
    </message>
    <message>
        <source>Movement</source>
        <translation>Mouvement</translation>
    </message>
    <message>
        <source>Sheets slide in</source>
        <extracomment>whether sheets slide into place or are simply there</extracomment>
        <translation>Les feuilles glissent</translation>
    </message>
    <message>
        <source>Nothing moves</source>
        <translation>Rien ne bouge</translation>
    </message>
    <message>
        <source>Size of the screen</source>
        <translation>Taille de l’écran</translation>
    </message>
    <message>
        <source>Back to the shelf</source>
        <translation>Retour à l’étagère</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Lire à voix haute</translation>
    </message>
    <message>
        <source>This tablet has no voice for your language: nothing is read out.</source>
        <translation>Cette tablette n’a pas de voix pour cette langue&#x202f;: rien n’est lu à voix haute.</translation>
    </message>
    <message>
        <source>Where you cut, a step is read out only once you have asked for it there.</source>
        <translation>Là où l’on coupe, une étape n’est lue qu’après une demande sur place.</translation>
    </message>
    <message>
        <source>Never</source>
        <extracomment>when a step is read out: never, when she asks, at each new step</extracomment>
        <translation>Jamais</translation>
    </message>
    <message>
        <source>When asked</source>
        <translation>Sur demande</translation>
    </message>
    <message>
        <source>Each new step</source>
        <translation>Chaque nouvelle étape</translation>
    </message>
    <message>
        <source>Page-turn pedal</source>
        <translation>Pédale tourne-page</translation>
    </message>
    <message>
        <source>Turns the steps</source>
        <translation>Tourne les étapes</translation>
    </message>
    <message>
        <source>Turns nothing</source>
        <translation>Ne tourne rien</translation>
    </message>
    <message>
        <source>Window for helpers</source>
        <translation>Fenêtre pour les aides</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Fermée</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Ouverte</translation>
    </message>
    <message>
        <source>Put it well away from the machine’s pedal. While a block is stitched it turns nothing.</source>
        <translation>À poser loin de la pédale de la machine. Pendant qu’un bloc se brode, elle ne tourne rien.</translation>
    </message>
    <message>
        <source>The place at the mat</source>
        <extracomment>heading of the page where the tablet is set up: the place where it stands beside the cutting mat</extracomment>
        <translation>Le poste de coupe</translation>
    </message>
    <message>
        <source>Done</source>
        <extracomment>closes what is being set</extracomment>
        <translation>Terminé</translation>
    </message>
</context>
<context>
    <name>SettingsScene</name>
    <message>
        <source>The place at the mat</source>
        <translation>Le poste de coupe</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>what can be set, and how it is set: &quot;Light: Day&quot;</extracomment>
        <translation>%1&#x202f;: %2</translation>
    </message>
</context>
<context>
    <name>Shade</name>
    <message>
        <source>red</source>
        <translation>rouge</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>orange</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>jaune</translation>
    </message>
    <message>
        <source>green</source>
        <translation>vert</translation>
    </message>
    <message>
        <source>blue-green</source>
        <extracomment>between green and blue</extracomment>
        <translation>bleu-vert</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>bleu</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violet</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rose</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>%1, step %2 of 10</source>
        <extracomment>a colour: its hue and its step on the scale from black to white</extracomment>
        <translation>%1, cran %2 sur 10</translation>
    </message>
    <message>
        <source>Closest: %1 on %2, %3 steps apart. That is clear from across the room.</source>
        <extracomment>%1 lies on %2; %3 is a number of steps of the ten-step scale</extracomment>
        <translation>Au plus près&#x202f;: %1 sur %2, %3 crans d’écart. De loin, cela reste net.</translation>
    </message>
    <message>
        <source>Closest: %1 on %2, only %3 steps apart. From across the room %1 is lost: take a lighter or a darker cloth for one of the two.</source>
        <extracomment>%1 lies on %2; %3 is a number of steps of the ten-step scale, below one</extracomment>
        <translation>Au plus près&#x202f;: %1 sur %2, seulement %3 cran d’écart. De loin, %1 se perd&#x202f;: pour l’un des deux, prendre un tissu plus clair ou plus foncé.</translation>
    </message>
    <message>
        <source>Closest: %1 on %2, %3 steps apart. From across the room it looks washed out: two steps stand clearly apart.</source>
        <extracomment>%1 lies on %2; %3 is a number of steps of the ten-step scale, below two</extracomment>
        <translation>Au plus près&#x202f;: %1 sur %2, %3 cran d’écart. De loin, cela paraît délavé&#x202f;: deux crans séparent nettement.</translation>
    </message>
</context>
<context>
    <name>ShadeCloth</name>
    <message>
        <source>Another picture</source>
        <translation>Autre image</translation>
    </message>
    <message>
        <source>From a photograph</source>
        <translation>D’après une photo</translation>
    </message>
    <message>
        <source>Take this colour</source>
        <translation>Prendre cette couleur</translation>
    </message>
    <message>
        <source>Back to the palette</source>
        <translation>Retour à la palette</translation>
    </message>
    <message>
        <source>Back to the cloths</source>
        <translation>Retour aux tissus</translation>
    </message>
    <message>
        <source>Opening the picture</source>
        <translation>L’image s’ouvre</translation>
    </message>
    <message>
        <source>Choose a picture of %1</source>
        <extracomment>%1 is a cloth</extracomment>
        <translation>Choisir une image&#x202f;: %1</translation>
    </message>
    <message>
        <source>Tap anywhere: %1</source>
        <translation>Toucher n’importe où&#x202f;: %1</translation>
    </message>
    <message>
        <source>Take a picture of %1</source>
        <translation>Prendre une photo&#x202f;: %1</translation>
    </message>
    <message>
        <source>Back without a picture</source>
        <translation>Retour sans image</translation>
    </message>
    <message>
        <source>A photograph holds the light of the room as well as the cloth. Take it by daylight, without flash. The picture is only looked at: it is not kept.</source>
        <translation>Une photo montre la lumière du lieu autant que le tissu. La prendre à la lumière du jour, sans flash. L’image est seulement regardée&#x202f;: elle n’est pas gardée.</translation>
    </message>
    <message>
        <source>Tap anywhere to try again: %1</source>
        <translation>Toucher pour réessayer&#x202f;: %1</translation>
    </message>
    <message>
        <source>A picture of %1</source>
        <extracomment>%1 is a cloth</extracomment>
        <translation>Image&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>ShadeFaces</name>
    <message>
        <source>Front</source>
        <extracomment>the front face of the piece</extracomment>
        <translation>Devant</translation>
    </message>
    <message>
        <source>The front in grey</source>
        <translation>Le devant en gris</translation>
    </message>
    <message>
        <source>The front in colour</source>
        <translation>Le devant en couleur</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>the back face of the piece</extracomment>
        <translation>Dos</translation>
    </message>
    <message>
        <source>The back in grey</source>
        <translation>Le dos en gris</translation>
    </message>
    <message>
        <source>The back in colour</source>
        <translation>Le dos en couleur</translation>
    </message>
    <message>
        <source>Show in colour</source>
        <translation>Montrer en couleur</translation>
    </message>
    <message>
        <source>Show in grey</source>
        <translation>Montrer en gris</translation>
    </message>
</context>
<context>
    <name>ShadeFindings</name>
    <message>
        <source>Light and dark</source>
        <extracomment>the page on how light and how dark the cloths are</extracomment>
        <translation>Clair et foncé</translation>
    </message>
    <message>
        <source>The cloths on the scale from 1, black, to 10, white</source>
        <translation>Les tissus sur l’échelle de 1, noir, à 10, blanc</translation>
    </message>
    <message>
        <source>Design</source>
        <extracomment>which of the block designs is judged</extracomment>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Lay them in this order</source>
        <translation>Les poser dans cet ordre</translation>
    </message>
    <message>
        <source>The patches are drawn as plain rectangles. A screen shows cloth only roughly: lay the patch on the ground and look at it from across the room.</source>
        <translation>Les pièces sont dessinées en simples rectangles. Un écran ne montre le tissu qu’à peu près&#x202f;: poser la pièce sur le fond et la regarder de loin.</translation>
    </message>
</context>
<context>
    <name>ShadeHeld</name>
    <message>
        <source>This is the cloth in that light, not the cloth itself. Compare it with the cloth in your hand.</source>
        <translation>C’est le tissu sous cette lumière, pas le tissu lui-même. Le comparer avec le tissu en main.</translation>
    </message>
</context>
<context>
    <name>ShadePage</name>
    <message>
        <source>Back to the work</source>
        <translation>Retour au travail</translation>
    </message>
</context>
<context>
    <name>ShadePair</name>
    <message>
        <source>%1 steps</source>
        <extracomment>so many steps of the scale from black to white lie between two cloths</extracomment>
        <translation>écart&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>ShadePalette</name>
    <message>
        <source>lightness</source>
        <translation>clarté</translation>
    </message>
    <message>
        <source>hue</source>
        <extracomment>red, orange, yellow, green …</extracomment>
        <translation>teinte</translation>
    </message>
    <message>
        <source>strength</source>
        <extracomment>how strong a colour is, from grey to the strongest there is</extracomment>
        <translation>intensité</translation>
    </message>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1&#x202f;: moins</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1&#x202f;: plus</translation>
    </message>
</context>
<context>
    <name>ShadePicture</name>
    <message>
        <source>The picture: tap the cloth</source>
        <translation>L’image&#x202f;: toucher le tissu</translation>
    </message>
</context>
<context>
    <name>ShadeRow</name>
    <message>
        <source>gives the cloth its colour</source>
        <translation>donne sa couleur au tissu</translation>
    </message>
</context>
<context>
    <name>Sharing</name>
    <message>
        <source>The file cannot be opened.</source>
        <translation>Le fichier ne peut pas être ouvert.</translation>
    </message>
    <message>
        <source>This is no share file, or it is damaged. Ask for it to be sent once more.</source>
        <translation>Ce n’est pas un fichier de partage, ou il est abîmé. Demander un nouvel envoi.</translation>
    </message>
    <message>
        <source>This file does not come from Matside.</source>
        <translation>Ce fichier ne vient pas de Matside.</translation>
    </message>
    <message>
        <source>This file is from a newer Matside. A newer Matside will open it.</source>
        <translation>Ce fichier vient d’un Matside plus récent. Un Matside plus récent l’ouvrira.</translation>
    </message>
    <message>
        <source>There is more in it than can be taken: %1</source>
        <translation>Il contient plus que ce qui peut être pris&#x202f;: %1</translation>
    </message>
    <message>
        <source>There are more photographs in it than can be taken; 4000 is the most.</source>
        <translation>Il contient plus de photos qu’il ne peut en être pris&#x202f;; 4000 au plus.</translation>
    </message>
    <message>
        <source>Something in it would swell up when unpacked, as no photograph does: %1</source>
        <translation>Un élément gonflerait en étant décompressé, comme aucune photo ne le fait&#x202f;: %1</translation>
    </message>
    <message>
        <source>Something in it would be written outside its own folder: %1</source>
        <translation>Un élément serait écrit hors de son propre dossier&#x202f;: %1</translation>
    </message>
    <message>
        <source>Something in it is a link, not a file: %1</source>
        <translation>Un élément est un lien, pas un fichier&#x202f;: %1</translation>
    </message>
    <message>
        <source>Something in it is locked with a password: %1</source>
        <translation>Un élément est verrouillé par un mot de passe&#x202f;: %1</translation>
    </message>
    <message>
        <source>Something in it is packed in a way that is not known here: %1</source>
        <translation>Un élément est compressé d’une façon inconnue ici&#x202f;: %1</translation>
    </message>
    <message>
        <source>The same name stands in it twice. %1</source>
        <translation>Le même nom y figure deux fois. %1</translation>
    </message>
    <message>
        <source>Something is in it that does not belong there: %1</source>
        <translation>Un élément n’a rien à y faire&#x202f;: %1</translation>
    </message>
    <message>
        <source>Something is missing in it: %1. Ask for it to be sent once more.</source>
        <translation>Il y manque quelque chose&#x202f;: %1. Demander un nouvel envoi.</translation>
    </message>
    <message>
        <source>Something in it was damaged or changed on the way: %1. Ask for it to be sent once more.</source>
        <translation>Un élément a été abîmé ou modifié en route&#x202f;: %1. Demander un nouvel envoi.</translation>
    </message>
    <message>
        <source>Its list of contents cannot be read.</source>
        <translation>Sa liste de contenu ne peut pas être lue.</translation>
    </message>
    <message>
        <source>The notes in it cannot be read.</source>
        <translation>Ses notes ne peuvent pas être lues.</translation>
    </message>
    <message>
        <source>The project in it cannot be read.</source>
        <translation>Son projet ne peut pas être lu.</translation>
    </message>
    <message>
        <source>A photograph in it is none, or is cut short: %1</source>
        <translation>Une de ses photos n’en est pas une, ou est tronquée&#x202f;: %1</translation>
    </message>
    <message>
        <source>There is a file of that name already, and it was left as it is.</source>
        <translation>Il y a déjà un fichier de ce nom&#x202f;; il a été laissé tel quel.</translation>
    </message>
    <message>
        <source>A photograph of this project is missing or cannot be read: %1</source>
        <translation>Une photo de ce projet manque ou ne peut pas être lue&#x202f;: %1</translation>
    </message>
    <message>
        <source>It could not be written: the disk is full, or the folder takes no files.</source>
        <translation>L’écriture a échoué&#x202f;: le disque est plein, ou le dossier n’accepte pas de fichiers.</translation>
    </message>
    <message>
        <source>no notes</source>
        <translation>aucune note</translation>
    </message>
    <message>
        <source>one note</source>
        <translation>une note</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 notes</translation>
    </message>
    <message>
        <source>no photographs</source>
        <translation>aucune photo</translation>
    </message>
    <message>
        <source>one photograph</source>
        <translation>une photo</translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation>%1 photos</translation>
    </message>
    <message>
        <source>Nothing of it was kept.</source>
        <translation>Rien n’en a été gardé.</translation>
    </message>
    <message>
        <source>one project</source>
        <translation>un projet</translation>
    </message>
    <message>
        <source>%1 projects</source>
        <translation>%1 projets</translation>
    </message>
    <message>
        <source>%1 by %2 blocks</source>
        <translation>%1 × %2 blocs</translation>
    </message>
    <message>
        <source>no block made yet</source>
        <translation>aucun bloc fait</translation>
    </message>
    <message>
        <source>one block made</source>
        <translation>un bloc fait</translation>
    </message>
    <message>
        <source>%1 blocks made</source>
        <translation>%1 blocs faits</translation>
    </message>
    <message>
        <source>one thing in it cannot be read as it stands</source>
        <translation>un élément ne peut pas être lu tel quel</translation>
    </message>
    <message>
        <source>%1 things in it cannot be read as they stand</source>
        <translation>%1 éléments ne peuvent pas être lus tels quels</translation>
    </message>
    <message>
        <source>one photograph was gone or damaged before and is not in it</source>
        <translation>une photo manquait déjà ou était abîmée et n’y est pas</translation>
    </message>
    <message>
        <source>%1 photographs were gone or damaged before and are not in it</source>
        <translation>%1 photos manquaient déjà ou étaient abîmées et n’y sont pas</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Edge</source>
        <translation>Finir</translation>
    </message>
    <message>
        <source>When it is done</source>
        <translation>Quand c’est fini</translation>
    </message>
    <message>
        <source>To buy, cloth by cloth</source>
        <translation>À acheter, tissu par tissu</translation>
    </message>
    <message>
        <source>Costs %1.</source>
        <translation>Coûte %1.</translation>
    </message>
    <message>
        <source>outline, along × across</source>
        <translation>contour, en long × en travers</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>couture</translation>
    </message>
    <message>
        <source>usable width of the strip&apos;s cloth</source>
        <translation>largeur utile du tissu de la bande</translation>
    </message>
    <message>
        <source>catch, planned</source>
        <translation>prise prévue</translation>
    </message>
    <message>
        <source>least fold</source>
        <translation>rentré minimal</translation>
    </message>
    <message>
        <source>spare on a short sashing</source>
        <translation>réserve d’une bande intermédiaire courte</translation>
    </message>
    <message>
        <source>short sashing with its spare</source>
        <translation>bande intermédiaire courte avec sa réserve</translation>
    </message>
    <message>
        <source>spare on a long sashing</source>
        <translation>réserve d’une bande intermédiaire longue</translation>
    </message>
    <message>
        <source>long sashing with its spare</source>
        <translation>bande intermédiaire longue avec sa réserve</translation>
    </message>
    <message>
        <source>batting, width</source>
        <translation>molleton, largeur</translation>
    </message>
    <message>
        <source>batting, least width</source>
        <translation>molleton, largeur minimale</translation>
    </message>
    <message>
        <source>batting inside the ring</source>
        <translation>molleton dans l’anneau</translation>
    </message>
    <message>
        <source>backing, along × across</source>
        <translation>tissu dos, en long × en travers</translation>
    </message>
    <message>
        <source>corners&apos; radius</source>
        <translation>rayon des coins</translation>
    </message>
    <message>
        <source>the arc cuts into the stippling</source>
        <translation>l’arc entame le vermiculé</translation>
    </message>
    <message>
        <source>least radius for folded binding</source>
        <translation>plus petit rayon pour bande de finition pliée</translation>
    </message>
    <message>
        <source>patch &quot;%1&quot;, cut</source>
        <translation>pièce «&#x202f;%1&#x202f;», coupée</translation>
    </message>
    <message>
        <source>web for &quot;%1&quot;</source>
        <translation>voile thermocollant pour «&#x202f;%1&#x202f;»</translation>
    </message>
    <message>
        <source>thread for a block</source>
        <translation>fil pour un bloc</translation>
    </message>
    <message>
        <source>of it from the bobbin</source>
        <translation>dont fil de canette</translation>
    </message>
    <message>
        <source>ruler &quot;%1&quot;</source>
        <translation>règle «&#x202f;%1&#x202f;»</translation>
    </message>
    <message>
        <source>Look here first</source>
        <translation>Regarder ici d’abord</translation>
    </message>
    <message>
        <source>All figures</source>
        <translation>Toutes les mesures</translation>
    </message>
    <message>
        <source>allowance</source>
        <extracomment>cloth kept outside the block&apos;s outline</extracomment>
        <translation>marge</translation>
    </message>
    <message>
        <source>fold under</source>
        <extracomment>how much of the back strip is turned under</extracomment>
        <translation>rentré</translation>
    </message>
    <message>
        <source>catch</source>
        <extracomment>how far the fold passes the seam line</extracomment>
        <translation>prise</translation>
    </message>
    <message>
        <source>sashing, as seen</source>
        <translation>bande intermédiaire, visible</translation>
    </message>
    <message>
        <source>This bar is exactly %1 long. If it is not, print again at 100 %, without fitting to the page.</source>
        <translation>Cette barre mesure exactement %1. Sinon, imprimer de nouveau à 100&#x202f;%, sans ajuster à la page.</translation>
    </message>
    <message>
        <source>At true size: lay the cloth&apos;s edge on the long line, the measure is where the bar ends.</source>
        <translation>En grandeur réelle&#x202f;: poser le bord du tissu sur la longue ligne&#x202f;; la mesure est là où la barre finit.</translation>
    </message>
    <message>
        <source>{Flat cloth:} for marking before anything is stitched, every tick from the one zero end. Drawn 1 : %1.</source>
        <translation>{Tissu à plat&#x202f;:} pour marquer avant toute broderie, chaque trait depuis le même bout zéro. Dessiné 1&#x202f;: %1.</translation>
    </message>
    <message>
        <source>{Drawn-in cloth:} where each start is found once the blocks before it are stitched. Never mix the two scales.</source>
        <translation>{Tissu rétréci&#x202f;:} où se trouve chaque début une fois brodés les blocs d’avant. Ne jamais mêler les deux échelles.</translation>
    </message>
    <message>
        <source>place</source>
        <translation>place</translation>
    </message>
    <message>
        <source>Place %1, block %2: start {%3}, centre {%4} (planned {%5}), gap {%6}.</source>
        <translation>Place %1, bloc %2&#x202f;: début {%3}, milieu {%4} (prévu {%5}), intervalle {%6}.</translation>
    </message>
    <message>
        <source>It does not fit: {%1} is missing.</source>
        <translation>Cela ne tient pas&#x202f;: il manque {%1}.</translation>
    </message>
    <message>
        <source>With a gap of {%1} it would.</source>
        <translation>Avec un intervalle de {%1}, cela tiendrait.</translation>
    </message>
    <message>
        <source>{Strip %1}, begun: %2 long when flat, its end now at %3.</source>
        <translation>{Bande %1}, commencée&#x202f;: %2 de long à plat, son bout maintenant à %3.</translation>
    </message>
    <message>
        <source>The last outline ended at {%1}.</source>
        <translation>Le dernier contour s’est terminé à {%1}.</translation>
    </message>
    <message>
        <source>Hoop: the strip end to end</source>
        <translation>Broder&#x202f;: la bande de bout en bout</translation>
    </message>
    <message>
        <source>Back, as it lies turned over</source>
        <translation>Dos, tel qu’il est une fois retourné</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Devant</translation>
    </message>
    <message>
        <source>%1 blocks are too many to draw one by one: lay them out from the labels, rows by letter from the top, columns by number from the left.</source>
        <translation>%1 blocs, c’est trop pour les dessiner un à un&#x202f;: les disposer d’après les étiquettes, rangées par lettre depuis le haut, colonnes par numéro depuis la gauche.</translation>
    </message>
    <message>
        <source>{Match marks} on every long sashing, from the row&apos;s raw left end, which is zero; a row is %1 raw.</source>
        <translation>{Repères} sur chaque bande intermédiaire longue, depuis le bout brut gauche de la rangée, qui est zéro&#x202f;; une rangée mesure %1 de bout brut à bout brut.</translation>
    </message>
    <message>
        <source>Long sashing, %1, in pieces: %2; joins at %3 from the row&apos;s raw left end.</source>
        <translation>Bande intermédiaire longue, %1, en morceaux&#x202f;: %2&#x202f;; raccords à %3 du bout brut gauche de la rangée.</translation>
    </message>
    <message>
        <source>Trim and fold</source>
        <translation>Rogner et plier</translation>
    </message>
    <message>
        <source>Join: both faces</source>
        <translation>Assembler&#x202f;: les deux faces</translation>
    </message>
    <message>
        <source>front</source>
        <translation>devant</translation>
    </message>
    <message>
        <source>back</source>
        <translation>dos</translation>
    </message>
    <message>
        <source>%1 · page %2 of %3</source>
        <extracomment>a page&apos;s footer: the project&apos;s name, the page and how many there are</extracomment>
        <translation>%1 · page %2 sur %3</translation>
    </message>
    <message>
        <source>%1, continued</source>
        <extracomment>at the top of a page: the heading it goes on with</extracomment>
        <translation>%1, suite</translation>
    </message>
    <message>
        <source>drawn 1 : %1</source>
        <extracomment>drawn so many times smaller: 1 : 10</extracomment>
        <translation>dessiné 1&#x202f;: %1</translation>
    </message>
    <message>
        <source>{%1} × {%2} finished</source>
        <extracomment>along × across, of the finished piece</extracomment>
        <translation>{%1} × {%2} fini</translation>
    </message>
    <message>
        <source>%1 × %2 blocks</source>
        <extracomment>columns × rows of blocks</extracomment>
        <translation>%1 × %2 blocs</translation>
    </message>
    <message>
        <source>A ring: not tried yet. Make the trial before you cut the rest.</source>
        <translation>Un rond&#x202f;: pas encore essayé. Faire l’essai avant de couper le reste.</translation>
    </message>
    <message>
        <source>The sheet could not be written to %1: %2. Choose another place.</source>
        <translation>La feuille n’a pas pu être écrite dans %1&#x202f;: %2. Choisir un autre endroit.</translation>
    </message>
    <message>
        <source>and so on</source>
        <extracomment>the list is cut short</extracomment>
        <translation>et ainsi de suite</translation>
    </message>
    <message>
        <source>… and %1 more lines: see the long form.</source>
        <translation>… et %1 lignes de plus&#x202f;: voir la version longue.</translation>
    </message>
    <message>
        <source>For the trial.</source>
        <translation>Pour l’essai.</translation>
    </message>
    <message>
        <source>Cut, cloth by cloth</source>
        <translation>Couper, tissu par tissu</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>a heading and the cloth it goes on with</extracomment>
        <translation>%1&#x202f;: %2</translation>
    </message>
    <message>
        <source>For a class: %1 kits.</source>
        <translation>Pour un cours&#x202f;: %1 kits.</translation>
    </message>
    <message>
        <source>Kits share their hoop strips: stitch them ahead and hand out the blocks.</source>
        <translation>Les kits se partagent les bandes à broder&#x202f;: les broder d’avance et distribuer les blocs.</translation>
    </message>
    <message>
        <source>To cut for all kits</source>
        <translation>À couper pour tous les kits</translation>
    </message>
    <message>
        <source>in all</source>
        <extracomment>heads of a table: pieces for all kits together, pieces in one kit</extracomment>
        <translation>en tout</translation>
    </message>
    <message>
        <source>in a kit</source>
        <translation>par kit</translation>
    </message>
    <message>
        <source>size</source>
        <translation>taille</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>Blocks, stitched ahead; the size is when trimmed.</source>
        <translation>Blocs, brodés d’avance&#x202f;; la taille est celle du bloc rogné.</translation>
    </message>
    <message>
        <source>Kit %1 of %2</source>
        <translation>Kit %1 sur %2</translation>
    </message>
    <message>
        <source>A kit: copy this page, once for each of %1</source>
        <translation>Un kit&#x202f;: copier cette page, une fois pour chacun des %1</translation>
    </message>
    <message>
        <source>Name:</source>
        <extracomment>whose kit it is: a line to write on follows</extracomment>
        <translation>Nom&#x202f;:</translation>
    </message>
    <message>
        <source>In the kit</source>
        <translation>Dans le kit</translation>
    </message>
    <message>
        <source>The diagram could not be written to %1: %2. Choose another place.</source>
        <translation>Le dessin n’a pas pu être écrit dans %1&#x202f;: %2. Choisir un autre endroit.</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>le dossier ne peut pas être créé</translation>
    </message>
    <message>
        <source>Piece %1 of what you have</source>
        <extracomment>a piece of cloth she has already, numbered</extracomment>
        <translation>Morceau disponible %1</translation>
    </message>
    <message>
        <source>%1 left over</source>
        <extracomment>%1 a length: nothing is cut from that much of the strip</extracomment>
        <translation>il reste %1</translation>
    </message>
    <message>
        <source>Seam %1.</source>
        <translation>Couture %1.</translation>
    </message>
    <message>
        <source>One is to practise the join with.</source>
        <translation>Une sert à s’exercer à l’assemblage.</translation>
    </message>
    <message>
        <source>along the selvage: %1</source>
        <extracomment>%1 &quot;3 × 2 in: 5 × 7 1/2 in&quot;, strips that run along the selvage instead of across the cloth</extracomment>
        <translation>le long de la lisière&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>ShelfPage</name>
    <message>
        <source>On the shelf</source>
        <translation>Sur l’étagère</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Annuler&#x202f;: %1</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Language, screen</source>
        <translation>Langue, écran</translation>
    </message>
    <message>
        <source>Open or back up</source>
        <translation>Ouvrir, sauvegarder</translation>
    </message>
    <message>
        <source>Hide what is put away</source>
        <extracomment>pieces that were put away, out of sight</extracomment>
        <translation>Cacher ce qui est rangé</translation>
    </message>
    <message>
        <source>Show what is put away</source>
        <translation>Montrer ce qui est rangé</translation>
    </message>
</context>
<context>
    <name>ShopFoot</name>
    <message>
        <source>Cost and price</source>
        <translation>Coût et prix</translation>
    </message>
    <message>
        <source>Kits for a class</source>
        <translation>Kits pour un cours</translation>
    </message>
    <message>
        <source>Cloth you have</source>
        <translation>Tissu disponible</translation>
    </message>
    <message>
        <source>Batting: roll or package</source>
        <extracomment>batting bought cut from the roll, or ready cut in packages</extracomment>
        <translation>Molleton&#x202f;: rouleau ou paquet</translation>
    </message>
</context>
<context>
    <name>ShopPage</name>
    <message>
        <source>To buy</source>
        <translation>À acheter</translation>
    </message>
    <message>
        <source>%1: buy %2</source>
        <translation>%1&#x202f;: acheter %2</translation>
    </message>
    <message>
        <source>bought</source>
        <translation>acheté</translation>
    </message>
    <message>
        <source>not bought yet</source>
        <translation>pas encore acheté</translation>
    </message>
    <message>
        <source>Costs %1.</source>
        <translation>Coûte %1.</translation>
    </message>
    <message>
        <source>Light and dark</source>
        <extracomment>the page on how light and how dark the cloths are</extracomment>
        <translation>Clair et foncé</translation>
    </message>
    <message>
        <source>List to take</source>
        <extracomment>opens the list to take to the shop</extracomment>
        <translation>Liste pour la boutique</translation>
    </message>
    <message>
        <source>How %1 is cut: %2 long, %3 wide</source>
        <extracomment>spoken: %1 a cloth, %2 and %3 its two sides</extracomment>
        <translation>%1, coupe&#x202f;: %2 de long, %3 de large</translation>
    </message>
    <message>
        <source>To buy for %1 kits</source>
        <extracomment>heading of a shopping list; kits: all that a student needs for one piece, for so many students</extracomment>
        <translation>À acheter pour %1 kits</translation>
    </message>
</context>
<context>
    <name>SideDrawing</name>
    <message>
        <source>on the cut side</source>
        <translation>sur le côté coupé</translation>
    </message>
    <message>
        <source>on the stitches</source>
        <translation>sur la piqûre</translation>
    </message>
</context>
<context>
    <name>SideSheet</name>
    <message>
        <source>Back to the work</source>
        <translation>Retour au travail</translation>
    </message>
</context>
<context>
    <name>SpreadActs</name>
    <message>
        <source>Back to the work</source>
        <translation>Retour au travail</translation>
    </message>
</context>
<context>
    <name>StepButton</name>
    <message>
        <source>more</source>
        <translation>plus</translation>
    </message>
    <message>
        <source>less</source>
        <translation>moins</translation>
    </message>
</context>
<context>
    <name>StepHead</name>
    <message>
        <source>Nothing left to do here</source>
        <translation>Plus rien à faire ici</translation>
    </message>
</context>
<context>
    <name>StepPage</name>
    <message>
        <source>Lay the block flat, off the hoop and rested. Measure its four sides and both diagonals.</source>
        <translation>Poser le bloc à plat, hors du cadre et reposé. Mesurer ses quatre côtés et les deux diagonales.</translation>
    </message>
</context>
<context>
    <name>StepTargets</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Something’s wrong</source>
        <translation>Un souci</translation>
    </message>
</context>
<context>
    <name>StepWords</name>
    <message>
        <source>and {%1} %2</source>
        <translation>et {%1} %2</translation>
    </message>
    <message>
        <source>Not tried yet</source>
        <translation>Pas encore essayé</translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1&#x202f;: moins</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1&#x202f;: plus</translation>
    </message>
    <message>
        <source>worked out</source>
        <extracomment>stands under a value the app reckons itself</extracomment>
        <translation>calculé</translation>
    </message>
</context>
<context>
    <name>StockPiece</name>
    <message>
        <source>size of the cloth: drag, or use the arrow keys</source>
        <translation>taille du tissu&#x202f;: faire glisser, ou utiliser les flèches du clavier</translation>
    </message>
</context>
<context>
    <name>StockShelf</name>
    <message>
        <source>These are cut up first. Press one to take it away.</source>
        <translation>Ceux-ci sont coupés d’abord. En toucher un pour le retirer.</translation>
    </message>
    <message>
        <source>What you have is cut up before anything is bought. Measure it without its selvages.</source>
        <translation>Ce qui est là s’utilise avant tout achat. Mesurer sans les lisières.</translation>
    </message>
    <message>
        <source>take away: %1</source>
        <extracomment>spoken name of a piece of cloth in the list: pressing it takes it away</extracomment>
        <translation>retirer&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>Store</name>
    <message>
        <source>The disk is full. Nothing was lost; free some room and try again.</source>
        <translation>Le disque est plein. Rien n’est perdu&#x202f;; libérer de la place et réessayer.</translation>
    </message>
    <message>
        <source>This is open for reading only, so nothing can be changed here.</source>
        <translation>Ouvert en lecture seule&#x202f;: rien ne peut être changé ici.</translation>
    </message>
    <message>
        <source>Another program holds the file. Try again in a moment.</source>
        <translation>Un autre programme tient le fichier. Réessayer dans un instant.</translation>
    </message>
    <message>
        <source>The project was changed elsewhere. Open it again from the shelf.</source>
        <translation>Le projet a été changé ailleurs. Le rouvrir depuis l’étagère.</translation>
    </message>
    <message>
        <source>These projects were saved by a newer Matside. They were left as they are.</source>
        <translation>Ces projets ont été enregistrés par un Matside plus récent. Ils ont été laissés tels quels.</translation>
    </message>
    <message>
        <source>The file is damaged. What can be read is shown.</source>
        <translation>Le fichier est abîmé. Ce qui peut être lu est montré.</translation>
    </message>
    <message>
        <source>Something in this project cannot be read. Open it and mend that first; nothing was copied.</source>
        <translation>Quelque chose dans ce projet ne peut pas être lu. L’ouvrir et le corriger d’abord&#x202f;; rien n’a été copié.</translation>
    </message>
    <message>
        <source>There is nothing left to undo.</source>
        <translation>Il n’y a plus rien à annuler.</translation>
    </message>
    <message>
        <source>That could not be saved: %1</source>
        <translation>L’enregistrement a échoué&#x202f;: %1</translation>
    </message>
    <message>
        <source>Something in this project cannot be read. Mend it at Fit first; nothing was changed.</source>
        <translation>Quelque chose dans ce projet ne peut pas être lu. Le corriger d’abord sous «&#x202f;Prévoir&#x202f;»&#x202f;; rien n’a été changé.</translation>
    </message>
    <message>
        <source>The folder of the projects cannot be used. Free some room, and see that it may be read and written.</source>
        <translation>Le dossier des projets n’est pas utilisable. Libérer de la place, et vérifier qu’il peut être lu et écrit.</translation>
    </message>
    <message>
        <source>Your projects are from an earlier Matside. There was no room for the copy that comes before they are brought up to date, so they were left as they are. Free some room.</source>
        <translation>Les projets viennent d’un Matside plus ancien. La place a manqué pour la copie qui précède leur mise à jour&#x202f;; ils ont été laissés tels quels. Libérer de la place.</translation>
    </message>
    <message>
        <source>Your projects are from an earlier Matside, and their folder cannot be written, so they were left as they are. See that it may be written.</source>
        <translation>Les projets viennent d’un Matside plus ancien, et leur dossier n’est pas inscriptible&#x202f;; ils ont été laissés tels quels. Vérifier qu’il peut être écrit.</translation>
    </message>
</context>
<context>
    <name>StripDrawing</name>
    <message>
        <source>next</source>
        <translation>suivant</translation>
    </message>
</context>
<context>
    <name>TableDrawing</name>
    <message>
        <source>The piece is drawn here once it has a size.</source>
        <extracomment>shown where the drawing will be while the project has no size yet</extracomment>
        <translation>L’ouvrage est dessiné ici dès qu’il a une taille.</translation>
    </message>
    <message>
        <source>size of the piece: drag, or use the arrow keys</source>
        <translation>taille de l’ouvrage&#x202f;: faire glisser, ou utiliser les flèches du clavier</translation>
    </message>
</context>
<context>
    <name>TakeSheet</name>
    <message>
        <source>To take</source>
        <translation>En boutique</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>puts the list to take away again</extracomment>
        <translation>Retour</translation>
    </message>
</context>
<context>
    <name>TakeSlip</name>
    <message>
        <source>in the basket</source>
        <translation>dans le panier</translation>
    </message>
    <message>
        <source>not in the basket yet</source>
        <translation>pas encore dans le panier</translation>
    </message>
</context>
<context>
    <name>Tally</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>a tally that is too long to draw: so many made of so many</extracomment>
        <translation>%1 sur %2</translation>
    </message>
</context>
<context>
    <name>TermRow</name>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a term of a sum does</extracomment>
        <translation>montrer le calcul</translation>
    </message>
    <message>
        <source>as you entered it</source>
        <extracomment>stands under a value that the maker entered herself</extracomment>
        <translation>tel que saisi</translation>
    </message>
    <message>
        <source>preset</source>
        <extracomment>stands under a value that every new piece has and that she left as it was</extracomment>
        <translation>préréglé</translation>
    </message>
    <message>
        <source>the common size</source>
        <extracomment>stands under the size of the blocks: one that blocks off size have in common, taken for all</extracomment>
        <translation>la taille commune</translation>
    </message>
</context>
<context>
    <name>TrialReading</name>
    <message>
        <source>not yet read</source>
        <translation>pas encore mesuré</translation>
    </message>
    <message>
        <source>It is a gap</source>
        <translation>C’est un espace</translation>
    </message>
    <message>
        <source>It is an overlap</source>
        <translation>C’est un recouvrement</translation>
    </message>
</context>
<context>
    <name>TrialSays</name>
    <message>
        <source>The trial: first a test block and a test join, so that the figures fit your cloth.</source>
        <extracomment>the trial: a block and a join made before the piece&apos;s own cloth is cut; what is measured on them sets seam and draw-up</extracomment>
        <translation>L’essai&#x202f;: d’abord un bloc d’essai et un assemblage d’essai, pour que les mesures conviennent au tissu.</translation>
    </message>
    <message>
        <source>The trial: first a test block, so that the figures fit your cloth.</source>
        <translation>L’essai&#x202f;: d’abord un bloc d’essai, pour que les mesures conviennent au tissu.</translation>
    </message>
</context>
<context>
    <name>TrialSheet</name>
    <message>
        <source>Take these measures</source>
        <translation>Prendre ces mesures</translation>
    </message>
    <message numerus="yes">
        <source>%n still to read</source>
        <extracomment>of the readings of the trial; short: it stands on a button that can be pressed once all are read</extracomment>
        <translation>
            <numerusform>Reste %n à mesurer</numerusform>
            <numerusform>Restent %n à mesurer</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TrimPage</name>
    <message>
        <source>Measure</source>
        <extracomment>on a button: the block in hand is measured</extracomment>
        <translation>Mesurer</translation>
    </message>
    <message>
        <source>The strip comes apart along a ruler, down the middle of each gap; blocks off it so far: %1</source>
        <translation>La bande se sépare le long d’une règle, au milieu de chaque intervalle&#x202f;; blocs déjà séparés&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>Tuner</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1&#x202f;: moins</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1&#x202f;: plus</translation>
    </message>
</context>
<context>
    <name>UndoneSheet</name>
    <message>
        <source>Was it tapped by mistake, or is the piece spoiled?</source>
        <translation>Touché par erreur, ou le morceau est-il gâché&#x202f;?</translation>
    </message>
    <message>
        <source>Tapped by mistake</source>
        <translation>Touché par erreur</translation>
    </message>
    <message>
        <source>Done and spoiled</source>
        <translation>Fait et gâché</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Laisser tel quel</translation>
    </message>
</context>
<context>
    <name>WishScene</name>
    <message>
        <source>Wanted: %1</source>
        <translation>Souhaité&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Pleat on the back</source>
        <extracomment>a fold of the back cloth stitched down by mistake</extracomment>
        <translation>Faux pli au dos</translation>
    </message>
    <message>
        <source>Thread broke or loops</source>
        <translation>Fil cassé ou boucles</translation>
    </message>
    <message>
        <source>Patch not covered</source>
        <extracomment>patch: a shape of cloth stitched onto the block</extracomment>
        <translation>Pièce mal couverte</translation>
    </message>
    <message>
        <source>Stain or hoop mark</source>
        <translation>Tache ou marque de cadre</translation>
    </message>
    <message>
        <source>Look at it again</source>
        <translation>À revoir</translation>
    </message>
    <message>
        <source>That is not a whole number.</source>
        <translation>Ce n’est pas un nombre entier.</translation>
    </message>
    <message>
        <source>It needs a name. The old one was kept.</source>
        <translation>Il faut un nom. L’ancien a été gardé.</translation>
    </message>
    <message>
        <source>That name is too long; %1 letters are the most.</source>
        <translation>Ce nom est trop long&#x202f;; %1 lettres au plus.</translation>
    </message>
    <message>
        <source>A price is a number like 9.50.</source>
        <translation>Un prix est un nombre comme 9,50.</translation>
    </message>
    <message>
        <source>That is too small; %1 is the least.</source>
        <translation>C’est trop petit&#x202f;; %1 au moins.</translation>
    </message>
    <message>
        <source>That is longer than any piece here can be.</source>
        <translation>C’est plus long que tout ouvrage possible ici.</translation>
    </message>
    <message>
        <source>This lies between %1 and %2.</source>
        <translation>Cela se situe entre %1 et %2.</translation>
    </message>
    <message>
        <source>Draw-up lies between 0 % and 15 %.</source>
        <translation>Le retrait se situe entre 0&#x202f;% et 15&#x202f;%.</translation>
    </message>
    <message>
        <source>That does not belong here.</source>
        <translation>Cela n’a pas sa place ici.</translation>
    </message>
    <message>
        <source>new cloth</source>
        <translation>nouveau tissu</translation>
    </message>
    <message>
        <source>new ruler</source>
        <translation>nouvelle règle</translation>
    </message>
    <message>
        <source>“%1” is the cloth of the patch “%2”: it stays while the patch does.</source>
        <extracomment>a cloth cannot be taken away; %1 is the cloth, %2 a patch cut from it</extracomment>
        <translation>«&#x202f;%1&#x202f;» est le tissu de la pièce «&#x202f;%2&#x202f;»&#x202f;: il reste tant que la pièce reste.</translation>
    </message>
    <message>
        <source>“%1” has been cut already: it stays with this piece.</source>
        <translation>«&#x202f;%1&#x202f;» a déjà été coupé&#x202f;: il reste avec cet ouvrage.</translation>
    </message>
    <message>
        <source>“%1” has been bought or measured: it stays with this piece.</source>
        <translation>«&#x202f;%1&#x202f;» a été acheté ou mesuré&#x202f;: il reste avec cet ouvrage.</translation>
    </message>
    <message>
        <source>More than %1 cloths do not fit in one piece.</source>
        <translation>Un ouvrage ne peut pas avoir plus de %1 tissus.</translation>
    </message>
    <message>
        <source>More than %1 rulers cannot be kept.</source>
        <translation>Plus de %1 règles ne peuvent pas être gardées.</translation>
    </message>
    <message>
        <source>One ruler stays: every cut is laid out with it.</source>
        <translation>Il faut garder une règle&#x202f;: chaque coupe se trace avec elle.</translation>
    </message>
    <message>
        <source>It is no longer there.</source>
        <translation>Ce n’est plus là.</translation>
    </message>
    <message>
        <source>a scant</source>
        <extracomment>just under the ruler&apos;s mark that follows</extracomment>
        <translation>presque</translation>
    </message>
    <message>
        <source>a generous</source>
        <extracomment>just over the ruler&apos;s mark that follows</extracomment>
        <translation>bien</translation>
    </message>
    <message>
        <source>too long to tell</source>
        <translation>trop long à dire</translation>
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
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>first</source>
        <translation>premier</translation>
    </message>
    <message>
        <source>second</source>
        <translation>deuxième</translation>
    </message>
    <message>
        <source>third</source>
        <translation>troisième</translation>
    </message>
    <message>
        <source>fourth</source>
        <translation>quatrième</translation>
    </message>
    <message>
        <source>fifth</source>
        <translation>cinquième</translation>
    </message>
    <message>
        <source>sixth</source>
        <translation>sixième</translation>
    </message>
    <message>
        <source>seventh</source>
        <translation>septième</translation>
    </message>
    <message>
        <source>eighth</source>
        <translation>huitième</translation>
    </message>
    <message>
        <source>ninth</source>
        <translation>neuvième</translation>
    </message>
    <message>
        <source>tenth</source>
        <translation>dixième</translation>
    </message>
    <message>
        <source>last</source>
        <extracomment>the last of more than ten, as in &quot;and the last block will not fit&quot;</extracomment>
        <translation>dernier</translation>
    </message>
    <message>
        <source>table</source>
        <translation>table</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longueur</translation>
    </message>
    <message>
        <source>width</source>
        <translation>largeur</translation>
    </message>
    <message>
        <source>across</source>
        <translation>en travers</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>colonnes</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>rangées</translation>
    </message>
    <message>
        <source>block along</source>
        <translation>bloc en long</translation>
    </message>
    <message>
        <source>block across</source>
        <translation>bloc en travers</translation>
    </message>
    <message>
        <source>spare blocks</source>
        <translation>blocs de réserve</translation>
    </message>
    <message>
        <source>made</source>
        <translation>façon</translation>
    </message>
    <message>
        <source>clean back</source>
        <translation>dos net</translation>
    </message>
    <message>
        <source>kits</source>
        <translation>kits</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>couture</translation>
    </message>
    <message>
        <source>batting’s thickness</source>
        <translation>épaisseur du molleton</translation>
    </message>
    <message>
        <source>draw-up along</source>
        <translation>retrait en long</translation>
    </message>
    <message>
        <source>draw-up across</source>
        <translation>retrait en travers</translation>
    </message>
    <message>
        <source>sashing, as seen</source>
        <translation>bande intermédiaire, visible</translation>
    </message>
    <message>
        <source>back strip, cut</source>
        <translation>bande du dos, coupée</translation>
    </message>
    <message>
        <source>block’s allowance</source>
        <translation>marge du bloc</translation>
    </message>
    <message>
        <source>catch</source>
        <translation>prise</translation>
    </message>
    <message>
        <source>turn over the bulk</source>
        <translation>repli sur l’épaisseur</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>genre</translation>
    </message>
    <message>
        <source>outside, along</source>
        <translation>extérieur, en long</translation>
    </message>
    <message>
        <source>outside, across</source>
        <translation>extérieur, en travers</translation>
    </message>
    <message>
        <source>field, along</source>
        <translation>champ, en long</translation>
    </message>
    <message>
        <source>field, across</source>
        <translation>champ, en travers</translation>
    </message>
    <message>
        <source>opening, along</source>
        <translation>ouverture, en long</translation>
    </message>
    <message>
        <source>opening, across</source>
        <translation>ouverture, en travers</translation>
    </message>
    <message>
        <source>usable length</source>
        <translation>longueur utile</translation>
    </message>
    <message>
        <source>gap between outlines</source>
        <translation>intervalle entre contours</translation>
    </message>
    <message>
        <source>margin past the hoop</source>
        <translation>rebord au-delà du cadre</translation>
    </message>
    <message>
        <source>placing by eye, within</source>
        <translation>pose à l’œil, à … près</translation>
    </message>
    <message>
        <source>sliver cut away</source>
        <translation>lamelle ôtée</translation>
    </message>
    <message>
        <source>tail past the frame</source>
        <translation>bout au-delà du cadre</translation>
    </message>
    <message>
        <source>waste tails sewn on</source>
        <translation>amorces cousues</translation>
    </message>
    <message>
        <source>frame may lie on the last block</source>
        <translation>le cadre peut couvrir le dernier bloc</translation>
    </message>
    <message>
        <source>line down the sashings</source>
        <extracomment>one line of decorative stitching down the middle of every sashing</extracomment>
        <translation>ligne dans les bandes intermédiaires</translation>
    </message>
    <message>
        <source>gaps give the sashing</source>
        <translation>les intervalles donnent les bandes intermédiaires</translation>
    </message>
    <message>
        <source>edge</source>
        <translation>bord</translation>
    </message>
    <message>
        <source>cloth kept outside</source>
        <translation>tissu hors contour</translation>
    </message>
    <message>
        <source>binding’s seam</source>
        <translation>couture de la bande de finition</translation>
    </message>
    <message>
        <source>binding</source>
        <translation>bande de finition</translation>
    </message>
    <message>
        <source>sewn on the back</source>
        <translation>cousu au dos</translation>
    </message>
    <message>
        <source>corners</source>
        <translation>coins</translation>
    </message>
    <message>
        <source>corners’ radius</source>
        <translation>rayon des coins</translation>
    </message>
    <message>
        <source>to spare</source>
        <translation>réserve</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>tissu</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>part it plays</source>
        <translation>son rôle</translation>
    </message>
    <message>
        <source>usable width</source>
        <translation>largeur utile</translation>
    </message>
    <message>
        <source>sold by the</source>
        <translation>vendu par</translation>
    </message>
    <message>
        <source>price of a yard</source>
        <translation>prix du yard</translation>
    </message>
    <message>
        <source>price of a metre</source>
        <translation>prix du mètre</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>couleur</translation>
    </message>
    <message>
        <source>its pattern has an up</source>
        <translation>imprimé directionnel</translation>
    </message>
    <message>
        <source>Take this cloth away</source>
        <translation>Retirer ce tissu</translation>
    </message>
    <message>
        <source>Add a cloth</source>
        <translation>Ajouter un tissu</translation>
    </message>
    <message>
        <source>ruler</source>
        <translation>règle</translation>
    </message>
    <message>
        <source>its finest mark</source>
        <translation>sa plus fine graduation</translation>
    </message>
    <message>
        <source>Take this ruler away</source>
        <translation>Retirer cette règle</translation>
    </message>
    <message>
        <source>Add a ruler</source>
        <translation>Ajouter une règle</translation>
    </message>
    <message>
        <source>finest mark</source>
        <translation>plus fine graduation</translation>
    </message>
    <message>
        <source>The table</source>
        <translation>La table</translation>
    </message>
    <message>
        <source>The blocks</source>
        <translation>Les blocs</translation>
    </message>
    <message>
        <source>Seam and draw-up</source>
        <translation>Couture et retrait</translation>
    </message>
    <message>
        <source>Sashing and fold</source>
        <translation>Bande intermédiaire et rentré</translation>
    </message>
    <message>
        <source>The hoop</source>
        <translation>Le cadre à broder</translation>
    </message>
    <message>
        <source>The hoop strip</source>
        <translation>La bande à broder</translation>
    </message>
    <message>
        <source>The edge</source>
        <translation>Le bord</translation>
    </message>
    <message>
        <source>The cloths</source>
        <translation>Les tissus</translation>
    </message>
    <message>
        <source>Your rulers</source>
        <translation>Les règles</translation>
    </message>
    <message>
        <source>no table</source>
        <translation>pas de table</translation>
    </message>
    <message>
        <source>four-sided</source>
        <translation>rectangulaire</translation>
    </message>
    <message>
        <source>round</source>
        <translation>ronde</translation>
    </message>
    <message>
        <source>reversible</source>
        <translation>réversible</translation>
    </message>
    <message>
        <source>with one clean back</source>
        <translation>à un dos net</translation>
    </message>
    <message>
        <source>layered and bound</source>
        <translation>superposé et bordé</translation>
    </message>
    <message>
        <source>bagged out</source>
        <translation>monté en sac et retourné</translation>
    </message>
    <message>
        <source>bound</source>
        <translation>bordé</translation>
    </message>
    <message>
        <source>framed</source>
        <translation>encadré</translation>
    </message>
    <message>
        <source>square</source>
        <translation>droits</translation>
    </message>
    <message>
        <source>rounded, on bias</source>
        <translation>arrondis, au biais</translation>
    </message>
    <message>
        <source>double fold</source>
        <translation>pli double</translation>
    </message>
    <message>
        <source>single fold</source>
        <translation>pli simple</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>à la main</translation>
    </message>
    <message>
        <source>by machine</source>
        <translation>à la machine</translation>
    </message>
    <message>
        <source>two rings</source>
        <translation>deux anneaux</translation>
    </message>
    <message>
        <source>magnetic frame</source>
        <translation>cadre magnétique</translation>
    </message>
    <message>
        <source>front</source>
        <translation>devant</translation>
    </message>
    <message>
        <source>back</source>
        <translation>dos</translation>
    </message>
    <message>
        <source>batting</source>
        <extracomment>the layer between the cloths</extracomment>
        <translation>molleton</translation>
    </message>
    <message>
        <source>patch</source>
        <translation>pièce</translation>
    </message>
    <message>
        <source>web</source>
        <extracomment>fusible web</extracomment>
        <translation>voile thermocollant</translation>
    </message>
    <message>
        <source>sashing, front</source>
        <translation>bande intermédiaire, devant</translation>
    </message>
    <message>
        <source>sashing, back</source>
        <translation>bande intermédiaire, dos</translation>
    </message>
    <message>
        <source>1/8 yd</source>
        <translation>1/8 yd</translation>
    </message>
    <message>
        <source>1/4 yd</source>
        <translation>1/4 yd</translation>
    </message>
    <message>
        <source>1/2 yd</source>
        <translation>1/2 yd</translation>
    </message>
    <message>
        <source>1 yd</source>
        <translation>1 yd</translation>
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
        <translation>écru</translation>
    </message>
    <message>
        <source>oat</source>
        <translation>avoine</translation>
    </message>
    <message>
        <source>ochre</source>
        <translation>ocre</translation>
    </message>
    <message>
        <source>rust</source>
        <translation>rouille</translation>
    </message>
    <message>
        <source>madder</source>
        <translation>garance</translation>
    </message>
    <message>
        <source>plum</source>
        <translation>prune</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>bleu</translation>
    </message>
    <message>
        <source>teal</source>
        <translation>bleu canard</translation>
    </message>
    <message>
        <source>sage</source>
        <translation>sauge</translation>
    </message>
    <message>
        <source>bark</source>
        <translation>écorce</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>soot</source>
        <translation>suie</translation>
    </message>
    <message>
        <source>new project</source>
        <translation>nouveau projet</translation>
    </message>
    <message>
        <source>demo</source>
        <translation>exemple</translation>
    </message>
    <message>
        <source>make again</source>
        <translation>refaire</translation>
    </message>
    <message>
        <source>copy in millimetres</source>
        <translation>copie en millimètres</translation>
    </message>
    <message>
        <source>bring in</source>
        <extracomment>a project taken out of a share file</extracomment>
        <translation>importer</translation>
    </message>
    <message>
        <source>change</source>
        <translation>changer</translation>
    </message>
    <message>
        <source>layout taken</source>
        <extracomment>layout: how many blocks across and down, their size and the sashing between them</extracomment>
        <translation>disposition prise</translation>
    </message>
    <message>
        <source>cloth added</source>
        <translation>tissu ajouté</translation>
    </message>
    <message>
        <source>ruler added</source>
        <translation>règle ajoutée</translation>
    </message>
    <message>
        <source>cloth taken away</source>
        <translation>tissu retiré</translation>
    </message>
    <message>
        <source>ruler taken away</source>
        <translation>règle retirée</translation>
    </message>
    <message>
        <source>remedy</source>
        <translation>remède</translation>
    </message>
    <message>
        <source>drag</source>
        <translation>glisser</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation>gâché</translation>
    </message>
    <message>
        <source>trial</source>
        <translation>essai</translation>
    </message>
    <message>
        <source>trial put off</source>
        <translation>essai reporté</translation>
    </message>
    <message>
        <source>trial taken back</source>
        <translation>essai annulé</translation>
    </message>
    <message>
        <source>something went wrong</source>
        <translation>souci noté</translation>
    </message>
    <message>
        <source>draw-up taken</source>
        <translation>retrait pris</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>common size taken</source>
        <translation>taille commune prise</translation>
    </message>
    <message>
        <source>ticked as bought</source>
        <translation>coché comme acheté</translation>
    </message>
    <message>
        <source>last outline measured</source>
        <translation>dernier contour mesuré</translation>
    </message>
    <message>
        <source>hoop chosen</source>
        <translation>cadre choisi</translation>
    </message>
    <message>
        <source>sashing strips changed</source>
        <translation>bandes intermédiaires changées</translation>
    </message>
    <message>
        <source>pins counted</source>
        <translation>épingles comptées</translation>
    </message>
    <message>
        <source>blocks changed places</source>
        <translation>blocs échangés</translation>
    </message>
    <message>
        <source>block logged</source>
        <translation>bloc noté</translation>
    </message>
    <message>
        <source>hoop strip, cut</source>
        <translation>bande à broder, coupée</translation>
    </message>
    <message>
        <source>blocks on a strip</source>
        <translation>blocs par bande</translation>
    </message>
    <message>
        <source>hoop strips</source>
        <translation>bandes à broder</translation>
    </message>
    <message>
        <source>gap that yields sashing</source>
        <extracomment>the first gaps of a strip, wide enough to be cut into sashing</extracomment>
        <translation>intervalle pour bande intermédiaire</translation>
    </message>
    <message>
        <source>end margin</source>
        <translation>rebord du bout</translation>
    </message>
    <message>
        <source>advance</source>
        <translation>avance</translation>
    </message>
    <message>
        <source>left on each strip</source>
        <translation>reste par bande</translation>
    </message>
    <message>
        <source>frame’s reach</source>
        <translation>débord du cadre</translation>
    </message>
    <message>
        <source>size sent, along</source>
        <translation>taille envoyée, en long</translation>
    </message>
    <message>
        <source>size sent, across</source>
        <translation>taille envoyée, en travers</translation>
    </message>
    <message>
        <source>trimmed block, along</source>
        <translation>bloc rogné, en long</translation>
    </message>
    <message>
        <source>trimmed block, across</source>
        <translation>bloc rogné, en travers</translation>
    </message>
    <message>
        <source>front sashing, cut</source>
        <translation>bande intermédiaire devant, coupée</translation>
    </message>
    <message>
        <source>back sashing, cut</source>
        <translation>bande intermédiaire dos, coupée</translation>
    </message>
    <message>
        <source>allowances will meet within</source>
        <translation>marges se rejoignent à … près</translation>
    </message>
    <message>
        <source>short sashings a face</source>
        <translation>bandes intermédiaires courtes par face</translation>
    </message>
    <message>
        <source>short sashing</source>
        <translation>bande intermédiaire courte</translation>
    </message>
    <message>
        <source>long sashings a face</source>
        <translation>bandes intermédiaires longues par face</translation>
    </message>
    <message>
        <source>long sashing</source>
        <translation>bande intermédiaire longue</translation>
    </message>
    <message>
        <source>fold under</source>
        <translation>rentré</translation>
    </message>
    <message>
        <source>which catches</source>
        <translation>qui prend</translation>
    </message>
    <message>
        <source>raw, along</source>
        <translation>brut, en long</translation>
    </message>
    <message>
        <source>raw, across</source>
        <translation>brut, en travers</translation>
    </message>
    <message>
        <source>finished, along</source>
        <translation>fini, en long</translation>
    </message>
    <message>
        <source>finished, across</source>
        <translation>fini, en travers</translation>
    </message>
    <message>
        <source>binding, cut</source>
        <translation>bande de finition, coupée</translation>
    </message>
    <message>
        <source>binding, length</source>
        <translation>bande de finition, longueur</translation>
    </message>
    <message>
        <source>binding strips</source>
        <translation>bandes de finition</translation>
    </message>
    <message>
        <source>square for the bias</source>
        <extracomment>bias: cloth cut slantwise; one continuous strip is cut from a square</extracomment>
        <translation>carré pour le biais</translation>
    </message>
    <message>
        <source>table showing, along</source>
        <translation>table visible, en long</translation>
    </message>
    <message>
        <source>table showing, across</source>
        <translation>table visible, en travers</translation>
    </message>
    <message>
        <source>table showing at the corner</source>
        <translation>table visible au coin</translation>
    </message>
    <message>
        <source>binding, exact</source>
        <translation>bande de finition, exacte</translation>
    </message>
    <message>
        <source>gap on paper</source>
        <translation>espace sur le papier</translation>
    </message>
    <message>
        <source>outlines, along</source>
        <translation>contours, en long</translation>
    </message>
    <message>
        <source>outlines, across</source>
        <translation>contours, en travers</translation>
    </message>
    <message>
        <source>used of the strip</source>
        <translation>pris sur la bande</translation>
    </message>
    <message>
        <source>start on the strip</source>
        <translation>début sur la bande</translation>
    </message>
    <message>
        <source>centre on the strip</source>
        <translation>milieu sur la bande</translation>
    </message>
    <message>
        <source>start on drawn-in cloth</source>
        <translation>début sur tissu rétréci</translation>
    </message>
    <message>
        <source>match mark</source>
        <translation>repère</translation>
    </message>
    <message>
        <source>outline</source>
        <translation>contour</translation>
    </message>
    <message>
        <source>draw-up</source>
        <translation>retrait</translation>
    </message>
    <message>
        <source>allowance</source>
        <translation>marge</translation>
    </message>
    <message>
        <source>hoop, outside</source>
        <translation>cadre, extérieur</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>rebord</translation>
    </message>
    <message>
        <source>size sent</source>
        <translation>taille envoyée</translation>
    </message>
    <message>
        <source>kept past the seam</source>
        <translation>au-delà de la couture</translation>
    </message>
    <message>
        <source>sliver</source>
        <translation>lamelle</translation>
    </message>
    <message>
        <source>widest sashing strip</source>
        <translation>bande intermédiaire la plus large</translation>
    </message>
    <message>
        <source>wider gaps before it</source>
        <translation>intervalles élargis avant</translation>
    </message>
    <message>
        <source>lost in truing</source>
        <translation>perdu à l’équerrage</translation>
    </message>
    <message>
        <source>rounded up to</source>
        <translation>arrondi à</translation>
    </message>
    <message>
        <source>tail</source>
        <translation>bout</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>espace</translation>
    </message>
    <message>
        <source>used</source>
        <translation>utilisé</translation>
    </message>
    <message>
        <source>spare</source>
        <translation>réserve</translation>
    </message>
    <message>
        <source>places before it</source>
        <translation>places avant</translation>
    </message>
    <message>
        <source>start</source>
        <translation>début</translation>
    </message>
    <message>
        <source>front strip</source>
        <translation>bande du devant</translation>
    </message>
    <message>
        <source>back strip</source>
        <translation>bande du dos</translation>
    </message>
    <message>
        <source>seam as sewn</source>
        <translation>couture réelle</translation>
    </message>
    <message>
        <source>between the seams</source>
        <translation>entre les coutures</translation>
    </message>
    <message>
        <source>least fold</source>
        <translation>rentré minimal</translation>
    </message>
    <message>
        <source>taken by the bulk</source>
        <translation>pris par l’épaisseur</translation>
    </message>
    <message>
        <source>trimmed block</source>
        <translation>bloc rogné</translation>
    </message>
    <message>
        <source>number of the join</source>
        <translation>numéro de l’assemblage</translation>
    </message>
    <message>
        <source>outlines</source>
        <translation>contours</translation>
    </message>
    <message>
        <source>reach on the back</source>
        <translation>portée au dos</translation>
    </message>
    <message>
        <source>for turns</source>
        <translation>pour les replis</translation>
    </message>
    <message>
        <source>exact width</source>
        <translation>largeur exacte</translation>
    </message>
    <message>
        <source>along</source>
        <translation>en long</translation>
    </message>
    <message>
        <source>finished size</source>
        <translation>taille finie</translation>
    </message>
    <message>
        <source>for the seams</source>
        <translation>pour les coutures</translation>
    </message>
    <message>
        <source>mean of the measured rows</source>
        <translation>moyenne des rangées mesurées</translation>
    </message>
    <message>
        <source>This is not readable as JSON: it breaks off at line %1, column %2.</source>
        <translation>Ce n’est pas lisible comme JSON&#x202f;: cela s’arrête à la ligne %1, colonne %2.</translation>
    </message>
    <message>
        <source>The key &quot;%1&quot; stands twice in one place.</source>
        <translation>La clé «&#x202f;%1&#x202f;» figure deux fois au même endroit.</translation>
    </message>
    <message>
        <source>The file is too large: %1 bytes; %2 is the most.</source>
        <translation>Le fichier est trop grand&#x202f;: %1 octets&#x202f;; %2 au plus.</translation>
    </message>
    <message>
        <source>The file is nested deeper than %1 levels.</source>
        <translation>Le fichier est imbriqué sur plus de %1 niveaux.</translation>
    </message>
    <message>
        <source>There are too many values in one place; %1 is the most.</source>
        <translation>Il y a trop de valeurs au même endroit&#x202f;; %1 au plus.</translation>
    </message>
    <message>
        <source>A text is longer than %1 characters.</source>
        <translation>Un texte dépasse %1 caractères.</translation>
    </message>
    <message>
        <source>This is not a project file of Matside.</source>
        <translation>Ce n’est pas un fichier de projet de Matside.</translation>
    </message>
    <message>
        <source>The file does not say which version of the format it is in.</source>
        <translation>Le fichier ne dit pas dans quelle version du format il est.</translation>
    </message>
    <message>
        <source>The file is in version %1 of the format; this program knows %2. A newer Matside will open it.</source>
        <translation>Le fichier est en version %1 du format&#x202f;; ce programme connaît %2. Un Matside plus récent l’ouvrira.</translation>
    </message>
    <message>
        <source>The file %1 cannot be opened: %2.</source>
        <translation>Le fichier %1 ne peut pas être ouvert&#x202f;: %2.</translation>
    </message>
    <message>
        <source>There should be %1 here.</source>
        <translation>Ici, il faudrait %1.</translation>
    </message>
    <message>
        <source>There must be %1 of them here.</source>
        <translation>Ici, il en faut %1.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of the choices.</source>
        <translation>«&#x202f;%1&#x202f;» n’est pas un des choix.</translation>
    </message>
    <message>
        <source>This is needed and is missing.</source>
        <translation>C’est nécessaire et cela manque.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a length.</source>
        <translation>«&#x202f;%1&#x202f;» n’est pas une longueur.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is longer than any piece here can be.</source>
        <translation>«&#x202f;%1&#x202f;» est plus long que tout ouvrage possible ici.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is too small for this.</source>
        <translation>«&#x202f;%1&#x202f;» est trop petit pour cela.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a percentage.</source>
        <translation>«&#x202f;%1&#x202f;» n’est pas un pourcentage.</translation>
    </message>
    <message>
        <source>The list is too long; %1 is the most.</source>
        <translation>La liste est trop longue&#x202f;; %1 au plus.</translation>
    </message>
    <message>
        <source>No ruler is marked in steps of %1.</source>
        <extracomment>mark: a line printed on a ruler</extracomment>
        <translation>Aucune règle n’est graduée par pas de %1.</translation>
    </message>
    <message>
        <source>A table needs a length and a width, or a diameter alone.</source>
        <translation>Une table demande une longueur et une largeur, ou un diamètre seul.</translation>
    </message>
    <message>
        <source>Two cloths have the same short name, &quot;%1&quot;.</source>
        <translation>Deux tissus ont le même nom court, «&#x202f;%1&#x202f;».</translation>
    </message>
    <message>
        <source>The cloth &quot;%1&quot; is not on the list of cloths.</source>
        <translation>Le tissu «&#x202f;%1&#x202f;» n’est pas dans la liste des tissus.</translation>
    </message>
    <message>
        <source>A measured test block needs its sent size and its outline, both ways.</source>
        <translation>Un bloc d’essai mesuré demande sa taille envoyée et son contour, dans les deux sens.</translation>
    </message>
    <message>
        <source>A measured piece needs four sides and two diagonals.</source>
        <translation>Un ouvrage mesuré demande quatre côtés et deux diagonales.</translation>
    </message>
    <message>
        <source>a group of keys</source>
        <translation>un groupe de clés</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>une liste</translation>
    </message>
    <message>
        <source>a length, such as &quot;7 1/2 in&quot;,</source>
        <translation>une longueur, comme «&#x202f;190&#xa0;mm&#x202f;»</translation>
    </message>
    <message>
        <source>two lengths, along and across,</source>
        <translation>deux longueurs, en long et en travers</translation>
    </message>
    <message>
        <source>a percentage, such as &quot;2 %&quot;,</source>
        <translation>un pourcentage, comme «&#x202f;2&#x202f;%&#x202f;»</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un nombre entier</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>vrai ou faux</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texte</translation>
    </message>
    <message>
        <source>a price as a number</source>
        <translation>un prix en chiffres</translation>
    </message>
    <message>
        <source>Make the block %1.</source>
        <translation>Faire le bloc de %1.</translation>
    </message>
    <message>
        <source>Make the sashing %1.</source>
        <translation>Faire la bande intermédiaire de %1.</translation>
    </message>
    <message>
        <source>Sew with a seam of %1.</source>
        <translation>Coudre avec une couture de %1.</translation>
    </message>
    <message>
        <source>Trim the blocks to an allowance of %1.</source>
        <translation>Rogner les blocs à une marge de %1.</translation>
    </message>
    <message>
        <source>Keep %1 outside the stitched line.</source>
        <translation>Garder %1 hors de la ligne brodée.</translation>
    </message>
    <message>
        <source>Leave a gap of %1.</source>
        <translation>Laisser un intervalle de %1.</translation>
    </message>
    <message>
        <source>Cut the back sashing %1 wide.</source>
        <translation>Couper la bande intermédiaire du dos à %1 de large.</translation>
    </message>
    <message>
        <source>Let the fold catch %1.</source>
        <translation>Donner au pli une prise de %1.</translation>
    </message>
    <message>
        <source>Sew the binding on with a seam of %1.</source>
        <translation>Poser la bande de finition avec une couture de %1.</translation>
    </message>
    <message>
        <source>Use cloth %1 wide.</source>
        <translation>Prendre du tissu de %1 de large.</translation>
    </message>
    <message>
        <source>Reckon with a draw-up of %1.</source>
        <translation>Compter un retrait de %1.</translation>
    </message>
    <message>
        <source>Leave a margin of %1.</source>
        <translation>Laisser un rebord de %1.</translation>
    </message>
    <message>
        <source>Frame the piece with sashing.</source>
        <extracomment>framed: a border of sashing all round, then bound</extracomment>
        <translation>Encadrer l’ouvrage de bandes intermédiaires.</translation>
    </message>
    <message>
        <source>Round the corners by %1.</source>
        <translation>Arrondir les coins de %1.</translation>
    </message>
    <message>
        <source>Leave the corners square.</source>
        <translation>Laisser les coins droits.</translation>
    </message>
    <message>
        <source>Let the gap be reckoned.</source>
        <translation>Laisser calculer l’intervalle.</translation>
    </message>
    <message>
        <source>Let the back sashing&apos;s width be reckoned.</source>
        <translation>Laisser calculer la largeur de la bande intermédiaire du dos.</translation>
    </message>
    <message>
        <source>Keep the frame clear of the block before.</source>
        <translation>Tenir le cadre à l’écart du bloc d’avant.</translation>
    </message>
    <message>
        <source>Sew waste tails to both ends.</source>
        <translation>Coudre une amorce aux deux bouts.</translation>
    </message>
    <message>
        <source>Forget this measuring and measure again.</source>
        <translation>Oublier cette mesure et mesurer de nouveau.</translation>
    </message>
    <message>
        <source>Make it %1.</source>
        <translation>Mettre %1.</translation>
    </message>
    <message>
        <source>Choose &quot;%1&quot;.</source>
        <translation>Choisir «&#x202f;%1&#x202f;».</translation>
    </message>
    <message>
        <source>Call it &quot;%1&quot;.</source>
        <translation>L’appeler «&#x202f;%1&#x202f;».</translation>
    </message>
    <message>
        <source>Take it away.</source>
        <translation>L’enlever.</translation>
    </message>
    <message>
        <source>Nothing is entered yet; %1 would be read.</source>
        <translation>Rien n’est encore saisi&#x202f;; %1 serait lu.</translation>
    </message>
    <message>
        <source>That fraction cannot be; write it as %1.</source>
        <translation>Cette fraction n’existe pas&#x202f;; l’écrire %1.</translation>
    </message>
    <message>
        <source>That unit is not known; in, yd, ft, mm, cm and m are.</source>
        <translation>Cette unité est inconnue&#x202f;; in, yd, ft, mm, cm et m sont connues.</translation>
    </message>
    <message>
        <source>There are two units; leave one away.</source>
        <translation>Il y a deux unités&#x202f;; en ôter une.</translation>
    </message>
    <message>
        <source>That has more digits than any ruler; %1 would be read.</source>
        <translation>Cela a plus de chiffres qu’aucune règle&#x202f;; %1 serait lu.</translation>
    </message>
    <message>
        <source>That is not a percentage; 2 % would be read.</source>
        <translation>Ce n’est pas un pourcentage&#x202f;; 2&#x202f;% serait lu.</translation>
    </message>
    <message>
        <source>That is not a length; %1 would be read.</source>
        <translation>Ce n’est pas une longueur&#x202f;; %1 serait lu.</translation>
    </message>
    <message>
        <source>It is square enough.</source>
        <translation>Il est d’équerre.</translation>
    </message>
    <message>
        <source>It leans by {%1}.</source>
        <extracomment>lean: the block is a little of a diamond; %1 is by how much</extracomment>
        <translation>Il penche de {%1}.</translation>
    </message>
    <message>
        <source>The readings disagree by {%3}.</source>
        <extracomment>%3 is how far the six readings disagree</extracomment>
        <translation>Les mesures se contredisent de {%3}.</translation>
    </message>
    <message>
        <source>Cut it plainly, squared off the first side.</source>
        <translation>Il suffit de couper, d’équerre sur le premier côté.</translation>
    </message>
    <message>
        <source>Use it as it is.</source>
        <translation>L’utiliser tel quel.</translation>
    </message>
    <message>
        <source>Trim it down to size.</source>
        <translation>Le rogner à la taille.</translation>
    </message>
    <message>
        <source>Trim it true: the largest is {%4}.</source>
        <extracomment>the largest true square that can still be cut from it</extracomment>
        <translation>Le rogner d’équerre&#x202f;: {%4} au plus.</translation>
    </message>
    <message>
        <source>Measure the others too, then take a common size.</source>
        <translation>Mesurer aussi les autres, puis prendre une taille commune.</translation>
    </message>
    <message>
        <source>Hoop it again, unpick the outer line and stitch it at size. If the stippling does not reach: a new block.</source>
        <translation>Remettre au cadre, découdre la ligne extérieure et la broder à la taille. Si le vermiculé ne va pas jusque-là&#x202f;: un nouveau bloc.</translation>
    </message>
    <message>
        <source>Pin it square on a board, steam it, let it dry and measure again. If that does not help: a new block.</source>
        <translation>L’épingler d’équerre sur une planche, passer à la vapeur, laisser sécher et mesurer de nouveau. Si cela n’aide pas&#x202f;: un nouveau bloc.</translation>
    </message>
    <message>
        <source>Zigzag a scrap of sandwich to the short allowance, edge to edge, or put the block at an outer edge.</source>
        <translation>Coudre au zigzag une chute des trois épaisseurs à la marge courte, bord à bord, ou placer le bloc sur un bord extérieur.</translation>
    </message>
    <message>
        <source>Measure again, %5 first. Do not cut yet.</source>
        <translation>Mesurer de nouveau, %5 d’abord. Ne pas encore couper.</translation>
    </message>
    <message>
        <source>top</source>
        <translation>en haut</translation>
    </message>
    <message>
        <source>right</source>
        <translation>à droite</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>en bas</translation>
    </message>
    <message>
        <source>left</source>
        <translation>à gauche</translation>
    </message>
    <message>
        <source>diagonal from top left</source>
        <extracomment>a diagonal of the block</extracomment>
        <translation>diagonale depuis le coin haut gauche</translation>
    </message>
    <message>
        <source>diagonal from top right</source>
        <extracomment>a diagonal of the block</extracomment>
        <translation>diagonale depuis le coin haut droit</translation>
    </message>
    <message>
        <source>all six</source>
        <translation>les six</translation>
    </message>
    <message>
        <source>Too narrow or crooked</source>
        <translation>Trop étroit ou de travers</translation>
    </message>
    <message>
        <source>Spoiled</source>
        <translation>Gâché</translation>
    </message>
    <message>
        <source>The cloth ran out</source>
        <translation>Le tissu a manqué</translation>
    </message>
    <message>
        <source>Cloth narrower than planned</source>
        <translation>Tissu plus étroit que prévu</translation>
    </message>
    <message>
        <source>Done already</source>
        <translation>Déjà fait</translation>
    </message>
    <message>
        <source>Thread or bobbin ran out</source>
        <translation>Fin du fil ou de la canette</translation>
    </message>
    <message>
        <source>Pleat, hole or broken needle</source>
        <translation>Faux pli, trou ou aiguille cassée</translation>
    </message>
    <message>
        <source>Wrong or missing patch</source>
        <translation>Mauvaise pièce, ou oubliée</translation>
    </message>
    <message>
        <source>The power failed</source>
        <translation>Panne de courant</translation>
    </message>
    <message>
        <source>The strip is torn</source>
        <translation>La bande est déchirée</translation>
    </message>
    <message>
        <source>The block will not fit</source>
        <translation>Plus de place pour le bloc</translation>
    </message>
    <message>
        <source>I changed my mind</source>
        <translation>J’ai changé d’avis</translation>
    </message>
    <message>
        <source>How much of it is left?</source>
        <translation>Qu’en reste-t-il&#x202f;?</translation>
    </message>
    <message>
        <source>How wide is it between the selvages?</source>
        <extracomment>usable width of the cloth, between the selvages</extracomment>
        <translation>Quelle est sa largeur entre les lisières&#x202f;?</translation>
    </message>
    <message>
        <source>Where is the tear, measured from the zero end?</source>
        <translation>Où est la déchirure, mesurée depuis le bout zéro&#x202f;?</translation>
    </message>
    <message>
        <source>To make again: %1. It stands in the list once more.</source>
        <translation>À refaire&#x202f;: %1. C’est de nouveau dans la liste.</translation>
    </message>
    <message>
        <source>A spare takes the place of %1: nothing is made again.</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;; spare: a block stitched over and above the layout</extracomment>
        <translation>Un bloc de réserve prend la place de %1&#x202f;: rien n’est refait.</translation>
    </message>
    <message>
        <source>Block %1 is stitched again, with the same thread lot. It stands next in the list.</source>
        <translation>Le bloc %1 est à rebroder, avec le même bain de fil. C’est le prochain de la liste.</translation>
    </message>
    <message>
        <source>Still to cut of %1: {%2} along the selvage.</source>
        <translation>%1&#x202f;: encore {%2} à couper le long de la lisière.</translation>
    </message>
    <message>
        <source>What is left of %1, {%2}, yields it.</source>
        <translation>%1&#x202f;: le reste, {%2}, y suffit.</translation>
    </message>
    <message>
        <source>Nothing more is needed of %1.</source>
        <translation>%1&#x202f;: il n’en faut plus.</translation>
    </message>
    <message>
        <source>What is left of %1, {%2}, does not yield it.</source>
        <translation>%1&#x202f;: le reste, {%2}, n’y suffit pas.</translation>
    </message>
    <message>
        <source>Nobody has measured what is left of %1. Measure it along the selvage before you buy.</source>
        <translation>%1&#x202f;: le reste n’est pas mesuré. Le mesurer le long de la lisière avant d’acheter.</translation>
    </message>
    <message>
        <source>Buy at least {%2} of %1, of the same lot.</source>
        <translation>%1&#x202f;: en acheter au moins {%2}, du même lot.</translation>
    </message>
    <message>
        <source>What is made already stays good.</source>
        <translation>Ce qui est déjà fait reste bon.</translation>
    </message>
    <message>
        <source>Counted as done.</source>
        <translation>Compté comme fait.</translation>
    </message>
    <message>
        <source>The bobbin is counted as new from here.</source>
        <translation>La canette compte comme pleine à partir d’ici.</translation>
    </message>
    <message>
        <source>Needle broken? Find all the pieces before you go on.</source>
        <translation>Aiguille cassée&#x202f;? Trouver tous les morceaux avant de continuer.</translation>
    </message>
    <message>
        <source>Blocks lost beyond the tear: %1. They are on record and stand in the list again.</source>
        <translation>Blocs perdus au-delà de la déchirure&#x202f;: %1. Ils sont notés et de nouveau dans la liste.</translation>
    </message>
    <message>
        <source>No stitched block is lost. What no longer fits goes to the next strip.</source>
        <translation>Aucun bloc brodé n’est perdu. Ce qui ne tient plus passe à la bande suivante.</translation>
    </message>
    <message>
        <source>Blocks that go to the next strip: %1.</source>
        <translation>Blocs qui passent à la bande suivante&#x202f;: %1.</translation>
    </message>
    <message>
        <source>It would still fit with a waste tail sewn to the end.</source>
        <extracomment>tail: a waste strip sewn to the end so that the frame has cloth to hold</extracomment>
        <translation>Cela tiendrait encore avec une amorce cousue au bout.</translation>
    </message>
    <message>
        <source>It would still fit with a gap of {%1}.</source>
        <translation>Cela tiendrait encore avec un intervalle de {%1}.</translation>
    </message>
    <message>
        <source>Nothing was changed. What you decide at Fit follows at once; what is cut stays cut.</source>
        <translation>Rien n’a changé. Ce qui est décidé sous «&#x202f;Prévoir&#x202f;» suit aussitôt&#x202f;; ce qui est coupé reste coupé.</translation>
    </message>
    <message>
        <source>Hoop strips to cut beyond the plan: %1.</source>
        <translation>Bandes à broder à couper en plus du plan&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Blocks on each new strip: %1 instead of %2.</source>
        <translation>Blocs sur chaque nouvelle bande&#x202f;: %1 au lieu de %2.</translation>
    </message>
    <message>
        <source>With that measure nothing changes.</source>
        <translation>Avec cette mesure, rien ne change.</translation>
    </message>
    <message>
        <source>The hoop&apos;s sizes are missing: enter what it measures outside, and its stitching field or its opening.</source>
        <extracomment>the ring or frame that holds the cloth under the needle</extracomment>
        <translation>Il manque les mesures du cadre&#x202f;: saisir sa mesure extérieure, et son champ de broderie ou son ouverture.</translation>
    </message>
    <message>
        <source>The block goes to the machine at %1, but the hoop stitches no more than %2.</source>
        <extracomment>sent: the size given to the machine, larger than the outline by what the cloth draws up</extracomment>
        <translation>Le bloc part à la machine à %1, mais le cadre ne brode pas plus de %2.</translation>
    </message>
    <message>
        <source>A sashing of %1 is narrower than the two allowances under it, %2: they would lie double.</source>
        <extracomment>sashing: the strip between two blocks; allowance: cloth outside the stitched line</extracomment>
        <translation>Une bande intermédiaire de %1 est plus étroite que les deux marges dessous, %2&#x202f;: elles se superposeraient.</translation>
    </message>
    <message>
        <source>An allowance of %1 is pared too far to hold a seam; %2 is the least.</source>
        <translation>Une marge de %1 est trop réduite pour tenir une couture&#x202f;; %2 au moins.</translation>
    </message>
    <message>
        <source>The edge keeps %1 outside the stitched line, but the blocks are trimmed to %2: the cloth is not there.</source>
        <translation>Le bord garde %1 hors de la ligne brodée, mais les blocs sont rognés à %2&#x202f;: le tissu manque.</translation>
    </message>
    <message>
        <source>A gap of %1 leaves less than the two seam allowances that come out of it, %2.</source>
        <extracomment>gap: cloth between the outlines of two blocks on one strip</extracomment>
        <translation>Un intervalle de %1 laisse moins que les deux marges de couture qui en sortent, %2.</translation>
    </message>
    <message>
        <source>With a gap of %1 the ring would close on the block before it: the frame reaches %2 beyond the outline.</source>
        <extracomment>reach: how far the hoop&apos;s frame lies beyond the stitched line</extracomment>
        <translation>Avec un intervalle de %1, l’anneau se fermerait sur le bloc d’avant&#x202f;: le débord du cadre est de %2 hors du contour.</translation>
    </message>
    <message>
        <source>A ring may not lie on a stitched block: it would crush it. Only a magnetic frame may.</source>
        <translation>Un anneau ne doit pas reposer sur un bloc brodé&#x202f;: il l’écraserait. Seul un cadre magnétique le peut.</translation>
    </message>
    <message>
        <source>Not one block fits on the strip: %1 is missing, and %2 with waste tails sewn to both ends.</source>
        <extracomment>waste tail: scrap cloth sewn to a strip&apos;s end so that the hoop can hold it</extracomment>
        <translation>Pas un seul bloc ne tient sur la bande&#x202f;: il manque %1, et %2 avec une amorce cousue aux deux bouts.</translation>
    </message>
    <message>
        <source>Only %1 is left to fold under on the back; less than %2 cannot be pressed and would be missed by the stitching.</source>
        <extracomment>fold-under: what is turned under along the back sashing</extracomment>
        <translation>Il ne reste que %1 de rentré au dos&#x202f;; moins de %2 ne se repasse pas et échapperait à la piqûre.</translation>
    </message>
    <message>
        <source>A catch of %1 will not do: keep it between %2 and %3.</source>
        <extracomment>catch: how far the folded edge passes the seam it is caught by</extracomment>
        <translation>Une prise de %1 ne va pas&#x202f;: la garder entre %2 et %3.</translation>
    </message>
    <message>
        <source>Binding cut %1 wide does not come out of cloth %2 wide.</source>
        <translation>Une bande de finition coupée à %1 de large ne sort pas d’un tissu de %2 de large.</translation>
    </message>
    <message>
        <source>Corners rounded by %1 do not fit on the piece; %2 is the most.</source>
        <translation>Des coins arrondis de %1 ne tiennent pas sur l’ouvrage&#x202f;; %2 au plus.</translation>
    </message>
    <message>
        <source>The bias wants a square of %1, and the cloth is only %2 wide.</source>
        <extracomment>bias: cloth cut slantwise, which goes round a curve</extracomment>
        <translation>Le biais demande un carré de %1, et le tissu n’a que %2 de large.</translation>
    </message>
    <message>
        <source>A draw-up of %1 is not likely; it lies between 0 % and %2. Measure the test block again.</source>
        <extracomment>draw-up: how much the stitching shrinks the cloth</extracomment>
        <translation>Un retrait de %1 est peu probable&#x202f;; il se situe entre 0&#x202f;% et %2. Mesurer de nouveau le bloc d’essai.</translation>
    </message>
    <message>
        <source>A short sashing is %1 with its spare, longer than its cloth, %2.</source>
        <translation>Une bande intermédiaire courte fait %1 avec sa réserve, plus que son tissu, %2.</translation>
    </message>
    <message>
        <source>Cloth %1 wide is too narrow to piece the long sashings with their joins at mid-block; %2 is the least.</source>
        <translation>Un tissu de %1 de large est trop étroit pour les bandes intermédiaires longues raccordées à mi-bloc&#x202f;; %2 au moins.</translation>
    </message>
    <message>
        <source>Nothing is left for the piece: let less of the table show.</source>
        <translation>Il ne reste rien pour l’ouvrage&#x202f;: laisser voir moins de table.</translation>
    </message>
    <message>
        <source>Washing that takes %1 is not likely; say less than %2.</source>
        <translation>Une perte de %1 au lavage est peu probable&#x202f;; indiquer moins de %2.</translation>
    </message>
    <message>
        <source>One block makes a piece of %1, larger than the %2 wanted: allow smaller blocks, or let less of the table show.</source>
        <translation>Un seul bloc donne un ouvrage de %1, plus grand que les %2 voulus&#x202f;: permettre des blocs plus petits, ou laisser voir moins de table.</translation>
    </message>
    <message>
        <source>No block from %1 to %2 goes into a hoop you have: allow other sizes, or enter the hoop that takes them.</source>
        <translation>Aucun bloc de %1 à %2 n’entre dans un cadre disponible&#x202f;: permettre d’autres tailles, ou saisir le cadre qui les prend.</translation>
    </message>
    <message>
        <source>That takes %1 blocks or more, and you allow %2: allow more, or larger blocks.</source>
        <translation>Il faut %1 blocs ou plus, et %2 sont permis&#x202f;: en permettre plus, ou des blocs plus grands.</translation>
    </message>
    <message>
        <source>The block has %1 of room in the hoop; %2 lets you place it without trying twice.</source>
        <translation>Le bloc a %1 de jeu dans le cadre&#x202f;; %2 permet de le placer du premier coup.</translation>
    </message>
    <message>
        <source>The binding&apos;s seam of %1 is deeper than the cloth outside the stitched line, %2: it would cover the line.</source>
        <translation>La couture de la bande de finition, %1, est plus profonde que le tissu hors de la ligne brodée, %2&#x202f;: elle couvrirait la ligne.</translation>
    </message>
    <message>
        <source>A margin of %1 past the hoop is hard to hold; %2 is easier.</source>
        <extracomment>margin: cloth past the hoop&apos;s outside at a strip&apos;s long edges</extracomment>
        <translation>Un rebord de %1 au-delà du cadre est dur à tenir&#x202f;; %2 est plus facile.</translation>
    </message>
    <message>
        <source>%1 is left over on each strip; a little more draw-up and the %o2 block will not fit.</source>
        <translation>Il reste %1 sur chaque bande&#x202f;; un peu plus de retrait et le %o2 bloc ne tiendra pas.</translation>
    </message>
    <message>
        <source>Folding on the ruler&apos;s mark leaves a lip of %1 past the seam; more than %2 may lift.</source>
        <extracomment>lip: the part of the fold that stands past the stitching</extracomment>
        <translation>Plier sur le trait de la règle laisse une lèvre de %1 au-delà de la couture&#x202f;; plus de %2 peut se soulever.</translation>
    </message>
    <message>
        <source>The gap pieces are %1 long, shorter than a short sashing with its spare, %2.</source>
        <extracomment>harvested: cut from the gaps between the blocks of a strip</extracomment>
        <translation>Les morceaux d’intervalle font %1, moins qu’une bande intermédiaire courte avec sa réserve, %2.</translation>
    </message>
    <message>
        <source>The gap of %1 is under the two wide allowances, %2: the blocks cannot be cut apart so.</source>
        <translation>L’intervalle de %1 est inférieur aux deux marges larges, %2&#x202f;: les blocs ne peuvent pas être séparés ainsi.</translation>
    </message>
    <message>
        <source>The frame lies %1 over the block before it. Pad it, and look for marks.</source>
        <translation>Le cadre déborde de %1 sur le bloc d’avant. Glisser un tissu épais dessous, et chercher les marques.</translation>
    </message>
    <message>
        <source>The rounded corner cuts %1 into the stippling: stay-stitch beside the line before cutting.</source>
        <extracomment>stippling: the quilting inside a block&apos;s stitched outline; stay-stitch: a row of stitches that holds a cut</extracomment>
        <translation>Le coin arrondi entame le vermiculé de %1&#x202f;: faire une piqûre de soutien près de la ligne avant de couper.</translation>
    </message>
    <message>
        <source>A corner of %1 is tight for folded binding; it eases round from %2.</source>
        <translation>Un coin de %1 est serré pour une bande de finition pliée&#x202f;; elle tourne bien à partir de %2.</translation>
    </message>
    <message>
        <source>Hanging over by only %1, the edge will stick out stiffly; it falls well from %2.</source>
        <translation>Avec une retombée de %1 seulement, le bord restera raide&#x202f;; il tombe bien à partir de %2.</translation>
    </message>
    <message>
        <source>The corners hang %1 past the round table and will stick out; they fall well from %2.</source>
        <translation>Les coins dépassent la table ronde de %1 et resteront raides&#x202f;; ils tombent bien à partir de %2.</translation>
    </message>
    <message>
        <source>Is the cut edge still square to the fold?</source>
        <translation>Le bord coupé est-il encore d’équerre avec le pli&#x202f;?</translation>
    </message>
    <message>
        <source>A cross line lies on the fold, the edge just inside both ragged ends.</source>
        <translation>Une ligne transversale est sur le pli, le bord juste en deçà des deux bouts effilochés.</translation>
    </message>
    <message>
        <source>The line touches at both ends.</source>
        <translation>La ligne touche aux deux bouts.</translation>
    </message>
    <message>
        <source>Back wrong side up, batting, front right side up, smoothed from the middle.</source>
        <translation>Dos envers visible, molleton, devant endroit visible, lissés depuis le milieu.</translation>
    </message>
    <message>
        <source>Every tick measured from the one zero end, never from the tick before.</source>
        <translation>Chaque trait se mesure du même bout zéro, jamais du trait d’avant.</translation>
    </message>
    <message>
        <source>Pins out of the hoop, cord clear, bobbin full enough.</source>
        <translation>Épingles hors du cadre, câble dégagé, canette assez pleine.</translation>
    </message>
    <message>
        <source>Off the hoop, pressed and ten minutes rested before measuring.</source>
        <translation>Hors du cadre, repassé et reposé dix minutes avant de mesurer.</translation>
    </message>
    <message>
        <source>Both ends square to the band’s long edge.</source>
        <translation>Les deux bouts d’équerre avec le long bord du bandeau.</translation>
    </message>
    <message>
        <source>Measure the gap between the allowances and the distance between the two seams on the back.</source>
        <translation>Mesurer l’espace entre les marges et la distance entre les deux coutures au dos.</translation>
    </message>
    <message>
        <source>The web is on the wrong side of the patch.</source>
        <translation>Le voile thermocollant est sur l’envers de la pièce.</translation>
    </message>
    <message>
        <source>Close to the stitches, the topmost patch first.</source>
        <translation>Près des points, la pièce du dessus d’abord.</translation>
    </message>
    <message>
        <source>The line lies on the outer stitches at both corners, not on the echo line.</source>
        <translation>La ligne est sur la piqûre extérieure aux deux coins, pas sur la piqûre en écho.</translation>
    </message>
    <message>
        <source>Each join stands in the middle of a block, never at a crossing.</source>
        <translation>Chaque raccord est au milieu d’un bloc, jamais à un croisement.</translation>
    </message>
    <message>
        <source>Batting and back peeled off, no stitching in the piece.</source>
        <translation>Molleton et dos décollés, aucun point dans le morceau.</translation>
    </message>
    <message>
        <source>Both strips are caught along the whole seam.</source>
        <translation>Les deux bandes sont prises sur toute la couture.</translation>
    </message>
    <message>
        <source>All rows are alike in length, or nearly.</source>
        <translation>Toutes les rangées ont la même longueur, ou presque.</translation>
    </message>
    <message>
        <source>A mark meets each short sashing.</source>
        <translation>Un repère tombe sur chaque bande intermédiaire courte.</translation>
    </message>
    <message>
        <source>The backing lies flat and is held.</source>
        <translation>Le tissu dos est à plat et maintenu.</translation>
    </message>
    <message>
        <source>Turned, corners out, the opening closed.</source>
        <translation>Retourné, coins sortis, ouverture fermée.</translation>
    </message>
    <message>
        <source>No join lands on a corner or a sashing’s end.</source>
        <translation>Aucun raccord ne tombe sur un coin ou un bout de bande intermédiaire.</translation>
    </message>
    <message>
        <source>Both diagonals are alike.</source>
        <translation>Les deux diagonales sont égales.</translation>
    </message>
    <message>
        <source>As many pins out as went in.</source>
        <translation>Autant d’épingles ôtées que posées.</translation>
    </message>
    <message>
        <source>Close the blade between cuts. Roll away from you. Fingers well back from the ruler&apos;s edge.</source>
        <translation>Fermer la lame entre les coupes. Couper en éloignant la lame du corps. Doigts bien en retrait du bord de la règle.</translation>
    </message>
    <message>
        <source>Iron on its stand, off afterwards; steam burns.</source>
        <translation>Fer sur son support, éteint ensuite&#x202f;; la vapeur brûle.</translation>
    </message>
    <message>
        <source>Spray by an open window, away from flame.</source>
        <translation>Vaporiser près d’une fenêtre ouverte, loin des flammes.</translation>
    </message>
    <message>
        <source>Hoop flat on the table, machine stopped, scissor points up.</source>
        <translation>Cadre à plat sur la table, machine arrêtée, pointes des ciseaux vers le haut.</translation>
    </message>
    <message>
        <source>Not a hot mat. Keep it 12 in (30 cm) from candles.</source>
        <translation>Ne pas en faire un dessous-de-plat. Bougies à plus de 30&#xa0;cm (12 in).</translation>
    </message>
    <message>
        <source>Count the pins in and count them out.</source>
        <translation>Compter les épingles posées, puis les épingles ôtées.</translation>
    </message>
    <message>
        <source>the stitched outline</source>
        <extracomment>the block&apos;s outer stitched line</extracomment>
        <translation>le contour brodé</translation>
    </message>
    <message>
        <source>the fold</source>
        <translation>le pli</translation>
    </message>
    <message>
        <source>the cut edge</source>
        <translation>le bord coupé</translation>
    </message>
    <message>
        <source>The fold on a line of the mat, the cut along another.</source>
        <translation>Le pli sur une ligne du tapis, la coupe sur une autre.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; with a cross line on the fold.</source>
        <translation>«&#x202f;%1&#x202f;» avec une ligne transversale sur le pli.</translation>
    </message>
    <message>
        <source>By the mat&apos;s lines: %1 from %2, at both ends.</source>
        <translation>Selon les lignes du tapis&#x202f;: %1 depuis %2, aux deux bouts.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; with its %2 line on %3, &quot;%4&quot; against it.</source>
        <extracomment>two rulers laid side by side; &quot;%1&quot; and &quot;%4&quot; are their names</extracomment>
        <translation>«&#x202f;%1&#x202f;» avec sa ligne %2 sur %3, «&#x202f;%4&#x202f;» contre elle.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; with its %2 line on %3.</source>
        <translation>«&#x202f;%1&#x202f;» avec sa ligne %2 sur %3.</translation>
    </message>
    <message>
        <source>Stop the blade, slide the ruler along, go on.</source>
        <extracomment>fence: the ruler the blade follows, shorter than the cut</extracomment>
        <translation>Arrêter la lame, faire glisser la règle, continuer.</translation>
    </message>
    <message>
        <source>Cut along the second; no daylight between them.</source>
        <translation>Couper le long de la seconde&#x202f;; aucun espace entre elles.</translation>
    </message>
    <message>
        <source>%1 layers.</source>
        <translation>%1 épaisseurs.</translation>
    </message>
    <message>
        <source>: %1 by %2.</source>
        <extracomment>width by length of a piece</extracomment>
        <translation>&#x202f;: %1 sur %2.</translation>
    </message>
    <message>
        <source>(For the trial.)</source>
        <translation>(Pour l’essai.)</translation>
    </message>
    <message>
        <source>Square the end of %1 to its fold.</source>
        <translation>Mettre le bout d’équerre avec le pli&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Cut a hoop strip of %1.</source>
        <extracomment>hoop strip: the strip of cloth that goes through the hoop, several blocks to a strip</extracomment>
        <translation>Couper une bande à broder&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Cut a sashing band of %1.</source>
        <extracomment>band: a strip as long as the cloth is wide, cut across later into sashings</extracomment>
        <translation>Couper un bandeau pour bandes intermédiaires&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Cut a short sashing from a band of %1.</source>
        <translation>Couper une bande intermédiaire courte dans un bandeau&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Cut a long sashing from a band of %1.</source>
        <translation>Couper une bande intermédiaire longue dans un bandeau&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Cut a piece of a long sashing from a band of %1.</source>
        <translation>Couper un morceau de bande intermédiaire longue dans un bandeau&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Sew the pieces to one long sashing of %1.</source>
        <translation>Coudre les morceaux en une bande intermédiaire longue&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Cut a short sashing of %1 from a gap piece.</source>
        <translation>Couper une bande intermédiaire courte dans un morceau d’intervalle&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Cut a patch of %1.</source>
        <translation>Couper une pièce&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Cut a binding strip of %1.</source>
        <translation>Couper une bande de finition&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Cut the backing of %1.</source>
        <translation>Couper le tissu dos&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Cut a square of %1 for bias binding.</source>
        <extracomment>bias: cut slantwise, for a binding that goes round curves</extracomment>
        <translation>Couper un carré pour le biais&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Layer back, batting and front: one hoop strip.</source>
        <translation>Superposer dos, molleton et devant&#x202f;: une bande à broder.</translation>
    </message>
    <message>
        <source>Mark the strip&apos;s centre line and its places.</source>
        <translation>Tracer sur la bande sa ligne médiane et ses places.</translation>
    </message>
    <message>
        <source>Stitch the test block.</source>
        <translation>Broder le bloc d’essai.</translation>
    </message>
    <message>
        <source>Measure the test block&apos;s outline, both ways.</source>
        <translation>Mesurer le contour du bloc d’essai, dans les deux sens.</translation>
    </message>
    <message>
        <source>Make the test join and measure it.</source>
        <translation>Faire l’assemblage d’essai et le mesurer.</translation>
    </message>
    <message>
        <source>Stitch a block.</source>
        <translation>Broder un bloc.</translation>
    </message>
    <message>
        <source>Trim the patches with scissors, the topmost first.</source>
        <translation>Rogner les pièces aux ciseaux, celle du dessus d’abord.</translation>
    </message>
    <message>
        <source>Press the block, now that its patches are trimmed.</source>
        <translation>Repasser le bloc, maintenant que ses pièces sont rognées.</translation>
    </message>
    <message>
        <source>Press the test block and let it rest.</source>
        <translation>Repasser le bloc d’essai et le laisser reposer.</translation>
    </message>
    <message>
        <source>Trim the block&apos;s four sides, measuring from the stitched outline.</source>
        <translation>Rogner les quatre côtés du bloc, en mesurant depuis le contour brodé.</translation>
    </message>
    <message>
        <source>Join two blocks with a short sashing: sew, press, sew, fold, stitch in the ditch.</source>
        <extracomment>ditch: the line where the sashing meets the block</extracomment>
        <translation>Assembler deux blocs par une bande intermédiaire courte&#x202f;: coudre, repasser, coudre, plier, piquer dans le sillon de la couture.</translation>
    </message>
    <message>
        <source>Measure the row&apos;s length.</source>
        <translation>Mesurer la longueur de la rangée.</translation>
    </message>
    <message>
        <source>Join two rows with a long sashing, mark to mark.</source>
        <translation>Assembler deux rangées par une bande intermédiaire longue, repère sur repère.</translation>
    </message>
    <message>
        <source>Lay the backing and hold it.</source>
        <translation>Poser le tissu dos et le maintenir.</translation>
    </message>
    <message>
        <source>Square the piece, measuring from its sashings.</source>
        <translation>Mettre l’ouvrage d’équerre, en mesurant depuis ses bandes intermédiaires.</translation>
    </message>
    <message>
        <source>Sew the binding on.</source>
        <translation>Poser la bande de finition.</translation>
    </message>
    <message>
        <source>Take a last look: pins counted, threads gone, measured.</source>
        <translation>Un dernier regard&#x202f;: compter les épingles, ôter les fils, mesurer.</translation>
    </message>
    <message>
        <source>Square the end</source>
        <translation>Redresser le bout</translation>
    </message>
    <message>
        <source>Strip %1 of %2</source>
        <translation>Bande %1 sur %2</translation>
    </message>
    <message>
        <source>Band %1 of %2</source>
        <translation>Bandeau %1 sur %2</translation>
    </message>
    <message>
        <source>Short sashing %1 of %2</source>
        <translation>Bande courte %1 sur %2</translation>
    </message>
    <message>
        <source>Long sashing %1 of %2</source>
        <translation>Bande longue %1 sur %2</translation>
    </message>
    <message>
        <source>Piece %1 of %2</source>
        <translation>Morceau %1 sur %2</translation>
    </message>
    <message>
        <source>Patch %1 of %2</source>
        <translation>Pièce %1 sur %2</translation>
    </message>
    <message>
        <source>Binding strip %1 of %2</source>
        <translation>Bande de finition %1 sur %2</translation>
    </message>
    <message>
        <source>Backing %1 of %2</source>
        <translation>Tissu dos %1 sur %2</translation>
    </message>
    <message>
        <source>Square for bias %1 of %2</source>
        <translation>Carré de biais %1 sur %2</translation>
    </message>
    <message>
        <source>Test block %1 of %2</source>
        <translation>Bloc d’essai %1 sur %2</translation>
    </message>
    <message>
        <source>Test block, measuring</source>
        <translation>Bloc d’essai, mesure</translation>
    </message>
    <message>
        <source>Test join</source>
        <translation>Assemblage d’essai</translation>
    </message>
    <message>
        <source>Block %1 of %2</source>
        <translation>Bloc %1 sur %2</translation>
    </message>
    <message>
        <source>Block %1 of %2, patches</source>
        <translation>Bloc %1 sur %2, pièces</translation>
    </message>
    <message>
        <source>Block %1 of %2, pressing</source>
        <translation>Bloc %1 sur %2, repassage</translation>
    </message>
    <message>
        <source>Test block, pressing</source>
        <translation>Bloc d’essai, repassage</translation>
    </message>
    <message>
        <source>Block %1 of %2, apart</source>
        <extracomment>a block still in its strip is cut off it, roughly</extracomment>
        <translation>Bloc %1 sur %2, séparer</translation>
    </message>
    <message>
        <source>Short join %1 of %2</source>
        <translation>Assemblage court %1 sur %2</translation>
    </message>
    <message>
        <source>Row %1 of %2</source>
        <translation>Rangée %1 sur %2</translation>
    </message>
    <message>
        <source>Long join %1 of %2</source>
        <translation>Assemblage long %1 sur %2</translation>
    </message>
    <message>
        <source>Piece %1 of %2, squaring</source>
        <translation>Ouvrage %1 sur %2, équerrage</translation>
    </message>
    <message>
        <source>Piece %1 of %2, binding</source>
        <translation>Ouvrage %1 sur %2, finition</translation>
    </message>
    <message>
        <source>Piece %1 of %2, last look</source>
        <translation>Ouvrage %1 sur %2, dernier regard</translation>
    </message>
    <message>
        <source>Cut, blade closed</source>
        <translation>Coupé, lame fermée</translation>
    </message>
    <message>
        <source>Straight, blade closed</source>
        <translation>Droit, lame fermée</translation>
    </message>
    <message>
        <source>Sewn and pressed</source>
        <translation>Cousu et repassé</translation>
    </message>
    <message>
        <source>Strip layered</source>
        <translation>Bande montée</translation>
    </message>
    <message>
        <source>Stitched</source>
        <translation>Brodé</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Mesuré</translation>
    </message>
    <message>
        <source>Tried and measured</source>
        <translation>Essayé et mesuré</translation>
    </message>
    <message>
        <source>All trimmed</source>
        <translation>Tout est rogné</translation>
    </message>
    <message>
        <source>Pressed</source>
        <translation>Repassé</translation>
    </message>
    <message>
        <source>Trimmed, blade closed</source>
        <translation>Rogné, lame fermée</translation>
    </message>
    <message>
        <source>Joined</source>
        <translation>Assemblé</translation>
    </message>
    <message>
        <source>Laid</source>
        <translation>Posé</translation>
    </message>
    <message>
        <source>Turned and closed</source>
        <translation>Retourné et fermé</translation>
    </message>
    <message>
        <source>Squared, blade closed</source>
        <translation>D’équerre, lame fermée</translation>
    </message>
    <message>
        <source>Bound</source>
        <translation>Bordé</translation>
    </message>
    <message>
        <source>All is well</source>
        <translation>Tout va bien</translation>
    </message>
    <message>
        <source>the cloth</source>
        <translation>le tissu</translation>
    </message>
    <message>
        <source>Fit</source>
        <extracomment>station: deciding table, blocks, hoop and edge</extracomment>
        <translation>Prévoir</translation>
    </message>
    <message>
        <source>Shop</source>
        <extracomment>station: what to buy</extracomment>
        <translation>Acheter</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Couper</translation>
    </message>
    <message>
        <source>Hoop</source>
        <extracomment>station: stitching in the hoop</extracomment>
        <translation>Broder</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Rogner</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Assembler</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Finir</translation>
    </message>
    <message>
        <source>side cut</source>
        <extracomment>one of a block&apos;s four sides was cut</extracomment>
        <translation>côté coupé</translation>
    </message>
    <message>
        <source>Two rulers.</source>
        <extracomment>read out before where the rulers lie</extracomment>
        <translation>Deux règles.</translation>
    </message>
    <message>
        <source>back strip doubled</source>
        <extracomment>the back strip folded lengthwise before it is sewn on, so that nothing is turned under</extracomment>
        <translation>bande du dos pliée en deux</translation>
    </message>
    <message>
        <source>scallops’ depth</source>
        <extracomment>scallop: one of the round lobes an edge can be cut into</extracomment>
        <translation>profondeur des festons</translation>
    </message>
    <message>
        <source>scallops along</source>
        <translation>festons en long</translation>
    </message>
    <message>
        <source>scallops across</source>
        <translation>festons en travers</translation>
    </message>
    <message>
        <source>circle or round ends, on bias</source>
        <translation>cercle ou bouts ronds, au biais</translation>
    </message>
    <message>
        <source>scalloped, on bias</source>
        <extracomment>the edge cut into round lobes</extracomment>
        <translation>à festons, au biais</translation>
    </message>
    <message>
        <source>two tablets together</source>
        <extracomment>the work of another tablet put together with what is here</extracomment>
        <translation>deux tablettes réunies</translation>
    </message>
    <message>
        <source>colour of a cloth</source>
        <translation>couleur d’un tissu</translation>
    </message>
    <message>
        <source>order of the patches</source>
        <translation>ordre des pièces</translation>
    </message>
    <message>
        <source>kits of the class changed</source>
        <translation>kits du cours changés</translation>
    </message>
    <message>
        <source>cloth you have changed</source>
        <translation>tissu disponible changé</translation>
    </message>
    <message>
        <source>one arc along</source>
        <extracomment>arc: the curved length of one scallop</extracomment>
        <translation>un arc en long</translation>
    </message>
    <message>
        <source>one arc across</source>
        <translation>un arc en travers</translation>
    </message>
    <message>
        <source>Make the scallops %1 deep.</source>
        <translation>Faire les festons profonds de %1.</translation>
    </message>
    <message>
        <source>Cut into it</source>
        <extracomment>the blade went inside the allowance</extracomment>
        <translation>Entaillé</translation>
    </message>
    <message>
        <source>It measures wrong</source>
        <translation>Pas à la bonne mesure</translation>
    </message>
    <message>
        <source>Sewn wrong</source>
        <translation>Mal cousu</translation>
    </message>
    <message>
        <source>Missed the fold</source>
        <extracomment>the stitching in the ditch did not catch the folded edge on the back</extracomment>
        <translation>Pli non pris</translation>
    </message>
    <message>
        <source>A block is lost or given away</source>
        <translation>Bloc perdu ou donné</translation>
    </message>
    <message>
        <source>How much is left outside the stitched line, at the narrowest?</source>
        <translation>Que reste-t-il hors de la ligne brodée, au plus étroit&#x202f;?</translation>
    </message>
    <message>
        <source>How wide is the block, edge to edge?</source>
        <translation>Quelle est la largeur du bloc, de bord à bord&#x202f;?</translation>
    </message>
    <message>
        <source>How long is the row, raw end to raw end?</source>
        <translation>Quelle longueur de rangée, de bout brut à bout brut&#x202f;?</translation>
    </message>
    <message>
        <source>How long is the side that is off, edge to edge?</source>
        <translation>Quelle est la longueur du côté qui ne va pas, de bord à bord&#x202f;?</translation>
    </message>
    <message>
        <source>{%1} is enough. Sew that side by the stitched line, not by the raw edge.</source>
        <extracomment>allowance: the cloth left outside a block&apos;s stitched line</extracomment>
        <translation>{%1} suffit. Coudre ce côté selon la ligne brodée, pas selon le bord brut.</translation>
    </message>
    <message>
        <source>Or lay the block so that this side comes to the outer edge, under the binding.</source>
        <translation>Ou poser le bloc pour que ce côté vienne au bord extérieur, sous la bande de finition.</translation>
    </message>
    <message>
        <source>Off by {%1}: up to {%2} that is good work. Go on.</source>
        <translation>Écart de {%1}&#x202f;: jusqu’à {%2}, c’est du bon travail. Continuer.</translation>
    </message>
    <message>
        <source>{%1} too large: lay the ruler on the stitched line and trim again.</source>
        <translation>Trop grand de {%1}&#x202f;: poser la règle sur la ligne brodée et rogner de nouveau.</translation>
    </message>
    <message>
        <source>{%1} too small. It can be used: sew it by the stitched line, not by the raw edge.</source>
        <translation>Trop petit de {%1}. Il est utilisable&#x202f;: le coudre selon la ligne brodée, pas selon le bord brut.</translation>
    </message>
    <message>
        <source>Enter the four sides and both diagonals under “Measure the piece”: it says where to cut.</source>
        <translation>Saisir les quatre côtés et les deux diagonales sous «&#x202f;Mesurer l’ouvrage&#x202f;»&#x202f;: il y est dit où couper.</translation>
    </message>
    <message>
        <source>Sew it again {%1} deep.</source>
        <translation>Recoudre à {%1} de profondeur.</translation>
    </message>
    <message>
        <source>The strip serves again if it is not frayed or stretched; otherwise make it again.</source>
        <translation>La bande ressert si elle n’est ni effilochée ni étirée&#x202f;; sinon la refaire.</translation>
    </message>
    <message>
        <source>Cut {%2} × {%3} of %1 for it: from what the sashing strips left over, or across the cloth.</source>
        <extracomment>a strip of sashing cut to length</extracomment>
        <translation>%1&#x202f;: pour cela, couper {%2} × {%3} dans le reste des bandes intermédiaires, ou en travers du tissu.</translation>
    </message>
    <message>
        <source>Draw the binding over its seam on the back and close the place by hand; no need to unpick.</source>
        <translation>Tirer la bande de finition par-dessus sa couture au dos et fermer à la main&#x202f;; inutile de découdre.</translation>
    </message>
    <message>
        <source>No good block of that name is on record: nothing was changed.</source>
        <translation>Aucun bon bloc de ce nom n’est noté&#x202f;: rien n’a été changé.</translation>
    </message>
    <message>
        <source>So many scallops cannot be %1 deep: no more than %2.</source>
        <translation>Autant de festons ne peuvent pas avoir %1 de profondeur&#x202f;: %2 au plus.</translation>
    </message>
    <message>
        <source>Doubled, the back strip catches only %1 past the seam; at least %2 holds.</source>
        <extracomment>doubled: folded lengthwise first, so that its fold is ready made</extracomment>
        <translation>Pliée en deux, la bande du dos ne prend que %1 au-delà de la couture&#x202f;; il faut au moins %2 pour tenir.</translation>
    </message>
    <message>
        <source>Scallops %1 deep cut into the stippling: they need %2 of cloth outside the outline, and there is %3. Stay-stitch first.</source>
        <extracomment>scallop: one of the round lobes the edge is cut into; its depth is measured from the raw edge</extracomment>
        <translation>Des festons de %1 de profondeur entament le vermiculé&#x202f;: il leur faut %2 de tissu hors du contour, et il y en a %3. Faire d’abord une piqûre de soutien.</translation>
    </message>
    <message>
        <source>Between scallops %1 deep the binding comes close to the outline: %2 of cloth outside it would clear it, and there is %3.</source>
        <translation>Entre des festons de %1 de profondeur, la bande de finition approche du contour&#x202f;: avec %2 de tissu au-dehors, il n’y toucherait pas, et il y en a %3.</translation>
    </message>
    <message>
        <source>A scallop’s arc of %1 is tight for folded binding; it eases round from %2.</source>
        <translation>Un arc de feston de %1 de rayon est serré pour une bande de finition pliée&#x202f;; elle tourne bien à partir de %2.</translation>
    </message>
    <message>
        <source>The band may be wider than the piece: then trim its long side too.</source>
        <translation>Le bandeau peut être plus large que le morceau&#x202f;: rogner alors aussi son long côté.</translation>
    </message>
    <message>
        <source>Cut a band of %1 right across.</source>
        <translation>Couper un bandeau sur toute la largeur&#x202f;: %1.</translation>
    </message>
    <message>
        <source>frame, as seen</source>
        <extracomment>frame: a strip of sashing all round the piece, under the binding</extracomment>
        <translation>encadrement, visible</translation>
    </message>
    <message>
        <source>frame strip, cut</source>
        <translation>bande d’encadrement, coupée</translation>
    </message>
    <message>
        <source>batting in the frame</source>
        <translation>molleton dans l’encadrement</translation>
    </message>
    <message>
        <source>frame, left and right</source>
        <translation>encadrement, à gauche et à droite</translation>
    </message>
    <message>
        <source>frame, top and bottom</source>
        <translation>encadrement, en haut et en bas</translation>
    </message>
    <message>
        <source>With %1 outside the stitched line nothing of the frame would be seen: it needs more than %2.</source>
        <extracomment>frame: a strip of sashing all round the piece, under the binding</extracomment>
        <translation>Avec %1 hors de la ligne brodée, on ne verrait rien de l’encadrement&#x202f;: il lui faut plus de %2.</translation>
    </message>
    <message>
        <source>Both strips are caught; the batting meets the block’s own and does not lie over it.</source>
        <translation>Les deux bandes sont prises&#x202f;; le molleton touche celui du bloc sans le recouvrir.</translation>
    </message>
    <message>
        <source>No join of a frame strip lands on a corner or a sashing’s end.</source>
        <translation>Aucun raccord de l’encadrement ne tombe sur un coin ou un bout de bande intermédiaire.</translation>
    </message>
    <message>
        <source>Cut a frame strip of %1.</source>
        <extracomment>frame: a strip of sashing all round the piece, under the binding</extracomment>
        <translation>Couper une bande d’encadrement&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Cut a strip of %1 to fill the frame.</source>
        <translation>Couper une bande pour garnir l’encadrement&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Sew the frame to the left and the right, and lay batting in.</source>
        <translation>Coudre l’encadrement à gauche et à droite, et glisser le molleton.</translation>
    </message>
    <message>
        <source>Sew the frame to the top and the bottom, and lay batting in.</source>
        <translation>Coudre l’encadrement en haut et en bas, et glisser le molleton.</translation>
    </message>
    <message>
        <source>Square the piece with its frame.</source>
        <translation>Mettre l’ouvrage d’équerre avec son encadrement.</translation>
    </message>
    <message>
        <source>Frame strip %1 of %2</source>
        <translation>Bande d’encadrement %1 sur %2</translation>
    </message>
    <message>
        <source>Batting strip %1 of %2</source>
        <translation>Bande de molleton %1 sur %2</translation>
    </message>
    <message>
        <source>Piece %1 of %2, frame left and right</source>
        <translation>Ouvrage %1 sur %2, encadrement à gauche et à droite</translation>
    </message>
    <message>
        <source>Piece %1 of %2, frame top and bottom</source>
        <translation>Ouvrage %1 sur %2, encadrement en haut et en bas</translation>
    </message>
    <message>
        <source>Piece %1 of %2, squaring with its frame</source>
        <translation>Ouvrage %1 sur %2, équerrage avec son encadrement</translation>
    </message>
    <message>
        <source>Keep strong magnets away from implants. With a pacemaker or any implant ask your doctor first; as far off as the frame’s maker says and never under 6 in (15 cm), off lap and chest. They pinch: fingers outside the edge. Keep children and cards away, and this tablet 6 in (15 cm) off: it may go dark.</source>
        <translation>Tenir les aimants puissants loin des implants. Avec un pacemaker ou tout autre implant, demander d’abord au médecin&#x202f;; les garder aussi loin que le dit le fabricant du cadre, jamais à moins de 15&#xa0;cm (6 in), ni sur les genoux ni contre la poitrine. Ils pincent&#x202f;: doigts hors du bord. Tenir enfants et cartes à l’écart, et cette tablette à 15&#xa0;cm (6 in)&#x202f;: elle peut s’éteindre.</translation>
    </message>
    <message>
        <source>Pins out before the needle. Cord, hair and sleeves clear.</source>
        <translation>Épingles ôtées avant l’aiguille. Câble, cheveux et manches à l’écart.</translation>
    </message>
    <message>
        <source>a leaf adds</source>
        <extracomment>a leaf is the board laid into a table to lengthen it</extracomment>
        <translation>une rallonge ajoute</translation>
    </message>
    <message>
        <source>fitted with the leaf</source>
        <translation>ajusté, rallonge</translation>
    </message>
    <message>
        <source>out</source>
        <translation>ôtée</translation>
    </message>
    <message>
        <source>in</source>
        <translation>posée</translation>
    </message>
    <message>
        <source>batting’s packages changed</source>
        <translation>paquets de molleton changés</translation>
    </message>
    <message>
        <source>table showing, leaf in</source>
        <translation>table visible, avec rallonge</translation>
    </message>
    <message>
        <source>leaf in: at the corner</source>
        <translation>avec rallonge&#x202f;: au coin</translation>
    </message>
    <message>
        <source>table showing, leaf out</source>
        <translation>table visible, sans rallonge</translation>
    </message>
    <message>
        <source>leaf out: at the corner</source>
        <translation>sans rallonge&#x202f;: au coin</translation>
    </message>
    <message>
        <source>With the leaf in, the ends hang over by only %1 and will stick out stiffly; they fall well from %2.</source>
        <translation>Avec la rallonge, les bouts ne tombent que de %1 et resteront raides&#x202f;; ils tombent bien à partir de %2.</translation>
    </message>
    <message>
        <source>With the leaf out, the ends hang over by only %1 and will stick out stiffly; they fall well from %2.</source>
        <translation>Sans la rallonge, les bouts ne tombent que de %1 et resteront raides&#x202f;; ils tombent bien à partir de %2.</translation>
    </message>
    <message>
        <source>Strips lie side by side: cut across first, then each to its length.</source>
        <translation>Les bandes sont côte à côte&#x202f;: couper d’abord en travers, puis chacune à sa longueur.</translation>
    </message>
    <message>
        <source>leaf</source>
        <extracomment>the board laid in to make a table longer</extracomment>
        <translation>rallonge</translation>
    </message>
    <message>
        <source>No mats of %1 × %2 lie on this table: it would have to be at least %1 long and %3 wide. Ask for the smaller ones, or for one piece.</source>
        <extracomment>mats: place mats, each laid at the table&apos;s edge before one who eats</extracomment>
        <translation>Aucun set de table de %1 × %2 ne tient sur cette table&#x202f;: elle devrait avoir au moins %1 de long et %3 de large. Choisir les plus petits, ou un seul ouvrage.</translation>
    </message>
    <message>
        <source>No mats of %1 × %2 lie on this round table: it would have to be at least %3 across. Ask for the smaller ones, or for one piece.</source>
        <translation>Aucun set de table de %1 × %2 ne tient sur cette table ronde&#x202f;: il lui faudrait un diamètre d’au moins %3. Choisir les plus petits, ou un seul ouvrage.</translation>
    </message>
    <message>
        <source>All layouts near that size come out too large for %1 mats on this table: ask for fewer, or allow block sizes on every mark.</source>
        <translation>Toutes les dispositions proches de cette taille sont trop grandes pour %1 sets de table ici&#x202f;: en demander moins, ou permettre des tailles de bloc sur chaque trait.</translation>
    </message>
    <message>
        <source>batting in the sashings</source>
        <extracomment>batting laid between the two allowances under a wide sashing</extracomment>
        <translation>molleton dans les bandes intermédiaires</translation>
    </message>
    <message>
        <source>Cut a strip of %1 to fill the sashings.</source>
        <translation>Couper une bande pour garnir les bandes intermédiaires&#x202f;: %1.</translation>
    </message>
    <message>
        <source>One side is tilted by {%1}: %7.</source>
        <extracomment>%7 is that side of the block: &quot;right&quot;</extracomment>
        <translation>Un côté est incliné de {%1}&#x202f;: %7.</translation>
    </message>
    <message>
        <source>One end is wider: %7. Each side tilts by {%1}.</source>
        <extracomment>%7 is the wider end of the block: &quot;top&quot;</extracomment>
        <translation>Un bout est plus large&#x202f;: %7. Chaque côté est incliné de {%1}.</translation>
    </message>
    <message>
        <source>Not all six are read yet.</source>
        <extracomment>of a block&apos;s four sides and two diagonals some were not measured yet</extracomment>
        <translation>Les six mesures ne sont pas toutes prises.</translation>
    </message>
    <message>
        <source>Split the lean: turn the ruler by half of it, about the middle of the block.</source>
        <translation>Partager le défaut&#x202f;: tourner la règle de la moitié, autour du milieu du bloc.</translation>
    </message>
    <message>
        <source>Cut that side parallel to the one across from it; its stitches go into the seam. Unpick what shows.</source>
        <translation>Couper ce côté parallèle à celui d’en face&#x202f;; sa piqûre entre dans la couture. Découdre ce qui se voit.</translation>
    </message>
    <message>
        <source>Cut both sides square to the ends; their stitches go into the seams. Unpick what shows.</source>
        <translation>Couper les deux côtés d’équerre avec les bouts&#x202f;; leur piqûre entre dans les coutures. Découdre ce qui se voit.</translation>
    </message>
    <message>
        <source>Make it again: the same place on a strip, the same thread lot.</source>
        <translation>Le refaire&#x202f;: même place sur une bande, même bain de fil.</translation>
    </message>
    <message>
        <source>Still to read: %6. Do not cut yet.</source>
        <extracomment>%6 lists the sides and diagonals that were not measured: &quot;left, diagonal from top right&quot;</extracomment>
        <translation>Reste à mesurer&#x202f;: %6. Ne pas encore couper.</translation>
    </message>
    <message>
        <source>Make the test join, lay its batting between the allowances, press it and measure it.</source>
        <extracomment>between the allowances: under the wide sashing, from one block&apos;s allowance to the other&apos;s</extracomment>
        <translation>Faire l’assemblage d’essai, poser son molleton entre les marges, repasser et mesurer.</translation>
    </message>
    <message>
        <source>Cut a piece of %1 to fill the test join, as long as its strips.</source>
        <extracomment>batting laid into the sashing of the test join; %1 is the batting</extracomment>
        <translation>Couper un morceau pour garnir l’assemblage d’essai, aussi long que ses bandes&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Batting for the test join</source>
        <translation>Molleton pour l’assemblage d’essai</translation>
    </message>
    <message>
        <source>Measure the gap beside the batting and the distance between the two seams on the back.</source>
        <extracomment>batting: laid into the wide sashing of the test join</extracomment>
        <translation>Mesurer l’espace à côté du molleton et la distance entre les deux coutures au dos.</translation>
    </message>
    <message>
        <source>place mats</source>
        <extracomment>place mats: how many are made</extracomment>
        <translation>sets de table</translation>
    </message>
    <message>
        <source>Along the selvage %1 of %2</source>
        <extracomment>a band that runs along the selvage, %1 its number, of %2</extracomment>
        <translation>Le long de la lisière %1 sur %2</translation>
    </message>
    <message>
        <source>Fold it once, cut end on cut end. First cut the selvage off straight: the bands are measured from there.</source>
        <extracomment>strips along the selvage; the cloth is folded across, so that its two cut ends meet</extracomment>
        <translation>Plier une fois, bout coupé sur bout coupé. Couper d’abord la lisière bien droit&#x202f;: les bandeaux se mesurent à partir de là.</translation>
    </message>
    <message>
        <source>In one layer. First cut the selvage off straight: the bands are measured from there.</source>
        <translation>En une seule épaisseur. Couper d’abord la lisière bien droit&#x202f;: les bandeaux se mesurent à partir de là.</translation>
    </message>
    <message>
        <source>Cut a band of %1 along the selvage.</source>
        <extracomment>the band runs along the cloth&apos;s selvage instead of across the cloth</extracomment>
        <translation>Couper un bandeau le long de la lisière&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Block %1, patches</source>
        <translation>Bloc %1, pièces</translation>
    </message>
    <message>
        <source>Block %1, pressing</source>
        <translation>Bloc %1, repassage</translation>
    </message>
    <message>
        <source>Block %1, apart</source>
        <extracomment>a block still in its strip is cut off it, roughly</extracomment>
        <translation>Bloc %1, séparer</translation>
    </message>
    <message>
        <source>From a band of %1: trim its long side too.</source>
        <extracomment>band: a strip right across the cloth that the next piece is cut from; %1 its width</extracomment>
        <translation>D’un bandeau de %1&#x202f;: rogner aussi son long côté.</translation>
    </message>
    <message>
        <source>From a band of %1.</source>
        <translation>D’un bandeau de %1.</translation>
    </message>
    <message>
        <source>%1 from a band of %2: %3 measured off.</source>
        <extracomment>so many pieces from a band of this width, each so long along it</extracomment>
        <translation>%1 d’un bandeau de %2&#x202f;: mesurer %3.</translation>
    </message>
    <message>
        <source>front cloth</source>
        <translation>tissu du devant</translation>
    </message>
    <message>
        <source>back cloth</source>
        <extracomment>the cloth of the back</extracomment>
        <translation>tissu dos</translation>
    </message>
    <message>
        <source>patch cloth</source>
        <extracomment>the cloth of the appliquéd patches</extracomment>
        <translation>tissu des pièces</translation>
    </message>
    <message>
        <source>sashing cloth, front</source>
        <extracomment>the strips between the blocks</extracomment>
        <translation>tissu des bandes intermédiaires, devant</translation>
    </message>
    <message>
        <source>sashing cloth, back</source>
        <translation>tissu des bandes intermédiaires, dos</translation>
    </message>
    <message>
        <source>binding cloth</source>
        <translation>tissu de finition</translation>
    </message>
    <message>
        <source>%1 inside the hoop is more than it measures outside, %2: the needle would meet the frame. Measure both again.</source>
        <translation>%1 à l’intérieur, c’est plus que le cadre n’en mesure dehors, %2&#x202f;: l’aiguille toucherait le cadre. Mesurer les deux de nouveau.</translation>
    </message>
    <message>
        <source>Blade</source>
        <translation>Lame</translation>
    </message>
    <message>
        <source>Magnets</source>
        <translation>Aimants</translation>
    </message>
    <message>
        <source>Needle</source>
        <translation>Aiguille</translation>
    </message>
    <message>
        <source>Hot iron</source>
        <translation>Fer chaud</translation>
    </message>
    <message>
        <source>Spray</source>
        <translation>Colle en bombe</translation>
    </message>
    <message>
        <source>Scissors</source>
        <translation>Ciseaux</translation>
    </message>
    <message>
        <source>Flames</source>
        <translation>Flammes</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Épingles</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;; %2 is what was noted of it when it was stitched, &quot;Pleat on the back&quot;
----------
%1 is a cloth&apos;s name, %2 what was changed of it</extracomment>
        <translation>%1&#x202f;: %2</translation>
    </message>
    <message>
        <source>It is {%1} off: too far to be cut as it is.</source>
        <extracomment>%1 is by how much, the most of its size or of a tilted side</extracomment>
        <translation>Écart de {%1}&#x202f;: trop pour le couper ainsi.</translation>
    </message>
    <message>
        <source>It leans by {%1}: too far to be cut as it is.</source>
        <extracomment>lean: the block is a little of a diamond; %1 is by how much</extracomment>
        <translation>Il penche de {%1}&#x202f;: trop pour le couper ainsi.</translation>
    </message>
    <message>
        <source>Press the block.</source>
        <translation>Repasser le bloc.</translation>
    </message>
    <message>
        <source>Stitched blocks stay as they are and no longer fit, in all %1: sent as %2, now it would be %3. Undo takes the change back.</source>
        <translation>Les blocs brodés restent tels quels et ne conviennent plus, en tout %1&#x202f;: envoyés à %2, ce serait maintenant %3. «&#x202f;Annuler&#x202f;» revient sur la modification.</translation>
    </message>
    <message>
        <source>Hoop strips cut already no longer fit, in all %1: cut %2 wide, now it would be %3. Undo takes the change back.</source>
        <translation>Les bandes à broder déjà coupées ne conviennent plus, en tout %1&#x202f;: coupées à %2 de large, ce serait maintenant %3. «&#x202f;Annuler&#x202f;» revient sur la modification.</translation>
    </message>
    <message>
        <source>Sashing strips cut already no longer fit, in all %1: cut %2 wide, now it would be %3. Undo takes the change back.</source>
        <extracomment>sashing: the strip between two blocks</extracomment>
        <translation>Les bandes intermédiaires déjà coupées ne conviennent plus, en tout %1&#x202f;: coupées à %2 de large, ce serait maintenant %3. «&#x202f;Annuler&#x202f;» revient sur la modification.</translation>
    </message>
    <message>
        <source>Binding strips cut already no longer fit, in all %1: cut %2 wide, now it would be %3. Undo takes the change back.</source>
        <translation>Les bandes de finition déjà coupées ne conviennent plus, en tout %1&#x202f;: coupées à %2 de large, ce serait maintenant %3. «&#x202f;Annuler&#x202f;» revient sur la modification.</translation>
    </message>
    <message>
        <source>What is cut of “%1” no longer counts: “%2” has its part now. Undo takes the change back.</source>
        <extracomment>part: front, back, sashing … of the piece; %1 and %2 are cloths</extracomment>
        <translation>Ce qui est coupé dans «&#x202f;%1&#x202f;» ne compte plus&#x202f;: «&#x202f;%2&#x202f;» a maintenant son rôle. «&#x202f;Annuler&#x202f;» revient sur la modification.</translation>
    </message>
    <message>
        <source>Cut the strip apart along a ruler, down the middle of each gap.</source>
        <translation>Séparer la bande le long d’une règle, au milieu de chaque intervalle.</translation>
    </message>
    <message>
        <source>Apart, blade closed</source>
        <translation>Séparé, lame fermée</translation>
    </message>
    <message>
        <source>Nothing may lie underneath.</source>
        <translation>Vérifier&#x202f;: rien dessous.</translation>
    </message>
    <message>
        <source>Keep the ripper’s blade off the cloth.</source>
        <translation>Tenir la lame du découd-vite à l’écart du tissu.</translation>
    </message>
    <message>
        <source>Roll the blade away from you, fingers well back; then close it.</source>
        <translation>Couper en éloignant la lame du corps, doigts bien en retrait&#x202f;; puis la fermer.</translation>
    </message>
    <message>
        <source>Slow over the thick places; turn the wheel by hand.</source>
        <translation>Lentement sur les endroits épais&#x202f;; tourner le volant à la main.</translation>
    </message>
    <message>
        <source>Keep it: a narrower strip or patches come out of it.</source>
        <translation>Le garder&#x202f;: il en sort une bande plus étroite ou des pièces.</translation>
    </message>
    <message>
        <source>Straighten the end first.</source>
        <translation>Redresser d’abord le bout.</translation>
    </message>
    <message>
        <source>Pick the thread back about {1 in} and start again on the line.</source>
        <translation>Défaire le fil sur environ {1 in} et repartir sur la ligne.</translation>
    </message>
    <message>
        <source>Inside stippling it will not show.</source>
        <translation>Dans le vermiculé, cela ne se verra pas.</translation>
    </message>
    <message>
        <source>A pleat under {%1} on the back may stay.</source>
        <translation>Un faux pli de moins de {%1} au dos peut rester.</translation>
    </message>
    <message>
        <source>A longer one, or a cut through the ground, means a new block.</source>
        <translation>Plus long, ou si le fond est coupé, il faut un nouveau bloc.</translation>
    </message>
    <message>
        <source>Not pressed yet: unpick that patch’s stitches only.</source>
        <translation>Pas encore repassé&#xa0;: découdre les points de cette pièce seule.</translation>
    </message>
    <message>
        <source>Peel it off, lay the right one, stitch it again.</source>
        <translation>La décoller, poser la bonne, rebroder.</translation>
    </message>
    <message>
        <source>Pressed already: a new block.</source>
        <translation>Déjà repassé&#xa0;: un nouveau bloc.</translation>
    </message>
    <message>
        <source>Leave the block in the hoop.</source>
        <translation>Laisser le bloc dans le cadre.</translation>
    </message>
    <message>
        <source>Start again at the stop you were at; nothing here was lost.</source>
        <translation>Repartir du dernier arrêt&#x202f;; rien n’est perdu ici.</translation>
    </message>
    <message>
        <source>{%1} is too little to hold a seam; it takes {%2}.</source>
        <translation>{%1}, c’est trop peu pour tenir une couture&#x202f;; il faut {%2}.</translation>
    </message>
    <message>
        <source>Lay a scrap of the same three layers edge to edge.</source>
        <translation>Poser une chute des trois mêmes épaisseurs bord à bord.</translation>
    </message>
    <message>
        <source>Zigzag it on, trim it to the ruler again.</source>
        <translation>La coudre au zigzag, rogner de nouveau à la règle.</translation>
    </message>
    <message>
        <source>{%1} holds nothing: under {%2} the block is made again.</source>
        <translation>{%1} ne tient rien&#xa0;: sous {%2}, le bloc est à refaire.</translation>
    </message>
    <message>
        <source>Its good part serves for a test join.</source>
        <translation>Sa bonne partie sert à un assemblage d’essai.</translation>
    </message>
    <message>
        <source>{%1} too small. Measure its stitched outline.</source>
        <translation>Trop petit de {%1}. Mesurer son contour brodé.</translation>
    </message>
    <message>
        <source>Is that small too, the outer line is stitched again at size, or the block is made again.</source>
        <extracomment>it: the stitched outline of a block</extracomment>
        <translation>S’il est trop petit aussi, rebroder la ligne extérieure à la taille, ou refaire le bloc.</translation>
    </message>
    <message>
        <source>Off by {%1}: up to {%2} a row is eased to the long sashing.</source>
        <translation>Écart de {%1}&#xa0;: jusqu’à {%2}, l’ampleur d’une rangée se résorbe sur la bande intermédiaire longue.</translation>
    </message>
    <message>
        <source>Pin the ends and the marks first.</source>
        <translation>Épingler d’abord les bouts et les repères.</translation>
    </message>
    <message>
        <source>{%2} too long. If every seam shares in it, each was sewn {%1} too scant.</source>
        <extracomment>scant: less deep than it should be</extracomment>
        <translation>Trop longue de {%2}. Si cela se partage entre toutes les coutures, chacune est trop juste de {%1}.</translation>
    </message>
    <message>
        <source>Sew them again that much deeper, or try the test join anew.</source>
        <translation>Les recoudre d’autant plus profond, ou refaire l’assemblage d’essai.</translation>
    </message>
    <message>
        <source>{%2} too short. If every seam shares in it, each was sewn {%1} too deep.</source>
        <translation>Trop courte de {%2}. Si cela se partage entre toutes les coutures, chacune est trop profonde de {%1}.</translation>
    </message>
    <message>
        <source>Unpick, and sew them again that much scanter.</source>
        <extracomment>scanter: less deep</extracomment>
        <translation>Découdre, et les recoudre d’autant moins profond.</translation>
    </message>
    <message>
        <source>First measure each sashing as it is seen.</source>
        <translation>Mesurer d’abord la partie visible de chaque bande intermédiaire.</translation>
    </message>
    <message>
        <source>If one alone is off, only its seams are unpicked.</source>
        <translation>Si une seule ne va pas, ne découdre que ses coutures.</translation>
    </message>
    <message>
        <source>{%1} smaller than planned. Square the opposite side to it.</source>
        <translation>{%1} de moins que prévu. Mettre le côté opposé d’équerre d’après celui-ci.</translation>
    </message>
    <message>
        <source>The binding as planned reaches round.</source>
        <translation>La bande de finition prévue fait le tour.</translation>
    </message>
    <message>
        <source>Cut every third stitch on the bobbin’s side.</source>
        <translation>Couper un point sur trois côté canette.</translation>
    </message>
    <message>
        <source>Draw the other thread out and brush the bits away.</source>
        <translation>Tirer l’autre fil, brosser les bouts.</translation>
    </message>
    <message>
        <source>Press it flat.</source>
        <translation>Repasser à plat.</translation>
    </message>
    <message>
        <source>Unpick the binding from the last good corner on, not the whole round.</source>
        <translation>Découdre la bande de finition à partir du dernier bon coin, pas tout le tour.</translation>
    </message>
    <message>
        <source>Press it flat and fold the corner anew.</source>
        <translation>Repasser à plat et replier le coin.</translation>
    </message>
    <message>
        <source>Unpick the ditch where it missed, and a thumb’s width beyond at both ends.</source>
        <extracomment>ditch: the seam line beside a sashing, in which the back is caught from the front</extracomment>
        <translation>Découdre la piqûre dans le sillon là où elle a manqué le pli, et d’une largeur de pouce au-delà aux deux bouts.</translation>
    </message>
    <message>
        <source>Nothing is cut anew.</source>
        <translation>Rien n’est recoupé.</translation>
    </message>
    <message>
        <source>Fold {%1} under, no more: that catches {%2}.</source>
        <translation>Rentrer {%1}, pas plus&#xa0;: cela prend {%2}.</translation>
    </message>
    <message>
        <source>Pin on the seam line and stitch.</source>
        <translation>Épingler sur la ligne de couture et piquer.</translation>
    </message>
    <message>
        <source>Where it still does not reach, close it by hand, or lay a tape over the fold.</source>
        <translation>Là où le pli n’arrive toujours pas, fermer à la main, ou poser un ruban dessus.</translation>
    </message>
    <message>
        <source>Feel all the other joins for the same.</source>
        <translation>Tâter de même tous les autres assemblages.</translation>
    </message>
    <message>
        <source>A notch of {%1}: the binding covers it.</source>
        <translation>Une entaille de {%1}&#xa0;: la bande de finition la couvre.</translation>
    </message>
    <message>
        <source>Lay a scrap of batting in, so that it is filled.</source>
        <translation>Y mettre une chute de molleton, pour la remplir.</translation>
    </message>
    <message>
        <source>{%1} is left. Trim {%2} off all four sides, so that the edge stays even.</source>
        <translation>Il reste {%1}. Rogner {%2} sur les quatre côtés, pour que le bord reste régulier.</translation>
    </message>
    <message>
        <source>Bind as planned.</source>
        <translation>Border comme prévu.</translation>
    </message>
    <message>
        <source>Only {%1} is left. Lay a scrap of the three layers edge to edge into the notch.</source>
        <translation>Il ne reste que {%1}. Poser une chute des trois épaisseurs bord à bord dans l’entaille.</translation>
    </message>
    <message>
        <source>Zigzag it, then square the side again.</source>
        <translation>La coudre au zigzag, puis remettre le côté d’équerre.</translation>
    </message>
    <message>
        <source>If %1 was sewn in, unpick the joins on its sides only.</source>
        <translation>Si %1 était déjà cousu, découdre seulement les assemblages sur ses côtés.</translation>
    </message>
    <message>
        <source>They are sewn again with the new block. All others stay.</source>
        <translation>Ils sont recousus avec le nouveau bloc. Tous les autres restent.</translation>
    </message>
    <message>
        <source>spare blocks for all</source>
        <extracomment>spare blocks that all mats of a set share</extracomment>
        <translation>blocs de réserve pour tous</translation>
    </message>
    <message>
        <source>short sashing, cut</source>
        <extracomment>a short sashing as it is cut, with its spare</extracomment>
        <translation>bande intermédiaire courte, coupée</translation>
    </message>
    <message>
        <source>long sashing, cut</source>
        <extracomment>a long sashing as it is cut, with its spare</extracomment>
        <translation>bande intermédiaire longue, coupée</translation>
    </message>
    <message>
        <source>spare for all</source>
        <extracomment>spare blocks that all mats of a set share</extracomment>
        <translation>réserve pour tous</translation>
    </message>
    <message>
        <source>Bought as Shop lists it, {%2} of %1 is left: that yields it.</source>
        <extracomment>what is left was never measured: it is reckoned from what the shopping list says was bought</extracomment>
        <translation>%1&#x202f;: acheté selon la liste d’achat, il en reste {%2}. Cela y suffit.</translation>
    </message>
    <message>
        <source>{%2} of %1 is left: that yields it if squaring the edge takes no more than {%3}.</source>
        <extracomment>%2 is left of the cloth; its edge is cut straight first, which takes some of that</extracomment>
        <translation>%1&#x202f;: il en reste {%2}. Cela suffit si remettre le bord d’équerre ne prend pas plus de {%3}.</translation>
    </message>
    <message>
        <source>It comes out of what is left on a strip of %1 already cut: nothing to buy.</source>
        <extracomment>it is cut again from what is left over on strips already cut</extracomment>
        <translation>%1&#x202f;: une bande déjà coupée a encore la place. Rien à acheter.</translation>
    </message>
    <message>
        <source>Bought as Shop lists it, {%2} of %1 is left: that does not yield it.</source>
        <translation>%1&#x202f;: acheté selon la liste d’achat, il en reste {%2}. Cela n’y suffit pas.</translation>
    </message>
    <message>
        <source>Lift and set down, front first, then the back. Let it cool flat; after steam let it dry.</source>
        <translation>Lever et poser le fer, le devant d’abord, puis le dos. Laisser refroidir à plat&#x202f;; après la vapeur, laisser sécher.</translation>
    </message>
    <message>
        <source>Cut a hoop strip of %1 for the test block.</source>
        <translation>Couper une bande à broder pour le bloc d’essai&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Cut a sashing band of %1 for the test join.</source>
        <translation>Couper un bandeau pour la bande intermédiaire de l’assemblage d’essai&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Trial strip</source>
        <extracomment>title of the strip cut for the test block</extracomment>
        <translation>Bande d’essai</translation>
    </message>
    <message>
        <source>Trial band</source>
        <extracomment>title of the band cut for the test join</extracomment>
        <translation>Bandeau d’essai</translation>
    </message>
    <message>
        <source>First square the cut edge of %1 to its fold again.</source>
        <extracomment>the edge that the last cut left, from which the next strip is measured</extracomment>
        <translation>Remettre d’abord le bord coupé d’équerre avec le pli&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Rows joined already no longer fit, in all %1: joined of %2 blocks, now it would be %3. Undo takes the change back.</source>
        <extracomment>row: blocks joined side by side; %2 and %3 count blocks</extracomment>
        <translation>Les rangées déjà assemblées ne conviennent plus, en tout %1&#x202f;: assemblées de %2 blocs, ce serait maintenant %3. «&#x202f;Annuler&#x202f;» revient sur la modification.</translation>
    </message>
    <message>
        <source>Long sashings cut already no longer fit, in all %1: cut %2 long, now it would be %3. Undo takes the change back.</source>
        <extracomment>long sashing: the strip between two rows</extracomment>
        <translation>Les bandes intermédiaires longues déjà coupées ne conviennent plus, en tout %1&#x202f;: coupées à %2 de long, ce serait maintenant %3. «&#x202f;Annuler&#x202f;» revient sur la modification.</translation>
    </message>
    <message>
        <source>Take the common size, stitched %1.</source>
        <extracomment>%1 is the common size of the blocks measured, within their stitches</extracomment>
        <translation>Prendre la taille commune, brodé %1.</translation>
    </message>
    <message>
        <source>Stitched {%2}: off size.</source>
        <extracomment>stitched: the size within a block&apos;s outer stitches, not that it is cut to</extracomment>
        <translation>Brodé {%2}&#x202f;: hors cote.</translation>
    </message>
    <message>
        <source>Cut {%2}: off size.</source>
        <extracomment>cut: the size of a trimmed block</extracomment>
        <translation>Coupé {%2}&#x202f;: hors cote.</translation>
    </message>
    <message>
        <source>Whole strip marked</source>
        <extracomment>on a button: all centres of the strip in hand are marked, not only one</extracomment>
        <translation>Toute la bande tracée</translation>
    </message>
    <message>
        <source>It came out as first planned: %1.</source>
        <translation>Il est à la taille prévue d’abord&#x202f;: %1.</translation>
    </message>
    <message>
        <source>It is larger than the common size: %1.</source>
        <translation>Plus grand que la taille commune&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Trim it to the common size, cut to %1.</source>
        <extracomment>%1 is the size of a trimmed block, at the common size of all</extracomment>
        <translation>Le rogner à la taille commune, soit %1 coupé.</translation>
    </message>
    <message>
        <source>renaming</source>
        <translation>changement de nom</translation>
    </message>
    <message>
        <source>putting away</source>
        <translation>rangement</translation>
    </message>
    <message>
        <source>bringing back</source>
        <translation>retour sur l’étagère</translation>
    </message>
    <message>
        <source>throwing away</source>
        <translation>mise à la poubelle</translation>
    </message>
    <message>
        <source>Stitched blocks without a place: %1 (%2 first). Undo takes the change back.</source>
        <extracomment>%2 is the first of them, a block&apos;s name like A1</extracomment>
        <translation>Blocs brodés sans place&#x202f;: %1 (d’abord %2). «&#x202f;Annuler&#x202f;» revient sur la modification.</translation>
    </message>
    <message>
        <source>Made to the old measure, at “%1”: look at it before you use it.</source>
        <extracomment>%1 is a step in words</extracomment>
        <translation>Fait à l’ancienne mesure, à «&#x202f;%1&#x202f;»&#x202f;: vérifier avant de s’en servir.</translation>
    </message>
    <message>
        <source>Sew front to back, right sides together; turn it out and close it.</source>
        <translation>Coudre devant et dos endroit contre endroit, retourner et fermer.</translation>
    </message>
    <message>
        <source>Piece %1 of %2, turning out</source>
        <translation>Ouvrage %1 sur %2, à retourner</translation>
    </message>
</context>
<context>
    <name>WorkedFigure</name>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a figure does</extracomment>
        <translation>montrer le calcul</translation>
    </message>
</context>
<context>
    <name>WorkingSheet</name>
    <message>
        <source>along</source>
        <translation>en long</translation>
    </message>
    <message>
        <source>across</source>
        <translation>en travers</translation>
    </message>
    <message>
        <source>Which way</source>
        <translation>Quel sens</translation>
    </message>
    <message>
        <source>Back to the sum before</source>
        <translation>Retour au calcul d’avant</translation>
    </message>
    <message>
        <source>Back to the work</source>
        <translation>Retour au travail</translation>
    </message>
    <message>
        <source>%1: {%2}</source>
        <extracomment>heads a sum: %1 is the figure&apos;s name, %2 the figure: &quot;hoop strip, cut: 13 1/4 in&quot;</extracomment>
        <translation>%1&#x202f;: {%2}</translation>
    </message>
    <message>
        <source>The longest counts.</source>
        <extracomment>of two or more rows of lengths laid end to end over the tape: the longest is the figure</extracomment>
        <translation>Le plus long compte.</translation>
    </message>
</context>
<context>
    <name>WorkingTab</name>
    <message>
        <source>show the working</source>
        <extracomment>opens the sum behind a figure</extracomment>
        <translation>montrer le calcul</translation>
    </message>
    <message>
        <source>sum</source>
        <extracomment>on a small tab, at most five letters: opens the sum behind a figure</extracomment>
        <translation>d’où</translation>
    </message>
</context>
<context>
    <name>WrongSheet</name>
    <message>
        <source>Here is what that means</source>
        <translation>Ce que cela entraîne</translation>
    </message>
    <message>
        <source>What went wrong?</source>
        <translation>Qu’est-il arrivé&#x202f;?</translation>
    </message>
    <message>
        <source>They disagree: measure the block</source>
        <translation>Ne concorde pas&#x202f;: mesurer le bloc</translation>
    </message>
    <message>
        <source>Make it again</source>
        <translation>Le refaire</translation>
    </message>
    <message>
        <source>On with the work</source>
        <translation>Reprendre le travail</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Which block?</source>
        <translation>Quel bloc&#x202f;?</translation>
    </message>
    <message>
        <source>No block is made yet.</source>
        <translation>Aucun bloc n’est encore fait.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>%1: what went wrong?</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;: the one in hand</extracomment>
        <translation>%1&#x202f;: qu’est-il arrivé&#x202f;?</translation>
    </message>
</context>
<context>
    <name>matside::Awake</name>
    <message>
        <source>A step is shown</source>
        <translation>Une étape est affichée</translation>
    </message>
</context>
<context>
    <name>matside::Backups</name>
    <message>
        <source>Backup</source>
        <extracomment>the name of a file with everything in it</extracomment>
        <translation>Sauvegarde</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>Le dossier %1 ne peut pas être créé.</translation>
    </message>
    <message>
        <source>Writing the backup…</source>
        <translation>Écriture de la sauvegarde…</translation>
    </message>
    <message>
        <source>Written to %1 and read back: %2.</source>
        <translation>Écrit dans %1 et relu&#x202f;: %2.</translation>
    </message>
    <message>
        <source>There are projects on the shelf. A backup is put back where nothing is yet: on a new tablet, or after a new start with an empty folder.</source>
        <translation>Il y a des projets sur l’étagère. Une sauvegarde se remet là où il n’y a encore rien&#x202f;: sur une nouvelle tablette, ou après un nouveau départ avec un dossier vide.</translation>
    </message>
    <message>
        <source>All of it lies ready. Close Matside and open it again: then it is on the shelf.</source>
        <translation>Tout est prêt. Fermer Matside et le rouvrir&#x202f;: tout sera sur l’étagère.</translation>
    </message>
</context>
<context>
    <name>matside::BattingModel</name>
    <message>
        <source>from the roll</source>
        <extracomment>batting is bought so</extracomment>
        <translation>au rouleau</translation>
    </message>
    <message>
        <source>1 package</source>
        <translation>1 paquet</translation>
    </message>
    <message>
        <source>%1 packages</source>
        <translation>%1 paquets</translation>
    </message>
    <message>
        <source>the roll’s usable width</source>
        <translation>largeur utile du rouleau</translation>
    </message>
    <message>
        <source>a package of</source>
        <translation>un paquet de</translation>
    </message>
    <message>
        <source>one side of it</source>
        <translation>un côté</translation>
    </message>
    <message>
        <source>its other side</source>
        <translation>autre côté</translation>
    </message>
    <message>
        <source>price of a package</source>
        <translation>prix du paquet</translation>
    </message>
    <message>
        <source>Proven least.</source>
        <translation>Minimum prouvé.</translation>
    </message>
    <message>
        <source>The least found; no proof.</source>
        <translation>Le moins trouvé&#x202f;; sans preuve.</translation>
    </message>
    <message>
        <source>Waste %1 %.</source>
        <translation>Perte %1&#x202f;%.</translation>
    </message>
    <message>
        <source>Costs %1.</source>
        <translation>Coûte %1.</translation>
    </message>
    <message>
        <source>From the roll: {%1} of %2</source>
        <extracomment>%1 &quot;2 3/8 yd&quot;, %2 the roll&apos;s width</extracomment>
        <translation>Au rouleau&#x202f;: {%1} de %2 de large</translation>
    </message>
    <message>
        <source>Too small for a hoop strip of %1.</source>
        <translation>Trop petit pour une bande à broder de %1.</translation>
    </message>
    <message>
        <source>1 strip from each.</source>
        <translation>1 bande de chacun.</translation>
    </message>
    <message>
        <source>%1 strips from each.</source>
        <translation>%1 bandes de chacun.</translation>
    </message>
    <message>
        <source>No way of cutting needs fewer.</source>
        <translation>Aucune façon de couper n’en demande moins.</translation>
    </message>
    <message>
        <source>1 package of %1</source>
        <extracomment>%1 a number, %2 &quot;45 in × 60 in&quot;</extracomment>
        <translation>1 paquet de %1</translation>
    </message>
    <message>
        <source>%1 packages of %2</source>
        <translation>%1 paquets de %2</translation>
    </message>
    <message>
        <source>The batting is bought or begun: it stays as it is.</source>
        <translation>Le molleton est acheté ou entamé&#x202f;: il reste tel quel.</translation>
    </message>
    <message>
        <source>Add a package size to hold it against the roll.</source>
        <translation>Ajouter une taille de paquet pour la comparer au rouleau.</translation>
    </message>
    <message>
        <source>The package wastes less than the roll.</source>
        <translation>Moins de perte en paquet qu’au rouleau.</translation>
    </message>
    <message>
        <source>The roll wastes least.</source>
        <translation>Le moins de perte au rouleau.</translation>
    </message>
    <message>
        <source>List the batting at Fit first.</source>
        <translation>Inscrire d’abord le molleton sous «&#x202f;Prévoir&#x202f;».</translation>
    </message>
    <message>
        <source>The batting is bought or begun. Take the tick away first.</source>
        <translation>Le molleton est acheté ou entamé. Ôter d’abord la coche.</translation>
    </message>
    <message>
        <source>%1 sizes at most.</source>
        <translation>%1 tailles au plus.</translation>
    </message>
    <message>
        <source>This size is on the list.</source>
        <translation>Cette taille est déjà dans la liste.</translation>
    </message>
    <message>
        <source>An amount with two decimals at most.</source>
        <translation>Un montant avec deux décimales au plus.</translation>
    </message>
    <message>
        <source>Between %1 and %2.</source>
        <translation>Entre %1 et %2.</translation>
    </message>
    <message>
        <source>A strip is larger than this package.</source>
        <translation>Une bande est plus grande que ce paquet.</translation>
    </message>
    <message>
        <source>More than %1 pieces are not laid out one by one: take a larger package, or the roll.</source>
        <translation>Au-delà de %1 morceaux, rien n’est disposé un à un&#x202f;: prendre un paquet plus grand, ou le rouleau.</translation>
    </message>
    <message>
        <source>1 hoop strip of %1 × %2 is to be cut.</source>
        <extracomment>the last two are a strip&apos;s two sides</extracomment>
        <translation>1 bande à broder de %1 × %2 est à couper.</translation>
    </message>
    <message>
        <source>%1 hoop strips of %2 × %3 are to be cut.</source>
        <translation>%1 bandes à broder de %2 × %3 sont à couper.</translation>
    </message>
</context>
<context>
    <name>matside::BlockLog</name>
    <message>
        <source>Block %1</source>
        <extracomment>%1 is a block&apos;s name, &quot;A1&quot;</extracomment>
        <translation>Bloc %1</translation>
    </message>
    <message>
        <source>Strip %1, place %2</source>
        <extracomment>where a block was stitched: the strip&apos;s number and the block&apos;s place on it</extracomment>
        <translation>Bande %1, place %2</translation>
    </message>
    <message>
        <source>Planned {%1} × {%2}</source>
        <extracomment>the size the stitched outline should have, along and across</extracomment>
        <translation>Prévu {%1} × {%2}</translation>
    </message>
    <message>
        <source>Planned {%1} × {%2}, off by {%3}: %4 says what to do</source>
        <extracomment>a stitched outline that is off its planned size %1 × %2 by %3; %4 is the station that judges it</extracomment>
        <translation>Prévu {%1} × {%2}, écart de {%3}&#x202f;: «&#x202f;%4&#x202f;» dira quoi faire</translation>
    </message>
</context>
<context>
    <name>matside::BlockMeasure</name>
    <message>
        <source>%1 is too small for the others: make it again.</source>
        <translation>%1 est trop petit pour les autres&#x202f;: le refaire.</translation>
    </message>
    <message>
        <source>Common size %1: trim to %2; the piece finishes %3 × %4.</source>
        <translation>Taille commune %1&#x202f;: rogner à %2&#x202f;; l’ouvrage fini fera %3 × %4.</translation>
    </message>
    <message>
        <source>%1 is cut already for another size.</source>
        <translation>%1 est déjà coupé à une autre taille.</translation>
    </message>
    <message>
        <source>Of the table %1 and %2 stay clear.</source>
        <extracomment>table: %1 and %2 are what is left of the table at the sides and at the ends</extracomment>
        <translation>De la table, %1 et %2 restent libres.</translation>
    </message>
    <message>
        <source>Long sashings %1.</source>
        <translation>Bandes intermédiaires longues, %1.</translation>
    </message>
    <message>
        <source>%1 loses %2 a side into the seams.</source>
        <translation>%1 perd %2 par côté dans les coutures.</translation>
    </message>
    <message>
        <source>Square enough, if the rest is as shown.</source>
        <translation>Assez d’équerre, si le reste se confirme.</translation>
    </message>
    <message>
        <source>Measure the rest before you cut.</source>
        <translation>Mesurer le reste avant de couper.</translation>
    </message>
    <message>
        <source>A stitched line will show then: that of %1, by %2.</source>
        <extracomment>%1 is a block&apos;s name, &quot;A2&quot;: at the common size its stitched line lies outside the seam by %2</extracomment>
        <translation>Une ligne brodée se verra alors&#x202f;: celle de %1, de %2.</translation>
    </message>
    <message>
        <source>%1 of 6 not yet read</source>
        <extracomment>of the six readings of a block</extracomment>
        <translation>%1 mesures sur 6 restent à prendre</translation>
    </message>
</context>
<context>
    <name>matside::ClothColour</name>
    <message>
        <source>no colour yet</source>
        <translation>pas encore de couleur</translation>
    </message>
    <message>
        <source>Tap the cloth in the picture.</source>
        <translation>Toucher le tissu sur l’image.</translation>
    </message>
    <message>
        <source>Light and dark meet in this place: a print, a fold or a shadow. The mean of all of it is shown.</source>
        <translation>Clair et foncé se rencontrent ici&#x202f;: un imprimé, un pli ou une ombre. La moyenne du tout est montrée.</translation>
    </message>
    <message>
        <source>The mean about the place you tapped. Tap another place to compare.</source>
        <translation>La moyenne autour de l’endroit touché. En toucher un autre pour comparer.</translation>
    </message>
    <message>
        <source>This picture cannot be read. Choose another one.</source>
        <translation>Cette image ne peut pas être lue. En choisir une autre.</translation>
    </message>
</context>
<context>
    <name>matside::EdgeModel</name>
    <message>
        <source>A count of pins lies between 0 and %1.</source>
        <translation>Un nombre d’épingles est entre 0 et %1.</translation>
    </message>
    <message>
        <source>A corner’s radius is more than nothing and no more than %1.</source>
        <translation>Le rayon d’un coin dépasse zéro, sans dépasser %1.</translation>
    </message>
    <message>
        <source>top</source>
        <translation>en haut</translation>
    </message>
    <message>
        <source>right</source>
        <translation>à droite</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>en bas</translation>
    </message>
    <message>
        <source>left</source>
        <translation>à gauche</translation>
    </message>
    <message>
        <source>top, %1 from the left</source>
        <translation>en haut, à %1 de la gauche</translation>
    </message>
    <message>
        <source>right, %1 from the top</source>
        <translation>à droite, à %1 du haut</translation>
    </message>
    <message>
        <source>bottom, %1 from the left</source>
        <translation>en bas, à %1 de la gauche</translation>
    </message>
    <message>
        <source>left, %1 from the top</source>
        <translation>à gauche, à %1 du haut</translation>
    </message>
    <message>
        <source>Begin and close: %1.</source>
        <translation>Commencer et fermer&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Join %1: %2.</source>
        <translation>Raccord %1&#x202f;: %2.</translation>
    </message>
    <message>
        <source>First cut %1 off strip %2.</source>
        <translation>D’abord raccourcir la bande %2 de %1.</translation>
    </message>
    <message>
        <source>No join falls on a corner or a sashing end.</source>
        <translation>Aucun raccord ne tombe sur un coin ou un bout de bande intermédiaire.</translation>
    </message>
    <message>
        <source>Between the sashing ends there is no room for a join: the joins keep clear of the corners alone. Narrower binding would fit.</source>
        <extracomment>so: with joins as wide as they are</extracomment>
        <translation>Entre les bouts de bandes intermédiaires, pas de place pour un raccord&#x202f;: les raccords n’évitent que les coins. Une bande de finition plus étroite irait.</translation>
    </message>
    <message>
        <source>The sides are too short to keep the joins off the corners. Press every join open, and grade it.</source>
        <translation>Les côtés sont trop courts pour tenir les raccords loin des coins. Ouvrir chaque raccord au fer et en dégrader les marges.</translation>
    </message>
    <message>
        <source>This takes one strip more, %1 in all.</source>
        <translation>Il faut une bande de plus, %1 en tout.</translation>
    </message>
    <message>
        <source>Square corners, mitred.</source>
        <translation>Coins droits, en onglet.</translation>
    </message>
    <message>
        <source>The arc cuts %1 into the stippling: stay-stitch beside the line before cutting. Up to %2 it would clear it.</source>
        <translation>L’arc entame le vermiculé de %1&#x202f;: faire une piqûre de soutien près de la ligne avant de couper. Jusqu’à %2, il n’y toucherait pas.</translation>
    </message>
    <message>
        <source>It is tight for folded binding, which eases round from %1.</source>
        <translation>C’est serré pour une bande de finition pliée, qui tourne bien à partir de %1.</translation>
    </message>
    <message>
        <source>Small quilts and pillows do not go in a sleeping baby’s cot.</source>
        <translation>Les petits quilts et coussins ne vont pas dans le lit d’un bébé qui dort.</translation>
    </message>
    <message>
        <source>Label: on the back, lower right. Title, maker, date, size, fibre, how to wash.</source>
        <translation>Étiquette&#x202f;: au dos, en bas à droite. Titre, nom, date, taille, fibre, lavage.</translation>
    </message>
    <message>
        <source>To hang it: a sleeve tacked on by hand, so that it comes off again, cut %1 to %2 wide and %3 to %4 long.</source>
        <translation>Pour le suspendre&#x202f;: un manchon bâti à la main, qui s’enlève ensuite, coupé de %1 à %2 de large et de %3 à %4 de long.</translation>
    </message>
    <message>
        <source>To hang it: a sleeve on the back, cut %1 to %2 wide and %3 to %4 long.</source>
        <translation>Pour le suspendre&#x202f;: un manchon au dos, coupé de %1 à %2 de large et de %3 à %4 de long.</translation>
    </message>
    <message>
        <source>Squaring</source>
        <translation>Équerrage</translation>
    </message>
    <message>
        <source>Binding</source>
        <translation>Finition</translation>
    </message>
    <message>
        <source>Last look</source>
        <translation>Dernier contrôle</translation>
    </message>
    <message>
        <source>along, and %1 across, raw</source>
        <translation>en long, et %1 en travers, brut</translation>
    </message>
    <message>
        <source>along, and %1 across, finished</source>
        <translation>en long, et %1 en travers, fini</translation>
    </message>
    <message>
        <source>of bias, cut %1 wide</source>
        <translation>de biais, coupé à %1 de large</translation>
    </message>
    <message>
        <source>The readings disagree by %1.</source>
        <translation>Les mesures se contredisent de %1.</translation>
    </message>
    <message>
        <source>Square within %1.</source>
        <translation>D’équerre à %1 près.</translation>
    </message>
    <message>
        <source>Top and bottom differ by %1.</source>
        <translation>Le haut et le bas diffèrent de %1.</translation>
    </message>
    <message>
        <source>Left and right differ by %1.</source>
        <translation>Les côtés gauche et droit diffèrent de %1.</translation>
    </message>
    <message>
        <source>The diagonals differ by %1.</source>
        <translation>Les diagonales diffèrent de %1.</translation>
    </message>
    <message>
        <source>Lay it flat and measure again. Do not cut.</source>
        <translation>Le poser à plat et mesurer de nouveau. Ne pas couper.</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4</source>
        <translation>%1, %2, %3, %4</translation>
    </message>
    <message>
        <source>Trim it plainly, in this order: %1.</source>
        <translation>Il suffit de le rogner, dans cet ordre&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Round the edge it is %1 less than planned.</source>
        <translation>Le tour du bord fait %1 de moins que prévu.</translation>
    </message>
    <message>
        <source>Round the edge it is %1 more than planned; the binding strips reach.</source>
        <translation>Le tour du bord fait %1 de plus que prévu&#x202f;; les bandes de finition suffisent.</translation>
    </message>
    <message>
        <source>Round the edge it is %1 more than planned: cut the bias that much longer.</source>
        <translation>Le tour du bord fait %1 de plus que prévu&#x202f;: couper le biais d’autant plus long.</translation>
    </message>
    <message>
        <source>Round the edge it is %1 more than planned: cut one binding strip more.</source>
        <translation>Le tour du bord fait %1 de plus que prévu&#x202f;: couper une bande de finition de plus.</translation>
    </message>
    <message>
        <source>Count the pins and needles that went in, and those that came out.</source>
        <translation>Compter les épingles et aiguilles posées, puis celles qui sont ôtées.</translation>
    </message>
    <message>
        <source>No pins were used.</source>
        <translation>Aucune épingle n’a servi.</translation>
    </message>
    <message>
        <source>They differ, and you know why.</source>
        <translation>Le compte diffère, et la raison est connue.</translation>
    </message>
    <message>
        <source>As many out as in.</source>
        <translation>Autant d’ôtées que de posées.</translation>
    </message>
    <message numerus="yes">
        <source>%n still in it: feel along every seam, both faces.</source>
        <translation>
            <numerusform>%n y est encore&#x202f;: tâter chaque couture, les deux faces.</numerusform>
            <numerusform>%n y sont encore&#x202f;: tâter chaque couture, les deux faces.</numerusform>
        </translation>
    </message>
    <message>
        <source>More came out than went in: count again.</source>
        <translation>Plus d’ôtées que de posées&#x202f;: recompter.</translation>
    </message>
    <message>
        <source>Rounded corners, {%1}</source>
        <translation>Coins arrondis, {%1}</translation>
    </message>
    <message>
        <source>A circle</source>
        <translation>Un cercle</translation>
    </message>
    <message>
        <source>Round ends</source>
        <translation>Bouts ronds</translation>
    </message>
    <message>
        <source>Scallops, {%1} deep</source>
        <translation>Festons, profondeur {%1}</translation>
    </message>
    <message>
        <source>Square corners</source>
        <translation>Coins droits</translation>
    </message>
    <message>
        <source>A scallop’s depth is more than nothing and no more than %1.</source>
        <translation>La profondeur d’un feston dépasse zéro, sans dépasser %1.</translation>
    </message>
    <message>
        <source>%1 scallops along and %2 across, {%3} deep: chords of {%4} and {%5}, drawn with a radius of {%6} and {%7}.</source>
        <extracomment>chord: the straight distance across one scallop</extracomment>
        <translation>%1 festons en long et %2 en travers, profondeur {%3}&#x202f;: cordes de {%4} et {%5}, arcs tracés avec un rayon de {%6} et {%7}.</translation>
    </message>
    <message>
        <source>A circle of %1 across.</source>
        <translation>Un cercle de %1 de diamètre.</translation>
    </message>
    <message>
        <source>Ends rounded with a radius of %1.</source>
        <translation>Bouts arrondis avec un rayon de %1.</translation>
    </message>
    <message>
        <source>Corners of %1.</source>
        <translation>Coins de %1.</translation>
    </message>
    <message>
        <source>The edge is %1 round: cut %2 of bias from a square of %3.</source>
        <translation>Le bord fait %1 de tour&#x202f;: couper %2 de biais dans un carré de %3.</translation>
    </message>
    <message>
        <source>Between two scallops the edge cuts %1 into the stippling: stay-stitch beside the line before cutting. With %2 of cloth outside the outline it would clear it.</source>
        <translation>Entre deux festons, le bord entame le vermiculé de %1&#x202f;: faire une piqûre de soutien près de la ligne avant de couper. Avec %2 de tissu hors du contour, il n’y toucherait pas.</translation>
    </message>
    <message>
        <source>At each inside point stay-stitch, clip to the stitches, and pivot.</source>
        <translation>À chaque angle rentrant, faire une piqûre de soutien, cranter jusqu’aux points et pivoter.</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>As a pillow: for a form of %1 × %2, with an envelope back of two pieces %3.</source>
        <extracomment>envelope back: two pieces that overlap, between which the pillow is put in</extracomment>
        <translation>En coussin&#x202f;: pour une garniture de %1 × %2, avec un dos portefeuille en deux morceaux de %3.</translation>
    </message>
    <message>
        <source>As a pillow: for a form of %1 × %2 inside the scallops. Cut two back pieces %3, lay them over each other, and cut them along the front’s scallops.</source>
        <translation>En coussin&#x202f;: pour une garniture de %1 × %2 en dedans des festons. Couper deux morceaux de dos de %3, les croiser, et les couper le long des festons du devant.</translation>
    </message>
    <message>
        <source>As a pillow: for a round form %1 across. Cut two back pieces %2, lay them over each other, and cut them round with the front as the pattern.</source>
        <translation>En coussin&#x202f;: pour une garniture ronde de %1 de diamètre. Couper deux morceaux de dos de %2, les croiser, et les couper en rond avec le devant pour patron.</translation>
    </message>
    <message>
        <source>As a pillow: for a form of %1 × %2 with the same round corners. Cut two back pieces %3, lay them over each other, and cut their corners with the front as the pattern.</source>
        <translation>En coussin&#x202f;: pour une garniture de %1 × %2 aux mêmes coins ronds. Couper deux morceaux de dos de %3, les croiser, et couper leurs coins avec le devant pour patron.</translation>
    </message>
    <message>
        <source>Frame, left and right</source>
        <translation>Encadrement, à gauche et à droite</translation>
    </message>
    <message>
        <source>Frame, top and bottom</source>
        <translation>Encadrement, en haut et en bas</translation>
    </message>
    <message>
        <source>along, and %1 across, with its frame</source>
        <translation>en long, et %1 en travers, avec l’encadrement</translation>
    </message>
    <message>
        <source>long, cut %1 wide</source>
        <translation>de long, coupe de %1</translation>
    </message>
    <message>
        <source>A piece is longer than the cloth is wide: sew strips end to end with straight seams, pressed open.</source>
        <translation>Un morceau est plus long que la largeur du tissu&#x202f;: coudre des bandes bout à bout par coutures droites, ouvertes au fer.</translation>
    </message>
    <message>
        <source>The binding is cut: these corners can no longer be changed.</source>
        <translation>La bande de finition est coupée&#x202f;: ces coins ne changent plus.</translation>
    </message>
    <message>
        <source>along, as the rows measure, and %1 across, raw</source>
        <extracomment>after a large length: the piece&apos;s side is as long as its measured rows</extracomment>
        <translation>en long, comme mesurent les rangées, et %1 en travers, brut</translation>
    </message>
    <message>
        <source>Lay the beginning %1 before the place it closes at.</source>
        <translation>Poser le début %1 avant l’endroit où la bande se ferme.</translation>
    </message>
    <message>
        <source>Leave %1 to both sides of that place unsewn until the ends are joined.</source>
        <translation>De part et d’autre, laisser %1 sans couture jusqu’à ce que les bouts soient assemblés.</translation>
    </message>
    <message>
        <source>Begin on the crown of a scallop at the middle of the bottom.</source>
        <translation>Commencer au sommet d’un feston, au milieu du bas.</translation>
    </message>
    <message>
        <source>Sew with the edge, easing the bias over each crown.</source>
        <translation>Coudre en suivant le bord et résorber l’ampleur du biais sur chaque sommet.</translation>
    </message>
    <message>
        <source>At an inside point leave the needle down, straighten the edge and sew on.</source>
        <translation>À un angle rentrant, laisser l’aiguille piquée, redresser le bord et continuer.</translation>
    </message>
    <message>
        <source>Sew with the edge, not stretching it: ease the bias round each corner.</source>
        <translation>Coudre en suivant le bord, sans l’étirer&#xa0;: résorber l’ampleur du biais à chaque coin.</translation>
    </message>
    <message>
        <source>At a corner stop %1 from the edge.</source>
        <translation>À un coin, s’arrêter à %1 du bord.</translation>
    </message>
    <message>
        <source>Fold the strip up at 45°.</source>
        <translation>Plier la bande vers le haut à 45°.</translation>
    </message>
    <message>
        <source>Then fold it down, level with the edge.</source>
        <translation>Puis la rabattre au ras du bord.</translation>
    </message>
    <message>
        <source>Close it with an overlap of %1, ends crossed at a right angle.</source>
        <translation>Fermer avec un recouvrement de %1, bouts croisés à angle droit.</translation>
    </message>
    <message>
        <source>Close with an overlap of exactly %1, ends crossed at a right angle.</source>
        <translation>Fermer avec un recouvrement d’exactement %1, bouts croisés à angle droit.</translation>
    </message>
    <message>
        <source>Left and right first: two of %1 each face.</source>
        <translation>D’abord à gauche et à droite&#x202f;: deux de %1 par face.</translation>
    </message>
    <message>
        <source>Left and right first: two of %1.</source>
        <translation>D’abord à gauche et à droite&#x202f;: deux de %1.</translation>
    </message>
    <message>
        <source>Then top and bottom: two of %1.</source>
        <translation>Puis en haut et en bas&#x202f;: deux de %1.</translation>
    </message>
    <message>
        <source>Cut them %1 longer and trim them flush.</source>
        <translation>Les couper plus longues de %1 et les araser.</translation>
    </message>
    <message>
        <source>Front strip right sides together with the front, back strip with the back.</source>
        <translation>Bande du devant endroit contre endroit sur le devant, bande du dos sur le dos.</translation>
    </message>
    <message>
        <source>All three raw edges level: one seam of %1.</source>
        <translation>Les trois bords bruts alignés&#xa0;: une couture de %1.</translation>
    </message>
    <message>
        <source>Strip right sides together with the front.</source>
        <translation>Bande endroit contre endroit sur le devant.</translation>
    </message>
    <message>
        <source>Raw edges level: a seam of %1.</source>
        <translation>Bords bruts alignés&#xa0;: une couture de %1.</translation>
    </message>
    <message>
        <source>Press both outward.</source>
        <translation>Repasser les deux vers l’extérieur.</translation>
    </message>
    <message>
        <source>Press it outward.</source>
        <translation>Repasser vers l’extérieur.</translation>
    </message>
    <message>
        <source>Lay batting %1 wide in beyond the block’s allowance, edge to edge.</source>
        <extracomment>the block&apos;s own allowance lies under the frame; beyond it the frame would be hollow</extracomment>
        <translation>Glisser du molleton large de %1 au-delà de la marge du bloc, bord à bord.</translation>
    </message>
    <message>
        <source>Baste the raw edges together: so the frame is filled, and the binding too.</source>
        <translation>Bâtir les bords bruts ensemble&#xa0;: l’encadrement est ainsi garni, et la finition aussi.</translation>
    </message>
    <message>
        <source>Marks out with cold water before any heat.</source>
        <translation>Ôter les marques à l’eau froide avant toute chaleur.</translation>
    </message>
    <message>
        <source>Wash cool and gently, dry it flat or cool, press from the back.</source>
        <translation>Laver doucement à froid, sécher à plat ou à basse température, repasser par le dos.</translation>
    </message>
    <message>
        <source>Before you sell it, look up the rules on labels and fillings where you live.</source>
        <translation>Avant de vendre, consulter les règles locales sur les étiquettes et les garnitures.</translation>
    </message>
    <message>
        <source>The pillow goes in between the two hems.</source>
        <extracomment>below the back of a pillow, of whose opening an arrow tells</extracomment>
        <translation>Le coussin se glisse entre les deux ourlets.</translation>
    </message>
    <message>
        <source>%1 of 6 not yet read</source>
        <extracomment>of the six readings of the whole piece</extracomment>
        <translation>%1 mesures sur 6 restent à prendre</translation>
    </message>
    <message>
        <source>Square within %1, if the rest is as planned.</source>
        <extracomment>of a piece of whose six readings some are only the planned ones</extracomment>
        <translation>D’équerre à %1 près, si le reste est comme prévu.</translation>
    </message>
    <message>
        <source>Measure the rest before you cut.</source>
        <translation>Mesurer le reste avant de couper.</translation>
    </message>
    <message>
        <source>Top and bottom differ by %1, if the rest is as planned.</source>
        <translation>Le haut et le bas diffèrent de %1, si le reste est comme prévu.</translation>
    </message>
    <message>
        <source>Left and right differ by %1, if the rest is as planned.</source>
        <translation>Les côtés gauche et droit diffèrent de %1, si le reste est comme prévu.</translation>
    </message>
    <message>
        <source>The diagonals differ by %1, if the rest is as planned.</source>
        <translation>Les diagonales diffèrent de %1, si le reste est comme prévu.</translation>
    </message>
    <message>
        <source>Or as %1 on the bias, from %2 across the cloth.</source>
        <translation>Ou en %1 de biais, sur %2 pris dans toute la largeur du tissu.</translation>
    </message>
    <message>
        <source>1 strip</source>
        <translation>1 bande</translation>
    </message>
    <message>
        <source>%1 strips</source>
        <translation>%1 bandes</translation>
    </message>
    <message>
        <source>in %1, cut %2 wide</source>
        <translation>en %1, coupe de %2 de large</translation>
    </message>
    <message>
        <source>It cuts %1 into the stippling: stay-stitch first.</source>
        <extracomment>the edge runs inside the stitched outline, where blocks are stippled</extracomment>
        <translation>Le bord entame le vermiculé de %1&#x202f;: d’abord une piqûre de soutien.</translation>
    </message>
    <message>
        <source>Inside points: stay-stitch, clip, pivot.</source>
        <extracomment>the places between two scallops; pivot: turn the work about the needle</extracomment>
        <translation>Angles rentrants&#x202f;: piqûre de soutien, cranter, pivoter.</translation>
    </message>
    <message>
        <source>The edge is %1 round.</source>
        <translation>Le bord fait %1 de tour.</translation>
    </message>
    <message>
        <source>Cut %1 of bias from a square of %2.</source>
        <translation>Couper %1 de biais dans un carré de %2.</translation>
    </message>
    <message>
        <source>Beside a diagonal of %1 the other would be %2.</source>
        <extracomment>of a piece&apos;s six measures; %1 and %2 are lengths: the sides as they were read allow no other</extracomment>
        <translation>À côté d’une diagonale de %1, l’autre serait de %2.</translation>
    </message>
    <message>
        <source>Ease it with steam and measure again, or square it smaller, to %1 × %2, in this order: %3.</source>
        <extracomment>%1 × %2 is the largest true piece that can be cut, %3 the order of its sides: &quot;bottom, left, top, right&quot;</extracomment>
        <translation>Le redresser à la vapeur et mesurer de nouveau, ou le mettre d’équerre plus petit, à %1 × %2, dans cet ordre&#x202f;: %3.</translation>
    </message>
    <message>
        <source>Strip %1: first cut off %2.</source>
        <extracomment>of the binding&apos;s strips; %2 is a length, in one line</extracomment>
        <translation>Bande %1&#x202f;: ôter %2.</translation>
    </message>
</context>
<context>
    <name>matside::FieldsModel</name>
    <message>
        <source>%1 by %2</source>
        <extracomment>a ruler&apos;s length and width</extracomment>
        <translation>%1 sur %2</translation>
    </message>
</context>
<context>
    <name>matside::FitModel</name>
    <message>
        <source>This cannot be changed here.</source>
        <translation>Cela ne peut pas être changé ici.</translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation>Cela n’a pas pu être enregistré.</translation>
    </message>
    <message>
        <source>blocks stitched %1</source>
        <translation>blocs brodés %1</translation>
    </message>
    <message>
        <source>sashings cut %1</source>
        <extracomment>sashing: the strip between two blocks</extracomment>
        <translation>bandes intermédiaires coupées %1</translation>
    </message>
    <message>
        <source>joins sewn %1</source>
        <translation>assemblages cousus %1</translation>
    </message>
    <message>
        <source>binding strips cut %1</source>
        <translation>bandes de finition coupées %1</translation>
    </message>
    <message>
        <source>Made already: %1.</source>
        <extracomment>%1: a list of what is made, each with its count</extracomment>
        <translation>Déjà fait&#x202f;: %1.</translation>
    </message>
    <message>
        <source>layers of hoop strips cut %1</source>
        <extracomment>each layer of a hoop strip is cut for itself</extracomment>
        <translation>couches de bandes à broder coupées %1</translation>
    </message>
</context>
<context>
    <name>matside::Gallery</name>
    <message>
        <source>to do</source>
        <translation>à faire</translation>
    </message>
    <message>
        <source>stitched</source>
        <translation>brodé</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>rogné</translation>
    </message>
    <message>
        <source>joined</source>
        <translation>assemblé</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation>gâché</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdu</translation>
    </message>
    <message>
        <source>stitched %1</source>
        <extracomment>the size within a block&apos;s outer stitches, not that it is cut to</extracomment>
        <translation>brodé %1</translation>
    </message>
</context>
<context>
    <name>matside::HoopModel</name>
    <message>
        <source>Strip %1 of %2</source>
        <translation>Bande %1 sur %2</translation>
    </message>
    <message>
        <source>%1, flat cloth</source>
        <translation>%1, tissu à plat</translation>
    </message>
    <message>
        <source>%1, as drawn in by the stitching</source>
        <extracomment>the strip is shorter now: stitching has drawn the cloth in</extracomment>
        <translation>%1, avec le retrait de la broderie</translation>
    </message>
    <message>
        <source>Centre %1</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;: the middle of the block, to be ticked on the strip</extracomment>
        <translation>Milieu %1</translation>
    </message>
    <message>
        <source>Centre of %1</source>
        <translation>Milieu de %1</translation>
    </message>
    <message>
        <source>%1 starts</source>
        <extracomment>gap: cloth between two outlines on the strip</extracomment>
        <translation>Début de %1</translation>
    </message>
    <message>
        <source>Gap to %1</source>
        <translation>Intervalle jusqu’à %1</translation>
    </message>
    <message>
        <source>%1 started</source>
        <translation>Début réel de %1</translation>
    </message>
    <message>
        <source>from the last outline</source>
        <translation>depuis le dernier contour</translation>
    </message>
    <message>
        <source>from the zero end</source>
        <extracomment>zero end: the end of the strip everything is measured from</extracomment>
        <translation>depuis le bout zéro</translation>
    </message>
    <message>
        <source>Next centre %1</source>
        <translation>Prochain milieu %1</translation>
    </message>
    <message>
        <source>The next outline starts at %1; the plan expected %2.</source>
        <translation>Le prochain contour commence à %1&#x202f;; le plan prévoyait %2.</translation>
    </message>
    <message>
        <source>The plan expects the next outline to start at %1 on the drawn-in cloth.</source>
        <translation>Le plan prévoit le début du prochain contour à %1 sur le tissu rétréci.</translation>
    </message>
    <message>
        <source>Block %1 no longer fits: %2 short.</source>
        <translation>Le bloc %1 ne tient plus&#x202f;: il manque %2.</translation>
    </message>
    <message>
        <source>Sew a waste tail to the far end,</source>
        <extracomment>tail: a waste strip sewn to the end so that the frame has cloth to hold</extracomment>
        <translation>Coudre une amorce à l’autre bout,</translation>
    </message>
    <message>
        <source>take a gap of %1,</source>
        <translation>laisser un intervalle de %1,</translation>
    </message>
    <message>
        <source>or carry it to the next strip.</source>
        <translation>ou le passer à la bande suivante.</translation>
    </message>
    <message>
        <source>It is carried to the next strip.</source>
        <translation>Il passe à la bande suivante.</translation>
    </message>
    <message>
        <source>The last outline ends between %1 and %2.</source>
        <translation>Le dernier contour finit entre %1 et %2.</translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation>Cela n’a pas pu être enregistré.</translation>
    </message>
    <message>
        <source>stippling</source>
        <extracomment>stippling: quilting in a wandering line that fills the ground</extracomment>
        <translation>vermiculé</translation>
    </message>
    <message>
        <source>echo</source>
        <extracomment>echo: a line stitched at a distance round the patches</extracomment>
        <translation>piqûre en écho</translation>
    </message>
    <message>
        <source>%1, of %2</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>the outer line, last</source>
        <translation>ligne extérieure, à la fin</translation>
    </message>
    <message>
        <source>Bobbin: not enough on one for a block</source>
        <translation>Canette&#x202f;: une ne suffit pas pour un bloc</translation>
    </message>
    <message>
        <source>Bobbin: change it before this block</source>
        <translation>Canette&#x202f;: la changer avant ce bloc</translation>
    </message>
    <message>
        <source>Bobbin: for 1 more block</source>
        <translation>Canette&#x202f;: encore pour 1 bloc</translation>
    </message>
    <message>
        <source>Bobbin: for %1 more blocks</source>
        <translation>Canette&#x202f;: encore pour %1 blocs</translation>
    </message>
    <message>
        <source>About %1 minutes a block, by your own last blocks</source>
        <translation>Environ %1 minutes par bloc, d’après les derniers blocs faits ici</translation>
    </message>
    <message>
        <source>About %1 minutes a block</source>
        <translation>Environ %1 minutes par bloc</translation>
    </message>
    <message>
        <source>Send %1 × %2 mm to the machine (%3 % × %4 %).</source>
        <extracomment>the size given to the machine, larger than the block because stitching draws it in</extracomment>
        <translation>Envoyer %1 × %2&#xa0;mm à la machine (%3&#x202f;% × %4&#x202f;%).</translation>
    </message>
    <message>
        <source>A gap of %1 would yield short sashings: %2 pairs.</source>
        <extracomment>gap: cloth between two outlines on the strip; shorts: short sashings between two blocks</extracomment>
        <translation>Un intervalle de %1 donnerait des bandes intermédiaires courtes&#x202f;: %2 paires.</translation>
    </message>
    <message>
        <source>It costs nothing: the strip has the room.</source>
        <translation>Cela ne coûte rien&#x202f;: la bande a la place.</translation>
    </message>
    <message>
        <source>It costs %1 of %2 blocks on each strip.</source>
        <translation>Blocs perdus par bande&#x202f;: %1 sur %2.</translation>
    </message>
    <message>
        <source>With waste tails at both ends it would cost none.</source>
        <translation>Avec une amorce aux deux bouts, cela n’en coûterait aucun.</translation>
    </message>
    <message>
        <source>Your blocks draw up by %1 % along and %2 % across. Take that for the blocks to come?</source>
        <extracomment>draw-up: how much the stitching shrinks the block</extracomment>
        <translation>Le retrait des blocs est de %1&#x202f;% en long et %2&#x202f;% en travers. Le prendre pour les blocs à venir&#x202f;?</translation>
    </message>
    <message>
        <source>Trial strip</source>
        <extracomment>the strip of the trial, which is none of the piece&apos;s</extracomment>
        <translation>Bande d’essai</translation>
    </message>
    <message>
        <source>Show block %1</source>
        <extracomment>on a button: the picture goes to that block; %1 is a block&apos;s name, &quot;B2&quot;</extracomment>
        <translation>Montrer le bloc %1</translation>
    </message>
    <message>
        <source>%1. About %2 stitches and %3 m of thread; on the bobbin %4 m for it.</source>
        <extracomment>stitches and metres of thread one block takes</extracomment>
        <translation>%1. Environ %2 points et %3&#xa0;m de fil&#x202f;; pour cela, %4&#xa0;m sur la canette.</translation>
    </message>
    <message>
        <source>Send %1 × %2 mm</source>
        <extracomment>the size given to the embroidery machine for one block, beside the drawing of the strip</extracomment>
        <translation>Envoyer %1 × %2&#xa0;mm</translation>
    </message>
    <message>
        <source>Centre %1, not at its mark</source>
        <extracomment>the block&apos;s centre; the tick made for it on the strip before lies elsewhere</extracomment>
        <translation>Milieu %1, pas à son repère</translation>
    </message>
    <message>
        <source>The centres marked before do not hold any more: %1. Go by the gap from the last outline.</source>
        <extracomment>%1 lists blocks, &quot;A3, A4&quot;: the ticks made for their centres on the strip before</extracomment>
        <translation>Les milieux tracés avant ne valent plus&#x202f;: %1. C’est l’intervalle depuis le dernier contour qui compte.</translation>
    </message>
    <message>
        <source>%1 of %2 stitched</source>
        <extracomment>of the blocks of one strip</extracomment>
        <translation>%1 sur %2 brodés</translation>
    </message>
    <message>
        <source>Strip %1</source>
        <translation>Bande %1</translation>
    </message>
    <message>
        <source>%1 blocks</source>
        <extracomment>on one strip</extracomment>
        <translation>%1 blocs</translation>
    </message>
    <message>
        <source>%1 pairs of short sashings</source>
        <extracomment>front and back piece of a short sashing, out of the gaps of all strips</extracomment>
        <translation>%1 paires de bandes intermédiaires courtes</translation>
    </message>
    <message>
        <source>with waste tails</source>
        <extracomment>tail: a waste strip sewn to the end so that the frame has cloth to hold</extracomment>
        <translation>avec amorces</translation>
    </message>
    <message>
        <source>Plain gaps</source>
        <extracomment>of the gaps between the blocks of a hoop strip</extracomment>
        <translation>Intervalles simples</translation>
    </message>
    <message>
        <source>One gap yields sashing</source>
        <translation>Un intervalle donne une bande intermédiaire</translation>
    </message>
    <message>
        <source>%1 gaps yield sashing</source>
        <translation>%1 intervalles donnent des bandes intermédiaires</translation>
    </message>
    <message>
        <source>All gaps yield sashing</source>
        <translation>Tous les intervalles donnent des bandes intermédiaires</translation>
    </message>
    <message>
        <source>wide, each layer</source>
        <extracomment>how wide back, batting and front of a hoop strip are cut, beside the figure</extracomment>
        <translation>de large, chaque épaisseur</translation>
    </message>
    <message>
        <source>Draw-up: %1 % × %2 %</source>
        <extracomment>draw-up: how much the stitching shrinks the block, along and across</extracomment>
        <translation>Retrait&#x202f;: %1 % × %2 %</translation>
    </message>
</context>
<context>
    <name>matside::HoopShelf</name>
    <message>
        <source>The hoops could not be saved.</source>
        <translation>Les cadres n’ont pas pu être enregistrés.</translation>
    </message>
    <message>
        <source>hoop %1</source>
        <translation>cadre %1</translation>
    </message>
    <message>
        <source>Measure its field and its outside first.</source>
        <translation>Mesurer d’abord son champ de broderie et son extérieur.</translation>
    </message>
    <message>
        <source>The block is %1 too large for its field.</source>
        <translation>Le bloc est trop grand de %1 pour son champ de broderie.</translation>
    </message>
    <message>
        <source>The block fits, with %1 to spare.</source>
        <translation>Le bloc tient, avec %1 de jeu.</translation>
    </message>
    <message>
        <source>No block goes on a strip with it.</source>
        <translation>Aucun bloc ne tient sur une bande avec lui.</translation>
    </message>
    <message>
        <source>Strips %1 wide, %2 blocks on each; %3 strips take %4 of each layer.</source>
        <extracomment>hoop strips: width, how many blocks on each, how much cloth of each layer</extracomment>
        <translation>Bandes de %1 de large, %2 blocs sur chacune&#x202f;; %3 bandes prennent %4 de chaque épaisseur.</translation>
    </message>
    <message>
        <source>new hoop</source>
        <translation>nouveau cadre</translation>
    </message>
    <message>
        <source>Nothing can be changed now.</source>
        <translation>Rien ne peut être changé maintenant.</translation>
    </message>
    <message>
        <source>A hoop measures between nothing and two metres.</source>
        <translation>Un cadre mesure entre zéro et deux mètres.</translation>
    </message>
    <message>
        <source>%1 strips of %2 blocks</source>
        <extracomment>strips of cloth, and how many blocks go on each</extracomment>
        <translation>%1 bandes de %2 blocs</translation>
    </message>
</context>
<context>
    <name>matside::JoinModel</name>
    <message>
        <source>Swap %1 and %2: %1 is %3 off size, and such blocks stand best together in an end column.</source>
        <translation>Échanger %1 et %2&#x202f;: %1 s’écarte de %3 de la cote, et de tels blocs sont mieux ensemble dans une colonne de bout.</translation>
    </message>
    <message>
        <source>Swap %1 and %2: %1 is %3 off size, which shows least at an end.</source>
        <translation>Échanger %1 et %2&#x202f;: %1 s’écarte de %3 de la cote&#x202f;; c’est à un bout que cela se voit le moins.</translation>
    </message>
    <message>
        <source>Swap %1 and %2: %1 is nearest to its size, and the middle is looked at most.</source>
        <translation>Échanger %1 et %2&#x202f;: %1 est le plus près de sa taille, et le milieu est le plus regardé.</translation>
    </message>
    <message>
        <source>The blocks lie well as they are.</source>
        <translation>Les blocs sont bien comme ils sont.</translation>
    </message>
    <message>
        <source>There is nothing to swap here.</source>
        <translation>Il n’y a rien à échanger ici.</translation>
    </message>
    <message>
        <source>What is sewn already stays where it is.</source>
        <translation>Ce qui est déjà cousu reste à sa place.</translation>
    </message>
    <message>
        <source>That block is not made yet.</source>
        <translation>Ce bloc n’est pas encore fait.</translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation>Cela n’a pas pu être enregistré.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>two blocks&apos; names, &quot;B2&quot;: the first is sewn to the second with a sashing between</extracomment>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>Row %1</source>
        <translation>Rangée %1</translation>
    </message>
    <message>
        <source>Row %1 to %2</source>
        <translation>Rangées %1 et %2</translation>
    </message>
    <message>
        <source>its raw length, as planned</source>
        <translation>sa longueur brute, selon le plan</translation>
    </message>
    <message>
        <source>fold under</source>
        <translation>rentré</translation>
    </message>
    <message>
        <source>visible sashing</source>
        <extracomment>fold under: how much of the back strip is turned under before it is sewn down</extracomment>
        <translation>bande intermédiaire visible</translation>
    </message>
    <message>
        <source>The first row sets the marks and the long sashings: %1 against %2 planned.</source>
        <translation>La première rangée fixe les repères et les bandes intermédiaires longues&#x202f;: %1 contre %2 prévus.</translation>
    </message>
    <message>
        <source>This row lies within %1 of the others: leave it.</source>
        <translation>Cette rangée est égale aux autres, à %1 près&#x202f;: la laisser ainsi.</translation>
    </message>
    <message>
        <source>This row is %1 off the mean. Ease it: up to %2 goes in over %3 blocks.</source>
        <translation>Cette rangée s’écarte de %1 de la moyenne. Résorber l’ampleur&#x202f;: jusqu’à %2 passe sur %3 blocs.</translation>
    </message>
    <message>
        <source>There is nothing to measure here.</source>
        <translation>Il n’y a rien à mesurer ici.</translation>
    </message>
    <message>
        <source>A row of %1 blocks measures about %2.</source>
        <translation>Une rangée de %1 blocs mesure environ %2.</translation>
    </message>
    <message>
        <source>Test join: the allowances overlap by %1.</source>
        <extracomment>the two allowances inside a sashing lie over each other</extracomment>
        <translation>Assemblage d’essai&#x202f;: les marges se recouvrent de %1.</translation>
    </message>
    <message>
        <source>Test join: a gap of %1.</source>
        <translation>Assemblage d’essai&#x202f;: un espace de %1.</translation>
    </message>
    <message>
        <source>Test join: the allowances meet.</source>
        <translation>Assemblage d’essai&#x202f;: les marges se touchent.</translation>
    </message>
    <message>
        <source>Front strips are cut %1 wide, sewn with %2 as before.</source>
        <translation>Les bandes du devant se coupent à %1 de large, cousues à %2 comme avant.</translation>
    </message>
    <message>
        <source>The sashing will be seen %1 wide.</source>
        <translation>La bande intermédiaire se verra sur %1 de large.</translation>
    </message>
    <message>
        <source>The test join itself needs no unpicking: pare %1 off each allowance, which leaves %2.</source>
        <translation>L’assemblage d’essai lui-même n’est pas à découdre&#x202f;: réduire chaque marge de %1, il reste %2.</translation>
    </message>
    <message>
        <source>Do not pare the allowances of the test join: too little would hold it.</source>
        <translation>Ne pas réduire les marges de l’assemblage d’essai&#x202f;: il resterait trop peu pour le tenir.</translation>
    </message>
    <message>
        <source>Cut strips %1 instead</source>
        <translation>Couper plutôt les bandes à %1</translation>
    </message>
    <message>
        <source>There is no other way now.</source>
        <translation>Il n’y a pas d’autre moyen maintenant.</translation>
    </message>
    <message>
        <source>Press the front strip open, away from the first block; then the back strip over.</source>
        <translation>Ouvrir au fer la bande du devant, à l’opposé du premier bloc&#x202f;; puis rabattre celle du dos.</translation>
    </message>
    <message>
        <source>Press the strip open, away from the first block.</source>
        <translation>Ouvrir la bande au fer, à l’opposé du premier bloc.</translation>
    </message>
    <message>
        <source>Each crossing holds 8 cloths and the batting, against 4: pare the batting from the last %1 of the short sashings, clip their folded part to a slant, press hard.</source>
        <translation>Chaque croisement contient 8 tissus et le molleton, contre 4&#x202f;: retirer le molleton des derniers %1 des bandes intermédiaires courtes, couper leur partie pliée en biseau, repasser fort.</translation>
    </message>
    <message>
        <source>Crossings are thick: press hard and turn the wheel by hand over them.</source>
        <translation>Les croisements sont épais&#x202f;: repasser fort et tourner le volant à la main pour les passer.</translation>
    </message>
    <message>
        <source>catch</source>
        <translation>prise</translation>
    </message>
    <message>
        <source>Lay in batting strips {%1} wide</source>
        <extracomment>batting strips laid between the two allowances inside a wide sashing</extracomment>
        <translation>Insérer des bandes de molleton, {%1} de large</translation>
    </message>
    <message>
        <source>Leave {%1} on the blocks</source>
        <extracomment>the cloth left outside a block&apos;s stitched line when it is trimmed</extracomment>
        <translation>Laisser {%1} aux blocs</translation>
    </message>
    <message>
        <source>Pare the allowances to {%1}</source>
        <translation>Réduire les marges à {%1}</translation>
    </message>
    <message>
        <source>Turn {%1} under</source>
        <translation>Rentrer {%1}</translation>
    </message>
    <message>
        <source>Back strip doubled</source>
        <translation>Bande dos pliée en deux</translation>
    </message>
    <message>
        <source>The gap between the allowances is filled; trim to {%1}.</source>
        <translation>L’espace entre les marges est comblé&#x202f;; rogner à {%1}.</translation>
    </message>
    <message>
        <source>Cut %1 of them {%2} long.</source>
        <translation>En couper %1, de {%2} de long.</translation>
    </message>
    <message>
        <source>Nothing is laid in. Trim to {%1}; the strip’s edge lies {%2} inside the block’s.</source>
        <extracomment>the raw edge of the sashing strip lies inside the block&apos;s raw edge</extracomment>
        <translation>Rien n’est inséré. Rogner à {%1}&#x202f;; le bord de la bande est à {%2} en deçà de celui du bloc.</translation>
    </message>
    <message>
        <source>Then they lie flat under the narrow strip. Trim to {%1}; once sewn, pare the strip’s edge level with the block’s.</source>
        <translation>Elles sont alors à plat sous la bande étroite. Rogner à {%1}&#x202f;; une fois cousu, couper le bord de la bande au ras de celui du bloc.</translation>
    </message>
    <message>
        <source>Back strips are cut {%1} wide; the fold catches {%2}.</source>
        <translation>Les bandes du dos se coupent à {%1} de large&#x202f;; le pli prend {%2}.</translation>
    </message>
    <message>
        <source>Press the back strip double before it is sewn on. Then press the front strip open, away from the first block, and the back strip over.</source>
        <translation>Plier en deux au fer la bande du dos avant de la coudre. Puis ouvrir au fer la bande du devant, à l’opposé du premier bloc, et rabattre celle du dos.</translation>
    </message>
    <message>
        <source>Cut the longest pieces first.</source>
        <translation>Couper d’abord les morceaux les plus longs.</translation>
    </message>
    <message>
        <source>The batting of the gaps serves too.</source>
        <extracomment>gap: cloth between two outlines on the strip, which comes apart into sashings and batting</extracomment>
        <translation>Le molleton des intervalles peut servir aussi.</translation>
    </message>
    <message>
        <source>After the second seam, lay batting %1 wide between the two allowances, edge to edge, and cut it off at the sashing’s ends; then bring the back strip over it.</source>
        <extracomment>batting between the two blocks&apos; allowances under a wide sashing</extracomment>
        <translation>Après la deuxième couture, poser du molleton large de %1 entre les deux marges, bord à bord, et le couper aux bouts de la bande intermédiaire&#x202f;; puis rabattre la bande du dos par-dessus.</translation>
    </message>
    <message>
        <source>After the second seam, lay batting %1 wide between the two allowances, edge to edge, cut it off at the sashing’s ends, and tack it to them.</source>
        <translation>Après la deuxième couture, poser du molleton large de %1 entre les deux marges, bord à bord, le couper aux bouts de la bande intermédiaire et le bâtir sur les marges.</translation>
    </message>
    <message>
        <source>This row is %1 off the mean, more than the %2 that can be eased: resew one of its seams.</source>
        <translation>Cette rangée s’écarte de %1 de la moyenne, plus que les %2 qui se résorbent&#x202f;: en refaire une couture.</translation>
    </message>
    <message>
        <source>Test join: batting and allowances overlap by %1.</source>
        <translation>Assemblage d’essai&#x202f;: molleton et marges se recouvrent de %1.</translation>
    </message>
    <message>
        <source>Test join: batting and allowances meet.</source>
        <translation>Assemblage d’essai&#x202f;: molleton et marges se touchent.</translation>
    </message>
    <message>
        <source>That may stay. A seam of %1 would be just right; the plan goes by it.</source>
        <translation>Cela peut rester. Une couture de %1 serait parfaite&#x202f;; le plan s’y règle.</translation>
    </message>
    <message>
        <source>Sew a seam of %1 from here on; the plan goes by it.</source>
        <translation>Désormais, une couture de %1&#x202f;; le plan s’y règle.</translation>
    </message>
    <message>
        <source>So scant a seam leaves the outline in view, %1 from the seam. To hide it, trim the blocks with the %2 line on the outline, and sew as planned.</source>
        <extracomment>outline: the block&apos;s outer stitched line</extracomment>
        <translation>Une couture aussi juste laisse voir le contour, à %1 de la couture. Pour le cacher, rogner les blocs avec la ligne %2 sur le contour, et coudre comme prévu.</translation>
    </message>
    <message>
        <source>The test join itself needs no unpicking: cut %1 off its batting.</source>
        <translation>L’assemblage d’essai lui-même n’est pas à découdre&#x202f;: couper %1 de son molleton.</translation>
    </message>
</context>
<context>
    <name>matside::KitsModel</name>
    <message>
        <source>1 kit</source>
        <translation>1 kit</translation>
    </message>
    <message>
        <source>%1 kits</source>
        <translation>%1 kits</translation>
    </message>
    <message>
        <source>Nothing can be changed now.</source>
        <translation>Rien ne peut être changé maintenant.</translation>
    </message>
    <message>
        <source>A whole number up to %1.</source>
        <translation>Un nombre entier jusqu’à %1.</translation>
    </message>
    <message>
        <source>Say first how many students there are.</source>
        <translation>Indiquer d’abord le nombre d’élèves.</translation>
    </message>
    <message>
        <source>%1: %2, yours, and %3</source>
        <extracomment>%1 = &quot;15 kits&quot;, %2 = &quot;12 students&quot;, %3 = &quot;2 spare&quot;; the teacher makes one too</extracomment>
        <translation>%1&#x202f;: %2, un pour la démonstration et %3</translation>
    </message>
    <message>
        <source>1 student</source>
        <translation>1 élève</translation>
    </message>
    <message>
        <source>%1 students</source>
        <translation>%1 élèves</translation>
    </message>
    <message>
        <source>%1 spare</source>
        <extracomment>so many spare kits</extracomment>
        <translation>%1 de réserve</translation>
    </message>
    <message>
        <source>students</source>
        <translation>élèves</translation>
    </message>
    <message>
        <source>spare kits</source>
        <translation>kits de réserve</translation>
    </message>
    <message>
        <source>machines in the room</source>
        <translation>machines dans la salle</translation>
    </message>
    <message>
        <source>who learns</source>
        <translation>qui apprend</translation>
    </message>
    <message>
        <source>All grown up</source>
        <translation>Que des adultes</translation>
    </message>
    <message>
        <source>Some under eighteen</source>
        <translation>Aussi des moins de dix-huit ans</translation>
    </message>
    <message>
        <source>%1: %2 together; kit by kit it would be %3</source>
        <translation>%1&#x202f;: %2 ensemble&#x202f;; kit par kit, ce serait %3</translation>
    </message>
    <message>
        <source>%1: %2, together or kit by kit</source>
        <translation>%1&#x202f;: %2, ensemble ou kit par kit</translation>
    </message>
    <message>
        <source>%1 %2 × %3</source>
        <extracomment>%1 what is cut, %2 × %3 its two sides</extracomment>
        <translation>%1 %2 × %3</translation>
    </message>
    <message>
        <source>%1 in each kit</source>
        <translation>%1 par kit</translation>
    </message>
    <message>
        <source>for all kits</source>
        <translation>pour tous les kits</translation>
    </message>
    <message>
        <source>%1 on the day</source>
        <translation>%1 le jour de la coupe</translation>
    </message>
    <message>
        <source>%1 hours at the machine in all.</source>
        <translation>%1 heures à la machine en tout.</translation>
    </message>
    <message>
        <source>Stitch ahead, or bring more machines.</source>
        <translation>Broder à l’avance, ou apporter plus de machines.</translation>
    </message>
    <message>
        <source>At %1 machines side by side, %2 hours each.</source>
        <translation>Sur %1 machines côte à côte, %2 heures chacune.</translation>
    </message>
    <message>
        <source>Some are under eighteen: an adult at each cutting place, at each machine and each iron.</source>
        <translation>Certains ont moins de dix-huit ans&#x202f;: un adulte à chaque place de coupe, à chaque machine et à chaque fer.</translation>
    </message>
    <message>
        <source>%1 in each kit, one of them to practise with</source>
        <extracomment>one of these sashing strips is for practising the join</extracomment>
        <translation>%1 par kit, dont une pour s’exercer</translation>
    </message>
    <message>
        <source>student</source>
        <translation>élève</translation>
    </message>
    <message>
        <source>spare kit</source>
        <translation>kit de réserve</translation>
    </message>
    <message>
        <source>machine in the room</source>
        <translation>machine dans la salle</translation>
    </message>
</context>
<context>
    <name>matside::Merging</name>
    <message>
        <source>Something made meanwhile hangs on it.</source>
        <translation>Quelque chose fait entre-temps en dépend.</translation>
    </message>
    <message>
        <source>Both tablets changed it.</source>
        <translation>Les deux tablettes l’ont changé.</translation>
    </message>
    <message>
        <source>Which of the two is newer is not known.</source>
        <translation>On ignore laquelle des deux est la plus récente.</translation>
    </message>
</context>
<context>
    <name>matside::OpenFiles</name>
    <message>
        <source>The file cannot be read.</source>
        <translation>Le fichier ne peut pas être lu.</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Ouvrage</translation>
    </message>
    <message>
        <source>The file needs a name.</source>
        <translation>Le fichier demande un nom.</translation>
    </message>
    <message>
        <source>There is a file “%1” already, and it was left as it is. Choose another name.</source>
        <translation>Il y a déjà un fichier «&#x202f;%1&#x202f;», et il a été laissé tel quel. Choisir un autre nom.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>Le dossier %1 ne peut pas être créé.</translation>
    </message>
    <message>
        <source>The file could not be written: %1</source>
        <translation>Le fichier n’a pas pu être écrit&#x202f;: %1</translation>
    </message>
    <message>
        <source>The file could not be written to %1.</source>
        <translation>Le fichier n’a pas pu être écrit dans %1.</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Écrit dans %1</translation>
    </message>
</context>
<context>
    <name>matside::PhotoSource</name>
    <message>
        <source>The camera does not answer. Nothing was lost: try again, or choose a picture.</source>
        <translation>L’appareil photo ne répond pas. Rien n’est perdu&#x202f;: essayer encore, ou choisir une image.</translation>
    </message>
    <message>
        <source>The camera could not take the picture. Nothing was lost: try again, or choose one.</source>
        <translation>L’appareil photo n’a pas pu prendre la photo. Rien n’est perdu&#x202f;: essayer encore, ou en choisir une.</translation>
    </message>
    <message>
        <source>The camera is gone. Nothing was lost: plug it in again.</source>
        <translation>L’appareil photo est débranché. Rien n’est perdu&#x202f;: le rebrancher.</translation>
    </message>
</context>
<context>
    <name>matside::Power</name>
    <message>
        <source>The battery is nearly empty: nothing new is begun until the tablet is plugged in.</source>
        <translation>La batterie est presque vide&#x202f;: rien de nouveau ne commence tant que la tablette n’est pas branchée.</translation>
    </message>
    <message>
        <source>The battery is nearly empty. All is saved; nothing new is begun until the tablet is plugged in.</source>
        <translation>La batterie est presque vide. Tout est enregistré&#x202f;; rien de nouveau ne commence tant que la tablette n’est pas branchée.</translation>
    </message>
    <message>
        <source>The battery is low: plug the tablet in soon. All is saved.</source>
        <translation>La batterie est faible&#x202f;: brancher bientôt la tablette. Tout est enregistré.</translation>
    </message>
</context>
<context>
    <name>matside::PriceModel</name>
    <message>
        <source>What you reckon with could not be saved.</source>
        <translation>Les valeurs du calcul n’ont pas pu être enregistrées.</translation>
    </message>
    <message>
        <source>Nothing can be changed now.</source>
        <translation>Rien ne peut être changé maintenant.</translation>
    </message>
    <message>
        <source>An amount up to a million, with two decimals at most.</source>
        <translation>Un montant jusqu’à un million, avec deux décimales au plus.</translation>
    </message>
    <message>
        <source>Between 0 and 300 %.</source>
        <translation>Entre 0 et 300&#x202f;%.</translation>
    </message>
    <message>
        <source>This cannot be changed here.</source>
        <translation>Cela ne peut pas être changé ici.</translation>
    </message>
    <message>
        <source>thread, web, needles</source>
        <translation>fil, voile thermocollant, aiguilles</translation>
    </message>
    <message>
        <source>each of %1</source>
        <translation>chacun des %1</translation>
    </message>
    <message>
        <source>a square inch</source>
        <translation>par pouce carré</translation>
    </message>
    <message>
        <source>a square decimetre</source>
        <translation>par décimètre carré</translation>
    </message>
    <message>
        <source>Say what an hour of your work is worth, and it is counted.</source>
        <translation>Indiquer ce que vaut une heure de travail, et elle sera comptée.</translation>
    </message>
    <message>
        <source>Without a price, so not counted: %1. Enter prices at Fit, with the cloths.</source>
        <translation>Sans prix, donc non compté&#x202f;: %1. Saisir les prix sous «&#x202f;Prévoir&#x202f;», avec les tissus.</translation>
    </message>
    <message>
        <source>Asking %1 pays for all your time.</source>
        <translation>Demander %1 paie tout le temps passé.</translation>
    </message>
    <message>
        <source>Asking %1 leaves %2 hours you will not be paid for.</source>
        <translation>Demander %1 laisse %2 heures non payées.</translation>
    </message>
    <message>
        <source>an hour of your work</source>
        <translation>une heure de travail</translation>
    </message>
    <message>
        <source>overhead</source>
        <extracomment>overhead: machine, room, light, tools</extracomment>
        <translation>frais généraux</translation>
    </message>
    <message>
        <source>margin</source>
        <extracomment>margin: what is left for the business</extracomment>
        <translation>bénéfice</translation>
    </message>
    <message>
        <source>if you ask</source>
        <translation>si l’on demande</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>tissu</translation>
    </message>
    <message>
        <source>overhead, %1</source>
        <extracomment>overhead: machine, room, light, tools; %1 a percentage</extracomment>
        <translation>frais généraux, %1</translation>
    </message>
    <message>
        <source>margin, %1</source>
        <extracomment>margin: what is left for the business; %1 a percentage</extracomment>
        <translation>bénéfice, %1</translation>
    </message>
    <message>
        <source>The cloth to buy costs %1; what is left over stays yours.</source>
        <extracomment>%1 is an amount of money: more cloth is bought than the piece uses</extracomment>
        <translation>Le tissu à acheter coûte %1&#x202f;; le reste est gardé.</translation>
    </message>
    <message>
        <source>The minutes at the machine are your own.</source>
        <translation>Les minutes à la machine sont celles notées ici.</translation>
    </message>
    <message>
        <source>The hours are usual ones; log three blocks for your own.</source>
        <translation>Heures habituelles&#x202f;; noter trois blocs, et les heures réelles comptent.</translation>
    </message>
    <message>
        <source>at %1</source>
        <extracomment>so much money an hour, after &quot;10 h 51 min&quot;</extracomment>
        <translation>à %1</translation>
    </message>
    <message>
        <source>the price</source>
        <translation>le prix</translation>
    </message>
</context>
<context>
    <name>matside::Session</name>
    <message>
        <source>Matside is open elsewhere: here you can look, but not change.</source>
        <translation>Matside est ouvert ailleurs&#x202f;: ici, regarder seulement, sans changer.</translation>
    </message>
    <message>
        <source>The folder cannot be written: you can look, but not change.</source>
        <translation>Le dossier n’est pas inscriptible&#x202f;: regarder seulement, sans changer.</translation>
    </message>
    <message>
        <source>The file of projects is damaged. What can be read is shown; nothing is written.</source>
        <translation>Le fichier des projets est abîmé. Ce qui peut être lu est montré&#x202f;; rien n’est écrit.</translation>
    </message>
    <message>
        <source>How much of it is left?</source>
        <translation>Qu’en reste-t-il&#x202f;?</translation>
    </message>
    <message>
        <source>The pedal turns the steps. Put it where your foot cannot take it for the machine’s, or on the table; while a block is stitched it does nothing.</source>
        <translation>La pédale tourne les étapes. La poser là où le pied ne peut pas la prendre pour celle de la machine, ou sur la table&#x202f;; pendant qu’un bloc se brode, elle ne fait rien.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is what was taken back (&quot;spoiled&quot;), %2 the step</extracomment>
        <translation>%1&#x202f;: %2</translation>
    </message>
</context>
<context>
    <name>matside::ShadeModel</name>
    <message>
        <source>step %1</source>
        <extracomment>of the scale from black to white, with one decimal</extracomment>
        <translation>cran %1</translation>
    </message>
    <message>
        <source>no colour yet</source>
        <translation>pas encore de couleur</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <extracomment>one patch lies on another, or on the ground</extracomment>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>No patches are listed: look how far apart the cloths lie on the scale.</source>
        <translation>Aucune pièce n’est indiquée&#x202f;: voir l’écart entre les tissus sur l’échelle.</translation>
    </message>
    <message>
        <source>Give the ground and the patches their colours: press a cloth.</source>
        <translation>Donner leurs couleurs au fond et aux pièces&#x202f;: toucher un tissu.</translation>
    </message>
    <message>
        <source>Blocks are stitched already: the order stays as it is.</source>
        <translation>Des blocs sont déjà brodés&#x202f;: l’ordre reste tel quel.</translation>
    </message>
    <message>
        <source>Patches of one name cannot be put in order.</source>
        <translation>Des pièces de même nom ne peuvent pas être ordonnées.</translation>
    </message>
    <message>
        <source>An order is sought for up to %1 patches; here there are %2.</source>
        <translation>Un ordre est cherché pour %1 pièces au plus&#x202f;; ici il y en a %2.</translation>
    </message>
    <message>
        <source>Laid from the lowest up as %1, patches that follow each other would be %2 steps apart or more, not %3.</source>
        <extracomment>%1 lists patches, %2 and %3 are numbers of steps of the ten-step scale</extracomment>
        <translation>Dans cet ordre, de bas en haut&#x202f;: %1. Les pièces qui se suivent auraient alors %2 crans d’écart ou plus, au lieu de %3.</translation>
    </message>
    <message>
        <source>Look first whether your design lets one lie over the other.</source>
        <translation>Voir d’abord si le motif permet que l’une recouvre l’autre.</translation>
    </message>
</context>
<context>
    <name>matside::Sharing</name>
    <message>
        <source>Piece</source>
        <translation>Ouvrage</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>Le dossier %1 ne peut pas être créé.</translation>
    </message>
    <message>
        <source>Writing the file…</source>
        <translation>Écriture du fichier…</translation>
    </message>
    <message>
        <source>Written to %1. The photographs in it do not say where or with what they were taken.</source>
        <translation>Écrit dans %1. Les photos qu’il contient ne disent ni où ni avec quoi elles ont été prises.</translation>
    </message>
    <message>
        <source>Written to %1. Print it at its true size.</source>
        <translation>Écrit dans %1. Imprimer en grandeur réelle.</translation>
    </message>
    <message>
        <source>It is for one maker. Say at the Shop station how many kits a class needs.</source>
        <translation>Il est pour une personne. Indiquer sous «&#x202f;Acheter&#x202f;» combien de kits il faut pour un cours.</translation>
    </message>
</context>
<context>
    <name>matside::Shelf</name>
    <message>
        <source>Finished</source>
        <translation>Fini</translation>
    </message>
    <message>
        <source>The demo cannot be read.</source>
        <translation>L’exemple ne peut pas être lu.</translation>
    </message>
    <message>
        <source>%1, again</source>
        <translation>%1, de nouveau</translation>
    </message>
    <message>
        <source>A project needs a name. The old one was kept.</source>
        <translation>Un projet demande un nom. L’ancien a été gardé.</translation>
    </message>
    <message>
        <source>%1, in millimetres</source>
        <translation>%1, en millimètres</translation>
    </message>
    <message>
        <source>%1 of %2 blocks stitched</source>
        <extracomment>how many of a piece&apos;s blocks are stitched</extracomment>
        <translation>%1 sur %2 blocs brodés</translation>
    </message>
    <message>
        <source>Go on: %1</source>
        <extracomment>on the shelf, what pressing a piece goes on with: the next step</extracomment>
        <translation>Continuer&#x202f;: %1</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <extracomment>the finished size of a piece: its length and its width</extracomment>
        <translation>%1 sur %2</translation>
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
        <translation>%1 et %2 pour redresser</translation>
    </message>
    <message>
        <source>A piece is wider than this cloth: it has to be pieced, and no least length is known.</source>
        <translation>Un morceau est plus large que ce tissu&#x202f;: il faut le raccorder, et la longueur minimale n’est pas connue.</translation>
    </message>
    <message>
        <source>Proven least: no way of cutting buys less.</source>
        <translation>Minimum prouvé&#x202f;: aucune coupe n’en demande moins.</translation>
    </message>
    <message>
        <source>At most %1 % above the least possible.</source>
        <translation>Au plus %1&#x202f;% au-dessus du minimum.</translation>
    </message>
    <message>
        <source>%1 Waste %2 %.</source>
        <translation>%1 Perte %2&#x202f;%.</translation>
    </message>
    <message>
        <source>All cloths: %1</source>
        <translation>Tous les tissus&#x202f;: %1</translation>
    </message>
    <message>
        <source>Cloths with a price: %1</source>
        <translation>Tissus avec un prix&#x202f;: %1</translation>
    </message>
    <message>
        <source>from what you have: %1</source>
        <extracomment>%1 strips, &quot;3 × 11 3/4 in&quot;</extracomment>
        <translation>pris dans ce qu’il y a déjà&#x202f;: %1</translation>
    </message>
    <message>
        <source>Bought or begun: this way of cutting stays.</source>
        <translation>Acheté ou entamé&#x202f;: cette façon de couper reste.</translation>
    </message>
    <message>
        <source>What you have yields all of it: nothing to buy.</source>
        <translation>Ce qu’il y a déjà suffit à tout&#x202f;: rien à acheter.</translation>
    </message>
    <message>
        <source>1 needle</source>
        <translation>1 aiguille</translation>
    </message>
    <message>
        <source>%1 needles</source>
        <translation>%1 aiguilles</translation>
    </message>
    <message>
        <source>1 block</source>
        <translation>1 bloc</translation>
    </message>
    <message>
        <source>%1 blocks</source>
        <translation>%1 blocs</translation>
    </message>
    <message>
        <source>1 bobbin</source>
        <translation>1 canette</translation>
    </message>
    <message>
        <source>%1 bobbins</source>
        <translation>%1 canettes</translation>
    </message>
    <message>
        <source>%1 of %2 × %3</source>
        <extracomment>so many packages of batting, and their two sides: &quot;2 of 45 in × 60 in&quot;</extracomment>
        <translation>%1 de %2 × %3</translation>
    </message>
    <message>
        <source>%1 yd</source>
        <extracomment>so much thread, in yards or metres</extracomment>
        <translation>%1 yards</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>from the packages: %1</source>
        <translation>dans les paquets&#x202f;: %1</translation>
    </message>
    <message>
        <source>%1 left over</source>
        <extracomment>so much of the cloth&apos;s length is not used</extracomment>
        <translation>il reste %1</translation>
    </message>
    <message>
        <source>The packages yield all of it: nothing from the roll.</source>
        <translation>Les paquets suffisent à tout&#x202f;: rien au rouleau.</translation>
    </message>
    <message>
        <source>So many pieces are laid out row by row: no least length is proved.</source>
        <translation>Avec autant de morceaux, disposés rangée par rangée, aucune longueur minimale n’est prouvée.</translation>
    </message>
    <message>
        <source>For %1 about %2 of thread, %3 wound, %4.</source>
        <extracomment>%1 &quot;9 blocks&quot;, %2 &quot;380 yd&quot; or &quot;347 m&quot;, %3 &quot;5 bobbins&quot;, %4 &quot;1 needle&quot;</extracomment>
        <translation>Pour %1, environ %2 de fil, %3 à remplir, %4.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <extracomment>a cloth&apos;s name and what it is for, where two cloths have the same name: &quot;oat linen (sashing, front)&quot;</extracomment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>along the selvage, %1 long: %2</source>
        <extracomment>strips that run along the selvage instead of across the cloth: %1 their length, %2 &quot;3 × 11 3/4 in&quot;</extracomment>
        <translation>le long de la lisière, sur %1&#x202f;: %2</translation>
    </message>
    <message>
        <source>%1 to straighten</source>
        <extracomment>so much of the cloth&apos;s length is cut off to square its end</extracomment>
        <translation>%1 pour redresser</translation>
    </message>
    <message>
        <source>%1; with what is there %2</source>
        <extracomment>%1 the price of the cloth still to buy, %2 of that and of what was bought before</extracomment>
        <translation>%1&#x202f;; avec ce qu’il y a déjà, %2</translation>
    </message>
    <message>
        <source>%1 bought or begun; it does not yield all: buy this much more.</source>
        <extracomment>%1 a length of cloth; what to buy on top of it stands above</extracomment>
        <translation>%1 achetés ou entamés&#x202f;; cela ne suffit pas&#x202f;: acheter en plus cette quantité.</translation>
    </message>
</context>
<context>
    <name>matside::StepModel</name>
    <message>
        <source>sent, along</source>
        <translation>envoyé, en long</translation>
    </message>
    <message>
        <source>sent, across</source>
        <translation>envoyé, en travers</translation>
    </message>
    <message>
        <source>measured outline, along</source>
        <translation>contour mesuré, en long</translation>
    </message>
    <message>
        <source>measured outline, across</source>
        <translation>contour mesuré, en travers</translation>
    </message>
    <message>
        <source>seam, as sewn</source>
        <translation>couture réelle</translation>
    </message>
    <message>
        <source>gap between the allowances</source>
        <translation>espace entre les marges</translation>
    </message>
    <message>
        <source>distance between the seams, on the back</source>
        <translation>distance entre les coutures, au dos</translation>
    </message>
    <message>
        <source>%1 must be more than nothing.</source>
        <translation>%1 doit dépasser zéro.</translation>
    </message>
    <message>
        <source>There is nothing to measure here.</source>
        <translation>Il n’y a rien à mesurer ici.</translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation>Cela n’a pas pu être enregistré.</translation>
    </message>
    <message>
        <source>Nothing can be changed now</source>
        <translation>Rien ne peut être changé</translation>
    </message>
    <message>
        <source>First mend what Fit says</source>
        <translation>Régler d’abord ce que dit «&#x202f;Prévoir&#x202f;»</translation>
    </message>
    <message>
        <source>Pins first</source>
        <translation>Épingles d’abord</translation>
    </message>
    <message>
        <source>First trim all its patches</source>
        <translation>Rogner d’abord toutes ses pièces</translation>
    </message>
    <message>
        <source>Everything is done.</source>
        <translation>Tout est fait.</translation>
    </message>
    <message>
        <source>Next, at %1: %2</source>
        <extracomment>%1 is a station&apos;s name, %2 what is to be done there</extracomment>
        <translation>Ensuite, sous «&#x202f;%1&#x202f;». %2</translation>
    </message>
    <message>
        <source>You were at: %1</source>
        <translation>En cours&#x202f;: %1</translation>
    </message>
    <message>
        <source>%1 Did you finish this?</source>
        <translation>%1 Est-ce fini&#x202f;?</translation>
    </message>
    <message>
        <source>That could not be recorded.</source>
        <translation>Cela n’a pas pu être noté.</translation>
    </message>
    <message>
        <source>That cannot be less than nothing.</source>
        <translation>Cela ne peut pas être moins que zéro.</translation>
    </message>
    <message>
        <source>By these measures: %1 hoop strips of %2 blocks, before %3 of %4. Look at Shop again.</source>
        <translation>Avec ces mesures&#x202f;: %1 bandes à broder de %2 blocs, au lieu de %3 de %4. Revoir les achats.</translation>
    </message>
    <message>
        <source>Turn the cloth round: its cut edge to your right.</source>
        <translation>Tourner le tissu d’un demi-tour&#x202f;: bord coupé à droite.</translation>
    </message>
    <message>
        <source>Turn the cloth round: its cut edge to your left.</source>
        <translation>Tourner le tissu d’un demi-tour&#x202f;: bord coupé à gauche.</translation>
    </message>
    <message>
        <source>First stitch all its blocks: %1 more</source>
        <extracomment>the strip that would be cut apart holds %1 blocks that are not stitched yet</extracomment>
        <translation>D’abord broder tous ses blocs&#x202f;: encore %1</translation>
    </message>
    <message>
        <source>%1, number %2</source>
        <extracomment>one of a row of figures: its name and its number, &quot;centre on the strip, number 2&quot;</extracomment>
        <translation>%1, numéro %2</translation>
    </message>
    <message>
        <source>First, at %1</source>
        <extracomment>%1 is a station&apos;s name; short: it stands on a button</extracomment>
        <translation>D’abord&#x202f;: %1</translation>
    </message>
    <message>
        <source>gap beside the batting, both sides together</source>
        <extracomment>beside the batting laid into the sashing of the test join, both sides added up</extracomment>
        <translation>espace à côté du molleton, les deux côtés ensemble</translation>
    </message>
    <message>
        <source>No cut here: nothing else is left on its strip.</source>
        <extracomment>the strip was cut apart; the block in hand is all that is left of it</extracomment>
        <translation>Pas de coupe ici&#x202f;: rien d’autre ne reste sur sa bande.</translation>
    </message>
    <message>
        <source>It is apart</source>
        <extracomment>a block has come off its strip</extracomment>
        <translation>Déjà séparé</translation>
    </message>
    <message>
        <source>the larger of %1 and %2</source>
        <extracomment>in the words of a sum: the one of two lengths that is larger</extracomment>
        <translation>le plus grand de %1 et %2</translation>
    </message>
    <message>
        <source>the largest of %1 and %2</source>
        <extracomment>the same of three or more; %1 is all but the last, with commas</extracomment>
        <translation>le plus grand de %1 et %2</translation>
    </message>
    <message>
        <source>%1, rounded up</source>
        <extracomment>in the words of a sum; what it is rounded up to stands in the list under it</extracomment>
        <translation>%1, arrondi au-dessus</translation>
    </message>
    <message>
        <source>%1, rounded up to a whole number</source>
        <translation>%1, arrondi au-dessus à l’entier</translation>
    </message>
    <message>
        <source>%1, rounded down to a whole number</source>
        <translation>%1, arrondi au-dessous à l’entier</translation>
    </message>
    <message>
        <source>the square root of %1</source>
        <translation>la racine carrée de %1</translation>
    </message>
    <message>
        <source>%1 first: %2 steps</source>
        <extracomment>%1 is a station&apos;s name, %2 how many steps there come first; short: it stands on a button</extracomment>
        <translation>D’abord&#x202f;: %1, %2&#xa0;étapes</translation>
    </message>
    <message>
        <source>First, at %1: test join</source>
        <translation>D’abord&#x202f;: %1, assemblage d’essai</translation>
    </message>
    <message>
        <source>First, at %1: test block</source>
        <extracomment>%1 is a station&apos;s name; the trial&apos;s block comes before cloth is cut; short: on a button</extracomment>
        <translation>D’abord&#x202f;: %1, bloc d’essai</translation>
    </message>
    <message>
        <source>First measure again</source>
        <extracomment>the readings of the piece&apos;s sides and diagonals cannot all be right; short: it stands on a button</extracomment>
        <translation>D’abord mesurer de nouveau</translation>
    </message>
    <message>
        <source>%1, from the piece you have</source>
        <extracomment>%1 is a cloth; the next strip is cut from a piece of it that she entered as what she has</extracomment>
        <translation>%1, du morceau disponible</translation>
    </message>
    <message>
        <source>overlap on the batting, both sides together</source>
        <extracomment>by how much edges lie over each other inside the sashing of the test join</extracomment>
        <translation>recouvrement sur le molleton, les deux côtés ensemble</translation>
    </message>
    <message>
        <source>overlap of the allowances</source>
        <translation>recouvrement des marges</translation>
    </message>
    <message>
        <source>thickness of the batting</source>
        <translation>épaisseur du molleton</translation>
    </message>
    <message>
        <source>Not all of it is read yet.</source>
        <translation>Tout n’est pas encore mesuré.</translation>
    </message>
    <message>
        <source>This strip is for the test block: one more than the %1 that Fit counts.</source>
        <extracomment>a hoop strip cut for the trial; the station Fit counts those of the piece itself</extracomment>
        <translation>Cette bande est pour le bloc d’essai&#x202f;: une de plus que les %1 comptées sous «&#x202f;Prévoir&#x202f;».</translation>
    </message>
    <message>
        <source>First press the block: it is cut cold and dry.</source>
        <extracomment>the block is trimmed next: warm or damp from the iron it is not at its size yet</extracomment>
        <translation>D’abord repasser le bloc&#x202f;: il se coupe froid et sec.</translation>
    </message>
</context>
<context>
    <name>matside::StockModel</name>
    <message>
        <source>1 piece</source>
        <extracomment>pieces of cloth she has already</extracomment>
        <translation>1 morceau</translation>
    </message>
    <message>
        <source>%1 pieces</source>
        <translation>%1 morceaux</translation>
    </message>
    <message>
        <source>a piece of</source>
        <translation>un morceau de</translation>
    </message>
    <message>
        <source>its length, along the selvage</source>
        <translation>longueur, le long de la lisière</translation>
    </message>
    <message>
        <source>its width, selvages off</source>
        <translation>largeur, sans les lisières</translation>
    </message>
    <message>
        <source>%1 × %2 of %3</source>
        <extracomment>a piece of cloth: length × width, and which cloth</extracomment>
        <translation>%3, %1 × %2</translation>
    </message>
    <message>
        <source>Say which cloth it is.</source>
        <translation>Indiquer de quel tissu il s’agit.</translation>
    </message>
    <message>
        <source>%1 pieces of one cloth are laid out together at most. Take a small one away first.</source>
        <translation>Au plus %1 morceaux d’un même tissu sont disposés ensemble. En retirer d’abord un petit.</translation>
    </message>
    <message>
        <source>This cloth is bought or begun, so its layout stays. Take the tick away first.</source>
        <translation>Ce tissu est acheté ou entamé&#x202f;: sa disposition reste. Ôter d’abord la coche.</translation>
    </message>
    <message>
        <source>This cannot be changed here.</source>
        <translation>Cela ne peut pas être changé ici.</translation>
    </message>
    <message>
        <source>Between %1 and %2.</source>
        <translation>Entre %1 et %2.</translation>
    </message>
    <message>
        <source>Strips of this piece are in a layout that stays.</source>
        <translation>Des bandes de ce morceau font partie d’une disposition qui reste.</translation>
    </message>
    <message>
        <source>Add this piece</source>
        <extracomment>adds the piece of cloth just entered</extracomment>
        <translation>Ajouter ce morceau</translation>
    </message>
    <message>
        <source>List %1 at Fit, add this piece</source>
        <extracomment>%1 is a use, &quot;back cloth&quot;: Fit has no cloth listed for it yet</extracomment>
        <translation>Inscrire sous «&#x202f;Prévoir&#x202f;», ajouter le morceau&#x202f;: %1</translation>
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
        <translation>au moins %1 de large entre les lisières</translation>
    </message>
    <message>
        <source>for 1 bobbin and the top</source>
        <translation>pour 1 canette et le fil du dessus</translation>
    </message>
    <message>
        <source>for %1 bobbins and the top</source>
        <translation>pour %1 canettes et le fil du dessus</translation>
    </message>
    <message>
        <source>quilting needles, a new one every 8 hours</source>
        <translation>aiguilles à quilter, une neuve toutes les 8 heures</translation>
    </message>
    <message>
        <source>All of it is in the basket.</source>
        <translation>Tout est dans le panier.</translation>
    </message>
    <message>
        <source>1 thing to find</source>
        <translation>1 chose à trouver</translation>
    </message>
    <message>
        <source>%1 things to find</source>
        <translation>%1 articles à trouver</translation>
    </message>
    <message>
        <source>%1 of thread</source>
        <translation>%1 de fil</translation>
    </message>
</context>
<context>
    <name>matside::TrimModel</name>
    <message>
        <source>on the outer stitches</source>
        <translation>sur la piqûre extérieure</translation>
    </message>
    <message>
        <source>on cut side 1</source>
        <translation>sur le côté coupé 1</translation>
    </message>
    <message>
        <source>on cut side 2</source>
        <translation>sur le côté coupé 2</translation>
    </message>
    <message>
        <source>Turn the block a quarter, never over. A cross line on side 1.</source>
        <translation>Tourner le bloc d’un quart de tour, ne jamais le retourner. Une ligne transversale sur le côté 1.</translation>
    </message>
    <message>
        <source>Side %1 cut, blade closed</source>
        <extracomment>the blade has cut this side and is closed again</extracomment>
        <translation>Côté %1 coupé, lame fermée</translation>
    </message>
    <message>
        <source>Turn it a quarter again. Both readings must agree.</source>
        <translation>Encore un quart de tour. Les deux lectures doivent concorder.</translation>
    </message>
    <message>
        <source>Turn it once more. Both must agree, a cross line on side 1 or 3.</source>
        <translation>Encore un quart de tour. Les deux doivent concorder, une ligne transversale sur le côté 1 ou 3.</translation>
    </message>
    <message>
        <source>Measure from the outer line, not the echo line; a cross line on the outline’s corner.</source>
        <translation>Mesurer depuis la ligne extérieure, pas la piqûre en écho&#x202f;; une ligne transversale au coin du contour.</translation>
    </message>
    <message>
        <source>%1, which decides: the stitches may lie off their line</source>
        <extracomment>%1 is the side the ruler&apos;s line lies on, &quot;on cut side 1&quot;</extracomment>
        <translation>%1, qui décide&#x202f;: la piqûre peut s’écarter de sa ligne</translation>
    </message>
    <message>
        <source>Line and stitches cross mid-side; they part by %1 at both corners.</source>
        <extracomment>the ruler is turned half the lean: its line and the stitched line cross in the middle of the side</extracomment>
        <translation>La ligne et la piqûre se croisent au milieu du côté&#x202f;; aux deux coins, elles s’écartent de %1.</translation>
    </message>
    <message>
        <source>Begin with the truest side: %1. A cross line through the outline’s corner.</source>
        <extracomment>%1 is a side of the block: &quot;bottom&quot;</extracomment>
        <translation>Commencer par le côté le plus droit&#x202f;: %1. Une ligne transversale par le coin du contour.</translation>
    </message>
    <message>
        <source>Turn it a quarter again. A cross line on the side cut before.</source>
        <translation>Encore un quart de tour. Une ligne transversale sur le côté coupé avant.</translation>
    </message>
    <message>
        <source>Measure its sides and diagonals before you cut.</source>
        <translation>Mesurer ses côtés et ses diagonales avant de couper.</translation>
    </message>
    <message>
        <source>Measure %1 too</source>
        <extracomment>%1 is the name of another block, &quot;A2&quot;</extracomment>
        <translation>Mesurer aussi %1</translation>
    </message>
    <message>
        <source>See the common size</source>
        <extracomment>on a button: it shows what a common size of all blocks would mean, before it is taken</extracomment>
        <translation>Voir la taille commune</translation>
    </message>
    <message>
        <source>Measure the block</source>
        <translation>Mesurer le bloc</translation>
    </message>
    <message>
        <source>Stitched again: measure it</source>
        <translation>Brodé de nouveau&#x202f;: mesurer</translation>
    </message>
    <message>
        <source>Measure it again</source>
        <translation>Mesurer de nouveau</translation>
    </message>
    <message>
        <source>Cut it anyway</source>
        <extracomment>on a button: a side of the block is cut although its measures say it should not be</extracomment>
        <translation>Couper quand même</translation>
    </message>
    <message>
        <source>%1, not %2: it centres this block, stitched %3</source>
        <extracomment>%1 is where the ruler&apos;s line lies, &quot;on the outer stitches&quot;; %2 the planned line, %3 the size within the block&apos;s stitches, not that it is cut to</extracomment>
        <translation>%1, pas %2&#x202f;: ainsi ce bloc, brodé %3, est centré</translation>
    </message>
    <message>
        <source>Planned cut %1. No figure holds before it is measured.</source>
        <extracomment>cut: the size of the trimmed block, not that within its stitches</extracomment>
        <translation>Coupe prévue&#x202f;: %1. Aucun chiffre ne vaut avant la mesure.</translation>
    </message>
    <message>
        <source>Planned cut %1. No figure holds before its readings agree.</source>
        <translation>Coupe prévue&#x202f;: %1. Aucune cote ne vaut avant que ses mesures concordent.</translation>
    </message>
    <message>
        <source>Planned cut %1, but it is not to be cut as it is.</source>
        <translation>Coupe prévue&#x202f;: %1, mais il n’est pas à couper ainsi.</translation>
    </message>
    <message>
        <source>Planned cut %1. No figure holds before the common size is known.</source>
        <translation>Coupe prévue&#x202f;: %1. Aucune cote ne vaut avant que la taille commune soit connue.</translation>
    </message>
    <message>
        <source>Planned cut %1. If the common size is taken, cut %2.</source>
        <extracomment>the common size of the blocks measured, taken for all that are not cut yet</extracomment>
        <translation>Coupe prévue&#x202f;: %1. Si la taille commune est prise&#x202f;: %2.</translation>
    </message>
    <message>
        <source>Logged off size: stitched %1.</source>
        <extracomment>the size of a block&apos;s stitched outline as it was logged at the hoop, not as planned</extracomment>
        <translation>Noté hors cote&#x202f;: brodé %1.</translation>
    </message>
    <message>
        <source>Side %1: %2</source>
        <extracomment>%1 counts a block&apos;s four sides in the order they are cut; %2 is which of its own it is, &quot;right&quot;</extracomment>
        <translation>Côté %1&#x202f;: %2</translation>
    </message>
    <message>
        <source>%1, side %2: %3</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;; %2 counts its four sides; %3 is one, &quot;right&quot;</extracomment>
        <translation>%1, côté %2&#x202f;: %3</translation>
    </message>
    <message>
        <source>Side %1 of 4</source>
        <translation>Côté %1 sur 4</translation>
    </message>
    <message>
        <source>%1, side %2 of 4</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;; %2 counts its four sides</extracomment>
        <translation>%1, côté %2 sur 4</translation>
    </message>
</context>
<context>
    <name>matside::WouldFit</name>
    <message>
        <source>Between 1 and %1 blocks.</source>
        <translation>Entre 1 et %1 blocs.</translation>
    </message>
    <message>
        <source>It must be more than nothing.</source>
        <translation>Il faut plus que zéro.</translation>
    </message>
    <message>
        <source>This cannot be changed here.</source>
        <translation>Cela ne peut pas être changé ici.</translation>
    </message>
    <message>
        <source>%1 × %2 blocks of %3</source>
        <extracomment>columns × rows blocks of a size</extracomment>
        <translation>%1 × %2 blocs de %3</translation>
    </message>
    <message>
        <source>{%1} × %2</source>
        <extracomment>along × across</extracomment>
        <translation>{%1} × %2</translation>
    </message>
    <message>
        <source>%1 over</source>
        <extracomment>the piece hangs over the table&apos;s edge by so much</extracomment>
        <translation>%1 de retombée</translation>
    </message>
    <message>
        <source>%1 bare</source>
        <extracomment>so much of the table shows beside the piece</extracomment>
        <translation>%1 libre</translation>
    </message>
    <message>
        <source>%1 all round</source>
        <translation>%1 tout autour</translation>
    </message>
    <message>
        <source>%1 at the ends, %2 at the sides</source>
        <translation>%1 aux bouts, %2 aux côtés</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>corners %1 over</source>
        <extracomment>on a round table: the corners lie so far from its edge</extracomment>
        <translation>coins à %1 au-dehors</translation>
    </message>
    <message>
        <source>corners %1 inside</source>
        <translation>coins à %1 en dedans</translation>
    </message>
    <message>
        <source>washed %1</source>
        <translation>lavé %1</translation>
    </message>
    <message>
        <source>Sashing %1.</source>
        <extracomment>sashing: the strip between two blocks</extracomment>
        <translation>Bande intermédiaire %1.</translation>
    </message>
    <message>
        <source>In the hoop “%1”.</source>
        <translation>Dans le cadre «&#x202f;%1&#x202f;».</translation>
    </message>
    <message>
        <source>Strips take %1 a layer.</source>
        <extracomment>cloth of each layer for the hoop strips</extracomment>
        <translation>Les bandes prennent %1 par épaisseur.</translation>
    </message>
    <message>
        <source>to make, before washing, %1</source>
        <translation>à faire, avant lavage, %1</translation>
    </message>
    <message>
        <source>table shows</source>
        <translation>table visible</translation>
    </message>
    <message>
        <source>hangs over</source>
        <translation>retombée</translation>
    </message>
    <message>
        <source>over at each end</source>
        <translation>retombée à chaque bout</translation>
    </message>
    <message>
        <source>bare at each end</source>
        <translation>libre à chaque bout</translation>
    </message>
    <message>
        <source>At each end</source>
        <translation>À chaque bout</translation>
    </message>
    <message>
        <source>over at each side</source>
        <translation>retombée de chaque côté</translation>
    </message>
    <message>
        <source>bare at each side</source>
        <translation>libre de chaque côté</translation>
    </message>
    <message>
        <source>At each side</source>
        <translation>De chaque côté</translation>
    </message>
    <message>
        <source>finished, along</source>
        <translation>fini, en long</translation>
    </message>
    <message>
        <source>finished, across</source>
        <translation>fini, en travers</translation>
    </message>
    <message>
        <source>washing takes</source>
        <translation>retrait au lavage</translation>
    </message>
    <message>
        <source>smallest block</source>
        <translation>bloc le plus petit</translation>
    </message>
    <message>
        <source>largest block</source>
        <translation>bloc le plus grand</translation>
    </message>
    <message>
        <source>block sizes</source>
        <translation>tailles de bloc</translation>
    </message>
    <message>
        <source>by quarters</source>
        <translation>par quarts de pouce</translation>
    </message>
    <message>
        <source>by 5 mm</source>
        <translation>par 5&#xa0;mm</translation>
    </message>
    <message>
        <source>on every mark</source>
        <translation>sur chaque trait</translation>
    </message>
    <message>
        <source>wider sashing</source>
        <translation>bandes intermédiaires plus larges</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>up to 1/8 in more</source>
        <translation>jusqu’à 1/8 in de plus</translation>
    </message>
    <message>
        <source>up to 3 mm more</source>
        <translation>jusqu’à 3&#xa0;mm de plus</translation>
    </message>
    <message>
        <source>blocks at most</source>
        <translation>blocs au plus</translation>
    </message>
    <message>
        <source>leaf in: %1 at the ends</source>
        <translation>avec rallonge&#x202f;: %1 aux bouts</translation>
    </message>
    <message>
        <source>leaf out: %1 at the ends</source>
        <extracomment>the table&apos;s leaf is out; %1 = &quot;12 in bare&quot; or &quot;3 in over&quot;</extracomment>
        <translation>sans rallonge&#x202f;: %1 aux bouts</translation>
    </message>
    <message>
        <source>leaf in</source>
        <translation>avec rallonge</translation>
    </message>
    <message>
        <source>leaf out</source>
        <translation>sans rallonge</translation>
    </message>
    <message>
        <source>the leaf</source>
        <extracomment>the board laid into a table to lengthen it</extracomment>
        <translation>la rallonge</translation>
    </message>
    <message>
        <source>out</source>
        <translation>ôtée</translation>
    </message>
    <message>
        <source>in</source>
        <translation>posée</translation>
    </message>
    <message>
        <source>No mats lie on this table.</source>
        <translation>Aucun set de table ne tient sur cette table.</translation>
    </message>
    <message>
        <source>Between 1 and %1 mats: no more lie on this table.</source>
        <translation>Entre 1 et %1 sets de table&#x202f;: il n’en tient pas plus sur cette table.</translation>
    </message>
    <message>
        <source>1 mat of %1</source>
        <extracomment>place mats: so many, and the size of each</extracomment>
        <translation>1 set de table de %1</translation>
    </message>
    <message>
        <source>%1 mats of %2</source>
        <translation>%1 sets de table de %2</translation>
    </message>
    <message>
        <source>size of the mats</source>
        <translation>taille des sets de table</translation>
    </message>
    <message>
        <source>the mats lie</source>
        <translation>les sets de table sont posés</translation>
    </message>
    <message>
        <source>along the sides</source>
        <extracomment>place mats along the two longer sides of a table</extracomment>
        <translation>le long des côtés</translation>
    </message>
    <message>
        <source>at the ends too</source>
        <extracomment>place mats along the sides of a table and at its two ends</extracomment>
        <translation>aussi aux bouts</translation>
    </message>
    <message>
        <source>mats, %1 at most</source>
        <extracomment>so many place mats lie on the table</extracomment>
        <translation>sets de table, %1 au plus</translation>
    </message>
    <message>
        <source>for the table</source>
        <translation>pour la table</translation>
    </message>
    <message>
        <source>one piece</source>
        <translation>un seul ouvrage</translation>
    </message>
    <message>
        <source>a set of mats</source>
        <extracomment>place mats, one for each who sits at the table</extracomment>
        <translation>des sets de table</translation>
    </message>
    <message>
        <source>blocks in one, at most</source>
        <translation>blocs dans chacun, au plus</translation>
    </message>
    <message>
        <source>One mat: no more lie on this table.</source>
        <translation>Un set de table&#x202f;: il n’en tient pas plus sur cette table.</translation>
    </message>
    <message>
        <source>1 block</source>
        <translation>1 bloc</translation>
    </message>
    <message>
        <source>%1 blocks</source>
        <translation>%1 blocs</translation>
    </message>
    <message>
        <source>1 strip</source>
        <translation>1 bande</translation>
    </message>
    <message>
        <source>%1 strips</source>
        <translation>%1 bandes</translation>
    </message>
    <message>
        <source>1 hour</source>
        <translation>1 heure</translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation>%1 heures</translation>
    </message>
    <message>
        <source>%1 mats: %2 and %3 spare, %4, %5</source>
        <extracomment>%1 place mats; &quot;12 blocks&quot; in all of them; %3 spare blocks that they share; &quot;4 strips&quot;, &quot;3 hours&quot;</extracomment>
        <translation>%1 sets de table&#x202f;: %2 et %3 de réserve, %4, %5</translation>
    </message>
    <message>
        <source>%1 × %2 of %3</source>
        <extracomment>a layout in short: columns × rows of blocks of a size</extracomment>
        <translation>%1 × %2 de %3</translation>
    </message>
</context>
</TS>
