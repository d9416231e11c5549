import type { instruments as english } from '../english/instruments'
import type { Texts } from '../texts'

/** The lists of instruments and settings that the surveys of a job share, in French. */
export const instruments: Texts<typeof english> = {
  instruments: {
    title: 'Instruments',
    lead: 'Listés une fois pour tout le dossier. Ce qui a servi pareil à mesurer deux alésages est alors connu, et s’en va de leur différence.',
    lists: {
      setUps: 'Montages',
      gauges: 'Appareils',
      standards: 'Bagues et micromètres',
      thermometers: 'Thermomètres',
    },
    numbered: (kind, place) => `${kind} ${place}`,
    unnamedSetUp: 'Montage',
    unnamedThermometer: 'Thermomètre',
    noThermometer: 'non noté',
    setUp:
      '{name} : {gauge}, réglé avec : {standard}. Thermomètre de l’alésage : {boreThermometer} ; de la bague ou du micromètre : {referenceThermometer}.',
    labels: {
      name: 'Nom du montage',
      gauge: 'Appareil du montage',
      standard: 'Bague ou micromètre du montage',
      boreThermometer: 'Thermomètre de l’alésage',
      referenceThermometer: 'Thermomètre de la bague ou du micromètre',
    },
    labelOf: (label, name) => `${label} : ${name}`,
    gaugeLabel: 'Nom de l’appareil',
    standardLabel: 'Nom de la bague ou du micromètre',
    thermometerLabel: 'Nom du thermomètre',
    usedBy: (users) => `sert à : ${users}`,
    unused: 'ne sert pas',
    bore: (bore) => `alésage ${bore}`,
    boreOnce: (bore, occasion) => `alésage ${bore}, ${occasion}`,
    useHere: 'Prendre pour cet alésage',
    add: {
      setUps: 'Ajouter un montage',
      gauges: 'Ajouter un appareil',
      ring: 'Ajouter une bague',
      micrometer: 'Ajouter un micromètre',
      thermometers: 'Ajouter un thermomètre',
    },
    remove: (name) => `Retirer ${name}`,
    stillUsed: (name, users) =>
      `${name} ne peut pas partir tant qu’il sert à : ${users}. Choisissez-en d’abord un autre là.`,
  },
  pistons: {
    title: 'Pistons et segments',
    open: 'Pistons',
    loading: 'Chargement…',
    show: 'Montrer un piston',
    numbered: (number) => `piston ${number}`,
    ofGrade: (grade) => `piston de la classe ${grade}`,
    oversized: (called, oversize) => `${called}, ${oversize}`,
  },
}
