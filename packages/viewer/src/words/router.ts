// What the page says of the router's path.

import type { CutRole } from "@lamplane/export/router";
import { sentence } from "@lamplane/parameters/words";

export const ROUTER = {
  open: "router path…",
  openHelp: "The cutter's path of each part, played line by line",
  title: "Router path",
  making: "Planning the paths…",
  part: "Part or sheet",
  onSheet: sentence((what: string) => `Sheets: ${what}`, "cheek-left"),
  close: "Close",
  play: "Play",
  pause: "Pause",
  back: "Previous pass",
  forth: "Next pass",
  speed: "Speed",
  speeds: { 1: "as fast as the router", 10: "10 times", 60: "60 times" } as Readonly<Record<number, string>>,
  position: "Place in the program",
  program: "Program, at the line that runs",
  none: "This design names no router. Give `router` and `cutters` in the design or in its shop file.",
  tryExample: "Try it with the example router",
  example: "Example: a small hobby router, 600 × 400 mm, two end mills and a drill.",
  notCut: "Not cut, and why",
  nothingCut: "This router cuts no part of this plane.",
  caution: "Seen here, not tried on a machine: run each program above the wood first.",
  roles: {
    rapid: "rapid move",
    pass: "pass",
    finish: "finishing pass",
    lead: "lead in or out",
    ramp: "ramp down",
    plunge: "straight down",
    rise: "up",
  } satisfies Readonly<Record<CutRole | "rapid", string>>,
  key: {
    pass: "pass, stronger the deeper",
    finish: "finishing pass",
    lead: "lead in and out",
    rapid: "rapid move, over the wood",
    tab: "tab",
    stock: "stock",
  },
  drawing: sentence(
    ({ title, tabs }: { title: string; tabs: number }) =>
      `${title} from above: stock, outline, the cutter's path${tabs > 0 ? `, ${tabs} tabs` : ""}`,
    { title: "Left cheek, inside up", tabs: 6 },
  ),
  reading: sentence(
    ({
      time,
      whole,
      role,
      depth,
      cutter,
    }: {
      time: string;
      whole: string;
      role: string;
      depth: string;
      cutter: string;
    }) => `${time} of ${whole}: ${role}, ${depth}, ${cutter}`,
    { time: "1:00", whole: "2:17", role: "pass", depth: "5.53 mm deep", cutter: "end-6" },
  ),
  line: sentence(({ number, count }: { number: number; count: number }) => `Line ${number} of ${count}`, {
    number: 101,
    count: 208,
  }),
  deep: sentence((depth: string) => `${depth} deep`, "4 mm"),
  over: sentence((height: string) => `${height} over the stock`, "6 mm"),
} as const;
