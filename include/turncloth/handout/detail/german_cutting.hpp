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
    {"straighten the end of the cloth, square to its selvedges",
     "das Stoffende begradigen, rechtwinklig zu den Webkanten"},
    {"cut right across {1} from it", "{1} davon ganz quer durchschneiden"},
    {"trim {1} off the selvedges, opposite the fold", "{1} von den Webkanten abschneiden, gegenüber dem Bruch"},
    {"trim {1} off each selvedge", "{1} von jeder Webkante abschneiden"},
    {"{1}. Pieces lie so far from the {2} of the cloth and from that end:",
     "{1}. Die Teile liegen so weit ab {2} des Stoffs und ab diesem Ende:"},
    {"{1}: that is {2}", "{1}: das ist {2}"},
    {"{1}. The near side of a part is the one that lay nearest that end",
     "{1}. Die nahe Seite eines Stücks ist die, die diesem Ende am nächsten lag"},
    {"{1}: {2} from the {3}, {4} from the end", "{1}: {2} ab {3}, {4} ab Ende"},
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
    {"as drawn", "wie gezeichnet"},
    {"along the height", "in der Höhe"},
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
    {"Bring these together, each from the finished {1} edge; in each part there is {2} more of the {3} "
     "(fullness {4}).",
     "Diese Marken aufeinander bringen, jede ab der fertigen Kante {1}; in jedem Abschnitt hat „{3}“ "
     "{2} mehr (Mehrweite {4}-fach)."},
    {"Mark", "Marke"},
    {"On the {1}", "Auf „{1}“"},
};

} // namespace turncloth::detail

#endif
