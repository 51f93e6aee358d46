import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box } from './kit/lines.ts';
import { Arrow, EndGrain, Words } from './kit/marks.tsx';

const size = { width: 340, height: 216 };
const stave = { width: 50, height: 34, y: 84, count: 5 };
const x0 = (size.width - stave.width * stave.count) / 2;

/** A panel in its clamps, seen on its end: rings up and down by turns, cauls above and below, clamps from both sides. */
export function PanelClamps() {
  const right = x0 + stave.width * stave.count;
  const middle = stave.y + stave.height / 2;
  return (
    <Drawing
      title="A panel in its clamps, seen on its end"
      description="Five staves side by side, their rings curved up and down by turns, so that the cups of the staves cancel. Clamps press from both edges at the middle of the thickness, some over and some under the panel. Two straight cauls, waxed or taped so that glue does not hold them, lie across it above and below and keep it flat."
      {...size}
      caption="Rings up and down by turns. Cauls across, taped against glue; clamps over and under by turns, at the middle of the thickness."
    >
      {Array.from({ length: stave.count }, (_, at) => ({ at, x: x0 + at * stave.width })).map(({ at, x }) => (
        <EndGrain
          key={x}
          x={x}
          y={stave.y}
          width={stave.width}
          height={stave.height}
          pith={{ x: stave.width / 2, y: at % 2 === 0 ? stave.height + 26 : -26 }}
          apart={6}
        />
      ))}
      {[stave.y - 24, stave.y + stave.height + 2].map((y) => (
        <path key={y} className={styles.paper} d={box(x0 - 8, y, right - x0 + 16, 22)} />
      ))}
      <Words x={size.width / 2} y={stave.y - 8} anchor="middle">
        caul
      </Words>
      <Words x={size.width / 2} y={stave.y + stave.height + 18} anchor="middle">
        caul
      </Words>
      <Arrow from={{ x: 6, y: middle }} to={{ x: x0 - 3, y: middle }} heavy />
      <Arrow from={{ x: size.width - 6, y: middle }} to={{ x: right + 3, y: middle }} heavy />
      <Words x={4} y={stave.y - 32}>
        clamp
      </Words>
      <Words x={size.width - 4} y={stave.y - 32} anchor="end">
        clamp
      </Words>
      {[0.3, 0.7].map((part) => (
        <g key={part}>
          <Arrow
            from={{ x: x0 + part * (right - x0), y: stave.y - 52 }}
            to={{ x: x0 + part * (right - x0), y: stave.y - 26 }}
            heavy
          />
          <Arrow
            from={{ x: x0 + part * (right - x0), y: stave.y + stave.height + 52 }}
            to={{ x: x0 + part * (right - x0), y: stave.y + stave.height + 26 }}
            heavy
          />
        </g>
      ))}
      <Words x={size.width / 2} y={22} anchor="middle">
        rings: up, down, up …
      </Words>
      <Words x={size.width / 2} y={size.height - 14} anchor="middle" muted>
        first the cauls, lightly; then the clamps
      </Words>
    </Drawing>
  );
}
