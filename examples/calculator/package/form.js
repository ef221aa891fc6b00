// One calculation as a form with its answers, laid into any element: what the custom element and the page share.
import { calculate, withUnits } from "./turncloth.js";

const pause = 700; // ms without a change before anything is announced: a screen reader is not talked over while typing

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

export class CalculationForm {
  #root; #of; #given; #changed; #units; #parts; #announcing; #asked = 0;

  /// `of` is one of list(); `typed` what its fields hold, over their first values; `given` goes with every question;
  /// `changed` is told after each answer or refusal.
  constructor(root, { of, typed = {}, units = "in", given = {}, changed = () => {} }) {
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
  }

  get units() { return this.#units; }
  get typed() { return Object.fromEntries(this.#inputs().map(input => [input.name, input.value])); }
  get labels() { return Object.fromEntries(this.#of.asks.map(({ name, label }) => [name, label])); }

  #inputs() { return [...this.#parts.form.querySelectorAll("input[type=text]")]; }

  #layOut(typed) {
    const choice = element("fieldset", undefined, {}, element("legend", "A number without a unit, and the working, are in"));
    for (const [unit, name] of Object.entries(unitNames)) {
      const radio = element("input", undefined, { type: "radio", name: "units", value: unit, ...(unit === this.#units && { checked: "" }) });
      choice.append(element("label", undefined, {}, radio, " " + name));
    }
    const rows = this.#of.asks.map(({ name, label, first, kind }) =>
      element("p", undefined, {}, element("label", label, { for: name }),
              element("input", undefined, { type: "text", id: name, name, part: "field", value: typed[name] ?? first[this.#units], "aria-describedby": "why-" + name, ...(kind === "count" && { inputmode: "numeric" }) }),
              element("span", "", { id: "why-" + name, class: "why", part: "why" })));
    this.#parts.form.replaceChildren(choice, ...rows);
  }

  // Numbers that have no unit get the one they were typed in before the form goes over to the other.
  async #changeUnits(to) {
    const before = this.typed;
    const written = await withUnits(this.#of.name, { ...before, units: this.#units });
    const changed = this.#inputs().filter(input => written[input.name] !== undefined && written[input.name] !== before[input.name]);
    for (const input of changed) input.value = written[input.name];
    this.#parts.note.textContent = changed.length ? `Your sizes stay in ${unitNames[this.#units]}, which is now written beside them. A number that you type without a unit is in ${unitNames[to]}.` : "";
    this.#units = to;
    await this.workOut();
  }

  async workOut() {
    const asked = ++this.#asked;
    let answer, refusal;
    try {
      answer = await calculate(this.#of.name, { ...this.#given, ...this.typed, units: this.#units });
    } catch (why) {
      refusal = why;
    }
    if (asked !== this.#asked) return; // something else was typed meanwhile
    if (answer) this.#show(answer);
    this.#refuse(refusal);
    this.#announce(refusal ? refusal.message : answer.lines.slice(0, 6).map(({ label, figure }) => `${label}: ${figure}`).join("; "));
    this.#changed({ answer, refusal });
  }

  #refuse(refusal) {
    const field = refusal?.field?.split("/")[0];
    let beside = false; // whether it is shown beside a field
    for (const input of this.#inputs()) {
      const wrong = input.name === field;
      beside ||= wrong;
      input.setAttribute("aria-invalid", wrong);
      this.#root.querySelector(`#why-${input.name}`).textContent = wrong ? refusal.message : "";
    }
    this.#parts.refused.textContent = refusal && !beside ? refusal.message : "";
    // The last good answer stays, and is told to be that.
    const stale = Boolean(refusal);
    for (const part of [this.#parts.answers, this.#parts.drawing]) part.classList.toggle("stale", stale);
    this.#parts.answers.querySelector(".before")?.remove();
    if (stale && this.#parts.answers.firstChild) this.#parts.answers.prepend(element("p", "The answer before this change:", { class: "before" }));
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
