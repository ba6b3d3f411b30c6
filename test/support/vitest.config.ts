// How the tests run: from the packages' sources, without a build.
import { defineConfig } from "vitest/config";

export default defineConfig({
  root: new URL("../..", import.meta.url).pathname,
  resolve: { conditions: ["@lamplane/source"] },
  ssr: { resolve: { conditions: ["@lamplane/source"] } },
  test: { include: ["test/**/*.test.ts"], testTimeout: 60_000, hookTimeout: 60_000 },
});
