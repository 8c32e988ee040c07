/** Media types and endings under which the system may hand a packet to the app. */
export const PACKET_FILE_TYPES: Record<string, string[]> = {
  'application/json': ['.json'],
  'text/plain': ['.json.txt', '.txt'],
  'text/csv': ['.csv'],
};
