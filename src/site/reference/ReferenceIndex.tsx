import Link from '@docusaurus/Link';
import { Page } from '../page/Page.tsx';

const entries = [
  {
    to: '/reference/evidence',
    title: 'Where the figures come from',
    text: 'How figures are marked, how many of each kind there are, and which still need somebody with the book.',
  },
  {
    to: '/reference/equations',
    title: 'Equations',
    text: 'Every formula with its symbols, where it holds, and its source.',
  },
  {
    to: '/reference/checks',
    title: 'Checks',
    text: 'Published values beside ours, and our own by another road, with the difference and the tolerance, failures included.',
  },
  { to: '/reference/tables', title: 'Tables', text: 'The published tables row by row, to read and to download.' },
  { to: '/reference/sources', title: 'Sources', text: 'What was read, and how.' },
  {
    to: '/reference/food-rules',
    title: 'Rules on food contact',
    text: 'What each asks, of whom, and where it is silent on wood.',
  },
  {
    to: '/reference/rules',
    title: 'Rules for a method',
    text: 'What a check asks of a shop method, why, and whether a method may depart from it.',
  },
  {
    to: '/reference/acts',
    title: 'Acts of a method',
    text: 'What is done in a step: what it gives off, what can hurt, what is worn or stands ready.',
  },
  {
    to: '/reference/method-format',
    title: 'The format of a method',
    text: 'Every field of the file, with what may stand in it, and a whole method to begin from.',
  },
  {
    to: '/reference/shop-record',
    title: 'The shop record',
    text: 'Every field of the file that a shop keeps of its machines, materials, hours and prices.',
  },
  {
    to: '/reference/schemas',
    title: 'Schemas',
    text: 'The JSON Schemas of the records and of the calculators’ inputs.',
  },
  {
    to: '/reference/library',
    title: 'The library',
    text: 'The model, the calculators and the methods for programs: every function, with its units and errors.',
  },
] as const;

/** The reference pages, all made from the data. */
export default function ReferenceIndex() {
  return (
    <Page
      title="Reference"
      description="Equations, checks, tables, sources and schemas behind every figure of this site."
      width="text"
    >
      <h1>Reference</h1>
      <p className="lead">These pages are made from the same records that the calculators use.</p>
      <ul className="index-list">
        {entries.map((entry) => (
          <li key={entry.to}>
            <Link to={entry.to}>
              <strong>{entry.title}</strong>
              <span>{entry.text}</span>
            </Link>
          </li>
        ))}
      </ul>
    </Page>
  );
}
