import type { crossedStudy as english } from '../english/crossed-study'
import type { Texts } from '../texts'

export const crossedStudy: Texts<typeof english> = {
  heading: 'Estudios de instrumentos con varias personas',
  help: 'Haga que dos o tres personas lean cada una de cinco a diez piezas (cilindros, o lugares marcados en ellos) dos o tres veces, en orden mezclado y sin que nadie vea lo que leyó otro. Una línea por cada persona y pieza: persona, pieza, y después las lecturas. Se puede pegar una tabla tal como está en una hoja de cálculo, también con una línea por lectura: persona, pieza, qué lectura es, lectura.',
  another: 'Otro estudio, {writtenAs}:',
  writtenAs: (gauge) => `Qué son las lecturas del estudio: ${gauge}`,
  field: (gauge) => `Tabla de un estudio: ${gauge}`,
  again: (gauge, number) => `Tabla del estudio ${number}: ${gauge}`,
  date: (gauge, number) => `Día del estudio ${number}, año-mes-día: ${gauge}`,
  made: 'Hecho el {date}, {unit}:',
  add: 'Guardar este estudio',
  remove: (gauge, number) => `Quitar el estudio ${number}: ${gauge}`,
  between: '; ',
  refused: {
    line: (line, why) => `Línea ${line}: ${why}`,
    short: 'Hace falta una persona, una pieza y al menos una lectura.',
    unnamed: 'La persona o la pieza no tiene nombre.',
    piece: (piece, why) => `«${piece}»: ${why}`,
    empty: 'Introduzca en cada línea una persona, una pieza y lecturas.',
    'too-large': 'Es más de lo que cabe en un estudio.',
    'commas-only':
      'Las comas se pueden leer de dos maneras. Ponga punto y coma o tabuladores entre las celdas, o puntos delante de los decimales.',
    'quote-left-open': 'Hay unas comillas sin cerrar.',
  },
  wanting: {
    'no-readings': 'No contiene lecturas.',
    'one-part': 'Hacen falta al menos dos piezas; a partir de cinco dice algo.',
    'one-trial': 'Cada pieza se leyó una vez. Hacen falta dos lecturas o más de cada pieza por cada persona.',
    'too-many': (readings, most) =>
      `Tiene ${readings} lecturas. Se puede calcular un estudio de hasta ${most}.`,
    uneven: (person, part, found, usual) =>
      `${person}, pieza ${part}: ${readingsOf(found)}, donde la mayoría tiene ${usual}. No se calcula nada hasta que cada persona haya leído cada pieza las mismas veces.`,
    others: (others) => (others === 1 ? 'Pasa en un lugar más.' : `Pasa en ${others} lugares más.`),
  },
  read: (people, parts, trials) =>
    `${people === 1 ? 'Una persona leyó' : `${people} personas leyeron`} ${parts} piezas ${times(trials)} cada una.`,
  heads: {
    part: 'Dispersión',
    deviation: 'desviación típica',
    between: 'está entre',
    share: 'proporción',
  },
  rows: {
    gauge: 'el instrumento: repeticiones de una persona',
    people: 'las personas: una lee más alto que otra',
    peopleByPart: 'personas según la pieza: no en todas las piezas igual',
    gaugeAndPeople: 'instrumento y personas juntos',
    parts: 'las piezas',
    all: 'todas las lecturas',
  },
  interval: (low, high) => `de ${low} a ${high}`,
  rowText: (name, amount, interval, share) => `${name}: ${amount}, intervalo ${interval}, ${share}`,
  doubt:
    'Cada una está dentro de su intervalo en 95 de cada 100 estudios así, según el análisis de la varianza; pocas personas dejan ancho el de las personas. Las proporciones son de la desviación típica de todas las lecturas: al cuadrado, las de instrumento y personas juntos y la de las piezas suman el total.',
  pooled: (chance) =>
    `Que una persona lea más alto que otra no depende de la pieza, hasta donde esto muestra: otro tanto saldría por azar en ${chance} de estos estudios. A partir del 25 % eso se cuenta con el instrumento.`,
  apart: (chance) =>
    `Que una persona lea más alto que otra depende de la pieza: otro tanto saldría por azar en ${chance} de estos estudios. Por debajo del 25 % eso queda aparte.`,
  underOne: 'menos del 1 %',
  tells: (count, low, high) =>
    `En estas manos el instrumento distingue ${count} medidas de estas piezas (de ${low} a ${high}, según los extremos de los intervalos). Lo que se suele pedir son cinco o más.`,
  tellsNone: (low, high) =>
    `En estas manos el instrumento no puede distinguir estas piezas (entre ${low} y ${high} medidas, según los extremos de los intervalos). Lo que se suele pedir son cinco o más.`,
  byRanges: ({ gauge, people, both, share, parts }) =>
    `Por medias y recorridos, el método antiguo: el instrumento ${gauge}, las personas ${people}, ambos juntos ${both} (${share}), las piezas ${parts}.`,
  rangesTell: (count, differs) =>
    `Por ese método distingue ${differs ? '' : 'también '}${count === 1 ? '1 medida' : `${count} medidas`}${differs ? '. Los dos métodos pesan las mismas lecturas de otra manera y no tienen por qué coincidir; ninguno está mal' : ''}. No tiene intervalo propio: sus cifras no se conocen mejor que las de arriba.`,
  share: (six, share, band) =>
    `Seis desviaciones típicas de una lectura de cualquiera de estas personas, ${six}, son el ${share} del margen de ${band} entre la medida mínima y la máxima de origen.`,
  good: (bore, repeats, doubt) =>
    `En manos de cualquiera de ellas, un punto de medida del cilindro ${bore}, leído ${times(repeats)}, es exacto hasta ${doubt}, contando todo lo demás de su montaje.`,
}

function times(count: number): string {
  return count === 1 ? 'una vez' : `${count} veces`
}

function readingsOf(found: number): string {
  if (found === 0) return 'ninguna lectura'
  return found === 1 ? 'una lectura' : `${found} lecturas`
}
