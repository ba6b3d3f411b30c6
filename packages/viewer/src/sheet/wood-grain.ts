// Wood on a drawing: patterns of growth rings as the rings of the board lie, along the sole, along the wedge, or cut across.
import { cosDeg, sinDeg } from "@lamplane/geometry";
import { setAttributes, svg } from "../elements.ts";
import type { AreaKind } from "../protocol/view.ts";

/** What the grain of a plane depends on: degrees, mm. */
export interface WoodGrain {
  /** Angle of the rings to the sole. */
  readonly rings: number;
  readonly bedAngle: number;
  readonly height: number;
  readonly pin: { readonly x: number; readonly y: number };
}

const HEART = 150; // mm from the board to the heart of the tree, as on the body
const RING = 3.1; // mm from ring to ring, as on the body
const TILE = 180; // mm: then the pattern begins anew
const STATIONS = 12;
const FLECKS = 170;

export const grainId = (view: string, area: AreaKind): string => `grain-${view}-${area}`;

/** Light from above, for wood and steel: once in the page. */
export const lightGradients = (): SVGElement[] => [
  gradient("light", { x1: 0, y1: 0, x2: 0, y2: 1 }, [
    [0, "light-high"],
    [0.55, "light-none"],
    [1, "light-low"],
  ]),
  gradient("steel", { x1: 0, y1: 1, x2: 1, y2: 0 }, [
    [0, "steel-low"],
    [0.4, "steel-high"],
    [0.62, "steel-low"],
    [1, "steel-high"],
  ]),
];

function gradient(id: string, way: Readonly<Record<string, number>>, stops: readonly [number, string][]): SVGElement {
  return svg("linearGradient", { id, ...way }, ...stops.map(([offset, name]) => svg("stop", { offset, class: name })));
}

/** Patterns for a view's `defs`, in its mm. */
export interface GrainPatterns {
  readonly element: SVGGElement;
  /** Made anew where rings or height are others; bed and pin turn and move what is there, as fast as a hand drags them. */
  draw(grain: WoodGrain): void;
}

export function createGrainPatterns(view: string): GrainPatterns {
  const element = svg("g");
  let drawn: { key: string; wedge: SVGElement; pin: SVGElement } | undefined;
  return {
    element,
    draw(grain) {
      const key = `${grain.rings} ${grain.height}`;
      if (drawn?.key !== key) {
        const [low, high] = [-16, grain.height + 8];
        const along = boardMarks(grain.rings, low, high);
        const size = { x: 0, y: -high, width: TILE, height: high - low };
        const made = (area: AreaKind) => pattern(grainId(view, area), `--${area}`, size, along);
        drawn = { key, wedge: made("wedge"), pin: endPattern(grainId(view, "pin")) };
        element.replaceChildren(made("wood"), made("wood-far"), made("waste"), drawn.wedge, drawn.pin);
      }
      const { x, y } = grain.pin;
      setAttributes(drawn.wedge, { patternTransform: `rotate(${-grain.bedAngle} ${x} ${-y})` });
      setAttributes(drawn.pin, { patternTransform: `translate(${x} ${-y})` });
    },
  };
}

interface Tile {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function pattern(id: string, tone: string, tile: Tile, marks: readonly SVGElement[]): SVGElement {
  const { x, y, width, height } = tile;
  const ground = svg("rect", { ...tile });
  ground.style.fill = `var(${tone})`;
  const light = svg("rect", { ...tile, fill: "url(#light)" });
  const viewBox = `${x} ${y} ${width} ${height}`;
  return svg("pattern", { id, patternUnits: "userSpaceOnUse", viewBox, ...tile }, ground, ...cloned(marks), light);
}

const cloned = (marks: readonly SVGElement[]) => marks.map((mark) => mark.cloneNode(true) as SVGElement);

function boardMarks(rings: number, low: number, high: number): SVGElement[] {
  const lines = ringLines(rings, low, high);
  return [
    svg("path", { class: "grain-late", d: lines.join("") }),
    svg("path", { class: "grain-fleck", d: fleckPath(low, high) }),
  ];
}

/** Lines in which the rings meet a face along the board; they wander a little and close at the tile's end. */
function ringLines(rings: number, low: number, high: number): string[] {
  const [down, out] = [-cosDeg(rings) * HEART, sinDeg(rings) * HEART];
  const phaseAt = (y: number) => Math.hypot(y - down, out) / RING;
  const [first, last] = [Math.floor(phaseAt(low)) - 1, Math.ceil(phaseAt(high)) + 1];
  return Array.from({ length: last - first + 1 }, (_, i) => {
    const spots = Array.from({ length: STATIONS + 1 }, (_, k) => {
      const x = (TILE * k) / STATIONS;
      const radius = (first + i + wander(x, first + i)) * RING;
      const rise = Math.sqrt(Math.max(0, radius * radius - out * out));
      return `${x.toFixed(1)} ${(-(down + rise)).toFixed(2)}`;
    });
    return `M${spots.join("L")}`;
  });
}

const wander = (x: number, ring: number): number => {
  const turn = (2 * Math.PI * x) / TILE;
  return 0.22 * Math.sin(turn + ring * 0.13) + 0.09 * Math.sin(3 * turn + ring * 0.31);
};

/** Rays cut along: short strokes, always the same. */
function fleckPath(low: number, high: number): string {
  let seed = 7;
  const next = () => {
    seed = (seed * 16807) % 2147483647;
    return seed / 2147483647;
  };
  return Array.from({ length: FLECKS }, () => {
    const [x, y, long] = [next() * (TILE - 4), -(low + next() * (high - low)), 0.8 + 2.2 * next()];
    return `M${x.toFixed(1)} ${y.toFixed(1)}h${long.toFixed(1)}`;
  }).join("");
}

/** The pin's end, its middle at the origin: rings about a heart below it. */
function endPattern(id: string): SVGElement {
  const size = 40;
  const heart = { x: 4, y: 16 };
  const circles = Array.from({ length: 22 }, (_, i) => {
    const r = 1.6 * (i + 1);
    return `M${heart.x - r} ${heart.y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;
  });
  const tile = { x: -size / 2, y: -size / 2, width: size, height: size };
  return pattern(id, "--pin", tile, [svg("path", { class: "grain-late", d: circles.join("") })]);
}
