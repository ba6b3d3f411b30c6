// Whether a design can be built: the checks' word on it.
import { checkWithoutCures, mayBeBuilt } from "@lamplane/bench/checks";
import { elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";

export const isBuildable = (design: Design): boolean => mayBeBuilt(checkWithoutCures(elevation(design)));
