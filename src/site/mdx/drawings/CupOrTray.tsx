import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box } from './kit/lines.ts';
import { Arrow, Resin, Words } from './kit/marks.tsx';

const size = { width: 340, height: 196 };
const foot = 138;
const [cup, spread] = [70, 240];

/** The same resin in a cup and spread wide: only one of them gives it time. */
export function CupOrTray() {
  return (
    <Drawing
      title="The same resin in a cup, and spread wide"
      description="Left: a deep cup. Heat leaves by its small surface only, so it warms, thickens sooner and may run away. Right: the same amount spread in a wide shallow tray. Heat leaves by a large face as fast as it comes, so it stays liquid longer. The data sheet’s pot life is that of a cup."
      {...size}
      caption="Pot life is the life of a cup. Poured out at once, the same resin stays workable longer; left in the cup it heats itself."
    >
      <Resin d={`M${cup - 32} 74L${cup - 28} ${foot}h56l4 ${74 - foot}Z`} />
      <path className={styles.wood} d={`M${cup - 36} 56L${cup - 28} ${foot}h56l8 -82`} />
      <Resin d={box(spread - 84, foot - 10, 168, 9)} />
      <path className={styles.wood} d={`M${spread - 88} ${foot - 20}v20h176v-20`} />
      <Arrow from={{ x: cup, y: 68 }} to={{ x: cup, y: 40 }} heavy />
      {[-60, -20, 20, 60].map((off) => (
        <Arrow key={off} from={{ x: spread + off, y: foot - 16 }} to={{ x: spread + off, y: foot - 44 }} heavy />
      ))}
      <Words x={cup} y={24} anchor="middle">
        little heat out
      </Words>
      <Words x={spread} y={foot - 58} anchor="middle">
        heat out everywhere
      </Words>
      <Words x={cup} y={foot + 26} anchor="middle">
        {['short life,', 'gets hot']}
      </Words>
      <Words x={spread} y={foot + 26} anchor="middle">
        longer life
      </Words>
    </Drawing>
  );
}
