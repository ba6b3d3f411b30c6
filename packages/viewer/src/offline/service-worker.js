// Keeps the page's files for use without a network. The build puts the list of files, each with the hash of its bytes, in place
// of FILES: another release is another list, so that the browser fetches what is new of it and drops what is not in it.

/** Files of this release: path beside the page → SHA-256 of its bytes. */
const FILES = self.LAMPLANE_FILES;
const CACHE = "lamplane-files";

/** Where a file is kept: by its bytes, so that two releases may lie beside each other and share what is the same. */
const keptAs = (path) => new Request(new URL(`${path}?bytes=${FILES[path]}`, self.registration.scope));

async function hashOf(bytes) {
  const digest = await crypto.subtle.digest("SHA-256", bytes);
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** All of the release or nothing: a file that is not as the list says, as while a release is being copied, ends the install. */
async function fetchRelease() {
  const cache = await caches.open(CACHE);
  await Promise.all(
    Object.keys(FILES).map(async (path) => {
      const kept = keptAs(path);
      if (await cache.match(kept)) return;
      const response = await fetch(new URL(path, self.registration.scope), { cache: "no-cache" });
      const bytes = await response.arrayBuffer();
      if (!response.ok || (await hashOf(bytes)) !== FILES[path]) throw new Error(`${path} is not of this release`);
      await cache.put(
        kept,
        new Response(bytes, { headers: { "content-type": response.headers.get("content-type") ?? "" } }),
      );
    }),
  );
}

async function dropOtherReleases() {
  const cache = await caches.open(CACHE);
  const own = new Set(Object.keys(FILES).map((path) => keptAs(path).url));
  const kept = await cache.keys();
  await Promise.all(kept.filter(({ url }) => !own.has(url)).map((request) => cache.delete(request)));
}

/** A file of this release as it is kept; anything else from the network. */
async function respond(request) {
  const scope = new URL(self.registration.scope);
  const { origin, pathname } = new URL(request.url);
  const path = origin === scope.origin ? pathname.slice(scope.pathname.length) || "index.html" : undefined;
  if (path === undefined || !Object.hasOwn(FILES, path)) return fetch(request);
  const cache = await caches.open(CACHE);
  return (await cache.match(keptAs(path))) ?? fetch(request);
}

self.addEventListener("install", (event) => event.waitUntil(fetchRelease()));
self.addEventListener("activate", (event) => event.waitUntil(dropOtherReleases().then(() => self.clients.claim())));
self.addEventListener("fetch", (event) => {
  if (event.request.method === "GET") event.respondWith(respond(event.request));
});
self.addEventListener("message", ({ data }) => {
  if (data === "use-now") void self.skipWaiting();
});
