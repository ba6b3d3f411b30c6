// How every text is parsed.

/** Doubled keys are found by who decodes: the parser's own way is slow on a long file. */
export const PARSE_OPTIONS = { schema: "core", prettyErrors: false, uniqueKeys: false, merge: false } as const;
