// A still picture of the opened body, on a canvas of its own that nobody sees.
import { loadScript } from "../load-script.ts";
import type { BodyInfo, PartMesh } from "../protocol/body-data.ts";
import { INITIAL_STATE } from "./body-state.ts";

const OPENED = 0.6; // of the way that the parts go apart: all of them seen, all still one plane

const CLOSER = 1.25; // no names stand beside it, for which a fitted body leaves room

/** @returns undefined where the browser draws no 3D, or the script cannot be had */
export async function bodyPicture(
  parts: readonly PartMesh[],
  about: BodyInfo,
  width: number,
  height: number,
): Promise<HTMLCanvasElement | undefined> {
  const canvas = document.createElement("canvas");
  canvas.style.cssText = `position: fixed; left: -${2 * width}px; top: 0; width: ${width}px; height: ${height}px`;
  document.body.append(canvas);
  try {
    await loadScript("body.js");
    const scene = globalThis.openBodyScene!(canvas);
    scene.show(parts, { ...INITIAL_STATE, ...about, open: OPENED });
    scene.fit();
    scene.zoom(CLOSER);
    scene.drawNow();
    return copyOf(canvas);
  } catch {
    return undefined;
  } finally {
    canvas.getContext("webgl2")?.getExtension("WEBGL_lose_context")?.loseContext();
    canvas.remove();
  }
}

function copyOf(canvas: HTMLCanvasElement): HTMLCanvasElement {
  const copy = document.createElement("canvas");
  copy.width = canvas.width;
  copy.height = canvas.height;
  copy.getContext("2d")!.drawImage(canvas, 0, 0);
  return copy;
}
