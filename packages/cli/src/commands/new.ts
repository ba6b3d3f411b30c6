// `lamplane new`: writes a commented design to begin with; never over anything.
import { writeFileSync } from "node:fs";
import { basename, extname } from "node:path";
import { toWriteError } from "@lamplane/export/write-error";
import { starterDesign } from "@lamplane/parameters/design";
import { TABLE } from "@lamplane/parameters/table";
import { EXIT, type Exit, type Io } from "../io.ts";
import { NEW } from "../words/reports.ts";

export function newCommand(io: Io, file: string, units: "mm" | "in"): Exit {
  const stem = basename(file, extname(file));
  const name = TABLE.name.pattern!.regex.test(stem) && stem.length <= TABLE.name.maxLength ? stem : TABLE.name.default;
  try {
    writeFileSync(file, starterDesign(name, units), { flag: "wx" });
  } catch (error) {
    throw toWriteError(file, error);
  }
  io.out(`${NEW({ file })}\n`);
  return EXIT.done;
}
