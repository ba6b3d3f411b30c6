// The steps of the strip over the drawing, from the billet to a year later, and what each shows of the work.
import { type Step, WORK_AFTER, type WorkStage } from "@lamplane/parameters/table";
import { STATE_LABELS } from "@lamplane/parameters/words";

/** Steps of the strip, in the order of the work. */
export const STAGES = [
  "billet",
  "ripped",
  "cuts",
  "bed",
  "recess",
  "pin",
  "dry-fit",
  "glue-up",
  "trued",
  "shaped",
  "first-shaving",
  "season",
] as const;
export type StageName = (typeof STAGES)[number];

/** The step that a page opens on: the plane at work. */
export const FIRST_SHOWN: StageName = "first-shaving";

/** Steps of the job, as the traveller names them, that lead to each. */
export const JOB_OF = {
  billet: ["stock", "iron"],
  ripped: ["core"],
  cuts: ["cuts"],
  bed: ["bed"],
  recess: ["recess"],
  pin: ["pin-hole"],
  "dry-fit": ["wedge", "dry-fit"],
  "glue-up": ["glue-up"],
  trued: ["sole", "mouth"],
  shaped: ["shaping"],
  "first-shaving": ["first-shaving"],
  season: ["season"],
} as const satisfies Record<StageName, readonly (Step | "stock" | "first-shaving" | "season")[]>;

/** State of the work from which outlines and solids are taken: that after the last step of each; a finished plane stays so. */
export const WORK_OF = Object.fromEntries(
  STAGES.map((stage): [StageName, WorkStage] => {
    const last = JOB_OF[stage].at(-1);
    return [stage, last && last in WORK_AFTER ? WORK_AFTER[last as Step].work : "shaped"];
  }),
) as Readonly<Record<StageName, WorkStage>>;

const LABELS: Readonly<Record<Step | "first-shaving" | "season", string>> = STATE_LABELS;

/** What stands under a step's drawing: the state after the last step of the job that it shows. */
export const stageLabel = (stage: StageName): string => LABELS[JOB_OF[stage].at(-1) as keyof typeof LABELS];

/** Whether blocks and cheeks are not together yet. */
export const isApart = (stage: StageName): boolean => ["billet", "core", "bed"].includes(WORK_OF[stage]);

/** Whether iron and wedge are in the plane; the iron is taken out before the glue. */
export const hasStack = (stage: StageName): boolean => !isApart(stage) && stage !== "glue-up";

/** States of the work by the names that older addresses give them. */
const OLD_NAMES: Readonly<Record<string, StageName>> = { core: "cuts", glued: "glue-up" };

/** The step that an address names; undefined where there is none of that name. */
export const stageNamed = (name: string): StageName | undefined =>
  STAGES.find((stage) => stage === name) ?? (Object.hasOwn(OLD_NAMES, name) ? OLD_NAMES[name] : undefined);
