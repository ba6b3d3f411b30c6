// The sign of a button that plays, or pauses what plays.
import { svg } from "./elements.ts";

export const playSign = (isPlaying: boolean): SVGElement =>
  svg(
    "svg",
    { class: "play-sign", viewBox: "0 0 12 12", "aria-hidden": "true" },
    svg("path", { d: isPlaying ? "M2 1h3v10h-3zM7 1h3v10h-3z" : "M2 0.5L11 6L2 11.5Z" }),
  );
