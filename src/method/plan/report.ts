import { inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import { textWords } from '../show.ts';
import type { AdvisedPlan, Timetable } from './index.ts';
import { changesOf } from './price.ts';
import { impossibleAsText } from './text.ts';

/** A minute of a plan as a local time with its offset (RFC 3339): `2027-01-12T18:30:00+02:00`. */
export function stamp({ clock }: Pick<Timetable, 'clock'>, minutes: number): string {
  const { date, time, offset } = clock.momentAt(minutes);
  return `${date}T${time}:00${offset}`;
}

/** Minutes as a duration (ISO 8601): `PT1H30M`. */
export function duration(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  return `PT${hours > 0 ? `${hours}H` : ''}${rest > 0 || hours === 0 ? `${rest}M` : ''}`;
}

/**
 * A plan as data: what `kerf plan --json` prints, and what pages and sheets are made of. Times are local with their offset, lengths of time are
 * ISO 8601, figures are as their calculators gave them.
 */
export function planReport(plan: AdvisedPlan, units: ReaderUnits) {
  const { worked, timetable, findings, sessions, critical, limits, impossible, bill, cost } = plan;
  const planned = timetable.ok ? new Map(timetable.steps.map((step) => [step.id, step])) : undefined;
  const at = (minutes: number) => stamp(timetable, minutes);
  return {
    method: {
      file: worked.file,
      title: worked.record.title,
      ...(worked.record.version === undefined ? {} : { version: worked.record.version }),
      makes: worked.record.makes.what,
      pieces: worked.pieces,
    },
    parameters: Object.fromEntries(
      Object.values(worked.parameters).map(({ name, record, raw, from }) => [
        name,
        { label: record.label, value: raw, from },
      ]),
    ),
    steps: worked.steps.map(({ id, record, act, after, calculations, cautions }) => {
      const step = planned?.get(id);
      return {
        id,
        title: record.title,
        act: act.id,
        does: textWords(worked, record.does, units),
        ...(step && timetable.ok
          ? {
              start: at(step.start),
              end: at(step.end),
              hands: duration(step.hands),
              slack: duration(step.slack),
            }
          : {}),
        waits: after.map(({ step: before, counts, least, most, missed }) => ({
          step: before,
          counts,
          ...(least === undefined ? {} : { least: duration(least) }),
          ...(most === undefined ? {} : { most: duration(most) }),
          ...(missed === undefined ? {} : { missed: missed.do }),
        })),
        figures: Object.fromEntries(
          calculations.map(({ name, use, result, errors }) => [
            name,
            result
              ? {
                  use,
                  verdict: { ...result.verdict, text: inReaderUnits(result.verdict.text, units) },
                  figures: result.figures,
                }
              : { use, errors: errors?.map((error) => ({ ...error, message: inReaderUnits(error.message, units) })) },
          ]),
        ),
        cautions: cautions.map(({ id: caution, level, text }) => ({
          id: caution,
          level,
          text: inReaderUnits(text, units),
        })),
      };
    }),
    people: plan.people,
    sessions: sessions.map(({ start, end, work, free }) => ({
      start: at(start),
      end: at(end),
      work: work.map(({ step, pieces, start: from, end: to, by, goesOn }) => ({
        step,
        pieces,
        start: at(from),
        end: at(to),
        by,
        ...(goesOn ? { goesOn } : {}),
      })),
      free: free.map(({ who, start: from, end: to }) => ({ who, start: at(from), end: at(to) })),
    })),
    critical: critical.map(({ step, pieces, start, end, heldBy, words }) => ({
      step,
      pieces,
      start: at(start),
      end: at(end),
      heldBy,
      words: inReaderUnits(words, units),
    })),
    ...(limits ? { limits } : {}),
    advice: plan.advice.map(({ words, paysBack, ...one }) => ({
      ...one,
      ...(paysBack ? { paysBack: { ...paysBack, words: inReaderUnits(paysBack.words, units) } } : {}),
      words: inReaderUnits(words, units),
    })),
    ...(timetable.ok
      ? {
          start: at(timetable.start),
          end: at(timetable.end),
          shortest: timetable.proved,
          lowerBound: duration(timetable.lowerBound),
          secondWays: timetable.secondWays,
        }
      : { impossible: impossibleAsText(impossible, units) }),
    bill: bill.ok
      ? bill.value.lines.map(({ id, what, need, unit, onHand, buy, packs, cost: paid, from, missing }) => ({
          id,
          what,
          need,
          unit,
          onHand,
          buy,
          packs,
          cost: paid,
          from,
          ...(missing === undefined ? {} : { missing }),
        }))
      : [],
    cost: {
      ...(bill.ok
        ? {
            currency: bill.value.currency,
            bought: bill.value.bought,
            used: bill.value.used,
            without: bill.value.without,
            rounding: bill.value.rounding,
          }
        : {}),
      ...(cost.ok
        ? {
            parts: cost.value.pricing.parts,
            pieceCost: cost.value.pricing.pieceCost,
            price: cost.value.pricing.price,
            margin: cost.value.pricing.margin,
            markup: cost.value.pricing.markup,
            breakEvenPrice: cost.value.pricing.breakEvenPrice,
            breakEvenPieces: cost.value.pricing.breakEvenPieces,
            words: cost.value.pricing.words,
            changes: changesOf(cost.value),
            batches: cost.value.batches.sizes,
            cheapestBatch: cost.value.batches.cheapest.pieces,
          }
        : { errors: cost.errors }),
    },
    findings: findings.map(({ rule, level, step, path, message, wayOut, excepted }) => {
      const { line, column } = worked.spanOf(path);
      return {
        rule,
        level,
        ...(step === undefined ? {} : { step }),
        line,
        column,
        message: inReaderUnits(`${message} ${wayOut}`, units),
        ...(excepted === undefined ? {} : { excepted }),
      };
    }),
  };
}
