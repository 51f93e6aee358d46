import Link from '@docusaurus/Link';
import useBrokenLinks from '@docusaurus/useBrokenLinks';
import { useCallback } from 'react';
import type { RuleLevel } from '../../method/rules/rule.ts';
import { Anchored } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import { LevelMark } from './LevelMark.tsx';
import type { RuleGroupSummary } from './method-data.ts';
import styles from './reference.module.css';
import { addressOfRules, besidesGroup } from './rule-parts.ts';
import { useLedOn } from './use-led-on.ts';

const levelMeans: Readonly<Record<RuleLevel, string>> = {
  stop: 'The method must not be followed so.',
  warn: 'The piece or somebody’s day may be spoiled.',
  note: 'Worth knowing.',
};

/** Every rule that a method is judged by, by what it concerns and by name, and what a check says besides, each with the page on which it stands. */
export default function Rules({ groups }: { groups: readonly RuleGroupSummary[] }) {
  const count = groups.reduce((sum, { id, rules }) => sum + (id === besidesGroup ? 0 : rules.length), 0);
  const pageOf = useCallback(
    (id: string) => {
      const group = groups.find(({ rules }) => rules.some((rule) => rule.id === id));
      return group && addressOfRules(group.id);
    },
    [groups],
  );
  useLedOn(pageOf);
  const { collectAnchor } = useBrokenLinks();
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
      {groups.map(({ id, title, rules }) => (
        <section key={id}>
          <Anchored as="h2" id={id}>
            {title}
          </Anchored>
          <ul className={styles.parts}>
            {rules.map((rule) => {
              collectAnchor(rule.id);
              return (
                <li key={rule.id} id={rule.id}>
                  <Link to={`${addressOfRules(id)}#${rule.id}`}>{rule.title}</Link>
                </li>
              );
            })}
          </ul>
        </section>
      ))}
    </Page>
  );
}
