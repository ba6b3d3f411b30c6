// The address holds the design and gives it back, whatever was changed; a spoiled one is never more than ignored.
import { inflateRawSync } from "node:zlib";
import { rowsOf, TABLE } from "@lamplane/parameters/table";
import fc from "fast-check";
import { deflateSync, zlibSync } from "fflate";
import { expect, test } from "vitest";
import { STAGES } from "../../packages/viewer/src/protocol/build-steps.ts";
import type { ParameterChange } from "../../packages/viewer/src/protocol/sheet-data.ts";
import { designAddress, formatAddress, parseAddress } from "../../packages/viewer/src/state/address.ts";
import { initialOrigin, leftOutTexts } from "../../packages/viewer/src/state/design-origin.ts";
import { fault } from "../support/faults.ts";

const change = fc.constantFrom(...rowsOf(TABLE)).chain(({ path, row }): fc.Arbitrary<ParameterChange> => {
  if (row.kind === "choice") return fc.constantFrom(...row.choices).map((word) => [path, word] as const);
  if (row.kind === "text") return fc.stringMatching(/^[a-z][a-z ,&=%+#-]{0,20}$/).map((text) => [path, text] as const);
  if (row.kind === "lengths") return fc.constantFrom(...row.words).map((word) => [path, word] as const);
  const number = fc.double({ min: row.min, max: row.max, noNaN: true });
  if (row.unset) return fc.option(number, { nil: undefined }).map((v) => [path, v] as const);
  const value = row.auto === undefined ? number : fc.oneof(number, fc.constant("auto" as const));
  return value.map((v) => [path, v] as const);
});
const changes = fc.uniqueArray(change, { selector: ([path]) => path, maxLength: 12 });
const origin = fc.oneof(
  fc.constantFrom("trestle-jack", "figured-finisher").map((name) => ({ kind: "example", name }) as const),
  fc
    .tuple(fc.string({ maxLength: 30 }), fc.string({ unit: "grapheme", maxLength: 300 }))
    .map(([name, text]) => ({ kind: "text", name, text }) as const),
  fc.constant({ kind: "followed" } as const),
  fc.constant({ kind: "followed", name: "anna.yaml" } as const),
  fc
    .tuple(fc.string({ maxLength: 30 }), fc.string({ unit: "grapheme", maxLength: 300 }))
    .map(([name, text]) => ({ kind: "followed", copy: { name, text } }) as const),
);

test("what is put into an address comes out of it", () => {
  fc.assert(
    fc.property(origin, changes, fc.constantFrom(...STAGES), (from, given, stage) => {
      const read = parseAddress(formatAddress({ origin: from, changes: given, stage }));
      expect(read.origin).toEqual(from);
      expect(read.stage).toBe(stage);
      expect(new Map(read.changes)).toEqual(new Map(given.map(([path, v]) => [path, Object.is(v, -0) ? 0 : v])));
    }),
  );
});

test("the address of a followed file opens as its text where no file is followed, and as the file where one is", () => {
  const copy = { name: "club plane.yaml", text: "iron: { width: 48, thickness: 3.6 } # ü\n" };
  const address = formatAddress({ origin: { kind: "followed", copy }, changes: [["bed.angle", 50]], stage: "bed" });
  const read = parseAddress(address);
  expect(leftOutTexts(read, OFFERED)).toEqual([]);
  expect(initialOrigin(read.origin, OFFERED)).toEqual({ kind: "text", ...copy });
  expect(initialOrigin(read.origin, { ...OFFERED, follows: true })).toEqual({ kind: "followed" });
});

test("what an address packs is what any raw deflate unpacks", () => {
  const text = "name: elm\niron: { width: 44, thickness: 4 }\n";
  const packed = new URLSearchParams(designAddress({ name: "elm.yaml", text }, "first-shaving")!.slice(1)).get("text")!;
  expect(inflateRawSync(Buffer.from(packed, "base64url")).toString()).toBe(text); // zlib, by another hand than fflate
});

test("a text longer than an address holds has none", () => {
  const noise = Array.from({ length: 30_000 }, (_, i) => `${(i * 2654435761) % 4294967296}`).join("\n");
  expect(designAddress({ name: "long.yaml", text: noise }, "bed")).toBeUndefined();
  const followed = { kind: "followed", copy: { name: "long.yaml", text: noise } } as const;
  expect(parseAddress(formatAddress({ origin: followed, changes: [], stage: "bed" })).origin).toEqual({
    kind: "followed",
  });
});

test("a spoiled address is read as far as it goes", () => {
  fc.assert(fc.property(fc.string({ unit: "binary" }), (junk) => void parseAddress(`#${junk}`)));
  fc.assert(fc.property(fc.base64String(), (junk) => void parseAddress(`#from=x&text=${junk}`)));
  expect(parseAddress("#from=trestle-jack&bed.angel=50&bed.angle=50&at=nowhere")).toEqual({
    origin: { kind: "example", name: "trestle-jack" },
    changes: [["bed.angle", 50]],
    stage: "first-shaving",
    leftOut: [
      'the address holds "bed.angel", which is no parameter; it was left out',
      'there is no step "nowhere"; the sheet shows "first-shaving"',
    ],
  });
});

const OFFERED = { examples: ["apprentice-smoother", "trestle-jack"], follows: false };
const packed = (bytes: Uint8Array) => `#from=x.yaml&text=${Buffer.from(bytes).toString("base64url")}`;
const WHOLE = packed(deflateSync(Buffer.from("name: elm\niron: { width: 44, thickness: 4 }\n")));

test.each([
  ["1 MB of garbage", `#${"x".repeat(1 << 20)}`, [/^the address holds "x{40}…", which is no parameter/]],
  ["controls and marks that turn text", "#a\u0007\u202e=1", [/"a��"/]],
  ["10 000 keys", `#${Array.from({ length: 10_000 }, (_, i) => `k${i}`).join("&")}`, Array(10_000).fill(/"k\d+"/)],
  ["one key 10 000 times", `#${"k&".repeat(10_000)}`, [/"k"/]],
  ["no base64", "#from=x.yaml&text=%00***", [/cannot be read/]],
  ["nothing packed", packed(Buffer.from("not packed at all")), [/cannot be read/]],
  ["another packing", packed(zlibSync(Buffer.from("name: elm"))), [/cannot be read/]],
  ["a design that is cut off", WHOLE.slice(0, -12), [/cannot be read/]],
  ["a design of 64 001 signs", `#text=${"A".repeat(64_001)}`, [/cannot be read/]],
  ["an example that there is not", "#from=nowhere", [/no example "nowhere"/]],
  ["constructor for an example", "#from=constructor", [/no example "constructor"/]],
  ["a file that nobody follows", "#from=file", [/follows a file/]],
  ["a stage that every object has", "#at=constructor", [/no step "constructor"/]],
  [
    "keys that every object has",
    "#__proto__=1&constructor=2&toString=3&bed.__proto__=4",
    [/"__proto__"/, /"constructor"/, /"toString"/, /"bed.__proto__"/],
  ],
] as [string, string, RegExp[]][])(
  "%s",
  fault({ on: "the page's address", survives: "left out and told; the sheet begins with its first example" }),
  (_, hash, told) => {
    const read = parseAddress(hash);
    const words = leftOutTexts(read, OFFERED);
    expect(words).toHaveLength(told.length);
    for (const [i, pattern] of told.entries()) expect(words[i]).toMatch(pattern);
    expect(initialOrigin(read.origin, OFFERED)).toEqual({ kind: "example", name: "apprentice-smoother" });
    expect(read.changes).toEqual([]);
  },
);
