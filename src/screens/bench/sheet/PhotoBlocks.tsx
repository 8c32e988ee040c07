import type { SheetPhoto } from '../../../core/job/index.ts';
import { saySheet } from '../../../text/sheet.ts';
import type { Block } from '../../paper/blocks.tsx';
import { Overlay } from '../../parts/photo/Overlay.tsx';
import { photoTitle } from '../../parts/photo/photo-words.ts';
import { plain } from './block-parts.tsx';
import type { SheetContent } from './sheet-content.ts';

const IN_A_ROW = 3;
/** A photo on paper is no wider and no higher, CSS px: 60 mm. */
const LARGEST = (60 * 96) / 25.4;

/** The photos with their marks, small, three in a row. */
export function photoBlocks(content: SheetContent): Block[] {
  const { photos } = content;
  const rows = Array.from({ length: Math.ceil(photos.length / IN_A_ROW) }, (_, i) =>
    photos.slice(i * IN_A_ROW, (i + 1) * IN_A_ROW),
  );
  return rows.map((row, i) =>
    plain(`photos ${i}`, () => (
      <div class="sheet-photos">
        {row.map((photo) => (
          <Photo key={photo.id} photo={photo} content={content} />
        ))}
      </div>
    )),
  );
}

function Photo({ photo, content }: { photo: SheetPhoto; content: SheetContent }) {
  const url = content.urls.get(photo.sha256);
  const share = LARGEST / Math.max(photo.width, photo.height);
  const [width, height] = [photo.width * share, photo.height * share];
  const title = photoTitle(photo, content.job.sheet) ?? '';
  return (
    <figure>
      {url ? (
        <div class="photo-frame" style={{ width: `${width}px`, height: `${height}px` }}>
          <img src={url} alt="" width={width} height={height} />
          <Overlay photo={photo} sheet={content.job.sheet} shown={width} />
        </div>
      ) : (
        <p>{saySheet().photoMissing}</p>
      )}
      <figcaption>{title}</figcaption>
    </figure>
  );
}
