import { makeModelFiles } from '../scripts/made.mjs';

/** Before any test: the JSON that the model loads is made from the tables and records as they are. */
export default function setup(): void {
  const trouble = makeModelFiles();
  if (trouble !== undefined) throw new Error(`The files that the model loads could not be made.\n${trouble}`);
}
