import { tradeNumbersIn } from '../../part-number';
import type { PartRow, Tables } from '../ports/index';

/** The part whose bag carries the trade number that was typed or scanned, and how many are in that bag. */
export async function partByTradeNumber(
  { catalogue }: Pick<Tables, 'catalogue'>,
  text: string,
): Promise<{ readonly part: PartRow; readonly pack: number } | null> {
  const gtins = tradeNumbersIn(text);
  if (gtins.length === 0) return null;
  const [found] = await catalogue.partsByTradeNumbers(gtins);
  return found ?? null;
}
