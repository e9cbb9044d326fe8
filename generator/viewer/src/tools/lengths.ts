// Lengths as the maker reads them: agrees with `format_length` of rodwright/lengths.py.

export type Unit = "mm" | "in";

/** mm: the inch is exactly 25.4 mm. */
export const INCH = 25.4;
/** Inches are shown to so many parts of one. */
const INCH_PARTS = 64;
/** Lengths (mm) that differ by no more are equal. */
const NOISE = 1e-6;
/** How far (mm) points that come to the page as 32-bit numbers may be off. */
const PACKING = 0.001;

/** A length in mm as text in a unit, without the unit: one decimal, or a fraction of an inch. */
export function formatLength(mm: number, unit: Unit): string {
  const count = steps(mm, unit);
  const sign = count < 0 ? "-" : "";
  const amount = Math.abs(count);
  if (unit === "mm") {
    const tenths = amount % 10;
    return `${sign}${Math.floor(amount / 10)}${tenths ? `.${tenths}` : ""}`;
  }
  const whole = Math.floor(amount / INCH_PARTS);
  const rest = amount % INCH_PARTS;
  if (!rest) return `${sign}${whole}`;
  const common = divisor(rest, INCH_PARTS);
  const fraction = `${rest / common}/${INCH_PARTS / common}`;
  return whole ? `${sign}${whole} ${fraction}` : `${sign}${fraction}`;
}

const SAID =
  /^(?:(\d+(?:[.,]\d*)?|[.,]\d+)|(?:(\d+)[\s-]+)?(\d+)\s*[/⁄]\s*(\d+))\s*(mm|in|["″])?$/i;

/** A length (mm) as a maker writes it, in this unit unless another is said; null if it is none. */
export function readLength(text: string, unit: Unit): number | null {
  const found = SAID.exec(text.trim());
  if (!found) return null;
  const [, plain, whole, over, under, own] = found;
  const amount = plain
    ? Number(plain.replace(",", "."))
    : Number(whole ?? 0) + Number(over) / Number(under);
  if (!Number.isFinite(amount)) return null;
  const inInches = own ? own.toLowerCase() !== "mm" : unit === "in";
  return inInches ? amount * INCH : amount;
}

/** A length measured in the picture, 0 or more: what is a half but for packing goes up, too. */
export function formatMeasured(mm: number, unit: Unit): string {
  return formatLength(mm + PACKING, unit);
}

/** A length in the steps that are shown, to the nearest; halves away from zero. */
function steps(mm: number, unit: Unit): number {
  const perStep = unit === "mm" ? 10 : INCH_PARTS / INCH;
  const count = Math.floor((Math.abs(mm) + NOISE) * perStep + 0.5);
  return mm < 0 && count ? -count : count;
}

function divisor(a: number, b: number): number {
  return b ? divisor(b, a % b) : a;
}
