import type { Handout, Refusal } from "./projects.js";

/** What the event "turncloth" tells after each change: one of the two. */
export interface ProjectMade {
  made?: Handout;
  refusal?: Refusal;
}

/** `<turncloth-project src="peg_bag.json" size="14 x 12 in">`: one project file, its size to be typed, and its handout. */
export class TurnclothProject extends HTMLElement {
  /** The text of the file, in place of `src`. */
  design: string | undefined;
  addEventListener(type: "turncloth", told: (this: TurnclothProject, event: CustomEvent<ProjectMade>) => unknown, options?: boolean | AddEventListenerOptions): void;
  addEventListener<Kind extends keyof HTMLElementEventMap>(type: Kind, told: (this: HTMLElement, event: HTMLElementEventMap[Kind]) => unknown, options?: boolean | AddEventListenerOptions): void;
  addEventListener(type: string, told: EventListenerOrEventListenerObject, options?: boolean | AddEventListenerOptions): void;
}

declare global {
  interface HTMLElementTagNameMap {
    "turncloth-project": TurnclothProject;
  }
}
