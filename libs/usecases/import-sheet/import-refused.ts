/** Rolls an import back for a reason that a person is told. */
export class ImportRefused extends Error {}
