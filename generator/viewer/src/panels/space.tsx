// The canvas, and what the stage follows.
import { useEffect, useRef } from "preact/hooks";
import { effect } from "@preact/signals";

import { Stage } from "../stage/stage";
import * as state from "../state";

export function Space() {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const stage = new Stage(canvas.current!);
    // Tests ask the stage where things are.
    Object.assign(window, { stage });
    const stops = [
      effect(() => {
        if (state.model.value) stage.show(state.model.value);
      }),
      effect(() => {
        void state.model.value;
        stage.pull(state.sections.value.apart, state.apart.value);
      }),
    ];
    return () => stops.forEach((stop) => stop());
  }, []);
  return <canvas ref={canvas} aria-label="The unit in space" />;
}
