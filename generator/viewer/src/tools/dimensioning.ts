// Dimensions in space: of the part that is chosen and of the unit; with oblique strokes at their ends
// (ISO 129-1) and words that face the reader.
import { Vector3 } from "three";

import type { Dimension, Part } from "../document";
import type { Piece } from "../stage/piece";
import { directionOf } from "../stage/pose";
import { VIEWS } from "../stage/views";
import * as state from "../state";
import { axisOf, type Chain, chainsOf, cross, lineOf, near, type Place } from "./chains";
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
/** Pixels: a line stands so far off what it measures, and from other lines. */
const LEAST_OFF = 10;
const NEAR = 12;
/** Cosines to the front's own direction: looked at from a side, and not straight at it. */
const ASIDE = 0.5;
const AHEAD = 0.98;

export class Dimensioning {
  /** Chains of the unit, each where it isn't hidden; null until that is known. */
  private seen: readonly Chain[] | null = null;
  private eye = "";
  private waiting: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly sight: Sight) {}

  /** Parts have moved or are cut: others may be hidden now. */
  renew(): void {
    this.eye = "";
  }

  stop(): void {
    clearTimeout(this.waiting);
    this.sight.stage.awaited.delete(this);
  }

  /** Points that dimensions reach: they should be in the picture. */
  reach(): Vector3[] {
    const dimensions = state.dimensioned.value ? state.dimensions.value : null;
    const look = state.look.value;
    const eye = look ? VIEWS[look.name] : (state.pose.peek() ?? VIEWS.corner);
    const ahead = Math.abs(directionOf(eye).y);
    return chainsOf(dimensions ?? []).flatMap(({ places, before }) => {
      const [told, other] = places;
      const isDepth = axisOf(told![0]!) === 1;
      return [
        ...told!,
        ...((ahead < ASIDE && before) || []),
        ...((ahead < AHEAD && isDepth && other) || []),
      ].flatMap(lineOf);
    });
  }

  labels(): Label[] {
    if (!state.dimensioned.peek()) return [];
    const part = state.model.peek()?.parts.find((each) => each.ref === state.selected.peek());
    const piece = part && this.sight.stage.pieces.get(part.ref);
    const own = part && piece?.group.visible ? this.ofPart(part, piece) : [];
    // Taken apart, the unit has no size.
    const unit = state.apart.peek() > 0 ? [] : chainsOf(state.dimensions.peek() ?? []);
    this.look(unit);
    return [...own, ...this.ofUnit(this.seen ?? unit)];
  }

  /** Each chain at the first of its places where no other one is; whole sizes at any rate. */
  private ofUnit(chains: readonly Chain[]): Label[] {
    const drawn: Four[] = [];
    return chains.flatMap(({ whole, inside, places, before }, number) => {
      const on = (place: Place) => this.spots(place);
      const beside = places.map(on).filter((each) => each !== null);
      const off = inside ? beside : beside.filter(standsOff);
      const found = off.length || !before ? off : [on(before)].filter((each) => each !== null);
      const free = found.find((each) => this.isFree(each, drawn));
      const spots = free ?? (whole ? (found[0] ?? beside[0]) : undefined);
      if (!spots) return [];
      drawn.push(...spots);
      const texts = (places[0] ?? before!).map(({ text }) => text);
      return spots.flatMap((four, each) =>
        dimension(`dimension ${number}.${each}`, texts[each]!, four).map((label) => ({
          ...label,
          chain: `${number}`,
        })),
      );
    });
  }

  /** Where the dimensions of a chain are on the canvas; null if they are seen end on. */
  private spots(place: Place): Four[] | null {
    const all = place.map((each) => {
      const feet = [each.start, each.end].map((foot) => new Vector3(...foot));
      return [...feet, ...lineOf(each)].map((point) => this.sight.spot(point));
    });
    const seen = all.filter((spots): spots is Four => spots.every((spot) => spot));
    const flat = seen.some(([, , from, to]) => distance(from, to) < END_ON);
    return seen.length < all.length || flat ? null : seen;
  }

  /** Whether lines are in the picture, and clear of those drawn. */
  private isFree(spots: readonly Four[], drawn: readonly Four[]): boolean {
    return spots.every(([start, end, from, to]) => {
      if (![from, to].every((spot) => this.isInPicture(spot))) return false;
      return drawn.every(
        ([foot, other, one, two]) =>
          !near([from, to], [one, two], NEAR) &&
          !cross([from, to], [foot, one]) &&
          !cross([from, to], [other, two]) &&
          !cross([start, from], [one, two]) &&
          !cross([end, to], [one, two]),
      );
    });
  }

  private isInPicture({ x, y }: Spot): boolean {
    return x > 0 && y > 0 && x < this.sight.width && y < this.sight.height;
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
  private look(chains: readonly Chain[]): void {
    const { stage } = this.sight;
    const { matrixWorld, projectionMatrix } = stage.camera;
    const eye = [...matrixWorld.elements, ...projectionMatrix.elements].join();
    if (eye === this.eye) return;
    this.eye = eye;
    clearTimeout(this.waiting);
    stage.awaited.add(this);
    this.waiting = setTimeout(() => {
      stage.awaited.delete(this);
      this.seen = chains.flatMap((chain) => {
        const sees = (place: Place) => place.every((each) => this.sees(each));
        const places = chain.places.filter(sees);
        const before = chain.before && sees(chain.before) ? chain.before : null;
        return places.length || before ? [{ ...chain, places, before }] : [];
      });
      stage.draw();
    }, REST);
  }

  private sees(dimension: Dimension): boolean {
    const [from, to] = lineOf(dimension);
    return [0, 0.5, 1].every((share) => this.sight.sees(from.clone().lerp(to, share)));
  }
}

/** What is measured from and to, and the ends of the dimension's line. */
type Four = [Spot, Spot, Spot, Spot];

/** Whether lines stand off what they measure, as one sees it. */
function standsOff(spots: readonly Four[]): boolean {
  return spots.every(([start, end, from, to]) => {
    return Math.max(distance(start, from), distance(end, to)) >= LEAST_OFF;
  });
}

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
