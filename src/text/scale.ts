/** A scale as a drawing in inches states it: so many inches to the foot, `1/2 in = 1 ft`. */
export function inchesToTheFoot(ratio: number): string {
  const inches = 12 / ratio;
  const [whole, sixteenths] = [Math.floor(inches), Math.round((inches % 1) * 16)];
  const fraction = sixteenths === 0 ? '' : simple(sixteenths, 16);
  return `${[whole || '', fraction].filter(Boolean).join(' ')} in = 1 ft`;
}

const simple = (over: number, under: number): string =>
  over % 2 === 0 ? simple(over / 2, under / 2) : `${over}/${under}`;
