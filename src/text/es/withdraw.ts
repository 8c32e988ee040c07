import type * as english from '../en/withdraw.ts';

const counted = (count: number, one: string, many: string): string => (count === 1 ? `1 ${one}` : `${count} ${many}`);

const and = (parts: string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} y ${parts.at(-1)}`;

export const withdraw: typeof english.withdraw = {
  open: 'Retirar para siempre',
  why: '¿Por qué?',
  reasons: ['Lo pidió alguien que aparece', 'Muestra algo privado', 'Tomada por error'],
  reasonsOfPerson: ['La persona lo pidió', 'Ya no hace falta', 'Anotado por error'],
  now: 'Retirar para siempre',
  photoLoses: (marks: number, lines: number, notes: number) => {
    const parts = ['la foto'];
    if (marks > 0) parts.push(counted(marks, 'marca', 'marcas'));
    if (lines > 0) parts.push(counted(lines, 'línea', 'líneas'));
    if (notes > 0) parts.push(counted(notes, 'nota', 'notas'));
    return `Se pierde para siempre: ${and(parts)}. Nadie lo puede recuperar.`;
  },
  detailsLose: (names: string[]) =>
    `Se pierde para siempre: ${and(names)}, también como se escribió antes. Nadie lo puede recuperar.`,
  nameGoes: (name: string) => `También está en el nombre del trabajo, que pasará a ser “${name}”.`,
  copies:
    'Las copias ya enviadas no se pueden traer de vuelta. Envíe el trabajo otra vez: el dispositivo que lo reciba también lo pierde. En el historial queda que alguien retiró algo.',
  stillHere: 'Otro trabajo de este dispositivo tiene la misma foto. Retírela también ahí.',
  notes: 'Lo escrito en otros lugares queda: notas, motivos y quién midió.',
  nothing: 'Marque lo que se debe ir.',
};
