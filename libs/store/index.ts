export * from './embedded';
export * from './migrate';
export { openStore, type OpenStore, type StoreOptions } from './open-store';
export { hashPassword, passwords, PasswordsBusyError } from './people/passwords';
export * from './seed';
export { seedIfEmpty } from './seed';
