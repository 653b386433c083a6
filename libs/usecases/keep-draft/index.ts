export * from './keep-draft';
