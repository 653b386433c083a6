/** Why a file as a whole is not taken, in one sentence for the person who brought it. */
export class SheetRefused extends Error {
  constructor(
    detail: string,
    readonly tooLarge = false,
  ) {
    super(detail);
  }
}
