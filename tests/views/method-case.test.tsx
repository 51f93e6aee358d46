import { act, cleanup, fireEvent, render } from '@testing-library/react';
import { hydrateRoot } from 'react-dom/client';
import { renderToString } from 'react-dom/server';
import { afterEach, describe, expect, test } from 'vitest';
import { fieldsOf } from '../../src/calculators/kit/answer.ts';
import { fieldMeta } from '../../src/calculators/kit/fields.ts';
import { keepUnits, useUnits } from '../../src/calculators/view/units.tsx';
import { answerNumbers } from '../../src/method/page/answer.ts';
import type { MethodPage } from '../../src/method/page/types.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { caseForm } from '../../src/site/method/case-form.ts';
import { useCase } from '../../src/site/method/use-case.ts';
import { readMethodTexts } from '../../src/store/index.ts';

const text = readMethodTexts().find(({ id }) => id === 'first-tray')?.text ?? '';
const answered = await answerNumbers({ text, file: 'methods/first-tray.yaml' });
if (!answered.ok) throw new Error('the first tray is not worked out');
const page: MethodPage = answered.page;
const form = caseForm(page);

function Case() {
  const { raw, own, set } = useCase(form, useUnits());
  return (
    <>
      <output>{JSON.stringify(own)}</output>
      <input aria-label="Length" value={raw['length']} onChange={({ target }) => set({ length: target.value })} />
    </>
  );
}

const toPage = (search: string) => window.history.replaceState(null, '', `/methods/first-tray${search}`);
const own = () => JSON.parse(document.querySelector('output')?.textContent ?? '');

afterEach(() => {
  cleanup();
  document.body.replaceChildren();
  keepUnits(defaultUnits);
  toPage('');
});

test('the place of a case is shown by its name, before any list is fetched', () => {
  const { place } = fieldsOf(form);
  expect(form.example.metric['place']).toBe('duluth-mn');
  expect(place && fieldMeta(place)?.pick).toEqual([{ value: 'duluth-mn', label: 'Duluth, Minnesota' }]);
});

describe('the case of an address', () => {
  test.each(['metric', 'inch'] as const)(
    'is kept while a page as sent comes to life for a reader of %s',
    async (system) => {
      toPage('');
      const sent = renderToString(<Case />);
      keepUnits({ ...defaultUnits, system });
      toPage('?pieces=5&length=420+mm');
      const box = document.body.appendChild(document.createElement('div'));
      box.innerHTML = sent;
      const root = await act(async () => hydrateRoot(box, <Case />));
      expect(window.location.search).toBe('?pieces=5&length=420+mm');
      expect(own()).toMatchObject({ pieces: '5' });
      await act(async () => root.unmount());
    },
  );

  test('is not touched by a turn to the other units, which writes down what was typed', async () => {
    toPage('?pieces=5');
    render(<Case />);
    await act(async () => keepUnits({ ...defaultUnits, system: 'inch' }));
    expect(window.location.search).toBe('?pieces=5');
    fireEvent.change(document.querySelector('input') as HTMLInputElement, { target: { value: '16' } });
    await act(async () => keepUnits({ ...defaultUnits, system: 'metric' }));
    expect(window.location.search).toBe('?pieces=5&length=16+in');
  });
});
