export type PictureKind = 'jpeg' | 'png' | 'webp';

const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/**
 * The kind of picture by its first bytes, whatever it is called; null for anything else, an SVG among it.
 * Signatures: ISO/IEC 10918-1 (SOI and a marker), PNG specification section 5.2, WebP container specification.
 */
export function kindOf(bytes: Uint8Array): PictureKind | null {
  const starts = (signature: readonly number[], at = 0) => signature.every((byte, index) => bytes[at + index] === byte);
  if (starts([0xff, 0xd8, 0xff])) return 'jpeg';
  if (starts(PNG)) return 'png';
  if (starts([...Buffer.from('RIFF')]) && starts([...Buffer.from('WEBP')], 8)) return 'webp';
  return null;
}
