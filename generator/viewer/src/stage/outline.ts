// Thick edges round the parts that are meant; where others cover them, thin and dashed.
import { type Group } from "three";
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
const WIDE: Readonly<Record<Meant, number>> = { selected: 3, lit: 3, changed: 2.5 };

export class Outlines {
  private readonly drawn = new Map<
    string,
    { meant: Meant; made: string; lines: LineSegments2[] }
  >();
  private readonly inks: Readonly<Record<Meant, [LineMaterial, LineMaterial]>>;

  constructor() {
    const inks = (meant: Meant): [LineMaterial, LineMaterial] => [
      new LineMaterial({ color: COLOURS[meant], linewidth: WIDE[meant] }),
      new LineMaterial({
        color: COLOURS[meant],
        linewidth: 1.2,
        dashed: true,
        dashSize: 6,
        gapSize: 4,
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
    (piece.group as Group).add(...lines);
    return lines;
  }
}
