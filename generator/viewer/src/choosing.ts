// What a touch anywhere on the page does: choose a part, light parts up, open doors and drawers.
import { batch, effect } from "@preact/signals";

import type { Motion, Told } from "./document";
import * as state from "./state";

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
  batch(() => {
    state.pointed.value = null;
    state.lit.value = isLit(refs) ? [] : refs;
  });
}

/** Light the parts of a finding up and mark its place, or let go of both. */
export function point(finding: Told): void {
  const pointed = isPointed(finding);
  batch(() => {
    state.pointed.value = pointed ? null : finding;
    state.lit.value = pointed ? [] : finding.parts;
  });
}

/** Whether a finding is the one that is pointed at; told anew, it is the same if it says the same. */
export function isPointed({ rule, message, parts }: Told): boolean {
  const pointed = state.pointed.value;
  return pointed?.rule === rule && pointed.message === message && isLit(parts);
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

/** Open the door or drawer that a part is of, or shut it. */
export function swing(ref: string | null): void {
  const motion = motionOf(ref);
  if (motion) state.open.value = turned(state.open.value, motion.label);
}

/** The door or drawer that a part is of. */
export function motionOf(ref: string | null): Motion | null {
  return state.model.value?.motions.find((each) => each.refs.includes(ref ?? "")) ?? null;
}

export function allOpen(open: boolean): void {
  const motions = open ? (state.model.value?.motions ?? []) : [];
  state.open.value = new Set(motions.map((motion) => motion.label));
}
