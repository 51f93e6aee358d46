import { calendarFile } from '../method/plan/calendar-file.ts';
import { advised } from '../method/plan/index.ts';
import { planReport } from '../method/plan/report.ts';
import { planText } from '../method/plan/text.ts';
import { inReaderUnits } from '../model/quantity/index.ts';
import { caseOf, caseOptions, caseUsage } from './method-case.ts';
import { readOptions } from './options.ts';
import { planOfCase } from './plan-case.ts';
import type { Command } from './usage.ts';

const usage = `plan <file> ${caseUsage.options} [--json | --ics]

Works a method out for one case and lays it out in time: what to do in which session, what makes it so long, what to buy.
${caseUsage.about}`;

/** Plan a method. */
export const plan: Command = async (args, output) => {
  const { values, positionals } = readOptions('plan', {
    args: [...args],
    allowPositionals: true,
    options: {
      ...caseOptions,
      json: { type: 'boolean' },
      ics: { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
    },
  });
  if (values.help) {
    output.out(`kerf ${usage}`);
    return 0;
  }
  const today = new Date().toISOString().slice(0, 10);
  const asked = caseOf('plan', positionals, values, today);
  const { units, assumed } = asked;
  const planned = await planOfCase('plan', asked, output);
  if (!planned) return 1;
  const stops = planned.findings.some(({ level, excepted }) => level === 'stop' && excepted === undefined);
  const failed = stops || !planned.timetable.ok;
  if (values.ics) {
    const text = calendarFile(planned, units);
    if (text === undefined) {
      output.err(inReaderUnits(`No timetable. ${planned.impossible?.why}\n`, units));
      return 1;
    }
    output.out(text);
  } else if (values.json) output.out(`${JSON.stringify(planReport(await advised(planned), units), null, 2)}\n`);
  else {
    if (assumed)
      output.out('Hours are assumed: Monday to Friday, 9:00 to 17:00. Give --calendar or a shop record.\n\n');
    output.out(planText(await advised(planned), units));
  }
  return failed ? 1 : 0;
};
