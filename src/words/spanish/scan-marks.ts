import type { scanMarks as english } from '../english/scan-marks'
import type { Texts } from '../texts'

export const scanMarks: Texts<typeof english> = {
  title: 'Marcas en el barrido',
  inScan: (bore, scan) => `Cilindro ${bore}, barrido ${scan}`,
  notLooked: 'Sus radios no están en este archivo, o no se les puede ajustar un eje.',
  working: 'Buscando lo que destaca…',
  none: (least) =>
    `Nada destaca de la forma suave. Una marca de tres ángulos por tres niveles se habría visto a partir de unos ${least}.`,
  lead: (least) =>
    `Lo que destaca de la forma suave en el radio, más allá del ruido; las marcas pequeñas se ven a partir de unos ${least}.`,
  lone: (count) =>
    count === 1
      ? 'Un valor destaca solo: por lo general, suciedad en la pared o en el palpador radial.'
      : `${count} valores destacan solos: por lo general, suciedad en la pared o en el palpador radial.`,
  numbered: (number, shape) => `${number} ${shape}`,
  shapes: { streak: 'tira a lo largo de la carrera', band: 'franja alrededor', patch: 'mancha' },
  line: 'línea estrecha',
  within: (number) => `a lo largo de la marca ${number}`,
  signs: { smaller: 'da menor', larger: 'da mayor' },
  height: (sign, height, doubt) => `${sign} en ${height} ${doubt} en el radio`,
  size: (across, along) => `${across} de ancho, ${along} de largo`,
  onBridge: (from, to) => `en la pared entre dos lumbreras, de ${from} a ${to}`,
  onBridgeNamed: (one, other) => `en la pared entre «${one}» y «${other}»`,
  besideOpening: 'a lo largo del borde de una lumbrera, donde también se ve un chaflán',
  text: (title, place, parts) => `${title}: ${[place, ...parts].join('; ')}`,
  record: 'Anotarla',
  recordTitle: (title) => `Anotar ${title} como hallazgo en la superficie`,
  recorded: 'anotada',
  change: 'marca del barrido anotada',
  note: (height) => `En el barrido ${height}.`,
  more: (count) => `Mostrar las otras ${count}`,
  patterns: {
    title: 'Cómo están colocadas: algo que comprobar',
    lead: 'Un patrón no demuestra una causa. Se nombran las causas habituales para que se puedan mirar.',
    fourCorners: (at, pin) =>
      `Cuatro esquinas, a ${at}: a los lados de los alojamientos del bulón, si el bulón está más o menos a lo largo de ${pin}.`,
    bothSides: (one, other) => `En los dos lados, hacia ${one} y ${other}.`,
    oneSide: (at) => `En un lado, hacia ${at}.`,
    allRound: 'Todo alrededor del cilindro.',
    proudBridge: (where) => `La pared entre ${where} sobresale.`,
    relievedBridge: (where) => `La pared entre ${where} está rebajada.`,
    portsNamed: (one, other) => `«${one}» y «${other}»`,
    portsAt: (from, to) => `las dos lumbreras de ${from} a ${to}`,
    band: 'Una franja alrededor del cilindro.',
    causes: {
      'four-corners':
        'Habitual con cuatro esquinas: poca holgura del pistón, calentado demasiado rápido, sobrecalentado, alojamientos del bulón que crecieron. Compruebe la holgura, la refrigeración y cómo se hizo el rodaje.',
      'both-sides':
        'Habitual en los dos lados: poca holgura, sobre todo poco después de una reparación, o un cilindro ovalizado por sus tornillos. Compruebe la holgura y el cilindro tal como va atornillado.',
      'one-side':
        'Habitual en un lado: en el lado de empuje, aceite perdido en un sitio, aletas tapadas o falta de refrigeración; solo en el lado de escape, mezcla pobre, demasiado calor o carbonilla; abajo en el lado de admisión, polvo que pasó el filtro; líneas largas y finas, combustible que lavó el aceite. Compruebe qué lado es.',
      'all-round':
        'Habitual con marcas todo alrededor: sin aceite, o combustible sin aceite. Compruebe cómo se engrasa.',
      'bridge-smaller':
        'Habitual con un puente que sobresale: se hincha al calentarse, nunca se rebajó, o la mezcla era demasiado pobre. Mire lo que dice el manual de rebajarlo.',
      'bridge-larger':
        'Un puente rebajado puede estarlo a propósito, o desgastado. Mire lo que dice el manual de él.',
      band: 'Habitual con una franja: un escalón donde los segmentos dan la vuelta, óxido donde estuvo un segmento o hubo agua, o un segmento que se pegó. Fíjese en su profundidad.',
    },
  },
  sign: {
    plated:
      'En una pared recubierta, lo que da menor puede ser metal del pistón adherido, y lo que da mayor dentro de ello, una raya. Haga que se limpie y repita el barrido antes de decidir nada.',
    other:
      'Lo que da menor está sobre la pared o nunca se desgastó; lo que da mayor está desgastado o rayado. Haga que se quite el metal adherido y repita el barrido antes de decidir nada.',
    care: 'Lo que quita aluminio ataca también un cilindro de aluminio, y quema la piel y los ojos. La limpieza es para quien conozca la pared: siga el manual de taller.',
  },
  cleaned: {
    title: 'Antes y después de limpiar',
    against: (before, after) => `«${before}» frente a «${after}».`,
    turned: (degrees) =>
      `Las lumbreras del segundo barrido están ${degrees} más allá en sentido horario, así que no se compara nada. Dé a los dos barridos el mismo 0°.`,
    taken: 'Nada en la pared muestra si los dos barridos empezaron en el mismo 0°: se da por sentado.',
    fates: {
      gone: 'desapareció: estaba adherido, o suelto',
      less: 'es menos que antes: parte estaba adherido',
      'as-before': 'quedó como estaba',
      more: 'es más que antes',
      'turned-larger': 'ahora da mayor: hay un surco debajo de lo que estaba adherido',
      'turned-smaller': 'ahora da menor: hay algo sobre la pared',
      'not-seen': 'no se puede comparar: el segundo barrido no tiene valor ahí',
    },
    groove: 'quedó: un surco, o desgaste',
    figures: (before, after) => `${before} antes, ${after} después`,
    line: (title, place, fate, figures) => `${title}, ${place}: ${fate} (${figures}).`,
    fresh: (titles) => `Solo en el segundo barrido: ${titles}.`,
  },
}
