export * from './export-rulebook-file';
export * from './import-rulebook-file';
