import { useMemo } from 'react';
import { TextField } from '../../bench/form/fields.tsx';
import { PickField } from './PickField.tsx';
import { Section } from './Section.tsx';
import { PlainField } from './shop-field.tsx';

/** Time zones of the IANA list. */
function zones() {
  return Intl.supportedValuesOf('timeZone').map((value) => ({
    value,
    label: value,
    detail: value.split('/').at(-1)?.replaceAll('_', ' ') ?? '',
  }));
}

/** Currencies by their codes in ISO 4217, with what they are called in English. */
function currencies() {
  const names = new Intl.DisplayNames('en', { type: 'currency' });
  return Intl.supportedValuesOf('currency').map((value) => ({
    value,
    label: value,
    detail: names.of(value) ?? '',
  }));
}

/** What the shop is called, where its clock is, what it counts in. */
export function AboutForm() {
  const ofZone = useMemo(zones, []);
  const ofCurrency = useMemo(currencies, []);
  return (
    <Section part="about" title="The shop" open>
      {() => (
        <>
          <PlainField path={['name']} label="Name" needed />
          <TextField path={['about']} label="About it" optional quiet />
          <PickField
            path={['zone']}
            label="Time zone"
            help="Type a town or a region, and pick. A plan counts its hours by it."
            options={ofZone}
          />
          <PickField
            path={['currency']}
            label="Currency"
            help="By its code, such as EUR: type the code or its name, and pick. Every sum of the record is in it."
            options={ofCurrency}
          />
        </>
      )}
    </Section>
  );
}
