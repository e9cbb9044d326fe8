// How cut faces look: paper, hatched as on the drawings (ISO 128-50): sheets with pairs of lines at
// 45 degrees, the ends of boards with single ones, boards along the grain with long dashes along it,
// all else with crossed lines (common practice, no source).
import { Color, DoubleSide, ShaderMaterial } from "three";

import { groundColour } from "../colours";

export type Kind = "sheet" | "end grain" | "along the grain" | "other";

const NUMBERS: Record<Kind, number> = {
  sheet: 0,
  "end grain": 1,
  "along the grain": 2,
  other: 3,
};
/** Pixels from line to line, or from pair to pair. */
const PITCH: Record<Kind, number> = {
  sheet: 8,
  "end grain": 5.5,
  "along the grain": 5,
  other: 8,
};

/**
 * A cut face's material; `slant` turns the lines of neighbours the other way.  Whoever shows it sets
 * its `pitch` (mm) and the direction `along` the grain (radians from the plane's first axis).
 */
export function hatching(kind: Kind, slant: 0 | 1): ShaderMaterial {
  return new ShaderMaterial({
    side: DoubleSide,
    uniforms: {
      paper: { value: new Color(groundColour("sheet")) },
      ink: { value: new Color(groundColour("ink")) },
      kind: { value: NUMBERS[kind] },
      slant: { value: slant ? -1 : 1 },
      pitch: { value: 10 },
      along: { value: 0 },
    },
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
  });
}

/**
 * The distance (mm) between lines where a pixel is so many mm: lines keep their distance on the
 * screen, in steps of the square root of 2, however near one is.
 */
export function pitchOf(kind: Kind, pixel: number): number {
  return 2 ** (Math.round(2 * Math.log2(PITCH[kind] * pixel)) / 2);
}

const VERTEX = `
attribute vec2 place;
varying vec2 at;
void main() {
  at = place;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}`;

const FRAGMENT = `
uniform vec3 paper;
uniform vec3 ink;
uniform int kind;
uniform float slant;
uniform float pitch;
uniform float along;
varying vec2 at;

// How much of a pixel lies on lines that are a pitch apart.
float lines(float way, float width) {
  float wide = fwidth(way);
  float off = abs(fract(way / pitch + 0.5) - 0.5) * pitch;
  return 1.0 - smoothstep(width * wide - 0.5 * wide, width * wide + 0.5 * wide, off);
}

void main() {
  float rise = (at.x + slant * at.y) * 0.70710678;
  float fall = (at.x - slant * at.y) * 0.70710678;
  float drawn = 0.0;
  if (kind == 2) {
    float way = at.y * cos(along) - at.x * sin(along);
    float on = at.x * cos(along) + at.y * sin(along);
    float row = floor(way / pitch + 0.5);
    float dash = fract(on / (pitch * 5.0) + 0.5 * mod(row, 2.0));
    drawn = lines(way, 0.45) * step(dash, 0.78);
  } else {
    drawn = lines(rise, 0.45);
    if (kind == 0) drawn = max(drawn, lines(rise + pitch * 0.28, 0.45));
    if (kind == 3) drawn = max(drawn, lines(fall, 0.45));
  }
  gl_FragColor = vec4(mix(paper, ink, drawn * 0.85), 1.0);
  #include <colorspace_fragment>
}`;
