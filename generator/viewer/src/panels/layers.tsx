// What is shown and what isn't.
import { turned } from "../choosing";
import type { Layer } from "../document";
import * as state from "../state";
import { LAYERS } from "./words";

export function Layers() {
  const model = state.model.value;
  if (!model) return null;
  const there = (Object.keys(LAYERS) as Layer[]).filter((layer) =>
    layer === "fittings" || layer === "room"
      ? model[layer].length > 0
      : model.parts.some((part) => part.layer === layer),
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
