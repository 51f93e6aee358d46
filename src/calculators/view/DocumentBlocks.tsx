import { type AddressCode, type Block, cautionWords, type PaperBlock } from '../../model/evidence/index.ts';
import { type ReaderUnits, wordsInReaderUnits } from '../../model/quantity/index.ts';
import { cellWords, expectedWords } from '../kit/document-text.ts';
import { DrawingView } from './DrawingView.tsx';
import styles from './document.module.css';
import { Heading, type HeadingLevel } from './Heading.tsx';

interface BlocksProps {
  blocks: readonly PaperBlock[];
  units: ReaderUnits;
  /** Level of its headings in the page; on a card and on paper they are lines of text. */
  level?: HeadingLevel | undefined;
  /** Texts of warnings that the page around says already. */
  said?: readonly string[];
}

/** The pieces of a document, one under another, in the reader's units: nothing of a document is shown or printed but through here. */
export function Blocks({ blocks, units, level, said = [] }: BlocksProps) {
  return wordsInReaderUnits(blocks, units).map((block, at) => (
    // Pieces have no identity beyond their place in the document.
    // biome-ignore lint/suspicious/noArrayIndexKey: see above
    <Piece key={at} block={block} units={units} level={level} said={said} />
  ));
}

interface PieceProps {
  block: PaperBlock;
  units: ReaderUnits;
  level: HeadingLevel | undefined;
  said: readonly string[];
}

function Piece({ block, units, level, said }: PieceProps) {
  switch (block.kind) {
    case 'heading':
      return level ? (
        <Heading level={level} className={styles.heading}>
          {block.text}
        </Heading>
      ) : (
        <p className={styles.heading}>{block.text}</p>
      );
    case 'text': {
      const { text, large, strong, small, lead } = block;
      return (
        <p className={large ? styles.large : small ? styles.small : undefined}>
          {lead && <strong>{lead}: </strong>}
          {strong ? <strong>{text}</strong> : text}
        </p>
      );
    }
    case 'list':
      return block.heading ? <Beside heading={block.heading} items={block.items} /> : <List items={block.items} />;
    case 'ticks':
      return (
        <ul className={styles.ticks}>
          {block.items.map((item) => (
            <li key={item}>
              <label>
                <input type="checkbox" className={styles.tick} />
                <span>{item}</span>
              </label>
            </li>
          ))}
        </ul>
      );
    case 'blanks':
      return (
        <p className={styles.blanks}>
          {block.labels.map((label) => (
            <span key={label} className={styles.blank}>
              {label}
            </span>
          ))}
        </p>
      );
    case 'warning':
      return (
        <p className={styles.warning} data-level={block.level} data-said={said.includes(block.text) || undefined}>
          <strong>{cautionWords[block.level]}.</strong> {block.text}
        </p>
      );
    case 'table':
      return <Rows block={block} units={units} />;
    case 'drawing':
      return <DrawingView drawing={block.drawing} scale={block.scale} />;
    case 'step':
      return (
        <section className={styles.step} aria-label={`${block.number}. ${block.title}`}>
          <p className={styles.stepTitle}>
            <label>
              <input type="checkbox" className={styles.tick} />
              <strong>
                {block.number}. {block.title}
              </strong>
            </label>
            {block.when && <span className={styles.when}>{block.when}</span>}
          </p>
          <div className={styles.does}>
            <Blocks blocks={block.blocks} units={units} level={level} said={said} />
          </div>
          {block.beside.length > 0 && (
            <div className={styles.looks}>
              <Blocks blocks={block.beside} units={units} level={level} said={said} />
            </div>
          )}
        </section>
      );
    case 'measured':
      return (
        <ul className={styles.measured}>
          {block.rows.map(({ label, expected, between }) => (
            <li key={`${label} ${expected}`}>
              <span>{label}: measured</span> <span className={styles.reading} />{' '}
              <span>{expectedWords(expected, between)}</span>
            </li>
          ))}
        </ul>
      );
    case 'columns':
      return (
        <div className={styles.columns}>
          <Blocks blocks={block.blocks} units={units} level={level} said={said} />
        </div>
      );
    case 'code':
      return <Code code={block} />;
  }
}

/** A code for a telephone, black on white in every theme, and the address in letters. */
function Code({ code: { text, address, size, path } }: { code: AddressCode }) {
  return (
    <div className={styles.code}>
      <svg
        viewBox={`0 0 ${size} ${size}`}
        className={styles.modules}
        shapeRendering="crispEdges"
        role="img"
        aria-label={text}
      >
        <rect width={size} height={size} fill="#fff" />
        <path d={path} fill="#000" />
      </svg>
      <p>
        {text} <span className={styles.address}>{address}</span>
      </p>
    </div>
  );
}

function List({ items }: { items: readonly string[] }) {
  return (
    <ul className={styles.list}>
      {items.map((item) => (
        <li key={item}>{item}</li>
      ))}
    </ul>
  );
}

/** Lines with what they are about beside them. */
function Beside({ heading, items }: { heading: string; items: readonly string[] }) {
  return (
    <div className={styles.beside}>
      <p className={styles.about}>{heading}</p>
      {items.map((item) => (
        <p key={item}>{item}</p>
      ))}
    </div>
  );
}

/** A table with boxes to tick and columns to write in; on a phone each row of one with boxes is a card. */
function Rows({ block, units }: { block: Extract<Block, { kind: 'table' }>; units: ReaderUnits }) {
  const { table, ticks = [], large = [], write = [] } = block;
  return (
    // A region that scrolls must be reachable by keyboard.
    // biome-ignore lint/a11y/noNoninteractiveTabindex: see above
    <section className={styles.scroll} tabIndex={0} aria-label={table.title}>
      {/* The roles are written out because a table whose rows stand as cards loses them otherwise. */}
      {/* biome-ignore-start lint/a11y/noRedundantRoles: see above */}
      <table role="table" className={styles.table} data-ticks={ticks.length > 0 || undefined}>
        <caption>{table.title}</caption>
        <thead role="rowgroup">
          <tr role="row">
            {/* Two columns may be called alike, as the ends of two stretches. */}
            {[...table.columns, ...write.map((label) => ({ id: `write ${label}`, label }))].map(({ id, label }) => (
              <th key={id} scope="col" role="columnheader">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody role="rowgroup">
          {table.rows.map((row, index) => {
            const name = row[0] === null || row[0] === undefined ? `${index + 1}` : `${row[0]}`;
            return (
              // Rows have no identity beyond their place in the answer.
              // biome-ignore lint/suspicious/noArrayIndexKey: see above
              <tr key={index} role="row">
                {table.columns.map((column, at) => {
                  const value = row[at] ?? null;
                  const words = cellWords(value, column, units);
                  return (
                    <td key={column.id} role="cell" data-label={value === null ? undefined : column.label}>
                      {value !== null && ticks.includes(column.id) && (
                        <input type="checkbox" className={styles.tick} aria-label={`${name}, ${column.label}`} />
                      )}
                      {large.includes(column.id) ? <strong>{words}</strong> : words}
                    </td>
                  );
                })}
                {write.map((label) => (
                  <td key={label} role="cell" className={styles.write} />
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
      {/* biome-ignore-end lint/a11y/noRedundantRoles: see above */}
    </section>
  );
}
