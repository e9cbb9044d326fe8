// A cut through the unit: what is before a plane isn't drawn, and what the plane cuts is closed with
// hatched faces.
import {
  BufferAttribute,
  BufferGeometry,
  Group,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  Plane,
  type ShaderMaterial,
  Vector2,
  Vector3,
} from "three";

import { groundColour } from "../colours";
import type { Part } from "../document";
import type { Piece } from "../stage/piece";
import * as state from "../state";
import { hatching, type Kind, pitchOf } from "./hatching";
import type { Sight } from "./sight";
import { type Area, axesIn, sliced, triangulated } from "./slicing";

/** One looks along an axis so little (a cosine) that the side that is cut away stays. */
const SIDEWAYS = 0.05;
/** Which side stays if one looks along a cut's axis neither way: the right, the back, what is below. */
const BEYOND = [1, 1, -1] as const;
/** mm: faces nearer than this are neighbours. */
const TOUCH = 0.5;
/** Slants and spacings by which neighbours that are cut alike are told apart. */
const LOOKS = [
  { slant: 0, spread: 1 },
  { slant: 1, spread: 1 },
  { slant: 0, spread: 1.42 },
  { slant: 1, spread: 1.42 },
] as const;

/** A cut face on its way to being drawn, in the plane's own coordinates. */
interface Face {
  ref: string;
  /** Whether it is of something bought in, that goes with the part. */
  fitting: boolean;
  kind: Kind;
  /** Radians from the plane's first axis. */
  along: number;
  areas: Area[];
  low: Vector2;
  high: Vector2;
  toUnit: (point: Vector2) => Vector3;
}
interface Hatch {
  material: ShaderMaterial;
  kind: Kind;
  spread: number;
}

export class Cutting {
  private readonly outlines = new Group();
  private readonly ink = new LineBasicMaterial({ color: groundColour("ink") });
  private readonly hatches = new Map<string, Hatch>();
  private cut: state.Cut | null = null;
  /** Which way along the axis what is left lies. */
  private side: 1 | -1 = 1;
  private stale = false;

  constructor(private readonly sight: Sight) {
    sight.stage.scene.add(sight.caps, this.outlines);
  }

  /** Cut at another place, or no more. */
  set(cut: state.Cut | null): void {
    const looked = this.looked(cut);
    if (cut && cut.axis !== this.cut?.axis) this.side = looked ?? BEYOND[cut.axis];
    this.cut = cut;
    this.renew();
  }

  /** Parts have moved, come or gone. */
  renew(): void {
    this.stale = this.stale || this.cut !== null || this.sight.caps.children.length > 0;
    if (this.stale) this.sight.stage.draw();
  }

  /** Before a frame: cut anew what has changed, from the side one looks from. */
  frame(): void {
    const looked = this.looked(this.cut);
    if (looked && looked !== this.side) {
      this.side = looked;
      this.stale = true;
    }
    if (this.stale) this.redo();
    this.stale = false;
    const model = state.model.peek();
    if (!this.cut || !model) return;
    const middle = new Vector3(...model.low).lerp(new Vector3(...model.high), 0.5);
    const pixel = this.sight.pixel(middle);
    for (const { material, kind, spread } of this.hatches.values())
      material.uniforms["pitch"]!.value = spread * pitchOf(kind, pixel);
  }

  dispose(): void {
    this.cut = null;
    this.redo();
    this.sight.caps.removeFromParent();
    this.outlines.removeFromParent();
    this.ink.dispose();
  }

  /** The way one looks along the axis of a cut; null if rather across it. */
  private looked(cut: state.Cut | null): 1 | -1 | null {
    if (!cut) return null;
    const way = this.sight.stage.camera.getWorldDirection(new Vector3()).getComponent(cut.axis);
    return Math.abs(way) < SIDEWAYS ? null : way > 0 ? 1 : -1;
  }

  private redo(): void {
    const { stage, caps } = this.sight;
    for (const each of [...caps.children, ...this.outlines.children] as Mesh[]) {
      each.geometry.dispose();
      each.removeFromParent();
    }
    if (this.cut) {
      const normal = new Vector3().setComponent(this.cut.axis, this.side);
      const plane = new Plane(normal, -this.cut.at * this.side);
      stage.cut([plane]);
      this.close(plane);
    } else {
      stage.cut([]);
      for (const { material } of this.hatches.values()) material.dispose();
      this.hatches.clear();
    }
  }

