import type { growth as english } from '../english/growth'
import type { Texts } from '../texts'

export const growth: Texts<typeof english> = {
  growth: {
    wear: {
      whenNew: 'Desgaste máximo desde que era nuevo',
      since: (visit) => `Desgaste máximo desde ${visit}`,
      from: (bore) => `Desgaste máximo, respecto a ${bore}`,
      land: 'Desgaste máximo, respecto a la pared que los segmentos nunca tocan',
      'new-band': 'Desgaste máximo, respecto a las medidas de origen',
    },
    visitOn: (day) => `el ${day}`,
    visitNumber: (number) => `la medición ${number}`,
    range: (low, high) => `de ${low} a ${high}`,
    read: (stations) => `el mayor leído en ${stations} puntos de medida, no una cota`,
    anywhere: 'pudo hacerse en cualquier punto de las medidas de origen',
    share: (low, high) =>
      low === high
        ? `${low} de lo que permite el límite de desgaste`
        : `de ${low} a ${high} de lo que permite el límite de desgaste`,
    plating: (both, one, low, high) =>
      `del recubrimiento, ${both} si las dos paredes se desgastaron por igual, ${one} si una pared se lo llevó todo; con el ±, entre ${low} y ${high}`,
    asMade: (microns) => `contando lo que pueden diferir de fabricación dos cilindros nuevos, ${microns}`,
    shrunk: (places) => `menor que antes, más allá del ±, en ${places}: ¿suciedad o un error?`,
    outlook: 'Previsión',
    now: 'ya en su límite',
    nowDetail: 'hasta donde estas lecturas pueden decir',
    earliest: (hours) => `no antes de las ${hours} h`,
    never: 'no se pueden dar horas',
    limit: (limit) => `hasta ${limit}`,
    oneSided: 'si sigue desgastándose como hasta ahora, en 19 de cada 20 casos será más tarde',
    expected: (hours) => `según la recta, a las ${hours} h`,
    latest: (hours) => `a más tardar a las ${hours} h`,
    uncertain: 'el aumento no destaca de su incertidumbre, así que solo se puede dar lo más pronto',
    lastTwo: (hours) => `según las dos últimas mediciones, a las ${hours} h`,
    changed:
      'un solo ritmo de desgaste no encaja con todas las mediciones; se da lo más pronto entre todas y las dos últimas',
    from: {
      surveys: (count) => `con ${count} mediciones`,
      land: 'con esta medición y la pared que los segmentos nunca tocan; el rodaje va incluido',
      'new-band': 'con esta medición y la medida mínima de origen; el rodaje va incluido',
    },
    check: {
      name: 'Próxima revisión',
      by: (hours) => `a más tardar a las ${hours} h de funcionamiento`,
      after: (hours) => `después de ${hours} h más`,
      why: {
        'half-way': 'la mitad del camino hasta lo más pronto',
        'service-interval': 'el intervalo de servicio que dan los límites',
        'at-limit': 'puede estar ya en su límite',
      },
      date: (day, hoursPerWeek) => `a ${hoursPerWeek} h por semana, el ${day}`,
      due: 'ese día ha llegado',
    },
    reasons: {
      'no-limit': 'hace falta una medida máxima',
      'no-hours': 'hacen falta las horas de funcionamiento de esta medición',
      'nothing-to-count-from':
        'hace falta una medición anterior con sus horas, una zona sin segmentos o las medidas de origen',
      shrunk: 'el cilindro ha encogido más allá de su ±: mida otra vez antes de dar horas',
    },
    manual: 'los intervalos del manual van primero',
  },
}
