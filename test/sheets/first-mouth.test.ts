// The mouth when the sole is first trued: closed or open by the plane's own numbers, and every paper says the same.
import { expectationText, LEAST_RUNS, plannedDesign, plannedPlane, toleranceReport } from "@lamplane/bench";
import { cotDeg } from "@lamplane/geometry";
import { travellerSteps } from "@lamplane/sheets";
import { describe, expect, test } from "vitest";
import { designWith } from "../support/designs.ts";

/** A jack with a mouth for thick shavings, and the same with the mouth of a smoother. */
const JACK = { "iron.width": 50.8, "iron.thickness": 4, "bed.angle": 45, "capIron.screwHead.height": 6 };
const PLANES = [
  ["a wide mouth", designWith({ ...JACK, "mouth.opening": 0.8 }), "open"],
  ["a wide mouth, in inches", designWith({ ...JACK, "mouth.opening": 0.8, units: "in" }), "open"],
  ["a fine mouth", designWith(JACK), "closed"],
] as const;

describe.each(PLANES)("%s", (_, design, state) => {
  const { stopShort } = toleranceReport(plannedDesign(design), { runs: LEAST_RUNS }).mouth;
  const { frame, ramp } = plannedPlane(design);
  // Plane geometry: the mouth after δ more off the sole is g + δ·(cot β + cot ρ).
  const opening = design.mouth.opening - stopShort * (cotDeg(frame.bedAngle) + cotDeg(ramp.angle));
  const isOpen = opening > 0.005; // mm: no leaf is thinner

  test(`is ${state} where the sole stops short`, () => expect(isOpen ? "open" : "closed").toBe(state));

  test("no step says otherwise", () => {
    const steps = travellerSteps(design).filter(({ key }) => key === "sole" || key === "mouth");
    const words = steps.flatMap(({ task, instructions, checks, blanks }) => [
      task,
      ...instructions,
      ...checks,
      ...blanks.map(({ expected }) => expected),
    ]);
    expect(words.some((text) => /still closed|closed at first/.test(text))).toBe(!isOpen);
    const first = words.find((text) => text.includes(" at first, ") && text.includes(" in the end"))!;
    if (isOpen && design.units === "mm") {
      expect(Number.parseFloat(first)).toBeCloseTo(opening, 2);
      expect(words.join("\n")).toContain(`about ${first.split(" at first")[0]} open`);
    }
    expect(first).toBe(expectationText(design, "mouthSeen"));
  });
});
