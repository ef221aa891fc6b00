// The calculations as plain functions: an object in, a promise of an object out. Sizes are texts as a person types them
// ("12 1/2 in", "31,75 cm") or numbers in `units`; what cannot be made is refused with a Refusal.
import start from "./engine.js";
import { Engine, Refusal } from "./load.js";
export { Refusal };

const engine = new Engine(start, { file: new URL("./engine.wasm", import.meta.url), entry: "turncloth_answer" });
const ask = question => engine.ask(question);

/** Loads the engine, once for all; each call of a calculation does it by itself. */
export const load = () => engine.load();

/** Any calculation that the engine lists, by its name. */
export const calculate = (name, given = {}) => ask({ ...given, ask: name });
/** What each is called and asks for, with what its fields hold at first. */
export const list = async () => (await ask({ ask: "list" })).calculations;
/** What was typed with its units written out, before numbers without one are read in another. */
export const withUnits = (name, typed) => ask({ ...typed, ask: "with_units", of: name });

export const panel = given => calculate("panel", given);
export const divide = given => calculate("divide", given);
export const map = given => calculate("map", given);
export const zipper = given => calculate("zipper", given);
export const cloth = given => calculate("cloth", given);
