// What one does at the unit itself.  Each tool follows the signals of the page's state and says,
// frame by frame, which words stand over the canvas.
import { effect } from "@preact/signals";

import type { Stage } from "../stage/stage";
import * as state from "../state";
import { Labels } from "./labels";
import { clear, said, Selecting, swing } from "./selecting";
import { Sight } from "./sight";
import { hearTouches } from "./touching";

/** Set the tools to work on a stage, their words in a layer over its canvas. */
export function tools(stage: Stage, layer: HTMLElement): () => void {
  const sight = new Sight(stage);
  const labels = new Labels(layer);
  const selecting = new Selecting(sight);
  const heard = document.createElement("p");
  heard.className = "heard";
  heard.role = "status";
  layer.append(heard);

  const keys: Record<string, () => void> = {
    n: () => selecting.step(1),
    p: () => selecting.step(-1),
    o: () => swing(state.selected.peek()),
    Escape: clear,
  };
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const act = keys[event.key];
    if (!act) return;
    event.preventDefault();
    act();
  };
  stage.canvas.addEventListener("keydown", press);

  const stops = [
    hearTouches(stage.canvas, {
      touched: (spot) => selecting.touched(sight.hit(spot)),
      hovered: (spot) => selecting.hovered(spot),
    }),
    stage.onDraw(() => labels.place(selecting.labels())),
    effect(() => {
      const part = state.model.value?.parts.find((each) => each.ref === state.selected.value);
      heard.textContent = part ? said(part) : "";
      stage.draw();
    }),
    () => stage.canvas.removeEventListener("keydown", press),
    () => heard.remove(),
    () => labels.clear(),
  ];
  return () => stops.forEach((stop) => stop());
}
