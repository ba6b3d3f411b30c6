// The example designs, in the page itself, so that they open without a server.
import smoother from "../../../../examples/apprentice-smoother.yaml?raw";
import finisher from "../../../../examples/figured-finisher.yaml?raw";
import layered from "../../../../examples/layered-smoother.yaml?raw";
import panel from "../../../../examples/tapered-panel.yaml?raw";
import jack from "../../../../examples/trestle-jack.yaml?raw";
import jointer from "../../../../examples/workshop-jointer.yaml?raw";

/** The first is what a page begins with. */
export const EXAMPLES: Readonly<Record<string, string>> = {
  "apprentice-smoother": smoother,
  "trestle-jack": jack,
  "figured-finisher": finisher,
  "workshop-jointer": jointer,
  "tapered-panel": panel,
  "layered-smoother": layered,
};
