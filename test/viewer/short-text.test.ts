// A design cut down to what no default says is the same design; where it would not be, the whole file stays.
import { readdirSync, readFileSync } from "node:fs";
import { readDesign, withValue } from "@lamplane/parameters/design";
import type { Design } from "@lamplane/parameters/table";
import { expect, test } from "vitest";
import { shortText } from "../../packages/viewer/src/worker/short-text.ts";

const designIn = (text: string): Design => {
  const reading = readDesign(text, "");
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.design;
};
const examples = readdirSync("examples").filter((name) => /^[a-z-]+\.yaml$/.test(name));

test.each(examples)("%s, as it stands and as measured", (name) => {
  const text = readFileSync(`examples/${name}`, "utf8");
  for (const design of [designIn(text), withValue(designIn(text), "measured.ironThickness", 3.4625)]) {
    const short = shortText(design, text);
    expect(designIn(short)).toEqual(design);
    expect(short.length).toBeLessThan(text.length);
    expect(short).not.toContain("#");
  }
});

test("what would come out as another design is left as it was written", () => {
  const text = "iron: { width: 48, thickness: 3.6 }\n";
  const long = `# ${"shavings ".repeat(40)}\n${text}`;
  expect(shortText(designIn(long), long)).not.toContain("shavings");
  expect(shortText({ ...designIn(long), name: "\u0000" } as Design, long)).toBe(long);
  expect(shortText(designIn(text), text)).toBe(text);
});
