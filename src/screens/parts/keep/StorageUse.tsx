import { useEffect, useState } from 'preact/hooks';
import { askToPersist, estimateRoom, isPersistent, type Room } from '../../../device/storage-state.ts';
import { type Weight, weigh } from '../../../device/weigh.ts';
import { say } from '../../../text/index.ts';
import { sayKeep } from '../../../text/keep.ts';
import { bytesText } from '../../model/job-words.ts';
import { store } from '../../model/services.ts';

/** What the jobs take here, their photos apart, and what the browser says of its room where that can be believed. */
export function StorageUse() {
  const [weight, setWeight] = useState<Weight | null>(null);
  const [room, setRoom] = useState<Room | null>(null);
  const [promised, setPromised] = useState(false);
  const words = sayKeep().use;
  const look = async (): Promise<void> => {
    setPromised((await isPersistent()) === true);
    const weighed = await weigh(store());
    setWeight(weighed);
    setRoom(await estimateRoom(weighed.photoBytes));
  };
  useEffect(() => void look().catch(() => undefined), []);
  return (
    <section class="stack">
      <h2>{say().dock.keep.storage}</h2>
      <p>
        {weight
          ? words.total(weight.jobs, bytesText(weight.records), weight.photos, bytesText(weight.photoBytes))
          : words.counting}
      </p>
      {weight && <p>{room?.plausible ? words.room(bytesText(room.used), bytesText(room.quota)) : words.unknown}</p>}
      <p>{promised ? say().store.persistent : say().store.notPersistent}</p>
      {!promised && (
        <button type="button" class="button" onClick={() => void askToPersist().then(look)}>
          {say().store.askPersistent}
        </button>
      )}
    </section>
  );
}
