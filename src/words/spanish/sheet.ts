import type { sheet as english } from '../english/sheet'
import type { Texts } from '../texts'

export const sheet: Texts<typeof english> = {
  grid: {
    title: 'Lecturas',
    depthHead: 'Profundidad',
    depthUnit: 'mm bajo la cara superior',
    axisHead: (degrees) => degrees,
    axisSides: { frontRear: 'delante–detrás', rightLeft: 'derecha–izquierda' },
    meanHead: 'Media',
    ovalityHead: 'Ovalización',
    station: (place) => `Punto de medida en ${place}`,
    stationRead: (place, figure, mark) => `${place}: ${figure}, ${mark}`,
    stationSizeless: (place, typed) => `${place}: ${typed} en el comparador, sin medida todavía`,
    stationEmpty: (place) => `${place}: ninguna lectura`,
    stationBlocked: (place, by) => `${place}: ninguna lectura; estorba: ${by}`,
    withQuestion: (station) => `${station}, con una pregunta`,
    questionAt: (place) => `Pregunta sobre ${place}`,
    keys: 'Las flechas van de celda en celda, con Mayús eligen varias. Supr las borra; copiar, cortar y pegar van a una hoja de cálculo y desde ella.',
    headIn: (head, unit) => `${head}, ${unit}`,
    stationOutOfReach: (place) => `${place}: ninguna lectura, fuera de alcance`,
    outOfReach: 'fuera de alcance',
    repeats: (count) => `${count} ×`,
    spread: (microns) => `varía ${microns}`,
    blockedBy: (by) => by,
    land: 'sin segmentos',
    addLevel: 'Añadir un nivel',
    addAxis: 'Añadir un eje',
    newLevel: 'Profundidad del nuevo nivel, mm',
    newAxis: 'Dirección del nuevo eje, grados',
    editLevel: (depth) => `Cambiar el nivel a ${depth}`,
    editAxis: (axis) => `Cambiar el eje a ${axis}`,
    removeLevel: (depth) => `Quitar el nivel a ${depth}`,
    removeAxis: (axis) => `Quitar el eje a ${axis}`,
    removeLevelAsk: (depth, readings) =>
      readings === 1
        ? `El nivel a ${depth} tiene una lectura. ¿Quitar los dos? Se puede deshacer.`
        : `El nivel a ${depth} tiene ${readings} lecturas. ¿Quitarlas con él? Se puede deshacer.`,
    removeAxisAsk: (axis, readings) =>
      readings === 1
        ? `El eje a ${axis} tiene una lectura. ¿Quitar los dos? Se puede deshacer.`
        : `El eje a ${axis} tiene ${readings} lecturas. ¿Quitarlas con él? Se puede deshacer.`,
    remove: 'Quitar',
    levelThere: (depth) => `Ya hay un nivel a ${depth}.`,
    axisThere: (axis) => `Ya hay un eje a ${axis}.`,
    axisTwice: (axis, same) =>
      `Un eje a ${axis} es el mismo que el de ${same}: introdúzcalo por debajo de 180°.`,
    noLevels: 'Introduzca las profundidades a las que mide.',
    tooDeep: (length) => `El cilindro tiene ${length} de largo.`,
  },
  next: {
    label: 'Siguiente lectura',
    next: (place) => `Siguiente: ${place}`,
    correcting: (place) => `Corrigiendo ${place}`,
    repeat: (number, all) => `lectura ${number} de ${all}`,
    inBore: (bore, place) => `${bore}, ${place}`,
    order: 'Leer',
    orderLabel: 'Orden para leer varios cilindros',
    orders: { 'bore-by-bore': 'cilindro por cilindro', 'level-by-level': 'nivel por nivel' },
    repeatsPerStation: 'Lecturas por punto de medida',
    allRead: 'Todos los puntos de medida al alcance están leídos.',
    sizeField: 'Medida, mm',
    deviationField: 'Desviación del comparador, µm',
    inchSizeField: 'Medida, in',
    inchDeviationField: 'Desviación del comparador, 0,0001 in',
    take: 'Introducir',
    back: 'Atrás',
    skip: 'Saltar',
    cannotReach: 'No llego',
    inReach: 'Está al alcance',
    again: 'Otra vez',
    clear: 'Borrar',
    sign: '±',
    same: (figure) => `= ${figure}`,
    noSizeYet: 'Tendrá una medida en cuanto el instrumento se mida sobre sus palpadores.',
    asDeviation: (microns) => `= ${microns} respecto al ajuste`,
    direction: {
      clockwise: 'Aguja pasado el cero en sentido horario: mayor. Escríbalo con +.',
      anticlockwise:
        'Aguja pasado el cero en sentido antihorario: mayor. Escriba el comparador como está, sentido horario +.',
      unknown:
        'No está anotado en qué sentido es mayor: se toma el horario, y el dictamen queda provisional.',
    },
    farFromSetting: (found, setting) =>
      `${found} está lejos del ajuste de ${setting}. Corrija el número, o la medida en el montaje de arriba.`,
    farFromTaken: (found, taken) =>
      `${found} está lejos de ${taken}, que solo se toma hasta que se anote la medida de ajuste. Corrija el número, o anótela en el montaje.`,
    settingFirst:
      'Anote antes en el montaje a qué medida se ajustó el instrumento: sin ella el comparador no da ninguna medida.',
    severalHint: 'Varias lecturas de un punto de medida: escríbalas con espacios entre ellas.',
    noStation:
      'Todos los puntos de medida al alcance están leídos. Elija el punto al que pertenece este número.',
    notTaken: (typed, place) => (place === '' ? `No tomado: ${typed}` : `No tomado en ${place}: ${typed}`),
    putBack: (typed) => `Devolver ${typed}`,
    putBackShort: 'Devolver',
    forget: (typed) => `Dejarlo ir: ${typed}`,
    forgetShort: 'Dejarlo ir',
    taken: (place, figure) => `${place}: ${figure} introducido`,
    deepAcross: (depth, axis) => `${depth} de profundidad, eje ${axis}`,
  },
  questions: {
    title: 'Preguntas sobre lecturas',
    blocked: (place, by) =>
      `En ${place} un palpador caería en: ${by}. ¿Se apoyaban los dos palpadores en metal?`,
    belowNew: (place) =>
      `En ${place} el cilindro es menor que la medida mínima de origen. ¿Son correctos la lectura, la clase y el límite?`,
    settingTaken: (size) =>
      `¿A qué medida se ajustó el instrumento? Hasta que se anote en el montaje se toma ${size}, como en todo trabajo nuevo.`,
    roughSizeTaken: (size) =>
      `¿Qué tamaño tiene el cilindro, más o menos? Hasta que se anote en el montaje se toma ${size}, como en todo trabajo nuevo.`,
    itIs: (size) => `Es ${size}`,
    soakedApart: (bore, standard, reference) =>
      `¿El cilindro a ${bore}, el ${standard} a ${reference}, y sin embargo estuvieron juntos hasta igualarse? ¿Cuál es lo correcto?`,
    bothAt: (temperature) => `Los dos ${temperature}`,
    notYetEqual: 'Aún no igualados',
    farOff: (place, from) => `La lectura en ${place} está a ${from} del ajuste. ¿Es correcta?`,
    spread: (place, spread) =>
      `Las repeticiones en ${place} difieren en ${spread}. Limpie la pared y mida otra vez, o quite una.`,
    itIsRight: 'Es correcta',
    takeItOut: 'Quitarla',
    mend: 'Corregir',
    confirmed: 'confirmada',
    keptOut: 'conservada, en ningún dictamen hasta que usted diga que es correcta',
  },
  marks: {
    inside: 'dentro',
    above: 'por encima',
    below: 'por debajo',
    'too-close': 'demasiado justo',
    blocked: '¿lumbrera?',
    none: 'sin límite',
  },
  marksSpoken: {
    inside: 'dentro de los límites',
    above: 'por encima del límite',
    below: 'por debajo del límite',
    'too-close': 'demasiado justo para decidir',
    blocked: 'en una lumbrera, en ningún dictamen',
    none: 'sin dictamen',
  },
}
