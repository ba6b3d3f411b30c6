// Names on jigs: planes whose names differ at their end alone are told apart on every jig, however little room it has.
import { elevation } from "@lamplane/parameters/elevation";
import { type JigPlan, jigPlans } from "@lamplane/parameters/jigs";
import { expect, test } from "vitest";
import { printedBody } from "../../../packages/parameters/src/solids/jigs/printed-body.ts";
import { isBuildable } from "../../support/buildable.ts";
import { designWith, randomDesigns, WORKED } from "../../support/designs.ts";

const PAIRS = [
  ["plane-1", "plane-2"],
  ["apprentice-smoother-A", "apprentice-smoother-B"],
  [
    "a-long-name-for-a-plane-of-beech-in-the-shop-of-2031-no-11",
    "a-long-name-for-a-plane-of-beech-in-the-shop-of-2031-no-12",
  ],
  ["Jointer.600.left", "Jointer.600.right"],
] as const;

/** What is sunk into a jig's bodies, line by line. */
const wordsOn = ({ bodies }: JigPlan): string[] => bodies.flatMap((body) => [...printedBody(body).reads]);

test("every choice of a name that is shortened keeps its end", () => {
  const designs = [designWith(WORKED), ...randomDesigns(97, 1, isBuildable).map(({ design }) => design)];
  for (const design of designs)
    for (const [one, other] of PAIRS) {
      const [first, second] = [one, other].map((name) => jigPlans(elevation({ ...design, name })));
      for (const [i, jig] of first!.entries()) expect(wordsOn(jig), jig.name).not.toEqual(wordsOn(second![i]!));
    }
});
