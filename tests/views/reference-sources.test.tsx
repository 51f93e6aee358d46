import { cleanup, render } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { sourceSubjects, sources } from '../../src/model/evidence/index.ts';
import { partOf } from '../../src/site/plugin/part-summary.ts';
import Sources from '../../src/site/reference/Sources.tsx';
import SourcesOfSubject from '../../src/site/reference/SourcesOfSubject.tsx';

afterEach(cleanup);

test('every source stands on the page of one subject, with how it was read', () => {
  const shown: string[] = [];
  for (const subject of sourceSubjects) {
    render(<SourcesOfSubject subject={subject} />);
    for (const { id, title, note } of subject.sources as typeof sources) {
      const section = document.getElementById(id)?.closest('section');
      expect(section?.textContent, id).toContain(title);
      if (note) expect(section?.textContent, id).toContain(note);
    }
    shown.push(...[...document.querySelectorAll('h2')].map(({ id }) => id));
    cleanup();
  }
  expect(shown).toEqual(sources.map(({ id }) => id));
});

test('the list names every source once, with the page on which it stands', () => {
  render(<Sources parts={sourceSubjects.map((subject) => partOf(subject, subject.sources))} />);
  for (const { id: subject, sources: own } of sourceSubjects)
    for (const { id } of own)
      expect(document.getElementById(id)?.querySelector('a')?.getAttribute('href')).toBe(
        `/reference/sources/${subject}#${id}`,
      );
  const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
  expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
});
