import type { BatchRecord } from '../../method/batch/record.ts';
import { methodAddress } from '../../method/documents/address.ts';
import { houseMethod } from './open.ts';

/** Where a step of a batch stands on the page of its method, with the same case; undefined where the method is of the maker's own and has no page. */
export function stepAddress({ method, case: told }: Pick<BatchRecord, 'method' | 'case'>, step: string) {
  const id = houseMethod(method.file);
  if (id === undefined) return undefined;
  const { pieces, set, start, people } = told;
  const asked = {
    ...(pieces === undefined ? {} : { pieces }),
    ...(set === undefined ? {} : { set }),
    ...(start === undefined ? {} : { start }),
    ...(people === undefined ? {} : { people }),
  };
  return `${methodAddress(id, asked)}#step-${encodeURIComponent(step)}`;
}
