// The strip over the sheet: begin with an example or a file, keep what was made, go back, measure, light or dark.

import { html } from "../elements.ts";
import { EXAMPLES } from "../state/examples.ts";

export interface ToolbarActions {
  begin(example: string): void;
  openFile(file: File): void;
  save(): void;
  undo(): void;
  redo(): void;
  measure(): void;
  switchTheme(): void;
  writeBack(): void;
}

export interface Toolbar {
  readonly element: HTMLElement;
  mark(example: string | undefined): void;
  follow(file: string | undefined, isChanged: boolean): void;
  readonly measuring: HTMLButtonElement;
}

export function createToolbar(actions: ToolbarActions): Toolbar {
  const examples = Object.keys(EXAMPLES).map((name) => {
    const button = html("button", { type: "button", "data-example": name }, name);
    button.addEventListener("click", () => actions.begin(name));
    return button;
  });
  const picker = html("input", {
    type: "file",
    accept: ".yaml,.yml,.json,text/yaml,application/json",
    id: "open-file",
  });
  const actionButton = (text: string, title: string, act: () => void) => {
    const button = html("button", { type: "button", title }, text);
    button.addEventListener("click", act);
    return button;
  };
  const measuring = actionButton("measure", "Measure between two points (M)", actions.measure);
  measuring.setAttribute("aria-pressed", "false");
  const back = actionButton("write back", "Write the changes into the file that this sheet follows", actions.writeBack);
  back.hidden = true;
  picker.addEventListener("change", () => {
    const [file] = picker.files ?? [];
    if (file) actions.openFile(file);
    picker.value = "";
  });
  const element = html(
    "header",
    { class: "toolbar" },
    html("h1", {}, "lamplane"),
    html(
      "div",
      { class: "examples", role: "group", "aria-label": "Example designs" },
      html("span", { class: "toolbar-label" }, "examples"),
      ...examples,
    ),
    html(
      "div",
      { class: "toolbar-actions", role: "group", "aria-label": "Design file" },
      html(
        "label",
        { for: "open-file", class: "open-file", title: "Open a design file; or drop one on the page" },
        "open…",
        picker,
      ),
      actionButton("save", "Save the design file with its changes", actions.save),
      back,
      actionButton("undo", "Undo (Ctrl+Z)", actions.undo),
      actionButton("redo", "Redo (Ctrl+Shift+Z)", actions.redo),
      measuring,
      actionButton("light / dark", "Paper or slate", actions.switchTheme),
      actionButton("print", "Print the sheet", () => window.print()),
    ),
  );
  return {
    element,
    measuring,
    mark(example) {
      for (const button of examples) button.setAttribute("aria-pressed", String(button.dataset.example === example));
    },
    follow(file, isChanged) {
      back.hidden = file === undefined;
      back.disabled = !isChanged;
      back.title = `Write the changes into ${file}`;
    },
  };
}
