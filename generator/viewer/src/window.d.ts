import type { Stage } from "./stage/stage";

declare global {
  interface Window {
    /** The unit in space, for tests and for printing. */
    stage?: Stage;
  }
}
