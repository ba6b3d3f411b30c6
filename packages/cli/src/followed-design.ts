// The design that a page follows and, where it holds the token, writes; with the shop file that goes with it.
import { createHash } from "node:crypto";
import type { IncomingMessage } from "node:http";
import { basename } from "node:path";
import { faultText, LARGEST_FILE, readDesign } from "@lamplane/parameters/design";
import { readDesignBytes } from "./design-file.ts";
import { faultLines } from "./file-content.ts";
import { replaceFile } from "./file-replacement.ts";
import { watchFile } from "./file-watcher.ts";
import { shopAccess, shopPath, shopSourceOf } from "./shop-file.ts";
import { type HttpResponse, isSameSecret, plainResponse, readBody } from "./view-requests.ts";
import { SERVER } from "./words/view.ts";

/** Word whenever the design is another than before, or the shop file that goes with it. */
export function watchDesign(file: string, shop: string | undefined, changed: () => void): () => void {
  let followed: string | undefined;
  let stopShop = () => {};
  const followShop = () => {
    const path = shopPath(file, shop);
    if (path === followed) return;
    stopShop();
    followed = path;
    stopShop = path === undefined ? () => {} : watchFile(path, changed);
  };
  followShop();
  const stop = watchFile(file, () => {
    followShop();
    changed();
  });
  return () => {
    stop();
    stopShop();
  };
}

/** Version of a file, as an entity tag. */
export const contentHash = (content: Uint8Array): string =>
  `"${createHash("sha256").update(content).digest("hex").slice(0, 32)}"`;

/** The design as it is on the disk, with its version; 404 with words where it cannot be read. */
export function designResponse(file: string, shop: string | undefined): HttpResponse {
  try {
    const body = readDesignBytes(file);
    const etag = versionOf(body, file, shop);
    return { status: 200, body, headers: { "content-type": "text/yaml; charset=utf-8", etag } };
  } catch (error) {
    return plainResponse(404, (error as Error).message);
  }
}

/** Tells one state of design and shop file from another. */
function versionOf(design: Uint8Array, file: string, shop: string | undefined): string {
  const source = shopSourceOf(file, shop)?.source;
  return contentHash(source === undefined ? design : Buffer.concat([design, Buffer.from([0]), Buffer.from(source)]));
}

/** The shop file that goes with the design, as it is on the disk; no content where there is none, or it cannot be read. */
export function shopResponse(file: string, shop: string | undefined): HttpResponse {
  const found = shopSourceOf(file, shop);
  if (!found) return { status: 204 };
  const body = JSON.stringify({ file: basename(found.file), source: Buffer.from(found.source).toString("utf8") });
  return { status: 200, body, headers: { "content-type": "application/json; charset=utf-8" } };
}

/** Only the page itself, which holds the token, may write; only over the version that it read; only a sound design. */
export async function writeDesign(
  request: IncomingMessage,
  file: string,
  { shop, token }: { readonly shop: string | undefined; readonly token: string },
): Promise<HttpResponse> {
  if (!isSameSecret(request.headers["x-lamplane-token"], token) || request.headers.origin === undefined)
    return plainResponse(403, SERVER.onlyFollowing);
  const text = await readBody(request);
  if (text === undefined) return plainResponse(413, SERVER.tooLarge({ most: LARGEST_FILE }));
  const reading = readDesign(text, basename(file), shopAccess(file, shop));
  if (!reading.ok) return plainResponse(422, SERVER.notWritten({ faults: faultLines(reading.faults, faultText) }));
  try {
    if (versionOf(readDesignBytes(file), file, shop) !== request.headers["if-match"])
      return plainResponse(412, SERVER.changed);
    replaceFile(file, text);
    return { status: 204, headers: { etag: versionOf(readDesignBytes(file), file, shop) } };
  } catch (error) {
    return plainResponse(500, (error as Error).message);
  }
}
