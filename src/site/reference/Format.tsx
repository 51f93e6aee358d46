import Link from '@docusaurus/Link';
import { Anchored } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import { ScrollBox } from '../page/ScrollBox.tsx';
import type { FormatField, FormatFields, FormatForm, FormatPlace } from './format.ts';
import styles from './method.module.css';
import type { FormatEntry } from './method-data.ts';

/** Pages that explain the words of a field, by its path. */
type WordPages = Readonly<Record<string, string>>;

/** A file that a shop writes by hand, field by field, as its JSON Schema has it. */
export default function Format({ format }: { format: FormatEntry }) {
  const { title, description, lead, file, fields, wordPages, example } = format;
  return (
    <Page title={title} description={description} width="text">
      <h1>{title}</h1>
      <p className="lead">{description}</p>
      <p>
        {lead} A program reads the same from its JSON Schema,{' '}
        <Link to={`pathname:///schemas/${file}`} target="_self">
          {file}
        </Link>
        .
      </p>
      <ul className={styles.contents}>
        {fields.map(({ path, anchor, mayBeLeftOut }) => (
          <li key={anchor}>
            <a href={`#${anchor}`}>{path}</a>
            {mayBeLeftOut && <span className="quiet"> may be left out</span>}
          </li>
        ))}
      </ul>
      {fields.map((field) => (
        <Field key={field.anchor} field={field} level={2} wordPages={wordPages} />
      ))}
      {example && (
        <section>
          <Anchored as="h2" id="example">
            {example.title}
          </Anchored>
          <ScrollBox label={example.title} className={styles.example ?? ''}>
            <pre>
              <code>{example.text}</code>
            </pre>
          </ScrollBox>
        </section>
      )}
    </Page>
  );
}

type Level = 2 | 3 | 4;
const under = (level: Level): Level => (level < 4 ? ((level + 1) as Level) : 4);

function Field({ field, level, wordPages }: { field: FormatField; level: Level; wordPages: WordPages }) {
  const { path, anchor, says, kind, words, limits, patterns, namePatterns, examples, mayBeLeftOut } = field;
  return (
    <section className={styles.field} data-field={path}>
      <Anchored as={`h${level}`} id={anchor}>
        <code>{path}</code>
      </Anchored>
      {says.length > 0 && <p>{says.join(' ')}</p>}
      <p className="small">
        <strong>{mayBeLeftOut ? 'May be left out.' : 'Must be given.'}</strong> {capital(kind)}
        {limits.map((limit) => `, ${limit}`)}.
        {field.default !== undefined && (
          <>
            {' '}
            Left out, it is <code>{field.default}</code>.
          </>
        )}
        {examples.length > 0 && (
          <>
            {' '}
            For example <Codes words={examples} />.
          </>
        )}
        {patterns.length > 0 && (
          <>
            {' '}
            Pattern: <Codes words={patterns} />
          </>
        )}
        {namePatterns.length > 0 && (
          <>
            {' '}
            Pattern of a name: <Codes words={namePatterns} />
          </>
        )}
      </p>
      {words.length > 0 && (
        <p className="small">
          <Codes words={words} page={wordPages[path]} />
        </p>
      )}
      <Below below={field} level={level} wordPages={wordPages} />
      {field.forms.map((form) => (
        <Form key={form.anchor + form.path} form={form} level={under(level)} wordPages={wordPages} />
      ))}
    </section>
  );
}

function Form({ form, level, wordPages }: { form: FormatForm; level: Level; wordPages: WordPages }) {
  const { path, anchor, as } = form;
  if (as)
    return (
      <p className="small">
        <code>{path}</code> is as at <Place place={as} />.
      </p>
    );
  return (
    <section className={styles.form}>
      <Anchored as={`h${level}`} id={anchor}>
        As <code>{path}</code>
      </Anchored>
      <Below below={form} level={level} wordPages={wordPages} />
    </section>
  );
}

function Below({ below, level, wordPages }: { below: FormatFields; level: Level; wordPages: WordPages }) {
  const { fields, again } = below;
  return (
    <>
      {again.length > 0 && (
        <p className="small">
          As above:{' '}
          {again.map((place, at) => (
            <span key={place.anchor}>
              {at > 0 && ', '}
              <Place place={place} />
            </span>
          ))}
          .
        </p>
      )}
      {fields.map((field) => (
        <Field key={field.anchor} field={field} level={under(level)} wordPages={wordPages} />
      ))}
    </>
  );
}

const Place = ({ place: { path, anchor } }: { place: FormatPlace }) => (
  <a href={`#${anchor}`}>
    <code>{path}</code>
  </a>
);

/** Words of a file in a row, each linked to what explains it where a page does. */
function Codes({ words, page }: { words: readonly string[]; page?: string | undefined }) {
  return words.map((word, at) => (
    <span key={word}>
      {at > 0 && ', '}
      {page ? (
        <Link to={page + word}>
          <code>{word}</code>
        </Link>
      ) : (
        <code>{word}</code>
      )}
    </span>
  ));
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
