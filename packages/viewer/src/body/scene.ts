// The body in space: a drawing that turns. It is drawn only when something has changed.
import { type Box3, Scene, Vector2, Vector3, WebGLRenderer } from "three";
import type { PartMesh } from "../protocol/body-data.ts";
import type { BodyState } from "./body-state.ts";
import type { BodyView } from "./body-views.ts";
import { createCameraRig, faceView, fitCamera, MARGIN, setAspect, turnCamera, zoomCamera } from "./camera-rig.ts";
import { PartSet } from "./part-set.ts";
import { createRenderLoop, type RenderLoop } from "./render-loop.ts";
import { usesSoftwareRenderer } from "./render-quality.ts";

export interface BodyScene extends Pick<RenderLoop, "drawNow" | "onDrawn"> {
  show(parts: readonly PartMesh[], state: BodyState): void;
  pose(state: BodyState): void;
  look(view: BodyView): void;
  turn(across: number, up: number): void;
  zoom(by: number): void;
  fit(): void;
  resize(): void;
  recolour(): void;
  /** Pixels on the canvas of each part's middle; parts cut away or hidden are left out. */
  middles(): { name: string; x: number; y: number }[];
  /** Of the canvas, px. */
  size(): { readonly x: number; readonly y: number };
}

/** Without a graphics processor the smoothing of edges would cost more than the picture. */
const drawsInSoftware = usesSoftwareRenderer();

/** @throws Error where the browser draws no 3D */
export function createBodyScene(canvas: HTMLCanvasElement): BodyScene {
  const renderer = new WebGLRenderer({ canvas, antialias: !drawsInSoftware, alpha: true, preserveDrawingBuffer: true });
  const [scene, size] = [new Scene(), new Vector2(1, 1)];
  const rig = createCameraRig(canvas);
  const loop = createRenderLoop(renderer, scene, rig.camera);
  const parts = new PartSet(scene, canvas, size);
  let fittedSpan: number | undefined; // mm, when the picture was last fitted to the body
  rig.controls.addEventListener("change", loop.request);

  const thenDraw =
    <A extends unknown[]>(act: (...values: A) => void) =>
    (...values: A) => {
      act(...values);
      loop.request();
    };
  const resize = () => {
    const { clientWidth: width, clientHeight: height } = canvas;
    if (width === 0 || height === 0) return;
    if (size.x !== width || size.y !== height) renderer.setSize(width, height, false);
    size.set(width, height);
    setAspect(rig, width, height);
    loop.request();
  };
  const fit = () => {
    if (parts.isEmpty) return;
    const box = parts.box();
    fittedSpan = diagonal(box);
    fitCamera(rig, box, canvas);
    resize();
  };
  const look = (view: BodyView) => {
    faceView(rig, view, parts.box());
    fit();
  };
  const show = (meshes: readonly PartMesh[], state: BodyState) => {
    parts.show(meshes, state);
    loop.request();
    if (meshes.length === 0) return;
    if (fittedSpan === undefined) look("corner");
    else if (isOtherSize(diagonal(parts.box()), fittedSpan)) fit();
  };
  return {
    show,
    pose: thenDraw((state) => parts.pose(state)),
    look,
    turn: thenDraw((across, up) => turnCamera(rig, across, up)),
    zoom: thenDraw((by) => zoomCamera(rig, by)),
    fit,
    resize,
    recolour: thenDraw(() => parts.recolour()),
    drawNow: loop.drawNow,
    onDrawn: loop.onDrawn,
    middles: () => parts.middles(rig.camera),
    size: () => size,
  };
}

/** Corner to corner, mm. */
const diagonal = (box: Box3): number => box.getSize(new Vector3()).length();

/** A body so much larger runs out of the picture, one so much smaller is lost in it; less is left as the maker turned it. */
const isOtherSize = (span: number, fitted: number): boolean => Math.max(span / fitted, fitted / span) > MARGIN;
