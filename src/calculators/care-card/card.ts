import { finishPartOf, type ResinTold, resinPartOf, upkeepOf } from '../../model/finish/food-board.ts';
import type { Finish } from '../../model/finish/types.ts';
import {
  type BoardForFood,
  type CareSection,
  careSections,
  type FoodStatement,
  foodStatement,
  promisesIn,
} from '../../model/food/index.ts';
import type { Resin } from '../../model/resin/types.ts';
import type { Species } from '../../model/species/types.ts';
import { woodPartOf } from '../../model/species/wood-part.ts';

/** What the reader asked for, read. */
export interface CardInputs {
  market: BoardForFood['market'];
  food: BoardForFood['food'];
  species: Species;
  /** A wood beside the first; undefined where there is one. */
  secondSpecies: Species | undefined;
  finish: Finish | undefined;
  place: NonNullable<BoardForFood['resin']>['place'] | undefined;
  /** How much of the length is coated, mm; undefined where that was not told. */
  coatedLength: number | undefined;
  /** Undefined where none was named. */
  resin: Resin | undefined;
  /** Where the resin cures; undefined where that was not told. */
  room: ResinTold['room'];
  declared: { finish: boolean; resin: boolean };
  shop: string | undefined;
  note: string | undefined;
}

/** Lines of the maker's own that a card is printed without, and every promise in them. */
export interface HeldBack {
  lines: readonly ('name of the shop' | 'line of your own')[];
  promises: readonly string[];
}

interface Foot {
  words?: string;
  blanks: readonly string[];
}

/** A card for the buyer: words only, in the order in which they stand on it. */
export interface Card {
  /** The shop's name, or nothing, where a line is left for it; nothing too where it is held back. */
  shop: string;
  made: readonly string[];
  purpose: string;
  sections: readonly CareSection[];
  allergies: readonly string[];
  /** The maker's own note, as it was typed; nothing where it is held back. */
  note: string;
  /** Promises in the maker's own words. A line that makes one is not printed: nothing here shows that it is true. */
  heldBack: HeldBack;
  /** Small print at the foot, and what is written in by hand. */
  foot: Foot;
}

const foot: Readonly<Record<BoardForFood['market'], Foot>> = {
  us: { words: 'Not tested or certified by any authority.', blanks: ['Made on, batch'] },
  eu: { blanks: ['Maker’s address', 'Made on, batch'] },
};

/** The card and the statement on food that it is written from. */
export function cardOf(inputs: CardInputs): { card: Card; statement: FoodStatement } {
  const { market, food, species, secondSpecies, finish, place, coatedLength, declared } = inputs;
  const wood = woodPartOf(species);
  const secondWood = secondSpecies && woodPartOf(secondSpecies);
  const statement = foodStatement({
    market,
    food,
    wood,
    ...(secondWood ? { secondWood } : {}),
    bare: finish === undefined,
    ...(finish ? { finish: finishPartOf(finish, { declared: declared.finish }) } : {}),
    ...(place
      ? { resin: resinPartOf(inputs.resin, place, { coatedLength, declared: declared.resin, room: inputs.room }) }
      : {}),
  });
  const { made, purpose, allergies } = statement.label;
  const inShop = promisesIn(inputs.shop ?? '');
  const inNote = promisesIn(inputs.note ?? '');
  const card: Card = {
    shop: inShop.length > 0 ? '' : (inputs.shop ?? ''),
    made,
    purpose,
    sections: careSections({
      wood: species.name,
      upkeep: upkeepOf(finish),
      resin: place !== undefined || finish?.id === 'film-epoxy',
      washing: finish?.washable === false ? 'damp-cloth' : 'hot',
      sensitiser: [wood, secondWood].some((each) => each?.reasons.some(({ rule }) => rule === 'sensitiser')),
      ...(finish ? { finish: finish.name } : {}),
    }),
    allergies,
    note: inNote.length > 0 ? '' : (inputs.note ?? ''),
    heldBack: {
      lines: [
        ...(inShop.length > 0 ? ['name of the shop' as const] : []),
        ...(inNote.length > 0 ? ['line of your own' as const] : []),
      ],
      promises: [...new Set([...inShop, ...inNote])],
    },
    foot: foot[market],
  };
  return { card, statement };
}
