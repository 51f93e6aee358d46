import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box } from './kit/lines.ts';
import { Resin, Words } from './kit/marks.tsx';

const size = { width: 360, height: 152 };
const line = 88;
/** From mixing to use: where each stage begins, what it is, and what may be done in it. */
const stages = [
  { x: 6, to: 76, name: 'liquid', act: ['pour'], mark: 'mix' },
  { x: 76, to: 142, name: 'thick', act: [], mark: 'work ends' },
  { x: 142, to: 216, name: 'window', act: ['pour', 'again'], mark: 'gel' },
  { x: 216, to: 292, name: 'hard', act: ['wait, sand,', 'then pour'], mark: 'closes' },
  { x: 292, to: 352, name: 'cured', act: ['use'], mark: 'the sheet' },
] as const;

/** From mixing to use on one line, with the place of the recoat window. Not to scale: what comes after what. */
export function CureLine() {
  const [, , window] = stages;
  return (
    <Drawing
      title="From mixing to use on one line"
      description="A line from mixing to use, not to scale: liquid, thickening, gel; from gel the recoat window, in which the next layer bonds by itself; then hard, when a new layer needs sanding first; and cured, by the days of the data sheet, when it may be sanded for good, oiled and used."
      {...size}
      caption="From gel until the window closes a new layer bonds by itself. After that, only to what sandpaper has roughened. Not to scale."
    >
      <Resin d={box(window.x, line - 36, window.to - window.x, 36)} />
      <path className={styles.axis} d={`M${stages[0].x} ${line}H354m-8 -6l8 6l-8 6`} />
      {stages.map(({ x, to, name, act, mark }, at) => (
        <g key={name}>
          <path className={styles.axis} d={`M${x} ${line - 36}v42`} />
          <Words x={(x + to) / 2} y={line - 12} anchor="middle">
            {name}
          </Words>
          <Words x={(x + to) / 2} y={34 - 18 * (act.length - 1)} anchor="middle">
            {act}
          </Words>
          {at === 0 ? (
            <Words x={x} y={line + 24} muted>
              {mark}
            </Words>
          ) : (
            <Words x={x} y={line + (at % 2 === 1 ? 24 : 42)} anchor="middle" muted>
              {mark}
            </Words>
          )}
        </g>
      ))}
    </Drawing>
  );
}
