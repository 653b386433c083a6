export * from './export-sheet';
