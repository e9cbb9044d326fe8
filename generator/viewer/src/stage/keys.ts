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
export function handle(stage: Stage): () => void {
  const pressed = (event: KeyboardEvent) => {
    const key = KEYS[event.key];
    if (!key || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    key(stage.eye, event.shiftKey);
  };
  stage.canvas.addEventListener("keydown", pressed);
  return () => stage.canvas.removeEventListener("keydown", pressed);
}
