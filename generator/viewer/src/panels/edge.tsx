// The edge between the unit and the panel beside it: dragged, or moved by keys, as the WAI-ARIA
// Authoring Practices have a window splitter.
import { useLayoutEffect, useRef } from "preact/hooks";

import * as state from "../state";

/** Per cent of the page's width: what a panel may take, and how far a key moves its edge. */
const [LEAST, MOST, STEP] = [20, 60, 2];

export function Edge() {
  const held = useRef(false);
  const share = state.share.value;
  useLayoutEffect(
    () => document.documentElement.style.setProperty("--side", `${share}vw`),
    [share],
  );
  const drag = (event: PointerEvent) => {
    if (held.current) set(100 * (1 - event.clientX / document.documentElement.clientWidth));
  };
  const hold = (event: PointerEvent) => {
    (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
    held.current = true;
  };
  const step = (event: KeyboardEvent) => {
    const to = stepped(event.key, share);
    if (to === null) return;
    event.preventDefault();
    set(to);
  };
  return (
    <div
      class="edge"
      role="separator"
      tabIndex={0}
      aria-label="How wide the panel is"
      aria-orientation="vertical"
      aria-controls="panel"
      aria-valuemin={LEAST}
      aria-valuemax={MOST}
      aria-valuenow={Math.round(share)}
      aria-valuetext={`${Math.round(share)} % of the page`}
      title="Drag, or use the left and right arrow keys"
      onPointerDown={hold}
      onPointerMove={drag}
      onLostPointerCapture={() => (held.current = false)}
      onDblClick={() => set(state.USUAL_SHARE)}
      onKeyDown={step}
    />
  );
}

function set(share: number): void {
  state.share.value = Math.min(Math.max(share, LEAST), MOST);
}

/** The edge goes where the arrow points: to the left the panel grows. */
function stepped(key: string, share: number): number | null {
  switch (key) {
    case "ArrowLeft":
      return share + STEP;
    case "ArrowRight":
      return share - STEP;
    case "Home":
      return LEAST;
    case "End":
      return MOST;
    default:
      return null;
  }
}
