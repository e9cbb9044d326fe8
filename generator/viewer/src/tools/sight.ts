// Where things are on the canvas, and what is seen at a point of it.  Pixels are those of the page,
// from the canvas's top left.
import * as three from "three";

import type { Stage } from "../stage/stage";

export interface Spot {
  x: number;
  y: number;
}
export interface Hit {
  ref: string;
  /** Unit frame, as things stand now. */
  point: three.Vector3;
}

/** How far (mm) before a point something has to be to hide it. */
const HIDES = 0.5;
/** How far (mm) beside a point it is looked for what it is a point of. */
const ASIDE = 0.05;
/** Ways (radians) that are tried, so that no edge that is square to the picture lies along one. */
const ROUND = [1, 3, 5, 7, 9, 11, 13, 15].map((eighth) => (eighth * Math.PI) / 8);

export class Sight {
  /** Cut faces: seen and touched like the parts they are of. */
  readonly caps = new three.Group();
  private readonly ray = new three.Raycaster();

  constructor(readonly stage: Stage) {}

  get width(): number {
    return this.stage.canvas.clientWidth;
  }

  get height(): number {
    return this.stage.canvas.clientHeight;
  }

  /** Where a point of the unit frame is on the canvas; null if it is behind the camera. */
  spot(point: three.Vector3): Spot | null {
    const seen = point.clone().project(this.stage.camera);
    if (seen.z > 1 || seen.z < -1) return null;
    return { x: ((seen.x + 1) / 2) * this.width, y: ((1 - seen.y) / 2) * this.height };
  }

  /** How many mm a pixel is at a point. */
  pixel(point: three.Vector3): number {
    const seen = point.clone().project(this.stage.camera);
    const beside = seen.clone();
    beside.y += 2 / Math.max(this.height, 1);
    const camera = this.stage.camera;
    return seen.unproject(camera).distanceTo(beside.unproject(camera));
  }

  /** The line of sight through a point of the canvas. */
  line(spot: Spot): three.Ray {
    const across = new three.Vector2((spot.x / this.width) * 2 - 1, 1 - (spot.y / this.height) * 2);
    this.ray.setFromCamera(across, this.stage.camera);
    return this.ray.ray;
  }

  /** The first thing that is seen at a point of the canvas. */
  hit(spot: Spot): Hit | null {
    this.line(spot);
    const hit = this.met()[0];
    return hit ? { ref: hit.object.userData["ref"] as string, point: hit.point } : null;
  }

  /** Whether nothing stands before a point. */
  sees(point: three.Vector3): boolean {
    const spot = this.spot(point);
    if (!spot || this.isCutAway(point)) return false;
    return this.meetsNothing(this.line(spot).origin.distanceTo(point));
  }

  /**
   * Whether something of a part is seen right beside a point of its outside.  The point itself doesn't tell: what lies in
   * one line of sight with an edge before it may be hidden or not.
   */
  shows(ref: string, point: three.Vector3): boolean {
    if (this.isCutAway(point)) return false;
    return this.round(point).some((spot) => {
      this.line(spot);
      const hit = this.met()[0];
      return hit?.object.userData["ref"] === ref && hit.point.distanceTo(point) < HIDES;
    });
  }

  /** Whether nothing stands before a point or anything right beside it. */
  seesAll(point: three.Vector3): boolean {
    const spots = this.round(point);
    return (
      this.sees(point) &&
      spots.every((spot) => this.meetsNothing(this.line(spot).origin.distanceTo(point)))
    );
  }

  private round(point: three.Vector3): Spot[] {
    const spot = this.spot(point);
    if (!spot) return [];
    const aside = ASIDE / this.pixel(point);
    return ROUND.map((way) => ({
      x: spot.x + Math.cos(way) * aside,
      y: spot.y + Math.sin(way) * aside,
    }));
  }

  /** Whether nothing stands between an eye and a point. */
  isClear(eye: three.Vector3, point: three.Vector3): boolean {
    const way = point.clone().sub(eye);
    const far = way.length();
    this.ray.set(eye, way.normalize());
    return !this.isCutAway(point) && this.meetsNothing(far);
  }

  isCutAway(point: three.Vector3): boolean {
    return this.stage.clipping.some((plane) => plane.distanceToPoint(point) < -1e-3);
  }

  private meetsNothing(far: number): boolean {
    return !this.met().some((hit) => hit.distance < far - HIDES);
  }

  private met(): three.Intersection[] {
    const objects: three.Object3D[] = [...this.caps.children];
    for (const piece of this.stage.pieces.values()) {
      if (piece.group.visible) objects.push(piece.mesh);
    }
    return this.ray
      .intersectObjects(objects, false)
      .filter((hit) => hit.object.parent === this.caps || !this.isCutAway(hit.point));
  }
}
