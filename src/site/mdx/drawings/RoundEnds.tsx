import { tray, trayDerived } from '../tray.ts';
import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { rounded } from './kit/lines.ts';
import { Arrow, Measure, Resin, Words } from './kit/marks.tsx';

const size = { width: 340, height: 236 };
/** Units of the drawing to a millimetre. */
const scale = 0.75;
const [x, y] = [(size.width - tray.length * scale) / 2, 24];
const board = { width: tray.length * scale, height: tray.width * scale };
const channel = { width: tray.channel.length * scale, height: tray.channel.width * scale };

/** The tray from above: its channel along the grain, with round ends and wood beyond them. */
export function RoundEnds() {
  const middle = { x: x + board.width / 2, y: y + board.height / 2 };
  const [left, right] = [middle.x - channel.width / 2, middle.x + channel.width / 2];
  return (
    <Drawing
      title="The channel in the tray, seen from above"
      description={`The tray, ${tray.length} by ${tray.width} mm with corners of ${tray.cornerRadius} mm. The channel lies in the middle, along the grain, ${tray.channel.length} mm long and ${tray.channel.width} mm wide. Its ends are half round, with a radius of ${tray.channel.width / 2} mm, since a bit leaves no sharp corner and a round end does not begin a crack. From each end of the channel to the end of the tray stand ${trayDerived.beyondChannel} mm of wood, at least three widths of the channel.`}
      {...size}
      caption={`Along the grain, ends round (radius ${tray.channel.width / 2} mm), and at least three widths of wood, ${3 * tray.channel.width} mm, beyond each end: here ${trayDerived.beyondChannel} mm.`}
    >
      <path
        className={styles.grain}
        d={[0.12, 0.26, 0.38, 0.62, 0.74, 0.88]
          .map((part) => `M${x + 4} ${y + part * board.height}h${board.width - 8}`)
          .join('')}
      />
      <path className={styles.wood} d={rounded(x, y, board.width, board.height, tray.cornerRadius * scale)} />
      <Resin
        d={rounded(left, middle.y - channel.height / 2, channel.width, channel.height, channel.height / 2 - 0.01)}
      />
      <Measure from={{ x, y: middle.y }} to={{ x: left, y: middle.y }} />
      <Words x={(x + left) / 2} y={middle.y - 10} anchor="middle">
        {String(trayDerived.beyondChannel)}
      </Words>
      <Measure from={{ x: left, y: middle.y + 22 }} to={{ x: right, y: middle.y + 22 }} />
      <Words x={middle.x} y={middle.y + 42} anchor="middle">
        {String(tray.channel.length)}
      </Words>
      <Arrow from={{ x: right + 20, y: middle.y - 38 }} to={{ x: right - 3, y: middle.y - 4 }} />
      <Words x={right + 24} y={middle.y - 42} anchor="middle">
        {`R ${tray.channel.width / 2}`}
      </Words>
      <Words x={middle.x} y={middle.y - 18} anchor="middle">
        {`${tray.channel.width} wide`}
      </Words>
      <Measure from={{ x, y: y + board.height + 14 }} to={{ x: x + board.width, y: y + board.height + 14 }} />
      <Words x={middle.x} y={y + board.height + 34} anchor="middle">
        {`${tray.length} mm, grain this way`}
      </Words>
      <Words x={middle.x} y={16} anchor="middle" muted>
        {`all in mm; ${tray.width} across`}
      </Words>
    </Drawing>
  );
}
