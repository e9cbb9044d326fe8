// What was measured, in words, over the picture: so the unit stands still while one measures.
import * as state from "../state";

export function Measured() {
  const measured = state.measured.value;
  if (measured.length === 0)
    return state.measuring.value ? (
      <div class="measured">
        <p role="status">Touch two points: corners, edges or faces.</p>
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

/** What the dimensions in the picture are of. */
export function Dimensioned() {
  const model = state.model.value;
  // A part that is chosen has its own, and taken apart the unit has none.
  const own = state.selected.value || state.apart.value > 0;
  if (!state.dimensioned.value || own || !model || !state.dimensions.value) return null;
  const framed = model.parts.some((each) => each.layer === "frame");
  return (
    <div class="dimensioned">
      <p>
        In {model.unit === "mm" ? "millimetres" : "inches"}: overall, and clear between the boards
        {framed && ", behind the face frame"}
      </p>
    </div>
  );
}
