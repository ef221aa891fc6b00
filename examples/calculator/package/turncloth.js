// The calculations as plain functions: an object in, a promise of an object out. Sizes are texts as a person types them
// ("12 1/2 in", "31,75 cm") or numbers in `units`; what cannot be made is refused with a Refusal.
import start from "./engine.js";

/** Why something was not worked out: a sentence, and the same as data. */
export class Refusal extends Error {
  name = "Refusal";
  constructor({ sentence, ...facts }) {
    super(sentence);
    Object.assign(this, facts);
  }
}

const longest = 300_000; // characters of a question: its copy lies on the engine's stack
let engine;

async function instantiated(imports) {
  const file = new URL("./engine.wasm", import.meta.url);
  if (file.protocol === "file:") {
    const { readFile } = await import(/* webpackIgnore: true */ /* @vite-ignore */ "node:fs/promises");
    return WebAssembly.instantiate(await readFile(file), imports);
  }
  const response = await fetch(file);
  if (!response.ok) throw new Error(`${file} cannot be loaded: ${response.status}`);
  return response.headers.get("content-type") === "application/wasm"
    ? WebAssembly.instantiateStreaming(response, imports)
    : WebAssembly.instantiate(await response.arrayBuffer(), imports);
}

function started() {
  return new Promise((loaded, failed) => {
    const instantiateWasm = (imports, done) => {
      instantiated(imports).then(({ instance }) => done(instance), failed);
      return {};
    };
    start({ instantiateWasm }).then(module => loaded(module.cwrap("turncloth_answer", "string", ["string"])), failed);
  });
}

/** Loads the engine, once for all; each call of a calculation does it by itself. */
export async function load() {
  engine ??= started();
  try {
    return await engine;
  } catch (why) {
    engine = undefined; // a network may be back when it is asked again
    throw why;
  }
}

async function ask(question) {
  const reply = await load();
  const text = JSON.stringify(question);
  if (text.length > longest) throw new Refusal({ sentence: `a question has at most ${longest} characters: it had ${text.length}`, kind: "too_large", what: "a question" });
  let answer;
  try {
    answer = JSON.parse(reply(text));
  } catch (why) {
    engine = undefined; // whatever stopped it, the next question has a fresh one
    throw why;
  }
  if (answer.refused) throw new Refusal(answer.refused);
  return answer;
}

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
