// What the worker answers of a class: its view, or one of its files, the same bytes as the command writes.
import { classFile } from "@lamplane/export/content";
import type { ClassRequest, ClassResponse, ClassText } from "../../protocol/class-view.ts";
import { classView } from "./class-view.ts";
import { type ReadClass, readClass, soundNumbers } from "./read-class.ts";

/** The class that was read last: its files are made from it. */
let last: { readonly key: string; readonly read: ReturnType<typeof readClass> } | undefined;

function readOnce(files: readonly ClassText[], groups: number | undefined): ReturnType<typeof readClass> {
  const key = JSON.stringify([files, groups]);
  if (last?.key !== key) last = { key, read: readClass(files, groups) };
  return last.read;
}

export async function answerClass({ files, file, groups }: ClassRequest, version: string): Promise<ClassResponse> {
  const read = readOnce(files, groups);
  if ("faults" in read) {
    if (file !== undefined) return { kind: "failed", words: read.faults.join(" ") };
    const empty = {
      name: "",
      heading: "",
      setups: [],
      coreWidths: { fewest: 0, most: 0 },
      boards: [],
      sheets: [],
      planes: [],
    };
    return { kind: "class", view: { ...empty, faults: read.faults } };
  }
  if (file === undefined) return { kind: "class", view: classView(read) };
  return makeFile(read, file, version);
}

async function makeFile(
  { name, planes, boards, nesting }: ReadClass,
  file: NonNullable<ClassRequest["file"]>,
  version: string,
): Promise<ClassResponse> {
  const designs = planes.flatMap(({ made }) => (made ? [made.design] : []));
  const numbers = soundNumbers(planes);
  const content = (await classFile(file, { name, designs, numbers, boards: boards?.sheet, nesting, version })) ?? "";
  const bytes = typeof content === "string" ? new TextEncoder().encode(content) : content.slice();
  return { kind: "class-file", bytes: bytes as Uint8Array<ArrayBuffer> };
}
