// A plain host for the built page, as any static hosting is: files by their names and nothing else.
import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".png": "image/png",
  ".webmanifest": "application/manifest+json",
};

export interface StaticHost {
  readonly address: string;
  /** Paths that were asked for. */
  readonly asked: string[];
  close(): Promise<void>;
}

/** @param folder whose files are served, as they are when they are asked for */
export async function startStaticHost(folder: string): Promise<StaticHost> {
  const asked: string[] = [];
  const server = createServer(({ url }, response) => {
    const { pathname } = new URL(url!, "http://host");
    asked.push(pathname);
    const path = join(folder, pathname === "/" ? "index.html" : pathname);
    if (!existsSync(path) || !statSync(path).isFile()) return response.writeHead(404).end();
    const type = TYPES[extname(path)] ?? "text/plain";
    return createReadStream(path).pipe(response.writeHead(200, { "content-type": type }));
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    asked,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
