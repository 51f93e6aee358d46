import type { BatchRecord } from '../../method/batch/record.ts';
import { type AddressedCase, methodAddress, quoteAddress } from '../../method/documents/address.ts';
import { houseMethod } from './open.ts';

type Told = Pick<BatchRecord, 'method' | 'case'>;

/** The case that a batch was opened for, with the name of its hours: whoever follows the link elsewhere reckons with the same. */
function caseOf({ case: { pieces, set, start, people, calendar } }: Told): AddressedCase {
  return {
    ...(pieces === undefined ? {} : { pieces }),
    ...(set === undefined ? {} : { set }),
    ...(start === undefined ? {} : { start }),
    ...(people === undefined ? {} : { people }),
    ...(calendar === undefined ? {} : { calendar }),
  };
}

/** Where a step of a batch stands on the page of its method, with the same case; undefined where the method is of the maker's own and has no page. */
export function stepAddress(batch: Told, step: string): string | undefined {
  const id = houseMethod(batch.method.file);
  return id === undefined ? undefined : `${methodAddress(id, caseOf(batch))}#step-${encodeURIComponent(step)}`;
}

/** Where the pieces of a batch are offered, with the same case; undefined where the method is of the maker's own. */
export function saleAddress(batch: Told): string | undefined {
  const id = houseMethod(batch.method.file);
  return id === undefined ? undefined : quoteAddress(id, caseOf(batch));
}

/** What was kept with a batch and stands in none of its links, in a sentence; undefined where they carry all, or where there are none. */
export function notInLinks({ method, case: { shop, hours, calendar } }: Told): string | undefined {
  const named = calendar !== undefined;
  const unnamed = hours !== undefined && !named;
  if (houseMethod(method.file) === undefined || (shop === undefined && !unnamed)) return undefined;
  const carried = `Links from here to the pages of the method carry this case${named ? ' and the name of its hours' : ''}`;
  if (shop === undefined)
    return `${carried}, but not the hours that were kept with it, which have no name: there the hours are those of the shop record that stands in the browser, or assumed ones.`;
  return `${carried}, but not the shop record that was kept with it: ${named ? '' : 'hours, '}machines, air and prices are there those of the record that stands in the browser, or the method’s own.`;
}
