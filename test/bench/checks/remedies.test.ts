// Every remedy that a check knows goes the right way: one step of it brings what was judged nearer to its limit, or further over it.
import { withValue } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import { type Design, TABLE } from "@lamplane/parameters/table";
import { expect, test } from "vitest";
import { remedyPath, shareOfRange } from "../../../packages/bench/src/checks/cures.ts";
import type { Judgement } from "../../../packages/bench/src/checks/judgement.ts";
import { judgeChecks } from "../../../packages/bench/src/checks/judgements.ts";
import type { Remedy } from "../../../packages/bench/src/checks/remedy.ts";
import { type Changes, designWith, randomDesigns } from "../../support/designs.ts";
import { makeExplicit } from "../../support/explicit.ts";

/** How far a judged value lies on the right side of its limit. */
const margin = ({ value, limit, relation }: Judgement): number =>
  relation === "at most" ? limit - value : value - limit;

/** The judgement that belongs to one of before: the same code and the same subject. */
const sameOf = (judgement: Judgement, after: readonly Judgement[]): Judgement | undefined =>
  after.find((each) => each.code === judgement.code && each.subject === judgement.subject);

/** Pin, wedge, recess and tenons given, so that nothing else follows what a remedy moves. */
const fixed = (design: Design): Design => withValue(makeExplicit(design), "pin.tenonLength", 4);
const worse = (changes: Changes): Design => fixed(designWith(changes));

const designs: Design[] = [
  ...randomDesigns(53, 18).flatMap(({ design }, i) => (i % 3 === 0 ? [design, fixed(design)] : [fixed(design)])),
  ...randomDesigns(54, 8).map(({ design }) => ({ ...fixed(design), billet: { length: 400, width: 100, height: 70 } })),
  worse({ "hold.friction.steel": 0.1 }),
  worse({ "hold.friction.steel": 0.6 }),
  worse({ "hold.friction.wood": 0.1 }),
  worse({ "hold.friction.wood": 0.6 }),
  worse({ "pegs.diameter": 19, "body.trim": 40, "body.height": 30 }),
  worse({ "bed.angle": 60, "ramp.shape": "straight", "ramp.angle": 74 }),
  ...[250, 300, 400, 600].map((radius) =>
    worse({ "bed.angle": 58, "ramp.shape": "curved", "ramp.radius": radius, "ramp.wearAngle": 84 }),
  ),
];

/** Mends that do not go one way, and why. */
const OTHERWISE: Readonly<Record<string, string>> = {
  "pin-to-ramp: bed.angle up": "over a bed of 50 the ramp turns curved, and gives room",
  "throat-narrowing: ramp.radius down":
    "it widens the throat before the narrow place too, and helps once there is room there",
  "throat-narrowing: ramp.wearAngle down": "as the radius does",
};

const named = ({ code }: Judgement, { parameter, toward }: Remedy): string => `${code}: ${parameter} ${toward}`;

/** Steps of its row that a remedy is tried by. */
const STEPS = 4;

const tally = new Map<string, { helps: number; hurts: number }>();
for (const design of designs) {
  const plane = elevation(design);
  for (const judgement of judgeChecks(plane))
    for (const remedy of judgement.remedies) {
      const count = tally.get(named(judgement, remedy)) ?? { helps: 0, hurts: 0 };
      tally.set(named(judgement, remedy), count);
      const way = remedyPath(plane, remedy);
      if (!way || way.last < 1) continue;
      const moved = withValue(design, remedy.parameter, way.valueAfter(Math.min(STEPS, way.last)));
      const after = sameOf(judgement, judgeChecks(elevation(moved)));
      const gain = after ? margin(after) - margin(judgement) : Number(judgement.severity !== "passed");
      if (gain > 1e-9) count.helps++;
      if (gain < -1e-9) count.hurts++;
    }
}

test("nearly all remedies are met, and seen to help", () => {
  expect(tally.size).toBeGreaterThan(60);
  const helping = [...tally.values()].filter(({ helps }) => helps > 0);
  expect(helping.length / tally.size).toBeGreaterThan(0.9);
});

/** An arch's end may be too high or too low: what is mended both ways helps one way or the other. */
const bothWays = (name: string): boolean =>
  tally.has(name.replace(/ up$/, " down")) && tally.has(name.replace(/ down$/, " up"));

test("only an arch is mended both ways", () => {
  for (const name of tally.keys()) if (bothWays(name)) expect(name).toMatch(/^top-arcs/);
});

test.each([...tally].filter(([name]) => !(name in OTHERWISE || bothWays(name))))("%s", (_, { helps, hurts }) =>
  expect(helps).toBeGreaterThanOrEqual(hurts),
);

test("a cure's cost is the share of the way to the row's limit that it goes; a word goes all the way", () => {
  const plane = elevation(designWith({ "body.trim": 20 }));
  const way = (parameter: string, toward: Remedy["toward"], value: number | string) =>
    shareOfRange(plane, { parameter, toward }, { parameter, value });
  const { max, min } = TABLE.body.trim;
  expect(way("body.trim", "up", 20)).toBe(0);
  expect(way("body.trim", "up", max)).toBeCloseTo(1, 9);
  expect(way("body.trim", "up", (20 + max) / 2)).toBeCloseTo(0.5, 9);
  expect(way("body.trim", "down", min)).toBeCloseTo(1, 9);
  expect(way("body.trim", "down", 15)).toBeCloseTo(0.25, 9);
  expect(way("ramp.shape", "up", "curved")).toBe(1);
});
