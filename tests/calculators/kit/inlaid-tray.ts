/** The case in which a method with an inlay leads to its care card, to a reader without a shop record. */
export const inlaidTray: Readonly<Record<string, string>> = {
  market: 'us',
  food: 'dry',
  species: 'white-ash',
  finish: 'mineral-oil',
  resinPlace: 'beside-food',
  resin: 'slow-casting-2-1',
  roomTemperature: '20 °C',
  nightTemperature: '17 °C',
  papers: 'none',
  shop: '',
  note: '',
};
