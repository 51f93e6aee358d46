import type { ActId } from '../acts/index.ts';
import type { WorkedMethod, WorkedStep } from '../case/types.ts';
import type { MaterialKind, ToolKind } from '../record/index.ts';
import { askedOf, atStep, kindsAt, kindsBefore, listed, withArticle, wordTold } from './kit.ts';
import { rule } from './rule.ts';

type Kind = ToolKind | MaterialKind;

/** Of each list one kind at least belongs to the work of the act; a tool of kind `other` may stand for any of its tools. */
const needs: Readonly<Partial<Record<ActId, readonly (readonly Kind[])[]>>> = {
  saw: [['table-saw', 'band-saw', 'mitre-saw', 'track-saw', 'hand-saw', 'jigsaw', 'other']],
  flatten: [['jointer', 'planer', 'router-sled', 'drum-sander', 'other']],
  plane: [['planer', 'jointer', 'drum-sander', 'router-sled', 'other']],
  'glue-up': [['glue'], ['clamp']],
  'make-a-template': [['sheet-stock', 'template']],
  'cut-out': [['band-saw', 'jigsaw', 'scroll-saw', 'hand-saw', 'table-saw', 'other']],
  rout: [['router-table', 'plunge-router', 'router-sled'], ['router-bit']],
  bore: [
    ['drill-press', 'hand-drill', 'other'],
    ['drill-bit', 'other'],
  ],
  'round-over': [['router-table', 'plunge-router', 'sanding-block', 'scraper', 'other']],
  scrape: [['scraper', 'other']],
  sand: [['abrasive']],
  'raise-the-grain': [['cloth', 'brush', 'other']],
  clean: [['cloth', 'brush', 'dust-extractor', 'other']],
  seal: [['resin', 'finish']],
  dam: [['dam-and-tape', 'mould', 'caul', 'other']],
  mix: [['resin'], ['cup-and-stick']],
  pour: [['resin']],
  level: [['abrasive', 'scraper', 'planer', 'drum-sander', 'router-sled', 'plunge-router', 'other']],
  polish: [['abrasive', 'polisher', 'cloth', 'other']],
  oil: [['finish']],
  wax: [['finish']],
  coat: [['finish', 'resin']],
  pack: [['packing', 'other']],
};

/** Acts whose stuff an earlier step may have listed: what was mixed is poured, a master is made of the sheet that was sawn up. */
const broughtAlong: readonly ActId[] = ['pour', 'coat', 'seal', 'make-a-template'];

/** Work that lists nothing to do it with. */
export const missingToolOrMaterial = rule({
  id: 'missing-tool-or-material',
  level: 'warn',
  title: 'A step lists what its work is done with',
  looksAt:
    'The tools and materials of each step beside what its act cannot do without: abrasive to sand, a finish to oil, a scale to mix resin by weight, a metal detector to look for metal.',
  why: 'Who prepares the bench goes by the list; what is missing there is missing when the resin is mixed.',
  find: (worked) =>
    worked.steps.flatMap((step) => {
      const at = new Set([
        ...kindsAt(worked, step),
        ...(broughtAlong.includes(step.act.id) ? kindsBefore(worked, step) : []),
      ]);
      const missing = neededAt(worked, step).filter((kinds) => !kinds.some((kind) => at.has(kind)));
      if (missing.length === 0) return [];
      const words = missing.map((kinds) =>
        listed(
          kinds
            .filter((kind) => kind !== 'other')
            .slice(0, 3)
            .map(withArticle),
          'or',
        ),
      );
      return [
        {
          ...atStep(step),
          message: `“${step.record.title}” (${step.act.label.toLowerCase()}) does not list ${listed(words, 'nor')}.`,
          wayOut: 'List it under tools or uses of the step, or choose the act that the step is.',
        },
      ];
    }),
});

/** What a step needs: of its act, of what it looks for, and of how resin is measured. */
function neededAt(worked: WorkedMethod, { act, record }: WorkedStep): readonly (readonly Kind[])[] {
  const round: readonly (readonly Kind[])[] = act.id === 'round-over' ? routed(worked, record.tools ?? []) : [];
  return [
    ...(needs[act.id] ?? []),
    ...round,
    ...(act.id === 'mix' && !isByVolume(worked) ? [['scale' as const]] : []),
    ...(record.looksFor?.includes('metal') ? [['metal-detector' as const]] : []),
    ...(record.looksFor?.includes('moisture') ? [['moisture-meter' as const]] : []),
  ];
}

/** A router wants a bit. */
function routed(worked: WorkedMethod, tools: readonly string[]): readonly (readonly Kind[])[] {
  const kinds = tools.map((name) => worked.tools[name]?.record.kind);
  return kinds.some((kind) => kind === 'plunge-router' || kind === 'router-table') ? [['router-bit']] : [];
}

/** Whether every dose of the method is measured by volume. */
function isByVolume(worked: WorkedMethod): boolean {
  const doses = askedOf(worked, 'resin-dose');
  return doses.length > 0 && doses.every((dose) => wordTold(dose, 'measureBy') === 'volume');
}
