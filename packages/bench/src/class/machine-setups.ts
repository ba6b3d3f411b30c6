// The day at the machines: each set-up once, in the order of the work, with the planes that are cut at it.
import { type Elevation, type FigureKey, figureValue, recessOf } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { asBuiltPlane } from "../history/as-built.ts";
import { type Step, stepIndex, stepsDone } from "../steps.ts";
import type { SETUP_COLUMNS } from "../words/class.ts";

export const SETUP_KEYS = [
  "blankLength",
  "blankHeight",
  "cheek",
  "coreWidth",
  "sawRamp",
  "sawBed",
  "recessDepth",
  "pinHole",
  "pinHeight",
  "wedgeAngle",
] as const;
export type SetupKey = (typeof SETUP_KEYS)[number];

/** What differs from plane to plane at a set-up. mm. */
export type PlaneColumn = keyof typeof SETUP_COLUMNS;

/** One setting of a machine. */
export interface Setting {
  readonly value: number;
  /** Places in the class, ascending. */
  readonly planes: readonly number[];
}

/** A machine's job with all its settings, the one for most planes first. */
export interface MachineSetup {
  readonly key: SetupKey;
  readonly step: Step;
  readonly unit: "mm" | "°";
  readonly settings: readonly Setting[];
  /** By the planes of the settings, where the set-up has a place of its own on each. */
  readonly places?: { readonly column: PlaneColumn; readonly values: ReadonlyMap<number, number> };
}

interface SetupRow {
  readonly step: Step;
  readonly unit: "mm" | "°";
  /** Undefined where the plane has no such cut. */
  readonly value: (plane: Elevation) => number | undefined;
  readonly place?: { readonly column: PlaneColumn; readonly of: (plane: Elevation) => number | undefined };
}

const figure =
  (key: FigureKey) =>
  (plane: Elevation): number | undefined =>
    figureValue(plane, key);

const ROWS: Readonly<Record<SetupKey, SetupRow>> = {
  blankLength: { step: "core", unit: "mm", value: ({ widths }) => widths.blankLength },
  blankHeight: { step: "core", unit: "mm", value: ({ widths }) => widths.blankHeight },
  cheek: { step: "core", unit: "mm", value: ({ widths }) => widths.cheek },
  coreWidth: { step: "core", unit: "mm", value: ({ widths }) => widths.core },
  sawRamp: {
    step: "cuts",
    unit: "°",
    value: figure("sawRamp"),
    place: { column: "rampMark", of: figure("rampMark") },
  },
  sawBed: { step: "cuts", unit: "°", value: figure("sawBed"), place: { column: "bedMark", of: figure("bedMark") } },
  recessDepth: { step: "recess", unit: "mm", value: ({ design }) => recessOf(design)?.depth },
  pinHole: { step: "pin-hole", unit: "mm", value: figure("pinHoleDiameter") },
  pinHeight: {
    step: "pin-hole",
    unit: "mm",
    value: figure("pinOverBlankSole"),
    place: { column: "pinFromToe", of: ({ pin, design }) => pin.centre.x + design.body.trim / 2 },
  },
  wedgeAngle: { step: "wedge", unit: "°", value: ({ design }) => design.wedge.angle },
};

/** What is printed alike is set alike: a hundredth of a millimetre or degree. */
const ALIKE = 100;

/** Every set-up that is still to come, for the planes that have not passed its step. */
export function machineSetups(designs: readonly Design[]): MachineSetup[] {
  return SETUP_KEYS.flatMap((key): MachineSetup[] => {
    const { step, unit, value, place } = ROWS[key];
    const byValue = new Map<number, number[]>();
    const places = new Map<number, number>();
    designs.forEach((design, plane) => {
      const now = asBuiltPlane(design);
      const found = stepsDone(design) > stepIndex(step) ? undefined : value(now);
      if (found === undefined) return;
      const at = place?.of(now);
      if (at !== undefined) places.set(plane, at);
      const printed = Math.round(found * ALIKE) / ALIKE;
      byValue.set(printed, [...(byValue.get(printed) ?? []), plane]);
    });
    const settings = [...byValue].map(([printed, planes]) => ({ value: printed, planes }));
    settings.sort((a, b) => b.planes.length - a.planes.length || a.value - b.value);
    return settings.length === 0
      ? []
      : [{ key, step, unit, settings, ...(place ? { places: { column: place.column, values: places } } : {}) }];
  });
}
