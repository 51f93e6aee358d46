import Link from '@docusaurus/Link';
import { CautionList } from '../../calculators/view/CautionList.tsx';
import { cautionWords } from '../../model/evidence/index.ts';
import { Anchored } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import styles from './method.module.css';
import type { ActCautions, ActEntry, ActGroupEntry } from './method-data.ts';

/** Every act that a step of a method may name, in the order of the work. */
export default function Acts({ groups }: { groups: readonly ActGroupEntry[] }) {
  return (
    <Page
      title="Acts of a method"
      description="What is done in a step, in the words of the trade: what each act gives off, what can hurt in it, and what is worn or stands ready."
      width="text"
    >
      <h1>Acts of a method</h1>
      <p className="lead">
        Each step of a <Link to="/reference/method-format">method</Link> names its act, and carries with it what can
        hurt and what protects. These are the usual cautions: local codes, the maker’s data sheet and the manual of the
        machine have the last word.
      </p>
      {groups.map((group) => (
        <section key={group.id}>
          <Anchored as="h2" id={group.id}>
            {group.title}
          </Anchored>
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
        </section>
      ))}
    </Page>
  );
}

function ActSection({ act }: { act: ActEntry }) {
  const { id, label, about, hazards, protection, always, salvage, resin, drum, powder, solvent, besideRags } = act;
  return (
    <section className={styles.act}>
      <Anchored as="h3" id={id}>
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

const anchorOf = (id: string) => `caution-${id}`;

/** A caution is written out where the page first needs it; further on a link leads there. */
function Cautions({ cautions: { here, before } }: { cautions: ActCautions }) {
  return (
    <>
      <CautionList cautions={here} anchorOf={anchorOf} />
      {before.length > 0 && (
        <ul>
          {before.map(({ id, level, act }) => (
            <li key={id}>
              <strong>{cautionWords[level]}:</strong>{' '}
              <a href={`#${anchorOf(id)}`}>
                {id.replaceAll('-', ' ')}, under “{act}”
              </a>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
