// What there is of the plane after each step, in a word or two: as much as a strip of steps has room for.

export const STATE_LABELS = {
  iron: "billet",
  core: "ripped",
  cuts: "cuts",
  bed: "bed",
  recess: "recess",
  "pin-hole": "pin",
  wedge: "wedge",
  "dry-fit": "dry fit",
  "glue-up": "glue-up",
  sole: "sole",
  mouth: "trued",
  shaping: "shaped",
  "first-shaving": "first shaving",
  season: "a year later",
} as const;
