/** Keys of the same number with the zeros in front that a spreadsheet may have eaten; none for a number that is no bare figure. */
export function withZeros({ key, canonical }: { readonly key: string; readonly canonical: string }): readonly string[] {
  if (!/^[1-9]\d*$/.test(canonical)) return [];
  const maker = key.slice(0, key.length - canonical.length);
  return ['0', '00', '000', '0000'].map((zeros) => maker + zeros + canonical);
}
