// Every figure and check over 10 000 random designs. How fast they are is printed by the bench.
import { testNumberLaws } from "./number-laws.ts";

testNumberLaws(2026, { plausible: 9000, anywhere: 1000 });
