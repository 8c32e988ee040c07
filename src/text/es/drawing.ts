import type { DrawingWords, TileWords } from '../../core/packet/drawing/index.ts';
import { MOST_TILES } from '../../core/packet/drawing/tiles.ts';
import { inchesToTheFoot } from '../scale.ts';

/** What stands on a drawing that leaves the app. */
export const drawing: DrawingWords = {
  seen: {
    plan: 'Visto desde arriba, la proa hacia arriba',
    port: 'Visto desde afuera, la proa a la izquierda',
    starboard: 'Visto desde afuera, la proa a la derecha',
    astern: 'Visto desde popa, babor a la izquierda',
    ahead: 'Visto desde proa, babor a la derecha',
  },
  notFlat: 'ES UN PLANO, NO UN PATRÓN DE CORTE: esta pieza no es plana. Corte según los puntos en el espacio.',
  sketched: 'Dibujado con lecturas que aún no fijan la forma. No corte con este dibujo.',
  bent: 'NO USAR: hay lecturas que se contradicen y tuercen esta forma.',
  without: (names) => `Dibujado sin ${names}, que no concuerda con las demás.`,
  measuredTo: (line) => `Medido hasta: ${line}`,
  lineUnknown: 'Nadie dijo hasta qué línea se midió.',
  lines: {
    'finished-edge': 'el borde terminado de la lona',
    'fastener-line': 'la línea de los sujetadores',
    'boat-edge': 'el borde del barco',
  },
  allowance: (width) => `Línea discontinua: ${width} de margen todo alrededor, sumado a lo medido`,
  unit: (unit) => (unit === 'in' ? 'Unidad de este dibujo: pulgadas' : 'Unidad de este dibujo: milímetros'),
  state: (id, entries, latest) =>
    `Estado ${id}: ${entries === 1 ? '1 registro' : `${entries} registros`}${latest === '' ? '' : `, el último del ${latest}`}`,
  seal: (seal) => `Sello ${seal}`,
  cleared: (who, when, judged) => `LISTO PARA CORTAR, según ${who}, ${when}, estado ${judged}`,
  nameless: 'el taller',
  notCleared: 'CORTE NO AUTORIZADO',
  demo: 'Demostración: barco y personas inventados',
  scale: (ratio, system) =>
    ratio === 1
      ? 'Tamaño real, 1:1'
      : `Escala ${system === 'imperial' ? `${inchesToTheFoot(ratio)} (1:${ratio})` : `1:${ratio}`}`,
};

const PAPERS = { a4: 'A4', letter: 'carta' } as const;

/** What stands on the sheets of a piece printed in real size. */
export const tiles: TileWords = {
  howTo: 'Tamaño real',
  tile: (name) => `Hoja ${name}`,
  page: (page, of) => `Página ${page} de ${of}`,
  fullSize: 'Tamaño real: imprima al 100 %, nunca ajustado a la página',
  joins: (tile) => `aquí va ${tile}`,
  bar: (mm) => `${mm} mm si la impresión es fiel`,
  square: { inner: 'cuadrado interior 100 mm', outer: 'cuadrado exterior 4 in' },
  steps: (sheets) => [
    'Mida el cuadrado antes de cortar: el interior tiene 100 mm de ancho y de alto, el exterior 4 in. Si no es así, imprima otra vez al 100 %, sin ajustar a la página.',
    `Acomode ${sheets === 1 ? 'la hoja' : `las ${sheets} hojas`} como se ve abajo. Ponga cada una sobre la vecina hasta que las cruces del mismo número queden una sobre otra, y péguela con cinta. Donde las hojas vayan a tope, corte por la línea de puntos.`,
    'Después mida una lectura larga de lado a lado y compárela con la hoja del trabajo.',
  ],
  refused: (refusal) => {
    switch (refusal.why) {
      case 'not-flat':
        return 'Esta pieza no es plana: su plano no es un patrón de corte, así que no se imprime en tamaño real. Corte según los puntos en el espacio.';
      case 'no-shape':
        return 'Las lecturas aún no fijan la forma, así que no se imprime en tamaño real.';
      case 'no-outline':
        return 'Esta pieza no tiene un contorno cerrado que imprimir.';
      case 'too-many':
        return `En tamaño real ocupa ${refusal.count} hojas ${PAPERS[refusal.paper]}, y no se ofrecen más de ${MOST_TILES}. Use el DXF con un trazador, o mándelo imprimir.`;
    }
  },
};
