import { cautionById } from '../../model/evidence/cautions.ts';
import {
  answer,
  type Basis,
  type Caution,
  derivedBasis,
  type EvidenceNote,
  type Figure,
  type ResultTable,
  refuse,
  weakestBasis,
} from '../../model/evidence/index.ts';
import { type CoatsPlan, type Finish, finishById, planCoats } from '../../model/finish/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { calculator } from '../kit/calculator.ts';
import { areaOf } from './area.ts';
import { alternatives, example, type Inputs, inputs, usual } from './inputs.ts';
import { verdictOf } from './verdict.ts';

/** Figures that the calculator may give, the headline first. */
const labels = {
  volume: 'To have at hand, all coats',
  mass: 'The same by weight',
  firstCoat: 'First coat',
  nextCoat: 'Each further coat',
  area: 'Area that is coated',
  light: 'Until the boards may be handled',
  use: 'Until food and water may touch them',
  recoat: 'Wait between coats',
  soak: 'Soak before wiping',
  upkeep: 'Until it wants renewing',
} as const;

const rateBand =
  'What the usual spreading rates leave open: dense planed wood takes little, open and sanded wood much.';
const ownRate = 'By the reader’s own spreading rate.';

export const finishCoatsCalculator = calculator({
  id: 'finish-coats',
  title: 'Coats of finish',
  question: 'How much of this finish do I need, and when is each coat due?',
  summary:
    'From a board’s size, the finish and the coats: how much of each, when it goes on, and when the board may be used.',
  inputs,
  alternatives,
  example,
  figures: Object.fromEntries(Object.entries(labels).map(([name, label]) => [name, { label }])),
  compute(given) {
    const finish = finishById(given.finish);
    if (!finish) return refuse('finish', `There is no finish ${given.finish}`, 'Pick one of the list.');
    const boards = given.boards ?? usual.boards;
    if (!Number.isInteger(boards)) {
      return refuse('boards', `${boards} is not a whole number of boards`, 'Give a whole number, such as 12.');
    }
    const one = areaOf(given);
    if (!one.ok) return one;
    const planned = planCoats({
      finish,
      area: one.value.area * boards,
      coats: given.coats ?? finish.figures.coats.value,
      spare: (given.spare ?? usual.spare) / 100,
      ...(given.spreadingFirst === undefined ? {} : { spreadingFirst: given.spreadingFirst }),
      ...(given.spreadingNext === undefined ? {} : { spreadingNext: given.spreadingNext }),
    });
    if (!planned.ok) return planned;
    return answer({
      verdict: verdictOf(finish, planned.value, given.resin),
      figures: figuresOf(given, finish, planned.value, one.value.area * boards),
      tables: [coatTable(given, finish, planned.value), ...soakTable(finish)],
      cautions: cautionsOf(given, finish, planned.value),
      evidence: evidenceOf(given, finish, one.value.notes),
    });
  },
});

/** What the amounts rest on: the weakest of the spreading rates that were used. */
function amountBasis(given: Inputs, { figures }: Finish, plan: CoatsPlan): Basis {
  const own = 'supplier-sheet' as const;
  const first = given.spreadingFirst === undefined ? figures.spreadingFirst.basis : own;
  const next = given.spreadingNext === undefined ? figures.spreadingNext.basis : own;
  return derivedBasis(plan.coats.length > 1 ? [first, next] : [first]);
}

