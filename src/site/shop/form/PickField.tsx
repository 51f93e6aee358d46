import type { ReactNode } from 'react';
import type { PickOption } from '../../../calculators/kit/fields.ts';
import { Combobox } from '../../../calculators/view/Combobox.tsx';
import { Row, useTyped } from '../../bench/form/fields.tsx';
import { type Path, useField } from '../../bench/form/use-record.tsx';

interface PickFieldProps {
  path: Path;
  label: string;
  help: string;
  options: readonly PickOption[];
  optional?: boolean;
  /** What is wrong with it beside what the record's own reading finds. */
  children?: ReactNode;
}

/** Somebody who looks for a name in a list pauses longer than one who writes, ms. */
const pause = 2500;

/** One of many, found by typing a part of its name. What is picked goes into the text at once; what is typed, when the field is left. */
export function PickField({ path, label, help, options, optional = false, children }: PickFieldProps) {
  const field = useField(path);
  const plain = typeof field.value === 'string' ? field.value : '';
  const write = (fresh: string) => field.set(path, fresh === '' && optional ? undefined : fresh);
  const typed = useTyped(plain, write, pause);
  return (
    <Row id={field.id} label={optional ? label : `${label} (needed)`} help={help} problems={field.problems}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: hears of the field inside being left. */}
      <div onBlur={typed.onBlur}>
        <Combobox
          id={field.id}
          value={typed.value}
          options={options}
          invalid={field.problems.length > 0}
          describedBy={field.described['aria-describedby']}
          onChange={(value) => {
            typed.onChange({ target: { value } });
            if (value !== plain && options.some((option) => option.value === value)) write(value);
          }}
        />
      </div>
      {children}
    </Row>
  );
}
