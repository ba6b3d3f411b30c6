// Mechanics: friction, wedge, beam, wood at an angle to its grain, bearing of a dowel, seasons of a pin.
import { bendingMoment, bendingSag } from "../../packages/bench/src/strength/beam.ts";
import { strengthAtAngle } from "../../packages/bench/src/strength/bearing.ts";
import {
  drivingForce,
  frictionAngle,
  type Hold,
  holdAt,
  lockingMargin,
} from "../../packages/bench/src/strength/friction-hold.ts";
import { type PinLoad, pinStrength } from "../../packages/bench/src/strength/pin-strength.ts";
import { flattedSection, roundSection } from "../../packages/bench/src/strength/section.ts";
import { atanDeg, cosDeg, sinDeg } from "../../packages/geometry/src/trig.ts";
import { findSpecies } from "../../packages/parameters/src/wood/species.ts";
import type { OutsideCheck } from "./check.ts";

const WEDGE = "statics of the wedge: P = Q·(tan φ₁ + tan(α ± φ₂)), from memory";

const contact = (angle: number, alongIron: number, atPin: number) => ({
  angle,
  taper: 0,
  alongIron: frictionAngle(alongIron),
  atPin: frictionAngle(atPin),
});

const wedges: readonly OutsideCheck[] = [
  ...(
    [
      [10, 0.35, 0.35, 910.945, 513.578],
      [10, 0.3, 0.2, 690.083, 322.867],
      [12, 0.2, 0.2, 630.874, 187.955],
      [25, 0.2, 0.2, 934.84, -43.59],
    ] as const
  ).flatMap(([angle, first, second, driving, withdrawing]) => {
    const wedge = contact(angle, first, second);
    const row = (how: string, theirs: number | string, ours: () => number | string) => ({
      what: `Wedge of ${angle}°, μ ${first} and ${second}, pressed with 1000 N: ${how}`,
      from: WEDGE,
      told: "worked apart" as const,
      theirs,
      ours,
    });
    return [
      { ...row("driven in by", driving, () => drivingForce(1000, wedge)), unit: "N", within: 5e-4 },
      row("holds itself", withdrawing > 0 ? "yes" : "no", () => (lockingMargin(wedge) > 0 ? "yes" : "no")),
    ];
  }),
  {
    what: "Steepest wedge that holds itself at μ 0.2 on both sides",
    from: "a wedge stays in the log up to twice the friction angle (mathalino.com, problem 535; its answer from memory)",
    told: "worked apart",
    unit: "°",
    theirs: 22.62,
    ours: () => lockingMargin(contact(0, 0.2, 0.2)),
    within: 5e-3,
  },
  ...symmetricWedge(),
];

/** Cut along its axis it is two wedges of the half angle, which by symmetry meet there without friction. */
function symmetricWedge(): OutsideCheck[] {
  const half = { angle: 5, alongIron: 0, atPin: frictionAngle(0.35) };
  const [normal, rubbing] = [1000, 350];
  const row = (how: string, theirs: number, ours: () => number) => ({
    what: `Symmetric wedge, half angle 5°, 1000 N on each face, μ 0.35: ${how}`,
    from: "2·R·(μ·cos h ± sin h), e-uparts.com, kikaibinran, keisan10",
    told: "read" as const,
    unit: "N",
    theirs,
    ours,
    within: 5e-4,
  });
  return [row("driven in by", 871.648, () => 2 * drivingForce(normal * cosDeg(5) - rubbing * sinDeg(5), half))];
}

const HOLD =
  "balance of forces on iron and wedge, cut free one from the other, Coulomb friction; standard statics, from memory";

/** An iron 48 wide under 240 N, bed 47°, μ 0.25 on steel and 0.35 on wood, pin of 12.7: N = 119.798 / (0.25 + the wedge's grip). */
const holds: readonly OutsideCheck[] = (
  [
    ["flatted", 6, 9.5, "least clamp", "N", 246.394, 5e-4, ({ clamp }) => clamp],
    ["round", 12, 9.5, "least clamp", "N", 403.827, 5e-4, ({ clamp }) => clamp],
    ["round", 14, 8, "friction angle at the pin less the wedge's", "°", -1.567, 5e-4, ({ holdMargin }) => holdMargin],
  ] as const satisfies readonly (readonly [
    string,
    number,
    number,
    string,
    string,
    number,
    number,
    (h: Hold) => number,
  ])[]
).map(([section, wedgeAngle, tenon, what, unit, theirs, within, use]) => ({
  what: `Iron, wedge of ${wedgeAngle}° and ${section} pin on ${tenon} mm tenons: ${what}`,
  from: HOLD,
  told: "worked apart",
  unit,
  theirs,
  ours: () =>
    use(
      holdAt(
        { forcePerMm: 5, ironWidth: 48, bedAngle: 47, taper: 0, wedgeAngle, pin: { section, diameter: 12.7, tenon } },
        { steel: 0.25, wood: 0.35 },
      ),
    ),
  within,
}));

const BEAM = "beam tables (AISC, Roark), from memory";
const round12 = () => ({ ...roundSection(12), elasticity: 12_600, shearModulus: 12_600 / 16 });

