// What a maker reads of a program as it runs: its start, each stop with the cutter to fit, its end; lengths also in the program's unit.
import type { Cutter, Design } from "@lamplane/parameters/table";
import { formatDecimal, formatLength, fromMillimetres } from "@lamplane/parameters/units";
import { SET_UP } from "../words/router.ts";
import type { Program } from "./program.ts";

/** A length in the maker's unit, and in the program's where that is another. */
export function machineLength(mm: number, design: Design): string {
  const { units } = design.router;
  const text = formatLength(mm, design);
  if (units === design.units || design.shop.bothUnits === "yes") return text;
  return `${text} (${formatDecimal(fromMillimetres(mm, units), units === "in" ? 4 : 2)} ${units})`;
}

/** A feed in the maker's unit, and in the program's where that is another. @param feed mm/min */
export function machineFeed(feed: number, { units, router }: Design): string {
  const [own, programs] = [units, router.units].map(
    (unit) => `${formatDecimal(fromMillimetres(feed, unit), unit === "in" ? 2 : 0)} ${unit}/min`,
  ) as [string, string];
  return own === programs ? own : `${own} (${programs})`;
}

/** What is done when a cutter is to be fitted. @param isFirst whether nothing is cut before it */
export function fitText({ name }: Cutter, isFirst: boolean, design: Design): string {
  const { toolChange } = design.router;
  const number = design.cutters.findIndex((cutter) => cutter.name === name) + 1;
  if (toolChange === "m6-length") return SET_UP.fitByLength({ name, number });
  return isFirst && toolChange !== "m6" ? SET_UP.fit({ name }) : SET_UP.fitAtStop({ name });
}

/** Its start, its stops and its end, in the order of the program. */
export function runLines({ toolpaths }: Program, design: Design): string[] {
  const { parkHeight, spindleDelay, toolChange, zero } = design.router;
  const height = machineLength(parkHeight, design);
  const [first, ...others] = toolpaths.map(({ cutter }) => cutter.name);
  const place = { height, zero: SET_UP.zeroPlace[zero] };
  const change = {
    pause: (name: string) => SET_UP.stop({ name, ...place }),
    m6: (name: string) => SET_UP.stop({ name, ...place }),
    files: (name: string) => SET_UP.nextFile({ name, ...place }),
    "m6-length": (name: string) => SET_UP.changeByLength({ name, height }),
  }[toolChange];
  return [
    SET_UP.begin({ name: first!, height, delay: spindleDelay, isMeasured: toolChange === "m6-length" }),
    ...others.map(change),
    SET_UP.end({ height }),
  ];
}
