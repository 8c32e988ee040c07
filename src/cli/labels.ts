import type { Finding } from '../core/check/index.ts';
import type { Sheet } from '../core/job/index.ts';

/** The names people know things by, since ids mean nothing at a terminal. */
export interface Labels {
  point(id: string): string;
  reading(id: string): string;
}

export function labelsOf(sheet: Sheet): Labels {
  const points = new Map(sheet.points.map(({ id, label }) => [id, label]));
  const readings = new Map(sheet.readings.map((reading) => [reading.id, reading]));
  const point = (id: string): string => points.get(id) ?? id;
  return {
    point,
    reading(id) {
      const reading = readings.get(id);
      return reading && reading.points.length > 0 ? `${reading.kind} ${reading.points.map(point).join('-')}` : id;
    },
  };
}

/** A finding whose subjects carry their labels. */
export function labelled(finding: Finding, sheet: Sheet, labels = labelsOf(sheet)) {
  const label = ({ on, id }: Finding['subjects'][number]): string => {
    if (on === 'piece') return sheet.pieces.find((one) => one.id === id)?.name ?? id;
    return on === 'reading' ? labels.reading(id) : on === 'point' ? labels.point(id) : id;
  };
  return { ...finding, subjects: finding.subjects.map((subject) => ({ ...subject, label: label(subject) })) };
}
