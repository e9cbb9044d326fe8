// How a solid hangs together: its real edges, the corners where they meet, and the round mouths of
// its holes.  Part frame, mm.
import { type BufferGeometry, MathUtils, Vector3 } from "three";

import { weldedOf } from "./welding";

/** Cosine of 10 degrees: normals that differ more are of faces that meet in an edge. */
const SMOOTH = 0.985;
/** Degrees: edges that turn more meet in a corner, others are pieces of a curve. */
const EDGES_TURN = 50;
/** Cosine of 1 degree: a triangle whose normals differ more is of a round. */
const FLAT = 0.9998;
/** Fewest straight pieces that a round is drawn with, and by what share of its radius they may be off. */
const ROUND = 8;
const OFF_ROUND = 0.02;
/** Radians: pieces that turn less are of one straight edge. */
const STRAIGHT = 0.01;

export interface Topology {
  corners: Vector3[];
  /** Straight edges from corner to corner, and the short pieces of curved ones. */
  edges: Edge[];
  /** Middles of round mouths. */
  centres: Vector3[];
  /** Where flat faces run on into roundings, as short lines: no sharp edge is there. */
  roundings: Stretch[];
}
export type Stretch = readonly [Vector3, Vector3];
export interface Edge {
  from: Vector3;
  to: Vector3;
  /** A piece of a curve has no middle worth measuring from. */
  curved: boolean;
}

const known = new WeakMap<BufferGeometry, Topology>();

/** The topology of a closed mesh; worked out once. */
export function topologyOf(geometry: BufferGeometry): Topology {
  let topology = known.get(geometry);
  if (!topology) known.set(geometry, (topology = worked(geometry)));
  return topology;
}

function worked(geometry: BufferGeometry): Topology {
  const { points, triangles } = weldedOf(geometry);
  const { ways, rounded } = sharp(points.length, triangles, normalsOf(geometry));
  const isCorner = (at: number) => {
    const meet = ways.get(at)!;
    return meet.length !== 2 || turn(points, meet[0]!, at, meet[1]!) > EDGES_TURN;
  };
  const corners = [...ways.keys()].filter(isCorner);
  const edges: Edge[] = [];
  const centres: Vector3[] = [];
  const gone = new Set<string>();
  for (const start of [...corners, ...ways.keys()]) {
    for (const next of ways.get(start)!) {
      const run = runFrom(start, next, ways, isCorner, gone);
      if (!run) continue;
      const chain = run.map((at) => points[at]!);
      edges.push(...straightened(chain));
      const centre = run[0] === run.at(-1) ? centreOf(chain.slice(1)) : null;
      if (centre) centres.push(centre);
    }
  }
  const roundings = rounded.map(([from, to]): Stretch => [points[from]!, points[to]!]);
  return { corners: corners.map((at) => points[at]!), edges, centres, roundings };
}

/** The normal at each corner of each triangle. */
function normalsOf(geometry: BufferGeometry): Vector3[] {
  const normal = geometry.getAttribute("normal");
  const index = geometry.getIndex()!;
  return Array.from(index.array, (at) => new Vector3().fromBufferAttribute(normal, at));
}

/** A side of a triangle: the normals at its ends, and whether the triangle is of a round. */
interface Side {
  low: Vector3;
  high: Vector3;
  round: boolean;
}

/**
 * From each point of an edge, the points that edges lead to: where faces meet at an angle, and where
 * a flat one runs on into a round; and the latter by themselves.
 */
