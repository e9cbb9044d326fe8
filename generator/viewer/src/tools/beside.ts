// Points of a solid's outside right beside one of its points: whether a corner or an edge is seen
// hangs on whether anything of the faces that meet there is.
import { type BufferGeometry, Triangle, Vector3 } from "three";

import { weldedOf } from "./welding";

/** mm: how far beside. */
const ASIDE = 0.05;
/** mm: a point this near a triangle is on it. */
const ON = 1e-3;
/**
 * Cosines of 1 degree, below which an angle is too narrow for anything to be seen in it, and of
 * nearly 180: the point is on a side, and the angle is none.
 */
const NARROW = 0.99985;
const STRAIGHT = -0.9999999;
/** Ways into an angle, as shares of its second side. */
const WAYS = [0.2, 0.5, 0.8];

export interface Beside {
  point: Vector3;
  /** Outwards from the face that it is on. */
  normal: Vector3;
}

/** Points right beside one on the outside of a closed mesh, on each of its faces there; part frame, mm. */
export function besideOf(geometry: BufferGeometry, point: Vector3): Beside[] {
  const { points, triangles } = weldedOf(geometry);
  const triangle = new Triangle();
  const nearest = new Vector3();
  const found: Beside[] = [];
  for (let at = 0; at < triangles.length; at += 3) {
    const [a, b, c] = [0, 1, 2].map((n) => points[triangles[at + n]!]!) as [
      Vector3,
      Vector3,
      Vector3,
    ];
    if (!spans(a, b, c, point)) continue;
    triangle.set(a, b, c);
    if (triangle.closestPointToPoint(point, nearest).distanceTo(point) > ON) continue;
    const normal = triangle.getNormal(new Vector3());
    const within = [...into(point, a, b), ...into(point, b, c), ...into(point, c, a)];
    found.push(...within.map((point) => ({ point, normal })));
  }
  return found;
}

/** Whether the box round a triangle holds a point: most are done with so. */
function spans(a: Vector3, b: Vector3, c: Vector3, point: Vector3): boolean {
  return (
    Math.min(a.x, b.x, c.x) - ON < point.x &&
    point.x < Math.max(a.x, b.x, c.x) + ON &&
    Math.min(a.y, b.y, c.y) - ON < point.y &&
    point.y < Math.max(a.y, b.y, c.y) + ON &&
    Math.min(a.z, b.z, c.z) - ON < point.z &&
    point.z < Math.max(a.z, b.z, c.z) + ON
  );
}

/** Points in the angle at a point between the ways to two others, within the triangle of the three. */
function into(point: Vector3, one: Vector3, other: Vector3): Vector3[] {
  const [first, second] = [one.clone().sub(point), other.clone().sub(point)];
  const [near, far] = [first.length(), second.length()];
  if (near < ON || far < ON) return [];
  first.divideScalar(near);
  second.divideScalar(far);
  const cosine = first.dot(second);
  if (cosine > NARROW || cosine < STRAIGHT) return [];
  return WAYS.map((share) => {
    const way = first
      .clone()
      .multiplyScalar(1 - share)
      .addScaledVector(second, share);
    // So far it is, in its own lengths, to the side between the two others.
    const across = 1 / ((1 - share) / near + share / far);
    return point.clone().addScaledVector(way, Math.min(ASIDE / way.length(), across / 2));
  });
}
