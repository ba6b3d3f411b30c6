// What the sheet shows of one design at one stage, as plain data: drawing, figures, notes, bench steps, plots.
import type { Finding, FindingWords } from "@lamplane/bench/checks";
import type { Design } from "@lamplane/parameters/table";
import type { Picture } from "@lamplane/sheets";
import type { StageName } from "./build-steps.ts";
import type { SheetPoint, View, ViewMark } from "./view.ts";

export type ChangeValue = number | string;
/** A parameter's path and its new value; undefined takes a measured value back. */
export type ParameterChange = readonly [path: string, value: ChangeValue | undefined];

/** Everything the sheet draws, for one design at one stage; words follow in `SheetWords`. */
export interface SheetPlane {
  readonly stage: StageName;
  readonly design: Design;
  readonly views: readonly View[];
  readonly figures: Readonly<Record<string, number>>;
  /** Named points of the elevation, mm: notes and measuring use them. */
  readonly points: Readonly<Record<string, SheetPoint>>;
  /** Parameters fixed by a step that is done: shown, no longer to be changed. */
  readonly locked: readonly string[];
  /** What each `auto` parameter has come out as. */
  readonly solved: Readonly<Record<string, number>>;
}

/** What stands beside the drawing: notes and bench steps. They come after it, so that the drawing waits for no check. */
export interface SheetWords {
  readonly findings: readonly FindingNote[];
  readonly passed: readonly PassedNote[];
  /** The steps of the stage that is shown. */
  readonly bench: readonly BenchStep[];
  /** What came out otherwise than asked for, in words. */
  readonly lost: readonly string[];
}

/** A finding in the maker's words and unit. */
export interface FindingNote extends Pick<Finding, "code" | "severity" | "place" | "source"> {
  readonly words: FindingWords;
}

/** A finding with the change that ends it, where one was found. */
export type RemediedFinding = Pick<Finding, "code"> & { readonly cure: Finding["cure"] | undefined };

export interface PassedNote {
  readonly code: string;
  readonly words: FindingWords;
}

/** One step at the bench: its task, its numbers, what is measured when it is done. */
export interface BenchStep {
  readonly title: string;
  readonly task: string;
  readonly isDone: boolean;
  readonly figures: readonly { readonly key: string; readonly name: string; readonly text: string }[];
  readonly measures: readonly {
    /** `measured.…`, a row of the table. */
    readonly path: string;
    readonly expected: number | undefined;
    readonly value: number | undefined;
    readonly unit: "mm" | "°";
    /** What it should come to, in words. */
    readonly wanted: string;
    /** Why the value is taken for a slip; it counts all the same. */
    readonly doubt?: string;
  }[];
}

export interface FigureDescription {
  readonly name: string;
  readonly unit: string;
  readonly formula: string;
  readonly help: string;
  readonly source: string;
}

/** The traveller's steps that lead to a step of the strip, with its picture. */
export interface Guide {
  readonly stage: StageName;
  readonly picture: Picture | undefined;
  readonly steps: readonly GuideStep[];
  /** A drawing of each step of the strip; those that cannot be drawn are left out. */
  readonly strip: readonly StripDrawing[];
}

export interface GuideStep {
  readonly key: string;
  readonly title: string;
  readonly task: string;
  readonly numbers: readonly { readonly label: string; readonly value: string }[];
}

export interface StripDrawing {
  readonly stage: StageName;
  readonly box: View["box"];
  readonly marks: readonly Pick<ViewMark, "d" | "area">[];
}

export type PlotName = "mouth" | "throat" | "seasons" | "shares";
export type Plots = Readonly<Partial<Record<PlotName, Picture | undefined>>>;
