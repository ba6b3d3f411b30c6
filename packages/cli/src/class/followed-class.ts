// A class that a page follows: its roster, base design, shop file and the planes' own files, and word when one of them changes.
import { existsSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { decodeRoster, parseRoster } from "@lamplane/parameters/roster";
import { readDesignBytes } from "../design-file.ts";
import { readContent } from "../file-content.ts";
import { watchFile } from "../file-watcher.ts";
import { contentHash } from "../followed-design.ts";
import { InputRefused } from "../io.ts";
import { shopPath } from "../shop-file.ts";
import { fileTitle } from "../standard-input.ts";
import { type HttpResponse, plainResponse } from "../view-requests.ts";
import { ROSTER_FILE } from "../words/class.ts";
import { planeFile } from "./plane-files.ts";

/** Where a class is. */
export interface FollowedClass {
  readonly roster: string;
  /** The base design, where the roster names none or another is wanted. */
  readonly base?: string | undefined;
  /** Shop file in the place of the one that the base names. */
  readonly shop?: string | undefined;
  /** Folder with the planes' own files. */
  readonly out: string;
}

/** Whether a file is a roster: a table, or YAML with `planes`. @throws InputRefused where it cannot be read */
export const isRosterFile = (file: string): boolean =>
  /\.(csv|tsv)$/i.test(file) || /^[\s{]*["']?planes["']?\s*:/m.test(textOf(readDesignBytes(file)));

const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

export interface ClassPaths {
  readonly roster: string;
  readonly base: string | undefined;
  readonly shop: string | undefined;
  /** Every file of the class that there is, the roster first, the shop file among them. */
  readonly all: readonly string[];
}

/** @throws InputRefused where the roster cannot be read */
export function classPaths({ roster, base, shop: shopFile, out }: FollowedClass): ClassPaths {
  const read = parseRoster(readContent(roster, ROSTER_FILE), fileTitle(roster));
  if (!read.ok) return { roster, base, shop: undefined, all: [roster] };
  const named = read.roster.base;
  const design = base ?? (named === undefined ? undefined : join(dirname(roster), named));
  const own = decodeRoster(read.roster, "mm").map(({ name }) => planeFile(out, name));
  const shop = design && shopPath(design, shopFile);
  const all = [...new Set([roster, design, shop, ...own])];
  return {
    roster,
    base: design,
    shop,
    all: all.filter((path): path is string => path !== undefined && existsSync(path)),
  };
}

/** Name, text and version of every file of the class. */
export function classResponse(followed: FollowedClass): HttpResponse {
  try {
    const { all, shop } = classPaths(followed);
    const files = all.map((path) => {
      const bytes = readDesignBytes(path);
      const isShop = path === shop ? { isShop: true } : {};
      return { name: basename(path), text: textOf(bytes), version: contentHash(bytes), ...isShop };
    });
    return {
      status: 200,
      body: JSON.stringify(files),
      headers: { "content-type": "application/json; charset=utf-8" },
    };
  } catch (error) {
    if (error instanceof InputRefused) return plainResponse(404, error.message);
    throw error;
  }
}

/** @returns what ends the watching */
export function watchClass(followed: FollowedClass, changed: () => void): () => void {
  let stops: (() => void)[] = [];
  const stop = () => {
    for (const each of stops) each();
  };
  const follow = () => {
    stop();
    stops = [...pathsOr(followed), followed.out].map((path) =>
      watchFile(path, () => {
        follow(); // another base may be named, another plane have a file
        changed();
      }),
    );
  };
  follow();
  return stop;
}

/** A roster that is gone for the moment is waited for. */
function pathsOr(followed: FollowedClass): readonly string[] {
  try {
    return classPaths(followed).all;
  } catch (error) {
    if (error instanceof InputRefused) return [followed.roster];
    throw error;
  }
}
