// One program played: drawing, depths, the slider with its keys, the lines; all follow one time.
import { formatLength, type LengthStyle } from "@lamplane/parameters/units";
import { html, setAttributes, svg } from "../elements.ts";
import { playSign } from "../play-sign.ts";
import { ROUTER } from "../words/router.ts";
import { createDepthChart } from "./depth-chart.ts";
import { createPathDrawing } from "./path-drawing.ts";
import { createPathPlayer, type PathPlayer } from "./path-player.ts";
import { formatTime, pointAt } from "./place-on-path.ts";
import { createProgramLines } from "./program-lines.ts";
import type { PathStep, RouterPath } from "./router-paths.ts";

export interface PathView {
  readonly element: HTMLElement;
  show(path: RouterPath): void;
  stop(): void;
}

export function createPathView(style: LengthStyle): PathView {
  const drawing = createPathDrawing();
  const lines = createProgramLines();
  const reading = html("p", { class: "router-reading" });
  const slider = createSlider();
  let path: RouterPath | undefined;
  const player = createPathPlayer((step, seconds, isPlaying) => {
    if (!path) return;
    drawing.moveTo(step, seconds);
    chart.moveTo(seconds);
    const running = path.steps[step]!;
    lines.show(path, running.file, running.line);
    const text = readingText(path, running, seconds, style);
    reading.textContent = text;
    slider.value = String(seconds);
    setAttributes(slider, { "aria-valuetext": text });
    showPlaying(play, isPlaying);
  });
  const play = html("button", { type: "button", class: "router-play" });
  play.addEventListener("click", () => player.toggle());
  const chart = createDepthChart((seconds) => player.goTo(seconds));
  slider.addEventListener("input", () => player.goTo(Number(slider.value)));
  slider.addEventListener("keydown", (event) => {
    if (goByKey(player, event.key)) event.preventDefault();
  });
  const track = html("div", { class: "router-track" }, chart.element, slider);
  return {
    element: html(
      "div",
      { class: "router-view" },
      html("div", { class: "router-picture" }, drawing.element),
      html("div", { class: "router-side" }, lines.element, createKey()),
      html("div", { class: "router-time" }, track, reading, createCommands(player, play)),
    ),
    show(next) {
      path = next;
      setAttributes(slider, { max: next.duration.toFixed(1) });
      drawing.show(next);
      chart.show(next);
      player.open(next);
    },
    stop: () => player.stop(),
  };
}

const createSlider = (): HTMLInputElement =>
  html("input", { type: "range", class: "router-slider", min: 0, step: 0.1, "aria-label": ROUTER.position });

function createCommands(player: PathPlayer, play: HTMLElement): HTMLElement {
  const passes = [passButton(player, -1), passButton(player, 1)];
  return html("div", { class: "router-commands" }, play, ...passes, speedChoice(player));
}

function showPlaying(play: HTMLElement, isPlaying: boolean) {
  if (play.dataset.playing === String(isPlaying)) return;
  play.replaceChildren(playSign(isPlaying), isPlaying ? ROUTER.pause : ROUTER.play);
  play.dataset.playing = String(isPlaying);
}

function readingText(
  { cutters, duration }: RouterPath,
  running: PathStep,
  seconds: number,
  style: LengthStyle,
): string {
  const { z } = pointAt(running, seconds);
  const depth = z < 0 ? ROUTER.deep(formatLength(-z, style)) : ROUTER.over(formatLength(z, style));
  const cutter = cutters[running.cutter]!.name;
  const [time, whole, role] = [formatTime(seconds), formatTime(duration), ROUTER.roles[running.role]];
  return ROUTER.reading({ time, whole, role, depth, cutter });
}

/** A line on or back by an arrow, a pass by the page keys; Home and End. */
function goByKey(player: PathPlayer, key: string): boolean {
  const acts: Readonly<Record<string, () => void>> = {
    ArrowRight: () => player.goBy(1),
    ArrowUp: () => player.goBy(1),
    ArrowLeft: () => player.goBy(-1),
    ArrowDown: () => player.goBy(-1),
    PageDown: () => player.goByPass(1),
    PageUp: () => player.goByPass(-1),
    Home: () => player.goTo(0),
    End: () => player.goTo(Number.POSITIVE_INFINITY),
    " ": () => player.toggle(),
  };
  const act = acts[key];
  act?.();
  return act !== undefined;
}

function passButton(player: PathPlayer, direction: 1 | -1): HTMLElement {
  const button = html("button", { type: "button" }, direction > 0 ? ROUTER.forth : ROUTER.back);
  button.addEventListener("click", () => player.goByPass(direction));
  return button;
}

const USUAL_SPEED = 10;

function speedChoice(player: PathPlayer): HTMLElement {
  const options = Object.entries(ROUTER.speeds).map(([times, words]) =>
    html("option", { value: times, selected: Number(times) === USUAL_SPEED }, words),
  );
  const select = html("select", { id: "router-speed" }, ...options);
  select.addEventListener("change", () => player.setSpeed(Number(select.value)));
  return html("span", { class: "router-speed" }, html("label", { for: "router-speed" }, ROUTER.speed), select);
}

/** What the lines of the drawing are. */
function createKey(): HTMLElement {
  const rows = Object.entries(ROUTER.key).map(([kind, words]) => {
    const d = kind === "tab" ? "M8 2L16 10M8 10L16 2" : "M1 6H23";
    const sample = svg(
      "svg",
      { viewBox: "0 0 24 12", "aria-hidden": "true" },
      svg("path", { d, class: `key-${kind}` }),
    );
    return html("li", {}, sample, words);
  });
  return html("ul", { class: "router-key" }, ...rows);
}