function figuresOf(given: Inputs, finish: Finish, plan: CoatsPlan, area: number): Record<string, Figure> {
  const { figures } = finish;
  const basis = amountBasis(given, finish, plan);
  const volume = (label: string, { value, low, high }: CoatsPlan['volume']): Figure => ({
    label,
    value,
    ...(low < high ? { low, high, band: rateBand } : { note: ownRate }),
    unit: 'mL',
    basis,
    digits: 2,
  });
  const weightOf = (millilitres: number) => millilitres * figures.density.value;
  const { low, high } = plan.volume;
  const [first, next] = plan.coats;
  const cured = figures.fullCure !== null;
  return {
    volume: volume(labels.volume, plan.volume),
    mass: {
      label: labels.mass,
      value: plan.mass,
      ...(low < high ? { low: weightOf(low), high: weightOf(high), band: rateBand } : {}),
      unit: 'g',
      basis: weakestBasis([basis, figures.density.basis]),
      digits: 2,
      note: `At ${figures.density.value} g/ml.`,
    },
    ...(first ? { firstCoat: volume(labels.firstCoat, first.volume) } : {}),
    ...(next ? { nextCoat: volume(labels.nextCoat, next.volume) } : {}),
    area: {
      label: labels.area,
      value: area,
      unit: 'mm2',
      basis: 'derived',
      digits: 3,
      note: given.boards === undefined || given.boards === 1 ? 'Of the board.' : `Of ${given.boards} boards together.`,
    },
    light: {
      label: labels.light,
      value: plan.light,
      unit: 's',
      basis: 'shop-practice',
      digits: 2,
      note: 'From the first coat.',
    },
    use: {
      label: given.resin === 'inlay' ? 'Finish ready for food and water, the resin’s own cure apart' : labels.use,
      value: plan.use.value,
      low: plan.use.low,
      high: plan.use.high,
      band: 'What is usual in the trade, at room temperature; the sheet of the finish decides.',
      unit: 's',
      basis: 'shop-practice',
      digits: 2,
      note: `${
        cured
          ? 'From the first coat. Cured throughout, and without a smell.'
          : 'From the first coat. It never cures: when it is wiped dry.'
      }${given.resin === 'inlay' ? ' Of the finish alone: the inlay waits for the full cure on its own sheet, often a week or more from the pour.' : ''}`,
    },
    recoat: figures.recoat,
    ...(figures.soak ? { soak: figures.soak } : {}),
    ...(figures.upkeep ? { upkeep: { ...figures.upkeep, note: finish.upkeepWords } } : {}),
  };
}

/** The coats one by one: when each is due, and what it takes. */
function coatTable(given: Inputs, finish: Finish, plan: CoatsPlan): ResultTable {
  return {
    id: 'coats',
    title: 'Coat by coat',
    columns: [
      { id: 'coat', label: 'Coat', digits: 2 },
      { id: 'start', label: 'On, after', unit: 's', digits: 2 },
      ...(finish.wiped ? [{ id: 'soak', label: 'Soak', unit: 's', digits: 2 }] : []),
      { id: 'volume', label: 'Amount', unit: 'mL', digits: 2 },
      { id: 'mass', label: 'Weight', unit: 'g', digits: 2 },
    ],
    rows: plan.coats.map(({ number, start, wipe, volume, mass }) => [
      number,
      start === 0 ? 'now' : start,
      ...(wipe === null ? [] : [wipe - start]),
      volume.value,
      mass,
    ]),
    basis: weakestBasis([amountBasis(given, finish, plan), 'shop-practice']),
  };
}

/** One coat of what is wiped, step by step. */
function soakTable({ figures, wiped }: Finish): ResultTable[] {
  if (!wiped || !figures.soak) return [];
  const { value, low, high } = figures.soak;
  return [
    {
      id: 'soak',
      title: 'Each coat',
      columns: [
        { id: 'at', label: 'At', unit: 's', digits: 2 },
        { id: 'what', label: 'What to do' },
      ],
      rows: [
        ['now', 'Flood faces and edges, end grain twice. Can of water for the cloths open beside you.'],
        [(low ?? value) / 2, 'Dull places: wet them again.'],
        [low ?? value, 'Earliest: wipe off all that is still on top, off resin too.'],
        [high ?? value, 'Latest: it must be off by now, before it gets sticky.'],
        [(high ?? value) + 600, 'Wipe again with a dry cloth. Cloths into the water.'],
      ],
      basis: 'shop-practice',
    },
  ];
}

const standing: Readonly<Record<Finish['food']['level'], string>> = {
  listed: 'listed under conditions',
  'ask-the-maker': 'ask the maker',
  silent: 'the rules are silent',
  'better-not': 'better not',
};

