import type { hours as english } from '../english/hours'
import type { Texts } from '../texts'

export const hours: Texts<typeof english> = {
  hours: {
    title: (place) => `Medida según las horas de funcionamiento en ${place}`,
    station: 'Punto de medida',
    stations: { first: (place) => `${place}, el primero en llegar a su límite`, other: (place) => place },
    list: (place) =>
      `Mediciones y horas en ${place}. Las flechas izquierda y derecha van de una a la siguiente.`,
    point: 'Mostrar su medida según las horas',
    unit: 'h de funcionamiento',
    lastSurvey: 'última medición',
    none: {
      'no-readings': 'Esta vista aparece con la primera lectura de un instrumento.',
      'no-limit':
        'Sin un límite no hay recta que llegue a él: introduzca un límite de desgaste o una medida máxima.',
      'no-hours': 'Esta vista necesita las horas de funcionamiento de la última medición.',
      'nothing-to-count-from':
        'Esta vista necesita una medición anterior con sus horas, una zona sin segmentos o las medidas de origen desde las que contar.',
      'never-ran': 'Este cilindro no ha funcionado nunca: todavía no hay nada que mostrar según las horas.',
      'not-of-this-engine': 'Un cilindro para comparar no tiene horas de este motor.',
    },
    labels: {
      limit: (size) => `límite ${size}`,
      'next-check': (at) => `próxima revisión ${at}`,
      earliest: (at) => `lo más pronto ${at}`,
      expected: (at) => `según la recta ${at}`,
      'last-two-expected': (at) => `según las dos últimas ${at}`,
      latest: (at) => `lo más tarde ${at}`,
    },
    short: {
      'next-check': 'revisión',
      earliest: 'más pronto',
      expected: 'recta',
      'last-two-expected': 'dos últimas',
      latest: 'más tarde',
    },
    at: (hours) => `${hours} h`,
    reading: (survey, hours, size) => `${survey}, ${hours}: ${size}`,
    survey: (number) => `Medición ${number}`,
    surveyOn: (number, day) => `Medición ${number} del ${day}`,
    taken: {
      land: (size) => `A cero horas: ${size}, la pared que los segmentos nunca tocan`,
      'new-band': (size) => `A cero horas: ${size}, la medida mínima de origen`,
      surveys: (size) => `A cero horas: ${size}`,
    },
    marks: {
      'next-check': (hours) => `${hours}: próxima revisión`,
      earliest: (hours) => `${hours}: lo más pronto que llega a su límite`,
      expected: (hours) => `${hours}: la recta llega al límite`,
      'last-two-expected': (hours) => `${hours}: la recta de las dos últimas mediciones llega al límite`,
      latest: (hours) => `${hours}: lo más tarde que llega a su límite`,
    },
    sentences: {
      now: 'Ya en su límite, hasta donde sus lecturas pueden decir.',
      shrunk: 'Ha encogido más allá de su ±: mida otra vez antes de dar horas.',
      earliest: (hours, limit) => `Llega a ${limit} como más pronto a las ${hours} h.`,
      expected: (hours) => `Según la recta, a las ${hours} h.`,
      lastTwo: (hours) => `Según las dos últimas mediciones, a las ${hours} h.`,
      latest: (hours) => `A más tardar a las ${hours} h.`,
      uncertain: 'El aumento no destaca de su incertidumbre, así que solo se da lo más pronto.',
      changed:
        'Un solo ritmo de desgaste no encaja con todas las mediciones: se dibujan las dos rectas, y cuenta la cota más temprana.',
      check: (hours) => `Próxima revisión a más tardar a las ${hours} h.`,
      key: 'Discos: lecturas; barras: su ± U (95 %). Sombreado: donde puede estar la recta, cada lado por sí solo en 19 de cada 20 casos.',
      ahead: 'Discontinuo después de la última medición: si sigue desgastándose como hasta ahora.',
      alone: 'Dibujado con una sola medición: el rodaje va incluido.',
    },
  },
}
