// The steps of the build by name, in the order of the work, and the states that they lead to.

/** Steps of the build that are measured or marked done, in order. */
export const STEP_NAMES = [
  "iron",
  "core",
  "cuts",
  "bed",
  "recess",
  "pin-hole",
  "wedge",
  "dry-fit",
  "glue-up",
  "sole",
  "mouth",
  "shaping",
] as const;

/** States of the work that the steps lead to, in their order. */
export const WORK_STAGES = ["billet", "core", "bed", "glued", "trued", "shaped"] as const;
export type WorkStage = (typeof WORK_STAGES)[number];
