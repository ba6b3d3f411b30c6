// From one step of the build to the next on the drawing: wood slides to its place, what comes or goes fades in or out on its
// way, what is planed off fades away, and the numbers go along.
import { svg } from "../elements.ts";
import { STEP_TIME, wantsMotion } from "../motion.ts";
import type { SheetPoint, View, ViewMark } from "../protocol/view.ts";
import type { Scale } from "./layout.ts";

export interface StepMotion {
  /** Keeps what is drawn now, before the next step is drawn. */
  keep(view: View, scale: Scale): void;
  /** Moves everything from there to what is drawn now. */
  play(view: View, scale: Scale): void;
}

/** What is on the field, as elements. */
export interface MovingField {
  /** In mm of the view, under the scale's transform. */
  readonly marks: SVGGElement;
  /** What only fades in: dimension lines, names, grips. */
  readonly others: readonly Element[];
  readonly numbers: HTMLElement;
}

interface KeptMark {
  readonly mark: ViewMark;
  readonly element: SVGElement;
}

interface KeptDrawing {
  readonly scale: Scale;
  readonly marks: readonly KeptMark[];
  readonly numbers: ReadonlyMap<HTMLElement, string>;
}

const EASE = "cubic-bezier(0.3, 0, 0.2, 1)";
const NOWHERE: SheetPoint = { x: 0, y: 0 };

export function createStepMotion({ marks, others, numbers }: MovingField): StepMotion {
  const animator = createAnimator();
  const markMotion = createMarkMotion(marks, animator);
  let kept: KeptDrawing | undefined;
  return {
    keep(view, scale) {
      animator.stop();
      markMotion.clear();
      kept = {
        scale,
        marks: view.marks.map((mark, i) => ({ mark, element: marks.children[i]!.cloneNode() as SVGElement })),
        numbers: new Map(numbersIn(numbers).map((element) => [element, element.style.transform])),
      };
    },
    play(view, scale) {
      if (!kept || !wantsMotion()) return;
      markMotion.play(view, scale, kept);
      for (const element of others) animator.fadeIn(element);
      for (const element of numbersIn(numbers)) {
        const was = kept.numbers.get(element);
        if (was === undefined) animator.move(element, { opacity: 0 }, { opacity: 1 });
        else animator.move(element, { transform: was }, { transform: element.style.transform });
      }
      kept = undefined;
    },
  };
}

interface Animator {
  move(element: Element, from: Keyframe, to: Keyframe): Animation;
  /** On its way from a place in mm of the view, where it has one. */
  fadeIn(element: Element, from?: SheetPoint): void;
  stop(): void;
}

function createAnimator(): Animator {
  let running: Animation[] = [];
  const move = (element: Element, from: Keyframe, to: Keyframe) => {
    const animation = element.animate([from, to], { duration: STEP_TIME, easing: EASE });
    running.push(animation);
    return animation;
  };
  return {
    move,
    fadeIn: (element, from = NOWHERE) =>
      move(element, { opacity: 0, transform: shiftCss(from) }, { opacity: 1, transform: "none" }),
    stop() {
      for (const animation of running) animation.cancel();
      running = [];
    },
  };
}

/** Wood from one step to the next: what goes fades out in a layer under or over the marks. */
function createMarkMotion(marks: SVGGElement, { move, fadeIn }: Animator) {
  const [under, over] = [svg("g", { class: "ghosts" }), svg("g", { class: "ghosts" })];

  function fadeOut({ element }: KeptMark, layer: SVGGElement, to: SheetPoint = NOWHERE) {
    layer.append(element);
    const end = { opacity: 0, transform: shiftCss(to) };
    move(element, { opacity: 1, transform: "none" }, end).onfinish = () => element.remove();
  }

  function placeLayers(from: Scale, to: Scale) {
    marks.before(under);
    marks.after(over);
    for (const layer of [under, marks, over]) move(layer, { transform: scaleCss(from) }, { transform: scaleCss(to) });
    for (const layer of [under, over]) layer.setAttribute("transform", marks.getAttribute("transform") ?? "");
  }

  return {
    clear() {
      for (const layer of [under, over]) layer.replaceChildren();
    },
    play(view: View, scale: Scale, last: KeptDrawing) {
      placeLayers(last.scale, scale);
      const before = new Map(last.marks.map((each) => [keyOf(each.mark), each]));
      for (const [i, mark] of view.marks.entries()) {
        const element = marks.children[i]!;
        const old = before.get(keyOf(mark));
        before.delete(keyOf(mark));
        if (!old) {
          fadeIn(element, mark.piece?.from);
          continue;
        }
        const by = shiftBetween(old.mark, mark);
        if (by.x !== 0 || by.y !== 0) move(element, { transform: shiftCss(by) }, { transform: "none" });
        else if (old.mark.d !== mark.d) fadeOut(old, under);
      }
      for (const gone of before.values()) fadeOut(gone, over, gone.mark.piece?.from);
    },
  };
}

function shiftBetween(before: ViewMark, after: ViewMark): SheetPoint {
  const [was, is] = [before.piece?.off ?? NOWHERE, after.piece?.off ?? NOWHERE];
  return { x: was.x - is.x, y: was.y - is.y };
}

const numbersIn = (layer: HTMLElement): HTMLElement[] => [...layer.children] as HTMLElement[];

/** The same piece at another step; a line without a name is the same where it is drawn the same. */
const keyOf = ({ piece, d, line, area }: ViewMark): string => piece?.name ?? `${line} ${area} ${d}`;

const shiftCss = ({ x, y }: SheetPoint): string => `translate(${x}px, ${-y}px)`;

const scaleCss = ({ perMm, origin }: Scale): string => `translate(${origin.x}px, ${origin.y}px) scale(${perMm})`;