const beams: readonly OutsideCheck[] = [
  ...(
    [
      ["second moment", "mm⁴", 1017.876, () => roundSection(12).secondMoment],
      ["modulus", "mm³", 169.646, () => roundSection(12).modulus],
    ] as const
  ).map(([what, unit, theirs, ours]) => ({
    what: `Round of 12: ${what}`,
    from: "π·d⁴/64 and π·d³/32, Mechanical Engineering Principles, p. 282",
    told: "read" as const,
    unit,
    theirs,
    ours,
    within: 5e-4,
  })),
  ...flatted(),
  ...(
    [
      [54, 13_500, 12_600, 0.31973],
      [54, 13_500, 200_000, 0.020143],
      [46, 15_500, 12_600, 0.36549],
    ] as const
  ).flatMap(([loaded, moment, elasticity, sag]) => {
    const load = { load: 2000, span: 54, loaded };
    const row = (what: string, unit: string, theirs: number, ours: () => number, within: number) => ({
      what: `Beam of 54, round of 12, E ${elasticity}, 2000 N over ${loaded}: ${what}`,
      from: BEAM,
      told: "worked apart" as const,
      unit,
      theirs,
      ours,
      within,
    });
    return [
      row("moment", "N·mm", moment, () => bendingMoment(load), 1e-6),
      row("sag", "mm", sag, () => bendingSag(load, { ...round12(), elasticity }), 5e-6),
    ];
  }),
];

/** A flatted section of 12 about the half round's base, from which its own centroid is moved by the parallel axes. */
function flatted(): OutsideCheck[] {
  const aboutBase = () => {
    const { secondMoment, area, centroid } = flattedSection(12);
    return secondMoment + area * centroid ** 2;
  };
  return [
    {
      what: "Flatted pin of 12 about its axis: second moment",
      from: "half round π·r⁴/8, rectangle b·d³/3: Mechanical Engineering Principles, p. 282",
      told: "read",
      unit: "mm⁴",
      theirs: 1372.938,
      ours: aboutBase,
      within: 5e-4,
    },
  ];
}

const PIN: PinLoad = {
  clamp: 2000,
  section: "round",
  diameter: 12,
  tenon: 12,
  span: 54,
  loaded: 54,
  tenonArm: 4.5,
  bearing: 8,
  cheek: 8,
  thrustToGrain: 45,
  shearOut: 15,
};

function mapleIn(use: (pin: ReturnType<typeof pinStrength>) => number | undefined): () => number {
  return () => {
    const strength = findSpecies("sugar maple").found?.strength;
    return (strength && use(pinStrength(PIN, strength, strength))) ?? Number.NaN;
  };
}

const pins: readonly OutsideCheck[] = (
  [
    ["bending stress", "MPa", 79.577, mapleIn(({ bending }) => bending.stress), 5e-4, "σ = M/S"],
    ["shear in a tenon", "MPa", 11.789, mapleIn(({ tenonShear }) => tenonShear.stress), 5e-4, "τ = 4·V/(3·A)"],
    [
      "bending of a tenon, 4.5 to its shoulder",
      "MPa",
      26.526,
      mapleIn(({ tenonBending }) => tenonBending.stress),
      5e-4,
      "σ = V·a/S",
    ],
    ["sag in bending", "mm", 0.31973, mapleIn(({ sag }) => sag?.bending), 5e-6, "5·W·L³/(384·E·I)"],
    [
      "a cheek's strength at 45°",
      "MPa",
      17.017,
      mapleIn(({ cheekBearing }) => cheekBearing.strength),
      5e-4,
      "Hankinson",
    ],
  ] as const
).map(([what, unit, theirs, ours, within, formula]) => ({
  what: `Pin of sugar maple, 12 thick, 54 between cheeks, 2000 N: ${what}`,
  from: `${formula}; ${BEAM}`,
  told: "worked apart",
  unit,
  theirs,
  ours,
  within,
}));

const hankinson: readonly OutsideCheck[] = [
  {
    what: "Joint of two timbers, 1400 and 400 psi, sin²θ 0.36",
    from: "Handbook of Civil Engineering Calculations, “Compression on an oblique plane” (scan, p. 346)",
    told: "read",
    unit: "psi",
    theirs: 737,
    ours: () => strengthAtAngle(1400, 400, atanDeg(3 / 4)),
    within: 0.5,
  },
  ...(
    [
      [0, 54.0],
      [10, 47.743],
      [20, 35.798],
      [30, 25.879],
      [45, 17.017],
      [60, 12.676],
      [90, 10.1],
    ] as const
  ).map(([angle, theirs]) => ({
    what: `54.0 along and 10.1 across the grain, at ${angle}°`,
    from: "Hankinson's formula, n = 2 (Wood Handbook, ch. 5; NDS, app. J)",
    told: "worked apart" as const,
    unit: "MPa",
    theirs,
    ours: () => strengthAtAngle(54.0, 10.1, angle),
    within: 5e-4,
  })),
];

/** Bearing under a dowel of 12.7 mm in wood of G 0.63, psi: 7056 along the grain, 4414.57 across it. */
const dowelAtAngle: OutsideCheck = {
  what: "Dowel bearing at 45° to the grain, between 7056 psi along it and 4414.57 psi across",
  from: "NDS, table 12.3.3 and 12.3-11 (formulas quoted: engineersedge.com)",
  told: "quoted",
  unit: "psi",
  theirs: 5431.15,
  ours: () => strengthAtAngle(7056, 4414.57, 45),
  within: 5e-3,
};

export const MECHANICS_CHECKS: readonly OutsideCheck[] = [
  ...wedges,
  ...holds,
  ...beams,
  ...pins,
  ...hankinson,
  dowelAtAngle,
];
