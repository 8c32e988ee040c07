import type { Caution } from '../../core/guide/index.ts';
import type * as english from '../en/cautions.ts';

export const cautions: typeof english.cautions = {
  heading: 'Cuidado',
  understood: 'Entendido',
  texts: {
    'engine-off': 'Motor apagado y corriente del muelle bajo control antes de que alguien suba o camine por el barco.',
    footing:
      'De pie en la regala (borda), en la cubierta de proa o en un muelle mojado es como la gente se cae. Una mano para sujetarse, alguien con usted y chaleco salvavidas cerca del agua.',
    drilling:
      'Antes de cualquier perforación: desconecte las baterías y la corriente del muelle, averigüe qué hay debajo (cables, combustible, agua, tanques, núcleo de espuma) y selle el agujero después. El trabajo estructural es para un astillero calificado.',
    'carbon-monoxide':
      'Los gases de escape bajo la lona pueden matar en minutos. Nunca haga funcionar un motor o generador con una funda o un cerramiento cerrado. Tenga una alarma de monóxido de carbono que funcione. Nada de calefactor, cocina ni parrilla bajo la lona.',
    recoil:
      'Los cabos, las varas y los elásticos tensos saltan al soltarse. Mantenga la cara fuera de su línea y suelte despacio. Baje los toldos con viento fuerte, a velocidad y antes de una tormenta eléctrica.',
    'lights-and-view': 'La lona no debe tapar las luces de navegación, la vista desde el timón ni una salida.',
    loads:
      'Las varas de un toldo tiran mucho. Los portacañas que las sostienen van con pernos pasantes y contraplacas. Toda carga o medida que se diga aquí es un consejo: deciden las normas locales y un profesional con licencia.',
    tow: 'Al remolcar, nada suelto en el barco ni nada que pueda soltarse: correas todo alrededor, varas abajo; pare y revise después de la primera milla (un kilómetro y medio).',
  } satisfies Record<Caution, string>,
};
