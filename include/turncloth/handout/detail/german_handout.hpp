// German, a part of german.hpp. Headings, tools, what to look at at the end, and what a document says of its own.
//
//   german_handout      key, text
#ifndef TURNCLOTH_HANDOUT_DETAIL_GERMAN_HANDOUT_HPP
#define TURNCLOTH_HANDOUT_DETAIL_GERMAN_HANDOUT_HPP

#include <string_view>
#include <utility>

namespace turncloth::detail {

inline constexpr std::pair<std::string_view, std::string_view> german_handout[] = {
    {"page {1} of {2}", "Seite {1} von {2}"},
    {" of ", " von "},
    {"box to tick", "Kästchen zum Abhaken"},
    {"room to write", "Platz zum Schreiben"},
    {"{1} at 100 %", "{1} bei 100 %"},
    {"To lay a rule on", "Zum Anlegen eines Lineals"},
    {"A bar of 10 cm in ten parts, and a bar of 1 in in eight parts, true to size when printed at 100 %.",
     "Ein Balken von 10 cm in zehn Teilen und ein Balken von 1 in in acht Teilen, maßgerecht bei Druck "
     "mit 100 %."},
    {"A bar of 10 cm in ten parts, true to size when printed at 100 %.",
     "Ein Balken von 10 cm in zehn Teilen, maßgerecht bei Druck mit 100 %."},
    {"a bar of 1 in in eight parts, true to size when printed at 100 %.",
     "Ein Balken von 1 in in acht Teilen, maßgerecht bei Druck mit 100 %."},
    {"Read it through to the end before you begin. Tick each line as it is done.",
     "Vor dem Beginn bis zum Ende durchlesen. Jede erledigte Zeile abhaken."},
    {"This size is the nearest on the ruler to the {1} that was asked for.",
     "Diese Größe liegt auf dem Lineal der gewünschten von {1} am nächsten."},
    {"Check before you cut", "Vor dem Zuschneiden prüfen"},
    {"What to buy", "Einkauf"},
    {"Tools", "Werkzeug"},
    {"How it is measured", "Wie gemessen wird"},
    {"Sizes are width before height. Cut sizes hold every seam allowance, hem and binding: add nothing to "
     "them. Distances are from the edge named; measure each from that edge, never from the line before.",
     "Maße nennen die Breite vor der Höhe. Zuschnittmaße enthalten jede Nahtzugabe, jeden Saum und jede Einfassung: "
     "nichts zugeben. Abstände gelten ab der genannten Kante; jeden von dieser Kante aus messen, nie von der vorigen "
     "Linie."},
    {"A figure in brackets is the same length in {1}: keep to one of the two throughout. in: inch; cm: "
     "centimetre; yd: yard; m: metre; 1 in is 2.54 cm.",
     "Eine Angabe in Klammern ist dieselbe Länge in {1}: durchgehend bei einer von beiden bleiben. in: "
     "Zoll; cm: Zentimeter; yd: Yard; m: Meter; 1 in ist 2,54 cm."},
    {"inches", "Zoll"},
    {"centimetres", "Zentimetern"},
    {"Printed at 100 %, these bars are as long as they say: lay your rule on them",
     "Mit 100 % gedruckt sind diese Balken so lang, wie sie angeben: Lineal anlegen"},
    {"Printed at 100 %, this bar is as long as it says: lay your rule on it",
     "Mit 100 % gedruckt ist dieser Balken so lang, wie er angibt: Lineal anlegen"},
    {"Pieces and steps are worked out on a ruler of {1}, so that what is printed of them adds up; other "
     "amounts are rounded to {2}.",
     "Teile und Schritte sind auf einem Lineal mit {1} Teilung gerechnet, sodass die gedruckten Maße "
     "aufgehen; andere Mengen sind auf {2} gerundet."},
    {"Figures are rounded to {1}, each from the exact length.",
     "Maße sind auf {1} gerundet, jedes aus der genauen Länge."},
    {"What to cut", "Zuschneiden"},
    {"What to mark", "Markieren"},
    {"Mark each piece while it is flat, as it is drawn here. Its letter is the one in the list of pieces.",
     "Jedes Teil markieren, solange es flach liegt, wie hier gezeichnet. Sein Buchstabe ist der aus der "
     "Liste der Teile."},
    {"Zippers, thread and other figures", "Reißverschlüsse, Garn und andere Maße"},
    {"Make it", "Nähen"},
    {"When it is made", "Wenn es fertig ist"},
    {"Made by", "Genäht von"},
    {"On", "Am"},
    {"In use", "Im Gebrauch"},
    {"Each figure and the sum that it is, exact", "Jedes Maß und die Summe, die es ergibt, genau"},
    {"Of", "Wovon"},
    {"{1}, cut width", "{1}, Zuschnittbreite"},
    {"{1}, cut height", "{1}, Zuschnitthöhe"},
    {"{1}, {2} edge, {3}", "{1}, Kante {2}, {3}"},
    {"{1}, top edge, eyelets", "{1}, Kante oben, Ösen"},
    {"Workings", "Rechenwege"},
    {"This size was worked out in centimetres, and so are its sums: in inches they would not be exact.",
     "Diese Größe wurde in Zentimetern gerechnet, ebenso ihre Summen: in Zoll wären sie nicht genau."},
    {"A long rule and a square, read to {1}", "Ein langes Lineal und ein Winkel, abzulesen auf {1}"},
    {"Shears, or a rotary cutter and its mat", "Stoffschere oder Rollschneider mit Schneidmatte"},
    {"Small sharp scissors", "Kleine scharfe Schere"},
    {"Chalk, or a marking pencil that comes out of the cloth", "Schneiderkreide oder ein auswaschbarer Markierstift"},
    {"A wax pencil for film, and clips in place of pins", "Ein Fettstift für Folie und Klammern statt Stecknadeln"},
    {"Pins or clips", "Stecknadeln oder Klammern"},
    {"An iron and a pressing board", "Bügeleisen und Bügelbrett"},
    {"A blunt tool to crease film by hand", "Ein Falzbein, um Folie von Hand zu falzen"},
    {"A sewing machine, with a needle meant for up to {1} layers",
     "Eine Nähmaschine mit einer Nadel für bis zu {1} Lagen"},
    {"A sewing machine", "Eine Nähmaschine"},
    {"A zipper foot for it", "Ein Reißverschlussfuß dafür"},
    {"A sewing needle, for what is sewn by hand", "Eine Nähnadel für das, was von Hand genäht wird"},
    {"A setting tool for the eyelets, of their size", "Ein Einschlagwerkzeug in der Größe der Ösen"},
    {"A setting tool for the snaps, of their size", "Ein Einschlagwerkzeug in der Größe der Druckknöpfe"},
    {"Eye protection", "Schutzbrille"},
    {"A blunt point, to push corners out", "Ein stumpfer Stift zum Ausformen der Ecken"},
    {"Measure and look at it", "Nachmessen und ansehen"},
    {"Look at", "Prüfpunkt"},
    {"Should be", "Soll"},
    {"Within", "Toleranz"},
    {"Measured", "Gemessen"},
    {"Right", "Stimmt"},
    {"exactly", "genau"},
    {"none", "keine"},
    {"Finished width", "Fertige Breite"},
    {"Finished height", "Fertige Höhe"},
    {"One diagonal", "Eine Diagonale"},
    {"The other diagonal", "Die andere Diagonale"},
    {"the same", "dieselbe"},
    {"about {1}", "etwa {1}"},
    {"as it is filled", "je nach Füllung"},
    {"Rows of stitching", "Nähte"},
    {"Eyelets in the {1}", "Ösen in „{1}“"},
    {"Raw edges in sight", "Sichtbare offene Schnittkanten"},
    {"Thread ends left long", "Lange Fadenenden"},
    {"Pins and needles, counted again", "Nadeln, nachgezählt"},
    {"as many as before", "so viele wie vorher"},
    {"A cut, a mark, a fold or a row is right within half of {1}, the smallest step of the rule. A size lies between "
     "two edges, each of them cut and folded, and may be off by four such halves: {2}. This is common practice.",
     "Ein Schnitt, eine Marke, ein Bruch oder eine Naht stimmt auf die Hälfte von {1}, dem kleinsten Schritt des "
     "Lineals. Ein Maß liegt zwischen zwei Kanten, jede geschnitten und umgeschlagen, und darf um vier solche "
     "Hälften abweichen: {2}. Das ist gängige Praxis."},
    {"stitching along {1} of the {2} goes through {3}, more than the {4} that a machine is taken to sew",
     "die Naht an {1} von „{2}“ geht durch {3}, mehr als die {4}, die einer Maschine zuzumuten sind"},
    {"rows of stitching on the {1} go through more than the {2} layers that a machine is taken to sew, along {3}",
     "Nähte auf „{1}“ gehen durch mehr als die {2} Lagen, die einer Maschine zuzumuten sind, entlang {3}"},
    {"the {1} edge ({2})", "der Kante {1} ({2})"},
    {"the {1} edges ({2})", "der Kanten {1} ({2})"},
    {"the {1} edge", "der Kante {1}"},
    {"the {1} edges", "den Kanten {1}"},
    {"{1} layers", "{1} Lagen"},
    {"{1} to {2} layers", "{1} bis {2} Lagen"},
    {"{1}: mitre the corners, each creased first across a line that meets both cut edges {2} from the "
     "corner, and cut off what lies more than {3} outside it",
     "{1}: an den Ecken Briefecken nähen, jede zuerst entlang einer Linie gefalzt, die beide "
     "Schnittkanten {2} von der Ecke trifft, und abschneiden, was mehr als {3} außerhalb davon liegt"},
    {"{1}: trim what is turned under at the corners, or mitre them",
     "{1}: an den Ecken zurückschneiden, was eingeschlagen ist, oder Briefecken nähen"},
};

} // namespace turncloth::detail

#endif
