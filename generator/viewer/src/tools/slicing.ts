// The area in which a plane cuts a closed mesh.
import { type BufferGeometry, type Plane, ShapeUtils, Vector2, Vector3 } from "three";

import { weldedOf } from "./welding";

/** A cut face, in the plane's own coordinates; holes lie within their outline. */
export interface Area {
  outline: Vector2[];
  holes: Vector2[][];
}

/** Two directions along a plane, that with its normal make a right-handed frame. */
export function axesIn(normal: Vector3): [Vector3, Vector3] {
  const up = Math.abs(normal.z) > 0.9 ? new Vector3(0, 1, 0) : new Vector3(0, 0, 1);
  const across = new Vector3().crossVectors(up, normal).normalize();
  return [across, new Vector3().crossVectors(normal, across)];
}

/** Where a plane cuts a mesh; both in the part frame.  `across` and `up` lie in the plane. */
export function sliced(
  geometry: BufferGeometry,
  plane: Plane,
  across: Vector3,
  up: Vector3,
): Area[] {
  const { points, triangles } = weldedOf(geometry);
  // A point on the plane counts as before it, always: so each outline closes.
  const off = Float64Array.from(points, (point) => plane.distanceToPoint(point));
  const onwards = new Map<number, number>();
  const at = new Map<number, Vector2>();
  const crossing = (from: number, to: number): number => {
    const [a, b] = from < to ? [from, to] : [to, from];
    const name = a * points.length + b;
    if (!at.has(name)) {
      const share = off[a]! / (off[a]! - off[b]!);
      const point = points[a]!.clone().lerp(points[b]!, share);
      at.set(name, new Vector2(point.dot(across), point.dot(up)));
    }
    return name;
  };
  for (let first = 0; first < triangles.length; first += 3) {
    const before = off[triangles[first]!]! >= 0;
    if (before === off[triangles[first + 1]!]! >= 0 && before === off[triangles[first + 2]!]! >= 0)
      continue;
    let [enters, leaves] = [-1, -1];
    for (let side = 0; side < 3; side++) {
      const from = triangles[first + side]!;
      const to = triangles[first + ((side + 1) % 3)]!;
      if (off[from]! >= 0 === off[to]! >= 0) continue;
      if (off[to]! >= 0) enters = crossing(from, to);
      else leaves = crossing(from, to);
    }
    // With the wood to the left, seen from where the plane's normal points.
    onwards.set(leaves, enters);
  }
  return nested(loops(onwards).map((loop) => loop.map((name) => at.get(name)!)));
}

/** The triangles of a cut face, three points each. */
export function triangulated({ outline, holes }: Area): Vector2[] {
  const points = [outline, ...holes].flat();
  return ShapeUtils.triangulateShape(outline, holes)
    .flat()
    .map((index) => points[index]!);
}

function loops(onwards: Map<number, number>): number[][] {
  const found: number[][] = [];
  for (const start of [...onwards.keys()]) {
    const loop: number[] = [];
    let name: number | undefined = start;
    while (name !== undefined && onwards.has(name)) {
      loop.push(name);
      const next: number = onwards.get(name)!;
      onwards.delete(name);
      name = next;
    }
    if (loop.length) found.push(loop);
  }
  return found;
}

/** Outlines run anticlockwise, holes clockwise: each hole to the smallest outline round it. */
function nested(loops: readonly Vector2[][]): Area[] {
  const clean = loops.map(distinct).filter((loop) => loop.length > 2);
  const areas = clean
    .filter((loop) => ShapeUtils.area(loop) > 0)
    .sort((one, other) => ShapeUtils.area(one) - ShapeUtils.area(other))
    .map((outline): Area => ({ outline, holes: [] }));
  for (const hole of clean.filter((loop) => ShapeUtils.area(loop) < 0))
    areas.find(({ outline }) => within(hole[0]!, outline))?.holes.push(hole);
  return areas;
}

/** A loop without points that lie on the one before. */
function distinct(loop: readonly Vector2[]): Vector2[] {
  return loop.filter((point, at) => point.distanceTo(loop.at(at - 1)!) > 1e-6);
}

function within(point: Vector2, outline: readonly Vector2[]): boolean {
  let inside = false;
  outline.forEach((a, at) => {
    const b = outline.at(at - 1)!;
    if (a.y > point.y === b.y > point.y) return;
    if (point.x < a.x + ((point.y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  });
  return inside;
}
