import Link from '@docusaurus/Link';
import { Fragment, memo, useId, useState } from 'react';
import { useUnits } from '../../calculators/view/units.tsx';
import type { ShownBlock, ShownCalculation, ShownPart, ShownValue } from '../../method/page/types.ts';
import { basisWords } from '../../model/evidence/index.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import styles from './method.module.css';

/** Where a calculation is opened with the same case. */
export const calculatorAddress = ({ use, inputs }: Pick<ShownCalculation, 'use' | 'inputs'>): string =>
  `/calculators/${use}?${new URLSearchParams(inputs)}`;

interface TextProps {
  blocks: readonly ShownBlock[];
  /** The calculations of the page, for the way from a figure to its calculator. */
  calculations?: readonly ShownCalculation[];
}

const none: readonly ShownCalculation[] = [];

/** Whether a text says of some calculations what it said of others: their names and where they are opened. */
const sameWays = (one: readonly ShownCalculation[], other: readonly ShownCalculation[]) =>
  one === other ||
  (one.length === other.length &&
    one.every(({ name, title, inputs }, at) => {
      const before = other[at];
      return name === before?.name && title === before.title && inputs === before.inputs;
    }));

const sameText = (one: TextProps, other: TextProps) =>
  one.blocks === other.blocks && sameWays(one.calculations ?? none, other.calculations ?? none);

/** A text of a method in blocks. Whoever wrote it, it is text: nothing of it becomes markup. */
export const ShownText = memo(function ShownText({ blocks, calculations = none }: TextProps) {
  return (
    <>
      {blocks.map((block, at) =>
        block.kind === 'paragraph' ? (
          // biome-ignore lint/suspicious/noArrayIndexKey: a block has no identity beyond its place
          <p key={at}>
            <Parts parts={block.parts} calculations={calculations} />
          </p>
        ) : (
          // biome-ignore lint/suspicious/noArrayIndexKey: as above
          <ShownList key={at} block={block} calculations={calculations} />
        ),
      )}
    </>
  );
}, sameText);

function ShownList({
  block: { start, items },
  calculations,
}: {
  block: Extract<ShownBlock, { kind: 'list' }>;
  calculations: readonly ShownCalculation[];
}) {
  const entries = items.map((blocks, at) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: as above
    <li key={at}>
      <ShownText blocks={blocks} calculations={calculations} />
    </li>
  ));
  return start === undefined ? <ul>{entries}</ul> : <ol start={start}>{entries}</ol>;
}

const samePart = (one: PartProps, other: PartProps) =>
  one.part === other.part && sameWays(one.calculations, other.calculations);

function Parts({ parts, calculations }: { parts: readonly ShownPart[]; calculations: readonly ShownCalculation[] }) {
  return parts.map((part, at) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: as above
    <Fragment key={at}>
      <Part part={part} calculations={calculations} />
    </Fragment>
  ));
}

interface PartProps {
  part: ShownPart;
  calculations: readonly ShownCalculation[];
}

/** A part of which nothing changed is not drawn again: in a text it is often one figure of several that does. */
const Part = memo(function Part({ part, calculations }: PartProps) {
  const units = useUnits();
  switch (part.kind) {
    case 'text':
      return inReaderUnits(part.text, units);
    case 'code':
      return <code>{part.text}</code>;
    case 'break':
      return <br />;
    case 'strong':
      return (
        <strong>
          <Parts parts={part.parts} calculations={calculations} />
        </strong>
      );
    case 'emphasis':
      return (
        <em>
          <Parts parts={part.parts} calculations={calculations} />
        </em>
      );
    case 'link':
      return (
        <Link to={part.href}>
          <Parts parts={part.parts} calculations={calculations} />
        </Link>
      );
    case 'value':
      return <Value value={part} calculations={calculations} />;
  }
}, samePart);

/** A value in a sentence: touched, it says what it is, between what it lies and where it comes from. */
function Value({ value, calculations }: { value: ShownValue; calculations: readonly ShownCalculation[] }) {
  const units = useUnits();
  const [open, setOpen] = useState(false);
  const id = useId();
  const text = inReaderUnits(value.text, units);
  if (value.missing) return <span className={styles.missing}>{text}</span>;
  const calculation = calculations.find(({ name }) => name === value.calculation);
  // A sentence of an answer says itself what it is.
  if (value.basis === undefined && calculation) return text;
  const { between, band } = value;
  return (
    <span className={styles.value}>
      <button
        type="button"
        className={styles.figure}
        aria-expanded={open}
        aria-controls={id}
        onClick={() => setOpen(!open)}
      >
        {text}
      </button>
      <span id={id} className={styles.behind} data-open={open || undefined} data-between={between ? '' : undefined}>
        {' ('}
        <span className={styles.label}>{value.label}</span>
        {between && (
          <span className={styles.between}>
            <span className={styles.label}>, </span>
            {inReaderUnits(between, units)}
          </span>
        )}
        <span className={styles.label}>
          {band && `: ${inReaderUnits(band, units)}`}
          {value.basis && `; ${basisWords[value.basis]}`}
          {calculation && (
            <>
              {'; '}
              <Link to={calculatorAddress(calculation)}>{calculation.title}</Link>
            </>
          )}
        </span>
        {')'}
      </span>
    </span>
  );
}
