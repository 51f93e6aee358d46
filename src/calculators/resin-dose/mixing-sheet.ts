import type { Block, Caution, ResultColumn, ResultDocument } from '../../model/evidence/index.ts';
import { resinCautions } from '../../model/evidence/resin-cautions.ts';
import { amount, ofEach } from '../../model/quantity/index.ts';
import { statedCupWords } from '../../model/resin/assumed.ts';
import { sealCoatName } from '../../model/resin/dose.ts';
import type { Resin } from '../../model/resin/types.ts';
import { cautionsOf } from './cautions.ts';
import { mostInWords } from './layers.ts';
import { marked, markedLabel } from './measured.ts';
import { alikeOf, calledOf, filledBy, fillsLabel } from './pieces.ts';
import type { DosePlan } from './plan.ts';
import { grams } from './verdict.ts';

/** The sheet for the mixing bench: every cup with its parts and boxes to tick. */
export function mixingSheet(plan: DosePlan): ResultDocument {
  const { measured, cup } = plan;
  const unit = markedLabel(plan);
  const blocks: readonly Block[] = [
    { kind: 'blanks', labels: ['Piece', 'Date', 'Shop and bottles, temperature'] },
    ...linesOf(plan).map(({ level, text }) => ({ kind: 'warning' as const, level, text })),
    { kind: 'text', text: `${resinOf(plan)}. ${factsOf(plan).join(' · ')}` },
    { kind: 'text', text: stepsOf(plan) },
    ...(cup.empty === undefined
      ? []
      : [
          {
            kind: 'text' as const,
            text: `Every cup out within ${amount(cup.empty, 's', 2)} of B, at ${amount(plan.clock?.celsius ?? 0, 'Cel')}.`,
            large: true,
            strong: true,
          },
        ]),
    ...cupTables(plan),
    { kind: 'text', text: `All cups: A ${marked(plan, measured.a)} ${unit}, B ${marked(plan, measured.b)} ${unit}.` },
  ];
  return { id: 'mixing-sheet', title: 'Mixing sheet', form: 'sheet', blocks };
}

/** What is at stake while mixing, beside what every dose is warned of. */
const alsoAtTheBench = ['hardener-burns', 'resin-air', 'hardener-sawdust', 'resin-waste'];

/** This case's own cautions and those of the bench, a line each: the reasons stand on the page. */
function linesOf(plan: DosePlan): Caution[] {
  return [...cautionsOf(plan), ...resinCautions.filter(({ id }) => alsoAtTheBench.includes(id))].filter(
    ({ level }) => level !== 'note',
  );
}

/** The name of the resin, and whether its figures are those of a sheet. */
function resinOf({ mix, given: { resin } }: DosePlan): string {
  if (!resin) return 'Own mix ratio, no sheet';
  const own = mix.ratioOf === 'reader' ? ', own mix ratio' : '';
  return resin.fromSheet
    ? `${resin.name}${own}: figures of its sheet`
    : `${resin.name}${own}: a generic kind, from memory and no maker’s sheet`;
}

/** What whoever mixes must know beside the cups. */
function factsOf(plan: DosePlan): string[] {
  const { mix, division, layers, clock, given, place } = plan;
  const { potLife } = given.resin?.figures ?? {};
  const by = mix.by === 'weight';
  // What the minutes of its cups are for.
  const shop = given.shopTemperature ?? clock?.celsius ?? layers.shop?.celsius;
  return [
    `A : B by ${by ? 'weight' : 'volume'} 100 : ${(100 * (by ? mix.weightRatio : mix.volumeRatio)).toFixed(1)}`,
    `${by ? 'scale' : 'cups'} marked every ${marked(plan, division)} ${markedLabel(plan)}${plan.divisionAssumed ? ' (taken)' : ''}`,
    ...(shop === undefined
      ? []
      : [`shop ${amount(shop, 'Cel')}${given.shopTemperature === undefined ? ' (assumed)' : ''}`]),
    ...(clock && potLife ? [`pot life ${amount(potLife.value, 's', 2)} ${statedCupWords(given.resin as Resin)}`] : []),
    ...(layers.count > 1
      ? [
          `${layers.count} layers${layers.thickness ? ` of ${ofEach(layers.count * layers.thickness, layers.count, layers.allowed)}` : ''}: mix each when it is due`,
        ]
      : []),
    // Where no depth was given, a line above says so, and how deep a layer may be.
    ...(layers.allowed === undefined || (place.from === 'mass' && layers.thickness === undefined)
      ? []
      : [`no layer deeper than ${mostInWords(layers)}`]),
    ...piecesOf(plan),
  ];
}

function piecesOf(plan: DosePlan): string[] {
  const rows = alikeOf(plan);
  if (!rows.some(({ to }) => to > 1)) return [];
  return rows.map(({ seal, fill, ...which }) => {
    const one = which.from === which.to;
    const noun = which.names.length > 0 ? '' : `piece${one ? '' : 's'} `;
    return `${noun}${calledOf(which)}: ${grams(fill)}${one ? '' : ' each'}${seal > 0 ? `, seal coat ${amount(seal, 'g', 2, true)}` : ''}`;
  });
}

