// Every part of the sheet, made and laid out once; `SheetController` fills them.
import type { Cure } from "@lamplane/bench/checks";
import { type BodyField, createBodyField } from "../body/body-field.ts";
import { html } from "../elements.ts";
import { createLeaders, type Leaders } from "../notes/leaders.ts";
import { createNotes, type Notes } from "../notes/notes.ts";
import { createPlotFields, type PlotFields } from "../plots/plot-field.ts";
import type { StageName } from "../protocol/build-steps.ts";
import type { View } from "../protocol/view.ts";
import { createField, type Field } from "../sheet/field.ts";
import { createMeasureTool, type MeasureTool } from "../sheet/measure-tool.ts";
import type { ControlHandlers } from "../sheet/number-control.ts";
import { createSteps, type Steps } from "../steps/steps.ts";
import { createStrip, type Strip } from "../steps/strip.ts";
import { BENCH } from "../words/bench.ts";
import { COMMANDS, SHEET } from "../words/page.ts";
import { createDownloads } from "./downloads.ts";
import { createFaultList, type FaultList } from "./fault-list.ts";
import { createIronLine, type IronLine } from "./iron-line.ts";
import { createRefusal, type Refusal } from "./refusal.ts";
import { createSchedule, type Schedule } from "./schedule.ts";
import { createTitleBlock, type TitleBlock } from "./title-block.ts";
import { createToolbar, type Toolbar, type ToolbarActions } from "./toolbar.ts";

export interface SheetParts {
  readonly sheet: HTMLElement;
  readonly fields: Readonly<Record<View["name"], Field>>;
  readonly body: BodyField;
  readonly notes: Notes;
  readonly leaders: Leaders;
  readonly iron: IronLine;
  readonly strip: Strip;
  readonly steps: Steps;
  readonly schedule: Schedule;
  readonly title: TitleBlock;
  readonly toolbar: Toolbar;
  readonly faults: FaultList;
  readonly refusal: Refusal;
  readonly measure: MeasureTool;
  readonly plots: PlotFields;
}

export interface SheetActions extends ToolbarActions {
  /** What stands on the sheet has moved, or numbers have come or gone: leaders go another way. */
  layoutChanged(): void;
  applyCure(cure: readonly Cure[]): void;
  goTo(stage: StageName): void;
  /** The maker's unit of length. */
  switchUnits(units: "mm" | "in"): void;
  /** Back from the steps to the plane alone. */
  endBuild(): void;
  /** The design file with every change in it, and the plane's name: what files are made of. */
  text(): Promise<string>;
  name(): string;
}

const LOWEST = 300; // px: least height of the elevation
const AROUND_ELEVATION = 306; // px: what stands over and under it on the first screen
const PRINTED = 440; // px: height of the printed elevation, whatever the window
const isPrinting = (): boolean => document.body.classList.contains("is-printing");
const UNDER_ELEVATION = 240; // px
const ONE_COLUMN = 956; // px: as in the style sheet
const SMALL = 340; // px: greatest height of a detail

export function createSheetParts(page: HTMLElement, handlers: ControlHandlers, actions: SheetActions): SheetParts {
  const sheet = html("main", { class: "sheet", "data-mode": "opening" });
  const fields = createFields(handlers, () => sheet.dataset.mode === "build" && sheet.clientWidth > ONE_COLUMN);
  const parts: SheetParts = {
    sheet,
    fields,
    body: createBodyField(),
    notes: createNotes(actions.applyCure, actions.layoutChanged),
    leaders: createLeaders(sheet),
    iron: createIronLine(handlers, actions.switchUnits),
    strip: createStrip(actions.goTo),
    steps: createSteps(actions.endBuild, handlers),
    schedule: createSchedule(handlers),
    title: createTitleBlock(actions.share),
    toolbar: createToolbar(actions),
    faults: createFaultList(),
    refusal: createRefusal(),
    measure: createMeasureTool(fields.elevation),
    plots: createPlotFields(),
  };
  fields.elevation.element.append(parts.measure.element);
  parts.steps.element.append(createBenchLink(actions.goToBench));
  const downloads = createDownloads({ text: () => actions.text(), name: () => actions.name() });
  const allDimensions = createAllDimensions(fields.elevation, actions.layoutChanged);
  sheet.append(
    parts.faults.element,
    html("div", { class: "opening" }, parts.iron.element),
    html("section", { class: "main-view", "aria-label": SHEET.elevation }, fields.elevation.element),
    parts.strip.element,
    html("div", { class: "sheet-actions" }, allDimensions, downloads.whole),
    parts.notes.element,
    parts.steps.element,
    parts.steps.picture,
    html("section", { class: "body-view", "aria-label": SHEET.body }, parts.body.element),
    createDetails(parts),
    downloads.element,
    parts.schedule.element,
    parts.title.element,
    parts.leaders.element,
  );
  page.append(parts.toolbar.element, sheet, parts.refusal.element);
  return parts;
}

/** Mouth, stack and end, each with the plots of what it shows. */
function createDetails({ fields: { mouth, stack, end }, plots: { film, of } }: SheetParts): HTMLElement {
  const column = (name: string, ...elements: HTMLElement[]) => html("div", { class: `detail-${name}` }, ...elements);
  return html(
    "section",
    { class: "details", "aria-label": SHEET.details },
    column("mouth", mouth.element, film.element, of.mouth.element, of.shares.element),
    column("stack", stack.element, of.throat.element),
    column("end", end.element, of.seasons.element),
  );
}

/** From the step on the sheet to the same build in large type. */
function createBenchLink(goToBench: () => void): HTMLElement {
  const button = html("button", { type: "button", class: "to-bench", title: BENCH.openHelp }, BENCH.open);
  button.addEventListener("click", goToBench);
  return button;
}

function createAllDimensions(elevation: Field, changed: () => void): HTMLElement {
  const button = html("button", { type: "button", class: "all-dimensions", "aria-pressed": "false" });
  button.append(COMMANDS.allDimensions);
  button.addEventListener("click", () => {
    const isAll = button.getAttribute("aria-pressed") === "false";
    button.setAttribute("aria-pressed", String(isAll));
    elevation.showAll(isAll);
    changed();
  });
  return button;
}

/** @param isShared whether body and picture stand under the elevation on the first screen */
function createFields(handlers: ControlHandlers, isShared: () => boolean): Record<View["name"], Field> {
  return {
    elevation: createField("elevation", {
      padding: { left: 122, right: 150 },
      narrow: { left: 74, right: 76 },
      narrowFractions: 24,
      tallest: () =>
        isPrinting() ? PRINTED : Math.max(LOWEST, innerHeight - AROUND_ELEVATION - (isShared() ? UNDER_ELEVATION : 0)),
      handlers,
    }),
    mouth: createField("mouth", {
      padding: { left: 74, right: 124 },
      narrow: { left: 66, right: 112 },
      narrowFractions: 46,
      tallest: () => SMALL,
      clipped: true,
      handlers,
    }),
    stack: createField("stack", {
      padding: { left: 118, right: 132 },
      narrow: { left: 62, right: 58 },
      tallest: () => SMALL,
      handlers,
    }),
    end: createField("end", {
      padding: { left: 40, right: 176 },
      narrow: { left: 8, right: 172 },
      tallest: () => SMALL,
      handlers,
    }),
  };
}
