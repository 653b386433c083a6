export * from './recompute-units';
