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
  const complaint = `"${sanitizeForMessage(key)}" is not a key ${path === "" ? "of a design" : `of ${path}`}`;
  if (NAMES.some((name) => name.path === key)) return `${complaint}; write it nested, ${nestedKeyText(key)}`;
  const here = nearestWord(key, Object.keys(section));
  const elsewhere = NAMES.filter((name) => name.key === key).map((name) => name.path);
  if (elsewhere.length > 0 && !(here && normalizeWord(here) === normalizeWord(key)))
    return `${complaint}; it belongs elsewhere: ${elsewhere.join(" or ")}`;
  if (here !== undefined) return `${complaint}; did you mean "${here}"?`;
  const far = nearestWord(key, [...new Set(NAMES.map((name) => name.key))]);
  const paths = NAMES.filter((name) => name.key === far).map((name) => name.path);
  if (paths.length > 0) return `${complaint}; did you mean ${paths.join(" or ")}?`;
  return `${complaint}; known here: ${Object.keys(section).join(", ")}`;
}

/** The word nearest to `word`, where it is near enough to be a slip: one letter in three. */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  if (word.length > 40) return undefined;
  const [best] = known
    .map((name) => ({ name, slips: editDistance(normalizeWord(word), normalizeWord(name)) }))
    .sort((a, b) => a.slips - b.slips);
  return best && best.slips <= Math.max(1, Math.floor(best.name.length / 3)) ? best.name : undefined;
}

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
