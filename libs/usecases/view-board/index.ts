export * from './view-board';
