/** Characters that part one thing from another in a cell, written as % and their code where they belong to a text. */
export function escapeMarks(text: string, marks: RegExp): string {
  return text
    .replace(/%/g, '%25')
    .replace(marks, (mark) => `%${mark.charCodeAt(0).toString(16).padStart(2, '0').toUpperCase()}`);
}

/** The text as it was before {@link escapeMarks}; a % that begins no code stays. */
export function unescapeMarks(text: string): string {
  return text.replace(/%([0-9A-F]{2})/gi, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
}
