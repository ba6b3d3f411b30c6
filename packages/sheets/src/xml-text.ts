// Text as XML may carry it, in an element or an attribute.

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Characters that XML 1.0 forbids, which no escape makes allowed, become a visible box. @see W3C, XML 1.0 (2008), 2.2 */
export const escapeXml = (text: string): string =>
  text
    .replace(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, "□")
    .replace(/[&<>"]/g, (character) => ESCAPES[character]!);

export const unescapeXml = (text: string): string =>
  text.replace(/&(?:amp|lt|gt|quot);/g, (code) => Object.keys(ESCAPES).find((c) => ESCAPES[c] === code)!);
