// Help as the bundle lays it out, by counting letters, is help as yargs lays it out, which knows scripts of double width.
import { existsSync } from "node:fs";
import { main } from "@lamplane/cli";
import { COMMANDS } from "@lamplane/cli/words";
import { expect, test } from "vitest";

const BUNDLE = new URL("../../packages/cli/bundle/lamplane.js", import.meta.url).href;

test("each command's help is the same from the bundle and from the sources", async () => {
  expect(existsSync(new URL(BUNDLE)), "node packages/cli/build.js").toBe(true);
  const bundled: typeof main = (await import(BUNDLE)).main;
  const printed = async (run: typeof main, ...args: string[]) => {
    let text = "";
    const add = (more: string) => {
      text += more;
    };
    const exit = await run([...args, "--help"], { out: add, err: add, showsProgress: false });
    return { exit, text };
  };
  for (const command of [[], ...Object.keys(COMMANDS).map((name) => [name])]) {
    const wanted = await printed(main, ...command);
    expect(wanted.text.length).toBeGreaterThan(100);
    expect(await printed(bundled, ...command), command.join()).toEqual(wanted);
  }
});
