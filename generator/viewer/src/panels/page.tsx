// The whole page.
import { useEffect, useRef } from "preact/hooks";
import { effect } from "@preact/signals";

import { Stage } from "../stage/stage";
import * as state from "../state";

export function Page() {
  return (
    <main>
      <h1>{state.model.value?.title}</h1>
      {state.live.value === "gone" && <p role="alert">Nothing is served here any more.</p>}
      {state.troubles.value.map((each) => (
        <p role="alert">
          Line {each.line}, column {each.column}: {each.message}. {each.remedy}
        </p>
      ))}
      <label>
        Apart
        <input
          type="range"
          min="0"
          max="1"
          step="0.01"
          value={state.apart.value}
          onInput={(event) => (state.apart.value = event.currentTarget.valueAsNumber)}
        />
      </label>
      <p>{state.selected.value}</p>
      <Space />
    </main>
  );
}

function Space() {
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
