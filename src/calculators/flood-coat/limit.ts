import type { Caution, EvidenceNote, Verdict } from '../../model/evidence/index.ts';
import { amount, atMost, toldApart } from '../../model/quantity/index.ts';
import {
  coatBarOf,
  coatDepth,
  countsAs,
  type DepthLimit,
  depthLimitOf,
  lessUnknownInWords,
  tooHotInWords,
} from '../../model/resin/depth-limit.ts';
import { kineticsOf } from '../../model/resin/fit.ts';
import { resinOf } from '../../model/resin/kinds.ts';
import { silentOn, timesOrRatiosAtWar } from '../../model/resin/told.ts';
import type { Resin } from '../../model/resin/types.ts';

/** How thick a coat may be poured in one go, and of which resin: a generic coating epoxy where none was named. */
export interface CoatLimit {
  resin: Resin;
  named: boolean;
  limit: DepthLimit;
  /** °C, where it was given. */
  shop: number | undefined;
}

/** The limit of a resin in a shop. */
export function coatLimitOf(resin: Resin | undefined, shop: number | undefined): CoatLimit {
  const of = resin ?? (resinOf('fast-coating-1-1') as Resin);
  return { resin: of, named: resin !== undefined, limit: depthLimitOf(of, shop), shop };
}

const mm = (value: number) => amount(value, 'mm', 2);

/** Why a coat of this thickness, mm, must not be poured in one go, or cannot be judged; undefined where neither holds. */
export function barredBy(wanted: number, { resin, named, limit, shop }: CoatLimit): Verdict | undefined {
  const war = timesOrRatiosAtWar(resin);
  if (war) {
    return {
      level: 'unknown',
      text: `Not by the sheet of ${resin.name}: ${war}. Look at it again before you pour, or ask the maker.`,
    };
  }
  const unlikely = unlikelyPotLife(resin);
  if (unlikely.length > 0) {
    return {
      level: 'unknown',
      text: unlikely.some(({ id }) => id === 'second-pot-life-unlikely')
        ? `The two pot lives of ${resin.name} contradict each other. Look at the sheet again before you pour.`
        : `The pot life of ${resin.name} is that of no resin for pouring. Look at the sheet again before you pour.`,
    };
  }
  if (limit.kind === 'contradicted') {
    return {
      level: 'unknown',
      text: silentOn(resin, 'potLife')
        ? `The sheet of ${resin.name} names no pot life, and its greatest depth does not go with that of a generic kind. Enter the pot life of the sheet, or ask the maker for it.`
        : `The greatest depth and the pot life of ${resin.name} cannot both be right. Look at the sheet again before you pour.`,
    };
  }
  if (limit.kind === 'silent') return barredUnstated(wanted, resin, shop);
  if (limit.kind === 'less-unknown') {
    return { level: 'unknown', text: lessUnknownInWords(resin, shop ?? limit.statedAt, limit) };
  }
  if (limit.kind === 'too-warm') {
    return {
      level: 'stop',
      text: `At ${amount(shop ?? 0, 'Cel')} no depth of this resin stays as cool as what is allowed at ${amount(limit.statedAt, 'Cel')}. Cool the shop, or pour at night.`,
    };
  }
  if (wanted <= countsAs(limit.depth, limit.ofSheet, limit.hotter) * (1 + 1e-9)) return undefined;
  const whose = named ? 'this resin' : 'a coating resin';
  const at = amount(limit.hotter ? (shop ?? limit.statedAt) : limit.statedAt, 'Cel');
  const told = toldApart(wanted, limit.depth);
  return {
    level: 'stop',
    text: `${told(wanted)} is no coat: ${whose} bears ${told(limit.depth)} in one pour at ${at}, and a deeper one can overheat, smoke or burn. Pour coats no thicker than that, or see what “Heat of a pour” says of a casting resin.`,
  };
}

/** Of a sheet that names no depth: a coat that the heat of a pour stops, or of which nobody knows how fast it cures, and all that is more than a coat. */
function barredUnstated(wanted: number, resin: Resin, shop: number | undefined): Verdict | undefined {
  const bar = coatBarOf(resin, wanted, shop);
  if (bar?.kind === 'no-pot-life') {
    return {
      level: 'unknown',
      text: 'Your sheet names neither a pot life nor a greatest depth of one pour, so nothing says how warm a coat of it grows. Both stand on the maker’s data sheet: enter them, or ask the maker.',
    };
  }
  if (bar) return { level: 'stop', text: tooHotInWords(resin, wanted, bar) };
  if (wanted <= coatDepth) return undefined;
  return {
    level: 'unknown',
    text: `Your sheet names no greatest depth of one pour, and ${mm(wanted)} is more than a coat. Ask the maker.`,
  };
}

/** A pot life that no resin for pouring has, or two of which one must be wrong. */
export function unlikelyPotLife(resin: Resin): readonly Caution[] {
  return kineticsOf(resin).cautions.filter(({ id }) => id.endsWith('pot-life-unlikely'));
}

/** What must be said of a coat within its limit. */
export function limitWords(wanted: number, { named, limit, shop, resin }: CoatLimit): Caution[] {
  const own = (id: string, text: string, basis: Caution['basis'] = 'derived'): Caution => ({
    id,
    level: 'warning',
    own: true,
    text,
    basis,
  });
  if (limit.kind === 'silent') {
    return [
      own(
        'no-greatest-depth',
        'Your sheet names no greatest depth of one pour: ask the maker before you pour more than a coat.',
      ),
    ];
  }
  if (limit.kind !== 'known') return [];
  return [
    ...(resin.fromSheet
      ? []
      : [
          own(
            'depth-of-a-kind',
            `The ${mm(limit.stated)} that ${named ? 'this kind' : 'a coating resin'} bears in one pour are a generic kind’s: yours stand on the sheet.`,
            resin.figures.greatestDepth?.basis ?? 'memory',
          ),
        ]),
    ...(shop === undefined && wanted > limit.depth / 2
      ? [
          own(
            'temperature-assumed',
            `Taken: a shop of ${amount(limit.statedAt, 'Cel')}${limit.statedAtAssumed ? ' (assumed: the sheet names no temperature)' : ''}. A warmer shop bears a thinner coat: give its temperature.`,
          ),
        ]
      : []),
  ];
}

/** What the limit rests on. */
export function limitEvidence({ limit, resin, shop }: CoatLimit): EvidenceNote[] {
  if (limit.kind !== 'known') return [];
  return [
    {
      text: `${resin.name}: ${mm(limit.stated)} in one pour at ${amount(limit.statedAt, 'Cel')}${
        limit.hotter && shop !== undefined
          ? `, ${atMost(limit.depth, 'mm')} at ${amount(shop, 'Cel')}, which warm as much`
          : ''
      }.`,
      basis: resin.figures.greatestDepth?.basis ?? 'memory',
    },
  ];
}
