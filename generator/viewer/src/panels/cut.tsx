// A cut through the unit: square to which side, and where.
import type { Model } from "../document";
import * as state from "../state";
import { formatLength } from "../tools/lengths";

type Axis = 0 | 1 | 2;
const AXES: readonly [axis: Axis, label: string, from: string][] = [
  [0, "Width", "left"],
  [1, "Depth", "front"],
  [2, "Height", "bottom"],
];
/** How far (mm) a cut goes at a time: 1 mm, or 1/16 in. */
const STEP = { mm: 1, in: 25.4 / 16 };

export function Cut() {
  const model = state.model.value;
  const cut = state.cut.value;
  if (!model) return null;
  const begin = (axis: Axis) =>
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

function At({ model, cut }: { model: Model; cut: { axis: Axis; at: number } }) {
  const low = model.low[cut.axis];
  const said = `${formatLength(cut.at - low, model.unit)} ${model.unit}`;
  const from = `from the ${AXES[cut.axis]![2]}`;
  return (
    <label class="at">
      <span>
        {said} {from}
      </span>
      <input
        type="range"
        aria-label={`Place of the cut, ${from}`}
        aria-valuetext={said}
        min={0}
        max={model.high[cut.axis] - low}
        step={STEP[model.unit]}
        value={cut.at - low}
        onInput={(event) =>
          (state.cut.value = { ...cut, at: low + event.currentTarget.valueAsNumber })
        }
      />
    </label>
  );
}
