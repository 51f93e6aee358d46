import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const css = readFileSync('src/site/css/tokens.css', 'utf8');

/** Colours of a theme by name: the first block is the light one, the second lays the dark ones over it. */
function colours(dark: boolean): Readonly<Record<string, string>> {
  const blocks = [...css.matchAll(/(?:^|\n)(:root|\[data-theme='dark'\]) \{([^}]*)\}/g)].map(([, , body = '']) => body);
  const read = (body: string) =>
    Object.fromEntries([...body.matchAll(/--kerf-([a-z-]+): (#[0-9a-f]{6});/g)].map(([, name, hex]) => [name, hex]));
  return { ...read(blocks[0] ?? ''), ...(dark ? read(blocks[1] ?? '') : {}) };
}

const channels = (hex: string) => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255);

/** Relative luminance and contrast: W3C, Web Content Accessibility Guidelines 2.2, definitions of both terms. */
function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = channels(hex).map((part) =>
    part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(first: string, second: string): number {
  const [light = 0, dark = 0] = [luminance(first), luminance(second)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

/** Hue in degrees. */
function hue(hex: string): number {
  const [red = 0, green = 0, blue = 0] = channels(hex);
  return (Math.atan2(Math.sqrt(3) * (green - blue), 2 * red - green - blue) * 180) / Math.PI;
}

test('black on white is 21 to 1, as the guidelines say', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
});

describe.each([
  ['light', false],
  ['dark', true],
] as const)('in the %s', (_, dark) => {
  const named = colours(dark);
  const papers = ['paper', 'card', 'field', 'wash'];

  test.each(['ink', 'muted', 'accent', 'caution-ink', 'doubt-ink'])('%s can be read on every paper', (ink) => {
    for (const paper of papers)
      expect(contrast(named[ink] ?? '', named[paper] ?? ''), `${ink} on ${paper}`).toBeGreaterThanOrEqual(4.5);
  });

  test('what hurts and what is not checked are two colours', () => {
    expect(Math.abs(hue(named['caution-ink'] ?? '') - hue(named['doubt-ink'] ?? ''))).toBeGreaterThan(30);
  });
});

test('nothing from memory takes the colour of danger', () => {
  for (const file of ['src/calculators/view/evidence.module.css', 'src/site/woods/woods.module.css'])
    expect(readFileSync(file, 'utf8')).not.toContain('caution-ink');
});
