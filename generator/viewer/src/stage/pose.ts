// Where the eye is and how it looks, as numbers.
import { MathUtils, Vector3 } from "three";

import type { Vector } from "../document";

/** Angles in degrees: `azimuth` to the right of the front, `rise` above the level. */
export interface Pose {
  azimuth: number;
  rise: number;
  target: Vector;
  /** Seen from the picture's middle to its top where the target is, mm. */
  height: number;
  /** The angle of view, upright; next to nothing is a parallel projection. */
  fov: number;
  /** Nearer or to the side of where the whole unit is seen. */
  close: boolean;
}

/** The angle of view of the usual picture. */
export const FOV = 20;
/** Below this angle the projection is parallel. */
export const PARALLEL = 0.5;

/** The direction in which the eye is, seen from its target; of length 1. */
export function directionOf({ azimuth, rise }: Pick<Pose, "azimuth" | "rise">): Vector3 {
  const [round, up] = [MathUtils.degToRad(azimuth), MathUtils.degToRad(rise)];
  const level = Math.cos(up);
  return new Vector3(Math.sin(round) * level, -Math.cos(round) * level, Math.sin(up));
}

/** The angles of a direction: undoes `directionOf`, whatever its length. */
export function anglesOf(direction: Vector3): Pick<Pose, "azimuth" | "rise"> {
  const { x, y, z } = direction;
  return {
    azimuth: MathUtils.radToDeg(Math.atan2(x, -y)),
    rise: MathUtils.radToDeg(Math.atan2(z, Math.hypot(x, y))),
  };
}

/** What is seen to each side of the middle, in shares of how far away it is. */
export function halfSeen(fov: number): number {
  return Math.tan(MathUtils.degToRad(fov / 2));
}

/** Part of the way from one to the other: the short way round, sizes in proportion. */
export function between(one: Pose, other: Pose, share: number): Pose {
  const way = (from: number, to: number) => from + (to - from) * share;
  const ratio = (from: number, to: number) => from * (to / from) ** share;
  const round = ((((other.azimuth - one.azimuth) % 360) + 540) % 360) - 180;
  return {
    azimuth: one.azimuth + round * share,
    rise: way(one.rise, other.rise),
    target: one.target.map((each, axis) => way(each, other.target[axis]!)) as Vector,
    height: ratio(one.height, other.height),
    fov: ratio(one.fov, other.fov),
    close: other.close,
  };
}
