import Link from '@docusaurus/Link';
import type { Addressed } from './use-addressed.ts';

interface NothingAddressedProps {
  title: string;
  addressed: Pick<Addressed, 'id' | 'lacking'>;
  /** What a method's page leads back to: `sheets`. */
  back: string;
}

/** What a page says where its address names no method that is here, with a way on. */
export function NothingAddressed({ title, addressed: { id, lacking }, back }: NothingAddressedProps) {
  return (
    <>
      <h1>{title}</h1>
      {lacking === 'no draft' || lacking === 'draft being looked for' ? (
        <p>
          {lacking === 'no draft'
            ? 'The draft of this address is not kept in this browser: it may have been removed, or stand in another one. '
            : 'Looking for the draft … '}
          <Link to="/bench">All drafts</Link>
        </p>
      ) : (
        <p>
          {lacking === 'no method named'
            ? 'No method is named in the address.'
            : `There is no method “${id.slice(0, 80)}” here, or it could not be fetched.`}{' '}
          Choose one of <Link to="/methods">the methods</Link>; its page leads back to its {back}.
        </p>
      )}
    </>
  );
}
