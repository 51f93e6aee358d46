import { textTable } from '../calculators/kit/text-table.ts';
import { checkExceptions, checkSets } from '../model/checks.ts';
import { type CheckReport, checkWords, countChecks, isOwn, runChecks } from '../model/evidence/index.ts';
import { formatNumber, unitLabel } from '../model/quantity/index.ts';
import { readOptions } from './options.ts';
import type { Command } from './usage.ts';

function worst(report: CheckReport): string {
  if (!report.worst) return '';
  const { value, difference } = report.worst;
  return [formatNumber(difference, 2), unitLabel(value.unit), `(${value.id})`].filter(Boolean).join(' ');
}

/** `kerf checks`: run every check value, the published and our own by another road; exit code 1 where one fails or an exception is no longer needed. */
export const checks: Command = (args, { out, err }) => {
  const { values } = readOptions('checks', { args: [...args], options: { help: { type: 'boolean', short: 'h' } } });
  if (values.help) {
    out(
      'kerf checks\n  Run every check value and print the sets: how many values are published and how many our own by another road, how many are within tolerance, the worst difference.\n',
    );
    return 0;
  }
  const reports = checkSets.map((set) => runChecks(set, checkExceptions));
  out(
    `${textTable(
      [
        { heading: 'set' },
        { heading: 'kind' },
        { heading: 'from a source', numeric: true },
        { heading: 'our own', numeric: true },
        { heading: 'within', numeric: true },
        { heading: 'known', numeric: true },
        { heading: 'failures', numeric: true },
        { heading: 'worst difference' },
      ],
      reports.map((report) => [
        report.set.id,
        report.set.kind,
        String(report.outcomes.filter(({ value }) => !isOwn(value)).length),
        String(report.outcomes.filter(({ value }) => isOwn(value)).length),
        String(report.outcomes.filter((outcome) => outcome.within).length),
        String(report.outcomes.filter((outcome) => !outcome.within && outcome.exception).length),
        String(report.failures),
        worst(report),
      ]),
    )}\n`,
  );
  for (const { set, outcomes } of reports.filter(({ failures }) => failures > 0)) {
    for (const { value, ours, within, exception } of outcomes) {
      if (within || exception) continue;
      err(
        `${set.id} ${value.id}: ${value.what} is ${value.published} ${value.unit} ${isOwn(value) ? 'by another road' : 'as published'}, ${ours} by ours; the tolerance is ${value.tolerance}. Correct the figure or the equation, or record why they differ.\n`,
      );
    }
  }
  const stale = reports.flatMap((report) => report.staleExceptions);
  for (const { set, id } of stale) err(`${set} ${id}: the exception is no longer needed. Remove it.\n`);
  const failures = reports.reduce((sum, report) => sum + report.failures, 0);
  out(`${checkWords(countChecks(reports)).join('\n')}\n`);
  out(`${reports.length} sets, ${failures} failures, ${stale.length} exceptions no longer needed\n`);
  return failures + stale.length === 0 ? 0 : 1;
};
