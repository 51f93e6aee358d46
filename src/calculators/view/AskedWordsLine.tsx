import type { AskedField, AskedWords } from '../kit/asked.ts';

/** What was asked, in words. */
export function AskedWordsLine({ asked: { given, taken } }: { asked: AskedWords }) {
  return (
    <div data-part="asked">
      {given.length > 0 && <p>{listed(given)}</p>}
      {taken.length > 0 && <p>taken: {listed(taken)}</p>}
    </div>
  );
}

const listed = (fields: readonly AskedField[]) =>
  fields.map(({ name, label, words }, at) => (
    <span key={name}>
      {at > 0 && ' · '}
      {label} <b>{words}</b>
    </span>
  ));
