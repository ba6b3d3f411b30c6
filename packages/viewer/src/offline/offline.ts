// Use without a network: whether the browser holds every file of the page, and whether a newer release waits.
import { isServedByView } from "../served-by-view.ts";

/** `served`: by `lamplane view`, whose address holds a secret and lasts as long as the command; `local`: opened from a folder;
 * `failed`: nothing can be kept. */
export type OfflineState = "served" | "local" | "failed" | "waiting" | "ready" | "newer";

let state: OfflineState = "waiting";
let registration: ServiceWorkerRegistration | undefined;
const listeners = new Set<(state: OfflineState) => void>();

function change(next: OfflineState) {
  state = next;
  for (const listen of listeners) listen(next);
}

/** @returns how to stop listening; the state as it is now is passed at once */
export function watchOffline(listen: (state: OfflineState) => void): () => void {
  listeners.add(listen);
  listen(state);
  return () => void listeners.delete(listen);
}

/** Keeps the page's files on this device. Where it cannot be done, everything else works as before. */
export async function startOffline(): Promise<void> {
  if (isServedByView()) return change("served");
  if (location.protocol === "file:") return change("local");
  if (!("serviceWorker" in navigator)) return change("failed");
  addManifest();
  const hadOne = navigator.serviceWorker.controller !== null;
  try {
    registration = await navigator.serviceWorker.register("./service-worker.js");
  } catch {
    return change("failed");
  }
  const follow = (worker: ServiceWorker | null) => {
    if (!worker) return;
    const look = () => {
      if (worker.state === "installed" && hadOne) change("newer");
      else if (worker.state === "activated" && state !== "newer") change("ready");
      else if (worker.state === "redundant" && state === "waiting") change("failed");
    };
    worker.addEventListener("statechange", look);
    look();
  };
  follow(registration.active);
  if (hadOne) follow(registration.waiting);
  follow(registration.installing);
  registration.addEventListener("updatefound", () => follow(registration!.installing));
}

/** The release that waits takes the place of this one, and the page begins anew with it. */
export function useNewer(): void {
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
  registration?.waiting?.postMessage("use-now");
}

/** Only here: under `view` it would be one more file to ask a secret address for. */
function addManifest() {
  const link = document.createElement("link");
  link.rel = "manifest";
  link.href = "./lamplane.webmanifest";
  document.head.append(link);
}
