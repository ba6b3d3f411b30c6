// Designs for tests: the defaults with changes, the worked set, and seeded random ones.
import { type Design, isRow, LIST_NAMES, TABLE, type TableSection } from "@lamplane/parameters/table";

type Value = number | string;
export type Changes = Readonly<Record<string, Value>>;

/** Defaults out of the table, an iron of 48 × 3.6, and changes by dotted path. Throws on a path the table lacks. */
export function designWith(changes: Changes = {}): Design {
  const left = new Map<string, Value>(Object.entries({ "iron.width": 48, "iron.thickness": 3.6, ...changes }));
  const filled = (section: TableSection, prefix: string): object =>
    Object.fromEntries(
      Object.entries(section).map(([key, entry]) => {
        const path = prefix + key;
        if (!isRow(entry)) return [key, filled(entry, `${path}.`)];
        const value = left.get(path) ?? entry.default;
        if (entry.kind === "number" && typeof value === "number" && !(value >= entry.min && value <= entry.max))
          throw new Error(`${path}: ${value} is outside the table's ${entry.min} … ${entry.max}`);
        left.delete(path);
        return [key, value];
      }),
    );
  const design = {
    ...filled(TABLE, ""),
    ...Object.fromEntries(LIST_NAMES.map((name) => [name, []])),
  } as unknown as Design;
  if (left.size > 0) throw new Error(`no such parameter: ${[...left.keys()].join(", ")}`);
  return design;
}

/** The set worked by hand in the geometry notes, computed apart from the project. */
export const WORKED = {
  "iron.width": 48,
  "iron.thickness": 3.6,
  "iron.bevel": 28,
  "capIron.thickness": 3.2,
  "capIron.hump": 0,
  "body.length": 230,
  "body.height": 58,
  "body.sideClearance": 1.6,
  "bed.angle": 47,
  "ramp.angle": 60,
  "mouth.fromToe": 78,
  "mouth.opening": 0.15,
  "sole.allowance": 3,
  "wedge.angle": 6,
  "wedge.tip": 3,
  "wedge.tipFromEdge": 22,
  "pin.diameter": 12.7,
  "pin.height": 36,
} as const satisfies Changes;

/** Numbers from 0 to 1 that follow from the seed (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

export interface RandomDesign {
  readonly changes: Changes;
  readonly design: Design;
}

/** How often a draw may be turned down for each design that is kept. */
const DRAWS_PER_DESIGN = 40;

/** `n` plausible designs that follow from the seed; `keep` turns down those a test cannot use. */
export function randomDesigns(seed: number, n: number, keep: (d: Design) => boolean = () => true): RandomDesign[] {
  const random = seeded(seed);
  const kept: RandomDesign[] = [];
  for (let draws = 0; kept.length < n; draws++) {
    if (draws > n * DRAWS_PER_DESIGN) throw new Error(`only ${kept.length} of ${draws} random designs were kept`);
    const changes = randomChanges(random);
    const design = designWith(changes);
    if (keep(design)) kept.push({ changes, design });
  }
  return kept;
}

/** The same with irons that taper, thick at either end, entered as an angle or by two thicknesses; a third are single irons. */
export function taperedDesigns(seed: number, n: number, keep: (d: Design) => boolean = () => true): RandomDesign[] {
  const random = seeded(seed + 1);
  return randomDesigns(seed, n, keep).map(({ changes }) => {
    const thickness = Number(changes["iron.thickness"]);
    const taper = Math.round((random() < 0.5 ? 1 : -1) * (5 + 115 * random() * Math.min(1, thickness / 4))) / 100;
    const low = Math.round(20 * random());
    const atTop = thickness - (140 - low) * Math.tan((taper * Math.PI) / 180);
    const entered: Changes =
      random() < 0.5 && atTop >= 0.8
        ? { "iron.thicknessAtTop": atTop, "iron.topFromEdge": 140 }
        : { "iron.taper": Math.sign(taper) * Math.min(Math.abs(taper), 0.4) };
    const single: Changes = random() < 1 / 3 ? { "capIron.thickness": 0 } : {};
    const all = { ...changes, ...single, ...entered, "iron.thicknessFromEdge": low };
    return { changes: all, design: designWith(all) };
  });
}

function randomChanges(random: () => number): Changes {
  const between = (low: number, high: number) => Math.round((low + (high - low) * random()) * 100) / 100;
  const oneOf = <T>(...choices: T[]): T => choices[Math.floor(random() * choices.length)]!;
  const length = between(150, 700);
  const diameter = between(9, 14);
  return {
    "iron.width": between(25, 80),
    "iron.thickness": between(2, 6),
    "iron.bevel": between(24, 33),
    "capIron.thickness": oneOf(0, between(2, 4), between(2, 4)),
    "capIron.hump": oneOf(0, between(0, 1)),
    "capIron.screwHead.diameter": between(8, 18),
    "capIron.screwHead.height": oneOf(0, between(1.5, 4), between(1.5, 4)),
    "capIron.screwHead.fromEdge": between(38, 56),
    "body.length": length,
    "body.height": between(45, 75),
    "body.cheek": between(6, 12),
    "body.sideClearance": between(0.8, 2.5),
    "body.trim": oneOf(0, 25.4, between(10, 50)),
    "body.outline": oneOf("flat", "arched"),
    "bed.angle": oneOf(45, 50, between(40, 62), between(40, 62)),
    "bed.featherChamfer": oneOf(0, between(0, 6)),
    "ramp.shape": oneOf("auto", "auto", "straight", "curved"),
    "ramp.exitAngle": oneOf(45, between(38, 55)),
    "ramp.wearAngle": oneOf(75, between(65, 80)),
    "ramp.wearHeight": between(4, 9),
    "mouth.fromToe": oneOf<Value>("auto", Math.round(length * between(0.3, 0.42))),
    "mouth.opening": between(0, 0.8),
    "sole.allowance": oneOf(0, between(0, 5)),
    "recess.cutter": between(4, 8),
    "recess.travel": between(0, 8),
    "wedge.angle": between(5, 10),
    "wedge.tip": between(1.5, 4),
    "wedge.tipFromEdge": between(18, 26),
    "wedge.clearance": between(0.5, 2),
    "pin.section": oneOf("flatted", "round"),
    "pin.diameter": diameter,
    "pin.tenon": Math.round(diameter * between(0.6, 0.8) * 100) / 100,
    "pin.endClearance": between(0, 1),
    "pegs.perEnd": oneOf(0, 1, 2),
    "pegs.diameter": between(3, 8),
    "shop.kerf": between(0.8, 4),
  };
}
