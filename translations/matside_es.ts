<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en_GB">
<context>
    <name>ActsPage</name>
    <message>
        <source>Back to 1</source>
        <extracomment>on a sheet of numbered pictures that stand on several leaves: to the first picture</extracomment>
        <translation>Volver al 1</translation>
    </message>
    <message>
        <source>On to %1</source>
        <extracomment>the same: to the leaf that begins with picture %1</extracomment>
        <translation>Seguir en %1</translation>
    </message>
</context>
<context>
    <name>AmountInHand</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1, menos</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1, más</translation>
    </message>
</context>
<context>
    <name>AmountRow</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1, menos</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1, más</translation>
    </message>
</context>
<context>
    <name>Band</name>
    <message>
        <source>Shelf</source>
        <extracomment>where the projects are kept</extracomment>
        <translation>Estante</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Read</source>
        <extracomment>reads the step out; one short word on a narrow cell</extracomment>
        <translation>Leer</translation>
    </message>
    <message>
        <source>Read this step aloud</source>
        <translation>Leer este paso en voz alta</translation>
    </message>
</context>
<context>
    <name>BattingSheet</name>
    <message>
        <source>Add this size</source>
        <extracomment>adds the size of a package of batting to those held against the roll</extracomment>
        <translation>Añadir este tamaño</translation>
    </message>
    <message>
        <source>Forget the sizes</source>
        <extracomment>takes all sizes of packages off the list</extracomment>
        <translation>Olvidar los tamaños</translation>
    </message>
</context>
<context>
    <name>BindingSection</name>
    <message>
        <source>seam</source>
        <translation>costura</translation>
    </message>
    <message>
        <source>past the seam</source>
        <extracomment>so far the fold of the binding lies beyond the seam, on the back</extracomment>
        <translation>tras la costura</translation>
    </message>
    <message>
        <source>strip, cut</source>
        <extracomment>the width a strip of binding is cut</extracomment>
        <translation>tira, cortada</translation>
    </message>
    <message>
        <source>pressed in half</source>
        <extracomment>the strip of binding, folded along its middle with the iron</extracomment>
        <translation>planchada por la mitad</translation>
    </message>
</context>
<context>
    <name>BlockLegend</name>
    <message>
        <source>as planned</source>
        <extracomment>beside a beaded line: the block&apos;s outline as it should be</extracomment>
        <translation>como se planeó</translation>
    </message>
    <message>
        <source>drawn %1 times as far off</source>
        <translation>desvío dibujado %1 veces mayor</translation>
    </message>
</context>
<context>
    <name>CardBar</name>
    <message>
        <source>A bar as long as a bank card</source>
        <translation>Una barra tan larga como una tarjeta de banco</translation>
    </message>
    <message>
        <source>Bar shorter</source>
        <translation>Barra más corta</translation>
    </message>
    <message>
        <source>Bar longer</source>
        <translation>Barra más larga</translation>
    </message>
    <message>
        <source>Lay a bank card on the bar; make the bar as long as the card.</source>
        <translation>Poner una tarjeta de banco sobre la barra; hacer la barra tan larga como la tarjeta.</translation>
    </message>
</context>
<context>
    <name>Demo</name>
    <message>
        <source>Reading-room runner</source>
        <extracomment>the demo&apos;s name: a runner is a long narrow table topper</extracomment>
        <translation>Camino de mesa</translation>
    </message>
    <message>
        <source>the square magnetic one</source>
        <extracomment>a hoop&apos;s own name</extracomment>
        <translation>el cuadrado magnético</translation>
    </message>
    <message>
        <source>oat linen</source>
        <extracomment>a cloth&apos;s own name, like those that follow</extracomment>
        <translation>lino avena</translation>
    </message>
    <message>
        <source>small blue print</source>
        <translation>estampado azul menudo</translation>
    </message>
    <message>
        <source>low-loft cotton</source>
        <extracomment>batting that stays flat</extracomment>
        <translation>algodón fino</translation>
    </message>
    <message>
        <source>dark teal</source>
        <translation>petróleo oscuro</translation>
    </message>
    <message>
        <source>rust</source>
        <translation>teja</translation>
    </message>
    <message>
        <source>cream</source>
        <translation>crema</translation>
    </message>
    <message>
        <source>hull</source>
        <extracomment>a patch: the hull of a boat</extracomment>
        <translation>casco</translation>
    </message>
    <message>
        <source>sail</source>
        <translation>vela de barco</translation>
    </message>
    <message>
        <source>long</source>
        <extracomment>a ruler&apos;s own name: the long one</extracomment>
        <translation>larga</translation>
    </message>
    <message>
        <source>square</source>
        <extracomment>a ruler&apos;s own name: the square one</extracomment>
        <translation>cuadrada</translation>
    </message>
</context>
<context>
    <name>DimensionSteps</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1, menos</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1, más</translation>
    </message>
</context>
<context>
    <name>DrawerFront</name>
    <message>
        <source>open</source>
        <extracomment>of a group in a list: what it holds is seen, or is not</extracomment>
        <translation>abierto</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrado</translation>
    </message>
</context>
<context>
    <name>DrawnInBlock</name>
    <message>
        <source>along</source>
        <extracomment>along the strip</extracomment>
        <translation>a lo largo</translation>
    </message>
    <message>
        <source>across</source>
        <extracomment>across the strip</extracomment>
        <translation>a lo ancho</translation>
    </message>
    <message>
        <source>as sent</source>
        <extracomment>the block&apos;s outline as the machine was told it</extracomment>
        <translation>como se envió</translation>
    </message>
    <message>
        <source>as it came, difference × %1</source>
        <extracomment>the stitched block, smaller than it was sent; %1 is 2, 5, 10 or 20</extracomment>
        <translation>como salió, diferencia × %1</translation>
    </message>
</context>
<context>
    <name>EdgeAside</name>
    <message>
        <source>Measure the piece</source>
        <translation>Medir la pieza</translation>
    </message>
    <message>
        <source>Four sides and two diagonals, lying flat.</source>
        <translation>Cuatro lados y dos diagonales, en plano.</translation>
    </message>
    <message>
        <source>Stay-stitch {3 mm} from the raw edge across every sashing end.</source>
        <translation>Hacer una costura de refuerzo a {3 mm} del borde cortado, sobre cada extremo de las tiras de unión.</translation>
    </message>
    <message>
        <source>Stay-stitch {1/8 in} from the raw edge across every sashing end.</source>
        <translation>Hacer una costura de refuerzo a {1/8 in} del borde cortado, sobre cada extremo de las tiras de unión.</translation>
    </message>
    <message>
        <source>Where the joins fall</source>
        <translation>Dónde caen los empalmes</translation>
    </message>
    <message>
        <source>Seam {%1}, in section</source>
        <translation>Costura {%1}, en sección</translation>
    </message>
    <message>
        <source>Care, label, sleeve, pillow</source>
        <translation>Cuidados, etiqueta, manga, cojín</translation>
    </message>
    <message>
        <source>How the frame goes on</source>
        <translation>Cómo se pone el marco</translation>
    </message>
</context>
<context>
    <name>EdgeBound</name>
    <message>
        <source>The bound edge in section, seam %1</source>
        <translation>El borde ribeteado en sección, costura %1</translation>
    </message>
</context>
<context>
    <name>EdgeCare</name>
    <message>
        <source>Care, label, sleeve, pillow</source>
        <translation>Cuidados, etiqueta, manga, cojín</translation>
    </message>
    <message>
        <source>As a pillow, from the back</source>
        <translation>Como cojín, por detrás</translation>
    </message>
</context>
<context>
    <name>EdgeCornerNear</name>
    <message>
        <source>A corner close to</source>
        <translation>Una esquina de cerca</translation>
    </message>
    <message>
        <source>along</source>
        <extracomment>so many scallops along the piece</extracomment>
        <translation>a lo largo</translation>
    </message>
    <message>
        <source>across</source>
        <extracomment>so many scallops across the piece</extracomment>
        <translation>a lo ancho</translation>
    </message>
</context>
<context>
    <name>EdgeCorners</name>
    <message>
        <source>square</source>
        <translation>rectas</translation>
    </message>
    <message>
        <source>rounded</source>
        <translation>redondeadas</translation>
    </message>
    <message>
        <source>radius</source>
        <translation>radio</translation>
    </message>
    <message>
        <source>Radius of the corners</source>
        <translation>Radio de las esquinas</translation>
    </message>
    <message>
        <source>circle</source>
        <translation>círculo</translation>
    </message>
    <message>
        <source>round ends</source>
        <translation>extremos redondos</translation>
    </message>
    <message>
        <source>scallops</source>
        <translation>ondas</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profundidad</translation>
    </message>
    <message>
        <source>Depth of the scallops</source>
        <translation>Profundidad de las ondas</translation>
    </message>
    <message>
        <source>scallops along</source>
        <translation>ondas a lo largo</translation>
    </message>
    <message>
        <source>scallops across</source>
        <translation>ondas a lo ancho</translation>
    </message>
    <message>
        <source>Corners</source>
        <translation>Esquinas</translation>
    </message>
</context>
<context>
    <name>EdgeDrawing</name>
    <message>
        <source>begin</source>
        <extracomment>the place where the binding begins and closes</extracomment>
        <translation>inicio</translation>
    </message>
    <message>
        <source>deep</source>
        <extracomment>how deep the scallops are cut</extracomment>
        <translation>de fondo</translation>
    </message>
    <message>
        <source>radius</source>
        <extracomment>of a rounded corner</extracomment>
        <translation>radio</translation>
    </message>
</context>
<context>
    <name>EdgeFrame</name>
    <message>
        <source>The frame</source>
        <translation>El marco</translation>
    </message>
</context>
<context>
    <name>EdgeJoins</name>
    <message>
        <source>Lay the binding round once before you sew</source>
        <translation>Probar el ribete todo alrededor antes de coser</translation>
    </message>
    <message>
        <source>Seen from the front, the strip laid clockwise. Each place is the middle of a seam at 45°.</source>
        <translation>Visto por delante, con la tira en el sentido del reloj. Cada lugar es el centro de una costura a 45°.</translation>
    </message>
    <message>
        <source>At top and bottom measured from the left, at the sides from the top.</source>
        <extracomment>how far each join of the binding lies from a corner of the piece</extracomment>
        <translation>Arriba y abajo, medido desde la izquierda; a los lados, desde arriba.</translation>
    </message>
</context>
<context>
    <name>EdgeMeasure</name>
    <message>
        <source>What is not read stands as planned. The limits are common practice; no published ones are known.</source>
        <translation>Lo que no se mide queda como se planeó. Los límites son de uso común; no se conocen publicados.</translation>
    </message>
</context>
<context>
    <name>EdgePage</name>
    <message>
        <source>The piece. %1</source>
        <translation>La pieza. %1</translation>
    </message>
    <message>
        <source>The binding laid round. %1</source>
        <translation>El ribete puesto alrededor. %1</translation>
    </message>
    <message>
        <source>The finished piece</source>
        <translation>La pieza acabada</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>The piece with its frame</source>
        <translation>La pieza con su marco</translation>
    </message>
    <message>
        <source>Measure all six, raw edge to raw edge.</source>
        <translation>Tomar las seis medidas, de borde cortado a borde cortado.</translation>
    </message>
</context>
<context>
    <name>EdgePins</name>
    <message>
        <source>pins in</source>
        <translation>alfileres puestos</translation>
    </message>
    <message>
        <source>pins out</source>
        <translation>alfileres sacados</translation>
    </message>
    <message>
        <source>%1 less</source>
        <translation>%1, menos</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1, más</translation>
    </message>
    <message>
        <source>No pins were used</source>
        <translation>No se usaron alfileres</translation>
    </message>
    <message>
        <source>I know where they are</source>
        <translation>Sé dónde están</translation>
    </message>
    <message>
        <source>I know where it is</source>
        <translation>Sé dónde está</translation>
    </message>
</context>
<context>
    <name>EdgeSection</name>
    <message>
        <source>Double fold: cut {%1}, pressed in half to {%2}</source>
        <translation>Doblez doble: cortar {%1}, planchar por la mitad a {%2}</translation>
    </message>
    <message>
        <source>Single fold: cut {%1}</source>
        <translation>Doblez simple: cortar {%1}</translation>
    </message>
    <message>
        <source>On the back the fold just covers the seam; sewn down by hand.</source>
        <translation>Por detrás, el doblez cubre justo la costura; cosido a mano.</translation>
    </message>
    <message>
        <source>On the back the fold passes the seam, so that stitching from the front catches it.</source>
        <translation>Por detrás, el doblez pasa de la costura, para que el pespunte desde delante lo agarre.</translation>
    </message>
</context>
<context>
    <name>FieldItem</name>
    <message>
        <source>not said</source>
        <extracomment>a price nobody has entered</extracomment>
        <translation>sin indicar</translation>
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
        <translation>no</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
</context>
<context>
    <name>FieldValue</name>
    <message>
        <source>%1, worked out</source>
        <extracomment>%1 is a value that the plan works out by itself</extracomment>
        <translation>%1, calculado</translation>
    </message>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1, menos</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1, más</translation>
    </message>
</context>
<context>
    <name>FieldsProblem</name>
    <message>
        <source>Look at this</source>
        <extracomment>the head of a line that warns of something but stops nothing</extracomment>
        <translation>Mirar esto</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <extracomment>after the first of several cautions; %1 is how many more there are</extracomment>
        <translation>y %1 más</translation>
    </message>
</context>
<context>
    <name>FieldsSheet</name>
    <message>
        <source>What would fit</source>
        <translation>Lo que cabría</translation>
    </message>
    <message>
        <source>What follows</source>
        <translation>Lo que resulta</translation>
    </message>
    <message>
        <source>A file of this project</source>
        <translation>Un archivo de este proyecto</translation>
    </message>
    <message>
        <source>Light and dark</source>
        <extracomment>the page on how light and how dark the cloths are</extracomment>
        <translation>Claro y oscuro</translation>
    </message>
</context>
<context>
    <name>FigureRow</name>
    <message>
        <source>not tried yet</source>
        <translation>sin probar</translation>
    </message>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a figure does</extracomment>
        <translation>ver el cálculo</translation>
    </message>
</context>
<context>
    <name>FiguresColumn</name>
    <message>
        <source>Dotted figures: your trial may still change them.</source>
        <extracomment>how figures are marked that the trial has not confirmed</extracomment>
        <translation>Cifras subrayadas con puntos: la prueba aún puede cambiarlas.</translation>
    </message>
</context>
<context>
    <name>FinishedSize</name>
    <message>
        <source>Finished %1 by %2</source>
        <translation>Acabada: %1 por %2</translation>
    </message>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a figure does</extracomment>
        <translation>ver el cálculo</translation>
    </message>
</context>
<context>
    <name>FirstRun</name>
    <message>
        <source>The shelf is empty.</source>
        <translation>El estante está vacío.</translation>
    </message>
    <message>
        <source>Begin with the demo, ready to cut, or with nine blocks of your own.</source>
        <translation>Empezar con el ejemplo, listo para cortar, o con una pieza nueva de nueve bloques.</translation>
    </message>
    <message>
        <source>Open the demo</source>
        <translation>Abrir el ejemplo</translation>
    </message>
    <message>
        <source>Pieces put away: %1</source>
        <extracomment>every piece was put away, out of sight; %1 is how many</extracomment>
        <translation>Piezas apartadas: %1</translation>
    </message>
    <message>
        <source>Nothing else is on the shelf. What was put away can be brought back.</source>
        <translation>No hay nada más en el estante. Lo apartado se puede recuperar.</translation>
    </message>
    <message>
        <source>Show what is put away</source>
        <translation>Ver lo apartado</translation>
    </message>
</context>
<context>
    <name>FitLayouts</name>
    <message>
        <source>What would fit</source>
        <translation>Lo que cabría</translation>
    </message>
    <message>
        <source>Show what fits</source>
        <translation>Ver lo que cabe</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Volver</translation>
    </message>
    <message>
        <source>Take this layout</source>
        <extracomment>layout: how many blocks across and down, their size and the sashing between them</extracomment>
        <translation>Elegir este reparto</translation>
    </message>
    <message>
        <source>Open for reading only.</source>
        <translation>Abierto solo para leer.</translation>
    </message>
    <message>
        <source>Press one to see it on the table.</source>
        <translation>Tocar uno para verlo sobre la mesa.</translation>
    </message>
    <message>
        <source>Mend it</source>
        <extracomment>leads to the field that must be mended first</extracomment>
        <translation>Arreglarlo</translation>
    </message>
    <message>
        <source>The blocks</source>
        <extracomment>leads to what is wanted of the blocks, or back to what is wanted at the table</extracomment>
        <translation>Los bloques</translation>
    </message>
    <message>
        <source>The table</source>
        <translation>La mesa</translation>
    </message>
</context>
<context>
    <name>FitMade</name>
    <message>
        <source>A change here leaves it as it is.</source>
        <extracomment>what is made: the strips and blocks named before</extracomment>
        <translation>Un cambio aquí lo deja como está.</translation>
    </message>
</context>
<context>
    <name>FitScene</name>
    <message>
        <source>Show the back</source>
        <extracomment>the other face of the piece, in the drawing</extracomment>
        <translation>Ver la trasera</translation>
    </message>
    <message>
        <source>Show the front</source>
        <translation>Ver la delantera</translation>
    </message>
    <message>
        <source>%1 mats on the table, each %2 by %3</source>
        <extracomment>place mats: so many, and their two sides</extracomment>
        <translation>%1 manteles individuales sobre la mesa, cada uno de %2 por %3</translation>
    </message>
    <message>
        <source>The piece on the table, %1 by %2</source>
        <translation>La pieza sobre la mesa, %1 por %2</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>columnas</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>filas</translation>
    </message>
    <message>
        <source>block</source>
        <translation>bloque</translation>
    </message>
</context>
<context>
    <name>FitWanted</name>
    <message>
        <source>Change what is wanted</source>
        <translation>Cambiar lo deseado</translation>
    </message>
    <message>
        <source>Wanted: %1</source>
        <extracomment>what the layouts below are looked for: so much bare table, or a finished size</extracomment>
        <translation>Se desea: %1</translation>
    </message>
    <message>
        <source>change</source>
        <translation>cambiar</translation>
    </message>
</context>
<context>
    <name>FootFigure</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>show the working</source>
        <translation>ver el cálculo</translation>
    </message>
</context>
<context>
    <name>GalleryCell</name>
    <message>
        <source>Block %1, %2</source>
        <extracomment>spoken: a block&apos;s name and its state</extracomment>
        <translation>Bloque %1, %2</translation>
    </message>
    <message>
        <source>with a note</source>
        <extracomment>spoken: words were written of the block</extracomment>
        <translation>con nota</translation>
    </message>
</context>
<context>
    <name>GalleryNotes</name>
    <message>
        <source>Block %1</source>
        <translation>Bloque %1</translation>
    </message>
    <message>
        <source>Nothing is noted of block %1 yet</source>
        <translation>Aún no hay notas del bloque %1</translation>
    </message>
    <message>
        <source>Back to the gallery</source>
        <translation>Volver a las fotos</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is a block&apos;s name, %2 its measured size</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Delantera</translation>
    </message>
    <message>
        <source>Back face</source>
        <translation>Trasera</translation>
    </message>
</context>
<context>
    <name>GalleryPage</name>
    <message>
        <source>Back to the work</source>
        <translation>Volver al trabajo</translation>
    </message>
    <message>
        <source>%1 of %2 blocks have a photograph</source>
        <extracomment>%1 of %2 blocks have a photograph</extracomment>
        <translation>%1 de %2 bloques tienen foto</translation>
    </message>
</context>
<context>
    <name>GroupHead</name>
    <message>
        <source>open</source>
        <extracomment>of a group in a list: what it holds is seen, or is not</extracomment>
        <translation>abierto</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrado</translation>
    </message>
</context>
<context>
    <name>HelperView</name>
    <message>
        <source>Nothing left to do here</source>
        <translation>Aquí no queda nada por hacer</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>No step is at hand.</source>
        <translation>No hay ningún paso a la vista.</translation>
    </message>
</context>
<context>
    <name>HelperWindow</name>
    <message>
        <source>For helpers: Matside</source>
        <translation>Para ayudantes: Matside</translation>
    </message>
    <message>
        <source>Close</source>
        <extracomment>closes the helper&apos;s window</extracomment>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>HoldButton</name>
    <message>
        <source>hold for a second</source>
        <extracomment>how a button that destroys is pressed</extracomment>
        <translation>mantener pulsado</translation>
    </message>
</context>
<context>
    <name>HoopAside</name>
    <message>
        <source>Last outline ended at {%1}</source>
        <translation>El último contorno terminó en {%1}</translation>
    </message>
    <message>
        <source>Stops and patches</source>
        <translation>Paradas y parches</translation>
    </message>
    <message>
        <source>Gaps can yield sashing</source>
        <translation>Los huecos pueden dar tiras de unión</translation>
    </message>
    <message>
        <source>Hoops</source>
        <translation>Bastidores</translation>
    </message>
    <message>
        <source>Pictures and notes</source>
        <translation>Fotos y notas</translation>
    </message>
</context>
<context>
    <name>HoopChoice</name>
    <message>
        <source>Another hoop</source>
        <translation>Otro bastidor</translation>
    </message>
    <message>
        <source>Hoops</source>
        <translation>Bastidores</translation>
    </message>
</context>
<context>
    <name>HoopDrawUp</name>
    <message>
        <source>Draw-up</source>
        <extracomment>draw-up: how much the stitching shrinks the block</extracomment>
        <translation>Merma</translation>
    </message>
    <message>
        <source>Take it for the blocks to come</source>
        <translation>Tomarla para los bloques que vienen</translation>
    </message>
    <message>
        <source>Taken for the blocks to come.</source>
        <translation>Tomada para los bloques que vienen.</translation>
    </message>
</context>
<context>
    <name>HoopDrawing</name>
    <message>
        <source>the frame’s outside, edge to edge</source>
        <translation>exterior del bastidor, de borde a borde</translation>
    </message>
    <message>
        <source>the opening inside the frame</source>
        <translation>la abertura del bastidor</translation>
    </message>
    <message>
        <source>the field: as far as the needle stitches</source>
        <extracomment>field: as far as the needle can stitch</extracomment>
        <translation>el campo de bordado: hasta donde llega la aguja</translation>
    </message>
</context>
<context>
    <name>HoopMeasure</name>
    <message>
        <source>A hoop’s name is not its field. Measure all three.</source>
        <translation>El nombre de un bastidor no es su campo de bordado. Medir los tres.</translation>
    </message>
    <message>
        <source>where the %1 is measured</source>
        <translation>dónde se mide: %1</translation>
    </message>
    <message>
        <source>two rings</source>
        <translation>dos aros</translation>
    </message>
    <message>
        <source>magnetic</source>
        <translation>magnético</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>sin medir</translation>
    </message>
    <message>
        <source>Side of the machine’s bracket</source>
        <extracomment>bracket: the arm that carries the hoop; on that side the strip would run into the machine</extracomment>
        <translation>Lado del soporte de la máquina</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>Hold to take it off the shelf</source>
        <translation>Mantener para quitarlo del estante</translation>
    </message>
    <message>
        <source>All hoops</source>
        <translation>Todos los bastidores</translation>
    </message>
</context>
<context>
    <name>HoopPage</name>
    <message>
        <source>Pictures and notes</source>
        <translation>Fotos y notas</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
</context>
<context>
    <name>HoopRack</name>
    <message>
        <source>%1 to spare</source>
        <extracomment>what the block leaves of the hoop&apos;s field</extracomment>
        <translation>sobran %1</translation>
    </message>
    <message>
        <source>%1 too large</source>
        <extracomment>how much the block is over the hoop&apos;s field</extracomment>
        <translation>%1 más grande</translation>
    </message>
    <message>
        <source>Its measures</source>
        <translation>Sus medidas</translation>
    </message>
</context>
<context>
    <name>HoopShelf</name>
    <message>
        <source>stitching field, along</source>
        <translation>campo de bordado, a lo largo</translation>
    </message>
    <message>
        <source>stitching field, across</source>
        <translation>campo de bordado, a lo ancho</translation>
    </message>
    <message>
        <source>opening inside the frame, along</source>
        <translation>abertura del bastidor, a lo largo</translation>
    </message>
    <message>
        <source>opening inside the frame, across</source>
        <translation>abertura del bastidor, a lo ancho</translation>
    </message>
    <message>
        <source>outside of the frame, along</source>
        <translation>exterior del bastidor, a lo largo</translation>
    </message>
    <message>
        <source>outside of the frame, across</source>
        <translation>exterior del bastidor, a lo ancho</translation>
    </message>
    <message>
        <source>thickest sandwich it holds</source>
        <extracomment>sandwich: top, batting and back together</extracomment>
        <translation>capas más gruesas que sujeta</translation>
    </message>
</context>
<context>
    <name>HoopStops</name>
    <message>
        <source>Block %1, stop by stop</source>
        <translation>Bloque %1, parada a parada</translation>
    </message>
    <message>
        <source>New bobbin in</source>
        <translation>Canilla nueva puesta</translation>
    </message>
    <message>
        <source>Stop by stop</source>
        <translation>Parada a parada</translation>
    </message>
</context>
<context>
    <name>HoopZero</name>
    <message>
        <source>The last outline really ended at</source>
        <translation>Fin real del último contorno</translation>
    </message>
    <message>
        <source>from the zero end</source>
        <translation>desde el extremo cero</translation>
    </message>
    <message>
        <source>Measure from the zero end, not from the block before: then no error piles up.</source>
        <translation>Medir desde el extremo cero, no desde el bloque anterior: así no se suman errores.</translation>
    </message>
</context>
<context>
    <name>JoinAside</name>
    <message>
        <source>Measure this row</source>
        <translation>Medir esta fila</translation>
    </message>
    <message>
        <source>Seam {%1} catch {%2}</source>
        <translation>Costura {%1}, agarre {%2}</translation>
    </message>
    <message>
        <source>Seam {%1}</source>
        <translation>Costura {%1}</translation>
    </message>
    <message>
        <source>True-size gauge</source>
        <translation>Calibre a tamaño real</translation>
    </message>
    <message>
        <source>Layout, front and back</source>
        <translation>Orden, delantera y trasera</translation>
    </message>
    <message>
        <source>Two blocks should change places</source>
        <translation>Dos bloques por intercambiar</translation>
    </message>
    <message>
        <source>Filling and closing</source>
        <translation>Rellenar y cerrar</translation>
    </message>
    <message>
        <source>Never fold {%1} under: the stitches in the ditch would miss it.</source>
        <extracomment>a fold so wide that the ditch stitching would not catch it</extracomment>
        <translation>No remeter nunca {%1}: las puntadas en la zanja de la costura no lo agarrarían.</translation>
    </message>
</context>
<context>
    <name>JoinGauge</name>
    <message>
        <source>True size</source>
        <translation>Tamaño real</translation>
    </message>
    <message>
        <source>Pins out, cloth cool and dry, do not press on the glass.</source>
        <translation>Sin alfileres, tela fría y seca, no apretar sobre el cristal.</translation>
    </message>
    <message>
        <source>catch</source>
        <translation>agarre</translation>
    </message>
    <message>
        <source>fold under</source>
        <translation>remetido</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>costura</translation>
    </message>
    <message>
        <source>True only after the screen was set against a card, at the foot of the shelf.</source>
        <translation>Solo es fiel tras ajustar la pantalla con una tarjeta, al pie del estante.</translation>
    </message>
</context>
<context>
    <name>JoinLayout</name>
    <message>
        <source>Layout of the blocks; next: %1</source>
        <translation>Orden de los bloques; siguiente: %1</translation>
    </message>
    <message>
        <source>Touch two blocks to swap them; their labels stay with them.</source>
        <translation>Tocar dos bloques para intercambiarlos; sus etiquetas se quedan con ellos.</translation>
    </message>
    <message>
        <source>Now the other one.</source>
        <translation>Ahora el otro.</translation>
    </message>
    <message>
        <source>Swap them</source>
        <translation>Cambiar de lugar</translation>
    </message>
    <message>
        <source>See the front</source>
        <translation>Ver la delantera</translation>
    </message>
    <message>
        <source>See the back</source>
        <translation>Ver la trasera</translation>
    </message>
</context>
<context>
    <name>JoinMap</name>
    <message>
        <source>back, as it lies turned over</source>
        <translation>trasera, como queda al darle la vuelta</translation>
    </message>
    <message>
        <source>front</source>
        <translation>delantera</translation>
    </message>
</context>
<context>
    <name>JoinPage</name>
    <message>
        <source>Section of a join: seam %1, fold under %2, catch %3</source>
        <translation>Sección de una unión: costura %1, remetido %2, agarre %3</translation>
    </message>
    <message>
        <source>Match marks from the row’s raw end, now at %1</source>
        <translation>Marcas de encuentro desde el extremo cortado de la fila, ahora en %1</translation>
    </message>
    <message>
        <source>Layout of the blocks; next: %1</source>
        <translation>Orden de los bloques; siguiente: %1</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Section of a join: seam %1</source>
        <translation>Sección de una unión: costura %1</translation>
    </message>
    <message>
        <source>Section of a join: seam %1, back strip doubled, catch %2</source>
        <translation>Sección de una unión: costura %1, tira trasera doble, agarre %2</translation>
    </message>
    <message>
        <source>Section of the test join: seam %1, overlap %2</source>
        <translation>Sección de la unión de prueba: costura %1, solape %2</translation>
    </message>
    <message>
        <source>Section of the test join: seam %1, gap %2</source>
        <translation>Sección de la unión de prueba: costura %1, separación %2</translation>
    </message>
    <message>
        <source>Section of the test join: seam %1, the edges meet</source>
        <translation>Sección de la unión de prueba: costura %1, los bordes se tocan</translation>
    </message>
    <message>
        <source>Section of the test join, with what is read of it</source>
        <translation>Sección de la unión de prueba, con sus medidas</translation>
    </message>
    <message>
        <source>Match marks: the middle of each short sashing</source>
        <extracomment>over the tape on which the match marks of a long sashing are read, from the row&apos;s raw left end</extracomment>
        <translation>Marcas de encuentro: centro de cada tira de unión corta</translation>
    </message>
</context>
<context>
    <name>JoinRow</name>
    <message>
        <source>%1: how long is it, raw end to raw end?</source>
        <translation>%1: ¿cuánto mide, de extremo cortado a extremo cortado?</translation>
    </message>
    <message>
        <source>Enter its length</source>
        <translation>Anotar su largo</translation>
    </message>
    <message>
        <source>Length of the row, raw end to raw end</source>
        <translation>Largo de la fila, de extremo cortado a extremo cortado</translation>
    </message>
    <message>
        <source>Lay it flat, not stretched. How much may be eased is common practice; no published limit is known.</source>
        <translation>Ponerla plana, sin estirar. Cuánto embeber es costumbre del oficio; no se conoce límite publicado.</translation>
    </message>
</context>
<context>
    <name>JoinTest</name>
    <message>
        <source>The gap moves four times as fast as the seam.</source>
        <translation>La separación cambia cuatro veces más rápido que la costura.</translation>
    </message>
</context>
<context>
    <name>JoinWays</name>
    <message>
        <source>Filling and closing</source>
        <translation>Rellenar y cerrar</translation>
    </message>
    <message>
        <source>What is cut already stays as it is; what no longer fits is named.</source>
        <translation>Lo ya cortado queda como está; se nombra lo que ya no encaja.</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>KeypadDigits</name>
    <message>
        <source>decimal point</source>
        <translation>coma decimal</translation>
    </message>
</context>
<context>
    <name>KeypadRub</name>
    <message>
        <source>clear</source>
        <translation>borrar todo</translation>
    </message>
    <message>
        <source>rub out the last</source>
        <translation>borrar lo último</translation>
    </message>
</context>
<context>
    <name>KitBundles</name>
    <message>
        <source>yours</source>
        <extracomment>under the bundle that is the teacher&apos;s own kit</extracomment>
        <translation>quien enseña</translation>
    </message>
</context>
<context>
    <name>KitsSheet</name>
    <message>
        <source>What is cut</source>
        <translation>Lo que se corta</translation>
    </message>
    <message>
        <source>no kits yet</source>
        <translation>aún no hay kits</translation>
    </message>
    <message>
        <source>Say how many students: each gets a kit, one is yours, and there is a spare for every ten or part of ten.</source>
        <translation>Indicar cuántos alumnos: un kit para cada uno, uno para quien enseña y uno de reserva por cada diez o fracción.</translation>
    </message>
</context>
<context>
    <name>LanguageChoice</name>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
</context>
<context>
    <name>LayUp</name>
    <message>
        <source>backing, wrong side up</source>
        <extracomment>how the backing lies on the table when a hoop strip is laid up</extracomment>
        <translation>tela trasera, revés arriba</translation>
    </message>
    <message>
        <source>batting</source>
        <translation>guata</translation>
    </message>
    <message>
        <source>front, right side up</source>
        <extracomment>how the front lies on the batting</extracomment>
        <translation>delantera, derecho arriba</translation>
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
        <translation>Qué recordar del bloque %1</translation>
    </message>
    <message>
        <source>Words, if you like</source>
        <translation>Nota, si se quiere</translation>
    </message>
    <message>
        <source>Back to the block</source>
        <translation>Volver al bloque</translation>
    </message>
</context>
<context>
    <name>LogSheet</name>
    <message>
        <source>Front</source>
        <translation>Delantera</translation>
    </message>
    <message>
        <source>Back face</source>
        <translation>Trasera</translation>
    </message>
    <message>
        <source>along</source>
        <extracomment>the stitched outline&apos;s size along the strip</extracomment>
        <translation>a lo largo</translation>
    </message>
    <message>
        <source>across</source>
        <extracomment>the stitched outline&apos;s size across the strip</extracomment>
        <translation>a lo ancho</translation>
    </message>
    <message>
        <source>Same as planned</source>
        <translation>Según lo planeado</translation>
    </message>
    <message>
        <source>Log these measures</source>
        <translation>Anotar estas medidas</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is &quot;Block A1&quot;, %2 where it was stitched</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Flag or note</source>
        <extracomment>marks something worth remembering of a block, or writes it in words</extracomment>
        <translation>Señal o nota</translation>
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
        <translation>No se puede leer %1.</translation>
    </message>
    <message>
        <source>The window could not be opened.</source>
        <translation>No se pudo abrir la ventana.</translation>
    </message>
    <message>
        <source>The paper is a4 or letter.</source>
        <translation>El papel es a4 o letter.</translation>
    </message>
    <message>
        <source>--sheet OUT.pdf needs a project file after it.</source>
        <translation>--sheet OUT.pdf necesita después un archivo de proyecto.</translation>
    </message>
    <message>
        <source>The next cut, beside the cutting mat.</source>
        <translation>El próximo corte, junto a la base de corte.</translation>
    </message>
    <message>
        <source>Keep the data in this folder.</source>
        <translation>Guardar los datos en esta carpeta.</translation>
    </message>
    <message>
        <source>Open the demo project.</source>
        <translation>Abrir el proyecto de ejemplo.</translation>
    </message>
    <message>
        <source>Print the plan of a project file (- for standard input).</source>
        <translation>Mostrar el plan de un archivo de proyecto (- para la entrada estándar).</translation>
    </message>
    <message>
        <source>Draw every station into this folder.</source>
        <translation>Dibujar todas las estaciones en esta carpeta.</translation>
    </message>
    <message>
        <source>Write the project named last, with its notes and photographs, to a new file.</source>
        <translation>Escribir el proyecto nombrado al final, con sus notas y fotos, en un archivo nuevo.</translation>
    </message>
    <message>
        <source>Say what is inside such a file.</source>
        <translation>Decir qué hay dentro de un archivo así.</translation>
    </message>
    <message>
        <source>Say what is inside, and add it to the shelf.</source>
        <translation>Decir qué hay dentro y ponerlo en el estante.</translation>
    </message>
    <message>
        <source>Write the paper sheet of a project file.</source>
        <translation>Escribir la hoja de papel de un archivo de proyecto.</translation>
    </message>
    <message>
        <source>Paper of the sheet: a4 or letter.</source>
        <translation>Papel de la hoja: a4 o letter.</translation>
    </message>
    <message>
        <source>The sheet on one page.</source>
        <translation>La hoja en una sola página.</translation>
    </message>
    <message>
        <source>Write everything to one new file.</source>
        <translation>Escribir todo en un archivo nuevo.</translation>
    </message>
    <message>
        <source>Put a backup in place where no project is yet.</source>
        <translation>Recuperar un respaldo donde aún no hay ningún proyecto.</translation>
    </message>
    <message>
        <source>Speak this language: %1.</source>
        <translation>Hablar este idioma: %1.</translation>
    </message>
    <message>
        <source>A project, share or backup file to look into, or a project file for --pictures or --sheet.</source>
        <translation>Un archivo de proyecto, para compartir o de respaldo en el que mirar, o un archivo de proyecto para --pictures o --sheet.</translation>
    </message>
    <message>
        <source>The language is one of %1.</source>
        <translation>El idioma es uno de %1.</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Deshecho: %1</translation>
    </message>
    <message>
        <source>--diagrams FOLDER needs a project file after it.</source>
        <translation>Tras --diagrams FOLDER falta un archivo de proyecto.</translation>
    </message>
    <message>
        <source>The form is long, short or class.</source>
        <translation>La forma es long, short o class.</translation>
    </message>
    <message>
        <source>Write the drawings of the sheet as SVG files.</source>
        <translation>Escribir los dibujos de la hoja como archivos SVG.</translation>
    </message>
    <message>
        <source>Form of the sheet: long, short, or class, with a list for every kit.</source>
        <translation>Forma de la hoja: long, short o class, con una lista para cada kit.</translation>
    </message>
