import { render } from 'preact';
import { StoreFailure } from './device/store/index.ts';
import { App, bringFirst } from './screens/App.tsx';
import { startOutside } from './screens/model/outside.ts';
import { readPadSettings } from './screens/model/pad-settings.ts';
import { followAddress, route } from './screens/model/route.ts';
import { speakAsPreferred, startServices } from './screens/model/services.ts';
import { quiet } from './screens/parts/Later.tsx';
import { StartFailed } from './screens/StartFailed.tsx';
import './screens/style.css';
import './screens/parts/parts.css';
import './screens/parts/drawing/drawing.css';
import './screens/parts/pad/pad.css';
import './screens/parts/photo/photo.css';
import './screens/dock/step/step.css';

async function start(): Promise<void> {
  const root = document.getElementById('app');
  if (!root) return;
  try {
    followAddress();
    // Beside the store, not after it.
    bringFirst(route.value);
    const store = await startServices();
    await readPadSettings(store);
    render(<App />, root);
    startOutside(store, quiet());
  } catch (error) {
    await speakAsPreferred();
    render(<StartFailed code={error instanceof StoreFailure ? error.code : 'unknown'} />, root);
  }
}

void start();
