// `lamplane view` as other pages, other hosts and other paths find it: closed. As its own page finds it: it follows and writes back.
import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { startViewServer, type ViewServer } from "../../packages/cli/src/view-server.ts";
import { buildIfStale, buildPage, COMMAND } from "../support/built.ts";
import { fault } from "../support/faults.ts";

const DESIGN = "# for the school's shop\niron: { width: 48, thickness: 3.6 } # the old one\n";
let folder = "";
let file = "";
let server: ViewServer;

beforeAll(() => {
  buildIfStale();
  buildPage();
});
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "lamplane-view-"));
  file = join(folder, "plane.yaml");
  writeFileSync(file, DESIGN);
  for (const [name, text] of [
    ["index.html", "<html><head></head></html>"],
    ["sheet.js", "//"],
    ["secret.txt", "not served"],
    ["licences.txt", "MIT"],
  ] as const)
    writeFileSync(join(folder, name), text);
  server = await startViewServer({ page: folder, file, port: 0 });
});
afterEach(async () => {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Reply {
  readonly status: number;
  readonly body: string;
  readonly headers: Record<string, string | string[] | undefined>;
}

/** A request as it stands: no path is tidied, no header added. */
const asked = (path: string, options: { method?: string; headers?: Record<string, string>; body?: string } = {}) =>
  new Promise<Reply>((resolve, reject) => {
    const { hostname, port, pathname } = new URL(server.address);
    const { method = "GET", headers = {}, body } = options;
    const sent = request({ hostname, port, path: pathname.slice(0, -1) + path, method, headers }, (reply) => {
      let text = "";
      reply.on("data", (piece) => {
        text += piece;
      });
      reply.on("end", () => resolve({ status: reply.statusCode!, body: text, headers: reply.headers }));
    });
    sent.on("error", reject);
    sent.end(body);
  });

const own = () => new URL(server.address).origin;
const tokenIn = (html: string) => /data-token="([^"]+)"/.exec(html)![1]!;
const put = async (text: string, changed: Record<string, string> = {}) => {
  const token = tokenIn((await asked("/")).body);
  const { etag } = (await asked("/followed/design")).headers;
  const headers = { origin: own(), "x-lamplane-token": token, "if-match": String(etag), ...changed };
  return asked("/followed/design", { method: "PUT", headers, body: text });
};

test("listens on the loopback alone and answers with its page and its file", async () => {
  expect(server.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/[\w-]{32}\/$/);
  expect((await asked("/")).body).toContain('<meta name="lamplane-follows" content="plane.yaml"');
  expect((await asked("/sheet.js")).headers["content-type"]).toContain("javascript");
  expect(await asked("/followed/design")).toMatchObject({ status: 200, body: DESIGN });
  expect(await asked("/", { method: "HEAD" })).toMatchObject({ status: 200, body: "" });
  expect((await asked("/")).headers["content-security-policy"]).toContain("default-src 'none'");
});

test("the shop file that the design names is served beside it, followed, and part of the design's version", async () => {
  expect((await asked("/followed/shop")).status).toBe(204);
  const before = (await asked("/followed/design")).headers.etag;
  expect((await put(`${DESIGN}shop: my-shop.yaml\n`)).status).toBe(422);
  writeFileSync(join(folder, "my-shop.yaml"), "shop: { kerf: 2 }");
  expect((await put(`${DESIGN}shop: my-shop.yaml\n`)).status).toBe(204);
  const shop = await asked("/followed/shop");
  expect(JSON.parse(shop.body)).toEqual({ file: "my-shop.yaml", source: "shop: { kerf: 2 }" });
  const named = (await asked("/followed/design")).headers.etag;
  writeFileSync(join(folder, "my-shop.yaml"), "shop: { kerf: 3 }");
  const changed = (await asked("/followed/design")).headers.etag;
  expect(new Set([before, named, changed]).size).toBe(3);
});

test.each([
  ["evil.example", 421],
  ["evil.example:80", 421],
  ["127.0.0.1", 421],
  ["127.0.0.1:1", 421],
  ["0.0.0.0:PORT", 421],
  ["localhost:PORT", 200],
  ["127.0.0.1:PORT", 200],
])("a request for the host %s is answered with %i", async (host, status) => {
  const { port } = new URL(server.address);
  expect((await asked("/", { headers: { host: host.replace("PORT", port) } })).status).toBe(status);
});

