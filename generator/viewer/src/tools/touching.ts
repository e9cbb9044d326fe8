// A touch or click on the canvas, told from a drag that turns the unit.
import type { Spot } from "./spots";

export type By = "mouse" | "touch";

/** Pixels a pointer may stray in a touch: a finger rolls more than a mouse. */
const STRAY = { mouse: 4, touch: 10 };
/** Milliseconds and pixels within which two touches are a double click: common practice, no source. */
const TWICE = { within: 500, stray: 20 };

export interface Heard {
  /** `again`: it is the second of a double click, or one of more in a row. */
  touched(spot: Spot, by: By, again: boolean): void;
  /** The pointer moves over the canvas with nothing pressed, or has left it. */
  hovered(spot: Spot | null): void;
}

/** Hear touches until the returned function is called. */
export function hearTouches(canvas: HTMLCanvasElement, heard: Heard): () => void {
  const down = new Set<number>();
  let start: (Spot & { by: By }) | null = null;
  let last: (Spot & { at: number }) | null = null;

  const listen = {
    pointerdown(event: PointerEvent) {
      heard.hovered(null);
      down.add(event.pointerId);
      // A second finger makes it a pinch.
      start = down.size === 1 && event.button === 0 ? { ...spotOf(event), by: byOf(event) } : null;
    },
    pointermove(event: PointerEvent) {
      if (start) {
        const { x, y } = spotOf(event);
        if (Math.hypot(x - start.x, y - start.y) > STRAY[start.by]) start = null;
      } else if (!event.buttons && byOf(event) === "mouse") heard.hovered(spotOf(event));
    },
    pointerup(event: PointerEvent) {
      down.delete(event.pointerId);
      const touched = start;
      start = null;
      if (!touched) return;
      const now = { ...touched, at: event.timeStamp };
      const again = last !== null && isTwice(last, now);
      last = now;
      heard.touched(touched, touched.by, again);
    },
    pointercancel(event: PointerEvent) {
      down.delete(event.pointerId);
      start = null;
    },
    pointerleave() {
      heard.hovered(null);
    },
  };
  const entries = Object.entries(listen) as [string, (event: Event) => void][];
  for (const [name, hear] of entries) canvas.addEventListener(name, hear);
  return () => {
    for (const [name, hear] of entries) canvas.removeEventListener(name, hear);
  };

  function spotOf(event: PointerEvent): Spot {
    const { left, top } = canvas.getBoundingClientRect();
    return { x: event.clientX - left, y: event.clientY - top };
  }
}

function isTwice(one: Spot & { at: number }, other: Spot & { at: number }): boolean {
  const stray = Math.hypot(other.x - one.x, other.y - one.y);
  return other.at - one.at < TWICE.within && stray < TWICE.stray;
}

function byOf(event: PointerEvent): By {
  return event.pointerType === "touch" ? "touch" : "mouse";
}
