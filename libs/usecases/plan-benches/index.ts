export * from './bench-load';
export * from './view-bench-lists';
export * from './move-on-bench';
export * from './change-bench';
export * from './my-bench';
