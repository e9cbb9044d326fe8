// A part in space: its mesh, its drawn edges, and the fittings that go with it.
import { Box3, type BufferGeometry, Group, LineSegments, Matrix4, Mesh } from "three";

import type { Fitting, Layer, Model, Part } from "../document";
import { PALE, type Look, type Looks, type Paint } from "./looks";
import type { Shapes } from "./shapes";
import type { Woods } from "./woods";

export type Solid = Mesh<BufferGeometry, Paint>;

interface Body {
  solid: Solid;
  lines: LineSegments[];
  /** Of the lines, those of holes and curves. */
  fine: LineSegments | null;
  look: Look;
  colour: string;
}

export class Piece {
  readonly ref: string;
  readonly group = new Group();
  /** Where it stands when the unit is whole and closed. */
  readonly home = new Matrix4();
  readonly box: Box3;
  layer: Layer;
  /** What it was made of: a piece with the same name needn't be made again. */
  readonly made: string;
  private readonly body: Body;
  private readonly fittings: { fitting: Fitting; body: Body }[] = [];

  constructor(
    part: Part,
    model: Model,
    fittings: readonly Fitting[],
    private readonly from: { shapes: Shapes; looks: Looks; woods: Woods },
  ) {
    this.ref = part.ref;
    this.layer = part.layer;
    this.made = madeOf(part, fittings);
    this.body = this.add(part.shape, part.surface, model);
    this.box = this.mesh.geometry.boundingBox!;
    from.woods.dress(this.mesh.material, part, model.surfaces, this.box);
    for (const fitting of fittings)
      this.fittings.push({
        fitting,
        body: this.add(fitting.shape, fitting.surface, model),
      });
    this.group.matrixAutoUpdate = false;
    this.place(part);
  }

  get mesh(): Solid {
    return this.body.solid;
  }

  /** The long edges of its shape. */
  get edges(): BufferGeometry {
    return this.body.lines[0]!.geometry;
  }

  /** How it has moved from where it stands in the whole, closed unit. */
  moved(): Matrix4 {
    return this.home.clone().invert().premultiply(this.group.matrix);
  }

  /** Where it stands, and in which layer. */
  place(part: Part): void {
    this.layer = part.layer;
    this.home.set(...(part.matrix as Parameters<Matrix4["set"]>));
  }

  /** Which of its fittings are seen. */
  showFittings(shown: boolean, inner: boolean): void {
    for (const { fitting, body } of this.fittings) {
      const seen = shown && (inner || !fitting.inner);
      body.solid.visible = seen;
      for (const each of body.lines) each.visible = seen;
    }
  }

  /** The lines of holes and curves are seen from near only. */
  showFine(shown: boolean): void {
    for (const { fine, solid } of this.bodies()) if (fine) fine.visible = shown && solid.visible;
  }

  pale(pale: boolean): void {
    for (const body of this.bodies()) {
      body.look.pale.value = pale ? PALE : 0;
      const ink = this.from.looks.ink(body.colour);
      for (const each of body.lines) each.material = pale ? ink.pale : ink.plain;
    }
  }

  dispose(): void {
    this.group.removeFromParent();
    for (const body of this.bodies()) this.from.looks.drop(body.look);
  }

  private bodies(): Body[] {
    return [this.body, ...this.fittings.map((each) => each.body)];
  }

  private add(shape: string, surface: string, model: Model): Body {
    const told = model.surfaces[surface]!;
    const { geometry, edges, fine } = this.from.shapes.get(shape, model.shapes);
    const look = this.from.looks.of(told);
    const solid = new Mesh(geometry, look.material);
    solid.castShadow = !told.clear;
    solid.receiveShadow = true;
    solid.userData["ref"] = this.ref;
    const ink = this.from.looks.ink(told.colour).plain;
    const lines = [edges, fine].flatMap((each) => (each ? [new LineSegments(each, ink)] : []));
    this.group.add(solid, ...lines);
    return { solid, lines, fine: fine ? lines[1]! : null, look, colour: told.colour };
  }
}

/** All that a piece's solids and looks hang on. */
export function madeOf(part: Part, fittings: readonly Fitting[]): string {
  const { shape, surface, grain, lie, edges } = part;
  return JSON.stringify([shape, surface, grain, lie, edges, fittings]);
}