</context>
<context>
    <name>MeasureSheet</name>
    <message>
        <source>Take the common size</source>
        <translation>Tomar la medida común</translation>
    </message>
    <message>
        <source>The limits are common practice; no published ones are known.</source>
        <translation>Los límites son de uso común; no se conocen publicados.</translation>
    </message>
    <message>
        <source>Keep these readings</source>
        <extracomment>on a button: the block&apos;s readings are kept, and the common size is not taken</extracomment>
        <translation>Conservar estas lecturas</translation>
    </message>
    <message>
        <source>Block %1: outer stitches</source>
        <translation>Bloque %1: puntadas exteriores</translation>
    </message>
    <message>
        <source>A side misread by 6 mm is noticed four times in five, by 10 mm always.</source>
        <translation>Un lado mal leído por 6&#xa0;mm se nota cuatro veces de cinco; por 10&#xa0;mm, siempre.</translation>
    </message>
    <message>
        <source>A side misread by 1/4 in is noticed four times in five, by 3/8 in always.</source>
        <translation>Un lado mal leído por 1/4 in se nota cuatro veces de cinco; por 3/8 in, siempre.</translation>
    </message>
    <message>
        <source>Keep only the readings</source>
        <translation>Conservar solo las lecturas</translation>
    </message>
    <message>
        <source>See the common size</source>
        <translation>Ver la medida común</translation>
    </message>
    <message>
        <source>The rest is as shown</source>
        <translation>El resto es como se ve</translation>
    </message>
    <message>
        <source>Back without measuring</source>
        <translation>Volver sin medir</translation>
    </message>
    <message>
        <source>Not measured: reckon with the plan</source>
        <extracomment>on a button: the block is trimmed by the planned figures</extracomment>
        <translation>Sin medir: contar con lo planeado</translation>
    </message>
    <message>
        <source>Read again: %1</source>
        <extracomment>on a button: %1 is the one of a block&apos;s six readings to be taken again, or for the first time: &quot;top&quot;</extracomment>
        <translation>Medir de nuevo: %1</translation>
    </message>
    <message>
        <source>Read: %1</source>
        <translation>Medir: %1</translation>
    </message>
</context>
<context>
    <name>Merge</name>
    <message>
        <source>the project’s name</source>
        <translation>nombre del proyecto</translation>
    </message>
    <message>
        <source>cutting hand</source>
        <extracomment>the hand she holds the cutter in</extracomment>
        <translation>mano de corte</translation>
    </message>
    <message>
        <source>which block goes where</source>
        <translation>qué bloque va en qué lugar</translation>
    </message>
    <message>
        <source>draw-up</source>
        <translation>merma</translation>
    </message>
    <message>
        <source>corners</source>
        <translation>esquinas</translation>
    </message>
    <message>
        <source>hoop</source>
        <translation>bastidor</translation>
    </message>
    <message>
        <source>hoop’s field</source>
        <translation>campo de bordado del bastidor</translation>
    </message>
    <message>
        <source>hoop’s opening</source>
        <translation>abertura del bastidor</translation>
    </message>
    <message>
        <source>hoop’s outside</source>
        <translation>exterior del bastidor</translation>
    </message>
    <message>
        <source>thickest sandwich in the hoop</source>
        <extracomment>sandwich: front, batting and back together</extracomment>
        <translation>capas más gruesas del bastidor</translation>
    </message>
    <message>
        <source>side of the hoop’s bracket</source>
        <translation>lado del soporte del bastidor</translation>
    </message>
    <message>
        <source>gaps that give sashing</source>
        <translation>huecos que dan tiras de unión</translation>
    </message>
    <message>
        <source>kits cut from the same strips</source>
        <translation>kits cortados de las mismas tiras</translation>
    </message>
    <message>
        <source>between stippling lines</source>
        <translation>entre líneas del meandro</translation>
    </message>
    <message>
        <source>stitch length</source>
        <translation>largo de puntada</translation>
    </message>
    <message>
        <source>thread on a bobbin</source>
        <translation>hilo en una canilla</translation>
    </message>
    <message>
        <source>stitches a minute</source>
        <translation>puntadas por minuto</translation>
    </message>
    <message>
        <source>patches trimmed at the machine</source>
        <translation>parches recortados en la máquina</translation>
    </message>
    <message>
        <source>ruler “%1”</source>
        <translation>regla «%1»</translation>
    </message>
    <message>
        <source>design “%1”</source>
        <translation>diseño «%1»</translation>
    </message>
    <message>
        <source>cloth “%1”</source>
        <translation>tela «%1»</translation>
    </message>
    <message>
        <source>patch “%1”</source>
        <extracomment>patch: a shape of cloth stitched onto the block</extracomment>
        <translation>parche «%1»</translation>
    </message>
    <message>
        <source>test block, as measured</source>
        <translation>bloque de prueba, medido</translation>
    </message>
    <message>
        <source>test join, as measured</source>
        <translation>unión de prueba, medida</translation>
    </message>
    <message>
        <source>draw-up taken from the first blocks</source>
        <translation>merma de los primeros bloques</translation>
    </message>
    <message>
        <source>trial put off</source>
        <translation>prueba aplazada</translation>
    </message>
    <message>
        <source>whole piece, as measured</source>
        <translation>pieza entera, medida</translation>
    </message>
    <message>
        <source>pins counted, in and out</source>
        <translation>alfileres contados, puestos y sacados</translation>
    </message>
    <message>
        <source>cloth “%1”, as bought</source>
        <translation>tela «%1», tal como se compró</translation>
    </message>
    <message>
        <source>row %1, as measured</source>
        <translation>fila %1, medida</translation>
    </message>
    <message>
        <source>strip %1</source>
        <translation>tira %1</translation>
    </message>
    <message>
        <source>block %1</source>
        <translation>bloque %1</translation>
    </message>
    <message>
        <source>block %1, how far it is</source>
        <translation>bloque %1, hasta dónde llega</translation>
    </message>
    <message>
        <source>block %1, size sent to the machine</source>
        <extracomment>sent: the size given to the embroidery machine</extracomment>
        <translation>bloque %1, medida enviada a la máquina</translation>
    </message>
    <message>
        <source>block %1, outline as measured</source>
        <translation>bloque %1, contorno medido</translation>
    </message>
    <message>
        <source>block %1, sides as measured</source>
        <translation>bloque %1, lados medidos</translation>
    </message>
    <message>
        <source>block %1, diagonals as measured</source>
        <translation>bloque %1, diagonales medidas</translation>
    </message>
    <message>
        <source>block %1, minutes at the machine</source>
        <translation>bloque %1, minutos de máquina</translation>
    </message>
    <message>
        <source>block %1, where it lies</source>
        <translation>bloque %1, dónde está puesto</translation>
    </message>
    <message>
        <source>block %1, its strip</source>
        <translation>bloque %1, su tira</translation>
    </message>
    <message>
        <source>block %1, place on its strip</source>
        <translation>bloque %1, lugar en su tira</translation>
    </message>
    <message>
        <source>done: %1</source>
        <extracomment>how many pieces were cut or sewn; %1 is the work in words</extracomment>
        <translation>hecho: %1</translation>
    </message>
    <message>
        <source>spoiled: %1</source>
        <translation>estropeado: %1</translation>
    </message>
    <message>
        <source>stitched</source>
        <translation>bordado</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>recortado</translation>
    </message>
    <message>
        <source>joined</source>
        <translation>unido</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation>estropeado</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdido</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>place %1</source>
        <translation>lugar %1</translation>
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
        <translation>nada de ello</translation>
    </message>
    <message>
        <source>one block made on the other tablet</source>
        <translation>un bloque hecho en la otra tableta</translation>
    </message>
    <message>
        <source>%1 blocks made on the other tablet</source>
        <translation>%1 bloques hechos en la otra tableta</translation>
    </message>
    <message>
        <source>one thing that happened there</source>
        <translation>una cosa que pasó allí</translation>
    </message>
    <message>
        <source>%1 things that happened there</source>
        <translation>%1 cosas que pasaron allí</translation>
    </message>
    <message>
        <source>one note</source>
        <translation>una nota</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 notas</translation>
    </message>
    <message>
        <source>one photograph</source>
        <translation>una foto</translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation>%1 fotos</translation>
    </message>
    <message>
        <source>One tablet has this piece in inches, the other in millimetres. Bring it in as a project of its own.</source>
        <translation>Una tableta tiene esta pieza en pulgadas, la otra en milímetros. Traerla como proyecto aparte.</translation>
    </message>
    <message>
        <source>The project on this tablet has something to be mended first, at Fit.</source>
        <translation>En el proyecto de esta tableta hay algo que arreglar antes, en «Planear».</translation>
    </message>
    <message>
        <source>The two do not fit together. Bring it in as a project of its own.</source>
        <translation>Los dos no encajan. Traerlo como proyecto aparte.</translation>
    </message>
</context>
<context>
    <name>MergeFile</name>
    <message>
        <source>This project is on this tablet already. Put together, all that stands here stays, and one Undo takes the rest back.</source>
        <translation>Este proyecto ya está en esta tableta. Al juntarlos se queda todo lo de aquí, y deshacer una vez quita lo demás.</translation>
    </message>
    <message>
        <source>One moment: the photographs are being kept.</source>
        <translation>Un momento: se guardan las fotos.</translation>
    </message>
    <message>
        <source>All that is in the file is here already.</source>
        <translation>Todo lo del archivo ya está aquí.</translation>
    </message>
    <message>
        <source>This comes from the other tablet</source>
        <translation>Esto viene de la otra tableta</translation>
    </message>
    <message>
        <source>Told differently: choose what holds. Still to choose: %1</source>
        <extracomment>two tablets tell a thing differently; %1 is how many she has yet to choose</extracomment>
        <translation>Dicho de dos maneras: elegir lo que vale. Por elegir: %1</translation>
    </message>
    <message>
        <source>Told differently: all of it is chosen.</source>
        <translation>Dicho de dos maneras: todo está elegido.</translation>
    </message>
    <message>
        <source>Here: %1</source>
        <extracomment>the value on the tablet in her hands</extracomment>
        <translation>Aquí: %1</translation>
    </message>
    <message>
        <source>The other tablet: %1</source>
        <extracomment>the value on the other tablet</extracomment>
        <translation>La otra tableta: %1</translation>
    </message>
    <message>
        <source>Both together: %1</source>
        <extracomment>pieces counted on both tablets, added up</extracomment>
        <translation>Las dos juntas: %1</translation>
    </message>
</context>
<context>
    <name>MindSign</name>
    <message>
        <source>What to mind here: %1</source>
        <extracomment>what is to be minded and checked at this step</extracomment>
        <translation>Qué tener en cuenta aquí: %1</translation>
    </message>
</context>
<context>
    <name>NewPiece</name>
    <message>
        <source>New, in inches</source>
        <translation>Nueva, en pulgadas</translation>
    </message>
    <message>
        <source>New piece</source>
        <translation>Pieza nueva</translation>
    </message>
    <message>
        <source>New, in mm</source>
        <translation>Nueva, en mm</translation>
    </message>
</context>
<context>
    <name>NotedLine</name>
    <message>
        <source>Noted: %1</source>
        <extracomment>%1 is what was noted of a block when it was stitched, &quot;Pleat on the back&quot;</extracomment>
        <translation>Anotado: %1</translation>
    </message>
</context>
<context>
    <name>NotesSheet</name>
    <message>
        <source>Not tried yet: the trial may change this figure.</source>
        <translation>Sin probar: la prueba puede cambiar esta medida.</translation>
    </message>
    <message>
        <source>On with the work</source>
        <translation>Seguir con el trabajo</translation>
    </message>
    <message>
        <source>Make the trial after all</source>
        <translation>Hacer la prueba igualmente</translation>
    </message>
</context>
<context>
    <name>NoticeLine</name>
    <message>
        <source>put this notice away</source>
        <extracomment>what pressing a notice does</extracomment>
        <translation>quitar este aviso</translation>
    </message>
</context>
<context>
    <name>OpenExport</name>
    <message>
        <source>Name of the file</source>
        <translation>Nombre del archivo</translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>Escribir el archivo</translation>
    </message>
</context>
<context>
    <name>OpenFile</name>
    <message>
        <source>One moment: all of it is being read.</source>
        <translation>Un momento: se está leyendo todo.</translation>
    </message>
    <message>
        <source>All of it can be read. The file stays as it is.</source>
        <translation>Todo se puede leer. El archivo queda como está.</translation>
    </message>
    <message>
        <source>Not all of it can be read. What you choose here mends the copy; the file stays as it is.</source>
        <translation>No todo se puede leer. Lo que se elija aquí arregla la copia; el archivo queda como está.</translation>
    </message>
</context>
<context>
    <name>OpenSheet</name>
    <message>
        <source>Open, bring in, back up</source>
        <translation>Abrir, traer, respaldar</translation>
    </message>
    <message>
        <source>folder</source>
        <extracomment>what a row of the list of files is</extracomment>
        <translation>carpeta</translation>
    </message>
    <message>
        <source>backup of everything</source>
        <translation>respaldo de todo</translation>
    </message>
    <message>
        <source>project with notes and photographs</source>
        <translation>proyecto con notas y fotos</translation>
    </message>
    <message>
        <source>project</source>
        <translation>proyecto</translation>
    </message>
    <message>
        <source>There is no project file and no folder here.</source>
        <translation>Aquí no hay archivos de proyecto ni carpetas.</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Respaldo</translation>
    </message>
    <message>
        <source>Put it all back</source>
        <translation>Recuperar todo</translation>
    </message>
    <message>
        <source>Lay it on the shelf</source>
        <translation>Ponerlo en el estante</translation>
    </message>
    <message>
        <source>Another file</source>
        <translation>Otro archivo</translation>
    </message>
    <message>
        <source>The folder above</source>
        <translation>La carpeta de arriba</translation>
    </message>
    <message>
        <source>Back up everything</source>
        <translation>Respaldar todo</translation>
    </message>
    <message>
        <source>Back to the shelf</source>
        <translation>Volver al estante</translation>
    </message>
    <message>
        <source>As a project of its own</source>
        <translation>Como proyecto aparte</translation>
    </message>
    <message>
        <source>Put together</source>
        <translation>Juntar</translation>
    </message>
</context>
<context>
    <name>PhotoSheet</name>
    <message>
        <source>the back</source>
        <extracomment>what a picture is of: the front or the back of a block</extracomment>
        <translation>la trasera</translation>
    </message>
    <message>
        <source>the front</source>
        <translation>la delantera</translation>
    </message>
    <message>
        <source>Take a picture of %1</source>
        <extracomment>%1 is &quot;the front&quot; or &quot;the back&quot;</extracomment>
        <translation>Tomar una foto: %1</translation>
    </message>
    <message>
        <source>Keeping the picture</source>
        <translation>Guardando la foto</translation>
    </message>
    <message>
        <source>Choose a picture of %1, block %2</source>
        <extracomment>%1 is &quot;the front&quot; or &quot;the back&quot;, %2 a block&apos;s name</extracomment>
        <translation>Elegir una foto: %1, bloque %2</translation>
    </message>
    <message>
        <source>Tap anywhere: %1 of block %2</source>
        <translation>Tocar para hacer la foto: %1 del bloque %2</translation>
    </message>
    <message>
        <source>Back without a picture</source>
        <translation>Volver sin foto</translation>
    </message>
    <message>
        <source>Tap anywhere to try again: %1 of block %2</source>
        <extracomment>a tap takes another picture after the last one came to nothing; %1 is &quot;the front&quot; or &quot;the back&quot;</extracomment>
        <translation>Tocar para repetir la foto: %1 del bloque %2</translation>
    </message>
    <message>
        <source>A picture of %1, block %2</source>
        <translation>Foto: %1, bloque %2</translation>
    </message>
</context>
<context>
    <name>Photos</name>
    <message>
        <source>The picture cannot be read. Choose another.</source>
        <translation>La foto no se puede leer. Elegir otra.</translation>
    </message>
    <message>
        <source>The picture is cut short: its end is missing. Copy it again, or choose another.</source>
        <translation>La foto está cortada: falta el final. Copiarla otra vez o elegir otra.</translation>
    </message>
    <message>
        <source>The picture is too large. Up to 100 million pixels can be kept.</source>
        <translation>La foto es demasiado grande. Se pueden guardar hasta 100 millones de píxeles.</translation>
    </message>
    <message>
        <source>The disk is full, so the picture was not kept. Nothing else was lost; free some room.</source>
        <translation>El disco está lleno y la foto no se guardó. No se perdió nada más; liberar espacio.</translation>
    </message>
    <message>
        <source>That is no picture this program can read. Take or choose another.</source>
        <translation>Eso no es una foto que este programa pueda leer. Tomar o elegir otra.</translation>
    </message>
</context>
<context>
    <name>PictureFinder</name>
    <message>
        <source>There are no pictures in the folder “%1”. Put them there, or go on without one.</source>
        <extracomment>%1 is the name of a folder</extracomment>
        <translation>No hay fotos en la carpeta «%1». Ponerlas allí o seguir sin foto.</translation>
    </message>
    <message>
        <source>Folder above</source>
        <translation>Carpeta de arriba</translation>
    </message>
    <message>
        <source>Use the camera</source>
        <translation>Usar la cámara</translation>
    </message>
    <message>
        <source>Choose a picture</source>
        <translation>Elegir una foto</translation>
    </message>
</context>
<context>
    <name>PicturePrint</name>
    <message>
        <source>Folder %1</source>
        <extracomment>spoken name of a folder of pictures in a list</extracomment>
        <translation>Carpeta %1</translation>
    </message>
    <message>
        <source>Folder: %1</source>
        <extracomment>a folder in a list of pictures; %1 is its name</extracomment>
        <translation>Carpeta: %1</translation>
    </message>
</context>
<context>
    <name>PieceStepper</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1, menos</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1, más</translation>
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
        <translation>el precio</translation>
    </message>
</context>
<context>
    <name>ProjectRow</name>
    <message>
        <source>Less</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Make again in other cloth</source>
        <translation>Repetir en otra tela</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>Renombrar</translation>
    </message>
    <message>
        <source>A copy in millimetres</source>
        <translation>Una copia en milímetros</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Recuperar</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Apartar</translation>
    </message>
    <message>
        <source>Share as one file</source>
        <extracomment>writes one file with the project, its notes and its photographs, to be given to someone</extracomment>
        <translation>Compartir en un archivo</translation>
    </message>
    <message>
        <source>Hold to throw away</source>
        <translation>Mantener para tirar</translation>
    </message>
    <message>
        <source>Name of the project</source>
        <translation>Nombre del proyecto</translation>
    </message>
    <message>
        <source>Sheet for the wall</source>
        <extracomment>the whole job on paper, as a PDF to be printed</extracomment>
        <translation>Hoja para la pared</translation>
    </message>
    <message>
        <source>Sheet on one page</source>
        <extracomment>the same on a single page, as a PDF</extracomment>
        <translation>Hoja de una página</translation>
    </message>
    <message>
        <source>Sheets for a class</source>
        <extracomment>what is cut for all students, and a page for each one&apos;s kit, as a PDF</extracomment>
        <translation>Hojas para una clase</translation>
    </message>
    <message>
        <source>Put away for now</source>
        <extracomment>of a piece that lies folded at the back of the shelf</extracomment>
        <translation>Apartado por ahora</translation>
    </message>
</context>
<context>
    <name>PutOff</name>
    <message>
        <source>Trial later</source>
        <extracomment>the trial: one test block and one test join, made before the cloth for the piece is cut</extracomment>
        <translation>Aplazar la prueba</translation>
    </message>
</context>
<context>
    <name>ReadingHeld</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1, menos</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1, más</translation>
    </message>
    <message>
        <source>Read: it is as shown</source>
        <extracomment>of several readings of a block, a join or the piece: she read just what is shown</extracomment>
        <translation>Medido: es como se ve</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <extracomment>on a button: %1 is what to read next, &quot;right&quot;</extracomment>
        <translation>Sigue: %1</translation>
    </message>
</context>
<context>
    <name>ReadingInHand</name>
    <message>
        <source>measure this one again first</source>
        <translation>medir este otra vez primero</translation>
    </message>
    <message>
        <source>not yet read</source>
        <translation>aún sin medir</translation>
    </message>
</context>
<context>
    <name>ReadingPlate</name>
    <message>
        <source>measure this one again first</source>
        <extracomment>of a reading of a block</extracomment>
        <translation>medir este otra vez primero</translation>
    </message>
    <message>
        <source>not yet read</source>
        <translation>aún sin medir</translation>
    </message>
</context>
<context>
    <name>Readings</name>
    <message>
        <source>A reading is more than nothing.</source>
        <translation>Una lectura tiene que ser mayor que cero.</translation>
    </message>
</context>
<context>
    <name>Refused</name>
    <message>
        <source>Your projects cannot be opened just now.</source>
        <translation>Ahora mismo no se pueden abrir los proyectos.</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Probar otra vez</translation>
    </message>
    <message>
        <source>Close Matside</source>
        <translation>Cerrar Matside</translation>
    </message>
</context>
<context>
    <name>ResumeSheet</name>
    <message>
        <source>Finished: count it as done</source>
        <extracomment>on a button: what the step says was done before the program ended, and is counted now</extracomment>
        <translation>Acabado: contarlo como hecho</translation>
    </message>
    <message>
        <source>Not finished: still to do</source>
        <extracomment>on a button: the step goes on where it was</extracomment>
        <translation>No acabado: queda por hacer</translation>
    </message>
</context>
<context>
    <name>RevealMark</name>
    <message>
        <source>over</source>
        <extracomment>after a length: the cloth hangs so far over the table&apos;s edge</extracomment>
        <translation>caída</translation>
    </message>
</context>
<context>
    <name>RulerDrawing</name>
    <message>
        <source>on the outer
stitches</source>
        <extracomment>where the ruler&apos;s line lies: two short lines, broken by hand</extracomment>
        <translation>en las puntadas
exteriores</translation>
    </message>
    <message>
        <source>mat lines
from here</source>
        <translation>líneas de la base
desde aquí</translation>
    </message>
    <message>
        <source>on the
cut edge</source>
        <translation>en el
borde cortado</translation>
    </message>
</context>
<context>
    <name>RulerWords</name>
    <message>
        <source>keep</source>
        <extracomment>the part of the cloth that is kept</extracomment>
        <translation>conservar</translation>
    </message>
    <message>
        <source>fold</source>
        <extracomment>the folded edge of the cloth, or that it lies unfolded</extracomment>
        <translation>doblez</translation>
    </message>
    <message>
        <source>one layer</source>
        <translation>una capa</translation>
    </message>
    <message>
        <source>selvages</source>
        <translation>orillos</translation>
    </message>
    <message>
        <source>selvage</source>
        <translation>orillo</translation>
    </message>
    <message>
        <source>waste</source>
        <extracomment>cloth that falls away</extracomment>
        <translation>sobrante</translation>
    </message>
    <message>
        <source>cut ends</source>
        <extracomment>the cut ends of a cloth folded across, end on end, for strips along its selvage</extracomment>
        <translation>extremos cortados</translation>
    </message>
    <message>
        <source>cut end</source>
        <translation>extremo cortado</translation>
    </message>
</context>
<context>
    <name>ScallopNear</name>
    <message>
        <source>radius</source>
        <extracomment>the radius of an arc, short: over the figure on a drawing</extracomment>
        <translation>radio</translation>
    </message>
</context>
<context>
    <name>SectionDrawing</name>
    <message>
        <source>%1 times true size, cloth drawn thicker</source>
        <extracomment>how much larger than life the section is drawn</extracomment>
        <translation>%1 veces el tamaño real, tela dibujada más gruesa</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>costura</translation>
    </message>
    <message>
        <source>catch</source>
        <extracomment>how far the fold passes the seam, so that the ditch stitching catches it</extracomment>
        <translation>agarre</translation>
    </message>
    <message>
        <source>fold under</source>
        <translation>remetido</translation>
    </message>
    <message>
        <source>overlap</source>
        <extracomment>by how much the two allowances inside a sashing lie over each other</extracomment>
        <translation>solape</translation>
    </message>
    <message>
        <source>gap</source>
        <extracomment>what is left between the two allowances inside a sashing</extracomment>
        <translation>separación</translation>
    </message>
</context>
<context>
    <name>SectionReadings</name>
    <message>
        <source>seam</source>
        <translation>costura</translation>
    </message>
    <message>
        <source>overlap</source>
        <translation>solape</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>separación</translation>
    </message>
    <message>
        <source>seam to seam</source>
        <extracomment>the distance from one seam to the other of a sashing</extracomment>
        <translation>costura a costura</translation>
    </message>
    <message>
        <source>batting</source>
        <translation>guata</translation>
    </message>
</context>
<context>
    <name>SentPlate</name>
    <message>
        <source>Send to the machine</source>
        <extracomment>on a plate, over the size that is typed into the embroidery machine</extracomment>
        <translation>Enviar a la máquina</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>the light she works in</extracomment>
        <translation>Día</translation>
    </message>
    <message>
        <source>Lamp</source>
        <translation>Lámpara</translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation>Contraste alto</translation>
    </message>
    <message>
        <source>Cutting hand</source>
        <translation>Mano de corte</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Movement</source>
        <translation>Movimiento</translation>
    </message>
    <message>
        <source>Sheets slide in</source>
        <extracomment>whether sheets slide into place or are simply there</extracomment>
        <translation>Pantallas deslizantes</translation>
    </message>
    <message>
        <source>Nothing moves</source>
        <translation>Nada se mueve</translation>
    </message>
    <message>
        <source>Size of the screen</source>
        <translation>Tamaño de la pantalla</translation>
    </message>
    <message>
        <source>Back to the shelf</source>
        <translation>Volver al estante</translation>
    </message>
    <message>
        <source>Read aloud</source>
        <translation>Leer en voz alta</translation>
    </message>
    <message>
        <source>This tablet has no voice for your language: nothing is read out.</source>
        <translation>Esta tableta no tiene voz para este idioma: no se lee nada.</translation>
    </message>
    <message>
        <source>Where you cut, a step is read out only once you have asked for it there.</source>
        <translation>Donde se corta, un paso solo se lee después de pedirlo allí.</translation>
    </message>
    <message>
        <source>Never</source>
        <extracomment>when a step is read out: never, when she asks, at each new step</extracomment>
        <translation>Nunca</translation>
    </message>
    <message>
        <source>When asked</source>
        <translation>Al pedirlo</translation>
    </message>
    <message>
        <source>Each new step</source>
        <translation>Cada paso nuevo</translation>
    </message>
    <message>
        <source>Page-turn pedal</source>
        <translation>Pedal pasapáginas</translation>
    </message>
    <message>
        <source>Turns the steps</source>
        <translation>Pasa los pasos</translation>
    </message>
    <message>
        <source>Turns nothing</source>
        <translation>No los pasa</translation>
    </message>
    <message>
        <source>Window for helpers</source>
        <translation>Ventana para ayudantes</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Cerrada</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abierta</translation>
    </message>
    <message>
        <source>Put it well away from the machine’s pedal. While a block is stitched it turns nothing.</source>
        <translation>Ponerlo lejos del pedal de la máquina. Mientras se borda un bloque no pasa los pasos.</translation>
    </message>
    <message>
        <source>The place at the mat</source>
        <extracomment>heading of the page where the tablet is set up: the place where it stands beside the cutting mat</extracomment>
        <translation>El puesto de corte</translation>
    </message>
    <message>
        <source>Done</source>
        <extracomment>closes what is being set</extracomment>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>SettingsScene</name>
    <message>
        <source>The place at the mat</source>
        <translation>El puesto de corte</translation>
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
        <translation>rojo</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>naranja</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>amarillo</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>blue-green</source>
        <extracomment>between green and blue</extracomment>
        <translation>verde azulado</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>azul</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violeta</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>%1, step %2 of 10</source>
        <extracomment>a colour: its hue and its step on the scale from black to white</extracomment>
        <translation>%1, escalón %2 de 10</translation>
    </message>
    <message>
        <source>Closest: %1 on %2, %3 steps apart. That is clear from across the room.</source>
        <extracomment>%1 lies on %2; %3 is a number of steps of the ten-step scale</extracomment>
        <translation>Lo más cercano: %1 sobre %2, a %3 escalones. Se distingue bien desde lejos.</translation>
    </message>
    <message>
        <source>Closest: %1 on %2, only %3 steps apart. From across the room %1 is lost: take a lighter or a darker cloth for one of the two.</source>
        <extracomment>%1 lies on %2; %3 is a number of steps of the ten-step scale, below one</extracomment>
        <translation>Lo más cercano: %1 sobre %2, a solo %3 escalones. Desde lejos %1 se pierde: tomar una tela más clara o más oscura para uno de los dos.</translation>
    </message>
    <message>
        <source>Closest: %1 on %2, %3 steps apart. From across the room it looks washed out: two steps stand clearly apart.</source>
        <extracomment>%1 lies on %2; %3 is a number of steps of the ten-step scale, below two</extracomment>
        <translation>Lo más cercano: %1 sobre %2, a %3 escalones. De lejos casi se confunden: hacen falta dos escalones.</translation>
    </message>
</context>
<context>
    <name>ShadeCloth</name>
    <message>
        <source>Another picture</source>
        <translation>Otra foto</translation>
    </message>
    <message>
        <source>From a photograph</source>
        <translation>De una foto</translation>
    </message>
    <message>
        <source>Take this colour</source>
        <translation>Tomar este color</translation>
    </message>
    <message>
        <source>Back to the palette</source>
        <translation>Volver a la paleta</translation>
    </message>
    <message>
        <source>Back to the cloths</source>
        <translation>Volver a las telas</translation>
    </message>
    <message>
        <source>Opening the picture</source>
        <translation>Abriendo la foto</translation>
    </message>
    <message>
        <source>Choose a picture of %1</source>
        <extracomment>%1 is a cloth</extracomment>
        <translation>Elegir una foto: %1</translation>
    </message>
    <message>
        <source>Tap anywhere: %1</source>
        <translation>Tocar para hacer la foto: %1</translation>
    </message>
    <message>
        <source>Take a picture of %1</source>
        <translation>Tomar una foto: %1</translation>
    </message>
    <message>
        <source>Back without a picture</source>
        <translation>Volver sin foto</translation>
    </message>
    <message>
        <source>A photograph holds the light of the room as well as the cloth. Take it by daylight, without flash. The picture is only looked at: it is not kept.</source>
        <translation>Una foto lleva también la luz del cuarto, no solo la tela. Tomarla con luz de día y sin flash. La foto solo se mira: no se guarda.</translation>
    </message>
    <message>
        <source>Tap anywhere to try again: %1</source>
        <translation>Tocar para repetir la foto: %1</translation>
    </message>
    <message>
        <source>A picture of %1</source>
        <extracomment>%1 is a cloth</extracomment>
        <translation>Foto: %1</translation>
    </message>
</context>
<context>
    <name>ShadeFaces</name>
    <message>
        <source>Front</source>
        <extracomment>the front face of the piece</extracomment>
        <translation>Delantera</translation>
    </message>
    <message>
        <source>The front in grey</source>
        <translation>La delantera en gris</translation>
    </message>
    <message>
        <source>The front in colour</source>
        <translation>La delantera en color</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>the back face of the piece</extracomment>
        <translation>Trasera</translation>
    </message>
    <message>
        <source>The back in grey</source>
        <translation>La trasera en gris</translation>
    </message>
    <message>
        <source>The back in colour</source>
        <translation>La trasera en color</translation>
    </message>
    <message>
        <source>Show in colour</source>
        <translation>Ver en color</translation>
    </message>
    <message>
        <source>Show in grey</source>
        <translation>Ver en gris</translation>
    </message>
</context>
<context>
    <name>ShadeFindings</name>
    <message>
        <source>Light and dark</source>
        <extracomment>the page on how light and how dark the cloths are</extracomment>
        <translation>Claro y oscuro</translation>
    </message>
    <message>
        <source>The cloths on the scale from 1, black, to 10, white</source>
        <translation>Las telas en la escala del 1, negro, al 10, blanco</translation>
    </message>
    <message>
        <source>Design</source>
        <extracomment>which of the block designs is judged</extracomment>
        <translation>Diseño</translation>
    </message>
    <message>
        <source>Lay them in this order</source>
        <translation>Ponerlos en este orden</translation>
    </message>
    <message>
        <source>The patches are drawn as plain rectangles. A screen shows cloth only roughly: lay the patch on the ground and look at it from across the room.</source>
        <translation>Los parches se dibujan como simples rectángulos. Una pantalla muestra la tela solo aproximadamente: poner el parche sobre el fondo y mirarlo desde lejos.</translation>
    </message>
</context>
<context>
    <name>ShadeHeld</name>
    <message>
        <source>This is the cloth in that light, not the cloth itself. Compare it with the cloth in your hand.</source>
        <translation>Es la tela con aquella luz, no la tela misma. Compararla con la tela en la mano.</translation>
    </message>
</context>
<context>
    <name>ShadePage</name>
    <message>
        <source>Back to the work</source>
        <translation>Volver al trabajo</translation>
    </message>
</context>
<context>
    <name>ShadePair</name>
    <message>
        <source>%1 steps</source>
        <extracomment>so many steps of the scale from black to white lie between two cloths</extracomment>
        <translation>%1 escalones</translation>
    </message>
</context>
<context>
    <name>ShadePalette</name>
    <message>
        <source>lightness</source>
        <translation>claridad</translation>
    </message>
    <message>
        <source>hue</source>
        <extracomment>red, orange, yellow, green …</extracomment>
        <translation>tono</translation>
    </message>
    <message>
        <source>strength</source>
        <extracomment>how strong a colour is, from grey to the strongest there is</extracomment>
        <translation>viveza</translation>
    </message>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1, menos</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1, más</translation>
    </message>
</context>
<context>
    <name>ShadePicture</name>
    <message>
        <source>The picture: tap the cloth</source>
        <translation>La foto: tocar la tela</translation>
    </message>
</context>
<context>
    <name>ShadeRow</name>
    <message>
        <source>gives the cloth its colour</source>
        <translation>da a la tela su color</translation>
    </message>
