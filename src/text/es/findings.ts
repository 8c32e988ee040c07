import type { RuleKey } from '../../core/check/index.ts';
import type { FindingFacts } from '../en/findings.ts';
import { details } from './details.ts';
import { edges } from './edges.ts';

const units: Record<string, string> = {
  mm: 'milímetros',
  cm: 'centímetros',
  m: 'metros',
  in: 'pulgadas',
  ft: 'pies',
  'feet-inches': 'pies y pulgadas',
};

const lacks: Record<string, string> = {
  stations: 'aún sin sujetadores',
  line: 'falta decir qué línea es',
  type: 'falta decir qué lo cierra',
  presence: 'falta decir si eso ya está en el barco',
  ends: 'falta decir dónde empieza y dónde termina',
  pulls: 'falta decir hacia dónde se tira',
  count: 'falta decir cuántos se van a colocar',
  into: 'falta decir a qué van atornillados',
  setter: 'falta decir quién los coloca',
};

/** By the key of the conflict; permanent keys of core/check/choice-conflicts.ts. */
const conflicts: Record<string, () => string> = {
  'holders-screwed': () =>
    'Los portacañas solo están atornillados. Las varas de un toldo tiran mucho: van con pernos pasantes y contraplacas.',
  'no-poles': () =>
    'No hay nada puesto en los portacañas. Ponga palos rectos del largo de las varas: la inclinación de un portacañas no mide ninguna esquina.',
  'shade-in-rain': () =>
    'Un toldo plano de tela cerrada que queda puesto con lluvia junta agua. ¿Tiene caída, o es de malla?',
  'shade-at-speed': () => 'Un toldo se baja antes de que el barco navegue rápido. ¿La idea es dejarlo puesto?',
  'shade-in-wind': () => 'Un toldo se baja con viento fuerte. ¿La idea es dejarlo puesto?',
  'cleats-covered': () =>
    'El barco está amarrado en el agua y las cornamusas quedan bajo la funda. Tienen que quedar libres.',
  'coated-unvented': () =>
    'Una tela recubierta que queda puesta con lluvia necesita ventilación; si no, una tela que respire.',
  'mesh-in-rain': () => 'La malla deja pasar la lluvia. Lo que está debajo se moja.',
  towed: () => 'Se remolca con la funda puesta: nada suelto, correas todo alrededor, protección donde roza.',
};

const untreated: Record<string, string> = {
  treatment: 'nadie dijo qué hace la lona con eso',
  place: 'lleva un recorte, y su lugar no está medido',
  size: 'lleva un recorte, y su tamaño no está medido',
};

const ends: Record<string, string> = { first: 'El primer', last: 'El último' };

/** What was answered or disputed, by its key where it has words here. */
const known: Record<string, string> = {
  ...edges.closures,
  ...edges.into,
  ...edges.setters,
  ...edges.pulls,
  ...edges.treatments,
  ...edges.yesNo,
  // The same as in general.ts, which comes with the first screen and would be split for these few words.
  eyelet: 'Ollao con cabo',
  'track-end': 'Extremo de riel',
  'zip-end': 'Extremo de cierre',
  'strap-end': 'Extremo de correa',
  there: 'Ya está en el barco',
  planned: 'Por colocar',
  cumulative: 'Todo desde un extremo',
  gaps: 'De uno al siguiente',
  'finished-edge': 'Borde terminado de la lona',
  'fastener-line': 'Línea de los sujetadores',
  'boat-edge': 'Borde del barco',
  'none-here': 'aquí no hay',
  'could-not': 'no se pudo medir',
};
const disputes: Record<string, string> = {
  ...details.fields,
  line: 'Línea',
  manner: 'Cómo se miden los sujetadores',
  points: 'Puntos del borde',
  closes: 'Qué lo cierra',
  presence: 'Si ya está en el barco',
  count: 'Cuántos',
  spacing: 'Separación',
  into: 'A qué va atornillado',
  pulls: 'Hacia dónde se tira',
  setter: 'Quién lo coloca',
  treatment: 'Qué hace la lona con eso',
  clearance: 'Espacio libre',
  needed: 'Si se necesita',
};
const answered = (value: string | number | null | undefined): string => known[String(value)] ?? String(value);

const joined = (names: readonly string[]): string => names.join(' y ');
const others = (names: readonly string[]): string => joined(names.slice(1));

