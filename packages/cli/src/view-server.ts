// Serves the built page and one design file to whoever was given the address: 127.0.0.1, a secret in every path, nothing outside its folder.
import { randomBytes } from "node:crypto";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { classResponse, type FollowedClass, watchClass } from "./class/followed-class.ts";
import { answerPlaneEdit } from "./class/plane-edit-request.ts";
import { designResponse, shopResponse, watchDesign, writeDesign } from "./followed-design.ts";
import { loadPageFiles } from "./view-page.ts";
import {
  type HttpResponse,
  LOOPBACK,
  parseTarget,
  pathWithin,
  plainResponse,
  refuseForeignRequest,
  WITHOUT_SECRET,
} from "./view-requests.ts";
import { SERVER } from "./words/view.ts";

export interface ViewServer {
  readonly address: string;
  close(): Promise<void>;
}

interface ServerOptions {
  /** Folder of the built page. */
  readonly page: string;
  /** Design file to follow; absent where the page begins with its own examples. */
  readonly file?: string | undefined;
  /** Class to follow, in the place of a design file. */
  readonly followedClass?: FollowedClass | undefined;
  /** Shop file in the place of the one that the design names. */
  readonly shop?: string | undefined;
  /** 0 takes a free one. */
  readonly port: number;
  readonly patience?: Patience;
  /** First part of every path: whoever does not know it, such as another account of this machine, is refused. By default a new one. */
  readonly secret?: string;
}

/** No other host is asked for anything, no other page may hold this one, no script runs that is not in the folder. */
const HEADERS = {
  "content-security-policy":
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src data: blob:; worker-src blob:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  "x-content-type-options": "nosniff",
  "referrer-policy": "no-referrer",
  "cross-origin-resource-policy": "same-origin",
  "cache-control": "no-store",
};

/** How long a client may take, ms; one that takes longer is cut off, and nobody else notices. */
interface Patience {
  /** For the lines before a request's body. */
  readonly head: number;
  /** For a whole request. */
  readonly request: number;
  /** For a connection on which nothing moves: nothing comes, and what is sent is not read. */
  readonly idle: number;
}
const PATIENCE: Patience = { head: 10_000, request: 30_000, idle: 60_000 };
/** Pages that follow at once: many more than anyone opens, few enough to hold. */
const MOST_STREAMS = 128;
/** After what time a page asks again that has lost its stream, ms. */
const RETRY = 1000;
/** Bytes that a following page may leave unread before it is given up: a word of a change has some sixty. */
const MOST_UNREAD = 16 * 1024;

