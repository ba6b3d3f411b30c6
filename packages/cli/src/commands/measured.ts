// `lamplane measured`: writes what came out at the bench into the design file; every comment and every other byte stays.
import { expectedOf, MEASURED, type MeasuredKey, settledValues } from "@lamplane/parameters/bench";
import { type Design, readDesign, writtenBack } from "@lamplane/parameters/design";
import { isRow, TABLE } from "@lamplane/parameters/table";
import { readNumberText } from "@lamplane/parameters/units";
import { designContent, designIn, replaceFile } from "../design-file.ts";
import { faultLines } from "../file-content.ts";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { shownFor } from "../words.ts";

/** @throws InputRefused where a value is not understood or not allowed; CouldNotWrite where the file cannot be written. */
export function measured(io: Io, file: string, values: readonly string[], json: boolean): Exit {
  if (values.length === 0)
    throw new InputRefused(
      `Name what was measured, such as coreWidth=49.7; \`lamplane next ${file}\` says what is wanted.`,
    );
  const before = designContent(file);
  const design = designIn(before, file);
  const written = values.reduce(
    (text, value) => withMeasured(text, design, value),
    new TextDecoder("utf-8", { ignoreBOM: true }).decode(before),
  );
  const built = checked(written, file);
  for (const value of values) refuseWhereThereIsNone(built, value);
  const settled = settledValues(built);
  const whole = settled.reduce((text, { key, value }) => writtenBack(text, `measured.${key}`, value), written);
  checked(whole, file);
  replaceFile(file, whole);
  if (json) io.out(`${JSON.stringify({ file, written: values, settled }, null, 2)}\n`);
  else {
    io.out(`${file}: wrote ${values.join(", ")}.\n`);
    for (const { key, value } of settled)
      io.out(`Settled with it, as planned: ${key} ${shownFor(design, value, unitOf(key))}.\n`);
    io.out(`\`lamplane next ${file}\` says what to do now.\n`);
  }
  return EXIT.done;
}

const unitOf = (key: string): string => {
  const row = TABLE.measured[key as keyof typeof TABLE.measured];
  return row.kind === "number" && row.quantity === "angle" ? "°" : "mm";
};

/** The design as the file would then be read; what is refused is told before anything is written. */
function checked(text: string, file: string): Design {
  const reading = readDesign(text, file);
  if (reading.ok) return reading.design;
  throw new InputRefused(`${faultLines(reading.faults)}\nNothing was written.`);
}

/** A value of what this plane does not have would mark its step as done. @throws InputRefused */
function refuseWhereThereIsNone(design: Design, given: string): void {
  const key = given.replace(/^measured\./, "").replace(/=.*$/s, "");
  if (!Object.hasOwn(MEASURED, key) || expectedOf(design, key as MeasuredKey) !== undefined) return;
  throw new InputRefused(`${key}: this plane has none to measure. Nothing was written.`);
}

function withMeasured(text: string, design: Design, given: string): string {
  const [, key, value] = /^(?:measured\.)?([^=.]+)=(.*)$/s.exec(given) ?? [];
  if (key === undefined || value === undefined)
    throw new InputRefused(`${given}: write KEY=VALUE, such as coreWidth=49.7`);
  const row = Object.hasOwn(TABLE.measured, key) ? TABLE.measured[key as keyof typeof TABLE.measured] : undefined;
  if (!row || !isRow(row))
    throw new InputRefused(
      `${key}: nothing of that name is measured; write one of ${Object.keys(TABLE.measured).join(", ")}`,
    );
  if (row.kind === "choice") return writtenBack(text, `measured.${key}`, value);
  const read = readNumberText(value, row.quantity, design.units);
  if ("fault" in read) throw new InputRefused(`${key}: read "${value}": ${read.fault}`);
  return writtenBack(text, `measured.${key}`, read.value);
}
