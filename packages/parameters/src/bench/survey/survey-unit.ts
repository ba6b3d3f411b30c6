// The two units a readings file may be in. Every length leaves this folder's files in mm.

export type SurveyUnit = "mm" | "in";

/** Millimetres in one of the unit. */
export const MM_PER: Record<SurveyUnit, number> = { mm: 1, in: 25.4 };
