import { Drawing } from './Drawing.tsx';
import styles from './drawings.module.css';

/** From mixing to use on one line, with the place of the recoat window. Not to scale: what comes after what. */
export function CureLine() {
  return (
    <Drawing
      title="From mixing to use on one line"
      description="A line from mixing to use, not to scale: liquid, thickening, gel; from gel the recoat window, in which the next layer bonds by itself; then hard, when a new layer needs sanding first; and cured, when it may be sanded for good, oiled and used."
      width={420}
      height={150}
      caption="From gel until the window closes a new layer bonds by itself. After that, only to what sandpaper has roughened."
    >
      <rect className={styles.resin} x="165" y="52" width="85" height="36" />
      <path className={styles.axis} d="M10 88H404m-8 -6l8 6l-8 6" />
      {[10, 95, 165, 250, 340].map((x) => (
        <path key={x} className={styles.axis} d={`M${x} 52V94`} />
      ))}
      <g>
        <text x="52" y="76" textAnchor="middle">
          liquid
        </text>
        <text x="130" y="76" textAnchor="middle">
          thicker
        </text>
        <text x="207" y="76" textAnchor="middle">
          window
        </text>
        <text x="295" y="76" textAnchor="middle">
          hardening
        </text>
        <text x="376" y="76" textAnchor="middle">
          cured
        </text>
      </g>
      <g className={styles.marks}>
        <text x="10" y="112">
          mix
        </text>
        <text x="95" y="112" textAnchor="middle">
          work ends
        </text>
        <text x="165" y="112" textAnchor="middle">
          gel
        </text>
        <text x="250" y="112" textAnchor="middle">
          closes
        </text>
        <text x="340" y="112" textAnchor="middle">
          by the sheet
        </text>
      </g>
      <g>
        <text x="52" y="34" textAnchor="middle">
          pour
        </text>
        <text x="207" y="34" textAnchor="middle">
          pour again
        </text>
        <text x="295" y="18" textAnchor="middle">
          wait, sand,
        </text>
        <text x="295" y="36" textAnchor="middle">
          then pour
        </text>
        <text x="376" y="34" textAnchor="middle">
          use
        </text>
      </g>
      <text x="210" y="142" textAnchor="middle" className={styles.marks}>
        not to scale
      </text>
    </Drawing>
  );
}
