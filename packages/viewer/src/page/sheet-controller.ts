// The sheet as a whole: the way of a change from the hand through the worker to the drawing. The newest request wins.
import { PLOT_SIZE, STEP_ROOM } from "@lamplane/sheets";
import { loadScript } from "../load-script.ts";
import { PX_PER_MM } from "../plots/plot-field.ts";
import { FIRST_SHOWN } from "../protocol/build-steps.ts";
import type { WorkerResponse } from "../protocol/messages.ts";
import { type AddressState, parseAddress } from "../state/address.ts";
import { type AvailableOrigins, initialOrigin } from "../state/design-origin.ts";
import { type Engine, startEngine } from "../state/engine.ts";
import { EXAMPLES } from "../state/examples.ts";
import { createStore, type Store } from "../state/store.ts";
import { originInUnits } from "../state/unit-switch.ts";
import { SHEET } from "../words/page.ts";
import SheetWorker from "../worker/worker.ts?worker&inline";
import { DesignLoader } from "./design-loader.ts";
import { DrawingView } from "./drawing-view.ts";
import { Fallback } from "./fallback.ts";
import { createFileActions, type FileActions } from "./file-actions.ts";
import { followOrigin, leavesSheet } from "./followed-origin.ts";
import { LatencyTimer } from "./latency-timer.ts";
import { watchPage } from "./page-events.ts";
import { goToBench, type SharingContext, shareDrawn, showRouterPath } from "./sharing.ts";
import { createSheetParts, type SheetActions, type SheetParts } from "./sheet-parts.ts";
import { switchTheme } from "./theme.ts";

const NARROW = 708; // px: as in the style sheet; wider, plots stand in two columns
const LEAST_PLOT = 100; // mm: a plot keeps its letters and gives up room where its column is narrow
const PLOT_STEP = 2; // mm: a sheet a little wider has the same plots

type ResponseHandlers = {
  readonly [K in WorkerResponse["kind"]]: (response: Extract<WorkerResponse, { kind: K }>) => void;
};

export class SheetController {
  readonly #store: Store;
  readonly #engine: Engine;
  readonly #parts: SheetParts;
  readonly #drawing: DrawingView;
  readonly #loader: DesignLoader;
  readonly #fallback: Fallback;
  readonly #timer = new LatencyTimer();
  readonly #followed: ReturnType<typeof followOrigin>;
  readonly #available: AvailableOrigins;
  readonly #files: FileActions;
  /** Numbers of the last request, and of the one whose response is drawn. */
  #requestId = 0;
  #drawnRequestId = 0;
  #plottedWidth = 0;

