import { useEffect, useRef, useState } from 'react';
import { type ClassRecord, classText, readClass } from '../../method/class/record.ts';
import type { WeeklyRule } from '../../method/class/weekly.ts';
import { type Channel, channelOf } from '../kept/channel.ts';
import { allThings, dropThings, type KeptThing, newId, oneThing, putThings } from '../kept/database.ts';

/** A class of this browser, with what is typed of a weekly rule and has made no sessions yet. */
export interface KeptClass {
  id: string;
  record: ClassRecord;
  weekly?: WeeklyRule;
}

/** Something kept as a class that cannot be read as one: shown as it is, never dropped unasked. */
export interface DamagedClass {
  id: string;
  content: string;
  problems: readonly string[];
}

/** Where tabs tell each other of classes. */
const channelName = 'kerf-classes';

interface Told {
  kept?: string;
  dropped?: string;
}

const isWeekly = (value: unknown): value is WeeklyRule =>
  typeof value === 'object' &&
  value !== null &&
  ['first', 'times', 'weeks'].every((name) => typeof (value as Record<string, unknown>)[name] === 'string');

/** A kept thing as a class, or all that can be saved of it. */
function readKept({ id, text, weekly, ...rest }: KeptThing): KeptClass | DamagedClass {
  if (typeof text !== 'string')
    return { id, content: JSON.stringify({ id, text, ...rest }, null, 2), problems: ['It holds no text of a class.'] };
  const read = readClass(text, 'class.json');
  if (read.ok) return { id, record: read.record, ...(isWeekly(weekly) ? { weekly } : {}) };
  return {
    id,
    content: text,
    problems: read.problems.map(({ line, field, message }) => `Line ${line}${field ? `, ${field}` : ''}: ${message}`),
  };
}

const isDamaged = (one: KeptClass | DamagedClass): one is DamagedClass => 'content' in one;

/** The classes of this browser: what is typed is stored as it is typed, and other tabs are told. */
export function useClasses(
  first: (shop: string | undefined) => Promise<KeptClass | undefined>,
  standing: () => Promise<string | undefined>,
) {
  const [classes, setClasses] = useState<readonly KeptClass[]>();
  const [damaged, setDamaged] = useState<readonly DamagedClass[]>([]);
  const [open, setOpen] = useState<string>();
  const [keeps, setKeeps] = useState(true);
  const channel = useRef<Channel>(undefined);
  const asked = useRef({ first, standing });

  const place = (kept: KeptClass) =>
    setClasses((now = []) =>
      now.some(({ id }) => id === kept.id) ? now.map((each) => (each.id === kept.id ? kept : each)) : [...now, kept],
    );
  const forget = (id: string) => {
    setClasses((now = []) => now.filter((each) => each.id !== id));
    setDamaged((now) => now.filter((each) => each.id !== id));
  };

  // What was still being stored when the page was left is told too: its own channel is closed by then.
  const tell = (told: Told) => {
    const its = channel.current ?? channelOf(channelName);
    its?.postMessage(told);
    if (its !== channel.current) its?.close();
  };
  const put = async (kept: KeptClass) => {
    place(kept);
    const { id, record, weekly } = kept;
    const thing = { id, changed: Date.now(), text: classText(record), ...(weekly ? { weekly } : {}) };
    const end = await putThings('classes', [thing]);
    setKeeps(end === 'kept');
    if (end === 'kept') tell({ kept: id });
  };
  const drop = async (id: string) => {
    forget(id);
    await dropThings('classes', [id]);
    tell({ dropped: id });
  };

  // biome-ignore lint/correctness/useExhaustiveDependencies: asked once, as the page opens
  useEffect(() => {
    let gone = false;
    const heard = channelOf(channelName);
    channel.current = heard;
    if (heard)
      heard.onmessage = async ({ data }: MessageEvent<Told | null>) => {
        if (data?.dropped) forget(data.dropped);
        const thing = data?.kept ? await oneThing('classes', data.kept) : undefined;
        const read = thing ? readKept(thing) : undefined;
        if (!gone && read && !isDamaged(read)) place(read);
      };
    const begin = async () => {
      const shop = await asked.current.standing();
      return { shop, begun: await asked.current.first(shop) };
    };
    void Promise.all([allThings('classes'), begin()]).then(([things, { shop, begun }]) => {
      if (gone) return;
      setKeeps(things !== null);
      const sorted = [...(things ?? [])].sort((one, other) => other.changed - one.changed).map(readKept);
      setDamaged(sorted.filter(isDamaged));
      const whole = sorted.filter((one): one is KeptClass => !isDamaged(one));
      const shown = whole.length > 0 || begun ? whole : [freshClass({}, shop)];
      setClasses(shown);
      setOpen(shown[0]?.id);
      if (begun) {
        setOpen(begun.id);
        void put(begun);
      }
    });
    return () => {
      gone = true;
      heard?.close();
      channel.current = undefined;
    };
  }, []);

  return { classes, damaged, open, setOpen, keeps, put, drop };
}

/**
 * A class that nobody has changed yet.
 *
 * @param text the shop record that stands (YAML), of which the class keeps a copy
 */
export function freshClass({ common, ...part }: Partial<ClassRecord> = {}, text?: string): KeptClass {
  const shop = text === undefined ? {} : { shop: { file: 'shop record', text: text.slice(0, 131_072) } };
  return {
    id: newId(),
    record: {
      class: 1,
      name: 'New class',
      method: { id: 'class-of-twelve' },
      common: { set: {}, sessions: '', ...shop, ...common },
      people: { teachers: 1, helpers: 0 },
      places: [],
      ...part,
    },
  };
}
