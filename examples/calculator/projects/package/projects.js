// A project as a file, made at a size: its sheet as data, and its handout as one page of HTML. What cannot be made is
// refused with a Refusal, whose `faults` are all that the file has, each with its place.
import start from "./engine.js";
import { Engine, Refusal } from "./load.js";
export { Refusal };

const engine = new Engine(start, { file: new URL("./engine.wasm", import.meta.url), entry: "turncloth_project", longest: 1_200_000 });

/** Loads the engine, once for all; each call does it by itself. */
export const load = () => engine.load();

const asked = (ask, design, size, { clothWidth, workings, ...options }) =>
  engine.ask({ ask, design: typeof design === "string" ? design : JSON.stringify(design), ...(size !== undefined && { size }),
               ...(clothWidth !== undefined && { cloth_width: clothWidth }), ...(workings !== undefined && { workings }), ...options });

export const sheet = (design, size, options = {}) => asked("sheet", design, size, options);
export const handout = (design, size, options = {}) => asked("handout", design, size, options);
