// What each drawing on the sheet shows.

export const VIEW_TITLES = {
  elevation: "Side elevation, near cheek taken away",
  mouth: "Mouth, enlarged: as glued, trued sole drawn through",
  end: "Across, seen from the toe",
  endStacked: "Across, seen from the toe, front block taken away",
  strips: "Strips from their ends, each stood on edge",
  billet: "Billet from its end, with its two saw cuts",
  stack: "Iron, cap iron and wedge, laid level",
  singleStack: "Iron and wedge, laid level",
} as const;
