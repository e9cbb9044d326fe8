// Dimensions in space: of the part that is chosen and of the unit; with oblique strokes at their ends
// (ISO 129-1) and words that face the reader.
import { Vector3 } from "three";

import type { Dimension, Part, Vector } from "../document";
import type { Piece } from "../stage/piece";
import * as state from "../state";
import type { Ink } from "./ink";
import type { Label } from "./labels";
import type { Sight, Spot } from "./sight";

/** Pixels: how far strokes reach, lines run past each other, and a part's dimensions lie off it. */
const STROKE = 5;
const PAST = 5;
const OFF = 20;
/** Pixels: shorter dimensions have their words beside them, or are seen end on and not drawn. */
const SHORT = 34;
const END_ON = 5;
/** How much it is worth that a dimension stands low, beside standing far out. */
const BELOW = 0.2;
/** Seconds of rest after which it is worked out which dimensions the unit hides. */
const REST = 0.15;

/** Along a dimension, where its words may stand. */
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8];

export class Dimensioning {
  /** Those of the unit that it doesn't hide, each where it is seen; null until that is known. */
  private seen: readonly Dimension[] | null = null;
  private eye = "";
  private waiting: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly sight: Sight) {}

  /** Parts have moved: others may be hidden now. */
  renew(): void {
    this.eye = "";
  }

  stop(): void {
    clearTimeout(this.waiting);
  }

  /** Points that dimensions reach: they should be in the picture. */
  reach(): Vector3[] {
    const dimensions = state.dimensioned.value ? state.sections.value.dimensions : null;
    return (dimensions ?? []).flatMap(({ start, end, offset }) =>
      [start, end].map((each) => new Vector3(...each).add(new Vector3(...offset))),
    );
  }

  labels(): Label[] {
    if (!state.dimensioned.peek()) return [];
    const part = state.model.peek()?.parts.find((each) => each.ref === state.selected.peek());
    const piece = part && this.sight.stage.pieces.get(part.ref);
    const own = part && piece?.group.visible ? this.ofPart(part, piece) : [];
    // Taken apart, the unit has no size.
    const unit = state.apart.peek() > 0 ? [] : longestFirst(state.sections.peek().dimensions ?? []);
    this.look(unit);
    return [...own, ...(this.seen ?? unit).flatMap((each, number) => this.ofUnit(each, number))];
  }

  private ofUnit({ start, end, offset, text }: Dimension, number: number): Label[] {
    const [from, to, off] = [start, end, offset].map((each) => new Vector3(...each)) as [
      Vector3,
      Vector3,
      Vector3,
    ];
    const spots = [from, to, from.clone().add(off), to.clone().add(off)].map((each) =>
      this.sight.spot(each),
    );
    if (spots.some((spot) => !spot)) return [];
    return dimension(`dimension ${number}`, text, spots as Four);
  }

  /** A part's length, width and thickness, each along the edge that lies outermost. */
  private ofPart(part: Part, piece: Piece): Label[] {
    const texts = part.size.split(" x ");
    const { min, max } = piece.box;
    const middle = this.sight.spot(min.clone().lerp(max, 0.5).applyMatrix4(piece.group.matrix));
    if (!middle || texts.length !== 3) return [];
    return texts.flatMap((text, axis) => {
      const edges = edgesAlong(axis, min, max).map((ends) =>
        ends.map((end) => this.sight.spot(end.applyMatrix4(piece.group.matrix))),
      );
      return edges
        .filter((ends): ends is [Spot, Spot] => ends.every((each) => each))
        .sort((one, other) => out(other, middle) - out(one, middle))
        .flatMap(([from, to]) => {
          const away = awayFrom(middle, from, to);
          const shift = ({ x, y }: Spot) => ({ x: x + away.x * OFF, y: y + away.y * OFF });
          return dimension(`own ${axis}`, text, [from, to, shift(from), shift(to)]);
        })
        .reduceRight<Label[]>(
          (rest, label) => [{ ...label, ...(rest[0] && { instead: rest[0] }) }],
          [],
        );
    });
  }

  /** Find out which dimensions the unit hides, once the eye rests. */
  private look(dimensions: readonly Dimension[]): void {
    const { camera, draw } = this.sight.stage;
    const eye = [...camera.matrixWorld.elements, ...camera.projectionMatrix.elements].join();
    if (eye !== this.eye) {
      this.eye = eye;
      clearTimeout(this.waiting);
      this.waiting = setTimeout(() => {
        this.waiting = undefined;
        this.seen = dimensions.flatMap((each) => {
          const seen = [each, ...mirrored(each)].find((place) => this.sees(place));
          return seen ? [seen] : [];
        });
        draw.call(this.sight.stage);
      }, REST * 1000);
    }
  }

  private sees({ start, end, offset }: Dimension): boolean {
    const [from, to] = [start, end].map((each) =>
      new Vector3(...each).add(new Vector3(...offset)),
    ) as [Vector3, Vector3];
    return [0, 0.5, 1].every((share) => this.sight.sees(from.clone().lerp(to, share)));
  }
}

