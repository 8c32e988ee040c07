import { useEffect, useState } from 'preact/hooks';
import type { SheetPiece } from '../../../core/job/index.ts';
import { saveText } from '../../../device/share.ts';
import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { routeHash } from '../../model/route.ts';
import { type FileForm, makeFile } from '../state/drawing-files.ts';
import { type RealSize, realSizeOf } from '../state/real-size.ts';
import { Section } from './Section.tsx';

/** Drawings and lists for other programs and people, as the piece stands now. */
export function DrawingsSection({ job, piece }: { job: OpenJob; piece: SheetPiece }) {
  const [said, setSaid] = useState('');
  const words = sayBench().drawings;
  const size = useRealSize(job, piece);
  const save = async (form: FileForm): Promise<void> => {
    const made = await makeFile(job, piece, form);
    if (!made) setSaid(words.nothing);
    else setSaid(saveText(made.text, made.name, made.type) === 'downloaded' ? words.saved(made.name) : words.failed);
  };
  const forms: readonly (readonly [FileForm, string])[] = [
    ['svg', words.svg],
    ['dxf-in', words.dxf(words.units.in)],
    ['dxf-mm', words.dxf(words.units.mm)],
    ['points', words.points],
    ['fasteners', words.fasteners],
    ['readings', words.readings],
    ...(job.sheet.fittings.length > 0 ? ([['fittings', words.fittings]] as const) : []),
  ];
  return (
    <Section at="drawings">
      <div class="row">
        <a class="button" href={routeHash({ at: 'print', job: job.id, piece: piece.id, as: 'sheet' })}>
          {words.sheet}
        </a>
        {size && 'sheets' in size && (
          <a class="button" href={routeHash({ at: 'print', job: job.id, piece: piece.id, as: 'tiles' })}>
            {words.tiles(size.sheets)}
          </a>
        )}
      </div>
      {size && (
        <p class="small" data-testid="real-size">
          {'sheets' in size ? words.tilesOf(size.paper) : size.refused}
        </p>
      )}
      <p class="small">{words.how}</p>
      {!piece.flat && <p>{words.notFlat}</p>}
      <div class="row">
        {forms.map(([form, name]) => (
          <button key={form} type="button" class="button" onClick={() => void save(form)} data-testid={`file-${form}`}>
            {name}
          </button>
        ))}
      </div>
      <p aria-live="polite" class="small">
        {said}
      </p>
    </Section>
  );
}

/** What a flat piece takes in real size; null of any other, and until that is worked out. */
function useRealSize(job: OpenJob, { id, flat }: SheetPiece): RealSize | null {
  const [made, setMade] = useState<{ of: string; size: RealSize | null } | null>(null);
  useEffect(() => {
    let isOver = false;
    if (flat && job.judged)
      void realSizeOf(job, id)
        .catch(() => null)
        .then((size) => {
          if (!isOver) setMade({ of: id, size });
        });
    return () => {
      isOver = true;
    };
  }, [job, id, flat]);
  return made?.of === id ? made.size : null;
}
