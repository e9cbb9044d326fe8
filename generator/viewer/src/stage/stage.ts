// The unit in space.  The scene is in the unit frame, in mm, with z up.
import { Color, type Plane, Scene, Vector3, WebGLRenderer } from "three";

import type { Fitting, Layer, Model, Motion, Sections, Texture } from "../document";
import type { ViewName } from "../state";
import { Changes } from "./changes";
import { still } from "./easing";
import { Eye } from "./eye";
import { Frame } from "./frame";
import { Lamps } from "./lamps";
import { Looks } from "./looks";
import { Moving } from "./moving";
import { type Meant, Outlines } from "./outline";
import { Pace } from "./pace";
import { madeOf, Piece } from "./piece";
import { Shapes } from "./shapes";
import { Woods } from "./woods";

/** A hole of so many mm must take up so many pixels before its edge is drawn. */
const FINE_HOLE = 5;
const FINE_PIXELS = 4;

export class Stage {
  readonly scene = new Scene();
  readonly renderer: WebGLRenderer;
  readonly eye: Eye;
  readonly pieces = new Map<string, Piece>();
  /** What works on something that will be seen, and asks for a frame then. */
  readonly awaited = new Set<object>();
  /** What lies before one of these planes isn't drawn; only `cut` writes them. */
  readonly clipping: Plane[] = [];
  private readonly moved = new Set<() => void>();
  private readonly drawing = new Set<() => void>();
  readonly shapes = new Shapes();
  readonly looks = new Looks(this.clipping);
  readonly woods = new Woods();
  private readonly moving = new Moving(this.pieces);
  private readonly lamps = new Lamps(this.scene);
  private readonly outlines = new Outlines(this.clipping);
  private readonly pace: Pace;
  private readonly frame: Frame;
  private readonly changes = new Changes(() => this.lightUp());
  private moves: NonNullable<Sections["apart"]> = {};
  private motions: readonly Motion[] = [];
  private opened: ReadonlySet<string> = new Set();
  private hidden: { layers: ReadonlySet<Layer>; aside: ReadonlySet<string> } = {
    layers: new Set(),
    aside: new Set(),
  };
  private lighting: { refs: readonly string[]; selected: string | null } = {
    refs: [],
    selected: null,
  };
  private around: readonly Vector3[] = [];
  private asked = 0;
  private last = 0;

  /** Throws where the browser has no WebGL 2. */
  constructor(readonly canvas: HTMLCanvasElement) {
    this.renderer = new WebGLRenderer({ canvas });
    this.frame = new Frame(this.renderer);
    this.pace = new Pace(this.renderer, () => this.draw());
    this.renderer.shadowMap.enabled = true;
    this.renderer.localClippingEnabled = true;
    this.scene.background = new Color(this.looks.paper);
    this.eye = new Eye(canvas);
    this.eye.moved = () => this.draw();
    this.resize();
    new ResizeObserver(() => this.resize()).observe(canvas);
    canvas.addEventListener("webglcontextrestored", () => this.stand());
  }

  get camera() {
    return this.eye.camera;
  }

  get controls() {
    return this.eye.controls;
  }

  /** Show a model; pieces whose shape and surface stay are kept. */
  show(model: Model): void {
    const first = !this.pieces.size;
    this.looks.release();
    const gone = new Set(this.pieces.keys());
    const changed: string[] = [];
    const fittings = new Map<string, Fitting[]>();
    for (const each of model.fittings)
      fittings.set(each.ref, [...(fittings.get(each.ref) ?? []), each]);
    for (const part of model.parts) {
      gone.delete(part.ref);
      if (this.put(part, model, fittings.get(part.ref) ?? [])) changed.push(part.ref);
    }
    for (const ref of gone) {
      this.pieces.get(ref)!.dispose();
      this.pieces.delete(ref);
    }
    this.woods.keep(
      new Set(model.parts.flatMap((part) => [part.surface, ...Object.values(part.edges)])),
    );
    const each = [...model.parts, ...model.fittings];
    this.shapes.keep(new Set(each.map(({ shape }) => shape)));
    this.looks.keep(new Set(each.map(({ surface }) => model.surfaces[surface]!.colour)));
    this.motions = model.motions;
    this.pace.hurry();
    this.swing(this.opened);
    this.changes.begin(first || still() ? [] : changed);
    this.lightUp();
  }

  /** Show the pictures of woods, by the names of their surfaces, as soon as they are read. */
  async clothe(textures: Readonly<Record<string, Texture>>): Promise<void> {
    await this.woods.show(textures);
    this.draw();
  }

  /**
   * Take the unit apart: 0 is whole, 1 wholly apart.  While a new model's moves aren't told yet,
   * parts keep those of the last.
   */
  pull(apart: Sections["apart"], share: number): void {
    if (apart) this.moves = apart;
    this.moving.pull(this.moves, share);
    this.stand();
  }

  /** Open the doors and drawers of these labels, and shut all others. */
  swing(open: ReadonlySet<string>): void {
    this.opened = open;
    this.moving.swing(this.motions, open);
    if (still()) this.moving.step(Infinity);
    this.stand();
  }

  /** Hide all of these layers, and these parts. */
  hide(layers: ReadonlySet<Layer>, aside: ReadonlySet<string> = new Set()): void {
    this.hidden = { layers, aside };
    this.stand();
  }

