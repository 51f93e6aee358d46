import { type PaperName, papers } from '../../model/outline/tiles.ts';

/** The choice of the paper that is printed on. */
export function PaperChoice({ paper, onChange }: { paper: PaperName; onChange(paper: PaperName): void }) {
  return (
    <label>
      Paper{' '}
      <select value={paper} onChange={({ target }) => onChange(target.value as PaperName)}>
        {Object.entries(papers).map(([name, { label }]) => (
          <option key={name} value={name}>
            {label}
          </option>
        ))}
      </select>
    </label>
  );
}
