import type { Caution } from '../../core/guide/index.ts';

/** Short, once, where they matter. Advice, never approval: local rules and a licensed professional decide. */
export const cautions = {
  heading: 'Careful',
  understood: 'Understood',
  texts: {
    'engine-off': 'Engine off, shore power understood, before anyone climbs about.',
    footing:
      'Standing on a gunwale, foredeck or wet dock is how people fall. One hand for yourself, someone with you, life jacket near water.',
    drilling:
      'Before any hole: batteries and shore power off, find what is underneath (wiring, fuel, water, tanks, foam core), seal it after. Structural work is for a qualified yard.',
    'carbon-monoxide':
      'Exhaust under canvas can kill within minutes. Never run an engine or generator with a cover or enclosure closed. Keep a working CO alarm. No heater, stove or grill under canvas.',
    recoil:
      'Cords, poles and shock cord under tension fly back. Keep your face out of line and release slowly. Take shades down in strong wind, at speed and before lightning.',
    'lights-and-view': 'The cloth must not hide navigation lights, the helm’s view, or a way out.',
    loads:
      'Shade poles pull hard. Holders that carry them are through-bolted with backing plates. Any load or size named here is advice: local rules and a licensed professional decide.',
    tow: 'Nothing loose on the boat under tow, and nothing that can work loose: straps all round, poles down, stop and look after the first mile.',
  } satisfies Record<Caution, string>,
};
