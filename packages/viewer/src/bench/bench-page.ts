// The bench screens as a page: one step at a time, the way from one to the next, what is entered, what is taken back.
import { html } from "../elements.ts";
import { restoreTheme } from "../page/theme.ts";
import type { BenchAnswer, BenchBlank, BenchBuild, BenchEntry, BenchScreen } from "../protocol/bench-build.ts";
import { isBenchAddress } from "../state/address.ts";
import { BENCH, BUILDS, PAD } from "../words/bench.ts";
import { createBenchClient } from "./bench-client.ts";
import { openBuildDialog } from "./build-dialog.ts";
import { type BuildSession, buildFromAddress, createBuildSession } from "./build-session.ts";
import { commandButton } from "./command-button.ts";
import { keptByName } from "./kept-builds.ts";
import { openNumberPad } from "./number-pad.ts";
import { askSkips, openStepList } from "./step-list.ts";
import { drawingWidth, stepScreen } from "./step-screen.ts";

export class BenchPage {
  readonly #session: BuildSession;
  readonly #screen = html("div", { class: "bench-screen" });
  readonly #name = html("h1");
  readonly #offer = html("div", { class: "bench-offer" });
  readonly #status = html("p", { class: "bench-status", role: "status" });
  readonly #undo: HTMLButtonElement;
  readonly #back: HTMLButtonElement;
  readonly #next: HTMLButtonElement;
  #step: string;

