// Light and floor: soft light from above, one sun with a shadow, and nothing else: each light costs time.
import {
  CanvasTexture,
  DirectionalLight,
  HemisphereLight,
  Mesh,
  MeshBasicMaterial,
  PlaneGeometry,
  type Scene,
  ShadowMaterial,
  Sphere,
  Vector3,
} from "three";

import type { Piece } from "./piece";

/**
 * From where the sun shines: over the left shoulder of who stands in front, and so steeply that it ends on
 * the shelf: where it reached the back below a shelf as far off as shelves are deep, a bright strip lay there.
 */
const SUN = new Vector3(-0.5, -1, 1.25).normalize();
/** How far off the sun stands, in radii of the ball round all that it lights. */
const SUN_OFF = 2;
/** What of its way casts shadows, in the same: from before the ball to the floor well behind it. */
const SUN_SEES = { from: 0.9, to: 5 };
/** Sides of the floor and of the contact shadow on it, in radii of that ball. */
const FLOOR = 8;
const CONTACT = 4;
/** mm below what stands lowest: so that neither fights with it, nor they with each other. */
const FLOOR_BELOW = 0.5;
const CONTACT_BELOW = 0.3;
/** Side of the contact shadow's picture, pixels. */
const SOFT = 192;
/** What is higher (mm) leaves no dark there. */
const NEAR_FLOOR = 160;
/** mm: how soft the dark is right on the floor, and how high a thing leaves half as much of it. */
const SOFTNESS = 30;
const FADES = 25;

export class Lamps {
  private readonly sun = new DirectionalLight(0xffffff, 2);
  private readonly floor: Mesh<PlaneGeometry, ShadowMaterial>;
  private readonly contact: Mesh<PlaneGeometry, MeshBasicMaterial>;
  private readonly soft = document.createElement("canvas");
  private readonly texture: CanvasTexture;
  private stale = false;

  constructor(scene: Scene) {
    // What a surface sends back is its colour times light / pi: together near 1 for fronts.
    scene.add(new HemisphereLight(0xffffff, 0xd8d0c4, 2.35));
    this.sun.castShadow = true;
    this.sun.shadow.mapSize.set(1024, 1024);
    this.sun.shadow.autoUpdate = false;
    this.sun.shadow.radius = 4;
    this.sun.shadow.intensity = 0.85;
    this.sun.shadow.normalBias = 5;
    this.sun.shadow.bias = -0.0005;
    scene.add(this.sun, this.sun.target);
    this.floor = new Mesh(new PlaneGeometry(1, 1), new ShadowMaterial({ opacity: 0.13 }));
    this.floor.receiveShadow = true;
    this.soft.width = this.soft.height = SOFT;
    this.texture = new CanvasTexture(this.soft);
    this.contact = new Mesh(
      new PlaneGeometry(1, 1),
      new MeshBasicMaterial({ map: this.texture, transparent: true, depthWrite: false }),
    );
    this.floor.renderOrder = this.contact.renderOrder = -1;
    scene.add(this.floor, this.contact);
  }

  /** Light what stands there now, in boxes of these corners. */
  light(pieces: Iterable<Piece>, points: readonly Vector3[]): void {
    if (!points.length) return;
    const { center, radius } = new Sphere().setFromPoints([...points]);
    this.sun.target.position.copy(center);
    this.sun.position.copy(center).addScaledVector(SUN, SUN_OFF * radius);
    const { camera } = this.sun.shadow;
    camera.left = camera.bottom = -radius;
    camera.right = camera.top = radius;
    camera.near = SUN_SEES.from * radius;
    camera.far = SUN_SEES.to * radius;
    camera.updateProjectionMatrix();
    this.renew();
    const ground = Math.min(...points.map((each) => each.z));
    this.floor.position.set(center.x, center.y, ground - FLOOR_BELOW);
    this.floor.scale.setScalar(FLOOR * radius);
    this.contact.position.set(center.x, center.y, ground - CONTACT_BELOW);
    this.contact.scale.setScalar(CONTACT * radius);
    this.darken(pieces, center, CONTACT * radius, ground);
  }

  /** What casts a shadow has changed, and all of it stands where it stood. */
  renew(): void {
    this.stale = true;
  }

  /**
   * Before a frame: have the sun's shadow drawn anew if what casts it has changed, unless that is for
   * later.  Of a unit that is cut none falls on the floor: a section is seen near, and its shadow would
   * fill the picture.
   */
  shade(now: boolean, cut: boolean): void {
    this.floor.visible = !cut;
    if (!now || !this.stale) return;
    this.stale = false;
    this.sun.shadow.needsUpdate = true;
  }

  /** The dark below what stands on or near the floor. */
  private darken(pieces: Iterable<Piece>, middle: Vector3, side: number, ground: number): void {
    const paper = this.soft.getContext("2d")!;
    paper.clearRect(0, 0, SOFT, SOFT);
    const scale = SOFT / side;
    // Only the shadow is drawn: what casts it lies beside the picture.
    const beside = 4 * SOFT;
    paper.shadowOffsetX = beside;
    for (const piece of pieces) {
      if (!piece.group.visible) continue;
      const { min, max } = piece.box.clone().applyMatrix4(piece.group.matrix);
      const off = min.z - ground;
      if (off > NEAR_FLOOR) continue;
      paper.shadowBlur = 2 * (SOFTNESS + off) * scale;
      paper.shadowColor = `rgba(40, 32, 24, ${0.5 / (1 + off / FADES)})`;
      paper.fillRect(
        (min.x - middle.x) * scale + SOFT / 2 - beside,
        SOFT / 2 - (max.y - middle.y) * scale,
        (max.x - min.x) * scale,
        (max.y - min.y) * scale,
      );
    }
    this.texture.needsUpdate = true;
  }
}
