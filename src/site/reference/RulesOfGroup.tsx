import { useUnits } from '../../calculators/view/units.tsx';
import { inReaderUnits } from '../../model/quantity/index.ts';
import { Anchored } from '../page/Anchored.tsx';
import { SourceLink } from '../wood/FigureTable.tsx';
import { LevelMark } from './LevelMark.tsx';
import styles from './method.module.css';
import type { RuleEntry, RuleGroupEntry } from './method-data.ts';
import { PageOfPart } from './PageOfPart.tsx';
import { listOfRules } from './rule-parts.ts';

/** The rules of a method that concern one thing. */
export default function RulesOfGroup({ group }: { group: RuleGroupEntry }) {
  const about = group.title.toLowerCase();
  return (
    <PageOfPart
      title={`Rules: ${about}`}
      description={`What a check asks of a shop method, why, where it is printed, and whether a method may depart from it: ${about}.`}
      list={listOfRules}
    >
      {group.rules.map((rule) => (
        <RuleSection key={rule.id} rule={rule} />
      ))}
    </PageOfPart>
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
