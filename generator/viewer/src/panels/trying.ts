// What is being tried on the sliders and in the fields, until the file says it.
import { effect, signal, untracked } from "@preact/signals";

import type { Nudge } from "../document";
import { wish } from "../socket";
import * as state from "../state";

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
}
const sending = new Map<string, Sending>();
const spans = new Map<string, { least: number; most: number; step: number }>();
let drags = 0;
const page = Math.random().toString(36).slice(2);

/** A hand is laid on a figure: all until it is let go is undone as one. */
export function begin(nudge: Nudge): void {
  const before = sending.get(nudge.key);
  clearTimeout(before?.timer);
  sending.set(nudge.key, { drag: `${page}-${drags++}`, sent: null, at: 0, timer: undefined });
}

/** A figure is tried; it is written now, or as soon as may be. */
export function tried(nudge: Nudge, text: string, number: number | null): void {
  if (!sending.has(nudge.key)) begin(nudge);
  put(nudge.key, { text, number, settled: false });
  const now = sending.get(nudge.key)!;
  const wait = now.at + OFTEN - performance.now();
  clearTimeout(now.timer);
  if (wait <= 0) send(nudge.key);
  else now.timer = window.setTimeout(() => send(nudge.key), wait);
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
      if (refused || !nudge || same) drop(key);
    }
  });
});

/** What a slider goes from and to: as first told, so that it stays under the hand. */
export function offered(nudge: Nudge): { least: number; most: number; step: number } {
  const before = spans.get(nudge.key);
  const number = nudge.number!;
  const kept = before && before.least <= number && number <= before.most;
  const step = before ? Math.min(before.step, nudge.step) : nudge.step;
  const now = kept ? { ...before, step } : nudge;
  spans.set(nudge.key, { least: now.least, most: now.most, step: now.step });
  return now;
}

const OWN_UNIT = /\s*(?:[a-z]+|["'′″’”]+)\s*$/i;
const BARE = /^[\s0-9./⁄¼-¾⅐-⅞-]+$/;

/** A figure without its unit, which stands beside it; whole where it is more than that. */
export function shown(nudge: Nudge): string {
  const figure = nudge.value.replace(OWN_UNIT, "");
  return BARE.test(figure) ? figure : nudge.value;
}

/** A slider's number as a maker writes it: inches in whole ones and a fraction. */
export function figure(number: number, unit: string): string {
  if (unit !== "in") return `${Number(number.toFixed(4))}`;
  const parts = Math.round(number * 64);
  const whole = Math.floor(parts / 64);
  let [over, under] = [parts % 64, 64];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  if (over === 0) return `${whole}`;
  return whole ? `${whole} ${over}/${under}` : `${over}/${under}`;
}

/** A figure with its unit, to be read out. */
export function said(nudge: Nudge, figure: string): string {
  return nudge.unit ? `${figure} ${nudge.unit}` : figure;
}
