import { afterEach, expect, test, vi } from 'vitest';
import { fittingSize } from '../../src/calculators/view/fit.ts';

const sizes = [11, 10.5, 10, 9.5, 9, 8.5, 8];

/** A face of 100 px whose words are so many px high at each point of their type; gives how often it was laid out. */
function faceOf(height: number) {
  const face = document.createElement('div');
  vi.spyOn(HTMLElement.prototype, 'clientHeight', 'get').mockReturnValue(100);
  const laid = vi.spyOn(HTMLElement.prototype, 'offsetHeight', 'get').mockImplementation(function (this: HTMLElement) {
    return height * Number.parseFloat(this.style.getPropertyValue('--type-size'));
  });
  return { face, laid };
}

afterEach(() => vi.restoreAllMocks());

test('words that fit as they are wished are laid out once', () => {
  const { face, laid } = faceOf(5);
  expect(fittingSize(face, 'trial', sizes)).toBe(11);
  expect(laid).toHaveBeenCalledOnce();
});

test.each([
  [9.3, 10.5],
  [10.5, 9],
  [12.2, 8],
  [13, undefined],
])('words of %s px a point fit at %s pt', (height, size) => {
  expect(fittingSize(faceOf(height).face, 'trial', sizes)).toBe(size);
});
