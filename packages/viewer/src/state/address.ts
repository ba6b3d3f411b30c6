// The design in the page's address, after the #: where it began, what was changed, the stage. Nothing leaves the page.

import { rowsOf, TABLE } from "@lamplane/parameters/table";
import { deflateSync, inflateSync, strFromU8, strToU8 } from "fflate";
import { FIRST_SHOWN, type StageName, stageNamed } from "../protocol/build-steps.ts";
import type { ChangeValue, ParameterChange } from "../protocol/sheet-data.ts";
import { ADDRESS } from "../words/page.ts";

/**
 * Where a design began: an example by name, a text of the maker's own, or the file that `lamplane view` follows, with its
 * text as it was read last, for pages that follow no file; of a class that is followed, with the name of the plane's file.
 */
export type DesignOrigin =
  | { readonly kind: "example"; readonly name: string }
  | { readonly kind: "text"; readonly name: string; readonly text: string }
  | { readonly kind: "followed"; readonly copy?: NamedText; readonly name?: string };

/** A design file's text under its name. */
export interface NamedText {
  readonly name: string;
  readonly text: string;
}

export interface AddressState {
  readonly origin: DesignOrigin | undefined;
  readonly changes: readonly ParameterChange[];
  readonly stage: StageName;
  /** What else stands in the address and was left out, in words. */
  readonly leftOut: readonly string[];
}

/** Characters of text that an address may carry: more than any design that a browser's address bar still takes. */
const LONGEST = 64_000;

/** Keys of an address that are no parameters. */
const OWN_KEYS = ["from", "file", "text", "at", "bench", "step"];
/** Name of a design file whose address holds none. */
const UNNAMED = "shared.yaml";
/** Characters of someone's text that are shown back. */
const LONGEST_QUOTE = 40;

/** @returns undefined for the origin where the address has none, or one that is spoiled */
export function parseAddress(hash: string): AddressState {
  const given = new URLSearchParams(hash.replace(/^#/, ""));
  const rows = rowsOf(TABLE);
  const stage = stageNamed(given.get("at") ?? "") ?? FIRST_SHOWN;
  const changes = rows.flatMap(({ path, row }): ParameterChange[] => {
    const text = given.get(path);
    if (text === null) return [];
    if (text === "" && row.kind === "number" && row.unset) return [[path, undefined]]; // a measured value taken back
    const number = Number(text);
    const value: ChangeValue =
      row.kind === "number" && text !== "auto" && text.trim() !== "" && Number.isFinite(number) ? number : text;
    return [[path, value]];
  });
  const known = new Set([...OWN_KEYS, ...rows.map(({ path }) => path)]);
  const origin = parseOrigin(given);
  const leftOut = [...new Set(given.keys())]
    .filter((key) => !known.has(key))
    .map((key) => ADDRESS.noParameter(quoteForMessage(key)));
  const at = given.get("at");
  if (at !== null && stageNamed(at) === undefined)
    leftOut.push(ADDRESS.noStep({ step: quoteForMessage(at), shown: stage }));
  if (given.has("text") && origin?.kind !== "text" && !(origin?.kind === "followed" && origin.copy))
    leftOut.push(ADDRESS.unreadable);
  return { origin, changes, stage, leftOut };
}

/** Someone's text on one line of a message. */
export function quoteForMessage(text: string): string {
  const clean = text.slice(0, LONGEST_QUOTE + 1).replace(/[\p{C}\u2028\u2029]/gu, "�");
  return clean.length > LONGEST_QUOTE ? `${clean.slice(0, LONGEST_QUOTE)}…` : clean;
}

function parseOrigin(given: URLSearchParams): DesignOrigin | undefined {
  const packed = given.get("text");
  const text = packed === null ? undefined : unpackText(packed);
  const from = given.get("from");
  const followed = given.get("file");
  if (from === "file" && (packed === null || followed !== null))
    return text === undefined
      ? { kind: "followed", ...(followed === null ? {} : { name: followed }) }
      : { kind: "followed", copy: { name: followed ?? UNNAMED, text } };
  if (packed !== null) return text === undefined ? undefined : { kind: "text", name: from ?? UNNAMED, text };
  return from === null ? undefined : { kind: "example", name: from };
}

export function formatAddress({ origin, changes, stage }: Omit<AddressState, "leftOut">): string {
  const parts = new URLSearchParams();
  const own = ownText(origin);
  const packed = own && packText(own.text);
  if (origin?.kind === "followed") {
    parts.set("from", "file");
    const name = isShortEnough(packed) ? own!.name : origin.name;
    if (name !== undefined) parts.set("file", name);
  } else if (origin) parts.set("from", origin.name);
  for (const [path, value] of changes) parts.set(path, value === undefined ? "" : String(value));
  if (stage !== FIRST_SHOWN) parts.set("at", stage);
  if (packed && (origin?.kind === "text" || isShortEnough(packed))) parts.set("text", packed);
  return `#${parts.toString()}`;
}

/** Name of the followed file that an address asks for. */
export const followedName = ({ origin }: Pick<AddressState, "origin">): string | undefined =>
  origin?.kind === "followed" ? (origin.copy?.name ?? origin.name) : undefined;

const isShortEnough = (packed: string | undefined): boolean => packed !== undefined && packed.length <= LONGEST;

/** Whether an address asks for the bench screens. */
export const isBenchAddress = (hash: string): boolean => new URLSearchParams(hash.replace(/^#/, "")).has("bench");

/** Address of the class that is open in this tab. */
export const CLASS_ADDRESS = "#class";

/** Whether an address asks for the class screen. */
export const isClassAddress = (hash: string): boolean => /^#class(&|$)/.test(hash);

/** Address of a build at the bench, at one of its steps; without the build where it is too long for an address. */
export function formatBenchAddress(build: NamedText, step?: string): string {
  const address = designAddress(build, FIRST_SHOWN)?.slice(1);
  return ["#bench", address, step === undefined ? undefined : `step=${step}`].filter(Boolean).join("&");
}

/** The step of the bench that an address names. */
export const benchStepIn = (hash: string): string | undefined =>
  new URLSearchParams(hash.replace(/^#/, "")).get("step") ?? undefined;

const ownText = (origin: DesignOrigin | undefined): NamedText | undefined =>
  origin?.kind === "text" ? origin : origin?.kind === "followed" ? origin.copy : undefined;

/** From # on, the address of a whole design file at a step; undefined where the text is longer than any address holds. */
export function designAddress({ name, text }: NamedText, stage: StageName): string | undefined {
  if (!isShortEnough(packText(text))) return undefined;
  return formatAddress({ origin: { kind: "text", name, text }, changes: [], stage });
}

/** From # on, the address of one plane of the class that `lamplane view` follows. @param name of the plane's file */
export const followedPlaneAddress = (name: string): string =>
  formatAddress({ origin: { kind: "followed", name }, changes: [], stage: FIRST_SHOWN });

function packText(text: string): string {
  const bytes = deflateSync(strToU8(text), { level: 9 });
  return btoa(strFromU8(bytes, true)).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

function unpackText(packed: string): string | undefined {
  if (packed.length > LONGEST) return undefined;
  try {
    const bytes = strToU8(atob(packed.replaceAll("-", "+").replaceAll("_", "/")), true);
    return strFromU8(inflateSync(bytes));
  } catch {
    return undefined;
  }
}
