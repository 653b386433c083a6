import { z } from 'zod';
import { instantText, line, reason, rowId, version } from './common';

/** What a photo may weigh when it is sent, in bytes, and how many points it may have. */
export const MOST_PHOTO_BYTES = 12 * 1024 * 1024;
export const MOST_PHOTO_PIXELS = 64_000_000;

export const photoStage = z.enum(['intake', 'inspection', 'handover']);

/** POST /api/tickets/:id/photos as multipart/form-data: these fields, then one file named `photo`. */
export const newPhoto = z.object({
  stage: photoStage,
  /** where on the unit; left out, it shows the whole unit */
  position: z.string().max(60).optional(),
  place: z.coerce.number().int().positive().max(500).optional(),
  caption: line(200).default(''),
});
export type NewPhoto = z.infer<typeof newPhoto>;

/** A photo as the page shows it; its pictures are under /api/photos/:name and /api/photos/:name/thumb. */
export const photoView = z.object({
  id: rowId,
  name: z.string(),
  stage: photoStage,
  position: z.string().nullable(),
  place: z.int().nullable(),
  caption: z.string(),
  width: z.int(),
  height: z.int(),
  /** of the picture as it is kept, in hexadecimal */
  sha256: z.string(),
  onSheet: z.boolean(),
  by: z.string().nullable(),
  at: instantText,
  version,
});
export type PhotoView = z.infer<typeof photoView>;

/** PATCH /api/tickets/:id/photos/:photoId (If-Match: the photo's version) */
export const changePhoto = z.object({ caption: line(200).optional(), onSheet: z.boolean().optional() });
export type ChangePhoto = z.infer<typeof changePhoto>;

/** POST /api/tickets/:id/photos/:photoId/remove (If-Match: the photo's version): the pictures are gone afterwards, that there was one stays. */
export const removePhoto = z.object({ reason });
export type RemovePhoto = z.infer<typeof removePhoto>;
