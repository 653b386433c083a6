export * from './add-published-editions';
export * from './list-shop-data';
export * from './save-serial-scheme';
export * from './save-standard-edition';
export * from './try-serial-scheme';