/** One sentence or two for each rule: what happened, what it means. Never whose fault, never what would fit. */
export const findings: Record<RuleKey, (facts: FindingFacts) => string> = {
  'missing-reading': ({ names }) => `${names[0]}: aún sin medir.`,
  'missing-second-look': ({ names, numbers }) =>
    numbers.looks === 3 ? `${names[0]}: falta leerla una vez más.` : `${names[0]}: falta leerla por segunda vez.`,
  'unmeasured-reading': ({ names, numbers }) =>
    numbers.answer === 'none-here'
      ? `${names[0]}: se respondió “aquí no hay” (${numbers.reason}). La guía lo espera; ¿es así?`
      : `${names[0]}: no se pudo medir (${numbers.reason}). La lona depende de eso.`,
  'missing-photo': ({ names, numbers }) =>
    numbers.answer === null ? `Foto “${names[0]}”: aún sin tomar.` : `No hay foto “${names[0]}” (${numbers.reason}).`,
  'missing-mark': ({ names }) => `Aún sin marcar en una foto: ${names.slice(0, 2).join(', ')}.`,
  'missing-answer': ({ names }) => `Aún sin responder: ${names[0]}`,
  'missing-run': ({ names, numbers, show }) => {
    const name = numbers.from === null ? names[0] : `${names[0]}, de ${numbers.from} a ${numbers.to}`;
    if (numbers.lack === 'rest') return `${name}: quedan ${show('rest')} de borde sin sujetadores. ¿Ese fue el último?`;
    if (numbers.lack === 'could-not') return `${name}: no se pudo medir (${numbers.reason}). La lona depende de eso.`;
    if (numbers.lack === 'none-here')
      return `${name}: se respondió “aquí no hay” (${numbers.reason}). La guía lo espera; ¿es así?`;
    return `${name}: ${lacks[String(numbers.lack)] ?? 'incompleto'}.`;
  },
  'implausible-value': ({ names, numbers, show }) => {
    const value = numbers.quantity === 'angle' ? 'este ángulo' : show('value');
    const unit = numbers.unit === null ? '' : ` ¿La cinta marcaba ${units[String(numbers.unit)] ?? numbers.unit}?`;
    return `${names[0]}: ${value} no es algo que este barco pueda tener aquí.${unit}`;
  },
  'takes-disagree': ({ names, numbers, show }) =>
    numbers.quantity === 'angle'
      ? `${names[0]}: se leyó dos veces y no coincide. Léalo una vez más y tache lo que esté mal.`
      : `${names[0]}: se leyó ${show('low')} y también ${show('high')}. Hay ${show('difference')} de diferencia. ${
          numbers.keep === null || numbers.keep === undefined
            ? 'Léalo una vez más y tache lo que esté mal.'
            : 'La última lectura concuerda con todo lo demás.'
        }`,
  'impossible-triangle': ({ names, show }) =>
    `${names[0]} (${show('longest')}): son ${show('excess')} más de lo que permiten ${others(names)} juntas. Una de ellas está mal.`,
  'box-diagonals': ({ names, numbers, show }) =>
    numbers.shape === 'flat'
      ? `La diagonal ${names[0]} (${show('diagonal')}) no corresponde a estos lados y a ${names.at(-1)}: se aparta ${show('beyond')} más de lo que explica una cinta.`
      : `Con estos lados y ${names.at(-1)}, la diagonal ${names[0]} puede ir de ${show('min')} a ${show('max')}; se leyó ${show('diagonal')}.`,
  'impossible-tetrahedron': ({ names }) =>
    `Estas medidas no pueden juntarse en cuatro puntos: ${names.join(', ')}. Una de ellas está mal.`,
  'girth-short': ({ names, show }) =>
    `${names[0]}: apoyada en el borde, la cinta da ${show('girth')}, que son ${show('short')} menos que en línea recta (${show('chords')}). Eso no puede ser.`,
  'run-backwards': ({ names, show }) =>
    `${names[0]} (${show('to')}) queda ${show('back')} antes de ${names[1]} (${show('from')}).`,
  'run-sum': ({ names, numbers, show }) =>
    numbers.manner === 'gaps'
      ? `${names[0]}: los espacios suman ${show('sum')} y el borde entero mide ${show('whole')}. ¿Se saltó un espacio o se contó dos veces?`
      : `${names[0]}: el último sujetador (${show('sum')}) y el borde entero (${show('whole')}) no concuerdan.`,
  'fastener-gap': ({ names, numbers, show }) => {
    if (numbers.about === 'first' || numbers.about === 'last')
      return `${ends[numbers.about]} sujetador está a ${show('gap')} del extremo; lo usual es hasta ${show('max')}.`;
    const usual = `${show('min')} a ${show('max')}`;
    return numbers.about === 'run'
      ? `${names[0]}: hay ${numbers.gaps} espacios fuera de lo usual (de ${usual}). ¿Los del barco están así?`
      : `${names[0]}: un espacio de ${show('gap')}; lo usual es de ${usual}.`;
  },
  'port-starboard': ({ names, show }) =>
    `${names[0]} y ${names[1]}: hay ${show('difference').replace('-', '')} de diferencia. En los barcos es común; se midieron los dos lados.`,
  disputed: ({ names, numbers }) => {
    const about = names[0] ?? String(numbers.about);
    return `${disputes[about] ?? about}: dos personas respondieron sin saber una de la otra (${answered(numbers.first)} / ${answered(numbers.second)}). Responda otra vez para resolverlo.`;
  },
  'unsure-choice': ({ names }) => `“No se pudo saber”: ${names[0]}`,
  'choice-conflict': ({ names, numbers }) => conflicts[String(numbers.conflict)]?.() ?? names.join(', '),
  carried: ({ numbers }) => {
    const one = numbers.entries === 1;
    const entries = one ? '1 registro' : `${numbers.entries} registros`;
    if (numbers.why === 'loose') return `${entries}: ${one ? 'espera' : 'esperan'} el resto de su trabajo.`;
    return `${entries} (${numbers.kind}): esta versión no ${one ? 'lo' : 'los'} entiende. Se ${one ? 'conserva' : 'conservan'}.`;
  },
  'reading-doubted': ({ names }) =>
    names.length === 1
      ? `${names[0]}: no concuerda con las otras lecturas. Léalo otra vez.`
      : `Algo aquí no concuerda. Lea otra vez: ${names.join(', ')}.`,
  'point-floats': ({ names, numbers }) =>
    numbers.ways === null
      ? `${names[0]}: aún no hay nada medido ahí.`
      : `${names[0]}: aún sin fijar. Con estas lecturas podría estar en otro lugar. Necesita otra medida con cinta.`,
  'two-shapes': ({ names, numbers }) =>
    `Hay dos formas que cumplen con estas lecturas (${names.join(', ')}: podría quedar a un lado o al otro).${numbers.from === null ? '' : ` Una medida lo decide: ${numbers.from}–${numbers.to}.`}`,
  'reading-unchecked': ({ names, numbers }) =>
    numbers.moved
      ? `${names[0]}: nada más mostraría aquí un error de lectura, y ${numbers.moved} se movió después. Mida también desde ${numbers.now}.`
      : `${names[0]}: nada más mostraría aquí un error de lectura. Léalo por segunda vez.`,
  'point-loose': ({ names, show }) =>
    `${names[0]}: su lugar solo se conoce con precisión de ${show('sure')}; la pieza necesita ${show('limit')}.`,
  'not-measured-again': ({ names, numbers, show }) =>
    `${names[0]}: se leyó ${numbers.read} y el taller lo toma como ${show('value')}. Nadie lo ha medido otra vez.`,
  'shape-unknown': ({ names, numbers }) =>
    numbers.readings === '0'
      ? `${names[0]}: aún no hay nada medido.`
      : `${names[0]}: con estas lecturas no se pudo calcular ninguna forma. Busque una que esté muy lejos de lo esperado, o tome otra medida.`,
  'slip-unseen': ({ names, show }) =>
    `Un error en la lectura ${names[1]} podría mover ${names[0]} ${show('shift')} y nadie lo notaría. Léala por segunda vez.`,
  'unlike-sister': ({ names, numbers }) =>
    numbers.about === 'piece'
      ? `${names[0]}: casi todo es distinto del barco gemelo. ¿Este barco está hecho igual?`
      : Number(numbers.takes) > 1
        ? `${names[0]}: es distinto del barco gemelo, y la segunda lectura lo confirma. Puede que este barco esté hecho así.`
        : `${names[0]}: es distinto del barco gemelo. Léalo por segunda vez.`,
  'asked-again': ({ names, numbers }) =>
    `El taller vuelve a pedir: ${names[0]}${numbers.note ? `. ${numbers.note}` : ''}`,
  'cleat-covered': ({ names, numbers, show }) =>
    numbers.by === 'place'
      ? `${names[0]}: figura fuera de la lona, pero queda ${show('depth')} adentro de su línea. ¿${
          numbers.kind === 'cleat' ? 'Queda libre' : 'Se ve'
        }?`
      : `${names[0]}: ${numbers.kind === 'light' ? 'tiene que verse' : 'tiene que quedar libre'}, y la lona le pasa por encima sin un recorte.`,
  'fastener-on-obstruction': ({ names, numbers, show }) =>
    numbers.planned === 'yes'
      ? `La fila planeada desde ${names[1]} pasa sobre ${names[2]}. Deje los sujetadores apartados de ahí.`
      : numbers.on === 'thing'
        ? `${names[0]}: queda sobre ${names[1]}. Uno de los dos se leyó mal.`
        : `${names[0]}: queda a ${show('distance')} del centro de ${names[1]}, dentro de lo que tiene que quedar libre alrededor.`,
  'missing-cord-exit': () => 'El cable de corriente del muelle sale por aquí, y no hay ninguna salida anotada para él.',
  'missing-treatment': ({ names, numbers }) =>
    numbers.lack === 'list'
      ? 'Algo le estorba a la lona, y la lista de obstáculos está vacía.'
      : `${names[0]}: ${untreated[String(numbers.lack)] ?? 'incompleto'}.`,
};
