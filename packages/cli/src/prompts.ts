// Questions at a terminal, asked on the standard error output so that what is printed can still go elsewhere.
import { InputRefused, type Prompts } from "./io.ts";
import { BROKEN_OFF } from "./words/commands.ts";

/** The prompts of a terminal; undefined where nobody is there to answer. */
export const terminalPrompts = (): Prompts | undefined =>
  process.stdin.isTTY && process.stderr.isTTY ? CLACK_PROMPTS : undefined;

const output = process.stderr;

const CLACK_PROMPTS: Prompts = {
  confirm: async (message) => {
    const { confirm } = await import("@clack/prompts");
    return requireAnswer(await confirm({ message, initialValue: false, output }));
  },
  text: async (message, initialValue, fault) => {
    const { text } = await import("@clack/prompts");
    return requireAnswer(await text({ message, initialValue, validate: (answer) => fault(answer ?? ""), output }));
  },
  choose: async (message, choices) => {
    const { select } = await import("@clack/prompts");
    // The library's types tell texts from other values, which a choice of any text is too general for.
    const options: { value: string; label: string }[] = [...choices];
    return requireAnswer(await select<string>({ message, options, output })) as (typeof choices)[number]["value"];
  },
};

/** The library gives a symbol for Ctrl+C. @throws InputRefused */
function requireAnswer<Answer>(answer: Answer): Exclude<Answer, symbol> {
  if (typeof answer === "symbol") throw new InputRefused(BROKEN_OFF);
  return answer as Exclude<Answer, symbol>;
}
