// The design that a command line names. What reads it is loaded only then: help and version do without.
import type { Design } from "@lamplane/parameters/table";
import type { Io } from "./io.ts";
import { requireSingle } from "./options.ts";

interface DesignArguments {
  readonly FILE: string;
  readonly with?: readonly string[];
  readonly shop: string | undefined;
}

/** The design in a file, with what the options change. @throws InputRefused with one line for every fault */
export async function openDesign(io: Pick<Io, "err">, { FILE, with: changes, shop }: DesignArguments): Promise<Design> {
  const { loadDesign } = await import("./design-file.ts");
  return loadDesign(io, FILE, changes, requireSingle("shop", shop));
}
