import Link from '@docusaurus/Link';
import { memo } from 'react';
import { useUnits } from '../../calculators/view/units.tsx';
import type { MethodPage, ShownFinding } from '../../method/page/types.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import styles from './method.module.css';
import { sameIn } from './same-in.ts';

const words = { stop: 'Stop', warn: 'Warning', note: 'Note' } as const;

/** One thing that the rules found: its level in a word, what to do instead, or why it is sound all the same. */
export function FindingLine({ finding, step }: { finding: ShownFinding; step?: boolean }) {
  const units = useUnits();
  const { rule, level, message, wayOut, excepted, number, step: id } = finding;
  return (
    <p className={styles.finding} data-level={excepted === undefined ? level : 'excepted'}>
      <strong>{excepted === undefined ? words[level] : 'Excepted'}.</strong> {inReaderUnits(message, units)}{' '}
      {excepted === undefined ? inReaderUnits(wayOut, units) : `The reason: ${excepted}`}{' '}
      <small>
        {step && number !== undefined && (
          <>
            <a href={`#step-${id}`}>Step {number}</a>
            {' · '}
          </>
        )}
        <Link to={`/reference/rules#${rule}`}>{rule}</Link>
      </small>
    </p>
  );
}

/** Everything that the rules found, and every exception with its reason. */
export const Findings = memo(
  function Findings({ page: { findings, exceptions, impossible } }: { page: MethodPage }) {
    const units = useUnits();
    const unused = exceptions.filter(
      ({ rule }) => !findings.some((finding) => finding.rule === rule && finding.excepted),
    );
    return (
      <>
        {impossible && (
          <p className={styles.finding} data-level="stop">
            <strong>Not to be done so.</strong> There is no timetable, so that no window and no wait of it could be
            judged. {inReaderUnits(impossible.why, units)} <a href="#times">What would help</a>.
          </p>
        )}
        {findings.length === 0 && !impossible && <p>Every rule of the house is kept.</p>}
        {findings.map((finding, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a finding has no identity beyond its place
          <FindingLine key={at} finding={finding} step />
        ))}
        {unused.map(({ rule, reason }) => (
          <p key={`${rule} ${reason}`} className={styles.finding} data-level="excepted">
            <strong>Exception.</strong> {reason} <small>{rule}</small>
          </p>
        ))}
      </>
    );
  },
  sameIn('findings', 'exceptions', 'impossible'),
);
