// What one does at the unit itself.  Each tool follows the signals of the page's state, and says in
// each frame which lines and words stand over the canvas.
import { effect } from "@preact/signals";

import * as state from "../state";
import { Cutting } from "./cutting";
import { Dimensioning } from "./dimensioning";
import { Ink } from "./ink";
import { workByKeys } from "./keys";
import { Labels } from "./labels";
import { Measuring } from "./measuring";
import { Revealing } from "./revealing";
import { said, Selecting } from "./selecting";
import type { Sight } from "./sight";
import { hearTouches } from "./touching";

/** Set the tools to work on a stage in sight, their words in a layer over its canvas. */
export function tools(sight: Sight, layer: HTMLElement): () => void {
  const { stage } = sight;
  const ink = new Ink(layer);
  const labels = new Labels(layer);
  const selecting = new Selecting(sight);
  const measuring = new Measuring(sight);
  const cutting = new Cutting(sight);
  const dimensioning = new Dimensioning(sight);
  const revealing = new Revealing(sight);
  const { say, remove } = voice(layer);

  const stops = [
    hearTouches(stage.canvas, {
      touched(spot, by, again) {
        if (state.measuring.peek()) measuring.touched(spot, by);
        else selecting.touched(sight.hit(spot), again);
      },
      hovered(spot) {
        const tool = state.measuring.peek() ? measuring : selecting;
        tool.hovered(spot);
      },
    }),
    workByKeys(stage.canvas, selecting, measuring, say),
    stage.onDraw(() => {
      cutting.frame();
      ink.begin();
      const all = [measuring.labels(ink), revealing.labels(), selecting.labels()];
      labels.place([...all.flat(), ...dimensioning.labels()], ink);
      ink.end();
    }),
    stage.onMove(() => {
      cutting.renew();
      dimensioning.renew();
    }),
    effect(() => {
      cutting.set(state.cut.value);
      dimensioning.renew();
    }),
    effect(() => stage.surround(dimensioning.reach())),
    effect(() => revealing.reveal(state.lit.value)),
    effect(() => {
      const part = state.model.value?.parts.find((each) => each.ref === state.selected.value);
      say(part ? said(part) : "");
      stage.draw();
    }),
    effect(() => {
      if (state.model.value) measuring.renew();
    }),
    effect(() => {
      stage.canvas.classList.toggle("measuring", state.measuring.value);
      selecting.hovered(null);
      if (state.measuring.value) measuring.hovered(null);
      else measuring.stop();
    }),
    effect(() => {
      void [state.measures.value, state.pointed.value];
      void [state.dimensioned.value, state.dimensions.value];
      stage.draw();
    }),
    remove,
    () => cutting.dispose(),
    () => dimensioning.stop(),
    () => ink.remove(),
    () => labels.clear(),
  ];
  return () => stops.forEach((stop) => stop());
}

/** Says to those who can't see it what is done at the unit (WAI-ARIA 1.2: status). */
function voice(layer: HTMLElement): { say: (words: string) => void; remove: () => void } {
  const heard = document.createElement("p");
  heard.className = "heard";
  heard.role = "status";
  layer.append(heard);
  return { say: (words) => (heard.textContent = words), remove: () => heard.remove() };
}
