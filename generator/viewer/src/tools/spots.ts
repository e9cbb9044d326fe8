// Spots of the canvas, and sums with them.

/** Pixels of the page, from the canvas's top left. */
export interface Spot {
  x: number;
  y: number;
}

/** Along a line, where its words may stand, best first. */
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8];

export function wordsAlong(from: Spot, to: Spot): Spot[] {
  return SHARES.map((share) => between(from, to, share));
}

/** So much of the way from one spot to another. */
export function between(from: Spot, to: Spot, share: number): Spot {
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}

export function distance(from: Spot, to: Spot): number {
  return Math.hypot(to.x - from.x, to.y - from.y);
}

/** The direction square to a line, to its left as one goes along it; of length 1. */
export function squareTo(from: Spot, to: Spot): Spot {
  const length = distance(from, to) || 1;
  return { x: (from.y - to.y) / length, y: (to.x - from.x) / length };
}

/** A spot so many pixels away in a direction. */
export function shifted({ x, y }: Spot, way: Spot, by: number): Spot {
  return { x: x + way.x * by, y: y + way.y * by };
}
