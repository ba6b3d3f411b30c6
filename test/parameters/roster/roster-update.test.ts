// A plane's values written into its row: the roster then reads so, and every other byte is as it was.
import { decodeRoster, parseRoster, type RosterChange, setRosterValues } from "@lamplane/parameters/roster";
import { expect, test } from "vitest";

const YAML = `# the class
base: b.yaml
planes:
  - { name: anna, iron: { width: 50.8 } } # hers
  - name: ben
    iron.width: 48 # an old one
    bed:
      angle: 47
  - name: carla
`;

function update(text: string, file: string, row: number, changes: RosterChange[], units: "mm" | "in" = "mm") {
  const written = setRosterValues(text, { file, row, changes, units });
  const read = parseRoster(written, file);
  if (!read.ok) throw new Error(`refused: ${JSON.stringify(read.faults)}`);
  const planes = decodeRoster(read.roster, units);
  const before = parseRoster(text, file);
  if (!before.ok) throw new Error("the test's own roster is refused");
  const others = decodeRoster(before.roster, units).filter((_, i) => i !== row);
  expect(planes.filter((_, i) => i !== row).map(({ values }) => values)).toEqual(others.map(({ values }) => values));
  expect(planes.flatMap(({ faults }) => faults)).toEqual([]);
  const own = new Map(planes[row]!.values.map(({ path, value }) => [path, value]));
  for (const [path, value] of changes) {
    if (typeof value === "number") expect(own.get(path), path).toBeCloseTo(value, 6);
    else expect(own.get(path), path).toBe(value);
  }
  return written;
}

test.each<[string, string, string, number, RosterChange[], string]>([
  ["a flow row", "c.yaml", YAML, 0, [["iron.width", 50.6]], YAML.replace("50.8", "50.6")],
  [
    "a key beside another",
    "c.yaml",
    YAML,
    0,
    [["iron.thickness", 3.2]],
    YAML.replace("width: 50.8", "width: 50.8, thickness: 3.2"),
  ],
  [
    "a section that is not there",
    "c.yaml",
    YAML,
    0,
    [["bed.angle", 50]],
    YAML.replace("} } #", "}, bed: { angle: 50 } } #"),
  ],
  ["a dotted key", "c.yaml", YAML, 1, [["iron.width", 47.5]], YAML.replace("width: 48", "width: 47.5")],
  ["a block", "c.yaml", YAML, 1, [["bed.angle", 50]], YAML.replace("angle: 47", "angle: 50")],
  ["the last row", "c.yaml", YAML, 2, [["bed.angle", 50]], `${YAML}    bed:\n      angle: 50\n`],
  [
    "a value taken out",
    "c.yaml",
    YAML,
    1,
    [["iron.width", undefined]],
    YAML.replace("    iron.width: 48 # an old one\n", "    # an old one\n"),
  ],
  [
    "a cell",
    "c.csv",
    "name,iron.width\r\nanna, 50.8 \r\nben,48\r\n",
    0,
    [["iron.width", 50.6]],
    "name,iron.width\r\nanna, 50.6 \r\nben,48\r\n",
  ],
  [
    "an empty cell",
    "c.csv",
    "name,iron.width,bed.angle\nanna,,\nben,48",
    0,
    [["iron.width", 50.6]],
    "name,iron.width,bed.angle\nanna,50.6,\nben,48",
  ],
  [
    "a row that ends early",
    "c.csv",
    "name,iron.width,bed.angle\nanna\nben,48",
    0,
    [["bed.angle", 50]],
    "name,iron.width,bed.angle\nanna,,50\nben,48",
  ],
  [
    "a new column of names",
    "c.csv",
    "\ufeffName,iron width\nanna,50.8\nben\n",
    1,
    [["bed.angle", 50]],
    "\ufeffName,iron width,bed angle\nanna,50.8\nben,,50\n",
  ],
  [
    "a new column of paths",
    "c.csv",
    "name,iron.width\nanna,50.8\n",
    0,
    [["bed.angle", 50]],
    "name,iron.width,bed.angle\nanna,50.8,50\n",
  ],
  [
    "decimal commas",
    "c.csv",
    "name;iron width\nanna;50,8\n",
    0,
    [["iron.width", 48.25]],
    "name;iron width\nanna;48,25\n",
  ],
  [
    "a column in inches",
    "c.csv",
    "name,iron width (in)\nanna,2\n",
    0,
    [["iron.width", 44.45]],
    "name,iron width (in)\nanna,1.75\n",
  ],
  [
    "a length that is round in mm only",
    "c.csv",
    "name,iron width (in)\nanna,2\n",
    0,
    [["iron.width", 48.3]],
    "name,iron width (in)\nanna,48.3 mm\n",
  ],
  [
    "a column in cm",
    "c.csv",
    "name,iron width cm\nanna,5\n",
    0,
    [["iron.width", 48.3]],
    "name,iron width cm\nanna,48.3 mm\n",
  ],
  ["quotes", "c.csv", 'name,"iron.width"\n"anna","50.8"\n', 0, [["iron.width", 48]], 'name,"iron.width"\n"anna",48\n'],
  [
    "a word",
    "c.csv",
    "name,wood.body\nanna,\n",
    0,
    [["wood.body", "beech, american"]],
    'name,wood.body\nanna,"beech, american"\n',
  ],
  [
    "two values",
    "c.csv",
    "name\nanna\n",
    0,
    [
      ["iron.width", 48],
      ["bed.angle", 50],
    ],
    "name,iron width,bed angle\nanna,48,50\n",
  ],
  [
    "a cell taken out",
    "c.csv",
    "name,iron.width\nanna,50.8\n",
    0,
    [["iron.width", undefined]],
    "name,iron.width\nanna,\n",
  ],
])("%s", (_, file, text, row, changes, expected) => expect(update(text, file, row, changes)).toBe(expected));

test("JSON stays JSON", () => {
  const text = '{ "base": "b.yaml", "planes": [{ "name": "anna" }, { "name": "ben" }] }';
  expect(
    JSON.parse(
      update(text, "c.json", 1, [
        ["iron.width", 48],
        ["wood.body", "walnut"],
      ]),
    ),
  ).toEqual({
    base: "b.yaml",
    planes: [{ name: "anna" }, { name: "ben", iron: { width: 48 }, wood: { body: "walnut" } }],
  });
});

test("inches of a base in inches", () => {
  expect(update("name,iron.width\nanna,2\n", "c.csv", 0, [["iron.width", 47.625]], "in")).toBe(
    "name,iron.width\nanna,1.875\n",
  );
});
