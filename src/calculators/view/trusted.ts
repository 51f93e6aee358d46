/**
 * The one place, beside the bundler, where an address is called good enough to load a script from. Under the site's policy a browser takes
 * such an address from nowhere else (Trusted Types), so that a text which somebody brought in can never become one.
 */

interface Policy {
  createScriptURL(address: string): string;
}

interface PolicyFactory {
  createPolicy(name: string, rules: Policy): Policy;
}

/** Its name in the policy of the site: `src/site/built/headers.ts` lists it. */
export const trustedName = 'kerf-and-cure';

/** @throws Error for an address of another place */
function ofThisSite(address: string): string {
  const whole = new URL(address, location.href);
  if (whole.origin !== location.origin)
    throw new Error(`A script may come from this site alone, not from ${whole.origin}.`);
  return whole.href;
}

let policy: Policy | undefined;

/**
 * The address of a script of this site, in the form in which a browser with Trusted Types takes it.
 *
 * @throws Error for an address of another place
 */
export function trustedScript(address: string | URL): string {
  const factory = (globalThis as { trustedTypes?: PolicyFactory }).trustedTypes;
  policy ??= factory?.createPolicy(trustedName, { createScriptURL: ofThisSite }) ?? { createScriptURL: ofThisSite };
  return policy.createScriptURL(String(address));
}
