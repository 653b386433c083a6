/** The package that serves as reference for check digits brings no types. */
declare module 'vin-validator' {
  export function validate(vin: string): boolean;
}
