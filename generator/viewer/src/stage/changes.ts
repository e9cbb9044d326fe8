// What has changed is outlined for a moment.

/** How long, ms. */
const TOLD = 1200;

export class Changes {
  /** Refs of the parts that are outlined now. */
  outlined: readonly string[] = [];
  private waiting: readonly string[] = [];
  private timer = 0;

  /** `ended` is called when they aren't outlined any more. */
  constructor(private readonly ended: () => void) {}

  /** These parts have changed, and no others. */
  begin(refs: readonly string[]): void {
    clearTimeout(this.timer);
    this.outlined = [];
    this.waiting = refs;
  }

  /** A frame is drawn finely: whether those that wait are outlined from now on. */
  due(): boolean {
    if (!this.waiting.length) return false;
    this.outlined = this.waiting;
    this.waiting = [];
    this.timer = window.setTimeout(() => {
      this.outlined = [];
      this.ended();
    }, TOLD);
    return true;
  }
}
