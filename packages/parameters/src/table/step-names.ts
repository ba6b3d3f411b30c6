// The steps of the build by name, in the order of the work, and the state of the work after each.

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
export type Step = (typeof STEP_NAMES)[number];

/** States of the work that the steps lead to, in their order. */
export const WORK_STAGES = ["billet", "core", "bed", "glued", "trued", "shaped"] as const;
export type WorkStage = (typeof WORK_STAGES)[number];

/** States in which the parts are drawn: allowance and trims in place, trimmed to length, finished. */
export type Stage = "blank" | "glued" | "trued";

/** State of the work after each step, and the state in which the parts are drawn then. */
export const WORK_AFTER: Readonly<Record<Step, { readonly work: WorkStage; readonly drawn: Stage }>> = {
  iron: { work: "billet", drawn: "blank" },
  core: { work: "billet", drawn: "blank" },
  cuts: { work: "core", drawn: "blank" },
  bed: { work: "bed", drawn: "blank" },
  recess: { work: "bed", drawn: "blank" },
  "pin-hole": { work: "bed", drawn: "blank" },
  wedge: { work: "glued", drawn: "blank" },
  "dry-fit": { work: "glued", drawn: "blank" },
  "glue-up": { work: "glued", drawn: "glued" },
  sole: { work: "trued", drawn: "trued" },
  mouth: { work: "trued", drawn: "trued" },
  shaping: { work: "shaped", drawn: "trued" },
};
