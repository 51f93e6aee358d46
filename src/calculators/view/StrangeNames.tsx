import { fieldsOf } from '../kit/answer.ts';
import type { Asking } from '../kit/calculator.ts';
import { renamed, strangeNames, strangeWords } from '../kit/strange-names.ts';
import { replaceSearch, useSearch } from './address-bar.ts';
import styles from './frame.module.css';

interface StrangeNamesProps {
  form: Pick<Asking, 'inputs'>;
  /** Prefix of its names in the address. */
  prefix?: string;
  /** Names of other uses of the address. */
  others?: readonly string[] | undefined;
}

/** Says which names of the address nothing is called here, and takes one for the name that was likely meant. */
export function StrangeNames({ form, prefix = '', others }: StrangeNamesProps) {
  const search = useSearch();
  const known = Object.keys(fieldsOf(form));
  const strange = strangeNames(search, known, { prefix, ...(others ? { others } : {}) });
  const keyOf = (name: string) => (prefix === '' ? name : `${prefix}.${name}`);
  return strange.map((each) => {
    const { name, meant } = each;
    return (
      <p key={name} className={styles.region} data-part="strange-name">
        {strangeWords(each)}{' '}
        {meant !== undefined && (
          <button
            type="button"
            className={styles.button}
            onClick={() => replaceSearch(renamed(window.location.search, keyOf(name), keyOf(meant)))}
          >
            Yes, take it so
          </button>
        )}
      </p>
    );
  });
}
