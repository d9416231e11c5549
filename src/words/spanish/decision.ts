import type { decision as english } from '../english/decision'
import type { Texts } from '../texts'

export const decision: Texts<typeof english> = {
  title: 'Qué hacer',
  why: 'Por qué, y qué lo cambiaría',
  undecided: {
    'for-comparison': 'Ninguna decisión: es un cilindro para comparar.',
    'earlier-survey': 'Ninguna decisión por una medición anterior: decide la última.',
    'no-readings': 'Ninguna decisión todavía: no hay ninguna medida tomada.',
    'some-unread': 'Ninguna decisión todavía: faltan por leer puntos de medida del plan.',
    'land-alone': 'Ninguna decisión todavía: no hay lecturas donde corren los segmentos.',
    'no-limits': 'Ninguna decisión todavía: no se ha introducido ni un límite de medida ni una holgura.',
  },
  outcomes: {
    'run-on': {
      plain: 'Seguir en servicio, y revisar otra vez cuando diga el manual.',
      at: (hours) =>
        `Seguir en servicio, y revisar otra vez a más tardar a las ${hours} h de funcionamiento.`,
      on: (hours, day) =>
        `Seguir en servicio, y revisar otra vez a más tardar a las ${hours} h de funcionamiento, hacia el ${day}.`,
    },
    'clean-and-measure-again': 'Limpiar la pared y medir otra vez.',
    'measure-again-better': {
      all: 'Medir otra vez, mejor.',
      at: (places) => `Medir otra vez, mejor: ${places}.`,
    },
    'next-piston': {
      plain: 'Buscar otro pistón: no se sabe de ninguno de la lista que encaje.',
      named: (piston) => `Tomar el siguiente pistón: ${piston}.`,
      grade: (grade) => `Tomar el siguiente pistón: uno de la clase ${grade}.`,
    },
    hone: {
      plain: 'Bruñir dentro de los límites.',
      atMost: (microns) => `Bruñir dentro de los límites: como mucho ${microns} en el diámetro.`,
    },
    'bore-oversize': {
      plain: 'Rectificar a la próxima sobremedida.',
      to: (oversize) => `Rectificar a la próxima sobremedida, ${oversize}.`,
    },
    're-plate': 'Hacer recubrir la pared de nuevo, o cambiar el cilindro.',
    'replace-or-sleeve': { plain: 'Cambiarlo, o hacerlo encamisar.', liner: 'Cambiar la camisa.' },
  },
  short: {
    'run-on': 'seguir en servicio',
    'clean-and-measure-again': 'limpiar y medir otra vez',
    'measure-again-better': 'medir otra vez, mejor',
    'next-piston': 'tomar el siguiente pistón',
    hone: 'bruñir dentro de los límites',
    'bore-oversize': 'rectificar a la próxima sobremedida',
    're-plate': 'hacerlo recubrir de nuevo',
    'replace-or-sleeve': 'cambiarlo o hacerlo encamisar',
  },
  better: (ways) => `Mejor quiere decir: ${ways.join('; ')}.`,
  betters: {
    'slip-asked': 'responder la pregunta abierta sobre las lecturas, o leer ahí otra vez',
    'contact-changed': 'ajustar el instrumento de nuevo, porque se cambió un palpador después de su ajuste',
    'no-setting-size': 'anotar la medida a la que se ajustó el instrumento',
    'no-direction-test': 'averiguar en qué sentido va la aguja con un cilindro mayor, y anotarlo',
    'repeats-spread':
      'limpiar pared y palpadores y bascular el instrumento hasta que coincidan las repeticiones',
    'drift-with-order':
      'dejar que pieza e instrumento lleguen a una misma temperatura, porque las lecturas derivaron',
    'zero-moved':
      'ajustar el instrumento de nuevo, porque su cero se movió más de lo que admiten los límites',
    clean: 'limpiar la pared hasta el metal y secarla',
    'try-nail': 'pasar la uña por las marcas y anotar si se engancha',
    'enter-ring-travel':
      'introducir por dónde van los segmentos, lo que dice si las picaduras están en su recorrido',
    'set-by-ring': 'ajustar el instrumento con un anillo en lugar del micrómetro',
    'record-what-is-missing':
      'anotar lo que falta (ceros, temperaturas, la comprobación del micrómetro, el tipo de pared)',
    'repeat-three-times':
      'tres lecturas en cada uno de estos puntos de medida, sacando el instrumento entre ellas',
    'repeat-five-times':
      'cinco lecturas o más en cada uno de estos puntos de medida, por turno, sacando el instrumento entre ellas',
    'finer-gauge':
      'un instrumento más fino, porque por muchas veces que este lea ahí, su comparador y su profundidad dejan más que eso',
    'two-contacts': 'dos palpadores en lugar de tres, que solo leen la media de un nivel',
    'more-axes': 'dos ejes más a 45°',
    'enter-travel': 'introducir la carrera, que espera un límite de conicidad',
    'measure-piston': 'medir otra vez el pistón con el micrómetro que ajusta el instrumento',
  },
  needs: {
    size: (doubt) => `Una medida exacta hasta ${doubt} lo resolvería, si no cambia.`,
    shape: (doubt) => `Una diferencia exacta hasta ${doubt} lo resolvería, si no cambia.`,
  },
  sure: {
    same: (count) =>
      `Qué seguridad hay: de las medidas verdaderas que permiten estas lecturas, ${count} de cada 100 llevan a lo mismo.`,
    all: 'Qué seguridad hay: todas las medidas verdaderas que permiten estas lecturas llevan a lo mismo.',
    besides: (others) => `Las demás: ${others}.`,
    ifKnown: (shares) => `Si las medidas se conocieran exactamente: ${shares}.`,
    share: (outcome, count) => `${outcome}, ${count} de cada 100`,
    almostAll: 'más de 99',
    hardlyAny: 'menos de 1',
  },
  reasonsTitle: 'Por qué',
  at: (figure, place) => `${figure} en ${place}`,
  toRow: 'Mostrar las cifras que hay detrás',
  listOf: (title) => `${title}:`,
  scannedUncleaned: 'metal adherido, porque se hizo un barrido antes de limpiarlo y ninguno después',
  worn: (share) => `Gastado del desgaste permitido: ${share}.`,
  clearance: {
    one: (figure, doubt) => `${figure} ${doubt}`,
    range: (least, most) => (least === most ? most : `de ${least} a ${most}`),
  },
  reasons: {
    surface: {
      ended: (what) => `En la pared: ${what}. Eso acaba con un cilindro, sea cual sea su medida.`,
      marked: (what) => `En la pared: ${what}. Eso puede acabar con un cilindro, sea cual sea su medida.`,
      covered: (what) =>
        `En la pared: ${what}. Tapa lo que hay debajo, y las medidas leídas encima no son las de la pared.`,
      'look-closer': (what) => `En la pared: ${what}. Todavía no se dijo si cuenta.`,
      'cross-hatch': (what) => `En la pared: ${what}. Eso habla a su favor.`,
    },
    readings: {
      unsteady: 'Las lecturas no son lo bastante firmes para apoyarse en ellas.',
      'slip-asked': 'Hay una pregunta abierta sobre las lecturas: una de ellas puede ser un error.',
      'not-set': 'El instrumento no se ajustó, o nadie sabe cómo: todas las medidas pueden estar mal.',
    },
    grounds: {
      'one-reading': 'Lo que pasa de su límite se apoya en una sola lectura que nadie repitió.',
      assumed: 'Lo que pasa de su límite se apoya en valores supuestos para lo que no se anotó.',
    },
    size: {
      inside: (figure) => `El diámetro máximo, ${figure}, está dentro de su límite.`,
      above: (figure) => `El diámetro máximo, ${figure}, está por encima de su límite.`,
      below: (figure) => `El diámetro mínimo, ${figure}, está por debajo de su límite.`,
      'other-grade': (figure) =>
        `El diámetro máximo, ${figure}: el cilindro ha salido de su clase y está dentro de otra.`,
      'under-new': (figure) =>
        `El diámetro mínimo, ${figure}, está por debajo de la medida mínima de origen, lo que el desgaste no puede hacer: metal en la pared, un error, o límites de otra medida.`,
      'too-close': (figure) =>
        `La medida está demasiado justa con su límite para decidir; la máxima es ${figure}.`,
      'mean-only': (figure) => `Solo las medias de los niveles están dentro; la máxima es ${figure}.`,
    },
    ovality: {
      inside: (figure, limit) => `La ovalización, ${figure}, está dentro de su límite de ${limit}.`,
      above: (figure, limit) => `La ovalización, ${figure}, está por encima de su límite de ${limit}.`,
      'too-close': (figure, limit) =>
        `La ovalización, ${figure}, está demasiado justa con su límite de ${limit} para decidir.`,
      open: () => 'La ovalización no se pudo evaluar frente a su límite.',
    },
    taper: {
      inside: (figure, limit) => `La conicidad, ${figure}, está dentro de su límite de ${limit}.`,
      above: (figure, limit) => `La conicidad, ${figure}, está por encima de su límite de ${limit}.`,
      'too-close': (figure, limit) =>
        `La conicidad, ${figure}, está demasiado justa con su límite de ${limit} para decidir.`,
      open: () => 'La conicidad no se pudo evaluar frente a todos sus límites.',
    },
    plating: {
      'may-be-through': (share) =>
        `Del recubrimiento falta ${share} si una sola pared se llevó todo el desgaste, lo que dos palpadores no pueden decir.`,
    },
    clearance: {
      inside: (piston, figure) => `La holgura de ${piston}, ${figure}, está dentro de la del manual.`,
      'too-loose': (piston, figure) => `La holgura de ${piston}, ${figure}, es demasiado grande.`,
      'too-tight': (piston, figure) => `La holgura de ${piston}, ${figure}, es demasiado pequeña.`,
      'too-close': (piston, figure) =>
        `La holgura de ${piston}, ${figure}, está demasiado justa con los límites del manual para decidir.`,
    },
    otherPiston: {
      fits: (piston, figure) => `Con ${piston} es ${figure}, dentro de la del manual.`,
      'too-close': (piston, figure) =>
        `Con ${piston} es ${figure}, demasiado justa con los límites del manual para decidir.`,
      'none-fits': () => 'No encaja ninguno de los otros pistones de la lista.',
      'none-listed': () => 'No hay otro pistón en la lista.',
    },
    outlook: {
      ahead: (hours) =>
        `Si sigue desgastándose como hasta ahora, llega a su límite como más pronto a las ${hours} h de funcionamiento.`,
      now: 'Según la recta por las mediciones, está ya en su límite, hasta donde pueden decir.',
      shrunk: 'Se ha hecho menor que antes, más allá de su incertidumbre: suciedad, o un error.',
    },
    ringGap: {
      inside: 'La abertura de puntas está dentro de sus límites.',
      'too-close': 'La abertura de puntas está demasiado justa con su límite para decidir.',
      above: 'La abertura de puntas está por encima de su límite.',
      below: 'La abertura de puntas está por debajo de su mínimo.',
    },
    wall: {
      plated: 'La pared está recubierta: no se rectifica ni se bruñe a una medida mayor.',
      other: 'La pared no está recubierta.',
      'not-known': 'El tipo de pared no está anotado.',
    },
    honing: {
      room: (microns) => `Hay sitio para bruñir: ${microns} en el diámetro hasta el límite.`,
      'no-room': 'No hay sitio para bruñir dentro del límite.',
      'not-allowed': 'La pared no se puede bruñir.',
    },
    oversize: {
      'cleans-up': (oversize) => `Con una sobremedida queda limpio: ${oversize}.`,
      'none-cleans-up': 'Ninguna sobremedida del manual basta para que quede limpio.',
      'none-given': 'No hay ninguna sobremedida introducida.',
      'not-allowed': 'La pared no se puede rectificar, hasta donde está anotado.',
    },
  },
  changesTitle: 'Qué lo cambiaría',
  change: (condition, outcome) => `${condition}: ${outcome}.`,
  changes: {
    readings: { sound: 'Si las lecturas resultan correctas' },
    surface: {
      'nothing-against': {
        marked: 'Si la marca se puede quitar',
        other: 'Si nada en la pared habla en contra',
      },
      marked: 'Si una marca en el recorrido de los segmentos engancha la uña',
    },
    grounds: { repeated: 'Si sigue por encima al medirlo otra vez con todo anotado' },
    size: {
      inside: 'Si se demuestra que la medida está dentro',
      above: {
        inside: 'Cuando su medida pase del límite',
        other: 'Si se demuestra que la medida está por encima',
      },
    },
    ovality: {
      inside: 'Si se demuestra que la ovalización está dentro',
      above: 'Si se demuestra que la ovalización está por encima',
    },
    taper: {
      inside: 'Si se demuestra que la conicidad está dentro',
      above: 'Si se demuestra que la conicidad está por encima',
    },
    plating: { left: 'Si un barrido muestra que las dos paredes se desgastaron por igual' },
    clearance: {
      inside: 'Si se demuestra que la holgura está dentro',
      'too-loose': 'Si se demuestra que la holgura es demasiado grande',
    },
    otherPiston: { fits: 'Si se puede conseguir un pistón que encaje' },
    honing: {
      room: 'Si el límite deja sitio para bruñir',
      'no-room': 'Si bruñir hasta el límite no basta',
    },
    oversize: {
      'cleans-up': 'Si el manual tiene una sobremedida con la que quede limpio',
      'none-cleans-up': 'Si no queda limpio con ninguna sobremedida',
    },
  },
  hintsTitle: 'En qué se apoya que no está demostrado',
  readOnce: {
    all: (places) =>
      `Cada punto de medida se leyó una sola vez. Depende de ${places}: lea ahí dos veces más antes de actuar.`,
    some: (places) => `Leído una sola vez: ${places}. Lea ahí dos veces más antes de actuar.`,
  },
  hints: {
    provisional: 'No se anotó todo; en lugar de lo demás hay valores supuestos.',
    'two-axes': 'Dos ejes pueden pasar por alto un óvalo que esté entre ellos.',
    'no-size-limit': 'No hay ningún límite de medida introducido.',
    'new-sizes-only':
      'Solo hay medidas de origen introducidas. Se evaluaría en su lugar un límite de desgaste, si el manual lo tiene.',
    'one-survey':
      'El ritmo de desgaste se apoya en una sola medición y en cómo era de origen; el rodaje va incluido.',
    'rate-changed':
      'El ritmo de desgaste ha cambiado entre mediciones: saber por qué vale más que las horas.',
    'slope-uncertain': 'El aumento no destaca de su incertidumbre.',
    'no-outlook': 'No se pueden dar horas: hacen falta las horas de funcionamiento y un límite de medida.',
    'clearance-not-judged': 'La holgura del pistón no se evaluó.',
    'piston-by-grade': 'El pistón no se midió: su medida es la de su clase.',
    'piston-not-firm': 'No se anotó todo cuando se midió el pistón.',
    'other-piston-too-close':
      'Si encaja el siguiente pistón es demasiado justo para decidir: mídalo antes de montarlo.',
    'no-piston-listed':
      'No se sabe de ningún pistón de la lista que encaje: la holgura dice qué medida pedir.',
    'wall-by-kind': 'Lo que admite esta pared es lo habitual en su tipo, no lo que dice el manual.',
    'wall-not-known': 'El tipo de pared no está anotado, y de él depende lo que se puede hacer.',
    'honing-allowance':
      'Que bruñir quita al menos 10 µm en el diámetro es una cifra del oficio, sin fuente publicada.',
    'clean-up-by-trade':
      'Lo que quita rectificar hasta que la pared queda limpia es una cifra del oficio, no la del manual.',
    'oversize-too-close':
      'Si queda limpio con esta sobremedida es demasiado justo para decidir: el rectificador lo ve en la primera pasada.',
    'one-side-took-it':
      'Que una sola pared se llevara todo el desgaste es el peor caso; lo diría un barrido de toda la vuelta.',
  },
  cautionsTitle: 'Tenga en cuenta',
  cautions: {
    'last-word':
      'Esto sigue reglas del oficio, y no declara nada seguro. El manual de taller y un rectificador cualificado tienen la última palabra.',
    'stones-on-plating':
      'Nada de piedras en un recubrimiento: lávelo, y deje lo demás a un especialista en recubrimientos.',
    'honing-keeps-form': 'Bruñir no cura ni la conicidad ni la ovalización.',
    'mark-depth':
      'Es un intento: donde la marca sigue cuando se llega al límite, bruñir no fue el remedio. Mida antes la profundidad de la marca, y cuente el doble en el diámetro.',
    glaze:
      'La pared está vitrificada o su bruñido cruzado ha desaparecido: mire en el manual qué necesitan unos segmentos nuevos. Por sí solo no dice nada del desgaste.',
    'ring-gap-large':
      'La abertura de puntas está por encima de su límite: monte segmentos nuevos, y mida la abertura otra vez.',
    'ring-gap-small':
      'La abertura de puntas está por debajo de su mínimo: unas puntas que se tocan rompen segmentos y rayan paredes.',
    'rings-with-piston': 'Pistones nuevos llevan segmentos nuevos; mida los dos antes de montarlos.',
    'past-window-of-new':
      'Con este pistón la holgura no es la de una pareja nueva, aunque está dentro del límite de servicio.',
    'torque-plate': 'No se midió sin nada atornillado: haga que se mecanice y se mida como se midió aquí.',
  },
  block: {
    title: 'Qué hacer con el motor',
    alike: {
      to: (count, oversize) =>
        `Rectificar los ${count} cilindros a ${oversize}, porque todos van a la misma medida.`,
      plain: (count) =>
        `Rectificar los ${count} cilindros a la próxima sobremedida, porque todos van a la misma medida.`,
    },
    all: (count, what) => `Los ${count} cilindros: ${what}.`,
    some: (names, what) => `${bores(names)}: ${what}.`,
    asked: (names) => `${bores(names)}: ${names.length === 1 ? 'lo pide' : 'lo piden'}.`,
    check: (hours) => `Revisar otra vez a más tardar a las ${hours} h de funcionamiento.`,
    undecided: (names) => `${bores(names)}: sin decidir todavía.`,
  },
  byItself: (bore, text) => `Cilindro ${bore}, por sí solo: ${text.charAt(0).toLowerCase()}${text.slice(1)}`,
}

function bores(names: readonly string[]): string {
  const last = names[names.length - 1] ?? ''
  return names.length === 1 ? `Cilindro ${last}` : `Cilindros ${names.slice(0, -1).join(', ')} y ${last}`
}
