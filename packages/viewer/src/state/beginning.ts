// What the sheet begins with: what the address asks for where there is such a thing, and in words what there is not.
import { type Addressed, type Beginning, quoted } from "./address.ts";
import { EXAMPLES, FIRST_EXAMPLE } from "./examples.ts";

const isExample = (name: string): boolean => Object.hasOwn(EXAMPLES, name);

/** @param follows whether `lamplane view` serves the page with a file to follow */
export function firstBeginning(asked: Beginning | undefined, follows: boolean): Beginning {
  if (asked?.kind === "text") return asked;
  if (asked?.kind === "example" && isExample(asked.name)) return asked;
  return follows ? { kind: "followed" } : { kind: "example", name: FIRST_EXAMPLE };
}

/** All that an address asked for and the sheet does not have. */
export function leftOutOf({ beginning, leftOut }: Addressed, follows: boolean): readonly string[] {
  if (beginning?.kind === "example" && !isExample(beginning.name))
    return [...leftOut, `there is no example "${quoted(beginning.name)}"`];
  if (beginning?.kind !== "followed" || follows) return leftOut;
  return [...leftOut, "the address is of a sheet that follows a file; open the file, or ask `lamplane view` for it"];
}
