import { tray } from '../tray.ts';
import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Arrow, Words } from './kit/marks.tsx';

const size = { width: 340, height: 222 };
/** Units of the drawing to a millimetre. */
const scale = 4;
const thick = tray.thickness * scale;
const round = tray.roundOver * scale;
/** A plain chamfer (common practice). mm. */
const chamfer = 2 * scale;
const edge = { y: 42, width: 96 };
const foot = { width: 26, height: 14, in: 20 };
const profiles = [
  { x: 6, words: ['round-over', `R ${tray.roundOver} mm`] },
  { x: 122, words: ['chamfer', '2 mm, 45°'] },
  { x: 238, words: ['cut under:', 'fingers, feet'] },
] as const;

/** Three edges of a tray in section: rounded over, chamfered, and cut under with a foot. */
export function EdgeProfiles() {
  const [rounded, chamfered, under] = profiles;
  const bottom = edge.y + thick;
  const right = (x: number) => x + edge.width - 10;
  return (
    <Drawing
      title="Edges and feet, in section"
      description={`Three edges of a tray ${tray.thickness} mm thick. First: both corners rounded over with a radius of ${tray.roundOver} mm. Second: both corners cut off at 45 degrees. Third: the lower corner cut away at a slant, so that fingers reach under the tray; a foot stands back from the edge, with its screw shorter than the wood above it.`}
      {...size}
      caption="Break every corner: sharp ones chip and cut. Feet stand back from the edge; a screw never reaches the channel or the face."
    >
      {profiles.map(({ x, words }) => (
        <g key={x}>
          <path className={styles.grain} d={grain(x, edge.y, edge.width - 40, thick, 5)} />
          <Words x={x + edge.width / 2 - 4} y={bottom + 44} anchor="middle">
            {words}
          </Words>
        </g>
      ))}
      <path
        className={styles.wood}
        d={`M${rounded.x} ${edge.y}H${right(rounded.x) - round}a${round} ${round} 0 0 1 ${round} ${round}V${bottom - round}a${round} ${round} 0 0 1 ${-round} ${round}H${rounded.x}`}
      />
      <path
        className={styles.wood}
        d={`M${chamfered.x} ${edge.y}H${right(chamfered.x) - chamfer}l${chamfer} ${chamfer}V${bottom - chamfer}l${-chamfer} ${chamfer}H${chamfered.x}`}
      />
      <path
        className={styles.wood}
        d={`M${under.x} ${edge.y}H${right(under.x) - round}l${round} ${round}v14L${right(under.x) - 34} ${bottom}H${under.x}`}
      />
      <path className={styles.solid} d={box(under.x + foot.in, bottom, foot.width, foot.height)} />
      <path className={styles.never} d={`M${under.x + foot.in + foot.width / 2} ${bottom}v-26`} />
      <Arrow from={{ x: right(rounded.x) - 34, y: 24 }} to={{ x: right(rounded.x) - 5, y: edge.y + 4 }} />
      <Words x={rounded.x} y={22}>
        {`R ${tray.roundOver}`}
      </Words>
      <Arrow from={{ x: right(under.x) + 6, y: bottom + 16 }} to={{ x: right(under.x) - 14, y: bottom - 18 }} />
      <Words x={size.width - 2} y={26} anchor="end">
        short screw
      </Words>
    </Drawing>
  );
}
