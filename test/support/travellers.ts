// The traveller with its drawings made, as plain data.
import type { Design } from "@lamplane/parameters/table";
import {
  type JigInUse,
  type Picture,
  STEP_ROOM,
  type TravellerStep,
  traveller,
  travellerSteps,
} from "@lamplane/sheets";

export type DrawnJig = JigInUse & { readonly picture: Picture | undefined };
export type DrawnStep = Omit<TravellerStep, "jigs"> & { readonly picture: Picture; readonly jigs: readonly DrawnJig[] };

/** A step with its drawing and its jigs', in the room that is usual or another. */
export const drawnStep = (step: TravellerStep, room = STEP_ROOM): DrawnStep => ({
  ...step,
  picture: step.draw(room),
  jigs: step.jigs.map((jig) => ({ ...jig, picture: jig.draw(room) })),
});

export const drawnSteps = (design: Design): readonly DrawnStep[] =>
  travellerSteps(design).map((step) => drawnStep(step));

/** Everything on card, traveller and appendix. */
export function drawnTraveller(design: Design) {
  const { section, steps, fitTest, ...rest } = traveller(design);
  return { ...rest, section: section(STEP_ROOM), steps: steps.map((step) => drawnStep(step)), fitTest };
}

/** Each jig once, in the order in which it is first used. */
export const jigsOf = ({ steps, fitTest }: ReturnType<typeof drawnTraveller>): JigInUse[] => [
  ...(fitTest ? [fitTest] : []),
  ...new Map(steps.flatMap(({ jigs }) => jigs).map((jig) => [jig.name, jig])).values(),
];
