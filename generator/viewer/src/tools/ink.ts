// Lines over the canvas, in pixels: of measuring, dimensions and leaders, with paper to both sides
// so that they read on any wood.
import type { Spot } from "./spots";

export type Pen = "dimension" | "measure" | "leader";

const PENS: readonly Pen[] = ["dimension", "leader", "measure"];
const SVG = "http://www.w3.org/2000/svg";

export class Ink {
  private readonly sheet = document.createElementNS(SVG, "svg");
  private readonly paths = new Map<Pen, SVGPathElement[]>();
  private readonly drawn = new Map<Pen, string[]>();

  constructor(layer: HTMLElement) {
    this.sheet.setAttribute("aria-hidden", "true");
    this.sheet.setAttribute("class", "ink");
    for (const pen of PENS) {
      const paths = ["halo", "line"].map((role) => {
        const path = document.createElementNS(SVG, "path");
        path.setAttribute("class", `${pen} ${role}`);
        this.sheet.append(path);
        return path;
      });
      this.paths.set(pen, paths);
    }
    layer.prepend(this.sheet);
  }

  /** Begin a frame: nothing is drawn yet. */
  begin(): void {
    this.drawn.clear();
  }

  line(pen: Pen, from: Spot, to: Spot): void {
    this.put(pen, `M${at(from)}L${at(to)}`);
  }

  /** A ring round a spot. */
  ring(pen: Pen, { x, y }: Spot, radius: number): void {
    const arc = `a${radius},${radius} 0 1 0`;
    this.put(pen, `M${at({ x: x - radius, y })}${arc} ${2 * radius},0${arc} ${-2 * radius},0`);
  }

  /** A stroke across a spot, at 45 degrees to the line that goes from it to another. */
  tick(pen: Pen, spot: Spot, other: Spot, reach: number): void {
    const slant = Math.atan2(other.y - spot.y, other.x - spot.x) + Math.PI / 4;
    const [x, y] = [Math.cos(slant) * reach, Math.sin(slant) * reach];
    this.line(pen, { x: spot.x - x, y: spot.y - y }, { x: spot.x + x, y: spot.y + y });
  }

  /** End the frame. */
  end(): void {
    for (const [pen, paths] of this.paths) {
      const way = (this.drawn.get(pen) ?? []).join("");
      for (const path of paths) path.setAttribute("d", way);
    }
  }

  remove(): void {
    this.sheet.remove();
  }

  private put(pen: Pen, way: string): void {
    const ways = this.drawn.get(pen);
    if (ways) ways.push(way);
    else this.drawn.set(pen, [way]);
  }
}

function at({ x, y }: Spot): string {
  return `${x.toFixed(1)},${y.toFixed(1)}`;
}
