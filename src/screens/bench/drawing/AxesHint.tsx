import { seenTurned, type Turn } from '../../../core/geometry/index.ts';
import { sayBench } from '../../../text/bench.ts';

/** px */
const ARM = 34;
const NAME = 48;
/** An arm that points nearly at the eye, or away from it, goes without a name. */
const SEEN = 0.4;
/** px a name takes across and down. */
const WIDE = 34;
const HIGH = 16;

/** Which way the bow, port and up lie while the piece is turned, in the corner. */
export function AxesHint({ turn, height }: { turn: Turn; height: number }) {
  const { bow, port, up } = sayBench().plan.axes;
  const arms = [
    armOf(bow, seenTurned(turn, [1, 0, 0])),
    armOf(port, seenTurned(turn, [0, 1, 0])),
    armOf(up, seenTurned(turn, [0, 0, 1])),
  ];
  const named = withRoom(arms);
  return (
    <g class="bench-axes" transform={`translate(64 ${height - 62})`} data-testid="axes">
      {arms.map((arm) => (
        <g key={arm.name}>
          <line x2={arm.right * ARM} y2={-arm.above * ARM} />
          {named.includes(arm) && (
            <text x={arm.right * NAME} y={-arm.above * NAME + 5} text-anchor="middle">
              {arm.name}
            </text>
          )}
        </g>
      ))}
    </g>
  );
}

interface Arm {
  name: string;
  right: number;
  above: number;
  seen: number;
}

const armOf = (name: string, [right, above]: readonly [number, number, number]): Arm => ({
  name,
  right,
  above,
  seen: Math.hypot(right, above),
});

/** Arms that can be named without one name standing on another, the longest first. */
function withRoom(arms: readonly Arm[]): Arm[] {
  const named: Arm[] = [];
  for (const arm of [...arms].sort((a, b) => b.seen - a.seen)) {
    const free = named.every(
      (other) => Math.abs(other.right - arm.right) * NAME > WIDE || Math.abs(other.above - arm.above) * NAME > HIGH,
    );
    if (free && arm.seen > SEEN) named.push(arm);
  }
  return named;
}