/** The whole comes before its parts where there isn't room for all. */
function longestFirst(dimensions: readonly Dimension[]): Dimension[] {
  const length = ({ start, end }: Dimension) =>
    new Vector3(...start).distanceTo(new Vector3(...end));
  const rank = (each: Dimension) => Number(isWhole(each, [0, 1, 2]));
  return [...dimensions].sort(
    (one, other) => rank(other) - rank(one) || length(other) - length(one),
  );
}

/** Whether a dimension is the unit's whole size along one of these axes. */
function isWhole({ start, end }: Dimension, axes: readonly number[]): boolean {
  const { low, high } = state.model.peek()!;
  return axes.some(
    (axis) => Math.abs(Math.abs(end[axis]! - start[axis]!) - (high[axis]! - low[axis]!)) < 0.01,
  );
}

/** The same dimension on the other side of the unit, where it holds there: of its whole height or
 * depth. */
function mirrored(dimension: Dimension): Dimension[] {
  if (!isWhole(dimension, [1, 2])) return [];
  const { start, end, offset, text } = dimension;
  const { low, high } = state.model.peek()!;
  const across = ([x, y, z]: Vector): Vector => [low[0] + high[0] - x, y, z];
  const [x, y, z] = offset;
  return [{ start: across(start), end: across(end), offset: [x ? -x : 0, y, z], text }];
}

/** What is measured from and to, and the ends of the dimension's line. */
type Four = [Spot, Spot, Spot, Spot];

function dimension(key: string, text: string, [start, end, from, to]: Four): Label[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < END_ON) return [];
  const lines = (ink: Ink) => {
    ink.line("dimension", from, to);
    for (const [foot, head, other] of [
      [start, from, to],
      [end, to, from],
    ] as const) {
      ink.line("dimension", foot, further(foot, head, PAST));
      ink.tick("dimension", head, other, STROKE);
    }
  };
  const spots = length < SHORT ? [to, from] : SHARES.map((share) => between(from, to, share));
  const stands = length < SHORT ? "beside" : "on";
  return [{ key, kind: "dimension", text, spots, stands, along: [from, to], lines }];
}

/** The ends of the four edges of a box along an axis. */
function edgesAlong(axis: number, min: Vector3, max: Vector3): [Vector3, Vector3][] {
  const [one, other] = [0, 1, 2].filter((each) => each !== axis) as [number, number];
  return [min, max].flatMap((first) =>
    [min, max].map((second): [Vector3, Vector3] => {
      const from = min.clone();
      from.setComponent(one, first.getComponent(one));
      from.setComponent(other, second.getComponent(other));
      return [from, from.clone().setComponent(axis, max.getComponent(axis))];
    }),
  );
}

/** How far out an edge lies on the screen; those below come before others. */
function out([from, to]: readonly [Spot, Spot], middle: Spot): number {
  const { x, y } = between(from, to, 0.5);
  return Math.hypot(x - middle.x, y - middle.y) + BELOW * (y - middle.y);
}

/** Square to an edge, away from a spot; of length 1. */
function awayFrom(middle: Spot, from: Spot, to: Spot): Spot {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const [x, y] = [(from.y - to.y) / length, (to.x - from.x) / length];
  const half = between(from, to, 0.5);
  const side = (half.x - middle.x) * x + (half.y - middle.y) * y < 0 ? -1 : 1;
  return { x: x * side, y: y * side };
}

function between(from: Spot, to: Spot, share: number): Spot {
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}

/** A spot so many pixels past another, as seen from a third. */
function further(foot: Spot, head: Spot, by: number): Spot {
  const length = Math.hypot(head.x - foot.x, head.y - foot.y) || 1;
  return between(foot, head, 1 + by / length);
}
