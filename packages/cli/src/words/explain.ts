// Words of `explain`.
import { sentence } from "@lamplane/parameters/words";

export const EXPLAIN = {
  heads: { parameter: "PARAMETERS", figure: "FIGURES", check: "CHECKS", step: "STEPS" },
  head: sentence(({ name, kind }: { name: string; kind: string }) => `${name} (${kind})`, {
    name: "mouthGrowth",
    kind: "figure",
  }),
  range: sentence(({ name, range }: { name: string; range: string }) => `${name}: ${range}`, {
    name: "bed.angle",
    range: "35 to 65°; default 47°",
  }),
  choice: sentence(
    ({ choices, standard }: { choices: readonly string[]; standard: string }) =>
      `one of ${choices.join(", ")}; default ${standard}`,
    { choices: ["flatted", "round"], standard: "flatted" },
  ),
  text: sentence(({ standard }: { standard: string }) => `text; default ${standard}`, { standard: "beech, american" }),
  number: sentence(
    ({ min, max, unit, standard }: { min: number; max: number; unit: string; standard: string | undefined }) =>
      `${min} to ${max}${unit === "" || unit === "°" ? unit : ` ${unit}`}; ${standard === undefined ? "must be entered" : `default ${standard}`}`,
    { min: 35, max: 65, unit: "°", standard: "47°" },
    { min: 8, max: 120, unit: "mm", standard: undefined },
  ),
  auto: sentence(({ what }: { what: string }) => `auto: ${what}`, { what: "a third of the length" }),
  notMeasured: sentence(
    ({ min, max, unit }: { min: number; max: number; unit: string }) => `${min} to ${max}${unit}; empty until measured`,
    {
      min: 25,
      max: 75,
      unit: "°",
    },
  ),
  limit: sentence(
    ({ stop, warn, setBy }: Record<"stop" | "warn" | "setBy", string | undefined>) =>
      stop === undefined && warn === undefined
        ? "limit: follows from the plane"
        : [stop && `must be ${stop}`, warn && `should be ${warn}${setBy ? ` (${setBy})` : ""}`]
            .filter(Boolean)
            .join("; "),
    { stop: "at least 0.1 mm", warn: "at least 0.5 mm", setBy: undefined },
    { stop: "at least 1 ×", warn: "at least 3 ×", setBy: "hold.safety" },
    { stop: undefined, warn: undefined, setBy: undefined },
  ),
  decidedBy: sentence(({ parameters }: { parameters: readonly string[] }) => `depends on ${parameters.join(", ")}`, {
    parameters: ["pin.diameter", "pin.tenon"],
  }),
  measures: sentence(({ keys }: { keys: readonly string[] }) => `measure: ${keys.join(", ")}`, {
    keys: ["coreWidth", "cheekThickness"],
  }),
  locks: sentence(({ keys }: { keys: readonly string[] }) => `fixed from then on: ${keys.join(", ")}`, {
    keys: ["body.cheek"],
  }),
  formula: sentence(({ formula }: { formula: string }) => `formula: ${formula}`, { formula: "cot β + cot ρ" }),
  source: sentence(({ source }: { source: string }) => `source: ${source}`, { source: "plane geometry" }),
} as const;
