// The body in space: a drawing that turns. It is drawn only when something has changed.
import { Box3, OrthographicCamera, Scene, Vector2, Vector3, WebGLRenderer } from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";
import type { BodyInfo, PartMesh } from "../protocol.ts";
import { type BodyView, viewDirection } from "./body-views.ts";
import { explodedOffset, makePartLook, readTones } from "./looks.ts";
import { createPartObject, type PartObject } from "./part-object.ts";
import { createRenderQuality, usesSoftwareRenderer } from "./render-quality.ts";

export interface BodyState extends BodyInfo {
  /** 0 together, 1 as far apart as it goes. */
  readonly open: number;
  readonly isCut: boolean;
}

export interface BodyScene {
  show(parts: readonly PartMesh[], state: BodyState): void;
  pose(state: BodyState): void;
  look(view: BodyView): void;
  turn(across: number, up: number): void;
  zoom(by: number): void;
  fit(): void;
  resize(): void;
  recolour(): void;
  /** Draws now; with `data-exact` on the page it also waits until the picture is finished. */
  drawNow(): void;
  /** Pixels on the canvas of each part's middle; parts cut away or hidden are left out. */
  middles(): { name: string; x: number; y: number }[];
  /** Of the canvas, px. */
  size(): { readonly x: number; readonly y: number };
  onDrawn(listen: () => void): void;
}

const ROOM = 1.16; // how much more than the body the picture holds when it is fitted
const FLOOR_GAP = 0.6; // mm: the shadow lies a little under the sole

/** Without a graphics processor the smoothing of edges would cost more than the picture. */
const drawsInSoftware = usesSoftwareRenderer();

