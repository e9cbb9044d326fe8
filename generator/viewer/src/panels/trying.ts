// What is being tried on the sliders and in the fields, until the file says it.
import { effect, signal, untracked } from "@preact/signals";

import type { Nudge } from "../document";
import { wish } from "../socket";
import * as state from "../state";
import { shown } from "./written";

/** A figure as a hand has it: its text, and its number where it is on a slider. */
export interface Draft {
  text: string;
  number: number | null;
  /** Whether the hand is off it. */
  settled: boolean;
}

export const drafts = signal<ReadonlyMap<string, Draft>>(new Map());

/** The file is written at most so often (ms) while a slider is moved. */
const OFTEN = 150;
/** So long (ms) the file has to say what was tried, before what it says is shown again. */
const PATIENCE = 3000;

interface Sending {
  drag: string;
  sent: string | null;
  at: number;
  timer: number | undefined;
  /** Whether it was refused: until the hand is laid on anew, nothing more is sent. */
  over: boolean;
}
const sending = new Map<string, Sending>();
let drags = 0;
const page = Math.random().toString(36).slice(2);

/** A hand is laid on a figure: all until it is let go is undone as one. */
export function begin(nudge: Nudge): void {
  const before = sending.get(nudge.key);
  clearTimeout(before?.timer);
  const drag = `${page}-${drags++}`;
  sending.set(nudge.key, { drag, sent: null, at: 0, timer: undefined, over: false });
}

/** A figure is tried; it is written now, or as soon as may be.  Whether it is: not while a hand still holds what was
 * refused. */
export function tried(nudge: Nudge, text: string, number: number | null): boolean {
  if (!sending.has(nudge.key)) begin(nudge);
  const now = sending.get(nudge.key)!;
  if (now.over) return false;
  put(nudge.key, { text, number, settled: false });
  const wait = now.at + OFTEN - performance.now();
  clearTimeout(now.timer);
  if (wait <= 0) send(nudge.key);
  else now.timer = window.setTimeout(() => send(nudge.key), wait);
  return true;
}

/** The hand is off: the last figure is written, whatever came before it. */
export function letGo(nudge: Nudge): void {
  const draft = drafts.value.get(nudge.key);
  if (!draft) return;
  put(nudge.key, { ...draft, settled: true });
  clearTimeout(sending.get(nudge.key)?.timer);
  send(nudge.key);
  window.setTimeout(() => drop(nudge.key, draft.text), PATIENCE);
}

/** A figure is being written in its field: nothing is sent yet; null gives it up. */
export function typed(nudge: Nudge, text: string | null): void {
  if (text === null) forget(nudge.key);
  else put(nudge.key, { text, number: null, settled: false });
}

/** What was written in a field is meant. */
export function enter(nudge: Nudge): void {
  const draft = drafts.value.get(nudge.key);
  if (!draft || draft.settled) return;
  const text = draft.text.trim();
  if (text === "" || text === shown(nudge)) {
    // What was refused before isn't there any more.
    state.refused.value = "";
    return forget(nudge.key);
  }
  begin(nudge);
  tried(nudge, text, null);
  letGo(nudge);
}

function send(key: string): void {
  const now = sending.get(key)!;
  const text = drafts.value.get(key)?.text;
  if (text === undefined || text === now.sent) return;
  now.sent = text;
  now.at = performance.now();
  state.refused.value = "";
  wish({ kind: "nudge", key, value: text, version: state.figured.value, drag: now.drag });
}

function put(key: string, draft: Draft): void {
  drafts.value = new Map(drafts.value).set(key, draft);
}

function drop(key: string, text?: string): void {
  const draft = drafts.peek().get(key);
  if (draft?.settled && (text === undefined || draft.text === text)) forget(key);
}

function forget(key: string): void {
  const rest = new Map(drafts.peek());
  rest.delete(key);
  drafts.value = rest;
}

/** Let the file say what a figure is, once it says what was tried or refused it. */
effect(() => {
  const refused = state.refused.value !== "";
  const nudges = new Map(state.nudges.value.map((nudge) => [nudge.key, nudge]));
  untracked(() => {
    for (const [key, draft] of drafts.value) {
      const nudge = nudges.get(key);
      const same = nudge && (shown(nudge) === draft.text || nudge.number === draft.number);
      if (refused && draft.number !== null) giveUp(key);
      else if (refused || !nudge || same) drop(key);
    }
  });
});

/** What is on a slider was refused: the file's figure is shown, though the hand may still be on it. */
function giveUp(key: string): void {
  const now = sending.get(key)!;
  clearTimeout(now.timer);
  now.over = true;
  forget(key);
}
