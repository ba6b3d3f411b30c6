// Jigs of a class: one serves every plane for which it comes out alike.
import { BENCH_TOLERANCE } from "@lamplane/geometry";
import { type JigName, type JigPlan, jigPlans } from "@lamplane/parameters/jigs";
import type { Design } from "@lamplane/parameters/table";
import { asBuiltPlane } from "../history/as-built.ts";

/** A jig to make, and the planes that it serves, the first being the one whose pack has it. */
export interface SharedJig {
  readonly name: JigName;
  readonly title: string;
  /** Places in the class, ascending. */
  readonly planes: readonly number[];
}

/** Every jig that the class needs, in the order of use. */
export function sharedJigs(designs: readonly Design[]): SharedJig[] {
  const kinds: { readonly plan: JigPlan; readonly planes: number[] }[] = [];
  designs.forEach((design, plane) => {
    for (const plan of jigPlans(asBuiltPlane(design))) {
      const kind = kinds.find((other) => other.plan.name === plan.name && serves(other.plan, plan));
      if (kind) kind.planes.push(plane);
      else kinds.push({ plan, planes: [plane] });
    }
  });
  const order = [...new Set(kinds.map(({ plan }) => plan.name))];
  kinds.sort((a, b) => order.indexOf(a.plan.name) - order.indexOf(b.plan.name));
  return kinds.map(({ plan, planes }) => ({ name: plan.name, title: plan.title, planes }));
}

/** Whether one jig is the other within what a maker can hold; lettering and what is left out to save material do not count. */
const serves = (a: JigPlan, b: JigPlan): boolean => isNear(workingShape(a), workingShape(b));

const workingShape = ({ bodies }: JigPlan) =>
  bodies.map(({ boundary, holes, thickness, risers, pose }) => ({
    boundary,
    holes,
    thickness,
    risers,
    stands: [pose.x, pose.y, pose.z],
  }));

function isNear(a: unknown, b: unknown): boolean {
  if (typeof a === "number" && typeof b === "number") return Math.abs(a - b) <= BENCH_TOLERANCE;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return a === b;
  const [keys, others] = [Object.keys(a), Object.keys(b)];
  return (
    keys.length === others.length &&
    keys.every((key) => isNear((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]))
  );
}
