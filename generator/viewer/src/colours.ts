// Paper and ink of `style/ground.css`, for what is drawn in space.

/** A colour that all of the page shares, as CSS writes it. */
export function groundColour(name: "paper" | "sheet" | "ink"): string {
  return getComputedStyle(document.documentElement).getPropertyValue(`--${name}`).trim();
}
