export const demo = {
  name: 'Demo: Perla, foredeck shade and bow cover',
  customer: 'A. Sample (invented)',
  boat: 'Perla, 24 ft bowrider (invented)',
};
