import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution, EvidenceNote, Figure, ResultTable } from '../../model/evidence/index.ts';
import type { Finish } from '../../model/finish/types.ts';
import {
  type BoardForFood,
  type FoodFinding,
  type FoodStatement,
  foodLevelWords,
  foodRuleById,
  limitsDoNotCompare,
  notLegalAdvice,
} from '../../model/food/index.ts';

const partWords: Readonly<Record<FoodFinding['part'], string>> = {
  wood: 'Wood',
  resin: 'Resin',
  finish: 'Finish',
  cure: 'Cure',
  use: 'Use',
};

/** What the source of a line on allergies speaks of. */
const allergyEvidence: Readonly<Record<FoodStatement['allergens'][number]['id'], string>> = {
  'nut-oil': 'Allergies: nuts that food law asks to be named.',
  'tung-oil':
    'Allergies: nuts that food law asks to be named, tung not among them. The European list was read too: (EU) 1169/2011, Annex II.',
  'oil-blend': 'Allergies: a blend.',
  'wood-sensitiser': 'Allergies: dust of the wood.',
  'nut-tree': 'Allergies: wood of a tree that bears nuts.',
  'uncured-resin': 'Allergies: resin and hardener that have not cured.',
};

const hasEpoxy = ({ resin, finish }: BoardForFood) => resin !== undefined || finish?.epoxy === true;

/** Days left, the days that each part takes, and the limit that fits a board. */
export function figuresOf(board: BoardForFood, { waits, daysLeft }: FoodStatement): Record<string, Figure> {
  const cure = (name: string | undefined, label: string): Figure | undefined => {
    const wait = waits.find((each) => each.name === name);
    if (!wait || wait.fullCureDays === null) return undefined;
    return { label, value: wait.fullCureDays, unit: 'd', basis: wait.basis, note: wait.text };
  };
  const finish = cure(board.finish?.name, 'Full cure of the finish');
  const resin = cure(board.resin?.name, 'Full cure of the resin');
  return {
    ...(daysLeft === null ? {} : { daysLeft: leftFigure(daysLeft, waits) }),
    ...(finish ? { finishCure: finish } : {}),
    ...(resin ? { resinCure: resin } : {}),
    ...(hasEpoxy(board) ? { limit: limitOf(board) } : {}),
  };
}

function leftFigure(daysLeft: number, waits: FoodStatement['waits']): Figure {
  return {
    label: 'Days still to wait until full cure',
    value: daysLeft,
    unit: '1',
    basis: waits.some(({ basis }) => basis === 'memory') ? 'memory' : (waits[0]?.basis ?? 'shop-practice'),
    digits: 4,
    note:
      waits.length === 0
        ? 'Nothing that was told of this board has to cure.'
        : 'By the days of the sheet or kind; those of the resin by the cure clock where the room was told, else at the temperature of its sheet. Still tacky, or still smelling: not cured, whatever the days say.',
  };
}

/** The limit that fits a board: that for repeated use, or the one of plastics. */
function limitOf({ market }: BoardForFood): Figure {
  const figure = foodRuleById(market === 'us' ? 'cfr-21-175-300' : 'eu-10-2011').figures[0] as Figure;
  return {
    ...figure,
    label: 'Limit on what passes out of resin or film',
    note:
      market === 'us'
        ? 'Chloroform-soluble extractives, for repeated use other than a container. Not to be set beside the European limit: another test.'
        : 'Overall migration, where the resin counts as plastic. The ban on bisphenol A weighs more. Not to be set beside the American limit: another test.',
  };
}

