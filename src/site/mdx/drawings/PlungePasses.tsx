import { tray } from '../tray.ts';
import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Arrow, Measure, Words } from './kit/marks.tsx';

/** The channel of the tray in two passes, mm; no pass deeper than half of the bit is wide. */
export const passes = [tray.channel.depth / 2, tray.channel.depth] as const;

const size = { width: 340, height: 206 };
const scale = 10;
const face = 92;
const bottom = 182;
const stop = { x: 62, turret: 66 };
const bit = { x: 158, width: tray.channelBit.diameter * 5 };

/** Plunging in passes: stop rod and turret, zero on the wood, one pass after the other. */
export function PlungePasses() {
  return (
    <Drawing
      title="Plunging in passes, with the depth stop"
      description={`Left: the stop rod of a plunge router hangs over a turret with two steps. With the bit touching the wood, the gap between rod and lower step is the depth of the pocket, ${tray.channel.depth} mm; the gap to the higher step is the first pass, ${passes[0]} mm. Right: the bit over the wood, with the floor of the first pass and of the second below it.`}
      {...size}
      caption={`Bit on the wood, router unplugged: zero. Set the rod over the lowest step by the depth of the pocket (${tray.channel.depth} mm), over the next by the first pass (${passes[0]} mm).`}
    >
      <path className={styles.grain} d={grain(120, face, 214, bottom - face, 5)} />
      <path className={styles.wood} d={`M120 ${face}H334V${bottom}H120Z`} />
      <path className={styles.cutter} d={box(bit.x, 40, bit.width, face - 40)} />
      <path className={styles.solid} d={box(bit.x + bit.width / 2 - 8, 14, 16, 26)} />
      {passes.map((depth, at) => (
        <g key={depth}>
          <path
            className={styles.line}
            d={`M${bit.x} ${face + depth * scale}h${bit.width}M${bit.x} ${face}v${depth * scale}M${bit.x + bit.width} ${face}v${depth * scale}`}
          />
          <Arrow
            from={{ x: bit.x + bit.width / 2 - 12 + 24 * at, y: face + 2 }}
            to={{ x: bit.x + bit.width / 2 - 12 + 24 * at, y: face + depth * scale - 2 }}
          />
          <Words x={bit.x + bit.width + 8} y={face + depth * scale - 2}>
            {`pass ${at + 1}: ${depth} mm`}
          </Words>
        </g>
      ))}
      <path className={styles.solid} d={box(stop.x - 4, 14, 8, stop.turret - 14)} />
      <path
        className={styles.wood}
        d={`M${stop.x - 34} ${stop.turret + passes[1] * scale}h52v${-passes[0] * scale}h26V${bottom}h-78Z`}
      />
      <Measure from={{ x: stop.x, y: stop.turret }} to={{ x: stop.x, y: stop.turret + passes[1] * scale }} />
      <Words x={stop.x - 8} y={stop.turret + 34} anchor="end">
        {`${tray.channel.depth} mm`}
      </Words>
      <Words x={stop.x + 10} y={30}>
        rod
      </Words>
      <Words x={stop.x + 4} y={bottom - 14} anchor="middle">
        turret
      </Words>
      <Words x={bit.x + bit.width / 2 + 14} y={30}>
        bit
      </Words>
      <Words x={bit.x + bit.width + 8} y={face - 8}>
        zero: touches
      </Words>
      <Words x={227} y={size.height - 4} anchor="middle">
        board
      </Words>
    </Drawing>
  );
}
