// The tools' keys, while the canvas has the focus.
import { choose, swing } from "../choosing";
import { hearKeys } from "../stage/keys";
import * as state from "../state";
import type { Measuring } from "./measuring";
import type { Selecting } from "./selecting";

/** Let keys work the tools; `say` tells who can't see what they did.  The answer ends that. */
export function workByKeys(
  canvas: HTMLCanvasElement,
  selecting: Selecting,
  measuring: Measuring,
  say: (words: string) => void,
): () => void {
  const always: Record<string, () => void> = {
    n: () => selecting.step(1),
    p: () => selecting.step(-1),
    o: () => swing(state.selected.peek()),
    Escape: () => {
      if (!state.measuring.peek()) choose(null);
      else if (!measuring.back()) state.measuring.value = false;
    },
  };
  const whileMeasuring: Record<string, () => void> = {
    c: () => say(measuring.step(1)),
    C: () => say(measuring.step(-1)),
    Enter: () => measuring.enter(),
  };
  return hearKeys(
    canvas,
    ({ key }) => (state.measuring.peek() ? whileMeasuring[key] : undefined) ?? always[key],
  );
}
