// How surfaces look: a material for each piece, with grain laid on in the part's own frame.
import {
  Color,
  LineBasicMaterial,
  MeshStandardMaterial,
  MirroredRepeatWrapping,
  SRGBColorSpace,
  Texture,
  TextureLoader,
  Vector2,
} from "three";

import type { Part, Surface } from "../document";
import { FRAGMENT_HEAD, FRAGMENT_MAP, FRAGMENT_PALE, VERTEX_HEAD, VERTEX_PLACE } from "./grain";

/** Edges are drawn in so much of their surface's own colour (linear light). */
const INK = 0.13;
/** Parts that step back show so much paper. */
const PALE = 0.72;

export interface Look {
  material: MeshStandardMaterial;
  /** How far it goes into the paper: 0 is as it is. */
  pale: { value: number };
}

export class Looks {
  private readonly grains = new Map<string, Grain>();
  private readonly inks = new Map<string, { plain: LineBasicMaterial; pale: LineBasicMaterial }>();
  readonly paper = new Color(0xf3f0ea);

  /** `changed` is called when a picture of grain is there. */
  constructor(private readonly changed: () => void) {}

  /** A material of its own for a piece, which must dispose of it. */
  of(name: string, surface: Surface, part: Pick<Part, "ref" | "grain">): Look {
    const material = new MeshStandardMaterial({
      color: surface.colour,
      roughness: surface.roughness,
      metalness: surface.metal ? 0.55 : 0,
      transparent: surface.clear,
      opacity: surface.clear ? 0.28 : 1,
      depthWrite: !surface.clear,
      // Faces step back a little, so that edges drawn on them don't fight with them.
      polygonOffset: true,
      polygonOffsetFactor: 1,
      polygonOffsetUnits: 1,
    });
    const pale = { value: 0 };
    const grain = surface.texture && part.grain !== "none" ? this.grain(name, surface) : null;
    if (grain) material.color.set(0xffffff);
    const uniforms = {
      pale,
      paper: { value: this.paper },
      ...(grain && {
        faceGrain: { value: grain.face },
        edgeGrain: { value: grain.edge },
        endGrain: { value: grain.end },
        tile: { value: grain.tile },
        shift: { value: shiftOf(part.ref) },
      }),
    };
    const defines = { ...(grain && { GRAIN: 1 }), ...(part.grain === "width" && { ACROSS: 1 }) };
    material.defines = { ...material.defines, ...defines };
    material.onBeforeCompile = (shader) => {
      Object.assign(shader.uniforms, uniforms);
      shader.vertexShader = shader.vertexShader
        .replace("#include <common>", `#include <common>\n${VERTEX_HEAD}`)
        .replace("#include <begin_vertex>", `#include <begin_vertex>\n${VERTEX_PLACE}`);
      shader.fragmentShader = shader.fragmentShader
        .replace("#include <common>", `#include <common>\n${FRAGMENT_HEAD}`)
        .replace("#include <map_fragment>", FRAGMENT_MAP)
        .replace("#include <dithering_fragment>", FRAGMENT_PALE);
    };
    return { material, pale };
  }

  /** What the edges of a surface are drawn with: its own colour, darker. */
  ink(colour: string): { plain: LineBasicMaterial; pale: LineBasicMaterial } {
    let ink = this.inks.get(colour);
    if (!ink) {
      const dark = new Color(colour).multiplyScalar(INK);
      const plain = new LineBasicMaterial({ color: dark });
      const pale = new LineBasicMaterial({ color: dark.clone().lerp(this.paper, PALE) });
      this.inks.set(colour, (ink = { plain, pale }));
    }
    return ink;
  }

  /** Let go of the grain of all surfaces but these. */
  keep(names: ReadonlySet<string>): void {
    for (const [name, grain] of this.grains) {
      if (names.has(name)) continue;
      for (const each of new Set([grain.face, grain.edge, grain.end])) each.dispose();
      this.grains.delete(name);
    }
  }

  private grain(name: string, surface: Surface): Grain {
    let grain = this.grains.get(name);
    if (!grain) {
      const told = surface.texture!;
      const face = this.picture(told.face);
      grain = {
        face,
        edge: told.edge ? this.picture(told.edge) : face,
        end: told.end ? this.picture(told.end) : face,
        tile: told.tile,
      };
      this.grains.set(name, grain);
    }
    return grain;
  }

  private picture(address: string): Texture {
    const texture = new TextureLoader().load(address, this.changed);
    texture.colorSpace = SRGBColorSpace;
    // Mirrored, a tile has no seams whatever stands at its borders.
    texture.wrapS = texture.wrapT = MirroredRepeatWrapping;
    texture.anisotropy = 4;
    return texture;
  }
}

export { PALE };

interface Grain {
  face: Texture;
  edge: Texture;
  end: Texture;
  tile: number;
}

/** Where in the tile a part is cut from, by its ref: no two look cut alike. */
function shiftOf(ref: string): Vector2 {
  let number = 2166136261;
  for (const letter of ref) number = Math.imul(number ^ letter.codePointAt(0)!, 16777619);
  number ^= number >>> 15;
  number = Math.imul(number, 2246822519) >>> 0;
  return new Vector2((number & 0xffff) / 0x8000, (number >>> 16) / 0x8000);
}
