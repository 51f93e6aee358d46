import type { ClassRecord } from '../../method/class/record.ts';
import type { ClassProblem } from '../../method/class/types.ts';
import type { MethodRecord, Parameter } from '../../method/record/index.ts';
import styles from './class.module.css';
import { ParameterInput } from './ParameterInput.tsx';

interface Props {
  record: MethodRecord;
  common: ClassRecord['common'];
  problems: readonly ClassProblem[];
  say: (text: string) => string;
  onChange: (common: ClassRecord['common']) => void;
}

const wordsOf = (value: unknown) =>
  typeof value === 'object' && value !== null ? 'as the method has it' : String(value).replaceAll('-', ' ');

/** The fields of a parameter: its own, or one for each measure of an outline. */
function fieldsOf(name: string, parameter: Parameter): { key: string; label: string; usual: string }[] {
  const { label } = parameter;
  if (parameter.kind === 'choice') {
    const usual = parameter.options.find(({ value }) => value === parameter.default)?.label ?? parameter.default;
    return [{ key: name, label, usual: `As the method: ${usual}` }];
  }
  if (parameter.kind === 'outline')
    return Object.entries(parameter.default).map(([measure, value]) => ({
      key: `${name}.${measure}`,
      label: `${label}: ${measure.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`)}`,
      usual: wordsOf(value),
    }));
  return [{ key: name, label, usual: 'default' in parameter ? wordsOf(parameter.default) : '' }];
}

/** The parameters of a method that are the same for everybody: an empty field leaves what the method, or the shop record, says. */
export function CommonFields({ record, common, problems, say, onChange }: Props) {
  const set = (key: string, text: string) => {
    const { [key]: _old, ...rest } = common.set;
    onChange({ ...common, set: text === '' ? rest : { ...rest, [key]: text } });
  };
  return (
    <details className={styles.fold} data-part="class-common" open={Object.keys(common.set).length > 0 || undefined}>
      <summary>The same for everybody: wood, sizes, colour, air</summary>
      <p className="small quiet">An empty field leaves what the method says; a place may differ in the list below.</p>
      <div className={styles.fields}>
        {Object.entries(record.parameters).flatMap(([name, parameter]) =>
          fieldsOf(name, parameter).map(({ key, label, usual }) => {
            const problem = problems.find(({ where, field }) => where === 'common' && field === key);
            return (
              <div key={key} className={styles.field}>
                <span aria-hidden="true">{label}</span>
                <ParameterInput
                  parameter={parameter}
                  label={`${label}, for all`}
                  value={common.set[key] ?? ''}
                  usual={usual}
                  problem={problem?.message}
                  onChange={(text) => set(key, text)}
                />
                {problem && <span className={styles.wrong}>{say(problem.message)}</span>}
              </div>
            );
          }),
        )}
      </div>
    </details>
  );
}