  private close(plane: Plane): void {
    const axes = axesIn(plane.normal);
    const faces: Face[] = [];
    const parts = new Map(state.model.peek()?.parts.map((part) => [part.ref, part]));
    for (const piece of this.sight.stage.pieces.values()) {
      const part = parts.get(piece.ref);
      if (part && piece.group.visible) faces.push(...facesOf(piece, part, plane, axes));
    }
    const looks: number[] = [];
    for (const [number, face] of faces.entries()) {
      const taken = new Set(
        looks.filter((_, other) => faces[other]!.kind === face.kind && near(faces[other]!, face)),
      );
      const free = LOOKS.findIndex((_, look) => !taken.has(look));
      looks.push(free < 0 ? number % LOOKS.length : free);
      this.draw(face, looks[number]!);
    }
  }

  private draw(face: Face, look: number): void {
    const triangles = face.areas.flatMap(triangulated);
    const cap = new Mesh(geometryOf(triangles.map(face.toUnit)), this.hatch(face, look));
    const places = new Float32Array(triangles.flatMap(({ x, y }) => [x, y]));
    cap.geometry.setAttribute("place", new BufferAttribute(places, 2));
    Object.assign(cap.userData, { ref: face.ref, fitting: face.fitting });
    cap.matrixAutoUpdate = false;
    this.sight.caps.add(cap);
    const ends = face.areas
      .flatMap(({ outline, holes }) => [outline, ...holes])
      .flatMap((loop) => loop.flatMap((point, at) => [loop.at(at - 1)!, point]));
    this.outlines.add(new LineSegments(geometryOf(ends.map(face.toUnit)), this.ink));
  }

  private hatch({ kind, along }: Face, look: number): ShaderMaterial {
    const { slant, spread } = LOOKS[look]!;
    const angle = kind === "along the grain" ? along.toFixed(2) : "";
    const name = `${kind} ${look} ${angle}`;
    let hatch = this.hatches.get(name);
    if (!hatch) {
      hatch = { material: hatching(kind, slant), kind, spread };
      hatch.material.uniforms["along"]!.value = along;
      this.hatches.set(name, hatch);
    }
    return hatch.material;
  }
}

/** The faces in which a plane (unit frame) cuts a part and what goes with it. */
function facesOf(piece: Piece, part: Part, plane: Plane, [across, up]: [Vector3, Vector3]): Face[] {
  const { matrix } = piece.group;
  const back = matrix.clone().invert();
  const own = plane.clone().applyMatrix4(back);
  const [x, y] = [across, up].map((axis) => axis.clone().transformDirection(back)) as [
    Vector3,
    Vector3,
  ];
  const toUnit = (point: Vector2) =>
    own.normal
      .clone()
      .multiplyScalar(-own.constant)
      .addScaledVector(x, point.x)
      .addScaledVector(y, point.y)
      .applyMatrix4(matrix);
  const grain = part.grain === "width" ? new Vector3(0, 1, 0) : new Vector3(1, 0, 0);
  const faces: Face[] = [];
  for (const solid of piece.group.children) {
    if (!(solid instanceof Mesh) || !solid.visible) continue;
    const geometry = solid.geometry as BufferGeometry;
    if (!own.intersectsBox(geometry.boundingBox!)) continue;
    const areas = sliced(geometry, own, x, y);
    if (!areas.length) continue;
    const fitting = solid !== piece.mesh;
    const kind = fitting ? "other" : kindOf(part, grain, own.normal);
    const [low, high] = [new Vector2(Infinity, Infinity), new Vector2(-Infinity, -Infinity)];
    for (const point of areas.flatMap(({ outline }) => outline)) {
      const { x, y } = flat(toUnit(point), across, up);
      low.set(Math.min(low.x, x), Math.min(low.y, y));
      high.set(Math.max(high.x, x), Math.max(high.y, y));
    }
    const along = Math.atan2(grain.dot(y), grain.dot(x));
    faces.push({ ref: piece.ref, fitting, kind, along, areas, low, high, toUnit });
  }
  return faces;
}

function kindOf(part: Part, grain: Vector3, normal: Vector3): Kind {
  if (part.kind === "sheet") return "sheet";
  if (part.grain === "none") return "other";
  return Math.abs(grain.dot(normal)) > Math.SQRT1_2 ? "end grain" : "along the grain";
}

function flat(point: Vector3, across: Vector3, up: Vector3): Vector2 {
  return new Vector2(point.dot(across), point.dot(up));
}

function near(one: Face, other: Face): boolean {
  return (
    one.low.x < other.high.x + TOUCH &&
    other.low.x < one.high.x + TOUCH &&
    one.low.y < other.high.y + TOUCH &&
    other.low.y < one.high.y + TOUCH
  );
}

function geometryOf(points: readonly Vector3[]): BufferGeometry {
  return new BufferGeometry().setFromPoints([...points]);
}
