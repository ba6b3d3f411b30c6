// Names of woods compared as people write them: order, case, accents, spaces and punctuation carry no meaning.
import { editDistance } from "../edit-distance.ts";

/** Names offered for one that is not known: as many as can be read at a glance. */
const OFFERED = 3;

/** Whether a name is made of the same words as another, run together or apart (`Honeylocust`, `honey locust`). */
export function hasWordsOf(name: string): (other: string) => boolean {
  const words = wordsOf(name);
  const [joined, sorted] = [words.join(""), sortLetters(words)];
  return (other) => {
    const others = wordsOf(other);
    return others.join("") === joined || sortLetters(others) === sorted;
  };
}

/** The names that are near to the one given, best first; none where nothing is, for a far-fetched name helps nobody. */
export function nearestWoodNames(name: string, known: readonly string[]): readonly string[] {
  const words = wordsOf(name);
  if (words.length === 0) return [];
  return known
    .filter((candidate) => isNear(words, candidate))
    .map((candidate) => ({ candidate, distance: nameDistance(words, wordsOf(candidate)) }))
    .sort((a, b) => a.distance - b.distance)
    .slice(0, OFFERED)
    .map(({ candidate }) => candidate);
}

/** Share of a word's letters that a slip may touch. */
const SLIP = 0.3;

/** Whether a word means the same kind of wood (what stands before the comma), or the whole name is one slip away. */
function isNear(words: readonly string[], candidate: string): boolean {
  const kind = wordsOf(candidate.split(",")[0]!);
  const whole = wordDistance(words.join(""), wordsOf(candidate).join("")) <= SLIP;
  return whole || (kind.length === 1 && words.some((word) => wordDistance(word, kind[0]!) <= SLIP));
}

function wordsOf(name: string): string[] {
  const plain = name.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  return plain.match(/[a-z0-9]+/g) ?? [];
}

const sortLetters = (words: readonly string[]): string => [...words].sort().join("");

/** A word of the name that nothing answers counts most, a word of the candidate that nothing asked for a little. */
function nameDistance(words: readonly string[], candidate: readonly string[]): number {
  const unanswered = (from: readonly string[], to: readonly string[]) =>
    from.reduce((sum, word) => sum + Math.min(...to.map((other) => wordDistance(word, other))), 0);
  return unanswered(words, candidate) + unanswered(candidate, words) / 4;
}

/** 0 for the same word, 1 for words with nothing in common. */
const wordDistance = (a: string, b: string): number => editDistance(a, b) / Math.max(a.length, b.length);
