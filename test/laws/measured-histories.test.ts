// Some random builds written down by the command; measured-histories.long.test.ts asks many.
import { testHistories } from "./history-laws.ts";

testHistories(60);
