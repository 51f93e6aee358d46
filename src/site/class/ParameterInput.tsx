import type { Parameter } from '../../method/record/index.ts';

interface Props {
  parameter: Parameter | undefined;
  label: string;
  value: string;
  /** What stands where nothing is chosen: `As for all`. */
  usual: string;
  problem: string | undefined;
  onChange: (text: string) => void;
}

/** Values that a parameter is chosen from, with what they are called; undefined where it is typed. */
function optionsOf(parameter: Parameter | undefined): readonly { value: string; label: string }[] | undefined {
  if (parameter?.kind === 'choice') return parameter.options;
  return undefined;
}

/** A parameter as a field: chosen where there is a list, else typed, and kept as typed. */
export function ParameterInput({ parameter, label, value, usual, problem, onChange }: Props) {
  const options = optionsOf(parameter);
  if (options)
    return (
      <select aria-label={label} value={value} onChange={(event) => onChange(event.target.value)}>
        <option value="">{usual}</option>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
        {value !== '' && !options.some((option) => option.value === value) && <option value={value}>{value}</option>}
      </select>
    );
  return (
    <input
      aria-label={label}
      aria-invalid={problem ? true : undefined}
      value={value}
      placeholder={usual}
      maxLength={4000}
      autoComplete="off"
      onChange={(event) => onChange(event.target.value)}
    />
  );
}
