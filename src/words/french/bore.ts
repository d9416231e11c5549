import type { bore as english } from '../english/bore'
import type { Texts } from '../texts'

/** The sentence about a bore, its ports and belts, in French. */
export const bore: Texts<typeof english> = {
  bore: {
    title: 'Alésage',
    machine: 'Machine {machine}, qui tourne {hoursPerWeek} h par semaine.',
    who: 'Alésage {name}, {role}.',
    sentence: 'Longueur {length} mm, {wall}.',
    plated: 'Longueur {length} mm, {wall}, revêtement épais de {plating} µm.',
    travel:
      'Les segments passent de {travelFrom} à {travelTo} mm ; la paroi au-delà est une zone sans segments.',
    labels: {
      hoursPerWeek: 'Heures que la machine tourne par semaine',
      name: 'Nom de l’alésage',
      role: 'Pourquoi l’alésage est ici',
      length: 'Longueur de l’alésage, mm',
      wall: 'Genre de paroi',
      plating: 'Revêtement d’une paroi, le moins qu’il puisse être, µm',
      travelFrom: 'Les segments passent depuis, mm sous le plan de joint',
      travelTo: 'Les segments passent jusqu’à, mm sous le plan de joint',
    },
    walls: {
      'plated-aluminium': 'aluminium revêtu',
      'aluminium-silicon': 'aluminium-silicium sans revêtement',
      'grey-iron': 'fonte grise',
      steel: 'acier',
    },
    roles: { 'of-this-engine': 'de ce moteur', 'for-comparison': 'pour comparaison' },
    lengthNotKnown: 'inconnue',
    ports: {
      title: 'Lumières',
      lead: 'Ouvertures dans la paroi. Profondeur sous le plan de joint ; angle dans le sens horaire vu du plan de joint, 0° à l’avant.',
      none: 'Aucune lumière entrée.',
      add: 'Ajouter une lumière',
      newName: 'Lumière',
      remove: (name) => `Retirer ${name}`,
      mirror: (name) => `Ajouter l’image miroir : ${name}`,
      mirrorShort: 'Miroir',
      mirrorSuffix: ' (miroir)',
      name: 'Nom',
      fromDepth: 'De, mm',
      toDepth: 'À, mm',
      fromAngle: 'De, °',
      toAngle: 'À, °',
      measuredBy: 'Les lumières sont données par',
      measured: 'Données par {way}.',
      ways: { edges: 'leurs deux bords en degrés', arc: 'leur largeur en mm et leur milieu' },
      width: 'Largeur, mm',
      middle: 'Milieu, °',
      allBores: 'Tous les alésages de ce dossier ont ces lumières.',
    },
    belts: {
      title: 'Bandes',
      lead: 'Une bande sur tout le tour que personne n’a pu mesurer : dessinée comme paroi, hachurée.',
      none: 'Aucune bande entrée.',
      add: 'Ajouter une bande',
      newName: 'Bande',
      remove: (name) => `Retirer ${name}`,
    },
  },
}
