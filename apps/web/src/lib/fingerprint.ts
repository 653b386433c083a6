/**
 * 53 bits of a text in base 36 (cyrb53, public domain): two texts that were ever typed hardly share one. It keeps no secret; it
 * is worked out at once, also where the page did not come over https and the browser therefore offers no SHA-256.
 */
export function fingerprint(text: string): string {
  let [high, low] = [0xdeadbeef, 0x41c6ce57];
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    high = Math.imul(high ^ code, 2_654_435_761);
    low = Math.imul(low ^ code, 1_597_334_677);
  }
  high = Math.imul(high ^ (high >>> 16), 2_246_822_507) ^ Math.imul(low ^ (low >>> 13), 3_266_489_909);
  low = Math.imul(low ^ (low >>> 16), 2_246_822_507) ^ Math.imul(high ^ (high >>> 13), 3_266_489_909);
  return (4_294_967_296 * (2_097_151 & low) + (high >>> 0)).toString(36);
}
