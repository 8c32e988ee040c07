/** Questions that are the same for every piece. */
export const berth = {
  title: 'Where does the boat live?',
  help: 'A boat tied up in the water needs its cleats free.',
  choices: { water: 'In the water', lift: 'On a lift', trailer: 'On a trailer' },
};
