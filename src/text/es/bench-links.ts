import type * as english from '../en/bench-links.ts';

/** Asking somebody to measure, and handing a link over. */
export const benchLinks: typeof english.benchLinks = {
  begin: 'Pedir a un dueño que mida',
  title: 'Pedir a alguien que mida',
  how: 'Recibe un enlace y un código. Todo lo que escriba va dentro del enlace; nada llega a un servidor.',
  pieces: '¿Qué hay que medir?',
  noPiece: 'Elija al menos una pieza.',
  known: 'Lo que usted ya sabe',
  knownHelp: 'Lo que deje abierto se pregunta en el barco.',
  open: 'Se pregunta en el barco',
  measurer: '¿Quién mide?',
  measurers: { owner: 'El dueño del barco', installer: 'Nuestro instalador' },
  language: 'Idioma de quien mide',
  languages: { en: 'Inglés', es: 'Español' },
  shop: 'Su taller',
  contact: 'Cómo comunicarse con usted',
  contactHelp: 'Un número o una dirección; si son varios, con coma.',
  by: 'Su nombre',
  note: 'Una nota para quien mide',
  limits: 'Los ajustes de su taller van incluidos.',
  make: 'Hacer el enlace',
  notSaved: 'No se pudo guardar en el dispositivo, así que todavía no hay enlace.',
  asked: {
    title: 'Se pidió medir',
    waiting: 'Todavía no ha vuelto nada. El paquete que vuelva se une a este trabajo.',
    back: 'Ya volvió algo. El enlace sigue llevando al mismo trabajo.',
    notByLink: 'Este trabajo no se pidió con un enlace.',
    open: 'Abrir el trabajo',
    show: 'Enlace y código de este pedido',
  },
  again: {
    show: 'Enviarlo como enlace o código',
    hide: 'Ocultar enlace y código',
    how: 'Abre el trabajo en el teléfono con que se midió, en el primer paso que se pide.',
  },
  code: 'Código que lleva el enlace',
  codeHow: 'Apúntele con la cámara del teléfono.',
  fineCode: 'Este código es muy fino y no todos los teléfonos lo leen en una pantalla. Si no se lee, envíe el enlace.',
  noCode:
    'Este enlace es demasiado largo para un código que un teléfono pueda leer. Envíe el mensaje, o el archivo de paquete.',
  tooMuch: 'Esto es demasiado para un enlace. Envíe el archivo de paquete.',
  long: 'Este enlace es largo, y algunos programas cortan los enlaces así. Un enlace cortado se rechaza; en ese caso envíe el archivo de paquete.',
  reach: {
    'this-computer':
      'Esta página se abrió desde una dirección que solo conoce esta computadora. Abra la aplicación desde la dirección que usan sus clientes, y haga ahí el enlace.',
    'this-network':
      'Esta página se abrió desde una dirección de su propia red. El enlace sirve a los teléfonos de esa red, y en ningún otro lugar.',
  },
  message: 'Mensaje, listo para enviar',
  linkGone: 'El enlace ya no está en el mensaje.',
  share: 'Compartir',
  copy: 'Copiar el mensaje',
  copyLink: 'Copiar solo el enlace',
  outcomes: {
    copied: 'Mensaje copiado.',
    'link-copied': 'Enlace copiado.',
    shared: 'Entregado.',
    cancelled: 'No se envió.',
    failed: 'Aquí no se pudo compartir. Copie el mensaje.',
    'not-copied': 'Aquí no se permite copiar. Seleccione el mensaje y cópielo a mano.',
  },
  toMeasure: (m: { shop: string; contact: string; pieces: string; boat: string; address: string }) =>
    [
      `Hola. ${m.shop === '' ? 'Le pedimos' : `${m.shop} le pide`} que mida${m.boat === '' ? '' : ` ${m.boat}`}: ${m.pieces}.`,
      'Abra este enlace en el teléfono que va a llevar al barco, mientras tenga señal. Después funciona sin ella.',
      m.address,
      m.contact === '' ? '' : `¿Preguntas? ${m.contact}`,
    ]
      .filter(Boolean)
      .join('\n'),
  toAskAgain: (m: { job: string; names: string; address: string }) =>
    `${m.job}: por favor vuelva a mirar: ${m.names}. Abra este enlace en el teléfono con que se midió:\n${m.address}`,
};
