// Whether a design can be built: the checks' word on it.
import { findingsOf, mayBeBuilt } from "@lamplane/bench/checks";
import { elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";

export const buildable = (design: Design): boolean => mayBeBuilt(findingsOf(elevation(design)));
