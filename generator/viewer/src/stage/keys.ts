// The canvas's keys, for who has no mouse; they work while it has the focus.
import type { Eye } from "./eye";
import type { Stage } from "./stage";

/** Degrees a key turns by, shares of the picture it moves by, and times it zooms by. */
const TURN = 7.5;
const PAN = 0.06;
const ZOOM = 1.15;

const KEYS: Readonly<Record<string, (eye: Eye, shift: boolean) => void>> = {
  ArrowLeft: (eye, shift) => (shift ? eye.pan(-PAN, 0) : eye.turn(-TURN, 0)),
  ArrowRight: (eye, shift) => (shift ? eye.pan(PAN, 0) : eye.turn(TURN, 0)),
  ArrowUp: (eye, shift) => (shift ? eye.pan(0, PAN) : eye.turn(0, TURN)),
  ArrowDown: (eye, shift) => (shift ? eye.pan(0, -PAN) : eye.turn(0, -TURN)),
  "+": (eye) => eye.zoom(ZOOM),
  "=": (eye) => eye.zoom(ZOOM),
  "-": (eye) => eye.zoom(1 / ZOOM),
  "0": (eye) => eye.frame(),
  Home: (eye) => eye.frame(),
};

/** Let keys turn what the stage shows; the answer ends that. */
export function turnByKeys({ canvas, eye }: Stage): () => void {
  return hearKeys(canvas, ({ key, shiftKey }) => {
    const act = KEYS[key];
    return act && (() => act(eye, shiftKey));
  });
}

/** Do what a key is for, if it is for anything, and nothing else then; the answer ends that. */
export function hearKeys(
  canvas: HTMLCanvasElement,
  actOf: (event: KeyboardEvent) => (() => void) | undefined,
): () => void {
  const pressed = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const act = actOf(event);
    if (!act) return;
    event.preventDefault();
    act();
  };
  canvas.addEventListener("keydown", pressed);
  return () => canvas.removeEventListener("keydown", pressed);
}