  /** Parts that light up while the others step back, and the one that is chosen. */
  light(refs: readonly string[], selected: string | null): void {
    this.lighting = { refs, selected };
    this.lightUp();
  }

  /** Have these points in the picture, too. */
  surround(points: readonly Vector3[]): void {
    this.around = points;
    this.stand();
  }

  /** Look from one of the standard views. */
  view(name: ViewName): void {
    this.eye.view(name);
  }

  /** Draw a frame as soon as may be; asked often, drawn once. */
  draw(): void {
    this.asked ||= requestAnimationFrame((now) => {
      const seconds = this.last ? Math.min(0.1, (now - this.last) / 1000) : 1 / 60;
      this.asked = 0;
      if (this.moving.step(seconds)) this.stand();
      const more = this.eye.step(seconds) || this.asked;
      this.last = more ? now : 0;
      this.pace.frame(now);
      this.render();
      if (more) this.draw();
    });
  }

  /** Do this before each frame, when all stands where it is drawn; the answer ends that. */
  onDraw(work: () => void): () => void {
    this.drawing.add(work);
    return () => this.drawing.delete(work);
  }

  /** Do this when pieces have come, gone or moved; the answer ends that. */
  onMove(work: () => void): () => void {
    this.moved.add(work);
    return () => this.moved.delete(work);
  }

  /** Draw nothing of what lies before these planes; before a frame, which isn't asked for here. */
  cut(planes: readonly Plane[]): void {
    this.clipping.splice(0, this.clipping.length, ...planes);
    this.lamps.renew();
  }

  /** Look from this direction at what one looks at. */
  turn(direction: Vector3): void {
    this.eye.turnTo(direction);
  }

  /** Whether the picture is as it will stay. */
  get resting(): boolean {
    return !this.asked && !this.awaited.size;
  }

  /** What is seen, as a picture. */
  picture(): string {
    this.pace.finely();
    this.render();
    return this.canvas.toDataURL("image/png");
  }

  private render(): void {
    const { coarse } = this.pace;
    if (!coarse && this.changes.due()) this.outline();
    const { height } = this.eye.pose ?? { height: Infinity };
    const pixel = (2 * height) / this.canvas.clientHeight;
    for (const piece of this.pieces.values()) piece.showFine(FINE_HOLE / pixel > FINE_PIXELS);
    this.outlines.scale(pixel);
    this.scene.updateMatrixWorld();
    this.camera.updateMatrixWorld();
    for (const each of this.drawing) each();
    // A coarse frame has the shadow of the one before: the fine one comes soon.
    this.lamps.shade(!coarse, this.clipping.length > 0);
    const draw = () =>
      this.frame.draw(!coarse, () => this.renderer.render(this.scene, this.camera));
    if (this.pieces.size) this.pace.measure(draw);
    else draw();
    this.looks.release();
  }

  /** Put a part in its place; whether it is another than it was. */
  private put(part: Model["parts"][number], model: Model, fittings: readonly Fitting[]): boolean {
    const before = this.pieces.get(part.ref);
    if (before?.made === madeOf(part, fittings)) {
      before.place(part);
      return false;
    }
    before?.dispose();
    const piece = new Piece(part, model, fittings, this);
    this.pieces.set(part.ref, piece);
    this.scene.add(piece.group);
    return true;
  }

  /** All pieces where they stand now, seen or not, lit, and looked at. */
  private stand(): void {
    this.moving.place();
    const { layers, aside } = this.hidden;
    const { inside } = this.moving;
    for (const piece of this.pieces.values()) {
      piece.group.visible = !layers.has(piece.layer) && !aside.has(piece.ref);
      piece.showFittings(!layers.has("fittings"), inside);
    }
    const points = [...this.pieces.values()]
      .filter((piece) => piece.group.visible)
      .flatMap((piece) => cornersOf(piece));
    this.lamps.light(this.pieces.values(), points);
    this.eye.see([...points, ...this.around]);
    for (const each of this.moved) each();
    this.draw();
  }

  private lightUp(): void {
    const { refs, selected } = this.lighting;
    const lit = new Set(refs.filter((ref) => this.pieces.has(ref)));
    for (const piece of this.pieces.values())
      piece.pale(lit.size > 0 && !lit.has(piece.ref) && piece.ref !== selected);
    this.outline();
    this.draw();
  }

  private outline(): void {
    const { refs, selected } = this.lighting;
    const meant = new Map<string, Meant>(this.changes.outlined.map((ref) => [ref, "changed"]));
    for (const ref of refs) meant.set(ref, "lit");
    if (selected) meant.set(selected, "selected");
    this.outlines.draw(this.pieces, meant);
  }

  private resize(): void {
    const { clientWidth: width, clientHeight: height } = this.canvas;
    if (!width || !height) return;
    this.renderer.setSize(width, height, false);
    this.eye.resize(width / height);
    this.draw();
  }
}

function cornersOf(piece: Piece): Vector3[] {
  if (piece.box.isEmpty()) return [];
  const { min, max } = piece.box;
  const ends = [min, max];
  return ends.flatMap(({ x }) =>
    ends.flatMap(({ y }) =>
      ends.map(({ z }) => new Vector3(x, y, z).applyMatrix4(piece.group.matrix)),
    ),
  );
}