/** @throws the system's error where the port is taken */
export async function startViewServer(options: ServerOptions): Promise<ViewServer> {
  const { page, file, followedClass, shop, port, patience = PATIENCE, secret = newSecret() } = options;
  const token = newSecret();
  const files = loadPageFiles(page, { file, roster: followedClass?.roster, token });
  const streams = new Set<ServerResponse>();
  const server = createServer(timeoutOptions(patience), async (request, response) => {
    try {
      const own = (server.address() as AddressInfo | null)?.port;
      if (own === undefined) return; // closing
      const { path: target, host } = parseTarget(request);
      const path = pathWithin(target, secret);
      const refused = refuseForeignRequest(request, host, own) ?? (path === undefined ? WITHOUT_SECRET : undefined);
      const follows = file !== undefined || followedClass !== undefined;
      const listens = follows && path === "/followed/changes" && request.method === "GET";
      if (!refused && listens && streams.size < MOST_STREAMS) return addStream(request, response, streams);
      const tooMany = listens ? plainResponse(503, SERVER.tooManyPages) : undefined;
      sendResponse(
        request,
        response,
        refused ?? tooMany ?? (await respond(request, path!, { files, file, followedClass, shop, token })),
      );
    } catch (error) {
      answerFailure(request, response, error);
    }
  });
  server.setTimeout(patience.idle);
  await new Promise<void>((resolve, reject) => server.once("error", reject).listen(port, LOOPBACK, resolve));
  const stop = watchFollowed(options, streams);
  return {
    address: `http://${LOOPBACK}:${(server.address() as AddressInfo).port}/${secret}/`,
    close: () =>
      new Promise((resolve) => {
        stop();
        for (const stream of streams) stream.end();
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/** Word to every page that follows, whenever what it follows is another. */
function watchFollowed({ file, followedClass, shop }: ServerOptions, streams: ReadonlySet<ServerResponse>): () => void {
  if (followedClass) return watchClass(followedClass, () => tell(streams, `event: changed\ndata: class\n\n`));
  return file === undefined ? () => {} : watchDesign(file, shop, () => broadcast(streams, file, shop));
}

/** 192 random bits, as text that an address takes as it is. */
const newSecret = (): string => randomBytes(24).toString("base64url");

const timeoutOptions = ({ head, request }: Patience) => ({
  headersTimeout: head,
  requestTimeout: request,
  connectionsCheckingInterval: Math.min(1000, head),
});

/** A client that has gone wants no answer; anything else is our bug, which the page is sent, and the server lives on. */
function answerFailure(request: IncomingMessage, response: ServerResponse, error: unknown) {
  if (request.destroyed && !request.complete) return response.destroy();
  if (response.headersSent) return response.destroy();
  return sendResponse(
    request,
    response,
    plainResponse(500, SERVER.bug({ message: error instanceof Error ? error.message : String(error) })),
  );
}

interface ServedFiles {
  readonly files: ReadonlyMap<string, HttpResponse>;
  readonly file: string | undefined;
  readonly followedClass: FollowedClass | undefined;
  readonly shop: string | undefined;
  readonly token: string;
}

async function respond(request: IncomingMessage, path: string, at: ServedFiles): Promise<HttpResponse> {
  const isRead = request.method === "GET" || request.method === "HEAD";
  if (at.file !== undefined && path === "/followed/design") {
    if (isRead) return designResponse(at.file, at.shop);
    if (request.method === "PUT") return await writeDesign(request, at.file, at);
  }
  if (at.file !== undefined && path === "/followed/shop" && isRead) return shopResponse(at.file, at.shop);
  if (at.followedClass && path === "/followed/class" && isRead) return classResponse(at.followedClass);
  if (at.followedClass && path === "/followed/plane" && request.method === "PUT")
    return await answerPlaneEdit(request, at.followedClass, at.token);
  if (!isRead) return { ...plainResponse(405, SERVER.readOnly), headers: { allow: "GET, HEAD" } };
  return at.files.get(path) ?? plainResponse(404, SERVER.noFile);
}

function addStream(request: IncomingMessage, response: ServerResponse, streams: Set<ServerResponse>) {
  request.socket.setTimeout(0); // nothing need move while the file stays as it is
  response.writeHead(200, { ...HEADERS, "content-type": "text/event-stream" });
  response.write(`retry: ${RETRY}\n: following\n\n`);
  streams.add(response);
  response.on("close", () => streams.delete(response));
}

/** Word of the file to every page that follows: its new version, or why it cannot be had. One that no longer reads is given up. */
export function broadcast(
  streams: ReadonlySet<Pick<ServerResponse, "write" | "writableLength" | "destroy">>,
  file: string,
  shop?: string,
): void {
  const now = designResponse(file, shop);
  const word =
    now.status === 200
      ? `event: changed\ndata: ${now.headers?.etag}\n\n`
      : `event: lost\ndata: ${JSON.stringify(now.body)}\n\n`;
  tell(streams, word);
}

function tell(streams: ReadonlySet<Pick<ServerResponse, "write" | "writableLength" | "destroy">>, word: string): void {
  for (const stream of streams) {
    stream.write(word);
    if (stream.writableLength > MOST_UNREAD) stream.destroy();
  }
}

function sendResponse(request: IncomingMessage, response: ServerResponse, { status, body, headers }: HttpResponse) {
  const length = body === undefined ? {} : { "content-length": String(Buffer.byteLength(body)) };
  response.writeHead(status, { ...HEADERS, ...length, ...headers });
  response.end(request.method === "HEAD" ? undefined : body);
}
