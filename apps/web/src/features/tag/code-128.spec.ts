import {
  BarcodeFormat,
  BinaryBitmap,
  Code128Reader,
  GlobalHistogramBinarizer,
  RGBLuminanceSource,
} from '@zxing/library';
import { raw, render } from 'bwip-js/node';
import { assert, integer, oneof, property, stringMatching } from 'fast-check';
import { unitTagCode } from '../../../../../libs/part-number';
import { code128Bars, DOT_MM, dotsPerModule, QUIET_MODULES, type Bars, type Encoder } from './code-128';

const encode: Encoder = (options, drawing) => render(options, drawing);

/** The code as the printer burns it: whole dots, black on white. */
function burnt(code: Bars, dots: number): BinaryBitmap {
  const width = code.modules * dots;
  const line = new Uint8ClampedArray(width).fill(255);
  for (const { at, width: wide } of code.bars) line.fill(0, at * dots, (at + wide) * dots);
  const lines = 24;
  const all = new Uint8ClampedArray(width * lines);
  for (let row = 0; row < lines; row++) all.set(line, row * width);
  return new BinaryBitmap(new GlobalHistogramBinarizer(new RGBLuminanceSource(all, width, lines)));
}

describe('the code on the tag', () => {
  it('is read back by a decoder that knows nothing of how it was made', () => {
    const numbers = oneof(
      stringMatching(/^[A-Z]{0,2}\d{2}-\d{4,6}$/),
      integer({ min: 1, max: 999_999_999 }).map(unitTagCode),
    );
    assert(
      property(numbers, (number) => {
        const code = code128Bars(encode, number);
        const result = new Code128Reader().decode(burnt(code, dotsPerModule(code, 94)));
        expect(result.getText()).toBe(number);
        expect(result.getBarcodeFormat()).toBe(BarcodeFormat.CODE_128);
      }),
      { numRuns: 60 },
    );
  });

  it('has the bars and blanks of the encoder, with ten blank modules on either side', () => {
    const { modules, bars } = code128Bars(encode, '26-0661');
    const [symbol] = raw({ bcid: 'code128', text: '26-0661' });
    const widths = symbol && 'sbs' in symbol ? symbol.sbs : [];
    const blanks = bars.map(({ at, width }, index) => (bars[index + 1]?.at ?? modules) - at - width);
    expect(bars[0]!.at).toBe(QUIET_MODULES);
    expect(blanks.at(-1)).toBe(QUIET_MODULES);
    expect(bars.flatMap(({ width }, index) => [width, blanks[index]]).slice(0, -1)).toEqual(widths);
  });

  it('takes whole dots: four to a module where they fit, fewer for a long number, never less than two', () => {
    const code = (modules: number): Bars => ({ modules, bars: [] });
    expect(dotsPerModule(code(121), 94)).toBe(4);
    expect(dotsPerModule(code(200), 94)).toBe(3);
    expect(dotsPerModule(code(250), 250 * 3 * DOT_MM - 0.01)).toBe(2);
    expect(dotsPerModule(code(1_000), 94)).toBe(2);
  });
});
