export * from './money-settings';
export * from './estimate-as-it-stands';
export * from './write-estimate';
export * from './bookkeeping';
