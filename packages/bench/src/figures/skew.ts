// Figures of a mouth that is not alike at both cheeks, and of the iron that is tilted to cut even.
import type { FigureRow } from "@lamplane/parameters/elevation";
import { mouthSkew, worstTilt } from "../mouth/mouth-skew.ts";
import type { Evaluate } from "./indicative.ts";

const row =
  (unit: string, extra: Partial<FigureRow> = {}) =>
  (formula: string, help: string, of: Evaluate): FigureRow => ({
    unit,
    formula,
    help,
    source: "plane geometry",
    of,
    ...extra,
  });
const fine = row("mm", { readingMode: "fine" });

export const SKEW_FIGURES = {
  mouthLeft: fine(
    "g + (left − right) / 2",
    "Mouth at the left cheek, the edge even with the sole.",
    (e) => mouthSkew(e).left,
  ),
  mouthRight: fine(
    "g − (left − right) / 2",
    "Mouth at the right cheek, the edge even with the sole.",
    (e) => mouthSkew(e).right,
  ),
  mouthUneven: fine(
    "as read, or √(front block's skew² + bed's skew²)",
    "How much wider the mouth is at one cheek than at the other, or may come out.",
    (e) => mouthSkew(e).uneven,
  ),
  ironTilt: row("°")(
    "atan(cos β · bed's skew / coreWidth)",
    "Tilt of the iron on its bed for an edge even with the sole, were all that is uneven the bed's.",
    (e) => worstTilt(e).angle,
  ),
  ironLean: fine(
    "length between the cheeks · sin ironTilt",
    "How far the iron then leans to one side at the top of the bed.",
    (e) => worstTilt(e).lean,
  ),
  roomAtTilt: fine(
    "coreWidth − w·cos ψ − (ℓ·cos β + t·sin β)·sin ψ, tan ψ = bed's skew / coreWidth",
    "What is left of the side clearance then, both sides together.",
    (e) => worstTilt(e).room,
  ),
} satisfies Record<string, FigureRow>;
