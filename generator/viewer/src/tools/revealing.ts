// Parts that light up are brought into sight, and the place of a finding is marked.
import { Vector3 } from "three";

import { isPointed } from "../choosing";
import type { Vector } from "../document";
import { directionOf } from "../stage/pose";
import * as state from "../state";
import type { Ink } from "./ink";
import type { Label } from "./labels";
import type { Sight } from "./sight";
import type { Spot } from "./spots";
import { weldedOf } from "./welding";

/** Of a part so many points are looked for; parts count as seen if such a share is. */
const POINTS = 4;
const SEEN = 0.25;
/** Of many parts only so many are looked for. */
const PARTS = 3;
/** One sees no more than half of a part from anywhere. */
const ENOUGH = 0.4;
/** Pixels: the ring round a place, and how far from it its words stand. */
const RING = 8;
const AWAY = 60;
/** Where one may look from: all round, from a little above, from below and from high above. */
const WAYS = [25, -20, 60].flatMap((rise) =>
  [0, 45, 90, 135, 180, 225, 270, 315].map((azimuth) => directionOf({ azimuth, rise })),
);

export class Revealing {
  constructor(private readonly sight: Sight) {}

  /** Bring parts into sight: their layers are shown, and the eye goes where they are seen. */
  reveal(refs: readonly string[]): void {
    const layers = new Set(state.hidden.peek());
    const aside = new Set(state.aside.peek());
    for (const part of state.model.peek()?.parts ?? []) {
      if (!refs.includes(part.ref)) continue;
      layers.delete(part.layer);
      aside.delete(part.ref);
    }
    if (layers.size < state.hidden.peek().size) state.hidden.value = layers;
    if (aside.size < state.aside.peek().size) state.aside.value = aside;
    this.turn(refs);
  }

  /** The mark of the finding that is pointed at, and its words. */
  labels(): Label[] {
    const told = state.sections.peek().findings?.find(isPointed);
    if (told?.at.length !== 3) return [];
    const place = new Vector3(...(told.at as Vector));
    // It goes with the part it is of.
    const piece = this.sight.stage.pieces.get(told.parts[0] ?? "");
    const spot = this.sight.spot(piece ? place.applyMatrix4(piece.moved()) : place);
    if (!spot) return [];
    const lines = (ink: Ink, words: Spot) => {
      ink.line("leader", words, spot);
      ink.ring("leader", spot, RING);
    };
    const spots = [-AWAY, AWAY].flatMap((y) =>
      [AWAY, -AWAY].map((x) => ({ x: spot.x + x, y: spot.y + y })),
    );
    const text = `${told.severity}: ${told.rule}`;
    return [
      { key: "finding", kind: "finding", text, spots, stands: { clear: { x: 0, y: 1 } }, lines },
    ];
  }

  private turn(refs: readonly string[]): void {
    const { stage } = this.sight;
    const points = refs.slice(0, PARTS).flatMap((ref) => this.pointsOf(ref));
    if (!points.length || this.share(points, stage.camera.position) >= SEEN) return;
    const { target } = stage.controls;
    const from = stage.camera.position.clone().sub(target);
    const away = from.length();
    // The nearest way to that of now from which enough is seen, or else the best there is.
    let best: { way: Vector3; share: number } | null = null;
    for (const way of [...WAYS].sort((one, other) => other.dot(from) - one.dot(from))) {
      const share = this.share(points, target.clone().addScaledVector(way, away));
      if (share > (best?.share ?? 0)) best = { way, share };
      if (share >= ENOUGH) break;
    }
    if (best) stage.turn(best.way);
  }

  /** The share of points that are seen from a place. */
  private share(points: readonly Vector3[], eye: Vector3): number {
    return points.filter((point) => this.sight.isClear(eye, point)).length / points.length;
  }

  /** Points of a part's outside, unit frame. */
  private pointsOf(ref: string): Vector3[] {
    const piece = this.sight.stage.pieces.get(ref);
    if (!piece) return [];
    const { points, triangles } = weldedOf(piece.mesh.geometry);
    const count = triangles.length / 3;
    const step = Math.max(1, Math.floor(count / POINTS));
    const middles: Vector3[] = [];
    for (let at = 0; at < count && middles.length < POINTS; at += step) {
      const middle = new Vector3();
      for (let corner = 0; corner < 3; corner++) middle.add(points[triangles[3 * at + corner]!]!);
      middles.push(middle.divideScalar(3).applyMatrix4(piece.group.matrix));
    }
    return middles;
  }
}
