import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, circle, grain } from './kit/lines.ts';
import { Resin, Words } from './kit/marks.tsx';

const size = { width: 340, height: 206 };
const board = { y: 92, height: 44, width: 156 };
const [scrape, check] = [6, 178];
const channel = { from: 44, width: 68, depth: 24, proud: 6 };

/** Levelling resin flush with the wood: a scraper across it, a straightedge to tell. */
export function LevelFlush() {
  return (
    <Drawing
      title="Levelling the resin flush with the wood, in section"
      description="Section across the channel. Left: the resin stands a little proud of the face. A card scraper, wider than the channel, is drawn along the inlay, towards the viewer; a circle with a dot says so. It takes fine curls off the resin, and the last two tenths of a millimetre are left to the sander. Right: a straightedge laid across wood and resin shows no light under it and does not rock."
      {...size}
      caption="Scrape along the inlay, never across it, and leave the last two tenths to the sander. Then a straightedge across: no light, no rocking."
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
      <path
        className={styles.wood}
        d={circle(scrape + 138, board.y - 42, 8) + circle(scrape + 138, board.y - 42, 1.5)}
      />
      <Words x={scrape + 78} y={board.y - 28} anchor="middle">
        scraper
      </Words>
      <path className={styles.paper} d={box(check + 10, board.y - 25, board.width - 20, 24)} />
      <Words x={check + board.width / 2} y={board.y - 8} anchor="middle">
        straightedge
      </Words>
      <Words x={scrape + board.width / 2} y={board.y + board.height + 34} anchor="middle">
        scrape along it
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
