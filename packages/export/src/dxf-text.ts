// Text as a DXF string: one line of printable ASCII, in which no character can be taken for a command.

/**
 * A note's words as a TEXT entity may carry them. Control characters become a space, "%%" (which begins a symbol code) is parted,
 * a caret is written "^ " and a backslash, which could begin a code, by its number, as is everything outside ASCII.
 * @see Autodesk, DXF reference, "String group codes in DXF files": \U+XXXX, and ^ before a control character
 * @throws our bug: a note without words
 */
export function encodeDxfString(words: string): string {
  const oneLine = words.replace(/\p{Cc}+/gu, " ").trim();
  if (oneLine === "") throw new Error("a note without words in a drawing");
  return oneLine
    .replace(/%(?=%)/g, "% ")
    .replace(/\^/g, "^ ")
    .replace(/[^\x20-\x7e]|\\/gu, encodeCharacter);
}

/** Code of a character that four hexadecimal digits reach; any other is shown as not known. */
function encodeCharacter(character: string): string {
  const code = character.codePointAt(0)!;
  const drawable = code > 0xffff || (code >= 0xd800 && code < 0xe000) ? 0xfffd : code;
  return `\\U+${drawable.toString(16).toUpperCase().padStart(4, "0")}`;
}
