// Thick edges round the parts that are meant; where others cover them or they are cut away, thin and
// dashed.
import type { Plane } from "three";
import { LineMaterial } from "three/addons/lines/LineMaterial.js";
import { LineSegments2 } from "three/addons/lines/LineSegments2.js";
import { LineSegmentsGeometry } from "three/addons/lines/LineSegmentsGeometry.js";

import type { Piece } from "./piece";

export type Meant = "selected" | "lit" | "changed";

const COLOURS: Readonly<Record<Meant, number>> = {
  selected: 0x0b3d91,
  lit: 0x8a2500,
  changed: 0x2f5d1f,
};
/** Pixels. */
const WIDE: Readonly<Record<Meant, number>> = { selected: 3, lit: 3, changed: 2.5 };
const THIN = 1.2;
const DASH = 6;
const GAP = 4;

export class Outlines {
  private readonly drawn = new Map<
    string,
    { meant: Meant; made: string; lines: LineSegments2[] }
  >();
  private readonly inks: Readonly<Record<Meant, [LineMaterial, LineMaterial]>>;

  /** `clipping` holds the planes of a cut through all that is drawn. */
  constructor(clipping: Plane[]) {
    const inks = (meant: Meant): [LineMaterial, LineMaterial] => [
      new LineMaterial({
        color: COLOURS[meant],
        linewidth: WIDE[meant],
        clippingPlanes: clipping,
      }),
      new LineMaterial({
        color: COLOURS[meant],
        linewidth: THIN,
        dashed: true,
        dashSize: DASH,
        gapSize: GAP,
        depthTest: false,
        transparent: true,
        opacity: 0.75,
      }),
    ];
    this.inks = { selected: inks("selected"), lit: inks("lit"), changed: inks("changed") };
  }

  /** Dashes are as long on the screen from near and far; a pixel is so many mm. */
  scale(pixel: number): void {
    for (const [, dashed] of Object.values(this.inks)) dashed.dashScale = 1 / pixel;
  }

  /** Outline these pieces and no others. */
  draw(pieces: ReadonlyMap<string, Piece>, meant: ReadonlyMap<string, Meant>): void {
    for (const [ref, { meant: was, made, lines }] of this.drawn) {
      if (meant.get(ref) === was && pieces.get(ref)?.made === made) continue;
      for (const each of lines) each.removeFromParent();
      lines[0]!.geometry.dispose();
      this.drawn.delete(ref);
    }
    for (const [ref, how] of meant) {
      const piece = pieces.get(ref);
      if (!piece || this.drawn.has(ref)) continue;
      const lines = this.outline(piece, how);
      this.drawn.set(ref, { meant: how, made: piece.made, lines });
    }
  }

  private outline(piece: Piece, meant: Meant): LineSegments2[] {
    const geometry = new LineSegmentsGeometry().setPositions(
      piece.edges.getAttribute("position").array as Float32Array,
    );
    const lines = this.inks[meant].map((ink) => new LineSegments2(geometry, ink));
    lines[1]!.computeLineDistances();
    lines.forEach((each, order) => {
      each.raycast = () => {};
      each.renderOrder = 2 - order;
    });
    piece.group.add(...lines);
    return lines;
  }
}
