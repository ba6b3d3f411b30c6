// The program's text round the line that runs.
import { html, reconcileChildren, setAttributes } from "../elements.ts";
import { ROUTER } from "../words/router.ts";
import type { RouterPath } from "./router-paths.ts";

export interface ProgramLines {
  readonly element: HTMLElement;
  show(path: RouterPath, file: number, line: number): void;
}

const BESIDE = 4; // lines before and after

export function createProgramLines(): ProgramLines {
  const head = html("p", { class: "router-file" });
  const list = html("ol", { class: "router-lines" });
  return {
    element: html("div", { class: "router-program", role: "group", "aria-label": ROUTER.program }, head, list),
    show({ files }, file, line) {
      const { path, lines } = files[file]!;
      const text = `${path} — ${ROUTER.line({ number: line, count: lines.length })}`;
      if (head.textContent !== text) head.textContent = text;
      const first = Math.max(1, Math.min(line - BESIDE, lines.length - 2 * BESIDE));
      const shown = lines.slice(first - 1, first + 2 * BESIDE).map((words, i) => ({ words, number: first + i }));
      reconcileChildren(
        list,
        shown,
        () => html("li", {}, html("span", { class: "router-number" }), html("code")),
        (item, { words, number }) => {
          item.firstElementChild!.textContent = String(number);
          item.lastElementChild!.textContent = words;
          setAttributes(item, { "aria-current": number === line ? "step" : undefined });
        },
      );
    },
  };
}
