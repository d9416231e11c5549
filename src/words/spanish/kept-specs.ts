import type { keptSpecs as english } from '../english/kept-specs'
import type { Texts } from '../texts'

export const keptSpecs: Texts<typeof english> = {
  keptSpecs: {
    title: 'Límites guardados',
    lead: 'Lo que usted escribió de sus propios manuales de taller, guardado en este navegador para el próximo motor igual. Borewall no trae límites propios: compárelos con el manual antes de fiarse de ellos.',
    none: 'Todavía no hay nada guardado. Escriba los límites de un trabajo y elija después «Guardar estos límites».',
    take: 'Empezar con límites guardados…',
    takeHint: 'Límites con sus reglas, el cilindro, sus niveles y ejes, y cómo se mide.',
    keep: 'Guardar estos límites…',
    keepName: 'Nombre para estos límites',
    keepDo: 'Guardar',
    keptAs: (name, day) =>
      `Límites guardados como «${name}» el ${day}, del manual de taller del propio usuario.`,
    typedOn: (day) => `escritos el ${day}, del manual de taller del propio usuario`,
    taken: (name) => `límites de «${name}»`,
    kept: (name) => `Guardados como ${name}.`,
    replaceAsk: (name) => `Ya hay límites guardados como ${name}. ¿Poner estos en su lugar?`,
    replace: 'Poner en su lugar',
    rename: (name) => `Nombre de ${name}`,
    nameNeeded: 'Hace falta un nombre.',
    newJob: 'Trabajo nuevo',
    newJobFrom: (name) => `Trabajo nuevo con ${name}`,
    remove: 'Quitar',
    removeNamed: (name) => `Quitar ${name}`,
    removed: (name) => `${name}: quitado.`,
    undo: 'Deshacer',
    unread: (names) =>
      `No se pudieron leer y se dejan como están: ${names.map((name) => `«${name}»`).join(', ')}.`,
    noName: 'sin nombre',
    band: (from, to) => `de origen ${from} a ${to}`,
    bandFrom: (from) => `de origen desde ${from}`,
    bandTo: (to) => `de origen hasta ${to}`,
    grades: (names) => `clases ${names.join(', ')}`,
    wear: (limit) => `límite de desgaste ${limit}`,
    ovality: (limit) => `ovalización ${limit}`,
    taper: (limit) => `conicidad ${limit}`,
    bores: (count) => (count === 1 ? '1 cilindro' : `${count} cilindros`),
  },
}