</context>
<context>
    <name>Sharing</name>
    <message>
        <source>The file cannot be opened.</source>
        <translation>No se puede abrir el archivo.</translation>
    </message>
    <message>
        <source>This is no share file, or it is damaged. Ask for it to be sent once more.</source>
        <translation>No es un archivo para compartir, o está dañado. Pedir que lo envíen otra vez.</translation>
    </message>
    <message>
        <source>This file does not come from Matside.</source>
        <translation>Este archivo no viene de Matside.</translation>
    </message>
    <message>
        <source>This file is from a newer Matside. A newer Matside will open it.</source>
        <translation>Este archivo es de un Matside más nuevo. Un Matside más nuevo lo abrirá.</translation>
    </message>
    <message>
        <source>There is more in it than can be taken: %1</source>
        <translation>Contiene más de lo que se puede tomar: %1</translation>
    </message>
    <message>
        <source>There are more photographs in it than can be taken; 4000 is the most.</source>
        <translation>Contiene más fotos de las que se pueden tomar; 4000 como máximo.</translation>
    </message>
    <message>
        <source>Something in it would swell up when unpacked, as no photograph does: %1</source>
        <translation>Algo dentro se hincharía al descomprimirlo, como no lo hace ninguna foto: %1</translation>
    </message>
    <message>
        <source>Something in it would be written outside its own folder: %1</source>
        <translation>Algo dentro se escribiría fuera de su propia carpeta: %1</translation>
    </message>
    <message>
        <source>Something in it is a link, not a file: %1</source>
        <translation>Algo dentro es un enlace, no un archivo: %1</translation>
    </message>
    <message>
        <source>Something in it is locked with a password: %1</source>
        <translation>Algo dentro está bloqueado con contraseña: %1</translation>
    </message>
    <message>
        <source>Something in it is packed in a way that is not known here: %1</source>
        <translation>Algo dentro está comprimido de una forma que aquí no se conoce: %1</translation>
    </message>
    <message>
        <source>The same name stands in it twice. %1</source>
        <translation>El mismo nombre está dos veces dentro. %1</translation>
    </message>
    <message>
        <source>Something is in it that does not belong there: %1</source>
        <translation>Dentro hay algo que no debe estar ahí: %1</translation>
    </message>
    <message>
        <source>Something is missing in it: %1. Ask for it to be sent once more.</source>
        <translation>Falta algo dentro: %1. Pedir que lo envíen otra vez.</translation>
    </message>
    <message>
        <source>Something in it was damaged or changed on the way: %1. Ask for it to be sent once more.</source>
        <translation>Algo dentro se dañó o cambió en el camino: %1. Pedir que lo envíen otra vez.</translation>
    </message>
    <message>
        <source>Its list of contents cannot be read.</source>
        <translation>No se puede leer su lista de contenido.</translation>
    </message>
    <message>
        <source>The notes in it cannot be read.</source>
        <translation>No se pueden leer sus notas.</translation>
    </message>
    <message>
        <source>The project in it cannot be read.</source>
        <translation>No se puede leer su proyecto.</translation>
    </message>
    <message>
        <source>A photograph in it is none, or is cut short: %1</source>
        <translation>Una foto de dentro no lo es, o está cortada: %1</translation>
    </message>
    <message>
        <source>There is a file of that name already, and it was left as it is.</source>
        <translation>Ya hay un archivo con ese nombre, y se dejó como está.</translation>
    </message>
    <message>
        <source>A photograph of this project is missing or cannot be read: %1</source>
        <translation>Una foto de este proyecto falta o no se puede leer: %1</translation>
    </message>
    <message>
        <source>It could not be written: the disk is full, or the folder takes no files.</source>
        <translation>No se pudo escribir: el disco está lleno, o la carpeta no admite archivos.</translation>
    </message>
    <message>
        <source>no notes</source>
        <translation>sin notas</translation>
    </message>
    <message>
        <source>one note</source>
        <translation>una nota</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 notas</translation>
    </message>
    <message>
        <source>no photographs</source>
        <translation>sin fotos</translation>
    </message>
    <message>
        <source>one photograph</source>
        <translation>una foto</translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation>%1 fotos</translation>
    </message>
    <message>
        <source>Nothing of it was kept.</source>
        <translation>No se conservó nada de ello.</translation>
    </message>
    <message>
        <source>one project</source>
        <translation>un proyecto</translation>
    </message>
    <message>
        <source>%1 projects</source>
        <translation>%1 proyectos</translation>
    </message>
    <message>
        <source>%1 by %2 blocks</source>
        <translation>%1 por %2 bloques</translation>
    </message>
    <message>
        <source>no block made yet</source>
        <translation>aún ningún bloque hecho</translation>
    </message>
    <message>
        <source>one block made</source>
        <translation>un bloque hecho</translation>
    </message>
    <message>
        <source>%1 blocks made</source>
        <translation>%1 bloques hechos</translation>
    </message>
    <message>
        <source>one thing in it cannot be read as it stands</source>
        <translation>una cosa de dentro no se puede leer tal como está</translation>
    </message>
    <message>
        <source>%1 things in it cannot be read as they stand</source>
        <translation>%1 cosas de dentro no se pueden leer tal como están</translation>
    </message>
    <message>
        <source>one photograph was gone or damaged before and is not in it</source>
        <translation>una foto ya faltaba o estaba dañada y no va dentro</translation>
    </message>
    <message>
        <source>%1 photographs were gone or damaged before and are not in it</source>
        <translation>%1 fotos ya faltaban o estaban dañadas y no van dentro</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Edge</source>
        <translation>Rematar</translation>
    </message>
    <message>
        <source>When it is done</source>
        <translation>Cuando esté acabada</translation>
    </message>
    <message>
        <source>To buy, cloth by cloth</source>
        <translation>Para comprar, tela por tela</translation>
    </message>
    <message>
        <source>Costs %1.</source>
        <translation>Cuesta %1.</translation>
    </message>
    <message>
        <source>outline, along × across</source>
        <translation>contorno, a lo largo × a lo ancho</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>costura</translation>
    </message>
    <message>
        <source>usable width of the strip&apos;s cloth</source>
        <translation>ancho útil de la tela de la tira</translation>
    </message>
    <message>
        <source>catch, planned</source>
        <translation>agarre, planeado</translation>
    </message>
    <message>
        <source>least fold</source>
        <translation>remetido mínimo</translation>
    </message>
    <message>
        <source>spare on a short sashing</source>
        <translation>reserva en una tira de unión corta</translation>
    </message>
    <message>
        <source>short sashing with its spare</source>
        <translation>tira de unión corta con su reserva</translation>
    </message>
    <message>
        <source>spare on a long sashing</source>
        <translation>reserva en una tira de unión larga</translation>
    </message>
    <message>
        <source>long sashing with its spare</source>
        <translation>tira de unión larga con su reserva</translation>
    </message>
    <message>
        <source>batting, width</source>
        <translation>guata, ancho</translation>
    </message>
    <message>
        <source>batting, least width</source>
        <translation>guata, ancho mínimo</translation>
    </message>
    <message>
        <source>batting inside the ring</source>
        <translation>guata dentro del aro</translation>
    </message>
    <message>
        <source>backing, along × across</source>
        <translation>tela trasera, a lo largo × a lo ancho</translation>
    </message>
    <message>
        <source>corners&apos; radius</source>
        <translation>radio de las esquinas</translation>
    </message>
    <message>
        <source>the arc cuts into the stippling</source>
        <translation>el arco corta el meandro</translation>
    </message>
    <message>
        <source>least radius for folded binding</source>
        <translation>radio mínimo para ribete doblado</translation>
    </message>
    <message>
        <source>patch &quot;%1&quot;, cut</source>
        <translation>parche «%1», corte</translation>
    </message>
    <message>
        <source>web for &quot;%1&quot;</source>
        <translation>entretela termoadhesiva para «%1»</translation>
    </message>
    <message>
        <source>thread for a block</source>
        <translation>hilo para un bloque</translation>
    </message>
    <message>
        <source>of it from the bobbin</source>
        <translation>de ello, de la canilla</translation>
    </message>
    <message>
        <source>ruler &quot;%1&quot;</source>
        <translation>regla «%1»</translation>
    </message>
    <message>
        <source>Look here first</source>
        <translation>Mirar aquí primero</translation>
    </message>
    <message>
        <source>All figures</source>
        <translation>Todas las medidas</translation>
    </message>
    <message>
        <source>allowance</source>
        <extracomment>cloth kept outside the block&apos;s outline</extracomment>
        <translation>margen</translation>
    </message>
    <message>
        <source>fold under</source>
        <extracomment>how much of the back strip is turned under</extracomment>
        <translation>remetido</translation>
    </message>
    <message>
        <source>catch</source>
        <extracomment>how far the fold passes the seam line</extracomment>
        <translation>agarre</translation>
    </message>
    <message>
        <source>sashing, as seen</source>
        <translation>tira de unión, a la vista</translation>
    </message>
    <message>
        <source>This bar is exactly %1 long. If it is not, print again at 100 %, without fitting to the page.</source>
        <translation>Esta barra mide exactamente %1. Si no, imprimir otra vez al 100&#xa0;%, sin ajustar a la página.</translation>
    </message>
    <message>
        <source>At true size: lay the cloth&apos;s edge on the long line, the measure is where the bar ends.</source>
        <translation>A tamaño real: poner el borde de la tela en la línea larga; la medida está donde termina la barra.</translation>
    </message>
    <message>
        <source>{Flat cloth:} for marking before anything is stitched, every tick from the one zero end. Drawn 1 : %1.</source>
        <translation>{Tela plana:} para marcar antes de bordar nada, cada raya desde el mismo extremo cero. Dibujado 1 : %1.</translation>
    </message>
    <message>
        <source>{Drawn-in cloth:} where each start is found once the blocks before it are stitched. Never mix the two scales.</source>
        <translation>{Tela encogida:} dónde está cada inicio una vez bordados los bloques anteriores. No mezclar nunca las dos escalas.</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>Place %1, block %2: start {%3}, centre {%4} (planned {%5}), gap {%6}.</source>
        <translation>Lugar %1, bloque %2: inicio {%3}, centro {%4} (planeado {%5}), hueco {%6}.</translation>
    </message>
    <message>
        <source>It does not fit: {%1} is missing.</source>
        <translation>No cabe: faltan {%1}.</translation>
    </message>
    <message>
        <source>With a gap of {%1} it would.</source>
        <translation>Con un hueco de {%1} cabría.</translation>
    </message>
    <message>
        <source>{Strip %1}, begun: %2 long when flat, its end now at %3.</source>
        <translation>{Tira %1}, empezada: %2 de largo en plano, su extremo ahora en %3.</translation>
    </message>
    <message>
        <source>The last outline ended at {%1}.</source>
        <translation>El último contorno terminó en {%1}.</translation>
    </message>
    <message>
        <source>Hoop: the strip end to end</source>
        <translation>Bordar: la tira de extremo a extremo</translation>
    </message>
    <message>
        <source>Back, as it lies turned over</source>
        <translation>Trasera, como queda al darle la vuelta</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Delantera</translation>
    </message>
    <message>
        <source>%1 blocks are too many to draw one by one: lay them out from the labels, rows by letter from the top, columns by number from the left.</source>
        <translation>%1 bloques son demasiados para dibujarlos uno a uno: ordenarlos por las etiquetas, filas por letra desde arriba, columnas por número desde la izquierda.</translation>
    </message>
    <message>
        <source>{Match marks} on every long sashing, from the row&apos;s raw left end, which is zero; a row is %1 raw.</source>
        <translation>{Marcas de encuentro} en cada tira de unión larga, desde el extremo cortado izquierdo de la fila, que es cero; una fila mide %1 sin rematar.</translation>
    </message>
    <message>
        <source>Long sashing, %1, in pieces: %2; joins at %3 from the row&apos;s raw left end.</source>
        <translation>Tira de unión larga, %1, en trozos: %2; empalmes en %3 desde el extremo cortado izquierdo de la fila.</translation>
    </message>
    <message>
        <source>Trim and fold</source>
        <translation>Recortar y doblar</translation>
    </message>
    <message>
        <source>Join: both faces</source>
        <translation>Unir: las dos caras</translation>
    </message>
    <message>
        <source>front</source>
        <translation>delantera</translation>
    </message>
    <message>
        <source>back</source>
        <translation>trasera</translation>
    </message>
    <message>
        <source>%1 · page %2 of %3</source>
        <extracomment>a page&apos;s footer: the project&apos;s name, the page and how many there are</extracomment>
        <translation>%1 · página %2 de %3</translation>
    </message>
    <message>
        <source>%1, continued</source>
        <extracomment>at the top of a page: the heading it goes on with</extracomment>
        <translation>%1, continuación</translation>
    </message>
    <message>
        <source>drawn 1 : %1</source>
        <extracomment>drawn so many times smaller: 1 : 10</extracomment>
        <translation>dibujado 1 : %1</translation>
    </message>
    <message>
        <source>{%1} × {%2} finished</source>
        <extracomment>along × across, of the finished piece</extracomment>
        <translation>{%1} × {%2} acabada</translation>
    </message>
    <message>
        <source>%1 × %2 blocks</source>
        <extracomment>columns × rows of blocks</extracomment>
        <translation>%1 × %2 bloques</translation>
    </message>
    <message>
        <source>A ring: not tried yet. Make the trial before you cut the rest.</source>
        <translation>Un círculo: sin probar. Hacer la prueba antes de cortar el resto.</translation>
    </message>
    <message>
        <source>The sheet could not be written to %1: %2. Choose another place.</source>
        <translation>No se pudo escribir la hoja en %1: %2. Elegir otro lugar.</translation>
    </message>
    <message>
        <source>and so on</source>
        <extracomment>the list is cut short</extracomment>
        <translation>y más</translation>
    </message>
    <message>
        <source>… and %1 more lines: see the long form.</source>
        <translation>… y %1 líneas más: ver la versión larga.</translation>
    </message>
    <message>
        <source>For the trial.</source>
        <translation>Para la prueba.</translation>
    </message>
    <message>
        <source>Cut, cloth by cloth</source>
        <translation>Cortar, tela por tela</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>a heading and the cloth it goes on with</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>For a class: %1 kits.</source>
        <translation>Para una clase: %1 kits.</translation>
    </message>
    <message>
        <source>Kits share their hoop strips: stitch them ahead and hand out the blocks.</source>
        <translation>Los kits comparten las tiras de bordado: bordarlas antes y repartir los bloques.</translation>
    </message>
    <message>
        <source>To cut for all kits</source>
        <translation>Para cortar, todos los kits</translation>
    </message>
    <message>
        <source>in all</source>
        <extracomment>heads of a table: pieces for all kits together, pieces in one kit</extracomment>
        <translation>en total</translation>
    </message>
    <message>
        <source>in a kit</source>
        <translation>por kit</translation>
    </message>
    <message>
        <source>size</source>
        <translation>medida</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>Blocks, stitched ahead; the size is when trimmed.</source>
        <translation>Bloques ya bordados; la medida es del bloque recortado.</translation>
    </message>
    <message>
        <source>Kit %1 of %2</source>
        <translation>Kit %1 de %2</translation>
    </message>
    <message>
        <source>A kit: copy this page, once for each of %1</source>
        <translation>Un kit: copiar esta página, una por cada uno de %1</translation>
    </message>
    <message>
        <source>Name:</source>
        <extracomment>whose kit it is: a line to write on follows</extracomment>
        <translation>Nombre:</translation>
    </message>
    <message>
        <source>In the kit</source>
        <translation>En el kit</translation>
    </message>
    <message>
        <source>The diagram could not be written to %1: %2. Choose another place.</source>
        <translation>El dibujo no pudo escribirse en %1: %2. Elegir otro lugar.</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>la carpeta no puede crearse</translation>
    </message>
    <message>
        <source>Piece %1 of what you have</source>
        <extracomment>a piece of cloth she has already, numbered</extracomment>
        <translation>Trozo %1 de lo que ya hay</translation>
    </message>
    <message>
        <source>%1 left over</source>
        <extracomment>%1 a length: nothing is cut from that much of the strip</extracomment>
        <translation>sobran %1</translation>
    </message>
    <message>
        <source>Seam %1.</source>
        <translation>Costura %1.</translation>
    </message>
    <message>
        <source>One is to practise the join with.</source>
        <translation>Una es para practicar la unión.</translation>
    </message>
    <message>
        <source>along the selvage: %1</source>
        <extracomment>%1 &quot;3 × 2 in: 5 × 7 1/2 in&quot;, strips that run along the selvage instead of across the cloth</extracomment>
        <translation>a lo largo del orillo: %1</translation>
    </message>
</context>
<context>
    <name>ShelfPage</name>
    <message>
        <source>On the shelf</source>
        <translation>En el estante</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Language, screen</source>
        <translation>Idioma, pantalla</translation>
    </message>
    <message>
        <source>Open or back up</source>
        <translation>Abrir o respaldar</translation>
    </message>
    <message>
        <source>Hide what is put away</source>
        <extracomment>pieces that were put away, out of sight</extracomment>
        <translation>Ocultar lo apartado</translation>
    </message>
    <message>
        <source>Show what is put away</source>
        <translation>Ver lo apartado</translation>
    </message>
</context>
<context>
    <name>ShopFoot</name>
    <message>
        <source>Cost and price</source>
        <translation>Coste y precio</translation>
    </message>
    <message>
        <source>Kits for a class</source>
        <translation>Kits para una clase</translation>
    </message>
    <message>
        <source>Cloth you have</source>
        <translation>Tela que ya hay</translation>
    </message>
    <message>
        <source>Batting: roll or package</source>
        <extracomment>batting bought cut from the roll, or ready cut in packages</extracomment>
        <translation>Guata: rollo o paquete</translation>
    </message>
</context>
<context>
    <name>ShopPage</name>
    <message>
        <source>To buy</source>
        <translation>Para comprar</translation>
    </message>
    <message>
        <source>%1: buy %2</source>
        <translation>%1: comprar %2</translation>
    </message>
    <message>
        <source>bought</source>
        <translation>comprado</translation>
    </message>
    <message>
        <source>not bought yet</source>
        <translation>sin comprar</translation>
    </message>
    <message>
        <source>Costs %1.</source>
        <translation>Cuesta %1.</translation>
    </message>
    <message>
        <source>Light and dark</source>
        <extracomment>the page on how light and how dark the cloths are</extracomment>
        <translation>Claro y oscuro</translation>
    </message>
    <message>
        <source>List to take</source>
        <extracomment>opens the list to take to the shop</extracomment>
        <translation>Lista de la compra</translation>
    </message>
    <message>
        <source>How %1 is cut: %2 long, %3 wide</source>
        <extracomment>spoken: %1 a cloth, %2 and %3 its two sides</extracomment>
        <translation>%1, corte: %2 de largo, %3 de ancho</translation>
    </message>
    <message>
        <source>To buy for %1 kits</source>
        <extracomment>heading of a shopping list; kits: all that a student needs for one piece, for so many students</extracomment>
        <translation>Compra para %1 kits</translation>
    </message>
</context>
<context>
    <name>SideDrawing</name>
    <message>
        <source>on the cut side</source>
        <translation>en el lado cortado</translation>
    </message>
    <message>
        <source>on the stitches</source>
        <translation>en la línea</translation>
    </message>
</context>
<context>
    <name>SideSheet</name>
    <message>
        <source>Back to the work</source>
        <translation>Volver al trabajo</translation>
    </message>
</context>
<context>
    <name>SpreadActs</name>
    <message>
        <source>Back to the work</source>
        <translation>Volver al trabajo</translation>
    </message>
</context>
<context>
    <name>StepButton</name>
    <message>
        <source>more</source>
        <translation>más</translation>
    </message>
    <message>
        <source>less</source>
        <translation>menos</translation>
    </message>
</context>
<context>
    <name>StepHead</name>
    <message>
        <source>Nothing left to do here</source>
        <translation>Aquí no queda nada por hacer</translation>
    </message>
</context>
<context>
    <name>StepPage</name>
    <message>
        <source>Lay the block flat, off the hoop and rested. Measure its four sides and both diagonals.</source>
        <translation>Poner el bloque plano, fuera del bastidor y reposado. Medir sus cuatro lados y ambas diagonales.</translation>
    </message>
</context>
<context>
    <name>StepTargets</name>
    <message>
        <source>Back</source>
        <translation>Volver</translation>
    </message>
    <message>
        <source>Something’s wrong</source>
        <translation>Algo va mal</translation>
    </message>
</context>
<context>
    <name>StepWords</name>
    <message>
        <source>and {%1} %2</source>
        <translation>y {%1} %2</translation>
    </message>
    <message>
        <source>Not tried yet</source>
        <translation>Sin probar</translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1, menos</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1, más</translation>
    </message>
    <message>
        <source>worked out</source>
        <extracomment>stands under a value the app reckons itself</extracomment>
        <translation>calculado</translation>
    </message>
</context>
<context>
    <name>StockPiece</name>
    <message>
        <source>size of the cloth: drag, or use the arrow keys</source>
        <translation>tamaño de la tela: arrastrar o usar las teclas de flecha</translation>
    </message>
</context>
<context>
    <name>StockShelf</name>
    <message>
        <source>These are cut up first. Press one to take it away.</source>
        <translation>Estos se cortan primero. Pulsar uno para quitarlo.</translation>
    </message>
    <message>
        <source>What you have is cut up before anything is bought. Measure it without its selvages.</source>
        <translation>Lo que ya hay se corta antes de comprar nada. Medirlo sin los orillos.</translation>
    </message>
    <message>
        <source>take away: %1</source>
        <extracomment>spoken name of a piece of cloth in the list: pressing it takes it away</extracomment>
        <translation>quitar: %1</translation>
    </message>
</context>
<context>
    <name>Store</name>
    <message>
        <source>The disk is full. Nothing was lost; free some room and try again.</source>
        <translation>El disco está lleno. No se perdió nada; liberar espacio e intentar otra vez.</translation>
    </message>
    <message>
        <source>This is open for reading only, so nothing can be changed here.</source>
        <translation>Está abierto solo para leer; aquí no se puede cambiar nada.</translation>
    </message>
    <message>
        <source>Another program holds the file. Try again in a moment.</source>
        <translation>Otro programa tiene el archivo. Intentar otra vez en un momento.</translation>
    </message>
    <message>
        <source>The project was changed elsewhere. Open it again from the shelf.</source>
        <translation>El proyecto se cambió en otro lugar. Abrirlo otra vez desde el estante.</translation>
    </message>
    <message>
        <source>These projects were saved by a newer Matside. They were left as they are.</source>
        <translation>Estos proyectos los guardó un Matside más nuevo. Se dejaron como están.</translation>
    </message>
    <message>
        <source>The file is damaged. What can be read is shown.</source>
        <translation>El archivo está dañado. Se muestra lo que se puede leer.</translation>
    </message>
    <message>
        <source>Something in this project cannot be read. Open it and mend that first; nothing was copied.</source>
        <translation>Algo en este proyecto no se puede leer. Abrirlo y arreglarlo primero; no se copió nada.</translation>
    </message>
    <message>
        <source>There is nothing left to undo.</source>
        <translation>No queda nada por deshacer.</translation>
    </message>
    <message>
        <source>That could not be saved: %1</source>
        <translation>No se pudo guardar: %1</translation>
    </message>
    <message>
        <source>Something in this project cannot be read. Mend it at Fit first; nothing was changed.</source>
        <translation>Algo en este proyecto no se puede leer. Arreglarlo primero en «Planear»; no se cambió nada.</translation>
    </message>
    <message>
        <source>The folder of the projects cannot be used. Free some room, and see that it may be read and written.</source>
        <translation>La carpeta de los proyectos no se puede usar. Liberar espacio y mirar que se pueda leer y escribir.</translation>
    </message>
    <message>
        <source>Your projects are from an earlier Matside. There was no room for the copy that comes before they are brought up to date, so they were left as they are. Free some room.</source>
        <translation>Los proyectos son de un Matside anterior. No había sitio para la copia que se hace antes de ponerlos al día, así que quedaron como estaban. Liberar espacio.</translation>
    </message>
    <message>
        <source>Your projects are from an earlier Matside, and their folder cannot be written, so they were left as they are. See that it may be written.</source>
        <translation>Los proyectos son de un Matside anterior y en su carpeta no se puede escribir, así que quedaron como estaban. Mirar que se pueda escribir en ella.</translation>
    </message>
</context>
<context>
    <name>StripDrawing</name>
    <message>
        <source>next</source>
        <translation>siguiente</translation>
    </message>
</context>
<context>
    <name>TableDrawing</name>
    <message>
        <source>The piece is drawn here once it has a size.</source>
        <extracomment>shown where the drawing will be while the project has no size yet</extracomment>
        <translation>La pieza se dibuja aquí en cuanto tenga un tamaño.</translation>
    </message>
    <message>
        <source>size of the piece: drag, or use the arrow keys</source>
        <translation>tamaño de la pieza: arrastrar o usar las teclas de flecha</translation>
    </message>
</context>
<context>
    <name>TakeSheet</name>
    <message>
        <source>To take</source>
        <translation>A la tienda</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>puts the list to take away again</extracomment>
        <translation>Volver</translation>
    </message>
</context>
<context>
    <name>TakeSlip</name>
    <message>
        <source>in the basket</source>
        <translation>en la cesta</translation>
    </message>
    <message>
        <source>not in the basket yet</source>
        <translation>aún no está en la cesta</translation>
    </message>
</context>
<context>
    <name>Tally</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>a tally that is too long to draw: so many made of so many</extracomment>
        <translation>%1 de %2</translation>
    </message>
</context>
<context>
    <name>TermRow</name>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a term of a sum does</extracomment>
        <translation>ver el cálculo</translation>
    </message>
    <message>
        <source>as you entered it</source>
        <extracomment>stands under a value that the maker entered herself</extracomment>
        <translation>tal como se anotó</translation>
    </message>
    <message>
        <source>preset</source>
        <extracomment>stands under a value that every new piece has and that she left as it was</extracomment>
        <translation>valor inicial</translation>
    </message>
    <message>
        <source>the common size</source>
        <extracomment>stands under the size of the blocks: one that blocks off size have in common, taken for all</extracomment>
        <translation>la medida común</translation>
    </message>
</context>
<context>
    <name>TrialReading</name>
    <message>
        <source>not yet read</source>
        <translation>aún sin medir</translation>
    </message>
    <message>
        <source>It is a gap</source>
        <translation>Es una separación</translation>
    </message>
    <message>
        <source>It is an overlap</source>
        <translation>Es un solape</translation>
    </message>
</context>
<context>
    <name>TrialSays</name>
    <message>
        <source>The trial: first a test block and a test join, so that the figures fit your cloth.</source>
        <extracomment>the trial: a block and a join made before the piece&apos;s own cloth is cut; what is measured on them sets seam and draw-up</extracomment>
        <translation>La prueba: primero un bloque de prueba y una unión de prueba, para que las medidas vayan con la tela.</translation>
    </message>
    <message>
        <source>The trial: first a test block, so that the figures fit your cloth.</source>
        <translation>La prueba: primero un bloque de prueba, para que las medidas vayan con la tela.</translation>
    </message>
</context>
<context>
    <name>TrialSheet</name>
    <message>
        <source>Take these measures</source>
        <translation>Tomar estas medidas</translation>
    </message>
    <message numerus="yes">
        <source>%n still to read</source>
        <extracomment>of the readings of the trial; short: it stands on a button that can be pressed once all are read</extracomment>
        <translation>
            <numerusform>Queda %n por medir</numerusform>
            <numerusform>Quedan %n por medir</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TrimPage</name>
    <message>
        <source>Measure</source>
        <extracomment>on a button: the block in hand is measured</extracomment>
        <translation>Medir</translation>
    </message>
    <message>
        <source>The strip comes apart along a ruler, down the middle of each gap; blocks off it so far: %1</source>
        <translation>La tira se separa con regla por el medio de cada hueco; bloques ya separados: %1</translation>
    </message>
</context>
<context>
    <name>Tuner</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation>%1, menos</translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation>%1, más</translation>
    </message>
</context>
<context>
    <name>UndoneSheet</name>
    <message>
        <source>Was it tapped by mistake, or is the piece spoiled?</source>
        <translation>¿Se tocó por error o se estropeó el trozo?</translation>
    </message>
    <message>
        <source>Tapped by mistake</source>
        <translation>Tocado por error</translation>
    </message>
    <message>
        <source>Done and spoiled</source>
        <translation>Hecho y estropeado</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Dejarlo así</translation>
    </message>
