import { workMethod } from '../method/case/work.ts';
import { calendarFile } from '../method/plan/calendar-file.ts';
import { planOf } from '../method/plan/index.ts';
import { planReport } from '../method/plan/report.ts';
import { planText } from '../method/plan/text.ts';
import { readMethod } from '../method/read.ts';
import { ProblemError } from '../method/schedule/index.ts';
import { inReaderUnits } from '../model/quantity/index.ts';
import { caseOf, caseOptions, caseUsage } from './method-case.ts';
import { shownProblem, textOf } from './method-files.ts';
import { readOptions } from './options.ts';
import { type Command, type Output, UsageError } from './usage.ts';

const usage = `plan <file> ${caseUsage.options} [--json | --ics]

Works a method out for one case and lays it out in time: what to do in which session, what makes it so long, what to buy.
${caseUsage.about}`;

async function planned(args: readonly string[], output: Output): Promise<number> {
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
  const { file, units, shop, pieces, people, start = today, end, hours, assumed, set } = asked;
  const working = await workMethod(readMethod(textOf(file, 'plan'), file), {
    ...(pieces === undefined ? {} : { pieces }),
    ...(set ? { set } : {}),
    ...(shop ? { shop } : {}),
  });
  if (!working.ok) {
    for (const problem of working.problems) output.err(`${shownProblem(problem, units)}\n`);
    return 1;
  }
  const plan = await planOf(working.worked, {
    start,
    ...(end === undefined ? {} : { end }),
    hours,
    people,
  });
  const stops = plan.findings.some(({ level, excepted }) => level === 'stop' && excepted === undefined);
  const failed = stops || !plan.timetable.ok;
  if (values.ics) {
    const text = calendarFile(plan, units);
    if (text === undefined) {
      output.err(inReaderUnits(`No timetable. ${plan.impossible?.why}\n`, units));
      return 1;
    }
    output.out(text);
  } else if (values.json) output.out(`${JSON.stringify(planReport(plan, units), null, 2)}\n`);
  else {
    if (assumed)
      output.out('Hours are assumed: Monday to Friday, 9:00 to 17:00. Give --calendar or a shop record.\n\n');
    output.out(planText(plan, units));
  }
  return failed ? 1 : 0;
}

/** Plan a method. */
export const plan: Command = async (args, output) => {
  try {
    return await planned(args, output);
  } catch (error) {
    if (error instanceof ProblemError) throw new UsageError(`plan: ${error.message}`);
    throw error;
  }
};
