// The worker that makes files: the same content, by the same functions, as the command writes; kept apart for its size.

import { planeOf } from "@lamplane/bench";
import { checkPlane, findingsOf, mayBeBuilt } from "@lamplane/bench/checks";
import { zipOf } from "@lamplane/export/bytes";
import { packContent } from "@lamplane/export/content";
import { readDesign } from "@lamplane/parameters/design";
import type { PackAnswer, PackAsk } from "./pack-protocol.ts";

declare const LAMPLANE_VERSION: string;

const scope = self as unknown as {
  postMessage(message: PackAnswer, transfer?: ArrayBuffer[]): void;
  onmessage: ((event: { data: PackAsk }) => void) | null;
};

/** The pack that was made last, by the text it was made of. */
let made: { text: string; files: Awaited<ReturnType<typeof packContent>> } | undefined;

async function filesOf(text: string) {
  if (made?.text === text) return made.files;
  const reading = readDesign(text, "");
  if (!reading.ok) throw new Error(reading.faults[0]?.message);
  const { design } = reading;
  const plane = planeOf(design);
  const findings = findingsOf(plane);
  if (!mayBeBuilt(findings)) {
    const stop = checkPlane(plane)[0]!;
    throw new Error(`A plane that will not work is not built: ${stop.message}`);
  }
  const files = await packContent({ design, plane, findings, version: LAMPLANE_VERSION }, (done, of, what) =>
    scope.postMessage({ kind: "progress", words: done === of ? "" : `${done + 1} of ${of}: ${what}` }),
  );
  made = { text, files };
  return files;
}

const bytesOf = (content: Uint8Array | string): Uint8Array<ArrayBuffer> =>
  typeof content === "string" ? new TextEncoder().encode(content) : (content.slice() as Uint8Array<ArrayBuffer>);

async function answer({ text, path, folder }: PackAsk): Promise<void> {
  const files = await filesOf(text);
  if (path === undefined) return scope.postMessage({ kind: "list", paths: [...files.keys()] });
  const content = path === "" ? zipOf(files, folder) : files.get(path);
  if (content === undefined) throw new Error(`${path}: this pack has no such file`);
  const bytes = bytesOf(content);
  scope.postMessage({ kind: "file", path, bytes }, [bytes.buffer]);
}

scope.onmessage = ({ data }) => {
  answer(data).catch((error: unknown) =>
    scope.postMessage({ kind: "failed", words: error instanceof Error ? error.message : String(error) }),
  );
};
