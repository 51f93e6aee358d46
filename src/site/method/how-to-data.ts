import type { HowTo, HowToStep, WithContext } from 'schema-dts';
import type { MethodPage, ShownBlock, ShownPart } from '../../method/page/types.ts';
import { defaultUnits, inReaderUnits } from '../../model/quantity/index.ts';

/** Minutes as a duration of ISO 8601: `P2DT3H30M`. */
export function isoDuration(minutes: number): string {
  const whole = Math.round(minutes);
  const [days, hours, rest] = [Math.floor(whole / 1440), Math.floor((whole % 1440) / 60), whole % 60];
  const time = `${hours > 0 ? `${hours}H` : ''}${rest > 0 ? `${rest}M` : ''}`;
  if (days === 0 && time === '') return 'PT0M';
  return `P${days > 0 ? `${days}D` : ''}${time === '' ? '' : `T${time}`}`;
}

const shown = (text: string) => inReaderUnits(text, defaultUnits);

function partText(part: ShownPart): string {
  switch (part.kind) {
    case 'break':
      return ' ';
    case 'text':
    case 'code':
    case 'value':
      return shown(part.text);
    default:
      return part.parts.map(partText).join('');
  }
}

/** A text of a page without marks, in one line. */
function lineOf(blocks: readonly ShownBlock[]): string {
  return blocks
    .map((block) =>
      block.kind === 'paragraph'
        ? block.parts.map(partText).join('')
        : block.items.map((item) => `${lineOf(item)}`).join(' '),
    )
    .join(' ')
    .replace(/\s+/g, ' ')
    .trim();
}

/**
 * A method as data for whoever reads pages by machine: a HowTo of schema.org with its steps, tools, supplies and times.
 *
 * @param address of the page, without a fragment
 */
export function howToData(page: MethodPage, address: string): WithContext<HowTo> {
  const { brief, makes } = page;
  return {
    '@context': 'https://schema.org',
    '@type': 'HowTo',
    name: page.title,
    description: page.for,
    inLanguage: page.language,
    url: address,
    yield: `${makes.pieces} × ${makes.what}`,
    performTime: isoDuration(brief.hands),
    ...(brief.lasts === undefined ? {} : { totalTime: isoDuration(brief.lasts) }),
    ...(page.version === undefined ? {} : { dateModified: page.version }),
    tool: page.tools.map(({ what }) => ({ '@type': 'HowToTool', name: what })),
    supply: page.materials.map(({ what, need }) => ({
      '@type': 'HowToSupply',
      name: what,
      ...(need === undefined ? {} : { requiredQuantity: shown(need) }),
    })),
    step: page.steps.map(
      ({ id, number, title, does }): HowToStep => ({
        '@type': 'HowToStep',
        position: number,
        name: shown(title),
        text: lineOf(does),
        url: `${address}#step-${id}`,
      }),
    ),
  };
}

/** The same as the text of a script element: nothing in it can end the element. */
export const howToText = (page: MethodPage, address: string): string =>
  JSON.stringify(howToData(page, address)).replaceAll('<', '\\u003c');
