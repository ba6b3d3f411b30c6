// Mouth, stack and end beside the elevation: drawn after it, those in view at once, the others when the hand rests.
import type { SheetPlane } from "../protocol/sheet-data.ts";
import type { View } from "../protocol/view.ts";
import type { Field } from "../sheet/field.ts";

const REST = 120; // ms without another drawing

/** Views that are to be drawn, and how. */
interface Drawing {
  readonly draw: (view: View) => void;
  readonly views: readonly View[];
}

export class DetailViews {
  readonly #fields: Readonly<Record<View["name"], Field>>;
  #pending: Drawing | undefined;
  #soon = 0;
  #later = 0;

  constructor(fields: Readonly<Record<View["name"], Field>>) {
    this.#fields = fields;
  }

  /** @param drawn called once all of them are drawn, unless another drawing comes before */
  draw(plane: SheetPlane, isDragging: boolean, drawn: () => void): void {
    this.#pending = this.#drawing(plane, isDragging);
    clearTimeout(this.#soon);
    clearTimeout(this.#later);
    this.#soon = window.setTimeout(() => this.#drawPending(({ name }) => this.#fields[name].isInView()));
    this.#later = window.setTimeout(() => {
      this.#drawPending(() => true);
      drawn();
    }, REST);
  }

  /** Draws all of them at once; what waits for an earlier drawing of them still comes. */
  drawNow(plane: SheetPlane, isDragging: boolean): void {
    if (this.#pending) this.#pending = { ...this.#pending, views: [] };
    const { draw, views } = this.#drawing(plane, isDragging);
    views.forEach(draw);
  }

  #drawing(plane: SheetPlane, isDragging: boolean): Drawing {
    return {
      views: plane.views.filter(({ name }) => name !== "elevation"),
      draw: (view) => this.#fields[view.name].draw(view, plane, isDragging),
    };
  }

  #drawPending(isWanted: (view: View) => boolean): void {
    if (!this.#pending) return;
    const { draw, views } = this.#pending;
    this.#pending = { draw, views: views.filter((view) => !isWanted(view)) };
    views.filter(isWanted).forEach(draw);
  }
}
