import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import CalculatorsIndex from '../../src/site/calculators/CalculatorsIndex.tsx';
import { calculatorEntry } from '../../src/site/calculators/entry.ts';
import Home from '../../src/site/home/Home.tsx';
import { emergencies, jobs, pagesOfCalculator } from '../../src/site/jobs.ts';
import { HowToFooter } from '../../src/site/page/HowToFooter.tsx';
import { NoSuchPage } from '../../src/site/page/NoSuchPage.tsx';

afterEach(cleanup);

const woods = [{ id: 'white-ash', name: 'White ash', botanical: 'Fraxinus americana', tradeNames: [] }];
const leadsTo = (to: string) => document.querySelector(`a[href="${to}"]`);

describe('the first page', () => {
  test('says what the site is, then the emergencies, then the search, then the work', () => {
    render(<Home usual={woods} count={261} />);
    const text = document.body.textContent ?? '';
    const places = ['Kerf & Cure', 'serving boards', 'A cup grows hot', 'Find anything', 'Choose the wood'].map(
      (part) => text.indexOf(part),
    );
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    for (const { to } of emergencies) expect(leadsTo(to)).toBeTruthy();
  });

  test('leads to the page and the calculators of every job', () => {
    render(<Home usual={woods} count={261} />);
    for (const job of jobs) {
      expect(leadsTo(`/how-to/${job.page}`), job.id).toBeTruthy();
      for (const id of Object.keys(job.calculators)) expect(leadsTo(`/calculators/${id}`), id).toBeTruthy();
      for (const { to } of job.rooms ?? []) expect(leadsTo(to), to).toBeTruthy();
    }
    for (const room of ['/methods', '/bench', '/batches', '/class']) expect(leadsTo(room), room).toBeTruthy();
  });
});

test('the list of calculators holds each once, by the stages of the work, with its how-to page', () => {
  render(<CalculatorsIndex calculators={calculators.map(calculatorEntry)} />);
  for (const { id } of calculators) {
    expect(document.querySelectorAll(`a[href="/calculators/${id}"]`)).toHaveLength(1);
    expect(leadsTo(`/how-to/${pagesOfCalculator(id)[0]}`)).toBeTruthy();
  }
  expect(screen.getAllByRole('heading', { level: 2 }).map(({ textContent }) => textContent)).toEqual(
    jobs.filter(({ calculators: own }) => Object.keys(own).length > 0).map(({ label }) => label),
  );
});

test('a how-to page ends with the booklet of its stage, its calculators and the methods', () => {
  render(<HowToFooter />);
  expect(screen.getAllByRole('link').map((link) => link.getAttribute('href'))).toEqual([
    '/booklets/shape-and-sand',
    '/calculators/template-fit',
    '/calculators/cutter-speed',
    '/methods',
  ]);
});

test('where there is no page stand three ways on and the search', () => {
  render(<NoSuchPage />);
  expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('There is no such page');
  expect(leadsTo('/')).toBeTruthy();
  expect(screen.getByRole('searchbox', { name: 'Find anything on this site' })).toBeTruthy();
});
