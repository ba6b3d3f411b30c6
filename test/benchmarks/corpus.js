// What is measured: the examples, and seeded designs drawn round them that any maker might ask for.
import { readdirSync, readFileSync } from "node:fs";
import { completeDesign, readDesign, rowAt, valueAt, withValue } from "@lamplane/parameters/design";

export const EXAMPLES = readdirSync("examples")
  .filter((file) => file.endsWith(".yaml"))
  .map((file) => {
    const path = `examples/${file}`;
    const text = readFileSync(path, "utf8");
    return { path, name: file.replace(/\.yaml$/, ""), text, design: readDesign(text, path).design };
  });
export const FIRST = EXAMPLES.find(({ name }) => name === "apprentice-smoother");

/** Parameters that are drawn, and how far from the example's value: a share of it. */
const DRAWN = {
  "iron.width": 0.3,
  "iron.thickness": 0.3,
  "iron.bevel": 0.1,
  "body.length": 0.3,
  "body.height": 0.15,
  "body.cheek": 0.3,
  "bed.angle": 0.12,
  "mouth.opening": 0.9,
  "sole.allowance": 0.5,
  "wedge.angle": 0.3,
  "wedge.tip": 0.3,
  "pin.diameter": 0.2,
};

/** Numbers from 0 to 1 that follow from the seed (mulberry32). */
function seeded(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** So many designs that the table allows; the same for the same seed. */
export function drawnDesigns(count, seed = 1) {
  const random = seeded(seed);
  const designs = [];
  while (designs.length < count) {
    const { design } = EXAMPLES[Math.floor(random() * EXAMPLES.length)];
    const drawn = Object.entries(DRAWN).reduce((d, [path, share]) => {
      const row = rowAt(path);
      const value = valueAt(design, path) * (1 + share * (2 * random() - 1));
      return withValue(d, path, Math.round(Math.min(row.max, Math.max(row.min, value)) * 100) / 100);
    }, design);
    const complete = completeDesign(drawn);
    if (complete.ok) designs.push(complete.design);
  }
  return designs;
}
