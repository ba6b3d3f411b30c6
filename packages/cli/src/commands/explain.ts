// `lamplane explain`: what a parameter is, from the table that everything else reads.
import { rowsOf, TABLE, UNIT_OF } from "@lamplane/parameters/table";
import { unknownParameterError } from "../design-file.ts";
import { EXIT, type Exit, type Io } from "../io.ts";
import { alignColumns } from "../text.ts";

/** Explains one parameter, a section of them, or lists them all. @throws InputRefused where nothing is called so. */
export function explainCommand(io: Io, path: string | undefined): Exit {
  const rows = rowsOf(TABLE).filter(
    (row) => path === undefined || row.path === path || row.path.startsWith(`${path}.`),
  );
  if (rows.length === 0) throw unknownParameterError(path ?? "");
  if (path === undefined) io.out(`${alignColumns(rows.map(({ path: key, row }) => [key, row.help]))}\n`);
  else
    io.out(
      rows.map(({ path: key, row }) => `${key}\n  ${row.help}\n${limitsText(row)}  source: ${row.source}\n`).join("\n"),
    );
  return EXIT.done;
}

function limitsText(row: ReturnType<typeof rowsOf>[number]["row"]): string {
  if (row.kind === "choice") return `  one of ${row.choices.join(", ")}; ${row.default} unless told otherwise\n`;
  if (row.kind === "text") return `  text; ${row.default} unless told otherwise\n`;
  const unit = UNIT_OF[row.quantity];
  const auto = row.auto === undefined ? "" : `  auto: ${row.auto}\n`;
  const standard = row.required ? "must be given" : `${row.default} unless told otherwise`;
  return `  ${row.min} to ${row.max} ${unit}; ${standard}\n${auto}`.replace(/ ;/, ";");
}
