// A maker's file, or plain values, → a whole design or every fault at once.
import { type DesignResult, decodeDesign } from "./decode.ts";
import { fromObject } from "./object-nodes.ts";
import { Faults } from "./raw-node.ts";
import { parseYaml } from "./yaml-nodes.ts";

/**
 * The design in a YAML file.
 * @param file its name, for the faults only; nothing is opened
 */
export function readDesign(source: string | Uint8Array, file: string): DesignResult {
  const faults = new Faults(file);
  return decodeDesign(parseYaml(source, faults), "as given", faults);
}

/**
 * The design that nested plain values make with the defaults.
 * @param values bare lengths are mm whatever `units` says; faults have line 0
 */
export function completeDesign(values: unknown): DesignResult {
  const faults = new Faults("");
  return decodeDesign(fromObject(values, faults), "mm", faults);
}
