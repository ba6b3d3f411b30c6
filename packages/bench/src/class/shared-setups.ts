// Numbers that a class shares so that a machine is set once for many planes: core width, ramp angle, height of the pin hole.
import { valueAt, withValue } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { toMillimetres } from "@lamplane/parameters/units";
import { autoValue } from "../auto-values.ts";
import { checkWithoutCures } from "../checks/index.ts";
import { LEAST_SIDE_PLAY } from "../checks/iron.ts";
import { asBuiltDesign, asBuiltPlane } from "../history/as-built.ts";
import { lockedParameters } from "../steps.ts";
import { type Group, groupPreferences, type Preference } from "./grouping.ts";

/** Most side play that a class's core gives an iron without the maker's asking, mm. Common practice, no published source: 1/8 in. */
export const MOST_SIDE_PLAY = 3.2;

export type SharedKey = "coreWidth" | "rampAngle" | "pinHeight";

/** A plane that shares a number, and the one it would have by itself. mm or degrees. */
export interface SharingPlane {
  /** Its place in the class. */
  readonly plane: number;
  readonly preferred: number;
}

export interface SharedGroup {
  readonly value: number;
  readonly planes: readonly SharingPlane[];
}

export interface ClassSetups {
  /** With the shared numbers written in. */
  readonly designs: readonly Design[];
  /** By number; empty where no plane of the class is free to share it. */
  readonly shared: Readonly<Record<SharedKey, readonly SharedGroup[]>>;
}

export type SharingResult = ClassSetups | { readonly fewestCoreWidths: number };

interface SharedRow {
  readonly path: string;
  /** What a machine is set to is a multiple of this: mm or degrees in either unit. */
  readonly step: { readonly mm: number; readonly in: number };
  /** Undefined for a plane that takes no part: the number is cut already, typed by the maker, or not there at all. */
  readonly preference: (design: Design) => Preference | undefined;
  readonly set: (design: Design, value: number) => Design;
}

const PER_NANOMETRE = 1e6;
const roundToNanometre = (value: number): number => Math.round(value * PER_NANOMETRE) / PER_NANOMETRE;

const CORE_WIDTH: SharedRow = {
  path: "body.sideClearance",
  step: { mm: 0.1, in: toMillimetres(1 / 64, "in") },
  preference: (design) => {
    const { iron, body } = asBuiltDesign(design);
    const preferred = iron.width + body.sideClearance;
    const least = iron.width + Math.min(LEAST_SIDE_PLAY, body.sideClearance);
    return { preferred, least, most: iron.width + Math.max(MOST_SIDE_PLAY, body.sideClearance) };
  },
  set: (design, value) =>
    withValue(design, "body.sideClearance", roundToNanometre(value - asBuiltDesign(design).iron.width)),
};

/** How far a solved number may move for the sake of the class: mm or degrees. */
const REACH = 3;

const solvedRow = (path: "ramp.angle" | "pin.height", step: SharedRow["step"]): SharedRow => ({
  path,
  step,
  preference: (design) => {
    const solved = valueAt(design, path) === "auto" ? autoValue(asBuiltPlane(design), path) : undefined;
    return typeof solved === "number" ? { preferred: solved, least: solved - REACH, most: solved + REACH } : undefined;
  },
  set: (design, value) => withValue(design, path, roundToNanometre(value)),
});

const ROWS: Readonly<Record<SharedKey, SharedRow>> = {
  coreWidth: CORE_WIDTH,
  rampAngle: solvedRow("ramp.angle", { mm: 0.5, in: 0.5 }),
  pinHeight: solvedRow("pin.height", { mm: 0.5, in: toMillimetres(1 / 64, "in") }),
};

/**
 * The class with its shared numbers. What a step has cut already stays.
 * @param groups how many core widths there may be; the fewest that do where absent
 * @returns the fewest core widths that do, where `groups` is fewer
 */
export function shareSetups(planes: readonly Design[], groups?: number): SharingResult {
  const core = share(planes, ROWS.coreWidth, groups);
  if (!core) return { fewestCoreWidths: fewestCoreWidths(planes) };
  const ramp = shareSolved(core.designs, ROWS.rampAngle);
  const pin = shareSolved(ramp.designs, ROWS.pinHeight);
  return { designs: pin.designs, shared: { coreWidth: core.groups, rampAngle: ramp.groups, pinHeight: pin.groups } };
}

