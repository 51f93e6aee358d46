import { useEffect, useState } from 'react';
import type { ShopDefaults } from '../../calculators/kit/read-shop-defaults.ts';
import { changeShop } from '../../calculators/view/kept-shop.ts';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import type { ShopText } from './reading.ts';

/** Whoever types has not done yet: the text is read when it has stood for so long, ms. It is kept with every key. */
const settled = 250;

/** What a text came to when it was last read, and which text that was. */
export interface Reading {
  text: string;
  reading: ShopText;
}

/** Read the record that is kept once it has stood for a moment, and keep what calculators begin with of it. */
export function useReading(text: string | undefined, units: ReaderUnits): Reading | undefined {
  const [read, setRead] = useState<Reading>();
  useEffect(() => {
    if (text === undefined) return setRead(undefined);
    let gone = false;
    const timer = setTimeout(async () => {
      const { readShopText } = await import('./reading.ts');
      if (gone) return;
      const reading = readShopText(text, units);
      setRead({ text, reading });
      if (reading.ok) keepDefaults(text, reading.defaults);
    }, settled);
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [text, units]);
  return read;
}

/** Keep what calculators begin with, unless the text has changed since it was read. */
function keepDefaults(text: string, defaults: ShopDefaults): void {
  changeShop((now) => {
    const { lasting: _, ...before } = now;
    return now.text === text && JSON.stringify(now.defaults) !== JSON.stringify(defaults)
      ? { ...before, defaults }
      : before;
  });
}
