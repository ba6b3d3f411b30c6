// Names on jigs: planes whose names differ at their end alone are told apart on every jig, however little room it has.
import { elevation } from "@lamplane/parameters/elevation";
import { jigPlans } from "@lamplane/parameters/jigs";
import { makeJig } from "@lamplane/parameters/solids";
import { expect, test } from "vitest";
import { isBuildable } from "../../support/buildable.ts";
import { designWith, randomDesigns, WORKED } from "../../support/designs.ts";
import { linesOf } from "../../support/jigs.ts";

const PAIRS = [
  ["plane-1", "plane-2"],
  ["apprentice-smoother-A", "apprentice-smoother-B"],
  [
    "a-long-name-for-a-plane-of-beech-in-the-shop-of-2031-no-11",
    "a-long-name-for-a-plane-of-beech-in-the-shop-of-2031-no-12",
  ],
  ["Jointer.600.left", "Jointer.600.right"],
] as const;

test("every choice of a name that is shortened keeps its end", () => {
  const designs = [designWith(WORKED), ...randomDesigns(97, 1, isBuildable).map(({ design }) => design)];
  for (const design of designs)
    for (const [one, other] of PAIRS) {
      const planes = [one, other].map((name) => elevation({ ...design, name }));
      const [first, second] = planes.map((plane) => jigPlans(plane).map((plan) => [plan.name, linesOf(makeJig(plan))]));
      for (const [i, [jig, words]] of first!.entries()) {
        expect(words, `${jig}`).not.toEqual(second![i]![1]);
      }
    }
});
