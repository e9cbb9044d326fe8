// The eye: two cameras that are one, turned by mouse, touch and keys.
import { MathUtils, MOUSE, OrthographicCamera, PerspectiveCamera, Vector3 } from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";

import type { Vector } from "../document";
import type { ViewName } from "../state";
import { eased, still } from "./easing";
import { absolute, axesOf, fit, relative } from "./fit";
import { anglesOf, between, directionOf, FOV, halfSeen, PARALLEL, type Pose } from "./pose";
import { VIEWS } from "./views";

/** Seconds from one view to another, and from a parallel projection to the usual perspective. */
const TAKES = 0.35;
const WIDENING = 0.25;
/** Degrees: keys turn the eye no steeper, so that there is always an up. */
const STEEPEST = 89.9;
/** Degrees: as from this angle of view, so far off stands the eye of a parallel projection. */
const FAR_OFF = 4;
/** Degrees, and a share of the picture: what is less is no turn, or no other place. */
const TURNED = 1e-3;
const GONE = 1e-6;

export class Eye {
  readonly controls: OrbitControls;
  /** Called when the eye has moved, and when it has come to rest: there, `restore` begins. */
  moved: () => void = () => {};
  rested: (rest: Pose) => void = () => {};
  pose: Pose | null = null;
  private readonly wide = new PerspectiveCamera(FOV);
  private readonly flat = new OrthographicCamera();
  private points: readonly Vector3[] = [];
  private aspect = 1;
  private glide: { from: Pose; to: Pose; gone: number } | null = null;
  private own = false;
  private begun: Pose | null = null;
  private widens = false;

  constructor(canvas: HTMLElement) {
    this.wide.up.set(0, 0, 1);
    this.flat.up.set(0, 0, 1);
    this.controls = new OrbitControls(this.wide, canvas);
    this.controls.zoomToCursor = true;
    this.controls.mouseButtons = { LEFT: MOUSE.ROTATE, MIDDLE: MOUSE.PAN, RIGHT: MOUSE.PAN };
    this.controls.addEventListener("change", () => {
      if (!this.own) this.handled();
    });
    this.controls.addEventListener("start", () => (this.glide = null));
    this.controls.addEventListener("end", () => this.rest());
  }

  get camera(): PerspectiveCamera | OrthographicCamera {
    return this.pose && this.pose.fov < PARALLEL ? this.flat : this.wide;
  }

  resize(aspect: number): void {
    this.see(this.points, aspect);
  }

  /**
   * See all of these points; where the maker has gone near, that isn't disturbed, and where there are
   * none the eye looks at those before them.
   */
  see(points: readonly Vector3[], aspect = this.aspect): void {
    const [before, was] = [this.points, this.aspect];
    if (points.length) this.points = points;
    this.aspect = aspect;
    if (!this.points.length) return;
    if (this.pose && before.length) {
      this.pose = this.kept(this.pose, before, was);
      if (this.glide) {
        this.glide.from = this.kept(this.glide.from, before, was);
        this.glide.to = this.kept(this.glide.to, before, was);
      }
    }
    const begun = this.begun ? absolute(this.begun, this.points, aspect) : this.whole(VIEWS.corner);
    this.apply(this.pose ?? begun);
  }

  /** Begin where the eye once came to rest. */
  restore(rest: Pose): void {
    this.begun = rest;
  }

  view(name: ViewName): void {
    this.go(this.whole(VIEWS[name]));
  }

  /** See the whole from where one looks. */
  frame(): void {
    if (this.pose) this.go(this.whole(this.pose));
  }

  /** Turn by so many degrees to the right and upwards. */
  turn(right: number, up: number): void {
    if (!this.pose) return;
    const rise = MathUtils.clamp(this.pose.rise + up, -STEEPEST, STEEPEST);
    this.settle({ ...this.pose, azimuth: this.pose.azimuth + right, rise, fov: FOV });
  }

  /** Move the picture by shares of its height. */
  pan(right: number, up: number): void {
    if (!this.pose) return;
    const [across, upright] = axesOf(directionOf(this.pose));
    const target = new Vector3(...this.pose.target)
      .addScaledVector(across, -right * this.pose.height * 2)
      .addScaledVector(upright, -up * this.pose.height * 2);
    this.settle({ ...this.pose, target: target.toArray() as Vector, close: true });
  }

