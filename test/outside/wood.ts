// Wood: moisture, movement and species, against the Wood Handbook and pages that quote it.
import { acrossRings, equilibriumMoisture, movementLaw } from "../../packages/parameters/src/wood/moisture.ts";
import { findSpecies, type Species } from "../../packages/parameters/src/wood/species.ts";
import type { OutsideCheck, Provenance } from "./check.ts";

const HANDBOOK = "Wood Handbook (FPL-GTR-190, 2010)";

const moistureAt = (temperature: number, humidity: number): Pick<OutsideCheck, "unit" | "ours"> => ({
  unit: "%",
  ours: () => equilibriumMoisture(temperature, humidity),
});

/** °C, %, printed %. */
const TABLE_4_2: readonly (readonly [number, number, number])[] = [
  [4.4, 20, 4.6],
  [4.4, 40, 7.9],
  [4.4, 65, 12.3],
  [4.4, 90, 21.0],
  [10.0, 30, 6.3],
  [10.0, 60, 11.2],
  [10.0, 80, 16.4],
  [21.1, 20, 4.5],
  [21.1, 30, 6.2],
  [21.1, 50, 9.2],
  [21.1, 65, 12.0],
  [21.1, 80, 16.0],
  [21.1, 90, 20.5],
  [32.2, 40, 7.4],
  [32.2, 70, 12.6],
  [32.2, 90, 19.8],
];

/** The same equation in another program. °C, %, %, how near. */
const EQUATION_4_5: readonly (readonly [number, number, number, number])[] = [
  [20, 30, 6.1882, 5e-5],
  [20, 50, 9.2711, 5e-5],
  [20, 65, 11.9963, 5e-5],
  [21.1, 50, 9.2426, 5e-5],
  [25, 80, 15.8078, 5e-5],
  [10, 70, 13.4257, 5e-5],
  [35, 90, 19.6696, 5e-5],
  [60, 55, 8.37, 5e-3],
];

/** What a row of the moisture equation is called; see `theirsOf`. */
export const moistureRow = (temperature: number, humidity: number): string =>
  `Equilibrium moisture by the equation, ${temperature} °C, ${humidity} %`;

const moistures: readonly OutsideCheck[] = [
  ...TABLE_4_2.map(([temperature, humidity, theirs]) => ({
    what: `Equilibrium moisture by the table, ${temperature} °C, ${humidity} %`,
    from: `${HANDBOOK}, table 4-2`,
    told: "from memory" as const,
    theirs,
    within: 0.06,
    ...moistureAt(temperature, humidity),
  })),
  ...EQUATION_4_5.map(([temperature, humidity, theirs, within]) => ({
    what: moistureRow(temperature, humidity),
    from: `${HANDBOOK}, eq. 4-5, worked in another program`,
    told: "worked apart" as const,
    theirs,
    within,
    ...moistureAt(temperature, humidity),
  })),
  {
    what: "Equilibrium moisture, 70 °F, 60 %",
    from: "stoves.bioenergylists.org/emccalc, calculator after Simpson, FPL-RN-0268 (1998)",
    told: "read",
    theirs: 11.1,
    within: 0.15, // the page rounds the humidity to whole per cents, and half of one is 0.1 of moisture
    ...moistureAt(21.1, 60),
  },
  ...(
    [
      [30, 6],
      [50, 9],
      [65, 12],
      [80, 16],
    ] as const
  ).map(([humidity, theirs]) => ({
    what: `Rule of the trade: air of ${humidity} % brings wood to`,
    from: "woodworkingnetwork.com, magazine, “rh-equivalent”",
    told: "read" as const,
    theirs,
    within: 0.5, // whole per cents
    ...moistureAt(21.1, humidity),
  })),
];

const changed = (
  size: number,
  moisture: readonly [from: number, to: number],
  movement: { readonly coefficient?: number | undefined; readonly shrinkage?: number },
): number => {
  const { coefficient, shrinkage } = movement;
  return movementLaw({ coefficient, shrinkage }, moisture)!.change(size, ...moisture);
};
const INCH = 25.4;

