import { sayBench } from '../../../text/bench.ts';
import type { Lit } from '../state/lit.ts';
import type { Marked } from './marked.ts';
import type { Scene } from './scene.ts';
import type { Spot } from './spot-names.ts';

/** How sure each point is; under everything else, so that it covers nothing. */
export function DrawnOvals({ scene }: { scene: Scene }) {
  return (
    <>
      {scene.ovals.map(({ point, at, rx, ry, turn }) => (
        <ellipse
          key={point}
          class="bench-oval"
          rx={rx}
          ry={ry}
          transform={`translate(${at[0]} ${at[1]}) rotate(${turn.toFixed(1)})`}
        />
      ))}
    </>
  );
}

/** Points with their names and heights; those a finding speaks of carry its sign. */
export function DrawnPoints({ scene, lit, marked }: { scene: Scene; lit: Lit; marked: Marked }) {
  return (
    <>
      {scene.spots.map((spot) => (
        <DrawnPoint
          key={spot.point.id}
          spot={spot}
          lit={lit.points.has(spot.point.id)}
          heightLit={spot.heightReading !== null && lit.readings.has(spot.heightReading)}
          grave={marked.points.get(spot.point.id) ?? marked.readings.get(spot.heightReading ?? '')}
        />
      ))}
    </>
  );
}

interface Props {
  spot: Spot;
  lit: boolean;
  heightLit: boolean;
  grave: 'stop' | 'doubt' | undefined;
}

function DrawnPoint({ spot, lit, heightLit, grave }: Props) {
  const { point, at, label, name, height, heightX, heightY, heightReading, measured, floats } = spot;
  return (
    <>
      <g data-on="point" data-id={point.id}>
        {grave && <circle class={`bench-ring ${grave}`} cx={at[0]} cy={at[1]} r={13} />}
        <circle
          class={`point ${floats ? 'floats' : measured ? 'sure' : ''} ${lit ? 'lit' : ''}`}
          cx={at[0]}
          cy={at[1]}
          r={lit || floats ? 8 : 5}
        />
        <circle class="bench-hit-spot" cx={at[0]} cy={at[1]} r={16} />
        <text class={`bench-name ${lit ? 'lit' : ''}`} x={name.x} y={name.y} text-anchor={name.anchor}>
          {label}
        </text>
      </g>
      {height !== null && heightReading !== null && (
        <text
          class={`bench-value ${heightLit ? 'lit' : ''}`}
          x={heightX}
          y={heightY}
          text-anchor={name.anchor}
          data-on="reading"
          data-id={heightReading}
        >
          {sayBench().plan.height(height)}
        </text>
      )}
    </>
  );
}
