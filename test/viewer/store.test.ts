// What the page holds: each committed change can be taken back and made again, what is under the hand cannot, and builds are kept newest first.
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { keepBuild, keptBuilds, keptByName, keptWithText } from "../../packages/viewer/src/bench/kept-builds.ts";
import { createStore } from "../../packages/viewer/src/state/store.ts";

const EXAMPLE = { kind: "example", name: "apprentice-smoother" } as const;
const OTHER = { kind: "text", name: "mine.yaml", text: "iron: { width: 50, thickness: 3 }\n" } as const;

let addresses: string[];
beforeEach(() => {
  addresses = [];
  vi.stubGlobal("history", { replaceState: (_: unknown, __: string, address: string) => void addresses.push(address) });
});
afterEach(() => vi.unstubAllGlobals());

describe("the way back", () => {
  const start = () => {
    const heard: string[] = [];
    const store = createStore({ origin: EXAMPLE, changes: [], stage: "shaped" });
    store.onChange((what, holding) => void heard.push(holding ? `${what}, held` : what));
    const value = (path: string) => store.now().changes.get(path);
    return { store, heard, value };
  };

  test("leads through every committed change and forth again", () => {
    const { store, value } = start();
    expect(store.ways()).toEqual({ back: false, forth: false });
    expect([store.undo(), store.redo()]).toEqual([false, false]);
    store.set([["bed.angle", 48]]);
    store.set([
      ["bed.angle", 49],
      ["body.length", 240],
    ]);
    expect(store.ways()).toEqual({ back: true, forth: false });
    expect([value("bed.angle"), value("body.length")]).toEqual([49, 240]);
    expect(store.undo()).toBe(true);
    expect([value("bed.angle"), value("body.length")]).toEqual([48, undefined]);
    expect(store.ways()).toEqual({ back: true, forth: true });
    expect(store.undo()).toBe(true);
    expect(store.now().changes.size).toBe(0);
    expect(store.undo()).toBe(false);
    expect([store.redo(), store.redo(), store.redo()]).toEqual([true, true, false]);
    expect([value("bed.angle"), value("body.length")]).toEqual([49, 240]);
  });

  test("forgets what was taken back once something else is changed", () => {
    const { store, value } = start();
    store.set([["bed.angle", 48]]);
    store.undo();
    store.set([["body.length", 250]]);
    expect(store.ways()).toEqual({ back: true, forth: false });
    expect([store.redo(), value("bed.angle"), value("body.length")]).toEqual([false, undefined, 250]);
  });

  test("has one step for all that a hand did while it was on a number, and the address none of it before", () => {
    const { store, heard, value } = start();
    store.set([["bed.angle", 48]], true);
    store.set([["bed.angle", 48]], true);
    store.set([["bed.angle", 49]], true);
    expect([addresses, store.ways().back, value("bed.angle")]).toEqual([[], false, 49]);
    store.commit();
    store.commit();
    expect(heard).toEqual(["design, held", "design, held", "design"]);
    expect(addresses).toHaveLength(1);
    expect(addresses[0]).toContain("bed.angle=49");
    store.undo();
    expect([value("bed.angle"), store.ways()]).toEqual([undefined, { back: false, forth: true }]);
  });

  test("knows no step where nothing changes, and commits what is held by the same value", () => {
    const { store, heard } = start();
    store.set([["bed.angle", 48]]);
    store.set([["bed.angle", 48]]);
    expect(heard).toEqual(["design"]);
    store.undo();
    expect(store.ways().back).toBe(false);
    store.set([["bed.angle", 50]], true);
    store.set([["bed.angle", 50]]);
    expect([store.ways().back, addresses.at(-1)]).toEqual([true, expect.stringContaining("bed.angle=50")]);
  });

  test("keeps to the stage that is shown, and leads back to another design", () => {
    const { store, heard } = start();
    store.set([["bed.angle", 48]]);
    store.begin(OTHER);
    store.setStage("cuts");
    expect(addresses.at(-1)).toContain("at=cuts");
    expect([store.now().origin, store.now().changes.size, store.now().stage]).toEqual([OTHER, 0, "cuts"]);
    store.undo();
    expect([store.now().origin, store.now().changes.get("bed.angle"), store.now().stage]).toEqual([
      EXAMPLE,
      48,
      "cuts",
    ]);
    store.undo();
    expect(heard).toEqual(["design", "origin", "stage", "origin", "design"]);
    store.begin(OTHER, [["bed.angle", 51]], "pin");
    expect([store.now().changes.get("bed.angle"), store.now().stage]).toEqual([51, "pin"]);
  });

  test("does not lead to what was retracted", () => {
    const { store } = start();
    store.set([["bed.angle", 48]]);
    const before = store.now();
    store.begin(OTHER);
    store.retract(before.origin, before.changes);
    expect([store.now().origin, store.now().changes.get("bed.angle")]).toEqual([EXAMPLE, 48]);
    store.undo();
    expect([store.now().origin, store.now().changes.size, store.ways().back]).toEqual([EXAMPLE, 0, false]);
  });

  test("holds a followed file's text in the address once it is read", () => {
    const store = createStore({ origin: { kind: "followed" }, changes: [], stage: "shaped" });
    store.setStage("pin");
    expect(addresses.at(-1)).not.toContain("text=");
    store.keepFollowed({ name: "mine.yaml", text: OTHER.text });
    expect(addresses.at(-1)).toContain("text=");
    expect(addresses.at(-1)).toContain("file=mine.yaml");
    const count = addresses.length;
    store.set([["bed.angle", 48]], true);
    store.keepFollowed(undefined);
    expect(addresses).toHaveLength(count);
  });
});

