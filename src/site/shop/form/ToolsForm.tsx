import { type Choice, ChoiceField } from '../../bench/form/fields.tsx';
import type { Path } from '../../bench/form/use-record.tsx';
import { ItemList } from './ItemList.tsx';
import { Section } from './Section.tsx';
import { MoneyField, PlainField, QuantityField } from './shop-field.tsx';
import { TextList } from './TextList.tsx';

const bearings: readonly Choice[] = [
  { value: 'shank', label: 'By the shank' },
  { value: 'tip', label: 'At the tip' },
  { value: 'none', label: 'It has none' },
];

const many = ({ count = 1 }: Readonly<Record<string, unknown>>) => (count === 1 ? '' : String(count));

function Name({ path }: { path: Path }) {
  return <PlainField path={[...path, 'name']} label="What people call it" help="" />;
}

/** What stays in the shop beside machines. */
export function ToolsForm() {
  return (
    <Section part="tools" title="Moulds, clamps, scales, bits, grits">
      {() => (
        <>
          <ItemList
            list="moulds"
            kind="mould"
            title="Moulds and dams"
            words={many}
            shows={['name', 'count', 'holds', 'length', 'width', 'depth', 'price']}
            fresh={(name) => ({ name })}
          >
            {(path) => (
              <>
                <Name path={path} />
                <PlainField path={[...path, 'count']} label="How many" help="One where it is left out." whole />
                <PlainField
                  path={[...path, 'holds']}
                  label="Pieces that one takes"
                  help="One where it is left out."
                  whole
                />
                <QuantityField path={[...path, 'length']} dimension="length" />
                <QuantityField path={[...path, 'width']} dimension="length" />
                <QuantityField path={[...path, 'depth']} dimension="length" />
                <MoneyField path={[...path, 'price']} />
              </>
            )}
          </ItemList>
          <ItemList
            list="clamps"
            kind="kind of clamp"
            title="Clamps"
            words={many}
            shows={['name', 'count', 'opening', 'price']}
            fresh={(name) => ({ name, count: 1 })}
          >
            {(path) => (
              <>
                <Name path={path} />
                <PlainField path={[...path, 'count']} label="How many there are" help="" whole needed />
                <QuantityField path={[...path, 'opening']} dimension="length" />
                <MoneyField path={[...path, 'price']} />
              </>
            )}
          </ItemList>
          <ItemList
            list="scales"
            kind="scale"
            title="Scales"
            words={({ division }) => (division ? `to ${division}` : '')}
            shows={['name', 'division', 'capacity', 'price']}
            fresh={(name) => ({ name, division: '' })}
          >
            {(path) => (
              <>
                <Name path={path} />
                <QuantityField path={[...path, 'division']} dimension="mass" bare="g" needed />
                <QuantityField path={[...path, 'capacity']} dimension="mass" bare="kg" />
                <MoneyField path={[...path, 'price']} />
              </>
            )}
          </ItemList>
          <ItemList
            list="bits"
            kind="router bit"
            title="Router bits"
            words={({ diameter }) => (diameter ? String(diameter) : '')}
            shows={['name', 'count', 'diameter', 'cuttingLength', 'shank', 'bearing', 'mostTurns', 'price']}
            fresh={(name) => ({ name, diameter: '' })}
          >
            {(path) => (
              <>
                <Name path={path} />
                <QuantityField path={[...path, 'diameter']} dimension="length" needed />
                <QuantityField path={[...path, 'cuttingLength']} dimension="length" />
                <QuantityField path={[...path, 'shank']} dimension="length" />
                <ChoiceField
                  path={[...path, 'bearing']}
                  label="Where its bearing sits"
                  help=""
                  choices={bearings}
                  optional
                />
                <QuantityField path={[...path, 'mostTurns']} dimension="turns" />
                <PlainField path={[...path, 'count']} label="How many like it" help="One where it is left out." whole />
                <MoneyField path={[...path, 'price']} />
              </>
            )}
          </ItemList>
          <h4>Grits</h4>
          <TextList
            path={['grits']}
            label="Grits in the drawer"
            kind="Grit"
            help="As printed on the paper, with its grading: P120, or ANSI 220. Several with commas between them."
          />
        </>
      )}
    </Section>
  );
}
