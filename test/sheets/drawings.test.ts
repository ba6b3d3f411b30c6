// Every drawing of layout and traveller, as an eye checks it: dimensions say what they measure, from edge to edge; lines and greys end
// where others run; no words lie on words or on an edge.
import { readFileSync } from "node:fs";
import { readDesign } from "@lamplane/parameters/design";
import { elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { layoutPictures, type Picture } from "@lamplane/sheets";
import { describe, expect, test } from "vitest";
import { dimensionsOf, lengthIn } from "../support/dimensions.ts";
import {
  type DrawnLine,
  distanceToChords,
  greysOf,
  linesOf,
  type Place,
  runsThrough,
  wordBoxesOf,
  wordsOverlap,
} from "../support/drawn-lines.ts";
import { drawnTraveller } from "../support/travellers.ts";

function example(name: string): Design {
  const file = `examples/${name}.yaml`;
  const reading = readDesign(readFileSync(file), file);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.design;
}

/** Half of the last figure: two decimals of a mm, three of an inch. */
const ROUNDED = { mm: 0.005, in: 0.0005 * 25.4 };
const SAME = 0.02; // mm

/** A line that leads to a dimension stands off its edge by less, mm. @see ISO 129-1:2018 (from memory): a short gap may be left */
const MOST_GAP = 1.25;
/** From the end of a thin line that carries the place aside, from the top of an arch, or from a corner about something round. */
const FROM_A_LINE = /^(step-(dry-fit|shaping|wedge)|cross-pin|bed-face): /;

/** Lines that end in the open: a shaving, a mark pencilled over the edge, the wood's edge broken off. At most so many in a picture. */
const OPEN_ENDS: Readonly<Record<string, number>> = {
  "plane-section": 1,
  "step-recess": 1,
  "step-shaping": 1,
  "step-first-shaving": 1,
  "core-cuts": 6,
  "cheek-right": 6,
  "cheek-left": 6,
  "step-cuts": 6,
};
/** Corners of a saw's table, broken off below; and of the grey that no glue comes on, off a curved ramp. */
const OPEN_GREYS: Readonly<Record<string, number>> = { "step-cuts": 4, "step-glue-up": 2 };
/** Dimensions whose end is the point where two edges would meet, or a saw's fence, which is drawn as broad as a pencil's line. */
const TO_NO_EDGE = /^bed \d|^fence/;

describe.each(["apprentice-smoother", "trestle-jack", "figured-finisher", "layered-smoother"])("%s", (name) => {
  const design = example(name);
  const layouts = layoutPictures(elevation(design));
  const { section, steps } = drawnTraveller(design);
  const drawn = [
    section,
    ...steps.flatMap(({ picture, jigs }) => [picture, ...jigs.flatMap((jig) => jig.picture ?? [])]),
  ];

  test("a dimension is as long as it says: 1:1 on the layout, at a scale that stands over a view elsewhere", () => {
    let count = 0;
    for (const picture of [...layouts, ...drawn]) {
      const scales = layouts.includes(picture) ? [1] : scalesOf(picture);
      for (const { words, length } of dimensionsOf(picture)) {
        const off = scales.map((scale) => Math.abs(length / scale - lengthIn(words)!));
        expect(Math.min(...off), `${picture.name}: ${words} is ${length} long`).toBeLessThan(
          ROUNDED[design.units] + 1e-6,
        );
        count++;
      }
    }
    expect(count).toBeGreaterThan(70);
  });

  test("a dimension runs from an end, a corner or a middle to another", () => {
    for (const picture of [...layouts, ...drawn]) {
      const places = placesOf(picture);
      for (const { words, ends, isLevel } of dimensionsOf(picture)) {
        if (TO_NO_EDGE.test(words)) continue;
        for (const end of ends) {
          const off = places.map(({ x, y }) => Math.abs(isLevel ? x - end.x : y - end.y));
          expect(Math.min(...off), `${picture.name}: ${words}`).toBeLessThan(SAME);
        }
      }
    }
  });

  test("the lines that lead to a dimension begin just off what it measures", () => {
    const off = [...layouts, ...drawn].flatMap((picture) => {
      const edges = [
        ...linesOf(picture).filter(({ line, closed }) => line !== "thin" || closed),
        ...greysOf(picture),
      ].flatMap(({ chords }) => chords);
      return dimensionsOf(picture).flatMap(({ words, feet }) =>
        feet
          .filter((foot) => distanceToChords(foot, edges) > MOST_GAP)
          .map((foot) => `${picture.name}: ${words} begins ${distanceToChords(foot, edges)} off`),
      );
    });
    expect(off.filter((fault) => !FROM_A_LINE.test(fault))).toEqual([]);
  });

  test("no line of a step's drawing is drawn twice: a dimension of nothing would be", () => {
    const twice = drawn.flatMap((picture) => {
      const lines = picture.marks.filter((mark) => mark.kind === "line" && mark.segments.length > 0);
      const texts = lines.map((line) => JSON.stringify(line));
      return texts.filter((text, i) => texts.indexOf(text) !== i).map((text) => `${picture.name}: ${text}`);
    });
    expect(twice).toEqual([]);
  });

  test("edges, cuts and marks end on another line, greys have their corners on lines", () => {
    for (const picture of [...layouts, ...drawn]) {
      const lines = linesOf(picture);
      const greys = greysOf(picture);
      const ends = lines.filter(isEdge).flatMap((line) => {
        const others = [...lines.filter((other) => other !== line), ...greys].flatMap(({ chords }) => chords);
        return freeEnds(line).filter((at) => distanceToChords(at, others) > SAME);
      });
      expect(ends.length, `${picture.name}: ${JSON.stringify(ends)}`).toBeLessThanOrEqual(OPEN_ENDS[picture.name] ?? 0);
      const corners = greys.flatMap((grey) => {
        const others = [...lines, ...greys.filter((other) => other !== grey)].flatMap(({ chords }) => chords);
        return grey.corners.filter((at) => distanceToChords(at, others) > SAME);
      });
      expect(corners.length, `${picture.name}: ${JSON.stringify(corners)}`).toBeLessThanOrEqual(
        OPEN_GREYS[picture.name] ?? 0,
      );
    }
  });

  test("words that lean run along a line, close beside it", () => {
    for (const picture of [...layouts, ...drawn]) {
      const chords = linesOf(picture).flatMap(({ chords }) => chords);
      for (const mark of picture.marks) {
        if (mark.kind !== "text" || (mark.turn ?? 0) % 90 === 0) continue;
        const beside = chords.filter(([a, b]) => isParallel(mark.turn!, a, b));
        const off = distanceToChords(mark.at, beside);
        expect(off, `${picture.name}: ${mark.text}`).toBeLessThan(BESIDE * mark.size);
      }
    }
  });

  test("names of blocks and waste stand in the middle between the edges to their left and right", () => {
    const core = layouts.find(({ name }) => name === "core-cuts")!;
    const edges = linesOf(core)
      .filter(({ line }) => line === "outline")
      .flatMap(({ chords }) => chords);
    const named = core.marks.filter((mark) => mark.kind === "text" && /^(FRONT|BED) BLOCK$|^waste$/.test(mark.text));
    expect(named.length).toBe(3);
    for (const mark of named) {
      if (mark.kind !== "text" || (design.core.layers !== "whole" && mark.text !== "waste")) continue; // pegs stand there
      const crossings = edges.flatMap(([a, b]) => crossingAt(mark.at.y, a, b));
      const left = Math.max(...crossings.filter((x) => x < mark.at.x));
      const right = Math.min(...crossings.filter((x) => x > mark.at.x));
      expect(Math.abs(mark.at.x - (left + right) / 2), `${mark.text} between ${left} and ${right}`).toBeLessThan(4);
    }
  });

  test("no words lie on other words, and no edge runs through any", () => {
    for (const picture of [...layouts, ...drawn]) {
      const boxes = wordBoxesOf(picture);
      const over = boxes.flatMap((box, i) =>
        boxes
          .slice(i + 1)
          .filter((other) => wordsOverlap(box, other, 0.3))
          .map(({ text }) => `${box.text} | ${text}`),
      );
      expect(over, picture.name).toEqual([]);
      // what lies behind the bed's words, in a core of layers, is seen through them
      const kinds = new Set(picture.name === "core-cuts" ? ["outline", "cut"] : ["outline", "cut", "hidden"]);
      const edges = linesOf(picture).filter(({ line }) => kinds.has(line));
      const struck = boxes.filter((box) =>
        edges.some(({ chords }) => chords.some((chord) => runsThrough(chord, box, 0.4))),
      );
      // numbers of a straightedge's places stand on its lines
      expect(
        struck.map(({ text }) => text).filter((text) => !/^\d$/.test(text)),
        picture.name,
      ).toEqual([]);
    }
  });
});

/** "2:1" over a view. */
const scalesOf = ({ marks }: Picture): number[] =>
  marks.flatMap((mark) => {
    const [, paper, thing] = (mark.kind === "text" && /\(([\d.]+):([\d.]+)\)$/.exec(mark.text)) || [];
    return paper === undefined ? [] : [Number(paper) / Number(thing)];
  });

/** Ends, corners, centres and outermost points of what is drawn, dimensions and words left out. */
const placesOf = (picture: Picture): Place[] => [
  ...greysOf(picture).flatMap(({ corners }) => corners),
  ...linesOf(picture)
    .filter(({ line }) => line !== "thin")
    .flatMap(({ segments }) => segments)
    .flatMap((segment): Place[] => {
      if (segment.kind === "line") return [segment.from, segment.to];
      const { centre, radius: r } = segment;
      const round = [centre.x - r, centre.x + r].map((x) => ({ x, y: centre.y }));
      return [segment.from, segment.to, centre, ...round, ...[-r, r].map((by) => ({ x: centre.x, y: centre.y + by }))];
    }),
];

/** From a line to the baseline of words beside it, of their size: under the line their height stands between. */
const BESIDE = 2.6;

function isParallel(turn: number, a: Place, b: Place): boolean {
  const way = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
  const off = (((way - turn) % 180) + 180) % 180;
  return Math.min(off, 180 - off) < 12; // words along a curve follow its chord
}

const crossingAt = (y: number, a: Place, b: Place): number[] =>
  a.y > y === b.y > y ? [] : [a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)];

const isEdge = ({ line, closed }: DrawnLine): boolean => !closed && ["outline", "hidden", "cut", "mark"].includes(line);

/** Ends of a line's pieces at which no other piece of it goes on. */
const freeEnds = ({ segments }: DrawnLine): Place[] =>
  segments
    .flatMap(({ from, to }) => [from, to])
    .filter((at, i, all) => all.every((other, k) => k === i || Math.hypot(other.x - at.x, other.y - at.y) > SAME));
