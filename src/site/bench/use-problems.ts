import { useEffect, useMemo, useState } from 'react';
import type { EditProblem } from '../../method/edit/index.ts';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import { TextService } from './text-service.ts';

/** What was found in a text, and the text that was looked at. */
export interface LookedAt {
  text: string;
  problems: readonly EditProblem[];
}

/** Typing is looked over when it pauses for so long, ms. */
const pause = 200;

/** Look a text over, off the keystroke, and answer what the editor asks about it. */
export function useProblems(
  text: string,
  file: string,
  units: ReaderUnits,
  shop: string | undefined,
): { looked: LookedAt | undefined; service: TextService } {
  const service = useMemo(() => new TextService(), []);
  const [looked, setLooked] = useState<LookedAt>();
  useEffect(() => () => service.close(), [service]);
  useEffect(() => {
    const timer = setTimeout(async () => {
      const problems = await service.ask({
        kind: 'problems',
        text,
        file,
        units,
        ...(shop === undefined ? {} : { shop }),
      });
      if (problems) setLooked({ text, problems });
    }, pause);
    return () => clearTimeout(timer);
  }, [service, text, file, units, shop]);
  return { looked, service };
}
