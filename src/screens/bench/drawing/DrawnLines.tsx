import type { Flat } from '../../parts/drawing/project.ts';
import type { Lit } from '../state/lit.ts';
import { CHARACTER, type Label } from './labels.ts';
import type { Marked } from './marked.ts';
import type { Line, Scene } from './scene.ts';

const path = (points: readonly Flat[]): string => points.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');

interface Props {
  scene: Scene;
  lit: Lit;
  marked: Marked;
}

/** Edges, dimensions with their values, fasteners. What is selected comes last, so that nothing covers it. */
export function DrawnLines({ scene, lit, marked }: Props) {
  const isLit = ({ reading }: Line): boolean => lit.readings.has(reading.id);
  const ordered = [...scene.lines.filter((line) => !isLit(line)), ...scene.lines.filter(isLit)];
  return (
    <>
      {scene.boxes.map((box) => (
        <polygon key={path(box)} class="outline" points={path(box)} />
      ))}
      {scene.things.map(({ id, point, at, radius, clear }) => (
        <g key={id} data-on="point" data-id={point}>
          {clear > 0 && <circle class="thing-clear" cx={at[0]} cy={at[1]} r={radius + clear} />}
          <circle class={`thing ${lit.points.has(point) ? 'lit' : ''}`} cx={at[0]} cy={at[1]} r={radius} />
        </g>
      ))}
      {scene.uprights.map(([a, b]) => (
        <line key={path([a])} class="outline" x1={a[0]} y1={a[1]} x2={b[0]} y2={b[1]} />
      ))}
      {scene.edges.map(({ run, along }) => (
        <polyline
          key={run.id}
          class={`edge ${marked.runs.get(run.id) ?? ''} ${lit.runs.has(run.id) ? 'lit' : ''}`}
          points={path(along)}
          data-on="run"
          data-id={run.id}
        />
      ))}
      {ordered.map((line) => (
        <Dimension key={line.reading.id} line={line} lit={isLit(line)} grave={marked.readings.get(line.reading.id)} />
      ))}
      <Fasteners scene={scene} lit={lit} marked={marked} />
      {scene.labels.map((label) => (
        <Value key={label.id} label={label} lit={lit.readings.has(label.id)} />
      ))}
    </>
  );
}

/** A value on a ground of its own: a line showing between its figures would read as a dash. */
function Value({ label, lit }: { label: Label; lit: boolean }) {
  const { id, text, x, y, turn } = label;
  const width = text.length * CHARACTER;
  return (
    <g
      transform={`translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${turn.toFixed(1)})`}
      data-on="reading"
      data-id={id}
    >
      <rect class="bench-ground" x={-width / 2} y={-9} width={width} height={18} />
      <text class={`bench-value ${lit ? 'lit' : ''}`} dy="0.35em" text-anchor="middle">
        {text}
      </text>
    </g>
  );
}

/** A thin line, with a wide one over it that takes the tap. */
function Dimension({ line, lit, grave }: { line: Line; lit: boolean; grave: 'stop' | 'doubt' | undefined }) {
  const points = path(line.along);
  const { id } = line.reading;
  return (
    <g data-on="reading" data-id={id}>
      {(lit || !line.edge) && (
        <polyline
          class={`bench-line ${grave ?? (line.reading.value === null ? 'open' : '')} ${lit ? 'lit' : ''}`}
          points={points}
        />
      )}
      {!line.edge && <polyline class="bench-hit" points={points} />}
    </g>
  );
}

function Fasteners({ scene, lit, marked }: Props) {
  return (
    <>
      {scene.stations.map(({ station, at }) => {
        const isLit = lit.readings.has(station.reading);
        const grave = marked.readings.get(station.reading) ?? '';
        return (
          <g
            key={station.reading}
            data-on="reading"
            data-id={station.reading}
            transform={`translate(${at[0]} ${at[1]})`}
          >
            <circle class="bench-hit-spot" r={12} />
            <path
              class={`bench-fastener ${grave} ${isLit ? 'lit' : ''}`}
              d={isLit ? 'M-8-8L8 8M8-8L-8 8' : 'M-4-4L4 4M4-4L-4 4'}
            />
            {isLit && (
              <text class="bench-value lit" x={0} y={-14} text-anchor="middle">
                {station.number}
              </text>
            )}
          </g>
        );
      })}
    </>
  );
}
