// Changes made on the page of one plane of a class: written into its row or its own file, or nowhere.
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { readDesign } from "@lamplane/parameters/design";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { startViewServer, type ViewServer } from "../../packages/cli/src/view-server.ts";
import { ClassFolder } from "../support/class-folder.ts";
import { fault } from "../support/faults.ts";

const ROSTER = "name,iron width, iron thickness\nanna,50.8,3.1\nben,48,3.6\n";
const school = new ClassFolder();
let server: ViewServer;

beforeEach(async () => {
  school.writeRoster(ROSTER);
  await school.run("--plan");
  const page = school.at("page");
  mkdirSync(page);
  writeFileSync(school.at("page", "index.html"), "<html><head></head></html>");
  server = await startViewServer({
    page,
    followedClass: { roster: school.roster, base: school.base, out: school.packs },
    port: 0,
  });
});
afterEach(() => server.close());

type Change = [path: string, value: number | string | null];
interface Read {
  name: string;
  text: string;
  version: string;
}
const readClass = async () => (await (await fetch(`${server.address}followed/class`)).json()) as Read[];
const token = async () => /data-token="([^"]+)"/.exec(await (await fetch(server.address)).text())![1]!;

async function put(plane: string, changes: Change[], files?: Read[], headers = {}, more = {}): Promise<Response> {
  const read = files ?? (await readClass());
  const text = read.find(({ name }) => name === `${plane}.yaml`)?.text ?? "";
  return fetch(`${server.address}followed/plane`, {
    method: "PUT",
    headers: { origin: new URL(server.address).origin, "x-lamplane-token": await token(), ...headers },
    body: JSON.stringify({ plane, changes, text, read: read.map(({ name, version }) => [name, version]), ...more }),
  });
}
const rosterText = () => readFileSync(school.roster, "utf8");
const ownText = (name: string) => readFileSync(school.planeFile(name), "utf8");
const texts = () => [rosterText(), ownText("anna"), ownText("ben"), readFileSync(school.base, "utf8")];

describe("a change", () => {
  test("of a parameter goes into the row, and the class is made of it", async () => {
    const before = ownText("anna");
    const reply = await put("anna", [
      ["iron.thickness", 3.2],
      ["bed.angle", 50],
    ]);
    expect([reply.status, await reply.json()]).toEqual([200, ["class.csv"]]);
    expect(rosterText()).toBe("name,iron width, iron thickness,bed angle\nanna,50.8,3.2,50\nben,48,3.6\n");
    expect(ownText("anna")).toBe(before);
    await school.run("--plan");
    expect(school.design("anna")).toMatchObject({ iron: { thickness: 3.2 }, bed: { angle: 50 } });
    expect(school.design("ben").bed.angle).toBe(47);
  });

  test("of what was measured goes into the plane's own file, where `class --status` reads it", async () => {
    const before = ownText("ben");
    const reply = await put("ben", [["measured.ironWidth", 48.1]]);
    expect(await reply.json()).toEqual(["ben.yaml"]);
    expect(rosterText()).toBe(ROSTER);
    expect(ownText("ben").startsWith(before.trimEnd())).toBe(true);
    expect(school.design("ben").measured.ironWidth).toBe(48.1);
    expect((await school.run("--status")).out).toMatch(/ben .*1, last iron width 48.1 mm/);
    expect((await put("ben", [["measured.ironWidth", null]])).status).toBe(200);
    expect(school.design("ben").measured.ironWidth).toBeUndefined();
  });

  test("of both kinds is written into both files", async () => {
    const reply = await put("ben", [
      ["measured.ironWidth", 48.1],
      ["bed.angle", 50],
    ]);
    expect(await reply.json()).toEqual(["ben.yaml", "class.csv"]);
    expect(rosterText()).toContain("ben,48,3.6,50");
    expect(school.design("ben").measured.ironWidth).toBe(48.1);
  });

  test("of a measured value that the row has is written where it stands, so that the two never contradict", async () => {
    school.writeRoster("name,iron width,measured.ironThickness\nanna,50.8,3.1\nben,48,\n");
    await school.run("--plan");
    expect(school.design("anna").measured.ironThickness).toBe(3.1);
    expect(await (await put("anna", [["measured.ironThickness", 3.15]])).json()).toEqual(["anna.yaml", "class.csv"]);
    expect(rosterText()).toContain("anna,50.8,3.15\n");
    const { exit, out } = await school.run("--status");
    expect([exit, out]).toEqual([0, expect.stringMatching(/anna .*last iron thickness 3.15 mm/)]);
  });

  test("of a plane that has no file yet makes it, as the page read it", async () => {
    const text = ownText("anna");
    rmSync(school.packs, { recursive: true });
    const reply = await put("anna", [["measured.ironWidth", 50.7]], undefined, {}, { text });
    expect(await reply.json()).toEqual(["anna.yaml"]);
    const made = readDesign(ownText("anna"), "anna.yaml");
    expect(made.ok && made.design.measured).toMatchObject({ ironWidth: 50.7 });
    expect(existsSync(school.planeFile("ben"))).toBe(false);
  });
});

