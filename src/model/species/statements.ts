import { basisOfSeen, type Citation } from '../evidence/index.ts';
import { rungs } from './authority.ts';
import { sourceOfDocument } from './documents.ts';
import { citeDocument } from './from-documents.ts';
import { documentOf, isOfDocument, type JoinedRow, seenOf, text } from './rows.ts';
import type { Species, Statement } from './types.ts';

type Decay = NonNullable<Species['decay']>;
type DecayGroup = NonNullable<Decay['group']>;

const decayGroups: readonly DecayGroup[] = [
  'resistant or very resistant',
  'moderately resistant',
  'slightly or nonresistant',
];

/** Start of a statement that a source makes of a group, not of the one wood. */
function groupWords(row: JoinedRow): string {
  return row.group ? `Of the group ${row.label.replace(/ group$/, '')}: ` : '';
}

/** A statement of a row with its basis and citation. */
export function statement(row: JoinedRow, words: string, citation: Citation | undefined): Statement {
  return {
    text: `${groupWords(row)}${words}`,
    basis: basisOfSeen(seenOf(row)),
    ...(citation ? { citation } : {}),
  };
}

function decayRow(row: JoinedRow): Decay {
  const group = decayGroups.find((each) => each === text(row, 'heartwood_group')) ?? null;
  const source = sourceOfDocument(text(row, 'source') ?? '');
  const at = text(row, 'place');
  const place = at === null ? `group ${row.label}` : source === 'fpl-gtr-190' ? `${at}, ${row.label}` : at;
  const note = text(row, 'note');
  const words = `${text(row, 'heartwood_group')}${note ? ` (${note})` : ''}`;
  return { ...statement(row, words, source ? { source, locator: place, seen: seenOf(row) } : undefined), group };
}

function decayWords(row: JoinedRow): Decay {
  const words = text(row, 'value') ?? '';
  const group = decayGroups.find((each) => each === words) ?? null;
  return { ...statement(row, words, citeDocument(row, documentOf(row), text(row, 'page'))), group };
}

/**
 * What is said of the heartwood's resistance to decay.
 *
 * @returns the firmest statement, the wood's own before its group's, and those passed over
 */
export function decayOf(rows: readonly JoinedRow[]): { decay: Decay | null; rest: Decay[] } {
  const all = rows.flatMap((row): { rung: number; decay: Decay }[] => {
    const isWords = isOfDocument(row) && text(row, 'property') === 'heartwood decay resistance';
    if (row.table !== 'decay-resistance' && !isWords) return [];
    const decay = isWords ? decayWords(row) : decayRow(row);
    // The three groups of one list can be compared with each other; words of one document stand for themselves.
    const rung = decay.basis === 'memory' ? rungs.memory : isWords ? rungs.document : rungs.newestHandbook;
    return [{ rung: rung + (row.group ? 0.5 : 0), decay }];
  });
  const best = all.reduce<(typeof all)[number] | null>(
    (least, each) => (least && least.rung <= each.rung ? least : each),
    null,
  );
  return { decay: best?.decay ?? null, rest: all.filter((each) => each !== best).map((each) => each.decay) };
}

const marks: Readonly<Record<string, string>> = { Sh: 'the skin', Sa: 'the airways', Sah: 'the skin and the airways' };

/** Published effects of dust, splinters and sap; rows that say only that nothing was read give none. */
export function effectsOf(rows: readonly JoinedRow[]): Statement[] {
  return rows.flatMap((row): Statement[] => {
    if (row.table === 'species-toxicity' && text(row, 'kind') !== 'none read') {
      const citation = citeDocument(row, text(row, 'document') ?? '', text(row, 'page'));
      const said = statement(row, text(row, 'effect') ?? '', citation);
      return [text(row, 'sensitising') === 'yes' ? { ...said, sensitising: true } : said];
    }
    if (row.table === 'trgs-907') {
      const citation: Citation = { source: 'trgs-907', locator: `Annex 2, ${row.label}`, seen: seenOf(row) };
      return [
        {
          ...statement(
            row,
            `dust listed as a possible sensitiser of ${marks[text(row, 'mark') ?? ''] ?? 'the body'}`,
            citation,
          ),
          sensitising: true,
        },
      ];
    }
    if (row.table === 'trgs-906') {
      const citation: Citation = { source: 'trgs-906', locator: `Annex 1, ${row.label}`, seen: seenOf(row) };
      return [statement(row, 'dust at work treated as carcinogenic', citation)];
    }
    return [];
  });
}

/** Property of a row that says that the wood gives food a flavour; one on `taste` alone does not. */
const flavour = 'flavor given to food';
const tasteProperties = ['taste', flavour];

/** What a document says of taste or smell given to food, or null. */
export function tasteOf(rows: readonly JoinedRow[]): Statement | null {
  const row = rows.find(
    (each) => each.table === 'other-sources' && tasteProperties.includes(text(each, 'property') ?? ''),
  );
  if (!row) return null;
  const said = statement(
    row,
    text(row, 'value') ?? '',
    citeDocument(row, text(row, 'document') ?? '', text(row, 'page')),
  );
  return text(row, 'property') === flavour ? { ...said, flavours: true } : said;
}
