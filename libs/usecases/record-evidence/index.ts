export * from './add-evidence';
export * from './set-aside-evidence';
