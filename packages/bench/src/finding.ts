// A finding: understood, but it will not work as a plane, or not well. Data, never an exception; `words` makes its sentence.

export type Severity = "stop" | "warning" | "note";

/** How a value must stand to its limit. */
export type Relation = "at least" | "at most";

/** One change to one parameter, by its dotted path, as a plain number in mm or degrees, or a word. */
export interface Cure {
  readonly parameter: string;
  readonly value: number | string;
}

/** What a sentence names besides value and limit; lengths in mm. */
export interface FindingData {
  readonly jig?: string;
  /** Length, depth and height of a jig as it is printed, and what the printer holds. */
  readonly printed?: readonly number[];
  readonly printer?: readonly number[];
  /** Whether a jig can be cut from sheet. */
  readonly flat?: boolean;
  /** Height of the iron's edge over the blank's sole. */
  readonly edgeHeight?: number;
  /** From the sole's middle to the rings' centre. */
  readonly pithDistance?: number;
  readonly wood?: string;
  /** Names in the tables that are most like the wood's. */
  readonly nearest?: readonly string[];
  /** Properties that the tables lack. */
  readonly missing?: readonly string[];
  /** Parts made of the wood. */
  readonly parts?: readonly string[];
}

export interface Finding {
  /** Stable name, lower case with dashes. */
  readonly code: string;
  /** Stable name of the value that is judged: a check may judge several and report the worst. */
  readonly subject: string;
  /** `stop`: the plane cannot be built or will not work. `warning`: it may. `note`: worth knowing. */
  readonly severity: Severity;
  /** Absent where the limit is no bound: a count of what is missing. */
  readonly relation?: Relation;
  /** Dotted paths of the parameters that decide it. */
  readonly parameters: readonly string[];
  readonly value: number;
  readonly limit: number;
  /** Unit of value and limit. */
  readonly unit: string;
  /** Stable name of what to do; absent where nothing can be done. */
  readonly advice?: string;
  readonly data?: FindingData;
  /** Named point of the elevation where the trouble is. */
  readonly place: string;
  /** Changes that, made together, end the complaint; absent where none was found. */
  readonly cure?: readonly Cure[];
  readonly source: string;
}
