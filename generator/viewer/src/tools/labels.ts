// Words over the canvas: each frame they are put beside what they are of, so that none lies on
// another or is cut off; those that find no place aren't shown.
import type { Ink } from "./ink";
import { distance, shifted, type Spot, squareTo } from "./spots";

export interface Label {
  /** Names it from frame to frame. */
  key: string;
  kind: "part" | "dimension" | "measure" | "finding";
  text: string;
  /** Where it may stand, best first. */
  spots: readonly Spot[];
  /** Centred on its spot, beside it as words are beside a pointer, or clear of a line there. */
  stands: "on" | "beside" | Clear;
  /** The line it is of: it stands on or beside that, and on no other one. */
  along?: Line;
  /** Labels of one chain, one after the other, stand together or not at all. */
  chain?: string;
  /** What is drawn with it, if it has a place; told where its middle is. */
  lines?: (ink: Ink, words: Spot) => void;
  /** What stands instead of it, with the same words, if it has no place. */
  instead?: Label;
}
/** A direction square to a line, of length 1. */
export interface Clear {
  clear: Spot;
}

export type Line = readonly [Spot, Spot];

/** A line, and where the words to it stand. */
interface Lined {
  line: Line;
  box: Box;
}

interface Shown {
  element: HTMLElement;
  text: string;
  width: number;
  height: number;
}
interface Size {
  width: number;
  height: number;
}
interface Box extends Size {
  left: number;
  top: number;
}

/** Pixels: between labels, to the canvas's border, and from a spot to the words beside it. */
const APART = 3;
const BORDER = 4;
const BESIDE = 14;
/** Pixels of a line to both sides of the words on it. */
const LEFT = 6;

export class Labels {
  private readonly shown = new Map<string, Shown>();

  constructor(private readonly layer: HTMLElement) {}

  /** Show these labels and no others; those that come first have their places first. */
  place(labels: readonly Label[], ink: Ink): void {
    const taken = this.covered();
    const lines: Lined[] = [];
    for (const set of sets(labels)) {
      const [boxes, drawn] = [taken.length, lines.length];
      const found = set.map((label) => {
        const place = this.found(label, this.worded(label), taken, lines, others(labels, label));
        if (place) taken.push(place.box);
        if (place?.as.along) lines.push({ line: place.as.along, box: place.box });
        return place;
      });
      const whole = found.every((place) => place);
      // What isn't shown takes no room.
      if (!whole) [taken.length, lines.length] = [boxes, drawn];
      set.forEach((label, number) => this.show(label, whole ? found[number]! : null, ink));
    }
    const kept = new Set(labels.map((label) => label.key));
    for (const [key, shown] of this.shown) {
      if (kept.has(key)) continue;
      shown.element.remove();
      this.shown.delete(key);
    }
  }

  private show(label: Label, place: { box: Box; as: Label } | null, ink: Ink): void {
    const { element } = this.worded(label);
    element.hidden = !place;
    if (!place) return;
    const { left, top, width, height } = place.box;
    element.style.transform = `translate(${Math.round(left)}px, ${Math.round(top)}px)`;
    place.as.lines?.(ink, { x: left + width / 2, y: top + height / 2 });
  }

  clear(): void {
    for (const { element } of this.shown.values()) element.remove();
    this.shown.clear();
  }

  /** Where a label may stand that nothing else has taken, and as which. */
  private found(
    label: Label,
    shown: Shown,
    taken: readonly Box[],
    lines: readonly Lined[],
    toCome: readonly Line[],
  ): { box: Box; as: Label } | null {
    const { clientWidth: width, clientHeight: height } = this.layer;
    for (let as: Label | undefined = label; as; as = as.instead) {
      const { along } = as;
      if (along && lines.some(({ box }) => crosses(along, box))) continue;
      const free = boxes(as, shown).filter(
        (each) =>
          inside(each, width, height) &&
          !taken.some((other) => touch(each, other)) &&
          !(along && lines.some(({ line }) => crosses(line, each))),
      );
      // Best where it is in no other line's way, either.
      const box = free.find((each) => !toCome.some((line) => crosses(line, each))) ?? free[0];
      if (box) return { box, as };
    }
    // What isn't tied to a line may be pushed in from the border.
    if (label.along) return null;
    const pushed = boxes(label, shown).map((each) => ({
      ...each,
      left: Math.max(BORDER, Math.min(each.left, width - BORDER - each.width)),
      top: Math.max(BORDER, Math.min(each.top, height - BORDER - each.height)),
    }));
    const box = pushed.find((each) => !taken.some((other) => touch(each, other)));
    return box ? { box, as: label } : null;
  }

