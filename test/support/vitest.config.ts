// How the tests run: from the packages' sources, without a build. `package.json` parts the quick from the long ones by their names.
import { defineConfig } from "vitest/config";
import { LongestFirst } from "./longest-first.ts";

export default defineConfig({
  root: new URL("../..", import.meta.url).pathname,
  resolve: { conditions: ["@lamplane/source"] },
  ssr: { resolve: { conditions: ["@lamplane/source"] } },
  // A poll waits as long as a busy machine needs: it ends as soon as it is true, and a second is too short with both cores at work.
  test: {
    include: ["test/**/*.test.ts"],
    sequence: { sequencer: LongestFirst },
    maxWorkers: 2, // many tests wait for a process or a browser: one worker would leave a core idle
    testTimeout: 180_000,
    hookTimeout: 180_000,
    expect: { poll: { timeout: 20_000 } },
  },
});
