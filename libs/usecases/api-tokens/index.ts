export * from './find-token';
export * from './manage-tokens';
