// Everything that stands on the sheet, drawn from what the worker responds. Each redraw is timed.
import { FIRST_SHOWN, type StageName } from "../protocol/build-steps.ts";
import { UNREQUESTED, type WorkerResponse } from "../protocol/messages.ts";
import type { FigureDescription, Guide, RemediedFinding, SheetPlane, SheetWords } from "../protocol/sheet-data.ts";
import type { SheetState } from "../state/store.ts";
import { RAMP_KIND } from "../words/page.ts";
import { DetailViews } from "./detail-views.ts";
import { embeddedPlane, isEmbeddedPlane } from "./embedded-plane.ts";
import type { LatencyTimer } from "./latency-timer.ts";
import type { SheetParts } from "./sheet-parts.ts";
import { paintWood } from "./wood-tones.ts";

/** How far the body stands open at a step, so that what is worked on is seen. */
const OPENED: Partial<Readonly<Record<StageName, number>>> = {
  cuts: 0.36,
  bed: 0.36,
  recess: 0.36,
  pin: 0.36,
  "dry-fit": 0.5,
};

/** Undefined where the step that is shown has no ramp. */
function rampKind({ views }: SheetPlane): keyof typeof RAMP_KIND | undefined {
  const ids = views.flatMap(({ dimensions }) => dimensions.map(({ id }) => id));
  return ids.includes("ramp.wearAngle") ? "curved" : ids.includes("ramp.angle") ? "straight" : undefined;
}

export class DrawingView {
  readonly #parts: SheetParts;
  readonly #timer: LatencyTimer;
  readonly #details: DetailViews;
  #figures: Readonly<Record<string, FigureDescription>> = {};
  #cures: { readonly findings: readonly RemediedFinding[]; readonly requestId: number } | undefined;
  #plane: SheetPlane | undefined;
  /** Of sheet and window, for which the views are drawn, px. */
  #size: { readonly width: number; readonly height: number } | undefined;
  /** Whether no worker's plane is drawn yet, but the one that the page was built with. */
  #isOpening = false;
  /** Whether the steps are gone through: then the plane at work is one of them. */
  #isBuilding = false;
  /** Whether the hand is on a number: then scales and notes keep their places. */
  isDragging = false;

  constructor(parts: SheetParts, timer: LatencyTimer) {
    this.#parts = parts;
    this.#timer = timer;
    this.#details = new DetailViews(parts.fields);
  }

  get figures(): Readonly<Record<string, FigureDescription>> {
    return this.#figures;
  }

  /** The plane that is drawn; undefined before the first. */
  get plane(): SheetPlane | undefined {
    return this.#plane;
  }

  setFigureWords(figures: Readonly<Record<string, FigureDescription>>): void {
    this.#figures = figures;
  }

  /** Draws the plane that the page was built with, where it opens on that: no worker has started yet. */
  drawOpening(state: SheetState): void {
    const plane = embeddedPlane(state);
    if (!plane) return;
    this.layOutFor(plane.stage);
    this.#timer.begin(UNREQUESTED);
    this.drawPlane(plane, UNREQUESTED);
    this.#isOpening = true;
  }

  drawPlane(plane: SheetPlane, requestId: number): void {
    const isDrawn = this.#isOpening && isEmbeddedPlane(plane);
    this.#isOpening = false;
    if (isDrawn) return;
    this.#announceKind(plane);
    this.#plane = plane;
    paintWood(document.documentElement, plane.design.wood.body);
    this.#drawElevation();
    this.#parts.iron.show(plane);
    this.#parts.measure.show(plane);
    void this.#parts.sheet.offsetHeight; // laid out now, so that the measured time holds all of it
    this.#size ??= this.#sizeNow();
    this.#timer.finish("elevation", requestId);
    this.#details.draw(plane, this.isDragging, () => this.#timer.finish("details", requestId));
  }

