// When the body is drawn: once in a frame in which something has changed, or at once.
import type { Camera, Scene, WebGLRenderer } from "three";
import { createRenderQuality } from "./render-quality.ts";

export interface RenderLoop {
  /** Draws in the next frame. */
  request(): void;
  /** Draws now; with `data-exact` on the page it also waits until the picture is finished. */
  drawNow(): void;
  onDrawn(listen: () => void): void;
}

const RGBA = 6408;
const BYTES = 5121;

export function createRenderLoop(renderer: WebGLRenderer, scene: Scene, camera: Camera): RenderLoop {
  const quality = createRenderQuality(renderer);
  const listeners: (() => void)[] = [];
  let frame = 0; // of the browser; 0 while none is awaited

  function draw() {
    frame = 0;
    quality.onMove(() => renderer.render(scene, camera));
    renderer.render(scene, camera);
    for (const listen of listeners) listen();
  }

  return {
    request() {
      if (frame === 0) frame = requestAnimationFrame(draw);
    },
    drawNow() {
      cancelAnimationFrame(frame);
      draw();
      if (document.documentElement.dataset.exact === undefined) return;
      // Reading a pixel back waits until the picture is finished; only the benchmarks ask for it.
      renderer.getContext().readPixels(0, 0, 1, 1, RGBA, BYTES, new Uint8Array(4));
    },
    onDrawn: (listen) => void listeners.push(listen),
  };
}
