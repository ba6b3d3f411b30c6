// The worker that makes files: the same content, by the same functions, as the command writes; kept apart for its size.

import { asBuiltPlane } from "@lamplane/bench";
import { checkPlane, checkWithoutCures, findingSentence, mayBeBuilt } from "@lamplane/bench/checks";
import { zipArchive } from "@lamplane/export/bytes";
import { makePackContent } from "@lamplane/export/content";
import { faultText, readDesign } from "@lamplane/parameters/design";
import type { ClassRequest, ClassResponse } from "../protocol/class-view.ts";
import { answerClass } from "../worker/class/class-answer.ts";
import type { PackRequest, PackResponse } from "./pack-protocol.ts";

declare const LAMPLANE_VERSION: string;

const scope = self as unknown as {
  postMessage(message: PackResponse | ClassResponse, transfer?: ArrayBuffer[]): void;
  onmessage: ((event: { data: PackRequest | ClassRequest }) => void) | null;
};

/** The pack that was made last, by the text it was made of. */
let cachedPack: { text: string; files: Awaited<ReturnType<typeof makePackContent>> } | undefined;

async function makeFiles(text: string) {
  if (cachedPack?.text === text) return cachedPack.files;
  const reading = readDesign(text, "");
  if (!reading.ok) throw new Error(reading.faults.map(faultText)[0]);
  const { design } = reading;
  const plane = asBuiltPlane(design);
  const findings = checkWithoutCures(plane);
  if (!mayBeBuilt(findings)) {
    const stop = checkPlane(plane)[0]!;
    throw new Error(`A plane that will not work is not built: ${findingSentence(design, stop)}`);
  }
  const files = await makePackContent({ design, plane, findings, version: LAMPLANE_VERSION }, (done, of, what) =>
    scope.postMessage({ kind: "progress", words: done === of ? "" : `${done + 1} of ${of}: ${what}` }),
  );
  cachedPack = { text, files };
  return files;
}

const toBytes = (content: Uint8Array | string): Uint8Array<ArrayBuffer> =>
  typeof content === "string" ? new TextEncoder().encode(content) : (content.slice() as Uint8Array<ArrayBuffer>);

async function handleRequest({ text, path, folder }: PackRequest): Promise<void> {
  const files = await makeFiles(text);
  if (path === undefined) return scope.postMessage({ kind: "list", paths: [...files.keys()] });
  const content = path === "" ? zipArchive(files, folder) : files.get(path);
  if (content === undefined) throw new Error(`${path}: this pack has no such file`);
  const bytes = toBytes(content);
  scope.postMessage({ kind: "file", path, bytes }, [bytes.buffer]);
}

const handleClass = async (request: ClassRequest): Promise<void> =>
  scope.postMessage(await answerClass(request, LAMPLANE_VERSION));

scope.onmessage = ({ data }) => {
  ("files" in data ? handleClass(data) : handleRequest(data)).catch((error: unknown) =>
    scope.postMessage({ kind: "failed", words: error instanceof Error ? error.message : String(error) }),
  );
};
