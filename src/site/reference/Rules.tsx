import Link from '@docusaurus/Link';
import type { RuleLevel } from '../../method/rules/rule.ts';
import { Page } from '../page/Page.tsx';
import type { PartSummary } from './data.ts';
import { LevelMark } from './LevelMark.tsx';
import { PartedList } from './PartedList.tsx';
import { addressOfRules, besidesGroup } from './rule-parts.ts';

const levelMeans: Readonly<Record<RuleLevel, string>> = {
  stop: 'The method must not be followed so.',
  warn: 'The piece or somebody’s day may be spoiled.',
  note: 'Worth knowing.',
};

/** Every rule that a method is judged by, by what it concerns and by name, and what a check says besides, each with the page on which it stands. */
export default function Rules({ parts }: { parts: readonly PartSummary[] }) {
  const count = parts.reduce((sum, { id, entries }) => sum + (id === besidesGroup ? 0 : entries.length), 0);
  return (
    <Page
      title="Rules for a method"
      description="What a check asks of a shop method: what each rule looks at, why it is one, where it is printed, and whether a method may depart from it."
      width="text"
    >
      <h1>Rules for a method</h1>
      <p className="lead">
        A check works a <Link to="/reference/method-format">method</Link> out and asks rules of it; a plan asks of its
        times too. There are {count} in all. A method that keeps all of them is not thereby safe: local codes, the
        maker’s data sheet and the manual of the machine have the last word.
      </p>
      <ul className="plain-list">
        {(Object.keys(levelMeans) as RuleLevel[]).map((level) => (
          <li key={level}>
            <LevelMark level={level} /> {levelMeans[level]}
          </li>
        ))}
      </ul>
      <PartedList parts={parts} addressOf={addressOfRules} />
    </Page>
  );
}
