// How finely frames are drawn: where they come slowly, coarsely as long as something moves.
import type { WebGLRenderer } from "three";

/** Frames that take longer (ms) make a picture stutter; shorter ones may be drawn finely. */
const SLOW = 45;
const QUICK = 14;
/** Share of the pixels' width and height that is drawn while coarse. */
const COARSE = 0.5;
/** Rest (ms) after which the picture is drawn finely again. */
const REST = 180;
const LONGEST = 700;

export class Pace {
  private readonly fine = Math.min(devicePixelRatio, 2);
  private slow = false;
  private last = 0;
  private timer = 0;
  private hurried = false;
  private measured = false;
  /** Whether the frame that is drawn now is a coarse one, soon followed by a fine one. */
  coarse = false;

  /** `again` draws once more, when all is at rest. */
  constructor(
    private readonly renderer: WebGLRenderer,
    private readonly again: () => void,
  ) {
    renderer.setPixelRatio(this.fine);
  }

  /** A frame is drawn now (ms): one of several that follow each other, or one by itself. */
  frame(now: number): void {
    const took = now - this.last;
    const moving = this.timer !== 0;
    this.last = now;
    if (moving && took > SLOW) this.slow = true;
    if (moving && took < QUICK) this.slow = false;
    this.coarse = this.slow && (moving || this.hurried);
    this.hurried = false;
    this.ratio(this.coarse ? this.fine * COARSE : this.fine);
    clearTimeout(this.timer);
    // The next frame comes no sooner than the last one took.
    const rest = moving ? Math.min(Math.max(REST, 2 * took), LONGEST) : REST;
    this.timer = window.setTimeout(() => {
      this.timer = 0;
      if (this.renderer.getPixelRatio() !== this.fine) this.again();
    }, rest);
  }

  /** What comes next is new: where frames come slowly, it is seen coarsely first. */
  hurry(): void {
    this.hurried = true;
  }

  /** Once, how long a frame takes: drawn when its first pixel can be read. */
  measure(draw: () => void): void {
    if (this.measured) return draw();
    this.measured = true;
    const begun = performance.now();
    draw();
    const context = this.renderer.getContext();
    context.readPixels(0, 0, 1, 1, context.RGBA, context.UNSIGNED_BYTE, new Uint8Array(4));
    this.slow = performance.now() - begun > SLOW;
  }

  /** Draw the next picture finely. */
  finely(): void {
    this.coarse = false;
    this.ratio(this.fine);
  }

  private ratio(ratio: number): void {
    if (this.renderer.getPixelRatio() !== ratio) this.renderer.setPixelRatio(ratio);
  }
}