  /** What else lies over the canvas: buttons and messages. */
  private covered(): Box[] {
    const space = this.layer.getBoundingClientRect();
    const others = [...(this.layer.parentElement?.children ?? [])]
      .filter((each) => each !== this.layer && each.tagName !== "CANVAS")
      .flatMap((each) => [...each.children])
      .map((each) => each.getBoundingClientRect())
      .filter(({ width, height }) => width > 0 && height > 0);
    return others.map(({ left, top, width, height }) => {
      return { left: left - space.left, top: top - space.top, width, height };
    });
  }

  private worded(label: Label): Shown {
    let shown = this.shown.get(label.key);
    if (!shown) {
      const element = document.createElement("span");
      element.className = `label ${label.kind}`;
      this.layer.append(element);
      shown = { element, text: "", width: 0, height: 0 };
      this.shown.set(label.key, shown);
    }
    if (shown.text !== label.text) {
      shown.element.textContent = shown.text = label.text;
      shown.element.hidden = false;
      shown.width = shown.element.offsetWidth;
      shown.height = shown.element.offsetHeight;
    }
    return shown;
  }
}

/** Labels by chains; what is of none stands by itself. */
function sets(labels: readonly Label[]): Label[][] {
  const all: Label[][] = [];
  for (const label of labels) {
    const last = all.at(-1);
    if (last && label.chain !== undefined && last[0]!.chain === label.chain) last.push(label);
    else all.push([label]);
  }
  return all;
}

function boxes(label: Label, size: Size): Box[] {
  const { width, height } = size;
  if (label.stands === "on")
    return label.along
      ? alongside(label, label.along, size)
      : label.spots.map((spot) => centred(spot, size));
  if (label.stands !== "beside") {
    const { clear } = label.stands;
    const off = clearance(clear, size);
    return label.spots.flatMap((spot) =>
      [off, -off].map((by) => centred(shifted(spot, clear, by), size)),
    );
  }
  return label.spots.flatMap(({ x, y }) =>
    [y + BESIDE, y - BESIDE - height, y - 2 * BESIDE - height].flatMap((top) =>
      [x + BESIDE, x - BESIDE - width, x - width / 2].map((left) => ({ left, top, width, height })),
    ),
  );
}

function centred({ x, y }: Spot, { width, height }: Size): Box {
  return { left: x - width / 2, top: y - height / 2, width, height };
}

/** How far words have to stand from a line, square to it, to be clear of it. */
function clearance(square: Spot, { width, height }: Size): number {
  return (Math.abs(square.x) * width + Math.abs(square.y) * height + BESIDE) / 2;
}

/** The lines of all other labels, for one that is of a line itself. */
function others(labels: readonly Label[], label: Label): Line[] {
  if (!label.along) return [];
  return labels.flatMap((each) => (each !== label && each.along ? [each.along] : []));
}

/** On a line, if enough of it is left to both sides, or clear of it there. */
function alongside({ spots }: Label, [from, to]: Line, { width, height }: Size): Box[] {
  const square = squareTo(from, to);
  const reach = Math.min(width / Math.abs(square.y), height / Math.abs(square.x));
  const off = clearance(square, { width, height });
  const ways = distance(from, to) < reach + 2 * LEFT ? [off, -off] : [0, off, -off];
  return ways.flatMap((by) =>
    spots.map((spot) => centred(shifted(spot, square, by), { width, height })),
  );
}

/** Whether a line goes through a box. */
function crosses([from, to]: Line, { left, top, width, height }: Box): boolean {
  let [enters, leaves] = [0, 1];
  for (const [at, way, low, high] of [
    [from.x, to.x - from.x, left, left + width],
    [from.y, to.y - from.y, top, top + height],
  ] as const) {
    if (!way && (at < low || at > high)) return false;
    if (!way) continue;
    const [one, other] = [(low - at) / way, (high - at) / way];
    enters = Math.max(enters, Math.min(one, other));
    leaves = Math.min(leaves, Math.max(one, other));
  }
  return enters < leaves;
}

function inside(box: Box, width: number, height: number): boolean {
  return (
    box.left >= BORDER &&
    box.top >= BORDER &&
    box.left + box.width <= width - BORDER &&
    box.top + box.height <= height - BORDER
  );
}

function touch(one: Box, other: Box): boolean {
  return (
    one.left < other.left + other.width + APART &&
    other.left < one.left + one.width + APART &&
    one.top < other.top + other.height + APART &&
    other.top < one.top + one.height + APART
  );
}
