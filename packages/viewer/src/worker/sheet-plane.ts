// One design at one stage → everything the sheet draws, and what it tells beside it. Pure; what cannot be drawn is told, never half drawn.
import {
  figuresAsBuilt,
  findLosses,
  type Loss,
  lockedParameters,
  lossText,
  MEASURED_ROWS,
  solvedValues,
} from "@lamplane/bench";
import { checkWithoutCures, findingWords, judgePlane } from "@lamplane/bench/checks";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import type { StageName } from "../protocol/build-steps.ts";
import type { SheetPlane, SheetWords } from "../protocol/sheet-data.ts";
import type { View } from "../protocol/view.ts";
import { benchSteps } from "./bench-steps.ts";
import type { SolvedPlane } from "./views/dimensioning.ts";
import { elevationView } from "./views/elevation-view.ts";
import { endView } from "./views/end-view.ts";
import { mouthView } from "./views/mouth-view.ts";
import { stackView } from "./views/stack-view.ts";

/**
 * @param design as planned, with what was measured
 * @param plane the plane as it stands, already computed
 */
export function sheetPlane(design: Design, plane: Elevation, stage: StageName): SheetPlane {
  const solved = solvedValues(design, plane);
  return {
    design,
    stage,
    views: makeViews({ plane, solved }, stage),
    figures: Object.fromEntries(figuresAsBuilt(design, plane).map(({ key, value }) => [key, value])),
    points: Object.fromEntries(Object.entries(plane.points).map(([name, { x, y }]) => [name, { x, y }])),
    locked: [...lockedParameters(design)],
    solved,
  };
}

/** Notes and bench steps of the same plane. */
export function sheetWords(design: Design, plane: Elevation, stage: StageName): SheetWords {
  const { findings, passed } = judgePlane(plane);
  return {
    findings: findings.map((finding) => {
      const { code, severity, place, source } = finding;
      return { code, severity, place, source, words: findingWords(design, finding) };
    }),
    passed: passed.map((judgement) => ({ code: judgement.code, words: findingWords(design, judgement) })),
    bench: benchSteps(design, stage),
    lost: findLosses(design).map(lossWords(design)),
  };
}

/** A view that cannot be drawn is left out: a finding says why (blocks that miss the top, an impossible arch). */
function makeViews(drawn: SolvedPlane, stage: StageName): View[] {
  const makers = [
    () => elevationView(drawn, stage),
    () => mouthView(drawn),
    () => stackView(drawn),
    () => endView(drawn, stage),
  ];
  return makers.flatMap((make) => {
    try {
      return [make()];
    } catch (error) {
      if (checkWithoutCures(drawn.plane).some(({ severity }) => severity === "stop")) return [];
      throw error;
    }
  });
}

/** What one measured value that came out otherwise has cost. */
const lossWords =
  (design: Design) =>
  (loss: Loss): string => {
    const { came, costs } = lossText(design, loss);
    return [`${MEASURED_ROWS[loss.key].name}: ${came}`, ...costs.map((cost) => `${cost}.`)].join(" ");
  };
