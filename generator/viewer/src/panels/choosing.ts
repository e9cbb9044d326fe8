// What a touch anywhere on the page does: choose a part, light parts up, open doors and drawers.
import * as state from "../state";

/** Choose a part; whoever lists parts stays where he is with `here`. */
export function choose(ref: string | null, here = false): void {
  const tab = state.tab.value;
  state.lit.value = [];
  state.selected.value = ref;
  if (here) state.tab.value = tab;
}

/** Light these parts up, or put them out where they are lit. */
export function light(refs: readonly string[]): void {
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