</context>
<context>
    <name>WishScene</name>
    <message>
        <source>Wanted: %1</source>
        <translation>Se desea: %1</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Pleat on the back</source>
        <extracomment>a fold of the back cloth stitched down by mistake</extracomment>
        <translation>Pliegue en la trasera</translation>
    </message>
    <message>
        <source>Thread broke or loops</source>
        <translation>Hilo roto o con bucles</translation>
    </message>
    <message>
        <source>Patch not covered</source>
        <extracomment>patch: a shape of cloth stitched onto the block</extracomment>
        <translation>Parche sin cubrir</translation>
    </message>
    <message>
        <source>Stain or hoop mark</source>
        <translation>Mancha o marca del bastidor</translation>
    </message>
    <message>
        <source>Look at it again</source>
        <translation>Mirarlo otra vez</translation>
    </message>
    <message>
        <source>That is not a whole number.</source>
        <translation>No es un número entero.</translation>
    </message>
    <message>
        <source>It needs a name. The old one was kept.</source>
        <translation>Necesita un nombre. Se conservó el anterior.</translation>
    </message>
    <message>
        <source>That name is too long; %1 letters are the most.</source>
        <translation>Ese nombre es demasiado largo; %1 letras como máximo.</translation>
    </message>
    <message>
        <source>A price is a number like 9.50.</source>
        <translation>Un precio es un número como 9,50.</translation>
    </message>
    <message>
        <source>That is too small; %1 is the least.</source>
        <translation>Es demasiado pequeño; %1 como mínimo.</translation>
    </message>
    <message>
        <source>That is longer than any piece here can be.</source>
        <translation>Es más largo de lo que puede ser aquí una pieza.</translation>
    </message>
    <message>
        <source>This lies between %1 and %2.</source>
        <translation>Va de %1 a %2.</translation>
    </message>
    <message>
        <source>Draw-up lies between 0 % and 15 %.</source>
        <translation>La merma va de 0&#xa0;% a 15&#xa0;%.</translation>
    </message>
    <message>
        <source>That does not belong here.</source>
        <translation>Eso no va aquí.</translation>
    </message>
    <message>
        <source>new cloth</source>
        <translation>tela nueva</translation>
    </message>
    <message>
        <source>new ruler</source>
        <translation>regla nueva</translation>
    </message>
    <message>
        <source>“%1” is the cloth of the patch “%2”: it stays while the patch does.</source>
        <extracomment>a cloth cannot be taken away; %1 is the cloth, %2 a patch cut from it</extracomment>
        <translation>«%1» es la tela del parche «%2»: se queda mientras se quede el parche.</translation>
    </message>
    <message>
        <source>“%1” has been cut already: it stays with this piece.</source>
        <translation>«%1» ya está cortada: se queda con esta pieza.</translation>
    </message>
    <message>
        <source>“%1” has been bought or measured: it stays with this piece.</source>
        <translation>«%1» ya está comprada o medida: se queda con esta pieza.</translation>
    </message>
    <message>
        <source>More than %1 cloths do not fit in one piece.</source>
        <translation>Más de %1 telas no caben en una pieza.</translation>
    </message>
    <message>
        <source>More than %1 rulers cannot be kept.</source>
        <translation>No se pueden guardar más de %1 reglas.</translation>
    </message>
    <message>
        <source>One ruler stays: every cut is laid out with it.</source>
        <translation>Tiene que quedar una regla: cada corte se traza con ella.</translation>
    </message>
    <message>
        <source>It is no longer there.</source>
        <translation>Ya no está.</translation>
    </message>
    <message>
        <source>a scant</source>
        <extracomment>just under the ruler&apos;s mark that follows</extracomment>
        <translation>casi</translation>
    </message>
    <message>
        <source>a generous</source>
        <extracomment>just over the ruler&apos;s mark that follows</extracomment>
        <translation>algo más de</translation>
    </message>
    <message>
        <source>too long to tell</source>
        <translation>demasiado largo para decirlo</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>first</source>
        <translation>primer</translation>
    </message>
    <message>
        <source>second</source>
        <translation>segundo</translation>
    </message>
    <message>
        <source>third</source>
        <translation>tercer</translation>
    </message>
    <message>
        <source>fourth</source>
        <translation>cuarto</translation>
    </message>
    <message>
        <source>fifth</source>
        <translation>quinto</translation>
    </message>
    <message>
        <source>sixth</source>
        <translation>sexto</translation>
    </message>
    <message>
        <source>seventh</source>
        <translation>séptimo</translation>
    </message>
    <message>
        <source>eighth</source>
        <translation>octavo</translation>
    </message>
    <message>
        <source>ninth</source>
        <translation>noveno</translation>
    </message>
    <message>
        <source>tenth</source>
        <translation>décimo</translation>
    </message>
    <message>
        <source>last</source>
        <extracomment>the last of more than ten, as in &quot;and the last block will not fit&quot;</extracomment>
        <translation>último</translation>
    </message>
    <message>
        <source>table</source>
        <translation>mesa</translation>
    </message>
    <message>
        <source>length</source>
        <translation>largo</translation>
    </message>
    <message>
        <source>width</source>
        <translation>ancho</translation>
    </message>
    <message>
        <source>across</source>
        <translation>a lo ancho</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>columnas</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>filas</translation>
    </message>
    <message>
        <source>block along</source>
        <translation>bloque a lo largo</translation>
    </message>
    <message>
        <source>block across</source>
        <translation>bloque a lo ancho</translation>
    </message>
    <message>
        <source>spare blocks</source>
        <translation>bloques de reserva</translation>
    </message>
    <message>
        <source>made</source>
        <translation>hechura</translation>
    </message>
    <message>
        <source>clean back</source>
        <translation>trasera limpia</translation>
    </message>
    <message>
        <source>kits</source>
        <translation>kits</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>costura</translation>
    </message>
    <message>
        <source>batting’s thickness</source>
        <translation>grosor de la guata</translation>
    </message>
    <message>
        <source>draw-up along</source>
        <translation>merma a lo largo</translation>
    </message>
    <message>
        <source>draw-up across</source>
        <translation>merma a lo ancho</translation>
    </message>
    <message>
        <source>sashing, as seen</source>
        <translation>tira de unión, a la vista</translation>
    </message>
    <message>
        <source>back strip, cut</source>
        <translation>tira trasera, corte</translation>
    </message>
    <message>
        <source>block’s allowance</source>
        <translation>margen del bloque</translation>
    </message>
    <message>
        <source>catch</source>
        <translation>agarre</translation>
    </message>
    <message>
        <source>turn over the bulk</source>
        <translation>vuelta sobre lo grueso</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>outside, along</source>
        <translation>exterior, a lo largo</translation>
    </message>
    <message>
        <source>outside, across</source>
        <translation>exterior, a lo ancho</translation>
    </message>
    <message>
        <source>field, along</source>
        <translation>campo, a lo largo</translation>
    </message>
    <message>
        <source>field, across</source>
        <translation>campo, a lo ancho</translation>
    </message>
    <message>
        <source>opening, along</source>
        <translation>abertura, a lo largo</translation>
    </message>
    <message>
        <source>opening, across</source>
        <translation>abertura, a lo ancho</translation>
    </message>
    <message>
        <source>usable length</source>
        <translation>largo útil</translation>
    </message>
    <message>
        <source>gap between outlines</source>
        <translation>hueco entre contornos</translation>
    </message>
    <message>
        <source>margin past the hoop</source>
        <translation>franja fuera del bastidor</translation>
    </message>
    <message>
        <source>placing by eye, within</source>
        <translation>colocación a ojo, a menos de</translation>
    </message>
    <message>
        <source>sliver cut away</source>
        <translation>tirilla recortada</translation>
    </message>
    <message>
        <source>tail past the frame</source>
        <translation>cola fuera del bastidor</translation>
    </message>
    <message>
        <source>waste tails sewn on</source>
        <translation>colas de sobrante cosidas</translation>
    </message>
    <message>
        <source>frame may lie on the last block</source>
        <translation>el bastidor puede pisar el último bloque</translation>
    </message>
    <message>
        <source>line down the sashings</source>
        <extracomment>one line of decorative stitching down the middle of every sashing</extracomment>
        <translation>línea por las tiras de unión</translation>
    </message>
    <message>
        <source>gaps give the sashing</source>
        <translation>los huecos dan las tiras de unión</translation>
    </message>
    <message>
        <source>edge</source>
        <translation>borde</translation>
    </message>
    <message>
        <source>cloth kept outside</source>
        <translation>tela conservada por fuera</translation>
    </message>
    <message>
        <source>binding’s seam</source>
        <translation>costura del ribete</translation>
    </message>
    <message>
        <source>binding</source>
        <translation>ribete</translation>
    </message>
    <message>
        <source>sewn on the back</source>
        <translation>cosido por detrás</translation>
    </message>
    <message>
        <source>corners</source>
        <translation>esquinas</translation>
    </message>
    <message>
        <source>corners’ radius</source>
        <translation>radio de las esquinas</translation>
    </message>
    <message>
        <source>to spare</source>
        <translation>de reserva</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>tela</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>part it plays</source>
        <translation>su papel</translation>
    </message>
    <message>
        <source>usable width</source>
        <translation>ancho útil</translation>
    </message>
    <message>
        <source>sold by the</source>
        <translation>se vende por</translation>
    </message>
    <message>
        <source>price of a yard</source>
        <translation>precio por yarda</translation>
    </message>
    <message>
        <source>price of a metre</source>
        <translation>precio por metro</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>color</translation>
    </message>
    <message>
        <source>its pattern has an up</source>
        <translation>estampado direccional</translation>
    </message>
    <message>
        <source>Take this cloth away</source>
        <translation>Quitar esta tela</translation>
    </message>
    <message>
        <source>Add a cloth</source>
        <translation>Añadir una tela</translation>
    </message>
    <message>
        <source>ruler</source>
        <translation>regla</translation>
    </message>
    <message>
        <source>its finest mark</source>
        <translation>su marca más fina</translation>
    </message>
    <message>
        <source>Take this ruler away</source>
        <translation>Quitar esta regla</translation>
    </message>
    <message>
        <source>Add a ruler</source>
        <translation>Añadir una regla</translation>
    </message>
    <message>
        <source>finest mark</source>
        <translation>marca más fina</translation>
    </message>
    <message>
        <source>The table</source>
        <translation>La mesa</translation>
    </message>
    <message>
        <source>The blocks</source>
        <translation>Los bloques</translation>
    </message>
    <message>
        <source>Seam and draw-up</source>
        <translation>Costura y merma</translation>
    </message>
    <message>
        <source>Sashing and fold</source>
        <translation>Tiras de unión y remetido</translation>
    </message>
    <message>
        <source>The hoop</source>
        <translation>El bastidor</translation>
    </message>
    <message>
        <source>The hoop strip</source>
        <translation>La tira de bordado</translation>
    </message>
    <message>
        <source>The edge</source>
        <translation>El borde</translation>
    </message>
    <message>
        <source>The cloths</source>
        <translation>Las telas</translation>
    </message>
    <message>
        <source>Your rulers</source>
        <translation>Las reglas propias</translation>
    </message>
    <message>
        <source>no table</source>
        <translation>sin mesa</translation>
    </message>
    <message>
        <source>four-sided</source>
        <translation>rectangular</translation>
    </message>
    <message>
        <source>round</source>
        <translation>redonda</translation>
    </message>
    <message>
        <source>reversible</source>
        <translation>reversible</translation>
    </message>
    <message>
        <source>with one clean back</source>
        <translation>con una trasera limpia</translation>
    </message>
    <message>
        <source>layered and bound</source>
        <translation>en capas y ribeteada</translation>
    </message>
    <message>
        <source>bagged out</source>
        <translation>cosida y vuelta</translation>
    </message>
    <message>
        <source>bound</source>
        <translation>ribeteado</translation>
    </message>
    <message>
        <source>framed</source>
        <translation>enmarcado</translation>
    </message>
    <message>
        <source>square</source>
        <translation>rectas</translation>
    </message>
    <message>
        <source>rounded, on bias</source>
        <translation>redondas, al bies</translation>
    </message>
    <message>
        <source>double fold</source>
        <translation>doblez doble</translation>
    </message>
    <message>
        <source>single fold</source>
        <translation>doblez simple</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>a mano</translation>
    </message>
    <message>
        <source>by machine</source>
        <translation>a máquina</translation>
    </message>
    <message>
        <source>two rings</source>
        <translation>dos aros</translation>
    </message>
    <message>
        <source>magnetic frame</source>
        <translation>bastidor magnético</translation>
    </message>
    <message>
        <source>front</source>
        <translation>delantera</translation>
    </message>
    <message>
        <source>back</source>
        <translation>trasera</translation>
    </message>
    <message>
        <source>batting</source>
        <extracomment>the layer between the cloths</extracomment>
        <translation>guata</translation>
    </message>
    <message>
        <source>patch</source>
        <translation>parche</translation>
    </message>
    <message>
        <source>web</source>
        <extracomment>fusible web</extracomment>
        <translation>entretela termoadhesiva</translation>
    </message>
    <message>
        <source>sashing, front</source>
        <translation>tira de unión, delantera</translation>
    </message>
    <message>
        <source>sashing, back</source>
        <translation>tira de unión, trasera</translation>
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
        <translation>sin teñir</translation>
    </message>
    <message>
        <source>oat</source>
        <translation>avena</translation>
    </message>
    <message>
        <source>ochre</source>
        <translation>ocre</translation>
    </message>
    <message>
        <source>rust</source>
        <translation>teja</translation>
    </message>
    <message>
        <source>madder</source>
        <translation>granza</translation>
    </message>
    <message>
        <source>plum</source>
        <translation>ciruela</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>azul</translation>
    </message>
    <message>
        <source>teal</source>
        <translation>petróleo</translation>
    </message>
    <message>
        <source>sage</source>
        <translation>salvia</translation>
    </message>
    <message>
        <source>bark</source>
        <translation>corteza</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>soot</source>
        <translation>hollín</translation>
    </message>
    <message>
        <source>new project</source>
        <translation>proyecto nuevo</translation>
    </message>
    <message>
        <source>demo</source>
        <translation>ejemplo</translation>
    </message>
    <message>
        <source>make again</source>
        <translation>repetir</translation>
    </message>
    <message>
        <source>copy in millimetres</source>
        <translation>copia en milímetros</translation>
    </message>
    <message>
        <source>bring in</source>
        <extracomment>a project taken out of a share file</extracomment>
        <translation>traer</translation>
    </message>
    <message>
        <source>change</source>
        <translation>cambiar</translation>
    </message>
    <message>
        <source>layout taken</source>
        <extracomment>layout: how many blocks across and down, their size and the sashing between them</extracomment>
        <translation>reparto tomado</translation>
    </message>
    <message>
        <source>cloth added</source>
        <translation>tela añadida</translation>
    </message>
    <message>
        <source>ruler added</source>
        <translation>regla añadida</translation>
    </message>
    <message>
        <source>cloth taken away</source>
        <translation>tela quitada</translation>
    </message>
    <message>
        <source>ruler taken away</source>
        <translation>regla quitada</translation>
    </message>
    <message>
        <source>remedy</source>
        <translation>remedio</translation>
    </message>
    <message>
        <source>drag</source>
        <translation>arrastrar</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation>estropeado</translation>
    </message>
    <message>
        <source>trial</source>
        <translation>prueba</translation>
    </message>
    <message>
        <source>trial put off</source>
        <translation>prueba aplazada</translation>
    </message>
    <message>
        <source>trial taken back</source>
        <translation>prueba retirada</translation>
    </message>
    <message>
        <source>something went wrong</source>
        <translation>algo salió mal</translation>
    </message>
    <message>
        <source>draw-up taken</source>
        <translation>merma tomada</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>common size taken</source>
        <translation>medida común tomada</translation>
    </message>
    <message>
        <source>ticked as bought</source>
        <translation>marcado como comprado</translation>
    </message>
    <message>
        <source>last outline measured</source>
        <translation>último contorno medido</translation>
    </message>
    <message>
        <source>hoop chosen</source>
        <translation>bastidor elegido</translation>
    </message>
    <message>
        <source>sashing strips changed</source>
        <translation>tiras de unión cambiadas</translation>
    </message>
    <message>
        <source>pins counted</source>
        <translation>alfileres contados</translation>
    </message>
    <message>
        <source>blocks changed places</source>
        <translation>bloques cambiados de lugar</translation>
    </message>
    <message>
        <source>block logged</source>
        <translation>bloque anotado</translation>
    </message>
    <message>
        <source>hoop strip, cut</source>
        <translation>tira de bordado, corte</translation>
    </message>
    <message>
        <source>blocks on a strip</source>
        <translation>bloques por tira</translation>
    </message>
    <message>
        <source>hoop strips</source>
        <translation>tiras de bordado</translation>
    </message>
    <message>
        <source>gap that yields sashing</source>
        <extracomment>the first gaps of a strip, wide enough to be cut into sashing</extracomment>
        <translation>hueco que da tira de unión</translation>
    </message>
    <message>
        <source>end margin</source>
        <translation>franja del extremo</translation>
    </message>
    <message>
        <source>advance</source>
        <translation>avance</translation>
    </message>
    <message>
        <source>left on each strip</source>
        <translation>resto en cada tira</translation>
    </message>
    <message>
        <source>frame’s reach</source>
        <translation>vuelo del bastidor</translation>
    </message>
    <message>
        <source>size sent, along</source>
        <translation>medida enviada, a lo largo</translation>
    </message>
    <message>
        <source>size sent, across</source>
        <translation>medida enviada, a lo ancho</translation>
    </message>
    <message>
        <source>trimmed block, along</source>
        <translation>bloque recortado, a lo largo</translation>
    </message>
    <message>
        <source>trimmed block, across</source>
        <translation>bloque recortado, a lo ancho</translation>
    </message>
    <message>
        <source>front sashing, cut</source>
        <translation>tira de unión delantera, corte</translation>
    </message>
    <message>
        <source>back sashing, cut</source>
        <translation>tira de unión trasera, corte</translation>
    </message>
    <message>
        <source>allowances will meet within</source>
        <translation>los márgenes se tocan a menos de</translation>
    </message>
    <message>
        <source>short sashings a face</source>
        <translation>tiras de unión cortas por cara</translation>
    </message>
    <message>
        <source>short sashing</source>
        <translation>tira de unión corta</translation>
    </message>
    <message>
        <source>long sashings a face</source>
        <translation>tiras de unión largas por cara</translation>
    </message>
    <message>
        <source>long sashing</source>
        <translation>tira de unión larga</translation>
    </message>
    <message>
        <source>fold under</source>
        <translation>remetido</translation>
    </message>
    <message>
        <source>which catches</source>
        <translation>que agarra</translation>
    </message>
    <message>
        <source>raw, along</source>
        <translation>sin rematar, a lo largo</translation>
    </message>
    <message>
        <source>raw, across</source>
        <translation>sin rematar, a lo ancho</translation>
    </message>
    <message>
        <source>finished, along</source>
        <translation>acabada, a lo largo</translation>
    </message>
    <message>
        <source>finished, across</source>
        <translation>acabada, a lo ancho</translation>
    </message>
    <message>
        <source>binding, cut</source>
        <translation>ribete, corte</translation>
    </message>
    <message>
        <source>binding, length</source>
        <translation>ribete, largo</translation>
    </message>
    <message>
        <source>binding strips</source>
        <translation>tiras de ribete</translation>
    </message>
    <message>
        <source>square for the bias</source>
        <extracomment>bias: cloth cut slantwise; one continuous strip is cut from a square</extracomment>
        <translation>cuadrado para el bies</translation>
    </message>
    <message>
        <source>table showing, along</source>
        <translation>mesa a la vista, a lo largo</translation>
    </message>
    <message>
        <source>table showing, across</source>
        <translation>mesa a la vista, a lo ancho</translation>
    </message>
    <message>
        <source>table showing at the corner</source>
        <translation>mesa a la vista en la esquina</translation>
    </message>
    <message>
        <source>binding, exact</source>
        <translation>ribete, exacto</translation>
    </message>
    <message>
        <source>gap on paper</source>
        <translation>separación en el papel</translation>
    </message>
    <message>
        <source>outlines, along</source>
        <translation>contornos, a lo largo</translation>
    </message>
    <message>
        <source>outlines, across</source>
        <translation>contornos, a lo ancho</translation>
    </message>
    <message>
        <source>used of the strip</source>
        <translation>usado de la tira</translation>
    </message>
    <message>
        <source>start on the strip</source>
        <translation>inicio en la tira</translation>
    </message>
    <message>
        <source>centre on the strip</source>
        <translation>centro en la tira</translation>
    </message>
    <message>
        <source>start on drawn-in cloth</source>
        <translation>inicio en tela encogida</translation>
    </message>
    <message>
        <source>match mark</source>
        <translation>marca de encuentro</translation>
    </message>
    <message>
        <source>outline</source>
        <translation>contorno</translation>
    </message>
    <message>
        <source>draw-up</source>
        <translation>merma</translation>
    </message>
    <message>
        <source>allowance</source>
        <translation>margen</translation>
    </message>
    <message>
        <source>hoop, outside</source>
        <translation>bastidor, por fuera</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>franja</translation>
    </message>
    <message>
        <source>size sent</source>
        <translation>medida enviada</translation>
    </message>
    <message>
        <source>kept past the seam</source>
        <translation>se deja tras la costura</translation>
    </message>
    <message>
        <source>sliver</source>
        <translation>tirilla</translation>
    </message>
    <message>
        <source>widest sashing strip</source>
        <translation>tira de unión más ancha</translation>
    </message>
    <message>
        <source>wider gaps before it</source>
        <translation>huecos más anchos antes</translation>
    </message>
    <message>
        <source>lost in truing</source>
        <translation>perdido al escuadrar</translation>
    </message>
    <message>
        <source>rounded up to</source>
        <translation>redondeado a</translation>
    </message>
    <message>
        <source>tail</source>
        <translation>cola</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>separación</translation>
    </message>
    <message>
        <source>used</source>
        <translation>usado</translation>
    </message>
    <message>
        <source>spare</source>
        <translation>de reserva</translation>
    </message>
    <message>
        <source>places before it</source>
        <translation>lugares antes</translation>
    </message>
    <message>
        <source>start</source>
        <translation>inicio</translation>
    </message>
    <message>
        <source>front strip</source>
        <translation>tira delantera</translation>
    </message>
    <message>
        <source>back strip</source>
        <translation>tira trasera</translation>
    </message>
    <message>
        <source>seam as sewn</source>
        <translation>costura ya cosida</translation>
    </message>
    <message>
        <source>between the seams</source>
        <translation>entre las costuras</translation>
    </message>
    <message>
        <source>least fold</source>
        <translation>remetido mínimo</translation>
    </message>
    <message>
        <source>taken by the bulk</source>
        <translation>tomado por el grosor</translation>
    </message>
    <message>
        <source>trimmed block</source>
        <translation>bloque recortado</translation>
    </message>
    <message>
        <source>number of the join</source>
        <translation>número de la unión</translation>
    </message>
    <message>
        <source>outlines</source>
        <translation>contornos</translation>
    </message>
    <message>
        <source>reach on the back</source>
        <translation>alcance por detrás</translation>
    </message>
    <message>
        <source>for turns</source>
        <translation>para dobleces</translation>
    </message>
    <message>
        <source>exact width</source>
        <translation>ancho exacto</translation>
    </message>
    <message>
        <source>along</source>
        <translation>a lo largo</translation>
    </message>
    <message>
        <source>finished size</source>
        <translation>tamaño acabado</translation>
    </message>
    <message>
        <source>for the seams</source>
        <translation>para las costuras</translation>
    </message>
    <message>
        <source>mean of the measured rows</source>
        <translation>media de las filas medidas</translation>
    </message>
    <message>
        <source>This is not readable as JSON: it breaks off at line %1, column %2.</source>
        <translation>Esto no se puede leer como JSON: se corta en la línea %1, columna %2.</translation>
    </message>
    <message>
        <source>The key &quot;%1&quot; stands twice in one place.</source>
        <translation>La clave «%1» está dos veces en un mismo lugar.</translation>
    </message>
    <message>
        <source>The file is too large: %1 bytes; %2 is the most.</source>
        <translation>El archivo es demasiado grande: %1 bytes; el máximo es %2.</translation>
    </message>
    <message>
        <source>The file is nested deeper than %1 levels.</source>
        <translation>El archivo tiene más de %1 niveles anidados.</translation>
    </message>
    <message>
        <source>There are too many values in one place; %1 is the most.</source>
        <translation>Hay demasiados valores en un mismo lugar; el máximo es %1.</translation>
    </message>
    <message>
        <source>A text is longer than %1 characters.</source>
        <translation>Un texto tiene más de %1 caracteres.</translation>
    </message>
    <message>
        <source>This is not a project file of Matside.</source>
        <translation>Esto no es un archivo de proyecto de Matside.</translation>
    </message>
    <message>
        <source>The file does not say which version of the format it is in.</source>
        <translation>El archivo no dice en qué versión del formato está.</translation>
    </message>
    <message>
        <source>The file is in version %1 of the format; this program knows %2. A newer Matside will open it.</source>
        <translation>El archivo está en la versión %1 del formato; este programa conoce la %2. Un Matside más nuevo lo abrirá.</translation>
    </message>
    <message>
        <source>The file %1 cannot be opened: %2.</source>
        <translation>El archivo %1 no se puede abrir: %2.</translation>
    </message>
    <message>
        <source>There should be %1 here.</source>
        <translation>Aquí debería haber %1.</translation>
    </message>
    <message>
        <source>There must be %1 of them here.</source>
        <translation>Aquí tiene que haber %1.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of the choices.</source>
        <translation>«%1» no es una de las opciones.</translation>
    </message>
    <message>
        <source>This is needed and is missing.</source>
        <translation>Esto hace falta y no está.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a length.</source>
        <translation>«%1» no es una longitud.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is longer than any piece here can be.</source>
        <translation>«%1» es más largo de lo que puede ser aquí una pieza.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is too small for this.</source>
        <translation>«%1» es demasiado pequeño para esto.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a percentage.</source>
        <translation>«%1» no es un porcentaje.</translation>
    </message>
    <message>
        <source>The list is too long; %1 is the most.</source>
        <translation>La lista es demasiado larga; el máximo es %1.</translation>
    </message>
    <message>
        <source>No ruler is marked in steps of %1.</source>
        <extracomment>mark: a line printed on a ruler</extracomment>
        <translation>Ninguna regla está marcada en pasos de %1.</translation>
    </message>
    <message>
        <source>A table needs a length and a width, or a diameter alone.</source>
        <translation>Una mesa necesita largo y ancho, o solo un diámetro.</translation>
    </message>
    <message>
        <source>Two cloths have the same short name, &quot;%1&quot;.</source>
        <translation>Dos telas tienen el mismo nombre corto, «%1».</translation>
    </message>
    <message>
        <source>The cloth &quot;%1&quot; is not on the list of cloths.</source>
        <translation>La tela «%1» no está en la lista de telas.</translation>
    </message>
    <message>
        <source>A measured test block needs its sent size and its outline, both ways.</source>
        <translation>Un bloque de prueba medido necesita su medida enviada y su contorno, en ambos sentidos.</translation>
    </message>
    <message>
        <source>A measured piece needs four sides and two diagonals.</source>
        <translation>Una pieza medida necesita cuatro lados y dos diagonales.</translation>
    </message>
    <message>
        <source>a group of keys</source>
        <translation>un grupo de claves</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>una lista</translation>
    </message>
    <message>
        <source>a length, such as &quot;7 1/2 in&quot;,</source>
        <translation>una longitud como «190&#xa0;mm»</translation>
    </message>
    <message>
        <source>two lengths, along and across,</source>
        <translation>dos longitudes, a lo largo y a lo ancho</translation>
    </message>
    <message>
        <source>a percentage, such as &quot;2 %&quot;,</source>
        <translation>un porcentaje como «2&#xa0;%»</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un número entero</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>verdadero o falso</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texto</translation>
    </message>
    <message>
        <source>a price as a number</source>
        <translation>un precio en número</translation>
    </message>
    <message>
        <source>Make the block %1.</source>
        <translation>Hacer el bloque de %1.</translation>
    </message>
    <message>
        <source>Make the sashing %1.</source>
        <translation>Hacer la tira de unión de %1.</translation>
    </message>
    <message>
        <source>Sew with a seam of %1.</source>
        <translation>Coser con una costura de %1.</translation>
    </message>
    <message>
        <source>Trim the blocks to an allowance of %1.</source>
        <translation>Recortar los bloques con un margen de %1.</translation>
    </message>
    <message>
        <source>Keep %1 outside the stitched line.</source>
        <translation>Dejar %1 por fuera de la línea bordada.</translation>
    </message>
    <message>
        <source>Leave a gap of %1.</source>
        <translation>Dejar un hueco de %1.</translation>
    </message>
    <message>
        <source>Cut the back sashing %1 wide.</source>
        <translation>Cortar la tira de unión trasera de %1 de ancho.</translation>
    </message>
    <message>
        <source>Let the fold catch %1.</source>
        <translation>Dar al doblez un agarre de %1.</translation>
    </message>
    <message>
        <source>Sew the binding on with a seam of %1.</source>
        <translation>Coser el ribete con una costura de %1.</translation>
    </message>
    <message>
        <source>Use cloth %1 wide.</source>
        <translation>Usar tela de %1 de ancho.</translation>
    </message>
    <message>
        <source>Reckon with a draw-up of %1.</source>
        <translation>Contar con una merma de %1.</translation>
    </message>
    <message>
        <source>Leave a margin of %1.</source>
        <translation>Dejar una franja de %1.</translation>
    </message>
    <message>
        <source>Frame the piece with sashing.</source>
        <extracomment>framed: a border of sashing all round, then bound</extracomment>
        <translation>Enmarcar la pieza con tiras de unión.</translation>
    </message>
    <message>
        <source>Round the corners by %1.</source>
        <translation>Redondear las esquinas con %1.</translation>
    </message>
    <message>
        <source>Leave the corners square.</source>
        <translation>Dejar las esquinas rectas.</translation>
    </message>
    <message>
        <source>Let the gap be reckoned.</source>
        <translation>Dejar que se calcule el hueco.</translation>
    </message>
    <message>
        <source>Let the back sashing&apos;s width be reckoned.</source>
        <translation>Dejar que se calcule el ancho de la tira de unión trasera.</translation>
    </message>
    <message>
        <source>Keep the frame clear of the block before.</source>
        <translation>Mantener el bastidor lejos del bloque anterior.</translation>
    </message>
    <message>
        <source>Sew waste tails to both ends.</source>
        <translation>Coser colas de sobrante en ambos extremos.</translation>
    </message>
    <message>
        <source>Forget this measuring and measure again.</source>
        <translation>Olvidar esta medición y medir de nuevo.</translation>
    </message>
    <message>
        <source>Make it %1.</source>
        <translation>Ponerlo en %1.</translation>
    </message>
    <message>
        <source>Choose &quot;%1&quot;.</source>
        <translation>Elegir «%1».</translation>
    </message>
    <message>
        <source>Call it &quot;%1&quot;.</source>
        <translation>Llamarlo «%1».</translation>
    </message>
    <message>
        <source>Take it away.</source>
        <translation>Quitarlo.</translation>
    </message>
    <message>
        <source>Nothing is entered yet; %1 would be read.</source>
        <translation>Aún no hay nada escrito; %1 se podría leer.</translation>
    </message>
    <message>
        <source>That fraction cannot be; write it as %1.</source>
        <translation>Esa fracción no existe; escribirla como %1.</translation>
    </message>
    <message>
        <source>That unit is not known; in, yd, ft, mm, cm and m are.</source>
        <translation>Esa unidad no se conoce; sí in, yd, ft, mm, cm y m.</translation>
    </message>
    <message>
        <source>There are two units; leave one away.</source>
        <translation>Hay dos unidades; quitar una.</translation>
    </message>
    <message>
        <source>That has more digits than any ruler; %1 would be read.</source>
        <translation>Eso tiene más cifras que cualquier regla; %1 se podría leer.</translation>
    </message>
    <message>
        <source>That is not a percentage; 2 % would be read.</source>
        <translation>Eso no es un porcentaje; 2&#xa0;% se podría leer.</translation>
    </message>
    <message>
        <source>That is not a length; %1 would be read.</source>
        <translation>Eso no es una longitud; %1 se podría leer.</translation>
    </message>
    <message>
        <source>It is square enough.</source>
        <translation>Está bastante a escuadra.</translation>
    </message>
    <message>
        <source>It leans by {%1}.</source>
        <extracomment>lean: the block is a little of a diamond; %1 is by how much</extracomment>
        <translation>Se inclina {%1}.</translation>
    </message>
    <message>
        <source>The readings disagree by {%3}.</source>
        <extracomment>%3 is how far the six readings disagree</extracomment>
        <translation>Las lecturas difieren en {%3}.</translation>
    </message>
    <message>
        <source>Cut it plainly, squared off the first side.</source>
        <translation>Cortarlo sin más, a escuadra con el primer lado.</translation>
    </message>
    <message>
        <source>Use it as it is.</source>
        <translation>Usarlo tal como está.</translation>
    </message>
    <message>
        <source>Trim it down to size.</source>
        <translation>Recortarlo a medida.</translation>
    </message>
    <message>
        <source>Trim it true: the largest is {%4}.</source>
        <extracomment>the largest true square that can still be cut from it</extracomment>
        <translation>Recortarlo a escuadra: como mucho {%4}.</translation>
    </message>
    <message>
        <source>Measure the others too, then take a common size.</source>
        <translation>Medir también los otros bloques y tomar una medida común.</translation>
    </message>
    <message>
        <source>Hoop it again, unpick the outer line and stitch it at size. If the stippling does not reach: a new block.</source>
        <translation>Ponerlo otra vez en el bastidor, descoser la línea exterior y bordarla a medida. Si el meandro no llega: un bloque nuevo.</translation>
    </message>
    <message>
        <source>Pin it square on a board, steam it, let it dry and measure again. If that does not help: a new block.</source>
        <translation>Prenderlo a escuadra en una tabla, darle vapor, dejarlo secar y medir de nuevo. Si eso no ayuda: un bloque nuevo.</translation>
    </message>
    <message>
        <source>Zigzag a scrap of sandwich to the short allowance, edge to edge, or put the block at an outer edge.</source>
        <translation>Coser en zigzag un retal de capas al margen corto, canto con canto, o poner el bloque en un borde exterior.</translation>
    </message>
    <message>
        <source>Measure again, %5 first. Do not cut yet.</source>
        <translation>Medir de nuevo, primero %5. No cortar todavía.</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>right</source>
        <translation>a la derecha</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>left</source>
        <translation>a la izquierda</translation>
    </message>
    <message>
        <source>diagonal from top left</source>
        <extracomment>a diagonal of the block</extracomment>
        <translation>diagonal desde arriba a la izquierda</translation>
    </message>
    <message>
        <source>diagonal from top right</source>
        <extracomment>a diagonal of the block</extracomment>
        <translation>diagonal desde arriba a la derecha</translation>
    </message>
    <message>
        <source>all six</source>
        <translation>las seis</translation>
    </message>
    <message>
        <source>Too narrow or crooked</source>
        <translation>Demasiado estrecho o torcido</translation>
    </message>
    <message>
        <source>Spoiled</source>
        <translation>Estropeado</translation>
    </message>
    <message>
        <source>The cloth ran out</source>
        <translation>Se acabó la tela</translation>
    </message>
    <message>
        <source>Cloth narrower than planned</source>
        <translation>La tela es más estrecha de lo planeado</translation>
    </message>
    <message>
        <source>Done already</source>
        <translation>Ya está hecho</translation>
    </message>
    <message>
        <source>Thread or bobbin ran out</source>
        <translation>Se acabó el hilo o la canilla</translation>
    </message>
    <message>
        <source>Pleat, hole or broken needle</source>
        <translation>Pliegue, agujero o aguja rota</translation>
    </message>
    <message>
        <source>Wrong or missing patch</source>
        <translation>Parche equivocado o que falta</translation>
    </message>
    <message>
        <source>The power failed</source>
        <translation>Se fue la luz</translation>
    </message>
    <message>
        <source>The strip is torn</source>
        <translation>La tira está rasgada</translation>
    </message>
    <message>
        <source>The block will not fit</source>
        <translation>El bloque no cabe</translation>
    </message>
    <message>
        <source>I changed my mind</source>
        <translation>He cambiado de idea</translation>
    </message>
    <message>
        <source>How much of it is left?</source>
        <translation>¿Cuánto queda?</translation>
    </message>
    <message>
        <source>How wide is it between the selvages?</source>
        <extracomment>usable width of the cloth, between the selvages</extracomment>
        <translation>¿Cuánto mide de ancho entre los orillos?</translation>
    </message>
    <message>
        <source>Where is the tear, measured from the zero end?</source>
        <translation>¿Dónde está el desgarro, medido desde el extremo cero?</translation>
    </message>
    <message>
        <source>To make again: %1. It stands in the list once more.</source>
        <translation>Para hacer de nuevo: %1. Está otra vez en la lista.</translation>
    </message>
    <message>
        <source>A spare takes the place of %1: nothing is made again.</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;; spare: a block stitched over and above the layout</extracomment>
        <translation>Un bloque de reserva ocupa el lugar de %1: no se hace nada de nuevo.</translation>
    </message>
    <message>
        <source>Block %1 is stitched again, with the same thread lot. It stands next in the list.</source>
        <translation>El bloque %1 se borda de nuevo, con el mismo lote de hilo. Es lo siguiente en la lista.</translation>
    </message>
    <message>
        <source>Still to cut of %1: {%2} along the selvage.</source>
        <translation>%1: quedan por cortar {%2} a lo largo del orillo.</translation>
    </message>
    <message>
        <source>What is left of %1, {%2}, yields it.</source>
        <translation>%1: lo que queda, {%2}, alcanza.</translation>
    </message>
    <message>
        <source>Nothing more is needed of %1.</source>
        <translation>%1: no hace falta nada más.</translation>
    </message>
    <message>
        <source>What is left of %1, {%2}, does not yield it.</source>
        <translation>%1: lo que queda, {%2}, no alcanza.</translation>
    </message>
    <message>
        <source>Nobody has measured what is left of %1. Measure it along the selvage before you buy.</source>
        <translation>%1: lo que queda está sin medir. Medirlo a lo largo del orillo antes de comprar.</translation>
    </message>
    <message>
        <source>Buy at least {%2} of %1, of the same lot.</source>
        <translation>%1: comprar al menos {%2}, del mismo lote.</translation>
    </message>
    <message>
        <source>What is made already stays good.</source>
        <translation>Lo que ya está hecho sigue valiendo.</translation>
    </message>
    <message>
        <source>Counted as done.</source>
        <translation>Contado como hecho.</translation>
    </message>
    <message>
        <source>The bobbin is counted as new from here.</source>
        <translation>La canilla cuenta como nueva desde aquí.</translation>
    </message>
    <message>
        <source>Needle broken? Find all the pieces before you go on.</source>
        <translation>¿Aguja rota? Encontrar todos los trozos antes de seguir.</translation>
    </message>
    <message>
        <source>Blocks lost beyond the tear: %1. They are on record and stand in the list again.</source>
        <translation>Bloques perdidos más allá del desgarro: %1. Quedan anotados y están otra vez en la lista.</translation>
    </message>
    <message>
        <source>No stitched block is lost. What no longer fits goes to the next strip.</source>
        <translation>No se pierde ningún bloque bordado. Lo que ya no cabe pasa a la tira siguiente.</translation>
    </message>
    <message>
        <source>Blocks that go to the next strip: %1.</source>
        <translation>Bloques que pasan a la tira siguiente: %1.</translation>
    </message>
    <message>
        <source>It would still fit with a waste tail sewn to the end.</source>
        <extracomment>tail: a waste strip sewn to the end so that the frame has cloth to hold</extracomment>
        <translation>Aún cabría con una cola de sobrante cosida al extremo.</translation>
    </message>
    <message>
        <source>It would still fit with a gap of {%1}.</source>
        <translation>Aún cabría con un hueco de {%1}.</translation>
    </message>
    <message>
        <source>Nothing was changed. What you decide at Fit follows at once; what is cut stays cut.</source>
        <translation>No se cambió nada. Lo que se decida en «Planear» se aplica enseguida; lo cortado, cortado queda.</translation>
    </message>
    <message>
        <source>Hoop strips to cut beyond the plan: %1.</source>
        <translation>Tiras de bordado por cortar además del plan: %1.</translation>
    </message>
    <message>
        <source>Blocks on each new strip: %1 instead of %2.</source>
        <translation>Bloques en cada tira nueva: %1 en vez de %2.</translation>
    </message>
    <message>
        <source>With that measure nothing changes.</source>
        <translation>Con esa medida no cambia nada.</translation>
    </message>
    <message>
        <source>The hoop&apos;s sizes are missing: enter what it measures outside, and its stitching field or its opening.</source>
        <extracomment>the ring or frame that holds the cloth under the needle</extracomment>
        <translation>Faltan las medidas del bastidor: anotar lo que mide por fuera y su campo de bordado o su abertura.</translation>
    </message>
    <message>
        <source>The block goes to the machine at %1, but the hoop stitches no more than %2.</source>
        <extracomment>sent: the size given to the machine, larger than the outline by what the cloth draws up</extracomment>
        <translation>El bloque va a la máquina con %1, pero el bastidor no borda más de %2.</translation>
    </message>
    <message>
        <source>A sashing of %1 is narrower than the two allowances under it, %2: they would lie double.</source>
        <extracomment>sashing: the strip between two blocks; allowance: cloth outside the stitched line</extracomment>
        <translation>Una tira de unión de %1 es más estrecha que los dos márgenes que van debajo, %2: quedarían dobles.</translation>
    </message>
    <message>
        <source>An allowance of %1 is pared too far to hold a seam; %2 is the least.</source>
        <translation>Un margen de %1 es demasiado justo para sostener una costura; el mínimo es %2.</translation>
    </message>
    <message>
        <source>The edge keeps %1 outside the stitched line, but the blocks are trimmed to %2: the cloth is not there.</source>
        <translation>El borde deja %1 por fuera de la línea bordada, pero los bloques se recortan a %2: ahí no queda tela.</translation>
    </message>
    <message>
        <source>A gap of %1 leaves less than the two seam allowances that come out of it, %2.</source>
        <extracomment>gap: cloth between the outlines of two blocks on one strip</extracomment>
        <translation>Un hueco de %1 deja menos que los dos márgenes de costura que salen de él, %2.</translation>
    </message>
    <message>
        <source>With a gap of %1 the ring would close on the block before it: the frame reaches %2 beyond the outline.</source>
        <extracomment>reach: how far the hoop&apos;s frame lies beyond the stitched line</extracomment>
        <translation>Con un hueco de %1 el aro se cerraría sobre el bloque anterior: el bastidor llega %2 más allá del contorno.</translation>
    </message>
    <message>
        <source>A ring may not lie on a stitched block: it would crush it. Only a magnetic frame may.</source>
        <translation>Un aro no puede ir sobre un bloque bordado: lo aplastaría. Solo puede un bastidor magnético.</translation>
    </message>
    <message>
        <source>Not one block fits on the strip: %1 is missing, and %2 with waste tails sewn to both ends.</source>
        <extracomment>waste tail: scrap cloth sewn to a strip&apos;s end so that the hoop can hold it</extracomment>
        <translation>No cabe ni un bloque en la tira: faltan %1, y %2 con colas de sobrante en ambos extremos.</translation>
    </message>
    <message>
        <source>Only %1 is left to fold under on the back; less than %2 cannot be pressed and would be missed by the stitching.</source>
        <extracomment>fold-under: what is turned under along the back sashing</extracomment>
        <translation>Solo quedan %1 para remeter por detrás; menos de %2 no se puede planchar y el pespunte no lo agarraría.</translation>
    </message>
    <message>
        <source>A catch of %1 will not do: keep it between %2 and %3.</source>
        <extracomment>catch: how far the folded edge passes the seam it is caught by</extracomment>
        <translation>Un agarre de %1 no sirve: dejarlo entre %2 y %3.</translation>
    </message>
    <message>
        <source>Binding cut %1 wide does not come out of cloth %2 wide.</source>
        <translation>Un ribete cortado a %1 no sale de una tela de %2 de ancho.</translation>
    </message>
    <message>
        <source>Corners rounded by %1 do not fit on the piece; %2 is the most.</source>
        <translation>Las esquinas redondeadas con %1 no caben en la pieza; el máximo es %2.</translation>
    </message>
    <message>
        <source>The bias wants a square of %1, and the cloth is only %2 wide.</source>
        <extracomment>bias: cloth cut slantwise, which goes round a curve</extracomment>
        <translation>El bies pide un cuadrado de %1, y la tela solo tiene %2 de ancho.</translation>
    </message>
    <message>
        <source>A draw-up of %1 is not likely; it lies between 0 % and %2. Measure the test block again.</source>
        <extracomment>draw-up: how much the stitching shrinks the cloth</extracomment>
        <translation>Una merma de %1 no es probable; está entre 0&#xa0;% y %2. Medir de nuevo el bloque de prueba.</translation>
    </message>
    <message>
        <source>A short sashing is %1 with its spare, longer than its cloth, %2.</source>
        <translation>Una tira de unión corta mide %1 con su reserva, más que su tela, %2.</translation>
    </message>
    <message>
        <source>Cloth %1 wide is too narrow to piece the long sashings with their joins at mid-block; %2 is the least.</source>
        <translation>Una tela de %1 de ancho es demasiado estrecha para las tiras de unión largas con empalmes a mitad de bloque; el mínimo es %2.</translation>
    </message>
    <message>
        <source>Nothing is left for the piece: let less of the table show.</source>
        <translation>No queda nada para la pieza: dejar ver menos mesa.</translation>
    </message>
    <message>
        <source>Washing that takes %1 is not likely; say less than %2.</source>
        <translation>Un lavado que quita %1 no es probable; poner menos de %2.</translation>
    </message>
    <message>
        <source>One block makes a piece of %1, larger than the %2 wanted: allow smaller blocks, or let less of the table show.</source>
        <translation>Un bloque da una pieza de %1, mayor que los %2 pedidos: permitir bloques menores o dejar ver menos mesa.</translation>
    </message>
    <message>
        <source>No block from %1 to %2 goes into a hoop you have: allow other sizes, or enter the hoop that takes them.</source>
        <translation>Ningún bloque de %1 a %2 cabe en los bastidores que hay: permitir otros tamaños o anotar el bastidor que los toma.</translation>
    </message>
    <message>
        <source>That takes %1 blocks or more, and you allow %2: allow more, or larger blocks.</source>
        <translation>Eso pide %1 bloques o más, y se permiten %2: permitir más, o bloques mayores.</translation>
    </message>
    <message>
        <source>The block has %1 of room in the hoop; %2 lets you place it without trying twice.</source>
        <translation>El bloque tiene %1 de holgura en el bastidor; con %2 se coloca a la primera.</translation>
    </message>
    <message>
        <source>The binding&apos;s seam of %1 is deeper than the cloth outside the stitched line, %2: it would cover the line.</source>
        <translation>La costura del ribete, %1, es más honda que la tela por fuera de la línea bordada, %2: taparía la línea.</translation>
    </message>
    <message>
        <source>A margin of %1 past the hoop is hard to hold; %2 is easier.</source>
        <extracomment>margin: cloth past the hoop&apos;s outside at a strip&apos;s long edges</extracomment>
        <translation>Una franja de %1 fuera del bastidor es difícil de sujetar; %2 es más fácil.</translation>
    </message>
    <message>
        <source>%1 is left over on each strip; a little more draw-up and the %o2 block will not fit.</source>
        <translation>Sobra %1 en cada tira; con un poco más de merma el %o2 bloque no cabrá.</translation>
    </message>
    <message>
        <source>Folding on the ruler&apos;s mark leaves a lip of %1 past the seam; more than %2 may lift.</source>
        <extracomment>lip: the part of the fold that stands past the stitching</extracomment>
        <translation>Doblando por la marca de la regla queda un labio de %1 más allá de la costura; más de %2 puede levantarse.</translation>
    </message>
    <message>
        <source>The gap pieces are %1 long, shorter than a short sashing with its spare, %2.</source>
        <extracomment>harvested: cut from the gaps between the blocks of a strip</extracomment>
        <translation>Los trozos de hueco miden %1 de largo, menos que una tira de unión corta con su reserva, %2.</translation>
    </message>
    <message>
        <source>The gap of %1 is under the two wide allowances, %2: the blocks cannot be cut apart so.</source>
        <translation>El hueco de %1 es menor que los dos márgenes anchos, %2: así no se pueden separar los bloques.</translation>
    </message>
    <message>
        <source>The frame lies %1 over the block before it. Pad it, and look for marks.</source>
        <translation>El bastidor queda %1 sobre el bloque anterior. Poner algo blando debajo y mirar si deja huella.</translation>
    </message>
    <message>
        <source>The rounded corner cuts %1 into the stippling: stay-stitch beside the line before cutting.</source>
        <extracomment>stippling: the quilting inside a block&apos;s stitched outline; stay-stitch: a row of stitches that holds a cut</extracomment>
        <translation>La esquina redonda entra %1 en el meandro: hacer una costura de refuerzo junto a la línea antes de cortar.</translation>
    </message>
    <message>
        <source>A corner of %1 is tight for folded binding; it eases round from %2.</source>
        <translation>Una esquina de %1 es justa para un ribete doblado; desde %2 la rodea bien.</translation>
    </message>
    <message>
        <source>Hanging over by only %1, the edge will stick out stiffly; it falls well from %2.</source>
        <translation>Con solo %1 de caída, el borde quedará tieso; cae bien desde %2.</translation>
    </message>
    <message>
        <source>The corners hang %1 past the round table and will stick out; they fall well from %2.</source>
        <translation>Las esquinas cuelgan %1 fuera de la mesa redonda y quedarán tiesas; caen bien desde %2.</translation>
    </message>
    <message>
        <source>Is the cut edge still square to the fold?</source>
        <translation>¿Sigue el borde cortado a escuadra con el doblez?</translation>
    </message>
    <message>
        <source>A cross line lies on the fold, the edge just inside both ragged ends.</source>
        <translation>Una línea transversal queda sobre el doblez, el borde justo por dentro de ambos extremos deshilachados.</translation>
    </message>
    <message>
        <source>The line touches at both ends.</source>
        <translation>La línea toca en ambos extremos.</translation>
    </message>
    <message>
        <source>Back wrong side up, batting, front right side up, smoothed from the middle.</source>
        <translation>Trasera con el revés arriba, guata, delantera con el derecho arriba, alisadas desde el centro.</translation>
    </message>
    <message>
        <source>Every tick measured from the one zero end, never from the tick before.</source>
        <translation>Cada raya medida desde el mismo extremo cero, nunca desde la raya anterior.</translation>
    </message>
    <message>
        <source>Pins out of the hoop, cord clear, bobbin full enough.</source>
        <translation>Sin alfileres en el bastidor, cable libre, canilla bastante llena.</translation>
    </message>
    <message>
        <source>Off the hoop, pressed and ten minutes rested before measuring.</source>
        <translation>Fuera del bastidor, planchado y diez minutos en reposo antes de medir.</translation>
    </message>
    <message>
        <source>Both ends square to the band’s long edge.</source>
        <translation>Ambos extremos a escuadra con el borde largo de la banda.</translation>
    </message>
    <message>
        <source>Measure the gap between the allowances and the distance between the two seams on the back.</source>
        <translation>Medir la separación entre los márgenes y la distancia entre las dos costuras por detrás.</translation>
    </message>
    <message>
        <source>The web is on the wrong side of the patch.</source>
        <translation>La entretela termoadhesiva va por el revés del parche.</translation>
    </message>
    <message>
        <source>Close to the stitches, the topmost patch first.</source>
        <translation>Cerca de las puntadas, primero el parche de más arriba.</translation>
    </message>
    <message>
        <source>The line lies on the outer stitches at both corners, not on the echo line.</source>
        <translation>La línea queda sobre las puntadas exteriores en ambas esquinas, no sobre la línea de eco.</translation>
    </message>
    <message>
        <source>Each join stands in the middle of a block, never at a crossing.</source>
        <translation>Cada empalme queda en medio de un bloque, nunca en un cruce.</translation>
    </message>
    <message>
        <source>Batting and back peeled off, no stitching in the piece.</source>
        <translation>Guata y trasera despegadas, ninguna puntada en el trozo.</translation>
    </message>
    <message>
        <source>Both strips are caught along the whole seam.</source>
        <translation>Ambas tiras quedan agarradas en toda la costura.</translation>
    </message>
    <message>
        <source>All rows are alike in length, or nearly.</source>
        <translation>Todas las filas miden igual de largo, o casi.</translation>
    </message>
    <message>
        <source>A mark meets each short sashing.</source>
        <translation>Cada tira de unión corta encuentra su marca.</translation>
    </message>
    <message>
        <source>The backing lies flat and is held.</source>
        <translation>La tela trasera está plana y sujeta.</translation>
    </message>
    <message>
        <source>Turned, corners out, the opening closed.</source>
        <translation>Vuelta del derecho, esquinas sacadas, abertura cerrada.</translation>
    </message>
    <message>
        <source>No join lands on a corner or a sashing’s end.</source>
        <translation>Ningún empalme cae en una esquina ni en el extremo de una tira de unión.</translation>
    </message>
    <message>
        <source>Both diagonals are alike.</source>
        <translation>Ambas diagonales son iguales.</translation>
    </message>
    <message>
        <source>As many pins out as went in.</source>
        <translation>Tantos alfileres sacados como puestos.</translation>
    </message>
    <message>
        <source>Close the blade between cuts. Roll away from you. Fingers well back from the ruler&apos;s edge.</source>
        <translation>Cerrar la cuchilla entre cortes. Pasarla alejándola del cuerpo. Dedos bien lejos del borde de la regla.</translation>
    </message>
    <message>
        <source>Iron on its stand, off afterwards; steam burns.</source>
        <translation>Plancha en su soporte, apagada al acabar; el vapor quema.</translation>
    </message>
    <message>
        <source>Spray by an open window, away from flame.</source>
        <translation>Rociar junto a una ventana abierta, lejos del fuego.</translation>
    </message>
    <message>
        <source>Hoop flat on the table, machine stopped, scissor points up.</source>
        <translation>Bastidor plano en la mesa, máquina parada, puntas de tijera hacia arriba.</translation>
    </message>
    <message>
        <source>Not a hot mat. Keep it 12 in (30 cm) from candles.</source>
        <translation>No es para cosas calientes. A 30&#xa0;cm (12 in) o más de las velas.</translation>
    </message>
    <message>
        <source>Count the pins in and count them out.</source>
        <translation>Contar los alfileres al ponerlos y al sacarlos.</translation>
    </message>
    <message>
        <source>the stitched outline</source>
        <extracomment>the block&apos;s outer stitched line</extracomment>
        <translation>el contorno bordado</translation>
    </message>
    <message>
        <source>the fold</source>
        <translation>el doblez</translation>
    </message>
    <message>
        <source>the cut edge</source>
        <translation>el borde cortado</translation>
    </message>
    <message>
        <source>The fold on a line of the mat, the cut along another.</source>
        <translation>El doblez sobre una línea de la base de corte, el corte por otra.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; with a cross line on the fold.</source>
        <translation>«%1» con una línea transversal sobre el doblez.</translation>
    </message>
    <message>
        <source>By the mat&apos;s lines: %1 from %2, at both ends.</source>
        <translation>Por las líneas de la base de corte: %1 desde %2, en ambos extremos.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; with its %2 line on %3, &quot;%4&quot; against it.</source>
        <extracomment>two rulers laid side by side; &quot;%1&quot; and &quot;%4&quot; are their names</extracomment>
        <translation>«%1» con su línea de %2 sobre %3, «%4» pegada a ella.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; with its %2 line on %3.</source>
        <translation>«%1» con su línea de %2 sobre %3.</translation>
    </message>
    <message>
        <source>Stop the blade, slide the ruler along, go on.</source>
        <extracomment>fence: the ruler the blade follows, shorter than the cut</extracomment>
        <translation>Parar la cuchilla, correr la regla, seguir.</translation>
    </message>
    <message>
        <source>Cut along the second; no daylight between them.</source>
        <translation>Cortar por la segunda; sin luz entre ellas.</translation>
    </message>
    <message>
        <source>%1 layers.</source>
        <translation>%1 capas.</translation>
    </message>
    <message>
        <source>: %1 by %2.</source>
        <extracomment>width by length of a piece</extracomment>
        <translation>: %1 por %2.</translation>
    </message>
    <message>
        <source>(For the trial.)</source>
        <translation>(Para la prueba.)</translation>
    </message>
    <message>
        <source>Square the end of %1 to its fold.</source>
        <translation>Escuadrar el extremo con su doblez: %1.</translation>
    </message>
    <message>
        <source>Cut a hoop strip of %1.</source>
        <extracomment>hoop strip: the strip of cloth that goes through the hoop, several blocks to a strip</extracomment>
        <translation>Cortar una tira de bordado de %1.</translation>
    </message>
    <message>
        <source>Cut a sashing band of %1.</source>
        <extracomment>band: a strip as long as the cloth is wide, cut across later into sashings</extracomment>
        <translation>Cortar una banda para tiras de unión de %1.</translation>
    </message>
    <message>
        <source>Cut a short sashing from a band of %1.</source>
        <translation>Cortar una tira de unión corta de una banda de %1.</translation>
    </message>
    <message>
        <source>Cut a long sashing from a band of %1.</source>
        <translation>Cortar una tira de unión larga de una banda de %1.</translation>
    </message>
    <message>
        <source>Cut a piece of a long sashing from a band of %1.</source>
        <translation>Cortar un trozo de tira de unión larga de una banda de %1.</translation>
    </message>
    <message>
        <source>Sew the pieces to one long sashing of %1.</source>
        <translation>Coser los trozos en una tira de unión larga de %1.</translation>
    </message>
    <message>
        <source>Cut a short sashing of %1 from a gap piece.</source>
        <translation>Cortar una tira de unión corta de un trozo de hueco: %1.</translation>
    </message>
    <message>
        <source>Cut a patch of %1.</source>
        <translation>Cortar un parche de %1.</translation>
    </message>
    <message>
        <source>Cut a binding strip of %1.</source>
        <translation>Cortar una tira de ribete de %1.</translation>
    </message>
    <message>
        <source>Cut the backing of %1.</source>
        <translation>Cortar la tela trasera de %1.</translation>
    </message>
    <message>
        <source>Cut a square of %1 for bias binding.</source>
        <extracomment>bias: cut slantwise, for a binding that goes round curves</extracomment>
        <translation>Cortar un cuadrado de %1 para ribete al bies.</translation>
    </message>
    <message>
        <source>Layer back, batting and front: one hoop strip.</source>
        <translation>Poner trasera, guata y delantera en capas: una tira de bordado.</translation>
    </message>
    <message>
        <source>Mark the strip&apos;s centre line and its places.</source>
        <translation>Marcar la línea central de la tira y sus lugares.</translation>
    </message>
    <message>
        <source>Stitch the test block.</source>
        <translation>Bordar el bloque de prueba.</translation>
    </message>
    <message>
        <source>Measure the test block&apos;s outline, both ways.</source>
        <translation>Medir el contorno del bloque de prueba, en ambos sentidos.</translation>
    </message>
    <message>
        <source>Make the test join and measure it.</source>
        <translation>Hacer la unión de prueba y medirla.</translation>
    </message>
    <message>
        <source>Stitch a block.</source>
        <translation>Bordar un bloque.</translation>
    </message>
    <message>
        <source>Trim the patches with scissors, the topmost first.</source>
        <translation>Recortar los parches con tijeras, primero el de más arriba.</translation>
    </message>
    <message>
        <source>Press the block, now that its patches are trimmed.</source>
        <translation>Planchar el bloque, ya con los parches recortados.</translation>
    </message>
    <message>
        <source>Press the test block and let it rest.</source>
        <translation>Planchar el bloque de prueba y dejarlo reposar.</translation>
    </message>
    <message>
        <source>Trim the block&apos;s four sides, measuring from the stitched outline.</source>
        <translation>Recortar los cuatro lados del bloque, midiendo desde el contorno bordado.</translation>
    </message>
    <message>
        <source>Join two blocks with a short sashing: sew, press, sew, fold, stitch in the ditch.</source>
        <extracomment>ditch: the line where the sashing meets the block</extracomment>
        <translation>Unir dos bloques con una tira de unión corta: coser, planchar, coser, doblar, coser en la zanja de la costura.</translation>
    </message>
    <message>
        <source>Measure the row&apos;s length.</source>
        <translation>Medir el largo de la fila.</translation>
    </message>
    <message>
        <source>Join two rows with a long sashing, mark to mark.</source>
        <translation>Unir dos filas con una tira de unión larga, marca con marca.</translation>
    </message>
    <message>
        <source>Lay the backing and hold it.</source>
        <translation>Poner la tela trasera y sujetarla.</translation>
    </message>
    <message>
        <source>Square the piece, measuring from its sashings.</source>
        <translation>Escuadrar la pieza, midiendo desde sus tiras de unión.</translation>
    </message>
    <message>
        <source>Sew the binding on.</source>
        <translation>Coser el ribete.</translation>
    </message>
    <message>
        <source>Take a last look: pins counted, threads gone, measured.</source>
        <translation>Una última mirada: contar los alfileres, quitar los hilos, medir.</translation>
    </message>
    <message>
        <source>Square the end</source>
        <translation>Escuadrar el extremo</translation>
    </message>
    <message>
        <source>Strip %1 of %2</source>
        <translation>Tira %1 de %2</translation>
    </message>
    <message>
        <source>Band %1 of %2</source>
        <translation>Banda %1 de %2</translation>
    </message>
    <message>
        <source>Short sashing %1 of %2</source>
        <translation>Tira corta %1 de %2</translation>
    </message>
    <message>
        <source>Long sashing %1 of %2</source>
        <translation>Tira larga %1 de %2</translation>
    </message>
    <message>
        <source>Piece %1 of %2</source>
        <translation>Trozo %1 de %2</translation>
    </message>
    <message>
        <source>Patch %1 of %2</source>
        <translation>Parche %1 de %2</translation>
    </message>
    <message>
        <source>Binding strip %1 of %2</source>
        <translation>Tira de ribete %1 de %2</translation>
    </message>
    <message>
        <source>Backing %1 of %2</source>
        <translation>Trasera %1 de %2</translation>
    </message>
    <message>
        <source>Square for bias %1 of %2</source>
        <translation>Cuadrado de bies %1 de %2</translation>
    </message>
    <message>
        <source>Test block %1 of %2</source>
        <translation>Bloque de prueba %1 de %2</translation>
    </message>
    <message>
        <source>Test block, measuring</source>
        <translation>Bloque de prueba, medir</translation>
    </message>
    <message>
        <source>Test join</source>
        <translation>Unión de prueba</translation>
    </message>
    <message>
        <source>Block %1 of %2</source>
        <translation>Bloque %1 de %2</translation>
    </message>
    <message>
        <source>Block %1 of %2, patches</source>
        <translation>Bloque %1 de %2, parches</translation>
    </message>
    <message>
        <source>Block %1 of %2, pressing</source>
        <translation>Bloque %1 de %2, planchar</translation>
    </message>
    <message>
        <source>Test block, pressing</source>
        <translation>Bloque de prueba, planchar</translation>
    </message>
    <message>
        <source>Block %1 of %2, apart</source>
        <extracomment>a block still in its strip is cut off it, roughly</extracomment>
        <translation>Bloque %1 de %2, separar</translation>
    </message>
    <message>
        <source>Short join %1 of %2</source>
        <translation>Unión corta %1 de %2</translation>
    </message>
    <message>
        <source>Row %1 of %2</source>
        <translation>Fila %1 de %2</translation>
    </message>
    <message>
        <source>Long join %1 of %2</source>
        <translation>Unión larga %1 de %2</translation>
    </message>
    <message>
        <source>Piece %1 of %2, squaring</source>
        <translation>Pieza %1 de %2, escuadrar</translation>
    </message>
    <message>
        <source>Piece %1 of %2, binding</source>
        <translation>Pieza %1 de %2, ribete</translation>
    </message>
    <message>
        <source>Piece %1 of %2, last look</source>
        <translation>Pieza %1 de %2, última mirada</translation>
    </message>
    <message>
        <source>Cut, blade closed</source>
        <translation>Cortado, cuchilla cerrada</translation>
    </message>
    <message>
        <source>Straight, blade closed</source>
        <translation>Recto, cuchilla cerrada</translation>
    </message>
    <message>
        <source>Sewn and pressed</source>
        <translation>Cosido y planchado</translation>
    </message>
    <message>
        <source>Strip layered</source>
        <translation>Tira en capas</translation>
    </message>
    <message>
        <source>Stitched</source>
        <translation>Bordado</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Medido</translation>
    </message>
    <message>
        <source>Tried and measured</source>
        <translation>Probado y medido</translation>
    </message>
    <message>
        <source>All trimmed</source>
        <translation>Todo recortado</translation>
    </message>
    <message>
        <source>Pressed</source>
        <translation>Planchado</translation>
    </message>
    <message>
        <source>Trimmed, blade closed</source>
        <translation>Recortado, cuchilla cerrada</translation>
    </message>
    <message>
        <source>Joined</source>
        <translation>Unido</translation>
    </message>
    <message>
        <source>Laid</source>
        <translation>Puesta</translation>
    </message>
    <message>
        <source>Turned and closed</source>
        <translation>Vuelto y cerrado</translation>
    </message>
    <message>
        <source>Squared, blade closed</source>
        <translation>A escuadra, cuchilla cerrada</translation>
    </message>
    <message>
        <source>Bound</source>
        <translation>Ribeteado</translation>
    </message>
    <message>
        <source>All is well</source>
        <translation>Todo está bien</translation>
    </message>
    <message>
        <source>the cloth</source>
        <translation>la tela</translation>
    </message>
    <message>
        <source>Fit</source>
        <extracomment>station: deciding table, blocks, hoop and edge</extracomment>
        <translation>Planear</translation>
    </message>
    <message>
        <source>Shop</source>
        <extracomment>station: what to buy</extracomment>
        <translation>Comprar</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Cortar</translation>
    </message>
    <message>
        <source>Hoop</source>
        <extracomment>station: stitching in the hoop</extracomment>
        <translation>Bordar</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Recortar</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Unir</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Rematar</translation>
    </message>
    <message>
        <source>side cut</source>
        <extracomment>one of a block&apos;s four sides was cut</extracomment>
        <translation>lado cortado</translation>
    </message>
    <message>
        <source>Two rulers.</source>
        <extracomment>read out before where the rulers lie</extracomment>
        <translation>Dos reglas.</translation>
    </message>
    <message>
        <source>back strip doubled</source>
        <extracomment>the back strip folded lengthwise before it is sewn on, so that nothing is turned under</extracomment>
        <translation>tira trasera doble</translation>
    </message>
    <message>
        <source>scallops’ depth</source>
        <extracomment>scallop: one of the round lobes an edge can be cut into</extracomment>
        <translation>profundidad de las ondas</translation>
    </message>
    <message>
        <source>scallops along</source>
        <translation>ondas a lo largo</translation>
    </message>
    <message>
        <source>scallops across</source>
        <translation>ondas a lo ancho</translation>
    </message>
    <message>
        <source>circle or round ends, on bias</source>
        <translation>círculo o extremos redondos, al bies</translation>
    </message>
    <message>
        <source>scalloped, on bias</source>
        <extracomment>the edge cut into round lobes</extracomment>
        <translation>ondas, al bies</translation>
    </message>
    <message>
        <source>two tablets together</source>
        <extracomment>the work of another tablet put together with what is here</extracomment>
        <translation>dos tabletas juntas</translation>
    </message>
    <message>
        <source>colour of a cloth</source>
        <translation>color de una tela</translation>
    </message>
    <message>
        <source>order of the patches</source>
        <translation>orden de los parches</translation>
    </message>
    <message>
        <source>kits of the class changed</source>
        <translation>kits de la clase cambiados</translation>
    </message>
    <message>
        <source>cloth you have changed</source>
        <translation>tela que ya hay, cambiada</translation>
    </message>
    <message>
        <source>one arc along</source>
        <extracomment>arc: the curved length of one scallop</extracomment>
        <translation>un arco a lo largo</translation>
    </message>
    <message>
        <source>one arc across</source>
        <translation>un arco a lo ancho</translation>
    </message>
    <message>
        <source>Make the scallops %1 deep.</source>
        <translation>Hacer las ondas de %1 de profundidad.</translation>
    </message>
    <message>
        <source>Cut into it</source>
        <extracomment>the blade went inside the allowance</extracomment>
        <translation>Corte en el margen</translation>
    </message>
    <message>
        <source>It measures wrong</source>
        <translation>Medida equivocada</translation>
    </message>
    <message>
        <source>Sewn wrong</source>
        <translation>Mal cosido</translation>
    </message>
    <message>
        <source>Missed the fold</source>
        <extracomment>the stitching in the ditch did not catch the folded edge on the back</extracomment>
        <translation>Doblez sin agarrar</translation>
    </message>
    <message>
        <source>A block is lost or given away</source>
        <translation>Un bloque perdido o regalado</translation>
    </message>
    <message>
        <source>How much is left outside the stitched line, at the narrowest?</source>
        <translation>¿Cuánto queda por fuera de la línea bordada, en lo más estrecho?</translation>
    </message>
    <message>
        <source>How wide is the block, edge to edge?</source>
        <translation>¿Cuánto mide el bloque, de borde a borde?</translation>
    </message>
    <message>
        <source>How long is the row, raw end to raw end?</source>
        <translation>¿Cuánto mide la fila, de extremo cortado a extremo cortado?</translation>
    </message>
    <message>
        <source>How long is the side that is off, edge to edge?</source>
        <translation>¿Cuánto mide el lado que falla, de borde a borde?</translation>
    </message>
    <message>
        <source>{%1} is enough. Sew that side by the stitched line, not by the raw edge.</source>
        <extracomment>allowance: the cloth left outside a block&apos;s stitched line</extracomment>
        <translation>{%1} bastan. Coser ese lado por la línea bordada, no por el borde cortado.</translation>
    </message>
    <message>
        <source>Or lay the block so that this side comes to the outer edge, under the binding.</source>
        <translation>O poner el bloque de modo que ese lado quede en el borde exterior, bajo el ribete.</translation>
    </message>
    <message>
        <source>Off by {%1}: up to {%2} that is good work. Go on.</source>
        <translation>Se desvía {%1}: hasta {%2} es buen trabajo. Seguir.</translation>
    </message>
    <message>
        <source>{%1} too large: lay the ruler on the stitched line and trim again.</source>
        <translation>Sobran {%1}: poner la regla sobre la línea bordada y recortar otra vez.</translation>
    </message>
    <message>
        <source>{%1} too small. It can be used: sew it by the stitched line, not by the raw edge.</source>
        <translation>Faltan {%1}. Sirve: coserlo por la línea bordada, no por el borde cortado.</translation>
    </message>
    <message>
        <source>Enter the four sides and both diagonals under “Measure the piece”: it says where to cut.</source>
        <translation>Anotar los cuatro lados y las dos diagonales en «Medir la pieza»: allí dice dónde cortar.</translation>
    </message>
    <message>
        <source>Sew it again {%1} deep.</source>
        <translation>Coserlo de nuevo a {%1}.</translation>
    </message>
    <message>
        <source>The strip serves again if it is not frayed or stretched; otherwise make it again.</source>
        <translation>La tira sirve otra vez si no está deshilachada ni estirada; si no, hacerla de nuevo.</translation>
    </message>
    <message>
        <source>Cut {%2} × {%3} of %1 for it: from what the sashing strips left over, or across the cloth.</source>
        <extracomment>a strip of sashing cut to length</extracomment>
        <translation>%1: cortar para ello {%2} × {%3}, de lo que sobró de las tiras de unión o a lo ancho de la tela.</translation>
    </message>
    <message>
        <source>Draw the binding over its seam on the back and close the place by hand; no need to unpick.</source>
        <translation>Llevar el ribete sobre su costura por detrás y cerrar ese sitio a mano; no hace falta descoser.</translation>
    </message>
    <message>
        <source>No good block of that name is on record: nothing was changed.</source>
        <translation>No consta ningún bloque bueno con ese nombre: no se ha cambiado nada.</translation>
    </message>
    <message>
        <source>So many scallops cannot be %1 deep: no more than %2.</source>
        <translation>Tantas ondas no pueden tener %1 de profundidad: como mucho %2.</translation>
    </message>
    <message>
        <source>Doubled, the back strip catches only %1 past the seam; at least %2 holds.</source>
        <extracomment>doubled: folded lengthwise first, so that its fold is ready made</extracomment>
        <translation>Doblada, la tira trasera agarra solo %1 más allá de la costura; con %2 o más, sujeta.</translation>
    </message>
    <message>
        <source>Scallops %1 deep cut into the stippling: they need %2 of cloth outside the outline, and there is %3. Stay-stitch first.</source>
        <extracomment>scallop: one of the round lobes the edge is cut into; its depth is measured from the raw edge</extracomment>
        <translation>Las ondas de %1 de profundidad entran en el meandro: necesitan %2 de tela fuera del contorno, y hay %3. Hacer antes una costura de refuerzo.</translation>
    </message>
    <message>
        <source>Between scallops %1 deep the binding comes close to the outline: %2 of cloth outside it would clear it, and there is %3.</source>
        <translation>Entre ondas de %1 de profundidad el ribete queda cerca del contorno: con %2 de tela por fuera no lo tocaría, y hay %3.</translation>
    </message>
    <message>
        <source>A scallop’s arc of %1 is tight for folded binding; it eases round from %2.</source>
        <translation>Un arco de onda de %1 es justo para un ribete doblado; desde %2 lo rodea bien.</translation>
    </message>
    <message>
        <source>The band may be wider than the piece: then trim its long side too.</source>
        <translation>Si la banda es más ancha que el trozo, recortar también el lado largo.</translation>
    </message>
    <message>
        <source>Cut a band of %1 right across.</source>
        <translation>Cortar una banda de %1 a todo lo ancho.</translation>
    </message>
    <message>
        <source>frame, as seen</source>
        <extracomment>frame: a strip of sashing all round the piece, under the binding</extracomment>
        <translation>marco, a la vista</translation>
    </message>
    <message>
        <source>frame strip, cut</source>
        <translation>tira del marco, corte</translation>
    </message>
    <message>
        <source>batting in the frame</source>
        <translation>guata en el marco</translation>
    </message>
    <message>
        <source>frame, left and right</source>
        <translation>marco, izquierda y derecha</translation>
    </message>
    <message>
        <source>frame, top and bottom</source>
        <translation>marco, arriba y abajo</translation>
    </message>
    <message>
        <source>With %1 outside the stitched line nothing of the frame would be seen: it needs more than %2.</source>
        <extracomment>frame: a strip of sashing all round the piece, under the binding</extracomment>
        <translation>Con %1 por fuera de la línea bordada no se vería nada del marco: necesita más de %2.</translation>
    </message>
    <message>
        <source>Both strips are caught; the batting meets the block’s own and does not lie over it.</source>
        <translation>Las dos tiras están agarradas; la guata toca la del bloque y no se monta sobre ella.</translation>
    </message>
    <message>
        <source>No join of a frame strip lands on a corner or a sashing’s end.</source>
        <translation>Ningún empalme de una tira del marco cae en una esquina ni en el extremo de una tira de unión.</translation>
    </message>
    <message>
        <source>Cut a frame strip of %1.</source>
        <extracomment>frame: a strip of sashing all round the piece, under the binding</extracomment>
        <translation>Cortar una tira del marco de %1.</translation>
    </message>
    <message>
        <source>Cut a strip of %1 to fill the frame.</source>
        <translation>Cortar una tira de %1 para rellenar el marco.</translation>
    </message>
    <message>
        <source>Sew the frame to the left and the right, and lay batting in.</source>
        <translation>Coser el marco a izquierda y derecha, y poner guata dentro.</translation>
    </message>
    <message>
        <source>Sew the frame to the top and the bottom, and lay batting in.</source>
        <translation>Coser el marco arriba y abajo, y poner guata dentro.</translation>
    </message>
    <message>
        <source>Square the piece with its frame.</source>
        <translation>Escuadrar la pieza con su marco.</translation>
    </message>
    <message>
        <source>Frame strip %1 of %2</source>
        <translation>Tira del marco %1 de %2</translation>
    </message>
    <message>
        <source>Batting strip %1 of %2</source>
        <translation>Tira de guata %1 de %2</translation>
    </message>
    <message>
        <source>Piece %1 of %2, frame left and right</source>
        <translation>Pieza %1 de %2, marco a los lados</translation>
    </message>
    <message>
        <source>Piece %1 of %2, frame top and bottom</source>
        <translation>Pieza %1 de %2, marco arriba y abajo</translation>
    </message>
    <message>
        <source>Piece %1 of %2, squaring with its frame</source>
        <translation>Pieza %1 de %2, escuadrar con su marco</translation>
    </message>
    <message>
        <source>Keep strong magnets away from implants. With a pacemaker or any implant ask your doctor first; as far off as the frame’s maker says and never under 6 in (15 cm), off lap and chest. They pinch: fingers outside the edge. Keep children and cards away, and this tablet 6 in (15 cm) off: it may go dark.</source>
        <translation>Mantener los imanes fuertes lejos de implantes. Con marcapasos u otro implante, preguntar antes al médico; tan lejos como diga el fabricante del bastidor y nunca a menos de 15&#xa0;cm (6 in), ni en el regazo ni en el pecho. Pellizcan: dedos fuera del borde. Niños y tarjetas lejos, y esta tableta a 15&#xa0;cm (6 in): puede apagarse la pantalla.</translation>
    </message>
    <message>
        <source>Pins out before the needle. Cord, hair and sleeves clear.</source>
        <translation>Alfileres fuera antes de que llegue la aguja. Cable, pelo y mangas apartados.</translation>
    </message>
    <message>
        <source>a leaf adds</source>
        <extracomment>a leaf is the board laid into a table to lengthen it</extracomment>
        <translation>una extensión añade</translation>
    </message>
    <message>
        <source>fitted with the leaf</source>
        <translation>al planear, extensión</translation>
    </message>
    <message>
        <source>out</source>
        <translation>quitada</translation>
    </message>
    <message>
        <source>in</source>
        <translation>puesta</translation>
    </message>
    <message>
        <source>batting’s packages changed</source>
        <translation>paquetes de guata cambiados</translation>
    </message>
    <message>
        <source>table showing, leaf in</source>
        <translation>mesa a la vista, con extensión</translation>
    </message>
    <message>
        <source>leaf in: at the corner</source>
        <translation>con extensión: en la esquina</translation>
    </message>
    <message>
        <source>table showing, leaf out</source>
        <translation>mesa a la vista, sin extensión</translation>
    </message>
    <message>
        <source>leaf out: at the corner</source>
        <translation>sin extensión: en la esquina</translation>
    </message>
    <message>
        <source>With the leaf in, the ends hang over by only %1 and will stick out stiffly; they fall well from %2.</source>
        <translation>Con la extensión, los extremos cuelgan solo %1 y quedarán tiesos; caen bien desde %2.</translation>
    </message>
    <message>
        <source>With the leaf out, the ends hang over by only %1 and will stick out stiffly; they fall well from %2.</source>
        <translation>Sin la extensión, los extremos cuelgan solo %1 y quedarán tiesos; caen bien desde %2.</translation>
    </message>
    <message>
        <source>Strips lie side by side: cut across first, then each to its length.</source>
        <translation>Las tiras van lado a lado: cortar primero a lo ancho y luego cada una a su largo.</translation>
    </message>
    <message>
        <source>leaf</source>
        <extracomment>the board laid in to make a table longer</extracomment>
        <translation>extensión</translation>
    </message>
    <message>
        <source>No mats of %1 × %2 lie on this table: it would have to be at least %1 long and %3 wide. Ask for the smaller ones, or for one piece.</source>
        <extracomment>mats: place mats, each laid at the table&apos;s edge before one who eats</extracomment>
        <translation>En esta mesa no caben manteles individuales de %1 × %2: tendría que medir al menos %1 de largo y %3 de ancho. Elegir los más pequeños, o una sola pieza.</translation>
    </message>
    <message>
        <source>No mats of %1 × %2 lie on this round table: it would have to be at least %3 across. Ask for the smaller ones, or for one piece.</source>
        <translation>En esta mesa redonda no caben manteles individuales de %1 × %2: tendría que tener al menos %3 de diámetro. Elegir los más pequeños, o una sola pieza.</translation>
    </message>
    <message>
        <source>All layouts near that size come out too large for %1 mats on this table: ask for fewer, or allow block sizes on every mark.</source>
        <translation>Todos los repartos cercanos a esa medida son demasiado grandes para %1 manteles individuales en esta mesa: pedir menos, o permitir tamaños de bloque en cada marca.</translation>
    </message>
    <message>
        <source>batting in the sashings</source>
        <extracomment>batting laid between the two allowances under a wide sashing</extracomment>
        <translation>guata en las tiras de unión</translation>
    </message>
    <message>
        <source>Cut a strip of %1 to fill the sashings.</source>
        <translation>Cortar una tira de %1 para rellenar las tiras de unión.</translation>
    </message>
    <message>
        <source>One side is tilted by {%1}: %7.</source>
        <extracomment>%7 is that side of the block: &quot;right&quot;</extracomment>
        <translation>Un lado, %7, está inclinado {%1}.</translation>
    </message>
    <message>
        <source>One end is wider: %7. Each side tilts by {%1}.</source>
        <extracomment>%7 is the wider end of the block: &quot;top&quot;</extracomment>
        <translation>Un extremo es más ancho: %7. Cada lado se inclina {%1}.</translation>
    </message>
    <message>
        <source>Not all six are read yet.</source>
        <extracomment>of a block&apos;s four sides and two diagonals some were not measured yet</extracomment>
        <translation>Aún no se han medido las seis.</translation>
    </message>
    <message>
        <source>Split the lean: turn the ruler by half of it, about the middle of the block.</source>
        <translation>Repartir la inclinación: girar la regla la mitad de ella, en torno al centro del bloque.</translation>
    </message>
    <message>
        <source>Cut that side parallel to the one across from it; its stitches go into the seam. Unpick what shows.</source>
        <translation>Cortar ese lado paralelo al opuesto; sus puntadas entran en la costura. Descoser lo que se vea.</translation>
    </message>
    <message>
        <source>Cut both sides square to the ends; their stitches go into the seams. Unpick what shows.</source>
        <translation>Cortar ambos lados a escuadra con los extremos; esas puntadas quedan en las costuras. Descoser las que se vean.</translation>
    </message>
    <message>
        <source>Make it again: the same place on a strip, the same thread lot.</source>
        <translation>Hacerlo de nuevo: el mismo lugar de una tira, el mismo lote de hilo.</translation>
    </message>
    <message>
        <source>Still to read: %6. Do not cut yet.</source>
        <extracomment>%6 lists the sides and diagonals that were not measured: &quot;left, diagonal from top right&quot;</extracomment>
        <translation>Falta medir: %6. No cortar todavía.</translation>
    </message>
    <message>
        <source>Make the test join, lay its batting between the allowances, press it and measure it.</source>
        <extracomment>between the allowances: under the wide sashing, from one block&apos;s allowance to the other&apos;s</extracomment>
        <translation>Hacer la unión de prueba, poner su guata entre los márgenes, plancharla y medirla.</translation>
    </message>
    <message>
        <source>Cut a piece of %1 to fill the test join, as long as its strips.</source>
        <extracomment>batting laid into the sashing of the test join; %1 is the batting</extracomment>
        <translation>Cortar un trozo para rellenar la unión de prueba, tan largo como sus tiras: %1.</translation>
    </message>
    <message>
        <source>Batting for the test join</source>
        <translation>Guata para la unión de prueba</translation>
    </message>
    <message>
        <source>Measure the gap beside the batting and the distance between the two seams on the back.</source>
        <extracomment>batting: laid into the wide sashing of the test join</extracomment>
        <translation>Medir la separación junto a la guata y la distancia entre las dos costuras por detrás.</translation>
    </message>
    <message>
        <source>place mats</source>
        <extracomment>place mats: how many are made</extracomment>
        <translation>manteles individuales</translation>
    </message>
    <message>
        <source>Along the selvage %1 of %2</source>
        <extracomment>a band that runs along the selvage, %1 its number, of %2</extracomment>
        <translation>Junto al orillo %1 de %2</translation>
    </message>
    <message>
        <source>Fold it once, cut end on cut end. First cut the selvage off straight: the bands are measured from there.</source>
        <extracomment>strips along the selvage; the cloth is folded across, so that its two cut ends meet</extracomment>
        <translation>Doblar una vez, extremo cortado sobre extremo cortado. Cortar primero el orillo, recto: desde ahí se miden las bandas.</translation>
    </message>
    <message>
        <source>In one layer. First cut the selvage off straight: the bands are measured from there.</source>
        <translation>En una sola capa. Cortar primero el orillo, recto: desde ahí se miden las bandas.</translation>
    </message>
    <message>
        <source>Cut a band of %1 along the selvage.</source>
        <extracomment>the band runs along the cloth&apos;s selvage instead of across the cloth</extracomment>
        <translation>Cortar una banda de %1 a lo largo del orillo.</translation>
    </message>
    <message>
        <source>Block %1, patches</source>
        <translation>Bloque %1, parches</translation>
    </message>
    <message>
        <source>Block %1, pressing</source>
        <translation>Bloque %1, planchar</translation>
    </message>
    <message>
        <source>Block %1, apart</source>
        <extracomment>a block still in its strip is cut off it, roughly</extracomment>
        <translation>Bloque %1, separar</translation>
    </message>
    <message>
        <source>From a band of %1: trim its long side too.</source>
        <extracomment>band: a strip right across the cloth that the next piece is cut from; %1 its width</extracomment>
        <translation>De una banda de %1: recortar también el lado largo.</translation>
    </message>
    <message>
        <source>From a band of %1.</source>
        <translation>De una banda de %1.</translation>
    </message>
    <message>
        <source>%1 from a band of %2: %3 measured off.</source>
        <extracomment>so many pieces from a band of this width, each so long along it</extracomment>
        <translation>%1 de una banda de %2: medir %3.</translation>
    </message>
    <message>
        <source>front cloth</source>
        <translation>tela delantera</translation>
    </message>
    <message>
        <source>back cloth</source>
        <extracomment>the cloth of the back</extracomment>
        <translation>tela trasera</translation>
    </message>
    <message>
        <source>patch cloth</source>
        <extracomment>the cloth of the appliquéd patches</extracomment>
        <translation>tela de los parches</translation>
    </message>
    <message>
        <source>sashing cloth, front</source>
        <extracomment>the strips between the blocks</extracomment>
        <translation>tela de las tiras de unión, delantera</translation>
    </message>
    <message>
        <source>sashing cloth, back</source>
        <translation>tela de las tiras de unión, trasera</translation>
    </message>
    <message>
        <source>binding cloth</source>
        <translation>tela del ribete</translation>
    </message>
    <message>
        <source>%1 inside the hoop is more than it measures outside, %2: the needle would meet the frame. Measure both again.</source>
        <translation>%1 por dentro es más de lo que mide el bastidor por fuera, %2: la aguja daría en el bastidor. Medir los dos de nuevo.</translation>
    </message>
    <message>
        <source>Blade</source>
        <translation>Cuchilla</translation>
    </message>
    <message>
        <source>Magnets</source>
        <translation>Imanes</translation>
    </message>
    <message>
        <source>Needle</source>
        <translation>Aguja</translation>
    </message>
    <message>
        <source>Hot iron</source>
        <translation>Plancha</translation>
    </message>
    <message>
        <source>Spray</source>
        <translation>Aerosol</translation>
    </message>
    <message>
        <source>Scissors</source>
        <translation>Tijeras</translation>
    </message>
    <message>
        <source>Flames</source>
        <translation>Llamas</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Alfileres</translation>
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
        <translation>Se desvía {%1}: demasiado para cortarlo así.</translation>
    </message>
    <message>
        <source>It leans by {%1}: too far to be cut as it is.</source>
        <extracomment>lean: the block is a little of a diamond; %1 is by how much</extracomment>
        <translation>Se inclina {%1}: demasiado para cortarlo así.</translation>
    </message>
    <message>
        <source>Press the block.</source>
        <translation>Planchar el bloque.</translation>
    </message>
    <message>
        <source>Stitched blocks stay as they are and no longer fit, in all %1: sent as %2, now it would be %3. Undo takes the change back.</source>
        <translation>Los bloques bordados quedan como están y ya no encajan, en total %1: enviados con %2, ahora serían %3. «Deshacer» anula el cambio.</translation>
    </message>
    <message>
        <source>Hoop strips cut already no longer fit, in all %1: cut %2 wide, now it would be %3. Undo takes the change back.</source>
        <translation>Las tiras de bordado cortadas ya no encajan, en total %1: cortadas de %2 de ancho, ahora serían %3. «Deshacer» anula el cambio.</translation>
    </message>
    <message>
        <source>Sashing strips cut already no longer fit, in all %1: cut %2 wide, now it would be %3. Undo takes the change back.</source>
        <extracomment>sashing: the strip between two blocks</extracomment>
        <translation>Las tiras de unión cortadas ya no encajan, en total %1: cortadas de %2 de ancho, ahora serían %3. «Deshacer» anula el cambio.</translation>
    </message>
    <message>
        <source>Binding strips cut already no longer fit, in all %1: cut %2 wide, now it would be %3. Undo takes the change back.</source>
        <translation>Las tiras de ribete cortadas ya no encajan, en total %1: cortadas de %2 de ancho, ahora serían %3. «Deshacer» anula el cambio.</translation>
    </message>
    <message>
        <source>What is cut of “%1” no longer counts: “%2” has its part now. Undo takes the change back.</source>
        <extracomment>part: front, back, sashing … of the piece; %1 and %2 are cloths</extracomment>
        <translation>Lo cortado de «%1» ya no cuenta: «%2» tiene ahora su función. «Deshacer» anula el cambio.</translation>
    </message>
    <message>
        <source>Cut the strip apart along a ruler, down the middle of each gap.</source>
        <translation>Cortar la tira con regla por el medio de cada hueco.</translation>
    </message>
    <message>
        <source>Apart, blade closed</source>
        <translation>Separado, cuchilla cerrada</translation>
    </message>
    <message>
        <source>Nothing may lie underneath.</source>
        <translation>Sin nada debajo.</translation>
    </message>
    <message>
        <source>Keep the ripper’s blade off the cloth.</source>
        <translation>El filo del descosedor lejos de la tela.</translation>
    </message>
    <message>
        <source>Roll the blade away from you, fingers well back; then close it.</source>
        <translation>Pasar la cuchilla alejándola del cuerpo, dedos bien atrás; luego cerrarla.</translation>
    </message>
    <message>
        <source>Slow over the thick places; turn the wheel by hand.</source>
        <translation>Despacio sobre lo grueso; girar el volante a mano.</translation>
    </message>
    <message>
        <source>Keep it: a narrower strip or patches come out of it.</source>
        <translation>Guardarlo: de ahí sale una tira más estrecha o parches.</translation>
    </message>
    <message>
        <source>Straighten the end first.</source>
        <translation>Primero enderezar el extremo.</translation>
    </message>
    <message>
        <source>Pick the thread back about {1 in} and start again on the line.</source>
        <translation>Descoser el hilo hacia atrás cerca de {1 in} y empezar de nuevo sobre la línea.</translation>
    </message>
    <message>
        <source>Inside stippling it will not show.</source>
        <translation>Dentro del meandro no se notará.</translation>
    </message>
    <message>
        <source>A pleat under {%1} on the back may stay.</source>
        <translation>Un pliegue de menos de {%1} por detrás puede quedarse.</translation>
    </message>
    <message>
        <source>A longer one, or a cut through the ground, means a new block.</source>
        <translation>Uno más largo, o un corte en la tela de fondo, pide un bloque nuevo.</translation>
    </message>
    <message>
        <source>Not pressed yet: unpick that patch’s stitches only.</source>
        <translation>Sin planchar aún: descoser solo las puntadas de ese parche.</translation>
    </message>
    <message>
        <source>Peel it off, lay the right one, stitch it again.</source>
        <translation>Despegarlo, poner el correcto y bordarlo de nuevo.</translation>
    </message>
    <message>
        <source>Pressed already: a new block.</source>
        <translation>Ya planchado: un bloque nuevo.</translation>
    </message>
    <message>
        <source>Leave the block in the hoop.</source>
        <translation>Dejar el bloque en el bastidor.</translation>
    </message>
    <message>
        <source>Start again at the stop you were at; nothing here was lost.</source>
        <translation>Empezar de nuevo en la última parada; aquí no se perdió nada.</translation>
    </message>
    <message>
        <source>{%1} is too little to hold a seam; it takes {%2}.</source>
        <translation>{%1} es muy poco para una costura; hacen falta {%2}.</translation>
    </message>
    <message>
        <source>Lay a scrap of the same three layers edge to edge.</source>
        <translation>Poner un retal de las mismas tres capas canto con canto.</translation>
    </message>
    <message>
        <source>Zigzag it on, trim it to the ruler again.</source>
        <translation>Coserlo en zigzag y recortarlo otra vez con la regla.</translation>
    </message>
    <message>
        <source>{%1} holds nothing: under {%2} the block is made again.</source>
        <translation>{%1} no sostiene nada: por debajo de {%2} el bloque se hace de nuevo.</translation>
    </message>
    <message>
        <source>Its good part serves for a test join.</source>
        <translation>Su parte buena sirve para una unión de prueba.</translation>
    </message>
    <message>
        <source>{%1} too small. Measure its stitched outline.</source>
        <translation>Faltan {%1}. Medir su contorno bordado.</translation>
    </message>
    <message>
        <source>Is that small too, the outer line is stitched again at size, or the block is made again.</source>
        <extracomment>it: the stitched outline of a block</extracomment>
        <translation>Si también es pequeño, se borda de nuevo la línea exterior a medida, o se hace otro bloque.</translation>
    </message>
    <message>
        <source>Off by {%1}: up to {%2} a row is eased to the long sashing.</source>
        <translation>Se desvía {%1}: hasta {%2} una fila se embebe en la tira larga.</translation>
    </message>
    <message>
        <source>Pin the ends and the marks first.</source>
        <translation>Prender antes los extremos y las marcas.</translation>
    </message>
    <message>
        <source>{%2} too long. If every seam shares in it, each was sewn {%1} too scant.</source>
        <extracomment>scant: less deep than it should be</extracomment>
        <translation>Sobran {%2}. Si se reparte entre todas las costuras, cada una se cosió {%1} escasa.</translation>
    </message>
    <message>
        <source>Sew them again that much deeper, or try the test join anew.</source>
        <translation>Coserlas de nuevo otro tanto más hondas, o repetir la unión de prueba.</translation>
    </message>
    <message>
        <source>{%2} too short. If every seam shares in it, each was sewn {%1} too deep.</source>
        <translation>Faltan {%2}. Si se reparte entre todas las costuras, cada una se cosió {%1} demasiado honda.</translation>
    </message>
    <message>
        <source>Unpick, and sew them again that much scanter.</source>
        <extracomment>scanter: less deep</extracomment>
        <translation>Descoserlas y coserlas otro tanto más escasas.</translation>
    </message>
    <message>
        <source>First measure each sashing as it is seen.</source>
        <translation>Primero medir cada tira de unión tal como se ve.</translation>
    </message>
    <message>
        <source>If one alone is off, only its seams are unpicked.</source>
        <translation>Si falla una sola, se descosen solo sus costuras.</translation>
    </message>
    <message>
        <source>{%1} smaller than planned. Square the opposite side to it.</source>
        <translation>{%1} menos de lo planeado. Escuadrar con él el lado opuesto.</translation>
    </message>
    <message>
        <source>The binding as planned reaches round.</source>
        <translation>El ribete planeado alcanza.</translation>
    </message>
    <message>
        <source>Cut every third stitch on the bobbin’s side.</source>
        <translation>Cortar una de cada tres puntadas por el lado de la canilla.</translation>
    </message>
    <message>
        <source>Draw the other thread out and brush the bits away.</source>
        <translation>Sacar el otro hilo, cepillar los restos.</translation>
    </message>
    <message>
        <source>Press it flat.</source>
        <translation>Planchar plano.</translation>
    </message>
    <message>
        <source>Unpick the binding from the last good corner on, not the whole round.</source>
        <translation>Descoser el ribete desde la última esquina buena, no toda la vuelta.</translation>
    </message>
    <message>
        <source>Press it flat and fold the corner anew.</source>
        <translation>Plancharlo plano y doblar la esquina de nuevo.</translation>
    </message>
    <message>
        <source>Unpick the ditch where it missed, and a thumb’s width beyond at both ends.</source>
        <extracomment>ditch: the seam line beside a sashing, in which the back is caught from the front</extracomment>
        <translation>Descoser la costura de la zanja donde no agarró, y el ancho de un pulgar más a cada extremo.</translation>
    </message>
    <message>
        <source>Nothing is cut anew.</source>
        <translation>No se corta nada nuevo.</translation>
    </message>
    <message>
        <source>Fold {%1} under, no more: that catches {%2}.</source>
        <translation>Remeter {%1}, no más: así agarra {%2}.</translation>
    </message>
    <message>
        <source>Pin on the seam line and stitch.</source>
        <translation>Prender sobre la línea de costura y coser.</translation>
    </message>
    <message>
        <source>Where it still does not reach, close it by hand, or lay a tape over the fold.</source>
        <translation>Donde aún no llegue, cerrarlo a mano o poner una cinta sobre el doblez.</translation>
    </message>
    <message>
        <source>Feel all the other joins for the same.</source>
        <translation>Palpar las demás uniones por si acaso.</translation>
    </message>
    <message>
        <source>A notch of {%1}: the binding covers it.</source>
        <translation>Una muesca de {%1}: el ribete la cubre.</translation>
    </message>
    <message>
        <source>Lay a scrap of batting in, so that it is filled.</source>
        <translation>Poner un retal de guata para que quede llena.</translation>
    </message>
    <message>
        <source>{%1} is left. Trim {%2} off all four sides, so that the edge stays even.</source>
        <translation>Quedan {%1}. Recortar {%2} de los cuatro lados, para que el borde quede parejo.</translation>
    </message>
    <message>
        <source>Bind as planned.</source>
        <translation>Ribetear como estaba planeado.</translation>
    </message>
    <message>
        <source>Only {%1} is left. Lay a scrap of the three layers edge to edge into the notch.</source>
        <translation>Solo quedan {%1}. Poner un retal de las tres capas canto con canto en la muesca.</translation>
    </message>
    <message>
        <source>Zigzag it, then square the side again.</source>
        <translation>Coserlo en zigzag y escuadrar el lado otra vez.</translation>
    </message>
    <message>
        <source>If %1 was sewn in, unpick the joins on its sides only.</source>
        <translation>Si %1 ya estaba cosido, descoser solo las uniones de sus lados.</translation>
    </message>
    <message>
        <source>They are sewn again with the new block. All others stay.</source>
        <translation>Se cosen de nuevo con el bloque nuevo. Las demás quedan.</translation>
    </message>
    <message>
        <source>spare blocks for all</source>
        <extracomment>spare blocks that all mats of a set share</extracomment>
        <translation>bloques de reserva para todos</translation>
    </message>
    <message>
        <source>short sashing, cut</source>
        <extracomment>a short sashing as it is cut, with its spare</extracomment>
        <translation>tira de unión corta, corte</translation>
    </message>
    <message>
        <source>long sashing, cut</source>
        <extracomment>a long sashing as it is cut, with its spare</extracomment>
        <translation>tira de unión larga, corte</translation>
    </message>
    <message>
        <source>spare for all</source>
        <extracomment>spare blocks that all mats of a set share</extracomment>
        <translation>de reserva para todos</translation>
    </message>
    <message>
        <source>Bought as Shop lists it, {%2} of %1 is left: that yields it.</source>
        <extracomment>what is left was never measured: it is reckoned from what the shopping list says was bought</extracomment>
        <translation>%1: comprado según la lista, quedan {%2}. Alcanza.</translation>
    </message>
    <message>
        <source>{%2} of %1 is left: that yields it if squaring the edge takes no more than {%3}.</source>
        <extracomment>%2 is left of the cloth; its edge is cut straight first, which takes some of that</extracomment>
        <translation>%1: quedan {%2}. Alcanza si escuadrar el borde no quita más de {%3}.</translation>
    </message>
    <message>
        <source>It comes out of what is left on a strip of %1 already cut: nothing to buy.</source>
        <extracomment>it is cut again from what is left over on strips already cut</extracomment>
        <translation>%1: sale de lo que queda en una tira ya cortada. Nada que comprar.</translation>
    </message>
    <message>
        <source>Bought as Shop lists it, {%2} of %1 is left: that does not yield it.</source>
        <translation>%1: comprado según la lista, quedan {%2}. No alcanza.</translation>
    </message>
    <message>
        <source>Lift and set down, front first, then the back. Let it cool flat; after steam let it dry.</source>
        <translation>Levantar y posar, primero por delante, luego por detrás. Dejar enfriar en plano; tras el vapor, dejar secar.</translation>
    </message>
    <message>
        <source>Cut a hoop strip of %1 for the test block.</source>
        <translation>Cortar una tira de bordado de %1 para el bloque de prueba.</translation>
    </message>
    <message>
        <source>Cut a sashing band of %1 for the test join.</source>
        <translation>Cortar una banda de %1 para la tira de unión de la unión de prueba.</translation>
    </message>
    <message>
        <source>Trial strip</source>
        <extracomment>title of the strip cut for the test block</extracomment>
        <translation>Tira de prueba</translation>
    </message>
    <message>
        <source>Trial band</source>
        <extracomment>title of the band cut for the test join</extracomment>
        <translation>Banda de prueba</translation>
    </message>
    <message>
        <source>First square the cut edge of %1 to its fold again.</source>
        <extracomment>the edge that the last cut left, from which the next strip is measured</extracomment>
        <translation>Primero escuadrar otra vez el borde cortado con su doblez: %1.</translation>
    </message>
    <message>
        <source>Rows joined already no longer fit, in all %1: joined of %2 blocks, now it would be %3. Undo takes the change back.</source>
        <extracomment>row: blocks joined side by side; %2 and %3 count blocks</extracomment>
        <translation>Las filas unidas ya no encajan, en total %1: unidas de %2 bloques, ahora serían %3. «Deshacer» anula el cambio.</translation>
    </message>
    <message>
        <source>Long sashings cut already no longer fit, in all %1: cut %2 long, now it would be %3. Undo takes the change back.</source>
        <extracomment>long sashing: the strip between two rows</extracomment>
        <translation>Las tiras de unión largas cortadas ya no encajan, en total %1: cortadas de %2 de largo, ahora serían %3. «Deshacer» anula el cambio.</translation>
    </message>
    <message>
        <source>Take the common size, stitched %1.</source>
        <extracomment>%1 is the common size of the blocks measured, within their stitches</extracomment>
        <translation>Tomar la medida común, bordado %1.</translation>
    </message>
    <message>
        <source>Stitched {%2}: off size.</source>
        <extracomment>stitched: the size within a block&apos;s outer stitches, not that it is cut to</extracomment>
        <translation>Bordado {%2}: fuera de medida.</translation>
    </message>
    <message>
        <source>Cut {%2}: off size.</source>
        <extracomment>cut: the size of a trimmed block</extracomment>
        <translation>Cortado {%2}: fuera de medida.</translation>
    </message>
    <message>
        <source>Whole strip marked</source>
        <extracomment>on a button: all centres of the strip in hand are marked, not only one</extracomment>
        <translation>Toda la tira marcada</translation>
    </message>
    <message>
        <source>It came out as first planned: %1.</source>
        <translation>Salió como se planeó primero: %1.</translation>
    </message>
    <message>
        <source>It is larger than the common size: %1.</source>
        <translation>Es mayor que la medida común: %1.</translation>
    </message>
    <message>
        <source>Trim it to the common size, cut to %1.</source>
        <extracomment>%1 is the size of a trimmed block, at the common size of all</extracomment>
        <translation>Recortarlo a la medida común, cortado a %1.</translation>
    </message>
    <message>
        <source>renaming</source>
        <translation>cambio de nombre</translation>
    </message>
    <message>
        <source>putting away</source>
        <translation>lo apartado</translation>
    </message>
    <message>
        <source>bringing back</source>
        <translation>lo recuperado</translation>
    </message>
    <message>
        <source>throwing away</source>
        <translation>lo tirado</translation>
    </message>
    <message>
        <source>Stitched blocks without a place: %1 (%2 first). Undo takes the change back.</source>
        <extracomment>%2 is the first of them, a block&apos;s name like A1</extracomment>
        <translation>Bloques bordados sin sitio: %1 (primero %2). «Deshacer» anula el cambio.</translation>
    </message>
    <message>
        <source>Made to the old measure, at “%1”: look at it before you use it.</source>
        <extracomment>%1 is a step in words</extracomment>
        <translation>Hecho con la medida vieja, en «%1»: mirarlo antes de usarlo.</translation>
    </message>
    <message>
        <source>Sew front to back, right sides together; turn it out and close it.</source>
        <translation>Coser delantera y trasera derecho con derecho, volver y cerrar.</translation>
    </message>
    <message>
        <source>Piece %1 of %2, turning out</source>
        <translation>Pieza %1 de %2, volver</translation>
    </message>
