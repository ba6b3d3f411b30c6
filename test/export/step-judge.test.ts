// STEP files before a judge that is written from ISO 10303 alone: exact volumes and areas by the divergence theorem, and every fault it is to see.
import { describe, expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { designWith, randomDesigns, WORKED } from "../support/designs.ts";
import { judgeStep } from "../support/part21/judge.ts";
import { turnedSolid } from "../support/part21/turned-solid.ts";
import { stepFaults } from "../support/step-faults.ts";
import { stepFiles } from "../support/step-files.ts";

const NAMED = [
  designWith({ ...WORKED, "jigs.relief": 3 }),
  designWith({ "body.outline": "arched", "bed.angle": 55, "pin.section": "round", "jigs.fence": "slotted" }),
  ...randomDesigns(84, 1, isBuildable).map(({ design }) => design),
];

test.each(NAMED.map((design, i) => [i, design] as const))(
  "design %i: closed solids of the outlines' volume, area and place, of planes and cylinders, cones in jigs alone",
  (_, design) => expect(stepFaults(design)).toEqual([]),
);

const files = stepFiles(NAMED[0]!);
const [cheek, block, plane] = ["cheek-left", "bed-block", "plane"].map((name) => files.get(name)!.text) as [
  string,
  string,
  string,
];

/** Replaces the nth find of a pattern; throws where there is none. */
function change(text: string, pattern: RegExp, by: string, nth = 0): string {
  const found = [...text.matchAll(new RegExp(pattern, "gm"))][nth];
  if (!found) throw new Error(`${pattern} is not in the text`);
  return text.slice(0, found.index) + found[0].replace(pattern, by) + text.slice(found.index + found[0].length);
}
/** Adds to a number of the nth find, the pattern's first group. */
const shifted = (text: string, pattern: RegExp, by: number, nth = 0): string => {
  const found = [...text.matchAll(new RegExp(pattern, "gm"))][nth]!;
  return change(text, pattern, found[0].replace(found[1]!, (Number(found[1]) + by).toFixed(9)), nth);
};
const arcEdges = (text: string): string[] =>
  [...text.matchAll(/^(#\d+)=CIRCLE/gm)].map(([, circle]) => `(EDGE_CURVE\\('',#\\d+,#\\d+,${circle}),\\.T\\.`);
const otherSide = (text: string, edges: readonly string[]): string =>
  edges.reduce((all, edge) => change(all, new RegExp(edge), "$1,.F."), text);

const FAULTS: [string, string, RegExp][] = [
  [
    "an edge run the wrong way",
    change(cheek, /(ORIENTED_EDGE.*),\.T\./, "$1,.F."),
    /run 0 times in its sense, 2 against/,
  ],
  [
    "an arc on the wrong side",
    otherSide(cheek, arcEdges(cheek).slice(0, 1)),
    /turn .* times about the axis|turn against/,
  ],
  ["both arcs of a hollow on the wrong side", otherSide(block, arcEdges(block).slice(0, 2)), /turn/],
  ["all arcs on the wrong side", otherSide(block, arcEdges(block)), /turn against its sense/],
  [
    "a face left out",
    change(cheek, /(CLOSED_SHELL\('',\()#\d+,/, "$1"),
    /run 0 times|run 1 times in its sense, 0 against/,
  ],
  [
    "a hole's loop left out",
    change(cheek, /(ADVANCED_FACE\('',\(#\d+),#\d+\)/, "$1)"),
    /0 against it|0 times in its sense/,
  ],
  ["a cylinder 1e-6 mm too large", shifted(cheek, /CYLINDRICAL_SURFACE\(.*,([\d.]+)\)/, 1e-6), /edge of face .* miss/],
  ["a circle 1e-6 mm too large", shifted(cheek, /CIRCLE\(.*,([\d.]+)\)/, 1e-6), /ends miss by/],
  ["a corner 1e-8 mm off", shifted(cheek, /CARTESIAN_POINT\('',\(([1-9][\d.]+),/, 1e-8, 3), /miss by/],
  ["a face said to look the other way", change(cheek, /(ADVANCED_FACE.*),\.T\./, "$1,.F."), /turn against its sense/],
  ["a solid inside out", insideOut(cheek), /faces look inward/],
  ["a reference to nothing", change(cheek, /(CLOSED_SHELL\('',\()#\d+/, "$1#99999"), /refers to #99999/],
  ["two instances of one number", change(cheek, /^#2=/, "#1="), /#1 stands twice/],
  ["an integer for a length", change(cheek, /(CIRCLE\(.*),[\d.]+\)/, "$1,5)"), /a real is missing/],
  ["metres", change(cheek, /\.MILLI\./, "$"), /LENGTH_UNIT/],
  ["a bracket left out", change(cheek, /(CIRCLE\(.*)\);/, "$1;"), /line \d+/],
  ["a hole beside the wood", holeAside(cheek), /a hole outside its outline/],
  ["two solids in one shell", twoInOne(plane), /2 shells in one/],
  ["two solids in one shell, by Euler", twoInOne(plane), /Euler's count makes -1 holes/],
  ["two solids that share a corner", twoInOne(sharedCorner(plane)), /make no one fan/],
  ["a part used as another", swapShapes(plane), /stands in 1 places/],
];

/** What lies within a millimetre of the cheek's round hole moved off the wood, sides and all: the volume stays. */
function holeAside(text: string): string {
  const [, axes, radius] = text.match(/CYLINDRICAL_SURFACE\('',(#\d+),([\d.]+)\)/)!;
  const [, origin] = text.match(new RegExp(`^${axes}=AXIS2_PLACEMENT_3D\\('',(#\\d+)`, "m"))!;
  const at = text
    .match(new RegExp(`^${origin}=CARTESIAN_POINT\\('',\\(([\\d.]+),([\\d.]+)`, "m"))!
    .slice(1)
    .map(Number);
  return text.replace(/(CARTESIAN_POINT\('',\()([-\d.]+),([-\d.]+)/g, (all, head, x, y) =>
    Math.hypot(Number(x) - at[0]!, Number(y) - at[1]!) < Number(radius) + 1
      ? `${head}${(Number(x) + 1000).toFixed(9)},${y}`
      : all,
  );
}

/** The faces of the second solid put into the shell of the first. */
function twoInOne(text: string): string {
  const [first, second] = [...text.matchAll(/CLOSED_SHELL\('',\((.*)\)\)/g)].map(([, faces]) => faces!);
  return text.replace(`CLOSED_SHELL('',(${first}))`, `CLOSED_SHELL('',(${first},${second}))`);
}

/** A corner of the second solid made one of the first's. */
function sharedCorner(text: string): string {
  const shells = text.split("CLOSED_SHELL");
  const [mine, theirs] = shells.map((part) => part.match(/^(#\d+)=VERTEX_POINT/m)?.[1]);
  return shells
    .map((part, i) =>
      i === 1
        ? part
            .replaceAll(`EDGE_CURVE('',${theirs},`, `EDGE_CURVE('',${mine},`)
            .replaceAll(new RegExp(`(EDGE_CURVE\\('',#\\d+),${theirs},`, "g"), `$1,${mine},`)
        : part,
    )
    .join("CLOSED_SHELL");
}

/** Every face and every loop turned over. */
function insideOut(text: string): string {
  return text
    .replace(/(FACE_(?:OUTER_)?BOUND\(.*),\.T\./g, "$1,.F.")
    .replace(/(ADVANCED_FACE\(.*),\.([TF])\./g, (_, head, sense) => `${head},.${sense === "T" ? "F" : "T"}.`);
}

/** The first use of a product made one of the second. */
function swapShapes(text: string): string {
  const uses = [...text.matchAll(/NEXT_ASSEMBLY_USAGE_OCCURRENCE\(.*,(#\d+),\$\)/g)].map(([, part]) => part!);
  return change(text, new RegExp(`(NEXT_ASSEMBLY.*),${uses[0]},`), `$1,${uses[1]},`);
}

describe("a fault put in is seen:", () => {
  test("none in the files as they are", () => {
    for (const text of [cheek, block, plane]) expect(judgeStep(text).faults).toEqual([]);
  });
  test.each(FAULTS)("%s", (_, text, wanted) => expect(judgeStep(text).faults.join("\n")).toMatch(wanted));

  test("a radius 1e-6 mm too large in all that tells it shows in the volume", () => {
    const [wanted, found] = [10, 10.000001].map((radius) => judgeStep(turnedSolid(radius, radius, 20)));
    expect(found!.faults).toEqual([]);
    expect(Math.abs(found!.solids[0]!.volume / wanted!.solids[0]!.volume - 1)).toBeGreaterThan(1e-7);
  });
});

test.each([
  ["cylinder", 10, 10, 20],
  ["frustum", 4.5, 9.25, 12],
  ["frustum on its head", 9.25, 4.5, 12],
] as const)("a %s set by hand is what the formula of the school-book says", (_, low, high, height) => {
  const { faults, solids } = judgeStep(turnedSolid(low, high, height));
  expect(faults).toEqual([]);
  const [solid] = solids;
  // from memory: frustum of a cone, V = πh (R² + Rr + r²) / 3, its side π (R + r) s
  expect(solid!.volume).toBeCloseTo((Math.PI * height * (low ** 2 + low * high + high ** 2)) / 3, 9);
  const side = Math.PI * (low + high) * Math.hypot(height, high - low);
  expect(solid!.area).toBeCloseTo(side + Math.PI * (low ** 2 + high ** 2), 9);
});
