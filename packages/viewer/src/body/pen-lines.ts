// Drawn lines of an even width in pixels, whatever the zoom: one quad for each, spread in the vertex shader.
// Much lighter than general thick lines: the eye stands far away (orthographic), so no line needs clipping.
import { BufferAttribute, BufferGeometry, DoubleSide, GLSL3, Mesh, ShaderMaterial, type Vector2, Vector3 } from "three";

const VERTEX = `
in vec3 end;
in vec2 corner;
uniform vec2 size;
uniform float width;
void main() {
  vec4 p = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  vec4 q = projectionMatrix * modelViewMatrix * vec4(end, 1.0);
  vec2 way = (q.xy - p.xy) * size;
  float span = length(way);
  way = span > 1e-6 ? way / span : vec2(1.0, 0.0);
  vec4 at = corner.x > 0.0 ? q : p;
  at.xy += (vec2(-way.y, way.x) * corner.y + way * corner.x) * width / size;
  at.z -= 0.0003;
  gl_Position = at;
}`;
const FRAGMENT = `
precision mediump float;
out vec4 colour;
uniform vec3 ink;
void main() { colour = vec4(ink, 1.0); }`;

export interface PenLines {
  readonly mesh: Mesh;
  readonly material: ShaderMaterial;
  /** Two corners for each line. */
  set(ends: Float32Array): void;
  dispose(): void;
}

/** @param width of the lines, px @param size of the canvas, px, shared by all lines on it */
export function createPenLines(width: number, size: Vector2): PenLines {
  const material = new ShaderMaterial({
    glslVersion: GLSL3,
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    side: DoubleSide,
    uniforms: { size: { value: size }, width: { value: width }, ink: { value: new Vector3() } },
  });
  const mesh = new Mesh(new BufferGeometry(), material);
  mesh.frustumCulled = false;
  let room = 0; // lines for which there are buffers
  return {
    mesh,
    material,
    set(ends) {
      const count = ends.length / 6;
      if (count > room) {
        mesh.geometry.dispose();
        mesh.geometry = makeQuads(count);
        room = count;
      }
      if (count > 0) placeQuads(mesh.geometry, ends);
      mesh.geometry.setDrawRange(0, count * QUAD.length);
      mesh.visible = count > 0;
    },
    dispose() {
      mesh.geometry.dispose();
      material.dispose();
    },
  };
}

/** Four corners to a line: which end and side each is. Not instanced: software renderers draw each instance alone. */
function makeQuads(count: number): BufferGeometry {
  const corner = new Float32Array(count * 8);
  const index = new Uint32Array(count * 6);
  for (let i = 0; i < count; i++) {
    corner.set(CORNERS, i * 8);
    for (let k = 0; k < 6; k++) index[i * 6 + k] = i * 4 + QUAD[k]!;
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(new Float32Array(count * 12), 3));
  geometry.setAttribute("end", new BufferAttribute(new Float32Array(count * 12), 3));
  geometry.setAttribute("corner", new BufferAttribute(corner, 2));
  geometry.setIndex(new BufferAttribute(index, 1));
  return geometry;
}

/** Each of a line's four corners has both its ends. */
function placeQuads(geometry: BufferGeometry, ends: Float32Array): void {
  const [begin, end] = ["position", "end"].map((name) => geometry.getAttribute(name) as BufferAttribute);
  for (let i = 0; i < ends.length / 6; i++)
    for (let k = 0; k < 4; k++) {
      begin!.array.set(ends.subarray(i * 6, i * 6 + 3), (i * 4 + k) * 3);
      end!.array.set(ends.subarray(i * 6 + 3, i * 6 + 6), (i * 4 + k) * 3);
    }
  begin!.needsUpdate = end!.needsUpdate = true;
}

const CORNERS = [-1, -1, 1, -1, 1, 1, -1, 1]; // end and side of each corner
const QUAD = [0, 1, 2, 0, 2, 3];
