import Link from '@docusaurus/Link';
import { Page } from '../page/Page.tsx';
import type { SchemaEntry } from './data.ts';

/** The JSON Schemas, under the addresses that their `$id` names. */
export default function Schemas({ schemas }: { schemas: readonly SchemaEntry[] }) {
  return (
    <Page
      title="Schemas"
      description="JSON Schemas (2020-12) of the records, the tables and the calculators’ inputs."
      width="text"
    >
      <h1>Schemas</h1>
      <p className="lead">
        JSON Schema 2020-12, made from the program and committed with it. Units in the data are UCUM codes; sources are
        CSL-JSON; the tables are a Frictionless Data Package.
      </p>
      <ul className="index-list">
        {schemas.map((schema) => (
          <li key={schema.file}>
            <Link to={`pathname:///schemas/${schema.file}`} target="_self">
              <strong>{schema.file}</strong>
              <span>{[schema.title, schema.description].filter(Boolean).join('. ')}</span>
            </Link>
          </li>
        ))}
      </ul>
    </Page>
  );
}
