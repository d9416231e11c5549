import type { paste as english } from '../english/paste'
import type { Texts } from '../texts'

export const paste: Texts<typeof english> = {
  paste: {
    title: 'Lo que se pegó',
    taken: (readings, stations) =>
      `${readings === 1 ? '1 lectura tomada' : `${readings} lecturas tomadas`} en ${stations === 1 ? '1 punto de medida' : `${stations} puntos de medida`}.`,
    replaced: (stations) =>
      stations === 1
        ? 'En uno de ellos ocuparon el lugar de otras anteriores.'
        : `En ${stations} de ellos ocuparon el lugar de otras anteriores.`,
    byHeads: (heads) => `Colocadas según los encabezados del bloque: ${heads}.`,
    heads: { depths: 'profundidades', axes: 'ejes', bores: 'cilindros' },
    nothing: 'No se tomó nada.',
    refused: (cells) =>
      cells === 1
        ? 'Se rechazó una celda: corríjala aquí y pulse Intro, o cópiela a otro sitio.'
        : `Se rechazaron ${cells} celdas: corríjalas aquí y pulse Intro, o cópielas a otro sitio.`,
    takenTitle: 'Lo que se tomó',
    takenAt: (where, text) => `${where}: ${text}`,
    takenInPlace: (where, text, before) =>
      `${where}: ${text}, en lugar de ${before === 1 ? '1 lectura' : `${before} lecturas`}`,
    cell: (row, column) => `fila ${row}, columna ${column}`,
    cellAt: (cell, where) => `${where} (${cell})`,
    mend: (where) => `Rechazada: ${where}`,
    copyRest: 'Copiar lo rechazado',
    copied: 'Copiado.',
    'not-copied': 'Este navegador no lo copió. Selecciónelo y cópielo a mano.',
    noStation: {
      'no-level': (head) =>
        head === ''
          ? 'No hay ninguna profundidad al lado.'
          : `Esta medición no tiene ningún nivel en «${head}». Añádalo antes.`,
      'no-axis': (head) =>
        head === ''
          ? 'No hay ningún eje encima.'
          : `Esta medición no tiene ningún eje en «${head}». Añádalo antes.`,
      'no-bore': (head) =>
        head === ''
          ? 'No hay ningún cilindro encima.'
          : `Este trabajo no tiene ningún cilindro llamado «${head}».`,
      'past-the-grid': () =>
        'Queda más allá del final de la tabla. Pegue desde una celda más arriba o más a la izquierda.',
    },
    unreadable: {
      empty: 'No había texto que pegar.',
      'too-large': 'Es más de lo que cabe en una medición. Copie solo las lecturas.',
      'commas-only':
        'Las comas solas no muestran dónde acaba una celda y dónde empiezan los decimales. Copie las celdas desde la propia hoja de cálculo, o sepárelas con tabuladores o punto y coma.',
      'quote-left-open': 'Unas comillas se abren y no se cierran. Ciérrelas o quítelas, y pegue otra vez.',
    },
    notLoaded:
      'No se pudo cargar la parte de la página que lee tablas. ¿Sigue funcionando Borewall? Entonces pegue otra vez.',
  },
}
