// Laws of the solids over a few random designs; solids.long.test.ts asks many.
import { testSolidLaws } from "./solid-laws.ts";

testSolidLaws(21, 30);
