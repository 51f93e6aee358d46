import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import type { CaseQuantity, WorkedMethod } from '../../src/method/case/types.ts';
import { workMethod } from '../../src/method/case/work.ts';
import { readMethod } from '../../src/method/read.ts';
import { tray, trayDerived } from '../../src/site/mdx/tray.ts';
import { root } from '../../src/store/index.ts';

// The drawings of the handbook show the tray that the class makes: its sizes are those of the method, and nobody's else.

const file = 'methods/class-of-twelve.yaml';
const text = readFileSync(join(root, file), 'utf8');

let worked: WorkedMethod;
beforeAll(async () => {
  const working = await workMethod(readMethod(text, file));
  if (!working.ok) throw new Error('The class of twelve is not worked out.');
  worked = working.worked;
});

const size = (pointer: string): number => (worked.at(pointer) as CaseQuantity).value;

describe('a size in the drawings is that of the method', () => {
  test.each([
    [tray.length, '/parameters/length'],
    [tray.width, '/parameters/width'],
    [tray.thickness, '/parameters/thickness'],
    [tray.cornerRadius, '/parameters/cornerRadius'],
    [tray.channel.length, '/parameters/channelLength'],
    [tray.channel.width, '/parameters/channelWidth'],
    [tray.channel.depth, '/parameters/channelDepth'],
    [tray.blank.length, '/calculations/order/figures/roughLength'],
    [tray.blank.width, '/calculations/order/figures/roughWidth'],
    [tray.blank.thickness, '/calculations/order/figures/roughThickness'],
    [tray.template.thickness, '/tools/template/thickness'],
    [tray.channelBit.diameter, '/tools/channel-bit/diameter'],
    [tray.templateBit.diameter, '/tools/template-bit/diameter'],
    [tray.templateBit.cuttingLength, '/tools/template-bit/cuttingLength'],
  ])('%d mm, %s', (drawn, pointer) => {
    expect(drawn).toBeCloseTo(size(pointer), 2);
  });

  test('what its sentences say: the line outside the outline, the collar, the rounded edge', () => {
    expect(worked.calculations['outline']?.inputs?.['clearance']).toBe(tray.outlineClearance);
    expect(worked.record.tools['plunge-router']?.what).toContain(`a ${tray.channelBit.collar} mm (5/8 in) collar`);
    expect(worked.record.tools['round-over-bit']?.what).toContain(`${tray.roundOver} mm (1/8 in)`);
  });
});

test('three widths of sound wood lie beyond each end of the channel, and two thirds of the board under it', () => {
  expect(trayDerived.beyondChannel).toBeGreaterThanOrEqual(3 * tray.channel.width);
  expect(trayDerived.underChannel).toBeGreaterThanOrEqual((2 / 3) * tray.thickness);
});

test('the tray lies on its blank with the line for the saw all round', () => {
  expect(tray.length + 2 * tray.outlineClearance).toBeLessThanOrEqual(tray.blank.length);
  expect(tray.width + 2 * tray.outlineClearance).toBeLessThanOrEqual(tray.blank.width);
  expect(worked.calculations['outline']?.result?.verdict.text).toContain(
    'The outline lies on the board along the grain.',
  );
});

test('the class makes it in maple, with an amber channel, oiled with mineral oil, for Duluth', () => {
  expect(
    Object.fromEntries(
      ['wood', 'colour', 'resin', 'finish', 'place'].map((name) => [name, worked.parameters[name]?.raw]),
    ),
  ).toEqual({
    wood: 'sugar-maple',
    colour: 'amber, 100 %, paste 2 %',
    resin: 'slow-casting-2-1',
    finish: 'mineral-oil',
    place: 'duluth-mn',
  });
});
