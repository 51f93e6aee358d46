import type { Log, ReportingDescriptor, Result } from 'sarif';

/** Something to report of a file: of a method, a record or a table. */
export interface SarifFinding {
  /** Path from the folder that the report is about. */
  file: string;
  /** All four count from 1, columns in UTF-16 units; the end is the place just behind it. */
  line: number;
  column: number;
  endLine?: number;
  endColumn?: number;
  /** Id of a rule. */
  rule: string;
  level: 'stop' | 'warn' | 'note';
  /** What was found and the way out, in the units of whoever reads the report. */
  message: string;
  /** The reason why it is allowed here, where an exception of the method says so. */
  excepted?: string;
}

/** A rule as a report describes it. */
export interface SarifRule {
  id: string;
  level: SarifFinding['level'];
  /** What it asks, as a heading. */
  title: string;
  /** What it looks at, sentences. */
  looksAt: string;
  /** Why it is a rule. */
  why?: string;
}

const levels = { stop: 'error', warn: 'warning', note: 'note' } as const satisfies Record<
  SarifFinding['level'],
  Result.level
>;

/**
 * A text as SARIF writes it: braces would be a placeholder (section 3.11.5) and are doubled, and the brackets of what would be a link (3.11.6)
 * stand behind a backslash.
 */
function plain(text: string): string {
  return text.replace(/[{}]/g, '$&$&').replace(/\[([^\][]*)\](?=\()/g, '\\[$1\\]');
}

/** The address of a file: a relative URI reference (RFC 3986), slashes whatever the machine writes. */
function uriOf(file: string): string {
  // Half a character has no address.
  const path = file.replaceAll('\\', '/').replace(/[\ud800-\udfff]/gu, '\ufffd');
  const uri = encodeURI(path).replace(/[?#]/g, encodeURIComponent);
  // A colon in the first part would be read as the end of a scheme (RFC 3986, section 4.2).
  return /^[^/]*:/.test(uri) ? `./${uri}` : uri;
}

function descriptor({ id, level, title, looksAt, why }: SarifRule): ReportingDescriptor {
  return {
    id,
    shortDescription: { text: plain(title) },
    fullDescription: { text: plain(looksAt) },
    ...(why === undefined ? {} : { help: { text: plain(why) } }),
    defaultConfiguration: { level: levels[level] },
  };
}

/**
 * Findings as a log of the Static Analysis Results Interchange Format (SARIF) Version 2.1.0, an OASIS standard that editors and services read.
 *
 * @param findings in any order; kept as they are
 * @param rules those that were asked, whether or not they found anything; a finding of another has no description
 * @param tool name and version of the program that reports
 */
export function sarifLog(
  findings: readonly SarifFinding[],
  rules: readonly SarifRule[],
  tool: { name: string; version: string },
): Log {
  const places = new Map(rules.map(({ id }, at) => [id, at]));
  const results = findings.map((finding): Result => {
    const { file, line, column, endLine, endColumn, rule, level, message, excepted } = finding;
    const ruleIndex = places.get(rule);
    return {
      ruleId: rule,
      ...(ruleIndex === undefined ? {} : { ruleIndex }),
      level: levels[level],
      message: { text: plain(message) },
      locations: [
        {
          physicalLocation: {
            artifactLocation: { uri: uriOf(file) },
            region: {
              startLine: line,
              startColumn: column,
              ...(endLine === undefined ? {} : { endLine }),
              ...(endColumn === undefined ? {} : { endColumn }),
            },
          },
        },
      ],
      ...(excepted === undefined
        ? {}
        : { suppressions: [{ kind: 'inSource' as const, status: 'accepted' as const, justification: excepted }] }),
    };
  });
  return {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: tool.name, version: tool.version, rules: rules.map(descriptor) } },
        columnKind: 'utf16CodeUnits',
        results,
      },
    ],
  };
}
