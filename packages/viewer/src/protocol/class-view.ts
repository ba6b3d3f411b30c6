// A class as the page shows it: plain data from the worker that reads the roster.
import type { StripDrawing } from "./sheet-data.ts";

/** The class's own files, as the command writes them. */
export type ClassFileName = "class.pdf" | "class.csv" | "class-sheets.zip";

/** A file of a class: the roster, its base design, the shop file, a plane's own. */
export interface ClassText {
  readonly name: string;
  readonly text: string;
  /** Whether it is known to be the shop file; otherwise it is the one that the base design names. */
  readonly isShop?: boolean;
  /** Of a file that is followed. */
  readonly version?: string;
}

export interface ClassRequest {
  /** As far as they are at hand. */
  readonly files: readonly ClassText[];
  /** One of the class's files; the class itself where absent. */
  readonly file?: ClassFileName;
  /** How many core widths; the fewest where absent. */
  readonly groups?: number | undefined;
}

export type ClassResponse =
  | { readonly kind: "class"; readonly view: ClassView }
  | { readonly kind: "class-file"; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly kind: "failed"; readonly words: string };

/** A row of the roster. */
export interface PlaneCard {
  /** In the roster, from 1. */
  readonly number: number;
  readonly name: string;
  /** Absent for a row with faults. */
  readonly plane?: PlaneProgress;
  /** Faults of the row, or what the build is stuck on. */
  readonly notes: readonly string[];
}

/** A plane of the class as it stands. */
export interface PlaneProgress {
  /** Its own design file, as the command writes it. */
  readonly file: ClassText;
  /** Shop file that its design file names. */
  readonly shop?: ClassText;
  readonly drawing?: Pick<StripDrawing, "box" | "marks">;
  /** Iron and core. */
  readonly size: string;
  readonly step: string;
  readonly stepsDone: number;
  readonly steps: number;
  readonly measured: string;
  /** "" where the build goes on. */
  readonly hurdle: string;
  readonly isStuck: boolean;
}

export interface ClassView {
  /** The roster's, without its ending. */
  readonly name: string;
  /** How many planes there are, how many are built and how many stuck. */
  readonly heading: string;
  /** The numbers that the class shares, a line each. */
  readonly setups: readonly string[];
  /** How many core widths there may be. */
  readonly coreWidths: { readonly fewest: number; readonly most: number };
  /** What lies on the shop's sheets, a line each; empty where it has none. */
  readonly sheets: readonly string[];
  /** What comes out of the boards, a line each; empty without boards. */
  readonly boards: readonly string[];
  readonly planes: readonly PlaneCard[];
  /** What keeps the class from being laid out, with its places. */
  readonly faults: readonly string[];
}
