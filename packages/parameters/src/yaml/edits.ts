// Changes to a text by offsets, worked out on the text as it is and made all at once: every other byte stays.

/** What stands between two offsets is replaced; `start` = `end` only inserts. */
export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/**
 * The text with all edits made. Edits at one offset go in by their order.
 * @throws Error where two edits change the same stretch, or one lies outside the text (our bug)
 */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  const pieces: string[] = [];
  let done = 0;
  for (const edit of edits.toSorted((a, b) => a.start - b.start || a.end - b.end)) {
    if (edit.start < done || edit.end < edit.start || edit.end > text.length)
      throw new Error(
        `an edit of ${edit.start} to ${edit.end} does not fit behind ${done} in ${text.length} characters`,
      );
    pieces.push(text.slice(done, edit.start), edit.text);
    done = edit.end;
  }
  return pieces.join("") + text.slice(done);
}
