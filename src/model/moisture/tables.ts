import type { TableColumn, TableDefinition } from '../evidence/index.ts';
import { months } from './months.ts';

function text(name: string, title: string): TableColumn {
  return { name, kind: 'text', title, required: true };
}

const optionalText = (name: string, title: string): TableColumn => ({ name, kind: 'text', title, required: false });

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
      'From memory except 27 rows, nine humidities at 40, 70 and 80 °F, which are quoted from the 2021 edition. Eq. 4-5 stands for the table and is what is computed here.',
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
      'The rows for most areas are quoted from the 2021 edition, the others are from memory. The three averages for indoor use (8, 6 and 11 %) are also quoted in a text that was read.',
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
      'The United States and Canada alone, for no such file of another country that was found allows its figures to be passed on. Other countries have the means of their stations’ monthly reports, in a table of their own.',
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
  {
    name: 'climate-reports',
    room: 'moisture',
    title: 'Outdoor air of places around the world, by month: means of the stations’ monthly reports, 2003 to 2021',
    source: 'dwd-climat',
    locator: 'Files CLIMAT_RAW_YYYYMM, 2003-03 to 2021-07',
    terms: {
      licence: 'CC-BY-4.0',
      credit:
        'Datenbasis: Deutscher Wetterdienst, eigene Bearbeitung (data of the German weather service, worked over here): DWD Climate Data Center, Monthly CLIMAT reports from stations worldwide.',
      known:
        'The terms and the wording of the credit were read where two texts quote the service’s legal notice; the notice itself was not seen.',
    },
    notes: [
      'A row is the mean of the station’s own reports, month by month, mostly 16 to 19 years of each: no normal of 30 years, and warmer than the decades before it. The columns of years say how many.',
      'Temperature: mean of the monthly means. Dew point: from the mean vapour pressure, by 6.112 exp(17.62 t/(243.12 + t)) hPa over water, below freezing too.',
      'Relative humidity: mean vapour pressure over saturation at the mean temperature, then corrected for the spread of the days and of the hours, times exp(b²(s_d² − s_m²)/2) with b = 17.62 × 243.12/(243.12 + t)², s_d = 0.354 × the median daily range and s_m the reported standard deviation of the daily means. Uncorrected it is too damp where days differ much (Helsinki’s January: 98 % instead of 93 %) and too dry where each day swings. Ten stations report no spread and stay uncorrected: rh_method says so.',
      'Left out before the mean: reports with more than 10 days missing, a mean outside its own extremes, a humidity above 103 % or below 3 %, or a value further than five robust deviations from the station’s median of the month. reports_dropped counts them.',
      'Helsinki, Jyväskylä, Jokioinen and Sodankylä report more vapour in frost than air can hold over ice, counted over water: their humidity from November to February is 4 to 8 points too high, corrected as it is.',
      'Compared with the typical-year files of 80 of the stations, figures of which may not be kept here: 0.9 °C warmer (the files rest on older decades), 1.4 points of humidity lower, 3.7 points apart from month to month on average; in moisture content 0.3 points lower, 1.1 apart, and 86 % of the months within 2 points. The column check gives each; the Checks page lists them.',
      'San Juan, Puerto Rico, has a typical year too, which is what is used: reports of the United States take the mean temperature half-way between the extremes.',
      'Pressure is that of the standard atmosphere at the station’s height.',
      'The columns also and near are ours: other names, and towns without figures of their own within about 130 km.',
    ],
    columns: [
      text('id', 'Name in an address'),
      text('place', 'Place'),
      text('country', 'Country'),
      optionalText('also', 'Other names that it is found by'),
      optionalText('near', 'Towns near it without figures of their own'),
      number('latitude', 'Latitude, north positive', 'deg'),
      number('longitude', 'Longitude, east positive', 'deg'),
      number('elevation_m', 'Elevation of the station', 'm'),
      number('pressure_Pa', 'Pressure of the standard atmosphere at that elevation', 'Pa'),
      text('station', 'Station number and name'),
      ...monthly('t_', 'Temperature', 'Cel'),
      ...monthly('rh_', 'Relative humidity', '%'),
      ...monthly('td_', 'Dew point', 'Cel'),
      text('rh_method', 'How the relative humidity was formed'),
      number('years_min', 'Years of reports in the month that has fewest', '1'),
      number('years_max', 'Years of reports in the month that has most', '1'),
      number('reports_dropped', 'Faulty reports left out', '1'),
      text('check', 'What a second source says of the same station'),
      optionalText('flags', 'Doubts'),
      seen,
    ],
  },
];
