// Lengths that were likely meant in the other unit: asked about where they are allowed, with the other reading where not.
import { expect, test } from "vitest";
import { faultText, readDesign, rowAt, unitSlipText } from "../../../packages/parameters/src/design/index.ts";
import type { NumberRow } from "../../../packages/parameters/src/table/index.ts";

const MM = "iron: { width: 48, thickness: 3.6 }\n";
const IN = "units: in\niron: { width: 2, thickness: 1/8 }\n";

function slipsIn(source: string): string[] {
  const reading = readDesign(source, "");
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.slips.map((slip) => unitSlipText(slip, rowAt(slip.path) as NumberRow));
}
function faultsIn(source: string): string[] {
  const reading = readDesign(source, "");
  return reading.ok ? [] : reading.faults.map(faultText);
}

test("a bare length that is allowed, but usual only in the other unit", () => {
  expect(slipsIn(`${MM}sole: { allowance: 0.125 }\n`)).toEqual([
    "sole.allowance: read 0.125 mm, where 3 mm is usual; write 0.125 in if that is meant, else 0.125 mm",
  ]);
  expect(slipsIn(`${IN}sole: { allowance: 0.5 }\nrecess: { travel: 1.5 }\n`)).toEqual([]);
  expect(slipsIn(`${IN}wedge: { tip: 3/4 }\n`)).toEqual([]);
});

test("not one with its unit, nor one that is merely small, nor nothing", () => {
  for (const allowance of ["0.125 mm", "1/8 in", "1", "0"])
    expect(slipsIn(`${MM}sole: { allowance: ${allowance} }\n`), allowance).toEqual([]);
});

test("a length out of its limits that the other unit would allow", () => {
  expect(faultsIn("iron: { width: 1.75, thickness: 3.6 }\n")[0]).toMatch(/; if 1\.75 in is meant, write 1\.75 in$/);
  expect(faultsIn("units: in\niron: { width: 44.5, thickness: 1/8 }\n")[0]).toMatch(
    /; if 44\.5 mm is meant, write 44\.5 mm$/,
  );
  expect(faultsIn("iron: { width: 5000, thickness: 3.6 }\n")[0]).not.toMatch(/is meant/);
});
