import type { findings as english } from '../english/findings'
import type { Texts } from '../texts'

export const findings: Texts<typeof english> = {
  findings: {
    title: 'Resultados',
    largest: 'Diámetro máximo',
    smallest: 'Diámetro mínimo',
    ovality: 'Ovalización',
    taper: 'Conicidad',
    fittedOval: 'Óvalo ajustado',
    fittedAcross: (axis, doubt, axes) => `máximo a ${axis} ± ${doubt}, con ${axes} ejes`,
    fittedNoDirection: (most) => `no destaca ninguna dirección; como mucho ${most}`,
    fittedThree: 'tres ejes no pueden distinguirlo de una forma de cuatro lóbulos',
    ovalAtLeast: 'Óvalo verdadero',
    ovalAtLeastFigure: (least) => `${least} o más`,
    ovalAtLeastDetail: 'dos ejes no dicen cuánto más',
    depthForm: 'Forma en profundidad',
    depthForms: {
      straight: 'recta',
      tapered: 'cónica',
      barrel: 'abarrilada',
      waisted: 'entallada',
      'bell-mouthed': 'abocardada',
      stepped: 'escalonada',
    },
    depthStraight: 'hasta donde muestran estas lecturas',
    depthEnds: (difference) => `arriba menos abajo ${difference}`,
    depthMiddle: (depth, difference) => `${depth} se aparta ${difference} de la recta entre los extremos`,
    depthBell: {
      top: (difference) => `arriba ${difference} más ancho`,
      bottom: (difference) => `abajo ${difference} más ancho`,
    },
    depthStep: (depth, land, difference) => `${depth} menos la zona sin segmentos a ${land} ${difference}`,
    grades: {
      name: 'Clases de medida',
      inside: (grades) => `dentro de ${listed(grades)}`,
      insideNone: 'fuera de todas',
      undecided: 'ninguna demostrada',
      tooClose: (grades) => `demasiado justo para decidir: ${listed(grades)}`,
      tooNarrow: (grades) => `demasiado estrechas para este instrumento: ${listed(grades)}`,
      above: (grades) => `por encima de: ${listed(grades)}`,
      below: (grades) => `por debajo de: ${listed(grades)}`,
      rule: (stations) =>
        stations === 1
          ? 'según el único punto de medida'
          : `dentro si lo están los ${stations} puntos de medida`,
      information: 'a título informativo: solo se evalúa el límite de desgaste',
    },
    byRule: (rule) => `regla: ${rule}`,
    widestMean: 'Media del nivel más ancho',
    difference: (bore) => `Diferencia máxima con ${bore}`,
    meanDifference: (bore) => `Diferencia media con ${bore}`,
    limits: {
      wear: (size) => `límite de desgaste ${size}`,
      max: (size) => `medida máxima de origen ${size}`,
      min: (size) => `medida mínima de origen ${size}`,
      gradeMax: (grade, size) => `máxima de la clase ${grade} ${size}`,
      gradeMin: (grade, size) => `mínima de la clase ${grade} ${size}`,
      minNotJudged: (size) => `medida mínima de origen ${size}, no se evalúa junto a un límite de desgaste`,
      shape: (microns) => `límite ${microns}`,
      share: {
        bore: (microns, share, size) => `límite ${microns} = ${share} × ${size}`,
        travel: (microns, share, travel) => `límite ${microns} = ${share} × ${travel} de carrera`,
      },
      smallestOf: (limit, count) => `${limit}, el menor de ${count} dados`,
      noTravel: 'un límite depende de la carrera: introdúzcala entre los límites',
      none: 'ningún límite introducido',
    },
    chance: {
      inside: (chances) => `${chances} dentro`,
      above: (chances) => `${chances} por encima`,
      below: (chances) => `${chances} por debajo`,
      even: 'que esté dentro o no es más o menos igual de probable',
    },
    leans: { inside: 'tiende a estar dentro', above: 'tiende a estar por encima' },
    between: (larger, smaller) => `mayor en ${larger}; menor en ${smaller}`,
    meanOf: (axes) => (axes === 1 ? 'un eje' : `media de ${axes} ejes`),
    stationsBoth: (count) =>
      count === 1 ? 'un punto de medida que ambos tienen' : `${count} puntos de medida que ambos tienen`,
    largestRead: 'la mayor leída, no una cota',
    asMade: (microns) => `dos cilindros nuevos pueden diferir en ${microns} de fabricación`,
    madeSo: {
      beyond: 'más de lo que pueden diferir dos cilindros nuevos, así que no es solo de fabricación',
      within: 'no más de lo que pueden diferir dos cilindros nuevos: puede que se hicieran así',
    },
    clampingsApart: (one, other) =>
      `medidos de distinta manera (${one} y ${other}): los tornillos deforman un cilindro, así que esto no es desgaste`,
    otherRules: 'Según otras reglas',
    notYet: 'todavía no',
    why: {
      'no-readings': 'todavía no hay lecturas fuera de una zona sin segmentos',
      'one-axis-at-every-level': 'hace falta un segundo eje en un nivel',
      'one-level-on-every-axis': 'hace falta un segundo nivel en un eje',
      'axes-not-named': 'indique entre los límites los ejes X e Y del manual',
      'named-axis-not-measured': 'hacen falta lecturas en los ejes X e Y que indican los límites',
      'no-common-axis': 'hace falta un eje leído tanto arriba como abajo',
      'three-contacts-see-no-oval': 'tres palpadores leen la media de un nivel y no ven ningún óvalo',
    },
    point: (name) => `Mostrar en la pared: ${name}`,
    barLabel: (low, high, limit) => `de ${low} a ${high}, límite ${limit}`,
  },
  notes: {
    title: 'Lo que estas lecturas no pueden mostrar',
    cannotProve: (doubt, needed) =>
      `Este instrumento no puede demostrar nada dentro de este margen: es exacto hasta ${doubt}. Haría falta ${needed}, y aun así solo en el centro del margen.`,
    lessThanAnyGauge: 'menos de lo que alcanza cualquier instrumento para cilindros',
    belowNew: (place) =>
      `En ${place} el cilindro es, sin duda, menor que la medida mínima de origen. Compruebe la lectura, la clase y el límite; en una pared recubierta puede ser metal del pistón adherido.`,
    blocked: (place, by) =>
      `En ${place} estorba: ${by}. La lectura se conserva, pero no entra en ningún dictamen hasta que usted diga que los dos palpadores se apoyaban en metal.`,
    soakedApart: (bore, standard, reference) =>
      `Está anotado el cilindro a ${bore} y el patrón (${standard}) a ${reference}, aunque estuvieron juntos hasta igualarse. Las dos cosas no pueden ser; la diferencia entra en cada medida tal como está anotada.`,
    temperatureDecides: {
      inside: (place, doubt, without) => temperatureKeepsOpen(place, doubt, without, 'dentro'),
      above: (place, doubt, without) => temperatureKeepsOpen(place, doubt, without, 'por encima'),
      below: (place, doubt, without) => temperatureKeepsOpen(place, doubt, without, 'por debajo'),
    },
    largeCorrection: (correction, half) =>
      `La corrección por temperatura, ${correction}, es más que la mitad del margen entre los límites (${half}). Mida más cerca de 20 °C.`,
    apart: {
      warmer: (kelvin) => `El cilindro estaba ${kelvin} K más caliente que ${apartAdvice}`,
      colder: (kelvin) => `El cilindro estaba ${kelvin} K más frío que ${apartAdvice}`,
    },
    evenLobes:
      'Dos palpadores solo ven formas con un número par de lóbulos: una forma de tres lóbulos no se ve. No pueden decir cuál de las dos paredes se ha desgastado; las dos se dibujan igual.',
    twoAxes: (between) =>
      `Dos ejes pueden pasar por alto un óvalo que esté entre ellos, y no le ponen un tope. Una lectura a ${between} lo mostraría.`,
    oneAxis: 'Un solo eje no muestra nada de un óvalo. Mida otro perpendicular.',
    gaps: (gaps) => `Nadie midió ${gaps}.`,
    gap: (from, to) => `de ${from} a ${to}`,
    moreGaps: (count) => (count === 1 ? 'en un hueco más' : `en ${count} huecos más`),
    notRead: (places) => `Sin leer todavía: ${places}.`,
    outOfReach: (places) => `Fuera del alcance del instrumento, así que nadie midió ahí: ${places}.`,
    places: (shown, more) => (more > 0 ? `${shown.join('; ')}; y ${more} más` : shown.join('; ')),
    lengthNotKnown: (depth) =>
      `No se conoce la longitud del cilindro: está dibujado hasta ${depth}, 10 mm más allá del nivel o la marca más profundos.`,
    differenceOfDiameters:
      'Ovalización y conicidad son aquí diferencias de diámetros. La redondez y la cilindricidad de un plano son diferencias de radios: la mitad, en un óvalo simple o en un cono simple.',
    threeContacts:
      'Tres palpadores leen la media de un nivel: un óvalo no se ve, así que la ovalización no dice nada aquí, y «dentro del límite» vale solo para la media.',
    threeContactsBounded:
      'Tres palpadores leen la media de un nivel. Lecturas con dos palpadores de la misma ocasión muestran que el óvalo de cada nivel es demasiado pequeño para cambiar el dictamen.',
    uncertainty: 'El diámetro verdadero está dentro del ± de su cifra en 95 de cada 100 casos así.',
  },
  cautions: {
    title: 'Antes de decidir',
    manual:
      'El manual de taller de este motor tiene la última palabra, y un rectificador cualificado debería ver lo que sea decisivo.',
    surface:
      'Las cifras solas no deciden: una raya o un reborde en que se engancha la uña, picaduras en el recorrido de los segmentos o una grieta pueden acabar con un cilindro que está en medida.',
    surfacePlated:
      'Las cifras solas no deciden: aluminio a la vista, desconchado, una raya en que se engancha la uña o picaduras en el recorrido de los segmentos pueden acabar con un cilindro que está en medida.',
    warm: 'No mida nunca una pieza que aún está caliente de funcionar, del lavado o del bruñido.',
    walls: {
      'plated-aluminium':
        'Una pared recubierta no se puede rectificar ni bruñir a una sobremedida: se recubre de nuevo o se cambia.',
      'aluminium-silicon':
        'Esta pared necesita su propio acabado: el bruñido corriente la estropea. Déjela a un taller que trabaje este tipo.',
    },
    provisional: 'No decida sobre un motor con un dictamen provisional: anote lo que falta y vuelva a mirar.',
  },
}

const apartAdvice =
  'el anillo o el micrómetro. Por encima de 3 K, una pieza rara vez tiene una sola temperatura: deje ambos juntos y mida otra vez.'

function temperatureKeepsOpen(place: string, doubt: string, without: string, proven: string): string {
  return `Solo la incertidumbre de las temperaturas deja esto abierto: sin ella, ${doubt} en ${place} sería ${without}, y las mismas lecturas demostrarían que está ${proven}. Deje juntos el cilindro y el anillo o micrómetro hasta que se igualen, lea los dos con un mismo termómetro y mida otra vez.`
}

/** The first few, and how many more there are. */
function listed(names: readonly string[]): string {
  const most = 6
  const shown = names.slice(0, most).join(', ')
  return names.length > most ? `${shown} y ${names.length - most} más` : shown
}