  /** A ramp that turns curved, or straight again, while one design is changed; said until the next change. */
  #announceKind(next: SheetPlane): void {
    const last = this.#plane;
    const isSame = last?.design.name === next.design.name;
    const [was, is] = [last && rampKind(last), rampKind(next)];
    if (isSame && was === is && this.isDragging) return; // the words stay until the hand lets go
    this.#parts.notes.announce(isSame && was && is && was !== is ? RAMP_KIND[is] : "");
  }

  /** What stands beside the drawing, as soon as it is known. */
  showWords(words: SheetWords, stage: StageName, requestId: number): void {
    const { notes, schedule, steps, title, fields } = this.#parts;
    const plane = this.#plane!;
    notes.show(words, this.isDragging);
    if (this.#cures?.requestId === requestId) this.#showCures();
    schedule.show(plane);
    steps.show(words, plane, stage);
    title.show(plane, fields.elevation.scale()?.perMm);
    this.#drawLeaders();
    document.title = `${plane.design.name} · lamplane`;
    this.#timer.finish("words", requestId);
  }

  /** Back to the plane alone, once its step is shown. */
  endBuild(): void {
    this.#isBuilding = false;
  }

  /** The step is another: the sheet is laid out for the plane alone, or for the build. */
  layOutFor(stage: StageName): void {
    const { sheet, strip } = this.#parts;
    this.#isBuilding ||= stage !== FIRST_SHOWN;
    sheet.dataset.mode = this.#isBuilding ? "build" : "opening";
    strip.show(stage);
  }

  drawSolid({ parts, about, requestId }: Extract<WorkerResponse, { kind: "solid" }>, stage: StageName): void {
    this.#parts.body.show(parts, about, OPENED[stage] ?? 0, () => this.#timer.finish("solid", requestId));
  }

  showGuide(guide: Guide): void {
    this.#parts.steps.showGuide(guide);
    this.#parts.strip.draw(guide.strip);
  }

  /** Cures come from a worker of their own and may be there before the notes that they belong to. */
  addCures(findings: readonly RemediedFinding[], requestId: number): void {
    this.#cures = { findings, requestId };
    this.#showCures();
  }

  #showCures(): void {
    if (this.#plane && this.#cures) this.#parts.notes.addCures(this.#cures.findings, this.#plane.design);
    this.#drawLeaders();
  }

  /** Draws everything anew where it has another size. */
  resized(): void {
    const last = this.#size;
    this.#size = this.#sizeNow();
    if (last?.width === this.#size.width && last.height === this.#size.height) this.#drawLeaders();
    else this.redraw();
  }

  redraw(): void {
    this.#drawElevation();
    if (this.#plane) this.#details.drawNow(this.#plane, this.isDragging);
    if (this.#plane) this.#parts.measure.show(this.#plane);
    this.#drawLeaders();
  }

  /** Everything is fitted to the printed page before it is taken, and to the screen again after it. */
  fitTo(printing: boolean): void {
    const { fields, body, sheet } = this.#parts;
    sheet.parentElement!.classList.toggle("is-printing", printing);
    for (const field of Object.values(fields)) field.measure();
    this.redraw();
    body.refit();
  }

  #drawElevation() {
    const view = this.#plane?.views.find(({ name }) => name === "elevation");
    if (view) this.#parts.fields.elevation.draw(view, this.#plane!, this.isDragging);
  }

  readonly #sizeNow = () => ({ width: this.#parts.sheet.clientWidth, height: innerHeight });

  #drawLeaders() {
    const { leaders, notes, fields } = this.#parts;
    const places = this.#plane?.points;
    if (!places || !fields.elevation.scale()) return;
    if (notes.visible().length === 0) return leaders.clear();
    const frame = fields.elevation.overlay.ownerSVGElement!.getBoundingClientRect();
    leaders.draw(notes.visible(), (place) => {
      const spot = places[place];
      if (!spot) return undefined;
      const { x, y } = fields.elevation.pixelsOf(spot);
      return { x: frame.left + x, y: frame.top + y };
    });
  }
}
