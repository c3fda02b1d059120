/**
 * A stretch of a stroke as a quad across the view's plane, longer by half its width at both ends, so that stretches
 * join; its edge fades over one pixel. Pixels are those of the page; y runs up.
 */
export const STROKE_VERTEX = `
precision highp float;
uniform mat4 projectionMatrix;
uniform mat4 viewMatrix;
uniform vec2 size;
in vec3 position;
in vec3 start;
in vec3 end;
in vec3 colour;
in vec4 manner;
out vec3 tone;
out vec2 inside;
out vec4 stretch;
out float halfWidth;

void main() {
  vec4 a = projectionMatrix * viewMatrix * vec4(start, 1.0);
  vec4 b = projectionMatrix * viewMatrix * vec4(end, 1.0);
  vec2 run = (b.xy - a.xy) * size * 0.5;
  float pixels = length(run);
  vec2 along = pixels > 1e-4 ? run / pixels : vec2(1.0, 0.0);
  halfWidth = manner.x * 0.5;
  float grown = halfWidth + 0.75;
  float at = mix(-grown, pixels + grown, position.x);
  vec2 shift = along * at + vec2(-along.y, along.x) * position.y * grown;
  vec4 place = mix(a, b, position.x);
  gl_Position = vec4(a.xy + shift * 2.0 / size, place.z - 0.00012, 1.0);
  tone = colour;
  inside = vec2(at, position.y * grown);
  stretch = vec4(pixels, manner.y, manner.z, manner.w);
}
`;

/** Round ends, an edge that fades over a pixel, and dashes counted from the stroke's own beginning. */
export const STROKE_FRAGMENT = `
precision highp float;
in vec3 tone;
in vec2 inside;
in vec4 stretch;
in float halfWidth;
out vec4 painted;

void main() {
  float beyond = max(max(-inside.x, inside.x - stretch.x), 0.0);
  float off = length(vec2(beyond, inside.y));
  float cover = clamp(halfWidth + 0.5 - off, 0.0, 1.0) * min(1.0, halfWidth * 2.0);
  if (stretch.y > 0.0) {
    float place = mod(stretch.w + clamp(inside.x, 0.0, stretch.x), stretch.y + stretch.z);
    cover *= clamp(stretch.y + 0.5 - place, 0.0, 1.0);
  }
  if (cover < 0.01) discard;
  painted = vec4(tone * cover, cover);
}
`;
