import type { handOver as english } from '../english/hand-over'
import type { Texts } from '../texts'

/** The page that is handed over as a file, in French. */
export const handOver: Texts<typeof english> = {
  whole: 'Ce fichier est complet. Il n’a besoin d’aucun réseau et n’envoie rien nulle part.',
  made: (app, day) => `Fait avec ${app} le ${day}.`,
  back: (app) =>
    `${app} ouvre ce fichier comme un dossier : choisissez-le, ou déposez-le sur la page. Toutes les lectures y sont.`,
  customer: (customer) => `Pour ${customer}`,
  parts: {
    drawings: (bore) => `${bore} : les dessins`,
    figures: 'Les chiffres',
    readings: 'Les lectures telles qu’elles ont été notées',
    photographs: 'Photos de la paroi',
  },
  pictures: {
    now: (bore) => `${bore}, tel qu’il est maintenant`,
    beside: (other) => `Pour comparer : ${other}`,
    alt: (bore, verdict) => `Image de la paroi. ${bore} : ${verdict}`,
    altBeside: (other) => `Image de la paroi. ${other}`,
    marks: 'Ce que veulent dire les couleurs et les signes',
  },
  turning: {
    turnLeft: 'Tourner à gauche',
    turnRight: 'Tourner à droite',
    closer: 'Plus près',
    further: 'Plus loin',
    above: 'D’en haut',
    whole: 'De l’avant',
    byFinger: 'Le tourner d’un doigt',
    fingerDone: 'Le doigt fait de nouveau défiler la page',
    keys: 'Tirez dessus pour le tourner. Les flèches le tournent, plus et moins le rapprochent et l’éloignent.',
  },
  drawings: {
    map: 'La paroi déroulée, vue de l’intérieur. L’angle va en travers, la profondeur vers le bas.',
    section: (depth, factor) => `En travers de l’alésage à ${depth}. ${factor}.`,
    profile: (axis) => `Le long de l’alésage selon ${axis}.`,
    scan: 'Déroulé, sans la forme lisse : le bleu avance, l’ambre recule. Entouré, ce qui ressort, avec son numéro dans la liste.',
  },
  readings: {
    lead: 'Chaque lecture telle qu’elle a été notée, avant d’être ramenée à 20 °C.',
    sizes: 'Cotes en mm',
    dial: 'Ce qu’a montré le cadran, µm',
    none: '–',
    depth: 'Profondeur',
  },
  photograph: (number, finding) => `${number} : ${finding}`,
}
