// From how far, and at what, one looks so that all of some points is seen.
import { Vector3 } from "three";

/** So much of the picture, at each side, stays free. */
const MARGIN = 0.06;

/** What the eye looks at, and how many mm are seen there from the picture's middle to its top. */
export interface Fit {
  target: Vector3;
  height: number;
}

/** The eye's own axes where it looks from a direction: to the right, up, and towards the eye. */
export function axesOf(from: Vector3): [right: Vector3, up: Vector3, towards: Vector3] {
  const towards = from.clone().normalize();
  const right = new Vector3(0, 0, 1).cross(towards).normalize();
  return [right, towards.clone().cross(right), towards];
}

/**
 * Where to look from a direction so that the points fill the picture; `fov` is the angle of view
 * in degrees, upright, 0 for a parallel projection.
 */
export function fit(points: readonly Vector3[], from: Vector3, fov: number, aspect: number): Fit {
  const axes = axesOf(from);
  const spans = axes.map((axis) => {
    const along = points.map((point) => point.dot(axis));
    return [Math.min(...along), Math.max(...along)] as const;
  });
  const [x, y, z] = spans.map(([low, high]) => (low + high) / 2) as [number, number, number];
  const free = 1 - 2 * MARGIN;
  const tangent = Math.tan((fov * Math.PI) / 360) * free;
  // A point off the middle by a, nearer the eye by b, is seen from a distance d where
  // |a - shift| <= (d - b) * tangent: each side of the picture says how far off the eye must be.
  const reach = (axis: Vector3, middle: number, spread: number) => {
    let low = -Infinity;
    let high = -Infinity;
    for (const point of points) {
      const off = point.dot(axis) - middle;
      const near = (point.dot(axes[2]) - z) * tangent * spread;
      high = Math.max(high, off + near);
      low = Math.max(low, near - off);
    }
    return { half: (low + high) / 2, shift: (high - low) / 2 };
  };
  const across = reach(axes[0], x, aspect);
  const upright = reach(axes[1], y, 1);
  const height = Math.max(across.half / aspect, upright.half) / free;
  const target = new Vector3()
    .addScaledVector(axes[0], x + across.shift)
    .addScaledVector(axes[1], y + upright.shift)
    .addScaledVector(axes[2], z);
  return { target, height };
}
