// Whether friction holds the wedge and the wood bears it. Indicative: a stop only where even the most hopeful figure fails.

import { BENCH_TOLERANCE } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { PLANE_GEOMETRY } from "@lamplane/parameters/table";
import { planeHold } from "../strength/plane-hold.ts";
import { planePinStrength, WEAK_PLACES, type WeakPlace } from "../strength/plane-pin-strength.ts";
import type { CheckRow } from "./judgement.ts";
import { decrease, increase } from "./remedy.ts";

const ESTIMATE = "engineering estimate, no published table";
const HANDBOOK = "Wood Handbook (FPL-GTR-190, 2010), tables 5-3 and 5-5, some values from memory; indicative";

/** The pin must hold a wedge that the iron pulls: at the friction given or it does not, at the lowest or it may not. */
const LOCKING = {
  code: "wedge-self-locking",
  relation: "at least",
  unit: "°",
  parameters: ["wedge.angle", "hold.friction.wood", "pin.section", "pin.tenon"],
  place: "pinCentre",
  remedies: [decrease("wedge.angle"), increase("pin.tenon")],
  source: `${PLANE_GEOMETRY}: φ₂ − ω`,
} as const;

const HOLD: readonly CheckRow[] = [
  {
    ...LOCKING,
    subject: "self-locking-margin-at-lowest",
    value: (plane) => planeHold(plane).fineAtLowest.holdMargin,
    warn: 0,
    advice: "lessen-wedge-angle-against-slip",
  },
  {
    ...LOCKING,
    subject: "self-locking-margin",
    value: (plane) => planeHold(plane).fine.holdMargin,
    stop: 0,
    advice: "lessen-wedge-angle-to-lock",
  },
  {
    code: "friction-order",
    subject: "friction-order",
    relation: "at least",
    value: ({ design }) => {
      const { steel, steelLow, steelHigh, wood, woodLow, woodHigh } = design.hold.friction;
      return Math.min(steel - steelLow, steelHigh - steel, wood - woodLow, woodHigh - wood);
    },
    warn: 0,
    unit: "",
    parameters: ["hold.friction.steel", "hold.friction.wood"],
    place: "pinCentre",
    advice: "order-frictions",
    remedies: [
      decrease("hold.friction.steelLow"),
      increase("hold.friction.steelHigh"),
      decrease("hold.friction.woodLow"),
      increase("hold.friction.woodHigh"),
    ],
    source: ESTIMATE,
  },
];

type Weakness = Pick<CheckRow, "code" | "parameters" | "advice" | "remedies">;

const BEARING = {
  parameters: ["pin.tenon", "pin.tenonLength", "body.cheek"],
  advice: "enlarge-bearing",
  remedies: [increase("pin.tenon"), increase("pin.tenonLength"), increase("body.cheek")],
} as const;

/** What is judged of each weak place of pin and cheek. */
const WEAKNESSES: Readonly<Record<WeakPlace, Weakness>> = {
  bending: {
    code: "pin-bending",
    parameters: ["pin.diameter", "pin.section", "wood.pin", "iron.width"],
    advice: "strengthen-pin",
    remedies: [increase("pin.diameter")],
  },
  tenonShear: {
    code: "tenon-shear",
    parameters: ["pin.tenon", "wood.pin", "iron.width"],
    advice: "strengthen-tenons",
    remedies: [increase("pin.tenon")],
  },
  tenonBending: {
    code: "tenon-bending",
    parameters: ["pin.tenon", "pin.endClearance", "wood.pin", "iron.width"],
    advice: "strengthen-tenons",
    remedies: [increase("pin.tenon"), decrease("pin.endClearance")],
  },
  tenonCrushing: { code: "tenon-bearing", ...BEARING },
  cheekBearing: { code: "cheek-bearing", ...BEARING },
  cheekShearOut: {
    code: "cheek-shear",
    parameters: ["pin.height", "body.cheek", "body.height"],
    advice: "lower-pin-or-thicken-cheeks",
    remedies: [decrease("pin.height"), increase("body.cheek"), increase("body.height")],
  },
};

/** Strength over load, in a fine shaving and in a catch; undefined where either is unknown. */
function factorsAt(plane: Elevation, place: WeakPlace): { fine: number; inCatch: number } | undefined {
  const fine = planePinStrength(plane, "fine")[place].factor;
  const inCatch = planePinStrength(plane, "inCatch")[place].factor;
  return fine !== undefined && inCatch !== undefined && Number.isFinite(fine + inCatch) ? { fine, inCatch } : undefined;
}

/** The factor of safety in a fine shaving; and in a catch, which is rare, strength enough for it. */
function weaknessChecks(place: WeakPlace): CheckRow[] {
  const judged = {
    ...WEAKNESSES[place],
    relation: "at least",
    unit: "×",
    place: "pinCentre",
    source: HANDBOOK,
  } as const;
  return [
    {
      ...judged,
      subject: `${place}-in-shaving`,
      value: (plane) => factorsAt(plane, place)?.fine,
      stop: 1,
      warn: ({ design }) => design.hold.safety,
    },
    { ...judged, subject: `${place}-in-catch`, value: (plane) => factorsAt(plane, place)?.inCatch, warn: 1 },
  ];
}

/** A pin that sags presses the wedge at its edges only. */
const SAG: CheckRow = {
  code: "pin-sag",
  subject: "pin-sag",
  relation: "at most",
  value: (plane) => planePinStrength(plane, "fine").sag?.total,
  warn: BENCH_TOLERANCE,
  unit: "mm",
  parameters: ["pin.diameter", "pin.section", "wood.pin", "iron.width"],
  place: "pinCentre",
  advice: "stiffen-pin",
  remedies: [increase("pin.diameter")],
  source: HANDBOOK,
};

export const STRENGTH_CHECKS: readonly CheckRow[] = [...HOLD, ...WEAK_PLACES.flatMap(weaknessChecks), SAG];
