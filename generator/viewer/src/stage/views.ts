// The standard views of a unit.
import type { ViewName } from "../state";
import type { Pose } from "./pose";
import { FOV, PARALLEL } from "./pose";

/** Square on, a joiner's view is a parallel projection. */
const SQUARE = PARALLEL / 2;
/** Straight down, but for a hair that says which way is up in the picture. */
const UPRIGHT = 89.999;

export const VIEWS: Readonly<Record<ViewName, Pick<Pose, "azimuth" | "rise" | "fov">>> = {
  corner: { azimuth: -24, rise: 14, fov: FOV },
  front: { azimuth: 0, rise: 0, fov: SQUARE },
  back: { azimuth: 180, rise: 0, fov: SQUARE },
  left: { azimuth: -90, rise: 0, fov: SQUARE },
  right: { azimuth: 90, rise: 0, fov: SQUARE },
  above: { azimuth: 0, rise: UPRIGHT, fov: SQUARE },
  below: { azimuth: 0, rise: -UPRIGHT, fov: SQUARE },
};
