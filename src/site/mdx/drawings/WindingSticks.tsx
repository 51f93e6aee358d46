import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box } from './kit/lines.ts';

const size = { width: 340, height: 128 };
const stick = { length: 140, height: 12, gap: 6 };
const twist = 9;
const views = [
  { x: 16, tilt: 0, words: 'level with each other' },
  { x: 184, tilt: twist, words: 'twisted' },
];

/** What an eye sees along two straight sticks, on a board without twist and on one with it. */
export function WindingSticks() {
  return (
    <Drawing
      title="Two straight sticks across a board, sighted from one end"
      description="Left: the far stick shows as an even strip over the near one, so the two ends lie in one plane. Right: the far stick stands higher at one end than at the other, so the board or the pair of rails is twisted by that much."
      {...size}
      caption="Sight over the near stick to the far one. An even strip: no twist. A wedge: lift the low corner until the strip is even."
    >
      {views.map(({ x, tilt, words }) => (
        <g key={words}>
          <path
            className={styles.wood}
            d={`M${x} ${40 + tilt}l${stick.length} ${-2 * tilt}v${stick.height + stick.gap + tilt}h${-stick.length}Z`}
          />
          <path className={styles.solid} d={box(x, 40 + stick.height + stick.gap, stick.length, stick.height)} />
          <text x={x + stick.length / 2} y="22" textAnchor="middle" className={styles.marks}>
            far stick
          </text>
          <text x={x + stick.length / 2} y="90" textAnchor="middle" className={styles.marks}>
            near stick
          </text>
          <text x={x + stick.length / 2} y="116" textAnchor="middle">
            {words}
          </text>
        </g>
      ))}
    </Drawing>
  );
}
