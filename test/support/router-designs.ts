// Designs with a router and cutters, and each program of them with what judges it.
import { asBuiltPlane } from "@lamplane/bench";
import type { Cutter, Design } from "@lamplane/parameters/table";
import type { RouterLimit } from "../../packages/export/src/router/limit.ts";
import { planeSetUps } from "../../packages/export/src/router/plane-set-ups.ts";
import { type Program, planProgram } from "../../packages/export/src/router/program.ts";
import { programText } from "../../packages/export/src/router/rs274.ts";
import type { Judged } from "./router-cutting.ts";

export const cutter = (name: string, diameter: number, more: Partial<Cutter> = {}): Cutter => ({
  name,
  kind: "end",
  diameter,
  cutting: 60,
  speed: 16000,
  feed: 1500,
  plunge: 400,
  step: 3,
  finish: 0.2,
  ...more,
});

/** A large machine, so that size is no reason to refuse anything. */
export const withRouter = (
  design: Design,
  cutters: readonly Cutter[],
  more: Partial<Design["router"]> = {},
): Design => ({
  ...design,
  jigs: { ...design.jigs, relief: Math.max(...cutters.map(({ diameter }) => diameter)) / 2 + 0.05 },
  router: { ...design.router, area: { width: 1500, depth: 800, height: 600 }, ...more },
  cutters,
});

export interface Routed {
  readonly program: Program;
  readonly text: string;
  readonly judged: Judged;
}

/** Each program of a design, and what keeps the other set-ups from being cut. */
export function routed(design: Design): { programs: Routed[]; limits: RouterLimit[]; refused: string[] } {
  const { router, cutters } = design;
  const [programs, limits]: [Routed[], RouterLimit[]] = [[], []];
  for (const setUp of planeSetUps(asBuiltPlane(design))) {
    const planned = planProgram(setUp, router, cutters);
    if ("limit" in planned) {
      limits.push(planned.limit);
      continue;
    }
    const { program } = planned;
    const { text } = programText(program, router, cutters, {
      head: [setUp.title],
      fit: ({ name }) => `fit ${name}`,
      done: "done",
    });
    const top = router.zero === "corner-spoilboard" ? setUp.height : 0;
    programs.push({
      program,
      text,
      judged: {
        area: router.area,
        tabs: router.tabs,
        top,
        heights: { rapid: router.rapidHeight, park: router.parkHeight },
      },
    });
  }
  return { programs, limits, refused: limits.map(({ setUp, code }) => `${setUp}: ${code}`) };
}
