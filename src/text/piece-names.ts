import type { PieceKind } from '../core/job/index.ts';
import type { Language } from './language.ts';

/**
 * What each kind of piece is called. All languages together: a piece that was given its kind's name keeps it in the job,
 * and is shown in the language of whoever looks.
 */
export const pieceNames: Readonly<Record<Language, Readonly<Record<PieceKind, string>>>> = {
  en: {
    'tension-shade': 'Tension shade',
    'open-bow': 'Open-bow cover',
    'cockpit-cover': 'Cockpit or stern cover',
    'drop-curtain': 'Cockpit curtain',
    'mooring-cover': 'Full mooring or trailering cover',
    'enclosure-panel': 'Enclosure panel',
    'folding-top': 'Folding-frame top',
    'box-cover': 'Seat, helm, console or engine cover',
    cushion: 'Cushion, bolster or carpet',
    free: 'Something else',
    table: 'Piece from a table',
  },
  es: {
    'tension-shade': 'Toldo de tensión',
    'open-bow': 'Funda de proa abierta',
    'cockpit-cover': 'Funda de bañera (cockpit) o de popa',
    'drop-curtain': 'Cortina de bañera (cockpit)',
    'mooring-cover': 'Funda completa para amarre o remolque',
    'enclosure-panel': 'Panel de cerramiento',
    'folding-top': 'Capota plegable (bimini)',
    'box-cover': 'Funda de asiento, timón, consola o motor',
    cushion: 'Cojín, respaldo o alfombra',
    free: 'Otra cosa',
    table: 'Pieza de una tabla',
  },
};

/** The piece bears the name of its kind, in whatever language it was given; nobody chose one for it. */
export const isKindsName = (kind: PieceKind, name: string): boolean =>
  Object.values(pieceNames).some((names) => names[kind] === name);
