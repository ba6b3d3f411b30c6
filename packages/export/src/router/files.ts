// The files of a plane's router programs: a program for each set-up, their sheets, a list with what is not cut.
import { circleOutline } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Cutter, Design } from "@lamplane/parameters/table";
import { formatDecimal, formatValue } from "@lamplane/parameters/units";
import type { RouterSheets, SetUpPage } from "@lamplane/sheets/pages";
import { SET_UP, SET_UP_LIST } from "../words/router.ts";
import { limitText, planePrograms } from "./plane-programs.ts";
import type { Program } from "./program.ts";
import { programText } from "./rs274.ts";
import { isThrough } from "./set-up.ts";
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
    ...named.map(({ program, files }) => `${[...files.keys()].join(", ")}: ${program.setUp.title}`),
    ...(notCut.length > 0 ? ["", SET_UP_LIST.notCut, ...notCut.map(([what, why]) => `${what}: ${why}`)] : []),
    "",
  ].join("\n");
  return {
    texts: new Map([...named.flatMap(({ files }) => [...files]), ["router/set-ups.txt", list]]),
    sheets: {
      plane: name,
      title: SET_UP_LIST.sheetTitle({ plane: name }),
      subject: SET_UP_LIST.sheetSubject,
      pages: named.map(({ program, files }) => setUpPage(program, [...files.keys()], design)),
      notCut: { heading: SET_UP_LIST.notCut, rows: notCut },
    },
  };
}

/** One program, or one for each cutter where the router's hand changes files with them; by their paths in a folder. */
export function programFiles(
  program: Program,
  design: Design,
  version: string,
  folder = "router",
): Map<string, string> {
  const { setUp, toolpaths } = program;
  const parts =
    design.router.toolChange === "files" && toolpaths.length > 1
      ? toolpaths.map((path, i) => ({ end: `-${i + 1}-${path.cutter.name}`, toolpaths: [path] }))
      : [{ end: "", toolpaths }];
  const fit = ({ name }: Cutter) => SET_UP.fit({ name });
  return new Map(
    parts.map((part) => {
      const whole = { ...program, toolpaths: part.toolpaths };
      const title = SET_UP.title({ title: setUp.title, plane: design.name, version });
      const head = [title, ...setUpLines(whole, design), SET_UP.caution];
      const text = programText(whole, design.router, design.cutters, { head, fit });
      return [`${folder}/${setUp.name}${part.end}.ngc`, text];
    }),
  );
}

/** Stock, zero, cutters, how it is held, what is left, how long it takes. */
function setUpLines(program: Program, design: Design): string[] {
  const { setUp, toolpaths, tabs, cornersLeft, minutes } = program;
  const { router } = design;
  const mm = (value: number) => formatValue(value, "mm", design);
  const { stock } = setUp;
  const size = { width: mm(stock.width), depth: mm(stock.depth), thickness: mm(stock.thickness) };
  const isCradle = setUp.holding === "cradle";
  const place = router.zero === "corner-top" ? "top" : "spoilboard";
  return [
    isCradle ? SET_UP.block(size) : SET_UP.stock(size),
    SET_UP.zero[`${isCradle ? "tip" : "corner"}-${place}`],
    isCradle
      ? SET_UP.cradle
      : SET_UP.tabs({
          count: tabs.length,
          parts: setUp.features.filter(({ kind }) => kind === "outer").length,
          width: mm(router.tabs.width),
          height: mm(router.tabs.height),
          margin: mm(freeMargin(program, design)),
        }),
    SET_UP.clamps({ height: mm(router.rapidHeight) }),
    ...(setUp.features.some((feature) => isThrough(setUp, feature))
      ? [SET_UP.through({ depth: mm(router.through) })]
      : []),
    ...toolpaths.map(({ cutter }) =>
      SET_UP.cutter[cutter.kind]({
        number: design.cutters.indexOf(cutter) + 1,
        name: cutter.name,
        diameter: mm(cutter.diameter),
        speed: cutter.speed,
      }),
    ),
    ...(cornersLeft.length > 0
      ? [SET_UP.corners({ count: cornersLeft.length, gap: mm(Math.max(...cornersLeft.map(({ gap }) => gap))) })]
      : []),
    SET_UP.minutes({ minutes: formatDecimal(Math.max(0.5, minutes), 1) }),
  ];
}

/** Wood at the stock's edge that no cutter comes to, mm. */
const freeMargin = ({ toolpaths }: Program, { router }: Design): number =>
  Math.max(0, router.margin - Math.max(...toolpaths.map(({ cutter }) => cutter.diameter + cutter.finish)));

/** A set-up's sheet. */
export function setUpPage(program: Program, files: readonly string[], design: Design): SetUpPage {
  const { setUp, toolpaths, tabs } = program;
  const { stock, corner } = setUp;
  const mm = (value: number) => formatValue(value, "mm", design);
  const rows = toolpaths.map(({ cutter: { name, diameter, cutting, speed, feed, plunge, step, finish } }) => [
    name,
    mm(diameter),
    mm(cutting),
    `${speed} rpm`,
    `${feed} mm/min`,
    `${plunge} mm/min`,
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
      outlines: setUp.features.map((feature) =>
        feature.kind === "hole" ? circleOutline(feature.circle) : feature.outline,
      ),
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
