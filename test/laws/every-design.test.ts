// Every figure and check over some random designs; every-design.long.test.ts asks many.
import { testNumberLaws } from "./number-laws.ts";

testNumberLaws(2027, { plausible: 300, anywhere: 100 });
