// One part in the scene: faces, edges, section lines and its true-size shadow; made once, refilled as the design changes.
import {
  BufferAttribute,
  BufferGeometry,
  type Color,
  Group,
  Mesh,
  MeshBasicMaterial,
  type ShaderMaterial,
  SRGBColorSpace,
  type Vector2,
} from "three";
import type { PartMesh } from "../protocol/body-data.ts";
import { capMaterial } from "./cap.ts";
import type { Tones } from "./looks.ts";
import { type PartLook, partMaterial } from "./materials.ts";
import { createPenLines } from "./pen-lines.ts";

export interface PartObject {
  readonly name: string;
  readonly group: Group;
  readonly shadow: Mesh;
  readonly faces: ShaderMaterial;
  mesh: PartMesh;
  fill(mesh: PartMesh): void;
  /** Cuts at the centre plane: edges on the near side go, section lines come. */
  cut(isCut: boolean): void;
  ink(look: PartLook, tones: Tones): void;
  dispose(): void;
}

const EDGE = 1.4; // px
const CUT_EDGE = 2.2; // px: what is cut is drawn heavier (ISO 128-3)

/** @param size of the canvas, px; shared, so that a new size needs no word to each part */
export function createPartObject(mesh: PartMesh, look: PartLook, tones: Tones, size: Vector2): PartObject {
  const geometry = new BufferGeometry();
  const faces = partMaterial(look);
  const edges = createPenLines(EDGE, size);
  const section = createPenLines(CUT_EDGE, size);
  const shadowInk = new MeshBasicMaterial({ depthWrite: false });
  const shadow = new Mesh(geometry, shadowInk);
  shadow.renderOrder = -1;
  const capFaces = capMaterial(look.hatch);
  const cap = new Mesh(new BufferGeometry(), capFaces);
  const group = new Group();
  group.add(new Mesh(geometry, faces), edges.mesh, section.mesh, cap);
  section.mesh.visible = false;
  let isCut = false;

  const object: PartObject = { name: mesh.name, group, shadow, faces, mesh, fill, cut, ink, dispose };
  ink(look, tones);
  fill(mesh);
  return object;

  function fill(next: PartMesh) {
    object.mesh = next;
    const old = geometry.getAttribute("position");
    if (old && old.array.length === next.corners.length) {
      (old as BufferAttribute).copyArray(next.corners).needsUpdate = true;
    } else geometry.setAttribute("position", new BufferAttribute(next.corners, 3));
    geometry.computeBoundingSphere();
    lines();
  }

  function lines() {
    edges.set(isCut ? behindCut(object.mesh.edges) : object.mesh.edges);
    cap.visible = section.mesh.visible = isCut && object.mesh.section.length > 0;
    if (!cap.visible) return;
    section.set(object.mesh.section);
    cap.geometry.dispose();
    cap.geometry = new BufferGeometry().setAttribute("position", new BufferAttribute(object.mesh.cap, 3));
  }

  function cut(wanted: boolean) {
    isCut = wanted;
    faces.uniforms.cut!.value = wanted;
    lines();
  }

  function ink({ tone, lines: drawn }: PartLook, { ink: pencil, shadow: dark }: Tones) {
    for (const material of [faces, capFaces]) {
      material.uniforms.tone!.value.fromArray(tone);
      material.uniforms.lines!.value.fromArray(drawn);
    }
    const colour = (target: Color, [r, g, b]: readonly number[]) => target.setRGB(r!, g!, b!, SRGBColorSpace);
    for (const lines of [edges, section]) lines.material.uniforms.ink!.value.fromArray(pencil);
    colour(shadowInk.color, dark);
  }

  function dispose() {
    geometry.dispose();
    edges.dispose();
    section.dispose();
    cap.geometry.dispose();
    for (const material of [faces, capFaces, shadowInk]) material.dispose();
  }
}

/** Edges on the far side of the centre plane, those that cross it as far as they reach. */
function behindCut(edges: Float32Array): Float32Array {
  const kept: number[] = [];
  for (let i = 0; i < edges.length; i += 6) {
    let [ax, ay, az, bx, by, bz] = edges.subarray(i, i + 6) as unknown as [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    if (az > 0 && bz > 0) continue;
    if (az > 0 || bz > 0) {
      const share = az / (az - bz);
      const [mx, my] = [ax + (bx - ax) * share, ay + (by - ay) * share];
      if (az > 0) [ax, ay, az] = [mx, my, 0];
      else [bx, by, bz] = [mx, my, 0];
    }
    kept.push(ax, ay, az, bx, by, bz);
  }
  return Float32Array.from(kept);
}
