import type { instruments as english } from '../english/instruments'
import type { Texts } from '../texts'

export const instruments: Texts<typeof english> = {
  instruments: {
    title: 'Messgeräte',
    lead: 'Einmal für den ganzen Auftrag aufgelistet. So ist bekannt, was bei zwei Bohrungen dasselbe war, und es fällt aus ihrem Unterschied heraus.',
    lists: {
      setUps: 'Messaufbauten',
      gauges: 'Messgeräte',
      standards: 'Ringe und Bügelmessschrauben',
      thermometers: 'Thermometer',
    },
    numbered: (kind, place) => `${kind} ${place}`,
    unnamedSetUp: 'Messaufbau',
    unnamedThermometer: 'Thermometer',
    noThermometer: 'nicht erfasst',
    setUp:
      '{name}: {gauge}, eingestellt mit: {standard}. Thermometer an der Bohrung: {boreThermometer}; an Ring oder Bügelmessschraube: {referenceThermometer}.',
    labels: {
      name: 'Name des Messaufbaus',
      gauge: 'Messgerät des Messaufbaus',
      standard: 'Ring oder Bügelmessschraube des Messaufbaus',
      boreThermometer: 'Thermometer an der Bohrung',
      referenceThermometer: 'Thermometer an Ring oder Bügelmessschraube',
    },
    labelOf: (label, name) => `${label}: ${name}`,
    gaugeLabel: 'Name des Messgeräts',
    standardLabel: 'Name von Ring oder Bügelmessschraube',
    thermometerLabel: 'Name des Thermometers',
    usedBy: (users) => `verwendet für ${users}`,
    unused: 'nicht verwendet',
    bore: (bore) => `Bohrung ${bore}`,
    boreOnce: (bore, occasion) => `Bohrung ${bore}, ${occasion}`,
    useHere: 'Für diese Bohrung verwenden',
    add: {
      setUps: 'Messaufbau hinzufügen',
      gauges: 'Messgerät hinzufügen',
      ring: 'Ring hinzufügen',
      micrometer: 'Bügelmessschraube hinzufügen',
      thermometers: 'Thermometer hinzufügen',
    },
    remove: (name) => `${name} entfernen`,
    stillUsed: (name, users) =>
      `Noch nicht zu entfernen: ${name} wird verwendet für ${users}. Wählen Sie dort zuerst etwas anderes.`,
  },
  pistons: {
    title: 'Kolben und Ringe',
    open: 'Kolben',
    loading: 'Wird geladen …',
    show: 'Einen Kolben zeigen',
    numbered: (number) => `Kolben ${number}`,
    ofGrade: (grade) => `Kolben der Größenklasse ${grade}`,
    oversized: (called, oversize) => `${called}, ${oversize}`,
  },
}
