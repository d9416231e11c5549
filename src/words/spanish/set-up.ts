import type { setUp as english } from '../english/set-up'
import type { Texts } from '../texts'

export const setUp: Texts<typeof english> = {
  setUp: {
    title: 'Montaje',
    which: '{setUp}:',
    sizes:
      '{gauge}, leído a {step} {dialUnit}, ajustado a {size} {sizeUnit} con {standard}. Se anota: {entry}. Cero {zeroOpen} antes, {zeroClose} después. Cilindro {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    deviations:
      '{gauge}, leído a {step} {dialUnit}, ajustado a {size} {sizeUnit} con {standard}. Se anota: {entry}; {direction} es mayor ({directionTest}). Cero {zeroOpen} antes, {zeroClose} después. Cilindro {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    reverse:
      '{gauge}, leído a {step} {dialUnit}. Se anota: {entry}; {direction} es mayor ({directionTest}). Sobre sus palpadores el micrómetro leyó {overContacts} {sizeUnit} con el comparador en {dialOverContacts}. De vuelta a su cero en el cilindro, el comparador mostró {zeroOpen} antes, {zeroClose} después. Cilindro {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    direct:
      '{gauge}, leído a {step} {dialUnit}, en un cilindro de unos {size}. Se anota: {entry}. Cilindro {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    directChecked:
      '{gauge}, leído a {step} {dialUnit}. Comprobado con {standard} de {size}; dio de más: {micrometerError} antes, {zeroClose} después. Se anota: {entry}. Cilindro {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    micrometerCheck: 'Sobre su propio patrón, el micrómetro da de más: {micrometerError}.',
    labels: {
      gauge: 'Instrumento',
      step: 'Paso que se lee, µm',
      size: 'Medida de ajuste, mm',
      standard: 'Ajustado con',
      entry: 'Las lecturas se anotan como',
      direction: 'La aguja va hacia aquí cuando el cilindro es mayor',
      zeroOpen: 'Cero antes de medir, µm, sentido horario positivo',
      zeroClose: 'Cero después de medir, µm, sentido horario positivo',
      boreTemperature: 'Temperatura del cilindro, °C',
      referenceTemperature: 'Temperatura del anillo o micrómetro, °C',
      thermometers: 'Cómo se tomaron las temperaturas',
      micrometerError: 'Lo que el micrómetro da de más sobre su propio patrón, µm',
      setUp: 'Montaje con que se hizo esta medición',
      dialUnit: 'En qué está graduado el instrumento',
      sizeUnit: 'En qué está graduado el anillo o micrómetro',
      directionTest: 'Averiguar en qué sentido va la aguja',
      overContacts: 'Micrómetro sobre los palpadores del instrumento, mm',
      dialOverContacts:
        'Comparador mientras el micrómetro sujetaba el instrumento, µm, sentido horario positivo',
      roughSize: 'Medida aproximada del cilindro, mm',
      reference: 'De qué es la temperatura junto a la del cilindro',
    },
    inchLabels: {
      step: 'Paso que se lee, 0,0001 in',
      size: 'Medida de ajuste, in',
      zeroOpen: 'Cero antes de medir, 0,0001 in, sentido horario positivo',
      zeroClose: 'Cero después de medir, 0,0001 in, sentido horario positivo',
      micrometerError: 'Lo que el micrómetro da de más sobre su propio patrón, 0,0001 in',
      overContacts: 'Micrómetro sobre los palpadores del instrumento, in',
      dialOverContacts:
        'Comparador mientras el micrómetro sujetaba el instrumento, 0,0001 in, sentido horario positivo',
      roughSize: 'Medida aproximada del cilindro, in',
    },
    units: {
      size: { mm: 'mm', inch: 'in' },
      dial: { mm: 'µm', inch: '× 0,0001 in' },
    },
    withUnit: (figure, unit) => `${figure} ${unit}`,
    notRecorded: (taken) => `no anotado (${taken})`,
    taken: {
      zero: 'se toma 0',
      size: (size) => `se toma ${size}`,
      drift: (halfWidth) => `se toma ± ${halfWidth}`,
      temperature: 'se toma 20 ± 5',
      sameTemperature: (celsius) => `se toma ${celsius} ± 1`,
      micrometer: (halfWidth) => `se toma 0 ± ${halfWidth}`,
      clockwise: 'se toma el sentido horario',
      nothing: 'no se toma nada',
    },
    noSizesYet:
      'Estas lecturas no tienen medida todavía: anote antes lo que leyó el micrómetro sobre los palpadores.',
    references: { ring: 'anillo', micrometer: 'micrómetro' },
    gauges: {
      'dial-0.001-ring': 'Comparador de interiores 0,001, ajustado en un anillo',
      'dial-0.001-micrometer': 'Comparador de interiores 0,001, ajustado con micrómetro',
      'dial-0.01': 'Comparador de interiores 0,01',
      'dial-0.01-simple': 'Comparador de interiores 0,01, de construcción sencilla',
      telescoping: 'Calibre telescópico y micrómetro',
      'internal-micrometer-rods': 'Micrómetro de interiores con varillas',
      'three-contact-micrometer': 'Micrómetro de interiores de tres palpadores',
      'air-plug': 'Tapón neumático',
      'radial-probe': 'Palpador radial en un husillo',
    },
    standards: { ring: 'anillo patrón', micrometer: 'micrómetro' },
    entries: {
      size: 'medidas en mm',
      deviation: 'desviaciones del comparador',
      reverse: 'comparador, puesto a cero en el cilindro',
      direct: 'medidas leídas directamente',
    },
    directions: { clockwise: 'en sentido horario', anticlockwise: 'en sentido antihorario' },
    thermometers: {
      one: 'con un termómetro',
      two: 'con dos termómetros',
      soaked: 'juntos hasta igualarse',
    },
    directionTest: {
      open: 'probarlo',
      title: '¿En qué sentido va la aguja?',
      close: (by) =>
        `Sujete el instrumento entre las caras del micrómetro. Cierre el micrómetro ${by} y mire la aguja: ¿en qué sentido fue?`,
      push: 'Deje el instrumento en su anillo. Empuje hacia dentro un palpador apenas un pelo y mire la aguja: ¿en qué sentido fue?',
      why: 'Eso hizo menor la medida, así que un cilindro mayor lleva la aguja al otro lado. Los comparadores difieren en esto, y darlo por sentado deja todas las cifras como en un espejo.',
      by: { mm: '0,01 mm', inch: '0,0005 in' },
      went: { clockwise: 'Fue en sentido horario', anticlockwise: 'Fue en sentido antihorario' },
      stayed: 'No se movió',
      stayedHelp:
        'Entonces no se anota nada. Mire que lo sujetado entre las caras sean los palpadores, no el cuerpo, y que la aguja no esté al final de su recorrido; después inténtelo otra vez.',
    },
    more: {
      title: 'Más',
      survey:
        'Cilindro con el pie de rey: {caliper}. Medido {clamping}, por: {measuredBy}. Horas desde que funcionó, se lavó o se bruñó por última vez: {rested}. Palpador del instrumento después de su ajuste: {contact}.',
      surveyPlate:
        'Cilindro con el pie de rey: {caliper}. Medido {clamping} apretada a {torque} N·m, por: {measuredBy}. Horas desde que funcionó, se lavó o se bruñó por última vez: {rested}. Palpador del instrumento después de su ajuste: {contact}.',
      setUp:
        'Última calibración del instrumento: {calibrated}; una vuelta de su aguja: {turn}. Desde su ajuste puede haberse calentado {warmed} K. En el cero final, {reference}: {referenceClose}.',
      setUpDirect: 'Última calibración del instrumento: {calibrated}.',
      labels: {
        caliper: 'El cilindro con el pie de rey',
        clamping: 'Qué estaba atornillado al cilindro',
        torque: 'Par de los tornillos de la placa, N·m',
        measuredBy: 'Quién midió',
        rested: 'Horas desde que funcionó, se lavó o se bruñó por última vez',
        contact: 'El palpador del instrumento después de su ajuste',
        calibrated: 'Día de la última calibración, año-mes-día',
        turn: 'Una vuelta de la aguja',
        warmed: 'Cuánto puede haberse calentado el instrumento desde su ajuste, K',
        reference: 'De qué es la temperatura junto a la del cilindro',
        referenceClose: 'Temperatura del anillo o micrómetro en el cero final, °C',
      },
      caliperHelp:
        'Un pie de rey es poco fino, pero muestra un manguito mal leído en una vuelta o una aguja que dio una vuelta de más.',
      clampings: {
        bare: 'sin nada atornillado',
        'torque-plate': 'con placa de apriete',
        assembled: 'montado',
      },
      contacts: { kept: 'sin cambiar', changed: 'cambiado' },
      turnTaken: (typical) => `se toma ${typical}`,
      warmedNone: 'no se toma nada',
      referenceCloseTaken: 'como al principio',
    },
    closing: {
      deviation: 'Ahora vuelva a poner el instrumento en su ajuste: el comparador muestra {zeroClose}.',
      reverse:
        'Ahora vuelva a poner el instrumento donde lo puso a cero en el cilindro: el comparador muestra {zeroClose}.',
      direct: 'Ahora lea otra vez el patrón ({standard}). Da de más: {zeroClose}.',
      overContacts:
        'Ahora mida el instrumento sobre sus palpadores: el micrómetro lee {overContacts} con el comparador en {dialOverContacts}.',
      labels: {
        zeroClose: 'Cero final',
        overContacts: 'Sobre los palpadores',
        dialOverContacts: 'Comparador mientras tanto',
        standard: 'En qué se comprobó',
      },
    },
    typicalTitle: 'Cifras típicas',
    typical:
      'Cifras típicas de este tipo de instrumento, de memoria del oficio; cambie lo que sepa mejor. Todas son incertidumbres típicas salvo la deriva, que es media anchura.',
    typicalSentence:
      'Las repeticiones se dispersan {repeatability} µm, conocido con {repeatabilityFreedom} grados de libertad. Ajuste exacto hasta {setting} µm, comparador o escala hasta {scale} µm, basculado hasta {rocking} µm; deriva sin cero final ± {drift} µm. Patrón ({standardKind}): exacto hasta {standardDoubt} µm; un termómetro, hasta {thermometerDoubt} K. Los palpadores ocupan {contact} mm a cada lado (pies de un centrador: a {feet} mm de uno); la profundidad se mantiene a {depthDoubt} mm.',
    typicalLabels: {
      repeatability: 'Desviación típica de las repeticiones, µm',
      repeatabilityFreedom: 'Grados de libertad en que se apoya',
      setting: 'Incertidumbre típica del ajuste, µm',
      scale: 'Incertidumbre típica del comparador o la escala, µm',
      rocking: 'Incertidumbre típica por la inclinación que quedó al bascular, µm',
      drift: 'Media anchura de la deriva sin cero final, µm',
      standardKind: 'Con qué se ajustó el instrumento',
      standardDoubt: 'Incertidumbre típica del anillo o micrómetro mismo, µm',
      thermometerDoubt: 'Incertidumbre típica de un termómetro, K',
      contact: 'Media anchura de un palpador sobre la pared, mm',
      feet: 'De un palpador a cada pie del centrador, mm a lo largo de la pared',
      depthDoubt: 'Incertidumbre típica de la profundidad, mm',
    },
    noFigure: 'ninguna',
    temperatureEffect: {
      short: (effect) => `Cada una corregida en ${effect} por la temperatura.`,
      none: 'A estas temperaturas no se corrige nada.',
      sum: (effect) => `A estas temperaturas cada lectura se corrige en ${effect}.`,
      parts: (bore, boreC, standard, reference, referenceC) =>
        `De ello, el cilindro a ${boreC} hace ${bore}, y el ${reference} a ${referenceC}, ${standard}.`,
      doubt: (doubt) => `Esto es exacto hasta ${doubt}.`,
      notRecorded:
        'No se anotaron las dos temperaturas: lo que falta se supone, y se cuenta su incertidumbre.',
    },
    survey: 'Medido: {date}; horas de funcionamiento: {hours}.',
    surveyOfSeveral: 'Medición {which}, hecha: {date}; horas de funcionamiento: {hours}.',
    surveyNumber: (number, all) => `${number} de ${all}`,
    surveyLabels: {
      which: 'Qué medición se muestra',
      date: 'Fecha de la medición, año-mes-día',
      hours: 'Horas de funcionamiento',
    },
  },
}