</context>
<context>
    <name>WorkedFigure</name>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a figure does</extracomment>
        <translation>ver el cálculo</translation>
    </message>
</context>
<context>
    <name>WorkingSheet</name>
    <message>
        <source>along</source>
        <translation>a lo largo</translation>
    </message>
    <message>
        <source>across</source>
        <translation>a lo ancho</translation>
    </message>
    <message>
        <source>Which way</source>
        <translation>En qué sentido</translation>
    </message>
    <message>
        <source>Back to the sum before</source>
        <translation>Volver a la cuenta anterior</translation>
    </message>
    <message>
        <source>Back to the work</source>
        <translation>Volver al trabajo</translation>
    </message>
    <message>
        <source>%1: {%2}</source>
        <extracomment>heads a sum: %1 is the figure&apos;s name, %2 the figure: &quot;hoop strip, cut: 13 1/4 in&quot;</extracomment>
        <translation>%1: {%2}</translation>
    </message>
    <message>
        <source>The longest counts.</source>
        <extracomment>of two or more rows of lengths laid end to end over the tape: the longest is the figure</extracomment>
        <translation>Cuenta lo más largo.</translation>
    </message>
</context>
<context>
    <name>WorkingTab</name>
    <message>
        <source>show the working</source>
        <extracomment>opens the sum behind a figure</extracomment>
        <translation>ver el cálculo</translation>
    </message>
    <message>
        <source>sum</source>
        <extracomment>on a small tab, at most five letters: opens the sum behind a figure</extracomment>
        <translation>cómo</translation>
    </message>
