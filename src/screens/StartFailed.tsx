import type { StoreFailureCode } from '../device/store/index.ts';
import { say } from '../text/index.ts';
import { Banner } from './parts/marks.tsx';

/** The storage gives nothing: say why, and what to do. Nothing was changed. */
export function StartFailed({ code }: { code: StoreFailureCode }) {
  return (
    <main class="page">
      <h1>{say().general.app}</h1>
      <Banner tone="stop">
        <p>
          <strong>{say().dock.start.failed}</strong> {say().store.failures[code]}
        </p>
      </Banner>
    </main>
  );
}