export function createBodyScene(canvas: HTMLCanvasElement): BodyScene {
  const renderer = new WebGLRenderer({ canvas, antialias: !drawsInSoftware, alpha: true, preserveDrawingBuffer: true });
  const fineness = createRenderQuality(renderer);
  const scene = new Scene();
  const camera = new OrthographicCamera(-1, 1, 1, -1, -3000, 3000);
  const controls = new OrbitControls(camera, canvas);
  controls.enableDamping = false;
  controls.listenToKeyEvents = () => {};
  const size = new Vector2(1, 1);
  const parts = new Map<string, PartObject>();
  const listeners: (() => void)[] = [];
  let state: BodyState = { open: 0, isCut: false, rings: 20, bedAngle: 47, bodyWidth: 66 };
  let asked = 0;
  let fittedSpan: number | undefined; // mm, when the picture was last fitted to the body
  controls.addEventListener("change", ask);

  return {
    show(meshes, next) {
      const names = new Set(meshes.map(({ name }) => name));
      for (const [name, part] of parts) if (!names.has(name)) remove(name, part);
      for (const mesh of meshes) {
        const known = parts.get(mesh.name);
        if (known) known.fill(mesh);
        else add(mesh, next);
      }
      pose(next);
      if (meshes.length === 0) return;
      if (fittedSpan === undefined) look("corner");
      else if (isOtherSize(partsSpan(parts.values()), fittedSpan)) fit();
    },
    pose,
    look,
    turn(across, up) {
      const from = camera.position.clone().sub(controls.target);
      const axis = new Vector3().crossVectors(camera.up, from).normalize();
      from.applyAxisAngle(camera.up, across);
      const turned = from.clone().applyAxisAngle(axis, up);
      if (Math.abs(turned.clone().normalize().dot(camera.up)) < 0.999) from.copy(turned);
      camera.position.copy(controls.target).add(from);
      controls.update();
      ask();
    },
    zoom(by) {
      camera.zoom = Math.min(40, Math.max(0.2, camera.zoom * by));
      camera.updateProjectionMatrix();
      ask();
    },
    fit,
    resize,
    recolour() {
      const tones = readTones(canvas);
      for (const part of parts.values()) {
        const look = makePartLook(part.name, part.mesh.grain, state.rings, tones);
        part.faces.uniforms.heart!.value.set(...look.heart);
        part.ink(look, tones);
      }
      ask();
    },
    drawNow() {
      cancelAnimationFrame(asked);
      asked = 0;
      draw();
      if (document.documentElement.dataset.exact === undefined) return;
      const one = new Uint8Array(4); // waits until the picture is finished; only the bench asks for it
      renderer.getContext().readPixels(0, 0, 1, 1, 6408, 5121, one); // RGBA, bytes
    },
    middles,
    size: () => size,
    onDrawn: (listen) => void listeners.push(listen),
  };

  function add(mesh: PartMesh, next: BodyState) {
    const tones = readTones(canvas);
    const part = createPartObject(mesh, makePartLook(mesh.name, mesh.grain, next.rings, tones), tones, size);
    part.cut(next.isCut);
    parts.set(mesh.name, part);
    scene.add(part.group, part.shadow);
  }

  function remove(name: string, part: PartObject) {
    scene.remove(part.group, part.shadow);
    part.dispose();
    parts.delete(name);
  }

  function pose(next: BodyState) {
    const turned = next.rings !== state.rings;
    const cutChanged = next.isCut !== state.isCut;
    state = next;
    const low = lowestZ(parts.values());
    for (const part of parts.values()) {
      const [x, y, z] = explodedOffset(part.name, next.open, next.bodyWidth, next.bedAngle);
      part.group.position.set(x, y, z);
      part.shadow.position.set(x, low - FLOOR_GAP, z);
      part.shadow.scale.set(1, 1e-4, 1);
      if (cutChanged) part.cut(next.isCut);
      part.group.visible = part.shadow.visible = !(next.isCut && part.name === "cheek-left");
      if (turned) {
        const look = makePartLook(part.name, part.mesh.grain, next.rings, readTones(canvas));
        part.faces.uniforms.heart!.value.set(...look.heart);
      }
    }
    ask();
  }

  function look(view: BodyView) {
    const middle = partsBox(parts.values()).getCenter(new Vector3());
    controls.target.copy(middle);
    camera.position.copy(middle).addScaledVector(viewDirection(view), 800);
    camera.up.set(0, 1, 0);
    controls.update();
    fit();
  }

  function fit() {
    if (parts.size === 0) return;
    const box = partsBox(parts.values());
    fittedSpan = partsSpan(parts.values());
    controls.target.copy(box.getCenter(new Vector3()));
    const direction = camera.position.clone().sub(controls.target).normalize();
    if (direction.lengthSq() === 0) direction.copy(viewDirection("corner"));
    camera.position.copy(controls.target).addScaledVector(direction, 800);
    controls.update();
    camera.updateMatrixWorld();
    const [wide, high] = visibleSpan(box, camera);
    camera.zoom = 1;
    const { clientWidth: w, clientHeight: h } = canvas;
    const height = Math.max(high * ROOM, (wide * ROOM * h) / Math.max(w, 1));
    camera.top = height / 2;
    camera.bottom = -height / 2;
    resize();
  }

  function resize() {
    const { clientWidth: w, clientHeight: h } = canvas;
    if (w === 0 || h === 0) return;
    if (size.x !== w || size.y !== h) renderer.setSize(w, h, false);
    size.set(w, h);
    camera.right = (camera.top * w) / h;
    camera.left = -camera.right;
    camera.updateProjectionMatrix();
    ask();
  }

  function ask() {
    if (asked === 0) asked = requestAnimationFrame(draw);
  }

  function draw() {
    asked = 0;
    fineness.onMove(() => renderer.render(scene, camera));
    renderer.render(scene, camera);
    for (const listen of listeners) listen();
  }

  function middles() {
    const { x: w, y: h } = size;
    return [...parts.values()]
      .filter(({ group }) => group.visible)
      .map(({ name, mesh, group }) => {
        const z = state.isCut && mesh.middle[2] > -1 ? 0 : mesh.middle[2];
        const at = new Vector3(mesh.middle[0], mesh.middle[1], z).add(group.position).project(camera);
        return { name, x: ((at.x + 1) / 2) * w, y: ((1 - at.y) / 2) * h };
      });
  }
}

function partsBox(parts: Iterable<PartObject>): Box3 {
  const box = new Box3();
  for (const { group } of parts) if (group.visible) box.expandByObject(group);
  return box;
}

/** Corner to corner, mm. */
const partsSpan = (parts: Iterable<PartObject>): number => partsBox(parts).getSize(new Vector3()).length();

/** A body so much larger runs out of the picture, one so much smaller is lost in it; less is left as the maker turned it. */
const isOtherSize = (span: number, fitted: number): boolean => Math.max(span / fitted, fitted / span) > ROOM;

function lowestZ(parts: Iterable<PartObject>): number {
  let low = 0;
  for (const { mesh } of parts) for (let i = 1; i < mesh.corners.length; i += 3) low = Math.min(low, mesh.corners[i]!);
  return low;
}

/** Width and height of a box as the camera sees it, mm. */
function visibleSpan(box: Box3, camera: OrthographicCamera): [number, number] {
  const [xs, ys]: [number[], number[]] = [[], []];
  for (const x of [box.min.x, box.max.x])
    for (const y of [box.min.y, box.max.y])
      for (const z of [box.min.z, box.max.z]) {
        const seen = new Vector3(x, y, z).applyMatrix4(camera.matrixWorldInverse);
        xs.push(seen.x);
        ys.push(seen.y);
      }
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}
