// What the page of one plane of a class sends to be written: whose request it is, whether it read the files as they are, what it holds.
import type { IncomingMessage } from "node:http";
import { basename } from "node:path";
import { WriteError } from "@lamplane/export/write-error";
import { LARGEST_FILE } from "@lamplane/parameters/design";
import type { RosterChange } from "@lamplane/parameters/roster";
import { decodeDesignBytes, readDesignBytes } from "../design-file.ts";
import { contentHash } from "../followed-design.ts";
import { InputRefused } from "../io.ts";
import { type HttpResponse, isSameSecret, plainResponse, readBody } from "../view-requests.ts";
import { SERVER } from "../words/view.ts";
import { classPaths, type FollowedClass } from "./followed-class.ts";
import { type PlaneEdit, writePlaneEdit } from "./plane-edit.ts";
import { planeFile } from "./plane-files.ts";

interface EditRequest extends PlaneEdit {
  /** Every file of the class as the page read it: its name and its version. */
  readonly read: readonly (readonly [name: string, version: string])[];
}

/** Only the page itself, which holds the token, may write; only over the files that it read; only what is allowed. */
export async function answerPlaneEdit(
  request: IncomingMessage,
  followed: FollowedClass,
  token: string,
): Promise<HttpResponse> {
  if (!isSameSecret(request.headers["x-lamplane-token"], token) || request.headers.origin === undefined)
    return plainResponse(403, SERVER.onlyFollowing);
  const body = await readBody(request);
  if (body === undefined) return plainResponse(413, SERVER.tooLarge({ most: LARGEST_FILE }));
  const edit = parseEdit(body);
  if (!edit) return plainResponse(400, SERVER.noEdit);
  try {
    return writeEdit(edit, followed);
  } catch (error) {
    if (error instanceof InputRefused) return plainResponse(422, SERVER.notWritten({ faults: error.message }));
    if (error instanceof WriteError) return plainResponse(500, error.message);
    throw error;
  }
}

function writeEdit(edit: EditRequest, followed: FollowedClass): HttpResponse {
  const { roster, base, shop } = classPaths(followed);
  const own = planeFile(followed.out, edit.plane);
  const paths = [roster, base, shop, own].flatMap((path) => path ?? []);
  if (!base || !paths.every((path) => isAsRead(path, edit.read))) return plainResponse(412, SERVER.changed);
  const design = decodeDesignBytes(readDesignBytes(base), base, followed.shop);
  const files = writePlaneEdit(edit, { roster, base: design, out: followed.out });
  return {
    status: 200,
    body: JSON.stringify(files),
    headers: { "content-type": "application/json; charset=utf-8" },
  };
}

/** A file that is not there was not there either. */
function isAsRead(path: string, read: EditRequest["read"]): boolean {
  const versions = read.flatMap(([name, version]) => (name === basename(path) ? [version] : []));
  const now = versionOnDisk(path);
  return now === undefined ? versions.length === 0 : versions.includes(now);
}

function versionOnDisk(path: string): string | undefined {
  try {
    return contentHash(readDesignBytes(path));
  } catch (error) {
    if (error instanceof InputRefused) return undefined;
    throw error;
  }
}

/** Undefined for what is no edit. */
function parseEdit(body: string): EditRequest | undefined {
  let value: unknown;
  try {
    value = JSON.parse(body);
  } catch {
    return undefined;
  }
  const { plane, changes, text, read } = (value ?? {}) as Record<string, unknown>;
  if (typeof plane !== "string" || typeof text !== "string" || !isPairs(changes) || !isPairs(read)) return undefined;
  if (!changes.every(([path, to]) => typeof path === "string" && isValue(to))) return undefined;
  if (!read.every((pair) => pair.every((each) => typeof each === "string"))) return undefined;
  return {
    plane,
    text,
    changes: changes.map(([path, to]) => [path, to === null ? undefined : to] as RosterChange),
    read: read as unknown as EditRequest["read"],
  };
}

const isPairs = (value: unknown): value is readonly (readonly [unknown, unknown])[] =>
  Array.isArray(value) && value.every((pair) => Array.isArray(pair) && pair.length === 2);

const isValue = (value: unknown): boolean => value === null || typeof value === "string" || Number.isFinite(value);
