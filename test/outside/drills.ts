// Drill gauges against public charts of them.
import { LETTER_DRILLS, NUMBER_DRILLS } from "../../packages/parameters/src/units/drill-chart.ts";
import type { OutsideCheck } from "./check.ts";

const CHART = "github.com/DeflateAwning/metric-imperial-drill-chart, README, letters A to Z";
const PAGE = "powertoolstoday.com/number-letter-drill-bit-sizes, most used numbers";
const ENDS = "slashgear.com/2029899, after the standardized chart; hlparts.cn/article/243, gauge 52";

/** Diameters of the letters, mm. */
// biome-ignore format: as the gauge is lettered
const LETTERS_MM = [
  5.944, 6.045, 6.147, 6.248, 6.350, 6.528, 6.629, 6.756, 6.909, 7.036, 7.137, 7.366, 7.493,
  7.671, 8.026, 8.204, 8.433, 8.611, 8.839, 9.093, 9.347, 9.576, 9.804, 10.080, 10.260, 10.490,
];

const letters = LETTERS_MM.map(
  (theirs, i): OutsideCheck => ({
    what: `Drill of letter ${String.fromCharCode(65 + i)}`,
    from: CHART,
    told: "read",
    unit: "mm",
    theirs,
    ours: () => LETTER_DRILLS[i]! * 25.4,
    within: 6e-3, // the chart cuts its last letters to a hundredth
  }),
);

const number = (no: number, theirs: number, from: string): OutsideCheck => ({
  what: `Drill No. ${no}`,
  from,
  told: "quoted",
  unit: "in",
  theirs,
  ours: () => NUMBER_DRILLS[no - 1]!,
  within: 1e-9,
});

export const DRILL_CHECKS: readonly OutsideCheck[] = [
  ...letters,
  ...(
    [
      [1, 0.228],
      [2, 0.221],
      [3, 0.213],
      [4, 0.209],
      [7, 0.201],
      [10, 0.1935],
      [21, 0.159],
      [25, 0.1495],
    ] as const
  ).map(([no, theirs]) => number(no, theirs, PAGE)),
  number(52, 0.0635, ENDS),
  number(80, 0.0135, ENDS),
];
