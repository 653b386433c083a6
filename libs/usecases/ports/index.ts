export * from './session-store';
export * from './catalogue-store';
export * from './unit-store';
export * from './ticket-store';
export * from './store';
export * from './passwords';
