// What the drawing in 3D is made of: cut faces as large as the outlines say, edges where faces meet, nothing lost on the way.

import { checkWithoutCures } from "@lamplane/bench/checks";
import { outlineArea } from "@lamplane/geometry";
import { blocksAt, elevation } from "@lamplane/parameters/elevation";
import { partsOf } from "@lamplane/parameters/solids";
import { BufferAttribute, BufferGeometry, EdgesGeometry } from "three";
import { mergeVertices } from "three/addons/utils/BufferGeometryUtils.js";
import { expect, test } from "vitest";
import type { PartMesh } from "../../packages/viewer/src/protocol/body-data.ts";
import { partMeshes } from "../../packages/viewer/src/worker/meshes.ts";
import { designWith, randomDesigns } from "../support/designs.ts";
import { countEdgeFaults, solidTriangles, volumeOf } from "../support/meshes.ts";

const areaOf = (at: Float32Array): number => {
  let area = 0;
  for (let i = 0; i < at.length; i += 9)
    area +=
      Math.abs((at[i + 3]! - at[i]!) * (at[i + 7]! - at[i + 1]!) - (at[i + 6]! - at[i]!) * (at[i + 4]! - at[i + 1]!)) /
      2;
  return area;
};

const trianglesOf = ({ corners }: PartMesh) =>
  Array.from({ length: corners.length / 9 }, (_, i) =>
    [0, 3, 6].map((k) => [...corners.subarray(i * 9 + k, i * 9 + k + 3)] as [number, number, number]),
  );

const sound = (design: Parameters<typeof elevation>[0]) =>
  checkWithoutCures(elevation(design)).every(({ severity }) => severity !== "stop");

test("the cut faces are as large as the outlines that are cut", () => {
  const planes = [designWith({ "body.outline": "arched" }), ...randomDesigns(7, 15, sound).map(({ design }) => design)];
  for (const plane of planes.map(elevation)) {
    const parts = new Map(partMeshes(plane, "shaped").map((mesh) => [mesh.name, mesh]));
    const cut = (name: string) => areaOf(parts.get(name)!.cap);
    const near = (found: number, exact: number) => expect(Math.abs(found / exact - 1)).toBeLessThan(1e-2); // chords for arcs, most of it on the pin
    near(cut("front-block"), outlineArea(blocksAt(plane, "trued").front));
    near(cut("wedge"), outlineArea(plane.wedge));
    near(cut("iron"), outlineArea(plane.iron));
    near(cut("cross-pin"), outlineArea(plane.pinSection));
    expect(cut("bed-block")).toBeLessThanOrEqual(outlineArea(blocksAt(plane, "trued").bed) * (1 + 1e-6));
  }
});

test("edges are those that three.js finds at the same angle", () => {
  const plane = elevation(designWith());
  for (const { name, corners, edges } of partMeshes(plane, "shaped")) {
    const geometry = new BufferGeometry().setAttribute("position", new BufferAttribute(corners, 3));
    const theirs = new EdgesGeometry(mergeVertices(geometry, 1e-4), 20).getAttribute("position").array;
    const length = (ends: ArrayLike<number>) => {
      let sum = 0;
      for (let i = 0; i < ends.length; i += 6)
        sum += Math.hypot(ends[i + 3]! - ends[i]!, ends[i + 4]! - ends[i + 1]!, ends[i + 5]! - ends[i + 2]!);
      return sum;
    };
    expect(Math.abs(length(edges) / length(theirs) - 1), name).toBeLessThan(0.01);
  }
});

test("the bodies shown are as large as the solids that are shipped, in coarser chords", () => {
  const plane = elevation(designWith());
  const shown = partMeshes(plane, "shaped");
  for (const { name, inPlace } of partsOf(plane, "trued")) {
    const triangles = trianglesOf(shown.find((mesh) => mesh.name === name)!);
    expect(countEdgeFaults(triangles), name).toBe(0);
    expect(Math.abs(volumeOf(triangles) / volumeOf(solidTriangles(inPlace)) - 1), name).toBeLessThan(1e-2);
    expect(triangles.length, name).toBeLessThanOrEqual(inPlace.polygons.length);
  }
});

test("boards before they are shaped are closed, outward boxes of the stock's sizes", () => {
  const plane = elevation(designWith());
  const { blankLength, blankHeight, fence } = plane.widths;
  const pieces = partMeshes(plane, "ripped").map((mesh) => {
    const triangles = trianglesOf(mesh);
    const { name } = mesh;
    expect(countEdgeFaults(triangles), name).toBe(0);
    return [name, volumeOf(triangles)] as const;
  });
  const volumes = new Map(pieces);
  expect(volumes.get("core")! / (blankLength * blankHeight * fence.core)).toBeCloseTo(1, 5);
  expect(volumes.get("cheek-left")! / (blankLength * blankHeight * fence.leftCheek)).toBeCloseTo(1, 5);
  expect(volumes.get("cheek-right")! / (blankLength * blankHeight * fence.rightCheek)).toBeCloseTo(1, 5);
});
