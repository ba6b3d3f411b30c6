// What a year's dry and damp days do to the plane: the core must not close on the iron, the pin or the wedge.
import { equilibriumMoisture, type Movement, type MovementLaw, movementLaw } from "@lamplane/parameters/wood";

/** Air in the shop: °C and percent. */
export interface Climate {
  readonly temperature: number;
  readonly humidity: number;
}

/** Sizes as planned, at the planned moisture, mm. Iron and pin (its grain along z) keep theirs along z. */
export interface SeasonSizes {
  readonly ironWidth: number;
  readonly coreWidth: number;
  readonly cheek: number;
  readonly bodyHeight: number;
  readonly wedgeWidth: number;
  /** Length of the pin's body between its shoulders. */
  readonly pinBody: number;
  /** From the shoulder to the tenon's end. */
  readonly tenonLength: number;
  readonly tenon: number;
  readonly hole: number;
}

/** How the woods move, each in the direction named. A wood the tables lack has neither figure. */
export interface SeasonMovement {
  readonly bodyWidth: Movement;
  readonly bodyHeight: Movement;
  readonly wedgeWidth: Movement;
  readonly pinRadial: Movement;
  readonly pinTangential: Movement;
}

export interface SeasonsInput {
  /** Moisture at which the planned sizes are cut, %. */
  readonly planned: number;
  readonly driest: Climate;
  readonly dampest: Climate;
  readonly sizes: SeasonSizes;
  readonly movement: SeasonMovement;
  /** Gap to be left at the worst of the year, mm; above 0. */
  readonly leastGap: number;
}

/** The plane at one moisture, mm. Undefined where a wood's movement is not in the tables. */
export interface Season {
  /** Percent. */
  readonly moisture: number;
  readonly coreWidth: number | undefined;
  readonly cheek: number | undefined;
  readonly bodyHeight: number | undefined;
  readonly wedgeWidth: number | undefined;
  /** Core over iron, in all; at each shoulder of the pin; core over wedge, in all. */
  readonly sideGap: number | undefined;
  readonly pinEndGap: number | undefined;
  readonly wedgeGap: number | undefined;
  /** How far each tenon stands out of the cheek, the pin in the middle of the core; below 0 it lies inside. */
  readonly tenonProud: number | undefined;
  /** Hole over tenon at the narrowest: along the cheek's grain the hole keeps its size. */
  readonly tenonGap: number | undefined;
}

/** Clearances that leave the least gap at the worst of the year, mm, in the sense of the parameters of these names. */
export interface ClearanceToPlan {
  readonly sideClearance: number | undefined;
  readonly endClearance: number | undefined;
  readonly wedgeClearance: number | undefined;
}

export interface Seasons {
  readonly driest: Season;
  readonly planned: Season;
  readonly dampest: Season;
  readonly clearance: () => ClearanceToPlan;
  /** False where a moisture lies outside what the equation used was published for. */
  readonly valid: boolean;
}

/** @see plane geometry: Seasons */
export function seasons(input: SeasonsInput): Seasons {
  const { driest, dampest } = moistureRange(input);
  const laws = lawsOf(input, [driest, input.planned, dampest]);
  return {
    driest: seasonAt(input, laws, driest),
    planned: seasonAt(input, laws, input.planned),
    dampest: seasonAt(input, laws, dampest),
    clearance: () => clearanceToPlan(input, laws, [driest, input.planned, dampest]),
    valid: Object.values(laws).every((law) => law?.valid !== false),
  };
}

/** The year from its driest to its dampest moisture in even steps, for plotting. @param points 2 or more */
export function seasonSeries(input: SeasonsInput, points = 25): Season[] {
  const { driest, dampest } = moistureRange(input);
  const laws = lawsOf(input, [driest, input.planned, dampest]);
  const step = (dampest - driest) / (points - 1);
  return Array.from({ length: points }, (_, i) =>
    seasonAt(input, laws, i === points - 1 ? dampest : driest + i * step),
  );
}

/** Moistures to which the wood comes in the driest and the dampest air, %. */
export const moistureRange = ({ driest, dampest }: Pick<SeasonsInput, "driest" | "dampest">) => ({
  driest: equilibriumMoisture(driest.temperature, driest.humidity),
  dampest: equilibriumMoisture(dampest.temperature, dampest.humidity),
});

type Laws = Readonly<Record<keyof SeasonMovement, MovementLaw | undefined>>;

function lawsOf({ movement }: SeasonsInput, moistures: readonly number[]): Laws {
  const law = (key: keyof SeasonMovement) => movementLaw(movement[key], moistures);
  return {
    bodyWidth: law("bodyWidth"),
    bodyHeight: law("bodyHeight"),
    wedgeWidth: law("wedgeWidth"),
    pinRadial: law("pinRadial"),
    pinTangential: law("pinTangential"),
  };
}

function seasonAt({ planned, sizes }: SeasonsInput, laws: Laws, moisture: number): Season {
  const moved = (size: number, law: MovementLaw | undefined) => law && size + law.change(size, planned, moisture);
  const coreWidth = moved(sizes.coreWidth, laws.bodyWidth);
  const wedgeWidth = moved(sizes.wedgeWidth, laws.wedgeWidth);
  const cheek = moved(sizes.cheek, laws.bodyWidth);
  const thickest = greater(moved(sizes.tenon, laws.pinRadial), moved(sizes.tenon, laws.pinTangential));
  const pinEndGap = half(less(coreWidth, sizes.pinBody));
  const holeHeight = moved(sizes.hole, laws.bodyHeight);
  return {
    moisture,
    coreWidth,
    cheek,
    bodyHeight: moved(sizes.bodyHeight, laws.bodyHeight),
    wedgeWidth,
    sideGap: less(coreWidth, sizes.ironWidth),
    pinEndGap,
    wedgeGap: less(coreWidth, wedgeWidth),
    tenonProud: less(less(sizes.tenonLength, pinEndGap), cheek),
    tenonGap: less(holeHeight === undefined ? undefined : Math.min(sizes.hole, holeHeight), thickest),
  };
}

/** Each clearance solved for at every moisture, and the largest taken. k is a size's relative change. */
function clearanceToPlan(input: SeasonsInput, { bodyWidth, wedgeWidth }: Laws, at: readonly number[]): ClearanceToPlan {
  const { ironWidth, coreWidth } = input.sizes;
  const largest = (law: MovementLaw, solved: (k: number, moisture: number) => number): number =>
    Math.max(...at.map((moisture) => solved(law.change(1, input.planned, moisture), moisture)));
  const wedgeFor = (body: MovementLaw, wedge: MovementLaw) =>
    largest(body, (k, moisture) => {
      const atWorst = coreWidth * (1 + k) - input.leastGap;
      return coreWidth - atWorst / (1 + wedge.change(1, input.planned, moisture));
    });
  return {
    sideClearance: bodyWidth && largest(bodyWidth, (k) => (input.leastGap - k * ironWidth) / (1 + k)),
    endClearance: bodyWidth && largest(bodyWidth, (k) => input.leastGap - (k * coreWidth) / 2),
    wedgeClearance: bodyWidth && wedgeWidth && wedgeFor(bodyWidth, wedgeWidth),
  };
}

type MaybeNumber = number | undefined;
const less = (a: MaybeNumber, b: MaybeNumber): MaybeNumber => (a === undefined || b === undefined ? undefined : a - b);
const greater = (a: MaybeNumber, b: MaybeNumber): MaybeNumber =>
  a === undefined || b === undefined ? undefined : Math.max(a, b);
const half = (a: MaybeNumber): MaybeNumber => (a === undefined ? undefined : a / 2);
