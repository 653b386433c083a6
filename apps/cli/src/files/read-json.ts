import { Refusal } from '../refusal';
import type { Surroundings } from '../surroundings';
import { readText } from './open-input';
import { breakInJson } from './place-in-json';

/** Reads a JSON file; broken JSON is refused with the line and column at which it breaks. */
export async function readJson(
  path: string,
  around: Surroundings,
): Promise<{ name: string; text: string; value: unknown }> {
  const { name, text } = await readText(path, around);
  try {
    return { name, text, value: JSON.parse(text) as unknown };
  } catch {
    const at = breakInJson(text);
    throw new Refusal(
      at ? `${name}:${at.line}:${at.column}: this is not JSON: ${at.what}.` : `${name}: this is not JSON.`,
    );
  }
}
