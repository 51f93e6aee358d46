const channels = (hex: string) => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255);

/**
 * Relative luminance of a colour, from 0 (black) to 1 (white).
 *
 * @param hex `#rrggbb`
 * @see W3C, Web Content Accessibility Guidelines 2.2, “relative luminance”
 */
export function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = channels(hex).map((part) =>
    part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/**
 * Contrast of two colours, from 1 to 21.
 *
 * @see W3C, Web Content Accessibility Guidelines 2.2, “contrast ratio”
 */
export function contrast(first: string, second: string): number {
  const [light = 0, dark = 0] = [luminance(first), luminance(second)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

/** Hue of a colour, degrees from -180 to 180. */
export function hue(hex: string): number {
  const [red = 0, green = 0, blue = 0] = channels(hex);
  return (Math.atan2(Math.sqrt(3) * (green - blue), 2 * red - green - blue) * 180) / Math.PI;
}
