// The files of a plane's router programs: a program for each set-up, their sheets, a list with what is not cut.
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import type { RouterSheets, SetUpPage } from "@lamplane/sheets/pages";
import { SET_UP, SET_UP_LIST } from "../words/router.ts";
import { limitText, planePrograms } from "./plane-programs.ts";
import type { Program } from "./program.ts";
import { type ProgramFile, programFiles, setUpLines } from "./program-files.ts";
import { machineFeed, machineLength } from "./run-lines.ts";
import { featureOutline } from "./set-up.ts";
import { moveSegment, type Toolpath } from "./toolpath.ts";

export interface RouterFiles {
  /** Programs by path, and their list; none without a router or cutters. */
  readonly texts: ReadonlyMap<string, string>;
  readonly sheets: RouterSheets;
}

/** Undefined without a router and cutters. */
export function routerFiles(plane: Elevation, version: string): RouterFiles | undefined {
  const { design } = plane;
  const { name } = design;
  const planned = planePrograms(plane);
  if (!planned) return undefined;
  const { programs, limits } = planned;
  const named = programs.map((program) => ({ program, files: programFiles(program, design, version) }));
  const notCut = limits.map((limit) => [limit.title, limitText(limit, design)] as const);
  const list = [
    SET_UP_LIST.head({ plane: name }),
    ...named.map(({ program, files }) => `${pathsOf(files).join(", ")}: ${program.setUp.title}`),
    ...(notCut.length > 0 ? ["", SET_UP_LIST.notCut, ...notCut.map(([what, why]) => `${what}: ${why}`)] : []),
    "",
  ].join("\n");
  return {
    texts: new Map([
      ...named.flatMap(({ files }) => files.map(({ path, text }) => [path, text] as const)),
      ["router/set-ups.txt", list],
    ]),
    sheets: {
      plane: name,
      title: SET_UP_LIST.sheetTitle({ plane: name }),
      subject: SET_UP_LIST.sheetSubject,
      pages: named.map(({ program, files }) => setUpPage(program, pathsOf(files), design)),
      notCut: { heading: SET_UP_LIST.notCut, rows: notCut },
    },
  };
}

const pathsOf = (files: readonly ProgramFile[]): string[] => files.map(({ path }) => path);

/** A set-up's sheet. */
export function setUpPage(program: Program, files: readonly string[], design: Design): SetUpPage {
  const { setUp, toolpaths, tabs } = program;
  const { stock, corner } = setUp;
  const mm = (value: number) => machineLength(value, design);
  const rows = toolpaths.map(({ cutter: { name, diameter, cutting, speed, feed, plunge, step, finish } }) => [
    name,
    mm(diameter),
    mm(cutting),
    `${speed} rpm`,
    machineFeed(feed, design),
    machineFeed(plunge, design),
    mm(step),
    mm(finish),
  ]);
  return {
    title: setUp.title,
    files,
    steps: setUpLines(program, design),
    cutters: [["Cutter", "Diameter", "Reach", "Speed", "Feed", "Plunge", "Pass", "Finish"], ...rows],
    caution: SET_UP.caution,
    drawing: {
      name: setUp.name,
      title: setUp.title,
      stock: { min: corner, max: { x: corner.x + stock.width, y: corner.y + stock.depth } },
      outlines: setUp.features.flatMap(featureOutline),
      ways: toolpaths.map((path) => ({ path: deepestWay(path), width: path.cutter.diameter })),
      tabs,
    },
    drawingKey: SET_UP.draws,
  };
}

/** Every stretch that the cutter goes through wood, seen from above, once. */
function deepestWay({ start, moves }: Toolpath) {
  const seen = new Set<string>();
  let at = start;
  return moves.flatMap((move) => {
    const segment = moveSegment(at, move);
    at = move.to;
    const key = [segment.from, segment.to]
      .map(({ x, y }) => `${x.toFixed(3)} ${y.toFixed(3)}`)
      .sort()
      .join(" ");
    if (move.kind === "rapid" || seen.has(key)) return [];
    seen.add(key);
    return [segment];
  });
}