/** How few core widths do for a class; 0 where every core is milled. */
export const fewestCoreWidths = (planes: readonly Design[]): number =>
  groupPreferences(
    preferencesOf(planes, ROWS.coreWidth).map(({ preference }) => preference),
    stepOf(planes, ROWS.coreWidth),
  )!.length;

interface Shared {
  readonly designs: readonly Design[];
  readonly groups: readonly SharedGroup[];
}

const stepOf = (planes: readonly Design[], { step }: SharedRow) => ({ step: step[planes[0]?.units ?? "mm"] });

const preferencesOf = (planes: readonly Design[], row: SharedRow): { plane: number; preference: Preference }[] =>
  planes.flatMap((design, plane) => {
    const preference = lockedParameters(design).has(row.path) ? undefined : row.preference(design);
    return preference ? [{ plane, preference }] : [];
  });

function share(planes: readonly Design[], row: SharedRow, groups?: number): Shared | undefined {
  const own = preferencesOf(planes, row);
  const found = groupPreferences(
    own.map(({ preference }) => preference),
    { ...stepOf(planes, row), ...(groups === undefined ? {} : { groups }) },
  );
  return found && withGroups(planes, row, own, found);
}

function withGroups(
  planes: readonly Design[],
  row: SharedRow,
  own: readonly { plane: number; preference: Preference }[],
  found: readonly Group[],
): Shared {
  const designs = [...planes];
  for (const { value, members } of found)
    for (const member of members) {
      const { plane } = own[member]!;
      designs[plane] = row.set(planes[plane]!, value);
    }
  const groups = found.map(({ value, members }) => ({
    value,
    planes: members.map((member) => ({ plane: own[member]!.plane, preferred: own[member]!.preference.preferred })),
  }));
  return { designs, groups };
}

/** A number that each plane solves for itself: its limits are where a check complains that did not before. */
function shareSolved(planes: readonly Design[], row: SharedRow): Shared {
  const own = preferencesOf(planes, row);
  if (new Set(own.map(({ preference }) => roundToNanometre(preference.preferred))).size <= 1)
    return { designs: planes, groups: alike(own) };
  const limited = own.map(({ plane, preference }) => ({
    plane,
    preference: boundedPreference(planes[plane]!, row, preference, stepOf(planes, row).step),
  }));
  return withGroups(
    planes,
    row,
    limited,
    groupPreferences(
      limited.map(({ preference }) => preference),
      stepOf(planes, row),
    )!,
  );
}

/** Planes that prefer the same number as it is. */
const alike = (own: readonly { plane: number; preference: Preference }[]): SharedGroup[] =>
  own.length === 0
    ? []
    : [
        {
          value: own[0]!.preference.preferred,
          planes: own.map(({ plane, preference }) => ({ plane, preferred: preference.preferred })),
        },
      ];

const complaintsOf = (design: Design): ReadonlySet<string> =>
  new Set(checkWithoutCures(asBuiltPlane(design)).map(({ severity, code }) => `${severity} ${code}`));

/** The preference with its limits drawn in to the stretch about what is preferred in which no check complains that did not before. */
function boundedPreference(
  design: Design,
  row: SharedRow,
  { preferred, least, most }: Preference,
  step: number,
): Preference {
  const before = complaintsOf(design);
  const isQuiet = (value: number) =>
    [...complaintsOf(row.set(design, value))].every((complaint) => before.has(complaint));
  const reach = (toward: number) => {
    let [good, tried] = [0, Math.floor(Math.abs(toward - preferred) / step)];
    const at = (steps: number) => preferred + Math.sign(toward - preferred) * steps * step;
    if (isQuiet(at(tried))) return at(tried);
    while (tried - good > 1) {
      const middle = Math.floor((good + tried) / 2);
      if (isQuiet(at(middle))) good = middle;
      else tried = middle;
    }
    return at(good);
  };
  return { preferred, least: reach(least), most: reach(most) };
}
