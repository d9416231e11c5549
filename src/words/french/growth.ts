import type { growth as english } from '../english/growth'
import type { Texts } from '../texts'

/** How much a bore has grown, and when it would meet its limit, in French. */
export const growth: Texts<typeof english> = {
  growth: {
    wear: {
      whenNew: 'Usure la plus grande depuis le neuf',
      since: (visit) => `Usure la plus grande depuis ${visit}`,
      from: (bore) => `Usure la plus grande, contre ${bore}`,
      land: 'Usure la plus grande, contre la paroi que les segments ne touchent jamais',
      'new-band': 'Usure la plus grande, contre les cotes neuves',
    },
    visitOn: (day) => `le ${day}`,
    visitNumber: (number) => `le relevé ${number}`,
    range: (low, high) => `${low} à ${high}`,
    read: (stations) => `la plus grande lue à ${stations} points, non une borne`,
    anywhere: 'il a été fait n’importe où dans les cotes neuves',
    share: (low, high) =>
      low === high
        ? `${low} de ce que permet la limite d’usure`
        : `${low} à ${high} de ce que permet la limite d’usure`,
    plating: (both, one, low, high) =>
      `du revêtement, ${both} si les deux parois se sont usées pareil, ${one} si une paroi a tout pris ; avec le ±, entre ${low} et ${high}`,
    asMade: (microns) => `avec ce dont deux alésages neufs peuvent différer de fabrication, ${microns}`,
    shrunk: (places) => `plus petit qu’avant, au-delà du ±, à ${places} : saleté, ou erreur ?`,
    outlook: 'Prévision',
    now: 'maintenant à sa limite',
    nowDetail: 'autant que ces lectures puissent le dire',
    earliest: (hours) => `${hours} h au plus tôt`,
    never: 'aucune heure à nommer',
    limit: (limit) => `jusqu’à ${limit}`,
    oneSided: 's’il continue à s’user ainsi, 19 chances sur 20 que ce soit plus tard',
    expected: (hours) => `d’après la droite à ${hours} h`,
    latest: (hours) => `${hours} h au plus tard`,
    uncertain: 'l’accroissement ne ressort pas de son incertitude, seul le plus tôt peut donc être nommé',
    lastTwo: (hours) => `d’après les deux derniers relevés à ${hours} h`,
    changed:
      'une seule vitesse d’usure ne va pas avec tous les relevés ; c’est le plus tôt des deux, du tout et des deux derniers, qui est donné',
    from: {
      surveys: (count) => `d’après ${count} relevés`,
      land: 'd’après ce relevé et la paroi que les segments ne touchent jamais ; le rodage y est compris',
      'new-band': 'd’après ce relevé et la plus petite cote neuve ; le rodage y est compris',
    },
    check: {
      name: 'Prochain contrôle',
      by: (hours) => `à ${hours} heures de marche au plus tard`,
      after: (hours) => `après ${hours} h de plus`,
      why: {
        'half-way': 'la moitié du chemin jusqu’aux heures les plus proches',
        'service-interval': 'l’intervalle d’entretien que donnent les limites',
        'at-limit': 'il est peut-être maintenant à sa limite',
      },
      date: (day, hoursPerWeek) => `à ${hoursPerWeek} h par semaine, le ${day}`,
      due: 'ce jour est venu',
    },
    reasons: {
      'no-limit': 'demande une plus grande cote',
      'no-hours': 'demande les heures de marche de ce relevé',
      'nothing-to-count-from':
        'demande un relevé antérieur avec ses heures, une zone sans segments ou les cotes neuves',
      shrunk: 'l’alésage a rétréci au-delà de son ± : mesurez de nouveau avant qu’aucune heure soit nommée',
    },
    manual: 'les intervalles du manuel d’atelier passent avant',
  },
}
