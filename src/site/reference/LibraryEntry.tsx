import Link from '@docusaurus/Link';
import type { ExportedItem } from '../../library/docstrings.ts';
import { Anchored } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import { CodeWords } from './CodeWords.tsx';
import styles from './library.module.css';
import { type LibraryRoom, packageName } from './library-data.ts';

const groups: readonly { kind: ExportedItem['kind']; id: string; title: string }[] = [
  { kind: 'function', id: 'functions', title: 'Functions' },
  { kind: 'class', id: 'classes', title: 'Classes' },
  { kind: 'constant', id: 'constants', title: 'Constants and equations' },
  { kind: 'type', id: 'types', title: 'Types' },
];

/** One entry of the package: every export, as its docstring says it. */
export default function LibraryEntry({ room }: { room: LibraryRoom }) {
  const { name, about, node, items } = room;
  const there = groups
    .map((group) => ({ ...group, items: items.filter(({ kind }) => kind === group.kind) }))
    .filter((group) => group.items.length > 0);
  return (
    <Page title={`${packageName}/${name}`} description={`Library: ${about.replaceAll('`', '')}.`} width="text">
      <h1>
        {packageName}/{name}
      </h1>
      <p className="lead">
        <CodeWords text={`${about.slice(0, 1).toUpperCase()}${about.slice(1)}.`} />
        {node && ' It reads files, and so runs in Node alone.'} Made from the docstrings of{' '}
        <Link to="/reference/library">the library</Link>.
      </p>
      {there.map(({ id, title, items: of }) => (
        <section key={id}>
          <Anchored as="h2" id={id}>
            {title}
          </Anchored>
          <ul className={styles.contents}>
            {of.map((item) => (
              <li key={item.name}>
                <a href={`#${item.name}`}>{item.name}</a>
              </li>
            ))}
          </ul>
          {of.map((item) => (
            <Item key={item.name} item={item} />
          ))}
        </section>
      ))}
    </Page>
  );
}

function Item({ item }: { item: ExportedItem }) {
  const { name, declared, about, params, returns, throws, see } = item;
  const said = [
    ...params.map((each) => ({ term: each.name, text: each.text, code: true })),
    ...(returns ? [{ term: 'Gives', text: returns, code: false }] : []),
    ...throws.map((text) => ({ term: 'Throws', text, code: false })),
    ...see.map((text) => ({ term: 'See', text, code: false })),
  ];
  return (
    <section className={styles.item}>
      <Anchored as="h3" id={name}>
        {name}
      </Anchored>
      {about.split(/\n\s*\n/).map((paragraph) => (
        <p key={paragraph}>
          <CodeWords text={paragraph} />
        </p>
      ))}
      <pre className={styles.code}>
        <code>{declared}</code>
      </pre>
      {said.length > 0 && (
        <dl className={styles.said}>
          {said.map(({ term, text, code }) => (
            <div key={`${term} ${text}`}>
              <dt>{code ? <code>{term}</code> : term}</dt>
              <dd>
                <CodeWords text={text} />
              </dd>
            </div>
          ))}
        </dl>
      )}
    </section>
  );
}