</context>
<context>
    <name>WrongSheet</name>
    <message>
        <source>Here is what that means</source>
        <translation>Qué hay que hacer</translation>
    </message>
    <message>
        <source>What went wrong?</source>
        <translation>¿Qué salió mal?</translation>
    </message>
    <message>
        <source>They disagree: measure the block</source>
        <translation>No coinciden: medir el bloque</translation>
    </message>
    <message>
        <source>Make it again</source>
        <translation>Hacerlo de nuevo</translation>
    </message>
    <message>
        <source>On with the work</source>
        <translation>Seguir con el trabajo</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Which block?</source>
        <translation>¿Qué bloque?</translation>
    </message>
    <message>
        <source>No block is made yet.</source>
        <translation>Aún no hay ningún bloque hecho.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Volver</translation>
    </message>
    <message>
        <source>%1: what went wrong?</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;: the one in hand</extracomment>
        <translation>%1: ¿qué salió mal?</translation>
    </message>
</context>
<context>
    <name>matside::Awake</name>
    <message>
        <source>A step is shown</source>
        <translation>Se muestra un paso</translation>
    </message>
</context>
<context>
    <name>matside::Backups</name>
    <message>
        <source>Backup</source>
        <extracomment>the name of a file with everything in it</extracomment>
        <translation>Respaldo</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>La carpeta %1 no se puede crear.</translation>
    </message>
    <message>
        <source>Writing the backup…</source>
        <translation>Escribiendo el respaldo…</translation>
    </message>
    <message>
        <source>Written to %1 and read back: %2.</source>
        <translation>Escrito en %1 y leído de nuevo: %2.</translation>
    </message>
    <message>
        <source>There are projects on the shelf. A backup is put back where nothing is yet: on a new tablet, or after a new start with an empty folder.</source>
        <translation>Hay proyectos en el estante. Un respaldo se recupera donde aún no hay nada: en una tableta nueva, o tras empezar de nuevo con una carpeta vacía.</translation>
    </message>
    <message>
        <source>All of it lies ready. Close Matside and open it again: then it is on the shelf.</source>
        <translation>Todo está listo. Cerrar Matside y abrirlo de nuevo: entonces estará en el estante.</translation>
    </message>
</context>
<context>
    <name>matside::BattingModel</name>
    <message>
        <source>from the roll</source>
        <extracomment>batting is bought so</extracomment>
        <translation>del rollo</translation>
    </message>
    <message>
        <source>1 package</source>
        <translation>1 paquete</translation>
    </message>
    <message>
        <source>%1 packages</source>
        <translation>%1 paquetes</translation>
    </message>
    <message>
        <source>the roll’s usable width</source>
        <translation>ancho útil del rollo</translation>
    </message>
    <message>
        <source>a package of</source>
        <translation>un paquete de</translation>
    </message>
    <message>
        <source>one side of it</source>
        <translation>un lado</translation>
    </message>
    <message>
        <source>its other side</source>
        <translation>el otro lado</translation>
    </message>
    <message>
        <source>price of a package</source>
        <translation>precio del paquete</translation>
    </message>
    <message>
        <source>Proven least.</source>
        <translation>Mínimo demostrado.</translation>
    </message>
    <message>
        <source>The least found; no proof.</source>
        <translation>Lo mínimo encontrado; sin demostrar.</translation>
    </message>
    <message>
        <source>Waste %1 %.</source>
        <translation>Desperdicio %1&#xa0;%.</translation>
    </message>
    <message>
        <source>Costs %1.</source>
        <translation>Cuesta %1.</translation>
    </message>
    <message>
        <source>From the roll: {%1} of %2</source>
        <extracomment>%1 &quot;2 3/8 yd&quot;, %2 the roll&apos;s width</extracomment>
        <translation>Del rollo: {%1} de %2 de ancho</translation>
    </message>
    <message>
        <source>Too small for a hoop strip of %1.</source>
        <translation>Demasiado pequeño para una tira de bordado de %1.</translation>
    </message>
    <message>
        <source>1 strip from each.</source>
        <translation>1 tira de cada uno.</translation>
    </message>
    <message>
        <source>%1 strips from each.</source>
        <translation>%1 tiras de cada uno.</translation>
    </message>
    <message>
        <source>No way of cutting needs fewer.</source>
        <translation>Ningún modo de cortar necesita menos.</translation>
    </message>
    <message>
        <source>1 package of %1</source>
        <extracomment>%1 a number, %2 &quot;45 in × 60 in&quot;</extracomment>
        <translation>1 paquete de %1</translation>
    </message>
    <message>
        <source>%1 packages of %2</source>
        <translation>%1 paquetes de %2</translation>
    </message>
    <message>
        <source>The batting is bought or begun: it stays as it is.</source>
        <translation>La guata está comprada o empezada: se queda como está.</translation>
    </message>
    <message>
        <source>Add a package size to hold it against the roll.</source>
        <translation>Añadir un tamaño de paquete para compararlo con el rollo.</translation>
    </message>
    <message>
        <source>The package wastes less than the roll.</source>
        <translation>El paquete desperdicia menos que el rollo.</translation>
    </message>
    <message>
        <source>The roll wastes least.</source>
        <translation>El rollo es lo que menos desperdicia.</translation>
    </message>
    <message>
        <source>List the batting at Fit first.</source>
        <translation>Anotar primero la guata en «Planear».</translation>
    </message>
    <message>
        <source>The batting is bought or begun. Take the tick away first.</source>
        <translation>La guata está comprada o empezada. Quitar antes la marca.</translation>
    </message>
    <message>
        <source>%1 sizes at most.</source>
        <translation>%1 tamaños como mucho.</translation>
    </message>
    <message>
        <source>This size is on the list.</source>
        <translation>Este tamaño ya está en la lista.</translation>
    </message>
    <message>
        <source>An amount with two decimals at most.</source>
        <translation>Un importe con dos decimales como mucho.</translation>
    </message>
    <message>
        <source>Between %1 and %2.</source>
        <translation>Entre %1 y %2.</translation>
    </message>
    <message>
        <source>A strip is larger than this package.</source>
        <translation>Una tira es mayor que este paquete.</translation>
    </message>
    <message>
        <source>More than %1 pieces are not laid out one by one: take a larger package, or the roll.</source>
        <translation>Más de %1 trozos no se colocan uno a uno: tomar un paquete mayor o el rollo.</translation>
    </message>
    <message>
        <source>1 hoop strip of %1 × %2 is to be cut.</source>
        <extracomment>the last two are a strip&apos;s two sides</extracomment>
        <translation>Hay que cortar 1 tira de bordado de %1 × %2.</translation>
    </message>
    <message>
        <source>%1 hoop strips of %2 × %3 are to be cut.</source>
        <translation>Hay que cortar %1 tiras de bordado de %2 × %3.</translation>
    </message>
</context>
<context>
    <name>matside::BlockLog</name>
    <message>
        <source>Block %1</source>
        <extracomment>%1 is a block&apos;s name, &quot;A1&quot;</extracomment>
        <translation>Bloque %1</translation>
    </message>
    <message>
        <source>Strip %1, place %2</source>
        <extracomment>where a block was stitched: the strip&apos;s number and the block&apos;s place on it</extracomment>
        <translation>Tira %1, lugar %2</translation>
    </message>
    <message>
        <source>Planned {%1} × {%2}</source>
        <extracomment>the size the stitched outline should have, along and across</extracomment>
        <translation>Planeado {%1} × {%2}</translation>
    </message>
    <message>
        <source>Planned {%1} × {%2}, off by {%3}: %4 says what to do</source>
        <extracomment>a stitched outline that is off its planned size %1 × %2 by %3; %4 is the station that judges it</extracomment>
        <translation>Planeado {%1} × {%2}, difiere en {%3}: «%4» dice qué hacer</translation>
    </message>
</context>
<context>
    <name>matside::BlockMeasure</name>
    <message>
        <source>%1 is too small for the others: make it again.</source>
        <translation>%1 es demasiado pequeño para los otros bloques: hacerlo de nuevo.</translation>
    </message>
    <message>
        <source>Common size %1: trim to %2; the piece finishes %3 × %4.</source>
        <translation>Medida común %1: recortar a %2; la pieza acabada mide %3 × %4.</translation>
    </message>
    <message>
        <source>%1 is cut already for another size.</source>
        <translation>%1 ya está cortado para otra medida.</translation>
    </message>
    <message>
        <source>Of the table %1 and %2 stay clear.</source>
        <extracomment>table: %1 and %2 are what is left of the table at the sides and at the ends</extracomment>
        <translation>De la mesa quedan libres %1 y %2.</translation>
    </message>
    <message>
        <source>Long sashings %1.</source>
        <translation>Tiras de unión largas, %1.</translation>
    </message>
    <message>
        <source>%1 loses %2 a side into the seams.</source>
        <translation>%1 pierde %2 por lado en las costuras.</translation>
    </message>
    <message>
        <source>Square enough, if the rest is as shown.</source>
        <translation>A escuadra, si el resto es como se muestra.</translation>
    </message>
    <message>
        <source>Measure the rest before you cut.</source>
        <translation>Medir el resto antes de cortar.</translation>
    </message>
    <message>
        <source>A stitched line will show then: that of %1, by %2.</source>
        <extracomment>%1 is a block&apos;s name, &quot;A2&quot;: at the common size its stitched line lies outside the seam by %2</extracomment>
        <translation>Se verá entonces una línea bordada: la de %1, en %2.</translation>
    </message>
    <message>
        <source>%1 of 6 not yet read</source>
        <extracomment>of the six readings of a block</extracomment>
        <translation>%1 de 6 aún sin medir</translation>
    </message>
</context>
<context>
    <name>matside::ClothColour</name>
    <message>
        <source>no colour yet</source>
        <translation>aún sin color</translation>
    </message>
    <message>
        <source>Tap the cloth in the picture.</source>
        <translation>Tocar la tela en la foto.</translation>
    </message>
    <message>
        <source>Light and dark meet in this place: a print, a fold or a shadow. The mean of all of it is shown.</source>
        <translation>Aquí se juntan claro y oscuro: un estampado, un pliegue o una sombra. Se muestra la media de todo.</translation>
    </message>
    <message>
        <source>The mean about the place you tapped. Tap another place to compare.</source>
        <translation>La media alrededor del lugar tocado. Tocar otro para comparar.</translation>
    </message>
    <message>
        <source>This picture cannot be read. Choose another one.</source>
        <translation>Esta foto no se puede leer. Elegir otra.</translation>
    </message>
</context>
<context>
    <name>matside::EdgeModel</name>
    <message>
        <source>A count of pins lies between 0 and %1.</source>
        <translation>El número de alfileres está entre 0 y %1.</translation>
    </message>
    <message>
        <source>A corner’s radius is more than nothing and no more than %1.</source>
        <translation>El radio de una esquina es mayor que cero y como mucho %1.</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>right</source>
        <translation>a la derecha</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>left</source>
        <translation>a la izquierda</translation>
    </message>
    <message>
        <source>top, %1 from the left</source>
        <translation>arriba, %1 desde la izquierda</translation>
    </message>
    <message>
        <source>right, %1 from the top</source>
        <translation>a la derecha, %1 desde arriba</translation>
    </message>
    <message>
        <source>bottom, %1 from the left</source>
        <translation>abajo, %1 desde la izquierda</translation>
    </message>
    <message>
        <source>left, %1 from the top</source>
        <translation>a la izquierda, %1 desde arriba</translation>
    </message>
    <message>
        <source>Begin and close: %1.</source>
        <translation>Empezar y cerrar: %1.</translation>
    </message>
    <message>
        <source>Join %1: %2.</source>
        <translation>Empalme %1: %2.</translation>
    </message>
    <message>
        <source>First cut %1 off strip %2.</source>
        <translation>Cortar primero %1 de la tira %2.</translation>
    </message>
    <message>
        <source>No join falls on a corner or a sashing end.</source>
        <translation>Ningún empalme cae en una esquina ni en el extremo de una tira de unión.</translation>
    </message>
    <message>
        <source>Between the sashing ends there is no room for a join: the joins keep clear of the corners alone. Narrower binding would fit.</source>
        <extracomment>so: with joins as wide as they are</extracomment>
        <translation>Entre los extremos de las tiras de unión no hay sitio para un empalme: los empalmes solo evitan las esquinas. Un ribete más estrecho cabría.</translation>
    </message>
    <message>
        <source>The sides are too short to keep the joins off the corners. Press every join open, and grade it.</source>
        <translation>Los lados son demasiado cortos para apartar los empalmes de las esquinas. Planchar abierto cada empalme y rebajarlo.</translation>
    </message>
    <message>
        <source>This takes one strip more, %1 in all.</source>
        <translation>Esto pide una tira más, %1 en total.</translation>
    </message>
    <message>
        <source>Square corners, mitred.</source>
        <translation>Esquinas rectas, a inglete.</translation>
    </message>
    <message>
        <source>The arc cuts %1 into the stippling: stay-stitch beside the line before cutting. Up to %2 it would clear it.</source>
        <translation>El arco entra %1 en el meandro: hacer una costura de refuerzo junto a la línea antes de cortar. Hasta %2 no lo tocaría.</translation>
    </message>
    <message>
        <source>It is tight for folded binding, which eases round from %1.</source>
        <translation>Es justo para un ribete doblado, que rodea bien desde %1.</translation>
    </message>
    <message>
        <source>Small quilts and pillows do not go in a sleeping baby’s cot.</source>
        <translation>No poner colchas pequeñas ni cojines en la cuna de un bebé dormido.</translation>
    </message>
    <message>
        <source>Label: on the back, lower right. Title, maker, date, size, fibre, how to wash.</source>
        <translation>Etiqueta: por detrás, abajo a la derecha. Título, nombre, fecha, tamaño, fibra, lavado.</translation>
    </message>
    <message>
        <source>To hang it: a sleeve tacked on by hand, so that it comes off again, cut %1 to %2 wide and %3 to %4 long.</source>
        <translation>Para colgarla: una manga hilvanada a mano, que se pueda quitar, cortada de %1 a %2 de ancho y de %3 a %4 de largo.</translation>
    </message>
    <message>
        <source>To hang it: a sleeve on the back, cut %1 to %2 wide and %3 to %4 long.</source>
        <translation>Para colgarla: una manga por detrás, cortada de %1 a %2 de ancho y de %3 a %4 de largo.</translation>
    </message>
    <message>
        <source>Squaring</source>
        <translation>Escuadrar</translation>
    </message>
    <message>
        <source>Binding</source>
        <translation>Ribete</translation>
    </message>
    <message>
        <source>Last look</source>
        <translation>Última mirada</translation>
    </message>
    <message>
        <source>along, and %1 across, raw</source>
        <translation>de largo y %1 de ancho, sin rematar</translation>
    </message>
    <message>
        <source>along, and %1 across, finished</source>
        <translation>de largo y %1 de ancho, acabada</translation>
    </message>
    <message>
        <source>of bias, cut %1 wide</source>
        <translation>de bies, cortado a %1 de ancho</translation>
    </message>
    <message>
        <source>The readings disagree by %1.</source>
        <translation>Las lecturas difieren en %1.</translation>
    </message>
    <message>
        <source>Square within %1.</source>
        <translation>A escuadra: se desvía %1 o menos.</translation>
    </message>
    <message>
        <source>Top and bottom differ by %1.</source>
        <translation>Arriba y abajo difieren en %1.</translation>
    </message>
    <message>
        <source>Left and right differ by %1.</source>
        <translation>Izquierda y derecha difieren en %1.</translation>
    </message>
    <message>
        <source>The diagonals differ by %1.</source>
        <translation>Las diagonales difieren en %1.</translation>
    </message>
    <message>
        <source>Lay it flat and measure again. Do not cut.</source>
        <translation>Ponerla plana y medir de nuevo. No cortar.</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4</source>
        <translation>%1, %2, %3, %4</translation>
    </message>
    <message>
        <source>Trim it plainly, in this order: %1.</source>
        <translation>Recortarla sin más, en este orden: %1.</translation>
    </message>
    <message>
        <source>Round the edge it is %1 less than planned.</source>
        <translation>Alrededor del borde hay %1 menos de lo planeado.</translation>
    </message>
    <message>
        <source>Round the edge it is %1 more than planned; the binding strips reach.</source>
        <translation>Alrededor del borde hay %1 más de lo planeado; las tiras de ribete alcanzan.</translation>
    </message>
    <message>
        <source>Round the edge it is %1 more than planned: cut the bias that much longer.</source>
        <translation>Alrededor del borde hay %1 más de lo planeado: cortar el bies más largo en esa medida.</translation>
    </message>
    <message>
        <source>Round the edge it is %1 more than planned: cut one binding strip more.</source>
        <translation>Alrededor del borde hay %1 más de lo planeado: cortar una tira de ribete más.</translation>
    </message>
    <message>
        <source>Count the pins and needles that went in, and those that came out.</source>
        <translation>Contar los alfileres y agujas que entraron, y los que salieron.</translation>
    </message>
    <message>
        <source>No pins were used.</source>
        <translation>No se usaron alfileres.</translation>
    </message>
    <message>
        <source>They differ, and you know why.</source>
        <translation>No coinciden, y se sabe por qué.</translation>
    </message>
    <message>
        <source>As many out as in.</source>
        <translation>Tantos sacados como puestos.</translation>
    </message>
    <message numerus="yes">
        <source>%n still in it: feel along every seam, both faces.</source>
        <translation>
            <numerusform>Queda %n dentro: palpar cada costura, por ambas caras.</numerusform>
            <numerusform>Quedan %n dentro: palpar cada costura, por ambas caras.</numerusform>
        </translation>
    </message>
    <message>
        <source>More came out than went in: count again.</source>
        <translation>Salieron más de los que entraron: contar de nuevo.</translation>
    </message>
    <message>
        <source>Rounded corners, {%1}</source>
        <translation>Esquinas redondas, {%1}</translation>
    </message>
    <message>
        <source>A circle</source>
        <translation>Un círculo</translation>
    </message>
    <message>
        <source>Round ends</source>
        <translation>Extremos redondos</translation>
    </message>
    <message>
        <source>Scallops, {%1} deep</source>
        <translation>Ondas, {%1} de profundidad</translation>
    </message>
    <message>
        <source>Square corners</source>
        <translation>Esquinas rectas</translation>
    </message>
    <message>
        <source>A scallop’s depth is more than nothing and no more than %1.</source>
        <translation>La profundidad de una onda es mayor que cero y como mucho %1.</translation>
    </message>
    <message>
        <source>%1 scallops along and %2 across, {%3} deep: chords of {%4} and {%5}, drawn with a radius of {%6} and {%7}.</source>
        <extracomment>chord: the straight distance across one scallop</extracomment>
        <translation>%1 ondas a lo largo y %2 a lo ancho, de {%3} de profundidad: cuerdas de {%4} y {%5}, trazadas con un radio de {%6} y {%7}.</translation>
    </message>
    <message>
        <source>A circle of %1 across.</source>
        <translation>Un círculo de %1 de diámetro.</translation>
    </message>
    <message>
        <source>Ends rounded with a radius of %1.</source>
        <translation>Extremos redondeados con un radio de %1.</translation>
    </message>
    <message>
        <source>Corners of %1.</source>
        <translation>Esquinas de %1.</translation>
    </message>
    <message>
        <source>The edge is %1 round: cut %2 of bias from a square of %3.</source>
        <translation>El borde mide %1 todo alrededor: cortar %2 de bies de un cuadrado de %3.</translation>
    </message>
    <message>
        <source>Between two scallops the edge cuts %1 into the stippling: stay-stitch beside the line before cutting. With %2 of cloth outside the outline it would clear it.</source>
        <translation>Entre dos ondas el borde entra %1 en el meandro: hacer una costura de refuerzo junto a la línea antes de cortar. Con %2 de tela fuera del contorno no lo tocaría.</translation>
    </message>
    <message>
        <source>At each inside point stay-stitch, clip to the stitches, and pivot.</source>
        <translation>En cada punto interior hacer una costura de refuerzo, dar un piquete hasta ella y girar allí.</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>As a pillow: for a form of %1 × %2, with an envelope back of two pieces %3.</source>
        <extracomment>envelope back: two pieces that overlap, between which the pillow is put in</extracomment>
        <translation>Como cojín: para un relleno de %1 × %2, con trasera cruzada de dos trozos de %3.</translation>
    </message>
    <message>
        <source>As a pillow: for a form of %1 × %2 inside the scallops. Cut two back pieces %3, lay them over each other, and cut them along the front’s scallops.</source>
        <translation>Como cojín: para un relleno de %1 × %2 por dentro de las ondas. Cortar dos trozos traseros de %3, montarlos uno sobre otro y cortarlos por las ondas de la delantera.</translation>
    </message>
    <message>
        <source>As a pillow: for a round form %1 across. Cut two back pieces %2, lay them over each other, and cut them round with the front as the pattern.</source>
        <translation>Como cojín: para un relleno redondo de %1 de diámetro. Cortar dos trozos traseros de %2, montarlos uno sobre otro y cortarlos en redondo con la delantera como patrón.</translation>
    </message>
    <message>
        <source>As a pillow: for a form of %1 × %2 with the same round corners. Cut two back pieces %3, lay them over each other, and cut their corners with the front as the pattern.</source>
        <translation>Como cojín: para un relleno de %1 × %2 con las mismas esquinas redondas. Cortar dos trozos traseros de %3, montarlos uno sobre otro y cortar sus esquinas con la delantera como patrón.</translation>
    </message>
    <message>
        <source>Frame, left and right</source>
        <translation>Marco, izquierda y derecha</translation>
    </message>
    <message>
        <source>Frame, top and bottom</source>
        <translation>Marco, arriba y abajo</translation>
    </message>
    <message>
        <source>along, and %1 across, with its frame</source>
        <translation>de largo y %1 de ancho, con su marco</translation>
    </message>
    <message>
        <source>long, cut %1 wide</source>
        <translation>de largo, cortada de %1 de ancho</translation>
    </message>
    <message>
        <source>A piece is longer than the cloth is wide: sew strips end to end with straight seams, pressed open.</source>
        <translation>Un trozo es más largo que el ancho de la tela: unir tiras por los extremos con costuras rectas, planchadas abiertas.</translation>
    </message>
    <message>
        <source>The binding is cut: these corners can no longer be changed.</source>
        <translation>El ribete está cortado: estas esquinas ya no se cambian.</translation>
    </message>
    <message>
        <source>along, as the rows measure, and %1 across, raw</source>
        <extracomment>after a large length: the piece&apos;s side is as long as its measured rows</extracomment>
        <translation>de largo, como miden las filas, y %1 de ancho, sin rematar</translation>
    </message>
    <message>
        <source>Lay the beginning %1 before the place it closes at.</source>
        <translation>Colocar el comienzo %1 antes del punto de cierre.</translation>
    </message>
    <message>
        <source>Leave %1 to both sides of that place unsewn until the ends are joined.</source>
        <translation>A ambos lados de ese punto, dejar %1 sin coser hasta unir los extremos.</translation>
    </message>
    <message>
        <source>Begin on the crown of a scallop at the middle of the bottom.</source>
        <translation>Empezar en lo alto de una onda, en el centro de abajo.</translation>
    </message>
    <message>
        <source>Sew with the edge, easing the bias over each crown.</source>
        <translation>Coser siguiendo el borde, embebiendo el bies en lo alto de cada onda.</translation>
    </message>
    <message>
        <source>At an inside point leave the needle down, straighten the edge and sew on.</source>
        <translation>En un punto interior dejar la aguja clavada, enderezar el borde y seguir.</translation>
    </message>
    <message>
        <source>Sew with the edge, not stretching it: ease the bias round each corner.</source>
        <translation>Coser siguiendo el borde, sin estirarlo: embeber el bies en cada esquina.</translation>
    </message>
    <message>
        <source>At a corner stop %1 from the edge.</source>
        <translation>En una esquina parar a %1 del borde.</translation>
    </message>
    <message>
        <source>Fold the strip up at 45°.</source>
        <translation>Doblar la tira hacia arriba a 45°.</translation>
    </message>
    <message>
        <source>Then fold it down, level with the edge.</source>
        <translation>Luego doblarla hacia abajo, a ras del borde.</translation>
    </message>
    <message>
        <source>Close it with an overlap of %1, ends crossed at a right angle.</source>
        <translation>Cerrarlo con un solape de %1, extremos cruzados en ángulo recto.</translation>
    </message>
    <message>
        <source>Close with an overlap of exactly %1, ends crossed at a right angle.</source>
        <translation>Cerrar con un solape de exactamente %1, extremos cruzados en ángulo recto.</translation>
    </message>
    <message>
        <source>Left and right first: two of %1 each face.</source>
        <translation>Primero a izquierda y derecha: dos de %1 por cara.</translation>
    </message>
    <message>
        <source>Left and right first: two of %1.</source>
        <translation>Primero a izquierda y derecha: dos de %1.</translation>
    </message>
    <message>
        <source>Then top and bottom: two of %1.</source>
        <translation>Luego arriba y abajo: dos de %1.</translation>
    </message>
    <message>
        <source>Cut them %1 longer and trim them flush.</source>
        <translation>Cortarlas %1 más largas y enrasarlas.</translation>
    </message>
    <message>
        <source>Front strip right sides together with the front, back strip with the back.</source>
        <translation>Tira delantera derecho con derecho sobre la delantera, tira trasera sobre la trasera.</translation>
    </message>
    <message>
        <source>All three raw edges level: one seam of %1.</source>
        <translation>Los tres bordes cortados a ras: una costura de %1.</translation>
    </message>
    <message>
        <source>Strip right sides together with the front.</source>
        <translation>Tira derecho con derecho sobre la delantera.</translation>
    </message>
    <message>
        <source>Raw edges level: a seam of %1.</source>
        <translation>Bordes cortados a ras: una costura de %1.</translation>
    </message>
    <message>
        <source>Press both outward.</source>
        <translation>Planchar las dos hacia fuera.</translation>
    </message>
    <message>
        <source>Press it outward.</source>
        <translation>Planchar hacia fuera.</translation>
    </message>
    <message>
        <source>Lay batting %1 wide in beyond the block’s allowance, edge to edge.</source>
        <extracomment>the block&apos;s own allowance lies under the frame; beyond it the frame would be hollow</extracomment>
        <translation>Poner guata de %1 de ancho más allá del margen del bloque, canto con canto.</translation>
    </message>
    <message>
        <source>Baste the raw edges together: so the frame is filled, and the binding too.</source>
        <translation>Hilvanar juntos los bordes cortados: así quedan llenos el marco y también el ribete.</translation>
    </message>
    <message>
        <source>Marks out with cold water before any heat.</source>
        <translation>Quitar las marcas con agua fría antes de dar calor.</translation>
    </message>
    <message>
        <source>Wash cool and gently, dry it flat or cool, press from the back.</source>
        <translation>Lavar en frío y con suavidad, secar en plano o a baja temperatura, planchar por la trasera.</translation>
    </message>
    <message>
        <source>Before you sell it, look up the rules on labels and fillings where you live.</source>
        <translation>Antes de vender, mirar qué normas rigen en el lugar para etiquetas y rellenos.</translation>
    </message>
    <message>
        <source>The pillow goes in between the two hems.</source>
        <extracomment>below the back of a pillow, of whose opening an arrow tells</extracomment>
        <translation>El cojín se mete entre los dos dobladillos.</translation>
    </message>
    <message>
        <source>%1 of 6 not yet read</source>
        <extracomment>of the six readings of the whole piece</extracomment>
        <translation>%1 de 6 aún sin medir</translation>
    </message>
    <message>
        <source>Square within %1, if the rest is as planned.</source>
        <extracomment>of a piece of whose six readings some are only the planned ones</extracomment>
        <translation>A escuadra: se desvía %1 o menos, si el resto es como se planeó.</translation>
    </message>
    <message>
        <source>Measure the rest before you cut.</source>
        <translation>Medir el resto antes de cortar.</translation>
    </message>
    <message>
        <source>Top and bottom differ by %1, if the rest is as planned.</source>
        <translation>Arriba y abajo difieren en %1, si el resto es como se planeó.</translation>
    </message>
    <message>
        <source>Left and right differ by %1, if the rest is as planned.</source>
        <translation>Izquierda y derecha difieren en %1, si el resto es como se planeó.</translation>
    </message>
    <message>
        <source>The diagonals differ by %1, if the rest is as planned.</source>
        <translation>Las diagonales difieren en %1, si el resto es como se planeó.</translation>
    </message>
    <message>
        <source>Or as %1 on the bias, from %2 across the cloth.</source>
        <translation>O en %1 al bies, de %2 a lo ancho de la tela.</translation>
    </message>
    <message>
        <source>1 strip</source>
        <translation>1 tira</translation>
    </message>
    <message>
        <source>%1 strips</source>
        <translation>%1 tiras</translation>
    </message>
    <message>
        <source>in %1, cut %2 wide</source>
        <translation>en %1, corte de %2 de ancho</translation>
    </message>
    <message>
        <source>It cuts %1 into the stippling: stay-stitch first.</source>
        <extracomment>the edge runs inside the stitched outline, where blocks are stippled</extracomment>
        <translation>Entra %1 en el meandro: primero una costura de refuerzo.</translation>
    </message>
    <message>
        <source>Inside points: stay-stitch, clip, pivot.</source>
        <extracomment>the places between two scallops; pivot: turn the work about the needle</extracomment>
        <translation>Puntos interiores: costura de refuerzo, piquete, girar.</translation>
    </message>
    <message>
        <source>The edge is %1 round.</source>
        <translation>El borde mide %1 de contorno.</translation>
    </message>
    <message>
        <source>Cut %1 of bias from a square of %2.</source>
        <translation>Cortar %1 de bies de un cuadrado de %2.</translation>
    </message>
    <message>
        <source>Beside a diagonal of %1 the other would be %2.</source>
        <extracomment>of a piece&apos;s six measures; %1 and %2 are lengths: the sides as they were read allow no other</extracomment>
        <translation>Junto a una diagonal de %1, la otra sería de %2.</translation>
    </message>
    <message>
        <source>Ease it with steam and measure again, or square it smaller, to %1 × %2, in this order: %3.</source>
        <extracomment>%1 × %2 is the largest true piece that can be cut, %3 the order of its sides: &quot;bottom, left, top, right&quot;</extracomment>
        <translation>Ajustarla con vapor y medir de nuevo, o escuadrarla más pequeña, a %1 × %2, en este orden: %3.</translation>
    </message>
    <message>
        <source>Strip %1: first cut off %2.</source>
        <extracomment>of the binding&apos;s strips; %2 is a length, in one line</extracomment>
        <translation>Tira %1: acortar primero %2.</translation>
    </message>
