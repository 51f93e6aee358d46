import type { ReactNode } from 'react';
import { defaultUnits, type ReaderUnits } from '../../model/quantity/units.ts';
import { bothMark, comingPart, systemOfPart } from './both-units-marks.ts';
import { SentUnitsContext } from './units.tsx';
import { systemAttribute } from './units-guess.ts';

/**
 * What runs once a part has been read, before it is painted: a reader of inches gets what the template beside it holds in place of what it differs
 * from. The same text stands behind every such part.
 */
export const turnScript = `(function (script, root) {
  var template = script.previousElementSibling, part = template.previousElementSibling;
  if (root.getAttribute('${systemAttribute}') === 'inch') {
    var marked = part.parentNode.querySelectorAll('[${bothMark}]'), others = template.content.children;
    for (var at = marked.length; at--; ) marked[at].replaceWith(others[at]);
    part.setAttribute('${systemOfPart}', 'inch');
  }
  part.removeAttribute('${comingPart}');
  template.remove();
  script.remove();
})(document.currentScript, document.documentElement)`;

const inch: ReaderUnits = { ...defaultUnits, system: 'inch' };

/**
 * A part of a page as sent in both systems of units, so that nobody has to fetch what draws it to read it in their own. The second lies in a
 * template: it is not on the page for those who see it, hear it, search, copy or print it, nor without scripts. The built page holds of it what
 * differs alone (`site/built/both-units`).
 */
export function InBothUnits({ children }: { children: ReactNode }) {
  return (
    <>
      <div {...{ [systemOfPart]: 'metric', [comingPart]: '', [bothMark]: '' }}>{children}</div>
      <template>
        <div {...{ [systemOfPart]: 'inch' }}>
          <SentUnitsContext.Provider value={inch}>{children}</SentUnitsContext.Provider>
        </div>
      </template>
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own text, the same on every page, which the policy names by its hash */}
      <script dangerouslySetInnerHTML={{ __html: turnScript }} />
    </>
  );
}

/** Whether a part as sent stands in the units of a reader. */
export function standsIn(part: Element, { system, inches }: ReaderUnits): boolean {
  const sent = part.querySelector(`[${systemOfPart}]`)?.getAttribute(systemOfPart) ?? defaultUnits.system;
  return sent === system && (system === 'metric' || inches === defaultUnits.inches);
}
