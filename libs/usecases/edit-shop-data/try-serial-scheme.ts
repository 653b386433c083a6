import { prepareShop, readSerial, writeDays } from '../../build-date';
import type { TriedSerial, TrySerialScheme } from '../../contracts';
import { done, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { readScheme } from './read-scheme';

/** Reads a serial by one scheme alone, saved or not: which characters were read as what, and the days. Keeps nothing. */
export async function trySerialScheme(
  { store, clock }: Ports,
  { scheme: typed, serial }: TrySerialScheme,
): Promise<Outcome<TriedSerial>> {
  const catalogue = { makers: await store.catalogue.makers(), lines: await store.catalogue.lines() };
  const read = readScheme(typed, 'tried', catalogue);
  if (!read.ok) return read;
  const { scheme } = read.value;
  const shop = prepareShop({ serialSchemes: [scheme], standardEditions: [] });
  const { fit, sentence, readings } = readSerial(serial, { maker: scheme.maker }, shop, clock.today());
  return done({
    fit,
    sentence,
    readings: readings.map(({ schemeName, characters, fields, days }) => ({
      schemeName,
      characters,
      fields: fields.map((field) => ({ ...field })),
      days: writeDays(days),
    })),
  });
}
