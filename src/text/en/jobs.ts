/** Finding a job among many, and putting away what is done. */
export const jobs = {
  search: 'Find customer, boat or piece',
  searchShort: 'Find a job',
  order: 'In this order',
  orders: {
    latest: 'Latest first',
    need: 'To do first',
    customer: 'By customer',
    boat: 'By boat',
  },
  found: (found: number, all: number) =>
    found === 0
      ? 'No job with these words.'
      : found === all
        ? all === 1
          ? '1 job'
          : `${all} jobs`
        : `${found} of ${all} jobs`,
  away: (count: number) => `${count} more ${count === 1 ? 'is' : 'are'} put away.`,
  tidy: 'Put jobs away',
  showAway: (count: number) => `Show ${count} put away`,
  putAway: 'Put away',
  takeBack: 'Take back',
  notMoved: 'The device could not write that. The job is where it was.',
};
