// Every number of the mouth that figures, next, the mouth command and the traveller print, beside each other: no two disagree.

import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { asBuiltPlane, plannedPlane } from "@lamplane/bench";
import { readDesign } from "@lamplane/parameters/design";
import { fromToeEnd, mouthOpeningAt } from "@lamplane/parameters/elevation";
import { parseLength } from "@lamplane/parameters/units";
import { travellerSteps } from "@lamplane/sheets";
import { afterAll, expect, test } from "vitest";
import { runCommand } from "../support/running.ts";

const EXAMPLES = readdirSync("examples").filter((name) => name.endsWith(".yaml"));
const folder = mkdtempSync(join(tmpdir(), "mouth-"));
afterAll(() => rmSync(folder, { recursive: true }));

const CURVED = [
  "iron: { width: 48, thickness: 3.6 }",
  "body: { length: 300 }",
  "bed: { angle: 55 }",
  "ramp: { shape: curved, wearAngle: 85, wearHeight: 0.5, radius: 20 }",
  "mouth: { opening: 0.2 }",
  "sole: { allowance: 2 }",
  "pin: { height: 36 }",
].join("\n");

/** A design glued and trued as far as the mouth's step, its front block so many mm nearer to the heel than planned. */
function atMouthStep(text: string, nearer: number, name: string): string {
  const plan = readDesign(text, name);
  if (!("design" in plan)) throw new Error(`${name}: ${JSON.stringify(plan)}`);
  const plane = plannedPlane(plan.design!);
  const tip = fromToeEnd(plane, plane.points.rampTip.x) + nearer;
  const unit = "mm";
  const file = join(folder, `${name}-${nearer}.yaml`);
  writeFileSync(file, `${text}\nmeasured: { rampTipFromEnd: ${tip} ${unit}, allowanceLeft: 0.2 ${unit} }\n`);
  return file;
}

const CASES = [
  ...EXAMPLES.map((name) => [name, 0.1, readFileSync(`examples/${name}`, "utf8")] as const),
  ["curved", 0.1, CURVED] as const,
  ["curved", 3, CURVED] as const,
];

test.each(CASES)("%s, its front block %d mm nearer to the heel", async (name, nearer, text) => {
  const file = atMouthStep(text, nearer, name);
  const json = async (...args: string[]) => JSON.parse((await runCommand(...args, "--json")).out);
  const { figures } = await json("figures", file);
  const next = await json("next", file);
  const { design } = readDesign(readFileSync(file, "utf8"), file) as { design: Parameters<typeof asBuiltPlane>[0] };
  const plane = asBuiltPlane(design);
  const seen = Math.max(0, mouthOpeningAt(plane, -plane.design.sole.allowance));
  const { mouth } = await json("mouth", file, "--seen", `${seen} mm`);
  const step = Object.fromEntries(next.figures.map(({ key, value }: { key: string; value: number }) => [key, value]));
  expect(next.step).toBe("mouth");
  for (const key of ["soleToTake", "mouthOpening", "mouthGrowth"]) expect(step[key], key).toBe(figures[key].value);
  // A shut mouth tells the least to take off.
  if (seen > 0) expect(mouth.takeOff).toBeCloseTo(step.soleToTake, 5);
  else expect(mouth.takeOff).toBeLessThanOrEqual(step.soleToTake);
  expect(mouth.wanted).toBeCloseTo(figures.mouthOpening.value, 9);

  const page = travellerSteps(design).find(({ key }) => key === "mouth")!;
  const printed = (label: RegExp) => page.numbers.find((each) => label.test(each.label))!;
  const digits = design.units === "in" ? 1.59 : 2; // to half of the last place printed: 0.001 in, 0.01 mm
  // "5/8+ in (0.630)" has its thousandths in brackets; "1/32 in" needs none.
  const inMm = ({ value }: { value: string }) => {
    const read = parseLength(
      value.replace(/^.* in \(([\d.]+)\).*$/, "$1 in").replace(/, no (less|more)$/, ""),
      design.units,
    );
    return "value" in read ? read.value : Number.NaN;
  };
  expect(Number.parseFloat(printed(/^It opens/).value)).toBeCloseTo(figures.mouthGrowth.value, 2);
  expect(inMm(printed(/^Mouth wanted/))).toBeCloseTo(figures.mouthOpening.value, digits);
  expect(inMm(printed(/^One shaving/))).toBeCloseTo(mouthOpeningAt(plane, 0.05) - mouthOpeningAt(plane, 0), digits);
  expect(inMm(printed(/differ by/))).toBeCloseTo(figures.mouthUneven.value, digits);
  const words = page.instructions.join("\n");
  const passesWear = plane.ramp.curve !== undefined && plane.ramp.curve.begin.y < 0;
  expect(passesWear).toBe(nearer === 3);
  if (passesWear) expect(words).toMatch(/follows the curve, and no one factor holds/);
  else expect(words).toContain(`(wanted − seen) / ${Math.round(figures.mouthGrowth.value * 100) / 100}`);
});