function cautionsOf(given: Inputs, finish: Finish, plan: CoatsPlan): Caution[] {
  const { low = 1, high = 1 } = finish.figures.coats;
  const known = finish.cautions.flatMap((id) => cautionById(id) ?? []);
  return [
    ...(given.resin === 'inlay'
      ? [
          {
            id: 'resin-cure-first',
            level: 'warning' as const,
            own: true,
            text: 'No food and no water on it before the resin’s own full cure, whatever the finish needs; no finish on it before that either.',
            why: 'The times here are those of the finish. A resin takes a week or more from the pour at room temperature (common practice), longer with cold nights; the cure clock and its sheet say how long. Oil over resin that has not cured stays soft.',
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    ...(finish.id === 'film-epoxy' ? mixed(plan) : []),
    ...known,
    ...(finish.rags.hazard === 'none-known'
      ? [
          {
            id: 'rags-of-this-finish',
            level: 'note' as const,
            text: `Cloths with ${finish.name.toLowerCase()}: ${finish.rags.words.charAt(0).toLowerCase()}${finish.rags.words.slice(1)}. A tin that mixes in a drying oil is another matter, and nobody tells cloths apart in a bin: treat these as the others.`,
            basis: 'memory' as const,
          },
        ]
      : []),
    ...(plan.usualCoats
      ? []
      : [
          {
            id: 'coats-unusual',
            level: 'note' as const,
            text: `${low === high ? low : `${low} to ${high}`} coats are usual. ${plan.coats.length < low ? 'Fewer leave dry places.' : 'More stay on top: stop when it takes no more.'}`,
            basis: 'shop-practice' as const,
          },
        ]),
    ...(given.resin === 'inlay'
      ? [
          {
            id: 'finish-over-resin',
            level: finish.overResin.level === 'suits' ? ('note' as const) : ('warning' as const),
            text: `Over cured resin: ${finish.overResin.words} Only over resin that its sheet calls cured.`,
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    {
      id: 'finish-and-food',
      level: 'note',
      text: `Food: ${standing[finish.food.level]}. ${finish.food.summary}.`,
      ...(finish.food.conditions.length > 0 ? { why: finish.food.conditions.join(' ') } : {}),
      basis: finish.food.basis,
      ...(finish.food.citation ? { citation: finish.food.citation } : {}),
    },
  ];
}

/** What a film of epoxy asks beyond a finish from a can: it is mixed, and a mass of it heats itself. */
function mixed(plan: CoatsPlan): Caution[] {
  const largest = Math.max(...plan.coats.map(({ volume }) => volume.high));
  return [
    {
      id: 'mix-in-small-cups',
      level: 'danger',
      own: true,
      text: `Never mix a coat at once: ${amount(largest, 'mL', 2)} is the most that one takes. Fresh small cups, each poured out at once, and no coat thicker than its sheet allows.`,
      why: 'Mixed resin left in a mass heats itself, and so does a coat that is too thick. The dose and the working time of a cup have calculators of their own.',
      basis: 'shop-practice',
    },
  ];
}

function evidenceOf(given: Inputs, finish: Finish, notes: readonly string[]): EvidenceNote[] {
  const { figures } = finish;
  const rates = [figures.spreadingFirst, figures.spreadingNext];
  return [
    {
      text: `${finish.name}: coats, soak, waits and cure are common practice. The sheet of the finish at hand wins over every one of them; cold and damp lengthen them.`,
      basis: 'shop-practice',
    },
    {
      text: `Amounts: area by spreading rate, ${figures.spreadingFirst.low} to ${figures.spreadingFirst.high} m² from a litre for the first coat and ${figures.spreadingNext.low} to ${figures.spreadingNext.high} for the next, and the spare.`,
      basis: weakestBasis(rates.map(({ basis }) => basis)),
    },
    {
      text: 'Nearest published spreading rate: penetrating oil-based stain on smooth wood, 4.9 to 9.8 m² from a litre. Clear oil on planed hardwood goes further.',
      basis: 'published',
      citation: { source: 'fpl-gtr-190', locator: 'Chapter 16', seen: 'source-text' },
    },
    {
      text: `Density: ${figures.density.low} to ${figures.density.high} g/ml.`,
      basis: figures.density.basis,
      ...(figures.density.citation ? { citation: figures.density.citation } : {}),
    },
    ...(given.spreadingFirst === undefined && given.spreadingNext === undefined
      ? []
      : [{ text: 'Spreading rates given by the reader stand in place of these.', basis: 'supplier-sheet' as const }]),
    ...notes.map((text): EvidenceNote => ({ text, basis: 'derived' })),
  ];
}
