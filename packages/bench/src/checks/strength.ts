// Whether friction holds the wedge and the wood bears it. Indicative: a stop only where even the most hopeful figure fails.

import { BENCH_TOLERANCE } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import type { PinStrength } from "../strength/pin-strength.ts";
import { planeHold } from "../strength/plane-hold.ts";
import { planePinStrength, WEAK_PLACES, type WeakPlace } from "../strength/plane-pin-strength.ts";
import {
  decrease,
  GEOMETRY,
  increase,
  type Judgement,
  judgeAtLeast,
  judgeAtMost,
  pickWorst,
  type Remedy,
} from "./judgement.ts";

const ESTIMATE = "engineering estimate, no published table";
const HANDBOOK = "Wood Handbook (FPL-GTR-190, 2010), tables 5-3 and 5-5, some values from memory; indicative";

/** The pin must hold a wedge that the iron pulls: at the friction given or it does not, at the lowest or it may not. */
export function checkLocking(plane: Elevation): Judgement[] {
  const { fine, fineAtLowest } = planeHold(plane);
  const locking = {
    code: "wedge-does-not-lock",
    unit: "°",
    parameters: ["wedge.angle", "hold.friction.wood", "pin.section", "pin.tenon"],
    place: "pinCentre",
    remedies: [decrease("wedge.angle"), increase("pin.tenon")],
    source: `${GEOMETRY}: φ₂ − ω`,
  } as const;
  return pickWorst(
    ...judgeAtLeast(plane, {
      ...locking,
      what: "The friction angle under the cross pin, at its lowest, less the wedge angle",
      value: fineAtLowest.holdMargin,
      warn: 0,
      advice: "The iron may pull the wedge loose: make the wedge's angle smaller.",
    }),
    ...judgeAtLeast(plane, {
      ...locking,
      what: "The friction angle under the cross pin less the wedge angle",
      value: fine.holdMargin,
      stop: 0,
      advice: "The cross pin cannot hold the wedge against the iron's pull: make the wedge's angle smaller.",
    }),
  );
}

/** Each friction must lie between its own lowest and highest. */
export function checkFriction(plane: Elevation): Judgement[] {
  const { steel, steelLow, steelHigh, wood, woodLow, woodHigh } = plane.design.hold.friction;
  return judgeAtLeast(plane, {
    code: "friction-out-of-order",
    what: "The room between the frictions and their lowest and highest, at its least,",
    value: Math.min(steel - steelLow, steelHigh - steel, wood - woodLow, woodHigh - wood),
    warn: 0,
    unit: "",
    parameters: ["hold.friction.steel", "hold.friction.wood"],
    place: "pinCentre",
    advice: "Give each friction between its lowest and its highest.",
    remedies: [
      decrease("hold.friction.steelLow"),
      increase("hold.friction.steelHigh"),
      decrease("hold.friction.woodLow"),
      increase("hold.friction.woodHigh"),
    ],
    source: ESTIMATE,
  });
}

/** What is judged of one weak place of pin or cheek. */
interface Weakness {
  readonly code: string;
  readonly what: string;
  readonly parameters: readonly string[];
  readonly advice: string;
  readonly remedies: readonly Remedy[];
}

const BEARING = {
  parameters: ["pin.tenon", "pin.tenonLength", "body.cheek"],
  advice: "Give the tenons more to bear on: thicker tenons, or a thicker cheek.",
  remedies: [increase("pin.tenon"), increase("pin.tenonLength"), increase("body.cheek")],
};

const WEAKNESS: Readonly<Record<WeakPlace, Weakness>> = {
  bending: {
    code: "pin-may-break",
    what: "The cross pin's strength in bending",
    parameters: ["pin.diameter", "pin.section", "wood.pin", "iron.width"],
    advice: "Make the pin thicker, or of a stronger wood.",
    remedies: [increase("pin.diameter")],
  },
  tenonShear: {
    code: "tenon-may-shear",
    what: "The tenons' strength in shear",
    parameters: ["pin.tenon", "wood.pin", "iron.width"],
    advice: "Make the tenons thicker, or the pin of a stronger wood.",
    remedies: [increase("pin.tenon")],
  },
  tenonBending: {
    code: "tenon-may-break",
    what: "The tenons' strength in bending at the shoulder",
    parameters: ["pin.tenon", "pin.endClearance", "wood.pin", "iron.width"],
    advice: "Make the tenons thicker, or the pin of a stronger wood.",
    remedies: [increase("pin.tenon"), decrease("pin.endClearance")],
  },
  tenonCrushing: {
    code: "tenon-may-crush",
    what: "The tenons' strength in the cheeks, across their grain,",
    ...BEARING,
  },
  cheekBearing: { code: "cheek-may-crush", what: "The cheeks' strength under the tenons", ...BEARING },
  cheekShearOut: {
    code: "cheek-may-split",
    what: "The cheeks' strength in shear from hole to edge",
    parameters: ["pin.height", "body.cheek", "body.height"],
    advice: "Set the pin lower, or make the cheeks thicker.",
    remedies: [decrease("pin.height"), increase("body.cheek"), increase("body.height")],
  },
};

/** Strength over load at every weak place, and the pin's sag. */
export function checkPinStrength(plane: Elevation): Judgement[] {
  const strength = planePinStrength(plane);
  return [...WEAK_PLACES.flatMap((place) => judgeFactor(plane, strength, place)), ...judgeSag(plane, strength.fine)];
}

/** The factor of safety in a fine shaving; and in a catch, which is rare, strength enough for it. Nothing where unknown. */
function judgeFactor(
  plane: Elevation,
  { fine, inCatch }: ReturnType<typeof planePinStrength>,
  place: WeakPlace,
): Judgement[] {
  const [working, caught] = [fine[place].factor, inCatch[place].factor];
  if (working === undefined || caught === undefined || !Number.isFinite(working + caught)) return [];
  const { what, ...told } = WEAKNESS[place];
  const judged = { ...told, unit: "×", place: "pinCentre", source: HANDBOOK } as const;
  return pickWorst(
    ...judgeAtLeast(plane, {
      ...judged,
      what: `${what} over the load of a fine shaving (indicative)`,
      value: working,
      stop: 1,
      warn: plane.design.hold.safety,
    }),
    ...judgeAtLeast(plane, {
      ...judged,
      what: `${what} over the load of a catch (indicative)`,
      value: caught,
      warn: 1,
    }),
  );
}

/** A pin that sags presses the wedge at its edges only. */
const judgeSag = (plane: Elevation, fine: PinStrength): Judgement[] =>
  fine.sag === undefined
    ? []
    : judgeAtMost(plane, {
        code: "pin-sags",
        what: "The cross pin's sag in a fine shaving (indicative)",
        value: fine.sag.total,
        warn: BENCH_TOLERANCE,
        unit: "mm",
        parameters: ["pin.diameter", "pin.section", "wood.pin", "iron.width"],
        place: "pinCentre",
        advice: "It presses the wedge at its edges only: make the pin thicker, or of a stiffer wood.",
        remedies: [increase("pin.diameter")],
        source: HANDBOOK,
      });
