// The worker that plans the cutter's paths: by the same functions as the programs in the pack.
import { asBuiltPlane } from "@lamplane/bench";
import { faultText, readDesign } from "@lamplane/parameters/design";
import { routerPaths } from "./router-paths.ts";
import type { RouterRequest, RouterResponse } from "./router-protocol.ts";

declare const LAMPLANE_VERSION: string;

const scope = self as unknown as {
  postMessage(message: RouterResponse): void;
  onmessage: ((event: { data: RouterRequest }) => void) | null;
};

function responseTo({ text, shop }: RouterRequest): RouterResponse {
  const reading = readDesign(text, "", shop === undefined ? {} : { instead: { source: shop, file: "" } });
  if (!reading.ok) return { kind: "failed", words: reading.faults.map(faultText)[0]! };
  const paths = routerPaths(asBuiltPlane(reading.design), LAMPLANE_VERSION);
  return paths ? { kind: "paths", paths } : { kind: "none" };
}

scope.onmessage = ({ data }) => {
  try {
    scope.postMessage(responseTo(data));
  } catch (error) {
    scope.postMessage({ kind: "failed", words: error instanceof Error ? error.message : String(error) });
  }
};