</context>
<context>
    <name>matside::FieldsModel</name>
    <message>
        <source>%1 by %2</source>
        <extracomment>a ruler&apos;s length and width</extracomment>
        <translation>%1 por %2</translation>
    </message>
</context>
<context>
    <name>matside::FitModel</name>
    <message>
        <source>This cannot be changed here.</source>
        <translation>Esto no se puede cambiar aquí.</translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation>No se pudo guardar.</translation>
    </message>
    <message>
        <source>blocks stitched %1</source>
        <translation>bloques bordados %1</translation>
    </message>
    <message>
        <source>sashings cut %1</source>
        <extracomment>sashing: the strip between two blocks</extracomment>
        <translation>tiras de unión cortadas %1</translation>
    </message>
    <message>
        <source>joins sewn %1</source>
        <translation>uniones cosidas %1</translation>
    </message>
    <message>
        <source>binding strips cut %1</source>
        <translation>tiras de ribete cortadas %1</translation>
    </message>
    <message>
        <source>Made already: %1.</source>
        <extracomment>%1: a list of what is made, each with its count</extracomment>
        <translation>Ya hecho: %1.</translation>
    </message>
    <message>
        <source>layers of hoop strips cut %1</source>
        <extracomment>each layer of a hoop strip is cut for itself</extracomment>
        <translation>capas de tiras de bordado cortadas %1</translation>
    </message>
</context>
<context>
    <name>matside::Gallery</name>
    <message>
        <source>to do</source>
        <translation>por hacer</translation>
    </message>
    <message>
        <source>stitched</source>
        <translation>bordado</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>recortado</translation>
    </message>
    <message>
        <source>joined</source>
        <translation>unido</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation>estropeado</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdido</translation>
    </message>
    <message>
        <source>stitched %1</source>
        <extracomment>the size within a block&apos;s outer stitches, not that it is cut to</extracomment>
        <translation>bordado %1</translation>
    </message>
</context>
<context>
    <name>matside::HoopModel</name>
    <message>
        <source>Strip %1 of %2</source>
        <translation>Tira %1 de %2</translation>
    </message>
    <message>
        <source>%1, flat cloth</source>
        <translation>%1, tela plana</translation>
    </message>
    <message>
        <source>%1, as drawn in by the stitching</source>
        <extracomment>the strip is shorter now: stitching has drawn the cloth in</extracomment>
        <translation>%1, ya encogida por el bordado</translation>
    </message>
    <message>
        <source>Centre %1</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;: the middle of the block, to be ticked on the strip</extracomment>
        <translation>Centro %1</translation>
    </message>
    <message>
        <source>Centre of %1</source>
        <translation>Centro de %1</translation>
    </message>
    <message>
        <source>%1 starts</source>
        <extracomment>gap: cloth between two outlines on the strip</extracomment>
        <translation>%1 empieza</translation>
    </message>
    <message>
        <source>Gap to %1</source>
        <translation>Hueco hasta %1</translation>
    </message>
    <message>
        <source>%1 started</source>
        <translation>%1 empezó</translation>
    </message>
    <message>
        <source>from the last outline</source>
        <translation>desde el último contorno</translation>
    </message>
    <message>
        <source>from the zero end</source>
        <extracomment>zero end: the end of the strip everything is measured from</extracomment>
        <translation>desde el extremo cero</translation>
    </message>
    <message>
        <source>Next centre %1</source>
        <translation>Centro siguiente %1</translation>
    </message>
    <message>
        <source>The next outline starts at %1; the plan expected %2.</source>
        <translation>El contorno siguiente empieza en %1; el plan esperaba %2.</translation>
    </message>
    <message>
        <source>The plan expects the next outline to start at %1 on the drawn-in cloth.</source>
        <translation>El plan espera que el contorno siguiente empiece en %1 sobre la tela encogida.</translation>
    </message>
    <message>
        <source>Block %1 no longer fits: %2 short.</source>
        <translation>El bloque %1 ya no cabe: faltan %2.</translation>
    </message>
    <message>
        <source>Sew a waste tail to the far end,</source>
        <extracomment>tail: a waste strip sewn to the end so that the frame has cloth to hold</extracomment>
        <translation>Coser una cola de sobrante al otro extremo,</translation>
    </message>
    <message>
        <source>take a gap of %1,</source>
        <translation>dejar un hueco de %1,</translation>
    </message>
    <message>
        <source>or carry it to the next strip.</source>
        <translation>o llevarlo a la tira siguiente.</translation>
    </message>
    <message>
        <source>It is carried to the next strip.</source>
        <translation>Pasa a la tira siguiente.</translation>
    </message>
    <message>
        <source>The last outline ends between %1 and %2.</source>
        <translation>El último contorno acaba entre %1 y %2.</translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation>No se pudo guardar.</translation>
    </message>
    <message>
        <source>stippling</source>
        <extracomment>stippling: quilting in a wandering line that fills the ground</extracomment>
        <translation>meandro</translation>
    </message>
    <message>
        <source>echo</source>
        <extracomment>echo: a line stitched at a distance round the patches</extracomment>
        <translation>línea de eco</translation>
    </message>
    <message>
        <source>%1, of %2</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>the outer line, last</source>
        <translation>la línea exterior, al final</translation>
    </message>
    <message>
        <source>Bobbin: not enough on one for a block</source>
        <translation>Canilla: una no alcanza para un bloque</translation>
    </message>
    <message>
        <source>Bobbin: change it before this block</source>
        <translation>Canilla: cambiarla antes de este bloque</translation>
    </message>
    <message>
        <source>Bobbin: for 1 more block</source>
        <translation>Canilla: para 1 bloque más</translation>
    </message>
    <message>
        <source>Bobbin: for %1 more blocks</source>
        <translation>Canilla: para %1 bloques más</translation>
    </message>
    <message>
        <source>About %1 minutes a block, by your own last blocks</source>
        <translation>Unos %1 minutos por bloque, según los últimos bloques propios</translation>
    </message>
    <message>
        <source>About %1 minutes a block</source>
        <translation>Unos %1 minutos por bloque</translation>
    </message>
    <message>
        <source>Send %1 × %2 mm to the machine (%3 % × %4 %).</source>
        <extracomment>the size given to the machine, larger than the block because stitching draws it in</extracomment>
        <translation>Enviar %1 × %2&#xa0;mm a la máquina (%3&#xa0;% × %4&#xa0;%).</translation>
    </message>
    <message>
        <source>A gap of %1 would yield short sashings: %2 pairs.</source>
        <extracomment>gap: cloth between two outlines on the strip; shorts: short sashings between two blocks</extracomment>
        <translation>Un hueco de %1 daría tiras de unión cortas: %2 pares.</translation>
    </message>
    <message>
        <source>It costs nothing: the strip has the room.</source>
        <translation>No cuesta nada: la tira tiene sitio.</translation>
    </message>
    <message>
        <source>It costs %1 of %2 blocks on each strip.</source>
        <translation>Cuesta %1 de %2 bloques en cada tira.</translation>
    </message>
    <message>
        <source>With waste tails at both ends it would cost none.</source>
        <translation>Con colas de sobrante en ambos extremos no costaría ninguno.</translation>
    </message>
    <message>
        <source>Your blocks draw up by %1 % along and %2 % across. Take that for the blocks to come?</source>
        <extracomment>draw-up: how much the stitching shrinks the block</extracomment>
        <translation>Los bloques merman un %1&#xa0;% a lo largo y un %2&#xa0;% a lo ancho. ¿Tomarlo para los próximos bloques?</translation>
    </message>
    <message>
        <source>Trial strip</source>
        <extracomment>the strip of the trial, which is none of the piece&apos;s</extracomment>
        <translation>Tira de prueba</translation>
    </message>
    <message>
        <source>Show block %1</source>
        <extracomment>on a button: the picture goes to that block; %1 is a block&apos;s name, &quot;B2&quot;</extracomment>
        <translation>Mostrar el bloque %1</translation>
    </message>
    <message>
        <source>%1. About %2 stitches and %3 m of thread; on the bobbin %4 m for it.</source>
        <extracomment>stitches and metres of thread one block takes</extracomment>
        <translation>%1. Unas %2 puntadas y %3&#xa0;m de hilo; para ello, %4&#xa0;m en la canilla.</translation>
    </message>
    <message>
        <source>Send %1 × %2 mm</source>
        <extracomment>the size given to the embroidery machine for one block, beside the drawing of the strip</extracomment>
        <translation>Enviar %1 × %2&#xa0;mm</translation>
    </message>
    <message>
        <source>Centre %1, not at its mark</source>
        <extracomment>the block&apos;s centre; the tick made for it on the strip before lies elsewhere</extracomment>
        <translation>Centro %1, no en su marca</translation>
    </message>
    <message>
        <source>The centres marked before do not hold any more: %1. Go by the gap from the last outline.</source>
        <extracomment>%1 lists blocks, &quot;A3, A4&quot;: the ticks made for their centres on the strip before</extracomment>
        <translation>Los centros marcados antes ya no valen: %1. Vale el hueco desde el último contorno.</translation>
    </message>
    <message>
        <source>%1 of %2 stitched</source>
        <extracomment>of the blocks of one strip</extracomment>
        <translation>%1 de %2 bordados</translation>
    </message>
    <message>
        <source>Strip %1</source>
        <translation>Tira %1</translation>
    </message>
    <message>
        <source>%1 blocks</source>
        <extracomment>on one strip</extracomment>
        <translation>%1 bloques</translation>
    </message>
    <message>
        <source>%1 pairs of short sashings</source>
        <extracomment>front and back piece of a short sashing, out of the gaps of all strips</extracomment>
        <translation>%1 pares de tiras de unión cortas</translation>
    </message>
    <message>
        <source>with waste tails</source>
        <extracomment>tail: a waste strip sewn to the end so that the frame has cloth to hold</extracomment>
        <translation>con colas de sobrante</translation>
    </message>
    <message>
        <source>Plain gaps</source>
        <extracomment>of the gaps between the blocks of a hoop strip</extracomment>
        <translation>Huecos simples</translation>
    </message>
    <message>
        <source>One gap yields sashing</source>
        <translation>Un hueco da tira de unión</translation>
    </message>
    <message>
        <source>%1 gaps yield sashing</source>
        <translation>%1 huecos dan tiras de unión</translation>
    </message>
    <message>
        <source>All gaps yield sashing</source>
        <translation>Todos los huecos dan tiras de unión</translation>
    </message>
    <message>
        <source>wide, each layer</source>
        <extracomment>how wide back, batting and front of a hoop strip are cut, beside the figure</extracomment>
        <translation>de ancho, cada capa</translation>
    </message>
    <message>
        <source>Draw-up: %1 % × %2 %</source>
        <extracomment>draw-up: how much the stitching shrinks the block, along and across</extracomment>
        <translation>Merma: %1 % × %2 %</translation>
    </message>
</context>
<context>
    <name>matside::HoopShelf</name>
    <message>
        <source>The hoops could not be saved.</source>
        <translation>No se pudieron guardar los bastidores.</translation>
    </message>
    <message>
        <source>hoop %1</source>
        <translation>bastidor %1</translation>
    </message>
    <message>
        <source>Measure its field and its outside first.</source>
        <translation>Medir primero su campo de bordado y su exterior.</translation>
    </message>
    <message>
        <source>The block is %1 too large for its field.</source>
        <translation>El bloque es %1 más grande que su campo de bordado.</translation>
    </message>
    <message>
        <source>The block fits, with %1 to spare.</source>
        <translation>El bloque cabe, y sobran %1.</translation>
    </message>
    <message>
        <source>No block goes on a strip with it.</source>
        <translation>Con él no cabe ningún bloque en una tira.</translation>
    </message>
    <message>
        <source>Strips %1 wide, %2 blocks on each; %3 strips take %4 of each layer.</source>
        <extracomment>hoop strips: width, how many blocks on each, how much cloth of each layer</extracomment>
        <translation>Tiras de %1 de ancho, %2 bloques en cada una; %3 tiras piden %4 de cada capa.</translation>
    </message>
    <message>
        <source>new hoop</source>
        <translation>bastidor nuevo</translation>
    </message>
    <message>
        <source>Nothing can be changed now.</source>
        <translation>Ahora no se puede cambiar nada.</translation>
    </message>
    <message>
        <source>A hoop measures between nothing and two metres.</source>
        <translation>Un bastidor mide entre cero y dos metros.</translation>
    </message>
    <message>
        <source>%1 strips of %2 blocks</source>
        <extracomment>strips of cloth, and how many blocks go on each</extracomment>
        <translation>%1 tiras de %2 bloques</translation>
    </message>
</context>
<context>
    <name>matside::JoinModel</name>
    <message>
        <source>Swap %1 and %2: %1 is %3 off size, and such blocks stand best together in an end column.</source>
        <translation>Intercambiar %1 y %2: %1 se desvía %3, y esos bloques están mejor juntos en una columna del extremo.</translation>
    </message>
    <message>
        <source>Swap %1 and %2: %1 is %3 off size, which shows least at an end.</source>
        <translation>Intercambiar %1 y %2: %1 se desvía %3; en un extremo es donde menos se nota.</translation>
    </message>
    <message>
        <source>Swap %1 and %2: %1 is nearest to its size, and the middle is looked at most.</source>
        <translation>Intercambiar %1 y %2: %1 es el más cercano a su medida, y el centro es lo que más se mira.</translation>
    </message>
    <message>
        <source>The blocks lie well as they are.</source>
        <translation>Los bloques están bien como están.</translation>
    </message>
    <message>
        <source>There is nothing to swap here.</source>
        <translation>Aquí no hay nada que intercambiar.</translation>
    </message>
    <message>
        <source>What is sewn already stays where it is.</source>
        <translation>Lo que ya está cosido se queda donde está.</translation>
    </message>
    <message>
        <source>That block is not made yet.</source>
        <translation>Ese bloque aún no está hecho.</translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation>No se pudo guardar.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>two blocks&apos; names, &quot;B2&quot;: the first is sewn to the second with a sashing between</extracomment>
        <translation>%1 con %2</translation>
    </message>
    <message>
        <source>Row %1</source>
        <translation>Fila %1</translation>
    </message>
    <message>
        <source>Row %1 to %2</source>
        <translation>Fila %1 con %2</translation>
    </message>
    <message>
        <source>its raw length, as planned</source>
        <translation>su largo sin rematar, según el plan</translation>
    </message>
    <message>
        <source>fold under</source>
        <translation>remetido</translation>
    </message>
    <message>
        <source>visible sashing</source>
        <extracomment>fold under: how much of the back strip is turned under before it is sewn down</extracomment>
        <translation>tira de unión visible</translation>
    </message>
    <message>
        <source>The first row sets the marks and the long sashings: %1 against %2 planned.</source>
        <translation>La primera fila fija las marcas y las tiras de unión largas: %1 frente a %2 planeados.</translation>
    </message>
    <message>
        <source>This row lies within %1 of the others: leave it.</source>
        <translation>Esta fila está a menos de %1 de las otras: dejarla.</translation>
    </message>
    <message>
        <source>This row is %1 off the mean. Ease it: up to %2 goes in over %3 blocks.</source>
        <translation>Esta fila se desvía %1 de la media. Embeberla: entra hasta %2 en %3 bloques.</translation>
    </message>
    <message>
        <source>There is nothing to measure here.</source>
        <translation>Aquí no hay nada que medir.</translation>
    </message>
    <message>
        <source>A row of %1 blocks measures about %2.</source>
        <translation>Una fila de %1 bloques mide cerca de %2.</translation>
    </message>
    <message>
        <source>Test join: the allowances overlap by %1.</source>
        <extracomment>the two allowances inside a sashing lie over each other</extracomment>
        <translation>Unión de prueba: los márgenes se solapan %1.</translation>
    </message>
    <message>
        <source>Test join: a gap of %1.</source>
        <translation>Unión de prueba: una separación de %1.</translation>
    </message>
    <message>
        <source>Test join: the allowances meet.</source>
        <translation>Unión de prueba: los márgenes se tocan.</translation>
    </message>
    <message>
        <source>Front strips are cut %1 wide, sewn with %2 as before.</source>
        <translation>Las tiras delanteras se cortan a %1 de ancho, cosidas con %2 como antes.</translation>
    </message>
    <message>
        <source>The sashing will be seen %1 wide.</source>
        <translation>De la tira de unión se verán %1 de ancho.</translation>
    </message>
    <message>
        <source>The test join itself needs no unpicking: pare %1 off each allowance, which leaves %2.</source>
        <translation>La unión de prueba no hace falta descoserla: rebajar %1 de cada margen, con lo que quedan %2.</translation>
    </message>
    <message>
        <source>Do not pare the allowances of the test join: too little would hold it.</source>
        <translation>No rebajar los márgenes de la unión de prueba: quedaría demasiado poco para sostenerla.</translation>
    </message>
    <message>
        <source>Cut strips %1 instead</source>
        <translation>Cortar tiras de %1 en su lugar</translation>
    </message>
    <message>
        <source>There is no other way now.</source>
        <translation>Ahora no hay otra manera.</translation>
    </message>
    <message>
        <source>Press the front strip open, away from the first block; then the back strip over.</source>
        <translation>Planchar la tira delantera abierta, hacia fuera del primer bloque; luego la tira trasera por encima.</translation>
    </message>
    <message>
        <source>Press the strip open, away from the first block.</source>
        <translation>Planchar la tira abierta, hacia fuera del primer bloque.</translation>
    </message>
    <message>
        <source>Each crossing holds 8 cloths and the batting, against 4: pare the batting from the last %1 of the short sashings, clip their folded part to a slant, press hard.</source>
        <translation>Cada cruce tiene 8 telas y la guata, frente a 4: quitar la guata de los últimos %1 de las tiras de unión cortas, cortar en diagonal su parte doblada, planchar fuerte.</translation>
    </message>
    <message>
        <source>Crossings are thick: press hard and turn the wheel by hand over them.</source>
        <translation>Los cruces son gruesos: planchar fuerte y girar el volante a mano sobre ellos.</translation>
    </message>
    <message>
        <source>catch</source>
        <translation>agarre</translation>
    </message>
    <message>
        <source>Lay in batting strips {%1} wide</source>
        <extracomment>batting strips laid between the two allowances inside a wide sashing</extracomment>
        <translation>Poner tiras de guata de {%1} de ancho</translation>
    </message>
    <message>
        <source>Leave {%1} on the blocks</source>
        <extracomment>the cloth left outside a block&apos;s stitched line when it is trimmed</extracomment>
        <translation>Dejar {%1} en los bloques</translation>
    </message>
    <message>
        <source>Pare the allowances to {%1}</source>
        <translation>Rebajar los márgenes a {%1}</translation>
    </message>
    <message>
        <source>Turn {%1} under</source>
        <translation>Remeter {%1}</translation>
    </message>
    <message>
        <source>Back strip doubled</source>
        <translation>Tira trasera doble</translation>
    </message>
    <message>
        <source>The gap between the allowances is filled; trim to {%1}.</source>
        <translation>La separación entre los márgenes se rellena; recortar a {%1}.</translation>
    </message>
    <message>
        <source>Cut %1 of them {%2} long.</source>
        <translation>Cortar %1 de ellas de {%2} de largo.</translation>
    </message>
    <message>
        <source>Nothing is laid in. Trim to {%1}; the strip’s edge lies {%2} inside the block’s.</source>
        <extracomment>the raw edge of the sashing strip lies inside the block&apos;s raw edge</extracomment>
        <translation>No se pone nada dentro. Recortar a {%1}; el borde de la tira queda {%2} por dentro del borde del bloque.</translation>
    </message>
    <message>
        <source>Then they lie flat under the narrow strip. Trim to {%1}; once sewn, pare the strip’s edge level with the block’s.</source>
        <translation>Así quedan planos bajo la tira estrecha. Recortar a {%1}; una vez cosida, rebajar el borde de la tira a ras del bloque.</translation>
    </message>
    <message>
        <source>Back strips are cut {%1} wide; the fold catches {%2}.</source>
        <translation>Las tiras traseras se cortan de {%1} de ancho; el doblez agarra {%2}.</translation>
    </message>
    <message>
        <source>Press the back strip double before it is sewn on. Then press the front strip open, away from the first block, and the back strip over.</source>
        <translation>Planchar doble la tira trasera antes de coserla. Luego abrir la tira delantera con la plancha, hacia fuera del primer bloque, y volver la trasera.</translation>
    </message>
    <message>
        <source>Cut the longest pieces first.</source>
        <translation>Cortar primero los trozos más largos.</translation>
    </message>
    <message>
        <source>The batting of the gaps serves too.</source>
        <extracomment>gap: cloth between two outlines on the strip, which comes apart into sashings and batting</extracomment>
        <translation>La guata de los huecos también sirve.</translation>
    </message>
    <message>
        <source>After the second seam, lay batting %1 wide between the two allowances, edge to edge, and cut it off at the sashing’s ends; then bring the back strip over it.</source>
        <extracomment>batting between the two blocks&apos; allowances under a wide sashing</extracomment>
        <translation>Tras la segunda costura, poner guata de %1 de ancho entre los dos márgenes, canto con canto, y cortarla en los extremos de la tira de unión; después llevar la tira trasera por encima.</translation>
    </message>
    <message>
        <source>After the second seam, lay batting %1 wide between the two allowances, edge to edge, cut it off at the sashing’s ends, and tack it to them.</source>
        <translation>Tras la segunda costura, poner guata de %1 de ancho entre los dos márgenes, canto con canto, cortarla en los extremos de la tira de unión e hilvanarla a los márgenes.</translation>
    </message>
    <message>
        <source>This row is %1 off the mean, more than the %2 that can be eased: resew one of its seams.</source>
        <translation>Esta fila se desvía %1 de la media, más de los %2 que se pueden embeber: rehacer una de sus costuras.</translation>
    </message>
    <message>
        <source>Test join: batting and allowances overlap by %1.</source>
        <translation>Unión de prueba: la guata y los márgenes se solapan %1.</translation>
    </message>
    <message>
        <source>Test join: batting and allowances meet.</source>
        <translation>Unión de prueba: la guata y los márgenes se tocan.</translation>
    </message>
    <message>
        <source>That may stay. A seam of %1 would be just right; the plan goes by it.</source>
        <translation>Puede quedarse así. Una costura de %1 sería exacta; el plan cuenta con ella.</translation>
    </message>
    <message>
        <source>Sew a seam of %1 from here on; the plan goes by it.</source>
        <translation>Desde aquí, una costura de %1; el plan cuenta con ella.</translation>
    </message>
    <message>
        <source>So scant a seam leaves the outline in view, %1 from the seam. To hide it, trim the blocks with the %2 line on the outline, and sew as planned.</source>
        <extracomment>outline: the block&apos;s outer stitched line</extracomment>
        <translation>Una costura tan escasa deja a la vista el contorno, a %1 de la costura. Para taparlo, recortar los bloques con la línea de %2 sobre el contorno, y coser según el plan.</translation>
    </message>
    <message>
        <source>The test join itself needs no unpicking: cut %1 off its batting.</source>
        <translation>La unión de prueba no hace falta descoserla: cortar %1 de su guata.</translation>
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
        <translation>Ahora no se puede cambiar nada.</translation>
    </message>
    <message>
        <source>A whole number up to %1.</source>
        <translation>Un número entero hasta %1.</translation>
    </message>
    <message>
        <source>Say first how many students there are.</source>
        <translation>Indicar primero cuántos alumnos hay.</translation>
    </message>
    <message>
        <source>%1: %2, yours, and %3</source>
        <extracomment>%1 = &quot;15 kits&quot;, %2 = &quot;12 students&quot;, %3 = &quot;2 spare&quot;; the teacher makes one too</extracomment>
        <translation>%1: %2, uno para quien enseña y %3</translation>
    </message>
    <message>
        <source>1 student</source>
        <translation>1 alumno</translation>
    </message>
    <message>
        <source>%1 students</source>
        <translation>%1 alumnos</translation>
    </message>
    <message>
        <source>%1 spare</source>
        <extracomment>so many spare kits</extracomment>
        <translation>%1 de reserva</translation>
    </message>
    <message>
        <source>students</source>
        <translation>alumnos</translation>
    </message>
    <message>
        <source>spare kits</source>
        <translation>kits de reserva</translation>
    </message>
    <message>
        <source>machines in the room</source>
        <translation>máquinas en la sala</translation>
    </message>
    <message>
        <source>who learns</source>
        <translation>quién aprende</translation>
    </message>
    <message>
        <source>All grown up</source>
        <translation>Todos adultos</translation>
    </message>
    <message>
        <source>Some under eighteen</source>
        <translation>Hay menores de dieciocho</translation>
    </message>
    <message>
        <source>%1: %2 together; kit by kit it would be %3</source>
        <translation>%1: %2 en conjunto; kit a kit serían %3</translation>
    </message>
    <message>
        <source>%1: %2, together or kit by kit</source>
        <translation>%1: %2, en conjunto o kit a kit</translation>
    </message>
    <message>
        <source>%1 %2 × %3</source>
        <extracomment>%1 what is cut, %2 × %3 its two sides</extracomment>
        <translation>%1 %2 × %3</translation>
    </message>
    <message>
        <source>%1 in each kit</source>
        <translation>%1 en cada kit</translation>
    </message>
    <message>
        <source>for all kits</source>
        <translation>para todos los kits</translation>
    </message>
    <message>
        <source>%1 on the day</source>
        <translation>%1 el día del corte</translation>
    </message>
    <message>
        <source>%1 hours at the machine in all.</source>
        <translation>%1 horas de máquina en total.</translation>
    </message>
    <message>
        <source>Stitch ahead, or bring more machines.</source>
        <translation>Bordar antes, o llevar más máquinas.</translation>
    </message>
    <message>
        <source>At %1 machines side by side, %2 hours each.</source>
        <translation>En %1 máquinas a la vez, %2 horas cada una.</translation>
    </message>
    <message>
        <source>Some are under eighteen: an adult at each cutting place, at each machine and each iron.</source>
        <translation>Hay menores de dieciocho: un adulto en cada puesto de corte, en cada máquina y en cada plancha.</translation>
    </message>
    <message>
        <source>%1 in each kit, one of them to practise with</source>
        <extracomment>one of these sashing strips is for practising the join</extracomment>
        <translation>%1 en cada kit, una de ellas para practicar</translation>
    </message>
    <message>
        <source>student</source>
        <translation>alumno</translation>
    </message>
    <message>
        <source>spare kit</source>
        <translation>kit de reserva</translation>
    </message>
    <message>
        <source>machine in the room</source>
        <translation>máquina en la sala</translation>
    </message>
</context>
<context>
    <name>matside::Merging</name>
    <message>
        <source>Something made meanwhile hangs on it.</source>
        <translation>Algo hecho entretanto depende de ello.</translation>
    </message>
    <message>
        <source>Both tablets changed it.</source>
        <translation>Las dos tabletas lo cambiaron.</translation>
    </message>
    <message>
        <source>Which of the two is newer is not known.</source>
        <translation>No se sabe cuál de los dos es más nuevo.</translation>
    </message>
</context>
<context>
    <name>matside::OpenFiles</name>
    <message>
        <source>The file cannot be read.</source>
        <translation>El archivo no se puede leer.</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>The file needs a name.</source>
        <translation>El archivo necesita un nombre.</translation>
    </message>
    <message>
        <source>There is a file “%1” already, and it was left as it is. Choose another name.</source>
        <translation>Ya hay un archivo «%1», y se dejó como estaba. Elegir otro nombre.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>La carpeta %1 no se puede crear.</translation>
    </message>
    <message>
        <source>The file could not be written: %1</source>
        <translation>No se pudo escribir el archivo: %1</translation>
    </message>
    <message>
        <source>The file could not be written to %1.</source>
        <translation>No se pudo escribir el archivo en %1.</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Escrito en %1</translation>
    </message>
</context>
<context>
    <name>matside::PhotoSource</name>
    <message>
        <source>The camera does not answer. Nothing was lost: try again, or choose a picture.</source>
        <translation>La cámara no responde. No se perdió nada: probar otra vez o elegir una foto.</translation>
    </message>
    <message>
        <source>The camera could not take the picture. Nothing was lost: try again, or choose one.</source>
        <translation>La cámara no pudo tomar la foto. No se perdió nada: probar otra vez o elegir una.</translation>
    </message>
    <message>
        <source>The camera is gone. Nothing was lost: plug it in again.</source>
        <translation>La cámara ya no está. No se perdió nada: conectarla de nuevo.</translation>
    </message>
