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

function groupRow({ name }, all, done) {
  const [whole, tried] = [all, done].map((some) => some.filter((mutant) => mutant.group === name));
  const explained = tried.filter((mutant) => mutant.why && !mutant.seen).length;
  return shareRow(name, whole.length, tried.length, explained, tried.filter((mutant) => mutant.seen).length);
}

function shareRow(name, whole, tried, explained, seen) {
  const n = tried - explained || 1;
  return `| ${name} | ${whole} | ${tried} | ${explained} | ${seen} | ${(seen / n).toFixed(2)} | ${wilson(seen / n, n)} |`;
}

/** The whole report. @param all every mutant @param done those judged, with `seen` */
export function reportOf(groups, all, done, seed) {
  const explained = done.filter((mutant) => mutant.why && !mutant.seen).length;
  return [
    `Seed ${seed}.`,
    "",
    "| sources | mutants in all | tried | equivalent | seen | share seen of the rest | 95 % interval |",
    "| --- | --- | --- | --- | --- | --- | --- |",
    ...groups.map((group) => groupRow(group, all, done)),
    shareRow("all", all.length, done.length, explained, done.filter((mutant) => mutant.seen).length),
    "",
    "Not seen:",
    "",
    "| where | is « » | was made |",
    "| --- | --- | --- |",
    ...done
      .filter((mutant) => !mutant.seen && !mutant.why)
      .map(survivorRow)
      .sort(),
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
