// What is said wherever a strength figure is shown: it is an indication, and the bench has the last word.

export const STRENGTH_CAUTION =
  "Strength figures are indicative: averages of clear wood under estimated forces and frictions, no proof that a plane is safe; try it with light shavings first, and follow each machine's manual, local rules and trained practice.";
