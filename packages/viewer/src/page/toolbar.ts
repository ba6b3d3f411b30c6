// The strip over the sheet: what the page is for, the way back, and behind one button what is wanted seldom.

import { html, setAttributes } from "../elements.ts";
import { EXAMPLES } from "../state/examples.ts";
import { keptClassName } from "../state/kept-class.ts";
import { servedClassName } from "../state/served-class.ts";
import { BENCH } from "../words/bench.ts";
import { CLASS } from "../words/class.ts";
import { COMMANDS, PURPOSE } from "../words/page.ts";
import { ROUTER } from "../words/router.ts";
import { SHARE } from "../words/share.ts";
import type { FollowedFile } from "./followed-file.ts";

export interface ToolbarActions {
  begin(example: string): void;
  openFiles(files: readonly File[]): void;
  backToClass(): void;
  save(): void;
  undo(): void;
  redo(): void;
  measure(): void;
  share(): void;
  goToBench(): void;
  openRouter(): void;
  switchTheme(): void;
  writeBack(): void;
}

export interface Toolbar {
  readonly element: HTMLElement;
  mark(example: string | undefined): void;
  follow(file: Pick<FollowedFile, "writeBackHelp"> | undefined, isChanged: boolean): void;
  /** Whether there is a way back, and a way forth again. */
  showWays(back: boolean, forth: boolean): void;
  readonly measuring: HTMLButtonElement;
}

export function createToolbar(actions: ToolbarActions): Toolbar {
  const examples = createExamples(actions);
  const undo = commandButton("undo", "↶", actions.undo, COMMANDS.undo);
  const redo = commandButton("redo", "↷", actions.redo, COMMANDS.redo);
  const back = commandButton("write-back", COMMANDS.writeBack, actions.writeBack);
  back.hidden = true;
  const measuring = commandButton("measure", COMMANDS.measure, actions.measure, COMMANDS.measureHelp);
  measuring.setAttribute("aria-pressed", "false");
  const element = html(
    "header",
    { class: "toolbar" },
    html("h1", {}, "lamplane"),
    html("p", { class: "purpose" }, PURPOSE),
    html(
      "div",
      { class: "ways", role: "group", "aria-label": COMMANDS.wayBack },
      ...backToClass(actions),
      back,
      undo,
      redo,
    ),
    createMore(examples, measuring, actions),
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
      back.title = file?.writeBackHelp ?? "";
    },
    showWays(hasBack, hasForth) {
      setUsable(undo, hasBack);
      setUsable(redo, hasForth);
    },
  };
}

/** The way back, where the plane is one of a class. */
function backToClass(actions: ToolbarActions): HTMLElement[] {
  const name = keptClassName() ?? servedClassName();
  return name === undefined ? [] : [commandButton("to-class", CLASS.back(name), actions.backToClass, CLASS.backHelp)];
}

/** Greyed and passed over by the Tab key, yet it keeps the focus that it may have. */
const setUsable = (button: HTMLButtonElement, isUsable: boolean) =>
  setAttributes(button, { "aria-disabled": String(!isUsable), tabindex: isUsable ? 0 : -1 });

function commandButton(id: string, text: string, act: () => void, title?: string): HTMLButtonElement {
  const button = html("button", { type: "button", id, title, "aria-label": text.length < 2 ? title : undefined }, text);
  button.addEventListener("click", act);
  return button;
}

const createExamples = ({ begin }: ToolbarActions): HTMLButtonElement[] =>
  Object.keys(EXAMPLES).map((name) => {
    const button = html("button", { type: "button", "data-example": name }, name);
    button.addEventListener("click", () => begin(name));
    return button;
  });

function createMore(examples: readonly HTMLElement[], measuring: HTMLElement, actions: ToolbarActions): HTMLElement {
  const more = html(
    "details",
    { class: "more", id: "more" },
    html("summary", { "aria-label": COMMANDS.more, title: COMMANDS.more }, "⋯"),
    html(
      "div",
      { class: "examples", role: "group", "aria-label": COMMANDS.exampleDesigns },
      html("span", { class: "toolbar-label" }, COMMANDS.examples),
      ...examples,
    ),
    html(
      "div",
      { class: "toolbar-actions", role: "group", "aria-label": COMMANDS.designFile },
      createPicker(actions),
      commandButton("save", COMMANDS.save, actions.save, COMMANDS.saveHelp),
      commandButton("share-more", SHARE.open, actions.share, SHARE.openHelp),
      commandButton("bench", BENCH.open, actions.goToBench, BENCH.openHelp),
      commandButton("router", ROUTER.open, actions.openRouter, ROUTER.openHelp),
      measuring,
      commandButton("theme", COMMANDS.theme, actions.switchTheme, COMMANDS.themeHelp),
      commandButton("print", COMMANDS.print, () => window.print(), COMMANDS.printHelp),
    ),
  );
  return more;
}

function createPicker({ openFiles }: ToolbarActions): HTMLElement {
  const picker = html("input", {
    type: "file",
    multiple: true,
    accept: ".yaml,.yml,.json,.csv,.tsv,text/yaml,application/json,text/csv",
    id: "open-file",
  });
  picker.addEventListener("change", () => {
    const files = [...(picker.files ?? [])];
    if (files.length > 0) openFiles(files);
    picker.value = "";
  });
  return html("label", { for: "open-file", class: "open-file", title: COMMANDS.openHelp }, COMMANDS.open, picker);
}
