// Beside every strength figure: it is an indication, and the bench has the last word.

export const STRENGTH_CAUTION =
  "Strength figures are indicative: averages of clear wood under estimated forces and frictions. They do not prove that a plane is safe. Try it with light shavings first, and follow each machine's manual, local rules and trained practice.";

/** The same in short, behind a pack that was written. */
export const STRENGTH_CAUTION_BRIEF =
  "Strength figures are indicative. Follow each machine's manual, local rules and trained practice.";
