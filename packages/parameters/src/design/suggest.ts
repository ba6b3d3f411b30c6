// What an unknown key was probably meant to be.
import { editDistance } from "../edit-distance.ts";
import { isRow, type Row, rowsOf, TABLE, type TableSection } from "../table/index.ts";
import { sanitizeForMessage } from "../yaml/fault.ts";

const NAMES = collectNames(TABLE);

/**
 * Message for a key that its section does not have.
 * @param alone whether no value stands behind it, as after a comma that was meant as part of a text or number
 */
export function unknownKeyMessage(key: string, path: string, section: TableSection, alone = false): string {
  const comma = /^\d/.test(key) ? "write decimals with a point: 44.5 mm" : "put a text with a comma in it in quotes";
  return `${suggestKey(key, path, section)}${alone ? `; if it follows a comma, ${comma}` : ""}`;
}

function suggestKey(key: string, path: string, section: TableSection): string {
  const said = `"${sanitizeForMessage(key)}" is not a key ${path === "" ? "of a design" : `of ${path}`}`;
  if (NAMES.some((name) => name.path === key)) return `${said}; write it nested, ${nestedKeyText(key)}`;
  const here = nearestWord(key, Object.keys(section));
  const elsewhere = NAMES.filter((name) => name.key === key).map((name) => name.path);
  if (elsewhere.length > 0 && !(here && normalizeWord(here) === normalizeWord(key)))
    return `${said}; it belongs elsewhere: ${elsewhere.join(" or ")}`;
  if (here !== undefined) return `${said}; did you mean "${here}"?`;
  const far = nearestWord(key, [...new Set(NAMES.map((name) => name.key))]);
  const paths = NAMES.filter((name) => name.key === far).map((name) => name.path);
  if (paths.length > 0) return `${said}; did you mean ${paths.join(" or ")}?`;
  return `${said}; known here: ${Object.keys(section).join(", ")}`;
}

/** The word nearest to `word`, where it is near enough to be a slip: one letter in three. */
export const nearestWord = (word: string, known: readonly string[]): string | undefined => slipsOf(word, known)[0];

/** Names that may have been meant, the likeliest first: those that a slip leads away from, then those that hold the word. */
export function nearNames(word: string, known: readonly string[], most = 5): string[] {
  const bare = normalizeWord(word);
  const holding = bare.length < 3 ? [] : known.filter((name) => normalizeWord(name).includes(bare));
  return [...new Set([...slipsOf(word, known), ...holding])].slice(0, most);
}

/** What is said of near names behind one that is not known; nothing where none is near. */
export function nearNamesText(word: string, known: readonly string[]): string {
  const near = nearNames(word, known);
  return near.length === 0 ? "" : `; near to it: ${near.join(", ")}`;
}

function slipsOf(word: string, known: readonly string[]): string[] {
  if (word.length > LONGEST_NAME) return [];
  return known
    .map((name) => ({ name, slips: editDistance(normalizeWord(word), normalizeWord(name)) }))
    .filter(({ name, slips }) => slips <= Math.max(1, Math.floor(name.length / 3)))
    .sort((a, b) => a.slips - b.slips)
    .map(({ name }) => name);
}

const LONGEST_NAME = 40;

const normalizeWord = (word: string): string => word.toLowerCase().replace(/[-_\s.]/g, "");

const nestedKeyText = (path: string): string => {
  const keys = path.split(".");
  return keys.length === 1
    ? `${path}: …`
    : `${keys.slice(0, -1).join(": { ")}: { ${keys.at(-1)}: … ${"}".repeat(keys.length - 1)}`;
};

function collectNames(section: TableSection, prefix = ""): { key: string; path: string }[] {
  return Object.entries(section as Record<string, Row | TableSection>).flatMap(([key, entry]) => [
    { key, path: prefix + key },
    ...(isRow(entry) ? [] : collectNames(entry, `${prefix}${key}.`)),
  ]);
}

/** Every dotted path of the table, for messages about one that does not exist. */
export const knownPaths = (): string[] => rowsOf(TABLE).map(({ path }) => path);
