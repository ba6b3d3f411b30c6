// The worked set, computed apart from the project, to its last printed digit.
import { elevation, figure } from "@lamplane/parameters/elevation";
import { bodyOf, partsOf } from "@lamplane/parameters/solids";
import { type Design, isRow, type Row, type Section, TABLE } from "@lamplane/parameters/table";
import { expect, test } from "vitest";

const defaults = (section: Section): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(section).map(([key, entry]) => [
      key,
      isRow(entry) ? (entry as Row).default : defaults(entry as Section),
    ]),
  );
const base = defaults(TABLE) as unknown as Design;
const worked: Design = {
  ...base,
  iron: { ...base.iron, width: 48, thickness: 3.6 },
  capIron: { ...base.capIron, hump: 0 },
  ramp: { ...base.ramp, angle: 60 },
  mouth: { ...base.mouth, fromToe: 78 },
  pin: { ...base.pin, height: 36 },
};

test.each([
  ["mouthGrowth", 1.5099],
  ["bedTipX", 80.1248],
  ["rampTipX", 79.5821],
  ["glueGap", 0.5428],
  ["edgeHeightAtContact", 2.9007],
  ["unsupported", 3.4136],
  ["pinS", 36.1056],
  ["pinV", 14.0675],
  ["pinX", 92.3356],
  ["wedgeAtPin", 4.4826],
  ["pinToRamp", 24.1949],
  ["coreWidth", 49.6],
] as const)("%s is %d", (key, value) => expect(figure(elevation(worked), key)).toBeCloseTo(value, 4));

test("finished blocks with a flat top and no recess hold the volumes computed apart", () => {
  const plain = elevation({
    ...worked,
    capIron: { ...worked.capIron, screwHead: { ...worked.capIron.screwHead, height: 0 } },
  });
  const volume = Object.fromEntries(partsOf(plain, "trued").map((part) => [part.name, Math.round(part.volume)]));
  expect([volume["front-block"], volume["bed-block"]]).toEqual([175792, 345316]);
});

test("the body is its blocks and cheeks", () => {
  const plane = elevation(worked);
  const blocks = partsOf(plane, "trued").filter((part) => /block|cheek/.test(part.name));
  expect(bodyOf(plane, "trued").volume).toBeCloseTo(
    blocks.reduce((sum, part) => sum + part.volume, 0),
    3,
  );
});
