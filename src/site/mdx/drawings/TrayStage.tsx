import { tray } from '../tray.ts';
import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, rounded } from './kit/lines.ts';
import { Resin, Words } from './kit/marks.tsx';

/** What is done at each stage of the tray, in order, by the names of the sections of the page that follows it. */
const stages = {
  buy: {
    words: 'rough board, tray marked',
    tells: 'A rough board with the outline of the tray drawn on it, clear of a knot.',
  },
  settle: {
    words: 'stickers, air, a rest',
    tells: 'The board on stickers, drawn as bars across it, with air on both faces.',
  },
  blanks: { words: 'blank, planed flat', tells: 'The blank, sawn to size and planed flat and even on both faces.' },
  channel: {
    words: 'channel routed and sealed',
    tells: 'The blank with the channel routed along the grain, round at both ends, and sealed.',
  },
  pour: { words: 'channel poured', tells: 'The blank with the resin in its channel, a hair proud of the face.' },
  shape: {
    words: 'outline trimmed, wood only',
    tells: 'The outline trimmed to the template; what was outside of it is gone.',
  },
  sand: {
    words: 'levelled and sanded',
    tells: 'The tray with its resin levelled flush with the wood and the face sanded along the grain.',
  },
  oil: { words: 'oiled', tells: 'The whole tray oiled, faces and edges.' },
  'hand-over': {
    words: 'signed and handed over',
    tells: 'The underside of the tray with its mark: name, year, number of the batch.',
  },
} as const;

export type TrayStageName = keyof typeof stages;
/** The stages in order, by the names with which a page asks for them. */
export const trayStages = Object.keys(stages) as TrayStageName[];

const size = { width: 340, height: 186 };
/** Units of the drawing to a millimetre. */
const scale = 0.58;
const middle = { x: size.width / 2, y: 84 };
const centred = (length: number, width: number) =>
  [middle.x - (length * scale) / 2, middle.y - (width * scale) / 2, length * scale, width * scale] as const;

const blank = box(...centred(tray.blank.length, tray.blank.width));
const outline = rounded(...centred(tray.length, tray.width), tray.cornerRadius * scale);
const channel = rounded(...centred(tray.channel.length, tray.channel.width), (tray.channel.width / 2) * scale - 0.01);
const [left, top, width, height] = centred(tray.blank.length, tray.blank.width);
/** Stickers across the board, near both ends and between. */
const stickers = [0.06, 0.5, 0.94].map((part) => box(left + part * width - 5, top - 8, 10, height + 16)).join('');
const label = box(middle.x - 36, middle.y - 28, 72, 56);

interface TrayStageProps {
  /** Which of them; left out, the last. */
  stage?: TrayStageName;
}

/** The tray at one of its stages, the part at work tinted and in a heavy line. */
export function TrayStage({ stage = 'hand-over' }: TrayStageProps) {
  const at = trayStages.indexOf(stage);
  const { words, tells } = stages[stage];
  const [from, inset] = at < trayStages.indexOf('shape') ? [blank, 0] : [outline, 40];
  const hasChannel = at >= trayStages.indexOf('channel') && stage !== 'hand-over';
  const isFilled = at >= trayStages.indexOf('pour') && stage !== 'hand-over';
  return (
    <Drawing
      title={`The tray, stage ${at + 1} of ${trayStages.length}: ${words}`}
      description={`${tells} The part at work is tinted and drawn in a heavy line. The tray is ${tray.length} by ${tray.width} by ${tray.thickness} mm, its channel ${tray.channel.length} by ${tray.channel.width} by ${tray.channel.depth} mm.`}
      {...size}
      caption="The heavy line is what is worked on at this stage."
    >
      {(stage === 'buy' || stage === 'blanks') && <path className={styles.tint} d={blank} />}
      {stage === 'shape' && <path className={styles.tint} fillRule="evenodd" d={blank + outline} />}
      {(stage === 'oil' || stage === 'sand') && <path className={styles.tint} d={outline} />}
      <path
        className={styles.grain}
        d={[0.14, 0.28, 0.42, 0.58, 0.72, 0.86]
          .map((part) => `M${left + inset} ${top + part * height}h${width - 2 * inset}`)
          .join('')}
      />
      {stage === 'buy' && (
        <path className={styles.grain} d={`M${left + 9} ${top + 40}q14 -12 28 0t-28 0m6 0q8 -6 16 0t-16 0`} />
      )}
      <path className={stage === 'buy' || stage === 'blanks' ? styles.work : styles.wood} d={from} />
      {at < trayStages.indexOf('shape') && stage !== 'blanks' && <path className={styles.line} d={outline} />}
      {(stage === 'shape' || stage === 'oil') && <path className={styles.work} d={outline} />}
      {stage === 'shape' && <path className={styles.line} d={blank} />}
      {stage === 'settle' && <path className={styles.work} d={stickers} />}
      {hasChannel && !isFilled && <path className={styles.tint} d={channel} />}
      {isFilled && <Resin d={channel} />}
      {(stage === 'channel' || stage === 'pour' || stage === 'sand') && <path className={styles.work} d={channel} />}
      {stage === 'hand-over' && (
        <>
          <path className={styles.tint} d={label} />
          <path className={styles.work} d={label} />
          <path
            className={styles.dimension}
            d={`M${middle.x - 28} ${middle.y - 16}h44m-44 10h56m-56 10h50m-50 10h30`}
          />
        </>
      )}
      <Words x={middle.x} y={size.height - 8} anchor="middle">
        {`${at + 1} of ${trayStages.length}: ${words}`}
      </Words>
    </Drawing>
  );
}
