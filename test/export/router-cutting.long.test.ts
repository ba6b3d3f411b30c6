// Random planes cut by random machines: every program read by the interpreter, cut from its stock by the interpreter's moves.
// ROUTER_DESIGNS=200 for the whole trial, which takes hours; a few by default.
import { expect, test } from "vitest";
import { randomDesigns, seeded } from "../support/designs.ts";
import { requireProgram } from "../support/outside-programs.ts";
import { faultsOfCutting } from "../support/router-cutting.ts";
import { cutter, routed, withRouter } from "../support/router-designs.ts";

const DESIGNS = Number(process.env.ROUTER_DESIGNS ?? 2);
const SEED = Number(process.env.ROUTER_SEED ?? 2026);
/** End mills; each goes with a drill, with which some of the pin's holes are bored. */
const DIAMETERS = [3.175, 6, 9.525];

test(`${DESIGNS} random designs by ${DIAMETERS.length} cutters: nothing gouged, nothing left unnamed, no bridge lost`, {
  timeout: 1e8,
}, (context) => {
  requireProgram(context, "rs274");
  const random = seeded(SEED);
  const oneOf = <T>(...choices: T[]): T => choices[Math.floor(random() * choices.length)]!;
  let count = 0;
  for (const { changes, design } of randomDesigns(SEED, DESIGNS))
    for (const diameter of DIAMETERS) {
      const mill = cutter("end", diameter, { cutting: 90, step: diameter / 2, finish: oneOf(0, 0.15, 0.3) });
      const drill = cutter("drill", Number(design.pin.tenon) + design.pin.tenonClearance, { kind: "drill", step: 5 });
      const machine = {
        direction: oneOf("climb", "conventional"),
        zero: oneOf("corner-top", "corner-spoilboard"),
        units: oneOf("mm", "in"),
        toolChange: oneOf("pause", "m6"),
        rampAngle: oneOf(2, 4, 10),
      } as const;
      for (const { program, text, judged } of routed(withRouter(design, [mill, drill], machine)).programs) {
        const where = JSON.stringify({ setUp: program.setUp.name, diameter, finish: mill.finish, machine, changes });
        expect(faultsOfCutting(text, program, judged), where).toEqual([]);
        count += 1;
      }
    }
  expect(count).toBeGreaterThan(20 * DESIGNS);
});
