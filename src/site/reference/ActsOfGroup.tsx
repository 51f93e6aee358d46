import { CautionList } from '../../calculators/view/CautionList.tsx';
import { cautionWords } from '../../model/evidence/index.ts';
import { Anchored } from '../page/Anchored.tsx';
import { anchorOfCaution } from './act-parts.ts';
import styles from './method.module.css';
import type { ActCautions, ActEntry, ActGroupEntry } from './method-data.ts';
import { PageOfPart } from './PageOfPart.tsx';

/** The acts of one part of the work, with what comes with each and what protects. */
export default function ActsOfGroup({ group }: { group: ActGroupEntry }) {
  const about = group.title.toLowerCase();
  return (
    <PageOfPart
      title={`Acts: ${about}`}
      description={`What each act of a step gives off, what can hurt in it, and what is worn or stands ready: ${about}.`}
      list={{ to: '/reference/acts', all: 'All acts' }}
    >
      <ul className={styles.contents}>
        {group.acts.map(({ id, label }) => (
          <li key={id}>
            <a href={`#${id}`}>{label}</a>
          </li>
        ))}
      </ul>
      {group.acts.map((act) => (
        <ActSection key={act.id} act={act} />
      ))}
    </PageOfPart>
  );
}

function ActSection({ act }: { act: ActEntry }) {
  const { id, label, about, hazards, protection, always, salvage, resin, drum, powder, solvent, besideRags } = act;
  return (
    <section className={styles.act}>
      <Anchored as="h2" id={id}>
        {label}
      </Anchored>
      <p>
        {about} <code>{id}</code>
      </p>
      {hazards.length > 0 && (
        <p>
          <strong>Comes with it:</strong> {hazards.join(', ')}.
        </p>
      )}
      {protection.length > 0 && (
        <p>
          <strong>Worn or at hand:</strong> {protection.join(', ')}.
        </p>
      )}
      <Cautions cautions={always} />
      <CautionsWhere when="Where the wood had another life:" cautions={salvage} />
      <CautionsWhere when="Where the piece has resin in it:" cautions={resin} />
      <CautionsWhere when="At a drum, disc or belt machine:" cautions={drum} />
      <CautionsWhere when="Where a dry powder is stirred in:" cautions={powder} />
      <CautionsWhere when="Where the step lists or names a solvent, or lists nothing:" cautions={solvent} />
      <CautionsWhere when="Unless the step lists a can for rags, and nothing of dust or resin:" cautions={besideRags} />
      {always.here.length + always.before.length === 0 && <p className="quiet">It carries no caution of its own.</p>}
    </section>
  );
}

/** Cautions that an act carries in some pieces and not in others. */
function CautionsWhere({ when, cautions }: { when: string; cautions: ActCautions }) {
  if (cautions.here.length + cautions.before.length === 0) return null;
  return (
    <>
      <p>
        <strong>{when}</strong>
      </p>
      <Cautions cautions={cautions} />
    </>
  );
}

/** A caution is written out where the page first needs it; further on a link leads there. */
function Cautions({ cautions: { here, before } }: { cautions: ActCautions }) {
  return (
    <>
      <CautionList cautions={here} anchorOf={anchorOfCaution} />
      {before.length > 0 && (
        <ul>
          {before.map(({ id, level, act }) => (
            <li key={id}>
              <strong>{cautionWords[level]}:</strong>{' '}
              <a href={`#${anchorOfCaution(id)}`}>
                {id.replaceAll('-', ' ')}, under “{act}”
              </a>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
