// `lamplane stock`: how to cut the wood; exit 1 where the billet or the boards given are too small.
import { asBuiltStockPlan } from "@lamplane/bench";
import { boardPlan, boardsText } from "@lamplane/bench/boards";
import type { Design } from "@lamplane/parameters/table";
import { EXIT, type Exit, type Io } from "../io.ts";
import { stockText } from "../stock-text.ts";

export function stockCommand(io: Io, design: Design, options: { json: boolean; all: boolean }): Exit {
  const plan = asBuiltStockPlan(design);
  const boards = boardsText(design);
  if (options.json)
    io.out(
      `${JSON.stringify({ name: design.name, ...plan, ...(boards && { boards: boardPlan(design) }) }, null, 2)}\n`,
    );
  else io.out(`${boards ? `${boards.text}\n\n` : ""}${stockText(design, plan, options.all)}\n`);
  return plan.billet.fits === false || boards?.comesOut === false ? EXIT.checkFailed : EXIT.done;
}
