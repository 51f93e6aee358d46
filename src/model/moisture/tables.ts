import type { TableColumn, TableDefinition } from '../evidence/index.ts';

/** Short names of the months, as they stand in labels; the tables' column names hold them in lower case. */
export const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

function text(name: string, title: string): TableColumn {
  return { name, kind: 'text', title, required: true };
}

function number(name: string, title: string, unit: string): TableColumn {
  return { name, kind: 'number', unit, title, required: true };
}

/** Twelve number columns, for example `t_jan` to `t_dec`; an empty prefix gives `jan` to `dec`. */
function monthly(prefix: string, title: string, unit: string): TableColumn[] {
  return months.map((month) => number(`${prefix}${month.toLowerCase()}`, `${title}, ${month}`, unit));
}

const seen: TableColumn = {
  name: 'seen',
  kind: 'seen',
  title: 'How the row was read: in the work itself, in a text that repeats it, or not at all (memory)',
  required: true,
};

/** The tables of this room: what each file transcribes and what its columns hold. */
export const tables: readonly TableDefinition[] = [
  {
    name: 'emc-table-4-2',
    room: 'moisture',
    title: 'Moisture content of wood at balance with air of a temperature and humidity',
    source: 'fpl-gtr-190',
    locator: 'Table 4-2',
    notes: [
      'From memory except one row, at 21.1 °C and 40 %: a comparison, never a check. Eq. 4-5 stands for the table and is what is computed here.',
      'Nineteen of the table’s 25 temperatures: 220 to 270 °F are left out. The 2021 edition prints the table under the same number.',
      'Fitted to one species’ data midway between wetting and drying; the tenth of a percent shows a trend only (footnote, from memory).',
    ],
    columns: [
      number('temp_C', 'Temperature of the air', 'Cel'),
      number('temp_F', 'Temperature of the air, as printed', '[degF]'),
      number('rh_pct', 'Relative humidity of the air', '%'),
      number('emc_pct', 'Equilibrium moisture content', '%'),
      seen,
    ],
  },
  {
    name: 'emc-outdoor-us',
    room: 'moisture',
    title: 'Moisture content of wood outdoors, under cover, in places of the United States, by month',
    source: 'fpl-gtr-190',
    locator: 'Table 13-1',
    notes: [
      'Every row is from memory: nothing read shows one. A comparison, never a check.',
      'About 50 of the table’s places in the United States; its places elsewhere are left out.',
    ],
    columns: [
      text('state', 'State'),
      text('city', 'Place, as printed'),
      ...monthly('', 'Equilibrium moisture content', '%'),
      seen,
    ],
  },
  {
    name: 'recommended-moisture-content',
    room: 'moisture',
    title: 'Recommended moisture content of wood when it is put to use, by region of the United States',
    source: 'fpl-gtr-190',
    locator: 'Table 13-2 and Figure 13-1',
    notes: [
      'Every row is from memory. The three averages for indoor use (8, 6 and 11 %) are also quoted in a text that was read; the ranges for single pieces are not.',
    ],
    columns: [
      text('area', 'Region'),
      text('use', 'Use'),
      number('average_pct', 'Average of a lot', '%'),
      number('individual_low_pct', 'Single pieces, from', '%'),
      number('individual_high_pct', 'Single pieces, to', '%'),
      text('evidence', 'What supports the parts of the row'),
      seen,
    ],
  },
  {
    name: 'climate-monthly',
    room: 'moisture',
    title: 'Outdoor air of a typical year, by month: temperature, relative humidity and dew point',
    notes: [
      'Monthly means of one stitched typical year, not a 30-year normal: Toronto’s January is 3.4 °C warmer in CWEC 2020 than in CWEC 2016.',
      'TMY3 (United States): means of the 8,760 hourly values; the months used date from 1976 to 2005. CWEC (Canada): generally drawn from 30 years, to 2014 (2016 edition) or 2017 (2020 edition); sixteen rows are the averages that the station’s statistics file prints, with humidity to 1 %.',
      'Pressure is that of the standard atmosphere at the station’s elevation. Climate zones are by station for the United States and as computed in each statistics file elsewhere.',
      'A mean humidity hides the day’s swing. Wood takes up moisture ever more steeply in damp air, so the moisture content from monthly means lies below the mean of the hours: by 1.2 points on average, by 3.2 at worst (Juneau, November).',
      'Outdoor air alone: no rain, sun or heating.',
      'Checked: 68 stations of the United States against their statistics files (2,448 values, none different) and 4 against second copies of the hourly file. Birmingham, Flagstaff, Fairbanks and Juneau have no second copy. Humidity against dew point: mean gap 2.6 points, largest 7.6 (Denver, June).',
      'Places outside the United States and Canada are left out because no file found allows its figures to be passed on: enter your own readings there.',
    ],
    columns: [
      text('id', 'Name in an address'),
      text('place', 'Place'),
      text('country', 'Country'),
      number('latitude', 'Latitude, north positive', 'deg'),
      number('longitude', 'Longitude, east positive', 'deg'),
      number('elevation_m', 'Elevation of the station', 'm'),
      number('pressure_Pa', 'Pressure of the standard atmosphere at that elevation', 'Pa'),
      text('climate_zone', 'Climate zone of the International Energy Conservation Code'),
      text('dataset', 'Weather data set and its edition'),
      text('station', 'Station number and name'),
      ...monthly('t_', 'Temperature', 'Cel'),
      ...monthly('rh_', 'Relative humidity', '%'),
      ...monthly('td_', 'Dew point', 'Cel'),
      text('check', 'How the figures were formed and what they were compared with'),
      seen,
    ],
  },
];
