// A maker's file, or plain values, → a whole design or every fault at once.
import { completed, type DesignReading } from "./complete.ts";
import { Faults } from "./given.ts";
import { givenInValues } from "./plain-given.ts";
import { givenInYaml } from "./yaml-given.ts";

/**
 * The design in a YAML file.
 * @param file its name, for the faults only; nothing is opened
 */
export function readDesign(source: string | Uint8Array, file: string): DesignReading {
  const faults = new Faults(file);
  return completed(givenInYaml(source, faults), "as given", faults);
}

/**
 * The design that nested plain values make with the defaults.
 * @param values bare lengths are mm whatever `units` says; faults have line 0
 */
export function completeDesign(values: unknown): DesignReading {
  const faults = new Faults("");
  return completed(givenInValues(values, faults), "mm", faults);
}
