// Chains: the dimensions of a unit that stand on one line, and where else that line may stand, so
// that from every side each chain has a line of its own.
import { Vector3 } from "three";

import type { Dimension, Vector } from "../document";
import * as state from "../state";
import { distance, type Spot } from "./spots";

/** Dimensions of one line. */
export interface Chain {
  /** Of the unit's whole width, depth or height. */
  whole: boolean;
  /** Within the unit, right where it measures. */
  inside: boolean;
  /** Where it may stand, best first. */
  places: readonly Place[];
  /** Before the front: where from a side heights lie over each other, and from above widths. */
  before: Place | null;
}
export type Place = readonly Dimension[];

/** mm: sizes that differ by less are one, and lines so near are one. */
const SAME = 0.01;
const ONE_LINE = 1;

/** The ends of a dimension's line, beside what is measured; unit frame. */
export function lineOf({ start, end, offset }: Dimension): [Vector3, Vector3] {
  const off = new Vector3(...offset);
  return [new Vector3(...start).add(off), new Vector3(...end).add(off)];
}

/** Whole sizes first, then chains by their longest dimension: what comes last may be left out. */
export function chainsOf(dimensions: readonly Dimension[]): Chain[] {
  const lines = new Map<string, Dimension[]>();
  for (const each of dimensions) {
    const key = lineKey(each);
    lines.set(key, [...(lines.get(key) ?? []), each]);
  }
  const longest = ({ places }: Chain) => Math.max(...places[0]!.map(length));
  return [...lines.values()]
    .map((told): Chain => {
      const whole = told.length === 1 && isWhole(told[0]!);
      const moves = whole ? movesOf(told[0]!) : [];
      const before = beforeOf(told[0]!);
      return {
        whole,
        inside: outside(told[0]!) <= 0,
        places: [told, ...moves.map((move) => told.map(move))],
        before: before && told.map(before),
      };
    })
    .sort((one, other) => +other.whole - +one.whole || longest(other) - longest(one));
}

/** The axis along which a dimension lies, if it does. */
export function axisOf({ start, end }: Dimension): number | null {
  const moved = [0, 1, 2].filter((axis) => Math.abs(end[axis]! - start[axis]!) > SAME);
  return moved.length === 1 ? moved[0]! : null;
}

function length({ start, end }: Dimension): number {
  return new Vector3(...start).distanceTo(new Vector3(...end));
}

function lineKey(each: Dimension): string {
  const axis = axisOf(each);
  const [from, to] = lineOf(each).map((end) =>
    end.toArray().map((at) => Math.round(at / ONE_LINE)),
  ) as [number[], number[]];
  if (axis === null) return `${from} ${to}`;
  return `${axis} ${from.filter((_, other) => other !== axis)} ${isWhole(each)}`;
}

/** Whether a dimension is the unit's whole size along an axis. */
function isWhole(each: Dimension): boolean {
  const axis = axisOf(each);
  const { low, high } = state.model.peek()!;
  return axis !== null && Math.abs(length(each) - (high[axis]! - low[axis]!)) < SAME;
}

type Move = (dimension: Dimension) => Dimension;

/** Other edges of the unit, for its whole height or depth. */
function movesOf(told: Dimension): Move[] {
  const { low, high } = state.model.peek()!;
  const [axis, far] = [axisOf(told), outside(told)];
  const [left, right, up] = [{ 0: low[0] }, { 0: high[0] }, { 2: high[2] }];
  const [above, below] = [{ 2: high[2] + far }, { 2: low[2] - far }];
  const beyond = to({ 0: axis === 1 ? low[0] - far : high[0] + far }, axis === 1 ? left : right);
  if (axis === 2) return [beyond];
  if (axis !== 1) return [];
  return [
    to({ ...left, ...above }, { ...left, ...up }),
    to({ ...right, ...above }, { ...right, ...up }),
    beyond,
    to({ ...right, ...below }),
    to({ ...left, ...below }, left),
  ];
}

/** A line of heights or widths as far before the front as it was beside the unit, or below. */
function beforeOf(told: Dimension): Move | null {
  const { low } = state.model.peek()!;
  const [axis, far] = [axisOf(told), outside(told)];
  if (far <= 0 || axis === null || axis === 1) return null;
  return to({ 1: low[1] - far, ...(axis === 2 ? { 0: low[0] } : { 2: low[2] }) });
}

/** How far (mm) a line lies outside the unit. */
function outside(told: Dimension): number {
  const { low, high } = state.model.peek()!;
  const [at] = lineOf(told);
  return Math.max(
    ...[0, 1, 2].flatMap((axis) => [
      low[axis]! - at.getComponent(axis),
      at.getComponent(axis) - high[axis]!,
    ]),
  );
}

type Places = Readonly<Partial<Record<0 | 1 | 2, number>>>;

/** Set a line's, and what it measures' own, places on axes. */
function to(line: Places, measured: Places = {}): Move {
  return (told) => {
    const [start, end] = [told.start, told.end].map((each) => set(each, measured)) as [
      Vector,
      Vector,
    ];
    const offset = start.map((at, axis) => (line[axis as 0 | 1 | 2] ?? at) - at) as Vector;
    return { start, end, offset, text: told.text };
  };
}

function set(point: Vector, places: Places): Vector {
  return point.map((at, axis) => places[axis as 0 | 1 | 2] ?? at) as Vector;
}

/** A line on the screen. */
export type Stroke = readonly [Spot, Spot];

/** Whether two lines cross, or come nearer each other than so many pixels. */
export function near([a, b]: Stroke, [c, d]: Stroke, by: number): boolean {
  if (cross([a, b], [c, d])) return true;
  const gaps = [toLine(a, [c, d]), toLine(b, [c, d]), toLine(c, [a, b]), toLine(d, [a, b])];
  return Math.min(...gaps) < by;
}

/** Whether two lines cross between their ends. */
export function cross([a, b]: Stroke, [c, d]: Stroke): boolean {
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** On which side of a line a spot lies, as a sign; 0 within a pixel of it. */
function side(from: Spot, to: Spot, spot: Spot): number {
  const across = (to.x - from.x) * (spot.y - from.y) - (to.y - from.y) * (spot.x - from.x);
  const off = across / (distance(from, to) || 1);
  return Math.abs(off) < 1 ? 0 : Math.sign(off);
}

function toLine(spot: Spot, [from, to]: Stroke): number {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const along = ((spot.x - from.x) * x + (spot.y - from.y) * y) / (x * x + y * y || 1);
  const share = Math.min(1, Math.max(0, along));
  return distance(spot, { x: from.x + x * share, y: from.y + y * share });
}
