// What the page does with the file it follows: it writes over what it has read, and over nothing that came since.
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { followFile } from "../../packages/viewer/src/page/followed-file.ts";

type Listener = (event: { data?: string }) => void;
let stream: FakeStream;
class FakeStream {
  readonly listeners = new Map<string, Listener>();
  constructor() {
    stream = this;
  }
  addEventListener(kind: string, listener: Listener) {
    this.listeners.set(kind, listener);
  }
  tell(kind: string, data?: string) {
    this.listeners.get(kind)?.(data === undefined ? {} : { data });
  }
}

let onDisk: { version: string; text: string };
let sent: RequestInit[] = [];
const heard = { changed: vi.fn(), lost: vi.fn(), say: vi.fn() };
beforeEach(() => {
  [onDisk, sent] = [{ version: "1", text: "first" }, []];
  vi.stubGlobal("document", { querySelector: () => ({ content: "plane.yaml", dataset: { token: "secret" } }) });
  vi.stubGlobal("EventSource", FakeStream);
  vi.stubGlobal("fetch", async (address: string, options: RequestInit) => {
    if (address === "./followed/shop") return new Response(null, { status: 204 });
    if (options.method === "PUT") sent.push(options);
    return new Response(options.method === "PUT" ? null : onDisk.text, {
      status: options.method === "PUT" ? 204 : 200,
      headers: { etag: onDisk.version },
    });
  });
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.clearAllMocks();
});

test("the shop file that goes with the design comes with its text", async () => {
  const shop = { file: "my-shop.yaml", source: "shop: { kerf: 2 }" };
  const plain = globalThis.fetch;
  vi.stubGlobal("fetch", (address: string, options: RequestInit) =>
    address === "./followed/shop" ? Promise.resolve(Response.json(shop)) : plain(address, options),
  );
  expect(await followFile(heard)!.text()).toEqual({ text: "first", shop });
});

test("a file that changes while its new text is being made is not written over", async () => {
  const file = followFile(heard)!;
  expect(await file.text()).toEqual({ text: "first" });
  await file.writeBack({
    changes: [],
    text: async () => {
      onDisk = { version: "2", text: "someone else's" };
      await file.text();
      return "ours, from the first";
    },
  });
  expect(sent[0]!.headers).toMatchObject({ "if-match": "1", "x-lamplane-token": "secret" });
});

test("a text that was still being read when the file was lost is none", async () => {
  const file = followFile(heard)!;
  const text = file.text();
  stream.tell("lost", JSON.stringify("no such file\n"));
  expect(await text).toBeUndefined();
  expect(heard.lost).toHaveBeenCalledWith("no such file");
});

test("of two readings the newest is answered", async () => {
  const file = followFile(heard)!;
  expect(await Promise.all([file.text(), file.text()])).toEqual([undefined, { text: "first" }]);
});
