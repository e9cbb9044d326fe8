// What is done to the whole unit: views, apart, open, layers, cut, measure, dimensions.
import type { Signal } from "@preact/signals";

import { allOpen } from "../choosing";
import * as state from "../state";
import type { ViewName } from "../state";
import { Cut } from "./cut";
import { Layers } from "./layers";
import { Leaf } from "./leaf";
import { VIEWS } from "./words";

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
  const motions = state.model.value?.motions.length ?? 0;
  // The room's lines are an extra: without them nothing of the unit is missing.
  const off = [...state.hidden.value].filter((layer) => layer !== "room").length;
  return (
    <div class="tools" role="group" aria-label="Tools">
      <label class="apart">
        Apart
        <input
          type="range"
          min={0}
          max={1}
          step={0.01}
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
      <Leaf label={off > 0 ? `Layers, ${off} off` : "Layers"} on={off > 0}>
        <Layers />
      </Leaf>
      <Leaf label="Cut" on={state.cut.value !== null}>
        <Cut />
      </Leaf>
      <Switch label="Measure" on={state.measuring} />
      <Switch label="Dimensions" on={state.dimensioned} />
    </div>
  );
}

function Switch({ label, on }: { label: string; on: Signal<boolean> }) {
  return (
    <button type="button" aria-pressed={on.value} onClick={() => (on.value = !on.value)}>
      {label}
    </button>
  );
}
