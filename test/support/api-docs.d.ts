/** Packages that others import, lowest first. */
export const DOCUMENTED: readonly string[];
/** The reference of every documented package, a page each. @throws where the packages are not built */
export function apiTexts(): { path: string; text: string }[];
