import type { RuleText } from "../rule-text.ts";

const OIML = "OIML R 22 (1975), densidades a 20 °C; las masas se suman, los volúmenes no";
const DRINKS = `${OIML}; ICUMSA SPS-4 (1998) para el azúcar`;
const BALANCE = "balance de masas: las masas se suman, hagan lo que hagan los volúmenes";
const FIT =
  "un ajuste muy citado de bebidas removidas y agitadas de 15 a 35 % vol, de memoria; fijo desde 50 %";
const HEAT =
  "balance de calor: capacidad calorífica por Melinder (2010), fusión 333,55 kJ/kg, calor de mezcla de memoria";
const CHARGES =
  "balance de cargas, actividades por la ecuación de Davies, constantes de los ácidos a 25 °C de tablas de manual";
const SALT =
  "densidad de soluciones de cloruro sódico a 20 °C: Poradnik fizykochemiczny (WNT 1974)";
const DEFINITION = "definición";
const PROPORTION = "proporción";
const DEGREES = "unos grados arriba o abajo: nuestro criterio";

/** Cómo se calcula cada cifra, por la clave de su regla. */
export const ruleTexts: Readonly<Record<string, RuleText>> = {
  "as-given": { source: "escrito o elegido en esta aplicación" },
  scale: {
    formula: "resuelta: lo que hay en la botella (o llena el recipiente) = lo que se pidió",
    source:
      "proporción, menos lo que retienen los filtros, en pasos repetidos hasta 1e-9 del tamaño",
  },
  amount: {
    formula: "cantidad del lote = cantidad escrita × escala × parte",
    source: PROPORTION,
  },
  density: {
    formula: "ρ = m / V a 20 °C",
    source: "como su volumen, salvo que la casa la midiera",
    limits: "en torno al 0,1 % en líquidos dulces y fuertes: nuestro criterio",
  },
  weight: { source: "definición de densidad" },
  measure: { source: "definición de densidad" },
  rounded: {
    formula: "la graduación más cercana del útil, nunca a nada",
    source: "el medidor y la báscula elegidos en Ajustes",
  },
  mass: { formula: "m = Σ m_i, de cada ingrediente por sus propias cifras", source: BALANCE },
  volume: {
    source:
      "OIML R 22 (1975) para etanol y agua; ICUMSA SPS-4 (1998) para el azúcar; volúmenes aparentes del CRC Handbook, 102.ª ed., para los ácidos",
    limits: "en torno al 0,1 % del volumen en líquidos dulces y fuertes: nuestro criterio",
  },
  strength: {
    source: "OIML R 22 (1975), definición del grado alcohólico volumétrico a 20 °C",
    limits:
      "su margen: etiquetas dentro de lo que permite la UE, medidas dentro de los límites de las medidas de servicio, ambos de segunda mano",
  },
  "per-litre": { source: DEFINITION },
  brix: {
    source: "definición de ICUMSA: gramos de sacarosa por 100 g",
    limits: "un refractómetro lee también alcohol y ácido como azúcar",
  },
  ratio: { source: DEFINITION },
  milk: {
    formula: "V_leche = relación × V_punch",
    source:
      "práctica común, sin fuente: 1 parte de leche por 4 de punch; recetas impresas de 1 : 2,8 a 1 : 5",
  },
  serum: {
    formula: "V_suero = volumen de las masas del punch y de las de la leche sin grasa ni caseína",
    source:
      "balance de masas; volumen como en las otras etapas; composición de la leche: tablas de alimentos",
  },
  yield: {
    formula: "V_sale = V_suero − k × V_leche − V_filtro × filtros",
    source:
      "balance de volúmenes; k de la práctica común, sin fuente (0,25 a 0,45), o de lotes propios; 20 ml por filtro: práctica común, sin fuente",
    limits:
      "el margen contiene lo que deberían dar 8 de cada 10 lotes, y es un criterio hasta que lo sustituyan lotes propios",
  },
  "held-back": {
    formula: "V = Σ cantidad escrita × parte reservada × escala",
    source: "proporción; medido el rendimiento lo sigue, salvo que la receta diga fijo",
  },
  "top-up": {
    formula: "V resuelta: grado de (rendimiento + V) = grado buscado",
    source:
      "balance de masas con contracción; más o menos rendimiento × (buscado − clarificado) / (destilado − buscado)",
  },
  fill: { formula: "V_punch + V_leche", source: "volúmenes medidos antes de juntarse" },
  serves: { formula: "embotellado / dosis", source: DEFINITION },
  "mix-ph": {
    formula:
      "Σ cargas = 0 entre ácidos, sus cationes y los grupos valorables de la leche, resuelta para el pH",
    source:
      "constantes de disociación con actividad de Davies; leche ajustada a un máximo publicado del índice tampón de 27,7 mmol/L por pH",
    limits:
      "0,3 arriba o abajo con leche de vaca hasta 20 % vol, 0,5 donde lo que absorbe la leche es una suposición: nuestro criterio, no se pudo abrir ninguna clarificación medida",
  },
  onset: {
    formula: "5,1 + 0,032 × (t − 25 °C) + 0,02 por % vol, para leche de vaca",
    source:
      "Food Hydrocolloids 7 (1993) 113, resumen, para la temperatura; la pendiente con el alcohol se supone",
    limits: "medido en leche descremada diluida; aquí se toma a 20 °C",
  },
  freezing: {
    formula: "T_f = −[ΔT(etanol) + ΔT(azúcar) + ΔT(ácidos y sólidos)], cada uno por kg de agua",
    source: "CRC Handbook of Chemistry and Physics, 102.ª ed., para etanol y sacarosa",
    limits: "unos 0,3 °C; una botella quieta puede seguir líquida algunos grados más abajo",
  },
  "glass-temperature": {
    formula:
      "calor de la bebida + calor del hielo + calor de mezcla = 0, hasta su punto de congelación",
    source: "balance de calor; hielo 333,55 kJ/kg; botella del refrigerador tomada a 4 °C",
    limits: `${DEGREES}; vidrio y aire no cuentan`,
  },
  ice: {
    formula: "el agua que se hiela hasta que lo que queda se congela a esta temperatura",
    source: "puntos de congelación como arriba; balance de calor con el hielo que entra",
    limits: "el calor de la propia batidora no cuenta: funde algo",
  },
  water: {
    formula:
      "agua por volumen = a x² + b x + c, x el grado antes del hielo; batido: balance de calor",
    source:
      "un ajuste muy citado de bebidas removidas y agitadas, de memoria; calor latente 333,55 kJ/kg",
    limits: "± 0,05 del volumen con hielo corriente",
  },
  "own-water": {
    formula: "agua = dosis × parte",
    source: "medido por esta casa, escrito en la receta",
  },
  "per-kg-water": { formula: "1000 × m / m_agua", source: DEFINITION },
  "batch-cost": {
    formula: "C = Σ cantidad × pagado / envase",
    source: "suma de los ingredientes que tienen precio",
    limits: "solo ingredientes: sin decoración, hielo, filtros, trabajo ni impuestos",
  },
  "serve-cost": {
    formula: "c = C × dosis / embotellado",
    source: "proporción; lo que retienen cuajada y filtros lo paga lo embotellado",
  },
  "pour-cost": { formula: "c / precio de la carta", source: DEFINITION },
  "sum-reduce": {
    source: OIML,
    limits:
      "a menos de 0,05 en 100 de los ejemplos resueltos de la ley de aforo de EE. UU. (27 CFR 30.66), que son a 60 °F",
  },
  "sum-reduce-sweet": {
    formula: "agua hasta que m_etanol / (0,78924 g/ml) / V es el grado buscado",
    source: DRINKS,
    limits:
      "0,5 a 2 kg/m³, hasta 0,05 % vol, si lleva azúcar: nuestro criterio, no se encontraron licores medidos",
  },
  "sum-makes": { source: DRINKS },
  "sum-together": { source: "las masas se suman" },
  "sum-blend-strength": {
    formula: "grado = Σ V_i x_i / V",
    source: OIML,
    limits: "destilados secos; el azúcar que lleven no cuenta",
  },
  "sum-shrinks": { source: OIML },
  "sum-water-mass": { source: "OIML R 22 (1975), agua a 20 °C" },
  "sum-let-down": { formula: "agua = dulce / partes", source: PROPORTION },
  "sum-scooped": {
    source: "200 g de azúcar por taza de EE. UU.: archivo de definiciones de GNU units",
    limits: "medir a cucharadas varía un 5 % o más",
  },
  "sum-honey-mass": {
    formula: "m = V × ρ, miel con 80 % de azúcares y 17,5 % de agua",
    source: "de memoria, de tablas de alimentos; ICUMSA SPS-4 (1998) para su densidad",
    limits: "las mieles llevan de 15 a 20 % de agua",
  },
  "sum-density": { source: DRINKS },
  "sum-saturation": {
    formula: "m_azúcar / (m_azúcar + m_agua) en saturación",
    source: "Bubnik, Kadlec y otros, Sugar Technologists Manual (1995)",
    limits: "sacarosa en agua: ácido y miel mantienen más disuelto, el destilado menos",
  },
  "sum-acid-add": {
    formula: "m = c_buscada × V_hecho − c_jugo × V",
    source: "balance de masas; la meta es práctica común, de memoria, sin fuente",
    limits: "de 3 a 4 % más de lo que pesa la práctica, que olvida el sitio que ocupa el ácido",
  },
  "sum-acid-makes": {
    source: "CRC Handbook, 102.ª ed., densidades de soluciones de ácido cítrico a 20 °C",
    limits: "al ácido málico se le da el sitio del cítrico",
  },
  "sum-titratable": {
    formula: "sosa hasta pH 8,2 × 64,04 g/mol, como ácido cítrico",
    source: CHARGES,
    limits: "solo los ácidos nombrados: el ascórbico añade hasta 0,2 g/L en los cítricos",
  },
  "sum-juice-ph": { formula: "Σ cargas = 0", source: CHARGES },
  "sum-mix-ph": {
    formula: "Σ cargas = 0; cada pKa + 0,0135 por % vol",
    source: `${CHARGES}; alcohol por Prenesti y otros (2012), visto a 12 %`,
    limits: "0,3 arriba o abajo, más por encima de 20 % vol: nuestro criterio; 25 °C",
  },
  "sum-salt-mass": {
    source: SALT,
    limits: "a menos de 0,4 kg/m³ de esa tabla, de 0 a 26 % en peso; sal seca",
  },
  "sum-saline-water": { source: SALT },
  "sum-freezing": {
    formula: "T = −(ΔT_etanol + ΔT_azúcar), cada uno por mol por kg de agua",
    source: "CRC Handbook, 102.ª ed., etanol y sacarosa en agua",
    limits:
      "0,15 K solo con etanol, 0,03 K solo con azúcar; comprobado hasta 68 % de etanol y 42 % de azúcar en peso; los azúcares de fruta bajan más",
  },
  "sum-ice-share": {
    formula: "(m_agua − m_sin_helar) / m, donde lo no helado se congela a esa temperatura",
    source: "CRC Handbook, 102.ª ed., como para el punto de congelación",
    limits: "en reposo y en equilibrio",
  },
  "sum-stirred": {
    source: FIT,
    limits: "± 0,05 del volumen con hielo corriente y los 15 a 20 s habituales",
  },
  "sum-shaken": { source: FIT, limits: "± 0,05 del volumen con hielo corriente" },
  "sum-settled": {
    formula: "calor que da la bebida = calor que toma el hielo que se funde",
    source: HEAT,
    limits: "nada de vidrio, metal, aire ni agua sobre el hielo",
  },
  "sum-blended": {
    formula: "V_agua = m_hielo / 0,9982 g/ml, fundido o no",
    source: "todo el hielo se bebe",
  },
  "sum-glass-temperature": {
    formula:
      "calor que da la bebida = calor que toma el hielo; nunca por debajo de donde se congelaría",
    source: HEAT,
    limits: DEGREES,
  },
  "sum-glass-strength": {
    formula: "grado = (m_etanol / 0,78924 g/ml) / V",
    source: DRINKS,
    limits: "según el agua que toma",
  },
  "sum-cold-volume": {
    source: "OIML R 22 (1975) de −20 a 40 °C; ICUMSA SPS-4 (1998) para el azúcar",
    limits: "el azúcar bajo 0 °C, como a 0",
  },
};