test("the licences of what the page is built from are served with it", async () => {
  expect(await asked("/licences.txt")).toMatchObject({
    status: 200,
    body: "MIT",
    headers: { "content-type": "text/plain; charset=utf-8" },
  });
});

test("no path leads out of the folder, nor to what is no part of the page", async () => {
  for (const path of [
    "/../package.json",
    "/..%2f..%2fetc/passwd",
    "/%2e%2e/plane.yaml",
    "//etc/passwd",
    "/plane.yaml",
    "/secret.txt",
    "/sheet.js/",
    "/\\..\\plane.yaml",
    "/%00",
  ])
    expect((await asked(path)).status, path).toBe(404);
  for (const method of ["POST", "PUT", "DELETE", "OPTIONS"])
    expect((await asked("/sheet.js", { method })).status, method).toBe(405);
});

test(
  "a write by another page, over an older version, of no sound design",
  fault({ on: "the view server", survives: "refused; the file as it was; a right write goes through" }),
  async () => {
    const changed = DESIGN.replace("48", "50");
    const cases: [string, Record<string, string>, number][] = [
      [changed, { "x-lamplane-token": "guessed" }, 403],
      [changed, { "x-lamplane-token": "" }, 403],
      [changed, { origin: "http://evil.example" }, 403],
      [changed, { "if-match": '"an older one"' }, 412],
      ["iron: { width: wide }\n", {}, 422],
      [`# ${"x".repeat(300 * 1024)}\n${DESIGN}`, {}, 413],
    ];
    for (const [text, headers, status] of cases) {
      expect((await put(text, headers)).status, `${status}`).toBe(status);
      expect(readFileSync(file, "utf8")).toBe(DESIGN);
    }
    expect((await put(changed)).status).toBe(204);
    expect(readFileSync(file, "utf8")).toBe(changed);
  },
);

test("tells when the file changes on disk, also when it is replaced", async () => {
  const { hostname, port, pathname } = new URL(server.address);
  const heard: string[] = [];
  const stream = request({ hostname, port, path: `${pathname}followed/changes` }, (reply) =>
    reply.on("data", (piece) => heard.push(String(piece))),
  );
  stream.on("error", () => {}); // the server ends it
  stream.end();
  await expect.poll(() => heard.join()).toContain("following");
  writeFileSync(file, DESIGN.replace("48", "49"));
  const { etag } = (await asked("/followed/design")).headers;
  await expect.poll(() => heard.join()).toContain(`event: changed\ndata: ${etag}`);
  stream.destroy();
});

test("the command prints the address and ends when it is interrupted; a port that is taken is told", async () => {
  const { port } = new URL(server.address);
  const run = (...args: string[]) => spawn(process.execPath, [COMMAND, "view", ...args]);
  const taken = run(file, "--port", port);
  let received = "";
  taken.stderr.on("data", (piece) => {
    received += piece;
  });
  expect(await new Promise((resolve) => taken.on("exit", resolve))).toBe(2);
  expect(received).toContain(`Port ${port} is taken`);
  const free = run(file);
  let said = "";
  free.stdout.on("data", (piece) => {
    said += piece;
  });
  await expect.poll(() => said).toMatch(/http:\/\/127\.0\.0\.1:\d+\/[\w-]{32}\/\n[\s\S]*Ctrl\+C/);
  free.kill("SIGINT");
  expect(await new Promise((resolve) => free.on("exit", resolve))).toBe(0);
});

test("without the secret of its address, nothing but a refusal is answered, the same for every path", async () => {
  const { port, pathname } = new URL(server.address);
  const secret = pathname.slice(1, -1);
  const status = async (path: string, method = "GET") => {
    const reply = await fetch(`http://127.0.0.1:${port}${path}`, {
      method,
      ...(method === "PUT" ? { body: DESIGN } : {}),
    });
    return [reply.status, await reply.text()];
  };
  const [refused, words] = await status("/");
  expect(refused).toBe(403);
  for (const path of ["/index.html", "/sheet.js", "/followed/design", "/followed/changes", "/no-such-file"])
    expect(await status(path), path).toEqual([403, words]);
  expect(await status(`/${secret.slice(0, -1)}/followed/design`)).toEqual([403, words]);
  expect(await status(`/${secret}x/followed/design`)).toEqual([403, words]);
  expect(await status(`/${secret}`)).toEqual([403, words]);
  expect((await status("/followed/design", "PUT"))[0]).toBe(403);
  expect(await status(`/${secret}/followed/design`)).toEqual([200, DESIGN]);
  expect(readFileSync(file, "utf8")).toBe(DESIGN);
});
