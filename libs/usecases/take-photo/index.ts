export * from './take-photo';
export * from './change-photo';
