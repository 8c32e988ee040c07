/** Cautions shown at the step where they matter; their words live with the texts. */
export const CAUTIONS = [
  'footing',
  'drilling',
  'carbon-monoxide',
  'recoil',
  'lights-and-view',
  'loads',
  'engine-off',
  'tow',
] as const;
export type Caution = (typeof CAUTIONS)[number];
