import { useEffect, useState } from 'react';

/** The whole site as one file, for a stick; a host may offer it or not. */
const zipName = 'kerf-and-cure.zip';

/** Said where the browser has no way to keep pages for this address: plain http, as from a server in the classroom, or a file. */
export function NotHere({ folder }: { folder: string }) {
  const zip = `${folder}${zipName}`;
  const there = useIsThere(zip);
  return (
    <section aria-labelledby="not-here">
      <h2 id="not-here">Nothing can be kept at this address</h2>
      <p>
        Browsers keep pages only of sites whose address begins with <code>https</code>. This one came another way, as
        from a server in a classroom, or your browser does not allow it. All works while the server runs.
      </p>
      {there && (
        <p>
          For a room without a network, take the whole site on a stick: <a href={zip}>{zipName}</a>. Unpack it and open{' '}
          <code>index.html</code>.
        </p>
      )}
    </section>
  );
}

/** Whether the host has a file. */
function useIsThere(address: string): boolean {
  const [there, setThere] = useState(false);
  useEffect(() => {
    let closed = false;
    // A host that answers every address with a page has no zip.
    fetch(address, { method: 'HEAD' }).then(
      ({ ok, headers }) => closed || setThere(ok && !/html/.test(headers.get('content-type') ?? 'html')),
      () => undefined,
    );
    return () => {
      closed = true;
    };
  }, [address]);
  return there;
}
