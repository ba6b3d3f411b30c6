// The sheet as a whole: the way of a change from the hand through the worker to the drawing. The newest question wins.
import { PLOT_SIZE } from "@lamplane/sheets";
import type { WorkerResponse } from "../protocol.ts";
import { type AddressState, type DesignOrigin, parseAddress } from "../state/address.ts";
import { initialOrigin, leftOutTexts } from "../state/design-origin.ts";
import { type Engine, startEngine } from "../state/engine.ts";
import { EXAMPLES } from "../state/examples.ts";
import { createStore, type SheetState, type Store } from "../state/store.ts";
import SheetWorker from "../worker/worker.ts?worker&inline";
import { DesignLoader } from "./design-loader.ts";
import { DrawingView } from "./drawing-view.ts";
import { faultTexts } from "./fault-list.ts";
import { dropFiles, type OpenedFile, readFile, saveText } from "./files.ts";
import { type FollowedFile, followFile } from "./followed-file.ts";
import { watchForHints } from "./hint.ts";
import { watchKeys } from "./keys.ts";
import { LatencyTimer } from "./latency-timer.ts";
import { switchShade, watchShade } from "./shade.ts";
import { createSheetParts, type SheetParts } from "./sheet-parts.ts";

const NARROW = 708; // px: as in the style sheet

export class SheetController {
  readonly #store: Store;
  readonly #engine: Engine;
  readonly #parts: SheetParts;
  readonly #drawing: DrawingView;
  readonly #loader: DesignLoader;
  readonly #timer = new LatencyTimer();
  readonly #followed: FollowedFile | undefined;
  /** Numbers of the last question, and of the one whose answer is drawn. */
  #requestId = 0;
  #drawnRequestId = 0;
  #plottedWidth = 0;
  /** What the address asked for and was left out, in words; until something else is done. */
  #leftOut: readonly string[] = [];
  /** What was drawn last, to go back to. */
  #lastDrawn: SheetState | undefined;