const movements: readonly OutsideCheck[] = [
  {
    what: "White fir, flat sawn, 232 mm, 8 → 11 %: new width",
    from: `${HANDBOOK}, example on p. 13-17 (result read, inputs from memory)`,
    told: "read",
    unit: "mm",
    theirs: 233.7,
    ours: () => 232 + changed(232, [8, 11], movementOf("white fir").flat),
    within: 0.05,
  },
  {
    what: "White fir, flat sawn, 232 mm, 8 → 11 %: change",
    from: `${HANDBOOK}, eq. 13-2`,
    told: "worked apart",
    unit: "mm",
    theirs: 1.7052,
    ours: () => changed(232, [8, 11], { coefficient: 0.00245 }),
    within: 5e-5,
  },
  ...(
    [
      ["13-3", [6, 16], { shrinkage: 9.9 }, 2.6879],
      ["13-2", [6, 16], { coefficient: 0.00353 }, 2.6475],
      ["13-3", [8, 12], { shrinkage: 9.9 }, 1.0675],
      ["13-2", [8, 12], { coefficient: 0.00353, shrinkage: 9.9 }, 1.059],
    ] as const
  ).map(([equation, moisture, wood, theirs]) => ({
    what: `Sugar maple, flat sawn, 75 mm, ${moisture.join(" → ")} %, by eq. ${equation}`,
    from: `${HANDBOOK}, eq. ${equation}`,
    told: "worked apart" as const,
    unit: "mm",
    theirs,
    ours: () => changed(75, moisture, wood),
    within: 5e-5,
  })),
  {
    what: "Sugar maple, flat sawn, 75 mm, 6 → 16 %, by eq. 13-2 up to 14 % and by eq. 13-3 beyond",
    from: `${HANDBOOK}, eq. 13-2 and 13-3`,
    told: "worked apart",
    unit: "mm",
    theirs: 2.6556, // 75·(8·0.00353 + 2/(3000/9.9 − 30 + 6))
    ours: () => changed(75, [6, 16], { coefficient: 0.00353, shrinkage: 9.9 }),
    within: 5e-5,
  },
  {
    what: "Mesquite, coefficient .00129, 5 in wide, 6 → 9 %",
    from: "flooringartists.com/dimensional-change, worked example",
    told: "read",
    unit: "in",
    theirs: 0.019,
    ours: () => changed(5 * INCH, [6, 9], { coefficient: 0.00129 }) / INCH,
    within: 5e-4,
  },
  {
    what: "Red alder, coefficient .0026, 8 in wide, 6 % more moisture",
    from: "a woodworking magazine, September 2021, “Calculating Wood Movement” (pressreader.com)",
    told: "read",
    unit: "in",
    theirs: 0.1248,
    ours: () => changed(8 * INCH, [6, 12], { coefficient: 0.0026 }) / INCH,
    within: 5e-5,
  },
  ...(
    [
      [0, 0.00353],
      [30, 0.00306],
      [45, 0.00259],
      [60, 0.00212],
      [90, 0.00165],
    ] as const
  ).map(([rings, theirs]) => {
    const maple = { radial: 0.00165, tangential: 0.00353 };
    return {
      what: `Sugar maple's coefficient at ${rings}° to the rings' tangent`,
      from: "plane strain turned by the rings' angle: cos² and sin²",
      told: "worked apart" as const,
      theirs,
      ours: () => acrossRings(maple, rings),
      within: 5e-6,
    };
  }),
];

function woodOf(name: string): Species {
  const { found } = findSpecies(name);
  if (!found) throw new Error(`${name} is not in the table`);
  return found;
}
const movementOf = (name: string) => ({ flat: { coefficient: woodOf(name).coefficient?.tangential } });

const property = (
  what: string,
  [from, told]: readonly [string, Provenance],
  theirs: number,
  ours: () => number | undefined,
  unit = "",
): OutsideCheck => ({ what, from, told, unit, theirs, ours: () => ours() ?? Number.NaN });

