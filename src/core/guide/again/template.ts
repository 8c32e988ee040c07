import * as z from 'zod/mini';
import { Id, PieceDeclaration } from '../../job/index.ts';

/** A shop's own way to capture a piece, kept from one that was measured: what is asked, never what was answered. */
export const Template = z.object({
  id: Id,
  name: z.string().check(z.minLength(1), z.maxLength(120)),
  piece: PieceDeclaration,
});
export type Template = z.infer<typeof Template>;
