export const details = {
  heading: 'Boat and customer',
  fields: {
    name: 'Name of the job',
    customer: 'Customer',
    contact: 'Contact',
    boat: 'Boat',
    place: 'Place',
    note: 'Note',
  },
  help: {
    name: '',
    customer: '',
    contact: 'Phone or mail, if you need it for this job.',
    boat: '',
    place: 'Where the boat lies.',
    note: 'Goes to the shop with the job.',
  },
  two: 'Two people wrote different things. Which one holds?',
  said: (value: string, who: string) => `${value || '(nothing)'} · ${who}`,
  withdraw: 'Withdraw a person’s details for good',
};
