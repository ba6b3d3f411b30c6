// What the sheet begins with: what the address asks for where there is such a thing, and in words what there is not.

import { ADDRESS } from "../words/page.ts";
import { type AddressState, type DesignOrigin, quoteForMessage } from "./address.ts";

/** What a page has to begin with. */
export interface AvailableOrigins {
  /** Names of its examples, the one to begin with first. */
  readonly examples: readonly string[];
  /** Whether `lamplane view` serves it with a file to follow. */
  readonly follows: boolean;
}

export function initialOrigin(wanted: DesignOrigin | undefined, { examples, follows }: AvailableOrigins): DesignOrigin {
  if (wanted?.kind === "text") return wanted;
  if (wanted?.kind === "example" && examples.includes(wanted.name)) return wanted;
  if (wanted?.kind === "followed" && wanted.copy && !follows) return { kind: "text", ...wanted.copy };
  return follows ? { kind: "followed" } : { kind: "example", name: examples[0]! };
}

/** All that an address asked for and the sheet does not have. */
export function leftOutTexts(
  { origin, leftOut }: AddressState,
  { examples, follows }: AvailableOrigins,
): readonly string[] {
  if (origin?.kind === "example" && !examples.includes(origin.name))
    return [...leftOut, ADDRESS.noExample(quoteForMessage(origin.name))];
  if (origin?.kind !== "followed" || origin.copy || follows) return leftOut;
  return [...leftOut, ADDRESS.ofFile];
}
