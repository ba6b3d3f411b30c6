// Laws of the solids over many random designs.
import { testSolidLaws } from "./solid-laws.ts";

testSolidLaws(20, 500);
