// Words of `check`, and of the findings that `build` prints.
import { countText, sentence } from "@lamplane/parameters/words";

interface Verdict {
  readonly name: string;
  readonly stops: number;
  readonly warnings: number;
  readonly notes: number;
}

export const CHECK = {
  verdict: sentence(
    ({ name, stops, warnings, notes }: Verdict) => {
      const counts = [
        stops > 0 ? countText(stops, "check fails", "checks fail") : "no check fails",
        warnings > 0 ? countText(warnings, "warning") : "",
        notes > 0 ? countText(notes, "note") : "",
      ];
      return `${name}: ${counts.filter(Boolean).join(", ")}.${stops > 0 ? " This plane cannot be built as it is." : ""}`;
    },
    { name: "trestle-jack", stops: 2, warnings: 1, notes: 0 },
    { name: "trestle-jack", stops: 0, warnings: 0, notes: 1 },
  ),
  brief: sentence(
    ({ subjects }: { subjects: readonly string[] }) =>
      `${countText(subjects.length, "warning")}: ${subjects.join("; ")}. \`lamplane check\` shows more.`,
    { subjects: ["Throat narrows", "Cross pin sag, fine shaving (indicative)"] },
  ),
  stop: "Fails",
  warning: "Warnings",
  note: "Notes",
  passes: "Passed",
  passed: sentence(({ count }: { count: number }) => `${countText(count, "check")} passed (--all lists them)`, {
    count: 52,
  }),
  fix: sentence(({ changes }: { changes: string }) => ` — Fix: ${changes}`, { changes: "ramp.angle 57 → 55" }),
  source: sentence(({ source }: { source: string }) => `Source: ${source}`, { source: "plane geometry" }),
  repair: "To clear every failure, change:",
  noRepair: "No small set of changes clears every failure. Use another iron or another plan.",
} as const;
