// <turncloth-calculator sum="zipper"></turncloth-calculator>: one calculation, as a form with its answers.
//
//   sum="cloth"              which calculation; list() names all
//   units="cm"               what a number without a unit is in at first; in
//   heading="Zippers"        over the form, in place of the calculation's own title; level="2" to 6, 3 where none is given
//   given='{"edges": ...}'   what goes with every question, as JSON
//   width="20 in"            what a field holds at first: any field, by its name
//
// A change of any of these lays it out anew. After each answer the element sends the event "turncloth", whose detail
// has the answer or the refusal.
import { CalculationForm, element } from "./form.js";
import { list } from "./turncloth.js";

const look = new CSSStyleSheet();
look.replaceSync(`
  :host { display: block; font: var(--turncloth-font, inherit); color: var(--turncloth-text, inherit); background: var(--turncloth-background, transparent); padding: var(--turncloth-padding, 0); line-height: 1.45; }
  :host([hidden]) { display: none; }
  * { box-sizing: border-box; }
  #name { font-size: 1.2em; font-weight: bold; margin: 0 0 .2em; }
  p { margin: .5em 0; }
  #laid { display: grid; gap: 0 var(--turncloth-gap, 2em); grid-template-columns: repeat(auto-fit, minmax(min(100%, 17em), 1fr)); align-items: start; }
  label, legend { display: block; margin-bottom: .2em; padding: 0; }
  fieldset { border: 0; margin: .5em 0; padding: 0; }
  fieldset label { display: inline-block; margin-right: 1.2em; padding: .35em 0; }
  input[type=text], select, textarea { font: inherit; color: inherit; background: transparent; width: 100%; padding: .4em; border: 1px solid var(--turncloth-line, #767676); border-radius: var(--turncloth-radius, 2px); }
  :is(input, select, textarea)[aria-invalid=true] { border: 2px solid var(--turncloth-wrong, light-dark(#b3261e, #ffb4ab)); }
  .why { display: block; margin-top: .3em; font-weight: bold; overflow-wrap: anywhere; color: var(--turncloth-wrong, light-dark(#b3261e, #ffb4ab)); }
  :focus-visible { outline: 3px solid var(--turncloth-accent, currentColor); outline-offset: 2px; }
  dl { margin: .5em 0; border-top: 1px solid var(--turncloth-line, #767676); }
  dl div { border-bottom: 1px solid var(--turncloth-line, #767676); padding: .35em 0; }
  dd { margin: 0; font-size: 1.15em; overflow-wrap: anywhere; }
  dd.working, .caution { font-size: .85em; }
  .why:empty { display: none; }
  figure { margin: 0; }
  svg { background: #fff; color: #000; display: block; height: auto; max-width: 30em; width: 100%; }
  .stale { opacity: .5; }
  #aloud { clip-path: inset(50%); height: 1px; margin: 0; overflow: hidden; position: absolute; white-space: nowrap; width: 1px; }
  @media print { form, #units-note, .stale { display: none; } }
`);

const own = ["sum", "units", "heading", "level", "given"];
let calculations;

export class TurnclothCalculator extends HTMLElement {
  #fields = [];
  #watch = new MutationObserver(changes => {
    if (changes.some(({ attributeName }) => own.includes(attributeName) || this.#fields.includes(attributeName))) this.#layOut();
  });
  #laid = 0;

  constructor() {
    super();
    this.attachShadow({ mode: "open" }).adoptedStyleSheets = [look];
  }

  connectedCallback() {
    this.#watch.observe(this, { attributes: true });
    this.#layOut();
  }
  disconnectedCallback() { this.#watch.disconnect(); }

  async #layOut() {
    const laid = ++this.#laid;
    this.#say("Loading\u2026");
    try {
      const of = await this.#calculation();
      if (laid !== this.#laid) return;
      this.#fields = of.asks.map(({ name }) => name);
      const level = this.getAttribute("level") ?? "3";
      const heading = element("div", this.getAttribute("heading") ?? of.title, { id: "name", part: "name", role: "heading", "aria-level": level });
      const room = element("div", undefined, { id: "laid" });
      this.shadowRoot.replaceChildren(heading, element("p", of.about, { id: "about", part: "about" }), room);
      const form = new CalculationForm(room, {
        of, units: this.getAttribute("units") === "cm" ? "cm" : "in", given: JSON.parse(this.getAttribute("given") ?? "{}"),
        typed: Object.fromEntries([...this.attributes].map(({ name, value }) => [name, value])), // fields alone are looked up
        changed: detail => this.dispatchEvent(new CustomEvent("turncloth", { detail, bubbles: true })),
      });
      await form.workOut();
    } catch (why) {
      if (laid === this.#laid) this.#say(`This calculation cannot be shown: ${why.message}`, "why");
    }
  }

  async #calculation() {
    calculations ??= list();
    const all = await calculations.catch(why => { calculations = undefined; throw why; });
    const name = this.getAttribute("sum");
    const found = all.find(one => one.name === name);
    if (!found) throw new Error(`there is no sum "${name ?? ""}": there are ${all.map(one => one.name).join(", ")}`);
    return found;
  }

  #say(sentence, kind = "") {
    this.shadowRoot.replaceChildren(element("p", sentence, { role: "status", part: "status", class: kind }));
  }
}

customElements.define("turncloth-calculator", TurnclothCalculator);
