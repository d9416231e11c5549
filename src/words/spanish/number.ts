import type { number as english } from '../english/number'
import type { Texts } from '../texts'

export const number: Texts<typeof english> = {
  number: {
    refused: {
      empty: 'Introduzca un número.',
      letters: 'Introduzca solo el número, sin unidad ni letras: 54,032 o 54.032.',
      'other-sign': 'Contiene un signo que no es propio de un número. Escríbalo así: 54,032 o 54.032.',
      'inner-space': 'Hay un espacio dentro del número. Quítelo.',
      'sign-place': 'Ponga un solo signo, + o −, delante del número.',
      'both-marks':
        'Una coma y un punto juntos se pueden leer de dos maneras. Use solo uno de ellos, y solo para los decimales: 54,032 o 54.032.',
      'several-marks': 'Hay más de una coma o un punto. Use solo uno, y solo para los decimales.',
      'too-long': 'Son más cifras de las que lee ningún instrumento. Redondee el número.',
      'too-large': 'Ese número es demasiado grande para algo que se mida aquí.',
    },
    outOfRange: (found, least, most) => `${found} queda fuera de ${least} a ${most}.`,
    waits: {
      low: (low, high) =>
        `${low} es más que ${high}, el otro extremo. El valor espera aquí y contará en cuanto se introduzca también el otro.`,
      high: (high, low) =>
        `${high} es menos que ${low}, el otro extremo. El valor espera aquí y contará en cuanto se introduzca también el otro.`,
      same: 'Los dos extremos son ahora el mismo lugar. El valor espera aquí y contará en cuanto se introduzca también el otro.',
      alone: 'El valor espera aquí y contará en cuanto se introduzca también el otro extremo.',
      fits: 'Todavía no cuenta. Pulse Intro aquí para que cuente.',
    },
    wholeOnly: 'Introduzca un número entero.',
    chances: (of, all) => `en ${of} de cada ${all} casos`,
    moreThan: (of, all) => `en más de ${of} de cada ${all} casos`,
    fewerThan: (all) => `en menos de 1 de cada ${all} casos`,
    aboutEven: 'en cerca de la mitad de los casos',
    months: [
      'enero',
      'febrero',
      'marzo',
      'abril',
      'mayo',
      'junio',
      'julio',
      'agosto',
      'septiembre',
      'octubre',
      'noviembre',
      'diciembre',
    ],
    day: (day, month, year) => `${day} de ${month} de ${year}`,
    range: (value, low, high) => `${value} (de ${low} a ${high})`,
  },
}
