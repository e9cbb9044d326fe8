// From how far, and at what, one looks so that all of some points is seen.
import { Vector3 } from "three";

import type { Vector } from "../document";
import { directionOf, halfSeen, type Pose } from "./pose";

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
 * in degrees, upright, 0 for a parallel projection; the picture is `aspect` times as wide as high.
 */
export function fit(points: readonly Vector3[], from: Vector3, fov: number, aspect: number): Fit {
  const axes = axesOf(from);
  const [x, y, z] = axes.map((axis) => {
    const along = points.map((point) => point.dot(axis));
    return (Math.min(...along) + Math.max(...along)) / 2;
  }) as [number, number, number];
  const tangent = halfSeen(fov);
  // From where the target is seen `height` to each side, a point `off` the middle, nearer by
  // `near`, is within a share of the picture where off <= shift + share * (height - near * tangent).
  const reach = (axis: Vector3, middle: number, share: number) => {
    let [high, low] = [-Infinity, -Infinity];
    for (const point of points) {
      const off = point.dot(axis) - middle;
      const near = (point.dot(axes[2]) - z) * tangent;
      high = Math.max(high, off + near * share);
      low = Math.max(low, near * share - off);
    }
    return { half: (high + low) / 2 / share, shift: (high - low) / 2 };
  };
  const free = 1 - 2 * MARGIN;
  const across = reach(axes[0], x, free * aspect);
  const upright = reach(axes[1], y, free);
  const height = Math.max(across.half, upright.half);
  const target = new Vector3()
    .addScaledVector(axes[0], x + across.shift)
    .addScaledVector(axes[1], y + upright.shift)
    .addScaledVector(axes[2], z);
  return { target, height };
}

/** A pose as it stands to where all points are seen, unless the maker has gone near. */
export function relative(pose: Pose, points: readonly Vector3[], aspect: number): Pose {
  if (pose.close) return pose;
  const whole = fit(points, directionOf(pose), pose.fov, aspect);
  const off = new Vector3(...pose.target).sub(whole.target);
  return { ...pose, target: off.toArray() as Vector, height: pose.height / whole.height };
}

/** The pose again of what `relative` made of it, for other points perhaps. */
export function absolute(pose: Pose, points: readonly Vector3[], aspect: number): Pose {
  if (pose.close) return pose;
  const whole = fit(points, directionOf(pose), pose.fov, aspect);
  const target = new Vector3(...pose.target).add(whole.target);
  return { ...pose, target: target.toArray() as Vector, height: pose.height * whole.height };
}
