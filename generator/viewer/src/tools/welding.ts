// A closed mesh with one point where the drawing has several for their normals' sake.
import { BufferAttribute, type BufferGeometry, Vector3 } from "three";

export interface Welded {
  points: Vector3[];
  /** Three to a triangle, anticlockwise seen from outside. */
  triangles: Uint32Array;
}

const known = new WeakMap<BufferGeometry, Welded>();

/** The welded mesh of a geometry, part frame, mm; worked out once. */
export function weldedOf(geometry: BufferGeometry): Welded {
  let welded = known.get(geometry);
  if (!welded) known.set(geometry, (welded = weld(geometry)));
  return welded;
}

function weld(geometry: BufferGeometry): Welded {
  const position = geometry.getAttribute("position") as BufferAttribute;
  // Adding 0 makes -0 and 0 one.
  const places = Float32Array.from(position.array, (each) => each + 0);
  const bits = new Uint32Array(places.buffer);
  const size = 2 ** Math.ceil(Math.log2(2 * position.count + 1));
  const table = new Int32Array(size).fill(-1);
  const points: Vector3[] = [];
  const firsts: number[] = [];
  const own = new Uint32Array(position.count);
  for (let at = 0; at < position.count; at++) {
    const [a, b, c] = [bits[3 * at]!, bits[3 * at + 1]!, bits[3 * at + 2]!];
    let slot = hash(a, b, c) & (size - 1);
    for (; table[slot]! >= 0; slot = (slot + 1) & (size - 1)) {
      const other = 3 * firsts[table[slot]!]!;
      if (bits[other] === a && bits[other + 1] === b && bits[other + 2] === c) break;
    }
    if (table[slot]! < 0) {
      table[slot] = points.length;
      firsts.push(at);
      points.push(new Vector3(places[3 * at], places[3 * at + 1], places[3 * at + 2]));
    }
    own[at] = table[slot]!;
  }
  const index = geometry.getIndex()!.array;
  return { points, triangles: Uint32Array.from(index, (each) => own[each]!) };
}

function hash(a: number, b: number, c: number): number {
  let mixed = Math.imul(a, 0x9e3779b1) ^ Math.imul(b, 0x85ebca6b) ^ Math.imul(c, 0xc2b2ae35);
  mixed = Math.imul(mixed ^ (mixed >>> 15), 0x2c1b3c6d);
  return (mixed ^ (mixed >>> 13)) >>> 0;
}
