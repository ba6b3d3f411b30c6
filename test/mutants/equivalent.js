// Mutants that nobody can tell from the source, and why: what is replaced stands between « and » in its line.
// `run.js` tries them like all others, refuses an entry that a test does see, and one that no mutant fits any more.

/** @type {readonly { file: string, line: string, made: string, why: string }[]} */
export const EQUIVALENT = [];
