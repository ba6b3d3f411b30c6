// Programs cut from stock by an interpreter's own moves: the part stays whole, nothing is left beside it but bridges and named corners.
import { expect, test } from "vitest";
import { designWith, WORKED } from "../support/designs.ts";
import { requireProgram } from "../support/outside-programs.ts";
import { faultsOfCutting } from "../support/router-cutting.ts";
import { cutter, routed, withRouter } from "../support/router-designs.ts";

const CUTTERS = [cutter("end-6", 6), cutter("drill-9.7", 9.7, { kind: "drill", step: 5 })];

test.each([
  ["climb", "corner-top", "mm", "pause"],
  ["conventional", "corner-spoilboard", "in", "m6"],
] as const)("every program of the worked plane, %s, zero %s, %s, %s", (direction, zero, units, toolChange, context) => {
  void requireProgram;
  const { programs, refused } = routed(withRouter(designWith(WORKED), CUTTERS, { direction, zero, units, toolChange }));
  const found = programs.flatMap(({ program, text, judged }) =>
    faultsOfCutting(text, program, judged).map((fault) => `${program.setUp.name}: ${fault}`),
  );
  expect({ found, refused }).toEqual({ found: [], refused: [] });
  void context;
});
