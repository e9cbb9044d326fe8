// Shapes as they are drawn; equal ones share their geometry, and what none shows any more is let go.
import { BufferAttribute, BufferGeometry } from "three";

import type { Shape } from "../document";

/** Lines shorter than this (mm) are of holes and curves: from afar they only make blots. */
const FINE = 7;

export interface Drawn {
  geometry: BufferGeometry;
  edges: BufferGeometry;
  /** The short lines, where there are any. */
  fine: BufferGeometry | null;
}

export class Shapes {
  private readonly held = new Map<string, Drawn>();

  get(name: string, all: Readonly<Record<string, Shape>>): Drawn {
    let shape = this.held.get(name);
    if (!shape) this.held.set(name, (shape = drawn(all[name]!)));
    return shape;
  }

  /** Let go of all but these. */
  keep(names: ReadonlySet<string>): void {
    for (const [name, shape] of this.held) {
      if (names.has(name)) continue;
      shape.geometry.dispose();
      shape.edges.dispose();
      shape.fine?.dispose();
      this.held.delete(name);
    }
  }
}

function drawn(shape: Shape): Drawn {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(floats(shape.points), 3));
  geometry.setAttribute("normal", new BufferAttribute(floats(shape.normals), 3));
  geometry.setIndex(new BufferAttribute(new Uint32Array(bytes(shape.triangles).buffer), 1));
  geometry.computeBoundingBox();
  const [long, short] = byLength(floats(shape.edges));
  return { geometry, edges: lines(long), fine: short.length ? lines(short) : null };
}

/** The lines (two ends of three numbers each) that are long, and those that are short. */
function byLength(ends: Float32Array): [Float32Array, Float32Array] {
  const [long, short] = [new Float32Array(ends.length), new Float32Array(ends.length)];
  let [longs, shorts] = [0, 0];
  for (let at = 0; at < ends.length; at += 6) {
    const x = ends[at + 3]! - ends[at]!;
    const y = ends[at + 4]! - ends[at + 1]!;
    const z = ends[at + 5]! - ends[at + 2]!;
    const fine = x * x + y * y + z * z < FINE * FINE;
    for (let next = at; next < at + 6; next++)
      if (fine) short[shorts++] = ends[next]!;
      else long[longs++] = ends[next]!;
  }
  return [long.slice(0, longs), short.slice(0, shorts)];
}

function lines(ends: Float32Array): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(ends, 3));
  return geometry;
}

function floats(text: string): Float32Array {
  return new Float32Array(bytes(text).buffer);
}

function bytes(text: string): Uint8Array<ArrayBuffer> {
  const read = atob(text);
  const found = new Uint8Array(read.length);
  for (let at = 0; at < read.length; at++) found[at] = read.charCodeAt(at);
  return found;
}
