// How the grain of a piece runs, in the stock list.
import { sentence } from "@lamplane/parameters/words";

export const GRAIN = {
  body: sentence(({ rings }: { rings: number }) => `along the plane, rings at ${rings}° to the sole`, { rings: 20 }),
  strip: sentence(({ rings }: { rings: number }) => `along the plane, rings at ${rings}° to the face of the board`, {
    rings: 0,
  }),
  along: "along its length",
} as const;
