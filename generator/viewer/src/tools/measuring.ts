// Measuring between two points of the unit.
import { type BufferGeometry, Line3, Vector3 } from "three";

import type { Vector } from "../document";
import type { Piece } from "../stage/piece";
import * as state from "../state";
import type { Mark, Measure, Measured } from "../state";
import type { Ink } from "./ink";
import type { Clear, Label } from "./labels";
import { formatMeasured } from "./lengths";
import type { Sight } from "./sight";
import { placeOf, type Snap, snapAt } from "./snapping";
import { type Spot, squareTo, wordsAlong } from "./spots";
import { standing } from "./standing";
import { type Stretch, topologyOf } from "./topology";
import type { By } from "./touching";

/** Pixels within which a pointer snaps; a finger hides more. */
const REACH: Record<By, number> = { mouse: 12, touch: 24 };
/** Pixels: the ring of a mark. */
const RING = 6;
/** mm: points nearer each other are one. */
const SAME = 1e-3;

export class Measuring {
  private from: Snap | null = null;
  /** What would be taken now. */
  private aimed: Snap | null = null;
  /** Whether something stands before it: keys go to every corner of a part. */
  private hidden = false;
  private shapes = new Map<string, BufferGeometry>();

  constructor(private readonly sight: Sight) {}

  touched(spot: Spot, by: By): void {
    this.take(snapAt(this.sight, spot, REACH[by]));
    this.aimed = null;
  }

  hovered(spot: Spot | null): void {
    this.aimed = spot && snapAt(this.sight, spot, REACH.mouse);
    this.hidden = false;
    this.sight.stage.draw();
  }

  /** Aim at the next corner of the chosen part that isn't cut away, or at the one before; what it is aimed at. */
  step(by: 1 | -1): string {
    const piece = this.sight.stage.pieces.get(state.selected.peek() ?? "");
    if (!piece) return "choose a part first";
    if (!piece.group.visible) return `${piece.ref} is out of sight`;
    const now = (corner: Vector3) => corner.clone().applyMatrix4(piece.group.matrix);
    const all = topologyOf(piece.mesh.geometry).corners;
    if (!all.length) return `${piece.ref} has no corners`;
    const corners = all.filter((corner) => !this.sight.isCutAway(now(corner)));
    if (!corners.length) return `no corner of ${piece.ref} is left by the cut`;
    const before = this.aimed?.ref === piece.ref ? corners.indexOf(this.aimed.point) : -1;
    const next = before < 0 && by < 0 ? corners.length - 1 : before + by;
    const at = (next + corners.length) % corners.length;
    const corner = corners[at]!;
    this.aimed = { ref: piece.ref, point: corner, what: "corner" };
    this.hidden = !this.sight.shows(piece, now(corner), this.sight.solids(this.sight.seen()));
    this.sight.stage.draw();
    const words = `${this.said(this.aimed)}, ${at + 1} of ${corners.length}, ${whereabouts(piece, corner)}`;
    return this.hidden ? `${words}, hidden` : words;
  }

  /** Measure no more: a point without another is let go. */
  stop(): void {
    this.hold(null);
    this.aimed = null;
    this.sight.stage.draw();
  }

  /** Take what is aimed at as a point. */
  enter(): void {
    this.take(this.aimed);
  }

  /** Let go of the point that was taken, or else of what was measured last; whether there was. */
  back(): boolean {
    const measures = state.measures.peek();
    const there = this.from !== null || measures.length > 0;
    if (this.from) this.hold(null);
    else state.measures.value = measures.slice(0, -1);
    this.aimed = null;
    this.sight.stage.draw();
    return there;
  }

  /** Parts have changed: points keep to what they were of. */
  renew(): void {
    const { pieces } = this.sight.stage;
    const kept = (mark: Mark): Mark => {
      const piece = pieces.get(mark.ref);
      const before = this.shapes.get(mark.ref);
      if (!piece || !before || before === piece.mesh.geometry) return mark;
      return { ...mark, point: again(mark, before, piece) };
    };
    state.measures.value = state.measures.peek().map(({ from, to }) => ({
      from: kept(from),
      to: kept(to),
    }));
    if (this.from && !pieces.has(this.from.ref)) this.hold(null);
    this.aimed = null;
    this.shapes = new Map([...pieces].map(([ref, piece]) => [ref, piece.mesh.geometry]));
  }

  /** Draw what is measured and aimed at; the words to it. */
  labels(ink: Ink): Label[] {
    const labels: Label[] = [];
    const told: Measured[] = [];
    state.measures.peek().forEach((measure, number) => {
      const measured = this.measured(measure);
      if (!measured) return;
      told.push(measured);
      const { spots, clear } = this.drawn(ink, snapOf(measure.from), snapOf(measure.to));
      const { width, depth, height } = measured.along;
      const text = `${measured.distance}\nwidth ${width}, depth ${depth}, height ${height}`;
      labels.push({ key: `measure ${number}`, kind: "measure", text, spots, stands: { clear } });
    });
    if (JSON.stringify(told) !== JSON.stringify(state.measured.peek())) state.measured.value = told;
    if (this.from) labels.unshift(...this.pointed(ink, "from", this.from));
    if (this.aimed) labels.unshift(...this.pointed(ink, "aimed", this.aimed, this.hidden));
    return labels;
  }

