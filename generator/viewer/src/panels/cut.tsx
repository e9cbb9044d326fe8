// A cut through the unit: square to which side, and where.
import { useState } from "preact/hooks";

import type { Model } from "../document";
import * as state from "../state";
import { formatLength, INCH, readLength } from "../tools/lengths";

const AXES: readonly [axis: state.Axis, label: string, from: string][] = [
  [0, "Width", "left"],
  [1, "Depth", "front"],
  [2, "Height", "bottom"],
];
/** How far (mm) a cut goes at a time: 1 mm, or 1/16 in. */
const STEP = { mm: 1, in: INCH / 16 };
/** By so much (mm) a length may be less than its figure says. */
const ROUNDED = 0.2;

export function Cut() {
  const model = state.model.value;
  const cut = state.cut.value;
  if (!model) return null;
  const begin = (axis: state.Axis) =>
    (state.cut.value = { axis, at: (model.low[axis] + model.high[axis]) / 2 });
  return (
    <fieldset>
      <legend>Cut across the unit's</legend>
      <label>
        <input
          type="radio"
          name="cut"
          checked={cut === null}
          onChange={() => (state.cut.value = null)}
        />
        No cut
      </label>
      {AXES.map(([axis, label]) => (
        <label>
          <input
            type="radio"
            name="cut"
            checked={cut?.axis === axis}
            onChange={() => begin(axis)}
          />
          {label}
        </label>
      ))}
      {cut && <At model={model} cut={cut} />}
    </fieldset>
  );
}

function At({ model, cut }: { model: Model; cut: state.Cut }) {
  const { axis, at } = cut;
  const low = model.low[axis];
  const length = model.high[axis] - low;
  const figure = formatLength(at - low, model.unit);
  const from = `from the ${AXES[axis]![2]}`;
  const set = (mm: number) => (state.cut.value = { axis, at: low + mm });
  return (
    <div class="at">
      <Figure key={axis} figure={figure} unit={model.unit} length={length} from={from} set={set} />
      <input
        type="range"
        aria-label={`Place of the cut, ${from}`}
        aria-valuetext={`${figure} ${model.unit}`}
        min={0}
        max={length}
        step={STEP[model.unit]}
        value={at - low}
        onInput={(event) => set(event.currentTarget.valueAsNumber)}
      />
    </div>
  );
}

interface FigureProps {
  figure: string;
  unit: Model["unit"];
  /** mm, as is what `set` is given. */
  length: number;
  from: string;
  set: (mm: number) => void;
}

/** How far the cut goes from an edge, to be written. */
function Figure({ figure, unit, length, from, set }: FigureProps) {
  // Beside which figure something was written that can't be one.
  const [refused, setRefused] = useState("");
  const wrong = refused === figure;
  const take = (text: string) => {
    const mm = readLength(text, unit);
    const fits = mm !== null && mm <= length + ROUNDED;
    setRefused(fits ? "" : figure);
    if (fits && text !== figure) set(Math.min(mm, length));
  };
  return (
    <>
      <label>
        <input
          type="text"
          class="figure"
          aria-label={`Cut so far ${from}, in ${unit}`}
          aria-invalid={wrong}
          autocomplete="off"
          spellcheck={false}
          value={figure}
          onChange={(event) => take(event.currentTarget.value)}
        />
        {unit} {from}
      </label>
      <span role="status">{wrong && `Write 0 to ${formatLength(length, unit)} ${unit}.`}</span>
    </>
  );
}
