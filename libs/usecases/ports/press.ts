import type { Labels, Paper } from '../../papers';

/** Makes what is to be printed into a file (PDF). */
export interface Press {
  print(paper: Paper): Promise<Uint8Array>;
  printLabels(labels: Labels): Promise<Uint8Array>;
}
