import { z } from 'zod';
import { demandOf, readShape, sayAt } from './index';

const bin = z.strictObject({ shelf: z.string().min(1).max(4), number: z.int().min(1).max(90) });
const bolt = z.object({ kind: z.literal('bolt'), mm: z.number().positive() });
const pin = z.object({ kind: z.literal('pin'), grooved: z.boolean() });
const shelf = z.object({
  code: z.string().regex(/^[A-Z]\d$/),
  bins: z.array(bin).min(1).max(2),
  holds: z.discriminatedUnion('kind', [bolt, pin]).optional(),
  side: z.enum(['left', 'right']).default('left'),
  found: z.union([z.string(), z.number()]).optional(),
  spare: z.union([bolt, pin]).optional(),
  asked: z.email().optional(),
  seen: z.iso.date().optional(),
  form: z.literal('shelf').optional(),
  step: z.number().multipleOf(5).optional(),
  warm: z.number({ error: 'must be degrees' }).optional(),
  names: z.record(z.string().max(3), z.boolean()).optional(),
  odd: z.custom<string>((value) => value === 'odd').optional(),
  three: z.array(z.int()).length(3).optional(),
  under: z.number().lt(5).optional(),
});
const good = { code: 'A1', bins: [{ shelf: 'A', number: 1 }] };

/** What is said of a shelf that is good but for these fields. */
function said(change: object): string[] {
  const read = readShape(shelf, { ...good, ...change });
  return read.ok ? [] : read.problems.map(sayAt);
}

describe('what keeps an input from being of a shape', () => {
  it.each<[string, object, string]>([
    ['a missing list', { bins: undefined }, 'bins: nothing will not do: must be given, and be a list.'],
    ['a text for a list', { bins: 'A' }, 'bins: "A" will not do: must be a list, not a text.'],
    ['null for a list', { bins: null }, 'bins: null will not do: must be a list, not null.'],
    ['a list for an object', { bins: [[]] }, 'bins.0: [] will not do: must be an object with fields, not a list.'],
    ['an empty list', { bins: [] }, 'bins: [] will not do: must have at least one entry.'],
    [
      'a missing field far in',
      { bins: [{ shelf: 'A' }] },
      'bins.0.number: nothing will not do: must be given, and be a whole number.',
    ],
    [
      'half a number',
      { bins: [{ shelf: 'A', number: 1.5 }] },
      'bins.0.number: 1.5 will not do: must be a whole number.',
    ],
    ['too small a number', { bins: [{ shelf: 'A', number: 0 }] }, 'bins.0.number: 0 will not do: must be at least 1.'],
    [
      'too large a number',
      { bins: [{ shelf: 'A', number: 91 }] },
      'bins.0.number: 91 will not do: must be at most 90.',
    ],
    [
      'a number that is none',
      { under: Number.NaN },
      'under: null will not do: must be a number, not a number that is none.',
    ],
    ['a number at its bound', { under: 5 }, 'under: 5 will not do: must be less than 5.'],
    ['an empty text', { bins: [{ shelf: '', number: 1 }] }, 'bins.0.shelf: "" will not do: must not be empty.'],
    [
      'a long text',
      { bins: [{ shelf: 'ABCDE', number: 1 }] },
      'bins.0.shelf: "ABCDE" will not do: must have at most 4 characters.',
    ],
    ['a list of another length', { three: [1] }, 'three: [1] will not do: must have exactly 3 entries.'],
    [
      'a field that is none',
      { bins: [{ shelf: 'A', number: 1, depth: 2 }] },
      'bins.0: {"shelf":"A","number":1,"depth":2} will not do: must have no field "depth"; accepted are shelf, number.',
    ],
    ['another word', { side: 'top' }, 'side: "top" will not do: must be one of "left", "right".'],
    ['another constant', { form: 'box' }, 'form: "box" will not do: must be "shelf".'],
    ['a kind that is none', { holds: { kind: 'nut' } }, 'holds.kind: "nut" will not do: must be one of "bolt", "pin".'],
    ['no kind', { holds: {} }, 'holds.kind: nothing will not do: must be one of "bolt", "pin".'],
    ['what no branch takes', { found: true }, 'found: true will not do: must be a text, or a number.'],
    [
      'what a branch nearly takes',
      { spare: { kind: 'bolt', mm: 'x' } },
      'spare: {"kind":"bolt","mm":"x"} will not do: mm must be a number, not a text.',
    ],
    ['no e-mail address', { asked: 'me' }, 'asked: "me" will not do: must be an e-mail address.'],
    ['no day', { seen: 'today' }, 'seen: "today" will not do: must be a day, such as 2026-03-01.'],
    ['another pattern', { code: 'a' }, 'code: "a" will not do: must be a text of the pattern /^[A-Z]\\d$/.'],
    ['no multiple', { step: 7 }, 'step: 7 will not do: must be a multiple of 5.'],
    ['what has words of its own', { warm: 'x' }, 'warm: "x" will not do: must be degrees.'],
    ['a key that is none', { names: { long: true } }, 'names.long: true will not do: must have no key of this sort.'],
    ['what a check without words refuses', { odd: 'even' }, 'odd: "even" will not do: must be otherwise.'],
  ])('%s', (_what, change, sentence) => expect(said(change)).toEqual([sentence]));

  it('is every problem at once, and nothing when there is none', () => {
    expect(said({ bins: undefined, side: 3 })).toHaveLength(2);
    expect(said({})).toEqual([]);
    expect(readShape(shelf, good)).toEqual({ ok: true, value: { ...good, side: 'left' } });
  });

  it('names the whole where nothing of it is of the shape', () => {
    const read = readShape(shelf, 'A1');
    expect(read.ok ? [] : read.problems.map(sayAt)).toEqual([
      '"A1" will not do: must be an object with fields, not a text.',
    ]);
  });
});

describe('what a named field must be', () => {
  it.each([
    ['must be a list', 'must be a list'],
    ['must not be empty', 'must not be empty'],
    ['a length above 0', 'must be a length above 0'],
  ])('%s is said as %s', (words, said) => {
    expect(demandOf({ path: ['planes'], value: 1, words })).toBe(said);
  });
});
