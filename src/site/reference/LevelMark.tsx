import type { RuleLevel } from '../../method/rules/rule.ts';
import styles from './method.module.css';

/** The levels of a rule in words. */
export const levelWords: Readonly<Record<RuleLevel, string>> = { stop: 'Stop', warn: 'Warning', note: 'Note' };

/** Each has an outline of its own: colour is never needed. */
const outlines: Readonly<Record<RuleLevel, string>> = {
  stop: 'M5 1h6l4 4v6l-4 4H5l-4-4V5zM4.5 8h7',
  warn: 'M8 1.5 15 14.5H1zM8 6v4M8 11.8v.6',
  note: 'M8 1.2a6.8 6.8 0 1 0 .01 0zM8 7v5M8 4v.6',
};

/** The level of a rule: an outline and its word. */
export function LevelMark({ level }: { level: RuleLevel }) {
  return (
    <strong className={styles.level} data-level={level}>
      <svg viewBox="0 0 16 16" aria-hidden="true" focusable="false">
        <path d={outlines[level]} />
      </svg>{' '}
      {levelWords[level]}
    </strong>
  );
}
