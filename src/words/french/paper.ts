import type { paper as english } from '../english/paper'
import type { Texts } from '../texts'

/** The report on paper, and the page that shows it before it is printed, in French. */
export const paper: Texts<typeof english> = {
  page: {
    paper: 'Papier',
    sizes: { a4: 'A4', letter: 'Letter' },
    of: 'Rapport sur',
    wholeEngine: 'tous les alésages du moteur',
    note: 'Avec la note du dossier',
    print: 'Imprimer…',
    printHow: 'La fenêtre d’impression de votre navigateur s’ouvre. Elle peut aussi enregistrer un PDF.',
    drawing: 'Les images se dessinent…',
    flatOnly: 'Ce navigateur ne dessine pas d’image en 3D. Le rapport montre à la place la paroi déroulée.',
    sheets: (count) =>
      count < 2 ? (count === 1 ? 'Une feuille.' : `${count} feuille.`) : `${count} feuilles.`,
    sheet: (number) => `Feuille ${number}`,
    scrolls: 'Les feuilles ; elles peuvent être déplacées de côté.',
  },
  fileName: (day, job, what) => `${day} ${job} ${what}`,
  fileNames: { bore: (name) => `alésage ${name}`, engine: 'tous les alésages', untitled: 'dossier' },
  heading: { bore: 'Rapport sur un alésage', engine: 'Rapport sur un moteur' },
  titleOf: (what, job) => `${what} · ${job}`,
  facts: {
    customer: 'Client',
    machine: 'Machine',
    measured: 'Mesuré',
    wall: 'Paroi',
    gauge: 'Appareil',
    setTo: 'Réglé à',
    zeros: 'Zéro',
    temperatures: 'Températures',
    micrometer: 'Micromètre',
  },
  hours: (hours) => `à ${hours} heures de marche`,
  by: (person) => `par ${person}`,
  wall: {
    liner: (kind) => `${kind}, une chemise`,
    grade: (grade) => `classe ${grade}`,
    oversize: (oversize) => `cote réparation ${oversize}`,
    notRecorded: 'genre non noté',
  },
  readTo: (step) => `lu à ${step} près`,
  calibrated: (day) => `étalonné le ${day}`,
  setBy: (size, by) => `${size}, avec : ${by}`,
  zeroedInBore: (size) => `mis à zéro dans l’alésage ; ${size} sur ses touches`,
  zeroedOnly: 'mis à zéro dans l’alésage ; non mesuré sur ses touches',
  readDirectly: 'rien : lu directement',
  zeros: (before, after) => `${before} avant, ${after} après`,
  temperatures: (bore, reference, at) => `alésage ${bore}, ${reference} ${at}`,
  readsTooMuch: (microns) => `montre ${microns} en trop sur son propre étalon`,
  notRecorded: 'non noté',
  dayNotRecorded: 'jour non noté',
  ofBores: (bores, fact) => `${bores.join(', ')} : ${fact}`,
  titles: {
    measure: 'Comment mesurer de nouveau',
    limits: 'Limites :',
    piston: 'Piston et segment',
    surface: 'Surface',
    unseen: 'Ce qui n’a pas été mesuré, et ce que cet appareil ne peut pas voir',
    cautions: 'Avant de décider',
    questions: 'Questions ouvertes sur les lectures',
    note: 'Note',
    bores: 'Les alésages : cotes à 20 °C en mm, ± U (95 %)',
  },
  source: 'D’après le manuel d’atelier, tel qu’entré.',
  sizes: {
    band: (from, to) => `Neuf ${from} à ${to}`,
    from: (from) => `neuf pas sous ${from}`,
    to: (to) => `neuf pas au-dessus de ${to}`,
    grade: (name, from, to) => `classe ${name} ${from} à ${to}`,
    wear: (size) => `limite d’usure ${size}, seule jugée`,
    none: 'Aucune limite de cote n’est entrée.',
  },
  judged:
    'Dans ou hors des limites se dit où 1 chance sur 20 au plus parle contre, sinon trop juste pour trancher. ± est U à 95 %.',
  noStations: 'Aucune lecture.',
  views: {
    now: (bore) => `${bore}, maintenant`,
    before: 'À l’état neuf',
    map: 'La paroi déroulée, vue de l’intérieur',
    section: (depth) => `En travers à ${depth}, vu du plan de joint`,
    profile: (axis) => `En long à ${axis}, plan de joint en haut`,
    drawn: (exaggeration) => `${exaggeration} ; les barres sont sur le diamètre.`,
    between: 'Entre les lectures, la paroi est dessinée, non mesurée.',
    key: 'Bleu : plus serré. Ambre : plus large. Hachuré : personne n’a mesuré. Pointillé : trop juste pour trancher. Disques : lectures.',
    noPicture: 'Pas d’image en 3D : ce navigateur n’en dessine pas.',
  },
  photosLeft: (count) =>
    count === 1
      ? 'Une photo de plus n’est pas imprimée ici : elle est avec son constat de surface dans le dossier.'
      : `${count} photos de plus ne sont pas imprimées ici : elles sont avec leurs constats de surface dans le dossier.`,
  photoAbsent: (name) => `${name} : absente de ce navigateur`,
  scans: (count) =>
    count === 1
      ? 'Un palpage de rayons appartient à cet alésage ; ses anomalies sont dites à la page Mesurer et par le fichier du dossier.'
      : `${count} palpages de rayons appartiennent à cet alésage ; leurs anomalies sont dites à la page Mesurer et par le fichier du dossier.`,
  table: { wear: 'Usure la plus grande', clearance: 'Jeu', decision: 'À lui seul' },
  engineDecision: (bore, decision) => `${bore} : ${decision}`,
  signature: { name: 'Nom', day: 'Jour', signed: 'Signature' },
  sheetOf: (sheet, sheets) => `feuille ${sheet} sur ${sheets}`,
  madeWith: (app) => `Fait avec ${app}`,
}
