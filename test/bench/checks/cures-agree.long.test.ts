// Remedies of one list never pull a parameter both ways, and whoever follows them comes to an end.
import { asBuiltPlane } from "@lamplane/bench";
import { checkPlane, type Finding } from "@lamplane/bench/checks";
import { valueAt, withValue } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import { type Changes, designWith, randomDesigns } from "../../support/designs.ts";

/** A small body with the pin that its height brings, over irons from narrow to far too wide; and irons of no common size. */
const SMALL: readonly Changes[] = [25, 32, 35, 38, 44].flatMap((width) =>
  [0, 3.2].map((capIron) => ({
    "iron.width": width,
    "iron.thickness": 3.2,
    "capIron.thickness": capIron,
    "body.length": 120,
    "body.height": 35,
    "pin.diameter": 7.1,
    "pin.tenon": 5.6,
  })),
);

const DESIGNS: readonly Design[] = [...SMALL.map(designWith), ...randomDesigns(19, 12).map(({ design }) => design)];

describe.each(DESIGNS.map((design, i) => ({ design, i })))("design $i", ({ design }) => {
  test("no two cures move one parameter in opposite ways", () => {
    const senses = new Map<string, Set<number>>();
    for (const { parameter, value } of curesOf(design)) {
      const from = valueAt(design, parameter);
      if (typeof value !== "number" || typeof from !== "number") continue;
      senses.set(parameter, (senses.get(parameter) ?? new Set()).add(Math.sign(value - from)));
    }
    expect([...senses].filter(([, ways]) => ways.size > 1)).toEqual([]);
  });

  test("following the first cure of each list ends, and each time with fewer stops, or as few and fewer warnings", () => {
    let [now, counts] = [design, countFindings(design)];
    for (let change = firstCure(now); change; change = firstCure(now)) {
      now = change.reduce((to, { parameter, value }) => withValue(to, parameter, value), now);
      const after = countFindings(now);
      expect([after, counts]).toSatisfy(([a, b]: Counts[]) => isFewer(a!, b!));
      counts = after;
    }
  });
});

type Counts = readonly [stops: number, warnings: number];

const findings = (design: Design): Finding[] => checkPlane(asBuiltPlane(design)).filter((f) => f.severity !== "note");
const curesOf = (design: Design) => findings(design).flatMap(({ cure }) => cure ?? []);
const firstCure = (design: Design) => findings(design).find(({ cure }) => cure)?.cure;

function countFindings(design: Design): Counts {
  const all = findings(design);
  const stops = all.filter(({ severity }) => severity === "stop").length;
  return [stops, all.length - stops];
}

const isFewer = ([stops, warnings]: Counts, [stopsBefore, warningsBefore]: Counts): boolean =>
  stops < stopsBefore || (stops === stopsBefore && warnings < warningsBefore);
