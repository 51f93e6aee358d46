import Link from '@docusaurus/Link';
import { useUnits } from '../../calculators/view/units.tsx';
import { inReaderUnits } from '../../model/quantity/index.ts';
import { Anchored } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import { SourceLink } from '../wood/FigureTable.tsx';
import { LevelMark } from './LevelMark.tsx';
import styles from './method.module.css';
import type { RuleEntry, RuleGroupEntry } from './method-data.ts';

/** The rules of a method that concern one thing. */
export default function RulesOfGroup({ group }: { group: RuleGroupEntry }) {
  const about = group.title.toLowerCase();
  return (
    <Page
      title={`Rules: ${about}`}
      description={`What a check asks of a shop method, why, where it is printed, and whether a method may depart from it: ${about}.`}
      width="text"
    >
      <p className="small">
        <Link to="/reference/rules">All rules</Link>
      </p>
      <h1>Rules: {about}</h1>
      {group.rules.map((rule) => (
        <RuleSection key={rule.id} rule={rule} />
      ))}
    </Page>
  );
}

function RuleSection({ rule }: { rule: RuleEntry }) {
  const units = useUnits();
  const { id, level, title, looksAt, why, citation, neverExcepted, general } = rule;
  return (
    <section className={`card-unbroken ${styles.rule}`} data-level={level}>
      <Anchored as="h2" id={id}>
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
