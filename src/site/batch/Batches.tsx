import { useSearch } from '../../calculators/view/address-bar.ts';
import { fetchedPart } from '../page/fetched-part.tsx';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { Page } from '../page/Page.tsx';
import { BatchList } from './BatchList.tsx';
import { OpenBatch, OpenDraft } from './OpenBatch.tsx';

// The list of batches is read more often than any of them, and needs none of what draws one.
const OneBatch = fetchedPart(async () => (await import('./OneBatch.tsx')).OneBatch, {
  meanwhile: 'One moment: the batch is being laid out.',
  notFetched:
    'What shows a batch could not be fetched: there may be no connection. Everything that you wrote is kept in this browser.',
});

/** The record of what was made: the list of batches, one of them, or a new one to be opened, as the address says. */
export default function Batches() {
  const asked = new URLSearchParams(useSearch());
  const id = asked.get('batch');
  const [method, draft] = [asked.get('open'), asked.get('draft')];
  return (
    <Page
      title="What was made"
      description="A record of each batch: what was done when, at which temperature, from which lots; and what may be done next."
    >
      {id === null && (
        <>
          <h1>What was made</h1>
          <p className="lead">
            A batch is opened from a method and keeps it as it was that day. Write down what you do as you do it, and
            the times of what is left follow what you measured. It lies in this browser alone and leaves it only as a
            file that you save.
          </p>
        </>
      )}
      <NeedsScripts instead="To keep a record needs scripts: it is kept by the browser alone. Without them, write it on the sheets of the method.">
        {id !== null ? (
          <OneBatch id={id} />
        ) : draft !== null ? (
          <OpenDraft id={draft} asked={asked} />
        ) : method !== null ? (
          <OpenBatch asked={asked} />
        ) : (
          <BatchList />
        )}
      </NeedsScripts>
    </Page>
  );
}
