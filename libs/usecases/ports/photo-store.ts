import type { ChangePhoto, PhotoView } from '../../contracts';

/** A picture as it is kept: JPEG, the right way up, without a word about where or by what it was taken. */
export interface KeptPicture {
  readonly full: Uint8Array;
  readonly thumb: Uint8Array;
  readonly width: number;
  readonly height: number;
}

/** Why a file that was sent is not taken. */
export type PictureProblem = 'no-picture' | 'two-files-in-one' | 'too-many-points' | 'broken';

/** Reads a picture that somebody sent and makes it anew from its points alone. */
export interface Pictures {
  remake(sent: Uint8Array): Promise<{ ok: true; picture: KeptPicture } | { ok: false; problem: PictureProblem }>;
  /** A kept picture as JPEG, no larger than paper can show it; its sides in points. */
  forPrint(kept: Uint8Array): Promise<{ jpeg: Uint8Array; width: number; height: number }>;
}

export interface NewPhotoRow extends KeptPicture {
  readonly name: string;
  readonly stage: PhotoView['stage'];
  readonly positionId: number | null;
  readonly place: number | null;
  readonly caption: string;
  readonly sha256: string;
  /** Of the file as it was sent. */
  readonly sentSha256: string;
}

/** Photos of tickets. Where the pictures lie is the store's affair. */
export interface PhotoStore {
  /** Those not removed, oldest first. */
  ofTicket(ticketId: number): Promise<readonly PhotoView[]>;
  insert(ticketId: number, photo: NewPhotoRow, personId: number): Promise<number>;
  /** False when the ticket has no such photo on that version. */
  change(ticketId: number, id: number, version: number, patch: ChangePhoto): Promise<boolean>;
  /** Throws the pictures away and keeps that there was one; false when the ticket has no such photo on that version. */
  remove(ticketId: number, id: number, version: number, why: string, personId: number): Promise<boolean>;
  /** A picture with the location of its ticket. */
  file(name: string, size: 'full' | 'thumb'): Promise<{ data: Uint8Array; locationId: number } | null>;
}
