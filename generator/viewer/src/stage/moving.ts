// How pieces stand: taken apart, and with doors and drawers open.
import { MathUtils, Matrix4, Vector3 } from "three";

import type { Motion, Vector } from "../document";
import { eased } from "./easing";
import type { Piece } from "./piece";

/** Seconds a door takes to open. */
const TAKES = 0.3;
/** Of a stack of open drawers the highest is drawn out so far (of its travel), the lowest wholly. */
const LEAST_DRAWN = 0.35;
/**
 * Degrees: whatever its hinges allow, a door opens to a right angle at most, as in all pictures:
 * farther, those that hang from one upright would stand in each other.
 */
const SQUARE = 90;
/** mm: drawers that overlap by no more than twice this across the unit aren't of one stack. */
const BESIDE = 1;

export class Moving {
  private moves: Readonly<Record<string, Vector>> = {};
  private share = 0;
  private motions: readonly Motion[] = [];
  /** By label: how far each stands open, of its angle or travel. */
  private readonly stands = new Map<string, Way>();

  constructor(private readonly pieces: ReadonlyMap<string, Piece>) {}

  /** Whether insides are seen: something stands open or apart. */
  get inside(): boolean {
    return this.share > 0 || [...this.stands.values()].some((each) => along(each) > 0);
  }

  pull(moves: Readonly<Record<string, Vector>>, share: number): void {
    this.moves = moves;
    this.share = share;
  }

  /** What shall stand open. */
  swing(motions: readonly Motion[], open: ReadonlySet<string>): void {
    this.motions = motions;
    const labels = new Set(motions.map((each) => each.label));
    for (const label of this.stands.keys()) if (!labels.has(label)) this.stands.delete(label);
    for (const motion of motions) {
      const to = open.has(motion.label) ? this.wholly(motion, open) : 0;
      const way = this.stands.get(motion.label);
      if (way?.to !== to)
        this.stands.set(motion.label, { from: way ? along(way) : 0, to, gone: 0 });
    }
  }

  /** Go on towards what shall stand open, for so many seconds; whether anything moved. */
  step(seconds: number): boolean {
    const going = [...this.stands.values()].filter((way) => way.gone < 1);
    for (const way of going) way.gone = Math.min(1, way.gone + seconds / TAKES);
    return going.length > 0;
  }

  /** Put all pieces where they stand. */
  place(): void {
    for (const piece of this.pieces.values()) {
      const [x, y, z] = this.moved(piece.ref);
      piece.group.matrix.makeTranslation(x, y, z).multiply(piece.home);
    }
    for (const motion of this.motions) {
      const way = this.stands.get(motion.label);
      const share = way ? along(way) : 0;
      if (share > 0) this.open(motion, share);
    }
  }

  private open(motion: Motion, share: number): void {
    const [hingeX, hingeY] = motion.hinge;
    const turned = new Matrix4();
    if (hingeX === undefined || hingeY === undefined) {
      const [x, y, z] = motion.travel as Vector;
      turned.makeTranslation(x * share, y * share, z * share);
    } else {
      // A door taken apart turns about its hinge where that has gone.
      const [x, y] = this.moved(this.hung(motion, hingeX, hingeY));
      const angle = Math.sign(motion.angle) * Math.min(Math.abs(motion.angle), SQUARE);
      const axis = new Vector3(hingeX + x, hingeY + y, 0);
      turned
        .makeTranslation(axis)
        .multiply(new Matrix4().makeRotationZ(MathUtils.degToRad(angle) * share))
        .multiply(new Matrix4().makeTranslation(axis.negate()));
    }
    for (const ref of motion.refs) this.pieces.get(ref)?.group.matrix.premultiply(turned);
  }

  /** The part of a door that is nearest its hinge. */
  private hung(motion: Motion, x: number, y: number): string {
    const off = (ref: string) => {
      const piece = this.pieces.get(ref);
      if (!piece) return Infinity;
      const middle = piece.box.getCenter(new Vector3()).applyMatrix4(piece.home);
      return Math.hypot(middle.x - x, middle.y - y);
    };
    return motion.refs.reduce((best, ref) => (off(ref) < off(best) ? ref : best));
  }

  private moved(ref: string): Vector {
    const [x, y, z] = this.moves[ref] ?? [0, 0, 0];
    return [x * this.share, y * this.share, z * this.share];
  }

  /** How far one opens: doors by their angle, drawers so that one looks into each of a stack. */
  private wholly(motion: Motion, open: ReadonlySet<string>): number {
    if (motion.hinge.length) return 1;
    const stack = this.motions
      .filter((each) => open.has(each.label) && this.stacked(each, motion))
      .sort((one, other) => this.height(other) - this.height(one));
    const rank = stack.indexOf(motion);
    return stack.length < 2 ? 1 : LEAST_DRAWN + ((1 - LEAST_DRAWN) * rank) / (stack.length - 1);
  }

  private stacked(one: Motion, other: Motion): boolean {
    const [low, high] = this.across(one);
    const [least, most] = this.across(other);
    return !one.hinge.length && low < most && least < high;
  }

  private across(motion: Motion): [number, number] {
    const piece = this.pieces.get(motion.refs[0]!);
    if (!piece) return [0, 0];
    const { min, max } = piece.box.clone().applyMatrix4(piece.home);
    return [min.x + BESIDE, max.x - BESIDE];
  }

  private height(motion: Motion): number {
    const piece = this.pieces.get(motion.refs[0]!);
    return piece ? new Vector3().setFromMatrixPosition(piece.home).z : 0;
  }
}

interface Way {
  from: number;
  to: number;
  gone: number;
}

/** Where one is on its way. */
function along({ from, to, gone }: Way): number {
  return from + (to - from) * eased(gone);
}
