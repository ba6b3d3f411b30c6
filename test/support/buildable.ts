// Whether a design can be built: the checks' word on it, without the jigs, which stop no plane.
import { elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { stopJudgements } from "../../packages/bench/src/checks/judgements.ts";

export const isBuildable = (design: Design): boolean => stopJudgements(elevation(design)).length === 0;