  constructor(page: HTMLElement) {
    const start = parseAddress(location.hash);
    this.#followed = this.#follow(start);
    this.#available = { examples: Object.keys(EXAMPLES), follows: this.#followed !== undefined };
    this.#store = createStore({ ...start, origin: initialOrigin(start.origin, this.#available) });
    this.#parts = this.#createParts(page);
    this.#fallback = new Fallback({ store: this.#store, faults: this.#parts.faults, available: this.#available });
    this.#drawing = new DrawingView(this.#parts, this.#timer);
    this.#engine = startEngine(
      (response) => this.#handleResponse(response),
      () => new SheetWorker(),
      async () => {
        await loadScript("guide.js");
        return globalThis.startGuideWorker!();
      },
    );
    this.#loader = this.#createLoader();
    this.#files = createFileActions({
      store: this.#store,
      loader: this.#loader,
      followed: this.#followed,
      text: this.#currentText,
      ownText: () => this.#engine.text(this.#designQuery(), "own"),
      say: (words) => this.#parts.title.say(words),
      refuse: (words) => this.#parts.faults.showActionFaults(words),
    });
    this.#fallback.reportAddress(start);
    this.#store.onChange((what, holding) => this.#stateChanged(what, holding));
    this.#watch(page);
  }

  begin(): void {
    const { origin } = this.#store.now();
    this.#parts.toolbar.mark(origin.kind === "example" ? origin.name : undefined);
    this.#loader.begin();
  }

  #stateChanged(what: "design" | "stage" | "origin", holding: boolean) {
    this.#drawing.isDragging = holding;
    this.#fallback.clear();
    if (what === "origin") this.begin();
    else this.#requestSheet();
  }

  #follow(start: AddressState): ReturnType<typeof followOrigin> {
    return followOrigin(start, {
      changed: () => this.#loader.begin(),
      lost: (why) => this.#loader.lost([SHEET.lost(why)]),
      say: (words) => this.#parts.title.say(words),
    });
  }

  #createParts(page: HTMLElement): SheetParts {
    return createSheetParts(
      page,
      {
        change: (changes, holding) => this.#store.set(changes, holding),
        commit: () => this.#store.commit(),
        isPending: () => this.#drawnRequestId < this.#requestId,
        reportFault: (path, why) => this.#parts.refusal.show(path, why),
      },
      this.#actions(),
    );
  }

  #createLoader(): DesignLoader {
    return new DesignLoader({
      store: this.#store,
      engine: this.#engine,
      followed: this.#followed,
      faults: this.#parts.faults,
      requestSheet: () => this.#requestSheet(),
      restoreLast: (words) => this.#fallback.restoreLast(words),
    });
  }

  #actions(): SheetActions {
    return {
      begin: (name) => this.#store.begin({ kind: "example", name }),
      openFiles: (files) => this.#files.openFiles(files),
      backToClass: () => this.#files.backToClass(),
      save: () => this.#files.save(),
      writeBack: () => this.#files.writeBack(),
      text: this.#currentText,
      name: () => this.#drawing.plane?.design.name ?? "plane",
      undo: () => void this.#store.undo(),
      redo: () => void this.#store.redo(),
      share: () => void shareDrawn(this.#shared()),
      goToBench: () => void goToBench(this.#shared()),
      openRouter: () => void showRouterPath(this.#shared()),
      measure: () => {
        const on = this.#parts.measure.toggle();
        this.#parts.toolbar.measuring.setAttribute("aria-pressed", String(on));
      },
      switchTheme,
      applyCure: (cure) => this.#store.set(cure.map(({ parameter, value }) => [parameter, value] as const)),
      layoutChanged: () => this.#drawing.redraw(),
      switchUnits: (units) => {
        const origin = originInUnits(this.#store.now(), units);
        if (origin) this.#store.begin(origin);
        else this.#store.set([["units", units]]);
      },
      endBuild: () => {
        this.#drawing.endBuild();
        this.#store.setStage(FIRST_SHOWN);
      },
      goTo: (stage) => this.#store.setStage(stage),
    };
  }

  #watch(page: HTMLElement) {
    const drawing = this.#drawing;
    watchPage(page, this.#parts.sheet, {
      keys: this.#actions(),
      hints: { figures: () => drawing.figures, plane: () => drawing.plane },
      themeChanged: () => this.#parts.body.recolour(),
      filesDropped: (files) => this.#files.openFiles(files),
      resized: () => {
        drawing.redraw();
        if (drawing.plane && this.#plotWidth() !== this.#plottedWidth) this.#requestSheet();
      },
      printing: (isPrinting) => drawing.fitTo(isPrinting),
      addressChanged: (hash) =>
        leavesSheet(hash, this.#followed) ? location.reload() : this.#goToAddress(parseAddress(hash)),
    });
  }

  #goToAddress(address: AddressState) {
    this.#store.begin(initialOrigin(address.origin, this.#available), address.changes, address.stage);
    this.#fallback.reportAddress(address);
  }

  #requestSheet() {
    const { changes, origin, stage } = this.#store.now();
    const { back, forth } = this.#store.ways();
    this.#parts.toolbar.showWays(back, forth);
    this.#drawing.layOutFor(stage);
    this.#parts.toolbar.follow(origin.kind === "followed" ? this.#followed : undefined, changes.size > 0);
    this.#plottedWidth = this.#plotWidth();
    const step = this.#parts.steps.pictureWidth() ?? STEP_ROOM.width;
    this.#requestId = this.#engine.show(this.#designQuery(), { plots: this.#plottedWidth, step });
    this.#timer.begin(this.#requestId);
  }

  #designQuery() {
    const { changes, stage } = this.#store.now();
    return { base: this.#loader.base, changes: [...changes], stage };
  }

  #plotWidth(): number {
    const { clientWidth } = this.#parts.sheet;
    const column = clientWidth / (clientWidth < NARROW ? 1 : 2) / PX_PER_MM;
    return Math.min(PLOT_SIZE.width, Math.max(LEAST_PLOT, Math.floor(column / PLOT_STEP) * PLOT_STEP)); // mm
  }

  #shared(): SharingContext {
    const [engine, parts, drawing, loader] = [this.#engine, this.#parts, this.#drawing, this.#loader];
    return { engine, parts, drawing, loader, query: () => this.#designQuery() };
  }

  /** With the shop's values, so that it can be saved, sent on and built without the shop file. */
  readonly #currentText = (): Promise<string> => this.#engine.text(this.#designQuery(), "carried");

  #handleResponse(response: WorkerResponse) {
    (this.#handlers[response.kind] as (response: WorkerResponse) => void)(response);
  }

  /** Cures, plots and refusals of what was requested before the last change are no longer so. */
  readonly #isLatest = ({ requestId }: { readonly requestId: number }): boolean => requestId === this.#requestId;

  readonly #handlers: ResponseHandlers = {
    ready: ({ figures }) => this.#drawing.setFigureWords(figures),
    opened: ({ base }) => this.#loader.opened(base),
    "text-refused": (response) => this.#fallback.textRefused(response, this.#loader),
    refused: (response) => {
      if (response.base === this.#loader.base && this.#isLatest(response)) this.#fallback.changesRefused(response);
    },
    skipped: () => {},
    plane: (response) => {
      this.#drawnRequestId = response.requestId;
      const held = this.#store.now();
      if (this.#isLatest(response) && this.#loader.isLoadedFrom(held.origin)) this.#fallback.keep(held);
      this.#drawing.drawPlane(response.plane, response.requestId);
    },
    words: ({ words, requestId }) => this.#drawing.showWords(words, this.#store.now().stage, requestId),
    solid: (response) => this.#drawing.drawSolid(response, this.#store.now().stage),
    "no-solid": () => this.#parts.body.showMessage(SHEET.noBody),
    cures: (response) => {
      if (this.#isLatest(response)) this.#drawing.addCures(response.findings, response.requestId);
    },
    plots: (response) => {
      if (this.#isLatest(response)) this.#parts.plots.show(response.plots, response.film);
    },
    guide: (response) => {
      if (this.#isLatest(response)) this.#drawing.showGuide(response.guide);
    },
    written: () => {},
    bench: () => {},
    bug: ({ message }) => this.#parts.title.say(SHEET.bug(message)),
  };
}
