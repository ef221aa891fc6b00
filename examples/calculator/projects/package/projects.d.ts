/** The text of a project file, or the object that it holds; turncloth's project_design.schema.json describes it. */
export type Design = string | { turncloth_design: 1; name: string; [member: string]: unknown };

export interface ProjectOptions {
  /** What figures are written in; "both" where none is given. With "cm", a project begins at its own metric size. */
  units?: "in" | "cm" | "both";
  /** Of the cloth to buy, selvedges included: "54 in" or "140 cm" where none is given. */
  clothWidth?: string | number;
}
export interface HandoutOptions extends ProjectOptions {
  author?: string;
  licence?: string;
  /** As it is to be printed. */
  date?: string;
  /** How each figure was found, at the end; there where nothing is said. */
  workings?: boolean;
}

export interface Made {
  name: string;
  /** Finished: "14 x 12 in". */
  size: string;
  /** The whole sheet, to be read. */
  text: string;
}
export interface ExactLength {
  exact: string;
  unit: "in" | "cm";
}
export interface SheetPiece {
  name: string;
  material: string;
  count: number;
  cut: { width: ExactLength & Record<string, unknown>; height: ExactLength & Record<string, unknown> };
  [member: string]: unknown;
}
/** As turncloth's sheet.schema.json describes it. */
export interface Sheet {
  turncloth_sheet: 1;
  name: string;
  finished: { width: ExactLength; height: ExactLength };
  pieces: SheetPiece[];
  meetings: Record<string, unknown>[];
  notions: { name: string; details: Record<string, unknown>[] }[];
  steps: Record<string, unknown>[];
  cautions: { at: string; sentence: string }[];
  warnings: string[];
  [member: string]: unknown;
}
export interface MadeSheet extends Made {
  sheet: Sheet;
}
export interface Handout extends Made {
  /** One file without a script and with nothing from elsewhere: show, mail, print or keep it as it stands. */
  html: string;
}

export interface DesignFault {
  /** A JSON Pointer into the file: "/pieces/0/width". */
  where: string;
  why: string;
  /** Of the text that stands there, from 1. */
  character?: number;
}
/** Why something was not made: `message` for people, the rest for programs. */
export class Refusal extends Error {
  readonly kind: string;
  /** "design", "size", "units", ... */
  readonly field?: string;
  readonly what?: string;
  /** All that the file has, where it is the file that is refused. */
  readonly faults?: DesignFault[];
}

/** Loads the engine beforehand; each function does it by itself. */
export function load(): Promise<unknown>;
/** The file's own first size where none is given. Each rejects with a Refusal where what was given cannot be made. */
export function sheet(design: Design, size?: string, options?: ProjectOptions): Promise<MadeSheet>;
export function handout(design: Design, size?: string, options?: HandoutOptions): Promise<Handout>;
