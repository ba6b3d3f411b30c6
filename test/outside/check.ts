// One check against something outside the project: what it is, whose value it is, ours, and how near they must be.
import type { OutsideProgram } from "../support/outside-programs.ts";

export type CheckedValue = number | string;
type Later<T> = T | Promise<T>;

/** How the value got here. A work is `read`, read where another page `quoted` it, or recalled `from memory`. */
export type Provenance =
  | "read"
  | "quoted"
  | "from memory"
  | "worked apart" // by a published formula, by hand or in another program than ours
  | "library"
  | "common practice";

export interface OutsideCheck {
  readonly what: string;
  /** Work with its section, table or page; a library by its name; or `no published source`. */
  readonly from: string;
  readonly told: Provenance;
  readonly unit?: string;
  /** Their value: typed from the source, or asked of a library. */
  readonly theirs: CheckedValue | (() => Later<CheckedValue>);
  readonly ours: () => Later<CheckedValue>;
  /** How far apart two numbers may lie; words are equal or not. */
  readonly within?: number;
  /** `within` is a share of theirs. */
  readonly relative?: true;
  /** A program without which theirs cannot be had. */
  readonly needs?: OutsideProgram;
}

export interface Subject {
  readonly name: string;
  readonly checks: readonly OutsideCheck[];
}

export interface Outcome {
  readonly check: OutsideCheck;
  readonly theirs: CheckedValue;
  readonly ours: CheckedValue;
  readonly agrees: boolean;
}

/** Both values, and whether they agree. No number at all agrees with nothing. */
export async function outcomeOf(check: OutsideCheck): Promise<Outcome> {
  const theirs = typeof check.theirs === "function" ? await check.theirs() : check.theirs;
  const ours = await check.ours();
  return { check, theirs, ours, agrees: agree(theirs, ours, check) };
}

function agree(theirs: CheckedValue, ours: CheckedValue, { within, relative }: OutsideCheck): boolean {
  if (typeof theirs === "string" || typeof ours === "string") return theirs === ours;
  if (within === undefined) return theirs === ours;
  return Math.abs(theirs - ours) <= within * (relative ? Math.abs(theirs) : 1);
}

/** Their value of a row, by what it is: for a test that goes on from it, so that it stands in one place. */
export function theirsOf(checks: readonly OutsideCheck[], what: string): number {
  const [found, ...more] = checks.filter((check) => check.what === what);
  if (found === undefined || more.length > 0)
    throw new Error(`${more.length + (found ? 1 : 0)} rows are called "${what}"`);
  if (typeof found.theirs !== "number") throw new Error(`"${what}" is no typed number`);
  return found.theirs;
}

const HEAD = ["| what | from | told | theirs | ours | within |", "| --- | --- | --- | --- | --- | --- |"];

/** The document that lists every outcome. Ours is written with as many digits as can count; a check that fails says so. */
export function documentOf(
  subjects: readonly { readonly name: string; readonly outcomes: readonly Outcome[] }[],
): string {
  const all = subjects.flatMap(({ outcomes }) => outcomes);
  const told = [...new Set(all.map(({ check }) => check.told))].map((each) => {
    const count = all.filter(({ check }) => check.told === each).length;
    return `${count} ${each}`;
  });
  const failing = all.filter(({ agrees }) => !agrees).length;
  return [
    "# Outside checks",
    "",
    "Written by `pnpm outside`; the rows are data in `test/outside/`, and every test run computes them anew.",
    "",
    `${all.length} checks against works, libraries and the trade: ${told.join(", ")}. ${failing === 0 ? "All agree." : `${failing} do not agree.`}`,
    "",
    "*read* in the source named; *quoted* in the page named, of a work; *from memory* until compared with the original;",
    "*worked apart* from a published formula, by hand or in another program; *library*: asked of it in the same run.",
    "`within 1 : …` is a share of theirs; no `within` means equal.",
    ...subjects.flatMap(({ name, outcomes }) => ["", `## ${name}`, "", ...HEAD, ...outcomes.map(rowOf)]),
    "",
  ].join("\n");
}

function rowOf({ check, theirs, ours, agrees }: Outcome): string {
  const { what, from, told, unit = "", within, relative } = check;
  const allowed = within === undefined ? "" : relative ? `1 : ${shown(1 / within)}` : shown(within);
  const decimals = decimalsOf(check, theirs);
  const cells = [
    what,
    from,
    told,
    `${figure(theirs, decimals)}${unit ? ` ${unit}` : ""}`,
    `${figure(ours, decimals)}${agrees ? "" : " **does not agree**"}`,
    allowed,
  ];
  return `| ${cells.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;
}

/** Decimals from which a number is written as short as it is. */
const EXACT = 9;

/** Digits behind the point that the tolerance lets count, one more than it does itself; undefined where all do. */
function decimalsOf({ within, relative }: OutsideCheck, theirs: CheckedValue): number | undefined {
  if (within === undefined || within === 0 || typeof theirs === "string") return undefined;
  const absolute = within * (relative ? Math.abs(theirs) : 1);
  return Math.min(15, Math.max(0, Math.ceil(-Math.log10(absolute))));
}

function figure(value: CheckedValue, decimals: number | undefined): string {
  if (typeof value === "string") return value === "" ? "(nothing)" : value;
  if (decimals === undefined) return String(value);
  return decimals < EXACT
    ? (Number(value.toFixed(decimals)) + 0).toFixed(decimals)
    : String(Number(value.toFixed(EXACT)));
}

const shown = (value: number): string => String(Number(value.toPrecision(2)));
