import type { instruments as english } from '../english/instruments'
import type { Texts } from '../texts'

export const instruments: Texts<typeof english> = {
  instruments: {
    title: 'Instrumentos',
    lead: 'Se anotan una vez para todo el trabajo. Así se sabe qué fue igual al medir dos cilindros, y eso desaparece de su diferencia.',
    lists: {
      setUps: 'Montajes',
      gauges: 'Instrumentos',
      standards: 'Anillos y micrómetros',
      thermometers: 'Termómetros',
    },
    numbered: (kind, place) => `${kind} ${place}`,
    unnamedSetUp: 'Montaje',
    unnamedThermometer: 'Termómetro',
    noThermometer: 'no anotado',
    setUp:
      '{name}: {gauge}, ajustado con: {standard}. Termómetro en el cilindro: {boreThermometer}; en el anillo o micrómetro: {referenceThermometer}.',
    labels: {
      name: 'Nombre del montaje',
      gauge: 'Instrumento del montaje',
      standard: 'Anillo o micrómetro del montaje',
      boreThermometer: 'Termómetro en el cilindro',
      referenceThermometer: 'Termómetro en el anillo o micrómetro',
    },
    labelOf: (label, name) => `${label}: ${name}`,
    gaugeLabel: 'Nombre del instrumento',
    standardLabel: 'Nombre del anillo o micrómetro',
    thermometerLabel: 'Nombre del termómetro',
    usedBy: (users) => `se usa en: ${users}`,
    unused: 'sin usar',
    bore: (bore) => `cilindro ${bore}`,
    boreOnce: (bore, occasion) => `cilindro ${bore}, ${occasion}`,
    useHere: 'Usar para este cilindro',
    add: {
      setUps: 'Añadir un montaje',
      gauges: 'Añadir un instrumento',
      ring: 'Añadir un anillo',
      micrometer: 'Añadir un micrómetro',
      thermometers: 'Añadir un termómetro',
    },
    remove: (name) => `Quitar ${name}`,
    stillUsed: (name, users) =>
      `${name} no se puede quitar mientras se use en: ${users}. Elija antes otro allí.`,
  },
  pistons: {
    title: 'Pistones y segmentos',
    open: 'Pistones',
    loading: 'Cargando…',
    show: 'Mostrar un pistón',
    numbered: (number) => `pistón ${number}`,
    ofGrade: (grade) => `pistón de la clase ${grade}`,
    oversized: (called, oversize) => `${called}, ${oversize}`,
  },
}
