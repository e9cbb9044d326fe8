// Parts chosen at the unit itself: by touch, by pointing, by key; doors and drawers that open so.
import { Vector3 } from "three";

import { choose, motionOf, swing } from "../choosing";
import type { Part } from "../document";
import * as state from "../state";
import type { Label } from "./labels";
import type { Hit, Sight } from "./sight";
import type { Spot } from "./spots";

/** A point of a part that goes where the part goes. */
interface Held {
  ref: string;
  /** In the part frame. */
  point: Vector3;
}

export class Selecting {
  private held: Held | null = null;
  private pointed: { ref: string; spot: Spot } | null = null;
  private swung = false;

  constructor(private readonly sight: Sight) {}

  /**
   * A part is touched, or nothing is: the second touch on a door or drawer opens or shuts it, and
   * what of a double click comes after that (`again`) doesn't undo it, nor meets what stood behind.
   */
  touched(hit: Hit | null, again: boolean): void {
    this.pointed = null;
    if (again && this.swung) return;
    this.swung = hit !== null && hit.ref === state.selected.peek() && motionOf(hit.ref) !== null;
    if (!hit) return choose(null);
    if (this.swung) return swing(hit.ref);
    const piece = this.sight.stage.pieces.get(hit.ref)!;
    const point = hit.point.clone().applyMatrix4(piece.group.matrix.clone().invert());
    this.held = { ref: hit.ref, point };
    state.selected.value = hit.ref;
  }

  /** What the pointer is over. */
  hovered(spot: Spot | null): void {
    const hit = spot && this.sight.hit(spot);
    if (!hit && !this.pointed) return;
    this.pointed = spot && hit ? { ref: hit.ref, spot } : null;
    this.sight.stage.draw();
  }

  /** Go on to the next of the parts that are seen, or back. */
  step(by: 1 | -1): void {
    const refs = (state.model.peek()?.parts ?? [])
      .map((part) => part.ref)
      .filter((ref) => this.sight.stage.pieces.get(ref)?.group.visible);
    if (!refs.length) return;
    const at = refs.indexOf(state.selected.peek() ?? "");
    const next = at < 0 ? (by > 0 ? 0 : refs.length - 1) : (at + by + refs.length) % refs.length;
    state.selected.value = refs[next]!;
  }

  /** Words to parts; while one measures they would stand over the measures. */
  labels(): Label[] {
    if (state.measuring.peek()) return [];
    const selected = partOf(state.selected.peek());
    const pointed = this.pointed && partOf(this.pointed.ref);
    const labels: Label[] = [];
    if (this.pointed && pointed)
      labels.push(labelOf("pointed", pointed, [this.pointed.spot], "beside"));
    if (selected && selected !== pointed) {
      const spot = this.spotOf(selected.ref);
      if (spot) labels.push(labelOf("selected", selected, [spot], "beside"));
    }
    return labels;
  }

  /** Where the selected part was touched, or its middle. */
  private spotOf(ref: string): Spot | null {
    const piece = this.sight.stage.pieces.get(ref);
    if (!piece?.group.visible) return null;
    if (this.held?.ref !== ref) this.held = { ref, point: piece.box.getCenter(new Vector3()) };
    return this.sight.spot(this.held.point.clone().applyMatrix4(piece.group.matrix));
  }
}

/** A part as one says it: its ref, name and size. */
export function said(part: Part): string {
  return `${part.ref}, ${part.name}, ${sized(part)}`;
}

function sized(part: Part): string {
  return `${part.size} ${state.model.peek()?.unit ?? ""}`;
}

function partOf(ref: string | null): Part | null {
  return state.model.peek()?.parts.find((part) => part.ref === ref) ?? null;
}

function labelOf(key: string, part: Part, spots: Spot[], stands: Label["stands"]): Label {
  return { key, kind: "part", text: `${part.ref} ${part.name}\n${sized(part)}`, spots, stands };
}
