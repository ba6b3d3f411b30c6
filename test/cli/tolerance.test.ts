// `lamplane tolerance` as a maker meets it: words in the file's unit, JSON, seeds, and refusals.
import { expect, test } from "vitest";
import { runCommand } from "../support/running.ts";

const SMOOTHER = "examples/apprentice-smoother.yaml";
const FEW = ["--runs", "400"];

test("says how wide the mouth will be, which step decides, and what set, read and repeat leaves", async () => {
  const { exit, out, err } = await runCommand("tolerance", SMOOTHER, ...FEW);
  expect({ exit, err }).toEqual({ exit: 0, err: "" });
  expect(out).toMatch(/^Mouth 0\.15 mm ±0\.15 mm, in 19 planes of 20, once 3 mm is planed off/);
  expect(out).toMatch(/Deciding step: glue-up, creep under clamps ±0\.1 mm \(47 %\)\./);
  expect(out).toMatch(/Set, read and repeat: ±0\.08 mm\./);
  expect(out).toMatch(/^mouth opening +0\.15 +±0\.15 mm +glue-up 73 %$/m); // creep 47 %, edge height 27 %, rounded
  expect(out).toMatch(/Of 400 planes tried/);
  expect(Math.max(...out.split("\n").map((line) => (/ {2}/.test(line) ? line.length : 0)))).toBeLessThanOrEqual(80);
  const all = (await runCommand("tolerance", SMOOTHER, ...FEW, "--all")).out;
  expect(all).toMatch(/Trial of 400 planes \(seed 1\)/);
  expect(all).toMatch(/JCGM 100:2008/);
});

test("speaks in inches for a file in inches", async () => {
  const { out } = await runCommand("tolerance", "examples/trestle-jack.yaml", ...FEW);
  expect(out).toMatch(/^Mouth 1\/32 in ±0\.\d{3} in/);
  expect(out).not.toMatch(/\d mm/);
});

test("--json is the report; the same seed gives the same bytes, another seed other runs", async () => {
  const at = async (...args: string[]) => (await runCommand("tolerance", SMOOTHER, "--json", ...FEW, ...args)).out;
  const report = JSON.parse(await at());
  expect(report).toMatchObject({ name: "apprentice-smoother", placing: "contact", trial: { seed: 1, runs: 400 } });
  expect(report.results.map(({ key }: { key: string }) => key)).toEqual([
    "mouthOpening",
    "mouthUneven",
    "glueGap",
    "pinToRamp",
    "wedgeAtPin",
    "wedgeTipFromEdge",
  ]);
  expect(await at("--seed", "5")).toBe(await at("--seed", "5"));
  expect(JSON.parse(await at("--seed", "6")).trial.results).not.toEqual(report.trial.results);
});

test("a maker's own tolerance changes the answer", async () => {
  const { out } = await runCommand("tolerance", SMOOTHER, ...FEW, "--with", "hand.creep=0.4");
  expect(out).toMatch(/±0\.41 mm, .*\n.*creep under clamps ±0\.4 mm \(93 %\)/);
});

test.each([
  [["--seed", "1.5"], /--seed: read 1\.5; write a whole number from 0 to 4294967295/],
  [["--seed", "-1"], /--seed: read -1/],
  [["--seed", "x"], /--seed: not a number/],
  [["--runs", "99"], /--runs: read 99; write a whole number from 100 to 2000000/],
  [["--runs", "1e9"], /--runs: read 1000000000/],
  [["--with", "hand.creep=-1"], /hand\.creep/],
])("%j is refused by name", async (args, message) => {
  const refused = await runCommand("tolerance", SMOOTHER, ...args);
  expect(refused).toMatchObject({ exit: 2, out: "" });
  expect(refused.err).toMatch(message);
});
