// Words over the canvas: each frame they are put beside what they are of, so that none lies on
// another or is cut off; those that find no place aren't shown.
import type { Spot } from "./sight";

export interface Label {
  /** Names it from frame to frame. */
  key: string;
  kind: "part" | "dimension" | "measure" | "finding";
  text: string;
  /** Where it may stand, best first. */
  spots: readonly Spot[];
  /** Centred on its spot, or beside it as words are beside a pointer. */
  stands: "on" | "beside";
}

interface Shown {
  element: HTMLElement;
  text: string;
  width: number;
  height: number;
}
interface Box {
  left: number;
  top: number;
  width: number;
  height: number;
}

/** Pixels: between labels, to the canvas's border, and from a spot to the words beside it. */
const APART = 3;
const BORDER = 4;
const BESIDE = 14;

export class Labels {
  private readonly shown = new Map<string, Shown>();

  constructor(private readonly layer: HTMLElement) {}

  /** Show these labels and no others; those that come first have their places first. */
  place(labels: readonly Label[]): void {
    const taken: Box[] = [];
    const { clientWidth: width, clientHeight: height } = this.layer;
    const wanted = labels.map((label) => [label, this.worded(label)] as const);
    for (const [label, shown] of wanted) {
      const free = boxes(label, shown).find(
        (box) => inside(box, width, height) && !taken.some((other) => touch(box, other)),
      );
      shown.element.hidden = !free;
      if (!free) continue;
      taken.push(free);
      shown.element.style.transform = `translate(${Math.round(free.left)}px, ${Math.round(free.top)}px)`;
    }
    const kept = new Set(labels.map((label) => label.key));
    for (const [key, shown] of this.shown) {
      if (kept.has(key)) continue;
      shown.element.remove();
      this.shown.delete(key);
    }
  }

  clear(): void {
    this.place([]);
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

function boxes(label: Label, { width, height }: Shown): Box[] {
  if (label.stands === "on")
    return label.spots.map(({ x, y }) => ({
      left: x - width / 2,
      top: y - height / 2,
      width,
      height,
    }));
  return label.spots.flatMap(({ x, y }) =>
    [y + BESIDE, y - BESIDE - height].flatMap((top) =>
      [x + BESIDE, x - BESIDE - width, x - width / 2].map((left) => ({ left, top, width, height })),
    ),
  );
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
