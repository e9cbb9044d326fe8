// The tools' keys, while the canvas has the focus.
import { clear, type Selecting, swing } from "./selecting";
import type { Measuring } from "./measuring";
import * as state from "../state";

/** Let keys work the tools; `say` tells who can't see what they did.  The answer ends that. */
export function handleKeys(
  canvas: HTMLCanvasElement,
  selecting: Selecting,
  measuring: Measuring,
  say: (words: string) => void,
): () => void {
  const keys: Record<string, () => void> = {
    n: () => selecting.step(1),
    p: () => selecting.step(-1),
    o: () => swing(state.selected.peek()),
    Escape: () => {
      if (!state.measuring.peek()) clear();
      else if (!measuring.back()) state.measuring.value = false;
    },
  };
  const measures: Record<string, () => void> = {
    c: () => say(measuring.step(1)),
    C: () => say(measuring.step(-1)),
    Enter: () => measuring.enter(),
  };
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const act = (state.measuring.peek() && measures[event.key]) || keys[event.key];
    if (!act) return;
    event.preventDefault();
    act();
  };
  canvas.addEventListener("keydown", press);
  return () => canvas.removeEventListener("keydown", press);
}
