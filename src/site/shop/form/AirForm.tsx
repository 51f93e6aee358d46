import { useEffect, useState } from 'react';
import type { PickOption } from '../../../calculators/kit/fields.ts';
import type { Read } from '../../../model/quantity/index.ts';
import { TextField } from '../../bench/form/fields.tsx';
import { notFetched, useRecord, valueAt } from '../../bench/form/use-record.tsx';
import { PickField } from './PickField.tsx';
import { Section } from './Section.tsx';
import { PlainField, QuantityField } from './shop-field.tsx';
import styles from './shop-form.module.css';

interface Places {
  options: readonly PickOption[];
  read: (text: string) => Read<unknown>;
}

/** The place of the climate tables, which are fetched when the part is opened. */
function PlaceField() {
  const { data } = useRecord();
  const [places, setPlaces] = useState<Places>();
  useEffect(() => {
    let closed = false;
    import('../../../calculators/kit/climate-field.ts').then(
      ({ climateOptions, readPlace }) => closed || setPlaces({ options: climateOptions, read: readPlace }),
      notFetched,
    );
    return () => {
      closed = true;
    };
  }, []);
  if (!places) return <PlainField path={['air', 'place']} label="Nearest place of the climate tables" />;
  const place = valueAt(data, ['air', 'place']);
  const read = typeof place === 'string' && place !== '' ? places.read(place) : undefined;
  return (
    <PickField
      path={['air', 'place']}
      label="Nearest place of the climate tables"
      help="Type a town, a state or a country, and pick. How wood moves through the year follows from it."
      options={places.options}
      optional
    >
      {read && !read.ok && (
        <p className={styles.doubt} role="status">
          {read.problem}. {read.wayOut}
        </p>
      )}
    </PickField>
  );
}

/** The air of the shop. */
export function AirForm() {
  return (
    <Section part="air" title="Air of the shop">
      {() => (
        <>
          <PlaceField />
          <QuantityField path={['air', 'day']} dimension="temperature" label="Temperature by day" />
          <QuantityField path={['air', 'night']} dimension="temperature" label="Temperature by night" />
          <QuantityField path={['air', 'humidity']} dimension="percent" label="Relative humidity" />
          <TextField path={['air', 'readings']} label="Own readings" optional quiet />
        </>
      )}
    </Section>
  );
}
