import { type ReactNode, useState } from 'react';
import type { ShopPart } from '../../../method/shop/index.ts';
import forms from '../../bench/form/form.module.css';
import { useRecord } from '../../bench/form/use-record.tsx';
import { fieldsOfPart, partId } from './parts.ts';
import styles from './shop-form.module.css';

interface SectionProps {
  part: ShopPart;
  title: string;
  /** How many there are, or another word or two. */
  count?: string;
  open?: boolean;
  children: () => ReactNode;
}

/** A part of the form, which opens to its fields and counts what is to be mended in it. */
export function Section({ part, title, count, open: first = false, children }: SectionProps) {
  const { problems } = useRecord();
  const [open, setOpen] = useState(first);
  const wrong = problems.filter(({ path }) => fieldsOfPart[part].includes(String(path[0]))).length;
  return (
    <details
      id={partId(part)}
      className={styles.section}
      open={open}
      onToggle={(event) => event.target === event.currentTarget && setOpen(event.currentTarget.open)}
    >
      <summary className={styles.head}>
        <h3>{title}</h3>
        {count && <span className={styles.amount}>{count}</span>}
        {wrong > 0 && <span className={forms.count}>{wrong} to mend</span>}
      </summary>
      {open && <div className={styles.body}>{children()}</div>}
    </details>
  );
}
