// What page and workers say to each other: plain data. Every response carries the number of the request that it answers.
import type { Fault, ShopSource } from "@lamplane/parameters/design";
import type { BenchAnswer, BenchEntry } from "./bench-build.ts";
import type { BodyInfo, PartMesh } from "./body-data.ts";
import type { StageName } from "./build-steps.ts";
import type { MouthFilm } from "./mouth-film.ts";
import type {
  FigureDescription,
  Guide,
  ParameterChange,
  Plots,
  RemediedFinding,
  SheetPlane,
  SheetWords,
} from "./sheet-data.ts";

interface Message<K extends string> {
  readonly kind: K;
  readonly requestId: number;
}

/** A worker's text from now on, by its number `base`. */
export interface OpenRequest extends Message<"open"> {
  readonly base: number;
  readonly text: string;
  readonly file: string;
  /** Shop file that goes with it. */
  readonly shop?: ShopSource;
}

/** About the design in a text, with changes in it, at a stage. */
export interface DesignRequest<K extends string> extends Message<K> {
  readonly base: number;
  readonly changes: readonly ParameterChange[];
  readonly stage: StageName;
}

/**
 * How a design file's text is wanted: as its maker keeps it; with the shop file's values in it, so that it can be sent on
 * alone; or that without comments, and without what a default says anyway.
 */
export type WrittenForm = "own" | "carried" | "short";

/** Asks for the text with the changes in it. */
interface WrittenRequest extends DesignRequest<"written"> {
  /** As its maker keeps it by default. */
  readonly form?: WrittenForm;
}

interface GuideRequest extends DesignRequest<"guide"> {
  /** Of the step's drawing, mm. */
  readonly width: number;
}

interface PlotsRequest extends DesignRequest<"plots"> {
  /** Of each picture, mm. */
  readonly width: number;
}

/** Asks for the bench screens of a design file, once an entry is made in it. */
export interface BenchRequest extends Message<"bench"> {
  /** Width of a step's drawing, mm. */
  readonly width: number;
  readonly text: string;
  readonly file: string;
  readonly entry?: BenchEntry;
}

export type WorkerRequest =
  | OpenRequest
  | BenchRequest
  | DesignRequest<"plane">
  | DesignRequest<"solid">
  | DesignRequest<"cures">
  | PlotsRequest
  | GuideRequest
  | WrittenRequest;

/** Number of a response to nothing: a worker that has started says so. */
export const UNREQUESTED = 0;

export type WorkerResponse =
  | ReadyResponse
  | OpenedResponse
  | TextRefusedResponse
  | RefusedResponse
  | SkippedResponse
  | PlaneResponse
  | WordsResponse
  | SolidResponse
  | NoSolidResponse
  | CuresResponse
  | PlotsResponse
  | GuideResponse
  | WrittenResponse
  | BenchResponse
  | BugResponse;

/** A worker that has started; its number is `UNREQUESTED`. */
interface ReadyResponse extends Message<"ready"> {
  readonly figures: Readonly<Record<string, FigureDescription>>;
}

/** A text is a design. */
interface OpenedResponse extends Message<"opened"> {
  readonly base: number;
}

/** A text is no design; the one before it stays open. */
export interface TextRefusedResponse extends Message<"text-refused"> {
  readonly base: number;
  readonly faults: readonly Fault[];
}

/** Changes that the table does not allow. */
export interface RefusedResponse extends Message<"refused"> {
  readonly base: number;
  readonly faults: readonly Fault[];
}

/** The request is about a text that is not open (any more). */
interface SkippedResponse extends Message<"skipped"> {}

/** Followed by the words of the same request, which end it. */
interface PlaneResponse extends Message<"plane"> {
  readonly plane: SheetPlane;
}

interface WordsResponse extends Message<"words"> {
  readonly words: SheetWords;
}

export interface SolidResponse extends Message<"solid"> {
  readonly parts: readonly PartMesh[];
  readonly about: BodyInfo;
}

/** No body can be made of the design; the findings say why. */
interface NoSolidResponse extends Message<"no-solid"> {}

interface CuresResponse extends Message<"cures"> {
  readonly findings: readonly RemediedFinding[];
}

interface PlotsResponse extends Message<"plots"> {
  readonly plots: Plots;
  readonly film: MouthFilm | undefined;
}

interface GuideResponse extends Message<"guide"> {
  readonly guide: Guide;
}

/** The text with the changes in it. */
interface WrittenResponse extends Message<"written"> {
  readonly text: string;
}

export interface BenchResponse extends Message<"bench"> {
  readonly answer: BenchAnswer;
}

/** An error of our own; the worker lives on. */
interface BugResponse extends Message<"bug"> {
  readonly message: string;
}
