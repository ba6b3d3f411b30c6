// What tells a roster from a design, before either is read.
import type { NamedText } from "./address.ts";

/** A table is a roster, and so is a YAML file with `planes`. */
export const isRoster = ({ name, text }: NamedText): boolean =>
  /\.(csv|tsv)$/i.test(name) || /^[\s{]*["']?planes["']?\s*:/m.test(text);
