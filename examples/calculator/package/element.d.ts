import type { Answer, Refusal } from "./turncloth.js";

/** What the event "turncloth" tells after each change: one of the two. */
export interface Worked {
  answer?: Answer & Record<string, unknown>;
  refusal?: Refusal;
}

/** `<turncloth-calculator sum="zipper" units="cm" across="30 cm">`: one calculation as a form with its answers. */
export class TurnclothCalculator extends HTMLElement {}

declare global {
  interface HTMLElementTagNameMap {
    "turncloth-calculator": TurnclothCalculator;
  }
  interface HTMLElementEventMap {
    turncloth: CustomEvent<Worked>;
  }
}
