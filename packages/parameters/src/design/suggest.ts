// What an unknown key was probably meant to be.
import { editDistance } from "../edit-distance.ts";
import { isRow, LIST_NAMES, type Row, rowsOf, TABLE, type TableSection } from "../table/index.ts";
import { KEY_FAULT } from "../words/design-faults.ts";
import { sanitizeForMessage } from "../yaml/fault.ts";

const NAMES = [...collectNames(TABLE), ...LIST_NAMES.map((name) => ({ key: name, path: name }))];

/**
 * Message for a key that its section does not have.
 * @param alone whether no value stands behind it, as after a comma that was meant as part of a text or number
 */
export function unknownKeyMessage(key: string, path: string, section: TableSection, alone = false): string {
  const comma = alone ? KEY_FAULT.afterComma({ isNumber: /^\d/.test(key) }) : "";
  return `${KEY_FAULT.unknown({ key: sanitizeForMessage(key), section: path })}${suggestKey(key, keysOf(path, section))}${comma}`;
}

/** Keys that may stand in a section; beside a design's sections stand its lists. */
const keysOf = (path: string, section: TableSection): string[] => [
  ...Object.keys(section),
  ...(path === "" ? LIST_NAMES : []),
];

/** @param known keys of the section in which it stands */
function suggestKey(key: string, known: readonly string[]): string {
  if (NAMES.some((name) => name.path === key)) return KEY_FAULT.nested({ as: nestedKeyText(key) });
  const slip = nearestWord(key, known);
  if (slip !== undefined && normalizeWord(slip) === normalizeWord(key)) return KEY_FAULT.near({ names: [slip] });
  const longer = namesHolding(key, known);
  const here = longer.length > 0 ? longer : slip === undefined ? [] : [slip];
  const elsewhere = NAMES.filter((name) => name.key === key).map((name) => name.path);
  if (here.length > 0) return KEY_FAULT.near({ names: here.length > 1 ? here : [...here, ...elsewhere] });
  if (elsewhere.length > 0) return KEY_FAULT.elsewhere({ paths: elsewhere });
  const far = nearestWord(key, [...new Set(NAMES.map((name) => name.key))]);
  const paths = NAMES.filter((name) => name.key === far).map((name) => name.path);
  return paths.length > 0 ? KEY_FAULT.near({ names: paths }) : KEY_FAULT.known({ keys: known });
}

/** The word nearest to `word`, where it is near enough to be a slip: one letter in three. */
export const nearestWord = (word: string, known: readonly string[]): string | undefined => slipsOf(word, known)[0];

/** Names that may have been meant, the likeliest first: those that a slip leads away from, then those that hold the word. */
export function nearNames(word: string, known: readonly string[], most = 5): string[] {
  return [...new Set([...slipsOf(word, known), ...namesHolding(word, known)])].slice(0, most);
}

/** Names of which a word is a part; none for fewer than three letters. */
function namesHolding(word: string, known: readonly string[]): string[] {
  const bare = normalizeWord(word);
  return bare.length < 3 ? [] : known.filter((name) => normalizeWord(name).includes(bare));
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
