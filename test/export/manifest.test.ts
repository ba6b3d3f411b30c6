// The manifest: the same files in any order give the same text, and its numbers are the files'.
import modeling from "@jscad/modeling";
import { manifestText, stlBytes } from "@lamplane/export";
import { expect, test } from "vitest";
import { SHA_256 } from "../outside/formats.ts";
import { meshOf } from "../support/meshes.ts";

const peg = stlBytes(meshOf(modeling.primitives.cuboid({ size: [10, 6, 4], center: [5, 3, 2] })), "peg", 240);
const files = new Map<string, Uint8Array | string>([
  ["parts/peg.stl", peg],
  ["10", ""],
  ["figures.json", "abc"],
]);

test("says unit, kind, design, and each file's measures", () => {
  const text = manifestText("small-plane", "0.1.0", files, "first state", ["parts"]);
  expect(JSON.parse(text)).toEqual({
    kind: "lamplane pack",
    design: "small-plane",
    version: "0.1.0",
    madeFrom: "first state",
    sections: ["parts"],
    unit: "mm",
    files: [
      { path: "10", bytes: 0, sha256: SHA_256.nothing },
      { path: "figures.json", bytes: 3, sha256: SHA_256.abc },
      {
        path: "parts/peg.stl",
        bytes: 84 + 50 * 12,
        sha256: expect.stringMatching(/^[0-9a-f]{64}$/),
        bounds: { min: [0, 0, 0], max: [10, 6, 4] },
        volume: 240,
        triangles: 12,
      },
    ],
  });
});

test("does not depend on the order of the files, nor on an older manifest", () => {
  const other = new Map([["manifest.json", "old"], ...[...files].reverse()] as [string, Uint8Array | string][]);
  expect(manifestText("small-plane", "0.1.0", other)).toBe(manifestText("small-plane", "0.1.0", files));
});
