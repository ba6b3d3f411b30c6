// What a maker reads of a program, and its files: head and text, one file or one for each cutter.
import { clearedBy, cornerRelief } from "@lamplane/parameters/jigs";
import { type Cutter, type Design, TABLE } from "@lamplane/parameters/table";
import { formatDecimal, formatValue } from "@lamplane/parameters/units";
import { SET_UP } from "../words/router.ts";
import type { Program } from "./program.ts";
import { programText } from "./rs274.ts";
import { fitText, machineLength, runLines } from "./run-lines.ts";
import { isThrough } from "./set-up.ts";
import type { Toolpath } from "./toolpath.ts";

/** A program's file: its path in the pack, its text, what each line of it does. */
export interface ProgramFile {
  readonly path: string;
  readonly text: string;
  readonly toolpaths: readonly Toolpath[];
  /** For each toolpath, the number of each move's line in the text. */
  readonly lines: readonly (readonly number[])[];
}

/** One program, or one for each cutter where the router's hand changes files with them; by their paths in a folder. */
export function programFiles(program: Program, design: Design, version: string, folder = "router"): ProgramFile[] {
  const { setUp, toolpaths } = program;
  const parts =
    design.router.toolChange === "files" && toolpaths.length > 1
      ? toolpaths.map((path, i) => ({ end: `-${i + 1}-${path.cutter.name}`, toolpaths: [path] }))
      : [{ end: "", toolpaths }];
  const done = SET_UP.end({ height: machineLength(design.router.parkHeight, design) });
  return parts.map((part) => {
    const whole = { ...program, toolpaths: part.toolpaths };
    const title = SET_UP.title({ title: setUp.title, plane: design.name, version });
    const head = [title, ...setUpLines(whole, design), SET_UP.caution];
    const fit = (cutter: Cutter) => fitText(cutter, cutter === part.toolpaths[0]!.cutter, design);
    const path = `${folder}/${setUp.name}${part.end}.ngc`;
    return { path, ...part, ...programText(whole, design.router, design.cutters, { head, fit, done }) };
  });
}

/** Stock, zero, cutters, how it is held, what is left, how long it takes. */
export function setUpLines(program: Program, design: Design): string[] {
  const { setUp, toolpaths, tabs, minutes } = program;
  const { router } = design;
  const mm = (value: number) => machineLength(value, design);
  const { stock } = setUp;
  const size = { width: mm(stock.width), depth: mm(stock.depth), thickness: mm(stock.thickness) };
  const isCradle = setUp.holding === "cradle";
  const place = router.zero === "corner-top" ? "top" : "spoilboard";
  return [
    SET_UP.unit[router.units],
    ...(setUp.plates && setUp.plates > 1
      ? [SET_UP.plates({ count: setUp.plates, total: mm(setUp.plates * stock.thickness) })]
      : []),
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
    ...setUp.features.flatMap((feature) =>
      feature.kind === "engraving" ? [SET_UP.engraving({ depth: mm(feature.depth) })] : [],
    ),
    ...toolpaths.map(({ cutter }) =>
      SET_UP.cutter[cutter.kind]({
        number: design.cutters.indexOf(cutter) + 1,
        name: cutter.name,
        diameter: mm(cutter.diameter),
        speed: cutter.speed,
      }),
    ),
    ...runLines(program, design),
    ...cornerLines(program, design),
    SET_UP.minutes({ minutes: formatDecimal(Math.max(0.5, minutes), 1) }),
  ];
}

/** Wood at the stock's edge that no cutter comes to, mm. */
const freeMargin = ({ toolpaths }: Program, { router }: Design): number =>
  Math.max(0, router.margin - Math.max(...toolpaths.map(({ cutter }) => cutter.diameter + cutter.finish)));

/** Corners that the cutter leaves round, and for a jig the relief by which it would leave none. */
function cornerLines({ setUp, toolpaths, cornersLeft }: Program, design: Design): string[] {
  if (cornersLeft.length === 0) return [];
  const mm = (value: number) => formatValue(value, "mm", design);
  const gap = mm(Math.max(...cornersLeft.map((corner) => corner.gap)));
  const relief = clearedBy(toolpaths.at(-1)!.cutter.diameter); // of who goes round
  const helps = setUp.name.startsWith("jig-") && cornerRelief(design) < relief && relief <= TABLE.jigs.relief.max;
  return [
    SET_UP.corners({ count: cornersLeft.length, gap }),
    ...(helps ? [SET_UP.relief({ radius: mm(relief) })] : []),
  ];
}
