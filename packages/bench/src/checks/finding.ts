// A finding: understood, but it will not work as a plane, or not well. Data, never an exception.

export type Severity = "stop" | "warning" | "note";

/** One change to one parameter, by its dotted path, as a plain number in mm or degrees, or a word. */
export interface Cure {
  readonly parameter: string;
  readonly value: number | string;
}

export interface Finding {
  /** Stable name, lower case with dashes. */
  readonly code: string;
  /** `stop`: the plane cannot be built or will not work. `warning`: it may. `note`: worth knowing. */
  readonly severity: Severity;
  /** Dotted paths of the parameters that decide it. */
  readonly parameters: readonly string[];
  readonly value: number;
  readonly limit: number;
  /** Unit of value and limit. */
  readonly unit: string;
  /** What is wrong, with both numbers, and what to do. */
  readonly message: string;
  /** Named point of the elevation where the trouble is. */
  readonly place: string;
  /** Changes that, made together, end the complaint; absent where none was found. */
  readonly cure?: readonly Cure[];
  readonly source: string;
}
