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

function byLength(ends: Float32Array): [number[], number[]] {
  const sorted: [number[], number[]] = [[], []];
  for (let at = 0; at < ends.length; at += 6) {
    const line = ends.subarray(at, at + 6);
    const length = Math.hypot(line[3]! - line[0]!, line[4]! - line[1]!, line[5]! - line[2]!);
    sorted[length < FINE ? 1 : 0].push(...line);
  }
  return sorted;
}

function lines(ends: number[]): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(new Float32Array(ends), 3));
  return geometry;
}

function floats(text: string): Float32Array {
  return new Float32Array(bytes(text).buffer);
}

function bytes(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(text), (each) => each.charCodeAt(0));
}
