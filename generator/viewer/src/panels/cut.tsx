// A cut through the unit: square to which side, and where.
import * as state from "../state";

type Axis = 0 | 1 | 2;
const AXES: readonly [Axis, string][] = [
  [0, "Width"],
  [1, "Depth"],
  [2, "Height"],
];

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
