/** Asking somebody to measure, and handing a link over. */
export const benchLinks = {
  begin: 'Ask an owner to measure',
  title: 'Ask somebody to measure',
  how: 'You get a link and a code. Everything you fill in travels inside the link; nothing goes to a server.',
  pieces: 'What is to be measured?',
  noPiece: 'Choose at least one piece.',
  known: 'What you know already',
  knownHelp: 'What you leave open is asked at the boat.',
  open: 'Asked at the boat',
  measurer: 'Who measures?',
  measurers: { owner: 'The owner of the boat', installer: 'Our installer' },
  language: 'Language of the measurer',
  languages: { en: 'English', es: 'Spanish' },
  shop: 'Your shop',
  contact: 'How to reach you',
  contactHelp: 'A number or an address, several with a comma between.',
  by: 'Your name',
  note: 'A note for them',
  limits: 'Your shop settings go along.',
  make: 'Make the link',
  notSaved: 'This could not be written to the device, so there is no link yet.',
  asked: {
    title: 'Asked to measure',
    waiting: 'Nothing has come back yet. The packet that comes back joins this job.',
    back: 'Something has come back already. The link still leads to the same job.',
    notByLink: 'This job was not asked for by a link.',
    open: 'Open the job',
    show: 'Link and code for this request',
  },
  again: {
    show: 'Send it as a link or a code',
    hide: 'Hide link and code',
    how: 'Opens the job on the phone that measured it, at the first step asked for.',
  },
  code: 'Code that holds the link',
  codeHow: 'Point the camera of the phone at it.',
  fineCode:
    'This code is very fine, and not every phone can read it off a screen. Where it does not, send the link instead.',
  noCode: 'This link is too long for a code that a phone can read. Send the message, or the packet file.',
  tooMuch: 'This is too much for a link. Send the packet file instead.',
  long: 'This link is long, and some programs cut such links off. A link that was cut off is refused; then send the packet file.',
  reach: {
    'this-computer':
      'This page was opened from an address that only this computer knows. Open the app from the address your customers use, and make the link there.',
    'this-network':
      'This page was opened from an address of your own network. The link works for phones in it, and nowhere else.',
  },
  message: 'Message, ready to send',
  linkGone: 'The link is not in the message any more.',
  share: 'Share',
  copy: 'Copy the message',
  copyLink: 'Copy the link only',
  outcomes: {
    copied: 'Message copied.',
    'link-copied': 'Link copied.',
    shared: 'Handed over.',
    cancelled: 'Not sent.',
    failed: 'Sharing did not work here. Copy the message instead.',
    'not-copied': 'Copying is not allowed here. Select the message and copy it by hand.',
  },
  toMeasure: (m: { shop: string; contact: string; pieces: string; boat: string; address: string }) =>
    [
      `Hello! ${m.shop === '' ? 'We ask' : `${m.shop} asks`} you to measure${m.boat === '' ? '' : ` ${m.boat}`}: ${m.pieces}.`,
      'Open this link on the phone you take to the boat, while it has a network. After that it works without one.',
      m.address,
      m.contact === '' ? '' : `Questions? ${m.contact}`,
    ]
      .filter(Boolean)
      .join('\n'),
  toAskAgain: (m: { job: string; names: string; address: string }) =>
    `${m.job}: please look again at ${m.names}. Open this link on the phone that measured it:\n${m.address}`,
};
