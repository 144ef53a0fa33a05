<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en_GB">
<context>
    <name>AmountRow</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Band</name>
    <message>
        <source>Shelf</source>
        <extracomment>where the projects are kept</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BindingSection</name>
    <message>
        <source>seam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the back the fold just covers the seam; sewn down by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the back the fold passes the seam, so that stitching from the front catches it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BlockShape</name>
    <message>
        <source>drawn %1 times as crooked</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CardBar</name>
    <message>
        <source>A bar as long as a bank card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar shorter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar longer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay a bank card on the bar; make the bar as long as the card.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EdgeAside</name>
    <message>
        <source>Measure the piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Four sides and two diagonals, lying flat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stay-stitch {3 mm} from the raw edge across every sashing end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stay-stitch {1/8 in} from the raw edge across every sashing end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the joins fall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seam {%1}, in section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounded corners, {%1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Square corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Care, label, sleeve, pillow</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EdgeCare</name>
    <message>
        <source>Before you sell it, look up the rules on labels and fillings where you live.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EdgeCorners</name>
    <message>
        <source>square</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rounded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Radius of the corners</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EdgeDrawing</name>
    <message>
        <source>begin</source>
        <extracomment>the place where the binding begins and closes</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EdgeJoins</name>
    <message>
        <source>Lay the binding round once before you sew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen from the front, the strip laid clockwise. Each place is the middle of a seam at 45°.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EdgeMeasure</name>
    <message>
        <source>Measure all six, raw edge to raw edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you do not change stands as planned. The limits are common practice; no published ones are known.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EdgePage</name>
    <message>
        <source>The piece. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The binding laid round. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The finished piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EdgePins</name>
    <message>
        <source>pins in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pins out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pins were used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I know where they are</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EdgeSection</name>
    <message>
        <source>Double fold: cut {%1}, pressed in half to {%2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Single fold: cut {%1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bound edge in section, seam %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slow over the thick places; turn the wheel by hand. Pins out before the needle.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FieldItem</name>
    <message>
        <source>not said</source>
        <extracomment>a price nobody has entered</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FieldRow</name>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FieldValue</name>
    <message>
        <source>%1, worked out</source>
        <extracomment>%1 is a value that the plan works out by itself</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FieldsProblem</name>
    <message>
        <source>Look at this</source>
        <extracomment>the head of a line that warns of something but stops nothing</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FieldsSheet</name>
    <message>
        <source>What would fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What follows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A file of this project</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FigureRow</name>
    <message>
        <source>not tried yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a figure does</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FiguresColumn</name>
    <message>
        <source>On dots: not tried yet.</source>
        <extracomment>how figures are marked that the trial has not confirmed</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FinishedSize</name>
    <message>
        <source>Finished %1 by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a figure does</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FirstRun</name>
    <message>
        <source>The shelf is empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin with the demo, ready to cut, or with nine blocks of your own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the demo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FitHead</name>
    <message>
        <source>block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rows</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FitLayouts</name>
    <message>
        <source>What is wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show what fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take this layout</source>
        <extracomment>layout: how many blocks across and down, their size and the sashing between them</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open for reading only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press one to see it on the table.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FitPage</name>
    <message>
        <source>What would fit</source>
        <extracomment>the other face of the piece, in the drawing</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The piece on the table, %1 by %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FitWanted</name>
    <message>
        <source>Change what is wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wanted: %1</source>
        <extracomment>what the layouts below are looked for: so much bare table, or a finished size</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FootFigure</name>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>show the working</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GalleryCell</name>
    <message>
        <source>Block %1, %2</source>
        <extracomment>spoken: a block&apos;s name and its state</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GalleryNotes</name>
    <message>
        <source>Block %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is noted of block %1 yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the gallery</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GalleryPage</name>
    <message>
        <source>Pictures of %1 of %2 blocks</source>
        <extracomment>%1 of %2 blocks have a picture</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the work</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HoldButton</name>
    <message>
        <source>hold for a second</source>
        <extracomment>how a button that destroys is pressed</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HoopAside</name>
    <message>
        <source>Last outline ended at {%1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stops and patches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strip %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gaps can yield sashing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hoops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures and notes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HoopChoice</name>
    <message>
        <source>Its measures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another hoop</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HoopDrawing</name>
    <message>
        <source>the frame’s outside, edge to edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the opening inside the frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the field: as far as the needle stitches</source>
        <extracomment>field: as far as the needle can stitch</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HoopMeasure</name>
    <message>
        <source>A hoop’s name is not its field. Measure all three.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where the %1 is measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two rings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>magnetic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side of the machine’s bracket</source>
        <extracomment>bracket: the arm that carries the hoop; on that side the strip would run into the machine</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold to take it off the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All hoops</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HoopShelf</name>
    <message>
        <source>stitching field, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stitching field, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening inside the frame, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening inside the frame, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside of the frame, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside of the frame, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thickest sandwich it holds</source>
        <extracomment>sandwich: top, batting and back together</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HoopStops</name>
    <message>
        <source>Block %1, stop by stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New bobbin in</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HoopStrips</name>
    <message>
        <source>Strip %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strip before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two people, two machines: each strip keeps its own place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the gaps yield sashing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it for the blocks to come</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HoopZero</name>
    <message>
        <source>The last outline really ended at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the zero end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure from the zero end, not from the block before: then no error piles up.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JoinAside</name>
    <message>
        <source>Measure this row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seam {%1} catch {%2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seam {%1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>True-size gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never fold {%1}: it would be missed.</source>
        <extracomment>a fold so wide that the ditch stitching would not catch it</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Layout, front and back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two blocks should change places</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JoinGauge</name>
    <message>
        <source>True size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pins out, cloth cool and dry, do not press on the glass.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>catch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fold under</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>True only after the screen was set against a card, under the gear on the shelf.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JoinLayout</name>
    <message>
        <source>Layout of the blocks; next: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Touch two blocks to swap them; their labels stay with them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now the other one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swap them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See the back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JoinMap</name>
    <message>
        <source>back, as it lies turned over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JoinPage</name>
    <message>
        <source>Section of a join: seam %1, fold under %2, catch %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Match marks from the row’s raw end, now at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Layout of the blocks; next: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JoinRow</name>
    <message>
        <source>%1: how long is it, raw end to raw end?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter its length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length of the row, raw end to raw end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay it flat, not stretched. What may be eased is common practice; no published limit is known.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JoinTest</name>
    <message>
        <source>The gap moves four times as fast as the seam.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>KeypadKeys</name>
    <message>
        <source>decimal point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rub out the last</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LanguageChoice</name>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LogFace</name>
    <message>
        <source>Photo: %1</source>
        <extracomment>%1 is &quot;Front&quot; or &quot;Back face&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LogFlags</name>
    <message>
        <source>What to remember of block %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words, if you like</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the block</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LogSheet</name>
    <message>
        <source>Front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along</source>
        <extracomment>the stitched outline&apos;s size along the strip</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>across</source>
        <extracomment>the stitched outline&apos;s size across the strip</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same as planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Log these measures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flagged</source>
        <extracomment>marks something worth remembering of a block</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not now</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>%1: Matside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The window could not be opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The paper is a4 or letter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>--sheet OUT.pdf needs a project file after it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next cut, beside the cutting mat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the data in this folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the demo project.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the plan of a project file (- for standard input).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw every station into this folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the project named last, with its notes and photographs, to a new file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what is inside such a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what is inside, and add it to the shelf.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the paper sheet of a project file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper of the sheet: a4 or letter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet on one page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write everything to one new file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a backup in place where no project is yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speak this language: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A project, share or backup file to look into, or a project file for --pictures or --sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The language is one of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Annulé : %1</translation>
    </message>
</context>
<context>
    <name>MeasureScene</name>
    <message>
        <source>Lay the block flat, off the hoop and rested. Measure its four sides and both diagonals.</source>
        <translation>Poser le bloc à plat, hors du cadre et reposé. Mesurer ses quatre côtés et les deux diagonales.</translation>
    </message>
</context>
<context>
    <name>MeasureSheet</name>
    <message>
        <source>measure this one again first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the common size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The limits are common practice; no published ones are known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep these readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block %1: outer stitches</source>
        <translation>Bloc %1 : points extérieurs</translation>
    </message>
    <message>
        <source>from top left</source>
        <translation>du haut à gauche</translation>
    </message>
    <message>
        <source>from top right</source>
        <translation>du haut à droite</translation>
    </message>
    <message>
        <source>All six are as shown</source>
        <translation>Les six sont comme affiché</translation>
    </message>
</context>
<context>
    <name>NewPiece</name>
    <message>
        <source>New, in millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New, in inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New piece</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NotesSheet</name>
    <message>
        <source>Not tried yet: the trial may change this figure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On with the work</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NoticeLine</name>
    <message>
        <source>put this notice away</source>
        <extracomment>what pressing a notice does</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OpenExport</name>
    <message>
        <source>Name of the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OpenFile</name>
    <message>
        <source>One moment: all of it is being read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of it can be read. The file stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not all of it can be read. What you choose here mends the copy; the file stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OpenSheet</name>
    <message>
        <source>Open, bring in, back up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>folder</source>
        <extracomment>what a row of the list of files is</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>backup of everything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>project with notes and photographs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>project</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no project file and no folder here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it all back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay it on the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back up everything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the shelf</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhotoSheet</name>
    <message>
        <source>the back</source>
        <extracomment>what a picture is of: the front or the back of a block</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a picture of %1</source>
        <extracomment>%1 is &quot;the front&quot; or &quot;the back&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keeping the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a picture of %1, block %2</source>
        <extracomment>%1 is &quot;the front&quot; or &quot;the back&quot;, %2 a block&apos;s name</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tap anywhere: %1 of block %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no pictures in the folder “%1”. Put them there, or go on without one.</source>
        <extracomment>%1 is the name of a folder</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use the camera</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back without a picture</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Photos</name>
    <message>
        <source>The picture cannot be read. Choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is no picture this program can read. Choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture is cut short: its end is missing. Copy it again, or choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture is too large. Up to 100 million pixels can be kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk is full, so the picture was not kept. Nothing else was lost; free some room.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PictureRow</name>
    <message>
        <source>Folder %1</source>
        <extracomment>spoken name of a folder of pictures in a list</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder: %1</source>
        <extracomment>a folder in a list of pictures; %1 is its name</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProjectRow</name>
    <message>
        <source>Less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make again in other cloth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A copy in millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share as one file</source>
        <extracomment>writes one file with the project, its notes and its photographs, to be given to someone</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold to throw away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the project</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet for the wall</source>
        <extracomment>the whole job on paper, as a PDF to be printed</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PutOff</name>
    <message>
        <source>Put the trial off</source>
        <extracomment>the trial: one test block and one test join, made before the cloth for the piece is cut</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Readings</name>
    <message>
        <source>A reading is more than nothing.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ResumeSheet</name>
    <message>
        <source>Yes, it is finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RevealMark</name>
    <message>
        <source>over</source>
        <extracomment>after a length: the cloth hangs so far over the table&apos;s edge</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RulerDrawing</name>
    <message>
        <source>on the outer
stitches</source>
        <extracomment>where the ruler&apos;s line lies: two short lines, broken by hand</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mat lines
from here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the
cut edge</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RulerWords</name>
    <message>
        <source>keep</source>
        <extracomment>the part of the cloth that is kept</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fold</source>
        <extracomment>the folded edge of the cloth, or that it lies unfolded</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one layer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>selvages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>selvage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waste</source>
        <extracomment>cloth that falls away</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SectionDrawing</name>
    <message>
        <source>%1 times true size, cloth drawn thicker</source>
        <extracomment>how much larger than life the section is drawn</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>catch</source>
        <extracomment>how far the fold passes the seam, so that the ditch stitching catches it</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fold under</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Language, light, hand and screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>the light she works in</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutting hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the left hand everything is mirrored but the figures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Movement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheets slide in</source>
        <extracomment>whether sheets slide into place or are simply there</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing moves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of the screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the shelf</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Sharing</name>
    <message>
        <source>The file cannot be opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no share file, or it is damaged. Ask for it to be sent once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file does not come from Matside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is from a newer Matside. A newer Matside will open it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is more in it than can be taken: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are more photographs in it than can be taken; 4000 is the most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something in it would swell up when unpacked, as no photograph does: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something in it would be written outside its own folder: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something in it is a link, not a file: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something in it is locked with a password: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something in it is packed in a way that is not known here: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same name stands in it twice. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something is in it that does not belong there: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something is missing in it: %1. Ask for it to be sent once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something in it was damaged or changed on the way: %1. Ask for it to be sent once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its list of contents cannot be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The notes in it cannot be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The project in it cannot be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A photograph in it is none, or is cut short: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a file of that name already, and it was left as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A photograph of this project is missing or cannot be read: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It could not be written: the disk is full, or the folder takes no files.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no photographs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing of it was kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one project</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 projects</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one photograph was gone before and is not in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 photographs were gone before and are not in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by %2 blocks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no block made yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one block made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 blocks made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one thing in it cannot be read as it stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 things in it cannot be read as they stand</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When it is done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To buy, cloth by cloth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Costs %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outline, along × across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usable width of the strip&apos;s cloth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>catch, planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spare on a short sashing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>short sashing with its spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spare on a long sashing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>long sashing with its spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batting, width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batting, least width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batting inside the ring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>backing, along × across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corners&apos; radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the arc cuts into the stippling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least radius for folded binding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>patch &quot;%1&quot;, cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>web for &quot;%1&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thread for a block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of it from the bobbin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ruler &quot;%1&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look here first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>allowance</source>
        <extracomment>cloth kept outside the block&apos;s outline</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fold under</source>
        <extracomment>how much of the back strip is turned under</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>catch</source>
        <extracomment>how far the fold passes the seam line</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sashing, as seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This bar is exactly %1 long. If it is not, print again at 100 %, without fitting to the page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At true size: lay the cloth&apos;s edge on the long line, the measure is where the bar ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{Flat cloth:} for marking before anything is stitched, every tick from the one zero end. Drawn 1 : %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{Drawn-in cloth:} where each start is found once the blocks before it are stitched. Never mix the two scales.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place %1, block %2: start {%3}, centre {%4} (planned {%5}), gap {%6}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not fit: {%1} is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With a gap of {%1} it would.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{Strip %1}, begun: %2 long when flat, its end now at %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last outline ended at {%1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hoop: the strip end to end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back, as it lies turned over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 blocks are too many to draw one by one: lay them out from the labels, rows by letter from the top, columns by number from the left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{Match marks} on every long sashing, from the row&apos;s raw left end, which is zero; a row is %1 raw.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long sashing, %1, in pieces: %2; joins at %3 from the row&apos;s raw left end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim and fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join: both faces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · page %2 of %3</source>
        <extracomment>a page&apos;s footer: the project&apos;s name, the page and how many there are</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, continued</source>
        <extracomment>at the top of a page: the heading it goes on with</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawn 1 : %1</source>
        <extracomment>drawn so many times smaller: 1 : 10</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{%1} × {%2} finished</source>
        <extracomment>along × across, of the finished piece</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2 blocks</source>
        <extracomment>columns × rows of blocks</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A ring: not tried yet. Make the trial before you cut the rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet could not be written to %1: %2. Choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and so on</source>
        <extracomment>the list is cut short</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>… and %1 more lines: see the long form.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the trial.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut, cloth by cloth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>a heading and the cloth it goes on with</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ShelfPage</name>
    <message>
        <source>On the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open, bring in, back up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hide those put away</source>
        <extracomment>pieces that were put away, out of sight</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show those put away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light and language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ShopPage</name>
    <message>
        <source>To buy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: buy %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bought</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not bought yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{%1} %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Costs %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How %1 is cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost and price</source>
        <translation type="unfinished"></translation>
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
        <translation>sur les points</translation>
    </message>
</context>
<context>
    <name>SideSheet</name>
    <message>
        <source>Back to the work</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepButton</name>
    <message>
        <source>more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepHead</name>
    <message>
        <source>Nothing left to do here</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepTargets</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something’s wrong</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepWords</name>
    <message>
        <source>and {%1} %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not tried yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to mind here: %1</source>
        <extracomment>what is to be minded and checked at this step</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worked out</source>
        <extracomment>stands under a value the app reckons itself</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Store</name>
    <message>
        <source>The disk is full. Nothing was lost; free some room and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is open for reading only, so nothing can be changed here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another program holds the file. Try again in a moment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The project was changed elsewhere. Open it again from the shelf.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These projects were saved by a newer Matside. They were left as they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is damaged. What can be read is shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something in this project cannot be read. Open it and mend that first; nothing was copied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing left to undo.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That could not be saved: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something in this project cannot be read. Mend it at Fit first; nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StripDrawing</name>
    <message>
        <source>next</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TableDrawing</name>
    <message>
        <source>The piece is drawn here once it has a size.</source>
        <extracomment>shown where the drawing will be while the project has no size yet</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size of the piece: drag, or use the arrow keys</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Tally</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>a tally that is too long to draw: so many made of so many</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TermRow</name>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a term of a sum does</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as you entered it</source>
        <extracomment>stands under a value that the maker entered herself</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrialSheet</name>
    <message>
        <source>They overlap by that much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They do not overlap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take these measures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All are as shown</source>
        <translation>Toutes comme affiché</translation>
    </message>
</context>
<context>
    <name>TrimPage</name>
    <message>
        <source>The strip comes apart down the middle of each gap; blocks off it so far: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Tuner</name>
    <message>
        <source>%1 less</source>
        <extracomment>spoken name of a minus button; %1 is what it lessens</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more</source>
        <extracomment>spoken name of a plus button; %1 is what it adds to</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>UndoneSheet</name>
    <message>
        <source>Was it tapped by mistake, or is the piece spoiled?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tapped by mistake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done and spoiled</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Pleat on the back</source>
        <extracomment>a fold of the back cloth stitched down by mistake</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread broke or loops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Patch not covered</source>
        <extracomment>patch: a shape of cloth stitched onto the block</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stain or hoop mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is not a whole number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It needs a name. The old one was kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That name is too long; %1 letters are the most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A price is a number like 9.50.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is too small; %1 is the least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is longer than any piece here can be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This lies between %1 and %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw-up lies between 0 % and 15 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That does not belong here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new cloth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new ruler</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is the cloth of the patch “%2”: it stays while the patch does.</source>
        <extracomment>a cloth cannot be taken away; %1 is the cloth, %2 a patch cut from it</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” has been cut already: it stays with this piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” has been bought or measured: it stays with this piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than %1 cloths do not fit in one piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than %1 rulers cannot be kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One ruler stays: every cut is laid out with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is no longer there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a scant</source>
        <extracomment>just under the ruler&apos;s mark that follows</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a generous</source>
        <extracomment>just over the ruler&apos;s mark that follows</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too long to tell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>second</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>third</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fourth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fifth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sixth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seventh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>eighth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ninth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tenth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last</source>
        <extracomment>the last of more than ten, as in &quot;and the last block will not fit&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spare blocks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clean back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batting’s thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>draw-up along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>draw-up across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sashing, as seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back strip, cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block’s allowance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>catch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turn over the bulk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>field, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>field, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usable length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap between outlines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>margin past the hoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>placing by eye, within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sliver cut away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tail past the frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waste tails sewn on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frame may lie on the last block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line down the sashings</source>
        <extracomment>one line of decorative stitching down the middle of every sashing</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gaps give the sashing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cloth kept outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>binding’s seam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>binding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sewn on the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corners’ radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cloth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part it plays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usable width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sold by the</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price of a yard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price of a metre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its pattern has an up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take this cloth away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a cloth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ruler</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its finest mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take this ruler away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a ruler</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finest mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The blocks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seam and draw-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sashing and fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hoop strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cloths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your rulers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>four-sided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reversible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with one clean back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>layered and bound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bagged out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>framed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>square</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rounded, on bias</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>double fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>single fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two rings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>magnetic frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>patch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>web</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sashing, front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sashing, back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1/8 yd</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1/4 yd</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1/2 yd</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 yd</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>25 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>50 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>undyed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ochre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>madder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>teal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new project</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>demo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>make again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copy in millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bring in</source>
        <extracomment>a project taken out of a share file</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rename</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bring back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>throw away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>layout taken</source>
        <extracomment>layout: how many blocks across and down, their size and the sashing between them</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cloth added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ruler added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cloth taken away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ruler taken away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>remedy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trial put off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trial taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>something went wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>draw-up taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common size taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ticked as bought</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last outline measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hoop chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sashing strips changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pins counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blocks changed places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block logged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hoop strip, cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blocks on a strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hoop strips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap that yields sashing</source>
        <extracomment>the first gaps of a strip, wide enough to be cut into sashing</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left on each strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frame’s reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size sent, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size sent, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trimmed block, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trimmed block, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front sashing, cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back sashing, cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>allowances will meet within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>short sashings a face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>short sashing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>long sashings a face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>long sashing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fold under</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which catches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>raw, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>raw, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finished, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finished, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>binding, cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>binding, length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>binding strips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>square for the bias</source>
        <extracomment>bias: cloth cut slantwise; one continuous strip is cut from a square</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table showing, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table showing, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table showing at the corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>binding, exact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap on paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlines, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlines, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>used of the strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start on the strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centre on the strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start on drawn-in cloth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>match mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>draw-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>allowance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hoop, outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size sent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept past the seam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sliver</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>widest sashing strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wider gaps before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost in truing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rounded up to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>places before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seam as sewn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>between the seams</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken by the bulk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trimmed block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>joint number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reach on the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for turns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exact width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finished size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for the seams</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean of the measured rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not readable as JSON: it breaks off at line %1, column %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The key &quot;%1&quot; stands twice in one place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is too large: %1 bytes; %2 is the most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is nested deeper than %1 levels.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are too many values in one place; %1 is the most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A text is longer than %1 characters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not a project file of Matside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file does not say which version of the format it is in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is in version %1 of the format; this program knows %2. A newer Matside will open it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file %1 cannot be opened: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There should be %1 here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There must be %1 of them here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of the choices.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is needed and is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a length.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is longer than any piece here can be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is too small for this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a percentage.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list is too long; %1 is the most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No ruler is marked in steps of %1.</source>
        <extracomment>mark: a line printed on a ruler</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A table needs a length and a width, or a diameter alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two cloths have the same short name, &quot;%1&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cloth &quot;%1&quot; is not on the list of cloths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A measured test block needs its sent size and its outline, both ways.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A measured piece needs four sides and two diagonals.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a group of keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a length, such as &quot;7 1/2 in&quot;,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two lengths, along and across,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a percentage, such as &quot;2 %&quot;,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>true or false</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a price as a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the block %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the sashing %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sew with a seam of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim the blocks to an allowance of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep %1 outside the stitched line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave a gap of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut the back sashing %1 wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the fold catch %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sew the binding on with a seam of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use cloth %1 wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckon with a draw-up of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave a margin of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frame the piece with sashing.</source>
        <extracomment>framed: a border of sashing all round, then bound</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round the corners by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the corners square.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the gap be reckoned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the back sashing&apos;s width be reckoned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the frame clear of the block before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sew waste tails to both ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forget this measuring and measure again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make it %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose &quot;%1&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Call it &quot;%1&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is entered yet; %1 would be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That fraction cannot be; write it as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That unit is not known; in, yd, ft, mm, cm and m are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are two units; leave one away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That has more digits than any ruler; %1 would be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is not a percentage; 2 % would be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is not a length; %1 would be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is square enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It leans by {%1}.</source>
        <extracomment>lean: the block is a little of a diamond; %1 is by how much</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is off size: {%2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One side is tilted by {%1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One end is wider; each side tilts by {%1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is too far off to be cut as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The readings disagree by {%3}.</source>
        <extracomment>%3 is how far the six readings disagree</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut it plainly, squared off the first side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split the lean: turn the ruler half of it, over the middle of the block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use it as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim it down to size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim it true: the largest is {%4}.</source>
        <extracomment>the largest true square that can still be cut from it</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the others too, then take a common size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut that side parallel to the base; its line goes into the seam. Unpick what shows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut both sides true; their lines go into the seams. Unpick what shows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hoop it again, unpick the outer line and stitch it at size. If the stippling does not reach: a new block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin it square on a board, steam it, let it dry and measure again. If that does not help: a new block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zigzag a scrap of sandwich to the short allowance, edge to edge, or put the block at an outer edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make it again, at the same place of a strip and of the same thread lot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure again, %5 first. Do not cut yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diagonal from top left</source>
        <extracomment>a diagonal of the block</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diagonal from top right</source>
        <extracomment>a diagonal of the block</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all six</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too narrow or crooked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spoiled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cloth ran out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cloth narrower than planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread or bobbin ran out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pleat, hole or broken needle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrong or missing patch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The power failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The strip is torn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The block will not fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I changed my mind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much of it is left?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How wide is it between the selvages?</source>
        <extracomment>usable width of the cloth, between the selvages</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where is the tear, measured from the zero end?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it: a narrower strip or patches come out of it. Straighten the end first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To make again: %1. It stands in the list once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A spare takes the place of %1: nothing is made again.</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;; spare: a block stitched over and above the layout</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block %1 is stitched again, with the same thread lot. It stands next in the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still to cut of %1: {%2} along the selvage.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is left of %1, {%2}, yields it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing more is needed of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is left of %1, {%2}, does not yield it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has measured what is left of %1. Measure it along the selvage before you buy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buy at least {%2} of %1, of the same lot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made to the old measure: %1 Look at it before you use it.</source>
        <extracomment>%1 is a step in words</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is made already stays good.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted as done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pick the thread back about {1 in} and start again on the line. Inside stippling it will not show.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bobbin is counted as new from here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pleat under {1/2 in} on the back may stay. A longer one, or a cut through the ground, means a new block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needle broken? Find all the pieces before you go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not pressed yet: unpick that patch’s stitches only, peel it off, lay the right one, stitch it again. Pressed already: a new block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the block in the hoop. Start again at the stop you were at; nothing here was lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blocks lost beyond the tear: %1. They are on record and stand in the list again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No stitched block is lost. What no longer fits goes to the next strip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blocks that go to the next strip: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It would still fit with a waste tail sewn to the end.</source>
        <extracomment>tail: a waste strip sewn to the end so that the frame has cloth to hold</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It would still fit with a gap of {%1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was changed. What you decide at Fit follows at once; what is cut stays cut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hoop strips to cut beyond the plan: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blocks on each new strip: %1 instead of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With that measure nothing changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hoop&apos;s sizes are missing: enter what it measures outside, and its stitching field or its opening.</source>
        <extracomment>the ring or frame that holds the cloth under the needle</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The block goes to the machine at %1, but the hoop stitches no more than %2.</source>
        <extracomment>sent: the size given to the machine, larger than the outline by what the cloth draws up</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A sashing of %1 is narrower than the two allowances under it, %2: they would lie double.</source>
        <extracomment>sashing: the strip between two blocks; allowance: cloth outside the stitched line</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An allowance of %1 is pared too far to hold a seam; %2 is the least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge keeps %1 outside the stitched line, but the blocks are trimmed to %2: the cloth is not there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A gap of %1 leaves less than the two seam allowances that come out of it, %2.</source>
        <extracomment>gap: cloth between the outlines of two blocks on one strip</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With a gap of %1 the ring would close on the block before it: the frame reaches %2 beyond the outline.</source>
        <extracomment>reach: how far the hoop&apos;s frame lies beyond the stitched line</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A ring may not lie on a stitched block: it would crush it. Only a magnetic frame may.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not one block fits on the strip: %1 is missing, and %2 with waste tails sewn to both ends.</source>
        <extracomment>waste tail: scrap cloth sewn to a strip&apos;s end so that the hoop can hold it</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only %1 is left to fold under on the back; less than %2 cannot be pressed and would be missed by the stitching.</source>
        <extracomment>fold-under: what is turned under along the back sashing</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A catch of %1 will not do: keep it between %2 and %3.</source>
        <extracomment>catch: how far the folded edge passes the seam it is caught by</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Binding cut %1 wide does not come out of cloth %2 wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corners rounded by %1 do not fit on the piece; %2 is the most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bias wants a square of %1, and the cloth is only %2 wide.</source>
        <extracomment>bias: cloth cut slantwise, which goes round a curve</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A draw-up of %1 is not likely; it lies between 0 % and %2. Measure the test block again.</source>
        <extracomment>draw-up: how much the stitching shrinks the cloth</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A short sashing is %1 with its spare, longer than its cloth, %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cloth %1 wide is too narrow to piece the long sashings with their joins at mid-block; %2 is the least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is left for the piece: let less of the table show.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Washing that takes %1 is not likely; say less than %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One block makes a piece of %1, larger than the %2 wanted: allow smaller blocks, or let less of the table show.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No block from %1 to %2 goes into a hoop you have: allow other sizes, or enter the hoop that takes them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That takes %1 blocks or more, and you allow %2: allow more, or larger blocks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The block has %1 of room in the hoop; %2 lets you place it without trying twice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The binding&apos;s seam of %1 is deeper than the cloth outside the stitched line, %2: it would cover the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A margin of %1 past the hoop is hard to hold; %2 is easier.</source>
        <extracomment>margin: cloth past the hoop&apos;s outside at a strip&apos;s long edges</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is left over on each strip; a little more draw-up and the %o2 block will not fit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folding on the ruler&apos;s mark leaves a lip of %1 past the seam; more than %2 may lift.</source>
        <extracomment>lip: the part of the fold that stands past the stitching</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gap pieces are %1 long, shorter than a short sashing with its spare, %2.</source>
        <extracomment>harvested: cut from the gaps between the blocks of a strip</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gap of %1 is under the two wide allowances, %2: the blocks cannot be cut apart so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The frame lies %1 over the block before it. Pad it, and look for marks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rounded corner cuts %1 into the stippling: stay-stitch beside the line before cutting.</source>
        <extracomment>stippling: the quilting inside a block&apos;s stitched outline; stay-stitch: a row of stitches that holds a cut</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A corner of %1 is tight for folded binding; it eases round from %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hanging over by only %1, the edge will stick out stiffly; it falls well from %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The corners hang %1 past the round table and will stick out; they fall well from %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the cut edge still square to the fold?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cross line lies on the fold, the edge just inside both ragged ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line touches at both ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back wrong side up, batting, front right side up, smoothed from the middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every tick measured from the one zero end, never from the tick before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pins out of the hoop, cord clear, bobbin full enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off the hoop, pressed and ten minutes rested before measuring.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both ends square to the band’s long edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the gap between the allowances and the distance between the two seams on the back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The web is on the wrong side of the patch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close to the stitches, the topmost patch first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift and set down, front first, then the back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing lies underneath.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line lies on the outer stitches at both corners, not on the echo line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each join stands in the middle of a block, never at a crossing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batting and back peeled off, no stitching in the piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both strips are caught along the whole seam.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All rows are alike in length, or nearly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A mark meets each short sashing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backing lies flat and is held.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turned, corners out, the opening closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No join lands on a corner or a sashing’s end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both diagonals are alike.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As many pins out as went in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the blade between cuts. Roll away from you. Fingers behind the edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strong magnets pinch. Keep them 6 in (15 cm) and more from pacemakers and other implants, away from children, cards and this tablet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pins out of the hoop? Cord, hair and sleeves clear?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Iron on its stand, off afterwards; steam burns.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spray by an open window, away from flame.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hoop flat on the table, machine stopped, scissor points up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not a hot mat. Keep it 12 in (30 cm) from candles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count the pins in and count them out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the stitched outline</source>
        <extracomment>the block&apos;s outer stitched line</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cut edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fold on a line of the mat, the cut along another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; with a cross line on the fold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the mat&apos;s lines: %1 from %2, at both ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; with its %2 line on %3, &quot;%4&quot; against it.</source>
        <extracomment>two rulers laid side by side; &quot;%1&quot; and &quot;%4&quot; are their names</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; with its %2 line on %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop the blade, slide the ruler along, go on.</source>
        <extracomment>fence: the ruler the blade follows, shorter than the cut</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut along the second; no daylight between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 layers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>: %1 by %2.</source>
        <extracomment>width by length of a piece</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(For the trial.)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Square the end of %1 to its fold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut a hoop strip of %1.</source>
        <extracomment>hoop strip: the strip of cloth that goes through the hoop, several blocks to a strip</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut a sashing band of %1.</source>
        <extracomment>band: a strip as long as the cloth is wide, cut across later into sashings</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut a short sashing from a band of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut a long sashing from a band of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut a piece of a long sashing from a band of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sew the pieces to one long sashing of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut a short sashing of %1 from a gap piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut a patch of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut a binding strip of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut the backing of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut a square of %1 for bias binding.</source>
        <extracomment>bias: cut slantwise, for a binding that goes round curves</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Layer back, batting and front: one hoop strip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the strip&apos;s centre line and its places.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stitch the test block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the test block&apos;s outline, both ways.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the test join and measure it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stitch a block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim the patches with scissors, the topmost first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press the block, now that its patches are trimmed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press the test block and let it rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut the strip apart down the middle of each gap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim the block&apos;s four sides, measuring from the stitched outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join two blocks with a short sashing: sew, press, sew, fold, stitch in the ditch.</source>
        <extracomment>ditch: the line where the sashing meets the block</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the row&apos;s length.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join two rows with a long sashing, mark to mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay the backing and hold it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sew front to back, turn it out and close it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Square the piece, measuring from its sashings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sew the binding on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a last look: pins counted, threads gone, measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Square the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strip %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short sashing %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long sashing %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Patch %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Binding strip %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backing %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Square for bias %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test block %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test block, measuring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test join</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block %1 of %2, patches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block %1 of %2, pressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test block, pressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block %1 of %2, apart</source>
        <extracomment>a block still in its strip is cut off it, roughly</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short join %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long join %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece %1 of %2, squaring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece %1 of %2, binding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece %1 of %2, last look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut, blade closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight, blade closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sewn and pressed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Layered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stitched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tried and measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All trimmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trimmed, blade closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Joined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turned and closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squared, blade closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All is well</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cloth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit</source>
        <extracomment>station: deciding table, blocks, hoop and edge</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shop</source>
        <extracomment>station: what to buy</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hoop</source>
        <extracomment>station: stitching in the hoop</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side cut</source>
        <extracomment>one of a block&apos;s four sides was cut</extracomment>
        <translation>côté coupé</translation>
    </message>
</context>
<context>
    <name>WorkedFigure</name>
    <message>
        <source>show the working</source>
        <extracomment>what pressing a figure does</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WorkingSheet</name>
    <message>
        <source>along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the sum before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the work</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WorkingTab</name>
    <message>
        <source>show the working</source>
        <extracomment>opens the sum behind a figure</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WrongSheet</name>
    <message>
        <source>Here is what that means</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What went wrong?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They disagree: measure the block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On with the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::Backups</name>
    <message>
        <source>Backup</source>
        <extracomment>the name of a file with everything in it</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing the backup…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to %1 and read back: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are projects on the shelf. A backup is put back where nothing is yet: on a new tablet, or after a new start with an empty folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of it lies ready. Close Matside and open it again: then it is on the shelf.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::BlockLog</name>
    <message>
        <source>Block %1</source>
        <extracomment>%1 is a block&apos;s name, &quot;A1&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strip %1, place %2</source>
        <extracomment>where a block was stitched: the strip&apos;s number and the block&apos;s place on it</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned {%1} × {%2}</source>
        <extracomment>the size the stitched outline should have, along and across</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::BlockMeasure</name>
    <message>
        <source>%1 is too small for the others: make it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common size %1: trim to %2; the piece finishes %3 × %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is cut already for another size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the table %1 and %2 stay clear.</source>
        <extracomment>table: %1 and %2 are what is left of the table at the sides and at the ends</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long sashings %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 shows its stitched line by %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 loses %2 a side into the seams.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::EdgeModel</name>
    <message>
        <source>A count of pins lies between 0 and %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A corner’s radius is more than nothing and no more than %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top, %1 from the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right, %1 from the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom, %1 from the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left, %1 from the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin and close: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join %1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First cut %1 off strip %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No join falls on a corner or a sashing end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the sashing ends there is no room for a join: the joins keep clear of the corners alone. Narrower binding would fit.</source>
        <extracomment>so: with joins as wide as they are</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sides are too short to keep the joins off the corners. Press every join open, and grade it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This takes one strip more, %1 in all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hang %1 loose before the beginning, and as much at the end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sew with the edge, not stretching it: ease the bias round each corner. Close it with an overlap of %1, ends crossed at a right angle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At a corner stop %1 from the edge, fold the strip up at 45°, then down level with the edge. Close with an overlap of exactly %2, ends crossed at a right angle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Square corners, mitred.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corners of %1. The edge is %2 round: cut %3 of bias from a square of %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The arc cuts %1 into the stippling: stay-stitch beside the line before cutting. Up to %2 it would clear it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is tight for folded binding, which eases round from %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks out with cold water before any heat. Wash cool and gently, dry it flat or cool, press from the back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Small quilts and pillows do not go in a sleeping baby’s cot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label: on the back, lower right. Title, maker, date, size, fibre, how to wash.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To hang it: a sleeve tacked on by hand, so that it comes off again, cut %1 to %2 wide and %3 to %4 long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To hang it: a sleeve on the back, cut %1 to %2 wide and %3 to %4 long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As a pillow: for a form of %1 × %2, with an envelope back of two pieces %3 × %4.</source>
        <extracomment>envelope back: two pieces that overlap, between which the pillow is put in</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squaring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Binding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along, and %1 across, raw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along, and %1 across, finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of bias, cut %1 wide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %1 strips, cut %2 wide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The readings disagree by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Square within %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top and bottom differ by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left and right differ by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The diagonals differ by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay it flat and measure again. Do not cut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, %3, %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim it plainly, in this order: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ease it with steam and measure again, or square it smaller: the largest true piece is %1 × %2. Trim in this order: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round the edge it is %1 less than planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round the edge it is %1 more than planned; the binding strips reach.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round the edge it is %1 more than planned: cut the bias that much longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round the edge it is %1 more than planned: cut one binding strip more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The binding is cut: the corners stay as they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count the pins and needles that went in, and those that came out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pins were used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They differ, and you know why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As many out as in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n still in it: feel along every seam, both faces.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>More came out than went in: count again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::FieldsModel</name>
    <message>
        <source>%1 by %2</source>
        <extracomment>a ruler&apos;s length and width</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::FitModel</name>
    <message>
        <source>This cannot be changed here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::Gallery</name>
    <message>
        <source>to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stitched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>joined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::HoopModel</name>
    <message>
        <source>Strip %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, flat cloth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, as drawn in by the stitching</source>
        <extracomment>the strip is shorter now: stitching has drawn the cloth in</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre %1</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;: the middle of the block, to be ticked on the strip</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 starts</source>
        <extracomment>gap: cloth between two outlines on the strip</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the last outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the zero end</source>
        <extracomment>zero end: the end of the strip everything is measured from</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next centre %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next outline starts at %1; the plan expected %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan expects the next outline to start at %1 on the drawn-in cloth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block %1 no longer fits: %2 short.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sew a waste tail to the far end,</source>
        <extracomment>tail: a waste strip sewn to the end so that the frame has cloth to hold</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take a gap of %1,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>or carry it to the next strip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is carried to the next strip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last outline ends between %1 and %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stippling</source>
        <extracomment>stippling: quilting in a wandering line that fills the ground</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>echo</source>
        <extracomment>echo: a line stitched at a distance round the patches</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the outer line, last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bobbin: not enough on one for a block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bobbin: change it before this block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bobbin: for 1 more block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bobbin: for %1 more blocks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About %1 minutes a block, by your own last blocks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About %1 minutes a block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. About %2 stitches and %3 m of thread, %4 m of it from the bobbin.</source>
        <extracomment>stitches and metres of thread one block takes</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Send %1 × %2 mm to the machine (%3 % × %4 %).</source>
        <extracomment>the size given to the machine, larger than the block because stitching draws it in</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A gap of %1 would yield short sashings: %2 pairs.</source>
        <extracomment>gap: cloth between two outlines on the strip; shorts: short sashings between two blocks</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It costs nothing: the strip has the room.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It costs %1 of %2 blocks on each strip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With waste tails at both ends it would cost none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Widen one gap of each strip: costs no block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Widen %1 gaps of each strip: costs no block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your blocks draw up by %1 % along and %2 % across. Take that for the blocks to come?</source>
        <extracomment>draw-up: how much the stitching shrinks the block</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::HoopShelf</name>
    <message>
        <source>The hoops could not be saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hoop %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure its field and its outside first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The block is %1 too large for its field.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The block fits, with %1 to spare.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No block goes on a strip with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strips %1 wide, %2 blocks on each; %3 strips take %4 of each layer.</source>
        <extracomment>hoop strips: width, how many blocks on each, how much cloth of each layer</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new hoop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be changed now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hoop measures between nothing and two metres.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::JoinModel</name>
    <message>
        <source>Swap %1 and %2: %1 is %3 off size, and such blocks stand best together in an end column.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swap %1 and %2: %1 is %3 off size, which shows least at an end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swap %1 and %2: %1 is nearest to its size, and the middle is looked at most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The blocks lie well as they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to swap here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is sewn already stays where it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That block is not made yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>two blocks&apos; names, &quot;B2&quot;: the first is sewn to the second with a sashing between</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its raw length, as planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fold under</source>
        <extracomment>fold under: how much of the back strip is turned under before it is sewn down</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>visible sashing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first row sets the marks and the long sashings: %1 against %2 planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This row lies within %1 of the others: leave it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This row is %1 off the mean. Ease it: up to %2 goes in over %3 blocks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This row is %1 off the mean, more than the %2 that easing takes: take one seam of it anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to measure here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A row of %1 blocks measures about %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test join: the allowances overlap by %1.</source>
        <extracomment>the two allowances inside a sashing lie over each other</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test join: a gap of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test join: the allowances meet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front strips are cut %1 wide, sewn with %2 as before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That may stay. Sewn with %1 it would be just right; the plan goes by that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sew with %1 from here on; the plan goes by that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sashing will be seen %1 wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So scant a seam leaves the outline %1 in view. If that shows, trim the blocks with the %2 line on the outline, and sew as planned.</source>
        <extracomment>outline: the block&apos;s outer stitched line</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The test join itself needs no unpicking: pare %1 off each allowance, which leaves %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not pare the allowances of the test join: too little would hold it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut strips %1 instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no other way now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press the front strip open, away from the first block; then the back strip over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press the strip open, away from the first block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each crossing holds 8 cloths and the batting, against 4: pare the batting from the last %1 of the short sashings, clip their folded part to a slant, press hard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crossings are thick: press hard and turn the wheel by hand over them.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::OpenFiles</name>
    <message>
        <source>The file cannot be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file needs a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a file “%1” already, and it was left as it is. Choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file could not be written: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file could not be written to %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::PhotoSource</name>
    <message>
        <source>The camera is gone. Nothing was lost: plug it in again, or choose a picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The camera does not answer. Nothing was lost: try again, or choose a picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The camera could not take the picture. Nothing was lost: try again, or choose one.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::PriceModel</name>
    <message>
        <source>What you reckon with could not be saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be changed now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An amount up to a million, with two decimals at most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between 0 and 300 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This cannot be changed here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cloth cut off, at its price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thread, web, needles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 hours at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 overhead</source>
        <extracomment>overhead: machine, room, light, tools; %1 a percentage</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 margin: the price</source>
        <extracomment>margin: what is left for the business; %1 a percentage</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a square inch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a square decimetre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what an hour of your work is worth, and it is counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a price, so not counted: %1. Enter prices at Fit, with the cloths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The minutes at the machine are your own; trimming, joining and edging are usual ones.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hours are usual ones; log three blocks with their minutes and yours are taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asking %1 pays for all your time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asking %1 leaves %2 hours you will not be paid for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an hour of your work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overhead</source>
        <extracomment>overhead: machine, room, light, tools</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>margin</source>
        <extracomment>margin: what is left for the business</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>if you ask</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::Session</name>
    <message>
        <source>Matside is open elsewhere: here you can look, but not change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder cannot be written: you can look, but not change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file of projects is damaged. What can be read is shown; nothing is written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much of it is left?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::Sharing</name>
    <message>
        <source>Piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing the file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to %1. The photographs in it do not say where or with what they were taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to %1. Print it at its true size.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::Shelf</name>
    <message>
        <source>Finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The demo cannot be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A project needs a name. The old one was kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, in millimetres</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::ShopModel</name>
    <message>
        <source>%1 × %2</source>
        <extracomment>so many strips of one width: &quot;3 × 11 3/4 in&quot;</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, and %2 to straighten</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A piece is wider than this cloth: it has to be pieced, and no least length is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proven least: no way of cutting buys less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most %1 % above the least possible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Waste %2 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All cloths: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cloths with a price: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For %1 blocks about %2 m of thread, %3 bobbins wound, %4 needles.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>matside::StepModel</name>
    <message>
        <source>sent, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sent, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured outline, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured outline, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seam, as sewn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap between the allowances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>distance between the seams, on the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 must be more than nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to measure here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That could not be saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be changed now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First mend what Fit says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pins first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First trim all its patches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything is done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next, at %1: %2</source>
        <extracomment>%1 is a station&apos;s name, %2 what is to be done there</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You were at: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Did you finish this?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That could not be recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That cannot be less than nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By these measures: %1 hoop strips of %2 blocks, before %3 of %4. Look at Shop again.</source>
        <translation>Avec ces mesures : %1 bandes à broder de %2 blocs, avant %3 de %4. Revoir les achats.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <extracomment>one of a row of figures: its name and its number, &quot;centre on the strip 2&quot;</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Turn the cloth round: its cut edge to your right.</source>
        <translation>Tourner le tissu : bord coupé à droite.</translation>
    </message>
    <message>
        <source>Turn the cloth round: its cut edge to your left.</source>
        <translation>Tourner le tissu : bord coupé à gauche.</translation>
    </message>
    <message>
        <source>First stitch all its blocks: %1 more</source>
        <extracomment>the strip that would be cut apart holds %1 blocks that are not stitched yet</extracomment>
        <translation>D’abord broder tous ses blocs : encore %1</translation>
    </message>
</context>
<context>
    <name>matside::TrimModel</name>
    <message>
        <source>on the outer stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on cut side 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on cut side 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cross line through the outline’s corner. The outer line, not the echo line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the block a quarter, never over. A cross line on side 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side %1 of 4</source>
        <extracomment>%1 is a block&apos;s name, &quot;B2&quot;; %2 counts its four sides</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, side %2 of 4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side %1 cut, blade closed</source>
        <extracomment>the blade has cut this side and is closed again</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn it a quarter again. Both readings must agree.</source>
        <translation>Encore un quart de tour. Les deux lectures doivent concorder.</translation>
    </message>
    <message>
        <source>Turn it once more. Both must agree, a cross line on side 1 or 3.</source>
        <translation>Tourner encore. Les deux doivent concorder, une ligne en travers sur le côté 1 ou 3.</translation>
    </message>
</context>
<context>
    <name>matside::WouldFit</name>
    <message>
        <source>Between 1 and %1 blocks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It must be more than nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This cannot be changed here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2 blocks of %3</source>
        <extracomment>columns × rows blocks of a size</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{%1} × %2</source>
        <extracomment>along × across</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 over</source>
        <extracomment>the piece hangs over the table&apos;s edge by so much</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 bare</source>
        <extracomment>so much of the table shows beside the piece</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 all round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at the ends, %2 at the sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corners %1 over</source>
        <extracomment>on a round table: the corners lie so far from its edge</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corners %1 inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>washed %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 blocks, %2 strips, %3 hours</source>
        <extracomment>blocks, hoop strips they are stitched on, hours of work</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sashing %1.</source>
        <extracomment>sashing: the strip between two blocks</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the hoop “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strips take %1 a layer.</source>
        <extracomment>cloth of each layer for the hoop strips</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to make, before washing, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hangs over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over at each end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bare at each end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At each end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over at each side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bare at each side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At each side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finished, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finished, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>washing takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smallest block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>largest block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by quarters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by 5 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on every mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wider sashing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to 1/8 in more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to 3 mm more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blocks at most</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
