// How a program in TypeScript uses the package: what is right compiles, and each mistake marked does not.
import { calculate, cloth, divide, list, map, panel, Refusal, zipper, type Finish, type Length } from "turncloth";
import "turncloth/element";

const hem: Finish = { is: "double-turned hem", first: "1/4 in", depth: 1 };
const made = await panel({ width: "14 in", height: 11, units: "in", edges: { all: hem, top: { is: "raw edge" } } });
const width: number = made.cut.width.near;
const fold: Length | undefined = made.edges.top.folds[0];
const working: string | undefined = made.cut.height.working;

const marks: string[] = (await divide({ length: "40 cm", parts: 4 })).marks.map(mark => mark.text);
const joined: Length[] = (await map({ longer: 42, shorter: 30, spans: 6 })).marks.map(({ shorter }) => shorter);
const rolls: number = (await zipper({ across: 11, margin: "3/4", beyond: "1/2", pieces: 4, roll: "5 yd" })).rolls;
const bought: string = (await cloth({ pieces: [{ width: 13, height: 9, count: 3, may_turn: true }], width: "44 in" })).buy.text;
const typed = await cloth({ pieces: "3 of 13 x 9", width: "44 in" });
const names: string[] = (await list()).map(({ name }) => name);
const lines = (await calculate("bunting", { flags: 12 })).lines;

try {
  await panel({ width: 0, height: 1 });
} catch (why) {
  if (why instanceof Refusal && why.kind === "too_small") console.log(why.field, why.least?.near, why.message);
}

const element = document.createElement("turncloth-calculator");
element.addEventListener("turncloth", event => console.log(event.detail.answer?.lines, event.detail.refusal?.kind));

// @ts-expect-error: a hem has a depth
const shallow: Finish = { is: "single-turned hem" };
// @ts-expect-error: a height is missing
await panel({ width: 14 });
// @ts-expect-error: units are in or cm
await divide({ length: 1, parts: 2, units: "inches" });
// @ts-expect-error: a length is not a number
const wrong: number = made.cut.width;

export { bought, fold, joined, lines, marks, names, rolls, shallow, typed, width, working, wrong };
