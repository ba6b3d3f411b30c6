// The commands used beside the bench, as they are typed.
import type { Argv } from "yargs";
import { mouth } from "./commands/mouth.ts";
import { survey } from "./commands/survey.ts";
import { designFrom } from "./design-file.ts";
import type { Exit, Io } from "./io.ts";
import { FILE, JSON_OUT, single, WITH } from "./options.ts";

/** A length as typed; read in the design's unit once the design is known. */
const LENGTH = { type: "string", requiresArg: true } as const;

/** The line with the bench's commands added to it. */
export const benchCommands = (line: Argv, io: Io, settle: (code: Exit) => void): Argv =>
  line
    .command(
      "mouth FILE",
      "what to take off the sole for the mouth wanted",
      (y) =>
        y
          .positional("FILE", FILE)
          .option("with", WITH)
          .option("json", JSON_OUT)
          .option("seen", { ...LENGTH, demandOption: true, describe: "mouth seen, edge at the sole; 0 for none" })
          .option("wanted", { ...LENGTH, describe: "mouth wanted; the design's unless told otherwise" })
          .option("shaving", {
            ...LENGTH,
            describe: "thickness of a shaving off the sole; 0.05 mm unless told otherwise",
          }),
      (a) => {
        const { seen, wanted, shaving } = a;
        const told = {
          seen: single("seen", seen),
          wanted: single("wanted", wanted),
          shaving: single("shaving", shaving),
        };
        settle(mouth(io, designFrom(a.FILE, a.with), { ...told, json: a.json }));
      },
    )
    .command(
      "survey FILE [READINGS]",
      "read a bed survey: flat, hollow or humped, by how much, where to work",
      (y) =>
        y
          .positional("FILE", FILE)
          .positional("READINGS", { type: "string", describe: "readings file (YAML)" })
          .option("with", WITH)
          .option("json", JSON_OUT)
          .option("blank", { type: "boolean", default: false, describe: "print a readings file to fill in" }),
      (a) => settle(survey(io, designFrom(a.FILE, a.with), { ...a, readings: a.READINGS })),
    );
