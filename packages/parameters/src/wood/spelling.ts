// Names of woods compared as people write them: order, case, accents, spaces and punctuation carry no meaning.
import { editDistance } from "../edit-distance.ts";

/** Names offered for one that is not known: as many as can be read at a glance. */
const OFFERED = 3;

/** Whether two names are made of the same words, run together or apart (`Honeylocust`, `honey locust`). */
export function haveSameWords(a: string, b: string): boolean {
  const [left, right] = [wordsOf(a), wordsOf(b)];
  return left.join("") === right.join("") || sortLetters(left) === sortLetters(right);
}

/** The names that come nearest to the one given, best first; none for a name without a letter. */
export function nearestNames(name: string, known: readonly string[]): readonly string[] {
  const words = wordsOf(name);
  if (words.length === 0) return [];
  return known
    .map((candidate) => ({ candidate, distance: nameDistance(words, wordsOf(candidate)) }))
    .sort((a, b) => a.distance - b.distance)
    .slice(0, OFFERED)
    .map(({ candidate }) => candidate);
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
