import type { Caution } from '../evidence/index.ts';
import { amount } from '../quantity/index.ts';
import { sorptionValidity } from './index.ts';

/** Air whose moisture content at balance is asked. */
interface Air {
  /** Month or season; absent where there is one air alone. */
  label?: string;
  /** °C */
  temperature: number;
  /** % */
  humidity: number;
}

/**
 * What must be said where air lies outside the table that the sorption equation stands for; nothing inside it.
 *
 * Below freezing the equation turns over, while cold wood at one humidity takes up more, not less (the model that the 2021 edition
 * prints beside it): there its answer is too dry, and the caution says so.
 */
export function sorptionCaution(air: readonly Air[]): Caution[] {
  const outside = air.flatMap((each) => {
    const words = sorptionValidity(each.temperature, each.humidity);
    return words ? [{ ...each, words }] : [];
  });
  // The month that goes furthest speaks for all.
  const [first] = [...outside].sort((a, b) => a.temperature - b.temperature);
  if (!first) return [];
  const where = first.label ? `${outside.map(({ label }) => label).join(', ')}: ` : '';
  const frozen = outside.filter(({ temperature }) => temperature < 0);
  const coldest = Math.min(...frozen.map(({ temperature }) => temperature));
  const cold =
    frozen.length > 0
      ? `In frost, here down to ${amount(coldest, 'Cel')}, the equation turns over: the wood is likely to be damper than it says.`
      : undefined;
  return [
    {
      id: 'sorption-outside',
      level: 'warning',
      own: true,
      text: `${where}${first.words}`,
      ...(cold ? { why: cold } : {}),
      basis: 'published',
      citation: { source: 'fpl-gtr-190', locator: 'Table 4-2' },
    },
  ];
}
