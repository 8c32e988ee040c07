import type { Table, TableColumn } from '../../../core/guide/tables.ts';
import type { Sheet } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { sayWalk } from '../../../text/walk.ts';
import { pointLabel } from '../../model/words.ts';

/** What a table is called in the list and at its top. */
export function tableTitle(table: Table, sheet: Sheet): string {
  const words = sayWalk().table;
  const labels = (points: readonly string[]): string[] => points.map((id) => pointLabel(sheet, id));
  switch (table.of) {
    case 'marks':
      return words.marks(labels(table.columns.flatMap((column) => (column.of === 'mark' ? [column.point] : []))));
    case 'stations':
      return words.stations(labels(table.baseline));
    case 'gaps':
    case 'running': {
      const points = sheet.runs.find(({ id }) => id === table.run)?.points ?? table.rows;
      return words[table.of](pointLabel(sheet, points[0] ?? ''), pointLabel(sheet, points.at(-1) ?? ''));
    }
  }
}

export function columnTitle(column: TableColumn, sheet: Sheet): string {
  const { columns, toward } = sayWalk().table;
  switch (column.of) {
    case 'mark':
      return pointLabel(sheet, column.point);
    case 'gap':
      return columns.gap;
    case 'running':
      return columns.running(pointLabel(sheet, column.from));
    case 'kind': {
      const side = column.toward as keyof ReturnType<typeof say>['general']['sides'] | null;
      return side === null ? columns[column.kind] : toward(columns[column.kind], say().general.sides[side]);
    }
  }
}
