// From the tests that were run to the table of faults: one line for each fault and place, with what was seen.

/** What stands at the head of test/faults.md. */
const HEAD = `# Faults put in on purpose

Written by \`pnpm faults\` from a run of the tests that are marked by \`fault\` of
[test/support/faults.ts](../test/support/faults.ts); nothing in it is typed. A fault with several cases holds when every case does.
`;
const COLUMNS = ["fault", "put in where", "what must survive", "result", "test"];

/** Cases → lines; the order follows the places, then the files. */
export function linesOf(cases) {
  const lines = new Map();
  for (const { row, name, file, result } of cases) {
    const { on, survives, needs } = row;
    const fault = row.fault ?? name.replaceAll(" > ", ", ");
    const key = JSON.stringify([on, fault, survives, file]);
    const line = lines.get(key) ?? { fault, on, survives, file, needs, results: [] };
    line.results.push({ state: result.state, note: result.note });
    lines.set(key, line);
  }
  return [...lines.values()].sort((a, b) => order(a.on, b.on) || order(a.file, b.file));
}

const order = (a, b) => (a < b ? -1 : a > b ? 1 : 0);

/** The first cells of a line, which do not depend on the run. */
export const cellsOf = ({ fault, on, survives }) => [fault, on, survives].map(cell);

export function documentOf(lines) {
  const rows = lines.map((line) => [...cellsOf(line), resultOf(line), `[${line.file}](../${line.file})`]);
  const table = [COLUMNS, COLUMNS.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`).join("\n");
  const count = lines.reduce((sum, { results }) => sum + results.length, 0);
  return `${HEAD}\n${lines.length} faults, ${count} cases.\n\n${table}\n`;
}

function resultOf({ results, needs }) {
  const count = (state) => results.filter((result) => result.state === state).length;
  const [held, failed] = [count("passed"), count("failed")];
  const cases = results.length === 1 ? "" : ` (${held} of ${results.length} cases)`;
  if (failed > 0) return `**does not hold**${cases}`;
  if (held > 0) return `seen to hold${cases}`;
  return `not run: ${results.find(({ note }) => note)?.note ?? `needs ${needs ?? "what this machine lacks"}`}`;
}

/** Text that no reader of Markdown takes for anything but itself; what does not show is told by its number. */
const cell = (text) =>
  text
    .replace(/[\p{C}\p{DI}]/gu, (sign) => `U+${sign.codePointAt(0).toString(16).toUpperCase().padStart(4, "0")}`)
    .replace(/[\\|<>*_`[\]]/g, (sign) => `&#${sign.charCodeAt(0)};`);
