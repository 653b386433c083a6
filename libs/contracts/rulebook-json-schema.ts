import { z } from 'zod';
import { PartialDateSchema, WrittenDaySchema } from '../build-date';
import {
  dayText,
  daySpanFile,
  fitRuleFile,
  instantText,
  knownSpanFile,
  partKeyText,
  serialSpanFile,
} from '../fit-rules';
import { rulebookDocument, makerEntry, lineEntry, partEntry, positionEntry, sourceEntry } from './rulebook-file';

const DAY = { pattern: '^\\d{4}-\\d{2}-\\d{2}$', format: 'date' };

/** What the checks of the code know and a schema of JSON can say only in part. */
const NOTES = new Map<z.core.$ZodType, Record<string, unknown>>([
  [dayText, { ...DAY, description: 'A civil day that exists, YYYY-MM-DD.' }],
  [WrittenDaySchema, { ...DAY, description: 'A civil day that exists, YYYY-MM-DD.' }],
  [instantText, { description: 'An instant in UTC, such as 2026-03-01T09:30:00.000Z.' }],
  [
    PartialDateSchema,
    {
      pattern: '^\\d{4}(-\\d{2}|-W\\d{2}|-\\d{2}-\\d{2})?$',
      description: 'A date as precise as it is known: 2017, 2017-03, 2017-W09 (ISO week) or 2017-03-14.',
    },
  ],
  [
    partKeyText,
    {
      pattern: '^[A-Z0-9]{1,12}/[^\\s]{1,40}$',
      description: 'MAKER/NUMBER: the maker code, a slash, and the number in canonical form.',
    },
  ],
  [daySpanFile, { description: 'Days from `from` up to, not including, `to`; null is an open side.' }],
  [knownSpanFile, { description: 'Instants from `from` up to, not including, `to`; null is an open side.' }],
  [
    serialSpanFile,
    { description: 'Serial keys of one scheme from `from` up to, not including, `to`; null is an open side.' },
  ],
  [
    fitRuleFile,
    {
      description:
        'One version of one fit rule. `models` empty: every model. `options`: all must hold. `replaces`: keys of rules it takes the place of.',
    },
  ],
  [
    fitRuleFile.shape.built,
    { description: 'The build dates it speaks of: days from `from` up to, not including, `to`; null is an open side.' },
  ],
  [sourceEntry, { description: 'A paper that says something. `effective` null: in force from its issue day.' }],
  [makerEntry, { description: 'A maker and how it writes part numbers; `noise` are characters that do not matter.' }],
  [lineEntry, { description: 'A product line. `producedUntil` is the first day on which it was no longer made.' }],
  [positionEntry, { description: 'A place in the machine that takes a part; `places` names each place.' }],
  [partEntry, { description: 'A part of the catalogue; `number` as the maker prints it, `key` as rules name it.' }],
]);

/**
 * The published JSON Schema (draft 2020-12) of a rulebook document as a person may write it. Checks between entries
 * (codes named twice, sources that are missing) are beyond it: `check-rules` makes them.
 */
export function rulebookJsonSchema(): Record<string, unknown> {
  const schema = z.toJSONSchema(rulebookDocument, {
    io: 'input',
    target: 'draft-2020-12',
    override: ({ zodSchema, jsonSchema }) => Object.assign(jsonSchema, NOTES.get(zodSchema)),
  });
  return {
    $schema: schema.$schema,
    title: 'Revright rulebook, version 1',
    description: 'All that a shop holds true about parts, in one file. See docs/formats.md.',
    ...schema,
  };
}
