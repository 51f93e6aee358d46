import { useId, useState } from 'react';
import type { SheetWords } from '../../model/outline/export-pdf.ts';
import {
  axisBox,
  nestCopies,
  nestedSheet,
  type PaperName,
  papers,
  type Sheet,
  sheetSvg,
  templateSheet,
} from '../../model/outline/index.ts';
import { formatNumber } from '../../model/quantity/index.ts';
import { readInputs } from '../kit/answer.ts';
import type { RawInputs } from '../kit/calculator.ts';
import { outlineOfFields } from '../kit/outline-fields.ts';
import { download } from '../view/download.ts';
import form from '../view/form.module.css';
import frame from '../view/frame.module.css';
import { Heading, type HeadingLevel } from '../view/Heading.tsx';
import { templateFitCalculator } from './calculator.ts';
import { type Inputs, usual } from './inputs.ts';

type Format = 'svg' | 'pdf' | 'dxf';

/** Templates at true size to take away: one outline or the nested copies, as SVG, as DXF, or as PDF on pages of the chosen paper. */
export function Templates({ asked, headingLevel }: { asked: RawInputs; headingLevel: HeadingLevel }) {
  const name = useId();
  const [paper, setPaper] = useState<PaperName>('a4');
  const [said, setSaid] = useState('');
  const read = readInputs(templateFitCalculator, asked);
  if (!read.ok) return null;
  const inputs = read.value;
  const nested = inputs.sheetLength !== undefined && inputs.sheetWidth !== undefined;

  const give = async (what: 'template' | 'nested', as: Format) => {
    const sheet = what === 'template' ? oneSheet(inputs) : manySheet(inputs);
    if (!sheet) return;
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
      download(`${what}-${paper}.pdf`, 'application/pdf', await sheetPdf(sheet, paper, sheetWords(inputs)));
      setSaid('Print it at 100 %, not fitted to the page, and measure both bars.');
    } catch {
      setSaid(
        'The part of this site that makes such files could not be loaded. Try again while connected, or take the SVG.',
      );
    }
  };

  const button = (what: 'template' | 'nested', as: Format, words: string) => (
    <button type="button" className={frame.button} onClick={() => void give(what, as)}>
      {words}
    </button>
  );
  return (
    <section data-part="templates">
      <Heading level={headingLevel}>Templates at true size</Heading>
      <p>
        Outline, rough line, holes with their middles, the grain, and 100 mm to measure: along, and on the pages of a
        PDF up the side as well.
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

/** Name, sizes and day, so that a template found in a drawer can be told from another. */
function sheetWords(inputs: Inputs): SheetWords {
  const outline = outlineOfFields(inputs);
  const date = new Date().toISOString().slice(0, 10);
  if (!outline.ok) return { date };
  const { left, right, bottom, top } = axisBox(outline.value.shape.outer);
  const size = (mm: number) => formatNumber(mm, 4);
  return {
    title: `${inputs.shape.replaceAll('-', ' ')} ${size(right - left)} × ${size(top - bottom)} mm, face up`,
    date,
  };
}

function oneSheet(inputs: Inputs): Sheet | undefined {
  const outline = outlineOfFields(inputs);
  if (!outline.ok) return undefined;
  return templateSheet(outline.value.shape, {
    clearance: inputs.clearance ?? usual.clearance,
    grainDegrees: inputs.grain ?? usual.grain,
  });
}

function manySheet(inputs: Inputs): Sheet | undefined {
  const outline = outlineOfFields(inputs);
  const { sheetLength, sheetWidth } = inputs;
  if (!outline.ok || sheetLength === undefined || sheetWidth === undefined) return undefined;
  const nest = nestCopies(outline.value.shape, {
    grainDegrees: inputs.grain ?? usual.grain,
    sheetLength,
    sheetWidth,
    spacing: inputs.spacing ?? usual.spacing,
    ...(inputs.copies === undefined ? {} : { copies: inputs.copies }),
  });
  return nestedSheet(nest, { length: sheetLength, width: sheetWidth }, inputs.clearance ?? usual.clearance);
}
