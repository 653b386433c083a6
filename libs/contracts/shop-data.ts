import { z } from 'zod';
import { SerialSchemeSchema, StandardEditionSchema } from '../build-date';
import { recheckView } from './bulletin';
import { instantText, rowId } from './common';

/** One serial scheme of the shop, with the names of who wrote it and last changed it. */
export const serialSchemeRow = z.object({
  id: rowId,
  version: z.int(),
  makerName: z.string(),
  scheme: SerialSchemeSchema,
  updatedAt: instantText,
  updatedBy: z.string().nullable(),
  /** units whose serial is read by it now */
  units: z.int(),
});
/** GET /api/serial-schemes: by maker, then by the time they were used. */
export const serialSchemeRows = z.array(serialSchemeRow);
export type SerialSchemeRow = z.infer<typeof serialSchemeRow>;

/**
 * POST /api/serial-schemes and PUT /api/serial-schemes/:id (If-Match). `scheme` is a SerialScheme of the build-date
 * library without its id: the shop gives it one, and it stays, for fit rules name it.
 */
export const saveSerialScheme = z.object({ scheme: z.looseObject({ maker: z.string(), name: z.string() }) });
export type SaveSerialScheme = z.infer<typeof saveSerialScheme>;

/** What saving answers: the scheme, and the recheck that works the units' build days out again. */
export const savedSerialScheme = z.object({ version: z.int(), saved: serialSchemeRow, recheck: recheckView });
export type SavedSerialScheme = z.infer<typeof savedSerialScheme>;

/** POST /api/serial-schemes/try: reads a serial by a scheme that need not be saved, and keeps nothing. */
export const trySerialScheme = saveSerialScheme.extend({ serial: z.string().trim().min(1).max(40) });
export type TrySerialScheme = z.infer<typeof trySerialScheme>;

const span = z.object({ from: z.string(), to: z.string() });

/** Which characters were read as what, and the build days (closed-open) that go with it. */
export const triedSerial = z.object({
  fit: z.enum(['none', 'one', 'several']),
  sentence: z.string(),
  readings: z.array(
    z.object({
      schemeName: z.string(),
      characters: z.string(),
      fields: z.array(z.object({ kind: z.string(), at: z.int(), text: z.string(), meaning: z.string() })),
      days: z.array(span),
    }),
  ),
});
export type TriedSerial = z.infer<typeof triedSerial>;

export const standardEditionRow = z.object({
  id: rowId,
  version: z.int(),
  edition: StandardEditionSchema,
  updatedAt: instantText,
  updatedBy: z.string().nullable(),
});
/** GET /api/standard-editions: by standard, newest edition first. */
export const standardEditionRows = z.array(standardEditionRow);
export type StandardEditionRow = z.infer<typeof standardEditionRow>;

/** POST /api/standard-editions and PUT /api/standard-editions/:id (If-Match): a StandardEdition of the library. */
export const saveStandardEdition = z.object({
  edition: z.looseObject({ standard: z.string(), edition: z.string(), source: z.string() }),
});
export type SaveStandardEdition = z.infer<typeof saveStandardEdition>;

export const savedStandardEdition = z.object({ version: z.int(), saved: standardEditionRow, recheck: recheckView });
export type SavedStandardEdition = z.infer<typeof savedStandardEdition>;