/** How a cup is mixed, common practice, and how its row is read. */
function stepsOf(plan: DosePlan): string {
  const atOnce = plan.batches.length > 0;
  const inCup = !atOnce && plan.cups.some(({ pigment }) => pigment > 0);
  return `${
    atOnce
      ? 'Colour all of A of a round first, in one pot, until no speck is left. Its cups take coloured A, never A from the bottle. What is left for the last cup takes B by its weight, as the line of the colour says. '
      : ''
  }Each cup: A first, ${inCup ? 'pigment into its A, ' : ''}then B. Stir three minutes, into a second clean cup, one minute more, pour at once.${
    plan.mix.by === 'weight'
      ? ' Large: what to pour, on a scale set back to zero. Small: what it then shows if it was not set back between the parts.'
      : ''
  }`;
}

/** Grams of each round into one of several places that are alike, by the name of the round; undefined where they are not. */
function intoEach(plan: DosePlan): ((stage: string) => number) | undefined {
  const [alike, ...others] = alikeOf(plan);
  if (!alike || others.length > 0 || alike.to === 1) return undefined;
  const { shares, count } = plan.layers;
  return (stage) =>
    stage === sealCoatName ? alike.seal : alike.fill * (count === 1 ? 1 : (shares[Number(stage.slice(6)) - 1] ?? 0));
}

/** A table a round of mixing: a row a cup. */
function cupTables(plan: DosePlan): Block[] {
  const { cups, mix } = plan;
  const byWeight = mix.by === 'weight';
  const unit = markedLabel(plan);
  const fills = filledBy(plan);
  const placed = fills.some((words) => words !== '');
  const each = placed ? intoEach(plan) : undefined;
  const shown = (value: number) => `${marked(plan, value)} ${unit}`;
  // The pigment is stirred into A before B comes: once B is in, the clock runs.
  const running = ({ a, b, pigment, coloured }: DosePlan['cups'][number]) =>
    (coloured === undefined ? [...(pigment > 0 ? [a + pigment] : []), a + pigment + b] : [coloured + b])
      .map(shown)
      .join(', then ');
  return [...new Set(cups.map(({ stage }) => stage))].flatMap((stage) => {
    const own = cups.filter((cup) => cup.stage === stage);
    const atOnce = own.some(({ coloured }) => coloured !== undefined);
    const pigmented = !atOnce && own.some(({ pigment }) => pigment > 0);
    const columns: readonly (readonly [
      column: ResultColumn,
      cell: (cup: DosePlan['cups'][number]) => string | null,
    ])[] = [
      [{ id: 'cup', label: 'Cup' }, ({ number, colour }) => `Cup ${number}, ${colour}`],
      ...(byWeight ? [[{ id: 'zero', label: 'Cup on, zero' }, () => ''] as const] : []),
      [
        {
          id: 'a',
          label: !atOnce
            ? 'Pour A'
            : own.every(({ coloured }) => coloured !== undefined)
              ? 'Pour coloured A'
              : 'Pour A, coloured where a colour is named above',
        },
        ({ a, coloured }) => shown(coloured ?? a),
      ],
      ...(pigmented
        ? [
            [
              { id: 'pigment', label: 'Pigment' },
              ({ pigment }: DosePlan['cups'][number]) =>
                pigment > 0 ? (byWeight ? shown(pigment) : `${Number(pigment.toFixed(1))} g`) : null,
            ] as const,
          ]
        : []),
      [{ id: 'b', label: 'Pour B' }, ({ b }) => shown(b)],
      ...(byWeight ? [[{ id: 'running', label: 'Scale then shows' }, running] as const] : []),
      ...(placed
        ? [
            [
              { id: 'pieces', label: fillsLabel(plan) },
              ({ number }: DosePlan['cups'][number]) => {
                const words = fills[number - 1] ?? '';
                return words && each ? `${words}, ${grams(each(stage))} each` : words;
              },
            ] as const,
          ]
        : []),
    ];
    const cupTable: Block = {
      kind: 'table',
      table: {
        id: `mix-${stage.toLowerCase().replaceAll(' ', '-')}`,
        title: stage,
        columns: columns.map(([column]) => column),
        rows: own.map((cup) => columns.map(([, cell]) => cell(cup))),
        basis: mix.basis,
      },
      ticks: ['zero', 'a', 'pigment', 'b'],
      large: ['a', 'pigment', 'b'],
      write: ['B in at', 'Empty by'],
    };
    return [...(atOnce ? [colourTable(plan, stage)] : []), cupTable];
  });
}

/** What comes before the cups of a round: all of its A, a line a colour, takes its pigment at once. */
function colourTable(plan: DosePlan, stage: string): Block {
  const { batches, mix } = plan;
  const unit = markedLabel(plan);
  const shown = (value: number) => `${marked(plan, value)} ${unit}`;
  return {
    kind: 'table',
    table: {
      id: `colour-${stage.toLowerCase().replaceAll(' ', '-')}`,
      title: `${stage}: colour all of A before any cup`,
      columns: [
        { id: 'colour', label: 'Colour' },
        { id: 'a', label: 'Weigh A' },
        { id: 'pigment', label: 'Pigment into it' },
        { id: 'coloured', label: 'Makes coloured A' },
        { id: 'ratio', label: 'B to 100 g of it' },
      ],
      rows: batches
        .filter((batch) => batch.stage === stage)
        .map(({ colour, a, pigment, ratio }) => [
          colour,
          shown(a),
          shown(pigment),
          shown(a + pigment),
          `${(100 * ratio).toFixed(1)} g`,
        ]),
      basis: mix.basis,
    },
    ticks: ['a', 'pigment'],
    large: ['a', 'pigment'],
  };
}
