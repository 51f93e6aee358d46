import {
  answer,
  type Basis,
  type Caution,
  cite,
  type EvidenceNote,
  type Outcome,
  refuse,
  weakestBasis,
} from '../evidence/index.ts';
import { amount } from '../quantity/index.ts';
import {
  type AirReading,
  type Climate,
  equilibriumMoisture,
  indoorAir,
  type MoistureReading,
  moistureThroughYear,
  outdoorAir,
  type RoomReading,
  usualRoom,
} from './index.ts';
import { sorptionCaution } from './sorption-caution.ts';

/**
 * What was told of the air where a board will live: a place and how the room is kept, two seasons with all four of their readings, or
 * own readings. Of several the readings count first, then the seasons.
 */
export interface AirGiven {
  place?: Climate | undefined;
  indoors?: 'heated' | 'unheated' | undefined;
  /** °C. */
  heatTo?: number | undefined;
  /** °C. */
  coolTo?: number | undefined;
  /** g of water per kg of dry air. */
  moistureGain?: number | undefined;
  readings?: { readings: readonly AirReading[]; note: string } | undefined;
  /** °C. */
  dryTemperature?: number | undefined;
  /** %. */
  dryHumidity?: number | undefined;
  /** °C. */
  wetTemperature?: number | undefined;
  /** %. */
  wetHumidity?: number | undefined;
}

/** The air that the board will live in, by month or season, and what it rests on. */
export interface YearOfAir {
  readings: readonly MoistureReading[];
  /** The weakest of what the readings rest on. */
  basis: Basis;
  evidence: readonly EvidenceNote[];
  cautions: readonly Caution[];
}

/** The air through the year: of a climate, of two seasons, or of own readings. */
export function yearOfAir(inputs: AirGiven): Outcome<YearOfAir> {
  const { place, readings } = inputs;
  const seasons = seasonsOf(inputs);
  if (readings) return ownReadings(readings.readings, readings.note);
  if (seasons) return ownReadings(seasons, 'A dry and a damp season as given.');
  if (place) return climateYear(place, inputs);
  return refuse(
    'place',
    'It was not said where the board will live',
    'Give a place such as duluth-mn, or own readings, or the temperature and humidity of a dry and a damp season.',
  );
}

const balance = (readings: readonly AirReading[]) => ({
  readings: moistureThroughYear(readings),
  note: cite(equilibriumMoisture, 'Turns the air of each month into the moisture content that wood comes to in it.'),
});

function ownReadings(air: readonly AirReading[], how: string): Outcome<YearOfAir> {
  const { readings, note } = balance(air);
  return answer({
    readings,
    basis: 'derived',
    evidence: [note, { text: `Own readings. ${how}`, basis: 'derived' }],
    cautions: sorptionCaution(air),
  });
}

/** A dry and a damp season, where all four of their readings were given. */
function seasonsOf({ dryTemperature, dryHumidity, wetTemperature, wetHumidity }: AirGiven): AirReading[] | undefined {
  if (dryTemperature === undefined || dryHumidity === undefined) return undefined;
  if (wetTemperature === undefined || wetHumidity === undefined) return undefined;
  return [
    { label: 'Dry season', temperature: dryTemperature, humidity: dryHumidity },
    { label: 'Damp season', temperature: wetTemperature, humidity: wetHumidity },
  ];
}

function climateYear(climate: Climate, inputs: AirGiven): Outcome<YearOfAir> {
  const room = {
    heatTo: inputs.heatTo ?? usualRoom.heatTo,
    coolTo: inputs.coolTo ?? usualRoom.coolTo,
    moistureGain: inputs.moistureGain ?? usualRoom.moistureGain,
  };
  if (room.heatTo > room.coolTo) {
    return refuse(
      'coolTo',
      `The room is cooled to ${amount(room.coolTo, 'Cel')} but heated to ${amount(room.heatTo, 'Cel')}`,
      'Cool it to no less than it is heated to.',
    );
  }
  const heated = inputs.indoors !== 'unheated';
  const air: readonly RoomReading[] = heated ? indoorAir(climate, room) : outdoorAir(climate);
  const { readings, note } = balance(air);
  const limited = air.flatMap((month) => (month.note ? [`${month.label}: ${month.note}`] : []));
  return answer({
    readings,
    basis: weakestBasis(['derived', climate.basis, ...(heated ? [indoorAir.record.basis] : [])]),
    evidence: [
      note,
      ...(heated ? [cite(indoorAir, 'The house’s air, from the air outdoors.'), measuredHomes] : []),
      ...limited.map((text): EvidenceNote => ({ text, basis: 'shop-practice' })),
      outdoorNote(climate),
    ],
    cautions: [...sorptionCaution(air), ...remarkOf(climate), averageYear(climate)],
  });
}

/** How far the rule of thumb for a house lies from homes in which somebody measured; worked out in the model's comparisons. */
const measuredHomes: EvidenceNote = {
  text: 'Measured homes stand near this rule of thumb, not on it: in 16 Boston homes the moisture indoors moved by 0.69 of what it moved outdoors, where the rule gives 0.79. Real summers indoors are somewhat drier, and boards swing somewhat less. Measure yours.',
  basis: 'published',
  citation: { source: 'nguyen-2014', locator: 'abstract', seen: 'source-text' },
};

function outdoorNote({ place, dataset, basis, citation }: Climate): EvidenceNote {
  const credit =
    dataset === 'CLIMAT'
      ? ' Mean of the station’s monthly reports, 2003 to 2021. Datenbasis: Deutscher Wetterdienst, eigene Bearbeitung.'
      : '';
  return { text: `Outdoor air of ${place}, by month.${credit}`, basis, citation };
}

/** What is known to be amiss with the figures of this place. */
function remarkOf({ place, remark, basis, citation }: Climate): Caution[] {
  return remark ? [{ id: 'figures-of-place', level: 'note', text: `${place}: ${remark}`, basis, citation }] : [];
}

function averageYear({ dataset, citation }: Climate): Caution {
  const what =
    dataset === 'CLIMAT'
      ? 'The climate is the mean of many years'
      : 'The climate is one typical year stitched from many';
  return {
    id: 'average-year',
    level: 'note',
    text: `${what}, by monthly means: a hard winter or a wet summer goes further than this, and so does a room with a stove or a humidifier. The band is for the wood alone.`,
    basis: 'published',
    citation: { source: citation.source },
  };
}
