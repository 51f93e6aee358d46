import { trustedName } from '../../calculators/view/trusted.ts';

/**
 * The headers that a host should send with the site, made from what its pages hold. All files for hosts are written from `headersFor`,
 * so that no value stands in two places.
 */

/** The hashes of what stands in the pages themselves, as a policy writes them: `sha256-…`. */
export interface InlineHashes {
  scripts: readonly string[];
  styles: readonly string[];
}

/** Under this name the bundler makes the addresses of its own files. */
export const bundlerPolicy = 'kerf-and-cure#bundler';

/** The only makers of addresses from which a script may be loaded. */
const trustedPolicies = [bundlerPolicy, trustedName];

/**
 * The Content-Security-Policy.
 *
 * @param hashes of the scripts and styles that the pages hold
 * @param way `header` also forbids strangers to frame the site, which a policy within a page cannot say
 */
export function policyFor({ scripts, styles }: InlineHashes, way: 'header' | 'page'): string {
  const own = (hashes: readonly string[]) => ["'self'", ...hashes.map((hash) => `'${hash}'`)].join(' ');
  return [
    "default-src 'none'",
    `script-src ${own(scripts)}`,
    `style-src ${own(styles)}`,
    "img-src 'self' data:",
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    ...(way === 'header' ? ["frame-ancestors 'self'"] : []),
    "require-trusted-types-for 'script'",
    `trusted-types ${trustedPolicies.join(' ')}`,
  ].join('; ');
}

/** What a browser offers that the site asks for nowhere. */
const neverAsked = [
  'accelerometer',
  'autoplay',
  'browsing-topics',
  'camera',
  'display-capture',
  'encrypted-media',
  'fullscreen',
  'gamepad',
  'geolocation',
  'gyroscope',
  'hid',
  'idle-detection',
  'local-fonts',
  'magnetometer',
  'microphone',
  'midi',
  'payment',
  'picture-in-picture',
  'publickey-credentials-get',
  'screen-wake-lock',
  'serial',
  'storage-access',
  'usb',
  'xr-spatial-tracking',
] as const;

/** The headers of every answer of the site, name to value. */
export function headersFor(hashes: InlineHashes): Readonly<Record<string, string>> {
  return {
    'Content-Security-Policy': policyFor(hashes, 'header'),
    'Referrer-Policy': 'no-referrer',
    'Permissions-Policy': neverAsked.map((name) => `${name}=()`).join(', '),
    'X-Content-Type-Options': 'nosniff',
    'Cross-Origin-Opener-Policy': 'same-origin',
  };
}

type Headers = Readonly<Record<string, string>>;

const lines = (headers: Headers, write: (name: string, value: string) => string) =>
  Object.entries(headers)
    .map(([name, value]) => {
      if (/["\\\n]/.test(value)) throw new Error(`${name}: a value that no server's file can hold: ${value}`);
      return write(name, value);
    })
    .join('\n');

/** `_headers`, which several hosts of static sites read from the folder itself. */
export const headersFile = (headers: Headers): string =>
  `/*\n${lines(headers, (name, value) => `  ${name}: ${value}`)}\n`;

/** Lines for a `server` or `location` of nginx: `include` the file. */
export const nginxHeaders = (headers: Headers): string =>
  `${lines(headers, (name, value) => `add_header ${name} "${value}" always;`)}\n`;

/** Lines for Apache's configuration, or its `.htaccess`: they need mod_headers. */
export const apacheHeaders = (headers: Headers): string =>
  `${lines(headers, (name, value) => `Header always set ${name} "${value}"`)}\n`;

/** The files for hosts, by the path in the built folder at which each is written. */
export function headerFiles(headers: Headers): Readonly<Record<string, string>> {
  return {
    _headers: headersFile(headers),
    'hosting/nginx-headers.conf': nginxHeaders(headers),
    'hosting/apache-headers.conf': apacheHeaders(headers),
  };
}
