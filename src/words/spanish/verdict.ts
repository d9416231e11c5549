import type { verdict as english } from '../english/verdict'
import type { Texts } from '../texts'

export const verdict: Texts<typeof english> = {
  verdict: {
    none: {
      'no-readings': 'Todavía no hay lecturas.',
      'no-size-over-contacts':
        'Todavía no hay medidas: el instrumento se puso a cero en el cilindro y falta medirlo sobre sus palpadores.',
      'no-limits': 'Ningún dictamen sobre la medida: no hay límites introducidos.',
      'all-blocked':
        'Ningún dictamen: todas las lecturas están en una lumbrera o una banda y esperan su palabra.',
    },
    where: {
      worst: (count, all, place) =>
        count === all
          ? `los ${all} puntos de medida, sobre todo en ${place}`
          : `${count} de ${all} puntos de medida, sobre todo en ${place}`,
    },
    inside: {
      wear: 'Dentro del límite de desgaste.',
      band: 'Dentro de los límites de origen.',
      grade: (grade) => `Dentro de los límites de la clase ${grade}.`,
    },
    above: {
      wear: (where) => `Por encima del límite de desgaste en ${where}.`,
      band: (where) => `Por encima de la medida máxima de origen en ${where}.`,
      grade: (where, grade) => `Por encima de la medida máxima de la clase ${grade} en ${where}.`,
    },
    below: {
      band: (where) => `Por debajo de la medida mínima de origen en ${where}.`,
      grade: (where, grade) => `Por debajo de la medida mínima de la clase ${grade} en ${where}.`,
    },
    tooClose: (where) => `Demasiado justo para decidir en ${where}.`,
    tooCloseAbove: {
      wear: (count, all) =>
        `Demasiado justo para decidir: ${countOf(count, all)} por encima del límite de desgaste.`,
      band: (count, all) =>
        `Demasiado justo para decidir: ${countOf(count, all)} por encima de la medida máxima de origen.`,
      grade: (count, all, grade) =>
        `Demasiado justo para decidir: ${countOf(count, all)} por encima de la medida máxima de la clase ${grade}.`,
    },
    tooCloseBelow: {
      band: (count, all) =>
        `Demasiado justo para decidir: ${countOf(count, all)} por debajo de la medida mínima de origen.`,
      grade: (count, all, grade) =>
        `Demasiado justo para decidir: ${countOf(count, all)} por debajo de la medida mínima de la clase ${grade}.`,
    },
    shape: {
      ovality: {
        above: 'La ovalización está por encima de su límite.',
        'too-close': 'La ovalización es demasiado justa para decidir.',
        unknown: 'La ovalización no se pudo evaluar.',
      },
      taper: {
        above: 'La conicidad está por encima de su límite.',
        'too-close': 'La conicidad es demasiado justa para decidir.',
        unknown: 'La conicidad no se pudo evaluar.',
      },
      both: {
        above: 'La ovalización y la conicidad están por encima de sus límites.',
        'too-close': 'La ovalización y la conicidad son demasiado justas para decidir.',
        unknown: 'La ovalización y la conicidad no se pudieron evaluar.',
      },
    },
    lean: {
      inside: (chances) => `Con estas lecturas está dentro ${chances}.`,
      above: (chances) => `Con estas lecturas está por encima ${chances}.`,
      below: (chances) => `Con estas lecturas está por debajo ${chances}.`,
      even: 'Que esté dentro o no es más o menos igual de probable.',
    },
    leanAt: {
      inside: (place, chances) => `En ${place}, con estas lecturas, está dentro ${chances}.`,
      above: (place, chances) => `En ${place}, con estas lecturas, está por encima ${chances}.`,
      below: (place, chances) => `En ${place}, con estas lecturas, está por debajo ${chances}.`,
      even: (place) => `En ${place}, que esté dentro o no es más o menos igual de probable.`,
    },
    alone: (place, chances, stations) =>
      `Por sí solo, ${place} está fuera, con estas lecturas ${chances}. La más extrema de ${stations} lecturas suele ser solo la de peor suerte, así que demostrarlo del cilindro pide más.`,
    sure: {
      inside: (place, chances) =>
        `Lo más cerca de estar fuera está en ${place}: con estas lecturas está dentro ${chances}.`,
      above: (place, chances) => `En ${place}, con estas lecturas, está por encima ${chances}.`,
      below: (place, chances) => `En ${place}, con estas lecturas, está por debajo ${chances}.`,
    },
    settle: (doubt) => `Una lectura exacta hasta ${doubt} lo resolvería, si no cambia.`,
    settleAt: (place, doubt) => `En ${place}, una lectura exacta hasta ${doubt} lo resolvería, si no cambia.`,
    settledByNone: 'Está tan cerca del límite que ningún instrumento para cilindros lo resolvería.',
    provisional: {
      'no-setting-size': 'Provisional: no se anotó a qué medida se ajustó el instrumento.',
      'no-opening-zero': 'Provisional: no se anotó el cero inicial.',
      'no-closing-zero': 'Provisional: no se anotó el cero final.',
      'no-bore-temperature': 'Provisional: no se anotó la temperatura del cilindro.',
      'no-reference-temperature': 'Provisional: no se anotó la temperatura del anillo o micrómetro.',
      'no-micrometer-check':
        'Provisional: no se anotó ninguna comprobación del micrómetro sobre su propio patrón.',
      'no-direction-test':
        'Provisional: no se anotó ninguna prueba del sentido de la aguja, y se toma que en sentido horario es mayor. Si no lo es, todas las cifras están como en un espejo.',
      'no-wall-kind': 'Provisional: no se anotó el tipo de pared.',
      'no-dial-over-contacts':
        'Provisional: no se anotó la lectura del comparador mientras el micrómetro sujetaba el instrumento, y se toma 0.',
    },
    provisionalSeveral: (missing) => `Provisional. No anotado: ${missing.join(', ')}.`,
    missing: {
      'no-setting-size': 'medida a la que se ajustó el instrumento',
      'no-opening-zero': 'cero inicial',
      'no-closing-zero': 'cero final',
      'no-bore-temperature': 'temperatura del cilindro',
      'no-reference-temperature': 'temperatura del anillo o micrómetro',
      'no-micrometer-check': 'comprobación del micrómetro sobre su propio patrón',
      'no-direction-test': 'prueba del sentido de la aguja (se toma que en sentido horario es mayor)',
      'no-wall-kind': 'tipo de pared',
      'no-dial-over-contacts': 'comparador mientras el micrómetro sujetaba el instrumento (se toma 0)',
    },
    contactChanged:
      'Provisional: se cambió un palpador del instrumento después de su ajuste, así que todas las medidas pueden estar mal. Ajústelo de nuevo y mida otra vez.',
    aboutMeanOnly:
      'Provisional: tres palpadores leen la media de un nivel, y el dictamen vale solo para esa media.',
    assumed: 'En su lugar hay valores supuestos, y su incertidumbre está en cada ±.',
    about: (stations) =>
      stations === 1
        ? 'Esto vale para el único punto medido, no para el resto de la pared.'
        : `Esto vale para los ${stations} puntos medidos, no para la pared entre ellos.`,
    comparison: (smallest, largest, stations) =>
      stations === 1
        ? `Para comparar: ${smallest} en un punto de medida.`
        : `Para comparar: de ${smallest} a ${largest} en ${stations} puntos de medida.`,
    comparisonNone: 'Para comparar: todavía no hay lecturas.',
    comparisonBlocked:
      'Para comparar: todas las lecturas están en una lumbrera o una banda y esperan su palabra.',
  },
}

function countOf(count: number, all: number): string {
  if (all === 1) return 'el único punto de medida está'
  return count === 1
    ? `uno de los ${all} puntos de medida está`
    : `${count} de los ${all} puntos de medida están`
}
