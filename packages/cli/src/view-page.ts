// The files of the built page, as `lamplane view` serves them, with a mark that tells the page what it follows.
import { readdirSync, readFileSync } from "node:fs";
import { basename, extname, join } from "node:path";
import type { HttpResponse } from "./view-requests.ts";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
};
/** The licences of what the page is built from: the one text that is served. */
const LICENCES = "licences.txt";
/** What would keep the page for use without a network: this address holds a secret and ends with the command, so it is not kept. */
const KEEPER = "service-worker.js";
interface Followed {
  readonly file: string | undefined;
  readonly roster: string | undefined;
  readonly token: string;
}

/** Every file that is served, by its path: read once, so that no address can lead anywhere else. */
export function loadPageFiles(page: string, followed: Followed): ReadonlyMap<string, HttpResponse> {
  const files = new Map<string, HttpResponse>();
  for (const entry of readdirSync(page, { withFileTypes: true })) {
    const type = entry.name === LICENCES ? "text/plain; charset=utf-8" : TYPES[extname(entry.name)];
    if (entry.isFile() && type && entry.name !== KEEPER)
      files.set(`/${entry.name}`, {
        status: 200,
        body: readFileSync(join(page, entry.name)),
        headers: { "content-type": type },
      });
  }
  const index = files.get("/index.html")!;
  const marks = `<meta name="lamplane-view" />${followMark(followed)}`;
  const html = new TextDecoder().decode(index.body as Uint8Array).replace("</head>", () => `${marks}</head>`);
  return files.set("/", { ...index, body: html }).set("/index.html", { ...index, body: html });
}

/** What tells the page what it follows. */
function followMark({ file, roster, token }: Followed): string {
  if (roster !== undefined)
    return `<meta name="lamplane-class" content="${escapeAttribute(basename(roster))}" data-token="${token}" />`;
  if (file === undefined) return "";
  return `<meta name="lamplane-follows" content="${escapeAttribute(basename(file))}" data-token="${token}" />`;
}

const escapeAttribute = (text: string): string =>
  text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`).replace(/\p{C}/gu, "�");
