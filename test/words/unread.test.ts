// A sentence that nothing reads is found: wording.md would go on listing what no maker ever sees.
import { expect, test } from "vitest";
import { unreadSentences } from "../support/word-uses.ts";

test("every sentence of words/ is read by some source", () => {
  expect(unreadSentences()).toEqual([]);
});

test("a key, a function and a table that nothing reads are noticed; what is chosen by a variable is not", () => {
  const files = {
    "packages/a/src/words/texts.ts": `
      export const TEXTS = { read: "x", unread: "y", inner: { taken: "z", left: "w" } } as const;
      export const CHOSEN = { "by-name": "x", stale: "y" };
      export const unreadSentence = () => "x";
      export function readSentence() { return "y"; }`,
    "packages/a/src/use.ts": `
      import { CHOSEN, readSentence, TEXTS } from "./words/texts.ts";
      const { taken } = TEXTS.inner;
      export const use = (name: "by-name") => [TEXTS.read, taken, CHOSEN[name], readSentence()];`,
  };
  expect(unreadSentences(files)).toEqual([
    "a.TEXTS.unread",
    "a.TEXTS.inner.left",
    "a.CHOSEN.stale",
    "a.unreadSentence",
  ]);
});
