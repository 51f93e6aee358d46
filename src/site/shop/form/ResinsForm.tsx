import { useEffect, useId, useRef, useState } from 'react';
import type { RawInputs } from '../../../calculators/kit/calculator.ts';
import { resinSheetForm, tidySheet } from '../../../calculators/kit/resin-sheet.ts';
import { Form } from '../../../calculators/view/Form.tsx';
import { useKeptSheets } from '../../../calculators/view/kept-sheets.ts';
import { useUnits } from '../../../calculators/view/units.tsx';
import { Options } from '../../bench/form/fields.tsx';
import forms from '../../bench/form/form.module.css';
import { Problems } from '../../bench/form/Problems.tsx';
import { isGroup, type Path, useProblemsAt, useRecord, valueAt } from '../../bench/form/use-record.tsx';
import { explicitSheet } from '../../resin/draft.ts';
import { ItemList } from './ItemList.tsx';
import { Section } from './Section.tsx';

/** A pause in typing after which what is typed goes into the text, ms. */
const pause = 700;

type Typed = Readonly<Record<string, string | undefined>>;

/** The fields of a data sheet, laid over the sheet of a resin in the record. */
function SheetFields({ path }: { path: Path }) {
  const { data, set } = useRecord();
  const units = useUnits();
  const [typed, setTyped] = useState<Typed>({});
  const sheet = valueAt(data, path);
  const held: RawInputs = isGroup(sheet) ? tidySheet(sheet) : {};
  const problems = useProblemsAt(path);
  const errors = problems.map(({ path: at, message }) => ({ field: String(at[path.length] ?? ''), message }));
  const latest = useRef({ typed, held, units, path, set });
  latest.current = { typed, held, units, path, set };
  const flush = useRef(() => {
    const now = latest.current;
    for (const [name, text] of Object.entries(now.typed)) {
      const wanted =
        text === undefined || text.trim() === '' ? undefined : explicitSheet({ [name]: text }, now.units)[name];
      if (wanted !== now.held[name]) now.set([...now.path, name], wanted ?? (name === 'name' ? '' : undefined));
    }
    setTyped((before) => (before === now.typed ? {} : before));
  });
  useEffect(() => {
    if (Object.keys(typed).length === 0) return undefined;
    const timer = setTimeout(flush.current, pause);
    return () => clearTimeout(timer);
  }, [typed]);
  useEffect(() => {
    const leave = () => flush.current();
    window.addEventListener('pagehide', leave);
    return () => {
      window.removeEventListener('pagehide', leave);
      leave();
    };
  }, []);
  const raw = Object.fromEntries(
    Object.entries({ ...held, ...typed }).filter((entry): entry is [string, string] => entry[1] !== undefined),
  );
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: hears of the fields inside being left.
    <div onBlur={() => flush.current()}>
      <Problems problems={problems.filter(({ path: at }) => at.length <= path.length)} />
      <Form
        calculator={resinSheetForm}
        raw={raw}
        errors={errors}
        units={units}
        set={(patch) => setTyped((before) => ({ ...before, ...patch }))}
      />
    </div>
  );
}

/** A new resin is one of the kept data sheets, or a sheet that is only named yet. */
function NewResin({ add }: { add: (words: string, value: Record<string, unknown>) => void }) {
  const id = useId();
  const { sheets } = useKeptSheets();
  const [kept, setKept] = useState('');
  const [name, setName] = useState('');
  const named = () => {
    if (name.trim() === '') document.getElementById(`${id}-name`)?.focus();
    else add(name.trim(), { sheet: { name: name.trim() } });
    setName('');
  };
  return (
    <div className={forms.adding}>
      <label className={forms.label} htmlFor={`${id}-name`}>
        Another resin, by the name of its data sheet
      </label>
      <div className={forms.value}>
        <input
          id={`${id}-name`}
          className={forms.input}
          autoComplete="off"
          value={name}
          onChange={({ target }) => setName(target.value)}
          onKeyDown={({ key }) => key === 'Enter' && named()}
        />
        <button type="button" className={forms.small} onClick={named}>
          Add<span className="visually-hidden"> this resin</span>
        </button>
      </div>
      {sheets.length > 0 && (
        <>
          <label className={forms.label} htmlFor={`${id}-kept`}>
            Or one of my kept data sheets
          </label>
          <div className={forms.value}>
            <select
              id={`${id}-kept`}
              className={forms.input}
              value={kept}
              onChange={({ target }) => setKept(target.value)}
            >
              <Options
                choices={sheets.map((sheet) => ({ value: String(sheet['name']), label: String(sheet['name']) }))}
                now={kept}
                none="Choose one"
              />
            </select>
            <button
              type="button"
              className={forms.small}
              onClick={() => {
                const sheet = sheets.find((each) => each['name'] === kept);
                if (sheet) add(kept, { sheet: { ...sheet } });
                else document.getElementById(`${id}-kept`)?.focus();
                setKept('');
              }}
            >
              Take<span className="visually-hidden"> this data sheet</span>
            </button>
          </div>
        </>
      )}
    </div>
  );
}

/** The resins on the shelf, each with its maker's data sheet. */
export function ResinsForm({ count }: { count: string }) {
  return (
    <Section part="resins" title="Resins" count={count}>
      {() => (
        <ItemList
          list="resins"
          kind="resin"
          about="Copy what the maker’s data sheet says, and leave the rest empty."
          shows={['sheet']}
          fresh={(name) => ({ sheet: { name } })}
          asking={(add) => <NewResin add={add} />}
        >
          {(path) => <SheetFields path={[...path, 'sheet']} />}
        </ItemList>
      )}
    </Section>
  );
}