</context>
<context>
    <name>matside::Power</name>
    <message>
        <source>The battery is nearly empty: nothing new is begun until the tablet is plugged in.</source>
        <translation>La batería está casi vacía: no se empieza nada nuevo hasta enchufar la tableta.</translation>
    </message>
    <message>
        <source>The battery is nearly empty. All is saved; nothing new is begun until the tablet is plugged in.</source>
        <translation>La batería está casi vacía. Todo está guardado; no se empieza nada nuevo hasta enchufar la tableta.</translation>
    </message>
    <message>
        <source>The battery is low: plug the tablet in soon. All is saved.</source>
        <translation>Queda poca batería: enchufar pronto la tableta. Todo está guardado.</translation>
    </message>
</context>
<context>
    <name>matside::PriceModel</name>
    <message>
        <source>What you reckon with could not be saved.</source>
        <translation>No se pudieron guardar los valores de cálculo.</translation>
    </message>
    <message>
        <source>Nothing can be changed now.</source>
        <translation>Ahora no se puede cambiar nada.</translation>
    </message>
    <message>
        <source>An amount up to a million, with two decimals at most.</source>
        <translation>Un importe de hasta un millón, con dos decimales como mucho.</translation>
    </message>
    <message>
        <source>Between 0 and 300 %.</source>
        <translation>Entre 0 y 300&#xa0;%.</translation>
    </message>
    <message>
        <source>This cannot be changed here.</source>
        <translation>Esto no se puede cambiar aquí.</translation>
    </message>
    <message>
        <source>thread, web, needles</source>
        <translation>hilo, entretela termoadhesiva y agujas</translation>
    </message>
    <message>
        <source>each of %1</source>
        <translation>cada uno de %1</translation>
    </message>
    <message>
        <source>a square inch</source>
        <translation>por pulgada cuadrada</translation>
    </message>
    <message>
        <source>a square decimetre</source>
        <translation>por decímetro cuadrado</translation>
    </message>
    <message>
        <source>Say what an hour of your work is worth, and it is counted.</source>
        <translation>Poner lo que vale una hora de trabajo, y se contará.</translation>
    </message>
    <message>
        <source>Without a price, so not counted: %1. Enter prices at Fit, with the cloths.</source>
        <translation>Sin precio, y por eso sin contar: %1. Anotar los precios en «Planear», con las telas.</translation>
    </message>
    <message>
        <source>Asking %1 pays for all your time.</source>
        <translation>Pedir %1 paga todo el tiempo.</translation>
    </message>
    <message>
        <source>Asking %1 leaves %2 hours you will not be paid for.</source>
        <translation>Pedir %1 deja %2 horas sin pagar.</translation>
    </message>
    <message>
        <source>an hour of your work</source>
        <translation>una hora de trabajo</translation>
    </message>
    <message>
        <source>overhead</source>
        <extracomment>overhead: machine, room, light, tools</extracomment>
        <translation>gastos generales</translation>
    </message>
    <message>
        <source>margin</source>
        <extracomment>margin: what is left for the business</extracomment>
        <translation>ganancia</translation>
    </message>
    <message>
        <source>if you ask</source>
        <translation>si se cobra</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>tela</translation>
    </message>
    <message>
        <source>overhead, %1</source>
        <extracomment>overhead: machine, room, light, tools; %1 a percentage</extracomment>
        <translation>gastos generales, %1</translation>
    </message>
    <message>
        <source>margin, %1</source>
        <extracomment>margin: what is left for the business; %1 a percentage</extracomment>
        <translation>ganancia, %1</translation>
    </message>
    <message>
        <source>The cloth to buy costs %1; what is left over stays yours.</source>
        <extracomment>%1 is an amount of money: more cloth is bought than the piece uses</extracomment>
        <translation>La tela que se compra cuesta %1; lo que sobra queda guardado.</translation>
    </message>
    <message>
        <source>The minutes at the machine are your own.</source>
        <translation>Los minutos de máquina son los propios.</translation>
    </message>
    <message>
        <source>The hours are usual ones; log three blocks for your own.</source>
        <translation>Horas habituales; anotar tres bloques para tener las propias.</translation>
    </message>
    <message>
        <source>at %1</source>
        <extracomment>so much money an hour, after &quot;10 h 51 min&quot;</extracomment>
        <translation>a %1</translation>
    </message>
    <message>
        <source>the price</source>
        <translation>el precio</translation>
    </message>
</context>
<context>
    <name>matside::Session</name>
    <message>
        <source>Matside is open elsewhere: here you can look, but not change.</source>
        <translation>Matside está abierto en otro lugar: aquí se puede mirar, pero no cambiar.</translation>
    </message>
    <message>
        <source>The folder cannot be written: you can look, but not change.</source>
        <translation>No se puede escribir en la carpeta: se puede mirar, pero no cambiar.</translation>
    </message>
    <message>
        <source>The file of projects is damaged. What can be read is shown; nothing is written.</source>
        <translation>El archivo de proyectos está dañado. Se muestra lo que se puede leer; no se escribe nada.</translation>
    </message>
    <message>
        <source>How much of it is left?</source>
        <translation>¿Cuánto queda?</translation>
    </message>
    <message>
        <source>The pedal turns the steps. Put it where your foot cannot take it for the machine’s, or on the table; while a block is stitched it does nothing.</source>
        <translation>El pedal pasa los pasos. Ponerlo donde el pie no lo confunda con el de la máquina, o sobre la mesa; mientras se borda un bloque no hace nada.</translation>
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
        <translation>escalón %1</translation>
    </message>
    <message>
        <source>no colour yet</source>
        <translation>aún sin color</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <extracomment>one patch lies on another, or on the ground</extracomment>
        <translation>%1 sobre %2</translation>
    </message>
    <message>
        <source>No patches are listed: look how far apart the cloths lie on the scale.</source>
        <translation>No hay parches en la lista: mirar cuánto se separan las telas en la escala.</translation>
    </message>
    <message>
        <source>Give the ground and the patches their colours: press a cloth.</source>
        <translation>Dar sus colores al fondo y a los parches: tocar una tela.</translation>
    </message>
    <message>
        <source>Blocks are stitched already: the order stays as it is.</source>
        <translation>Ya hay bloques bordados: el orden se queda como está.</translation>
    </message>
    <message>
        <source>Patches of one name cannot be put in order.</source>
        <translation>Los parches con el mismo nombre no se pueden ordenar.</translation>
    </message>
    <message>
        <source>An order is sought for up to %1 patches; here there are %2.</source>
        <translation>Se busca un orden para %1 parches como máximo; aquí hay %2.</translation>
    </message>
    <message>
        <source>Laid from the lowest up as %1, patches that follow each other would be %2 steps apart or more, not %3.</source>
        <extracomment>%1 lists patches, %2 and %3 are numbers of steps of the ten-step scale</extracomment>
        <translation>Puestos de abajo arriba así: %1, los parches que se siguen quedarían a %2 escalones o más, no a %3.</translation>
    </message>
    <message>
        <source>Look first whether your design lets one lie over the other.</source>
        <translation>Mirar antes si el diseño deja poner uno sobre otro.</translation>
    </message>
</context>
<context>
    <name>matside::Sharing</name>
    <message>
        <source>Piece</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>La carpeta %1 no se puede crear.</translation>
    </message>
    <message>
        <source>Writing the file…</source>
        <translation>Escribiendo el archivo…</translation>
    </message>
    <message>
        <source>Written to %1. The photographs in it do not say where or with what they were taken.</source>
        <translation>Escrito en %1. Sus fotos no dicen dónde ni con qué se tomaron.</translation>
    </message>
    <message>
        <source>Written to %1. Print it at its true size.</source>
        <translation>Escrito en %1. Imprimir a tamaño real.</translation>
    </message>
    <message>
        <source>It is for one maker. Say at the Shop station how many kits a class needs.</source>
        <translation>Es para una persona. Indicar en «Comprar» cuántos kits necesita una clase.</translation>
    </message>
</context>
<context>
    <name>matside::Shelf</name>
    <message>
        <source>Finished</source>
        <translation>Terminado</translation>
    </message>
    <message>
        <source>The demo cannot be read.</source>
        <translation>El ejemplo no se puede leer.</translation>
    </message>
    <message>
        <source>%1, again</source>
        <translation>%1, otra vez</translation>
    </message>
    <message>
        <source>A project needs a name. The old one was kept.</source>
        <translation>Un proyecto necesita un nombre. Se dejó el anterior.</translation>
    </message>
    <message>
        <source>%1, in millimetres</source>
        <translation>%1, en milímetros</translation>
    </message>
    <message>
        <source>%1 of %2 blocks stitched</source>
        <extracomment>how many of a piece&apos;s blocks are stitched</extracomment>
        <translation>%1 de %2 bloques bordados</translation>
    </message>
    <message>
        <source>Go on: %1</source>
        <extracomment>on the shelf, what pressing a piece goes on with: the next step</extracomment>
        <translation>Seguir: %1</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <extracomment>the finished size of a piece: its length and its width</extracomment>
        <translation>%1 por %2</translation>
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
        <translation>%1 y %2 para enderezar</translation>
    </message>
    <message>
        <source>A piece is wider than this cloth: it has to be pieced, and no least length is known.</source>
        <translation>Un trozo es más ancho que esta tela: hay que empalmarlo, y no se conoce un largo mínimo.</translation>
    </message>
    <message>
        <source>Proven least: no way of cutting buys less.</source>
        <translation>Mínimo demostrado: ningún modo de cortar pide menos.</translation>
    </message>
    <message>
        <source>At most %1 % above the least possible.</source>
        <translation>Como mucho %1&#xa0;% por encima del mínimo posible.</translation>
    </message>
    <message>
        <source>%1 Waste %2 %.</source>
        <translation>%1 Desperdicio %2&#xa0;%.</translation>
    </message>
    <message>
        <source>All cloths: %1</source>
        <translation>Todas las telas: %1</translation>
    </message>
    <message>
        <source>Cloths with a price: %1</source>
        <translation>Telas con precio: %1</translation>
    </message>
    <message>
        <source>from what you have: %1</source>
        <extracomment>%1 strips, &quot;3 × 11 3/4 in&quot;</extracomment>
        <translation>de lo que ya hay: %1</translation>
    </message>
    <message>
        <source>Bought or begun: this way of cutting stays.</source>
        <translation>Comprada o empezada: este corte se mantiene.</translation>
    </message>
    <message>
        <source>What you have yields all of it: nothing to buy.</source>
        <translation>Lo que ya hay alcanza para todo: nada que comprar.</translation>
    </message>
    <message>
        <source>1 needle</source>
        <translation>1 aguja</translation>
    </message>
    <message>
        <source>%1 needles</source>
        <translation>%1 agujas</translation>
    </message>
    <message>
        <source>1 block</source>
        <translation>1 bloque</translation>
    </message>
    <message>
        <source>%1 blocks</source>
        <translation>%1 bloques</translation>
    </message>
    <message>
        <source>1 bobbin</source>
        <translation>1 canilla</translation>
    </message>
    <message>
        <source>%1 bobbins</source>
        <translation>%1 canillas</translation>
    </message>
    <message>
        <source>%1 of %2 × %3</source>
        <extracomment>so many packages of batting, and their two sides: &quot;2 of 45 in × 60 in&quot;</extracomment>
        <translation>%1 de %2 × %3</translation>
    </message>
    <message>
        <source>%1 yd</source>
        <extracomment>so much thread, in yards or metres</extracomment>
        <translation>%1 yardas</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>from the packages: %1</source>
        <translation>de los paquetes: %1</translation>
    </message>
    <message>
        <source>%1 left over</source>
        <extracomment>so much of the cloth&apos;s length is not used</extracomment>
        <translation>sobran %1</translation>
    </message>
    <message>
        <source>The packages yield all of it: nothing from the roll.</source>
        <translation>Los paquetes alcanzan para todo: nada del rollo.</translation>
    </message>
    <message>
        <source>So many pieces are laid out row by row: no least length is proved.</source>
        <translation>Con tantos trozos, colocados fila por fila, no se demuestra ningún largo mínimo.</translation>
    </message>
    <message>
        <source>For %1 about %2 of thread, %3 wound, %4.</source>
        <extracomment>%1 &quot;9 blocks&quot;, %2 &quot;380 yd&quot; or &quot;347 m&quot;, %3 &quot;5 bobbins&quot;, %4 &quot;1 needle&quot;</extracomment>
        <translation>Para %1, cerca de %2 de hilo, %3 por llenar, %4.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <extracomment>a cloth&apos;s name and what it is for, where two cloths have the same name: &quot;oat linen (sashing, front)&quot;</extracomment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>along the selvage, %1 long: %2</source>
        <extracomment>strips that run along the selvage instead of across the cloth: %1 their length, %2 &quot;3 × 11 3/4 in&quot;</extracomment>
        <translation>a lo largo del orillo, de %1 de largo: %2</translation>
    </message>
    <message>
        <source>%1 to straighten</source>
        <extracomment>so much of the cloth&apos;s length is cut off to square its end</extracomment>
        <translation>%1 para enderezar</translation>
    </message>
    <message>
        <source>%1; with what is there %2</source>
        <extracomment>%1 the price of the cloth still to buy, %2 of that and of what was bought before</extracomment>
        <translation>%1; con lo que ya hay, %2</translation>
    </message>
    <message>
        <source>%1 bought or begun; it does not yield all: buy this much more.</source>
        <extracomment>%1 a length of cloth; what to buy on top of it stands above</extracomment>
        <translation>%1 comprado o empezado; no alcanza para todo: comprar además esta cantidad.</translation>
    </message>
</context>
<context>
    <name>matside::StepModel</name>
    <message>
        <source>sent, along</source>
        <translation>enviada, a lo largo</translation>
    </message>
    <message>
        <source>sent, across</source>
        <translation>enviada, a lo ancho</translation>
    </message>
    <message>
        <source>measured outline, along</source>
        <translation>contorno medido, a lo largo</translation>
    </message>
    <message>
        <source>measured outline, across</source>
        <translation>contorno medido, a lo ancho</translation>
    </message>
    <message>
        <source>seam, as sewn</source>
        <translation>costura, ya cosida</translation>
    </message>
    <message>
        <source>gap between the allowances</source>
        <translation>separación entre los márgenes</translation>
    </message>
    <message>
        <source>distance between the seams, on the back</source>
        <translation>distancia entre las costuras, por detrás</translation>
    </message>
    <message>
        <source>%1 must be more than nothing.</source>
        <translation>%1 tiene que ser mayor que cero.</translation>
    </message>
    <message>
        <source>There is nothing to measure here.</source>
        <translation>Aquí no hay nada que medir.</translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation>No se pudo guardar.</translation>
    </message>
    <message>
        <source>Nothing can be changed now</source>
        <translation>Ahora no se puede cambiar nada</translation>
    </message>
    <message>
        <source>First mend what Fit says</source>
        <translation>Primero arreglar lo que dice «Planear»</translation>
    </message>
    <message>
        <source>Pins first</source>
        <translation>Primero los alfileres</translation>
    </message>
    <message>
        <source>First trim all its patches</source>
        <translation>Primero recortar todos sus parches</translation>
    </message>
    <message>
        <source>Everything is done.</source>
        <translation>Todo está hecho.</translation>
    </message>
    <message>
        <source>Next, at %1: %2</source>
        <extracomment>%1 is a station&apos;s name, %2 what is to be done there</extracomment>
        <translation>Siguiente, en «%1». %2</translation>
    </message>
    <message>
        <source>You were at: %1</source>
        <translation>Último paso: %1</translation>
    </message>
    <message>
        <source>%1 Did you finish this?</source>
        <translation>%1 ¿Ya está hecho?</translation>
    </message>
    <message>
        <source>That could not be recorded.</source>
        <translation>No se pudo anotar.</translation>
    </message>
    <message>
        <source>That cannot be less than nothing.</source>
        <translation>No puede ser menos que cero.</translation>
    </message>
    <message>
        <source>By these measures: %1 hoop strips of %2 blocks, before %3 of %4. Look at Shop again.</source>
        <translation>Con estas medidas: %1 tiras de bordado de %2 bloques, antes %3 de %4. Mirar otra vez la compra.</translation>
    </message>
    <message>
        <source>Turn the cloth round: its cut edge to your right.</source>
        <translation>Girar la tela media vuelta: el borde cortado a la derecha.</translation>
    </message>
    <message>
        <source>Turn the cloth round: its cut edge to your left.</source>
        <translation>Girar la tela media vuelta: el borde cortado a la izquierda.</translation>
    </message>
    <message>
        <source>First stitch all its blocks: %1 more</source>
        <extracomment>the strip that would be cut apart holds %1 blocks that are not stitched yet</extracomment>
        <translation>Primero bordar todos sus bloques: %1 más</translation>
    </message>
    <message>
        <source>%1, number %2</source>
        <extracomment>one of a row of figures: its name and its number, &quot;centre on the strip, number 2&quot;</extracomment>
        <translation>%1, número %2</translation>
    </message>
    <message>
        <source>First, at %1</source>
        <extracomment>%1 is a station&apos;s name; short: it stands on a button</extracomment>
        <translation>Primero: %1</translation>
    </message>
    <message>
        <source>gap beside the batting, both sides together</source>
        <extracomment>beside the batting laid into the sashing of the test join, both sides added up</extracomment>
        <translation>separación junto a la guata, ambos lados sumados</translation>
    </message>
    <message>
        <source>No cut here: nothing else is left on its strip.</source>
        <extracomment>the strip was cut apart; the block in hand is all that is left of it</extracomment>
        <translation>Aquí no se corta: no queda nada más en su tira.</translation>
    </message>
    <message>
        <source>It is apart</source>
        <extracomment>a block has come off its strip</extracomment>
        <translation>Ya está separado</translation>
    </message>
    <message>
        <source>the larger of %1 and %2</source>
        <extracomment>in the words of a sum: the one of two lengths that is larger</extracomment>
        <translation>lo mayor entre %1 y %2</translation>
    </message>
    <message>
        <source>the largest of %1 and %2</source>
        <extracomment>the same of three or more; %1 is all but the last, with commas</extracomment>
        <translation>lo mayor entre %1 y %2</translation>
    </message>
    <message>
        <source>%1, rounded up</source>
        <extracomment>in the words of a sum; what it is rounded up to stands in the list under it</extracomment>
        <translation>%1, redondeado hacia arriba</translation>
    </message>
    <message>
        <source>%1, rounded up to a whole number</source>
        <translation>%1, redondeado hacia arriba a un entero</translation>
    </message>
    <message>
        <source>%1, rounded down to a whole number</source>
        <translation>%1, redondeado hacia abajo a un entero</translation>
    </message>
    <message>
        <source>the square root of %1</source>
        <translation>la raíz cuadrada de %1</translation>
    </message>
    <message>
        <source>%1 first: %2 steps</source>
        <extracomment>%1 is a station&apos;s name, %2 how many steps there come first; short: it stands on a button</extracomment>
        <translation>Primero: %1, %2&#xa0;pasos</translation>
    </message>
    <message>
        <source>First, at %1: test join</source>
        <translation>Primero: %1, unión de prueba</translation>
    </message>
    <message>
        <source>First, at %1: test block</source>
        <extracomment>%1 is a station&apos;s name; the trial&apos;s block comes before cloth is cut; short: on a button</extracomment>
        <translation>Primero: %1, bloque de prueba</translation>
    </message>
    <message>
        <source>First measure again</source>
        <extracomment>the readings of the piece&apos;s sides and diagonals cannot all be right; short: it stands on a button</extracomment>
        <translation>Primero medir de nuevo</translation>
    </message>
    <message>
        <source>%1, from the piece you have</source>
        <extracomment>%1 is a cloth; the next strip is cut from a piece of it that she entered as what she has</extracomment>
        <translation>%1, del trozo que ya hay</translation>
    </message>
    <message>
        <source>overlap on the batting, both sides together</source>
        <extracomment>by how much edges lie over each other inside the sashing of the test join</extracomment>
        <translation>solape sobre la guata, ambos lados sumados</translation>
    </message>
    <message>
        <source>overlap of the allowances</source>
        <translation>solape de los márgenes</translation>
    </message>
    <message>
        <source>thickness of the batting</source>
        <translation>grosor de la guata</translation>
    </message>
    <message>
        <source>Not all of it is read yet.</source>
        <translation>Aún no está todo medido.</translation>
    </message>
    <message>
        <source>This strip is for the test block: one more than the %1 that Fit counts.</source>
        <extracomment>a hoop strip cut for the trial; the station Fit counts those of the piece itself</extracomment>
        <translation>Esta tira es para el bloque de prueba: una más que las %1 que cuenta «Planear».</translation>
    </message>
    <message>
        <source>First press the block: it is cut cold and dry.</source>
        <extracomment>the block is trimmed next: warm or damp from the iron it is not at its size yet</extracomment>
        <translation>Primero planchar el bloque: se corta frío y seco.</translation>
    </message>
</context>
<context>
    <name>matside::StockModel</name>
    <message>
        <source>1 piece</source>
        <extracomment>pieces of cloth she has already</extracomment>
        <translation>1 trozo</translation>
    </message>
    <message>
        <source>%1 pieces</source>
        <translation>%1 trozos</translation>
    </message>
    <message>
        <source>a piece of</source>
        <translation>un trozo de</translation>
    </message>
    <message>
        <source>its length, along the selvage</source>
        <translation>su largo, a lo largo del orillo</translation>
    </message>
    <message>
        <source>its width, selvages off</source>
        <translation>su ancho, sin orillos</translation>
    </message>
    <message>
        <source>%1 × %2 of %3</source>
        <extracomment>a piece of cloth: length × width, and which cloth</extracomment>
        <translation>%3, %1 × %2</translation>
    </message>
    <message>
        <source>Say which cloth it is.</source>
        <translation>Indicar qué tela es.</translation>
    </message>
    <message>
        <source>%1 pieces of one cloth are laid out together at most. Take a small one away first.</source>
        <translation>Se colocan juntos como mucho %1 trozos de una tela. Quitar antes uno pequeño.</translation>
    </message>
    <message>
        <source>This cloth is bought or begun, so its layout stays. Take the tick away first.</source>
        <translation>Esta tela está comprada o empezada y su corte se mantiene. Quitar antes la marca.</translation>
    </message>
    <message>
        <source>This cannot be changed here.</source>
        <translation>Esto no se puede cambiar aquí.</translation>
    </message>
    <message>
        <source>Between %1 and %2.</source>
        <translation>Entre %1 y %2.</translation>
    </message>
    <message>
        <source>Strips of this piece are in a layout that stays.</source>
        <translation>Hay tiras de este trozo en un corte que se mantiene.</translation>
    </message>
    <message>
        <source>Add this piece</source>
        <extracomment>adds the piece of cloth just entered</extracomment>
        <translation>Añadir este trozo</translation>
    </message>
    <message>
        <source>List %1 at Fit, add this piece</source>
        <extracomment>%1 is a use, &quot;back cloth&quot;: Fit has no cloth listed for it yet</extracomment>
        <translation>Anotar %1 en «Planear» y añadir este trozo</translation>
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
        <translation>al menos %1 de ancho entre orillos</translation>
    </message>
    <message>
        <source>for 1 bobbin and the top</source>
        <translation>para 1 canilla y el hilo superior</translation>
    </message>
    <message>
        <source>for %1 bobbins and the top</source>
        <translation>para %1 canillas y el hilo superior</translation>
    </message>
    <message>
        <source>quilting needles, a new one every 8 hours</source>
        <translation>agujas de acolchar, una nueva cada 8 horas</translation>
    </message>
    <message>
        <source>All of it is in the basket.</source>
        <translation>Todo está en la cesta.</translation>
    </message>
    <message>
        <source>1 thing to find</source>
        <translation>Queda 1 por encontrar</translation>
    </message>
    <message>
        <source>%1 things to find</source>
        <translation>Quedan %1 por encontrar</translation>
    </message>
    <message>
        <source>%1 of thread</source>
        <translation>%1 de hilo</translation>
    </message>
</context>
<context>
    <name>matside::TrimModel</name>
    <message>
        <source>on the outer stitches</source>
        <translation>sobre las puntadas exteriores</translation>
    </message>
    <message>
        <source>on cut side 1</source>
        <translation>sobre el lado 1 cortado</translation>
    </message>
    <message>
        <source>on cut side 2</source>
        <translation>sobre el lado 2 cortado</translation>
    </message>
    <message>
        <source>Turn the block a quarter, never over. A cross line on side 1.</source>
        <translation>Girar el bloque un cuarto de vuelta, nunca voltearlo. Una línea transversal sobre el lado 1.</translation>
    </message>
    <message>
        <source>Side %1 cut, blade closed</source>
        <extracomment>the blade has cut this side and is closed again</extracomment>
        <translation>Lado %1 cortado, cuchilla cerrada</translation>
    </message>
    <message>
        <source>Turn it a quarter again. Both readings must agree.</source>
        <translation>Otro cuarto de vuelta. Ambas lecturas deben coincidir.</translation>
    </message>
    <message>
        <source>Turn it once more. Both must agree, a cross line on side 1 or 3.</source>
        <translation>Girar otra vez. Ambas deben coincidir, una línea transversal sobre el lado 1 o 3.</translation>
    </message>
    <message>
        <source>Measure from the outer line, not the echo line; a cross line on the outline’s corner.</source>
        <translation>Medir desde la línea exterior, no la línea de eco; una línea transversal en la esquina del contorno.</translation>
    </message>
    <message>
        <source>%1, which decides: the stitches may lie off their line</source>
        <extracomment>%1 is the side the ruler&apos;s line lies on, &quot;on cut side 1&quot;</extracomment>
        <translation>%1, que decide: las puntadas pueden caer fuera de su línea</translation>
    </message>
    <message>
        <source>Line and stitches cross mid-side; they part by %1 at both corners.</source>
        <extracomment>the ruler is turned half the lean: its line and the stitched line cross in the middle of the side</extracomment>
        <translation>La línea y las puntadas se cruzan a mitad del lado; en las dos esquinas se separan %1.</translation>
    </message>
    <message>
        <source>Begin with the truest side: %1. A cross line through the outline’s corner.</source>
        <extracomment>%1 is a side of the block: &quot;bottom&quot;</extracomment>
        <translation>Empezar por el lado más recto: %1. Una línea transversal por la esquina del contorno.</translation>
    </message>
    <message>
        <source>Turn it a quarter again. A cross line on the side cut before.</source>
        <translation>Girarlo otro cuarto de vuelta. Una línea transversal sobre el lado cortado antes.</translation>
    </message>
    <message>
        <source>Measure its sides and diagonals before you cut.</source>
        <translation>Medir sus lados y diagonales antes de cortar.</translation>
    </message>
    <message>
        <source>Measure %1 too</source>
        <extracomment>%1 is the name of another block, &quot;A2&quot;</extracomment>
        <translation>Medir también %1</translation>
    </message>
    <message>
        <source>See the common size</source>
        <extracomment>on a button: it shows what a common size of all blocks would mean, before it is taken</extracomment>
        <translation>Ver la medida común</translation>
    </message>
    <message>
        <source>Measure the block</source>
        <translation>Medir el bloque</translation>
    </message>
    <message>
        <source>Stitched again: measure it</source>
        <translation>Bordado otra vez: medir</translation>
    </message>
    <message>
        <source>Measure it again</source>
        <translation>Medir otra vez</translation>
    </message>
    <message>
        <source>Cut it anyway</source>
        <extracomment>on a button: a side of the block is cut although its measures say it should not be</extracomment>
        <translation>Cortar de todos modos</translation>
    </message>
    <message>
        <source>%1, not %2: it centres this block, stitched %3</source>
        <extracomment>%1 is where the ruler&apos;s line lies, &quot;on the outer stitches&quot;; %2 the planned line, %3 the size within the block&apos;s stitches, not that it is cut to</extracomment>
        <translation>%1, no %2: así queda centrado este bloque, bordado %3</translation>
    </message>
    <message>
        <source>Planned cut %1. No figure holds before it is measured.</source>
        <extracomment>cut: the size of the trimmed block, not that within its stitches</extracomment>
        <translation>Corte previsto: %1. Ninguna medida vale antes de medirlo.</translation>
    </message>
    <message>
        <source>Planned cut %1. No figure holds before its readings agree.</source>
        <translation>Corte previsto: %1. Ninguna medida vale hasta que sus lecturas coincidan.</translation>
    </message>
    <message>
        <source>Planned cut %1, but it is not to be cut as it is.</source>
        <translation>Corte previsto: %1, pero así no se corta.</translation>
    </message>
    <message>
        <source>Planned cut %1. No figure holds before the common size is known.</source>
        <translation>Corte previsto: %1. Ninguna medida vale hasta conocer la medida común.</translation>
    </message>
    <message>
        <source>Planned cut %1. If the common size is taken, cut %2.</source>
        <extracomment>the common size of the blocks measured, taken for all that are not cut yet</extracomment>
        <translation>Corte previsto: %1. Si se toma la medida común: %2.</translation>
    </message>
    <message>
        <source>Logged off size: stitched %1.</source>
        <extracomment>the size of a block&apos;s stitched outline as it was logged at the hoop, not as planned</extracomment>
        <translation>Anotado fuera de medida: bordado %1.</translation>
    </message>
    <message>
        <source>Side %1: %2</source>
        <extracomment>%1 counts a block&apos;s four sides in the order they are cut; %2 is which of its own it is, &quot;right&quot;</extracomment>
        <translation>Lado %1: %2</translation>
    </message>
    <message>
        <source>%1, side %2: %3</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;; %2 counts its four sides; %3 is one, &quot;right&quot;</extracomment>
        <translation>%1, lado %2: %3</translation>
    </message>
    <message>
        <source>Side %1 of 4</source>
        <translation>Lado %1 de 4</translation>
    </message>
    <message>
        <source>%1, side %2 of 4</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;; %2 counts its four sides</extracomment>
        <translation>%1, lado %2 de 4</translation>
    </message>
</context>
<context>
    <name>matside::WouldFit</name>
    <message>
        <source>Between 1 and %1 blocks.</source>
        <translation>Entre 1 y %1 bloques.</translation>
    </message>
    <message>
        <source>It must be more than nothing.</source>
        <translation>Tiene que ser mayor que cero.</translation>
    </message>
    <message>
        <source>This cannot be changed here.</source>
        <translation>Esto no se puede cambiar aquí.</translation>
    </message>
    <message>
        <source>%1 × %2 blocks of %3</source>
        <extracomment>columns × rows blocks of a size</extracomment>
        <translation>%1 × %2 bloques de %3</translation>
    </message>
    <message>
        <source>{%1} × %2</source>
        <extracomment>along × across</extracomment>
        <translation>{%1} × %2</translation>
    </message>
    <message>
        <source>%1 over</source>
        <extracomment>the piece hangs over the table&apos;s edge by so much</extracomment>
        <translation>%1 de caída</translation>
    </message>
    <message>
        <source>%1 bare</source>
        <extracomment>so much of the table shows beside the piece</extracomment>
        <translation>%1 libres</translation>
    </message>
    <message>
        <source>%1 all round</source>
        <translation>%1 alrededor</translation>
    </message>
    <message>
        <source>%1 at the ends, %2 at the sides</source>
        <translation>%1 en los extremos, %2 en los lados</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>corners %1 over</source>
        <extracomment>on a round table: the corners lie so far from its edge</extracomment>
        <translation>esquinas %1 fuera</translation>
    </message>
    <message>
        <source>corners %1 inside</source>
        <translation>esquinas %1 dentro</translation>
    </message>
    <message>
        <source>washed %1</source>
        <translation>lavada %1</translation>
    </message>
    <message>
        <source>Sashing %1.</source>
        <extracomment>sashing: the strip between two blocks</extracomment>
        <translation>Tira de unión %1.</translation>
    </message>
    <message>
        <source>In the hoop “%1”.</source>
        <translation>En el bastidor «%1».</translation>
    </message>
    <message>
        <source>Strips take %1 a layer.</source>
        <extracomment>cloth of each layer for the hoop strips</extracomment>
        <translation>Las tiras piden %1 por capa.</translation>
    </message>
    <message>
        <source>to make, before washing, %1</source>
        <translation>para hacer, antes de lavar, %1</translation>
    </message>
    <message>
        <source>table shows</source>
        <translation>mesa a la vista</translation>
    </message>
    <message>
        <source>hangs over</source>
        <translation>cuelga</translation>
    </message>
    <message>
        <source>over at each end</source>
        <translation>caída en cada extremo</translation>
    </message>
    <message>
        <source>bare at each end</source>
        <translation>libre en cada extremo</translation>
    </message>
    <message>
        <source>At each end</source>
        <translation>En cada extremo</translation>
    </message>
    <message>
        <source>over at each side</source>
        <translation>caída en cada lado</translation>
    </message>
    <message>
        <source>bare at each side</source>
        <translation>libre en cada lado</translation>
    </message>
    <message>
        <source>At each side</source>
        <translation>En cada lado</translation>
    </message>
    <message>
        <source>finished, along</source>
        <translation>acabada, a lo largo</translation>
    </message>
    <message>
        <source>finished, across</source>
        <translation>acabada, a lo ancho</translation>
    </message>
    <message>
        <source>washing takes</source>
        <translation>el lavado quita</translation>
    </message>
    <message>
        <source>smallest block</source>
        <translation>bloque menor</translation>
    </message>
    <message>
        <source>largest block</source>
        <translation>bloque mayor</translation>
    </message>
    <message>
        <source>block sizes</source>
        <translation>tamaños de bloque</translation>
    </message>
    <message>
        <source>by quarters</source>
        <translation>por cuartos de pulgada</translation>
    </message>
    <message>
        <source>by 5 mm</source>
        <translation>cada 5&#xa0;mm</translation>
    </message>
    <message>
        <source>on every mark</source>
        <translation>en cada marca</translation>
    </message>
    <message>
        <source>wider sashing</source>
        <translation>tira de unión más ancha</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>up to 1/8 in more</source>
        <translation>hasta 1/8 in más</translation>
    </message>
    <message>
        <source>up to 3 mm more</source>
        <translation>hasta 3&#xa0;mm más</translation>
    </message>
    <message>
        <source>blocks at most</source>
        <translation>bloques, como mucho</translation>
    </message>
    <message>
        <source>leaf in: %1 at the ends</source>
        <translation>con extensión: %1 en los extremos</translation>
    </message>
    <message>
        <source>leaf out: %1 at the ends</source>
        <extracomment>the table&apos;s leaf is out; %1 = &quot;12 in bare&quot; or &quot;3 in over&quot;</extracomment>
        <translation>sin extensión: %1 en los extremos</translation>
    </message>
    <message>
        <source>leaf in</source>
        <translation>con extensión</translation>
    </message>
    <message>
        <source>leaf out</source>
        <translation>sin extensión</translation>
    </message>
    <message>
        <source>the leaf</source>
        <extracomment>the board laid into a table to lengthen it</extracomment>
        <translation>la extensión</translation>
    </message>
    <message>
        <source>out</source>
        <translation>quitada</translation>
    </message>
    <message>
        <source>in</source>
        <translation>puesta</translation>
    </message>
    <message>
        <source>No mats lie on this table.</source>
        <translation>En esta mesa no caben manteles individuales.</translation>
    </message>
    <message>
        <source>Between 1 and %1 mats: no more lie on this table.</source>
        <translation>Entre 1 y %1 manteles individuales: no caben más en esta mesa.</translation>
    </message>
    <message>
        <source>1 mat of %1</source>
        <extracomment>place mats: so many, and the size of each</extracomment>
        <translation>1 mantel individual de %1</translation>
    </message>
    <message>
        <source>%1 mats of %2</source>
        <translation>%1 manteles individuales de %2</translation>
    </message>
    <message>
        <source>size of the mats</source>
        <translation>medida de los manteles individuales</translation>
    </message>
    <message>
        <source>the mats lie</source>
        <translation>los manteles individuales van</translation>
    </message>
    <message>
        <source>along the sides</source>
        <extracomment>place mats along the two longer sides of a table</extracomment>
        <translation>a lo largo de los lados</translation>
    </message>
    <message>
        <source>at the ends too</source>
        <extracomment>place mats along the sides of a table and at its two ends</extracomment>
        <translation>también en los extremos</translation>
    </message>
    <message>
        <source>mats, %1 at most</source>
        <extracomment>so many place mats lie on the table</extracomment>
        <translation>manteles individuales, %1 como mucho</translation>
    </message>
    <message>
        <source>for the table</source>
        <translation>para la mesa</translation>
    </message>
    <message>
        <source>one piece</source>
        <translation>una sola pieza</translation>
    </message>
    <message>
        <source>a set of mats</source>
        <extracomment>place mats, one for each who sits at the table</extracomment>
        <translation>varios manteles individuales</translation>
    </message>
    <message>
        <source>blocks in one, at most</source>
        <translation>bloques en cada uno, como mucho</translation>
    </message>
    <message>
        <source>One mat: no more lie on this table.</source>
        <translation>Un mantel individual: no caben más en esta mesa.</translation>
    </message>
    <message>
        <source>1 block</source>
        <translation>1 bloque</translation>
    </message>
    <message>
        <source>%1 blocks</source>
        <translation>%1 bloques</translation>
    </message>
    <message>
        <source>1 strip</source>
        <translation>1 tira</translation>
    </message>
    <message>
        <source>%1 strips</source>
        <translation>%1 tiras</translation>
    </message>
    <message>
        <source>1 hour</source>
        <translation>1 hora</translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation>%1 horas</translation>
    </message>
    <message>
        <source>%1 mats: %2 and %3 spare, %4, %5</source>
        <extracomment>%1 place mats; &quot;12 blocks&quot; in all of them; %3 spare blocks that they share; &quot;4 strips&quot;, &quot;3 hours&quot;</extracomment>
        <translation>%1 manteles individuales: %2 y %3 de reserva, %4, %5</translation>
    </message>
    <message>
        <source>%1 × %2 of %3</source>
        <extracomment>a layout in short: columns × rows of blocks of a size</extracomment>
        <translation>%1 × %2 de %3</translation>
    </message>
</context>
</TS>
