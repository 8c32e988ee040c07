import * as z from 'zod/mini';

const Length = z.number().check(z.gte(0), z.lte(100_000));
const Share = z.number().check(z.gte(0), z.lte(1));
const Spread = z.object({ base: Length, perMetre: Length });

/**
 * What a shop sets for itself; what it leaves out is the default. Lengths in mm. spread: the standard deviation of its
 * tapes, `base` and `perMetre` more for each metre. hem: width. hollow: sag of a shade's edge as a share of its span.
 * trim: cloth left for a fitting visit. Hem, hollow and trim are kept apart from what is measured.
 */
export const ShopRules = z.object({
  shop: z.optional(z.string().check(z.maxLength(200))),
  fastenerGap: z.optional(z.object({ min: Length, max: Length })),
  fastenerEnd: z.optional(Length),
  portStarboard: z.optional(Length),
  tolerance: z.optional(z.object({ line: Length, corner: Length })),
  ownerFactor: z.optional(z.number().check(z.gte(1), z.lte(10))),
  tape: z.optional(Spread),
  girth: z.optional(Spread),
  offset: z.optional(Spread),
  hem: z.optional(Length),
  hollow: z.optional(Share),
  trim: z.optional(Length),
});
export type ShopRules = z.infer<typeof ShopRules>;

/** What a shop adds to what was measured. Common practice, no source: hems 1 to 1 1/2 in, edges hollow by 4 to 8 % of their span. */
export const defaultAllowances = { hem: 38, hollow: 0.06, trim: 0 } as const;
