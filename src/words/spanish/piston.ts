import type { PistonLack } from '../../core/piston/piston-in-bore'
import type { piston as english } from '../english/piston'
import type { Texts } from '../texts'

const lackNames: Record<PistonLack, string> = {
  size: 'su medida',
  height: 'la altura a la que se midió',
  'crown-height': 'del borde de la falda a la cabeza',
  travel: 'la carrera del pistón',
}

export const piston: Texts<typeof english> = {
  engineTitle: 'Pistones y sobremedida para el motor',
  states: {
    fitted: 'funcionó en un cilindro',
    'at-hand': 'está disponible',
    obtainable: 'se puede conseguir',
  },
  clearance: {
    name: (piston) => `Holgura, ${piston}`,
    ranHere: 'funcionó aquí',
    range: (least, most) => `de ${least} a ${most}`,
    withDoubt: (microns, doubt) => `${microns} ± ${doubt}`,
    atRest: (temperature) => `en reposo a ${temperature}`,
    asMeasured: (figure, bore, piston) =>
      bore === piston
        ? `${figure} como se midió a ${bore}`
        : `${figure} como se midió, el cilindro a ${bore} y el pistón a ${piston}`,
    rules: {
      'smallest-to-largest': 'de cilindro mínimo menos pistón a cilindro máximo menos pistón',
      'largest-bore': 'cilindro máximo menos pistón',
      'mean-bore': 'media del cilindro menos pistón',
      'smallest-bore': 'cilindro mínimo menos pistón',
    },
    read: (size) => `pistón ${size} a 20 °C`,
    fromRange: (size) => `pistón de unos ${size}, no medido`,
    window: {
      both: {
        service: (min, max) => `al menos ${min}, en servicio como mucho ${max}`,
        new: (min, max) => `de ${min} a ${max} de origen`,
      },
      min: (min) => `al menos ${min}`,
      max: {
        service: (max) => `en servicio como mucho ${max}`,
        new: (max) => `como mucho ${max} de origen`,
      },
      none: 'ninguna holgura del manual introducida',
    },
    verdicts: {
      inside: 'encaja',
      'too-tight': 'demasiado apretado',
      'too-loose': 'demasiado flojo',
      'too-close': 'demasiado justo para decidir',
    },
    leans: {
      inside: (chances) => `con estas lecturas encaja ${chances}`,
      'too-tight': (chances) => `con estas lecturas es demasiado apretado ${chances}`,
      'too-loose': (chances) => `con estas lecturas es demasiado flojo ${chances}`,
    },
    even: 'que encaje o no es más o menos igual de probable',
    asNew: {
      inside: 'también dentro de la holgura de piezas nuevas',
      'too-tight': 'más apretado de lo que pueden ser piezas nuevas',
      'too-loose': (max) => `más flojo de lo que pueden ser piezas nuevas, ${max}`,
      'too-close': (max) => `demasiado justo para decidir frente a los ${max} de piezas nuevas`,
    },
    otherGrade: (bore, piston) => `el cilindro lleva marcada la clase ${bore}, el pistón la ${piston}`,
    unknown: {
      'no-size': 'nadie lo midió y no se dan medidas para él',
      'no-readings': 'no hay lecturas de este cilindro donde van los segmentos',
      'other-oversize': 'es para otra sobremedida',
      'other-height': 'medido a otra altura que la que pide el manual, así que sus límites no hablan de él',
    },
    notYet: 'todavía no',
    provisional: (gaps) => `provisional: no anotado ${gaps.join(', ')}`,
    provisionalShort: 'provisional',
    gaps: {
      'no-micrometer': 'qué micrómetro midió el pistón',
      'no-micrometer-check': 'lo que ese micrómetro da sobre su propio patrón',
      'no-piston-temperature': 'temperatura del pistón',
      'no-micrometer-temperature': 'temperatura del micrómetro',
      'no-height': 'altura a la que se midió el pistón',
    },
    others: 'Otros pistones',
    othersFit: (fitting, all) =>
      fitting === 0
        ? 'no encaja ninguno'
        : all === fitting
          ? all === 1
            ? 'encaja'
            : 'encajan todos'
          : `${fitting === 1 ? 'encaja' : 'encajan'} ${fitting} de ${all}`,
    other: (piston, figure, verdict) =>
      figure === '' ? `${piston}: ${verdict}` : `${piston}: ${figure}, ${verdict}`,
  },
  pairing: {
    name: 'Qué pistón en qué cilindro',
    one: 'Pistón más cercano al centro del margen',
    served: (served, all) => (served === all ? 'todos servidos' : `${served} de ${all} cilindros servidos`),
    nothing: 'no encaja ninguno',
    pair: (bore, piston) => `${bore}: ${piston}`,
    close: (pair) => `${pair} (demasiado justo para decidir)`,
    worst: (departure, middle, bore) =>
      `en el peor caso ${departure} fuera del centro del margen, ${middle}, en el cilindro ${bore}`,
    worstAlone: (departure, middle) => `en el peor caso ${departure} fuera de él, ${middle}`,
    closeAlone: 'demasiado justo para decidir si encaja',
    fitNone: (bores) => `ningún pistón de los ofrecidos encaja en: ${bores}`,
    left: (bores) => `no queda ningún pistón para: ${bores}`,
    notMeasured: (bores) => `no medidos: ${bores}`,
    spare: (pistons) => `no hacen falta: ${pistons}`,
  },
  oversize: {
    name: 'Próxima sobremedida',
    each: 'cada cilindro la suya',
    none: 'ninguna',
    open: 'no conocida',
    alike: 'todos los cilindros igual',
    order: (bores) => `rectificar en este orden, el peor primero: ${bores}`,
    bore: (bore, largest, cleanUp, needed, off) => `${bore} (${largest} + ${cleanUp} = ${needed}${off})`,
    boreTo: (bore, oversize) => `${bore} a ${oversize}`,
    off: (least, most) => `, se quitan de ${least} a ${most}`,
    close: 'demasiado justo para decidir si queda limpio: rectifique primero el peor y mire',
    proven: 'queda limpio',
    hint: (cleanUp) =>
      `${cleanUp} para que quede limpio es una orientación de memoria del oficio: introduzca la del manual`,
    pistons: (pistons) => `pistones que se ofrecen para ella: ${pistons}`,
    noPistons: 'no hay ningún pistón para ella en la lista',
    notMeasured: (bores) => `no medidos: ${bores}`,
    honed: 'lo último se bruñe; un rectificador dice cuánto',
    liner: 'una camisa se puede cambiar en su lugar',
    why: {
      plated: (bore) =>
        `el cilindro ${bore} está recubierto: no tiene sobremedida; un especialista quita el recubrimiento y lo recubre de nuevo`,
      'own-process': (bore) =>
        `el cilindro ${bore} es de aluminio-silicio: solo el proceso propio que da el manual`,
      'manual-forbids': (bore) => `el manual prohíbe rectificar el cilindro ${bore}`,
      'wall-not-recorded': (bore) => `diga antes de qué es la pared del cilindro ${bore}`,
      'no-readings': () => 'hacen falta lecturas',
      'no-standard-size': () => 'hace falta la medida mínima de origen',
      'none-given': () => 'ninguna sobremedida del manual introducida',
      'none-large-enough': (bore, cleanUp) =>
        `ninguna del manual basta para el cilindro ${bore} con ${cleanUp} para que quede limpio: una camisa u otro cilindro`,
    },
  },
  gap: {
    name: 'Abertura de puntas',
    range: (least, most) => `de ${least} a ${most}`,
    each: (doubt) => `cada una ± ${doubt} con galga`,
    typical: 'la incertidumbre de la galga es una típica',
    onlyLand: 'solo en pared que los segmentos nunca tocan: no se evalúa',
    window: {
      min: (min) => `al menos ${min}`,
      max: {
        service: (max) => `en servicio como mucho ${max}`,
        new: (max) => `como mucho ${max} de origen`,
      },
      none: 'ninguna abertura de puntas del manual introducida',
    },
    verdicts: {
      inside: 'dentro',
      'too-small': 'demasiado pequeña',
      'too-large': 'demasiado grande',
      'too-close': 'demasiado justo para decidir',
    },
    leans: {
      inside: (chances) => `con estas lecturas está dentro ${chances}`,
      'too-small': (chances) => `con estas lecturas es demasiado pequeña ${chances}`,
      'too-large': (chances) => `con estas lecturas es demasiado grande ${chances}`,
    },
    taper: 'Conicidad por las aberturas de puntas',
    taperBetween: (top, bottom) => `${top} menos ${bottom}, las aberturas divididas por π`,
    coarse: (doubt) => `demasiado basto para ver una conicidad de menos de ${doubt}`,
    byGauge: (figure, differs) =>
      differs
        ? `el instrumento da ${figure}: difieren más que su incertidumbre, así que en uno de los dos hay un error`
        : `el instrumento da ${figure}: coinciden hasta donde puede decir una galga`,
  },
  shown: {
    which: 'Pistón mostrado en el cilindro',
    along: 'Lugar a lo largo de la carrera',
    up: 'Un nivel arriba',
    down: 'Un nivel abajo',
    crown: (depth) => `Cabeza ${depth} bajo la cara superior.`,
    range: (least, most) => `de ${least} a ${most}`,
    clearance: (depth, clearance, doubt) =>
      `A ${depth}, donde se midió de lado a lado: holgura ${clearance} (${doubt} cada una), en reposo.`,
    gap: {
      measured: (depth, gap, doubt) => `Segmento a ${depth}: abertura ${gap} ± ${doubt}, medida.`,
      bore: (depth, gap, doubt) =>
        `Segmento a ${depth}: abertura ${gap} ± ${doubt}, como la abre el cilindro.`,
    },
    between: 'Entre niveles: dibujado, no medido.',
    lacks: (lacks) =>
      `Se dibuja cuando se haya introducido en Pistones: ${lacks.map((one) => lackNames[one]).join(', ')}.`,
  },
  panel: {
    lead: 'Del manual de taller, y como se midió. Un pistón se mide en la falda, en ángulo recto con el bulón.',
    window:
      'Holgura de origen de {min} a {max} mm, en servicio hasta {limit} mm, tomada como: {rule}, a {atC} °C. El manual mide el pistón a {height} mm sobre el borde inferior de la falda.',
    gapWindow: 'Abertura de puntas de origen de {min} a {max} mm, en servicio hasta {limit} mm.',
    boring: 'Rectificar quita al menos {cleanUp} mm hasta que la pared queda limpia; {alike}.',
    wall: 'El manual sobre esta pared: {bored}; {honed}. Es: {liner}.',
    wallTitle: 'Rectificar y bruñir',
    pistonsTitle: 'Pistones',
    noPistons: 'Todavía ninguno en la lista.',
    what: '{name}: {state}{ranIn}, clase {grade}, para {oversize}.',
    ranIn: ', cilindro {bore}',
    read: 'Dio {read}, a {height} mm sobre el borde de la falda, con {micrometer}; el pistón a {temperature} °C, el micrómetro a {micrometerTemperature} °C, con {thermometer}.',
    range: 'Sin medir, es de {min} a {max} mm a 20 °C.',
    doubt:
      'Una lectura es exacta hasta {doubt} µm (una incertidumbre típica). Se dilata {expansion} por millón y kelvin.',
    shape:
      'Del borde inferior de la falda hay {crown} mm hasta el borde de la cabeza y {ring} mm hasta el primer segmento, para el dibujo.',
    stroke:
      'El pistón recorre {travel} mm; arriba, su cabeza queda {crownAtTop} mm bajo la cara superior, para el dibujo.',
    details: 'Incertidumbre, dilatación y forma',
    ofPiston: (piston, label) => `${piston}: ${label}`,
    labels: {
      min: 'Holgura mínima de origen, mm',
      max: 'Holgura máxima de origen, mm',
      limit: 'Holgura máxima en servicio, mm',
      rule: 'Regla para la holgura',
      atC: 'Temperatura a la que valen las holguras, °C',
      manualHeight: 'Altura sobre el borde de la falda a la que lo mide el manual, mm',
      gapMin: 'Abertura de puntas mínima de origen, mm',
      gapMax: 'Abertura de puntas máxima de origen, mm',
      gapLimit: 'Abertura de puntas máxima en servicio, mm',
      cleanUp: 'Lo que quita al menos rectificar, mm',
      alike: 'Si todos los cilindros van a una misma sobremedida',
      bored: 'Si el manual permite rectificar',
      honed: 'Si el manual permite bruñir',
      liner: 'Si es una camisa',
      name: 'nombre',
      state: 'dónde está',
      ranIn: 'cilindro en que funcionó',
      grade: 'clase',
      oversize: 'sobremedida para la que es, mm',
      read: 'medida que mostró el micrómetro, mm',
      height: 'altura sobre el borde de la falda, mm',
      micrometer: 'micrómetro',
      temperature: 'temperatura del pistón, °C',
      micrometerTemperature: 'temperatura del micrómetro, °C',
      thermometer: 'termómetro',
      crown: 'del borde de la falda a la cabeza, mm',
      topRing: 'del borde de la falda al primer segmento, mm',
      travel: 'Carrera del pistón, mm',
      crownAtTop: 'Cabeza bajo la cara superior, arriba del todo, mm',
      rangeMin: 'medida mínima que puede tener, mm',
      rangeMax: 'medida máxima que puede tener, mm',
      doubt: 'incertidumbre al leerlo, µm',
      expansion: 'dilatación, por millón y kelvin',
      feeler: 'Incertidumbre típica de una abertura con galga, µm',
      gapDepth: (number) => `Profundidad de la abertura de puntas ${number}, mm`,
      gap: (number) => `Abertura de puntas ${number}, mm`,
      newDepth: 'Profundidad de otra abertura de puntas, mm',
      newGap: 'Otra abertura de puntas, mm',
    },
    taken: (figure) => `se toma ${figure}`,
    hinted: (figure) => `${figure}, una orientación de memoria`,
    standardSize: 'medida estándar',
    alike: {
      yes: 'todos los cilindros van a una misma sobremedida',
      no: 'cada cilindro tiene su propia sobremedida',
    },
    unsaid: { bored: 'nada sobre rectificarla', honed: 'nada sobre bruñirla' },
    mayBeBored: { yes: 'se puede rectificar', no: 'no se rectifica' },
    mayBeHoned: { yes: 'se puede bruñir', no: 'no se bruñe' },
    liner: { yes: 'una camisa que se puede sacar', no: 'ninguna camisa' },
    newMicrometer: 'otro micrómetro',
    add: {
      fitted: 'Añadir uno que funcionó aquí',
      'at-hand': 'Añadir uno disponible',
      obtainable: 'Añadir uno que se puede conseguir',
    },
    remove: (piston) => `Quitar ${piston}`,
    gapsTitle: 'Aberturas de puntas de esta medición',
    gap: 'A {depth} mm de profundidad, {gap} mm.',
    newGap: 'Otra: a {depth} mm de profundidad, {gap} mm.',
    feeler: 'Una abertura con galga es exacta hasta {feeler} µm (una incertidumbre típica).',
    waitsForDepth: 'Se guarda como abertura de puntas en cuanto esté su profundidad.',
    waitsForGap: 'Se guarda como abertura de puntas en cuanto esté la abertura.',
    removeGap: (depth) => `Quitar la abertura de puntas a ${depth}`,
  },
  changes: {
    piston: 'pistón',
    added: 'pistón añadido',
    removed: 'pistón quitado',
    gap: 'abertura de puntas',
    gapRemoved: 'abertura de puntas quitada',
  },
}
