// Sizes of the stock list are those of the solids: the finished piece's box as the part lies on the table, the sawn one about it.
import { stockPlan } from "@lamplane/bench";
import { boundsOf, tessellate } from "@lamplane/geometry";
import { meshBounds } from "@lamplane/geometry/mesh";
import { blocksAt, type Elevation, elevation } from "@lamplane/parameters/elevation";
import { partsOf } from "@lamplane/parameters/solids";
import { describe, expect, test } from "vitest";
import { isBuildable } from "../../support/buildable.ts";
import { type Changes, designWith, randomDesigns, WORKED } from "../../support/designs.ts";
