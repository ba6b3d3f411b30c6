// Sentences of findings and passed checks: the only tests that read their prose.
import { checkWithoutCures, findingSentence, formatFinding, passedChecks } from "@lamplane/bench/checks";
import { elevation } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { CHECKS } from "../../../packages/bench/src/checks/judgements.ts";
import { ADVICE } from "../../../packages/bench/src/words/advice.ts";
import { SUBJECTS } from "../../../packages/bench/src/words/subjects.ts";
import { type Changes, designWith, randomDesigns } from "../../support/designs.ts";

/** Sentences of what a plane is found to have, and of what it has passed, by code. */
function sentences(changes: Changes = {}): { code: string; message: string }[] {
  const plane = elevation(designWith(changes));
  return [...checkWithoutCures(plane), ...passedChecks(plane)].map((each) => ({
    code: each.code,
    message: findingSentence(plane.design, each),
  }));
}
const sentence = (changes: Changes, code: string) => sentences(changes).find((each) => each.code === code)?.message;

test("a passed check says what was judged, its value and its limit, and advises nothing", () => {
  const plane = elevation(designWith({}));
  const passed = passedChecks(plane);
  expect(passed.length).toBeGreaterThan(20);
  for (const judgement of passed)
    expect(findingSentence(plane.design, judgement)).toMatch(
      /^[A-Z].* -?[0-9].* \((min|max) -?[0-9][0-9. ×]*\): ok\.$/,
    );
});

