// All parts, by layer; up and down go through them.
import { useEffect, useRef } from "preact/hooks";

import { choose } from "../choosing";
import type { Layer, Part } from "../document";
import * as state from "../state";
import { LAYERS } from "./words";

export function Parts() {
  const model = state.model.value;
  if (!model) return <p>Nothing yet.</p>;
  const told = model.parts.filter((part) => part.told);
  const shown = told.filter((part) => matches(part, state.filter.value));
  const layers = (Object.keys(LAYERS) as Layer[])
    .map((layer) => ({ layer, parts: shown.filter((part) => part.layer === layer) }))
    .filter(({ parts }) => parts.length > 0);
  return (
    <>
      <p class="filter">
        <label for="filter">Find</label>
        <input
          id="filter"
          type="search"
          value={state.filter.value}
          onInput={(event) => (state.filter.value = event.currentTarget.value)}
        />
        <span role="status" class="small">
          {shown.length} of {told.length} parts
        </span>
      </p>
      {layers.length > 0 && <List layers={layers} />}
    </>
  );
}

/** Whether each word of a text is in what a part is called or made of. */
function matches(part: Part, text: string): boolean {
  const said = [part.ref, part.name, part.stock, LAYERS[part.layer]].join(" ").toLowerCase();
  return text
    .toLowerCase()
    .split(/\s+/)
    .every((word) => said.includes(word));
}

function List({ layers }: { layers: readonly { layer: Layer; parts: Part[] }[] }) {
  const list = useRef<HTMLDivElement>(null);
  const order = layers.flatMap(({ parts }) => parts.map((part) => part.ref));
  const at = state.selected.value;
  // A client finds parts by name, and reads a size at a touch: this is no list to cut by.
  const live = state.live.value !== "sent";
  useEffect(() => {
    list.current!.querySelector("[aria-selected=true]")?.scrollIntoView({ block: "nearest" });
  }, [at]);
  const step = (event: KeyboardEvent) => {
    const here = at === null ? -1 : order.indexOf(at);
    const to: Record<string, number> = {
      ArrowDown: Math.min(here + 1, order.length - 1),
      ArrowUp: Math.max(here - 1, 0),
      Home: 0,
      End: order.length - 1,
    };
    if (event.key in to) choose(order[to[event.key]!]!, true);
    else if (event.key === "Enter" && here >= 0) state.tab.value = "part";
    else return;
    event.preventDefault();
  };
  return (
    <div
      class="parts"
      role="listbox"
      aria-label="Parts"
      tabIndex={0}
      ref={list}
      aria-activedescendant={at !== null && order.includes(at) ? `part-${at}` : undefined}
      onKeyDown={step}
    >
      {layers.map(({ layer, parts }) => (
        <div role="group" aria-labelledby={`layer-${layer}`} key={layer}>
          <div class="heading" id={`layer-${layer}`} role="presentation">
            {LAYERS[layer]}
          </div>
          {parts.map((part) => (
            <div
              role="option"
              key={part.ref}
              id={`part-${part.ref}`}
              aria-selected={part.ref === at}
              onClick={() => choose(part.ref, true)}
              onDblClick={() => choose(part.ref)}
            >
              <span class="ref">{part.ref}</span>
              <span>
                {part.name}
                {state.aside.value.has(part.ref) && " (out of sight)"}
              </span>
              {live && <span class="size">{part.size}</span>}
            </div>
          ))}
        </div>
      ))}
    </div>
  );
}
