// What was measured, in words, over the picture: so the unit stands still while one measures.
import * as state from "../state";

export function Measured() {
  const measured = state.measured.value;
  if (measured.length === 0)
    return state.measuring.value ? (
      <div class="measured">
        <p role="status">
          {state.held.value
            ? `From ${state.held.value}: touch the second point.`
            : "Touch two points: corners, edges or faces."}
        </p>
      </div>
    ) : null;
  return (
    <div class="measured">
      <ul role="status">
        {measured.map(({ from, to, mm, distance, along }) => (
          <li>
            <data value={mm.toFixed(4)}>{distance}</data> from {from} to {to}: width {along.width},
            depth {along.depth}, height {along.height}
          </li>
        ))}
      </ul>
      <button type="button" onClick={() => (state.measures.value = [])}>
        Clear
      </button>
    </div>
  );
}

export function Dimensioned() {
  const words = dimensionedWords();
  return (
    words && (
      <div class="dimensioned">
        <p>{words}</p>
      </div>
    )
  );
}

/** What the unit's dimensions in the picture are of; null where there are none. */
export function dimensionedWords(): string | null {
  const model = state.model.value;
  // A part that is chosen has its own, and taken apart the unit has none.
  const own = state.selected.value || state.apart.value > 0;
  if (!state.dimensioned.value || own || !model || !state.dimensions.value) return null;
  const unit = model.unit === "mm" ? "millimetres" : "inches";
  const behind = model.parts.some((each) => each.layer === "frame")
    ? ", behind the face frame"
    : "";
  return `In ${unit}: overall, and clear between the boards${behind}`;
}
