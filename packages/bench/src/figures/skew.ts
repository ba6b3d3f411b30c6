// Figures of a mouth that is not alike at both cheeks, and of the iron that is tilted to cut even.

import type { FigureFormula, FigureUse } from "@lamplane/parameters/elevation";
import { PLANE_GEOMETRY } from "@lamplane/parameters/table";
import { mouthSkew, worstTilt } from "../mouth/mouth-skew.ts";
import type { Evaluate } from "./indicative.ts";

const row =
  (unit: string, extra: FigureUse = {}) =>
  (formula: string, of: Evaluate): FigureFormula => ({ unit, formula, source: PLANE_GEOMETRY, of, ...extra });
const fine = row("mm", { readingMode: "fine" });

export const SKEW_FIGURES = {
  mouthLeft: fine("g + (left − right) / 2", (e) => mouthSkew(e).left),
  mouthRight: fine("g − (left − right) / 2", (e) => mouthSkew(e).right),
  mouthUneven: fine("as read, or √(front block's skew² + bed's skew²)", (e) => mouthSkew(e).uneven),
  ironTilt: row("°")("atan(cos β · bed's skew / coreWidth)", (e) => worstTilt(e).angle),
  ironLean: fine("length between the cheeks · sin ironTilt", (e) => worstTilt(e).lean),
  roomAtTilt: fine(
    "coreWidth − w·cos ψ − (ℓ·cos β + t·sin β)·sin ψ, tan ψ = bed's skew / coreWidth",
    (e) => worstTilt(e).room,
  ),
} satisfies Record<string, FigureFormula>;