function sharp(
  count: number,
  triangles: Uint32Array,
  normals: readonly Vector3[],
): { ways: Map<number, number[]>; rounded: [number, number][] } {
  const sides = new Map<number, Side>();
  const ways = new Map<number, number[]>();
  const rounded: [number, number][] = [];
  for (let first = 0; first < triangles.length; first += 3) {
    const round = isRound(normals, first);
    for (const [start, stop] of [
      [first, first + 1],
      [first + 1, first + 2],
      [first + 2, first],
    ] as const) {
      const [from, to] = [triangles[start]!, triangles[stop]!];
      const name = Math.min(from, to) * count + Math.max(from, to);
      const [low, high] = from < to ? [start, stop] : [stop, start];
      const side = { low: normals[low]!, high: normals[high]!, round };
      const before = sides.get(name);
      if (!before) {
        sides.set(name, side);
        continue;
      }
      const angled = Math.min(before.low.dot(side.low), before.high.dot(side.high)) < SMOOTH;
      if (before.round === round && !angled) continue;
      put(ways, from, to);
      put(ways, to, from);
      if (!angled) rounded.push([from, to]);
    }
  }
  return { ways, rounded };
}

/** A triangle of a round is shaded by normals that turn over it. */
function isRound(normals: readonly Vector3[], first: number): boolean {
  const [a, b, c] = [normals[first]!, normals[first + 1]!, normals[first + 2]!];
  return Math.min(a.dot(b), b.dot(c), c.dot(a)) < FLAT;
}

function put(ways: Map<number, number[]>, from: number, to: number): void {
  const there = ways.get(from);
  if (there) there.push(to);
  else ways.set(from, [to]);
}

/** Degrees by which one turns at a point on the way from one to another. */
function turn(points: readonly Vector3[], from: number, at: number, to: number): number {
  const [way, on] = [new Vector3(), new Vector3()];
  way.subVectors(points[at]!, points[from]!);
  on.subVectors(points[to]!, points[at]!);
  return MathUtils.radToDeg(way.angleTo(on));
}

/** The points from one on through another to the next corner, or round; null if gone before. */
function runFrom(
  start: number,
  next: number,
  ways: ReadonlyMap<number, readonly number[]>,
  isCorner: (at: number) => boolean,
  gone: Set<string>,
): number[] | null {
  if (gone.has(`${start} ${next}`)) return null;
  const run = [start, next];
  for (;;) {
    const [before, at] = run.slice(-2) as [number, number];
    gone.add(`${before} ${at}`).add(`${at} ${before}`);
    if (at === start || isCorner(at)) return run;
    run.push(ways.get(at)!.find((each) => each !== before)!);
  }
}

/** A chain of points as edges: pieces in one line are one. */
function straightened(chain: readonly Vector3[]): Edge[] {
  const edges: Edge[] = [];
  for (let at = 1; at < chain.length; at++) {
    const [from, to] = [chain[at - 1]!, chain[at]!];
    const last = edges.at(-1);
    if (last && inLine(last.from, from, to)) last.to = to;
    else edges.push({ from, to, curved: false });
  }
  if (edges.length > 1) for (const edge of edges) edge.curved = true;
  return edges;
}

function inLine(from: Vector3, at: Vector3, to: Vector3): boolean {
  const way = new Vector3().subVectors(at, from);
  return way.angleTo(new Vector3().subVectors(to, at)) < STRAIGHT;
}

/** The centre of a closed chain of points if they lie on a circle. */
function centreOf(chain: readonly Vector3[]): Vector3 | null {
  if (chain.length < ROUND) return null;
  const third = Math.floor(chain.length / 3);
  const centre = circumcentre(chain[0]!, chain[third]!, chain[2 * third]!);
  const radius = centre.distanceTo(chain[0]!);
  const round = chain.every(
    (each) => Math.abs(each.distanceTo(centre) - radius) < OFF_ROUND * radius,
  );
  return round ? centre : null;
}

/** The point as far from one corner of a triangle as from the others. */
function circumcentre(one: Vector3, other: Vector3, third: Vector3): Vector3 {
  const a = new Vector3().subVectors(other, one);
  const b = new Vector3().subVectors(third, one);
  const across = new Vector3().crossVectors(a, b);
  const way = b.clone().multiplyScalar(a.lengthSq()).sub(a.clone().multiplyScalar(b.lengthSq()));
  return way
    .cross(across)
    .divideScalar(2 * across.lengthSq())
    .add(one);
}
