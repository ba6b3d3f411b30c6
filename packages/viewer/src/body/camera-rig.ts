// The eye on the body: an orthographic camera on an orbit, turned by hand or key, and fitted to what it looks at.
import { type Box3, OrthographicCamera, Vector3 } from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";
import { BODY_VIEWS, type BodyView } from "./body-views.ts";

const viewDirection = (view: BodyView): Vector3 => new Vector3(...BODY_VIEWS[view].from).normalize();

export interface CameraRig {
  readonly camera: OrthographicCamera;
  readonly controls: OrbitControls;
}

/** How much more than the body the picture holds when it is fitted. */
export const MARGIN = 1.16;
const NAME_COLUMN = 96; // px at each side for the parts' names, which stand outside the body
const LEAST_ROOM = 0.6; // of the width: on a phone the body keeps so much of it
const AWAY = 800; // mm from the body's middle to the eye
const DEEP = 3000; // mm before and behind the eye that is drawn
const ZOOM = { least: 0.2, most: 40 };
const POLE = 0.999; // cosine: nearer than this to straight above or below the body does not turn

export function createCameraRig(canvas: HTMLCanvasElement): CameraRig {
  const camera = new OrthographicCamera(-1, 1, 1, -1, -DEEP, DEEP);
  leaveWheelToPage(canvas);
  const controls = new OrbitControls(camera, canvas);
  controls.enableDamping = false;
  controls.listenToKeyEvents = () => {};
  return { camera, controls };
}

/** The wheel scrolls the page; with Ctrl, as pinching two fingers sends it, it brings the body closer. */
function leaveWheelToPage(canvas: HTMLCanvasElement): void {
  const leave = (event: WheelEvent) => {
    if (!event.ctrlKey) event.stopImmediatePropagation();
  };
  canvas.addEventListener("wheel", leave, { capture: true });
}

/** Turns the eye about the body. @param across @param up radians */
export function turnCamera({ camera, controls }: CameraRig, across: number, up: number): void {
  const from = camera.position.clone().sub(controls.target);
  const axis = new Vector3().crossVectors(camera.up, from).normalize();
  from.applyAxisAngle(camera.up, across);
  const turned = from.clone().applyAxisAngle(axis, up);
  if (Math.abs(turned.clone().normalize().dot(camera.up)) < POLE) from.copy(turned);
  camera.position.copy(controls.target).add(from);
  controls.update();
}

export function zoomCamera({ camera }: CameraRig, by: number): void {
  camera.zoom = Math.min(ZOOM.most, Math.max(ZOOM.least, camera.zoom * by));
  camera.updateProjectionMatrix();
}

/** Looks at a box from where a standard view is taken. */
export function faceView({ camera, controls }: CameraRig, view: BodyView, box: Box3): void {
  const middle = box.getCenter(new Vector3());
  controls.target.copy(middle);
  camera.position.copy(middle).addScaledVector(viewDirection(view), AWAY);
  camera.up.set(0, 1, 0);
  controls.update();
}

/** Brings a box into the middle and sets the picture's height so that it holds the box; the width follows by `setAspect`. */
export function fitCamera({ camera, controls }: CameraRig, box: Box3, { clientWidth, clientHeight }: Element): void {
  controls.target.copy(box.getCenter(new Vector3()));
  const direction = camera.position.clone().sub(controls.target).normalize();
  if (direction.lengthSq() === 0) direction.copy(viewDirection("corner"));
  camera.position.copy(controls.target).addScaledVector(direction, AWAY);
  controls.update();
  camera.updateMatrixWorld();
  const [wide, high] = visibleSpan(box, camera);
  camera.zoom = 1;
  const room = Math.max(clientWidth * LEAST_ROOM, clientWidth - 2 * NAME_COLUMN, 1);
  const height = Math.max(high * MARGIN, (wide * MARGIN * clientHeight) / room);
  camera.top = height / 2;
  camera.bottom = -height / 2;
}

/** The picture's width from its height. @param width @param height of the canvas, px */
export function setAspect({ camera }: CameraRig, width: number, height: number): void {
  camera.right = (camera.top * width) / height;
  camera.left = -camera.right;
  camera.updateProjectionMatrix();
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
