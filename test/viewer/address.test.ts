// The address holds the design and gives it back, whatever was changed; a spoiled one is never more than ignored.
import { rowsOf, TABLE } from "@lamplane/parameters/table";
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Change } from "../../packages/viewer/src/protocol.ts";
import { STAGES } from "../../packages/viewer/src/protocol.ts";
import { addressOf, readAddress } from "../../packages/viewer/src/state/address.ts";

const change = fc.constantFrom(...rowsOf(TABLE)).chain(({ path, row }): fc.Arbitrary<Change> => {
  if (row.kind === "choice") return fc.constantFrom(...row.choices).map((word) => [path, word] as const);
  if (row.kind === "text") return fc.stringMatching(/^[a-z][a-z ,&=%+#-]{0,20}$/).map((text) => [path, text] as const);
  const number = fc.double({ min: row.min, max: row.max, noNaN: true });
  const value = row.auto === undefined ? number : fc.oneof(number, fc.constant("auto" as const));
  return value.map((v) => [path, v] as const);
});
const changes = fc.uniqueArray(change, { selector: ([path]) => path, maxLength: 12 });
const beginning = fc.oneof(
  fc.constantFrom("trestle-jack", "figured-finisher").map((name) => ({ kind: "example", name }) as const),
  fc
    .tuple(fc.string({ maxLength: 30 }), fc.string({ unit: "grapheme", maxLength: 300 }))
    .map(([name, text]) => ({ kind: "text", name, text }) as const),
  fc.constant({ kind: "followed" } as const),
);

test("what is put into an address comes out of it", () => {
  fc.assert(
    fc.property(beginning, changes, fc.constantFrom(...STAGES), (from, given, stage) => {
      const read = readAddress(addressOf({ beginning: from, changes: given, stage }));
      expect(read.beginning).toEqual(from);
      expect(read.stage).toBe(stage);
      expect(new Map(read.changes)).toEqual(new Map(given.map(([path, v]) => [path, Object.is(v, -0) ? 0 : v])));
    }),
  );
});

test("a spoiled address is read as far as it goes", () => {
  fc.assert(fc.property(fc.string({ unit: "binary" }), (junk) => void readAddress(`#${junk}`)));
  fc.assert(fc.property(fc.base64String(), (junk) => void readAddress(`#from=x&text=${junk}`)));
  expect(readAddress("#from=trestle-jack&bed.angel=50&bed.angle=50&at=nowhere")).toEqual({
    beginning: { kind: "example", name: "trestle-jack" },
    changes: [["bed.angle", 50]],
    stage: "shaped",
    leftOut: [
      'the address holds "bed.angel", which is no parameter; it was left out',
      'there is no stage "nowhere"; the sheet shows "shaped"',
    ],
  });
});
