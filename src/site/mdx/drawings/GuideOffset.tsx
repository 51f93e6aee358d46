import { tray, trayDerived } from '../tray.ts';
import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Arrow, Measure, Words } from './kit/marks.tsx';

const size = { width: 340, height: 232 };
/** Units of the drawing to a millimetre. */
const scale = 8;
const template = { left: 6, top: 66, right: 120, height: tray.template.thickness * 4 };
const board = { bottom: 190 };
const collar = { width: tray.channelBit.collar * scale, wall: 10, drop: 30 };
const bit = { width: tray.channelBit.diameter * scale, below: 34 };

/** A guide collar that runs in the window of a template: why the window is larger than the pocket. */
export function GuideOffset() {
  const foot = template.top + template.height;
  const middle = template.right + collar.width / 2;
  const [collarLeft, bitLeft, bitRight] = [template.right, middle - bit.width / 2, middle + bit.width / 2];
  const pocketFloor = foot + bit.below;
  return (
    <Drawing
      title="Collar, bit and window in section: how much larger the window is"
      description={`Section at one edge of a window. The collar under the router’s base, ${tray.channelBit.collar} mm across, runs along the edge of the template. The bit inside it is ${tray.channelBit.diameter} mm across, so it cuts ${trayDerived.collarOffset} mm away from that edge: half of the difference of the two. The window is larger than the pocket by that much all round.`}
      {...size}
      caption={`Window larger than the pocket all round by half of (collar − bit): (${tray.channelBit.collar} − ${tray.channelBit.diameter}) ÷ 2 = ${trayDerived.collarOffset} mm. Measure both with a calliper.`}
    >
      <path className={styles.grain} d={grain(template.left, foot, bitLeft - template.left, board.bottom - foot, 5)} />
      <path
        className={styles.wood}
        d={`M${template.left} ${foot}H${bitLeft}V${pocketFloor}H${bitRight}V${foot}H${size.width - 6}V${board.bottom}H${template.left}Z`}
      />
      <path
        className={styles.wood}
        d={box(template.left, template.top, template.right - template.left, template.height)}
      />
      <path
        className={styles.wood}
        d={`M${template.left} ${template.top - 2}v-12H${size.width - 6}v12H${collarLeft + collar.width}v${collar.drop}h${-collar.wall}v${-collar.drop}H${collarLeft + collar.wall}v${collar.drop}h${-collar.wall}v${-collar.drop}Z`}
      />
      <path className={styles.cutter} d={box(bitLeft, template.top + 8, bit.width, pocketFloor - template.top - 8)} />
      <path className={styles.solid} d={box(middle - 8, template.top - 34, 16, 42)} />
      <Measure from={{ x: template.right, y: foot + 14 }} to={{ x: bitLeft, y: foot + 14 }} />
      <path className={styles.dimension} d={`M${template.right} ${foot}v22`} />
      <Words x={template.right - 8} y={foot + 19} anchor="end">
        {`${trayDerived.collarOffset} mm`}
      </Words>
      <Words x={(template.left + template.right) / 2} y={template.top + template.height / 2 + 5} anchor="middle">
        template
      </Words>
      <Words x={middle} y={foot + 20} anchor="middle">
        bit
      </Words>
      <Words x={template.left + 6} y={board.bottom - 12}>
        board
      </Words>
      <Words x={size.width - 6} y={22} anchor="end">
        collar
      </Words>
      <Arrow
        from={{ x: size.width - 28, y: 28 }}
        to={{ x: collarLeft + collar.width - 3, y: template.top + collar.drop - 8 }}
      />
      <Words x={template.left} y={22}>
        base of the router
      </Words>
      <Arrow from={{ x: 50, y: 28 }} to={{ x: 56, y: template.top - 10 }} />
      <Measure from={{ x: bitLeft, y: pocketFloor + 14 }} to={{ x: bitRight, y: pocketFloor + 14 }} />
      <Words x={middle} y={board.bottom + 20} anchor="middle">
        pocket
      </Words>
    </Drawing>
  );
}
