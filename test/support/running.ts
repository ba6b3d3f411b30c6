// Runs the command in this process and catches what it says.
import { main } from "@lamplane/cli";

export interface CommandResult {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

export async function runCommand(...args: string[]): Promise<CommandResult> {
  let [out, err] = ["", ""];
  const exit = await main(args, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    showsProgress: false,
  });
  return { exit, out, err };
}
