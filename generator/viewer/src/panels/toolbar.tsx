// What is done to the whole unit: views, apart, open, layers, cut, measure, dimensions.
import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";

import type { Layer } from "../document";
import * as state from "../state";
import type { ViewName } from "../state";
import { allOpen, turned } from "./choosing";
import { LAYERS, VIEWS } from "./words";

export function Views() {
  return (
    <div class="views" role="group" aria-label="Views">
      {(Object.keys(VIEWS) as ViewName[]).map((name) => (
        <button type="button" onClick={() => (state.look.value = { name })}>
          {VIEWS[name]}
        </button>
      ))}
    </div>
  );
}

export function Toolbar() {
  const model = state.model.value;
  const motions = model?.motions.length ?? 0;
  return (
    <div class="tools" role="group" aria-label="Tools">
      <label class="apart">
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
      {motions > 0 && (
        <>
          <button type="button" onClick={() => allOpen(true)}>
            Open all
          </button>
          <button type="button" onClick={() => allOpen(false)}>
            Close all
          </button>
        </>
      )}
      <Pop label="Layers">
        <Layers />
      </Pop>
      <Pop label="Cut">
        <Cut />
      </Pop>
      <button
        type="button"
        aria-pressed={state.measuring.value}
        onClick={() => (state.measuring.value = !state.measuring.value)}
      >
        Measure
      </button>
      <button
        type="button"
        aria-pressed={state.dimensioned.value}
        onClick={() => (state.dimensioned.value = !state.dimensioned.value)}
      >
        Dimensions
      </button>
    </div>
  );
}

/** A button with a leaf that opens above it; Escape shuts it. */
function Pop({ label, children }: { label: string; children: ComponentChildren }) {
  const details = useRef<HTMLDetailsElement>(null);
  const shut = (event: KeyboardEvent) => {
    if (event.key !== "Escape" || !details.current!.open) return;
    details.current!.open = false;
    details.current!.querySelector("summary")!.focus();
    event.stopPropagation();
  };
  return (
    <details class="pop" name="tools" ref={details} onKeyDown={shut}>
      <summary>{label}</summary>
      <div class="leaf">{children}</div>
    </details>
  );
}

function Layers() {
  const model = state.model.value;
  const there = (Object.keys(LAYERS) as Layer[]).filter((layer) =>
    layer === "fittings"
      ? model?.fittings.length
      : model?.parts.some((part) => part.layer === layer),
  );
  return (
    <fieldset>
      <legend>Shown</legend>
      {there.map((layer) => (
        <label>
          <input
            type="checkbox"
            checked={!state.hidden.value.has(layer)}
            onChange={() => (state.hidden.value = turned(state.hidden.value, layer))}
          />
          {LAYERS[layer]}
        </label>
      ))}
    </fieldset>
  );
}

const AXES = ["Across the width", "Across the depth", "Across the height"] as const;

function Cut() {
  const model = state.model.value;
  const cut = state.cut.value;
  if (!model) return null;
  const begin = (axis: 0 | 1 | 2) =>
    (state.cut.value = { axis, at: (model.low[axis] + model.high[axis]) / 2 });
  return (
    <fieldset>
      <legend>Cut through the unit</legend>
      <label>
        <input
          type="radio"
          name="cut"
          checked={cut === null}
          onChange={() => (state.cut.value = null)}
        />
        No cut
      </label>
      {AXES.map((label, axis) => (
        <label>
          <input
            type="radio"
            name="cut"
            checked={cut?.axis === axis}
            onChange={() => begin(axis as 0 | 1 | 2)}
          />
          {label}
        </label>
      ))}
      {cut && (
        <label class="at">
          At
          <input
            type="range"
            min={model.low[cut.axis]}
            max={model.high[cut.axis]}
            step="1"
            value={cut.at}
            onInput={(event) =>
              (state.cut.value = { ...cut, at: event.currentTarget.valueAsNumber })
            }
          />
        </label>
      )}
    </fieldset>
  );
}
