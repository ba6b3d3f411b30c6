// Words of `view`, and of the server behind it.
import { sentence } from "@lamplane/parameters/words";

export const VIEW = {
  open: "Open this address in a browser on this machine. Ctrl+C ends it.",
  follows: sentence(
    ({ file }: { file: string }) =>
      `Open this address in a browser on this machine. It follows ${file}. Ctrl+C ends it.`,
    { file: "plane.yaml" },
  ),
  notBuilt: "The page is not built. In the project folder, run `npx -y pnpm@10.34.9 viewer`.",
  portTaken: sentence(
    ({ port }: { port: number }) => `Port ${port} is taken or not allowed; leave --port out for a free one.`,
    {
      port: 8080,
    },
  ),
} as const;

/** What the server answers to a request that it does not serve, a line each. */
export const SERVER = {
  elsewhere: "This page answers at 127.0.0.1 only.",
  foreign: "This page answers only its own requests.",
  withoutSecret: "Open the whole address that `lamplane view` printed.",
  tooManyPages: "Too many pages follow this file; close some.",
  readOnly: "This address can only be read.",
  noFile: "There is no such file here.",
  onlyFollowing: "Only the page that follows this file may write it.",
  tooLarge: sentence(({ most }: { most: number }) => `A design file has at most ${most} bytes.`, { most: 262_144 }),
  changed: "The file has changed since this page read it; nothing was written.",
  noEdit: "This is no change of a plane.",
  notWritten: sentence(({ faults }: { faults: string }) => `${faults}\nNothing was written.`, {
    faults: "my-plane.yaml:3:8: bed.angle: read 300; allowed: 35° to 65°",
  }),
  bug: sentence(({ message }: { message: string }) => `lamplane has a bug: ${message}`, { message: "no such part" }),
} as const;
