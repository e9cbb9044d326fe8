// Where things are on the canvas, and what is seen at a point of it.  Pixels are those of the page,
// from the canvas's top left.
import {
  type BufferGeometry,
  Group,
  type Intersection,
  type Material,
  Mesh,
  type Object3D,
  type Ray,
  Raycaster,
  Vector2,
  type Vector3,
} from "three";

import type { Piece } from "../stage/piece";
import type { Stage } from "../stage/stage";
import { besideOf } from "./beside";
import type { Spot } from "./spots";

type Solid = Mesh<BufferGeometry, Material>;

export interface Hit {
  ref: string;
  /** Unit frame, as things stand now. */
  point: Vector3;
}

/** How far (mm) before a point something has to be to hide it. */
const HIDES = 0.5;
/** How far (mm) round a point it is looked for what hides it. */
const ASIDE = 0.05;
/** mm: points nearer each other are one. */
const SAME = 0.02;
/** A cosine: of a face that is seen so slantwise nothing is seen. */
const EDGE_ON = 1e-3;
/** Ways (radians) that are tried, so that no edge that is square to the picture lies along one. */
const ROUND = [1, 3, 5, 7, 9, 11, 13, 15].map((eighth) => (eighth * Math.PI) / 8);

export class Sight {
  /** Cut faces: seen and touched like the parts they are of. */
  readonly caps = new Group();
  private readonly ray = new Raycaster();

  constructor(readonly stage: Stage) {}

  get width(): number {
    return this.stage.canvas.clientWidth;
  }

  get height(): number {
    return this.stage.canvas.clientHeight;
  }

  /** Where a point of the unit frame is on the canvas; null if it is behind the camera. */
  spot(point: Vector3): Spot | null {
    const seen = point.clone().project(this.stage.camera);
    if (seen.z > 1 || seen.z < -1) return null;
    return { x: ((seen.x + 1) / 2) * this.width, y: ((1 - seen.y) / 2) * this.height };
  }

  /** How many mm a pixel is at a point. */
  pixel(point: Vector3): number {
    const seen = point.clone().project(this.stage.camera);
    const beside = seen.clone();
    beside.y += 2 / Math.max(this.height, 1);
    const camera = this.stage.camera;
    return seen.unproject(camera).distanceTo(beside.unproject(camera));
  }

  /** The line of sight through a point of the canvas. */
  line(spot: Spot): Ray {
    const across = new Vector2((spot.x / this.width) * 2 - 1, 1 - (spot.y / this.height) * 2);
    this.ray.setFromCamera(across, this.stage.camera);
    return this.ray.ray;
  }

  /** The first thing that is seen at a point of the canvas. */
  hit(spot: Spot): Hit | null {
    this.line(spot);
    const hit = this.met()[0];
    return hit ? { ref: hit.object.userData["ref"] as string, point: hit.point } : null;
  }

  /** Whether nothing stands before a point; a cut takes away what stands there, but not the place. */
  sees(point: Vector3): boolean {
    const spot = this.spot(point);
    return spot !== null && this.meetsNothing(this.line(spot).origin.distanceTo(point));
  }

  /** The pieces of layers that are on. */
  seen(): Piece[] {
    return [...this.stage.pieces.values()].filter((piece) => piece.group.visible);
  }

  /** What can hide something of these pieces: they, cut faces, and, unless one looks past it, what is screwed on. */
  solids(pieces: readonly Piece[], fittings = true): Solid[] {
    const solids = fittings
      ? pieces.flatMap(({ group }) => group.children.filter(isSolid))
      : pieces.map((piece) => piece.mesh);
    return [...(this.caps.children as Solid[]), ...solids.filter((each) => each.visible)];
  }

  /**
   * Whether anything of a piece is seen right at a point of its outside, with these before it.  The point itself doesn't
   * tell: what lies in one line of sight with an edge before it may be hidden or not.  What hides comes to their front.
   */
  shows(piece: Piece, point: Vector3, solids: Solid[]): boolean {
    if (this.isCutAway(point)) return false;
    const { matrix } = piece.group;
    const own = point.clone().applyMatrix4(matrix.clone().invert());
    return besideOf(piece.mesh.geometry, own).some(({ point, normal }) => {
      const place = point.applyMatrix4(matrix);
      const spot = this.spot(place);
      if (!spot || this.isCutAway(place)) return false;
      const { origin, direction } = this.line(spot);
      const slant = normal.clone().transformDirection(matrix).dot(direction);
      return slant < -EDGE_ON && !this.meets(solids, origin.distanceTo(place) - SAME, piece.mesh);
    });
  }

  /** Whether none of these stands before a point or anything right beside it. */
  seesAll(point: Vector3, solids: Solid[]): boolean {
    const spots = this.isCutAway(point) ? [] : this.round(point);
    const clear = (spot: Spot) =>
      !this.meets(solids, this.line(spot).origin.distanceTo(point) - HIDES);
    return spots.length > 0 && spots.every(clear);
  }

  private round(point: Vector3): Spot[] {
    const spot = this.spot(point);
    if (!spot) return [];
    const aside = ASIDE / this.pixel(point);
    const beside = ROUND.map((way) => ({
      x: spot.x + Math.cos(way) * aside,
      y: spot.y + Math.sin(way) * aside,
    }));
    return [spot, ...beside];
  }

  /** Whether nothing stands between an eye and a point. */
  isClear(eye: Vector3, point: Vector3): boolean {
    const way = point.clone().sub(eye);
    const far = way.length();
    this.ray.set(eye, way.normalize());
    return !this.isCutAway(point) && this.meetsNothing(far);
  }

  isCutAway(point: Vector3): boolean {
    return this.stage.clipping.some((plane) => plane.distanceToPoint(point) < -1e-3);
  }

  private meetsNothing(far: number): boolean {
    return !this.met().some((hit) => hit.distance < far - HIDES);
  }

  /** Whether the line of sight meets one of these nearer than so many mm; one looks through glass, but `own`. */
  private meets(solids: Solid[], far: number, own?: Solid): boolean {
    this.ray.far = far;
    const at = solids.findIndex(
      (solid) => (solid === own || !isClear(solid)) && this.uncut(solid).length > 0,
    );
    this.ray.far = Infinity;
    if (at > 0) solids.unshift(...solids.splice(at, 1));
    return at >= 0;
  }

  private uncut(solid: Solid): Intersection[] {
    const isCap = solid.parent === this.caps;
    return this.ray
      .intersectObject(solid, false)
      .filter((hit) => isCap || !this.isCutAway(hit.point));
  }

  private met(): Intersection[] {
    return this.ray
      .intersectObjects(this.solids(this.seen(), false), false)
      .filter((hit) => hit.object.parent === this.caps || !this.isCutAway(hit.point));
  }
}

function isSolid(each: Object3D): each is Solid {
  return each instanceof Mesh;
}

function isClear({ material }: Solid): boolean {
  return material.transparent;
}
