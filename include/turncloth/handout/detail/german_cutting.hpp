// German, a part of german.hpp. What to buy, to cut out and to mark.
//
//   german_cutting      key, text
#ifndef TURNCLOTH_HANDOUT_DETAIL_GERMAN_CUTTING_HPP
#define TURNCLOTH_HANDOUT_DETAIL_GERMAN_CUTTING_HPP

#include <string_view>
#include <utility>

namespace turncloth::detail {

inline constexpr std::pair<std::string_view, std::string_view> german_cutting[] = {
    {"the cloth", "Stoff"},
    {"what cut {1} took off", "was Schnitt {1} abgetrennt hat"},
    {"what cut {1} left", "was Schnitt {1} übrig ließ"},
    {"cut 0: {1}", "Schnitt 0: {1}"},
    {"cut {1}: {2}", "Schnitt {1}: {2}"},
    {"square the piece on hand to {1}, its grain along the {2}, and mark one end",
     "das vorhandene Stück rechtwinklig auf {1} schneiden, den Fadenlauf längs der {2}, und ein Ende kennzeichnen"},
    {"on hand", "vorhanden"},
    {"straighten the end of the cloth, square to its selvedges",
     "das Stoffende begradigen, rechtwinklig zu den Webkanten"},
    {"cut right across, {1} from it", "{1} davon entfernt ganz quer durchschneiden"},
    {"trim {1} off the selvedges, opposite the fold", "{1} von den Webkanten abschneiden, gegenüber dem Bruch"},
    {"trim {1} off each selvedge", "{1} von jeder Webkante abschneiden"},
    {"{1}. Pieces lie so far from the {2} of the cloth and from that end:",
     "{1}. Die Teile liegen so weit ab {2} des Stoffs und ab diesem Ende:"},
    {"{1}: that is {2}", "{1}: das ist {2}"},
    {"{1}. The near side of a part is the one that lay nearest that end",
     "{1}. Die nahe Seite eines Stücks ist die, die diesem Ende am nächsten lag"},
    {"{1}: {2} from the {3}, {4} from the end", "{1}: {2} ab {3}, {4} ab Ende"},
    {"chalk round a flaw, {1}: {2} from the {3}, {4} from the end",
     "einen Fehler im Stoff, {1}, mit Kreide umranden: {2} ab {3}, {4} ab Ende"},
    {"across {1}, {2} from its near side, on the cloth {3} from the end: takes off {4}",
     "quer ({1}), {2} ab der nahen Seite, auf dem Stoff {3} ab Ende: trennt ab: {4}"},
    {"along {1}, {2} from its left side, on the cloth {3} from the {4}: takes off {5}",
     "längs ({1}), {2} ab der linken Seite, auf dem Stoff {3} ab {4}: trennt ab: {5}"},
    {"{1} and leaves {2}", "{1}; es bleibt: {2}"},
    {"a part {1}", "ein Stück {1}"},
    {"a left-over {1}", "ein Rest {1}"},
    {"What to buy, as shops sell it", "Was einzukaufen ist, wie es verkauft wird"},
    {"Have it", "Da"},
    {"What", "Was"},
    {"How much", "Wie viel"},
    {"Which", "Welche Sorte"},
    {"{1} wide, or wider", "{1} breit oder breiter"},
    {"how much {1}", "wie viel {1}"},
    {"for the pieces below", "für die Teile unten"},
    {"off the roll", "von der Rolle"},
    {"Price", "Preis"},
    {"Price, {1}", "Preis, {1}"},
    {"what {1} costs", "was {1} kostet"},
    {"{1} x {2} = {3}", "{1} × {2} = {3}"},
    {"In all {1}{2}. Each line is rounded to {3}, and the sum is that of the lines.",
     "Zusammen {1}{2}. Jede Zeile ist auf {3} gerundet, und die Summe ist die der Zeilen."},
    {", for {1} of {2} lines: add the others", ", für {1} von {2} Zeilen: die übrigen kommen dazu"},
    {"Every piece, as it is cut: its allowances are in these sizes",
     "Alle Teile im Zuschnitt: die Zugaben sind in diesen Maßen enthalten"},
    {"Letter", "Buchstabe"},
    {"Piece", "Teil"},
    {"How many", "Anzahl"},
    {"Cloth", "Stoff"},
    {"Width x height", "Breite × Höhe"},
    {"Grain", "Fadenlauf"},
    {"within {1}", "innerhalb {1}"},
    {"either way", "beliebig"},
    {"all such along the height, or all across", "alle solchen in der Höhe oder alle quer"},
    {"as drawn", "wie gezeichnet"},
    {"along the height", "in der Höhe"},
    {"along the height, all tops one way", "in der Höhe, alle Oberkanten in eine Richtung"},
    {"along the height, the middle on the fold", "in der Höhe, die Mitte am Stoffbruch"},
    {"{1}; cut {2} before it is washed", "{1}; vor dem Waschen {2} zuschneiden"},
    {"{1}; cut in parts, from the left {2} wide, of each {3} for a join",
     "{1}; in Teilen zuschneiden, von links {2} breit, davon je {3} für eine Naht"},
    {"kept: parts that make up the {1}", "Teile, aus denen „{1}“ zusammengesetzt wird"},
    {"kept: {1}, cut width", "{1}, zugeschnittene Breite"},
    {"kept: {1}, allowance of each join", "{1}, Zugabe an jeder Verbindungsnaht"},
    {"kept: {1}, cut off either side once it is joined", "{1}, nach dem Verbinden an jeder Seite abzuschneiden"},
    {"kept: Make up each {1} of {2} widths, before you mark it: lay each two right sides together so that the pattern "
     "goes on "
     "from one to the next, sew them along their long edges by the allowance listed, and press or crease the "
     "allowances apart. "
     "The figures for thread leave these seams out.",
     "Jedes Teil „{1}“ vor dem Anzeichnen aus {2} Bahnen zusammensetzen: je zwei rechts auf rechts legen, so dass das "
     "Muster von "
     "einer zur nächsten weiterläuft, an den langen Kanten mit der angegebenen Zugabe nähen und die Zugaben "
     "auseinanderbügeln "
     "oder -streichen. Diese Nähte sind in den Garnmengen nicht enthalten."},
    {"kept: Make up each {1} of {2} widths, before you mark it: lay each two right sides together so that the pattern "
     "goes on "
     "from one to the next, sew them along their long edges by the allowance listed, and press or crease the "
     "allowances apart. "
     "Then cut off either side what is listed. The figures for thread leave these seams out.",
     "Jedes Teil „{1}“ vor dem Anzeichnen aus {2} Bahnen zusammensetzen: je zwei rechts auf rechts legen, so dass das "
     "Muster von "
     "einer zur nächsten weiterläuft, an den langen Kanten mit der angegebenen Zugabe nähen und die Zugaben "
     "auseinanderbügeln "
     "oder -streichen. Dann an jeder Seite abschneiden, was angegeben ist. Diese Nähte sind in den Garnmengen nicht "
     "enthalten."},
    {"{1}; cut in parts, from the left {2} wide, laid edge to edge",
     "{1}; in Teilen zuschneiden, von links {2} breit, Kante an Kante gelegt"},
    {"kept: Make up each {1} of {2} parts, from the left as they are numbered: lay them edge to edge, none over "
     "another, and catch their edges together by hand or with a wide zigzag. The figures for thread leave this out.",
     "„{1}“ aus je {2} Teilen zusammensetzen, von links wie nummeriert: Kante an Kante legen, keines über das "
     "andere, und die Kanten von Hand oder mit breitem Zickzack aneinanderheften. In den Garnmaßen ist das nicht "
     "enthalten."},
    {"kept: Make up each {1} of {2} parts, from the left as they are numbered, before you mark it: sew them right "
     "sides together along their long edges, each by the allowance listed, and press the seams open. The figures for "
     "thread leave these seams out.",
     "„{1}“ aus je {2} Teilen zusammensetzen, von links wie nummeriert, bevor es markiert wird: rechts auf rechts an "
     "den langen Kanten zusammennähen, je mit der angegebenen Zugabe, und die Nähte auseinanderbügeln. In den "
     "Garnmaßen sind diese Nähte nicht enthalten."},
    {"kept: Wash, dry and press the {1} before you measure and cut it.",
     "{1} waschen, trocknen und bügeln, bevor gemessen und zugeschnitten wird."},
    {"kept: Wash, dry and press the {1} before you measure and cut it: the length to buy allows for what the wash "
     "takes.",
     "{1} waschen, trocknen und bügeln, bevor gemessen und zugeschnitten wird: die einzukaufende Länge enthält, was "
     "die Wäsche nimmt."},
    {"kept: Wash, dry and press the pieces of {1} before you mark them, and trim each to its listed size: they are cut "
     "larger by what the wash takes.",
     "Die Teile aus {1} waschen, trocknen und bügeln, bevor sie markiert werden, und jedes auf sein angegebenes Maß "
     "zurückschneiden: sie sind um das größer zugeschnitten, was die Wäsche nimmt."},
    {"Cutting out the {1}", "Zuschneiden: {1}"},
    {"The lay of the {1}", "Das Schnittbild für {1}"},
    {"For the {1}", "Für: {1}"},
    {"Figure", "Maß"},
    {"Cut {1} of {2}, {3}; each finishes {4}.", "{1} × aus {2} zuschneiden, {3}; fertig misst jedes {4}."},
    {"Cut a square of {1} out of each corner: two such pieces make a box {2} deep.",
     "Aus jeder Ecke ein Quadrat von {1} ausschneiden: zwei solche Teile ergeben einen Kasten von {2} "
     "Tiefe."},
    {"It has no line to mark.", "Hier ist keine Linie zu markieren."},
    {"{1}, to be marked", "{1}, zu markieren"},
    {"Lines on {1}, each from the cut edge named", "Linien auf {1}, jede ab der genannten Schnittkante"},
    {"From", "Ab"},
    {"Distance", "Abstand"},
    {"Cut {1} of {2} along the heavy line of the drawing, within {3}; each finishes within {4}.",
     "{1} × aus {2} entlang der dicken Linie der Zeichnung zuschneiden, innerhalb {3}; fertig liegt "
     "jedes innerhalb {4}."},
    {"{1}, to be drawn and cut", "{1}, aufzuzeichnen und zuzuschneiden"},
    {"Edges of {1}, as they are numbered there", "Kanten von {1}, wie sie dort nummeriert sind"},
    {"Edge", "Kante"},
    {"Length", "Länge"},
    {"Finish", "Verarbeitung"},
    {"Allowance and lines, from the cut edge", "Zugabe und Linien, ab der Schnittkante"},
    {"Notches, along it", "Knipse, entlang der Kante"},
    {"hollow, ", "hohl, "},
    {"rounded, ", "gerundet, "},
    {"curved, ", "geschwungen, "},
    {"at that edge", "an dieser Kante"},
    {"eyelets, holes of {1} with rims of {2}", "Ösen, Lochweite {1}, Außenmaß {2}"},
    {"{1}: centres", "{1}: Mitten"},
    {"folded and brought to {1}", "gefaltet und an {1} gelegt"},
    {"along {1} at the {2} edge", "auf {1} an der Kante {2}"},
    {"only {1}", "nur {1}"},
    {"from {1} to {2} off the cut {3} edge", "von {1} bis {2} ab Schnittkante {3}"},
    {"The whole of {1}, line by line: add them as you mark", "{1} im Ganzen, Linie für Linie: beim Markieren addieren"},
    {"Marks", "Marken"},
    {"Sum", "Summe"},
    {"{1}, from the {2} edge", "{1}, ab Kante {2}"},
    {"Where the {1} meets the {2}", "Wo „{1}“ auf „{2}“ trifft"},
    {"Bring these together, each from the finished {1} edge; in each part there is {2} more of the {3}, "
     "a fullness of {4}.",
     "Diese Marken aufeinander bringen, jede ab der fertigen Kante {1}; in jedem Abschnitt hat „{3}“ "
     "{2} mehr, das ist {4}-fache Weite."},
    {"Mark", "Marke"},
    {"On the {1}", "Auf „{1}“"},
};

} // namespace turncloth::detail

#endif
