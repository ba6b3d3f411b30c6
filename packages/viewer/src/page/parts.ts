// Every part of the sheet, made and laid out once; the controller in `sheet.ts` fills them.
import type { Cure } from "@lamplane/bench/checks";
import { type BodyField, createBodyField } from "../body/body-field.ts";
import { html } from "../elements.ts";
import { createLeaders, type Leaders } from "../notes/leaders.ts";
import { createNotes, type Notes } from "../notes/notes.ts";
import { createPlots, type PlotFields } from "../plots/plot-field.ts";
import type { StageName, View } from "../protocol.ts";
import type { Hands } from "../sheet/control.ts";
import { createField, type Field } from "../sheet/field.ts";
import { createMeasure, type Measure } from "../sheet/measure.ts";
import { createSteps, type Steps } from "../steps/steps.ts";
import { createDesk, type Desk, type DeskDeeds } from "./desk.ts";
import { createDownloads } from "./downloads.ts";
import { createRefusal, type Refusal } from "./refusal.ts";
import { createSchedule, type Schedule } from "./schedule.ts";
import { createTitleBlock, type TitleBlock } from "./title-block.ts";

export interface Parts {
  readonly sheet: HTMLElement;
  readonly fields: Readonly<Record<View["name"], Field>>;
  readonly body: BodyField;
  readonly notes: Notes;
  readonly leaders: Leaders;
  readonly steps: Steps;
  readonly schedule: Schedule;
  readonly title: TitleBlock;
  readonly desk: Desk;
  readonly refusal: Refusal;
  readonly measure: Measure;
  readonly plots: PlotFields;
}

export interface Deeds extends DeskDeeds {
  mend(cure: readonly Cure[]): void;
  goTo(stage: StageName): void;
  /** The design file with every change in it, and the plane's name: what files are made of. */
  text(): Promise<string>;
  name(): string;
}

const SMALL = 340; // px: greatest height of a detail

export function makeParts(page: HTMLElement, hands: Hands, deeds: Deeds): Parts {
  const fields = makeFields(hands);
  const sheet = html("main", { class: "sheet" });
  const parts: Parts = {
    sheet,
    fields,
    body: createBodyField(),
    notes: createNotes(deeds.mend),
    leaders: createLeaders(sheet),
    steps: createSteps(deeds.goTo, hands),
    schedule: createSchedule(hands),
    title: createTitleBlock(),
    desk: createDesk(deeds),
    refusal: createRefusal(),
    measure: createMeasure(fields.elevation),
    plots: createPlots(),
  };
  fields.elevation.element.append(parts.measure.element);
  const { mouth, stack, end } = fields;
  const { plots } = parts;
  sheet.append(
    parts.refusal.element,
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
    createDownloads({ text: () => deeds.text(), name: () => deeds.name() }).element,
    parts.schedule.element,
    parts.title.element,
    parts.leaders.element,
  );
  page.append(parts.desk.element, sheet);
  return parts;
}

function makeFields(hands: Hands): Record<View["name"], Field> {
  return {
    elevation: createField("elevation", {
      padding: { left: 122, right: 150 },
      narrow: { left: 62, right: 58 },
      tallest: () => Math.max(360, innerHeight * 0.62),
      hands,
    }),
    mouth: createField("mouth", {
      padding: { left: 74, right: 124 },
      narrow: { left: 66, right: 112 },
      narrowFractions: 46,
      tallest: () => SMALL,
      clipped: true,
      hands,
    }),
    stack: createField("stack", {
      padding: { left: 118, right: 132 },
      narrow: { left: 62, right: 58 },
      tallest: () => SMALL,
      hands,
    }),
    end: createField("end", {
      padding: { left: 40, right: 176 },
      narrow: { left: 8, right: 172 },
      tallest: () => SMALL,
      hands,
    }),
  };
}
