import type { owner as english } from '../english/owner'
import type { Texts } from '../texts'

export const owner: Texts<typeof english> = {
  topics: {
    seen: 'Lo que ve',
    now: 'Nuevo, y ahora',
    shape: 'Dónde ancho, dónde estrecho',
    used: 'Lo que está gastado',
    sure: 'Qué seguridad tenemos',
    advice: 'Lo que proponemos',
    causes: 'Por qué, y cómo frenarlo',
  },
  nothing: 'En este cilindro no se ha medido nada todavía, así que no hay nada que contar.',
  scanned:
    'Se hizo un barrido de la forma de este cilindro, pero no se midió su tamaño; nadie puede decir cuánto se ha desgastado.',
  seen: {
    hair: {
      mm: 'Un pelo mide unas 70 µm de grueso; una µm es la milésima parte de un milímetro.',
      inch: 'Un cabello humano tiene unas 0,003 in de grueso.',
    },
    drawn: (factor) =>
      `Mira hacia dentro del cilindro. Cada cambio de su anchura está dibujado ${factor} veces más grande.`,
    flat: 'Ve la pared del cilindro, abierta y extendida en plano.',
    colours: 'Lo azul es estrecho y lo ámbar es ancho.',
    hatched: 'Donde la pared está rayada, nadie midió.',
  },
  now: {
    between: (least, most, now) =>
      `Nuevo medía de ${least} a ${most} de ancho; ahora mide ${now} donde es más ancho [diámetro].`,
    least: (least, now) =>
      `Nuevo medía ${least} de ancho o más; ahora mide ${now} donde es más ancho [diámetro].`,
    alone: (now) => `Ahora mide ${now} donde es más ancho [diámetro].`,
    notEntered: 'Cuánto medía de nuevo no está anotado aquí.',
    doubt: 'La cifra después de ± dice cuánto puede fallar.',
    isNew: 'No ha funcionado todavía.',
    grown: {
      whenNew: (figure) => `En el lugar más gastado ha crecido ${figure} desde que era nuevo.`,
      since: (figure) => `En el lugar más gastado ha crecido ${figure} desde que se midió por primera vez.`,
      land: (figure) =>
        `En el lugar más gastado ha crecido ${figure}, comparado con la pared que ningún segmento toca.`,
      bore: (figure) => `En el lugar más gastado es ${figure} más ancho que el nuevo.`,
      'new-band': (figure) =>
        `En el lugar más gastado ha crecido ${figure}: no se sabe con más precisión cuánto medía al hacerse.`,
    },
    grownNot: (figure) => `En ningún lugar es seguro que haya crecido: ${figure} en el lugar más gastado.`,
    slip: 'Una de las lecturas parece un error, y estas cifras pueden cambiar.',
    hairs: {
      half: 'Eso es menos que medio pelo.',
      one: 'Eso es menos que un pelo.',
      about: 'Eso es más o menos un pelo.',
      more: (count) => (count === 1 ? 'Eso es más que un pelo.' : `Eso es más que ${count} pelos.`),
    },
  },
  shape: {
    places: (wide, tight) => `Donde más ancho es: ${wide}. Donde más estrecho: ${tight}.`,
    ovalOnly: (depth, wide, tight) => `Es más ancho ${wide} que ${tight}, a ${depth} de profundidad.`,
    even: 'Es redondo y parejo, hasta donde estas lecturas pueden decir.',
    place: (depth, across) => `a ${depth} de profundidad, ${across}`,
    down: (depth) => `a ${depth} de profundidad`,
    across: {
      frontRear: 'de delante a atrás',
      frontRight: 'de delante a la derecha a atrás a la izquierda',
      sides: 'de lado a lado',
      frontLeft: 'de delante a la izquierda a atrás a la derecha',
    },
    oval: (figure, depth) => `Es ovalado [ovalización] en ${figure}, a ${depth} de profundidad.`,
    ovalOpen: 'Ningún óvalo destaca de la incertidumbre del instrumento.',
    longest: (across) => `El lado largo del óvalo va ${across}.`,
    taper: (figure) => `De un extremo al otro su anchura cambia [conicidad] en ${figure}.`,
    taperOpen: 'No destaca ningún cambio de un extremo al otro.',
    oneAxis: 'No se midió si es ovalado.',
    interval: 'Las cifras entre paréntesis dicen lo pequeño y lo grande que puede ser.',
  },
  used: {
    share: (low, high) => `Del desgaste que permite su límite, está gastado de ${low} a ${high}.`,
    shareOne: (share) => `Del desgaste que permite su límite, está gastado ${share}.`,
    left: (low, high) => `Queda, pues, de ${low} a ${high}.`,
    leftOne: (share) => `Queda, pues, ${share}.`,
    mayBeAll: 'Puede, pues, que no quede nada.',
    over: (limit) => `Es más ancho que su límite de ${limit} [límite de desgaste].`,
    overNew: (limit) => `Es más ancho de lo que puede ser uno nuevo, ${limit}.`,
    under: (limit) => `Es más estrecho de lo que puede ser uno nuevo, ${limit}.`,
    insideNew: (least, most) => `Es todavía tan ancho como puede ser uno nuevo: de ${least} a ${most}.`,
    insideLimit: (limit) => `Está dentro de su límite de ${limit} [límite de desgaste].`,
    tooClose: (limit) => `Si ha pasado su límite de ${limit} es demasiado justo para decidir.`,
    tooCloseNew: 'Si es tan ancho como puede ser uno nuevo es demasiado justo para decidir.',
    notSaid: 'No se puede decir cuánto está gastado.',
    plating: (both, one) =>
      `De la capa dura [recubrimiento] falta ${both} si los dos lados se desgastaron por igual, ${one} si un solo lado se lo llevó todo.`,
    platingDoubt: (low, high) => `Con la incertidumbre puede ser de ${low} a ${high}.`,
    atLimit: 'Puede estar ya en su límite.',
    earliest: (limit, hours) =>
      `Si sigue desgastándose como hasta ahora, puede llegar a su límite de ${limit} a las ${hours} h de funcionamiento, y muy probablemente más tarde.`,
    shapeOver: {
      ovality: (figure, limit) =>
        `Es más ovalado [ovalización] de lo que permite su límite de ${limit}: ${figure}.`,
      taper: (figure, limit) =>
        `De un extremo al otro su anchura cambia [conicidad] más de lo que permite su límite de ${limit}: ${figure}.`,
    },
    stops: {
      'bare-aluminium': (where) =>
        `Se ve metal desnudo a través de la capa dura (${where}): eso puede acabar con un cilindro de buena medida.`,
      flaking: (where) =>
        `La capa dura se desconcha (${where}): eso puede acabar con un cilindro de buena medida.`,
      'catches-nail': (where, kind) =>
        `La uña se engancha (${kind}, ${where}): eso puede acabar con un cilindro de buena medida.`,
      'pits-in-ring-path': (where) =>
        `Hay picaduras donde van los segmentos (${where}): eso puede acabar con un cilindro de buena medida.`,
      'pits-perhaps-in-ring-path': (where) =>
        `Hay picaduras (${where}): si los segmentos pasan por ahí, eso puede acabar con un cilindro de buena medida.`,
    },
    none: {
      'no-readings': 'No se ha medido nada todavía.',
      'no-size-over-contacts': 'El instrumento no ha dado medidas todavía.',
      'no-limits': 'No hay ningún límite anotado, así que nadie puede decir cuánto está gastado.',
      'all-blocked': 'Todo lo leído está en una lumbrera, así que todavía no se evalúa nada.',
    },
  },
  sure: {
    inside: (chances) =>
      `Sobre su medida: en el peor lugar, con estas lecturas, está dentro de su límite ${chances}.`,
    above: (chances) =>
      `Sobre su medida: en el peor lugar, con estas lecturas, ha pasado su límite ${chances}.`,
    below: (chances) =>
      `Sobre su medida: en el peor lugar, con estas lecturas, es demasiado estrecho ${chances}.`,
    tooClose: 'Si su medida está dentro del límite es demasiado justo para decidir.',
    leans: {
      inside: (chances) => `En el peor lugar, con estas lecturas, está dentro ${chances}.`,
      above: (chances) => `En el peor lugar, con estas lecturas, ha pasado su límite ${chances}.`,
      below: (chances) => `En el peor lugar, con estas lecturas, es demasiado estrecho ${chances}.`,
      even: 'En el peor lugar, lo uno y lo otro son más o menos igual de probables.',
    },
    shapeTooClose: {
      ovality: (figure, limit) =>
        `Si es demasiado ovalado es demasiado justo para decidir: ${figure}, y su límite es ${limit}.`,
      taper: (figure, limit) =>
        `Si su anchura cambia demasiado de un extremo al otro es demasiado justo para decidir: ${figure}, y su límite es ${limit}.`,
    },
    notJudged: 'Aquí no se evalúa ninguna medida.',
    doubt: (doubt) => `En 19 de cada 20 casos una anchura es exacta hasta ${doubt}.`,
    provisional: 'No se anotó todo en lo que esto se apoya, así que no es la última palabra.',
    openQuestions: 'Una de las lecturas parece un error, y hay que mirarla primero.',
    gap: (from, to) => `Nadie midió de ${from} a ${to} de profundidad.`,
    widestGap: (from, to) =>
      `Entre los lugares leídos nadie midió; el hueco más grande va de ${from} a ${to} de profundidad.`,
    bothSides: 'El instrumento va de pared a pared, así que no puede decir qué lado se desgastó.',
    twoAxes: 'Se leyó en dos direcciones solamente; un óvalo entre ellas no se vería.',
    surfaceNote: 'Un instrumento no ve grietas ni rayas; esas se buscan con la vista.',
  },
  advice: {
    outcomes: {
      'run-on': 'Proponemos dejarlo funcionar como está, y medirlo otra vez en el próximo servicio.',
      'clean-and-measure-again': 'Proponemos una buena limpieza, y después medirlo otra vez.',
      'measure-again-better': 'Proponemos medirlo otra vez, con más cuidado, antes de que usted decida.',
      'next-piston': 'Proponemos un pistón que vaya bien con el cilindro como está ahora.',
      hone: 'Proponemos un repaso ligero de la pared [bruñir], si eso quita las marcas.',
      'bore-oversize': 'Proponemos rectificarlo a la medida siguiente [sobremedida], con un pistón adecuado.',
      're-plate': 'Proponemos una nueva capa dura en la pared [recubrimiento], o un cilindro nuevo.',
      'replace-or-sleeve': 'Proponemos un cilindro nuevo, o una pared nueva metida a presión [camisa].',
    },
    runOnBy: (hours) =>
      `Proponemos dejarlo funcionar como está, y medirlo otra vez a más tardar a las ${hours} h de funcionamiento.`,
    runOnDay: (day) => `Con las horas que funciona cada semana, eso es el ${day}.`,
    boreTo: (oversize) => `Proponemos rectificarlo en ${oversize} [sobremedida], con un pistón adecuado.`,
    boreAlike: (oversize) =>
      `Otro cilindro se tiene que rectificar, y todos van a la misma medida: lo proponemos también para este, en ${oversize} [sobremedida].`,
    boreAlikeAny:
      'Otro cilindro se tiene que rectificar, y todos van a la misma medida: lo proponemos también para este [sobremedida].',
    alone: (suggestion) => `Por sí solo: ${suggestion}`,
    undecided: {
      'for-comparison': 'Este está aquí para comparar, así que no hay nada que proponer.',
      'earlier-survey': 'Así estaba antes, y por eso no hay nada que proponer.',
      'no-readings': 'No hay nada que proponer antes de medirlo.',
      'some-unread': 'No hay nada que proponer antes de medirlo todo.',
      'land-alone': 'No hay nada que proponer antes de medir donde corren los segmentos.',
      'no-limits': 'No hay nada que proponer antes de anotar sus límites.',
    },
    covered: 'Hay algo sobre la pared que la tapa; eso tiene que salir primero.',
    play: {
      'too-loose': 'El pistón tiene dentro más juego [holgura] del que puede tener.',
      'too-tight': 'El pistón tiene dentro menos juego [holgura] del que debe tener.',
      'too-close': 'Si el pistón tiene dentro el juego correcto [holgura] es demasiado justo para decidir.',
      inside: 'El pistón tiene dentro el juego [holgura] que debe tener.',
    },
    choices: {
      'run-on': (earliest, now) =>
        `Seguir en servicio da las horas de ${now} a ${earliest} h, y muy probablemente más.`,
      'run-on-open': 'No se sabe cuántas horas da seguir en servicio.',
      'run-on-marked':
        'Seguir en servicio con una marca así puede estropear más; ninguna cifra dice cuánto aguantaría.',
      'run-on-over': 'Seguir en servicio más allá de su límite pone en riesgo toda la máquina.',
      'next-piston': 'Un pistón adecuado quita el juego, y no da más horas a la pared.',
      hone: 'Un repaso ligero borra marcas pequeñas; quita pared, y la pared queda tan ovalada como estaba.',
      'bore-oversize': 'Rectificarlo deja nueva toda la pared, y sus horas empiezan de cero.',
      're-plate': 'Una capa nueva deja nueva la pared, y sus horas empiezan de cero.',
      'replace-or-sleeve': 'Un cilindro nuevo o una camisa es una pared nueva, y sus horas empiezan de cero.',
    },
    fromNew: (hours) =>
      `Esta pared tendría al menos ${hours} h desde nueva, si sigue desgastándose como hasta ahora.`,
    ifInside: (then) => `Si resulta que está dentro, ${then}.`,
    ifOver: (then) => `Si resulta que lo ha pasado, ${then}.`,
    follows: {
      'run-on': 'puede seguir en servicio',
      'clean-and-measure-again': 'se limpia y se mide otra vez',
      'measure-again-better': 'hay otra cosa todavía demasiado justa para decidir',
      'next-piston': 'necesita un pistón adecuado',
      hone: 'puede bastar un repaso ligero',
      'bore-oversize': 'se rectifica',
      're-plate': 'necesita una nueva capa dura [recubrimiento]',
      'replace-or-sleeve': 'necesita un cilindro nuevo o una pared nueva [camisa]',
    },
    hours: {
      'no-limit': 'No se sabe cuántas horas da cada opción: no hay ningún límite hasta el que contar.',
      'no-hours': 'No se sabe cuántas horas da cada opción: no se anotaron sus horas de funcionamiento.',
      'nothing-to-count-from': 'No se sabe cuántas horas da cada opción: no hay nada desde donde contar.',
      shrunk: 'No se sabe cuántas horas da cada opción: da una medida menor que antes, y eso no puede ser.',
    },
    lastWord: 'El manual de taller y un buen rectificador tienen la última palabra.',
  },
  causes: {
    lead: 'Las cifras muestran qué se desgastó, no por qué: cada cosa de estas es algo que mirar.',
    none: 'No destaca ninguna forma que señale una causa.',
    wideTop: 'Más ancho arriba: casi siempre calor, presión y poca capa de aceite ahí.',
    wideBottom: 'Más ancho abajo: a veces suciedad en el aceite, o un pistón flojo.',
    barrel: 'Más ancho en el centro: en bombas y compresores casi todos se desgastan así.',
    waisted: 'Más estrecho en el centro: busque metal pegado a la pared, o tornillos que tiran de ella.',
    bell: 'Más ancho en una boca: a veces se mecanizó así, o el pistón cabecea ahí.',
    stepped: 'Un escalón donde los segmentos dan la vuelta: con el tiempo lo tienen casi todas las paredes.',
    oval: 'Ovalado: casi siempre el pistón se apoya en dos lados; también pueden ser tornillos y calor.',
    rust: 'Óxido o picaduras: agua que se quedó dentro mientras no se usaba.',
    scratch: 'Una raya: pasó algo duro; mire el filtro y las juntas.',
    scuff: 'Pared gripada: mire si hubo poco aceite, demasiado calor, o trabajo fuerte en frío.',
    flaking: 'Una capa que se suelta: mire los bordes de las lumbreras y la suciedad del aire.',
    ridge: 'Un reborde: mire dónde dan la vuelta los segmentos.',
    rateChanged: 'No se desgastó siempre igual: busque qué cambió, como polvo que pasó el filtro.',
    slow: 'Para frenarlo: tenga limpios los filtros, use el aceite correcto y caliéntelo antes del trabajo fuerte.',
    slowRust: 'Para frenarlo: engrase la pared antes de guardarlo, y téngalo seco.',
  },
  show: {
    bore: 'Cilindro',
    step: (number, all) => `${number} de ${all}`,
    steps: 'Lo que se cuenta',
    goTo: (number, topic) => `${number}: ${topic}`,
    next: 'Siguiente',
    back: 'Atrás',
    leave: 'Cerrar',
    fullScreen: 'Pantalla completa',
    endFullScreen: 'Salir de pantalla completa',
    fullScreenRefused: 'El navegador no da a esta página toda la pantalla.',
    wall: 'La pared del cilindro',
    otherWindow: 'Mostrar en otra pantalla',
    otherWindowBlocked:
      'El navegador no abrió una segunda ventana. Permita ventanas de esta página e inténtelo otra vez.',
    follows: 'Esta ventana sigue lo que se hace en Medir.',
    turn: 'Girarlo a mano',
    turnBack: 'Volver a lo que se dice',
    turning: 'Gírelo con un dedo o el ratón, o con los botones.',
    behind: 'Las cifras que hay detrás',
    flat: 'Este navegador no dibuja aquí ninguna imagen 3D. El mapa muestra la misma pared, desarrollada.',
    keys: 'Las flechas, RePág y AvPág o la barra espaciadora van de una frase a la siguiente; Esc cierra.',
  },
}
