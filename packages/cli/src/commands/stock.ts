// `lamplane stock`: how to cut the wood; exit 1 where the billet given is too small.
import { asBuiltStockPlan } from "@lamplane/bench";
import type { Design } from "@lamplane/parameters/table";
import { EXIT, type Exit, type Io } from "../io.ts";
import { stockText } from "../stock-text.ts";

export function stockCommand(io: Io, design: Design, options: { json: boolean; all: boolean }): Exit {
  const plan = asBuiltStockPlan(design);
  io.out(
    `${options.json ? JSON.stringify({ name: design.name, ...plan }, null, 2) : stockText(design, plan, options.all)}\n`,
  );
  return plan.billet.fits === false ? EXIT.checkFailed : EXIT.done;
}
