import { useBaseUrlUtils } from '@docusaurus/useBaseUrl';
import { useEffect, useState } from 'react';
import type { ClassRecord } from '../../method/class/record.ts';
import { allThings } from '../kept/database.ts';
import { type Draft, readDraft } from '../kept/drafts.ts';
import styles from './class.module.css';

/** The text of the method that a class follows: its own, or one of the site; null where it cannot be fetched. */
export function useMethodText(record: ClassRecord | undefined): string | null | undefined {
  const { withBaseUrl } = useBaseUrlUtils();
  const [found, setFound] = useState<{ of: string; text: string | null }>();
  const method = record?.method;
  const own = method && 'text' in method ? method.text : undefined;
  const id = method && 'id' in method ? method.id : undefined;
  const href = id === undefined ? undefined : withBaseUrl(`/data/methods/${encodeURIComponent(id)}.yaml`);
  useEffect(() => {
    if (href === undefined) return;
    let gone = false;
    fetch(href)
      .then((answer) => (answer.ok ? answer.text() : null))
      .catch(() => null)
      .then((text) => !gone && setFound({ of: href, text }));
    return () => {
      gone = true;
    };
  }, [href]);
  return own ?? (found && found.of === href ? found.text : undefined);
}

interface Props {
  method: ClassRecord['method'];
  onChange: (method: ClassRecord['method']) => void;
}

/** Which method a class follows: one of the site, or a draft of the bench, of which a copy is kept with the class. */
export function MethodChoice({ method, onChange }: Props) {
  const { withBaseUrl } = useBaseUrlUtils();
  const [site, setSite] = useState<readonly { id: string; title: string }[]>([]);
  const [drafts, setDrafts] = useState<readonly Draft[]>([]);
  const index = withBaseUrl('/data/methods/index.json');
  useEffect(() => {
    fetch(index)
      .then((answer) => answer.json())
      .then((found) => setSite(Array.isArray(found) ? found : (found.methods ?? [])))
      .catch(() => undefined);
    void allThings('drafts').then((things) => setDrafts((things ?? []).flatMap((thing) => readDraft(thing) ?? [])));
  }, [index]);
  const value = 'id' in method ? `site:${method.id}` : 'own';
  const choose = (chosen: string) => {
    const [kind, id] = [chosen.slice(0, chosen.indexOf(':')), chosen.slice(chosen.indexOf(':') + 1)];
    const draft = drafts.find((each) => each.id === id);
    if (kind === 'site') onChange({ id });
    else if (draft) onChange({ file: draft.name.slice(0, 200), text: draft.text.slice(0, 131_072) });
  };
  return (
    <label className={styles.field}>
      Method
      <select value={value} onChange={(event) => choose(event.target.value)}>
        {value === 'own' && 'file' in method && (
          <option value="own">{method.file}, as it was when it was chosen</option>
        )}
        {'id' in method && !site.some(({ id }) => id === method.id) && <option value={value}>{method.id}</option>}
        {site.map(({ id, title }) => (
          <option key={id} value={`site:${id}`}>
            {title}
          </option>
        ))}
        {drafts.length > 0 && (
          <optgroup label="Drafts of the bench">
            {drafts.map(({ id, name }) => (
              <option key={id} value={`draft:${id}`}>
                {name}
              </option>
            ))}
          </optgroup>
        )}
      </select>
    </label>
  );
}
