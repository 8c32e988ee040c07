/** Right and wrong beside each other, for each way of holding the tape. alt: what the picture shows, for who cannot see it. */
export const lessons = {
  heading: 'How to hold the tape',
  right: 'Right',
  wrong: 'Wrong',
  pairs: {
    taut: {
      right: 'Pulled tight, in the air',
      rightAlt: 'The tape runs in one straight line between the two marks.',
      wrong: 'Hanging down: the number comes out too long',
      wrongAlt: 'The tape sags between the two marks.',
    },
    mark: {
      right: 'Hook at the pen cross on your mark',
      rightAlt: 'The end of the tape sits on the cross drawn on the bit of masking tape.',
      wrong: 'Hook at the edge of the sticker',
      wrongAlt: 'The end of the tape sits at the outer edge of the bit of masking tape, away from the cross.',
    },
    centre: {
      right: 'To the middle of the eye or tube',
      rightAlt: 'The tape ends at the middle of a round fitting.',
      wrong: 'To its outside',
      wrongAlt: 'The tape ends at the outer side of the round fitting.',
    },
    square: {
      right: 'Square to the string, like the corner of a sheet of paper',
      rightAlt: 'The tape makes a square corner with the string.',
      wrong: 'Leaning: the number comes out too long',
      wrongAlt: 'The tape leans away from the string.',
    },
    surface: {
      right: 'Lying on the edge all the way, round every bend',
      rightAlt: 'The tape follows the curved edge and touches it everywhere.',
      wrong: 'Straight across the bend: too short',
      wrongAlt: 'The tape jumps from one end of the curve to the other.',
    },
    'one-end': {
      right: 'Hook stays at the start. Read one after the other',
      rightAlt: 'One tape lies from the first mark past all the others.',
      wrong: 'Hooked anew each time: small errors add up',
      wrongAlt: 'Short tapes lie one behind the other.',
    },
    free: {
      right: 'Nothing in the way of the tape',
      rightAlt: 'The tape passes clear of a post.',
      wrong: 'Bent round something: too long',
      wrongAlt: 'The tape bends round a post that stands in the way.',
    },
    zero: {
      right: 'Start at the very end: the hook',
      rightAlt: 'The hook at the end of the tape hangs on the edge of the sheet.',
      wrong: 'Started at the 1',
      wrongAlt: 'The mark 1 of the tape lies on the edge of the sheet and the hook sticks out beyond it.',
    },
    across: {
      right: 'Straight across, the shortest way',
      rightAlt: 'The tape goes across the part at a square corner.',
      wrong: 'Slanting: too long',
      wrongAlt: 'The tape goes across the part at a slant.',
    },
    lean: {
      right: 'The phone or gauge lies along the pole',
      rightAlt: 'A gauge lies flat along a leaning pole.',
      wrong: 'Touching at one corner only',
      wrongAlt: 'The gauge stands off the pole and touches it with one corner.',
    },
  },
  /** What of a point the hook goes to, by what the point is. */
  sides: {
    heading: 'Which side is which',
    facing: 'As you stand on the boat and face the bow (the front):',
    port: 'Port is on your left.',
    starboard: 'Starboard is on your right.',
    here: (labels: string, side: string) => `${labels}: ${side}.`,
    portSide: 'port side, on your left',
    starboardSide: 'starboard side, on your right',
    boatAlt: 'The boat seen from above, its bow at the top: port on the left, starboard on the right.',
  },
};
