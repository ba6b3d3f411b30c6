// An address as a code to scan.
import encodeQR from "qr";

/** Modules of a code, true where it is dark, its white margin with them. */
export type Code = readonly (readonly boolean[])[];

/** Largest version made: 137 modules a side. A phone still reads it off a screen or a printed card. */
const LARGEST = 30;
/** Modules of white round a code. ISO/IEC 18004:2015, 6.3.8, from memory */
const MARGIN = 4;
/** Bytes that it holds at the lowest correction. ISO/IEC 18004:2015, table 7, from memory */
export const MOST_CHARACTERS = 1732;

/** @returns undefined where the text is longer than a code that a phone reads well */
export function makeCode(text: string): Code | undefined {
  if (new TextEncoder().encode(text).length > MOST_CHARACTERS) return undefined;
  const code = encodeQR(text, "raw", { ecc: "low", encoding: "byte", border: MARGIN });
  return (code.length - 2 * MARGIN - 17) / 4 > LARGEST ? undefined : code;
}
