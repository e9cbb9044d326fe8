// The shader's own lines: grain by the part's frame, and paleness.

export const VERTEX_HEAD = `
varying vec3 vPlace;
varying vec3 vFacing;
`;

export const VERTEX_PLACE = `
vPlace = position;
vFacing = normal;
`;

export const FRAGMENT_HEAD = `
uniform float pale;
uniform vec3 paper;
varying vec3 vPlace;
varying vec3 vFacing;
#ifdef GRAIN
uniform sampler2D faceGrain, edgeGrain, endGrain;
uniform float tile;
uniform vec2 shift;
#endif
`;

// The part frame has the length, mostly the grain, along x, and the thickness along z.  Gradients
// are taken before the branch, where all four pixels of a quad take part.
export const FRAGMENT_MAP = `
#ifdef GRAIN
{
#ifdef ACROSS
  vec3 place = vPlace.yxz, facing = abs(vFacing.yxz);
#else
  vec3 place = vPlace, facing = abs(vFacing);
#endif
  bool isFace = facing.z >= facing.x && facing.z >= facing.y;
  bool isEdge = !isFace && facing.y >= facing.x;
  vec2 at = (isFace ? place.xy : isEdge ? place.xz : place.yz) / tile + shift;
  vec2 right = dFdx(at), up = dFdy(at);
  vec4 wood = isFace ? textureGrad(faceGrain, at, right, up)
    : isEdge ? textureGrad(edgeGrain, at, right, up)
    : textureGrad(endGrain, at, right, up);
  diffuseColor.rgb *= wood.rgb;
}
#endif
`;

export const FRAGMENT_PALE = `
gl_FragColor.rgb = mix(gl_FragColor.rgb, sRGBTransferOETF(vec4(paper, 1.0)).rgb, pale);
#include <dithering_fragment>
`;
