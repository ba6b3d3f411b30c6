// How often the ranges hold the truth, and how often a verdict is right: beds of known surface, read with known errors.
// SURVEY_BEDS=full takes 500 beds a feel error and 3 000 flat or hollow ones; the usual run takes a part of them.
import { describe, expect, it } from "vitest";
import { type BedSurvey, judgeBed } from "../../../packages/bench/src/survey/index.ts";
import {
  BED,
  type BedForm,
  diagonalOf,
  FIVE_PLACEMENTS,
  feeledGaps,
  type Noise,
  randomBetween,
  seededUniform,
} from "./beds.ts";

const FULL = process.env.SURVEY_BEDS === "full";
const BEDS = FULL ? 500 : 30;
const SOUND_BEDS = FULL ? 3000 : 200;
const LIMIT = 0.1;
const FEELS = [0, 0.005, 0.01];

type Draw = (random: () => number) => BedForm;

const anyForm: Draw = (random) => ({
  along: randomBetween(random, -0.2, 0.2),
  across: randomBetween(random, -0.2, 0.2),
  twist: randomBetween(random, -0.2, 0.2),
});

/** No hump anywhere: the twist is no more than a bowl of these two sagittas can have. */
const bowl =
  (deepest: number): Draw =>
  (random) => {
    const [along, across] = [randomBetween(random, 0, deepest / 2), randomBetween(random, 0, deepest / 2)];
    const most = 2 * Math.sqrt(along * across);
    const twist = randomBetween(random, -most, most);
    const shrink = Math.min(1, deepest / Math.max(along + across + Math.abs(twist), 1e-12));
    return { along: along * shrink, across: across * shrink, twist: twist * shrink };
  };
/** One in three is flat; the others hollow by no more than six tenths of the limit. */
const good: Draw = (random) => (random() < 1 / 3 ? { along: 0, across: 0, twist: 0 } : bowl(0.6 * LIMIT)(random));
/** Hollow over the limit by up to half of it, on some line. */
const tooHollow: Draw = (random) => {
  const form = bowl(LIMIT)(random);
  const deepest = deepestOf(form);
  const grow = (LIMIT * (1 + randomBetween(random, 0.001, 0.5))) / Math.max(deepest, 1e-12);
  return { along: form.along * grow, across: form.across * grow, twist: form.twist * grow };
};

/** Greatest sagitta of any line through the centre; for a bowl it lies at the rim's corners or middles. */
const deepestOf = (form: BedForm) => Math.max(form.along, form.across, diagonalOf(form, 1), diagonalOf(form, -1));

interface Surveyed {
  readonly form: BedForm;
  readonly survey: BedSurvey;
}

/** `feel` is two standard deviations of the noise and what the judge is told of it. */
function surveys(draw: Draw, feel: number, count: number, noise: Noise = "normal"): Surveyed[] {
  return Array.from({ length: count }, (_, seed) => {
    const random = seededUniform(1000 + seed);
    const form = draw(random);
    const readings = feeledGaps(form, feel, noise, random, FIVE_PLACEMENTS);
    return { form, survey: judgeBed(readings, BED, { feel, hollow: LIMIT }) };
  });
}

const truthOf = (form: BedForm) => [form.along, form.across, diagonalOf(form, 1), diagonalOf(form, -1)];
const share = <T>(items: readonly T[], holds: (item: T) => boolean) => items.filter(holds).length / items.length;

function note(line: string): void {
  if (FULL) console.info(line);
}

describe.each(FEELS)("a feel error of %d mm", (feel) => {
  it.each<Noise>(["normal", "even"])("95 %% ranges hold the truth in 93 of 100 beds or more", (noise) => {
    const all = surveys(anyForm, feel, BEDS, noise);
    const heldOn = [0, 1, 2, 3].map((line) =>
      share(all, ({ form, survey }) => {
        const { low, high } = survey.lines[line]!.likely;
        const truth = truthOf(form)[line]!;
        return low - 1e-6 <= truth && truth <= high + 1e-6;
      }),
    );
    const heldOnAll = share(all, ({ form, survey }) =>
      survey.lines.every(({ likelyAnywhere: { low, high } }, line) => {
        const truth = truthOf(form)[line]!;
        return low - 1e-6 <= truth && truth <= high + 1e-6;
      }),
    );
    note(`feel ${feel} ${noise}: lines ${heldOn.join(" ")}, all ${heldOnAll}`);
    for (const held of [...heldOn, heldOnAll]) expect(held).toBeGreaterThanOrEqual(0.93);
  });

  it("a flat or hollow bed is never told humped or in wind", () => {
    const sound = surveys((random) => (random() < 0.3 ? good(random) : bowl(0.3)(random)), feel, SOUND_BEDS / 3);
    const humped = sound.filter(({ survey }) => survey.verdict === "humped" || survey.verdict === "wound");
    note(`feel ${feel}: ${humped.length} false humps in ${sound.length}`);
    expect(humped).toHaveLength(0);
  });

  it("good beds stay undecided in under 5 of 100", () => {
    const undecided = share(surveys(good, feel, BEDS), ({ survey }) => survey.verdict === "undecided");
    note(`feel ${feel}: ${100 * undecided} % of good beds undecided`);
    expect(undecided).toBeLessThan(0.05);
  });

  it("no hollow over the limit passes", () => {
    const passed = surveys(tooHollow, feel, BEDS).filter(({ survey }) => survey.passes);
    note(`feel ${feel}: ${passed.length} hollows over the limit passed in ${BEDS}`);
    expect(passed).toHaveLength(0);
  });
});
