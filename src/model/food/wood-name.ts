/** First words of names of woods that keep their capital within a sentence: places, peoples, persons. */
const proper: ReadonlySet<string> = new Set([
  'African',
  'Alaska',
  'American',
  'Arizona',
  'Atlantic',
  'Australian',
  'Brazilian',
  'California',
  'Caribbean',
  'Douglas',
  'East',
  'Engelmann',
  'English',
  'European',
  'Gambel',
  'Honduras',
  'Indian',
  'London',
  'Malayan',
  'Mexican',
  'New',
  'Norway',
  'Oregon',
  'Osage',
  'Pacific',
  'Para',
  'Parana',
  'Port',
  'Queensland',
  'Santa',
  'Scots',
  'Sitka',
  'Spanish',
  'Sydney',
  'Tasmanian',
  'Virginia',
]);

/** The name of a wood within a sentence: `sugar maple`, but `American beech` and `Port-Orford-cedar`. */
export function woodInSentence(name: string): string {
  const [first = ''] = name.split(/[\s-]/);
  return proper.has(first) ? name : `${name.charAt(0).toLowerCase()}${name.slice(1)}`;
}
