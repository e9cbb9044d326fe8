// Pictures of woods laid on pieces: each point is looked up by its place and the way it faces, both
// in the part frame, so that shapes need nothing for it and pieces share the pictures.
import {
  type Box3,
  Color,
  DataTexture,
  RepeatWrapping,
  SRGBColorSpace,
  Texture,
  Vector3,
  Vector4,
} from "three";

import type { Part, Side, Surface, Texture as Pictures } from "../document";
import type { Paint } from "./looks";

const SIDES: readonly Side[] = ["-x", "+x", "-y", "+y"];
const NO_PICTURE = new DataTexture(new Uint8Array([255, 255, 255, 255]), 1, 1);
NO_PICTURE.needsUpdate = true;

/** One wood's pictures, as all that show it share them: they come later than the pieces. */
class Wood {
  readonly face = { value: NO_PICTURE as Texture };
  readonly edge = { value: NO_PICTURE as Texture };
  readonly end = { value: NO_PICTURE as Texture };
  readonly size = { value: new Vector3(1, 1, 1) };
  readonly there = { value: 0 };
  private asked = "";

  async show(told: Pictures): Promise<void> {
    if (this.asked === told.face) return;
    this.asked = told.face;
    const pictures = await Promise.all([told.face, told.edge, told.end].map(picture));
    if (this.asked !== told.face) return;
    this.letGo();
    [this.face.value, this.edge.value, this.end.value] = pictures as [Texture, Texture, Texture];
    this.size.value.set(...told.size);
    this.there.value = 1;
  }

  dispose(): void {
    this.asked = "";
    this.there.value = 0;
    this.letGo();
  }

  private letGo(): void {
    for (const each of [this.face, this.edge, this.end]) {
      if (each.value !== NO_PICTURE) each.value.dispose();
      each.value = NO_PICTURE;
    }
  }
}

export class Woods {
  private readonly woods = new Map<string, Wood>();

  /** Show these pictures, by the names of their surfaces, on all that has them. */
  async show(textures: Readonly<Record<string, Pictures>>): Promise<void> {
    const told = Object.entries(textures).filter(([name]) => this.woods.has(name));
    await Promise.all(told.map(([name, each]) => this.of(name).show(each)));
  }

  /** Have a part's material show its wood, and what is glued on its edges, once it is there. */
  dress(material: Paint, part: Part, surfaces: Readonly<Record<string, Surface>>, box: Box3): void {
    const own = this.of(part.surface);
    const glued = SIDES.map((side) => part.edges[side]);
    const pictured = glued.find((name) => name !== undefined) ?? part.surface;
    const band = this.of(pictured);
    const shown = glued.map((name) => new Color(name ? surfaces[name]!.colour : 0));
    const uniforms = {
      woodFace: own.face,
      woodEdge: own.edge,
      woodEnd: own.end,
      woodSize: own.size,
      woodThere: own.there,
      woodLie: { value: new Vector4(...part.lie) },
      woodTurned: { value: part.grain === "width" },
      woodMean: { value: material.color.clone() },
      woodLow: { value: box.min },
      woodHigh: { value: box.max },
      bandEdge: band.edge,
      bandSize: band.size,
      bandThere: band.there,
      bandOn: { value: glued.map((name) => (name ? (name === pictured ? 2 : 1) : 0)) },
      bandColour: { value: shown },
    };
    // Most parts have bare edges: theirs is the cheaper shader.
    if (glued.some(Boolean)) material.defines = { ...material.defines, BANDED: "" };
    const before = material.onBeforeCompile.bind(material);
    material.onBeforeCompile = (shader, renderer) => {
      before(shader, renderer);
      Object.assign(shader.uniforms, uniforms);
      shader.vertexShader = shader.vertexShader
        .replace("#include <common>", `#include <common>\n${PLACE}`)
        .replace("#include <begin_vertex>", `#include <begin_vertex>\n${PLACED}`);
      shader.fragmentShader = shader.fragmentShader
        .replace("#include <common>", `#include <common>\n${PLACE}${WOOD}`)
        .replace("#include <map_fragment>", "diffuseColor.rgb *= wood();");
    };
  }

  /** Let go of the pictures of all surfaces but these. */
  keep(names: ReadonlySet<string>): void {
    for (const [name, wood] of this.woods) {
      if (names.has(name)) continue;
      wood.dispose();
      this.woods.delete(name);
    }
  }

  private of(name: string): Wood {
    let wood = this.woods.get(name);
    if (!wood) this.woods.set(name, (wood = new Wood()));
    return wood;
  }
}

async function picture(address: string): Promise<Texture> {
  const image = new Image();
  image.src = address;
  await image.decode();
  const texture = new Texture(image);
  texture.colorSpace = SRGBColorSpace;
  texture.wrapS = texture.wrapT = RepeatWrapping;
  texture.anisotropy = 4;
  texture.needsUpdate = true;
  return texture;
}

const PLACE = `
varying vec3 vPlace;
varying vec3 vFacing;
`;
const PLACED = `
vPlace = position;
vFacing = normal;
`;
// How the wood differs from the material's one colour.  Where a picture is looked up differs from
// side to side, so its slopes are taken before that is known, or arrises would show coarse lines.
const WOOD = `
uniform sampler2D woodFace, woodEdge, woodEnd, bandEdge;
uniform vec3 woodSize, woodMean, woodLow, woodHigh, bandSize;
uniform vec4 woodLie;
uniform float woodThere, bandThere;
uniform bool woodTurned;
uniform int bandOn[4];
uniform vec3 bandColour[4];

vec3 wood() {
  vec3 slopeX = dFdx(vPlace), slopeY = dFdy(vPlace), place = vPlace, facing = abs(vFacing);
  vec3 mean = max(woodMean, vec3(0.002));
#ifdef BANDED
  if (facing.z < max(facing.x, facing.y)) {
    int axis = facing.x > facing.y ? 0 : 1;
    bool high = vFacing[axis] > 0.0;
    int side = 2 * axis + (high ? 1 : 0);
    float beyond = high ? woodHigh[axis] : woodLow[axis];
    if (bandOn[side] > 0 && facing[axis] > 0.9 && abs(place[axis] - beyond) < 1.0) {
      int along = 1 - axis;
      vec3 band = bandColour[side];
      vec2 scale = bandSize.xz, at = vec2(place[along] + woodLie.y, place.z) / scale;
      if (bandOn[side] == 2 && bandThere > 0.5)
        band = textureGrad(bandEdge, at, vec2(slopeX[along], slopeX.z) / scale,
          vec2(slopeY[along], slopeY.z) / scale).rgb;
      return band / mean;
    }
  }
#endif
  if (woodThere < 0.5) return vec3(1.0);
  if (woodTurned) {
    slopeX = slopeX.yxz;
    slopeY = slopeY.yxz;
    place = place.yxz;
    facing = facing.yxz;
  }
  vec3 sign = vec3(woodLie.x, woodLie.z, 1.0) / woodSize;
  slopeX *= sign;
  slopeY *= sign;
  place = place * sign + vec3(woodLie.y, woodLie.w, 0.0) / woodSize;
  vec3 seen;
  if (facing.z >= max(facing.x, facing.y))
    seen = textureGrad(woodFace, place.xy, slopeX.xy, slopeY.xy).rgb;
  else if (facing.y > facing.x)
    seen = textureGrad(woodEdge, place.xz, slopeX.xz, slopeY.xz).rgb;
  else seen = textureGrad(woodEnd, place.yz, slopeX.yz, slopeY.yz).rgb;
  return seen / mean;
}
`;
