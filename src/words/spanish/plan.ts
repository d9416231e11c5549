import type { plan as english } from '../english/plan'
import type { Texts } from '../texts'

export const plan: Texts<typeof english> = {
  plan: {
    title: 'Plan de medición',
    lead: '¿Qué quiere saber? {question}',
    question: 'Qué deben decir las lecturas',
    questions: {
      size: 'la medida, frente a los límites',
      'out-of-round': 'la ovalización',
      bolts: 'una forma de cuatro lóbulos, de los tornillos',
      'along-depth': 'la conicidad y la forma en profundidad',
      wear: 'el desgaste, frente a la zona sin segmentos',
    },
    unknown: {
      'no-length':
        'Un plan necesita la longitud del cilindro: introdúzcala en la frase sobre el cilindro. Con el recorrido de los segmentos, las lumbreras y las bandas sale mejor.',
      'too-short': 'El cilindro es demasiado corto para que quepa un palpador de esta anchura.',
      'all-barred':
        'En ningún lugar de este cilindro encuentran metal todos los palpadores: lumbreras o bandas estorban en todos los ejes.',
      'three-contacts-see-no-oval':
        'Tres palpadores leen la media de un nivel y no ven ningún óvalo. Esta pregunta pide un instrumento con dos.',
      'radial-probe':
        'Un palpador radial en un husillo lee todo alrededor. Este plan es para instrumentos que cruzan el cilindro.',
    },
    axes: {
      size: 'dos en ángulo recto es lo que piden los manuales. Un óvalo que esté entre ellos no se vería; la ovalización pide tres.',
      'out-of-round':
        'tres es lo mínimo que da a un óvalo su tamaño y su dirección. Una forma de cuatro lóbulos seguiría pareciendo un óvalo.',
      bolts:
        'seis encuentran una forma de cuatro lóbulos esté como esté, junto a un óvalo, y con un eje de sobra. Cuatro no la verían en una dirección.',
      'along-depth': 'la conicidad se evalúa eje por eje, en dos en ángulo recto.',
      wear: 'dos en ángulo recto, porque el desgaste rara vez es igual a lo ancho y a lo largo.',
    },
    axesAre: (axes, why) => `Ejes ${axes}: ${why}`,
    oneAxisIs: (axis) =>
      `Eje ${axis}: tres palpadores leen de una vez la media de un nivel. Lecturas con dos palpadores mostrarían si es ovalado.`,
    keeps: 'Con tantos se conservan los que nombra el manual o ya están leídos.',
    turned: (angle) =>
      `Girados ${angle} desde el frente, para que las lumbreras dejen más niveles completos.`,
    heads: { depth: 'Profundidad', axes: 'Ejes', why: 'Por qué' },
    all: 'todos',
    only: (axes) => `solo ${axes}`,
    reasons: {
      'upper-land':
        'zona sin segmentos por encima de su recorrido: conserva la medida original, y delata un ajuste equivocado',
      'lower-land': 'zona sin segmentos por debajo de su recorrido: conserva la medida original',
      'top-of-travel':
        'justo bajo el extremo superior del recorrido de los segmentos, donde el desgaste suele ser mayor',
      'bottom-of-travel': 'justo sobre el extremo inferior del recorrido de los segmentos',
      'near-top': 'cerca del extremo superior',
      'near-bottom': 'cerca del extremo inferior',
      middle: 'centro',
      'upper-quarter': 'a un cuarto de la bajada: cómo va la pared entre medias',
      'lower-quarter': 'a tres cuartos de la bajada: cómo va la pared entre medias',
      read: 'ya leído',
      'read-before': 'leído en la medición anterior: el desgaste se toma en el mismo lugar',
    },
    portReasons: {
      'above-ports': (names) => `justo encima de ${names}, donde la pared aún está entera`,
      'below-ports': (names) => `justo debajo de ${names}, donde la pared vuelve a estar entera`,
      'beside-ports': (names) => `junto a ${names}, lo que se puede alcanzar ahí`,
    },
    others: (first, more) => `${first} y ${more} más`,
    inTheWay: (names) => `en los demás estorba: ${names}`,
    tooFewForOval: 'demasiado pocos para un óvalo',
    barred: (from, to, names) =>
      `Entre ${from} y ${to} ningún eje tiene metal bajo todos los palpadores: ${names}.`,
    barredMiddle: (from, to, names) =>
      `El centro de este cilindro no se puede medir: entre ${from} y ${to} ningún eje tiene metal bajo todos los palpadores (${names}). Los niveles de encima y de debajo no dicen nada de él.`,
    noTravel:
      'El recorrido de los segmentos no está anotado, así que no se puede poner ningún nivel en una zona sin segmentos: introdúzcalo en la frase sobre el cilindro.',
    shortLand: {
      upper: (height) =>
        `La zona sin segmentos por encima de su recorrido, de ${height} de alto, es demasiado corta para un palpador.`,
      lower: (height) =>
        `La zona sin segmentos por debajo de su recorrido, de ${height} de alto, es demasiado corta para un palpador.`,
    },
    measurable: 'Todo lo que se puede medir',
    band: (from, to, axes) => `de ${from} a ${to}: ${axes}`,
    everyAxis: 'todos los ejes',
    noAxis: (names) => `ningún eje (${names})`,
    range: (from, to) => `de ${from} a ${to}`,
    take: 'Tomar este plan',
    taken: 'La tabla de abajo tiene estos niveles y ejes.',
    takenKeeps: 'Los niveles y ejes con lecturas se conservan.',
    change: 'plan de medición',
    repeats: {
      sentence: 'Para conocer {quantity} a ± {wanted} µm:',
      label: 'Incertidumbre deseada, ± µm',
      quantities: {
        size: 'un diámetro',
        'out-of-round': 'la diferencia de dos diámetros en un nivel',
        bolts: 'la diferencia de dos diámetros en un nivel',
        'along-depth': 'la diferencia de las medias de dos niveles',
        wear: 'el desgaste en un punto de medida',
      },
      notAbove: 'Indique una incertidumbre mayor que 0.',
      once: (doubt) => `Basta una lectura en cada punto de medida (${doubt}).`,
      several: (count, doubt, once) =>
        `${count} lecturas en cada punto de medida (${doubt}; con una, ${once}).`,
      ask: (count) => (count === 1 ? 'Pedir una lectura' : `Pedir ${count} lecturas`),
      tooMany: (count, once) =>
        `Harían falta ${count} lecturas en cada punto de medida, más de las que toma nadie (con una, ${once}).`,
      never: (least) => `Ningún número de lecturas llega a eso aquí. Lo que no reducen deja ${least}.`,
      slope:
        'Donde la pared hace un escalón, como en un reborde, se añade la incertidumbre de la profundidad.',
      remedies: {
        'set-by-ring': 'Ajustado con un anillo',
        'record-what-is-missing': 'Lo que se supone, medido y anotado',
        'know-the-temperatures': 'Temperaturas conocidas el doble de bien',
        'finer-gauge': 'Un comparador leído a 0,001 mm',
        'all-together': 'Todo esto junto',
      },
      suffices: (what, count) =>
        count === 1 ? `${what}: bastaría una lectura.` : `${what}: bastarían ${count} lecturas.`,
      atBest: (what, least) => `${what}: ${least} en el mejor caso.`,
      nothing: 'Nada de lo que se sabe de este instrumento y ajuste cambiaría eso mucho.',
    },
  },
}
