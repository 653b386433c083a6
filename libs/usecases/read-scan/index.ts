export * from './read-scan';
export * from './view-visit';
