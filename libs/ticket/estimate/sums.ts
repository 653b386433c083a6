/** The tax of an estimate: its name, its rate in hundredths of a percent, and whether prices hold it already. */
export interface Tax {
  readonly name: string;
  /** 2100 is 21 %. */
  readonly basisPoints: number;
  readonly included: boolean;
}

/** No tax at all, for a shop that has set none. */
export const NO_TAX: Tax = { name: 'Tax', basisPoints: 0, included: true };

/** Minor units of the shop's one currency; `netMinor + taxMinor` is always `totalMinor`, what the owner pays. */
export interface Sums {
  readonly netMinor: number;
  readonly taxMinor: number;
  readonly totalMinor: number;
}

const WHOLE = 10_000n;

/**
 * Adds whole amounts up and works the tax out of the sum, once: the tax is the only figure that is ever rounded, half up,
 * and nothing is worked out from it but by adding and taking away. Computed in integers of any size, so that no
 * fraction is lost on the way. Throws a RangeError for an amount or a rate that is negative or no whole number.
 */
export function sumsOf(amounts: readonly number[], { basisPoints, included }: Tax): Sums {
  const sum = amounts.reduce((total, amount) => total + whole(amount), 0n);
  const rate = whole(basisPoints);
  const tax = divideHalfUp(sum * rate, included ? WHOLE + rate : WHOLE);
  const [net, total] = included ? [sum - tax, sum] : [sum, sum + tax];
  return { netMinor: Number(net), taxMinor: Number(tax), totalMinor: Number(total) };
}

/** `minutes` at so much an hour, rounded half up, once. */
export function priceOfTime(minutes: number, hourMinor: number): number {
  return Number(divideHalfUp(whole(minutes) * whole(hourMinor), 60n));
}

function whole(value: number): bigint {
  if (Number.isSafeInteger(value) && value >= 0) return BigInt(value);
  throw new RangeError(`${value} is no amount; accepted are whole minor units of 0 or more`);
}

const divideHalfUp = (value: bigint, by: bigint): bigint => (2n * value + by) / (2n * by);

/** `1250` as `12.50 EUR`, for sentences; a page writes it in its own tongue. */
export function sayMinor(minor: number, currency: string): string {
  return `${decimal(minor)} ${currency}`;
}

/** `1250` as `12.50`. */
export function decimal(minor: number): string {
  const digits = String(minor).padStart(3, '0');
  return `${digits.slice(0, -2)}.${digits.slice(-2)}`;
}
