export * from './look-up';
