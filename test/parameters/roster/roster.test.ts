// Rosters as makers write them: YAML and CSV give the same planes, and what is wrong is said with its line and what is allowed.
import { faultText } from "@lamplane/parameters/design";
import { csvCells, decodeRoster, parseRoster } from "@lamplane/parameters/roster";
import { describe, expect, test } from "vitest";

const planesOf = (text: string, file: string) => {
  const read = parseRoster(text, file);
  if (!read.ok) throw new Error(read.faults.map(faultText).join("; "));
  return decodeRoster(read.roster, "mm");
};
const faultsOf = (text: string, file: string): string[] => {
  const read = parseRoster(text, file);
  const faults = read.ok ? decodeRoster(read.roster, "mm").flatMap((plane) => plane.faults) : read.faults;
  return faults.map((fault) => `${fault.line}:${fault.column} ${fault.path} ${faultText(fault)}`);
};

const VALUES = [
  {
    name: "anna",
    values: [
      { path: "iron.width", value: 50.8 },
      { path: "measured.ironThickness", value: 3.12 },
    ],
  },
  { name: "ben", values: [{ path: "iron.width", value: 44.5 }] },
];

describe("the same class", () => {
  test.each([
    [
      "class.yaml",
      "base: a.yaml\nplanes:\n  - { name: anna, iron: { width: 2 in }, measured.ironThickness: 3.12 }\n  - name: ben\n    iron: { width: 44.5 }\n",
    ],
    ["class.csv", "name,iron.width,measured.ironThickness\r\nanna,2 in,3.12\r\nben,44.5,\r\n"],
    ["comma.csv", "\ufeffname;iron.width;measured.ironThickness\r\nanna;50,8;3,12\r\n\r\nben;44,5;\r\n"],
    ["tabs.tsv", "name\tiron.width (in)\tmeasured.ironThickness mm\nanna\t2\t3.12\nben\t44.5 mm\t\n"],
    ["words.csv", "Name,Iron width (in),Measured.IronThickness\nanna,2,3.12 mm\nben,44.5 mm,\n"],
    ["quoted.csv", 'name,"iron.width",measured.ironThickness\n"anna","2 in","3.12"\nben,"44.5",'],
  ])("from %s", (file, text) => expect(planesOf(text, file)).toMatchObject(VALUES));
});

test.each([
  ["Anna Berg", "Anna-Berg"],
  ["  Zoë  Lind ", "Zoe-Lind"],
  ["Jörg", "Jorg"],
  ["Mara Groß", "Mara-Gross"],
  ["Pat O'Dell Jr.", "Pat-ODell-Jr"],
])("a pupil's name as it is written, %j, has files by the name %s, and is kept", (written, name) => {
  const [csv] = planesOf(`name\n"${written}"\n`, "class.csv");
  expect(csv).toMatchObject({ name, written: written.trim(), faults: [] });
  expect(planesOf(`planes: [{ name: "${written}" }]\n`, "class.yaml")).toMatchObject([{ name, faults: [] }]);
  expect(planesOf("name\nanna\n", "class.csv")[0]).not.toHaveProperty("written");
});

test("names that differ only by what files leave out are one", () => {
  const [, second] = planesOf("name\nAnna Berg\nanna-berg\n", "class.csv");
  expect(second!.faults.map(faultText)).toEqual([expect.stringMatching(/^anna-berg stands on line 2 already/)]);
});

describe("what is wrong is said at its place", () => {
  test.each([
    [
      "csv",
      "iron.width\n48\n",
      ["1:1  no column is headed name; write `name,iron.width,iron.thickness` into the first line"],
    ],
    [
      "csv",
      "name,iron.width\nanna,48,3\n",
      ["2:9  this row has more cells than the 2 of the first line; head the column, or take the cell out"],
    ],
    [
      "csv",
      'name,iron.width\nanna,"48\n',
      ['2:6  a quote opens here and is never closed; write ", and "" for a quote within'],
    ],
    [
      "csv",
      "name,iron.width\nanna,300\nanna,48\n",
      [
        "2:6 iron.width read 300; allowed: 8 mm to 120 mm",
        "3:1 name anna stands on line 2 already; a pack needs a name of its own",
      ],
    ],
    ["csv", "name,iron.wdith\nanna,48\n", ['1:6 iron.wdith "wdith" is not a key of iron; did you mean width?']],
    [
      "csv",
      "name,units\nanna,in\n",
      ["1:6 units units is the base design's and the same for all; take it out of the roster"],
    ],
    ["csv", "name,iron.width\n,48\n", ["2:1 name the row has no name; write one, which its pack will have too"]],
    [
      "csv",
      "name\nmy = plane\n",
      [expect.stringContaining('2:1 name read "my = plane"; write letters, digits, dots, dashes and underscores')],
    ],
    ["csv", "name,iron.width,iron.width\nanna,1,2\n", ["1:17 iron.width two columns are headed iron.width; keep one"]],
    ["csv", "name,iron.width\n", [expect.stringContaining("1:1  the roster has no planes")]],
    ["yaml", "planes: 3\n", [expect.stringContaining("1:9 planes the roster has no planes")]],
    [
      "yaml",
      "plane:\n  - { name: anna }\nplanes: []\n",
      ['1:1 plane "plane" is not a key of a roster; known here: base, planes, boards'],
    ],
    [
      "yaml",
      "planes:\n  - anna\n",
      ["2:5 planes a row is keys and values, such as `- { name: anna, iron: { width: 50.8 } }`"],
    ],
    [
      "yaml",
      "planes:\n  - { name: anna, iron: 48 }\n",
      [expect.stringContaining("2:19 iron this is a section; write keys into it")],
    ],
    [
      "yaml",
      "planes:\n  - { name: anna, iron: { width: 48 }, iron.width: 49 }\n",
      ['2:40 iron.width "iron.width" stands on line 2 already; keep one'],
    ],
    ["yaml", "planes:\n  - *anna\n", ["2:5 planes.1 aliases (*) are not read; write the value out"]],
    ["yaml", "- anna\n", [expect.stringContaining("1:1  a roster has the keys base and planes")]],
    ["yaml", "planes: [\n", [expect.stringContaining("not YAML")]],
  ] as const)("%s: %j", (ending, text, faults) => expect(faultsOf(text, `class.${ending}`)).toEqual(faults));
});

test("cells are read as the published examples say", () => {
  const cellsOf = (text: string) => csvCells(text).rows.map((row) => row.map((cell) => cell.text));
  // RFC 4180, section 2, definitions 1 to 7: line ends, the last without one, quotes, line ends and quotes within them.
  expect(cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n")).toEqual([
    ["aaa", "bbb", "ccc"],
    ["zzz", "yyy", "xxx"],
  ]);
  expect(cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx")).toEqual([
    ["aaa", "bbb", "ccc"],
    ["zzz", "yyy", "xxx"],
  ]);
  expect(cellsOf('"aaa","bbb","ccc"\r\nzzz,yyy,xxx')).toEqual([
    ["aaa", "bbb", "ccc"],
    ["zzz", "yyy", "xxx"],
  ]);
  expect(cellsOf('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx')).toEqual([
    ["aaa", "b\r\nbb", "ccc"],
    ["zzz", "yyy", "xxx"],
  ]);
  expect(cellsOf('"aaa","b""bb","ccc"')).toEqual([["aaa", 'b"bb', "ccc"]]);
  const [, , third] = csvCells('a,"b\nb"\n1,2\n3,4').rows;
  expect(third![1]).toEqual({ text: "4", at: { line: 4, column: 3 }, start: 14, end: 15 });
});