  private take(snap: Snap | null): void {
    if (snap && this.from && alike(snap, this.from)) return;
    if (snap && this.from) {
      const measure = { from: markOf(this.from), to: markOf(snap) };
      state.measures.value = [...state.measures.peek(), measure];
      this.hold(null);
    } else if (snap) this.hold(snap);
    this.sight.stage.draw();
  }

  /** Keep a point until another is taken. */
  private hold(from: Snap | null): void {
    this.from = from;
    state.held.value = from && this.said(from);
  }

  private pointed(ink: Ink, key: string, snap: Snap, hidden = false): Label[] {
    const place = placeOf(this.sight, snap);
    const spot = place && this.sight.spot(place);
    if (!spot) return [];
    ink.ring("measure", spot, RING);
    const text = hidden ? `${this.said(snap)}, hidden` : this.said(snap);
    return [{ key, kind: "measure", text, spots: [spot], stands: "beside" }];
  }

  /** The line between two points; where words to it may stand, and which way is clear of it. */
  private drawn(ink: Ink, from: Snap, to: Snap): Clear & { spots: Spot[] } {
    const ends = [from, to].map((snap) => {
      const place = placeOf(this.sight, snap);
      return place && this.sight.spot(place);
    });
    const [one, other] = ends;
    if (!one || !other) return { spots: [], clear: { x: 0, y: 1 } };
    ink.line("measure", one, other);
    for (const end of [one, other]) ink.ring("measure", end, RING / 2);
    return { spots: wordsAlong(one, other), clear: squareTo(one, other) };
  }

  private measured({ from, to }: Measure): Measured | null {
    const { pieces } = this.sight.stage;
    const [one, other] = [pieces.get(from.ref), pieces.get(to.ref)];
    if (!one || !other) return null;
    const unit = state.model.peek()?.unit ?? "mm";
    const way = standing(other, new Vector3(...to.point)).sub(
      standing(one, new Vector3(...from.point)),
    );
    const [width, depth, height] = way
      .toArray()
      .map((each) => formatMeasured(Math.abs(each), unit)) as [string, string, string];
    return {
      from: this.said(snapOf(from)),
      to: this.said(snapOf(to)),
      mm: way.length(),
      distance: `${formatMeasured(way.length(), unit)} ${unit}`,
      along: { width, depth, height },
    };
  }

  /** What a point is of; where an edge is rounded, that no sharp one is there. */
  private said({ what, ref, point }: Snap): string {
    const words = `${what} of ${ref}`.replace("centre of a hole of", "centre of a hole in");
    const piece = this.sight.stage.pieces.get(ref);
    const roundings = piece && what !== "face" ? topologyOf(piece.mesh.geometry).roundings : [];
    const rounded = roundings.some((stretch) => isOn(point, stretch));
    return rounded ? `${words} (where its rounding begins)` : words;
  }
}

function isOn(point: Vector3, [from, to]: Stretch): boolean {
  return (
    new Line3(from, to).closestPointToPoint(point, true, new Vector3()).distanceTo(point) < SAME
  );
}

function alike(one: Snap, other: Snap): boolean {
  return one.ref === other.ref && one.point.distanceTo(other.point) < SAME;
}

function markOf({ ref, point, what }: Snap): Mark {
  return { ref, point: point.toArray() as Vector, what };
}

function snapOf({ ref, point, what }: Mark): Snap {
  return { ref, point: new Vector3(...point), what };
}

/** Where a point of a part lies, as one stands before the unit. */
function whereabouts(piece: Piece, point: Vector3): string {
  const box = piece.box.clone().applyMatrix4(piece.home);
  const middle = box.getCenter(new Vector3());
  const { x, y, z } = point.clone().applyMatrix4(piece.home);
  const sides = [
    z > middle.z ? "upper" : "lower",
    x > middle.x ? "right" : "left",
    y > middle.y ? "back" : "front",
  ];
  return sides.join(" ");
}

/** The point of a part's new shape that a point of its old one has become. */
function again(mark: Mark, before: BufferGeometry, piece: Piece): Vector {
  const [old, now] = [before.boundingBox!, piece.box];
  const share = new Vector3(...mark.point).sub(old.min).divide(sizeOf(old));
  const point = share.multiply(sizeOf(now)).add(now.min);
  const { corners, centres } = topologyOf(piece.mesh.geometry);
  const like = { corner: corners, "centre of a hole": centres };
  const same = mark.what in like ? like[mark.what as keyof typeof like] : [];
  const off = (each: Vector3) => each.distanceToSquared(point);
  const best = same.reduce((best, each) => (off(each) < off(best) ? each : best), same[0] ?? point);
  return best.toArray() as Vector;
}

function sizeOf(box: Piece["box"]): Vector3 {
  return box.getSize(new Vector3());
}
