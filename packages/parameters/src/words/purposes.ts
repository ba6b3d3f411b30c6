// What a plane may be for, as the first words of a sentence would say it.
export const PURPOSE_TITLES = {
  small: "a small plane for edges and small work",
  smoother: "a smoother for the last shavings",
  jack: "a jack for coarse work",
  jointer: "a jointer for long edges",
} as const;
