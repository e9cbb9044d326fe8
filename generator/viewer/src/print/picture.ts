// The unit as it stands on the screen, put on paper just before the page is printed.
import { Color } from "three";

import type { Stage } from "../stage/stage";
import { PICTURE } from "./printed";

/** What is lighter than this, of 255, is bare paper. */
const BARE = 250;
/** Bare paper left round the unit, in pixels. */
const ROUND = 8;

/** Have the unit printed as the stage shows it, with the lines and words in a layer over its canvas. */
export function printing(stage: Stage, layer: HTMLElement): () => void {
  const print = () => {
    // What the browser has taken away can't be printed either.
    if (stage.renderer.getContext().isContextLost()) return;
    document.getElementById(PICTURE)?.replaceChildren(trimmed(taken(stage, layer)));
  };
  const clear = () => document.getElementById(PICTURE)?.replaceChildren();
  addEventListener("beforeprint", print);
  addEventListener("afterprint", clear);
  return () => {
    removeEventListener("beforeprint", print);
    removeEventListener("afterprint", clear);
  };
}

function taken(stage: Stage, layer: HTMLElement): CanvasRenderingContext2D {
  const { scene, canvas } = stage;
  const background = scene.background;
  scene.background = new Color("#ffffff");
  stage.picture();
  const copy = document.createElement("canvas");
  copy.width = canvas.width;
  copy.height = canvas.height;
  const context = copy.getContext("2d", { willReadFrequently: true })!;
  // Within the task that drew it: after that a canvas of WebGL may be bare.
  context.drawImage(canvas, 0, 0);
  scene.background = background;
  stage.draw();
  write(context, layer, canvas);
  return context;
}

function write(context: CanvasRenderingContext2D, layer: HTMLElement, canvas: HTMLElement): void {
  const origin = canvas.getBoundingClientRect();
  if (!origin.width) return;
  const scale = context.canvas.width / origin.width;
  context.scale(scale, scale);
  // In their order: paper to both sides of each line, then the line.
  for (const path of layer.querySelectorAll<SVGPathElement>(".ink path")) {
    const halo = path.classList.contains("halo");
    context.strokeStyle = halo ? "#ffffff" : "#000000";
    context.lineWidth = parseFloat(getComputedStyle(path).strokeWidth);
    context.stroke(new Path2D(path.getAttribute("d") ?? ""));
  }
  context.textBaseline = "middle";
  context.textAlign = "center";
  // What is chosen or pointed at is for who sits at the page.
  const stays = ".label:not([hidden], .part, .finding)";
  for (const label of layer.querySelectorAll<HTMLElement>(stays)) {
    const { left, top, width, height } = label.getBoundingClientRect();
    const [x, y] = [left - origin.left, top - origin.top];
    context.fillStyle = "#ffffff";
    context.fillRect(x, y, width, height);
    context.fillStyle = "#000000";
    context.font = getComputedStyle(label).font;
    const lines = label.innerText.split("\n");
    lines.forEach((line, at) =>
      context.fillText(line, x + width / 2, y + ((at + 0.5) * height) / lines.length),
    );
  }
}

function trimmed(context: CanvasRenderingContext2D): HTMLCanvasElement {
  const { width, height } = context.canvas;
  const { data } = context.getImageData(0, 0, width, height);
  let [left, top, right, bottom] = [width, height, 0, 0];
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const at = 4 * (y * width + x);
      if (Math.min(data[at]!, data[at + 1]!, data[at + 2]!) >= BARE) continue;
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }
  if (right < left) return context.canvas;
  [left, top] = [Math.max(0, left - ROUND), Math.max(0, top - ROUND)];
  [right, bottom] = [Math.min(width, right + ROUND), Math.min(height, bottom + ROUND)];
  const paper = document.createElement("canvas");
  paper.width = right - left;
  paper.height = bottom - top;
  paper.getContext("2d")!.drawImage(context.canvas, -left, -top);
  return paper;
}
