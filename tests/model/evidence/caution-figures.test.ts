import { describe, expect, test } from 'vitest';
import { cautionById } from '../../../src/model/evidence/cautions.ts';

// Every number in the cautions on resin and finishes as it was read, a second time and by itself, with where it was read.

const toCelsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

describe('a caution with a number', () => {
  test.each([
    ['resin-cup-heat', 'udel-epoxy-smoke', 'source-text', ['1.5 lb (0.68 kg)', '900 °F (482 °C)', 'two buildings']],
    ['alcohol-flash', 'niosh-pocket-guide', 'source-text', ['53 °F (11.7 °C)']],
    ['spirits-flash', 'osha-stoddard', 'source-text', ['above 21 °C (70 °F)']],
    ['pigment-dust', 'niosh-pel-mica', 'source-text', ['3 mg/m³', 'respirable']],
    ['hardener-burns', 'clp-1272-2008', 'quoted', ['H314', 'H317', 'H315, H317 and H319']],
    ['oily-rags', 'fpl-gtr-190', 'source-text', ['into water, in a sealed metal container']],
    ['rags-outdoors', 'nfpa-oily-rags', 'quoted', ['covered metal container with water and detergent']],
    ['hardener-sawdust', 'resin-maker-safety', 'quoted', ['sawdust']],
    ['deep-pour', 'resin-maker-safety', 'quoted', ['carbon monoxide, nitrogen oxides and ammonia']],
    ['resin-food', 'cfr-21-175-300', 'source-text', ['21 CFR 175.300', 'continuous film']],
  ])('%s says it as %s does', (id, source, seen, words) => {
    const caution = cautionById(id);
    expect(caution?.citation).toMatchObject({ source, seen });
    for (const each of words) expect(`${caution?.text} ${caution?.why}`).toContain(each);
  });

  test.each(['resin-cup-heat', 'alcohol-flash'])('%s has one temperature in both units', (id) => {
    const [, fahrenheit, celsius] = /([\d.]+) °F \(([\d.]+) °C\)/.exec(cautionById(id)?.why ?? '') ?? [];
    expect(Math.abs(toCelsius(Number(fahrenheit)) - Number(celsius))).toBeLessThanOrEqual(0.5);
  });
});

test('what careful shops say of a heat tool, of warming and of skin is marked common practice', () => {
  for (const id of [
    'heat-tool',
    'warming-resin',
    'resin-off-skin',
    'resin-waste',
    'wax-melting',
    'nut-oils',
    'resin-storage',
  ])
    expect(cautionById(id)).toMatchObject({ basis: 'shop-practice' });
});
