// A sentence with examples of what it is made of, so that all of them can be listed and read.

/** Makes its text from data; `examples` are such data, by which the list of sentences shows it. */
export type Sentence<Data> = ((data: Data) => string) & { readonly examples: readonly Data[] };

/** A sentence from a function and at least one example of its data. */
export const sentence = <Data>(
  text: (data: Data) => string,
  ...examples: readonly [NoInfer<Data>, ...NoInfer<Data>[]]
): Sentence<Data> => Object.assign((data: Data) => text(data), { examples });

/** So many of a thing: "1 check", "2 checks". */
export const countText = (count: number, singular: string, plural = `${singular}s`): string =>
  `${count} ${count === 1 ? singular : plural}`;

/** Names in a row: "a", "a and b", "a, b and c". */
export const listText = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;

/** A unit behind "in", where its sign would read twice. */
export const UNIT_NAMES = { mm: "mm", in: "inches" } as const;
