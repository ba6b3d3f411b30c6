// One design at one stage → everything the sheet draws. Pure; what cannot be drawn is told, never half drawn.
import { checkPlane, findingsOf, passedChecks } from "@lamplane/parameters/checks";
import type { Design } from "@lamplane/parameters/design";
import { type Elevation, elevation, figuresOf } from "@lamplane/parameters/elevation";
import type { SheetPlane, StageName, View } from "../protocol.ts";
import { settledIn } from "./settled.ts";
import type { Drawn } from "./views/dimensioning.ts";
import { elevationView } from "./views/elevation-view.ts";
import { endView } from "./views/end-view.ts";
import { mouthView } from "./views/mouth-view.ts";
import { stackView } from "./views/stack-view.ts";

/** @param plane the design's elevation, already computed */
export function sheetPlane(design: Design, plane: Elevation, stage: StageName): SheetPlane {
  const settled = settledIn(design, plane);
  return {
    design,
    views: viewsOf({ plane, settled }, stage),
    figures: Object.fromEntries(figuresOf(plane).map(({ key, value }) => [key, value])),
    places: Object.fromEntries(Object.entries(plane.points).map(([name, { x, y }]) => [name, { x, y }])),
    findings: findingsOf(plane),
    passed: passedChecks(plane).length,
    settled,
  };
}

/** A view that cannot be drawn is left out: a finding says why (blocks that miss the top, an impossible arch). */
function viewsOf(drawn: Drawn, stage: StageName): View[] {
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
      if (findingsOf(drawn.plane).some(({ severity }) => severity === "stop")) return [];
      throw error;
    }
  });
}

export { checkPlane, elevation };
