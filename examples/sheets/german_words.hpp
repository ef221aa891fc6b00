// What the three projects say themselves, in German: for the rest see turncloth/handout/german.hpp. Names of pieces and
// cloths stay as they are.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_GERMAN_WORDS_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_GERMAN_WORDS_HPP

#include <turncloth/measure/language.hpp>

namespace allotment {

inline turncloth::phrase_table own_words_in_german() {
    return {
        {"foot of a film strip", "Fuß eines Folienstreifens"},
        {"foot of the pocket strip", "Fuß des Taschenstreifens"},
        {"end of the zipper's opening", "Ende der Reißverschlussöffnung"},
        {"zipper between the base halves", "Reißverschluss zwischen den Bodenhälften"},
        {"middle of the tie", "Mitte des Bindebands"},
        {"quarter fold", "Viertelbruch"},
        {"between two tools", "zwischen zwei Werkzeugen"},
        {"each stands open, in its middle, by", "jede steht in der Mitte offen um"},
        {"each tool pocket, between its rows", "jede Werkzeugtasche, zwischen ihren Nähten"},
        {"longest tool, when the upper half is folded over it",
         "längstes Werkzeug, wenn die obere Hälfte darübergelegt wird"},
        {"kept: How much {1} to buy is left open: {=2}", "Wie viel {1} einzukaufen ist, bleibt offen: {=2}"},
        {"kept: How much {1} to buy is left open: {2} is {3} wide, {4} more than the usable width of {5}; turning it "
         "does not help",
         "Wie viel {1} einzukaufen ist, bleibt offen: „{2}“ ist {3} breit, {4} mehr als die nutzbare Breite von {5}; "
         "Drehen hilft nicht"},
        {"kept: How much {1} to buy is left open: {2} is {3} wide, {4} more than the usable width of {5}; given a "
         "quarter turn it would fit",
         "Wie viel {1} einzukaufen ist, bleibt offen: „{2}“ ist {3} breit, {4} mehr als die nutzbare Breite von {5}; "
         "um ein Viertel gedreht würde es passen"},
        {"kept: No piece is cut from the {1} on hand", "Aus dem vorhandenen „{1}“ wird kein Teil zugeschnitten"},
        {"kept: No piece is cut from the {1} that a width is given for",
         "Aus „{1}“, wofür eine Breite angegeben ist, wird kein Teil zugeschnitten"},
        {"The whole order", "Der ganze Auftrag"},
        {"filling", "Füllung"},
        {"or instead, layers of wadding of that size", "oder stattdessen Lagen Vlies dieser Größe"},
        {"thickness of each layer before it is knelt on", "Dicke jeder Lage, bevor darauf gekniet wird"},
        {"ribbon to buy, cut off the reel", "Band zu kaufen, von der Rolle"},
        {"width of the ribbon", "Breite des Bands"},
        {"zipped pocket near the top, width of the largest flat packet",
         "Reißverschlusstasche oben, Breite des größten flachen Päckchens"},
        {"zipped pocket, width of the largest flat packet",
         "Reißverschlusstasche, Breite des größten flachen Päckchens"},
        {"A cover that is loose on its pad slides: kneel on it only where it fills out every corner.",
         "Ein Bezug, der locker auf dem Kissen sitzt, rutscht: nur darauf knien, wenn jede Ecke ausgefüllt ist."},
        {"first cord, in at the left, through both casings and out at the left again, and knot its ends",
         "erste Kordel, links hinein, durch beide Tunnel und links wieder heraus, Enden verknoten"},
        {"second cord, in at the right, through both casings and out at the right again, and knot its ends",
         "zweite Kordel, rechts hinein, durch beide Tunnel und rechts wieder heraus, Enden verknoten"},
        {"Wash the bag before food goes into it, and let it dry: damp cloth grows mould.",
         "Den Beutel waschen und trocknen, bevor Lebensmittel hineinkommen: feuchter Stoff schimmelt."},
        {"Carry it by both straps at once, and set it down to fill it: wet trays are heavy.",
         "Immer an beiden Gurten zugleich tragen und zum Füllen abstellen: nasse Schalen sind schwer."},
        {"light patches, cut from strips", "helle Flicken, aus Streifen geschnitten"},
        {"pieced squares", "zusammengesetzte Quadrate"},
        {"buttonholes, their middles from the finished left edge", "Knopflöcher, Mitten ab fertiger Kante links"},
        {"cushion pad", "Kissenfüllung"},
        {"pad, width", "Füllung, Breite"},
        {"pad, height", "Füllung, Höhe"},
        {"Sew buttons on so that none comes off, and keep the cushion from children under three, who choke on small "
         "parts.",
         "Knöpfe so annähen, dass sich keiner löst, und das Kissen von Kindern unter drei Jahren fernhalten, die an "
         "Kleinteilen ersticken können."},
        {"Lay each light square to halve on a dark one, right sides together. Draw a line from corner to corner, sew "
         "as far from it on either side as the patches' seams are wide, and cut along it: two pieced squares. Press "
         "their seams toward the dark cloth, and trim each square to the size that its figures say, its corners on "
         "the seam. The figures for thread leave this out.",
         "Jedes helle Quadrat rechts auf rechts auf ein dunkles legen. Eine Linie von Ecke zu Ecke zeichnen, auf "
         "beiden Seiten in der Nahtbreite der Flicken daneben steppen und auf der Linie durchschneiden: zwei "
         "zusammengesetzte Quadrate. Die Nähte zum dunklen Stoff hin bügeln und jedes Quadrat auf das Maß "
         "beschneiden, das bei ihm angegeben ist, die Ecken auf der Naht. In den Garnmaßen ist das nicht enthalten."},
        {"Work three buttonholes in the middle of the hem of the upper back and along it, as long and where the "
         "buttons' figures say.",
         "Drei Knopflöcher in die Mitte des Saums am oberen Rückteil und längs dazu arbeiten, so lang und dort, wo die "
         "Knopfmaße es angeben."},
        {"filling, a scoop at a time", "Füllung, Schaufel um Schaufel"},
        {"It lies where people walk: lift it away before the door is opened, and never lay it before a door that is a "
         "way out in a fire, nor before a stove that draws its air under the door.",
         "Sie liegt, wo man geht: weglegen, bevor die Tür geöffnet wird, und nie vor eine Tür legen, die im Brandfall "
         "ein Ausgang ist, noch vor einen Ofen, der seine Luft unter der Tür hindurch zieht."},
        {"gap", "Lücke"},
        {"width of the heading tape", "Breite des Kräuselbands"},
        {"Woven shade cloth is plastic and melts: crease it by hand or with a blunt tool, and keep the iron away.",
         "Schattiergewebe ist Kunststoff und schmilzt: von Hand oder mit einem stumpfen Werkzeug falzen und das "
         "Bügeleisen fernhalten."},
        {"A curtain in the wind pulls: hang it from a rail that is fixed to the frame, not to the glass, and draw it "
         "back in a storm.",
         "Ein Vorhang im Wind zieht: an einer Schiene aufhängen, die am Rahmen und nicht am Glas befestigt ist, und "
         "bei Sturm zurückziehen."},
        {"Hold each join of the curtain's widths up to the light, and crease its allowances apart by hand.",
         "Jede Naht zwischen den Bahnen des Vorhangs gegen das Licht halten und die Zugaben von Hand "
         "auseinanderstreichen."},
        {"Overcast the ends of the heading tape before it is sewn on. The flat at either end of the heading goes round "
         "the corner to the frame, or lies under the next curtain.",
         "Die Enden des Kräuselbands umnähen, bevor es aufgenäht wird. Das glatte Stück an jedem Ende des Kopfs geht "
         "um die Ecke zum Rahmen oder liegt unter dem nächsten Vorhang."},
        {"Lay each pleat in the middle of its part, so that the same flat is left between any two, and pin it.",
         "Jede Falte in die Mitte ihres Abschnitts legen, damit zwischen je zweien gleich viel glatt bleibt, und "
         "feststecken."},
        {"band in place of a hem, sewn on", "Streifen anstelle eines Saums, angenäht"},
        {"band in place of a hem, brought over", "Streifen anstelle eines Saums, umgelegt"},
        {"width of the webbing", "Breite des Gurtbands"},
        {"Where the panel's hems cross and at the ends of its band ten layers meet: hammer them flat, and turn the "
         "handwheel by hand there, or sew it by hand.",
         "Wo sich die Säume kreuzen und an den Enden des Streifens treffen zehn Lagen aufeinander: flach hämmern und "
         "dort das Handrad von Hand drehen oder von Hand nähen."},
        {"Mended cloth is weaker than new: look at a patch and its rows before each use.",
         "Geflicktes ist schwächer als Neues: Flicken und Nähte vor jedem Gebrauch ansehen."},
        {"The hole stands for damage that was cut away to a rectangle, along the threads. For another hole, cut the "
         "patch and its facing as much wider and higher than these as that hole is.",
         "Das Loch steht für einen Schaden, der fadengerade zu einem Rechteck ausgeschnitten wurde. Für ein anderes "
         "Loch Flicken und Gegenstück um so viel breiter und höher zuschneiden, wie jenes Loch es ist."},
        {"Fill the square of rows sewn by hand with running stitches down, then weave across them, over one thread and "
         "under the next, in as many rows each way as the darn's figures say. Leave a small loop at every turn, and "
         "make no knot.",
         "Das Quadrat aus Handnähten mit Vorstichen senkrecht füllen, dann quer weben, über einen Faden und unter den "
         "nächsten, in jeder Richtung so viele Reihen, wie die Maße der Stopfstelle sagen. An jeder Wende eine kleine "
         "Schlinge lassen und keinen Knoten machen."},
        {"table that it hangs over on every side, width", "Tisch, über den sie ringsum hängt, Breite"},
        {"table that it hangs over on every side, height", "Tisch, über den sie ringsum hängt, Höhe"},
        {"hanging over", "Überhang"},
        {"Slip-stitch each mitre from the corner to the hem's inner edge, through the hem alone.",
         "Jede Gehrung von der Ecke bis zur inneren Saumkante mit Saumstichen schließen, nur durch den Saum."},
        {"A cloth that hangs low is pulled down with all that stands on it: keep hot dishes and flames off it where "
         "small children or animals are.",
         "Eine Decke, die tief hängt, wird mit allem heruntergezogen, was darauf steht: wo kleine Kinder oder Tiere "
         "sind, keine heißen Schüsseln und keine Flammen daraufstellen."},
        {"waist tape, in at one end of the casing and out at the other",
         "Taillenband, an einem Ende des Tunnels hinein und am anderen heraus"},
        {"width of the tape", "Breite des Bands"},
        {"Where the hems of the apron and of its flaps cross nine layers meet: hammer them flat, and turn the "
         "handwheel by "
         "hand there.",
         "Wo sich die Säume der Schürze und ihrer Patten kreuzen, liegen neun Lagen: flach hämmern und dort das "
         "Handrad "
         "von Hand drehen."},
        {"Put blades into their sheaths before they go into a slot, points down, and take them out before you kneel or "
         "sit: a point works its way through cloth.",
         "Klingen vor dem Einstecken in ihre Hülle tun, die Spitze nach unten, und vor dem Knien oder Sitzen "
         "herausnehmen: Eine Spitze arbeitet sich durch Stoff."},
        {"gap in the bottom", "Lücke in der Unterkante"},
        {"piping", "Paspel"},
        {"corner", "Ecke"},
        {"zipper in the back strip", "Reißverschluss im hinteren Streifen"},
        {"button and tab", "Knopf und Lasche"},
        {"back ties", "Bindebänder hinten"},
        {"button, thickness", "Knopf, Dicke"},
        {"tab, finished length", "Lasche, fertige Länge"},
        {"interfacing, from the cut left edge of the tab", "Einlage, ab der linken Schnittkante der Lasche"},
        {"interfacing, from the cut top edge of the tab", "Einlage, ab der oberen Schnittkante der Lasche"},
        {"Iron or tack the interfacing onto the wrong side of the tab while it is flat, as far from its cut left and "
         "top edges as the figures of the button and tab say.",
         "Die Einlage auf die linke Seite der Lasche bügeln oder heften, solange diese flach liegt, so weit von ihrer "
         "linken und oberen Schnittkante, wie die Maße von Knopf und Lasche sagen."},
        {"Work one buttonhole through the tab, in the middle of its width and along it, from its left end as the "
         "figures of the button and tab say.",
         "Ein Knopfloch durch die Lasche arbeiten, in der Mitte ihrer Breite und längs zu ihr, von ihrem linken Ende, "
         "wie die Maße von Knopf und Lasche sagen."},
        {"Fold the tails of the ties to the middle of the back strip and pin them there, and pin the tab down, clear "
         "of every edge, until the cover is turned out: no seam is to catch them.",
         "Die Enden der Bindebänder zur Mitte des hinteren Streifens legen und dort feststecken, und die Lasche "
         "niederstecken, fern von jeder Kante, bis der Bezug gewendet ist: Keine Naht darf sie fassen."},
        {"Take the pins out of the ties and the tab. Fold the tab back over the box that holds it: it reaches past the "
         "corner, to the button of the next cushion.",
         "Die Nadeln aus den Bindebändern und der Lasche nehmen. Die Lasche über den Kasten zurücklegen, der sie hält: "
         "Sie reicht über die Ecke bis zum Knopf des nächsten Kissens."},
        {"Zipped half 1 is the lower half of the strip along the back, and zipped half 2 the upper one.",
         "„zipped half 1“ ist die untere Hälfte des Streifens an der Rückseite, „zipped half 2“ die obere."},
        {"Side strip 1 goes along the left of the cushion as you stand before it, and side strip 2 along the right.",
         "„side strip 1“ kommt an die linke Seite des Kissens, wenn man davor steht, „side strip 2“ an die rechte."},
        {"The boxing strip goes round the left side, the front and the right side of the cushion as you stand before "
         "it: with its right side up, its left end comes to the back of the left side.",
         "„boxing strip“ läuft um die linke Seite, die Vorderseite und die rechte Seite des Kissens, wenn man davor "
         "steht: mit der rechten Stoffseite oben kommt sein linkes Ende an das hintere Ende der linken Seite."},
        {"Tie the cushion down before anyone sits on it: a loose one slides off a smooth bench, and who sits on it "
         "with it.",
         "Das Kissen festbinden, bevor sich jemand daraufsetzt: Ein loses rutscht von einer glatten Bank, und wer "
         "darauf sitzt, mit ihm."},
        {"seam of the strip, clipped at each corner from its cut edges",
         "Zugabe des Streifens, an jeder Ecke von der Schnittkante her eingeschnitten"},
        {"Join the piping strips to one: lay the end of one square across the end of the next, right sides together, "
         "sew from corner to corner, trim beside that row and press it open.",
         "Die Paspelstreifen zu einem verbinden: das Ende des einen rechtwinklig über das des nächsten legen, rechts "
         "auf rechts, von Ecke zu Ecke nähen, neben dieser Naht zurückschneiden und sie auseinanderbügeln."},
        {"Mark on the joined strip where its corners come, as the figures of the piping say. What the steps call the "
         "piping along an edge is a stretch of this one strip: it begins in the middle of the top edge and goes on to "
         "the right, so that the other half of the top edge is sewn last.",
         "Auf dem verbundenen Streifen anzeichnen, wo seine Ecken hinkommen, wie es die Maße der Paspel sagen. Was in "
         "den Schritten „piping along ...“ heißt, ist ein Stück dieses einen Streifens: Er beginnt in der Mitte der "
         "Oberkante und läuft nach rechts, so dass die andere Hälfte der Oberkante zuletzt genäht wird."},
        {"Lay the cord into the fold before the strip is sewn on, and sew close beside the cord. At each corner clip "
         "the strip's seam as deep as its figures say, leave the needle down and turn. Where the strip comes round to "
         "its beginning, cut the cord so that its ends meet, turn the end of the strip in and lap it over.",
         "Die Kordel in den Bruch legen, bevor der Streifen angenäht wird, und dicht neben ihr nähen. An jeder Ecke "
         "die Zugabe des Streifens so tief einschneiden, wie seine Maße sagen, die Nadel unten lassen und drehen. Wo "
         "der Streifen wieder an seinem Anfang ankommt, die Kordel so abschneiden, dass ihre Enden aneinanderstoßen, "
         "das Ende des Streifens einschlagen und überlappen lassen."},
        {"Pin the outer on, and turn the work over: the rows along its edges are sewn with the lining up, on those "
         "that hold the piping.",
         "Das Außenteil feststecken und die Arbeit umdrehen: Die Nähte an seinen Kanten werden mit dem Futter nach "
         "oben genäht, auf denen, die die Paspel halten."},
        {"Cut across the allowances of the four corners, clear of the seams.",
         "Die Zugaben der vier Ecken schräg abschneiden, ohne die Nähte zu treffen."},
        {"Take the pebbles out before you roll it up or carry it: swung in cloth, a stone hurts.",
         "Die Kiesel herausnehmen, bevor die Decke aufgerollt oder getragen wird: in Stoff geschwungen verletzt ein "
         "Stein."},
        {"between two pockets", "zwischen zwei Taschen"},
        {"pockets in a row", "Taschen in einer Reihe"},
        {"each pocket, between its rows", "jede Tasche, zwischen ihren Nähten"},
        {"depth of the upper pockets", "Tiefe der oberen Taschen"},
        {"depth of the lower pockets", "Tiefe der unteren Taschen"},
        {"cane, across", "Rohrstab, Durchmesser"},
        {"cane, length", "Rohrstab, Länge"},
        {"channel that it goes through, as it lies flat", "Tunnel, durch den er geht, flach liegend"},
        {"upper edge of a pocket strip", "Oberkante eines Taschenstreifens"},
        {"pockets", "Taschen"},
        {"depth of each", "Tiefe einer jeden"},
        {"rail that they go round, across", "Stange, um die sie gehen, Durchmesser"},
        {"gap under the rail", "Abstand unter der Stange"},
        {"Number the pocket strips while they lie flat, before they are sewn on: one number in the "
         "middle of each part that their marks show, from 1 at the left of the uppermost strip to "
         "24 at the right of the lowest.",
         "Die Taschenstreifen beziffern, solange sie flach liegen und noch nicht aufgenäht sind: "
         "eine Zahl in die Mitte jedes Teils, den ihre Markierungen zeigen, von 1 links auf dem "
         "obersten Streifen bis 24 rechts auf dem untersten."},
        {"round the mouth, as it lies open", "um die Öffnung, offen liegend"},
        {"height under the neck", "Höhe unter dem Hals"},
        {"Roll up both ends of the tie and pin them to the middle of the sack, clear of every "
         "edge: no seam is to catch them.",
         "Beide Enden des Bands aufrollen und in der Mitte des Säckchens feststecken, frei von "
         "jeder Kante: Keine Naht darf sie fassen."},
        {"Unpin the tie. To close the sack, gather it in the hand where the tie is sewn on, bring "
         "both ends round to the front, and tie them in a bow.",
         "Das Band lösen. Zum Schließen das Säckchen dort, wo das Band angenäht ist, in der Hand "
         "zusammenraffen, beide Enden nach vorn führen und zur Schleife binden."},
        {"A ribbon is no toy: take the tie off before a child has the sack, and keep sacks that a "
         "child could pull over its head out of its reach.",
         "Ein Band ist kein Spielzeug: das Band abnehmen, bevor ein Kind das Säckchen bekommt, und "
         "Säcke, die ein Kind sich über den Kopf ziehen könnte, außer Reichweite halten."},
        {"strap folded in four, over", "Gurt, vierfach gefaltet, außen"},
        {"strap folded in four, inside", "Gurt, vierfach gefaltet, innen"},
        {"stiffener of the base", "Versteifung des Bodens"},
        {"board, width", "Platte, Breite"},
        {"board, depth", "Platte, Tiefe"},
        {"board, thickness", "Platte, Dicke"},
        {"gap in the lining's base", "Lücke im Boden des Futters"},
        {"Fold the straps down onto the outers and pin them there, clear of every "
         "edge, until the tote is turned out: no seam is to catch them.",
         "Die Gurte auf die Außenteile herunterlegen und dort feststecken, frei von "
         "jeder Kante, bis die Tasche gewendet ist: Keine Naht darf sie fassen."},
        {"Draw on film with a wax pencil, and within its allowances alone: ink does not come off.",
         "Auf Folie mit Fettstift zeichnen, und nur innerhalb der Zugaben: Tinte geht nicht ab."},
        {"Hang it where nobody walks into it: pegs at the height of the eyes hurt.",
         "So aufhängen, dass niemand hineinläuft: Klammern in Augenhöhe verletzen."},
        {"Overcast every cut edge of the cover, or zigzag along it, so that the allowances, which stay raw inside "
         "it, do not fray in the wash. The figures for thread leave this out.",
         "Jede Schnittkante des Bezugs umnähen oder mit Zickzack versäubern, damit die Zugaben, die innen offen "
         "bleiben, in der Wäsche nicht ausfransen. In den Garnmaßen ist das nicht enthalten."},
        {"Put each blade into its sheath before it goes into the roll: a point works its way through cloth.",
         "Jede Klinge in ihre Scheide stecken, bevor sie in die Rolle kommt: eine Spitze arbeitet sich durch Stoff."},
        {"Seed may be dressed with poison: hang the packets out of children's reach.",
         "Saatgut kann mit Gift gebeizt sein: die Päckchen außer Reichweite von Kindern hängen."},
        {"Sew the new stop to the zipper, and cut its tape, where the zipper's figures say.",
         "Den neuen Stopper an den Reißverschluss nähen und das Band abschneiden, wo die Reißverschlussmaße es "
         "angeben."},
    };
}

} // namespace allotment

#endif
