import type { bench as english } from '../english/bench'
import type { Texts } from '../texts'

export const bench: Texts<typeof english> = {
  app: {
    name: 'Borewall',
    title: (job) => `${job} · Borewall`,
    untitled: 'Trabajo sin nombre',
    nothingLeaves: 'Todo lo que escribe se queda en este equipo.',
    skipToReadings: 'Ir a las lecturas',
    theme: { light: 'clara', dark: 'oscura', asSystem: 'automática' },
    themeIs: (theme) => `Página: ${theme}`,
    loading: 'Abriendo…',
    crashed: 'Algo ha fallado en esta página.',
    crashedKept: 'Lo que introdujo está guardado; recargue la página para seguir.',
    crashedAgain:
      'Si vuelve a fallar, empiece un trabajo nuevo o abra otro: este se queda en la lista de trabajos.',
    reload: 'Recargar',
    help: 'Cómo leer esta página',
    close: 'Cerrar',
    cancel: 'Cancelar',
    done: 'Listo',
    notRecorded: 'no anotado',
    and: (items) => {
      const last = items[items.length - 1] ?? ''
      const link = /^h?i(?!e)/i.test(last) ? 'e' : 'y'
      return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} ${link} ${last}`
    },
  },
  parts: {
    sheet: 'Lecturas',
    wall: 'La pared',
    proof: 'Lo que demuestran las lecturas',
    narrow: { enter: 'Introducir', wall: 'Pared', findings: 'Resultados', setUp: 'Montaje' },
  },
  bar: {
    label: 'Trabajo',
    jobName: 'Nombre del trabajo',
    machine: 'Máquina',
    note: 'Nota',
    bores: 'Cilindros',
    boreNamed: (name) => `cilindro ${name}`,
    boreTab: (name, verdict) => `Cilindro ${name}: ${verdict}`,
    comparisonTab: (name) => `Para comparar: ${name}`,
    boreChip: (place, all) => `Cilindro ${place} de ${all}`,
    add: 'Añadir un cilindro',
    addOwn: 'Otro cilindro de este motor',
    addComparison: 'Un cilindro para comparar',
    comparisonName: 'Nuevo',
    addSurvey: (name) => `Medir otra vez: ${name}`,
    removeSurvey: 'Quitar esta medición',
    removeSurveyAsk: '¿Quitar esta medición con todas sus lecturas? Se puede deshacer.',
    removeBore: (name) => `Quitar ${name}`,
    removeBoreAsk: (name) => `¿Quitar ${name} con todas sus lecturas? Se puede deshacer.`,
  },
  undo: {
    undo: 'Deshacer',
    redo: 'Rehacer',
    undoOf: (change) => `Deshacer: ${change}`,
    redoOf: (change) => `Rehacer: ${change}`,
    nothing: 'Nada que deshacer',
    nothingToRedo: 'Nada que rehacer',
  },
  changes: {
    reading: (place) => `lectura en ${place}`,
    readingOut: (place) => `lectura en ${place} quitada`,
    readingsOut: (stations) =>
      stations === 1
        ? 'lecturas de un punto de medida quitadas'
        : `lecturas de ${stations} puntos de medida quitadas`,
    pasted: (stations) =>
      stations === 1
        ? 'lecturas pegadas de un punto de medida'
        : `lecturas pegadas de ${stations} puntos de medida`,
    repeatsPerStation: 'lecturas por punto de medida',
    wantedDoubt: 'incertidumbre deseada',
    outOfReach: (place) => `${place} fuera de alcance`,
    withinReach: (place) => `${place} al alcance después de todo`,
    confirmed: (place) => `lectura en ${place} confirmada`,
    jobName: 'nombre del trabajo',
    machine: 'máquina',
    note: 'nota',
    setUp: 'montaje',
    gauge: 'instrumento',
    standard: 'patrón',
    instruments: 'lista de instrumentos',
    entry: 'cómo se anotan las lecturas',
    limits: 'límites',
    bore: 'cilindro',
    wall: 'tipo de pared',
    ports: 'lumbreras',
    belts: 'bandas',
    levels: 'niveles',
    axes: 'ejes',
    survey: 'fecha y horas',
    surveyAdded: 'medición añadida',
    surveyRemoved: 'medición quitada',
    boreAdded: 'cilindro añadido',
    boreRemoved: 'cilindro quitado',
    restored: 'versión anterior restaurada',
    table: (file) => `lecturas de ${file}`,
  },
  file: {
    menu: 'Trabajo',
    new: 'Nuevo',
    open: 'Abrir…',
    kept: 'Lista de trabajos',
    examples: 'Ejemplos…',
    letterhead: 'Membrete…',
    save: 'Guardar en un archivo',
    saveAs: 'Guardar en un archivo como…',
    saveAll: 'Guardar una copia de todos los trabajos',
    allName: 'todos-los-trabajos',
    savedAll: (count, name) =>
      count === 1 ? `1 trabajo escrito en ${name}` : `${count} trabajos escritos en ${name}`,
    allNone: 'En este navegador no hay todavía ningún trabajo guardado.',
    allTooLarge:
      'Todos los trabajos juntos son más de lo que Borewall puede volver a leer. Guarde los que tienen barridos o fotografías cada uno en su propio archivo.',
    allWithoutChange:
      'El trabajo abierto está en el archivo como se guardó por última vez, sin lo que aún no se ha guardado.',
    allLeftOut: (names) => `Estos no se pudieron leer y no están en el archivo: ${names.join('; ')}.`,
    allIncomplete: (names) =>
      `De estos faltan en el archivo algunos barridos o fotografías: ${names.join('; ')}.`,
    duplicate: 'Copiar como trabajo nuevo',
    copyName: (name) => `${name}, copia`,
    defaultName: 'trabajo',
    kind: 'Trabajo de Borewall',
    drop: 'Suelte aquí un archivo de trabajo o una tabla de lecturas',
    opened: (name) => `${name} abierto`,
    savedFile: (name) => `Escrito en ${name}`,
    problemsTitle: (file) => `No se pudo abrir ${file}`,
    problemsLead: 'El trabajo abierto no ha cambiado. Lo que está mal en el archivo:',
    problemsLeadNoJob: 'No se abrió nada. Lo que está mal en el archivo:',
    problemAt: (place, problem) => `${place}: ${problem}`,
    moreProblems: (count) => `y ${count} más`,
    notRead: (file) => `No se pudo leer ${file} del disco. ¿Sigue estando allí?`,
    notWritten: (file) => `No se pudo escribir ${file}. El trabajo sigue en esta página.`,
    codeNotLoaded:
      'El trabajo de esta dirección no se pudo abrir: no se pudo cargar una parte de Borewall. Vuelva a cargar la página para probar otra vez.',
    severalDropped: 'Suelte los archivos de uno en uno.',
    replaceAsk:
      'Ya hay guardado un trabajo con la misma identidad. ¿Abrir el archivo como copia o reemplazar el guardado?',
    openAsCopy: 'Abrir como copia',
    replace: 'Reemplazar',
  },
  kept: {
    open: (name) => `Abrir ${name}`,
    setAsideTitle: 'Apartados',
    setAsideLead:
      'Registros que no se pudieron leer, o cuyo lugar tomó un archivo u otra pestaña. Están sin cambios; guárdelos para examinarlos.',
    setAsideWhy: {
      unreadable: 'no se pudo leer',
      replaced: 'reemplazado',
      overtaken: 'sin guardar antes de que otra pestaña tomara el trabajo',
    },
    setAsideSave: 'Guardar el registro',
  },
  demo: {
    banner: 'Un ejemplo, todas las cifras son inventadas',
    startOwn: 'Empezar un trabajo propio',
  },
  pictureTexts: {
    keys: 'Las flechas giran e inclinan el cilindro, Mayús con una flecha lo desplaza; más y menos lo acercan y lo alejan, Inicio vuelve al frente.',
    middle: (size) => `${size} = 0`,
    next: 'siguiente lectura',
  },
}
