// A maker's file, or plain values, → a whole design or every fault at once.
import { Faults } from "../yaml/fault.ts";
import { type DesignResult, decodeDesign } from "./decode.ts";
import { parseDesignNodes } from "./design-nodes.ts";
import type { DesignDetail } from "./fault.ts";
import { fromObject } from "./object-nodes.ts";

/**
 * The design in a YAML file.
 * @param file its name, for the faults only; nothing is opened
 */
export function readDesign(source: string | Uint8Array, file: string): DesignResult {
  const faults = new Faults<DesignDetail>(file);
  return decodeDesign(parseDesignNodes(source, faults), "as given", faults);
}

/**
 * The design that nested plain values make with the defaults.
 * @param values bare lengths are mm whatever `units` says; faults have line 0
 */
export function completeDesign(values: unknown): DesignResult {
  const faults = new Faults<DesignDetail>("");
  return decodeDesign(fromObject(values, faults), "mm", faults);
}
