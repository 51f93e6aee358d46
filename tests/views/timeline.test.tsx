import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { renderToString } from 'react-dom/server';
import { afterEach, expect, test } from 'vitest';
import { TimelineView } from '../../src/calculators/view/TimelineView.tsx';
import type { Timeline } from '../../src/model/evidence/index.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';

const timeline: Timeline = {
  zero: 'mixing',
  events: [
    { id: 'layer-2', label: 'Next layer', at: 20 * 3600, basis: 'supplier-sheet' },
    {
      id: 'sandable',
      label: 'Sand',
      at: 48 * 3600,
      low: 44 * 3600,
      high: 54 * 3600,
      basis: 'derived',
      note: 'At 20 °C.',
    },
  ],
};

afterEach(cleanup);
const event = (id: string) => document.querySelector(`[data-event="${id}"]`)?.textContent ?? '';

test('the server writes the hours and no clock, which only the reader’s browser knows', () => {
  const html = renderToString(<TimelineView timeline={timeline} units={defaultUnits} />);
  expect(html).toContain('from <!-- -->mixing');
  expect(html).toContain('20 h');
  expect(html).not.toMatch(/\b(Mon|Tue|Wed|Thu|Fri|Sat|Sun)\b/);
});

test('each event stands at its clock time beside its hours, counted from the start that is given', () => {
  window.history.replaceState(null, '', '/page');
  render(<TimelineView timeline={timeline} units={defaultUnits} />);
  fireEvent.change(screen.getByLabelText('Started at'), { target: { value: '2026-03-06T18:00' } });
  expect(event('layer-2')).toMatch(/^Sat (2 pm|14:00)20 hNext layer/);
  expect(event('sandable')).toMatch(/^Sun (6 pm|18:00)/);
  expect(event('sandable')).toMatch(/: Sun (2 pm|14:00) to Mon (12 am|0?0:00|24:00)/);
  expect(window.location.search).toBe('');
});

test('without a start the hours stay', () => {
  render(<TimelineView timeline={timeline} units={defaultUnits} />);
  fireEvent.change(screen.getByLabelText('Started at'), { target: { value: '' } });
  expect(event('layer-2')).toMatch(/^20 hNext layer/);
});
