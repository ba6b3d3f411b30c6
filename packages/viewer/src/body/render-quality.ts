// How finely the body is drawn: where no graphics processor helps, plainly while it moves and smoothly once it is still.
import type { WebGLRenderer } from "three";

/** Whether this browser draws 3D with the main processor. */
export function usesSoftwareRenderer(): boolean {
  const gl = document.createElement("canvas").getContext("webgl2");
  const info = gl?.getExtension("WEBGL_debug_renderer_info");
  const name = gl && info ? String(gl.getParameter(info.UNMASKED_RENDERER_WEBGL)) : "";
  gl?.getExtension("WEBGL_lose_context")?.loseContext();
  return /swiftshader|llvmpipe|software/i.test(name);
}

const STILL = 400; // ms without a change: then there is time for a smooth picture
const SMOOTH = 2; // pixels drawn for each one shown, each way

export interface RenderQuality {
  /** Called before each picture; `again` draws it once more when the body has stood still. */
  onMove(again: () => void): void;
}

export function createRenderQuality(renderer: WebGLRenderer): RenderQuality {
  const plain = Math.min(devicePixelRatio, 2);
  const smooth = renderer.getContextAttributes()?.antialias ? plain : Math.max(plain, SMOOTH);
  let timer = 0;
  const set = (ratio: number) => {
    if (renderer.getPixelRatio() !== ratio) renderer.setPixelRatio(ratio);
  };
  set(plain);
  return {
    onMove(again) {
      if (smooth === plain) return;
      set(plain);
      clearTimeout(timer);
      timer = window.setTimeout(() => {
        set(smooth);
        again();
      }, STILL);
    },
  };
}
