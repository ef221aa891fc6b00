// German, a part of german.hpp. Cautions of notions/caution.hpp, and the works that they belong to.
//
//   german_cautions      key, text
#ifndef TURNCLOTH_HANDOUT_DETAIL_GERMAN_CAUTIONS_HPP
#define TURNCLOTH_HANDOUT_DETAIL_GERMAN_CAUTIONS_HPP

#include <string_view>
#include <utility>

namespace turncloth::detail {

inline constexpr std::pair<std::string_view, std::string_view> german_cautions[] = {
    {"Soft plastic film may hold phthalates: for anything that a child will mouth, use film that is sold "
     "as meeting the limits in force (USA: 16 CFR 1307).",
     "Weichfolie kann Phthalate enthalten: Für alles, was ein Kind in den Mund nimmt, nur Folie "
     "verwenden, die nachweislich die geltenden Grenzwerte einhält (USA: 16 CFR 1307)."},
    {"Cut away from the hand that holds the rule, close a rotary cutter's guard at every pause, and "
     "follow its maker's instructions.",
     "Von der Hand weg schneiden, die das Lineal hält, den Rollschneider bei jeder Pause sichern und die "
     "Anleitung des Herstellers befolgen."},
    {"Count pins and needles before and after: one that is left in the work wounds. Put none into film, "
     "where every hole stays; clip it.",
     "Steck- und Nähnadeln vorher und nachher zählen: Eine vergessene Nadel verletzt. In Folie keine "
     "Nadeln stecken, denn jedes Loch bleibt; klammern."},
    {"An iron and its steam burn: stand it on its heel, keep the other hand out of the steam, and never "
     "leave it on where children or animals are.",
     "Bügeleisen und Dampf verbrennen: hochkant abstellen, die andere Hand aus dem Dampf halten und das "
     "Eisen nie eingeschaltet lassen, wo Kinder oder Tiere sind."},
    {"Do not iron waxed cloth: hot wax burns and its fumes can catch fire. Crease it by hand or with a "
     "blunt tool.",
     "Gewachsten Stoff nicht bügeln: Heißes Wachs verbrennt die Haut, und seine Dämpfe können sich "
     "entzünden. Von Hand oder mit einem stumpfen Werkzeug falzen."},
    {"Press beside film, never on it, with a cool iron and no steam, in an aired room. Keep pieces of "
     "film away from small children, who can smother in them.",
     "Neben Folie bügeln, nie darauf, mit kühlem Eisen ohne Dampf und in gelüftetem Raum. "
     "Folienstücke von kleinen Kindern fernhalten, die darin ersticken können."},
    {"Sew film slowly, and cut it cold: a hot needle or blade melts it. Where heat must be used, open a "
     "window and keep out of the fumes.",
     "Folie langsam nähen und kalt schneiden: Eine heiße Nadel oder Klinge schmilzt sie. Wo Hitze sein "
     "muss, ein Fenster öffnen und die Dämpfe nicht einatmen."},
    {"Many layers break a light needle, and its pieces fly: use a needle and a machine meant for them, "
     "turn the handwheel by hand over the thickest, and wear eye protection.",
     "Viele Lagen brechen eine dünne Nadel, und Splitter fliegen: dafür vorgesehene Nadel und Maschine "
     "verwenden, über die dicksten Stellen das Handrad von Hand drehen und eine Schutzbrille tragen."},
    {"Turn the handwheel by hand where stitching crosses a zipper or meets metal: a needle that strikes "
     "it breaks and flies. Wear eye protection.",
     "Das Handrad von Hand drehen, wo die Naht einen Reißverschluss kreuzt oder auf Metall trifft: Eine "
     "Nadel, die darauf trifft, bricht und fliegt. Schutzbrille tragen."},
    {"Teeth that are cut off fly: wear eye protection. A tape end that is melted to seal it burns: let it "
     "cool before you touch it, and keep out of its fumes.",
     "Abgeschnittene Zähne fliegen: Schutzbrille tragen. Ein angeschmolzenes Bandende verbrennt: vor dem "
     "Anfassen abkühlen lassen und die Dämpfe nicht einatmen."},
    {"Wear eye protection with side shields when setting eyelets, snaps or grommets: rims and chips fly. "
     "At work, follow the local safety code (in the USA, 29 CFR 1910.133).",
     "Beim Einschlagen von Ösen und Druckknöpfen eine Schutzbrille mit Seitenschutz tragen: Ränder und Splitter "
     "fliegen. Im Betrieb die örtlichen Schutzvorschriften befolgen (in den USA: 29 CFR 1910.133)."},
    {"Foam and loose fillings burn fast, with poisonous smoke: use what meets the fire code of your place "
     "for such a thing, and keep it away from flames and heaters.",
     "Schaumstoff und lose Füllungen brennen schnell und mit giftigem Rauch: verwenden, was den örtlichen "
     "Brandschutzvorschriften für so ein Stück entspricht, und von Flammen und Heizgeräten fernhalten."},
    {"Pour loose filling outdoors or with a mask on, since its dust is breathed in; freeze grain for some days first, "
     "as "
     "it draws moths and mice. What is heavy is lifted with bent knees.",
     "Lose Füllung im Freien oder mit Maske einfüllen, denn ihr Staub wird eingeatmet; Körner zuvor einige Tage "
     "einfrieren, denn sie ziehen Motten und Mäuse an. Schweres mit gebeugten Knien heben."},
    {"Sliders, eyelets and other small parts choke toddlers: see that none can come off, and keep the "
     "thing from children under three (USA: 16 CFR 1501).",
     "An Schiebern, Ösen und anderen Kleinteilen können Kleinkinder ersticken: darauf achten, dass sich "
     "keines lösen kann, und das Stück von Kindern unter drei Jahren fernhalten (USA: 16 CFR 1501)."},
    {"No load is certified for a strap, for its stitching or for what it is sewn to. Try it low down, over something "
     "soft, with more than it will carry, look at its stitching before each use, and never carry or hang a person or "
     "an animal by it, nor anything over people: lifting has its own codes.",
     "Für einen Gurt, seine Nähte und das, woran er genäht ist, ist keine Last bescheinigt. Knapp über dem Boden, "
     "über etwas Weichem und mit mehr als der späteren Last erproben, die Nähte vor jedem Gebrauch ansehen und nie "
     "einen Menschen oder ein Tier daran tragen oder aufhängen, auch nichts über Menschen: Für das Heben gelten "
     "eigene Vorschriften."},
    {"A cord that hangs out catches, and a loop of it strangles: knot it so short that no loop goes over a head. "
     "Follow the standard on cords that is in force where it is used, which goes before the lengths here.",
     "Eine heraushängende Kordel bleibt hängen, und ihre Schlinge stranguliert: so kurz knoten, dass keine Schlinge "
     "über einen Kopf geht. Die Norm über Kordeln befolgen, die am Ort gilt; sie geht den Längen hier vor."},
    {"Keep ties, loops, cords and soft pads away from infants, from every place where one sleeps, and from animals "
     "that are left alone: they strangle, smother, and are swallowed (USA: CPSC, and ASTM F1917 for infant bedding). "
     "Ask a doctor, a licensed carer or a veterinarian before making an exception.",
     "Bänder, Schlaufen, Schnüre und weiche Kissen von Säuglingen, von jedem Platz, an dem einer schläft, und von "
     "unbeaufsichtigten Tieren fernhalten: Sie können strangulieren, ersticken und verschluckt werden (USA: CPSC, "
     "für Säuglingsbettwaren ASTM F1917). Vor jeder Ausnahme eine Ärztin, eine zugelassene Pflegekraft oder eine "
     "Tierärztin fragen."},
    {"Take off what is tied round you before you work at a machine that turns, a shredder or a mower: it draws in a "
     "tie, and whoever wears it.",
     "Was umgebunden ist ablegen, bevor an einer Maschine gearbeitet wird, die sich dreht, am Häcksler oder Mäher: Sie "
     "zieht ein Band ein, und den, der es trägt."},
    {"Put no ties, cords or ribbons at the hood or neck of children's clothing; they catch and strangle. Elsewhere "
     "on it, follow the rules in force where it will be worn (USA: 16 CFR 1120 and ASTM F1816; Europe: EN 14682).",
     "An Kapuze und Hals von Kinderkleidung keine Bänder, Kordeln oder Schleifen anbringen; sie bleiben hängen und "
     "strangulieren. Für den Rest der Kleidung gelten die Vorschriften des Ortes, an dem sie getragen wird (USA: 16 "
     "CFR 1120 und ASTM F1816; Europa: EN 14682)."},
    {"Fix what hangs so that a pull does not bring it down, clear of heaters, cookers and cot sides. In a public "
     "place ask for the fire code's rule on hangings, and have heavy ones fixed by a licensed person.",
     "Aufgehängtes so befestigen, dass ein Zug es nicht herunterreißt, fern von Heizgeräten, Herden und "
     "Kinderbetten. In öffentlichen Räumen nach der Brandschutzvorschrift für Behänge fragen und schwere von "
     "Fachleuten befestigen lassen."},
    {"Local codes, the makers' instructions and licensed practice go before this handout.",
     "Örtliche Vorschriften, Anleitungen der Hersteller und zugelassene Fachpraxis gehen dieser "
     "Anleitung vor."},
    {"caution.buying", "beim Einkauf"},
    {"caution.cutting", "beim Zuschneiden"},
    {"caution.pinning", "beim Stecken"},
    {"caution.pressing", "beim Bügeln"},
    {"caution.stitching", "beim Nähen"},
    {"caution.zippers", "bei Reißverschlüssen"},
    {"caution.eyelets", "bei Ösen"},
    {"caution.filling", "beim Füllen"},
    {"caution.in use", "beim Gebrauch"},
    {"Safety", "Sicherheit"},
    {"as for {1}.", "wie {1}."},
    {"{1} (step {2})", "{1} (Schritt {2})"},
};

} // namespace turncloth::detail

#endif
