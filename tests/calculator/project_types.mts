// How a program in TypeScript uses the package of projects: what is right compiles, and each mistake marked does not.
import { handout, load, Refusal, sheet, type Design, type Handout } from "turncloth-projects";
import "turncloth-projects/element";

await load();
const bag: Design = { turncloth_design: 1, name: "Bag", pieces: [{ name: "back", material: "canvas", width: "9 in", height: "9 in" }] };
const { sheet: made, text } = await sheet(bag, "9 x 9 in", { units: "in", clothWidth: "44 in" });
const width: string = made.pieces[0].cut.width.exact;
const unit: "in" | "cm" = made.finished.height.unit;
const told: Handout = await handout(JSON.stringify(bag), undefined, { author: "The allotment society", workings: false });
const page: string = told.html;

try {
  await handout("{");
} catch (why) {
  if (why instanceof Refusal) for (const { where, why: sentence, character } of why.faults ?? []) console.log(where, sentence, character ?? 0);
}

const element = document.createElement("turncloth-project");
element.design = "{}";
element.addEventListener("turncloth", event => console.log(event.detail.made?.size, event.detail.refusal?.field));

// @ts-expect-error: a project file has a version
const nameless: Design = { name: "Bag" };
// @ts-expect-error: units are in, cm or both
await sheet(bag, "9 x 9 in", { units: "inches" });
// @ts-expect-error: a sheet has no author, a handout has
await sheet(bag, "9 x 9 in", { author: "The allotment society" });
// @ts-expect-error: a size is a text
await handout(bag, 9);

export { nameless, page, text, unit, width };
