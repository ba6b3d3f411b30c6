// What the page of one plane does with the class it follows: it writes over what the sheet shows, and over nothing that came since.
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { followPlane } from "../../packages/viewer/src/page/followed-plane.ts";
import type { ClassText, ClassView } from "../../packages/viewer/src/protocol/class-view.ts";

type Listener = (event: { data?: string }) => unknown;
const listeners = new Map<string, Listener>();
class FakeStream {
  addEventListener(kind: string, listener: Listener) {
    listeners.set(kind, listener);
  }
}
const tell = (kind: string) => listeners.get(kind)?.({});

let onDisk: ClassText[] = [];
let sent: { address: string; body: { read: unknown; changes: unknown; text: string; plane: string } }[] = [];
let reply = () => Response.json(["class.csv"]);
const heard = { changed: vi.fn(), lost: vi.fn(), say: vi.fn() };
const client = {
  /** A plane's file holds the roster's text. */
  view: async (files: readonly ClassText[]) =>
    ({
      faults: [],
      planes: files[0]!.text.split(" ").map((name, i) => ({
        number: i + 1,
        name,
        notes: [],
        plane: { file: { name: `${name}.yaml`, text: `# ${name}` } },
      })),
    }) as unknown as ClassView,
};

beforeEach(() => {
  [onDisk, sent] = [[{ name: "class.csv", text: "anna ben", version: "1" }], []];
  reply = () => Response.json(["class.csv"]);
  vi.stubGlobal("document", { querySelector: () => ({ content: "class.csv", dataset: { token: "secret" } }) });
  vi.stubGlobal("EventSource", FakeStream);
  vi.stubGlobal("sessionStorage", { setItem: () => {}, getItem: () => null });
  vi.stubGlobal("fetch", async (address: string, options: RequestInit) => {
    if (options.method !== "PUT") return Response.json(onDisk);
    sent.push({ address, body: JSON.parse(String(options.body)) });
    return reply();
  });
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.clearAllMocks();
});
const edit = {
  changes: [["bed.angle", 50] as const, ["measured.ironWidth", undefined] as const],
  text: async () => "",
};

test("a plane's design is the class's; its changes go out with the versions that the sheet shows", async () => {
  const plane = followPlane("anna.yaml", heard, client);
  expect(await plane.text()).toEqual({ text: "# anna" });
  onDisk = [{ name: "class.csv", text: "anna ben carla", version: "2" }];
  expect(await plane.writeBack(edit)).toBe(true);
  expect(sent).toEqual([
    {
      address: "./followed/plane",
      body: {
        plane: "anna",
        changes: [
          ["bed.angle", 50],
          ["measured.ironWidth", null],
        ],
        text: "# anna",
        read: [["class.csv", "1"]],
      },
    },
  ]);
  expect(heard.say).toHaveBeenLastCalledWith(expect.stringMatching(/^Written into class\.csv\. Run `lamplane class/));
});

test("while a newer class is still being read, a write goes out with the older versions", async () => {
  const plane = followPlane("anna.yaml", heard, client);
  await plane.text();
  onDisk = [{ name: "class.csv", text: "anna ben", version: "2" }];
  const reading = plane.text();
  await plane.writeBack(edit);
  expect(sent[0]!.body.read).toEqual([["class.csv", "1"]]);
  await reading;
  await plane.writeBack(edit);
  expect(sent[1]!.body.read).toEqual([["class.csv", "2"]]);
});

test("a refusal is passed on in the server's words", async () => {
  const plane = followPlane("anna.yaml", heard, client);
  await plane.text();
  reply = () => new Response("The file has changed since.", { status: 412 });
  expect(await plane.writeBack(edit)).toBe(false);
  expect(heard.say).toHaveBeenLastCalledWith("The file has changed since.");
});

test("a plane whose row is renamed is lost, and nothing is written until it is back", async () => {
  const plane = followPlane("anna.yaml", heard, client);
  await plane.text();
  onDisk = [{ name: "class.csv", text: "anne ben", version: "2" }];
  await tell("changed");
  expect(heard.changed).toHaveBeenCalledTimes(1);
  expect(await plane.text()).toBeUndefined();
  expect(heard.lost).toHaveBeenCalledWith("class.csv has no plane anna now");
  expect(await plane.writeBack(edit)).toBe(false);
  expect(sent).toEqual([]);
  onDisk = [{ name: "class.csv", text: "anna ben", version: "3" }];
  await tell("changed");
  expect(await plane.text()).toEqual({ text: "# anna" });
  expect(await plane.writeBack(edit)).toBe(true);
});

test("word of a change that was read already is passed over", async () => {
  const plane = followPlane("anna.yaml", heard, client);
  await plane.text();
  await tell("changed");
  expect(heard.changed).not.toHaveBeenCalled();
});
