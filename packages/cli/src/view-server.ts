// Serves the built page and one design file on this machine alone: 127.0.0.1, known names, nothing outside its folder.
import { createHash, randomBytes, timingSafeEqual } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { basename, extname, join } from "node:path";
import { LARGEST_FILE, readDesign } from "@lamplane/parameters/design";
import { designContent, replaceFile } from "./design-file.ts";
import { faultLines } from "./file-content.ts";
import { watched } from "./watched-file.ts";

export interface ViewServer {
  readonly address: string;
  close(): Promise<void>;
}

interface Serving {
  /** Folder of the built page. */
  readonly page: string;
  /** Design file to follow; absent where the page begins with its own examples. */
  readonly file?: string | undefined;
  /** 0 takes a free one. */
  readonly port: number;
}

const LOOPBACK = "127.0.0.1";
const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
};
/** No other host is asked for anything, no other page may hold this one, no script runs that is not in the folder. */
const HEADERS = {
  "content-security-policy":
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src data: blob:; worker-src blob:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  "x-content-type-options": "nosniff",
  "referrer-policy": "no-referrer",
  "cross-origin-resource-policy": "same-origin",
  "cache-control": "no-store",
};

interface Answer {
  readonly status: number;
  readonly body?: string | Uint8Array;
  readonly headers?: Readonly<Record<string, string>>;
}
const plain = (status: number, body: string): Answer => ({
  status,
  body,
  headers: { "content-type": "text/plain; charset=utf-8" },
});

/** @throws the system's error where the port is taken */
export async function startViewServer({ page, file, port }: Serving): Promise<ViewServer> {
  const token = randomBytes(24).toString("base64url");
  const files = pageFiles(page, file, token);
  const streams = new Set<ServerResponse>();
  const server = createServer(async (request, response) => {
    const own = (server.address() as AddressInfo).port;
    const refused = refusal(request, own);
    const path = new URL(request.url ?? "/", `http://${LOOPBACK}`).pathname;
    if (!refused && file && path === "/followed/changes" && request.method === "GET") return listen(response, streams);
    send(request, response, refused ?? (await answered(request, path, { files, file, token, own })));
  });
  await new Promise<void>((resolve, reject) => server.once("error", reject).listen(port, LOOPBACK, resolve));
  const stop = file === undefined ? () => {} : watched(file, () => tellAll(streams, file));
  return {
    address: `http://${LOOPBACK}:${(server.address() as AddressInfo).port}/`,
    close: () =>
      new Promise((resolve) => {
        stop();
        for (const stream of streams) stream.end();
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/** Every file that is served, by its path: read once, so that no address can lead anywhere else. */
function pageFiles(page: string, file: string | undefined, token: string): ReadonlyMap<string, Answer> {
  const files = new Map<string, Answer>();
  for (const entry of readdirSync(page, { withFileTypes: true })) {
    const type = TYPES[extname(entry.name)];
    if (entry.isFile() && type)
      files.set(`/${entry.name}`, {
        status: 200,
        body: readFileSync(join(page, entry.name)),
        headers: { "content-type": type },
      });
  }
  const index = files.get("/index.html")!;
  const mark =
    file === undefined
      ? ""
      : `<meta name="lamplane-follows" content="${quoted(basename(file))}" data-token="${token}" />`;
  const html = new TextDecoder().decode(index.body as Uint8Array).replace("</head>", `${mark}</head>`);
  return files.set("/", { ...index, body: html }).set("/index.html", { ...index, body: html });
}

const quoted = (text: string): string =>
  text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`).replace(/\p{C}/gu, "�");

/** A request for another host reached us by a name that someone else points here; another page's request is not ours. */
function refusal(request: IncomingMessage, port: number): Answer | undefined {
  const { host, origin } = request.headers;
  const own = [`${LOOPBACK}:${port}`, `localhost:${port}`];
  if (host === undefined || !own.includes(host)) return plain(421, "This page answers at 127.0.0.1 only.\n");
  if (origin !== undefined && !own.includes(origin.replace(/^http:\/\//, "")))
    return plain(403, "This page answers to itself only.\n");
  return undefined;
}

interface At {
  readonly files: ReadonlyMap<string, Answer>;
  readonly file: string | undefined;
  readonly token: string;
  readonly own: number;
}

async function answered(request: IncomingMessage, path: string, at: At): Promise<Answer> {
  const isRead = request.method === "GET" || request.method === "HEAD";
  if (at.file !== undefined && path === "/followed/design") {
    if (isRead) return designNow(at.file);
    if (request.method === "PUT") return await writtenIn(request, at.file, at.token);
  }
  if (!isRead) return { ...plain(405, "Only reading is answered here.\n"), headers: { allow: "GET, HEAD" } };
  return at.files.get(path) ?? plain(404, "There is no such file here.\n");
}

export const versionOf = (content: Uint8Array): string =>
  `"${createHash("sha256").update(content).digest("hex").slice(0, 32)}"`;

function designNow(file: string): Answer {
  try {
    const body = designContent(file);
    return { status: 200, body, headers: { "content-type": "text/yaml; charset=utf-8", etag: versionOf(body) } };
  } catch (error) {
    return plain(404, `${(error as Error).message}\n`);
  }
}

/** Only the page itself, which holds the token, may write; only over the version that it read; only a sound design. */
async function writtenIn(request: IncomingMessage, file: string, token: string): Promise<Answer> {
  if (!isSame(request.headers["x-lamplane-token"], token) || request.headers.origin === undefined)
    return plain(403, "Only the page that follows this file may write it.\n");
  const text = await bodyOf(request);
  if (text === undefined) return plain(413, `A design file has at most ${LARGEST_FILE} bytes.\n`);
  const reading = readDesign(text, basename(file));
  if (!reading.ok) return plain(422, `${faultLines(reading.faults)}\nNothing was written.\n`);
  try {
    if (versionOf(designContent(file)) !== request.headers["if-match"])
      return plain(412, "The file has changed since this page read it; nothing was written.\n");
    replaceFile(file, text);
    return { status: 204, headers: { etag: versionOf(designContent(file)) } };
  } catch (error) {
    return plain(500, `${(error as Error).message}\n`);
  }
}

function isSame(given: string | string[] | undefined, token: string): boolean {
  if (typeof given !== "string") return false;
  const [a, b] = [Buffer.from(given), Buffer.from(token)];
  return a.length === b.length && timingSafeEqual(a, b);
}

async function bodyOf(request: IncomingMessage): Promise<string | undefined> {
  const pieces: Buffer[] = [];
  let size = 0;
  for await (const piece of request) {
    size += (piece as Buffer).length;
    if (size > LARGEST_FILE) return undefined;
    pieces.push(piece as Buffer);
  }
  return Buffer.concat(pieces).toString("utf8");
}

function listen(response: ServerResponse, streams: Set<ServerResponse>) {
  response.writeHead(200, { ...HEADERS, "content-type": "text/event-stream" });
  response.write(": following\n\n");
  streams.add(response);
  response.on("close", () => streams.delete(response));
}

function tellAll(streams: ReadonlySet<ServerResponse>, file: string) {
  const now = designNow(file);
  if (now.status !== 200) return; // being replaced: the next word comes with the new file
  for (const stream of streams) stream.write(`event: changed\ndata: ${now.headers?.etag}\n\n`);
}

function send(request: IncomingMessage, response: ServerResponse, { status, body, headers }: Answer) {
  response.writeHead(status, { ...HEADERS, ...headers });
  response.end(request.method === "HEAD" ? undefined : body);
}
