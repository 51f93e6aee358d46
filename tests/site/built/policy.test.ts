import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { apacheHeaders, headerFiles, headersFor, nginxHeaders, policyFor } from '../../../src/site/built/headers.ts';
import { withoutMark } from '../../../src/site/built/page-data.ts';
import { hashOf, heldBy, heldByAll, policy, withPolicy } from '../../../src/site/built/policy.ts';

const units = 'localStorage.getItem("kerf-units")';
const known = `<script>${units}</script>`;

describe('what a page holds', () => {
  test('scripts and styles are hashed byte by byte between their tags', () => {
    const { scripts, styles } = heldBy(`<head>${known}<style> i { top: 0 }\n</style></head>`);
    expect([...scripts.values()]).toEqual([`sha256-${createHash('sha256').update(units).digest('base64')}`]);
    expect([...styles]).toEqual([hashOf(' i { top: 0 }\n')]);
  });

  // The worked example of CSP Level 3, 8.1: the hash of `alert('Hello, world.');`.
  test('the hash is the one of the standard’s own example', () => {
    expect(hashOf("alert('Hello, world.');")).toBe('sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng=');
  });

  test.each([
    ['a script that nobody knows', '<script>alert(1)</script>', '“alert(1)”'],
    ['one that names two', '<script>"kerf-units docusaurus-theme"</script>', 'nobody knows'],
    ['a second one of a known name', `${known}<script>"kerf-units"; alert(1)</script>`, 'two scripts'],
    ['a script in an attribute', '<img src="/a.png" onerror="alert(1)">', '<img onerror>'],
    ['one in a drawing', '<svg onload=alert(1)>', '<svg onload>'],
    ['an address that is a script', '<a href="java\nscript:alert(1)">', '<a href>: an address that is a script'],
    ['one written with an entity', '<a href="&#106;avascript:alert(1)">', 'an address that is a script'],
    ['one in a form', '<form action="JavaScript:alert(1)">', '<form action>'],
    [
      'a script of another place',
      '<script src="https://stranger.example/a.js"></script>',
      '<script src>: asks another',
    ],
    ['one without a scheme', '<script src=//stranger.example/a.js></script>', '“//stranger.example/a.js”'],
    ['a script within an address', '<script src="data:text/javascript,alert(1)"></script>', '<script src>'],
    ['a sheet of another place', '<link rel=stylesheet href="https://stranger.example/a.css">', '<link href>'],
    ['a picture among several', '<img srcset="/a.png 1x, https://stranger.example/b.png 2x">', '<img srcset>'],
    ['a page within an attribute', '<iframe srcdoc="&lt;script>"></iframe>', 'srcdoc'],
    ['an object', '<object data="/a.svg"></object>', 'a <object>'],
    ['another base', '<base href="/b/">', 'a <base>'],
    ['a page that sends elsewhere', '<meta http-equiv=refresh content="0;url=/a">', 'a <meta>'],
    ['a style in markup', '<i style="top:0">', '<i style>'],
    ['a script of a strange type', '<script type="text/x-template">a</script>', '“text/x-template”'],
    ['data that cannot be read', '<script type="application/ld+json">{"a</script>', 'JSON'],
  ])('%s stops the build', (_, html, words) => {
    expect(() => heldBy(html)).toThrow(words);
  });

  test.each([
    '<a href="https://standards.example/part-1">a source</a>',
    '<link rel=canonical href=https://kerf-and-cure.example/woods>',
    '<img src="data:image/png;base64,AA==">',
    '<script src=/assets/js/main.js defer></script>',
    '<script type="application/ld+json">{"a": "javascript:"}</script>',
    '<textarea><script>alert(1)</script></textarea>',
    '<p title="onclick=alert(1)">on…</p>',
  ])('%s is let through', (html) => {
    expect(() => heldBy(html)).not.toThrow();
  });

  test('the same script is the same on every page', () => {
    expect(
      heldByAll([
        ['a.html', known],
        ['b.html', known],
      ]).scripts,
    ).toEqual([hashOf(units)]);
    expect(() =>
      heldByAll([
        ['a.html', known],
        ['b.html', known.replace('")', '") ')],
      ]),
    ).toThrow('b.html: its script');
  });
});

describe('the policy', () => {
  const hashes = { scripts: ['sha256-A='], styles: ['sha256-B='] };
  const read = (text: string) =>
    Object.fromEntries(text.split('; ').map((one) => [one.split(' ')[0], one.split(' ').slice(1)]));

  test('lets nothing run but files of the site and what was hashed', () => {
    const rules = read(policyFor(hashes, 'page'));
    expect(rules['script-src']).toEqual(["'self'", "'sha256-A='"]);
    expect(rules['style-src']).toEqual(["'self'", "'sha256-B='"]);
    expect(policyFor(hashes, 'header')).not.toMatch(/unsafe|\*|https?:|blob:|strict-dynamic/);
    for (const name of ['default-src', 'object-src', 'base-uri']) expect(rules[name]).toEqual(["'none'"]);
  });

  test('who may frame the site can be said in a header alone', () => {
    expect(policyFor(hashes, 'page')).not.toContain('frame-ancestors');
    expect(read(policyFor(hashes, 'header'))['frame-ancestors']).toEqual(["'self'"]);
  });

  test('stands in front of all that a browser loads, after the encoding, and once', () => {
    const html = '<!doctype html><html><head><meta charset=UTF-8><script src=/a.js></script></head>';
    const once = withPolicy(html, 'x');
    expect(once).toContain('<head><meta charset=UTF-8><meta http-equiv="Content-Security-Policy" content="x"><script');
    expect(withPolicy(once, 'y')).toBe(withPolicy(html, 'y'));
    expect(() => withPolicy('<p>', 'x')).toThrow('no <head>');
  });

  test('every file for hosts says every header with its value', () => {
    const headers = headersFor(hashes);
    for (const text of Object.values(headerFiles(headers)))
      for (const [name, value] of Object.entries(headers)) {
        expect(text).toContain(name);
        expect(text).toContain(value);
      }
    expect(nginxHeaders({ A: 'b' })).toBe('add_header A "b" always;\n');
    expect(apacheHeaders({ A: 'b' })).toBe('Header always set A "b"\n');
    expect(() => nginxHeaders({ A: 'b"; evil' })).toThrow('no server');
  });
});

test('the step writes pages and files, and run again changes nothing', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'built-'));
  try {
    writeFileSync(join(folder, 'a.html'), `<html><head><meta charset=utf-8>${known}</head><body></body></html>`);
    await policy.run(folder);
    const first = readFileSync(join(folder, 'a.html'), 'utf8');
    expect(first).toContain(hashOf(units));
    expect(readFileSync(join(folder, '_headers'), 'utf8')).toContain(hashOf(units));
    await policy.run(folder);
    expect(readFileSync(join(folder, 'a.html'), 'utf8')).toBe(first);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test('data for programs stays when the page comes to life, and nothing else loses its mark', () => {
  expect(withoutMark('<script data-rh=true type=application/ld+json>{}</script><meta data-rh=true>')).toBe(
    '<script type=application/ld+json>{}</script><meta data-rh=true>',
  );
  expect(withoutMark('<script data-rh="true" src=/a.js>')).toBe('<script data-rh="true" src=/a.js>');
});