  /** Show everything so many times as large. */
  zoom(times: number): void {
    if (this.pose) this.settle({ ...this.pose, height: this.pose.height / times, close: true });
  }

  /** Look at a place from a direction, as near as now. */
  turnTo(from: Vector3): void {
    if (!this.pose) return;
    this.go({ ...this.pose, ...anglesOf(from), fov: FOV });
  }

  /** Go on for so many seconds; whether there is more to go. */
  step(seconds: number): boolean {
    if (this.glide) {
      const { from, to } = this.glide;
      const gone = (this.glide.gone = Math.min(1, this.glide.gone + seconds / TAKES));
      this.apply(between(from, to, eased(gone)));
      if (gone < 1) return true;
      this.glide = null;
      this.rest();
    } else if (this.pose && this.widens) {
      const wider = (FOV / PARALLEL) ** (seconds / WIDENING);
      const fov = Math.min(FOV, Math.max(this.pose.fov, PARALLEL) * wider);
      this.widens = fov < FOV;
      this.apply({ ...this.pose, fov });
      return this.widens;
    }
    return false;
  }

  private go(to: Pose): void {
    if (!this.pose) return;
    this.widens = false;
    if (still()) {
      this.settle(to);
      return;
    }
    this.glide = { from: this.pose, to, gone: 0 };
    this.moved();
  }

  private settle(pose: Pose): void {
    this.glide = null;
    this.apply(pose);
    this.rest();
  }

  private rest(): void {
    if (this.pose) this.rested(relative(this.pose, this.points, this.aspect));
  }

  private whole({ azimuth, rise, fov }: Pick<Pose, "azimuth" | "rise" | "fov">): Pose {
    const { target, height } = fit(this.points, directionOf({ azimuth, rise }), fov, this.aspect);
    return { azimuth, rise, fov, target: target.toArray() as Vector, height, close: false };
  }

  /** The same look at what has become of the points. */
  private kept(pose: Pose, before: readonly Vector3[], was: number): Pose {
    return absolute(relative(pose, before, was), this.points, this.aspect);
  }

  /** The maker has turned, moved or zoomed. */
  private handled(): void {
    const now = this.read();
    const before = this.pose;
    if (!before) return;
    const turned = Math.hypot(now.azimuth - before.azimuth, now.rise - before.rise) > TURNED;
    const off = new Vector3(...now.target).distanceTo(new Vector3(...before.target));
    const nearer = Math.abs(now.height / before.height - 1) > GONE;
    now.close = before.close || nearer || off > GONE * now.height;
    this.pose = now;
    // Who turns away from a square view sees in perspective again.
    if (turned && now.fov < FOV) this.widens = true;
    this.range();
    this.moved();
  }

  private read(): Pose {
    const { camera } = this;
    const from = camera.position.clone().sub(this.controls.target);
    const height =
      camera === this.flat
        ? this.flat.top / this.flat.zoom
        : from.length() * halfSeen(this.wide.fov);
    return {
      ...anglesOf(from),
      target: this.controls.target.toArray() as Vector,
      height,
      fov: this.pose!.fov,
      close: this.pose!.close,
    };
  }

  private apply(pose: Pose): void {
    this.pose = pose;
    const { camera } = this;
    const parallel = camera === this.flat;
    const away = pose.height / halfSeen(parallel ? FAR_OFF : pose.fov);
    this.controls.target.set(...pose.target);
    camera.position.copy(directionOf(pose)).multiplyScalar(away).add(this.controls.target);
    if (parallel) {
      this.flat.top = pose.height;
      this.flat.bottom = -pose.height;
      this.flat.right = pose.height * this.aspect;
      this.flat.left = -this.flat.right;
      this.flat.zoom = 1;
    } else {
      this.wide.fov = pose.fov;
      this.wide.aspect = this.aspect;
    }
    this.controls.object = camera;
    this.range();
    this.own = true;
    this.controls.update();
    this.own = false;
    this.moved();
  }

  /** What lies between the eye's nearest and farthest is drawn. */
  private range(): void {
    const { camera } = this;
    const away = camera.position.distanceTo(this.controls.target);
    const reach = Math.max(...this.points.map((each) => each.distanceTo(this.controls.target)), 1);
    // Marks and dimensions stand round the unit.
    camera.near = camera === this.flat ? away - 3 * reach : Math.max(away - 3 * reach, away / 100);
    camera.far = away + 4 * reach;
    camera.updateProjectionMatrix();
  }
}