  constructor(page: HTMLElement) {
    restoreTheme();
    const { kept, step } = buildFromAddress(location.hash);
    this.#session = createBuildSession(createBenchClient(drawingWidth), kept);
    this.#step = step ?? "";
    this.#undo = commandButton(BENCH.undo, () => void this.#takeBack(), "bench-undo");
    this.#back = commandButton(BENCH.back, () => this.#turn(-1));
    this.#next = commandButton(BENCH.next, () => this.#turn(1), "is-main");
    page.append(
      html(
        "header",
        { class: "bench-bar" },
        this.#name,
        this.#undo,
        commandButton(BENCH.menu, () => this.#openBuild()),
      ),
      html("main", { class: "bench" }, this.#offer, this.#status, this.#screen),
      html(
        "nav",
        { class: "bench-nav", "aria-label": BENCH.steps },
        this.#back,
        commandButton(BENCH.steps, () => this.#openSteps()),
        this.#next,
      ),
    );
    document.documentElement.classList.add("is-bench");
    document.addEventListener("keydown", (event) => this.#turnByKey(event));
    addEventListener("hashchange", () => {
      if (!isBenchAddress(location.hash) || !location.hash.includes("step=")) location.reload();
    });
  }

  async begin(): Promise<void> {
    this.#screen.replaceChildren(html("p", { class: "bench-loading" }, BENCH.loading));
    this.#name.textContent = this.#session.kept.name.replace(/\.ya?ml$/, "");
    await this.#open(this.#session.kept);
  }

  async #open(kept: BuildSession["kept"]): Promise<void> {
    try {
      const answer = await this.#session.open(kept);
      if (answer.kind === "build") this.#show(this.#isStep(this.#step) ? this.#step : this.#toDo());
      else this.#refuse(answer);
      this.#offerOther();
    } catch (error) {
      this.#screen.replaceChildren(html("p", { class: "bench-stops" }, (error as Error).message));
    }
  }

  /** A build of the same file in which more was entered may be the one that is meant: an address that is scanned again opens anew. */
  #offerOther() {
    const { kept } = this.#session;
    const other = kept.past.length === 0 ? keptByName(kept.name, kept.id)[0] : undefined;
    if (!other) return this.#offer.replaceChildren();
    this.#offer.replaceChildren(
      html("p", {}, `${BUILDS.newer(other.name)} (${BUILDS.progress(other.reached)}).`),
      commandButton(BUILDS.goOn, () => {
        this.#step = "";
        void this.#open(other);
      }),
    );
  }

  #refuse(answer: BenchAnswer) {
    const words = answer.kind === "refused" ? answer.words : [];
    this.#screen.replaceChildren(
      html("section", { class: "bench-stops", role: "alert" }, ...words.map((each) => html("p", {}, each))),
    );
  }

  get #keys(): readonly string[] {
    return this.#session.build?.screens.map(({ key }) => key) ?? [];
  }

  #isStep(key: string): boolean {
    return this.#keys.includes(key);
  }

  /** The step to do now: before anything is entered the first of the job, once all is done the last but one. */
  #toDo(): string {
    const { build, kept } = this.#session;
    if (build?.next === undefined) return this.#keys.at(-2) ?? "";
    return kept.past.length === 0 && build.next === this.#keys[1] ? this.#keys[0]! : build.next;
  }

  #show(step: string, isTurned = true) {
    const { build } = this.#session;
    if (!build) return;
    this.#step = step;
    const index = this.#keys.indexOf(step);
    const screen = build.screens[index]!;
    this.#screen.replaceChildren(
      stepScreen(build, screen, index + 1, {
        fill: (blank) => this.#fill(build, screen, blank),
        finish: () => void this.#finish(screen),
        goToNow: () => this.#show(this.#toDo()),
      }),
    );
    this.#name.textContent = build.name;
    document.title = `${screen.title} · ${build.name}`;
    this.#undo.disabled = this.#session.kept.past.length === 0;
    this.#back.disabled = index === 0;
    this.#next.disabled = index === this.#keys.length - 1;
    this.#session.showStep(step);
    if (!isTurned) return;
    scrollTo(0, 0);
    this.#screen.querySelector<HTMLElement>("#bench-title")!.focus({ preventScroll: true });
  }

  #turn(by: number) {
    const next = this.#keys[this.#keys.indexOf(this.#step) + by];
    this.#status.textContent = "";
    if (next !== undefined) this.#show(next);
  }

  #turnByKey(event: KeyboardEvent) {
    const target = event.target as Element;
    if (document.querySelector("dialog[open]") || target.closest("input, .bench-drawing.is-large")) return;
    if (event.altKey || event.ctrlKey || event.metaKey) {
      if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "z") void this.#takeBack();
      return;
    }
    if (event.key === "ArrowRight") this.#turn(1);
    if (event.key === "ArrowLeft") this.#turn(-1);
  }

  #fill({ style }: BenchBuild, screen: BenchScreen, blank: BenchBlank) {
    openNumberPad({
      blank,
      style,
      enter: (value, isConfirmed) => this.#enter(screen, { path: blank.path, value, isConfirmed }, blank.label),
    });
  }

  /** Enters a value of a step and shows what has become of the step; the next one once it is done. */
  async #enter(before: BenchScreen, entry: BenchEntry, words: string): Promise<BenchAnswer> {
    const answer = await this.#session.enter(entry, words, before.title);
    if (answer.kind !== "build") return answer;
    const after = answer.build.screens.find(({ key }) => key === before.key);
    const goesOn = after?.isComplete === true && !before.isComplete && entry.value !== undefined;
    this.#show(goesOn ? this.#toDo() : before.key, goesOn);
    this.#status.textContent = entry.value === undefined ? BENCH.undone(words) : this.#warning();
    return answer;
  }

  #warning(): string {
    return this.#session.isKept ? "" : BUILDS.notKept;
  }

  async #finish(screen: BenchScreen, isConfirmed = false): Promise<void> {
    const answer = await this.#enter(screen, { path: "measured.done", value: screen.key, isConfirmed }, screen.title);
    if (answer.kind === "skips") askSkips(PAD.skips(answer.titles), () => void this.#finish(screen, true));
    if (answer.kind === "build") this.#show(this.#toDo());
    if (answer.kind === "refused") this.#status.textContent = answer.words.join(" ");
  }

  async #takeBack(): Promise<void> {
    const undone = await this.#session.undo();
    if (undone !== undefined) this.#show(this.#isStep(this.#step) ? this.#step : this.#toDo(), false);
    this.#status.textContent = undone === undefined ? BENCH.nothingToUndo : BENCH.undone(undone);
  }

  #openSteps() {
    const { build } = this.#session;
    if (build) openStepList(build, this.#step, (step) => this.#show(step));
  }

  #openBuild() {
    openBuildDialog(this.#session, (kept) => {
      this.#step = "";
      void this.#open(kept);
    });
  }
}
