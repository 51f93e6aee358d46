import type { ShopDefaults } from '../../calculators/kit/read-shop-defaults.ts';
import frame from '../../calculators/view/frame.module.css';
import { changeShop } from '../../calculators/view/kept-shop.ts';
import { useLinks } from '../../calculators/view/links.tsx';
import { useUnits } from '../../calculators/view/units.tsx';
import { amount, inReaderUnits } from '../../model/quantity/index.ts';
import { readAnyQuantity } from '../../model/quantity/read-any.ts';
import { usePlaceName } from './use-place-name.ts';

/** What each calculator begins with of the record, and the way to set it aside. */
export function Begins({
  defaults,
  aside,
  titles,
}: {
  defaults: ShopDefaults | undefined;
  aside: boolean;
  titles: Readonly<Record<string, string>>;
}) {
  const { Link } = useLinks();
  const units = useUnits();
  const place = usePlaceName(Object.values(defaults?.inputs ?? {}).find((texts) => texts['place'])?.['place']);
  if (!defaults) return null;
  const entries = Object.entries(defaults.inputs);
  return (
    <section aria-labelledby="shop-begins" data-part="shop-begins">
      <h2 id="shop-begins">What calculators begin with</h2>
      {entries.length === 0 ? (
        <p>Nothing yet: the record says nothing of air, scale, grits, resin or machines.</p>
      ) : (
        <>
          <p>
            {aside
              ? 'Set aside: calculators and methods begin without it.'
              : 'A link that you open, and whatever you type, wins over it.'}{' '}
            <button
              type="button"
              className={frame.button}
              onClick={() => changeShop((before) => ({ ...before, aside: !aside }))}
            >
              {aside ? 'Take the record' : 'Set the record aside'}
            </button>
          </p>
          <ul>
            {entries.map(([id, texts]) => (
              <li key={id}>
                <Link to={`/calculators/${id}`}>{titles[id] ?? id}</Link>:{' '}
                {Object.entries(texts)
                  .map((each) => inReaderUnits(words(each, place), units))
                  .join(', ')}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

const names: Readonly<Record<string, string>> = {
  place: 'place',
  readings: 'own readings',
  shopTemperature: 'shop at',
  shopHumidity: 'humidity',
  temperature: 'room at',
  relativeHumidity: 'humidity',
  dayTemperature: 'by day',
  nightTemperature: 'by night',
  roomTemperature: 'room at',
  scaleDivision: 'scale to',
  drawer: 'grits',
  resin: 'your data sheet',
  shop: 'name of the shop',
};

/** A temperature, so that it follows the reader's units; any other text as it is. */
function inMarks(text: string): string {
  const read = readAnyQuantity(text);
  const [first] = read.ok ? read.value : [];
  return first?.unit === 'Cel' ? amount(first.value, 'Cel', 3) : text;
}

/** An input as it stands in a list: long ones by their name alone. */
function words([name, text]: readonly [string, string], place: string | undefined): string {
  const said = names[name] ?? name.replace(/([A-Z])/g, ' $1').toLowerCase();
  return name === 'resin' || name === 'readings'
    ? said
    : `${said} ${name === 'place' ? (place ?? text) : inMarks(text)}`;
}
