// Words of `measured`: what was written, taken back, asked about or refused.
import { countText, listText, sentence } from "@lamplane/parameters/words";

interface PassedOver {
  readonly file: string;
  readonly steps: readonly string[];
}
const SKIPPED: PassedOver = { file: "my-plane.yaml", steps: ["Measure the iron", "Cut ramp and bed"] };

const passedOver = ({ file, steps }: PassedOver): string =>
  `${file}: nothing is measured yet at ${countText(steps.length, "earlier step")}: ${steps.join(", ")}.`;

export const MEASURED = {
  nothingWritten: "Nothing was written.",
  noValues: sentence(
    ({ file }: { file: string }) =>
      `Name what you measured, such as coreWidth=49.7. \`lamplane next ${file}\` lists what to measure now.`,
    { file: "my-plane.yaml" },
  ),
  keyValue: sentence(
    ({ typed }: { typed: string }) =>
      `${typed === "" ? "An empty text" : typed}: write KEY=VALUE, such as coreWidth=49.7, or KEY= to take a value back`,
    { typed: "nonsense" },
    { typed: "" },
  ),
  written: sentence(
    ({ file, values }: { file: string; values: readonly string[] }) => `${file}: ${listText(values)}.`,
    {
      file: "my-plane.yaml",
      values: ["core width 49.7 mm"],
    },
  ),
  takenBack: sentence(
    ({ file, names }: { file: string; names: readonly string[] }) => `${file}: took back ${listText(names)}.`,
    { file: "my-plane.yaml", names: ["core width"] },
  ),
  next: sentence(({ file }: { file: string }) => `\`lamplane next ${file}\` gives the next step.`, {
    file: "my-plane.yaml",
  }),
  notNumber: sentence(
    ({ key, typed, fault }: { key: string; typed: string; fault: string }) => `${key}: read "${typed}": ${fault}`,
    { key: "coreWidth", typed: "wide", fault: "this is not a number; write one such as 44.5 mm" },
  ),
  noSuchValue: sentence(
    ({ key }: { key: string }) => `${key}: the file holds no such value to take back. Nothing was written.`,
    { key: "coreWidth" },
  ),
  absent: sentence(({ key }: { key: string }) => `${key}: this plane has none to measure. Nothing was written.`, {
    key: "recessWidth",
  }),
  doubt: sentence(({ key, doubt }: { key: string; doubt: string }) => `${key}: ${doubt}`, {
    key: "coreWidth",
    doubt: "59.7 mm is far from the 49.7 mm expected. Is it a slip?",
  }),
  readAgain: "Nothing was written. Measure again; if it is right, add --read-twice.",
  skipRefused: sentence(
    (skipped: PassedOver) =>
      `${passedOver(skipped)}\nNothing was written. If these steps are done, add --skip: they keep their planned values.`,
    SKIPPED,
  ),
  skipQuestion: sentence((skipped: PassedOver) => `${passedOver(skipped)} Are they done as planned?`, SKIPPED),
} as const;

export const UNDO = {
  withValues: "--undo takes back the last change; leave the values out",
  done: sentence(
    ({ file, values }: { file: string; values: readonly string[] }) =>
      `${file}: took back ${values.join(", ")}; the file is as it was before.`,
    { file: "my-plane.yaml", values: ["coreWidth=49.7"] },
  ),
  none: sentence(({ file }: { file: string }) => `${file}: there is no change by \`lamplane measured\` to take back.`, {
    file: "my-plane.yaml",
  }),
  changedSince: sentence(
    ({ file, values }: { file: string; values: readonly string[] }) =>
      `${file}: the file has changed since ${values.join(", ")}, so --undo cannot take that back. Take a value back by KEY= instead.`,
    { file: "my-plane.yaml", values: ["coreWidth=49.7"] },
  ),
} as const;
