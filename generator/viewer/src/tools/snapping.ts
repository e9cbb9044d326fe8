// What a pointer means: the corner, edge or face of a part that is seen near it.
import { type Matrix4, type Ray, Vector3 } from "three";

import type { Piece } from "../stage/piece";
import type { Mark } from "../state";
import type { Sight } from "./sight";
import type { Spot } from "./spots";
import { type Edge, topologyOf } from "./topology";

export type Snap = Omit<Mark, "point"> & { point: Vector3 };
interface Near extends Snap {
  /** Pixels from the pointer. */
  off: number;
  /** Unit frame, as things stand now. */
  place: Vector3;
}

/** Pixels: points whose distances differ by less are equally near. */
const ALIKE = 1.5;
/** Of the nearest points so many are tried for whether they are seen. */
const TRIED = 24;

/** What is seen nearest a spot, within so many pixels: corners first, then edges, then faces. */
export function snapAt(sight: Sight, spot: Spot, reach: number): Snap | null {
  const hit = sight.hit(spot);
  const ray = sight.line(spot).clone();
  const points: Near[] = [];
  const middles: Near[] = [];
  const edges: Near[] = [];
  const passed = sight.seen().filter((piece) => passes(piece, ray, sight, reach));
  for (const piece of passed) {
    const screen = new Screen(sight, piece.group.matrix);
    const near = (list: Near[], what: Snap["what"], point: Vector3) => {
      const off = screen.off(point, spot);
      if (off > reach) return;
      const place = point.clone().applyMatrix4(piece.group.matrix);
      list.push({ ref: piece.ref, point, what, off, place });
    };
    const { corners, centres, edges: own } = topologyOf(piece.mesh.geometry);
    for (const each of corners) near(points, "corner", each);
    for (const each of centres) near(points, "centre of a hole", each);
    for (const edge of own) {
      if (screen.offLine(edge.from, edge.to, spot) > reach) continue;
      if (!edge.curved) near(middles, "middle of an edge", middle(edge));
      near(edges, "edge", nearest(edge, ray, piece.group.matrix));
    }
  }
  const solids = sight.solids(passed);
  // In a hole there may be a pin.
  const parts = sight.solids(passed, false);
  // The centre of a hole is no point of the part's outside: one looks into the hole there.
  const isSeen = ({ what, ref, place }: Near) =>
    what === "centre of a hole"
      ? sight.seesAll(place, parts)
      : sight.shows(sight.stage.pieces.get(ref)!, place, solids);
  for (const kind of [points, middles, edges]) {
    const seen = kind
      .sort((one, other) => order(one, other, hit?.ref, sight))
      .slice(0, TRIED)
      .find(isSeen);
    if (seen) return { ref: seen.ref, point: seen.point, what: seen.what };
  }
  if (!hit) return null;
  const { matrix } = sight.stage.pieces.get(hit.ref)!.group;
  return { ref: hit.ref, point: hit.point.applyMatrix4(matrix.clone().invert()), what: "face" };
}

/** Where a snapped point is now; null if its part is gone. */
export function placeOf(sight: Sight, { ref, point }: Pick<Snap, "ref" | "point">): Vector3 | null {
  const piece = sight.stage.pieces.get(ref);
  return piece ? point.clone().applyMatrix4(piece.group.matrix) : null;
}

/** Whether a line of sight passes a piece so near that something of it may be meant. */
function passes(piece: Piece, ray: Ray, sight: Sight, reach: number): boolean {
  const { matrix } = piece.group;
  const middle = piece.box.getCenter(new Vector3()).applyMatrix4(matrix);
  const box = piece.box.clone().expandByScalar(2 * reach * sight.pixel(middle));
  return ray.clone().applyMatrix4(matrix.clone().invert()).intersectsBox(box);
}

/** Where points of a part are on the canvas: many are asked for at every move of the pointer. */
class Screen {
  private readonly e: readonly number[];
  private readonly across: number;
  private readonly down: number;

  constructor(sight: Sight, matrix: Matrix4) {
    const { projectionMatrix, matrixWorldInverse } = sight.stage.camera;
    const whole = projectionMatrix.clone().multiply(matrixWorldInverse).multiply(matrix);
    this.e = whole.elements;
    this.across = sight.width / 2;
    this.down = sight.height / 2;
  }

  /** Pixels from a spot to a point; infinite behind the eye. */
  off(point: Vector3, spot: Spot): number {
    const depth = this.row(3, point);
    return depth > 0
      ? Math.hypot(this.x(point, depth) - spot.x, this.y(point, depth) - spot.y)
      : Infinity;
  }

  /**
   * Pixels from a spot to a line between two points; 0 for one that goes on behind the eye, which may
   * pass anywhere.
   */
  offLine(from: Vector3, to: Vector3, spot: Spot): number {
    const [near, far] = [this.row(3, from), this.row(3, to)];
    if (near <= 0 || far <= 0) return near <= 0 && far <= 0 ? Infinity : 0;
    const [fromX, fromY] = [this.x(from, near), this.y(from, near)];
    const [x, y] = [this.x(to, far) - fromX, this.y(to, far) - fromY];
    const length = x * x + y * y;
    const along = length ? ((spot.x - fromX) * x + (spot.y - fromY) * y) / length : 0;
    const share = Math.min(1, Math.max(0, along));
    return Math.hypot(fromX + share * x - spot.x, fromY + share * y - spot.y);
  }

  private x(point: Vector3, depth: number): number {
    return (this.row(0, point) / depth + 1) * this.across;
  }

  private y(point: Vector3, depth: number): number {
    return (1 - this.row(1, point) / depth) * this.down;
  }

  private row(row: number, { x, y, z }: Vector3): number {
    const { e } = this;
    return e[row]! * x + e[row + 4]! * y + e[row + 8]! * z + e[row + 12]!;
  }
}

/** The point of an edge nearest a line of sight (unit frame); part frame. */
function nearest(edge: Edge, ray: Ray, matrix: Matrix4): Vector3 {
  const own = ray.clone().applyMatrix4(matrix.clone().invert());
  const point = new Vector3();
  own.distanceSqToSegment(edge.from, edge.to, undefined, point);
  return point;
}

function middle(edge: Edge): Vector3 {
  return edge.from.clone().lerp(edge.to, 0.5);
}

/**
 * The nearest first; of equally near ones those of the part that is pointed at, then the first one
 * looks upon.
 */
function order(one: Near, other: Near, ref: string | undefined, sight: Sight): number {
  const nearer = Math.round(one.off / ALIKE) - Math.round(other.off / ALIKE);
  if (nearer) return nearer;
  if ((one.ref === ref) !== (other.ref === ref)) return one.ref === ref ? -1 : 1;
  const eye = sight.stage.camera.position;
  return one.place.distanceTo(eye) - other.place.distanceTo(eye);
}
