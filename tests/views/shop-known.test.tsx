import { readFileSync } from 'node:fs';
import { cleanup, render, waitFor } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { keepUnits } from '../../src/calculators/view/units.tsx';
import { shopDefaults } from '../../src/method/shop/defaults.ts';
import { readShop } from '../../src/method/shop/index.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { Begins } from '../../src/site/shop/Begins.tsx';
import { Summary } from '../../src/site/shop/Summary.tsx';

afterEach(() => {
  cleanup();
  keepUnits(defaultUnits);
});

const { shop, reading } = readShop(readFileSync('methods/shop.yaml', 'utf8'));
if (!shop) throw new Error('The shop of the demonstration cannot be read.');

test('what a record says and what calculators begin with are in the units of the reader, and name the place as they know it', async () => {
  keepUnits({ ...defaultUnits, system: 'inch' });
  render(
    <>
      <Summary shop={shop} goTo={() => undefined} />
      <Begins defaults={shopDefaults({ shop, reading })} aside={false} titles={{}} />
    </>,
  );
  const text = () => document.body.textContent ?? '';
  await waitFor(() => expect(text()).toContain('climate of Duluth, Minnesota'), { timeout: 20_000 });
  expect(text()).toContain('by day 68 °F, by night 62.6 °F');
  expect(text()).not.toContain('duluth-mn');
  expect(text()).not.toMatch(/\d °C/);
});
