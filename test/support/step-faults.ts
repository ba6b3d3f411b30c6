// What the judge of the published standard finds wrong with the STEP files of a design, beside its outlines.
import { cheekShape, elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { partBoxes, prismAreas } from "./outline-volumes.ts";
import { judgeStep, type SolidReport } from "./part21/judge.ts";
import { PART_NAMES, stepFiles } from "./step-files.ts";

/** Relative, of a volume or an area; a curved ramp's arc states its sweep some 1e-7° off what its ends say. */
const EXACT = 1e-9;
/** How far a part may stand from its place, mm: both are nine decimals, turned. */
const IN_PLACE = 1e-8;

/** None for a design whose files are what their outlines are. */
export function stepFaults(design: Design): string[] {
  const plane = elevation(design);
  const areas = prismAreas(plane, "blank");
  const cheek = cheekShape(plane, "blank");
  const files = stepFiles(design);
  return [...files].flatMap(([file, { text, volumes }]) => {
    const { faults, solids } = judgeStep(text);
    const isWood = [...PART_NAMES, "plane", "body"].includes(file);
    const found = solids.flatMap((solid, i) => [
      ...off("volume", solid.volume, volumes[i]!),
      ...(areas.has(solid.product) && file !== "body" ? off("area", solid.area, areas.get(solid.product)!) : []),
      ...(isWood && solid.surfaces.cone ? ["a cone in wood"] : []),
      ...(file === "plane" ? placeFaults(solid, partBoxes(plane, "blank").get(solid.product)!) : []),
      ...(isWood && file !== "body"
        ? holeFaults(solid, solid.product.startsWith("cheek") ? cheek.holes.length + cheek.circles.length : 0)
        : []),
    ]);
    const products = file === "plane" ? PART_NAMES : volumes.map(() => file);
    const named = String(solids.map(({ product }) => product)) === String(products) ? [] : ["other products"];
    return [...faults, ...named, ...found].map((fault) => `${file}: ${fault}`);
  });
}

function off(what: string, value: number, wanted: number): string[] {
  const share = Math.abs(value / wanted - 1);
  return share < EXACT ? [] : [`${what} ${value}, not ${wanted}: off by ${share}`];
}

const holeFaults = ({ genus }: SolidReport, wanted: number): string[] =>
  genus === wanted ? [] : [`${genus} holes through it, not ${wanted}`];

function placeFaults(
  solid: SolidReport,
  box: { readonly min: readonly number[]; readonly max: readonly number[] },
): string[] {
  const by = [0, 1, 2].flatMap((k) => [solid.min[k]! - box.min[k]!, solid.max[k]! - box.max[k]!]).map(Math.abs);
  return Math.max(...by) < IN_PLACE ? [] : [`${solid.product} stands off its place by ${Math.max(...by)}`];
}
