// An engine of WebAssembly behind one function of texts, loaded once, from Node and from a browser.

/** Why something was not worked out: a sentence, and the same as data. */
export class Refusal extends Error {
  name = "Refusal";
  constructor({ sentence, ...facts }) {
    super(sentence);
    Object.assign(this, facts);
  }
}

async function instantiated(file, imports) {
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

/// `start` is what the engine's own script exports, `file` its WebAssembly, `entry` its function, and `longest` the most
/// characters of a question: its copy lies on the engine's stack.
export class Engine {
  #start; #file; #entry; #longest; #started;

  constructor(start, { file, entry, longest = 300_000 }) {
    [this.#start, this.#file, this.#entry, this.#longest] = [start, file, entry, longest];
  }

  #fresh() {
    return new Promise((loaded, failed) => {
      const instantiateWasm = (imports, done) => {
        instantiated(this.#file, imports).then(({ instance }) => done(instance), failed);
        return {};
      };
      this.#start({ instantiateWasm }).then(module => loaded(module.cwrap(this.#entry, "string", ["string"])), failed);
    });
  }

  async load() {
    this.#started ??= this.#fresh();
    try {
      return await this.#started;
    } catch (why) {
      this.#started = undefined; // a network may be back when it is asked again
      throw why;
    }
  }

  async ask(question) {
    const reply = await this.load();
    const text = JSON.stringify(question), longest = this.#longest;
    if (text.length > longest) throw new Refusal({ sentence: `a question has at most ${longest} characters: it had ${text.length}`, kind: "too_large", what: "a question" });
    let answer;
    try {
      answer = JSON.parse(reply(text));
    } catch (why) {
      this.#started = undefined; // whatever stopped it, the next question has a fresh one
      throw why;
    }
    if (answer.refused) throw new Refusal(answer.refused);
    return answer;
  }
}
