import type { TradeWords } from "./types";

export const spanish: TradeWords = {
  headings: {
    cow: ["vaca", "nº vaca", "número de vaca", "animal", "número", "nº animal", "crotal", "arete", "caravana", "collar", "nombre", "identificación", "diio", "nº"], // oxfmt-ignore
    date: ["fecha", "día", "fecha de recorte", "fecha recorte", "visita", "fecha de visita", "fecha de control", "fecha control", "fecha de muestra", "fecha del tratamiento", "fecha de muestreo"], // oxfmt-ignore
    lactation: ["lactación", "lactancia", "número de lactación", "nº lactación", "parto", "nº de partos", "número de parto", "partos", "paridad"], // oxfmt-ignore
    daysInMilk: [
      "días en leche",
      "DEL",
      "días de lactación",
      "días en lactación",
      "días posparto",
      "días desde el parto",
    ],
    born: ["nacimiento", "fecha de nacimiento", "nacida", "nacida el", "f nacimiento", "nació"],
    calved: ["último parto", "fecha de parto", "parto", "fecha último parto", "parida", "fecha parto", "parida el"],
    dryOff: ["secado", "fecha de secado", "seca", "secada el", "fecha secado"],
    entered: ["entrada", "fecha de entrada", "alta", "compra", "comprada el", "ingreso"],
    left: ["salida", "baja", "fecha de baja", "fecha de salida", "vendida", "muerta", "eliminada", "desecho"],
    group: ["grupo", "lote", "corral"],
    foot: ["pata", "pie", "extremidad", "miembro", "patas"],
    claw: ["pezuña", "uña", "dedo", "interna externa", "interior exterior"],
    zone: ["zona", "localización", "región", "ubicación"],
    lesion: ["lesión", "lesiones", "diagnóstico", "enfermedad", "problema", "causa", "trastorno", "afección", "hallazgo", "patología"], // oxfmt-ignore
    stage: ["estadio", "fase", "estadio M"],
    severity: ["gravedad", "grado", "severidad", "nivel"],
    toeMm: ["longitud de la punta", "longitud", "largo", "longitud de pezuña", "largo de uña", "longitud de uña"],
    measuredFrom: ["medido desde", "medida desde", "punto de medida", "referencia", "desde"],
    treatment: ["tratamiento", "cura", "acción", "actuación", "qué se hizo", "terapia", "intervención"],
    seenAgain: ["revisada el", "revisado el", "vista el", "controlada el"],
    outcome: ["resultado", "evolución", "curación"],
    nextLook: ["revisión", "próxima revisión", "fecha de revisión", "volver a ver", "próximo control", "seguimiento", "revisar", "revisar el"], // oxfmt-ignore
    closedOn: ["cerrado", "cerrado el", "terminado", "curada el", "finalizado", "alta médica"],
    note: ["nota", "notas", "observación", "observaciones", "comentario", "comentarios"],
    drug: ["medicamento", "producto", "fármaco", "antibiótico"],
    withdrawal: [
      "retirada",
      "período de retirada",
      "tiempo de espera",
      "supresión",
      "retirada leche",
      "retirada carne",
    ],
    score: ["puntuación", "locomoción", "cojera", "puntuación de locomoción", "puntuación de cojera", "movilidad", "índice de cojera", "score"], // oxfmt-ignore
    milkKg: ["leche", "kg de leche", "producción", "litros", "kg leche", "leche kg", "producción de leche", "litros de leche"], // oxfmt-ignore
    count: ["células", "RCS", "recuento", "recuento celular", "células somáticas", "CCS", "recuento de células"],
    other: ["grasa", "proteína", "urea", "lactosa", "padre", "madre", "raza", "recortador", "podólogo", "veterinario", "precio", "coste", "factura", "toro", "inseminación", "peso", "quién"], // oxfmt-ignore
  },
  feet: {
    left: ["izquierda", "izquierdo", "izq", "i"],
    right: ["derecha", "derecho", "der", "dcha", "d"],
    front: ["delantera", "delantero", "anterior", "mano", "del"],
    hind: ["trasera", "trasero", "posterior", "tras"],
    short: { AI: "LF", AD: "RF", PI: "LH", PD: "RH", DI: "LF", TI: "LH", TD: "RH" },
  },
  claws: { inner: ["interna", "interno", "interior"], outer: ["externa", "externo", "exterior"] },
  landmarks: { hardHorn: ["casco duro", "tejuela dura"], skinHornLine: ["corona", "piel", "pelo", "rodete"] },
  outcomes: {
    healed: ["curada", "curado", "bien", "sana"],
    better: ["mejor", "mejorada"],
    same: ["igual", "sin cambios"],
    worse: ["peor"],
    gone: ["vendida", "muerta", "baja"],
  },
  groups: {
    fresh: ["frescas", "recién paridas"],
    high: ["alta", "altas", "alta producción"],
    low: ["baja", "bajas", "baja producción"],
    dry: ["secas", "seca"],
  },
  treatments: ["taco", "recorte", "recortada", "vendaje", "venda", "spray", "pomada", "antiinflamatorio", "antibiótico", "veterinario", "cura", "tacón"], // oxfmt-ignore
};
