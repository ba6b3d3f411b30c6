// Door: plane geometry that knows no plane.
export { type HolePair, widestHolePair } from "./hole-pair.ts";
export * from "./intersection.ts";
export { distanceToChain, distanceToSegment, nearestOnSegment, segmentBounds } from "./nearest-point.ts";
export * from "./nesting.ts";
export * from "./offset.ts";
export * from "./outline.ts";
export { clipPolygon, polygonArea } from "./polygon.ts";
export { polygonHolds } from "./polygon-contact.ts";
export * from "./rectangle-packing.ts";
export { ringPairs, ringTriples } from "./ring.ts";
export * from "./tolerances.ts";
export * from "./transform.ts";
export * from "./trig.ts";
