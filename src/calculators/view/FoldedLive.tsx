import { memo, useCallback, useMemo } from 'react';
import { foldedOf } from '../kit/folded.ts';
import type { LiveProps } from './Folded.tsx';
import { Frame, type FrameState } from './Frame.tsx';
import { workerIfHeavy } from './worker-of.ts';

/** A calculator under its fold: form and whole answer, which tell the line above what they come to. */
export const FoldedLive = memo(function FoldedLive({ shown, preset, prefix, headingLevel, said, tells }: LiveProps) {
  const { calculator } = shown;
  const worker = useMemo(() => workerIfHeavy(calculator), [calculator]);
  const tell = useCallback(
    ({ asked, result, upToDate, units }: FrameState) =>
      tells({
        folded: foldedOf(
          calculator,
          asked,
          result,
          units,
          said.map((caution) => caution.id),
          preset,
        ),
        upToDate,
      }),
    [calculator, said, preset, tells],
  );
  return (
    <Frame
      {...shown}
      preset={preset}
      prefix={prefix}
      headingLevel={headingLevel}
      said={said}
      worker={worker}
      under="fold"
      tells={tell}
    />
  );
});
