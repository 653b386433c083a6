export * from './number-rules';
export * from './read-part-number';
export * from './scan/check-digit';
export * from './scan/read-gs1';
export * from './supersession';
export * from './supersession-graph';
export * from './supersession-findings';
export * from './choose-part';
