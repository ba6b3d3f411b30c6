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
    expect(findingSentence(plane.design, judgement)).toMatch(/ is .+; at (least|most) .+ is wanted\.$/);
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
      expect(message).toMatch(new RegExp(` is .+; ${finding.relation} .+ is wanted\\. [A-Z8].+\\.$`));
    }
  }
  expect(seen).toBeGreaterThan(100);
});

test("every subject and every advice is a check's or a jig's, and no two read alike", () => {
  const given = (code: string) => [...new Set(CHECKS.map(({ advice }) => advice as string))].includes(code);
  const jigs = /bush|recess-to-rout|cutter|fences/;
  expect(Object.keys(ADVICE).filter((code) => !given(code) && !jigs.test(code))).toEqual([]);
  for (const all of [SUBJECTS, ADVICE].map((table) => Object.values<string>(table)))
    expect(new Set(all).size).toBe(all.length);
});

test("a value stands in the maker's unit alone, in both where that is asked for", () => {
  const thin = (changes: Changes) => sentence({ "body.cheek": 5, ...changes }, "cheek-thin");
  expect(thin({ units: "in" })).toMatch(/ is 13\/64− in \(0\.197\);/);
  expect(thin({})).toMatch(/ is 5 mm;/);
  expect(thin({ "shop.bothUnits": "yes" })).toMatch(/ is 5 mm \(13\/64−, 0\.197 in\);/);
});

test("words fit the iron: no hump where there is none", () => {
  const single = { "capIron.thickness": 0, "pin.section": "round" };
  expect(sentence(single, "iron-cannot-pass")).toMatch(/between the iron and the cross pin/);
  expect(sentence({}, "iron-cannot-pass")).toMatch(/between the cap iron's hump and the cross pin/);
  expect(sentence({ "capIron.hump": 0 }, "iron-cannot-pass")).toMatch(/between the cap iron and the cross pin/);
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
  expect(sentence(small, "bed-gauge-printer")).toMatch(
    /100 mm .*90 mm .*60 mm .*\. Cut it from sheet by jigs\/bed-gauge\.dxf, or have it printed on a larger one\.$/,
  );
  const thick = sentences({ "shop.printer.width": 80, "shop.printer.depth": 80 }).map(({ message }) => message);
  expect(thick).toContainEqual(expect.stringMatching(/ is wanted\. Have it printed on a larger one\.$/));
  for (const { message } of sentences().filter(({ code }) => code.endsWith("-printer")))
    expect(message).toMatch(/; at most the printer's .+ is wanted\.$/);
});

test("a jig left out: with the figure and its limit", () => {
  expect(sentence({ "jigs.bush": 8, "recess.cutter": 8 }, "recess-template-left-out")).toMatch(
    /^The guide bush's diameter is 8 mm; at least 10\.4 mm is wanted, so there is no recess-template\. The cutter must turn/,
  );
  for (const [changes, words] of [
    [{ "jigs.bush": 50, "jigs.cutterLength": 20 }, /smaller bush/],
    [{ "jigs.bush": 17, "jigs.cutterLength": 6 }, /longer cutter/],
  ] as const)
    expect(sentence(changes, "recess-template-left-out")).toMatch(words);
});

test("a spacer left out says how high the edge is set instead", () => {
  expect(sentence({ "body.height": 40 }, "throat-spacer-left-out")).toMatch(
    /, so there is no throat-spacer\. Set the blocks by the iron instead: its edge [0-9.]+ mm over the blank's sole, the front block slid back until it touches\.$/,
  );
});

test("a wood that the tables do not hold, with the nearest names where there are any", () => {
  const beach = sentence({ "wood.body": "beach, american" }, "wood-unknown");
  expect(beach).toMatch(/no "beach, american" \(wood\.body\); the nearest are "Beech, American"/);
  expect(beach).toMatch(/of the body, cross pin and wedge are not judged/);
  expect(sentence({ "wood.pin": "purplehart" }, "wood-unknown")).toMatch(/nearest are "Purpleheart"/);
  expect(sentence({ "wood.wedge": "…" }, "wood-unknown")).not.toMatch(/nearest/);
});

test("a name of the trade, and the row of the tables that is meant, once for all parts", () => {
  const maple = sentences({ "wood.body": "hard maple" }).filter(({ code }) => code === "wood-trade-name");
  expect(maple.map(({ message }) => message)).toEqual([
    '"hard maple" (wood.body) is taken for "Maple, sugar" of the wood tables, for the body, cross pin and wedge.',
  ]);
  expect(sentence({ "wood.body": "maple, sugar" }, "wood-trade-name")).toBeUndefined();
});

test("a property that the tables lack", () => {
  expect(sentence({ "wood.pin": "ipe" }, "wood-property-missing")).toMatch(
    /give "Ipe" no compression across the grain\..*cross pin/,
  );
  expect(sentence({ "wood.body": "pear" }, "wood-property-missing")).toMatch(
    /no compression along the grain.*no modulus of elasticity.*body, cross pin and wedge/,
  );
});

test.each([
  ["down to 6 %", { "wood.driest.humidity": 20, "wood.driest.temperature": 21.1 }],
  ["up to 14 %", { "wood.dampest.humidity": 80, "wood.dampest.temperature": 21.1 }],
])("a moisture beyond the equation: %s", (side, changes) => {
  expect(sentence({ ...changes, "wood.body": "iroko" }, "moisture-outside-equation")).toContain(side);
});

test("a strength is a multiple of its load, and called indicative; a catch is named", () => {
  expect(sentence({ "pin.tenon": 6 }, "tenon-may-shear")).toMatch(/fine shaving \(indicative\) is 2\.39×; at least 3×/);
  expect(sentence({ "hold.catchPerMm": 30 }, "tenon-may-crush")).toMatch(
    /load of a catch \(indicative\) is 0\.67×; at least 1×/,
  );
});

test("a cup that is felt: how much, by which rings, and from where on it is felt", () => {
  const cup = sentence({ "wood.rings": 0, "wood.driest.humidity": 20, "wood.dampest.humidity": 80 }, "sole-cups");
  expect(cup).toMatch(
    /^The sole or the bed cups by up to 0\.\d+ mm in a year, with the rings' centre 100 mm away; more than 0\.1 mm is felt\. True the sole/,
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
