// Dimensions in space: of the part that is chosen and of the unit; with oblique strokes at their ends
// (ISO 129-1) and words that face the reader.
import { Vector3 } from "three";

import type { Dimension, Part, Vector } from "../document";
import type { Piece } from "../stage/piece";
import * as state from "../state";
import type { Ink } from "./ink";
import type { Label } from "./labels";
import type { Sight } from "./sight";
import { between, distance, shifted, type Spot, squareTo, wordsAlong } from "./spots";

/** Pixels: how far strokes reach, lines run past each other, and a part's dimensions lie off it. */
const STROKE = 5;
const PAST = 5;
const OFF = 20;
/** Pixels: shorter dimensions have their words beside them, or are seen end on and not drawn. */
const SHORT = 34;
const END_ON = 5;
/** How much it is worth that a dimension stands low, beside standing far out. */
const BELOW = 0.2;
/** Rest (ms) after which it is worked out which dimensions the unit hides. */
const REST = 150;
/** mm: sizes that differ by less are one. */
const SAME = 0.01;

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
    const dimensions = state.dimensioned.value ? state.dimensions.value : null;
    return (dimensions ?? []).flatMap(lineOf);
  }

  labels(): Label[] {
    if (!state.dimensioned.peek()) return [];
    const part = state.model.peek()?.parts.find((each) => each.ref === state.selected.peek());
    const piece = part && this.sight.stage.pieces.get(part.ref);
    const own = part && piece?.group.visible ? this.ofPart(part, piece) : [];
    // Taken apart, the unit has no size.
    const unit = state.apart.peek() > 0 ? [] : longestFirst(state.dimensions.peek() ?? []);
    this.look(unit);
    return [...own, ...(this.seen ?? unit).flatMap((each, number) => this.ofUnit(each, number))];
  }

  private ofUnit(told: Dimension, number: number): Label[] {
    const feet = [told.start, told.end].map((each) => new Vector3(...each));
    const spots = [...feet, ...lineOf(told)].map((each) => this.sight.spot(each));
    if (spots.some((spot) => !spot)) return [];
    return dimension(`dimension ${number}`, told.text, spots as Four);
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
      const places = edges
        .filter((ends): ends is [Spot, Spot] => ends.every((each) => each))
        .sort((one, other) => out(other, middle) - out(one, middle))
        .flatMap(([from, to]) => {
          const away = awayFrom(middle, from, to);
          const ends: Four = [from, to, shifted(from, away, OFF), shifted(to, away, OFF)];
          return dimension(`own ${axis}`, text, ends);
        });
      return firstOf(places);
    });
  }

  /** Find out which dimensions the unit hides, once the eye rests. */
  private look(dimensions: readonly Dimension[]): void {
    const { stage } = this.sight;
    const { matrixWorld, projectionMatrix } = stage.camera;
    const eye = [...matrixWorld.elements, ...projectionMatrix.elements].join();
    if (eye === this.eye) return;
    this.eye = eye;
    clearTimeout(this.waiting);
    stage.awaited.add(this);
    this.waiting = setTimeout(() => {
      stage.awaited.delete(this);
      this.seen = dimensions.flatMap((each) => {
        const seen = [each, ...mirrored(each)].find((place) => this.sees(place));
        return seen ? [seen] : [];
      });
      stage.draw();
    }, REST);
  }

  private sees(dimension: Dimension): boolean {
    const [from, to] = lineOf(dimension);
    return [0, 0.5, 1].every((share) => this.sight.sees(from.clone().lerp(to, share)));
  }
}

/** The ends of a dimension's line, beside what is measured; unit frame. */
function lineOf({ start, end, offset }: Dimension): [Vector3, Vector3] {
  const off = new Vector3(...offset);
  return [new Vector3(...start).add(off), new Vector3(...end).add(off)];
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
    (axis) => Math.abs(Math.abs(end[axis]! - start[axis]!) - (high[axis]! - low[axis]!)) < SAME,
  );
}

/**
 * The same dimension on the other side of the unit, where it holds there: of its whole height or
 * depth.
 */
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
  const length = distance(from, to);
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
  const spots = length < SHORT ? [to, from] : wordsAlong(from, to);
  const stands = length < SHORT ? "beside" : "on";
  return [{ key, kind: "dimension", text, spots, stands, along: [from, to], lines }];
}

/** The best of several labels, that has the next best to stand in for it. */
function firstOf(places: readonly Label[]): Label[] {
  return places.reduceRight<Label[]>(
    (rest, label) => [{ ...label, ...(rest[0] && { instead: rest[0] }) }],
    [],
  );
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
  const half = between(from, to, 0.5);
  return distance(half, middle) + BELOW * (half.y - middle.y);
}

/** Square to an edge, away from a spot; of length 1. */
function awayFrom(middle: Spot, from: Spot, to: Spot): Spot {
  const { x, y } = squareTo(from, to);
  const half = between(from, to, 0.5);
  const side = (half.x - middle.x) * x + (half.y - middle.y) * y < 0 ? -1 : 1;
  return { x: x * side, y: y * side };
}

/** A spot so many pixels past another, as seen from a third. */
function further(foot: Spot, head: Spot, by: number): Spot {
  return between(foot, head, 1 + by / (distance(foot, head) || 1));
}
