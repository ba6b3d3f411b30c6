// Every bench finds what it imports: nobody runs them all after each change.
import { execFileSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { expect, test } from "vitest";

test("every bench loads and has a title", () => {
  const files = readdirSync("test/benchmarks", { recursive: true, encoding: "utf8" }).filter((name) =>
    /(\.bench|peers|corpus)\.js$/.test(name),
  );
  expect(files.length).toBeGreaterThan(8);
  const script = files
    .map((name) => `import * as b${files.indexOf(name)} from "./test/benchmarks/${name}";`)
    .join("\n");
  const titles = files.map((_, i) => `b${i}.title ?? ""`).join(", ");
  const told = execFileSync(
    process.execPath,
    ["--input-type=module", "-e", `${script}\nconsole.log([${titles}].join("\\n"))`],
    {
      encoding: "utf8",
    },
  );
  expect(told.split("\n").filter((title) => title !== "").length).toBeGreaterThan(6);
});
