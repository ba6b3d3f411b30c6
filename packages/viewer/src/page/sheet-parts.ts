// Every part of the sheet, made and laid out once; the controller in `sheet.ts` fills them.
import type { Cure } from "@lamplane/bench/checks";
import { type BodyField, createBodyField } from "../body/body-field.ts";
import { html } from "../elements.ts";
import { createLeaders, type Leaders } from "../notes/leaders.ts";
import { createNotes, type Notes } from "../notes/notes.ts";
import { createPlotFields, type PlotFields } from "../plots/plot-field.ts";
import type { StageName } from "../protocol/sheet-data.ts";
import type { View } from "../protocol/view.ts";
import { createField, type Field } from "../sheet/field.ts";
import { createMeasureTool, type MeasureTool } from "../sheet/measure-tool.ts";
import type { ControlHandlers } from "../sheet/number-control.ts";
import { createSteps, type Steps } from "../steps/steps.ts";
import { createDownloads } from "./downloads.ts";
import { createFaultList, type FaultList } from "./fault-list.ts";
import { createSchedule, type Schedule } from "./schedule.ts";
import { createTitleBlock, type TitleBlock } from "./title-block.ts";
import { createToolbar, type Toolbar, type ToolbarActions } from "./toolbar.ts";

export interface SheetParts {
  readonly sheet: HTMLElement;
  readonly fields: Readonly<Record<View["name"], Field>>;
  readonly body: BodyField;
  readonly notes: Notes;
  readonly leaders: Leaders;
  readonly steps: Steps;
  readonly schedule: Schedule;
  readonly title: TitleBlock;
  readonly toolbar: Toolbar;
  readonly faults: FaultList;
  readonly measure: MeasureTool;
  readonly plots: PlotFields;
}

export interface SheetActions extends ToolbarActions {
  applyCure(cure: readonly Cure[]): void;
  goTo(stage: StageName): void;
  /** The design file with every change in it, and the plane's name: what files are made of. */
  text(): Promise<string>;
  name(): string;
}

const SMALL = 340; // px: greatest height of a detail

export function createSheetParts(page: HTMLElement, handlers: ControlHandlers, actions: SheetActions): SheetParts {
  const fields = createFields(handlers);
  const sheet = html("main", { class: "sheet" });
  const parts: SheetParts = {
    sheet,
    fields,
    body: createBodyField(),
    notes: createNotes(actions.applyCure),
    leaders: createLeaders(sheet),
    steps: createSteps(actions.goTo, handlers),
    schedule: createSchedule(handlers),
    title: createTitleBlock(),
    toolbar: createToolbar(actions),
    faults: createFaultList(),
    measure: createMeasureTool(fields.elevation),
    plots: createPlotFields(),
  };
  fields.elevation.element.append(parts.measure.element);
  const { mouth, stack, end } = fields;
  const { plots } = parts;
  sheet.append(
    parts.faults.element,
    parts.notes.element,
    html("section", { class: "main-view", "aria-label": "Side elevation" }, fields.elevation.element),
    html("section", { class: "body-view", "aria-label": "Body in 3D" }, parts.body.element),
    html(
      "section",
      { class: "details", "aria-label": "Details" },
      html("div", { class: "detail-mouth" }, mouth.element, plots.of.mouth.element, plots.of.shares.element),
      html("div", { class: "detail-stack" }, stack.element, plots.of.throat.element),
      html("div", { class: "detail-end" }, end.element, plots.of.seasons.element),
    ),
    parts.steps.element,
    createDownloads({ text: () => actions.text(), name: () => actions.name() }).element,
    parts.schedule.element,
    parts.title.element,
    parts.leaders.element,
  );
  page.append(parts.toolbar.element, sheet);
  return parts;
}

function createFields(handlers: ControlHandlers): Record<View["name"], Field> {
  return {
    elevation: createField("elevation", {
      padding: { left: 122, right: 150 },
      narrow: { left: 62, right: 58 },
      tallest: () => Math.max(360, innerHeight * 0.62),
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
