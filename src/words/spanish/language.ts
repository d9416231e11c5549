import type { language as english } from '../english/language'
import type { Texts } from '../texts'

export const language: Texts<typeof english> = {
  language: {
    locale: 'es-ES',
    decimalMark: ',',
    menu: 'Idioma (Language)',
    title: 'Idioma',
    lead: 'Se guarda solo en este equipo. La página se carga de nuevo; todo lo introducido se conserva.',
    unreviewed: 'todavía no revisado por nadie que lo hable',
    waiting:
      'Parte de lo escrito aún no se ha tomado y se perdería. Tómelo o vacíe su campo, y elija el idioma otra vez.',
    notSaved:
      'No se pudo guardar el trabajo, y para otro idioma la página se debe cargar de nuevo. Guárdelo antes en un archivo.',
    notKept:
      'Este navegador no guarda nada en este equipo, así que la elección de un idioma se perdería enseguida.',
  },
  lengths: {
    mm: 'Escribir longitudes en mm',
    inch: 'Escribir longitudes en pulgadas',
    change: 'unidad de longitud',
  },
}
