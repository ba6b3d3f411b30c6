// What a sweep asks of a plane, codes alone, against the findings that are put into words.
import { checkWithoutCures, findingCodes } from "@lamplane/bench/checks";
import { elevation } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { designWith, randomDesigns } from "../../support/designs.ts";

test("the codes are those of the findings, worst first, jigs too large for the printer among them", () => {
  const seen = new Set<string>();
  for (const { changes } of randomDesigns(83, 150)) {
    const plane = elevation(designWith({ ...changes, "shop.printer.width": 120, "shop.printer.depth": 120 }));
    const codesOf = (wanted: string) =>
      checkWithoutCures(plane)
        .filter(({ severity }) => severity === wanted)
        .map(({ code }) => code);
    const codes = findingCodes(plane);
    expect(codes).toEqual({ stops: codesOf("stop"), warnings: codesOf("warning") });
    for (const code of codes.stops) seen.add(`stop ${code}`);
    for (const code of codes.warnings) seen.add(code.endsWith("-print-size") ? "jig" : "warning");
  }
  expect([...seen].filter((each) => each.startsWith("stop")).length).toBeGreaterThan(3);
  expect(seen).toContain("warning");
  expect(seen).toContain("jig");
});
