// <turncloth-project src="peg_bag.json"></turncloth-project>: one project file at a size that is typed, with its handout.
//
//   src="peg_bag.json"       the file; the property `design` has its text instead, for a file that was opened or dropped
//   size="14 x 12 in"        what the size is at first: the file's own where none is given
//   units="cm"               what figures are written in: in, cm; both
//   author="..." licence="..." date="..."     as they are to be printed
//
// A change of any of these lays it out anew. After each answer the element sends the event "turncloth", whose detail has
// what was made or the refusal. The file is read here, by the reader's own browser, and sent nowhere.
import { handout } from "./projects.js";

const pause = 500; // ms without a change before it is made again: a handout takes its time

const look = new CSSStyleSheet();
look.replaceSync(`
  :host { display: block; font: var(--turncloth-font, inherit); color: var(--turncloth-text, inherit); background: var(--turncloth-background, transparent); padding: var(--turncloth-padding, 0); line-height: 1.45; }
  :host([hidden]) { display: none; }
  * { box-sizing: border-box; }
  form { display: grid; gap: .5em 1.5em; grid-template-columns: repeat(auto-fit, minmax(min(100%, 14em), 1fr)); align-items: end; }
  p { margin: .5em 0; }
  label { display: block; }
  input, select, button { font: inherit; color: inherit; background: transparent; padding: .45em .6em; border: 1px solid var(--turncloth-line, #767676); border-radius: var(--turncloth-radius, 2px); }
  input, select { width: 100%; }
  option { background: Canvas; color: CanvasText; }
  button { cursor: pointer; margin: 0 .5em .5em 0; }
  input[aria-invalid=true] { border: 3px solid var(--turncloth-wrong, light-dark(#b3261e, #ffb4ab)); }
  :focus-visible { outline: 3px solid var(--turncloth-accent, currentColor); outline-offset: 2px; }
  .why { color: var(--turncloth-wrong, light-dark(#b3261e, #ffb4ab)); font-weight: bold; overflow-wrap: anywhere; }
  .why:empty { display: none; }
  .why li { font-weight: normal; margin: .3em 0; }
  iframe { border: 1px solid var(--turncloth-line, #767676); border-radius: var(--turncloth-radius, 2px); display: block; height: 30em; width: 100%; }
  pre { font-size: .85em; overflow-wrap: anywhere; white-space: pre-wrap; }
  summary { cursor: pointer; padding: .4em 0; }
  .stale { opacity: .5; }
`);

function element(tag, text, attributes = {}, ...children) {
  const made = document.createElement(tag);
  if (text !== undefined) made.textContent = text;
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  made.append(...children);
  return made;
}

export class TurnclothProject extends HTMLElement {
  static observedAttributes = ["src", "size", "units", "author", "licence", "date"];
  #design; #text; #made; #parts; #asked = 0; #waiting;

  constructor() {
    super();
    this.attachShadow({ mode: "open" }).adoptedStyleSheets = [look];
    this.#layOut();
  }

