// Stands for `node:fs` and `node:module` where sheets are printed in a page: the only files there are the two typefaces.

import plain from "@lamplane/sheets/typefaces/DejaVuSansCondensed.ttf?inline";
import bold from "@lamplane/sheets/typefaces/DejaVuSansCondensed-Bold.ttf?inline";

const decodeDataUrl = (dataUrl: string): Uint8Array =>
  Uint8Array.from(atob(dataUrl.slice(dataUrl.indexOf(",") + 1)), (sign) => sign.charCodeAt(0));

export const createRequire = () => ({ resolve: (path: string): string => path });

/** @throws Error (our bug) for any file but the typefaces */
export function readFileSync(path: string): Uint8Array {
  if (path.endsWith("DejaVuSansCondensed-Bold.ttf")) return decodeDataUrl(bold);
  if (path.endsWith("DejaVuSansCondensed.ttf")) return decodeDataUrl(plain);
  throw new Error(`${path}: a page has no such file`);
}
