// One calculation as a form with its answers, laid into any element: what the custom element and the page share.
import { calculate, withUnits } from "./turncloth.js";

const pause = 700; // ms without a change before anything is announced: a screen reader is not talked over while typing
const patience = 300; // ms without an answer before it is said that one is on its way

export function element(tag, text, attributes = {}, ...children) {
  const made = document.createElement(tag);
  if (text !== undefined) made.textContent = text;
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  made.append(...children);
  return made;
}

export function figureOf(drawing, attributes = {}) {
  const figure = element("figure", undefined, attributes);
  figure.append(document.importNode(new DOMParser().parseFromString(drawing, "image/svg+xml").documentElement, true));
  return figure;
}

const unitNames = { in: "inches", cm: "centimetres" };

/// The field that an answer is typed or chosen in.
function fieldOf({ name, kind, choices }, value) {
  const attributes = { id: name, name, part: "field", "aria-describedby": "why-" + name };
  if (kind === "choice")
    return element("select", undefined, attributes, ...choices.map(choice => element("option", choice, choice === value ? { selected: "" } : {})));
  if (kind === "pieces") return element("textarea", value, { ...attributes, rows: 4 });
  return element("input", undefined, { ...attributes, type: "text", value, ...(kind === "count" && { inputmode: "numeric" }) });
}

export class CalculationForm {
  #root; #of; #given; #changed; #units; #parts; #announcing; #asked = 0;

  /// `of` is one of list(); `typed` what its fields hold, over their first values; `given` goes with every question;
  /// `known` is the answer to that, where somebody has it already; `changed` is told after each answer or refusal.
  constructor(root, { of, typed = {}, units = "in", given = {}, known, changed = () => {} }) {
    [this.#root, this.#of, this.#given, this.#changed, this.#units] = [root, of, given, changed, units];
    const part = (tag, id, attributes = {}) => element(tag, undefined, { id, part: id, ...attributes });
    this.#parts = {
      form: part("form", "form", { autocomplete: "off", "aria-labelledby": "name" }),
      note: part("p", "units-note"),
      refused: part("p", "refused", { class: "why" }),
      answers: part("div", "answers"),
      drawing: part("div", "drawing"),
      aloud: part("p", "aloud", { role: "status", "aria-live": "polite", "aria-label": "Answers" }),
    };
    this.#layOut(typed);
    const { form, note, refused, answers, drawing, aloud } = this.#parts;
    root.replaceChildren(element("div", undefined, { class: "asked" }, form, note),
                         element("div", undefined, { class: "answered" }, refused, answers, drawing, aloud));
    form.addEventListener("submit", event => event.preventDefault());
    form.addEventListener("input", event => (event.target.name === "units" ? this.#changeUnits(event.target.value) : this.workOut()));
    if (known) {
      this.#show(known);
      this.#changed({ answer: known });
    }
  }

  get units() { return this.#units; }
  get typed() { return Object.fromEntries(this.#fields().map(field => [field.name, field.value])); }
  get labels() { return Object.fromEntries(this.#of.asks.map(({ name, label }) => [name, label])); }

  #fields() { return [...this.#parts.form.querySelectorAll("[part=field]")]; }

  #layOut(typed) {
    const choice = element("fieldset", undefined, {}, element("legend", "A number without a unit, and the working, are in"));
    for (const [unit, name] of Object.entries(unitNames)) {
      const radio = element("input", undefined, { type: "radio", name: "units", value: unit, ...(unit === this.#units && { checked: "" }) });
      choice.append(element("label", undefined, {}, radio, " " + name));
    }
    const rows = this.#of.asks.map(asked =>
      element("p", undefined, {}, element("label", asked.label, { for: asked.name }),
              fieldOf(asked, typed[asked.name] ?? asked.first[this.#units]),
              element("span", "", { id: "why-" + asked.name, class: "why", part: "why" })));
    this.#parts.form.replaceChildren(choice, ...rows);
  }

  // Numbers that have no unit get the one they were typed in before the form goes over to the other.
  async #changeUnits(to) {
    const before = this.typed;
    const written = await withUnits(this.#of.name, { ...before, units: this.#units });
    const changed = this.#fields().filter(field => written[field.name] !== undefined && written[field.name] !== before[field.name]);
    for (const field of changed) field.value = written[field.name];
    this.#parts.note.textContent = changed.length ? `Your sizes stay in ${unitNames[this.#units]}, which is now written beside them. A number that you type without a unit is in ${unitNames[to]}.` : "";
    this.#units = to;
    await this.workOut();
  }

  async workOut() {
    const asked = ++this.#asked;
    const late = setTimeout(() => asked === this.#asked && this.#sayAbove("Loading\u2026"), patience);
    let answer, refusal;
    try {
      answer = await calculate(this.#of.name, { ...this.#given, ...this.typed, units: this.#units });
    } catch (why) {
      refusal = why;
    }
    clearTimeout(late);
    if (asked !== this.#asked) return; // something else was typed meanwhile
    if (answer) this.#show(answer);
    this.#refuse(refusal);
    this.#announce(refusal ? refusal.message : answer.lines.slice(0, 6).map(({ label, figure }) => `${label}: ${figure}`).join("; "));
    this.#changed({ answer, refusal });
  }

  #refuse(refusal) {
    const named = refusal?.field?.split("/")[0];
    let beside = false; // whether it is shown beside a field
    for (const field of this.#fields()) {
      const wrong = field.name === named;
      beside ||= wrong;
      field.setAttribute("aria-invalid", wrong);
      this.#root.querySelector(`#why-${field.name}`).textContent = wrong ? refusal.message : "";
    }
    this.#parts.refused.textContent = refusal && !beside ? refusal.message : "";
    // The last good answer stays, and is told to be that.
    this.#sayAbove(refusal && this.#parts.answers.querySelector("dl") ? "The answer before this change:" : "");
  }

  /// Over an answer that is not that of what is typed.
  #sayAbove(sentence) {
    for (const part of [this.#parts.answers, this.#parts.drawing]) part.classList.toggle("stale", sentence !== "");
    this.#parts.answers.querySelector(".before")?.remove();
    if (sentence) this.#parts.answers.prepend(element("p", sentence, { class: "before" }));
  }

  #show({ lines, cautions, drawing }) {
    const rows = lines.map(({ label, figure, working }) =>
      element("div", undefined, {}, element("dt", label, { part: "label" }), element("dd", figure, { part: "figure" }),
              ...(working ? [element("dd", working, { class: "working", part: "working" })] : [])));
    this.#parts.answers.replaceChildren(element("dl", undefined, {}, ...rows),
                                        ...cautions.map(sentence => element("p", sentence, { class: "caution", part: "caution" })));
    this.#parts.drawing.replaceChildren(...(drawing ? [figureOf(drawing)] : []));
  }

  #announce(sentence) {
    clearTimeout(this.#announcing);
    this.#announcing = setTimeout(() => { this.#parts.aloud.textContent = sentence; }, pause);
  }
}
