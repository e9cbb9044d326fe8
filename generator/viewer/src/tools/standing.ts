// Where parts stand if the unit isn't taken apart, with its doors and drawers as they are now.
import { Matrix4, Vector3 } from "three";

import { motionOf } from "../choosing";
import type { Vector } from "../document";
import type { Piece } from "../stage/piece";
import * as state from "../state";

/** A point of a part (part frame) in the unit frame, as if nothing were taken apart. */
export function standing(piece: Piece, point: Vector3): Vector3 {
  const place = point.clone().applyMatrix4(piece.home);
  const motion = motionOf(piece.ref);
  if (!motion) return place;
  const moved = piece.moved();
  const [x, y] = motion.hinge;
  if (x !== undefined && y !== undefined) {
    const hinge = new Vector3(x, y, 0);
    const turned = new Matrix4().extractRotation(moved);
    return place.sub(hinge).applyMatrix4(turned).add(hinge);
  }
  const move: Vector = state.moves.peek()?.[piece.ref] ?? [0, 0, 0];
  const drawn = new Vector3().setFromMatrixPosition(moved);
  return place.add(drawn).addScaledVector(new Vector3(...move), -state.apart.peek());
}
