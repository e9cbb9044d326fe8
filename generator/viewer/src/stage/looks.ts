// How surfaces look: a material for each piece, and what its edges are drawn with.
import {
  Color,
  LineBasicMaterial,
  MeshLambertMaterial,
  MeshStandardMaterial,
  type Plane,
} from "three";

import { groundColour } from "../colours";
import type { Surface } from "../document";

/** Edges are drawn in so much of their surface's own colour (linear light). */
const INK = 0.13;
/** How much of what is behind it clear glass hides, and how much like metal metal is drawn. */
const GLASS = 0.28;
const METAL = 0.55;
/** Parts that step back show so much paper. */
export const PALE = 0.72;
const PALE_INK = 0.6;

/** What anything is painted with. */
export type Paint = MeshLambertMaterial | MeshStandardMaterial;

export interface Look {
  material: Paint;
  /** How far it goes into the paper: 0 is as it is. */
  pale: { value: number };
}

interface Ink {
  plain: LineBasicMaterial;
  pale: LineBasicMaterial;
}

export class Looks {
  readonly paper = new Color(groundColour("paper"));
  private readonly inks = new Map<string, Ink>();
  private dropped: Look[] = [];

  /** `clipping` holds the planes of a cut through all that is drawn. */
  constructor(private readonly clipping: Plane[]) {}

  /** A material of its own for a piece, which must drop it. */
  of(surface: Surface): Look {
    const common = {
      color: surface.colour,
      transparent: surface.clear,
      opacity: surface.clear ? GLASS : 1,
      depthWrite: !surface.clear,
      clippingPlanes: this.clipping,
      clipShadows: true,
      // Faces step back a little, so that edges drawn on them don't fight with them.
      polygonOffset: true,
      polygonOffsetFactor: 1,
      polygonOffsetUnits: 1,
    };
    // Only metal needs a glint: all else is matt, which is drawn in half the time.
    const material = surface.metal
      ? new MeshStandardMaterial({ ...common, roughness: surface.roughness, metalness: METAL })
      : new MeshLambertMaterial(common);
    const pale = { value: 0 };
    material.onBeforeCompile = (shader) => {
      Object.assign(shader.uniforms, { pale, paper: { value: this.paper } });
      shader.fragmentShader = shader.fragmentShader
        .replace("#include <common>", `#include <common>\n${PALE_HEAD}`)
        .replace("#include <dithering_fragment>", PALE_BODY);
    };
    return { material, pale };
  }

  /** A piece is gone.  Shaders that nothing is drawn with are let go, so its material stays until others are. */
  drop(look: Look): void {
    this.dropped.push(look);
  }

  /** Let go of what was dropped. */
  release(): void {
    for (const { material } of this.dropped) material.dispose();
    this.dropped = [];
  }

  /** What the edges of a surface are drawn with: its own colour, darker. */
  ink(colour: string): Ink {
    let ink = this.inks.get(colour);
    if (!ink) {
      const dark = new Color(colour).multiplyScalar(INK);
      // The eye takes steps of sRGB for even.
      const pale = new Color(...mixed(dark, this.paper, PALE_INK));
      ink = { plain: this.line(dark), pale: this.line(pale) };
      this.inks.set(colour, ink);
    }
    return ink;
  }

  /** Let go of the inks of all colours but these. */
  keep(colours: ReadonlySet<string>): void {
    for (const [colour, ink] of this.inks) {
      if (colours.has(colour)) continue;
      ink.plain.dispose();
      ink.pale.dispose();
      this.inks.delete(colour);
    }
  }

  private line(color: Color): LineBasicMaterial {
    return new LineBasicMaterial({ color, clippingPlanes: this.clipping });
  }
}

/** So much of the way from one colour to another, by their sRGB values; linear light. */
function mixed(one: Color, other: Color, share: number): [number, number, number] {
  const [from, to] = [one.clone().convertLinearToSRGB(), other.clone().convertLinearToSRGB()];
  const { r, g, b } = from.lerp(to, share).convertSRGBToLinear();
  return [r, g, b];
}

const PALE_HEAD = `
uniform float pale;
uniform vec3 paper;
`;

const PALE_BODY = `
gl_FragColor.rgb = mix(gl_FragColor.rgb, sRGBTransferOETF(vec4(paper, 1.0)).rgb, pale);
#include <dithering_fragment>
`;
