// How finely frames are drawn: where they come slowly, coarsely as long as something moves.
import type { WebGLRenderer } from "three";

/** Frames that take longer (ms) make a picture stutter; shorter ones may be drawn finely. */
const SLOW = 45;
const QUICK = 14;
/** Share of the pixels' width and height that is drawn while coarse. */
const COARSE = 0.6;
/** Rest (ms) after which the picture is drawn finely again. */
const REST = 180;
const LONGEST = 700;

export class Pace {
  private readonly fine = Math.min(devicePixelRatio, 2);
  private slow = false;
  private last = 0;
  private timer = 0;

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
    this.ratio(moving && this.slow ? this.fine * COARSE : this.fine);
    clearTimeout(this.timer);
    // The next frame comes no sooner than the last one took.
    const rest = moving ? Math.min(Math.max(REST, 2 * took), LONGEST) : REST;
    this.timer = window.setTimeout(() => {
      this.timer = 0;
      if (this.renderer.getPixelRatio() !== this.fine) this.again();
    }, rest);
  }

  /** Draw the next picture finely. */
  finely(): void {
    this.ratio(this.fine);
  }

  private ratio(ratio: number): void {
    if (this.renderer.getPixelRatio() !== ratio) this.renderer.setPixelRatio(ratio);
  }
}
