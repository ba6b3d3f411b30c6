// Three hundred random builds written down by the command.
import { testHistories } from "./history-laws.ts";

testHistories(300);
