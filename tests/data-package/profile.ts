import { readFileSync } from 'node:fs';
import Ajv from 'ajv';
import addFormats from 'ajv-formats';

// The profile is JSON Schema draft 7; where it comes from stands at its head.
// The published profile leaves out some types, which strictness would complain of.
const ajv = new Ajv({ allErrors: true, allowUnionTypes: true, strictTypes: false });
addFormats(ajv);
const profile = ajv.compile(JSON.parse(readFileSync(new URL('data-package-2.0.json', import.meta.url), 'utf8')));

/** What is wrong with a descriptor by the profile of data packages, a line for each fault. */
export function descriptorFaults(descriptor: unknown): string[] {
  profile(descriptor);
  return (profile.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}
