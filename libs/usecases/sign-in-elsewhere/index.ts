export * from './let-in';
export * from './set-elsewhere';
