// Faults of a file: a hundred are kept, more are counted, and they come in the order of the text.
import { expect, test } from "vitest";
import { FaultCollector, type FaultDetail } from "../../../packages/parameters/src/yaml/index.ts";

const faultsAt = (...places: readonly (readonly [number, number])[]) => {
  const faults = new FaultCollector<FaultDetail>("a.yaml");
  for (const [line, column] of places) faults.add({ line, column }, `${line}`, { code: "some" });
  return faults;
};
const many = (count: number) => faultsAt(...Array.from({ length: count }, (_, i) => [count - i, 1] as const));

test("none is none, and one is one", () => {
  expect([faultsAt().isEmpty, faultsAt([1, 1]).isEmpty]).toEqual([true, false]);
  expect([faultsAt().sorted(), faultsAt().asAdded()]).toEqual([[], []]);
});

test("by line, then by column; or as they were added", () => {
  const faults = faultsAt([7, 2], [3, 9], [3, 4]);
  const places = (list: readonly { line: number; column: number }[]) => list.map(({ line, column }) => [line, column]);
  expect(places(faults.sorted())).toEqual([
    [3, 4],
    [3, 9],
    [7, 2],
  ]);
  expect(places(faults.asAdded())).toEqual([
    [7, 2],
    [3, 9],
    [3, 4],
  ]);
  expect(faults.sorted()[0]).toEqual({ file: "a.yaml", line: 3, column: 4, path: "3", code: "some" });
});

test("a hundred stand one and all; of more the rest is counted behind the last, for the file as a whole", () => {
  expect(
    many(100)
      .sorted()
      .map(({ code }) => code),
  ).toEqual(Array.from({ length: 100 }, () => "some"));
  for (const beyond of [1, 2, 57]) {
    const found = many(100 + beyond).sorted();
    expect(found).toHaveLength(101);
    expect(found.at(-1)).toMatchObject({ path: "", code: "more-faults", count: beyond, line: found.at(-2)!.line });
  }
});
