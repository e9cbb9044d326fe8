// Figures as they are written in the file, and as a slider writes them.
import type { Nudge } from "../document";
import { formatLength, INCH } from "../tools/lengths";

interface Span {
  unit: string;
  least: number;
  most: number;
  step: number;
}
type Feet = Nudge["feet"];

const spans = new Map<string, Span>();
/** What a slider wrote last, and how feet are written there: below a foot, the file doesn't say it. */
const ours = new Map<string, { text: string; feet: Feet }>();

/** What a slider goes from and to: as first told in this unit, so that it stays under the hand. */
export function offered(nudge: Nudge): Span {
  const last = spans.get(nudge.key);
  const own = isOurs(nudge);
  const same = last?.unit === nudge.unit || (own && last && isInches(last) && isInches(nudge));
  const before = same ? last : undefined;
  const number = nudge.number!;
  const kept = before && before.least <= number && number <= before.most;
  const finer = before && !own ? Math.min(before.step, nudge.step) : before?.step;
  const now = kept ? { ...before, step: finer! } : { ...nudge, step: finer ?? nudge.step };
  spans.set(nudge.key, { unit: nudge.unit, least: now.least, most: now.most, step: now.step });
  return now;
}

/** Whether numbers are inches: those of feet are, and below a foot they are written so. */
function isInches({ unit }: { unit: string }): boolean {
  return unit === "ft" || unit === "in";
}

const OWN_UNIT = /\s*(?:[a-z]+|["'′″’”]+)\s*$/i;
const BARE = /^[\s0-9./⁄¼-¾⅐-⅞-]+$/;

/** A figure without its unit, which stands beside it; whole where it is more than that. */
export function shown(nudge: Nudge): string {
  return isWhole(nudge) ? nudge.value : bare(nudge.value);
}

function bare(value: string): string {
  const figure = value.replace(OWN_UNIT, "");
  return BARE.test(figure) ? figure : value;
}

/** What stands beside a figure: its unit, unless that is written with it. */
export function beside(nudge: Nudge, figure: string): string {
  if (nudge.unit === "share") return figure === "1" ? "share" : "shares";
  return isWhole(nudge) ? "" : nudge.unit;
}

/** Whether a figure is shown with its units, feet and inches. */
export function isWhole(nudge: Nudge): boolean {
  return feetOf(nudge) !== null;
}

/** A slider's number as the file has such figures. */
export function figured(nudge: Nudge, number: number): string {
  const feet = feetOf(nudge);
  if (feet) return inFeet(number, feet);
  if (nudge.unit === "in") return formatLength(number * INCH, "in");
  return `${Number(number.toFixed(4))}`;
}

/** A slider wrote a figure. */
export function wrote(nudge: Nudge, text: string): void {
  ours.set(nudge.key, { text, feet: feetOf(nudge) });
}

function feetOf(nudge: Nudge): Feet {
  return nudge.feet ?? (isOurs(nudge) ? ours.get(nudge.key)!.feet : null);
}

function isOurs(nudge: Nudge): boolean {
  const last = ours.get(nudge.key)?.text;
  return last === nudge.value || last === bare(nudge.value);
}

/** Inches as feet and inches; below a foot in inches alone. */
function inFeet(inches: number, [foot, between, inch]: NonNullable<Feet>): string {
  const feet = Math.floor(inches / 12 + 1e-9);
  const rest = formatLength((inches - 12 * feet) * INCH, "in");
  if (!feet) return `${rest}${inch}`;
  const whole = `${feet}${foot.replace(/foot|feet/, feet === 1 ? "foot" : "feet")}`;
  return rest === "0" ? whole : `${whole}${between}${rest}${inch}`;
}

/** A figure with its unit, to be read out. */
export function said(nudge: Nudge, figure: string): string {
  const unit = beside(nudge, figure);
  return unit ? `${figure} ${unit}` : figure;
}
