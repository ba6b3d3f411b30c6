// Random planes cut by random machines: every program read by the interpreter, cut from its stock by the interpreter's moves.
// `pnpm test:full` tries 200 designs (25 minutes of one core); ROUTER_DESIGNS and ROUTER_SEED choose others.
import { expect, test } from "vitest";
import { randomDesigns, seeded } from "../support/designs.ts";
import { extent } from "../support/extent.ts";
import { requireProgram } from "../support/outside-programs.ts";
import { faultsOfCutting } from "../support/router-cutting.ts";
import { cutter, routed, withRouter } from "../support/router-designs.ts";

const DESIGNS = Number(process.env.ROUTER_DESIGNS ?? extent(2, 200));
const SEED = Number(process.env.ROUTER_SEED ?? 2026);
/** End mills; each goes with a drill, with which some of the pin's holes are bored. */
const DIAMETERS = [3.175, 6, 9.525];
const LARGE = { width: 1500, depth: 800, height: 600 };
/** A hobby machine, on which long parts have no room. */
const SMALL = { width: 600, depth: 400, height: 120 };

test(`${DESIGNS} random designs by ${DIAMETERS.length} cutters: nothing gouged, nothing left unnamed, no bridge lost`, {
  timeout: 1e8,
}, (context) => {
  requireProgram(context, "rs274");
  const random = seeded(SEED);
  const oneOf = <T>(...choices: T[]): T => choices[Math.floor(random() * choices.length)]!;
  const faults: string[] = [];
  let [programs, refused] = [0, 0];
  for (const { changes, design } of randomDesigns(SEED, DESIGNS))
    for (const diameter of DIAMETERS) {
      const mill = cutter("end", diameter, { cutting: 90, step: diameter / 2, finish: oneOf(0, 0.15, 0.3) });
      const drill = cutter("drill", Number(design.pin.tenon) + design.pin.tenonClearance, { kind: "drill", step: 5 });
      const machine = {
        area: oneOf(LARGE, LARGE, SMALL),
        direction: oneOf("climb", "conventional"),
        zero: oneOf("corner-top", "corner-spoilboard"),
        units: oneOf("mm", "in"),
        toolChange: oneOf("pause", "m6"),
        rampAngle: oneOf(2, 4, 10),
      } as const;
      const found = routed(withRouter(design, [mill, drill], machine));
      for (const { program, text, judged } of found.programs) {
        const where = JSON.stringify({ setUp: program.setUp.name, diameter, finish: mill.finish, machine, changes });
        faults.push(...faultsOfCutting(text, program, judged).map((fault) => `${fault}: ${where}`));
      }
      programs += found.programs.length;
      refused += found.limits.length;
    }
  expect(faults).toEqual([]);
  expect(programs).toBeGreaterThan(20 * DESIGNS);
  expect(refused).toBeLessThan(programs);
});
