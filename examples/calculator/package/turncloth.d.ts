/** A size as a person types it ("12 1/2 in", "31,75 cm", "5' 3\""), or a number in `units`. */
export type Size = string | number;
/** What a number without a unit is in. */
export type Units = "in" | "cm";

/** A length, exact as a text and near as a number: show `text`, compute with `near`. */
export interface Length {
  exact: string;
  unit: Units;
  near: number;
  /** In both units, to a sixteenth of an inch and a millimetre, its own first: "12 1/2 in (31.8 cm)". */
  text: string;
}
/** A length with the sum that it comes from: "16 in = 14 in finished + 2 x (1/2 + 1/2) in self-binding". */
export interface Figure extends Length {
  working?: string;
}
export interface Line {
  label: string;
  figure: string;
  working?: string;
}
/** What every calculation gives beside its own figures. */
export interface Answer {
  /** The same figures for people, in the order in which they are read. */
  lines: Line[];
  /** Sentences for whoever does the work: show them too. */
  cautions: string[];
  /** SVG, for a screen. */
  drawing?: string;
  /** SVG, a whole page of paper true to its scale. */
  printed?: string;
}
export interface Asked {
  /** "in" where none is given. */
  units?: Units;
}

export type Finish =
  | { is: "raw edge" }
  | { is: "seam"; allowance: Size }
  | { is: "single-turned hem"; depth: Size; inset?: Size }
  | { is: "double-turned hem"; first: Size; depth: Size; inset?: Size; turn?: Size }
  | { is: "heading"; depth: Size; under?: Size; inset?: Size }
  | { is: "casing"; depth: Size; channel: Size; under?: Size; inset?: Size }
  | { is: "self-binding"; width: Size; inset?: Size; turn?: Size }
  | { is: "separate binding"; width: Size }
  | { is: "French seam"; first: Size; second: Size }
  | { is: "flat-felled seam, over"; width: Size; under: Size; inset?: Size }
  | { is: "flat-felled seam, under"; allowance: Size }
  | { is: "lapped seam, over"; under?: Size; inset?: Size }
  | { is: "lapped seam, under"; lap: Size; inset?: Size };

export interface AskedPanel extends Asked {
  /** Finished. */
  width: Size;
  height: Size;
  /** `all` holds for those that are not named; raw where neither is given. */
  edges?: { all?: Finish; top?: Finish; right?: Finish; bottom?: Finish; left?: Finish };
}
/** Folds and stitching from the cut edge. */
export interface PanelEdge {
  finish: string;
  allowance: Length;
  folds: Length[];
  stitching: Length[];
}
export interface Panel extends Answer {
  cut: { width: Figure; height: Figure };
  edges: { top: PanelEdge; right: PanelEdge; bottom: PanelEdge; left: PanelEdge };
}

export interface AskedDivision extends Asked {
  length: Size;
  parts: Size;
}
export interface Division extends Answer {
  part: Length;
  /** From the same end: one fewer than the parts. */
  marks: Length[];
}

export interface AskedMap extends Asked {
  longer: Size;
  shorter: Size;
  spans: Size;
}
export interface Mapping extends Answer {
  /** Longer over shorter. */
  fullness: { exact: string; near: number };
  /** Of the longer piece, in each span. */
  extra: Length;
  marks: { longer: Length; shorter: Length }[];
}

export interface AskedZippers extends Asked {
  /** From seam to seam, finished. */
  across: Size;
  /** From a seam to the opening. */
  margin: Size;
  /** Tape beyond the opening, at each end. */
  beyond: Size;
  /** How many zippers. */
  pieces: Size;
  /** The length of one roll. */
  roll: Size;
}
export interface Zippers extends Answer {
  opening: Figure;
  tape: Figure;
  clearance: Length;
  sliders: number;
  from_one_roll: number;
  rolls: number;
  left: Length;
}

export interface ClothPiece {
  name?: string;
  /** Cut sizes: the width lies across the cloth, the height along its grain. */
  width: Size;
  height: Size;
  count?: Size;
  may_turn?: boolean;
}
export interface AskedCloth extends Asked {
  /** A list, or rows as they are typed: "3 of 13 x 9; 29 x 32 may turn". */
  pieces: ClothPiece[] | string;
  /** Selvedges included. */
  width: Size;
  selvedge?: Size;
  /** The least distance between two pieces. */
  gap?: Size;
  /** Trimmed off at each end to straighten it. */
  ends?: Size;
}
export interface Cloth extends Answer {
  laid: Length;
  proved_best: boolean;
  /** No lay can be shorter; there where it is not proved that this one is the shortest. */
  bound?: Length;
  /** Rounded up to eighths of a yard, or tens of centimetres. */
  buy: Figure;
  usable_width: Length;
  places: { piece: number; from_left: Length; from_end: Length; turned: boolean }[];
}

export type FaultKind =
  | "too_small" | "too_large" | "no_room" | "disagree" | "missing"
  | "repeated" | "unsuitable" | "unreadable" | "does_not_fit" | "undefined";

export interface Amount {
  exact?: string;
  near: number;
  /** Absent for a count or a plain number. */
  unit?: string;
}
/** Why something was not worked out: `message` for people, the rest for programs. */
export class Refusal extends Error {
  readonly kind: FaultKind;
  /** The member of what was given, by its path: "width", "edges/top/depth". */
  readonly field?: string;
  readonly what?: string;
  readonly given?: Amount;
  readonly least?: Amount;
  readonly most?: Amount;
  readonly index?: number;
  readonly where?: string;
}

export interface AskedField {
  name: string;
  label: string;
  kind: "length" | "count" | "pieces" | "choice";
  first: { in: string; cm: string };
  /** What a choice may be. */
  choices?: string[];
}
export interface Calculation {
  name: string;
  title: string;
  about: string;
  asks: AskedField[];
}

/** Loads the engine beforehand; each calculation does it by itself. */
export function load(): Promise<unknown>;
export function list(): Promise<Calculation[]>;
/** Each rejects with a Refusal where what was given cannot be made. */
export function panel(given: AskedPanel): Promise<Panel>;
export function divide(given: AskedDivision): Promise<Division>;
export function map(given: AskedMap): Promise<Mapping>;
export function zipper(given: AskedZippers): Promise<Zippers>;
export function cloth(given: AskedCloth): Promise<Cloth>;
/** Any calculation that list() names, one of your own among them. */
export function calculate(name: string, given?: Record<string, unknown>): Promise<Answer & Record<string, unknown>>;
/** What was typed with its units written out. */
export function withUnits(name: string, typed: Record<string, unknown>): Promise<Record<string, string>>;
