// A plane's router programs for the eye: every move with its line and its time, from the same data as the program's text.
import { NESTED_FOLDER, notNested, sheetPrograms } from "@lamplane/export/nested";
import {
  type CutRole,
  featureOutline,
  limitText,
  moveMinutes,
  moveSegment,
  type Point3D,
  type Program,
  type ProgramFile,
  planePrograms,
  programFiles,
} from "@lamplane/export/router";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { LengthStyle } from "@lamplane/parameters/units";
import { outlinePath, pathOf } from "../path-data.ts";
import { ROUTER } from "../words/router.ts";

export type StepRole = CutRole | "rapid";

/** A move: from where to where, seen from above, when, and which line of which file makes it. mm, seconds */
export interface PathStep {
  readonly role: StepRole;
  readonly from: Point3D;
  readonly to: Point3D;
  /** Middle and turn of an arc; undefined for a line. */
  readonly centre?: { readonly x: number; readonly y: number };
  readonly sweep?: number;
  readonly d: string;
  readonly begin: number;
  readonly end: number;
  readonly file: number;
  readonly line: number;
  readonly cutter: number;
}

export interface RouterPath {
  readonly name: string;
  readonly title: string;
  readonly files: readonly { readonly path: string; readonly lines: readonly string[] }[];
  readonly cutters: readonly { readonly name: string; readonly diameter: number }[];
  readonly stock: { readonly min: Point3D; readonly max: Point3D };
  /** The part's outlines and holes, as path data. */
  readonly outlines: readonly string[];
  readonly tabs: readonly { readonly x: number; readonly y: number }[];
  readonly steps: readonly PathStep[];
  /** Seconds, changes of cutter not counted. */
  readonly duration: number;
  /** Numbers of the steps with which a pass begins. */
  readonly passes: readonly number[];
}

export interface RouterPaths {
  readonly paths: readonly RouterPath[];
  readonly notCut: readonly { readonly title: string; readonly why: string }[];
  readonly style: LengthStyle;
}

/** Parts by themselves, then the shop's sheets; undefined for a design without a router. */
export function routerPaths(plane: Elevation, version: string): RouterPaths | undefined {
  const planned = planePrograms(plane);
  if (!planned) return undefined;
  const { design } = plane;
  const nested = sheetPrograms(plane);
  const programs = nested?.sheets.flatMap(({ program }) => (program ? [program] : [])) ?? [];
  return {
    paths: [
      ...planned.programs.map((program) => routerPath(program, programFiles(program, design, version))),
      ...programs.map((program) => routerPath(program, programFiles(program, design, version, NESTED_FOLDER))),
    ],
    notCut: [
      ...planned.limits.map((limit) => ({ title: limit.title, why: limitText(limit, design) })),
      ...(nested
        ? notNested(nested, design).map(({ what, text }) => ({ title: ROUTER.onSheet(what), why: text }))
        : []),
    ],
    style: { units: design.units, shop: design.shop },
  };
}

function routerPath({ setUp, tabs }: Program, files: readonly ProgramFile[]): RouterPath {
  const { stock, corner } = setUp;
  const toolpaths = files.flatMap(({ toolpaths: paths, lines }, file) =>
    paths.map((toolpath, i) => ({ toolpath, file, lines: lines[i]! })),
  );
  const steps: PathStep[] = [];
  toolpaths.forEach(({ toolpath: { start, moves }, file, lines }, cutter) => {
    let at = steps.at(-1)?.to ?? start; // a change of cutter moves nothing
    moves.forEach((move, i) => {
      const begin = steps.at(-1)?.end ?? 0;
      steps.push({
        role: move.kind === "rapid" ? "rapid" : move.role,
        from: at,
        to: move.to,
        ...(move.kind === "arc" && { centre: move.centre, sweep: move.sweep }),
        d: pathOf([moveSegment(at, move)]),
        begin,
        end: begin + 60 * moveMinutes(at, move),
        file,
        line: lines[i]!,
        cutter,
      });
      at = move.to;
    });
  });
  return {
    name: setUp.name,
    title: setUp.title,
    files: files.map(({ path, text }) => ({ path, lines: text.trimEnd().split("\n") })),
    cutters: toolpaths.map(({ toolpath: { cutter } }) => ({ name: cutter.name, diameter: cutter.diameter })),
    stock: {
      min: { ...corner, z: -stock.thickness },
      max: { x: corner.x + stock.width, y: corner.y + stock.depth, z: 0 },
    },
    outlines: setUp.features.flatMap(featureOutline).map(outlinePath),
    tabs,
    steps,
    duration: steps.at(-1)?.end ?? 0,
    passes: passStarts(steps),
  };
}

/** A pass begins with the first cut after a rapid move, and wherever the cutter has come deeper than since then. */
function passStarts(steps: readonly PathStep[]): number[] {
  let deepest = Number.POSITIVE_INFINITY;
  return steps.flatMap(({ role, to }, i) => {
    if (role === "rapid") deepest = Number.POSITIVE_INFINITY;
    if ((role !== "pass" && role !== "finish") || to.z > deepest - DEEPER) return [];
    deepest = to.z;
    return [i];
  });
}
/** mm */
const DEEPER = 0.01;
