import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { viewOf } from './view-of.tsx';

const TemplateFit = await viewOf('template-fit');

const figure = (name: string) => document.querySelector(`[data-figure="${name}"]`)?.textContent ?? '';
const drawing = () => screen.getByLabelText<HTMLTextAreaElement>(/^Drawing/);
const picker = () => document.querySelector('[data-part="drawing-file"]') as HTMLInputElement;

/** Hand a file to the control as a reader's pick would. */
function pick(name: string, text: string): void {
  const file = new File([text], name, { type: 'image/svg+xml' });
  fireEvent.change(picker(), { target: { files: [file] } });
}

beforeEach(() => window.history.replaceState(null, '', '/page?shape=drawing&drawing=M0+0H300V200H0Z'));
afterEach(cleanup);

test('the server writes the worked case', () => {
  expect(renderToString(<TemplateFit />)).toContain('Stretches that tear or break out');
});

describe('a file of the reader’s own', () => {
  test('becomes path data in millimetres, and nothing else of it stays', async () => {
    render(<TemplateFit />);
    pick(
      'board.svg',
      '<svg width="4in" height="2in" viewBox="0 0 400 200"><script>alert(1)</script><rect width="400" height="200"/></svg>',
    );
    await waitFor(() => expect(drawing().value).toBe('M0 0L0 50.8L101.6 50.8L101.6 0Z'));
    expect(screen.getByText(/board\.svg: 101\.6 × 50\.8 mm, no holes\./).textContent).toContain(
      'nothing of that was run or kept',
    );
    await waitFor(() => expect(figure('boxLength')).toContain('101.6 mm'));
  });

  test('without a size asks for its width, and reads it then', async () => {
    render(<TemplateFit />);
    pick('plain.svg', '<svg viewBox="0 0 40 20"><rect width="40" height="20"/></svg>');
    const width = await screen.findByLabelText('Width of the finished outline', {
      selector: 'input[placeholder="320 mm"]:not([aria-describedby])',
    });
    expect(drawing().value).toBe('M0 0H300V200H0Z');
    await userEvent.type(width, '250');
    await userEvent.click(screen.getByRole('button', { name: 'Read it at this width' }));
    expect(figure('boxLength')).toContain('250 mm');
    expect(screen.queryByRole('button', { name: 'Read it at this width' })).toBeNull();
  });

  test('that is damaged changes nothing and says why', async () => {
    render(<TemplateFit />);
    pick('broken.svg', '<svg width="10mm"><path d="M0 0');
    await screen.findByText(/broken\.svg: .*not well-formed XML.*unchanged\./);
    expect(drawing().value).toBe('M0 0H300V200H0Z');
  });

  test('pasted as markup is read like a file', () => {
    render(<TemplateFit />);
    fireEvent.paste(drawing(), {
      clipboardData: {
        getData: () => '<svg width="90mm" height="60mm" viewBox="0 0 9 6"><rect width="9" height="6"/></svg>',
      },
    });
    expect(drawing().value).toBe('M0 0L0 60L90 60L90 0Z');
  });
});

describe('the bit', () => {
  test('moved past the hollow leaves wood there', async () => {
    window.history.replaceState(
      null,
      '',
      '/page?shape=paddle&holeDiameter=0+mm&bitDiameter=38+mm&shoulderRadius=20+mm&width=260+mm',
    );
    render(<TemplateFit />);
    expect(figure('leftStanding')).toContain('reaches every hollow');
    const bit = screen.getByLabelText(/^Bit diameter/);
    await userEvent.clear(bit);
    await userEvent.type(bit, '44');
    expect(figure('leftStanding')).toContain('In 2 places');
    expect(screen.getByText(/too wide for a hollow/)).toBeTruthy();
  });
});

describe('templates', () => {
  test('are handed over as SVG and as PDF, one or several on a blank', async () => {
    const files: { name: string; type: string }[] = [];
    let type = '';
    const url = vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
      type = (blob as Blob).type;
      return 'blob:x';
    });
    const click = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
      files.push({ name: this.download, type });
    });
    window.history.replaceState(null, '', '/page?shape=oval&sheetLength=1220+mm&sheetWidth=610+mm');
    render(<TemplateFit />);
    await userEvent.click(screen.getByLabelText('Letter'));
    await userEvent.click(screen.getByRole('button', { name: 'Template, SVG' }));
    await userEvent.click(screen.getByRole('button', { name: 'Several on a blank, SVG' }));
    await userEvent.click(screen.getByRole('button', { name: 'Template, PDF in tiles' }));
    await waitFor(() => expect(files).toHaveLength(3), { timeout: 10_000 });
    await userEvent.click(screen.getByRole('button', { name: 'Template, DXF' }));
    await waitFor(() => expect(files).toHaveLength(4), { timeout: 10_000 });
    expect(files).toEqual([
      { name: 'template.svg', type: 'image/svg+xml' },
      { name: 'nested.svg', type: 'image/svg+xml' },
      { name: 'template-letter.pdf', type: 'application/pdf' },
      { name: 'template.dxf', type: 'image/vnd.dxf' },
    ]);
    url.mockRestore();
    click.mockRestore();
  });
});
