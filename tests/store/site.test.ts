import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { colourSheet, readSite, readSiteText } from '../../src/store/index.ts';
import { contrast, hue } from '../../src/store/site/contrast.ts';

const text = readFileSync('site.yaml', 'utf8');

describe('contrast', () => {
  // W3C, Web Content Accessibility Guidelines 2.2: the ratio runs from 1 to 21.
  test('black on white is 21 to 1, a colour on itself 1 to 1, in either order', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
    expect(contrast('#ffffff', '#000000')).toBeCloseTo(21, 6);
    expect(contrast('#7c3a1d', '#7c3a1d')).toBe(1);
  });

  // W3C, technique G18, names #767676 on white as just meeting 4.5 to 1 (from memory).
  test('the lightest grey that can be read on white is #767676', () => {
    expect(contrast('#767676', '#ffffff')).toBeGreaterThanOrEqual(4.5);
    expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
  });

  test('hues of the three primaries stand a third of a turn apart', () => {
    expect(['#ff0000', '#00ff00', '#0000ff'].map(hue).map(Math.round)).toEqual([0, 120, -120]);
  });
});

describe('site.yaml', () => {
  test('of this site is sound', () => {
    expect(readSiteText(text).problems).toEqual([]);
    expect(readSite().name).toBe('Kerf & Cure');
  });

  test.each<[string, [string | RegExp, string], RegExp]>([
    ['a missing name', [/^name: .*$/m, ''], /name/],
    ['a colour by name', ['accent: "#7c3a1d"', 'accent: brown'], /colours\.light\.accent.*#rrggbb/],
    [
      'an address with a path',
      ['https://kerf-and-cure.example', 'https://shop.example/boards'],
      /address.*without a slash/,
    ],
    ['a folder without slashes', ['folder: /', 'folder: boards'], /folder.*begins and ends with a slash/],
    ['a folder that climbs', ['# shop: methods/shop.yaml', 'shop: ../shop.yaml'], /shop.*methods\/shop\.yaml/],
    ['a key that nothing reads', ['site: 1', 'site: 1\nlogo: x'], /logo/],
    [
      'pale ink',
      ['accent: "#7c3a1d"', 'accent: "#c98a6d"'],
      /colours\.light\.accent #c98a6d has a contrast of 2\.\d on paper.*4\.5 is the least\. Take a darker one/,
    ],
    ['dark ink in the dark', ['accent: "#e3a57f"', 'accent: "#7c3a1d"'], /colours\.dark\.accent.*Take a lighter one/],
    [
      'doubt in the colour of danger',
      ['doubt-ink: "#5f4a00"', 'doubt-ink: "#8c1d18"'],
      /doubt-ink.*0 degrees of hue apart/,
    ],
  ])('%s is told with its place and a way out', (_, [from, to], message) => {
    const spoilt = text.replace(from, to);
    expect(spoilt).not.toBe(text);
    const { site, problems } = readSiteText(spoilt);
    expect(site).toBeUndefined();
    expect(problems.map(({ line, field, message: words }) => `${line} ${field} ${words}`).join('\n')).toMatch(message);
    expect(problems.every(({ line }) => line > 0)).toBe(true);
  });

  test('its colours become a style sheet, the light ones first', () => {
    const sheet = colourSheet(readSite());
    expect(sheet).toMatch(
      /:root \{[^}]*--kerf-accent: #7c3a1d;[^}]*\}\s+\[data-theme='dark'\] \{[^}]*--kerf-accent: #e3a57f;/,
    );
  });
});

test('nothing from memory takes the colour of danger', () => {
  for (const file of ['src/calculators/view/evidence.module.css', 'src/site/woods/woods.module.css'])
    expect(readFileSync(file, 'utf8')).not.toContain('caution-ink');
});
