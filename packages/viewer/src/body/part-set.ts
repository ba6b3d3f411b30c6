// All parts in the scene: made, refilled and taken away as the design changes; moved, cut and coloured together.
import { Box3, type Camera, type Scene, type Vector2, Vector3 } from "three";
import type { PartMesh } from "../protocol/body-data.ts";
import { type BodyState, INITIAL_STATE } from "./body-state.ts";
import { explodedOffset, makePartLook, readTones } from "./looks.ts";
import { createPartObject, type PartObject } from "./part-object.ts";

/** The cheek nearest to the eye: it hides what is cut. */
const NEAR_CHEEK = "cheek-left";
const FLOOR_GAP = 0.6; // mm: the shadow lies a little under the sole
const FLAT = 1e-4; // of its height that a shadow keeps

export class PartSet {
  readonly #scene: Scene;
  readonly #canvas: HTMLCanvasElement;
  readonly #size: Vector2;
  readonly #parts = new Map<string, PartObject>();
  #state = INITIAL_STATE;

  /** @param size of the canvas, px; shared, brought up to date by its owner */
  constructor(scene: Scene, canvas: HTMLCanvasElement, size: Vector2) {
    this.#scene = scene;
    this.#canvas = canvas;
    this.#size = size;
  }

  get isEmpty(): boolean {
    return this.#parts.size === 0;
  }

  show(meshes: readonly PartMesh[], next: BodyState): void {
    const names = new Set(meshes.map(({ name }) => name));
    for (const part of this.#parts.values()) if (!names.has(part.name)) this.#remove(part);
    for (const mesh of meshes) {
      const known = this.#parts.get(mesh.name);
      if (known) known.fill(mesh);
      else this.#add(mesh, next);
    }
    this.pose(next);
  }

  pose(next: BodyState): void {
    const isTurned = next.rings !== this.#state.rings;
    const isCutAnew = next.isCut !== this.#state.isCut;
    this.#state = next;
    const floor = lowestY(this.#parts.values()) - FLOOR_GAP;
    for (const part of this.#parts.values()) {
      const [x, y, z] = explodedOffset(part.name, next.open, next.bodyWidth, next.bedAngle);
      part.group.position.set(x, y, z);
      part.shadow.position.set(x, floor, z);
      part.shadow.scale.set(1, FLAT, 1);
      if (isCutAnew) part.cut(next.isCut);
      part.group.visible = part.shadow.visible = !(next.isCut && part.name === NEAR_CHEEK);
      if (isTurned) setHeart(part, makePartLook(part.name, part.mesh.grain, next.rings, readTones(this.#canvas)));
    }
  }

  /** Takes the style sheet's colours as they are now. */
  recolour(): void {
    const tones = readTones(this.#canvas);
    for (const part of this.#parts.values()) {
      const look = makePartLook(part.name, part.mesh.grain, this.#state.rings, tones);
      setHeart(part, look);
      part.ink(look, tones);
    }
  }

  /** Round all parts that are to be seen. */
  box(): Box3 {
    const box = new Box3();
    for (const { group } of this.#parts.values()) if (group.visible) box.expandByObject(group);
    return box;
  }

  /** Pixels on the canvas of each part's middle; parts cut away or hidden are left out. */
  middles(camera: Camera): { name: string; x: number; y: number }[] {
    const { x: w, y: h } = this.#size;
    return [...this.#parts.values()]
      .filter(({ group }) => group.visible)
      .map(({ name, mesh, group }) => {
        const z = this.#state.isCut && mesh.middle[2] > -1 ? 0 : mesh.middle[2];
        const at = new Vector3(mesh.middle[0], mesh.middle[1], z).add(group.position).project(camera);
        return { name, x: ((at.x + 1) / 2) * w, y: ((1 - at.y) / 2) * h };
      });
  }

  #add(mesh: PartMesh, { rings, isCut }: BodyState): void {
    const tones = readTones(this.#canvas);
    const part = createPartObject(mesh, makePartLook(mesh.name, mesh.grain, rings, tones), tones, this.#size);
    part.cut(isCut);
    this.#parts.set(mesh.name, part);
    this.#scene.add(part.group, part.shadow);
  }

  #remove(part: PartObject): void {
    this.#scene.remove(part.group, part.shadow);
    part.dispose();
    this.#parts.delete(part.name);
  }
}

const setHeart = ({ faces }: PartObject, { heart }: ReturnType<typeof makePartLook>) =>
  faces.uniforms.heart!.value.set(...heart);

/** Of the sole, mm. */
function lowestY(parts: Iterable<PartObject>): number {
  let low = 0;
  for (const { mesh } of parts) for (let i = 1; i < mesh.corners.length; i += 3) low = Math.min(low, mesh.corners[i]!);
  return low;
}
