// A part or fitting in space: its mesh and its drawn edges.
import * as three from "three";

import type { Shape } from "../document";

export interface Drawn {
  geometry: three.BufferGeometry;
  edges: three.BufferGeometry;
}

export function floats(text: string): Float32Array {
  return new Float32Array(bytes(text).buffer);
}

function bytes(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(text), (each) => each.charCodeAt(0));
}

export function drawn(shape: Shape): Drawn {
  const geometry = new three.BufferGeometry();
  geometry.setAttribute("position", new three.BufferAttribute(floats(shape.points), 3));
  geometry.setAttribute("normal", new three.BufferAttribute(floats(shape.normals), 3));
  const triangles = new Uint32Array(bytes(shape.triangles).buffer);
  geometry.setIndex(new three.BufferAttribute(triangles, 1));
  const edges = new three.BufferGeometry();
  edges.setAttribute("position", new three.BufferAttribute(floats(shape.edges), 3));
  return { geometry, edges };
}
