/**
 * What jobs say again and again, for the compression to refer to: the words of the format, names of instruments and
 * openings, words of a workshop; what is likeliest last (RFC 1951 refers to what is near with fewer bits). Codes are
 * printed on paper, so not a letter of it may ever change: another dictionary needs another first digit.
 */
export const codeDictionary = [
  // Words of notes.
  'Bohrung Zylinder Kolben gemessen Messung Grenzmaß nachgemessen Schleifstein gehont Übermaß Laufbuchse Auslass links rechts ',
  'cylindre alésage piston mesure réalésage chemise échappement cilindro pistón medida escape gauche droite izquierda derecha ',
  'bought sent back customer owner engine block crankcase sleeve seized overheated oil smoke compression rebuilt rebored bored honed ',
  'plated plater plating replated coating machinist manual allows service standard oversize skirt crown groove gap feeler ',
  'scuffed scored scratch scratches streak polished worn wear ridge pits rust glaze cross-hatch catches nail wiped cleaned washed ',
  'because between through without another nothing where there their which would should could about after before again better than ',
  'once twice both every other same only more most less least first second last next new old used warm cold hot dry wet ',
  'January February March April June July August September October November December Monday Tuesday Thursday Friday example ',
  'front rear top bottom middle left right just under past beyond doubt clearly slightly marked called found shows looks likely ',
  'until then others everything something somebody against during since still also only two three four five six eight ten twelve ',
  'will would should could must may can cannot does did done made make take taken left kept put said told asked wait waits wore ',
  'stands stand nearer inside outside above below deep from when what were have been this that with over under against ',
  'largest smallest ovality out-of-round taper clearance limit limits size sizes level levels axis axes depth deck stroke travel ',
  'needle dial setting set zero zeros closing opening temperature temperatures measured measure reading readings read taken ',
  'cylinders cylinder liner wall ports port belt rings ring pistons bore gauge micrometer thermometer machine hours side thrust ',
  'is not and was are by for in it its to on at be as or an a of the . , ; : µm mm °C ° ',
  // Words of the format, and the questions that were answered.
  '{"x":0,"y":90}{"from":,"to":}true,false,null,"whole-turn ","digits ","repeats-spread ","axes-swapped ","setting ",',
  '"reverse","direct","deviation","anticlockwise","radial-probe","air-plug","three-contact-micrometer","internal-micrometer-rods",',
  '"telescoping","dial-0.01-simple","level-means","largest-top-less-smallest-bottom","largest-top-less-largest-bottom",',
  '"top-less-bottom-of-an-axis","smallest-bore","mean-bore","largest-bore","smallest-to-largest","pooled","flaking","bare-aluminium",',
  '"stuck-metal","cross-hatch-seen","cross-hatch-worn-off","scuff","patch","streak","inch","torque-plate","assembled","steel",',
  '"aluminium-silicon","at-hand","Feeler gauge","Telescoping gauge","Inside micrometer","Air gauge","lower belt","intake","inlet",',
  '"transfer","transfer left","transfer right","rear transfer left","rear transfer right","main transfer left","main transfer right",',
  '"boost","exhaust","As delivered","New","At 1,000 hours","measuredBy","2025-0","2026-0","2027-1",',
  '"across-less-along-at-a-level","dial-0.01","dial-0.001-ring","Setting ring, 60 mm","ring","Outside micrometer, 75 to 100 mm",',
  '"Outside micrometer, 50 to 75 mm","micrometer",0]],[["Contact thermometer"]],"Dial bore gauge, 0.01 mm","Dial bore gauge, 0.001 mm",',
  '"dial-0.001-micrometer",0.025,"between-levels-of-an-axis",0.015,"largest-less-smallest-at-a-level",0.05,0.1,',
  '"of-this-engine","for-comparison","fitted","obtainable","grey-iron","plated-aluminium","bare","size","clockwise",20,20,0,0',
  '],[],[[511,0,[10,35,60,110],[0,45,90,135],"s3,1,3,54,20[0,90],"s3,2,2,"s3,1,1,"1""2""3""4"[31,"',
].join('')
