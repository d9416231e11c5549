import type { scanTable as english } from '../english/scan-table'
import type { Texts } from '../texts'

export const scanTable: Texts<typeof english> = {
  reading: 'Leyendo el barrido…',
  progress: (percent) => `${percent} % del archivo`,
  lead: 'Compruebe lo que contiene el archivo. No se toma nada hasta que usted lo diga.',
  notRead: {
    empty: 'No hay nada en este archivo.',
    'no-text':
      'Esto no es un archivo de texto. Guarde el barrido como CSV o como texto con tabuladores y abra ese.',
    'too-large':
      'Este archivo tiene más de un millón de radios. Deje fuera uno de cada dos niveles o ángulos.',
    'commas-only':
      'Sus comas podrían separar celdas y podrían ser comas decimales. Diga qué signo separa las celdas.',
    'no-heads':
      'Ninguna fila nombra lo que contienen las columnas. Dé una lista con los encabezados «depth mm, angle °, radius µm», una fila por radio, o una tabla con «depth mm / radius µm» en su primera celda, los ángulos en horizontal y una fila por profundidad.',
    diameters:
      'Los encabezados hablan de diámetros. Un barrido tiene radios: a qué distancia está una pared del eje del palpador radial.',
    'no-values': 'No se pudo leer ningún radio de este archivo.',
    'too-few-angles': 'Hay menos de tres ángulos en este archivo: ningún círculo pasa por ellos.',
    'too-many-places':
      'Profundidades y ángulos hacen más de un millón de lugares. Deje fuera algunos de unas o de otros.',
    'angles-differ': (line, depth) =>
      `Los niveles no se midieron en los mismos ángulos: la línea ${line} tiene un ángulo que le falta al nivel a ${depth}. Lleve antes todos los niveles a un mismo conjunto de ángulos.`,
  },
  open: {
    'value-unit': 'Los encabezados no dicen en qué unidad están los radios. Dígalo.',
    'depth-unit': 'Los encabezados no dicen en qué unidad están las profundidades. Dígalo.',
    decimal: 'Unas cifras tienen coma y otras punto. Diga qué signo separa los decimales.',
  },
  problems: {
    letters: (text) =>
      `«${text}» contiene letras. Un radio es un número; deje la celda vacía donde haya una lumbrera.`,
    'other-sign': (text) => `«${text}» no es un número.`,
    'inner-space': (text) => `«${text}» tiene un espacio dentro.`,
    'sign-place': (text) => `«${text}» tiene un signo donde no debe haberlo.`,
    'both-marks': (text) => `«${text}» tiene una coma y un punto. Escríbalo sin separador de miles.`,
    'several-marks': (text) => `«${text}» tiene más de un signo decimal.`,
    'too-long': (text) => `«${text}» es más largo que cualquier cifra de un palpador radial.`,
    'too-large': (text) => `«${text}» es mayor que todo lo que se mide aquí.`,
    'other-mark': (text) => `«${text}» tiene otro signo decimal que el resto del archivo.`,
    'mark-open': (text) => `«${text}»: nadie ha dicho todavía si los decimales van con coma o con punto.`,
    'no-depth': () => 'No hay profundidad.',
    'no-angle': () => 'No hay ángulo.',
    'radius-too-large': (text) => `«${text}» es un radio de más de 2 m. ¿Es correcta la unidad?`,
    'cells-missing': (text, other) =>
      `Esta fila tiene ${text} celdas donde los encabezados tienen ${other}. Escriba celdas vacías donde haya una lumbrera.`,
    'cells-left-over': (text, other) =>
      `Esta fila tiene ${text} celdas donde los encabezados tienen ${other}.`,
    'read-twice': (_text, other) =>
      `El lugar está también en la línea ${other}, con otra cifra. Se toma la de la línea ${other}.`,
    'quote-left-open': () => 'Unas comillas de esta fila no se cierran nunca.',
  },
  place: (line, column) => `Línea ${line}, columna ${column}`,
  line: (line) => `Línea ${line}`,
  moreProblems: (count) => `y ${count} más`,
  problemsTitle: (count) => `No se pudieron leer: ${count}`,
  problem: 'un lugar',
  manyProblems: (count) => `${count} lugares`,
  problemsKept: 'Todo lo demás se leyó. Estos lugares quedan vacíos si toma el barrido como está.',
  labels: {
    separator: 'Las celdas se separan con',
    decimal: 'Signo decimal',
    depthUnit: 'Las profundidades están en',
    valueUnit: 'Los radios están en',
    sign: 'Una cifra mayor está',
    turn: 'Los ángulos, vistos desde la cara superior, van',
    name: 'Nombre',
    date: 'Fecha',
    hours: 'Horas de funcionamiento',
    cleaning: 'Tomado',
  },
  units: { mm: 'mm', um: 'µm', inch: 'pulgadas', 'ten-thousandth': '0,0001 in' },
  signs: { outward: 'más lejos del eje', inward: 'más cerca del eje' },
  turns: { clockwise: 'en sentido horario', 'counter-clockwise': 'en sentido antihorario' },
  cleaning: { before: 'antes de limpiar', after: 'después de limpiar' },
  cleaningOpen: 'no se dice',
  choose: 'Diga cuál',
  rows: {
    levels: 'Niveles',
    angles: 'Ángulos',
    values: 'Radios',
    missing: 'Lugares vacíos',
    range: 'Margen',
    layout: 'Dispuesto como',
  },
  layouts: {
    list: 'una lista, una fila por radio',
    table: 'una tabla, profundidad hacia abajo y ángulo en horizontal',
  },
  levels: (count, from, to) => `${count}, de ${from} a ${to}`,
  angles: (count, step) => `${count}, cada ${step}`,
  anglesUneven: (count, least, most) => `${count}, con ${least} a ${most} entre ellos`,
  missing: (count, share) => `${count} (${share} %): se toman como lumbreras o no medidos`,
  range: (least, most) => `de ${least} a ${most}`,
  closing: (count, farthest) =>
    `Lecturas de cierre a una vuelta entera, dejadas fuera: ${count}. Difieren de la primera en ${farthest} como mucho: eso se movió el palpador o la pieza.`,
  repeated: (count) => `Lugares que están en el archivo dos veces con la misma cifra: ${count}.`,
  map: 'El barrido como está en el archivo, desarrollado: ángulo en horizontal, profundidad hacia abajo. Oscuro es más cerca del eje, claro más lejos; lo rayado está vacío.',
  noSize:
    'Un barrido muestra la forma y ninguna medida: el palpador radial cuenta desde un cero propio. Lecturas de un comparador de interiores en los mismos lugares se la dan.',
  take: (bore) => `Tomar el barrido para el cilindro ${bore}`,
  takeWith: (count, bore) => `Tomarlo para el cilindro ${bore}; quedan vacíos: ${count}`,
  newJob: 'Empezar con él un trabajo nuevo',
  taken: (bore) => `Tomado para el cilindro ${bore}.`,
  asReadings: 'Son lecturas a través del cilindro',
  refusedJob: 'El barrido no se puede tomar en este trabajo:',
  notKept: (why) => `El barrido no se ha guardado. ${why}`,
  change: (name) => `Barrido ${name}`,
}
