import Link from '@docusaurus/Link';
import { useUnits } from '../../calculators/view/units.tsx';
import { besides } from '../../method/rules/besides.ts';
import type { RuleLevel } from '../../method/rules/rule.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import { Anchored } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import { SourceLink } from '../wood/FigureTable.tsx';
import { LevelMark } from './LevelMark.tsx';
import styles from './method.module.css';
import type { RuleEntry, RuleGroupEntry } from './method-data.ts';

const levelMeans: Readonly<Record<RuleLevel, string>> = {
  stop: 'The method must not be followed so.',
  warn: 'The piece or somebody’s day may be spoiled.',
  note: 'Worth knowing.',
};

/** Every rule that a method is judged by, by what it concerns. */
export default function Rules({ groups }: { groups: readonly RuleGroupEntry[] }) {
  const count = groups.reduce((sum, { rules }) => sum + rules.length, 0);
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
      <ul className={styles.contents}>
        {groups.map(({ id, title, rules }) => (
          <li key={id}>
            <a href={`#${id}`}>{title}</a> <span className="quiet">{rules.length}</span>
          </li>
        ))}
      </ul>
      {groups.map((group) => (
        <section key={group.id}>
          <Anchored as="h2" id={group.id}>
            {group.title}
          </Anchored>
          {group.rules.map((rule) => (
            <RuleSection key={rule.id} rule={rule} />
          ))}
        </section>
      ))}
      <section>
        <Anchored as="h2" id="besides">
          What a check says besides
        </Anchored>
        {besides.map(({ id, title, text }) => (
          <section key={id} className={`card-unbroken ${styles.rule}`} data-level="stop">
            <Anchored as="h3" id={id}>
              {title}
            </Anchored>
            <p className="small">
              <LevelMark level="stop" /> <code>{id}</code>
            </p>
            <p>{text}</p>
          </section>
        ))}
      </section>
    </Page>
  );
}

function RuleSection({ rule }: { rule: RuleEntry }) {
  const units = useUnits();
  const { id, level, title, looksAt, why, citation, neverExcepted, general } = rule;
  return (
    <section className={`card-unbroken ${styles.rule}`} data-level={level}>
      <Anchored as="h3" id={id}>
        {title}
      </Anchored>
      <p className="small">
        <LevelMark level={level} /> <code>{id}</code>
      </p>
      <p>
        <strong>Looks at:</strong> {inReaderUnits(looksAt, units)}
        {general && ' Where a rule of its own, as grave, speaks of the same calculation, this one is silent.'}
      </p>
      <p>
        <strong>Why:</strong> {inReaderUnits(why, units)}
      </p>
      <p>
        <strong>{neverExcepted ? 'No exception:' : 'Exception:'}</strong>{' '}
        {neverExcepted ?? 'a method may depart from it with its reason.'}
      </p>
      <p className="small">Source: {citation ? <SourceLink citation={citation} /> : 'common practice'}</p>
    </section>
  );
}
