// A PDF document whose bytes depend on what is drawn alone: fixed dates, fixed ids, embedded typefaces.
import PDFDocument from "pdfkit";
import type { PdfPages } from "./pages.ts";
import { installedTypefaces, type Typefaces } from "./typefaces.ts";

export interface PdfMetadata {
  readonly title: string;
  readonly subject?: string | undefined;
  readonly typefaces?: Typefaces;
}
/** A pdfkit document with its typefaces, which it knows as "plain" and "bold". It begins without a page. */
export interface Pdf {
  readonly doc: PdfPages;
  readonly typefaces: Typefaces;
}

/** The file's date, always: the same input gives the same bytes whenever it is made. */
const DATE = new Date(Date.UTC(2000, 0, 1));

/** The document's catalogue, which the library keeps to itself. */
interface WithCatalogue {
  _root: { data: { ViewerPreferences: { data: Record<string, unknown> } } };
}

/** An empty document; pages are added with `doc.addPage({ size: [width, height] in points, margin: 0 })`. */
export function createPdf({ title, subject, typefaces = installedTypefaces() }: PdfMetadata): Pdf {
  const doc = new PDFDocument({
    autoFirstPage: false,
    compress: false, // deflate differs from one zlib to the next, and a layout is below half a megabyte without it
    font: null as never, // else the library loads a typeface of its own
    info: {
      Title: title,
      ...(subject === undefined ? {} : { Subject: subject }),
      Creator: "lamplane",
      Producer: "lamplane",
      CreationDate: DATE,
      ModDate: DATE,
    },
    lang: "en",
    displayTitle: true,
    pdfVersion: "1.7",
  });
  // Printers' dialogs fit the page to their margins unless they are asked not to: ISO 32000-1:2008, 12.2, PrintScaling.
  (doc as unknown as WithCatalogue)._root.data.ViewerPreferences.data.PrintScaling = "None";
  // A font that is parsed already will do; the library's types know only bytes.
  doc.registerFont("plain", typefaces.plain.font as never);
  doc.registerFont("bold", typefaces.bold.font as never);
  return { doc: doc as unknown as PdfPages, typefaces }; // its types know no list of dashes, its manual does
}

/** Ends the document and gives its bytes. */
export async function pdfBytes({ doc }: Pdf): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  const whole = new Promise<Uint8Array>((resolve, reject) => {
    doc.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    doc.on("end", () => resolve(concatBytes(chunks)));
    doc.on("error", reject);
  });
  doc.end();
  return whole;
}

function concatBytes(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((size, { length }) => size + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}
