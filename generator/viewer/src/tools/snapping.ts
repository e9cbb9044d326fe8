// What a pointer means: the corner, edge or face of a part that is seen near it.
import { Matrix4, type Ray, Sphere, Vector3 } from "three";

import type { Piece } from "../stage/piece";
import type { Mark } from "../state";
import type { Sight, Spot } from "./sight";
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
const TRIED = 12;

/** What is seen nearest a spot, within so many pixels: corners first, then edges, then faces. */
export function snapAt(sight: Sight, spot: Spot, reach: number): Snap | null {
  const hit = sight.hit(spot);
  const ray = sight.line(spot).clone();
  const points: Near[] = [];
  const middles: Near[] = [];
  const edges: Near[] = [];
  for (const piece of sight.stage.pieces.values()) {
    if (!piece.group.visible || !passes(piece, ray, sight, reach)) continue;
    const near = nearer(sight, piece, spot, reach);
    const { corners, centres, edges: own } = topologyOf(piece.mesh.geometry);
    for (const each of corners) near(points, "corner", each);
    for (const each of centres) near(points, "centre of a hole", each);
    for (const edge of own) {
      if (!crosses(sight, piece, edge, spot, reach)) continue;
      if (!edge.curved) near(middles, "middle of an edge", middle(edge));
      near(edges, "edge", nearest(edge, ray, piece.group.matrix));
    }
  }
  for (const kind of [points, middles, edges]) {
    const seen = kind
      .sort((one, other) => order(one, other, hit?.ref, sight))
      .slice(0, TRIED)
      .find((each) => sight.sees(each.place));
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
  const round = piece.box.getBoundingSphere(new Sphere()).applyMatrix4(piece.group.matrix);
  const slack = 1.5 * reach * sight.pixel(round.center);
  return ray.distanceToPoint(round.center) <= round.radius + slack;
}

/** Puts points of a piece that are near enough into a list. */
function nearer(sight: Sight, piece: Piece, spot: Spot, reach: number) {
  return (list: Near[], what: Snap["what"], point: Vector3) => {
    const place = point.clone().applyMatrix4(piece.group.matrix);
    const its = sight.spot(place);
    const off = its ? Math.hypot(its.x - spot.x, its.y - spot.y) : Infinity;
    if (off <= reach) list.push({ ref: piece.ref, point, what, off, place });
  };
}

/** Whether an edge passes a spot within so many pixels. */
function crosses(sight: Sight, piece: Piece, edge: Edge, spot: Spot, reach: number): boolean {
  const { matrix } = piece.group;
  const from = sight.spot(edge.from.clone().applyMatrix4(matrix));
  const to = sight.spot(edge.to.clone().applyMatrix4(matrix));
  // One that goes on behind the eye may pass anywhere.
  if (!from || !to) return true;
  const [x, y] = [to.x - from.x, to.y - from.y];
  const length = x * x + y * y;
  const along = length ? ((spot.x - from.x) * x + (spot.y - from.y) * y) / length : 0;
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(from.x + share * x - spot.x, from.y + share * y - spot.y) <= reach;
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

/** The nearest first; of equally near ones those of the part that is pointed at, then the first
 * one looks upon. */
function order(one: Near, other: Near, ref: string | undefined, sight: Sight): number {
  const nearer = Math.round(one.off / ALIKE) - Math.round(other.off / ALIKE);
  if (nearer) return nearer;
  if ((one.ref === ref) !== (other.ref === ref)) return one.ref === ref ? -1 : 1;
  const eye = sight.stage.camera.position;
  return one.place.distanceTo(eye) - other.place.distanceTo(eye);
}
