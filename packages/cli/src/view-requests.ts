// Whose request it is, what it is for and what it brings: only this machine's own page is answered, and only so much is read.
import { timingSafeEqual } from "node:crypto";
import type { IncomingMessage } from "node:http";
import { LARGEST_FILE } from "@lamplane/parameters/design";
import { SERVER } from "./words/view.ts";

export const LOOPBACK = "127.0.0.1";

export interface HttpResponse {
  readonly status: number;
  readonly body?: string | Uint8Array;
  readonly headers?: Readonly<Record<string, string>>;
}

/** @param body a line */
export const plainResponse = (status: number, body: string): HttpResponse => ({
  status,
  body: `${body}\n`,
  headers: { "content-type": "text/plain; charset=utf-8" },
});

/**
 * What a request is for. Its path is taken as it stands: nothing is decoded or tidied, since every path that is answered is plain.
 * @see RFC 9112, 3.2.2: a whole address in the request line stands over the Host line; 3.2: two Host lines are no request
 */
export function parseTarget({ url = "", headers, rawHeaders }: IncomingMessage): {
  path: string;
  host: string | undefined;
} {
  const whole = /^http:\/\/([^/?#]*)(.*)$/i.exec(url);
  const hosts = rawHeaders.filter((name, i) => i % 2 === 0 && name.toLowerCase() === "host").length;
  return {
    path: (whole ? whole[2]! || "/" : url).replace(/[?#].*$/s, ""),
    host: hosts > 1 ? undefined : whole ? whole[1] : headers.host,
  };
}

/** A request for another host reached us by a name that someone else points here; another page's request is not ours. */
export function refuseForeignRequest(
  { headers: { origin } }: IncomingMessage,
  host: string | undefined,
  port: number,
): HttpResponse | undefined {
  const own = [`${LOOPBACK}:${port}`, `localhost:${port}`];
  if (host === undefined || !own.includes(host)) return plainResponse(421, SERVER.elsewhere);
  if (origin !== undefined && !own.some((name) => origin === `http://${name}`))
    return plainResponse(403, SERVER.foreign);
  return undefined;
}

/** Answer to a request whose path lacks the secret: the same for every path, so that nothing shows what is there. */
export const WITHOUT_SECRET = plainResponse(403, SERVER.withoutSecret);

/** The path behind the secret that begins it; undefined where another or none begins it. */
export function pathWithin(target: string, secret: string): string | undefined {
  const [, first = "", path] = /^\/([^/]*)(\/.*)?$/s.exec(target) ?? [];
  return path !== undefined && isSameSecret(first, secret) ? path : undefined;
}

/** Whether a secret is the one given out; how much of it is right shows in no time. */
export function isSameSecret(given: string | string[] | undefined, token: string): boolean {
  if (typeof given !== "string") return false;
  const [a, b] = [Buffer.from(given), Buffer.from(token)];
  return a.length === b.length && timingSafeEqual(a, b);
}

/** The body's text; undefined for one that is too large, of which no more is kept. @throws where it breaks off */
export function readBody(request: IncomingMessage): Promise<string | undefined> {
  return new Promise((resolve, reject) => {
    const pieces: Buffer[] = [];
    let size = 0;
    const announced = Number(request.headers["content-length"] ?? 0);
    if (announced > LARGEST_FILE) return resolve(undefined);
    request.on("data", (piece: Buffer) => {
      size += piece.length;
      if (size <= LARGEST_FILE) pieces.push(piece);
      else resolve(undefined); // what still comes is read past, or cut off when its time is over
    });
    request.on("end", () => resolve(Buffer.concat(pieces).toString("utf8")));
    request.on("error", reject);
  });
}
