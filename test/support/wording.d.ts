export function sentencesOf(key: string, words: unknown): [key: string, sentence: string][];
export function wordingTexts(): { readonly path: string; readonly text: string }[];