test("a warning or stop says the same and what to do; nothing in any sentence is missing", () => {
  let seen = 0;
  for (const { design } of randomDesigns(11, 60, () => true)) {
    const plane = elevation(design);
    for (const finding of checkWithoutCures(plane)) {
      const message = findingSentence(design, finding);
      expect(message).not.toMatch(/undefined|NaN|\[object/);
      if (finding.severity === "note") continue;
      seen++;
      const bound = { "at least": "min", "at most": "max" }[finding.relation!];
      expect(message).toMatch(new RegExp(`^[A-Z].* -?[0-9].* \\(${bound} [-0-9. ×]+\\): [a-z ]+\\. [A-Z].+\\.$`));
      if (finding.severity === "stop") expect(message).toMatch(/: too /);
    }
  }
  expect(seen).toBeGreaterThan(100);
});

test("every subject and every advice is a check's or a jig's, and no two read alike", () => {
  const given = (code: string) => [...new Set(CHECKS.map(({ advice }) => advice as string))].includes(code);
  const jigs = /bush|recess-to-rout|cutter|fences|set-blocks|print-elsewhere/;
  expect(Object.keys(ADVICE).filter((code) => !given(code) && !jigs.test(code))).toEqual([]);
  const names = Object.values(SUBJECTS).map(([name]) => name);
  const advices = Object.values(ADVICE).map((advice) => (typeof advice === "string" ? advice : advice.name));
  for (const all of [names, advices.filter((text) => text !== "")]) expect(new Set(all).size).toBe(all.length);
});

test("a value and its limit stand in the maker's unit, and never read alike where they differ", () => {
  expect(sentence({ "body.cheek": 5 }, "cheek-thickness")).toMatch(/^Cheek thickness 5 mm \(min 7\.9\): thin\. /);
  expect(sentence({ units: "in", "body.cheek": 5 }, "cheek-thickness")).toMatch(
    /^Cheek thickness 13\/64− in \(0\.197\) \(min 5\/16 \(0\.311\)\)/,
  );
  expect(sentence({ "body.cheek": 3.9996 }, "cheek-thickness")).toMatch(
    /^Cheek thickness 3\.9996 mm \(min 4\): too thin\. /,
  );
});

test("words fit the iron: no hump where there is none", () => {
  const single = { "capIron.thickness": 0, "pin.section": "round" };
  expect(sentence(single, "iron-passage")).toMatch(/^Iron to cross pin/);
  expect(sentence({}, "iron-passage")).toMatch(/^Cap iron hump to cross pin/);
  expect(sentence({ "capIron.hump": 0 }, "iron-passage")).toMatch(/^Cap iron to cross pin/);
});

test("a billet lies on its side in words where it does", () => {
  const upright = sentences({ "billet.width": 100, "billet.height": 100 }).filter(({ code }) => /^billet-/.test(code));
  const turned = sentences({ "billet.width": 70, "billet.height": 100 }).filter(({ code }) => /^billet-/.test(code));
  expect([upright.length, turned.length]).toEqual([2, 2]);
  for (const { message } of upright) expect(message).not.toMatch(/side/);
  for (const { message } of turned) expect(message).toMatch(/laid on its side/);
});

test("a jig longer than the printer: sheet where it is flat, a larger printer where it is not", () => {
  const small = { "shop.printer.width": 100, "shop.printer.depth": 90, "shop.printer.height": 60 };
  expect(sentence(small, "bed-gauge-print-size")).toMatch(
    /^Print size of bed gauge [0-9. ×]+ mm \(max 100 × 90 × 60\): too large for the printer\. .*jigs\/bed-gauge\.dxf/,
  );
  const thick = sentences({ "shop.printer.width": 80, "shop.printer.depth": 80 }).map(({ message }) => message);
  expect(thick).toContainEqual(expect.stringMatching(/for the printer\. Have it printed on a larger printer\.$/));
  for (const { message } of sentences().filter(({ code }) => code.endsWith("-print-size")))
    expect(message).toMatch(/\(max [0-9. ×]+\): ok\.$/);
});

test("a jig left out: with the figure and its limit", () => {
  expect(sentence({ "jigs.bush": 8, "recess.cutter": 8 }, "recess-template-jig")).toMatch(
    /^Guide bush diameter 8 mm \(min 10\.4\): no recess template is made\. The cutter must turn/,
  );
  for (const [changes, words] of [
    [{ "jigs.bush": 50, "jigs.cutterLength": 20 }, /smaller bush/],
    [{ "jigs.bush": 17, "jigs.cutterLength": 6 }, /longer cutter/],
  ] as const)
    expect(sentence(changes, "recess-template-jig")).toMatch(words);
});

test("a spacer left out says how high the edge is set instead", () => {
  expect(sentence({ "body.height": 40 }, "throat-spacer-jig")).toMatch(
    /: no throat spacer is made\. Set the blocks by the iron: edge [0-9.]+ mm above the sole of the blank/,
  );
});

test("a wood that the tables do not hold, with the nearest names where there are any", () => {
  const beach = sentence({ "wood.body": "beach, american" }, "wood-name");
  expect(beach).toMatch(/^Wood "beach, american": not in the wood tables\. Nearest: Beech, American/);
  expect(beach).toMatch(/of body, cross pin and wedge are not judged/);
  expect(sentence({ "wood.pin": "purplehart" }, "wood-name")).toMatch(/Nearest: Purpleheart/);
  expect(sentence({ "wood.wedge": "…" }, "wood-name")).not.toMatch(/Nearest/);
});

test("a name of the trade, and the row of the tables that is meant, once for all parts", () => {
  const maple = sentences({ "wood.body": "hard maple" }).filter(({ code }) => code === "wood-trade-name");
  expect(maple.map(({ message }) => message)).toEqual([
    'Wood "hard maple": read as "Maple, sugar". A trade name; body, cross pin and wedge are judged by this row of the tables.',
  ]);
  expect(sentence({ "wood.body": "maple, sugar" }, "wood-trade-name")).toBeUndefined();
});

test("a property that the tables lack", () => {
  expect(sentence({ "wood.pin": "ipe" }, "wood-properties")).toMatch(
    /^Wood "Ipe": the tables give no compression across the grain\..*cross pin/,
  );
  expect(sentence({ "wood.body": "pear" }, "wood-properties")).toMatch(
    /no compression along the grain.*no modulus of elasticity.*body, cross pin and wedge/,
  );
});

test.each([
  ["min 6", { "wood.driest.humidity": 20, "wood.driest.temperature": 21.1 }],
  ["max 14", { "wood.dampest.humidity": 80, "wood.dampest.temperature": 21.1 }],
])("a moisture beyond the equation: %s", (side, changes) => {
  expect(sentence({ ...changes, "wood.body": "iroko" }, "moisture-range")).toContain(side);
});

test("a strength is a multiple of its load, and called indicative; a catch is named", () => {
  expect(sentence({ "pin.tenon": 6 }, "tenon-shear")).toMatch(
    /fine shaving \(indicative\) 2\.39× load \(min 3\): weak/,
  );
  expect(sentence({ "hold.catchPerMm": 30 }, "tenon-bearing")).toMatch(
    /catch \(indicative\) 0\.67× load \(min 1\): weak/,
  );
});

test("a cup that is felt: how much, by which rings, and from where on it is felt", () => {
  const cup = sentence({ "wood.rings": 0, "wood.driest.humidity": 20, "wood.dampest.humidity": 80 }, "sole-cup");
  expect(cup).toMatch(
    /^Cup of sole or bed over the year 0\.\d+ mm \(max 0\.1\): large enough to feel\. True the sole.* 100 mm away\.$/,
  );
});

test("a formatted finding has its sentence, and nothing that the sentence is made of", () => {
  const plane = elevation(designWith({ "body.cheek": 5, "wood.body": "unobtainium" }));
  const keys = "code cure limit message parameters place severity source unit value".split(" ");
  for (const finding of checkWithoutCures(plane)) {
    const formatted = formatFinding(plane.design, { ...finding, cure: [] });
    expect(Object.keys(formatted).sort()).toEqual(keys);
    expect(formatted).toMatchObject({ code: finding.code, severity: finding.severity, value: finding.value });
    expect(formatted.message).toBe(findingSentence(plane.design, finding));
  }
});
