// Whether a change that ends one complaint brings another check to its limit: such a change is worse than it looks.
import { EPSILON } from "@lamplane/geometry";
import { rowAt } from "@lamplane/parameters/design";
import type { Cure } from "../finding.ts";
import type { Judgement } from "./judgement.ts";

/** A passed value so near to its limit, as a share of it, has no room left. */
const NEAR_SHARE = 0.05;
/** The same where the limit is about 0. */
const NEAR_BY_UNIT: Readonly<Record<string, number>> = { mm: 0.1, "°": 0.25 };

/** How far a judged value lies on the right side of its limit; undefined where the limit is no bound. */
export function marginOf({ value, limit, relation }: Judgement): number | undefined {
  if (relation === undefined) return undefined;
  return relation === "at most" ? limit - value : value - limit;
}

const isNear = (judgement: Judgement, margin: number): boolean =>
  margin < Math.max(NEAR_SHARE * Math.abs(judgement.limit), NEAR_BY_UNIT[judgement.unit] ?? 0);

const keyOf = ({ code, subject }: Judgement): string => `${code} ${subject}`;

/** Judgements but that of `code` which a change has brought to their limits, or further beyond them. */
export const crowdedChecks = (code: string, before: readonly Judgement[], after: readonly Judgement[]): Judgement[] =>
  worseChecks(code, before, after).filter(
    (judgement) => judgement.severity !== "passed" || isNear(judgement, marginOf(judgement)!),
  );

/** Findings as grave as this one, or graver, which a change that ends it has brought about or made worse. */
export const harmedChecks = (
  { code, severity }: Judgement,
  before: readonly Judgement[],
  after: readonly Judgement[],
): Judgement[] =>
  worseChecks(code, before, after).filter((judgement) => {
    const known = before.find((each) => keyOf(each) === keyOf(judgement));
    const isNoWorse = known?.severity === judgement.severity && marginOf(judgement)! >= marginOf(known)! - EPSILON;
    return !isNoWorse && (judgement.severity === "stop" || (judgement.severity === "warning" && severity !== "stop"));
  });

/** Judgements but that of `code` whose margin a change has lessened, and findings that it has brought about. */
function worseChecks(code: string, before: readonly Judgement[], after: readonly Judgement[]): Judgement[] {
  const earlier = new Map(before.map((judgement) => [keyOf(judgement), judgement]));
  return after.filter((judgement) => {
    const margin = marginOf(judgement);
    if (judgement.code === code || margin === undefined || judgement.severity === "note") return false;
    const known = earlier.get(keyOf(judgement));
    const was = known && known.limit === judgement.limit ? marginOf(known) : undefined;
    return was === undefined ? judgement.severity !== "passed" : margin < was - EPSILON;
  });
}

/** Whether a change goes to the end of what its row allows. */
export function isAtRowsEnd({ parameter, value }: Cure): boolean {
  const row = rowAt(parameter);
  return (
    row.kind === "number" && typeof value === "number" && (value <= row.min + EPSILON || value >= row.max - EPSILON)
  );
}
