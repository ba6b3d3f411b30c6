// A script of its own, fetched when the body comes into view: it holds everything that draws in 3D.
import { createBodyScene } from "./scene.ts";

declare global {
  /** Draws the body on a canvas; there once this script has run. */
  var openBodyScene: typeof createBodyScene | undefined;
}

globalThis.openBodyScene = createBodyScene;
