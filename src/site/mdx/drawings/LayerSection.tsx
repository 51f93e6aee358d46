import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Arrow, Resin, Words } from './kit/marks.tsx';

const size = { width: 340, height: 226 };
/** The hollow of the page: a pocket of 45 mm in three pours; tests/docs hold what the page says of it. */
export const layered = { depth: 45, layers: 3 };
const each = layered.depth / layered.layers;
const pocket = { left: 70, right: 270, top: 52, layer: 38 };
const board = { left: 6, right: 334, bottom: 200 };

/** A section through a deep pocket that is filled in layers, with the waits between them. */
export function LayerSection() {
  const bottom = pocket.top + layered.layers * pocket.layer;
  const layers = Array.from({ length: layered.layers }, (_, at) => ({
    layer: at + 1,
    y: bottom - (at + 1) * pocket.layer,
  }));
  return (
    <Drawing
      title="A deep pocket filled in three pours, in section"
      description={`Section through a board with a pocket ${layered.depth} mm deep, filled in ${layered.layers} pours of ${each} mm each. A thick line along its walls and bottom is the seal coat. Between one pour and the next is a wait: until a gloved finger leaves a print, lifts no string and the layer is cold again. Heat leaves mostly upwards, little of it down through the wood.`}
      {...size}
      caption={`A pocket of ${layered.depth} mm in ${layered.layers} pours. Before the next: print, no string, and cold again. The thick line is the seal coat. Heat leaves mostly through the top.`}
    >
      <path
        className={styles.grain}
        d={
          grain(board.left, pocket.top, pocket.left - board.left, bottom - pocket.top, 5) +
          grain(pocket.right, pocket.top, board.right - pocket.right, bottom - pocket.top, 5) +
          grain(board.left, bottom, board.right - board.left, board.bottom - bottom, 1)
        }
      />
      <path
        className={styles.wood}
        d={`M${board.left} ${pocket.top}H${pocket.left}V${bottom}H${pocket.right}V${pocket.top}H${board.right}V${board.bottom}H${board.left}Z`}
      />
      {layers.map(({ layer, y }) => (
        <g key={layer}>
          <Resin d={box(pocket.left, y, pocket.right - pocket.left, pocket.layer)} />
          <Words x={(pocket.left + pocket.right) / 2} y={y + 24} anchor="middle">
            {`pour ${layer}: ${each} mm`}
          </Words>
          {layer < layered.layers && (
            <>
              <Arrow from={{ x: pocket.right + 22, y }} to={{ x: pocket.right + 4, y }} />
              <Words x={pocket.right + 26} y={y + 5}>
                wait
              </Words>
            </>
          )}
        </g>
      ))}
      <path className={styles.seal} d={`M${pocket.left} ${pocket.top}V${bottom}H${pocket.right}V${pocket.top}`} />
      {[120, 170, 220].map((x) => (
        <Arrow key={x} from={{ x, y: pocket.top - 6 }} to={{ x, y: 18 }} heavy />
      ))}
      <Arrow from={{ x: 170, y: board.bottom + 2 }} to={{ x: 170, y: board.bottom + 20 }} />
      <Words x={236} y={30}>
        heat: much
      </Words>
      <Words x={182} y={board.bottom + 20} muted>
        little
      </Words>
    </Drawing>
  );
}