  constructor(page: HTMLElement) {
    const start = parseAddress(location.hash);
    this.#followed = followFile({
      changed: () => this.#loader.begin(),
      lost: (why) => this.#loader.lost([`${why}; the sheet keeps what it showed last`]),
      say: (words) => this.#parts.title.say(words),
    });
    this.#store = createStore({ ...start, beginning: this.#resolveOrigin(start.beginning) });
    this.#parts = createSheetParts(
      page,
      {
        change: (changes, holding) => this.#store.set(changes, holding),
        commit: () => this.#store.commit(),
        isPending: () => this.#drawnRequestId < this.#requestId,
        reportFault: (path, why) => this.#parts.refusal.showValueFault(path, why),
      },
      this.#actions(),
    );
    this.#drawing = new DrawingView(this.#parts, this.#timer);
    this.#engine = startEngine(
      (answer) => this.#handleResponse(answer),
      () => new SheetWorker(),
    );
    this.#loader = new DesignLoader({
      store: this.#store,
      engine: this.#engine,
      followed: this.#followed,
      refusal: this.#parts.refusal,
      requestSheet: () => this.#requestSheet(),
      restoreLast: (words) => this.#lastDrawn && this.#restore(this.#lastDrawn, words),
    });
    this.#reportAddress(start);
    this.#store.onChange((what, holding) => {
      this.#drawing.isDragging = holding;
      this.#leftOut = [];
      this.#parts.refusal.showActionFaults([]);
      if (what === "beginning") this.begin();
      else this.#requestSheet();
    });
    this.#watch(page);
  }

  begin(): void {
    const { beginning } = this.#store.now();
    this.#parts.toolbar.mark(beginning.kind === "example" ? beginning.name : undefined);
    this.#loader.begin();
  }

  readonly #availableOrigins = () => ({ examples: Object.keys(EXAMPLES), follows: this.#followed !== undefined });
  readonly #resolveOrigin = (asked: DesignOrigin | undefined) => initialOrigin(asked, this.#availableOrigins());

  #reportAddress(read: AddressState) {
    this.#leftOut = leftOutTexts(read, this.#availableOrigins());
    this.#parts.refusal.showActionFaults(this.#leftOut);
  }

  #actions() {
    return {
      begin: (name: string) => this.#store.begin({ kind: "example", name }),
      openFile: (file: File) => this.#openFile(file),
      save: () => this.#reportErrors(async () => saveText(this.#loader.fileName, await this.#currentText())),
      writeBack: () => this.#reportErrors(() => this.#writeBack()),
      text: () => this.#currentText(),
      name: () => this.#drawing.plane?.design.name ?? "plane",
      undo: () => void this.#store.undo(),
      redo: () => void this.#store.redo(),
      measure: () => {
        const on = this.#parts.measure.toggle();
        this.#parts.toolbar.measuring.setAttribute("aria-pressed", String(on));
      },
      shade: switchShade,
      applyCure: (cure: readonly { parameter: string; value: number | string }[]) =>
        this.#store.set(cure.map(({ parameter, value }) => [parameter, value] as const)),
      goTo: this.#goTo,
    };
  }

  readonly #goTo = (stage: Parameters<Store["setStage"]>[0]) => this.#store.setStage(stage);

  #watch(page: HTMLElement) {
    const drawing = this.#drawing;
    watchForHints(page, { figures: () => drawing.figures, plane: () => drawing.plane });
    watchKeys({ ...this.#actions() });
    watchShade(() => this.#parts.body.recolour());
    dropFiles(page, (file) => this.#openFile(file));
    new ResizeObserver(() => {
      drawing.redraw();
      if (drawing.plane && this.#plotWidth() !== this.#plottedWidth) this.#requestSheet();
    }).observe(this.#parts.sheet);
    addEventListener("beforeprint", () => drawing.fitTo(true));
    addEventListener("afterprint", () => drawing.fitTo(false));
    addEventListener("hashchange", () => {
      const read = parseAddress(location.hash);
      this.#store.begin(this.#resolveOrigin(read.beginning), read.changes, read.stage);
      this.#reportAddress(read);
    });
  }

  /** A file that cannot be read (a folder, or one that is gone) is told, and the sheet stays as it is. */
  async #openFile(file: File) {
    let read: OpenedFile;
    try {
      read = await readFile(file);
    } catch {
      return this.#parts.refusal.showActionFaults([`${file.name}: cannot be read; is it a file, and still there?`]);
    }
    this.#store.begin({ kind: "text", ...read });
  }

  #requestSheet() {
    const { changes, beginning } = this.#store.now();
    this.#parts.toolbar.follow(beginning.kind === "followed" ? this.#followed?.name : undefined, changes.size > 0);
    this.#plottedWidth = this.#plotWidth();
    this.#requestId = this.#engine.show(this.#designQuery(), this.#plottedWidth);
    this.#timer.begin(this.#requestId);
  }

  #designQuery() {
    const { changes, stage } = this.#store.now();
    return { base: this.#loader.base, changes: [...changes], stage };
  }

  /** A plot keeps its letters and gives up room where the sheet is a phone's. */
  #plotWidth(): number {
    return this.#parts.sheet.clientWidth < NARROW ? 100 : PLOT_SIZE.width; // mm
  }

  /** Nothing that was refused is kept: the sheet goes back to what it can draw, and tells why. A followed file is waited for. */
  #refused({ base, requestId, faults }: Extract<WorkerResponse, { kind: "refused" }>) {
    if (base !== this.#loader.base || (requestId > 0 && requestId !== this.#requestId)) return;
    const { beginning, changes } = this.#store.now();
    const words = faultTexts(faults);
    if (requestId === 0 && beginning.kind === "followed") return this.#loader.refused(words);
    const sound = new Map([...changes].filter(([path]) => !faults.some((fault) => fault.path === path)));
    if (requestId > 0 && sound.size < changes.size) this.#restore({ beginning, changes: sound }, words);
    else this.#restore(this.#lastDrawn ?? { beginning: this.#resolveOrigin(undefined), changes: new Map() }, words);
  }

  #restore({ beginning, changes }: Pick<SheetState, "beginning" | "changes">, words: readonly string[]) {
    const leftOut = this.#leftOut;
    this.#store.retract(beginning, changes);
    this.#leftOut = leftOut;
    this.#parts.refusal.showActionFaults([...leftOut, ...words]);
  }

  #handleResponse(answer: WorkerResponse) {
    const { body, plots, title } = this.#parts;
    const drawing = this.#drawing;
    if (answer.kind === "ready") drawing.setFigureWords(answer.figures);
    else if (answer.kind === "plane") {
      this.#drawnRequestId = answer.requestId;
      const held = this.#store.now();
      if (answer.requestId === this.#requestId && this.#loader.isLoadedFrom(held.beginning)) this.#lastDrawn = held;
      drawing.drawPlane(answer.plane, answer.requestId);
    } else if (answer.kind === "words") drawing.showWords(answer.words, this.#store.now().stage, answer.requestId);
    else if (answer.kind === "solid") drawing.drawSolid(answer);
    else if (answer.kind === "no-solid")
      body.showMessage("No body can be made of this design; the notes say what stands in the way.");
    else if (answer.kind === "refused") this.#refused(answer);
    else if (answer.kind === "opened") this.#loader.opened(answer.base);
    else if (answer.kind === "bug")
      title.say(`lamplane has a bug; please report it with the design: ${answer.message}`);
    // Cures and plots come late: what was asked before the last change is no longer so.
    else if (answer.kind === "cures" && answer.requestId === this.#requestId) drawing.addCures(answer.findings);
    else if (answer.kind === "plots" && answer.requestId === this.#requestId) plots.show(answer.plots);
  }

  /** The design file as it stands now, every change written into it, its comments kept. */
  readonly #currentText = (): Promise<string> => this.#engine.text(this.#designQuery());

  async #writeBack() {
    if (this.#loader.fileIsRefused)
      return this.#parts.title.say("Nothing was written: the file is not as it was read; mend it first.");
    const written = this.#store.now().changes;
    const isWritten = await this.#followed?.writeBack(this.#currentText);
    const { beginning, changes } = this.#store.now();
    if (!isWritten || beginning.kind !== "followed") return;
    const since = [...changes].filter(([path, value]) => !(written.has(path) && written.get(path) === value));
    this.#store.begin({ kind: "followed" }, since);
  }

  async #reportErrors(act: () => Promise<void>) {
    try {
      await act();
    } catch (error) {
      this.#parts.title.say(error instanceof Error ? error.message : String(error));
    }
  }
}
