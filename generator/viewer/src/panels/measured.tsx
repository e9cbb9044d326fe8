// What was measured, in words, over the picture: so the unit stands still while one measures.
import * as state from "../state";

export function Measured() {
  const measured = state.measured.value;
  const next = asked(measured.length);
  if (measured.length === 0 && next === "") return null;
  return (
    <div class="measured">
      <p role="status">{next}</p>
      {measured.length > 0 && <List measured={measured} />}
    </div>
  );
}

function List({ measured }: { measured: readonly state.Measured[] }) {
  return (
    <>
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
    </>
  );
}

/** What is to be touched now; nothing once it is known how. */
function asked(measured: number): string {
  if (!state.measuring.value) return "";
  if (state.held.value) return `From ${state.held.value}: touch the second point.`;
  return measured === 0 ? "Touch two points: corners, edges or faces." : "";
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
