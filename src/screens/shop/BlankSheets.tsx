import { guides } from '../../core/guide/pieces/index.ts';
import { say } from '../../text/index.ts';
import { sayShop } from '../../text/shop.ts';
import { routeHash } from '../model/route.ts';

/** Every guide as a sheet to print, for a day without a phone. */
export function BlankSheets() {
  const words = sayShop().paper;
  return (
    <section class="stack">
      <h2>{words.sheets}</h2>
      <p class="quiet small">{words.sheetsHelp}</p>
      <ul class="list">
        {guides.map(({ kind }) => (
          <li key={kind}>
            <a class="item" href={routeHash({ at: 'paper', kind })}>
              <span class="grow">{say().general.pieceKinds[kind]}</span>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
