import { useId, useState } from 'react';
import { type PaperName, papers, sheetSvg } from '../../model/outline/index.ts';
import { readInputs } from '../kit/answer.ts';
import type { RawInputs } from '../kit/calculator.ts';
import { download } from '../view/download.ts';
import form from '../view/form.module.css';
import frame from '../view/frame.module.css';
import { Heading, type HeadingLevel } from '../view/Heading.tsx';
import { templateFitCalculator } from './calculator.ts';
import { type SheetKind, sheetOf } from './sheets.ts';

type Format = 'svg' | 'pdf' | 'dxf';

/** Files of a template to take away: one outline or the nested copies, as SVG, as DXF, or as PDF on pages of the chosen paper. */
export function Templates({ asked, headingLevel }: { asked: RawInputs; headingLevel: HeadingLevel }) {
  const name = useId();
  const [paper, setPaper] = useState<PaperName>('a4');
  const [said, setSaid] = useState('');
  const read = readInputs(templateFitCalculator, asked);
  if (!read.ok) return null;
  const inputs = read.value;
  const nested = inputs.sheetLength !== undefined && inputs.sheetWidth !== undefined;

  const give = async (what: SheetKind, as: Format) => {
    const made = sheetOf(inputs, what);
    if (!made) return;
    const { sheet, title } = made;
    if (as === 'svg') {
      download(`${what}.svg`, 'image/svg+xml', sheetSvg(sheet));
      return;
    }
    setSaid(`Making the ${as.toUpperCase()} …`);
    try {
      // The libraries behind these are large and come only now.
      if (as === 'dxf') {
        const { sheetDxf } = await import('../../model/outline/export-dxf.ts');
        download(`${what}.dxf`, 'image/vnd.dxf', sheetDxf(sheet));
        setSaid(
          'In millimetres, each kind of line on a layer of its own. The outline is the finished line: let the machine allow for its cutter.',
        );
        return;
      }
      const { sheetPdf } = await import('../../model/outline/export-pdf.ts');
      download(
        `${what}-${paper}.pdf`,
        'application/pdf',
        await sheetPdf(sheet, paper, { title, date: new Date().toISOString().slice(0, 10) }),
      );
      setSaid('Print it at 100 %, not fitted to the page, and measure both bars.');
    } catch {
      setSaid(
        'The part of this site that makes such files could not be loaded. Try again while connected, or take the SVG.',
      );
    }
  };

  const button = (what: SheetKind, as: Format, words: string) => (
    <button type="button" className={frame.button} onClick={() => void give(what, as)}>
      {words}
    </button>
  );
  return (
    <section data-part="templates">
      <Heading level={headingLevel}>Files of the template</Heading>
      <p>
        For a machine or a drawing program, or a PDF whose pages are cut for one paper. Outline, rough line, holes with
        their middles, the grain, and 100 mm to measure: along, and on the pages of a PDF up the side as well.
      </p>
      <div className={form.choices} role="radiogroup" aria-label="Paper">
        {(Object.keys(papers) as PaperName[]).map((each) => (
          <label key={each} className={form.choice}>
            <input type="radio" name={name} checked={paper === each} onChange={() => setPaper(each)} />
            <span>{papers[each].label}</span>
          </label>
        ))}
      </div>
      <div className={frame.actions}>
        {button('template', 'svg', 'Template, SVG')}
        {button('template', 'pdf', 'Template, PDF in tiles')}
        {button('template', 'dxf', 'Template, DXF')}
        {nested && button('nested', 'svg', 'Several on a blank, SVG')}
        {nested && button('nested', 'pdf', 'Several on a blank, PDF in tiles')}
        {nested && button('nested', 'dxf', 'Several on a blank, DXF')}
        <span className={frame.copied} role="status">
          {said}
        </span>
      </div>
    </section>
  );
}
