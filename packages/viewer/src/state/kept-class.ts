// The class that is open in this tab: kept while its planes are looked at one by one.
import type { ClassText } from "../protocol/class-view.ts";
import { isRoster } from "./roster-text.ts";

const KEY = "lamplane-class";

export interface KeptClass {
  readonly files: readonly ClassText[];
  /** Names of its planes' own files. */
  readonly planes: readonly string[];
  /** How many core widths were chosen; the fewest where absent. */
  readonly groups?: number | undefined;
}

/** Undefined where no class is open in this tab. */
export function keptClass(): KeptClass | undefined {
  try {
    const text = sessionStorage.getItem(KEY);
    return text === null ? undefined : (JSON.parse(text) as KeptClass);
  } catch {
    return undefined;
  }
}

/** Name of its roster, without its ending. */
export const keptClassName = (): string | undefined =>
  keptClass()
    ?.files.find(isRoster)
    ?.name.replace(/\.[^.]*$/, "");

/** @returns whether the browser keeps it */
export function keepClass(files: readonly ClassText[], planes: readonly string[] = [], groups?: number): boolean {
  try {
    sessionStorage.setItem(KEY, JSON.stringify({ files, planes, groups } satisfies KeptClass));
    return true;
  } catch {
    return false;
  }
}

/** Puts files beside those of the class, in the place of what had their names. */
export const withFiles = (files: readonly ClassText[], others: readonly ClassText[]): ClassText[] => [
  ...files.filter(({ name }) => !others.some((other) => other.name === name)),
  ...others,
];
