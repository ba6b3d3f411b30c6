// The tables of test/proof.md about mutants.

/** 95 % interval of a share. @see E. B. Wilson, JASA 22 (1927) 209–212 */
function wilson(share, n) {
  const z2 = 1.959964 ** 2;
  const middle = (share + z2 / (2 * n)) / (1 + z2 / n);
  const half = (Math.sqrt(z2) / (1 + z2 / n)) * Math.sqrt((share * (1 - share)) / n + z2 / (4 * n * n));
  return `${(middle - half).toFixed(2)} … ${(middle + half).toFixed(2)}`;
}

const flat = (code) => code.replace(/\s+/g, " ").replaceAll("|", "\\|");
export const placeOf = ({ file, line }) => `${file.replace(/^packages\//, "").replace("/src/", "/")}:${line}`;
/** The row of a mutant that no test saw. */
export const survivorRow = (mutant) => `| ${placeOf(mutant)} | \`${flat(mutant.marked)}\` | \`${flat(mutant.text)}\` |`;
const reasonRow = (mutant) => `${survivorRow(mutant)} ${mutant.why} |`;

/** Measures of layout are counted apart: no law says what they should be (`layout-measures.js`). */
function shareRow(name, all, done) {
  const [rest, layout] = [false, true].map((ofLayout) => done.filter((mutant) => mutant.ofLayout === ofLayout));
  const [judged, ofLayout] = [rest, layout].map(countSeen);
  const whole = countSeen(done);
  return `| ${[
    name,
    all.length,
    rest.length,
    judged.explained,
    judged.seen,
    (judged.seen / judged.n).toFixed(2),
    wilson(judged.seen / judged.n, judged.n),
    layout.length,
    ofLayout.seen,
    (whole.seen / whole.n).toFixed(2),
  ].join(" | ")} |`;
}

function countSeen(tried) {
  const explained = tried.filter((mutant) => mutant.why && !mutant.seen).length;
  return { explained, seen: tried.filter((mutant) => mutant.seen).length, n: tried.length - explained || 1 };
}

/** The whole report. @param all every mutant @param done those judged, with `seen` */
export function reportOf(groups, all, done, seed) {
  const ofGroup = (some, { name }) => some.filter((mutant) => mutant.group === name);
  const unseen = done.filter((mutant) => !mutant.seen && !mutant.why);
  const rows = (some) => ["| where | is « » | was made |", "| --- | --- | --- |", ...some.map(survivorRow).sort()];
  return [
    `Seed ${seed}.`,
    "",
    "| sources | mutants in all | tried | equivalent | seen | share seen of the rest | 95 % interval | measures of layout tried | of them seen | share with them |",
    "| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |",
    ...groups.map((group) => shareRow(group.name, ofGroup(all, group), ofGroup(done, group))),
    shareRow("all", all, done),
    "",
    "Not seen:",
    "",
    ...rows(unseen.filter((mutant) => !mutant.ofLayout)),
    "",
    "Measures of layout, not seen:",
    "",
    ...rows(unseen.filter((mutant) => mutant.ofLayout)),
    "",
    "Equivalent, and why (all that `test/mutants/equivalent.js` holds; each is tried when the sample draws it, and must not be seen):",
    "",
    "| where | is « » | was made | why nobody sees it |",
    "| --- | --- | --- | --- |",
    ...all
      .filter((mutant) => mutant.why)
      .map(reasonRow)
      .sort(),
  ].join("\n");
}