const MAPLE_PAGE = [`${HANDBOOK}, table 5-3 (engdatabase.com)`, "quoted"] as const;
const BEECH_STRENGTH = [`${HANDBOOK}, table 5-3 (synthmind.com, woodworkingnetwork.com)`, "quoted"] as const;
const SCAN_13_5 = [`${HANDBOOK}, table 13-5 (scan, p. 13-16)`, "read"] as const;
const SCAN_4_3 = [`${HANDBOOK}, table 4-3 (scan, p. 4-6)`, "read"] as const;
const maple = () => woodOf("sugar maple").strength;
const beech = () => woodOf("beech, american");

/** Printed by a flooring page from the handbook of 1987, tangential: a second reading of table 13-5. */
const FLOORING: readonly (readonly [string, number])[] = [
  ["American beech", 0.00431],
  ["Hickory, true", 0.00411],
  ["sugar maple", 0.00353],
  ["yellow birch", 0.00338],
  ["black walnut", 0.00274],
  ["white ash", 0.00274],
  ["black cherry", 0.00248],
  ["Purpleheart", 0.00212],
  ["Teak", 0.00186],
];

const properties: readonly OutsideCheck[] = [
  property("Sugar maple: specific gravity", MAPLE_PAGE, 0.63, () => maple()?.specificGravity),
  property("Sugar maple: modulus of rupture", MAPLE_PAGE, 109, () => maple()?.bending, "MPa"),
  property("Sugar maple: modulus of elasticity", MAPLE_PAGE, 12_600, () => maple()?.elasticity, "MPa"),
  property("Sugar maple: compression along the grain", MAPLE_PAGE, 54, () => maple()?.compressionAlong, "MPa"),
  property("Sugar maple: compression across the grain", MAPLE_PAGE, 10.1, () => maple()?.compressionAcross, "MPa"),
  property("Sugar maple: shear along the grain", MAPLE_PAGE, 16.1, () => maple()?.shearAlong, "MPa"),
  property("Sugar maple: side hardness", MAPLE_PAGE, 6400, () => maple()?.hardness, "N"),
  property("American beech: modulus of rupture", BEECH_STRENGTH, 103, () => beech().strength?.bending, "MPa"),
  property("American beech: modulus of elasticity", BEECH_STRENGTH, 11_900, () => beech().strength?.elasticity, "MPa"),
  property("American beech: compression across", BEECH_STRENGTH, 7, () => beech().strength?.compressionAcross, "MPa"),
  property("American beech: shear along", BEECH_STRENGTH, 13.9, () => beech().strength?.shearAlong, "MPa"),
  property("American beech: C_R", SCAN_13_5, 0.0019, () => beech().coefficient?.radial),
  property("American beech: C_T", SCAN_13_5, 0.00431, () => beech().coefficient?.tangential),
  property("American beech: radial shrinkage", SCAN_4_3, 5.5, () => beech().shrinkage?.radial, "%"),
  property("American beech: tangential shrinkage", SCAN_4_3, 11.9, () => beech().shrinkage?.tangential, "%"),
  property("American beech: volumetric shrinkage", SCAN_4_3, 17.2, () => beech().shrinkage?.volume, "%"),
  {
    what: "American beech: C_T out of its shrinkage, S / (3000 − 20·S)",
    from: `${HANDBOOK}, eq. 13-3 from 10 % against table 13-5`,
    told: "worked apart",
    theirs: 0.00431,
    ours: () => movementLaw({ coefficient: undefined, shrinkage: 11.9 }, [])!.change(1, 10, 11),
    within: 1e-5,
  },
];

const flooring = FLOORING.map(([name, theirs]) =>
  property(
    `${name}: C_T in a second reading`,
    ["flooringartists.com/dimensional-change, after the Wood Handbook of 1987", "quoted"],
    theirs,
    () => woodOf(name).coefficient?.tangential,
  ),
);

export const WOOD_CHECKS: readonly OutsideCheck[] = [...moistures, ...movements, ...properties, ...flooring];
