// What a touch anywhere on the page does: choose a part, light parts up, open doors and drawers.
import { effect } from "@preact/signals";

import * as state from "../state";

/** Choose a part and read of it; whoever lists parts stays where he is with `here`. */
export function choose(ref: string | null, here = false): void {
  const tab = state.tab.value;
  state.lit.value = [];
  state.pointed.value = null;
  state.selected.value = ref;
  if (here) state.tab.value = tab;
  else if (ref !== null) state.tab.value = "part";
}

/** A part that is chosen shows its tab; let go, the tab before it comes back. */
export function followChoice(): () => void {
  let before = state.tab.peek();
  let chosen = state.selected.peek();
  const stops = [
    effect(() => {
      if (state.tab.value !== "part") before = state.tab.value;
    }),
    effect(() => {
      if (state.selected.value === chosen) return;
      chosen = state.selected.value;
      if (chosen !== null) state.tab.value = "part";
      else if (state.tab.peek() === "part") state.tab.value = before;
    }),
  ];
  return () => stops.forEach((stop) => stop());
}

/** Light these parts up, or put them out where they are lit. */
export function light(refs: readonly string[]): void {
  state.pointed.value = null;
  state.lit.value = isLit(refs) ? [] : refs;
}

export function isLit(refs: readonly string[]): boolean {
  const now = state.lit.value;
  return refs.length > 0 && now.length === refs.length && refs.every((ref, at) => ref === now[at]);
}

/** A set with this in it, or without it where it was in it. */
export function turned<Each>(set: ReadonlySet<Each>, each: Each): ReadonlySet<Each> {
  const other = new Set(set);
  if (!other.delete(each)) other.add(each);
  return other;
}

export function allOpen(open: boolean): void {
  const motions = open ? (state.model.value?.motions ?? []) : [];
  state.open.value = new Set(motions.map((motion) => motion.label));
}