/** The findings, what the label must not say, the papers and the rules. */
export function tablesOf(board: BoardForFood, statement: FoodStatement): ResultTable[] {
  const { findings, mustNotSay, papers, allergens, rules } = statement;
  const table = (
    id: string,
    title: string,
    columns: readonly (readonly [id: string, label: string])[],
    rows: ResultTable['rows'],
    basis: ResultTable['basis'] = 'shop-practice',
  ): ResultTable[] =>
    rows.length === 0
      ? []
      : [{ id, title, columns: columns.map(([column, label]) => ({ id: column, label })), rows, basis }];
  const standing = board.finish?.standing;
  const conditions = (board.finish?.declared ? standing?.inUse : standing?.conditions) ?? [];
  return [
    ...table(
      'not',
      'Not on the label',
      [
        ['words', 'Words'],
        ['why', 'Why not'],
      ],
      mustNotSay.map(({ words, why }) => [words, why]),
    ),
    ...table(
      'parts',
      'What each part says',
      [
        ['part', 'Part'],
        ['level', 'Level'],
        ['text', 'What was found'],
      ],
      findings.map(({ part, level, text }) => [partWords[part], foodLevelWords[level], text]),
    ),
    ...table(
      'conditions',
      'What must be true of the finish',
      [['condition', `${board.finish?.name ?? 'Finish'}: condition`]],
      conditions.map((condition) => [condition]),
      board.finish?.standing.basis,
    ),
    ...table(
      'papers',
      'Papers to ask for, and keep',
      [
        ['title', 'Paper'],
        ['from', 'From'],
        ['says', 'It must say'],
      ],
      papers.map(({ title, from, says }) => [title, from, says]),
    ),
    ...table(
      'allergens',
      'Allergies',
      [['text', 'What is known, and what is not']],
      allergens.map(({ text }) => [text]),
    ),
    ...table(
      'rules',
      'Rules that speak, in our words',
      [
        ['rule', 'Rule'],
        ['asks', 'Asks'],
      ],
      rules.map(({ short, asks }) => [short, asks.join(' ')]),
      'published',
    ),
  ];
}

/** What stands above the figures: the level first. */
export function cautionsOf(board: BoardForFood, { level, summary, findings, waits }: FoodStatement): Caution[] {
  const strict = level === 'better-not' || level === 'not-yet';
  const worst = findings.filter((finding) => finding.level === level && level !== 'usual').map(({ text }) => text);
  const known = (id: string): Caution[] => {
    const caution = cautionById(id);
    return caution ? [caution] : [];
  };
  const resin = board.resin?.name ?? (board.finish?.epoxy ? board.finish.name : undefined);
  const uncured = waits.some(({ name, daysLeft }) => name === resin && daysLeft !== 0);
  return [
    {
      id: 'food-level',
      level: strict ? 'warning' : 'note',
      own: true,
      text: `${summary}.`,
      ...(worst.length > 0 ? { why: worst.join(' ') } : {}),
      basis: 'shop-practice',
    },
    ...(uncured ? known('resin-skin') : []),
    ...known('food-wording'),
    { id: 'not-legal-advice', level: 'note', text: notLegalAdvice, basis: 'shop-practice' },
  ];
}

/** A cure on a sheet that is far shorter than the least that is usual: it may be the time until dry to the touch. */
export function tooSoon(finish: Finish | undefined, sheetDays: number | undefined): Caution[] {
  const usual = finish?.figures.fullCure;
  const least = usual ? (usual.low ?? usual.value) / 86_400 : 0;
  if (!finish || !usual || sheetDays === undefined || sheetDays >= least / 2) return [];
  return [
    {
      id: 'cure-shorter-than-usual',
      level: 'warning',
      own: true,
      text: `Look at the sheet of the finish again: ${sheetDays} ${sheetDays === 1 ? 'day' : 'days'} may be until it is dry to the touch. ${finish.name} usually takes ${Math.round(least)} to ${Math.round((usual.high ?? usual.value) / 86_400)} days to full cure.`,
      basis: 'shop-practice',
    },
  ];
}

/** The rules that were used, and what else the answer rests on. */
export function evidenceOf(board: BoardForFood, { rules, waits, allergens }: FoodStatement): EvidenceNote[] {
  return [
    ...rules.map(({ short, title, edition, basis, citation }) => ({
      text: `${short}: ${title}. ${edition}`,
      basis,
      citation,
    })),
    ...allergens.flatMap(({ id, basis, citation }) =>
      citation ? [{ text: allergyEvidence[id], basis, citation }] : [],
    ),
    ...waits.map(({ text, basis }) => ({ text, basis })),
    ...(hasEpoxy(board) ? [{ text: limitsDoNotCompare, basis: 'derived' as const }] : []),
    {
      text: 'The level is the strictest of the parts, by our own ranking; no rule ranks boards.',
      basis: 'shop-practice' as const,
    },
  ];
}
