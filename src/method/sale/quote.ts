import type { PaperBlock } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { moneyWords } from '../cost/index.ts';
import type { SheetDocument } from '../documents/types.ts';
import type { MethodPage, ShownMoment } from '../page/types.ts';
import { type Leaving, type SaleFacts, saleFacts, woodWords } from './facts.ts';
import { type QuotePrice, quotePrice } from './quote-price.ts';
import type { QuoteTyped } from './typed.ts';

/** Said beside every sum. */
const taxes = 'Taxes and delivery are not in these sums: they follow local rules and the distance.';

/** What nobody here has shown of a board. */
export const notPromised =
  'Nobody certifies a board. Not promised: that it bears a dishwasher, soaking, an oven or a hot pan; that it never moves, marks or darkens.';

const heading = (text: string): PaperBlock => ({ kind: 'heading', text });
const lead = (name: string, text: string): PaperBlock => ({ kind: 'text', lead: name, text });
const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** `Mon 2027-02-22`. */
export const dayWords = ({ weekday, date }: ShownMoment): string => `${capital(weekday)} ${date}`;

/** What a day hangs on where resin must cure: nobody has seen it cure yet. */
export const ifItCures = 'if the resin cures as its kind usually does';

/**
 * When it is planned to be ready, for whoever orders, with what the day hangs on.
 *
 * @param day of the quote: no day before it is named
 */
export function leavingWords(leaving: Leaving, day: string): string {
  switch (leaving.kind) {
    case 'day': {
      if (leaving.moment.date < day)
        return `no day is named. By the plan it would be ${dayWords(leaving.moment)}, before the day of this quote.`;
      const cure = leaving.cures ? `, ${ifItCures}` : '';
      return `${dayWords(leaving.moment)}${cure}. The day moves with the day on which the work begins.`;
    }
    case 'after':
      return `day ${leaving.days} of the work${leaving.cures ? `, ${ifItCures}` : ''}. No first day is agreed yet.`;
    case 'none':
      return `no day is named. ${leaving.why}`;
  }
}

/** What the piece is, a line each: wood, size, resin, finish. */
export function factLines({ woods, size, inlay, finishes }: SaleFacts): { name: string; text: string }[] {
  return [
    ...(woods.length > 0 ? [{ name: 'Wood', text: capital(woods.map(woodWords).join('; ')) }] : []),
    ...(size
      ? [
          {
            name: 'Size',
            text: `${amount(size.length, 'mm')} long, ${amount(size.width, 'mm')} wide, ${amount(size.thickness, 'mm')} thick`,
          },
        ]
      : []),
    ...(inlay === undefined ? [] : [{ name: 'Resin', text: capital(inlay) }]),
    ...(finishes.length > 0
      ? [{ name: 'Finish', text: capital(finishes.map((each) => each.toLowerCase()).join(', ')) }]
      : []),
  ];
}

/** What may be said of food, what is kept off it, and the allergies that are known. */
export const foodLines = ({ food }: SaleFacts): string[] =>
  food.ok
    ? [food.purpose, ...food.parts.filter((text) => !/^Finished with [^.]*\.$/.test(text)), ...food.allergies]
    : ['Nothing is said of this piece and food.'];

/** The first line of each part of the care card; the card itself goes with the piece. */
export const careLines = ({ care }: SaleFacts): string[] =>
  care.flatMap(({ heading: name, lines: [first] }) =>
    first === undefined || name === 'Never' ? [] : [`${name}: ${first}`],
  );

/** What can catch fire when the piece is oiled again, where its oil can. */
const fireLines = ({ care }: SaleFacts): string[] =>
  care.flatMap(({ lines }) => lines).filter((line) => /catch fire/.test(line));

/**
 * A quote for the pieces of a case, on one sheet: what is offered for how much, until when, when it is to be ready, and the words that go with it.
 *
 * There is no price where the shop record has none and the seller gave none, no day where the plan has none, and neither while a rule stops the method.
 */
export function quoteDocument(page: MethodPage, typed: QuoteTyped): SheetDocument {
  const facts = saleFacts(page);
  const stopped = facts.stops.length > 0;
  const price = quotePrice(page, typed);
  const { number, day, until, maker, customer, repair } = typed;
  const care = careLines(facts);
  return {
    id: 'quote',
    sheet: 'quote',
    steps: [],
    title: number === '' ? 'Quote' : `Quote ${number}`,
    form: 'sheet',
    blocks: [
      ...(maker.length > 0
        ? maker.map((text, at): PaperBlock => ({ kind: 'text', text, ...(at === 0 ? { strong: true } : {}) }))
        : [{ kind: 'blanks' as const, labels: ['From (name, address)'] }]),
      ...(customer.length > 0 ? [lead('For', customer.join(', '))] : [{ kind: 'blanks' as const, labels: ['For'] }]),
      lead('Day', day),
      lead('Valid until', until),
      ...facts.stops.map(
        (text): PaperBlock => ({
          kind: 'warning',
          level: 'danger',
          text: `Not to be sent: a rule stops this method. ${text}`,
        }),
      ),
      ...priceBlocks(facts, stopped ? undefined : price, typed.discount),
      lead('Planned ready by', stopped ? 'no day is named.' : leavingWords(facts.leaving, day)),
      {
        kind: 'columns',
        blocks: [
          heading('What it is'),
          ...factLines(facts).map(({ name, text }) => lead(name, `${text}.`)),
          heading('With food'),
          ...foodLines(facts).map((text): PaperBlock => ({ kind: 'text', text })),
          ...(facts.food.ok && facts.food.avoid !== ''
            ? [{ kind: 'warning' as const, level: 'warning' as const, text: facts.food.avoid }]
            : []),
          ...(facts.movement === undefined
            ? []
            : [heading('It moves'), { kind: 'text' as const, text: facts.movement }]),
          ...(care.length > 0
            ? [
                heading('Care'),
                ...care.map((text): PaperBlock => ({ kind: 'text', text })),
                { kind: 'text' as const, text: 'A care card goes with each piece.' },
              ]
            : []),
          ...fireLines(facts).map((text): PaperBlock => ({ kind: 'warning', level: 'danger', text })),
          heading('Not promised'),
          { kind: 'warning', level: 'note', text: notPromised },
          heading('Mended'),
          { kind: 'text', text: repair },
        ],
      },
      { kind: 'blanks', labels: ['Agreed: day, name'] },
    ],
  };
}

function priceBlocks(facts: SaleFacts, price: QuotePrice | undefined, discount: number): PaperBlock[] {
  if (!price?.ok) return [lead('Offered', `${facts.pieces} × ${facts.what}`), lead('Price', 'none is named yet.')];
  const money = (sum: number) => moneyWords(sum, price.currency);
  const percent = `${Number((100 * discount).toFixed(2))} %`;
  const rows: (string | number | null)[][] = [
    [facts.what, price.pieces, money(price.each), money(price.before)],
    ...(price.off > 0
      ? [
          [`Discount, ${percent}`, null, null, `−${money(price.off)}`],
          ['Together', null, null, money(price.total)],
        ]
      : []),
  ];
  return [
    {
      kind: 'table',
      table: {
        id: 'price',
        title: price.own ? 'Price, set by the maker' : 'Price',
        columns: [
          { id: 'what', label: 'What' },
          { id: 'pieces', label: 'Pieces' },
          { id: 'each', label: 'Each' },
          { id: 'sum', label: `Sum, ${price.currency.code}` },
        ],
        rows,
        basis: 'derived',
      },
      large: ['sum'],
    },
    { kind: 'text', text: taxes, small: true },
  ];
}
