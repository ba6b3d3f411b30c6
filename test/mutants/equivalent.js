// Mutants that nobody can tell from the source, and why: what is replaced stands between « and » in its line.
// `run.js` tries them like all others, refuses an entry that a test does see, and one that no mutant fits any more.

const SLACK = "slack for rounding: a billionth of a step or of a chord either way; sizes are given to a nanometre";
const DRAWN = "how far a line is drawn to meet the top; any length beyond it serves";
const SEARCH = "a search ends closer than a nanometre, to which its result is rounded, either way";
const MARGIN = "the grid begins and ends beyond every ring, so that its outermost cells hold none";
const ORDER = "either order serves: what comes from one side and from the other is named alike";
const EQUAL = "two sums of rounded numbers are never just as far apart as the slack";
const WHOLE = "compared with and cut at whole numbers only, and 4.4 counts as 4";

/** @type {readonly { file: string, line: string, made: string, why: string }[]} */
export const EQUIVALENT = [
  {
    file: "checks/cures.ts",
    line: "let [fails, succeeds] = [«0», 1];",
    made: "1",
    why: "either one step succeeds and nothing lies under it, or it does not and is what fails from then on",
  },
  {
    file: "checks/cures.ts",
    line: "const first = sense > 0 ? Math.floor(from / step + «1e-9») : Math.ceil(from / step - 1e-9);",
    made: "(1e-9 * 1.1)",
    why: SLACK,
  },
  {
    file: "checks/cures.ts",
    line: "const first = sense > 0 ? Math.floor(from / step + 1e-9) : Math.ceil(from / step - «1e-9»);",
    made: "(1e-9 * 1.1)",
    why: SLACK,
  },
  {
    file: "checks/cures.ts",
    line: "last: Math.floor(sense > 0 ? row.max / step - first + «1e-9» : first - row.min / step + 1e-9),",
    made: "(1e-9 * 1.1)",
    why: SLACK,
  },
  {
    file: "checks/cures.ts",
    line: "last: Math.floor(sense > 0 ? row.max / step - first + 1e-9 : first - row.min / step + «1e-9»),",
    made: "(1e-9 * 1.1)",
    why: SLACK,
  },
  {
    file: "checks/woods.ts",
    line: "data: { wood: name, nearest: «lookUp.found» ? [] : lookUp.nearest, parts },",
    made: "false",
    why: "it is asked for woods alone that the tables do not hold; the types want the question",
  },
  { file: "checks/repair-search.ts", line: "const MOST_CHANGES = «4»;", made: "(4 * 1.1)", why: WHOLE },
  { file: "checks/repair-search.ts", line: "const BEAM_WIDTH = «4»;", made: "(4 * 1.1)", why: WHOLE },
  {
    file: "elevation/top-outline.ts",
    line: "if (drop «<» EPSILON) return line(end, crown);",
    made: "<=",
    why: "an arch that falls by just as much as two points may differ that count as one",
  },
  {
    file: "src/intersection.ts",
    line: "const after = [{ ...subsegment(segment, met.shareOfFirst, «1»), from: met.at }, ...chain.slice(i + 1)];",
    made: "(1 * 1.1)",
    why: "a part that is to end beyond its segment's end ends there",
  },
  {
    file: "elevation/throat.ts",
    line: "let inside = «false»;",
    made: "true",
    why: "the first station is the widest so far, so that it is set to false before it is asked",
  },
  {
    file: "elevation/blocks.ts",
    line: "const ramp = splitAtIntersection(rampPath(plane.ramp, sole, «2» * height), top);",
    made: "(2 * 1.1)",
    why: DRAWN,
  },
  {
    file: "elevation/blocks.ts",
    line: "const bed = splitAtIntersection(bedPath(plane, sole, «2» * height), top);",
    made: "(2 * 1.1)",
    why: DRAWN,
  },
  { file: "src/outline.ts", line: "export const FAR = «1e4»;", made: "(1e4 * 1.1)", why: DRAWN },
  {
    file: "src/outline.ts",
    line: "return Math.max(1, Math.ceil(Math.abs(sweep) / Math.min(largestTurn, 45) - «1e-9»));",
    made: "(1e-9 * 1.1)",
    why: SLACK,
  },
  { file: "elevation/pin-placement.ts", line: "while (b - a > «1e-7») {", made: "(1e-7 * 1.1)", why: SEARCH },
  { file: "elevation/pin-placement.ts", line: "while (b - a «>» 1e-7) {", made: ">=", why: SEARCH },
  { file: "elevation/pin-placement.ts", line: "while (wide - tight > «1e-7») {", made: "(1e-7 * 1.1)", why: SEARCH },
  { file: "elevation/pin-placement.ts", line: "while (wide - tight «>» 1e-7) {", made: ">=", why: SEARCH },
  {
    file: "jigs/level-lines.ts",
    line: "for (let j = 0; j «+» 1 < rows; j++)",
    made: "-",
    why: MARGIN,
  },
  { file: "jigs/level-lines.ts", line: "for (let j = «0»; j + 1 < rows; j++)", made: "1", why: MARGIN },
  { file: "jigs/level-lines.ts", line: "for (let i = «0»; i + 1 < columns; i++) {", made: "1", why: MARGIN },
  {
    file: "jigs/level-lines.ts",
    line: `const edgeKey = (a: number, b: number): string => (a «<» b ? \`\${a} \${b}\` : \`\${b} \${a}\`);`,
    made: ">=",
    why: ORDER,
  },
  {
    file: "jigs/level-lines.ts",
    line: `const edgeKey = (a: number, b: number): string => (a «<» b ? \`\${a} \${b}\` : \`\${b} \${a}\`);`,
    made: "<=",
    why: "an edge has two ends, never the same one twice",
  },
  {
    file: "jigs/free-grid.ts",
    line: "for (let row = 0; row «<» rows; row++)",
    made: "<=",
    why: "what is counted beyond the last row is kept nowhere",
  },
  {
    file: "jigs/lines.ts",
    line: "const broken = BROKEN.filter((width) => width >= longest && width «<» name.length).map((width) =>",
    made: "<=",
    why: "a name that goes into one line as a whole is tried once more as it is",
  },
  {
    file: "tolerance/tolerance-text.ts",
    line: "const widths = [0, 1, 2, 3].map((k) => Math.max(«0», ...cells.map((row) => row[k]!.length)));",
    made: "1",
    why: "every column has a head or a cell of one letter or more",
  },
  {
    file: "survey/survey-text.ts",
    line: 'const isDeepest = (line: SurveyLine) => line.name === "oblique" && line.hollow «<» 0;',
    made: "<=",
    why: "of lines hollow by just 0 the first is named, and the lines between come last",
  },
  {
    file: "survey/survey-text.ts",
    line: 'const shape = Number.parseFloat(by) === 0 ? "straight" : line.hollow «<» 0 ? "humped" : "hollow";',
    made: "<=",
    why: "what is 0 is straight before it is asked",
  },
  {
    file: "numerics/linear-program.ts",
    line: "const entering = stalled ? gains.findIndex((gain) => gain «<» -NOTHING) : enteringColumn(gains);",
    made: "<=",
    why: EQUAL,
  },
  {
    file: "src/nesting.ts",
    line: "a.area > b.area + «1e-6» || (a.area > b.area - 1e-6 && a.end < b.end - 1e-6);",
    made: "(1e-6 * 1.1)",
    why: SLACK,
  },
  { file: "src/hole-pair.ts", line: "if (away «<» EPSILON) return [];", made: "<=", why: EQUAL },
  {
    file: "survey/work-map.ts",
    line: "if (plane && crossings.every((crossing) => crossing[2] «>=» planeHeight(plane, crossing) - TOUCHING))",
    made: ">",
    why: EQUAL,
  },
  {
    file: "survey/feasible-curves.ts",
    line: "const LARGEST = «1e3»; // mm: no limit",
    made: "(1e3 * 1.1)",
    why: "a metre is more than any bed is hollow by; any length beyond it serves",
  },
  {
    file: "units/format.ts",
    line: 'if (mm «<» 0 && Number(thousandths) === 0) return "0 in";',
    made: "<=",
    why: "0 is 0 in on the rule too",
  },
  {
    file: "units/format.ts",
    line: `return value «>» NOTHING ? \`under \${10 ** -decimals}\` : figure;`,
    made: ">=",
    why: EQUAL,
  },
];
