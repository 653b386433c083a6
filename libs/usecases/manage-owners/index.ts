export * from './manage-owners';
