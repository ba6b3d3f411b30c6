// Builds that the browser keeps, newest first: each with its text, what it was before each entry, and the step that is shown.

/** What a build was before an entry, and what was entered, in words. */
export interface PastText {
  readonly text: string;
  readonly entry: string;
}

export interface KeptBuild {
  readonly id: string;
  /** Name of its file. */
  readonly name: string;
  readonly text: string;
  /** Oldest first. */
  readonly past: readonly PastText[];
  /** Title of the last step that something was entered at. */
  readonly reached?: string;
}

const KEY = "lamplane-builds";
const MOST = 24;
const MOST_PAST = 60;

/** Nothing where the browser keeps nothing, or what it keeps is no list of ours. */
export function keptBuilds(): readonly KeptBuild[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? "[]");
    return Array.isArray(kept) ? kept.filter(isKeptBuild) : [];
  } catch {
    return [];
  }
}

function isKeptBuild(value: unknown): value is KeptBuild {
  const { id, name, text, past } = (value ?? {}) as Partial<KeptBuild>;
  return typeof id === "string" && typeof name === "string" && typeof text === "string" && Array.isArray(past);
}

/**
 * Keeps a build as the newest; the oldest of more than MOST goes. Where the browser has no room for all, the way back goes
 * first, of the others and then of this one. @returns whether its text is kept
 */
export function keepBuild(build: KeptBuild): boolean {
  const others = keptBuilds()
    .filter(({ id }) => id !== build.id)
    .slice(0, MOST - 1);
  const [own, bare] = [{ ...build, past: build.past.slice(-MOST_PAST) }, others.map(withoutPast)];
  return write([own, ...others]) || write([own, ...bare]) || write([withoutPast(own), ...bare]);
}

const withoutPast = (build: KeptBuild): KeptBuild => ({ ...build, past: [] });

function write(builds: readonly KeptBuild[]): boolean {
  try {
    localStorage.setItem(KEY, JSON.stringify(builds));
    return true;
  } catch {
    return false;
  }
}

/** The kept build whose text that is, so that a reload finds the way back too. */
export const keptWithText = (text: string): KeptBuild | undefined => keptBuilds().find((build) => build.text === text);

/** Other builds whose file has that name, and in which something was entered. */
export const keptByName = (name: string, id: string): readonly KeptBuild[] =>
  keptBuilds().filter((build) => build.name === name && build.id !== id && build.past.length > 0);

export const newBuildId = (): string => crypto.getRandomValues(new Uint32Array(2)).join("-");
