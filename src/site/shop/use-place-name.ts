import { useEffect, useState } from 'react';

/**
 * A place of the climate tables as a reader knows it, `Duluth, Minnesota`; the tables are fetched once a record names a place.
 *
 * @param id as the record has it
 * @returns undefined until it is known, and for a place that the tables do not have
 */
export function usePlaceName(id: string | undefined): string | undefined {
  const [known, setKnown] = useState<{ id: string; name: string }>();
  useEffect(() => {
    if (id === undefined) return;
    let gone = false;
    import('../../calculators/kit/climate-field.ts').then(
      ({ readPlace }) => {
        const read = readPlace(id);
        if (!gone && read.ok && read.value) setKnown({ id, name: read.value.place });
      },
      // Without the tables its short name does.
      () => undefined,
    );
    return () => {
      gone = true;
    };
  }, [id]);
  return known?.id === id ? known?.name : undefined;
}
