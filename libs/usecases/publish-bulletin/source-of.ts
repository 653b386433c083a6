import { sourceFromFile, type Source, type SourceFile } from '../../fit-rules';

/** The paper behind a bulletin, as the fit rules know it. */
export function sourceOf(bulletin: SourceFile): Source {
  const { key, kind, publisher, number, title, issued, effective, received } = bulletin;
  return sourceFromFile({ key, kind, publisher, number, title, issued, effective, received });
}
