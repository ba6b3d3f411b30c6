// What can go wrong at which step of the work, and how far: one row an error. An error that this plane cannot have is not listed.
import { rowAt } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { UNIT_OF } from "@lamplane/parameters/table";
import type { ErrorKey, Errors } from "../error-keys.ts";
import { MEASURED_KEYS, MEASURED_ROWS } from "../measured-values.ts";
import { STEPS, type Step } from "../steps.ts";
import type { TolerancePlan } from "./plan.ts";

export type { ErrorKey, Errors } from "../error-keys.ts";

/** No error anywhere: the plane as planned. */
export const NO_ERRORS: Readonly<Errors> = {
  ironThickness: 0,
  ironTopThickness: 0,
  capIronThickness: 0,
  bedAngle: 0,
  rampAngle: 0,
  rampForm: 0,
  pinHoleAlong: 0,
  pinHoleUp: 0,
  pinDepth: 0,
  wedgeTaper: 0,
  wedgeThickness: 0,
  bedPlace: 0,
  frontPlace: 0,
  edgeHeight: 0,
  creep: 0,
  soleTaken: 0,
};

interface ErrorRow {
  readonly label: string;
  readonly step: Step;
  readonly tolerance: keyof Design["hand"];
  /** Whether this plane can have the error; always, where absent. */
  readonly when?: (plan: TolerancePlan) => boolean;
}

const byContact = ({ placing }: TolerancePlan) => placing === "contact";
const byMarks = ({ placing }: TolerancePlan) => placing === "marks";
const isCurved = ({ curve }: TolerancePlan) => curve !== undefined;

/** In the order of the work. */
export const ERROR_ROWS: { readonly [K in ErrorKey]: ErrorRow } = {
  ironThickness: {
    label: "iron's thickness",
    step: "iron",
    tolerance: "caliper",
  },
  ironTopThickness: {
    label: "iron's thickness near its top",
    step: "iron",
    tolerance: "caliper",
    when: ({ gauge }) => gauge !== undefined,
  },
  capIronThickness: {
    label: "cap iron's thickness",
    step: "iron",
    tolerance: "caliper",
    when: ({ capIron }) => capIron > 0,
  },
  bedAngle: {
    label: "bed angle",
    step: "bed",
    tolerance: "sawAngle",
  },
  rampAngle: {
    label: "ramp angle",
    step: "cuts",
    tolerance: "sawAngle",
  },
  rampForm: { label: "ramp's curve", step: "cuts", tolerance: "rampForm", when: isCurved },
  pinHoleAlong: {
    label: "pin hole along the sole",
    step: "pin-hole",
    tolerance: "pinHole",
  },
  pinHoleUp: {
    label: "pin hole over the sole",
    step: "pin-hole",
    tolerance: "pinHole",
  },
  pinDepth: { label: "pin's depth", step: "wedge", tolerance: "pinDepth" },
  wedgeTaper: {
    label: "wedge's taper",
    step: "wedge",
    tolerance: "wedgeTaper",
  },
  wedgeThickness: {
    label: "wedge's thickness",
    step: "wedge",
    tolerance: "wedgeThickness",
  },
  bedPlace: {
    label: "bed block's place",
    step: "glue-up",
    tolerance: "placement",
  },
  frontPlace: {
    label: "front block's place",
    step: "glue-up",
    tolerance: "placement",
    when: byMarks,
  },
  edgeHeight: {
    label: "edge's height at contact",
    step: "glue-up",
    tolerance: "edgeHeight",
    when: byContact,
  },
  creep: {
    label: "creep under the clamps",
    step: "glue-up",
    tolerance: "creep",
  },
  soleTaken: { label: "wood planed off the sole", step: "sole", tolerance: "planing" },
};

/** Values that are measured, by the errors that each makes known. */
const KNOWN_BY = new Map(
  MEASURED_KEYS.flatMap((key) => (MEASURED_ROWS[key].errors ?? []).map((error) => [error, key] as const)),
);

/** An error with what the maker holds it to. */
export interface ToleratedError {
  readonly key: string;
  readonly label: string;
  readonly step: string;
  /** Row of the parameter table that says how well it is held. */
  readonly parameter: string;
  /** ±, two standard deviations; mm or degrees. */
  readonly tolerance: number;
  readonly unit: string;
}

/** One error that this plane can have. */
export interface SourceOfError extends ToleratedError {
  readonly key: ErrorKey;
}

/** Every error of a plane in the order of the work; one held to ± 0 is left out, for it is none. */
export function errorSources(
  plan: TolerancePlan,
  measured: Design["measured"] = plan.design.measured,
): SourceOfError[] {
  return (Object.entries(ERROR_ROWS) as [ErrorKey, ErrorRow][]).flatMap(
    ([key, { label, step, tolerance: held, when }]) => {
      const by = KNOWN_BY.get(key);
      const isKnown = by !== undefined && measured[by] !== undefined;
      const tolerance = remainingTolerance(plan.design.hand, held, (isKnown && MEASURED_ROWS[by].reading) || held);
      if (typeof tolerance !== "number" || tolerance === 0 || (when && !when(plan))) return [];
      const parameter = `hand.${held}`;
      const row = rowAt(parameter);
      return [
        {
          key,
          label,
          step: STEPS[step].outcome ?? STEPS[step].title,
          parameter,
          tolerance,
          unit: row.kind === "number" ? UNIT_OF[row.quantity] : "",
        },
      ];
    },
  );
}

/** How far an error may still be off: as it is held, or as it has been read. */
function remainingTolerance(hand: Design["hand"], held: keyof Design["hand"], read: keyof Design["hand"]): number {
  const [made, seen] = [hand[held], hand[read]];
  return typeof made === "number" && typeof seen === "number" ? Math.min(made, seen) : 0;
}