test(
  "a write by another page, of no allowed value, of no such plane, of no change at all",
  fault({ on: "a class that is followed", survives: "refused with the reason; every file as it was" }),
  async () => {
    const before = texts();
    const cases: [Promise<Response>, number, RegExp][] = [
      [put("anna", [["bed.angle", 50]], undefined, { "x-lamplane-token": "guessed" }), 403, /Only the page/],
      [put("anna", [["bed.angle", 50]], undefined, { origin: "http://evil.example" }), 403, /own requests/],
      [put("anna", [["bed.angle", 300]]), 422, /bed\.angle: read 300; allowed: 35° to 65°/],
      [put("anna", [["bed.angel", 50]]), 422, /no parameter bed\.angel/],
      [put("anna", [["units", "in"]]), 422, /the base design's and the same for all/],
      [put("anna", [["name", "anne"]]), 422, /class\.csv itself/],
      [put("anna", [["measured.ironWidth", 5000]]), 422, /ironWidth/],
      [put("carla", [["bed.angle", 50]]), 422, /no plane carla now/],
      [put("../base", [["bed.angle", 50]]), 422, /no plane/],
      [put("anna", [["bed.angle", 50]], undefined, {}, { changes: [["bed.angle"]] }), 400, /no change/],
    ];
    for (const [sent, status, words] of cases) {
      const reply = await sent;
      expect([reply.status, await reply.text()]).toEqual([status, expect.stringMatching(words)]);
      expect(texts()).toEqual(before);
    }
  },
);

test.each<[string, () => void]>([
  ["a row added", () => writeFileSync(school.roster, `${ROSTER}carla,50,3\n`)],
  ["the row renamed", () => writeFileSync(school.roster, ROSTER.replace("anna", "anne"))],
  ["the roster gone", () => rmSync(school.roster)],
  ["the base changed", () => writeFileSync(school.base, `${readFileSync(school.base, "utf8")}# more\n`)],
  ["the plane's file changed", () => writeFileSync(school.planeFile("anna"), `${ownText("anna")}# more\n`)],
  ["the plane's file gone", () => rmSync(school.planeFile("anna"))],
])(
  "%s since the page read the class",
  fault({
    on: "a class that is followed",
    survives: "refused; the newer files stay; a page that reads them anew writes",
  }),
  async (_, change) => {
    const read = await readClass();
    change();
    const files = [school.roster, school.base, school.planeFile("anna"), school.planeFile("ben")].filter(existsSync);
    const newer = files.map((file) => readFileSync(file, "utf8"));
    const reply = await put("anna", [["bed.angle", 50]], read);
    expect(reply.status).toBe(existsSync(school.roster) ? 412 : 422);
    expect(files.map((file) => readFileSync(file, "utf8"))).toEqual(newer);
    if (newer[0]?.includes("anna,")) expect((await put("anna", [["bed.angle", 50]])).status).toBe(200);
  },
);

test("another plane's file that changed meanwhile does not matter", async () => {
  const read = await readClass();
  writeFileSync(school.planeFile("ben"), `${ownText("ben")}# more\n`);
  expect((await put("anna", [["bed.angle", 50]], read)).status).toBe(200);
});

test(
  "a roster that cannot be written, when the plane's file already is",
  fault({ on: "a class that is followed", survives: "the plane's file is put back; the reason is given" }),
  async () => {
    mkdirSync(`${school.roster}.${process.pid}.tmp`); // where the new roster would be written
    const before = texts();
    const reply = await put("ben", [
      ["measured.ironWidth", 48.1],
      ["bed.angle", 50],
    ]);
    expect([reply.status, await reply.text()]).toEqual([500, expect.stringMatching(/class\.csv/)]);
    expect(texts()).toEqual(before);
    rmSync(school.planeFile("ben"));
    const again = await put(
      "ben",
      [
        ["measured.ironWidth", 48.1],
        ["bed.angle", 50],
      ],
      undefined,
      {},
      { text: before[2]! },
    );
    expect(again.status).toBe(500);
    expect(existsSync(school.planeFile("ben"))).toBe(false);
  },
);
