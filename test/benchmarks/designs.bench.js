// From a design to its figures and checks, one after another in one thread, and growth from one design to ten thousand.
import { asBuiltPlane, figuresAsBuilt } from "@lamplane/bench";
import { checkPlane, checkWithoutCures, mayBeBuilt } from "@lamplane/bench/checks";
import { readDesign } from "@lamplane/parameters/design";
import { elevationFigures } from "@lamplane/parameters/elevation";
import { drawnDesigns, FIRST } from "./corpus.js";
import { beside } from "./measure.js";

export const title = "Designs: figures and checks";
const MANY = 10_000;

const STEPS = [
  ["read the file", ({ text, path }) => readDesign(text, path)],
  ["to the elevation", ({ design }) => asBuiltPlane(design)],
  ["to the elevation and its figures", ({ design }) => elevationFigures(asBuiltPlane(design))],
  ["to every figure, strength and seasons too", ({ design }) => figuresAsBuilt(design)],
  ["to its findings", ({ design }) => checkWithoutCures(asBuiltPlane(design))],
  ["to its findings with their cures", ({ design }) => checkPlane(asBuiltPlane(design))],
];

export async function measured() {
  const designs = drawnDesigns(MANY);
  const findings = designs.map((design) => checkWithoutCures(asBuiltPlane(design)));
  const fit = findings.filter(mayBeBuilt).length;
  const all = (of, make) => () => {
    for (const design of of) make(design);
  };
  const everything = (design) => {
    const plane = asBuiltPlane(design);
    return [figuresAsBuilt(design, plane), checkWithoutCures(plane)];
  };
  const growth = [];
  for (const count of [1, 10, 100, 1000, MANY]) {
    const some = designs.slice(0, count);
    const [row] = await beside(
      [{ what: String(count), run: all(some, everything), each: count }],
      growthRepetitions(count),
    );
    growth.push(row);
  }
  return [
    { of: FIRST.name, rows: await beside(STEPS.map(([what, run]) => ({ what, run: () => run(FIRST) }))) },
    {
      of: `every figure and finding of so many drawn designs (of ${MANY}, ${fit} may be built; ${(findings.flat().length / MANY).toFixed(1)} findings each)`,
      rate: "designs",
      rows: growth,
    },
    {
      of: `${MANY / 10} of them with cures: for each complaint, the smallest change that mends it`,
      rate: "designs",
      rows: await beside(
        [
          {
            what: "findings with cures",
            run: all(designs.slice(0, MANY / 10), (d) => checkPlane(asBuiltPlane(d))),
            each: MANY / 10,
          },
        ],
        { repetitions: 3, warm: false },
      ),
    },
  ];
}

const growthRepetitions = (count) => (count === MANY ? { repetitions: 3, warm: false } : {});
