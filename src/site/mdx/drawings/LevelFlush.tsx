import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Arrow, Resin, Words } from './kit/marks.tsx';

const size = { width: 340, height: 206 };
const board = { y: 92, height: 44, width: 156 };
const [scrape, check] = [6, 178];
const channel = { from: 44, width: 68, depth: 24, proud: 6 };

/** Levelling resin flush with the wood: a scraper across it, a straightedge to tell. */
export function LevelFlush() {
  return (
    <Drawing
      title="Levelling the resin flush with the wood, in section"
      description="Left: the resin stands a little proud of the face. A card scraper, leaning forward and wide enough to lie on the wood at both sides, takes fine shavings off the resin and stops when it touches wood. Right: a straightedge laid across wood and resin shows no light under it and does not rock; tilted on its edge it would show a hump or a hollow."
      {...size}
      caption="The scraper rides on the wood at both sides and takes only what is proud. Then a straightedge across: no light, no rocking."
    >
      {[scrape, check].map((x) => (
        <g key={x}>
          <path
            className={styles.grain}
            d={grain(x, board.y + channel.depth, board.width, board.height - channel.depth, 2)}
          />
          <path
            className={styles.wood}
            d={`M${x} ${board.y}h${channel.from}v${channel.depth}h${channel.width}v${-channel.depth}h${board.width - channel.from - channel.width}v${board.height}h${-board.width}Z`}
          />
        </g>
      ))}
      <Resin
        d={`M${scrape + channel.from} ${board.y}q8 ${-channel.proud} 20 ${-channel.proud}h${channel.width - 40}q12 0 20 ${channel.proud}v${channel.depth}h${-channel.width}Z`}
      />
      <Resin d={box(check + channel.from, board.y, channel.width, channel.depth)} />
      <path className={styles.paper} d={`M${scrape + 26} ${board.y - 5}l14 -50h92l-14 50Z`} />
      <Arrow from={{ x: scrape + 136, y: board.y - 34 }} to={{ x: scrape + 160, y: board.y - 34 }} heavy />
      <Words x={scrape + 78} y={board.y - 28} anchor="middle">
        scraper
      </Words>
      <path className={styles.paper} d={box(check + 10, board.y - 25, board.width - 20, 24)} />
      <Words x={check + board.width / 2} y={board.y - 8} anchor="middle">
        straightedge
      </Words>
      <Words x={scrape + board.width / 2} y={board.y + board.height + 34} anchor="middle">
        proud: scrape
      </Words>
      <Words x={check + board.width / 2} y={board.y + board.height + 34} anchor="middle">
        no light: flush
      </Words>
      <Words x={size.width / 2} y={size.height - 6} anchor="middle" muted>
        after the full cure
      </Words>
    </Drawing>
  );
}