  get design() { return this.#design; }
  set design(text) {
    this.#design = text;
    this.#begin();
  }

  connectedCallback() { this.#begin(); }
  attributeChangedCallback(name, before, after) { if (this.isConnected && before !== after) this.#begin(); }

  #layOut() {
    const part = (tag, id, attributes = {}) => element(tag, undefined, { id, part: id, ...attributes });
    const units = part("select", "units");
    units.append(...[["both", "inches and centimetres"], ["in", "inches"], ["cm", "centimetres"]].map(([value, name]) => element("option", name, { value })));
    this.#parts = {
      form: part("form", "form", { autocomplete: "off" }),
      size: part("input", "size", { type: "text", "aria-describedby": "refused" }), units,
      status: part("p", "status", { role: "status" }),
      refused: part("div", "refused", { class: "why", role: "alert" }),
      take: part("p", "take", { hidden: "" }),
      shown: part("iframe", "handout", { sandbox: "allow-same-origin allow-modals allow-popups", title: "Handout", hidden: "" }),
      sheet: part("details", "sheet", { hidden: "" }),
    };
    const { form, size, status, refused, take, shown, sheet } = this.#parts;
    form.append(element("p", undefined, {}, element("label", "finished size, width before height", { for: "size" }), size),
                element("p", undefined, {}, element("label", "figures in", { for: "units" }), units));
    take.append(this.#button("Print the handout", () => shown.contentWindow.print()), this.#button("Save the handout", () => this.#save()));
    sheet.append(element("summary", "The sheet, as text"), element("pre"));
    this.shadowRoot.replaceChildren(form, status, refused, take, shown, sheet);
    form.addEventListener("submit", event => { event.preventDefault(); this.#make(); });
    form.addEventListener("input", () => {
      clearTimeout(this.#waiting);
      this.#waiting = setTimeout(() => this.#make(), pause);
    });
    // As high as what it holds, so that the page alone scrolls.
    shown.addEventListener("load", () => {
      const page = shown.contentDocument?.documentElement;
      const fit = () => { shown.style.height = `${page.scrollHeight + 4}px`; };
      if (page) new ResizeObserver(fit).observe(shown.contentDocument.body);
    });
  }

  #button(text, clicked) {
    const made = element("button", text, { type: "button" });
    made.addEventListener("click", clicked);
    return made;
  }

  #save() {
    const link = element("a", undefined, { href: URL.createObjectURL(new Blob([this.#made.html], { type: "text/html" })), download: "handout.html" });
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  }

  async #begin() {
    clearTimeout(this.#waiting);
    if (!this.isConnected || (this.#design === undefined && !this.getAttribute("src"))) return;
    const asked = ++this.#asked;
    this.#parts.size.value = this.getAttribute("size") ?? "";
    this.#parts.units.value = ["in", "cm"].includes(this.getAttribute("units")) ? this.getAttribute("units") : "both";
    this.#say("Loading\u2026");
    try {
      const text = this.#design ?? await this.#fetched();
      if (asked !== this.#asked) return;
      this.#text = text;
    } catch (why) {
      if (asked === this.#asked) this.#show({ refusal: why });
      return;
    }
    await this.#make();
  }

  async #fetched() {
    const response = await fetch(new URL(this.getAttribute("src"), document.baseURI));
    if (!response.ok) throw new Error(`The project file cannot be loaded: ${response.status}`);
    return response.text();
  }

  async #make() {
    if (this.#text === undefined) return;
    const asked = ++this.#asked;
    this.#say("Working it out\u2026");
    // What is said is drawn before the engine keeps the page busy.
    await new Promise(drawn => setTimeout(drawn, 30));
    const { size, units } = this.#parts;
    const options = { units: units.value };
    for (const name of ["author", "licence", "date"]) if (this.hasAttribute(name)) options[name] = this.getAttribute(name);
    let made, refusal;
    try {
      made = await handout(this.#text, size.value.trim() || undefined, options);
    } catch (why) {
      refusal = why;
    }
    if (asked === this.#asked) this.#show({ made, refusal });
  }

  #show({ made, refusal }) {
    const { size, refused, take, shown, sheet } = this.#parts;
    this.#made = made ?? this.#made;
    size.setAttribute("aria-invalid", refusal?.field === "size");
    const faults = refusal?.faults ?? [];
    refused.replaceChildren(...(!refusal ? [] : faults.length === 0 ? [element("p", refusal.message)] : [
      element("p", `This file has ${faults.length === 1 ? "one fault" : `${faults.length} faults`}:`),
      element("ul", undefined, {}, ...faults.map(fault => element("li", this.#faultAsText(fault))))]));
    for (const part of [take, shown, sheet]) {
      part.hidden = !this.#made;
      part.classList.toggle("stale", Boolean(refusal));
    }
    if (made) {
      size.value ||= made.size;
      shown.title = `Handout: ${made.name}, ${made.size}`;
      shown.srcdoc = made.html;
      sheet.querySelector("pre").textContent = made.text;
    }
    this.#say(made ? `${made.name}, ${made.size}` : this.#made ? "Below is what was made before this change:" : "");
    this.dispatchEvent(new CustomEvent("turncloth", { detail: { made, refusal }, bubbles: true }));
  }

  #faultAsText({ where, why, character }) {
    return `${where || "the file"}${character ? `, character ${character}` : ""}: ${why}`;
  }

  #say(sentence) { this.#parts.status.textContent = sentence; }
}

customElements.define("turncloth-project", TurnclothProject);
