import { z } from 'zod';
import { SerialSchemeSchema } from './serial-scheme';
import { StandardEditionSchema } from './standard-edition';

/** What the shop knows that evidence is read by. Change it in the editor; prepare it once with `prepareShop`. */
export const ShopDataSchema = z.object({
  serialSchemes: z.array(SerialSchemeSchema),
  standardEditions: z.array(StandardEditionSchema),
});
export type ShopData = z.infer<typeof ShopDataSchema>;
