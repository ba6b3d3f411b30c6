// What there is of the plane after each step, in a word or two: as much as a strip of steps has room for.
import type { Step } from "../table/step-names.ts";

export const STATE_LABELS: Readonly<Record<Step | "first-shaving" | "season", string>> = {
  iron: "billet",
  core: "ripped",
  cuts: "cuts",
  bed: "bed",
  recess: "recess",
  "pin-hole": "pin",
  wedge: "wedge",
  "dry-fit": "dry fit",
  "glue-up": "glue-up",
  sole: "sole",
  mouth: "trued",
  shaping: "shaped",
  "first-shaving": "first shaving",
  season: "a year later",
};