describe("builds that the browser keeps", () => {
  let kept: Map<string, string>;
  let room: number;
  beforeEach(() => {
    [kept, room] = [new Map(), Number.POSITIVE_INFINITY];
    vi.stubGlobal("localStorage", {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem(key: string, text: string) {
        if (text.length > room) throw new Error("QuotaExceededError");
        kept.set(key, text);
      },
    });
  });
  const build = (id: string, entries = 0, text = `text of ${id}`) => ({
    id,
    name: "plane.yaml",
    text,
    past: Array.from({ length: entries }, (_, i) => ({ text: `before ${i}`, entry: `entry ${i}` })),
  });

  test("stand newest first, each once, two dozen of them", () => {
    expect(keptBuilds()).toEqual([]);
    for (let i = 0; i < 30; i++) expect(keepBuild(build(`b${i}`))).toBe(true);
    expect(keptBuilds().map(({ id }) => id)).toEqual(Array.from({ length: 24 }, (_, i) => `b${29 - i}`));
    keepBuild(build("b20", 1, "changed"));
    expect(keptBuilds()[0]).toEqual(build("b20", 1, "changed"));
    expect(keptBuilds().filter(({ id }) => id === "b20")).toHaveLength(1);
    expect(keptWithText("changed")?.id).toBe("b20");
    expect(keptWithText("no such")).toBe(undefined);
    expect(keptByName("plane.yaml", "b29").map(({ id }) => id)).toEqual(["b20"]);
    expect(keptByName("plane.yaml", "b20")).toEqual([]);
    expect(keptByName("other.yaml", "b29")).toEqual([]);
  });

  test("keep the last sixty entries, and give up the way back before the text where there is no room", () => {
    keepBuild(build("old", 5));
    keepBuild(build("new", 70));
    expect(keptBuilds()[0]!.past.map(({ entry }) => entry)).toEqual(
      Array.from({ length: 60 }, (_, i) => `entry ${i + 10}`),
    );
    expect(keptBuilds()[1]!.past).toHaveLength(5);
    room = JSON.stringify(keptBuilds()).length - 50; // so much less: the other's way back goes
    expect(keepBuild(build("new", 60))).toBe(true);
    expect(keptBuilds().map(({ past }) => past.length)).toEqual([60, 0]);
    room = 300;
    expect(keepBuild(build("new", 60))).toBe(true);
    expect(keptBuilds().map(({ past }) => past.length)).toEqual([0, 0]);
    room = 10;
    expect(keepBuild(build("new", 60))).toBe(false);
  });

  test("are those that are builds", () => {
    for (const text of ["no json", "{}", "null", '"x"']) {
      kept.set("lamplane-builds", text);
      expect(keptBuilds()).toEqual([]);
    }
    const whole = build("b1");
    const broken = (["id", "name", "text", "past"] as const).map((key) => ({ ...whole, [key]: 7 }));
    kept.set("lamplane-builds", JSON.stringify([null, 3, ...broken, whole]));
    expect(keptBuilds()).toEqual([whole]);
  });
});
