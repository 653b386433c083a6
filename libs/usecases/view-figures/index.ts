export * from './view-figures';
